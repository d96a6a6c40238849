//! Hose ends and their washers: what seals, how many washers, and how many to buy.

use crate::code::Code;
use crate::error::Error;
use crate::problem::{Part, Problem, Value};
use crate::thread::{Thread, ThreadSide};

/// An end of a hose, or a bolt that holds one.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum HoseEnd {
    /// Screwed in, sealed by one washer under its shoulder.
    MaleWasher,
    /// Takes the nut of a flared line; the flare seals.
    FemaleFlare,
    /// A ring held by a hollow bolt, a washer on each side of it.
    Banjo,
}

/// What seals a joint.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum SealedBy {
    /// Washers.
    Washer,
    /// A flare on its seat.
    Flare,
}

impl SealedBy {
    /// The name, the same in every language.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            SealedBy::Washer => "washer",
            SealedBy::Flare => "flare",
        }
    }
}

/// Washers to buy for one thread.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Washers {
    /// The thread that they go on.
    pub thread: Thread,
    /// How many the joints need; always new ones.
    pub needed: usize,
    /// Spares: one of each size.
    pub spares: usize,
}

impl HoseEnd {
    /// All ends.
    pub const ALL: [HoseEnd; 3] = [HoseEnd::MaleWasher, HoseEnd::FemaleFlare, HoseEnd::Banjo];

    /// The name, the same in every language.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            HoseEnd::MaleWasher => "male-washer",
            HoseEnd::FemaleFlare => "female-flare",
            HoseEnd::Banjo => "banjo",
        }
    }

    /// The end of a name.
    ///
    /// # Errors
    /// `UNKNOWN_NAME` with the list of names.
    pub fn from_name(name: &str) -> Result<HoseEnd, Error> {
        super::by_name(name, "hose_end", &HoseEnd::ALL.map(|end| (end.name(), end)))
    }

    /// What seals it.
    #[must_use]
    pub fn sealed_by(self) -> SealedBy {
        match self {
            HoseEnd::MaleWasher | HoseEnd::Banjo => SealedBy::Washer,
            HoseEnd::FemaleFlare => SealedBy::Flare,
        }
    }

    /// Washers on it: one under a shoulder, two at a banjo, none where a flare seals (common practice, no source).
    #[must_use]
    pub fn washers(self) -> usize {
        match self {
            HoseEnd::MaleWasher => 1,
            HoseEnd::FemaleFlare => 0,
            HoseEnd::Banjo => 2,
        }
    }

    /// Compares the washers that somebody put on, or plans to, with what the end needs.
    ///
    /// ```
    /// use linewright::Code;
    /// use linewright::flare::HoseEnd;
    /// assert!(HoseEnd::Banjo.check(2).is_none());
    /// assert_eq!(HoseEnd::FemaleFlare.check(1).unwrap().code, Code::WasherOnFlare);
    /// assert_eq!(HoseEnd::Banjo.check(1).unwrap().code, Code::WasherCount);
    /// ```
    #[must_use]
    pub fn check(self, washers: usize) -> Option<Problem> {
        if washers == self.washers() {
            return None;
        }
        let code = if self.sealed_by() == SealedBy::Flare { Code::WasherOnFlare } else { Code::WasherCount };
        Some(
            Problem::new(code, Part::Field("washers".to_owned()))
                .got(Value::Count(washers))
                .need(Value::Count(self.washers())),
        )
    }
}

/// Washers to buy for a list of hose ends with their threads: what the joints need, and one spare of each size.
///
/// ```
/// use linewright::Thread;
/// use linewright::flare::{HoseEnd, washers};
/// let m10 = Thread::read("M10x1")?;
/// let list = washers(&[(HoseEnd::Banjo, m10), (HoseEnd::MaleWasher, m10), (HoseEnd::FemaleFlare, m10)])?;
/// assert_eq!((list[0].needed, list[0].spares), (3, 1));
/// # Ok::<(), linewright::Error>(())
/// ```
///
/// The hand of a thread makes no other washer.
///
/// # Errors
/// `THREAD_SIDE` for an internal thread under a washer, `OUT_OF_RANGE` for a taper one, which seals on itself; the joint is
/// named by its number.
pub fn washers(ends: &[(HoseEnd, Thread)]) -> Result<Vec<Washers>, Error> {
    let mut list: Vec<Washers> = Vec::new();
    for (number, (end, thread)) in (1..).zip(ends).filter(|(_, (end, _))| end.washers() > 0) {
        let wrong = |code, need: &str| {
            let field = format!("joints, item {number}");
            Err(Error::field(code, &field, Value::text(thread.to_string()), Value::text(need)))
        };
        if thread.side() == Some(ThreadSide::Internal) {
            return wrong(Code::ThreadSide, "an external thread: a washer lies under a bolt or a shoulder");
        }
        if thread.taper().value > 0.0 {
            return wrong(
                Code::OutOfRange,
                "a parallel thread: a taper one seals on itself, without a washer",
            );
        }
        let is_same = |row: &&mut Washers| {
            row.thread.diameter() == thread.diameter() && row.thread.pitch() == thread.pitch()
        };
        match list.iter_mut().find(is_same) {
            Some(row) => row.needed += end.washers(),
            None => list.push(Washers { thread: thread.plain(), needed: end.washers(), spares: 1 }),
        }
    }
    Ok(list)
}
