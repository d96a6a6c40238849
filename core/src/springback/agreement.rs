//! Whether trials and a belief go together: how often such trials, or farther ones, come where the belief is right.

use super::fit::point;
use super::prior::Prior;
use super::scatter::{believed, scatters, shares};
use super::{Trial, is_one_angle, reading};
use crate::math::{exp, ln, sqrt};
use crate::statistics::{normal_below, one_sided};

/// Rounds of closing in on the slope that lies nearest, each by a third.
const ROUNDS: u32 = 60;

/// What trials say without the belief, counted from it: their mean, their slope where they have one, and how they scatter about
/// those.
pub(super) struct Apart {
    /// Mean setting, and mean springback off the belief.
    x: f64,
    mean: f64,
    slope: Option<f64>,
    count: f64,
    /// Sums of the settings' distances from their mean, of their squares, and of the squares that mean and slope leave.
    away: f64,
    across: f64,
    residual: f64,
}

impl Apart {
    /// None without a trial.
    pub(super) fn new(prior: &Prior, trials: &[Trial]) -> Option<Apart> {
        let [constant, slope] = prior.center();
        let off = |(x, y): (f64, f64)| (x, y - constant - slope * x);
        let points: Vec<(f64, f64)> = trials.iter().map(point).map(off).collect();
        #[expect(clippy::cast_precision_loss, reason = "a count of trials")]
        let count = points.len() as f64;
        let sum = |of: &dyn Fn(&(f64, f64)) -> f64| points.iter().map(of).sum::<f64>();
        let (x, mean) = (sum(&|(x, _)| *x) / count, sum(&|(_, e)| *e) / count);
        let away = sum(&|(set, _)| (set - x).abs());
        let across = sum(&|(set, _)| (set - x) * (set - x));
        let slope = (!is_one_angle(trials)).then(|| sum(&|(set, e)| (set - x) * (e - mean)) / across);
        let left = |(set, e): &(f64, f64)| e - mean - slope.map_or(0.0, |slope| slope * (set - x));
        let residual = sum(&|point| left(point) * left(point));
        (!points.is_empty()).then_some(Apart { x, mean, slope, count, away, across, residual })
    }

    /// How far they are from the belief for a variance of a reading, each of which may be off by `half` to either side: the
    /// least square of all that mean and slope may be, which without a rounding is distributed as chi-square.
    fn distance(&self, prior: &Prior, variance: f64, half: f64) -> f64 {
        let [a, b, across] = prior.root();
        // How the believed mean and slope move with two independent standard numbers.
        let (first, second) = ([a + self.x * b, self.x * across], [b, across]);
        let dot = |p: [f64; 2], q: [f64; 2]| p[0] * q[0] + p[1] * q[1];
        let one = dot(first, first) + variance / self.count;
        let Some(slope) = self.slope else {
            let off = (self.mean.abs() - half).max(0.0);
            return off * off / one;
        };
        let (both, other) = (dot(first, second), dot(second, second) + variance / self.across);
        let square = |slope: f64| {
            // The part of the mean that the slope does not tell, moved as far as a rounding can.
            let off = ((self.mean - both / other * slope).abs() - half).max(0.0);
            off * off / (one - both * both / other) + slope * slope / other
        };
        if half <= 0.0 {
            return square(slope);
        }
        // It has one valley, which the slope is moved to as far as a rounding can.
        let far = half * self.away / self.across;
        let (mut low, mut high) = (slope - far, slope + far);
        for _ in 0..ROUNDS {
            let third = (high - low) / 3.0;
            if square(low + third) > square(high - third) { low += third } else { high -= third }
        }
        square((low + high) / 2.0)
    }

    /// What they say and what is believed, in words.
    pub(super) fn says(&self, prior: &Prior) -> String {
        let [constant, rise] = prior.center();
        let expected = constant + rise * self.x;
        let mut text = format!(
            "trials that agree on {:.2} deg of springback at {:.1} deg, where the prior expects {expected:.2} deg +- {:.2} deg \
             (one standard deviation)",
            expected + self.mean,
            self.x,
            prior.error(self.x),
        );
        if let Some(slope) = self.slope {
            let spread = prior.proportional[1].value;
            text += &format!(
                ", and on {:.4} more a degree, where it expects {rise:.4} +- {spread:.4}",
                rise + slope
            );
        }
        text
    }

    /// The chance of lying so far from the belief, or farther, where it is right: over all that the scatter may be by the
    /// belief's worth and by how the trials, read to a step, scatter among themselves.
    pub(super) fn chance(&self, prior: &Prior, trials: &[Trial]) -> f64 {
        let (step, rounding) = (reading::step(trials), reading::rounding(trials));
        let (worth, read) = (f64::from(prior.worth()), rounding * rounding);
        let parts = if self.slope.is_some() { 2.0 } else { 1.0 };
        let variance = |u: f64| {
            let scatter = prior.scatter_deg() * exp(u);
            scatter * scatter + read
        };
        let likely = |u: f64| {
            believed(worth, u) - ((self.count - parts) * ln(variance(u)) + self.residual / variance(u)) / 2.0
        };
        let nodes = scatters(likely);
        let weights = shares(&nodes.iter().map(|u| likely(*u)).collect::<Vec<f64>>());
        let tail = |u: &f64| {
            let variance = variance(*u);
            let square = self.distance(prior, variance, one_sided(step, sqrt(variance)));
            // Chi-square's tail for two degrees of freedom, and for one.
            if self.slope.is_some() {
                exp(-square.min(1400.0) / 2.0)
            } else {
                2.0 * normal_below(-sqrt(square))
            }
        };
        nodes.iter().zip(weights).map(|(u, weight)| weight * tail(u)).sum()
    }
}
