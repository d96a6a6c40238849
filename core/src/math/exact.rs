//! Arithmetic that keeps its own rounding error: a pair `(head, tail)` stands for the exact `head + tail`.
//!
//! The methods are the classic error-free transformations of Knuth (sum) and Dekker (product).

use super::lane::Lane;

/// Exact sum, whichever operand is larger.
#[inline(always)]
pub(super) fn two_sum<L: Lane>(a: L, b: L) -> (L, L) {
    let sum = a + b;
    let b_part = sum - a;
    (sum, (a - (sum - b_part)) + (b - b_part))
}

/// Exact sum for `abs(a) >= abs(b)`.
#[inline(always)]
pub(super) fn fast_two_sum<L: Lane>(a: L, b: L) -> (L, L) {
    let sum = a + b;
    (sum, b - (sum - a))
}

/// Exact product, if neither `a * 2^28` overflows nor the tail underflows.
#[inline(always)]
pub(super) fn two_product<L: Lane>(a: L, b: L) -> (L, L) {
    let product = a * b;
    let ((a0, a1), (b0, b1)) = (split(a), split(b));
    (product, ((a0 * b0 - product) + a0 * b1 + a1 * b0) + a1 * b1)
}

/// Two halves of at most 26 significant bits each, so that products of halves are exact.
#[inline(always)]
fn split<L: Lane>(a: L) -> (L, L) {
    let shifted = a * L::splat(134_217_729.0); // 2^27 + 1
    let high = shifted - (shifted - a);
    (high, a - high)
}

/// Quotient of two pairs as a pair, relative error near 2^-100: what the first division left over is
/// found exactly and divided again.
#[inline(always)]
pub(super) fn divide<L: Lane>(numerator: (L, L), denominator: (L, L)) -> (L, L) {
    let quotient = numerator.0 / denominator.0;
    let (product, tail) = two_product(quotient, denominator.0);
    let rest = ((numerator.0 - product) - tail) + (numerator.1 - quotient * denominator.1);
    (quotient, rest / denominator.0)
}

/// Polynomial by Horner's rule, lowest coefficient first.
#[inline(always)]
pub(super) fn polynomial<L: Lane, const K: usize>(z: L, coefficients: &[f64; K]) -> L {
    let mut sum = L::splat(coefficients[K - 1]);
    for &coefficient in coefficients.iter().rev().skip(1) {
        sum = sum * z + L::splat(coefficient);
    }
    sum
}
