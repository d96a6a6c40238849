//! The wall after a bend: thinner outside, thicker inside, and a section that is no longer round.
//!
//! How far the wall thins depends on how freely it may shrink along the hoop. Two extremes bound it: the hoop keeps its
//! length (plane strain, volume kept: t R / (R + r)), or it shrinks as freely as a bar in tension (t sqrt(R / (R + r))).
//! Inside the bend the signs turn. Derived here, no test on such tube was seen; a former that drags on the tube thins it
//! further than either.

mod rules;
mod section;
mod wrinkling;

pub use rules::{
    Measure, RadiusRule, SectionLimit, WallReserve, radius_rules, section_limits, wall_reserves,
};
pub use section::{FlattenedSection, Kinematics};
pub use wrinkling::FreeWrinkling;

use crate::bounds;
use crate::code::Code;
use crate::error::{Error, by_name};
use crate::math::sqrt;
use crate::problem::Value;
use crate::tube::Tube;
use crate::units::{Length, Ratio, mm, ratio, to_mm};

/// A place around the section of a bend.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Place {
    /// Outside of the bend.
    Extrados,
    /// Inside of the bend.
    Intrados,
    /// Half way between, at the center line's radius.
    Side,
}

impl Place {
    /// All places.
    pub const ALL: [Place; 3] = [Place::Extrados, Place::Intrados, Place::Side];

    /// The name, the same in every language.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Place::Extrados => "extrados",
            Place::Intrados => "intrados",
            Place::Side => "side",
        }
    }

    /// The one of a name; case does not matter.
    ///
    /// # Errors
    /// `UNKNOWN_NAME` with the list of names.
    pub fn from_name(name: &str) -> Result<Place, Error> {
        by_name("place", name, &Place::ALL, Place::name)
    }
}

/// How freely the hoop of the section follows the stretch.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Thinning {
    /// The hoop keeps its length: all of the stretch comes out of the wall.
    PlaneStrain,
    /// The hoop shrinks as freely as the wall: half of it does.
    Uniaxial,
}

impl Thinning {
    /// Both extremes.
    pub const ALL: [Thinning; 2] = [Thinning::PlaneStrain, Thinning::Uniaxial];

    /// The name, the same in every language.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Thinning::PlaneStrain => "plane strain",
            Thinning::Uniaxial => "uniaxial",
        }
    }

    /// The one of a name; case does not matter.
    ///
    /// # Errors
    /// `UNKNOWN_NAME` with the list of names.
    pub fn from_name(name: &str) -> Result<Thinning, Error> {
        by_name("thinning", name, &Thinning::ALL, Thinning::name)
    }
}

/// Smallest and largest value of a figure that two assumptions bound.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LengthRange {
    /// Smallest.
    pub least: Length,
    /// Largest.
    pub most: Length,
}

/// The wall of a tube bent to a center-line radius.
///
/// ```
/// use linewright::bend::wall::BentWall;
/// use linewright::units::{inch, mm, to_mm};
/// use linewright::{Material, Tube};
/// let tube = Tube::new(inch(3.0 / 16.0), inch(0.028), Material::LowCarbonSteel)?;
/// // Three diameters: the outside keeps 6/7 of its wall or more.
/// let bent = BentWall::new(&tube, mm(14.2875))?;
/// assert!((to_mm(bent.extrados().least) - 0.7112 * 6.0 / 7.0).abs() < 1e-12);
/// assert!(to_mm(bent.extrados().most) < 0.7112 && to_mm(bent.intrados().least) > 0.7112);
/// # Ok::<(), linewright::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BentWall {
    od_mm: f64,
    wall_mm: f64,
    radius_mm: f64,
    shift_mm: f64,
}

/// Wall at a fiber whose distance from the bend's center is `fiber`, neutral at `neutral`.
fn wall_at(wall: f64, neutral: f64, fiber: f64, thinning: Thinning) -> f64 {
    match thinning {
        Thinning::PlaneStrain => wall * neutral / fiber,
        Thinning::Uniaxial => wall * sqrt(neutral / fiber),
    }
}

impl BentWall {
    /// A tube bent to a center-line radius. The neutral axis lies on the center line.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE`, also for a radius of no more than half the tube.
    pub fn new(tube: &Tube, radius: Length) -> Result<BentWall, Error> {
        BentWall::of(tube.od(), tube.wall(), radius)
    }

    /// The same for a diameter and a wall without a material.
    pub(super) fn of(od: Length, wall: Length, radius: Length) -> Result<BentWall, Error> {
        let radius_mm = to_mm(bounds::HELD_RADIUS.length(radius)?);
        let od_mm = to_mm(od);
        if radius_mm <= od_mm / 2.0 {
            let need = Value::text(format!("more than half the tube, {}", Value::Length(od / 2.0)));
            return Err(Error::field(Code::OutOfRange, "radius", Value::Length(radius), need));
        }
        Ok(BentWall { od_mm, wall_mm: to_mm(wall), radius_mm, shift_mm: 0.0 })
    }

    /// With the neutral axis moved toward the inside of the bend by `shift`; a negative one, as from pushing the tube into
    /// the bend's outside, moves it outward.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE`, also where it would leave the tube.
    pub fn with_neutral_shift(mut self, shift: Length) -> Result<BentWall, Error> {
        let shift_mm = to_mm(bounds::NEUTRAL_SHIFT.length(shift)?);
        if shift_mm.abs() >= self.od_mm / 2.0 {
            let need = Value::text("less than half the tube");
            return Err(Error::field(Code::OutOfRange, "neutral_shift", Value::Length(shift), need));
        }
        self.shift_mm = shift_mm;
        Ok(self)
    }

    /// With the neutral axis where a thin, perfectly plastic tube of plane-strain wall has it without any pull along it:
    /// moved inward by r^2 / R, r the radius of the middle of the wall. There the thicker inside carries what the thinner
    /// outside does. Derived here; pull from a dragging tool moves it further.
    #[must_use]
    pub fn with_plastic_neutral_axis(mut self) -> BentWall {
        let middle = (self.od_mm - self.wall_mm) / 2.0;
        self.shift_mm = middle * middle / self.radius_mm;
        self
    }

    /// By how much the neutral axis lies inside the center line.
    #[must_use]
    pub fn neutral_shift(&self) -> Length {
        mm(self.shift_mm)
    }

    /// Center-line radius.
    #[must_use]
    pub fn radius(&self) -> Length {
        mm(self.radius_mm)
    }

    /// Distance of the outer surface from the bend's center, and of the neutral axis.
    fn fibers(&self, place: Place) -> (f64, f64) {
        let half = self.od_mm / 2.0;
        let fiber = match place {
            Place::Extrados => self.radius_mm + half,
            Place::Intrados => self.radius_mm - half,
            Place::Side => self.radius_mm,
        };
        (fiber, self.radius_mm - self.shift_mm)
    }

    /// Wall at a place under an assumption, taken at the outer surface, where it is most extreme.
    #[must_use]
    pub fn wall(&self, place: Place, thinning: Thinning) -> Length {
        let (fiber, neutral) = self.fibers(place);
        mm(wall_at(self.wall_mm, neutral, fiber, thinning))
    }

    /// Smallest and largest wall at a place over both assumptions.
    #[must_use]
    pub fn range(&self, place: Place) -> LengthRange {
        let [a, b] = Thinning::ALL.map(|thinning| self.wall(place, thinning));
        if to_mm(a) < to_mm(b) {
            LengthRange { least: a, most: b }
        } else {
            LengthRange { least: b, most: a }
        }
    }

    /// Smallest and largest wall outside the bend.
    #[must_use]
    pub fn extrados(&self) -> LengthRange {
        self.range(Place::Extrados)
    }

    /// Smallest and largest wall inside the bend.
    #[must_use]
    pub fn intrados(&self) -> LengthRange {
        self.range(Place::Intrados)
    }

    /// Stretch of the outermost surface, 0.1 for a tenth; to be held against what the metal takes before it breaks.
    #[must_use]
    pub fn outer_stretch(&self) -> Ratio {
        let (fiber, neutral) = self.fibers(Place::Extrados);
        ratio(fiber / neutral - 1.0)
    }
}
