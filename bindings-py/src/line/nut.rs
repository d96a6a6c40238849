//! A nut.

use super::pair;
use crate::error;
use crate::quantity;
use crate::record::{self, Call, Record, Reduced};
use crate::thread::{self, Thread};
use crate::units::Length;
use linewright::{Nose, bounds};
use pyo3::prelude::*;

/// A nut by its thread, length over all, bore and nose ("coned", "flat", "sleeve"). Thread and nose may be None or
/// "unknown": not known, which a plan does not let pass.
///
/// `thread_length` is the length of its thread, from under its head toward the nose, and `lead` the unthreaded part in
/// front of it, 0 mm where the thread runs to the nose; both, or None for not measured. `End.clamp_margin` needs them.
///
/// Raises `InputError` (OUT_OF_RANGE, also where thread and lead are longer than the nut, FIELD_MISSING for one of them
/// without the other, and the codes of `Thread` and `read_length`), `UnknownNameError` for the nose, `QuantityError` for a
/// bare number.
///
/// >>> import linewright as lw
/// >>> nut = lw.Nut("M10x1", length="17 mm", bore="5.0 mm", nose="coned")
/// >>> nut.thread, nut.length
/// (Thread('M10x1'), mm(17.0))
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct Nut(linewright::Nut);

impl Nut {
    pub(super) fn of(nut: linewright::Nut) -> Self {
        Nut(nut)
    }

    pub(super) fn core(&self) -> linewright::Nut {
        self.0
    }
}

impl Record for Nut {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        let thread = self.thread().map(|thread| thread.0.to_string());
        Call::class::<Self>(py)
            .arg(thread)?
            .named("length", self.length())?
            .named("bore", self.bore())?
            .named("nose", self.nose())?
            .given("across_flats", self.across_flats())?
            .given("thread_length", self.thread_length())?
            .given("lead", self.lead())
    }
}

#[pymethods]
impl Nut {
    #[new]
    #[pyo3(signature = (
        thread, *, length, bore, nose, across_flats=None, thread_length=None, lead=None
    ))]
    fn new(
        thread: Option<&Bound<'_, PyAny>>,
        length: &Bound<'_, PyAny>,
        bore: &Bound<'_, PyAny>,
        nose: Option<&str>,
        across_flats: Option<&Bound<'_, PyAny>>,
        thread_length: Option<&Bound<'_, PyAny>>,
        lead: Option<&Bound<'_, PyAny>>,
    ) -> PyResult<Self> {
        let thread = thread::known(thread)?;
        let (length, bore) = (quantity::length(length, "length")?, quantity::length(bore, "bore")?);
        let flats = quantity::length_if(across_flats, "across_flats")?;
        let thread_length = quantity::length_if(thread_length, "thread_length")?;
        let lead = quantity::length_if(lead, "lead")?;
        error::call(|| {
            let nut = linewright::Nut::new(thread, length, bore, nose.map_or(Ok(None), Nose::from_name)?)?;
            let nut = flats.map_or(Ok(nut), |flats| nut.with_across_flats(flats))?;
            match pair(("thread_length", thread_length), ("lead", lead))? {
                Some((thread_length, lead)) => nut.with_thread_length(thread_length, lead),
                None => Ok(nut),
            }
        })
        .map(Nut)
    }

    /// Hexagon across its flats; None where not measured. It says nothing about the thread.
    #[getter]
    fn across_flats(&self) -> Option<Length> {
        self.0.across_flats().map(Length)
    }

    /// Hexagon across its corners, sharp ones: the real nut is no larger. None where its flats were not measured.
    #[getter]
    fn across_corners(&self) -> Option<Length> {
        self.0.across_corners().map(Length)
    }

    /// Length of its thread, from under its head toward the nose; None where not measured.
    #[getter]
    fn thread_length(&self) -> Option<Length> {
        self.0.thread_length().map(Length)
    }

    /// Unthreaded lead in front of its thread; None where not measured.
    #[getter]
    fn lead(&self) -> Option<Length> {
        self.0.lead().map(Length)
    }

    /// The smallest centerline radius that the nut slides along on tube of diameter `od`: rigid geometry of a straight
    /// bore over a round arc. None where it does not pass the tube at all.
    ///
    /// >>> import linewright as lw
    /// >>> nut = lw.Nut("M10x1", length="17 mm", bore="5.0 mm", nose="coned")
    /// >>> print(nut.tightest_curve("3/16 in"))
    /// 154.61 mm
    #[pyo3(signature = (od, /))]
    fn tightest_curve(&self, od: &Bound<'_, PyAny>) -> PyResult<Option<Length>> {
        let od = quantity::length(od, "od")?;
        error::call(|| Ok(self.0.tightest_curve(bounds::OD.length(od)?).map(Length)))
    }

    /// Thread; None where not known.
    #[getter]
    fn thread(&self) -> Option<Thread> {
        self.0.thread().map(Thread)
    }

    /// Length over all.
    #[getter]
    fn length(&self) -> Length {
        Length(self.0.length())
    }

    /// Bore.
    #[getter]
    fn bore(&self) -> Length {
        Length(self.0.bore())
    }

    /// Form of the nose; None where not known.
    #[getter]
    fn nose(&self) -> Option<&'static str> {
        self.0.nose().map(Nose::name)
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
