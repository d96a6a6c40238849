//! Quantities: the aliases every public signature uses, their constructors, and the one place that prints and
//! rounds.
//!
//! The base is millimeter, megagram (tonne), second. In it a length *is* its number of millimeters and a pressure
//! *is* its number of megapascals, so what a person typed in mm or MPa is stored without loss; with a meter base
//! about one value in seven of a 0.01 mm grid comes back changed in its last digit (measured in the conformance
//! tests). Angles are radians inside, because uom fixes that, and come back in degrees as they were typed (see
//! [`to_deg`]).
//!
//! ```
//! use linewright::units::{deg, inch, mm, to_deg, to_mm};
//! let od = inch(3.0 / 16.0);
//! assert_eq!(to_mm(od), 4.7625);
//! assert_eq!(to_mm(mm(14.3)), 14.3);
//! assert_eq!(to_deg(deg(86.5)), 86.5);
//! ```

mod print;
mod read;
#[cfg(test)]
mod tests;

pub use print::{
    Rounding, angle_text, exact_angle_text, exact_length_text, exact_pressure_text, inch_text, length_text,
    pressure_text, round_angle, round_length,
};
pub use read::{
    Notation, read_angle, read_angle_in, read_length, read_length_in, read_pressure, read_pressure_in,
    read_rotation, read_rotation_in, read_tolerance,
};

/// The base units: mm and MPa are stored as they are written.
pub type Base = dyn uom::si::Units<
        f64,
        length = uom::si::length::millimeter,
        mass = uom::si::mass::megagram,
        time = uom::si::time::second,
        electric_current = uom::si::electric_current::ampere,
        thermodynamic_temperature = uom::si::thermodynamic_temperature::kelvin,
        amount_of_substance = uom::si::amount_of_substance::mole,
        luminous_intensity = uom::si::luminous_intensity::candela,
    >;

/// A plane angle, radians inside.
pub type Angle = uom::si::angle::Angle<Base, f64>;
/// An area, mm2 inside.
pub type Area = uom::si::area::Area<Base, f64>;
/// A length, mm inside.
pub type Length = uom::si::length::Length<Base, f64>;
/// A curvature, 1/mm inside.
pub type Curvature = uom::si::linear_number_density::LinearNumberDensity<Base, f64>;
/// A mass, Mg inside.
pub type Mass = uom::si::mass::Mass<Base, f64>;
/// A mass per volume, Mg/mm3 inside.
pub type MassDensity = uom::si::mass_density::MassDensity<Base, f64>;
/// A pressure or stress, MPa inside.
pub type Pressure = uom::si::pressure::Pressure<Base, f64>;
/// A bending moment, N mm inside.
pub type Moment = uom::si::torque::Torque<Base, f64>;
/// A share of volume per pressure, 1/MPa inside.
pub type Compressibility = uom::si::compressibility_coefficient::CompressibilityCoefficient<Base, f64>;
/// A frequency, Hz inside.
pub type Frequency = uom::si::frequency::Frequency<Base, f64>;
/// A difference of temperatures, K inside.
pub type TemperatureInterval = uom::si::temperature_interval::TemperatureInterval<Base, f64>;
/// A share per temperature, 1/K inside.
pub type TemperatureCoefficient = uom::si::temperature_coefficient::TemperatureCoefficient<Base, f64>;
/// A speed, mm/s inside.
pub type Velocity = uom::si::velocity::Velocity<Base, f64>;
/// A plain ratio.
pub type Ratio = uom::si::ratio::Ratio<Base, f64>;
/// A volume, mm3 inside.
pub type Volume = uom::si::volume::Volume<Base, f64>;

use std::f64::consts::PI;

/// A length of `value` millimeters.
#[must_use]
pub fn mm(value: f64) -> Length {
    Length::new::<uom::si::length::millimeter>(value)
}

/// A length of `value` inches, taken as `value` x 25.4 mm.
///
/// 25.4 has no exact binary form but 254 has, so a fraction of an inch times 254 is exact and only the last
/// division rounds: 3/16 in is 4.7625 mm, where x 25.4 gives 4.762499999999999.
#[must_use]
pub fn inch(value: f64) -> Length {
    mm(value * 254.0 / 10.0)
}

/// A length of `value` meters.
#[must_use]
pub fn meter(value: f64) -> Length {
    mm(value * 1000.0)
}

/// An angle of `value` degrees.
#[must_use]
pub fn deg(value: f64) -> Angle {
    rad(value * (PI / 180.0))
}

/// An angle of `value` radians.
#[must_use]
pub fn rad(value: f64) -> Angle {
    Angle::new::<uom::si::angle::radian>(value)
}

/// A pressure or stress of `value` megapascals.
#[must_use]
pub fn mpa(value: f64) -> Pressure {
    Pressure::new::<uom::si::pressure::megapascal>(value)
}

/// The number of megapascals in a pressure or stress, bit for bit what [`mpa`] was given.
#[must_use]
pub fn to_mpa(pressure: Pressure) -> f64 {
    pressure.value
}

/// A curvature of `value` per millimeter.
#[must_use]
pub fn per_mm(value: f64) -> Curvature {
    Curvature { dimension: std::marker::PhantomData, units: std::marker::PhantomData, value }
}

/// A pressure or stress of `value` pounds per square inch, by the definitions of the pound (0.453 592 37 kg), of standard
/// gravity (9.806 65 m/s2) and of the inch.
#[must_use]
pub fn psi(value: f64) -> Pressure {
    mpa(value * 4.448_221_615_260_5 / 645.16)
}

/// A pressure of `value` bar.
#[must_use]
pub fn bar(value: f64) -> Pressure {
    mpa(value / 10.0)
}

/// The number of bar in a pressure.
#[must_use]
pub fn to_bar(pressure: Pressure) -> f64 {
    pressure.value * 10.0
}

/// A compressibility of `value` per megapascal.
#[must_use]
pub fn per_mpa(value: f64) -> Compressibility {
    Compressibility { dimension: std::marker::PhantomData, units: std::marker::PhantomData, value }
}

/// The number per megapascal in a compressibility.
#[must_use]
pub fn to_per_mpa(compressibility: Compressibility) -> f64 {
    compressibility.value
}

/// A frequency of `value` hertz.
#[must_use]
pub fn hz(value: f64) -> Frequency {
    Frequency { dimension: std::marker::PhantomData, units: std::marker::PhantomData, value }
}

/// The number of hertz in a frequency.
#[must_use]
pub fn to_hz(frequency: Frequency) -> f64 {
    frequency.value
}

/// A difference of temperatures of `value` kelvin.
#[must_use]
pub fn kelvin(value: f64) -> TemperatureInterval {
    TemperatureInterval { dimension: std::marker::PhantomData, units: std::marker::PhantomData, value }
}

/// The number of kelvin in a difference of temperatures.
#[must_use]
pub fn to_kelvin(interval: TemperatureInterval) -> f64 {
    interval.value
}

/// A share of `value` per kelvin.
#[must_use]
pub fn per_kelvin(value: f64) -> TemperatureCoefficient {
    TemperatureCoefficient { dimension: std::marker::PhantomData, units: std::marker::PhantomData, value }
}

/// The number per kelvin in a share per temperature.
#[must_use]
pub fn to_per_kelvin(coefficient: TemperatureCoefficient) -> f64 {
    coefficient.value
}

/// A speed of `value` meters per second.
#[must_use]
pub fn m_per_s(value: f64) -> Velocity {
    let value = value * 1000.0;
    Velocity { dimension: std::marker::PhantomData, units: std::marker::PhantomData, value }
}

/// The number of meters per second in a speed.
#[must_use]
pub fn to_m_per_s(speed: Velocity) -> f64 {
    speed.value / 1000.0
}

/// A bending moment of `value` newton millimeters.
#[must_use]
pub fn n_mm(value: f64) -> Moment {
    Moment { dimension: std::marker::PhantomData, units: std::marker::PhantomData, value }
}

/// The number of newton millimeters in a bending moment.
#[must_use]
pub fn to_n_mm(moment: Moment) -> f64 {
    moment.value
}

/// A plain ratio, 1 = the whole.
#[must_use]
pub fn ratio(value: f64) -> Ratio {
    Ratio::new::<uom::si::ratio::ratio>(value)
}

/// The number of millimeters in a length, bit for bit what [`mm`] was given.
#[must_use]
pub fn to_mm(length: Length) -> f64 {
    length.value
}

/// The number of inches in a length: exact for every whole number of 64ths.
#[must_use]
pub fn to_inch(length: Length) -> f64 {
    length.value * 10.0 / 254.0
}

/// The number of degrees in an angle.
///
/// Degrees to radians and back can change the last digit; a result within four units in the last place of a
/// number with at most nine decimals is taken for that number, so an angle prints as it was typed.
#[must_use]
pub fn to_deg(angle: Angle) -> f64 {
    let raw = angle.value * (180.0 / PI);
    let typed = print::nearest_whole(raw * 1e9) / 1e9;
    if (raw - typed).abs() <= 4.0 * f64::EPSILON * raw.abs() { typed } else { raw }
}

/// The number of radians in an angle.
#[must_use]
pub fn to_rad(angle: Angle) -> f64 {
    angle.value
}

/// An area of `value` square millimeters.
#[must_use]
pub fn mm2(value: f64) -> Area {
    Area::new::<uom::si::area::square_millimeter>(value)
}

/// The number of square millimeters in an area; of a bore, also its milliliters per meter.
#[must_use]
pub fn to_mm2(area: Area) -> f64 {
    area.value
}

/// A volume of `value` milliliters.
#[must_use]
pub fn ml(value: f64) -> Volume {
    Volume::new::<uom::si::volume::cubic_millimeter>(value * 1000.0)
}

/// The number of milliliters in a volume.
#[must_use]
pub fn to_ml(volume: Volume) -> f64 {
    volume.value / 1000.0
}

/// The number of grams in a mass.
#[must_use]
pub fn to_g(mass: Mass) -> f64 {
    mass.value * 1e6
}

/// The number of kilograms per cubic meter in a density.
#[must_use]
pub fn to_kg_per_m3(density: MassDensity) -> f64 {
    density.value * 1e12
}

/// A density of `value` kilograms per cubic meter.
#[must_use]
pub fn kg_per_m3(value: f64) -> MassDensity {
    MassDensity { dimension: std::marker::PhantomData, units: std::marker::PhantomData, value: value / 1e12 }
}
