"""The case files that Rust and C run too, and the same bits as Rust."""

import os
from pathlib import Path
from typing import Any

import case_files
import linewright as lw
import pytest
from case_files import Case, items
from case_flares import run_flare_form, run_flare_size, run_hose_end, run_washers  # noqa: F401
from case_filled import run_filled_tube, run_hold, run_ideal_cylinder, run_span  # noqa: F401
from case_springback import (  # noqa: F401
    run_advice,
    run_calibration,
    run_former_of_groove,
    run_held_bend,
    run_mechanics_prior,
    run_piece_fit,
    run_setting_range,
    run_trial_fit,
)
from case_walls import run_bent_wall, run_free_wrinkling, run_section  # noqa: F401

TARGET = Path(os.environ.get("LINEWRIGHT_TARGET") or Path(__file__).resolve().parents[2] / "target")
RESULTS = TARGET / "verify" / "case_results.txt"
CASES = case_files.read_all()
# Decimals such as 0.05 are no exact doubles; a difference of this share of the figure is not counted as one.
ROUNDING = 4 * 2.220446049250313e-16

Answer = dict[str, list[str]]


def mm(*lengths: lw.Length | None) -> list[str]:
    return ["unknown" if length is None else repr(length.mm) for length in lengths]


def deg(*angles: lw.Angle | None) -> list[str]:
    return ["unknown" if angle is None else repr(angle.deg) for angle in angles]


def shape(path: lw.Path) -> Answer:
    return {
        "developed_length_mm": mm(path.developed_length),
        "straights_mm": mm(*path.straights),
        "angles_deg": deg(*path.angles),
        "rotations_deg": deg(*path.rotations),
    }


def run_read_length(text: str) -> Answer:
    return {"value_mm": mm(lw.read_length(text))}


def run_read_angle(text: str) -> Answer:
    return {"value_deg": deg(lw.read_angle(text))}


def run_read_pressure(text: str) -> Answer:
    return {"value_mpa": [repr(lw.read_pressure(text).mpa)]}


def run_thread(text: str) -> Answer:
    return {"designation": [lw.thread(text).designation]}


def yes(flag: bool) -> list[str]:
    return [str(flag).lower()]


def run_thread_form(text: str) -> Answer:
    thread = lw.thread(text)
    area = thread.stress_area_mm2
    return {
        "diameter_mm": mm(thread.diameter),
        "pitch_mm": mm(thread.pitch),
        "height_mm": mm(thread.height),
        "lead_deg": deg(thread.lead_angle),
        "stress_area_mm2": ["unknown" if area is None else repr(area)],
        "side": [thread.side or "none"],
        "class": [thread.thread_class or "none"],
    }


def run_limits(text: str, side: str) -> Answer:
    limits = lw.thread(text).limits(side)
    return {
        "major_min_mm": mm(limits.major.min),
        "major_max_mm": mm(limits.major.max),
        "pitch_min_mm": mm(limits.pitch_diameter.min),
        "pitch_max_mm": mm(limits.pitch_diameter.max),
        "minor_min_mm": mm(limits.minor.min),
        "minor_max_mm": mm(limits.minor.max),
        "class": [limits.thread_class or "none"],
        "assumed": yes(limits.is_class_assumed),
        "checked": [limits.checked],
    }


def run_mate(male: str, female: str) -> Answer:
    mating = lw.mate(male, female)
    return {
        "starts": [mating.starts],
        "feel": [mating.feel],
        "level": [mating.level],
        "lookalike": yes(mating.is_lookalike),
        "overlap_worst_mm": mm(mating.overlap_worst),
        "overlap_best_mm": mm(mating.overlap_best),
        "lengths_mm": mm(*mating.lengths),
        "verdict": [mating.verdict],
    }


def run_stripping(male: str, female: str, engagement: str) -> Answer:
    found = lw.stripping(male, female, engagement=engagement)
    return {
        "engaged_mm": mm(found.engaged),
        "external_mm2": [repr(area) for area in found.external_mm2],
        "internal_mm2": [repr(area) for area in found.internal_mm2],
        "share_1": [repr(share) for share in found.share],
    }


def run_identify(
    side: str,
    diameter: str | None = None,
    pitches: int | None = None,
    pitch_length: str | None = None,
    per_inch: float | None = None,
    wear: str | None = None,
    list: list[str] = [],
) -> Answer:
    found = lw.identify_thread(
        side=side,
        major=diameter if side == "external" else None,
        minor=diameter if side == "internal" else None,
        pitches=None if pitches is None else (pitches, pitch_length),
        per_inch=per_inch,
        wear=wear,
        among=list or None,
    )
    return {
        "candidates": [str(candidate.thread) for candidate in found.candidates],
        "nearest": ["none" if found.nearest is None else str(found.nearest)],
        "next": ["none" if found.next is None else found.next.measure],
        "ten_pitches_mm": mm(*(candidate.ten_pitches for candidate in found.candidates)),
    }


def run_bend(**bend: str) -> Answer:
    return {
        "arc_mm": mm(lw.arc(**bend)),
        "tangent_length_mm": mm(lw.tangent_length(**bend)),
        "gain_mm": mm(lw.gain(**bend)),
    }


def run_tube(length: str, **tube: str) -> Answer:
    made = lw.Tube(**tube)
    mass = made.mass_g(length)
    return {
        "bore_mm": mm(made.bore),
        "volume_ml": [repr(made.bore_volume_ml(length))],
        "mass_g": ["unknown" if mass is None else repr(mass)],
    }


def run_springback(trials: list[list[str]], wanted: str) -> Answer:
    springback = lw.Springback.from_trials(trials)
    return {
        "setting_deg": deg(springback.setting(wanted)),
        "constant_deg": deg(springback.constant),
        "proportional": [repr(springback.proportional)],
    }


def make_path(od: str | None = None, **given: list[str]) -> lw.Path:
    (way,) = given.keys() & {"legs", "straights", "outer_legs"}
    lengths = given.pop(way)
    if way == "outer_legs":
        return lw.Path.from_outer_legs(lengths, od=od, **given)
    return (lw.Path.from_legs if way == "legs" else lw.Path.from_straights)(lengths, **given)


def run_path(**given: Any) -> Answer:
    path = make_path(**given)
    answer = shape(path) | {
        "end_point_mm": mm(*path.end_point),
        "reversed_rotations_deg": deg(*path.reversed().rotations),
        "mirrored_rotations_deg": deg(*path.mirrored().rotations),
    }
    if all(angle.deg < 180 for angle in path.angles):
        legs = path.legs
        gains = [lw.gain(radius=radius, angle=angle) for radius, angle in zip(path.radii, path.angles)]
        answer |= {"legs_mm": mm(*legs), "total_gain_mm": [repr(sum((gain.mm for gain in gains), 0.0))]}
    if "od" in given:
        extent = path.extent(given["od"])
        answer |= {"extent_low_mm": mm(*extent.low), "extent_high_mm": mm(*extent.high)}
    return answer


def run_read_rotation(text: str) -> Answer:
    return {"value_deg": deg(lw.read_rotation(text))}


def run_tolerance(text: str) -> Answer:
    value, plus_minus = lw.read_tolerance(text)
    return {"value_mm": mm(value), "plus_minus_mm": mm(plus_minus)}


def run_place(path: dict[str, Any], station: str) -> Answer:
    place = make_path(**path).place_at(station)
    return {"point_mm": mm(*place.point), "direction_1": [repr(part) for part in place.direction]}


def run_nut(length: str, bore: str, od: str, across_flats: str | None = None) -> Answer:
    nut = lw.Nut(None, length=length, bore=bore, nose=None, across_flats=across_flats)
    return {"tightest_curve_mm": mm(nut.tightest_curve(od)), "across_corners_mm": mm(nut.across_corners)}


def run_tape(flares: list[str] | None = None, **given: Any) -> Answer:
    cut = lw.tape_cut(**given, flares=None if flares is None else (flares[0], flares[1]))
    return {
        "length_mm": mm(cut.length),
        "rounded_mm": mm(cut.rounded),
        "sigma_mm": mm(cut.sigma),
        "floor_acts": yes(cut.floor_acts),
    }


def run_clips(path: dict[str, Any], spacing: str, from_end: str) -> Answer:
    found = lw.clips(make_path(**path), spacing=spacing, from_end=from_end)
    return {"stations_mm": mm(*(clip.station for clip in found.clips))}


def run_clips_to_buy(needed: int, reusable: int) -> Answer:
    buy, spares = lw.clips_to_buy(needed, reusable)
    return {"buy": [str(buy)], "spares": [str(spares)]}


def run_flare_trial(before: str, after: str) -> Answer:
    return {"net_shortening_mm": mm(lw.flare_net_shortening(before=before, after=after))}


def run_turn(rotation: str, bend: str) -> Answer:
    return {
        "words": [lw.turn_words(rotation) or "none"],
        "clock": [lw.turn_clock(rotation)],
        "inclinometer_deg": deg(lw.inclinometer(bend=bend, rotation=rotation)),
    }


def run_vertices(points: list[list[str]], radius: list[str] | None = None) -> Answer:
    return shape(lw.Path.from_vertices(points, radius=radius))


def make_bench(former: str, grip: str, trials: list[Any] = [], flare_tools: list[Any] = [], **habits: str) -> lw.Bench:
    return lw.Bench(
        former=lw.Former(as_formed=former, grip=grip),
        flare_tool=[lw.FlareTool(**tool) for tool in flare_tools],
        springback=lw.Springback.from_trials(trials) if trials else None,
        **habits,
    )


def run_plan(line: dict[str, str], bench: dict[str, Any], accepted: list[list[str]] = [], **options: str) -> Answer:
    made = make_bench(**bench)
    accept = [tuple(accepted_one) for accepted_one in accepted]
    (sized,) = lw.size_lines([line], bench=made, accept=accept, **options)
    problems = [problem.id for problem in sized.problems]
    draft = lw.LineDraft(**line).check()
    if sized.plan is None:
        assert draft.line is None and [problem.id for problem in draft.problems] == problems
        return {"problems": problems}
    plan = draft.line.plan(made, accept=accept, **options)
    assert plan == sized.plan, "the batch gives another plan than the single call"
    kinds = ["flare after", "flare before", "assembled"]
    minima = {side: [plan.ends[side].minima[kind] for kind in kinds] for side in "AB"}
    shortfalls = {side: [plan.ends[side].shortfalls[kind] for kind in kinds] for side in "AB"}
    return {
        "finished_length_mm": mm(plan.finished_length),
        "cut_length_mm": mm(plan.cut_length),
        "first": [plan.first],
        "trim_end": [plan.trim_end or "none"],
        "datum": [plan.datum],
        "draft": yes(plan.is_draft),
        "marks_mm": mm(*plan.marks),
        "from_raw_mm": mm(*(bend.from_raw_end for bend in plan.bends)),
        "from_flare_mm": mm(*(bend.from_flare_face for bend in plan.bends)),
        "settings_deg": deg(*plan.settings),
        "minima_a_mm": mm(*minima["A"]),
        "minima_b_mm": mm(*minima["B"]),
        "shortfalls_a_mm": mm(*shortfalls["A"]),
        "shortfalls_b_mm": mm(*shortfalls["B"]),
        "problems": problems,
        "assumptions": [str(len(plan.assumptions))],
        "steps": [step.kind for step in plan.steps],
        "loading": [part.what for part in plan.loading],
        "forgiving": yes(plan.is_forgiving),
        "from_last_mm": mm(*(bend.from_last_bend for bend in plan.bends)),
        "tape_checks": [f"{check.bend}:{check.start}>{check.end}" for check in plan.tape_checks],
        "tape_changes_mm": mm(*(check.change for check in plan.tape_checks)),
        "hand": ["none" if plan.hand_check is None else "up" if plan.hand_check.up else "down"],
    }


def run(case: Case) -> Answer:
    try:
        return globals()[f"run_{case.operation}"](**case.accept)
    except lw.LinewrightError as error:
        return {"error": [error.code]}


def agrees(got: str, want: Any, tolerance: float) -> bool:
    if isinstance(want, bool) or not case_files.is_number(want):
        return got == (str(want).lower() if isinstance(want, bool) else want)
    try:
        return abs(float(got) - want) <= tolerance + ROUNDING * abs(want)
    except ValueError:
        return False


def differences(case: Case, answer: Answer) -> list[str]:
    wrong = []
    for key, value in case.expect.items():
        got, want = answer.get(key, ["nothing"]), items(value)
        tolerance = case.tolerances.get(key, 0.0)
        if len(got) != len(want) or not all(agrees(g, w, tolerance) for g, w in zip(got, want)):
            wrong.append(f"{key}: expected {want} within {tolerance}, got {got}")
    return wrong


@pytest.mark.parametrize("case", CASES, ids=lambda case: case.name)
def test_a_case_gives_what_it_expects(case):
    wrong = differences(case, run(case))
    if case.known_failing is None:
        assert wrong == []
    else:
        assert wrong != [], f"known to fail ({case.known_failing}), but it passes"


def rust_answers() -> dict[str, Answer]:
    if not RESULTS.exists():
        pytest.fail(f"{RESULTS} is missing: `cargo run -p conformance --example case_results` prints it")
    answers: dict[str, Answer] = {}
    for row in RESULTS.read_text(encoding="utf-8").strip().split("\n"):
        name, key, value = row.split("\t")
        answers.setdefault(name, {})[key] = value.split(";")
    return answers


def bits(item: str) -> str:
    """A number by its bits, so that 1 and 1.0 are one answer, and two neighbors are not; a word as it is."""
    try:
        return float(item).hex()
    except ValueError:
        return item


def test_every_answer_has_the_bits_of_rust():
    rust = rust_answers()
    assert rust.keys() == {case.name for case in CASES}
    for case in CASES:
        ours = {key: [bits(item) for item in ";".join(value).split(";")] for key, value in run(case).items()}
        theirs = {key: [bits(item) for item in value] for key, value in rust[case.name].items()}
        assert ours == theirs, case.name


GOOD = """
[[case]]
operation = "bend"
accept = { radius = "10 mm", angle = "90 deg" }
expect = { tangent_length_mm = 10.0, arc_mm = 15.707963267948966 }
tolerance = "0.000001 mm"
origin = "R tan 45 = R"
"""


def test_a_right_file_is_read_and_run():
    (case,) = case_files.read_file("good", GOOD)
    assert differences(case, run(case)) == []


@pytest.mark.parametrize(
    ("change", "to"),
    [
        ('"bend"', '"bending"'),
        ("origin", "source"),
        ("R tan 45 = R", " "),
        ("angle =", "angel ="),
        ("arc_mm", "arch_mm"),
        ("0.000001 mm", "0.000001 deg"),
        ("0.000001 mm", "-1 mm"),
        ("0.000001 mm", "nan mm"),
        ('tolerance = "0.000001 mm"', ""),
        ('"0.000001 mm"', '{ arc_mm = "1 mm" }'),
        ("tangent_length_mm = 10.0, arc_mm = 15.707963267948966", ""),
        ("tangent_length_mm = 10.0, arc_mm = 15.707963267948966", 'error = "NO_CORNER"'),
        ("operation", 'known_failing = ""\noperation'),
        ("[[case]]", "skip = true\n[[case]]"),
        (GOOD, "case = []"),
    ],
)
def test_what_nobody_reads_is_an_error(change, to):
    with pytest.raises((ValueError, KeyError)):
        case_files.read_file("bad", GOOD.replace(change, to))
