"""A line full of fluid, by formulas written down here and by SciPy."""

import math

import linewright as lw
import numpy as np
import pytest
from scipy.optimize import brentq

STEEL = lw.material_properties("low-carbon steel")
TUBE = lw.Tube("3/16 in", wall="0.028 in", material="low-carbon steel")
FLUID = lw.Fluid("f", density_kg_per_m3=(1060, "s"), bulk_modulus=("1800 MPa", "t"), expansion_per_k=(7e-4, "u"))


def own(modulus: float = 207e3, poisson: float = 0.29, density: float = 7850.0) -> lw.Properties:
    figures = {"poisson": (poisson, "made up"), "density_kg_per_m3": (density, "made up")}
    return lw.Properties("made up", modulus=(lw.mpa(modulus), "made up"), **figures)


def test_missing_figures_stay_missing() -> None:
    bare = lw.Fluid("bare")
    assert bare.density_kg_per_m3 is None and bare.bulk_modulus is None and bare.expansion_per_k is None
    for make in [
        lambda: lw.FilledTube(TUBE, metal=STEEL, ends="closed", fluid=bare),
        lambda: lw.Hold(90, fluid=bare),
        lambda: lw.Span(TUBE, metal=STEEL, fluid=bare),
        lambda: lw.Span(TUBE, metal=lw.Properties("bare")),
        lambda: lw.Hold(90, fluid=lw.Fluid("b", bulk_modulus=("1700 MPa", "t"))).ideal_rigid_warming(1),
    ]:
        with pytest.raises(lw.InputError) as refused:
            make()
        assert refused.value.code == "NOT_KNOWN"
    with pytest.raises(lw.InputError) as refused:
        lw.Fluid("b", bulk_modulus=("1700 MPa", ""))
    assert refused.value.code == "FIELD_MISSING"
    assert lw.Fluid.glycol().bulk_modulus.checked == "computed"


@pytest.mark.parametrize("ends", ["closed", "open", "fixed"])
def test_a_filled_tube_gives_way_as_its_strains_say(ends: str) -> None:
    """Lame's stresses at the bore for 1 MPa, Hooke's law, and twice the hoop strain with the axial one."""
    modulus, poisson = 207e3, 0.29
    filled = lw.FilledTube(TUBE, metal=own(modulus, poisson), ends=ends, fluid=FLUID)
    outer, bore = TUBE.od.mm / 2, TUBE.bore.mm / 2
    hoop = (outer**2 + bore**2) / (outer**2 - bore**2)
    axial = {"closed": bore**2 / (outer**2 - bore**2), "open": 0.0, "fixed": poisson * (hoop - 1)}[ends]
    hoop_strain = (hoop - poisson * (axial - 1)) / modulus
    axial_strain = (axial - poisson * (hoop - 1)) / modulus
    expected = 2 * hoop_strain + axial_strain
    assert filled.wall_compliance_per_mpa == pytest.approx(expected, rel=1e-12)
    total = expected + 1 / 1800
    assert filled.compliance_per_mpa == pytest.approx(total, rel=1e-12)
    assert filled.effective_bulk_modulus.mpa == pytest.approx(1 / total, rel=1e-12)
    volume = math.pi * bore**2 * 2000 * 10 * total / 1000
    assert filled.volume_to_raise_ml("2 m", "10 MPa") == pytest.approx(volume, rel=1e-12)
    assert filled.wave_speed_m_per_s() == pytest.approx(math.sqrt(1e6 / total / 1060), rel=1e-12)
    wall = 3 * 12e-6 if ends != "fixed" else 2 * 1.29 * 12e-6
    rise = filled.pressure_of_warming(warming_k=-5, wall_expansion_per_k=12e-6)
    assert rise.mpa == pytest.approx(-5 * (7e-4 - wall) / total, rel=1e-12)


def test_a_span_swings_as_a_beam() -> None:
    """Roots of the beam's equations by SciPy, second moment and mass by hand."""
    roots = {
        "pinned": math.pi,
        "clamped-pinned": brentq(lambda x: math.tan(x) - math.tanh(x), 3.8, 4.2, xtol=1e-14),
        "clamped": brentq(lambda x: math.cos(x) * math.cosh(x) - 1, 4.5, 5.0, xtol=1e-14),
    }
    outer, bore = TUBE.od.mm / 2000, TUBE.bore.mm / 2000
    stiffness = 207e9 * math.pi / 4 * (outer**4 - bore**4)
    for fluid, density in [(None, 0.0), (FLUID, 1060.0)]:
        mass = 7850 * math.pi * (outer**2 - bore**2) + density * math.pi * bore**2
        span = lw.Span(TUBE, metal=own(), fluid=fluid)
        assert span.mass_g("1 m") == pytest.approx(1000 * mass, rel=1e-12)
        for ends, root in roots.items():
            for length in np.linspace(0.1, 1.0, 7):
                expected = root**2 / (2 * math.pi * length**2) * math.sqrt(stiffness / mass)
                found = span.first_frequency_hz(lw.m(length), ends)
                assert found == pytest.approx(expected, rel=1e-9)
                assert span.length_for(found, ends).mm == pytest.approx(1000 * length, rel=1e-12)
    with pytest.raises(lw.UnknownNameError):
        lw.Span(TUBE, metal=own()).first_frequency_hz("300 mm", "loose")
    with pytest.raises(lw.QuantityError):
        lw.Span(TUBE, metal=own()).first_frequency_hz(300, "pinned")


def test_a_held_volume_hides_what_weather_does() -> None:
    hold = lw.Hold(90, fluid=FLUID)
    assert hold.volume_of_temperature_ml(2) == pytest.approx(90 * 7e-4 * 2, rel=1e-12)
    assert hold.ideal_rigid_warming(2).mpa == pytest.approx(1800 * 7e-4 * 2, rel=1e-12)
    assert hold.ideal_rigid_pressure(0.05).mpa == pytest.approx(1800 * 0.05 / 90, rel=1e-12)
    assert hold.ideal_rigid_loss_ml("1 MPa") == pytest.approx(90 / 1800, rel=1e-12)
    # A twentieth of the volume, or of the bulk modulus; 0.05 / 7e-4 K.
    for call in (
        lambda: hold.ideal_rigid_pressure(4.51),
        lambda: hold.ideal_rigid_loss_ml("90.1 MPa"),
        lambda: hold.ideal_rigid_warming(-71.5),
        lambda: hold.volume_of_temperature_ml(301),
    ):
        with pytest.raises(lw.InputError) as refused_large:
            call()
        assert refused_large.value.code == "OUT_OF_RANGE"
    for bad in [0.0, -1.0, 1e9]:
        with pytest.raises(lw.InputError) as refused:
            lw.Hold(bad, fluid=FLUID)
        assert refused.value.code == "OUT_OF_RANGE"
    with pytest.raises(lw.LinewrightError) as refused_nan:
        lw.Hold(math.nan, fluid=FLUID)
    assert refused_nan.value.code == "NOT_A_NUMBER"


def test_spacings_are_rows_with_sources() -> None:
    aircraft, shore = lw.handbook_spacings("1/4 in")
    assert aircraft.least is None and aircraft.most == lw.inch(16) and "MIL-H-8891A" in aircraft.source
    assert shore.least == lw.inch(24) and shore.most == lw.inch(30) and shore.checked == "seen"
    assert lw.handbook_spacings("6 mm") == []


def test_a_groove_makes_a_former_and_the_plan_says_so(line: lw.Line, bench: lw.Bench) -> None:
    tube = lw.Mechanics("3/16 in", wall="0.028 in", modulus="207 GPa", yield_strength="250 MPa")
    former = lw.Former.of_groove("14.2875 mm", grip="20 mm", tube=tube)
    assert former.groove == lw.mm(14.2875)
    assert former.as_formed.mm == pytest.approx(tube.bend("14.2875 mm").formed_radius.mm, abs=1e-12)
    made = lw.Former(as_formed="14.3 mm", grip="20 mm", groove="14.15 mm")
    estimated = lw.Bench(former=made, flare_tool=bench.flare_tools, springback=bench.springback)
    assert "RADIUS_ESTIMATED" in {problem.code for problem in line.plan(estimated).problems}
    assert "RADIUS_ESTIMATED" not in {problem.code for problem in line.plan(bench).problems}
    assert bench.former.groove is None
    with pytest.raises(lw.InputError) as refused:
        lw.Former(as_formed="14 mm", grip="20 mm", groove="15 mm")
    assert refused.value.code == "OUT_OF_RANGE"
