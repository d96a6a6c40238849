//! Springback: how much further a bend must be taken so that the wanted angle remains.

pub mod calibration;
pub mod fit;
pub mod mechanics;

use crate::argument::{ArrayNames, fill, fill_text, given, given_mut, known, list, put, room, text};
use crate::call::{call, lw_status};
use crate::springback::calibration::lw_calibration;
use crate::units::lw_angle;
use linewright::springback::Basis;
use linewright::units::{Angle, ratio};
use linewright::{Error, Springback, Trial};
use std::ffi::c_char;
use std::mem::MaybeUninit;

/// The springback of one tube on one former.
#[derive(Debug)]
pub struct lw_springback(pub(crate) Springback);

/// Trial bends from two arrays.
///
/// # Safety
/// Each pointer is NULL or points to n angles that stay as they are.
unsafe fn trials(set: *const lw_angle, got: *const lw_angle, n: usize) -> Result<Vec<Trial>, Error> {
    let (set, got) = unsafe { (list(set, n, "set")?, list(got, n, "got")?) };
    Ok(set.iter().zip(got).map(|(set, got)| Trial { set: (*set).into(), got: (*got).into() }).collect())
}

/// Fills `set` and `got` with trial bends, both or neither.
///
/// # Safety
/// Each array is NULL or has room for `cap` angles.
unsafe fn fill_trials<'a>(
    set: *mut lw_angle,
    got: *mut lw_angle,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
    trials: impl FnOnce() -> Result<&'a [Trial], Error>,
) -> Result<(), Error> {
    let need = given_mut(need, "need")?;
    need.write(0);
    room(set, cap, "set")?;
    room(got, cap, "got")?;
    let trials = trials()?;
    let angles = |of: fn(&Trial) -> Angle| Ok(trials.iter().map(|trial| of(trial).into()).collect());
    let names = |buf| ArrayNames { buf, need: "need" };
    unsafe {
        fill(&names("set"), set, cap, Some(need), || angles(|trial| trial.set))?;
        fill(&names("got"), got, cap, Some(&mut MaybeUninit::uninit()), || angles(|trial| trial.got))
    }
}

/// A springback whose two parts are known: springback = constant + proportional x set angle, where proportional is a
/// plain ratio. Free it with lw_springback_free.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_springback_new(
    constant: lw_angle,
    proportional: f64,
    springback: Option<&mut MaybeUninit<Box<lw_springback>>>,
) -> lw_status {
    call(|| {
        let value = Springback::new(constant.into(), ratio(proportional))?;
        put(springback, "springback", Box::new(lw_springback(value)))
    })
}

/// A springback from n trial bends: for each the tool was bent to an angle of `set`, and the one of `got` remained. One
/// trial, or trials at one angle only, give a springback in proportion to the angle, and a plan then says that it is
/// weak. Free it with lw_springback_free.
///
/// Errors: LW_TRIALS_UNUSABLE, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_springback_from_trials(
    set: *const lw_angle,
    got: *const lw_angle,
    n: usize,
    springback: Option<&mut MaybeUninit<Box<lw_springback>>>,
) -> lw_status {
    call(|| {
        let trials = unsafe { trials(set, got, n) }?;
        put(springback, "springback", Box::new(lw_springback(Springback::from_trials(&trials)?)))
    })
}

/// A springback read back from where it was kept: its two parts, what it rests on by the name that lw_springback_basis gives,
/// and the n trials it was fitted to, of lw_springback_trials. Free it with lw_springback_free.
///
/// Errors: LW_UNKNOWN_NAME, LW_FIELDS_CONFLICT for trials where none belong, or none where they do, LW_TRIALS_UNUSABLE,
/// LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_springback_kept(
    constant: lw_angle,
    proportional: f64,
    basis: *const c_char,
    set: *const lw_angle,
    got: *const lw_angle,
    n: usize,
    springback: Option<&mut MaybeUninit<Box<lw_springback>>>,
) -> lw_status {
    call(|| {
        let (basis, trials) = unsafe { (text(basis, "basis")?, trials(set, got, n)?) };
        let basis = Basis::from_name(basis)?;
        let kept = Springback::kept(constant.into(), ratio(proportional), basis, &trials)?;
        put(springback, "springback", Box::new(lw_springback(kept)))
    })
}

/// The trials it was fitted to: fills `set` and `got`, each with room for cap angles; none for one without trials.
///
/// Errors: LW_SPACE_TOO_SMALL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_springback_trials(
    springback: Option<&lw_springback>,
    set: *mut lw_angle,
    got: *mut lw_angle,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let trials = || Ok(given(springback, "springback")?.0.trials());
    call(|| unsafe { fill_trials(set, got, cap, need, trials) })
}

/// The record of the trials it was fitted to. Free it with lw_calibration_free.
///
/// Errors: LW_NOT_KNOWN where it has none.
#[unsafe(no_mangle)]
pub extern "C" fn lw_springback_calibration(
    springback: Option<&lw_springback>,
    calibration: Option<&mut MaybeUninit<Box<lw_calibration>>>,
) -> lw_status {
    call(|| {
        let record = given(springback, "springback")?.0.calibration();
        let output = given_mut(calibration, "calibration")?;
        output.write(Box::new(lw_calibration(known(record, "calibration")?.clone())));
        Ok(())
    })
}

/// Whether it rests on trials at one angle only, with no belief beside them.
#[unsafe(no_mangle)]
pub extern "C" fn lw_springback_is_weak(
    springback: Option<&lw_springback>,
    is_weak: Option<&mut MaybeUninit<i32>>,
) -> lw_status {
    call(|| put(is_weak, "is_weak", i32::from(given(springback, "springback")?.0.is_weak())))
}

/// The angle to bend to so that the wanted angle remains.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_springback_setting(
    springback: Option<&lw_springback>,
    wanted: lw_angle,
    setting: Option<&mut MaybeUninit<lw_angle>>,
) -> lw_status {
    call(|| put(setting, "setting", given(springback, "springback")?.0.setting(wanted.into())?.into()))
}

/// The part of the springback that does not depend on the angle.
#[unsafe(no_mangle)]
pub extern "C" fn lw_springback_constant(
    springback: Option<&lw_springback>,
    constant: Option<&mut MaybeUninit<lw_angle>>,
) -> lw_status {
    call(|| put(constant, "constant", given(springback, "springback")?.0.constant().into()))
}

/// The part of the springback in proportion to the set angle, a plain ratio.
#[unsafe(no_mangle)]
pub extern "C" fn lw_springback_proportional(
    springback: Option<&lw_springback>,
    proportional: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| put(proportional, "proportional", given(springback, "springback")?.0.proportional().value))
}

/// What it rests on: "given", "trials", "mechanics", "prior" or "blend".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_springback_basis(
    springback: Option<&lw_springback>,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe {
        fill_text(buf, cap, need, || Ok(given(springback, "springback")?.0.basis().name().to_owned()))
    })
}

/// Frees a springback. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_springback_free(springback: Option<Box<lw_springback>>) {
    drop(springback);
}
