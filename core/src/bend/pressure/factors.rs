//! What a bend and an oval section do to the stress under pressure.

use super::{BOARDMAN, ROUNDING, Strength};
use crate::bend::wall::{BentWall, Place, Thinning, at_most};
use crate::bounds;
use crate::code::Code;
use crate::error::Error;
use crate::problem::{Part, Problem, Value};
use crate::tube::Tube;
use crate::units::{Length, Pressure, Ratio, mm, ratio, to_mm, to_mpa};

/// Largest difference of diameters, as a share of the middle one, for which the first order is taken (ours, no source). For
/// walls up to a quarter of the diameter a thin ellipse of kept perimeter has its peak 5 to 8 % above the first order there,
/// and 7 to 11 % at 0.3: a test sums it up.
const SLIGHTLY_OVAL: f64 = 0.2;

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
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE`, also for a radius of less than one diameter.
    pub fn new(od: Length, radius: Length) -> Result<BendFactors, Error> {
        let od = bounds::OD.length(od)?;
        Ok(BendFactors { od_mm: to_mm(od), bent: BentWall::of_unit_wall(od, radius)? })
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
    /// With Y = 0.4 it is Boardman's formula. It is for walls up to a sixth of the diameter, and is refused beyond.
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE`, also for a pressure that wants a wall of more than a sixth of the diameter.
    ///
    /// ```
    /// use linewright::bend::pressure::{BendFactors, Strength};
    /// use linewright::bend::wall::Place;
    /// use linewright::units::{mm, mpa, ratio, to_mm};
    /// let bend = BendFactors::new(mm(60.0), mm(180.0))?;
    /// let whole = Strength::new(mpa(290.0), ratio(1.0), "my own choice")?;
    /// let wall = |p| bend.ideal_wall(Place::Intrados, mpa(p), &whole, ratio(0.4));
    /// // By hand: 100 x 60 / (2 (290 / 1.1 + 40)).
    /// assert!((to_mm(wall(100.0)?) - 9.8802).abs() < 1e-4);
    /// assert!(wall(500.0).is_err());
    /// # Ok::<(), linewright::Error>(())
    /// ```
    pub fn ideal_wall(
        &self,
        place: Place,
        pressure: Pressure,
        strength: &Strength,
        y: Ratio,
    ) -> Result<Length, Error> {
        let given = bounds::PRESSURE.pressure(pressure)?;
        let pressure = to_mpa(given);
        let y = bounds::WALL_COEFFICIENT.ratio(y)?.value;
        let strength = strength.divided_mpa() / self.shell(place).value;
        let carried = strength + pressure * y;
        // A wall of P D / (2 carried) as a share of the diameter.
        if pressure > 2.0 * BOARDMAN * (1.0 + ROUNDING) * carried {
            let most = strength / (0.5 / BOARDMAN - y);
            let need =
                format!("at most {most:.4} MPa: beyond, the wall would be more than a sixth of the diameter");
            return Err(Problem::new(Code::OutOfRange, Part::Field("pressure".to_owned()))
                .got(Value::Pressure(given))
                .need(Value::text(need))
                .why("the formula is for walls up to a sixth of the diameter")
                .fix("a lower pressure, a higher strength or a smaller factor")
                .into());
        }
        Ok(mm(pressure * self.od_mm / (2.0 * carried)))
    }
}

/// Peak hoop stress of a slightly oval tube under pressure as a multiple of the round one's: a thin ring, first order
/// (derived here; the same form is remembered of Haigh, 1936). It is an elastic peak at the surface: it matters for fatigue
/// and hardly for bursting.
///
/// `out_of_round` is the largest less the smallest diameter, whatever share of which diameter it was given as. The first order
/// is for slightly oval tube: at a fifth of the middle diameter, diameter less wall, an ellipse's true peak is 5 to 8 % higher,
/// and more is refused (a limit of ours).
///
/// # Errors
/// `NOT_A_NUMBER` or `OUT_OF_RANGE`, also for more than a fifth of the middle diameter.
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
    let middle = od - wall;
    if apart > SLIGHTLY_OVAL * middle {
        let most = at_most(SLIGHTLY_OVAL * middle);
        return Err(Problem::new(Code::OutOfRange, Part::Field("out_of_round".to_owned()))
            .got(Value::Length(out_of_round))
            .need(Value::text(format!("at most {most}, a fifth of the diameter less the wall")))
            .why("the formula is of first order, for slightly oval tube")
            .fix("a rounder tube; nothing here says what a flatter one bears")
            .into());
    }
    Ok(ratio(oval_factor(middle, wall, apart / middle, pressure, modulus, poisson)))
}
