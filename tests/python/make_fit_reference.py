"""Makes tests/tables/bending/fit_reference.csv: intervals of springback from random trial bends, by NumPy and SciPy.

Least squares by the normal equations of `numpy.linalg`, Student's numbers by `scipy.stats.t`, the interval of the
setting by root finding on its definition (all settings whose value is no further from the one wanted than the line's
half width, none below the one wanted), and with a prior by `blend_reference`. Readings may all be off to one side, by what
is left of half their step; the line then moves as its normal equations say. Run it from anywhere.
"""

import random
from fractions import Fraction
from pathlib import Path

import numpy as np
from blend_reference import Blend, agreement
from scipy import optimize, stats

TABLE = Path(__file__).resolve().parent.parent / "tables" / "bending" / "fit_reference.csv"
HEADER = "sets_deg,gots_deg,wanted_deg,chance,prior,constant_deg,slope,scatter_deg,low_deg,high_deg,next_half_width_deg"
SEED = 20_261_126
ROWS = 120


STEPS = [Fraction(step) for step in "1 1/2 1/3 1/4 1/5 1/6 1/10 1/20 1/60 1/50 1/100".split()]


def is_read_to(got, step):
    """A multiple of the step, or one typed with two to four decimals."""
    angle = Fraction(repr(round(float(got), 9)))
    multiple = round(angle / step) * step
    typed = [round(multiple, places) for places in (2, 3, 4)] if step > Fraction(1, 20) else []
    return any(abs(angle - one) < Fraction(1, 10**6) for one in [multiple, *typed])


def read_to(gots):
    """The coarsest step of most angles, if no other is read to a part of it down to a twentieth; 0 where there is none."""
    for step in STEPS:
        others = [got for got in gots if not is_read_to(got, step)]
        if 2 * len(others) < len(gots) and not any(is_read_to(got, step / n) for got in others for n in range(2, 21)):
            return float(step)
    return 0.0


def rounding(gots):
    """What rounding adds to a reading, one standard deviation; nobody reads to less than a thousandth of a degree."""
    return (read_to(gots) or 0.001) / 12**0.5


def one_sided(step, scatter):
    """How far readings may all be off to one side: half a step, damped as the mean of a rounded normal number is."""
    own = max(0.0, scatter**2 - step**2 / 12)
    return step / 2 * float(np.exp(-2 * np.pi**2 * own / step**2)) if step else 0.0


def fitted(sets, gots, least=None):
    """Parts of the line, their covariance for a scatter of 1, the square of the scatter, its degrees of freedom."""
    least = rounding(gots) if least is None else least
    x, y = np.array(sets), np.array(sets) - np.array(gots)
    design = np.column_stack([np.ones_like(x), x])
    information = design.T @ design
    beta = np.linalg.solve(information, design.T @ y)
    dof = len(x) - 2
    square = max(float(np.sum((y - design @ beta) ** 2)) / dof, least**2)
    return beta, np.linalg.inv(information), square, dof


def blended(sets, gots, prior):
    return Blend(sets, gots, prior, read_to(gots), rounding(gots), one_sided)


def contradicted(sets, gots, prior):
    """Whether a belief, where it is right, makes such trials less than once in twenty times."""
    if not prior or not sets:
        return "unknown"
    return str(agreement(sets, gots, prior, read_to(gots), rounding(gots), one_sided) < 0.05).lower()


def bias_of(sets, covariance, half):
    """By how much a line at x, or its parts by their own vector, moves when every reading moves to its worst side."""
    moved = [covariance @ np.array([1.0, s]) for s in sets]
    return lambda v: half * sum(abs(float(np.dot(v, by))) for by in moved)


def ends_of(beta, wanted, width):
    """Where the line's value is as far from the one wanted as its own half width, to either side."""
    setting = (wanted + beta[0]) / (1 - beta[1])

    def outside(x):
        return abs(x - beta[0] - beta[1] * x - wanted) - width(np.array([1.0, x]))

    ends = []
    for direction in (-1.0, 1.0):
        step = 0.01
        while outside(setting + direction * step) < 0 and step < 1e4:
            step *= 1.5
        if step >= 1e4:
            return None
        near, far = sorted((setting, setting + direction * step))
        ends.append(optimize.brentq(outside, near, far, xtol=1e-12, rtol=1e-14) if width(np.array([1.0, setting])) else setting)
    return ends


def intervals(sets, gots, wanted, chance, prior):
    """Parts of the line, scatter, ends of the setting's interval, half width of the next bend there."""
    if prior:
        blend = blended(sets, gots, prior)
        beta, _, scatter = blend.summary()
        ends = blend.setting(beta, wanted, chance)
    else:
        beta, covariance, square, dof = fitted(sets, gots)
        scatter, factor = square**0.5, stats.t.ppf(0.5 + chance / 2, dof)
        bias = bias_of(sets, covariance, one_sided(read_to(gots), scatter))

        def width(v, more=0.0):
            return factor * scatter * (more + float(v @ covariance @ v)) ** 0.5 + bias(v)

        ends = ends_of(beta, wanted, width)
    if ends is None or ends[1] <= wanted:
        return beta, scatter, None, None
    setting = (wanted + beta[0]) / (1 - beta[1])
    next_half = blend.next_half(setting, chance) if prior else width(np.array([1.0, setting]), more=1.0)
    return beta, scatter, [max(end, wanted) for end in ends], next_half


def deleted(sets, gots):
    """The trial that stands out by its distance to the line through all others, at 5 % for having looked at all."""
    if len(sets) < 5:
        return "none"
    far = []
    for i in range(len(sets)):
        x, y = (np.delete(v, i) for v in (np.array(sets), np.array(sets) - np.array(gots)))
        beta, covariance, square, dof = fitted(x, x - y, rounding(gots))
        at = np.array([1.0, sets[i]])
        spread = (square * (1 + at @ covariance @ at)) ** 0.5
        half = one_sided(read_to(gots), square**0.5)
        bias = half + bias_of(x, covariance, half)(at)
        far.append(max(abs(sets[i] - gots[i] - at @ beta) - bias, 0) / spread)
    limit = stats.t.ppf(1 - 0.05 / len(sets) / 2, len(sets) - 3)
    return str(int(np.argmax(far)) + 1) if max(far) > limit else "none"


def is_bent(sets, gots):
    """A square beside the line, told from nothing at 5 %."""
    if len(sets) < 5:
        return "unknown"
    x = np.array(sets)
    y = x - np.array(gots)
    design = np.column_stack([np.ones_like(x), x - x.mean(), (x - x.mean()) ** 2])
    beta, rest, *_ = np.linalg.lstsq(design, y, rcond=None)
    dof = len(x) - 3
    square = max(float(rest[0]) / dof, rounding(gots) ** 2)
    inverse = np.linalg.inv(design.T @ design)
    error = (square * inverse[2, 2]) ** 0.5
    bias = one_sided(read_to(gots), square**0.5) * np.sum(np.abs((inverse @ design.T)[2]))
    return str(bool(abs(beta[2]) > stats.t.ppf(0.975, dof) * error + bias)).lower()


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
        beta, scatter, ends, next_half = intervals(sets, gots, wanted, chance, prior)
        if ends is None:
            continue
        text = [";".join(map(repr, sets)), ";".join(map(repr, gots)), repr(wanted), repr(chance)]
        text.append("" if prior is None else ";".join(map(repr, prior)))
        text += [repr(float(v)) for v in (*beta, scatter, *ends, next_half)]
        lines.append(",".join(text))


if __name__ == "__main__":
    TABLE.write_text("\n".join(rows()) + "\n", encoding="ascii", newline="\n")
