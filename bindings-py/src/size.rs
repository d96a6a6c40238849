//! Many lines through the single call.

use crate::bench::Bench;
use crate::error;
use crate::line::{Line, LineDraft, draft_of};
use crate::plan::{Options, Plan};
use crate::problem::{Problem, problems};
use crate::quantity;
use crate::record::{self, Call, Record, Reduced};
use linewright::size_lines_in;
use linewright::units::Notation;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyMapping};
use std::collections::BTreeMap;
use std::sync::Arc;

/// One row of `size_lines`.
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct SizedLine {
    row: usize,
    name: String,
    plan: Option<Plan>,
    problems: Vec<linewright::Problem>,
}

impl Record for SizedLine {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        Call::class::<Self>(py)
            .named("row", self.row)?
            .named("name", self.name())?
            .named("plan", self.plan())?
            .named("problems", self.problems())
    }
}

impl SizedLine {
    /// A row with names that are no fields has no plan: what stands there was meant for some field.
    fn refuse(&mut self, errors: Vec<linewright::Error>) {
        self.plan = None;
        self.problems.splice(0..0, errors.into_iter().map(linewright::Error::into_problem));
    }
}

#[pymethods]
impl SizedLine {
    #[new]
    #[pyo3(signature = (*, row, name, plan, problems))]
    fn new(
        row: usize,
        name: String,
        plan: Option<&Bound<'_, Plan>>,
        problems: Vec<Bound<'_, Problem>>,
    ) -> Self {
        let problems = problems.into_iter().map(|problem| problem.get().0.clone()).collect();
        SizedLine { row, name, plan: plan.map(|plan| plan.get().clone()), problems }
    }

    /// Number of the row, from 1.
    #[getter]
    fn row(&self) -> usize {
        self.row
    }

    /// Name of the line as typed.
    #[getter]
    fn name(&self) -> &str {
        &self.name
    }

    /// The plan; None where the row was refused.
    #[getter]
    fn plan(&self) -> Option<Plan> {
        self.plan.clone()
    }

    /// Everything found, the worst first.
    #[getter]
    fn problems(&self) -> Vec<Problem> {
        problems(&self.problems)
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

/// Rows computed between two looks for Ctrl-C.
const STRETCH: usize = 2000;

/// Plans every row of a table on one bench. A bad row never stops the rest.
///
/// `rows` is a data frame, or anything that gives a mapping for each line. The columns are the fields of a
/// `LineDraft`; what stands in them is read as there, a missing value as an empty field. `ignore` names columns to
/// leave out; a row with any other name that is no field is refused, and says so. `trim_end`, `reserve` and `accept` are those of `Line.plan`, `decimal_comma` and `bare_fraction_is_inch`
/// those of `LineDraft.check`; a decimal comma in one row counts for all.
///
/// Raises `QuantityError` for what is no table of rows, `InputError` and `QuantityError` as `Line.plan`.
///
/// >>> import linewright as lw
/// >>> bench = lw.Bench(former=lw.Former(as_formed="14.3 mm", grip="20 mm"),
/// ...                  flare_tool=lw.FlareTool("double-45", clamp="13 mm", projection="4 mm"))
/// >>> end = {"thread": "M10x1", "nut_length": "17 mm", "nut_bore": "5 mm", "nose": "coned", "flare": "double-45"}
/// >>> ends = {f"{side}_{field}": text for side in "ab" for field, text in end.items()}
/// >>> good = {"name": "T1", "od": "3/16 in", "wall": "0.028 in", "material": "copper-nickel", "legs": "400 mm", **ends}
/// >>> sized = lw.size_lines([good, {**good, "name": "T2", "od": 316}], bench=bench)
/// >>> print(sized[0].plan.cut_length)
/// 410 mm
/// >>> sized[1].plan is None, sized[1].problems[0].id
/// (True, 'UNIT_MISSING@field od')
#[pyfunction]
#[pyo3(signature = (rows, *, bench, trim_end=None, reserve=None, accept=None, ignore=None,
    decimal_comma=false, bare_fraction_is_inch=false))]
#[expect(clippy::too_many_arguments, reason = "one for each argument, all of them named")]
pub(crate) fn size_lines(
    rows: &Bound<'_, PyAny>,
    bench: &Bound<'_, Bench>,
    trim_end: Option<&str>,
    reserve: Option<&Bound<'_, PyAny>>,
    accept: Option<Vec<(String, String, String)>>,
    ignore: Option<Vec<String>>,
    decimal_comma: bool,
    bare_fraction_is_inch: bool,
) -> PyResult<Vec<SizedLine>> {
    let py = rows.py();
    let options = Arc::new(Options::read(trim_end, reserve, accept)?);
    let ignored = ignore.unwrap_or_default();
    let (mut drafts, mut unknown) = (Vec::new(), BTreeMap::new());
    for (i, row) in records(rows)?.try_iter()?.enumerate() {
        let (draft, errors) = draft_of_row(&row?, i + 1, &ignored)?;
        drafts.push(draft);
        if !errors.is_empty() {
            unknown.insert(i + 1, errors);
        }
    }
    // What one row shows of the file's notation counts for all.
    let known = Notation { decimal_comma, bare_fraction_is_inch };
    let notation = drafts.iter().fold(known, |notation, draft| draft.notation(notation));
    let bench = Arc::new(bench.get().0.clone());
    let mut batch = Batch { bench, options, notation, sized: Vec::new() };
    for stretch in drafts.chunks(STRETCH) {
        batch.size(py, stretch)?;
    }
    for (row, errors) in unknown {
        batch.sized[row - 1].refuse(errors);
    }
    Ok(batch.sized)
}

/// What was computed so far, and what it is computed with.
struct Batch {
    bench: Arc<linewright::Bench>,
    options: Arc<Options>,
    notation: Notation,
    sized: Vec<SizedLine>,
}

impl Batch {
    /// Computes the next rows while other threads run.
    fn size(&mut self, py: Python<'_>, drafts: &[linewright::LineDraft]) -> PyResult<()> {
        py.check_signals()?;
        let before = self.sized.len();
        let size = || size_lines_in(drafts, &self.bench, &self.options.core, self.notation);
        let compute = || error::compute(size);
        for (line, draft) in py.detach(compute)?.into_iter().zip(drafts) {
            let plan = line.plan.map(|plan| {
                let line = Line::of_draft(plan.line().clone(), &LineDraft(draft.clone()), self.notation);
                Plan::of(plan, line, Arc::clone(&self.bench), Arc::clone(&self.options))
            });
            let row = before + line.row;
            self.sized.push(SizedLine { row, name: line.name, plan, problems: line.problems });
        }
        Ok(())
    }
}

fn draft_of_row(
    row: &Bound<'_, PyAny>,
    number: usize,
    ignored: &[String],
) -> PyResult<(linewright::LineDraft, Vec<linewright::Error>)> {
    let Ok(mapping) = row.cast::<PyMapping>() else {
        return Err(quantity::wrong_kind(row, &format!("rows, item {number}"), "a mapping of fields"));
    };
    let fields = PyDict::new(row.py());
    fields.update(mapping)?;
    draft_of(&fields, ignored)
}

/// The rows of a table as mappings, asked for in the way of its package.
fn records<'py>(rows: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
    let py = rows.py();
    if rows.hasattr("iter_rows")? {
        let named = PyDict::new(py);
        named.set_item("named", true)?;
        return rows.call_method("iter_rows", (), Some(&named));
    }
    if rows.hasattr("to_pylist")? {
        return rows.call_method0("to_pylist");
    }
    if rows.hasattr("to_dict")? {
        return rows.call_method1("to_dict", ("records",));
    }
    if rows.cast::<PyMapping>().is_ok() || !quantity::is_list(rows) {
        return Err(quantity::wrong_kind(rows, "rows", "a data frame, or a list of mappings"));
    }
    Ok(rows.clone())
}
