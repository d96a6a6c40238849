//! Trial bends as a workshop keeps them: which tube, which former, when, and which state of the record.

mod date;
#[cfg(feature = "serde")]
mod typed;

pub use date::Date;

use super::{SCATTER_DEG, Springback, Trial};
use crate::code::Code;
use crate::error::Error;
use crate::problem::{Part, Problem, Value};
use crate::source::printable;
use crate::tube::Tube;
use crate::units::{length_text, to_mm};
use std::fmt;

/// Two outside diameters closer than this may be one size: what SAE J526 allows 3/16 in tube, +-0.003 in (tube seller's
/// page on SAE J526, seen).
const SAME_OD_MM: f64 = 0.0762;
/// The same of the wall, +-0.005 in (from there too).
const SAME_WALL_MM: f64 = 0.127;

/// Trial bends with the tube and the former they were made with, a date and a revision: what a springback rests on, as
/// data. A plan for another tube says so.
///
/// ```
/// use linewright::springback::{Calibration, Date};
/// use linewright::units::{deg, mm, to_deg};
/// use linewright::{Material, Trial, Tube};
/// let tube = Tube::new(mm(4.75), mm(0.7), Material::LowCarbonSteel)?;
/// let trials = [Trial { set: deg(90.0), got: deg(86.5) }, Trial { set: deg(45.0), got: deg(43.2) }];
/// let made = Calibration::new(&trials, &tube, "former 1", Date::read("2026-05-14")?, "2")?;
/// let springback = made.springback()?;
/// assert!((to_deg(springback.setting(deg(60.0))?) - 62.46).abs() < 0.01);
/// assert_eq!(springback.calibration().unwrap().date().to_string(), "2026-05-14");
/// # Ok::<(), linewright::Error>(())
/// ```
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(try_from = "typed::Typed", into = "typed::Typed"))]
pub struct Calibration {
    trials: Vec<Trial>,
    tube: Tube,
    former: String,
    date: Date,
    revision: String,
}

/// A name that must not be empty.
fn named(field: &str, text: &str, need: &str) -> Result<String, Error> {
    let name = printable(text);
    if name.is_empty() {
        return Err(Error::field(Code::FieldMissing, field, Value::Nothing, Value::text(need)));
    }
    Ok(name)
}

impl Calibration {
    /// Trial bends of a tube on a former, by its name in the workshop, made on a day; `revision` names this state of the
    /// record. Trials that a prior alone makes something of are allowed here: none, one, or some at one angle.
    ///
    /// # Errors
    /// `FIELD_MISSING` for an empty former or revision; `TRIALS_UNUSABLE` for a trial that sprang forward;
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE`.
    pub fn new(
        trials: &[Trial],
        tube: &Tube,
        former: &str,
        date: Date,
        revision: &str,
    ) -> Result<Calibration, Error> {
        trials.iter().try_for_each(|trial| trial.check(SCATTER_DEG))?;
        Ok(Calibration {
            trials: trials.to_vec(),
            // How tight its maker lets it be bent is no part of the record.
            tube: Tube::new(tube.od(), tube.wall(), tube.material())?,
            former: named("former", former, "the former's name in the workshop")?,
            date,
            revision: named("revision", revision, "a name or number for this state of the record")?,
        })
    }

    /// The springback of its trials, with this record in it.
    ///
    /// # Errors
    /// As [`Springback::from_trials`].
    pub fn springback(&self) -> Result<Springback, Error> {
        Springback::from_trials(&self.trials)?.with_calibration(self.clone())
    }

    /// The trial bends.
    #[must_use]
    pub fn trials(&self) -> &[Trial] {
        &self.trials
    }

    /// The tube they were made of.
    #[must_use]
    pub fn tube(&self) -> &Tube {
        &self.tube
    }

    /// The former they were made on, by its name in the workshop.
    #[must_use]
    pub fn former(&self) -> &str {
        &self.former
    }

    /// The day they were made.
    #[must_use]
    pub fn date(&self) -> Date {
        self.date
    }

    /// Name or number of this state of the record.
    #[must_use]
    pub fn revision(&self) -> &str {
        &self.revision
    }

    /// Whether a tube is of the size and the material of the trials; sizes differ by no more than tubes of one size may.
    /// Two coils of one size and material may still differ in strength.
    #[must_use]
    pub fn is_for(&self, tube: &Tube) -> bool {
        let off = |a, b| (to_mm(a) - to_mm(b)).abs();
        off(self.tube.od(), tube.od()) <= SAME_OD_MM
            && off(self.tube.wall(), tube.wall()) <= SAME_WALL_MM
            && self.tube.material() == tube.material()
    }
}

/// A tube in a few words.
pub(crate) fn tube_text(tube: &Tube) -> String {
    format!("{} x {}, {}", length_text(tube.od()), length_text(tube.wall()), tube.material().name())
}

/// In one line: tube, former, date, revision.
impl fmt::Display for Calibration {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Calibration { former, date, revision, .. } = self;
        write!(f, "{}, {former}, {date}, revision {revision}", tube_text(&self.tube))
    }
}

impl Springback {
    /// With the record of its trials, for a springback that was fitted to them in another way, such as with a prior.
    ///
    /// # Errors
    /// `FIELDS_CONFLICT` where the record has other trials.
    pub fn with_calibration(mut self, calibration: Calibration) -> Result<Springback, Error> {
        if self.trials != calibration.trials {
            return Err(Problem::new(Code::FieldsConflict, Part::Field("calibration".to_owned()))
                .got(Value::Count(calibration.trials.len()))
                .need(Value::Count(self.trials.len()))
                .why("the springback was fitted to other trials than those of the record")
                .fix("fitting it to the trials of the record")
                .into());
        }
        self.calibration = Some(calibration);
        Ok(self)
    }

    /// The record of its trials, if one was given.
    #[must_use]
    pub fn calibration(&self) -> Option<&Calibration> {
        self.calibration.as_ref()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::material::Material;
    use crate::springback::{Prior, TrialFit};
    use crate::units::{deg, inch, mm, ratio};

    fn trials() -> Vec<Trial> {
        vec![Trial { set: deg(90.0), got: deg(86.5) }, Trial { set: deg(45.0), got: deg(43.2) }]
    }

    fn tube(od: f64, wall: f64, material: Material) -> Tube {
        Tube::new(mm(od), mm(wall), material).unwrap()
    }

    fn record(trials: &[Trial]) -> Calibration {
        let date = Date::read("2026-05-14").unwrap();
        let steel = tube(4.75, 0.7, Material::LowCarbonSteel);
        Calibration::new(trials, &steel, "former 1", date, "2").unwrap()
    }

    #[test]
    fn a_tube_of_another_size_or_material_is_another() {
        let made = record(&trials());
        let same = Tube::new(inch(3.0 / 16.0), inch(0.028), Material::LowCarbonSteel).unwrap();
        assert!(made.is_for(&same) && made.is_for(made.tube()));
        for other in [
            tube(6.0, 0.7, Material::LowCarbonSteel),
            tube(4.75, 0.9, Material::LowCarbonSteel),
            tube(4.75, 0.7, Material::CopperNickel),
        ] {
            assert!(!made.is_for(&other), "{other:?}");
        }
    }

    #[test]
    fn the_record_stays_with_a_blend_of_its_trials_and_with_no_other() {
        let prior = Prior {
            constant: [deg(1.0), deg(0.5)],
            proportional: [ratio(0.02), ratio(0.01)],
            correlation: ratio(0.0),
            scatter: deg(0.3),
            worth: 2,
        };
        let blend = TrialFit::with_prior(prior, &trials()).unwrap().springback().unwrap();
        let kept = blend.clone().with_calibration(record(&trials())).unwrap();
        assert_eq!(kept.calibration(), Some(&record(&trials())));
        let error = blend.with_calibration(record(&trials()[..1])).unwrap_err();
        assert_eq!(error.code(), Code::FieldsConflict);
    }

    #[test]
    fn a_record_without_its_names_is_none() {
        let date = Date::read("2026-05-14").unwrap();
        let of = |former: &str, revision: &str, trials: &[Trial]| {
            let steel = tube(4.75, 0.7, Material::LowCarbonSteel);
            Calibration::new(trials, &steel, former, date, revision).map_err(|error| error.code())
        };
        assert_eq!(of(" ", "1", &trials()), Err(Code::FieldMissing));
        assert_eq!(of("former 1", "\n", &trials()), Err(Code::FieldMissing));
        let forward = [Trial { set: deg(86.5), got: deg(90.0) }];
        assert_eq!(of("former 1", "1", &forward), Err(Code::TrialsUnusable));
        let none = [Trial { set: deg(f64::NAN), got: deg(90.0) }];
        assert_eq!(of("former 1", "1", &none), Err(Code::NotANumber));
        assert!(of("former 1", "1", &[]).is_ok_and(|record| record.springback().is_err()));
    }
}
