//! How much tube a flare takes: by the geometry of the finished form, by a rule of the trade, by a test piece.

use crate::error;
use crate::quantity::{self, wrong_kind};
use crate::record::{self, Call, Record, Reduced};
use crate::results::made;
use crate::units::Length;
use linewright::flare::{self, FlareTrial, Stretch};
use linewright::{Code, Flare, Part, Problem, Value, units};
use pyo3::prelude::*;

/// A finished flare by its geometry: its form ("double-45" or "bubble"), outside diameter and wall of the tube, and the
/// diameter of the finished flare. The front angle of a bubble flare is an assumption.
///
/// Nobody knows beforehand how the wall stretches while it is widened, so what it takes is computed under three
/// assumptions: "keeps length" (the middle of the wall keeps its length), "uniaxial" (the wall thins as under hoop tension
/// alone) and "keeps wall" (it keeps its thickness).
///
/// Raises `InputError` (SINGLE_45_REFUSED, NOT_KNOWN for "single-37", whose geometry is not computed, OUT_OF_RANGE, also
/// where the diameter leaves no room for two leaves, and the codes of `read_length`), `UnknownNameError` for the flare,
/// `QuantityError` for a bare number.
///
/// >>> import linewright as lw
/// >>> form = lw.FlareForm("double-45", od="3/16 in", wall="0.028 in", diameter="6.9 mm")
/// >>> print(form.stick_out("keeps length"), form.height, form.net_shortening("keeps length"))
/// 3.28 mm 1.93 mm 1.35 mm
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct FlareForm {
    form: flare::FlareForm,
    od: Length,
    wall: Length,
    diameter: Length,
}

impl Record for FlareForm {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        Call::class::<Self>(py)
            .arg(self.flare())?
            .named("od", self.od)?
            .named("wall", self.wall)?
            .named("diameter", self.diameter)
    }
}

#[pymethods]
impl FlareForm {
    #[new]
    #[pyo3(signature = (flare, *, od, wall, diameter))]
    fn new(
        flare: &str,
        od: &Bound<'_, PyAny>,
        wall: &Bound<'_, PyAny>,
        diameter: &Bound<'_, PyAny>,
    ) -> PyResult<Self> {
        let (od, wall) = (quantity::length(od, "od")?, quantity::length(wall, "wall")?);
        let diameter = quantity::length(diameter, "diameter")?;
        let form = error::call(|| flare::FlareForm::new(Flare::from_name(flare)?, od, wall, diameter))?;
        Ok(FlareForm { form, od: Length(od), wall: Length(wall), diameter: Length(diameter) })
    }

    /// Its form: "double-45" or "bubble".
    #[getter]
    fn flare(&self) -> &'static str {
        self.form.flare().name()
    }

    /// Outside diameter of the tube.
    #[getter]
    fn od(&self) -> Length {
        self.od
    }

    /// Wall of the tube.
    #[getter]
    fn wall(&self) -> Length {
        self.wall
    }

    /// Diameter of the finished flare.
    #[getter]
    fn diameter(&self) -> Length {
        self.diameter
    }

    /// Height of the finished flare from where the tube starts to widen.
    #[getter]
    fn height(&self) -> Length {
        Length(self.form.height())
    }

    /// Tube that must stand out of the clamp before forming, under an assumption about the wall: "keeps length",
    /// "uniaxial" or "keeps wall".
    ///
    /// Raises `UnknownNameError`.
    ///
    /// >>> import linewright as lw
    /// >>> form = lw.FlareForm("double-45", od="3/16 in", wall="0.028 in", diameter="6.9 mm")
    /// >>> [str(form.stick_out(stretch)) for stretch in ("keeps length", "uniaxial", "keeps wall")]
    /// ['3.28 mm', '3.69 mm', '4.16 mm']
    #[pyo3(signature = (stretch, /))]
    fn stick_out(&self, stretch: &str) -> PyResult<Length> {
        error::call(|| Ok(Length(self.form.stick_out(Stretch::from_name(stretch)?))))
    }

    /// How much shorter the tube gets, tip to tip, under an assumption about the wall: stick-out less height.
    ///
    /// Raises `UnknownNameError`.
    ///
    /// >>> import linewright as lw
    /// >>> form = lw.FlareForm("bubble", od="4.75 mm", wall="0.75 mm", diameter="7.1 mm")
    /// >>> print(form.net_shortening("keeps length"))
    /// 1.51 mm
    #[pyo3(signature = (stretch, /))]
    fn net_shortening(&self, stretch: &str) -> PyResult<Length> {
        error::call(|| Ok(Length(self.form.net_shortening(Stretch::from_name(stretch)?))))
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

/// The smallest and the largest diameter in an argument.
fn least_and_most(value: &Bound<'_, PyAny>) -> PyResult<[units::Length; 2]> {
    let lengths = quantity::lengths(Some(value), "diameters")?;
    lengths.try_into().map_err(|_| wrong_kind(value, "diameters", "two lengths, the least and the most"))
}

/// Every way to the allowance of a flare ("double-45", "bubble", "single-37"), the one that wins first: a test piece, the
/// geometry, a rule of the trade. A way that says nothing is not in the list.
///
/// `od` and `wall` are the tube's. `diameters` are the smallest and the largest diameter of the finished flare; without
/// them those of `flare_size` are taken, where its figures are for this wall. `before` and `after` are a test piece
/// measured over all before and after one of its ends was flared.
///
/// Raises `InputError` (SINGLE_45_REFUSED, FIELD_MISSING for one measure of a test piece without the other, OUT_OF_RANGE
/// and the codes of `read_length`), `UnknownNameError` for the flare, `QuantityError` for a bare number.
///
/// >>> import linewright as lw
/// >>> for way in lw.flare_allowances("double-45", od="3/16 in", wall="0.028 in", before="200 mm", after="198 mm"):
/// ...     print(way.way, way.net_shortening and [str(length) for length in way.net_shortening], way.cut_allowance)
/// test piece ['2 mm', '2 mm'] None
/// geometry ['1.17 mm', '2.58 mm'] None
/// rule None 5 mm
#[pyfunction]
#[pyo3(signature = (flare, /, *, od, wall, diameters=None, before=None, after=None))]
pub(crate) fn flare_allowances<'py>(
    py: Python<'py>,
    flare: &str,
    od: &Bound<'py, PyAny>,
    wall: &Bound<'py, PyAny>,
    diameters: Option<&Bound<'py, PyAny>>,
    before: Option<&Bound<'py, PyAny>>,
    after: Option<&Bound<'py, PyAny>>,
) -> PyResult<Vec<Bound<'py, PyAny>>> {
    let (od, wall) = (quantity::length(od, "od")?, quantity::length(wall, "wall")?);
    let diameters = diameters.map(least_and_most).transpose()?;
    let (before, after) = (quantity::length_if(before, "before")?, quantity::length_if(after, "after")?);
    let ways = error::call(|| {
        let flare = Flare::from_name(flare)?;
        let trial = match (before, after) {
            (Some(before), Some(after)) => Some(FlareTrial::new(before, after)?),
            (None, None) => None,
            // The core takes the two as one; here they are two arguments.
            (before, _) => {
                let field = if before.is_none() { "before" } else { "after" };
                return Err(Problem::new(Code::FieldMissing, Part::Field(field.to_owned()))
                    .need(Value::text("the test piece before and after its flare"))
                    .into());
            }
        };
        let sizes = diameters.or_else(|| flare::known_diameters(flare, od, wall));
        flare::allowances(flare, od, wall, sizes, trial.as_ref())
    })?;
    let range = |range: Option<[units::Length; 2]>| range.map(|[least, most]| (Length(least), Length(most)));
    let row = |way: &flare::Allowance| {
        let (source, checked) = (way.source.to_string(), way.source.checked.name());
        let cut = way.cut_allowance.map(Length);
        let parts = (way.way.name(), range(way.stick_out), range(way.net_shortening), cut, source, checked);
        made(py, "Allowance", parts)
    };
    ways.iter().map(row).collect()
}
