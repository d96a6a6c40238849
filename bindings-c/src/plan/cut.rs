//! The cut length and its terms.

use crate::argument::{fill_text, given, given_mut, item, known, put};
use crate::call::{call, lw_status};
use crate::plan::lw_plan;
use crate::units::lw_length;
use linewright::plan::Term;
use std::ffi::c_char;
use std::mem::MaybeUninit;

/// The terms of the cut length; none while it is not known.
fn terms(plan: &lw_plan) -> &[Term] {
    plan.0.cut().map_or(&[], |cut| cut.terms())
}

/// How long the tube is cut, not rounded: the sum of the terms.
///
/// Errors: LW_NOT_KNOWN while what a flare takes of the tube is not known.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_cut_length(
    plan: Option<&lw_plan>,
    length: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let value = given(plan, "plan")?.0.cut();
        let length = given_mut(length, "length")?;
        length.write(known(value, "cut_length")?.length().into());
        Ok(())
    })
}

/// The number of terms of the cut length; 0 while it is not known.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_cut_term_count(
    plan: Option<&lw_plan>,
    count: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| put(count, "count", terms(given(plan, "plan")?).len()))
}

/// What a term of the cut length is, in words.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_plan_cut_term_text(
    plan: Option<&lw_plan>,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe {
        fill_text(buf, cap, need, || Ok(item(terms(given(plan, "plan")?), index)?.what.clone()))
    })
}

/// How much a term adds to the cut length.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_cut_term_length(
    plan: Option<&lw_plan>,
    index: usize,
    length: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(length, "length", item(terms(given(plan, "plan")?), index)?.length.into()))
}
