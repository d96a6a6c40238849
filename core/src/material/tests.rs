use super::*;
use crate::units::{mpa, per_kelvin, ratio, to_mpa};

#[test]
fn a_strength_belongs_to_a_condition() {
    for material in ALL {
        let plain = material.properties();
        assert!(plain.yield_strength().is_none() && plain.tensile_strength().is_none());
        assert_eq!(plain.density().cloned(), material.density());
        assert!(!material.conditions().is_empty());
        for condition in material.conditions() {
            let known = material.properties_in(condition).unwrap();
            // A condition adds and takes nothing away.
            assert_eq!(known.modulus(), plain.modulus());
            assert!(known.name().contains(condition.name()));
            match (known.yield_strength(), known.tensile_strength()) {
                (Some(yields), Some(tensile)) => assert!(to_mpa(yields.value) < to_mpa(tensile.value)),
                (None, None) => assert!(known.hardening().is_some()),
                _ => panic!("{material:?} {condition:?}: half a pair"),
            }
        }
    }
    let error = Material::Stainless304.properties_in(Condition::HalfHard).unwrap_err();
    assert_eq!(error.code(), Code::UnknownName);
    assert!(error.to_string().contains("ASTM A269"));
    assert_eq!(Condition::from_name("soft").unwrap_err().code(), Code::UnknownName);
    assert!(Condition::ALL.into_iter().all(|c| Condition::from_name(c.name()).ok() == Some(c)));
}

#[test]
fn what_nobody_has_seen_is_missing() {
    assert!(Material::Stainless316.properties().poisson().is_none());
    for (material, condition) in [
        (Material::CopperNickel, Condition::Annealed),
        (Material::CopperNickel, Condition::HalfHard),
        (Material::Stainless316, Condition::A269),
    ] {
        assert!(material.properties_in(condition).unwrap().hardening().is_none());
    }
    let metal = Material::Stainless316.properties();
    let error = metal.needed("poisson", metal.poisson()).unwrap_err();
    assert_eq!(error.code(), Code::NotKnown);
}

#[test]
fn figures_of_ones_own_are_checked_and_sourced() {
    let own = Properties::named("own");
    let code = |result: Result<Properties, Error>| result.unwrap_err().code();
    assert_eq!(code(own.clone().with_modulus(mpa(f64::NAN), "here")), Code::NotANumber);
    assert_eq!(code(own.clone().with_expansion(per_kelvin(1.0), "here")), Code::OutOfRange);
    assert_eq!(code(own.clone().with_elongation(ratio(0.3), "")), Code::FieldMissing);
    let law = PowerLaw { strength_coefficient: mpa(500.0), exponent: ratio(0.95) };
    assert_eq!(code(own.clone().with_hardening(law, "here")), Code::OutOfRange);
    let full = own
        .with_density(kg_per_m3(8000.0), "scale")
        .and_then(|p| p.with_tensile_strength(mpa(300.0), "pull"))
        .and_then(|p| p.with_hardening(PowerLaw { exponent: ratio(0.2), ..law }, "pull"))
        .unwrap();
    assert_eq!(full.tensile_strength().unwrap().source.text, "pull");
    assert!(full.tangent_modulus().is_none());
    assert!(full.modulus().is_none());
}

#[test]
fn a_tangent_modulus_is_below_the_modulus() {
    let own = Properties::named("own");
    let refused = |result: Result<Properties, Error>| {
        let error = result.unwrap_err();
        (error.code(), error.problem().part.to_string())
    };
    let out = |field: &str| (Code::OutOfRange, format!("field {field}"));
    let slope = own.clone().with_tangent_modulus(mpa(2_000.0), "slope").unwrap();
    assert_eq!(slope.tangent_modulus().map(|figure| to_mpa(figure.value)), Some(2_000.0));
    // In whichever order they come, with nothing kept of what was refused.
    assert_eq!(refused(slope.clone().with_modulus(mpa(2_000.0), "report")), out("modulus"));
    assert_eq!(refused(slope.clone().with_modulus(mpa(1_999.0), "report")), out("modulus"));
    assert!(slope.clone().with_modulus(mpa(2_000.5), "report").is_ok());
    let stiff = own.with_modulus(mpa(2_000.0), "report").unwrap();
    assert_eq!(refused(stiff.clone().with_tangent_modulus(mpa(2_000.0), "slope")), out("tangent_modulus"));
    assert!(stiff.clone().with_tangent_modulus(mpa(1_999.5), "slope").is_ok());
    assert!(stiff.clone().with_tangent_modulus(mpa(0.0), "a flat curve").is_ok());
    assert_eq!(refused(stiff.clone().with_tangent_modulus(mpa(-1.0), "slope")), out("tangent_modulus"));
    let wrong = refused(stiff.clone().with_tangent_modulus(mpa(f64::NAN), "slope"));
    assert_eq!(wrong, (Code::NotANumber, "field tangent_modulus".to_owned()));
    let unsourced = refused(stiff.with_tangent_modulus(mpa(1_000.0), " "));
    assert_eq!(unsourced, (Code::FieldMissing, "field tangent_modulus_source".to_owned()));
}
