//! How a tube full of fluid gives way: the fluid is squeezed and the wall, an elastic thick cylinder, widens.

use super::Fluid;
use super::linear::Given;
use crate::bounds;
use crate::error::{Error, by_name};
use crate::material::Properties;
use crate::math::sqrt;
use crate::tube::Tube;
use crate::units::{
    Compressibility, Length, Pressure, Ratio, TemperatureCoefficient, TemperatureInterval, Velocity, Volume,
    m_per_s, ml, mpa, per_mpa, to_kelvin, to_mm, to_mpa, to_per_kelvin,
};

/// What holds a tube along its axis.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum AxialEnds {
    /// Closed and free to move: the wall carries the pressure on the closed ends.
    Closed,
    /// No force along the wall, as where both ends slide in seals.
    Open,
    /// Held so that it cannot change its length.
    Fixed,
}

impl AxialEnds {
    /// All conditions.
    pub const ALL: [AxialEnds; 3] = [AxialEnds::Closed, AxialEnds::Open, AxialEnds::Fixed];

    /// The name, the same in every language.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            AxialEnds::Closed => "closed",
            AxialEnds::Open => "open",
            AxialEnds::Fixed => "fixed",
        }
    }

    /// The one of a name; case does not matter.
    ///
    /// # Errors
    /// `UNKNOWN_NAME` with the list of names.
    pub fn from_name(name: &str) -> Result<AxialEnds, Error> {
        by_name("ends", name, &AxialEnds::ALL, AxialEnds::name)
    }
}

/// Elastic modulus and Poisson's ratio of a wall.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WallElasticity {
    modulus_mpa: f64,
    poisson: f64,
}

impl WallElasticity {
    /// From both figures.
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE`.
    pub fn new(modulus: Pressure, poisson: Ratio) -> Result<WallElasticity, Error> {
        Ok(WallElasticity {
            modulus_mpa: to_mpa(bounds::MODULUS.pressure(modulus)?),
            poisson: bounds::POISSON.ratio(poisson)?.value,
        })
    }

    /// From what is known of a metal.
    ///
    /// # Errors
    /// `NOT_KNOWN` where one of the two is missing.
    pub fn of(metal: &Properties) -> Result<WallElasticity, Error> {
        let modulus = metal.needed("modulus", metal.modulus())?;
        WallElasticity::new(modulus, metal.needed("poisson", metal.poisson())?)
    }
}

/// A tube full of fluid.
///
/// ```
/// use linewright::hydraulics::{AxialEnds, FilledTube, Fluid, WallElasticity};
/// use linewright::units::{inch, kelvin, meter, mpa, to_m_per_s, to_ml, to_mpa};
/// use linewright::{Material, Tube};
/// let steel = Material::LowCarbonSteel.properties();
/// let tube = Tube::new(inch(3.0 / 16.0), inch(0.028), Material::LowCarbonSteel)?;
/// let line = FilledTube::new(&tube, WallElasticity::of(&steel)?, AxialEnds::Closed, &Fluid::glycol())?;
/// // Two meters hold 17.5 mL; 10 MPa press 0.09 mL more into them.
/// assert!((to_ml(line.volume_to_raise(meter(2.0), mpa(10.0))?) - 0.094).abs() < 1e-3);
/// assert!((to_m_per_s(line.wave_speed()?) - 1332.0).abs() < 1.0);
/// // Shut off and warmed by 10 degrees.
/// let rise = line.pressure_of_warming(kelvin(10.0), steel.expansion().unwrap().value)?;
/// assert!((to_mpa(rise) - 12.4).abs() < 0.1);
/// # Ok::<(), linewright::Error>(())
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct FilledTube {
    area_mm2: f64,
    wall_per_mpa: f64,
    poisson: f64,
    ends: AxialEnds,
    bulk_mpa: f64,
    fluid: Fluid,
}

/// Share of the bore's volume gained per MPa by a thick cylinder of outside radius `outer` and bore radius `bore`.
fn wall_compliance(outer: f64, bore: f64, modulus: f64, poisson: f64, ends: AxialEnds) -> f64 {
    let (o2, b2) = (outer * outer, bore * bore);
    let metal = (outer - bore) * (outer + bore);
    let hoop = (o2 + b2) / metal;
    let axial = b2 / metal;
    let share = match ends {
        AxialEnds::Closed => 2.0 * hoop + 2.0 * poisson + (1.0 - 4.0 * poisson) * axial,
        AxialEnds::Open => 2.0 * hoop + 2.0 * poisson - 2.0 * poisson * axial,
        AxialEnds::Fixed => 2.0 * hoop + 2.0 * poisson - 4.0 * poisson * poisson * axial,
    };
    share / modulus
}

impl FilledTube {
    /// A tube, the elasticity of its wall, what holds it along its axis, and the fluid in it.
    ///
    /// # Errors
    /// `NOT_KNOWN` for a fluid without a bulk modulus.
    pub fn new(
        tube: &Tube,
        wall: WallElasticity,
        ends: AxialEnds,
        fluid: &Fluid,
    ) -> Result<FilledTube, Error> {
        let bulk_mpa = to_mpa(fluid.needed("bulk_modulus", fluid.bulk_modulus())?);
        let (outer, bore) = (to_mm(tube.od()) / 2.0, to_mm(tube.bore()) / 2.0);
        Ok(FilledTube {
            area_mm2: tube.bore_area().value,
            wall_per_mpa: wall_compliance(outer, bore, wall.modulus_mpa, wall.poisson, ends),
            poisson: wall.poisson,
            ends,
            bulk_mpa,
            fluid: fluid.clone(),
        })
    }

    /// Share of its bore that the wall alone gains per pressure.
    #[must_use]
    pub fn wall_compliance(&self) -> Compressibility {
        per_mpa(self.wall_per_mpa)
    }

    /// Share of its bore that wall and fluid together take per pressure.
    #[must_use]
    pub fn compliance(&self) -> Compressibility {
        per_mpa(self.per_mpa())
    }

    fn per_mpa(&self) -> f64 {
        1.0 / self.bulk_mpa + self.wall_per_mpa
    }

    /// Bulk modulus that the fluid seems to have in this tube.
    #[must_use]
    pub fn effective_bulk_modulus(&self) -> Pressure {
        mpa(1.0 / self.per_mpa())
    }

    /// Fluid to be pressed into a length of it to raise its pressure. Small changes: stiffness is taken as constant.
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE`, also for more than a twentieth of the volume.
    pub fn volume_to_raise(&self, length: Length, pressure: Pressure) -> Result<Volume, Error> {
        let length = to_mm(bounds::TUBE_LENGTH.length(length)?);
        let pressure = to_mpa(bounds::PRESSURE.pressure(pressure)?);
        Given { field: bounds::PRESSURE.name, value: pressure, unit: "MPa" }
            .squeezes(pressure * self.per_mpa(), pressure)?;
        Ok(ml(self.area_mm2 * length * pressure * self.per_mpa() / 1000.0))
    }

    /// By how much the pressure of a shut-off, full length rises when it is warmed throughout; falls when it cools. The bore
    /// grows with the metal by three times its linear expansion, or by 2 (1 + nu) times where its length is held.
    ///
    /// A fall goes down to nothing and no further: held against more than the line's pressure, it says that the fluid parts
    /// and leaves a bubble of vapor.
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE`, also where fluid and bore would part by more than a twentieth of the volume;
    /// `NOT_KNOWN` for a fluid without a thermal expansion.
    pub fn pressure_of_warming(
        &self,
        warming: TemperatureInterval,
        wall_expansion: TemperatureCoefficient,
    ) -> Result<Pressure, Error> {
        let warming = to_kelvin(bounds::WARMING.interval(warming)?);
        let metal = to_per_kelvin(bounds::EXPANSION.per_temperature(wall_expansion)?);
        let fluid = to_per_kelvin(self.fluid.needed("expansion", self.fluid.expansion())?);
        let bore = match self.ends {
            AxialEnds::Closed | AxialEnds::Open => 3.0 * metal,
            AxialEnds::Fixed => 2.0 * (1.0 + self.poisson) * metal,
        };
        let rise = (fluid - bore) / self.per_mpa() * warming;
        Given { field: bounds::WARMING.name, value: warming, unit: "K" }
            .squeezes((fluid - bore) * warming, rise)?;
        Ok(mpa(rise))
    }

    /// Speed of a pressure wave along it: the root of effective bulk modulus over density.
    ///
    /// # Errors
    /// `NOT_KNOWN` for a fluid without a density.
    pub fn wave_speed(&self) -> Result<Velocity, Error> {
        let density = self.fluid.needed("density", self.fluid.density())?.value;
        // MPa per Mg/mm3 is mm2/s2.
        Ok(m_per_s(sqrt(1.0 / self.per_mpa() / density) / 1000.0))
    }
}
