//! The table of codes.

use crate::error;
use crate::record::{self, Call, Record, Reduced};
use linewright::code::{CodeRow, Lift, TABLE};
use linewright::{Error, Part, Problem, Value};
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyMappingProxy};

/// One row of the table of codes, `CODES`: what a finding means, how grave it is, and what clears it.
///
/// Raises `UnknownNameError` for a name that is not in the table.
///
/// >>> import linewright as lw
/// >>> code = lw.CODES["BENDS_TOO_CLOSE"]
/// >>> code.number, code.level, code.lifted_by
/// (303, 'stop', 'person')
#[pyclass(frozen, eq, from_py_object, module = "linewright")]
#[derive(Clone, Copy)]
pub(crate) struct Code(pub(crate) &'static CodeRow);

impl PartialEq for Code {
    fn eq(&self, other: &Self) -> bool {
        self.0.code == other.0.code
    }
}

/// The code of a name.
pub(crate) fn named(name: &str) -> Result<linewright::Code, Error> {
    linewright::Code::from_name(name).ok_or_else(|| {
        Problem::new(linewright::Code::UnknownName, Part::Field("code".to_owned()))
            .got(Value::text(name))
            .need(Value::text("a name in CODES"))
            .into()
    })
}

impl Record for Code {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        Call::class::<Self>(py).arg(self.0.name)
    }
}

#[pymethods]
impl Code {
    #[new]
    #[pyo3(signature = (name, /))]
    fn new(name: &str) -> PyResult<Self> {
        error::call(|| named(name)).map(|code| Code(code.row()))
    }

    /// The name, the same in every language.
    #[getter]
    fn name(&self) -> &'static str {
        self.0.name
    }

    /// The number; it never changes.
    #[getter]
    fn number(&self) -> u16 {
        self.0.code.number()
    }

    /// How grave: "refuse", "stop", "caution" or "note".
    #[getter]
    fn level(&self) -> &'static str {
        self.0.level.name()
    }

    /// What lifts it: "nothing", "fact" (the missing or corrected fact alone) or "person" (with a reason).
    #[getter]
    fn lifted_by(&self) -> &'static str {
        match self.0.lift {
            Lift::Never => "nothing",
            Lift::Fact => "fact",
            Lift::Person => "person",
        }
    }

    /// What it says, in one sentence.
    #[getter]
    fn meaning(&self) -> &'static str {
        self.0.meaning
    }

    /// What clears it.
    #[getter]
    fn cleared_by(&self) -> &'static str {
        self.0.cleared_by
    }

    fn __str__(&self) -> &'static str {
        self.0.name
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

/// Name to row, read-only.
pub(crate) fn table(py: Python<'_>) -> PyResult<Bound<'_, PyMappingProxy>> {
    let rows = PyDict::new(py);
    for row in TABLE {
        rows.set_item(row.name, Code(row))?;
    }
    Ok(PyMappingProxy::new(py, rows.as_mapping()))
}
