//! Trial bends as a workshop keeps them.

use super::Springback;
use crate::error;
use crate::quantity::{self, wrong_kind};
use crate::record::{self, Call, Record, Reduced};
use crate::tube::Tube;
use crate::units::Angle;
use linewright::springback::{self, Date};
use pyo3::prelude::*;
use pyo3::types::PyString;

/// Trial bends with the tube and the former they were made with, a date and a revision: what a springback rests on, as
/// data. `former` is its name in the workshop, `date` a text such as "2026-05-14" or a `datetime.date`, and `revision` names
/// this state of the record.
///
/// Raises `InputError` (FIELD_MISSING for an empty former or revision, UNREADABLE for the date, TRIALS_UNUSABLE,
/// OUT_OF_RANGE), `QuantityError`.
///
/// >>> import linewright as lw
/// >>> tube = lw.Tube("4.75 mm", wall="0.7 mm", material="low-carbon steel")
/// >>> trials = [("90 deg", "86.5 deg"), ("45 deg", "43.2 deg")]
/// >>> made = lw.Calibration(trials, tube=tube, former="former 1", date="2026-05-14", revision="2")
/// >>> print(made)
/// 4.75 mm x 0.7 mm, low-carbon steel, former 1, 2026-05-14, revision 2
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct Calibration(pub(crate) springback::Calibration);

impl Record for Calibration {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        Call::class::<Self>(py)
            .arg(self.trials())?
            .named("tube", self.tube())?
            .named("former", self.former())?
            .named("date", self.date())?
            .named("revision", self.revision())
    }
}

/// The record in an argument.
pub(crate) fn taken(value: &Bound<'_, PyAny>) -> PyResult<springback::Calibration> {
    match value.cast::<Calibration>() {
        Ok(record) => Ok(record.get().0.clone()),
        Err(_) => Err(wrong_kind(value, "calibration", "a Calibration")),
    }
}

/// A day as text: what it is, or what a day of the standard library says in the form of ISO 8601.
fn day(value: &Bound<'_, PyAny>) -> PyResult<String> {
    if let Ok(text) = value.cast::<PyString>() {
        return Ok(text.to_string_lossy().into_owned());
    }
    let is_day = value.is_instance(&value.py().import("datetime")?.getattr("date")?)?;
    if !is_day {
        return Err(wrong_kind(value, "date", "a day, such as \"2026-05-14\""));
    }
    // A datetime has a time behind its day.
    value.call_method1("strftime", ("%Y-%m-%d",))?.extract()
}

#[pymethods]
impl Calibration {
    #[new]
    #[pyo3(signature = (trials, /, *, tube, former, date, revision))]
    fn new(
        trials: &Bound<'_, PyAny>,
        tube: &Bound<'_, PyAny>,
        former: &str,
        date: &Bound<'_, PyAny>,
        revision: &str,
    ) -> PyResult<Self> {
        let trials = super::trials(Some(trials))?;
        let Ok(tube) = tube.cast::<Tube>() else { return Err(wrong_kind(tube, "tube", "a Tube")) };
        let (tube, date) = (&tube.get().0, day(date)?);
        error::call(|| springback::Calibration::new(&trials, tube, former, Date::read(&date)?, revision))
            .map(Calibration)
    }

    /// The trials, as pairs of set and remaining angle.
    #[getter]
    fn trials(&self) -> Vec<(Angle, Angle)> {
        super::pairs(self.0.trials())
    }

    /// The tube they were made of.
    #[getter]
    fn tube(&self) -> Tube {
        Tube(self.0.tube().clone())
    }

    /// The former they were made on, by its name in the workshop.
    #[getter]
    fn former(&self) -> &str {
        self.0.former()
    }

    /// The day they were made, as year-month-day.
    #[getter]
    fn date(&self) -> String {
        self.0.date().to_string()
    }

    /// Name or number of this state of the record.
    #[getter]
    fn revision(&self) -> &str {
        self.0.revision()
    }

    /// Whether a tube is of the size and the material of the trials.
    ///
    /// >>> import linewright as lw
    /// >>> tube = lw.Tube("4.75 mm", wall="0.7 mm", material="low-carbon steel")
    /// >>> trials = [("90 deg", "86.5 deg"), ("45 deg", "43.2 deg")]
    /// >>> made = lw.Calibration(trials, tube=tube, former="former 1", date="2026-05-14", revision="2")
    /// >>> made.is_for(tube)
    /// True
    #[pyo3(signature = (tube, /))]
    fn is_for(&self, tube: &Bound<'_, PyAny>) -> PyResult<bool> {
        match tube.cast::<Tube>() {
            Ok(tube) => Ok(self.0.is_for(&tube.get().0)),
            Err(_) => Err(wrong_kind(tube, "tube", "a Tube")),
        }
    }

    /// The springback of its trials, with this record in it.
    ///
    /// Raises as `Springback.from_trials`.
    ///
    /// >>> import linewright as lw
    /// >>> tube = lw.Tube("4.75 mm", wall="0.7 mm", material="low-carbon steel")
    /// >>> trials = [("90 deg", "86.5 deg"), ("45 deg", "43.2 deg")]
    /// >>> made = lw.Calibration(trials, tube=tube, former="former 1", date="2026-05-14", revision="2")
    /// >>> print(made.springback().setting("60 deg"))
    /// 62.46 deg
    fn springback(&self) -> PyResult<Springback> {
        error::call(|| self.0.springback()).map(Springback)
    }

    fn __str__(&self) -> String {
        self.0.to_string()
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

/// The angles in an argument that may be left out.
pub(super) fn wanted(given: &Bound<'_, PyAny>) -> PyResult<Vec<linewright::units::Angle>> {
    quantity::angles(Some(given), "wanted")
}
