//! Telling a part from its mirror image, and one description of a line from another.

use super::Worked;
use crate::code::Code;
use crate::path::Path;
use crate::problem::{Part, Problem, Value};
use crate::units::{Angle, Length, deg, to_deg, to_mm};

/// A leg that rises less than this out of the flat does not tell the hand.
const RISE_DEG: f64 = 5.0;

/// One look that tells the hand: whether a leg points up or down while an earlier bend lies flat.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HandCheck {
    /// The two legs held level, with the bend between them going to the left seen from above, along the direction of
    /// work.
    pub level_legs: [usize; 2],
    /// The leg looked at.
    pub look_leg: usize,
    /// Whether it points up.
    pub up: bool,
}

impl HandCheck {
    /// The check as a sentence.
    #[must_use]
    pub fn text(&self) -> String {
        let [a, b] = self.level_legs;
        let way = if self.up { "UP" } else { "DOWN" };
        format!(
            "legs {a} and {b} flat, the bend between them to the left: leg {} points {way}",
            self.look_leg
        )
    }

    /// What it means that the leg points up, or does not: nothing where that is right, `HAND_MISMATCH` where not.
    #[must_use]
    pub fn judge(&self, points_up: bool) -> Option<Problem> {
        let way = |up: bool| {
            Value::text(format!("leg {} points {}", self.look_leg, if up { "up" } else { "down" }))
        };
        (points_up != self.up)
            .then(|| Problem::new(Code::HandMismatch, Part::Line).got(way(points_up)).need(way(self.up)))
    }
}

pub(super) fn check(worked: &Worked) -> Option<HandCheck> {
    super::turns::checks(worked)
        .into_iter()
        .enumerate()
        // The first pair of bends that leaves the flat: up to there the hand is the same either way.
        .find(|(_, turn)| to_deg(turn.reading).abs() >= RISE_DEG)
        .map(|(_, turn)| HandCheck {
            level_legs: turn.level_legs,
            look_leg: turn.read_leg,
            up: to_deg(turn.reading) > 0.0,
        })
}

/// Compares a line as it was measured with what it shall be: every straight, bend and turn beyond the tolerances is
/// named; a part that is the mirror image is named as that and nothing else.
///
/// ```
/// use linewright::{Bend, Path, check, units::{deg, mm}};
/// let bends = Bend::list(&[deg(60.0), deg(90.0)], &[deg(90.0)], &[mm(14.3)])?;
/// let path = Path::from_straights(&[mm(80.0), mm(90.0), mm(70.0)], &bends)?;
/// let found = check::compare(&path, &path.mirrored(), mm(2.0), deg(2.0));
/// assert_eq!(found[0].code, linewright::Code::HandMismatch);
/// # Ok::<(), linewright::Error>(())
/// ```
#[must_use]
pub fn compare(wanted: &Path, measured: &Path, length: Length, angle: Angle) -> Vec<Problem> {
    let (want, got) = (wanted.bends().len(), measured.bends().len());
    if want != got {
        let counts =
            Problem::new(Code::PathsDiffer, Part::Line).got(Value::Count(got)).need(Value::Count(want));
        return vec![counts.why("the two lines have different numbers of bends")];
    }
    let found = differences(wanted, measured, length, angle);
    let mirrored = wanted.mirrored();
    if !found.is_empty() && differences(&mirrored, measured, length, angle).is_empty() {
        let turned: Vec<String> = (0..got)
            .filter(|i| {
                to_deg(wanted.bends()[*i].rotation() - mirrored.bends()[*i].rotation()).abs() > to_deg(angle)
            })
            .map(|i| (i + 1).to_string())
            .collect();
        return vec![
            Problem::new(Code::HandMismatch, Part::Line).got(Value::text(format!(
                "the rotations of bends {} have the other sign",
                turned.join(", ")
            ))),
        ];
    }
    found
}

fn differences(wanted: &Path, measured: &Path, length: Length, angle: Angle) -> Vec<Problem> {
    let differ = |part: Part, got: Value, need: Value, what: &str| {
        Problem::new(Code::PathsDiffer, part).got(got).need(need).why(format!("{what} is not as it shall be"))
    };
    let mut found = Vec::new();
    for (i, (want, got)) in wanted.straights().iter().zip(measured.straights()).enumerate() {
        if (to_mm(*want) - to_mm(*got)).abs() > to_mm(length) {
            found.push(differ(
                Part::Straight(i + 1),
                Value::Length(*got),
                Value::Length(*want),
                "the straight",
            ));
        }
    }
    for (i, (want, got)) in wanted.bends().iter().zip(measured.bends()).enumerate() {
        if to_deg(want.angle() - got.angle()).abs() > to_deg(angle) {
            found.push(differ(
                Part::Bend(i + 1),
                Value::Angle(got.angle()),
                Value::Angle(want.angle()),
                "the bend",
            ));
        }
        let off = to_deg(want.rotation() - got.rotation());
        let off = off - 360.0 * (off / 360.0).round();
        // A bend that is none has no plane to be turned.
        if off.abs() > to_deg(angle) && want.angle() > deg(0.0) {
            let (got, want) = (Value::Angle(got.rotation()), Value::Angle(want.rotation()));
            found.push(differ(Part::Bend(i + 1), got, want, "the turn of its plane"));
        }
    }
    found
}
