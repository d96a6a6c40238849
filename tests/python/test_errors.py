"""Exceptions: their classes, what they carry, and that they can be pickled."""

import builtins
import copy
import pickle

import linewright as lw
import pytest


def caught(call) -> lw.LinewrightError:
    with pytest.raises(lw.LinewrightError) as error:
        call()
    return error.value


ERRORS = {
    "unit": caught(lambda: lw.read_length("316")),
    "range": caught(lambda: lw.Tube("500 mm", wall="1 mm", material="copper-nickel")),
    "name": caught(lambda: lw.Tube("3/16 in", wall="0.028 in", material="cheese")),
    "number": caught(lambda: lw.arc(radius=14.3, angle="90 deg")),
    "count": caught(lambda: lw.Path.from_legs(["60 mm"], bends=["90 deg"], radius="14.3 mm")),
    "angle": caught(lambda: lw.tangent_length(radius="14.3 mm", angle="180 deg")),
}


@pytest.mark.parametrize(
    ("name", "ours", "python", "code"),
    [
        ("unit", lw.InputError, ValueError, "UNIT_MISSING"),
        ("range", lw.InputError, ValueError, "OUT_OF_RANGE"),
        ("name", lw.UnknownNameError, LookupError, "UNKNOWN_NAME"),
        ("number", lw.QuantityError, TypeError, "UNIT_MISSING"),
        ("count", lw.InputError, ValueError, "COUNT_MISMATCH"),
        ("angle", lw.InputError, ValueError, "NO_CORNER"),
    ],
)
def test_each_error_has_its_class_and_code(name, ours, python, code):
    error = ERRORS[name]
    assert type(error) is ours
    assert isinstance(error, python) and isinstance(error, lw.LinewrightError)
    assert (error.code, error.number) == (code, lw.CODES[code].number)


@pytest.mark.parametrize("error", ERRORS.values(), ids=ERRORS.keys())
def test_each_error_says_what_why_and_how_to_mend_it(error):
    assert error.why and error.fix and error.part
    for words in (error.code, error.part, error.why, error.fix, str(error.got), str(error.need)):
        assert words in str(error)


@pytest.mark.parametrize("error", ERRORS.values(), ids=ERRORS.keys())
@pytest.mark.parametrize("copied", [lambda e: pickle.loads(pickle.dumps(e)), copy.copy, copy.deepcopy])
def test_each_error_can_be_pickled_and_copied(error, copied):
    other = copied(error)
    assert type(other) is type(error)
    assert other.problem == error.problem
    assert str(other) == str(error)


def test_what_was_given_and_what_is_needed_keep_their_kind():
    assert ERRORS["range"].got == lw.mm(500)
    assert (ERRORS["count"].got, ERRORS["count"].need) == (1, 2)
    assert ERRORS["angle"].got == lw.deg(180)
    assert ERRORS["name"].got == "cheese"


def test_no_class_hides_one_of_python():
    assert [name for name in lw.__all__ if hasattr(builtins, name)] == []


def test_the_table_of_codes():
    code = lw.CODES["BENDS_TOO_CLOSE"]
    assert (code.name, code.number, code.level, code.lifted_by) == ("BENDS_TOO_CLOSE", 303, "stop", "person")
    assert all(code.meaning and code.cleared_by for code in lw.CODES.values())
    assert {code.level for code in lw.CODES.values()} == {"refuse", "stop", "caution", "note"}
    assert len({code.number for code in lw.CODES.values()}) == len(lw.CODES)
    assert all(lw.Code(name) == code for name, code in lw.CODES.items())
    with pytest.raises(TypeError):
        lw.CODES["NEW"] = code
    for unknown in (lw.Code, lw.Field):
        with pytest.raises(lw.UnknownNameError):
            unknown("NEW")


def test_arguments_of_another_class_are_type_errors():
    with pytest.raises(TypeError):
        lw.End("nut", "double-45")
    with pytest.raises(TypeError):
        lw.Tube("3/16 in", wall="0.028 in", material=3)
    with pytest.raises(TypeError):
        lw.Tube("3/16 in", "0.028 in", "copper-nickel")


def test_a_smallest_radius_needs_its_source():
    with pytest.raises(lw.InputError) as error:
        lw.Tube("3/16 in", wall="0.028 in", material="copper-nickel", min_radius="15 mm")
    assert (error.value.code, error.value.part) == ("FIELD_MISSING", "field min_radius_source")
    with pytest.raises(lw.InputError) as error:
        lw.Tube("3/16 in", wall="0.028 in", material="copper-nickel", min_radius_source="data sheet")
    assert (error.value.code, error.value.part) == ("FIELD_MISSING", "field min_radius")
