//! Figures of the listed materials with their sources. A figure that no page was seen for is missing, or says that it is
//! from memory.

use super::{Condition, Material, PowerLaw, Properties};
use crate::source::{Checked, Source, Sourced};
use crate::units::{Pressure, Ratio, TemperatureCoefficient, mpa, per_kelvin, psi, ratio};

/// C70600: modulus, expansion, strengths of strip (not of tube).
const STRIP_C70600: &str = "strip maker's data sheet for C70600";
/// 304: one sheet of general data.
const SHEET_304: &str = "public data sheet for AISI 304";
/// Power laws: a table of 2013 that cites a textbook of 2005, seen in copies.
const LAWS: &str =
    "Callister, Materials Science, 2005, cited by a public table of hardening exponents of 2013";

fn seen<T>(value: T, text: &str, place: &str) -> Option<Sourced<T>> {
    Some(Sourced { value, source: Source::new(text, place, Checked::Seen) })
}

fn law(coefficient: f64, exponent: f64, place: &str) -> Option<Sourced<PowerLaw>> {
    let value = PowerLaw { strength_coefficient: mpa(coefficient), exponent: ratio(exponent) };
    Some(Sourced { value, source: Source::new(LAWS, place, Checked::SecondHand) })
}

type Elastic = (Option<Sourced<Pressure>>, Option<Sourced<Ratio>>, Option<Sourced<TemperatureCoefficient>>);

/// Modulus, Poisson's ratio and thermal expansion.
fn elastic(material: Material) -> Elastic {
    let memory = |text| Source::new(text, "", Checked::Memory);
    match material {
        Material::LowCarbonSteel => (
            // Pages that were seen give 190 to 210 GPa as typical of such steel.
            Some(Sourced { value: mpa(207_000.0), source: memory("common handbook value for carbon steel") }),
            seen(ratio(0.29), "public data page for SAE 1010", "0.29, typical for steel"),
            // Two other pages give 11.8 and 12.6.
            seen(per_kelvin(12.2e-6), "public data page for SAE 1010", "1.22E-5 per degree C"),
        ),
        Material::CopperNickel => (
            seen(psi(18_000_000.0), STRIP_C70600, "modulus of elasticity 18,000,000 psi"),
            Some(Sourced { value: ratio(0.34), source: memory("textbook value for copper alloys") }),
            seen(per_kelvin(17.1e-6), STRIP_C70600, "0.0000171 per degree C from 20 to 300 degrees C"),
        ),
        Material::Stainless304 => (
            seen(mpa(193_000.0), "two public data sheets for 304", "193 GPa, one of them 193 to 200"),
            seen(ratio(0.29), SHEET_304, "Poisson's ratio 0.29"),
            seen(per_kelvin(17.3e-6), SHEET_304, "17.3 um/m per degree C from 0 to 100 degrees C"),
        ),
        Material::Stainless316 => (
            seen(mpa(193_000.0), "pipe seller's page on A269 316L", "E 193 GPa"),
            // No page with a figure at room temperature was seen.
            None,
            seen(
                per_kelvin(16.5e-6),
                "tube seller's page on 316 and 316L",
                "16.5E-6 per degree C from 20 to 100 degrees C",
            ),
        ),
    }
}

/// What holds in any condition.
pub(super) fn of(material: Material) -> Properties {
    let (modulus, poisson, expansion) = elastic(material);
    Properties {
        name: material.name().to_owned(),
        density: material.density(),
        modulus,
        poisson,
        expansion,
        ..Properties::default()
    }
}

/// With the strengths of a condition; None where no figure is known for the pair.
pub(super) fn strengths(material: Material, condition: Condition) -> Option<Properties> {
    let with = |tensile: Pressure, yields: Pressure, elongation: f64, text: &str, place: &str| {
        let mut properties = of(material);
        properties.tensile_strength = seen(tensile, text, place);
        properties.yield_strength = seen(yields, text, place);
        properties.elongation = seen(ratio(elongation), text, place);
        properties
    };
    let with_law = |coefficient, exponent, place: &str| {
        let mut properties = of(material);
        properties.hardening = law(coefficient, exponent, place);
        properties
    };
    let mut found = match (material, condition) {
        (Material::LowCarbonSteel, Condition::SaeJ526) => with(
            psi(42_000.0),
            psi(25_000.0),
            0.14,
            "tube seller's page on SAE J526",
            "least tensile 42,000 psi, yield 25,000 psi, 14 % in 2 in",
        ),
        (Material::LowCarbonSteel, Condition::Iso4038) => with(
            mpa(290.0),
            mpa(200.0),
            0.25,
            "fitting maker's summary of ISO 4038",
            "least 290 MPa, 200 MPa, 25 %; the signs were lost in the copy",
        ),
        (Material::LowCarbonSteel, Condition::Annealed) => {
            with_law(600.0, 0.21, "low-carbon steel, annealed")
        }
        (Material::CopperNickel, Condition::Annealed) => with(
            psi(44_000.0),
            psi(16_000.0),
            0.42,
            STRIP_C70600,
            "strip, grain 0.025 mm: 44,000 psi; 16,000 psi at 0.5 % extension; 42 %",
        ),
        (Material::CopperNickel, Condition::HalfHard) => with(
            psi(60_000.0),
            psi(57_000.0),
            0.10,
            STRIP_C70600,
            "strip, half hard: 60,000 psi; 57,000 psi at 0.5 % extension; 10 %",
        ),
        (Material::Stainless304, Condition::Annealed) => with_law(1400.0, 0.44, "304, annealed"),
        (Material::Stainless304 | Material::Stainless316, Condition::A269) => with(
            mpa(515.0),
            mpa(205.0),
            0.35,
            "steel seller's table of A269",
            "TP304 and TP316, least 515 MPa, 205 MPa, 35 %",
        ),
        (Material::Stainless304 | Material::Stainless316, Condition::A269LowCarbon) => with(
            mpa(485.0),
            mpa(170.0),
            0.35,
            "steel seller's table of A269",
            "TP304L and TP316L, least 485 MPa, 170 MPa, 35 %",
        ),
        _ => return None,
    };
    found.name = format!("{}, {}", material.name(), condition.name());
    Some(found)
}
