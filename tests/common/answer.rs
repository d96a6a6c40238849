//! What an operation answers, in the text form that all languages share.

use linewright::Code;
use linewright::units::{Angle, Length};
use linewright::units::{to_deg, to_mm};

/// Keys with their values, in the order of the operation's keys; or the code of the error.
pub type Answer = Result<Vec<(&'static str, Value)>, Code>;

/// One value: its items as texts. A number is written so that reading it back gives the same bits.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Value(pub Vec<String>);

/// A figure that is not known; never written like a number.
pub const UNKNOWN: &str = "unknown";

impl Value {
    pub fn number(number: f64) -> Value {
        Value(vec![number_text(number)])
    }

    pub fn word(word: impl Into<String>) -> Value {
        Value(vec![word.into()])
    }

    pub fn mm(length: Length) -> Value {
        Value::number(to_mm(length))
    }

    pub fn deg(angle: Angle) -> Value {
        Value::number(to_deg(angle))
    }

    pub fn mm_list(lengths: impl IntoIterator<Item = Option<Length>>) -> Value {
        Value(lengths.into_iter().map(|length| or_unknown(length.map(to_mm))).collect())
    }

    pub fn deg_list(angles: impl IntoIterator<Item = Option<Angle>>) -> Value {
        Value(angles.into_iter().map(|angle| or_unknown(angle.map(to_deg))).collect())
    }

    pub fn words(words: impl IntoIterator<Item = String>) -> Value {
        Value(words.into_iter().collect())
    }

    /// All items on one line.
    pub fn text(&self) -> String {
        self.0.join(";")
    }
}

pub fn or_unknown(number: Option<f64>) -> String {
    number.map_or(UNKNOWN.to_owned(), number_text)
}

/// The shortest decimal that reads back as the same number.
fn number_text(number: f64) -> String {
    format!("{number:?}")
}
