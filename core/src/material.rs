//! Tube materials by name, with the sources of their numbers. What is not known stays unknown.

mod condition;
mod figures;
mod properties;
#[cfg(test)]
mod tests;

pub use condition::Condition;
pub(crate) use properties::own;
pub use properties::{PowerLaw, Properties};

use crate::code::Code;
use crate::error::Error;
use crate::problem::{Part, Problem, Value};
use crate::source::{Checked, Source, Sourced};
use crate::units::{MassDensity, kg_per_m3};

/// A tube material.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Material {
    /// Low-carbon steel brake tube, coated or not.
    LowCarbonSteel,
    /// Copper-nickel C70600 (90/10).
    CopperNickel,
    /// Stainless steel 304.
    Stainless304,
    /// Stainless steel 316 or 316L.
    Stainless316,
}

/// All materials, in the order they are listed to a person.
pub const ALL: [Material; 4] =
    [Material::LowCarbonSteel, Material::CopperNickel, Material::Stainless304, Material::Stainless316];

impl Material {
    /// The name, the same in every language.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Material::LowCarbonSteel => "low-carbon steel",
            Material::CopperNickel => "copper-nickel",
            Material::Stainless304 => "stainless 304",
            Material::Stainless316 => "stainless 316",
        }
    }

    /// The material of a name; case does not matter.
    ///
    /// # Errors
    /// `UNKNOWN_NAME` with the list of names.
    pub fn from_name(name: &str) -> Result<Material, Error> {
        let wanted = name.trim().to_lowercase();
        ALL.into_iter().find(|m| m.name() == wanted).ok_or_else(|| {
            let names = ALL.map(Material::name).join(", ");
            Problem::new(Code::UnknownName, Part::Field("material".to_owned()))
                .got(Value::text(name))
                .need(Value::text(format!("one of {names}")))
                .into()
        })
    }

    /// The density, where one was seen or is at least remembered; see its source.
    #[must_use]
    pub fn density(self) -> Option<Sourced<MassDensity>> {
        let row = |value, text, place, checked| {
            Some(Sourced { value: kg_per_m3(value), source: Source::new(text, place, checked) })
        };
        match self {
            Material::LowCarbonSteel => {
                row(7850.0, "common handbook value for carbon steel", "", Checked::Memory)
            }
            Material::CopperNickel => {
                row(8940.0, "strip maker's data sheet for C70600", "density 8.94 g/cm3", Checked::Seen)
            }
            Material::Stainless304 => None,
            Material::Stainless316 => {
                row(8000.0, "pipe seller's page on A269 316L", "density 8000 kg/m3", Checked::Seen)
            }
        }
    }

    /// What is known of the material whatever its condition: density, elastic modulus, Poisson's ratio, expansion. Strengths
    /// belong to a condition and are missing here, see [`Material::properties_in`].
    ///
    /// ```
    /// use linewright::Material;
    /// use linewright::units::to_mpa;
    /// let metal = Material::CopperNickel.properties();
    /// assert!((to_mpa(metal.modulus().unwrap().value) - 124_105.6).abs() < 0.1);
    /// assert!(metal.yield_strength().is_none());
    /// # Ok::<(), linewright::Error>(())
    /// ```
    #[must_use]
    pub fn properties(self) -> Properties {
        figures::of(self)
    }

    /// What is known of the material in one of its [conditions](Material::conditions). Strengths of a standard are what it
    /// asks for at least, not what a tube has.
    ///
    /// # Errors
    /// `UNKNOWN_NAME` with the list of the material's conditions.
    ///
    /// ```
    /// use linewright::Material;
    /// use linewright::material::Condition;
    /// use linewright::units::to_mpa;
    /// let annealed = Material::CopperNickel.properties_in(Condition::Annealed)?;
    /// assert!((to_mpa(annealed.yield_strength().unwrap().value) - 110.3).abs() < 0.1);
    /// // Nobody has seen a hardening law for it.
    /// assert!(annealed.hardening().is_none());
    /// # Ok::<(), linewright::Error>(())
    /// ```
    pub fn properties_in(self, condition: Condition) -> Result<Properties, Error> {
        figures::strengths(self, condition).ok_or_else(|| {
            let names: Vec<&str> = self.conditions().iter().map(|condition| condition.name()).collect();
            let need = Value::text(format!("one of {}", names.join(", ")));
            Error::field(Code::UnknownName, "condition", Value::text(condition.name()), need)
        })
    }

    /// The conditions that figures are known for.
    #[must_use]
    pub fn conditions(self) -> Vec<Condition> {
        Condition::ALL
            .into_iter()
            .filter(|condition| figures::strengths(self, *condition).is_some())
            .collect()
    }
}
