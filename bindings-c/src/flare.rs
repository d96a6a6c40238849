//! Flares: what a test piece tells, how thick they are; what they take of the tube, public figures and hose ends.

pub mod allowance;

pub mod sealing;

pub mod standards;

use crate::argument::{fill_text, put, text};
use crate::call::{call, lw_status};
use crate::problem::lw_problems;
use crate::units::lw_length;
use linewright::flare::{FlareTrial, slip};
use linewright::{Error, Flare, Nose, Seat, bounds};
use std::ffi::c_char;
use std::mem::MaybeUninit;

/// The form of a flare in an argument.
///
/// # Safety
/// `name` is NULL or points to a text that ends in NUL.
unsafe fn named(name: *const c_char) -> Result<Flare, Error> {
    Flare::from_name(unsafe { text(name, "flare") }?)
}

/// How much shorter a flare makes the tube: a piece measured over all before and after one of its ends was flared.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE where it grew or shortened more than any flare does.
#[unsafe(no_mangle)]
pub extern "C" fn lw_flare_net_shortening(
    before: lw_length,
    after: lw_length,
    net: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(net, "net", FlareTrial::new(before.into(), after.into())?.net_shortening().into()))
}

/// Compares what stands out of the clamp after the first stroke with what should: a list with LW_FLARE_SLIPPED where the
/// tube slipped back, otherwise empty. Free it with lw_problems_free.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_flare_slip(
    expected: lw_length,
    measured: lw_length,
    problems: Option<&mut MaybeUninit<Box<lw_problems>>>,
) -> lw_status {
    call(|| {
        let found = slip(expected.into(), measured.into())?;
        put(problems, "problems", lw_problems::of(found.into_iter().collect()))
    })
}

/// The least that a finished flare ("double-45", "bubble" or "single-37") puts between its nut and its seat, along the
/// axis, on a tube with this wall.
///
/// Errors: LW_SINGLE_45_REFUSED, LW_UNKNOWN_NAME for the flare, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_flare_thickness_at_least(
    flare: *const c_char,
    wall: lw_length,
    thickness: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let flare = unsafe { named(flare) }?;
        put(thickness, "thickness", flare.thickness_at_least(bounds::WALL.length(wall.into())?).into())
    })
}

/// Strokes of the tool that a flare takes: two for "double-45", one for the others (common practice, no source).
///
/// Errors: LW_SINGLE_45_REFUSED, LW_UNKNOWN_NAME for the flare.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_flare_strokes(
    flare: *const c_char,
    strokes: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| put(strokes, "strokes", unsafe { named(flare) }?.strokes()))
}

/// Whether a flare belongs to a seat ("inverted-45", "bubble", "cone-37" or "unknown"): "fits", "does not fit" or "not
/// known", which never counts as yes.
///
/// Errors: LW_SINGLE_45_REFUSED, LW_UNKNOWN_NAME.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_flare_fits_seat(
    flare: *const c_char,
    seat: *const c_char,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let fit = || {
        let seat = Seat::from_name(unsafe { text(seat, "seat") }?)?;
        Ok(unsafe { named(flare) }?.fits_seat(seat).name().to_owned())
    };
    call(|| unsafe { fill_text(buf, cap, need, fit) })
}

/// Whether a nut's nose ("coned", "flat", "sleeve" or "unknown") belongs to a flare: "fits", "does not fit" or "not known",
/// which never counts as yes (common practice, no source).
///
/// Errors: LW_SINGLE_45_REFUSED, LW_UNKNOWN_NAME.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_flare_fits_nose(
    flare: *const c_char,
    nose: *const c_char,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let fit = || {
        let nose = Nose::from_name(unsafe { text(nose, "nose") }?)?;
        Ok(unsafe { named(flare) }?.fits_nose(nose).name().to_owned())
    };
    call(|| unsafe { fill_text(buf, cap, need, fit) })
}
