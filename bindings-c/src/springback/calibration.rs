//! Trial bends as a workshop keeps them: which tube, which former, when, and which state of the record.

use super::{fill_trials, lw_springback, trials};
use crate::argument::{fill_text, given, given_mut, put, text};
use crate::call::{call, lw_status};
use crate::tube::lw_tube;
use crate::units::lw_angle;
use linewright::Error;
use linewright::springback::{Calibration, Date};
use std::ffi::c_char;
use std::mem::MaybeUninit;

/// Trial bends with the tube and the former they were made with, a date and a revision.
#[derive(Debug)]
pub struct lw_calibration(pub(crate) Calibration);

/// The record of n trial bends of a tube on a former, by its name in the workshop, made on a day as year-month-day
/// ("2026-05-14"); `revision` names this state of the record. Free it with lw_calibration_free.
///
/// Errors: LW_FIELD_MISSING for an empty former or revision, LW_UNREADABLE for the date, LW_TRIALS_UNUSABLE for a trial
/// that sprang forward, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_calibration_new(
    set: *const lw_angle,
    got: *const lw_angle,
    n: usize,
    tube: Option<&lw_tube>,
    former: *const c_char,
    date: *const c_char,
    revision: *const c_char,
    calibration: Option<&mut MaybeUninit<Box<lw_calibration>>>,
) -> lw_status {
    call(|| {
        let trials = unsafe { trials(set, got, n) }?;
        let tube = &given(tube, "tube")?.0;
        let (former, revision) = unsafe { (text(former, "former")?, text(revision, "revision")?) };
        let date = Date::read(unsafe { text(date, "date") }?)?;
        let made = Calibration::new(&trials, tube, former, date, revision)?;
        put(calibration, "calibration", Box::new(lw_calibration(made)))
    })
}

/// The springback of its trials, with this record in it. Free it with lw_springback_free.
///
/// Errors: as lw_springback_from_trials.
#[unsafe(no_mangle)]
pub extern "C" fn lw_calibration_springback(
    calibration: Option<&lw_calibration>,
    springback: Option<&mut MaybeUninit<Box<lw_springback>>>,
) -> lw_status {
    call(|| {
        let line = given(calibration, "calibration")?.0.springback()?;
        put(springback, "springback", Box::new(lw_springback(line)))
    })
}

/// The trials: fills `set` with the angles the tool was bent to and `got` with those that remained, in the order they were
/// given, each with room for cap angles. `need` is their number.
///
/// Errors: LW_SPACE_TOO_SMALL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_calibration_trials(
    calibration: Option<&lw_calibration>,
    set: *mut lw_angle,
    got: *mut lw_angle,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let trials = || Ok(given(calibration, "calibration")?.0.trials());
    call(|| unsafe { fill_trials(set, got, cap, need, trials) })
}

/// The tube they were made of: its size and its material. How tight its maker lets it be bent is no part of a record. Free
/// it with lw_tube_free.
#[unsafe(no_mangle)]
pub extern "C" fn lw_calibration_tube(
    calibration: Option<&lw_calibration>,
    tube: Option<&mut MaybeUninit<Box<lw_tube>>>,
) -> lw_status {
    call(|| {
        let of = given(calibration, "calibration")?.0.tube().clone();
        put(tube, "tube", Box::new(lw_tube(of)))
    })
}

/// Fills a buffer with a text of a record.
///
/// # Safety
/// `buf` is NULL or has room for `cap` bytes.
unsafe fn text_of(
    calibration: Option<&lw_calibration>,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
    text: impl FnOnce(&Calibration) -> String,
) -> lw_status {
    let found = || Ok::<_, Error>(text(&given(calibration, "calibration")?.0));
    call(|| unsafe { fill_text(buf, cap, need, found) })
}

/// The former they were made on, by its name in the workshop.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_calibration_former(
    calibration: Option<&lw_calibration>,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    unsafe { text_of(calibration, buf, cap, need, |record| record.former().to_owned()) }
}

/// The day they were made, as year-month-day ("2026-05-14").
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_calibration_date(
    calibration: Option<&lw_calibration>,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    unsafe { text_of(calibration, buf, cap, need, |record| record.date().to_string()) }
}

/// Name or number of this state of the record.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_calibration_revision(
    calibration: Option<&lw_calibration>,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    unsafe { text_of(calibration, buf, cap, need, |record| record.revision().to_owned()) }
}

/// The record in one line: tube, former, date, revision.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_calibration_text(
    calibration: Option<&lw_calibration>,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    unsafe { text_of(calibration, buf, cap, need, Calibration::to_string) }
}

/// Whether a tube is of the size and the material of the trials: 1 or 0.
#[unsafe(no_mangle)]
pub extern "C" fn lw_calibration_is_for(
    calibration: Option<&lw_calibration>,
    tube: Option<&lw_tube>,
    is_for: Option<&mut MaybeUninit<i32>>,
) -> lw_status {
    call(|| {
        let is = given(calibration, "calibration")?.0.is_for(&given(tube, "tube")?.0);
        put(is_for, "is_for", i32::from(is))
    })
}

/// Adds the record of its trials to a springback that was fitted to them in another way, such as with a prior.
///
/// Errors: LW_FIELDS_CONFLICT where the record has other trials.
#[unsafe(no_mangle)]
pub extern "C" fn lw_springback_set_calibration(
    springback: Option<&mut lw_springback>,
    calibration: Option<&lw_calibration>,
) -> lw_status {
    call(|| {
        let springback = given_mut(springback, "springback")?;
        let record = given(calibration, "calibration")?.0.clone();
        springback.0 = springback.0.clone().with_calibration(record)?;
        Ok(())
    })
}

/// The record of a springback's trials in one line, empty where there is none: tube, former, date, revision.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_springback_calibration_text(
    springback: Option<&lw_springback>,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe {
        fill_text(buf, cap, need, || {
            let record = given(springback, "springback")?.0.calibration();
            Ok(record.map(Calibration::to_string).unwrap_or_default())
        })
    })
}

/// Frees a record. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_calibration_free(calibration: Option<Box<lw_calibration>>) {
    drop(calibration);
}
