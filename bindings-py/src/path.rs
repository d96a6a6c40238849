//! The way of a line's center line.

use crate::error;
use crate::quantity::{self, angles, length_or_lengths, lengths};
use crate::record::{self, Call, Record, Reduced};
use crate::units::{Angle, Length};
use crate::{problem::problems, results};
use linewright::{Bend, Code, Error, Making, Part, Problem, Value, bounds, check, units};
use pyo3::prelude::*;
use pyo3::types::PyType;

/// Straights and bends in turn, from end A to end B: made by `Path.from_legs`, `Path.from_outer_legs`,
/// `Path.from_straights` or `Path.from_vertices`.
///
/// `bends` are angles (0 = straight tube). `rotations` turn the plane of each bend but the first against the bend
/// before it, right-handed about the direction from A to B. `radius` is the centerline radius as formed, one for all
/// bends or one each. `making` is how they are made, "former", "hand" or "mandrel", one for all or one each.
///
/// In its own pose the line starts at the origin along +x, and its first bend turns toward +y.
///
/// >>> import linewright as lw
/// >>> path = lw.Path.from_legs(["55 mm", "28 in", "9 1/4 in", "76 mm"], bends=["30 deg", "60 deg", "90 deg"],
/// ...                          rotations=["180 deg", "90 deg"], radius="14.3 mm")
/// >>> print(path.developed_length)
/// 1069.3 mm
/// >>> [str(straight) for straight in path.straights]
/// ['51.17 mm', '699.11 mm', '212.39 mm', '61.7 mm']
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct Path(pub(crate) linewright::Path);

/// A point: x, y, z.
type Point = (Length, Length, Length);

fn point([x, y, z]: linewright::Point) -> Point {
    (Length(x), Length(y), Length(z))
}

fn all(values: impl IntoIterator<Item = units::Length>) -> Vec<Length> {
    values.into_iter().map(Length).collect()
}

/// The lengths and bends of a path, read in the order in which they are given.
fn parts(
    lengths_of: (&Bound<'_, PyAny>, &str),
    bends: Option<&Bound<'_, PyAny>>,
    rotations: Option<&Bound<'_, PyAny>>,
    radius: Option<&Bound<'_, PyAny>>,
    making: Option<Ways>,
) -> PyResult<(Vec<units::Length>, Vec<Bend>)> {
    let lengths = lengths(Some(lengths_of.0), lengths_of.1)?;
    let (angles, rotations) = (angles(bends, "bends")?, quantity::rotations(rotations, "rotations")?);
    let radii = length_or_lengths(radius, "radius")?;
    let bends = error::call(|| made(Bend::list(&angles, &rotations, &radii)?, making))?;
    Ok((lengths, bends))
}

/// How bends are made: one way for all, or one each.
#[derive(FromPyObject)]
enum Ways {
    One(String),
    Each(Vec<String>),
}

fn made(bends: Vec<Bend>, making: Option<Ways>) -> Result<Vec<Bend>, Error> {
    let names = match making {
        None => return Ok(bends),
        Some(Ways::One(name)) => vec![name; bends.len()],
        Some(Ways::Each(names)) => names,
    };
    if names.len() != bends.len() {
        return Err(Problem::new(Code::CountMismatch, Part::Field("making".to_owned()))
            .got(Value::Count(names.len()))
            .need(Value::Count(bends.len()))
            .into());
    }
    bends.iter().zip(&names).map(|(bend, name)| Ok(bend.made(Making::from_name(name)?))).collect()
}

fn place(py: Python<'_>, place: &linewright::path::Place) -> PyResult<Py<PyAny>> {
    let unit = |[x, y, z]: [units::Ratio; 3]| (x.value, y.value, z.value);
    let parts = (point(place.point), unit(place.direction), unit(place.normal));
    results::made(py, "Place", parts).map(Bound::unbind)
}

impl Record for Path {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        // Where two bends overlap a straight is negative, which nobody can type.
        let overlap = self.0.straights().iter().any(|straight| units::to_mm(*straight) < 0.0);
        let way = if overlap { "restored" } else { "from_straights" };
        let plain = self.0.bends().iter().all(|bend| bend.making() == Making::Former);
        Call::of(py.get_type::<Self>().getattr(way)?, format!("Path.{way}"))
            .arg(self.straights())?
            .named("bends", self.angles())?
            .named("rotations", self.rotations())?
            .named("radius", self.radii())?
            .given("making", (!plain).then(|| self.making()))
    }
}

#[pymethods]
impl Path {
    /// A path from its legs, corner to corner: one leg more than bends.
    ///
    /// Raises `InputError` (COUNT_MISMATCH, OUT_OF_RANGE, NO_CORNER at 180 degrees and above, and the codes of
    /// `read_length`), `QuantityError` for a bare number.
    ///
    /// >>> import linewright as lw
    /// >>> print(lw.Path.from_legs(["100 mm", "100 mm"], bends=["90 deg"], radius="14.3 mm").developed_length)
    /// 193.86 mm
    #[classmethod]
    #[pyo3(signature = (legs, *, bends=None, rotations=None, radius=None, making=None))]
    fn from_legs(
        _class: &Bound<'_, PyType>,
        legs: &Bound<'_, PyAny>,
        bends: Option<&Bound<'_, PyAny>>,
        rotations: Option<&Bound<'_, PyAny>>,
        radius: Option<&Bound<'_, PyAny>>,
        making: Option<Ways>,
    ) -> PyResult<Self> {
        let (legs, bends) = parts((legs, "legs"), bends, rotations, radius, making)?;
        error::call(|| linewright::Path::from_legs(&legs, &bends)).map(Path)
    }

    /// A path from its straights, tangent to tangent: one straight more than bends.
    ///
    /// Raises as `Path.from_legs`; bends of 180 degrees and above are possible here.
    ///
    /// >>> import linewright as lw
    /// >>> print(lw.Path.from_straights(["100 mm", "100 mm"], bends=["180 deg"], radius="14.3 mm").developed_length)
    /// 244.92 mm
    #[classmethod]
    #[pyo3(signature = (straights, *, bends=None, rotations=None, radius=None, making=None))]
    fn from_straights(
        _class: &Bound<'_, PyType>,
        straights: &Bound<'_, PyAny>,
        bends: Option<&Bound<'_, PyAny>>,
        rotations: Option<&Bound<'_, PyAny>>,
        radius: Option<&Bound<'_, PyAny>>,
        making: Option<Ways>,
    ) -> PyResult<Self> {
        let (straights, bends) = parts((straights, "straights"), bends, rotations, radius, making)?;
        error::call(|| linewright::Path::from_straights(&straights, &bends)).map(Path)
    }

    /// A path from its legs as a tape over the outer edges of tube of diameter `od` measures them, outer corner to outer
    /// corner.
    ///
    /// Raises as `Path.from_legs`.
    ///
    /// >>> import linewright as lw
    /// >>> path = lw.Path.from_outer_legs(["102.375 mm", "102.375 mm"], bends=["90 deg"], radius="14.3 mm", od="4.75 mm")
    /// >>> [str(leg) for leg in path.legs]
    /// ['100 mm', '100 mm']
    #[classmethod]
    #[pyo3(signature = (legs, *, od, bends=None, rotations=None, radius=None, making=None))]
    fn from_outer_legs(
        _class: &Bound<'_, PyType>,
        legs: &Bound<'_, PyAny>,
        od: &Bound<'_, PyAny>,
        bends: Option<&Bound<'_, PyAny>>,
        rotations: Option<&Bound<'_, PyAny>>,
        radius: Option<&Bound<'_, PyAny>>,
        making: Option<Ways>,
    ) -> PyResult<Self> {
        let od = quantity::length(od, "od")?;
        let (legs, bends) = parts((legs, "legs"), bends, rotations, radius, making)?;
        error::call(|| linewright::Path::from_outer_legs(&legs, &bends, od)).map(Path)
    }

    /// A path from straights that were worked out before, and so may be negative where two bends overlap: the way back
    /// from a stored path.
    ///
    /// Raises as `Path.from_straights`.
    ///
    /// >>> import linewright as lw
    /// >>> path = lw.Path.restored(["60 mm", "-2 mm", "60 mm"], bends=["90 deg"] * 2, rotations=["0 deg"], radius="9 mm")
    /// >>> path.straights
    /// [mm(60.0), mm(-2.0), mm(60.0)]
    #[classmethod]
    #[pyo3(signature = (straights, *, bends=None, rotations=None, radius=None, making=None))]
    fn restored(
        _class: &Bound<'_, PyType>,
        straights: &Bound<'_, PyAny>,
        bends: Option<&Bound<'_, PyAny>>,
        rotations: Option<&Bound<'_, PyAny>>,
        radius: Option<&Bound<'_, PyAny>>,
        making: Option<Ways>,
    ) -> PyResult<Self> {
        let (straights, bends) = parts((straights, "straights"), bends, rotations, radius, making)?;
        error::call(|| linewright::Path::restored(&straights, &bends)).map(Path)
    }

    /// A path through corner points, each point three lengths, each corner rounded with the radius or its own.
    ///
    /// Points that coincide are merged; a point on a straight is no corner. `making` counts the bends that remain.
    ///
    /// Raises `InputError` (PATH_DEGENERATE, COUNT_MISMATCH, OUT_OF_RANGE and the codes of `read_length`),
    /// `QuantityError` for a bare number.
    ///
    /// >>> import linewright as lw
    /// >>> corner = [["0 mm", "0 mm", "0 mm"], ["5.25 in", "0 in", "0 in"], ["5.25 in", "4 in", "0 in"]]
    /// >>> path = lw.Path.from_vertices(corner, radius="14.3 mm")
    /// >>> path.angles, str(path.developed_length)
    /// ([deg(90.0)], '228.81 mm')
    #[classmethod]
    #[pyo3(signature = (points, *, radius=None, making=None))]
    fn from_vertices(
        _class: &Bound<'_, PyType>,
        points: &Bound<'_, PyAny>,
        radius: Option<&Bound<'_, PyAny>>,
        making: Option<Ways>,
    ) -> PyResult<Self> {
        let points = quantity::list(Some(points), "points", |point, field| {
            let coordinates = lengths(Some(point), field)?;
            linewright::Point::try_from(coordinates)
                .map_err(|_| quantity::wrong_kind(point, field, "three lengths: x, y, z"))
        })?;
        let radii = length_or_lengths(radius, "radius")?;
        error::call(|| {
            let path = linewright::Path::from_vertices(&points, &radii)?;
            linewright::Path::restored(path.straights(), &made(path.bends().to_vec(), making)?)
        })
        .map(Path)
    }

    /// The straights, tangent to tangent, A to B.
    #[getter]
    fn straights(&self) -> Vec<Length> {
        all(self.0.straights().iter().copied())
    }

    /// The legs, corner to corner, A to B.
    ///
    /// Raises `InputError` (NO_CORNER) for a bend of 180 degrees or more.
    #[getter]
    fn legs(&self) -> PyResult<Vec<Length>> {
        error::call(|| self.0.legs()).map(all)
    }

    /// The bend angles, A to B.
    #[getter]
    fn angles(&self) -> Vec<Angle> {
        self.0.bends().iter().map(|bend| Angle(bend.angle())).collect()
    }

    /// The rotations of the bends but the first, A to B, each above -180 and up to 180 degrees.
    #[getter]
    fn rotations(&self) -> Vec<Angle> {
        self.0.bends().iter().skip(1).map(|bend| Angle(bend.rotation())).collect()
    }

    /// The centerline radii as formed, A to B.
    #[getter]
    fn radii(&self) -> Vec<Length> {
        all(self.0.bends().iter().map(Bend::radius))
    }

    /// How each bend is made: "former", "hand" or "mandrel". Only a bend made on the former takes its setting and its
    /// grip from the bench.
    #[getter]
    fn making(&self) -> Vec<&'static str> {
        self.0.bends().iter().map(|bend| bend.making().name()).collect()
    }

    /// The place at a station: a distance along the center line from end A. In the path's own pose.
    ///
    /// Raises `InputError` (OUT_OF_RANGE beyond either end, and the codes of `read_length`), `QuantityError`.
    ///
    /// >>> import linewright as lw
    /// >>> path = lw.Path.from_straights(["60 mm", "90 mm"], bends=["45 deg"], radius="14.3 mm")
    /// >>> path.place_at("30 mm").direction
    /// (1.0, 0.0, 0.0)
    #[pyo3(signature = (station, /))]
    fn place_at(&self, station: &Bound<'_, PyAny>) -> PyResult<Py<PyAny>> {
        let at = quantity::length(station, "station")?;
        let found = error::call(|| self.0.place_at(at))?;
        place(station.py(), &found)
    }

    /// The place at end B, in the path's own pose.
    #[getter]
    fn end_place(&self, py: Python<'_>) -> PyResult<Py<PyAny>> {
        let found = error::compute(|| self.0.end_place())?;
        place(py, &found)
    }

    /// The box around tube of diameter `od` along the path, its sides along the axes of the path's own pose.
    ///
    /// >>> import linewright as lw
    /// >>> path = lw.Path.from_straights(["60 mm", "90 mm"], bends=["90 deg"], radius="20 mm")
    /// >>> [str(side) for side in path.extent("5 mm").size]
    /// ['85 mm', '115 mm', '5 mm']
    #[pyo3(signature = (od, /))]
    fn extent<'py>(&self, od: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
        let diameter = quantity::length(od, "od")?;
        let found = error::call(|| Ok(self.0.extent(bounds::OD.length(diameter)?)))?;
        results::made(od.py(), "Extent", (point(found.low), point(found.high), point(found.size())))
    }

    /// Compares this line, as it shall be, with one that was measured: every straight, bend and turn that differs by
    /// more than the tolerances is named, and a mirror part is named as that. Empty where they agree.
    ///
    /// >>> import linewright as lw
    /// >>> path = lw.Path.from_straights(["60 mm"] * 3, bends=["45 deg"] * 2, rotations=["90 deg"], radius="14.3 mm")
    /// >>> [found.code for found in path.compare(path.mirrored(), length="2 mm", angle="2 deg")]
    /// ['HAND_MISMATCH']
    #[pyo3(signature = (measured, *, length, angle))]
    fn compare(
        &self,
        measured: &Bound<'_, Path>,
        length: &Bound<'_, PyAny>,
        angle: &Bound<'_, PyAny>,
    ) -> PyResult<Vec<crate::problem::Problem>> {
        let (length, angle) = (quantity::length(length, "length")?, quantity::angle(angle, "angle")?);
        let found = error::call(|| {
            let (length, angle) = (bounds::CLEARANCE.length(length)?, bounds::ANGLE.angle(angle)?);
            Ok(check::compare(&self.0, &measured.get().0, length, angle))
        })?;
        Ok(problems(&found))
    }

    /// Length along the center line: straights and arcs.
    #[getter]
    fn developed_length(&self) -> Length {
        Length(self.0.developed_length())
    }

    /// The far end in the path's own pose: x, y, z.
    #[getter]
    fn end_point(&self) -> PyResult<Point> {
        error::compute(|| point(self.0.end_point()))
    }

    /// The corner points in the path's own pose: start, each corner, end.
    ///
    /// Raises `InputError` (NO_CORNER) for a bend of 180 degrees or more.
    #[getter]
    fn vertices(&self) -> PyResult<Vec<Point>> {
        error::call(|| self.0.vertices()).map(|points| points.into_iter().map(point).collect())
    }

    /// The same line from B to A. Rotations keep their signs.
    ///
    /// >>> import linewright as lw
    /// >>> path = lw.Path.from_straights(["60 mm", "90 mm"], bends=["45 deg"], radius="14.3 mm")
    /// >>> path.reversed().straights
    /// [mm(90.0), mm(60.0)]
    fn reversed(&self) -> PyResult<Self> {
        error::compute(|| self.0.reversed()).map(Path)
    }

    /// The other hand: every rotation negated.
    ///
    /// >>> import linewright as lw
    /// >>> path = lw.Path.from_straights(["60 mm"] * 3, bends=["45 deg"] * 2, rotations=["90 deg"], radius="14.3 mm")
    /// >>> path.mirrored().rotations
    /// [deg(-90.0)]
    fn mirrored(&self) -> PyResult<Self> {
        error::compute(|| self.0.mirrored()).map(Path)
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
