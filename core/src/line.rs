//! A line: tube, path, and what is at its two ends.

mod draft;
mod field;
#[cfg(test)]
mod tests;

pub use draft::{Draft, LineDraft};
pub use field::{FIELDS, Field};

use crate::bounds;
use crate::error::Error;
use crate::flare::{Flare, Nose, Seat};
use crate::path::Path;
use crate::problem::{Problem, Side};
use crate::thread::Thread;
use crate::tube::Tube;
use crate::units::Length;

/// A nut.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Nut {
    thread: Option<Thread>,
    length: Length,
    bore: Length,
    nose: Option<Nose>,
}

impl Nut {
    /// A nut by its thread (None: not known), length over all, bore, and nose (None: not known).
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE`.
    pub fn new(
        thread: Option<Thread>,
        length: Length,
        bore: Length,
        nose: Option<Nose>,
    ) -> Result<Nut, Error> {
        Ok(Nut {
            thread,
            length: bounds::NUT_LENGTH.length(length)?,
            bore: bounds::NUT_BORE.length(bore)?,
            nose,
        })
    }

    /// Thread, if known.
    #[must_use]
    pub fn thread(&self) -> Option<Thread> {
        self.thread
    }

    /// Length over all.
    #[must_use]
    pub fn length(&self) -> Length {
        self.length
    }

    /// Bore.
    #[must_use]
    pub fn bore(&self) -> Length {
        self.bore
    }

    /// Form of the nose, if known.
    #[must_use]
    pub fn nose(&self) -> Option<Nose> {
        self.nose
    }
}

/// The port that an end is screwed into.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Port {
    /// What it is on: `"axle tee"`.
    pub name: String,
    /// Its thread, if known.
    pub thread: Option<Thread>,
    /// Its seat, if known.
    pub seat: Option<Seat>,
}

/// What is at one end of a line.
#[derive(Debug, Clone, PartialEq)]
pub struct End {
    /// The nut.
    pub nut: Nut,
    /// The flare to be made.
    pub flare: Flare,
    /// The port it belongs to, if one was recorded.
    pub port: Option<Port>,
}

/// A line to be made.
#[derive(Debug, Clone, PartialEq)]
pub struct Line {
    name: String,
    tube: Tube,
    path: Path,
    ends: [End; 2],
    found: Vec<Problem>,
}

impl Line {
    /// A line from its parts.
    #[must_use]
    pub fn new(name: &str, tube: Tube, path: Path, a: End, b: End) -> Line {
        Line { name: printable(name), tube, path, ends: [a, b], found: Vec::new() }
    }

    /// Name.
    #[must_use]
    pub fn name(&self) -> &str {
        &self.name
    }

    /// Tube.
    #[must_use]
    pub fn tube(&self) -> &Tube {
        &self.tube
    }

    /// Path.
    #[must_use]
    pub fn path(&self) -> &Path {
        &self.path
    }

    /// One of the two ends.
    #[must_use]
    pub fn end(&self, side: Side) -> &End {
        match side {
            Side::A => &self.ends[0],
            Side::B => &self.ends[1],
        }
    }

    /// What was found while the line was read from a draft; a plan repeats it.
    #[must_use]
    pub fn found(&self) -> &[Problem] {
        &self.found
    }

    /// With what was found while reading it.
    fn with_found(mut self, found: Vec<Problem>) -> Line {
        self.found = found;
        self
    }
}

/// A name as a card can print it: one line, control characters out, spaces at the ends off.
fn printable(text: &str) -> String {
    text.chars().map(|c| if c.is_control() { ' ' } else { c }).collect::<String>().trim().to_owned()
}
