//! The step that angles were read to, and what its rounding does to a line through them.

use super::Trial;
use crate::statistics::{self, Line, SAME, is_multiple, read_to};
use crate::units::to_deg;

/// Steps that angles are read to, in degrees, the coarsest first (ours, no source). Coarser ones are met by chance too often.
/// Thirds and sixths are 20 and 10 arc minutes.
const STEPS: [f64; 11] = [1.0, 0.5, 1.0 / 3.0, 0.25, 0.2, 1.0 / 6.0, 0.1, 0.05, 1.0 / 60.0, 0.02, 0.01];

/// What nobody reads finer than, in degrees (ours). Numbers that show no step would otherwise be exact where they lie on a line.
const FINEST_DEG: f64 = 0.001;

/// Whether an angle is a multiple of a step, or one typed with two to four decimals, as 28.33 is.
fn is_typed_multiple(angle: f64, step: f64) -> bool {
    let multiple = (angle / step).round() * step;
    let typed = [1e2, 1e3, 1e4].map(|parts| (multiple * parts).round() / parts);
    // Two decimals of a hundredth are itself.
    is_multiple(angle, step) || (step > 0.05 && typed.into_iter().any(|typed| (angle - typed).abs() < SAME))
}

/// The step that angles in degrees were read to.
pub(crate) fn step_of(angles: &[f64]) -> Option<f64> {
    read_to(angles, &STEPS, is_typed_multiple)
}

/// The step that the angles left were read to.
pub(super) fn step(trials: &[Trial]) -> Option<f64> {
    step_of(&trials.iter().map(|trial| to_deg(trial.got)).collect::<Vec<f64>>())
}

/// Standard deviation in degrees of what rounding to the step adds to a reading.
pub(super) fn rounding(trials: &[Trial]) -> f64 {
    statistics::rounding(step(trials).or(Some(FINEST_DEG)))
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
