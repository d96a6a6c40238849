"""What is taken for a length or an angle, and what is refused."""

from decimal import Decimal
from fractions import Fraction
from types import SimpleNamespace

import linewright as lw
import numpy as np
import pandas as pd
import pytest


class Pint:
    """The part of a pint quantity that counts."""

    def __init__(self, number, unit):
        self.number, self.unit = number, unit

    def m_as(self, unit):
        return convert(self.number, self.unit or "rad", unit)

    def to_root_units(self):
        units = {"deg": "radian", "rad": "radian", "": "dimensionless"}
        return SimpleNamespace(units=units.get(self.unit, self.unit))

    def __float__(self):
        raise AssertionError("a quantity must not go through float()")


class Quantities:
    def __init__(self, number, unit):
        self.number, self.unit = number, unit
        self.dimensionality = unit or "dimensionless"

    def rescale(self, unit):
        return Quantities(convert(self.number, self.unit or "rad", unit), unit)

    @property
    def magnitude(self):
        return np.array(self.number)

    def __float__(self):
        raise AssertionError("a quantity must not go through float()")


def convert(number, unit, wanted):
    factors = {("in", "mm"): 25.4, ("mm", "mm"): 1.0, ("rad", "deg"): 180 / np.pi, ("deg", "deg"): 1.0}
    if (unit, wanted) not in factors:
        raise ValueError(f"cannot convert {unit} to {wanted}")
    return number * factors[unit, wanted]


class ToValue:
    """Astropy and unyt."""

    def __init__(self, number, unit):
        self.number, self.unit = number, unit

    def to_value(self, unit):
        return convert(self.number, self.unit, unit)

    def __float__(self):
        raise AssertionError("a quantity must not go through float()")


PACKAGES = [Pint, ToValue, Quantities]


def arc_radius(radius):
    """Any function that takes a length; the arc of one radian is the radius."""
    return lw.arc(radius=radius, angle=lw.rad(1)).mm


@pytest.mark.parametrize(
    "radius",
    ["1 in", "25.4 mm", "2,54 cm", '1"', lw.inch(1), lw.mm(25.4), lw.m(0.0254), np.str_("1 in")]
    + [package(1, "in") for package in PACKAGES],
)
def test_every_way_to_say_an_inch(radius):
    assert arc_radius(radius) == 25.4


@pytest.mark.parametrize(
    "angle", ["90 deg", "0.25 turn", "90 deg included", lw.deg(90)] + [package(90, "deg") for package in PACKAGES]
)
def test_every_way_to_say_a_right_angle(angle):
    assert lw.tangent_length(radius="10 mm", angle=angle) == lw.tangent_length(radius="10 mm", angle="90 deg")


@pytest.mark.parametrize("magnitude", [np.float64(1), np.float32(1), np.int64(1), np.array(1.0), Decimal(1), 1])
def test_a_quantity_may_hold_any_kind_of_number(magnitude):
    class Holder:
        def m_as(self, unit):
            return magnitude

    assert arc_radius(Holder()) == 1.0


BARE = [14.3, 14, True, -1, 0, 1e308, float("nan"), float("inf"), 10**400, 10**5000, 1j, Decimal("14.3")]
BARE += [Fraction(143, 10), np.float64(14.3), np.float32(14.5), np.int64(14), np.uint8(14), np.bool_(True)]
BARE += [np.array(14.3), np.array([14.3, 14.3]), np.array([]), np.zeros((3, 3)), np.complex128(1)]


@pytest.mark.parametrize("bare", BARE, ids=lambda bare: type(bare).__name__)
def test_a_bare_number_is_refused_and_told_what_to_write(bare):
    with pytest.raises(lw.QuantityError) as caught:
        lw.arc(radius=bare, angle="90 deg")
    error = caught.value
    assert (error.code, error.number, error.part) == ("UNIT_MISSING", 101, "field radius")
    assert 'mm" or lw.mm(' in error.fix
    assert type(bare).__name__ in error.got
    assert isinstance(error, TypeError) and not isinstance(error, ValueError)


def test_the_cure_repeats_the_number():
    with pytest.raises(lw.QuantityError, match=r'"14.3 mm" or lw.mm\(14.3\)'):
        lw.Former(as_formed=14.3, grip="20 mm")
    with pytest.raises(lw.QuantityError, match=r'"90 deg" or lw.deg\(90\)'):
        lw.arc(radius="14.3 mm", angle=90)


@pytest.mark.parametrize(
    "wrong", [b"14.3 mm", object(), object, [], {}, ("14.3 mm",), lw.deg(3), lambda: 1, Ellipsis, pd.Timestamp(0), Pint]
)
def test_another_type_is_of_the_wrong_kind(wrong):
    with pytest.raises(lw.QuantityError) as caught:
        lw.arc(radius=wrong, angle="90 deg")
    assert caught.value.code == "WRONG_KIND" and caught.value.need == "a length"


def test_none_is_refused_where_it_does_not_mean_not_known():
    with pytest.raises(lw.QuantityError) as caught:
        lw.Tube(None, wall="0.7 mm", material="copper-nickel")
    assert (caught.value.code, caught.value.part) == ("WRONG_KIND", "field od")


@pytest.mark.parametrize("package", PACKAGES)
def test_a_quantity_of_another_kind_is_refused_with_its_cause(package):
    with pytest.raises(lw.QuantityError) as caught:
        lw.arc(radius=package(90, "deg"), angle="90 deg")
    assert caught.value.code == "WRONG_KIND"
    assert str(caught.value.__cause__) == "cannot convert deg to mm"


@pytest.mark.parametrize("package", [Pint, Quantities])
def test_a_quantity_without_a_unit_is_a_bare_number(package):
    # Where angles have no dimension, its package turns it into degrees as if it were radians.
    with pytest.raises(lw.QuantityError) as caught:
        lw.arc(radius="14.3 mm", angle=package(90, ""))
    assert caught.value.code == "UNIT_MISSING"


def test_many_numbers_are_no_length():
    with pytest.raises(lw.QuantityError) as caught:
        lw.arc(radius=ToValue(np.array([1.0, 2.0]), "mm"), angle="90 deg")
    assert caught.value.code == "WRONG_KIND"


def test_an_interrupt_is_no_answer():
    class Interrupted:
        def m_as(self, unit):
            raise KeyboardInterrupt

    with pytest.raises(KeyboardInterrupt):
        lw.arc(radius=Interrupted(), angle="90 deg")


@pytest.mark.parametrize("make", [lw.mm, lw.inch, lw.m, lw.deg, lw.rad, lw.mpa])
@pytest.mark.parametrize("number", [2, 2.0, np.float64(2), np.int32(2), Decimal(2), Fraction(2)])
def test_a_named_unit_takes_any_plain_number(make, number):
    assert make(number) == make(2.0)


@pytest.mark.parametrize("make", [lw.mm, lw.inch, lw.m, lw.deg, lw.rad, lw.mpa])
@pytest.mark.parametrize(
    "wrong",
    ["2", b"2", None, True, lw.mm(2), np.array([2.0]), np.array(2.0)] + [package(2, "mm") for package in PACKAGES],
)
def test_a_named_unit_takes_nothing_else(make, wrong):
    with pytest.raises(lw.QuantityError):
        make(wrong)


@pytest.mark.parametrize("make", [lw.mm, lw.inch, lw.m, lw.deg, lw.rad, lw.mpa])
@pytest.mark.parametrize("number", [float("nan"), float("inf"), -float("inf"), 1.7e308 * 10])
def test_what_is_no_number_makes_no_quantity(make, number):
    with pytest.raises(lw.InputError) as caught:
        make(number)
    assert caught.value.code == "NOT_A_NUMBER"


def test_a_length_has_no_number_of_its_own():
    with pytest.raises(TypeError):
        float(lw.mm(3))
    assert (lw.inch(1).mm, lw.mm(25.4).inch, lw.m(1).mm, lw.mm(1).m) == (25.4, 1.0, 1000.0, 0.001)
    assert (lw.mpa(13).bar, lw.read_pressure("130 bar").mpa) == (130.0, 13.0)
    # NIST SP 811, appendix B: 1 psi is 6894.757 Pa (from memory).
    assert lw.mpa(6894.757e-6).psi == pytest.approx(1.0, abs=1e-7)
    assert lw.deg(180).rad == pytest.approx(3.14159265)
    assert all(lw.inch(n / 64).inch == n / 64 for n in range(6400))


def test_lengths_are_ordered_among_themselves():
    assert lw.mm(1) < lw.inch(1) and lw.deg(90) >= lw.deg(45)
    with pytest.raises(TypeError):
        assert lw.mm(1) < lw.deg(2)
    assert lw.mm(1) != lw.deg(1) and lw.mm(1) != lw.mpa(1) and lw.mpa(1) < lw.mpa(2)
    with pytest.raises(TypeError):
        assert lw.mm(1) < lw.mpa(2)


def test_lists_name_the_item():
    with pytest.raises(lw.QuantityError) as caught:
        lw.Path.from_straights(["60 mm", 60], bends=["90 deg"], radius="14.3 mm")
    assert caught.value.part == "field straights, item 2"
    with pytest.raises(lw.QuantityError) as caught:
        lw.Path.from_straights(np.array([60.0, 60.0]), bends=["90 deg"], radius="14.3 mm")
    assert (caught.value.code, caught.value.part) == ("UNIT_MISSING", "field straights, item 1")
    with pytest.raises(lw.QuantityError) as caught:
        lw.Path.from_straights("60 mm")
    assert caught.value.need == "a list"


def test_a_radius_is_one_or_a_list():
    def path(radius):
        return lw.Path.from_straights(["60 mm"] * 3, bends=["90 deg"] * 2, rotations=["0 deg"], radius=radius)

    assert path("14.3 mm") == path(["14.3 mm"] * 2) == path(lw.mm(14.3)) == path(lw.mm(14.3) for _ in range(2))
