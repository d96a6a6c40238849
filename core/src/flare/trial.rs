//! What a test piece tells about a flare: how much it shortens the tube, and whether the tube slipped in the clamp.

use crate::bounds;
use crate::code::Code;
use crate::error::Error;
use crate::problem::{Part, Problem, Value};
use crate::units::{Length, mm, to_mm};

/// A slip of this much is a failed flare ("a few tenths of a millimeter": common practice, no source).
const SLIP_MM: f64 = 0.3;

/// One end of a test piece, flared.
///
/// ```
/// use linewright::{flare::FlareTrial, units::{mm, to_mm}};
/// let trial = FlareTrial::new(mm(200.0), mm(195.2))?;
/// assert!((to_mm(trial.net_shortening()) - 4.8).abs() < 1e-9);
/// # Ok::<(), linewright::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FlareTrial {
    before: Length,
    after: Length,
}

impl FlareTrial {
    /// A piece measured over all before and after one of its ends was flared.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE` where it grew, or shortened more than any flare does.
    pub fn new(before: Length, after: Length) -> Result<FlareTrial, Error> {
        let before = bounds::STRAIGHT.length(before).map_err(|e| e.at(Part::Field("before".to_owned())))?;
        let after = bounds::STRAIGHT.length(after).map_err(|e| e.at(Part::Field("after".to_owned())))?;
        bounds::NET_SHORTENING.length(before - after)?;
        Ok(FlareTrial { before, after })
    }

    /// How much shorter the flare made it, for the bench's flare tool.
    #[must_use]
    pub fn net_shortening(&self) -> Length {
        self.before - self.after
    }
}

/// Compares what stands out of the clamp after the first stroke with what should: `FLARE_SLIPPED` where the tube went
/// back. What should stand out comes from a test piece of the same tool that did not slip.
///
/// # Errors
/// `NOT_A_NUMBER`, `OUT_OF_RANGE`.
pub fn slip(expected: Length, measured: Length) -> Result<Option<Problem>, Error> {
    let (expected, measured) = (bounds::PROJECTION.length(expected)?, bounds::PROJECTION.length(measured)?);
    let slipped = to_mm(expected) - to_mm(measured);
    Ok((slipped >= SLIP_MM - 1e-9).then(|| {
        Problem::new(Code::FlareSlipped, Part::Line)
            .got(Value::Length(measured))
            .need(Value::Length(expected))
            .why(format!("the tube slipped back by {}", Value::Length(mm(slipped))))
    }))
}
