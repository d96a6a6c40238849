"""The radius of a former from test pieces in Python: the reference table, and what cannot be."""

import csv
import math
import pickle
from pathlib import Path

import linewright as lw
import pytest

TABLE = Path(__file__).resolve().parent.parent / "tables" / "bending" / "pieces_reference.csv"


def figures(row):
    """The pieces of a row of the table, which NumPy and SciPy made."""

    def piece(text):
        length, legs, angles = text.split(" ")
        legs, angles = [map(float, part.split(";")) for part in (legs, angles)]
        return lw.TestPiece(lw.mm(float(length)), legs=[lw.mm(leg) for leg in legs], angles=[lw.deg(a) for a in angles])

    return lw.PieceFit([piece(text) for text in row["pieces"].split("|")]), float(row["chance"])


def test_figures_are_those_of_the_table():
    rows = list(csv.DictReader(TABLE.read_text(encoding="ascii").splitlines()))
    assert len(rows) > 70
    for row in rows:
        fit, chance = figures(row)
        stretch, interval = fit.stretch(chance=chance), fit.radius_interval(chance=chance)
        low, high = interval or (None, None)
        share = (stretch and stretch.interval) or (None, None)
        gain = fit.gain_interval("90 deg", chance=chance)
        assert (gain is None) == (interval is None)
        if gain:
            assert gain[0].mm / gain[1].mm == pytest.approx(low.mm / high.mm)
        found = {
            "radius_mm": fit.radius.mm,
            "error_mm": fit.radius_error and fit.radius_error.mm,
            "low_mm": low and low.mm,
            "high_mm": high and high.mm,
            "scatter_mm": fit.scatter and fit.scatter.mm,
            "gain_90_mm": fit.gain("90 deg").mm,
            "arc_radius_mm": stretch and stretch.radius.mm,
            "arc_error_mm": stretch and stretch.radius_error and stretch.radius_error.mm,
            "share": stretch and stretch.share,
            "share_low": share[0],
            "share_high": share[1],
        }
        for name, value in found.items():
            if row[name]:
                assert value == pytest.approx(float(row[name]), rel=1e-8, abs=1e-8), (name, row)
            else:
                assert value is None, (name, row)
        assert fit.former(grip="20 mm").as_formed == fit.radius


def test_pieces_that_cannot_be():
    def code(call, *args, **kwargs):
        with pytest.raises(lw.LinewrightError) as caught:
            call(*args, **kwargs)
        return caught.value.code

    assert code(lw.TestPiece, "200 mm", legs=["112 mm"], angles=["90 deg"]) == "COUNT_MISMATCH"
    assert code(lw.TestPiece, "200 mm", legs=["112 mm"], angles=[]) == "COUNT_MISMATCH"
    assert code(lw.TestPiece, 200, legs=["112 mm", "94 mm"], angles=["90 deg"]) == "UNIT_MISSING"
    assert code(lw.PieceFit, []) == "TRIALS_UNUSABLE"
    assert code(lw.PieceFit, ["200 mm"]) == "WRONG_KIND"
    assert code(lw.TestPiece, "1 mm", legs=["4 mm", "4 mm"], angles=["90 deg"]) == "OUT_OF_RANGE"
    short = lw.TestPiece("200 mm", legs=["100 mm", "90 mm"], angles=["90 deg"])
    assert code(lw.PieceFit, [short]) == "TRIALS_UNUSABLE"


def test_pieces_keep_what_they_were_read_to():
    given = {"legs": ["112 mm", "94 mm"], "angles": ["90 deg"]}
    whole = lw.TestPiece("200 mm", **given)
    assert whole.reading == lw.mm(1)
    alike = lw.PieceFit([whole, whole])
    # Two legs and a length, each rounded to a millimeter, and an angle to a degree, whose gain grows by the radius for each
    # radian at 90 degrees.
    angle = alike.radius.mm * math.radians(1)
    assert alike.scatter.mm == pytest.approx(math.sqrt((3 + angle**2) / 12), rel=1e-12)
    # Alike, they can all be rounded to one side: half a millimeter for each, and half a degree.
    low, high = alike.radius_interval(chance=0.95)
    sure = 12.706_204_736 * alike.radius_error.mm
    assert high.mm - alike.radius.mm == pytest.approx(sure + (1.5 + angle / 2) / (2 - math.pi / 2), rel=1e-9)
    outer = lw.TestPiece.from_outer_legs("200 mm", outer_legs=["114.5 mm", "96 mm"], angles=["90 deg"], od="4.75 mm")
    finer = lw.TestPiece("200 mm", **given, reading="0.1 mm")
    told = {"outer_legs": ["114.5 mm", "96 mm"], "angles": ["90 deg"], "od": "4.75 mm"}
    assert lw.TestPiece.from_outer_legs("200 mm", **told, reading="0.1 mm").reading == lw.mm(0.1)
    assert outer.reading == lw.mm(0.5) and finer.reading == lw.mm(0.1) and finer != whole
    for piece in (whole, outer, finer):
        assert pickle.loads(pickle.dumps(piece)) == piece == eval(repr(piece), vars(lw))
    with pytest.raises(lw.InputError):
        lw.TestPiece("200 mm", **given, reading="0 mm")
