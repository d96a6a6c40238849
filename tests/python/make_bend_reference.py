"""Makes tests/tables/bend_reference.csv, the reference for arc, tangent length and gain of one bend.

None of the library's formulas is used. The bend is a curve, `R (sin t, 1 - cos t)` for `t` from 0 to the angle,
and everything is taken from it with mpmath:

- arc: the speed of the curve, from its numerical derivative, integrated by quadrature;
- tangent length: the two tangent lines are intersected, and the distance from their corner to the start is taken;
- gain: twice the tangent length less the arc, with digits enough to survive the difference.

Run it from anywhere: `python make_bend_reference.py`. The output is the same on every run.
"""

import random
from pathlib import Path

from mpmath import mp, mpf

TABLE = Path(__file__).resolve().parent.parent / "tables" / "bend_reference.csv"
HEADER = "radius_mm,angle_deg,arc_mm,tangent_length_mm,gain_mm"
SEED = 20_260_105
# The gain at 1e-6 degrees is 17 orders below the lengths it is the difference of.
DIGITS = 60
WRITTEN = 20

RADII = ["14.3", "14.2875", "9.525", "25", "1", "600", "10000"]
ANGLES = [
    "0.000001", "0.00001", "0.0001", "0.001", "0.01", "0.1", "1", "2.5", "5", "10", "15", "20", "22", "22.5",
    "22.9", "22.92", "23", "25", "30", "36", "45", "60", "72", "75", "90", "105", "120", "135", "150", "165",
    "170", "175", "178", "179",
]  # fmt: skip
RANDOM_PAIRS = 62


def pairs():
    """Radius and angle as decimals. The lists cross the angle at which a series takes over in the library."""
    for radius in RADII:
        for angle in ANGLES:
            yield radius, angle
    generator = random.Random(SEED)
    for _ in range(RANDOM_PAIRS):
        yield f"{generator.uniform(1, 10000):.4f}", f"{generator.uniform(0.001, 179):.5f}"


def curve(radius, t):
    return radius * mp.sin(t), radius * (1 - mp.cos(t))


def velocity(radius, t):
    return mp.diff(lambda s: curve(radius, s)[0], t), mp.diff(lambda s: curve(radius, s)[1], t)


def speed(radius, t):
    x, y = velocity(radius, t)
    return mp.sqrt(x * x + y * y)


def tangent_length(radius, angle):
    """Where start + u * direction meets end + v * direction: two equations in u and v, solved for u."""
    (x0, y0), (x1, y1) = curve(radius, mpf(0)), curve(radius, angle)
    (a0, b0), (a1, b1) = velocity(radius, mpf(0)), velocity(radius, angle)
    u = ((x1 - x0) * b1 - (y1 - y0) * a1) / (a0 * b1 - b0 * a1)
    return u * mp.sqrt(a0 * a0 + b0 * b0)


def row(radius_text, angle_text):
    with mp.workdps(DIGITS):
        radius, angle = mpf(radius_text), mp.radians(mpf(angle_text))
        # The speed of a smooth curve: a few nodes of Gauss-Legendre are exact to the digits written.
        arc = mp.quad(lambda t: speed(radius, t), [0, angle], method="gauss-legendre", maxdegree=3)
        tangent = tangent_length(radius, angle)
        values = arc, tangent, 2 * tangent - arc
        return ",".join([radius_text, angle_text, *(mp.nstr(value, WRITTEN) for value in values)])


def rows():
    return [HEADER, *(row(radius, angle) for radius, angle in pairs())]


if __name__ == "__main__":
    TABLE.write_text("\n".join(rows()) + "\n", encoding="ascii")
    print(f"{TABLE}: {len(rows()) - 1} rows")
