//! The radius of a former, its gain and its stretch from test pieces of known length.

use super::Former;
use crate::error;
use crate::quantity::{self, wrong_kind};
use crate::record::{self, Call, Record, Reduced};
use crate::results::made;
use crate::units::{Angle, Length};
use linewright::bench;
use pyo3::prelude::*;
use pyo3::types::PyType;

/// A piece of tube, measured straight, then bent and measured again: its length before bending, its legs along the
/// centerline from end to corner, corner to corner, and corner to end, and the angles that remained, in order. `reading` is
/// the step that the legs were read to; left out, their numbers show it.
///
/// Raises `InputError` (COUNT_MISMATCH where there is not one leg more than angles, OUT_OF_RANGE, also for a piece that is too
/// short for its own bends even if its legs were read 3 mm too long), `QuantityError`.
///
/// >>> import linewright as lw
/// >>> print(lw.TestPiece("200 mm", legs=["112.1 mm", "94.2 mm"], angles=["90 deg"]).gain)
/// 6.3 mm
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct TestPiece(bench::TestPiece);

impl Record for TestPiece {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        let call = Call::class::<Self>(py).arg(self.length())?.named("legs", self.legs())?;
        call.named("angles", self.angles())?.given("reading", self.reading())
    }
}

#[pymethods]
impl TestPiece {
    // pytest takes every class of this name for tests.
    #[classattr]
    #[pyo3(name = "__test__")]
    const IS_TEST: bool = false;

    #[new]
    #[pyo3(signature = (length, /, *, legs, angles, reading=None))]
    fn new(
        length: &Bound<'_, PyAny>,
        legs: &Bound<'_, PyAny>,
        angles: &Bound<'_, PyAny>,
        reading: Option<&Bound<'_, PyAny>>,
    ) -> PyResult<Self> {
        let length = quantity::length(length, "length")?;
        let legs = quantity::lengths(Some(legs), "legs")?;
        let angles = quantity::angles(Some(angles), "angles")?;
        let reading = quantity::length_if(reading, "reading")?;
        error::call(|| as_read(bench::TestPiece::new(length, &legs, &angles)?, reading)).map(TestPiece)
    }

    /// The same with legs as a square or a tape laid over the outer edges of the tube measures them, to the outer corners.
    ///
    /// Raises as the class, OUT_OF_RANGE also for a leg shorter than what its corners take.
    ///
    /// >>> import linewright as lw
    /// >>> legs = ["114.475 mm", "96.575 mm"]
    /// >>> print(lw.TestPiece.from_outer_legs("200 mm", outer_legs=legs, angles=["90 deg"], od="4.75 mm").gain)
    /// 6.3 mm
    #[classmethod]
    #[pyo3(signature = (length, /, *, outer_legs, angles, od, reading=None))]
    fn from_outer_legs(
        _class: &Bound<'_, PyType>,
        length: &Bound<'_, PyAny>,
        outer_legs: &Bound<'_, PyAny>,
        angles: &Bound<'_, PyAny>,
        od: &Bound<'_, PyAny>,
        reading: Option<&Bound<'_, PyAny>>,
    ) -> PyResult<Self> {
        let length = quantity::length(length, "length")?;
        let legs = quantity::lengths(Some(outer_legs), "outer_legs")?;
        let angles = quantity::angles(Some(angles), "angles")?;
        let od = quantity::length(od, "od")?;
        let reading = quantity::length_if(reading, "reading")?;
        error::call(|| as_read(bench::TestPiece::from_outer_legs(length, &legs, &angles, od)?, reading))
            .map(TestPiece)
    }

    /// Length before bending.
    #[getter]
    fn length(&self) -> Length {
        Length(self.0.length())
    }

    /// Legs along the centerline.
    #[getter]
    fn legs(&self) -> Vec<Length> {
        self.0.legs().iter().copied().map(Length).collect()
    }

    /// Angles that remained.
    #[getter]
    fn angles(&self) -> Vec<Angle> {
        self.0.angles().iter().copied().map(Angle).collect()
    }

    /// The step that its legs were read to, as given or as their numbers show: the coarsest of 1/16 in, 1 mm, 1/32 in, 0.5 mm,
    /// 1/64 in, 0.25, 0.2, 0.1, 0.05, 0.02 and 0.01 mm that all of them are multiples of; of outer legs as they were read. None
    /// for finer ones.
    ///
    /// >>> import linewright as lw
    /// >>> print(lw.TestPiece("200 mm", legs=["112 mm", "94.5 mm"], angles=["90 deg"]).reading)
    /// 0.5 mm
    #[getter]
    fn reading(&self) -> Option<Length> {
        self.0.reading().map(Length)
    }

    /// The gain of its bends together as measured: how much longer the legs are than the piece was.
    #[getter]
    fn gain(&self) -> Length {
        Length(self.0.gain())
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

/// A piece with the step given, if one is.
fn as_read(
    piece: bench::TestPiece,
    reading: Option<linewright::units::Length>,
) -> Result<bench::TestPiece, linewright::Error> {
    if reading.is_some() { piece.with_reading(reading) } else { Ok(piece) }
}

/// The radius of a former as its test pieces tell it, with its uncertainty; at least one piece, all of one tube on one
/// former. Every piece's gain is taken to be off by a normal error of the same unknown size. Pieces bent to the same angles,
/// within 2 degrees, can all be rounded to the same side, and so can lengths of pieces that were cut alike: intervals
/// reach further by what that can make of them.
///
/// Raises `InputError` (TRIALS_UNUSABLE for no piece, for legs that give no credible radius, and for a piece more than 3 mm
/// off what all say, or that much too short for its own bends), `QuantityError` for what is no piece.
///
/// >>> import linewright as lw
/// >>> rows = [("112.1 mm", "94.2 mm", "90 deg"), ("102 mm", "98.9 mm", "45 deg"), ("121.4 mm", "97.6 mm", "120 deg")]
/// >>> fit = lw.PieceFit([lw.TestPiece("200 mm", legs=[a, b], angles=[angle]) for a, b, angle in rows])
/// >>> print(fit.radius, fit.radius_error)
/// 13.95 mm 0.22 mm
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct PieceFit {
    fit: bench::PieceFit,
    pieces: Vec<TestPiece>,
}

impl Record for PieceFit {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        Call::class::<Self>(py).arg(self.pieces.clone())
    }
}

#[pymethods]
impl PieceFit {
    #[new]
    #[pyo3(signature = (pieces, /))]
    fn new(pieces: &Bound<'_, PyAny>) -> PyResult<Self> {
        let pieces =
            quantity::list(Some(pieces), "pieces", |piece, field| match piece.cast::<TestPiece>() {
                Ok(piece) => Ok(piece.get().clone()),
                Err(_) => Err(wrong_kind(piece, field, "a TestPiece")),
            })?;
        let list: Vec<bench::TestPiece> = pieces.iter().map(|piece| piece.0.clone()).collect();
        let fit = error::call(|| bench::PieceFit::new(&list))?;
        Ok(PieceFit { fit, pieces })
    }

    /// The radius as formed that makes lengths come out.
    #[getter]
    fn radius(&self) -> Length {
        Length(self.fit.radius())
    }

    /// Its standard error; None for one piece.
    #[getter]
    fn radius_error(&self) -> Option<Length> {
        self.fit.radius_error().map(Length)
    }

    /// Scatter of one piece's gain, one standard deviation, and at least what the rounding of lengths, legs and angles makes; None for
    /// one piece.
    #[getter]
    fn scatter(&self) -> Option<Length> {
        self.fit.scatter().map(Length)
    }

    /// Interval of the radius at a chance such as 0.95, cut at 0: no radius is below nothing. None for one piece.
    ///
    /// Raises `InputError` (OUT_OF_RANGE).
    ///
    /// >>> import linewright as lw
    /// >>> piece = lw.TestPiece("200 mm", legs=["112.1 mm", "94.2 mm"], angles=["90 deg"])
    /// >>> lw.PieceFit([piece]).radius_interval(chance=0.95) is None
    /// True
    #[pyo3(signature = (*, chance))]
    fn radius_interval(&self, chance: &Bound<'_, PyAny>) -> PyResult<Option<(Length, Length)>> {
        let chance = quantity::number(chance, "chance")?;
        let found = error::call(|| self.fit.radius_interval(chance))?;
        Ok(found.map(|[low, high]| (Length(low), Length(high))))
    }

    /// The gain of a bend on this former.
    ///
    /// Raises `InputError` (OUT_OF_RANGE), `QuantityError` for a bare angle.
    ///
    /// >>> import linewright as lw
    /// >>> piece = lw.TestPiece("200 mm", legs=["112.1 mm", "94.2 mm"], angles=["90 deg"])
    /// >>> print(lw.PieceFit([piece]).gain("90 deg"))
    /// 6.3 mm
    #[pyo3(signature = (angle, /))]
    fn gain(&self, angle: &Bound<'_, PyAny>) -> PyResult<Length> {
        let angle = quantity::angle(angle, "angle")?;
        error::call(|| self.fit.gain(angle)).map(Length)
    }

    /// Interval of that gain at a chance; None for one piece. One more piece scatters in addition.
    ///
    /// Raises `InputError` (OUT_OF_RANGE), `QuantityError` for a bare angle.
    ///
    /// >>> import linewright as lw
    /// >>> piece = lw.TestPiece("200 mm", legs=["112.1 mm", "94.2 mm"], angles=["90 deg"])
    /// >>> lw.PieceFit([piece]).gain_interval("90 deg", chance=0.95) is None
    /// True
    #[pyo3(signature = (angle, /, *, chance))]
    fn gain_interval(
        &self,
        angle: &Bound<'_, PyAny>,
        chance: &Bound<'_, PyAny>,
    ) -> PyResult<Option<(Length, Length)>> {
        let (angle, chance) = (quantity::angle(angle, "angle")?, quantity::number(chance, "chance")?);
        let found = error::call(|| self.fit.gain_interval(angle, chance))?;
        Ok(found.map(|[low, high]| (Length(low), Length(high))))
    }

    /// Radius of the arcs and stretch as two figures, with the interval of the stretch at a chance; None where the angles of
    /// the pieces are too much alike to tell them apart.
    ///
    /// Raises `InputError` (OUT_OF_RANGE).
    ///
    /// >>> import linewright as lw
    /// >>> piece = lw.TestPiece("200 mm", legs=["112.1 mm", "94.2 mm"], angles=["90 deg"])
    /// >>> lw.PieceFit([piece]).stretch(chance=0.95) is None
    /// True
    #[pyo3(signature = (*, chance))]
    fn stretch<'py>(&self, chance: &Bound<'py, PyAny>) -> PyResult<Option<Bound<'py, PyAny>>> {
        let (py, chance) = (chance.py(), quantity::number(chance, "chance")?);
        let Some(stretch) = self.fit.stretch() else { return Ok(None) };
        let interval = error::call(|| stretch.share_interval(chance))?;
        let interval = interval.map(|[low, high]| (low.value, high.value));
        let error = stretch.radius_error().map(Length);
        made(py, "Stretch", (Length(stretch.radius()), error, stretch.share().value, interval)).map(Some)
    }

    /// The former, for a bench.
    ///
    /// Raises `InputError` (OUT_OF_RANGE), `QuantityError` for a bare grip.
    ///
    /// >>> import linewright as lw
    /// >>> piece = lw.TestPiece("200 mm", legs=["112.1 mm", "94.2 mm"], angles=["90 deg"])
    /// >>> print(lw.PieceFit([piece]).former(grip="20 mm").as_formed)
    /// 14.68 mm
    #[pyo3(signature = (*, grip))]
    fn former(&self, grip: &Bound<'_, PyAny>) -> PyResult<Former> {
        let grip = quantity::length(grip, "grip")?;
        error::call(|| self.fit.former(grip)).map(Former)
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
