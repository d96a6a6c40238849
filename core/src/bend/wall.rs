//! The wall after a bend: thinner outside, thicker inside, and a section that is no longer round.
//!
//! How far the wall thins depends on how freely it may shrink along the hoop. Two extremes bound it: the hoop keeps its
//! length (plane strain, volume kept: t R / (R + r)), or it shrinks as freely as a bar in tension (t sqrt(R / (R + r))).
//! Inside the bend the signs turn. Derived here, no test on such tube was seen; a former that drags on the tube thins it
//! further than either.
//!
//! Where it ends (limits of ours). A fiber is taken to at most twice its length, or to half of it: no metal of tube stretches to
//! twice its length without breaking, and a wall pressed to half has kinked; with the neutral axis on the center line that is
//! the inside of a bend of one diameter. And the thickened inside leaves a bore: plane strain counts the whole wall as pressed
//! as its outer surface is, so that t R / (R - r) grows beyond every bound as R nears r, where a wall that keeps its volume
//! cannot; beyond half the diameter the figure means nothing.

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
use crate::problem::{Part, Problem, Value};
use crate::tube::Tube;
use crate::units::{Length, Ratio, mm, ratio, to_mm};

/// Most that a fiber is stretched or pressed, as a ratio of its lengths.
const MOST_STRETCH: f64 = 2.0;
/// By how much a share may be outside its limit because of rounding: a radius of one diameter may be given in another unit.
const ROUNDING: f64 = 1e-9;

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

const NO_BORE: &str = "the thickened inside of the bend would fill the bore";
const TOO_FAR: &str =
    "the outside would be stretched to more than twice its length, or the inside pressed to less than half";

/// A smallest length, printed so that what is printed is long enough.
fn at_least(length_mm: f64) -> String {
    format!("{} mm", (length_mm * 1e4 - 1e-4).ceil() / 1e4)
}

/// A largest length, printed so that what is printed is short enough.
pub(super) fn at_most(length_mm: f64) -> String {
    format!("{} mm", (length_mm * 1e4 + 1e-4).floor() / 1e4)
}

fn refusal(field: &str, got: Length, need: String, why: &str, fix: &str) -> Error {
    let problem = Problem::new(Code::OutOfRange, Part::Field(field.to_owned()));
    // All digits of it: 5.9999 mm is not the 6 mm that are enough.
    let got = Value::text(format!("{} mm", to_mm(got)));
    problem.got(got).need(Value::text(need)).why(why).fix(fix).into()
}

impl BentWall {
    /// A tube bent to a center-line radius. The neutral axis lies on the center line.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE`, also for a radius of less than one diameter, where the inside would be pressed to less
    /// than half its length, and for one at which the thickened inside would fill the bore.
    pub fn new(tube: &Tube, radius: Length) -> Result<BentWall, Error> {
        BentWall::of(tube.od(), tube.wall(), radius)
    }

    /// The same for a diameter and a wall without a material.
    pub(super) fn of(od: Length, wall: Length, radius: Length) -> Result<BentWall, Error> {
        let bent = BentWall::of_unit_wall(od, radius)?;
        let bent = BentWall { wall_mm: to_mm(wall), ..bent };
        if bent.leaves_bore() {
            return Ok(bent);
        }
        let half = bent.od_mm / 2.0;
        let need = format!("more than {}", at_least(half * half / (half - bent.wall_mm)));
        Err(refusal("radius", radius, need, NO_BORE, "a wider radius or a thinner wall"))
    }

    /// The same with a wall of 1 mm, for ratios of walls: whether a bore is left is not asked.
    pub(super) fn of_unit_wall(od: Length, radius: Length) -> Result<BentWall, Error> {
        let radius_mm = to_mm(bounds::HELD_RADIUS.length(radius)?);
        let bent = BentWall { od_mm: to_mm(od), wall_mm: 1.0, radius_mm, shift_mm: 0.0 };
        if radius_mm <= bent.od_mm / 2.0 || !bent.is_stretched_within() {
            let need = format!("at least one diameter of the tube, {}", at_least(bent.od_mm));
            return Err(refusal("radius", radius, need, TOO_FAR, "a wider radius"));
        }
        Ok(bent)
    }

    fn leaves_bore(&self) -> bool {
        to_mm(self.intrados().most) < self.od_mm / 2.0
    }

    fn is_stretched_within(&self) -> bool {
        [Place::Extrados, Place::Intrados].into_iter().all(|place| {
            let (fiber, neutral) = self.fibers(place);
            let most = MOST_STRETCH * (1.0 + ROUNDING);
            fiber <= most * neutral && neutral <= most * fiber
        })
    }

    /// With the neutral axis moved toward the inside of the bend by `shift`; a negative one, as from pushing the tube into
    /// the bend's outside, moves it outward.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE`, also where it would leave the tube, where the outside would be stretched to more than
    /// twice its length or the inside pressed to less than half of it, and where that would fill the bore.
    pub fn with_neutral_shift(mut self, shift: Length) -> Result<BentWall, Error> {
        self.shift_mm = to_mm(bounds::NEUTRAL_SHIFT.length(shift)?);
        let (half, fix) = (self.od_mm / 2.0, "a neutral axis nearer to the center line");
        if self.shift_mm.abs() >= half {
            let need = format!("less than half the tube, {}", at_most(half));
            return Err(refusal("neutral_shift", shift, need, "the neutral axis would leave the tube", fix));
        }
        let (outer, inner) = (self.radius_mm + half, self.radius_mm - half);
        if !self.is_stretched_within() {
            let least = at_least((self.radius_mm - MOST_STRETCH * inner).max(-half));
            let most = at_most((self.radius_mm - outer / MOST_STRETCH).min(half));
            return Err(refusal("neutral_shift", shift, format!("{least} to {most}"), TOO_FAR, fix));
        }
        if !self.leaves_bore() {
            let least = at_least(self.radius_mm - half * inner / self.wall_mm);
            return Err(refusal("neutral_shift", shift, format!("more than {least}"), NO_BORE, fix));
        }
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
