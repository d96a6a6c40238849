//! The step that angles were read to. A hand reads to half a degree or a whole one, and three such readings lie on a line
//! exactly in four of ten cases: their scatter would be nothing, and whatever rests on it sure.

use super::Trial;
use crate::statistics;
use crate::units::to_deg;

/// Steps that angles are read to, in degrees, the coarsest first (ours, no source). Coarser ones are met by chance too often.
const STEPS: [f64; 8] = [1.0, 0.5, 0.25, 0.2, 0.1, 0.05, 0.02, 0.01];

/// The coarsest step that all angles left are multiples of.
pub(super) fn step(trials: &[Trial]) -> Option<f64> {
    statistics::read_to(trials.iter().map(|trial| to_deg(trial.got)), &STEPS)
}

/// Standard deviation in degrees of what rounding to the step adds to a reading.
pub(super) fn rounding(trials: &[Trial]) -> f64 {
    statistics::rounding(step(trials))
}
