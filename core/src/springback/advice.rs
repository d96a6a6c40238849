//! Which further trial bends would make a setting as sure as wanted: the fewest, at the angles that serve best.

use super::fit::TrialFit;
use super::line::{Line, inverse};
use crate::bounds;
use crate::code::Code;
use crate::error::Error;
use crate::math::sqrt;
use crate::problem::{Part, Problem, Value};
use crate::statistics::student_both_sides;
use crate::units::{Angle, deg, ratio, to_deg};

/// No more further bends than this are advised: beyond it the scatter is the trouble, not the number.
const MOST_BENDS: usize = 12;
/// Rounds of exchanging single bends; each round improves, and a handful is enough.
const MOST_ROUNDS: usize = 50;

/// Further trial bends to make.
#[derive(Debug, Clone, PartialEq)]
pub struct Advice {
    /// Angles to set, in rising order; empty where nothing more is needed.
    pub angles: Vec<Angle>,
    /// Half width of the worst of the wanted settings' intervals after them, if the scatter stays as it was.
    pub reaches: Angle,
    /// Whether that is the half width asked for.
    pub is_enough: bool,
}

/// The line's matrix and degrees of freedom, ready for more bends.
struct Design<'a> {
    line: &'a Line,
    dof: u32,
    chance: f64,
    /// Set angles that matter.
    settings: Vec<f64>,
}

impl Design<'_> {
    /// Worst half width of a setting after more bends at `angles`.
    fn half_width(&self, angles: &[f64]) -> f64 {
        let [mut a, mut b, mut ab] = inverse(self.line.matrix);
        for x in angles {
            a += 1.0;
            b += x * x;
            ab += x;
        }
        let line = Line { matrix: inverse([a, b, ab]), ..*self.line };
        let more = u32::try_from(angles.len()).unwrap_or(u32::MAX);
        let factor = student_both_sides(self.chance, self.dof.saturating_add(more));
        let worst = self.settings.iter().map(|x| line.leverage(*x).max(0.0)).fold(0.0, f64::max);
        factor * line.scatter * sqrt(worst) / (1.0 - line.slope)
    }

    /// The best angles for a number of bends: one after another, then exchanging single ones while that helps.
    fn best(&self, count: usize, candidates: &[f64]) -> Vec<f64> {
        let mut angles: Vec<f64> = Vec::with_capacity(count);
        for _ in 0..count {
            angles.push(candidates[0]);
            let last = angles.len() - 1;
            self.exchange(&mut angles, last, candidates);
        }
        for _ in 0..MOST_ROUNDS {
            let improved = (0..count).any(|i| self.exchange(&mut angles, i, candidates));
            if !improved {
                break;
            }
        }
        angles.sort_by(f64::total_cmp);
        angles
    }

    /// Puts the best candidate at one place; whether that changed anything for the better.
    fn exchange(&self, angles: &mut [f64], place: usize, candidates: &[f64]) -> bool {
        // Improvements below this share are rounding.
        const REAL: f64 = 1e-12;
        let before = self.half_width(angles);
        let (mut best, mut kept) = (before, angles[place]);
        for candidate in candidates {
            angles[place] = *candidate;
            let width = self.half_width(angles);
            if width < best * (1.0 - REAL) {
                (best, kept) = (width, *candidate);
            }
        }
        angles[place] = kept;
        best < before * (1.0 - REAL)
    }
}

impl TrialFit {
    /// The fewest further bends, from a list of angles that can be tried, after which the setting of every wanted angle is
    /// known to `half_width` at a chance; at most twelve.
    ///
    /// # Errors
    /// `NOT_KNOWN` where the scatter is not known (two trials without a prior); `FIELD_MISSING` for an empty list;
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE`.
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
        let (wanted, candidates) = (raw(wanted)?, raw(candidates)?);
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
        let line = self.line();
        let settings = wanted.iter().map(|w| (w + line.constant) / (1.0 - line.slope)).collect();
        let dof = u32::try_from(self.degrees_of_freedom()).unwrap_or(u32::MAX);
        let design = Design { line, dof, chance, settings };
        let mut best = (Vec::new(), design.half_width(&[]));
        for count in 1..=MOST_BENDS {
            if best.1 <= goal {
                break;
            }
            let angles = design.best(count, &candidates);
            let width = design.half_width(&angles);
            best = (angles, width);
        }
        let (angles, reaches) = best;
        Ok(Advice {
            angles: angles.into_iter().map(deg).collect(),
            reaches: deg(reaches),
            is_enough: reaches <= goal,
        })
    }
}
