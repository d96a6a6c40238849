//! Exponential, and what follows from it and the logarithm: powers and cube roots.
//!
//! Method: x = k ln 2 + r with |r| at most ln 2 / 2, then exp r by its own series, whose coefficients 1/n! are exact by
//! definition, no fit; terms up to r^14 leave a truncation error below 1e-19. ln 2 is split so that k times its high
//! part is exact.

use super::lane::Lane;
use super::log::{LN2_HIGH, LN2_LOW, ln};

/// Adding and taking off 1.5 x 2^52 rounds to a whole number, halves to even.
const ROUNDER: f64 = 6_755_399_441_055_744.0;

/// Largest argument with a finite result, and smallest with one of full precision.
pub(super) const EXP_MOST: f64 = 709.0;
pub(super) const EXP_LEAST: f64 = -708.0;

/// Domain: from [`EXP_LEAST`] to [`EXP_MOST`]; NaN elsewhere.
#[inline(always)]
pub(super) fn exp<L: Lane>(x: L) -> L {
    let whole = (x * L::splat(std::f64::consts::LOG2_E) + L::splat(ROUNDER)) - L::splat(ROUNDER);
    let (high, low) = (x - whole * L::splat(LN2_HIGH), whole * L::splat(LN2_LOW));
    let r = high - low;
    let lost = (high - r) - low;
    // exp r = 1 + (r + r^2 / 2 (1 + r / 3 (1 + ...))): the small parts are added first.
    let mut series = L::splat(1.0);
    for n in [14.0, 13.0, 12.0, 11.0, 10.0, 9.0, 8.0, 7.0, 6.0, 5.0, 4.0, 3.0] {
        series = L::splat(1.0) + series * r * L::splat(1.0 / n);
    }
    let small = L::splat(0.5) * r * r * series + lost;
    let value = (L::splat(1.0) + (r + small)) * whole.two_to();
    let above = L::splat(EXP_LEAST).at_most(x);
    let value = L::select(above, value, L::splat(f64::NAN));
    L::select(x.at_most(L::splat(EXP_MOST)), value, L::splat(f64::NAN))
}

/// Domain: `x > 0`. The logarithm's rounding is magnified by its own size, so the error grows with `abs(y ln x)`.
#[inline(always)]
pub(super) fn pow<L: Lane>(x: L, y: L) -> L {
    exp(y * ln(x))
}

/// Domain: `x >= 0`. A power, and one step of Newton that takes its error away.
#[inline(always)]
pub(super) fn cbrt<L: Lane>(x: L) -> L {
    let guess = pow(x, L::splat(1.0 / 3.0));
    let better = guess - (guess * guess * guess - x) / (L::splat(3.0) * guess * guess);
    L::select(x.at_most(L::splat(0.0)), L::select(L::splat(0.0).at_most(x), x, L::splat(f64::NAN)), better)
}
