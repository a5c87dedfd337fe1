"""What exact arithmetic finds in the NIST reference data once they are stored as doubles: the most a program can reach.

Run: python3 test/reference/generate/strd_reachable.py
"""
import json
import platform
from pathlib import Path

import mpmath
from mpmath import mp, mpf, sqrt

mp.dps = 100
REFERENCE = Path(__file__).resolve().parent.parent


def mean_and_sd(y):
    mean = sum(y) / len(y)
    return {"mean": mean, "sd": sqrt(sum((v - mean) ** 2 for v in y) / (len(y) - 1))}


def anova(groups):
    grand = sum(sum(g) for g in groups) / sum(len(g) for g in groups)
    means = [sum(g) / len(g) for g in groups]
    between = sum(len(g) * (m - grand) ** 2 for g, m in zip(groups, means))
    within = sum((v - m) ** 2 for g, m in zip(groups, means) for v in g)
    df = sum(len(g) for g in groups) - len(groups)
    return {
        "between_ss": between,
        "within_ss": within,
        "F": (between / (len(groups) - 1)) / (within / df),
        "residual_sd": sqrt(within / df),
    }


def line(x, y):
    n, mx, my = len(x), sum(x) / len(x), sum(y) / len(y)
    sxx = sum((a - mx) ** 2 for a in x)
    slope = sum((a - mx) * (b - my) for a, b in zip(x, y)) / sxx
    intercept = my - slope * mx
    sd = sqrt(sum((b - intercept - slope * a) ** 2 for a, b in zip(x, y)) / (n - 2))
    return {
        "estimate.B0": intercept,
        "estimate.B1": slope,
        "sd_of_estimate.B0": sd * sqrt(1 / mpf(n) + mx**2 / sxx),
        "sd_of_estimate.B1": sd / sqrt(sxx),
        "residual_sd": sd,
    }


def through_origin(x, y):
    sxx = sum(a * a for a in x)
    slope = sum(a * b for a, b in zip(x, y)) / sxx
    sd = sqrt(sum((b - slope * a) ** 2 for a, b in zip(x, y)) / (len(x) - 1))
    return {"estimate.B1": slope, "sd_of_estimate.B1": sd / sqrt(sxx), "residual_sd": sd}


def exact(values):
    return [mpf(v) for v in values]


def results(name, data):
    if name.startswith("univariate"):
        return mean_and_sd(exact(data["y"]))
    if name.startswith("anova"):
        return anova([exact(group) for group in data["groups"]])
    fit = line if name == "linear-norris" else through_origin
    return fit(exact(data["x"]), exact(data["y"]))


reachable = {
    path.stem: {
        key: mpmath.nstr(value, 25, min_fixed=-5, max_fixed=20)
        for key, value in results(path.stem, json.loads(path.read_text())["data"]).items()
    }
    for path in sorted((REFERENCE / "strd").glob("*.json"))
}
head = {
    "generator": "test/reference/generate/strd_reachable.py",
    "program": f"mpmath {mpmath.__version__}, Python {platform.python_version()}",
    "command": "python3 test/reference/generate/strd_reachable.py",
    "method": "100-digit arithmetic on the data as the nearest doubles",
}
(REFERENCE / "strd-reachable.json").write_text(json.dumps({**head, "reachable": reachable}, indent=2) + "\n")
