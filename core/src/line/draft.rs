//! A line as it was typed: every field is text until it is checked, and checking finds everything at once.

use super::Line;
use super::field::{FIELDS, find};
use super::reader::Reader;
use crate::code::{Code, Level};
use crate::error::Error;
use crate::problem::{self, Part, Problem, Side, Value};
use crate::tube::Tube;
use crate::units::Notation;
use std::collections::BTreeMap;

/// The fields of a line, as typed. See [`super::FIELDS`] for their names.
///
/// ```
/// use linewright::{Code, LineDraft};
/// let mut draft = LineDraft::new();
/// draft.set("name", "T2")?.set("od", "316")?.set("wall", "0.028 in")?;
/// let checked = draft.check();
/// assert!(checked.line.is_none());
/// assert!(checked.problems.iter().any(|p| p.code == Code::UnitMissing && p.id() == "UNIT_MISSING@field od"));
/// # Ok::<(), linewright::Error>(())
/// ```
#[derive(Debug, Clone, Default, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(
    feature = "serde",
    serde(try_from = "BTreeMap<String, String>", into = "BTreeMap<String, String>")
)]
pub struct LineDraft {
    fields: BTreeMap<String, String>,
}

/// What checking a draft gives: the line, unless something was refused, and everything found.
#[derive(Debug, Clone, PartialEq)]
pub struct Draft {
    /// The line, if nothing was refused.
    pub line: Option<Line>,
    /// Everything found, the worst first.
    pub problems: Vec<Problem>,
}

impl LineDraft {
    /// A draft with nothing in it.
    #[must_use]
    pub fn new() -> LineDraft {
        LineDraft::default()
    }

    /// Fills a field with what was typed.
    ///
    /// # Errors
    /// `UNKNOWN_NAME` with the list of fields.
    pub fn set(&mut self, field: &str, typed: &str) -> Result<&mut LineDraft, Error> {
        if find(field).is_none() {
            let names: Vec<&str> = FIELDS.iter().map(|f| f.name).collect();
            let need = Value::text(format!("one of {}", names.join(", ")));
            return Err(Error::field(Code::UnknownName, field, Value::text(field), need));
        }
        self.fields.insert(field.to_owned(), typed.to_owned());
        Ok(self)
    }

    /// What was typed into a field; empty where nothing was.
    #[must_use]
    pub fn get(&self, field: &str) -> &str {
        self.fields.get(field).map_or("", |typed| typed.trim())
    }

    /// Checks every field and puts the line together.
    #[must_use]
    pub fn check(&self) -> Draft {
        self.check_in(Notation::default())
    }

    /// How the numbers of this draft are written, as far as it shows.
    #[must_use]
    pub fn notation(&self, known: Notation) -> Notation {
        self.fields.values().fold(known, |notation, typed| notation.seen_in(typed))
    }

    /// [`LineDraft::check`] of a draft from a file whose way of writing numbers is known.
    #[must_use]
    pub fn check_in(&self, notation: Notation) -> Draft {
        let notation = self.notation(notation);
        let mut reader = Reader { draft: self, notation, problems: Vec::new(), assumed: Vec::new() };
        for field in FIELDS.iter().filter(|f| f.needed && self.get(f.name).is_empty()) {
            reader.problems.push(
                Problem::new(Code::FieldMissing, Part::Field(field.name.to_owned()))
                    .need(Value::text(field.meaning)),
            );
        }
        let tube = reader.tube();
        let path = reader.path(tube.as_ref().map(Tube::od));
        let (a, b) = (reader.end(Side::A), reader.end(Side::B));
        let (mut problems, assumed) = (reader.problems, reader.assumed);
        problem::sort(&mut problems);
        let refused = problems.iter().any(|p| p.level() == Level::Refuse);
        let line = match (tube, path, a, b) {
            (Some(tube), Some(path), Some(a), Some(b)) if !refused => {
                let line = Line::new(self.get("name"), tube, path, a, b).deferred(self.get("deferred"));
                Some(line.with_found(problems.clone(), assumed))
            }
            _ => None,
        };
        Draft { line, problems }
    }
}

impl TryFrom<BTreeMap<String, String>> for LineDraft {
    type Error = Error;

    fn try_from(fields: BTreeMap<String, String>) -> Result<LineDraft, Error> {
        let mut draft = LineDraft::new();
        for (field, typed) in fields {
            draft.set(&field, &typed)?;
        }
        Ok(draft)
    }
}

impl From<LineDraft> for BTreeMap<String, String> {
    fn from(draft: LineDraft) -> Self {
        draft.fields
    }
}
