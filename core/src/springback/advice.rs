//! Which further trial bends would make a setting as sure as wanted: the fewest, at the angles that serve best.

use super::fit::TrialFit;
use crate::bounds;
use crate::code::Code;
use crate::error::Error;
use crate::problem::{Part, Problem, Value};
use crate::statistics::{Line, student_both_sides};
use crate::units::{Angle, deg, ratio, to_deg};

/// No more further bends than this are advised: beyond it the scatter is the trouble, not the number.
const MOST_BENDS: usize = 12;
/// Up to so many choices all are tried, which takes a tenth of a second at most; beside a belief, where each takes far longer,
/// up to the second number.
const MOST_CHOICES: [usize; 2] = [100_000, 2_000];
/// Rounds of exchanging single bends; each round improves, and a handful is enough.
const MOST_ROUNDS: usize = 50;

/// Further trial bends to make.
#[derive(Debug, Clone, PartialEq)]
pub struct Advice {
    /// Angles to set, in rising order; empty where nothing more is needed.
    pub angles: Vec<Angle>,
    /// How far the interval of a wanted setting then reaches from the setting, the farthest of all of them, if line and
    /// scatter stay as they were.
    pub reaches: Angle,
    /// Whether that is the half width asked for.
    pub is_enough: bool,
}

/// What is known, and what is asked of more bends.
struct Design<'a> {
    fit: &'a TrialFit,
    chance: f64,
    wanted: &'a [f64],
}

impl Design<'_> {
    /// Student's number after more bends.
    fn factor(&self, more: usize) -> f64 {
        let bends = self.fit.degrees_of_freedom().saturating_add(more);
        student_both_sides(self.chance, u32::try_from(bends).unwrap_or(u32::MAX))
    }

    /// How far intervals reach from the settings of wanted angles on a line, the farthest of all of them; infinite where one
    /// has no end.
    fn farthest(&self, line: &Line, interval: impl Fn(f64) -> Option<[f64; 2]>) -> f64 {
        let one = |wanted: &f64| {
            let setting = (wanted + line.constant) / (1.0 - line.slope);
            interval(*wanted).map_or(f64::INFINITY, |[low, high]| (setting - low).max(high - setting))
        };
        self.wanted.iter().map(one).fold(0.0, f64::max)
    }

    /// What more bends at some angles reach by the line and its scatter alone: all there is without a belief.
    fn reach(&self, angles: &[f64], factor: f64) -> f64 {
        let line = self.fit.line().with_more(angles, self.fit.weight());
        self.farthest(&line, |wanted| {
            line.biased_interval(wanted, factor, |x| self.fit.bias_with(&line, angles, x))
        })
    }

    /// What more bends at some angles reach, by all the scatters that there may be.
    fn reaches(&self, angles: &[f64]) -> f64 {
        let Some(blend) = self.fit.blend() else { return self.reach(angles, self.factor(angles.len())) };
        let after = blend.with_more(angles);
        self.farthest(self.fit.line(), |wanted| after.setting_interval(self.fit.line(), wanted, self.chance))
    }

    /// The best angles for a number of bends, in rising order, and what they reach.
    fn best(&self, count: usize, candidates: &[f64]) -> (Vec<f64>, f64) {
        let factor = self.factor(count);
        let by_line = |angles: &[f64]| self.reach(angles, factor);
        let whole = |angles: &[f64]| self.reaches(angles);
        let (ways, is_beside) = (choices(candidates.len(), count), self.fit.blend().is_some());
        if is_beside && ways <= MOST_CHOICES[1] {
            return best_of_all(count, candidates, &whole);
        }
        let (mut angles, reaches) = if ways <= MOST_CHOICES[0] {
            best_of_all(count, candidates, &by_line)
        } else {
            best_exchanged(count, candidates, &by_line)
        };
        if !is_beside {
            return (angles, reaches);
        }
        let reaches = improve(&mut angles, candidates, &whole);
        angles.sort_by(f64::total_cmp);
        (angles, reaches)
    }
}

/// All choices tried one by one.
fn best_of_all(count: usize, candidates: &[f64], reach: &dyn Fn(&[f64]) -> f64) -> (Vec<f64>, f64) {
    let mut places = vec![0_usize; count];
    let angles = |places: &[usize]| places.iter().map(|i| candidates[*i]).collect::<Vec<f64>>();
    let mut best = (angles(&places), reach(&angles(&places)));
    while let Some(up) = (0..count).rev().find(|i| places[*i] + 1 < candidates.len()) {
        let next = places[up] + 1;
        places[up..].fill(next);
        let angles = angles(&places);
        let reaches = reach(&angles);
        if reaches < best.1 {
            best = (angles, reaches);
        }
    }
    best
}

/// What tells most of a line lies at its ends: every split of the bends between the two outermost candidates, made better
/// bend by bend.
fn best_exchanged(count: usize, candidates: &[f64], reach: &dyn Fn(&[f64]) -> f64) -> (Vec<f64>, f64) {
    let (low, high) = (candidates[0], candidates[candidates.len() - 1]);
    let start = |at_low: usize| {
        let mut angles = vec![high; count];
        angles[..at_low].fill(low);
        let reaches = improve(&mut angles, candidates, reach);
        angles.sort_by(f64::total_cmp);
        (angles, reaches)
    };
    let better = |a: (Vec<f64>, f64), b: (Vec<f64>, f64)| if b.1 < a.1 { b } else { a };
    (1..=count).map(start).fold(start(0), better)
}

/// Exchanges single bends for candidates while that helps.
fn improve(angles: &mut [f64], candidates: &[f64], reach: &dyn Fn(&[f64]) -> f64) -> f64 {
    let mut best = reach(angles);
    for _ in 0..MOST_ROUNDS {
        let before = best;
        for place in 0..angles.len() {
            let mut kept = angles[place];
            for candidate in candidates {
                angles[place] = *candidate;
                let reaches = reach(angles);
                if reaches < best {
                    (best, kept) = (reaches, *candidate);
                }
            }
            angles[place] = kept;
        }
        // Improvements below this share are rounding.
        if best >= before * (1.0 - 1e-12) {
            break;
        }
    }
    best
}

/// In how many ways a number of bends can be spread over candidates; no more than is counted to.
fn choices(candidates: usize, bends: usize) -> usize {
    // Candidates + bends - 1 over bends, a factor at a time, each of which leaves a whole number.
    (1..=bends).fold(1_usize, |ways, i| ways.saturating_mul(candidates - 1 + i) / i)
}

impl TrialFit {
    /// The fewest further bends, from a list of angles that can be tried, after which the interval of every wanted angle's
    /// setting (Fieller's) reaches no further than `half_width` either way at a chance; at most twelve, and where those do not
    /// reach it, those that reach nearest. More bends, read as coarsely as those before, tell no more than their rounding lets
    /// them. Up to 100 000 ways to choose all are tried; of more, what exchanging single bends finds from every split between
    /// the outermost angles. Beside a belief, where all that the scatter may be is reckoned with, up to 2 000 ways are tried; of
    /// more, what exchanging single bends finds from those that are best by line and scatter alone.
    ///
    /// # Errors
    /// `NOT_KNOWN` where the scatter is not known (two trials without a prior); `FIELD_MISSING` for an empty list;
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE`, also for a candidate of 0 degrees, which is no bend.
    pub fn advice(
        &self,
        wanted: &[Angle],
        half_width: Angle,
        chance: f64,
        candidates: &[Angle],
    ) -> Result<Advice, Error> {
        let chance = bounds::CHANCE.ratio(ratio(chance))?.value;
        let goal = to_deg(bounds::ANGLE.angle(half_width)?);
        let raw = |angles: &[Angle]| -> Result<Vec<f64>, Error> {
            angles.iter().map(|angle| bounds::ANGLE.angle(*angle).map(to_deg)).collect()
        };
        let (wanted, mut candidates) = (raw(wanted)?, raw(candidates)?);
        candidates.sort_by(f64::total_cmp);
        candidates.dedup();
        if wanted.is_empty() || candidates.is_empty() {
            return Err(Problem::new(Code::FieldMissing, Part::Field("angles".to_owned()))
                .need(Value::text("angles wanted, and angles that can be tried"))
                .into());
        }
        if self.degrees_of_freedom() == 0 {
            return Err(Problem::new(Code::NotKnown, Part::Field("scatter".to_owned()))
                .need(Value::text("a third trial, or a prior"))
                .into());
        }
        if candidates.first().is_some_and(|least| *least <= 0.0) {
            let need = Value::text("angles above 0: a bend of nothing tells nothing");
            return Err(Error::field(Code::OutOfRange, "candidates", Value::Angle(deg(0.0)), need));
        }
        let design = Design { fit: self, chance, wanted: &wanted };
        let mut best = (Vec::new(), design.reaches(&[]));
        for count in 1..=MOST_BENDS {
            if best.1 <= goal {
                break;
            }
            let next = design.best(count, &candidates);
            // More bends at angles that tell little can make an interval wider.
            if next.1 < best.1 {
                best = next;
            }
        }
        let (angles, reaches) = best;
        Ok(Advice {
            angles: angles.into_iter().map(deg).collect(),
            reaches: deg(reaches),
            is_enough: reaches <= goal,
        })
    }
}
