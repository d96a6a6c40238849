//! The step that angles were read to. A hand reads to half a degree or a whole one, and three such readings lie on a line
//! exactly in four of ten cases: their scatter would be nothing, and whatever rests on it sure.

use super::Trial;
use crate::math::sqrt;
use crate::statistics;
use crate::units::to_deg;

/// Steps that angles are read to, in degrees, the coarsest first (ours, no source). Coarser ones are met by chance too often.
const STEPS: [f64; 8] = [1.0, 0.5, 0.25, 0.2, 0.1, 0.05, 0.02, 0.01];

/// The coarsest step that all angles left are multiples of.
pub(super) fn step(trials: &[Trial]) -> Option<f64> {
    statistics::read_to(trials.iter().map(|trial| to_deg(trial.got)), &STEPS)
}

/// Standard deviation in degrees of what rounding to the step adds to a reading, so that it averages out over settings, and
/// not over bends at one of them: those are rounded alike.
pub(super) fn rounding(trials: &[Trial]) -> f64 {
    rounding_with(trials, &[])
}

/// The same with more bends, at settings in degrees, that are read to the same step.
pub(super) fn rounding_with(trials: &[Trial], more: &[f64]) -> f64 {
    let Some(step) = step(trials) else { return 0.0 };
    // Settings nearer than half a step have their results rounded alike.
    let settings = trials.iter().map(|trial| to_deg(trial.set)).chain(more.iter().copied());
    let mut places: Vec<f64> = settings.map(|set| (2.0 * set / step).round()).collect();
    places.sort_by(f64::total_cmp);
    places.dedup();
    let count = |n: usize| f64::from(u32::try_from(n).unwrap_or(u32::MAX));
    statistics::rounding(Some(step)) * sqrt(count(trials.len() + more.len()) / count(places.len()))
}
