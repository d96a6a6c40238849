//! One bend: arc, tangent length and gain; what it does to the wall; the ideal cylinder under
//! pressure.

mod pressure;
mod wall;

pub(crate) use pressure::{BendFactors, Cylinder, Strength, ovality_amplification, size_tolerances};
pub(crate) use wall::{BentWall, FlattenedSection, radius_rules, section_limits, wall_reserves};

use crate::error;
use crate::quantity;
use crate::units::Length;
use linewright::units::deg;
use pyo3::prelude::*;

fn bend(radius: &Bound<'_, PyAny>, angle: &Bound<'_, PyAny>) -> PyResult<linewright::Bend> {
    let (radius, angle) = (quantity::length(radius, "radius")?, quantity::angle(angle, "angle")?);
    error::call(|| linewright::Bend::new(angle, deg(0.0), radius))
}

/// Tube in a bend, along the center line: R x angle. The radius is the centerline radius as formed.
///
/// Raises `InputError` (OUT_OF_RANGE and the codes of `read_length`), `QuantityError` for a bare number.
///
/// >>> import linewright as lw
/// >>> print(lw.arc(radius="14.3 mm", angle="90 deg"))
/// 22.46 mm
#[pyfunction]
#[pyo3(signature = (*, radius, angle))]
pub(crate) fn arc(radius: &Bound<'_, PyAny>, angle: &Bound<'_, PyAny>) -> PyResult<Length> {
    let bend = bend(radius, angle)?;
    error::compute(|| bend.arc()).map(Length)
}

/// From the corner to where the bend starts: R tan(angle / 2). The radius is the centerline radius as formed.
///
/// Raises as `arc`, and `InputError` (NO_CORNER) at 180 degrees and above.
///
/// >>> import linewright as lw
/// >>> print(lw.tangent_length(radius="14.3 mm", angle="60 deg"))
/// 8.26 mm
#[pyfunction]
#[pyo3(signature = (*, radius, angle))]
pub(crate) fn tangent_length(radius: &Bound<'_, PyAny>, angle: &Bound<'_, PyAny>) -> PyResult<Length> {
    let bend = bend(radius, angle)?;
    error::call(|| bend.tangent_length()).map(Length)
}

/// How much shorter the way round a bend is than the way over its corner: 2R tan(angle / 2) - R x angle.
///
/// Raises as `tangent_length`.
///
/// >>> import linewright as lw
/// >>> print(lw.gain(radius="14.3 mm", angle="90 deg"))
/// 6.14 mm
#[pyfunction]
#[pyo3(signature = (*, radius, angle))]
pub(crate) fn gain(radius: &Bound<'_, PyAny>, angle: &Bound<'_, PyAny>) -> PyResult<Length> {
    let bend = bend(radius, angle)?;
    error::call(|| bend.gain()).map(Length)
}
