//! What a measured thread may be.

use super::limits::span;
use super::mate::among_or_all;
use super::{Thread, given};
use crate::error;
use crate::problem::Fact;
use crate::quantity;
use crate::results::made;
use crate::units::Length;
use linewright::thread::{self, Candidate, Measured, Separation, ThreadSide};
use linewright::units::{Length as CoreLength, ratio};
use linewright::{Code, Error, Part, Problem, Value};
use pyo3::prelude::*;
use pyo3::types::PyTuple;

/// What a measured thread may be, the likeliest first, and the one further measurement that tells the leading two apart.
///
/// A reading is a text with its uncertainty, `"9.45 mm +- 0.05 mm"`, or a pair of lengths. `major` is the diameter over
/// the crests of an external thread, `minor` of an internal one. The pitch is given in one way: as `pitch`, as the length
/// over `ten_pitches`, over some other number, `pitches=(5, "5.0 mm +- 0.1 mm")`, or as threads counted `per_inch`,
/// alone or with how far the count may be off, `per_inch=(24, 1)`.
/// `wear` is the most that wear can have taken, 0.1 mm where it is left out. `among` are threads or designations;
/// without it the catalogue.
///
/// The answer has `candidates`, `nearest` (of the list, where there are none), `ways` to tell the leading two apart,
/// `next`, which is the first of them that does, and `advice` in words. A candidate's share is the chance that it is
/// the one, if the thread is in the list at all.
///
/// Raises `InputError` (FIELD_MISSING where nothing was measured, THREAD_SIDE for a diameter of the other side,
/// FIELDS_CONFLICT for a pitch given twice, OUT_OF_RANGE, the codes of `read_tolerance` and `Thread`),
/// `UnknownNameError` for the side, `QuantityError` for a bare number and for what is no count.
///
/// >>> import linewright as lw
/// >>> found = lw.identify_thread(major="9.45 mm +- 0.05 mm", side="external", among=["M10x1", "3/8-24", "3/8-16"])
/// >>> [str(candidate.thread) for candidate in found.candidates]
/// ['3/8-24 UNF', '3/8-16 UNC']
/// >>> found.advice
/// 'measure the ten pitches: 10.58 mm for 3/8-24 UNF, 15.88 mm for 3/8-16 UNC'
#[pyfunction]
#[pyo3(signature = (*, side, major=None, minor=None, pitch=None, ten_pitches=None, pitches=None, per_inch=None,
    wear=None, among=None))]
#[expect(clippy::too_many_arguments, reason = "one for each argument, all of them named")]
pub(crate) fn identify_thread<'py>(
    py: Python<'py>,
    side: &str,
    major: Option<&Bound<'py, PyAny>>,
    minor: Option<&Bound<'py, PyAny>>,
    pitch: Option<&Bound<'py, PyAny>>,
    ten_pitches: Option<&Bound<'py, PyAny>>,
    pitches: Option<&Bound<'py, PyAny>>,
    per_inch: Option<&Bound<'py, PyAny>>,
    wear: Option<&Bound<'py, PyAny>>,
    among: Option<&Bound<'py, PyAny>>,
) -> PyResult<Bound<'py, PyAny>> {
    let side = error::call(|| ThreadSide::from_name(side))?;
    let (own, other) = match side {
        ThreadSide::External => (("major", major), ("minor", minor)),
        ThreadSide::Internal => (("minor", minor), ("major", major)),
    };
    if other.1.is_some() {
        return Err(error::input(other_side(side, other.0, own.0)));
    }
    let diameter = own.1.map(|value| quantity::reading(value, own.0)).transpose()?;
    let over = |count: usize, value: &Bound<'py, PyAny>, field: &str| {
        quantity::reading(value, field).map(|read| Pitch::Over(count, read))
    };
    let given = [
        pitch.map(|value| over(1, value, "pitch")),
        ten_pitches.map(|value| over(10, value, "ten_pitches")),
        pitches.map(|value| {
            let (count, value) = pair(value, "pitches", "a count of pitches, and the length over them")?;
            over(quantity::count(&count, "pitches, item 1")?, &value, "pitches")
        }),
        per_inch.map(per_inch_of),
    ];
    let mut pitches = given.into_iter().flatten().collect::<PyResult<Vec<Pitch>>>()?;
    if pitches.len() > 1 {
        let problem = Problem::new(Code::FieldsConflict, Part::Field("pitch".to_owned()));
        let need = Value::text("one of pitch, ten_pitches, pitches, per_inch");
        return Err(error::input(problem.got(Value::Count(pitches.len())).need(need).into()));
    }
    let wear = quantity::length_if(wear, "wear")?;
    let list = among_or_all(among)?;
    let found = error::call(|| {
        let mut measured = Measured::new(side);
        if let Some((value, plus_minus)) = diameter {
            measured = measured.with_diameter(value, plus_minus)?;
        }
        if let Some(pitch) = pitches.pop() {
            measured = pitch.of(measured)?;
        }
        if let Some(wear) = wear {
            measured = measured.with_wear(wear)?;
        }
        thread::identify(&measured, &list)
    })?;
    let candidates: Vec<_> =
        found.candidates.iter().map(|one| candidate(py, one)).collect::<PyResult<_>>()?;
    // The ways are those of the leading two.
    let words = |way: &Separation| match &found.candidates[..] {
        [first, second, ..] => way.words(first.thread, second.thread),
        _ => String::new(),
    };
    let way = |way: &Separation| separation(py, way, words(way));
    let next = found.next().map(way).transpose()?;
    let ways: Vec<_> = found.ways.iter().map(way).collect::<PyResult<_>>()?;
    let (candidates, ways) = (PyTuple::new(py, candidates)?, PyTuple::new(py, ways)?);
    made(py, "Identification", (candidates, found.nearest.map(Thread), next, ways, found.advice()))
}

/// A pitch as it was measured.
enum Pitch {
    Over(usize, (CoreLength, CoreLength)),
    PerInch(f64, Option<f64>),
}

/// The two items of a pair.
fn pair<'py>(
    value: &Bound<'py, PyAny>,
    field: &str,
    need: &str,
) -> PyResult<(Bound<'py, PyAny>, Bound<'py, PyAny>)> {
    let wrong = || quantity::wrong_kind(value, field, need);
    if !quantity::is_list(value) {
        return Err(wrong());
    }
    let items: [_; 2] = value.try_iter()?.collect::<PyResult<Vec<_>>>()?.try_into().map_err(|_| wrong())?;
    let [first, second] = items;
    Ok((first, second))
}

/// Threads per inch, alone or with how far the count may be off.
fn per_inch_of(value: &Bound<'_, PyAny>) -> PyResult<Pitch> {
    if !quantity::is_list(value) {
        return quantity::number(value, "per_inch").map(|count| Pitch::PerInch(count, None));
    }
    let (count, error) = pair(value, "per_inch", "a count, and how far it may be off")?;
    let (count, error) =
        (quantity::number(&count, "per_inch")?, quantity::number(&error, "per_inch, item 2")?);
    Ok(Pitch::PerInch(count, Some(error)))
}

impl Pitch {
    fn of(self, measured: Measured) -> Result<Measured, Error> {
        match self {
            Pitch::Over(count, (value, plus_minus)) => measured.with_pitches(count, value, plus_minus),
            Pitch::PerInch(count, error) => measured
                .with_per_inch(ratio(count), error.map(ratio))
                // Here the error is an item of the pair, and has no name of its own.
                .map_err(|error| match &error.problem().part {
                    Part::Field(field) if field == "plus_minus" => {
                        error.at(Part::Field("per_inch, item 2".to_owned()))
                    }
                    _ => error,
                }),
        }
    }
}

/// The error of a diameter that cannot be measured on a side.
fn other_side(side: ThreadSide, field: &str, own: &str) -> Error {
    let why = format!(
        "of an {} thread the crests have the {own} diameter, and a caliper does not reach its {field} one",
        side.name()
    );
    Problem::new(Code::ThreadSide, Part::Field(field.to_owned()))
        .got(Value::text(format!("{field} of an {} thread", side.name())))
        .need(Value::text(format!("{own}, the diameter over its crests")))
        .why(&why)
        .fix(format!("give {own}=, or the other side"))
        .into()
}

fn candidate<'py>(py: Python<'py>, one: &Candidate) -> PyResult<Bound<'py, PyAny>> {
    let diameter = span(py, one.diameter)?;
    made(py, "Candidate", (Thread(one.thread), one.share.value, diameter, Length(one.ten_pitches)))
}

fn separation<'py>(py: Python<'py>, way: &Separation, words: String) -> PyResult<Bound<'py, PyAny>> {
    let [first, second] = way.expected.each_ref().map(|[least, most]| (Fact::of(least), Fact::of(most)));
    made(py, "Separation", (way.measure.name(), first, second, way.separates, words))
}

/// Every way to tell two threads apart that applies, in the order to be tried: what to measure, the least and the most to
/// expect for the first and for the second, and whether it separates them. Both are threads or designations.
///
/// Raises as `Thread`, `InputError` also for a thread that the side has not (THREAD_SIDE, OUT_OF_RANGE), `UnknownNameError` for
/// the side, `QuantityError` for what is no thread.
///
/// >>> import linewright as lw
/// >>> for way in lw.separate_threads("M11x1", "7/16-24", side="external"):
/// ...     print(way.measure, way.separates)
/// ten pitches True
/// diameter False
/// taper over 5 mm False
/// flank angle False
#[pyfunction]
#[pyo3(signature = (first, second, /, *, side))]
pub(crate) fn separate_threads<'py>(
    py: Python<'py>,
    first: &Bound<'py, PyAny>,
    second: &Bound<'py, PyAny>,
    side: &str,
) -> PyResult<Vec<Bound<'py, PyAny>>> {
    let (first, second) = (given(first, "first")?, given(second, "second")?);
    let ways = error::call(|| thread::separate(&first, &second, ThreadSide::from_name(side)?))?;
    ways.iter().map(|way| separation(py, way, way.words(first, second))).collect()
}
