//! The threads that the library thinks of, and those among them that are taken for one another.

use super::mate::lw_mating;
use super::{among_or_all, lw_thread};
use crate::argument::{fill_text, given, item, put};
use crate::call::{call, lw_status};
use linewright::Thread;
use linewright::thread::{CATALOGUE, Mating, lookalikes, report};
use std::ffi::c_char;
use std::mem::MaybeUninit;

/// Pairs of different threads that turn in by hand and may hold on less than half of the thread.
#[derive(Debug)]
pub struct lw_lookalikes(Vec<Mating>);

/// The number of threads in the catalogue.
#[unsafe(no_mangle)]
pub extern "C" fn lw_catalogue_count(count: Option<&mut MaybeUninit<usize>>) -> lw_status {
    call(|| put(count, "count", CATALOGUE.len()))
}

/// The designation of a thread in the catalogue.
///
/// Errors: LW_INDEX_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_catalogue_thread(
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(item(CATALOGUE, index)?.thread.to_string())) })
}

/// Where a thread of the catalogue is met.
///
/// Errors: LW_INDEX_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_catalogue_met(
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(item(CATALOGUE, index)?.met.to_owned())) })
}

/// Where a thread of the catalogue comes from, and how that was checked.
///
/// Errors: LW_INDEX_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_catalogue_source(
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let source = || Ok(item(CATALOGUE, index)?.source.source().to_string());
    call(|| unsafe { fill_text(buf, cap, need, source) })
}

/// The number of rows that say how the limits of the catalogue were checked: one for each family and each way of checking.
#[unsafe(no_mangle)]
pub extern "C" fn lw_catalogue_report_count(count: Option<&mut MaybeUninit<usize>>) -> lw_status {
    call(|| put(count, "count", report().len()))
}

/// The family that a row of the report is about.
///
/// Errors: LW_INDEX_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_catalogue_report_family(
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(item(&report(), index)?.family.name().to_owned())) })
}

/// How the limits of a row were checked, in the words of lw_limits_checked.
///
/// Errors: LW_INDEX_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_catalogue_report_checked(
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(item(&report(), index)?.checked.name().to_owned())) })
}

/// How many limits were checked like that; the outside and the inside of a thread count one each.
///
/// Errors: LW_INDEX_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_catalogue_report_limits(
    index: usize,
    limits: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| put(limits, "limits", item(&report(), index)?.rows))
}

/// Every male of the catalogue in every female: the look-alikes, the most convincing first. Free them with
/// lw_lookalikes_free.
#[unsafe(no_mangle)]
pub extern "C" fn lw_lookalikes_new(lookalikes: Option<&mut MaybeUninit<Box<lw_lookalikes>>>) -> lw_status {
    call(|| {
        let list: Vec<Thread> = CATALOGUE.iter().map(|row| row.thread).collect();
        put(lookalikes, "lookalikes", Box::new(lw_lookalikes(self::lookalikes(&list))))
    })
}

/// As lw_lookalikes_new, of n threads; of the whole catalogue where n is 0.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_lookalikes_new_among(
    threads: *const Option<&lw_thread>,
    n: usize,
    lookalikes: Option<&mut MaybeUninit<Box<lw_lookalikes>>>,
) -> lw_status {
    call(|| {
        let among = unsafe { among_or_all(threads, n) }?;
        put(lookalikes, "lookalikes", Box::new(lw_lookalikes(self::lookalikes(&among))))
    })
}

/// The number of look-alike pairs.
#[unsafe(no_mangle)]
pub extern "C" fn lw_lookalikes_count(
    lookalikes: Option<&lw_lookalikes>,
    count: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| put(count, "count", given(lookalikes, "lookalikes")?.0.len()))
}

/// One look-alike pair. Free it with lw_mating_free.
///
/// Errors: LW_INDEX_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_lookalikes_mating(
    lookalikes: Option<&lw_lookalikes>,
    index: usize,
    mating: Option<&mut MaybeUninit<Box<lw_mating>>>,
) -> lw_status {
    call(|| {
        let pair = item(&given(lookalikes, "lookalikes")?.0, index)?.clone();
        put(mating, "mating", Box::new(lw_mating(pair)))
    })
}

/// Frees look-alike pairs. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_lookalikes_free(lookalikes: Option<Box<lw_lookalikes>>) {
    drop(lookalikes);
}
