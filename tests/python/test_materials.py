"""What is known of metals: the library's figures, a user's own, and what is missing."""

import linewright as lw
import pytest


def test_figures_have_their_sources():
    steel = lw.material_properties("low-carbon steel", condition="annealed")
    # The law of hardening of annealed low-carbon steel as handbooks have it: K about 530 to 600 MPa, n about 0.2 to 0.26.
    law = steel.hardening.value
    assert lw.mpa(500) < law.strength_coefficient < lw.mpa(620) and 0.19 < law.exponent < 0.27
    # ASTM B466 through a public data sheet: 16 ksi yield for annealed C70600 tube is 110.3 MPa.
    copper = lw.material_properties("copper-nickel", condition="annealed")
    assert copper.yield_strength.value.psi == pytest.approx(16_000, rel=1e-9)
    ways = {"seen", "seen second-hand", "computed", "from memory, not checked", "common practice, no source"}
    for material in lw.materials():
        for condition in [None, *lw.material_conditions(material)]:
            metal = lw.material_properties(material, condition=condition)
            figures = [metal.density_kg_per_m3, metal.modulus, metal.poisson, metal.yield_strength, metal.hardening]
            figures += [metal.tensile_strength, metal.elongation, metal.tangent_modulus, metal.expansion_per_k]
            known = [figure for figure in figures if figure is not None]
            assert known and all(figure.source and figure.checked in ways for figure in known)
            assert condition is not None or metal.yield_strength is None


def test_what_nobody_gave_is_missing():
    own = lw.Properties("our coil", modulus=("205 GPa", "mill sheet 12"))
    assert own.name == "our coil" and own.modulus.value == lw.mpa(205_000)
    assert own.modulus.source == "mill sheet 12, seen second-hand"
    missing = ("density_kg_per_m3", "poisson", "yield_strength", "tensile_strength", "elongation", "hardening", "expansion_per_k")
    assert all(getattr(own, figure) is None for figure in (*missing, "tangent_modulus"))


@pytest.mark.parametrize(
    ("given", "code", "part"),
    [
        ({"modulus": ("205 GPa", " ")}, "FIELD_MISSING", "field modulus_source"),
        ({"modulus": ("205", "s")}, "UNIT_MISSING", "field modulus"),
        ({"modulus": (205, "s")}, "UNIT_MISSING", "field modulus"),
        ({"modulus": ("205 mm", "s")}, "WRONG_KIND", "field modulus"),
        ({"modulus": "205 GPa"}, "WRONG_KIND", "field modulus"),
        ({"modulus": ("205 GPa", 3)}, "WRONG_KIND", "field modulus"),
        ({"tangent_modulus": ("2 GPa", " ")}, "FIELD_MISSING", "field tangent_modulus_source"),
        ({"tangent_modulus": (2000, "s")}, "UNIT_MISSING", "field tangent_modulus"),
        ({"tangent_modulus": "2 GPa"}, "WRONG_KIND", "field tangent_modulus"),
        ({"tangent_modulus": ("-1 MPa", "s")}, "OUT_OF_RANGE", "field tangent_modulus"),
        ({"tangent_modulus": ("205 GPa", "s"), "modulus": ("205 GPa", "s")}, "OUT_OF_RANGE", "field tangent_modulus"),
        ({"poisson": ("0.3", "s")}, "WRONG_KIND", "field poisson"),
        ({"poisson": (0.6, "s")}, "OUT_OF_RANGE", "field poisson"),
        ({"poisson": (float("nan"), "s")}, "NOT_A_NUMBER", "field poisson"),
        ({"hardening_exponent": 0.2}, "FIELD_MISSING", "field strength_coefficient"),
        ({"strength_coefficient": ("600 MPa", "s")}, "FIELD_MISSING", "field hardening_exponent"),
    ],
)
def test_a_figure_that_cannot_be_is_named(given, code, part):
    with pytest.raises(lw.LinewrightError) as caught:
        lw.Properties("own", **given)
    assert (caught.value.code, caught.value.part) == (code, part)


def test_names_that_are_none():
    for call in (lambda: lw.material_properties("lead"), lambda: lw.material_conditions("lead")):
        with pytest.raises(lw.UnknownNameError, match="copper-nickel"):
            call()
    with pytest.raises(lw.UnknownNameError, match="annealed, half hard"):
        lw.material_properties("copper-nickel", condition="ISO 4038")
