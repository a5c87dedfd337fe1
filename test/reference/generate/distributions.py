"""Reference values for normal, Student t, chi-squared, F and beta: tails and quantiles to 25 digits.

Method: power series with positive terms only for the regularised incomplete beta and gamma functions, from the end of
the range that is nearer; the other tail is the complement at 60 digits, so nothing is lost above 1e-30.
Run: python3 test/reference/generate/distributions.py (about 2 minutes)
"""
import sys
from itertools import product

from mpmath import erfc, exp, log, loggamma, mp, mpf, sqrt

from common import PROBABILITIES, digits, root, write

mp.dps = 60
METHOD = "positive power series of the regularised incomplete beta and gamma functions; quantiles by bracketed secant"


def series(first_ratio):
    """1 + r(0) + r(0) r(1) + ... for a ratio that ends below 1."""
    total = term = mpf(1)
    n = 0
    while term > total * mpf(10) ** -(mp.dps + 2):
        term *= first_ratio(n)
        total += term
        n += 1
    return total


def beta_tails(x, y, a, b):
    """(I_x(a, b), 1 - I_x(a, b)) where y = 1 - x is given exactly."""
    if x > 0.5:
        upper, lower = beta_tails(y, x, b, a)
        return lower, upper
    log_front = a * log(x) + b * log(y) + loggamma(a + b) - loggamma(a + 1) - loggamma(b)
    lower = exp(log_front) * series(lambda n: (a + b + n) / (a + 1 + n) * x)
    return lower, 1 - lower


def gamma_tails(x, a):
    """(P(a, x), Q(a, x))."""
    lower = exp(a * log(x) - x - loggamma(a + 1)) * series(lambda n: x / (a + 1 + n))
    if lower < mpf("0.99"):
        return lower, 1 - lower
    with_guard = mp.dps
    mp.dps = with_guard + 40
    lower = exp(a * log(x) - x - loggamma(a + 1)) * series(lambda n: x / (a + 1 + n))
    upper = 1 - lower
    mp.dps = with_guard
    return +lower, +upper


def normal_tails(x):
    return erfc(-x / sqrt(2)) / 2, erfc(x / sqrt(2)) / 2


def t_tails(x, df):
    square = x * x
    _, outside = beta_tails(square / (df + square), df / (df + square), mpf("0.5"), df / 2)
    return (outside / 2, 1 - outside / 2) if x < 0 else (1 - outside / 2, outside / 2)


def f_tails(x, df1, df2):
    whole = df1 * x + df2
    return beta_tails(df1 * x / whole, df2 / whole, df1 / 2, df2 / 2)


def log_excess(tails, p):
    """Log of the smaller tail over its target, increasing in x; the floor is only met on the way to a bracket."""
    floor = mpf(10) ** -50
    if p <= 0.5:
        return lambda x: log(max(tails(x)[0], floor) / mpf(p))
    return lambda x: -log(max(tails(x)[1], floor) / (1 - mpf(p)))


def positive_quantile(tails, p, centre):
    excess = log_excess(tails, p)
    return exp(root(lambda v: excess(exp(v)), log(centre) - mpf("0.005"), log(centre) + mpf("0.005")))


def t_quantile(p, df):
    if p == 0.5:
        return mpf(0)
    return -upper_t(mpf(p), df) if p < 0.5 else upper_t(1 - mpf(p), df)


def upper_t(tail, df):
    return exp(root(lambda v: -log(t_tails(exp(v), df)[1] / tail), mpf("0.1"), mpf("0.9")))


def beta_quantile(p, a, b):
    """On the log-odds scale, which keeps both ends of (0, 1) apart from 0 and 1."""
    def tails(v):
        odds = exp(v)
        return beta_tails(odds / (1 + odds), 1 / (1 + odds), a, b)
    v = root(log_excess(tails, p), log(a / b) - mpf("0.01"), log(a / b) + mpf("0.01"))
    return exp(v) / (1 + exp(v))


def normal_quantile(p):
    return root(log_excess(normal_tails, p), mpf("-0.1"), mpf("0.1")) if p != 0.5 else mpf(0)


def build(name, shapes, quantile, tails):
    tail_rows, quantile_rows = [], []
    for shape in shapes:
        exact = {key: mpf(value) for key, value in shape.items()}
        for p in PROBABILITIES:
            q = quantile(p, **exact)
            quantile_rows.append({"p": p, **shape, "quantile": digits(q)})
            x = float(q)
            lower, upper = tails(mpf(x), **exact)
            tail_rows.append({"x": x, **shape, "lower": digits(lower), "upper": digits(upper)})
    write(name, "distributions.py", METHOD, tail_rows, quantile_rows)


DF = [0.5, 1, 2, 2.5, 3, 7.3, 30.7, 200, 1e6]


def all_of(**values):
    """Every combination of the named values."""
    return [dict(zip(values, combination)) for combination in product(*values.values())]


BUILDERS = {
    "normal": lambda: build("normal", [{}], normal_quantile, normal_tails),
    "student-t": lambda: build("student-t", all_of(df=DF), t_quantile, t_tails),
    "chi-squared": lambda: build(
        "chi-squared",
        all_of(df=DF),
        lambda p, df: positive_quantile(lambda x: gamma_tails(x / 2, df / 2), p, df),
        lambda x, df: gamma_tails(x / 2, df / 2),
    ),
    "f": lambda: build(
        "f",
        all_of(df1=[1, 2, 3.7, 12, 200, 1e6], df2=[1, 2, 3, 8.4, 200, 1e6]),
        lambda p, df1, df2: positive_quantile(lambda x: f_tails(x, df1, df2), p, mpf(1)),
        f_tails,
    ),
    "beta": lambda: build(
        "beta",
        all_of(a=[0.5, 1, 2.25, 15, 400], b=[0.5, 1, 3.5, 40, 5e5]),
        beta_quantile,
        lambda x, a, b: beta_tails(x, 1 - x, a, b),
    ),
}

if __name__ == "__main__":
    for name in sys.argv[1:] or BUILDERS:
        BUILDERS[name]()
