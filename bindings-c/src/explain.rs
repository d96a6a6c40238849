//! The sum behind a figure of a plan, and what changed between two plans.

use crate::argument::{fill_text, given, item, put, text};
use crate::call::{call, lw_status};
use crate::plan::lw_plan;
use linewright::Error;
use linewright::explain::{Change, Figure, changes, explain};
use std::ffi::c_char;
use std::mem::MaybeUninit;

/// What changed from one plan to another.
#[derive(Debug)]
pub struct lw_changes(Vec<Change>);

fn change(changes: Option<&lw_changes>, index: usize) -> Result<&Change, Error> {
    item(&given(changes, "changes")?.0, index)
}

/// The sum that makes a figure, line by line; the terms, rounded to 0.1 mm, add up to the figure shown. A figure is
/// "finished length", "cut length", "mark 2", "setting 3", "end A flare after", "end A flare before" or "end B
/// assembled".
///
/// Errors: LW_UNKNOWN_NAME for the figure, LW_NOT_KNOWN where the plan does not know it.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_plan_explain(
    plan: Option<&lw_plan>,
    figure: *const c_char,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let words = || {
        let plan = given(plan, "plan")?;
        explain(&plan.0, Figure::from_name(unsafe { text(figure, "figure") }?)?)
    };
    call(|| unsafe { fill_text(buf, cap, need, words) })
}

/// Only what changed from one plan to another; an empty list for equal plans. Free it with lw_changes_free.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_changes(
    before: Option<&lw_plan>,
    after: Option<&lw_plan>,
    changes: Option<&mut MaybeUninit<Box<lw_changes>>>,
) -> lw_status {
    call(|| {
        let found = self::changes(&given(before, "before")?.0, &given(after, "after")?.0);
        put(changes, "changes", Box::new(lw_changes(found)))
    })
}

/// The number of changes.
#[unsafe(no_mangle)]
pub extern "C" fn lw_changes_count(
    changes: Option<&lw_changes>,
    count: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| put(count, "count", given(changes, "changes")?.0.len()))
}

/// What changed.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_changes_what(
    changes: Option<&lw_changes>,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(change(changes, index)?.what.clone())) })
}

/// How it was.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_changes_before(
    changes: Option<&lw_changes>,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(change(changes, index)?.before.clone())) })
}

/// How it is.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_changes_after(
    changes: Option<&lw_changes>,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(change(changes, index)?.after.clone())) })
}

/// Frees a list of changes. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_changes_free(changes: Option<Box<lw_changes>>) {
    drop(changes);
}
