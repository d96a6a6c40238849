//! Tubes held at radii, random but the same in every language: a counter goes through a mixer of bits. A third of them
//! stays elastic or yields in the wall only.

use linewright::springback::Columns;
use linewright::units::{Length, Pressure, mm, mpa};

const SEED: u64 = 20_250_303;
const OD_MM: [f64; 7] = [4.76, 6.0, 6.35, 8.0, 9.53, 10.0, 12.0];

/// Columns of one length.
#[derive(Debug)]
pub struct Tubes {
    od: Vec<Length>,
    wall: Vec<Length>,
    modulus: Vec<Pressure>,
    yield_strength: Vec<Pressure>,
    tangent_modulus: Vec<Pressure>,
    radius: Vec<Length>,
}

/// The mixer of splitmix64 (public domain).
fn mix(mut z: u64) -> u64 {
    z ^= z >> 30;
    z = z.wrapping_mul(0xBF58_476D_1CE4_E5B9);
    z ^= z >> 27;
    z = z.wrapping_mul(0x94D0_49BB_1331_11EB);
    z ^ (z >> 31)
}

/// A number from 0 to below 1.
fn unit(stream: u64, i: u64) -> f64 {
    let key = mix(SEED ^ stream.wrapping_mul(0xD134_2543_DE82_EF95));
    let bits = mix(key.wrapping_add((i + 1).wrapping_mul(0x9E37_79B9_7F4A_7C15)));
    (bits >> 11) as f64 / 9_007_199_254_740_992.0
}

fn between(low: f64, high: f64, stream: u64, i: u64) -> f64 {
    low + (high - low) * unit(stream, i)
}

impl Tubes {
    /// The first `count` of them.
    #[must_use]
    pub fn new(count: u64) -> Tubes {
        let of = |f: &dyn Fn(u64) -> f64| (0..count).map(f).collect::<Vec<f64>>();
        let lengths = |numbers: Vec<f64>| numbers.into_iter().map(mm).collect::<Vec<Length>>();
        let stresses = |numbers: Vec<f64>| numbers.into_iter().map(mpa).collect::<Vec<Pressure>>();
        let od = of(&|i| {
            let place = 7.0 * unit(1, i);
            // The last diameter of the list whose number does not exceed the place.
            OD_MM.iter().zip(0_u32..).take_while(|(_, n)| f64::from(*n) <= place).fold(0.0, |_, (od, _)| *od)
        });
        let radius =
            (0..count).zip(&od).map(|(i, od)| od * between(1.5_f64.ln(), 400.0_f64.ln(), 3, i).exp());
        Tubes {
            radius: lengths(radius.collect()),
            od: lengths(od),
            wall: lengths(of(&|i| between(0.6, 1.5, 2, i))),
            modulus: stresses(of(&|i| between(100e3, 210e3, 4, i))),
            yield_strength: stresses(of(&|i| between(80.0, 350.0, 5, i))),
            tangent_modulus: stresses(of(&|i| between(500.0, 5000.0, 6, i))),
        }
    }

    /// The first `count` rows.
    ///
    /// # Panics
    /// Where there are fewer.
    #[must_use]
    pub fn columns(&self, count: usize) -> Columns<'_> {
        Columns {
            od: &self.od[..count],
            wall: &self.wall[..count],
            modulus: &self.modulus[..count],
            yield_strength: &self.yield_strength[..count],
            tangent_modulus: &self.tangent_modulus[..count],
            radius: &self.radius[..count],
        }
    }
}
