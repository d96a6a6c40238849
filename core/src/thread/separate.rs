//! The one measurement that tells two threads apart, with the reading to expect for each.

use super::{Thread, ThreadSide, pipe};
use crate::error::Error;
use crate::problem::Value;
use crate::units::{angle_text, mm, to_deg, to_mm};
use crate::units::{deg, length_text};

/// How well ten pitches are measured with a caliper, in mm either way (ours, no source).
const TEN_PITCHES_ERROR_MM: f64 = 0.1;
/// How well a diameter is measured with a caliper, in mm either way (ours, no source).
const DIAMETER_ERROR_MM: f64 = 0.05;
/// Wear that may hide a difference of diameters, in mm (as in the identification).
const WEAR_MM: f64 = 0.1;
/// Change of diameter over five millimeters that is seen with a caliper, in mm (ours, no source).
const TAPER_SEEN_MM: f64 = 0.2;
/// A taper thread's diameter may be read anywhere on its useful length, and on this many turns at least (ours, no source).
const TAPER_TURNS: f64 = 8.0;
/// Difference of flank angles that a profile gauge shows, in degrees (ours, no source).
const FLANK_SEEN_DEG: f64 = 4.0;

/// A way to tell two threads apart.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Measure {
    /// The length over ten pitches.
    TenPitches,
    /// The diameter over the crests: major outside, minor inside.
    Diameter,
    /// How the diameter changes over five millimeters: the smallest taper threads are not much longer.
    Taper,
    /// The angle between the flanks, by a profile gauge.
    FlankAngle,
    /// Which way it turns in: a look at how the threads rise is enough.
    Hand,
}

impl Measure {
    /// The name, the same in every language.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Measure::TenPitches => "ten pitches",
            Measure::Diameter => "diameter",
            Measure::Taper => "taper over 5 mm",
            Measure::FlankAngle => "flank angle",
            Measure::Hand => "hand",
        }
    }
}

/// What a measurement gives for each of two threads.
#[derive(Debug, Clone, PartialEq)]
pub struct Separation {
    /// What to measure.
    pub measure: Measure,
    /// The least and the most to expect, for the first thread and for the second.
    pub expected: [[Value; 2]; 2],
    /// The side that is measured.
    pub side: ThreadSide,
    /// Whether the two do not overlap, the error of the measurement included.
    pub separates: bool,
}

impl Separation {
    /// The measurement in words: `measure ten pitches: 10 mm for M11x1, 10.58 mm for 7/16-24`.
    #[must_use]
    pub fn words(&self, first: Thread, second: Thread) -> String {
        let range = |[least, most]: &[Value; 2]| {
            let text = |value: &Value| match value {
                Value::Length(length) => length_text(*length),
                Value::Angle(angle) => angle_text(*angle),
                other => other.to_string(),
            };
            if least == most { text(least) } else { format!("{} to {}", text(least), text(most)) }
        };
        let [a, b] = &self.expected;
        // Nobody measures ten pitches inside a shallow port.
        let how = match (self.side, self.measure) {
            (ThreadSide::Internal, Measure::TenPitches) => " of a cast of it, or of the screw that fits it",
            _ => "",
        };
        let what = self.measure.name();
        if self.measure == Measure::Hand {
            return format!("look at the hand: {} for {first}, {} for {second}", range(a), range(b));
        }
        format!("measure the {what}{how}: {} for {first}, {} for {second}", range(a), range(b))
    }
}

/// Diameters over the crests that a part can have, wear included, in mm, by its class or the usual one; None for a side the
/// thread, or its class, has not.
pub(super) fn room(thread: &Thread, side: ThreadSide, wear_mm: f64) -> Option<(f64, f64)> {
    let limits = thread.limits(side).ok()?;
    let turns = TAPER_TURNS * to_mm(thread.pitch());
    let along = pipe::reach(thread).map_or(turns, |length| to_mm(length).max(turns)) * thread.taper().value;
    Some(match side {
        ThreadSide::External => (to_mm(limits.major.min?) - wear_mm, to_mm(limits.major.max?) + along),
        ThreadSide::Internal => (to_mm(limits.minor.min?) - along, to_mm(limits.minor.max?) + wear_mm),
    })
}

/// Every way to tell two threads apart that applies, in the order to be tried: the hand first, where they differ in it.
///
/// ```
/// use linewright::Thread;
/// use linewright::thread::{Measure, ThreadSide, separate};
/// let (a, b) = (Thread::read("M11x1")?, Thread::read("7/16-24")?);
/// let ways = separate(&a, &b, ThreadSide::External)?;
/// assert!(ways[0].measure == Measure::TenPitches && ways[0].separates);
/// assert!(ways[1].measure == Measure::Diameter && !ways[1].separates);
/// # Ok::<(), linewright::Error>(())
/// ```
///
/// # Errors
/// `THREAD_SIDE` where class or family of one belong to the other side; as [`Thread::limits`] where it has none there.
pub fn separate(first: &Thread, second: &Thread, side: ThreadSide) -> Result<Vec<Separation>, Error> {
    for thread in [first, second] {
        thread.limits(side)?;
    }
    Ok(ways_apart(first, second, side))
}

/// [`separate`] whatever the sides of the two are: what their limits there would tell is then left out.
pub(crate) fn ways_apart(first: &Thread, second: &Thread, side: ThreadSide) -> Vec<Separation> {
    separate_worn(first, second, side, WEAR_MM)
}

/// [`separate`] with the most that wear can have taken.
pub(super) fn separate_worn(
    first: &Thread,
    second: &Thread,
    side: ThreadSide,
    wear_mm: f64,
) -> Vec<Separation> {
    let both = [first, second];
    let mut ways = Vec::new();
    if first.hand() != second.hand() {
        ways.push(Separation {
            measure: Measure::Hand,
            expected: both.map(|thread| [(); 2].map(|()| Value::text(thread.hand().name()))),
            side,
            separates: true,
        });
    }
    let ten = both.map(|thread| 10.0 * to_mm(thread.pitch()));
    ways.push(Separation {
        measure: Measure::TenPitches,
        expected: ten.map(|length| [Value::Length(mm(length)), Value::Length(mm(length))]),
        side,
        separates: (ten[0] - ten[1]).abs() > 2.0 * TEN_PITCHES_ERROR_MM,
    });
    if let [Some(a), Some(b)] = both.map(|thread| room(thread, side, wear_mm)) {
        let apart = (a.0 - b.1).max(b.0 - a.1);
        ways.push(Separation {
            measure: Measure::Diameter,
            expected: [a, b].map(|(least, most)| [Value::Length(mm(least)), Value::Length(mm(most))]),
            side,
            separates: apart > 2.0 * DIAMETER_ERROR_MM,
        });
    }
    let taper = both.map(|thread| 5.0 * thread.taper().value);
    ways.push(Separation {
        measure: Measure::Taper,
        expected: taper.map(|change| [Value::Length(mm(change)), Value::Length(mm(change))]),
        side,
        separates: (taper[0] - taper[1]).abs() > TAPER_SEEN_MM,
    });
    let flanks = both.map(|thread| 2.0 * to_deg(thread.half_angle()));
    ways.push(Separation {
        measure: Measure::FlankAngle,
        expected: flanks.map(|angle| [Value::Angle(deg(angle)), Value::Angle(deg(angle))]),
        side,
        separates: (flanks[0] - flanks[1]).abs() > FLANK_SEEN_DEG,
    });
    ways
}
