//! Cuts a text into numbers and units, after taking the typographer's and the spreadsheet's marks out of it.

use super::number::read_number;
use super::pressure::PressureUnit;
use super::{AngleUnit, LengthUnit, Notation};
use crate::code::Code;
use crate::error::Error;
use crate::problem::Value;

#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Unit {
    Length(LengthUnit),
    Angle(AngleUnit),
    Pressure(PressureUnit),
}

#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Token {
    Number(f64),
    Unit(Unit),
}

/// The unit of a word. `mil` is not among them: to one half of the trade it is a thou, to the other a millimeter.
fn unit(word: &str) -> Option<Unit> {
    use AngleUnit::{Clock, Degree, Included, Radian, Turn};
    use LengthUnit::{Centimeter, Foot, Inch, Meter, Millimeter, Thou};
    use PressureUnit::{Bar, Gigapascal, Kilopascal, Ksi, Megapascal, Pascal, Psi};
    Some(match word {
        "mm" | "millimeter" | "millimeters" | "millimetre" | "millimetres" => Unit::Length(Millimeter),
        "cm" | "centimeter" | "centimeters" | "centimetre" | "centimetres" => Unit::Length(Centimeter),
        "m" | "meter" | "meters" | "metre" | "metres" => Unit::Length(Meter),
        "in" | "in." | "inch" | "inches" | "\"" => Unit::Length(Inch),
        "ft" | "ft." | "foot" | "feet" | "'" => Unit::Length(Foot),
        "thou" => Unit::Length(Thou),
        "deg" | "deg." | "degree" | "degrees" | "°" | "deg bend" | "degrees bend" | "° bend" => {
            Unit::Angle(Degree)
        }
        "deg included" | "degrees included" | "° included" => Unit::Angle(Included),
        "rad" | "radian" | "radians" => Unit::Angle(Radian),
        "turn" | "turns" => Unit::Angle(Turn),
        "o'clock" => Unit::Angle(Clock),
        "pa" | "pascal" => Unit::Pressure(Pascal),
        "kpa" => Unit::Pressure(Kilopascal),
        "mpa" | "n/mm2" | "n/mm²" | "n/mm^2" | "megapascal" => Unit::Pressure(Megapascal),
        "gpa" | "kn/mm2" | "kn/mm²" | "kn/mm^2" => Unit::Pressure(Gigapascal),
        "bar" => Unit::Pressure(Bar),
        "psi" | "lbf/in2" | "lbf/in²" | "lbf/in^2" => Unit::Pressure(Psi),
        "ksi" => Unit::Pressure(Ksi),
        _ => return None,
    })
}

/// One spelling for the many: unicode slashes, primes, quotes, spaces, minus signs and vulgar fractions.
fn plain(text: &str) -> String {
    let mut out = String::with_capacity(text.len() + 8);
    for c in text.chars() {
        match c {
            '\u{2044}' | '\u{2215}' => out.push('/'),
            '″' | '”' | '“' | '„' => out.push('"'),
            '′' | '’' | '‘' => out.push('\''),
            '−' | '–' => out.push('-'),
            'º' => out.push('°'),
            '¼' => out.push_str(" 1/4"),
            '½' => out.push_str(" 1/2"),
            '¾' => out.push_str(" 3/4"),
            '⅛' => out.push_str(" 1/8"),
            '⅜' => out.push_str(" 3/8"),
            '⅝' => out.push_str(" 5/8"),
            '⅞' => out.push_str(" 7/8"),
            c if c.is_whitespace() => out.push(' '),
            c => out.extend(c.to_lowercase()),
        }
    }
    let out = out.replace("''", "\"");
    // A spreadsheet keeps a cell as text behind a leading apostrophe.
    out.trim().trim_start_matches('\'').trim().to_owned()
}

/// Full names; spreadsheets also cut them to three letters.
const MONTHS: [&str; 12] = [
    "january",
    "february",
    "march",
    "april",
    "may",
    "june",
    "july",
    "august",
    "september",
    "october",
    "november",
    "december",
];

/// `16-mar`, `mar-16`, `2025-03-16`, `3/16/2025`: what a spreadsheet makes of 3/16.
fn is_date(text: &str) -> bool {
    // A time behind the date is the spreadsheet's midnight.
    let text = text.split_once(' ').filter(|(_, time)| time.contains(':')).map_or(text, |(date, _)| date);
    let parts: Vec<&str> = text.split(['-', '/', '.', ' ']).filter(|p| !p.is_empty()).collect();
    let number = |part: &str| part.parse::<u32>().ok();
    let month = |part: &str| part == "sept" || MONTHS.iter().any(|m| *m == part || m[..3] == *part);
    // A day, or a year with two or four digits.
    let day_or_year = |part: &str| number(part).is_some_and(|n| n <= 99 || (1900..2200).contains(&n));
    match parts.as_slice() {
        [a, b] | [a, b, _] if (month(a) && day_or_year(b)) || (month(b) && day_or_year(a)) => true,
        [year, b, c] if text.contains(['-', '/']) => {
            let year_first = year.len() == 4 && number(year).is_some();
            let year_last = c.len() == 4 && number(c).is_some_and(|y| (1900..2200).contains(&y));
            (year_first || year_last) && number(b).is_some() && number(c).is_some() && number(year).is_some()
        }
        _ => false,
    }
}

/// Numbers and units of a text, in order.
pub(super) fn scan(text: &str, field: &str, notation: Notation) -> Result<Vec<Token>, Error> {
    let fail = |code, need: &str| Error::field(code, field, Value::text(text), Value::text(need));
    let plain = plain(text);
    if matches!(
        plain.as_str(),
        "" | "nan" | "inf" | "-inf" | "+inf" | "infinity" | "-infinity" | "none" | "null"
    ) {
        return Err(fail(Code::NotANumber, "a number with its unit"));
    }
    if is_date(&plain) {
        return Err(fail(Code::DateInSize, "the size as text with its unit, such as 3/16 in"));
    }
    let mut tokens = Vec::new();
    let mut rest = plain.as_str();
    while !rest.is_empty() {
        if rest.starts_with(|c: char| c.is_ascii_digit() || matches!(c, '-' | '+' | '.' | ',')) {
            let number = read_number(rest, notation).map_err(|code| match code {
                Code::NumberAmbiguous => {
                    fail(code, "the number without a thousands sign, such as 1500 mm or 1.5 mm")
                }
                code => fail(code, "a number such as 12.5, 9 1/4 or 3/16"),
            })?;
            tokens.push(Token::Number(number.value));
            rest = rest[number.length..].trim_start();
            continue;
        }
        let Some((unit, length)) = longest_unit(rest) else {
            return Err(fail(Code::Unreadable, "a number with its unit and nothing else"));
        };
        tokens.push(Token::Unit(unit));
        rest = rest[length..].trim_start();
    }
    Ok(tokens)
}

/// The longest unit a text starts with that ends at a word's end, and its length in bytes.
fn longest_unit(text: &str) -> Option<(Unit, usize)> {
    let ends = text.char_indices().map(|(i, c)| i + c.len_utf8()).take(20).filter(|&end| {
        let next = text[end..].chars().next();
        let last = text[..end].chars().next_back();
        !(next.is_some_and(char::is_alphabetic) && last.is_some_and(char::is_alphabetic))
    });
    // Several spaces between the words of a unit count as one.
    ends.filter_map(|end| {
        let words = text[..end].split_whitespace().collect::<Vec<_>>().join(" ");
        unit(&words).map(|unit| (unit, end))
    })
    .last()
}
