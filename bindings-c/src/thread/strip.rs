//! What would have to be sheared off to pull a thread out, compared with the right one. No load follows from it.

use super::lw_thread;
use crate::argument::{given, given_mut, put};
use crate::call::{call, lw_status};
use crate::units::lw_length;
use linewright::thread::Stripping;
use linewright::units::to_mm2;
use std::mem::MaybeUninit;

/// Shear areas of a pair over an engaged length.
#[derive(Debug)]
pub struct lw_stripping(Stripping);

/// The shear areas of a male in a female over a wanted engagement. Free it with lw_stripping_free.
///
/// Errors: LW_THREAD_SIDE, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, LW_NOT_KNOWN where one thread is tapered or the female takes a
/// tapered male.
#[unsafe(no_mangle)]
pub extern "C" fn lw_stripping_new(
    male: Option<&lw_thread>,
    female: Option<&lw_thread>,
    wanted: lw_length,
    stripping: Option<&mut MaybeUninit<Box<lw_stripping>>>,
) -> lw_status {
    call(|| {
        let found = Stripping::new(&given(male, "male")?.0, &given(female, "female")?.0, wanted.into())?;
        put(stripping, "stripping", Box::new(lw_stripping(found)))
    })
}

/// The length that is engaged: the wanted one, or what is reached before the pair binds.
#[unsafe(no_mangle)]
pub extern "C" fn lw_stripping_engaged(
    stripping: Option<&lw_stripping>,
    engaged: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(engaged, "engaged", given(stripping, "stripping")?.0.engaged.into()))
}

/// Writes a pair of numbers, worst and best.
fn pair(
    stripping: Option<&lw_stripping>,
    worst: Option<&mut MaybeUninit<f64>>,
    best: Option<&mut MaybeUninit<f64>>,
    figures: impl FnOnce(&Stripping) -> [f64; 2],
) -> lw_status {
    call(|| {
        let [least, most] = figures(&given(stripping, "stripping")?.0);
        let (worst, best) = (given_mut(worst, "worst")?, given_mut(best, "best")?);
        worst.write(least);
        best.write(most);
        Ok(())
    })
}

/// Area of the male's ridge in mm2, at worst and at best.
#[unsafe(no_mangle)]
pub extern "C" fn lw_stripping_external_mm2(
    stripping: Option<&lw_stripping>,
    worst: Option<&mut MaybeUninit<f64>>,
    best: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    pair(stripping, worst, best, |found| found.external.map(to_mm2))
}

/// Area of the female's ridge in mm2, at worst and at best.
#[unsafe(no_mangle)]
pub extern "C" fn lw_stripping_internal_mm2(
    stripping: Option<&lw_stripping>,
    worst: Option<&mut MaybeUninit<f64>>,
    best: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    pair(stripping, worst, best, |found| found.internal.map(to_mm2))
}

/// What holds of the right male's thread at the wanted length, at worst and at best, a plain ratio: the smaller area over
/// the right one's, but no more than the overlap over the right one's.
#[unsafe(no_mangle)]
pub extern "C" fn lw_stripping_share(
    stripping: Option<&lw_stripping>,
    worst: Option<&mut MaybeUninit<f64>>,
    best: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    pair(stripping, worst, best, |found| found.share.map(|share| share.value))
}

/// Frees shear areas. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_stripping_free(stripping: Option<Box<lw_stripping>>) {
    drop(stripping);
}
