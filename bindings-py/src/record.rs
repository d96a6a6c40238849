//! What every class shares: a value is written, hashed and pickled as the call that makes it again.

use pyo3::IntoPyObjectExt;
use pyo3::PyClass;
use pyo3::prelude::*;
use pyo3::types::{PyDict, PyList, PyTuple};

/// The call that makes a value.
pub(crate) struct Call<'py> {
    of: Bound<'py, PyAny>,
    written: String,
    arguments: Vec<(Option<String>, Bound<'py, PyAny>)>,
}

/// A class whose values can be made again by a call.
pub(crate) trait Record {
    /// The call that makes this value.
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>>;
}

/// What `__reduce__` returns: a callable, and no arguments because the callable holds them.
pub(crate) type Reduced<'py> = (Bound<'py, PyAny>, Bound<'py, PyTuple>);

impl<'py> Call<'py> {
    /// A call of `of`, which is written as `written`.
    pub(crate) fn of(of: Bound<'py, PyAny>, written: impl Into<String>) -> Self {
        Call { of, written: written.into(), arguments: Vec::new() }
    }

    /// A call of a class.
    pub(crate) fn class<T: PyClass>(py: Python<'py>) -> Self {
        Call::of(py.get_type::<T>().into_any(), T::NAME)
    }

    /// A call of a function of this package.
    pub(crate) fn function(py: Python<'py>, name: &str) -> PyResult<Self> {
        Ok(Call::of(py.import("linewright")?.getattr(name)?, name))
    }

    /// A call of a method of a value.
    pub(crate) fn method(value: &Bound<'py, PyAny>, name: &str) -> PyResult<Self> {
        Ok(Call::of(value.getattr(name)?, format!("{}.{name}", value.repr()?)))
    }

    /// With one more argument.
    pub(crate) fn arg(mut self, value: impl IntoPyObject<'py>) -> PyResult<Self> {
        let value = value.into_bound_py_any(self.of.py())?;
        self.arguments.push((None, value));
        Ok(self)
    }

    /// With one more named argument.
    pub(crate) fn named(mut self, name: impl Into<String>, value: impl IntoPyObject<'py>) -> PyResult<Self> {
        let value = value.into_bound_py_any(self.of.py())?;
        self.arguments.push((Some(name.into()), value));
        Ok(self)
    }

    /// With one more named argument, unless it is None and so may be left out.
    pub(crate) fn given(self, name: &str, value: Option<impl IntoPyObject<'py>>) -> PyResult<Self> {
        match value {
            Some(value) => self.named(name, value),
            None => Ok(self),
        }
    }
}

/// The call as it is written: evaluable with the names of the package.
pub(crate) fn repr(record: &impl Record, py: Python<'_>) -> PyResult<String> {
    let call = record.call(py)?;
    let mut parts = Vec::with_capacity(call.arguments.len());
    for (name, value) in &call.arguments {
        let value = value.repr()?;
        parts.push(match name {
            Some(name) => format!("{name}={value}"),
            None => value.to_string(),
        });
    }
    Ok(format!("{}({})", call.written, parts.join(", ")))
}

/// The hash of the arguments. Equal values are made by equal calls.
pub(crate) fn hash(record: &impl Record, py: Python<'_>) -> PyResult<isize> {
    let mut values = Vec::new();
    for (_, value) in record.call(py)?.arguments {
        values.push(hashable(value)?);
    }
    PyTuple::new(py, values)?.hash()
}

/// Lists, dicts and what tuples hold as tuples of what is in them.
fn hashable(value: Bound<'_, PyAny>) -> PyResult<Bound<'_, PyAny>> {
    let items: Vec<Bound<'_, PyAny>> = if let Ok(list) = value.cast::<PyList>() {
        list.iter().collect()
    } else if let Ok(tuple) = value.cast::<PyTuple>() {
        tuple.iter().collect()
    } else if let Ok(dict) = value.cast::<PyDict>() {
        dict.values().iter().collect()
    } else {
        return Ok(value);
    };
    let items: Vec<Bound<'_, PyAny>> = items.into_iter().map(hashable).collect::<PyResult<_>>()?;
    Ok(PyTuple::new(value.py(), items)?.into_any())
}

/// The call for pickle and copy, which know `functools.partial`.
pub(crate) fn reduce<'py>(record: &impl Record, py: Python<'py>) -> PyResult<Reduced<'py>> {
    let call = record.call(py)?;
    let named = PyDict::new(py);
    let mut plain = vec![call.of];
    for (name, value) in call.arguments {
        match name {
            Some(name) => named.set_item(name, value)?,
            None => plain.push(value),
        }
    }
    let partial = py.import("functools")?.getattr("partial")?.call(PyTuple::new(py, plain)?, Some(&named))?;
    Ok((partial, PyTuple::empty(py)))
}
