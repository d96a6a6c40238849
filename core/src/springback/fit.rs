//! What trial bends say about springback, with intervals: least squares, and least squares on top of a prior.

use super::blend::Blend;
use super::prior::Prior;
use super::reading;
use super::{Basis, SCATTER_DEG, Springback, Trial, is_one_angle};
use crate::bounds;
use crate::code::Code;
use crate::error::Error;
use crate::math::sqrt;
use crate::problem::{Part, Problem, Value};
use crate::statistics::{Line, one_sided, student_both_sides};
use crate::units::{Angle, Ratio, deg, ratio, to_deg};

/// Fewest bends among which an outlier is named, or a bend of the line noticed: with fewer, one odd bend pulls the line
/// to itself (ours; the test at this number has one degree of freedom or two).
const ENOUGH: usize = 5;
/// Chance of naming an outlier, a bent line or a contradiction where there is none.
const FALSE_ALARM: f64 = 0.05;

/// The line through trial bends with its uncertainty. The model: springback = constant + proportional x set, each bend off
/// by a normal error of the same unknown size. Angles read to a coarse step can lie on a line by that alone, so the size is
/// taken to be at least what the rounding of a reading makes, of 0.001 degrees where no step shows; and where bends scatter by less than a step, all of them can be
/// rounded to the same side, so that every interval reaches further by what that can make. Then intervals cover at least as
/// often as they say, and mostly more often.
///
/// ```
/// use linewright::springback::{TrialFit, Trial};
/// use linewright::units::{deg, to_deg};
/// let sets = [20.0, 30.0, 45.0, 60.0, 75.0, 90.0, 105.0, 120.0];
/// let gots = [18.4, 28.6, 42.9, 58.2, 72.5, 87.5, 102.2, 117.3];
/// let trials: Vec<Trial> =
///     sets.iter().zip(gots).map(|(set, got)| Trial { set: deg(*set), got: deg(got) }).collect();
/// let fit = TrialFit::new(&trials)?;
/// let [low, high] = fit.setting_interval(deg(90.0), 0.95)?.unwrap().map(to_deg);
/// assert!((low - 92.2639).abs() < 1e-3 && (high - 92.7506).abs() < 1e-3);
/// # Ok::<(), linewright::Error>(())
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct TrialFit {
    line: Line,
    dof: u32,
    trials: Vec<Trial>,
    /// How far every reading may be off to one side, in degrees. Beside a belief the blend has its own.
    half: f64,
    belief: Option<(Prior, Blend)>,
    /// How often the belief, where it is right, makes trials that lie so far from it, or farther.
    agreement: Option<f64>,
}

/// Springback of a trial over its set angle, both in degrees.
pub(super) fn point(trial: &Trial) -> (f64, f64) {
    (to_deg(trial.set), to_deg(trial.set) - to_deg(trial.got))
}

/// Sums of a set of points: count, x, y, x^2, xy.
fn sums(points: &[(f64, f64)]) -> [f64; 5] {
    points
        .iter()
        .fold([0.0; 5], |[n, x, y, xx, xy], (px, py)| [n + 1.0, x + px, y + py, xx + px * px, xy + px * py])
}

impl TrialFit {
    /// The line through at least two trials at clearly different angles. Trials of a tube that springs back little may give a
    /// line that falls with the angle, by chance alone: it is a fit with its intervals all the same, and only
    /// [`TrialFit::springback`] refuses it.
    ///
    /// # Errors
    /// As [`Springback::from_trials`], but neither for what the line comes out as, nor for single trials that were read as
    /// springing forward by up to 2 degrees: leaving them out would make the springback look larger than it is. Sets that scatter
    /// by much more than a degree are often refused; of the rest intervals then cover less often than they say (0.92 instead of
    /// 0.95 for four trials at a scatter of 2 degrees).
    /// `TRIALS_UNUSABLE` also for trials at one angle only.
    pub fn new(trials: &[Trial]) -> Result<TrialFit, Error> {
        Springback::line_of(trials, SCATTER_DEG)?;
        if is_one_angle(trials) {
            return Err(Problem::new(Code::TrialsUnusable, Part::Field("trials".to_owned()))
                .got(Value::text("trials at one angle"))
                .need(Value::text("trials at two clearly different angles, or a prior"))
                .into());
        }
        let points: Vec<(f64, f64)> = trials.iter().map(point).collect();
        let line = least_squares(&points, reading::rounding(trials));
        Ok(TrialFit {
            dof: dof_of(points.len()),
            line,
            trials: trials.to_vec(),
            belief: None,
            agreement: None,
            half: one_sided(reading::step(trials), line.scatter),
        })
    }

    /// A belief and trials, weighed against each other by how sure each is; no trial at all leaves the belief.
    ///
    /// Given the scatter of a bend, the rule is the conjugate one of a normal line: precisions add up, and a reading is off by
    /// its rounding besides. The scatter itself is known from the belief's worth and from the trials; all that it may be is
    /// integrated over, so that the interval of an angle that was not tried is no surer than the belief, however well the
    /// trials repeat.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE`; `TRIALS_UNUSABLE` for a trial that is no bend, for one that the belief expects less than
    /// once in a thousand times among so many, and for trials that it expects so seldom together: one of the two is wrong.
    pub fn with_prior(prior: Prior, trials: &[Trial]) -> Result<TrialFit, Error> {
        prior.check()?;
        trials.iter().try_for_each(|trial| trial.check(SCATTER_DEG))?;
        let agreement = prior.check_trials(trials)?;
        let blend = Blend::new(&prior, trials);
        let dof = prior.worth().saturating_add(u32::try_from(trials.len()).unwrap_or(u32::MAX));
        Ok(TrialFit {
            line: blend.line(),
            dof,
            trials: trials.to_vec(),
            half: 0.0,
            belief: Some((prior, blend)),
            agreement,
        })
    }

    /// The springback, for a bench.
    ///
    /// # Errors
    /// `OUT_OF_RANGE` where the line is no springback: more trials, or a prior, make one of it.
    pub fn springback(&self) -> Result<Springback, Error> {
        let line = Springback::new(deg(self.line.constant), ratio(self.line.slope))?;
        let basis = match (&self.belief, self.trials.is_empty()) {
            (None, _) => Basis::Trials,
            (Some(_), true) => Basis::Prior,
            (Some(_), false) => Basis::Blend,
        };
        Ok(Springback { trials: self.trials.clone(), basis, ..line })
    }

    /// The trials it was fitted to.
    #[must_use]
    pub fn trials(&self) -> &[Trial] {
        &self.trials
    }

    /// What was believed before them, if anything was.
    #[must_use]
    pub fn prior(&self) -> Option<&Prior> {
        self.belief.as_ref().map(|(prior, _)| prior)
    }

    /// The step that the angles left were read to, as their numbers show: the coarsest of 1, 1/2, 1/3, 1/4, 1/5, 1/6, 1/10,
    /// 1/20, 1/60, 1/50 and 1/100 degree that they are multiples of. A minority read far finer does not count. None where there
    /// is none, and without trials.
    #[must_use]
    pub fn reading(&self) -> Option<Angle> {
        reading::step(&self.trials).map(deg)
    }

    /// Scatter of one bend, one standard deviation. Without a prior it is at least what the rounding of a reading makes, the step
    /// divided by the root of 12 (of 0.001 degrees where none shows); with one, that of the mean precision (one over the square) of all that it may be. None for two
    /// trials without a prior, which lie on any line.
    #[must_use]
    pub fn scatter(&self) -> Option<Angle> {
        (self.dof > 0).then(|| deg(self.line.scatter))
    }

    /// The step that the angles were read to, where the scatter is what its rounding makes and the trials told no more.
    pub(crate) fn scatter_of_reading(&self) -> Option<Angle> {
        let told = self.scatter().filter(|_| self.belief.is_none())?;
        self.reading().filter(|_| to_deg(told) <= reading::rounding(&self.trials))
    }

    /// What one more bend counts for beside the line, if it is read as coarsely as those before. Without a belief the scatter
    /// is that of readings already.
    pub(super) fn weight(&self) -> f64 {
        let (rounding, scatter) = (reading::rounding(&self.trials), self.line.scatter);
        let square = scatter * scatter;
        if self.belief.is_some() { square / (square + rounding * rounding) } else { 1.0 }
    }

    /// How far a line through the trials and more bends at some settings, read as coarsely, may be off at `x` because all of
    /// them are rounded to the same side, in degrees.
    pub(super) fn bias_with(&self, line: &Line, more: &[f64], x: f64) -> f64 {
        reading::bias(line, self.settings().chain(more.iter().copied()), self.half, x)
    }

    fn bias(&self, x: f64) -> f64 {
        self.bias_with(&self.line, &[], x)
    }

    fn settings(&self) -> impl Iterator<Item = f64> + '_ {
        self.trials.iter().map(|trial| to_deg(trial.set))
    }

    /// Standard errors of the constant and of the proportional part: of the scatter alone, and of the belief.
    #[must_use]
    pub fn standard_errors(&self) -> Option<(Angle, Ratio)> {
        (self.dof > 0).then(|| (deg(self.line.error(0.0)), ratio(self.line.slope_error())))
    }

    /// Interval of the constant part at a chance.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE` for the chance.
    pub fn constant_interval(&self, chance: f64) -> Result<Option<[Angle; 2]>, Error> {
        let ends = match (self.student(chance)?, &self.belief) {
            (_, Some((_, blend))) => blend.constant_interval(&self.line, chance),
            (Some(factor), None) => {
                let half = factor * self.line.error(0.0) + self.bias(0.0);
                Some([self.line.constant - half, self.line.constant + half])
            }
            (None, None) => None,
        };
        Ok(ends.map(|ends| ends.map(deg)))
    }

    /// Interval of the proportional part at a chance.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE` for the chance.
    pub fn proportional_interval(&self, chance: f64) -> Result<Option<[Ratio; 2]>, Error> {
        let ends = match (self.student(chance)?, &self.belief) {
            (_, Some((_, blend))) => blend.slope_interval(&self.line, chance),
            (Some(factor), None) => {
                let bias = reading::slope_bias(&self.line, self.settings(), self.half);
                let half = factor * self.line.slope_error() + bias;
                Some([self.line.slope - half, self.line.slope + half])
            }
            (None, None) => None,
        };
        Ok(ends.map(|ends| ends.map(ratio)))
    }

    /// Interval of the right setting for a wanted angle at a chance (Fieller's); None for two trials without a prior, and
    /// where the trials say so little that it has no end, or that all of it would spring forward. As a setting, neither end is
    /// ever below the wanted angle.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE`.
    pub fn setting_interval(&self, wanted: Angle, chance: f64) -> Result<Option<[Angle; 2]>, Error> {
        let wanted = to_deg(bounds::ANGLE.angle(wanted)?);
        if wanted <= 0.0 {
            // Nothing to bend.
            return Ok(self.student(chance)?.map(|_| [deg(0.0); 2]));
        }
        let interval = match (self.student(chance)?, &self.belief) {
            (_, Some((_, blend))) => blend.setting_interval(&self.line, wanted, chance),
            (Some(factor), None) => self.line.biased_interval(wanted, factor, |x| self.bias(x)),
            (None, None) => None,
        };
        let bent = interval.filter(|[_, high]| *high > wanted);
        Ok(bent.map(|ends| ends.map(|end| deg(end.max(wanted)))))
    }

    /// How far the next bend at a setting may land from what the line says, either way, at a chance, read as those before.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE`.
    pub fn next_bend(&self, setting: Angle, chance: f64) -> Result<Option<Angle>, Error> {
        let setting = to_deg(bounds::ANGLE.angle(setting)?);
        let half = match (self.student(chance)?, &self.belief) {
            (_, Some((_, blend))) => blend.next_half_width(&self.line, setting, chance),
            (Some(factor), None) => Some(self.line.next_half_width(setting, factor) + self.bias(setting)),
            (None, None) => None,
        };
        Ok(half.map(deg))
    }

    /// Share of what is known at a setting that comes from the trials: 1 without a prior, 0 without trials. It is the share of
    /// the belief's variance there that the trials took away, on average over what the scatter may be: for one trial there, how
    /// much of the way from belief to trial the line went.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE`.
    pub fn weight_of_trials(&self, setting: Angle) -> Result<Ratio, Error> {
        let x = to_deg(bounds::ANGLE.angle(setting)?);
        Ok(ratio(self.belief.as_ref().map_or(1.0, |(prior, blend)| blend.taken(x, prior.error(x)))))
    }

    /// The trial that does not belong to the others, counted from 0; None where none stands out, where there are fewer
    /// than five, and with a prior.
    ///
    /// Each trial is compared with the line through the others, by Student's distribution, allowing for having looked at
    /// all of them.
    #[must_use]
    pub fn outlier(&self) -> Option<usize> {
        if self.trials.len() < ENOUGH || self.belief.is_some() {
            return None;
        }
        farthest(&self.trials).filter(|(_, far)| stands_out(&self.trials, *far)).map(|(i, _)| i)
    }

    /// Whether the trials bend away from a straight line: a square of the angle added to it would be told from nothing.
    /// None for fewer than five trials at three or more angles, and with a prior.
    #[must_use]
    pub fn is_bent(&self) -> Option<bool> {
        let points: Vec<(f64, f64)> = self.trials.iter().map(point).collect();
        if points.len() < ENOUGH || self.belief.is_some() {
            return None;
        }
        // The square, made perpendicular to constant and slope by its own line.
        let rounding = reading::rounding(&self.trials);
        let line = least_squares(&points, rounding);
        let squares: Vec<(f64, f64)> = points.iter().map(|(x, _)| (*x, x * x)).collect();
        let across = least_squares(&squares, 0.0);
        let left: Vec<(f64, f64)> =
            points.iter().map(|(x, y)| (x * x - across.at(*x), y - line.at(*x))).collect();
        let size: f64 = left.iter().map(|(q, _)| q * q).sum();
        let scale: f64 = squares.iter().map(|(_, q)| q * q).sum();
        if size <= scale * 1e-12 {
            return None;
        }
        let square = left.iter().map(|(q, y)| q * y).sum::<f64>() / size;
        let rest: f64 = left.iter().map(|(q, y)| (y - square * q) * (y - square * q)).sum();
        let dof = dof_of(points.len()) - 1;
        let scatter = sqrt(rest / f64::from(dof)).max(rounding);
        let half = one_sided(reading::step(&self.trials), scatter);
        let bias = half * left.iter().map(|(q, _)| q.abs()).sum::<f64>() / size;
        Some(square.abs() > student_both_sides(1.0 - FALSE_ALARM, dof) * scatter / sqrt(size) + bias)
    }

    /// Whether the trials contradict what was believed: where the belief is right, trials lie so far from it less than once in
    /// twenty times. They are weighed against each other all the same, and neither should be trusted before more trials agree
    /// with one of them. None without a prior, and without trials.
    #[must_use]
    pub fn is_contradicted(&self) -> Option<bool> {
        self.agreement.map(|chance| chance < FALSE_ALARM)
    }

    /// Degrees of freedom of what is known of the scatter: the trials less two, with a prior its worth and the trials.
    #[must_use]
    pub fn degrees_of_freedom(&self) -> usize {
        self.dof as usize
    }

    pub(super) fn line(&self) -> &Line {
        &self.line
    }

    pub(super) fn blend(&self) -> Option<&Blend> {
        self.belief.as_ref().map(|(_, blend)| blend)
    }

    /// Student's number at a chance; None without a scatter.
    fn student(&self, chance: f64) -> Result<Option<f64>, Error> {
        let chance = bounds::CHANCE.ratio(ratio(chance))?.value;
        Ok((self.dof > 0).then(|| student_both_sides(chance, self.dof)))
    }
}

fn dof_of(points: usize) -> u32 {
    u32::try_from(points.saturating_sub(2)).unwrap_or(u32::MAX)
}

/// Whether the farthest of five or more trials lies farther than one of so many does by chance.
pub(super) fn stands_out(trials: &[Trial], far: f64) -> bool {
    let looks = f64::from(u32::try_from(trials.len()).unwrap_or(u32::MAX));
    far > student_both_sides(1.0 - FALSE_ALARM / looks, dof_of(trials.len()) - 1)
}

/// The trial that lies farthest from the line through all others, counted from 0, in standard deviations of one more bend
/// there; None where there are fewer than five, or the others are at one angle.
pub(super) fn farthest(trials: &[Trial]) -> Option<(usize, f64)> {
    let points: Vec<(f64, f64)> = trials.iter().map(point).collect();
    let rounding = reading::rounding(trials);
    if points.len() < ENOUGH {
        return None;
    }
    let others = |i: usize| -> Vec<(f64, f64)> {
        points.iter().enumerate().filter(|(j, _)| *j != i).map(|(_, point)| *point).collect()
    };
    let spread = |others: &[(f64, f64)]| {
        let (low, high) =
            others.iter().fold((f64::INFINITY, 0.0_f64), |(l, h), (x, _)| (l.min(*x), h.max(*x)));
        high - low >= super::SPREAD_DEG
    };
    let step = reading::step(trials);
    let distance = |i: usize, others: &[(f64, f64)]| {
        let (line, (x, y)) = (least_squares(others, rounding), points[i]);
        // Its own rounding and that of the others may be all there is.
        let half = one_sided(step, line.scatter);
        let bias = half + reading::bias(&line, others.iter().map(|(set, _)| *set), half, x);
        ((y - line.at(x)).abs() - bias).max(0.0) / line.next_half_width(x, 1.0).max(f64::MIN_POSITIVE)
    };
    (0..points.len())
        .map(|i| (i, others(i)))
        .filter(|(_, others)| spread(others))
        .map(|(i, others)| (i, distance(i, &others)))
        .max_by(|a, b| a.1.total_cmp(&b.1))
}

/// Least squares, about the middle of the angles so that no digits are lost, with a scatter of at least `rounding`.
fn least_squares(points: &[(f64, f64)], rounding: f64) -> Line {
    let [n, sx, sy, ..] = sums(points);
    let (mean_x, mean_y) = (sx / n, sy / n);
    let centered: Vec<(f64, f64)> = points.iter().map(|(x, y)| (x - mean_x, y - mean_y)).collect();
    let [_, _, _, sxx, sxy] = sums(&centered);
    let slope = sxy / sxx;
    let residual: f64 = centered.iter().map(|(x, y)| (y - slope * x) * (y - slope * x)).sum();
    Line {
        constant: mean_y - slope * mean_x,
        slope,
        matrix: [1.0 / n + mean_x * mean_x / sxx, 1.0 / sxx, -mean_x / sxx],
        scatter: if n > 2.0 { sqrt(residual / (n - 2.0)).max(rounding) } else { 0.0 },
    }
}
