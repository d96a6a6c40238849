//! What a former does to a tube, told from bent pieces whose length was measured before.
//!
//! A piece of the length L, bent by the angles a through arcs of the radius R, has legs from corner to corner that are
//! together longer than L by the gain: the sum of R (2 tan(a/2) - a). So every piece gives one equation for R, and the
//! best R is the one that makes lengths come out: it has in it whatever the tube does beside the ideal arc. Where pieces
//! of clearly different angles are there, a second figure can be told from them, how much longer an arc is than the tube
//! that went into it: the gain is then R (2 tan(a/2) - a) + s R a.

use super::Former;
use crate::bend::gain_mm;
use crate::bounds;
use crate::code::Code;
use crate::error::Error;
use crate::math::{sqrt, tan};
use crate::problem::{Part, Problem, Value};
use crate::statistics::{read_to as read_to_step, rounding, student_both_sides};
use crate::units::{Angle, Length, Ratio, mm, ratio, to_mm, to_rad};

/// A piece whose legs miss the others by more was misread (ours, no source): a hand measures a leg to a millimeter. By as much
/// may a leg be shorter than its tangents, or a piece than its arcs.
const SCATTER_MM: f64 = 3.0;
/// Squared sine of the angle between the two unknowns below which pieces do not tell them apart (ours, no source): two
/// bends of 80 and 90 degrees have 0.02.
const TOLD_APART: f64 = 0.01;
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
    read_to_step(lengths.iter().copied().map(to_mm), &STEPS).map(mm)
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
    fn misfit(&self, radius_mm: f64, by_mm: f64) -> Option<Problem> {
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

    /// Variance in mm2 of what rounding adds to its gain. The length was read no more coarsely than the legs: a round one is
    /// what a piece is cut to.
    fn rounding(&self) -> f64 {
        let (legs, length) = (self.reading.map(to_mm), read_to(&[self.length]).map(to_mm));
        let length = legs.zip(length).map(|(legs, length)| legs.min(length));
        let square = |step: Option<f64>| rounding(step) * rounding(step);
        self.legs.iter().map(|_| square(legs)).sum::<f64>() + square(length)
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
    fn equation(&self) -> [f64; 3] {
        let sum = |f: &dyn Fn(f64) -> f64| self.angles.iter().map(|angle| f(to_rad(*angle))).sum::<f64>();
        [sum(&|angle| gain_mm(1.0, angle)), sum(&|angle| angle), to_mm(self.gain())]
    }
}

/// The radius of a former as its test pieces tell it, with its uncertainty. The model: every piece's gain is off by a
/// normal error of the same unknown size, which is taken to be at least what the rounding of lengths and legs makes: pieces
/// read to a millimeter can agree by that alone.
///
/// ```
/// use linewright::bench::{PieceFit, TestPiece};
/// use linewright::units::{deg, mm, to_mm};
/// // Three pieces of 200 mm, bent once each.
/// let pieces = [(112.1, 94.2, 90.0), (102.0, 98.9, 45.0), (121.4, 97.6, 120.0)].map(|(a, b, angle)| {
///     TestPiece::new(mm(200.0), &[mm(a), mm(b)], &[deg(angle)])
/// });
/// let pieces = pieces.into_iter().collect::<Result<Vec<_>, _>>()?;
/// let fit = PieceFit::new(&pieces)?;
/// // By hand: the sum of gain x gain of a 1 mm radius, 28.767, over that of its squares, 2.0622.
/// assert!((to_mm(fit.radius()) - 13.950).abs() < 1e-3);
/// assert!((to_mm(fit.radius_error().unwrap()) - 0.220).abs() < 1e-3);
/// let former = fit.former(mm(20.0))?;
/// assert_eq!(former.as_formed(), fit.radius());
/// # Ok::<(), linewright::Error>(())
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct PieceFit {
    radius_mm: f64,
    /// Sum of the squared gains for a radius of 1 mm.
    square: f64,
    scatter_mm: f64,
    dof: u32,
    stretch: Option<Stretch>,
}

/// Radius and stretch together, where the pieces tell them apart.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stretch {
    radius_mm: f64,
    /// What an arc of one radian is longer than the tube in it.
    longer_mm: f64,
    /// Variances of these two, and their covariance, for a scatter of 1.
    matrix: [f64; 3],
    scatter_mm: f64,
    dof: u32,
}

fn unusable(got: String, need: &str) -> Error {
    Problem::new(Code::TrialsUnusable, Part::Field("pieces".to_owned()))
        .got(Value::text(got))
        .need(Value::text(need))
        .why("the test pieces give no radius")
        .fix("measuring length, legs and angles again")
        .into()
}

fn scatter_of(squares: f64, dof: u32, rounding: f64) -> f64 {
    if dof > 0 { sqrt(squares / f64::from(dof)).max(rounding) } else { 0.0 }
}

impl PieceFit {
    /// The fit to at least one piece, all of one tube on one former.
    ///
    /// # Errors
    /// `TRIALS_UNUSABLE` for no piece, for pieces whose legs give no credible radius, for one whose length is more than 3 mm
    /// off what the others say, and for one that is more than 3 mm too short for its own bends at the radius found.
    pub fn new(pieces: &[TestPiece]) -> Result<PieceFit, Error> {
        let equations: Vec<[f64; 3]> = pieces.iter().map(TestPiece::equation).collect();
        if equations.is_empty() {
            return Err(unusable("no piece".to_owned(), "at least one bent piece"));
        }
        let sum = |f: &dyn Fn(&[f64; 3]) -> f64| equations.iter().map(f).sum::<f64>();
        let (xx, xg) = (sum(&|[x, _, _]| x * x), sum(&|[x, _, g]| x * g));
        let radius_mm = xg / xx;
        if let Err(error) = bounds::RADIUS.length(mm(radius_mm)) {
            let text = format!("a radius of {}", error.got());
            return Err(unusable(text, "legs that are together longer than the piece was"));
        }
        let off = |[x, _, g]: &[f64; 3]| g - radius_mm * x;
        let far = equations.iter().map(|e| off(e).abs()).enumerate().max_by(|a, b| a.1.total_cmp(&b.1));
        if let Some((worst, by)) = far.filter(|(_, by)| *by > SCATTER_MM) {
            let text = format!("piece {}, {by:.1} mm off what all say together", worst + 1);
            return Err(unusable(text, "pieces within 3 mm of each other"));
        }
        let short = pieces.iter().enumerate().find_map(|(i, p)| Some((i, p.misfit(radius_mm, SCATTER_MM)?)));
        if let Some((at, misfit)) = short {
            return Err(unusable(format!("piece {}, {}", at + 1, misfit.got), &misfit.need.to_string()));
        }
        let dof = u32::try_from(equations.len() - 1).unwrap_or(u32::MAX);
        let squares = sum(&|e| off(e) * off(e));
        let rounding = sqrt(pieces.iter().map(TestPiece::rounding).sum::<f64>() / f64::from(dof + 1));
        let stretch = Stretch::new(&equations, rounding);
        Ok(PieceFit { radius_mm, square: xx, scatter_mm: scatter_of(squares, dof, rounding), dof, stretch })
    }

    /// The radius as formed that makes lengths come out: the one a plan reckons with.
    #[must_use]
    pub fn radius(&self) -> Length {
        mm(self.radius_mm)
    }

    /// Its standard error; None for one piece.
    #[must_use]
    pub fn radius_error(&self) -> Option<Length> {
        (self.dof > 0).then(|| mm(self.scatter_mm / sqrt(self.square)))
    }

    /// The interval of the radius at a chance (Student's), cut at 0: no radius is below nothing, and one that begins there
    /// says only how little the pieces tell. None for one piece.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE` for the chance.
    pub fn radius_interval(&self, chance: f64) -> Result<Option<[Length; 2]>, Error> {
        let factor = factor(chance, self.dof)?;
        let half = self.radius_error().map(|error| factor * to_mm(error));
        Ok(half.map(|half| [mm((self.radius_mm - half).max(0.0)), mm(self.radius_mm + half)]))
    }

    /// Scatter of one piece's gain, one standard deviation, and at least what rounding makes; None for one piece.
    #[must_use]
    pub fn scatter(&self) -> Option<Length> {
        (self.dof > 0).then(|| mm(self.scatter_mm))
    }

    /// The gain of a bend on this former.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE` for an angle that no test piece may have.
    pub fn gain(&self, angle: Angle) -> Result<Length, Error> {
        Ok(mm(gain_mm(self.radius_mm, to_rad(bounds::PIECE_ANGLE.angle(angle)?))))
    }

    /// The interval of that gain at a chance; None for one piece. One more piece scatters in addition.
    ///
    /// # Errors
    /// As [`PieceFit::gain`] and [`PieceFit::radius_interval`].
    pub fn gain_interval(&self, angle: Angle, chance: f64) -> Result<Option<[Length; 2]>, Error> {
        let unit = gain_mm(1.0, to_rad(bounds::PIECE_ANGLE.angle(angle)?));
        let interval = self.radius_interval(chance)?;
        Ok(interval.map(|ends| ends.map(|radius| mm(unit * to_mm(radius)))))
    }

    /// Radius and stretch of the arc as two figures; None where the angles of the pieces are too much alike to tell them
    /// apart.
    #[must_use]
    pub fn stretch(&self) -> Option<&Stretch> {
        self.stretch.as_ref()
    }

    /// The former, for a bench.
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE` for the grip.
    pub fn former(&self, grip: Length) -> Result<Former, Error> {
        Former::new(self.radius(), grip)
    }
}

impl Stretch {
    fn new(equations: &[[f64; 3]], rounding: f64) -> Option<Stretch> {
        let sum = |f: &dyn Fn(&[f64; 3]) -> f64| equations.iter().map(f).sum::<f64>();
        let (xx, tt, xt) = (sum(&|[x, _, _]| x * x), sum(&|[_, t, _]| t * t), sum(&|[x, t, _]| x * t));
        let (xg, tg) = (sum(&|[x, _, g]| x * g), sum(&|[_, t, g]| t * g));
        let determinant = xx * tt - xt * xt;
        if determinant < TOLD_APART * xx * tt {
            return None;
        }
        let matrix = [tt / determinant, xx / determinant, -xt / determinant];
        let radius_mm = matrix[0] * xg + matrix[2] * tg;
        let longer_mm = matrix[2] * xg + matrix[1] * tg;
        let off = |[x, t, g]: &[f64; 3]| g - radius_mm * x - longer_mm * t;
        let dof = u32::try_from(equations.len() - 2).unwrap_or(u32::MAX);
        let scatter_mm = scatter_of(sum(&|e| off(e) * off(e)), dof, rounding);
        bounds::RADIUS.length(mm(radius_mm)).ok()?;
        Some(Stretch { radius_mm, longer_mm, matrix, scatter_mm, dof })
    }

    /// Radius of the arcs, free of what the stretch does to lengths.
    #[must_use]
    pub fn radius(&self) -> Length {
        mm(self.radius_mm)
    }

    /// Its standard error; None for two pieces, which any two figures fit.
    #[must_use]
    pub fn radius_error(&self) -> Option<Length> {
        (self.dof > 0).then(|| mm(self.scatter_mm * sqrt(self.matrix[0])))
    }

    /// How much longer an arc is than the tube that went into it, as a share of the arc; negative where it is shorter.
    #[must_use]
    pub fn share(&self) -> Ratio {
        ratio(self.longer_mm / self.radius_mm)
    }

    /// The interval of the share at a chance (Fieller's); None for two pieces, and where the pieces say so little that it
    /// has no end. An interval that holds 0 means that no stretch has been shown.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE` for the chance.
    pub fn share_interval(&self, chance: f64) -> Result<Option<[Ratio; 2]>, Error> {
        let factor = factor(chance, self.dof)? * self.scatter_mm;
        if self.dof == 0 {
            return Ok(None);
        }
        // All shares s with |longer - s radius| no more than the half width of that difference: p s^2 - 2 q s + r <= 0.
        let [radius, longer, both] = self.matrix.map(|part| part * factor * factor);
        let p = self.radius_mm * self.radius_mm - radius;
        let q = self.radius_mm * self.longer_mm - both;
        let r = self.longer_mm * self.longer_mm - longer;
        let under = q * q - p * r;
        if p <= 0.0 || under < 0.0 {
            return Ok(None);
        }
        Ok(Some([(q - sqrt(under)) / p, (q + sqrt(under)) / p].map(ratio)))
    }
}

fn factor(chance: f64, dof: u32) -> Result<f64, Error> {
    let chance = bounds::CHANCE.ratio(ratio(chance))?.value;
    Ok(if dof > 0 { student_both_sides(chance, dof) } else { f64::NAN })
}
