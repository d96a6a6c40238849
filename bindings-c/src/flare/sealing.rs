//! Hose ends and their washers: what seals, how many washers, and how many to buy.

use crate::argument::{fill_text, given, given_mut, item, list, put, text};
use crate::call::{call, lw_status};
use crate::problem::lw_problems;
use linewright::flare::{HoseEnd, Washers, washers};
use linewright::problem::Part;
use linewright::{Error, Thread};
use std::ffi::c_char;
use std::mem::MaybeUninit;

/// Washers to buy, a row for each thread.
#[derive(Debug)]
pub struct lw_washers(Vec<Washers>);

unsafe fn named(name: *const c_char) -> Result<HoseEnd, Error> {
    HoseEnd::from_name(unsafe { text(name, "name") }?)
}

fn row(washers: Option<&lw_washers>, index: usize) -> Result<&Washers, Error> {
    item(&given(washers, "washers")?.0, index)
}

/// What seals a hose end: "washer" or "flare". name is "male-washer" (screwed in, a washer under its shoulder),
/// "female-flare" (takes the nut of a flared line) or "banjo" (a ring held by a hollow bolt).
///
/// Errors: LW_UNKNOWN_NAME.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_hose_end_sealed_by(
    name: *const c_char,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(named(name)?.sealed_by().name().to_owned())) })
}

/// Washers on a hose end: one under a shoulder, two at a banjo, none where a flare seals (common practice, no source).
///
/// Errors: LW_UNKNOWN_NAME.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_hose_end_washers(
    name: *const c_char,
    count: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| put(count, "count", unsafe { named(name) }?.washers()))
}

/// Compares the washers that somebody put on a hose end, or plans to, with what it needs: a list with LW_WASHER_ON_FLARE
/// or LW_WASHER_COUNT, empty where they are right. Free it with lw_problems_free.
///
/// Errors: LW_UNKNOWN_NAME.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_hose_end_check(
    name: *const c_char,
    washers: usize,
    problems: Option<&mut MaybeUninit<Box<lw_problems>>>,
) -> lw_status {
    call(|| {
        let found = unsafe { named(name) }?.check(washers);
        put(problems, "problems", lw_problems::of(found.into_iter().collect()))
    })
}

/// Washers to buy for n hose ends, each by its name (see lw_hose_end_sealed_by) and its thread ("M10x1"): what the joints
/// need, and one spare of each size. Ends without a washer add nothing. Free it with lw_washers_free.
///
/// Errors: LW_THREAD_SIDE for an internal thread under a washer, LW_OUT_OF_RANGE for a taper one, which seals on itself,
/// LW_UNKNOWN_NAME for an end, LW_THREAD_AMBIGUOUS, LW_THREAD_CONTRADICTION, LW_HEX_NOT_THREAD, LW_UNREADABLE for
/// a thread; the error names it by its index, which counts from 0.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_washers_new(
    ends: *const *const c_char,
    threads: *const *const c_char,
    n: usize,
    washers: Option<&mut MaybeUninit<Box<lw_washers>>>,
) -> lw_status {
    call(|| {
        let (ends, threads) = unsafe { (list(ends, n, "ends")?, list(threads, n, "threads")?) };
        let joint = |(i, (end, thread)): (usize, (&*const c_char, &*const c_char))| {
            let (end_at, thread_at) = (format!("ends[{i}]"), format!("threads[{i}]"));
            let end = HoseEnd::from_name(unsafe { text(*end, &end_at) }?)
                .map_err(|error| error.at(Part::Field(end_at)))?;
            let thread = Thread::read(unsafe { text(*thread, &thread_at) }?)
                .map_err(|error| error.at(Part::Field(thread_at)))?;
            Ok((end, thread))
        };
        let joints = ends.iter().zip(threads).enumerate().map(joint).collect::<Result<Vec<_>, Error>>()?;
        put(washers, "washers", Box::new(lw_washers(self::washers(&joints)?)))
    })
}

/// The number of rows: threads that need washers.
#[unsafe(no_mangle)]
pub extern "C" fn lw_washers_count(
    washers: Option<&lw_washers>,
    count: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| put(count, "count", given(washers, "washers")?.0.len()))
}

/// The thread that the washers of a row go on.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_washers_thread(
    washers: Option<&lw_washers>,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(row(washers, index)?.thread.to_string())) })
}

/// The washers of a row: how many the joints need, always new ones, and how many spares.
#[unsafe(no_mangle)]
pub extern "C" fn lw_washers_to_buy(
    washers: Option<&lw_washers>,
    index: usize,
    needed: Option<&mut MaybeUninit<usize>>,
    spares: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| {
        let row = row(washers, index)?;
        let (needed, spares) = (given_mut(needed, "needed")?, given_mut(spares, "spares")?);
        needed.write(row.needed);
        spares.write(row.spares);
        Ok(())
    })
}

/// Frees a list of washers. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_washers_free(washers: Option<Box<lw_washers>>) {
    drop(washers);
}
