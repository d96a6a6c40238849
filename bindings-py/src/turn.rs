//! The turn of a bend plane in the forms a bench can use.

use crate::error;
use crate::quantity;
use crate::units::Angle;
use linewright::{bounds, turn};
use pyo3::prelude::*;

/// Words for a whole quarter turn, seen along the direction of work; None for other turns.
///
/// >>> import linewright as lw
/// >>> lw.turn_words("90 deg"), lw.turn_words("30 deg")
/// ('quarter turn clockwise', None)
#[pyfunction]
#[pyo3(signature = (rotation, /))]
pub(crate) fn turn_words(rotation: &Bound<'_, PyAny>) -> PyResult<Option<&'static str>> {
    let rotation = quantity::rotation(rotation, "rotation")?;
    error::call(|| bounds::ROTATION.angle(rotation)).map(turn::words)
}

/// The turn on a clock seen along the direction of work, with the last bend at 12.
///
/// >>> import linewright as lw
/// >>> lw.turn_clock("90 deg")
/// '3:00'
#[pyfunction]
#[pyo3(signature = (rotation, /))]
pub(crate) fn turn_clock(rotation: &Bound<'_, PyAny>) -> PyResult<String> {
    let rotation = quantity::rotation(rotation, "rotation")?;
    error::call(|| bounds::ROTATION.angle(rotation)).map(turn::clock)
}

/// What an inclinometer reads, positive upward, on the leg after a bend while the bend before it lies flat and goes to
/// the left, or the right, seen from above along the direction of work.
///
/// >>> import linewright as lw
/// >>> print(lw.inclinometer(bend="60 deg", rotation="37 deg"))
/// 31.41 deg
#[pyfunction]
#[pyo3(signature = (*, bend, rotation, last_bend_to_left=true))]
pub(crate) fn inclinometer(
    bend: &Bound<'_, PyAny>,
    rotation: &Bound<'_, PyAny>,
    last_bend_to_left: bool,
) -> PyResult<Angle> {
    let (bend, rotation) = (quantity::angle(bend, "bend")?, quantity::rotation(rotation, "rotation")?);
    error::call(|| {
        let (bend, rotation) = (bounds::ANGLE.angle(bend)?, bounds::ROTATION.angle(rotation)?);
        Ok(Angle(turn::inclinometer(bend, rotation, last_bend_to_left)))
    })
}
