//! Limits of size of a thread.

use super::class::Class;
use super::{Family, Thread, ThreadSide, metric, pipe, unified};
use crate::bounds;
use crate::code::Code;
use crate::error::Error;
use crate::problem::{Part, Problem, Value};
use crate::source::{Checked, Source};
use crate::units::{Length, inch, mm, to_inch, to_mm};

/// The smallest and largest of a diameter; None where the standard sets no limit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DiameterLimits {
    /// Smallest.
    pub min: Option<Length>,
    /// Largest.
    pub max: Option<Length>,
}

/// Limits of one side of a thread. Those of a taper thread are at the end that enters first.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Limits {
    /// The side.
    pub side: ThreadSide,
    /// The class they belong to; None where the family has no classes on that side.
    pub class: Option<Class>,
    /// Whether nobody named the class, so that the usual one was taken.
    pub is_class_assumed: bool,
    /// Major diameter; the largest one of an internal metric thread is for reference.
    pub major: DiameterLimits,
    /// Pitch diameter.
    pub pitch_diameter: DiameterLimits,
    /// Minor diameter; outside it is the root, the deepest rounded and the shallowest flat.
    pub minor: DiameterLimits,
    /// Largest minor diameter of the rounded root of an external Unified thread (UNR); for reference.
    pub rounded_root: Option<Length>,
    /// How the numbers were checked.
    pub checked: Checked,
    family: Family,
    basic: Length,
}

/// Smallest and largest of each diameter in the standard's own unit; NaN where it sets no limit.
pub(super) struct Raw {
    pub(super) major: [f64; 2],
    pub(super) pitch: [f64; 2],
    pub(super) minor: [f64; 2],
    pub(super) rounded_root: f64,
    pub(super) checked: Checked,
}

impl Raw {
    fn spans(&self, length: impl Fn(f64) -> Length) -> [DiameterLimits; 4] {
        let known = |number: f64| (!number.is_nan()).then(|| length(number));
        [self.major, self.pitch, self.minor, [f64::NAN, self.rounded_root]]
            .map(|[min, max]| DiameterLimits { min: known(min), max: known(max) })
    }
}

impl Thread {
    /// The limits of one side, by the thread's class or, where it has none, the usual one.
    ///
    /// Where a printed table differs from these, the rounding of ISO 965-1 is the usual reason. M11x1.5-6H may have a pitch diameter of 10.206 mm; the widely printed 10.196 is 0.010 too small. Its tolerance TD2 is
    /// 0.180: five steps of the R40 series on from Td2(6), which is 0.132. Who takes 1.32 times the formula instead, 0.1718,
    /// and goes to the nearest preferred number gets 0.170, and 10.196.
    ///
    /// # Errors
    /// `THREAD_SIDE` where class or family belong to the other side, `OUT_OF_RANGE` for a metric diameter outside
    /// ISO 965-1 (over 0.99 to 355 mm), and where the limits of one side would overlap.
    ///
    /// ```
    /// use linewright::{Thread, thread::ThreadSide, units::to_mm};
    /// let limits = Thread::read("M10x1-6H")?.limits(ThreadSide::Internal)?;
    /// assert_eq!(limits.pitch_diameter.max.map(to_mm), Some(9.5));
    /// # Ok::<(), linewright::Error>(())
    /// ```
    pub fn limits(&self, side: ThreadSide) -> Result<Limits, Error> {
        self.limits_based_on(side, None)
    }

    /// The limits of a Unified thread over another length of engagement than the usual one
    /// ([`Thread::basic_engagement`]): its pitch diameter tolerance grows with it.
    ///
    /// # Errors
    /// As [`Thread::limits`]; `NOT_A_NUMBER`, `OUT_OF_RANGE` for the length; `NOT_KNOWN` for another family, whose
    /// tolerances do not depend on a length.
    pub fn limits_over(&self, side: ThreadSide, engaged: Length) -> Result<Limits, Error> {
        let engaged = bounds::ENGAGEMENT.length(engaged)?;
        if self.family() != Family::Unified {
            return Err(self.has_no(
                "tolerances that depend on a length of engagement",
                "a Unified thread: others have classes for long engagements",
            ));
        }
        self.limits_based_on(side, Some(engaged))
    }

    fn limits_based_on(&self, side: ThreadSide, engaged: Option<Length>) -> Result<Limits, Error> {
        if self.side().is_some_and(|own| own != side) {
            let problem = Problem::new(Code::ThreadSide, Part::Field("thread".to_owned()))
                .got(Value::text(self.to_string()))
                .need(Value::text(format!("an {} thread", side.name())));
            return Err(problem.into());
        }
        let class = self.class.or_else(|| Class::usual(self, side));
        let out_of_range = || {
            if let Family::Unified = self.family() {
                let need = "a thread coarse enough for its diameter, class and length of engagement: the limits of this one overlap";
                return Error::field(
                    Code::OutOfRange,
                    "thread",
                    Value::text(self.to_string()),
                    Value::text(need),
                );
            }
            Error::from(
                Problem::new(Code::OutOfRange, Part::Field("diameter".to_owned()))
                    .got(Value::Length(self.diameter()))
                    .need(Value::text("over 0.99 to 355 mm with a pitch of 0.2 to 8 mm that such a diameter is made with (ISO 965-1)")),
            )
        };
        let (spans, checked) = match (self.family(), class) {
            (Family::Metric, Some(class)) if !metric::has_class(self, class) => {
                let need = Value::text(match side {
                    ThreadSide::External => {
                        "grade 6 or closer with position g or h, and a pitch of at least 0.2 mm: ISO 965-1 has no such class for so fine a pitch"
                    }
                    ThreadSide::Internal => {
                        "a closer grade, 4 to 6, and a pitch of at least 0.2 mm: ISO 965-1 has no such class for so fine a pitch"
                    }
                });
                return Err(Error::field(Code::OutOfRange, "class", Value::text(class.to_string()), need));
            }
            (Family::Metric, Some(class)) => {
                let raw = metric::limits(self, class, side).ok_or_else(out_of_range)?;
                (raw.spans(|um| mm(um / 1000.0)), raw.checked)
            }
            (Family::Unified, Some(class)) => {
                let raw =
                    unified::limits(self, class, side, engaged.map(to_inch)).ok_or_else(out_of_range)?;
                (raw.spans(inch), raw.checked)
            }
            (_, class) => {
                let raw = pipe::limits(self, class, side).ok_or_else(out_of_range)?;
                (raw.spans(mm), raw.checked)
            }
        };
        let [major, pitch_diameter, minor, rounded] = spans;
        Ok(Limits {
            side,
            class,
            is_class_assumed: class.is_some() && self.class.is_none(),
            major,
            pitch_diameter,
            minor,
            rounded_root: rounded.max,
            checked,
            family: self.family(),
            basic: self.diameter(),
        })
    }
}

impl Limits {
    /// How far the largest external thread stays below the basic diameter, so that there is always play: the fundamental
    /// deviation or the allowance. None for an internal thread.
    #[must_use]
    pub fn allowance(&self) -> Option<Length> {
        match self.side {
            ThreadSide::External => self.major.max.map(|most| mm(to_mm(self.basic) - to_mm(most))),
            ThreadSide::Internal => None,
        }
    }

    /// Where the numbers come from.
    #[must_use]
    pub fn source(&self) -> Source {
        let (text, place) = match self.family {
            Family::Metric => {
                ("ISO 965-1:1998", "table values; formulas of clause 13 and preferred numbers elsewhere")
            }
            Family::Unified => ("ASME B1.1-2003", "formulas, rounded as in Machinery's Handbook 31"),
            Family::G => ("ISO 228-1:1994", "table 1"),
            Family::R | Family::Rp | Family::Rc => (
                "ISO 7-1, edition not known",
                "basic diameters of ISO 228-1 at the gauge plane; gauge lengths",
            ),
            Family::Npt => ("ASME B1.20.1, edition not known", "E0, E1, 0.8 p; one turn either way"),
        };
        Source::new(text, place, self.checked)
    }
}
