"""Makes tests/tables/bending/moment_reference.csv: the bending moment of round tube by quadrature.

The moment is the integral of stress times height over the section, taken with mpmath at 30 digits over one quarter and
split where the integrand has corners: at the bore and at the height up to which the wall is elastic. No closed form is
used. Tubes and materials are random with a fixed seed and cover cores inside the bore, in the wall, and beyond the
surface; then come tubes whose core ends a hair from the surface or from the bore, where closed forms lose digits. Run it from anywhere: `python make_springback_reference.py`.
"""

import random
from pathlib import Path

from mpmath import mp, mpf

TABLE = Path(__file__).resolve().parent.parent / "tables" / "bending" / "moment_reference.csv"
HEADER = "od_mm,wall_mm,law,modulus_mpa,first,second,radius_mm,moment_nmm,left_times_radius"
SEED = 20_261_125
ROWS = 240
# Distances of the core from the surface or the bore, as shares: from plain to a few roundings.
NEAR = [1e-3, 1e-5, 1e-7, 1e-9, 1e-10, 1e-11, 1e-12, 1e-13, 1e-14, 1e-15]

DIGITS = 30


def stress(law, modulus, first, second):
    """Stress at a positive strain."""
    if law == "power":
        # The elastic line is below the power law until they cross; beyond it the power law is below.
        return lambda strain: min(modulus * strain, first * strain**second)
    return lambda strain: min(modulus * strain, first + second * (strain - first / modulus))


def elastic_height(law, modulus, first, second, radius):
    if law == "power":
        return radius * (first / modulus) ** (1 / (1 - second))
    return radius * first / modulus


def moment(od, wall, law, modulus, first, second, radius):
    """Twice the integral over the upper half: stress, height and the width of the metal there."""
    outer, bore = mpf(od) / 2, mpf(od) / 2 - mpf(wall)
    modulus, first, second, radius = mpf(modulus), mpf(first), mpf(second), mpf(radius)
    law_of = stress(law, modulus, first, second)
    corners = {mpf(0), outer}
    corners |= {y for y in (bore, elastic_height(law, modulus, first, second, radius)) if 0 < y < outer}
    corners = sorted(corners)

    def slice_of(low, high):
        # y = low + (high - low) sin^2: takes the square roots at the ends of a piece away.
        def f(u):
            sine = mp.sin(u)
            y = low + (high - low) * sine * sine
            chord = mp.sqrt(max(outer * outer - y * y, mpf(0)))
            hole = mp.sqrt(max(bore * bore - y * y, mpf(0)))
            return 2 * (chord - hole) * law_of(y / radius) * y * 2 * (high - low) * sine * mp.cos(u)

        return mp.quad(f, [0, mp.pi / 4, mp.pi / 2])

    return 2 * sum(slice_of(low, high) for low, high in zip(corners, corners[1:]))


def left_times_radius(od, wall, modulus, radius, m):
    """Curvature that remains, times the radius: 1 - M R / (E I)."""
    outer, bore = mpf(od) / 2, mpf(od) / 2 - mpf(wall)
    return 1 - m * mpf(radius) / (mpf(modulus) * mp.pi / 4 * (outer**4 - bore**4))


def tubes():
    rng = random.Random(SEED)
    for number in range(ROWS):
        od = rng.choice([3.175, 4.75, 4.7625, 6.0, 6.35, 8.0, 9.525, 10.0, 12.0])
        wall = round(max(0.11, rng.uniform(0.05, 0.5) * od / 2 if number % 3 else rng.uniform(0.5, 1.2)), 4)
        modulus = round(rng.uniform(70_000, 210_000), 1)
        law = ("plastic", "bilinear", "power")[number % 3]
        if law == "power":
            first, second = round(rng.uniform(250, 1500), 2), round(rng.uniform(0.0, 0.55), 4)
            height = (first / modulus) ** (1 / (1 - second))
        else:
            first = round(rng.uniform(60, 500), 2)
            second = round(rng.uniform(200, 8000), 1) if law == "bilinear" else 0.0
            height = first / modulus
        # A third each: core in the bore, in the wall, and around or beyond the surface.
        bore, outer = od / 2 - wall, od / 2
        low, high = ((0.02, 0.95 * bore / outer), (bore / outer, 1.0), (0.97, 1.3))[rng.randrange(3)]
        radius = round(rng.uniform(low, max(high, low + 0.01)) * outer / height, 4)
        radius = min(max(radius, round(0.51 * od, 4)), 900_000.0)
        yield od, wall, law, modulus, first, second, radius


def edges():
    """Tubes with a core a hair below the surface, or below and above the bore, for each law; one is thin, one a bar."""
    for od, wall in ((4.7625, 0.7112), (12.0, 0.11), (10.0, 5.0)):
        for law, first, second in (("plastic", 250.0, 0.0), ("bilinear", 250.0, 2070.0), ("power", 600.0, 0.21)):
            modulus = 207_000.0
            strain = elastic_height(law, mpf(modulus), mpf(first), mpf(second), mpf(1))
            for height in (od / 2, od / 2 - wall):
                for share in NEAR if height > 0 else []:
                    yield od, wall, law, modulus, first, second, float(height * (1 - share) / strain)
                    if height < od / 2 and share < 1e-8:
                        yield od, wall, law, modulus, first, second, float(height * (1 + share) / strain)


def row(tube):
    od, wall, law, modulus, first, second, radius = tube
    m = moment(*tube)
    left = left_times_radius(od, wall, modulus, radius, m)
    return ",".join([*map(repr, (od, wall)), law, *map(repr, (modulus, first, second, radius)), mp.nstr(m, 20), mp.nstr(left, 20)])


def rows():
    with mp.workdps(DIGITS):
        return [HEADER] + [row(tube) for tube in [*tubes(), *edges()]]


if __name__ == "__main__":
    TABLE.write_text("\n".join(rows()) + "\n", encoding="ascii", newline="\n")
