//! Many lines at once. A bad row never stops the rest.

use crate::argument::{fill_text, given, given_mut, item, known, list, put};
use crate::bench::lw_bench;
use crate::call::{call, lw_status};
use crate::draft::lw_draft;
use crate::plan::lw_plan;
use crate::plan::options::lw_plan_options;
use crate::problem::lw_problems;
use crate::units::{self, lw_notation};
use linewright::size::SizedLine;
use linewright::{Error, LineDraft, PlanOptions, size_lines, size_lines_in};
use std::ffi::c_char;
use std::mem::MaybeUninit;

/// The answer for many lines, row by row.
#[derive(Debug)]
pub struct lw_sized(Vec<SizedLine>);

fn row(sized: Option<&lw_sized>, index: usize) -> Result<&SizedLine, Error> {
    item(&given(sized, "sized")?.0, index)
}

/// The drafts of a list.
///
/// # Safety
/// `rows` is NULL or points to `n` drafts.
unsafe fn drafts(rows: *const Option<&lw_draft>, n: usize) -> Result<Vec<LineDraft>, Error> {
    let rows = unsafe { list(rows, n, "rows") }?.iter().enumerate();
    rows.map(|(i, draft)| Ok(given(*draft, &format!("rows[{i}]"))?.0.clone())).collect()
}

/// Plans every one of n drafts on one bench; each row is what lw_draft_check and lw_plan_new give for it alone. options
/// may be NULL. Free it with lw_sized_free.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_size_lines(
    rows: *const Option<&lw_draft>,
    n: usize,
    bench: Option<&lw_bench>,
    options: Option<&lw_plan_options>,
    sized: Option<&mut MaybeUninit<Box<lw_sized>>>,
) -> lw_status {
    call(|| {
        let drafts = unsafe { drafts(rows, n) }?;
        let usual = PlanOptions::default();
        let options = options.map_or(&usual, |options| &options.0);
        put(sized, "sized", Box::new(lw_sized(size_lines(&drafts, &given(bench, "bench")?.0, options))))
    })
}

/// lw_size_lines of rows from a file whose way of writing numbers is known: a decimal comma in one row counts for all.
/// options and notation may be NULL. Free it with lw_sized_free.
///
/// Errors: LW_STRUCT_SIZE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_size_lines_in(
    rows: *const Option<&lw_draft>,
    n: usize,
    bench: Option<&lw_bench>,
    options: Option<&lw_plan_options>,
    notation: *const lw_notation,
    sized: Option<&mut MaybeUninit<Box<lw_sized>>>,
) -> lw_status {
    call(|| {
        let drafts = unsafe { drafts(rows, n) }?;
        let usual = PlanOptions::default();
        let options = options.map_or(&usual, |options| &options.0);
        let notation = unsafe { units::notation(notation) }?;
        let bench = &given(bench, "bench")?.0;
        put(sized, "sized", Box::new(lw_sized(size_lines_in(&drafts, bench, options, notation))))
    })
}

/// The number of rows.
#[unsafe(no_mangle)]
pub extern "C" fn lw_sized_count(
    sized: Option<&lw_sized>,
    count: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| put(count, "count", given(sized, "sized")?.0.len()))
}

/// The name of a row's line, as typed.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_sized_name(
    sized: Option<&lw_sized>,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(row(sized, index)?.name.clone())) })
}

/// The plan of a row, as a plan of its own. Free it with lw_plan_free.
///
/// Errors: LW_NOT_KNOWN where the row was refused; its problems say why.
#[unsafe(no_mangle)]
pub extern "C" fn lw_sized_plan(
    sized: Option<&lw_sized>,
    index: usize,
    plan: Option<&mut MaybeUninit<Box<lw_plan>>>,
) -> lw_status {
    call(|| {
        let value = row(sized, index)?.plan.clone();
        let plan = given_mut(plan, "plan")?;
        plan.write(Box::new(lw_plan(known(value, "plan")?)));
        Ok(())
    })
}

/// Everything found in a row, the worst first, as a list of its own. Free it with lw_problems_free.
#[unsafe(no_mangle)]
pub extern "C" fn lw_sized_problems(
    sized: Option<&lw_sized>,
    index: usize,
    problems: Option<&mut MaybeUninit<Box<lw_problems>>>,
) -> lw_status {
    call(|| put(problems, "problems", lw_problems::of(row(sized, index)?.problems.clone())))
}

/// Frees the answer for many lines. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_sized_free(sized: Option<Box<lw_sized>>) {
    drop(sized);
}
