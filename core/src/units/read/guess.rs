//! What a bare number may have meant. A guess is only ever put into a question, never into a result.

use super::super::{inch, length_text};
use crate::code::Code;
use crate::error::Error;
use crate::problem::{Part, Problem, Value};

/// Stainless grades that a size is easily confused with (numbers of the AISI series; from memory).
const GRADES: [&str; 5] = ["303", "304", "316", "321", "347"];

/// Reads digits such as `316` or `3.16` as a fraction of an inch whose slash was lost: an odd numerator below a
/// power of two.
fn lost_slash(text: &str) -> Option<(u32, u32)> {
    let digits: String = text.chars().filter(|c| !matches!(c, '.' | ',' | ' ')).collect();
    if !digits.chars().all(|c| c.is_ascii_digit()) || digits.len() > 4 {
        return None;
    }
    [64, 32, 16, 8, 4, 2].into_iter().find_map(|base: u32| {
        let part: u32 = digits.strip_suffix(&base.to_string())?.parse().ok()?;
        (part % 2 == 1 && part < base).then_some((part, base))
    })
}

/// The error for a length without a unit.
pub(super) fn unit_missing(text: &str) -> Error {
    let text = text.trim();
    let mut why = format!("{text} has no unit");
    if GRADES.contains(&text) {
        why.push_str(&format!("; {text} is also a stainless grade, and a grade goes into the material"));
    }
    let fix = match lost_slash(text) {
        Some((part, base)) => format!(
            "did you mean {part}/{base} in ({})? Write {part}/{base} in, or {text} mm",
            length_text(inch(f64::from(part) / f64::from(base)))
        ),
        None => format!("write {text} mm or {text} in, whichever was measured"),
    };
    Problem::new(Code::UnitMissing, Part::Field("length".to_owned()))
        .got(Value::text(text))
        .need(Value::text("a unit"))
        .why(why)
        .fix(fix)
        .into()
}
