//! Compares an answer with what a case expects, and the answers of two languages with each other.

use super::case::{Case, Expect, Expected, Item};
use super::flat::FlatAnswer;
use std::collections::BTreeSet;

/// Decimals such as 0.05 are no exact doubles; a difference of this share of the figure is not counted as one.
const ROUNDING: f64 = 4.0 * f64::EPSILON;

/// What a case found: nothing wrong, or why it failed. A case that is known to fail must fail.
pub fn judge(case: &Case, answer: &FlatAnswer) -> Result<(), String> {
    match (compare(case, answer), &case.known_failing) {
        (Ok(()), None) => Ok(()),
        (Ok(()), Some(reason)) => Err(format!("{}: known to fail ({reason}), but it passes", case.name())),
        (Err(why), None) => Err(format!("{}: {why}", case.name())),
        (Err(why), Some(reason)) => {
            println!("known to fail, {}: {why} ({reason})", case.name());
            Ok(())
        }
    }
}

fn compare(case: &Case, answer: &FlatAnswer) -> Result<(), String> {
    match (&case.expect, answer) {
        (Expect::Error(want), Err(got)) if want.name() == got => Ok(()),
        (Expect::Error(want), Err(got)) => Err(format!("expected error {}, got {got}", want.name())),
        (Expect::Error(want), Ok(values)) => Err(format!("expected error {}, got {values:?}", want.name())),
        (Expect::Values(_), Err(code)) => Err(format!("got error {code}")),
        (Expect::Values(expected), Ok(values)) => {
            let wrong: Vec<String> = expected.iter().filter_map(|e| compare_key(e, values).err()).collect();
            if wrong.is_empty() { Ok(()) } else { Err(wrong.join("\n    ")) }
        }
    }
}

fn compare_key(expected: &Expected, values: &[(String, String)]) -> Result<(), String> {
    let Some((key, text)) = values.iter().find(|(key, _)| *key == expected.key) else {
        return Err(format!("no {} in the answer", expected.key));
    };
    // A sentence may have semicolons of its own.
    if matches!(&expected.items[..], [Item::Word(word)] if word == text) {
        return Ok(());
    }
    let got = items(text);
    let agree = got.len() == expected.items.len()
        && got.iter().zip(&expected.items).all(|(got, want)| agrees(got, want, expected.tolerance));
    if agree {
        return Ok(());
    }
    Err(format!("{key}: expected {:?} within {:?}, got {text}", expected.items, expected.tolerance))
}

/// The items of a list; a single value is a list of one.
fn items(text: &str) -> Vec<&str> {
    if text.is_empty() { Vec::new() } else { text.split(';').collect() }
}

fn agrees(got: &str, want: &Item, tolerance: Option<f64>) -> bool {
    match want {
        Item::Word(word) => got == word,
        Item::Number(number) => got
            .parse::<f64>()
            .is_ok_and(|got| (got - number).abs() <= tolerance.unwrap_or(0.0) + ROUNDING * number.abs()),
    }
}

/// Whether another language answered with the same keys, words and bits.
pub fn same_bits(ours: &FlatAnswer, theirs: &FlatAnswer) -> Result<(), String> {
    let (ours, theirs) = match (ours, theirs) {
        (Ok(ours), Ok(theirs)) => (ours, theirs),
        (Err(ours), Err(theirs)) if ours == theirs => return Ok(()),
        _ => return Err(format!("Rust {ours:?}, other {theirs:?}")),
    };
    let (a, b) = (ours.iter().map(|(key, _)| key), theirs.iter().map(|(key, _)| key));
    if a.clone().collect::<BTreeSet<_>>() != b.clone().collect() || ours.len() != theirs.len() {
        return Err(format!("Rust answers {:?}, other {:?}", a.collect::<Vec<_>>(), b.collect::<Vec<_>>()));
    }
    for (key, text) in ours {
        if !theirs.iter().any(|(other, theirs)| other == key && same_items(text, theirs)) {
            return Err(format!("{key}: Rust {text}, other {theirs:?}"));
        }
    }
    Ok(())
}

fn same_items(ours: &str, theirs: &str) -> bool {
    let (ours, theirs) = (items(ours), items(theirs));
    let same = |a: &str, b: &str| {
        a == b || matches!((a.parse::<f64>(), b.parse::<f64>()), (Ok(a), Ok(b)) if a.to_bits() == b.to_bits())
    };
    ours.len() == theirs.len() && ours.iter().zip(&theirs).all(|(a, b)| same(a, b))
}
