//! Stress in the wall of an ideal cylinder under pressure, straight or bent, and the pressure at which it meets a strength
//! divided by a factor. Strength, factor and their source are the caller's; this library has none of its own.
//!
//! Boardman's is for walls up to a sixth of the diameter, and is refused beyond: there it meets Lame's (both give 2.6 times
//! the pressure), and with a thicker wall it would say more than Lame's does. The same limit, t < D/6, stands before the
//! formula with 0.4 in ASME B31.3 paragraph 304.1.2 (the code was not seen; a reply of its committee, interpretation 2-11, was,
//! as quoted on a public page).
//!
//! What comes out is about a cylinder, not about a line: see [`EXCLUDES`]. It is never on a card, and no plan uses it.
//!
//! | theory | strength is met at | it says |
//! |---|---|---|
//! | Barlow | 2 S t / D | thin wall, on the outside diameter: low |
//! | Boardman | 2 S t / (D - 0.8 t) | thin wall, corrected |
//! | Lame | S (D^2 - d^2) / (D^2 + d^2) | hoop stress at the bore, elastic |
//! | Tresca | S ln(D / d) | the whole wall yields, largest shear |
//! | von Mises | 2 / sqrt(3) S ln(D / d) | the whole wall yields, shear energy |
//!
//! In a bend the stress is that of a ring-shaped shell: the straight one's times (2R - r) / (2 (R - r)) inside and
//! (2R + r) / (2 (R + r)) outside, r half the diameter; ASME B31.3 paragraph 304.2.1 prints the same as
//! (4 R/D - 1) / (4 R/D - 2) and (4 R/D + 1) / (4 R/D + 2) (seen in a scan). Bending also thins and thickens the wall,
//! see [`wall`](crate::bend::wall); with a hoop that keeps its length the two give 1 + D / (4 R) outside.

mod factors;
mod tolerance;

pub use factors::{BendFactors, ovality_amplification};
pub use tolerance::{SizeTolerance, size_tolerances};

use factors::shell_factor;

use super::wall::{BentWall, Place, Thinning, at_most};
use crate::bounds;
use crate::code::Code;
use crate::error::{Error, by_name};
use crate::math::{ln, sqrt};
use crate::problem::{Part, Problem, Value};
use crate::source::{Checked, Source};
use crate::tube::Tube;
use crate::units::{Length, Pressure, Ratio, mm, mpa, ratio, to_mm, to_mpa};
use std::fmt;

/// Thickest wall as a share of the diameter that Boardman's formula is for; the front of this module says why.
const BOARDMAN: f64 = 1.0 / 6.0;
/// By how much a share may be above that because of rounding: 6 x 1 mm is a sixth.
const ROUNDING: f64 = 1e-9;

/// What an ideal cylinder's pressure leaves out.
pub const EXCLUDES: &str = "an ideal cylinder: without flares, joints, corrosion, dents, wear, temperature and fatigue; \
                            not a statement that a line may be used at this pressure";

/// A theory of a cylinder's strength.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Theory {
    /// Thin wall, on the outside diameter.
    Barlow,
    /// Thin wall, on the outside diameter less 0.8 walls; for walls up to a sixth of the diameter.
    Boardman,
    /// Elastic hoop stress at the bore.
    Lame,
    /// The whole wall yields by the largest shear stress.
    Tresca,
    /// The whole wall yields by the shear energy.
    VonMises,
}

impl Theory {
    /// All theories.
    pub const ALL: [Theory; 5] =
        [Theory::Barlow, Theory::Boardman, Theory::Lame, Theory::Tresca, Theory::VonMises];

    /// The name, the same in every language.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Theory::Barlow => "Barlow",
            Theory::Boardman => "Boardman",
            Theory::Lame => "Lame",
            Theory::Tresca => "Tresca",
            Theory::VonMises => "von Mises",
        }
    }

    /// The one of a name; case does not matter.
    ///
    /// # Errors
    /// `UNKNOWN_NAME` with the list of names.
    pub fn from_name(name: &str) -> Result<Theory, Error> {
        by_name("theory", name, &Theory::ALL, Theory::name)
    }
}

/// A strength, what it is divided by, and who says so: all three the caller's.
#[derive(Debug, Clone, PartialEq)]
pub struct Strength {
    value: Pressure,
    factor: Ratio,
    source: Source,
}

impl Strength {
    /// A strength and what it is divided by; 1 leaves it whole. The source covers both.
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE`; `FIELD_MISSING` without a source.
    pub fn new(value: Pressure, factor: Ratio, source: &str) -> Result<Strength, Error> {
        if source.trim().is_empty() {
            return Err(Problem::new(Code::FieldMissing, Part::Field("strength_source".to_owned()))
                .need(Value::text("where strength and factor were read"))
                .into());
        }
        Ok(Strength {
            value: bounds::STRENGTH.pressure(value)?,
            factor: bounds::FACTOR.ratio(factor)?,
            source: Source::new(source, "", Checked::SecondHand),
        })
    }

    /// The strength, undivided.
    #[must_use]
    pub fn value(&self) -> Pressure {
        self.value
    }

    /// What it is divided by.
    #[must_use]
    pub fn factor(&self) -> Ratio {
        self.factor
    }

    /// Who says so.
    #[must_use]
    pub fn source(&self) -> &Source {
        &self.source
    }

    fn divided_mpa(&self) -> f64 {
        to_mpa(self.value) / self.factor.value
    }
}

/// Stress per pressure in a straight cylinder of outside diameter `od` and a wall that leaves a bore.
fn stress_per_pressure(theory: Theory, od: f64, wall: f64) -> f64 {
    let bore = od - 2.0 * wall;
    match theory {
        Theory::Barlow => od / (2.0 * wall),
        Theory::Boardman => (od - 0.8 * wall) / (2.0 * wall),
        // D^2 - d^2 written as a product keeps its digits for a thin wall.
        Theory::Lame => (od * od + bore * bore) / (2.0 * wall * (od + bore)),
        Theory::Tresca => 1.0 / ln(od / bore),
        Theory::VonMises => sqrt(3.0) / (2.0 * ln(od / bore)),
    }
}

/// An ideal cylinder: a tube at its worst size, straight or bent.
///
/// ```
/// use linewright::bend::pressure::{Cylinder, Strength, Theory};
/// use linewright::units::{inch, mm, mpa, ratio, to_mpa};
/// use linewright::{Material, Tube};
/// let tube = Tube::new(inch(3.0 / 16.0), inch(0.028), Material::LowCarbonSteel)?;
/// let strength = Strength::new(mpa(290.0), ratio(4.0), "my choice: tensile strength by ISO 4038, divided by 4")?;
/// let straight = Cylinder::new(&tube);
/// let ideal = straight.ideal_cylinder_pressure(Theory::Lame, &strength)?;
/// assert!((to_mpa(ideal.pressure()) - 98.774 / 4.0).abs() < 1e-3);
/// assert!(ideal.to_string().contains("without flares, joints, corrosion"));
/// // The worst wall, and a bend of three diameters, both lower it.
/// let worst = straight.with_tolerances(inch(0.003), inch(0.005))?.bent(mm(14.2875))?;
/// assert!(to_mpa(worst.ideal_cylinder_pressure(Theory::Lame, &strength)?.pressure()) < 18.0);
/// # Ok::<(), linewright::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cylinder {
    od_mm: f64,
    wall_mm: f64,
    bend: Option<BentWall>,
}

/// A stress in a bend or a straight, and where it is.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Worst {
    per_pressure: f64,
    place: Option<Place>,
    wall_mm: f64,
}

impl Cylinder {
    /// A straight cylinder of the tube's nominal size.
    #[must_use]
    pub fn new(tube: &Tube) -> Cylinder {
        Cylinder { od_mm: to_mm(tube.od()), wall_mm: to_mm(tube.wall()), bend: None }
    }

    /// At its worst size: the diameter larger by `od_plus`, the wall thinner by `wall_minus`. Wall that was lost to corrosion
    /// or filing can be counted in.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE`, also where no wall is left, and for a bend that the size does not leave possible.
    pub fn with_tolerances(mut self, od_plus: Length, wall_minus: Length) -> Result<Cylinder, Error> {
        self.od_mm += to_mm(bounds::SIZE_TOLERANCE.length(od_plus)?);
        let left = self.wall_mm - to_mm(bounds::SIZE_TOLERANCE.length(wall_minus)?);
        if left < bounds::WALL.min {
            let need = Value::text(format!("a wall of at least {} mm left", bounds::WALL.min));
            return Err(Error::field(Code::OutOfRange, "wall_minus", Value::Length(wall_minus), need));
        }
        self.wall_mm = left;
        if let Some(bent) = self.bend {
            let resized = BentWall::of(mm(self.od_mm), mm(left), bent.radius())?;
            self.bend = Some(resized.with_neutral_shift(bent.neutral_shift())?);
        }
        Ok(self)
    }

    /// Bent to a center-line radius, with the neutral axis on the center line.
    ///
    /// # Errors
    /// As [`BentWall::new`].
    pub fn bent(mut self, radius: Length) -> Result<Cylinder, Error> {
        self.bend = Some(BentWall::of(mm(self.od_mm), mm(self.wall_mm), radius)?);
        Ok(self)
    }

    /// With the bend's neutral axis moved inward, which thins the outside further.
    ///
    /// # Errors
    /// As [`BentWall::with_neutral_shift`]; `FIELD_MISSING` for a straight cylinder.
    pub fn with_neutral_shift(mut self, shift: Length) -> Result<Cylinder, Error> {
        let Some(bent) = self.bend else {
            return Err(Problem::new(Code::FieldMissing, Part::Field("radius".to_owned()))
                .need(Value::text("a bend before its neutral axis is moved"))
                .into());
        };
        self.bend = Some(bent.with_neutral_shift(shift)?);
        Ok(self)
    }

    /// Where the stress is largest, by a theory that is for walls so thick.
    fn worst(&self, theory: Theory) -> Result<Worst, Error> {
        let worst = self.worst_of(theory);
        let most = BOARDMAN * self.od_mm;
        for wall in [self.wall_mm, worst.wall_mm] {
            if theory == Theory::Boardman && wall > most * (1.0 + ROUNDING) {
                let need = format!("at most {}, a sixth of the diameter", at_most(most));
                return Err(Problem::new(Code::OutOfRange, Part::Field("wall".to_owned()))
                    .got(Value::Length(mm(wall)))
                    .need(Value::text(need))
                    .why("for a thicker wall Boardman's formula says more than Lame's")
                    .fix("the theory Lame, which is for any wall")
                    .into());
            }
        }
        Ok(worst)
    }

    /// The same over straight, places around the bend, and both assumptions on its wall.
    fn worst_of(&self, theory: Theory) -> Worst {
        let mut worst = Worst {
            per_pressure: stress_per_pressure(theory, self.od_mm, self.wall_mm),
            place: None,
            wall_mm: self.wall_mm,
        };
        let Some(bent) = self.bend else { return worst };
        for place in Place::ALL {
            for thinning in Thinning::ALL {
                let wall_mm = to_mm(bent.wall(place, thinning));
                let straight = stress_per_pressure(theory, self.od_mm, wall_mm);
                let per_pressure = straight * shell_factor(self.od_mm, to_mm(bent.radius()), place);
                if per_pressure > worst.per_pressure {
                    worst = Worst { per_pressure, place: Some(place), wall_mm };
                }
            }
        }
        worst
    }

    /// The pressure at which the worst place meets the caller's strength divided by the caller's factor. See [`EXCLUDES`].
    ///
    /// In a bend the straight theory is taken with the local wall and times the shell factor; for the two theories of a
    /// wall that yields throughout, where neighbors would help, that is low.
    ///
    /// # Errors
    /// `OUT_OF_RANGE` for [`Theory::Boardman`] where the wall is more than a sixth of the diameter.
    pub fn ideal_cylinder_pressure(
        &self,
        theory: Theory,
        strength: &Strength,
    ) -> Result<IdealCylinderPressure, Error> {
        let worst = self.worst(theory)?;
        Ok(IdealCylinderPressure {
            pressure: mpa(strength.divided_mpa() / worst.per_pressure),
            theory,
            strength: strength.clone(),
            place: worst.place,
            wall: mm(worst.wall_mm),
        })
    }

    /// Stress at a pressure, at the worst place: the hoop stress for the first three theories, the strength that the whole
    /// wall would need for the last two.
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE`, also as [`Cylinder::ideal_cylinder_pressure`].
    pub fn stress(&self, theory: Theory, pressure: Pressure) -> Result<Pressure, Error> {
        let pressure = to_mpa(bounds::PRESSURE.pressure(pressure)?);
        Ok(mpa(pressure * self.worst(theory)?.per_pressure))
    }

    /// How often the stress at a pressure goes into the caller's strength, beside the factor that the caller asked for.
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE`, also for no pressure at all.
    ///
    /// ```
    /// use linewright::bend::pressure::{Cylinder, Strength, Theory};
    /// use linewright::units::{mm, mpa, ratio};
    /// use linewright::{Material, Tube};
    /// let tube = Tube::new(mm(4.75), mm(0.75), Material::LowCarbonSteel)?;
    /// let asked = Strength::new(mpa(290.0), ratio(4.0), "my own choice")?;
    /// let margin = Cylinder::new(&tube).margin(Theory::Lame, mpa(15.0), &asked)?;
    /// assert!((margin.found().value - 7.0).abs() < 0.01 && margin.is_reached());
    /// # Ok::<(), linewright::Error>(())
    /// ```
    pub fn margin(&self, theory: Theory, pressure: Pressure, strength: &Strength) -> Result<Margin, Error> {
        let stress = to_mpa(self.stress(theory, pressure)?);
        if stress <= 0.0 {
            let need = Value::text("more than 0 MPa");
            return Err(Error::field(Code::OutOfRange, "pressure", Value::Pressure(pressure), need));
        }
        Ok(Margin { found: ratio(to_mpa(strength.value) / stress), asked: strength.factor })
    }
}

/// How often a stress goes into a strength, and how often the caller asked for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Margin {
    found: Ratio,
    asked: Ratio,
}

impl Margin {
    /// Strength over stress.
    #[must_use]
    pub fn found(&self) -> Ratio {
        self.found
    }

    /// The caller's factor.
    #[must_use]
    pub fn asked(&self) -> Ratio {
        self.asked
    }

    /// Whether the ideal cylinder has what the caller asked for. It says nothing about a line: see [`EXCLUDES`].
    #[must_use]
    pub fn is_reached(&self) -> bool {
        // What a pressure was computed from is reached by it, but for its rounding.
        self.found.value >= self.asked.value * (1.0 - 1e-12)
    }
}

/// The pressure at which an ideal cylinder meets the caller's strength divided by the caller's factor. It excludes what
/// [`EXCLUDES`] lists, and prints so.
#[derive(Debug, Clone, PartialEq)]
pub struct IdealCylinderPressure {
    pressure: Pressure,
    theory: Theory,
    strength: Strength,
    place: Option<Place>,
    wall: Length,
}

impl IdealCylinderPressure {
    /// The pressure.
    #[must_use]
    pub fn pressure(&self) -> Pressure {
        self.pressure
    }

    /// By which theory.
    #[must_use]
    pub fn theory(&self) -> Theory {
        self.theory
    }

    /// At which strength, divided by what, and who says so.
    #[must_use]
    pub fn strength(&self) -> &Strength {
        &self.strength
    }

    /// Where around a bend; None for a straight.
    #[must_use]
    pub fn place(&self) -> Option<Place> {
        self.place
    }

    /// Wall there.
    #[must_use]
    pub fn wall(&self) -> Length {
        self.wall
    }

    /// What it leaves out.
    #[must_use]
    pub fn excludes(&self) -> &'static str {
        EXCLUDES
    }
}

impl fmt::Display for IdealCylinderPressure {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(
            f,
            "ideal cylinder pressure {:.2} MPa ({}, {} MPa / {}, given by the caller: {}); {EXCLUDES}",
            to_mpa(self.pressure),
            self.theory.name(),
            to_mpa(self.strength.value),
            self.strength.factor.value,
            self.strength.source.text
        )
    }
}
