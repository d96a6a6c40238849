//! The steps of a plan, in working order.

use crate::argument::{fill_text, given, item, put};
use crate::call::{call, lw_status};
use crate::plan::lw_plan;
use linewright::Error;
use linewright::plan::Step;
use std::ffi::c_char;
use std::mem::MaybeUninit;

fn step(plan: Option<&lw_plan>, index: usize) -> Result<&Step, Error> {
    item(given(plan, "plan")?.0.steps(), index)
}

/// The number of steps. Their indices follow the order of work.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_step_count(
    plan: Option<&lw_plan>,
    count: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| put(count, "count", given(plan, "plan")?.0.steps().len()))
}

/// What a step is: "cut", "nut gate", "flare", "look gate", "mark", "bend", "trial fit", "trim" or "finish".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_plan_step_kind(
    plan: Option<&lw_plan>,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(step(plan, index)?.kind.name().to_owned())) })
}

/// What to do, in words and rounded figures.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_plan_step_text(
    plan: Option<&lw_plan>,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(step(plan, index)?.text.clone())) })
}

/// Whether a step is a gate: to be confirmed before the next one.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_step_is_gate(
    plan: Option<&lw_plan>,
    index: usize,
    is_gate: Option<&mut MaybeUninit<i32>>,
) -> lw_status {
    call(|| put(is_gate, "is_gate", i32::from(step(plan, index)?.kind.is_gate())))
}

/// Whether an open stop holds a step back.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_step_is_locked(
    plan: Option<&lw_plan>,
    index: usize,
    is_locked: Option<&mut MaybeUninit<i32>>,
) -> lw_status {
    call(|| put(is_locked, "is_locked", i32::from(step(plan, index)?.locked)))
}
