"""Exceptions. They are Python classes because each is ours and one of Python's own at the same time."""

from ._native import Angle, Length, Pressure, Problem

__all__ = ["InputError", "LinewrightError", "QuantityError", "UnknownNameError"]


class LinewrightError(Exception):
    """A call that cannot be answered, with the finding that says why.

    Every exception of this package is one. Raised itself only for a fault inside the library (INTERNAL_FAULT).

    >>> import linewright as lw
    >>> try:
    ...     lw.Tube("0.2 mm", wall="0.05 mm", material="copper-nickel")
    ... except lw.LinewrightError as error:
    ...     print(error.code, error.part, error.got, error.need, sep="; ")
    OUT_OF_RANGE; field od; 0.2 mm; 1 to 60 mm
    """

    __module__ = "linewright"

    problem: Problem
    """The whole finding."""

    def __init__(self, problem: Problem) -> None:
        super().__init__(problem)
        self.problem = problem

    def __str__(self) -> str:
        return str(self.problem)

    @property
    def code(self) -> str:
        """Name of the code; `CODES` says what it means."""
        return self.problem.code

    @property
    def number(self) -> int:
        """Number of the code."""
        return self.problem.number

    @property
    def part(self) -> str:
        """What it is about: "field od", "bend 4"."""
        return self.problem.part

    @property
    def got(self) -> Length | Angle | Pressure | int | float | str | None:
        """The value given."""
        return self.problem.got

    @property
    def need(self) -> Length | Angle | Pressure | int | float | str | None:
        """What is needed."""
        return self.problem.need

    @property
    def why(self) -> str:
        """Why it matters."""
        return self.problem.why

    @property
    def fix(self) -> str:
        """What to do."""
        return self.problem.fix


class InputError(LinewrightError, ValueError):
    """A value that was read and cannot be used.

    >>> import linewright as lw
    >>> lw.read_length("1,500 mm")
    Traceback (most recent call last):
        ...
    linewright.InputError: refuse NUMBER_AMBIGUOUS, field length: a comma or point can be a decimal sign or ...
    """

    __module__ = "linewright"


class UnknownNameError(LinewrightError, LookupError):
    """A name that is not in its list: of a material, a flare, a field.

    >>> import linewright as lw
    >>> lw.Tube("3/16 in", wall="0.028 in", material="cheese")
    Traceback (most recent call last):
        ...
    linewright.UnknownNameError: refuse UNKNOWN_NAME, field material: a name is not in the list; got cheese; ...
    """

    __module__ = "linewright"


class QuantityError(LinewrightError, TypeError):
    """An argument of a Python type that is no quantity of the kind asked for: mostly a number without its unit.

    >>> import linewright as lw
    >>> lw.Tube(4.75, wall="0.7 mm", material="copper-nickel")
    Traceback (most recent call last):
        ...
    linewright.QuantityError: refuse UNIT_MISSING, field od: a number has no unit; got 4.75 (float); need a length ...
    """

    __module__ = "linewright"
