//! One thread in another.

use super::{Thread, given};
use crate::error;
use crate::quantity;
use crate::record::{self, Call, Record, Reduced};
use crate::results::made;
use crate::units::Length;
use linewright::thread::{self, CATALOGUE, Profile, Stripping};
use linewright::units::{self, Area, to_mm2};
use pyo3::prelude::*;

/// A male thread in a female one, over all sizes that their classes allow: made by `mate`. Worst is the combination of
/// sizes that holds least, best the one that holds most. Overlaps and shares of a taper thread are the mean along the engaged
/// length once it binds, as it does when it is hand-tight.
///
/// >>> import linewright as lw
/// >>> mating = lw.mate("3/8-24 UNF-2A", "M10x1-6H")
/// >>> mating.starts, mating.feel, mating.level, mating.is_lookalike
/// ('always', 'turns in', 'stop', True)
/// >>> print(mating.overlap_worst, mating.overlap_best)
/// 0.08 mm 0.29 mm
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct Mating(thread::Mating);

impl Record for Mating {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        Call::function(py, "mate")?.arg(self.male())?.arg(self.female())
    }
}

#[pymethods]
impl Mating {
    /// The male.
    #[getter]
    fn male(&self) -> Thread {
        Thread(self.0.male())
    }

    /// The female.
    #[getter]
    fn female(&self) -> Thread {
        Thread(self.0.female())
    }

    /// Whether it starts: "always", "sometimes" (with some of the sizes) or "never".
    #[getter]
    fn starts(&self) -> &'static str {
        self.0.starts().name()
    }

    /// What fingers notice: "does not start", "binds", "turns in", "rattles" or "slides in"; where sizes disagree, the
    /// more treacherous.
    #[getter]
    fn feel(&self) -> &'static str {
        self.0.feel().name()
    }

    /// How grave: "stop" for different threads, "note" for the same.
    #[getter]
    fn level(&self) -> &'static str {
        self.0.level().name()
    }

    /// Whether it is another thread that turns in by hand and may hold on less than half of its thread.
    #[getter]
    fn is_lookalike(&self) -> bool {
        self.0.is_lookalike()
    }

    /// Whether both are the same thread. Nothing else belongs together, however well it turns.
    #[getter]
    fn is_same(&self) -> bool {
        self.0.is_same()
    }

    /// Radial overlap in the worst case; negative where the crests pass each other.
    #[getter]
    fn overlap_worst(&self) -> Length {
        Length(self.0.overlap_worst())
    }

    /// Radial overlap in the best case.
    #[getter]
    fn overlap_best(&self) -> Length {
        Length(self.0.overlap_best())
    }

    /// The worst overlap as a share of the female's full height. The right thread's own worst is well below 1 too.
    #[getter]
    fn share_worst(&self) -> f64 {
        self.0.share_worst().value
    }

    /// The best overlap as a share of the female's full height; 0 where nothing starts.
    #[getter]
    fn share_best(&self) -> f64 {
        self.0.share_best().value
    }

    /// Turns until it binds, at the tightest and at the loosest sizes; None where it never does.
    #[getter]
    fn turns(&self) -> (Option<f64>, Option<f64>) {
        self.0.turns().into()
    }

    /// Engaged length until it binds, at the tightest and at the loosest sizes; None where it never does.
    #[getter]
    fn lengths(&self) -> (Option<Length>, Option<Length>) {
        self.0.lengths().map(|length| length.map(Length)).into()
    }

    /// The finding in plain words, the worst first.
    #[getter]
    fn verdict(&self) -> String {
        self.0.verdict()
    }

    /// What is left, at worst, of a full engagement over a wanted length: the share of it that is reached before the
    /// threads bind, times the worst share of the height.
    ///
    /// Raises `InputError` (OUT_OF_RANGE and the codes of `read_length`), `QuantityError` for a bare number.
    ///
    /// >>> import linewright as lw
    /// >>> lw.mate("3/8-24", "M10x1").engaged_share("6 mm") < 0.2
    /// True
    #[pyo3(signature = (wanted, /))]
    fn engaged_share(&self, wanted: &Bound<'_, PyAny>) -> PyResult<f64> {
        let wanted = quantity::length(wanted, "wanted")?;
        error::call(|| self.0.engaged_share(wanted).map(|share| share.value))
    }

    fn __str__(&self) -> String {
        self.verdict()
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

/// What a male does in a female, from the limits of their classes, the usual ones where none is given. Both are threads
/// or designations.
///
/// Raises `InputError` (the codes of `Thread`; THREAD_SIDE where the male is an internal thread or the female an
/// external one; OUT_OF_RANGE as `Thread.limits`), `QuantityError` for what is no thread.
///
/// >>> import linewright as lw
/// >>> lw.mate("M10x1-6g", "M10x1-6H").level
/// 'note'
#[pyfunction]
#[pyo3(signature = (male, female, /))]
pub(crate) fn mate(male: &Bound<'_, PyAny>, female: &Bound<'_, PyAny>) -> PyResult<Mating> {
    let (male, female) = (given(male, "male")?, given(female, "female")?);
    error::call(|| thread::Mating::new(&male, &female)).map(Mating)
}

/// Major, pitch and minor diameter in an argument.
fn sizes(value: &Bound<'_, PyAny>, field: &str) -> PyResult<[units::Length; 3]> {
    let lengths = quantity::lengths(Some(value), field)?;
    lengths
        .try_into()
        .map_err(|_| quantity::wrong_kind(value, field, "three lengths: major, pitch, minor diameter"))
}

/// One part in another, both as measured at the end that enters first: `male_sizes` and `female_sizes` are the major, the
/// pitch and the minor diameter; pitch, flanks and taper are those of the threads.
///
/// The answer says whether it `starts`, the radial `overlap` there, negative where the crests pass each other, and the
/// engaged `length` and `turns` until the play is used up, None where nothing binds.
///
/// Raises `InputError` (THREAD_SIDE; OUT_OF_RANGE, also for diameters that do not follow each other or are not those of the thread;
/// the codes of `Thread` and `read_length`), `QuantityError` for bare numbers.
///
/// >>> import linewright as lw
/// >>> worn = ["9.3 mm", "8.7 mm", "8.2 mm"]
/// >>> pair = lw.mate_measured("3/8-24", worn, "M10x1", ["10.2 mm", "9.45 mm", "9.1 mm"])
/// >>> pair.starts, str(pair.overlap)
/// (True, '0.1 mm')
#[pyfunction]
#[pyo3(signature = (male, male_sizes, female, female_sizes, /))]
pub(crate) fn mate_measured<'py>(
    male: &Bound<'py, PyAny>,
    male_sizes: &Bound<'py, PyAny>,
    female: &Bound<'py, PyAny>,
    female_sizes: &Bound<'py, PyAny>,
) -> PyResult<Bound<'py, PyAny>> {
    let py = male.py();
    let (male, female) = (given(male, "male")?, given(female, "female")?);
    let (outside, inside) = (sizes(male_sizes, "male_sizes")?, sizes(female_sizes, "female_sizes")?);
    let pair = error::call(|| Profile::mate((&male, outside), (&female, inside)))?;
    made(py, "Engagement", (pair.starts, Length(pair.overlap), pair.length.map(Length), pair.turns))
}

/// What would have to be sheared off to pull a male out of a female that are engaged over a wanted length, worst and
/// best. No load follows from it.
///
/// `engaged` is the wanted length, or what is reached before the threads bind; `external_mm2` and `internal_mm2` are the
/// areas of the male's and of the female's ridge in square millimeters; `share` is the smaller of them over that of the
/// right male at the wanted length.
///
/// Raises `InputError` (as `mate`; NOT_KNOWN for a taper thread, OUT_OF_RANGE and the codes of `read_length` for the
/// engagement), `QuantityError` for a bare number.
///
/// >>> import linewright as lw
/// >>> wrong = lw.stripping("3/8-24 UNF-2A", "M10x1-6H", engagement="6 mm")
/// >>> wrong.share[0] < 0.5
/// True
#[pyfunction]
#[pyo3(signature = (male, female, /, *, engagement))]
pub(crate) fn stripping<'py>(
    male: &Bound<'py, PyAny>,
    female: &Bound<'py, PyAny>,
    engagement: &Bound<'py, PyAny>,
) -> PyResult<Bound<'py, PyAny>> {
    let (male, female) = (given(male, "male")?, given(female, "female")?);
    let wanted = quantity::length(engagement, "engagement")?;
    let found = error::call(|| Stripping::new(&male, &female, wanted))?;
    let areas = |both: [Area; 2]| <(f64, f64)>::from(both.map(to_mm2));
    let share = <(f64, f64)>::from(found.share.map(|share| share.value));
    let parts = (Length(found.engaged), areas(found.external), areas(found.internal), share);
    made(engagement.py(), "Stripping", parts)
}

/// The threads of an argument that is a list of them; those of the catalogue where there is none.
pub(super) fn among_or_all(among: Option<&Bound<'_, PyAny>>) -> PyResult<Vec<linewright::Thread>> {
    match among {
        Some(among) => quantity::list(Some(among), "among", given),
        None => Ok(CATALOGUE.iter().map(|row| row.thread).collect()),
    }
}

/// The pairs of different threads, each as male and as female, that turn in by hand and may hold on less than half of
/// the thread; the most treacherous first. `among` are threads or designations; without it the catalogue.
///
/// Raises as `Thread`, `QuantityError` for what is no list of threads.
///
/// >>> import linewright as lw
/// >>> [str(pair.male) for pair in lw.thread_lookalikes(["M10x1", "3/8-24"])]
/// ['3/8-24 UNF']
#[pyfunction]
#[pyo3(signature = (among=None))]
pub(crate) fn thread_lookalikes(among: Option<&Bound<'_, PyAny>>) -> PyResult<Vec<Mating>> {
    let list = among_or_all(among)?;
    error::compute(|| thread::lookalikes(&list).into_iter().map(Mating).collect())
}
