//! Limits of size.

use super::Thread;
use crate::error;
use crate::record::{self, Call, Record, Reduced};
use crate::results::made;
use crate::units::Length;
use linewright::thread::{self, Class, ThreadSide};
use linewright::units;
use pyo3::prelude::*;
use pyo3::types::PyTuple;

/// Limits of one side of a thread: made by `Thread.limits`. Those of a taper thread are at the end that enters first.
///
/// >>> import linewright as lw
/// >>> limits = lw.thread("3/8-24 UNF-2A").limits()
/// >>> limits.side, limits.thread_class, limits.is_class_assumed
/// ('external', '2A', False)
/// >>> limits.pitch_diameter.max.inch
/// 0.3468
/// >>> limits.minor.min is None
/// True
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct Limits {
    thread: linewright::Thread,
    engagement: Option<units::Length>,
    limits: thread::Limits,
}

/// The smallest and the largest, as Python has them.
pub(super) fn span(py: Python<'_>, span: thread::DiameterLimits) -> PyResult<Bound<'_, PyAny>> {
    made(py, "DiameterLimits", (span.min.map(Length), span.max.map(Length)))
}

impl Limits {
    pub(super) fn new(
        thread: linewright::Thread,
        side: ThreadSide,
        engagement: Option<units::Length>,
    ) -> PyResult<Self> {
        let limits = error::call(|| match engagement {
            Some(engagement) => thread.limits_over(side, engagement),
            None => thread.limits(side),
        })?;
        Ok(Limits { thread, engagement, limits })
    }
}

impl Record for Limits {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        Call::method(&Bound::new(py, self.thread())?.into_any(), "limits")?
            .arg(self.side())?
            .given("engagement", self.engagement.map(Length))
    }
}

#[pymethods]
impl Limits {
    /// The thread.
    #[getter]
    fn thread(&self) -> Thread {
        Thread(self.thread)
    }

    /// "external" or "internal".
    #[getter]
    fn side(&self) -> &'static str {
        self.limits.side.name()
    }

    /// The class they belong to, such as "6g"; None where the family has no classes on that side.
    #[getter]
    fn thread_class(&self) -> Option<String> {
        self.limits.class.map(|class: Class| class.to_string())
    }

    /// Whether nobody named the class, so that the usual one was taken.
    #[getter]
    fn is_class_assumed(&self) -> bool {
        self.limits.is_class_assumed
    }

    /// Smallest and largest major diameter; the largest of an internal metric thread is for reference. None stands
    /// where the standard sets no limit.
    #[getter]
    pub(super) fn major<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        span(py, self.limits.major)
    }

    /// Smallest and largest pitch diameter.
    #[getter]
    pub(super) fn pitch_diameter<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        span(py, self.limits.pitch_diameter)
    }

    /// Smallest and largest minor diameter; outside it is the root, the deepest rounded and the shallowest flat. None
    /// stands where the standard sets no limit.
    #[getter]
    pub(super) fn minor<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        span(py, self.limits.minor)
    }

    /// Largest minor diameter of the rounded root of an external Unified thread, for reference; None for all others.
    #[getter]
    fn rounded_root(&self) -> Option<Length> {
        self.limits.rounded_root.map(Length)
    }

    /// How far the largest external thread stays below the basic diameter; None for an internal one.
    #[getter]
    fn allowance(&self) -> Option<Length> {
        self.limits.allowance().map(Length)
    }

    /// How the numbers were checked: "seen", "computed", "from memory, not checked" and the like.
    #[getter]
    fn checked(&self) -> &'static str {
        self.limits.checked.name()
    }

    /// Where the numbers come from: text, place, and how they were checked.
    #[getter]
    fn source(&self) -> String {
        self.limits.source().to_string()
    }

    fn __repr__(&self, py: Python<'_>) -> PyResult<String> {
        record::repr(self, py)
    }

    // The call is a method of the thread, so its arguments alone would give all threads of a side one hash.
    fn __hash__(&self, py: Python<'_>) -> PyResult<isize> {
        PyTuple::new(py, [self.thread.to_string().as_str(), self.side()])?.hash()
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<Reduced<'py>> {
        record::reduce(self, py)
    }
}
