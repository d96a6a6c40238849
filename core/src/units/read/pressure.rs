//! Reads what people write for a pressure or a stress.

use super::Notation;
use super::scan::{Token, Unit, scan};
use crate::code::Code;
use crate::error::Error;
use crate::problem::{Part, Problem, Value};
use crate::units::{Pressure, mpa, psi};

/// The unit a pressure may be written in.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum PressureUnit {
    Pascal,
    Kilopascal,
    Megapascal,
    Gigapascal,
    Bar,
    Psi,
    Ksi,
}

impl PressureUnit {
    /// Multiplies before it divides, so that short decimals stay exact.
    fn pressure(self, value: f64) -> Pressure {
        match self {
            PressureUnit::Pascal => mpa(value / 1e6),
            PressureUnit::Kilopascal => mpa(value / 1e3),
            PressureUnit::Megapascal => mpa(value),
            PressureUnit::Gigapascal => mpa(value * 1e3),
            PressureUnit::Bar => mpa(value / 10.0),
            PressureUnit::Psi => psi(value),
            PressureUnit::Ksi => psi(value * 1e3),
        }
    }
}

/// Reads a pressure or a stress: `"205 GPa"`, `"240 N/mm2"`, `"130 bar"`, `"1900 psi"`, `"30 ksi"`.
///
/// Case does not count, because hardly anybody keeps to it, but for `mPa`: taken at its word it is a millipascal, and
/// whoever wrote it hardly meant one, so that it is refused.
///
/// # Errors
/// As [`super::read_length`]; `WRONG_KIND` for a length or an angle. The range is not checked here.
///
/// ```
/// use linewright::units::{read_pressure, to_mpa};
/// assert_eq!(to_mpa(read_pressure("130 bar")?), 13.0);
/// assert!((to_mpa(read_pressure("30 ksi")?) - 206.843).abs() < 0.001);
/// # Ok::<(), linewright::Error>(())
/// ```
pub fn read_pressure(text: &str) -> Result<Pressure, Error> {
    read_pressure_in(text, Notation::default())
}

/// [`read_pressure`] of a text from a file whose way of writing numbers is known.
///
/// # Errors
/// As [`read_pressure`]; among decimal commas also `1.500 MPa` is `NUMBER_AMBIGUOUS`.
pub fn read_pressure_in(text: &str, notation: Notation) -> Result<Pressure, Error> {
    let fail = |code, need: &str| Error::field(code, "pressure", Value::text(text), Value::text(need));
    match scan(text, "pressure", notation)?.as_slice() {
        [Token::Number(_), Token::Unit(Unit::Pressure(PressureUnit::Megapascal))]
            if text.trim_end().ends_with("mPa") =>
        {
            Err(fail(Code::Unreadable, "MPa with a capital M; mPa is a thousandth of a pascal"))
        }
        [Token::Number(value), Token::Unit(Unit::Pressure(unit))] => {
            let pressure = unit.pressure(*value);
            // A unit may take it beyond what a number can hold.
            if pressure.value.is_finite() {
                Ok(pressure)
            } else {
                Err(fail(Code::OutOfRange, "a pressure of this world"))
            }
        }
        [Token::Number(_)] => {
            let text = text.trim();
            Err(Problem::new(Code::UnitMissing, Part::Field("pressure".to_owned()))
                .got(Value::text(text))
                .need(Value::text("a unit"))
                .why(format!("{text} has no unit"))
                .fix(format!("write {text} MPa, {text} bar or {text} psi, whichever it is"))
                .into())
        }
        [Token::Number(_), Token::Unit(Unit::Length(_) | Unit::Angle(_)), ..] => {
            Err(fail(Code::WrongKind, "a pressure, such as 240 MPa"))
        }
        _ => Err(fail(Code::Unreadable, "a number with its unit, such as 240 MPa, 130 bar or 1900 psi")),
    }
}
