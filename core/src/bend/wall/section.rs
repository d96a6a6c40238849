//! A section that bending has flattened: two measures of it, two assumptions on how it flattens, and the bore it leaves.

use crate::bounds;
use crate::code::Code;
use crate::error::{Error, by_name};
use crate::math::sqrt;
use crate::problem::Value;
use crate::tube::Tube;
use crate::units::{Area, Length, Ratio, mm, mm2, ratio, to_mm};
use std::f64::consts::PI;

/// How a section flattens.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Kinematics {
    /// The middle of the wall becomes an ellipse of the same perimeter: the sides bulge, as in free bending.
    PerimeterKept,
    /// The sides are held at the tube's diameter, as by the groove of a former.
    SidesHeld,
}

impl Kinematics {
    /// Both assumptions.
    pub const ALL: [Kinematics; 2] = [Kinematics::PerimeterKept, Kinematics::SidesHeld];

    /// The name, the same in every language.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Kinematics::PerimeterKept => "perimeter kept",
            Kinematics::SidesHeld => "sides held",
        }
    }

    /// The one of a name; case does not matter.
    ///
    /// # Errors
    /// `UNKNOWN_NAME` with the list of names.
    pub fn from_name(name: &str) -> Result<Kinematics, Error> {
        by_name("kinematics", name, &Kinematics::ALL, Kinematics::name)
    }
}

/// A flattened section of a tube. Ovality and flattening are different measures of it, and one turns into the other only
/// under an assumption.
///
/// ```
/// use linewright::bend::wall::{FlattenedSection, Kinematics};
/// use linewright::units::{inch, ratio};
/// use linewright::{Material, Tube};
/// let tube = Tube::new(inch(3.0 / 16.0), inch(0.028), Material::LowCarbonSteel)?;
/// // Flattened to 75 % of its diameter: an ovality of 25 % in a groove, of 47 % in free bending.
/// let held = FlattenedSection::from_flattening(&tube, ratio(0.75), Kinematics::SidesHeld)?;
/// let free = FlattenedSection::from_flattening(&tube, ratio(0.75), Kinematics::PerimeterKept)?;
/// assert!((held.ovality().value - 0.25).abs() < 1e-12);
/// assert!((free.ovality().value - 0.467).abs() < 5e-4);
/// // The bulging sides keep more of the bore.
/// assert!(free.bore_share().value > held.bore_share().value);
/// # Ok::<(), linewright::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FlattenedSection {
    od_mm: f64,
    wall_mm: f64,
    largest_mm: f64,
    smallest_mm: f64,
}

/// Steps of halving; each settles one binary digit.
const HALVINGS: u32 = 60;

/// Perimeter of an ellipse by the arithmetic-geometric mean. Eight steps are far beyond what a double can show.
fn perimeter(a: f64, b: f64) -> f64 {
    let (mut x, mut y) = (a, b);
    let mut sum = a * a;
    let mut weight = 0.5;
    let mut c2 = a * a - b * b;
    for _ in 0..8 {
        sum -= weight * c2;
        let (mean, root) = ((x + y) / 2.0, sqrt(x * y));
        let c = (x - y) / 2.0;
        c2 = c * c;
        weight *= 2.0;
        (x, y) = (mean, root);
    }
    2.0 * PI * sum / x
}

/// The place between two others where a rising function passes zero.
fn crossing(low: f64, high: f64, rising: impl Fn(f64) -> f64) -> f64 {
    let (mut low, mut high) = (low, high);
    for _ in 0..HALVINGS {
        let middle = low + (high - low) / 2.0;
        if rising(middle) < 0.0 {
            low = middle;
        } else {
            high = middle;
        }
    }
    low + (high - low) / 2.0
}

/// Half axes of the middle of the wall: the large one for a small one, with the perimeter of a circle of radius `middle`.
fn long_half(middle: f64, short: f64) -> f64 {
    // An ellipse is longer than twice its long axis, so a quarter of the circle's perimeter is never reached.
    crossing(middle, middle * PI / 2.0, |long| perimeter(long, short) - 2.0 * PI * middle)
}

impl FlattenedSection {
    fn new(tube: &Tube, largest_mm: f64, smallest_mm: f64, field: &str, got: Ratio) -> Result<Self, Error> {
        let (od_mm, wall_mm) = (to_mm(tube.od()), to_mm(tube.wall()));
        if smallest_mm <= 2.0 * wall_mm {
            let need = Value::text("a section with a bore left in it");
            return Err(Error::field(Code::OutOfRange, field, Value::Ratio(got), need));
        }
        Ok(FlattenedSection { od_mm, wall_mm, largest_mm, smallest_mm })
    }

    /// A section by its flattening: smallest diameter as a share of the tube's, 1 = round.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE`, also where no bore is left.
    pub fn from_flattening(tube: &Tube, flattening: Ratio, kinematics: Kinematics) -> Result<Self, Error> {
        let share = bounds::FLATTENING.ratio(flattening)?.value;
        let (od, wall) = (to_mm(tube.od()), to_mm(tube.wall()));
        let smallest = share * od;
        let middle = (od - wall) / 2.0;
        let short = (smallest - wall) / 2.0;
        let largest = match kinematics {
            Kinematics::PerimeterKept if share < 1.0 && short > 0.0 => 2.0 * long_half(middle, short) + wall,
            _ => od,
        };
        FlattenedSection::new(tube, largest, smallest, "flattening", flattening)
    }

    /// A section by its ovality: largest less smallest diameter, as a share of the tube's nominal one, 0 = round.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE`, also where no bore is left.
    pub fn from_ovality(tube: &Tube, ovality: Ratio, kinematics: Kinematics) -> Result<Self, Error> {
        let share = bounds::OVALITY.ratio(ovality)?.value;
        let (od, wall) = (to_mm(tube.od()), to_mm(tube.wall()));
        let apart = share * od;
        let middle = (od - wall) / 2.0;
        let (largest, smallest) = match kinematics {
            Kinematics::SidesHeld => (od, od - apart),
            Kinematics::PerimeterKept if apart > 0.0 => {
                // Half axes differ by half of `apart`; the perimeter rises with the short one.
                let short = crossing(0.0, middle, |short| {
                    let long = short + apart / 2.0;
                    perimeter(long, if short > 0.0 { short } else { f64::MIN_POSITIVE }) - 2.0 * PI * middle
                });
                (2.0 * short + apart + wall, 2.0 * short + wall)
            }
            Kinematics::PerimeterKept => (od, od),
        };
        FlattenedSection::new(tube, largest, smallest, "ovality", ovality)
    }

    /// Largest outside diameter.
    #[must_use]
    pub fn largest(&self) -> Length {
        mm(self.largest_mm)
    }

    /// Smallest outside diameter.
    #[must_use]
    pub fn smallest(&self) -> Length {
        mm(self.smallest_mm)
    }

    /// Largest less smallest diameter.
    #[must_use]
    pub fn out_of_round(&self) -> Length {
        mm(self.largest_mm - self.smallest_mm)
    }

    /// (Dmax - Dmin) / Dnom.
    #[must_use]
    pub fn ovality(&self) -> Ratio {
        ratio((self.largest_mm - self.smallest_mm) / self.od_mm)
    }

    /// Dmin / D.
    #[must_use]
    pub fn flattening(&self) -> Ratio {
        ratio(self.smallest_mm / self.od_mm)
    }

    /// Bore left, taken as an ellipse one wall inside the largest and smallest diameter. A wall of quite constant thickness
    /// would leave a little less: 1 % at a flattening to 75 % for 3/16 in tube with a wall of 0.028 in, 3 % for one of 1 mm.
    #[must_use]
    pub fn bore_area(&self) -> Area {
        let wall = 2.0 * self.wall_mm;
        mm2(PI / 4.0 * (self.largest_mm - wall) * (self.smallest_mm - wall))
    }

    /// Bore left as a share of the round tube's.
    #[must_use]
    pub fn bore_share(&self) -> Ratio {
        let wall = 2.0 * self.wall_mm;
        let bore = self.od_mm - wall;
        ratio((self.largest_mm - wall) / bore * ((self.smallest_mm - wall) / bore))
    }

    /// Bore lost as a share of the round tube's.
    #[must_use]
    pub fn bore_loss(&self) -> Ratio {
        ratio(1.0 - self.bore_share().value)
    }
}
