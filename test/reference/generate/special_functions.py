"""Reference values for ln x minus digamma, trigamma and what Stirling's formula leaves of log-gamma, to 25 digits.

Run: python3 test/reference/generate/special_functions.py
"""
from mpmath import log, loggamma, mp, mpf, pi, psi

from common import digits, write_rows

mp.dps = 60


def row(x):
    exact = mpf(x)
    return {
        "x": x,
        "logMinusDigamma": digits(log(exact) - psi(0, exact)),
        "trigamma": digits(psi(1, exact)),
        "stirlingRemainder": digits(loggamma(exact) - (exact - 0.5) * log(exact) + exact - log(2 * pi) / 2),
    }


GRID = [1e-6, 1e-3, 0.1, 0.5, 0.9, 1.25, 1.5, 1.75, 2.25, 2.7, 5, 9.9, 10, 10.1, 14.9, 33.3, 100, 1e4, 5e5, 1e8]
write_rows("special-functions", "special_functions.py", "mpmath's own functions", {"values": [row(x) for x in GRID]})
