//! Clips: where along a line it is held, and how many to buy.

use crate::error;
use crate::path::Path;
use crate::problem::problems;
use crate::quantity;
use crate::record::{self, Call, Record, Reduced};
use crate::results::made;
use crate::units::Length;
use linewright::source::{Checked, Source};
use linewright::{Error, clip};
use pyo3::prelude::*;
use pyo3::types::PyTuple;

/// How far apart clips may be, how far from an end the first may be, and where that was read. Local codes and the
/// vehicle maker's data rule over it.
///
/// Raises `InputError` (OUT_OF_RANGE and the codes of `read_length`), `QuantityError` for a bare number.
///
/// >>> import linewright as lw
/// >>> rule = lw.ClipRule(spacing="300 mm", from_end="80 mm", source="the shop's own rule")
/// >>> [str(clip.station) for clip in rule.clips(lw.Path.from_straights(["600 mm"])).clips]
/// ['80 mm', '300 mm', '520 mm']
#[pyclass(frozen, eq, get_all, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct ClipRule {
    /// Largest distance between clips.
    spacing: Length,
    /// Largest distance of the first and the last clip from its end.
    from_end: Length,
    /// Where it was read.
    source: String,
}

impl ClipRule {
    fn of(rule: &clip::ClipRule, source: String) -> Self {
        ClipRule { spacing: Length(rule.spacing()), from_end: Length(rule.from_end()), source }
    }

    fn core(&self) -> Result<clip::ClipRule, Error> {
        let source = Source::new(&self.source, "", Checked::SecondHand);
        clip::ClipRule::new(self.spacing.0, self.from_end.0, source)
    }
}

impl Record for ClipRule {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        Call::class::<Self>(py)
            .named("spacing", self.spacing)?
            .named("from_end", self.from_end)?
            .named("source", &self.source)
    }
}

#[pymethods]
impl ClipRule {
    #[new]
    #[pyo3(signature = (*, spacing, from_end, source))]
    fn new(spacing: &Bound<'_, PyAny>, from_end: &Bound<'_, PyAny>, source: &str) -> PyResult<Self> {
        let (spacing, from_end) =
            (quantity::length(spacing, "spacing")?, quantity::length(from_end, "from_end")?);
        let given =
            ClipRule { spacing: Length(spacing), from_end: Length(from_end), source: source.to_owned() };
        error::call(|| given.core().map(|rule| ClipRule::of(&rule, rule.source().text.clone())))
    }

    /// The fewest clips along a path that keep the rule, evenly spread; a line no longer than two end distances gets
    /// one in its middle. Stations are distances along the center line from end A.
    ///
    /// >>> import linewright as lw
    /// >>> found = lw.clip_rules()[0].clips(lw.Path.from_straights(["600 mm"]))
    /// >>> [str(clip.station) for clip in found.clips]
    /// ['100 mm', '500 mm']
    #[pyo3(signature = (path, /))]
    fn clips<'py>(&self, path: &Bound<'py, Path>) -> PyResult<Bound<'py, PyAny>> {
        let py = path.py();
        let found = error::call(|| Ok(self.core()?.clips(&path.get().0)))?;
        let clip = |clip: &clip::Clip| made(py, "Clip", (Length(clip.station), clip.in_bend));
        let clips: Vec<_> = found.clips.iter().map(clip).collect::<PyResult<_>>()?;
        made(py, "Clips", (PyTuple::new(py, clips)?, PyTuple::new(py, problems(&found.problems))?))
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

/// The clip rules that the library knows, each with its source. The vehicle maker's data and local codes rule over
/// them.
///
/// >>> import linewright as lw
/// >>> [str(rule.spacing) for rule in lw.clip_rules()]
/// ['400 mm', '500 mm']
#[pyfunction]
pub(crate) fn clip_rules() -> Vec<ClipRule> {
    clip::rules().iter().map(|rule| ClipRule::of(rule, rule.source().to_string())).collect()
}

/// The clips of a rule that is not kept: those of `ClipRule(spacing=..., from_end=...).clips(path)`.
///
/// Raises as `ClipRule`.
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
    ClipRule::new(spacing, from_end, "the caller")?.clips(path)
}

/// Clips to buy and spares: what is missing, and one in ten more, at least two (common practice, no source).
///
/// Raises `InputError` (OUT_OF_RANGE), `QuantityError` for what is no whole number.
///
/// >>> import linewright as lw
/// >>> lw.clips_to_buy(16, 11)
/// (5, 2)
#[pyfunction]
#[pyo3(signature = (needed, reusable, /))]
pub(crate) fn clips_to_buy(
    needed: &Bound<'_, PyAny>,
    reusable: &Bound<'_, PyAny>,
) -> PyResult<(usize, usize)> {
    let (needed, reusable) = (quantity::count(needed, "needed")?, quantity::count(reusable, "reusable")?);
    error::compute(|| clip::clips_to_buy(needed, reusable))
}
