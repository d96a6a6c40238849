//! The step that angles were read to. A hand reads to half a degree or a whole one, and three such readings lie on a line
//! exactly in four of ten cases: their scatter would be nothing, and whatever rests on it sure. Nor does rounding average out:
//! where bends scatter by less than a step, all readings of a tube can be rounded to the same side.

use super::Trial;
use super::line::Line;
use crate::math::exp;
use crate::statistics;
use crate::units::to_deg;
use std::f64::consts::PI;

/// Steps that angles are read to, in degrees, the coarsest first (ours, no source). Coarser ones are met by chance too often.
/// Thirds and sixths are 20 and 10 arc minutes.
const STEPS: [f64; 11] = [1.0, 0.5, 1.0 / 3.0, 0.25, 0.2, 1.0 / 6.0, 0.1, 0.05, 1.0 / 60.0, 0.02, 0.01];
/// Farther from a multiple than this is none: typed decimals are off by far less.
const SAME_DEG: f64 = 1e-6;

/// Whether an angle is a multiple of a step, or one typed with two to four decimals, as 28.33 is.
fn is_multiple(angle: f64, step: f64) -> bool {
    let multiple = (angle / step).round() * step;
    let typed = [1e2, 1e3, 1e4].map(|parts| (multiple * parts).round() / parts);
    // Two decimals of a hundredth are itself.
    let typed = typed.into_iter().filter(|_| step > 0.05);
    typed.chain([multiple]).any(|multiple| (angle - multiple).abs() < SAME_DEG)
}

/// Parts of a step that a finer scale would have.
const PARTS: u32 = 20;

/// The coarsest step that the angles left are multiples of. One that is read far finer makes the others no finer: as long as
/// it is no multiple of a part of the step, more than half of them are enough.
pub(super) fn step(trials: &[Trial]) -> Option<f64> {
    let fits = |step: f64| {
        let others = trials.iter().map(|trial| to_deg(trial.got)).filter(|got| !is_multiple(*got, step));
        let is_apart = |got: f64| (2..=PARTS).all(|parts| !is_multiple(got, step / f64::from(parts)));
        let others: Vec<f64> = others.collect();
        2 * others.len() < trials.len() && others.into_iter().all(is_apart)
    };
    STEPS.into_iter().find(|step| fits(*step))
}

/// Standard deviation in degrees of what rounding to the step adds to a reading.
pub(super) fn rounding(trials: &[Trial]) -> f64 {
    statistics::rounding(step(trials))
}

/// How far every reading may be off to the same side, in degrees: half the step, and less the further single bends scatter
/// over the steps. Readings of a normal scatter s are off by no more than half a step times exp(-2 (pi s / step)^2) on average
/// (the mean of a rounding error is the Fourier series of a saw tooth, each term of it damped by the scatter).
pub(super) fn one_sided(step: Option<f64>, scatter: f64) -> f64 {
    let Some(step) = step else { return 0.0 };
    // What is seen is the scatter and the rounding together.
    let own = (scatter * scatter / (step * step) - 1.0 / 12.0).max(0.0);
    // Beyond a scatter of two steps nothing is left of it.
    if own > 4.0 { 0.0 } else { step / 2.0 * exp(-2.0 * PI * PI * own) }
}

/// How far a line at `x` may be off, in degrees, where the readings at some settings may all be off by as much as `half`, each
/// to the side that is worst.
pub(super) fn bias(line: &Line, settings: impl Iterator<Item = f64>, half: f64, x: f64) -> f64 {
    if half > 0.0 { half * settings.map(|set| line.share(x, set).abs()).sum::<f64>() } else { 0.0 }
}

/// The same of the line's slope, which is by how much the line moves between 0 and 1.
pub(super) fn slope_bias(line: &Line, settings: impl Iterator<Item = f64>, half: f64) -> f64 {
    let moves = |set: f64| (line.share(1.0, set) - line.share(0.0, set)).abs();
    if half > 0.0 { half * settings.map(moves).sum::<f64>() } else { 0.0 }
}
