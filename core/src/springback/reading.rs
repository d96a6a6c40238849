//! The step that angles were read to. A hand reads to half a degree or a whole one, and three such readings lie on a line
//! exactly in four of ten cases: their scatter would be nothing, and whatever rests on it sure. Nor does rounding average out:
//! where bends scatter by less than a step, all readings of a tube can be rounded to the same side.

use super::Trial;
use super::line::Line;
use crate::math::exp;
use crate::statistics;
use crate::units::to_deg;
use std::f64::consts::PI;

/// Steps that angles are read to, in degrees, the coarsest first, and how near to a multiple a typed angle is (ours, no
/// source). Coarser ones are met by chance too often. Thirds and sixths are what 20 and 10 arc minutes are, typed with two
/// decimals or more.
const STEPS: [(f64, f64); 11] = [
    (1.0, 1e-6),
    (0.5, 1e-6),
    (1.0 / 3.0, 0.005),
    (0.25, 1e-6),
    (0.2, 1e-6),
    (1.0 / 6.0, 0.005),
    (0.1, 1e-6),
    (0.05, 1e-6),
    (1.0 / 60.0, 1e-6),
    (0.02, 1e-6),
    (0.01, 1e-6),
];

/// The coarsest step that more than half of the angles left are multiples of: one finer reading among them makes the others
/// no finer.
pub(super) fn step(trials: &[Trial]) -> Option<f64> {
    let is_multiple = |trial: &Trial, step: f64, near: f64| {
        let got = to_deg(trial.got);
        (got - (got / step).round() * step).abs() < near
    };
    let count = |step, near| trials.iter().filter(|trial| is_multiple(trial, step, near)).count();
    STEPS.iter().find(|(step, near)| 2 * count(*step, *near) > trials.len()).map(|(step, _)| *step)
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
