//! Classes of tolerance: `6g`, `4g6g`, `2A`, and the A and B of ISO 228-1.

use super::{Family, Size, Thread, ThreadSide, metric};
use std::fmt;

/// A class of tolerances.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Class {
    /// ISO 965-1: zone of the pitch diameter, zone of the crest (major diameter outside, minor inside).
    Metric {
        /// Zone of the pitch diameter.
        pitch: Zone,
        /// Zone of the crest.
        crest: Zone,
    },
    /// ASME B1.1: 1, 2 or 3, and the side.
    Unified {
        /// 1, 2 or 3.
        number: u8,
        /// A is external, B is internal.
        side: ThreadSide,
    },
    /// ISO 228-1, external: A, the closer one.
    PipeA,
    /// ISO 228-1, external: B.
    PipeB,
}

/// A tolerance grade with its position.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Zone {
    /// 3 to 9; the smaller, the closer.
    pub grade: u8,
    /// The position.
    pub position: Position,
}

/// The position of a tolerance zone: small letters are external threads, capitals internal ones.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[expect(missing_docs, reason = "each is the letter of the standard")]
pub enum Position {
    E,
    F,
    G,
    H,
    GInternal,
    HInternal,
}

impl Position {
    /// The letter.
    #[must_use]
    pub fn letter(self) -> char {
        match self {
            Position::E => 'e',
            Position::F => 'f',
            Position::G => 'g',
            Position::H => 'h',
            Position::GInternal => 'G',
            Position::HInternal => 'H',
        }
    }

    fn read(letter: char) -> Option<Position> {
        let all =
            [Position::E, Position::F, Position::G, Position::H, Position::GInternal, Position::HInternal];
        all.into_iter().find(|position| position.letter() == letter)
    }

    /// The side.
    #[must_use]
    pub fn side(self) -> ThreadSide {
        if self.letter().is_ascii_uppercase() { ThreadSide::Internal } else { ThreadSide::External }
    }
}

impl Zone {
    /// A zone, where the grade exists for the diameter it limits.
    fn read(grade: char, letter: char, is_crest: bool) -> Option<Zone> {
        let position = Position::read(letter)?;
        let grade = u8::try_from(grade.to_digit(10)?).ok()?;
        let exists = match (position.side(), is_crest) {
            (ThreadSide::External, false) => (3..=9).contains(&grade),
            (ThreadSide::External, true) => matches!(grade, 4 | 6 | 8),
            (ThreadSide::Internal, _) => (4..=8).contains(&grade),
        };
        exists.then_some(Zone { grade, position })
    }
}

/// What the class of a metric thread looks like, for messages.
pub(super) const METRIC_CLASSES: &str = "a class such as 6g or 4g6g (external: pitch grades 3 to 9, crest grades 4, 6, 8, positions e f g h) or 6H \
     (internal: grades 4 to 8, positions G H)";

/// Largest diameter with the usual classes 5H and 6h, in micrometers.
const SMALL_UM: u32 = 1400;

impl Class {
    /// The usual class of a thread where none is given: 6g and 6H, 6h and 5H for metric diameters up to 1.4 mm, inside the next
    /// closer one where the pitch is too fine for it, 2A and 2B, A. None where the family has no classes.
    ///
    /// ISO 965-1 names 6g and 6H, and ASME B1.1 names 2A and 2B, the general-purpose classes (from memory). 5H and 6h for M1
    /// to M1.4 were seen in a maker's table of the coarse series.
    #[must_use]
    pub fn usual(thread: &Thread, side: ThreadSide) -> Option<Class> {
        let zone = |grade, position| {
            let zone = Zone { grade, position };
            Some(Class::Metric { pitch: zone, crest: zone })
        };
        let is_small = matches!(thread.size, Size::Metric { diameter_um, .. } if diameter_um <= SMALL_UM);
        match (thread.family(), side) {
            (Family::Metric, ThreadSide::External) => {
                zone(6, if is_small { Position::H } else { Position::G })
            }
            (Family::Metric, ThreadSide::Internal) => {
                let made = |grade: &u8| metric::is_made_inside(thread, *grade);
                zone((4..=if is_small { 5 } else { 6 }).rev().find(made).unwrap_or(4), Position::HInternal)
            }
            (Family::Unified, side) => Some(Class::Unified { number: 2, side }),
            (Family::G, ThreadSide::External) => Some(Class::PipeA),
            _ => None,
        }
    }

    /// The side of a thread of this class.
    #[must_use]
    pub fn side(self) -> Option<ThreadSide> {
        match self {
            Class::Metric { pitch, .. } => Some(pitch.position.side()),
            Class::Unified { side, .. } => Some(side),
            Class::PipeA | Class::PipeB => Some(ThreadSide::External),
        }
    }

    /// Reads the class of a metric thread: `6g`, `4g6g`, `5H6H`. Capitals matter.
    pub(super) fn metric(text: &str) -> Option<Class> {
        let signs: Vec<char> = text.chars().collect();
        let (pitch, crest) = match signs[..] {
            [grade, letter] => (Zone::read(grade, letter, false)?, Zone::read(grade, letter, true)?),
            [grade, letter, crest_grade, crest_letter] => {
                (Zone::read(grade, letter, false)?, Zone::read(crest_grade, crest_letter, true)?)
            }
            _ => return None,
        };
        (pitch.position == crest.position).then_some(Class::Metric { pitch, crest })
    }

    /// Reads the class of a Unified thread: `2A`.
    pub(super) fn unified(text: &str) -> Option<Class> {
        let mut signs = text.chars();
        let number = u8::try_from(signs.next()?.to_digit(10)?).ok().filter(|n| (1..=3).contains(n))?;
        let side = match signs.next()?.to_ascii_uppercase() {
            'A' => ThreadSide::External,
            'B' => ThreadSide::Internal,
            _ => return None,
        };
        signs.next().is_none().then_some(Class::Unified { number, side })
    }
}

impl fmt::Display for Zone {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}{}", self.grade, self.position.letter())
    }
}

impl fmt::Display for Class {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Class::Metric { pitch, crest } if pitch == crest => write!(f, "{pitch}"),
            Class::Metric { pitch, crest } => write!(f, "{pitch}{crest}"),
            Class::Unified { number, side: ThreadSide::External } => write!(f, "{number}A"),
            Class::Unified { number, side: ThreadSide::Internal } => write!(f, "{number}B"),
            Class::PipeA => f.write_str("A"),
            Class::PipeB => f.write_str("B"),
        }
    }
}
