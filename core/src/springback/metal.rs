//! Mechanics of a tube from what is known of its metal.

use super::{Hardening, Mechanics};
use crate::code::Code;
use crate::error::Error;
use crate::material::Properties;
use crate::problem::Value;
use crate::units::{Length, Pressure};

impl Mechanics {
    /// A tube by its size and what is known of its metal. Of the laws the first is taken that is known: the power law of
    /// hardening; else a straight line of it, where there are a yield strength and a tangent modulus; else no hardening beyond
    /// the yield strength. Where a standard's least yield strength is all that is known, the springback of a stronger tube is
    /// more.
    ///
    /// # Errors
    /// `NOT_KNOWN` naming what is missing: the modulus, or, without a power law, the yield strength, also where there is a
    /// tangent modulus, which begins there; and as [`Mechanics::new`].
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
            None => from_yield(metal)?,
        };
        Ok((modulus, hardening))
    }
}

/// The law of a metal without a power law: whatever it is, it begins at the yield strength.
fn from_yield(metal: &Properties) -> Result<Hardening, Error> {
    let tangent = metal.tangent_modulus().map(|figure| figure.value);
    let Some(yields) = metal.yield_strength() else {
        let need = match tangent {
            Some(_) => "a yield strength, where the tangent modulus begins,",
            None => "a yield strength or a power law of hardening",
        };
        let need = Value::text(format!("{need} for {} with its source", metal.name()));
        return Err(Error::field(Code::NotKnown, "yield_strength", Value::Nothing, need));
    };
    let yield_strength = yields.value;
    Ok(match tangent {
        Some(tangent_modulus) => Hardening::Bilinear { yield_strength, tangent_modulus },
        None => Hardening::PerfectlyPlastic { yield_strength },
    })
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
        let both = yields.clone().with_hardening(law, "report").unwrap();
        assert_eq!(of(&both).unwrap(), made(power));
        let line = Hardening::Bilinear { yield_strength: mpa(240.0), tangent_modulus: mpa(2_000.0) };
        let sloped = yields.with_tangent_modulus(mpa(2_000.0), "slope of the pull").unwrap();
        assert_eq!(of(&sloped).unwrap(), made(line));
        assert_ne!(of(&sloped).unwrap(), made(plastic));
        let all = sloped.with_hardening(law, "report").unwrap();
        assert_eq!(of(&all).unwrap(), made(power));
        // A power law needs no yield strength, whatever else is known.
        let no_yield = figures("report").unwrap().with_tangent_modulus(mpa(2_000.0), "slope").unwrap();
        assert_eq!(of(&no_yield.with_hardening(law, "report").unwrap()).unwrap(), made(power));
    }

    #[test]
    fn a_line_from_own_figures_gives_what_bare_numbers_give() {
        let metal = Properties::named("our coil")
            .with_tangent_modulus(mpa(2_070.0), "slope of the pull")
            .and_then(|own| own.with_yield_strength(mpa(250.0), "report"))
            .and_then(|own| own.with_modulus(mpa(207_000.0), "report"))
            .unwrap();
        let law = Hardening::Bilinear { yield_strength: mpa(250.0), tangent_modulus: mpa(2_070.0) };
        let bare = Mechanics::new(mm(4.7625), mm(0.7112), mpa(207_000.0), law).unwrap();
        for radius in [14.2875, 30.0, 1_700.0, 2_000.0] {
            let [own, bare] = [of(&metal).unwrap(), bare].map(|tube| tube.bend(mm(radius)).unwrap());
            assert_eq!(own, bare);
            assert_eq!(own.formed_radius(), bare.formed_radius());
        }
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
        let sloped = elastic.clone().with_tangent_modulus(mpa(2_000.0), "slope").unwrap();
        assert_eq!(missing(&sloped), (Code::NotKnown, "field yield_strength".to_owned()));
        let said = of(&sloped).unwrap_err().need().to_string();
        assert!(said.contains("where the tangent modulus begins, for copper-nickel"), "{said}");
        let half_hard = Material::CopperNickel.properties_in(Condition::HalfHard).unwrap();
        assert!(of(&half_hard).is_ok());
    }
}
