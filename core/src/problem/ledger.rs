use super::Value;
use crate::source::Source;
use std::fmt;

/// A default that a result rests on.
#[derive(Debug, Clone, PartialEq)]
pub struct Assumption {
    /// What was assumed, in words.
    pub what: String,
    /// The value used.
    pub value: Value,
    /// Why this value.
    pub basis: Source,
}

impl fmt::Display for Assumption {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: {} ({})", self.what, self.value, self.basis)
    }
}

/// Every default used in a result, each once.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Ledger {
    rows: Vec<Assumption>,
}

impl Ledger {
    /// Enters a default; one that is there already is not entered twice.
    pub fn assume(&mut self, what: &str, value: Value, basis: Source) {
        let row = Assumption { what: what.to_owned(), value, basis };
        if !self.rows.contains(&row) {
            self.rows.push(row);
        }
    }

    /// The rows, in the order of their first use.
    #[must_use]
    pub fn rows(&self) -> &[Assumption] {
        &self.rows
    }
}
