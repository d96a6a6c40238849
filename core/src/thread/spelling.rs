//! Spellings brought to one: signs, words for an inch, words for the hand.

use super::Hand;

/// Fractions that keyboards and documents have a sign for. A whole number may stand right before one.
const FRACTIONS: [(char, &str); 7] = [
    ('\u{bc}', " 1/4"),
    ('\u{bd}', " 1/2"),
    ('\u{be}', " 3/4"),
    ('\u{215b}', " 1/8"),
    ('\u{215c}', " 3/8"),
    ('\u{215d}', " 5/8"),
    ('\u{215e}', " 7/8"),
];

/// Words for the hand. A bare "left" may be a side of the vehicle.
const HANDS: [(&str, Hand); 6] = [
    ("left hand", Hand::Left),
    ("left-hand", Hand::Left),
    ("lh", Hand::Left),
    ("right hand", Hand::Right),
    ("right-hand", Hand::Right),
    ("rh", Hand::Right),
];

/// With the signs that every keyboard has.
pub(super) fn plain(text: &str) -> String {
    let spelled: String = text
        .replace("''", "\"")
        .chars()
        .map(|c| match FRACTIONS.iter().find(|(sign, _)| *sign == c) {
            Some((_, fraction)) => (*fraction).to_owned(),
            None => c.to_string(),
        })
        .collect();
    spelled
        .chars()
        .map(|c| match c {
            '×' | '*' => 'x',
            ',' => '.',
            '\u{2044}' | '\u{2215}' => '/',
            '–' | '−' | '—' | '\u{2010}' | '\u{2011}' | '\u{2012}' => '-',
            '”' | '″' => '"',
            '\u{a0}' | '\u{202f}' | '\u{2009}' => ' ',
            c => c,
        })
        .collect()
}

/// Takes `LH`, `left hand`, `RH` out, wherever they stand: the standards put them last, some put them before the class, the
/// series, or first.
pub(super) fn without_hand(text: &str) -> (String, Hand) {
    // Of the same length as the text, so that places in one are places in the other.
    let low = text.to_ascii_lowercase();
    for (mark, hand) in HANDS {
        for (at, _) in low.match_indices(mark) {
            let (before, after) = (&text[..at], &text[at + mark.len()..]);
            // A letter beside it would make it a piece of another word.
            let is_free = !before.ends_with(char::is_alphabetic) || ends_with_class(before);
            let is_word = is_free && !after.starts_with(char::is_alphanumeric);
            if is_word {
                let between = if after.trim_start().starts_with('-') { "-" } else { " " };
                let separators = [' ', '-'];
                let (before, after) =
                    (before.trim_end_matches(separators), after.trim_start_matches(separators));
                let is_inside = !before.is_empty() && !after.is_empty();
                return (format!("{before}{}{after}", if is_inside { between } else { "" }), hand);
            }
        }
    }
    (text.to_owned(), Hand::Right)
}

/// Whether a text ends with the class of a Unified thread, after which nothing needs to stand before the hand: `2ALH`.
fn ends_with_class(text: &str) -> bool {
    let class = text.trim_end_matches(['a', 'A', 'b', 'B']);
    class.len() + 1 == text.len() && class.ends_with(['1', '2', '3'])
}

/// Takes the inch sign after a size away where letters or a count follow it, and tells whether the size is a whole number
/// of inches. A size alone keeps its sign.
pub(super) fn without_inch(text: &str) -> (String, bool) {
    let signed = with_inch_sign(text);
    let is_whole = signed.split_once('"').is_some_and(|(size, _)| size.trim().parse::<u32>().is_ok());
    let bare = signed.replace('"', " ");
    let is_named = bare.contains('-') || bare.trim().ends_with(|c: char| c.is_ascii_alphabetic());
    (if is_named { bare.trim().to_owned() } else { signed }, is_whole)
}

/// `3/8 in - 24` or `3/8inch 24` with the sign for its inch, where a count or a series follows the word.
fn with_inch_sign(text: &str) -> String {
    let low = text.to_ascii_lowercase();
    for word in ["inch", "in.", "in"] {
        let Some(at) = low.find(word) else { continue };
        let (size, rest) = (text[..at].trim_end(), text[at + word.len()..].trim_start());
        let next = low[at + word.len()..].trim_start().chars().next();
        match next {
            _ if !size.ends_with(|c: char| c.is_ascii_digit()) => {}
            // `1 in 16` is a taper.
            Some('0'..='9') if rest.contains(char::is_alphabetic) => return format!("{size}\" -{rest}"),
            // `3/8-24 inch` has said its size.
            None if size.rsplit_once('-').is_some_and(|(_, count)| count.trim().parse::<u32>().is_ok()) => {
                return size.to_owned();
            }
            Some('-' | 'x' | 'u' | 'g' | 'r' | 'n' | 'b') => return format!("{size}\" {rest}"),
            _ => {}
        }
    }
    text.to_owned()
}
