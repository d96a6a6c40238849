//! Threads.

use crate::error;
use crate::quantity::wrong_kind;
use crate::record::{self, Call, Record, Reduced};
use crate::units::Length;
use pyo3::prelude::*;
use pyo3::types::PyString;

/// A thread by its designation. Two spellings of one thread are equal.
///
/// Raises `InputError`: THREAD_AMBIGUOUS for a metric diameter without pitch, HEX_NOT_THREAD for a spanner size or a
/// bare length, UNREADABLE otherwise.
///
/// >>> import linewright as lw
/// >>> lw.Thread("M 10 × 1,0")
/// Thread('M10x1')
/// >>> lw.Thread("3/8-24").diameter.inch
/// 0.375
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct Thread(pub(crate) linewright::Thread);

/// The thread in an argument; None and "unknown" are no thread.
pub(crate) fn known(value: Option<&Bound<'_, PyAny>>) -> PyResult<Option<linewright::Thread>> {
    let Some(value) = value else { return Ok(None) };
    if let Ok(thread) = value.cast::<Thread>() {
        return Ok(Some(thread.get().0));
    }
    let Ok(text) = value.cast::<PyString>() else {
        return Err(wrong_kind(value, "thread", "a designation such as \"M10x1\", or None for not known"));
    };
    let text = text.to_cow()?;
    error::call(|| linewright::Thread::read_or_unknown(&text))
}

/// Reads a thread's designation: `M10x1`, `M 10 × 1,0`, `3/8-24`, `7/16-24 UNS`.
///
/// Raises as `Thread`.
///
/// >>> import linewright as lw
/// >>> lw.thread("M 10 × 1,0").designation
/// 'M10x1'
#[pyfunction]
#[pyo3(signature = (designation, /))]
pub(crate) fn thread(designation: &str) -> PyResult<Thread> {
    Thread::new(designation)
}

impl Record for Thread {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        Call::class::<Self>(py).arg(self.designation())
    }
}

#[pymethods]
impl Thread {
    #[new]
    #[pyo3(signature = (designation, /))]
    fn new(designation: &str) -> PyResult<Self> {
        error::call(|| linewright::Thread::read(designation)).map(Thread)
    }

    /// The designation in its one spelling.
    #[getter]
    fn designation(&self) -> String {
        self.0.to_string()
    }

    /// Nominal diameter.
    #[getter]
    fn diameter(&self) -> Length {
        Length(self.0.diameter())
    }

    /// Pitch.
    #[getter]
    fn pitch(&self) -> Length {
        Length(self.0.pitch())
    }

    fn __str__(&self) -> String {
        self.designation()
    }

    fn __repr__(&self, py: Python<'_>) -> PyResult<String> {
        record::repr(self, py)
    }

    fn __hash__(&self, py: Python<'_>) -> PyResult<isize> {
        record::hash(self, py)
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<Reduced<'py>> {
        record::reduce(self, py)
    }
}
