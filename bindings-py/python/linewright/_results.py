"""Answers that consist of named parts: frozen, and written as the call that makes them again."""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

if TYPE_CHECKING:
    from ._native import Angle, Assumption, Length, Pressure, Problem, Strength, Thread

Point = tuple["Length", "Length", "Length"]
Vector = tuple[float, float, float]


class Loaded(NamedTuple):
    """Something to be loaded onto the tube before an end is closed."""

    side: str
    what: str
    facing: str


class TapeCheck(NamedTuple):
    """The distance that shows best whether the plane of a bend was turned rightly.

    `change` is how much it changes at the least when the turn is 10 degrees off; where that is less than a tape shows,
    the turn must be checked by its angle.
    """

    bend: int
    start: str
    end: str
    distance: Length
    change: Length


class TurnCheck(NamedTuple):
    """The turn of a bend in every form a bench can use; `words` only for whole quarters."""

    bend: int
    rotation: Angle
    words: str | None
    clock: str
    level_legs: tuple[int, int]
    read_leg: int
    reading: Angle
    text: str


class Change(NamedTuple):
    """One difference between two plans."""

    what: str
    before: str
    after: str


class Advice(NamedTuple):
    """Further trial bends: the angles to set, how well the wanted settings are known then, and whether that is enough."""

    angles: tuple[Angle, ...]
    reaches: Angle
    is_enough: bool


class Stretch(NamedTuple):
    """Radius of a former's arcs with its standard error, and how much longer an arc is than the tube that went into it.

    `share` is a share of the arc, negative where it is shorter. `radius_error` and `interval` are None for two pieces, and
    `interval` also where the pieces say so little that it has no end; one that holds 0 means that no stretch was shown.
    """

    radius: Length
    radius_error: Length | None
    share: float
    interval: tuple[float, float] | None


class PowerLaw(NamedTuple):
    """True stress beyond yield: strength_coefficient x true strain ^ exponent."""

    strength_coefficient: Pressure
    exponent: float


class Figure(NamedTuple):
    """A figure of a metal or a fluid, where it was read, and how that was checked."""

    value: Pressure | PowerLaw | float
    source: str
    checked: str


class LengthRange(NamedTuple):
    """Smallest and largest value of a length that two assumptions bound."""

    least: Length
    most: Length


class FreeWrinkling(NamedTuple):
    """The compression inside a bend against the one at which a free, thin cylinder begins to wrinkle.

    `wall_share` is the wall as a share of its middle radius; the criterion holds up to a tenth. `needs_groove` is None
    where it does not say; `words` has the reason.
    """

    compression: float
    critical: float
    wall_share: float
    needs_groove: bool | None
    words: str


class RadiusRule(NamedTuple):
    """A smallest centerline radius that a public text gives, and what it is said of."""

    scope: str
    least: Length
    source: str
    checked: str


class SectionLimit(NamedTuple):
    """A limit of flattening, ovality or wrinkles that a public text gives, and what it is said of."""

    measure: str
    scope: str
    limit: float
    source: str
    checked: str


class WallReserve(NamedTuple):
    """Wall to have before bending, as a multiple of the wall that is needed."""

    radius_in_diameters: float
    multiple: float
    source: str
    checked: str


class Place(NamedTuple):
    """A place on a path: the point, the direction from A to B and the normal of the bend plane, of length one."""

    point: Point
    direction: Vector
    normal: Vector


class Extent(NamedTuple):
    """The box that a line fills: its corners with the smallest and the largest coordinates, and its sides."""

    low: Point
    high: Point
    size: Point


class Clip(NamedTuple):
    """A clip: its distance along the center line from end A, and the bend it falls into, if it does."""

    station: Length
    in_bend: int | None


class Clips(NamedTuple):
    """The clips of a line, and what is worth knowing about them."""

    clips: tuple[Clip, ...]
    problems: tuple[Problem, ...]


class TapeCut(NamedTuple):
    """A cut length at a stated chance of being long enough, the terms it is the sum of, and what it rests on."""

    length: Length
    rounded: Length
    sigma: Length
    chance: float
    floor_acts: bool
    terms: tuple[tuple[str, Length], ...]
    assumptions: tuple[Assumption, ...]

    def __str__(self) -> str:
        """The sum, the cut length in whole millimeters, and every assumption."""
        rows = [f"{what:<44}{length.mm:>10.1f} mm" for what, length in self.terms]
        rows.append(f"= {self.length.mm:.1f} mm, cut {self.rounded.mm:.0f} mm: long enough with a chance of {self.chance:g}")
        rows += [f"assumed {assumption}" for assumption in self.assumptions]
        return "\n".join(rows)


class DiameterLimits(NamedTuple):
    """The smallest and the largest of a diameter; None where the standard sets no limit."""

    min: Length | None
    max: Length | None


class Candidate(NamedTuple):
    """A thread that the readings allow.

    `share` is its share of the likelihood, `diameter` what a part of it can have over the crests, wear included, and
    `ten_pitches` what ten pitches of it measure.
    """

    thread: Thread
    share: float
    diameter: DiameterLimits
    ten_pitches: Length


class IdealCylinderPressure(NamedTuple):
    """The pressure at which an ideal cylinder meets the caller's strength divided by the caller's factor.

    `place` is where around a bend, None for a straight, and `wall` is the wall there. `excludes` is what it leaves out, and
    `text` all of it as a sentence: it is no statement that a line may be used at this pressure.
    """

    pressure: Pressure
    theory: str
    strength: Strength
    place: str | None
    wall: Length
    excludes: str
    text: str


class Margin(NamedTuple):
    """How often a stress goes into the caller's strength, beside the factor asked for: of an ideal cylinder, no line."""

    found: float
    asked: float
    is_reached: bool


class SizeTolerance(NamedTuple):
    """How far a tube may be off its size; `od_plus_minus` is None where the text was not seen to say."""

    scope: str
    wall: Length
    wall_plus_minus: Length
    od_plus_minus: Length | None
    source: str
    checked: str


class SpacingRow(NamedTuple):
    """Distance between clips by a public text; `least` is None where the row gives only one."""

    scope: str
    least: Length | None
    most: Length
    source: str
    checked: str


class Engagement(NamedTuple):
    """One measured part in another: whether it starts, and how far it goes.

    `overlap` is radial, at the end that enters first, and negative where the crests pass each other. `length` and
    `turns` are what is engaged until the play is used up; None where nothing binds.
    """

    starts: bool
    overlap: Length
    length: Length | None
    turns: float | None


class Separation(NamedTuple):
    """A way to tell two threads apart: the least and the most that a measurement gives for the first and the second.

    `measure` is "hand", "ten pitches", "diameter", "taper over 5 mm" or "flank angle"; what is expected of the hand is
    "right" or "left". `separates` says whether what is to be
    expected of the two does not overlap, the error of the measurement included; `words` is all of it as a sentence.
    """

    measure: str
    first: tuple[Length, Length] | tuple[Angle, Angle] | tuple[str, str]
    second: tuple[Length, Length] | tuple[Angle, Angle] | tuple[str, str]
    separates: bool
    words: str


class Identification(NamedTuple):
    """What a measured thread may be: the threads that the readings allow, the likeliest first.

    `nearest` is the thread of the list that comes nearest where none is allowed. `next` is the one of `ways` that tells
    the leading two apart; None where there are no two, or none does. `advice` says in words what to do next.
    """

    candidates: tuple[Candidate, ...]
    nearest: Thread | None
    next: Separation | None
    ways: tuple[Separation, ...]
    advice: str


class Stripping(NamedTuple):
    """Shear areas of a pair of threads over an engaged length, each the worst first and then the best.

    `engaged` is the wanted length, or what is reached before the threads bind. `external_mm2` and `internal_mm2` are
    the areas of the male's and of the female's ridge in square millimeters. `share` is the smaller of the two over that
    of the right male at the wanted length, and no more than the share of the radial overlap.
    """

    engaged: Length
    external_mm2: tuple[float, float]
    internal_mm2: tuple[float, float]
    share: tuple[float, float]


class Allowance(NamedTuple):
    """What one way says about the tube that a flare takes; None where it says nothing.

    `way` is "test piece", "geometry" or "rule". `stick_out` is the tube that must stand out before forming, `net_shortening`
    how much shorter the tube gets, both least and most; `cut_allowance` is shortening and spare together. `source` is the
    text with its place and how it was checked, `checked` the last of these alone.
    """

    way: str
    stick_out: tuple[Length, Length] | None
    net_shortening: tuple[Length, Length] | None
    cut_allowance: Length | None
    source: str
    checked: str


class FlareSize(NamedTuple):
    """Smallest and largest diameter of a finished flare, the thickest wall they are for, and where they were read."""

    least: Length
    most: Length
    wall_most: Length
    source: str
    checked: str


class FlareStandard(NamedTuple):
    """A standard by its number and edition, what it covers, where that was read, and how it was checked."""

    name: str
    covers: str
    source: str
    checked: str


class UsualThread(NamedTuple):
    """A thread that goes with a seat and a tube by a standard, where that was read, and how it was checked."""

    standard: str
    seat: str
    od: Length
    designation: str
    source: str
    checked: str


class Hexagon(NamedTuple):
    """A hexagon that is met on something, across its flats, where that comes from, and how it was checked."""

    on: str
    across_flats: Length
    source: str
    checked: str


class Washers(NamedTuple):
    """Washers to buy for one thread: what the joints need, and spares."""

    thread: Thread
    needed: int
    spares: int
