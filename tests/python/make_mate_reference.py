"""Makes tests/tables/mate_reference.csv, the reference for how far a male thread turns into a female one.

None of the library's formulas is used. Both threads are rigid, coaxial, right-handed and single-start, with no
tolerances. In the axial section the male ridge and the female groove are trapezoids, half a pitch wide at their pitch
diameter, with straight flanks at the half angle. A taper changes the diameters along the axis and does not tilt the
flanks. With the male's tip at a depth inside the female:

- the male section at `s` from its tip lies at the depth less `s` from the female's mouth;
- along the helix, `t` turns from the tip, the male ridge has moved by `t` male pitches and the female groove by `t`
  female pitches, for `t` from 0 to the depth over the male pitch;
- at every `t` the crest and the root must clear, and where the radii of ridge and groove overlap, the ridge must lie
  in the groove. That allows an interval of axial offsets. One offset must do for all `t`: the intervals must meet.

The widths are linear in the radius, so they are compared at the two ends of the common radial range only. The depth is
found by bisection of "fits or does not"; no formula for the play or for the turns is used.

The pairs are invented: drawn with a fixed seed from the ranges below, which are those of no standard. What is drawn is
rounded to 1e-4 mm, and nothing in the table lies closer than `MARGIN_MM` to the edge between starting and not
starting, or between overlap and none. Diameters are at the entering end: the male's tip, the female's mouth. A taper
is a change of diameter per length, growing away from the tip and shrinking from the mouth.

Run it from anywhere: `python make_mate_reference.py`. The output is the same on every run.
"""

import math
import random
from dataclasses import astuple, dataclass, fields
from pathlib import Path

import numpy as np

TABLE = Path(__file__).resolve().parent.parent / "tables" / "mate_reference.csv"
ORIGIN = (
    "# Invented thread pairs, seed in make_mate_reference.py; turns by bisection of sampled sections to 1e-12, "
    "no closed form. inf: nothing stops it within 1000 mm."
)
# Any number does; the table is bound to this one.
SEED = 20_260_311
# As many as the table is to have.
PAIRS = 200
# Sections along the engaged helix, besides those where the overlap begins or ends. The extremes lie at the ends; those
# between guard against a mistake in that.
SECTIONS = 401
# Deeper than any thread of 20 mm is engaged.
DEEPEST_MM = 1000.0
# Of the depth; a hundredth of the 1e-10 the table is to be good for.
BISECTION = 1e-12
# Twenty times the rounding of what is drawn.
MARGIN_MM = 0.002
# The usual taper of pipe threads: 1 in 16 of diameter, exact in binary.
TAPER = 1 / 16


@dataclass(frozen=True)
class Profile:
    pitch_mm: float
    half_angle_deg: float
    major_mm: float
    pitch_diameter_mm: float
    minor_mm: float
    taper: float

    @property
    def tangent(self):
        return math.tan(math.radians(self.half_angle_deg))

    def grown(self, length):
        """Change of every diameter over a length, or over an array of lengths."""
        return self.taper * length

    def half_width(self, radius, growth):
        """Of the ridge of a male and of the groove of a female: both narrow outward."""
        return self.pitch_mm / 4 + ((self.pitch_diameter_mm + growth) / 2 - radius) * self.tangent

    def is_physical(self):
        """Diameters in order, and neither the ridge nor the groove comes to a point before its end."""
        ends = (self.half_width(d / 2, 0.0) for d in (self.major_mm, self.minor_mm))
        ordered = self.major_mm > self.pitch_diameter_mm > self.minor_mm > 0
        # A twentieth of the pitch as the least flat, on each side of the axis of symmetry: a choice.
        return ordered and all(0.05 * self.pitch_mm / 2 < w < 0.95 * self.pitch_mm / 2 for w in ends)


COLUMNS = [f"{side}_{field.name}" for side in ("male", "female") for field in fields(Profile)]
HEADER = ",".join([*COLUMNS, "starts", "overlap_mm", "turns"])


# --- the geometry ------------------------------------------------------------------------------------------


def sections(male, female, depth, s):
    """At each distance from the tip: radial overlap, crest and root clearance, and slack of ridge in groove."""
    m, f = male.grown(s), -female.grown(depth - s)
    low = np.maximum(male.minor_mm + m, female.minor_mm + f) / 2
    high = np.minimum(male.major_mm + m, female.major_mm + f) / 2
    crest = (female.major_mm + f - male.major_mm - m) / 2
    root = (female.minor_mm + f - male.minor_mm - m) / 2
    slack = np.minimum(*(female.half_width(r, f) - male.half_width(r, m) for r in (low, high)))
    return high - low, crest, root, slack


def fits(male, female, depth):
    """Whether one axial offset suits every section with the male's tip at a depth."""
    turns = depth / male.pitch_mm
    t = np.linspace(0.0, turns, SECTIONS) if depth > 0 else np.zeros(1)
    overlap, crest, root, _ = sections(male, female, depth, t * male.pitch_mm)
    if crest.min() < 0 or root.min() < 0:
        return False
    touching = overlap > 0
    # Where the overlap begins or ends between two sections, the two touch from there on.
    edges = np.flatnonzero(touching[1:] != touching[:-1])
    before, after = overlap[edges], overlap[edges + 1]
    edge_t = t[edges] + (t[edges + 1] - t[edges]) * before / (before - after)
    t = np.concatenate([t[touching], edge_t])
    if t.size == 0:
        return True
    *_, slack = sections(male, female, depth, t * male.pitch_mm)
    # Center of the ridge less center of the groove, before the common offset.
    drift = t * male.pitch_mm - t * female.pitch_mm
    least, most = -slack - drift, slack - drift
    return bool(slack.min() >= 0 and least.max() <= most.min())


def entering_overlap(male, female):
    return (male.major_mm - female.minor_mm) / 2


def reached_turns(male, female):
    """The largest number of turns without interference. What fits at a depth fits at every lesser one."""
    if not fits(male, female, 0.0):
        return 0.0
    if fits(male, female, DEEPEST_MM):
        return math.inf
    good, bad = 0.0, male.pitch_mm
    while fits(male, female, bad):
        good, bad = bad, 2 * bad
    while bad - good > BISECTION * bad:
        middle = (good + bad) / 2
        if fits(male, female, middle):
            good = middle
        else:
            bad = middle
    return good / male.pitch_mm


# --- the pairs ---------------------------------------------------------------------------------------------


def drawn_pitches(generator):
    male = generator.uniform(0.7, 2.0)
    kind = generator.random()
    if kind < 0.15:
        difference = 0.0
    elif kind < 0.30:
        difference = generator.uniform(0.004, 0.02)
    elif kind < 0.75:
        difference = generator.uniform(0.02, 0.1)
    else:
        difference = generator.uniform(0.1, 0.3)
    female = male + (difference if generator.random() < 0.5 else -difference)
    return round(male, 4), round(female, 4)


def drawn_half_angles(generator):
    """Mostly 30 degrees; 55-degree threads have 27.5."""
    kind = generator.random()
    if kind < 0.70:
        return 30.0, 30.0
    if kind < 0.84:
        return 27.5, 27.5
    return (30.0, 27.5) if kind < 0.92 else (27.5, 30.0)


def drawn_profiles(generator, wish, tapers):
    """One attempt at a pair; it need not be what was wished for, nor physical."""
    pitch_m, pitch_f = drawn_pitches(generator)
    angle_m, angle_f = drawn_half_angles(generator)
    tangent = math.tan(math.radians((angle_m + angle_f) / 2))
    # The slack of the ridge in the groove at the pitch line, on each side, from a hundredth to a fifth of a mm.
    slack = 0.01 * 20 ** generator.random()
    if wish == "flank":
        slack = -slack
    pitch_diameter_m = generator.uniform(6.0, 20.0)
    pitch_diameter_f = pitch_diameter_m + 2 * (slack - (pitch_f - pitch_m) / 4) / tangent
    major_m = pitch_diameter_m + generator.uniform(0.50, 0.68) * pitch_m
    minor_m = pitch_diameter_m - generator.uniform(0.50, 0.65) * pitch_m
    major_f = pitch_diameter_f + generator.uniform(0.50, 0.72) * pitch_f
    minor_f = pitch_diameter_f - generator.uniform(0.40, 0.65) * pitch_f
    if wish == "clear":
        # A female so much larger that the male passes through it, by up to 0.15 mm all round.
        larger = major_m - minor_f + 2 * generator.uniform(0.01, 0.15)
        major_f, pitch_diameter_f, minor_f = major_f + larger, pitch_diameter_f + larger, minor_f + larger
    diameters_m = (round(d, 4) for d in (major_m, pitch_diameter_m, minor_m))
    diameters_f = (round(d, 4) for d in (major_f, pitch_diameter_f, minor_f))
    return (
        Profile(pitch_m, angle_m, *diameters_m, tapers[0]),
        Profile(pitch_f, angle_f, *diameters_f, tapers[1]),
    )


def is_wished(male, female, wish):
    """Whether a pair is physical, is what was wished for, and is so by more than the margin."""
    if not (male.is_physical() and female.is_physical()):
        return False
    overlap, crest, root, slack = (float(value[0]) for value in sections(male, female, 0.0, np.zeros(1)))
    values = {"clear": overlap, "crest": crest, "root": root, "flank": slack}
    if wish == "clear":
        del values["flank"]
    if min(abs(value) for value in values.values()) < MARGIN_MM:
        return False
    negative = [name for name, value in values.items() if name != "clear" and value < 0]
    if (overlap < 0) != (wish == "clear") or negative != ([] if wish in ("clear", "fit") else [wish]):
        return False
    # Before any taper, between a tenth of a turn and 40, which is more than a fitting of this size has.
    difference = abs(male.pitch_mm - female.pitch_mm)
    return wish != "fit" or difference == 0 or 0.1 <= 2 * slack / difference <= 40


def pairs():
    """Of ten pairs, seven have no taper, one only the male's, one only the female's and one both."""
    generator = random.Random(SEED)
    tapers = [(0.0, 0.0)] * 7 + [(TAPER, 0.0), (0.0, TAPER), (TAPER, TAPER)]
    for n in range(PAIRS):
        kind = generator.random()
        # A quarter does not start, one twelfth for each reason; some do not touch at first, or at all.
        wish = "flank" if kind < 1 / 12 else "crest" if kind < 2 / 12 else "root" if kind < 3 / 12 else "fit"
        if kind > 0.91:
            wish = "clear"
        while True:
            pair = drawn_profiles(generator, wish, tapers[n % 10])
            if is_wished(*pair, wish):
                yield pair
                break


# --- the table ---------------------------------------------------------------------------------------------


def row(male, female):
    starts = "yes" if fits(male, female, 0.0) else "no"
    numbers = (*astuple(male), *astuple(female))
    results = entering_overlap(male, female), reached_turns(male, female)
    return ",".join([*map(repr, numbers), starts, *map(repr, results)])


def profiles(text):
    """The pair of a row of the table."""
    numbers = [float(cell) for cell in text.split(",")[: len(COLUMNS)]]
    half = len(COLUMNS) // 2
    return Profile(*numbers[:half]), Profile(*numbers[half:])


def rows():
    return [ORIGIN, HEADER, *(row(*pair) for pair in pairs())]


if __name__ == "__main__":
    made = rows()
    TABLE.write_text("\n".join(made) + "\n", encoding="ascii")
    print(f"{TABLE}: {len(made) - 2} rows")
