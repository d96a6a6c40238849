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

/// The item of a list that has a name; case does not matter. Every enum that crosses to another language is read so.
pub(crate) fn by_name<T: Copy>(
    field: &str,
    text: &str,
    all: &[T],
    name: impl Fn(T) -> &'static str,
) -> Result<T, Error> {
    let wanted = text.trim().to_lowercase();
    all.iter().copied().find(|item| name(*item).to_lowercase() == wanted).ok_or_else(|| {
        let names: Vec<&str> = all.iter().map(|item| name(*item)).collect();
        let need = Value::text(format!("one of {}", names.join(", ")));
        Error::field(Code::UnknownName, field, Value::text(text), need)
    })
}

impl From<Problem> for Error {
    /// Any finding can end a call; one that is no refusal still carries its own level.
    fn from(problem: Problem) -> Self {
        Error(Box::new(problem))
    }
}
