//! Text of what stands in a cell of a table or a field of a draft. Nothing is interpreted: a number stays a number
//! without a unit, and the check of the draft says so.

use crate::quantity::{self, Foreign};
use crate::units::{Angle, Length, Pressure};
use linewright::units::{exact_length_text, exact_pressure_text};
use pyo3::prelude::*;
use pyo3::types::{PyBool, PyFloat, PyInt, PyString};

/// What is typed between the items of a list.
const BETWEEN: &str = "; ";

/// The text of a cell; empty for None, NaN and the other marks of a missing value.
pub(crate) fn typed(value: &Bound<'_, PyAny>) -> PyResult<String> {
    if value.is_none() {
        return Ok(String::new());
    }
    if let Ok(text) = value.cast::<PyString>() {
        return Ok(text.to_string_lossy().into_owned());
    }
    if let Ok(length) = value.cast::<Length>() {
        return Ok(exact_length_text(length.get().0));
    }
    if let Ok(angle) = value.cast::<Angle>() {
        return Ok(angle.get().exact_text());
    }
    if let Ok(pressure) = value.cast::<Pressure>() {
        return Ok(exact_pressure_text(pressure.get().0));
    }
    if let Some(text) = foreign(value)? {
        return Ok(text);
    }
    if value.is_instance_of::<PyFloat>() {
        // Rust writes 42445.0 as 42445, which is what stood in the sheet.
        let number: f64 = value.extract()?;
        return Ok(if number.is_nan() { String::new() } else { number.to_string() });
    }
    if value.is_instance_of::<PyBool>() || value.is_instance_of::<PyInt>() {
        return plain(value);
    }
    if quantity::is_list(value) {
        let items = value.try_iter()?.map(|item| typed(&item?)).collect::<PyResult<Vec<String>>>()?;
        return Ok(items.join(BETWEEN));
    }
    if is_missing(value) {
        return Ok(String::new());
    }
    plain(value)
}

/// A quantity of another package: the field is not looked at, so it is asked for a length and then for an angle.
fn foreign(value: &Bound<'_, PyAny>) -> PyResult<Option<String>> {
    for unit in ["mm", "deg"] {
        match quantity::foreign(value, unit)? {
            Some(Foreign::Number(number)) => return Ok(Some(format!("{number} {unit}"))),
            Some(Foreign::NoUnit) => return plain(value).map(Some),
            Some(Foreign::Refused(_)) => {}
            None => return Ok(None),
        }
    }
    if quantity::is_list(value) { Ok(None) } else { plain(value).map(Some) }
}

/// Marks of a missing value differ from themselves; one of them refuses to say so.
fn is_missing(value: &Bound<'_, PyAny>) -> bool {
    let differs = value.ne(value);
    differs.unwrap_or_else(|_| value.get_type().name().is_ok_and(|name| name == "NAType"))
}

/// The value's own text. A value that has none is shown by its type, which no field can be read from.
fn plain(value: &Bound<'_, PyAny>) -> PyResult<String> {
    match value.str() {
        Ok(text) => Ok(text.to_string_lossy().into_owned()),
        Err(_) => Ok(format!("<{}>", value.get_type().name()?)),
    }
}
