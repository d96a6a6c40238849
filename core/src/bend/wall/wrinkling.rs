//! Whether the inside of a bend would wrinkle if nothing held it.
//!
//! Criterion: plastic bifurcation of a long thin cylinder under even compression into rings, with the incremental moduli of
//! deformation theory. The energy of a wave of wave number k along a wall of radius r and thickness t is C t^3 k^2 / 12
//! from bending plus t H / (r k)^2 from the hoop, against the work of the stress; C is the modulus of a strip that cannot
//! move sidewise, H that of a free hoop. The wave that needs least gives a stress of t/r sqrt(C H / 3), which for an
//! incompressible metal is (2/3) sqrt(Es Et) t/r, and for stress K e^n a strain of (2/3) sqrt(n) t/r whatever K. Derived
//! here; a test finds the wave by trying. Compression tests on stainless cylinders of D/t 28.3 and 39.8 agreed with that
//! theory in stress and wave length, and their wrinkles then grew slowly and stably long before they collapsed: Paquette
//! and Kyriakides, Int. J. Mechanical Sciences 48 (2006) 855 (abstract seen).
//!
//! What it leaves out: a bend compresses its inside only and flattens; a groove that fits, or a mandrel, holds the wall
//! back, which is how bends far beyond the criterion are made every day. It has not been compared with bends.

use super::BentWall;
use crate::bounds;
use crate::error::Error;
use crate::math::sqrt;
use crate::units::{Ratio, ratio};

/// Thickest wall, as a share of its middle radius, that is still a thin shell: one in ten, a usual limit of textbooks (from
/// memory); the tests that were found had 1/14 and 1/19.
const THIN: f64 = 0.1;
/// Smallest critical strain that is plastic enough for a power law: twice and more the strain at a proof stress (ours, no
/// source). Below it a cylinder buckles elastically and far sooner than a perfect one.
const PLASTIC: f64 = 0.005;

/// What the criterion of a free, thin cylinder says about the inside of a bend.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum WrinklingVerdict {
    /// Even a tube that nothing holds would not wrinkle.
    Below,
    /// A thin tube that nothing holds would wrinkle: the bend relies on a groove that fits or on a mandrel.
    Beyond,
    /// The tube is outside of what the criterion holds for.
    NotKnown,
}

impl WrinklingVerdict {
    /// All verdicts.
    pub const ALL: [WrinklingVerdict; 3] =
        [WrinklingVerdict::Below, WrinklingVerdict::Beyond, WrinklingVerdict::NotKnown];

    /// The name, the same in every language.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            WrinklingVerdict::Below => "below",
            WrinklingVerdict::Beyond => "beyond",
            WrinklingVerdict::NotKnown => "not known",
        }
    }
}

/// The compression inside a bend held against what a free, thin cylinder bears before it wrinkles.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Wrinkling {
    compression: f64,
    critical: f64,
    share: f64,
}

impl BentWall {
    /// Whether the inside of the bend would wrinkle if nothing held it, for a metal of hardening exponent n.
    ///
    /// Plastic bifurcation of a thin cylinder under even compression, deformation theory: a strain of (2/3) sqrt(n) t/r,
    /// held against r/R, both at the middle of the wall. It holds for walls up to a tenth of that radius. A thicker wall
    /// bears at least what one of a tenth does, and more is not known of it: most brake tube is that thick, so that the
    /// answer about an everyday bend of it is "not known" and no alarm. Where a text allows a radius, see
    /// [`radius_rules`](super::radius_rules).
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE` for the exponent.
    ///
    /// ```
    /// use linewright::bend::wall::{BentWall, WrinklingVerdict};
    /// use linewright::units::{inch, mm, ratio};
    /// use linewright::{Material, Tube};
    /// let brake = Tube::new(inch(3.0 / 16.0), inch(0.028), Material::LowCarbonSteel)?;
    /// let bent = BentWall::new(&brake, mm(14.3))?.wrinkling(ratio(0.21))?;
    /// assert_eq!(bent.verdict(), WrinklingVerdict::NotKnown);
    /// let thin = Tube::new(mm(25.0), mm(0.5), Material::LowCarbonSteel)?;
    /// let bent = BentWall::new(&thin, mm(37.5))?.wrinkling(ratio(0.21))?;
    /// assert_eq!(bent.verdict(), WrinklingVerdict::Beyond);
    /// # Ok::<(), linewright::Error>(())
    /// ```
    pub fn wrinkling(&self, exponent: Ratio) -> Result<Wrinkling, Error> {
        let exponent = bounds::HARDENING_EXPONENT.ratio(exponent)?.value;
        let middle = (self.od_mm - self.wall_mm) / 2.0;
        let neutral = self.radius_mm - self.shift_mm;
        let share = self.wall_mm / middle;
        let counted = if share < THIN { share } else { THIN };
        Ok(Wrinkling {
            compression: (middle - self.shift_mm) / neutral,
            critical: 2.0 / 3.0 * sqrt(exponent) * counted,
            share,
        })
    }
}

impl Wrinkling {
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

    /// What follows.
    #[must_use]
    pub fn verdict(&self) -> WrinklingVerdict {
        if self.compression > self.critical {
            if self.is_thin() { WrinklingVerdict::Beyond } else { WrinklingVerdict::NotKnown }
        } else if self.critical < PLASTIC {
            WrinklingVerdict::NotKnown
        } else {
            WrinklingVerdict::Below
        }
    }

    /// The verdict in a sentence.
    #[must_use]
    pub fn words(&self) -> &'static str {
        match self.verdict() {
            WrinklingVerdict::Below => "not even a tube that nothing holds would wrinkle",
            WrinklingVerdict::Beyond => {
                "a tube that nothing holds would wrinkle; the bend relies on a groove that fits or on a mandrel"
            }
            WrinklingVerdict::NotKnown if self.is_thin() => {
                "not known: so thin or so little hardening a wall can buckle before it yields"
            }
            WrinklingVerdict::NotKnown => {
                "not known: the wall is thicker than a tenth of its radius, which the criterion does not cover"
            }
        }
    }
}
