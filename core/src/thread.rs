//! Threads: their designations, limits of size, who mates with whom, and what a measured one may be.
//!
//! | wanted | here |
//! |---|---|
//! | reading and printing a designation | [`Thread::read`], its `Display` |
//! | limits of size, external and internal | [`Thread::limits`] |
//! | height, lead angle, stress area, tap drill | [`Thread::height`] and its neighbors |
//! | what was measured may be | [`identify`] |
//! | one thread in another | [`Mating`] |
//! | how much of it would have to be sheared off | [`Stripping`] |
//! | every thread this library knows by name | [`CATALOGUE`] |

mod catalogue;
mod class;
mod engagement;
mod form;
mod identify;
mod inches;
mod limits;
mod mate;
mod metric;
mod pipe;
mod preferred;
mod print;
mod profile;
mod read;
mod read_pipe;
mod separate;
mod spelling;
mod strength;
#[cfg(test)]
mod tests;
mod unified;

pub use catalogue::{CATALOGUE, CatalogueRow, Count, lookalikes, report};
pub use class::{Class, Position, Zone};
pub use engagement::EngagementGroup;
pub use identify::{Candidate, Identification, Measured, identify};
pub use limits::{DiameterLimits, Limits};
pub use mate::{Feel, Mating, Starts};
pub use profile::{Engagement, Profile};
pub(crate) use separate::ways_apart;
pub use separate::{Measure, Separation, separate};
pub use strength::Stripping;
pub use unified::Series;

use crate::code::Code;
use crate::error::Error;
use crate::problem::{Part, Problem, Value};
use crate::units::{Angle, Length, Ratio, deg, inch, mm, ratio};

/// A thread: family, diameter and pitch, hand, and the class of its tolerances where one was given. Whole numbers
/// inside, so that two spellings of one thread are equal.
///
/// Two threads belong together where [`Thread::is_same_size`] says so; equality also asks for the same class.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Thread {
    size: Size,
    hand: Hand,
    class: Option<Class>,
    engagement: Option<EngagementGroup>,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
enum Size {
    /// ISO metric: diameter and pitch in micrometers.
    Metric { diameter_um: u32, pitch_um: u32 },
    /// Unified: diameter in millionths of an inch (a 64th is 15 625), threads in two inches (4 1/2 is 9).
    Unified { diameter_uin: u32, per_two_inch: u32 },
    /// Pipe: the row of its table.
    Pipe { family: Family, row: usize },
}

/// The family of standards that a thread belongs to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Family {
    /// ISO metric, 60 degrees (ISO 68-1, 261, 724, 965-1).
    Metric,
    /// Unified inch, 60 degrees (ASME B1.1).
    Unified,
    /// Parallel pipe thread that does not seal on its flanks, 55 degrees (ISO 228-1).
    G,
    /// External taper pipe thread that seals on its flanks, 55 degrees (ISO 7-1).
    R,
    /// Internal parallel pipe thread for R (ISO 7-1).
    Rp,
    /// Internal taper pipe thread for R (ISO 7-1).
    Rc,
    /// Taper pipe thread, 60 degrees (ASME B1.20.1).
    Npt,
}

/// Which way it turns in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Hand {
    /// Clockwise.
    Right,
    /// Counterclockwise.
    Left,
}

/// Outside or inside: a nut's thread here is external, a port's is internal.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum ThreadSide {
    /// On the outside, male.
    External,
    /// In a hole, female.
    Internal,
}

impl Family {
    /// All families.
    pub const ALL: [Family; 7] =
        [Family::Metric, Family::Unified, Family::G, Family::R, Family::Rp, Family::Rc, Family::Npt];

    /// The name, the same in every language.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Family::Metric => "metric",
            Family::Unified => "unified",
            Family::G => "G",
            Family::R => "R",
            Family::Rp => "Rp",
            Family::Rc => "Rc",
            Family::Npt => "NPT",
        }
    }

    /// Which sides the family has; None for both.
    #[must_use]
    pub fn only_side(self) -> Option<ThreadSide> {
        match self {
            Family::R => Some(ThreadSide::External),
            Family::Rp | Family::Rc => Some(ThreadSide::Internal),
            Family::Metric | Family::Unified | Family::G | Family::Npt => None,
        }
    }
}

impl Hand {
    /// The name, the same in every language.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Hand::Right => "right",
            Hand::Left => "left",
        }
    }
}

impl ThreadSide {
    /// The name, the same in every language.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            ThreadSide::External => "external",
            ThreadSide::Internal => "internal",
        }
    }

    /// The side of a name.
    ///
    /// # Errors
    /// `UNKNOWN_NAME`.
    pub fn from_name(name: &str) -> Result<ThreadSide, Error> {
        match name.trim() {
            "external" | "male" => Ok(ThreadSide::External),
            "internal" | "female" => Ok(ThreadSide::Internal),
            _ => Err(Error::field(
                Code::UnknownName,
                "side",
                Value::text(name),
                Value::text("external (male) or internal (female)"),
            )),
        }
    }
}

impl Thread {
    const fn of(size: Size) -> Thread {
        Thread { size, hand: Hand::Right, class: None, engagement: None }
    }

    /// Whether two designations name the same thread, whatever their classes.
    #[must_use]
    pub fn is_same_size(&self, other: &Thread) -> bool {
        self.size == other.size && self.hand == other.hand
    }

    /// The thread without its class.
    #[must_use]
    pub fn plain(&self) -> Thread {
        Thread { hand: self.hand, ..Thread::of(self.size) }
    }

    /// The error of a figure that this kind of thread does not have.
    fn has_no(&self, figure: &str, need: &str) -> Error {
        Problem::new(Code::NotKnown, Part::Field("thread".to_owned()))
            .got(Value::text(self.to_string()))
            .need(Value::text(need))
            .why(format!("this thread has no {figure}"))
            .fix("ask for it of another thread, or leave it out")
            .into()
    }

    /// The family.
    #[must_use]
    pub fn family(&self) -> Family {
        match self.size {
            Size::Metric { .. } => Family::Metric,
            Size::Unified { .. } => Family::Unified,
            Size::Pipe { family, .. } => family,
        }
    }

    /// The hand.
    #[must_use]
    pub fn hand(&self) -> Hand {
        self.hand
    }

    /// The class of tolerances, if one was given.
    #[must_use]
    pub fn class(&self) -> Option<Class> {
        self.class
    }

    /// The group of engagement lengths, if one was given (ISO metric only).
    #[must_use]
    pub fn engagement(&self) -> Option<EngagementGroup> {
        self.engagement
    }

    /// The side, where class or family say it.
    #[must_use]
    pub fn side(&self) -> Option<ThreadSide> {
        self.class.and_then(Class::side).or_else(|| self.family().only_side())
    }

    /// The series of a Unified thread, which follows from diameter and threads per inch.
    #[must_use]
    pub fn series(&self) -> Option<Series> {
        match self.size {
            Size::Unified { diameter_uin, per_two_inch } => Some(Series::of(diameter_uin, per_two_inch)),
            Size::Metric { .. } | Size::Pipe { .. } => None,
        }
    }

    /// Nominal diameter; of a pipe thread its basic major diameter at the gauge plane, of NPT the pipe's.
    #[must_use]
    pub fn diameter(&self) -> Length {
        match self.size {
            Size::Metric { diameter_um, .. } => mm(f64::from(diameter_um) / 1000.0),
            Size::Unified { diameter_uin, .. } => inch(f64::from(diameter_uin) / 1_000_000.0),
            Size::Pipe { family, row } => pipe::diameter(family, row),
        }
    }

    /// Pitch.
    #[must_use]
    pub fn pitch(&self) -> Length {
        match self.size {
            Size::Metric { pitch_um, .. } => mm(f64::from(pitch_um) / 1000.0),
            Size::Unified { per_two_inch, .. } => inch(2.0 / f64::from(per_two_inch)),
            Size::Pipe { family, row } => inch(2.0 / f64::from(pipe::per_two_inch(family, row))),
        }
    }

    /// Threads per inch.
    #[must_use]
    pub fn per_inch(&self) -> f64 {
        match self.size {
            Size::Metric { pitch_um, .. } => 25_400.0 / f64::from(pitch_um),
            Size::Unified { per_two_inch, .. } => f64::from(per_two_inch) / 2.0,
            Size::Pipe { family, row } => f64::from(pipe::per_two_inch(family, row)) / 2.0,
        }
    }

    /// Half the angle between the flanks.
    #[must_use]
    pub fn half_angle(&self) -> Angle {
        match self.family() {
            Family::Metric | Family::Unified | Family::Npt => deg(30.0),
            Family::G | Family::R | Family::Rp | Family::Rc => deg(27.5),
        }
    }

    /// Change of diameter along the axis: 1/16 for a taper thread.
    #[must_use]
    pub fn taper(&self) -> Ratio {
        match self.family() {
            Family::R | Family::Rc | Family::Npt => ratio(1.0 / 16.0),
            Family::Metric | Family::Unified | Family::G | Family::Rp => ratio(0.0),
        }
    }
}
