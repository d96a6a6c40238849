//! Sizes in inches as people write them: fractions, decimals, number sizes, and counts of threads.

use super::read::{Wrong, wrong};
use super::unified::{Series, number_size};
use crate::code::Code;

/// A 64th of an inch in millionths.
const IN_64TH: u32 = 15_625;

/// Largest diameter of a screw that is read, and largest nominal size of a pipe, in inches.
pub(super) const LARGEST_SCREW: u32 = 6;
const LARGEST_PIPE: u32 = 12;

/// A number of inches in parts: `3/8`, `1 1/4`, `1`. None where it is not one, or not in such parts.
pub(super) fn parts_of_inch(text: &str, base: u32) -> Option<u32> {
    parts_up_to(text, base, LARGEST_SCREW)
}

/// The nominal size of a pipe in 16ths of an inch.
pub(super) fn pipe_parts(text: &str) -> Option<u32> {
    // `2.5` and `.125`.
    let parts = |number: f64| {
        let parts = 16.0 * number;
        let whole = (1..=16 * LARGEST_PIPE).find(|whole| (f64::from(*whole) - parts).abs() < 1e-9);
        whole.filter(|_| text.contains('.'))
    };
    parts_up_to(text, 16, LARGEST_PIPE).or_else(|| text.trim().parse().ok().and_then(parts))
}

fn parts_up_to(text: &str, base: u32, largest: u32) -> Option<u32> {
    let text = text.trim();
    let (whole, part) = match text.rsplit_once([' ', '-']) {
        Some((whole, part)) if part.contains('/') => (whole.trim(), part),
        _ if text.contains('/') => ("0", text),
        _ => (text, "0/1"),
    };
    let whole: u32 = whole.parse().ok().filter(|w| *w <= largest)?;
    let (top, bottom) = part.split_once('/')?;
    let (top, bottom): (u32, u32) = (top.trim().parse().ok()?, bottom.trim().parse().ok()?);
    let fits = bottom > 0 && bottom <= base && base.is_multiple_of(bottom) && (top < bottom);
    (fits && whole + top > 0).then(|| whole * base + top * (base / bottom))
}

/// Twice a number of threads per inch from 4 to 80, which may end in a half: `4.5` and `4 1/2` are 9.
pub(super) fn halves(count: &str) -> Option<u32> {
    // After other numbers 1/2 is the length of a screw.
    match count {
        "4 1/2" => return Some(9),
        "11 1/2" => return Some(23),
        _ => {}
    }
    let (whole, half) = match count.split_once('.') {
        Some((whole, "5" | "50")) => (whole, 1),
        Some((whole, "0" | "00")) => (whole, 0),
        Some(_) => return None,
        None => (count, 0),
    };
    let halves = 2 * whole.parse::<u32>().ok().filter(|whole| *whole <= 80)? + half;
    (8..=160).contains(&halves).then_some(halves)
}

/// Fewest threads over its own diameter that a number size has: 10-24 has 4.6, and specials a little less (ours).
const FINE_ENOUGH: f64 = 4.0;

/// Whether a whole number before a count is read as a number size.
pub(super) fn is_number_size(whole: u32, per_two_inch: u32) -> bool {
    let Some(size) = number_size(whole) else { return false };
    !matches!(Series::of(size, per_two_inch), Series::Un | Series::Uns)
        || f64::from(size) / 1e6 * f64::from(per_two_inch) / 2.0 >= FINE_ENOUGH
}

/// A whole number before a count or a series: 10-32 is a number size and 1-12 UN an inch, whichever the count can belong
/// to. 5-16 may be 5 inches, or 5/16 with its slash lost.
pub(super) fn whole_size(
    whole: u32,
    per_two_inch: Option<u32>,
    series: Option<Series>,
    is_inch: bool,
) -> Result<Option<u32>, Wrong> {
    let (number, inches) =
        (number_size(whole), (1..=LARGEST_SCREW).contains(&whole).then(|| whole * 1_000_000));
    let has = |size: u32| match (per_two_inch, series) {
        (Some(count), _) => !matches!(Series::of(size, count), Series::Un | Series::Uns),
        (None, Some(series)) => series.per_two_inch(size).is_some(),
        (None, None) => false,
    };
    let is_named = series.is_some() || is_inch;
    let lost =
        |count: u32| !whole.is_multiple_of(2) && [16, 32, 64, 128].contains(&count) && 2 * whole < count;
    let is_number = !is_inch
        && match per_two_inch {
            // Of no series, and as like 5/32 without its slash.
            Some(count) if !is_named && lost(count) => number.is_some_and(has),
            Some(count) => is_number_size(whole, count),
            None => number.is_some_and(has),
        };
    let is_inches = inches.is_some_and(has)
        || inches.is_some() && (is_named || per_two_inch.is_some_and(|c| !lost(c)) && whole < 5);
    match (is_number, is_inches, per_two_inch) {
        // What is fine enough for a number is far too fine for an inch; without a count both may be meant.
        (true, _, Some(_)) | (true, false, None) => Ok(number),
        (false, true, _) => Ok(inches),
        (true, true, None) => {
            wrong(Code::ThreadAmbiguous, format!("the threads per inch too: No. {whole}, or {whole} inches"))
        }
        (false, false, Some(count)) if inches.is_some() => {
            let fraction = if lost(count) {
                format!("{whole}/{} with its threads per inch, ", f64::from(count) / 2.0)
            } else {
                String::new()
            };
            let count = f64::from(count) / 2.0;
            wrong(
                Code::ThreadAmbiguous,
                format!(
                    "{fraction}{whole}\" with {count} threads and their series, or a number size with as many threads as \
                     it has"
                ),
            )
        }
        (false, false, Some(_)) if number.is_some() => wrong(
            Code::ThreadAmbiguous,
            format!("No. {whole} with as many threads as it has, or a diameter with its inch sign"),
        ),
        (false, false, _) => Ok(None),
    }
}

/// A diameter in millionths of an inch: a fraction, decimals with a leading point, or a number size with its sign.
pub(super) fn unified_size(text: &str) -> Option<u32> {
    let low = text.to_ascii_lowercase();
    if let Some(number) =
        low.strip_prefix("no.").or_else(|| low.strip_prefix("no")).or_else(|| low.strip_prefix('#'))
    {
        return number_size(number.trim().parse().ok()?);
    }
    if let Some((whole, decimals)) = low.split_once('.') {
        return decimal_size(whole, decimals);
    }
    parts_of_inch(text, 64).map(|parts| parts * IN_64TH)
}

/// `1.250` in two parts. What is a number size or a number of 64ths exactly, or to three or more decimals, is that; other
/// diameters are taken as they stand, from three decimals on.
fn decimal_size(whole: &str, decimals: &str) -> Option<u32> {
    let is_digits = |text: &str| text.chars().all(|c| c.is_ascii_digit());
    if !(1..=6).contains(&decimals.len()) || !is_digits(whole) || !is_digits(decimals) {
        return None;
    }
    let whole: u32 =
        if whole.is_empty() { 0 } else { whole.parse().ok().filter(|whole| *whole <= LARGEST_SCREW)? };
    let unit = 10_u32.pow(6 - u32::try_from(decimals.len()).ok()?);
    let exact = whole * 1_000_000 + decimals.parse::<u32>().ok()? * unit;
    let is_fine = decimals.len() >= 3;
    let near = |size: u32| if is_fine { exact.abs_diff(size) * 2 <= unit } else { exact == size };
    let named = (0..=12).filter_map(number_size).chain((1..=6 * 64).map(|parts| parts * IN_64TH));
    named.min_by_key(|size| exact.abs_diff(*size)).filter(|size| near(*size)).or(is_fine.then_some(exact))
}
