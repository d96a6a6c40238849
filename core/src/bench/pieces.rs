//! What a former does to a tube, told from bent pieces whose length was measured before.
//!
//! A piece of the length L, bent by the angles a through arcs of the radius R, has legs from corner to corner that are
//! together longer than L by the gain: the sum of R (2 tan(a/2) - a). So every piece gives one equation for R, and the
//! best R is the one that makes lengths come out: it has in it whatever the tube does beside the ideal arc. Where pieces
//! of clearly different angles are there, a second figure can be told from them, how much longer an arc is than the tube
//! that went into it: the gain is then R (2 tan(a/2) - a) + s R a.

use crate::bend::gain_mm;
use crate::bounds;
use crate::code::Code;
use crate::error::Error;
use crate::math::{sqrt, tan};
use crate::problem::{Part, Problem, Value};
use crate::statistics::{is_multiple, one_sided, read_to as read_to_step, rounding};
use crate::units::{Angle, Length, deg, mm, to_deg, to_mm, to_rad};

/// A piece whose legs miss the others by more was misread (ours, no source): a hand measures a leg to a millimeter. By as much
/// may a leg be shorter than its tangents, or a piece than its arcs.
pub(super) const SCATTER_MM: f64 = 3.0;
/// Bends whose angles differ by less lie alike between the marks of a ruler, if they were set out by its marks (ours, no source).
const ALIKE_DEG: f64 = 2.0;
/// Steps that lengths are read to, in mm, the coarsest first: sixteenths to sixty-fourths of an inch among them (ours, no
/// source).
const STEPS: [f64; 11] = [25.4 / 16.0, 1.0, 25.4 / 32.0, 0.5, 25.4 / 64.0, 0.25, 0.2, 0.1, 0.05, 0.02, 0.01];

/// A piece of tube, measured straight, then bent and measured again.
#[derive(Debug, Clone, PartialEq)]
pub struct TestPiece {
    length: Length,
    legs: Vec<Length>,
    angles: Vec<Angle>,
    reading: Option<Length>,
}

fn read_to(lengths: &[Length]) -> Option<Length> {
    let raw: Vec<f64> = lengths.iter().copied().map(to_mm).collect();
    read_to_step(&raw, &STEPS, is_multiple).map(mm)
}

impl TestPiece {
    /// A piece of a length before bending, with its legs along the center line from end to corner, corner to corner, and
    /// corner to end, and the angles that remained, in order.
    ///
    /// # Errors
    /// `COUNT_MISMATCH` where there is not one leg more than angles, or no angle; `NOT_A_NUMBER`, `OUT_OF_RANGE`, also where
    /// length, legs and angles mean a radius whose arcs are longer than the piece, or whose tangents are longer than a leg,
    /// even if the legs were read 3 mm too long.
    pub fn new(length: Length, legs: &[Length], angles: &[Angle]) -> Result<TestPiece, Error> {
        if angles.is_empty() || legs.len() != angles.len() + 1 {
            return Err(Problem::new(Code::CountMismatch, Part::Field("legs".to_owned()))
                .got(Value::Count(legs.len()))
                .need(Value::Count(angles.len().max(1) + 1))
                .why("a test piece has at least one bend, and one leg more than bends")
                .fix("giving every leg, from end to corner, corner to corner, and corner to end")
                .into());
        }
        let piece = TestPiece {
            reading: read_to(legs),
            length: bounds::PIECE.length(length)?,
            legs: legs.iter().map(|leg| bounds::LEG.length(*leg)).collect::<Result<_, _>>()?,
            angles: angles.iter().map(|angle| bounds::PIECE_ANGLE.angle(*angle)).collect::<Result<_, _>>()?,
        };
        let [unit, _, gain] = piece.equation();
        // Only what no misreading explains: the radius that legs 3 mm shorter would mean must fit as well.
        if piece.misfit((gain - SCATTER_MM) / unit, 0.0).is_none() {
            return Ok(piece);
        }
        // The larger radius of the legs as read fits even less.
        piece.misfit(gain / unit, 0.0).map_or(Ok(piece), |misfit| Err(misfit.into()))
    }

    /// What of the piece is too short for its bends at a radius, by more than a length.
    pub(super) fn misfit(&self, radius_mm: f64, by_mm: f64) -> Option<Problem> {
        let refusal = |field: &str, got: String, least: f64, what: &str| {
            let means = format!("at the radius of {radius_mm:.2} mm that length, legs and angles mean");
            Problem::new(Code::OutOfRange, Part::Field(field.to_owned()))
                .got(Value::text(got))
                .need(Value::text(format!("at least {least:.2} mm, the {what} {means}")))
                .why("the piece is too short for its own bends")
                .fix("measuring length, legs and angles again")
        };
        let arcs = radius_mm * self.angles.iter().map(|angle| to_rad(*angle)).sum::<f64>();
        if arcs > to_mm(self.length) + by_mm {
            return Some(refusal(
                "length",
                Value::Length(self.length).to_string(),
                arcs,
                "arcs of its bends",
            ));
        }
        let tangent = |i: Option<usize>| {
            i.and_then(|i| self.angles.get(i)).map_or(0.0, |a| radius_mm * tan(to_rad(*a) / 2.0))
        };
        self.legs.iter().enumerate().find_map(|(i, leg)| {
            let least = tangent(i.checked_sub(1)) + tangent(Some(i));
            let got = format!("leg {}, {}", i + 1, Value::Length(*leg));
            (least > to_mm(*leg) + by_mm)
                .then(|| refusal("legs", got, least, "tangents of the bends beside it"))
        })
    }

    /// The same with legs as a square or a tape laid over the outer edges of the tube measures them, to the outer corners:
    /// each bend lengthens both its legs by half the diameter x tan(angle / 2).
    ///
    /// # Errors
    /// As [`TestPiece::new`]; `OUT_OF_RANGE` also for a leg shorter than what its corners take.
    pub fn from_outer_legs(
        length: Length,
        outer_legs: &[Length],
        angles: &[Angle],
        od: Length,
    ) -> Result<TestPiece, Error> {
        let half = to_mm(bounds::OD.length(od)?) / 2.0;
        let angles_of = angles.iter().map(|angle| bounds::PIECE_ANGLE.angle(*angle));
        let edges = angles_of
            .map(|angle| Ok(half * tan(to_rad(angle?) / 2.0)))
            .collect::<Result<Vec<f64>, Error>>()?;
        let edge = |i: Option<usize>| i.and_then(|i| edges.get(i)).copied().unwrap_or(0.0);
        let legs: Vec<Length> = outer_legs
            .iter()
            .enumerate()
            .map(|(i, leg)| mm(to_mm(*leg) - edge(i.checked_sub(1)) - edge(Some(i))))
            .collect();
        let piece = TestPiece::new(length, &legs, angles)?;
        Ok(TestPiece { reading: read_to(outer_legs), ..piece })
    }

    /// With the step that its legs were read to, or None for finer than 0.01 mm, where their numbers do not show it.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE`.
    pub fn with_reading(self, step: Option<Length>) -> Result<TestPiece, Error> {
        let reading = step.map(|step| bounds::READING.length(step)).transpose()?;
        Ok(TestPiece { reading, ..self })
    }

    /// The step that its legs were read to, as given or as their numbers show: the coarsest of 1/16 in, 1 mm, 1/32 in, 0.5 mm,
    /// 1/64 in, 0.25, 0.2, 0.1, 0.05, 0.02 and 0.01 mm that all of them are multiples of; of outer legs as they were read.
    #[must_use]
    pub fn reading(&self) -> Option<Length> {
        self.reading
    }

    /// The steps in mm that its legs and its length were read to. The length was read no more coarsely than the legs: a round
    /// one is what a piece is cut to.
    fn steps(&self) -> [Option<f64>; 2] {
        let (legs, length) = (self.reading.map(to_mm), read_to(&[self.length]).map(to_mm));
        [legs, legs.zip(length).map(|(legs, length)| legs.min(length))]
    }

    /// By how much the gain of each bend grows with its angle, in mm a degree, at a radius.
    fn slopes(&self, radius_mm: f64) -> impl Iterator<Item = f64> + '_ {
        let half = |angle: &Angle| tan(to_rad(*angle) / 2.0);
        self.angles.iter().map(move |angle| radius_mm * half(angle) * half(angle) * to_rad(deg(1.0)))
    }

    /// Variance in mm2 of what rounding adds to its gain, for a step in degrees that angles were read to.
    pub(super) fn rounding(&self, angle_step: Option<f64>, radius_mm: f64) -> f64 {
        let [legs, length] = self.steps().map(|step| rounding(step) * rounding(step));
        let angle = rounding(angle_step);
        let angles = self.slopes(radius_mm).map(|slope| slope * angle * slope * angle);
        self.legs.iter().map(|_| legs).chain([length]).chain(angles).sum()
    }

    /// How far its gain may be off in mm where every leg and angle is rounded to its worst side, for a scatter of a single leg.
    /// What an angle scatters is not known.
    pub(super) fn bias(&self, angle_step: Option<f64>, radius_mm: f64, leg_scatter_mm: f64) -> f64 {
        let [legs, _] = self.steps();
        let seen = leg_scatter_mm * leg_scatter_mm + rounding(legs) * rounding(legs);
        let legs = self.legs.iter().map(|_| one_sided(legs, sqrt(seen)));
        let angles = self.slopes(radius_mm).map(|slope| slope * one_sided(angle_step, 0.0));
        legs.chain(angles).sum()
    }

    /// The same of its length: what a saw and its stop scatter is not known.
    pub(super) fn length_bias(&self) -> f64 {
        one_sided(self.steps()[1], 0.0)
    }

    /// Whether it was cut to the same length as another, as far as it was read.
    pub(super) fn is_as_long(&self, other: &TestPiece) -> bool {
        let step = self.steps()[1].unwrap_or(0.0);
        (to_mm(self.length) - to_mm(other.length)).abs() < step / 2.0
    }

    /// Whether it was bent to the same angles as another.
    pub(super) fn is_alike(&self, other: &TestPiece) -> bool {
        let near = |(a, b): (&Angle, &Angle)| (to_deg(*a) - to_deg(*b)).abs() < ALIKE_DEG;
        self.angles.len() == other.angles.len() && self.angles.iter().zip(&other.angles).all(near)
    }

    /// Length before bending.
    #[must_use]
    pub fn length(&self) -> Length {
        self.length
    }

    /// Legs along the center line.
    #[must_use]
    pub fn legs(&self) -> &[Length] {
        &self.legs
    }

    /// Angles that remained.
    #[must_use]
    pub fn angles(&self) -> &[Angle] {
        &self.angles
    }

    /// The gain of its bends together as measured: how much longer the legs are than the piece was.
    #[must_use]
    pub fn gain(&self) -> Length {
        mm(self.legs.iter().map(|leg| to_mm(*leg)).sum::<f64>() - to_mm(self.length))
    }

    /// Gain for a radius of 1 mm, sum of the angles, measured gain.
    pub(super) fn equation(&self) -> [f64; 3] {
        let sum = |f: &dyn Fn(f64) -> f64| self.angles.iter().map(|angle| f(to_rad(*angle))).sum::<f64>();
        [sum(&|angle| gain_mm(1.0, angle)), sum(&|angle| angle), to_mm(self.gain())]
    }
}
