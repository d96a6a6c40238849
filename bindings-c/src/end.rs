//! What is at an end of a line: nut, flare, port.

use crate::argument::{given, given_mut, known, put, text};
use crate::call::{call, lw_status};
use crate::units::lw_length;
use linewright::{End, Flare, LoadedPart, Nose, Nut, Port, Seat, Thread, bounds};
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
        let thread = Thread::read_or_unknown(unsafe { text(thread, "thread") }?)?;
        let nose = Nose::from_name(unsafe { text(nose, "nose") }?)?;
        put(nut, "nut", Box::new(lw_nut(Nut::new(thread, length.into(), bore.into(), nose)?)))
    })
}

/// Records the hexagon of a nut across its flats. It says nothing about the thread.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_nut_set_across_flats(nut: Option<&mut lw_nut>, across_flats: lw_length) -> lw_status {
    call(|| {
        let nut = given_mut(nut, "nut")?;
        nut.0 = nut.0.with_across_flats(across_flats.into())?;
        Ok(())
    })
}

/// The hexagon across its corners, sharp ones: the real nut is no larger.
///
/// Errors: LW_NOT_KNOWN where its flats were not measured.
#[unsafe(no_mangle)]
pub extern "C" fn lw_nut_across_corners(
    nut: Option<&lw_nut>,
    across_corners: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let value = given(nut, "nut")?.0.across_corners();
        let across_corners = given_mut(across_corners, "across_corners")?;
        across_corners.write(known(value, "across_corners")?.into());
        Ok(())
    })
}

/// The smallest centerline radius that a nut slides along on tube of diameter od: rigid geometry of a straight bore
/// over a round arc.
///
/// Errors: LW_NOT_KNOWN where the nut does not pass the tube at all, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_nut_tightest_curve(
    nut: Option<&lw_nut>,
    od: lw_length,
    radius: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let value = given(nut, "nut")?.0.tightest_curve(bounds::OD.length(od.into())?);
        let radius = given_mut(radius, "radius")?;
        radius.write(known(value, "radius")?.into());
        Ok(())
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
        put(end, "end", Box::new(lw_end(End::new(nut, flare))))
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
        let name = unsafe { text(name, "name") }?;
        let thread = Thread::read_or_unknown(unsafe { text(thread, "thread") }?)?;
        let seat = Seat::from_name(unsafe { text(seat, "seat") }?)?;
        end.0.port = Some(Port::new(name, thread, seat));
        Ok(())
    })
}

/// Adds what goes onto the tube from this end before the nut; call it in that order. facing says which way round, and
/// is empty where that does not matter.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_end_add_loaded(
    end: Option<&mut lw_end>,
    name: *const c_char,
    facing: *const c_char,
) -> lw_status {
    call(|| {
        let end = given_mut(end, "end")?;
        let (name, facing) = unsafe { (text(name, "name")?, text(facing, "facing")?) };
        end.0.loaded.push(LoadedPart::new(name, facing));
        Ok(())
    })
}

/// Adds a hole that this end goes through when the line is fitted.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_end_add_hole(end: Option<&mut lw_end>, diameter: lw_length) -> lw_status {
    call(|| {
        let end = given_mut(end, "end")?;
        end.0.holes.push(bounds::HOLE.length(diameter.into())?);
        Ok(())
    })
}

/// Says whether this end is flared on the vehicle, after it went through its holes: 1, or 0.
#[unsafe(no_mangle)]
pub extern "C" fn lw_end_set_flared_in_place(end: Option<&mut lw_end>, is_in_place: i32) -> lw_status {
    call(|| {
        given_mut(end, "end")?.0.flared_in_place = is_in_place != 0;
        Ok(())
    })
}

/// Frees an end. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_end_free(end: Option<Box<lw_end>>) {
    drop(end);
}
