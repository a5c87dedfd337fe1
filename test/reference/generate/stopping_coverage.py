"""How often the larger of half-width and tolerance holds a fill whose catches stop at the tolerance.

Method: 60,000 fills a cell; votes on the logarithm of the variance, their prior and the rule written down anew from their
formulas. No factor, at most 8 catches; other bins and earlier fills have three catches of one fill each.
Run: python3 test/reference/generate/stopping_coverage.py (about a minute; needs numpy and scipy)
"""
import json
from pathlib import Path

import numpy as np
import scipy
from scipy import special, stats

FILLS = 60_000
SEED = 3
TOLERANCE = 0.02
MOST = 8
BETWEEN_METERS, BETWEEN_FILLS = 0.5, 0.2
LENDING_DF = 2
RATIOS = [1, 1.7, 2.8]
TARGET = Path(__file__).resolve().parent.parent / "tolerance" / "stopping-coverage.json"


def half_df(variance):
    """Where the trigamma function has this value: Newton's method on its reciprocal."""
    x = 0.5 + 1 / variance
    for _ in range(60):
        t = special.polygamma(1, x)
        x += t * (1 - t / variance) / special.polygamma(2, x)
    return x


def log_variance(s2, df):
    return np.log(s2) - special.digamma(df / 2) + np.log(df / 2), special.polygamma(1, df / 2)


def coverage(bins, earlier, fewest, ratio, over_meters, random):
    def about(center, heterogeneity, *shape):
        return center * np.exp(heterogeneity * random.standard_normal((FILLS, *shape)))

    def seen(truth):
        return truth**2 * random.chisquare(LENDING_DF, truth.shape) / LENDING_DF

    scatter = np.full(FILLS, ratio * TOLERANCE)
    if over_meters:
        middle = scatter
        meter = about(middle, BETWEEN_METERS)
        fill = about(meter, BETWEEN_FILLS)
    else:
        fill = scatter
        meter = about(fill, BETWEEN_FILLS)
        middle = about(meter, BETWEEN_METERS)
    votes = []
    if earlier:
        pooled = seen(about(meter[:, None], BETWEEN_FILLS, earlier)).mean(1)
        center, sampling = log_variance(pooled, LENDING_DF * earlier)
        votes.append((center, 4 * BETWEEN_FILLS**2 * (1 + 1 / earlier) + sampling))
    if bins:
        truth = about(about(middle[:, None], BETWEEN_METERS, bins), BETWEEN_FILLS, bins)
        center, sampling = log_variance(seen(truth), LENDING_DF)
        between = 4 * BETWEEN_METERS**2
        votes.append((center.mean(1), between + (between + sampling) / bins))
    together = 1 / sum(1 / variance for _, variance in votes)
    center = together * sum(one / variance for one, variance in votes)
    half = half_df(together)
    nu0, s02 = 2 * half, np.exp(center + special.digamma(half) - np.log(half))
    catches = fill[:, None] * random.standard_normal((FILLS, MOST))
    going, held = np.ones(FILLS, bool), np.zeros(FILLS, bool)
    for n in range(fewest, MOST + 1):
        error = catches[:, :n].mean(1)
        squares = ((catches[:, :n] - error[:, None]) ** 2).sum(1)
        df = nu0 + n - 1
        width = stats.t.ppf(0.975, df) * np.sqrt((nu0 * s02 + squares) / df / n)
        stops = going & ((width <= TOLERANCE) | (n == MOST))
        held[stops] = (np.abs(error) <= np.maximum(width, TOLERANCE))[stops]
        going &= ~stops
    return round(float(held.mean()), 4)


if __name__ == "__main__":
    random = np.random.default_rng(SEED)
    rows = [
        {
            "otherBins": bins,
            "earlierFills": earlier,
            "fewest": fewest,
            "overMeters": [coverage(bins, earlier, fewest, ratio, True, random) for ratio in RATIOS],
            "ofOneScatter": [coverage(bins, earlier, fewest, ratio, False, random) for ratio in RATIOS],
        }
        for bins, earlier, fewest in [(2, 0, 2), (0, 1, 1), (2, 1, 1), (2, 3, 1)]
    ]
    reference = {
        "name": "Coverage of a fill whose catches stop at the tolerance, by who speaks for their scatter",
        "source": {"method": f"simulation, {FILLS} fills a cell, seed {SEED}, by test/reference/generate/stopping_coverage.py"},
        "how_obtained": f"numpy {np.__version__}, scipy {scipy.__version__}",
        "what_it_checks": "simulateStopping of the stopping study",
        "ratios": RATIOS,
        "rows": rows,
    }
    TARGET.write_text(json.dumps(reference, indent=1) + "\n")
