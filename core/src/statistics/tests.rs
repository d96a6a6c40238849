use super::{normal_below, normal_quantile};

#[test]
fn quantiles_are_those_of_the_tables() {
    // SciPy 1.17 norm.ppf, printed with 16 digits.
    for (chance, z) in [
        (0.5, 0.0),
        (0.9, 1.281_551_565_544_600_4),
        (0.95, 1.644_853_626_951_472_2),
        (0.99, 2.326_347_874_040_840_8),
        (0.999, 3.090_232_306_167_813_5),
        (1e-12, -7.034_483_825_301_131),
        (0.05, -1.644_853_626_951_472_9),
    ] {
        assert!(
            (normal_quantile(chance) - z).abs() <= 4e-15 * (1.0 + z.abs()),
            "{chance}: {}",
            normal_quantile(chance)
        );
    }
}

#[test]
fn a_chance_lies_between_none_and_certain() {
    for chance in [0.0, 1.0, -0.1, 1.1, f64::NAN, f64::INFINITY] {
        assert!(normal_quantile(chance).is_nan());
    }
}

#[test]
fn chances_are_those_of_another_implementation() {
    // mpmath 1.3 ncdf with 30 digits, rounded to a double.
    for (z, chance) in [
        (-7.5, 3.190_891_672_910_896e-14),
        (-3.0, 0.001_349_898_031_630_094_5),
        (-1.25, 0.105_649_773_666_855_26),
        (-0.1, 0.460_172_162_722_971),
        (0.0, 0.5),
        (0.5, 0.691_462_461_274_013_1),
        (1.96, 0.975_002_104_851_779_6),
        (4.0, 0.999_968_328_758_166_9),
        (8.0, 0.999_999_999_999_999_4),
    ] {
        assert!((normal_below(z) - chance).abs() <= 4e-16, "{z}: {}", normal_below(z));
    }
    for chance in [1e-9, 0.01, 0.3, 0.6, 0.975, 0.999_999] {
        assert!((normal_below(normal_quantile(chance)) - chance).abs() < 1e-15, "{chance}");
    }
    assert!(normal_below(f64::NAN).is_nan());
    assert!(normal_below(f64::INFINITY) >= 1.0 && normal_below(f64::NEG_INFINITY) < 1e-16);
}
