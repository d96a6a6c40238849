//! The bench: the tools and habits of one workshop, as data.

mod piece_fit;
mod pieces;

pub use piece_fit::{PieceFit, Stretch};
pub use pieces::TestPiece;

use crate::bounds;
use crate::code::Code;
use crate::error::Error;
use crate::flare::Flare;
use crate::problem::{Part, Problem, Value};
use crate::source::printable;
use crate::springback::{Mechanics, Springback};
use crate::units::{Length, mm};

/// Working clearance around a flare tool where the bench states none (common practice, no source).
pub const DEFAULT_CLEARANCE_MM: f64 = 2.0;
/// How far a nut must be able to back off where the bench states nothing (common practice, no source).
pub const DEFAULT_BACK_OFF_MM: f64 = 3.0;
/// A former, described by what it makes and what it holds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Former {
    as_formed: Length,
    grip: Length,
    groove: Option<Length>,
}

impl Former {
    /// A former that leaves a centerline radius of `as_formed` after springback (from a test piece; not the radius
    /// of its groove), and must hold `grip` of straight tube before the bend.
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE`.
    pub fn new(as_formed: Length, grip: Length) -> Result<Former, Error> {
        Ok(Former {
            as_formed: bounds::RADIUS.length(as_formed)?,
            grip: bounds::GRIP.length(grip)?,
            groove: None,
        })
    }

    /// A former described by the center-line radius of its groove, for a tube whose material data are known: the radius as
    /// formed is computed, and the plan says so. A test piece is better.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE`, also where nothing of the bend would remain.
    ///
    /// ```
    /// use linewright::Former;
    /// use linewright::springback::{Hardening, Mechanics};
    /// use linewright::units::{inch, mm, mpa, to_mm};
    /// let law = Hardening::PerfectlyPlastic { yield_strength: mpa(250.0) };
    /// let tube = Mechanics::new(inch(3.0 / 16.0), inch(0.028), mpa(207_000.0), law)?;
    /// let former = Former::of_groove(mm(14.2875), mm(20.0), &tube)?;
    /// assert!((to_mm(former.as_formed()) - 14.441).abs() < 5e-4);
    /// # Ok::<(), linewright::Error>(())
    /// ```
    pub fn of_groove(groove: Length, grip: Length, tube: &Mechanics) -> Result<Former, Error> {
        let formed = tube.bend(groove)?.formed_radius().ok_or_else(|| {
            let need = Value::text("a groove tight enough for the tube to keep some of the bend");
            Error::field(Code::OutOfRange, "groove", Value::Length(groove), need)
        })?;
        Former::new(formed, grip)?.with_groove(groove)
    }

    /// A former read back from where it was kept, whose radius as formed had been computed from that of its groove.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE`, also for a groove wider than the radius as formed: a bend opens when it is let go.
    pub fn with_groove(mut self, groove: Length) -> Result<Former, Error> {
        let groove =
            bounds::HELD_RADIUS.length(groove).map_err(|error| error.at(Part::Field("groove".to_owned())))?;
        if groove > self.as_formed {
            let need =
                Value::text(format!("at most the radius as formed, {}", Value::Length(self.as_formed)));
            return Err(Error::field(Code::OutOfRange, "groove", Value::Length(groove), need));
        }
        self.groove = Some(groove);
        Ok(self)
    }

    /// Radius of the groove's center line, where the radius as formed was computed from it.
    #[must_use]
    pub fn groove(&self) -> Option<Length> {
        self.groove
    }

    /// Centerline radius after springback.
    #[must_use]
    pub fn as_formed(&self) -> Length {
        self.as_formed
    }

    /// Straight tube held before the bend.
    #[must_use]
    pub fn grip(&self) -> Length {
        self.grip
    }
}

/// A flare tool for one form of flare.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FlareTool {
    flare: Flare,
    clamp: Length,
    projection: Length,
    net_shortening: Option<Length>,
    cut_spare: Option<Length>,
}

impl FlareTool {
    /// A tool that grips the tube over `clamp`, with `projection` standing out before the first stroke.
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE`.
    pub fn new(flare: Flare, clamp: Length, projection: Length) -> Result<FlareTool, Error> {
        Ok(FlareTool {
            flare,
            clamp: bounds::CLAMP.length(clamp)?,
            projection: bounds::PROJECTION.length(projection)?,
            net_shortening: None,
            cut_spare: None,
        })
    }

    /// With how much shorter the tube gets, tip to tip: measured on a test piece.
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE`, also for no less than what stood out: the height of the flare is left of that.
    pub fn with_net_shortening(mut self, net: Length) -> Result<FlareTool, Error> {
        let net = bounds::NET_SHORTENING.length(net)?;
        if net >= self.projection {
            let need = format!(
                "less than what stands out of the clamp, {}: a flare is left of it",
                Value::Length(self.projection)
            );
            return Err(Error::field(
                Code::OutOfRange,
                "net_shortening",
                Value::Length(net),
                Value::text(need),
            ));
        }
        self.net_shortening = Some(net);
        Ok(self)
    }

    /// With what is added on top for safety; it goes wholly to the trim end.
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE`.
    pub fn with_cut_spare(mut self, spare: Length) -> Result<FlareTool, Error> {
        self.cut_spare = Some(bounds::CUT_SPARE.length(spare)?);
        Ok(self)
    }

    /// The form it makes.
    #[must_use]
    pub fn flare(&self) -> Flare {
        self.flare
    }

    /// Depth of the clamp.
    #[must_use]
    pub fn clamp(&self) -> Length {
        self.clamp
    }

    /// Tube standing out before the first stroke.
    #[must_use]
    pub fn projection(&self) -> Length {
        self.projection
    }

    /// Measured shortening, if it was measured.
    #[must_use]
    pub fn net_shortening(&self) -> Option<Length> {
        self.net_shortening
    }

    /// Spare, if one was stated.
    #[must_use]
    pub fn cut_spare(&self) -> Option<Length> {
        self.cut_spare
    }
}

/// The tools and habits of one workshop.
#[derive(Debug, Clone, PartialEq)]
pub struct Bench {
    revision: String,
    former: Former,
    flare_tools: Vec<FlareTool>,
    springback: Option<Springback>,
    clearance: Option<Length>,
    back_off: Option<Length>,
}

impl Bench {
    /// A bench with one former and a flare tool for each form it makes.
    ///
    /// # Errors
    /// `FIELDS_CONFLICT` when two tools make the same form.
    pub fn new(former: Former, flare_tools: &[FlareTool]) -> Result<Bench, Error> {
        let bench = Bench {
            revision: String::new(),
            former,
            flare_tools: Vec::new(),
            springback: None,
            clearance: None,
            back_off: None,
        };
        flare_tools.iter().try_fold(bench, |bench, tool| bench.with_flare_tool(*tool))
    }

    /// With one more flare tool.
    ///
    /// # Errors
    /// `FIELDS_CONFLICT` when the bench has a tool for this form.
    pub fn with_flare_tool(mut self, tool: FlareTool) -> Result<Bench, Error> {
        if self.flare_tool(tool.flare).is_some() {
            return Err(Problem::new(Code::FieldsConflict, Part::Field("flare_tools".to_owned()))
                .got(Value::text(tool.flare.name()))
                .need(Value::text("one tool for each form"))
                .into());
        }
        self.flare_tools.push(tool);
        Ok(self)
    }

    /// With a name or number for this state of the bench; it is printed on the card.
    #[must_use]
    pub fn with_revision(mut self, revision: &str) -> Bench {
        self.revision = printable(revision);
        self
    }

    /// With the springback of its former.
    #[must_use]
    pub fn with_springback(mut self, springback: Springback) -> Bench {
        self.springback = Some(springback);
        self
    }

    /// With its own working clearance beside a clamped flare tool.
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE`.
    pub fn with_clearance(mut self, clearance: Length) -> Result<Bench, Error> {
        self.clearance = Some(bounds::CLEARANCE.length(clearance)?);
        Ok(self)
    }

    /// With its own back-off of a nut.
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE`.
    pub fn with_back_off(mut self, back_off: Length) -> Result<Bench, Error> {
        self.back_off = Some(bounds::CLEARANCE.length(back_off)?);
        Ok(self)
    }

    /// Name or number of this state; empty where none was given.
    #[must_use]
    pub fn revision(&self) -> &str {
        &self.revision
    }

    /// The former.
    #[must_use]
    pub fn former(&self) -> &Former {
        &self.former
    }

    /// The flare tools.
    #[must_use]
    pub fn flare_tools(&self) -> &[FlareTool] {
        &self.flare_tools
    }

    /// The tool for a form, if there is one.
    #[must_use]
    pub fn flare_tool(&self, flare: Flare) -> Option<&FlareTool> {
        self.flare_tools.iter().find(|tool| tool.flare == flare)
    }

    /// The springback, if trials were made.
    #[must_use]
    pub fn springback(&self) -> Option<&Springback> {
        self.springback.as_ref()
    }

    /// Working clearance and whether it is the default.
    #[must_use]
    pub fn clearance(&self) -> (Length, bool) {
        (self.clearance.unwrap_or(mm(DEFAULT_CLEARANCE_MM)), self.clearance.is_none())
    }

    /// Back-off of a nut and whether it is the default.
    #[must_use]
    pub fn back_off(&self) -> (Length, bool) {
        (self.back_off.unwrap_or(mm(DEFAULT_BACK_OFF_MM)), self.back_off.is_none())
    }
}
