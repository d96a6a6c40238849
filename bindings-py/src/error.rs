//! Errors of the core as Python exceptions, and the one gate through which the core is called.

use crate::problem::Problem;
use linewright::{Code, Error, Part};
use pyo3::prelude::*;
use std::panic::{AssertUnwindSafe, catch_unwind};

/// Calls the core. An error becomes an exception; so does a panic, which never crosses into Python.
pub(crate) fn call<T>(work: impl FnOnce() -> Result<T, Error>) -> PyResult<T> {
    match catch_unwind(AssertUnwindSafe(work)) {
        Ok(Ok(value)) => Ok(value),
        Ok(Err(error)) => Err(input(error)),
        Err(_) => Err(fault()),
    }
}

/// The exception of a fault inside the library.
pub(crate) fn fault() -> PyErr {
    raise("LinewrightError", linewright::Problem::new(Code::InternalFault, Part::Line))
}

/// Calls a part of the core that cannot fail.
pub(crate) fn compute<T>(work: impl FnOnce() -> T) -> PyResult<T> {
    call(|| Ok(work()))
}

/// The exception of an input that was read and cannot be used.
pub(crate) fn input(error: Error) -> PyErr {
    let class = if error.code() == Code::UnknownName { "UnknownNameError" } else { "InputError" };
    raise(class, error.into_problem())
}

/// The exception of an argument whose Python type cannot be a quantity.
pub(crate) fn wrong_type(problem: linewright::Problem) -> PyErr {
    raise("QuantityError", problem)
}

/// The classes are Python's: an exception that is both ours and a `ValueError` has two bases.
fn raise(class: &str, problem: linewright::Problem) -> PyErr {
    Python::attach(|py| {
        let error = || {
            let class = py.import("linewright._errors")?.getattr(class)?;
            Ok(PyErr::from_value(class.call1((Problem(problem),))?))
        };
        error().unwrap_or_else(|error: PyErr| error)
    })
}
