//! What a measured thread may be.

use super::{among_or_all, lw_thread};
use crate::argument::{fill_text, given, given_mut, item, known, put, text};
use crate::call::{call, lw_status};
use crate::units::lw_length;
use linewright::Error;
use linewright::thread::{Candidate, Identification, Measured, ThreadSide, identify, separate};
use linewright::units::ratio;
use std::ffi::c_char;
use std::mem::MaybeUninit;

/// What was measured of a thread.
#[derive(Debug)]
pub struct lw_measured(Measured);

/// What a measured thread may be.
#[derive(Debug)]
pub struct lw_identification(Identification);

/// Nothing measured yet, of an "external" or "internal" thread. Free it with lw_measured_free.
///
/// Errors: LW_UNKNOWN_NAME.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_measured_new(
    side: *const c_char,
    measured: Option<&mut MaybeUninit<Box<lw_measured>>>,
) -> lw_status {
    call(|| {
        let side = ThreadSide::from_name(unsafe { text(side, "side") }?)?;
        put(measured, "measured", Box::new(lw_measured(Measured::new(side))))
    })
}

/// Changes what was measured.
fn change(
    measured: Option<&mut lw_measured>,
    with: impl FnOnce(Measured) -> Result<Measured, Error>,
) -> lw_status {
    call(|| {
        let measured = given_mut(measured, "measured")?;
        measured.0 = with(measured.0.clone())?;
        Ok(())
    })
}

/// Records the diameter over the crests, major outside and minor inside, and how far the reading may be off either way.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_measured_set_diameter(
    measured: Option<&mut lw_measured>,
    diameter: lw_length,
    plus_minus: lw_length,
) -> lw_status {
    change(measured, |measured| measured.with_diameter(diameter.into(), plus_minus.into()))
}

/// Records a length over a count of pitches, such as ten, and how far the reading may be off either way.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_measured_set_pitches(
    measured: Option<&mut lw_measured>,
    count: usize,
    length: lw_length,
    plus_minus: lw_length,
) -> lw_status {
    change(measured, |measured| measured.with_pitches(count, length.into(), plus_minus.into()))
}

/// Records threads counted per inch, and how far the count may be off either way; 0 for half a thread over 8 mm, which is
/// 1.6.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_measured_set_per_inch(
    measured: Option<&mut lw_measured>,
    per_inch: f64,
    plus_minus: f64,
) -> lw_status {
    let error = (plus_minus != 0.0).then(|| ratio(plus_minus));
    change(measured, |measured| measured.with_per_inch(ratio(per_inch), error))
}

/// Records the most that wear can have taken; 0.1 mm where nobody says.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_measured_set_wear(measured: Option<&mut lw_measured>, most: lw_length) -> lw_status {
    change(measured, |measured| measured.with_wear(most.into()))
}

/// Frees what was measured. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_measured_free(measured: Option<Box<lw_measured>>) {
    drop(measured);
}

/// Compares what was measured with n threads, or with the whole catalogue where n is 0. Free it with
/// lw_identification_free.
///
/// Errors: LW_FIELD_MISSING where nothing was measured.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_identify(
    measured: Option<&lw_measured>,
    threads: *const Option<&lw_thread>,
    n: usize,
    identification: Option<&mut MaybeUninit<Box<lw_identification>>>,
) -> lw_status {
    call(|| {
        let measured = &given(measured, "measured")?.0;
        let among = unsafe { among_or_all(threads, n) }?;
        let found = identify(measured, &among)?;
        put(identification, "identification", Box::new(lw_identification(found)))
    })
}

/// The number of threads that the readings allow.
#[unsafe(no_mangle)]
pub extern "C" fn lw_identification_count(
    identification: Option<&lw_identification>,
    count: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| put(count, "count", given(identification, "identification")?.0.candidates.len()))
}

fn candidate(identification: Option<&lw_identification>, index: usize) -> Result<&Candidate, Error> {
    item(&given(identification, "identification")?.0.candidates, index)
}

/// The designation of a candidate; the likeliest is the first.
///
/// Errors: LW_INDEX_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_identification_thread(
    identification: Option<&lw_identification>,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let designation = || Ok(candidate(identification, index)?.thread.to_string());
    call(|| unsafe { fill_text(buf, cap, need, designation) })
}

/// A candidate's share of the likelihood, a plain ratio: the chance that it is the one, if the thread is in the list.
///
/// Errors: LW_INDEX_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_identification_share(
    identification: Option<&lw_identification>,
    index: usize,
    share: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| put(share, "share", candidate(identification, index)?.share.value))
}

/// What ten pitches of a candidate measure.
///
/// Errors: LW_INDEX_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_identification_ten_pitches(
    identification: Option<&lw_identification>,
    index: usize,
    ten_pitches: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(ten_pitches, "ten_pitches", candidate(identification, index)?.ten_pitches.into()))
}

/// The diameters that a part of a candidate can have, wear included.
///
/// Errors: LW_INDEX_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_identification_diameter(
    identification: Option<&lw_identification>,
    index: usize,
    least: Option<&mut MaybeUninit<lw_length>>,
    most: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let span = candidate(identification, index)?.diameter;
        let (low, high) = (known(span.min, "least")?, known(span.max, "most")?);
        let (least, most) = (given_mut(least, "least")?, given_mut(most, "most")?);
        least.write(low.into());
        most.write(high.into());
        Ok(())
    })
}

/// The thread of the list that comes nearest, where none is allowed.
///
/// Errors: LW_NOT_KNOWN where there are candidates, or no list.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_identification_nearest(
    identification: Option<&lw_identification>,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let found = || {
        known(given(identification, "identification")?.0.nearest.map(|thread| thread.to_string()), "nearest")
    };
    call(|| unsafe { fill_text(buf, cap, need, found) })
}

/// The one further measurement that tells the leading two apart: "hand", "ten pitches", "diameter", "taper over 5 mm" or "flank angle".
///
/// Errors: LW_NOT_KNOWN where there are no two, or none does.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_identification_next(
    identification: Option<&lw_identification>,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let found = || {
        known(
            given(identification, "identification")?.0.next().map(|way| way.measure.name().to_owned()),
            "next",
        )
    };
    call(|| unsafe { fill_text(buf, cap, need, found) })
}

/// What to do next, in words.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_identification_advice(
    identification: Option<&lw_identification>,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let found = || Ok(given(identification, "identification")?.0.advice());
    call(|| unsafe { fill_text(buf, cap, need, found) })
}

/// How two threads are told apart, in words; the first measurement that does it. side is "external" or "internal".
///
/// Errors: LW_UNKNOWN_NAME, LW_THREAD_SIDE, LW_OUT_OF_RANGE, LW_NOT_KNOWN where none does.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_thread_separate(
    thread: Option<&lw_thread>,
    other: Option<&lw_thread>,
    side: *const c_char,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let words = || {
        let side = ThreadSide::from_name(unsafe { text(side, "side") }?)?;
        let (first, second) = (given(thread, "thread")?.0, given(other, "other")?.0);
        let ways = separate(&first, &second, side)?;
        Ok(known(ways.iter().find(|way| way.separates), "measure")?.words(first, second))
    };
    call(|| unsafe { fill_text(buf, cap, need, words) })
}

/// Frees an identification. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_identification_free(identification: Option<Box<lw_identification>>) {
    drop(identification);
}
