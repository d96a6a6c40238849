//! Many lines through the single call. A bad row never stops the rest.

use crate::bench::Bench;
use crate::line::LineDraft;
use crate::plan::{Plan, PlanOptions};
use crate::problem::Problem;
use crate::units::Notation;

/// One row of a batch.
#[derive(Debug, Clone, PartialEq)]
pub struct SizedLine {
    /// Number of the row, from 1.
    pub row: usize,
    /// Name as typed.
    pub name: String,
    /// The plan; None where the row was refused.
    pub plan: Option<Plan>,
    /// Everything found, the worst first.
    pub problems: Vec<Problem>,
}

/// Plans every row on one bench. Each row is what [`Plan::new`] gives for it alone, but that the rows are taken to be one
/// file: a decimal comma in one of them makes `1.500 mm` doubtful in all.
///
/// ```
/// use linewright::{Bench, FlareTool, Flare, Former, LineDraft, PlanOptions, size_lines, units::mm};
/// let tool = FlareTool::new(Flare::Double45, mm(13.0), mm(4.0))?;
/// let bench = Bench::new(Former::new(mm(14.3), mm(20.0))?, &[tool])?;
/// let mut bad = LineDraft::new();
/// bad.set("od", "316")?;
/// let sized = size_lines(&[bad], &bench, &PlanOptions::default());
/// assert!(sized[0].plan.is_none() && sized[0].row == 1);
/// # Ok::<(), linewright::Error>(())
/// ```
#[must_use]
pub fn size_lines(drafts: &[LineDraft], bench: &Bench, options: &PlanOptions) -> Vec<SizedLine> {
    size_lines_in(drafts, bench, options, Notation::default())
}

/// [`size_lines`] of rows from a file whose way of writing numbers is known. A decimal comma in any row counts for all.
#[must_use]
pub fn size_lines_in(
    drafts: &[LineDraft],
    bench: &Bench,
    options: &PlanOptions,
    notation: Notation,
) -> Vec<SizedLine> {
    let notation = drafts.iter().fold(notation, |notation, draft| draft.notation(notation));
    drafts
        .iter()
        .enumerate()
        .map(|(i, draft)| {
            let checked = draft.check_in(notation);
            let plan = checked.line.map(|line| Plan::new(&line, bench, options));
            let problems = plan.as_ref().map_or(checked.problems, |plan| plan.problems().to_vec());
            SizedLine { row: i + 1, name: draft.get("name").to_owned(), plan, problems }
        })
        .collect()
}
