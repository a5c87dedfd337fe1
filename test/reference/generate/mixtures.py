"""Reference values for the noncentral t distribution and the studentized range: tails and quantiles to 25 digits.

Method: both are a mean over S, S^2 df being chi-squared. The mean is taken over u = ln S, and for the range also over
the largest value z, by the trapezoidal rule, which for these integrands converges faster than any power of the step.
Values are computed with two steps, and the run stops unless they agree to 22 digits.
Run: python3 test/reference/generate/mixtures.py (about half an hour)
"""
import sys
from functools import lru_cache

from mpmath import asinh, erfc, exp, expm1, log, loggamma, mp, mpf, sinh, sqrt

from common import digits, relative_difference, root, write

mp.dps = 40
METHOD = "trapezoidal rule over ln S (and over the largest value z); two steps agree to 22 digits"
PROBABILITIES = [1e-8, 1e-4, 0.025, 0.1, 0.5, 0.9, 0.95, 0.975, 0.99, 1 - 1e-4, 1 - 1e-8]


def both_tails(z):
    """(P(Z <= z), P(Z > z)) from one complementary error function."""
    if abs(z) > 16:  # beyond 1e-57
        return (mpf(1), mpf(0)) if z > 0 else (mpf(0), mpf(1))
    outer = erfc(abs(z) / sqrt(2)) / 2
    return (1 - outer, outer) if z > 0 else (outer, 1 - outer)


def phi(z):
    return both_tails(z)[0]


def density(z):
    return exp(-z * z / 2) / sqrt(2 * mp.pi)


@lru_cache(maxsize=8)
def chi_grid(df, step):
    """Multiples i of the step, S = e^(i step) and weights for the density of u = ln S, down to 1e-35 of its peak."""
    scale = step * 2 * exp(df / 2 * log(df / 2) - df / 2 - loggamma(df / 2))
    points = []
    for direction in (1, -1):
        i = 0 if direction == 1 else -1
        while (level := df * (i * step - expm1(2 * i * step) / 2)) > -80:
            points.append((i, exp(i * step), scale * exp(level)))
            i += direction
    return points


def agree(coarse, fine):
    for a, b in zip(coarse, fine):
        if relative_difference(a, b) > mpf(10) ** -22:
            raise ArithmeticError(f"steps disagree: {a} {b}")


# ---- noncentral t -------------------------------------------------------------------------------------------------


def noncentral_tails(x, df, noncentrality, fineness=1):
    step = min(mpf(1) / 24, 1 / (mpf("3.6") * sqrt(2 * df + noncentrality**2))) / fineness
    lower = upper = mpf(0)
    for _, deviation, weight in chi_grid(df, step):
        below, above = both_tails(x * deviation - noncentrality)
        lower += weight * below
        upper += weight * above
    return lower, upper


def noncentral_quantile(p, df, noncentrality):
    if p == 0.5 and noncentrality == 0:
        return mpf(0)

    floor = mpf(10) ** -50  # only met on the way to a bracket

    def excess(v):
        lower, upper = noncentral_tails(sinh(v), df, noncentrality)
        return log(max(lower, floor) / mpf(p)) if p <= 0.5 else -log(max(upper, floor) / (1 - mpf(p)))

    centre = asinh(noncentrality)
    return sinh(root(excess, centre - mpf("0.2"), centre + mpf("0.2")))


def noncentral_t():
    tails, quantiles = [], []
    for df in [1, 2, 3, 4.5, 10, 29.3, 200, 1e6]:
        for noncentrality in [-3, 0, 0.5, 2, 5, 10, 26, 60] + ([150] if df >= 10 else []):
            shape = {"df": df, "noncentrality": noncentrality}
            exact = mpf(df), mpf(noncentrality)
            for p in PROBABILITIES:
                q = noncentral_quantile(p, *exact)
                x = float(q)
                found = noncentral_tails(mpf(x), *exact)
                agree(found, noncentral_tails(mpf(x), *exact, fineness=mpf("1.5")))
                quantiles.append({"p": p, **shape, "quantile": digits(q)})
                tails.append({"x": x, **shape, "lower": digits(found[0]), "upper": digits(found[1])})
        print("noncentral t", df, flush=True)
    write("noncentral-t", "mixtures.py", METHOD, tails, quantiles)


# ---- studentized range --------------------------------------------------------------------------------------------

LATTICE = mpf(1) / 128  # step of ln w; every second point makes the coarse step


@lru_cache(maxsize=None)
def largest_grid(size, step):
    """z, Phi(z) and k phi(z) for the largest of k values, on a grid wide enough for 1e-30."""
    first = -13 if size == 2 else -9
    return [
        (z, phi(z), size * step * density(z))
        for z in (first + i * step for i in range(int((13 - first) / step) + 1))
    ]


def range_values(w, size, step=None):
    """(P(range <= w), P(range > w), density at w) for k standard normal values."""
    step = step or (mpf(1) / 8 if size <= 10 else mpf(1) / 16)
    lower = upper = slope = mpf(0)
    for z, below, weight in largest_grid(size, step):
        inside = below - phi(z - w)
        power = inside ** (size - 2)
        lower += weight * power * inside
        upper += weight * (below ** (size - 1) - power * inside)
        slope += weight * (size - 1) * power * density(z - w)
    return lower, upper, slope


class Lattice:
    """Range values at w = e^(i/128), made when first asked for."""

    def __init__(self, size):
        self.size, self.known = size, {}

    def __getitem__(self, i):
        if i not in self.known:
            w = exp(i * LATTICE)
            if i > 128 * 3.9:  # w > 49: nothing is above
                self.known[i] = mpf(1), mpf(0), mpf(0)
            elif i < -128 * 60:  # w < 1e-26: nothing is below
                self.known[i] = mpf(0), mpf(1), mpf(0)
            else:
                lower, upper, slope = range_values(w, self.size)
                self.known[i] = lower, upper, slope * w  # slope per ln w
        return self.known[i]


def lattice_values(lattice, j, df, every=1):
    """Tails and density per ln q of the studentized range at q = e^(j/128)."""
    total = [mpf(0)] * 3
    for i, _, weight in chi_grid(df, LATTICE * every):
        for place, value in enumerate(lattice[j + every * i]):
            total[place] += weight * value
    return total


def direct_values(q, size, df, fineness):
    """The same at any q, for large df."""
    step = 1 / (3 * sqrt(2 * df)) / fineness
    total = [mpf(0)] * 3
    for _, deviation, weight in chi_grid(df, step):
        w = q * deviation
        lower, upper, slope = range_values(w, size)
        for place, value in enumerate((lower, upper, slope * w)):
            total[place] += weight * value
    return total


def nearest(values, p):
    """Lattice index j whose tail is nearest to p, by bisection; values(j) gives the tails."""
    low, high = -128 * 25, 128 * 25
    while high - low > 1:
        middle = (low + high) // 2
        lower, upper, _ = values(middle)
        below = lower < mpf(p) if p <= 0.5 else upper > 1 - mpf(p)
        low, high = (middle, high) if below else (low, middle)
    return high


def range_rows(values, exact_q, shape):
    """One tail row and one quantile row from values at exact_q, moved to the nearest double by the density."""
    x = float(exact_q)
    lower, upper, per_log = values
    moved = per_log * (mpf(x) / exact_q - 1)
    lower, upper = lower + moved, upper - moved
    p = float(lower) if lower <= 0.5 else 1 - float(upper)
    quantile = mpf(x) + (mpf(p) - lower) / (per_log / exact_q)
    return (
        {"x": x, **shape, "lower": digits(lower), "upper": digits(upper)},
        {"p": p, **shape, "quantile": digits(quantile)},
    )


def studentized_range():
    tails, quantiles = [], []
    for size in [2, 3, 4, 6, 10, 20]:
        for w in ("0.01", "1", "4", "9"):
            step = mpf(1) / 8 if size <= 10 else mpf(1) / 16
            agree(range_values(mpf(w), size, step), range_values(mpf(w), size, step / 2))
        lattice = Lattice(size)
        for df in [1, 2, 3, 4.7, 10, 29.3, 200, 1e6, "Infinity"]:
            shape = {"means": size, "df": df}
            for p in PROBABILITIES:
                if df in (1e6, "Infinity"):
                    j = nearest(lambda i: lattice[i], p)
                    q = exp(j * LATTICE)
                    values = lattice[j]
                    if df == 1e6:
                        values = direct_values(q, size, mpf(df), 1)
                        agree(values, direct_values(q, size, mpf(df), mpf("1.5")))
                else:
                    j = nearest(lambda i: lattice_values(lattice, i, mpf(df)), p)
                    q = exp(j * LATTICE)
                    values = lattice_values(lattice, j, mpf(df))
                    agree(values, lattice_values(lattice, j, mpf(df), every=2))
                tail, quantile = range_rows(values, q, shape)
                tails.append(tail)
                quantiles.append(quantile)
            print("studentized range", size, df, flush=True)
    write("studentized-range", "mixtures.py", METHOD, tails, quantiles)


if __name__ == "__main__":
    for part in sys.argv[1:] or ["noncentral-t", "studentized-range"]:
        {"noncentral-t": noncentral_t, "studentized-range": studentized_range}[part]()
