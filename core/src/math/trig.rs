//! Sine, cosine and tangent.
//!
//! **Method.** `abs(x) = n * pi/2 + r` with `abs(r) <= pi/4`; one polynomial each for `sin r` and `cos r`;
//! the two low bits of `n` choose which one to return and with what sign. Odd functions take the sign of
//! `x` last, so their symmetry is exact.
//!
//! **Range reduction.** Cody and Waite's: `pi/2` in four parts. The first three have 33 significant bits,
//! and `n < 2^16`, so `n` times such a part is exact. Differences keep their rounding errors, so `r` is a
//! pair of numbers. Closest to a multiple of `pi/2`, where most digits cancel, `abs(r)` is 2^-60 (found by
//! trying the three doubles nearest to every multiple within the limit), and the relative error of the
//! pair is below 2^-89 in all of these places: the cancellation costs the result nothing.
//!
//! **Polynomials.** With `z = r^2`, `sin r = r + r z P(z)` and `cos r = 1 - z/2 + z^2 Q(z)`. `P` and `Q` are
//! Chebyshev fits on `[0, (pi/4)^2]` made with mpmath at 60 digits and rounded to double;
//! `tests/python/make_math_reference.py` holds the recipe and its test compares these very lines.
//! Error after rounding: 2^-57 for the sine (relative), 2^-60 for the cosine.
//!
//! **Outside.** NaN, infinities and `abs(x) > TRIG_LIMIT` give NaN.

use std::f64::consts::FRAC_2_PI;

use super::TRIG_LIMIT;
use super::exact::{divide, fast_two_sum, polynomial, two_sum};
use super::lane::Lane;

/// `pi/2` as the sum of four parts, three of them short.
const HALF_PI: [f64; 4] =
    [1.5707963267341256, 6.077100506303966e-11, 2.0222662487111665e-21, 8.4784276603689e-32];

/// Adding it to `0 <= t < 2^51` leaves `t`, rounded to an integer, in the low bits of the sum.
const ROUNDER: f64 = 6_755_399_441_055_744.0; // 1.5 * 2^52

/// Coefficients of `P`, lowest first.
const SIN: [f64; 7] = [
    -0.16666666666666666,
    0.008333333333333331,
    -0.00019841269841265065,
    2.7557319219339167e-06,
    -2.5052106232447578e-08,
    1.6058531618986147e-10,
    -7.586697117706918e-13,
];

/// Coefficients of `Q`, lowest first.
const COS: [f64; 6] = [
    0.041666666666666664,
    -0.0013888888888887398,
    2.480158729876569e-05,
    -2.7557317271729793e-07,
    2.08761462684032e-09,
    -1.1382632425521717e-11,
];

/// What the range reduction and the two polynomials know about an angle.
struct Angle<L: Lane> {
    /// `sin r` as a head and a small tail.
    sin: (L, L),
    /// `cos r` as a head and a small tail.
    cos: (L, L),
    /// Whether the quarter turn `n` is odd: sine and cosine change places.
    odd: L::Mask,
    /// Number whose sign is that of the sine of the whole angle, for the quarter turn alone.
    sin_sign: L,
    /// The same for the cosine.
    cos_sign: L,
    /// Whether the argument was within the limit.
    valid: L::Mask,
}

impl<L: Lane> Angle<L> {
    /// Reduces and evaluates `abs(x)`.
    #[inline(always)]
    fn of(x: L) -> Self {
        let (x, one) = (x.abs(), L::splat(1.0));

        let turns = x * L::splat(FRAC_2_PI) + L::splat(ROUNDER);
        let n = turns - L::splat(ROUNDER);
        // The first difference is exact: its terms are close, and neither has bits below 2^-53.
        let near = x - n * L::splat(HALF_PI[0]);
        let (near, error_1) = two_sum(near, -(n * L::splat(HALF_PI[1])));
        let (near, error_2) = two_sum(near, -(n * L::splat(HALF_PI[2])));
        let (r, rest) = fast_two_sum(near, (error_1 + error_2) - n * L::splat(HALF_PI[3]));

        let z = r * r;
        let half_z = z * L::splat(0.5);
        let cos_head = one - half_z;
        let sin_tail = r * (z * polynomial(z, &SIN)) + rest * cos_head;
        let cos_tail = ((one - cos_head) - half_z) + (z * z * polynomial(z, &COS) - r * rest);

        let (bit_0, bit_1) = (turns.bit(0), turns.bit(1));
        let sin_sign = L::select(bit_1, -one, one);
        Self {
            sin: (r, sin_tail),
            cos: (cos_head, cos_tail),
            odd: bit_0,
            sin_sign,
            cos_sign: L::select(bit_0, -sin_sign, sin_sign),
            valid: x.at_most(L::splat(TRIG_LIMIT)),
        }
    }
}

/// Sine and cosine. Error below 1 ulp for each (measured: 0.80).
#[inline(always)]
pub(super) fn sin_cos<L: Lane>(x: L) -> (L, L) {
    let angle = Angle::of(x);
    let (sin, cos) = (angle.sin.0 + angle.sin.1, angle.cos.0 + angle.cos.1);
    let sin_x = L::select(angle.odd, cos, sin).flip_by(angle.sin_sign).flip_by(x);
    let cos_x = L::select(angle.odd, sin, cos).flip_by(angle.cos_sign);
    let nan = L::splat(f64::NAN);
    (L::select(angle.valid, sin_x, nan), L::select(angle.valid, cos_x, nan))
}

/// Tangent: the quotient of the unrounded sine and cosine. Error below 1.5 ulp (measured: 1.02).
#[inline(always)]
pub(super) fn tan<L: Lane>(x: L) -> L {
    let angle = Angle::of(x);
    let (sin, cos) = (fast_two_sum(angle.sin.0, angle.sin.1), fast_two_sum(angle.cos.0, angle.cos.1));
    let choose =
        |yes: (L, L), no: (L, L)| (L::select(angle.odd, yes.0, no.0), L::select(angle.odd, yes.1, no.1));
    let (head, tail) = divide(choose(cos, sin), choose(sin, cos));
    let tan_x = (head + tail).flip_by(angle.sin_sign).flip_by(angle.cos_sign).flip_by(x);
    L::select(angle.valid, tan_x, L::splat(f64::NAN))
}
