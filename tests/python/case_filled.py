"""Runs the cases about the ideal cylinder under pressure and a line full of fluid."""

import linewright as lw

# As in `case_files.OPERATIONS`: what each operation takes, and what it answers.
OPERATIONS = {
    "ideal_cylinder": (
        "od wall od_plus* wall_minus* radius* neutral_shift* theory strength factor source pressure",
        "ideal_mpa wall_mm place stress_mpa margin_1 reached",
    ),
    "filled_tube": (
        "od wall modulus poisson ends bulk_modulus* density* expansion* length pressure warming wall_expansion",
        "wall_per_mpa all_per_mpa bulk_mpa volume_ml rise_mpa wave_m_per_s",
    ),
    "span": ("od wall modulus density* fluid_density* length ends wanted", "mass_g frequency_hz length_mm"),
    "hold": ("volume bulk_modulus* expansion* warming lost fall", "grown_ml warmed_mpa fallen_mpa loss_ml"),
}

Answer = dict[str, list[str]]
SOURCE = "a case"


def steel(od: str, wall: str) -> lw.Tube:
    return lw.Tube(od, wall=wall, material="low-carbon steel")


def fluid(density: float | None = None, bulk_modulus: str | None = None, expansion: float | None = None) -> lw.Fluid:
    figures = {"density_kg_per_m3": density, "bulk_modulus": bulk_modulus, "expansion_per_k": expansion}
    return lw.Fluid(SOURCE, **{name: (value, SOURCE) for name, value in figures.items() if value is not None})


def run_ideal_cylinder(
    od: str, wall: str, theory: str, strength: str, factor: float, source: str, pressure: str, **cylinder: str
) -> Answer:
    made = lw.Cylinder(steel(od, wall), **cylinder)
    asked = lw.Strength(strength, factor=factor, source=source)
    ideal = made.ideal_cylinder_pressure(theory, asked)
    margin = made.margin(theory, pressure, asked)
    return {
        "ideal_mpa": [repr(ideal.pressure.mpa)],
        "wall_mm": [repr(ideal.wall.mm)],
        "place": [ideal.place or "straight"],
        "stress_mpa": [repr(made.stress(theory, pressure).mpa)],
        "margin_1": [repr(margin.found)],
        "reached": [str(margin.is_reached).lower()],
    }


def run_filled_tube(
    od: str,
    wall: str,
    modulus: str,
    poisson: float,
    ends: str,
    length: str,
    pressure: str,
    warming: float,
    wall_expansion: float,
    **of_fluid: str | float,
) -> Answer:
    metal = lw.Properties(SOURCE, modulus=(modulus, SOURCE), poisson=(poisson, SOURCE))
    filled = lw.FilledTube(steel(od, wall), metal=metal, ends=ends, fluid=fluid(**of_fluid))
    rise = filled.pressure_of_warming(warming_k=warming, wall_expansion_per_k=wall_expansion)
    return {
        "wall_per_mpa": [repr(filled.wall_compliance_per_mpa)],
        "all_per_mpa": [repr(filled.compliance_per_mpa)],
        "bulk_mpa": [repr(filled.effective_bulk_modulus.mpa)],
        "volume_ml": [repr(filled.volume_to_raise_ml(length, pressure))],
        "rise_mpa": [repr(rise.mpa)],
        "wave_m_per_s": [repr(filled.wave_speed_m_per_s())],
    }


def run_span(
    od: str,
    wall: str,
    modulus: str,
    length: str,
    ends: str,
    wanted: float,
    density: float | None = None,
    fluid_density: float | None = None,
) -> Answer:
    own = {} if density is None else {"density_kg_per_m3": (density, SOURCE)}
    metal = lw.Properties(SOURCE, modulus=(modulus, SOURCE), **own)
    inside = None if fluid_density is None else fluid(fluid_density)
    made = lw.Span(steel(od, wall), metal=metal, fluid=inside)
    return {
        "mass_g": [repr(made.mass_g(length))],
        "frequency_hz": [repr(made.first_frequency_hz(length, ends))],
        "length_mm": [repr(made.length_for(wanted, ends).mm)],
    }


def run_hold(volume: float, warming: float, lost: float, fall: str, **of_fluid: str | float) -> Answer:
    held = lw.Hold(volume, fluid=fluid(**of_fluid))
    return {
        "grown_ml": [repr(held.volume_of_temperature_ml(warming))],
        "warmed_mpa": [repr(held.ideal_rigid_warming(warming).mpa)],
        "fallen_mpa": [repr(held.ideal_rigid_pressure(lost).mpa)],
        "loss_ml": [repr(held.ideal_rigid_loss_ml(fall))],
    }
