//! Flares, the seats they close on, and the noses of the nuts that press them there.

mod allowance;
mod sealing;
mod standards;
#[cfg(test)]
mod tests;
mod trial;

pub use allowance::{Allowance, BUBBLE_ADDED_MM, DOUBLE_ADDED_MM, FlareForm, Stretch, Way, allowances};
pub(crate) use allowance::{has_double_rule, spare};
pub use sealing::{HoseEnd, SealedBy, Washers, washers};
pub use standards::{
    FlareSize, HEXAGONS, Hexagon, STANDARDS, Standard, USUAL_THREADS, UsualThread, flare_size,
    known_diameters, seats_of,
};
pub use trial::{FlareTrial, slip};

use crate::code::Code;
use crate::error::Error;
use crate::problem::Value;
use crate::units::Length;

/// The form of a flare that this library plans.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Flare {
    /// Double 45 degree flare (SAE J533 names the form; ISO 13486-1 the double flare; texts not opened).
    Double45,
    /// Convex single flare, called bubble flare (ISO 4038, SAE J1290, DIN 74234 form F; texts not opened).
    Bubble,
    /// Single 37 degree flare, only for a recorded 37 degree seat (SAE J514; text not opened).
    Single37,
}

/// The form of a port's seat.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Seat {
    /// A cone in the port, over which a double 45 degree flare closes.
    Inverted45,
    /// A hollow seat that takes a bubble flare.
    Bubble,
    /// A 37 degree cone.
    Cone37,
}

/// The form of a nut's nose.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Nose {
    /// Threaded to a coned nose.
    Coned,
    /// Flat, often with an unthreaded lead.
    Flat,
    /// Presses through a separate support sleeve.
    Sleeve,
}

/// Whether two things belong together. Not known is an answer of its own and never counts as yes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Fit {
    /// They belong together.
    Fits,
    /// They do not.
    DoesNotFit,
    /// A fact is missing.
    NotKnown,
}

impl Fit {
    /// The name, the same in every language.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Fit::Fits => "fits",
            Fit::DoesNotFit => "does not fit",
            Fit::NotKnown => "not known",
        }
    }
}

impl Flare {
    /// All forms.
    pub const ALL: [Flare; 3] = [Flare::Double45, Flare::Bubble, Flare::Single37];

    /// The name, the same in every language.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Flare::Double45 => "double-45",
            Flare::Bubble => "bubble",
            Flare::Single37 => "single-37",
        }
    }

    /// The form of a name.
    ///
    /// # Errors
    /// `SINGLE_45_REFUSED` for a single 45 degree flare, `UNKNOWN_NAME` with the list of names.
    pub fn from_name(name: &str) -> Result<Flare, Error> {
        let low = name.to_ascii_lowercase();
        if low.contains("single") && low.contains("45") {
            let need = Value::text(Flare::Double45.name());
            return Err(Error::field(Code::Single45Refused, "flare", Value::text(name), need));
        }
        by_name(name, "flare", &Flare::ALL.map(|f| (f.name(), f)))
    }

    /// Strokes of the tool: a double flare takes two (common practice, no source).
    #[must_use]
    pub fn strokes(self) -> usize {
        match self {
            Flare::Double45 => 2,
            Flare::Bubble | Flare::Single37 => 1,
        }
    }

    /// The least that the finished flare puts between its nut and its seat, along the axis. Two walls of a double flare lie
    /// on the seat's cone, which is more along the axis than across the walls by 1 / sin 45; their thinning takes some of
    /// it back. Of the other forms at least one wall is there.
    #[must_use]
    pub fn thickness_at_least(self, wall: Length) -> Length {
        match self {
            Flare::Double45 => 2.0 * wall,
            Flare::Bubble | Flare::Single37 => wall,
        }
    }

    /// The most that it puts there: two walls that did not thin, along the axis; of a bubble four walls, above the height
    /// that its geometry has up to 1.6 tubes wide, on tube up to ten walls wide (ours).
    pub(crate) fn thickness_at_most(self, wall: Length) -> Length {
        match self {
            Flare::Double45 => 2.0 * std::f64::consts::SQRT_2 * wall,
            Flare::Bubble | Flare::Single37 => 4.0 * wall,
        }
    }

    /// Whether the flare belongs to a seat. Only the listed pairs fit.
    #[must_use]
    pub fn fits_seat(self, seat: Option<Seat>) -> Fit {
        match (self, seat) {
            (_, None) => Fit::NotKnown,
            (Flare::Double45, Some(Seat::Inverted45))
            | (Flare::Bubble, Some(Seat::Bubble))
            | (Flare::Single37, Some(Seat::Cone37)) => Fit::Fits,
            _ => Fit::DoesNotFit,
        }
    }

    /// Whether a nut's nose belongs to the flare: coned for double flares, flat for bubble flares, through a sleeve
    /// for 37 degree flares (all common practice, no source).
    #[must_use]
    pub fn fits_nose(self, nose: Option<Nose>) -> Fit {
        match (self, nose) {
            (_, None) => Fit::NotKnown,
            (Flare::Double45, Some(Nose::Coned))
            | (Flare::Bubble, Some(Nose::Flat))
            | (Flare::Single37, Some(Nose::Sleeve)) => Fit::Fits,
            _ => Fit::DoesNotFit,
        }
    }
}

impl Seat {
    /// All forms.
    pub const ALL: [Seat; 3] = [Seat::Inverted45, Seat::Bubble, Seat::Cone37];

    /// The name, the same in every language.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Seat::Inverted45 => "inverted-45",
            Seat::Bubble => "bubble",
            Seat::Cone37 => "cone-37",
        }
    }

    /// The seat of a name; `"unknown"` is no seat.
    ///
    /// # Errors
    /// `UNKNOWN_NAME` with the list of names.
    pub fn from_name(name: &str) -> Result<Option<Seat>, Error> {
        known_or_not(name, "seat", &Seat::ALL.map(|s| (s.name(), s)))
    }
}

impl Nose {
    /// All forms.
    pub const ALL: [Nose; 3] = [Nose::Coned, Nose::Flat, Nose::Sleeve];

    /// The name, the same in every language.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Nose::Coned => "coned",
            Nose::Flat => "flat",
            Nose::Sleeve => "sleeve",
        }
    }

    /// The nose of a name; `"unknown"` is no nose.
    ///
    /// # Errors
    /// `UNKNOWN_NAME` with the list of names.
    pub fn from_name(name: &str) -> Result<Option<Nose>, Error> {
        known_or_not(name, "nose", &Nose::ALL.map(|n| (n.name(), n)))
    }
}

fn known_or_not<T: Copy>(name: &str, field: &str, rows: &[(&str, T)]) -> Result<Option<T>, Error> {
    if name.trim().eq_ignore_ascii_case("unknown") { Ok(None) } else { by_name(name, field, rows).map(Some) }
}

fn by_name<T: Copy>(name: &str, field: &str, rows: &[(&str, T)]) -> Result<T, Error> {
    rows.iter().find(|(row, _)| row.eq_ignore_ascii_case(name.trim())).map(|(_, found)| *found).ok_or_else(
        || {
            let names: Vec<&str> = rows.iter().map(|(row, _)| *row).collect();
            let need = Value::text(format!("one of {}", names.join(", ")));
            Error::field(Code::UnknownName, field, Value::text(name), need)
        },
    )
}
