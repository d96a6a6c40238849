//! Holding a pressure to look for a leak: what a loss does to the gauge, and what a change of temperature hides.

use super::fluid::lw_fluid;
use crate::argument::{given, put};
use crate::call::{call, lw_status};
use crate::units::lw_pressure;
use linewright::hydraulics::Hold;
use linewright::units::{kelvin, ml, to_ml};
use std::mem::MaybeUninit;

/// A rigid volume of fluid whose pressure is held.
#[derive(Debug)]
pub struct lw_hold(Hold);

/// A volume in milliliters and the fluid in it. Free it with lw_hold_free.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, LW_NOT_KNOWN for a fluid without a bulk modulus.
#[unsafe(no_mangle)]
pub extern "C" fn lw_hold_new(
    volume_ml: f64,
    fluid: Option<&lw_fluid>,
    hold: Option<&mut MaybeUninit<Box<lw_hold>>>,
) -> lw_status {
    call(|| {
        let made = Hold::new(ml(volume_ml), &given(fluid, "fluid")?.0)?;
        put(hold, "hold", Box::new(lw_hold(made)))
    })
}

/// The volume by which the fluid grows when it is warmed, in milliliters; negative when it cools. A leak smaller than this,
/// for the doubt in the temperature, cannot be told from weather: the blind spot of the test.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also where the fluid would grow or shrink by more than a quarter, LW_NOT_KNOWN for
/// a fluid without a thermal expansion.
#[unsafe(no_mangle)]
pub extern "C" fn lw_hold_volume_of_temperature_ml(
    hold: Option<&lw_hold>,
    warming_k: f64,
    volume_ml: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| {
        let volume = given(hold, "hold")?.0.volume_of_temperature(kelvin(warming_k))?;
        put(volume_ml, "volume_ml", to_ml(volume))
    })
}

/// By how much warming raises the pressure of the ideal rigid volume; cooling lowers it, down to nothing and no further.
///
/// Errors: as lw_hold_volume_of_temperature_ml, LW_OUT_OF_RANGE from a twentieth of the volume on.
#[unsafe(no_mangle)]
pub extern "C" fn lw_hold_ideal_rigid_warming(
    hold: Option<&lw_hold>,
    warming_k: f64,
    rise: Option<&mut MaybeUninit<lw_pressure>>,
) -> lw_status {
    call(|| put(rise, "rise", given(hold, "hold")?.0.ideal_rigid_warming(kelvin(warming_k))?.into()))
}

/// By how much a loss, in milliliters, lowers the pressure of the ideal rigid volume, down to nothing and no further. What is not
/// rigid lowers it less.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also for a loss of more than a twentieth of the volume.
#[unsafe(no_mangle)]
pub extern "C" fn lw_hold_ideal_rigid_pressure(
    hold: Option<&lw_hold>,
    lost_ml: f64,
    fall: Option<&mut MaybeUninit<lw_pressure>>,
) -> lw_status {
    call(|| put(fall, "fall", given(hold, "hold")?.0.ideal_rigid_pressure(ml(lost_ml))?.into()))
}

/// The loss that lowers the pressure of the ideal rigid volume by as much as can just be read off the gauge, in
/// milliliters. Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also for a loss of more than a twentieth of the volume.
#[unsafe(no_mangle)]
pub extern "C" fn lw_hold_ideal_rigid_loss_ml(
    hold: Option<&lw_hold>,
    fall: lw_pressure,
    lost_ml: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| put(lost_ml, "lost_ml", to_ml(given(hold, "hold")?.0.ideal_rigid_loss(fall.into())?)))
}

/// Frees a hold. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_hold_free(hold: Option<Box<lw_hold>>) {
    drop(hold);
}
