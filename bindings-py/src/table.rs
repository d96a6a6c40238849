//! Tables of named columns, handed over in the way of the Arrow PyCapsule interface.

use crate::error;
use crate::quantity;
use crate::record::{self, Call, Record, Reduced};
use arrow_array::cast::AsArray;
use arrow_array::ffi::FFI_ArrowSchema;
use arrow_array::ffi_stream::FFI_ArrowArrayStream;
use arrow_array::types::{Float64Type, Int64Type};
use arrow_array::{ArrayRef, Float64Array, Int64Array, RecordBatch, RecordBatchIterator, StringArray};
use linewright::{Code, Error, Part, Value};
use pyo3::IntoPyObjectExt;
use pyo3::prelude::*;
use pyo3::types::{PyCapsule, PyDict, PyList, PyString, PyTuple};
use std::sync::Arc;

/// An immutable table: named columns of one length. In a column of kind "text" are str, of "number" float, of "count"
/// int, and None in each of them where there is nothing to say. A unit stands at the end of a column's name.
///
/// `len` counts rows, `columns` are the names, `table["name"]` is a column as a list, and `to_dict` all of them.
/// `polars.DataFrame`, `pyarrow.table` and `pandas.DataFrame.from_arrow` take it as it is (Arrow PyCapsule interface:
/// utf8, float64 and int64, each with nulls), as often as wanted. Functions of this package make tables; nobody needs
/// to make one of the name, kind and values of its columns.
///
/// Raises `UnknownNameError` for a column or a kind that is not there; when made of columns that do not belong
/// together, `InputError` (OUT_OF_RANGE, FIELDS_CONFLICT, FIELD_MISSING, UNREADABLE, NOT_A_NUMBER) or `QuantityError`.
///
/// >>> import linewright as lw
/// >>> table = lw.threads()
/// >>> len(table) == len(table["pitch_mm"]) and table.columns[:3]
/// ('designation', 'family', 'diameter_mm')
/// >>> lw.Table([("thread", "text", ["M10x1", "3/8-24"]), ("pitch_mm", "number", [1.0, None])])["pitch_mm"]
/// [1.0, None]
// Without `mapping` it would count as a sequence, which goes by numbers.
#[pyclass(frozen, eq, mapping, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct Table(RecordBatch);

/// A column that is being made.
pub(crate) enum Column {
    Text(Vec<Option<String>>),
    Number(Vec<Option<f64>>),
    Count(Vec<Option<i64>>),
}

const TEXT: &str = "text";
const NUMBER: &str = "number";
const COUNT: &str = "count";

/// What `Table` is made of, and what it gives back.
type Described<'py> = (String, String, Bound<'py, PyAny>);

impl Column {
    fn read(kind: &str, values: &Bound<'_, PyAny>, field: &str) -> PyResult<Column> {
        let values = Some(values);
        Ok(match kind {
            TEXT => Column::Text(quantity::list(values, field, |item, field| given(item, field, text))?),
            NUMBER => Column::Number(quantity::list(values, field, |item, field| {
                given(item, field, quantity::finite_number)
            })?),
            COUNT => Column::Count(quantity::list(values, field, |item, field| given(item, field, count))?),
            _ => {
                let need = Value::text(format!("{TEXT}, {NUMBER} or {COUNT}"));
                return Err(refused(Code::UnknownName, field, Value::text(kind), need));
            }
        })
    }

    fn len(&self) -> usize {
        match self {
            Column::Text(values) => values.len(),
            Column::Number(values) => values.len(),
            Column::Count(values) => values.len(),
        }
    }

    fn array(self) -> ArrayRef {
        match self {
            Column::Text(values) => Arc::new(StringArray::from(values)),
            Column::Number(values) => Arc::new(Float64Array::from(values)),
            Column::Count(values) => Arc::new(Int64Array::from(values)),
        }
    }
}

fn given<T>(
    item: &Bound<'_, PyAny>,
    field: &str,
    read: impl Fn(&Bound<'_, PyAny>, &str) -> PyResult<T>,
) -> PyResult<Option<T>> {
    if item.is_none() { Ok(None) } else { read(item, field).map(Some) }
}

fn text(item: &Bound<'_, PyAny>, field: &str) -> PyResult<String> {
    match item.cast::<PyString>() {
        Ok(text) => Ok(text.to_cow()?.into_owned()),
        Err(_) => Err(quantity::wrong_kind(item, field, "a text")),
    }
}

fn count(item: &Bound<'_, PyAny>, field: &str) -> PyResult<i64> {
    item.extract().map_err(|_| quantity::wrong_kind(item, field, "a whole number"))
}

fn refused(code: Code, field: &str, got: Value, need: Value) -> PyErr {
    error::input(linewright::Problem::new(code, Part::Field(field.to_owned())).got(got).need(need).into())
}

impl Table {
    /// A table of columns of one length, whose names differ.
    pub(crate) fn of(columns: Vec<(String, Column)>) -> PyResult<Self> {
        let made = error::compute(|| {
            let arrays = columns.into_iter().map(|(name, column)| (name, column.array(), true));
            RecordBatch::try_from_iter_with_nullable(arrays)
        })?;
        made.map(Table).map_err(|_| error::fault())
    }

    fn names(&self) -> impl Iterator<Item = String> {
        let schema = self.0.schema();
        (0..self.0.num_columns()).map(move |column| schema.field(column).name().clone())
    }

    /// A column with its kind.
    fn column<'py>(py: Python<'py>, array: &ArrayRef) -> PyResult<(&'static str, Bound<'py, PyList>)> {
        if let Some(texts) = array.as_string_opt::<i32>() {
            Ok((TEXT, PyList::new(py, texts.iter().collect::<Vec<_>>())?))
        } else if let Some(numbers) = array.as_primitive_opt::<Float64Type>() {
            Ok((NUMBER, PyList::new(py, numbers.iter().collect::<Vec<_>>())?))
        } else if let Some(counts) = array.as_primitive_opt::<Int64Type>() {
            Ok((COUNT, PyList::new(py, counts.iter().collect::<Vec<_>>())?))
        } else {
            Err(error::fault())
        }
    }
}

impl Record for Table {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        let mut columns = Vec::new();
        for (name, array) in self.names().zip(self.0.columns()) {
            let (kind, values) = Table::column(py, array)?;
            columns.push((name, kind, values).into_bound_py_any(py)?);
        }
        Call::class::<Self>(py).arg(columns)
    }
}

#[pymethods]
impl Table {
    #[new]
    #[pyo3(signature = (columns, /))]
    fn new(columns: Vec<Described<'_>>) -> PyResult<Self> {
        const FIELD: &str = "columns";
        let mut made: Vec<(String, Column)> = Vec::with_capacity(columns.len());
        let mut rows = None;
        for (i, (name, kind, values)) in columns.into_iter().enumerate() {
            let field = format!("{FIELD}, item {}", i + 1);
            // Arrow hands names over as texts of C, which end there.
            if name.contains('\0') {
                let need = Value::text("a name without a null character");
                return Err(refused(Code::Unreadable, &field, Value::text(name), need));
            }
            if made.iter().any(|(other, _)| *other == name) {
                let need = Value::text("a name that no other column has");
                return Err(refused(Code::FieldsConflict, &field, Value::text(name), need));
            }
            let column = Column::read(&kind, &values, &field)?;
            let own = column.len();
            let all = *rows.get_or_insert(own);
            if own != all {
                return Err(refused(Code::OutOfRange, &field, Value::Count(own), Value::Count(all)));
            }
            made.push((name, column));
        }
        if made.is_empty() {
            return Err(refused(Code::FieldMissing, FIELD, Value::Nothing, Value::text("a column")));
        }
        Table::of(made)
    }

    /// The names of the columns.
    #[getter]
    fn columns<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        PyTuple::new(py, self.names().collect::<Vec<_>>())
    }

    /// All columns, each a list under its name: what `pandas.DataFrame` takes.
    ///
    /// >>> import linewright as lw
    /// >>> list(lw.thread_report().to_dict())
    /// ['family', 'checked', 'rows']
    fn to_dict<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        let columns = PyDict::new(py);
        for (name, array) in self.names().zip(self.0.columns()) {
            columns.set_item(name, Table::column(py, array)?.1)?;
        }
        Ok(columns)
    }

    fn __len__(&self) -> usize {
        self.0.num_rows()
    }

    fn __getitem__<'py>(&self, py: Python<'py>, name: &str) -> PyResult<Bound<'py, PyList>> {
        let array = error::call(|| {
            self.0.column_by_name(name).ok_or_else(|| {
                let problem = linewright::Problem::new(Code::UnknownName, Part::Field("column".to_owned()));
                let names: Vec<String> = self.names().collect();
                Error::from(problem.got(Value::text(name)).need(Value::text(names.join(", "))))
            })
        })?;
        Table::column(py, array).map(|(_, values)| values)
    }

    /// The rows as an Arrow stream. It comes in its own types whatever is asked for, as the interface permits.
    #[pyo3(signature = (requested_schema=None))]
    fn __arrow_c_stream__<'py>(
        &self,
        py: Python<'py>,
        requested_schema: Option<&Bound<'py, PyAny>>,
    ) -> PyResult<Bound<'py, PyCapsule>> {
        // To read a schema from its capsule takes unsafe code, and a consumer has to convert in any case.
        let _ = requested_schema;
        let rows = RecordBatchIterator::new([Ok(self.0.clone())], self.0.schema());
        PyCapsule::new_with_value(py, FFI_ArrowArrayStream::new(Box::new(rows)), c"arrow_array_stream")
    }

    /// The columns' names and types as an Arrow schema.
    fn __arrow_c_schema__<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyCapsule>> {
        let schema = FFI_ArrowSchema::try_from(self.0.schema().as_ref()).map_err(|_| error::fault())?;
        PyCapsule::new_with_value(py, schema, c"arrow_schema")
    }

    fn __str__(&self) -> String {
        format!("table of {} rows: {}", self.0.num_rows(), self.names().collect::<Vec<_>>().join(", "))
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
