//! The error of a call that cannot be answered.

use crate::code::Code;
use crate::problem::{Part, Problem, Value};

/// Why a call could not be answered: one [`Problem`], with code, value given, need and cure.
///
/// Errors and problems share one shape and one table of codes, so a caller treats both alike.
///
/// ```
/// use linewright::{Code, units::read_length};
/// let error = read_length("316").unwrap_err();
/// assert_eq!(error.code(), Code::UnitMissing);
/// assert!(error.to_string().contains("3/16 in"));
/// ```
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("{0}")]
#[non_exhaustive]
pub struct Error(Box<Problem>);

impl Error {
    /// What went wrong.
    #[must_use]
    pub fn code(&self) -> Code {
        self.0.code
    }

    /// The same error, said of another part.
    #[must_use]
    pub fn at(mut self, part: Part) -> Self {
        self.0.part = part;
        self
    }

    /// The whole finding.
    #[must_use]
    pub fn problem(&self) -> &Problem {
        &self.0
    }

    /// The whole finding, owned.
    #[must_use]
    pub fn into_problem(self) -> Problem {
        *self.0
    }

    /// The value given.
    #[must_use]
    pub fn got(&self) -> &Value {
        &self.0.got
    }

    /// What is needed.
    #[must_use]
    pub fn need(&self) -> &Value {
        &self.0.need
    }

    /// A value of a field that cannot be used.
    pub(crate) fn field(code: Code, field: &str, got: Value, need: Value) -> Self {
        Problem::new(code, Part::Field(field.to_owned())).got(got).need(need).into()
    }
}

impl From<Problem> for Error {
    /// Any finding can end a call; one that is no refusal still carries its own level.
    fn from(problem: Problem) -> Self {
        Error(Box::new(problem))
    }
}
