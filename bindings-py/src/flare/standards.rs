//! What public texts say about flares, their sizes and their threads: rows with how each was checked.

use crate::error;
use crate::quantity;
use crate::results::made;
use crate::thread;
use crate::units::Length;
use linewright::flare::{self, HEXAGONS, STANDARDS, USUAL_THREADS};
use linewright::source::RowSource;
use linewright::units::mm;
use linewright::{Flare, Seat, bounds};
use pyo3::prelude::*;

/// Text with edition, place, and how it was checked.
fn source(row: &RowSource) -> String {
    row.source().to_string()
}

/// Diameter of a finished flare ("double-45", "bubble", "single-37") on a tube, with its source; None where no public text
/// was seen. Only double 45 degree flares on inch tube are known.
///
/// Raises `InputError` (SINGLE_45_REFUSED, OUT_OF_RANGE and the codes of `read_length`), `UnknownNameError` for the flare,
/// `QuantityError` for a bare number.
///
/// >>> import linewright as lw
/// >>> size = lw.flare_size("double-45", "3/16 in")
/// >>> print(size.least, size.most, size.checked)
/// 6.7 mm 7.1 mm seen second-hand
/// >>> lw.flare_size("bubble", "3/16 in") is None
/// True
#[pyfunction]
#[pyo3(signature = (flare, od, /))]
pub(crate) fn flare_size<'py>(flare: &str, od: &Bound<'py, PyAny>) -> PyResult<Option<Bound<'py, PyAny>>> {
    let (py, od) = (od.py(), quantity::length(od, "od")?);
    let size = error::call(|| Ok(flare::flare_size(Flare::from_name(flare)?, bounds::OD.length(od)?)))?;
    let record = |size: flare::FlareSize| {
        let lengths = (Length(size.least), Length(size.most), Length(size.wall_most));
        let (source, checked) = (size.source.to_string(), size.source.checked.name());
        made(py, "FlareSize", (lengths.0, lengths.1, lengths.2, source, checked))
    };
    size.map(record).transpose()
}

/// Smallest and largest diameter of a finished flare on a tube with this wall, as `flare_size` has them; None where no public
/// text was seen, and for a wall thicker than its figures are for.
///
/// Raises as `flare_size`.
///
/// >>> import linewright as lw
/// >>> [str(size) for size in lw.flare_known_diameters("double-45", od="3/16 in", wall="0.028 in")]
/// ['6.7 mm', '7.1 mm']
/// >>> lw.flare_known_diameters("double-45", od="3/16 in", wall="0.9 mm") is None
/// True
#[pyfunction]
#[pyo3(signature = (flare, /, *, od, wall))]
pub(crate) fn flare_known_diameters(
    flare: &str,
    od: &Bound<'_, PyAny>,
    wall: &Bound<'_, PyAny>,
) -> PyResult<Option<(Length, Length)>> {
    let (od, wall) = (quantity::length(od, "od")?, quantity::length(wall, "wall")?);
    let found = error::call(|| {
        let (od, wall) = (bounds::OD.length(od)?, bounds::WALL.length(wall)?);
        Ok(flare::known_diameters(Flare::from_name(flare)?, od, wall))
    })?;
    Ok(found.map(|[least, most]| (Length(least), Length(most))))
}

/// Standards of flared lines and their fittings that the library has heard of, with what they cover as far as a public
/// text shows it. None of these texts was opened in full.
///
/// >>> import linewright as lw
/// >>> [row.checked for row in lw.flare_standards() if row.name.startswith("SAE J514")]
/// ['from memory, not checked']
#[pyfunction]
pub(crate) fn flare_standards(py: Python<'_>) -> PyResult<Vec<Bound<'_, PyAny>>> {
    let row = |row: &flare::Standard| {
        made(py, "FlareStandard", (row.name, row.covers, source(&row.source), row.source.checked.name()))
    };
    STANDARDS.iter().map(row).collect()
}

/// Threads that go with a seat and a tube by a standard. A thread never tells the seat: see `seats_of_thread`.
///
/// >>> import linewright as lw
/// >>> [(row.designation, row.seat) for row in lw.usual_threads() if row.standard == "SAE J1290"]
/// [('M10x1', 'bubble'), ('M12x1', 'bubble')]
#[pyfunction]
pub(crate) fn usual_threads(py: Python<'_>) -> PyResult<Vec<Bound<'_, PyAny>>> {
    let row = |row: &flare::UsualThread| {
        let od = Length(mm(row.od_mm));
        made(
            py,
            "UsualThread",
            (
                row.standard,
                row.seat.name(),
                od,
                row.designation,
                source(&row.source),
                row.source.checked.name(),
            ),
        )
    };
    USUAL_THREADS.iter().map(row).collect()
}

/// Hexagons that are met with threads, for choosing a spanner: look, do not assume. A hexagon says nothing about the
/// thread.
///
/// >>> import linewright as lw
/// >>> [str(row.across_flats) for row in lw.hexagons() if row.on == "M10x1 nut"]
/// ['10 mm', '11 mm']
#[pyfunction]
pub(crate) fn hexagons(py: Python<'_>) -> PyResult<Vec<Bound<'_, PyAny>>> {
    let row = |row: &flare::Hexagon| {
        made(
            py,
            "Hexagon",
            (row.on, Length(mm(row.across_flats_mm)), source(&row.source), row.source.checked.name()),
        )
    };
    HEXAGONS.iter().map(row).collect()
}

/// Seats that a thread is known with on a tube, each once. More than one says that the thread does not settle the seat;
/// none says that nothing is known.
///
/// Raises `InputError` (OUT_OF_RANGE and the codes of `Thread` and `read_length`), `QuantityError` for a bare number.
///
/// >>> import linewright as lw
/// >>> lw.seats_of_thread("M10x1", "3/16 in")
/// ['inverted-45', 'bubble']
#[pyfunction]
#[pyo3(signature = (thread, od, /))]
pub(crate) fn seats_of_thread(
    thread: &Bound<'_, PyAny>,
    od: &Bound<'_, PyAny>,
) -> PyResult<Vec<&'static str>> {
    let thread = thread::given(thread, "thread")?;
    let od = quantity::length(od, "od")?;
    let seats = error::call(|| Ok(flare::seats_of(&thread, bounds::OD.length(od)?)))?;
    Ok(seats.into_iter().map(Seat::name).collect())
}
