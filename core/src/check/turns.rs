//! The turn of each bend plane in the forms that a bench can use.

use super::Worked;
use crate::turn;
use crate::units::{Angle, to_deg};

/// Less than this is level, and square to the last plane, to a hand.
const FLAT_DEG: f64 = 1.0;

/// How to set and check one turn.
#[derive(Debug, Clone, PartialEq)]
pub struct TurnCheck {
    /// The bend whose plane is turned.
    pub bend: usize,
    /// The turn, clockwise seen along the direction of work.
    pub rotation: Angle,
    /// Words for whole quarters.
    pub words: Option<&'static str>,
    /// The place of the new plane on a clock with the last bend at 12.
    pub clock: String,
    /// The two legs that are held level, which lay the last bend flat; it must go to the left, seen from above and along
    /// the direction of work.
    pub level_legs: [usize; 2],
    /// The leg that is then read.
    pub read_leg: usize,
    /// What an inclinometer on it reads, positive upward.
    pub reading: Angle,
}

impl TurnCheck {
    /// The check as a sentence: `"legs 1 and 2 level, the bend between them to the left: leg 3 reads 37.0 deg up, to the
    /// left"`.
    #[must_use]
    pub fn text(&self) -> String {
        let degrees = to_deg(self.reading);
        let reads = if degrees.abs() < FLAT_DEG {
            "lies level".to_owned()
        } else {
            format!("reads {:.1} deg {}", degrees.abs(), if degrees > 0.0 { "up" } else { "down" })
        };
        // The same height is reached to either side; the side tells a turn from its supplement.
        let turned = to_deg(self.rotation).abs();
        let side = if turned < 90.0 - FLAT_DEG {
            ", to the left"
        } else if turned > 90.0 + FLAT_DEG {
            ", to the right"
        } else {
            ""
        };
        let [a, b] = self.level_legs;
        format!(
            "legs {a} and {b} level, the bend between them to the left: leg {} {reads}{side}",
            self.read_leg
        )
    }
}

pub(super) fn checks(worked: &Worked) -> Vec<TurnCheck> {
    let bends = worked.path.bends();
    (1..bends.len())
        .map(|i| TurnCheck {
            bend: worked.bend_number(i),
            rotation: bends[i].rotation(),
            words: turn::words(bends[i].rotation()),
            clock: turn::clock(bends[i].rotation()),
            level_legs: [worked.leg_number(i - 1), worked.leg_number(i)],
            read_leg: worked.leg_number(i + 1),
            reading: turn::inclinometer(bends[i].angle(), bends[i].rotation(), true),
        })
        .collect()
}
