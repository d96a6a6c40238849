//! The bench: former, flare tools, springback and habits of one workshop.

pub(crate) mod pieces;

use crate::error;
use crate::quantity::{self, length_if, wrong_kind};
use crate::record::{self, Call, Record, Reduced};
use crate::springback::Springback;
use crate::springback::mechanics::Mechanics;
use crate::units::Length;
use linewright::Flare;
use pyo3::prelude::*;
use pyo3::types::PyType;

/// A former: the centerline radius it leaves after springback (from a test piece, not the radius of its groove), and
/// the straight tube it must hold before the bend. Where `as_formed` was computed from the radius of the groove, see
/// `Former.of_groove`, that radius is kept as `groove`, and a plan says so.
///
/// Raises `InputError` (OUT_OF_RANGE and the codes of `read_length`), `QuantityError` for a bare number.
///
/// >>> import linewright as lw
/// >>> lw.Former(as_formed="14.3 mm", grip="20 mm")
/// Former(as_formed=mm(14.3), grip=mm(20.0))
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct Former(linewright::Former);

impl Record for Former {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        Call::class::<Self>(py)
            .named("as_formed", self.as_formed())?
            .named("grip", self.grip())?
            .given("groove", self.groove())
    }
}

#[pymethods]
impl Former {
    #[new]
    #[pyo3(signature = (*, as_formed, grip, groove=None))]
    fn new(
        as_formed: &Bound<'_, PyAny>,
        grip: &Bound<'_, PyAny>,
        groove: Option<&Bound<'_, PyAny>>,
    ) -> PyResult<Self> {
        let (as_formed, grip) = (quantity::length(as_formed, "as_formed")?, quantity::length(grip, "grip")?);
        let groove = length_if(groove, "groove")?;
        error::call(|| {
            let former = linewright::Former::new(as_formed, grip)?;
            groove.map_or(Ok(former), |groove| former.with_groove(groove))
        })
        .map(Former)
    }

    /// A former described by the centerline radius of its groove, for a tube whose material data are known: the radius as
    /// formed is computed, which is an estimate, and a plan says so. A test piece is better.
    ///
    /// Raises `InputError` (OUT_OF_RANGE, also where nothing of the bend would remain), `QuantityError` for a bare length,
    /// and for what is no `Mechanics`.
    ///
    /// >>> import linewright as lw
    /// >>> tube = lw.Mechanics("3/16 in", wall="0.028 in", modulus="207 GPa", yield_strength="250 MPa")
    /// >>> former = lw.Former.of_groove("14.2875 mm", grip="20 mm", tube=tube)
    /// >>> print(former.as_formed, former.groove)
    /// 14.44 mm 14.29 mm
    #[classmethod]
    #[pyo3(signature = (groove, /, *, grip, tube))]
    fn of_groove(
        _class: &Bound<'_, PyType>,
        groove: &Bound<'_, PyAny>,
        grip: &Bound<'_, PyAny>,
        tube: &Bound<'_, PyAny>,
    ) -> PyResult<Self> {
        let (groove, grip) = (quantity::length(groove, "groove")?, quantity::length(grip, "grip")?);
        let Ok(tube) = tube.cast::<Mechanics>() else {
            return Err(wrong_kind(tube, "tube", "a Mechanics"));
        };
        error::call(|| linewright::Former::of_groove(groove, grip, tube.get().tube())).map(Former)
    }

    /// Centerline radius of the groove, where the radius as formed was computed from it; None elsewhere.
    #[getter]
    fn groove(&self) -> Option<Length> {
        self.0.groove().map(Length)
    }

    /// Centerline radius after springback.
    #[getter]
    fn as_formed(&self) -> Length {
        Length(self.0.as_formed())
    }

    /// Straight tube held before the bend.
    #[getter]
    fn grip(&self) -> Length {
        Length(self.0.grip())
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

/// A flare tool for one form ("double-45", "bubble", "single-37"): how deep it clamps, how much tube stands out before
/// the first stroke, how much shorter the tube gets (from a test piece; None: not measured), and what is added on top
/// for safety (None: the usual).
///
/// Raises `InputError` (OUT_OF_RANGE, SINGLE_45_REFUSED and the codes of `read_length`), `UnknownNameError` for the
/// form, `QuantityError` for a bare number.
///
/// >>> import linewright as lw
/// >>> tool = lw.FlareTool("double-45", clamp="13 mm", projection="4 mm", net_shortening="2 mm")
/// >>> tool.net_shortening, tool.cut_spare
/// (mm(2.0), None)
#[pyclass(frozen, eq, from_py_object, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct FlareTool(linewright::FlareTool);

impl Record for FlareTool {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        Call::class::<Self>(py)
            .arg(self.flare())?
            .named("clamp", self.clamp())?
            .named("projection", self.projection())?
            .given("net_shortening", self.net_shortening())?
            .given("cut_spare", self.cut_spare())
    }
}

#[pymethods]
impl FlareTool {
    #[new]
    #[pyo3(signature = (flare, *, clamp, projection, net_shortening=None, cut_spare=None))]
    fn new(
        flare: &str,
        clamp: &Bound<'_, PyAny>,
        projection: &Bound<'_, PyAny>,
        net_shortening: Option<&Bound<'_, PyAny>>,
        cut_spare: Option<&Bound<'_, PyAny>>,
    ) -> PyResult<Self> {
        let clamp = quantity::length(clamp, "clamp")?;
        let projection = quantity::length(projection, "projection")?;
        let net = length_if(net_shortening, "net_shortening")?;
        let spare = length_if(cut_spare, "cut_spare")?;
        error::call(|| {
            let mut tool = linewright::FlareTool::new(Flare::from_name(flare)?, clamp, projection)?;
            if let Some(net) = net {
                tool = tool.with_net_shortening(net)?;
            }
            if let Some(spare) = spare {
                tool = tool.with_cut_spare(spare)?;
            }
            Ok(tool)
        })
        .map(FlareTool)
    }

    /// The form it makes.
    #[getter]
    fn flare(&self) -> &'static str {
        self.0.flare().name()
    }

    /// Depth of the clamp.
    #[getter]
    fn clamp(&self) -> Length {
        Length(self.0.clamp())
    }

    /// Tube standing out before the first stroke.
    #[getter]
    fn projection(&self) -> Length {
        Length(self.0.projection())
    }

    /// How much shorter the tube gets, tip to tip; None where nobody measured it.
    #[getter]
    fn net_shortening(&self) -> Option<Length> {
        self.0.net_shortening().map(Length)
    }

    /// What is added on top for safety; None where nothing was stated.
    #[getter]
    fn cut_spare(&self) -> Option<Length> {
        self.0.cut_spare().map(Length)
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

/// The tools and habits of one workshop: a former, one flare tool or a list with one for each form, the former's
/// springback, the working clearance beside a clamped flare tool, how far a nut must back off, and a revision that is
/// printed on the card. None: not known, or the usual, which a plan then lists among its assumptions.
///
/// Raises `InputError` (FIELDS_CONFLICT for two tools of one form, OUT_OF_RANGE and the codes of `read_length`),
/// `QuantityError` for a bare number.
///
/// >>> import linewright as lw
/// >>> bench = lw.Bench(former=lw.Former(as_formed="14.3 mm", grip="20 mm"),
/// ...                  flare_tool=lw.FlareTool("bubble", clamp="13 mm", projection="4 mm"), clearance="3 mm")
/// >>> bench.clearance, bench.back_off, bench.springback
/// (mm(3.0), mm(3.0), None)
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct Bench(pub(crate) linewright::Bench);

/// One flare tool, or several.
#[derive(FromPyObject)]
enum FlareTools {
    One(FlareTool),
    Many(Vec<FlareTool>),
}

impl Record for Bench {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        let stated =
            |(length, assumed): (linewright::units::Length, bool)| (!assumed).then_some(Length(length));
        Call::class::<Self>(py)
            .named("former", self.former())?
            .named("flare_tool", self.flare_tools())?
            .given("springback", self.springback())?
            .given("clearance", stated(self.0.clearance()))?
            .given("back_off", stated(self.0.back_off()))?
            .named("revision", self.revision())
    }
}

#[pymethods]
impl Bench {
    #[new]
    #[pyo3(signature = (*, former, flare_tool, springback=None, clearance=None, back_off=None, revision=""))]
    fn new(
        former: &Bound<'_, Former>,
        flare_tool: FlareTools,
        springback: Option<&Bound<'_, Springback>>,
        clearance: Option<&Bound<'_, PyAny>>,
        back_off: Option<&Bound<'_, PyAny>>,
        revision: &str,
    ) -> PyResult<Self> {
        let clearance = length_if(clearance, "clearance")?;
        let back_off = length_if(back_off, "back_off")?;
        let tools: Vec<linewright::FlareTool> = match flare_tool {
            FlareTools::One(tool) => vec![tool.0],
            FlareTools::Many(tools) => tools.into_iter().map(|tool| tool.0).collect(),
        };
        error::call(|| {
            let mut bench = linewright::Bench::new(former.get().0, &tools)?.with_revision(revision);
            if let Some(springback) = springback {
                bench = bench.with_springback(springback.get().0.clone());
            }
            if let Some(clearance) = clearance {
                bench = bench.with_clearance(clearance)?;
            }
            if let Some(back_off) = back_off {
                bench = bench.with_back_off(back_off)?;
            }
            Ok(bench)
        })
        .map(Bench)
    }

    /// The former.
    #[getter]
    fn former(&self) -> Former {
        Former(*self.0.former())
    }

    /// The flare tools, one for each form.
    #[getter]
    fn flare_tools(&self) -> Vec<FlareTool> {
        self.0.flare_tools().iter().copied().map(FlareTool).collect()
    }

    /// The former's springback; None where no trials were made.
    #[getter]
    fn springback(&self) -> Option<Springback> {
        self.0.springback().cloned().map(Springback)
    }

    /// Working clearance beside a clamped flare tool; the usual one where none was stated.
    #[getter]
    fn clearance(&self) -> Length {
        Length(self.0.clearance().0)
    }

    /// How far a nut must be able to back off; the usual where nothing was stated.
    #[getter]
    fn back_off(&self) -> Length {
        Length(self.0.back_off().0)
    }

    /// Name or number of this state of the bench; empty where none was given.
    #[getter]
    fn revision(&self) -> &str {
        self.0.revision()
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
