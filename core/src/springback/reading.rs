//! The step that angles were read to. A hand reads to half a degree or a whole one, and three such readings lie on a line
//! exactly in four of ten cases: their scatter would be nothing, and whatever rests on it sure.

use super::Trial;
use crate::math::sqrt;
use crate::units::to_deg;

/// Steps that angles are read to, in degrees, the coarsest first (ours, no source). Coarser ones are met by chance too often.
const STEPS: [f64; 8] = [1.0, 0.5, 0.25, 0.2, 0.1, 0.05, 0.02, 0.01];

/// Farther from a multiple than this is none: typed decimals are off by far less.
const SAME_DEG: f64 = 1e-6;

/// The coarsest step that all angles left are multiples of.
pub(super) fn step(trials: &[Trial]) -> Option<f64> {
    let is_multiple = |step: f64| {
        let off = |got: f64| (got - (got / step).round() * step).abs();
        trials.iter().all(|trial| off(to_deg(trial.got)) < SAME_DEG)
    };
    STEPS.into_iter().find(|step| !trials.is_empty() && is_multiple(*step))
}

/// Standard deviation in degrees of what rounding to the step adds to a reading: all within half a step are alike.
pub(super) fn rounding(trials: &[Trial]) -> f64 {
    step(trials).map_or(0.0, |step| step / sqrt(12.0))
}
