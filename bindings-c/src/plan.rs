//! The plan of a line on a bench.

pub mod options;

pub mod cut;

pub mod end;

pub mod bend;

pub mod step;

pub mod loading;

pub mod check;

use crate::argument::{fill_text, given, given_mut, item, known, put};
use crate::bench::lw_bench;
use crate::call::{call, lw_status};
use crate::line::{LW_A, LW_B, lw_line, lw_side};
use crate::plan::options::lw_plan_options;
use crate::problem::lw_problems;
use crate::units::lw_length;
use linewright::problem::Side;
use linewright::{Plan, PlanOptions, card};
use std::ffi::c_char;
use std::mem::MaybeUninit;

/// How a line is made on a bench.
#[derive(Debug)]
pub struct lw_plan(pub(crate) Plan);

pub(crate) fn side_number(side: Side) -> lw_side {
    match side {
        Side::A => LW_A,
        Side::B => LW_B,
    }
}

/// Plans a line on a bench. What is wrong or missing is no error: the plan says so in its problems, and while a stop
/// is open it is a draft. options may be NULL. Free it with lw_plan_free.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_new(
    line: Option<&lw_line>,
    bench: Option<&lw_bench>,
    options: Option<&lw_plan_options>,
    plan: Option<&mut MaybeUninit<Box<lw_plan>>>,
) -> lw_status {
    call(|| {
        let (line, bench) = (given(line, "line")?, given(bench, "bench")?);
        let usual = PlanOptions::default();
        let options = options.map_or(&usual, |options| &options.0);
        put(plan, "plan", Box::new(lw_plan(Plan::new(&line.0, &bench.0, options))))
    })
}

/// Flare face to flare face along the center line.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_finished_length(
    plan: Option<&lw_plan>,
    length: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(length, "length", given(plan, "plan")?.0.finished_length().into()))
}

/// The end at which work starts: LW_A or LW_B.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_first(
    plan: Option<&lw_plan>,
    side: Option<&mut MaybeUninit<lw_side>>,
) -> lw_status {
    call(|| put(side, "side", side_number(given(plan, "plan")?.0.first())))
}

/// The end that is left long, trimmed after the trial fit and flared last: LW_A or LW_B.
///
/// Errors: LW_NOT_KNOWN where the plan has none.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_trim_end(
    plan: Option<&lw_plan>,
    side: Option<&mut MaybeUninit<lw_side>>,
) -> lw_status {
    call(|| {
        let value = given(plan, "plan")?.0.trim_end();
        let side = given_mut(side, "side")?;
        side.write(side_number(known(value, "trim_end")?));
        Ok(())
    })
}

/// Where all marks are measured from: "flare A", "raw end A", "flare B" or "raw end B".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_plan_datum(
    plan: Option<&lw_plan>,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(given(plan, "plan")?.0.datum().name().to_owned())) })
}

/// Whether a stop is open.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_is_draft(
    plan: Option<&lw_plan>,
    is_draft: Option<&mut MaybeUninit<i32>>,
) -> lw_status {
    call(|| put(is_draft, "is_draft", i32::from(given(plan, "plan")?.0.is_draft())))
}

/// Everything found, the worst first, as a list of its own. Free it with lw_problems_free.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_problems(
    plan: Option<&lw_plan>,
    problems: Option<&mut MaybeUninit<Box<lw_problems>>>,
) -> lw_status {
    call(|| put(problems, "problems", lw_problems::of(given(plan, "plan")?.0.problems().to_vec())))
}

/// The number of defaults that the plan rests on.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_assumption_count(
    plan: Option<&lw_plan>,
    count: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| put(count, "count", given(plan, "plan")?.0.assumptions().len()))
}

/// A default that the plan rests on: what, the value used, and why this value.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_plan_assumption_text(
    plan: Option<&lw_plan>,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe {
        fill_text(buf, cap, need, || Ok(item(given(plan, "plan")?.0.assumptions(), index)?.to_string()))
    })
}

/// The bench card, as lines of text for a fixed-width font.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_plan_card(
    plan: Option<&lw_plan>,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(card::text(&given(plan, "plan")?.0))) })
}

/// Frees a plan. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_free(plan: Option<Box<lw_plan>>) {
    drop(plan);
}
