use super::{Angle, Length, Pressure, deg, inch, mm, to_deg, to_mm, to_mpa};

/// Which way a number is rounded. One rule for every output: cut lengths up, settings down (an under-bend can be
/// topped up), marks to the nearest, needs outward.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Rounding {
    /// To the next step above.
    Up,
    /// To the next step below.
    Down,
    /// To the nearest step, halves to the even one.
    Nearest,
}

/// An excess over a step below this share of the step is rounding noise and does not start a new step.
const NOISE: f64 = 1e-7;

impl Rounding {
    fn steps(self, value: f64, step: f64) -> f64 {
        let steps = value / step;
        match self {
            Rounding::Up => -floor(NOISE - steps),
            Rounding::Down => floor(steps + NOISE),
            Rounding::Nearest => nearest_whole(steps),
        }
    }
}

/// The nearest whole number, halves to the even one, in plain arithmetic: adding and taking away 1.5 x 2^52 leaves no
/// room for a fraction. Numbers of 2^51 and more are as good as whole.
pub(super) fn nearest_whole(value: f64) -> f64 {
    const ROOM: f64 = 6_755_399_441_055_744.0;
    const LARGE: f64 = 2_251_799_813_685_248.0;
    let whole = (value + ROOM) - ROOM;
    if value.abs() < LARGE { whole } else { value }
}

fn floor(value: f64) -> f64 {
    let whole = nearest_whole(value);
    if whole > value { whole - 1.0 } else { whole }
}

/// A length rounded to a whole number of steps.
#[must_use]
pub fn round_length(length: Length, step: Length, rounding: Rounding) -> Length {
    mm(rounding.steps(to_mm(length), to_mm(step)) * to_mm(step))
}

/// An angle rounded to a whole number of steps.
#[must_use]
pub fn round_angle(angle: Angle, step: Angle, rounding: Rounding) -> Angle {
    deg(rounding.steps(to_deg(angle), to_deg(step)) * to_deg(step))
}

/// At most two decimals, no trailing zeros, no minus before a zero.
fn decimal(value: f64) -> String {
    let text = format!("{value:.2}");
    let text = text.trim_end_matches('0').trim_end_matches('.');
    if text == "-0" { "0".to_owned() } else { text.to_owned() }
}

/// A length as messages print it: `"4.76 mm"`, `"34 mm"`.
#[must_use]
pub fn length_text(length: Length) -> String {
    format!("{} mm", decimal(to_mm(length)))
}

/// An angle as messages print it: `"31.28 deg"`, `"90 deg"`.
#[must_use]
pub fn angle_text(angle: Angle) -> String {
    format!("{} deg", decimal(to_deg(angle)))
}

/// A pressure as messages print it: `"13 MPa"`, `"172.37 MPa"`; small ones with four digits, `"0.006895 MPa"`.
#[must_use]
pub fn pressure_text(pressure: Pressure) -> String {
    let value = to_mpa(pressure);
    let mut decimals = 2;
    let mut least = 10.0;
    while value.abs() < least && decimals < 9 {
        decimals += 1;
        least /= 10.0;
    }
    let text = format!("{value:.decimals$}");
    let text = text.trim_end_matches('0').trim_end_matches('.');
    format!("{} MPa", if text == "-0" { "0" } else { text })
}

/// A pressure with every digit, so that reading it gives the same bits: `"6.894757293168362 MPa"`.
#[must_use]
pub fn exact_pressure_text(pressure: Pressure) -> String {
    format!("{} MPa", to_mpa(pressure))
}

/// A length with every digit, so that reading it gives the same bits: `"4.7625 mm"`.
#[must_use]
pub fn exact_length_text(length: Length) -> String {
    format!("{} mm", to_mm(length))
}

/// An angle with every digit of its degrees, so that reading it gives the same degrees: `"-178.9 deg"`.
#[must_use]
pub fn exact_angle_text(angle: Angle) -> String {
    format!("{} deg", to_deg(angle))
}

/// A length in inches to the nearest 1/32 in the wanted direction, without the unit: `"29 27/32"`.
#[must_use]
pub fn inch_text(length: Length, rounding: Rounding) -> String {
    let steps = rounding.steps(to_mm(length), to_mm(inch(1.0)) / 32.0);
    let sign = if steps < 0.0 { "-" } else { "" };
    let whole = (steps.abs() / 32.0).floor();
    let mut rest = steps.abs() - whole * 32.0;
    let mut base = 32.0;
    while rest > 0.0 && rest % 2.0 == 0.0 {
        rest /= 2.0;
        base /= 2.0;
    }
    if rest == 0.0 {
        format!("{sign}{whole:.0}")
    } else if whole == 0.0 {
        format!("{sign}{rest:.0}/{base:.0}")
    } else {
        format!("{sign}{whole:.0} {rest:.0}/{base:.0}")
    }
}
