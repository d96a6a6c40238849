use std::iter::Peekable;
use std::str::Chars;

/// How the numbers of one file are written, as far as it changes what a text means.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub struct Notation {
    /// The file uses a decimal comma somewhere, so that a point before three digits may be a thousands sign.
    pub decimal_comma: bool,
    /// A bare fraction such as `3/16` in a field for tube sizes is read as inches, and entered as an assumption. Only
    /// ever set by a person who knows the file.
    pub bare_fraction_is_inch: bool,
}

impl Notation {
    /// With what a text of the file shows about the others.
    #[must_use]
    pub fn seen_in(self, text: &str) -> Notation {
        Notation { decimal_comma: self.decimal_comma || has_decimal_comma(text), ..self }
    }
}

fn digits(chars: &mut Peekable<Chars<'_>>) -> usize {
    let mut count = 0;
    while chars.next_if(char::is_ascii_digit).is_some() {
        count += 1;
    }
    count
}

/// A comma between digits that cannot be a thousands sign, because no group of three follows it or a zero stands alone
/// before it.
fn has_decimal_comma(text: &str) -> bool {
    let mut chars = text.chars().peekable();
    while let Some(c) = chars.next() {
        if !c.is_ascii_digit() {
            continue;
        }
        let before = 1 + digits(&mut chars);
        if chars.next_if_eq(&',').is_some() {
            let after = digits(&mut chars);
            let lone_zero = c == '0' && before == 1;
            if after > 0 && (after != 3 || before > 3 || lone_zero) && chars.peek() != Some(&',') {
                return true;
            }
        }
    }
    false
}
