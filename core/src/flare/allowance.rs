//! How much tube a flare takes. Three lengths are kept apart: what stands out before forming (stick-out), how much shorter
//! the tube gets tip to tip (net shortening), and what is added for safety (spare).
//!
//! Three ways give them: the geometry of the finished form, a rule of the trade, and a test piece of the user's own, which
//! wins. Geometry follows the middle of the wall: out along the first leaf, around the fold, in along the second. Real wall
//! stretches and thins on the way, which nobody knows beforehand, so it is computed under three assumptions.

use super::{Flare, FlareTrial};
use crate::bounds;
use crate::code::Code;
use crate::error::Error;
use crate::math::{cos, sin, sqrt};
use crate::problem::{Ledger, Part, Problem, Value};
use crate::source::{Checked, Source};
use crate::tube::with_bore;
use crate::units::{Length, mm, to_mm};
use std::f64::consts::PI;

/// What the wall does while it is widened.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Stretch {
    /// The middle of the wall keeps its length; the wall thins in step with the widening.
    KeepsLength,
    /// The wall thins as under pure hoop tension.
    Uniaxial,
    /// The wall keeps its thickness; the length shrinks in step with the widening.
    KeepsWall,
}

/// Three radii and three lengths of the middle of the wall of a finished flare, in mm.
struct Middle {
    /// Leaves: radius at its start and end, and length.
    leaves: [(f64, f64, f64); 2],
    /// Fold: radius of its center, its own radius, and the angles between which it runs, from the axis outward.
    fold: (f64, f64, f64, f64),
    tube: f64,
    height: f64,
}

/// A finished flare by its geometry.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FlareForm {
    flare: Flare,
    stick_out: [f64; 3],
    height: f64,
}

/// The flare's own angle: from the axis to the first leaf.
const DOUBLE_DEG: f64 = 45.0;
/// Half angle of a bubble flare's front cone. Assumed: no public text was seen that gives it.
const BUBBLE_FRONT_DEG: f64 = 57.5;
/// Widest flare in diameters of its tube: those of the public figures are up to 1.5 times as wide (ours, no source).
const MOST_WIDENED: f64 = 2.0;
/// Strips of Simpson's rule along the fold, whose radius changes smoothly; the error is far below a nanometer.
const STRIPS: usize = 32;

impl Stretch {
    /// All assumptions.
    pub const ALL: [Stretch; 3] = [Stretch::KeepsLength, Stretch::Uniaxial, Stretch::KeepsWall];

    /// The name, the same in every language.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Stretch::KeepsLength => "keeps length",
            Stretch::Uniaxial => "uniaxial",
            Stretch::KeepsWall => "keeps wall",
        }
    }

    /// The assumption of a name.
    ///
    /// # Errors
    /// `UNKNOWN_NAME` with the list of names.
    pub fn from_name(name: &str) -> Result<Stretch, Error> {
        super::by_name(name, "stretch", &Stretch::ALL.map(|stretch| (stretch.name(), stretch)))
    }

    /// Tube used for a unit of finished length at a radius that is `ratio` times the tube's.
    fn used(self, ratio: f64) -> f64 {
        match self {
            Stretch::KeepsLength => 1.0,
            Stretch::Uniaxial => sqrt(ratio),
            Stretch::KeepsWall => ratio,
        }
    }
}

/// Integral of a smooth function by Simpson's rule.
fn integral(from: f64, to: f64, f: impl Fn(f64) -> f64) -> f64 {
    let step = (to - from) / STRIPS as f64;
    let mut sum = f(from) + f(to);
    for i in 1..STRIPS {
        sum += if i % 2 == 1 { 4.0 } else { 2.0 } * f(from + step * i as f64);
    }
    sum * step / 3.0
}

impl Middle {
    /// Double 45 degree flare: both leaves along the cone, one wall apart, folded back into the bore.
    fn double(od: f64, wall: f64, diameter: f64) -> Middle {
        let angle = DOUBLE_DEG * PI / 180.0;
        let (s, c) = (sin(angle), cos(angle));
        let tube = (od - wall) / 2.0;
        let fold = diameter / 2.0 - wall;
        let outer = fold + wall / 2.0 * c;
        let first = (outer - tube) / s;
        let inner = (fold - wall / 2.0 * c, od / 2.0 - wall + wall / 2.0 * c);
        Middle {
            leaves: [(tube, outer, first), (inner.0, inner.1, (inner.0 - inner.1) / s)],
            fold: (fold, wall / 2.0, -angle, PI - angle),
            tube,
            height: first * c + wall / 2.0 * s + wall,
        }
    }

    /// Bubble flare: a flat back face, folded into a cone that comes back to the bore.
    fn bubble(od: f64, wall: f64, diameter: f64) -> Middle {
        let front = BUBBLE_FRONT_DEG * PI / 180.0;
        let tube = (od - wall) / 2.0;
        let fold = diameter / 2.0 - wall;
        let turn = PI / 2.0 + front;
        let inner = (fold + wall / 2.0 * sin(turn), od / 2.0 - wall);
        let second = (inner.0 - inner.1) / sin(front);
        let height = wall / 2.0 - wall / 2.0 * cos(turn) + second * cos(front) + wall / 2.0 * sin(front);
        Middle {
            leaves: [(tube, fold, fold - tube), (inner.0, inner.1, second)],
            fold: (fold, wall / 2.0, -PI / 2.0, front),
            tube,
            height,
        }
    }

    fn stick_out(&self, stretch: Stretch) -> f64 {
        let leaf = |(from, to, length): (f64, f64, f64)| {
            length * integral(0.0, 1.0, |t| stretch.used((from + (to - from) * t) / self.tube))
        };
        let (center, radius, from, to) = self.fold;
        // Angles count from the direction outward; the radius at an angle is the center's and its share outward.
        let fold =
            radius * integral(from, to, |angle| stretch.used((center + radius * cos(angle)) / self.tube));
        leaf(self.leaves[0]) + fold + leaf(self.leaves[1])
    }
}

impl FlareForm {
    /// A finished double or bubble flare of a given diameter. The front angle of a bubble flare is an assumption.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE` for the sizes, and where the diameter leaves no room for two leaves; `NOT_KNOWN`
    /// for a form whose geometry is not computed.
    ///
    /// ```
    /// use linewright::flare::{Flare, FlareForm, Stretch};
    /// use linewright::units::{inch, mm, to_mm};
    /// let form = FlareForm::new(Flare::Double45, inch(3.0 / 16.0), inch(0.028), mm(6.9))?;
    /// assert!((to_mm(form.stick_out(Stretch::KeepsLength)) - 3.28).abs() < 0.01);
    /// assert!((to_mm(form.net_shortening(Stretch::KeepsLength)) - 1.35).abs() < 0.01);
    /// # Ok::<(), linewright::Error>(())
    /// ```
    pub fn new(flare: Flare, od: Length, wall: Length, diameter: Length) -> Result<FlareForm, Error> {
        let [od, wall] = with_bore(od, wall)?.map(to_mm);
        let width = to_mm(bounds::FLARE_DIAMETER.length(diameter)?);
        if width > MOST_WIDENED * od {
            let need = Value::text(format!(
                "at most {}, twice the tube: no flare is wider",
                Value::Length(mm(MOST_WIDENED * od))
            ));
            return Err(Error::field(Code::OutOfRange, "diameter", Value::Length(diameter), need));
        }
        let middle = match flare {
            Flare::Double45 => Middle::double(od, wall, width),
            Flare::Bubble => Middle::bubble(od, wall, width),
            Flare::Single37 => {
                let need = Value::text("double-45 or bubble: a single flare keeps its length on the cone");
                return Err(Error::field(Code::NotKnown, "flare", Value::text(flare.name()), need));
            }
        };
        if middle.leaves.iter().any(|(_, _, length)| *length <= 0.0) {
            let need = Value::text("a diameter with room for two leaves beside the bore");
            return Err(Error::field(Code::OutOfRange, "diameter", Value::Length(diameter), need));
        }
        let stick_out = Stretch::ALL.map(|stretch| middle.stick_out(stretch));
        Ok(FlareForm { flare, stick_out, height: middle.height })
    }

    /// The form.
    #[must_use]
    pub fn flare(&self) -> Flare {
        self.flare
    }

    /// Tube that must stand out before forming.
    #[must_use]
    pub fn stick_out(&self, stretch: Stretch) -> Length {
        mm(self.stick_out[stretch as usize])
    }

    /// Height of the finished flare from where the tube starts to widen.
    #[must_use]
    pub fn height(&self) -> Length {
        mm(self.height)
    }

    /// How much shorter the tube gets, tip to tip: stick-out less height.
    #[must_use]
    pub fn net_shortening(&self, stretch: Stretch) -> Length {
        mm(self.stick_out[stretch as usize] - self.height)
    }
}

/// A way to an allowance.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Way {
    /// A test piece of the user's own.
    TestPiece,
    /// The developed length of the finished form.
    Geometry,
    /// A rule of the trade, or the one public figure.
    Rule,
}

impl Way {
    /// The name, the same in every language.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Way::TestPiece => "test piece",
            Way::Geometry => "geometry",
            Way::Rule => "rule",
        }
    }
}

/// What one way says about a flare; None where it says nothing.
#[derive(Debug, Clone, PartialEq)]
pub struct Allowance {
    /// The way.
    pub way: Way,
    /// Stick-out, least and most.
    pub stick_out: Option<[Length; 2]>,
    /// Net shortening, least and most.
    pub net_shortening: Option<[Length; 2]>,
    /// Cut allowance as a whole, shortening and spare together.
    pub cut_allowance: Option<Length>,
    /// Where it comes from.
    pub source: Source,
}

/// Length to add for a bubble flare: the one public figure seen. Another manual gives 12 to 14 mm at the ends.
pub const BUBBLE_ADDED_MM: f64 = 3.2;
/// Walls that it is for: 0.7 mm and 0.028 in.
const BUBBLE_WALL_MM: std::ops::RangeInclusive<f64> = 0.65..=0.75;
/// Outside diameters that the two figures are given for: 4.75 mm and 3/16 in. On 4.7 mm the geometry goes beyond 5 mm.
const RULE_OD_MM: std::ops::RangeInclusive<f64> = 4.745..=4.8;
/// Thickest wall in mm that the 5 mm are given for: up to it they are above every stick-out of the geometry, up to the
/// largest flare of the public figures, 7.1 mm. On a thicker wall they are still above the shortening.
const RULE_WALL_MM: f64 = 1.1;
/// Largest flare of the public figures for that tube, in mm, and so of the rule; a little more for rounding.
const RULE_FLARE_MM: f64 = 7.1 + 1e-9;
/// Tube added for a double flare on 3/16 in tube, shortening and spare together: common practice, no source. It is above
/// every stick-out and shortening that the geometry gives for that tube with walls up to 1.1 mm.
pub const DOUBLE_ADDED_MM: f64 = 5.0;

/// What a cut gets for one flare beyond its measured shortening: what the user states, or for a double flare what the 5 mm
/// leave; both together where a double flare was not measured. None where nothing is known. What is assumed is entered,
/// with the tube that the 5 mm are known for. A tube is its outside diameter, and its wall where that is known.
pub(crate) fn spare(
    flare: Flare,
    (net, stated): (Option<Length>, Option<Length>),
    (od, wall): (Length, Option<Length>),
    ledger: &mut Ledger,
) -> Option<Length> {
    let is_double = flare == Flare::Double45;
    let scope = match wall {
        _ if !is_double => "none is added unless it is stated",
        Some(wall) if has_double_rule(od, wall) => "for 3/16 in tube with a wall up to 1.1 mm",
        None if RULE_OD_MM.contains(&to_mm(od)) => {
            "for 3/16 in tube with a wall up to 1.1 mm; can be short on a thicker one"
        }
        _ => "for 3/16 in tube with a wall up to 1.1 mm; can be short on this one",
    };
    let practice = || Source::new("", scope, Checked::CommonPractice);
    match (net, stated) {
        (Some(_), Some(stated)) => Some(stated),
        (Some(net), None) => {
            let spare = mm(if is_double { (DOUBLE_ADDED_MM - to_mm(net)).max(0.0) } else { 0.0 });
            ledger.assume(
                &format!("spare for one {} flare beyond its shortening", flare.name()),
                Value::Length(spare),
                practice(),
            );
            Some(spare)
        }
        (None, stated) if is_double => {
            let usual = mm(DOUBLE_ADDED_MM);
            ledger.assume(
                "tube for one double-45 flare, shortening and spare together",
                Value::Length(usual),
                practice(),
            );
            Some(usual + stated.unwrap_or(mm(0.0)))
        }
        (None, _) => None,
    }
}

/// Whether the 5 mm for a double flare are a rule for this tube.
pub(crate) fn has_double_rule(od: Length, wall: Length) -> bool {
    RULE_OD_MM.contains(&to_mm(od)) && to_mm(wall) <= RULE_WALL_MM
}

/// Every way to the allowance of a flare, the one that wins first: the test piece, where there is one.
///
/// The geometry is given for the diameters of `sizes`, which come from [`super::known_diameters`] or from the user's own
/// part.
///
/// # Errors
/// As [`FlareForm::new`], except that a form without geometry, or without a diameter, only loses that way; `OUT_OF_RANGE`
/// for a largest diameter below the smallest; `NOT_KNOWN` where no way says anything.
///
/// ```
/// use linewright::flare::{Flare, allowances, known_diameters};
/// use linewright::units::{inch, to_mm};
/// let (od, wall) = (inch(3.0 / 16.0), inch(0.028));
/// let ways = allowances(Flare::Double45, od, wall, known_diameters(Flare::Double45, od, wall), None)?;
/// let rule = ways.iter().find_map(|way| way.cut_allowance).unwrap();
/// let most = ways.iter().find_map(|way| way.stick_out).unwrap()[1];
/// assert!(to_mm(rule) > to_mm(most));
/// # Ok::<(), linewright::Error>(())
/// ```
pub fn allowances(
    flare: Flare,
    od: Length,
    wall: Length,
    sizes: Option<[Length; 2]>,
    trial: Option<&FlareTrial>,
) -> Result<Vec<Allowance>, Error> {
    let [od, wall] = with_bore(od, wall)?;
    if let Some([least, most]) = sizes
        && most < least
    {
        let need = Value::text(format!("at least {}, the smallest one", Value::Length(least)));
        return Err(Error::field(Code::OutOfRange, "most", Value::Length(most), need));
    }
    let mut ways = Vec::new();
    if let Some(trial) = trial {
        let net = trial.net_shortening();
        ways.push(Allowance {
            way: Way::TestPiece,
            stick_out: None,
            net_shortening: Some([net, net]),
            cut_allowance: None,
            source: Source::new("the user's own test piece", "", Checked::Seen),
        });
    }
    if let (Some([least, most]), true) = (sizes, flare != Flare::Single37) {
        let forms = [FlareForm::new(flare, od, wall, least)?, FlareForm::new(flare, od, wall, most)?];
        let range = |of: &dyn Fn(&FlareForm, Stretch) -> Length| {
            let all: Vec<f64> =
                forms.iter().flat_map(|form| Stretch::ALL.map(|stretch| to_mm(of(form, stretch)))).collect();
            let least = all.iter().copied().fold(f64::INFINITY, f64::min);
            let most = all.iter().copied().fold(f64::NEG_INFINITY, f64::max);
            Some([mm(least), mm(most)])
        };
        let what = match flare {
            Flare::Bubble => "geometry; the front angle of 57.5 degrees is assumed, no public text was seen",
            _ => "geometry of the finished form, three assumptions about the wall",
        };
        ways.push(Allowance {
            way: Way::Geometry,
            stick_out: range(&|form, stretch| form.stick_out(stretch)),
            net_shortening: range(&|form, stretch| form.net_shortening(stretch)),
            cut_allowance: None,
            source: Source::new(what, "", Checked::Computed),
        });
    }
    // Both figures are known for brake tube of 4.75 mm and 3/16 in alone; on a larger one they can be short.
    let is_brake_tube = RULE_OD_MM.contains(&to_mm(od));
    let is_usual_size = sizes.is_none_or(|[_, most]| to_mm(most) <= RULE_FLARE_MM);
    let is_bubble_tube = is_brake_tube && BUBBLE_WALL_MM.contains(&to_mm(wall));
    let rule = match flare {
        _ if !is_brake_tube => None,
        Flare::Double45 if !has_double_rule(od, wall) || !is_usual_size => None,
        Flare::Double45 => {
            Some((DOUBLE_ADDED_MM, Source::new("", "for 3/16 in tube", Checked::CommonPractice)))
        }
        Flare::Bubble if !is_bubble_tube => None,
        Flare::Bubble => {
            let text = "one maker's manual; another gives 12 to 14 mm";
            Some((BUBBLE_ADDED_MM, Source::new(text, "length to add for each flare", Checked::Seen)))
        }
        Flare::Single37 => None,
    };
    if let Some((added, source)) = rule {
        ways.push(Allowance {
            way: Way::Rule,
            stick_out: None,
            net_shortening: None,
            cut_allowance: Some(mm(added)),
            source,
        });
    }
    if ways.is_empty() {
        let tube = Value::text(format!("{} flare on {} tube", flare.name(), Value::Length(od)));
        return Err(Error::from(
            Problem::new(Code::NotKnown, Part::Field("flare".to_owned()))
                .got(tube)
                .need(Value::text(match flare {
                    Flare::Single37 => "a test piece: the geometry of this flare is not computed",
                    _ => "a test piece, or the diameter of the finished flare",
                }))
                .why("no public figure was seen for this flare on this tube")
                .fix("measure a piece of tube before and after it is flared"),
        ));
    }
    Ok(ways)
}
