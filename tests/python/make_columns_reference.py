"""Makes tests/tables/bending/columns_reference.csv: the curvature that remains of the tubes that the benchmarks use.

The first of the same random tubes, and further ones of the rare kinds (a counter through a mixer of bits, see `mix`), each moment by quadrature with
mpmath at 30 digits as in `make_springback_reference.py`. Run it from anywhere.
"""

import math
from pathlib import Path

import make_springback_reference as springback
from mpmath import mp

TABLE = Path(__file__).resolve().parent.parent / "tables" / "bending" / "columns_reference.csv"
HEADER = "od_mm,wall_mm,modulus_mpa,yield_mpa,tangent_mpa,radius_mm,left_times_radius"
SEED = 20_250_303
ROWS = 240
# Most of them yield through to the bore: of the next tubes, as many as this that do not, of each kind.
RARE = 30
OD_MM = (4.76, 6.0, 6.35, 8.0, 9.53, 10.0, 12.0)
ALL_BITS = (1 << 64) - 1


def mix(z):
    """The mixer of splitmix64 (public domain)."""
    z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9 & ALL_BITS
    z = (z ^ (z >> 27)) * 0x94D049BB133111EB & ALL_BITS
    return z ^ (z >> 31)


def unit(stream, i):
    """A number from 0 to below 1."""
    key = mix((SEED ^ stream * 0xD1342543DE82EF95) & ALL_BITS)
    return (mix((key + (i + 1) * 0x9E3779B97F4A7C15) & ALL_BITS) >> 11) * 2.0**-53


def between(low, high, stream, i):
    return low + (high - low) * unit(stream, i)


def tube(i):
    od = OD_MM[math.floor(7.0 * unit(1, i))]
    wall = between(0.6, 1.5, 2, i)
    radius = od * math.exp(between(math.log(1.5), math.log(400.0), 3, i))
    return od, wall, between(100e3, 210e3, 4, i), between(80.0, 350.0, 5, i), between(500.0, 5000.0, 6, i), radius


def row(numbers):
    od, wall, modulus, strength, tangent, radius = numbers
    m = springback.moment(od, wall, "bilinear", modulus, strength, tangent, radius)
    left = springback.left_times_radius(od, wall, modulus, radius, m)
    return ",".join([*map(repr, numbers), mp.nstr(left, 20)])


def kind(numbers):
    """Where the elastic core ends: nowhere, in the wall, or in the bore."""
    od, wall, modulus, strength, _, radius = numbers
    core = strength / modulus * radius
    return "elastic" if core >= od / 2 else "wall" if core > od / 2 - wall else "bore"


def tubes():
    yield from map(tube, range(ROWS))
    wanted = {"elastic": RARE, "wall": RARE}
    i = ROWS
    while any(wanted.values()):
        numbers = tube(i)
        if wanted.get(kind(numbers)):
            wanted[kind(numbers)] -= 1
            yield numbers
        i += 1


def rows():
    with mp.workdps(springback.DIGITS):
        return [HEADER] + [row(numbers) for numbers in tubes()]


if __name__ == "__main__":
    TABLE.write_text("\n".join(rows()) + "\n", encoding="ascii", newline="\n")
