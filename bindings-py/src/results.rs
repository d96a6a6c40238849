//! Answers that consist of named parts are classes of the Python package; this makes them.

use pyo3::call::PyCallArgs;
use pyo3::prelude::*;

/// An answer of a class of the package.
pub(crate) fn made<'py>(
    py: Python<'py>,
    class: &str,
    parts: impl PyCallArgs<'py>,
) -> PyResult<Bound<'py, PyAny>> {
    py.import("linewright._results")?.getattr(class)?.call1(parts)
}
