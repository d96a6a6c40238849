//! Plain-number kernels in radians: the only transcendental functions of this library.
//!
//! One contract holds for all of them: **the same input gives the same bits**, in a debug or a release
//! build, alone or in a row of any width, on every processor with IEEE 754 double arithmetic. The
//! standard library's trigonometry cannot promise that, because each platform brings its own. The
//! kernels here use only `+ - * / sqrt`, comparisons with selects, and bit operations, in one fixed
//! order: no fused multiply-add, no tables, no branches.
//!
//! | function  | domain                   | error, stated      | error, measured |
//! |-----------|--------------------------|--------------------|-----------------|
//! | [`sin`]   | up to [`TRIG_LIMIT`]     | below 1 ulp        | 0.80 ulp        |
//! | [`cos`]   | up to [`TRIG_LIMIT`]     | below 1 ulp        | 0.80 ulp        |
//! | [`tan`]   | up to [`TRIG_LIMIT`]     | below 1.5 ulp      | 1.02 ulp        |
//! | [`atan2`] | every pair without a NaN | below 1 ulp        | 0.65 ulp        |
//! | [`asin`]  | `-1` to `1`              | below 1.5 ulp      | at most one double away |
//! | [`ln`]    | `x >= 0`                 | below 1.5 ulp      | 0.9 ulp         |
//! | [`exp`]   | -708 to 709              | below 1 ulp        | 0.83 ulp        |
//! | [`cbrt`]  | `x >= 0`                 | below 1.5 ulp      | at most one double away |
//! | [`pow`]   | `x > 0`                  | grows with `abs(y ln x)` | 1e-15 relative up to 3 |
//! | [`sqrt`]  | `x >= 0`                 | correctly rounded  |                 |
//!
//! Errors are distances to the exact value, the largest found among several million random arguments and at
//! the doubles around every multiple of `pi/2`, by comparison with 45-digit arithmetic. Outside its domain
//! a function returns NaN, never a wrong number, and that NaN always is [`f64::NAN`], so even it has the
//! same bits everywhere.
//!
//! The `*_wide` forms run the very same source on `N` numbers side by side.

mod arcsin;
mod arctan;
mod exact;
mod exponent;
mod lane;
mod log;
#[cfg(test)]
mod tests;
mod trig;

pub(crate) use lane::Lane;
use lane::Wide;

/// The kernel of [`asin`], for other kernels to be built from.
pub(crate) use arcsin::asin_folded;

/// Largest magnitude, in radians, that [`sin`], [`cos`] and [`tan`] accept. Beyond it they return NaN.
pub const TRIG_LIMIT: f64 = 1.0e5;

/// Sine of `x` radians.
#[must_use]
pub fn sin(x: f64) -> f64 {
    trig::sin_cos(x).0
}

/// Cosine of `x` radians.
#[must_use]
pub fn cos(x: f64) -> f64 {
    trig::sin_cos(x).1
}

/// Sine and cosine of `x` radians; the same bits as [`sin`] and [`cos`] for the price of one of them.
#[must_use]
pub fn sin_cos(x: f64) -> (f64, f64) {
    trig::sin_cos(x)
}

/// Tangent of `x` radians.
#[must_use]
pub fn tan(x: f64) -> f64 {
    trig::tan(x)
}

/// Angle in radians, in `[-pi, pi]`, of the point `(x, y)` seen from the origin.
///
/// Zeros and infinities follow IEEE 754: the result has the sign of `y`, a negative zero `x` counts as
/// the left half plane, and two infinities meet at an odd multiple of pi/4.
#[must_use]
pub fn atan2(y: f64, x: f64) -> f64 {
    arctan::atan2(y, x)
}

/// Angle in radians, in `[-pi/2, pi/2]`, whose sine is `x`, from -1 to 1; NaN elsewhere.
#[must_use]
pub fn asin(x: f64) -> f64 {
    arcsin::asin(x)
}

/// Natural logarithm of `x`.
///
/// Zero gives minus infinity; a negative number gives NaN.
#[must_use]
pub fn ln(x: f64) -> f64 {
    log::ln(x)
}

/// Exponential of `x`, from -708 to 709; NaN elsewhere.
#[must_use]
pub fn exp(x: f64) -> f64 {
    exponent::exp(x)
}

/// `x` to the power `y`, for `x > 0`.
#[must_use]
pub fn pow(x: f64, y: f64) -> f64 {
    exponent::pow(x, y)
}

/// Cube root of `x >= 0`.
#[must_use]
pub fn cbrt(x: f64) -> f64 {
    exponent::cbrt(x)
}

/// Square root; differs from [`f64::sqrt`] only in that the NaN for a negative `x` has fixed bits.
#[must_use]
pub fn sqrt(x: f64) -> f64 {
    root(x)
}

/// [`sin`] of each lane.
#[must_use]
pub fn sin_wide<const N: usize>(x: [f64; N]) -> [f64; N] {
    trig::sin_cos(Wide(x)).0.0
}

/// [`cos`] of each lane.
#[must_use]
pub fn cos_wide<const N: usize>(x: [f64; N]) -> [f64; N] {
    trig::sin_cos(Wide(x)).1.0
}

/// [`sin_cos`] of each lane.
#[must_use]
pub fn sin_cos_wide<const N: usize>(x: [f64; N]) -> ([f64; N], [f64; N]) {
    let (sin, cos) = trig::sin_cos(Wide(x));
    (sin.0, cos.0)
}

/// [`tan`] of each lane.
#[must_use]
pub fn tan_wide<const N: usize>(x: [f64; N]) -> [f64; N] {
    trig::tan(Wide(x)).0
}

/// [`atan2`] of each pair of lanes.
#[must_use]
pub fn atan2_wide<const N: usize>(y: [f64; N], x: [f64; N]) -> [f64; N] {
    arctan::atan2(Wide(y), Wide(x)).0
}

/// [`asin`] of each lane.
#[must_use]
pub fn asin_wide<const N: usize>(x: [f64; N]) -> [f64; N] {
    arcsin::asin(Wide(x)).0
}

/// [`ln`] of each lane.
#[must_use]
pub fn ln_wide<const N: usize>(x: [f64; N]) -> [f64; N] {
    log::ln(Wide(x)).0
}

/// [`exp`] of each lane.
#[must_use]
pub fn exp_wide<const N: usize>(x: [f64; N]) -> [f64; N] {
    exponent::exp(Wide(x)).0
}

/// [`sqrt`] of each lane.
#[must_use]
pub fn sqrt_wide<const N: usize>(x: [f64; N]) -> [f64; N] {
    root(Wide(x)).0
}

/// Square root with a canonical NaN: the hardware's own NaN differs in sign between processors.
///
/// The root is taken of `abs(x)` because optimizers know that the root of a negative number is a NaN and drop
/// a select that seems to say the same; the sign is put back for the sake of -0.
#[inline(always)]
fn root<L: Lane>(x: L) -> L {
    L::select(L::splat(0.0).at_most(x), x.abs().sqrt().flip_by(x), L::splat(f64::NAN))
}
