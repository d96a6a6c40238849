//! A line as it was typed.

use super::Line;
use crate::error;
use crate::problem::{Problem, problems};
use crate::record::{self, Call, Record, Reduced};
use crate::typed::typed;
use linewright::line::FIELDS;
use linewright::units::Notation;
use linewright::{Code, Part, Value};
use pyo3::prelude::*;
use pyo3::types::PyDict;
use std::collections::BTreeMap;

/// One field of a `LineDraft`: its name, what belongs in it, and whether a line needs it.
///
/// Raises `UnknownNameError` for a name that is no field.
///
/// >>> import linewright as lw
/// >>> lw.Field("od").meaning
/// 'outside diameter of the tube, with unit'
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct Field(linewright::line::Field);

impl Record for Field {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        Call::class::<Self>(py).arg(self.name())
    }
}

#[pymethods]
impl Field {
    #[new]
    #[pyo3(signature = (name, /))]
    fn new(name: &str) -> PyResult<Self> {
        let found = FIELDS.iter().find(|field| field.name == name);
        found.map(|field| Field(*field)).ok_or_else(|| {
            let problem = linewright::Problem::new(Code::UnknownName, Part::Field(name.to_owned()));
            let need = Value::text("a name in LineDraft.fields()");
            error::input(problem.got(Value::text(name)).need(need).into())
        })
    }

    /// The name, the same in every language.
    #[getter]
    fn name(&self) -> &'static str {
        self.0.name
    }

    /// What belongs in it.
    #[getter]
    fn meaning(&self) -> &'static str {
        self.0.meaning
    }

    /// Whether a line needs it.
    #[getter]
    fn needed(&self) -> bool {
        self.0.needed
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

/// The fields of a line as typed, each a text: nothing is looked at until `check`. `LineDraft.fields()` lists them.
///
/// None is an empty field. A list is joined with semicolons. Lengths, angles and quantities of other packages are
/// written with their unit; a number stays without one, and the check says so.
///
/// Raises `UnknownNameError` for a name that is no field.
///
/// >>> import linewright as lw
/// >>> draft = lw.LineDraft(name="T2", od=lw.inch(0.1875), wall="0.028 in", legs=["55 mm", "76 mm"])
/// >>> draft.typed
/// {'legs': '55 mm; 76 mm', 'name': 'T2', 'od': '4.7625 mm', 'wall': '0.028 in'}
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct LineDraft(pub(crate) linewright::LineDraft);

/// A draft of named values, each as it is typed, and an error for each name that is no field; `ignored` names are left
/// out.
pub(crate) fn draft_of(
    row: &Bound<'_, PyDict>,
    ignored: &[String],
) -> PyResult<(linewright::LineDraft, Vec<linewright::Error>)> {
    let mut draft = linewright::LineDraft::new();
    let mut unknown = Vec::new();
    for (name, value) in row {
        let name = typed(&name)?;
        if ignored.contains(&name) {
            continue;
        }
        let text = typed(&value)?;
        unknown.extend(draft.set(&name, &text).err());
    }
    Ok((draft, unknown))
}

impl LineDraft {
    fn texts(&self) -> BTreeMap<String, String> {
        self.0.clone().into()
    }
}

impl Record for LineDraft {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        self.texts()
            .into_iter()
            .try_fold(Call::class::<Self>(py), |call, (name, text)| call.named(name, text))
    }
}

#[pymethods]
impl LineDraft {
    #[new]
    #[pyo3(signature = (**fields))]
    fn new(fields: Option<&Bound<'_, PyDict>>) -> PyResult<Self> {
        let Some(fields) = fields else { return Ok(LineDraft(linewright::LineDraft::new())) };
        let (draft, unknown) = draft_of(fields, &[])?;
        match unknown.into_iter().next() {
            Some(error) => Err(error::input(error)),
            None => Ok(LineDraft(draft)),
        }
    }

    /// Every field a draft can have.
    ///
    /// >>> import linewright as lw
    /// >>> [field.name for field in lw.LineDraft.fields() if field.needed][:4]
    /// ['name', 'od', 'wall', 'material']
    #[staticmethod]
    fn fields() -> Vec<Field> {
        FIELDS.iter().map(|field| Field(*field)).collect()
    }

    /// What was typed, by the name of the field.
    #[getter]
    fn typed(&self) -> BTreeMap<String, String> {
        self.texts()
    }

    /// Checks every field and puts the line together.
    ///
    /// >>> import linewright as lw
    /// >>> checked = lw.LineDraft(name="T2", od="316", wall="0.028 in").check()
    /// >>> checked.line is None
    /// True
    /// >>> print(checked.problems[0].id)
    /// FIELD_MISSING@field material
    ///
    /// `decimal_comma` says that the file the draft is from uses decimal commas, so that "1.500 mm" is doubtful;
    /// `bare_fraction_is_inch` that a bare fraction in a field for tube sizes is inches, which is then assumed.
    #[pyo3(signature = (*, decimal_comma=false, bare_fraction_is_inch=false))]
    pub(crate) fn check(&self, decimal_comma: bool, bare_fraction_is_inch: bool) -> PyResult<Draft> {
        let notation = Notation { decimal_comma, bare_fraction_is_inch };
        let checked = error::compute(|| self.0.check_in(notation))?;
        Ok(Draft { draft: self.clone(), notation, checked })
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

/// What checking a `LineDraft` gives: the line, unless something was refused, and everything found.
///
/// >>> import linewright as lw
/// >>> len(lw.LineDraft().check().problems) == sum(field.needed for field in lw.LineDraft.fields()) + 1
/// True
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct Draft {
    draft: LineDraft,
    notation: Notation,
    checked: linewright::line::Draft,
}

impl Record for Draft {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        let Notation { decimal_comma, bare_fraction_is_inch } = self.notation;
        Call::method(&Bound::new(py, self.draft.clone())?.into_any(), "check")?
            .given("decimal_comma", decimal_comma.then_some(true))?
            .given("bare_fraction_is_inch", bare_fraction_is_inch.then_some(true))
    }
}

#[pymethods]
impl Draft {
    /// The line; None where something was refused.
    #[getter]
    fn line(&self) -> Option<Line> {
        self.checked.line.clone().map(|line| Line::of_draft(line, &self.draft, self.notation))
    }

    /// Everything found, the worst first.
    #[getter]
    fn problems(&self) -> Vec<Problem> {
        problems(&self.checked.problems)
    }

    fn __repr__(&self, py: Python<'_>) -> PyResult<String> {
        record::repr(self, py)
    }

    fn __hash__(&self, py: Python<'_>) -> PyResult<isize> {
        self.draft.__hash__(py)
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<Reduced<'py>> {
        record::reduce(self, py)
    }
}
