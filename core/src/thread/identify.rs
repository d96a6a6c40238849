//! What a measured thread may be.
//!
//! The model: every thread of the list is taken to be equally likely beforehand. A part of it was made to any size
//! between its limits (by its class, or the usual one), all equally likely; wear took any amount from none to the most stated; the
//! reading is off by any amount up to the error stated. A diameter's likelihood is therefore the density of the sum of
//! three uniform amounts, and a pitch's the density of one. A candidate's share is its likelihood over the sum of all: the
//! chance that it is the one, if the thread is in the list at all and the model holds.

use super::separate::{Separation, room, separate_worn};
use super::{Class, DiameterLimits, Thread, ThreadSide};
use crate::bounds;
use crate::code::Code;
use crate::error::Error;
use crate::problem::{Part, Problem, Value};
use crate::units::{Length, Ratio, mm, ratio, to_mm};

/// Wear that is allowed for where nobody states any, in mm. Worn male threads are said to measure 0.05 to 0.25 mm under
/// nominal (common practice, no source), most of which the tolerance already takes.
const USUAL_WEAR_MM: f64 = 0.1;
/// How far a count of threads per inch may be off where nobody says: half a thread over the 8 mm of a short nut (ours, no
/// source). 24 and 25.4 are then both possible.
const COUNT_ERROR: f64 = 1.6;
/// What a reading may lie outside by rounding alone; a reading on its very limit is still one.
const ROUNDING_MM: f64 = 1e-6;
/// Widths below this are no width.
const NO_WIDTH_MM: f64 = 1e-6;

/// A reading: a value, and how far it may be off either way.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Reading {
    value_mm: f64,
    error_mm: f64,
}

/// What was measured of a thread.
#[derive(Debug, Clone, PartialEq)]
pub struct Measured {
    side: ThreadSide,
    diameter: Option<Reading>,
    pitch: Option<Reading>,
    wear_mm: f64,
}

impl Measured {
    /// Nothing yet, of an external or internal thread.
    #[must_use]
    pub fn new(side: ThreadSide) -> Measured {
        Measured { side, diameter: None, pitch: None, wear_mm: USUAL_WEAR_MM }
    }

    /// With the diameter over the crests: major outside, minor inside; of a taper thread anywhere on its full thread.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE`.
    pub fn with_diameter(mut self, value: Length, plus_minus: Length) -> Result<Measured, Error> {
        self.diameter = Some(Reading {
            value_mm: to_mm(bounds::THREAD_DIAMETER.length(value)?),
            error_mm: to_mm(bounds::READING_ERROR.length(plus_minus)?),
        });
        Ok(self)
    }

    /// With a length over some pitches, such as ten.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE` for the count, the pitch that follows, and the error of one pitch.
    pub fn with_pitches(
        mut self,
        count: usize,
        value: Length,
        plus_minus: Length,
    ) -> Result<Measured, Error> {
        let count = bounds::PITCHES.ratio(ratio(count as f64))?.value;
        let pitch = bounds::PITCH.length(mm(to_mm(value) / count))?;
        let error = bounds::READING_ERROR.length(plus_minus)?;
        self.pitch = Some(Reading { value_mm: to_mm(pitch), error_mm: to_mm(error) / count });
        Ok(self)
    }

    /// With threads counted per inch, and how far the count may be off either way; None for half a thread over 8 mm, which is
    /// 1.6.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE`.
    pub fn with_per_inch(mut self, count: Ratio, plus_minus: Option<Ratio>) -> Result<Measured, Error> {
        let count = bounds::PER_INCH.ratio(count)?.value;
        let error = match plus_minus {
            Some(error) => bounds::COUNT_ERROR.ratio(error)?.value,
            None => COUNT_ERROR,
        };
        let (least, most) = (25.4 / (count + error), 25.4 / (count - error));
        self.pitch = Some(Reading { value_mm: (least + most) / 2.0, error_mm: (most - least) / 2.0 });
        Ok(self)
    }

    /// With the most that wear can have taken.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE`.
    pub fn with_wear(mut self, most: Length) -> Result<Measured, Error> {
        self.wear_mm = to_mm(bounds::WEAR.length(most)?);
        Ok(self)
    }

    /// The side.
    #[must_use]
    pub fn side(&self) -> ThreadSide {
        self.side
    }
}

/// A thread that the readings allow.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Candidate {
    /// The thread.
    pub thread: Thread,
    /// Its share of the likelihood.
    pub share: Ratio,
    /// Diameters that a part of it can have, wear included.
    pub diameter: DiameterLimits,
    /// What ten pitches of it measure.
    pub ten_pitches: Length,
}

/// What a measured thread may be.
#[derive(Debug, Clone, PartialEq)]
pub struct Identification {
    /// The threads that the readings allow, the likeliest first.
    pub candidates: Vec<Candidate>,
    /// The thread of the list that comes nearest, where none is allowed and one comes nearer than all others.
    pub nearest: Option<Thread>,
    /// Ways to tell the leading two apart, in the order to be tried; empty where fewer than two are left.
    pub ways: Vec<Separation>,
    /// How many threads of the list have the side that was measured.
    compared: usize,
}

impl Identification {
    /// The one further measurement that tells the leading two apart; None where there are no two, or none does.
    #[must_use]
    pub fn next(&self) -> Option<&Separation> {
        self.ways.iter().find(|way| way.separates)
    }

    /// What to do next, in words.
    #[must_use]
    pub fn advice(&self) -> String {
        let [first, second, ..] = &self.candidates[..] else {
            return match (self.candidates.first(), self.nearest) {
                (Some(only), _) => format!(
                    "{} is the only thread of the list that fits; a thread that is not in the list can fit too",
                    only.thread
                ),
                (None, Some(nearest)) => {
                    format!(
                        "no thread of the list fits; the nearest is {nearest}: measure again, or it is a thread that is not in the list"
                    )
                }
                (None, None) if self.compared > 0 => {
                    "no thread of the list fits, and several come equally near: measure again, the diameter too".to_owned()
                }
                (None, None) => "no thread of this side to compare with".to_owned(),
            };
        };
        match self.next() {
            Some(way) => way.words(first.thread, second.thread),
            None => {
                if first.thread.is_same_size(&second.thread) {
                    return format!(
                        "{} and {} are one size of thread in two classes: no measurement here separates them",
                        first.thread, second.thread
                    );
                }
                let tried: Vec<&str> = self.ways.iter().map(|way| way.measure.name()).collect();
                format!("{} and {} cannot be separated by {}", first.thread, second.thread, tried.join(", "))
            }
        }
    }
}

/// Density at `y` of a sum of independent amounts, each equally likely from 0 to its width.
///
/// The sum over all subsets of (y - widths of the subset)^(n-1), signs alternating, over (n-1)! and all widths.
fn density(y: f64, widths: &[f64]) -> f64 {
    let total: f64 = widths.iter().sum();
    if !(0.0..=total).contains(&y) {
        return 0.0;
    }
    let power = |base: f64| match widths.len() {
        1 => 1.0,
        2 => base,
        _ => base * base / 2.0,
    };
    let mut sum = 0.0;
    for subset in 0..1_u32 << widths.len() {
        let taken = widths.iter().enumerate().filter(|(i, _)| subset >> i & 1 == 1);
        let rest = y - taken.map(|(_, width)| width).sum::<f64>();
        if rest > 0.0 {
            sum += if subset.count_ones() % 2 == 0 { power(rest) } else { -power(rest) };
        }
    }
    (sum / widths.iter().product::<f64>()).max(0.0)
}

/// Likelihood of a thread, how far its readings are from what it allows, and the diameters it can have.
fn judge(measured: &Measured, thread: &Thread) -> Option<(f64, f64, DiameterLimits)> {
    let (least, most) = room(thread, measured.side, measured.wear_mm)?;
    let diameter = DiameterLimits { min: Some(mm(least)), max: Some(mm(most)) };
    let outside = |value: f64, least: f64, most: f64| (least - value).max(value - most).max(0.0);
    let (mut likelihood, mut distance) = (1.0, 0.0);
    if let Some(Reading { value_mm, error_mm }) = measured.diameter {
        let made = most - least - measured.wear_mm;
        let error_mm = error_mm + ROUNDING_MM;
        let widths: Vec<f64> = [made, measured.wear_mm, 2.0 * error_mm]
            .into_iter()
            .filter(|width| *width > NO_WIDTH_MM)
            .collect();
        // Seen from the unworn limit: metal is lost from the outside inward, from the inside outward.
        let from_new = match measured.side {
            ThreadSide::External => most + error_mm - value_mm,
            ThreadSide::Internal => value_mm - least + error_mm,
        };
        likelihood *= density(from_new, &widths);
        distance += outside(value_mm, least - error_mm, most + error_mm);
    }
    if let Some(Reading { value_mm, error_mm }) = measured.pitch {
        let off = (value_mm - to_mm(thread.pitch())).abs();
        likelihood *= if off <= error_mm + ROUNDING_MM { 1.0 / (2.0 * error_mm) } else { 0.0 };
        distance += (off - error_mm).max(0.0);
    }
    Some((likelihood, distance, diameter))
}

/// Compares what was measured with a list of threads. One that stands in it twice, or once without its usual class and once
/// with it, counts once; one whose class or family belongs to the other side is left out.
///
/// # Errors
/// `FIELD_MISSING` where nothing was measured.
///
/// ```
/// use linewright::thread::{CATALOGUE, Measured, ThreadSide, identify};
/// use linewright::{Thread, units::mm};
/// let list: Vec<Thread> = CATALOGUE.iter().map(|row| row.thread).collect();
/// let measured = Measured::new(ThreadSide::External).with_diameter(mm(9.45), mm(0.05))?;
/// let found = identify(&measured, &list)?;
/// assert!(found.candidates.iter().any(|c| c.thread.to_string() == "3/8-24 UNF"));
/// assert!(found.candidates.iter().all(|c| c.thread.to_string() != "M10x1"));
/// # Ok::<(), linewright::Error>(())
/// ```
pub fn identify(measured: &Measured, list: &[Thread]) -> Result<Identification, Error> {
    if measured.diameter.is_none() && measured.pitch.is_none() {
        let problem = Problem::new(Code::FieldMissing, Part::Field("diameter".to_owned()))
            .need(Value::text("the diameter over the crests, or a pitch, each with its error"));
        return Err(problem.into());
    }
    let known =
        |thread: &Thread| Thread { class: thread.class.or(Class::usual(thread, measured.side)), ..*thread };
    let once = |(at, thread): (usize, &Thread)| {
        let is_first = !list[..at].iter().any(|other| known(other) == known(thread));
        is_first.then_some(*thread)
    };
    let list: Vec<Thread> = list.iter().enumerate().filter_map(once).collect();
    let judged: Vec<(Thread, f64, f64, DiameterLimits)> = list
        .iter()
        .filter_map(|thread| judge(measured, thread).map(|(l, distance, span)| (*thread, l, distance, span)))
        .collect();
    let total: f64 = judged.iter().map(|(_, likelihood, _, _)| likelihood).sum();
    let mut candidates: Vec<Candidate> = judged
        .iter()
        .filter(|(_, likelihood, _, _)| *likelihood > 0.0)
        .map(|(thread, likelihood, _, diameter)| Candidate {
            thread: *thread,
            share: ratio(likelihood / total),
            diameter: *diameter,
            ten_pitches: mm(10.0 * to_mm(thread.pitch())),
        })
        .collect();
    candidates.sort_by(|a, b| b.share.value.total_cmp(&a.share.value));
    let least = judged.iter().map(|(_, _, distance, _)| *distance).fold(f64::INFINITY, f64::min);
    let mut near = judged.iter().filter(|(_, _, distance, _)| *distance <= least + ROUNDING_MM);
    let nearest = near.next().filter(|_| near.next().is_none()).map(|(thread, ..)| *thread);
    let ways = match &candidates[..] {
        [first, second, ..] => separate_worn(&first.thread, &second.thread, measured.side, measured.wear_mm),
        _ => Vec::new(),
    };
    let (compared, nearest) = (judged.len(), nearest.filter(|_| candidates.is_empty()));
    Ok(Identification { nearest, candidates, ways, compared })
}
