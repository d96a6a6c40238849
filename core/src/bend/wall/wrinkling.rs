//! Whether the inside of a bend would wrinkle if nothing held it.
//!
//! Criterion: plastic bifurcation of a long thin cylinder under even compression into rings, with the incremental moduli of
//! deformation theory. Per square of its slope a wave of wave number k costs C t^3 k^2 / 12 by bending the wall, t thick,
//! and t H / (r k)^2 by stretching its hoop, of radius r, while the stress s does the work s t; C is the modulus of a strip
//! that cannot move sidewise, H that of a free hoop. The cheapest wave pays at s = t/r sqrt(C H / 3), which for an
//! incompressible metal is (2/3) sqrt(Es Et) t/r with the secant and the tangent modulus, and for a stress K e^n a strain
//! of (2/3) sqrt(n) t/r whatever K. Derived here; a test finds the cheapest wave by trying.
//!
//! Paquette and Kyriakides, Int. J. Mechanical Sciences 48 (2006) 855 (abstract seen), take the onset in stainless cylinders
//! of D/t 28.3 and 39.8 from the same theory and report good agreement once the metal's anisotropy, left out here, is taken
//! in; the wrinkles then grew stably for a while before the load fell.
//!
//! What else it leaves out: a bend compresses its inside only and flattens; a groove that fits, or a mandrel, holds the wall
//! back, which is how bends far beyond the criterion are made. It has not been compared with bends.

use super::BentWall;
use crate::bounds;
use crate::error::Error;
use crate::math::sqrt;
use crate::units::{Ratio, ratio};

/// Thickest wall, as a share of its middle radius, that is still a thin shell: one in ten, a usual limit of textbooks (from
/// memory); the tests cited above had 1/14 and 1/19.
const THIN: f64 = 0.1;
/// Smallest critical strain that is plastic enough for a power law: twice and more the strain at a proof stress (ours, no
/// source). Below it a cylinder buckles elastically and far sooner than a perfect one.
const PLASTIC: f64 = 0.005;
/// Strain beyond which every metal of tube has yielded: titanium of high strength is elastic to about 0.008, from memory. The
/// criterion is one of plastic metal, and its power law makes even the slightest compression plastic.
const YIELDED: f64 = 0.01;

/// The compression inside a bend held against what a free, thin cylinder bears before it wrinkles.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FreeWrinkling {
    compression: f64,
    critical: f64,
    share: f64,
}

impl BentWall {
    /// Whether the inside of the bend would wrinkle or kink if nothing held it, as in the hands, for a metal of hardening
    /// exponent n: a thin wall and a tight radius do. What a groove that fits makes of it is not known here.
    ///
    /// Plastic bifurcation of a thin cylinder under even compression, deformation theory: a strain of (2/3) sqrt(n) t/r,
    /// held against r/R, both at the middle of the wall. It holds for walls up to a tenth of that radius. A thicker wall
    /// bears at least what one of a tenth does, and more is not known of it: most brake tube is that thick, so that the
    /// answer about an everyday bend of it is "not known" and no alarm. A bend of less than 1 % of compression may be elastic,
    /// whatever the exponent, and is never said to wrinkle. Where a text allows a radius, see
    /// [`radius_rules`](super::radius_rules).
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE` for the exponent.
    ///
    /// ```
    /// use linewright::bend::wall::BentWall;
    /// use linewright::units::{inch, mm, ratio};
    /// use linewright::{Material, Tube};
    /// let brake = Tube::new(inch(3.0 / 16.0), inch(0.028), Material::LowCarbonSteel)?;
    /// assert_eq!(BentWall::new(&brake, mm(14.3))?.free_wrinkling(ratio(0.21))?.needs_groove(), None);
    /// let thin = Tube::new(mm(25.0), mm(0.5), Material::LowCarbonSteel)?;
    /// assert_eq!(BentWall::new(&thin, mm(37.5))?.free_wrinkling(ratio(0.21))?.needs_groove(), Some(true));
    /// # Ok::<(), linewright::Error>(())
    /// ```
    pub fn free_wrinkling(&self, exponent: Ratio) -> Result<FreeWrinkling, Error> {
        let exponent = bounds::HARDENING_EXPONENT.ratio(exponent)?.value;
        let middle = (self.od_mm - self.wall_mm) / 2.0;
        let neutral = self.radius_mm - self.shift_mm;
        let share = self.wall_mm / middle;
        let counted = if share < THIN { share } else { THIN };
        Ok(FreeWrinkling {
            compression: (middle - self.shift_mm) / neutral,
            critical: 2.0 / 3.0 * sqrt(exponent) * counted,
            share,
        })
    }
}

impl FreeWrinkling {
    /// Compression of the middle of the wall inside the bend.
    #[must_use]
    pub fn compression(&self) -> Ratio {
        ratio(self.compression)
    }

    /// Compression at which a free cylinder of this wall begins to wrinkle; of a wall beyond a tenth of its radius, that of
    /// a tenth, which it bears at least.
    #[must_use]
    pub fn critical(&self) -> Ratio {
        ratio(self.critical)
    }

    /// Wall as a share of its middle radius; the criterion holds up to a tenth.
    #[must_use]
    pub fn wall_share(&self) -> Ratio {
        ratio(self.share)
    }

    /// Whether the tube is thin enough for the criterion.
    #[must_use]
    pub fn is_thin(&self) -> bool {
        self.share <= THIN
    }

    /// Whether the inside would wrinkle unless a groove that fits, or a mandrel, holds it; None where the criterion does not
    /// say. That it needs one is no verdict on a bend that has one.
    #[must_use]
    pub fn needs_groove(&self) -> Option<bool> {
        if self.compression > self.critical {
            (self.is_thin() && self.compression >= YIELDED).then_some(true)
        } else if self.critical < PLASTIC {
            None
        } else {
            Some(false)
        }
    }

    /// The same in words, with the reason where it is not known.
    #[must_use]
    pub fn words(&self) -> &'static str {
        match self.needs_groove() {
            Some(false) => "not even a tube that nothing holds would wrinkle",
            Some(true) => {
                "a tube that nothing holds would wrinkle: the bend relies on a groove that fits or on a mandrel"
            }
            None if self.is_thin() && self.compression > self.critical => {
                "not known: so slight a bend may be elastic, which the criterion does not cover"
            }
            None if self.is_thin() => {
                "not known: a wall so thin, or of so little hardening, can buckle before it yields"
            }
            None => {
                "not known: the wall is thicker than a tenth of its radius, which the criterion does not cover"
            }
        }
    }
}
