//! A line full of fluid: how it gives way, what a pressure hold can show, how it swings between clips.

pub mod fluid;
pub mod hold;
pub mod span;

use crate::argument::{given, put, text};
use crate::call::{call, lw_status};
use crate::material::lw_properties;
use crate::tube::lw_tube;
use crate::units::{lw_length, lw_pressure};
use fluid::lw_fluid;
use linewright::hydraulics::{AxialEnds, FilledTube, WallElasticity};
use linewright::units::{kelvin, per_kelvin, to_m_per_s, to_ml, to_per_mpa};
use std::ffi::c_char;
use std::mem::MaybeUninit;

/// A tube full of fluid.
#[derive(Debug)]
pub struct lw_filled_tube(FilledTube);

/// A tube full of fluid, with what is known of its metal, and its ends along the axis "closed" (free to move, the wall
/// carries the pressure on them), "open" (sliding in seals) or "fixed". Free it with lw_filled_tube_free.
///
/// Errors: LW_NOT_KNOWN where the metal's modulus or Poisson's ratio or the fluid's bulk modulus is missing,
/// LW_UNKNOWN_NAME for the ends.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_filled_tube_new(
    tube: Option<&lw_tube>,
    metal: Option<&lw_properties>,
    ends: *const c_char,
    fluid: Option<&lw_fluid>,
    filled: Option<&mut MaybeUninit<Box<lw_filled_tube>>>,
) -> lw_status {
    call(|| {
        let (tube, metal, fluid) = (given(tube, "tube")?, given(metal, "metal")?, given(fluid, "fluid")?);
        let ends = AxialEnds::from_name(unsafe { text(ends, "ends") }?)?;
        let made = FilledTube::new(&tube.0, WallElasticity::of(&metal.0)?, ends, &fluid.0)?;
        put(filled, "filled", Box::new(lw_filled_tube(made)))
    })
}

/// Share of its bore that the wall alone gains per megapascal.
#[unsafe(no_mangle)]
pub extern "C" fn lw_filled_tube_wall_compliance_per_mpa(
    filled: Option<&lw_filled_tube>,
    compliance_per_mpa: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| {
        let compliance = given(filled, "filled")?.0.wall_compliance();
        put(compliance_per_mpa, "compliance_per_mpa", to_per_mpa(compliance))
    })
}

/// Share of its bore that wall and fluid together take per megapascal.
#[unsafe(no_mangle)]
pub extern "C" fn lw_filled_tube_compliance_per_mpa(
    filled: Option<&lw_filled_tube>,
    compliance_per_mpa: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| {
        let compliance = given(filled, "filled")?.0.compliance();
        put(compliance_per_mpa, "compliance_per_mpa", to_per_mpa(compliance))
    })
}

/// Bulk modulus that the fluid seems to have in this tube.
#[unsafe(no_mangle)]
pub extern "C" fn lw_filled_tube_effective_bulk_modulus(
    filled: Option<&lw_filled_tube>,
    bulk_modulus: Option<&mut MaybeUninit<lw_pressure>>,
) -> lw_status {
    call(|| put(bulk_modulus, "bulk_modulus", given(filled, "filled")?.0.effective_bulk_modulus().into()))
}

/// Fluid to be pressed into a length of it to raise its pressure, in milliliters.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also for more than a twentieth of the volume, over which stiffness is not constant.
#[unsafe(no_mangle)]
pub extern "C" fn lw_filled_tube_volume_to_raise_ml(
    filled: Option<&lw_filled_tube>,
    length: lw_length,
    pressure: lw_pressure,
    volume_ml: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| {
        let volume = given(filled, "filled")?.0.volume_to_raise(length.into(), pressure.into())?;
        put(volume_ml, "volume_ml", to_ml(volume))
    })
}

/// By how much the pressure of a shut-off, full length rises when it is warmed throughout; negative when it cools. A fall goes
/// down to nothing and no further: one of more than the line's pressure says that the fluid parts.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also where fluid and bore would part by more than a twentieth of the volume,
/// LW_NOT_KNOWN for a fluid without a thermal expansion.
#[unsafe(no_mangle)]
pub extern "C" fn lw_filled_tube_pressure_of_warming(
    filled: Option<&lw_filled_tube>,
    warming_k: f64,
    wall_expansion_per_k: f64,
    rise: Option<&mut MaybeUninit<lw_pressure>>,
) -> lw_status {
    call(|| {
        let filled = &given(filled, "filled")?.0;
        let pressure = filled.pressure_of_warming(kelvin(warming_k), per_kelvin(wall_expansion_per_k))?;
        put(rise, "rise", pressure.into())
    })
}

/// Speed of a pressure wave along it, in meters per second.
///
/// Errors: LW_NOT_KNOWN for a fluid without a density.
#[unsafe(no_mangle)]
pub extern "C" fn lw_filled_tube_wave_speed_m_per_s(
    filled: Option<&lw_filled_tube>,
    speed_m_per_s: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| put(speed_m_per_s, "speed_m_per_s", to_m_per_s(given(filled, "filled")?.0.wave_speed()?)))
}

/// Frees a tube full of fluid. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_filled_tube_free(filled: Option<Box<lw_filled_tube>>) {
    drop(filled);
}
