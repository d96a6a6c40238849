use super::scan::{Token, Unit, scan};
use super::{Notation, guess};
use crate::code::Code;
use crate::error::Error;
use crate::problem::Value;
use crate::units::{Pressure, bar, mpa, psi};

/// The unit a pressure or stress may be written in.
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
    /// Multiplies or divides by a whole number, so that short decimals stay exact.
    fn pressure(self, value: f64) -> Pressure {
        match self {
            PressureUnit::Pascal => mpa(value / 1_000_000.0),
            PressureUnit::Kilopascal => mpa(value / 1000.0),
            PressureUnit::Megapascal => mpa(value),
            PressureUnit::Gigapascal => mpa(value * 1000.0),
            PressureUnit::Bar => bar(value),
            PressureUnit::Psi => psi(value),
            PressureUnit::Ksi => psi(value * 1000.0),
        }
    }
}

/// Reads a pressure or stress: `"290 MPa"`, `"150 bar"`, `"12,500.0 psi"`, `"25 ksi"`, `"207 GPa"`, `"5 kPa"`,
/// `"200 N/mm2"`.
///
/// The case of the letters does not matter, but for `mPa`: taken at its word it is a millipascal, and whoever wrote it
/// meant a megapascal, so it is refused. Whether a pressure counts from the air's or from none is not read.
///
/// # Errors
/// As [`super::read_length`]; `WRONG_KIND` for a length or an angle, `OUT_OF_RANGE` beyond what a number can hold. The
/// range is not checked here.
///
/// ```
/// use linewright::units::{read_pressure, to_mpa};
/// assert_eq!(to_mpa(read_pressure("150 bar")?), 15.0);
/// assert_eq!(to_mpa(read_pressure("200 N/mm2")?), 200.0);
/// assert_eq!(read_pressure("290").unwrap_err().code().name(), "UNIT_MISSING");
/// assert_eq!(read_pressure("290 mPa").unwrap_err().code().name(), "UNREADABLE");
/// # Ok::<(), linewright::Error>(())
/// ```
pub fn read_pressure(text: &str) -> Result<Pressure, Error> {
    let tokens = scan(text, "pressure", Notation::default())?;
    let fail = |code, need: &str| Error::field(code, "pressure", Value::text(text), Value::text(need));
    match tokens.as_slice() {
        [Token::Number(_)] => Err(guess::pressure_unit_missing(text)),
        [Token::Number(_), Token::Unit(Unit::Pressure(PressureUnit::Megapascal))] if is_milli(text) => {
            Err(fail(Code::Unreadable, "MPa with a capital M; mPa is a thousandth of a pascal"))
        }
        [Token::Number(value), Token::Unit(Unit::Pressure(unit))] => {
            let pressure = unit.pressure(*value);
            if pressure.value.is_finite() {
                Ok(pressure)
            } else {
                Err(fail(Code::OutOfRange, "a pressure of this world"))
            }
        }
        [Token::Number(_), Token::Unit(Unit::Length(_) | Unit::Angle(_)), ..] => {
            Err(fail(Code::WrongKind, "a pressure, such as 15 MPa"))
        }
        _ => Err(fail(Code::Unreadable, "a number with its unit, such as 15 MPa, 150 bar or 2200 psi")),
    }
}

/// Whether the prefix of pascals is written small with the rest as the standard has it.
fn is_milli(text: &str) -> bool {
    text.trim_end().ends_with("mPa")
}
