//! The wall of a bend, its flattened section, and what public texts ask of both.

use crate::error;
use crate::quantity;
use crate::record::{self, Call, Record, Reduced};
use crate::results::made;
use crate::tube::Tube;
use crate::units::Length;
use linewright::bend::wall::{self, Kinematics, Place, Thinning};
use linewright::units::{ratio, to_mm2};
use pyo3::prelude::*;

/// The wall of a tube bent to a centerline radius: thinner outside, thicker inside.
///
/// How far it thins depends on how freely it may shrink along the hoop. Two extremes bound it: "plane strain" (the hoop keeps
/// its length) and "uniaxial" (it shrinks as a bar in tension does). No test on such tube was seen, and a former that drags
/// on the tube thins it further than either. `neutral_shift` moves the neutral axis from the centerline toward the inside of
/// the bend, or outward if it is negative.
///
/// Where it ends (limits of ours): the outside is stretched to at most twice its length and the inside pressed to half of it,
/// which is a radius of one diameter where nothing is shifted, and the thickened inside leaves a bore.
///
/// Raises `InputError` (OUT_OF_RANGE, also beyond those limits and for a shift that leaves the tube, and the codes of
/// `read_length`), `QuantityError` for a bare number.
///
/// >>> import linewright as lw
/// >>> tube = lw.Tube("3/16 in", wall="0.028 in", material="low-carbon steel")
/// >>> bent = lw.BentWall(tube, radius="14.3 mm")
/// >>> print(bent.extrados.least, "to", bent.extrados.most)
/// 0.61 mm to 0.66 mm
/// >>> print(bent.wall("intrados", "uniaxial"))
/// 0.78 mm
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct BentWall {
    wall: wall::BentWall,
    tube: Tube,
}

impl Record for BentWall {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        Call::class::<Self>(py)
            .arg(self.tube())?
            .named("radius", self.radius())?
            .named("neutral_shift", self.neutral_shift())
    }
}

impl BentWall {
    fn bounds<'py>(&self, py: Python<'py>, place: Place) -> PyResult<Bound<'py, PyAny>> {
        let range = self.wall.range(place);
        made(py, "LengthRange", (Length(range.least), Length(range.most)))
    }
}

#[pymethods]
impl BentWall {
    #[new]
    #[pyo3(signature = (tube, *, radius, neutral_shift=None))]
    fn new(
        tube: &Tube,
        radius: &Bound<'_, PyAny>,
        neutral_shift: Option<&Bound<'_, PyAny>>,
    ) -> PyResult<Self> {
        let radius = quantity::length(radius, "radius")?;
        let shift = quantity::length_if(neutral_shift, "neutral_shift")?;
        let wall = error::call(|| {
            let bent = wall::BentWall::new(&tube.0, radius)?;
            shift.map_or(Ok(bent), |shift| bent.with_neutral_shift(shift))
        })?;
        Ok(BentWall { wall, tube: tube.clone() })
    }

    /// The same with the neutral axis where a thin, perfectly plastic tube has it without any pull along it.
    ///
    /// >>> import linewright as lw
    /// >>> tube = lw.Tube("6 mm", wall="1 mm", material="copper-nickel")
    /// >>> print(lw.BentWall(tube, radius="25 mm").with_plastic_neutral_axis().neutral_shift)
    /// 0.25 mm
    fn with_plastic_neutral_axis(&self) -> Self {
        BentWall { wall: self.wall.with_plastic_neutral_axis(), tube: self.tube.clone() }
    }

    /// The tube.
    #[getter]
    fn tube(&self) -> Tube {
        self.tube.clone()
    }

    /// Centerline radius.
    #[getter]
    fn radius(&self) -> Length {
        Length(self.wall.radius())
    }

    /// By how much the neutral axis lies inside the centerline.
    #[getter]
    fn neutral_shift(&self) -> Length {
        Length(self.wall.neutral_shift())
    }

    /// Wall at a place ("extrados", "intrados", "side") under an assumption ("plane strain", "uniaxial").
    ///
    /// Raises `UnknownNameError`.
    ///
    /// >>> import linewright as lw
    /// >>> tube = lw.Tube("3/16 in", wall="0.028 in", material="low-carbon steel")
    /// >>> print(lw.BentWall(tube, radius="14.3 mm").wall("extrados", "plane strain"))
    /// 0.61 mm
    #[pyo3(signature = (place, thinning, /))]
    fn wall(&self, place: &str, thinning: &str) -> PyResult<Length> {
        error::call(|| Ok(self.wall.wall(Place::from_name(place)?, Thinning::from_name(thinning)?)))
            .map(Length)
    }

    /// Smallest and largest wall at a place ("extrados", "intrados", "side") over both assumptions.
    ///
    /// Raises `UnknownNameError`.
    ///
    /// >>> import linewright as lw
    /// >>> tube = lw.Tube("3/16 in", wall="0.028 in", material="low-carbon steel")
    /// >>> bounds = lw.BentWall(tube, radius="14.3 mm").range("intrados")
    /// >>> print(bounds.least, bounds.most)
    /// 0.78 mm 0.85 mm
    #[pyo3(signature = (place, /))]
    fn range<'py>(&self, py: Python<'py>, place: &str) -> PyResult<Bound<'py, PyAny>> {
        self.bounds(py, error::call(|| Place::from_name(place))?)
    }

    /// Smallest and largest wall outside the bend.
    #[getter]
    fn extrados<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        self.bounds(py, Place::Extrados)
    }

    /// Smallest and largest wall inside the bend.
    #[getter]
    fn intrados<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        self.bounds(py, Place::Intrados)
    }

    /// Stretch of the outermost surface, 0.1 for a tenth; to be held against what the metal takes before it breaks.
    #[getter]
    fn outer_stretch(&self) -> f64 {
        self.wall.outer_stretch().value
    }

    /// Whether the inside of the bend would wrinkle or kink if nothing held it, for a metal of a hardening exponent.
    ///
    /// `compression` is held against `critical`, the strain at which a free, thin cylinder begins to wrinkle. That holds for
    /// walls up to a tenth of their radius: for nearly all brake tube `needs_groove` is None, not known. So it is for less than
    /// 1 % of compression beyond `critical`, which may be elastic. That a bend needs a groove is no verdict on one that has a
    /// groove that fits. It has not been compared with bends.
    ///
    /// Raises `InputError` (OUT_OF_RANGE, NOT_A_NUMBER), `QuantityError` for what is no number.
    ///
    /// >>> import linewright as lw
    /// >>> thin = lw.Tube("25 mm", wall="0.5 mm", material="low-carbon steel")
    /// >>> found = lw.BentWall(thin, radius="37.5 mm").free_wrinkling(0.21)
    /// >>> found.needs_groove, round(found.compression, 4), round(found.critical, 4)
    /// (True, 0.3267, 0.0125)
    /// >>> brake = lw.Tube("3/16 in", wall="0.028 in", material="low-carbon steel")
    /// >>> print(lw.BentWall(brake, radius="14.3 mm").free_wrinkling(0.21).needs_groove)
    /// None
    #[pyo3(signature = (hardening_exponent, /))]
    fn free_wrinkling<'py>(&self, hardening_exponent: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
        let exponent = quantity::number(hardening_exponent, "hardening_exponent")?;
        let found = error::call(|| self.wall.free_wrinkling(ratio(exponent)))?;
        let shares = [found.compression(), found.critical(), found.wall_share()].map(|share| share.value);
        let parts = (shares[0], shares[1], shares[2], found.needs_groove(), found.words());
        made(hardening_exponent.py(), "FreeWrinkling", parts)
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

/// A flattened section of a tube. Flattening (Dmin / D) and ovality ((Dmax - Dmin) / Dnom) are different measures of it, and
/// one turns into the other only under an assumption: "perimeter kept" (the sides bulge, as in free bending) or "sides
/// held" (as by the groove of a former). Make one with `from_flattening` or `from_ovality`.
///
/// >>> import linewright as lw
/// >>> tube = lw.Tube("3/16 in", wall="0.028 in", material="low-carbon steel")
/// >>> [round(lw.FlattenedSection.from_flattening(tube, 0.75, kinematics=way).ovality, 3)
/// ...  for way in ("sides held", "perimeter kept")]
/// [0.25, 0.467]
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct FlattenedSection {
    section: wall::FlattenedSection,
    tube: Tube,
    given: Measured,
    kinematics: Kinematics,
}

/// What a section was made of.
#[derive(Clone, Copy, PartialEq)]
enum Measured {
    Flattening(f64),
    Ovality(f64),
}

impl Record for FlattenedSection {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        let (maker, value) = match self.given {
            Measured::Flattening(value) => ("from_flattening", value),
            Measured::Ovality(value) => ("from_ovality", value),
        };
        Call::of(py.get_type::<Self>().getattr(maker)?, format!("FlattenedSection.{maker}"))
            .arg(self.tube.clone())?
            .arg(value)?
            .named("kinematics", self.kinematics())
    }
}

#[pymethods]
impl FlattenedSection {
    /// A section by its flattening: smallest diameter as a share of the tube's, 1 = round.
    ///
    /// Raises `InputError` (OUT_OF_RANGE, also where no bore is left, NOT_A_NUMBER), `UnknownNameError` for the kinematics,
    /// `QuantityError` for what is no number.
    ///
    /// >>> import linewright as lw
    /// >>> tube = lw.Tube("3/16 in", wall="0.028 in", material="low-carbon steel")
    /// >>> round(lw.FlattenedSection.from_flattening(tube, 0.75, kinematics="sides held").bore_loss, 3)
    /// 0.356
    #[staticmethod]
    #[pyo3(signature = (tube, flattening, /, *, kinematics))]
    fn from_flattening(tube: &Tube, flattening: &Bound<'_, PyAny>, kinematics: &str) -> PyResult<Self> {
        let value = quantity::number(flattening, "flattening")?;
        let kinematics = error::call(|| Kinematics::from_name(kinematics))?;
        let section =
            error::call(|| wall::FlattenedSection::from_flattening(&tube.0, ratio(value), kinematics))?;
        Ok(FlattenedSection { section, tube: tube.clone(), given: Measured::Flattening(value), kinematics })
    }

    /// A section by its ovality: largest less smallest diameter, as a share of the tube's nominal one, 0 = round.
    ///
    /// Raises as `from_flattening`.
    ///
    /// >>> import linewright as lw
    /// >>> tube = lw.Tube("3/16 in", wall="0.028 in", material="low-carbon steel")
    /// >>> print(lw.FlattenedSection.from_ovality(tube, 0.08, kinematics="perimeter kept").smallest)
    /// 4.57 mm
    #[staticmethod]
    #[pyo3(signature = (tube, ovality, /, *, kinematics))]
    fn from_ovality(tube: &Tube, ovality: &Bound<'_, PyAny>, kinematics: &str) -> PyResult<Self> {
        let value = quantity::number(ovality, "ovality")?;
        let kinematics = error::call(|| Kinematics::from_name(kinematics))?;
        let section =
            error::call(|| wall::FlattenedSection::from_ovality(&tube.0, ratio(value), kinematics))?;
        Ok(FlattenedSection { section, tube: tube.clone(), given: Measured::Ovality(value), kinematics })
    }

    /// The tube.
    #[getter]
    fn tube(&self) -> Tube {
        self.tube.clone()
    }

    /// How it flattens.
    #[getter]
    fn kinematics(&self) -> &'static str {
        self.kinematics.name()
    }

    /// Largest outside diameter.
    #[getter]
    fn largest(&self) -> Length {
        Length(self.section.largest())
    }

    /// Smallest outside diameter.
    #[getter]
    fn smallest(&self) -> Length {
        Length(self.section.smallest())
    }

    /// Largest less smallest diameter, as `ovality_amplification` takes it.
    ///
    /// >>> import linewright as lw
    /// >>> tube = lw.Tube("4 mm", wall="1 mm", material="low-carbon steel")
    /// >>> print(lw.FlattenedSection.from_flattening(tube, 0.75, kinematics="sides held").out_of_round)
    /// 1 mm
    #[getter]
    fn out_of_round(&self) -> Length {
        Length(self.section.out_of_round())
    }

    /// (Dmax - Dmin) / Dnom.
    #[getter]
    fn ovality(&self) -> f64 {
        self.section.ovality().value
    }

    /// Dmin / D.
    #[getter]
    fn flattening(&self) -> f64 {
        self.section.flattening().value
    }

    /// Bore left, in square millimeters.
    #[getter]
    fn bore_area_mm2(&self) -> f64 {
        to_mm2(self.section.bore_area())
    }

    /// Bore left as a share of the round tube's.
    ///
    /// >>> import linewright as lw
    /// >>> tube = lw.Tube("4 mm", wall="1 mm", material="low-carbon steel")
    /// >>> round(lw.FlattenedSection.from_flattening(tube, 0.75, kinematics="sides held").bore_share, 12)
    /// 0.5
    #[getter]
    fn bore_share(&self) -> f64 {
        self.section.bore_share().value
    }

    /// Bore lost as a share of the round tube's.
    #[getter]
    fn bore_loss(&self) -> f64 {
        self.section.bore_loss().value
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

/// Smallest centerline radii that public texts give for a tube diameter, each with its scope; in no order of merit. They
/// disagree, and none is this library's own advice.
///
/// Raises `InputError` (OUT_OF_RANGE and the codes of `read_length`), `QuantityError` for a bare number.
///
/// >>> import linewright as lw
/// >>> [(str(rule.least), rule.checked) for rule in lw.radius_rules("4.75 mm")]
/// [('25 mm', 'seen'), ('16.67 mm', 'from memory, not checked'), ('11.88 mm', 'seen second-hand')]
#[pyfunction]
#[pyo3(signature = (od, /))]
pub(crate) fn radius_rules<'py>(od: &Bound<'py, PyAny>) -> PyResult<Vec<Bound<'py, PyAny>>> {
    let (py, od) = (od.py(), quantity::length(od, "od")?);
    let row = |row: wall::RadiusRule| {
        let source = (row.source.to_string(), row.source.checked.name());
        made(py, "RadiusRule", (row.scope, Length(row.least), source.0, source.1))
    };
    error::call(|| wall::radius_rules(od))?.into_iter().map(row).collect()
}

/// Limits of flattening (at least), ovality and wrinkles (at most) that public texts give, each with its scope.
///
/// >>> import linewright as lw
/// >>> [row.limit for row in lw.section_limits() if row.measure == "flattening"]
/// [0.75]
#[pyfunction]
pub(crate) fn section_limits(py: Python<'_>) -> PyResult<Vec<Bound<'_, PyAny>>> {
    let row = |row: wall::SectionLimit| {
        let source = (row.source.to_string(), row.source.checked.name());
        made(py, "SectionLimit", (row.measure.name(), row.scope, row.limit.value, source.0, source.1))
    };
    wall::section_limits().into_iter().map(row).collect()
}

/// Wall to have before bending, as a multiple of the wall that is needed, by the radius in diameters; for pipe.
///
/// >>> import linewright as lw
/// >>> [row.multiple for row in lw.wall_reserves() if row.radius_in_diameters == 3]
/// [1.25]
#[pyfunction]
pub(crate) fn wall_reserves(py: Python<'_>) -> PyResult<Vec<Bound<'_, PyAny>>> {
    let row = |row: wall::WallReserve| {
        let source = (row.source.to_string(), row.source.checked.name());
        let (radius, multiple) = (row.radius_in_diameters.value, row.multiple.value);
        made(py, "WallReserve", (radius, multiple, source.0, source.1))
    };
    wall::wall_reserves().into_iter().map(row).collect()
}
