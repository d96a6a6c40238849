//! Springback from mechanics: the bending moment of a tube, and what remains when it is let go.

use super::Springback;
use super::fit::Prior;
use crate::error;
use crate::material::Properties;
use crate::quantity::{self, wrong_kind};
use crate::record::{self, Call, Record, Reduced};
use crate::units::{Angle, Length, Pressure};
use linewright::springback::{self, Hardening, MaterialScatter};
use linewright::units::{self, mm, ratio, to_n_mm};
use linewright::{Code, Error, Part, Problem, Value};
use pyo3::prelude::*;
use pyo3::types::PyType;

/// A tube of known material data, to be bent: an estimate of its springback for the time before there are trial bends. It
/// leaves out that the section flattens, that the modulus falls with strain, creep, and friction in the tool, and has not been
/// compared with bends: no validation by experiment is claimed. Its wall either yields at `yield_strength`, with a slope beyond it where
/// `tangent_modulus` is given, or hardens by a power law of `strength_coefficient` and `hardening_exponent`.
///
/// Raises `InputError` (FIELD_MISSING or FIELDS_CONFLICT where these do not make one law, OUT_OF_RANGE), `QuantityError`
/// for a bare length or pressure.
///
/// >>> import linewright as lw
/// >>> tube = lw.Mechanics("3/16 in", wall="0.028 in", modulus="207 GPa", yield_strength="250 MPa")
/// >>> bent = tube.bend("14.2875 mm")
/// >>> print(bent.formed_radius, bent.springback().setting("90 deg"))
/// 14.44 mm 90.97 deg
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct Mechanics {
    tube: springback::Mechanics,
    od: Length,
    wall: Length,
    modulus: Pressure,
    hardening: Hardening,
}

impl Record for Mechanics {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        let call =
            Call::class::<Self>(py).arg(self.od)?.named("wall", self.wall)?.named("modulus", self.modulus)?;
        match self.hardening {
            Hardening::PerfectlyPlastic { yield_strength } => {
                call.named("yield_strength", Pressure(yield_strength))
            }
            Hardening::Bilinear { yield_strength, tangent_modulus } => call
                .named("yield_strength", Pressure(yield_strength))?
                .named("tangent_modulus", Pressure(tangent_modulus)),
            Hardening::PowerLaw { strength_coefficient, hardening_exponent } => call
                .named("strength_coefficient", Pressure(strength_coefficient))?
                .named("hardening_exponent", hardening_exponent.value),
        }
    }
}

impl Mechanics {
    /// As the core has it.
    pub(crate) fn tube(&self) -> &springback::Mechanics {
        &self.tube
    }
}

/// The law that the four arguments make. The core takes it as one; here it is in parts.
fn law(
    yields: Option<units::Pressure>,
    tangent: Option<units::Pressure>,
    coefficient: Option<units::Pressure>,
    exponent: Option<f64>,
) -> Result<Hardening, Error> {
    match (yields, tangent, coefficient, exponent) {
        (Some(yield_strength), None, None, None) => Ok(Hardening::PerfectlyPlastic { yield_strength }),
        (Some(yield_strength), Some(tangent_modulus), None, None) => {
            Ok(Hardening::Bilinear { yield_strength, tangent_modulus })
        }
        (None, None, Some(strength_coefficient), Some(exponent)) => {
            Ok(Hardening::PowerLaw { strength_coefficient, hardening_exponent: ratio(exponent) })
        }
        (None, None, Some(_), None) => {
            Err(quantity::half("hardening_exponent", "the exponent of the power law"))
        }
        (None, None, None, Some(_)) => {
            Err(quantity::half("strength_coefficient", "the coefficient of the power law"))
        }
        (None, _, None, None) => {
            Err(quantity::half("yield_strength", "a yield strength or a power law of hardening"))
        }
        _ => Err(Problem::new(Code::FieldsConflict, Part::Field("yield_strength".to_owned()))
            .need(Value::text("a yield strength, with or without a tangent modulus, or a power law"))
            .into()),
    }
}

/// An arm of the bending tool that may be left out.
fn arm(given: Option<&Bound<'_, PyAny>>) -> PyResult<units::Length> {
    Ok(quantity::length_if(given, "arm")?.unwrap_or(mm(0.0)))
}

fn scatter(strength: &Bound<'_, PyAny>, modulus: &Bound<'_, PyAny>) -> PyResult<MaterialScatter> {
    Ok(MaterialScatter {
        strength: ratio(quantity::number(strength, "strength_scatter")?),
        modulus: ratio(quantity::number(modulus, "modulus_scatter")?),
    })
}

#[pymethods]
impl Mechanics {
    #[new]
    #[pyo3(signature = (
        od, /, *, wall, modulus, yield_strength=None, tangent_modulus=None, strength_coefficient=None,
        hardening_exponent=None
    ))]
    fn new(
        od: &Bound<'_, PyAny>,
        wall: &Bound<'_, PyAny>,
        modulus: &Bound<'_, PyAny>,
        yield_strength: Option<&Bound<'_, PyAny>>,
        tangent_modulus: Option<&Bound<'_, PyAny>>,
        strength_coefficient: Option<&Bound<'_, PyAny>>,
        hardening_exponent: Option<&Bound<'_, PyAny>>,
    ) -> PyResult<Self> {
        let (od, wall) = (quantity::length(od, "od")?, quantity::length(wall, "wall")?);
        let modulus = quantity::pressure(modulus, "modulus")?;
        let strength = |given: Option<&Bound<'_, PyAny>>, field| {
            given.map(|given| quantity::pressure(given, field)).transpose()
        };
        let yields = strength(yield_strength, "yield_strength")?;
        let tangent = strength(tangent_modulus, "tangent_modulus")?;
        let coefficient = strength(strength_coefficient, "strength_coefficient")?;
        let exponent =
            hardening_exponent.map(|given| quantity::number(given, "hardening_exponent")).transpose()?;
        error::call(|| {
            let hardening = law(yields, tangent, coefficient, exponent)?;
            let tube = springback::Mechanics::new(od, wall, modulus, hardening)?;
            let (od, wall, modulus) = (Length(od), Length(wall), Pressure(modulus));
            Ok(Mechanics { tube, od, wall, modulus, hardening })
        })
    }

    /// A tube by its size and what is known of its metal. Of the laws the first is taken that is known: the power law of
    /// hardening; else a straight line of it, where there are a yield strength and a tangent modulus; else no hardening beyond
    /// the yield strength.
    ///
    /// Raises `InputError` (NOT_KNOWN naming what is missing, the yield strength also where there is a tangent modulus,
    /// which begins there; OUT_OF_RANGE), `QuantityError`.
    ///
    /// >>> import linewright as lw
    /// >>> metal = lw.material_properties("low-carbon steel", condition="annealed")
    /// >>> print(lw.Mechanics.of_metal("3/16 in", wall="0.028 in", metal=metal).bend("14.2875 mm").formed_radius)
    /// 14.52 mm
    /// >>> own = lw.Properties("our coil", modulus=("207 GPa", "pull 3"), yield_strength=("250 MPa", "pull 3"),
    /// ...                     tangent_modulus=("2.07 GPa", "pull 3"))
    /// >>> print(lw.Mechanics.of_metal("3/16 in", wall="0.028 in", metal=own).bend("14.2875 mm").formed_radius)
    /// 14.59 mm
    #[classmethod]
    #[pyo3(signature = (od, /, *, wall, metal))]
    fn of_metal(
        _class: &Bound<'_, PyType>,
        od: &Bound<'_, PyAny>,
        wall: &Bound<'_, PyAny>,
        metal: &Bound<'_, PyAny>,
    ) -> PyResult<Self> {
        let (od, wall) = (quantity::length(od, "od")?, quantity::length(wall, "wall")?);
        let Ok(metal) = metal.cast::<Properties>() else {
            return Err(wrong_kind(metal, "metal", "Properties"));
        };
        error::call(|| {
            let (modulus, hardening) = springback::Mechanics::data_of_metal(&metal.get().0)?;
            let tube = springback::Mechanics::new(od, wall, modulus, hardening)?;
            let (od, wall, modulus) = (Length(od), Length(wall), Pressure(modulus));
            Ok(Mechanics { tube, od, wall, modulus, hardening })
        })
    }

    /// The tube held at a centerline radius, as by the groove of a former.
    ///
    /// Raises `InputError` (OUT_OF_RANGE, also for a radius of no more than half the tube), `QuantityError`.
    ///
    /// >>> import linewright as lw
    /// >>> tube = lw.Mechanics("6 mm", wall="1 mm", modulus="205 GPa", yield_strength="240 MPa")
    /// >>> print(tube.bend("18 mm").formed_radius)
    /// 18.19 mm
    #[pyo3(signature = (radius, /))]
    fn bend(&self, radius: &Bound<'_, PyAny>) -> PyResult<HeldBend> {
        let radius = quantity::length(radius, "radius")?;
        let bend = error::call(|| self.tube.bend(radius))?;
        Ok(HeldBend { bend, of: self.clone() })
    }

    /// Least and most setting for a wanted angle while the strength and the modulus are off by shares of their value. What the
    /// model leaves out is not in it.
    ///
    /// Raises `InputError` (OUT_OF_RANGE), `QuantityError`.
    ///
    /// >>> import linewright as lw
    /// >>> tube = lw.Mechanics("6 mm", wall="1 mm", modulus="205 GPa", yield_strength="240 MPa")
    /// >>> print(*tube.setting_range("90 deg", radius="18 mm", strength_scatter=0.1, modulus_scatter=0.03))
    /// 90.83 deg 91.08 deg
    #[pyo3(signature = (wanted, /, *, radius, strength_scatter, modulus_scatter, arm=None))]
    fn setting_range(
        &self,
        wanted: &Bound<'_, PyAny>,
        radius: &Bound<'_, PyAny>,
        strength_scatter: &Bound<'_, PyAny>,
        modulus_scatter: &Bound<'_, PyAny>,
        arm: Option<&Bound<'_, PyAny>>,
    ) -> PyResult<(Angle, Angle)> {
        let (wanted, radius) = (quantity::angle(wanted, "wanted")?, quantity::length(radius, "radius")?);
        let (scatter, arm) = (scatter(strength_scatter, modulus_scatter)?, self::arm(arm)?);
        let [least, most] = error::call(|| self.tube.setting_range(radius, arm, wanted, scatter))?;
        Ok((Angle(least), Angle(most)))
    }

    /// What mechanics believes before any trial, for `TrialFit`: the estimate, spread as strength and modulus scatter (one
    /// standard deviation of each, as shares), and a scatter of one bend that counts like `worth` bends.
    ///
    /// Raises `InputError` (OUT_OF_RANGE), `QuantityError`.
    ///
    /// >>> import linewright as lw
    /// >>> tube = lw.Mechanics("6 mm", wall="1 mm", modulus="205 GPa", yield_strength="240 MPa")
    /// >>> off = {"strength_scatter": 0.1, "modulus_scatter": 0.03}
    /// >>> tube.prior(radius="18 mm", **off, bend_scatter="0.3 deg", worth=2).worth
    /// 2
    #[pyo3(signature = (*, radius, strength_scatter, modulus_scatter, bend_scatter, worth, arm=None))]
    fn prior(
        &self,
        radius: &Bound<'_, PyAny>,
        strength_scatter: &Bound<'_, PyAny>,
        modulus_scatter: &Bound<'_, PyAny>,
        bend_scatter: &Bound<'_, PyAny>,
        worth: &Bound<'_, PyAny>,
        arm: Option<&Bound<'_, PyAny>>,
    ) -> PyResult<Prior> {
        let (radius, arm) = (quantity::length(radius, "radius")?, self::arm(arm)?);
        let scatter = scatter(strength_scatter, modulus_scatter)?;
        let of_bend = quantity::angle(bend_scatter, "bend_scatter")?;
        let worth = quantity::count(worth, "worth")?;
        error::call(|| self.tube.prior(radius, arm, scatter, of_bend, worth)).map(Prior)
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

/// A tube held at a radius, and what it would do when let go; comes from `Mechanics.bend`. An estimate.
///
/// >>> import linewright as lw
/// >>> bent = lw.Mechanics("6 mm", wall="1 mm", modulus="205 GPa", yield_strength="240 MPa").bend("18 mm")
/// >>> bent.radius < bent.formed_radius
/// True
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct HeldBend {
    bend: springback::HeldBend,
    of: Mechanics,
}

impl Record for HeldBend {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        let tube = self.of.clone().into_pyobject(py)?.into_any();
        Call::method(&tube, "bend")?.arg(self.radius())
    }
}

#[pymethods]
impl HeldBend {
    /// The centerline radius it is held at.
    #[getter]
    fn radius(&self) -> Length {
        Length(self.bend.radius())
    }

    /// The bending moment in newton millimeters.
    #[getter]
    fn moment_nmm(&self) -> f64 {
        to_n_mm(self.bend.moment())
    }

    /// Share of the angle that springs back; 1 where the tube never leaves its elastic range.
    #[getter]
    fn share(&self) -> f64 {
        self.bend.share().value
    }

    /// Centerline radius as formed, after letting go; None where nothing of the bend remains.
    #[getter]
    fn formed_radius(&self) -> Option<Length> {
        self.bend.formed_radius().map(Length)
    }

    /// The springback as a line over the set angle, for a tool whose moment falls to zero along an arm; without one the
    /// constant part is left out.
    ///
    /// Raises `InputError` (OUT_OF_RANGE, also where so much springs back that no setting is credible), `QuantityError`.
    ///
    /// >>> import linewright as lw
    /// >>> tube = lw.Mechanics("6 mm", wall="1 mm", modulus="205 GPa", yield_strength="240 MPa")
    /// >>> print(tube.bend("18 mm").springback(arm="50 mm").setting("90 deg"))
    /// 91.79 deg
    #[pyo3(signature = (*, arm=None))]
    fn springback(&self, arm: Option<&Bound<'_, PyAny>>) -> PyResult<Springback> {
        let arm = self::arm(arm)?;
        error::call(|| self.bend.springback(arm)).map(Springback)
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
