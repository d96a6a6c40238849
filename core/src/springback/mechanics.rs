//! Springback from mechanics: the moment that bends a thick round tube, and what of the bend remains when it is let go.
//! An estimate for the time before there are trial bends.
//!
//! Plane sections stay plane and the neutral axis in the middle, so the strain at a height y is y / R. Up to the yield
//! stress the wall is elastic, beyond it it follows one of three laws. Letting go unloads elastically: the curvature falls
//! by M / (E I), so of an angle the share q = M R / (E I) springs back and the radius grows from R to R / (1 - q). Where the
//! moment falls to zero along the arm of the tool the straight there springs back too, which adds M d / (2 E I) to every
//! bend, whatever its angle.
//!
//! Left out: flattening of the section, the fall of the modulus with strain, creep, friction in the tool; see the module
//! above. A neutral axis moved by true strain changes the moment of a 3/16 in tube on three diameters by 0.08 % (computed),
//! and the scatter of the metal's own data far more.

use super::kernel::{self, Held, disc_inertia};
use super::{Basis, Prior, Springback};
use crate::bounds;
use crate::code::Code;
use crate::error::Error;
use crate::math::{atan2, exp, ln, pow, sqrt};
use crate::problem::Value;
use crate::statistics::ln_gamma;
use crate::units::{
    Angle, Length, Moment, Pressure, Ratio, deg, mm, n_mm, rad, ratio, to_deg, to_mm, to_mpa,
};
use std::f64::consts::PI;

/// What the wall does beyond its yield stress.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Hardening {
    /// The stress stays at yield.
    PerfectlyPlastic {
        /// Yield stress.
        yield_strength: Pressure,
    },
    /// The stress rises with a tangent modulus.
    Bilinear {
        /// Yield stress.
        yield_strength: Pressure,
        /// Slope beyond it.
        tangent_modulus: Pressure,
    },
    /// The stress is K e^n where that lies below the elastic line's continuation, and elastic before.
    PowerLaw {
        /// K.
        strength_coefficient: Pressure,
        /// n, from 0 to below 1.
        hardening_exponent: Ratio,
    },
}

/// A tube of known material data, to be bent: an estimate of its springback for the time before there are trial bends.
///
/// Left out are flattening of the section, the fall of the modulus with strain, creep and friction in the tool, and it has not
/// been compared with bends. The moment is in closed form without hardening or with a straight line of it, and with a power law
/// by a series and a quadrature of 24 points; either is within 1e-10 of a quadrature with 30 digits, and the share that springs
/// back within 1e-12.
///
/// ```
/// use linewright::springback::{Hardening, Mechanics};
/// use linewright::units::{deg, inch, mm, mpa, to_deg, to_mm};
/// let law = Hardening::PerfectlyPlastic { yield_strength: mpa(250.0) };
/// let tube = Mechanics::new(inch(3.0 / 16.0), inch(0.028), mpa(207_000.0), law)?;
/// let bent = tube.bend(mm(14.2875))?;
/// assert!((to_mm(bent.formed_radius().unwrap()) - 14.441).abs() < 5e-4);
/// let springback = bent.springback(mm(0.0))?;
/// assert!((to_deg(springback.setting(deg(90.0))?) - 90.967).abs() < 5e-4);
/// # Ok::<(), linewright::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Mechanics {
    outer_mm: f64,
    bore_mm: f64,
    modulus_mpa: f64,
    law: Law,
}

/// The law in plain numbers.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Law {
    Bilinear { yield_mpa: f64, tangent_mpa: f64 },
    Power { coefficient_mpa: f64, exponent: f64 },
}

/// A tube held at a radius, and what it would do when let go: an estimate, see [`Mechanics`].
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HeldBend {
    radius_mm: f64,
    moment_nmm: f64,
    stiffness_nmm2: f64,
}

/// Integral of y^(1+n) over the part of a disc above the height `c` on both sides: y^(1+n) times the chord, twice.
fn disc_power(r: f64, c: f64, n: f64) -> f64 {
    // Beyond this height the part above is integrated, below it the part underneath is taken off the whole.
    const SPLIT: f64 = 0.6;
    if c >= r {
        return 0.0;
    }
    let scale = pow(r, n + 3.0);
    if c > SPLIT * r {
        // y = r sin a: smooth from the height to the top.
        let (from, to) = (atan2(c, sqrt((r - c) * (r + c))), PI / 2.0);
        let (middle, half) = ((from + to) / 2.0, (to - from) / 2.0);
        let mut sum = 0.0;
        for (node, weight) in NODES {
            for a in [middle - half * node, middle + half * node] {
                let (s, cosine) = crate::math::sin_cos(a);
                sum += weight * pow(s, n + 1.0) * cosine * cosine;
            }
        }
        return 4.0 * scale * half * sum;
    }
    let whole = 2.0 * sqrt(PI) * exp(ln_gamma(n / 2.0 + 1.0) - ln_gamma((n + 3.0) / 2.0)) / (n + 3.0);
    // The chord as a binomial series of the height; its terms fall by at least 0.36 each.
    let x = c / r;
    let (mut term, mut below) = (1.0, 1.0 / (n + 2.0));
    for k in 1..40_u32 {
        let k = f64::from(k);
        term *= (k - 1.5) / k * x * x;
        below += term / (n + 2.0 + 2.0 * k);
    }
    let below = if x > 0.0 { 4.0 * pow(x, n + 2.0) * below } else { 0.0 };
    scale * (whole - below)
}

/// Positive nodes and weights of the Gauss-Legendre rule with 24 points (computed with 50 digits from the roots of the
/// Legendre polynomial).
const NODES: [(f64, f64); 12] = [
    (0.064_056_892_862_605_63, 0.127_938_195_346_752_16),
    (0.191_118_867_473_616_3, 0.125_837_456_346_828_3),
    (0.315_042_679_696_163_4, 0.121_670_472_927_803_39),
    (0.433_793_507_626_045_1, 0.115_505_668_053_725_6),
    (0.545_421_471_388_839_6, 0.107_444_270_115_965_63),
    (0.648_093_651_936_975_5, 0.097_618_652_104_113_88),
    (0.740_124_191_578_554_4, 0.086_190_161_531_953_27),
    (0.820_001_985_973_903, 0.073_346_481_411_080_3),
    (0.886_415_527_004_401_1, 0.059_298_584_915_436_78),
    (0.938_274_552_002_732_8, 0.044_277_438_817_419_81),
    (0.974_728_555_971_309_5, 0.028_531_388_628_933_663),
    (0.995_187_219_997_021_3, 0.012_341_229_799_987_2),
];

impl Mechanics {
    /// A tube by its size, its elastic modulus and what its wall does beyond yield.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE`, also where the wall leaves no bore or the law is stiffer than the elastic line.
    pub fn new(
        od: Length,
        wall: Length,
        modulus: Pressure,
        hardening: Hardening,
    ) -> Result<Mechanics, Error> {
        let (od, wall) = (bounds::OD.length(od)?, bounds::WALL.length(wall)?);
        let modulus_mpa = to_mpa(bounds::MODULUS.pressure(modulus)?);
        let bore_mm = to_mm(od) / 2.0 - to_mm(wall);
        if bore_mm < 0.0 {
            let need = Value::text("a wall of at most half the outside diameter");
            return Err(Error::field(Code::OutOfRange, "wall", Value::Length(wall), need));
        }
        let softer = |name: &'static str, value: Pressure| {
            if to_mpa(value) < modulus_mpa {
                return Ok(to_mpa(value));
            }
            let need = Value::text("less than the elastic modulus");
            Err(Error::field(Code::OutOfRange, name, Value::Pressure(value), need))
        };
        let law = match hardening {
            Hardening::PerfectlyPlastic { yield_strength } => Law::Bilinear {
                yield_mpa: softer("yield_strength", bounds::YIELD_STRENGTH.pressure(yield_strength)?)?,
                tangent_mpa: 0.0,
            },
            Hardening::Bilinear { yield_strength, tangent_modulus } => Law::Bilinear {
                yield_mpa: softer("yield_strength", bounds::YIELD_STRENGTH.pressure(yield_strength)?)?,
                tangent_mpa: softer("tangent_modulus", bounds::TANGENT_MODULUS.pressure(tangent_modulus)?)?,
            },
            Hardening::PowerLaw { strength_coefficient, hardening_exponent } => Law::Power {
                coefficient_mpa: softer(
                    "strength_coefficient",
                    bounds::YIELD_STRENGTH.pressure(strength_coefficient)?,
                )?,
                exponent: bounds::HARDENING_EXPONENT.ratio(hardening_exponent)?.value,
            },
        };
        Ok(Mechanics { outer_mm: to_mm(od) / 2.0, bore_mm, modulus_mpa, law })
    }

    /// Height from the middle up to which a power law leaves the wall elastic, where E e = K e^n.
    fn core(&self, radius_mm: f64, coefficient_mpa: f64, exponent: f64) -> f64 {
        radius_mm * exp(ln(coefficient_mpa / self.modulus_mpa) / (1.0 - exponent))
    }

    fn moment(&self, radius_mm: f64) -> f64 {
        let curvature = 1.0 / radius_mm;
        let held = |strength: f64, tangent: f64| Held {
            outer: self.outer_mm,
            bore: self.bore_mm,
            modulus: self.modulus_mpa,
            yield_strength: strength,
            tangent,
            radius: radius_mm,
        };
        match self.law {
            Law::Bilinear { yield_mpa, tangent_mpa } => kernel::moment(&held(yield_mpa, tangent_mpa)),
            Law::Power { coefficient_mpa, exponent } => {
                let core = self.core(radius_mm, coefficient_mpa, exponent);
                let disc = |r: f64| {
                    let elastic = curvature * self.modulus_mpa * kernel::elastic_inertia(r, core);
                    elastic + coefficient_mpa * pow(curvature, exponent) * disc_power(r, core, exponent)
                };
                disc(self.outer_mm) - disc(self.bore_mm)
            }
        }
    }

    /// The tube held at a center-line radius, as by the groove of a former.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE`, also for a radius of no more than half the tube.
    pub fn bend(&self, radius: Length) -> Result<HeldBend, Error> {
        let radius_mm = to_mm(bounds::HELD_RADIUS.length(radius)?);
        if radius_mm <= self.outer_mm {
            let need = Value::text(format!("more than half the tube, {}", Value::Length(mm(self.outer_mm))));
            return Err(Error::field(Code::OutOfRange, "radius", Value::Length(radius), need));
        }
        Ok(HeldBend {
            radius_mm,
            moment_nmm: self.moment(radius_mm),
            stiffness_nmm2: self.modulus_mpa * (disc_inertia(self.outer_mm) - disc_inertia(self.bore_mm)),
        })
    }
}

/// How far a material's data may be off, each as a share of its value.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MaterialScatter {
    /// Of the yield strength or the coefficient of the power law.
    pub strength: Ratio,
    /// Of the elastic modulus.
    pub modulus: Ratio,
}

impl Mechanics {
    /// The same tube with its strength and its modulus off by shares.
    fn shifted(&self, strength: f64, modulus: f64) -> Result<Mechanics, Error> {
        let modulus_mpa = self.modulus_mpa * (1.0 + modulus);
        let law = match self.law {
            Law::Bilinear { yield_mpa, tangent_mpa } => {
                Law::Bilinear { yield_mpa: yield_mpa * (1.0 + strength), tangent_mpa }
            }
            Law::Power { coefficient_mpa, exponent } => {
                Law::Power { coefficient_mpa: coefficient_mpa * (1.0 + strength), exponent }
            }
        };
        let stiffest = match law {
            Law::Bilinear { yield_mpa, tangent_mpa } => yield_mpa.max(tangent_mpa),
            Law::Power { coefficient_mpa, .. } => coefficient_mpa,
        };
        if stiffest < modulus_mpa {
            return Ok(Mechanics { modulus_mpa, law, ..*self });
        }
        let need = Value::text("a scatter that leaves the strength below the elastic modulus");
        Err(Error::field(Code::OutOfRange, "scatter", Value::Ratio(ratio(strength)), need))
    }

    /// Least and most setting for a wanted angle while strength and modulus scatter: weakest and stiffest material, then
    /// strongest and softest. A harder wall always springs back more and a stiffer one less, so the corners are enough. What
    /// the model leaves out is not in this interval.
    ///
    /// # Errors
    /// As [`Mechanics::bend`] and [`HeldBend::springback`]; `OUT_OF_RANGE` for a negative share or one above 0.8, and for
    /// one that makes the metal stronger than it is stiff.
    pub fn setting_range(
        &self,
        radius: Length,
        arm: Length,
        wanted: Angle,
        scatter: MaterialScatter,
    ) -> Result<[Angle; 2], Error> {
        let strength = bounds::SCATTER_SHARE.ratio(scatter.strength)?.value;
        let modulus = bounds::SCATTER_SHARE.ratio(scatter.modulus)?.value;
        let setting = |strength: f64, modulus: f64| {
            self.shifted(strength, modulus)?.bend(radius)?.springback(arm)?.setting(wanted)
        };
        Ok([setting(-strength, modulus)?, setting(strength, -modulus)?])
    }

    /// What mechanics believes before any trial, to be weighed against trials: the estimate, spread as the material's data
    /// scatter (here one standard deviation of each), and a scatter of one bend that counts like `worth` bends. The two parts
    /// come from one moment, and so are off together where the tool has an arm.
    ///
    /// # Errors
    /// As [`Mechanics::setting_range`]; `OUT_OF_RANGE` also where nothing scatters, and for a worth of no bend.
    pub fn prior(
        &self,
        radius: Length,
        arm: Length,
        scatter: MaterialScatter,
        bend_scatter: Angle,
        worth: usize,
    ) -> Result<Prior, Error> {
        let strength = bounds::SCATTER_SHARE.ratio(scatter.strength)?.value;
        let modulus = bounds::SCATTER_SHARE.ratio(scatter.modulus)?.value;
        let line = self.bend(radius)?.springback(arm)?;
        let spread = |strength: f64, modulus: f64| -> Result<(f64, f64), Error> {
            let other = self.shifted(strength, modulus)?.bend(radius)?.springback(arm)?;
            Ok((
                to_deg(other.constant()) - to_deg(line.constant()),
                other.proportional().value - line.proportional().value,
            ))
        };
        let (by_strength, by_modulus) = (spread(strength, 0.0)?, spread(0.0, modulus)?);
        let both = |a: f64, b: f64| sqrt(a * a + b * b);
        // A tool without an arm in the model still has one: the constant may be off by what one bend scatters.
        let constant = both(both(by_strength.0, by_modulus.0), to_deg(bend_scatter));
        let proportional = both(by_strength.1, by_modulus.1);
        let together = by_strength.0 * by_strength.1 + by_modulus.0 * by_modulus.1;
        let correlation = if together > 0.0 { together / (constant * proportional) } else { 0.0 };
        let prior = Prior {
            constant: [line.constant(), deg(constant)],
            proportional: [line.proportional(), ratio(proportional)],
            correlation: ratio(correlation.min(bounds::CORRELATION.max)),
            scatter: bend_scatter,
            worth,
        };
        prior.check().map(|()| prior)
    }
}

impl HeldBend {
    /// The radius it is held at.
    #[must_use]
    pub fn radius(&self) -> Length {
        mm(self.radius_mm)
    }

    /// The bending moment.
    #[must_use]
    pub fn moment(&self) -> Moment {
        n_mm(self.moment_nmm)
    }

    /// Share of the angle that springs back; 1 where the tube never leaves its elastic range.
    #[must_use]
    pub fn share(&self) -> Ratio {
        ratio(self.moment_nmm * self.radius_mm / self.stiffness_nmm2)
    }

    /// Radius as formed, after letting go; None where nothing of the bend remains.
    #[must_use]
    pub fn formed_radius(&self) -> Option<Length> {
        // Below this share nothing remains that could be told from rounding.
        const NOTHING_LEFT: f64 = 1e-9;
        let left = 1.0 - self.share().value;
        (left > NOTHING_LEFT).then(|| mm(self.radius_mm / left))
    }

    /// The springback as a line over the set angle, for a tool whose moment falls to zero along an arm; 0 mm leaves the
    /// constant part out.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE`, also where so much springs back that no setting is credible.
    pub fn springback(&self, arm: Length) -> Result<Springback, Error> {
        let arm_mm = to_mm(bounds::ARM.length(arm)?);
        let constant = rad(self.moment_nmm * arm_mm / (2.0 * self.stiffness_nmm2));
        Ok(Springback::new(constant, self.share())?.resting_on(Basis::Mechanics))
    }
}
