"""Proves where the mate table comes from: parts of it are made again, and a cruder second way agrees with it."""

import make_mate_reference as reference
import numpy as np
import pytest

LINES = reference.TABLE.read_text(encoding="ascii").splitlines()
ROWS = LINES[2:]
# The bisection is good to 1e-12; the rest is for a tangent that differs in its last digit between platforms.
SAME = 1e-9
# What the half planes below allow, one step of them. Two pixels over 0.055 mm, the least difference of pitches in the
# rows drawn, are half of that.
CRUDE_TURNS = 0.02
# About a thousandth of what the ridge drifts from the groove in the rows drawn, 0.22 mm and more but for equal pitches.
PIXEL_MM = 0.000_25
# Of pixels, from the innermost to the outermost radius at which both threads have material. The outermost rows lie
# this close to those radii, so that an overlap is seen soon after it begins.
PIXEL_ROWS = 12
INSET_MM = 1e-6
# Evenly through one turn: where an overlap begins is seen up to one step late.
HALF_PLANES = 50


def test_the_committed_pairs_are_those_drawn():
    assert LINES[:2] == [reference.ORIGIN, reference.HEADER]
    assert [reference.profiles(row) for row in ROWS] == list(reference.pairs())
    assert len(ROWS) == reference.PAIRS


def test_every_twentieth_row_is_made_again():
    for committed in ROWS[::20]:
        made = reference.row(*reference.profiles(committed))
        *exact, turns = committed.split(",")
        *made_exact, made_turns = made.split(",")
        assert made_exact == exact
        assert float(made_turns) == pytest.approx(float(turns), rel=SAME, abs=0)


def test_the_table_has_every_kind():
    turns = [float(row.rsplit(",", 1)[1]) for row in ROWS]
    starts = [row.split(",")[-3] == "yes" for row in ROWS]
    overlaps = [float(row.split(",")[-2]) for row in ROWS]
    assert all((number > 0) == start for number, start in zip(turns, starts))
    assert min(starts.count(False), sum(0 < n < 1 for n in turns), sum(1 <= n < 40 for n in turns)) > 20
    assert min(turns.count(np.inf), sum(overlap <= 0 for overlap in overlaps)) > 10


# --- the cruder way: teeth drawn as pixels -----------------------------------------------------------------


def trapezoid(profile, center, change):
    """Corners of a ridge or a groove in the axial section, in order: axial position and radius."""
    corners = []
    for side, diameters in ((-1, (profile.minor_mm, profile.major_mm)), (1, (profile.major_mm, profile.minor_mm))):
        for diameter in diameters:
            outward = (diameter - profile.pitch_diameter_mm) / 2
            half = profile.pitch_mm / 4 - outward * np.tan(np.radians(profile.half_angle_deg))
            corners.append((center + side * half, (diameter + change) / 2))
    return corners


def inside(corners, z, r):
    """Pixels whose center lies in a convex polygon, its corners going clockwise."""
    result = True
    for (z0, r0), (z1, r1) in zip(corners, corners[1:] + corners[:1]):
        result = result & ((z1 - z0) * (r - r0) - (r1 - r0) * (z - z0) <= 0)
    return result


def window(z, center, width):
    first, last = np.searchsorted(z, [center - width / 2, center + width / 2])
    return slice(int(first), int(last))


def free_shifts(male, female, turns, start, r):
    """One half plane through the axis, `start` of a turn from the tip: the shifts in pixels that leave no collision."""
    depth = turns * male.pitch_mm
    pitch = max(male.pitch_mm, female.pitch_mm)
    z = np.arange(-2 * pitch, (turns + 2) * pitch, PIXEL_MM)
    teeth = np.arange(start, turns + 1e-12, 1.0)
    # Solid but for the grooves; inside its ridges the female is open.
    solid = np.ones((r.size, z.size), dtype=bool)
    for tooth in teeth:
        change = -female.taper * (depth - tooth * male.pitch_mm)
        near = window(z, tooth * female.pitch_mm, female.pitch_mm)
        groove = inside(trapezoid(female, tooth * female.pitch_mm, change), z[near], r)
        solid[:, near] = ~groove & (r > (female.minor_mm + change) / 2)
    counted = np.zeros((r.size, z.size + 1), dtype=np.int32)
    np.cumsum(solid, axis=1, out=counted[:, 1:])
    # The ridge at the mouth, where all the rows drawn overlap, is in its own turn: within half a pitch of its groove.
    reach = int(male.pitch_mm / 2 / PIXEL_MM)
    least = round(turns * (female.pitch_mm - male.pitch_mm) / PIXEL_MM) - reach
    free = np.ones(2 * reach + 1, dtype=bool)
    for tooth in teeth:
        near = window(z, tooth * male.pitch_mm, male.pitch_mm)
        ridge = inside(trapezoid(male, tooth * male.pitch_mm, male.taper * tooth * male.pitch_mm), z[near], r)
        for pixels, count in zip(ridge, counted):
            run = np.flatnonzero(pixels) + near.start
            if run.size:
                first, end = run[0] + least, run[-1] + 1 + least
                free &= count[end : end + free.size] == count[first : first + free.size]
    return free


def pixels_fit(male, female, turns):
    depth = turns * male.pitch_mm
    low, high = (female.minor_mm - female.taper * depth) / 2, (male.major_mm + male.taper * depth) / 2
    if high <= low:
        return True
    r = np.linspace(low + INSET_MM, high - INSET_MM, PIXEL_ROWS)[:, None]
    # The last half plane is that of the end of the helix.
    starts = [*(n / HALF_PLANES for n in range(HALF_PLANES)), turns % 1]
    free = True
    for start in starts:
        if start <= turns:
            free = free & free_shifts(male, female, turns, start, r)
    return bool(np.any(free))


def pixel_turns(male, female):
    good, bad = 0.0, 1.0
    while pixels_fit(male, female, bad):
        good, bad = bad, 2 * bad
    while bad - good > CRUDE_TURNS / 10:
        middle = (good + bad) / 2
        good, bad = (middle, bad) if pixels_fit(male, female, middle) else (good, middle)
    return (good + bad) / 2


# Lines of the table with three to six turns, which their flanks end: the pixels have no male core.
@pytest.mark.parametrize(
    "line",
    [
        pytest.param(154, id="no-taper"),
        pytest.param(57, id="mixed-angles"),
        pytest.param(100, id="male-taper-from-no-overlap"),
        pytest.param(171, id="female-taper-mixed-angles"),
        pytest.param(32, id="both-tapers-equal-pitch"),
    ],
)
def test_teeth_drawn_as_pixels_stop_at_the_same_turn(line):
    row = LINES[line - 1]
    turns = float(row.rsplit(",", 1)[1])
    assert 3 <= turns <= 6
    assert pixel_turns(*reference.profiles(row)) == pytest.approx(turns, abs=CRUDE_TURNS)
