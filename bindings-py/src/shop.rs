//! What a shop asks beside a plan: a length from string and tape, clips, test pieces, turns.

use crate::bench::Bench;
use crate::error;
use crate::path::Path;
use crate::problem::{Assumption, Problem, problems};
use crate::quantity;
use crate::results::made;
use crate::units::{Angle, Length};
use linewright::clip::{self, ClipRule};
use linewright::flare::FlareTrial;
use linewright::source::{Checked, Source};
use linewright::tape::{Laid, TapeLength};
use linewright::units::ratio;
use linewright::{Flare, bounds, turn};
use pyo3::prelude::*;

/// From one measured length, the number of bends and what string or tape was laid along, to a cut length that is long
/// enough with the stated chance: every term and assumption is in the answer.
///
/// `laid` is "center line", "string outside", "string inside", "corner legs" or "outer legs". `od` is the tube's
/// diameter. `total_angle` is all bend angles together; without it each bend is taken for a right angle. `radius` is
/// the one as formed; without it the bench's, or three diameters. Without a bench a double flare takes the usual 5 mm.
///
/// Raises `InputError` (METHOD_MISSING, UNIT_IMPLAUSIBLE where the bends alone take more than the length,
/// FLARE_NET_UNKNOWN, FLARE_TOOL_MISSING, OUT_OF_RANGE and the codes of `read_length`), `UnknownNameError`,
/// `QuantityError` for a bare number.
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
    bends: usize,
    laid: &str,
    od: &Bound<'py, PyAny>,
    total_angle: Option<&Bound<'py, PyAny>>,
    radius: Option<&Bound<'py, PyAny>>,
    flares: Option<(String, String)>,
    bench: Option<&Bound<'py, Bench>>,
    chance: f64,
) -> PyResult<Bound<'py, PyAny>> {
    let (measured, od) = (quantity::length(measured, "measured")?, quantity::length(od, "od")?);
    let total = total_angle.map(|total| quantity::angle(total, "total_angle")).transpose()?;
    let radius = quantity::length_if(radius, "radius")?;
    let bench = bench.map(|bench| bench.get().0.clone());
    let cut = error::call(|| {
        let mut tape = TapeLength::new(measured, bends, Laid::from_name(laid)?, od)?;
        if let Some(total) = total {
            tape = tape.with_total_angle(total)?;
        }
        if let Some(radius) = radius {
            tape = tape.with_radius(radius)?;
        }
        if let Some((a, b)) = &flares {
            tape = tape.with_flares(Flare::from_name(a)?, Flare::from_name(b)?);
        }
        tape.cut(bench.as_ref(), ratio(chance))
    })?;
    let terms: Vec<_> = cut.terms().iter().map(|term| (term.what.clone(), Length(term.length))).collect();
    let assumptions: Vec<_> = cut.assumptions().iter().cloned().map(Assumption).collect();
    let (length, rounded) = (Length(cut.length()), Length(cut.rounded()));
    let parts =
        (length, rounded, Length(cut.sigma()), cut.chance().value, cut.floor_acts(), terms, assumptions);
    made(py, "TapeCut", parts)
}

/// The clip rules that the library knows, each with its source. The vehicle maker's data and local codes rule over them.
///
/// >>> import linewright as lw
/// >>> [str(rule.spacing) for rule in lw.clip_rules()]
/// ['400 mm', '500 mm']
#[pyfunction]
pub(crate) fn clip_rules(py: Python<'_>) -> PyResult<Vec<Bound<'_, PyAny>>> {
    let rule = |rule: &ClipRule| {
        let (spacing, from_end) = (Length(rule.spacing()), Length(rule.from_end()));
        made(py, "ClipRule", (spacing, from_end, rule.source().to_string()))
    };
    clip::rules().iter().map(rule).collect()
}

/// The fewest clips along a path that are no further apart than `spacing` and begin no further than `from_end` from
/// either end; stations are distances along the center line from end A.
///
/// Raises `InputError` (OUT_OF_RANGE and the codes of `read_length`), `QuantityError` for a bare number.
///
/// >>> import linewright as lw
/// >>> found = lw.clips(lw.Path.from_straights(["600 mm"]), spacing="400 mm", from_end="100 mm")
/// >>> [str(clip.station) for clip in found.clips]
/// ['100 mm', '500 mm']
#[pyfunction]
#[pyo3(signature = (path, *, spacing, from_end))]
pub(crate) fn clips<'py>(
    path: &Bound<'py, Path>,
    spacing: &Bound<'py, PyAny>,
    from_end: &Bound<'py, PyAny>,
) -> PyResult<Bound<'py, PyAny>> {
    let py = path.py();
    let (spacing, from_end) =
        (quantity::length(spacing, "spacing")?, quantity::length(from_end, "from_end")?);
    let source = Source::new("the caller", "", Checked::SecondHand);
    let found = error::call(|| Ok(ClipRule::new(spacing, from_end, source)?.clips(&path.get().0)))?;
    let each: Vec<_> = found
        .clips
        .iter()
        .map(|clip| made(py, "Clip", (Length(clip.station), clip.in_bend)))
        .collect::<PyResult<_>>()?;
    made(py, "Clips", (each, problems(&found.problems)))
}

/// Clips to buy and spares: what is missing, and one in ten more, at least two (common practice, no source).
///
/// >>> import linewright as lw
/// >>> lw.clips_to_buy(16, 11)
/// (5, 2)
#[pyfunction]
#[pyo3(signature = (needed, reusable, /))]
pub(crate) fn clips_to_buy(needed: usize, reusable: usize) -> (usize, usize) {
    clip::clips_to_buy(needed, reusable)
}

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
