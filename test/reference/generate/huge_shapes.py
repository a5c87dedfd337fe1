"""Reference values of F for huge degrees of freedom: tails to 25 digits.

Method: the density of ln of the odds of the beta variable, exp(a ln x + b ln y - ln B(a, b)), integrated from the point
outwards by Gauss-Legendre panels one spread wide, at 180 digits.
Run: python3 test/reference/generate/huge_shapes.py (about 2 minutes)
"""
from mpmath import exp, linspace, log, loggamma, mp, mpf, quad, sqrt

from common import digits, write_rows

mp.dps = 180
METHOD = "density of the log-odds integrated outwards by Gauss-Legendre panels one spread wide"
SPREADS = 45


def f_tails(x, df1, df2):
    a, b = df1 / 2, df2 / 2
    log_beta = loggamma(a) + loggamma(b) - loggamma(a + b)
    spread = sqrt(1 / a + 1 / b) if min(a, b) > 1 else mpf(1)

    def density(v):
        y = 1 / (1 + exp(v))
        return exp(a * (v + log(y)) + b * log(y) - log_beta)

    at = log(df1 * x / df2)
    steps = 4 * SPREADS if min(a, b) < 20 else SPREADS  # the left tail of few degrees of freedom is long
    lower = quad(density, linspace(at - steps * spread, at, steps + 1), method="gauss-legendre")
    upper = quad(density, linspace(at, at + steps * spread, steps + 1), method="gauss-legendre")
    assert abs(lower + upper - 1) < mpf(10) ** -28, (x, df1, df2, lower + upper - 1)
    return lower, upper


PAIRS = [
    (2e8, 2e8), (2.5e8, 3e11), (1e9, 7e8), (3e10, 5e9), (1e12, 1e12), (2e12, 8e18),
    (1e15, 4e15), (3, 1e12), (1e12, 8.4), (12, 1e18), (1e6, 1e15), (1e8, 3e10), (1e17, 5e6),
]  # fmt: skip


def build():
    rows = []
    for df1, df2 in PAIRS:
        spread = min(1.0, float(sqrt(2 / mpf(df1) + 2 / mpf(df2))))
        for z in (-8, -3, -0.7, -1e-3, 0, 0.01, 0.4, 2, 6, 15):
            x = float(exp(z * mpf(spread)))
            lower, upper = f_tails(mpf(x), mpf(df1), mpf(df2))
            if min(lower, upper) < mpf(10) ** -60:
                continue  # far below the peak of its panels, where their error is not told
            rows.append({"x": x, "df1": df1, "df2": df2, "lower": digits(lower), "upper": digits(upper)})
    write_rows("f-huge", "huge_shapes.py", METHOD, {"tails": rows})


if __name__ == "__main__":
    build()
