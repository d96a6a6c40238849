//! Hose ends and their washers: what seals, how many washers, and how many to buy.

use crate::error;
use crate::problem::Problem;
use crate::quantity::{self, wrong_kind};
use crate::results::made;
use crate::thread::{self, Thread};
use linewright::Part;
use linewright::flare::{self, HoseEnd};
use pyo3::prelude::*;
use pyo3::types::PyString;

/// What seals a hose end: "washer" or "flare". The ends are "male-washer" (screwed in, a washer under its shoulder),
/// "female-flare" (takes the nut of a flared line) and "banjo" (a ring held by a hollow bolt).
///
/// Raises `UnknownNameError`.
///
/// >>> import linewright as lw
/// >>> lw.hose_end_sealed_by("female-flare")
/// 'flare'
#[pyfunction]
#[pyo3(signature = (name, /))]
pub(crate) fn hose_end_sealed_by(name: &str) -> PyResult<&'static str> {
    error::call(|| Ok(HoseEnd::from_name(name)?.sealed_by().name()))
}

/// Washers on a hose end ("male-washer", "female-flare", "banjo"): one under a shoulder, two at a banjo, none where a
/// flare seals (common practice, no source).
///
/// Raises `UnknownNameError`.
///
/// >>> import linewright as lw
/// >>> lw.hose_end_washers("banjo")
/// 2
#[pyfunction]
#[pyo3(signature = (name, /))]
pub(crate) fn hose_end_washers(name: &str) -> PyResult<usize> {
    error::call(|| Ok(HoseEnd::from_name(name)?.washers()))
}

/// Compares the washers that somebody put on a hose end, or plans to, with what it needs: a problem (WASHER_ON_FLARE or
/// WASHER_COUNT), or None where they are right.
///
/// Raises `UnknownNameError`, `InputError` (OUT_OF_RANGE), `QuantityError` for what is no whole number.
///
/// >>> import linewright as lw
/// >>> lw.hose_end_check("female-flare", 1).code
/// 'WASHER_ON_FLARE'
/// >>> lw.hose_end_check("banjo", 2) is None
/// True
#[pyfunction]
#[pyo3(signature = (name, washers, /))]
pub(crate) fn hose_end_check(name: &str, washers: &Bound<'_, PyAny>) -> PyResult<Option<Problem>> {
    let washers = quantity::count(washers, "washers")?;
    error::call(|| Ok(HoseEnd::from_name(name)?.check(washers).map(Problem)))
}

/// A hose end and its thread, as they stand in a list.
fn joint(value: &Bound<'_, PyAny>, field: &str) -> PyResult<(HoseEnd, linewright::Thread)> {
    let no_pair = || wrong_kind(value, field, "the name of a hose end and its thread");
    if !quantity::is_list(value) {
        return Err(no_pair());
    }
    let parts = value.try_iter()?.collect::<PyResult<Vec<_>>>()?;
    let [name, thread] = &parts[..] else { return Err(no_pair()) };
    let name = name.cast::<PyString>().map_err(|_| no_pair())?.to_cow()?;
    let end =
        error::call(|| HoseEnd::from_name(&name).map_err(|error| error.at(Part::Field(field.to_owned()))))?;
    Ok((end, thread::given(thread, field)?))
}

/// Washers to buy for hose ends with their threads: what the joints need, always new ones, and one spare of each size, in
/// the order in which the threads come. Ends without a washer add nothing, and the hand of a thread makes no other washer.
///
/// Raises `InputError` (THREAD_SIDE for an internal thread under a washer, OUT_OF_RANGE for a taper one, which seals on itself,
/// and the codes of `Thread`), `UnknownNameError` for an end, `QuantityError` for what is no pair.
///
/// >>> import linewright as lw
/// >>> lw.washers([("banjo", "M10x1"), ("male-washer", "M10x1"), ("female-flare", "M10x1")])
/// [Washers(thread=Thread('M10x1'), needed=3, spares=1)]
#[pyfunction]
#[pyo3(signature = (ends, /))]
pub(crate) fn washers<'py>(ends: &Bound<'py, PyAny>) -> PyResult<Vec<Bound<'py, PyAny>>> {
    let joints = quantity::list(Some(ends), "ends", joint)?;
    let rows = error::call(|| flare::washers(&joints))?;
    let row = |row: flare::Washers| made(ends.py(), "Washers", (Thread(row.thread), row.needed, row.spares));
    rows.into_iter().map(row).collect()
}
