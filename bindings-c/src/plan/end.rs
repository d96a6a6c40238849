//! The two ends of a plan: the straight each has and needs.

use crate::argument::{choice, fill_text, given, given_mut, item, known, put, side};
use crate::call::{call, lw_status};
use crate::line::lw_side;
use crate::plan::lw_plan;
use crate::units::lw_length;
use linewright::Error;
use linewright::plan::{EndPlan, Minimum, MinimumKind, Term};
use std::ffi::c_char;
use std::mem::MaybeUninit;

/// What an end straight must have room for: LW_FLARE_AFTER, LW_FLARE_BEFORE or LW_ASSEMBLED.
pub type lw_minimum = i32;

/// Flaring after bending: the clamp, what stands out of it, the nut behind it, and room to work.
pub const LW_FLARE_AFTER: lw_minimum = 0;

/// Flaring before bending: the nut lies between flare and former, and the former must hold.
pub const LW_FLARE_BEFORE: lw_minimum = 1;

/// Assembly: the nut seats and can back off.
pub const LW_ASSEMBLED: lw_minimum = 2;

fn end(plan: Option<&lw_plan>, number: lw_side) -> Result<&EndPlan, Error> {
    Ok(given(plan, "plan")?.0.end(side(number, "side")?))
}

fn kind(number: lw_minimum) -> Result<MinimumKind, Error> {
    let choices = [
        (LW_FLARE_AFTER, "LW_FLARE_AFTER", MinimumKind::FlareAfter),
        (LW_FLARE_BEFORE, "LW_FLARE_BEFORE", MinimumKind::FlareBefore),
        (LW_ASSEMBLED, "LW_ASSEMBLED", MinimumKind::Assembled),
    ];
    choice(number, "kind", &choices)
}

fn minimum(plan: Option<&lw_plan>, number: lw_side, which: lw_minimum) -> Result<&Minimum, Error> {
    let kind = kind(which)?;
    known(end(plan, number)?.minima().iter().find(|minimum| minimum.kind == kind), "end_minimum")
}

/// The terms of a minimum; none while it is not known.
fn terms(plan: Option<&lw_plan>, number: lw_side, which: lw_minimum) -> Result<&[Term], Error> {
    Ok(&minimum(plan, number, which)?.terms)
}

/// The finished straight at an end.
///
/// Errors: LW_OUT_OF_RANGE for a side that is not LW_A or LW_B.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_end_straight(
    plan: Option<&lw_plan>,
    side: lw_side,
    straight: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(straight, "straight", end(plan, side)?.straight().into()))
}

/// When an end is flared: "before bending", "after bending", or "neither" where the straight has room for neither.
///
/// Errors: LW_OUT_OF_RANGE for a side that is not LW_A or LW_B.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_plan_end_order(
    plan: Option<&lw_plan>,
    side: lw_side,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(end(plan, side)?.order().name().to_owned())) })
}

/// The straight that an end needs for one purpose, and how far it falls short of that: the smallest move of the bend
/// away from the end that cures it, 0 where nothing is short.
///
/// Errors: LW_NOT_KNOWN while the bench lacks the flare tool, LW_OUT_OF_RANGE for a side or a kind that is none.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_end_minimum(
    plan: Option<&lw_plan>,
    side: lw_side,
    kind: lw_minimum,
    needed: Option<&mut MaybeUninit<lw_length>>,
    shortfall: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let minimum = minimum(plan, side, kind)?;
        let (needed, shortfall) = (given_mut(needed, "needed")?, given_mut(shortfall, "shortfall")?);
        let (need, short) = known(minimum.need.zip(minimum.shortfall), "end_minimum")?;
        needed.write(need.into());
        shortfall.write(short.into());
        Ok(())
    })
}

/// The number of terms that a minimum is the sum of; 0 while it is not known.
///
/// Errors: LW_OUT_OF_RANGE for a side or a kind that is none.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_end_minimum_term_count(
    plan: Option<&lw_plan>,
    side: lw_side,
    kind: lw_minimum,
    count: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| put(count, "count", terms(plan, side, kind)?.len()))
}

/// What a term of a minimum is, in words.
///
/// Errors: LW_OUT_OF_RANGE for a side or a kind that is none.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_plan_end_minimum_term_text(
    plan: Option<&lw_plan>,
    side: lw_side,
    kind: lw_minimum,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(item(terms(plan, side, kind)?, index)?.what.clone())) })
}

/// How much a term adds to a minimum; it may be negative.
///
/// Errors: LW_OUT_OF_RANGE for a side or a kind that is none.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_end_minimum_term_length(
    plan: Option<&lw_plan>,
    side: lw_side,
    kind: lw_minimum,
    index: usize,
    length: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(length, "length", item(terms(plan, side, kind)?, index)?.length.into()))
}
