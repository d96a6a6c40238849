//! Materials: what is known of a metal, each figure with its source.

use crate::error;
use crate::quantity::{self, wrong_kind};
use crate::record::{self, Call, Record, Reduced};
use crate::results::made;
use crate::units::Pressure;
use linewright::material::{self, ALL, Condition, Material, PowerLaw};
use linewright::source::Sourced;
use linewright::units::{kg_per_m3, per_kelvin, ratio, to_kg_per_m3, to_per_kelvin};
use pyo3::IntoPyObjectExt;
use pyo3::prelude::*;
use pyo3::types::{PyString, PyTuple};

/// A figure and where it was read.
const FIGURE: &str = "a pair: the figure, and where it was read or measured";

/// What is known of a metal; what is not known is None. The library's own figures come from `material_properties`; here
/// are a user's own, each as a pair of the figure and its source: `modulus=("205 GPa", "mill sheet 12")`. Strengths are
/// pressures; `density_kg_per_m3`, `poisson`, `elongation` (a share), `hardening_exponent` and `expansion_per_k` are plain
/// numbers. A power law needs both its coefficient and its exponent; its source is that of the coefficient.
/// `tangent_modulus` is the slope of stress over strain beyond the yield strength, for hardening by a straight line; it is of
/// use only beside a yield strength. `Mechanics.of_metal` says which law is taken.
///
/// Raises `InputError` (FIELD_MISSING without a source or with half a power law, OUT_OF_RANGE, also for a tangent modulus
/// that is not below the modulus, NOT_A_NUMBER),
/// `QuantityError` for a bare strength and for what is no pair.
///
/// >>> import linewright as lw
/// >>> own = lw.Properties("our coil", modulus=("205 GPa", "mill sheet 12"), poisson=(0.3, "handbook"))
/// >>> print(own.modulus.value, "by", own.modulus.source)
/// 205000 MPa by mill sheet 12, seen second-hand
/// >>> own.yield_strength is None
/// True
/// >>> sloped = lw.Properties("our coil", yield_strength=("240 MPa", "pull 3"), tangent_modulus=("2 GPa", "pull 3"))
/// >>> print(sloped.tangent_modulus.value, "by", sloped.tangent_modulus.source)
/// 2000 MPa by pull 3, seen second-hand
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct Properties(pub(crate) material::Properties);

impl Record for Properties {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        if let Some((material, condition)) = self.of_library() {
            return Call::function(py, "material_properties")?
                .arg(material.name())?
                .given("condition", condition.map(Condition::name));
        }
        let properties = &self.0;
        let law = properties.hardening();
        let strength =
            |figure: Option<&Sourced<_>>| figure.map(|f| (Pressure(f.value), f.source.text.clone()));
        let number = |value: f64, of: &linewright::source::Source| (value, of.text.clone());
        Call::class::<Self>(py)
            .arg(properties.name())?
            .given(
                "density_kg_per_m3",
                properties.density().map(|f| number(to_kg_per_m3(f.value), &f.source)),
            )?
            .given("modulus", strength(properties.modulus()))?
            .given("poisson", properties.poisson().map(|f| number(f.value.value, &f.source)))?
            .given("yield_strength", strength(properties.yield_strength()))?
            .given("tensile_strength", strength(properties.tensile_strength()))?
            .given("elongation", properties.elongation().map(|f| number(f.value.value, &f.source)))?
            .given("tangent_modulus", strength(properties.tangent_modulus()))?
            .given(
                "strength_coefficient",
                law.map(|f| (Pressure(f.value.strength_coefficient), f.source.text.clone())),
            )?
            .given("hardening_exponent", law.map(|f| f.value.exponent.value))?
            .given(
                "expansion_per_k",
                properties.expansion().map(|f| number(to_per_kelvin(f.value), &f.source)),
            )
    }
}

impl Properties {
    /// The material and the condition whose figures the library has, if these are they.
    fn of_library(&self) -> Option<(Material, Option<Condition>)> {
        ALL.into_iter().find_map(|material| {
            if material.properties() == self.0 {
                return Some((material, None));
            }
            let mut conditions = material.conditions().into_iter();
            let same = |c: &Condition| material.properties_in(*c).is_ok_and(|figures| figures == self.0);
            conditions.find(same).map(|condition| (material, Some(condition)))
        })
    }
}

/// A figure and its source as a pair.
fn pair<'py>(value: &Bound<'py, PyAny>, field: &str) -> PyResult<(Bound<'py, PyAny>, String)> {
    let items = value.cast::<PyTuple>().ok().filter(|pair| pair.len() == 2);
    let Some(items) = items else { return Err(wrong_kind(value, field, FIGURE)) };
    let source = items.get_item(1)?;
    let Ok(source) = source.cast::<PyString>() else { return Err(wrong_kind(value, field, FIGURE)) };
    Ok((items.get_item(0)?, source.to_string_lossy().into_owned()))
}

pub(crate) type Given<'a, 'py> = Option<&'a Bound<'py, PyAny>>;

/// A figure that is a plain number.
pub(crate) fn number(given: Given<'_, '_>, field: &str) -> PyResult<Option<(f64, String)>> {
    given
        .map(|given| {
            let (value, source) = pair(given, field)?;
            Ok((quantity::number(&value, field)?, source))
        })
        .transpose()
}

/// A figure that is a pressure.
pub(crate) fn pressure(
    given: Given<'_, '_>,
    field: &str,
) -> PyResult<Option<(linewright::units::Pressure, String)>> {
    given
        .map(|given| {
            let (value, source) = pair(given, field)?;
            Ok((quantity::pressure(&value, field)?, source))
        })
        .transpose()
}

/// A figure with its source, as Python has it.
pub(crate) fn figure<'py, T>(
    py: Python<'py>,
    known: Option<&Sourced<T>>,
    value: impl FnOnce(&T) -> PyResult<Bound<'py, PyAny>>,
) -> PyResult<Option<Bound<'py, PyAny>>> {
    known
        .map(|known| {
            let source = &known.source;
            made(py, "Figure", (value(&known.value)?, source.to_string(), source.checked.name()))
        })
        .transpose()
}

#[pymethods]
impl Properties {
    #[new]
    #[pyo3(signature = (
        name, *, density_kg_per_m3=None, modulus=None, poisson=None, yield_strength=None, tensile_strength=None,
        elongation=None, tangent_modulus=None, strength_coefficient=None, hardening_exponent=None,
        expansion_per_k=None
    ))]
    #[expect(clippy::too_many_arguments, reason = "one for each figure of a metal, all by name")]
    fn new(
        name: &str,
        density_kg_per_m3: Given<'_, '_>,
        modulus: Given<'_, '_>,
        poisson: Given<'_, '_>,
        yield_strength: Given<'_, '_>,
        tensile_strength: Given<'_, '_>,
        elongation: Given<'_, '_>,
        tangent_modulus: Given<'_, '_>,
        strength_coefficient: Given<'_, '_>,
        hardening_exponent: Given<'_, '_>,
        expansion_per_k: Given<'_, '_>,
    ) -> PyResult<Self> {
        let density = number(density_kg_per_m3, "density_kg_per_m3")?;
        let modulus = pressure(modulus, "modulus")?;
        let poisson = number(poisson, "poisson")?;
        let yields = pressure(yield_strength, "yield_strength")?;
        let tensile = pressure(tensile_strength, "tensile_strength")?;
        let elongation = number(elongation, "elongation")?;
        let tangent = pressure(tangent_modulus, "tangent_modulus")?;
        let coefficient = pressure(strength_coefficient, "strength_coefficient")?;
        let exponent =
            hardening_exponent.map(|given| quantity::number(given, "hardening_exponent")).transpose()?;
        let expansion = number(expansion_per_k, "expansion_per_k")?;
        error::call(|| {
            let mut own = material::Properties::named(name);
            if let Some((value, source)) = density {
                own = own.with_density(kg_per_m3(value), &source)?;
            }
            if let Some((value, source)) = modulus {
                own = own.with_modulus(value, &source)?;
            }
            if let Some((value, source)) = poisson {
                own = own.with_poisson(ratio(value), &source)?;
            }
            if let Some((value, source)) = yields {
                own = own.with_yield_strength(value, &source)?;
            }
            if let Some((value, source)) = tensile {
                own = own.with_tensile_strength(value, &source)?;
            }
            if let Some((value, source)) = elongation {
                own = own.with_elongation(ratio(value), &source)?;
            }
            if let Some((value, source)) = tangent {
                own = own.with_tangent_modulus(value, &source)?;
            }
            if let Some((value, source)) = expansion {
                own = own.with_expansion(per_kelvin(value), &source)?;
            }
            match (coefficient, exponent) {
                (Some((strength_coefficient, source)), Some(exponent)) => {
                    let law = PowerLaw { strength_coefficient, exponent: ratio(exponent) };
                    own.with_hardening(law, &source)
                }
                (None, None) => Ok(own),
                (Some(_), None) => Err(quantity::half("hardening_exponent", "the exponent of the power law")),
                (None, Some(_)) => Err(quantity::half(
                    "strength_coefficient",
                    "the coefficient of the power law, with its source",
                )),
            }
        })
        .map(Properties)
    }

    /// What it is called.
    #[getter]
    fn name(&self) -> &str {
        self.0.name()
    }

    /// Mass per volume in kilograms per cubic meter, with its source.
    #[getter]
    fn density_kg_per_m3<'py>(&self, py: Python<'py>) -> PyResult<Option<Bound<'py, PyAny>>> {
        figure(py, self.0.density(), |value| to_kg_per_m3(*value).into_bound_py_any(py))
    }

    /// Elastic modulus, with its source.
    #[getter]
    fn modulus<'py>(&self, py: Python<'py>) -> PyResult<Option<Bound<'py, PyAny>>> {
        figure(py, self.0.modulus(), |value| Pressure(*value).into_bound_py_any(py))
    }

    /// Poisson's ratio, with its source.
    #[getter]
    fn poisson<'py>(&self, py: Python<'py>) -> PyResult<Option<Bound<'py, PyAny>>> {
        figure(py, self.0.poisson(), |value| value.value.into_bound_py_any(py))
    }

    /// Yield strength, with its source: of a standard the least that it asks for.
    #[getter]
    fn yield_strength<'py>(&self, py: Python<'py>) -> PyResult<Option<Bound<'py, PyAny>>> {
        figure(py, self.0.yield_strength(), |value| Pressure(*value).into_bound_py_any(py))
    }

    /// Tensile strength, with its source: of a standard the least that it asks for.
    #[getter]
    fn tensile_strength<'py>(&self, py: Python<'py>) -> PyResult<Option<Bound<'py, PyAny>>> {
        figure(py, self.0.tensile_strength(), |value| Pressure(*value).into_bound_py_any(py))
    }

    /// Elongation at break as a share, with its source.
    #[getter]
    fn elongation<'py>(&self, py: Python<'py>) -> PyResult<Option<Bound<'py, PyAny>>> {
        figure(py, self.0.elongation(), |value| value.value.into_bound_py_any(py))
    }

    /// Slope of stress over strain beyond the yield strength, with its source.
    #[getter]
    fn tangent_modulus<'py>(&self, py: Python<'py>) -> PyResult<Option<Bound<'py, PyAny>>> {
        figure(py, self.0.tangent_modulus(), |value| Pressure(*value).into_bound_py_any(py))
    }

    /// Law of hardening, true stress = strength_coefficient x true strain ^ exponent, with its source.
    #[getter]
    fn hardening<'py>(&self, py: Python<'py>) -> PyResult<Option<Bound<'py, PyAny>>> {
        figure(py, self.0.hardening(), |law| {
            made(py, "PowerLaw", (Pressure(law.strength_coefficient), law.exponent.value))
        })
    }

    /// Growth in length per kelvin as a share, with its source.
    #[getter]
    fn expansion_per_k<'py>(&self, py: Python<'py>) -> PyResult<Option<Bound<'py, PyAny>>> {
        figure(py, self.0.expansion(), |value| to_per_kelvin(*value).into_bound_py_any(py))
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

/// The names of the tube materials that the library knows.
///
/// >>> import linewright as lw
/// >>> lw.materials()
/// ['low-carbon steel', 'copper-nickel', 'stainless 304', 'stainless 316']
#[pyfunction]
pub(crate) fn materials() -> Vec<&'static str> {
    ALL.map(Material::name).to_vec()
}

/// The conditions of a material that strengths are known for.
///
/// Raises `UnknownNameError`.
///
/// >>> import linewright as lw
/// >>> lw.material_conditions("copper-nickel")
/// ['annealed', 'half hard']
#[pyfunction]
#[pyo3(signature = (material, /))]
pub(crate) fn material_conditions(material: &str) -> PyResult<Vec<&'static str>> {
    error::call(|| Ok(Material::from_name(material)?.conditions().into_iter().map(Condition::name).collect()))
}

/// What is known of a tube material, in one of its conditions where strengths are asked for: strengths of a standard are
/// what it asks for at least, not what a tube has.
///
/// Raises `UnknownNameError` for the material, and for a condition that no figures are known for.
///
/// >>> import linewright as lw
/// >>> annealed = lw.material_properties("copper-nickel", condition="annealed")
/// >>> print(annealed.yield_strength.value, annealed.hardening)
/// 110.32 MPa None
#[pyfunction]
#[pyo3(signature = (material, /, *, condition=None))]
pub(crate) fn material_properties(material: &str, condition: Option<&str>) -> PyResult<Properties> {
    error::call(|| {
        let material = Material::from_name(material)?;
        match condition {
            Some(condition) => material.properties_in(Condition::from_name(condition)?),
            None => Ok(material.properties()),
        }
    })
    .map(Properties)
}
