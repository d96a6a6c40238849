//! The step that numbers were read to. A hand reads to half a degree or to a millimeter, and few such readings agree by that
//! alone: their scatter would be nothing, and whatever rests on it sure. Nor does rounding average out: what scatters by less
//! than a step is rounded to the same side again and again.

use crate::math::{exp, sqrt};
use std::f64::consts::PI;

/// Farther from a multiple than this is none: typed decimals are off by far less.
pub(crate) const SAME: f64 = 1e-6;
/// Parts of a step that a finer scale would have.
const PARTS: u32 = 20;

/// Whether a number is a whole multiple of a step.
pub(crate) fn is_multiple(number: f64, step: f64) -> bool {
    (number - (number / step).round() * step).abs() < SAME
}

/// The coarsest of some steps, which fall, that the numbers are multiples of. One that is read far finer makes the others no
/// finer: as long as it is no multiple of a part of the step, more than half of them are enough. None where there is none, and
/// without a number.
pub(crate) fn read_to(numbers: &[f64], steps: &[f64], is_multiple: impl Fn(f64, f64) -> bool) -> Option<f64> {
    let fits = |step: f64| {
        let others: Vec<f64> = numbers.iter().copied().filter(|number| !is_multiple(*number, step)).collect();
        let is_apart = |number: f64| (2..=PARTS).all(|parts| !is_multiple(number, step / f64::from(parts)));
        2 * others.len() < numbers.len() && others.into_iter().all(is_apart)
    };
    steps.iter().copied().find(|step| fits(*step))
}

/// Standard deviation of what rounding to a step adds to a reading: all within half a step are alike.
pub(crate) fn rounding(step: Option<f64>) -> f64 {
    step.map_or(0.0, |step| step / sqrt(12.0))
}

/// How far every reading may be off to the same side: half the step, and less the further single ones scatter over the steps.
/// Readings of a normal scatter s are off by no more than half a step times exp(-2 (pi s / step)^2) on average (the mean of a
/// rounding error is the Fourier series of a saw tooth, each term of it damped by the scatter). What is seen, and given here, is
/// that scatter and the rounding together.
pub(crate) fn one_sided(step: Option<f64>, scatter: f64) -> f64 {
    let Some(step) = step else { return 0.0 };
    let own = (scatter * scatter / (step * step) - 1.0 / 12.0).max(0.0);
    // Beyond a scatter of two steps nothing is left of it.
    if own > 4.0 { 0.0 } else { step / 2.0 * exp(-2.0 * PI * PI * own) }
}
