"""What is taken for a pressure, and what is refused."""

import pickle
from decimal import Decimal

import linewright as lw
import numpy as np
import pytest


@pytest.mark.parametrize(
    ("text", "mpa"), [("150 bar", 15.0), ("200 N/mm2", 200.0), ("207 GPa", 207e3), ("5 kPa", 0.005), ("290 MPa", 290)]
)
def test_a_pressure_is_read(text, mpa):
    assert lw.read_pressure(text) == lw.mpa(mpa) and lw.read_pressure(text).mpa == mpa


def test_a_pressure_has_its_units():
    # A pound of force is 4.4482216152605 N by definition, a square inch 645.16 mm2.
    assert lw.read_pressure("1000 psi").mpa == pytest.approx(4448.2216152605 / 645.16, rel=1e-15)
    assert lw.mpa(15).bar == pytest.approx(150, rel=1e-15) and lw.mpa(1) < lw.read_pressure("11 bar")
    assert lw.read_pressure("4250 psi").psi == pytest.approx(4250, rel=1e-15)


def test_a_pressure_is_a_value():
    for value in (lw.mpa(290), lw.read_pressure("25 ksi"), lw.mpa(-0.1), lw.mpa(1 / 3)):
        assert eval(repr(value), {"mpa": lw.mpa}) == value
        assert pickle.loads(pickle.dumps(value)) == value and hash(value) == hash(lw.mpa(value.mpa))
        assert lw.read_pressure(value.exact) == value
    assert (str(lw.read_pressure("25 ksi")), str(lw.mpa(0.0068))) == ("172.37 MPa", "0.0068 MPa")
    with pytest.raises(TypeError):
        float(lw.mpa(1))
    with pytest.raises(TypeError):
        assert lw.mpa(1) < lw.mm(2)
    assert lw.mpa(1) != lw.mm(1)
    with pytest.raises(AttributeError):
        lw.mpa(1).mpa = 2


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("290", "UNIT_MISSING"),
        ("290 mPa", "UNREADABLE"),
        ("5 mm", "WRONG_KIND"),
        ("90 deg", "WRONG_KIND"),
        ("1,500 psi", "NUMBER_AMBIGUOUS"),
        ("150 psig", "UNREADABLE"),
        ("", "NOT_A_NUMBER"),
        ("1e308 GPa", "OUT_OF_RANGE"),
    ],
)
def test_what_is_no_pressure_is_refused(text, code):
    with pytest.raises(lw.InputError) as caught:
        lw.read_pressure(text)
    assert (caught.value.code, caught.value.part) == (code, "field pressure")


def test_a_named_unit_takes_plain_numbers_only():
    for number in (2, np.float64(2), Decimal(2)):
        assert lw.mpa(number) == lw.mpa(2.0)
    for wrong in ("2", None, True, lw.mpa(2), np.array([2.0])):
        with pytest.raises(lw.QuantityError):
            lw.mpa(wrong)
    for number in (float("nan"), float("inf")):
        with pytest.raises(lw.InputError) as caught:
            lw.mpa(number)
        assert caught.value.code == "NOT_A_NUMBER"
