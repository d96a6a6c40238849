//! Distances, between points that a tape can touch, that change when a turn is wrong.

use super::Worked;
use crate::path::{Path, Point};
use crate::problem::Side;
use crate::units::{Angle, Length, deg, mm, to_mm};
use std::fmt;

/// The error of a turn that a check must show.
const WRONG_BY_DEG: f64 = 10.0;

/// A point that a tape can touch on a bent line.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Spot {
    /// The middle of the tube's end.
    End(Side),
    /// The pen mark where a bend starts, seen in the direction of work.
    Mark(usize),
}

impl fmt::Display for Spot {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Spot::End(side) => write!(f, "end {}", side.name()),
            Spot::Mark(bend) => write!(f, "mark {bend}"),
        }
    }
}

/// The distance that shows best whether the plane of a bend was turned rightly.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TapeCheck {
    /// The bend.
    pub bend: usize,
    /// From here.
    pub from: Spot,
    /// To here.
    pub to: Spot,
    /// The distance between them, straight across, on the center line.
    pub distance: Length,
    /// How much it changes, at the least, when the turn is 10 degrees off to either side. Where this is less than the
    /// tape is good for, no distance shows the error, and the turn must be checked by its angle.
    pub change: Length,
}

pub(super) fn checks(worked: &Worked) -> Vec<TapeCheck> {
    let right = spots(worked, &worked.path);
    (1..worked.path.bends().len()).filter_map(|bend| best(worked, &right, bend)).collect()
}

fn best(worked: &Worked, right: &[(Spot, Point)], bend: usize) -> Option<TapeCheck> {
    let wrong = [WRONG_BY_DEG, -WRONG_BY_DEG].map(|by| spots(worked, &worked.path.with_turn(bend, deg(by))));
    let mut found: Option<TapeCheck> = None;
    for (i, (from, a)) in right.iter().enumerate() {
        for (j, (to, b)) in right.iter().enumerate().skip(i + 1) {
            let distance = between(a, b);
            let change = wrong
                .iter()
                .map(|w| (between(&w[i].1, &w[j].1) - distance).abs())
                .fold(f64::INFINITY, f64::min);
            if found.is_none_or(|best| change > to_mm(best.change)) {
                let bend = worked.bend_number(bend);
                found = Some(TapeCheck {
                    bend,
                    from: *from,
                    to: *to,
                    distance: mm(distance),
                    change: mm(change),
                });
            }
        }
    }
    found
}

/// Ends and pen marks with their places.
fn spots(worked: &Worked, path: &Path) -> Vec<(Spot, Point)> {
    let first = worked.first;
    let mut spots = vec![(Spot::End(first), [mm(0.0); 3])];
    for (i, point) in path.bend_starts().into_iter().enumerate() {
        spots.push((Spot::Mark(worked.bend_number(i)), point));
    }
    spots.push((Spot::End(first.other()), path.end_point()));
    spots
}

fn between(a: &Point, b: &Point) -> f64 {
    let [x, y, z] = [0, 1, 2].map(|axis| to_mm(a[axis]) - to_mm(b[axis]));
    (x * x + y * y + z * z).sqrt()
}

impl Path {
    /// The same path with the plane of one bend, counted from 0, turned further.
    fn with_turn(&self, bend: usize, by: Angle) -> Path {
        self.map_bend(bend, |b| b.turned(b.rotation() + by))
    }
}
