//! The way of a line's center line: straights between bends, from legs or points and back.

mod place;
mod points;
#[cfg(test)]
mod tests;
mod vec3;

pub use place::{Extent, Place};
pub use points::Point;

use crate::bend::{Bend, gain_mm, tangent_mm};
use crate::bounds::{self, Bound};
use crate::code::Code;
use crate::error::Error;
use crate::problem::{Part, Problem, Value};
use crate::units::{Length, deg, mm, to_deg, to_mm, to_rad};

/// Straights and bends in turn, from end A to end B, always one straight more than bends. Straight n lies before
/// bend n; all numbers count from 1.
///
/// A straight that was typed is never negative. One that was worked out from legs or points may be, where two bends
/// overlap; a plan then says so and stays a draft.
///
/// ```
/// use linewright::{Bend, Path, units::{deg, inch, mm, to_mm}};
/// let bends = Bend::list(&[deg(30.0), deg(60.0), deg(90.0)], &[deg(180.0), deg(90.0)], &[mm(14.3)])?;
/// let path = Path::from_legs(&[mm(55.0), inch(28.0), inch(9.25), mm(76.0)], &bends)?;
/// assert!((to_mm(path.developed_length()) - 1069.30).abs() < 0.005);
/// # Ok::<(), linewright::Error>(())
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct Path {
    straights: Vec<Length>,
    bends: Vec<Bend>,
}

impl Path {
    /// A path from its straights, tangent to tangent.
    ///
    /// # Errors
    /// `COUNT_MISMATCH` unless there is one straight more than bends; `NOT_A_NUMBER` or `OUT_OF_RANGE` naming the
    /// straight.
    pub fn from_straights(straights: &[Length], bends: &[Bend]) -> Result<Path, Error> {
        check_lengths(straights, bends, &bounds::STRAIGHT, "straights")?;
        Ok(Path::of(straights.to_vec(), bends.to_vec()))
    }

    /// A path from straights that were worked out before, and so may be negative: the way back from a stored path.
    ///
    /// # Errors
    /// As [`Path::from_straights`], with a lower limit as far below zero as the upper one is above it.
    pub fn restored(straights: &[Length], bends: &[Bend]) -> Result<Path, Error> {
        check_lengths(straights, bends, &bounds::COMPUTED_STRAIGHT, "straights")?;
        Ok(Path::of(straights.to_vec(), bends.to_vec()))
    }

    /// A path from its legs, corner to corner.
    ///
    /// # Errors
    /// As [`Path::from_straights`], and `NO_CORNER` naming a bend of 180 degrees or more.
    pub fn from_legs(legs: &[Length], bends: &[Bend]) -> Result<Path, Error> {
        check_lengths(legs, bends, &bounds::LEG, "legs")?;
        let tangents = tangents_mm(bends)?;
        let straights = legs.iter().zip(tangents.windows(2)).map(|(leg, t)| mm(to_mm(*leg) - t[0] - t[1]));
        Ok(Path::of(straights.collect(), bends.to_vec()))
    }

    /// A path from its legs as a tape laid over the outer edges of the tube measures them, from outer corner to outer
    /// corner: each bend lengthens both its legs by half the diameter x tan(angle / 2).
    ///
    /// # Errors
    /// As [`Path::from_legs`].
    pub fn from_outer_legs(legs: &[Length], bends: &[Bend], od: Length) -> Result<Path, Error> {
        check_lengths(legs, bends, &bounds::LEG, "outer_legs")?;
        let half = to_mm(bounds::OD.length(od)?) / 2.0;
        let tangents = tangents_mm(bends)?;
        let edge = |bend: Option<&Bend>| bend.map_or(0.0, |b| tangent_mm(half, to_rad(b.angle())));
        let corner = legs.iter().enumerate().map(|(i, leg)| {
            let before = i.checked_sub(1).and_then(|i| bends.get(i));
            mm(to_mm(*leg) - edge(before) - edge(bends.get(i)))
        });
        let straights = corner.zip(tangents.windows(2)).map(|(leg, t)| mm(to_mm(leg) - t[0] - t[1]));
        Ok(Path::of(straights.collect(), bends.to_vec()))
    }

    /// The first bend has no bend before it to be turned against.
    fn of(straights: Vec<Length>, mut bends: Vec<Bend>) -> Path {
        if let Some(first) = bends.first_mut() {
            *first = first.turned(deg(0.0));
        }
        Path { straights, bends }
    }

    /// The straights, A to B.
    #[must_use]
    pub fn straights(&self) -> &[Length] {
        &self.straights
    }

    /// The bends, A to B.
    #[must_use]
    pub fn bends(&self) -> &[Bend] {
        &self.bends
    }

    /// The legs, corner to corner.
    ///
    /// # Errors
    /// `NO_CORNER` naming a bend of 180 degrees or more.
    pub fn legs(&self) -> Result<Vec<Length>, Error> {
        let tangents = tangents_mm(&self.bends)?;
        Ok(self.straights.iter().zip(tangents.windows(2)).map(|(s, t)| mm(to_mm(*s) + t[0] + t[1])).collect())
    }

    /// Sum of the straights.
    #[must_use]
    pub fn straight_length(&self) -> Length {
        total(self.straights.iter().copied())
    }

    /// Sum of the arcs.
    #[must_use]
    pub fn arc_length(&self) -> Length {
        total(self.bends.iter().map(Bend::arc))
    }

    /// Length along the center line: straights and arcs.
    #[must_use]
    pub fn developed_length(&self) -> Length {
        self.straight_length() + self.arc_length()
    }

    /// Sum of the gains: how much shorter the line is than its legs together.
    ///
    /// # Errors
    /// `NO_CORNER` naming a bend of 180 degrees or more.
    pub fn total_gain(&self) -> Result<Length, Error> {
        tangents_mm(&self.bends)?;
        Ok(total(self.bends.iter().map(|b| mm(gain_mm(to_mm(b.radius()), to_rad(b.angle()))))))
    }

    /// The same line, from B to A. Rotations keep their signs.
    #[must_use]
    pub fn reversed(&self) -> Path {
        let straights = self.straights.iter().rev().copied().collect();
        let n = self.bends.len();
        let bends = (0..n).map(|i| {
            // Between bends i and i + 1 of the new order lie bends n - 1 - i and n - 2 - i of the old one, and the
            // rotation between two planes is kept with the later of them.
            let rotation = if i == 0 { deg(0.0) } else { self.bends[n - i].rotation() };
            self.bends[n - 1 - i].turned(rotation)
        });
        Path { straights, bends: bends.collect() }
    }

    /// The same path with one bend, counted from 0, changed.
    pub(crate) fn map_bend(&self, bend: usize, change: impl Fn(&Bend) -> Bend) -> Path {
        let bends = self.bends.iter().enumerate().map(|(i, b)| if i == bend { change(b) } else { *b });
        Path { straights: self.straights.clone(), bends: bends.collect() }
    }

    /// The other hand: all rotations negated (180 degrees stays).
    #[must_use]
    pub fn mirrored(&self) -> Path {
        let mirror = |b: &Bend| {
            // Half a turn is its own mirror image. Subtracting from zero leaves no negative zero behind.
            let turn = b.rotation();
            if to_deg(turn) >= 180.0 { *b } else { b.turned(deg(0.0) - turn) }
        };
        Path { straights: self.straights.clone(), bends: self.bends.iter().map(mirror).collect() }
    }
}

/// A sum that is plus zero where there is nothing to add; the standard library's is minus zero.
fn total(lengths: impl Iterator<Item = Length>) -> Length {
    lengths.fold(mm(0.0), |sum, length| sum + length)
}

/// Tangent lengths of the bends in mm, with a zero before the first and after the last.
fn tangents_mm(bends: &[Bend]) -> Result<Vec<f64>, Error> {
    let mut tangents = vec![0.0];
    for (i, bend) in bends.iter().enumerate() {
        bend.tangent_length().map_err(|error| error.at(Part::Bend(i + 1)))?;
        tangents.push(tangent_mm(to_mm(bend.radius()), to_rad(bend.angle())));
    }
    tangents.push(0.0);
    Ok(tangents)
}

fn check_lengths(lengths: &[Length], bends: &[Bend], bound: &Bound, name: &str) -> Result<(), Error> {
    if lengths.len() != bends.len() + 1 {
        return Err(Problem::new(Code::CountMismatch, Part::Field(name.to_owned()))
            .got(Value::Count(lengths.len()))
            .need(Value::Count(bends.len() + 1))
            .why(format!("{} bends need {} {name}", bends.len(), bends.len() + 1))
            .into());
    }
    for (i, length) in lengths.iter().enumerate() {
        bound.length(*length).map_err(|error| error.at(Part::Straight(i + 1)))?;
    }
    Ok(())
}
