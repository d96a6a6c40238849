//! A span of filled line between two clips, as a beam: its first bending frequency, and the span for a frequency.
//!
//! Slender straight beam, small swings; the fluid swings along and stiffens nothing. Pressure, flow, nuts, coating and
//! bends in the span are left out, and so is what a rubber-lined clip gives way: real ends lie between pinned and clamped.

use super::Fluid;
use crate::bounds;
use crate::error::{Error, by_name};
use crate::material::Properties;
use crate::math::sqrt;
use crate::tube::Tube;
use crate::units::{
    Frequency, Length, Mass, MassDensity, Pressure, hz, mm, to_hz, to_kg_per_m3, to_mm, to_mpa,
};
use std::f64::consts::PI;

/// What the clips at both ends of a span do.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum SpanEnds {
    /// Both hold it in place and let it tilt.
    Pinned,
    /// One does, the other holds its direction too.
    ClampedPinned,
    /// Both hold place and direction.
    Clamped,
}

impl SpanEnds {
    /// All conditions.
    pub const ALL: [SpanEnds; 3] = [SpanEnds::Pinned, SpanEnds::ClampedPinned, SpanEnds::Clamped];

    /// The name, the same in every language.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            SpanEnds::Pinned => "pinned",
            SpanEnds::ClampedPinned => "clamped-pinned",
            SpanEnds::Clamped => "clamped",
        }
    }

    /// The one of a name; case does not matter.
    ///
    /// # Errors
    /// `UNKNOWN_NAME` with the list of names.
    pub fn from_name(name: &str) -> Result<SpanEnds, Error> {
        by_name("ends", name, &SpanEnds::ALL, SpanEnds::name)
    }

    /// First root of the beam's equation (computed): sin x = 0, tan x = tanh x, cos x cosh x = 1.
    fn root(self) -> f64 {
        match self {
            SpanEnds::Pinned => PI,
            SpanEnds::ClampedPinned => 3.926_602_312_047_919,
            SpanEnds::Clamped => 4.730_040_744_862_704,
        }
    }
}

/// A tube between clips, full or empty.
///
/// ```
/// use linewright::hydraulics::{Fluid, Span, SpanEnds};
/// use linewright::units::{hz, inch, to_hz, to_inch};
/// use linewright::{Material, Tube};
/// let tube = Tube::new(inch(3.0 / 16.0), inch(0.028), Material::LowCarbonSteel)?;
/// let span = Span::new(&tube, &Material::LowCarbonSteel.properties(), Some(&Fluid::glycol()))?;
/// assert!((to_hz(span.first_frequency(inch(14.0), SpanEnds::Pinned)?) - 87.3).abs() < 0.05);
/// assert!((to_inch(span.length_for(hz(200.0), SpanEnds::Pinned)?) - 9.25).abs() < 0.05);
/// # Ok::<(), linewright::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Span {
    /// E I in N mm2.
    stiffness: f64,
    /// Mg per mm.
    mass: f64,
}

/// First frequency in Hz of a beam of stiffness N mm2, mass Mg/mm, length mm.
fn frequency(root: f64, stiffness: f64, mass: f64, length: f64) -> f64 {
    root * root / (2.0 * PI) * sqrt(stiffness / mass) / (length * length)
}

impl Span {
    /// From what is known of metal and fluid; without a fluid, empty.
    ///
    /// # Errors
    /// `NOT_KNOWN` where the metal's modulus or one of the densities is missing.
    pub fn new(tube: &Tube, metal: &Properties, fluid: Option<&Fluid>) -> Result<Span, Error> {
        let modulus = metal.needed("modulus", metal.modulus())?;
        let density = metal.needed("density", metal.density())?;
        let inside = match fluid {
            Some(fluid) => Some(fluid.needed("density", fluid.density())?),
            None => None,
        };
        Span::from_figures(tube, modulus, density, inside)
    }

    /// From figures: elastic modulus and density of the wall, density of the fluid if there is one.
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE`.
    pub fn from_figures(
        tube: &Tube,
        modulus: Pressure,
        density: MassDensity,
        fluid: Option<MassDensity>,
    ) -> Result<Span, Error> {
        let modulus = to_mpa(bounds::MODULUS.pressure(modulus)?);
        let metal = to_kg_per_m3(bounds::DENSITY.density(density)?) / 1e12;
        let inside = match fluid {
            Some(fluid) => to_kg_per_m3(bounds::DENSITY.density(fluid)?) / 1e12,
            None => 0.0,
        };
        let (outer, bore) = (to_mm(tube.od()) / 2.0, to_mm(tube.bore()) / 2.0);
        let (o2, b2) = (outer * outer, bore * bore);
        let inertia = PI / 4.0 * (outer - bore) * (outer + bore) * (o2 + b2);
        Ok(Span {
            stiffness: modulus * inertia,
            mass: metal * tube.metal_area().value + inside * tube.bore_area().value,
        })
    }

    /// Mass of a length, with the fluid in it.
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE`.
    pub fn mass(&self, length: Length) -> Result<Mass, Error> {
        let length = to_mm(bounds::TUBE_LENGTH.length(length)?);
        Ok(Mass::new::<uom::si::mass::megagram>(self.mass * length))
    }

    /// First bending frequency of a span.
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE`.
    pub fn first_frequency(&self, length: Length, ends: SpanEnds) -> Result<Frequency, Error> {
        let length = to_mm(bounds::SPAN.length(length)?);
        Ok(hz(frequency(ends.root(), self.stiffness, self.mass, length)))
    }

    /// The span whose first frequency is the wanted one; clips nearer than that raise it.
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE`, also for a span that no clips are set at.
    pub fn length_for(&self, wanted: Frequency, ends: SpanEnds) -> Result<Length, Error> {
        let wanted = to_hz(bounds::FREQUENCY.frequency(wanted)?);
        let at_one = frequency(ends.root(), self.stiffness, self.mass, 1.0);
        bounds::SPAN.length(mm(sqrt(at_one / wanted)))
    }
}
