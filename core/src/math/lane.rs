//! The few operations a kernel may use, for one number and for `N` side by side.
//!
//! Every operation here is either correctly rounded by IEEE 754 or moves bits without rounding, so a
//! kernel written over [`Lane`] has one result. `Wide` only repeats the operation of `f64` for each lane;
//! plain loops over arrays are what the compiler turns into vector instructions of whatever width it has.

use std::array;
use std::ops::{Add, Div, Mul, Neg, Sub};

const SIGN_BIT: u64 = 1 << 63;

/// A number, or a row of numbers, that a kernel computes with.
pub(crate) trait Lane:
    Copy + Add<Output = Self> + Sub<Output = Self> + Mul<Output = Self> + Div<Output = Self> + Neg<Output = Self>
{
    /// Answer of a comparison: all bits of a lane set, or none.
    type Mask: Copy;

    /// The same constant in every lane.
    fn splat(value: f64) -> Self;

    /// Correctly rounded square root.
    fn sqrt(self) -> Self;

    /// Clears the sign bit.
    fn abs(self) -> Self;

    /// Inverts the sign where `sign` is negative; a negative zero counts as negative.
    fn flip_by(self, sign: Self) -> Self;

    /// `self < other`; false for NaN.
    fn below(self, other: Self) -> Self::Mask;

    /// `self <= other`; false for NaN.
    fn at_most(self, other: Self) -> Self::Mask;

    /// Whether bit `index` of the representation is set.
    fn bit(self, index: u32) -> Self::Mask;

    /// `x = m 2^e` for positive finite `x`: `m` in `[sqrt(1/2), sqrt(2))` and `e`, a whole number. Anything is returned
    /// for other numbers.
    fn parts(self) -> (Self, Self);

    /// Two to the power of a whole number from -1022 to 1023. Anything is returned for other numbers.
    fn two_to(self) -> Self;

    /// `yes` where the mask is set, else `no`: the bits of the chosen one, even if the other is NaN.
    fn select(mask: Self::Mask, yes: Self, no: Self) -> Self;
}

impl Lane for f64 {
    type Mask = u64;

    #[inline(always)]
    fn splat(value: f64) -> Self {
        value
    }

    #[inline(always)]
    fn sqrt(self) -> Self {
        f64::sqrt(self)
    }

    #[inline(always)]
    fn abs(self) -> Self {
        f64::from_bits(self.to_bits() & !SIGN_BIT)
    }

    #[inline(always)]
    fn flip_by(self, sign: Self) -> Self {
        f64::from_bits(self.to_bits() ^ (sign.to_bits() & SIGN_BIT))
    }

    #[inline(always)]
    fn below(self, other: Self) -> u64 {
        u64::from(self < other).wrapping_neg()
    }

    #[inline(always)]
    fn at_most(self, other: Self) -> u64 {
        u64::from(self <= other).wrapping_neg()
    }

    #[inline(always)]
    fn bit(self, index: u32) -> u64 {
        ((self.to_bits() >> index) & 1).wrapping_neg()
    }

    #[inline(always)]
    fn parts(self) -> (Self, Self) {
        // Numbers too small for a full mantissa are brought up by 2^54 first.
        const UP: f64 = 18_014_398_509_481_984.0;
        let small = self.abs().below(f64::MIN_POSITIVE);
        let bits = Self::select(small, self * UP, self).to_bits();
        let lift = Self::select(small, 54.0, 0.0);
        // Exponents count from sqrt(1/2), so that the mantissa lies around one.
        const ROOT_HALF: u64 = 0x3FE6_A09E_667F_3BCD;
        let above = bits.wrapping_sub(ROOT_HALF);
        let mantissa = f64::from_bits((above & 0x000F_FFFF_FFFF_FFFF).wrapping_add(ROOT_HALF));
        // A whole number below 2^52, placed into the mantissa of 2^52, is that double; the sign rides in the bias.
        let biased = (above >> 52).wrapping_add(2048) & 0xFFF;
        let exponent = f64::from_bits(0x4330_0000_0000_0000 | biased) - 4_503_599_627_370_496.0 - 2048.0;
        (mantissa, exponent - lift)
    }

    #[inline(always)]
    fn two_to(self) -> Self {
        // The whole number, biased, in the lowest bits of the mantissa of 2^52, moved into the exponent.
        f64::from_bits((self + 1023.0 + 4_503_599_627_370_496.0).to_bits() << 52)
    }

    #[inline(always)]
    fn select(mask: u64, yes: Self, no: Self) -> Self {
        f64::from_bits((yes.to_bits() & mask) | (no.to_bits() & !mask))
    }
}

/// `N` numbers side by side.
#[derive(Clone, Copy)]
pub(super) struct Wide<const N: usize>(pub(super) [f64; N]);

impl<const N: usize> Wide<N> {
    #[inline(always)]
    fn each(self, f: impl Fn(f64) -> f64) -> Self {
        Self(array::from_fn(|i| f(self.0[i])))
    }

    #[inline(always)]
    fn pair<T>(self, other: Self, f: impl Fn(f64, f64) -> T) -> [T; N] {
        array::from_fn(|i| f(self.0[i], other.0[i]))
    }
}

/// Lifts an arithmetic operator from `f64` to `Wide`.
macro_rules! lift {
    ($($operator:ident $method:ident),+) => {$(
        impl<const N: usize> $operator for Wide<N> {
            type Output = Self;

            #[inline(always)]
            fn $method(self, other: Self) -> Self {
                Self(self.pair(other, f64::$method))
            }
        }
    )+};
}

lift!(Add add, Sub sub, Mul mul, Div div);

impl<const N: usize> Neg for Wide<N> {
    type Output = Self;

    #[inline(always)]
    fn neg(self) -> Self {
        self.each(f64::neg)
    }
}

impl<const N: usize> Lane for Wide<N> {
    type Mask = [u64; N];

    #[inline(always)]
    fn splat(value: f64) -> Self {
        Self([value; N])
    }

    #[inline(always)]
    fn sqrt(self) -> Self {
        self.each(Lane::sqrt)
    }

    #[inline(always)]
    fn abs(self) -> Self {
        self.each(Lane::abs)
    }

    #[inline(always)]
    fn flip_by(self, sign: Self) -> Self {
        Self(self.pair(sign, Lane::flip_by))
    }

    #[inline(always)]
    fn below(self, other: Self) -> [u64; N] {
        self.pair(other, Lane::below)
    }

    #[inline(always)]
    fn at_most(self, other: Self) -> [u64; N] {
        self.pair(other, Lane::at_most)
    }

    #[inline(always)]
    fn bit(self, index: u32) -> [u64; N] {
        array::from_fn(|i| self.0[i].bit(index))
    }

    #[inline(always)]
    fn parts(self) -> (Self, Self) {
        let parts = self.0.map(Lane::parts);
        (Self(array::from_fn(|i| parts[i].0)), Self(array::from_fn(|i| parts[i].1)))
    }

    #[inline(always)]
    fn two_to(self) -> Self {
        self.each(Lane::two_to)
    }

    #[inline(always)]
    fn select(mask: [u64; N], yes: Self, no: Self) -> Self {
        Self(array::from_fn(|i| Lane::select(mask[i], yes.0[i], no.0[i])))
    }
}
