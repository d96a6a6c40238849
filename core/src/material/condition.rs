//! What a tube was made to, or how it was left: strengths belong to it, not to the metal alone.

use crate::error::{Error, by_name};

/// What a tube was made to, or how it was left.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Condition {
    /// Welded low-carbon steel tube to SAE J526.
    SaeJ526,
    /// Steel brake pipe to ISO 4038.
    Iso4038,
    /// Annealed, no standard named.
    Annealed,
    /// Drawn to half hard.
    HalfHard,
    /// Stainless tube to ASTM A269.
    A269,
    /// Stainless tube to ASTM A269 of the low-carbon kind (304L, 316L).
    A269LowCarbon,
}

impl Condition {
    /// All conditions.
    pub const ALL: [Condition; 6] = [
        Condition::SaeJ526,
        Condition::Iso4038,
        Condition::Annealed,
        Condition::HalfHard,
        Condition::A269,
        Condition::A269LowCarbon,
    ];

    /// The name, the same in every language.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Condition::SaeJ526 => "SAE J526",
            Condition::Iso4038 => "ISO 4038",
            Condition::Annealed => "annealed",
            Condition::HalfHard => "half hard",
            Condition::A269 => "ASTM A269",
            Condition::A269LowCarbon => "ASTM A269 low carbon",
        }
    }

    /// The condition of a name; case does not matter.
    ///
    /// # Errors
    /// `UNKNOWN_NAME` with the list of names.
    ///
    /// ```
    /// use linewright::material::Condition;
    /// assert_eq!(Condition::from_name("Half hard")?, Condition::HalfHard);
    /// # Ok::<(), linewright::Error>(())
    /// ```
    pub fn from_name(name: &str) -> Result<Condition, Error> {
        by_name("condition", name, &Condition::ALL, Condition::name)
    }
}
