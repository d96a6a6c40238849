//! What must be on the tube before each end is closed, in the order in which it goes on.

use crate::argument::{fill_text, given, item, put};
use crate::call::{call, lw_status};
use crate::line::lw_side;
use crate::plan::{lw_plan, side_number};
use linewright::Error;
use linewright::plan::Loaded;
use std::ffi::c_char;
use std::mem::MaybeUninit;

fn loaded(plan: Option<&lw_plan>, index: usize) -> Result<Loaded, Error> {
    item(&given(plan, "plan")?.0.loading(), index).cloned()
}

/// The number of things to be loaded.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_loading_count(
    plan: Option<&lw_plan>,
    count: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| put(count, "count", given(plan, "plan")?.0.loading().len()))
}

/// The end that a thing is loaded from: LW_A or LW_B.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_loading_side(
    plan: Option<&lw_plan>,
    index: usize,
    side: Option<&mut MaybeUninit<lw_side>>,
) -> lw_status {
    call(|| put(side, "side", side_number(loaded(plan, index)?.side)))
}

/// What is loaded.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_plan_loading_what(
    plan: Option<&lw_plan>,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(loaded(plan, index)?.what)) })
}

/// Which way round it goes on; empty where that does not matter.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_plan_loading_facing(
    plan: Option<&lw_plan>,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(loaded(plan, index)?.facing)) })
}

/// Whether the length forgives an error: an end can still be trimmed after the trial fit.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_is_forgiving(
    plan: Option<&lw_plan>,
    is_forgiving: Option<&mut MaybeUninit<i32>>,
) -> lw_status {
    call(|| put(is_forgiving, "is_forgiving", i32::from(given(plan, "plan")?.0.is_forgiving())))
}
