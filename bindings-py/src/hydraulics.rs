//! A line full of fluid: volume, stiffness, holding a pressure; span has the swinging of a span between clips.

pub(crate) mod span;

use crate::error;
use crate::material::{Given, Properties, figure, number, pressure};
use crate::quantity;
use crate::record::{self, Call, Record, Reduced};
use crate::tube::Tube;
use crate::units::Pressure;
use linewright::hydraulics::{self, AxialEnds, WallElasticity};
use linewright::units::{
    kelvin, kg_per_m3, ml, per_kelvin, to_kg_per_m3, to_m_per_s, to_ml, to_per_kelvin, to_per_mpa,
};
use pyo3::IntoPyObjectExt;
use pyo3::prelude::*;

/// A fluid; what is not known is None. A user's own figures come each as a pair of the figure and its source:
/// `bulk_modulus=("1700 MPa", "maker's sheet")`; `density_kg_per_m3` and `expansion_per_k`, of its volume, are plain numbers.
///
/// Raises `InputError` (FIELD_MISSING without a source, OUT_OF_RANGE, NOT_A_NUMBER), `QuantityError` for a bare pressure
/// and for what is no pair.
///
/// >>> import linewright as lw
/// >>> own = lw.Fluid("drum 3", bulk_modulus=("1700 MPa", "maker's sheet, 40 degrees C"))
/// >>> print(own.bulk_modulus.value, own.density_kg_per_m3)
/// 1700 MPa None
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct Fluid(pub(crate) hydraulics::Fluid);

impl Record for Fluid {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        if self.0 == hydraulics::Fluid::glycol() {
            return Ok(Call::of(py.get_type::<Self>().getattr("glycol")?, "Fluid.glycol"));
        }
        let fluid = &self.0;
        Call::class::<Self>(py)
            .arg(fluid.name())?
            .given(
                "density_kg_per_m3",
                fluid.density().map(|f| (to_kg_per_m3(f.value), f.source.text.clone())),
            )?
            .given("bulk_modulus", fluid.bulk_modulus().map(|f| (Pressure(f.value), f.source.text.clone())))?
            .given(
                "expansion_per_k",
                fluid.expansion().map(|f| (to_per_kelvin(f.value), f.source.text.clone())),
            )
    }
}

#[pymethods]
impl Fluid {
    #[new]
    #[pyo3(signature = (name, /, *, density_kg_per_m3=None, bulk_modulus=None, expansion_per_k=None))]
    fn new(
        name: &str,
        density_kg_per_m3: Given<'_, '_>,
        bulk_modulus: Given<'_, '_>,
        expansion_per_k: Given<'_, '_>,
    ) -> PyResult<Self> {
        let density = number(density_kg_per_m3, "density_kg_per_m3")?;
        let bulk = pressure(bulk_modulus, "bulk_modulus")?;
        let expansion = number(expansion_per_k, "expansion_per_k")?;
        error::call(|| {
            let mut own = hydraulics::Fluid::named(name);
            if let Some((value, source)) = density {
                own = own.with_density(kg_per_m3(value), &source)?;
            }
            if let Some((value, source)) = bulk {
                own = own.with_bulk_modulus(value, &source)?;
            }
            if let Some((value, source)) = expansion {
                own = own.with_expansion(per_kelvin(value), &source)?;
            }
            Ok(own)
        })
        .map(Fluid)
    }

    /// Brake fluid on glycol, by what could be found: most of it is from memory, and says so. Air, warmth and water change
    /// its stiffness by more than the digits here.
    ///
    /// >>> import linewright as lw
    /// >>> lw.Fluid.glycol().density_kg_per_m3.checked
    /// 'from memory, not checked'
    #[staticmethod]
    fn glycol() -> Self {
        Fluid(hydraulics::Fluid::glycol())
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

    /// Bulk modulus, with its source.
    #[getter]
    fn bulk_modulus<'py>(&self, py: Python<'py>) -> PyResult<Option<Bound<'py, PyAny>>> {
        figure(py, self.0.bulk_modulus(), |value| Pressure(*value).into_bound_py_any(py))
    }

    /// Growth in volume per kelvin as a share, with its source.
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

/// A tube full of fluid, with what is known of its metal, and its ends along the axis "closed" (free to move, the wall
/// carries the pressure on them), "open" (sliding in seals) or "fixed".
///
/// Raises `InputError` (NOT_KNOWN where the metal's modulus or Poisson's ratio or the fluid's bulk modulus is missing),
/// `UnknownNameError` for the ends.
///
/// >>> import linewright as lw
/// >>> steel = lw.material_properties("low-carbon steel")
/// >>> tube = lw.Tube("3/16 in", wall="0.028 in", material="low-carbon steel")
/// >>> line = lw.FilledTube(tube, metal=steel, ends="closed", fluid=lw.Fluid.glycol())
/// >>> round(line.volume_to_raise_ml("2 m", "10 MPa"), 3)
/// 0.094
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct FilledTube {
    filled: hydraulics::FilledTube,
    tube: Tube,
    metal: Properties,
    ends: AxialEnds,
    fluid: Fluid,
}

impl Record for FilledTube {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        Call::class::<Self>(py)
            .arg(self.tube())?
            .named("metal", self.metal())?
            .named("ends", self.ends())?
            .named("fluid", self.fluid())
    }
}

#[pymethods]
impl FilledTube {
    #[new]
    #[pyo3(signature = (tube, /, *, metal, ends, fluid))]
    fn new(tube: &Tube, metal: &Properties, ends: &str, fluid: &Fluid) -> PyResult<Self> {
        let (filled, ends) = error::call(|| {
            let ends = AxialEnds::from_name(ends)?;
            let wall = WallElasticity::of(&metal.0)?;
            Ok((hydraulics::FilledTube::new(&tube.0, wall, ends, &fluid.0)?, ends))
        })?;
        Ok(FilledTube { filled, tube: tube.clone(), metal: metal.clone(), ends, fluid: fluid.clone() })
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

    /// What holds it along its axis.
    #[getter]
    fn ends(&self) -> &'static str {
        self.ends.name()
    }

    /// The fluid in it.
    #[getter]
    fn fluid(&self) -> Fluid {
        self.fluid.clone()
    }

    /// Share of its bore that the wall alone gains per megapascal.
    #[getter]
    fn wall_compliance_per_mpa(&self) -> f64 {
        to_per_mpa(self.filled.wall_compliance())
    }

    /// Share of its bore that wall and fluid together take per megapascal.
    #[getter]
    fn compliance_per_mpa(&self) -> f64 {
        to_per_mpa(self.filled.compliance())
    }

    /// Bulk modulus that the fluid seems to have in this tube.
    #[getter]
    fn effective_bulk_modulus(&self) -> Pressure {
        Pressure(self.filled.effective_bulk_modulus())
    }

    /// Fluid in milliliters to be pressed into a length of it to raise its pressure.
    ///
    /// Raises `InputError` (OUT_OF_RANGE, also for more than a twentieth of the volume, over which stiffness is not constant, and
    /// the codes of `read_length`), `QuantityError` for bare numbers.
    ///
    /// >>> import linewright as lw
    /// >>> copper_nickel = lw.Properties("sheet", modulus=("135 GPa", "sheet"), poisson=(0.33, "sheet"))
    /// >>> tube = lw.Tube("4.75 mm", wall="0.9 mm", material="copper-nickel")
    /// >>> line = lw.FilledTube(tube, metal=copper_nickel, ends="fixed", fluid=lw.Fluid.glycol())
    /// >>> round(line.volume_to_raise_ml("3 m", "10 MPa"), 3)
    /// 0.111
    #[pyo3(signature = (length, pressure, /))]
    fn volume_to_raise_ml(&self, length: &Bound<'_, PyAny>, pressure: &Bound<'_, PyAny>) -> PyResult<f64> {
        let (length, pressure) =
            (quantity::length(length, "length")?, quantity::pressure(pressure, "pressure")?);
        error::call(|| self.filled.volume_to_raise(length, pressure)).map(to_ml)
    }

    /// By how much the pressure of a shut-off, full length rises when it is warmed throughout; falls when it cools, down to
    /// nothing and no further: a fall of more than the line's pressure says that the fluid parts.
    ///
    /// Raises `InputError` (OUT_OF_RANGE, also where fluid and bore would part by more than a twentieth of the volume, NOT_KNOWN
    /// for a fluid without a thermal expansion), `QuantityError` for what is no number.
    ///
    /// >>> import linewright as lw
    /// >>> steel = lw.material_properties("low-carbon steel")
    /// >>> tube = lw.Tube("3/16 in", wall="0.028 in", material="low-carbon steel")
    /// >>> line = lw.FilledTube(tube, metal=steel, ends="closed", fluid=lw.Fluid.glycol())
    /// >>> print(line.pressure_of_warming(warming_k=10, wall_expansion_per_k=steel.expansion_per_k.value))
    /// 12.36 MPa
    #[pyo3(signature = (*, warming_k, wall_expansion_per_k))]
    fn pressure_of_warming(
        &self,
        warming_k: &Bound<'_, PyAny>,
        wall_expansion_per_k: &Bound<'_, PyAny>,
    ) -> PyResult<Pressure> {
        let warming = quantity::number(warming_k, "warming_k")?;
        let wall = quantity::number(wall_expansion_per_k, "wall_expansion_per_k")?;
        error::call(|| self.filled.pressure_of_warming(kelvin(warming), per_kelvin(wall))).map(Pressure)
    }

    /// Speed of a pressure wave along it, in meters per second.
    ///
    /// Raises `InputError` (NOT_KNOWN for a fluid without a density).
    ///
    /// >>> import linewright as lw
    /// >>> steel = lw.material_properties("low-carbon steel")
    /// >>> tube = lw.Tube("3/16 in", wall="0.028 in", material="low-carbon steel")
    /// >>> round(lw.FilledTube(tube, metal=steel, ends="closed", fluid=lw.Fluid.glycol()).wave_speed_m_per_s())
    /// 1332
    fn wave_speed_m_per_s(&self) -> PyResult<f64> {
        error::call(|| self.filled.wave_speed()).map(to_m_per_s)
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

/// A rigid volume of fluid in milliliters whose pressure is held to look for a leak. Real lines, hoses and calipers give way
/// too, so a real loss moves the gauge less than computed here.
///
/// Raises `InputError` (OUT_OF_RANGE, also for no volume, NOT_KNOWN for a fluid without a bulk modulus), `QuantityError` for
/// what is no number.
///
/// >>> import linewright as lw
/// >>> fluid = lw.Fluid("assumed", bulk_modulus=("1700 MPa", "assumed"), expansion_per_k=(7e-4, "assumed"))
/// >>> hold = lw.Hold(90, fluid=fluid)
/// >>> round(hold.volume_of_temperature_ml(1), 3), str(hold.ideal_rigid_pressure(0.05))
/// (0.063, '0.9444 MPa')
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct Hold {
    hold: hydraulics::Hold,
    volume_ml: f64,
    fluid: Fluid,
}

impl Record for Hold {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        Call::class::<Self>(py).arg(self.volume_ml)?.named("fluid", self.fluid())
    }
}

#[pymethods]
impl Hold {
    #[new]
    #[pyo3(signature = (volume_ml, /, *, fluid))]
    fn new(volume_ml: &Bound<'_, PyAny>, fluid: &Fluid) -> PyResult<Self> {
        let volume_ml = quantity::number(volume_ml, "volume_ml")?;
        let hold = error::call(|| hydraulics::Hold::new(ml(volume_ml), &fluid.0))?;
        Ok(Hold { hold, volume_ml, fluid: fluid.clone() })
    }

    /// The volume, in milliliters.
    #[getter]
    fn volume_ml(&self) -> f64 {
        self.volume_ml
    }

    /// The fluid.
    #[getter]
    fn fluid(&self) -> Fluid {
        self.fluid.clone()
    }

    /// The volume in milliliters by which the fluid grows when it is warmed; negative when it cools: the blind spot of the
    /// test. A leak smaller than this, for the doubt in the temperature, cannot be told from weather.
    ///
    /// Raises `InputError` (OUT_OF_RANGE, also where the fluid would grow or shrink by more than a quarter, NOT_KNOWN for a fluid
    /// without a thermal expansion), `QuantityError` for what is no number.
    ///
    /// >>> import linewright as lw
    /// >>> round(lw.Hold(100, fluid=lw.Fluid.glycol()).volume_of_temperature_ml(-2), 3)
    /// -0.14
    #[pyo3(signature = (warming_k, /))]
    fn volume_of_temperature_ml(&self, warming_k: &Bound<'_, PyAny>) -> PyResult<f64> {
        let warming = quantity::number(warming_k, "warming_k")?;
        error::call(|| self.hold.volume_of_temperature(kelvin(warming))).map(to_ml)
    }

    /// By how much warming raises the pressure of the ideal rigid volume; cooling lowers it, down to nothing and no further.
    ///
    /// Raises as `volume_of_temperature_ml`, OUT_OF_RANGE from a twentieth of the volume on.
    ///
    /// >>> import linewright as lw
    /// >>> print(lw.Hold(100, fluid=lw.Fluid.glycol()).ideal_rigid_warming(1))
    /// 1.383 MPa
    #[pyo3(signature = (warming_k, /))]
    fn ideal_rigid_warming(&self, warming_k: &Bound<'_, PyAny>) -> PyResult<Pressure> {
        let warming = quantity::number(warming_k, "warming_k")?;
        error::call(|| self.hold.ideal_rigid_warming(kelvin(warming))).map(Pressure)
    }

    /// By how much a loss in milliliters lowers the pressure of the ideal rigid volume, down to nothing and no further. What is
    /// not rigid lowers it less.
    ///
    /// Raises `InputError` (OUT_OF_RANGE, also for a loss of more than a twentieth of the volume), `QuantityError` for what is no
    /// number.
    ///
    /// >>> import linewright as lw
    /// >>> print(lw.Hold(100, fluid=lw.Fluid.glycol()).ideal_rigid_pressure(0.1))
    /// 1.975 MPa
    #[pyo3(signature = (lost_ml, /))]
    fn ideal_rigid_pressure(&self, lost_ml: &Bound<'_, PyAny>) -> PyResult<Pressure> {
        let lost = quantity::number(lost_ml, "lost_ml")?;
        error::call(|| self.hold.ideal_rigid_pressure(ml(lost))).map(Pressure)
    }

    /// The loss in milliliters that lowers the pressure of the ideal rigid volume by as much as can just be read.
    ///
    /// Raises `InputError` (OUT_OF_RANGE, also for a loss of more than a twentieth of the volume, and the codes of
    /// `read_pressure`), `QuantityError` for a bare number.
    ///
    /// >>> import linewright as lw
    /// >>> round(lw.Hold(100, fluid=lw.Fluid.glycol()).ideal_rigid_loss_ml("2 bar"), 4)
    /// 0.0101
    #[pyo3(signature = (fall, /))]
    fn ideal_rigid_loss_ml(&self, fall: &Bound<'_, PyAny>) -> PyResult<f64> {
        let fall = quantity::pressure(fall, "fall")?;
        error::call(|| self.hold.ideal_rigid_loss(fall)).map(to_ml)
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
