//! Where a number comes from, and how that was checked.

use std::fmt;

/// How a number was checked against its source.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Checked {
    /// The number was seen in the named text, or in a public copy of it.
    Seen,
    /// The number was seen in another text that quotes the named one.
    SecondHand,
    /// The number was computed from a formula.
    Computed,
    /// The number was written from memory; nobody has looked it up.
    Memory,
    /// A habit of the trade that no text is known for.
    CommonPractice,
}

impl Checked {
    /// All ways.
    pub const ALL: [Checked; 5] =
        [Checked::Seen, Checked::SecondHand, Checked::Computed, Checked::Memory, Checked::CommonPractice];

    /// The words printed for it.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Checked::Seen => "seen",
            Checked::SecondHand => "seen second-hand",
            Checked::Computed => "computed",
            Checked::Memory => "from memory, not checked",
            Checked::CommonPractice => "common practice, no source",
        }
    }
}

/// The source of a number.
#[derive(Debug, Clone, PartialEq, Eq, Hash)]
pub struct Source {
    /// The text: a standard with its edition, a handbook, a page.
    pub text: String,
    /// Table, clause or page, where known.
    pub place: String,
    /// How it was checked.
    pub checked: Checked,
}

impl Source {
    /// A source with its place.
    #[must_use]
    pub fn new(text: &str, place: &str, checked: Checked) -> Self {
        Source { text: printable(text), place: printable(place), checked }
    }

    /// A habit of the trade without a text.
    #[must_use]
    pub fn common_practice() -> Self {
        Source::new("", "", Checked::CommonPractice)
    }
}

/// The source of a row of a table: [`Source`] as it stands among constants.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct RowSource {
    /// The text with its edition; a text whose edition nobody saw says so.
    pub text: &'static str,
    /// Table, clause or page; what is not known says so.
    pub place: &'static str,
    /// How it was checked.
    pub checked: Checked,
}

/// What stands for a place that nobody saw.
const NO_PLACE: &str = "place not known";

impl RowSource {
    /// A source with its place.
    #[must_use]
    pub const fn new(text: &'static str, place: &'static str, checked: Checked) -> Self {
        RowSource { text, place, checked }
    }

    /// A text that nobody has looked up.
    #[must_use]
    pub const fn memory(text: &'static str) -> Self {
        RowSource { text, place: NO_PLACE, checked: Checked::Memory }
    }

    /// A habit of the trade without a text.
    #[must_use]
    pub const fn common_practice() -> Self {
        RowSource { text: "no text known", place: NO_PLACE, checked: Checked::CommonPractice }
    }

    /// The same as a source.
    #[must_use]
    pub fn source(&self) -> Source {
        Source::new(self.text, self.place, self.checked)
    }
}

impl fmt::Display for Source {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for part in [&self.text, &self.place] {
            if !part.is_empty() {
                write!(f, "{part}, ")?;
            }
        }
        f.write_str(self.checked.name())
    }
}

/// A text as one line of a card can print it: control characters out, spaces at the ends off.
pub(crate) fn printable(text: &str) -> String {
    text.chars().map(|c| if c.is_control() { ' ' } else { c }).collect::<String>().trim().to_owned()
}

/// A value with its source.
#[derive(Debug, Clone, PartialEq)]
pub struct Sourced<T> {
    /// The value.
    pub value: T,
    /// Where it comes from.
    pub source: Source,
}
