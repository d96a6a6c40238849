"""What a single line needs beside its plan, as a notebook uses it."""

import os
import random
import re
import shutil
import subprocess
import sys

import linewright as lw
import pytest

NAMES = {name: getattr(lw, name) for name in lw.__all__}
READ = """
import locale, linewright as lw
locale.setlocale(locale.LC_ALL, "")
print(locale.localeconv()["decimal_point"])
texts = ["2,84 m", "1.85 m", "9 1/4 in", "14.3mm", "1.500,0 mm"]
print([lw.read_length(text).mm for text in texts], lw.read_angle("-178,9 deg").deg, lw.mm(1234.5))
"""


def said_in(language, **more):
    """The decimal sign of a language and what is read under it; nothing where the machine does not have the language."""
    environment = {**os.environ, "LC_ALL": language, "PYTHONIOENCODING": "utf-8", **more}
    said = subprocess.run([sys.executable, "-c", READ], env=environment, capture_output=True, encoding="utf-8")
    assert said.returncode == 0 or "locale.Error" in said.stderr, said.stderr
    return said.stdout.splitlines()


@pytest.mark.parametrize(("language", "sign"), [("C", "."), ("de_DE", ","), ("fr_FR", ","), ("tr_TR", ",")])
def test_no_language_of_the_machine_changes_a_number(language, sign, tmp_path):
    said = said_in(language if language == "C" else f"{language}.UTF-8")
    if not said and shutil.which("localedef"):
        # The machine knows the language but has not made it.
        made = ["localedef", "-i", language, "-f", "UTF-8", str(tmp_path / f"{language}.UTF-8")]
        subprocess.run(made, capture_output=True, check=False)
        said = said_in(f"{language}.UTF-8", LOCPATH=str(tmp_path))
    if not said:
        pytest.skip(f"this machine does not have the language {language}, and cannot make it")
    assert said == [sign, "[2840.0, 1850.0, 234.95, 14.3, 1500.0] -178.9 1234.5 mm"]


def test_an_exact_text_reads_back_to_the_same_bits():
    chance = random.Random(20261125)
    numbers = [chance.uniform(-1, 1) * 10 ** chance.uniform(-6, 5) for _ in range(2000)]
    for length in [lw.mm(0), lw.inch(1 / 3), lw.mm(-0.0), *map(lw.mm, numbers), *map(lw.inch, numbers)]:
        assert lw.read_length(length.exact).mm.hex() == length.mm.hex()
    angles = [lw.deg(0), lw.rad(0.1), lw.deg(-178.9), *map(lw.deg, numbers), *map(lw.rad, numbers)]
    for angle in angles:
        again = lw.read_angle(angle.exact)
        assert again.rad.hex() == angle.rad.hex() and again.exact == angle.exact
    assert lw.read_angle("-178,9 deg").exact == "-178.9 deg"
    assert {angle.exact.split()[1] for angle in angles} == {"deg", "rad"}


def test_bends_that_overlap_keep_their_bits():
    chance = random.Random(7)
    overlapping = 0
    for _ in range(500):
        legs = [lw.mm(chance.uniform(0, 40)) for _ in range(4)]
        bends = [lw.deg(chance.uniform(1, 170)) for _ in range(3)]
        path = lw.Path.from_legs(legs, bends=bends, rotations=["10 deg", "-90 deg"], radius="14.3 mm", making="hand")
        again = eval(repr(path), NAMES)
        assert [length.mm.hex() for length in again.straights] == [length.mm.hex() for length in path.straights]
        assert again == path and again.making == ["hand"] * 3
        overlapping += min(path.straights) < lw.mm(0)
    assert 100 < overlapping < 500
    with pytest.raises(lw.InputError, match="OUT_OF_RANGE"):
        lw.Path.from_straights(["60 mm", "-2 mm"], bends=["90 deg"], radius="14 mm")


def test_every_way_to_a_path_takes_the_making():
    given = {"bends": ["90 deg"] * 2, "rotations": ["90 deg"], "radius": "14.3 mm"}
    making, lengths = ["former", "mandrel"], ["60 mm", "70 mm", "80 mm"]
    ways = [lw.Path.from_legs, lw.Path.from_straights, lw.Path.restored]
    assert all(way(lengths, **given, making=making).making == making for way in ways)
    assert lw.Path.from_outer_legs(lengths, od="3/16 in", **given, making=making).making == making
    points = [["0 mm"] * 3, ["30 mm", "0 mm", "0 mm"], ["60 mm", "0 mm", "0 mm"], ["60 mm", "70 mm", "0 mm"]]
    # The second point lies on a straight and is no corner.
    assert lw.Path.from_vertices(points, radius="14.3 mm", making=["hand"]).making == ["hand"]
    for count in (2, 0):
        with pytest.raises(lw.InputError, match="COUNT_MISMATCH"):
            lw.Path.from_vertices(points, radius="14.3 mm", making=["hand"] * count)
    with pytest.raises(lw.UnknownNameError, match="mandrel"):
        lw.Path.from_legs(lengths, **given, making="magic")


def test_a_clip_rule_of_the_shop(line):
    rule = lw.ClipRule(spacing="300 mm", from_end=lw.mm(80), source=" the shop's own rule ")
    found = rule.clips(line.path)
    stations = [clip.station.mm for clip in found.clips]
    assert stations[0] == 80 and stations[-1] == pytest.approx(line.path.developed_length.mm - 80)
    assert all(0 < after - before <= 300 for before, after in zip(stations, stations[1:]))
    assert lw.clips(line.path, spacing="300 mm", from_end="80 mm") == found
    in_bends = [clip.in_bend for clip in found.clips if clip.in_bend]
    assert [problem.part for problem in found.problems] == [f"bend {bend}" for bend in in_bends]
    assert rule.source == "the shop's own rule" and all(known.source for known in lw.clip_rules())
    with pytest.raises(lw.InputError, match="OUT_OF_RANGE"):
        lw.ClipRule(spacing="0 mm", from_end="80 mm", source="none")
    with pytest.raises(lw.QuantityError, match="lw.mm"):
        lw.ClipRule(spacing=300, from_end="80 mm", source="none")


def test_string_and_tape_shows_its_sum_and_what_it_rests_on():
    cut = lw.tape_cut("112 in", bends=7, laid="string outside", od="3/16 in", chance=0.95)
    assert sum(length.mm for _, length in cut.terms) == pytest.approx(cut.length.mm, abs=1e-9)
    assert cut.rounded.mm >= cut.length.mm > cut.rounded.mm - 1
    assert {"angle of each bend", "least margin"} <= {assumption.what for assumption in cut.assumptions}
    better = lw.tape_cut("112 in", bends=7, laid="string outside", od="3/16 in", chance=0.99)
    assert better.length > cut.length
    assert str(cut).count("\n") >= 8 and "cut 2846 mm" in str(cut)
    for bad in ({"chance": 0.4}, {"chance": float("nan")}, {"laid": "guess"}, {"bends": 10**9}, {"flares": ("bubble", "bubble")}):
        with pytest.raises(lw.LinewrightError):
            lw.tape_cut(**{"measured": "2 m", "bends": 2, "laid": "center line", "od": "3/16 in", **bad})
    with pytest.raises(lw.QuantityError, match="mm"):
        lw.tape_cut(112, bends=7, laid="center line", od="3/16 in")


def test_a_plan_says_where_its_figures_come_from(plan):
    for figure in ("cut length", "finished length", "mark 3", "end B flare after"):
        numbers = [float(row.split()[-2]) for row in plan.explain(figure).strip().splitlines()]
        assert sum(numbers[:-1]) == pytest.approx(numbers[-1], abs=1e-6)
    assert plan.explain("setting 2").endswith("= setting 62.46 deg\n")
    with pytest.raises(lw.UnknownNameError):
        plan.explain("torque")


def test_two_plans_differ_only_where_they_do(line, bench, plan):
    assert plan.changes(line.plan(bench)) == []
    more = line.plan(bench, reserve="15 mm")
    whats = {change.what for change in plan.changes(more)}
    assert "cut length" in whats and not any(what.startswith("mark") for what in whats)


def test_checks_tell_the_hand_and_the_turns(plan):
    look = plan.hand_check
    assert look.judge(points_up=look.up) is None and plan.hand_problem(points_up=look.up) is None
    assert look.judge(points_up=not look.up).code == "HAND_MISMATCH"
    assert look.judge(points_up=not look.up) == plan.hand_problem(points_up=not look.up)
    assert [check.bend for check in plan.tape_checks] == [check.bend for check in plan.turn_checks] == [2, 3]
    assert plan.turn_checks[0].words == "flip over" and plan.turn_checks[0].clock == "6:00"
    card = " ".join(plan.card().split())
    assert "HAND legs" in card and "CHECK legs 1 and 2 level" in card


def test_what_goes_onto_the_tube_in_its_order(line, bench):
    nut = lw.Nut("3/8-24", length="17 mm", bore="5 mm", nose="sleeve", across_flats="11 mm")
    end = lw.End(
        nut, "single-37", port=lw.Port("3/8-24", "cone-37"), loaded=[("armor", "long end to A"), "grommet"], holes=["13 mm"]
    )
    tool = lw.FlareTool("single-37", clamp="13 mm", projection="3 mm", net_shortening="1 mm", cut_spare="1 mm")
    bench = lw.Bench(former=bench.former, flare_tool=[*bench.flare_tools, tool], springback=bench.springback)
    made = lw.Line("R4", tube=line.tube, path=line.path, a=end, b=line.b)
    loading = made.plan(bench).loading
    assert [part.what for part in loading if part.side == "A"] == ["armor", "grommet", "nut A (3/8-24 UNF)", "support sleeve"]
    assert not made.plan(bench).is_draft
    small = lw.End(nut, "single-37", port=lw.Port("3/8-24", "cone-37"), holes=["12.5 mm"])
    refused = lw.Line("R4", tube=line.tube, path=line.path, a=small, b=line.b).plan(bench)
    assert "HOLE_TOO_SMALL@end A" in [problem.id for problem in refused.problems]
    later = lw.Line("MC", tube=line.tube, path=line.path, a=line.a, b=line.b, deferred="pedal box not fitted")
    assert later.waits_for and later.plan(bench).is_draft and later.plan(bench).cut_length is not None
    for value in (end, nut, later):
        assert eval(repr(value), NAMES) == value


def test_a_loop_is_made_round_a_mandrel(line, bench):
    lengths = ["60 mm", "45 mm", "380 mm", "90 mm"]
    loop = lw.Path.from_straights(
        lengths,
        bends=["90 deg", "540 deg", "60 deg"],
        rotations=["0 deg", "0 deg"],
        radius=["14.3 mm", "25 mm", "14.3 mm"],
        making=["former", "mandrel", "former"],
    )
    assert eval(repr(loop), {"Path": lw.Path, "mm": lw.mm, "deg": lw.deg}) == loop
    plan = lw.Line("R1", tube=line.tube, path=loop, a=line.a, b=line.b).plan(bench)
    assert plan.settings[1] is None and not plan.is_draft
    assert re.search(r"BEND 2 at mark 2 +round a mandrel, R 25 mm", plan.card())
    with pytest.raises(lw.InputError, match="COUNT_MISMATCH"):
        lw.Path.from_straights(["60 mm", "60 mm"], bends=["90 deg"], radius="14.3 mm", making=["hand", "hand"])


def test_a_file_shows_how_its_numbers_are_written(fields, bench):
    fields = {key: value for key, value in fields.items() if key != "legs"}
    dotted = {**fields, "name": "A", "straights": "60 mm; 90 mm; 90 mm; 1.500 mm"}
    comma = {**fields, "name": "B", "straights": "60 mm; 90 mm; 90,5 mm; 90 mm"}
    alone, both = lw.size_lines([dotted], bench=bench), lw.size_lines([dotted, comma], bench=bench)
    assert alone[0].plan is not None and both[0].plan is None and both[1].plan is not None
    assert [problem.code for problem in both[0].problems] == ["NUMBER_AMBIGUOUS"]
    bare = {**comma, "od": "3/16"}
    assert lw.size_lines([bare], bench=bench)[0].plan is None
    told = lw.size_lines([bare], bench=bench, bare_fraction_is_inch=True)[0]
    assert "ASSUMED_INCH@field od" in [problem.id for problem in told.problems]
    assert any("without a unit is in inches" in assumption.what for assumption in told.plan.assumptions)
