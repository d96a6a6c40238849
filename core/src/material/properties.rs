//! What is known of a metal, each figure with its source; what is not known is missing.

use crate::bounds;
use crate::code::Code;
use crate::error::Error;
use crate::problem::{Part, Problem, Value};
use crate::source::{Checked, Source, Sourced};
use crate::units::{MassDensity, Pressure, Ratio, TemperatureCoefficient};

/// True stress K e^n over true strain e, beyond yield.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PowerLaw {
    /// K.
    pub strength_coefficient: Pressure,
    /// n.
    pub exponent: Ratio,
}

/// What is known of a metal. Of a user's own only what the user gives is there.
///
/// ```
/// use linewright::material::Properties;
/// use linewright::units::{mpa, ratio};
/// let own = Properties::named("our coil")
///     .with_modulus(mpa(205_000.0), "test report 17")?
///     .with_yield_strength(mpa(240.0), "test report 17")?;
/// assert!(own.poisson().is_none());
/// assert_eq!(own.clone().with_poisson(ratio(0.6), "a guess").unwrap_err().code().name(), "OUT_OF_RANGE");
/// assert_eq!(own.with_poisson(ratio(0.3), " ").unwrap_err().code().name(), "FIELD_MISSING");
/// # Ok::<(), linewright::Error>(())
/// ```
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Properties {
    pub(super) name: String,
    pub(super) density: Option<Sourced<MassDensity>>,
    pub(super) modulus: Option<Sourced<Pressure>>,
    pub(super) poisson: Option<Sourced<Ratio>>,
    pub(super) yield_strength: Option<Sourced<Pressure>>,
    pub(super) tensile_strength: Option<Sourced<Pressure>>,
    pub(super) elongation: Option<Sourced<Ratio>>,
    pub(super) tangent_modulus: Option<Sourced<Pressure>>,
    pub(super) hardening: Option<Sourced<PowerLaw>>,
    pub(super) expansion: Option<Sourced<TemperatureCoefficient>>,
}

/// A user's figure with the user's source, of a metal or a fluid.
pub(crate) fn own<T>(field: &str, value: T, source: &str) -> Result<Option<Sourced<T>>, Error> {
    if source.trim().is_empty() {
        return Err(Problem::new(Code::FieldMissing, Part::Field(format!("{field}_source")))
            .need(Value::text("where the figure was read or measured"))
            .into());
    }
    Ok(Some(Sourced { value, source: Source::new(source, "", Checked::SecondHand) }))
}

impl Properties {
    /// A metal of which nothing is known yet but what it is called.
    #[must_use]
    pub fn named(name: &str) -> Properties {
        Properties { name: crate::source::printable(name), ..Properties::default() }
    }

    /// With a density.
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE`; `FIELD_MISSING` without a source.
    pub fn with_density(mut self, value: MassDensity, source: &str) -> Result<Properties, Error> {
        self.density = own("density", bounds::DENSITY.density(value)?, source)?;
        Ok(self)
    }

    /// With an elastic modulus.
    ///
    /// # Errors
    /// As [`Properties::with_density`]; `OUT_OF_RANGE` also where a tangent modulus that is known is not below it.
    pub fn with_modulus(mut self, value: Pressure, source: &str) -> Result<Properties, Error> {
        bounds::MODULUS.pressure(value)?;
        if self.tangent_modulus.as_ref().is_some_and(|tangent| tangent.value >= value) {
            let need = Value::text("more than the tangent modulus");
            return Err(Error::field(Code::OutOfRange, "modulus", Value::Pressure(value), need));
        }
        self.modulus = own("modulus", value, source)?;
        Ok(self)
    }

    /// With Poisson's ratio.
    ///
    /// # Errors
    /// As [`Properties::with_density`].
    pub fn with_poisson(mut self, value: Ratio, source: &str) -> Result<Properties, Error> {
        self.poisson = own("poisson", bounds::POISSON.ratio(value)?, source)?;
        Ok(self)
    }

    /// With a yield strength.
    ///
    /// # Errors
    /// As [`Properties::with_density`].
    pub fn with_yield_strength(mut self, value: Pressure, source: &str) -> Result<Properties, Error> {
        self.yield_strength = own("yield_strength", bounds::STRENGTH.pressure(value)?, source)?;
        Ok(self)
    }

    /// With a tensile strength.
    ///
    /// # Errors
    /// As [`Properties::with_density`].
    pub fn with_tensile_strength(mut self, value: Pressure, source: &str) -> Result<Properties, Error> {
        self.tensile_strength = own("tensile_strength", bounds::STRENGTH.pressure(value)?, source)?;
        Ok(self)
    }

    /// With the stretch before breaking, 0.25 for 25 %.
    ///
    /// # Errors
    /// As [`Properties::with_density`].
    pub fn with_elongation(mut self, value: Ratio, source: &str) -> Result<Properties, Error> {
        self.elongation = own("elongation", bounds::ELONGATION.ratio(value)?, source)?;
        Ok(self)
    }

    /// With the slope of stress over strain beyond the yield strength, where hardening is taken as a straight line. It is
    /// of use only beside a yield strength.
    ///
    /// # Errors
    /// As [`Properties::with_density`]; `OUT_OF_RANGE` also where it is not below an elastic modulus that is known.
    ///
    /// ```
    /// use linewright::material::Properties;
    /// use linewright::units::mpa;
    /// let own = Properties::named("our coil")
    ///     .with_modulus(mpa(205_000.0), "test report 17")?
    ///     .with_yield_strength(mpa(240.0), "test report 17")?
    ///     .with_tangent_modulus(mpa(2_000.0), "slope of the pull of 3 May")?;
    /// assert_eq!(own.tangent_modulus().unwrap().source.text, "slope of the pull of 3 May");
    /// assert!(own.with_tangent_modulus(mpa(205_000.0), "a slip").is_err());
    /// # Ok::<(), linewright::Error>(())
    /// ```
    pub fn with_tangent_modulus(mut self, value: Pressure, source: &str) -> Result<Properties, Error> {
        bounds::TANGENT_MODULUS.pressure(value)?;
        if self.modulus.as_ref().is_some_and(|modulus| value >= modulus.value) {
            let need = Value::text("less than the elastic modulus");
            return Err(Error::field(Code::OutOfRange, "tangent_modulus", Value::Pressure(value), need));
        }
        self.tangent_modulus = own("tangent_modulus", value, source)?;
        Ok(self)
    }

    /// With a power law of hardening.
    ///
    /// # Errors
    /// As [`Properties::with_density`].
    pub fn with_hardening(mut self, law: PowerLaw, source: &str) -> Result<Properties, Error> {
        bounds::STRENGTH.pressure(law.strength_coefficient)?;
        bounds::HARDENING_EXPONENT.ratio(law.exponent)?;
        self.hardening = own("hardening", law, source)?;
        Ok(self)
    }

    /// With a linear thermal expansion.
    ///
    /// # Errors
    /// As [`Properties::with_density`].
    pub fn with_expansion(
        mut self,
        value: TemperatureCoefficient,
        source: &str,
    ) -> Result<Properties, Error> {
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

    /// Elastic modulus in tension.
    #[must_use]
    pub fn modulus(&self) -> Option<&Sourced<Pressure>> {
        self.modulus.as_ref()
    }

    /// Poisson's ratio.
    #[must_use]
    pub fn poisson(&self) -> Option<&Sourced<Ratio>> {
        self.poisson.as_ref()
    }

    /// Yield strength, by whatever offset the source names.
    #[must_use]
    pub fn yield_strength(&self) -> Option<&Sourced<Pressure>> {
        self.yield_strength.as_ref()
    }

    /// Tensile strength.
    #[must_use]
    pub fn tensile_strength(&self) -> Option<&Sourced<Pressure>> {
        self.tensile_strength.as_ref()
    }

    /// Stretch before breaking.
    #[must_use]
    pub fn elongation(&self) -> Option<&Sourced<Ratio>> {
        self.elongation.as_ref()
    }

    /// Slope of stress over strain beyond the yield strength.
    #[must_use]
    pub fn tangent_modulus(&self) -> Option<&Sourced<Pressure>> {
        self.tangent_modulus.as_ref()
    }

    /// Power law of hardening.
    #[must_use]
    pub fn hardening(&self) -> Option<&Sourced<PowerLaw>> {
        self.hardening.as_ref()
    }

    /// Linear thermal expansion.
    #[must_use]
    pub fn expansion(&self) -> Option<&Sourced<TemperatureCoefficient>> {
        self.expansion.as_ref()
    }

    /// A figure that a computation cannot do without.
    pub(crate) fn needed<T: Copy>(&self, field: &str, figure: Option<&Sourced<T>>) -> Result<T, Error> {
        figure.map(|figure| figure.value).ok_or_else(|| {
            let need = Value::text(format!("a figure for {} with its source", self.name));
            Error::field(Code::NotKnown, field, Value::Nothing, need)
        })
    }
}
