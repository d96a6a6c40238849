"""Makes tests/tables/bending/pieces_reference.csv: the radius of a former from bent pieces, by NumPy and SciPy.

Each piece is built from an arc: with the radius as formed, the straights and the share by which the arc is longer than
the tube in it, the length before bending is straights and arcs x (1 - share), and each leg is its straight and the tangents
next to it. Legs are then read with errors. Least squares by `numpy.linalg.lstsq` on radius alone and on radius and
lengthening, Student's numbers by `scipy.stats.t`, the interval of the share by root finding on its definition. Pieces
bent to the same angles may all be rounded to one side. Run it from anywhere.
"""

import math
import random
from pathlib import Path

import make_fit_reference as fits
import numpy as np
from scipy import optimize, stats

TABLE = Path(__file__).resolve().parent.parent / "tables" / "bending" / "pieces_reference.csv"
# Pieces are parted by bars; of each: length, legs, angles, parted by semicolons and blanks.
HEADER = (
    "pieces,chance,radius_mm,error_mm,low_mm,high_mm,scatter_mm,gain_90_mm,"
    "arc_radius_mm,arc_error_mm,share,share_low,share_high"
)
SEED = 20_261_127
ROWS = 80


def built(rng, radius, share, angles, error):
    """A piece: its length before bending, and its legs as read."""
    straights = [rng.uniform(30, 90) for _ in range(len(angles) + 1)]
    turns = [math.radians(a) for a in angles]
    length = sum(straights) + sum(radius * t * (1 - share) for t in turns)
    tangents = [0.0, *(radius * math.tan(t / 2) for t in turns), 0.0]
    legs = [s + a + b for s, a, b in zip(straights, tangents, tangents[1:])]
    return round(length, 2), [round(leg + rng.gauss(0, error), 1) for leg in legs], angles


def design(pieces):
    turns = [np.radians(angles) for _, _, angles in pieces]
    gain = np.array([sum(legs) - length for length, legs, _ in pieces])
    unit = np.array([float(np.sum(2 * np.tan(t / 2) - t)) for t in turns])
    return unit, np.array([float(np.sum(t)) for t in turns]), gain


def fitted(columns, gain):
    """Coefficients, their covariance for a scatter of 1, the scatter, degrees of freedom."""
    matrix = np.column_stack(columns)
    beta = np.linalg.lstsq(matrix, gain, rcond=None)[0]
    dof = len(gain) - matrix.shape[1]
    rest = gain - matrix @ beta
    scatter = math.sqrt(float(rest @ rest) / dof) if dof > 0 else None
    return beta, np.linalg.inv(matrix.T @ matrix), scatter, dof


def share_interval(beta, covariance, scatter, dof, chance, off):
    """All shares s for which longer - s radius is no further from 0 than its own half width and what it may be off besides."""
    factor = stats.t.ppf(0.5 + chance / 2, dof) * scatter

    def outside(s):
        v = np.array([-s, 1.0])
        return abs(float(v @ beta)) - factor * math.sqrt(float(v @ covariance @ v)) - off[1] - abs(s) * off[0]

    middle = beta[1] / beta[0]
    ends = []
    for direction in (-1.0, 1.0):
        step = 1e-3
        while outside(middle + direction * step) < 0 and step < 1e3:
            step *= 1.3
        if step >= 1e3:
            return None
        near, far = sorted((middle, middle + direction * step))
        ends.append(optimize.brentq(outside, near, far, xtol=1e-14, rtol=1e-14))
    return ends


STEPS = sorted([25.4 / 16, 25.4 / 32, 25.4 / 64, 1.0, 0.5, 0.25, 0.2, 0.1, 0.05, 0.02, 0.01], reverse=True)


def is_read_to(number, step):
    return abs(number - round(number / step) * step) < 1e-6


def read_to(numbers):
    """The coarsest step of most lengths, if no other is read to a part of it down to a twentieth; 0 where there is none."""
    for step in STEPS:
        others = [n for n in numbers if not is_read_to(n, step)]
        if 2 * len(others) < len(numbers) and not any(is_read_to(n, step / part) for n in others for part in range(2, 21)):
            return step
    return 0.0


class Readings:
    """What rounding does: per piece the variance it adds to a gain, and how far pieces that are alike may all be off."""

    def __init__(self, pieces, radius, steps):
        self.pieces, self.radius = pieces, radius
        self.angle = math.radians(fits.read_to([a for _, _, angles in pieces for a in angles]))
        # A length is no coarser than legs.
        self.steps = [(step, min(step, read_to([length]))) for step, (length, _, _) in zip(steps, pieces)]
        squares = 0.0
        for (leg, length), (_, legs, angles) in zip(self.steps, pieces):
            squares += (len(legs) * leg**2 + length**2) / 12
            squares += sum((self.rate(a) * self.angle) ** 2 for a in angles) / 12
        self.square = squares / len(pieces)

    def rate(self, angle):
        """Derivative of radius x (2 tan(a / 2) - a)."""
        return self.radius * (1 / math.cos(math.radians(angle) / 2) ** 2 - 1)

    def off(self, scatter):
        legs = sum(len(legs) for _, legs, _ in self.pieces) / len(self.pieces)
        own = max(scatter**2 - self.square, 0.0) / legs
        far = []
        for i, ((leg, length), (_, legs, angles)) in enumerate(zip(self.steps, self.pieces)):
            alike = [
                j for j, (_, _, others) in enumerate(self.pieces)
                if len(others) == len(angles) and all(abs(a - b) < 2 for a, b in zip(angles, others))
            ]  # fmt: skip
            worst = len(legs) * fits.one_sided(leg, math.sqrt(own + leg**2 / 12))
            worst += sum(self.rate(a) for a in angles) * self.angle / 2
            cut = self.pieces[i][0]
            as_long = [j for j, (other, _, _) in enumerate(self.pieces) if j != i and abs(cut - other) < length / 2]
            bent = len(alike) > 1
            far.append((worst if bent else 0.0) + (length / 2 if bent or as_long else 0.0))
        return np.array(far)


def numbers(pieces, chance, steps=None):
    """Cells of a row; steps that legs were read to, where the legs do not show them."""
    unit, turns, gain = design(pieces)
    beta, covariance, scatter, dof = fitted([unit], gain)
    radius = float(beta[0])
    readings = Readings(pieces, radius, steps or [read_to(legs) for _, legs, _ in pieces])
    least = math.sqrt(readings.square)
    scatter = None if scatter is None else max(scatter, least)
    cells = [radius, None, None, None, scatter, radius * (2 - math.pi / 2)]
    if dof > 0:
        error = scatter * math.sqrt(float(covariance[0, 0]))
        off = float(np.abs(covariance @ unit[None])[0] @ readings.off(scatter))
        half = stats.t.ppf(0.5 + chance / 2, dof) * error + off
        # No radius is below nothing.
        cells[1:4] = error, max(radius - half, 0.0), radius + half
    cells += [None] * 5
    # Told apart where the squared sine of the angle between the columns is 0.01 or more.
    sine2 = 1 - (unit @ turns) ** 2 / ((unit @ unit) * (turns @ turns))
    if len(gain) > 1 and sine2 >= 0.01:
        beta, covariance, scatter, dof = fitted([unit, turns], gain)
        scatter = None if scatter is None else max(scatter, least)
        cells[6], cells[8] = float(beta[0]), float(beta[1] / beta[0])
        if dof > 0:
            cells[7] = scatter * math.sqrt(float(covariance[0, 0]))
            off = np.abs(covariance @ np.array([unit, turns])) @ readings.off(scatter)
            cells[9:] = share_interval(beta, covariance, scatter, dof, chance, off) or [None, None]
    return cells


def samples():
    rng = random.Random(SEED)
    while True:
        radius, share = rng.uniform(10, 40), rng.choice([0.0, 0.0, 0.02, 0.05, -0.01])
        error = rng.choice([0.1, 0.3])
        choices = rng.choice([[90.0], [45.0, 90.0], [30.0, 60.0, 90.0, 120.0]])
        pieces = []
        for _ in range(rng.choice([1, 2, 3, 4, 6, 9])):
            angles = [round(rng.choice(choices) + rng.gauss(0, 1), 1) for _ in range(rng.choice([1, 1, 1, 2, 3]))]
            pieces.append(built(rng, radius, share, angles, error))
        yield pieces, rng.choice([0.8, 0.9, 0.95, 0.99])


def rows():
    lines = [HEADER]
    for pieces, chance in samples():
        if len(lines) > ROWS:
            return lines
        unit, _, gain = design(pieces)
        # Legs that miss the rest by more are refused, and that is tested elsewhere.
        if np.max(np.abs(gain - unit * float(fitted([unit], gain)[0][0]))) > 2.9:
            continue
        text = "|".join(" ".join([repr(n), ";".join(map(repr, legs)), ";".join(map(repr, a))]) for n, legs, a in pieces)
        cells = ["" if cell is None else repr(float(cell)) for cell in numbers(pieces, chance)]
        lines.append(",".join([text, repr(chance), *cells]))


if __name__ == "__main__":
    TABLE.write_text("\n".join(rows()) + "\n", encoding="ascii", newline="\n")
