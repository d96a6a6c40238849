//! What trial bends say about springback, with intervals, and which further bends would say more.

use super::Springback;
use super::calibration;
use crate::error;
use crate::quantity::{self, wrong_kind};
use crate::record::{self, Call, Record, Reduced};
use crate::results::made;
use crate::units::Angle;
use linewright::card;
use linewright::springback;
use linewright::units::ratio;
use pyo3::prelude::*;

/// What is believed about springback before any trial: each part as a pair of what is expected and how far off it may be
/// (one standard deviation), how the two are off together (`correlation`, from -0.999 to 0.999; 0 where one says nothing of
/// the other), the scatter of one bend, and the number of bends that this scatter is believed like, 1 to 10 000.
///
/// Both spreads are what they say, whatever the trials scatter: trials that repeat well make the angles surer that they were
/// made at, and what was only believed stays as doubtful as it was believed to be.
///
/// Raises `QuantityError`; the limits are checked by `TrialFit`.
///
/// >>> import linewright as lw
/// >>> prior = lw.Prior(constant=("1 deg", "0.5 deg"), proportional=(0.02, 0.01), scatter="0.3 deg", worth=2)
/// >>> fit = lw.TrialFit([("90 deg", "87 deg")], prior=prior)
/// >>> print(fit.springback().setting("90 deg"), fit.springback().basis)
/// 93.02 deg blend
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct Prior(pub(crate) springback::Prior);

impl Record for Prior {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        Call::class::<Self>(py)
            .named("constant", self.constant())?
            .named("proportional", self.proportional())?
            .named("correlation", self.correlation())?
            .named("scatter", self.scatter())?
            .named("worth", self.worth())
    }
}

#[pymethods]
impl Prior {
    #[new]
    #[pyo3(signature = (*, constant, proportional, scatter, worth, correlation=None))]
    fn new(
        constant: &Bound<'_, PyAny>,
        proportional: &Bound<'_, PyAny>,
        scatter: &Bound<'_, PyAny>,
        worth: &Bound<'_, PyAny>,
        correlation: Option<&Bound<'_, PyAny>>,
    ) -> PyResult<Self> {
        const PAIR: &str = "a pair: what is expected, and how far off it may be";
        let [expected, spread] = quantity::angles(Some(constant), "constant")?[..] else {
            return Err(wrong_kind(constant, "constant", PAIR));
        };
        let shares = quantity::list(Some(proportional), "proportional", quantity::number)?;
        let [share, share_spread] = shares[..] else {
            return Err(wrong_kind(proportional, "proportional", PAIR));
        };
        let correlation = correlation.map(|share| quantity::number(share, "correlation")).transpose()?;
        Ok(Prior(springback::Prior {
            constant: [expected, spread],
            proportional: [ratio(share), ratio(share_spread)],
            correlation: ratio(correlation.unwrap_or(0.0)),
            scatter: quantity::angle(scatter, "scatter")?,
            worth: quantity::count(worth, "worth")?,
        }))
    }

    /// Expected constant part, and how far off it may be.
    #[getter]
    fn constant(&self) -> (Angle, Angle) {
        (Angle(self.0.constant[0]), Angle(self.0.constant[1]))
    }

    /// Expected proportional part, and how far off it may be.
    #[getter]
    fn proportional(&self) -> (f64, f64) {
        (self.0.proportional[0].value, self.0.proportional[1].value)
    }

    /// How the two parts are off together.
    #[getter]
    fn correlation(&self) -> f64 {
        self.0.correlation.value
    }

    /// Scatter of one bend.
    #[getter]
    fn scatter(&self) -> Angle {
        Angle(self.0.scatter)
    }

    /// Number of bends that the scatter is believed like.
    #[getter]
    fn worth(&self) -> usize {
        self.0.worth
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

/// The line through trial bends with its uncertainty: springback = constant + proportional x set, each bend off by a normal
/// error of the same unknown size. Where bends scatter by less than the step their angles are read to, all can be rounded to
/// the same side: every interval reaches further by what that can make. Without a prior it needs two trials at clearly different
/// angles, and says how sure it is from three on. Beside a prior, given the scatter, precisions add up; all that the scatter may
/// be is integrated over. An estimate: it holds for one tube on one former, near the angles of its trials.
///
/// Raises `InputError` (TRIALS_UNUSABLE, also for trials that a prior expects less than once in a thousand times; OUT_OF_RANGE),
/// `QuantityError`.
///
/// >>> import linewright as lw
/// >>> sets, gots = (20, 30, 45, 60, 75, 90, 105, 120), (18.4, 28.6, 42.9, 58.2, 72.5, 87.5, 102.2, 117.3)
/// >>> fit = lw.TrialFit([(lw.deg(s), lw.deg(g)) for s, g in zip(sets, gots)])
/// >>> print(*fit.setting_interval("90 deg", chance=0.95))
/// 92.26 deg 92.75 deg
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct TrialFit(springback::TrialFit);

impl Record for TrialFit {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        Call::class::<Self>(py).arg(self.trials())?.given("prior", self.prior())
    }
}

type Interval<T> = PyResult<Option<(T, T)>>;

#[pymethods]
impl TrialFit {
    #[new]
    #[pyo3(signature = (trials, /, *, prior=None))]
    fn new(trials: &Bound<'_, PyAny>, prior: Option<&Bound<'_, PyAny>>) -> PyResult<Self> {
        let trials = super::trials(Some(trials))?;
        let prior = match prior.map(|prior| prior.cast::<Prior>().map_err(|_| prior)) {
            Some(Ok(prior)) => Some(prior.get().0),
            Some(Err(other)) => return Err(wrong_kind(other, "prior", "a Prior")),
            None => None,
        };
        error::call(|| match prior {
            Some(prior) => springback::TrialFit::with_prior(prior, &trials),
            None => springback::TrialFit::new(&trials),
        })
        .map(TrialFit)
    }

    /// The trials, as pairs of set and remaining angle.
    #[getter]
    fn trials(&self) -> Vec<(Angle, Angle)> {
        super::pairs(self.0.trials())
    }

    /// What was believed before them; None if nothing was.
    #[getter]
    fn prior(&self) -> Option<Prior> {
        self.0.prior().copied().map(Prior)
    }

    /// The springback, for a bench.
    ///
    /// Raises `InputError` (OUT_OF_RANGE) where the line is no springback, such as one that falls with the angle: more trials,
    /// or a prior, make one of it.
    ///
    /// >>> import linewright as lw
    /// >>> fit = lw.TrialFit([("30 deg", "28.6 deg"), ("60 deg", "58.2 deg"), ("90 deg", "87.4 deg")])
    /// >>> print(fit.springback().setting("60 deg"))
    /// 61.97 deg
    fn springback(&self) -> PyResult<Springback> {
        error::call(|| self.0.springback()).map(Springback)
    }

    /// The step that the angles left were read to, as their numbers show: the coarsest of 1, 1/2, 1/3, 1/4, 1/5, 1/6, 1/10,
    /// 1/20, 1/60, 1/50 and 1/100 degree that they are multiples of. A minority read far finer does not count. None where there is none, and without trials.
    ///
    /// >>> import linewright as lw
    /// >>> fit = lw.TrialFit([("30 deg", "28 deg"), ("60 deg", "57.5 deg"), ("90 deg", "87 deg")])
    /// >>> print(fit.reading, round(fit.scatter.deg, 3))
    /// 0.5 deg 0.144
    #[getter]
    fn reading(&self) -> Option<Angle> {
        self.0.reading().map(Angle)
    }

    /// Scatter of one bend, one standard deviation. Without a prior it is at least what the rounding of a reading makes, its
    /// step (0.001 degrees where none shows) divided by the root of 12; with one, that of the mean precision of all that it may
    /// be. None for two trials without a prior, which lie on any line.
    #[getter]
    fn scatter(&self) -> Option<Angle> {
        self.0.scatter().map(Angle)
    }

    /// Standard errors of the constant and of the proportional part; None for two trials without a prior.
    #[getter]
    fn standard_errors(&self) -> Option<(Angle, f64)> {
        self.0.standard_errors().map(|(constant, proportional)| (Angle(constant), proportional.value))
    }

    /// Interval of the constant part at a chance such as 0.95; None for two trials without a prior.
    ///
    /// Raises `InputError` (OUT_OF_RANGE).
    ///
    /// >>> import linewright as lw
    /// >>> fit = lw.TrialFit([("30 deg", "28.6 deg"), ("60 deg", "58.2 deg"), ("90 deg", "87.4 deg")])
    /// >>> print(*fit.constant_interval(chance=0.95))
    /// -2.44 deg 3.9 deg
    #[pyo3(signature = (*, chance))]
    fn constant_interval(&self, chance: &Bound<'_, PyAny>) -> Interval<Angle> {
        let chance = quantity::number(chance, "chance")?;
        let found = error::call(|| self.0.constant_interval(chance))?;
        Ok(found.map(|[low, high]| (Angle(low), Angle(high))))
    }

    /// Interval of the proportional part at a chance; None for two trials without a prior.
    ///
    /// Raises `InputError` (OUT_OF_RANGE).
    ///
    /// >>> import linewright as lw
    /// >>> fit = lw.TrialFit([("30 deg", "28.6 deg"), ("60 deg", "58.2 deg"), ("90 deg", "87.4 deg")])
    /// >>> [round(end, 4) for end in fit.proportional_interval(chance=0.95)]
    /// [-0.0289, 0.0689]
    #[pyo3(signature = (*, chance))]
    fn proportional_interval(&self, chance: &Bound<'_, PyAny>) -> Interval<f64> {
        let chance = quantity::number(chance, "chance")?;
        let found = error::call(|| self.0.proportional_interval(chance))?;
        Ok(found.map(|[low, high]| (low.value, high.value)))
    }

    /// Interval of the right setting for a wanted angle at a chance (Fieller's); None for two trials without a prior, and
    /// where the trials say so little that it has no end, or that all of it would spring forward. Neither end is ever below the
    /// wanted angle.
    ///
    /// Raises `InputError` (OUT_OF_RANGE), `QuantityError` for a bare angle.
    ///
    /// >>> import linewright as lw
    /// >>> fit = lw.TrialFit([("30 deg", "28.6 deg"), ("60 deg", "58.2 deg"), ("90 deg", "87.4 deg")])
    /// >>> print(*fit.setting_interval("60 deg", chance=0.95))
    /// 60.75 deg 63.21 deg
    #[pyo3(signature = (wanted, /, *, chance))]
    fn setting_interval(&self, wanted: &Bound<'_, PyAny>, chance: &Bound<'_, PyAny>) -> Interval<Angle> {
        let (wanted, chance) = (quantity::angle(wanted, "wanted")?, quantity::number(chance, "chance")?);
        let found = error::call(|| self.0.setting_interval(wanted, chance))?;
        Ok(found.map(|[low, high]| (Angle(low), Angle(high))))
    }

    /// How far the next bend at a setting may land from what the line says, either way, at a chance, read as those before; None
    /// for two trials without a prior.
    ///
    /// Raises `InputError` (OUT_OF_RANGE), `QuantityError` for a bare angle.
    ///
    /// >>> import linewright as lw
    /// >>> fit = lw.TrialFit([("30 deg", "28.6 deg"), ("60 deg", "58.2 deg"), ("90 deg", "87.4 deg")])
    /// >>> print(fit.next_bend("60 deg", chance=0.95))
    /// 2.4 deg
    #[pyo3(signature = (setting, /, *, chance))]
    fn next_bend(&self, setting: &Bound<'_, PyAny>, chance: &Bound<'_, PyAny>) -> PyResult<Option<Angle>> {
        let (setting, chance) = (quantity::angle(setting, "setting")?, quantity::number(chance, "chance")?);
        Ok(error::call(|| self.0.next_bend(setting, chance))?.map(Angle))
    }

    /// Share of what is known at a setting that comes from the trials: 1 without a prior, 0 without trials. It is
    /// the share of the belief's variance there that the trials took away: for one trial there, how much of the way to it the line
    /// went.
    ///
    /// Raises `InputError` (OUT_OF_RANGE), `QuantityError` for a bare angle.
    ///
    /// >>> import linewright as lw
    /// >>> fit = lw.TrialFit([("30 deg", "28.6 deg"), ("60 deg", "58.2 deg"), ("90 deg", "87.4 deg")])
    /// >>> fit.weight_of_trials("60 deg")
    /// 1.0
    #[pyo3(signature = (setting, /))]
    fn weight_of_trials(&self, setting: &Bound<'_, PyAny>) -> PyResult<f64> {
        let setting = quantity::angle(setting, "setting")?;
        error::call(|| self.0.weight_of_trials(setting)).map(|weight| weight.value)
    }

    /// The trial that does not belong to the others, as its place in `trials`; None where none stands out, where there are
    /// fewer than five, and with a prior.
    #[getter]
    fn outlier(&self) -> Option<usize> {
        self.0.outlier()
    }

    /// Whether the trials bend away from a straight line; None for fewer than five at three or more angles, and with a
    /// prior.
    #[getter]
    fn is_bent(&self) -> Option<bool> {
        self.0.is_bent()
    }

    /// Whether the trials contradict what was believed: where the belief is right, trials lie so far from it less than once in
    /// twenty times. They are weighed against each other all the same, and neither should be trusted before more trials agree
    /// with one of them. None without a prior, and without trials.
    ///
    /// >>> import linewright as lw
    /// >>> prior = lw.Prior(constant=("1 deg", "0.2 deg"), proportional=(0.02, 0.004), scatter="0.2 deg", worth=4)
    /// >>> lw.TrialFit([("90 deg", "85.83 deg"), ("90 deg", "85.87 deg")], prior=prior).is_contradicted
    /// True
    #[getter]
    fn is_contradicted(&self) -> Option<bool> {
        self.0.is_contradicted()
    }

    /// Degrees of freedom of what is known of the scatter: the trials less two, with a prior its worth and the trials.
    #[getter]
    fn degrees_of_freedom(&self) -> usize {
        self.0.degrees_of_freedom()
    }

    /// The fewest further bends, from angles that can be tried, after which the interval of every wanted angle's setting
    /// reaches no further than `half_width` either way at a chance, if line and scatter stay as they are; at most twelve.
    ///
    /// Raises `InputError` (NOT_KNOWN for two trials without a prior, FIELD_MISSING for an empty list, OUT_OF_RANGE, also for a
    /// candidate of 0 degrees), `QuantityError`.
    ///
    /// >>> import linewright as lw
    /// >>> fit = lw.TrialFit([("30 deg", "28.6 deg"), ("60 deg", "58.2 deg"), ("90 deg", "87.4 deg")])
    /// >>> found = fit.advice(["60 deg"], half_width="0.5 deg", chance=0.95, candidates=["30 deg", "90 deg"])
    /// >>> print(*found.angles, found.is_enough)
    /// 90 deg True
    #[pyo3(signature = (wanted, /, *, half_width, chance, candidates))]
    fn advice<'py>(
        &self,
        wanted: &Bound<'py, PyAny>,
        half_width: &Bound<'_, PyAny>,
        chance: &Bound<'_, PyAny>,
        candidates: &Bound<'_, PyAny>,
    ) -> PyResult<Bound<'py, PyAny>> {
        let py = wanted.py();
        let wanted = calibration::wanted(wanted)?;
        let half_width = quantity::angle(half_width, "half_width")?;
        let chance = quantity::number(chance, "chance")?;
        let candidates = quantity::angles(Some(candidates), "candidates")?;
        let advice = error::call(|| self.0.advice(&wanted, half_width, chance, &candidates))?;
        let angles: Vec<Angle> = advice.angles.into_iter().map(Angle).collect();
        made(py, "Advice", (pyo3::types::PyTuple::new(py, angles)?, Angle(advice.reaches), advice.is_enough))
    }

    /// The page of the fit as SVG, for print or a screen: every trial, the line, the band in which the next bend lies at a
    /// chance, and what to bend to for each wanted angle, at most 14. `calibration` names tube, former and day.
    ///
    /// Raises `InputError` (OUT_OF_RANGE), `QuantityError`.
    ///
    /// >>> import linewright as lw
    /// >>> fit = lw.TrialFit([("30 deg", "28.6 deg"), ("60 deg", "58.2 deg"), ("90 deg", "87.4 deg")])
    /// >>> fit.page(["60 deg"], chance=0.95).startswith("<svg")
    /// True
    #[pyo3(signature = (wanted, /, *, chance, calibration=None))]
    fn page(
        &self,
        wanted: &Bound<'_, PyAny>,
        chance: &Bound<'_, PyAny>,
        calibration: Option<&Bound<'_, PyAny>>,
    ) -> PyResult<String> {
        let (wanted, chance) = (calibration::wanted(wanted)?, quantity::number(chance, "chance")?);
        let record = calibration.map(calibration::taken).transpose()?;
        error::call(|| card::springback_page(&self.0, record.as_ref(), &wanted, chance))
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
