//! Where the arithmetic of small changes ends. A fluid's stiffness and expansion are taken as constant, which they are over
//! small changes of volume only.

use crate::bounds;
use crate::code::Code;
use crate::error::Error;
use crate::problem::{Part, Problem, Value};

/// Largest change of volume, as a share, over which the stiffness is taken as constant (ours). A liquid's bulk modulus grows
/// by about ten times the pressure (from memory), so that a twentieth of the volume, some 1000 bar of a brake fluid, takes a
/// third more pressure than computed.
const SQUEEZED: f64 = 0.05;
/// Largest growth or shrinking by warmth, as a share, over which the expansion is taken as constant (ours).
const GROWN: f64 = 0.25;

/// A given number, how it is called and its unit.
pub(super) struct Given {
    pub field: &'static str,
    pub value: f64,
    pub unit: &'static str,
}

impl Given {
    /// Refuses it where `times` of it is the most, and that is less than it.
    fn at_most(&self, times: f64, why: &str) -> Result<(), Error> {
        if times >= 1.0 {
            return Ok(());
        }
        // Printed so that what is printed is little enough; a rounding of the product is no digit lost.
        let most = (self.value.abs() * times * 1e4 + 1e-4).floor() / 1e4;
        let sign = if self.value < 0.0 { "a change of " } else { "" };
        Err(Problem::new(Code::OutOfRange, Part::Field(self.field.to_owned()))
            .got(Value::text(format!("{} {}", self.value, self.unit)))
            .need(Value::text(format!("{sign}at most {most} {}", self.unit)))
            .why(why)
            .fix("check the unit and the number")
            .into())
    }

    /// Refuses it where the fluid would change its volume by too large a share under pressure, or the pressure by more than
    /// any line has.
    pub(super) fn squeezes(&self, share: f64, pressure_mpa: f64) -> Result<(), Error> {
        // Nothing over nothing is no change.
        let most = |limit: f64, change: f64| if change.abs() > 0.0 { limit / change.abs() } else { 1.0 };
        self.at_most(
            most(SQUEEZED, share),
            "it changes the fluid's volume by more than a twentieth, over which its stiffness is not constant",
        )?;
        self.at_most(
            most(bounds::PRESSURE.max, pressure_mpa),
            "it changes the pressure by more than any small-bore line has",
        )
    }

    /// Refuses it where warmth would change the fluid's volume by too large a share.
    pub(super) fn grows(&self, share: f64) -> Result<(), Error> {
        let times = if share.abs() > 0.0 { GROWN / share.abs() } else { 1.0 };
        self.at_most(
            times,
            "it changes the fluid's volume by more than a quarter, over which its expansion is not constant",
        )
    }
}
