//! Findings about a line: what, where, how grave, what was found, what is needed, and the cure.

mod ledger;

pub use ledger::{Assumption, Ledger};

use crate::code::{Code, Level, Lift};
use crate::units::{self, Angle, Length, Pressure, Ratio};
use std::fmt;

/// One of the two ends of a line; A is the one nearer the pressure source.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Side {
    /// The end nearer the pressure source.
    A,
    /// The other end.
    B,
}

impl Side {
    /// The other end.
    #[must_use]
    pub fn other(self) -> Side {
        match self {
            Side::A => Side::B,
            Side::B => Side::A,
        }
    }

    /// The end of a letter; case does not matter.
    ///
    /// # Errors
    /// `UNKNOWN_NAME`.
    pub fn from_name(name: &str) -> Result<Side, crate::Error> {
        match name.trim() {
            "A" | "a" => Ok(Side::A),
            "B" | "b" => Ok(Side::B),
            _ => Err(crate::Error::field(Code::UnknownName, "end", Value::text(name), Value::text("A or B"))),
        }
    }

    /// `"A"` or `"B"`.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Side::A => "A",
            Side::B => "B",
        }
    }
}

/// The part of a line, or of what was typed, that a finding is about. Numbers count from 1, as on paper.
#[derive(Debug, Clone, PartialEq, Eq, Hash)]
pub enum Part {
    /// The line as a whole.
    Line,
    /// A field of the input, by its name.
    Field(String),
    /// An end.
    End(Side),
    /// A straight; straight n lies before bend n.
    Straight(usize),
    /// A bend.
    Bend(usize),
}

impl fmt::Display for Part {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Part::Line => f.write_str("line"),
            Part::Field(name) => write!(f, "field {name}"),
            Part::End(side) => write!(f, "end {}", side.name()),
            Part::Straight(n) => write!(f, "straight {n}"),
            Part::Bend(n) => write!(f, "bend {n}"),
        }
    }
}

/// What was found or is needed. A number carries its kind, so that a program can act on it.
#[derive(Debug, Clone, PartialEq)]
pub enum Value {
    /// Nothing to say.
    Nothing,
    /// A length.
    Length(Length),
    /// An angle.
    Angle(Angle),
    /// A pressure or stress.
    Pressure(Pressure),
    /// A plain ratio.
    Ratio(Ratio),
    /// A count.
    Count(usize),
    /// Words.
    Text(String),
}

impl Value {
    /// A text value.
    #[must_use]
    pub fn text(text: impl Into<String>) -> Self {
        Value::Text(text.into())
    }
}

impl fmt::Display for Value {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Value::Nothing => f.write_str("nothing"),
            Value::Length(value) => f.write_str(&units::length_text(*value)),
            Value::Angle(value) => f.write_str(&units::angle_text(*value)),
            Value::Pressure(value) => f.write_str(&units::pressure_text(*value)),
            Value::Ratio(value) => write!(f, "{}", value.value),
            Value::Count(count) => write!(f, "{count}"),
            Value::Text(text) => f.write_str(text),
        }
    }
}

/// Who lifted a stop, and why.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Acceptance {
    /// The finding's id, see [`Problem::id`].
    pub id: String,
    /// The person.
    pub who: String,
    /// The reason.
    pub why: String,
}

/// A finding about a line that can be described. Its level is its code's.
#[derive(Debug, Clone, PartialEq)]
pub struct Problem {
    /// What.
    pub code: Code,
    /// Which part.
    pub part: Part,
    /// What was found.
    pub got: Value,
    /// What is needed.
    pub need: Value,
    /// Why it matters.
    pub why: String,
    /// How to mend it.
    pub fix: String,
    /// Who lifted it, if somebody could and did.
    pub lifted: Option<Acceptance>,
}

impl Problem {
    /// A finding in its shortest form; the table's words stand in for `why` and `fix`.
    #[must_use]
    pub fn new(code: Code, part: Part) -> Self {
        let row = code.row();
        Problem {
            code,
            part,
            got: Value::Nothing,
            need: Value::Nothing,
            why: row.meaning.to_owned(),
            fix: row.cleared_by.to_owned(),
            lifted: None,
        }
    }

    /// With what was found.
    #[must_use]
    pub fn got(mut self, got: Value) -> Self {
        self.got = got;
        self
    }

    /// With what is needed.
    #[must_use]
    pub fn need(mut self, need: Value) -> Self {
        self.need = need;
        self
    }

    /// With a reason of its own.
    #[must_use]
    pub fn why(mut self, why: impl Into<String>) -> Self {
        self.why = why.into();
        self
    }

    /// With a cure of its own.
    #[must_use]
    pub fn fix(mut self, fix: impl Into<String>) -> Self {
        self.fix = fix.into();
        self
    }

    /// How grave.
    #[must_use]
    pub fn level(&self) -> Level {
        self.code.level()
    }

    /// Code and place, by which a person lifts it: `"BENDS_TOO_CLOSE@bend 4"`.
    #[must_use]
    pub fn id(&self) -> String {
        format!("{}@{}", self.code.name(), self.part)
    }

    /// Whether it holds a plan back: a refusal, or a stop that nobody has lifted.
    #[must_use]
    pub fn is_open(&self) -> bool {
        match self.level() {
            Level::Refuse => true,
            Level::Stop => self.lifted.is_none(),
            Level::Caution | Level::Note => false,
        }
    }
}

impl fmt::Display for Problem {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} {}, {}: {}", self.level().name(), self.code.name(), self.part, self.why)?;
        if self.got != Value::Nothing {
            write!(f, "; got {}", self.got)?;
        }
        if self.need != Value::Nothing {
            write!(f, "; need {}", self.need)?;
        }
        write!(f, "; cure: {}", self.fix)
    }
}

/// Applies acceptances. One that a person may not give, or that matches nothing, becomes a finding of its own.
pub(crate) fn accept(problems: &mut Vec<Problem>, acceptances: &[Acceptance]) {
    let mut more = Vec::new();
    for (i, acceptance) in acceptances.iter().enumerate() {
        let is_signed = !acceptance.who.trim().is_empty() && !acceptance.why.trim().is_empty();
        let part = Part::Field(format!("accept, item {}", i + 1));
        match problems.iter_mut().find(|p| p.id() == acceptance.id) {
            Some(found) if found.code.lift() == Lift::Person && is_signed => {
                found.lifted = Some(acceptance.clone());
            }
            Some(found) => {
                let can_sign = found.code.lift() == Lift::Person;
                let cure =
                    if can_sign { "the name of a person and a reason" } else { found.code.row().cleared_by };
                more.push(
                    Problem::new(Code::NotLiftable, part)
                        .got(Value::text(acceptance.id.clone()))
                        .need(Value::text(cure)),
                );
            }
            None => {
                more.push(Problem::new(Code::NothingToLift, part).got(Value::text(acceptance.id.clone())))
            }
        }
    }
    problems.extend(more);
}

/// Worst first, otherwise in the order found.
pub(crate) fn sort(problems: &mut [Problem]) {
    problems.sort_by_key(Problem::level);
}
