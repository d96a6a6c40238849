//! What a bend and an oval section do to the stress under pressure.

use super::Strength;
use crate::bend::wall::{BentWall, Place, Thinning};
use crate::bounds;
use crate::code::Code;
use crate::error::Error;
use crate::problem::Value;
use crate::tube::Tube;
use crate::units::{Length, Pressure, Ratio, mm, ratio, to_mm, to_mpa};

/// Stress of a ring-shaped shell as a multiple of the straight one's.
pub(super) fn shell_factor(od: f64, radius: f64, place: Place) -> f64 {
    let k = 4.0 * radius / od;
    match place {
        Place::Extrados => (k + 1.0) / (k + 2.0),
        Place::Intrados => (k - 1.0) / (k - 2.0),
        Place::Side => 1.0,
    }
}

/// Peak hoop stress of a slightly oval thin ring as a multiple of the round one's; `u` on the middle diameter. Pressure
/// rounds the ring, which the term with the modulus takes off.
fn oval_factor(middle: f64, wall: f64, u: f64, pressure: f64, modulus: f64, poisson: f64) -> f64 {
    let slender = middle / wall;
    let rounding = pressure * (1.0 - poisson * poisson) / (2.0 * modulus) * slender * slender * slender;
    1.0 + 1.5 * u * slender / (1.0 + rounding)
}

/// Stress in a bend as a multiple of the straight tube's.
///
/// ```
/// use linewright::bend::pressure::BendFactors;
/// use linewright::bend::wall::{Place, Thinning};
/// use linewright::units::mm;
/// let bend = BendFactors::new(mm(4.75), mm(14.25))?;
/// assert!((bend.shell(Place::Intrados).value - 1.1).abs() < 1e-12);
/// // Outside, thinning weighs more than the shape relieves: 1 + D / (4 R).
/// assert!((bend.after_bending(Place::Extrados, Thinning::PlaneStrain).value - 13.0 / 12.0).abs() < 1e-12);
/// # Ok::<(), linewright::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BendFactors {
    od_mm: f64,
    bent: BentWall,
}

impl BendFactors {
    /// A tube's diameter and a center-line radius.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE`, also for a radius of no more than half the tube.
    pub fn new(od: Length, radius: Length) -> Result<BendFactors, Error> {
        let od = bounds::OD.length(od)?;
        // A wall of 1: what comes out of it is a ratio.
        Ok(BendFactors { od_mm: to_mm(od), bent: BentWall::of(od, mm(1.0), radius)? })
    }

    /// By the shape alone, the wall as before: the factor I of ASME B31.3 paragraph 304.2.1.
    #[must_use]
    pub fn shell(&self, place: Place) -> Ratio {
        ratio(shell_factor(self.od_mm, to_mm(self.bent.radius()), place))
    }

    /// By the shape and by what bending does to the wall, for a thin wall.
    #[must_use]
    pub fn after_bending(&self, place: Place, thinning: Thinning) -> Ratio {
        ratio(self.shell(place).value / to_mm(self.bent.wall(place, thinning)))
    }

    /// Wall at a place by t = P D / (2 (S / I + P Y)), the form of ASME B31.3 paragraph 304.2.1 (seen in a scan), with the
    /// caller's divided strength and the caller's Y (codes give 0.4 for such steel). [`Place::Side`] is the straight. What
    /// [`EXCLUDES`](super::EXCLUDES) lists is missing, and so is any allowance: add it.
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE`.
    pub fn ideal_wall(
        &self,
        place: Place,
        pressure: Pressure,
        strength: &Strength,
        y: Ratio,
    ) -> Result<Length, Error> {
        let pressure = to_mpa(bounds::PRESSURE.pressure(pressure)?);
        let y = bounds::WALL_COEFFICIENT.ratio(y)?.value;
        let carried = strength.divided_mpa() / self.shell(place).value + pressure * y;
        Ok(mm(pressure * self.od_mm / (2.0 * carried)))
    }
}

/// Peak hoop stress of a slightly oval tube under pressure as a multiple of the round one's: a thin ring, first order
/// (derived here; the same form is remembered of Haigh, 1936). It is an elastic peak at the surface: it matters for fatigue
/// and hardly for bursting.
///
/// `out_of_round` is the largest less the smallest diameter, whatever share of which diameter it was given as.
///
/// # Errors
/// `NOT_A_NUMBER` or `OUT_OF_RANGE`.
///
/// ```
/// use linewright::bend::pressure::ovality_amplification;
/// use linewright::units::{inch, mm, mpa, ratio};
/// use linewright::{Material, Tube};
/// let tube = Tube::new(inch(3.0 / 16.0), inch(0.028), Material::LowCarbonSteel)?;
/// let peak = ovality_amplification(&tube, mm(0.2), mpa(15.0), mpa(207_000.0), ratio(0.29))?;
/// assert!((peak.value - 1.42).abs() < 0.01);
/// # Ok::<(), linewright::Error>(())
/// ```
pub fn ovality_amplification(
    tube: &Tube,
    out_of_round: Length,
    pressure: Pressure,
    modulus: Pressure,
    poisson: Ratio,
) -> Result<Ratio, Error> {
    let apart = to_mm(bounds::OUT_OF_ROUND.length(out_of_round)?);
    let pressure = to_mpa(bounds::PRESSURE.pressure(pressure)?);
    let modulus = to_mpa(bounds::MODULUS.pressure(modulus)?);
    let poisson = bounds::POISSON.ratio(poisson)?.value;
    let (od, wall) = (to_mm(tube.od()), to_mm(tube.wall()));
    if apart >= od {
        let need = Value::text("less than the outside diameter");
        return Err(Error::field(Code::OutOfRange, "out_of_round", Value::Length(out_of_round), need));
    }
    let middle = od - wall;
    Ok(ratio(oval_factor(middle, wall, apart / middle, pressure, modulus, poisson)))
}
