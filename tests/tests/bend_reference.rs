//! Arc, tangent length and gain against a table made by another route (`tables/bend_reference.csv`): integration and
//! intersection with mpmath, none of the library's formulas.

#[path = "../common/mod.rs"]
mod common;

use common::{Outcome, here};
use linewright::Bend;
use linewright::units::{deg, mm, to_mm};

/// Largest error of a figure, as a share of it.
const RELATIVE: f64 = 1e-12;
/// Fewer rows would mean that the table was cut or misread.
const ROWS_AT_LEAST: usize = 300;

#[test]
fn bends_agree_with_integration_and_intersection() -> Outcome<()> {
    let text = std::fs::read_to_string(here("tables/bend_reference.csv"))?;
    let mut lines = text.lines();
    assert_eq!(lines.next(), Some("radius_mm,angle_deg,arc_mm,tangent_length_mm,gain_mm"));
    let mut rows = 0;
    let mut worst = [0.0_f64; 3];
    for line in lines {
        let numbers = line.split(',').map(str::parse).collect::<Result<Vec<f64>, _>>()?;
        let [radius, angle, arc, tangent, gain] = numbers[..] else {
            return Err(format!("not five: {line}").into());
        };
        let bend = Bend::new(deg(angle), deg(0.0), mm(radius))?;
        let got = [bend.arc(), bend.tangent_length()?, bend.gain()?].map(to_mm);
        for (i, want) in [arc, tangent, gain].into_iter().enumerate() {
            let error = (got[i] - want).abs() / want;
            assert!(error <= RELATIVE, "figure {i} of {line}: got {:e}, {error:e} off", got[i]);
            worst[i] = worst[i].max(error);
        }
        rows += 1;
    }
    println!(
        "{rows} bends; largest relative error of arc {:.1e}, tangent length {:.1e}, gain {:.1e}",
        worst[0], worst[1], worst[2]
    );
    assert!(rows >= ROWS_AT_LEAST, "only {rows} rows");
    Ok(())
}
