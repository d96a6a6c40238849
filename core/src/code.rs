//! The one table of codes: every finding this library can make, what it means, how grave it is, and what clears it.
//!
//! Numbers never change and are never used again. 1xx is reading, 2xx shape, 3xx making, 4xx joints, 5xx
//! acceptance, 9xx calls through a binding.

mod row;
mod table;
#[cfg(test)]
mod tests;

pub use table::TABLE;

/// How grave a finding is. The order is the order of printing: the worst first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Level {
    /// No result exists, and nothing lifts it.
    Refuse,
    /// The result is computed but is a draft, and the steps that depend on it are locked.
    Stop,
    /// The result holds; a person must know this.
    Caution,
    /// Worth knowing.
    Note,
}

impl Level {
    /// The level as it is printed and as the bindings spell it.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Level::Refuse => "refuse",
            Level::Stop => "stop",
            Level::Caution => "caution",
            Level::Note => "note",
        }
    }
}

/// What can lift a finding.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Lift {
    /// Nothing: the input itself must change.
    Never,
    /// Only the missing or corrected fact; nobody's signature replaces it.
    Fact,
    /// A named person with a reason, who is then printed.
    Person,
}

impl Lift {
    /// As the bindings spell it.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Lift::Never => "nothing",
            Lift::Fact => "the fact",
            Lift::Person => "a person",
        }
    }
}

/// Which steps of a plan wait until a stop is cleared.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Locks {
    /// None.
    Nothing,
    /// The bend named by the place, and what follows it.
    Bend,
    /// Everything from the cut on.
    Line,
}

/// One row of the table.
#[derive(Debug, Clone, Copy)]
pub struct CodeRow {
    /// The code.
    pub code: Code,
    /// Its name, the same in Rust, C, Python and the case files.
    pub name: &'static str,
    /// How grave.
    pub level: Level,
    /// What can lift it.
    pub lift: Lift,
    /// What waits for it.
    pub locks: Locks,
    /// What it says, in one sentence.
    pub meaning: &'static str,
    /// What clears it.
    pub cleared_by: &'static str,
}

/// A finding's code. The number is [`Code::number`]; name, level and lift stand in [`TABLE`].
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
#[non_exhaustive]
#[repr(u16)]
#[expect(missing_docs, reason = "each variant is documented once, in TABLE, where a test demands it")]
pub enum Code {
    UnitMissing = 101,
    NotANumber = 102,
    NumberAmbiguous = 103,
    Unreadable = 104,
    WrongKind = 105,
    DateInSize = 106,
    OutOfRange = 107,
    UnknownName = 108,
    FieldMissing = 109,
    CountMismatch = 110,
    ThreadAmbiguous = 111,
    HexNotThread = 112,
    AngleLarge = 113,
    FieldsConflict = 114,
    MethodMissing = 115,
    UnitImplausible = 116,
    AssumedInch = 117,
    ThreadContradiction = 118,
    ThreadSide = 119,
    StraightNegative = 201,
    NoCorner = 202,
    PathDegenerate = 203,
    HandMismatch = 204,
    PathsDiffer = 205,
    BendInClamp = 301,
    NutOnBend = 302,
    BendsTooClose = 303,
    RadiusTooSmall = 304,
    RadiusBelowSeen = 305,
    RadiusLimitUnknown = 306,
    TrimEndNone = 307,
    NotThisFormer = 308,
    SpringbackUnknown = 309,
    SpringbackWeak = 310,
    SettingOutsideTrials = 311,
    FlareToolMissing = 312,
    FlareNetUnknown = 313,
    FlareNetAssumed = 314,
    NutBoreSmall = 315,
    TrialsUnusable = 316,
    HoleTooSmall = 317,
    HexUnknown = 318,
    Deferred = 319,
    FlareSlipped = 320,
    ClipInBend = 321,
    SpringbackEstimated = 322,
    RadiusEstimated = 323,
    CalibrationOtherTube = 324,
    FlareWallUnseen = 325,
    NutBoreLarge = 326,
    FlareSizeUnknown = 327,
    FlareTooWide = 328,
    FlareWidthClose = 329,
    FlareSizeOdd = 330,
    SeatUnknown = 401,
    FlareSeatMismatch = 402,
    Single45Refused = 403,
    ThreadMismatch = 404,
    ThreadUnknown = 405,
    PortUnknown = 406,
    NoseMismatch = 407,
    NoseUnknown = 408,
    ThreadLookalike = 409,
    ClampMarginNone = 410,
    ClampMarginUnknown = 411,
    WasherOnFlare = 412,
    WasherCount = 413,
    PortDepthsOdd = 414,
    NotLiftable = 501,
    NothingToLift = 502,
    NullArgument = 901,
    TextNotUtf8 = 902,
    SpaceTooSmall = 903,
    StructSize = 904,
    IndexOutOfRange = 905,
    InternalFault = 906,
    NotKnown = 907,
}

impl Code {
    /// The stable number.
    #[must_use]
    pub fn number(self) -> u16 {
        self as u16
    }

    /// The row of [`TABLE`].
    #[must_use]
    pub fn row(self) -> &'static CodeRow {
        // A test holds that every code has its row; the last row stands in so that no call can panic.
        TABLE.iter().find(|row| row.code == self).unwrap_or(&TABLE[TABLE.len() - 1])
    }

    /// The name, the same in every language.
    #[must_use]
    pub fn name(self) -> &'static str {
        self.row().name
    }

    /// How grave.
    #[must_use]
    pub fn level(self) -> Level {
        self.row().level
    }

    /// What can lift it.
    #[must_use]
    pub fn lift(self) -> Lift {
        self.row().lift
    }

    /// The code of a number, if there is one.
    #[must_use]
    pub fn from_number(number: u16) -> Option<Code> {
        TABLE.iter().map(|row| row.code).find(|code| code.number() == number)
    }

    /// The code of a name, if there is one.
    #[must_use]
    pub fn from_name(name: &str) -> Option<Code> {
        TABLE.iter().find(|row| row.name == name).map(|row| row.code)
    }
}
