use super::normal_quantile;

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
