//! The tube.

use crate::error;
use crate::quantity;
use crate::record::{self, Call, Record, Reduced};
use crate::units::Length;
use linewright::Material;
use linewright::units::{to_g, to_ml};
use pyo3::prelude::*;

/// A round tube: outside diameter, wall and material, and the smallest bend radius if its maker gives one (then
/// `min_radius_source` says where that was read).
///
/// Raises `InputError` (OUT_OF_RANGE, FIELD_MISSING for a radius without its source, and the codes of
/// `read_length`), `UnknownNameError` for the material, `QuantityError` for a bare number.
///
/// >>> import linewright as lw
/// >>> tube = lw.Tube("3/16 in", wall="0.028 in", material="low-carbon steel")
/// >>> print(tube.bore)
/// 3.34 mm
/// >>> round(tube.bore_volume_ml("1 m"), 3)
/// 8.762
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct Tube(pub(crate) linewright::Tube);

impl Record for Tube {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        Call::class::<Self>(py)
            .arg(self.od())?
            .named("wall", self.wall())?
            .named("material", self.material())?
            .given("min_radius", self.min_radius())?
            .given("min_radius_source", self.min_radius_source())
    }
}

#[pymethods]
impl Tube {
    #[new]
    #[pyo3(signature = (od, *, wall, material, min_radius=None, min_radius_source=None))]
    fn new(
        od: &Bound<'_, PyAny>,
        wall: &Bound<'_, PyAny>,
        material: &str,
        min_radius: Option<&Bound<'_, PyAny>>,
        min_radius_source: Option<&str>,
    ) -> PyResult<Self> {
        let (od, wall) = (quantity::length(od, "od")?, quantity::length(wall, "wall")?);
        let radius = quantity::length_if(min_radius, "min_radius")?;
        error::call(|| {
            let tube = linewright::Tube::new(od, wall, Material::from_name(material)?)?;
            match (radius, min_radius_source) {
                (Some(radius), source) => tube.with_min_radius(radius, source.unwrap_or_default()),
                (None, None) => Ok(tube),
                (None, Some(_)) => {
                    Err(quantity::half("min_radius", "the smallest radius together with where it was read"))
                }
            }
        })
        .map(Tube)
    }

    /// Outside diameter.
    #[getter]
    fn od(&self) -> Length {
        Length(self.0.od())
    }

    /// Wall thickness.
    #[getter]
    fn wall(&self) -> Length {
        Length(self.0.wall())
    }

    /// Inside diameter.
    #[getter]
    fn bore(&self) -> Length {
        Length(self.0.bore())
    }

    /// Name of the material.
    #[getter]
    fn material(&self) -> &'static str {
        self.0.material().name()
    }

    /// The tube maker's smallest bend radius; None where none was recorded.
    #[getter]
    fn min_radius(&self) -> Option<Length> {
        self.0.min_radius().map(|radius| Length(radius.value))
    }

    /// Where that radius was read; None where none was recorded.
    #[getter]
    fn min_radius_source(&self) -> Option<&str> {
        self.0.min_radius().map(|radius| radius.source.text.as_str())
    }

    /// Fluid in a length of tube, in milliliters.
    ///
    /// >>> import linewright as lw
    /// >>> tube = lw.Tube("4.75 mm", wall="0.7 mm", material="copper-nickel")
    /// >>> round(tube.bore_volume_ml("1 m"), 2)
    /// 8.81
    #[pyo3(signature = (length, /))]
    fn bore_volume_ml(&self, length: &Bound<'_, PyAny>) -> PyResult<f64> {
        let length = quantity::length(length, "length")?;
        error::call(|| self.0.bore_volume(length)).map(to_ml)
    }

    /// Mass of a length of empty tube in grams, without coating; None where the material's density is not known.
    ///
    /// >>> import linewright as lw
    /// >>> tube = lw.Tube("3/16 in", wall="0.028 in", material="stainless 304")
    /// >>> tube.mass_g("1 m") is None
    /// True
    #[pyo3(signature = (length, /))]
    fn mass_g(&self, length: &Bound<'_, PyAny>) -> PyResult<Option<f64>> {
        let length = quantity::length(length, "length")?;
        error::call(|| self.0.mass(length)).map(|mass| mass.map(|mass| to_g(mass.value)))
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
