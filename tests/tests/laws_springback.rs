//! Laws of springback: a column and the single call, monotony, and the interval of a scattering material, on random tubes.

#[path = "../common/mod.rs"]
mod common;

use common::random;
use linewright::springback::{Columns, Hardening, MaterialScatter, Mechanics};
use linewright::units::{Length, Pressure, deg, mm, mpa, ratio, to_deg, to_mm};
use proptest::prelude::*;

/// A number that mostly belongs there, at times lies on or just beside a limit, and at times is anything.
fn number(low: f64, high: f64) -> impl Strategy<Value = f64> {
    prop_oneof![
        12 => low..high,
        1 => prop_oneof![
            Just(low), Just(high), Just(low.next_down()), Just(high.next_up()), Just(0.0), Just(-0.0), Just(-low),
            Just(f64::NAN), Just(-f64::NAN), Just(f64::INFINITY), Just(f64::NEG_INFINITY), Just(f64::MIN_POSITIVE),
        ],
        1 => any::<f64>(),
    ]
}

/// Outside diameter, wall, modulus, yield strength, tangent modulus, radius.
fn row() -> impl Strategy<Value = [f64; 6]> {
    let wall = prop_oneof![8 => number(0.1, 2.0), 1 => number(0.1, 10.0)];
    let tangent = prop_oneof![8 => number(0.0, 5_000.0), 1 => number(0.0, 500_000.0)];
    let radius = prop_oneof![8 => number(5.0, 500.0), 1 => number(1.0, 1e6)];
    let numbers = (number(1.0, 60.0), wall, number(1e3, 1e6), number(1.0, 5e3), tangent, radius);
    (numbers, 0..12_u32).prop_map(|((od, wall, modulus, yields, tangent, radius), kind)| {
        // A solid bar, and a tube on half its own diameter.
        let wall = if kind == 0 { od / 2.0 } else { wall };
        [od, wall, modulus, yields, tangent, if kind == 1 { od / 2.0 } else { radius }]
    })
}

/// The law of a tube, by a number from 0 to 2.
fn law(kind: u32, strength: f64, more: f64) -> Hardening {
    match kind {
        0 => Hardening::PerfectlyPlastic { yield_strength: mpa(strength) },
        1 => Hardening::Bilinear { yield_strength: mpa(strength), tangent_modulus: mpa(8_000.0 * more) },
        _ => Hardening::PowerLaw {
            strength_coefficient: mpa(3.0 * strength),
            hardening_exponent: ratio(0.6 * more),
        },
    }
}

proptest! {
    #![proptest_config(random::config(1_000))]

    /// Also the other way round: what the single call answers has a number, and it is the same.
    #[test]
    fn a_column_has_no_number_where_the_single_call_refuses(rows in prop::collection::vec(row(), 1..40)) {
        let column = |i: usize| rows.iter().map(move |row| row[i]);
        let lengths = |i: usize| column(i).map(mm).collect::<Vec<Length>>();
        let stresses = |i: usize| column(i).map(mpa).collect::<Vec<Pressure>>();
        let remaining = Columns {
            od: &lengths(0),
            wall: &lengths(1),
            modulus: &stresses(2),
            yield_strength: &stresses(3),
            tangent_modulus: &stresses(4),
            radius: &lengths(5),
        }
        .remaining()?;
        for (row, found) in rows.iter().zip(remaining) {
            let [od, wall, modulus, yields, tangent, radius] = *row;
            let law = Hardening::Bilinear { yield_strength: mpa(yields), tangent_modulus: mpa(tangent) };
            let single =
                Mechanics::new(mm(od), mm(wall), mpa(modulus), law).and_then(|tube| tube.bend(mm(radius)));
            match single {
                Ok(bent) => {
                    let off = found.value * radius - (1.0 - bent.share().value);
                    prop_assert!(off.abs() <= 1e-12, "{row:?}: {off:e}");
                    prop_assert!(found.value * radius > -1e-12 && found.value * radius < 1.0, "{row:?}");
                }
                Err(error) => {
                    prop_assert_eq!(found.value.to_bits(), f64::NAN.to_bits(), "{:?}: {}", row, error);
                }
            }
        }
    }

    /// Whatever the metal within its scatter: its setting lies in the interval, and the middle of it too.
    #[test]
    fn the_interval_of_a_scattering_metal_holds_every_metal_in_it(
        kind in 0..3_u32,
        (od, share, radii) in (4.0..20.0_f64, 0.05..0.5_f64, 1.5..8.0_f64),
        (strength, more) in (80.0..400.0_f64, 0.0..1.0_f64),
        (off, soft) in (0.0..0.4_f64, 0.0..0.15_f64),
        places in prop::collection::vec((-1.0..=1.0_f64, -1.0..=1.0_f64), 6),
        arm in 0.0..60.0_f64,
    ) {
        let modulus = 180_000.0;
        let (wall, radius, wanted) = (mm(od * share), mm(od * radii), deg(75.0));
        let tube = Mechanics::new(mm(od), wall, mpa(modulus), law(kind, strength, more))?;
        let scatter = MaterialScatter { strength: ratio(off), modulus: ratio(soft) };
        let Ok(ends) = tube.setting_range(radius, mm(arm), wanted, scatter) else {
            // Only where the metal that springs back most has no credible setting.
            let most = law(kind, strength * (1.0 + off), more);
            let most = Mechanics::new(mm(od), wall, mpa(modulus * (1.0 - soft)), most)?;
            prop_assert!(most.bend(radius)?.springback(mm(arm)).is_err());
            return Ok(());
        };
        let [low, high] = ends.map(to_deg);
        for (a, b) in places.into_iter().chain([(0.0, 0.0), (1.0, 1.0), (-1.0, -1.0)]) {
            let law = law(kind, strength * (1.0 + a * off), more);
            let other = Mechanics::new(mm(od), wall, mpa(modulus * (1.0 + b * soft)), law)?;
            let setting = to_deg(other.bend(radius)?.springback(mm(arm))?.setting(wanted)?);
            prop_assert!(
                low - 1e-9 <= setting && setting <= high + 1e-9,
                "{setting} in {low} to {high}"
            );
        }
    }

    /// A tighter bend keeps more of itself, a stronger metal less; what remains is never tighter than what was held.
    #[test]
    fn tighter_and_weaker_keeps_more(
        kind in 0..3_u32,
        (od, share) in (4.0..20.0_f64, 0.05..0.5_f64),
        (radii, wider) in (0.51..800.0_f64, 1.001..3.0_f64),
        (strength, stronger, more) in (80.0..400.0_f64, 1.001..2.0_f64, 0.0..1.0_f64),
    ) {
        let at = |strength: f64, radius: f64| -> Result<f64, linewright::Error> {
            let tube = Mechanics::new(mm(od), mm(od * share), mpa(180_000.0), law(kind, strength, more))?;
            let bent = tube.bend(mm(radius))?;
            if let Some(formed) = bent.formed_radius() {
                assert!(to_mm(formed) > radius, "{formed:?}");
            }
            Ok(bent.share().value)
        };
        let radius = od * radii;
        let share = at(strength, radius)?;
        prop_assert!(share > 0.0 && share <= 1.0 + 1e-14, "{share}");
        prop_assert!(share <= at(strength, radius * wider)? + 1e-14);
        prop_assert!(share <= at(strength * stronger, radius)? + 1e-14);
    }
}
