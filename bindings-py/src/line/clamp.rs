//! What is left of a nut's way when its flare is clamped.

use crate::error;
use crate::quantity;
use crate::record::{self, Call, Record, Reduced};
use crate::units::Length;
use linewright::{bounds, line};
use pyo3::prelude::*;

/// What is left of a nut's way when its flare is clamped, and how much thread holds. All must be more than the depths can
/// be off: otherwise the nut's head reaches the face of the port, or its thread the end of the port's, and it feels tight
/// and clamps nothing, or it hangs on hardly any thread.
///
/// `End.clamp_margin` gives one; nobody needs to make it.
///
/// Raises `InputError` (NOT_A_NUMBER and the codes of `read_length`), `QuantityError` for a bare number.
///
/// >>> import linewright as lw
/// >>> margin = lw.ClampMargin(under_head="2.4 mm", beyond_thread="0.9 mm", engaged="8 mm")
/// >>> print(margin.least)
/// 0.9 mm
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct ClampMargin(line::ClampMargin);

impl ClampMargin {
    pub(super) fn of(margin: line::ClampMargin) -> Self {
        ClampMargin(margin)
    }
}

impl Record for ClampMargin {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        Call::class::<Self>(py)
            .named("under_head", self.under_head())?
            .named("beyond_thread", self.beyond_thread())?
            .named("engaged", self.engaged())
    }
}

#[pymethods]
impl ClampMargin {
    #[new]
    #[pyo3(signature = (*, under_head, beyond_thread, engaged))]
    fn new(
        under_head: &Bound<'_, PyAny>,
        beyond_thread: &Bound<'_, PyAny>,
        engaged: &Bound<'_, PyAny>,
    ) -> PyResult<Self> {
        // No limit of the core stands behind these, so nothing else would refuse NaN.
        let finite = |value, field| quantity::finite_length(quantity::length(value, field)?, value);
        let (under_head, beyond_thread) =
            (finite(under_head, "under_head")?.0, finite(beyond_thread, "beyond_thread")?.0);
        let engaged = finite(engaged, "engaged")?.0;
        Ok(ClampMargin(line::ClampMargin { under_head, beyond_thread, engaged }))
    }

    /// Between the nut's head and the port's face.
    #[getter]
    fn under_head(&self) -> Length {
        Length(self.0.under_head)
    }

    /// Full thread of the port beyond the nut's first thread.
    #[getter]
    fn beyond_thread(&self) -> Length {
        Length(self.0.beyond_thread)
    }

    /// Thread of the nut that is in the thread of the port, at least; below zero where they do not reach each other.
    #[getter]
    fn engaged(&self) -> Length {
        Length(self.0.engaged)
    }

    /// The smaller of the first two.
    #[getter]
    fn least(&self) -> Length {
        Length(self.0.least())
    }

    /// Threads of this pitch that show between head and face, not rounded. Two are usual, none is suspicious (common
    /// practice, no source).
    ///
    /// Raises `InputError` (OUT_OF_RANGE and the codes of `read_length`), `QuantityError` for a bare number.
    ///
    /// >>> import linewright as lw
    /// >>> lw.ClampMargin(under_head="2.5 mm", beyond_thread="0.9 mm", engaged="8 mm").threads_showing(lw.thread("M10x1").pitch)
    /// 2.5
    #[pyo3(signature = (pitch, /))]
    fn threads_showing(&self, pitch: &Bound<'_, PyAny>) -> PyResult<f64> {
        let pitch = quantity::length(pitch, "pitch")?;
        error::call(|| Ok(self.0.threads_showing(bounds::PITCH.length(pitch)?)))
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
