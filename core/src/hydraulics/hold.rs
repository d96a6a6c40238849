//! Holding a pressure to look for a leak: what a loss does to the gauge, and what a change of temperature hides.
//!
//! The volume is taken as rigid: only the fluid gives way. Real lines, hoses and calipers give way too, so a real loss
//! moves the gauge less than computed here, and a small leak shows later.

use super::Fluid;
use super::linear::Given;
use crate::bounds;
use crate::error::Error;
use crate::units::{Pressure, TemperatureInterval, Volume, ml, mpa, to_kelvin, to_ml, to_mpa, to_per_kelvin};

/// A rigid volume of fluid whose pressure is held.
///
/// ```
/// use linewright::hydraulics::{Fluid, Hold};
/// use linewright::units::{kelvin, ml, mpa, per_kelvin, to_bar, to_ml};
/// let fluid = Fluid::named("assumed")
///     .with_bulk_modulus(mpa(1700.0), "assumed")?
///     .with_expansion(per_kelvin(7e-4), "assumed")?;
/// let hold = Hold::new(ml(90.0), &fluid)?;
/// // One degree looks like 0.063 mL gained or lost ...
/// assert!((to_ml(hold.volume_of_temperature(kelvin(1.0))?) - 0.063).abs() < 1e-12);
/// // ... and 0.05 mL lost would move an ideal rigid volume by 9.4 bar.
/// assert!((to_bar(hold.ideal_rigid_pressure(ml(0.05))?) - 9.4).abs() < 0.05);
/// # Ok::<(), linewright::Error>(())
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct Hold {
    volume_ml: f64,
    bulk_mpa: f64,
    fluid: Fluid,
}

impl Hold {
    /// A volume and the fluid in it.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE`, also for no volume; `NOT_KNOWN` for a fluid without a bulk modulus.
    pub fn new(volume: Volume, fluid: &Fluid) -> Result<Hold, Error> {
        let volume_ml = to_ml(bounds::HELD_VOLUME.volume(volume)?);
        let bulk_mpa = to_mpa(fluid.needed("bulk_modulus", fluid.bulk_modulus())?);
        Ok(Hold { volume_ml, bulk_mpa, fluid: fluid.clone() })
    }

    /// A warming, as given, and the share by which the fluid grows.
    fn growth(&self, warming: TemperatureInterval) -> Result<(Given, f64), Error> {
        let value = to_kelvin(bounds::WARMING.interval(warming)?);
        let expansion = to_per_kelvin(self.fluid.needed("expansion", self.fluid.expansion())?);
        Ok((Given { field: bounds::WARMING.name, value, unit: "K" }, expansion * value))
    }

    /// The volume by which the fluid grows when it is warmed; negative when it cools. A leak smaller than this, for the
    /// doubt in the temperature, cannot be told from weather: the blind spot of the test. The expansion of what holds the
    /// fluid, a tenth of it or less for steel, is left out.
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE`, also where the fluid would grow or shrink by more than a quarter; `NOT_KNOWN` for a
    /// fluid without a thermal expansion.
    pub fn volume_of_temperature(&self, warming: TemperatureInterval) -> Result<Volume, Error> {
        let (given, share) = self.growth(warming)?;
        given.grows(share)?;
        Ok(ml(self.volume_ml * share))
    }

    /// By how much warming raises the pressure of the ideal rigid volume; cooling lowers it, until nothing is left of the
    /// pressure that was held, and no further: held against more than that, the fall only says that the fluid parts.
    ///
    /// # Errors
    /// As [`Hold::volume_of_temperature`]; `OUT_OF_RANGE` from a twentieth of the volume on.
    pub fn ideal_rigid_warming(&self, warming: TemperatureInterval) -> Result<Pressure, Error> {
        let (given, share) = self.growth(warming)?;
        let rise = self.bulk_mpa * share;
        given.squeezes(share, rise)?;
        Ok(mpa(rise))
    }

    /// By how much a loss lowers the pressure of the ideal rigid volume, down to nothing and no further. What is not rigid
    /// lowers it less.
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE`, also for a loss of more than a twentieth of the volume.
    pub fn ideal_rigid_pressure(&self, lost: Volume) -> Result<Pressure, Error> {
        let lost = to_ml(bounds::LOST_VOLUME.volume(lost)?);
        let fall = self.bulk_mpa * lost / self.volume_ml;
        Given { field: bounds::LOST_VOLUME.name, value: lost, unit: "mL" }
            .squeezes(lost / self.volume_ml, fall)?;
        Ok(mpa(fall))
    }

    /// The loss that lowers the pressure of the ideal rigid volume by as much as can just be read off the gauge.
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE`, also for a fall that takes a loss of more than a twentieth of the volume.
    pub fn ideal_rigid_loss(&self, fall: Pressure) -> Result<Volume, Error> {
        let fall = to_mpa(bounds::PRESSURE_FALL.pressure(fall)?);
        Given { field: bounds::PRESSURE_FALL.name, value: fall, unit: "MPa" }
            .squeezes(fall / self.bulk_mpa, fall)?;
        Ok(ml(self.volume_ml * fall / self.bulk_mpa))
    }
}
