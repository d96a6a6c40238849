//! Numbers as people write them: decimals with point or comma, fractions, mixed fractions.

use super::Notation;
use crate::code::Code;

/// A number at the start of a text, and how many bytes of it were read.
#[derive(Debug, Clone, Copy)]
pub(super) struct Number {
    pub(super) value: f64,
    pub(super) length: usize,
}

/// Length in bytes of the run of characters that pass.
fn run(text: &str, pass: impl Fn(char) -> bool) -> usize {
    text.find(|c| !pass(c)).unwrap_or(text.len())
}

fn is_digit(c: char) -> bool {
    c.is_ascii_digit()
}

/// Reads a number. A minus or plus sign may stand first; between inches and their fraction a hyphen or spaces may
/// stand.
pub(super) fn read_number(text: &str, notation: Notation) -> Result<Number, Code> {
    let sign_length = run(text, |c| matches!(c, '-' | '+' | ' '));
    let signs: Vec<char> = text[..sign_length].chars().filter(|c| *c != ' ').collect();
    let sign = match signs.as_slice() {
        [] | ['+'] => 1.0,
        ['-'] => -1.0,
        _ => return Err(Code::Unreadable),
    };
    let body = &text[sign_length..];
    let (value, length) = unsigned(body, notation)?;
    let value = sign * value;
    if value.is_finite() { Ok(Number { value, length: sign_length + length }) } else { Err(Code::NotANumber) }
}

fn unsigned(text: &str, notation: Notation) -> Result<(f64, usize), Code> {
    let whole = run(text, is_digit);
    if whole > 0 {
        if let Some((value, length)) = fraction(text)? {
            return Ok((value, length));
        }
        // 9 1/4, 3-1/4
        let gap = run(&text[whole..], |c| matches!(c, ' ' | '-'));
        let hyphens = text[whole..whole + gap].matches('-').count();
        if gap > 0
            && hyphens <= 1
            && let Some((part, length)) = fraction(&text[whole + gap..])?
        {
            let base: f64 = text[..whole].parse().map_err(|_| Code::Unreadable)?;
            return if part < 1.0 { Ok((base + part, whole + gap + length)) } else { Err(Code::Unreadable) };
        }
    }
    decimal(text, notation)
}

/// `3/16`, if the text starts with one.
fn fraction(text: &str) -> Result<Option<(f64, usize)>, Code> {
    let top = run(text, is_digit);
    let Some(below) = text[top..].trim_start().strip_prefix('/') else { return Ok(None) };
    let below = below.trim_start();
    let bottom = run(below, is_digit);
    if top == 0 || bottom == 0 {
        return Err(Code::Unreadable);
    }
    let after = &below[bottom..];
    if after.starts_with(['/', '.', ',']) {
        return Err(Code::Unreadable);
    }
    let a: f64 = text[..top].parse().map_err(|_| Code::Unreadable)?;
    let b: f64 = below[..bottom].parse().map_err(|_| Code::Unreadable)?;
    if b == 0.0 { Err(Code::NotANumber) } else { Ok(Some((a / b, text.len() - after.len()))) }
}

/// `12`, `12.5`, `2,84`, `1.500,0`, `1,500.0`, `1e3`.
fn decimal(text: &str, notation: Notation) -> Result<(f64, usize), Code> {
    let length = run(text, |c| c.is_ascii_digit() || matches!(c, '.' | ','));
    let digits = &text[..length];
    let points = digits.matches('.').count();
    let commas = digits.matches(',').count();
    let plain = match (points, commas) {
        (1, 0) if notation.decimal_comma && looks_grouped(digits, '.') => return Err(Code::NumberAmbiguous),
        (0 | 1, 0) => digits.to_owned(),
        (0, 1) if looks_grouped(digits, ',') => return Err(Code::NumberAmbiguous),
        (0, 1) => digits.replace(',', "."),
        // Both signs: the last one is the decimal sign, and what stands before it must be grouped in threes.
        _ => grouped(digits).ok_or(Code::NumberAmbiguous)?,
    };
    let exponent = exponent(&text[length..]);
    let value = format!("{plain}{}", &text[length..length + exponent]);
    if !plain.contains(is_digit) {
        return Err(Code::Unreadable);
    }
    value.parse().map(|v| (v, length + exponent)).map_err(|_| Code::Unreadable)
}

/// `1,500`: one to three digits, not a lone zero, and a group of three.
fn looks_grouped(digits: &str, sign: char) -> bool {
    digits.split_once(sign).is_some_and(|(before, after)| {
        after.len() == 3 && (1..=3).contains(&before.len()) && before.chars().any(|c| c != '0')
    })
}

fn grouped(digits: &str) -> Option<String> {
    let last = digits.rfind(['.', ','])?;
    let group = if digits[last..].starts_with('.') { ',' } else { '.' };
    let (whole, part) = (&digits[..last], &digits[last + 1..]);
    let groups: Vec<&str> = whole.split(group).collect();
    let threes = groups.iter().skip(1).all(|g| g.len() == 3 && g.chars().all(is_digit));
    let first = groups.first().is_some_and(|g| (1..=3).contains(&g.len()) && g.chars().all(is_digit));
    (groups.len() > 1 && threes && first).then(|| format!("{}.{part}", groups.concat()))
}

/// Bytes of an exponent such as `e-3`; 0 where the letter starts a word.
fn exponent(text: &str) -> usize {
    let Some(rest) = text.strip_prefix('e') else { return 0 };
    let sign = usize::from(rest.starts_with(['-', '+']));
    let digits = run(&rest[sign..], is_digit);
    if digits == 0 { 0 } else { 1 + sign + digits }
}
