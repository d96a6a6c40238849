//! What is at an end of a line: nut, flare, port.

use crate::argument::{given, given_mut, put, text};
use crate::call::{call, lw_status};
use crate::thread::known_or_not;
use crate::units::lw_length;
use linewright::{End, Flare, Nose, Nut, Port, Seat};
use std::ffi::c_char;
use std::mem::MaybeUninit;

/// A nut.
#[derive(Debug)]
pub struct lw_nut(pub(crate) Nut);

/// What is at one end of a line.
#[derive(Debug)]
pub struct lw_end(pub(crate) End);

/// A nut by its thread ("M10x1", or "unknown"), length over all, bore, and nose ("coned", "flat", "sleeve" or
/// "unknown"). What is unknown stops the plan that needs it. Free it with lw_nut_free.
///
/// Errors: LW_THREAD_AMBIGUOUS, LW_HEX_NOT_THREAD, LW_UNREADABLE, LW_UNKNOWN_NAME for the nose, LW_NOT_A_NUMBER,
/// LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_nut_new(
    thread: *const c_char,
    length: lw_length,
    bore: lw_length,
    nose: *const c_char,
    nut: Option<&mut MaybeUninit<Box<lw_nut>>>,
) -> lw_status {
    call(|| {
        let thread = known_or_not(unsafe { text(thread, "thread") }?)?;
        let nose = Nose::from_name(unsafe { text(nose, "nose") }?)?;
        put(nut, "nut", Box::new(lw_nut(Nut::new(thread, length.into(), bore.into(), nose)?)))
    })
}

/// Frees a nut. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_nut_free(nut: Option<Box<lw_nut>>) {
    drop(nut);
}

/// An end by its nut and its flare: "double-45", "bubble" or "single-37". It has no port yet, which stops a plan.
/// Free it with lw_end_free.
///
/// Errors: LW_SINGLE_45_REFUSED, LW_UNKNOWN_NAME for the flare.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_end_new(
    nut: Option<&lw_nut>,
    flare: *const c_char,
    end: Option<&mut MaybeUninit<Box<lw_end>>>,
) -> lw_status {
    call(|| {
        let nut = given(nut, "nut")?.0;
        let flare = Flare::from_name(unsafe { text(flare, "flare") }?)?;
        put(end, "end", Box::new(lw_end(End { nut, flare, port: None })))
    })
}

/// Records the port that an end is screwed into: what it is on, its thread ("M10x1", or "unknown") and its seat
/// ("inverted-45", "bubble", "cone-37" or "unknown").
///
/// Errors: LW_THREAD_AMBIGUOUS, LW_HEX_NOT_THREAD, LW_UNREADABLE, LW_UNKNOWN_NAME for the seat.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_end_set_port(
    end: Option<&mut lw_end>,
    name: *const c_char,
    thread: *const c_char,
    seat: *const c_char,
) -> lw_status {
    call(|| {
        let end = given_mut(end, "end")?;
        let name = unsafe { text(name, "name") }?.to_owned();
        let thread = known_or_not(unsafe { text(thread, "thread") }?)?;
        let seat = Seat::from_name(unsafe { text(seat, "seat") }?)?;
        end.0.port = Some(Port { name, thread, seat });
        Ok(())
    })
}

/// Frees an end. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_end_free(end: Option<Box<lw_end>>) {
    drop(end);
}
