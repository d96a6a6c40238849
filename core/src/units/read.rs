//! Reads what people write for lengths and angles. A bare number never gets a unit.

mod guess;
mod number;
mod scan;

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
    let tokens = scan(text, "length")?;
    let fail = |code, need: &str| Error::field(code, "length", Value::text(text), Value::text(need));
    match tokens.as_slice() {
        [Token::Number(_)] => Err(guess::unit_missing(text)),
        [Token::Number(value), Token::Unit(Unit::Length(unit))] => Ok(unit.length(*value)),
        [
            Token::Number(feet),
            Token::Unit(Unit::Length(LengthUnit::Foot)),
            Token::Number(inches),
            Token::Unit(Unit::Length(LengthUnit::Inch)),
        ] if *feet >= 0.0 && (0.0..12.0).contains(&inches.abs()) => Ok(inch(feet * 12.0 + inches.abs())),
        [Token::Number(_), Token::Unit(Unit::Angle(_)), ..] => {
            Err(fail(Code::WrongKind, "a length, such as 90 mm"))
        }
        _ => Err(fail(Code::Unreadable, "a number with its unit, such as 55 mm, 9 1/4 in or 1.85 m")),
    }
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

/// Reads an angle: `"90 deg"`, `"90°"`, `"1.5708 rad"`, `"0.25 turn"`, `"150 deg included"` (a bend of 30 degrees),
/// and for rotations `"3 o'clock"` (90 degrees; past 6 o'clock the other way round).
///
/// # Errors
/// As [`read_length`].
///
/// ```
/// use linewright::units::{read_angle, to_deg};
/// assert_eq!(to_deg(read_angle("150 deg included")?), 30.0);
/// # Ok::<(), linewright::Error>(())
/// ```
pub fn read_angle(text: &str) -> Result<Angle, Error> {
    let tokens = scan(text, "angle")?;
    let fail = |code, need: &str| Error::field(code, "angle", Value::text(text), Value::text(need));
    match tokens.as_slice() {
        [Token::Number(_)] => {
            Err(fail(Code::UnitMissing, &format!("a unit: did you mean {} deg?", text.trim())))
        }
        [Token::Number(value), Token::Unit(Unit::Angle(unit))] => match unit {
            AngleUnit::Degree => Ok(deg(*value)),
            AngleUnit::Radian => Ok(rad(*value)),
            AngleUnit::Turn => Ok(deg(value * 360.0)),
            AngleUnit::Included if (0.0..=180.0).contains(value) => Ok(deg(180.0 - value)),
            AngleUnit::Clock if (0.0..=12.0).contains(value) => {
                let angle = value * 30.0;
                Ok(deg(if angle > 180.0 { angle - 360.0 } else { angle }))
            }
            AngleUnit::Included => Err(fail(Code::OutOfRange, "an included angle of 0 to 180 deg")),
            AngleUnit::Clock => Err(fail(Code::OutOfRange, "an hour of 0 to 12")),
        },
        [Token::Number(_), Token::Unit(Unit::Length(_)), ..] => {
            Err(fail(Code::WrongKind, "an angle, such as 90 deg"))
        }
        _ => Err(fail(Code::Unreadable, "a number with its unit, such as 90 deg or 1.5708 rad")),
    }
}
