//! Distributions: the normal one for a length with a stated chance, Student's for what trial bends tell; the gamma
//! function. Lines with the uncertainty of their parts, and what the rounding of readings does to them.

mod line;
mod reading;
#[cfg(test)]
mod tests;

pub(crate) use line::Line;
pub(crate) use reading::{SAME, is_multiple, one_sided, read_to, rounding};

use crate::math;
use std::f64::consts::PI;

/// Coefficients of algorithm AS 241 (Wichura, Applied Statistics 37, 1988; written from memory, checked against SciPy's
/// quantiles to 1e-15): numerator and denominator, constant term first.
const CENTER: [[f64; 8]; 2] = [
    [
        3.387_132_872_796_366_5,
        133.141_667_891_784_38,
        1_971.590_950_306_551_3,
        13_731.693_765_509_46,
        45_921.953_931_549_87,
        67_265.770_927_008_7,
        33_430.575_583_588_13,
        2_509.080_928_730_122_7,
    ],
    [
        1.0,
        42.313_330_701_600_91,
        687.187_007_492_057_9,
        5_394.196_021_424_751,
        21_213.794_301_586_597,
        39_307.895_800_092_71,
        28_729.085_735_721_943,
        5_226.495_278_852_854,
    ],
];
const NEAR_TAIL: [[f64; 8]; 2] = [
    [
        1.423_437_110_749_683_5,
        4.630_337_846_156_546,
        5.769_497_221_460_691,
        3.647_848_324_763_204_5,
        1.270_458_252_452_368_4,
        0.241_780_725_177_450_6,
        0.022_723_844_989_269_184,
        7.745_450_142_783_414e-4,
    ],
    [
        1.0,
        2.053_191_626_637_759,
        1.676_384_830_183_803_8,
        0.689_767_334_985_1,
        0.148_103_976_427_480_08,
        0.015_198_666_563_616_457,
        5.475_938_084_995_345e-4,
        1.050_750_071_644_416_9e-9,
    ],
];
const FAR_TAIL: [[f64; 8]; 2] = [
    [
        6.657_904_643_501_103,
        5.463_784_911_164_114,
        1.784_826_539_917_291_3,
        0.296_560_571_828_504_87,
        0.026_532_189_526_576_124,
        0.001_242_660_947_388_078_4,
        2.711_555_568_743_487_6e-5,
        2.010_334_399_292_288_1e-7,
    ],
    [
        1.0,
        0.599_832_206_555_888,
        0.136_929_880_922_735_8,
        0.014_875_361_290_850_615,
        7.868_691_311_456_133e-4,
        1.846_318_317_510_054_8e-5,
        1.421_511_758_316_446e-7,
        2.044_263_103_389_939_8e-15,
    ],
];

fn quotient(rows: &[[f64; 8]; 2], x: f64) -> f64 {
    let horner = |row: &[f64; 8]| row.iter().rev().fold(0.0, |sum, c| sum * x + c);
    horner(&rows[0]) / horner(&rows[1])
}

/// The number that a standard normal variable stays below with probability `chance`; NaN outside 0 to 1.
pub(crate) fn normal_quantile(chance: f64) -> f64 {
    if !(chance > 0.0 && chance < 1.0) {
        return f64::NAN;
    }
    let from_middle = chance - 0.5;
    if from_middle.abs() <= 0.425 {
        return from_middle * quotient(&CENTER, 0.425 * 0.425 - from_middle * from_middle);
    }
    let tail = if from_middle < 0.0 { chance } else { 1.0 - chance };
    let r = math::sqrt(-math::ln(tail));
    let z = if r <= 5.0 { quotient(&NEAR_TAIL, r - 1.6) } else { quotient(&FAR_TAIL, r - 5.0) };
    if from_middle < 0.0 { -z } else { z }
}

/// Coefficients of the upper tail over the density, by J. F. Hart (Computer Approximations, 1968, number 5666; written from
/// memory, checked against mpmath to 1e-15): numerator and denominator, constant term first.
const UPPER_TAIL: [[f64; 8]; 2] = [
    [
        220.206_867_912_376,
        221.213_596_169_931,
        112.079_291_497_871,
        33.912_866_078_383,
        6.373_962_203_531_65,
        0.700_383_064_443_688,
        3.526_249_659_989_11e-2,
        0.0,
    ],
    [
        440.413_735_824_752,
        793.826_512_519_948,
        637.333_633_378_831,
        296.564_248_779_674,
        86.780_732_202_946_1,
        16.064_177_579_207,
        1.755_667_163_182_64,
        8.838_834_764_831_84e-2,
    ],
];

/// The chance that a standard normal variable stays below a number, to 1e-15 of 1.
pub(crate) fn normal_below(z: f64) -> f64 {
    // Beyond 8.5 less than 1e-17 is left.
    let far = z.abs().min(8.5);
    let over = if far < 5.0 * std::f64::consts::SQRT_2 {
        quotient(&UPPER_TAIL, far)
    } else {
        1.0 / (math::sqrt(2.0 * PI) * (1..=4).rev().fold(far, |sum, k| far + f64::from(k) / sum))
    };
    let tail = over * math::exp(-far * far / 2.0);
    if z > 0.0 {
        1.0 - tail
    } else if z.is_nan() {
        z
    } else {
        tail
    }
}

/// Natural logarithm of the gamma function for a positive argument: Stirling's series from 12 on, brought there by the
/// recurrence. The terms left out are below 1e-16.
pub(crate) fn ln_gamma(x: f64) -> f64 {
    const HALF_LN_TWO_PI: f64 = 0.918_938_533_204_672_8;
    let (mut z, mut product) = (x, 1.0);
    while z < 12.0 {
        product *= z;
        z += 1.0;
    }
    let inverse = 1.0 / z;
    let square = inverse * inverse;
    // B(2k) / (2k (2k - 1)).
    let series = inverse
        * (1.0 / 12.0
            + square * (-1.0 / 360.0 + square * (1.0 / 1260.0 + square * (-1.0 / 1680.0 + square / 1188.0))));
    (z - 0.5) * math::ln(z) - z + HALF_LN_TWO_PI + series - math::ln(product)
}

/// The chance that a variable of Student's distribution with whole degrees of freedom lies within `tan(angle) sqrt(dof)`
/// of zero: the finite sums for odd and even numbers.
fn student_within(angle: f64, dof: u32) -> f64 {
    let (sine, cosine) = math::sin_cos(angle);
    let square = cosine * cosine;
    let odd = dof % 2 == 1;
    // Terms in falling order of the power, from the innermost factor outward.
    let mut sum = 0.0;
    let mut k = if odd { 3 } else { 2 };
    let mut factors = Vec::new();
    while k < dof {
        factors.push(f64::from(k - 1) / f64::from(k));
        k += 2;
    }
    for factor in factors.into_iter().rev() {
        sum = (1.0 + sum) * factor * square;
    }
    match (odd, dof) {
        (true, 1) => 2.0 / PI * angle,
        (true, _) => 2.0 / PI * (angle + sine * cosine * (1.0 + sum)),
        (false, _) => sine * (1.0 + sum),
    }
}

/// The number within which a variable of Student's distribution stays on both sides with probability `chance`; NaN
/// outside 0 to 1 and for no degrees of freedom.
pub(crate) fn student_both_sides(chance: f64, dof: u32) -> f64 {
    if !(chance > 0.0 && chance < 1.0) || dof == 0 {
        return f64::NAN;
    }
    // Halving the quarter turn until nothing is left of it.
    let (mut low, mut high) = (0.0, PI / 2.0);
    for _ in 0..80 {
        let middle = (low + high) / 2.0;
        if student_within(middle, dof) < chance {
            low = middle;
        } else {
            high = middle;
        }
    }
    math::sqrt(f64::from(dof)) * math::tan((low + high) / 2.0)
}
