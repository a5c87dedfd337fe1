"""How often a lasting shift has been found by now, asked after every value with the series' own spread.

Method: 200,000 normal series a row; evidence and limits written down anew from their formulas. What is found before the
shift closes nothing here, which changes no figure by more than .01.
Run: python3 test/reference/generate/lasting_shift_power.py (about 2 minutes; needs numpy and scipy)
"""
import json
from pathlib import Path

import numpy as np
import scipy
from scipy import stats

SERIES = 200_000
SEED = 20261129
AFTERS = [1, 2, 3, 4, 6]
# Of the averaged evidence, from 4 values to 12.
LIMITS = [1.94, 2.63, 3.57, 4.61, 5.38, 5.79, 5.86, 5.64, 5.45]
TARGET = Path(__file__).resolve().parent.parent / "trend" / "lasting-shift-power.json"


def finds(values):
    """Whether anything is found with the newest of the values."""
    n = values.shape[1]
    deviations = values - values.mean(1, keepdims=True)
    squares = (deviations**2).sum(1)
    df = n - 2
    before = np.arange(1, n)
    m = before * (n - before) / n
    share = deviations.cumsum(1)[:, :-1] ** 2 / m / squares[:, None]
    newest = np.sqrt(df * share[:, -1] / (1 - share[:, -1]))
    found = 2 * stats.t.sf(newest, df) <= 0.002
    if n >= 4:
        g = 2 * m
        evidence = (1 + g) ** -0.5 * (1 - share * g / (1 + g)) ** (-(df + 1) / 2)
        found |= evidence[:, :-1].sum(1) / (n - 2) >= LIMITS[min(n, 12) - 4]
    return found


def rows(random):
    for before in (3, 4, 6, 9):
        steady = random.standard_normal((SERIES, before + max(AFTERS)))
        for shift in (0, 1, 2, 3, 4, 6):
            values = steady.copy()
            values[:, before:] += shift
            found = np.zeros(SERIES, bool)
            by = {}
            for after in range(1, max(AFTERS) + 1):
                found |= finds(values[:, : before + after])
                by[after] = round(float(found.mean()), 4)
            yield {"before": before, "shift": shift, "found": [by[after] for after in AFTERS]}


if __name__ == "__main__":
    random = np.random.default_rng(SEED)
    reference = {
        "name": "Chance that a lasting shift has been found, asked after every value with the series' own spread",
        "source": {"method": f"simulation, {SERIES} series a row, seed {SEED}, by test/reference/generate/lasting_shift_power.py"},
        "how_obtained": f"numpy {np.__version__}, scipy {scipy.__version__}",
        "what_it_checks": "table of lastingShiftChance",
        "afters": AFTERS,
        "rows": list(rows(random)),
    }
    TARGET.write_text(json.dumps(reference, indent=1) + "\n")
