//! One bend: arc, tangent length and gain.

pub mod pressure;
pub mod rules;
pub mod section;
pub mod wall;

use crate::argument::put;
use crate::call::{call, lw_status};
use crate::units::{lw_angle, lw_length};
use linewright::units::deg;
use linewright::{Bend, Error};
use std::mem::MaybeUninit;

pub(crate) fn flat(radius: lw_length, angle: lw_angle) -> Result<Bend, Error> {
    Bend::new(angle.into(), deg(0.0), radius.into())
}

/// Tube in a bend, along the center line: radius x angle. The radius is the one as formed, after springback; the angle
/// is how far the tube is bent, 0 for straight.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_bend_arc(
    radius: lw_length,
    angle: lw_angle,
    arc: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(arc, "arc", flat(radius, angle)?.arc().into()))
}

/// From the corner to where the bend starts: radius x tan(angle / 2).
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, LW_NO_CORNER at 180 degrees and above.
#[unsafe(no_mangle)]
pub extern "C" fn lw_bend_tangent_length(
    radius: lw_length,
    angle: lw_angle,
    tangent_length: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(tangent_length, "tangent_length", flat(radius, angle)?.tangent_length()?.into()))
}

/// How much shorter the way round the bend is than the way over its corner.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, LW_NO_CORNER at 180 degrees and above.
#[unsafe(no_mangle)]
pub extern "C" fn lw_bend_gain(
    radius: lw_length,
    angle: lw_angle,
    gain: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(gain, "gain", flat(radius, angle)?.gain()?.into()))
}
