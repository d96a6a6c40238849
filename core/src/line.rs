//! A line: tube, path, and what is at its two ends.

mod clamp;
mod draft;
mod field;
mod nut;
mod reader;
#[cfg(test)]
mod tests;

pub use clamp::ClampMargin;
pub use draft::{Draft, LineDraft};
pub use field::{FIELDS, Field};
pub use nut::Nut;

use crate::bounds;
use crate::error::Error;
use crate::flare::{Flare, Seat};
use crate::path::Path;
use crate::problem::{Assumption, Part, Problem, Side};
use crate::source::printable;
use crate::thread::Thread;
use crate::tube::Tube;
use crate::units::Length;

/// The port that an end is screwed into.
#[derive(Debug, Clone, PartialEq)]
pub struct Port {
    /// What it is on: `"axle tee"`.
    pub name: String,
    /// Its thread, if known.
    pub thread: Option<Thread>,
    /// Its seat, if known.
    pub seat: Option<Seat>,
    /// Depth to the end of its full thread, from the face that the nut's head comes to, if measured.
    pub thread_depth: Option<Length>,
    /// Depth to the middle of its seat, where the flare closes, from the same face, if measured.
    pub seat_depth: Option<Length>,
}

impl Port {
    /// A port by what it is on, its thread and its seat (None: not known).
    #[must_use]
    pub fn new(name: &str, thread: Option<Thread>, seat: Option<Seat>) -> Port {
        Port { name: printable(name), thread, seat, thread_depth: None, seat_depth: None }
    }

    /// With its depths from the face that the nut's head comes to: to the end of the full thread, and to the middle of the
    /// seat, where the flare closes.
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE`.
    pub fn with_depths(mut self, thread: Length, seat: Length) -> Result<Port, Error> {
        let depth = |value: Length, name: &str| {
            let depth = bounds::PORT_DEPTH.length(value);
            depth.map_err(|error| error.at(Part::Field(name.to_owned())))
        };
        self.thread_depth = Some(depth(thread, "port_thread_depth")?);
        self.seat_depth = Some(depth(seat, "seat_depth")?);
        Ok(self)
    }
}

/// Something that must be on the tube before an end is closed: armor, a grommet, a label sleeve, a bulkhead plate.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LoadedPart {
    /// What it is.
    pub name: String,
    /// Which way round, where that matters: `"cone to the flare"`.
    pub facing: String,
}

impl LoadedPart {
    /// A part by its name and which way round it goes; empty where that does not matter.
    #[must_use]
    pub fn new(name: &str, facing: &str) -> LoadedPart {
        LoadedPart { name: printable(name), facing: printable(facing) }
    }
}

/// What is at one end of a line.
#[derive(Debug, Clone, PartialEq)]
pub struct End {
    /// The nut.
    pub nut: Nut,
    /// The flare to be made.
    pub flare: Flare,
    /// Diameter of a finished flare like it, as measured on a test piece of this tube.
    pub flare_diameter: Option<Length>,
    /// The port it belongs to, if one was recorded.
    pub port: Option<Port>,
    /// What goes onto the tube from this end before the nut, in that order.
    pub loaded: Vec<LoadedPart>,
    /// Diameters of the holes that this end goes through when the line is fitted.
    pub holes: Vec<Length>,
    /// Whether this end is flared on the vehicle, after it went through its holes.
    pub flared_in_place: bool,
}

impl End {
    /// An end with its nut and flare; the rest is filled in where there is any.
    #[must_use]
    pub fn new(nut: Nut, flare: Flare) -> End {
        End {
            nut,
            flare,
            flare_diameter: None,
            port: None,
            loaded: Vec::new(),
            holes: Vec::new(),
            flared_in_place: false,
        }
    }
}

/// A line to be made.
#[derive(Debug, Clone, PartialEq)]
pub struct Line {
    name: String,
    tube: Tube,
    path: Path,
    ends: [End; 2],
    deferred: Option<String>,
    found: Vec<Problem>,
    assumed: Vec<Assumption>,
}

impl Line {
    /// A line from its parts.
    #[must_use]
    pub fn new(name: &str, tube: Tube, path: Path, a: End, b: End) -> Line {
        Line {
            name: printable(name),
            tube,
            path,
            ends: [a, b],
            deferred: None,
            found: Vec::new(),
            assumed: Vec::new(),
        }
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

    /// The same line, not to be made before what it waits for is there. Its figures are computed, its cut is locked.
    #[must_use]
    pub fn deferred(mut self, waits_for: &str) -> Line {
        let waits_for = printable(waits_for);
        self.deferred = Some(waits_for).filter(|reason| !reason.is_empty());
        self
    }

    /// What the line waits for, if it is deferred.
    #[must_use]
    pub fn waits_for(&self) -> Option<&str> {
        self.deferred.as_deref()
    }

    /// What was assumed while the line was read from a draft; the ledger of a plan repeats it.
    #[must_use]
    pub fn assumed(&self) -> &[Assumption] {
        &self.assumed
    }

    /// What was found while the line was read from a draft; a plan repeats it.
    #[must_use]
    pub fn found(&self) -> &[Problem] {
        &self.found
    }

    /// With what was found and assumed while reading it.
    fn with_found(mut self, found: Vec<Problem>, assumed: Vec<Assumption>) -> Line {
        self.found = found;
        self.assumed = assumed;
        self
    }
}
