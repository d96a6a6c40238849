//! The length from string and tape is long enough as often as it says: by simulation of its own measuring model.

#[path = "../common/mod.rs"]
mod common;

use common::Outcome;
use common::draw::normal;
use linewright::tape::{Laid, TapeLength};
use linewright::units::{mm, ratio, to_mm};

/// Draws of each setting; the standard error of a share is then below 0.0007.
const DRAWS: u64 = 200_000;

#[test]
fn it_is_long_enough_as_often_as_it_says() -> Outcome<()> {
    let mut floors = 0;
    let mut tried = 0_u64;
    for chance in [0.9, 0.95, 0.99] {
        for (length, bends) in [(400.0, 1), (950.0, 3), (1640.0, 4), (2840.0, 6), (2844.8, 7), (6400.0, 12)] {
            let tape = TapeLength::new(mm(length), bends, Laid::CenterLine, mm(4.75))?;
            let cut = tape.cut(None, ratio(chance))?;
            // Ten millimeters go into the two flares; the rest of the cut must hold the true length.
            let room = to_mm(cut.length()) - 10.0;
            let each = f64::from(u32::try_from(bends)?);
            let deviations = [0.003 * length, 2.0 * each.sqrt(), 3.0];
            let mut enough = 0_u32;
            for draw in 0..DRAWS {
                let at = (tried * DRAWS + draw) * 3;
                let error: f64 = (0..).zip(deviations).map(|(i, sigma)| sigma * normal(at + i)).sum();
                enough += u32::from(length + error <= room);
            }
            tried += 1;
            #[expect(clippy::cast_precision_loss, reason = "a small count is exact")]
            let share = f64::from(enough) / DRAWS as f64;
            assert!(share >= chance - 0.003, "{length} mm, {bends} bends: {share} instead of {chance}");
            if cut.floor_acts() {
                floors += 1;
            } else {
                assert!(
                    (share - chance).abs() <= 0.01,
                    "{length} mm, {bends} bends: {share} instead of {chance}"
                );
            }
        }
    }
    assert!((1..18).contains(&floors), "both kinds of margin are tried: {floors}");
    Ok(())
}
