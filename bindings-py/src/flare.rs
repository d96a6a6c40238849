//! Flares: what a test piece tells, how thick they are; what they take of the tube, public figures and hose ends.

mod allowance;
mod sealing;
mod standards;

pub(crate) use allowance::{FlareForm, flare_allowances};
pub(crate) use sealing::{hose_end_check, hose_end_sealed_by, hose_end_washers, washers};
pub(crate) use standards::{
    flare_known_diameters, flare_size, flare_standards, hexagons, seats_of_thread, usual_threads,
};

use crate::error;
use crate::problem::Problem;
use crate::quantity;
use crate::units::Length;
use linewright::flare::FlareTrial;
use linewright::{Flare, Nose, Seat, bounds};
use pyo3::prelude::*;

/// How much shorter a flare makes the tube: a test piece measured over all before and after one of its ends was flared.
///
/// Raises `InputError` (OUT_OF_RANGE where it grew or shortened more than any flare does, and the codes of
/// `read_length`), `QuantityError` for a bare number.
///
/// >>> import linewright as lw
/// >>> print(lw.flare_net_shortening(before="200 mm", after="195.2 mm"))
/// 4.8 mm
#[pyfunction]
#[pyo3(signature = (*, before, after))]
pub(crate) fn flare_net_shortening(before: &Bound<'_, PyAny>, after: &Bound<'_, PyAny>) -> PyResult<Length> {
    let (before, after) = (quantity::length(before, "before")?, quantity::length(after, "after")?);
    error::call(|| FlareTrial::new(before, after)).map(|trial| Length(trial.net_shortening()))
}

/// Compares what stands out of the clamp after the first stroke with what should: a problem (FLARE_SLIPPED) where the
/// tube slipped back, otherwise None.
///
/// Raises as `flare_net_shortening`.
///
/// >>> import linewright as lw
/// >>> lw.flare_slip(expected="2.4 mm", measured="2.0 mm").code
/// 'FLARE_SLIPPED'
#[pyfunction]
#[pyo3(signature = (*, expected, measured))]
pub(crate) fn flare_slip(
    expected: &Bound<'_, PyAny>,
    measured: &Bound<'_, PyAny>,
) -> PyResult<Option<Problem>> {
    let (expected, measured) =
        (quantity::length(expected, "expected")?, quantity::length(measured, "measured")?);
    error::call(|| linewright::flare::slip(expected, measured)).map(|found| found.map(Problem))
}

/// The least that a finished flare ("double-45", "bubble", "single-37") puts between its nut and its seat, along the axis,
/// on a tube with this wall.
///
/// Raises `InputError` (SINGLE_45_REFUSED, OUT_OF_RANGE and the codes of `read_length`), `UnknownNameError` for the flare,
/// `QuantityError` for a bare number.
///
/// >>> import linewright as lw
/// >>> print(lw.flare_thickness_at_least("double-45", wall="0.7 mm"))
/// 1.4 mm
#[pyfunction]
#[pyo3(signature = (flare, /, *, wall))]
pub(crate) fn flare_thickness_at_least(flare: &str, wall: &Bound<'_, PyAny>) -> PyResult<Length> {
    let wall = quantity::length(wall, "wall")?;
    error::call(|| Ok(Flare::from_name(flare)?.thickness_at_least(bounds::WALL.length(wall)?))).map(Length)
}

/// Strokes of the tool that a flare ("double-45", "bubble", "single-37") takes: a double flare takes two (common practice,
/// no source).
///
/// Raises `InputError` (SINGLE_45_REFUSED), `UnknownNameError`.
///
/// >>> import linewright as lw
/// >>> lw.flare_strokes("double-45")
/// 2
#[pyfunction]
#[pyo3(signature = (flare, /))]
pub(crate) fn flare_strokes(flare: &str) -> PyResult<usize> {
    error::call(|| Ok(Flare::from_name(flare)?.strokes()))
}

/// Whether a flare belongs to a seat ("inverted-45", "bubble", "cone-37" or "unknown"): "fits", "does not fit" or "not
/// known", which never counts as yes.
///
/// Raises `InputError` (SINGLE_45_REFUSED), `UnknownNameError` for the flare or the seat.
///
/// >>> import linewright as lw
/// >>> lw.flare_fits_seat("double-45", "inverted-45"), lw.flare_fits_seat("double-45", "unknown")
/// ('fits', 'not known')
#[pyfunction]
#[pyo3(signature = (flare, seat, /))]
pub(crate) fn flare_fits_seat(flare: &str, seat: &str) -> PyResult<&'static str> {
    error::call(|| Ok(Flare::from_name(flare)?.fits_seat(Seat::from_name(seat)?).name()))
}

/// Whether a nut's nose ("coned", "flat", "sleeve" or "unknown") belongs to a flare: "fits", "does not fit" or "not known",
/// which never counts as yes (common practice, no source).
///
/// Raises `InputError` (SINGLE_45_REFUSED), `UnknownNameError` for the flare or the nose.
///
/// >>> import linewright as lw
/// >>> lw.flare_fits_nose("bubble", "coned")
/// 'does not fit'
#[pyfunction]
#[pyo3(signature = (flare, nose, /))]
pub(crate) fn flare_fits_nose(flare: &str, nose: &str) -> PyResult<&'static str> {
    error::call(|| Ok(Flare::from_name(flare)?.fits_nose(Nose::from_name(nose)?).name()))
}
