"""The line T2 from end to end: the figures a person works by."""

import linewright as lw
import pytest


def mm(lengths):
    return pytest.approx([length.mm for length in lengths], abs=0.05)


def test_the_lengths(plan):
    assert plan.finished_length.mm == pytest.approx(1069.30, abs=0.005)
    assert plan.cut_length.mm == pytest.approx(1079.30, abs=0.005)
    assert plan.cut_length.mm == pytest.approx(sum(length.mm for _, length in plan.cut_terms), abs=1e-9)
    assert [what for what, _ in plan.cut_terms[:2]] == ["straights", "arcs"]
    assert [length.mm for _, length in plan.cut_terms[2:]] == [2.0, 3.0, 2.0, 3.0]


def test_the_marks_and_settings(plan):
    assert plan.datum == "flare A"
    assert [51.2, 757.8, 985.1] == mm(plan.marks)
    assert [53.2, 759.8, 987.1] == mm(bend.from_raw_end for bend in plan.bends)
    assert [51.2, 757.8, 985.1] == mm(bend.from_flare_face for bend in plan.bends)
    assert [setting.deg for setting in plan.settings] == pytest.approx([31.3, 62.5, 93.6], abs=0.05)
    assert [bend.number for bend in plan.bends] == [1, 2, 3]
    assert [bend.angle for bend in plan.bends] == [lw.deg(30), lw.deg(60), lw.deg(90)]
    assert [bend.rotation for bend in plan.bends] == [None, lw.deg(180), lw.deg(90)]
    assert [bend.setting for bend in plan.bends] == plan.settings


def test_the_order_of_work(plan):
    assert (plan.first, plan.trim_end) == ("A", "B")
    assert [(part.side, part.facing) for part in plan.loading] == [("A", "threads to end A"), ("B", "threads to end B")]
    assert [step.kind for step in plan.steps] == [
        *["cut", "nut gate", "flare", "look gate", "mark", "bend", "bend", "bend"],
        *["trial fit", "trim", "nut gate", "flare", "look gate", "finish"],
    ]
    assert [step.kind for step in plan.steps if step.is_gate] == [
        *["nut gate", "look gate", "trial fit", "nut gate", "look gate"]
    ]
    assert not any(step.locked for step in plan.steps)
    assert all(str(step) == step.text != "" for step in plan.steps)


def test_the_ends(plan):
    a, b = plan.ends["A"], plan.ends["B"]
    assert (a.order, b.order) == ("before bending", "after bending")
    assert a.straight == plan.line.path.straights[0] and b.straight == plan.line.path.straights[-1]
    assert a.minima == {"flare after": lw.mm(34), "flare before": lw.mm(37), "assembled": lw.mm(20)}
    assert a.terms["assembled"] == [("nut", lw.mm(17)), ("back-off", lw.mm(3))]
    for end in (a, b):
        assert end.terms.keys() == end.minima.keys()
        assert all(sum(length.mm for _, length in terms) == end.minima[way].mm for way, terms in end.terms.items())
    assert set(a.shortfalls.values()) == set(b.shortfalls.values()) == {lw.mm(0)}
    assert a.net_shortening == lw.mm(2)


def test_what_it_rests_on(plan):
    assert not plan.is_draft
    assert [problem.level for problem in plan.problems if problem.is_open] == []
    assert [assumption.value for assumption in plan.assumptions] == [lw.mm(2), lw.mm(3)]
    assert {assumption.checked for assumption in plan.assumptions} == {"common practice, no source"}
    assert plan.bench_revision == "shop 1"


def test_the_card(plan):
    card = plan.card()
    assert card.isascii()
    assert all(len(row) <= 80 for row in card.splitlines())
    assert "T2" in card and "1079.5 mm" in card and "shop 1" in card


def test_a_draft_gives_the_same_plan(fields, line, bench, plan):
    checked = lw.LineDraft(**fields).check()
    assert checked.problems == []
    assert checked.line == line
    assert checked.line.plan(bench) == plan


def test_the_other_end_first(line, bench):
    plan = line.plan(bench, trim_end="A", reserve=lw.mm(20))
    assert (plan.first, plan.trim_end, plan.datum) == ("B", "A", "flare B")
    assert plan.cut_length.mm == pytest.approx(1099.30, abs=0.005)
    assert plan.cut_terms[-1] == ("reserve", lw.mm(20))
    with pytest.raises(lw.UnknownNameError, match="A or B"):
        line.plan(bench, trim_end="C")
    with pytest.raises(lw.QuantityError, match="lw.mm"):
        line.plan(bench, reserve=20)


def test_not_known_is_none(line):
    bench = lw.Bench(former=lw.Former(as_formed="14.3 mm", grip="20 mm"), flare_tool=())
    plan = line.plan(bench)
    assert plan.cut_length is None and plan.cut_terms is None and plan.trim_end is None
    assert plan.settings == [None] * 3
    assert plan.ends["A"].minima["flare after"] is None and plan.ends["A"].terms["flare after"] is None
    assert plan.ends["A"].terms["assembled"] is not None and plan.ends["A"].net_shortening is None
    assert all(bend.from_raw_end is None for bend in plan.bends)
    assert plan.is_draft and plan.steps[0].locked
    assert "NOT KNOWN" in plan.card().upper()


def test_a_person_lifts_a_stop(bench, line):
    straights = ["60 mm", "10 mm", "90 mm"]
    path = lw.Path.from_straights(straights, bends=["45 deg"] * 2, rotations=["0 deg"], radius="14.3 mm")
    close = lw.Line("T3", tube=line.tube, path=path, a=line.a, b=line.b)
    stop = "BENDS_TOO_CLOSE@straight 2"
    open_plan = close.plan(bench)
    found = {problem.id: problem for problem in open_plan.problems}[stop]
    assert open_plan.is_draft and found.is_open and found.lifted is None
    assert (found.got, found.need) == (lw.mm(10), lw.mm(20))
    plan = close.plan(bench, accept=[(stop, "K. Doe", "bent by hand")])
    lifted = {problem.id: problem for problem in plan.problems}[stop]
    assert not plan.is_draft and not lifted.is_open and lifted.lifted == ("K. Doe", "bent by hand")


def test_the_facts_of_the_parts(line):
    tube = line.tube
    assert (tube.od, tube.wall, tube.material) == (lw.inch(3 / 16), lw.inch(0.028), "low-carbon steel")
    assert tube.bore_volume_ml("1 m") == pytest.approx(8.762, abs=0.001)
    assert tube.mass_g("1 m") == pytest.approx(71.1, abs=0.5)
    unknown = lw.Tube("3/16 in", wall="0.028 in", material="stainless 304")
    assert unknown.mass_g("1 m") is None
    thread = lw.thread("M 10 × 1,0")
    assert (thread.designation, thread.diameter, thread.pitch) == ("M10x1", lw.mm(10), lw.mm(1))
    assert line.a.nut.thread == thread == line.a.port.thread
    assert lw.Nut("unknown", length="17 mm", bore="5 mm", nose=None).thread is None
    assert lw.Port("M10x1").seat is None


def test_a_path_and_its_points(line):
    path = line.path
    again = lw.Path.from_vertices(path.vertices, radius="14.3 mm")
    assert [s.mm for s in again.straights] == pytest.approx([s.mm for s in path.straights])
    assert [a.deg for a in again.angles] == pytest.approx([30, 60, 90])
    assert [abs(r.deg) for r in again.rotations] == pytest.approx([180, 90])
    assert [length.mm for length in path.legs] == pytest.approx([55, 711.2, 234.95, 76])
    assert path.reversed().reversed() == path == path.mirrored().mirrored()
    assert path.reversed().straights == path.straights[::-1]
    assert [x.mm for x in path.end_point] == pytest.approx([x.mm for x in path.vertices[-1]], abs=1e-9)
    assert path.radii == [lw.mm(14.3)] * 3


def test_springback():
    pairs = [("90 deg", "86.5 deg"), ("45 deg", "43.2 deg")]
    springback = lw.Springback.from_trials(pairs)
    assert springback.setting("60 deg").deg == pytest.approx(62.46, abs=0.01)
    assert springback.constant.deg == pytest.approx(0.1) and springback.proportional == pytest.approx(0.03778, abs=1e-5)
    assert springback.trials[0] == (lw.deg(90), lw.deg(86.5))
    assert not springback.is_weak and lw.Springback.from_trials(pairs[:1]).is_weak
