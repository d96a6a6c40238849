//! The ideal cylinder under pressure: stresses, and strengths that the caller gives.

use crate::error;
use crate::quantity;
use crate::record::{self, Call, Record, Reduced};
use crate::results::made;
use crate::tube::Tube;
use crate::units::{Length, Pressure};
use linewright::bend::pressure::{self, EXCLUDES, SizeTolerance, Theory};
use linewright::bend::wall::{Place, Thinning};
use linewright::units::{mm, ratio};
use pyo3::prelude::*;

/// A strength, what it is divided by (1 leaves it whole), and who says so: all three the caller's.
///
/// Raises `InputError` (FIELD_MISSING without a source, OUT_OF_RANGE, NOT_A_NUMBER), `QuantityError` for a bare strength.
///
/// >>> import linewright as lw
/// >>> asked = lw.Strength("290 MPa", factor=4, source="my choice: tensile strength by ISO 4038, divided by 4")
/// >>> print(asked.value, asked.factor)
/// 290 MPa 4.0
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct Strength(pressure::Strength);

impl Record for Strength {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        Call::class::<Self>(py)
            .arg(self.value())?
            .named("factor", self.factor())?
            .named("source", self.source())
    }
}

#[pymethods]
impl Strength {
    #[new]
    #[pyo3(signature = (value, /, *, factor, source))]
    fn new(value: &Bound<'_, PyAny>, factor: &Bound<'_, PyAny>, source: &str) -> PyResult<Self> {
        let (value, factor) = (quantity::pressure(value, "strength")?, quantity::number(factor, "factor")?);
        error::call(|| pressure::Strength::new(value, ratio(factor), source)).map(Strength)
    }

    /// The strength, undivided.
    #[getter]
    fn value(&self) -> Pressure {
        Pressure(self.0.value())
    }

    /// What it is divided by.
    #[getter]
    fn factor(&self) -> f64 {
        self.0.factor().value
    }

    /// Who says so.
    #[getter]
    fn source(&self) -> &str {
        &self.0.source().text
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

/// An ideal cylinder: a tube at its worst size, straight or bent. The diameter may be larger by `od_plus` and the wall
/// thinner by `wall_minus`; a `radius` bends it, and a `neutral_shift` of the bend's neutral axis, inward, thins the outside
/// further.
///
/// What comes out is about a cylinder without flares, joints, corrosion, dents, wear, temperature and fatigue. It is no
/// statement that a line may be used at a pressure.
///
/// Raises `InputError` (OUT_OF_RANGE, also where no wall is left and beyond the limits of a `BentWall`, FIELD_MISSING for a
/// shift without a radius, and the codes of `read_length`), `QuantityError` for a bare number.
///
/// >>> import linewright as lw
/// >>> tube = lw.Tube("3/16 in", wall="0.028 in", material="low-carbon steel")
/// >>> asked = lw.Strength("290 MPa", factor=4, source="my own choice")
/// >>> ideal = lw.Cylinder(tube).ideal_cylinder_pressure("Lame", asked)
/// >>> print(ideal.pressure, ideal.place)
/// 24.69 MPa None
/// >>> worst = lw.Cylinder(tube, od_plus="0.003 in", wall_minus="0.005 in", radius="14.2875 mm")
/// >>> print(worst.ideal_cylinder_pressure("Lame", asked).place)
/// extrados
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct Cylinder {
    cylinder: pressure::Cylinder,
    tube: Tube,
    od_plus: Option<Length>,
    wall_minus: Option<Length>,
    radius: Option<Length>,
    neutral_shift: Option<Length>,
}

impl Record for Cylinder {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        Call::class::<Self>(py)
            .arg(self.tube())?
            .given("od_plus", self.od_plus)?
            .given("wall_minus", self.wall_minus)?
            .given("radius", self.radius)?
            .given("neutral_shift", self.neutral_shift)
    }
}

#[pymethods]
impl Cylinder {
    #[new]
    #[pyo3(signature = (tube, /, *, od_plus=None, wall_minus=None, radius=None, neutral_shift=None))]
    fn new(
        tube: &Tube,
        od_plus: Option<&Bound<'_, PyAny>>,
        wall_minus: Option<&Bound<'_, PyAny>>,
        radius: Option<&Bound<'_, PyAny>>,
        neutral_shift: Option<&Bound<'_, PyAny>>,
    ) -> PyResult<Self> {
        let od_plus = quantity::length_if(od_plus, "od_plus")?;
        let wall_minus = quantity::length_if(wall_minus, "wall_minus")?;
        let radius = quantity::length_if(radius, "radius")?;
        let shift = quantity::length_if(neutral_shift, "neutral_shift")?;
        let cylinder = error::call(|| {
            let mut made = pressure::Cylinder::new(&tube.0)
                .with_tolerances(od_plus.unwrap_or(mm(0.0)), wall_minus.unwrap_or(mm(0.0)))?;
            if let Some(radius) = radius {
                made = made.bent(radius)?;
            }
            shift.map_or(Ok(made), |shift| made.with_neutral_shift(shift))
        })?;
        Ok(Cylinder {
            cylinder,
            tube: tube.clone(),
            od_plus: od_plus.map(Length),
            wall_minus: wall_minus.map(Length),
            radius: radius.map(Length),
            neutral_shift: shift.map(Length),
        })
    }

    /// The tube.
    #[getter]
    fn tube(&self) -> Tube {
        self.tube.clone()
    }

    /// By how much the diameter is larger; None where nothing was said.
    #[getter]
    fn od_plus(&self) -> Option<Length> {
        self.od_plus
    }

    /// By how much the wall is thinner; None where nothing was said.
    #[getter]
    fn wall_minus(&self) -> Option<Length> {
        self.wall_minus
    }

    /// Centerline radius; None for a straight.
    #[getter]
    fn radius(&self) -> Option<Length> {
        self.radius
    }

    /// By how much the bend's neutral axis lies inside its center line; None where nothing was said.
    #[getter]
    fn neutral_shift(&self) -> Option<Length> {
        self.neutral_shift
    }

    /// The pressure at which the worst place meets the caller's strength divided by the caller's factor, by a theory
    /// ("Barlow", "Boardman", "Lame", "Tresca", "von Mises"). What it leaves out goes with it as `excludes`. "Boardman" is for
    /// walls up to a sixth of the diameter; with a thicker one it would say more than "Lame".
    ///
    /// Raises `UnknownNameError` for the theory, `InputError` (OUT_OF_RANGE) for "Boardman" and a thicker wall.
    ///
    /// >>> import linewright as lw
    /// >>> tube = lw.Tube("4.75 mm", wall="0.75 mm", material="low-carbon steel")
    /// >>> ideal = lw.Cylinder(tube).ideal_cylinder_pressure("Barlow", lw.Strength("290 MPa", factor=1, source="mine"))
    /// >>> print(ideal.pressure, ideal.wall)
    /// 91.58 MPa 0.75 mm
    /// >>> ideal.excludes.startswith("an ideal cylinder: without flares, joints, corrosion")
    /// True
    #[pyo3(signature = (theory, strength, /))]
    fn ideal_cylinder_pressure<'py>(
        &self,
        py: Python<'py>,
        theory: &str,
        strength: &Bound<'py, Strength>,
    ) -> PyResult<Bound<'py, PyAny>> {
        let theory = error::call(|| Theory::from_name(theory))?;
        let ideal = error::call(|| self.cylinder.ideal_cylinder_pressure(theory, &strength.get().0))?;
        let parts = (
            Pressure(ideal.pressure()),
            ideal.theory().name(),
            strength.get().clone(),
            ideal.place().map(Place::name),
            Length(ideal.wall()),
            EXCLUDES,
            ideal.to_string(),
        );
        made(py, "IdealCylinderPressure", parts)
    }

    /// Stress at a pressure, at the worst place: the hoop stress for "Barlow", "Boardman", "Lame", the strength that the
    /// whole wall would need for "Tresca", "von Mises".
    ///
    /// Raises `UnknownNameError` for the theory, `InputError` (OUT_OF_RANGE, also for "Boardman" and a wall of more than a
    /// sixth of the diameter), `QuantityError` for a bare number.
    ///
    /// >>> import linewright as lw
    /// >>> tube = lw.Tube("4.75 mm", wall="0.75 mm", material="low-carbon steel")
    /// >>> print(lw.Cylinder(tube).stress("Barlow", "15 MPa"))
    /// 47.5 MPa
    #[pyo3(signature = (theory, pressure, /))]
    fn stress(&self, theory: &str, pressure: &Bound<'_, PyAny>) -> PyResult<Pressure> {
        let pressure = quantity::pressure(pressure, "pressure")?;
        error::call(|| self.cylinder.stress(Theory::from_name(theory)?, pressure)).map(Pressure)
    }

    /// How often the stress at a pressure goes into the caller's strength, beside the factor that the caller asked for. It
    /// says nothing about a line.
    ///
    /// Raises as `stress`, also for no pressure at all.
    ///
    /// >>> import linewright as lw
    /// >>> tube = lw.Tube("4.75 mm", wall="0.75 mm", material="low-carbon steel")
    /// >>> margin = lw.Cylinder(tube).margin("Lame", "15 MPa", lw.Strength("290 MPa", factor=4, source="mine"))
    /// >>> round(margin.found, 2), margin.asked, margin.is_reached
    /// (7.0, 4.0, True)
    #[pyo3(signature = (theory, pressure, strength, /))]
    fn margin<'py>(
        &self,
        theory: &str,
        pressure: &Bound<'py, PyAny>,
        strength: &Bound<'py, Strength>,
    ) -> PyResult<Bound<'py, PyAny>> {
        let at = quantity::pressure(pressure, "pressure")?;
        let margin = error::call(|| self.cylinder.margin(Theory::from_name(theory)?, at, &strength.get().0))?;
        made(pressure.py(), "Margin", (margin.found().value, margin.asked().value, margin.is_reached()))
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

/// Stress in a bend as a multiple of the straight tube's. Places are "extrados", "intrados" and "side".
///
/// Raises `InputError` (OUT_OF_RANGE, also for a radius of less than one diameter, and the codes of `read_length`),
/// `QuantityError` for a bare number.
///
/// >>> import linewright as lw
/// >>> bend = lw.BendFactors("4.75 mm", radius="14.25 mm")
/// >>> round(bend.shell("intrados"), 12)
/// 1.1
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct BendFactors {
    factors: pressure::BendFactors,
    od: Length,
    radius: Length,
}

impl Record for BendFactors {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        Call::class::<Self>(py).arg(self.od)?.named("radius", self.radius)
    }
}

#[pymethods]
impl BendFactors {
    #[new]
    #[pyo3(signature = (od, /, *, radius))]
    fn new(od: &Bound<'_, PyAny>, radius: &Bound<'_, PyAny>) -> PyResult<Self> {
        let (od, radius) = (quantity::length(od, "od")?, quantity::length(radius, "radius")?);
        let factors = error::call(|| pressure::BendFactors::new(od, radius))?;
        Ok(BendFactors { factors, od: Length(od), radius: Length(radius) })
    }

    /// Outside diameter.
    #[getter]
    fn od(&self) -> Length {
        self.od
    }

    /// Centerline radius.
    #[getter]
    fn radius(&self) -> Length {
        self.radius
    }

    /// By the shape alone, the wall as before: the factor I of ASME B31.3 paragraph 304.2.1.
    ///
    /// Raises `UnknownNameError`.
    ///
    /// >>> import linewright as lw
    /// >>> round(lw.BendFactors("4.75 mm", radius="14.25 mm").shell("extrados"), 4)
    /// 0.9286
    #[pyo3(signature = (place, /))]
    fn shell(&self, place: &str) -> PyResult<f64> {
        error::call(|| Ok(self.factors.shell(Place::from_name(place)?).value))
    }

    /// By the shape and by what bending does to a thin wall, under an assumption ("plane strain", "uniaxial").
    ///
    /// Raises `UnknownNameError`.
    ///
    /// >>> import linewright as lw
    /// >>> round(lw.BendFactors("4.75 mm", radius="14.25 mm").after_bending("extrados", "plane strain"), 4)
    /// 1.0833
    #[pyo3(signature = (place, thinning, /))]
    fn after_bending(&self, place: &str, thinning: &str) -> PyResult<f64> {
        error::call(|| {
            Ok(self.factors.after_bending(Place::from_name(place)?, Thinning::from_name(thinning)?).value)
        })
    }

    /// Wall at a place by t = P D / (2 (S / I + P Y)), the form of ASME B31.3 paragraph 304.2.1, with the caller's divided
    /// strength and the caller's `y`. An ideal cylinder: without flares, joints, corrosion, dents, wear, temperature and
    /// fatigue, and without any allowance, which is to be added. With 0.4 it is Boardman's formula. It is for walls up to a
    /// sixth of the diameter.
    ///
    /// Raises `UnknownNameError`, `InputError` (OUT_OF_RANGE, also for a pressure that wants a wall of more than a sixth of the
    /// diameter), `QuantityError` for a bare pressure.
    ///
    /// >>> import linewright as lw
    /// >>> bend = lw.BendFactors("4.75 mm", radius="14.25 mm")
    /// >>> asked = lw.Strength("290 MPa", factor=4, source="mine")
    /// >>> print(bend.ideal_wall("side", pressure="15 MPa", strength=asked, y=0.4))
    /// 0.45 mm
    #[pyo3(signature = (place, /, *, pressure, strength, y))]
    fn ideal_wall(
        &self,
        place: &str,
        pressure: &Bound<'_, PyAny>,
        strength: &Strength,
        y: &Bound<'_, PyAny>,
    ) -> PyResult<Length> {
        let (pressure, y) = (quantity::pressure(pressure, "pressure")?, quantity::number(y, "y")?);
        error::call(|| self.factors.ideal_wall(Place::from_name(place)?, pressure, &strength.0, ratio(y)))
            .map(Length)
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

/// Peak hoop stress of a slightly oval tube under pressure as a multiple of the round one's: a thin ring, first order.
/// `out_of_round` is the largest less the smallest diameter. It is an elastic peak at the surface: it matters for fatigue and
/// hardly for bursting. Its limit is ours: a fifth of the diameter less the wall, where an ellipse's true peak is 5 to 8 %
/// higher.
///
/// Raises `InputError` (OUT_OF_RANGE, also beyond that fifth, and the codes of `read_length`), `QuantityError` for a bare
/// length or pressure.
///
/// >>> import linewright as lw
/// >>> tube = lw.Tube("3/16 in", wall="0.028 in", material="low-carbon steel")
/// >>> peak = lw.ovality_amplification(tube, out_of_round="0.2 mm", pressure="15 MPa", modulus="207 GPa", poisson=0.29)
/// >>> round(peak, 2)
/// 1.42
#[pyfunction]
#[pyo3(signature = (tube, /, *, out_of_round, pressure, modulus, poisson))]
pub(crate) fn ovality_amplification(
    tube: &Tube,
    out_of_round: &Bound<'_, PyAny>,
    pressure: &Bound<'_, PyAny>,
    modulus: &Bound<'_, PyAny>,
    poisson: &Bound<'_, PyAny>,
) -> PyResult<f64> {
    let apart = quantity::length(out_of_round, "out_of_round")?;
    let (pressure, modulus) =
        (quantity::pressure(pressure, "pressure")?, quantity::pressure(modulus, "modulus")?);
    let poisson = quantity::number(poisson, "poisson")?;
    error::call(|| pressure::ovality_amplification(&tube.0, apart, pressure, modulus, ratio(poisson)))
        .map(|peak| peak.value)
}

/// How far a tube of this diameter may be off its size, as far as public texts were seen; empty where none was.
///
/// Raises `InputError` (OUT_OF_RANGE and the codes of `read_length`), `QuantityError` for a bare number.
///
/// >>> import linewright as lw
/// >>> [(row.scope, str(row.wall_plus_minus)) for row in lw.size_tolerances("3/16 in")]
/// [('SAE J526, 3/16 in', '0.13 mm')]
#[pyfunction]
#[pyo3(signature = (od, /))]
pub(crate) fn size_tolerances<'py>(od: &Bound<'py, PyAny>) -> PyResult<Vec<Bound<'py, PyAny>>> {
    let (py, od) = (od.py(), quantity::length(od, "od")?);
    let row = |row: SizeTolerance| {
        let (source, checked) = (row.source.to_string(), row.source.checked.name());
        let sizes = (Length(row.wall), Length(row.wall_plus_minus), row.od_plus_minus.map(Length));
        made(py, "SizeTolerance", (row.scope, sizes.0, sizes.1, sizes.2, source, checked))
    };
    error::call(|| pressure::size_tolerances(od))?.into_iter().map(row).collect()
}
