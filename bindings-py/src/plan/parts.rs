//! What a plan consists of.

use crate::record::{self, Call, Record, Reduced};
use crate::units::{Angle, Length};
use linewright::plan::{self, Minimum};
use pyo3::prelude::*;
use pyo3::types::PyDict;

/// One bend of a `Plan`.
#[pyclass(frozen, eq, get_all, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct PlannedBend {
    /// Number along the path, from 1 at end A.
    number: usize,
    /// The angle that shall remain.
    angle: Angle,
    /// Turn of the bend plane against the bend made before it, in the direction of work; None for the first one made.
    rotation: Option<Angle>,
    /// Radius as formed.
    radius: Length,
    /// Where the pen goes, from the plan's datum: the start of the bend seen from there; None where not known.
    mark: Option<Length>,
    /// The same place from the raw end at which work starts; None where the shortening of its flare is not known.
    from_raw_end: Option<Length>,
    /// The same place from the finished flare face at which work starts.
    from_flare_face: Length,
    /// From the end of the bend made before it to the start of this one, for marking again after each bend; for the first
    /// bend made it is the mark itself.
    from_last_bend: Option<Length>,
    /// How it is made: "former", "hand" or "mandrel".
    making: String,
    /// What the tool is bent to; None where not known, and for a bend that is not made on the former.
    setting: Option<Angle>,
}

impl PlannedBend {
    pub(super) fn of(bend: &plan::PlannedBend) -> Self {
        PlannedBend {
            number: bend.number,
            angle: Angle(bend.angle),
            rotation: bend.rotation.map(Angle),
            radius: Length(bend.radius),
            mark: bend.mark.map(Length),
            from_raw_end: bend.from_raw_end.map(Length),
            from_flare_face: Length(bend.from_flare_face),
            from_last_bend: bend.from_last_bend.map(Length),
            making: bend.making.name().to_owned(),
            setting: bend.setting.map(Angle),
        }
    }
}

impl Record for PlannedBend {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        Call::class::<Self>(py)
            .named("number", self.number)?
            .named("angle", self.angle)?
            .named("rotation", self.rotation)?
            .named("radius", self.radius)?
            .named("mark", self.mark)?
            .named("from_raw_end", self.from_raw_end)?
            .named("from_flare_face", self.from_flare_face)?
            .named("from_last_bend", self.from_last_bend)?
            .named("making", &self.making)?
            .named("setting", self.setting)
    }
}

#[pymethods]
impl PlannedBend {
    #[new]
    #[pyo3(signature = (*, number, angle, rotation, radius, mark, from_raw_end, from_flare_face, from_last_bend, making,
        setting))]
    #[expect(clippy::too_many_arguments, reason = "one for each attribute, all of them named")]
    fn new(
        number: usize,
        angle: Angle,
        rotation: Option<Angle>,
        radius: Length,
        mark: Option<Length>,
        from_raw_end: Option<Length>,
        from_flare_face: Length,
        from_last_bend: Option<Length>,
        making: String,
        setting: Option<Angle>,
    ) -> Self {
        PlannedBend {
            number,
            angle,
            rotation,
            radius,
            mark,
            from_raw_end,
            from_flare_face,
            from_last_bend,
            making,
            setting,
        }
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

/// What is needed and planned at one end.
///
/// `minima`, `terms` and `shortfalls` have the keys "flare after", "flare before" and "assembled". The terms of a
/// minimum add up to it. A shortfall is the smallest move of the bend away from the end that meets the need, and zero
/// where it is met. All are None while the bench lacks the flare tool.
#[pyclass(frozen, eq, get_all, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct EndPlan {
    /// The finished straight at this end.
    straight: Length,
    /// When it is flared: "before bending", "after bending", or "neither" where the straight has room for neither.
    order: String,
    /// The straight that each way needs.
    minima: Named<Length>,
    /// What each of these is the sum of: a list of pairs of a name and a length.
    terms: Named<Terms>,
    /// What the straight lacks for each way.
    shortfalls: Named<Length>,
    /// How much the flare shortens the tube; None where nobody measured it.
    net_shortening: Option<Length>,
}

/// The terms of a sum.
type Terms = Vec<(String, Length)>;

/// Values under names, in the core's order: a dict. None where not known.
#[derive(Clone, PartialEq)]
struct Named<T>(Vec<(String, Option<T>)>);

impl<T> FromIterator<(String, Option<T>)> for Named<T> {
    fn from_iter<I: IntoIterator<Item = (String, Option<T>)>>(rows: I) -> Self {
        Named(rows.into_iter().collect())
    }
}

impl<'py, T: IntoPyObject<'py>> IntoPyObject<'py> for Named<T> {
    type Target = PyDict;
    type Output = Bound<'py, PyDict>;
    type Error = PyErr;

    fn into_pyobject(self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        let dict = PyDict::new(py);
        for (name, value) in self.0 {
            dict.set_item(name, value)?;
        }
        Ok(dict)
    }
}

impl<T: for<'a, 'py> FromPyObject<'a, 'py>> FromPyObject<'_, '_> for Named<T> {
    type Error = PyErr;

    fn extract(object: Borrowed<'_, '_, PyAny>) -> PyResult<Self> {
        let dict = object.cast::<PyDict>()?;
        dict.iter().map(|(name, value)| Ok((name.extract()?, value.extract().map_err(Into::into)?))).collect()
    }
}

/// One figure of every minimum, under the name of its kind.
fn named<T>(end: &plan::EndPlan, figure: impl Fn(&Minimum) -> Option<T>) -> Named<T> {
    end.minima().iter().map(|minimum| (minimum.kind.name().to_owned(), figure(minimum))).collect()
}

impl EndPlan {
    pub(super) fn of(end: &plan::EndPlan) -> Self {
        let terms = |minimum: &Minimum| {
            minimum.terms.iter().map(|term| (term.what.clone(), Length(term.length))).collect()
        };
        EndPlan {
            straight: Length(end.straight()),
            order: end.order().name().to_owned(),
            minima: named(end, |minimum| minimum.need.map(Length)),
            terms: named(end, |minimum| minimum.need.map(|_| terms(minimum))),
            shortfalls: named(end, |minimum| minimum.shortfall.map(Length)),
            net_shortening: end.net_shortening().map(Length),
        }
    }
}

impl Record for EndPlan {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        Call::class::<Self>(py)
            .named("straight", self.straight)?
            .named("order", &self.order)?
            .named("minima", self.minima.clone())?
            .named("terms", self.terms.clone())?
            .named("shortfalls", self.shortfalls.clone())?
            .named("net_shortening", self.net_shortening)
    }
}

#[pymethods]
impl EndPlan {
    #[new]
    #[pyo3(signature = (*, straight, order, minima, terms, shortfalls, net_shortening))]
    fn new(
        straight: Length,
        order: String,
        minima: Named<Length>,
        terms: Named<Terms>,
        shortfalls: Named<Length>,
        net_shortening: Option<Length>,
    ) -> Self {
        EndPlan { straight, order, minima, terms, shortfalls, net_shortening }
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

/// One step of a `Plan`.
#[pyclass(frozen, eq, get_all, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct Step {
    /// What it is: "cut", "nut gate", "flare", "look gate", "mark", "bend", "trial fit", "trim" or "finish".
    kind: String,
    /// What to do, in words and rounded figures.
    text: String,
    /// Whether an open stop holds it back.
    locked: bool,
    /// Whether it is to be confirmed before the next step.
    is_gate: bool,
}

impl Step {
    pub(super) fn of(step: &plan::Step) -> Self {
        Step {
            kind: step.kind.name().to_owned(),
            text: step.text.clone(),
            locked: step.locked,
            is_gate: step.kind.is_gate(),
        }
    }
}

impl Record for Step {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        Call::class::<Self>(py)
            .named("kind", &self.kind)?
            .named("text", &self.text)?
            .named("locked", self.locked)?
            .named("is_gate", self.is_gate)
    }
}

#[pymethods]
impl Step {
    #[new]
    #[pyo3(signature = (*, kind, text, locked, is_gate))]
    fn new(kind: String, text: String, locked: bool, is_gate: bool) -> Self {
        Step { kind, text, locked, is_gate }
    }

    fn __str__(&self) -> &str {
        &self.text
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
