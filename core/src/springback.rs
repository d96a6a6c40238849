//! Springback: how much further a bend must be taken so that the wanted angle remains. From trial bends, from mechanics
//! where there are none yet, and from both.
//!
//! Whatever it rests on, it is an estimate. [`Mechanics`] reckons with a tube that stays round, with plane sections and the
//! neutral axis in the middle, from data of the metal alone. It leaves out that the section flattens, that the elastic modulus
//! falls with plastic strain, that metal creeps, and friction in the tool; how much each of these does to brake tube was not
//! measured here. It has been compared with quadrature, not with bends: no experiment was found that gives the angles of round
//! tube together with the data of its metal, so no validation by experiment is claimed. [`TrialFit`] has in it whatever the
//! trial bends did, and holds for that tube on that former, near the angles of the trials.

mod advice;
mod agreement;
mod blend;
mod calibration;
mod fit;
mod kernel;
mod mechanics;
mod metal;
mod prior;
mod reading;
mod scatter;
#[cfg(test)]
mod tests;

pub use advice::Advice;
pub(crate) use calibration::tube_text;
pub use calibration::{Calibration, Date};
pub use fit::TrialFit;
pub use kernel::Columns;
pub use mechanics::{Hardening, HeldBend, MaterialScatter, Mechanics};
pub use prior::Prior;
pub(crate) use reading::step_of;

use crate::bounds;
use crate::code::Code;
use crate::error::{Error, by_name};
use crate::problem::{Part, Problem, Value};
use crate::units::{Angle, Ratio, angle_text, deg, ratio, to_deg};

/// Two trial angles closer than this tell nothing of the proportional part (ours, no source).
const SPREAD_DEG: f64 = 10.0;
/// A trial farther than this from the line through all contradicts the others (ours, no source): a hand reads an angle
/// to a degree or so. Where there are enough of them to see that bends do scatter so much, one is taken up to twice as far.
const SCATTER_DEG: f64 = 2.0;
/// What a hand can read off a former's scale (common practice, no source).
const READABLE_DEG: f64 = 0.5;

/// One trial bend: the tool was set to `set`, and `got` remained.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Trial {
    /// What the tool was bent to.
    pub set: Angle,
    /// What remained after letting go.
    pub got: Angle,
}

impl Trial {
    /// Whether it is a bend that sprang back, or was read as springing forward by no more degrees than given.
    fn check(&self, forward: f64) -> Result<(), Error> {
        let (set, got) = (bounds::ANGLE.angle(self.set)?, bounds::ANGLE.angle(self.got)?);
        if to_deg(got) > 0.0 && to_deg(set) > 0.0 && to_deg(got) <= to_deg(set) + forward {
            return Ok(());
        }
        Err(unusable(&trial_text(self), "a bend that springs back a little; were set and got exchanged?"))
    }
}

fn trial_text(trial: &Trial) -> String {
    format!("set {}, got {}", angle_text(trial.set), angle_text(trial.got))
}

/// Smallest and largest set angle in degrees.
fn span(trials: &[Trial]) -> Option<(f64, f64)> {
    let sets = || trials.iter().map(|t| to_deg(t.set));
    let low = sets().reduce(f64::min)?;
    Some((low, sets().fold(low, f64::max)))
}

/// Whether there are trials, but all at one angle.
fn is_one_angle(trials: &[Trial]) -> bool {
    span(trials).is_some_and(|(low, high)| high - low < SPREAD_DEG)
}

/// The error of trials that nothing can be told from.
fn unusable(got: &str, fix: &str) -> Error {
    Problem::new(Code::TrialsUnusable, Part::Field("trials".to_owned()))
        .got(Value::text(got))
        .need(Value::text(fix))
        .into()
}

/// What a springback rests on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Basis {
    /// Its two parts were given.
    Given,
    /// Trial bends.
    Trials,
    /// Mechanics and material data, without a trial bend.
    Mechanics,
    /// A prior alone, without a trial bend.
    Prior,
    /// A prior and trial bends together.
    Blend,
}

impl Basis {
    /// All of them.
    pub const ALL: [Basis; 5] = [Basis::Given, Basis::Trials, Basis::Mechanics, Basis::Prior, Basis::Blend];

    /// The one of a name; case does not matter.
    ///
    /// # Errors
    /// `UNKNOWN_NAME` with the list of names.
    pub fn from_name(name: &str) -> Result<Basis, Error> {
        by_name("basis", name, &Basis::ALL, Basis::name)
    }

    /// The name, the same in every language.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Basis::Given => "given",
            Basis::Trials => "trials",
            Basis::Mechanics => "mechanics",
            Basis::Prior => "prior",
            Basis::Blend => "blend",
        }
    }
}

/// Springback as a straight line over the set angle: `springback = constant + proportional x set`.
///
/// An estimate: it holds for this tube on this former, near the angles of the trials.
///
/// ```
/// use linewright::{Springback, Trial, units::{deg, to_deg}};
/// let trials = [Trial { set: deg(90.0), got: deg(86.5) }, Trial { set: deg(45.0), got: deg(43.2) }];
/// let springback = Springback::from_trials(&trials)?;
/// assert!((to_deg(springback.setting(deg(60.0))?) - 62.46).abs() < 0.01);
/// # Ok::<(), linewright::Error>(())
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct Springback {
    constant: Angle,
    proportional: Ratio,
    trials: Vec<Trial>,
    basis: Basis,
    calibration: Option<Calibration>,
}

impl Springback {
    /// A springback whose two parts are known.
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE`.
    pub fn new(constant: Angle, proportional: Ratio) -> Result<Springback, Error> {
        Ok(Springback {
            constant: bounds::SPRINGBACK_CONSTANT.angle(constant)?,
            proportional: bounds::SPRINGBACK_PROPORTIONAL.ratio(proportional)?,
            trials: Vec::new(),
            basis: Basis::Given,
            calibration: None,
        })
    }

    /// A springback read back from where it was kept: its two parts, what it rests on, and the trials it was fitted to.
    ///
    /// # Errors
    /// As [`Springback::new`]; `FIELDS_CONFLICT` for trials where none belong, or none where they do;
    /// `TRIALS_UNUSABLE` for a trial that sprang forward by more than a hand misreads, 2 degrees.
    pub fn kept(
        constant: Angle,
        proportional: Ratio,
        basis: Basis,
        trials: &[Trial],
    ) -> Result<Springback, Error> {
        trials.iter().try_for_each(|trial| trial.check(SCATTER_DEG))?;
        if matches!(basis, Basis::Trials | Basis::Blend) == trials.is_empty() {
            let need = if trials.is_empty() { "the trials it was fitted to" } else { "no trials" };
            return Err(Problem::new(Code::FieldsConflict, Part::Field("trials".to_owned()))
                .got(Value::Count(trials.len()))
                .need(Value::text(need))
                .why(format!("what rests on \"{}\" has {need}", basis.name()))
                .fix("the basis and the trials as they were kept")
                .into());
        }
        Ok(Springback { trials: trials.to_vec(), basis, ..Springback::new(constant, proportional)? })
    }

    /// The line through two trials, or by least squares through more. Trials at one angle only give a springback in
    /// proportion to the angle, and [`Springback::is_weak`] says so.
    ///
    /// # Errors
    /// `TRIALS_UNUSABLE` for no trials, for one that sprang forward, for one that contradicts the others by more than
    /// 2 degrees (of five or more it is named, and up to 4 degrees are taken where it does not stand out from how the others
    /// scatter), and for sets that no springback explains; `NOT_A_NUMBER`, `OUT_OF_RANGE`.
    pub fn from_trials(trials: &[Trial]) -> Result<Springback, Error> {
        let (constant, proportional) = Springback::line_of(trials, 0.0)?;
        let line = Springback::new(deg(constant), ratio(proportional)).map_err(|error| {
            let text = format!(
                "constant {constant:.2} deg, proportional {proportional:.4}: {}",
                error.problem().why
            );
            unusable(&text, "larger bends that spring back more than smaller ones: measure the trials again")
        })?;
        Ok(Springback { trials: trials.to_vec(), basis: Basis::Trials, ..line })
    }

    /// Constant part in degrees and proportional part of the line through trials that agree with each other, whether or not
    /// it is a springback. Single ones may have been read as springing forward by so many degrees.
    fn line_of(trials: &[Trial], forward: f64) -> Result<(f64, f64), Error> {
        let count = match u32::try_from(trials.len()) {
            Ok(n) if n > 0 => f64::from(n),
            _ => return Err(unusable(&format!("{} trials", trials.len()), "at least one trial bend")),
        };
        // All of them forward is no misreading.
        let is_forward = |trial: &Trial| to_deg(trial.got) > to_deg(trial.set);
        let forward = if trials.iter().all(is_forward) { 0.0 } else { forward };
        trials.iter().try_for_each(|trial| trial.check(forward))?;
        let sets: Vec<f64> = trials.iter().map(|t| to_deg(t.set)).collect();
        let backs: Vec<f64> = trials.iter().map(|t| to_deg(t.set) - to_deg(t.got)).collect();
        let mean_set = sets.iter().sum::<f64>() / count;
        let mean_back = backs.iter().sum::<f64>() / count;
        let (constant, proportional) = if is_one_angle(trials) {
            (0.0, mean_back / mean_set)
        } else {
            let sxx: f64 = sets.iter().map(|x| (x - mean_set) * (x - mean_set)).sum();
            let sxy: f64 = sets.iter().zip(&backs).map(|(x, y)| (x - mean_set) * (y - mean_back)).sum();
            let slope = sxy / sxx;
            (mean_back - slope * mean_set, slope)
        };
        let off = |(x, y): (&f64, &f64)| (y - constant - proportional * x).abs();
        if let Some(worst) = sets.iter().zip(&backs).map(off).reduce(f64::max)
            && worst > SCATTER_DEG
        {
            let odd = fit::farthest(trials);
            if worst <= 2.0 * SCATTER_DEG && odd.is_some_and(|(_, far)| !fit::stands_out(trials, far)) {
                return Ok((constant, proportional));
            }
            let which = odd.map_or(String::new(), |(odd, _)| {
                format!("; the odd one seems to be trial {}, {}", odd + 1, trial_text(&trials[odd]))
            });
            let text = format!("a trial {worst:.1} deg away from the line through all{which}");
            return Err(unusable(
                &text,
                "trials within 2 deg of one line: measure them again, and take out the one that was misread",
            ));
        }
        Ok((constant, proportional))
    }

    /// The part that does not depend on the angle.
    #[must_use]
    pub fn constant(&self) -> Angle {
        self.constant
    }

    /// The part in proportion to the set angle.
    #[must_use]
    pub fn proportional(&self) -> Ratio {
        self.proportional
    }

    /// What it rests on.
    #[must_use]
    pub fn basis(&self) -> Basis {
        self.basis
    }

    /// The same line, resting on something else.
    fn resting_on(mut self, basis: Basis) -> Springback {
        self.basis = basis;
        self
    }

    /// The trials it was fitted to; empty where the parts were given.
    #[must_use]
    pub fn trials(&self) -> &[Trial] {
        &self.trials
    }

    /// The angle to bend to so that `wanted` remains: (wanted + constant) / (1 - proportional), and never less than
    /// `wanted`, because no bend springs forward: a line fitted to larger angles can say so for small ones. A bend of
    /// zero needs no setting and gets zero.
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE`.
    pub fn setting(&self, wanted: Angle) -> Result<Angle, Error> {
        bounds::ANGLE.angle(wanted).map(|wanted| self.setting_of(wanted))
    }

    /// The setting of an angle that is known to be in range.
    pub(crate) fn setting_of(&self, wanted: Angle) -> Angle {
        if to_deg(wanted) == 0.0 {
            return deg(0.0);
        }
        deg(self.on_line(wanted).max(to_deg(wanted)))
    }

    /// Whether the line would set the tool below the angle wanted by more than a hand can read: it tells nothing there.
    pub(crate) fn is_forward(&self, wanted: Angle) -> bool {
        to_deg(wanted) > 0.0 && self.on_line(wanted) < to_deg(wanted) - READABLE_DEG
    }

    fn on_line(&self, wanted: Angle) -> f64 {
        (to_deg(wanted) + to_deg(self.constant)) / (1.0 - self.proportional.value)
    }

    /// Whether it rests on trials at one angle only, with no belief beside them.
    #[must_use]
    pub fn is_weak(&self) -> bool {
        self.basis == Basis::Trials && is_one_angle(&self.trials)
    }

    /// Whether a setting lies outside the angles of the trials.
    #[must_use]
    pub fn is_outside_trials(&self, setting: Angle) -> bool {
        self.span().is_some_and(|(low, high)| !(low..=high).contains(&to_deg(setting)))
    }

    fn span(&self) -> Option<(f64, f64)> {
        span(&self.trials)
    }
}
