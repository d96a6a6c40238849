//! What must be on the tube before an end is closed.

use crate::flare::Flare;
use crate::line::End;
use crate::problem::Side;

/// One thing to be loaded.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Loaded {
    /// The end it is loaded from, and which must still be open.
    pub side: Side,
    /// What.
    pub what: String,
    /// Which way round; empty where it does not matter.
    pub facing: String,
}

/// Everything of one end in the order in which it goes on: what was recorded, the nut, and before a 37 degree flare the
/// support sleeve.
pub(super) fn of_end(end: &End, side: Side) -> Vec<Loaded> {
    let loaded = |what: String, facing: String| Loaded { side, what, facing };
    let mut all: Vec<Loaded> =
        end.loaded.iter().map(|part| loaded(part.name.clone(), part.facing.clone())).collect();
    let thread = end.nut.thread().map_or("thread not known".to_owned(), |t| t.to_string());
    all.push(loaded(format!("nut {} ({thread})", side.name()), format!("threads to end {}", side.name())));
    if end.flare == Flare::Single37 {
        all.push(loaded("support sleeve".to_owned(), "cone to the flare".to_owned()));
    }
    all
}

/// The question of the gate before a flare.
pub(super) fn gate_text(end: &End, side: Side) -> String {
    let parts = of_end(end, side);
    let each: Vec<String> = parts
        .iter()
        .enumerate()
        .map(|(i, part)| {
            let number = if parts.len() > 1 { format!("{}. ", i + 1) } else { String::new() };
            let facing = if part.facing.is_empty() {
                String::new()
            } else {
                format!(", {}", part.facing.to_uppercase())
            };
            // A designation in brackets keeps its letters as they are.
            let (name, rest) = part
                .what
                .split_once(" (")
                .map_or((part.what.as_str(), ""), |(name, _)| (name, &part.what[name.len()..]));
            format!("{number}{}{rest}{facing}", name.to_uppercase())
        })
        .collect();
    let order = if parts.len() > 1 { " IN THIS ORDER" } else { "" };
    format!("ON THE TUBE{order}?  {}", each.join("  "))
}
