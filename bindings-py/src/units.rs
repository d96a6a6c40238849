//! Lengths, angles and pressures.

use crate::record::{self, Call, Record, Reduced};
use crate::{error, quantity};
use linewright::units::{self, to_deg, to_inch, to_mm, to_mpa, to_rad};
use pyo3::prelude::*;
use pyo3::types::PyFloat;

/// A length. Make one with `mm`, `inch` or `m`, or read one with `read_length`.
///
/// It has no value of its own as a number: ask for `.mm`, `.inch` or `.m`.
///
/// >>> import linewright as lw
/// >>> lw.inch(0.1875).mm
/// 4.7625
/// >>> lw.mm(4.7625) == lw.inch(0.1875)
/// True
/// >>> print(lw.m(1.2))
/// 1200 mm
#[pyclass(frozen, eq, ord, from_py_object, module = "linewright")]
#[derive(Clone, Copy, PartialEq, PartialOrd)]
pub(crate) struct Length(pub(crate) units::Length);

impl Record for Length {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        Call::function(py, "mm")?.arg(to_mm(self.0))
    }
}

#[pymethods]
impl Length {
    /// The number of millimeters.
    #[getter]
    fn mm(&self) -> f64 {
        to_mm(self.0)
    }

    /// The number of inches.
    #[getter]
    fn inch(&self) -> f64 {
        to_inch(self.0)
    }

    /// The length with every digit, which `read_length` gives back bit for bit.
    #[getter]
    fn exact(&self) -> String {
        units::exact_length_text(self.0)
    }

    /// The number of meters.
    #[getter]
    fn m(&self) -> f64 {
        to_mm(self.0) / to_mm(units::meter(1.0))
    }

    fn __str__(&self) -> String {
        units::length_text(self.0)
    }

    fn __repr__(&self, py: Python<'_>) -> PyResult<String> {
        record::repr(self, py)
    }

    fn __hash__(&self, py: Python<'_>) -> PyResult<isize> {
        PyFloat::new(py, to_mm(self.0)).hash()
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<Reduced<'py>> {
        record::reduce(self, py)
    }
}

/// An angle. Make one with `deg` or `rad`, or read one with `read_angle`.
///
/// It has no value of its own as a number: ask for `.deg` or `.rad`.
///
/// >>> import linewright as lw
/// >>> lw.read_angle("0.25 turn").deg
/// 90.0
/// >>> lw.deg(45)
/// deg(45.0)
#[pyclass(frozen, eq, ord, from_py_object, module = "linewright")]
#[derive(Clone, Copy, PartialEq, PartialOrd)]
pub(crate) struct Angle(pub(crate) units::Angle);

impl Angle {
    /// The number of degrees, if it makes the same angle again.
    pub(crate) fn exact_deg(self) -> Option<f64> {
        let degrees = to_deg(self.0);
        (to_rad(units::deg(degrees)).to_bits() == to_rad(self.0).to_bits()).then_some(degrees)
    }

    /// The angle in the unit in which it can be read back without loss.
    pub(crate) fn exact_text(self) -> String {
        match self.exact_deg() {
            Some(_) => units::exact_angle_text(self.0),
            None => format!("{} rad", to_rad(self.0)),
        }
    }
}

impl Record for Angle {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        match self.exact_deg() {
            Some(degrees) => Call::function(py, "deg")?.arg(degrees),
            None => Call::function(py, "rad")?.arg(to_rad(self.0)),
        }
    }
}

#[pymethods]
impl Angle {
    /// The number of degrees.
    #[getter]
    fn deg(&self) -> f64 {
        to_deg(self.0)
    }

    /// The angle with every digit, which `read_angle` gives back bit for bit: in degrees, or in radians where no number
    /// of degrees makes the same angle.
    #[getter]
    fn exact(&self) -> String {
        self.exact_text()
    }

    /// The number of radians.
    #[getter]
    fn rad(&self) -> f64 {
        to_rad(self.0)
    }

    fn __str__(&self) -> String {
        units::angle_text(self.0)
    }

    fn __repr__(&self, py: Python<'_>) -> PyResult<String> {
        record::repr(self, py)
    }

    fn __hash__(&self, py: Python<'_>) -> PyResult<isize> {
        PyFloat::new(py, to_rad(self.0)).hash()
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<Reduced<'py>> {
        record::reduce(self, py)
    }
}

/// A pressure or a stress. Make one with `mpa`, or read one with `read_pressure`.
///
/// It has no value of its own as a number: ask for `.mpa`, `.bar` or `.psi`.
///
/// >>> import linewright as lw
/// >>> lw.read_pressure("205 GPa").mpa
/// 205000.0
/// >>> lw.read_pressure("130 bar")
/// mpa(13.0)
#[pyclass(frozen, eq, ord, from_py_object, module = "linewright")]
#[derive(Clone, Copy, PartialEq, PartialOrd)]
pub(crate) struct Pressure(pub(crate) units::Pressure);

impl Record for Pressure {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        Call::function(py, "mpa")?.arg(to_mpa(self.0))
    }
}

#[pymethods]
impl Pressure {
    /// The number of megapascals, which are newtons per square millimeter.
    #[getter]
    fn mpa(&self) -> f64 {
        to_mpa(self.0)
    }

    /// The number of bar.
    #[getter]
    fn bar(&self) -> f64 {
        to_mpa(self.0) / to_mpa(units::bar(1.0))
    }

    /// The number of pounds per square inch.
    #[getter]
    fn psi(&self) -> f64 {
        to_mpa(self.0) / to_mpa(units::psi(1.0))
    }

    /// The pressure with every digit, which `read_pressure` gives back bit for bit.
    #[getter]
    fn exact(&self) -> String {
        units::exact_pressure_text(self.0)
    }

    fn __str__(&self) -> String {
        units::pressure_text(self.0)
    }

    fn __repr__(&self, py: Python<'_>) -> PyResult<String> {
        record::repr(self, py)
    }

    fn __hash__(&self, py: Python<'_>) -> PyResult<isize> {
        PyFloat::new(py, to_mpa(self.0)).hash()
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<Reduced<'py>> {
        record::reduce(self, py)
    }
}

/// A length of so many millimeters.
///
/// Raises `InputError` (NOT_A_NUMBER) for NaN and infinities, `QuantityError` (WRONG_KIND) for what is not a number.
///
/// >>> import linewright as lw
/// >>> lw.mm(14.3)
/// mm(14.3)
#[pyfunction]
#[pyo3(signature = (value, /))]
pub(crate) fn mm(value: &Bound<'_, PyAny>) -> PyResult<Length> {
    quantity::finite_length(units::mm(quantity::number(value, "mm")?), value)
}

/// A length of so many inches, 25.4 mm each.
///
/// Raises as `mm`.
///
/// >>> import linewright as lw
/// >>> lw.inch(0.1875)
/// mm(4.7625)
#[pyfunction]
#[pyo3(signature = (value, /))]
pub(crate) fn inch(value: &Bound<'_, PyAny>) -> PyResult<Length> {
    quantity::finite_length(units::inch(quantity::number(value, "inch")?), value)
}

/// A length of so many meters.
///
/// Raises as `mm`.
///
/// >>> import linewright as lw
/// >>> lw.m(1.2)
/// mm(1200.0)
#[pyfunction]
#[pyo3(signature = (value, /))]
pub(crate) fn m(value: &Bound<'_, PyAny>) -> PyResult<Length> {
    quantity::finite_length(units::meter(quantity::number(value, "m")?), value)
}

/// An angle of so many degrees.
///
/// Raises as `mm`.
///
/// >>> import linewright as lw
/// >>> lw.deg(86.5).deg
/// 86.5
#[pyfunction]
#[pyo3(signature = (value, /))]
pub(crate) fn deg(value: &Bound<'_, PyAny>) -> PyResult<Angle> {
    quantity::finite_angle(units::deg(quantity::number(value, "deg")?), value)
}

/// An angle of so many radians.
///
/// Raises as `mm`.
///
/// >>> import linewright as lw
/// >>> print(lw.rad(1.5))
/// 85.94 deg
#[pyfunction]
#[pyo3(signature = (value, /))]
pub(crate) fn rad(value: &Bound<'_, PyAny>) -> PyResult<Angle> {
    quantity::finite_angle(units::rad(quantity::number(value, "rad")?), value)
}

/// A pressure or stress of so many megapascals.
///
/// Raises as `mm`.
///
/// >>> import linewright as lw
/// >>> print(lw.mpa(13))
/// 13 MPa
#[pyfunction]
#[pyo3(signature = (value, /))]
pub(crate) fn mpa(value: &Bound<'_, PyAny>) -> PyResult<Pressure> {
    quantity::finite_pressure(units::mpa(quantity::number(value, "mpa")?), value)
}

/// Reads what people write for a pressure or a stress: `205 GPa`, `240 N/mm2`, `130 bar`, `1900 psi`, `30 ksi`. Case does
/// not count, but for `mPa`, a thousandth of a pascal, which is refused.
///
/// Raises `InputError`, with the codes of `read_length`; WRONG_KIND for a length or an angle.
///
/// >>> import linewright as lw
/// >>> print(lw.read_pressure("30 ksi"))
/// 206.84 MPa
#[pyfunction]
#[pyo3(signature = (text, /))]
pub(crate) fn read_pressure(text: &str) -> PyResult<Pressure> {
    error::call(|| units::read_pressure(text)).map(Pressure)
}

/// Reads what people write for a length: `3/16 in`, `9 1/4 in`, `5'-3 1/4"`, `1.85 m`, `2,84 m`, `28 thou`.
///
/// Raises `InputError`: UNIT_MISSING for a bare number, WRONG_KIND for an angle, NUMBER_AMBIGUOUS for `1,500 mm`,
/// NOT_A_NUMBER, DATE_IN_SIZE, UNREADABLE.
///
/// >>> import linewright as lw
/// >>> lw.read_length("9 1/4 in").mm
/// 234.95
/// >>> lw.read_length("316")
/// Traceback (most recent call last):
///     ...
/// linewright.InputError: refuse UNIT_MISSING, field length: 316 has no unit...
#[pyfunction]
#[pyo3(signature = (text, /))]
pub(crate) fn read_length(text: &str) -> PyResult<Length> {
    error::call(|| units::read_length(text)).map(Length)
}

/// Reads the rotation of a bend plane: an angle with its sign, or `3 o'clock` for a quarter turn clockwise.
///
/// Raises `InputError`, with the codes of `read_length`; WRONG_KIND for an included angle.
///
/// >>> import linewright as lw
/// >>> lw.read_rotation("9 o'clock")
/// deg(-90.0)
#[pyfunction]
#[pyo3(signature = (text, /))]
pub(crate) fn read_rotation(text: &str) -> PyResult<Angle> {
    error::call(|| units::read_rotation(text)).map(Angle)
}

/// Reads a length with its uncertainty. Both numbers need their unit.
///
/// Raises `InputError`, with the codes of `read_length`; OUT_OF_RANGE for a negative uncertainty.
///
/// >>> import linewright as lw
/// >>> lw.read_tolerance("9.45 mm +- 0.05 mm")
/// (mm(9.45), mm(0.05))
#[pyfunction]
#[pyo3(signature = (text, /))]
pub(crate) fn read_tolerance(text: &str) -> PyResult<(Length, Length)> {
    error::call(|| units::read_tolerance(text)).map(|(value, plus_minus)| (Length(value), Length(plus_minus)))
}

/// Reads what people write for an angle: `90 deg`, `1.5708 rad`, `0.25 turn`, `150 deg included` (a bend of 30
/// degrees).
///
/// Raises `InputError`, with the codes of `read_length`; WRONG_KIND for a place on a clock, which is for rotations.
///
/// >>> import linewright as lw
/// >>> lw.read_angle("150 deg included")
/// deg(30.0)
#[pyfunction]
#[pyo3(signature = (text, /))]
pub(crate) fn read_angle(text: &str) -> PyResult<Angle> {
    error::call(|| units::read_angle(text)).map(Angle)
}
