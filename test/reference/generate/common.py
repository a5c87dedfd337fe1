"""What the generators of the reference values share: working precision, exact doubles in, 25 digits out.

They need mpmath (Debian: python3-mpmath) and run about twice as fast with gmpy2 (python3-gmpy2).
"""
import json
import platform
from pathlib import Path

import mpmath
from mpmath import mp, mpf

mp.dps = 40
DIGITS = 25
TARGET = Path(__file__).resolve().parent.parent / "distributions"

# Probabilities as the doubles a program will be given; 1 - 1e-8 is not a double, so its neighbour is meant.
PROBABILITIES = [
    1e-8, 1e-6, 1e-4, 0.01, 0.025, 0.1, 0.3, 0.499, 0.5, 0.50001, 0.7, 0.9, 0.975, 0.99, 1 - 1e-4, 1 - 1e-6, 1 - 1e-8,
]  # fmt: skip


def digits(value):
    return mpmath.nstr(value, DIGITS, strip_zeros=False, min_fixed=-5, max_fixed=20)


def relative_difference(a, b):
    return abs(a - b) / max(abs(a), abs(b), mpf(10) ** -60)


def root(excess, lower, upper):
    """Where an increasing function crosses zero: bracket by doubling, then Anderson's safeguarded secant."""
    width = upper - lower
    while excess(lower) > 0:
        lower, upper, width = lower - 2 * width, lower, 2 * width
    while excess(upper) < 0:
        lower, upper, width = upper, upper + 2 * width, 2 * width
    return mpmath.findroot(excess, (lower, upper), solver="anderson", tol=mpf(10) ** -30, maxsteps=200, verify=False)


def write_rows(name, script, method, tables):
    """One file per subject: how it was made, then one line per row."""
    TARGET.mkdir(exist_ok=True)
    head = {
        "name": name,
        "generator": f"test/reference/generate/{script}",
        "program": f"mpmath {mpmath.__version__}, Python {platform.python_version()}",
        "command": f"python3 test/reference/generate/{script}",
        "method": method,
        "working_digits": mp.dps,
        "digits_given": DIGITS,
        "note": "arguments and parameters are exact doubles, results are decimal strings",
    }
    parts = [f"  {json.dumps(key)}: {json.dumps(value)}" for key, value in head.items()]
    for key, rows in tables.items():
        body = ",\n".join("    " + json.dumps(row) for row in rows)
        parts.append(f"  {json.dumps(key)}: [\n{body}\n  ]")
    (TARGET / f"{name}.json").write_text("{\n" + ",\n".join(parts) + "\n}\n", encoding="utf-8")
    print(name, {key: len(rows) for key, rows in tables.items()}, flush=True)


def write(name, script, method, tails, quantiles):
    write_rows(name, script, method, {"tails": tails, "quantiles": quantiles})
