//! What is believed about springback before any trial.

use super::agreement::Apart;
use super::blend::Blend;
use super::fit::point;
use super::{Trial, reading, trial_text};
use crate::bounds;
use crate::code::Code;
use crate::error::Error;
use crate::math::sqrt;
use crate::problem::{Part, Problem, Value};
use crate::units::{Angle, Ratio, angle_text, deg, to_deg};

/// What comes less often than this where a belief is right is not believed: one of the two is wrong (ours).
const UNBELIEVABLE: f64 = 0.001;

/// What is believed about springback before any trial: from mechanics, or from another tube of the kind.
///
/// Both spreads are what they say, whatever the trials scatter: trials that repeat well make the angles surer that they were
/// made at, and what was only believed stays as doubtful as it was believed to be.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Prior {
    /// Expected constant part, and how far off it may be (one standard deviation, at least 0.001 degrees).
    pub constant: [Angle; 2],
    /// Expected proportional part, and how far off it may be (one standard deviation, at least 0.000 01).
    pub proportional: [Ratio; 2],
    /// How the two are off together, from -0.999 to 0.999: 0 where one says nothing of the other; near 1 where both come from
    /// the same moment, as in mechanics.
    pub correlation: Ratio,
    /// Scatter of one bend (one standard deviation, at least 0.001 degrees).
    pub scatter: Angle,
    /// Number of bends that the scatter is believed like: 1 to 10 000.
    pub worth: usize,
}

impl Prior {
    /// Whether it is a belief that trials can be weighed against.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE`, also for a spread or a scatter of nearly 0 and for a worth of no bend.
    pub(super) fn check(&self) -> Result<(), Error> {
        let ([constant, spread], [proportional, share]) = (self.constant, self.proportional);
        bounds::SPRINGBACK_CONSTANT.angle(constant)?;
        bounds::SPRINGBACK_PROPORTIONAL.ratio(proportional)?;
        bounds::CONSTANT_SPREAD.angle(spread)?;
        bounds::PROPORTIONAL_SPREAD.ratio(share)?;
        bounds::CORRELATION.ratio(self.correlation)?;
        bounds::PRIOR_SCATTER.angle(self.scatter)?;
        if (1..=bounds::MOST_WORTH).contains(&self.worth) {
            return Ok(());
        }
        let need = Value::text(format!("1 to {} bends", bounds::MOST_WORTH));
        Err(Error::field(Code::OutOfRange, "worth", Value::Count(self.worth), need))
    }

    /// Constant in degrees, and proportional part.
    pub(super) fn center(&self) -> [f64; 2] {
        [to_deg(self.constant[0]), self.proportional[0].value]
    }

    /// The worth as a number of degrees of freedom.
    pub(super) fn worth(&self) -> u32 {
        u32::try_from(self.worth).unwrap_or(u32::MAX)
    }

    /// Scatter of one bend in degrees.
    pub(super) fn scatter_deg(&self) -> f64 {
        to_deg(self.scatter)
    }

    /// A root of the covariance of constant and proportional part: [a, 0] and [b c, b sqrt(1 - c^2)].
    pub(super) fn root(&self) -> [f64; 3] {
        let ([a, b], c) = ([to_deg(self.constant[1]), self.proportional[1].value], self.correlation.value);
        [a, b * c, b * sqrt(1.0 - c * c)]
    }

    /// Standard deviation of the believed springback at a setting, in degrees.
    pub(super) fn error(&self, x: f64) -> f64 {
        let [a, b, across] = self.root();
        sqrt((a + x * b) * (a + x * b) + x * across * x * across)
    }

    /// Whether every trial is one that the belief expects, and all of them together. How often the belief, where it is right,
    /// makes trials that lie so far from it, or farther; None without a trial.
    pub(super) fn check_trials(&self, trials: &[Trial]) -> Result<Option<f64>, Error> {
        // A reading is off by up to half its step.
        let read = reading::step(trials).unwrap_or(0.0) / 2.0;
        let alone = Blend::alone(self);
        let line = alone.line();
        // The more trials are looked at, the farther one lies by chance.
        let looks = f64::from(u32::try_from(trials.len().max(1)).unwrap_or(u32::MAX));
        let believable = 1.0 - UNBELIEVABLE / looks;
        for trial in trials {
            let (x, y) = point(trial);
            if alone.next_within(&line, x, (y - line.at(x)).abs() - read) > believable {
                let width = alone.next_half_width(&line, x, believable).unwrap_or(f64::INFINITY) + read;
                let text = format!(
                    "{}, where the prior expects {} within {}",
                    trial_text(trial),
                    angle_text(deg(x - line.at(x))),
                    angle_text(deg(width)),
                );
                return Err(contradiction(&text));
            }
        }
        let Some(apart) = Apart::new(self, trials) else { return Ok(None) };
        let chance = apart.chance(self, trials);
        if chance < UNBELIEVABLE { Err(contradiction(&apart.says(self))) } else { Ok(Some(chance)) }
    }
}

/// The error of trials that a belief does not go together with.
fn contradiction(got: &str) -> Error {
    Problem::new(Code::TrialsUnusable, Part::Field("trials".to_owned()))
        .got(Value::text(got))
        .need(Value::text("trials that the prior can be right beside"))
        .why("where the prior is right such trials come less than once in a thousand times: one of the two is wrong")
        .fix("measuring the trials again; if they stay, leaving the prior out or stating it with larger spreads")
        .into()
}
