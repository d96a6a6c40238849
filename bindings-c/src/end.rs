//! What is at an end of a line: nut, flare, port.

use crate::argument::{given, given_mut, known, put, text};
use crate::call::{call, lw_status};
use crate::units::lw_length;
use linewright::line::ClampMargin;
use linewright::problem::{Part, Problem, Value};
use linewright::{Code, End, Error, Flare, LoadedPart, Nose, Nut, Port, Seat, Thread, bounds};
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

/// Records the length of a nut's thread, from under its head toward the nose, and of the unthreaded lead in front of it:
/// 0 mm where the thread runs to the nose.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also where both together are longer than the nut.
#[unsafe(no_mangle)]
pub extern "C" fn lw_nut_set_thread_length(
    nut: Option<&mut lw_nut>,
    thread_length: lw_length,
    lead: lw_length,
) -> lw_status {
    call(|| {
        let nut = given_mut(nut, "nut")?;
        nut.0 = nut.0.with_thread_length(thread_length.into(), lead.into())?;
        Ok(())
    })
}

/// The length of a nut's thread, and of the unthreaded lead in front of it.
///
/// Errors: LW_NOT_KNOWN where they were not measured.
#[unsafe(no_mangle)]
pub extern "C" fn lw_nut_thread_length(
    nut: Option<&lw_nut>,
    thread_length: Option<&mut MaybeUninit<lw_length>>,
    lead: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let nut = given(nut, "nut")?.0;
        let (length, lead) = (given_mut(thread_length, "thread_length")?, given_mut(lead, "lead")?);
        let known = known(nut.thread_length().zip(nut.lead()), "thread_length")?;
        length.write(known.0.into());
        lead.write(known.1.into());
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
/// ("inverted-45", "bubble", "cone-37" or "unknown"). Depths that were recorded before are forgotten.
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

/// Records the depths of the port of an end, both from the face that the nut's head comes to: to the end of the full
/// thread, and to the middle of the seat, where the flare closes. Call it after lw_end_set_port.
///
/// Errors: LW_FIELD_MISSING where no port is recorded, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_end_set_port_depths(
    end: Option<&mut lw_end>,
    thread: lw_length,
    seat: lw_length,
) -> lw_status {
    call(|| {
        let end = given_mut(end, "end")?;
        let port = end.0.port.clone().ok_or_else(|| {
            Problem::new(Code::FieldMissing, Part::Field("port".to_owned()))
                .need(Value::text("a port whose depths these are"))
        })?;
        end.0.port = Some(port.with_depths(thread.into(), seat.into())?);
        Ok(())
    })
}

/// The depths of the port of an end: to the end of its full thread, and to the middle of its seat.
///
/// Errors: LW_NOT_KNOWN where no port is recorded or its depths were not measured.
#[unsafe(no_mangle)]
pub extern "C" fn lw_end_port_depths(
    end: Option<&lw_end>,
    thread: Option<&mut MaybeUninit<lw_length>>,
    seat: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let port = given(end, "end")?.0.port.as_ref();
        let (thread, seat) = (given_mut(thread, "thread")?, given_mut(seat, "seat")?);
        let depths = known(port.and_then(|port| port.thread_depth.zip(port.seat_depth)), "depth")?;
        thread.write(depths.0.into());
        seat.write(depths.1.into());
        Ok(())
    })
}

fn margin(end: Option<&lw_end>, wall: lw_length) -> Result<Option<ClampMargin>, Error> {
    Ok(given(end, "end")?.0.clamp_margin(bounds::WALL.length(wall.into())?))
}

/// What is left of the nut's way when the flare is clamped, on a tube with this wall: between the nut's head and the
/// port's face, and of the port's full thread beyond the nut's first; and how much of the nut's thread is in the port's.
/// All three are the least, for the thinnest and the thickest flare of this wall; of bubbles up to 1.6 tubes wide, on tube up
/// to ten walls wide. Where one of the first two is not above what the depths can be off, the nut comes to its own end first: it feels tight
/// and clamps nothing.
///
/// Errors: LW_NOT_KNOWN where no port is recorded or a length or depth was not measured, LW_NOT_A_NUMBER,
/// LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_end_clamp_margin(
    end: Option<&lw_end>,
    wall: lw_length,
    under_head: Option<&mut MaybeUninit<lw_length>>,
    beyond_thread: Option<&mut MaybeUninit<lw_length>>,
    engaged: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let found = margin(end, wall)?;
        let under_head = given_mut(under_head, "under_head")?;
        let beyond_thread = given_mut(beyond_thread, "beyond_thread")?;
        let engaged = given_mut(engaged, "engaged")?;
        let found = known(found, "clamp_margin")?;
        under_head.write(found.under_head.into());
        beyond_thread.write(found.beyond_thread.into());
        engaged.write(found.engaged.into());
        Ok(())
    })
}

/// How many threads of this pitch show between the nut's head and the port's face when the flare is clamped, not
/// rounded; negative where the head comes to the face first. Two are usual, none is suspicious (common practice, no
/// source).
///
/// Errors: as lw_end_clamp_margin.
#[unsafe(no_mangle)]
pub extern "C" fn lw_end_threads_showing(
    end: Option<&lw_end>,
    wall: lw_length,
    pitch: lw_length,
    threads: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| {
        let (found, pitch) = (margin(end, wall)?, bounds::PITCH.length(pitch.into())?);
        let threads = given_mut(threads, "threads")?;
        threads.write(known(found, "clamp_margin")?.threads_showing(pitch));
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

/// Sets the diameter of a finished flare like that of this end, as measured on a test piece of its tube.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_end_set_flare_diameter(end: Option<&mut lw_end>, diameter: lw_length) -> lw_status {
    call(|| {
        let end = given_mut(end, "end")?;
        end.0.flare_diameter = Some(bounds::MEASURED_FLARE.length(diameter.into())?);
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
