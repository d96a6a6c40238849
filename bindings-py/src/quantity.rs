//! Reads quantities from what Python code hands over.
//!
//! A quantity of another package is asked for its number in our unit by the method its package has for that. It never
//! goes through `float()` or a buffer: some packages drop the unit there without a word. A bare number is refused.

use crate::error::{call, input, wrong_type};
use crate::units::{Angle, Length, Pressure};
use linewright::units::{
    read_angle, read_length, read_pressure, read_rotation, read_tolerance, to_mm, to_mpa, to_rad,
};
use linewright::{Code, Error, Part, Problem, Value, units};
use pyo3::exceptions::PyOverflowError;
use pyo3::intern;
use pyo3::prelude::*;
use pyo3::types::{PyBool, PyBytes, PyString};

/// A kind of quantity, and how it is read.
struct Kind<T> {
    read: fn(&str) -> Result<T, Error>,
    own: fn(&Bound<'_, PyAny>) -> Option<T>,
    make: fn(f64) -> T,
    /// The unit other packages are asked for.
    unit: &'static str,
    /// How it is called, with an example.
    name: &'static str,
}

const LENGTH: Kind<units::Length> = Kind {
    read: read_length,
    own: |value| value.cast::<Length>().ok().map(|length| length.get().0),
    make: units::mm,
    unit: "mm",
    name: "a length",
};

const ANGLE: Kind<units::Angle> = Kind {
    read: read_angle,
    own: |value| value.cast::<Angle>().ok().map(|angle| angle.get().0),
    make: units::deg,
    unit: "deg",
    name: "an angle",
};

const PRESSURE: Kind<units::Pressure> = Kind {
    read: read_pressure,
    own: |value| value.cast::<Pressure>().ok().map(|pressure| pressure.get().0),
    make: units::mpa,
    unit: "MPa",
    name: "a pressure",
};

const ROTATION: Kind<units::Angle> = Kind { read: read_rotation, ..ANGLE };

/// The length in an argument.
pub(crate) fn length(value: &Bound<'_, PyAny>, field: &str) -> PyResult<units::Length> {
    LENGTH.take(value, field)
}

/// The angle in an argument.
pub(crate) fn angle(value: &Bound<'_, PyAny>, field: &str) -> PyResult<units::Angle> {
    ANGLE.take(value, field)
}

/// The pressure or stress in an argument.
pub(crate) fn pressure(value: &Bound<'_, PyAny>, field: &str) -> PyResult<units::Pressure> {
    PRESSURE.take(value, field)
}

/// The rotation in an argument: an angle, or a place on a clock.
pub(crate) fn rotation(value: &Bound<'_, PyAny>, field: &str) -> PyResult<units::Angle> {
    ROTATION.take(value, field)
}

/// The length in an argument that may be None: not known, or not given.
pub(crate) fn length_if(value: Option<&Bound<'_, PyAny>>, field: &str) -> PyResult<Option<units::Length>> {
    value.map(|value| length(value, field)).transpose()
}

/// The count in an argument: a whole number, not below zero.
pub(crate) fn count(value: &Bound<'_, PyAny>, field: &str) -> PyResult<usize> {
    let whole = if value.is_instance_of::<PyBool>() { None } else { Some(value.extract::<usize>()) };
    let beyond = |error: &PyErr| error.is_instance_of::<PyOverflowError>(value.py());
    match whole {
        Some(Ok(count)) => Ok(count),
        Some(Err(error)) if beyond(&error) => {
            let problem = Problem::new(Code::OutOfRange, Part::Field(field.to_owned()));
            Err(input(
                problem.got(Value::text(shown(value))).need(Value::text("a whole number from 0 on")).into(),
            ))
        }
        _ => Err(wrong_kind(value, field, "a whole number")),
    }
}

/// A length that was read, and how far it may be off either way.
const READING: &str = "a length and how far it may be off";

/// The reading in an argument: a text with both, or a pair of lengths.
pub(crate) fn reading(value: &Bound<'_, PyAny>, field: &str) -> PyResult<(units::Length, units::Length)> {
    if let Ok(text) = value.cast::<PyString>() {
        let text = text.to_string_lossy();
        return call(|| read_tolerance(&text).map_err(|error| error.at(Part::Field(field.to_owned()))));
    }
    if is_list(value) {
        if let [read, plus_minus] = lengths(Some(value), field)?[..] {
            return Ok((read, plus_minus));
        }
    } else if value.cast::<Length>().is_err() && is_number(value) {
        let write = written(value);
        let fix = format!("write \"{write} mm +- 0.05 mm\" if mm was measured, and to 0.05 mm");
        return Err(no_unit(value, field, &format!("{READING}, each with its unit"), fix));
    }
    Err(wrong_kind(value, field, READING))
}

/// The lengths in an argument that is a list.
pub(crate) fn lengths(values: Option<&Bound<'_, PyAny>>, field: &str) -> PyResult<Vec<units::Length>> {
    list(values, field, length)
}

/// The angles in an argument that is a list.
pub(crate) fn angles(values: Option<&Bound<'_, PyAny>>, field: &str) -> PyResult<Vec<units::Angle>> {
    list(values, field, angle)
}

/// The rotations in an argument that is a list.
pub(crate) fn rotations(values: Option<&Bound<'_, PyAny>>, field: &str) -> PyResult<Vec<units::Angle>> {
    list(values, field, rotation)
}

/// The lengths in an argument that is one length or a list.
pub(crate) fn length_or_lengths(
    values: Option<&Bound<'_, PyAny>>,
    field: &str,
) -> PyResult<Vec<units::Length>> {
    match values {
        Some(value) if !is_list(value) => Ok(vec![length(value, field)?]),
        values => lengths(values, field),
    }
}

/// The names in an argument that is a list of two.
pub(crate) fn two_names(value: &Bound<'_, PyAny>, field: &str, need: &str) -> PyResult<[String; 2]> {
    let name = |item: &Bound<'_, PyAny>, field: &str| match item.cast::<PyString>() {
        Ok(name) => Ok(name.to_string_lossy().into_owned()),
        Err(_) => Err(wrong_kind(item, field, "a name")),
    };
    if !is_list(value) {
        return Err(wrong_kind(value, field, need));
    }
    list(Some(value), field, name)?.try_into().map_err(|_| wrong_kind(value, field, need))
}

/// The items of a list, each read by `read` under its number.
pub(crate) fn list<T>(
    values: Option<&Bound<'_, PyAny>>,
    field: &str,
    read: impl Fn(&Bound<'_, PyAny>, &str) -> PyResult<T>,
) -> PyResult<Vec<T>> {
    let Some(values) = values else { return Ok(Vec::new()) };
    if !is_list(values) {
        return Err(wrong_kind(values, field, "a list"));
    }
    let item =
        |(i, item): (usize, PyResult<Bound<'_, PyAny>>)| read(&item?, &format!("{field}, item {}", i + 1));
    values.try_iter()?.enumerate().map(item).collect()
}

/// The plain number in an argument: a ratio, or the value of a constructor that names the unit.
pub(crate) fn number(value: &Bound<'_, PyAny>, field: &str) -> PyResult<f64> {
    // Not everything that has a float is a number: for many a quantity that is how it loses its unit.
    let is_number = value.is_instance(&value.py().import("numbers")?.getattr("Number")?)?;
    let plain = if is_number && !value.is_instance_of::<PyBool>() { single(value) } else { None };
    plain.ok_or_else(|| wrong_kind(value, field, "a plain number"))
}

/// The plain number in an argument, unless it is NaN or infinite.
pub(crate) fn finite_number(value: &Bound<'_, PyAny>, field: &str) -> PyResult<f64> {
    let number = number(value, field)?;
    finite(number, value).map(|()| number)
}

/// A length of a number that was given, unless it is NaN or too large.
pub(crate) fn finite_length(made: units::Length, given: &Bound<'_, PyAny>) -> PyResult<Length> {
    finite(to_mm(made), given).map(|()| Length(made))
}

/// An angle of a number that was given, unless it is NaN or too large.
pub(crate) fn finite_angle(made: units::Angle, given: &Bound<'_, PyAny>) -> PyResult<Angle> {
    finite(to_rad(made), given).map(|()| Angle(made))
}

/// A pressure of a number that was given, unless it is NaN or too large.
pub(crate) fn finite_pressure(made: units::Pressure, given: &Bound<'_, PyAny>) -> PyResult<Pressure> {
    finite(to_mpa(made), given).map(|()| Pressure(made))
}

fn finite(number: f64, given: &Bound<'_, PyAny>) -> PyResult<()> {
    if number.is_finite() {
        return Ok(());
    }
    let problem = Problem::new(Code::NotANumber, Part::Field("value".to_owned()));
    Err(input(problem.got(Value::text(shown(given))).need(Value::text("a finite number")).into()))
}

impl<T> Kind<T> {
    fn take(&self, value: &Bound<'_, PyAny>, field: &str) -> PyResult<T> {
        if let Some(own) = (self.own)(value) {
            return Ok(own);
        }
        if let Ok(text) = value.cast::<PyString>() {
            let text = text.to_string_lossy();
            return call(|| (self.read)(&text).map_err(|error| error.at(Part::Field(field.to_owned()))));
        }
        match foreign(value, self.unit)? {
            Some(Foreign::Number(number)) => Ok((self.make)(number)),
            Some(Foreign::NoUnit) => Err(self.unit_missing(value, field)),
            Some(Foreign::Refused(cause)) => {
                let error = wrong_kind(value, field, self.name);
                error.set_cause(value.py(), Some(cause));
                Err(error)
            }
            None if is_number(value) => Err(self.unit_missing(value, field)),
            None => Err(wrong_kind(value, field, self.name)),
        }
    }

    /// The error of a bare number, with what to write instead.
    fn unit_missing(&self, value: &Bound<'_, PyAny>, field: &str) -> PyErr {
        let (unit, write) = (self.unit, written(value));
        let make = unit.to_lowercase();
        let fix = format!("write \"{write} {unit}\" or lw.{make}({write}) if {unit} was measured");
        no_unit(value, field, &format!("{} with its unit", self.name), fix)
    }
}

/// A bare number as it may be written again; an example where it is none that can be.
fn written(value: &Bound<'_, PyAny>) -> String {
    let plain = if value.is_instance_of::<PyBool>() { None } else { single(value) };
    plain.filter(|number| number.is_finite()).map_or("14.3".to_owned(), |number| number.to_string())
}

/// The error of a field without which another says nothing. The core takes the two as one; here they are two arguments.
pub(crate) fn half(field: &str, need: &str) -> Error {
    Problem::new(Code::FieldMissing, Part::Field(field.to_owned())).need(Value::text(need)).into()
}

fn no_unit(value: &Bound<'_, PyAny>, field: &str, need: &str, fix: String) -> PyErr {
    let problem = Problem::new(Code::UnitMissing, Part::Field(field.to_owned()));
    wrong_type(problem.got(Value::text(shown(value))).need(Value::text(need)).fix(fix))
}

/// What a quantity of another package answers.
pub(crate) enum Foreign {
    /// Its number in the unit asked for.
    Number(f64),
    /// It has no unit, or none of the kind asked for.
    NoUnit,
    /// It cannot be brought to that unit.
    Refused(PyErr),
}

/// Asks a quantity of another package for its number in a unit; None if the value is no such quantity.
pub(crate) fn foreign(value: &Bound<'_, PyAny>, unit: &str) -> PyResult<Option<Foreign>> {
    let py = value.py();
    // A class has its methods as attributes too, but is no quantity.
    let has = |name: &Bound<'_, PyString>| value.get_type().hasattr(name);
    let answer = if has(intern!(py, "m_as"))? {
        value.call_method1("m_as", (unit,))
    } else if has(intern!(py, "to_value"))? {
        value.call_method1("to_value", (unit,))
    } else if has(intern!(py, "rescale"))? {
        value.call_method1("rescale", (unit,)).and_then(|scaled| scaled.getattr("magnitude"))
    } else {
        return Ok(None);
    };
    Ok(Some(match answer {
        Ok(_) if unit == ANGLE.unit && !has_angle_unit(value) => Foreign::NoUnit,
        Ok(number) => match single(&number) {
            Some(number) => Foreign::Number(number),
            None => Foreign::Refused(wrong_kind(&number, unit, "one number")),
        },
        Err(error) if error.is_instance_of::<pyo3::exceptions::PyException>(py) => Foreign::Refused(error),
        Err(interrupt) => return Err(interrupt),
    }))
}

/// How packages write the units of angles that have no dimension.
const ANGLE_UNITS: [&str; 6] = ["radian", "rad", "mrad", "deg", "arcmin", "arcsec"];

/// Whether a quantity that gave a number of degrees has a unit of angle. Where angles have no dimension, a number
/// without a unit, a percentage or a count is taken for radians, and nobody is told.
fn has_angle_unit(value: &Bound<'_, PyAny>) -> bool {
    let root = value.call_method0("to_root_units").and_then(|root| root.getattr("units"));
    let unit = root.or_else(|_| value.getattr("dimensionality")).and_then(|unit| unit.str());
    unit.map_or(true, |unit| ANGLE_UNITS.iter().any(|known| unit == *known))
}

/// The value of something that is one plain number. Arrays are not, except those without a dimension.
pub(crate) fn single(value: &Bound<'_, PyAny>) -> Option<f64> {
    let is_array = match value.getattr("ndim").and_then(|ndim| ndim.extract::<usize>()) {
        Ok(dimensions) => dimensions > 0,
        Err(_) => value.len().is_ok(),
    };
    if is_array { None } else { value.extract().ok() }
}

/// Whether a value is a number, or many, without a unit.
fn is_number(value: &Bound<'_, PyAny>) -> bool {
    let class = value.get_type();
    ["__float__", "__index__", "__complex__"].iter().any(|name| class.hasattr(*name).unwrap_or(false))
}

fn is_text(value: &Bound<'_, PyAny>) -> bool {
    value.is_instance_of::<PyString>() || value.is_instance_of::<PyBytes>()
}

/// Whether a value is a list in the wide sense: it can be gone through, and it is no text.
pub(crate) fn is_list(value: &Bound<'_, PyAny>) -> bool {
    !is_text(value) && value.try_iter().is_ok()
}

/// The error of a value whose type is not the one asked for.
pub(crate) fn wrong_kind(value: &Bound<'_, PyAny>, field: &str, need: &str) -> PyErr {
    wrong_type(
        Problem::new(Code::WrongKind, Part::Field(field.to_owned()))
            .got(Value::text(shown(value)))
            .need(Value::text(need))
            .fix(match need {
                "a length" => "write \"14.3 mm\" or lw.mm(14.3)",
                "a pressure" => "write \"240 MPa\" or lw.mpa(240)",
                "an angle" => "write \"90 deg\" or lw.deg(90)",
                READING => "write \"9.45 mm +- 0.05 mm\" or (lw.mm(9.45), lw.mm(0.05))",
                _ => "give what is needed",
            }),
    )
}

/// The longest text of a value that a message repeats.
const MOST_SHOWN: usize = 60;

/// A value as a message shows it: its type and the start of its text.
fn shown(value: &Bound<'_, PyAny>) -> String {
    let class = value.get_type().name().map_or_else(|_| "?".to_owned(), |name| name.to_string());
    // A value's own text can fail, and does for very large integers.
    match value.str() {
        Ok(text) if !value.is_none() => {
            let text = text.to_string_lossy();
            let start: String = text.chars().take(MOST_SHOWN).collect();
            let rest = if start.len() < text.len() { "..." } else { "" };
            format!("{start}{rest} ({class})")
        }
        _ => class,
    }
}
