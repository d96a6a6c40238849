//! String and tape only: from one measured length, the number of bends and how it was measured, to a cut length at a
//! stated chance of being long enough.

#[cfg(test)]
mod tests;

use crate::bench::Bench;
use crate::bend::{arc_mm, gain_mm, tangent_mm};
use crate::bounds;
use crate::code::Code;
use crate::error::Error;
use crate::flare::{self, Flare};
use crate::plan::Term;
use crate::problem::{Assumption, Ledger, Part, Problem, Value};
use crate::source::{Checked, Source};
use crate::statistics::normal_quantile;
use crate::units::{Angle, Length, Ratio, Rounding, deg, mm, ratio, round_length, to_deg, to_mm, to_rad};

/// What the string or tape was laid along.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Laid {
    /// Along the middle of the tube, or the length is corrected already.
    CenterLine,
    /// A string round the outside of the bends.
    StringOutside,
    /// A string round the inside of the bends: the only way that reads short.
    StringInside,
    /// A tape from corner to corner of the center line.
    CornerLegs,
    /// A tape over the outer edges, from outer corner to outer corner.
    OuterLegs,
}

impl Laid {
    /// All ways.
    pub const ALL: [Laid; 5] =
        [Laid::CenterLine, Laid::StringOutside, Laid::StringInside, Laid::CornerLegs, Laid::OuterLegs];

    /// The name, the same in every language.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Laid::CenterLine => "center line",
            Laid::StringOutside => "string outside",
            Laid::StringInside => "string inside",
            Laid::CornerLegs => "corner legs",
            Laid::OuterLegs => "outer legs",
        }
    }

    /// The way of a name.
    ///
    /// # Errors
    /// `METHOD_MISSING` for an empty name, `UNKNOWN_NAME` with the list of names.
    pub fn from_name(name: &str) -> Result<Laid, Error> {
        let names = Laid::ALL.map(Laid::name).join(", ");
        let wanted = name.trim().to_lowercase();
        let code = if wanted.is_empty() { Code::MethodMissing } else { Code::UnknownName };
        Laid::ALL.into_iter().find(|laid| laid.name() == wanted).ok_or_else(|| {
            Error::field(code, "laid", Value::text(name), Value::text(format!("one of {names}")))
        })
    }

    /// How much more than the center line it reads over one bend.
    fn over_mm(self, bend: Angle, radius: Length, od: Length) -> f64 {
        let (angle, radius, half) = (to_rad(bend), to_mm(radius), to_mm(od) / 2.0);
        match self {
            Laid::CenterLine => 0.0,
            Laid::StringOutside => arc_mm(half, angle),
            Laid::StringInside => -arc_mm(half, angle),
            Laid::CornerLegs => gain_mm(radius, angle),
            Laid::OuterLegs => gain_mm(radius, angle) + 2.0 * tangent_mm(half, angle),
        }
    }
}

/// One length and what is known about it.
///
/// ```
/// use linewright::tape::{Laid, TapeLength};
/// use linewright::units::{inch, mm, ratio};
/// let tape = TapeLength::new(inch(112.0), 7, Laid::StringOutside, inch(3.0 / 16.0))?;
/// let cut = tape.cut(None, ratio(0.95))?;
/// assert_eq!(cut.rounded(), mm(2846.0));
/// # Ok::<(), linewright::Error>(())
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct TapeLength {
    measured: Length,
    bends: usize,
    laid: Laid,
    od: Length,
    angle: Option<Angle>,
    radius: Option<Length>,
    flares: [Flare; 2],
}

/// The cut length, its terms, and the chance that it is long enough.
#[derive(Debug, Clone, PartialEq)]
pub struct TapeCut {
    terms: Vec<Term>,
    sigma: Length,
    chance: Ratio,
    floor_acts: bool,
    assumptions: Ledger,
}

/// Our measuring model (no source): standard deviation of a length taken by string or tape, and the least margin.
const SHARE_OF_LENGTH: f64 = 0.003;
const PER_BEND_MM: f64 = 2.0;
const ONCE_MM: f64 = 3.0;
const LEAST_MARGIN_MM: f64 = 10.0;
/// Radius where none is known, in outside diameters (common practice for lever formers, no source).
const RADIUS_PER_OD: f64 = 3.0;

impl TapeLength {
    /// A length measured round `bends` bends.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE`.
    pub fn new(measured: Length, bends: usize, laid: Laid, od: Length) -> Result<TapeLength, Error> {
        if bends > bounds::MOST_BENDS {
            return Err(Problem::new(Code::OutOfRange, Part::Field("bends".to_owned()))
                .got(Value::Count(bends))
                .need(Value::text(format!("0 to {} bends", bounds::MOST_BENDS)))
                .into());
        }
        let measured =
            bounds::STRAIGHT.length(measured).map_err(|e| e.at(Part::Field("length".to_owned())))?;
        let od = bounds::OD.length(od)?;
        Ok(TapeLength { measured, bends, laid, od, angle: None, radius: None, flares: [Flare::Double45; 2] })
    }

    /// With all bend angles together, where somebody added them up; otherwise each bend is taken for a right angle.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE`.
    pub fn with_total_angle(mut self, total: Angle) -> Result<TapeLength, Error> {
        self.angle = Some(bounds::TOTAL_ANGLE.angle(total)?);
        Ok(self)
    }

    /// With the centerline radius as formed; otherwise the bench's, or three diameters.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE`.
    pub fn with_radius(mut self, radius: Length) -> Result<TapeLength, Error> {
        self.radius = Some(bounds::RADIUS.length(radius)?);
        Ok(self)
    }

    /// With the flares at A and B; otherwise two double flares.
    #[must_use]
    pub fn with_flares(mut self, a: Flare, b: Flare) -> TapeLength {
        self.flares = [a, b];
        self
    }

    /// The cut length that is long enough with the given chance.
    ///
    /// # Errors
    /// `OUT_OF_RANGE` for a chance outside 0.5 to 0.9999; `UNIT_IMPLAUSIBLE` where the bends alone take more than the
    /// length; `FLARE_NET_UNKNOWN` or `FLARE_TOOL_MISSING` where a flare's need of tube is not known; `NO_CORNER` for legs
    /// round bends of 180 degrees or more.
    pub fn cut(&self, bench: Option<&Bench>, chance: Ratio) -> Result<TapeCut, Error> {
        let chance = bounds::CHANCE.ratio(chance)?;
        let mut assumptions = Ledger::default();
        let radius = self.radius_or_assumed(bench, &mut assumptions);
        let each = self.bend_angle(&mut assumptions);
        self.check_plausible(each, radius)?;
        let over: f64 = (0..self.bends).map(|_| self.laid.over_mm(each, radius, self.od)).sum();
        let measured = to_mm(self.measured);
        let bends = f64::from(u32::try_from(self.bends).unwrap_or(u32::MAX));
        let variance = (SHARE_OF_LENGTH * measured) * (SHARE_OF_LENGTH * measured)
            + bends * (PER_BEND_MM * PER_BEND_MM)
            + ONCE_MM * ONCE_MM;
        let sigma = variance.sqrt();
        let margin = normal_quantile(chance.value) * sigma;
        assumptions.assume(
            "standard deviation of a measured length: 0.3 % of it, 2 mm for each bend and 3 mm, together",
            Value::Length(mm(sigma)),
            Source::new("our own measuring model", "", Checked::CommonPractice),
        );
        assumptions.assume("least margin", Value::Length(mm(LEAST_MARGIN_MM)), Source::common_practice());
        let mut terms = vec![
            Term { what: format!("measured ({})", self.laid.name()), length: self.measured },
            Term { what: format!("correction for {} bends", self.bends), length: mm(0.0 - over) },
        ];
        for (side, flare) in ["A", "B"].into_iter().zip(self.flares) {
            let length = flare_mm(flare, self.od, bench, &mut assumptions)?;
            terms.push(Term { what: format!("{} flare at {side}", flare.name()), length: mm(length) });
        }
        let floor_acts = margin < LEAST_MARGIN_MM;
        terms.push(Term {
            what: format!("margin for a chance of {}", chance.value),
            length: mm(margin.max(LEAST_MARGIN_MM)),
        });
        Ok(TapeCut { terms, sigma: mm(sigma), chance, floor_acts, assumptions })
    }

    fn radius_or_assumed(&self, bench: Option<&Bench>, ledger: &mut Ledger) -> Length {
        if let Some(radius) = self.radius.or(bench.map(|b| b.former().as_formed())) {
            return radius;
        }
        let radius = self.od * RADIUS_PER_OD;
        if matches!(self.laid, Laid::CornerLegs | Laid::OuterLegs) {
            ledger.assume(
                "radius as formed: three diameters",
                Value::Length(radius),
                Source::common_practice(),
            );
        }
        radius
    }

    /// One bend's angle: an equal share of the whole, or a right angle.
    fn bend_angle(&self, ledger: &mut Ledger) -> Angle {
        match (self.angle, self.bends) {
            (_, 0) => deg(0.0),
            (Some(total), bends) => deg(to_deg(total) / f64::from(u32::try_from(bends).unwrap_or(u32::MAX))),
            (None, _) => {
                if self.laid != Laid::CenterLine {
                    ledger.assume("angle of each bend", Value::Angle(deg(90.0)), Source::common_practice());
                }
                deg(90.0)
            }
        }
    }

    fn check_plausible(&self, each: Angle, radius: Length) -> Result<(), Error> {
        if to_deg(each) >= 180.0 && matches!(self.laid, Laid::CornerLegs | Laid::OuterLegs) {
            return Err(Error::field(
                Code::NoCorner,
                "laid",
                Value::Angle(each),
                Value::text("bends below 180 deg"),
            ));
        }
        let arcs: f64 = (0..self.bends).map(|_| arc_mm(to_mm(radius), to_rad(each))).sum();
        if to_mm(self.measured) >= arcs {
            return Ok(());
        }
        let inches = Value::Length(self.measured * 254.0 / 10.0);
        Err(Problem::new(Code::UnitImplausible, Part::Field("length".to_owned()))
            .got(Value::Length(self.measured))
            .need(Value::text(format!("at least {}", Value::Length(mm(arcs)))))
            .why(format!("its {} bends alone take {}", self.bends, Value::Length(mm(arcs))))
            .fix(format!("check the unit; as inches it would be {inches}"))
            .into())
    }
}

/// Tube that one flare takes, shortening and spare together, as a plan takes it.
fn flare_mm(flare: Flare, od: Length, bench: Option<&Bench>, ledger: &mut Ledger) -> Result<f64, Error> {
    let tool = bench.and_then(|b| b.flare_tool(flare));
    let (net, stated) = (tool.and_then(|t| t.net_shortening()), tool.and_then(|t| t.cut_spare()));
    if let Some(spare) = flare::spare(flare, (net, stated), (od, None), ledger) {
        return Ok(to_mm(net.unwrap_or(mm(0.0)) + spare));
    }
    let code = if tool.is_some() { Code::FlareNetUnknown } else { Code::FlareToolMissing };
    Err(Error::field(
        code,
        "flare",
        Value::text(flare.name()),
        Value::text("a bench with a test piece of this flare"),
    ))
}

impl TapeCut {
    /// The terms, in the order they are added.
    #[must_use]
    pub fn terms(&self) -> &[Term] {
        &self.terms
    }

    /// Their sum, not rounded.
    #[must_use]
    pub fn length(&self) -> Length {
        mm(self.terms.iter().map(|t| to_mm(t.length)).sum())
    }

    /// What to cut, in whole millimeters: rounded up.
    #[must_use]
    pub fn rounded(&self) -> Length {
        round_length(self.length(), mm(1.0), Rounding::Up)
    }

    /// Standard deviation of the measurement, by the model in the ledger.
    #[must_use]
    pub fn sigma(&self) -> Length {
        self.sigma
    }

    /// The chance asked for.
    #[must_use]
    pub fn chance(&self) -> Ratio {
        self.chance
    }

    /// Whether the least margin is larger than the one that the chance asks for; the true chance is then better.
    #[must_use]
    pub fn floor_acts(&self) -> bool {
        self.floor_acts
    }

    /// Every default it rests on.
    #[must_use]
    pub fn assumptions(&self) -> &[Assumption] {
        self.assumptions.rows()
    }
}

/// The chance used where a caller names none.
#[must_use]
pub fn usual_chance() -> Ratio {
    ratio(0.95)
}
