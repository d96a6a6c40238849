"""Bad input of every kind into every call: it is answered, or refused with an exception of ours or of Python's own
argument checks. A panic would come as `PanicException`, which is no `Exception`."""

import random

import linewright as lw
import numpy as np
import pytest

REFUSALS = (lw.LinewrightError, TypeError, ValueError, OverflowError)

NUMBERS = [float("nan"), float("inf"), -float("inf"), 1e308, -1e308, 5e-324, -0.0, 10**400, -1, 2**63, True]
TEXTS = ["", " ", ";", "-", "nan mm", "inf mm", "1e308 mm", "1e308 m", "-5 mm", "0 mm", "1/0 in", "9" * 400 + " mm"]
TEXTS += ["3/16", "1e-320 mm", "\0", "\ud800", "\N{FULLWIDTH DIGIT ONE} mm", "1 deg", "1e308 deg", "-1 deg", "3600 deg"]
TEXTS += ["unknown", "M", "Mx", "M1x1", "M999.999x0.001", "x" * 100_000, "½ in", "5'-13\"", "12 o'clock", "mm", "A"]
OTHERS = [None, b"1 mm", [], {}, object(), [[]], ["1 mm"] * 3, [float("nan")] * 3, np.array([]), np.zeros((2, 2, 2))]
OTHERS += [["1 mm"] * 20_000, ["0 deg"] * 20_000, [["0 mm"] * 3] * 20_000, lw.mm(1e308), lw.mm(-1), lw.deg(1e308)]
OTHERS += [iter([]), (x for x in ["1 mm", None]), [None], [("90 deg", "86 deg", "1 deg")], [("1 deg",)], lw, lw.Tube]
BY_STRETCH = ("stick_out", "net_shortening")
BAD = [*NUMBERS, *map(np.float64, NUMBERS[:6]), *TEXTS, *OTHERS]


@pytest.fixture
def calls(line, bench, plan, fields):
    """Every call with arguments that are good."""
    tube, path, end, nut = line.tube, line.path, line.a, line.a.nut
    problem, step, bend, end_plan = lw.LineDraft().check().problems[0], plan.steps[0], plan.bends[0], plan.ends["A"]
    among = {"among": ["M10x1", lw.thread("3/8-24")]}
    bends = {"bends": ["30 deg", "60 deg"], "rotations": ["90 deg"], "radius": "14.3 mm"}
    return [
        *[(make, [1.5], {}) for make in (lw.mm, lw.inch, lw.m, lw.deg, lw.rad)],
        *[(read, ["1 mm"], {}) for read in (lw.read_length, lw.read_angle, lw.thread, lw.Thread, lw.Code, lw.Field)],
        *[(make, [], {"radius": "14.3 mm", "angle": "90 deg"}) for make in (lw.arc, lw.gain, lw.tangent_length)],
        (
            lw.Tube,
            ["3/16 in"],
            {"wall": "0.7 mm", "material": tube.material, "min_radius": "9 mm", "min_radius_source": "data sheet"},
        ),
        *[(tube.bore_volume_ml, ["1 m"], {}), (tube.mass_g, ["1 m"], {}), (bench.springback.setting, ["90 deg"], {})],
        *[(lw.Springback, [], {"constant": "1 deg", "proportional": 0.1})],
        (lw.Springback.from_trials, [[("90 deg", "86 deg")]], {}),
        (lw.Former, [], {"as_formed": "14.3 mm", "grip": "20 mm"}),
        (lw.FlareTool, ["bubble"], {key: "3 mm" for key in ("clamp", "projection", "net_shortening", "cut_spare")}),
        (
            lw.Bench,
            [],
            {"former": bench.former, "flare_tool": bench.flare_tools, "springback": bench.springback}
            | {"clearance": "1 mm", "back_off": "1 mm", "revision": "1"},
        ),
        *[(way, [["90 mm"] * 3], bends) for way in (lw.Path.from_legs, lw.Path.from_straights)],
        (lw.Path.from_vertices, [[["0 mm"] * 3, ["9 mm"] * 3, ["0 mm", "9 mm", "0 mm"]]], {"radius": "1 mm"}),
        (lw.Nut, ["M10x1"], {"length": "17 mm", "bore": "5 mm", "nose": "coned"}),
        *[(lw.Port, ["M10x1", "bubble"], {"name": "tee"}), (lw.End, [nut, "bubble"], {"port": end.port})],
        (lw.Line, ["T2"], {"tube": tube, "path": path, "a": end, "b": end}),
        (line.plan, [bench], {"trim_end": "A", "reserve": "1 mm", "accept": [("a", "b", "c")]}),
        (lw.LineDraft, [], fields),
        (lambda **typed: lw.LineDraft(**typed).check(), [], fields),
        (lw.size_lines, [[fields]], {"bench": bench, "reserve": "1 mm", "accept": [], "ignore": [], "trim_end": "B"}),
        (lambda **typed: lw.size_lines([typed], bench=bench), [], fields),
        (lw.Problem, [problem.code, "line"], {"got": 1, "need": 1, "why": "", "fix": "", "lifted": ("a", "b")}),
        (lw.Assumption, ["what", lw.mm(1)], {"source": "", "place": "", "checked": "computed"}),
        *[(type(value), [], attributes(value)) for value in (step, bend, end_plan)],
        (lw.SizedLine, [], {"row": 1, "name": "T2", "plan": plan, "problems": [problem]}),
        *[(lw.mate, ["3/8-24", "M10x1"], {}), (lw.stripping, ["3/8-24", "M10x1"], {"engagement": "6 mm"})],
        (lw.identify_thread, [], {"side": "external", "major": "9.45 mm +- 0.05 mm", "per_inch": 24} | among),
        (lw.identify_thread, [], {"side": "internal", "minor": "9 mm +- 0.1 mm", "pitch": "1 mm +- 0.1 mm"} | among),
        (lw.identify_thread, [], {"side": "external", "ten_pitches": "10 mm +- 0.1 mm", "wear": "0.1 mm"}),
        (lw.identify_thread, [], {"side": "external", "pitches": (5, "5 mm +- 0.1 mm")}),
        (lw.separate_threads, ["3/8-24", "M10x1"], {"side": "external"}),
        *[(lw.thread_lookalikes, [["3/8-24", "M10x1"]], {}), (nut.thread.limits, ["external"], {})],
        (lw.thread("3/8-24").limits, ["external"], {"engagement": "6 mm"}),
        *[(nut.thread.tap_drill, [0.75], {}), (nut.thread.thread_share, ["9 mm"], {})],
        *[(nut.thread.is_same_size, ["M10x1"], {}), (nut.thread.engagement_group, ["6 mm"], {})],
        *[(lw.mate("3/8-24", "M10x1").engaged_share, ["6 mm"], {}), (lw.threads().__getitem__, ["pitch_mm"], {})],
        *[(lw.Table, [[(name, kind, [None])]], {}) for name, kind in (("a", "text"), ("b", "number"), ("c", "count"))],
        (lambda *cells: lw.Table([("a", "number", cells)]), [1.5, 2.5], {}),
        *flare_calls(end),
    ]


def flare_calls(end):
    tube, margin = {"od": "3/16 in", "wall": "0.028 in"}, {"under_head": "2.4 mm", "beyond_thread": "0.9 mm", "engaged": "8.6 mm"}
    nut = {"length": "17 mm", "bore": "5 mm", "nose": "coned", "thread_length": "11 mm", "lead": "1 mm"}
    return [
        *[(lw.Nut, ["M10x1"], nut), (lw.Port, ["M10x1"], {"thread_depth": "9.5 mm", "seat_depth": "10 mm"})],
        *[(end.clamp_margin, ["0.7 mm"], {}), (lw.ClampMargin, [], margin)],
        (lw.ClampMargin(**margin).threads_showing, ["1 mm"], {}),
        (lw.FlareForm, ["double-45"], {**tube, "diameter": "6.9 mm"}),
        *[(getattr(lw.FlareForm("double-45", **tube, diameter="6.9 mm"), of), ["uniaxial"], {}) for of in BY_STRETCH],
        (lw.flare_allowances, ["double-45"], {**tube, "diameters": ["6.7 mm", "7.1 mm"], "before": "9 mm", "after": "8 mm"}),
        (lw.flare_thickness_at_least, ["bubble"], {"wall": "0.7 mm"}),
        *[(lw.flare_size, ["double-45", "3/16 in"], {}), (lw.seats_of_thread, ["M10x1", "3/16 in"], {})],
        *[(of_end, ["banjo"], {}) for of_end in (lw.hose_end_sealed_by, lw.hose_end_washers)],
        *[(lw.hose_end_check, ["banjo", 2], {}), (lw.washers, [[("banjo", "M10x1")]], {})],
        (lambda end, thread: lw.washers([(end, thread)]), ["banjo", "M10x1"], {}),
    ]


def attributes(value) -> dict[str, object]:
    return {name: getattr(value, name) for name in dir(value) if not name.startswith("_")}


def answered(call, arguments, named) -> bool:
    """Whether a call was answered and everything in the answer can be read; False if it was refused."""
    try:
        answer = call(*arguments, **named)
        if type(answer).__module__ == "linewright":
            repr(answer), str(answer), hash(answer)
    except REFUSALS:
        return False
    for name in dir(answer) if type(answer).__module__ == "linewright" else []:
        try:
            getattr(answer, name)
        except lw.InputError as error:
            # A bend too wide for legs, and a thread whose side nobody said.
            assert error.code in ("NO_CORNER", "NOT_KNOWN")
    return True


def test_every_bad_value_in_every_argument(calls):
    good, refused, tried = 0, 0, 0
    for call, arguments, named in calls:
        for place in [*range(len(arguments)), *named]:
            for bad in BAD:
                some, others = list(arguments), dict(named)
                target = some if isinstance(place, int) else others
                target[place] = bad
                tried += 1
                refused += not answered(call, some, others)
        good += answered(call, arguments, named)
    assert good >= len(calls) - 6, "of the calls with good arguments only the six readers may be refused"
    assert tried > 5000 and tried * 0.5 < refused < tried


def test_random_rows_are_planned_or_refused(bench, fields):
    chance = random.Random(1)
    texts = [text for text in TEXTS if len(text) < 1000]
    rows = []
    for _ in range(3000):
        row = dict(fields)
        for field in chance.sample(sorted(row), chance.randint(1, 3)):
            row[field] = chance.choice([*texts, *NUMBERS, None, row[field], f"{chance.uniform(-9, 900):.2f} mm"])
        rows.append(row)
    sized = lw.size_lines(rows, bench=bench)
    assert [one.row for one in sized] == list(range(1, 3001))
    for one in sized:
        assert one.plan is not None or any(problem.level == "refuse" for problem in one.problems)
        assert one.plan is None or one.plan.card().isascii()


@pytest.mark.parametrize("count", [1001, 1002, 5000])
def test_a_line_of_too_many_bends(count):
    with pytest.raises(lw.InputError) as caught:
        lw.Path.from_legs(
            ["100 mm"] * (count + 1), bends=["1 deg"] * count, rotations=["0 deg"] * (count - 1), radius="14.3 mm"
        )
    assert caught.value.code == "COUNT_MISMATCH"


def test_the_longest_line():
    path = lw.Path.from_legs(["100 mm"] * 1001, bends=["1 deg"] * 1000, rotations=["1 deg"] * 999, radius="14.3 mm")
    assert len(path.angles) == 1000 and path.developed_length.m == pytest.approx(100.1, abs=0.1)
    assert eval(repr(path), vars(lw)) == path


@pytest.mark.parametrize(
    ("call", "field"),
    [
        (lambda count: lw.hose_end_check("banjo", count), "washers"),
        (lambda count: lw.clips_to_buy(count, 1), "needed"),
        (lambda count: lw.clips_to_buy(1, count), "reusable"),
        (lambda count: lw.tape_cut("1 m", bends=count, laid="string outside", od="3/16 in"), "bends"),
        (lambda count: lw.HandCheck(level_legs=(1, count), look_leg=3, up=True), "level_legs, item 2"),
        (lambda count: lw.HandCheck(level_legs=(1, 2), look_leg=count, up=True), "look_leg"),
        (lambda count: lw.identify_thread(side="external", pitches=(count, "5 mm +- 0.1 mm")), "pitches, item 1"),
    ],
)
def test_a_count_is_a_whole_number_from_zero_on(call, field):
    for count in (-1, 2**70):
        with pytest.raises(lw.InputError) as beyond:
            call(count)
        assert (beyond.value.code, beyond.value.part) == ("OUT_OF_RANGE", f"field {field}")
    for count in (2.5, "2", None, True):
        with pytest.raises(lw.QuantityError) as no_count:
            call(count)
        assert (no_count.value.code, no_count.value.part) == ("WRONG_KIND", f"field {field}")


def test_a_count_of_threads_per_inch_may_say_how_far_it_is_off():
    found = lw.identify_thread(side="external", per_inch=(24, 0.2), among=["3/8-24", "3/8-20"])
    assert [str(candidate.thread) for candidate in found.candidates] == ["3/8-24 UNF"]
    assert lw.identify_thread(side="external", per_inch=[24, 0.2], among=["3/8-24", "3/8-20"]) == found
    with pytest.raises(lw.QuantityError):
        lw.identify_thread(side="external", per_inch=(24, 1, 2))
    with pytest.raises(lw.InputError) as beyond:
        lw.identify_thread(side="external", per_inch=(24, 0))
    assert (beyond.value.code, beyond.value.part) == ("OUT_OF_RANGE", "field per_inch, item 2")


def test_flares_of_a_tape_are_two_names():
    tape = {"measured": "2 m", "bends": 2, "laid": "center line", "od": "3/16 in"}
    both = lw.tape_cut(**tape, flares=["double-45", "double-45"])
    assert both == lw.tape_cut(**tape, flares=("double-45", "double-45"))
    for flares, part in [
        ("double-45", "field flares"),
        (["double-45"], "field flares"),
        (("double-45", 45), "field flares, item 2"),
        (45, "field flares"),
    ]:
        with pytest.raises(lw.QuantityError) as wrong:
            lw.tape_cut(**tape, flares=flares)
        assert (wrong.value.code, wrong.value.part) == ("WRONG_KIND", part)
    with pytest.raises(lw.UnknownNameError):
        lw.tape_cut(**tape, flares=("double-45", "double-54"))
