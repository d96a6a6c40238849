//! Springback.

pub(crate) mod calibration;
pub(crate) mod fit;
pub(crate) mod mechanics;

use crate::error;
use crate::quantity;
use crate::record::{self, Call, Record, Reduced};
use crate::units::Angle;
use calibration::Calibration;
use linewright::Trial;
use linewright::springback::Basis;
use linewright::units::ratio;
use pyo3::prelude::*;
use pyo3::types::PyType;

/// Springback as a straight line over the set angle: constant + proportional x set. `proportional` is a plain ratio.
///
/// An estimate: it holds for one tube on one former, near the angles of its trials. Usually it comes from
/// `Springback.from_trials`.
///
/// Raises `InputError` (OUT_OF_RANGE and the codes of `read_length`), `QuantityError` for a bare constant.
///
/// >>> import linewright as lw
/// >>> springback = lw.Springback(constant="0.1 deg", proportional=0.0378)
/// >>> print(springback.setting("60 deg"))
/// 62.46 deg
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct Springback(pub(crate) linewright::Springback);

impl Record for Springback {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        let fitted = linewright::Springback::from_trials(self.0.trials());
        if fitted.is_ok_and(|fitted| fitted == self.0) {
            let class = py.get_type::<Self>();
            return Call::of(class.getattr("from_trials")?, "Springback.from_trials").arg(self.trials());
        }
        let call = Call::class::<Self>(py)
            .named("constant", self.constant())?
            .named("proportional", self.proportional())?;
        if self.0.basis() == Basis::Given {
            return Ok(call);
        }
        let trials = Some(self.trials()).filter(|trials| !trials.is_empty());
        let calibration = self.0.calibration().cloned().map(Calibration);
        call.named("basis", self.basis())?.given("trials", trials)?.given("calibration", calibration)
    }
}

/// Trial bends, each a pair: the angle the tool was set to, and the angle that remained.
pub(super) fn trials(given: Option<&Bound<'_, PyAny>>) -> PyResult<Vec<Trial>> {
    quantity::list(given, "trials", |trial, field| match quantity::angles(Some(trial), field)?.as_slice() {
        [set, got] => Ok(Trial { set: *set, got: *got }),
        _ => Err(quantity::wrong_kind(trial, field, "a pair: the angle set, the angle that remained")),
    })
}

/// Trial bends as Python has them.
pub(super) fn pairs(trials: &[Trial]) -> Vec<(Angle, Angle)> {
    trials.iter().map(|trial| (Angle(trial.set), Angle(trial.got))).collect()
}

#[pymethods]
impl Springback {
    #[new]
    #[pyo3(signature = (*, constant, proportional, basis="given", trials=None, calibration=None))]
    fn new(
        constant: &Bound<'_, PyAny>,
        proportional: &Bound<'_, PyAny>,
        basis: &str,
        trials: Option<&Bound<'_, PyAny>>,
        calibration: Option<&Bound<'_, PyAny>>,
    ) -> PyResult<Self> {
        let constant = quantity::angle(constant, "constant")?;
        let proportional = ratio(quantity::number(proportional, "proportional")?);
        let trials = self::trials(trials)?;
        let record = calibration.map(calibration::taken).transpose()?;
        error::call(|| {
            let basis = Basis::from_name(basis)?;
            let kept = linewright::Springback::kept(constant, proportional, basis, &trials)?;
            match record {
                Some(record) => kept.with_calibration(record),
                None => Ok(kept),
            }
        })
        .map(Springback)
    }

    /// From trial bends, each a pair: the angle the tool was set to, and the angle that remained.
    ///
    /// Raises `InputError` (TRIALS_UNUSABLE, OUT_OF_RANGE and the codes of `read_length`), `QuantityError`.
    ///
    /// >>> import linewright as lw
    /// >>> springback = lw.Springback.from_trials([("90 deg", "86.5 deg"), ("45 deg", "43.2 deg")])
    /// >>> print(springback.setting("60 deg"), springback.is_weak)
    /// 62.46 deg False
    #[classmethod]
    #[pyo3(signature = (trials, /))]
    fn from_trials(_class: &Bound<'_, PyType>, trials: &Bound<'_, PyAny>) -> PyResult<Self> {
        let trials = self::trials(Some(trials))?;
        error::call(|| linewright::Springback::from_trials(&trials)).map(Springback)
    }

    /// The part that does not depend on the angle.
    #[getter]
    fn constant(&self) -> Angle {
        Angle(self.0.constant())
    }

    /// The part in proportion to the set angle: a plain ratio.
    #[getter]
    fn proportional(&self) -> f64 {
        self.0.proportional().value
    }

    /// The trials it was fitted to, as pairs of set and remaining angle; empty where the parts were given.
    #[getter]
    fn trials(&self) -> Vec<(Angle, Angle)> {
        pairs(self.0.trials())
    }

    /// What it rests on: "given", "trials", "mechanics", "prior" or "blend".
    #[getter]
    fn basis(&self) -> &'static str {
        self.0.basis().name()
    }

    /// The record of its trials; None where it has none.
    #[getter]
    fn calibration(&self) -> Option<Calibration> {
        self.0.calibration().cloned().map(Calibration)
    }

    /// The same with the record of its trials, for one that was fitted to them in another way, such as with a prior.
    ///
    /// Raises `InputError` (FIELDS_CONFLICT) where the record has other trials, `QuantityError` for what is no record.
    ///
    /// >>> import linewright as lw
    /// >>> tube = lw.Tube("4.75 mm", wall="0.7 mm", material="low-carbon steel")
    /// >>> trials = [("90 deg", "86.5 deg"), ("45 deg", "43.2 deg")]
    /// >>> made = lw.Calibration(trials, tube=tube, former="former 1", date="2026-05-14", revision="2")
    /// >>> lw.TrialFit(trials).springback().with_calibration(made).calibration == made
    /// True
    #[pyo3(signature = (calibration, /))]
    fn with_calibration(&self, calibration: &Bound<'_, PyAny>) -> PyResult<Self> {
        let record = calibration::taken(calibration)?;
        error::call(|| self.0.clone().with_calibration(record)).map(Springback)
    }

    /// Whether it rests on trials at one angle only.
    #[getter]
    fn is_weak(&self) -> bool {
        self.0.is_weak()
    }

    /// The angle to bend to so that the wanted angle remains. Not rounded.
    ///
    /// Raises `InputError` (OUT_OF_RANGE and the codes of `read_angle`), `QuantityError` for a bare number.
    ///
    /// >>> import linewright as lw
    /// >>> print(lw.Springback(constant="1 deg", proportional=0).setting("90 deg"))
    /// 91 deg
    #[pyo3(signature = (wanted, /))]
    fn setting(&self, wanted: &Bound<'_, PyAny>) -> PyResult<Angle> {
        let wanted = quantity::angle(wanted, "wanted")?;
        error::call(|| self.0.setting(wanted)).map(Angle)
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
