//! The two-argument arctangent.
//!
//! **Method.** With `a = min(abs(x), abs(y))` and `b = max(abs(x), abs(y))`, the ratio `a/b` is in `[0, 1]`.
//! Where it exceeds `tan(pi/8)`, `atan(a/b) = pi/4 + atan((a - b) / (a + b))`, so what remains to be
//! evaluated is `atan t` with `abs(t) <= tan(pi/8)`. Reflections at the diagonal and at the vertical axis
//! then give `eighths * pi/4 ± atan t` with `eighths` in `0..=4`, and `y` gives the sign.
//!
//! **Accuracy.** The sum and difference, the quotient and the last sum are pairs of numbers, so that only
//! the last addition rounds a number of the size of the result. `pi/4` is in two parts, the first short
//! enough that `eighths` times it is exact.
//!
//! **Polynomial.** `atan t = t + t z R(z)` with `z = t^2`; `R` is a Chebyshev fit on `[0, tan(pi/8)^2]` made
//! with mpmath at 60 digits and rounded to double; `tests/python/make_math_reference.py` holds the recipe
//! and its test compares these very lines. Relative error after rounding: 2^-58.
//!
//! **Scale.** Numbers near the ends of the exponent range are scaled by a power of two, since the exact
//! product inside the division must neither overflow nor underflow. Where `a/b < 2^-100`, `atan t` is `t` to
//! the last bit and nothing is scaled, so that results below the normal range are rounded only once.
//!
//! **Outside.** NaN in either argument gives NaN. There is no other outside: zeros and infinities are
//! replaced by finite numbers in the same direction.

use super::exact::{divide, polynomial, two_sum};
use super::lane::Lane;

/// `pi/4` in two parts; the first has 33 significant bits.
const QUARTER_PI: [f64; 2] = [0.7853981633670628, 3.038550253253096e-11];

/// `tan(pi/8)`. Its last bits do not matter: both sides of the threshold are accurate.
const THRESHOLD: f64 = 0.414_213_562_373_095_1;

const TWO_POW_500: f64 = f64::from_bits((1023 + 500) << 52);
const TWO_POW_600: f64 = f64::from_bits((1023 + 600) << 52);
const TWO_POW_MINUS_100: f64 = f64::from_bits((1023 - 100) << 52);
const TWO_POW_MINUS_400: f64 = f64::from_bits((1023 - 400) << 52);
const TWO_POW_MINUS_600: f64 = f64::from_bits((1023 - 600) << 52);

/// Coefficients of `R`, lowest first.
const ATAN: [f64; 12] = [
    -0.3333333333333333,
    0.19999999999999804,
    -0.14285714285659828,
    0.11111111105155447,
    -0.09090908753500877,
    0.07692296375032143,
    -0.06666424885738255,
    0.05878928997834775,
    -0.05230454270650244,
    0.04551593220626549,
    -0.034570561981427744,
    0.016285756855221028,
];

/// Angle of the point `(x, y)`. Error below 1 ulp (measured: 0.65).
#[inline(always)]
pub(super) fn atan2<L: Lane>(y: L, x: L) -> L {
    let (zero, one) = (L::splat(0.0), L::splat(1.0));
    let valid_x = x.at_most(x);
    let valid_y = y.at_most(y);

    let (abs_y, abs_x) = (y.abs(), x.abs());
    let steep = abs_x.below(abs_y);
    let left = one.flip_by(x).below(zero);
    let small = L::select(steep, abs_x, abs_y);
    let large = L::select(steep, abs_y, abs_x);

    // Two infinities are as good as (1, 1), two zeros as good as (1, 0).
    let infinite = L::splat(f64::INFINITY).at_most(small);
    let small = L::select(infinite, one, small);
    let large = L::select(infinite, one, L::select(large.at_most(zero), one, large));

    let flat = small.below(large * L::splat(TWO_POW_MINUS_100));
    let scale = L::select(L::splat(TWO_POW_500).below(large), L::splat(TWO_POW_MINUS_600), one);
    let scale = L::select(large.below(L::splat(TWO_POW_MINUS_400)), L::splat(TWO_POW_600), scale);
    let scale = L::select(flat, one, scale);
    let (small, large) = (small * scale, large * scale);

    // (sin, cos) of the angle that remains, up to a common factor.
    let diagonal = (large * L::splat(THRESHOLD)).below(small);
    let (difference, sum) = (two_sum(small, -large), two_sum(small, large));
    let choose = |yes: L, no: L| L::select(diagonal, yes, no);
    let (t, t_tail) = divide(
        (choose(difference.0, small), choose(difference.1, zero)),
        (choose(sum.0, large), choose(sum.1, zero)),
    );
    let t_tail = L::select(flat, zero, t_tail);

    // Where the angle is counted from, in eighths of a turn, and in which direction.
    let eighths = L::select(diagonal, one, zero);
    let eighths = L::select(steep, L::splat(2.0) - eighths, eighths);
    let eighths = L::select(left, L::splat(4.0) - eighths, eighths);
    let way = L::select(steep, -one, one).flip_by(x);

    let z = t * t;
    let tail = t_tail * (one - z) + t * (z * polynomial(z, &ATAN));
    let (head, error) = two_sum(eighths * L::splat(QUARTER_PI[0]), t.flip_by(way));
    let angle = head + (error + (eighths * L::splat(QUARTER_PI[1]) + tail.flip_by(way)));

    let angle = L::select(valid_x, angle.flip_by(y), L::splat(f64::NAN));
    L::select(valid_y, angle, L::splat(f64::NAN))
}
