//! The arcsine.
//!
//! **Method.** Up to one half `asin x = x + x z P(z)` with `z = x^2`. Beyond, `asin x = pi/2 - 2 asin s` with
//! `s = sqrt((1 - x) / 2)`, whose square is exact but for one rounding, so that nothing is lost near one.
//!
//! **Polynomial.** `P` is a Chebyshev fit on `[0, 1/4]` made with mpmath at 60 digits and rounded to double;
//! `tests/python/make_math_reference.py` holds the recipe and its test compares these very lines.
//!
//! **Outside.** Beyond one and for NaN the result is NaN.

use super::lane::Lane;
use std::f64::consts::FRAC_PI_2;

/// What `pi/2` is more than its nearest double.
const HALF_PI_LOW: f64 = 6.123_233_995_736_766e-17;

/// Coefficients of `P`, lowest first.
const ASIN: [f64; 13] = [
    0.16666666666666669,
    0.07499999999998433,
    0.04464285714635543,
    0.030381944138531247,
    0.02237217294214989,
    0.017352392720869973,
    0.013971212973552933,
    0.011479177415184906,
    0.01032281435018578,
    0.005457506718640358,
    0.01740087944269402,
    -0.014851887071247204,
    0.028757851367421566,
];

/// `P` in pairs and pairs of pairs: a few more products than Horner's rule, but a chain a third as long, and it is the
/// chain that a processor waits for.
#[inline(always)]
fn series<L: Lane>(z: L) -> L {
    let z2 = z * z;
    let z4 = z2 * z2;
    let pair = |i: usize| L::splat(ASIN[i]) + L::splat(ASIN[i + 1]) * z;
    let four = |i: usize| pair(i) + pair(i + 2) * z2;
    (four(0) + four(4) * z4) + (four(8) + L::splat(ASIN[12]) * z4) * (z4 * z4)
}

/// Domain: -1 to 1.
#[inline(always)]
pub(crate) fn asin<L: Lane>(x: L) -> L {
    let size = x.abs();
    let value = asin_folded(size, L::splat(0.5) * (L::splat(1.0) - size)).flip_by(x);
    L::select(size.at_most(L::splat(1.0)), value, L::splat(f64::NAN))
}

/// Arcsine of a `size` from 0 to 1 whose `folded`, `(1 - size) / 2`, is known better than the size tells: near one a
/// rounding of the size is a thousand million roundings of the angle's distance from `pi/2`.
#[inline(always)]
pub(crate) fn asin_folded<L: Lane>(size: L, folded: L) -> L {
    let is_small = size.at_most(L::splat(0.5));
    let z = L::select(is_small, size * size, folded);
    let base = L::select(is_small, size, folded.sqrt());
    let tail = base * z * series(z);
    // 2 s is exact; the small parts are added before it is taken from the large one.
    let twice = base + base;
    let large = (L::splat(FRAC_PI_2) - twice) + (L::splat(HALF_PI_LOW) - (tail + tail));
    L::select(is_small, base + tail, large)
}
