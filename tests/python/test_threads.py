"""Threads as Python code meets them: limits, identification, mating, and the tables of the catalogue."""

import copy
import math
import pickle

import linewright as lw
import pandas
import polars
import pyarrow
import pytest

IN = 25.4
# A caliper's last digit; the published limits have three places in mm or four in inches.
PRINTED_MM = 5e-4
EXACT = 1e-9


def close(length, number, within=EXACT):
    return length is not None and abs(length.mm - number) <= within


def raises(code, call, *arguments, error=lw.InputError, **named):
    with pytest.raises(error) as caught:
        call(*arguments, **named)
    assert caught.value.code == code
    return caught.value


# --- limits ----------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("designation", "diameter", "least", "most"),
    [
        # ISO 965-2, M10x1, public tables.
        ("M10x1-6g", "major", 9.794, 9.974),
        ("M10x1-6g", "pitch_diameter", 9.212, 9.324),
        ("M10x1-6H", "pitch_diameter", 9.350, 9.500),
        ("M10x1-6H", "minor", 8.917, 9.153),
        # ASME B1.1, 3/8-24 UNF, public tables, in inches.
        ("3/8-24 UNF-2A", "major", 0.3667 * IN, 0.3739 * IN),
        ("3/8-24 UNF-2A", "pitch_diameter", 0.3430 * IN, 0.3468 * IN),
        ("3/8-24 UNF-2B", "pitch_diameter", 0.3479 * IN, 0.3528 * IN),
        ("3/8-24 UNF-2B", "minor", 0.330 * IN, 0.340 * IN),
    ],
)
def test_printed_limits(designation, diameter, least, most):
    thread = lw.thread(designation)
    span = getattr(thread, diameter)
    assert close(span.min, least, PRINTED_MM) and close(span.max, most, PRINTED_MM)
    limits = thread.limits()
    assert getattr(limits, diameter) == span
    assert (limits.thread, limits.side, limits.thread_class) == (thread, thread.side, thread.thread_class)
    assert not limits.is_class_assumed


def test_without_a_class_the_usual_one_is_taken_and_said():
    assumed = lw.thread("M10x1").limits("external")
    named = lw.thread("M10x1-6g").limits()
    assert (assumed.thread_class, assumed.is_class_assumed) == ("6g", True)
    assert (named.thread_class, named.is_class_assumed) == ("6g", False)
    assert (assumed.major, assumed.pitch_diameter, assumed.minor) == (named.major, named.pitch_diameter, named.minor)
    assert assumed != named
    assert "ISO 965-1" in named.source and named.source.endswith(named.checked)


def test_where_the_standard_sets_no_limit_there_is_none():
    outside, inside = (lw.thread(f"3/8-24 UNF-{of}").limits() for of in ("2A", "2B"))
    assert outside.minor.min is None and inside.major.max is None
    # ASME B1.1: the rounded root lies 1.190785 pitches below the largest major diameter; four places in inches.
    assert close(outside.rounded_root, (0.3739 - 1.190785 / 24) * IN, 0.00005 * IN)
    # Public tables: allowance 0.0011 in.
    assert close(outside.allowance, 0.0011 * IN)
    assert inside.rounded_root is None and inside.allowance is None
    assert lw.thread("G1/8").limits("internal").thread_class is None


def test_a_longer_engagement_widens_a_unified_pitch_diameter():
    thread = lw.thread("3/8-24 UNF-2B")
    # ASME B1.1 bases the tolerances of the fine series on one diameter.
    assert close(thread.basic_engagement, 0.375 * IN)
    taper = lw.thread("1/2-14 NPT")
    assert close(taper.gauge_length, 0.320 * IN) and abs(taper.useful_length.mm - 0.5337 * IN) < 0.00005 * IN
    assert thread.gauge_length is None and thread.useful_length is None
    assert thread.limits(engagement="0.375 in").pitch_diameter == thread.pitch_diameter
    longer = thread.limits(engagement="1 in")
    assert longer.pitch_diameter.max > thread.pitch_diameter.max
    assert longer.pitch_diameter.min == thread.pitch_diameter.min and longer != thread.limits()
    raises("NOT_KNOWN", lw.thread("M10x1-6g").limits, engagement="6 mm")


def test_a_side_that_nobody_said_is_asked_for():
    for name in ("major", "pitch_diameter", "minor"):
        error = raises("NOT_KNOWN", getattr, lw.thread("M10x1"), name)
        assert "M10x1-6H" in error.fix and '.limits("external")' in error.fix
    raises("NOT_KNOWN", lw.thread("M10x1").limits)
    raises("THREAD_SIDE", lw.thread("M10x1-6H").limits, "external")
    raises("THREAD_SIDE", lw.thread("R 1/8").limits, "internal")
    raises("OUT_OF_RANGE", lw.thread, "M400x4")
    raises("UNKNOWN_NAME", lw.thread("M10x1").limits, "outside", error=lw.UnknownNameError)


# --- one thread ------------------------------------------------------------------------------------------------


def test_what_a_designation_says():
    thread = lw.thread("M 10 × 1,0 - 6g - L - LH")
    assert (thread.family, thread.side, thread.thread_class, thread.engagement) == ("metric", "external", "6g", "L")
    assert (thread.hand, thread.series, thread.taper) == ("left", None, 0.0)
    assert thread.plain == lw.thread("M10x1-LH") and thread.is_same_size("M10x1-LH")
    assert not thread.is_same_size("M10x1") and not thread.is_same_size(lw.thread("M10x1.25-LH"))
    unified = lw.thread("3/8-24")
    assert (unified.family, unified.series, unified.hand, unified.per_inch) == ("unified", "UNF", "right", 24.0)
    assert unified.side is None and unified.thread_class is None and unified.normal_engagement is None
    taper = lw.thread("1/8-27 NPT")
    assert (taper.family, taper.taper, taper.stress_area_mm2) == ("NPT", 1 / 16, None)
    assert (lw.thread("R 1/8").side, lw.thread("Rc 1/8").side) == ("external", "internal")
    assert lw.thread("G1/8").half_angle == lw.deg(27.5)


def test_the_form_follows_from_diameter_and_pitch():
    thread = lw.thread("M10x1")
    sharp = math.sqrt(3) / 2
    assert close(thread.height, 5 / 8 * sharp)
    assert close(thread.basic_pitch_diameter, 10 - 0.75 * sharp)
    assert thread.lead_angle.rad == pytest.approx(math.atan(1 / (math.pi * (10 - 0.75 * sharp))), rel=1e-12)
    # ISO 898-1: 64.5 square millimeters; ASME B1.1, 3/8-24: 0.0878 square inches.
    assert thread.stress_area_mm2 == pytest.approx(64.5, abs=0.05)
    assert lw.thread("3/8-24").stress_area_mm2 == pytest.approx(0.0878 * IN**2, abs=0.00005 * IN**2)
    # ISO 965-1, normal engagement of 5.6 to 11.2 mm with pitch 1: 3 to 9 mm.
    assert thread.normal_engagement == (lw.mm(3), lw.mm(9))
    assert [thread.engagement_group(length) for length in ("3 mm", "6 mm", "9.1 mm")] == ["S", "N", "L"]


def test_a_hole_and_its_share_of_the_thread_belong_together():
    thread = lw.thread("M10x1")
    hole = thread.tap_drill(0.75)
    # Drill charts: d - share x 1.299 P, where 1.299 is 3/2 of sqrt(3)/2.
    assert close(hole, 10 - 0.75 * 1.5 * math.sqrt(3) / 2)
    assert thread.thread_share(hole) == pytest.approx(0.75, abs=1e-12)
    for outside in ("11 mm", "8.5 mm"):
        assert "8.701 mm to 10 mm" in str(raises("OUT_OF_RANGE", thread.thread_share, outside))
    raises("OUT_OF_RANGE", thread.tap_drill, 75)
    raises("NOT_KNOWN", lw.thread("1/8-27 NPT").tap_drill, 0.75)
    raises("WRONG_KIND", thread.tap_drill, "75 %", error=lw.QuantityError)
    assert '"8.5 mm"' in raises("UNIT_MISSING", thread.thread_share, 8.5, error=lw.QuantityError).fix


SPELLED = ["M10x1", "M10x1-LH", "M10x1-6g", "M10x1-6H-LH", "M10x1-4g6g-L", "M10x1-5H6H-S-LH", "3/8-24 UNF", "3/8-24 UNF-2A"]
SPELLED += ["3/8-24 UNF-2B-LH", "7/16-24 UNS-3A", "1 1/4-12 UNF-LH", "No. 10-32 UNF-2B", "G1/8", "G1/8 A", "G1/8 B LH"]
SPELLED += ["R 1/8 LH", "Rp 3/8", "Rc 1/4", "1/8-27 NPT", "1/8-27 NPT-LH"]


@pytest.mark.parametrize("designation", SPELLED)
def test_a_thread_with_class_and_hand_comes_back(designation):
    thread = lw.thread(designation)
    assert str(thread) == designation
    for again in (eval(repr(thread), vars(lw)), pickle.loads(pickle.dumps(thread)), copy.deepcopy(thread)):
        assert again == thread and hash(again) == hash(thread) and str(again) == designation
        assert (again.thread_class, again.hand, again.side) == (thread.thread_class, thread.hand, thread.side)
    nut = lw.Nut(thread, length="17 mm", bore="5 mm", nose="coned")
    port = lw.Port(designation, "inverted-45")
    assert nut.thread == port.thread == thread
    assert eval(repr(nut), vars(lw)) == nut == pickle.loads(pickle.dumps(nut))
    assert eval(repr(port), vars(lw)) == port == pickle.loads(pickle.dumps(port))


def test_threads_of_different_classes_are_different_values():
    threads = {lw.thread(designation) for designation in SPELLED}
    assert len(threads) == len(SPELLED) and lw.thread("3/8 UNF 2a") in threads


# --- what was measured -------------------------------------------------------------------------------------------


def test_a_worn_nut_is_not_the_metric_one():
    found = lw.identify_thread(major="9.45 mm +- 0.05 mm", side="external")
    assert "3/8-24 UNF" in [str(candidate.thread) for candidate in found.candidates]
    # M10x1-6g is at least 9.794 (ISO 965-2): 9.5 at the reading's most and 0.1 worn off do not reach it.
    assert "M10x1" not in [str(candidate.thread) for candidate in found.candidates]
    assert sum(candidate.share for candidate in found.candidates) == pytest.approx(1)
    shares = [candidate.share for candidate in found.candidates]
    assert shares == sorted(shares, reverse=True) and found.nearest is None
    for candidate in found.candidates:
        assert candidate.diameter.min <= lw.mm(9.5) and candidate.diameter.max >= lw.mm(9.4)
        assert close(candidate.ten_pitches, 10 * candidate.thread.pitch.mm)


@pytest.mark.parametrize(
    "pitch",
    [
        {"pitch": "1.06 mm +- 0.02 mm"},
        {"ten_pitches": "10.6 mm +- 0.1 mm"},
        {"ten_pitches": (lw.mm(10.6), "0.1 mm")},
        {"pitches": (5, "5.3 mm +/- 0.1 mm")},
        {"per_inch": 24},
    ],
    ids=str,
)
def test_a_pitch_leaves_one(pitch):
    among = ["M10x1", lw.thread("3/8-24"), "3/8-16"]
    found = lw.identify_thread(major="9.45 mm ± 0.05 mm", side="external", among=among, **pitch)
    assert [candidate.thread for candidate in found.candidates] == [lw.thread("3/8-24")]
    assert found.candidates[0].share == 1 and found.next is None and found.ways == ()


def test_the_next_measurement_is_one_that_separates():
    found = lw.identify_thread(major="10.95 mm +- 0.05 mm", side="external", among=["M11x1", "7/16-24"])
    assert {str(candidate.thread) for candidate in found.candidates} == {"M11x1", "7/16-24 UNS"}
    assert found.next == found.ways[0] and found.next.measure == "ten pitches" and found.next.separates
    assert found.advice == found.next.words
    expected = {candidate.thread: candidate.ten_pitches for candidate in found.candidates}
    first, second = (candidate.thread for candidate in found.candidates)
    assert found.next.first == (expected[first],) * 2 and found.next.second == (expected[second],) * 2
    ways = lw.separate_threads(first, second, side="external")
    assert tuple(ways) == found.ways


def test_ways_to_separate():
    ten, diameter, taper, flanks = lw.separate_threads("G1/8", "1/8-27 NPT", side="external")
    # 25.4 / 28 and 25.4 / 27 mm; 55 and 60 degrees; a taper of 1 in 16.
    assert close(ten.first[0], 254 / 28) and close(ten.second[1], 254 / 27) and ten.separates
    assert flanks.first == (lw.deg(55.0),) * 2 and flanks.second == (lw.deg(60.0),) * 2 and flanks.separates
    assert close(taper.first[0], 0) and close(taper.second[0], 5 / 16) and taper.separates
    assert diameter.first[0] < diameter.first[1] and "G1/8" in diameter.words
    # Inside there is no R.
    raises("THREAD_SIDE", lw.separate_threads, "R 1/8", "G1/8", side="internal")


def test_nothing_fits_and_the_nearest_is_named():
    found = lw.identify_thread(major="20 mm +- 0.05 mm", side="external", among=["M10x1", "M12x1"])
    assert found.candidates == () and found.nearest == lw.thread("M12x1") and "M12x1" in found.advice
    assert lw.identify_thread(per_inch=24, side="external", among=[]).nearest is None


def test_wear_widens_what_fits():
    def candidates(wear):
        found = lw.identify_thread(major="9.6 mm +- 0.05 mm", side="external", wear=wear, among=["M10x1"])
        return [str(candidate.thread) for candidate in found.candidates]

    # 9.794 (ISO 965-2) less 0.05 of the reading and less the wear.
    assert candidates("0.1 mm") == [] and candidates("0.2 mm") == ["M10x1"] == candidates(lw.mm(0.2))


def test_a_hole_is_measured_over_its_minor_diameter():
    found = lw.identify_thread(minor="9.0 mm +- 0.05 mm", side="internal", among=["M10x1", "M12x1"])
    assert [str(candidate.thread) for candidate in found.candidates] == ["M10x1"]
    for side, wrong, own in (("internal", "major", "minor"), ("external", "minor", "major")):
        error = raises("THREAD_SIDE", lw.identify_thread, side=side, **{wrong: "9 mm +- 0.05 mm"})
        assert error.part == f"field {wrong}" and own in error.need and "crests" in error.why


def test_readings_that_are_none():
    identify = lw.identify_thread
    raises("FIELD_MISSING", identify, side="external")
    raises("UNREADABLE", identify, side="external", major="9.45 mm")
    raises("UNIT_MISSING", identify, side="external", major="9.45 +- 0.05")
    raises("FIELDS_CONFLICT", identify, side="external", pitch="1 mm +- 0.1 mm", per_inch=24)
    raises("OUT_OF_RANGE", identify, side="external", pitches=(0, "1 mm +- 0.1 mm"))
    raises("OUT_OF_RANGE", identify, side="external", major=("9.45 mm", "-0.05 mm"))
    raises("UNKNOWN_NAME", identify, side="A", per_inch=24, error=lw.UnknownNameError)
    for bare in (9.45, 9, pandas.Series([9.45]).iloc[0]):
        error = raises("UNIT_MISSING", identify, side="external", major=bare, error=lw.QuantityError)
        assert isinstance(error, TypeError) and f'"{bare:g} mm +- 0.05 mm"' in error.fix
    error = raises("WRONG_KIND", identify, side="external", major=lw.mm(9.45), error=lw.QuantityError)
    assert "9.45 mm +- 0.05 mm" in error.fix
    raises("UNIT_MISSING", identify, side="external", major=(lw.mm(9.45), 0.05), error=lw.QuantityError)
    raises("UNIT_MISSING", identify, side="external", major=[9.45, 0.05, 1], error=lw.QuantityError)
    raises("WRONG_KIND", identify, side="external", major=["9.45 mm"], error=lw.QuantityError)
    raises("UNIT_MISSING", identify, side="external", wear=0.1, error=lw.QuantityError)
    raises("WRONG_KIND", identify, side="external", per_inch="24", error=lw.QuantityError)
    raises("WRONG_KIND", identify, side="external", per_inch=24, among="M10x1", error=lw.QuantityError)
    raises("THREAD_AMBIGUOUS", identify, side="external", per_inch=24, among=["M10x1", "M10"])


# --- one thread in another ---------------------------------------------------------------------------------------


def test_a_wrong_nut_that_feels_right():
    wrong = lw.mate("3/8-24 UNF-2A", lw.thread("M10x1-6H"))
    assert (wrong.starts, wrong.feel, wrong.level) == ("always", "turns in", "stop")
    assert wrong.is_lookalike and not wrong.is_same
    # Half the difference of the published limits: smallest major outside, largest minor inside, and the other way round.
    assert close(wrong.overlap_worst, (0.3667 * IN - 9.153) / 2, PRINTED_MM)
    assert close(wrong.overlap_best, (0.3739 * IN - 8.917) / 2, PRINTED_MM)
    height = 5 / 8 * math.sqrt(3) / 2
    assert wrong.share_worst == pytest.approx(wrong.overlap_worst.mm / height)
    # The pitches differ by 25.4 / 24 - 1: a turn is a pitch of the male.
    for turns, length in zip(wrong.turns, wrong.lengths):
        assert turns == pytest.approx(length.mm / (IN / 24))
    reached = wrong.lengths[0].mm / 6
    assert wrong.engaged_share("6 mm") == pytest.approx(reached * wrong.share_worst)
    assert "3/8-24" in wrong.verdict and str(wrong) == wrong.verdict


def test_the_right_nut():
    right = lw.mate("M10x1", "M10x1")
    assert right.is_same and right.level == "note" and not right.is_lookalike
    assert right.turns == right.lengths == (None, None)
    assert right.engaged_share("6 mm") == right.share_worst
    assert lw.mate("R 1/8", "Rc 1/8").is_same
    assert lw.mate("M10x1", "M10x1-LH").starts == "never"
    assert lw.mate("M10x1", "M10x1-LH").turns == (0.0, 0.0)


def test_pairs_that_are_none():
    raises("THREAD_SIDE", lw.mate, "M10x1-6H", "M10x1")
    raises("THREAD_SIDE", lw.stripping, "M10x1", "M10x1-6g", engagement="6 mm")
    assert raises("THREAD_AMBIGUOUS", lw.mate, "M10x1", "M10").part == "field female"
    raises("UNREADABLE", lw.mate, "unknown", "M10x1")
    for bad in (None, 10, b"M10x1", ["M10x1"]):
        raises("WRONG_KIND", lw.mate, bad, "M10x1", error=lw.QuantityError)
    right = lw.mate("M10x1", "M10x1")
    raises("OUT_OF_RANGE", right.engaged_share, "0 mm")
    raises("UNIT_MISSING", right.engaged_share, 6, error=lw.QuantityError)
    raises("NOT_KNOWN", lw.stripping, "R 1/8", "Rc 1/8", engagement="6 mm")
    error = raises("UNIT_MISSING", lw.stripping, "M10x1", "M10x1", engagement=6, error=lw.QuantityError)
    assert '"6 mm"' in error.fix


def test_what_would_be_sheared_off():
    right = lw.stripping("M10x1-6g", "M10x1-6H", engagement="6 mm")
    assert right.engaged == lw.mm(6) and right.share == (1, 1)
    # FED-STD-H28/2: pi Kn max Le (1/2 + tan 30 (Es min - Kn max) / p), and its counterpart inside.
    tan = 1 / math.sqrt(3)
    assert right.external_mm2[0] == pytest.approx(math.pi * 9.153 * 6 * (0.5 + tan * (9.212 - 9.153)), rel=1e-9)
    assert right.internal_mm2[0] == pytest.approx(math.pi * 9.794 * 6 * (0.5 + tan * (9.794 - 9.500)), rel=1e-9)
    wrong = lw.stripping("3/8-24 UNF-2A", "M10x1-6H", engagement="6 mm")
    assert wrong.engaged == lw.mate("3/8-24 UNF-2A", "M10x1-6H").lengths[0]
    assert wrong.share[0] < wrong.share[1] < 1 and wrong.external_mm2[0] < right.external_mm2[0]


def test_lookalikes_of_a_list_and_of_the_catalogue():
    (pair,) = lw.thread_lookalikes([lw.thread("M10x1"), "3/8-24"])
    assert (pair.male, pair.female) == (lw.thread("3/8-24"), lw.thread("M10x1"))
    every = lw.thread_lookalikes()
    assert pair in every and all(one.is_lookalike and one.level == "stop" for one in every)
    assert every == lw.thread_lookalikes(among=lw.threads()["designation"])
    assert [one.share_best for one in every] == sorted((one.share_best for one in every), reverse=True)
    assert lw.thread_lookalikes([]) == []
    raises("UNREADABLE", lw.thread_lookalikes, ["M10x1", "cheese"])


# --- tables --------------------------------------------------------------------------------------------------------


TEXTS = {"designation", "family", "external_class", "internal_class", "met", "source", "checked"}
TEXTS |= {"source_place"} | {f"{side}_{what}" for side in ("external", "internal") for what in ("source", "source_place", "checked")}


@pytest.fixture(scope="module")
def table():
    return lw.threads()


def test_the_catalogue_says_what_its_threads_say(table):
    assert table == lw.threads() and len(table) == len(set(table["designation"]))
    for row, designation in enumerate(table["designation"]):
        thread = lw.thread(designation)
        assert table["family"][row] == thread.family
        assert table["diameter_mm"][row] == thread.diameter.mm and table["pitch_mm"][row] == thread.pitch.mm
        assert table["per_inch"][row] == thread.per_inch and table["taper"][row] == thread.taper
        assert table["half_angle_deg"][row] == thread.half_angle.deg
        for side in ("external", "internal"):
            limits = thread.limits(side) if thread.side in (side, None) else None
            assert table[f"{side}_checked"][row] == (limits and limits.checked)
            assert table[f"{side}_class"][row] == (limits and limits.thread_class)
            for name in ("major", "pitch_diameter", "minor"):
                for end in ("min", "max"):
                    length = limits and getattr(getattr(limits, name), end)
                    assert table[f"{side}_{name}_{end}_mm"][row] == (length and length.mm)
    row = table["designation"].index("M10x1")
    assert (table["external_major_min_mm"][row], table["internal_minor_max_mm"][row]) == (9.794, 9.153)


def test_the_report_counts_every_side_once(table):
    report = lw.thread_report()
    counts = {}
    for family, checked, rows in zip(report["family"], report["checked"], report["rows"]):
        counts[family, checked] = rows
    assert len(counts) == len(report)
    sides = [(f, c) for side in ("external", "internal") for f, c in zip(table["family"], table[f"{side}_checked"]) if c]
    assert counts == {key: sides.count(key) for key in set(sides)}
    # R is external only, Rp and Rc internal only, all others both.
    only = sum(family in ("R", "Rp", "Rc") for family in table["family"])
    assert sum(report["rows"]) == 2 * len(table) - only


def test_pyarrow_takes_it_as_often_as_wanted(table):
    arrow = pyarrow.table(table)
    assert arrow.equals(pyarrow.table(table)) and arrow.to_pydict() == table.to_dict()
    assert tuple(arrow.column_names) == table.columns and len(arrow) == len(table)
    for name in table.columns:
        wanted = pyarrow.utf8() if name in TEXTS else pyarrow.float64()
        assert arrow.schema.field(name).type == wanted, name
        assert arrow[name].null_count == table[name].count(None)
    assert pyarrow.schema(table) == arrow.schema
    arrow.validate(full=True)
    assert pyarrow.table(lw.thread_report()).schema.field("rows").type == pyarrow.int64()


def test_a_capsule_is_made_anew_each_time(table):
    streams = [table.__arrow_c_stream__(), table.__arrow_c_stream__(None), table.__arrow_c_stream__(requested_schema=None)]
    assert len({id(stream) for stream in streams}) == 3
    assert all("arrow_array_stream" in repr(stream) for stream in streams)
    assert '"arrow_schema"' in repr(table.__arrow_c_schema__())
    # A consumer that wants other types converts.
    wanted = pyarrow.schema([("thread", pyarrow.large_utf8()), ("pitch_mm", pyarrow.float32())])
    small = lw.Table([("thread", "text", ["M10x1", None]), ("pitch_mm", "number", [1.0, None])])
    assert pyarrow.table(small, schema=wanted).to_pydict() == small.to_dict()


def test_what_was_handed_over_outlives_the_table():
    arrow = pyarrow.table(lw.threads())
    frame = polars.DataFrame(lw.threads())
    assert arrow.to_pydict() == frame.to_dict(as_series=False) == lw.threads().to_dict()


def test_polars_takes_it(table):
    frame = polars.DataFrame(table)
    assert frame.equals(polars.DataFrame(table)) and frame.shape == (len(table), len(table.columns))
    assert {name for name, kind in frame.schema.items() if kind == polars.String} == TEXTS
    assert {kind for name, kind in frame.schema.items() if name not in TEXTS} == {polars.Float64}
    assert frame["external_minor_min_mm"].null_count() == table["external_minor_min_mm"].count(None) > 0
    fine = frame.filter((polars.col("family") == "metric") & (polars.col("pitch_mm") == 1.0))
    assert "M10x1" in fine["designation"].to_list()


def test_pandas_takes_it(table):
    for frame in (pandas.DataFrame(table.to_dict()), pyarrow.table(table).to_pandas()):
        assert list(frame.columns) == list(table.columns) and len(frame) == len(table)
        assert frame["external_minor_min_mm"].dtype == "float64"
        assert frame["external_minor_min_mm"].isna().sum() == table["external_minor_min_mm"].count(None)
        row = frame[frame["designation"] == "M10x1"].iloc[0]
        assert row["internal_pitch_diameter_max_mm"] == 9.5


def test_a_table_is_made_again(table):
    empty = lw.Table([("name", "text", []), ("rows", "count", [])])
    void = lw.Table([("x", "number", [None, None])])
    other = lw.Table([("x", "text", [None, None])])
    assert void != other and len(empty) == 0 and empty.to_dict() == {"name": [], "rows": []}
    for one in (table, lw.thread_report(), empty, void, other):
        for again in (eval(repr(one), vars(lw)), pickle.loads(pickle.dumps(one)), copy.deepcopy(one)):
            assert again == one and hash(again) == hash(one) and pyarrow.table(again).equals(pyarrow.table(one))
    assert str(void) == "table of 2 rows: x"


def test_a_table_cannot_be_changed(table):
    table["pitch_mm"].clear()
    table.to_dict().clear()
    assert len(table["pitch_mm"]) == len(table) == len(table.to_dict()["pitch_mm"])
    for change in ("table['pitch_mm'] = []", "del table['pitch_mm']", "table.columns = ()"):
        with pytest.raises((TypeError, AttributeError)):
            exec(change, {"table": table})
    with pytest.raises(TypeError):
        iter(table)
    with pytest.raises(TypeError):
        table[0]
    assert "pitch_mm" in raises("UNKNOWN_NAME", lambda: table["pitch"], error=lw.UnknownNameError).need


def test_columns_that_do_not_belong_together():
    raises("FIELD_MISSING", lw.Table, [])
    raises("OUT_OF_RANGE", lw.Table, [("a", "text", ["x"]), ("b", "count", [1, 2])])
    raises("FIELDS_CONFLICT", lw.Table, [("a", "text", ["x"]), ("a", "count", [1])])
    raises("UNREADABLE", lw.Table, [("a\0b", "text", ["x"])])
    raises("NOT_A_NUMBER", lw.Table, [("a", "number", [1.0, math.nan])])
    raises("UNKNOWN_NAME", lw.Table, [("a", "float", [1.0])], error=lw.UnknownNameError)
    for kind, value in (("number", "1"), ("number", lw.mm(1)), ("text", 1), ("count", 1.5), ("count", 2**63)):
        error = raises("WRONG_KIND", lw.Table, [("a", kind, [None, value])], error=lw.QuantityError)
        assert error.part == "field columns, item 1, item 2"
    raises("WRONG_KIND", lw.Table, [("a", "text", "x")], error=lw.QuantityError)


def test_measured_parts_mate_by_their_own_sizes() -> None:
    male, female = ["9.5 mm", "8.85 mm", "8.4 mm"], ["10 mm", "9.35 mm", "8.9 mm"]
    pair = lw.mate_measured("M10x1", male, "M10x1.25", female)
    # The play, 0.5 mm tan 30 and half the difference of the pitches, over that difference.
    assert pair.starts and abs(pair.length.mm - (0.125 + 0.5 / 3**0.5) / 0.25) < 1e-9
    assert abs(pair.overlap.mm - 0.3) < 1e-12 and abs(pair.turns - pair.length.mm) < 1e-12
    same = lw.mate_measured("M10x1", male, "M10x1", female)
    assert same.starts and same.length is None and same.turns is None
    raises("OUT_OF_RANGE", lw.mate_measured, "M10x1", ["9.5 mm", "9.6 mm", "8.4 mm"], "M10x1", female)
    raises("WRONG_KIND", lw.mate_measured, "M10x1", male[:2], "M10x1", female, error=lw.QuantityError)


def test_the_hand_is_looked_at_first() -> None:
    found = lw.identify_thread(major="9.9 mm +- 0.01 mm", side="external", among=["M10x1", "M10x1-LH"])
    assert found.next.measure == "hand" and found.next.second == ("left", "left")
    assert found.advice == "look at the hand: right for M10x1, left for M10x1-LH"
