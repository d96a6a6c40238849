//! The few figures that a spreadsheet asks for, in plain numbers with the unit in the name. NaN stands for an error,
//! which the lw_last_error functions describe.

use crate::bend::flat;
use crate::call::call;
use crate::units::{lw_angle, lw_length};
use linewright::units::{deg, ratio, to_deg, to_mm};
use linewright::{Error, Springback};

/// The number, or NaN where the call failed.
fn number(work: impl FnOnce() -> Result<f64, Error>) -> f64 {
    let mut answer = f64::NAN;
    call(|| {
        answer = work()?;
        Ok(())
    });
    answer
}

/// Tube in a bend, along the center line, in mm, of a radius as formed in mm and a bend angle in degrees. NaN on an
/// error.
#[unsafe(no_mangle)]
pub extern "C" fn lw_arc_mm(radius_mm: f64, angle_deg: f64) -> f64 {
    number(|| Ok(to_mm(flat(lw_length { mm: radius_mm }, lw_angle { deg: angle_deg })?.arc())))
}

/// From the corner to where the bend starts, in mm, of a radius as formed in mm and a bend angle in degrees. NaN on an
/// error.
#[unsafe(no_mangle)]
pub extern "C" fn lw_tangent_length_mm(radius_mm: f64, angle_deg: f64) -> f64 {
    number(|| Ok(to_mm(flat(lw_length { mm: radius_mm }, lw_angle { deg: angle_deg })?.tangent_length()?)))
}

/// How much shorter the way round a bend is than the way over its corner, in mm, of a radius as formed in mm and a
/// bend angle in degrees. NaN on an error.
#[unsafe(no_mangle)]
pub extern "C" fn lw_gain_mm(radius_mm: f64, angle_deg: f64) -> f64 {
    number(|| Ok(to_mm(flat(lw_length { mm: radius_mm }, lw_angle { deg: angle_deg })?.gain()?)))
}

/// The angle in degrees to bend to so that the wanted angle in degrees remains, of a springback's constant part in
/// degrees and its proportional part (a plain ratio, such as 0.038). NaN on an error.
#[unsafe(no_mangle)]
pub extern "C" fn lw_setting_deg(wanted_deg: f64, constant_deg: f64, proportional: f64) -> f64 {
    number(|| {
        let springback = Springback::new(deg(constant_deg), ratio(proportional))?;
        Ok(to_deg(springback.setting(deg(wanted_deg))?))
    })
}
