//! String and tape only: from one measured length to a cut length.

use crate::bench::Bench;
use crate::error;
use crate::problem::Assumption;
use crate::quantity;
use crate::results::made;
use crate::units::Length;
use linewright::Flare;
use linewright::tape::{Laid, TapeLength};
use linewright::units::ratio;
use pyo3::prelude::*;
use pyo3::types::PyTuple;

/// From one measured length, the number of bends and what string or tape was laid along, to a cut length that is long
/// enough with the stated chance: every term and assumption is in the answer.
///
/// `laid` is "center line", "string outside", "string inside", "corner legs" or "outer legs". `od` is the tube's
/// diameter. `total_angle` is all bend angles together; without it each bend is taken for a right angle. `radius` is
/// the one as formed; without it the bench's, or three diameters. Without a bench a double flare takes the usual 5 mm.
///
/// Raises `InputError` (METHOD_MISSING, UNIT_IMPLAUSIBLE where the bends alone take more than the length,
/// FLARE_NET_UNKNOWN, FLARE_TOOL_MISSING, OUT_OF_RANGE and the codes of `read_length`), `UnknownNameError`,
/// `QuantityError` for a bare number, for bends that are no whole number, and for flares that are no two names.
///
/// >>> import linewright as lw
/// >>> cut = lw.tape_cut("112 in", bends=7, laid="string outside", od="3/16 in", chance=0.95)
/// >>> print(cut.rounded)
/// 2846 mm
#[pyfunction]
#[pyo3(signature = (
    measured, *, bends, laid, od, total_angle=None, radius=None, flares=None, bench=None, chance=0.95
))]
#[expect(clippy::too_many_arguments, reason = "one for each argument, all of them named")]
pub(crate) fn tape_cut<'py>(
    py: Python<'py>,
    measured: &Bound<'py, PyAny>,
    bends: &Bound<'py, PyAny>,
    laid: &str,
    od: &Bound<'py, PyAny>,
    total_angle: Option<&Bound<'py, PyAny>>,
    radius: Option<&Bound<'py, PyAny>>,
    flares: Option<&Bound<'py, PyAny>>,
    bench: Option<&Bound<'py, Bench>>,
    chance: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let (measured, od) = (quantity::length(measured, "measured")?, quantity::length(od, "od")?);
    let bends = quantity::count(bends, "bends")?;
    let total = total_angle.map(|total| quantity::angle(total, "total_angle")).transpose()?;
    let radius = quantity::length_if(radius, "radius")?;
    let need = "the flares at A and B, such as (\"double-45\", \"bubble\")";
    let flares = flares.map(|flares| quantity::two_names(flares, "flares", need)).transpose()?;
    let bench = bench.map(|bench| bench.get().0.clone());
    let cut = error::call(|| {
        let mut tape = TapeLength::new(measured, bends, Laid::from_name(laid)?, od)?;
        if let Some(total) = total {
            tape = tape.with_total_angle(total)?;
        }
        if let Some(radius) = radius {
            tape = tape.with_radius(radius)?;
        }
        if let Some([a, b]) = &flares {
            tape = tape.with_flares(Flare::from_name(a)?, Flare::from_name(b)?);
        }
        tape.cut(bench.as_ref(), ratio(chance))
    })?;
    let terms: Vec<_> = cut.terms().iter().map(|term| (term.what.clone(), Length(term.length))).collect();
    let assumptions: Vec<_> = cut.assumptions().iter().cloned().map(Assumption).collect();
    let (length, rounded) = (Length(cut.length()), Length(cut.rounded()));
    let (terms, assumptions) = (PyTuple::new(py, terms)?, PyTuple::new(py, assumptions)?);
    let parts =
        (length, rounded, Length(cut.sigma()), cut.chance().value, cut.floor_acts(), terms, assumptions);
    made(py, "TapeCut", parts)
}
