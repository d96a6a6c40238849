use super::{Length, Notation, read_length_in};
use crate::code::Code;
use crate::error::Error;
use crate::problem::Value;
use crate::units::to_mm;

/// The ways of writing plus or minus.
const MARKS: [&str; 3] = ["+-", "+/-", "±"];

/// Reads a length with its uncertainty: `"9.45 mm +- 0.05 mm"`. Both numbers need their unit.
///
/// # Errors
/// As [`super::read_length`]; `UNREADABLE` without a plus-minus sign, `OUT_OF_RANGE` for a negative uncertainty.
///
/// ```
/// use linewright::units::{read_tolerance, to_mm};
/// let (value, plus_minus) = read_tolerance("9.45 mm +- 0.05 mm")?;
/// assert_eq!((to_mm(value), to_mm(plus_minus)), (9.45, 0.05));
/// # Ok::<(), linewright::Error>(())
/// ```
pub fn read_tolerance(text: &str) -> Result<(Length, Length), Error> {
    let fail = |code, need: &str| Error::field(code, "length", Value::text(text), Value::text(need));
    let Some((value, plus_minus)) = MARKS.iter().find_map(|mark| text.split_once(mark)) else {
        return Err(fail(Code::Unreadable, "a length and its uncertainty, such as 9.45 mm +- 0.05 mm"));
    };
    let value = read_length_in(value, Notation::default())?;
    let plus_minus = read_length_in(plus_minus, Notation::default())?;
    if to_mm(plus_minus) < 0.0 {
        return Err(fail(Code::OutOfRange, "an uncertainty of zero or more"));
    }
    Ok((value, plus_minus))
}
