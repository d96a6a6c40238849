//! The threads known by name, as tables.

use crate::error;
use crate::table::{Column, Table};
use linewright::source::Checked;
use linewright::thread::{self, CATALOGUE, CatalogueRow, Class, DiameterLimits, Limits, ThreadSide};
use linewright::units::{Length, to_deg, to_mm};
use pyo3::prelude::*;

fn text(name: impl Into<String>, of: impl Fn(&CatalogueRow) -> Option<String>) -> (String, Column) {
    (name.into(), Column::Text(CATALOGUE.iter().map(of).collect()))
}

fn number(name: impl Into<String>, of: impl Fn(&CatalogueRow) -> Option<f64>) -> (String, Column) {
    (name.into(), Column::Number(CATALOGUE.iter().map(of).collect()))
}

/// One of the three diameters.
type Diameter = fn(&Limits) -> DiameterLimits;

/// A text that is there, or None.
fn said(text: &str) -> Option<String> {
    (!text.is_empty()).then(|| text.to_owned())
}

/// The columns of the limits of one side.
fn limits(side: ThreadSide) -> PyResult<Vec<(String, Column)>> {
    // A family without this side has no limits there, which the core says as an error.
    let all =
        error::compute(|| CATALOGUE.iter().map(|row| row.thread.limits(side).ok()).collect::<Vec<_>>())?;
    let name = |what: &str| format!("{}_{what}", side.name());
    let text = |what: &str, of: &dyn Fn(&Limits) -> Option<String>| {
        (name(what), Column::Text(all.iter().map(|limits| limits.as_ref().and_then(of)).collect()))
    };
    let number = |what: &str, of: &dyn Fn(&Limits) -> Option<Length>| {
        let mm = |limits: &Option<Limits>| limits.as_ref().and_then(of).map(to_mm);
        (name(what), Column::Number(all.iter().map(mm).collect()))
    };
    let mut columns = vec![text("class", &|limits| limits.class.map(|class: Class| class.to_string()))];
    let spans: [(&str, Diameter); 3] =
        [("major", |l| l.major), ("pitch_diameter", |l| l.pitch_diameter), ("minor", |l| l.minor)];
    for (what, span) in spans {
        columns.push(number(&format!("{what}_min_mm"), &|limits| span(limits).min));
        columns.push(number(&format!("{what}_max_mm"), &|limits| span(limits).max));
    }
    if side == ThreadSide::External {
        columns.push(number("rounded_root_mm", &|limits| limits.rounded_root));
    }
    columns.push(text("source", &|limits| Some(limits.source().text)));
    columns.push(text("source_place", &|limits| Some(limits.source().place)));
    columns.push(text("checked", &|limits| Some(limits.checked.name().to_owned())));
    Ok(columns)
}

/// The threads that are thought of when one is to be identified, a row each: size, limits of both sides by the usual
/// classes, where it is met, its source, and how that was checked.
///
/// `external_...` and `internal_...` are the limits of each side, with their class and how the numbers were checked.
/// Null stands where the standard sets no limit, or the family has no such side.
///
/// >>> import linewright as lw
/// >>> threads = lw.threads()
/// >>> row = threads["designation"].index("M10x1")
/// >>> threads["internal_pitch_diameter_max_mm"][row], threads["internal_class"][row]
/// (9.5, '6H')
#[pyfunction]
pub(crate) fn threads() -> PyResult<Table> {
    let mut columns = vec![
        text("designation", |row| Some(row.thread.to_string())),
        text("family", |row| Some(row.thread.family().name().to_owned())),
        number("diameter_mm", |row| Some(to_mm(row.thread.diameter()))),
        number("pitch_mm", |row| Some(to_mm(row.thread.pitch()))),
        number("per_inch", |row| Some(row.thread.per_inch())),
        number("half_angle_deg", |row| Some(to_deg(row.thread.half_angle()))),
        number("taper", |row| Some(row.thread.taper().value)),
    ];
    columns.extend(limits(ThreadSide::External)?);
    columns.extend(limits(ThreadSide::Internal)?);
    columns.push(text("met", |row| said(row.met)));
    columns.push(text("source", |row| said(row.source.text)));
    columns.push(text("source_place", |row| said(row.source.place)));
    columns.push(text("checked", |row| Some(row.source.checked.name().to_owned())));
    Table::of(columns)
}

/// How the limits in the catalogue were checked: rows by family and way, external and internal counted one each.
///
/// >>> import linewright as lw
/// >>> report = lw.thread_report()
/// >>> set(report["family"]) == set(lw.threads()["family"])
/// True
#[pyfunction]
pub(crate) fn thread_report() -> PyResult<Table> {
    let counts = error::compute(thread::report)?;
    let text = |of: fn(&thread::Count) -> &'static str| {
        Column::Text(counts.iter().map(|count| Some(of(count).to_owned())).collect())
    };
    let rows = counts.iter().map(|count| i64::try_from(count.rows).ok()).collect();
    let columns = [
        ("family", text(|count| count.family.name())),
        ("checked", text(|count| Checked::name(count.checked))),
        ("rows", Column::Count(rows)),
    ];
    Table::of(columns.map(|(name, column)| (name.to_owned(), column)).into())
}
