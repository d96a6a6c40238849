//! The record of trial bends in a file: every figure with its unit, nothing lost, nothing guessed.

use linewright::springback::{Calibration, Date};
use linewright::units::{deg, inch};
use linewright::{Material, Trial, Tube};
use std::error::Error;

type Outcome = Result<(), Box<dyn Error>>;

const FILE: &str = r#"
date = "2026-05-14"
revision = "2"
former = "former 1"
od = "3/16 in"
wall = "0.028 in"
material = "low-carbon steel"
trials = [["90 deg", "86.5 deg"], ["45 deg", "43.2 deg"]]
"#;

fn record() -> Result<Calibration, linewright::Error> {
    let tube = Tube::new(inch(3.0 / 16.0), inch(0.028), Material::LowCarbonSteel)?;
    let trials = [Trial { set: deg(90.0), got: deg(86.5) }, Trial { set: deg(45.0), got: deg(43.2) }];
    Calibration::new(&trials, &tube, "former 1", Date::read("2026-05-14")?, "2")
}

#[test]
fn a_file_becomes_the_record_and_the_record_a_file() -> Outcome {
    let read: Calibration = toml::from_str(FILE)?;
    assert_eq!(read, record()?);
    let written = toml::to_string(&read)?;
    assert_eq!(toml::from_str::<Calibration>(&written)?, read);
    assert!(written.contains(r#"wall = "0.7112 mm""#), "{written}");
    Ok(())
}

#[test]
fn what_a_file_may_not_say_is_refused_by_its_code() {
    for (from, to, code) in [
        ("90 deg", "90", "UNIT_MISSING"),
        ("2026-05-14", "14.05.2026", "UNREADABLE"),
        ("2026-05-14", "2026-02-30", "UNREADABLE"),
        ("low-carbon steel", "steel", "UNKNOWN_NAME"),
        ("former 1", " ", "FIELD_MISSING"),
        ("86.5 deg", "96.5 deg", "TRIALS_UNUSABLE"),
        ("0.028 in", "0.1 in", "OUT_OF_RANGE"),
        ("revision =", "revisoin =", "unknown field"),
    ] {
        let text = FILE.replace(from, to);
        assert_ne!(text, FILE, "{from}");
        let error = toml::from_str::<Calibration>(&text).map_err(|error| error.to_string());
        assert!(error.as_ref().is_err_and(|error| error.contains(code)), "{to}: {error:?}");
    }
}
