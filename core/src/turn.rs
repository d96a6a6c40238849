//! The turn of a bend plane in the forms a bench can use: words, a clock, an inclinometer.

#[cfg(test)]
mod tests;

use crate::math;
use crate::units::{Angle, Rounding, deg, rad, round_angle, to_deg, to_rad};

/// A turn within this of a whole quarter is told in words (ours, no source; a hand keeps one degree).
const QUARTER_WITHIN_DEG: f64 = 0.5;

/// Words for whole quarter turns; None for other turns. Clockwise is seen looking along the direction of work.
#[must_use]
pub fn words(rotation: Angle) -> Option<&'static str> {
    let degrees = to_deg(rotation);
    let near = |target: f64| (degrees - target).abs() <= QUARTER_WITHIN_DEG;
    if near(0.0) {
        Some("same way")
    } else if near(90.0) {
        Some("quarter turn clockwise")
    } else if near(-90.0) {
        Some("quarter turn anticlockwise")
    } else if near(180.0) || near(-180.0) {
        Some("flip over")
    } else {
        None
    }
}

/// The turn on a clock face seen along the direction of work, with the last bend at 12: `"3:00"`, `"10:24"`. Half a
/// degree is a minute.
#[must_use]
pub fn clock(rotation: Angle) -> String {
    let degrees = to_deg(round_angle(rotation, deg(0.5), Rounding::Nearest));
    let minutes = (if degrees < 0.0 { degrees + 360.0 } else { degrees }) * 2.0;
    let hour = (minutes / 60.0).floor();
    let rest = minutes - hour * 60.0;
    let hour = if hour == 0.0 { 12.0 } else { hour };
    format!("{hour:.0}:{rest:02.0}")
}

/// What an inclinometer reads on the leg after a bend while the bend before it lies flat, that is, while the legs before
/// and after *that* bend are level: positive upward.
///
/// The bend to come points up where its plane is turned clockwise, looking along the direction of work, when the last
/// bend went to the left: sin(reading) = sin(bend) x sin(rotation) with the sign of `last_bend_to_left`.
#[must_use]
pub fn inclinometer(bend: Angle, rotation: Angle, last_bend_to_left: bool) -> Angle {
    let rise = math::sin(to_rad(bend)) * math::sin(to_rad(rotation));
    let level = math::sqrt((1.0 - rise * rise).max(0.0));
    let up = rad(math::atan2(rise, level));
    if last_bend_to_left { up } else { -up }
}
