"""The documentation: everything public has some, it names units, and its examples run."""

import doctest
import inspect

import linewright as lw
import pytest


def documented() -> dict[str, str | None]:
    """Every public name with its text: the package, functions, classes, and what is in a class."""
    texts = {"linewright": lw.__doc__}
    for name in lw.__all__:
        value = getattr(lw, name)
        if callable(value):
            texts[name] = value.__doc__
        if isinstance(value, type):
            own = (member for member in vars(value) if not member.startswith("_"))
            texts |= {f"{name}.{member}": inspect.getdoc(getattr(value, member)) for member in own}
    return texts


TEXTS = documented()
EXAMPLES = {name: text for name, text in TEXTS.items() if text and ">>>" in text}


def is_part(name: str) -> bool:
    owner = getattr(lw, name.partition(".")[0], None)
    return isinstance(owner, type) and issubclass(owner, tuple)


def test_everything_has_a_text():
    # The attribute that holds the finding is an instance's own, and described in the class.
    assert [name for name, text in TEXTS.items() if not text or len(text) < 5] == []


def test_every_class_and_function_has_an_example():
    attributes = inspect.isgetsetdescriptor
    without = []
    for name in TEXTS.keys() - EXAMPLES.keys():
        owner, _, member = name.partition(".")
        value = getattr(lw, owner, lw)
        if not member or not (attributes(vars(value)[member]) or isinstance(vars(value)[member], property)):
            without.append(name)
    # What a plan, a path or a cut consists of is shown where it comes from.
    parts = {"EndPlan", "PlannedBend", "SizedLine", "Step"} | {name for name in TEXTS if is_part(name)}
    assert set(without) <= parts, sorted(set(without) - parts)


@pytest.mark.parametrize("name", EXAMPLES)
def test_the_examples_run(name, capsys):
    flags = doctest.ELLIPSIS | doctest.NORMALIZE_WHITESPACE
    test = doctest.DocTestParser().get_doctest(EXAMPLES[name], {}, name, None, None)
    result = doctest.DocTestRunner(optionflags=flags).run(test)
    assert result.attempted > 0
    assert result.failed == 0, capsys.readouterr().out


def test_help_shows_arguments():
    assert str(inspect.signature(lw.arc)) == "(*, radius, angle)"
    assert str(inspect.signature(lw.Former)) == "(*, as_formed, grip, groove=None)"
    assert "trim_end=None" in str(inspect.signature(lw.Line.plan))


def test_numbers_that_are_handed_out_name_their_unit():
    for text in (lw.Tube.bore_volume_ml.__doc__, lw.Tube.mass_g.__doc__, lw.Length.mm.__doc__, lw.Angle.deg.__doc__):
        assert any(unit in text for unit in ("milliliters", "grams", "millimeters", "degrees"))


def test_the_version_is_the_one_of_the_package():
    from importlib.metadata import version

    assert lw.__version__ == version("linewright")
