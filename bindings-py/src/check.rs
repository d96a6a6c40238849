//! Telling a part from its mirror image.

use crate::error;
use crate::problem::Problem;
use crate::quantity;
use crate::record::{self, Call, Record, Reduced};
use linewright::check;
use pyo3::prelude::*;

/// The look that tells a part from its mirror image: whether a leg points up while an earlier bend lies flat.
///
/// Plans carry one; nobody needs to make it.
///
/// >>> import linewright as lw
/// >>> look = lw.HandCheck(level_legs=(1, 2), look_leg=3, up=True)
/// >>> look.text
/// 'legs 1 and 2 flat, the bend between them to the left: leg 3 points UP'
/// >>> look.judge(points_up=False).code
/// 'HAND_MISMATCH'
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct HandCheck(pub(crate) check::HandCheck);

impl Record for HandCheck {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        Call::class::<Self>(py)
            .named("level_legs", self.level_legs())?
            .named("look_leg", self.look_leg())?
            .named("up", self.up())
    }
}

#[pymethods]
impl HandCheck {
    #[new]
    #[pyo3(signature = (*, level_legs, look_leg, up))]
    fn new(level_legs: &Bound<'_, PyAny>, look_leg: &Bound<'_, PyAny>, up: bool) -> PyResult<Self> {
        let Ok([first, second]) =
            <[_; 2]>::try_from(quantity::list(Some(level_legs), "level_legs", quantity::count)?)
        else {
            return Err(quantity::wrong_kind(level_legs, "level_legs", "two legs"));
        };
        let look_leg = quantity::count(look_leg, "look_leg")?;
        Ok(HandCheck(check::HandCheck { level_legs: (first, second).into(), look_leg, up }))
    }

    /// The two legs held level, with the bend between them going to the left, seen from above along the direction of
    /// work.
    #[getter]
    fn level_legs(&self) -> (usize, usize) {
        self.0.level_legs.into()
    }

    /// The leg looked at.
    #[getter]
    fn look_leg(&self) -> usize {
        self.0.look_leg
    }

    /// Whether it points up.
    #[getter]
    fn up(&self) -> bool {
        self.0.up
    }

    /// The check as a sentence.
    #[getter]
    fn text(&self) -> String {
        self.0.text()
    }

    /// What it means that the leg points up, or does not: a problem (HAND_MISMATCH) for the mirror part, otherwise
    /// None.
    ///
    /// >>> import linewright as lw
    /// >>> lw.HandCheck(level_legs=(1, 2), look_leg=3, up=True).judge(points_up=True) is None
    /// True
    #[pyo3(signature = (*, points_up))]
    fn judge(&self, points_up: bool) -> PyResult<Option<Problem>> {
        error::compute(|| self.0.judge(points_up).map(Problem))
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
