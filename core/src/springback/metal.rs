//! Mechanics of a tube from what is known of its metal.

use super::{Hardening, Mechanics};
use crate::code::Code;
use crate::error::Error;
use crate::material::Properties;
use crate::problem::Value;
use crate::units::{Length, Pressure};

impl Mechanics {
    /// A tube by its size and what is known of its metal: the power law of hardening where there is one, else no hardening
    /// beyond the yield strength. Where a standard's least yield strength is all that is known, the springback of a stronger
    /// tube is more.
    ///
    /// # Errors
    /// `NOT_KNOWN` naming what is missing: the modulus, or both a power law and a yield strength; and as
    /// [`Mechanics::new`].
    ///
    /// ```
    /// use linewright::Material;
    /// use linewright::material::Condition;
    /// use linewright::springback::Mechanics;
    /// use linewright::units::{mm, to_mm};
    /// let metal = Material::LowCarbonSteel.properties_in(Condition::Annealed)?;
    /// let tube = Mechanics::of_metal(mm(4.7625), mm(0.7112), &metal)?;
    /// assert!((to_mm(tube.bend(mm(14.2875))?.formed_radius().unwrap()) - 14.5196).abs() < 5e-4);
    /// let unknown = Mechanics::of_metal(mm(4.7625), mm(0.7112), &Material::Stainless316.properties());
    /// assert_eq!(unknown.unwrap_err().code().name(), "NOT_KNOWN");
    /// # Ok::<(), linewright::Error>(())
    /// ```
    pub fn of_metal(od: Length, wall: Length, metal: &Properties) -> Result<Mechanics, Error> {
        let (modulus, hardening) = Mechanics::data_of_metal(metal)?;
        Mechanics::new(od, wall, modulus, hardening)
    }

    /// The modulus and the law that [`Mechanics::of_metal`] takes.
    ///
    /// # Errors
    /// `NOT_KNOWN` as there.
    pub fn data_of_metal(metal: &Properties) -> Result<(Pressure, Hardening), Error> {
        let modulus = metal.needed("modulus", metal.modulus())?;
        let hardening = match metal.hardening() {
            Some(law) => Hardening::PowerLaw {
                strength_coefficient: law.value.strength_coefficient,
                hardening_exponent: law.value.exponent,
            },
            None => Hardening::PerfectlyPlastic {
                yield_strength: metal.yield_strength().map(|figure| figure.value).ok_or_else(|| {
                    let need = "a yield strength or a power law of hardening";
                    let need = Value::text(format!("{need} for {} with its source", metal.name()));
                    Error::field(Code::NotKnown, "yield_strength", Value::Nothing, need)
                })?,
            },
        };
        Ok((modulus, hardening))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::material::{Condition, Material, PowerLaw};
    use crate::units::{mm, mpa, ratio};

    fn of(metal: &Properties) -> Result<Mechanics, Error> {
        Mechanics::of_metal(mm(4.7625), mm(0.7112), metal)
    }

    #[test]
    fn the_law_is_the_best_that_is_known() {
        let figures = |text: &str| Properties::named("our coil").with_modulus(mpa(205_000.0), text);
        let yields = figures("report").unwrap().with_yield_strength(mpa(240.0), "report").unwrap();
        let plastic = Hardening::PerfectlyPlastic { yield_strength: mpa(240.0) };
        let made = |law| Mechanics::new(mm(4.7625), mm(0.7112), mpa(205_000.0), law).unwrap();
        assert_eq!(of(&yields).unwrap(), made(plastic));
        let law = PowerLaw { strength_coefficient: mpa(600.0), exponent: ratio(0.21) };
        let power = Hardening::PowerLaw { strength_coefficient: mpa(600.0), hardening_exponent: ratio(0.21) };
        let both = yields.with_hardening(law, "report").unwrap();
        assert_eq!(of(&both).unwrap(), made(power));
    }

    #[test]
    fn what_is_missing_is_named() {
        let missing = |metal: &Properties| {
            let error = of(metal).unwrap_err();
            (error.code(), error.problem().part.to_string())
        };
        assert_eq!(missing(&Properties::named("x")), (Code::NotKnown, "field modulus".to_owned()));
        let elastic = Material::CopperNickel.properties();
        assert_eq!(missing(&elastic), (Code::NotKnown, "field yield_strength".to_owned()));
        assert!(
            of(&elastic).unwrap_err().need().to_string().contains("power law of hardening for copper-nickel")
        );
        let half_hard = Material::CopperNickel.properties_in(Condition::HalfHard).unwrap();
        assert!(of(&half_hard).is_ok());
    }
}
