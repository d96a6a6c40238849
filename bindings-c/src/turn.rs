//! The turn of a bend plane in the forms that a bench can use.

use crate::argument::{fill_text, known, put};
use crate::call::{call, lw_status};
use crate::units::lw_angle;
use linewright::{bounds, turn};
use std::ffi::c_char;
use std::mem::MaybeUninit;

/// Words for a whole quarter turn, seen along the direction of work: "quarter turn clockwise", "flip over".
///
/// Errors: LW_NOT_KNOWN for other turns, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_turn_words(
    rotation: lw_angle,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let words = || {
        let rotation = bounds::ROTATION.angle(rotation.into())?;
        known(turn::words(rotation).map(str::to_owned), "words")
    };
    call(|| unsafe { fill_text(buf, cap, need, words) })
}

/// The turn on a clock seen along the direction of work, with the last bend at 12: "3:00".
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_turn_clock(
    rotation: lw_angle,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let clock = || Ok(turn::clock(bounds::ROTATION.angle(rotation.into())?));
    call(|| unsafe { fill_text(buf, cap, need, clock) })
}

/// What an inclinometer reads, positive upward, on the leg after a bend while the bend before it lies flat and goes to
/// the left (1) or the right (0), seen from above along the direction of work.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_turn_inclinometer(
    bend: lw_angle,
    rotation: lw_angle,
    is_last_to_left: i32,
    reading: Option<&mut MaybeUninit<lw_angle>>,
) -> lw_status {
    call(|| {
        let bend = bounds::ANGLE.angle(bend.into())?;
        let rotation = bounds::ROTATION.angle(rotation.into())?;
        put(reading, "reading", turn::inclinometer(bend, rotation, is_last_to_left != 0).into())
    })
}
