//! Properties that hold without any reference table.

use std::f64::consts::{FRAC_PI_2, FRAC_PI_4, PI};

use super::*;

const INF: f64 = f64::INFINITY;

/// Arguments over the whole domain, from the smallest number to the limit, the working range densely.
fn arguments() -> impl Iterator<Item = f64> {
    let powers = (-1074..=16).map(|e| if e < -1022 { f64::from_bits(1 << (e + 1074)) } else { two_to(e) });
    let working = (0..=4000).map(|i| f64::from(i) * (4.0 * PI / 4000.0));
    let far = (0..=4000).map(|i| f64::from(i) * (TRIG_LIMIT / 4000.0));
    powers.chain(working).chain(far)
}

fn two_to(exponent: i32) -> f64 {
    f64::from_bits(u64::from((exponent + 1023).unsigned_abs()) << 52)
}

fn assert_same(a: f64, b: f64, what: &str) {
    assert_eq!(a.to_bits(), b.to_bits(), "{what}: {a:e} and {b:e}");
}

#[test]
fn symmetry_is_exact() {
    for x in arguments() {
        assert_same(sin(-x), -sin(x), "sin is odd");
        assert_same(cos(-x), cos(x), "cos is even");
        if x.abs() <= TRIG_LIMIT {
            assert_same(tan(-x), -tan(x), "tan is odd");
        }
    }
}

#[test]
fn sine_and_cosine_lie_on_the_unit_circle() {
    for x in arguments() {
        let (s, c) = sin_cos(x);
        assert!((s * s + c * c - 1.0).abs() <= 4.0 * f64::EPSILON, "at {x:e}");
        assert_same(s, sin(x), "sin");
        assert_same(c, cos(x), "cos");
    }
}

#[test]
fn tangent_is_the_quotient() {
    for x in arguments() {
        let quotient = sin(x) / cos(x);
        assert!((tan(x) - quotient).abs() <= 4.0 * f64::EPSILON * quotient.abs(), "at {x:e}");
    }
}

#[test]
fn values_known_without_computing() {
    assert_same(sin(0.0), 0.0, "sin 0");
    assert_same(sin(-0.0), -0.0, "sin -0");
    assert_same(cos(-0.0), 1.0, "cos -0");
    assert_same(tan(-0.0), -0.0, "tan -0");
    assert_same(sin(5e-324), 5e-324, "sin of the smallest number");
    assert_same(tan(5e-324), 5e-324, "tan of the smallest number");
    assert_same(sin(FRAC_PI_2), 1.0, "sin pi/2");
    assert_same(cos(PI), -1.0, "cos pi");
    // What is left of pi after rounding it to double.
    assert_same(sin(PI), 1.224_646_799_147_353_2e-16, "sin pi");
    assert_same(cos(FRAC_PI_2), 6.123_233_995_736_766e-17, "cos pi/2");
}

#[test]
fn outside_the_domain_there_is_only_the_one_nan() {
    let beyond = f64::from_bits(TRIG_LIMIT.to_bits() + 1);
    let odd_nan = f64::from_bits(0xFFF8_0000_0000_0123);
    for x in [beyond, -beyond, 1e16, f64::MAX, INF, -INF, f64::NAN, odd_nan] {
        for result in [sin(x), cos(x), tan(x), sin_cos(x).0, sin_cos(x).1] {
            assert_same(result, f64::NAN, "outside");
        }
    }
    for x in [TRIG_LIMIT, -TRIG_LIMIT] {
        assert!(sin(x).is_finite() && cos(x).is_finite() && tan(x).is_finite());
    }
    for x in [0.0, 1.0, INF, odd_nan] {
        assert_same(atan2(x, odd_nan), f64::NAN, "x is NaN");
        assert_same(atan2(odd_nan, x), f64::NAN, "y is NaN");
    }
    for x in [-5e-324, -1.0, -INF, odd_nan] {
        assert_same(sqrt(x), f64::NAN, "no real root");
    }
}

#[test]
fn atan2_in_every_direction() {
    let three_quarters = 3.0 * FRAC_PI_4;
    for (y, x, angle) in [
        (0.0, 0.0, 0.0),
        (0.0, -0.0, PI),
        (0.0, 1.0, 0.0),
        (0.0, -1.0, PI),
        (1.0, 0.0, FRAC_PI_2),
        (1.0, -0.0, FRAC_PI_2),
        (1.0, 1.0, FRAC_PI_4),
        (1.0, -1.0, three_quarters),
        (5e-324, 5e-324, FRAC_PI_4),
        (f64::MAX, -f64::MAX, three_quarters),
        (1.0, INF, 0.0),
        (1.0, -INF, PI),
        (0.0, INF, 0.0),
        (0.0, -INF, PI),
        (INF, 1.0, FRAC_PI_2),
        (INF, 0.0, FRAC_PI_2),
        (INF, -0.0, FRAC_PI_2),
        (INF, INF, FRAC_PI_4),
        (INF, -INF, three_quarters),
        (5e-324, f64::MAX, 0.0),
        (5e-324, -f64::MAX, PI),
        (5e-324, 1.0, 5e-324),
    ] {
        assert_same(atan2(y, x), angle, "upper half plane");
        assert_same(atan2(-y, x), -angle, "lower half plane");
    }
}

#[test]
fn atan2_undoes_sine_and_cosine() {
    for i in -1000..=1000 {
        let angle = f64::from(i) * (3.0 / 1000.0);
        let (s, c) = sin_cos(angle);
        assert!((atan2(s, c) - angle).abs() <= 4.0 * f64::EPSILON, "at {angle}");
        assert_same(atan2(-s, c), -atan2(s, c), "odd in y");
    }
}

#[test]
fn square_root_passes_through() {
    for x in [0.0, 5e-324, 2.0, 4.0, f64::MAX, INF] {
        assert_same(sqrt(x), x.sqrt(), "sqrt");
    }
    assert_same(sqrt(-0.0), -0.0, "sqrt of -0");
    assert_eq!(sqrt_wide([4.0, 9.0, 0.25]).map(f64::to_bits), [2.0, 3.0, 0.5].map(f64::to_bits));
}
