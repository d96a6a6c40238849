//! What a test piece tells about a flare.

use crate::argument::put;
use crate::call::{call, lw_status};
use crate::problem::lw_problems;
use crate::units::lw_length;
use linewright::flare::{FlareTrial, slip};
use std::mem::MaybeUninit;

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
