//! A span between clips: its first bending frequency, and the distances that public texts give.

use super::Fluid;
use crate::error;
use crate::material::Properties;
use crate::quantity;
use crate::record::{self, Call, Record, Reduced};
use crate::results::made;
use crate::tube::Tube;
use crate::units::Length;
use linewright::hydraulics::{self, SpacingRow, SpanEnds};
use linewright::units::{hz, to_g, to_hz};
use pyo3::prelude::*;

/// A tube between two clips, full of a fluid or empty, as a slender beam. The clips hold it "pinned" (both let it tilt),
/// "clamped-pinned" or "clamped"; real ones lie between.
///
/// Raises `InputError` (NOT_KNOWN where the metal's modulus or one of the densities is missing).
///
/// >>> import linewright as lw
/// >>> steel = lw.material_properties("low-carbon steel")
/// >>> tube = lw.Tube("3/16 in", wall="0.028 in", material="low-carbon steel")
/// >>> span = lw.Span(tube, metal=steel, fluid=lw.Fluid.glycol())
/// >>> round(span.first_frequency_hz("14 in", "pinned"), 1)
/// 87.3
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct Span {
    span: hydraulics::Span,
    tube: Tube,
    metal: Properties,
    fluid: Option<Fluid>,
}

impl Record for Span {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        Call::class::<Self>(py).arg(self.tube())?.named("metal", self.metal())?.given("fluid", self.fluid())
    }
}

#[pymethods]
impl Span {
    #[new]
    #[pyo3(signature = (tube, /, *, metal, fluid=None))]
    fn new(tube: &Tube, metal: &Properties, fluid: Option<&Fluid>) -> PyResult<Self> {
        let span = error::call(|| hydraulics::Span::new(&tube.0, &metal.0, fluid.map(|fluid| &fluid.0)))?;
        Ok(Span { span, tube: tube.clone(), metal: metal.clone(), fluid: fluid.cloned() })
    }

    /// The tube.
    #[getter]
    fn tube(&self) -> Tube {
        self.tube.clone()
    }

    /// What is known of its metal.
    #[getter]
    fn metal(&self) -> Properties {
        self.metal.clone()
    }

    /// The fluid in it; None where it is empty.
    #[getter]
    fn fluid(&self) -> Option<Fluid> {
        self.fluid.clone()
    }

    /// Mass of a length in grams, with the fluid in it.
    ///
    /// Raises `InputError` (OUT_OF_RANGE and the codes of `read_length`), `QuantityError` for a bare number.
    ///
    /// >>> import linewright as lw
    /// >>> steel = lw.material_properties("low-carbon steel")
    /// >>> tube = lw.Tube("3/16 in", wall="0.028 in", material="low-carbon steel")
    /// >>> round(lw.Span(tube, metal=steel).mass_g("1 m"), 1)
    /// 71.1
    #[pyo3(signature = (length, /))]
    fn mass_g(&self, length: &Bound<'_, PyAny>) -> PyResult<f64> {
        let length = quantity::length(length, "length")?;
        error::call(|| self.span.mass(length)).map(to_g)
    }

    /// First bending frequency of a span in hertz.
    ///
    /// Raises `UnknownNameError` for the ends, `InputError` (OUT_OF_RANGE and the codes of `read_length`), `QuantityError`
    /// for a bare number.
    ///
    /// >>> import linewright as lw
    /// >>> steel = lw.material_properties("low-carbon steel")
    /// >>> tube = lw.Tube("3/16 in", wall="0.028 in", material="low-carbon steel")
    /// >>> round(lw.Span(tube, metal=steel).first_frequency_hz("300 mm", "clamped"))
    /// 295
    #[pyo3(signature = (length, ends, /))]
    fn first_frequency_hz(&self, length: &Bound<'_, PyAny>, ends: &str) -> PyResult<f64> {
        let length = quantity::length(length, "length")?;
        error::call(|| self.span.first_frequency(length, SpanEnds::from_name(ends)?)).map(to_hz)
    }

    /// The span whose first frequency is the wanted one, in hertz; clips nearer than that raise it.
    ///
    /// Raises `UnknownNameError` for the ends, `InputError` (OUT_OF_RANGE), `QuantityError` for what is no number.
    ///
    /// >>> import linewright as lw
    /// >>> steel = lw.material_properties("low-carbon steel")
    /// >>> tube = lw.Tube("3/16 in", wall="0.028 in", material="low-carbon steel")
    /// >>> print(lw.Span(tube, metal=steel, fluid=lw.Fluid.glycol()).length_for(200, "pinned"))
    /// 234.92 mm
    #[pyo3(signature = (wanted_hz, ends, /))]
    fn length_for(&self, wanted_hz: &Bound<'_, PyAny>, ends: &str) -> PyResult<Length> {
        let wanted = quantity::number(wanted_hz, "wanted_hz")?;
        error::call(|| self.span.length_for(hz(wanted), SpanEnds::from_name(ends)?)).map(Length)
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

/// Distances between clips that public texts give for a tube diameter; empty where none is known, as for metric sizes. None
/// is of brakes.
///
/// Raises `InputError` (OUT_OF_RANGE and the codes of `read_length`), `QuantityError` for a bare number.
///
/// >>> import linewright as lw
/// >>> [(row.scope, str(row.most), row.checked) for row in lw.handbook_spacings("3/16 in")]
/// [('steel lines of aircraft', '355.6 mm', 'from memory, not checked')]
#[pyfunction]
#[pyo3(signature = (od, /))]
pub(crate) fn handbook_spacings<'py>(od: &Bound<'py, PyAny>) -> PyResult<Vec<Bound<'py, PyAny>>> {
    let (py, od) = (od.py(), quantity::length(od, "od")?);
    let row = |row: SpacingRow| {
        let (source, checked) = (row.source.to_string(), row.source.checked.name());
        made(py, "SpacingRow", (row.scope, row.least.map(Length), Length(row.most), source, checked))
    };
    error::call(|| hydraulics::handbook_spacings(od))?.into_iter().map(row).collect()
}
