"""Cut lengths, marks, bend settings and bench cards for rigid hydraulic lines that are made by hand.

Wherever a length or an angle is asked for, give one of

- a text with its unit: ``"3/16 in"``, ``"14.3 mm"``, ``"90 deg"``;
- a quantity of this package: ``lw.mm(4.75)``, ``lw.inch(0.1875)``, ``lw.m(1.2)``, ``lw.deg(90)``, ``lw.rad(1.57)``;
- a quantity of pint, astropy, unyt or quantities.

A bare number is refused: ``QuantityError``, which says what to write. None is taken only where it means not known, and
comes back where a figure is not known.

Every class is frozen; its repr makes it again, with the names of this package; it can be compared, hashed and pickled.

>>> import linewright as lw
>>> print(lw.Path.from_straights(["60 mm", lw.inch(4)], bends=["90 deg"], radius="14.3 mm").developed_length)
184.06 mm
"""

from ._errors import InputError, LinewrightError, QuantityError, UnknownNameError
from ._native import (
    CODES,
    Angle,
    Assumption,
    Bench,
    Code,
    Draft,
    End,
    EndPlan,
    Field,
    FlareTool,
    Former,
    Length,
    Line,
    LineDraft,
    Nut,
    Path,
    Plan,
    PlannedBend,
    Port,
    Problem,
    SizedLine,
    Springback,
    Step,
    Thread,
    Tube,
    __version__,
    arc,
    deg,
    gain,
    inch,
    m,
    mm,
    rad,
    read_angle,
    read_length,
    size_lines,
    tangent_length,
    thread,
)

__all__ = [
    "CODES",
    "Angle",
    "Assumption",
    "Bench",
    "Code",
    "Draft",
    "End",
    "EndPlan",
    "Field",
    "FlareTool",
    "Former",
    "InputError",
    "Length",
    "Line",
    "LineDraft",
    "LinewrightError",
    "Nut",
    "Path",
    "Plan",
    "PlannedBend",
    "Port",
    "Problem",
    "QuantityError",
    "SizedLine",
    "Springback",
    "Step",
    "Thread",
    "Tube",
    "UnknownNameError",
    "__version__",
    "arc",
    "deg",
    "gain",
    "inch",
    "m",
    "mm",
    "rad",
    "read_angle",
    "read_length",
    "size_lines",
    "tangent_length",
    "thread",
]
