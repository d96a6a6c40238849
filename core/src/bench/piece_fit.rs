//! What test pieces say together: a radius, and with pieces of clearly different angles a stretch, with their uncertainty.

use super::Former;
use super::pieces::{SCATTER_MM, TestPiece};
use crate::bend::gain_mm;
use crate::bounds;
use crate::code::Code;
use crate::error::Error;
use crate::math::sqrt;
use crate::problem::{Part, Problem, Value};
use crate::springback::step_of;
use crate::statistics::{Line, student_both_sides};
use crate::units::{Angle, Length, Ratio, mm, ratio, to_deg, to_mm, to_rad};

/// Squared sine of the angle between the two unknowns below which pieces do not tell them apart (ours, no source): two
/// bends of 80 and 90 degrees have 0.02.
const TOLD_APART: f64 = 0.01;

/// The radius of a former as its test pieces tell it, with its uncertainty. The model: every piece's gain is off by a
/// normal error of the same unknown size, which is taken to be at least what the rounding of lengths, legs and angles makes:
/// pieces read to a millimeter can agree by that alone. Pieces bent to the same angles, within 2 degrees, can all be rounded to
/// the same side, and so can lengths of pieces that were cut alike, so that intervals reach further by what that can make of them. Of pieces bent to different angles it is taken
/// that their legs end anywhere between two marks: intervals then cover on average over such pieces. What may be rounded to one side is added in full, so that intervals of
/// coarsely read pieces mostly cover more often than they say.
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
    /// How far the radius may be off because pieces that are alike are rounded to one side.
    bias_mm: f64,
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
    /// How far the two may be off because pieces that are alike are rounded to one side.
    bias_mm: [f64; 2],
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
        let readings = Readings::new(pieces, radius_mm);
        let scatter_mm = scatter_of(squares, dof, readings.rounding_mm);
        let bias_mm = readings.bias(scatter_mm, |i| equations[i][0] / xx);
        let stretch = Stretch::new(&equations, &readings);
        Ok(PieceFit { radius_mm, square: xx, scatter_mm, bias_mm, dof, stretch })
    }

    /// The radius as formed that makes lengths come out: the one a plan reckons with.
    #[must_use]
    pub fn radius(&self) -> Length {
        mm(self.radius_mm)
    }

    /// Its standard error, of the scatter alone; None for one piece.
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
        let half = self.radius_error().map(|error| factor * to_mm(error) + self.bias_mm);
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
    fn new(equations: &[[f64; 3]], readings: &Readings<'_>) -> Option<Stretch> {
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
        let scatter_mm = scatter_of(sum(&|e| off(e) * off(e)), dof, readings.rounding_mm);
        bounds::RADIUS.length(mm(radius_mm)).ok()?;
        let share = |row: [f64; 2]| move |i: usize| row[0] * equations[i][0] + row[1] * equations[i][1];
        let rows = [[matrix[0], matrix[2]], [matrix[2], matrix[1]]];
        let bias_mm = rows.map(|row| readings.bias(scatter_mm, share(row)));
        Some(Stretch { radius_mm, longer_mm, matrix, scatter_mm, bias_mm, dof })
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
        let factor = factor(chance, self.dof)?;
        if self.dof == 0 {
            return Ok(None);
        }
        // The share s for which s x radius - longer is 0: as a line, the s for which s - (longer + (1 - radius) s) is. By how
        // much that may be off because of rounding grows with s to either side of 0.
        let [radius, longer, both] = self.matrix;
        let [off, off_longer] = self.bias_mm;
        let end = |at: usize, side: f64| {
            [1.0, -1.0].into_iter().find_map(|sign| {
                let line = Line {
                    constant: self.longer_mm + side * off_longer,
                    slope: 1.0 - (self.radius_mm - side * sign * off),
                    matrix: [longer, radius, -both],
                    scatter: self.scatter_mm,
                };
                line.setting_interval(0.0, factor).map(|ends| ends[at]).filter(|end| end * sign >= 0.0)
            })
        };
        Ok(end(0, -1.0).zip(end(1, 1.0)).map(|(low, high)| [ratio(low), ratio(high)]))
    }
}

fn factor(chance: f64, dof: u32) -> Result<f64, Error> {
    let chance = bounds::CHANCE.ratio(ratio(chance))?.value;
    Ok(if dof > 0 { student_both_sides(chance, dof) } else { f64::NAN })
}

/// What the rounding of readings does to a fit.
struct Readings<'a> {
    pieces: &'a [TestPiece],
    radius_mm: f64,
    angle_step: Option<f64>,
    /// Standard deviation of what it adds to a gain, on average over the pieces.
    rounding_mm: f64,
}

impl Readings<'_> {
    fn new(pieces: &[TestPiece], radius_mm: f64) -> Readings<'_> {
        let angles: Vec<f64> = pieces.iter().flat_map(TestPiece::angles).copied().map(to_deg).collect();
        let angle_step = step_of(&angles);
        let square = mean(pieces, |piece| piece.rounding(angle_step, radius_mm));
        Readings { pieces, radius_mm, angle_step, rounding_mm: sqrt(square) }
    }

    /// How far a figure may be off that moves with the gain of each piece by a share, where the gains of pieces that are alike
    /// are all off to the worst side.
    fn bias(&self, scatter_mm: f64, share: impl Fn(usize) -> f64) -> f64 {
        let own = (scatter_mm * scatter_mm - self.rounding_mm * self.rounding_mm).max(0.0);
        #[expect(clippy::cast_precision_loss, reason = "a count of legs")]
        let leg_mm = sqrt(own / mean(self.pieces, |piece| piece.legs().len() as f64));
        let any_other = |i: usize, is: &dyn Fn(&TestPiece) -> bool| {
            self.pieces.iter().enumerate().any(|(j, other)| i != j && is(other))
        };
        let off = |(i, piece): (usize, &TestPiece)| {
            let is_alike = any_other(i, &|other| piece.is_alike(other));
            let bent = if is_alike { piece.bias(self.angle_step, self.radius_mm, leg_mm) } else { 0.0 };
            let is_as_long = is_alike || any_other(i, &|other| piece.is_as_long(other));
            share(i).abs() * (bent + if is_as_long { piece.length_bias() } else { 0.0 })
        };
        self.pieces.iter().enumerate().map(off).sum()
    }
}

fn mean(pieces: &[TestPiece], of: impl Fn(&TestPiece) -> f64) -> f64 {
    #[expect(clippy::cast_precision_loss, reason = "a count of pieces")]
    let count = pieces.len() as f64;
    pieces.iter().map(of).sum::<f64>() / count
}
