//! The turn of each bend plane in the forms that a bench can use.

use super::Worked;
use crate::turn;
use crate::units::{Angle, to_deg};

/// Bends whose plane is turned less than this from flat have no up or down worth reading.
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
    /// The check as a sentence: `"hold legs 1 and 2 level, bend 1 to the left: leg 3 reads 37 deg up"`.
    #[must_use]
    pub fn text(&self) -> String {
        let degrees = to_deg(self.reading);
        let reads = if degrees.abs() < FLAT_DEG {
            "lies level".to_owned()
        } else {
            format!("reads {:.1} deg {}", degrees.abs(), if degrees > 0.0 { "up" } else { "down" })
        };
        let [a, b] = self.level_legs;
        format!(
            "hold legs {a} and {b} level, the bend between them to the left: leg {} {reads}",
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
