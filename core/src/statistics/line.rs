//! A straight line with the uncertainty of its two parts: what trial bends or test pieces leave of it.

use crate::math::sqrt;

/// Rounds after which an end of an interval that has not settled has none.
const MOST_ROUNDS: usize = 100;
/// A change below this share is rounding.
const SETTLED: f64 = 1e-11;

/// Inverse of a symmetric matrix [[a, c], [c, b]] as (a, b, c).
fn inverse([a, b, c]: [f64; 3]) -> [f64; 3] {
    let determinant = a * b - c * c;
    [b / determinant, a / determinant, -c / determinant]
}

/// A line `y = constant + slope x` whose parts are uncertain: covariance `scale^2 x matrix`, distribution Student's with
/// `factor` as its two-sided number.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Line {
    pub(crate) constant: f64,
    pub(crate) slope: f64,
    /// Variances of constant and slope, and their covariance, for a scatter of 1.
    pub(crate) matrix: [f64; 3],
    /// Scatter of one bend.
    pub(crate) scatter: f64,
}

impl Line {
    pub(crate) fn at(&self, x: f64) -> f64 {
        self.constant + self.slope * x
    }

    /// Variance of the line at `x` for a scatter of 1.
    pub(crate) fn leverage(&self, x: f64) -> f64 {
        let [a, b, ab] = self.matrix;
        a + x * (2.0 * ab + x * b)
    }

    /// By how much the line at `x` moves with a reading at `set`.
    pub(crate) fn share(&self, x: f64, set: f64) -> f64 {
        let [a, b, ab] = self.matrix;
        a + ab * (x + set) + b * x * set
    }

    /// Standard deviation of the line at `x`.
    pub(crate) fn error(&self, x: f64) -> f64 {
        self.scatter * sqrt(self.leverage(x).max(0.0))
    }

    /// Standard deviation of the slope.
    pub(crate) fn slope_error(&self) -> f64 {
        self.scatter * sqrt(self.matrix[1])
    }

    /// The same line after more bends at some settings, and what each of them counts for.
    pub(crate) fn with_more(&self, settings: &[f64], weight: f64) -> Line {
        let add =
            |[n, square, sum]: [f64; 3], x: &f64| [n + weight, square + weight * x * x, sum + weight * x];
        Line { matrix: inverse(settings.iter().fold(inverse(self.matrix), add)), ..*self }
    }

    /// Half width of one more bend at `x`.
    pub(crate) fn next_half_width(&self, x: f64, factor: f64) -> f64 {
        factor * self.scatter * sqrt(1.0 + self.leverage(x).max(0.0))
    }

    /// The interval of [`Line::setting_interval`], each end moved out by what the line may be off there besides. None where it
    /// has no end.
    pub(crate) fn biased_interval(
        &self,
        wanted: f64,
        factor: f64,
        bias: impl Fn(f64) -> f64,
    ) -> Option<[f64; 2]> {
        let setting = (wanted + self.constant) / (1.0 - self.slope);
        if bias(setting) <= 0.0 {
            return self.setting_interval(wanted, factor);
        }
        // The end depends on the bias there, which changes slowly: a few rounds settle it.
        let end = |at: usize, side: f64| {
            let mut x = setting;
            for _ in 0..MOST_ROUNDS {
                let next = self.setting_interval(wanted + side * bias(x), factor)?[at];
                if (next - x).abs() <= SETTLED * next.abs().max(1.0) {
                    return Some(next);
                }
                x = next;
            }
            None
        };
        Some([end(0, -1.0)?, end(1, 1.0)?])
    }

    /// Fieller's interval of the `x` for which `x - y(x)` is `wanted`: all `x` for which that value does not lie further
    /// from `wanted` than the line's own half width. None where it is not bounded.
    pub(crate) fn setting_interval(&self, wanted: f64, factor: f64) -> Option<[f64; 2]> {
        // ((1 - b) x - (a + wanted))^2 = f^2 (v_a + 2 x v_ab + x^2 v_b), as p x^2 - 2 q x + r = 0.
        let f = factor * self.scatter;
        let [a, b, ab] = self.matrix.map(|v| v * f * f);
        let (rest, target) = (1.0 - self.slope, self.constant + wanted);
        let p = rest * rest - b;
        let q = rest * target + ab;
        let r = target * target - a;
        let under = q * q - p * r;
        if p <= 0.0 || under < 0.0 {
            return None;
        }
        let root = sqrt(under);
        Some([(q - root) / p, (q + root) / p])
    }
}
