"""Threads in plain Python, to compare results and speed with: limits, pairs, and the look-alikes of a list.

The rules are the library's (ISO 965-1 for 6g and 6H, ASME B1.1 for 2A and 2B, one rigid coaxial thread in another),
the code is not: what a Python program would compute once, such as the series of preferred numbers, is a table here, and
what holds for threads of 60 degrees alone is used, since no others are paired. Python 3.11 or newer and its standard
library.

Reads the list from standard input: a line for each thread with its family, its diameter and its pitch. Those are whole
numbers: micrometers for `metric`; millionths of an inch and threads in two inches for `unified`; anything for other
families, which are only looked up. Writes one JSON object; its lists have the order of the list. With `--once`
everything runs once, and the times mean nothing.
"""

import gc
import json
import sys
from bisect import bisect_left, bisect_right
from math import cbrt, floor, inf, isinf, sqrt
from time import perf_counter_ns


# Tangent of half the angle between the flanks, and the basic height of 5/8 of the sharp triangle over the pitch.
FLANK = 1 / sqrt(3)
HEIGHT = sqrt(3) / 2 * 5 / 8
# Overlaps below this are contact, in mm.
TOUCH = 1e-9
# What a look-alike is: it goes in by hand this many turns, and holds on less than half of this length in mm.
HAND_TURNS, STANDING, HALF = 3.0, 6.0, 0.5

# --- ISO 965-1, in micrometers ---

R40 = (
    "100 106 112 118 125 132 140 150 160 170 180 190 200 212 224 236 250 265 280 300 315 335 355 375 400 425 450 475 "
    "500 530 560 600 630 670 710 750 800 850 900 950"
)
SERIES = [int(number) * 10.0**decade / 100 for decade in range(5) for number in R40.split()]
# Python rounds halves to even, as the standard's tables do.
WHOLE = [round(number) for number in SERIES]
MIDDLES = [(low + high) / 2 for low, high in zip(SERIES, SERIES[1:])]
# Largest diameters of the steps, and 90 times the tenth power of each step's geometric mean in mm.
STEP_ENDS = [990, 1_400, 2_800, 5_600, 11_200, 22_400, 45_000, 90_000, 180_000, 355_000]
STEP_FACTORS = [90 * sqrt(low / 1000 * high / 1000) ** 0.1 for low, high in zip(STEP_ENDS, STEP_ENDS[1:])]
# Where the printed table departs from the rule: pitch, or end of the step and pitch.
DEVIATIONS_G = {750: 22, 8_000: 100}
PITCH_SIX = {(5_600, 500): 75, (90_000, 5_000): 250, (355_000, 3_000): 250, (355_000, 4_000): 280}
MAJOR_SIX = {4_000: 475}
MINOR_SIX = {250: 71, 500: 140, 2_500: 450}
# Internal pitch diameters have the tolerance this many places of the series on.
INTERNAL_PLACES = 5


def pitch_place(d, p):
    """Place in the series of the grade 6 tolerance of the pitch diameter, outside."""
    step = bisect_left(STEP_ENDS, d)
    six = PITCH_SIX.get((STEP_ENDS[step], p))
    return bisect_right(MIDDLES, STEP_FACTORS[step - 1] * (p / 1000) ** 0.4 if six is None else six)


def metric_external(d, p):
    """6g in mm: least and most of major, pitch and minor diameter, and the rounded root, which is Unified only."""
    off = DEVIATIONS_G.get(p)
    if off is None:
        off = WHOLE[bisect_right(MIDDLES, 15 + 0.011 * p)]
    six = MAJOR_SIX.get(p)
    if six is None:
        root = cbrt(p / 1000)
        six = 180 * root * root - 3.15 / sqrt(p / 1000)
    major = d - off
    pitch = floor(d - 0.649519 * p + 0.5) - off
    least = pitch - WHOLE[pitch_place(d, p)]
    return (
        (major - WHOLE[bisect_right(MIDDLES, six)]) / 1000,
        major / 1000,
        least / 1000,
        pitch / 1000,
        floor(least - 0.616025 * p + 0.5) / 1000,
        min(floor(pitch - 0.433013 * p + 0.5), floor(d - 1.082532 * p + 0.5) - off) / 1000,
        None,
    )


def metric_internal(d, p):
    """6H in mm, in the same order."""
    six = MINOR_SIX.get(p)
    if six is None:
        mm = p / 1000
        six = 433 * mm - 190 * mm**1.22 if p < 1000 else 230 * mm**0.7
    tolerance = WHOLE[pitch_place(d, p) + INTERNAL_PLACES]
    pitch = floor(d - 0.649519 * p + 0.5)
    minor = floor(d - 1.082532 * p + 0.5)
    return (
        d / 1000,
        floor(d - 0.649519 * p + tolerance + 0.793857 * p + 0.5) / 1000,
        pitch / 1000,
        (pitch + tolerance) / 1000,
        minor / 1000,
        (minor + WHOLE[bisect_right(MIDDLES, six)]) / 1000,
        None,
    )


# --- ASME B1.1, in inches; rounded at each stage. No half that the even digit would round down is among these threads ---

# Millionths of an inch and threads in two inches: the series whose tolerances are based on the diameter.
COARSE = (
    "73000:128 86000:112 99000:96 112000:80 125000:80 138000:64 164000:64 190000:48 216000:48 250000:40 312500:36 "
    "375000:32 437500:28 500000:26 562500:24 625000:22 750000:20 875000:18 1000000:16 1125000:14 1250000:14 "
    "1375000:12 1500000:12 1750000:10 2000000:9 2250000:9 2500000:8 2750000:8 3000000:8 3250000:8 3500000:8 "
    "3750000:8 4000000:8"
)
FINE = (
    "60000:160 73000:144 86000:128 99000:112 112000:96 125000:88 138000:80 164000:72 190000:64 216000:56 250000:56 "
    "312500:48 375000:48 437500:40 500000:40 562500:36 625000:36 750000:32 875000:28 1000000:24 1125000:24 "
    "1250000:24 1375000:24 1500000:24"
)
BY_DIAMETER = {tuple(map(int, size.split(":"))) for size in f"{COARSE} {FINE}".split()}
# Twice the threads per inch of constant-pitch series that go by the diameter, and where each begins.
BY_DIAMETER_FROM = {8: 2_500_000, 12: 1_375_000, 16: 1_000_000}
# Where the printed tables depart from the rules: allowance; pitch diameter away from basic of 2A and of 2B; minor diameters.
ALLOWANCES = {(625_000, 22): 0.0016, (562_500, 64): 0.0010}
PITCH_2A = {(562_500, 40): 0.5245, (562_500, 48): 0.5303, (937_500, 24): 0.8760, (2_375_000, 40): 2.3359}
PITCH_2B = {(937_500, 24): 0.8908, (937_500, 32): 0.9034}
MINORS = {(190_000, 48): (0.145, 0.156), (1_750_000, 10): (1.534, 1.568)}
QUARTER = 250_000
NUMBER_SIX = 138_000


def tolerance_base(d, p, uin, halves, p_two_thirds):
    """Tolerance of class 2A on the pitch diameter."""
    if (uin, halves) in BY_DIAMETER or (halves in BY_DIAMETER_FROM and uin >= BY_DIAMETER_FROM[halves]):
        engaged = d
    else:
        engaged = 9 * p
    return floor(1500 * (cbrt(d) + sqrt(engaged) + 10 * p_two_thirds) + 0.5) / 1e6


def unified_external(uin, halves):
    """2A in mm, in the order of the metric ones; the flat root has no least."""
    d = floor(uin / 100 + 0.5) / 1e4
    p = floor(2e8 / halves + 0.5) / 1e8
    root = cbrt(p)
    p_two_thirds = root * root
    two_a = tolerance_base(d, p, uin, halves, p_two_thirds)
    allowance = ALLOWANCES.get((uin, halves))
    if allowance is None:
        allowance = floor(0.3 * two_a * 1e4 + 0.5) / 1e4
    basic = floor((d - floor(649519.05 * p + 0.5) / 1e6) * 1e4 + 0.5) / 1e4
    major = floor((d - allowance) * 1e4 + 0.5) / 1e4
    pitch = floor((basic - allowance) * 1e4 + 0.5) / 1e4
    tolerance = floor(600 * p_two_thirds + 0.5) / 1e4
    least = PITCH_2A.get((uin, halves))
    if least is None:
        least = floor((pitch - two_a) * 1e4 + 0.5) / 1e4
    return (
        floor((major - tolerance) * 1e4 + 0.5) / 1e4 * 25.4,
        major * 25.4,
        least * 25.4,
        pitch * 25.4,
        None,
        floor((major - floor(1082531.75 * p + 0.5) / 1e6) * 1e4 + 0.5) / 1e4 * 25.4,
        floor((major - floor(1190784.93 * p + 0.5) / 1e6) * 1e4 + 0.5) / 1e4 * 25.4,
    )


def unified_internal(uin, halves):
    """2B in mm, in the same order; the major diameter has no most."""
    d = floor(uin / 100 + 0.5) / 1e4
    p = floor(2e8 / halves + 0.5) / 1e8
    root = cbrt(p)
    p_two_thirds = root * root
    two_a = tolerance_base(d, p, uin, halves, p_two_thirds)
    basic = floor((d - floor(649519.05 * p + 0.5) / 1e6) * 1e4 + 0.5) / 1e4
    minor = floor((d - floor(1082531.75 * p + 0.5) / 1e6) * 1e6 + 0.5) / 1e6
    if p > 0.25:
        tolerance = 0.15 * p
    else:
        tolerance = 0.25 * p - 0.4 * p * p
        if uin < QUARTER:
            small = 0.05 * p_two_thirds + 0.03 * p / (uin / 1e6) - 0.002
            tolerance = max(min(small, 0.394 * p), tolerance)
    tolerance = floor(tolerance * 1e4 + 0.5) / 1e4
    places = 1e4 if uin < NUMBER_SIX else 1e3
    least, most = floor(minor * places + 0.5) / places, floor((minor + tolerance) * places + 0.5) / places
    least, most = MINORS.get((uin, halves), (least, most))
    widest = PITCH_2B.get((uin, halves))
    if widest is None:
        widest = floor((basic + floor(1.3 * two_a * 1e6 + 0.5) / 1e6) * 1e4 + 0.5) / 1e4
    return (
        d * 25.4,
        None,
        basic * 25.4,
        widest * 25.4,
        least * 25.4,
        most * 25.4,
        None,
    )


# --- one in the other ---


def external(thread):
    family, diameter, pitch = thread
    return metric_external(diameter, pitch) if family == "metric" else unified_external(diameter, pitch)


def internal(thread):
    family, diameter, pitch = thread
    return metric_internal(diameter, pitch) if family == "metric" else unified_internal(diameter, pitch)


def pitch_mm(thread):
    family, _, pitch = thread
    return pitch / 1000 if family == "metric" else 50.8 / pitch


def turn_in(male_pitch, major, pitch, root, female_pitch, roof, hole_pitch, hole):
    """Whether sizes of a male go into sizes of a female, turns until they bind (inf for never), radial overlap."""
    overlap = (major - hole) / 2
    # With one angle on both, the room between the flanks is the same at every diameter.
    slack = (female_pitch - male_pitch) / 4 + (hole_pitch - pitch) / 2 * FLANK
    if roof - major < -TOUCH or hole - root < -TOUCH or (overlap > 0 and slack < -TOUCH):
        return False, 0.0, overlap
    drift = abs(male_pitch - female_pitch)
    if overlap <= 0 or drift == 0:
        return True, inf, overlap
    return True, (2 * slack / drift if slack > 0 else 0.0), overlap


def ends(male, female_pitch, female):
    """The tightest and the loosest sizes of a pair."""
    small, large, small_pitch, large_pitch, small_root, large_root, rounded = male
    if rounded is not None:
        small_root = large_root = rounded
    roof, large_roof, hole_pitch, large_hole_pitch, hole, large_hole = female[:6]
    if large_roof is None:
        # Where the standard leaves the root open it is taken a tenth of the pitch deeper.
        large_roof = roof + (large_hole_pitch - hole_pitch) + 0.1 * female_pitch
    tight = (large, large_pitch, large_root, roof, hole_pitch, hole)
    return tight, (small, small_pitch, small_root, large_roof, large_hole_pitch, large_hole)


def engage(male_pitch, sizes, female_pitch):
    return turn_in(male_pitch, *sizes[:3], female_pitch, *sizes[3:])


def mate(male_pitch, male, female_pitch, female):
    """Starts and turns at the tightest and the loosest sizes, overlap at best and at worst in mm."""
    tight, loose = ends(male, female_pitch, female)
    starts, turns, best = engage(male_pitch, tight, female_pitch)
    loose_starts, loose_turns, worst = engage(male_pitch, loose, female_pitch)
    if loose_starts and not starts:
        # The tightest sizes that start.
        shut, free = tight, loose
        for _ in range(24):
            middle = tuple((a + b) / 2 for a, b in zip(shut, free))
            if engage(male_pitch, middle, female_pitch)[0]:
                free = middle
            else:
                shut = middle
        _, turns, best = engage(male_pitch, free, female_pitch)
    return starts, loose_starts, turns, loose_turns, best, worst


def is_lookalike(male, female, male_pitch, female_pitch, pair):
    """Another thread that turns in by hand, holds on something, and may hold on less than half of its thread."""
    starts, loose_starts, turns, loose_turns, best, worst = pair
    if best <= 0 or not (starts or loose_starts) or male == female:
        return False
    if turns < HAND_TURNS and loose_turns < HAND_TURNS:
        return False
    if loose_starts and not starts and (isinf(turns) or isinf(loose_turns)):
        reached = min(loose_turns * male_pitch / STANDING, 1.0)
    else:
        reached = min(max(turns, HAND_TURNS) * male_pitch / STANDING, 1.0)
    return reached * max(worst, 0.0) / (HEIGHT * female_pitch) < HALF


def mate_threads(male, female):
    """A pair from its designations: limits of both, and how they go together."""
    return mate(pitch_mm(male), external(male), pitch_mm(female), internal(female))


def count_lookalikes(threads):
    """Every male in every female; limits once for each thread."""
    females = [(thread, pitch_mm(thread), internal(thread)) for thread in threads]
    count = 0
    for male in threads:
        male_pitch, outside = pitch_mm(male), external(male)
        for female, female_pitch, inside in females:
            pair = mate(male_pitch, outside, female_pitch, inside)
            if is_lookalike(male, female, male_pitch, female_pitch, pair):
                count += 1
    return count


# --- times ---


def best(once, work, count, rounds, milliseconds):
    """Nanoseconds for one of the `count` operations that `work` does: the best of some rounds of a few milliseconds."""
    if once:
        rounds, repeats = 1, 1
    else:
        start = perf_counter_ns()
        work()
        repeats = max(1, int(milliseconds * 1e6 / max(1, perf_counter_ns() - start)))
    least = inf
    for _ in range(rounds):
        start = perf_counter_ns()
        for _ in range(repeats):
            work()
        least = min(least, perf_counter_ns() - start)
    return least / (repeats * count)


def main():
    once = "--once" in sys.argv[1:]
    threads = []
    for line in sys.stdin:
        family, diameter, pitch = line.split()
        threads.append((family, int(diameter), int(pitch)))
    rows = {thread: number for number, thread in enumerate(threads)}
    metric = [(d, p) for family, d, p in threads if family == "metric"]
    unified = [(d, p) for family, d, p in threads if family == "unified"]
    paired = [thread for thread in threads if thread[0] in ("metric", "unified")]
    pairs = [(male, female) for male in paired for female in paired]
    sides = [(pitch_mm(thread), external(thread), internal(thread)) for thread in paired]
    ready = [
        (male_pitch, outside, female_pitch, inside)
        for male_pitch, outside, _ in sides
        for female_pitch, _, inside in sides
    ]

    def look_up():
        get = rows.get
        for thread in threads:
            get(thread)

    def limits_metric():
        for d, p in metric:
            metric_external(d, p)
            metric_internal(d, p)

    def limits_unified():
        for d, p in unified:
            unified_external(d, p)
            unified_internal(d, p)

    def mate_all():
        for male, female in pairs:
            mate_threads(male, female)

    def mate_ready():
        for male_pitch, outside, female_pitch, inside in ready:
            tight, loose = ends(outside, female_pitch, inside)
            engage(male_pitch, tight, female_pitch)
            engage(male_pitch, loose, female_pitch)

    # As the standard library's own timer does.
    gc.disable()
    times = {
        "lookup": best(once, look_up, len(threads), 40, 5),
        "limits, metric": best(once, limits_metric, 2 * len(metric), 40, 5),
        "limits, unified": best(once, limits_unified, 2 * len(unified), 40, 5),
        "pair": best(once, mate_all, len(pairs), 15, 5),
        "pair, limits given": best(once, mate_ready, len(pairs), 15, 5),
        "list": best(once, lambda: count_lookalikes(paired), 1, 15, 5),
    }
    counts = [count_lookalikes(paired)]
    mated = [mate_threads(male, female) for male, female in pairs]
    results = {
        "rows": [rows.get(thread) for thread in threads],
        "external": [external(thread) for thread in paired],
        "internal": [internal(thread) for thread in paired],
        "starts": [[starts, loose] for starts, loose, *_ in mated],
        # JSON has no infinity.
        "turns": [[None if isinf(turns) else turns for turns in pair[2:4]] for pair in mated],
        "overlaps": [pair[4:6] for pair in mated],
        "lookalikes": counts,
    }
    json.dump({"python": sys.version.split()[0], "times": times, "results": results}, sys.stdout)


if __name__ == "__main__":
    main()
