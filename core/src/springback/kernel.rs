//! The moment of an elastic, then linearly hardening tube on plain numbers, one or many side by side.

use crate::code::Code;
use crate::error::Error;
use crate::math::{Lane, asin_of};
use crate::problem::{Part, Problem, Value};
use crate::units::{Curvature, Length, Pressure, per_mm};
use std::f64::consts::PI;

/// A tube held at a radius: lengths in mm, stresses in MPa.
#[derive(Clone, Copy)]
pub(super) struct Held<L> {
    pub(super) outer: L,
    pub(super) bore: L,
    pub(super) modulus: L,
    pub(super) yield_strength: L,
    pub(super) tangent: L,
    pub(super) radius: L,
}

/// Second moment of the part of a disc within the height `c` of its diameter, and the distance from there to its rim
/// along the chord, squared and not.
#[inline(always)]
fn within<L: Lane>(r: L, c: L) -> (L, L, L) {
    let square = r * r;
    let h2 = (r - c) * (r + c);
    let h = h2.sqrt();
    // A solid bar has no bore, and nothing divides by it.
    let ratio = L::select(L::splat(0.0).below(r), c / r, L::splat(0.0));
    let inertia =
        L::splat(0.5) * (square * square * asin_of(ratio) - c * h * (square - L::splat(2.0) * c * c));
    (inertia, h2, h)
}

/// Second moment of the part of a disc that stays elastic.
pub(super) fn elastic_inertia(r: f64, core: f64) -> f64 {
    within(r, if core < r { core } else { r }).0
}

/// What a disc adds to the moment where it is elastic up to the height `core`.
#[inline(always)]
fn disc<L: Lane>(r: L, core: L, held: &Held<L>, curvature: L, at_zero: L) -> L {
    let c = L::select(core.below(r), core, r);
    let square = r * r;
    let (elastic, h2, h) = within(r, c);
    let whole = L::splat(PI / 4.0) * square * square;
    curvature * (held.modulus * elastic + held.tangent * (whole - elastic))
        + at_zero * L::splat(4.0 / 3.0) * h2 * h
}

/// Moment in N mm and stiffness in N mm2.
#[inline(always)]
pub(super) fn moment<L: Lane>(held: &Held<L>) -> (L, L) {
    let curvature = L::splat(1.0) / held.radius;
    let softness = L::splat(1.0) / held.modulus;
    let core = held.yield_strength * softness * held.radius;
    let at_zero = held.yield_strength * (L::splat(1.0) - held.tangent * softness);
    let of = |r: L| disc(r, core, held, curvature, at_zero);
    let moment = of(held.outer) - of(held.bore);
    let fourth = |r: L| (r * r) * (r * r);
    (moment, held.modulus * L::splat(PI / 4.0) * (fourth(held.outer) - fourth(held.bore)))
}

/// Curvature that remains, in 1/mm.
#[inline(always)]
fn remaining<L: Lane>(held: &Held<L>) -> L {
    let (moment, stiffness) = moment(held);
    L::splat(1.0) / held.radius - moment / stiffness
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
    /// elastic. Uses the widest instructions that the processor has; the bits do not depend on it. Numbers are not
    /// checked against limits: a row that is no tube gives NaN or a meaningless number, and no other row suffers.
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
        // Every column is cut to the same length once, so that the loop has no check left in it and the compiler makes
        // vector instructions of it.
        let rows = out.len();
        let (od, wall, radius) = (&tubes.od[..rows], &tubes.wall[..rows], &tubes.radius[..rows]);
        let (modulus, yield_strength) = (&tubes.modulus[..rows], &tubes.yield_strength[..rows]);
        let tangent = &tubes.tangent_modulus[..rows];
        for i in 0..rows {
            let outer = 0.5 * od[i].value;
            out[i] = per_mm(remaining(&Held {
                outer,
                bore: outer - wall[i].value,
                modulus: modulus[i].value,
                yield_strength: yield_strength[i].value,
                tangent: tangent[i].value,
                radius: radius[i].value,
            }));
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{mm, mpa};

    /// Tubes of all kinds, and a number of them that fills no vector: elastic, yielding in the wall, solid, no tube at all.
    fn columns(rows: usize) -> [Vec<f64>; 6] {
        // Steps that share no factor, so that the kinds meet in every order.
        let step = |i: usize, by: usize, most: usize| (i * by % most) as f64 / most as f64;
        let of = |f: &dyn Fn(usize) -> f64| (0..rows).map(f).collect::<Vec<f64>>();
        let od = |i: usize| 3.0 + 9.0 * step(i, 7, 31);
        [
            of(&od),
            of(&|i| if i % 37 == 5 { od(i) / 2.0 } else { 0.1 + 1.3 * step(i, 11, 101) }),
            of(&|i| if i % 53 == 9 { f64::NAN } else { 70e3 + 140e3 * step(i, 13, 97) }),
            of(&|i| 60.0 + 400.0 * step(i, 17, 89)),
            of(&|i| if i % 3 == 0 { 0.0 } else { 5e3 * step(i, 19, 83) }),
            of(&|i| od(i) * (1.5 + 500.0 * step(i, 23, 79) * step(i, 23, 79))),
        ]
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
            let finite = scalar.iter().filter(|bits| f64::from_bits(**bits).is_finite()).count();
            assert!(finite * 20 >= rows * 19 || rows < 20, "{finite} of {rows}");
        }
    }
}
