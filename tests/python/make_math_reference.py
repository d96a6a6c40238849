"""Makes tests/tables/math_reference.csv, the reference for the `math` module of the core.

Every result is computed with mpmath at 50 digits and then rounded once, correctly, to the nearest double.
Run it from anywhere: `python make_math_reference.py`. `--coefficients` prints the constants of the kernels
instead. The output is the same on every run.
"""

import math
import random
import struct
import sys
from fractions import Fraction
from pathlib import Path

from mpmath import mp, mpf

TABLE = Path(__file__).resolve().parent.parent / "tables" / "math_reference.csv"
HEADER = "function,x_bits_hex,y_bits_hex,result_bits_hex"
SEED = 20_240_229
LIMIT = 1.0e5
NAN = 0x7FF8_0000_0000_0000
SIGN_BIT = 1 << 63

# Digits; set for each table, because another module may set its own.
DIGITS = 50


def bits(value):
    return struct.unpack("<Q", struct.pack("<d", value))[0]


def from_bits(pattern):
    return struct.unpack("<d", struct.pack("<Q", pattern))[0]


def exact(value):
    """An mpmath number as a fraction."""
    sign, mantissa, exponent, _ = value._mpf_
    return Fraction(-int(mantissa) if sign else int(mantissa)) * Fraction(2) ** exponent


def rounded(value):
    """Nearest double of an mpmath number; Python divides integers correctly rounded, subnormals too."""
    return float(exact(value))


# --- the functions -----------------------------------------------------------------------------------------


def trig_bits(function, x):
    """Result bits of `sin`, `cos` or `tan`; mpmath has no signed zero, so zeros take theirs from `x`."""
    if math.isnan(x) or math.isinf(x):
        return NAN
    if x == 0.0:
        return bits(1.0 if function == "cos" else x)
    return bits(rounded(getattr(mp, function)(mpf(x))))


def atan2_bits(y, x):
    """Result bits of `atan2`: the angle for `abs(y)`, then the sign of `y`."""
    if math.isnan(y) or math.isnan(x):
        return NAN
    left = math.copysign(1.0, x) < 0.0
    height, width = abs(y), abs(x)
    if math.isinf(height) or math.isinf(width):
        height, width = float(math.isinf(height)), float(math.isinf(width))
    if height == 0.0:
        angle = mp.pi if left else mpf(0)
    else:
        angle = mp.atan2(mpf(height), -mpf(width) if left else mpf(width))
    return bits(rounded(+angle)) | (bits(y) & SIGN_BIT)


# --- the arguments -----------------------------------------------------------------------------------------


def neighbors(value, steps):
    """The double nearest to `value` and the next ones on both sides."""
    center = bits(rounded(value))
    return [from_bits(center + step) for step in range(-steps, steps + 1)]


def closest_quarter_turns(count):
    """Arguments within the limit for which `x` comes closest to a multiple of pi/2."""
    with mp.workdps(80):
        half_pi = exact(mp.pi / 2)
    found = []
    for n in range(1, int(LIMIT / (math.pi / 2)) + 1):
        x = float(n * half_pi)
        found.append((abs(Fraction(x) - n * half_pi), x))
    return [x for _, x in sorted(found)[:count]]


def magnitude(rng, low, high):
    """A number with a uniformly random exponent of two, mantissa and sign."""
    return rng.choice((-1.0, 1.0)) * math.ldexp(rng.uniform(1.0, 2.0), rng.randint(low, high))


def trig_arguments():
    rng = random.Random(SEED)
    values = [0.0, -0.0, math.nan, math.inf, -math.inf, LIMIT, -LIMIT]
    values += [5e-324, -5e-324, 2.225073858507201e-308, 2.2250738585072014e-308, 1e-300, -1e-300]
    values += [rng.choice((-1.0, 1.0)) * 10.0 ** -e * rng.uniform(1.0, 10.0) for e in range(1, 301, 4)]
    values += [i * 4.0 * math.pi / 500.0 for i in range(501)]
    values += [rng.uniform(0.0, 4.0 * math.pi) for _ in range(200)]
    values += [rng.uniform(-LIMIT, LIMIT) for _ in range(300)]
    values += [magnitude(rng, -30, 15) for _ in range(200)]
    for eighth in range(1, 33):
        values += neighbors(eighth * mp.pi / 4, 2)
    for _ in range(40):
        values += neighbors(rng.randint(33, int(LIMIT / math.pi * 4)) * mp.pi / 4, 1)
    values += closest_quarter_turns(100)
    return values


def atan2_arguments():
    rng = random.Random(SEED + 1)
    edge = [0.0, 5e-324, 2.2250738585072014e-308, 1.0, 1.7976931348623157e308, math.inf]
    edge += [-value for value in edge] + [math.nan]
    pairs = [(y, x) for y in edge for x in edge]
    for _ in range(500):
        pairs.append((rng.uniform(-5.0, 5.0), rng.uniform(-5.0, 5.0)))
    for _ in range(400):
        pairs.append((magnitude(rng, -40, 40), magnitude(rng, -40, 40)))
    for _ in range(400):
        pairs.append((magnitude(rng, -1074, 1023), magnitude(rng, -1074, 1023)))
    for _ in range(200):  # results around the smallest normal number
        x = abs(magnitude(rng, -40, 1000))
        pairs.append((x * magnitude(rng, -1074, -1015), x))
    for _ in range(200):  # both small, both large
        pairs.append((magnitude(rng, -1074, -1000), magnitude(rng, -1074, -1000)))
        pairs.append((magnitude(rng, 1000, 1023), magnitude(rng, 1000, 1023)))
    for _ in range(100):  # at the places where the method changes: tan(pi/8) and the diagonal
        for ratio in (math.tan(math.pi / 8.0), 1.0):
            x = magnitude(rng, -4, 4)
            y = from_bits(bits(x * ratio) + rng.randint(-3, 3))
            pairs += [(y, x), (x, -y)]
    return pairs


def ln_arguments():
    rng = random.Random(SEED + 2)
    values = [0.0, -0.0, -1.0, 1.0, 5e-324, 2.2250738585072014e-308, 1.7976931348623157e308, math.inf, math.nan]
    values += neighbors(mpf(1), 20) + neighbors(mp.sqrt(0.5), 5) + neighbors(mp.sqrt(2), 5)
    values += [rng.uniform(0.4, 2.5) for _ in range(600)]
    values += [1.0 + rng.uniform(-1e-3, 1e-3) for _ in range(300)]
    values += [abs(magnitude(rng, -1074, 1023)) for _ in range(500)]
    values += [abs(magnitude(rng, -1074, -1020)) for _ in range(100)]
    return values


def ln_bits(x):
    if math.isnan(x) or x < 0.0:
        return bits(math.nan)
    if x == 0.0:
        return bits(-math.inf)
    if math.isinf(x):
        return bits(math.inf)
    return bits(rounded(mp.log(mpf(x)))) if x != 1.0 else bits(0.0)


def exp_arguments():
    rng = random.Random(SEED + 3)
    values = [0.0, -0.0, 1.0, -1.0, 5e-324, 709.0, -708.0, 709.5, -708.5, math.inf, -math.inf, math.nan]
    values += [rng.uniform(-5.0, 5.0) for _ in range(300)]
    values += [rng.uniform(-708.0, 709.0) for _ in range(150)]
    values += [magnitude(rng, -60, 3) for _ in range(80)]
    for n in range(-6, 7):  # where the whole number of ln 2 changes
        values += neighbors((n + mpf(0.5)) * mp.log(2), 2)
    return values


def exp_bits(x):
    if not -708.0 <= x <= 709.0:
        return NAN
    return bits(rounded(mp.exp(mpf(x))))


def asin_arguments():
    rng = random.Random(SEED + 5)
    values = [0.0, -0.0, 1.0, -1.0, 0.5, -0.5, 5e-324, 1.0000000000000002, -1.5, math.inf, math.nan]
    values += neighbors(mpf(0.5), 10) + neighbors(mpf(1) - mpf(2) ** -50, 3)
    values += [rng.uniform(-1.0, 1.0) for _ in range(450)]
    values += [magnitude(rng, -60, -1) for _ in range(60)]
    values += [rng.choice((-1.0, 1.0)) * (1.0 - 2.0 ** -rng.uniform(1, 52)) for _ in range(60)]
    return values


def asin_bits(x):
    if not -1.0 <= x <= 1.0:
        return NAN
    return bits(rounded(mp.asin(mpf(x)))) if x else bits(x)


def cbrt_arguments():
    rng = random.Random(SEED + 4)
    values = [0.0, -0.0, 1.0, -1.0, 8.0, 27.0, 0.125, math.nan]
    values += [rng.uniform(1e-3, 100.0) for _ in range(400)]
    values += [abs(magnitude(rng, -300, 300)) for _ in range(150)]
    return values


def cbrt_bits(x):
    if math.isnan(x) or x < 0.0:
        return NAN
    return bits(rounded(mp.cbrt(mpf(x)))) if x else bits(x)


# --- the table ---------------------------------------------------------------------------------------------


def rows():
    """The lines of the table, header first."""
    with mp.workdps(DIGITS):
        return table()


def table():
    lines = [HEADER]
    arguments = trig_arguments()
    for function in ("sin", "cos", "tan"):
        lines += [f"{function},{bits(x):016x},,{trig_bits(function, x):016x}" for x in arguments]
    lines += [f"ln,{bits(x):016x},,{ln_bits(x):016x}" for x in ln_arguments()]
    lines += [f"exp,{bits(x):016x},,{exp_bits(x):016x}" for x in exp_arguments()]
    lines += [f"asin,{bits(x):016x},,{asin_bits(x):016x}" for x in asin_arguments()]
    lines += [f"cbrt,{bits(x):016x},,{cbrt_bits(x):016x}" for x in cbrt_arguments()]
    lines += [f"atan2,{bits(x):016x},{bits(y):016x},{atan2_bits(y, x):016x}" for y, x in atan2_arguments()]
    return lines


# --- the constants of the kernels --------------------------------------------------------------------------


def parts(value, count, width):
    """`value` as a sum of doubles, all but the last cut to `width` significant bits."""
    result = []
    for _ in range(count - 1):
        mantissa, exponent = mp.frexp(value)
        result.append(rounded(mp.ldexp(mp.floor(mp.ldexp(mantissa, width)), exponent - width)))
        value -= mpf(result[-1])
    return result + [rounded(value)]


def fitted(function, end, count):
    """Chebyshev fit with `count` coefficients on `[0, end]`, lowest first, each rounded to double.

    The lower end is not quite zero because the functions are quotients that vanish there.
    """
    return [rounded(c) for c in mp.chebyfit(function, [mpf(10) ** -20, end], count, asc=True)]


def constants():
    """Names in the Rust source and their values."""
    with mp.workdps(60):

        def sin_p(z):
            return (mp.sin(mp.sqrt(z)) / mp.sqrt(z) - 1) / z

        def cos_q(z):
            return (mp.cos(mp.sqrt(z)) - 1 + z / 2) / z**2

        def asin_p(z):
            return (mp.asin(mp.sqrt(z)) / mp.sqrt(z) - 1) / z

        def atan_r(z):
            return (mp.atan(mp.sqrt(z)) / mp.sqrt(z) - 1) / z

        def lost(u):
            # From the integral over a disc of radius 1 of the height above the elastic core, t, times the height.
            t = 1 - u
            carried = mp.asin(t) / 2 + t * mp.sqrt(1 - t * t) * (5 - 2 * t * t) / 6
            return (mp.pi / 4 - carried) / (u * u * mp.sqrt(u))

        return {
            "HALF_PI": parts(mp.pi / 2, 4, 33),
            "QUARTER_PI": parts(mp.pi / 4, 2, 33),
            "SIN": fitted(sin_p, (mp.pi / 4) ** 2, 7),
            "COS": fitted(cos_q, (mp.pi / 4) ** 2, 6),
            "ASIN": fitted(asin_p, mpf(1) / 4, 13),
            "ATAN": fitted(atan_r, mp.tan(mp.pi / 8) ** 2, 12),
            "LOST": fitted(lost, mpf(1), 16),
        }


if __name__ == "__main__":
    if "--coefficients" in sys.argv:
        for name, values in constants().items():
            print(name, *(f"    {value!r}," for value in values), sep="\n")
    else:
        TABLE.write_text("\n".join(rows()) + "\n", encoding="ascii", newline="\n")
