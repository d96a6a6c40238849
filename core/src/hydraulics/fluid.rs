//! What is known of a fluid, each figure with its source.

use crate::bounds;
use crate::code::Code;
use crate::error::Error;
use crate::material::own;
use crate::problem::Value;
use crate::source::{Checked, Source, Sourced, printable};
use crate::units::{MassDensity, Pressure, TemperatureCoefficient, kg_per_m3, mpa, per_kelvin};

/// A fluid. Of a user's own only what the user gives is there.
///
/// ```
/// use linewright::hydraulics::Fluid;
/// use linewright::units::{mpa, to_mpa};
/// let own = Fluid::named("drum 3").with_bulk_modulus(mpa(1700.0), "maker's sheet, 40 degrees C")?;
/// assert!(own.expansion().is_none());
/// assert!((to_mpa(Fluid::glycol().bulk_modulus().unwrap().value) - 1975.0).abs() < 1.0);
/// # Ok::<(), linewright::Error>(())
/// ```
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Fluid {
    name: String,
    density: Option<Sourced<MassDensity>>,
    bulk_modulus: Option<Sourced<Pressure>>,
    expansion: Option<Sourced<TemperatureCoefficient>>,
}

impl Fluid {
    /// A fluid of which nothing is known yet but what it is called.
    #[must_use]
    pub fn named(name: &str) -> Fluid {
        Fluid { name: printable(name), ..Fluid::default() }
    }

    /// Brake fluid on glycol, by what could be found: a speed of sound that was seen, the rest from memory. Air, warmth and
    /// water change its stiffness by more than the digits here; 1700 to 2200 MPa are remembered as the usual range.
    #[must_use]
    pub fn glycol() -> Fluid {
        let memory = |place| Source::new("usual value for brake fluid on glycol", place, Checked::Memory);
        Fluid {
            name: "brake fluid on glycol".to_owned(),
            density: Some(Sourced { value: kg_per_m3(1050.0), source: memory("density") }),
            // Density times the square of 4500 ft/s, 1371.6 m/s.
            bulk_modulus: Some(Sourced {
                value: mpa(1050.0 * 1371.6 * 1371.6 / 1e6),
                source: Source::new(
                    "public page on brake hydraulics: sound travels at about 4500 ft/s",
                    "times itself and a density from memory, 1050 kg/m3",
                    Checked::Computed,
                ),
            }),
            expansion: Some(Sourced { value: per_kelvin(7e-4), source: memory("expansion of volume") }),
        }
    }

    /// With a density.
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE`; `FIELD_MISSING` without a source.
    pub fn with_density(mut self, value: MassDensity, source: &str) -> Result<Fluid, Error> {
        self.density = own("density", bounds::DENSITY.density(value)?, source)?;
        Ok(self)
    }

    /// With a bulk modulus, as stiff as the fluid is at its pressure, temperature and share of air.
    ///
    /// # Errors
    /// As [`Fluid::with_density`].
    pub fn with_bulk_modulus(mut self, value: Pressure, source: &str) -> Result<Fluid, Error> {
        self.bulk_modulus = own("bulk_modulus", bounds::BULK_MODULUS.pressure(value)?, source)?;
        Ok(self)
    }

    /// With a thermal expansion of its volume.
    ///
    /// # Errors
    /// As [`Fluid::with_density`].
    pub fn with_expansion(mut self, value: TemperatureCoefficient, source: &str) -> Result<Fluid, Error> {
        self.expansion = own("expansion", bounds::EXPANSION.per_temperature(value)?, source)?;
        Ok(self)
    }

    /// What it is called.
    #[must_use]
    pub fn name(&self) -> &str {
        &self.name
    }

    /// Density.
    #[must_use]
    pub fn density(&self) -> Option<&Sourced<MassDensity>> {
        self.density.as_ref()
    }

    /// Bulk modulus.
    #[must_use]
    pub fn bulk_modulus(&self) -> Option<&Sourced<Pressure>> {
        self.bulk_modulus.as_ref()
    }

    /// Thermal expansion of its volume.
    #[must_use]
    pub fn expansion(&self) -> Option<&Sourced<TemperatureCoefficient>> {
        self.expansion.as_ref()
    }

    /// A figure that a computation cannot do without.
    pub(super) fn needed<T: Copy>(&self, field: &str, figure: Option<&Sourced<T>>) -> Result<T, Error> {
        figure.map(|figure| figure.value).ok_or_else(|| {
            let need = Value::text(format!("a figure for {} with its source", self.name));
            Error::field(Code::NotKnown, field, Value::Nothing, need)
        })
    }
}
