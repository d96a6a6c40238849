//! A record of trials as a file has it: every figure is text with its unit.

use super::{Calibration, Date};
use crate::error::Error;
use crate::material::Material;
use crate::springback::Trial;
use crate::tube::Tube;
use crate::units::{exact_angle_text, exact_length_text, read_angle, read_length};

/// The fields, as typed.
#[derive(serde::Serialize, serde::Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Typed {
    date: String,
    revision: String,
    former: String,
    od: String,
    wall: String,
    material: String,
    /// The angle that was set and the one that remained.
    trials: Vec<[String; 2]>,
}

impl TryFrom<Typed> for Calibration {
    type Error = Error;

    fn try_from(typed: Typed) -> Result<Calibration, Error> {
        let trial = |[set, got]: &[String; 2]| -> Result<Trial, Error> {
            Ok(Trial { set: read_angle(set)?, got: read_angle(got)? })
        };
        let trials = typed.trials.iter().map(trial).collect::<Result<Vec<Trial>, Error>>()?;
        let (od, wall) = (read_length(&typed.od)?, read_length(&typed.wall)?);
        let tube = Tube::new(od, wall, Material::from_name(&typed.material)?)?;
        Calibration::new(&trials, &tube, &typed.former, Date::read(&typed.date)?, &typed.revision)
    }
}

impl From<Calibration> for Typed {
    fn from(record: Calibration) -> Typed {
        let trial = |trial: &Trial| [exact_angle_text(trial.set), exact_angle_text(trial.got)];
        Typed {
            date: record.date.to_string(),
            revision: record.revision,
            former: record.former,
            od: exact_length_text(record.tube.od()),
            wall: exact_length_text(record.tube.wall()),
            material: record.tube.material().name().to_owned(),
            trials: record.trials.iter().map(trial).collect(),
        }
    }
}
