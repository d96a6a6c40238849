//! Threads.

pub(crate) mod catalogue;
pub(crate) mod identify;
pub(crate) mod limits;
pub(crate) mod mate;

use crate::error;
use crate::quantity::{self, wrong_kind};
use crate::record::{self, Call, Record, Reduced};
use crate::units::{Angle, Length};
use limits::Limits;
use linewright::thread::{Class, EngagementGroup, Series, ThreadSide};
use linewright::units::{ratio, to_mm2};
use linewright::{Code, Part, Problem, Value};
use pyo3::prelude::*;
use pyo3::types::PyString;

/// A thread by its designation. Two spellings of one thread are equal; a class makes another value of it, and
/// `is_same_size` compares without.
///
/// Raises `InputError`: THREAD_AMBIGUOUS for a metric diameter without pitch or a pipe thread without its family,
/// HEX_NOT_THREAD for a spanner size or a bare length, THREAD_CONTRADICTION where count, series or class do not belong
/// to the size, UNREADABLE otherwise.
///
/// >>> import linewright as lw
/// >>> lw.Thread("M 10 × 1,0")
/// Thread('M10x1')
/// >>> lw.Thread("3/8 UNF 2a")
/// Thread('3/8-24 UNF-2A')
/// >>> lw.Thread("3/8-24").diameter.inch
/// 0.375
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct Thread(pub(crate) linewright::Thread);

const DESIGNATION: &str = "a designation such as \"M10x1\"";

/// The thread in an argument; None and "unknown" are no thread.
pub(crate) fn known(value: Option<&Bound<'_, PyAny>>) -> PyResult<Option<linewright::Thread>> {
    let Some(value) = value else { return Ok(None) };
    if let Ok(thread) = value.cast::<Thread>() {
        return Ok(Some(thread.get().0));
    }
    let Ok(text) = value.cast::<PyString>() else {
        return Err(wrong_kind(value, "thread", &format!("{DESIGNATION}, or None for not known")));
    };
    let text = text.to_cow()?;
    error::call(|| linewright::Thread::read_or_unknown(&text))
}

/// The thread in an argument that has to be one.
pub(crate) fn given(value: &Bound<'_, PyAny>, field: &str) -> PyResult<linewright::Thread> {
    if let Ok(thread) = value.cast::<Thread>() {
        return Ok(thread.get().0);
    }
    let Ok(text) = value.cast::<PyString>() else { return Err(wrong_kind(value, field, DESIGNATION)) };
    let text = text.to_cow()?;
    error::call(|| linewright::Thread::read(&text).map_err(|error| error.at(Part::Field(field.to_owned()))))
}

/// Reads a thread's designation: `M10x1`, `M 10 × 1,0 - 6g`, `3/8-24`, `7/16-24 UNS-2B`, `G1/8 A`, `1/8-27 NPT`, each
/// with `LH` for left hand.
///
/// Raises as `Thread`.
///
/// >>> import linewright as lw
/// >>> lw.thread("M 10 × 1,0").designation
/// 'M10x1'
#[pyfunction]
#[pyo3(signature = (designation, /))]
pub(crate) fn thread(designation: &str) -> PyResult<Thread> {
    Thread::new(designation)
}

impl Thread {
    /// The side that was named, or the one that class or family say.
    fn side_or_own(&self, side: Option<&str>) -> PyResult<ThreadSide> {
        error::call(|| {
            match side {
            Some(side) => ThreadSide::from_name(side),
            None => self.0.side().ok_or_else(|| {
                Problem::new(Code::NotKnown, Part::Field("side".to_owned()))
                    .got(Value::text(self.designation()))
                    .need(Value::text("the side: an external and an internal thread have other limits"))
                    .why("class and family of the thread do not say whether it is external or internal")
                    .fix("give a class, such as M10x1-6H, or call .limits(\"external\") or .limits(\"internal\")")
                    .into()
            }),
        }
        })
    }

    fn own_limits(&self) -> PyResult<Limits> {
        Limits::new(self.0, self.side_or_own(None)?, None)
    }
}

impl Record for Thread {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        Call::class::<Self>(py).arg(self.designation())
    }
}

#[pymethods]
impl Thread {
    #[new]
    #[pyo3(signature = (designation, /))]
    fn new(designation: &str) -> PyResult<Self> {
        error::call(|| linewright::Thread::read(designation)).map(Thread)
    }

    /// The designation in its one spelling.
    #[getter]
    fn designation(&self) -> String {
        self.0.to_string()
    }

    /// The family of standards: "metric", "unified", "G", "R", "Rp", "Rc" or "NPT".
    #[getter]
    fn family(&self) -> &'static str {
        self.0.family().name()
    }

    /// "external" or "internal", where class or family say it; None where they do not.
    #[getter]
    fn side(&self) -> Option<&'static str> {
        self.0.side().map(ThreadSide::name)
    }

    /// The class of tolerances, such as "6g" or "2B"; None where none was given.
    #[getter]
    fn thread_class(&self) -> Option<String> {
        self.0.class().map(|class: Class| class.to_string())
    }

    /// The group of engagement lengths, "S", "N" or "L", where the designation has one (ISO metric only).
    #[getter]
    fn engagement(&self) -> Option<char> {
        self.0.engagement().map(EngagementGroup::letter)
    }

    /// The series of a Unified thread, "UNC", "UNF", "UNEF", "UN" or "UNS"; None for other families.
    #[getter]
    fn series(&self) -> Option<&'static str> {
        self.0.series().map(Series::name)
    }

    /// Which way it turns in: "right" or "left".
    #[getter]
    fn hand(&self) -> &'static str {
        self.0.hand().name()
    }

    /// Nominal diameter; of a pipe thread its basic major diameter at the gauge plane, of NPT the pipe's.
    #[getter]
    fn diameter(&self) -> Length {
        Length(self.0.diameter())
    }

    /// Pitch.
    #[getter]
    fn pitch(&self) -> Length {
        Length(self.0.pitch())
    }

    /// Threads per inch.
    #[getter]
    fn per_inch(&self) -> f64 {
        self.0.per_inch()
    }

    /// Half the angle between the flanks.
    #[getter]
    fn half_angle(&self) -> Angle {
        Angle(self.0.half_angle())
    }

    /// Change of diameter over length: 1/16 for a taper thread, 0 for a parallel one.
    #[getter]
    fn taper(&self) -> f64 {
        self.0.taper().value
    }

    /// Basic height of the thread, from root to crest.
    #[getter]
    fn height(&self) -> Length {
        Length(self.0.height())
    }

    /// Basic pitch diameter, not rounded; of NPT the one at the tip.
    #[getter]
    fn basic_pitch_diameter(&self) -> Length {
        Length(self.0.basic_pitch_diameter())
    }

    /// Lead angle at the basic pitch diameter.
    #[getter]
    fn lead_angle(&self) -> Angle {
        Angle(self.0.lead_angle())
    }

    /// Tensile stress area in square millimeters; None for pipe threads, whose standards define none.
    #[getter]
    fn stress_area_mm2(&self) -> Option<f64> {
        self.0.stress_area().map(to_mm2)
    }

    /// The shortest and the longest normal engagement of an ISO metric thread; None where the standard has no row.
    #[getter]
    fn normal_engagement(&self) -> Option<(Length, Length)> {
        self.0.normal_engagement().map(|(short, long)| (Length(short), Length(long)))
    }

    /// The engagement that the limits of a Unified thread are based on where none is stated; None for other families.
    #[getter]
    fn basic_engagement(&self) -> Option<Length> {
        self.0.basic_engagement().map(Length)
    }

    /// How far a taper thread goes in by hand: the gauge length of R and Rc (ISO 7-1, from memory), L1 of NPT; None for
    /// others.
    #[getter]
    fn gauge_length(&self) -> Option<Length> {
        self.0.gauge_length().map(Length)
    }

    /// Thread with full flanks that an external taper thread has at least: of R (ISO 7-1, from memory), L2 of NPT; None for
    /// others.
    #[getter]
    fn useful_length(&self) -> Option<Length> {
        self.0.useful_length().map(Length)
    }

    /// The thread without its class; it keeps its hand.
    #[getter]
    fn plain(&self) -> Thread {
        Thread(self.0.plain())
    }

    /// Whether both are the same thread, whatever their classes. `other` is a thread or a designation.
    ///
    /// Raises as `Thread`.
    ///
    /// >>> import linewright as lw
    /// >>> nut = lw.thread("M10x1-6g")
    /// >>> nut.is_same_size("M10x1-6H"), nut == lw.thread("M10x1-6H")
    /// (True, False)
    #[pyo3(signature = (other, /))]
    fn is_same_size(&self, other: &Bound<'_, PyAny>) -> PyResult<bool> {
        given(other, "other").map(|other| self.0.is_same_size(&other))
    }

    /// The limits of one side, "external" or "internal", by the thread's class, or the usual one where it has none.
    /// Without `side` it is the one that class or family say. `engagement` is a length of engagement that the limits of
    /// a Unified thread are to be based on instead of `basic_engagement`.
    ///
    /// Raises `InputError` (THREAD_SIDE where class or family belong to the other side, NOT_KNOWN where nothing says the
    /// side or the limits do not depend on an engagement, OUT_OF_RANGE and the codes of `read_length`),
    /// `UnknownNameError` for the side, `QuantityError` for a bare number.
    ///
    /// >>> import linewright as lw
    /// >>> limits = lw.thread("M10x1").limits("external")
    /// >>> limits.thread_class, limits.is_class_assumed, limits.major.min.mm, limits.major.max.mm
    /// ('6g', True, 9.794, 9.974)
    #[pyo3(signature = (side=None, *, engagement=None))]
    fn limits(&self, side: Option<&str>, engagement: Option<&Bound<'_, PyAny>>) -> PyResult<Limits> {
        let engagement = quantity::length_if(engagement, "engagement")?;
        Limits::new(self.0, self.side_or_own(side)?, engagement)
    }

    /// Smallest and largest major diameter, by `limits`.
    ///
    /// Raises `InputError`: NOT_KNOWN where neither class nor family say the side, OUT_OF_RANGE as `limits`.
    #[getter]
    fn major<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        self.own_limits()?.major(py)
    }

    /// Smallest and largest pitch diameter, by `limits`.
    ///
    /// Raises as `major`.
    ///
    /// >>> import linewright as lw
    /// >>> lw.thread("M10x1-6H").pitch_diameter
    /// DiameterLimits(min=mm(9.35), max=mm(9.5))
    /// >>> lw.thread("M10x1").pitch_diameter
    /// Traceback (most recent call last):
    ///     ...
    /// linewright.InputError: refuse NOT_KNOWN, field side: class and family of the thread do not say whether ...
    #[getter]
    fn pitch_diameter<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        self.own_limits()?.pitch_diameter(py)
    }

    /// Smallest and largest minor diameter, by `limits`.
    ///
    /// Raises as `major`.
    #[getter]
    fn minor<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        self.own_limits()?.minor(py)
    }

    /// The hole for tapping with a share of the full thread, 0.3 to 1. Full is what drill charts count: 3/4 of the sharp
    /// triangle at 60 degrees, so that the hole is d - share x 1.299 P; the thread's own height at 55 degrees.
    ///
    /// Raises `InputError`: NOT_A_NUMBER, OUT_OF_RANGE, NOT_KNOWN for a taper thread.
    ///
    /// >>> import linewright as lw
    /// >>> print(lw.thread("M10x1").tap_drill(0.77))
    /// 9 mm
    #[pyo3(signature = (share, /))]
    fn tap_drill(&self, share: &Bound<'_, PyAny>) -> PyResult<Length> {
        let share = ratio(quantity::number(share, "share")?);
        error::call(|| self.0.tap_drill(share)).map(Length)
    }

    /// The share of the full thread that a hole leaves, in the sense of `tap_drill`; 5/6 for a hole of the basic
    /// minor diameter at 60 degrees.
    ///
    /// Raises `InputError` (NOT_KNOWN for a taper thread, OUT_OF_RANGE and the codes of `read_length`), `QuantityError`
    /// for a bare number.
    ///
    /// >>> import linewright as lw
    /// >>> round(lw.thread("M10x1").thread_share("9 mm"), 3)
    /// 0.77
    #[pyo3(signature = (hole, /))]
    fn thread_share(&self, hole: &Bound<'_, PyAny>) -> PyResult<f64> {
        let hole = quantity::length(hole, "hole")?;
        error::call(|| self.0.thread_share(hole)).map(|share| share.value)
    }

    /// The group that an engaged length belongs to: "S", "N" or "L"; None where the standard has no row for the thread.
    ///
    /// Raises `InputError` (OUT_OF_RANGE and the codes of `read_length`), `QuantityError` for a bare number.
    ///
    /// >>> import linewright as lw
    /// >>> lw.thread("M10x1").engagement_group("6 mm")
    /// 'N'
    #[pyo3(signature = (length, /))]
    fn engagement_group(&self, length: &Bound<'_, PyAny>) -> PyResult<Option<char>> {
        let length = quantity::length(length, "length")?;
        error::call(|| self.0.engagement_group(length)).map(|group| group.map(EngagementGroup::letter))
    }

    fn __str__(&self) -> String {
        self.designation()
    }

    fn __repr__(&self, py: Python<'_>) -> PyResult<String> {
        record::repr(self, py)
    }

    fn __hash__(&self, py: Python<'_>) -> PyResult<isize> {
        record::hash(self, py)
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<Reduced<'py>> {
        record::reduce(self, py)
    }
}
