"""The ideal cylinder under pressure, by formulas written down here and by printed calculations."""

import math

import linewright as lw
import pytest

TUBES = [("3/16 in", "0.028 in"), ("4.75 mm", "0.9 mm"), ("8 mm", "1 mm"), ("3/8 in", "0.035 in")]


def sizes(tube: lw.Tube) -> tuple[float, float]:
    return tube.od.mm, tube.wall.mm


def code(refused: pytest.ExceptionInfo[lw.LinewrightError]) -> str:
    return refused.value.code


@pytest.mark.parametrize(("od", "wall"), TUBES)
def test_straight_cylinders_follow_their_theories(od: str, wall: str) -> None:
    tube = lw.Tube(od, wall=wall, material="low-carbon steel")
    outer, thick = sizes(tube)
    bore = outer - 2 * thick
    expected = {
        "Barlow": 2 * thick / outer,
        "Boardman": 2 * thick / (outer - 0.8 * thick),
        "Lame": (outer**2 - bore**2) / (outer**2 + bore**2),
        "Tresca": math.log(outer / bore),
        "von Mises": 2 / math.sqrt(3) * math.log(outer / bore),
    }
    strength = lw.Strength("300 MPa", factor=2.5, source="made up for this test")
    if thick > outer / 6:
        # Beyond a sixth of the diameter Boardman's would say more than Lame's.
        assert expected.pop("Boardman") > expected["Lame"]
        for call in (
            lambda: lw.Cylinder(tube).ideal_cylinder_pressure("Boardman", strength),
            lambda: lw.Cylinder(tube).stress("Boardman", "10 MPa"),
            lambda: lw.Cylinder(tube).margin("Boardman", "10 MPa", strength),
        ):
            with pytest.raises(lw.InputError) as refused:
                call()
            assert (code(refused), refused.value.part) == ("OUT_OF_RANGE", "field wall")
    for theory, share in expected.items():
        ideal = lw.Cylinder(tube).ideal_cylinder_pressure(theory, strength)
        assert ideal.pressure.mpa == pytest.approx(120 * share, rel=1e-12)
        assert ideal.place is None and ideal.strength == strength and ideal.theory == theory
        assert "no statement" not in ideal.text and "not a statement that a line may be used" in ideal.text
        assert lw.Cylinder(tube).stress(theory, "10 MPa").mpa == pytest.approx(10 / share, rel=1e-12)
        margin = lw.Cylinder(tube).margin(theory, "10 MPa", strength)
        assert margin.found == pytest.approx(30 * share, rel=1e-12) and margin.asked == 2.5
        assert margin.is_reached == (30 * share >= 2.5)


def test_a_bend_is_weaker_by_wall_and_shape() -> None:
    tube = lw.Tube("3/16 in", wall="0.028 in", material="low-carbon steel")
    strength = lw.Strength("290 MPa", factor=1, source="made up for this test")
    worst = lw.Cylinder(tube, od_plus="0.003 in", wall_minus="0.005 in", radius="14.2875 mm")
    ideal = worst.ideal_cylinder_pressure("Barlow", strength)
    # Outside, with a hoop that keeps its length: the wall over 1 + D / (2 R), the shape by (4 R/D + 1) / (4 R/D + 2).
    outer, thick, radius = 0.1905 * 25.4, 0.023 * 25.4, 14.2875
    local = thick / (1 + outer / 2 / radius)
    shape = (4 * radius / outer + 1) / (4 * radius / outer + 2)
    assert ideal.pressure.mpa == pytest.approx(290 * 2 * local / outer / shape, rel=1e-12)
    assert ideal.place == "extrados" and ideal.wall.mm == pytest.approx(local, rel=1e-12)


def test_the_printed_form_of_the_bend_wall() -> None:
    """ASME B31.3 paragraph 304.2.1: t = P D / (2 (S / I + P Y)), I = (4 R/D - 1) / (4 R/D - 2) inside."""
    bend = lw.BendFactors("50 mm", radius="150 mm")
    asked = lw.Strength("120 MPa", factor=1, source="made up for this test")
    for place, factor in [("intrados", 11 / 10), ("extrados", 13 / 14), ("side", 1.0)]:
        assert bend.shell(place) == pytest.approx(factor, rel=1e-12)
        # From 120 / I / (3 - 0.4) on, the wall would be more than a sixth of the diameter.
        with pytest.raises(lw.InputError) as refused:
            bend.ideal_wall(place, pressure=lw.mpa(1.0001 * 120 / 2.6 / factor), strength=asked, y=0.4)
        assert (code(refused), refused.value.part) == ("OUT_OF_RANGE", "field pressure")
        wall = bend.ideal_wall(place, pressure="10 MPa", strength=asked, y=0.4)
        assert wall.mm == pytest.approx(10 * 50 / 2 / (120 / factor + 4), rel=1e-12)
    assert bend.after_bending("extrados", "plane strain") == pytest.approx(1 + 50 / 4 / 150, rel=1e-12)


def test_an_oval_tube_peaks() -> None:
    tube = lw.Tube("3/16 in", wall="0.028 in", material="low-carbon steel")
    middle, wall = 0.1875 * 25.4 - 0.028 * 25.4, 0.028 * 25.4
    slender = middle / wall
    for pressure in [0.0, 5.0, 30.0]:
        rounding = pressure * (1 - 0.29**2) / (2 * 207e3) * slender**3
        expected = 1 + 1.5 * (0.2 / middle) * slender / (1 + rounding)
        peak = lw.ovality_amplification(
            tube, out_of_round="0.2 mm", pressure=lw.mpa(pressure), modulus="207 GPa", poisson=0.29
        )
        assert peak == pytest.approx(expected, rel=1e-12)


def test_tolerances_are_rows_with_sources() -> None:
    [row] = lw.size_tolerances("3/16 in")
    assert row.wall_plus_minus.mm == pytest.approx(0.005 * 25.4) and row.od_plus_minus is not None
    assert "J526" in row.source and row.checked == "seen"
    [quarter] = lw.size_tolerances("1/4 in")
    assert quarter.od_plus_minus is None
    assert lw.size_tolerances("7 mm") == []


def test_what_is_missing_or_wrong_says_so() -> None:
    tube = lw.Tube("3/16 in", wall="0.028 in", material="low-carbon steel")
    strength = lw.Strength("290 MPa", factor=4, source="made up for this test")
    with pytest.raises(lw.InputError) as refused:
        lw.Strength("290 MPa", factor=4, source="  ")
    assert code(refused) == "FIELD_MISSING"
    with pytest.raises(lw.QuantityError):
        lw.Strength(290, factor=4, source="mine")
    with pytest.raises(lw.InputError) as refused:
        lw.Cylinder(tube, wall_minus="0.7 mm")
    assert code(refused) == "OUT_OF_RANGE"
    with pytest.raises(lw.InputError) as refused:
        lw.Cylinder(tube, neutral_shift="0.1 mm")
    assert code(refused) == "FIELD_MISSING"
    with pytest.raises(lw.UnknownNameError):
        lw.Cylinder(tube).stress("my theory", "1 MPa")
    with pytest.raises(lw.InputError) as refused:
        lw.Cylinder(tube).margin("Lame", "0 MPa", strength)
    assert code(refused) == "OUT_OF_RANGE"
