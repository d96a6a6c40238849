//! Checks at the bench: which distance shows a wrong turn, what an inclinometer reads, and which hand a part is.

mod hand;
mod tape;
#[cfg(test)]
mod tests;
mod turns;

pub use hand::{HandCheck, compare};
pub use tape::{Spot, TapeCheck};
pub use turns::TurnCheck;

use crate::path::Path;
use crate::problem::Side;

/// A path as it is worked on: from its first end, with the bends still numbered from A.
struct Worked {
    path: Path,
    first: Side,
}

impl Worked {
    fn new(path: &Path, first: Side) -> Worked {
        let path = if first == Side::B { path.reversed() } else { path.clone() };
        Worked { path, first }
    }

    /// The number, from A, of the bend made as the `order`-th, counting from 0.
    fn bend_number(&self, order: usize) -> usize {
        if self.first == Side::A { order + 1 } else { self.path.bends().len() - order }
    }

    /// The number, from A, of the leg before the bend made as the `order`-th.
    fn leg_number(&self, order: usize) -> usize {
        if self.first == Side::A { order + 1 } else { self.path.straights().len() - order }
    }
}

/// All checks of a path worked from one end.
#[must_use]
pub fn tape_checks(path: &Path, first: Side) -> Vec<TapeCheck> {
    tape::checks(&Worked::new(path, first))
}

/// The turn of each bend but the first made, in every form a bench can use.
#[must_use]
pub fn turn_checks(path: &Path, first: Side) -> Vec<TurnCheck> {
    turns::checks(&Worked::new(path, first))
}

/// The check that tells a part from its mirror image; None where the line is flat and has no hand.
#[must_use]
pub fn hand_check(path: &Path, first: Side) -> Option<HandCheck> {
    hand::check(&Worked::new(path, first))
}
