"""Ports and their depths, what a flare takes of the tube, hose ends, and what public texts say about them."""

import csv
from pathlib import Path

import linewright as lw
import pytest

NAMES = {name: getattr(lw, name) for name in lw.__all__}
TABLE = Path(__file__).resolve().parents[1] / "tables" / "flare_allowance.csv"
TUBE = {"od": "3/16 in", "wall": "0.028 in"}
STRETCHES = ("keeps length", "uniaxial", "keeps wall")


def nut(**parts):
    return lw.Nut("M10x1", length="17 mm", bore="5 mm", nose="coned", **parts)


def port(**depths):
    return lw.Port("M10x1", "inverted-45", name="tee", **depths)


@pytest.mark.parametrize(
    ("flare", "thread_length", "lead", "thread_depth", "seat_depth", "under_head", "beyond_thread"),
    [
        # The tip stands at the seat less the flare; threads end at the tip less the lead. Walls of 0.7 mm.
        ("double-45", 11, 0, 9.5, 10, 11 - 8.6, 9.5 - 8.6),
        ("double-45", 9, 2, 9.5, 10, 11 - 8.6, 9.5 - 6.6),
        ("double-45", 8.5, 0, 9.5, 10, 8.5 - 8.6, 9.5 - 8.6),
        ("bubble", 11, 0, 8, 10, 11 - 9.3, 8 - 9.3),
    ],
)
def test_what_is_left_when_the_flare_is_clamped(
    flare, thread_length, lead, thread_depth, seat_depth, under_head, beyond_thread
):
    made = nut(thread_length=lw.mm(thread_length), lead=lw.mm(lead))
    end = lw.End(made, flare, port=port(thread_depth=lw.mm(thread_depth), seat_depth=lw.mm(seat_depth)))
    margin = end.clamp_margin("0.7 mm")
    assert margin.under_head.mm == pytest.approx(under_head) and margin.beyond_thread.mm == pytest.approx(beyond_thread)
    assert margin.least.mm == pytest.approx(min(under_head, beyond_thread))
    assert margin.threads_showing("1.25 mm") == pytest.approx(under_head / 1.25)
    assert (end.nut.thread_length, end.nut.lead) == (lw.mm(thread_length), lw.mm(lead))
    assert (end.port.thread_depth, end.port.seat_depth) == (lw.mm(thread_depth), lw.mm(seat_depth))
    assert eval(repr(end), NAMES) == end and eval(repr(margin), NAMES) == margin


def test_a_margin_needs_nut_and_port():
    depths, parts = {"thread_depth": "9 mm", "seat_depth": "10 mm"}, {"thread_length": "11 mm", "lead": "0 mm"}
    for end in (
        lw.End(nut(**parts), "double-45"),
        lw.End(nut(**parts), "double-45", port=port()),
        lw.End(nut(), "double-45", port=port(**depths)),
    ):
        assert end.clamp_margin("0.7 mm") is None
    assert nut().thread_length is None and nut().lead is None
    assert port().thread_depth is None and port().seat_depth is None
    assert port() != port(**depths) and nut() != nut(**parts)


@pytest.mark.parametrize(
    ("make", "given", "code", "part"),
    [
        (nut, {"thread_length": "11 mm"}, "FIELD_MISSING", "lead"),
        (nut, {"lead": "1 mm"}, "FIELD_MISSING", "thread_length"),
        (port, {"thread_depth": "11 mm"}, "FIELD_MISSING", "seat_depth"),
        (port, {"seat_depth": "11 mm"}, "FIELD_MISSING", "thread_depth"),
        (nut, {"thread_length": "15 mm", "lead": "2.1 mm"}, "OUT_OF_RANGE", "nut_thread_length"),
        (nut, {"thread_length": "-1 mm", "lead": "2 mm"}, "OUT_OF_RANGE", "nut_thread_length"),
        (nut, {"thread_length": "5 mm", "lead": "1 km"}, "UNREADABLE", "lead"),
        (nut, {"thread_length": "5 mm", "lead": "1 m"}, "OUT_OF_RANGE", "nut_lead"),
        (port, {"thread_depth": "5 mm", "seat_depth": "0 mm"}, "OUT_OF_RANGE", "seat_depth"),
        (port, {"thread_depth": "5 m", "seat_depth": "1 mm"}, "OUT_OF_RANGE", "port_thread_depth"),
        (port, {"thread_depth": 5, "seat_depth": "1 mm"}, "UNIT_MISSING", "thread_depth"),
        (nut, {"thread_length": "5 mm", "lead": 0}, "UNIT_MISSING", "lead"),
    ],
)
def test_a_depth_that_cannot_be_is_refused_by_name(make, given, code, part):
    with pytest.raises(lw.LinewrightError) as caught:
        make(**given)
    assert (caught.value.code, caught.value.part) == (code, f"field {part}")
    assert isinstance(caught.value, TypeError) == (code == "UNIT_MISSING")


def rows():
    with TABLE.open(encoding="utf-8") as file:
        return list(csv.DictReader(line for line in file if not line.startswith("#")))


@pytest.mark.parametrize("row", rows(), ids=lambda row: f"{row['flare']} {row['od_mm']} {row['diameter_mm']}")
def test_a_form_takes_what_was_computed_apart(row):
    sizes = {name: lw.mm(float(row[f"{name}_mm"])) for name in ("od", "wall", "diameter")}
    form = lw.FlareForm(row["flare"], **sizes)
    height = float(row["height_mm"])
    assert form.height.mm == pytest.approx(height, abs=2e-5)
    known = [stretch for stretch in STRETCHES if row[f"{stretch.replace(' ', '_')}_mm"]]
    assert "keeps length" in known
    for stretch in known:
        out = float(row[f"{stretch.replace(' ', '_')}_mm"])
        assert form.stick_out(stretch).mm == pytest.approx(out, abs=2e-5)
        assert form.net_shortening(stretch).mm == pytest.approx(out - height, abs=3e-5)
    assert (form.flare, form.od, form.wall, form.diameter) == (row["flare"], *sizes.values())


@pytest.mark.parametrize(
    ("change", "error", "code", "part"),
    [
        ({"flare": "single-37"}, lw.InputError, "NOT_KNOWN", "flare"),
        ({"flare": "single-45"}, lw.InputError, "SINGLE_45_REFUSED", "flare"),
        ({"flare": "triple"}, lw.UnknownNameError, "UNKNOWN_NAME", "flare"),
        ({"diameter": "4.8 mm"}, lw.InputError, "OUT_OF_RANGE", "diameter"),
        ({"od": "500 mm"}, lw.InputError, "OUT_OF_RANGE", "od"),
        ({"wall": 0.7}, lw.QuantityError, "UNIT_MISSING", "wall"),
        ({"diameter": lw.deg(3)}, lw.QuantityError, "WRONG_KIND", "diameter"),
        ({"od": None}, lw.QuantityError, "WRONG_KIND", "od"),
    ],
)
def test_a_form_that_cannot_be_is_refused(change, error, code, part):
    with pytest.raises(error) as caught:
        lw.FlareForm(**{"flare": "double-45", **TUBE, "diameter": "6.9 mm", **change})
    assert (caught.value.code, caught.value.part) == (code, f"field {part}")


def test_an_assumption_about_the_wall_has_a_name():
    form = lw.FlareForm("double-45", **TUBE, diameter="6.9 mm")
    for of in (form.stick_out, form.net_shortening):
        assert of("keeps length") < of("uniaxial") < of("keeps wall")
        with pytest.raises(lw.UnknownNameError, match="keeps length, uniaxial, keeps wall"):
            of("rubber")


def test_the_ways_to_an_allowance_in_their_order():
    ways = lw.flare_allowances("double-45", **TUBE, before="200 mm", after="198 mm")
    assert [way.way for way in ways] == ["test piece", "geometry", "rule"]
    piece, geometry, rule = ways
    assert piece.net_shortening == (lw.mm(2), lw.mm(2)) and piece.stick_out is None and piece.cut_allowance is None
    # Diameters of 6.7 and 7.1 mm; from the wall that keeps its length to the one that keeps its thickness.
    assert [length.mm for length in geometry.stick_out] == pytest.approx([2.99869, 4.60310], abs=2e-5)
    assert [length.mm for length in geometry.net_shortening] == pytest.approx([1.17145, 2.57586], abs=3e-5)
    assert (geometry.checked, rule.checked) == ("computed", "common practice, no source")
    # Common practice: 5 mm for a double flare on brake tube, which is more than its geometry can take.
    assert rule.cut_allowance == lw.mm(5) > geometry.stick_out[1] and rule.stick_out is None
    own = lw.flare_allowances("double-45", **TUBE, diameters=(lw.mm(6.9), "6.9 mm"))
    assert [way.way for way in own] == ["geometry", "rule"]
    assert [length.mm for length in own[0].stick_out] == pytest.approx([3.28154, 4.15855], abs=2e-5)


def test_public_diameters_are_for_their_walls_alone():
    thick = {"od": "3/16 in", "wall": "0.9 mm"}
    assert lw.flare_size("double-45", "3/16 in").wall_most < lw.mm(0.9)
    assert [way.way for way in lw.flare_allowances("double-45", **thick)] == ["rule"]
    assert len(lw.flare_allowances("double-45", **thick, diameters=["7 mm", "7 mm"])) == 2
    bubble = lw.flare_allowances("bubble", od="4.75 mm", wall="0.75 mm")
    # The one public figure for a bubble flare: 3.2 mm.
    assert [(way.way, way.cut_allowance) for way in bubble] == [("rule", lw.mm(3.2))]
    for flare, od in (("single-37", "1/4 in"), ("bubble", "6 mm")):
        with pytest.raises(lw.InputError) as unknown:
            lw.flare_allowances(flare, od=od, wall="0.7 mm")
        assert unknown.value.code == "NOT_KNOWN" and "no public figure" in str(unknown.value)
    with pytest.raises(lw.InputError) as thick_wall:
        lw.flare_allowances("double-45", od="3/16 in", wall="2.5 mm")
    assert (thick_wall.value.code, str(thick_wall.value.part)) == ("OUT_OF_RANGE", "field wall")
    with pytest.raises(lw.InputError) as swapped:
        lw.flare_allowances("double-45", **TUBE, diameters=("7.1 mm", "6.7 mm"))
    assert swapped.value.code == "OUT_OF_RANGE"


@pytest.mark.parametrize(
    ("given", "code", "part"),
    [
        ({"before": "200 mm"}, "FIELD_MISSING", "after"),
        ({"after": "200 mm"}, "FIELD_MISSING", "before"),
        ({"before": "200 mm", "after": "201 mm"}, "OUT_OF_RANGE", "net_shortening"),
        ({"diameters": "6.9 mm"}, "WRONG_KIND", "diameters"),
        ({"diameters": ["6.9 mm"]}, "WRONG_KIND", "diameters"),
        ({"diameters": ["6.9 mm", 7.1]}, "UNIT_MISSING", "diameters, item 2"),
        ({"diameters": ["4.8 mm", "7.1 mm"]}, "OUT_OF_RANGE", "diameter"),
        ({"od": 4.76}, "UNIT_MISSING", "od"),
        ({"od": "-4.76 mm"}, "OUT_OF_RANGE", "od"),
        ({"wall": "0 mm"}, "OUT_OF_RANGE", "wall"),
    ],
)
def test_an_allowance_that_cannot_be_is_refused(given, code, part):
    with pytest.raises(lw.LinewrightError) as caught:
        lw.flare_allowances("double-45", **{**TUBE, **given})
    assert (caught.value.code, caught.value.part) == (code, f"field {part}")


def test_a_flare_lies_between_nut_and_seat():
    # Two walls of a double flare, one of the others.
    for flare, walls in (("double-45", 2), ("bubble", 1), ("single-37", 1)):
        assert lw.flare_thickness_at_least(flare, wall="0.75 mm").mm == walls * 0.75
    with pytest.raises(lw.QuantityError, match="lw.mm"):
        lw.flare_thickness_at_least("bubble", wall=0.75)


def test_what_public_texts_say_comes_with_how_it_was_checked():
    size = lw.flare_size("double-45", "3/16 in")
    # SAE J533-2024, quoted by a public article: 6.7 to 7.1 mm for 4.76 mm tube.
    assert (size.least, size.most) == (lw.mm(6.7), lw.mm(7.1)) and "SAE J533-2024" in size.source
    assert size == lw.flare_size("double-45", "4.76 mm") and lw.flare_size("double-45", "6 mm") is None
    kinds = {"seen", "seen second-hand", "computed", "from memory, not checked", "common practice, no source"}
    tables = [lw.flare_standards(), lw.usual_threads(), lw.hexagons()]
    assert all(row.source.endswith(row.checked) and ", " in row.source for table in tables for row in table)
    for table in tables:
        assert len(table) > 5 and len(set(table)) == len(table)
        assert {row.checked for row in table} <= kinds
    assert any("double flares" in row.covers for row in lw.flare_standards() if row.name.startswith("ISO 13486-1"))
    with pytest.raises(lw.QuantityError, match="lw.mm"):
        lw.flare_size("double-45", 4.76)


def test_a_thread_does_not_tell_the_seat():
    for designation in ("M10x1", "3/8-24", lw.thread("3/8-24")):
        assert len(lw.seats_of_thread(designation, "3/16 in")) == 2
    for row in lw.usual_threads():
        assert row.seat in lw.seats_of_thread(row.designation, row.od)
    assert lw.seats_of_thread("M10x1", "1/2 in") == []
    with pytest.raises(lw.InputError, match="THREAD_AMBIGUOUS"):
        lw.seats_of_thread("M10", "3/16 in")
    with pytest.raises(lw.QuantityError, match="designation"):
        lw.seats_of_thread(None, "3/16 in")
    with pytest.raises(lw.QuantityError, match="lw.mm"):
        lw.seats_of_thread("M10x1", 4.76)


def test_washers_of_hose_ends():
    # Common practice: one under a shoulder, two at a banjo, none where a flare seals.
    for name, count, sealed_by in (("male-washer", 1, "washer"), ("banjo", 2, "washer"), ("female-flare", 0, "flare")):
        assert (lw.hose_end_washers(name), lw.hose_end_sealed_by(name)) == (count, sealed_by)
        assert lw.hose_end_check(name, count) is None
        problem = lw.hose_end_check(name, count + 1)
        assert (problem.got, problem.need) == (count + 1, count)
        assert problem.code == ("WASHER_ON_FLARE" if sealed_by == "flare" else "WASHER_COUNT")
    for call in (lw.hose_end_washers, lw.hose_end_sealed_by):
        with pytest.raises(lw.UnknownNameError, match="male-washer, female-flare, banjo"):
            call("elbow")
    with pytest.raises(lw.InputError) as caught:
        lw.hose_end_check("banjo", -1)
    assert (caught.value.code, caught.value.part) == ("OUT_OF_RANGE", "field washers")


def test_washers_to_buy():
    m10 = lw.thread("M10x1")
    found = lw.washers([("banjo", m10), ("banjo", "3/8-24"), ("male-washer", "M 10 x 1,0"), ("female-flare", "M12x1")])
    assert [(str(row.thread), row.needed, row.spares) for row in found] == [("M10x1", 3, 1), ("3/8-24 UNF", 2, 1)]
    assert lw.washers([]) == [] and lw.washers(pair for pair in [["banjo", m10]])[0].needed == 2


@pytest.mark.parametrize(
    ("ends", "error", "code", "part"),
    [
        ("banjo", lw.QuantityError, "WRONG_KIND", "ends"),
        (["banjo"], lw.QuantityError, "WRONG_KIND", "ends, item 1"),
        ([("banjo",)], lw.QuantityError, "WRONG_KIND", "ends, item 1"),
        ([("banjo", "M10x1", 2)], lw.QuantityError, "WRONG_KIND", "ends, item 1"),
        ([("banjo", "M10x1"), ("banjo", 10)], lw.QuantityError, "WRONG_KIND", "ends, item 2"),
        ([("banjo", None)], lw.QuantityError, "WRONG_KIND", "ends, item 1"),
        ([("banjo", "M10x1"), ("elbow", "M10x1")], lw.UnknownNameError, "UNKNOWN_NAME", "ends, item 2"),
        ([("banjo", "M10")], lw.InputError, "THREAD_AMBIGUOUS", "ends, item 1"),
    ],
)
def test_a_hose_end_that_cannot_be_is_named(ends, error, code, part):
    with pytest.raises(error) as caught:
        lw.washers(ends)
    assert (caught.value.code, caught.value.part) == (code, f"field {part}")


def test_what_belongs_to_a_flare_and_what_is_not_known() -> None:
    belongs = {"double-45": ("inverted-45", "coned"), "bubble": ("bubble", "flat"), "single-37": ("cone-37", "sleeve")}
    for flare, (own_seat, own_nose) in belongs.items():
        for seat in ["inverted-45", "bubble", "cone-37"]:
            assert lw.flare_fits_seat(flare, seat) == ("fits" if seat == own_seat else "does not fit")
        for nose in ["coned", "flat", "sleeve"]:
            assert lw.flare_fits_nose(flare, nose) == ("fits" if nose == own_nose else "does not fit")
        assert lw.flare_fits_seat(flare, "unknown") == lw.flare_fits_nose(flare, "unknown") == "not known"
        assert lw.flare_strokes(flare) == (2 if flare == "double-45" else 1)
    with pytest.raises(lw.LinewrightError) as refused:
        lw.flare_fits_seat("single-45", "inverted-45")
    assert refused.value.code == "SINGLE_45_REFUSED"
    size = lw.flare_size("double-45", "3/16 in")
    assert lw.flare_known_diameters("double-45", od="3/16 in", wall="0.028 in") == (size.least, size.most)
    assert lw.flare_known_diameters("double-45", od="3/16 in", wall="0.035 in") is None
    assert lw.flare_known_diameters("bubble", od="3/16 in", wall="0.028 in") is None
