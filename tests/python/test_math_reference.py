"""Proves where the math table and the constants of the math kernels come from: both are made again."""

import re
from pathlib import Path

import make_math_reference as reference
import pytest

CORE = Path(__file__).resolve().parents[2] / "core" / "src"


def test_the_committed_table_is_what_the_maker_makes():
    committed = reference.TABLE.read_text(encoding="ascii").splitlines()
    made = reference.rows()
    different = [(n, a, b) for n, (a, b) in enumerate(zip(committed, made), 1) if a != b]
    assert different == []
    assert len(committed) == len(made)


def test_the_table_stays_small():
    assert reference.TABLE.stat().st_size < 480_000


@pytest.mark.parametrize(
    ("file", "name"),
    [
        ("math/trig.rs", "HALF_PI"),
        ("math/trig.rs", "SIN"),
        ("math/trig.rs", "COS"),
        ("math/arctan.rs", "QUARTER_PI"),
        ("math/arctan.rs", "ATAN"),
        ("math/arcsin.rs", "ASIN"),
        ("springback/kernel.rs", "LOST"),
    ],
)
def test_the_kernel_constants_are_what_the_recipe_makes(file, name):
    source = (CORE / file).read_text(encoding="utf-8")
    match = re.search(rf"const {name}: \[f64; \d+\] =\s*\[(.*?)\];", source, re.DOTALL)
    assert match, f"{name} is not in {file}"
    written = [float(number.replace("_", "")) for number in re.findall(r"[^\s,]+", match.group(1))]
    assert written == reference.constants()[name]


def test_the_half_turn_parts_are_short_enough_to_multiply_exactly():
    for part in reference.constants()["HALF_PI"][:-1]:
        numerator, _ = part.as_integer_ratio()
        assert numerator.bit_length() <= 33
