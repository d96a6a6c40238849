"""Makes tests/tables/bending/fit_reference.csv: intervals of springback from random trial bends, by NumPy and SciPy.

Least squares by the normal equations of `numpy.linalg`, Student's numbers by `scipy.stats.t`, the interval of the
setting by root finding on its definition (all settings whose value is no further from the one wanted than the line's
half width, none below the one wanted), and with a prior by adding the inverse of its covariance. Run it from anywhere.
"""

import random
from decimal import Decimal
from pathlib import Path

import numpy as np
from scipy import optimize, stats

TABLE = Path(__file__).resolve().parent.parent / "tables" / "bending" / "fit_reference.csv"
HEADER = "sets_deg,gots_deg,wanted_deg,chance,prior,constant_deg,slope,scatter_deg,low_deg,high_deg,next_half_width_deg"
SEED = 20_261_126
ROWS = 120


def read_to(gots):
    """The coarsest step that all angles are multiples of; 0 where there is none."""
    for step in "1 0.5 0.25 0.2 0.1 0.05 0.02 0.01".split():
        if len(gots) and all(Decimal(repr(round(float(got), 6))) % Decimal(step) == 0 for got in gots):
            return float(step)
    return 0.0


def rounding(sets, gots):
    """What rounding adds to a reading, one standard deviation; bends at one setting are rounded alike, all of them."""
    step = read_to(gots)
    if not step:
        return 0.0
    apart = {round(2 * s / step) for s in sets}
    return step / 12**0.5 * (len(gots) / len(apart)) ** 0.5


def fitted(sets, gots, prior, least=None):
    """Parts of the line, their covariance for a scatter of 1, the square of the scatter, its degrees of freedom."""
    least = rounding(sets, gots) if least is None else least
    x, y = np.array(sets), np.array(sets) - np.array(gots)
    design = np.column_stack([np.ones_like(x), x])
    if prior is None:
        information = design.T @ design
        beta = np.linalg.solve(information, design.T @ y)
        dof = len(x) - 2
        square = max(float(np.sum((y - design @ beta) ** 2)) / dof, least**2)
        return beta, np.linalg.inv(information), square, dof
    a0, sa, b0, sb, scatter, worth, correlation = prior
    # The belief as an observation of both parts at once, and its own sum of squares.
    center = np.array([a0, b0])
    belief = scatter**2 * np.linalg.inv([[sa**2, correlation * sa * sb], [correlation * sa * sb, sb**2]])
    # A trial with the square of half its step beside the variance of the bend.
    weight = scatter**2 / (scatter**2 + 3 * least**2)
    information = weight * design.T @ design + belief
    beta = np.linalg.solve(information, weight * design.T @ y + belief @ center)
    dof = worth + len(x)
    gave = float((beta - center) @ belief @ (beta - center))
    square = (worth * scatter**2 + weight * float(np.sum((y - design @ beta) ** 2)) + gave) / dof
    return beta, np.linalg.inv(information), square, dof


def intervals(sets, gots, wanted, chance, prior):
    beta, covariance, square, dof = fitted(sets, gots, prior)
    factor = stats.t.ppf(0.5 + chance / 2, dof)

    def variance(x):
        v = np.array([1.0, x])
        return square * float(v @ covariance @ v)

    def outside(x):
        return (x - beta[0] - beta[1] * x - wanted) ** 2 - factor**2 * variance(x)

    setting = (wanted + beta[0]) / (1 - beta[1])
    ends = []
    for direction in (-1.0, 1.0):
        step = 0.01
        while outside(setting + direction * step) < 0 and step < 1e4:
            step *= 1.5
        if step >= 1e4:
            return beta, square, None, None
        near, far = sorted((setting, setting + direction * step))
        ends.append(optimize.brentq(outside, near, far, xtol=1e-12, rtol=1e-14))
    if ends[1] <= wanted:
        return beta, square, None, None
    ends = [max(end, wanted) for end in ends]
    return beta, square, ends, factor * float(np.sqrt(square + variance(setting)))


def samples():
    rng = random.Random(SEED)
    while True:
        n = rng.choice([0, 1, 2, 3, 4, 5, 6, 8, 12])
        prior = None
        if n < 3 or rng.random() < 0.4:
            prior = (1.0, 0.5, 0.015, 0.006, 0.3, rng.choice([1, 2, 4, 8]), rng.choice([0.0, 0.5, 0.9, -0.7]))
        sets = sorted(round(rng.uniform(15, 130), 1) for _ in range(n))
        if prior is None and sets[-1] - sets[0] < 25:
            continue
        gots = [round(s - (1.2 + 0.014 * s + rng.gauss(0, 0.25)), 2) for s in sets]
        yield sets, gots, round(rng.uniform(10, 120), 1), rng.choice([0.8, 0.9, 0.95, 0.99]), prior


def rows():
    lines = [HEADER]
    for sets, gots, wanted, chance, prior in samples():
        if len(lines) > ROWS:
            return lines
        beta, square, ends, next_half = intervals(sets, gots, wanted, chance, prior)
        if ends is None:
            continue
        text = [";".join(map(repr, sets)), ";".join(map(repr, gots)), repr(wanted), repr(chance)]
        text.append("" if prior is None else ";".join(map(repr, prior)))
        text += [repr(float(v)) for v in (*beta, np.sqrt(square), *ends, next_half)]
        lines.append(",".join(text))


if __name__ == "__main__":
    TABLE.write_text("\n".join(rows()) + "\n", encoding="ascii", newline="\n")
