//! Natural logarithm.
//!
//! Method: x = 2^e m with m in [sqrt(1/2), sqrt(2)), then ln m = 2 atanh(s), s = (m - 1)/(m + 1), |s| < 0.1716. The
//! coefficients of atanh are 1/3, 1/5, ...: exact by definition, no fit. Terms up to s^23 leave a truncation error
//! below 1e-19. ln 2 is split so that e times its high part is exact.

use super::lane::Lane;

/// High part of ln 2: its last 21 bits are zero, so that a product with an exponent is exact.
pub(super) const LN2_HIGH: f64 = f64::from_bits(0x3FE6_2E42_FEE0_0000);
/// ln 2 less [`LN2_HIGH`], computed with 50 digits.
pub(super) const LN2_LOW: f64 = 1.908_214_929_270_587_7e-10;

/// Domain: positive numbers. Zero gives minus infinity, infinity itself; a negative number or NaN gives NaN.
#[inline(always)]
pub(super) fn ln<L: Lane>(x: L) -> L {
    let one = L::splat(1.0);
    let (mantissa, exponent) = x.parts();
    let f = mantissa - one;
    let s = f / (mantissa + one);
    let z = s * s;
    let mut series = L::splat(1.0 / 23.0);
    for k in [21.0, 19.0, 17.0, 15.0, 13.0, 11.0, 9.0, 7.0, 5.0, 3.0] {
        series = series * z + L::splat(1.0 / k);
    }
    // 2 atanh(s) = 2s + 2s z series, and 2s = f - s f: the small corrections are added to the large part last.
    let small = s * (z * series + z * series - f) + exponent * L::splat(LN2_LOW);
    let value = exponent * L::splat(LN2_HIGH) + (f + small);
    let infinite = L::splat(f64::MAX).below(x);
    let value = L::select(infinite, L::splat(f64::INFINITY), value);
    let value = L::select(x.at_most(L::splat(0.0)), L::splat(f64::NEG_INFINITY), value);
    L::select(L::splat(0.0).at_most(x), value, L::splat(f64::NAN))
}
