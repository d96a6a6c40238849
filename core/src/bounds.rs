//! Every numeric limit, once: constructors, messages, property tests and fuzzers draw from here.
//!
//! The limits are wide on purpose: they catch a value in the wrong unit or of the wrong kind, not a rare line. All
//! of them are ours (no source).

use crate::code::Code;
use crate::error::Error;
use crate::problem::{Part, Problem, Value};
use crate::units::{
    self, Angle, Frequency, Length, MassDensity, Pressure, Ratio, TemperatureCoefficient,
    TemperatureInterval, Volume,
};

/// The smallest and largest value of one named number, both included.
#[derive(Debug, Clone, Copy)]
pub struct Bound {
    /// The field it limits, as it is spelled in every language.
    pub name: &'static str,
    /// Smallest.
    pub min: f64,
    /// Largest.
    pub max: f64,
    /// `"mm"`, `"deg"`, `"MPa"` and the like; `"1"` for a plain number, which is printed without it.
    pub unit: &'static str,
    /// Why there.
    pub why: &'static str,
}

const fn bound(name: &'static str, min: f64, max: f64, unit: &'static str, why: &'static str) -> Bound {
    Bound { name, min, max, unit, why }
}

/// Outside diameter of a tube.
pub const OD: Bound = bound("od", 1.0, 60.0, "mm", "small-bore hydraulic tube");
/// Wall of a tube.
pub const WALL: Bound = bound("wall", 0.1, 10.0, "mm", "thinner is foil, thicker is bar");
/// A straight between tangents.
pub const STRAIGHT: Bound = bound("straight", 0.0, 100_000.0, "mm", "no vehicle is longer than 100 m");
/// A straight that was worked out from legs or points, negative where bends overlap.
pub const COMPUTED_STRAIGHT: Bound =
    bound("straight", -2_000_000_000.0, 2_000_000.0, "mm", "what other limits leave of a leg");
/// A length of tube, of one line or of many.
pub const TUBE_LENGTH: Bound = bound("length", 0.0, 200_000_000.0, "mm", "tube for a whole fleet");
/// A leg between corners.
pub const LEG: Bound = bound("leg", 0.0, 100_000.0, "mm", "no vehicle is longer than 100 m");
/// A place along a line.
pub const STATION: Bound =
    bound("station", 0.0, 200_000_000.0, "mm", "the longest line that the other limits allow");
/// A coordinate of a point.
pub const COORDINATE: Bound =
    bound("coordinate", -1_000_000.0, 1_000_000.0, "mm", "a point beyond 1 km is in the wrong unit");
/// A bend.
pub const ANGLE: Bound = bound("angle", 0.0, 3600.0, "deg", "a loop of ten turns");
/// All bends of a line together.
pub const TOTAL_ANGLE: Bound = bound("total_angle", 0.0, 36_000.0, "deg", "a hundred turns");
/// A thread's diameter, as measured, or a hole to be tapped.
pub const THREAD_DIAMETER: Bound = bound("diameter", 0.5, 400.0, "mm", "threads of the standards");
/// How far a reading of a thread's diameter may be off, either way.
pub const READING_ERROR: Bound =
    bound("plus_minus", 0.001, 2.0, "mm", "no caliper is exact, and more is no measurement");
/// The pitch of a thread, as measured.
pub const PITCH: Bound = bound("pitch", 0.1, 10.0, "mm", "threads of the standards");
/// Threads counted over one inch.
pub const PER_INCH: Bound = bound("per_inch", 2.5, 120.0, "1", "threads of the standards");
/// How far a count of threads per inch may be off.
pub const COUNT_ERROR: Bound = bound("plus_minus", 0.01, 2.4, "1", "more is no count");
/// Pitches measured over at once.
pub const PITCHES: Bound = bound("pitches", 1.0, 100.0, "1", "a thread is no longer than that");
/// What wear has taken off a thread's diameter.
pub const WEAR: Bound = bound("wear", 0.0, 2.0, "mm", "a thread worn further is gone");
/// Engaged length of a thread.
pub const ENGAGEMENT: Bound = bound("engagement", 0.1, 200.0, "mm", "nuts of small-bore lines");
/// A share of the full thread.
pub const THREAD_SHARE: Bound = bound("share", 0.3, 1.0, "1", "less holds nothing, more is not there");
/// A chance of being long enough.
pub const CHANCE: Bound = bound("chance", 0.5, 0.9999, "1", "below it is a gamble, above it a promise");
/// A rotation between bend planes, as typed.
pub const ROTATION: Bound = bound("rotation", -3600.0, 3600.0, "deg", "ten turns either way");
/// A centerline radius.
pub const RADIUS: Bound = bound("radius", 1.0, 10_000.0, "mm", "flatter than 10 m is straight");
/// A nut's length.
pub const NUT_LENGTH: Bound = bound("nut_length", 2.0, 200.0, "mm", "nuts of small-bore lines");
/// A nut's bore.
pub const NUT_BORE: Bound = bound("nut_bore", 1.0, 70.0, "mm", "nuts of small-bore lines");
/// A hexagon across its flats.
pub const ACROSS_FLATS: Bound = bound("across_flats", 2.0, 100.0, "mm", "nuts of small-bore lines");
/// A hole that a line goes through.
pub const HOLE: Bound = bound("hole", 1.0, 500.0, "mm", "a larger one is no hole but an opening");
/// The straight a former holds.
pub const GRIP: Bound = bound("grip", 0.0, 1000.0, "mm", "hand formers");
/// Clamp depth of a flare tool.
pub const CLAMP: Bound = bound("clamp", 0.0, 300.0, "mm", "hand flare tools");
/// Tube standing out of a flare tool's clamp.
pub const PROJECTION: Bound = bound("projection", 0.0, 100.0, "mm", "hand flare tools");
/// Shortening of the tube by a flare.
pub const NET_SHORTENING: Bound = bound("net_shortening", 0.0, 20.0, "mm", "a flare uses a few millimeters");
/// Diameter of a finished flare.
pub const FLARE_DIAMETER: Bound = bound("diameter", 1.5, 100.0, "mm", "flares on small-bore tube");
/// The same, as measured on a test piece for an end of a line.
pub const MEASURED_FLARE: Bound =
    bound("flare_diameter", FLARE_DIAMETER.min, FLARE_DIAMETER.max, "mm", FLARE_DIAMETER.why);
/// Depth of a port, to the end of its thread or to its seat.
pub const PORT_DEPTH: Bound = bound("depth", 1.0, 200.0, "mm", "ports of small-bore lines");
/// Length of a nut's thread.
pub const NUT_THREAD: Bound = bound("thread_length", 0.5, 200.0, "mm", "nuts of small-bore lines");
/// Length of a nut's unthreaded nose.
pub const NUT_LEAD: Bound = bound("lead", 0.0, 200.0, "mm", "nuts of small-bore lines");
/// Length added for safety.
pub const CUT_SPARE: Bound = bound("cut_spare", 0.0, 200.0, "mm", "more is waste");
/// Reserve for another try.
pub const RESERVE: Bound = bound("reserve", 0.0, 2000.0, "mm", "more is another line");
/// Working clearance and nut back-off.
pub const CLEARANCE: Bound = bound("clearance", 0.0, 200.0, "mm", "room for a tool");
/// Distance between clips.
pub const CLIP_SPACING: Bound =
    bound("spacing", 10.0, 5000.0, "mm", "nearer is a row of clips, further is none");
/// Length of a test piece before it is bent.
pub const PIECE: Bound = bound("length", 1.0, 10_000.0, "mm", "a test piece is bent by hand");
/// A bend of a test piece.
pub const PIECE_ANGLE: Bound =
    bound("angle", 1.0, 170.0, "deg", "flatter shows no gain, and nearer to a U the corner is far away");
/// Constant part of springback.
pub const SPRINGBACK_CONSTANT: Bound =
    bound("springback_constant", -10.0, 30.0, "deg", "beyond it the trial was misread");
/// Proportional part of springback.
pub const SPRINGBACK_PROPORTIONAL: Bound =
    bound("springback_proportional", 0.0, 0.5, "1", "half the bend lost is no bend");
/// Elastic modulus.
pub const MODULUS: Bound = bound("modulus", 1_000.0, 1_000_000.0, "MPa", "metals");
/// Yield strength, or the coefficient of a power law.
pub const YIELD_STRENGTH: Bound = bound("yield_strength", 1.0, 5_000.0, "MPa", "metals of tubes");
/// Tangent modulus beyond yield.
pub const TANGENT_MODULUS: Bound = bound("tangent_modulus", 0.0, 500_000.0, "MPa", "metals");
/// Exponent of a power law of hardening.
pub const HARDENING_EXPONENT: Bound = bound("hardening_exponent", 0.0, 0.9, "1", "metals");
/// Radius that a tube is held at while it is bent.
pub const HELD_RADIUS: Bound = bound("radius", 1.0, 1_000_000.0, "mm", "flatter is straight");
/// Scatter of a material's data, as a share.
pub const SCATTER_SHARE: Bound = bound("scatter", 0.0, 0.8, "1", "more is no knowledge");
/// Poisson's ratio.
pub const POISSON: Bound = bound("poisson", 0.0, 0.5, "1", "at 0.5 a solid keeps its volume");
/// A strength that a pressure is compared with.
pub const STRENGTH: Bound = bound("strength", 1.0, 5_000.0, "MPa", "metals");
/// What a strength is divided by.
pub const FACTOR: Bound = bound("factor", 1.0, 100.0, "1", "below 1 it would add strength");
/// Pressure in a line.
pub const PRESSURE: Bound = bound("pressure", 0.0, 1_000.0, "MPa", "beyond it no small-bore line is used");
/// By how much a pressure falls.
pub const PRESSURE_FALL: Bound = bound("fall", 0.0, PRESSURE.max, "MPa", PRESSURE.why);
/// Stretch before breaking.
pub const ELONGATION: Bound = bound("elongation", 0.0, 2.0, "1", "metals");
/// Density of a metal or a fluid.
pub const DENSITY: Bound = bound("density", 100.0, 30_000.0, "kg/m3", "fluids and metals");
/// Bulk modulus of a fluid.
pub const BULK_MODULUS: Bound =
    bound("bulk_modulus", 10.0, 100_000.0, "MPa", "fluids, also with air in them");
/// Thermal expansion, linear of a metal or of volume of a fluid.
pub const EXPANSION: Bound = bound("expansion", 0.0, 0.01, "1/K", "metals and fluids");
/// A warming, negative for cooling.
pub const WARMING: Bound = bound("warming", -300.0, 300.0, "K", "fluids of brakes boil or freeze before");
/// A volume of fluid that is lost.
pub const LOST_VOLUME: Bound = bound("lost", 0.0, 1_000_000.0, "mL", "a cubic meter");
/// A volume of fluid whose pressure is held.
pub const HELD_VOLUME: Bound = bound("volume", 0.001, 1_000_000.0, "mL", "a cubic meter, or a drop");
/// A free span of line.
pub const SPAN: Bound = bound("span", 5.0, 20_000.0, "mm", "shorter is a clip, longer sags");
/// A frequency of vibration.
pub const FREQUENCY: Bound = bound("frequency", 0.01, 1_000_000.0, "Hz", "machines");
/// How far a wall may be below what is written, or a diameter above.
pub const SIZE_TOLERANCE: Bound = bound("tolerance", 0.0, 2.0, "mm", "small-bore hydraulic tube");
/// By how much the neutral axis lies inside the center line.
pub const NEUTRAL_SHIFT: Bound = bound("neutral_shift", -30.0, 30.0, "mm", "within the tube");
/// Difference of the largest and smallest diameter as a share of the tube's.
pub const OVALITY: Bound = bound("ovality", 0.0, 2.0, "1", "the tube is shut before");
/// Smallest diameter as a share of the tube's.
pub const FLATTENING: Bound = bound("flattening", 0.0, 1.0, "1", "no diameter is larger when flattened");
/// Difference of the largest and smallest diameter.
pub const OUT_OF_ROUND: Bound = bound("out_of_round", 0.0, 60.0, "mm", "within the tube");
/// Share of the pressure times diameter that a wall formula takes off, Y.
pub const WALL_COEFFICIENT: Bound = bound("y", 0.0, 1.0, "1", "codes give 0.4 to 0.7");
/// Scatter of one bend.
pub const SCATTER: Bound = bound("scatter", 0.0, 10.0, "deg", "beyond it nothing repeats");
/// Scatter of one bend that is believed; whoever reads better than its least does not bend by hand.
pub const PRIOR_SCATTER: Bound =
    bound("scatter", 0.001, 10.0, "deg", "nobody is surer, and every bend scatters");
/// How far a constant part may be off.
pub const CONSTANT_SPREAD: Bound = bound("constant", 0.001, 30.0, "deg", "nobody is surer");
/// How far a proportional part may be off.
pub const PROPORTIONAL_SPREAD: Bound = bound("proportional", 0.000_01, 0.5, "1", "nobody is surer");
/// How the two are off together.
pub const CORRELATION: Bound = bound("correlation", -0.999, 0.999, "1", "at 1 one would be the other");
/// Number of bends that a belief can be worth.
pub const MOST_WORTH: usize = 10_000;
/// Step that lengths are read to.
pub const READING: Bound = bound("reading", 0.001, 10.0, "mm", "rulers and calipers");
/// Arm of a bending tool along which the moment falls to zero.
pub const ARM: Bound = bound("arm", 0.0, 2_000.0, "mm", "hand tools");
/// Largest number of bends in a line.
pub const MOST_BENDS: usize = 1000;

/// The unit of a plain number.
const PLAIN: &str = "1";

impl Bound {
    fn raw(&self, value: f64, got: Value) -> Result<(), Error> {
        let part = Part::Field(self.name.to_owned());
        if !value.is_finite() {
            return Err(Problem::new(Code::NotANumber, part)
                .got(Value::text(format!("{value}")))
                .need(Value::text(if self.unit == PLAIN {
                    "a number".to_owned()
                } else {
                    format!("a number of {}", self.unit)
                }))
                .into());
        }
        if value < self.min || value > self.max {
            return Err(Problem::new(Code::OutOfRange, part)
                .got(got)
                .need(Value::text(self.with_unit(format!("{} to {}", self.min, self.max))))
                .why(format!("{} is outside its limits ({})", self.name, self.why))
                .fix("check the unit and the number")
                .into());
        }
        Ok(())
    }

    /// The length, if it lies within the bound.
    ///
    /// # Errors
    /// `NOT_A_NUMBER` for NaN and infinities, `OUT_OF_RANGE` outside the bound.
    pub fn length(&self, value: Length) -> Result<Length, Error> {
        self.raw(units::to_mm(value), Value::Length(value)).map(|()| value)
    }

    /// The angle, if it lies within the bound.
    ///
    /// # Errors
    /// As [`Bound::length`].
    pub fn angle(&self, value: Angle) -> Result<Angle, Error> {
        self.raw(units::to_deg(value), Value::Angle(value)).map(|()| value)
    }

    /// The pressure or stress, if it lies within the bound.
    ///
    /// # Errors
    /// As [`Bound::length`].
    pub fn pressure(&self, value: Pressure) -> Result<Pressure, Error> {
        self.raw(units::to_mpa(value), Value::Pressure(value)).map(|()| value)
    }

    /// The ratio, if it lies within the bound.
    ///
    /// # Errors
    /// As [`Bound::length`].
    pub fn ratio(&self, value: Ratio) -> Result<Ratio, Error> {
        self.raw(value.value, Value::Ratio(value)).map(|()| value)
    }

    /// The density, if it lies within the bound.
    ///
    /// # Errors
    /// As [`Bound::length`].
    pub fn density(&self, value: MassDensity) -> Result<MassDensity, Error> {
        self.raw(units::to_kg_per_m3(value), self.words(units::to_kg_per_m3(value))).map(|()| value)
    }

    /// The frequency, if it lies within the bound.
    ///
    /// # Errors
    /// As [`Bound::length`].
    pub fn frequency(&self, value: Frequency) -> Result<Frequency, Error> {
        self.raw(units::to_hz(value), self.words(units::to_hz(value))).map(|()| value)
    }

    /// The difference of temperatures, if it lies within the bound.
    ///
    /// # Errors
    /// As [`Bound::length`].
    pub fn interval(&self, value: TemperatureInterval) -> Result<TemperatureInterval, Error> {
        self.raw(units::to_kelvin(value), self.words(units::to_kelvin(value))).map(|()| value)
    }

    /// The share per temperature, if it lies within the bound.
    ///
    /// # Errors
    /// As [`Bound::length`].
    pub fn per_temperature(&self, value: TemperatureCoefficient) -> Result<TemperatureCoefficient, Error> {
        self.raw(units::to_per_kelvin(value), self.words(units::to_per_kelvin(value))).map(|()| value)
    }

    /// The volume, if it lies within the bound.
    ///
    /// # Errors
    /// As [`Bound::length`].
    pub fn volume(&self, value: Volume) -> Result<Volume, Error> {
        self.raw(units::to_ml(value), self.words(units::to_ml(value))).map(|()| value)
    }

    /// A number of a kind that findings have no value of their own for.
    fn words(&self, value: f64) -> Value {
        Value::text(self.with_unit(value.to_string()))
    }

    fn with_unit(&self, number: String) -> String {
        if self.unit == PLAIN { number } else { format!("{number} {}", self.unit) }
    }
}
