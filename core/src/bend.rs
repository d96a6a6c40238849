//! One bend: arc, tangent length and gain.

mod kernel;
pub mod pressure;
#[cfg(test)]
mod tests;
pub mod wall;

pub(crate) use kernel::{arc_mm, gain_mm, tangent_mm};

use crate::bounds;
use crate::code::Code;
use crate::error::{Error, by_name};
use crate::problem::{Part, Problem, Value};
use crate::units::{Angle, Length, deg, mm, to_deg, to_mm, to_rad};

/// How a bend is made.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum Making {
    /// On the bench's former.
    #[default]
    Former,
    /// By hand, as a long sweep.
    Hand,
    /// Round a mandrel of its own, as a loop.
    Mandrel,
}

impl Making {
    /// All ways.
    pub const ALL: [Making; 3] = [Making::Former, Making::Hand, Making::Mandrel];

    /// The name, the same in every language.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Making::Former => "former",
            Making::Hand => "hand",
            Making::Mandrel => "mandrel",
        }
    }

    /// The way of a name.
    ///
    /// # Errors
    /// `UNKNOWN_NAME` with the list of names.
    pub fn from_name(name: &str) -> Result<Making, Error> {
        by_name("making", name, &Making::ALL, Making::name)
    }
}

/// One bend of a path: how far, turned how far from the plane of the bend before it, and how tight as formed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bend {
    angle: Angle,
    rotation: Angle,
    radius: Length,
    making: Making,
}

impl Bend {
    /// A bend by `angle` (0 = straight tube) of centerline radius `radius` as formed, in a plane turned by
    /// `rotation` against the plane of the bend before it, right-handed about the direction from A to B. The
    /// rotation is brought into -180 (exclusive) to 180 degrees.
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE`.
    pub fn new(angle: Angle, rotation: Angle, radius: Length) -> Result<Bend, Error> {
        let typed = to_deg(bounds::ROTATION.angle(rotation)?);
        let is_kept = typed > -180.0 && typed <= 180.0;
        let turn = typed - 360.0 * ((typed - 180.0) / 360.0).ceil();
        Ok(Bend {
            angle: bounds::ANGLE.angle(angle)?,
            rotation: if is_kept { rotation } else { deg(turn) },
            radius: bounds::RADIUS.length(radius)?,
            making: Making::Former,
        })
    }

    /// The same bend made in another way. Only a bend made on the former takes its setting and its grip from the bench.
    #[must_use]
    pub fn made(self, making: Making) -> Bend {
        Bend { making, ..self }
    }

    /// The bends of a line: an angle each, a rotation for each but the first, and one radius for all or one each.
    ///
    /// # Errors
    /// `COUNT_MISMATCH` when the lists do not belong together; otherwise as [`Bend::new`], naming the bend.
    pub fn list(angles: &[Angle], rotations: &[Angle], radii: &[Length]) -> Result<Vec<Bend>, Error> {
        let mismatch = |what: &str, got: usize, need: usize| -> Error {
            Problem::new(Code::CountMismatch, Part::Field(what.to_owned()))
                .got(Value::Count(got))
                .need(Value::Count(need))
                .why(format!("{} bends need {need} {what}", angles.len()))
                .into()
        };
        if angles.len() > bounds::MOST_BENDS {
            return Err(mismatch("bends", angles.len(), bounds::MOST_BENDS));
        }
        if rotations.len() != angles.len().saturating_sub(1) {
            return Err(mismatch("rotations", rotations.len(), angles.len().saturating_sub(1)));
        }
        if !angles.is_empty() && radii.len() != 1 && radii.len() != angles.len() {
            return Err(mismatch("radii", radii.len(), angles.len()));
        }
        if angles.is_empty() {
            // A radius that rounds nothing shall still be one.
            radii.iter().try_for_each(|radius| bounds::RADIUS.length(*radius).map(|_| ()))?;
        }
        let rotations = std::iter::once(deg(0.0)).chain(rotations.iter().copied());
        angles
            .iter()
            .zip(rotations)
            .enumerate()
            .map(|(i, (&angle, rotation))| {
                let radius = if radii.len() == 1 { radii[0] } else { radii[i] };
                Bend::new(angle, rotation, radius).map_err(|error| error.at(Part::Bend(i + 1)))
            })
            .collect()
    }

    /// How far the tube is bent; 0 = straight.
    #[must_use]
    pub fn angle(&self) -> Angle {
        self.angle
    }

    /// Turn of the bend plane against that of the bend before.
    #[must_use]
    pub fn rotation(&self) -> Angle {
        self.rotation
    }

    /// Centerline radius as formed, after springback.
    #[must_use]
    pub fn radius(&self) -> Length {
        self.radius
    }

    /// How it is made.
    #[must_use]
    pub fn making(&self) -> Making {
        self.making
    }

    /// The same bend with another rotation, already in range.
    pub(crate) fn turned(&self, rotation: Angle) -> Bend {
        Bend { rotation, ..*self }
    }

    /// Tube in the bend, along the center line: R x angle.
    #[must_use]
    pub fn arc(&self) -> Length {
        mm(arc_mm(to_mm(self.radius), to_rad(self.angle)))
    }

    /// From the corner to where the bend starts: R tan(angle / 2).
    ///
    /// # Errors
    /// `NO_CORNER` at 180 degrees and above: the legs never meet.
    ///
    /// ```
    /// use linewright::{Bend, units::{deg, mm, to_mm}};
    /// let bend = Bend::new(deg(90.0), deg(0.0), mm(14.3))?;
    /// assert!((to_mm(bend.tangent_length()?) - 14.3).abs() < 1e-12);
    /// assert!((to_mm(bend.arc()) - 22.462).abs() < 5e-4);
    /// assert!((to_mm(bend.gain()?) - 6.138).abs() < 5e-4);
    /// # Ok::<(), linewright::Error>(())
    /// ```
    pub fn tangent_length(&self) -> Result<Length, Error> {
        self.has_corner()?;
        Ok(mm(tangent_mm(to_mm(self.radius), to_rad(self.angle))))
    }

    /// How much shorter the way round the bend is than the way over its corner: 2R tan(angle / 2) - R x angle.
    ///
    /// # Errors
    /// `NO_CORNER` at 180 degrees and above.
    pub fn gain(&self) -> Result<Length, Error> {
        self.has_corner()?;
        Ok(mm(gain_mm(to_mm(self.radius), to_rad(self.angle))))
    }

    fn has_corner(&self) -> Result<(), Error> {
        if to_deg(self.angle) < 180.0 {
            return Ok(());
        }
        Err(Problem::new(Code::NoCorner, Part::Field("angle".to_owned()))
            .got(Value::Angle(self.angle))
            .need(Value::text("less than 180 deg"))
            .into())
    }
}
