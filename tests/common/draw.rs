//! Numbers drawn from a counter: the same on every run and platform.

/// A uniform number in (0, 1), by splitmix64.
pub fn uniform(counter: u64) -> f64 {
    let mut z = counter.wrapping_add(1).wrapping_mul(0x9E37_79B9_7F4A_7C15);
    z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
    z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
    z ^= z >> 31;
    #[expect(clippy::cast_precision_loss, reason = "53 bits are exact")]
    let share = (z >> 11) as f64;
    (share + 0.5) / 9_007_199_254_740_992.0
}

/// A normal number, by Box and Muller's method.
pub fn normal(counter: u64) -> f64 {
    (-2.0 * uniform(2 * counter).ln()).sqrt() * (std::f64::consts::TAU * uniform(2 * counter + 1)).cos()
}
