//! The moment of an elastic, then linearly hardening tube on plain numbers, and what remains of its curvature, one or many
//! side by side.
//!
//! **Two ways.** The moment adds what the elastic core and the yielded rest carry, which is exact where nearly all has yielded.
//! The curvature that remains comes from what the tube carries less than an elastic one, which is exact where next to nothing
//! has. Either way the other figure would be a difference of two nearly equal ones.
//!
//! **Polynomial.** A disc of radius 1 that is elastic up to the height `t` carries, of its curvature and modulus, `asin(t) / 2
//! + t sqrt(1 - t^2) (5 - 2 t^2) / 6`. What is missing to `pi / 4` vanishes as the power 5/2 of `u = 1 - t`; the quotient
//! of both is smooth, and [`LOST`] is its Chebyshev fit on `[0, 1]`, made with mpmath at 60 digits and rounded to double
//! (within 1e-16). `tests/python/make_math_reference.py` holds the recipe and its test compares these very lines.

use crate::bounds;
use crate::code::Code;
use crate::error::Error;
use crate::math::asin_folded;
use crate::problem::{Part, Problem, Value};
use crate::units::{Curvature, Length, Pressure, per_mm};
use std::f64::consts::{FRAC_PI_2, FRAC_PI_4};

/// A tube held at a radius: lengths in mm, stresses in MPa.
#[derive(Clone, Copy)]
pub(super) struct Held {
    pub(super) outer: f64,
    pub(super) bore: f64,
    pub(super) modulus: f64,
    pub(super) yield_strength: f64,
    pub(super) tangent: f64,
    pub(super) radius: f64,
}

/// Second moment of the part of a disc within the height `c` of its diameter, and the cube of the distance from there to
/// its rim along the chord. `inverse` is one over the radius; any number will do for a disc of radius 0.
///
/// The angle under which the height is seen comes from `r - c`, which is exact near the rim: from `c / r` alone its last
/// bit would be worth 1e-8 of the whole there.
#[inline(always)]
fn within(r: f64, inverse: f64, c: f64) -> (f64, f64) {
    let square = r * r;
    let h2 = (r - c) * (r + c);
    let h = h2.sqrt();
    let angle = asin_folded(c * inverse, 0.5 * (r - c) * inverse);
    let inertia = 0.5 * (square * square * angle - c * h * (square - 2.0 * c * c));
    (inertia, h2 * h)
}

/// Second moment of the part of a disc that stays elastic.
pub(super) fn elastic_inertia(r: f64, core: f64) -> f64 {
    if r > 0.0 { within(r, 1.0 / r, if core < r { core } else { r }).0 } else { 0.0 }
}

/// Second moment of a disc about its diameter.
#[inline(always)]
pub(super) fn disc_inertia(r: f64) -> f64 {
    let square = r * r;
    // As `within` has it, so that a wall that is elastic to its surface leaves exactly nothing.
    0.5 * (square * square * FRAC_PI_2)
}

/// Moment in N mm; of a tube that stays elastic that of its whole second moment.
pub(super) fn moment(held: &Held) -> f64 {
    let core = held.yield_strength / held.modulus * held.radius;
    let harder = held.tangent / held.modulus;
    let disc = |r: f64| {
        // A solid bar has no bore, and nothing divides by it.
        let (elastic, h3) =
            if r > 0.0 { within(r, 1.0 / r, if core < r { core } else { r }) } else { (0.0, 0.0) };
        elastic + harder * (disc_inertia(r) - elastic) + (1.0 - harder) * core * (4.0 / 3.0 * h3)
    };
    (disc(held.outer) - disc(held.bore)) * held.modulus / held.radius
}

/// See the polynomial of the module, lowest first.
const LOST: [f64; 16] = [
    1.5084944665313014,
    -0.8081220356417494,
    0.07856742013021481,
    0.005356869608587818,
    0.0008498870137158428,
    0.00018415230930884433,
    4.7321560124231905e-05,
    1.3949365659420797e-05,
    3.1697028359652717e-06,
    3.968472202742133e-06,
    -3.998992643702764e-06,
    5.798127175843228e-06,
    -4.914794935229228e-06,
    2.990422580307954e-06,
    -1.0718280942506922e-06,
    1.9141116366921646e-07,
];

/// What a disc of radius 1 carries less than an elastic one, where it yields without hardening down to `u` below its surface;
/// exactly nothing where it does not.
#[inline(always)]
#[expect(
    clippy::disallowed_methods,
    reason = "product and sum rounded once are half the work; a processor without them is slow here, with the same bits"
)]
fn lost(u: f64) -> f64 {
    // In pairs and pairs of pairs, as the arcsine has it.
    let u2 = u * u;
    let u4 = u2 * u2;
    let pair = |i: usize| LOST[i + 1].mul_add(u, LOST[i]);
    let four = |i: usize| pair(i + 2).mul_add(u2, pair(i));
    let eight = |i: usize| four(i + 4).mul_add(u4, four(i));
    (u2 * u.sqrt()) * eight(8).mul_add(u4 * u4, eight(0))
}

/// A disc in what is lost of a tube: how deep it has yielded, as a share of its radius, and the curvature that remains for
/// each unit that it loses.
struct Disc {
    depth: f64,
    weight: f64,
}

/// The two discs whose difference is the tube: to its surface, and to its bore.
#[inline(always)]
fn discs(held: &Held) -> [Disc; 2] {
    let (outer, bore) = (held.outer, held.bore);
    // A solid bar has no bore, and nothing divides by it.
    let divisor = if bore > 0.0 { bore } else { 1.0 };
    // One division for three, because they take longest.
    let inverse = 1.0 / (outer * divisor * held.modulus);
    let softness = outer * divisor * inverse;
    let core = held.yield_strength * softness * held.radius;
    let (outer2, bore2) = (outer * outer, bore * bore);
    let inertia = FRAC_PI_4 * ((outer - bore) * (outer + bore)) * (outer2 + bore2);
    // Not the quotient at once: so both divisions run side by side.
    let each = (1.0 - held.tangent * softness) * (1.0 / (inertia * held.radius));
    let disc = |r: f64, square: f64, inverse: f64| {
        let above = if core < r { r - core } else { 0.0 };
        Disc { depth: above * inverse, weight: square * square * each }
    };
    [disc(outer, outer2, divisor * held.modulus * inverse), disc(bore, bore2, outer * held.modulus * inverse)]
}

/// Whether a row is a tube that can be held so, as a mask: what the constructor and [`Mechanics::bend`](super::Mechanics::bend)
/// ask, without a branch. Never for NaN.
#[inline(always)]
fn is_tube(od: f64, wall: f64, held: &Held) -> bool {
    let within = |bound: &bounds::Bound, value: f64| (value >= bound.min) & (value <= bound.max);
    within(&bounds::OD, od)
        & within(&bounds::WALL, wall)
        & within(&bounds::MODULUS, held.modulus)
        & within(&bounds::YIELD_STRENGTH, held.yield_strength)
        & within(&bounds::TANGENT_MODULUS, held.tangent)
        & within(&bounds::HELD_RADIUS, held.radius)
        & (held.bore >= 0.0)
        & (held.yield_strength < held.modulus)
        & (held.tangent < held.modulus)
        & (held.radius > held.outer)
}

/// Columns of tubes held at radii, all of one length; see [`Columns::remaining`].
#[derive(Debug, Clone, Copy)]
pub struct Columns<'a> {
    /// Outside diameter.
    pub od: &'a [Length],
    /// Wall.
    pub wall: &'a [Length],
    /// Elastic modulus.
    pub modulus: &'a [Pressure],
    /// Yield strength.
    pub yield_strength: &'a [Pressure],
    /// Tangent modulus beyond yield.
    pub tangent_modulus: &'a [Pressure],
    /// Center-line radius that the tube is held at.
    pub radius: &'a [Length],
}

impl Columns<'_> {
    /// The curvature that remains of every bend after letting go, in the order of the rows; zero where the tube stays
    /// elastic. Uses the widest instructions that the processor has; the bits do not depend on it. An estimate as that of
    /// [`Mechanics`](super::Mechanics), which leaves out the same.
    ///
    /// A row that [`Mechanics::new`](super::Mechanics::new) or [`Mechanics::bend`](super::Mechanics::bend) would refuse, such
    /// as one without a bore's room for its wall, with a number missing or beyond its limits, gives NaN and never a number;
    /// no other row suffers. Ask them for the reason.
    ///
    /// # Errors
    /// `COUNT_MISMATCH` where the columns differ in length.
    ///
    /// ```
    /// use linewright::springback::Columns;
    /// use linewright::units::{mm, mpa};
    /// let tubes = Columns {
    ///     od: &[mm(4.7625)], wall: &[mm(0.7112)], modulus: &[mpa(207_000.0)], yield_strength: &[mpa(250.0)],
    ///     tangent_modulus: &[mpa(0.0)], radius: &[mm(14.2875)],
    /// };
    /// let remaining = tubes.remaining()?;
    /// assert!((1.0 / remaining[0].value - 14.441).abs() < 5e-4);
    /// # Ok::<(), linewright::Error>(())
    /// ```
    pub fn remaining(&self) -> Result<Vec<Curvature>, Error> {
        let mut out = vec![per_mm(0.0); self.od.len()];
        self.remaining_into(&mut out).map(|()| out)
    }

    /// [`Columns::remaining`] into memory that is there already.
    ///
    /// # Errors
    /// As there.
    pub fn remaining_into(&self, out: &mut [Curvature]) -> Result<(), Error> {
        let rows = self.od.len();
        let others = [
            self.wall.len(),
            self.modulus.len(),
            self.yield_strength.len(),
            self.tangent_modulus.len(),
            self.radius.len(),
            out.len(),
        ];
        if let Some(other) = others.into_iter().find(|other| *other != rows) {
            return Err(Problem::new(Code::CountMismatch, Part::Field("columns".to_owned()))
                .got(Value::Count(other))
                .need(Value::Count(rows))
                .why("the columns are of different lengths")
                .fix("giving every column one item for each tube")
                .into());
        }
        pulp::Arch::new().dispatch(Fill { tubes: self, out });
        Ok(())
    }
}

/// Rows that are gone through at once.
const BLOCK: usize = 128;

/// The loop over all rows, for the widest instructions that the processor has.
struct Fill<'a, 'b> {
    tubes: &'a Columns<'b>,
    out: &'a mut [Curvature],
}

impl pulp::WithSimd for Fill<'_, '_> {
    type Output = ();

    #[inline(always)]
    fn with_simd<S: pulp::Simd>(self, _: S) {
        let Fill { tubes, out } = self;
        // Two short loops over a few rows at a time: one row's divisions and root wait for each other, and a processor has
        // only so many instructions in sight to fill the wait with.
        let [mut depth, mut weight] = [[[0.0; BLOCK]; 2]; 2];
        for (block, out) in out.chunks_mut(BLOCK).enumerate() {
            // Every column is cut to the same length once, so that the loops have no check left in them and the compiler
            // makes vector instructions of them.
            let rows = block * BLOCK..block * BLOCK + out.len();
            let (od, wall) = (&tubes.od[rows.clone()], &tubes.wall[rows.clone()]);
            let (modulus, yields) = (&tubes.modulus[rows.clone()], &tubes.yield_strength[rows.clone()]);
            let (tangent, radius) = (&tubes.tangent_modulus[rows.clone()], &tubes.radius[rows]);
            for i in 0..out.len().min(BLOCK) {
                let outer = 0.5 * od[i].value;
                let held = Held {
                    outer,
                    bore: outer - wall[i].value,
                    modulus: modulus[i].value,
                    yield_strength: yields[i].value,
                    tangent: tangent[i].value,
                    radius: radius[i].value,
                };
                let [surface, bore] = discs(&held);
                let is_tube = is_tube(od[i].value, wall[i].value, &held);
                (depth[0][i], weight[0][i]) =
                    (surface.depth, if is_tube { surface.weight } else { f64::NAN });
                (depth[1][i], weight[1][i]) = (bore.depth, bore.weight);
            }
            for (i, out) in out.iter_mut().enumerate().take(BLOCK) {
                let left = weight[0][i] * lost(depth[0][i]) - weight[1][i] * lost(depth[1][i]);
                // One NaN for all reasons: its sign is the processor's.
                *out = per_mm(if left.is_nan() { f64::NAN } else { left });
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::springback::{Hardening, Mechanics};
    use crate::units::{mm, mpa};

    /// Tubes of all kinds, and a number of them that fills no vector: elastic, yielding in the wall, solid; and one in some
    /// dozens that is none, by each of its numbers.
    fn columns(rows: usize) -> [Vec<f64>; 6] {
        // Steps that share no factor, so that the kinds meet in every order.
        let step = |i: usize, by: usize, most: usize| (i * by % most) as f64 / most as f64;
        let of = |f: &dyn Fn(usize) -> f64| (0..rows).map(f).collect::<Vec<f64>>();
        let od = |i: usize| 3.0 + 9.0 * step(i, 7, 31);
        [
            of(&|i| if i % 211 == 17 { -od(i) } else { od(i) }),
            of(&|i| match i % 222 {
                5 | 42 | 79 | 116 => od(i) / 2.0,
                153 => 0.51 * od(i),
                190 => 0.0,
                _ => 0.1 + 1.3 * step(i, 11, 101),
            }),
            of(&|i| if i % 153 == 9 { f64::NAN } else { 70e3 + 140e3 * step(i, 13, 97) }),
            of(&|i| if i % 199 == 30 { 0.0 } else { 60.0 + 400.0 * step(i, 17, 89) }),
            of(&|i| match i % 3 {
                _ if i % 197 == 40 => f64::INFINITY,
                0 => 0.0,
                _ => 5e3 * step(i, 19, 83),
            }),
            of(&|i| match i % 193 {
                50 => -od(i),
                51 => 0.5 * od(i),
                _ => od(i) * (1.5 + 500.0 * step(i, 23, 79) * step(i, 23, 79)),
            }),
        ]
    }

    #[test]
    fn a_tube_that_stays_elastic_springs_back_whole() {
        for (od, wall) in [(4.7625, 0.7112), (12.0, 0.11), (10.0, 5.0), (60.0, 0.1), (1.0, 0.2)] {
            for radius in [1.0, 1.000_001, 3.0] {
                let [elastic_limit, modulus, yields] = [od / 2.0 * 207_000.0 / 250.0, 207_000.0, 250.0];
                let tubes = Columns {
                    od: &[mm(od)],
                    wall: &[mm(wall)],
                    modulus: &[mpa(modulus)],
                    yield_strength: &[mpa(yields)],
                    tangent_modulus: &[mpa(2_070.0)],
                    radius: &[mm((elastic_limit * radius).next_up().next_up())],
                };
                let left = tubes.remaining().unwrap()[0].value;
                assert_eq!(left.to_bits(), 0, "{od} {wall} {radius}: {left:e}");
            }
        }
    }

    #[test]
    fn every_vector_width_gives_the_same_bits() {
        for rows in [1, 2, 3, 7, 8, 9, 31, 2_003] {
            let [od, wall, modulus, yields, tangent, radius] = columns(rows);
            let lengths = |numbers: Vec<f64>| numbers.into_iter().map(mm).collect::<Vec<_>>();
            let stresses = |numbers: Vec<f64>| numbers.into_iter().map(mpa).collect::<Vec<_>>();
            let (od, wall, radius) = (lengths(od), lengths(wall), lengths(radius));
            let (modulus, yields, tangent) = (stresses(modulus), stresses(yields), stresses(tangent));
            let tubes = Columns {
                od: &od,
                wall: &wall,
                modulus: &modulus,
                yield_strength: &yields,
                tangent_modulus: &tangent,
                radius: &radius,
            };
            let bits = |fill: &dyn Fn(Fill<'_, '_>)| {
                let mut out = vec![per_mm(0.0); rows];
                fill(Fill { tubes: &tubes, out: &mut out });
                out.iter().map(|curvature| curvature.value.to_bits()).collect::<Vec<_>>()
            };
            let scalar = bits(&|fill| pulp::Arch::Scalar.dispatch(fill));
            assert_eq!(bits(&|fill| pulp::Arch::new().dispatch(fill)), scalar, "{rows} rows, as chosen");
            let mut missing: Vec<&str> = Vec::new();
            #[cfg(target_arch = "x86_64")]
            {
                match pulp::x86::V3::try_new() {
                    Some(arch) => {
                        assert_eq!(bits(&|fill| pulp::Arch::V3(arch).dispatch(fill)), scalar, "AVX2")
                    }
                    None => missing.push("AVX2"),
                }
                match pulp::x86::V4::try_new() {
                    Some(arch) => {
                        assert_eq!(bits(&|fill| pulp::Arch::V4(arch).dispatch(fill)), scalar, "AVX-512")
                    }
                    None => missing.push("AVX-512"),
                }
            }
            for width in missing.drain(..) {
                println!("NOT RUN: springback with {width} (this processor has none)");
            }
            // One by one they are refused where the column has no number, and only there; it is always the same NaN.
            for i in 0..rows {
                let law = Hardening::Bilinear { yield_strength: yields[i], tangent_modulus: tangent[i] };
                let single =
                    Mechanics::new(od[i], wall[i], modulus[i], law).and_then(|tube| tube.bend(radius[i]));
                match single {
                    Ok(_) => assert!(f64::from_bits(scalar[i]).is_finite(), "row {i}"),
                    Err(_) => assert_eq!(scalar[i], f64::NAN.to_bits(), "row {i}"),
                }
            }
            let finite = scalar.iter().filter(|bits| f64::from_bits(**bits).is_finite()).count();
            assert!(finite * 20 >= rows * 19 && finite < rows || rows < 200, "{finite} of {rows}");
        }
    }
}
