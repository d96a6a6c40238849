//! Limits of size of a thread.

use super::lw_thread;
use crate::argument::{fill_text, given, known, put, text};
use crate::call::{call, lw_status};
use crate::units::lw_length;
use linewright::thread::{Limits, ThreadSide};
use linewright::units::Length;
use std::ffi::c_char;
use std::mem::MaybeUninit;

/// Limits of one side of a thread. Those of a taper thread are at the end that enters first.
#[derive(Debug)]
pub struct lw_limits(Limits);

/// The limits of one side of a thread, "external" or "internal", by its class or, where it has none, the usual one. Free
/// them with lw_limits_free.
///
/// Errors: LW_UNKNOWN_NAME, LW_THREAD_SIDE where class or family belong to the other side, LW_OUT_OF_RANGE for a metric
/// diameter outside ISO 965-1.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_limits_new(
    thread: Option<&lw_thread>,
    side: *const c_char,
    limits: Option<&mut MaybeUninit<Box<lw_limits>>>,
) -> lw_status {
    call(|| {
        let side = ThreadSide::from_name(unsafe { text(side, "side") }?)?;
        put(limits, "limits", Box::new(lw_limits(given(thread, "thread")?.0.limits(side)?)))
    })
}

/// As lw_limits_new, for a Unified thread over another length of engagement than the usual one.
///
/// Errors: as lw_limits_new; LW_NOT_A_NUMBER, LW_NOT_KNOWN for another family.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_limits_new_over(
    thread: Option<&lw_thread>,
    side: *const c_char,
    engaged: lw_length,
    limits: Option<&mut MaybeUninit<Box<lw_limits>>>,
) -> lw_status {
    call(|| {
        let side = ThreadSide::from_name(unsafe { text(side, "side") }?)?;
        let found = given(thread, "thread")?.0.limits_over(side, engaged.into())?;
        put(limits, "limits", Box::new(lw_limits(found)))
    })
}

/// Writes a limit, or that there is none.
fn limit(
    limits: Option<&lw_limits>,
    diameter: Option<&mut MaybeUninit<lw_length>>,
    figure: impl FnOnce(&Limits) -> Option<Length>,
) -> lw_status {
    call(|| {
        let found = figure(&given(limits, "limits")?.0);
        put(diameter, "diameter", known(found, "diameter")?.into())
    })
}

/// The smallest major diameter.
///
/// Errors: LW_NOT_KNOWN where the standard sets no such limit.
#[unsafe(no_mangle)]
pub extern "C" fn lw_limits_major_min(
    limits: Option<&lw_limits>,
    diameter: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    limit(limits, diameter, |limits| limits.major.min)
}

/// As lw_limits_major_min, the largest.
///
/// Errors: LW_NOT_KNOWN where the standard sets no such limit.
#[unsafe(no_mangle)]
pub extern "C" fn lw_limits_major_max(
    limits: Option<&lw_limits>,
    diameter: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    limit(limits, diameter, |limits| limits.major.max)
}

/// The smallest pitch diameter.
///
/// Errors: LW_NOT_KNOWN where the standard sets no such limit.
#[unsafe(no_mangle)]
pub extern "C" fn lw_limits_pitch_diameter_min(
    limits: Option<&lw_limits>,
    diameter: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    limit(limits, diameter, |limits| limits.pitch_diameter.min)
}

/// As lw_limits_pitch_diameter_min, the largest.
///
/// Errors: LW_NOT_KNOWN where the standard sets no such limit.
#[unsafe(no_mangle)]
pub extern "C" fn lw_limits_pitch_diameter_max(
    limits: Option<&lw_limits>,
    diameter: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    limit(limits, diameter, |limits| limits.pitch_diameter.max)
}

/// The smallest minor diameter; outside it is the root.
///
/// Errors: LW_NOT_KNOWN where the standard sets no such limit.
#[unsafe(no_mangle)]
pub extern "C" fn lw_limits_minor_min(
    limits: Option<&lw_limits>,
    diameter: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    limit(limits, diameter, |limits| limits.minor.min)
}

/// As lw_limits_minor_min, the largest.
///
/// Errors: LW_NOT_KNOWN where the standard sets no such limit.
#[unsafe(no_mangle)]
pub extern "C" fn lw_limits_minor_max(
    limits: Option<&lw_limits>,
    diameter: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    limit(limits, diameter, |limits| limits.minor.max)
}

/// How far the largest external thread stays below the basic diameter.
///
/// Errors: LW_NOT_KNOWN for an internal thread.
#[unsafe(no_mangle)]
pub extern "C" fn lw_limits_allowance(
    limits: Option<&lw_limits>,
    diameter: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    limit(limits, diameter, Limits::allowance)
}

/// Largest minor diameter of the rounded root of an external Unified thread, for reference.
///
/// Errors: LW_NOT_KNOWN for others.
#[unsafe(no_mangle)]
pub extern "C" fn lw_limits_rounded_root(
    limits: Option<&lw_limits>,
    diameter: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    limit(limits, diameter, |limits| limits.rounded_root)
}

/// The side: "external" or "internal".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_limits_side(
    limits: Option<&lw_limits>,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(given(limits, "limits")?.0.side.name().to_owned())) })
}

/// Whether nobody named the class, so that the usual one was taken: 1, or 0.
#[unsafe(no_mangle)]
pub extern "C" fn lw_limits_is_class_assumed(
    limits: Option<&lw_limits>,
    is_assumed: Option<&mut MaybeUninit<i32>>,
) -> lw_status {
    call(|| put(is_assumed, "is_assumed", i32::from(given(limits, "limits")?.0.is_class_assumed)))
}

/// The class that the limits belong to, named or taken.
///
/// Errors: LW_NOT_KNOWN where the family has no classes on that side.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_limits_class(
    limits: Option<&lw_limits>,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let found = || known(given(limits, "limits")?.0.class.map(|class| class.to_string()), "class");
    call(|| unsafe { fill_text(buf, cap, need, found) })
}

/// How the numbers were checked, such as "seen" or "computed".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_limits_checked(
    limits: Option<&lw_limits>,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let found = || Ok(given(limits, "limits")?.0.checked.name().to_owned());
    call(|| unsafe { fill_text(buf, cap, need, found) })
}

/// Where the numbers come from, and how that was checked.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_limits_source(
    limits: Option<&lw_limits>,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let found = || Ok(given(limits, "limits")?.0.source().to_string());
    call(|| unsafe { fill_text(buf, cap, need, found) })
}

/// Frees limits. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_limits_free(limits: Option<Box<lw_limits>>) {
    drop(limits);
}
