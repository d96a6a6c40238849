//! Reads what people write for lengths, angles and pressures. A bare number never gets a unit.

mod guess;
mod notation;
mod number;
mod pressure;
mod scan;
mod tolerance;

pub use notation::Notation;
pub use pressure::{read_pressure, read_pressure_in};
pub use tolerance::read_tolerance;

use super::{Angle, Length, deg, inch, mm, rad};
use crate::code::Code;
use crate::error::Error;
use crate::problem::Value;
use scan::{Token, Unit, scan};

/// The unit a length may be written in.
#[derive(Debug, Clone, Copy, PartialEq)]
enum LengthUnit {
    Millimeter,
    Centimeter,
    Meter,
    Inch,
    Foot,
    Thou,
}

impl LengthUnit {
    /// Multiplies before it divides, so that short decimals and fractions stay exact.
    fn length(self, value: f64) -> Length {
        match self {
            LengthUnit::Millimeter => mm(value),
            LengthUnit::Centimeter => mm(value * 10.0),
            LengthUnit::Meter => mm(value * 1000.0),
            LengthUnit::Inch => inch(value),
            LengthUnit::Foot => inch(value * 12.0),
            LengthUnit::Thou => mm(value * 254.0 / 10_000.0),
        }
    }
}

/// Reads a length: `"3/16 in"`, `"9 1/4 in"`, `"5'-3 1/4\""`, `"1.85 m"`, `"2,84 m"`, `"28 thou"`.
///
/// A decimal comma is understood; `1,500 mm` is not, because it can be 1.5 or 1500.
///
/// # Errors
/// `UNIT_MISSING` without a unit (it asks what may be meant), `WRONG_KIND` for an angle, `NUMBER_AMBIGUOUS`,
/// `NOT_A_NUMBER`, `DATE_IN_SIZE`, `UNREADABLE`. The range is not checked here.
///
/// ```
/// use linewright::units::{read_length, to_mm};
/// assert_eq!(to_mm(read_length("3/16 in")?), 4.7625);
/// assert_eq!(to_mm(read_length("5'-3 1/4\"")?), 1606.55);
/// # Ok::<(), linewright::Error>(())
/// ```
pub fn read_length(text: &str) -> Result<Length, Error> {
    read_length_in(text, Notation::default())
}

/// [`read_length`] of a text from a file whose way of writing numbers is known.
///
/// # Errors
/// As [`read_length`]; among decimal commas also `1.500 mm` is `NUMBER_AMBIGUOUS`.
pub fn read_length_in(text: &str, notation: Notation) -> Result<Length, Error> {
    let tokens = scan(text, "length", notation)?;
    let fail = |code, need: &str| Error::field(code, "length", Value::text(text), Value::text(need));
    match tokens.as_slice() {
        [Token::Number(_)] => Err(guess::unit_missing(text)),
        [Token::Number(value), Token::Unit(Unit::Length(unit))] => held(unit.length(*value), fail),
        [
            Token::Number(feet),
            Token::Unit(Unit::Length(LengthUnit::Foot)),
            Token::Number(inches),
            Token::Unit(Unit::Length(LengthUnit::Inch)),
        ] if *feet >= 0.0 && (0.0..12.0).contains(&inches.abs()) => {
            held(inch(feet * 12.0 + inches.abs()), fail)
        }
        [Token::Number(_), Token::Unit(Unit::Angle(_) | Unit::Pressure(_)), ..] => {
            Err(fail(Code::WrongKind, "a length, such as 90 mm"))
        }
        _ => Err(fail(Code::Unreadable, "a number with its unit, such as 55 mm, 9 1/4 in or 1.85 m")),
    }
}

/// A length that its unit has not taken beyond what a number can hold.
fn held(length: Length, fail: impl Fn(Code, &str) -> Error) -> Result<Length, Error> {
    if length.value.is_finite() { Ok(length) } else { Err(fail(Code::OutOfRange, "a length of this world")) }
}

/// The unit an angle may be written in.
#[derive(Debug, Clone, Copy, PartialEq)]
enum AngleUnit {
    Degree,
    Radian,
    Turn,
    /// Degrees between the legs: 180 less the bend.
    Included,
    /// Hours on a clock face: 30 degrees each.
    Clock,
}

/// Reads a bend angle: `"90 deg"`, `"90°"`, `"1.5708 rad"`, `"0.25 turn"`, `"150 deg included"` (a bend of 30 degrees).
///
/// # Errors
/// As [`read_length`]; a clock position is `WRONG_KIND`, because it names a direction and not a bend.
///
/// ```
/// use linewright::units::{read_angle, to_deg};
/// assert_eq!(to_deg(read_angle("150 deg included")?), 30.0);
/// # Ok::<(), linewright::Error>(())
/// ```
pub fn read_angle(text: &str) -> Result<Angle, Error> {
    read_angle_in(text, Notation::default())
}

/// [`read_angle`] of a text from a file whose way of writing numbers is known.
///
/// # Errors
/// As [`read_angle`].
pub fn read_angle_in(text: &str, notation: Notation) -> Result<Angle, Error> {
    match angle(text, notation)? {
        (value, AngleUnit::Included) if (0.0..=180.0).contains(&value) => Ok(deg(180.0 - value)),
        (_, AngleUnit::Included) => {
            Err(angle_error(Code::OutOfRange, text, "an included angle of 0 to 180 deg"))
        }
        (_, AngleUnit::Clock) => {
            Err(angle_error(Code::WrongKind, text, "an angle in degrees; a clock is for rotations"))
        }
        (value, unit) => plain_angle(text, value, unit),
    }
}

/// Reads a rotation of a bend plane: an angle with its sign, or `"3 o'clock"` for a quarter turn clockwise; past 6
/// o'clock the other way round.
///
/// # Errors
/// As [`read_length`]; an included angle is `WRONG_KIND`, because a plane has none.
///
/// ```
/// use linewright::units::{read_rotation, to_deg};
/// assert_eq!(to_deg(read_rotation("9 o'clock")?), -90.0);
/// # Ok::<(), linewright::Error>(())
/// ```
pub fn read_rotation(text: &str) -> Result<Angle, Error> {
    read_rotation_in(text, Notation::default())
}

/// [`read_rotation`] of a text from a file whose way of writing numbers is known.
///
/// # Errors
/// As [`read_rotation`].
pub fn read_rotation_in(text: &str, notation: Notation) -> Result<Angle, Error> {
    match angle(text, notation)? {
        (value, AngleUnit::Clock) if (0.0..=12.0).contains(&value) => {
            Ok(deg(if value > 6.0 { value * 30.0 - 360.0 } else { value * 30.0 }))
        }
        (_, AngleUnit::Clock) => Err(angle_error(Code::OutOfRange, text, "an hour of 0 to 12")),
        (_, AngleUnit::Included) => {
            Err(angle_error(Code::WrongKind, text, "a rotation, such as 90 deg or 3 o'clock"))
        }
        (value, unit) => plain_angle(text, value, unit),
    }
}

fn plain_angle(text: &str, value: f64, unit: AngleUnit) -> Result<Angle, Error> {
    let angle = match unit {
        AngleUnit::Radian => rad(value),
        AngleUnit::Turn => deg(value * 360.0),
        AngleUnit::Degree | AngleUnit::Included | AngleUnit::Clock => deg(value),
    };
    // A unit may take it beyond what a number can hold.
    if angle.value.is_finite() {
        Ok(angle)
    } else {
        Err(angle_error(Code::OutOfRange, text, "an angle of this world"))
    }
}

fn angle_error(code: Code, text: &str, need: &str) -> Error {
    Error::field(code, "angle", Value::text(text), Value::text(need))
}

/// The number and the unit of an angle.
fn angle(text: &str, notation: Notation) -> Result<(f64, AngleUnit), Error> {
    match scan(text, "angle", notation)?.as_slice() {
        [Token::Number(value), Token::Unit(Unit::Angle(unit))] => Ok((*value, *unit)),
        [Token::Number(_)] => {
            Err(angle_error(Code::UnitMissing, text, &format!("a unit: did you mean {} deg?", text.trim())))
        }
        [Token::Number(_), Token::Unit(Unit::Length(_) | Unit::Pressure(_)), ..] => {
            Err(angle_error(Code::WrongKind, text, "an angle, such as 90 deg"))
        }
        _ => Err(angle_error(Code::Unreadable, text, "a number with its unit, such as 90 deg or 1.5708 rad")),
    }
}
