"""What every class promises: frozen, compared, hashed, pickled, and a repr that makes the value again."""

import copy
import pickle

import linewright as lw
import pytest

CORNERS = [("0 mm", "0 mm"), ("80 mm", "0 mm"), ("80 mm", "90 mm")]
NAMES = {name: getattr(lw, name) for name in lw.__all__}


def values(line: lw.Line, bench: lw.Bench, plan: lw.Plan, fields: dict[str, str]) -> list[object]:
    """At least one value of every class, and of every way to make one."""
    bad = lw.LineDraft(**{**fields, "a_thread": "M10", "od": " 3/16 in "})
    overlap = lw.Path.from_legs(["5 mm"] * 3, bends=["90 deg"] * 2, rotations=["0 deg"], radius="14.3 mm")
    loop = lw.Path.from_straights(["60 mm", "60 mm"], bends=["200 deg"], radius="14.3 mm")
    tube = lw.Tube("1/4 in", wall="0.9 mm", material="stainless 316", min_radius="21/32 in", min_radius_source="sheet")
    (sized, refused) = lw.size_lines([fields, {"od": "316"}], bench=bench)
    accept = [("BENDS_TOO_CLOSE@straight 2", "K. Doe", "by hand")]
    other = line.plan(bench, trim_end="A", reserve="20 mm", accept=accept)
    loop_of_hand = lw.Path.from_vertices([[x, "0 mm", z] for x, z in CORNERS], radius="14.3 mm", making="hand")
    cut = lw.tape_cut("112 in", bends=7, laid="string outside", od="3/16 in")
    clips = lw.ClipRule(spacing="100 mm", from_end="30 mm", source="the shop's own rule").clips(line.path)
    assert clips.problems
    found = lw.identify_thread(major="9.45 mm +- 0.05 mm", side="external")
    none = lw.identify_thread(major="20 mm +- 0.05 mm", side="external", among=["M10x1"])
    assert found.next and none.nearest
    limits = lw.thread("M10x1").limits("internal")
    longer = lw.thread("3/8-24 UNF-2A").limits(engagement="1 in")
    mating = lw.mate("3/8-24 UNF-2A", "M10x1-6H-LH")
    stripping = lw.stripping("3/8-24", "M10x1", engagement="6 mm")
    measured = lw.mate_measured("M10x1", ["9.9 mm", "9.3 mm", "8.8 mm"], "M10x1", ["10.1 mm", "9.4 mm", "9 mm"])
    hands = lw.identify_thread(major="9.9 mm +- 0.01 mm", side="external", among=["M10x1", "M10x1-LH"])
    return [
        *[lw.mpa(205e3), lw.read_pressure("1900 psi")],
        *[lw.mm(14.3), lw.mm(-0.0), lw.inch(1 / 3), lw.deg(86.5), lw.rad(1.5), lw.rad(0.1), lw.read_angle("1 turn")],
        *[line, line.tube, line.path, line.a, line.a.nut, line.a.port, line.a.nut.thread, tube, overlap, loop],
        *[lw.thread("M10x1-6g-L-LH"), limits, limits.minor, longer, longer.minor, mating, stripping, measured],
        *[*hands.candidates, *hands.ways],
        *[found, *found.candidates, *found.ways, none, *lw.thread_lookalikes(), lw.threads(), lw.thread_report()],
        *[lw.thread("1 1/4-12"), lw.Nut(None, length="17 mm", bore="5 mm", nose="unknown"), lw.Port()],
        *[bench, bench.former, *bench.flare_tools, bench.springback, lw.Springback(constant="1 deg", proportional=0.3)],
        lw.Bench(former=bench.former, flare_tool=[], clearance="3 mm", back_off="4 mm"),
        lw.FlareTool("bubble", clamp="13 mm", projection="4 mm"),
        *[plan, *plan.bends, *plan.ends.values(), *plan.steps, *plan.problems, *plan.assumptions, other],
        *[*other.problems, sized, refused, *refused.problems, lw.LineDraft(), bad, bad.check(), bad.check().line],
        *[*plan.loading, *plan.tape_checks, *plan.turn_checks, plan.hand_check, *plan.changes(other), loop_of_hand],
        *[line.path.end_place, line.path.extent("3/16 in"), cut, clips, *clips.clips, *lw.clip_rules()],
        *[bad.check().line.plan(bench), *lw.CODES.values(), *lw.LineDraft.fields(), lw.LineDraft().check()],
        *[lw.material_properties("copper-nickel"), lw.material_properties("low-carbon steel", condition="annealed")],
        lw.material_properties("low-carbon steel", condition="annealed").hardening.value,
        lw.material_properties("copper-nickel").modulus,
        lw.Properties("own", modulus=("205 GPa", "s"), strength_coefficient=("600 MPa", "t"), hardening_exponent=0.2),
        lw.Properties("own", yield_strength=("240 MPa", "s"), tangent_modulus=("2 GPa", "t")),
        *[*flare_values(), *springback_values(), *wall_values(), *pressure_values(), *hydraulics_values()],
    ]


def pressure_values() -> list[object]:
    tube = lw.Tube("3/16 in", wall="0.028 in", material="low-carbon steel")
    asked = lw.Strength("290 MPa", factor=4, source="my own choice")
    straight = lw.Cylinder(tube, od_plus="0.003 in", wall_minus="0.005 in")
    bent = lw.Cylinder(tube, radius="14.3 mm", neutral_shift="0.1 mm")
    ideal = bent.ideal_cylinder_pressure("Lame", asked)
    factors = lw.BendFactors("4.75 mm", radius="14.25 mm")
    return [asked, straight, bent, ideal, straight.margin("Lame", "15 MPa", asked), factors, *lw.size_tolerances("1/4 in")]


def hydraulics_values() -> list[object]:
    tube = lw.Tube("3/16 in", wall="0.028 in", material="low-carbon steel")
    steel = lw.material_properties("low-carbon steel")
    own = lw.Fluid("drum 3", density_kg_per_m3=(1060, "s"), bulk_modulus=("1700 MPa", "t"), expansion_per_k=(7e-4, "u"))
    filled = lw.FilledTube(tube, metal=steel, ends="fixed", fluid=own)
    spans = [lw.Span(tube, metal=steel), lw.Span(tube, metal=steel, fluid=lw.Fluid.glycol())]
    tight = lw.Mechanics("3/16 in", wall="0.028 in", modulus="207 GPa", yield_strength="250 MPa")
    former = lw.Former.of_groove("14.3 mm", grip="20 mm", tube=tight)
    bench = lw.Bench(former=former, flare_tool=[])
    figures = [own, lw.Fluid("none"), lw.Fluid.glycol(), own.bulk_modulus, lw.Hold(90, fluid=own), filled, *spans]
    return [*figures, *lw.handbook_spacings("1/4 in"), *lw.handbook_spacings("3/16 in"), former, bench]


def springback_values() -> list[object]:
    trials = [("30 deg", "28.6 deg"), ("60 deg", "58.2 deg"), ("90 deg", "87.4 deg")]
    tube = lw.Tube("4.75 mm", wall="0.7 mm", material="low-carbon steel")
    laws = [{"yield_strength": "240 MPa"}, {"strength_coefficient": "600 MPa", "hardening_exponent": 0.2}]
    laws.append({"yield_strength": "240 MPa", "tangent_modulus": "2 GPa"})
    mechanics = [lw.Mechanics("4.75 mm", wall="0.7 mm", modulus="205 GPa", **law) for law in laws]
    prior = mechanics[0].prior(radius="14.3 mm", strength_scatter=0.1, modulus_scatter=0.03, bend_scatter="0.3 deg", worth=3)
    record = lw.Calibration(trials, tube=tube, former="former 1", date="2026-05-14", revision="2")
    fits = [lw.TrialFit(trials), lw.TrialFit(trials, prior=prior), lw.TrialFit([], prior=prior)]
    advice = fits[0].advice(["90 deg"], half_width="0.5 deg", chance=0.95, candidates=["20 deg", "120 deg"])
    held = [tube.bend("14.3 mm") for tube in mechanics]
    lines = [fit.springback() for fit in fits] + [bent.springback(arm="50 mm") for bent in held]
    lines += [record.springback(), lines[1].with_calibration(record)]
    rows = [("112.1 mm", "94.2 mm", "90 deg"), ("102 mm", "98.9 mm", "45 deg"), ("121.4 mm", "97.6 mm", "120 deg")]
    pieces = [lw.TestPiece("200 mm", legs=[a, b], angles=[angle]) for a, b, angle in rows]
    fitted = lw.PieceFit(pieces)
    return [*pieces, fitted, fitted.stretch(chance=0.9), *mechanics, *held, prior, record, *fits, advice, *lines]


def flare_values() -> list[object]:
    nut = lw.Nut("M10x1", length="17 mm", bore="5 mm", nose="coned", thread_length="11 mm", lead="0 mm")
    port = lw.Port("M10x1", "inverted-45", thread_depth="9.5 mm", seat_depth="10 mm")
    end = lw.End(nut, "double-45", port=port, flare_diameter="7.0 mm")
    tube = {"od": "3/16 in", "wall": "0.028 in"}
    allowances = lw.flare_allowances("double-45", **tube, before="200 mm", after="198 mm")
    assert len(allowances) == 3
    return [
        *[end, nut, port, end.clamp_margin("0.7 mm"), *allowances, lw.flare_size("double-45", "3/16 in")],
        *[lw.FlareForm(flare, **tube, diameter="7 mm") for flare in ("double-45", "bubble")],
        *[*lw.flare_standards(), *lw.usual_threads(), *lw.hexagons(), *lw.washers([("banjo", "3/8-24 UNF-2A")])],
    ]


def wall_values() -> list[object]:
    tube = lw.Tube("25 mm", wall="0.5 mm", material="copper-nickel")
    bent = lw.BentWall(tube, radius="37.5 mm", neutral_shift="0.1 mm")
    section = lw.FlattenedSection
    return [
        *[bent, bent.with_plastic_neutral_axis(), lw.BentWall(tube, radius="1 m"), bent.extrados],
        *[bent.free_wrinkling(0.2), lw.BentWall(tube, radius="30 mm").free_wrinkling(0.0)],
        section.from_flattening(tube, 0.9, kinematics="sides held"),
        section.from_ovality(tube, 0.05, kinematics="perimeter kept"),
        *[*lw.radius_rules("4.75 mm"), *lw.section_limits(), *lw.wall_reserves()],
    ]


@pytest.fixture
def every_value(line, bench, plan, fields):
    return values(line, bench, plan, fields)


def test_every_class_is_among_them(every_value):
    classes = {value for value in NAMES.values() if isinstance(value, type) and not issubclass(value, Exception)}
    assert {type(value) for value in every_value} == classes


@pytest.mark.parametrize(
    "again",
    [
        lambda value: eval(repr(value), dict(NAMES)),
        lambda value: pickle.loads(pickle.dumps(value)),
        lambda value: pickle.loads(pickle.dumps(value, protocol=2)),
        copy.copy,
        copy.deepcopy,
    ],
    ids=["repr", "pickle", "pickle protocol 2", "copy", "deepcopy"],
)
def test_a_value_can_be_made_again(every_value, again):
    for value in every_value:
        other = again(value)
        assert type(other) is type(value)
        assert other == value
        assert not other != value
        assert hash(other) == hash(value)
        assert repr(other) == repr(value)


def test_values_of_different_classes_are_not_equal(every_value):
    assert all(value != "text" and value != 3 and value is not None for value in every_value)


def test_nothing_can_be_changed(every_value):
    for value in every_value:
        public = [name for name in dir(value) if not name.startswith("_")]
        assert public
        for name in [*public, "anything"]:
            with pytest.raises(AttributeError):
                setattr(value, name, None)


def test_a_list_that_was_handed_out_changes_nothing(plan):
    plan.marks.clear()
    plan.ends.clear()
    assert len(plan.marks) == 3 and len(plan.ends) == 2


def test_one_line_spelled_twice_is_one_line(fields, line):
    spelled = lw.LineDraft(**{**fields, "od": "4.7625 mm", "radius": "14.30 mm"}).check().line
    typed = lw.LineDraft(**fields).check().line
    assert spelled == typed == line
    assert hash(spelled) == hash(typed) == hash(line)


def test_findings_of_the_reading_are_part_of_the_line(fields):
    ambiguous = lw.LineDraft(**{**fields, "a_thread": "M10"}).check()
    unknown = lw.LineDraft(**{**fields, "a_thread": "unknown"}).check()
    assert ambiguous.line != unknown.line
    assert "THREAD_AMBIGUOUS@field a_thread" in [problem.id for problem in ambiguous.problems]


def test_zero_has_one_hash():
    assert lw.mm(0.0) == lw.mm(-0.0)
    assert hash(lw.mm(0.0)) == hash(lw.mm(-0.0))


def test_no_class_without_a_constructor_can_be_called():
    for name in ("Length", "Angle", "Path", "Plan", "Draft"):
        with pytest.raises(TypeError):
            NAMES[name]()
