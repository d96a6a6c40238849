//! The tube that a line is made of.

#[cfg(test)]
mod tests;

use crate::bounds;
use crate::code::Code;
use crate::error::Error;
use crate::material::Material;
use crate::problem::{Part, Problem, Value};
use crate::source::{Checked, Source, Sourced};
use crate::units::{Area, Length, Mass, Volume, mm, to_mm};
use std::f64::consts::PI;

/// A round tube: outside diameter, wall, material, and if the tube maker gives one, the smallest bend radius.
///
/// ```
/// use linewright::{Material, Tube, units::{inch, meter, mm, to_ml, to_mm}};
/// let tube = Tube::new(inch(3.0 / 16.0), inch(0.028), Material::LowCarbonSteel)?;
/// assert!((to_mm(tube.bore()) - 3.3401).abs() < 1e-4);
/// assert!((to_ml(tube.bore_volume(meter(1.0))?) - 8.762).abs() < 1e-3);
/// # Ok::<(), linewright::Error>(())
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct Tube {
    od: Length,
    wall: Length,
    material: Material,
    min_radius: Option<Sourced<Length>>,
}

/// Outside diameter and wall of a tube that has a bore.
pub(crate) fn with_bore(od: Length, wall: Length) -> Result<[Length; 2], Error> {
    let od = bounds::OD.length(od)?;
    let wall = bounds::WALL.length(wall)?;
    if to_mm(od) - 2.0 * to_mm(wall) <= 0.0 {
        return Err(Problem::new(Code::OutOfRange, Part::Field("wall".to_owned()))
            .got(Value::Length(wall))
            .need(Value::text(format!("less than half the outside diameter, {}", Value::Length(od / 2.0))))
            .why("the wall leaves no bore")
            .fix("check which number is the wall and which the diameter")
            .into());
    }
    Ok([od, wall])
}

impl Tube {
    /// A tube of an outside diameter and a wall.
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE`, also when the wall leaves no bore.
    pub fn new(od: Length, wall: Length, material: Material) -> Result<Tube, Error> {
        let [od, wall] = with_bore(od, wall)?;
        Ok(Tube { od, wall, material, min_radius: None })
    }

    /// The same tube with the smallest bend radius that its maker gives, and where that was read.
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE`; `FIELD_MISSING` without a source.
    pub fn with_min_radius(mut self, radius: Length, source: &str) -> Result<Tube, Error> {
        if source.trim().is_empty() {
            return Err(Problem::new(Code::FieldMissing, Part::Field("min_radius_source".to_owned()))
                .need(Value::text("where the smallest radius was read"))
                .into());
        }
        let value = bounds::RADIUS.length(radius)?;
        self.min_radius = Some(Sourced { value, source: Source::new(source, "", Checked::SecondHand) });
        Ok(self)
    }

    /// Outside diameter.
    #[must_use]
    pub fn od(&self) -> Length {
        self.od
    }

    /// Wall thickness.
    #[must_use]
    pub fn wall(&self) -> Length {
        self.wall
    }

    /// Material.
    #[must_use]
    pub fn material(&self) -> Material {
        self.material
    }

    /// Inside diameter.
    #[must_use]
    pub fn bore(&self) -> Length {
        mm(to_mm(self.od) - 2.0 * to_mm(self.wall))
    }

    /// The tube maker's smallest bend radius, if one was recorded.
    #[must_use]
    pub fn min_radius(&self) -> Option<&Sourced<Length>> {
        self.min_radius.as_ref()
    }

    /// Area of the bore. Its number in mm2 is also its milliliters per meter.
    #[must_use]
    pub fn bore_area(&self) -> Area {
        self.bore() * self.bore() * (PI / 4.0)
    }

    /// Area of the metal.
    #[must_use]
    pub fn metal_area(&self) -> Area {
        (self.od - self.wall) * self.wall * PI
    }

    /// Volume of fluid in a length of tube.
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE`.
    pub fn bore_volume(&self, length: Length) -> Result<Volume, Error> {
        bounds::TUBE_LENGTH.length(length).map(|length| self.bore_area() * length)
    }

    /// Mass of a length of empty tube, without coating. None where the density is not known.
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE`.
    pub fn mass(&self, length: Length) -> Result<Option<Sourced<Mass>>, Error> {
        let length = bounds::TUBE_LENGTH.length(length)?;
        Ok(self.material.density().map(|density| Sourced {
            value: density.value * (self.metal_area() * length),
            source: density.source,
        }))
    }
}
