//! Where the formulas of bends, walls and pressure end: what no tube can do is refused with its numbers, and what lies just
//! inside is answered.

#[path = "../common/mod.rs"]
mod common;

use common::Outcome;
use linewright::bend::pressure::{BendFactors, Strength, ovality_amplification};
use linewright::bend::wall::Place;
use linewright::units::{mm, mpa, ratio, to_mm};
use linewright::{Code, Error, Material, Tube};
use std::f64::consts::PI;

fn tube(od: f64, wall: f64) -> Result<Tube, Error> {
    Tube::new(mm(od), mm(wall), Material::LowCarbonSteel)
}

fn whole(strength_mpa: f64) -> Result<Strength, Error> {
    Strength::new(mpa(strength_mpa), ratio(1.0), "this test")
}

/// The code and the words of a refusal.
fn refused<T>(result: Result<T, Error>) -> Outcome<(Code, String)> {
    match result {
        Ok(_) => Err("it was answered".into()),
        Err(error) => Ok((error.code(), error.to_string())),
    }
}

#[test]
fn a_wall_of_half_the_tube_is_no_answer() -> Outcome<()> {
    // 32.35 mm of 60, and 7.6 mm of 4.75.
    for (od, radius, place, p, y) in
        [(60.0, 180.0, Place::Intrados, 500.0, 0.4), (4.75, 14.0, Place::Extrados, 1000.0, 0.0)]
    {
        let bend = BendFactors::new(mm(od), mm(radius))?;
        let (code, words) = refused(bend.ideal_wall(place, mpa(p), &whole(290.0)?, ratio(y)))?;
        assert_eq!(code, Code::OutOfRange);
        assert!(words.contains("pressure") && words.contains(&format!("{p} MPa")), "{words}");
        // The most that the words name: just below it there is a wall of nearly half the tube.
        let most = 290.0 / bend.shell(place).value / (1.0 - y);
        assert!(words.contains(&format!("{most:.4} MPa")), "{words}");
        let wall = to_mm(bend.ideal_wall(place, mpa(0.999_999 * most), &whole(290.0)?, ratio(y))?);
        assert!(wall < od / 2.0 && wall > 0.4999 * od, "{wall} of {od}");
        assert!(bend.ideal_wall(place, mpa(1.000_001 * most), &whole(290.0)?, ratio(y)).is_err());
    }
    // With Y = 1 the formula never reaches half the tube.
    let bend = BendFactors::new(mm(4.75), mm(14.25))?;
    assert!(to_mm(bend.ideal_wall(Place::Side, mpa(1000.0), &whole(290.0)?, ratio(1.0))?) < 4.75 / 2.0);
    Ok(())
}

/// Peak hoop stress over p D / (2 t) of a thin elliptic ring of the perimeter of a circle of diameter 2, by statics: the
/// moment differs from half the pressure times the squared distance from the middle by what keeps the ring closed.
fn ellipse_peak(apart: f64, slenderness: f64) -> f64 {
    let steps = 4_000_u32;
    let around = |a: f64, b: f64| {
        (0..steps).fold((0.0, 0.0), |(length, square), i| {
            let (s, c) = (2.0 * PI * (f64::from(i) + 0.5) / f64::from(steps)).sin_cos();
            let ds = (a * s).hypot(b * c) * 2.0 * PI / f64::from(steps);
            (length + ds, square + ((a * c).powi(2) + (b * s).powi(2)) * ds)
        })
    };
    let (mut low, mut high) = (0.1, 1.0);
    for _ in 0..50 {
        let b = (low + high) / 2.0;
        if around(b + apart, b).0 < 2.0 * PI { low = b } else { high = b }
    }
    let (a, b) = (low + apart, low);
    let (length, square) = around(a, b);
    let (mean, t) = (square / length, 2.0 / slenderness);
    let at = |pull: f64, moment: f64| (pull / t + 6.0 * moment / (t * t)) * t;
    at(a, (a * a - mean) / 2.0).max(at(b, (mean - b * b) / 2.0))
}

#[test]
fn the_first_order_of_an_oval_ends_at_a_fifth() -> Outcome<()> {
    let peak = |tube: &Tube, apart: f64| {
        ovality_amplification(tube, mm(apart), mpa(0.0), mpa(207_000.0), ratio(0.29)).map(|peak| peak.value)
    };
    for (od, wall) in [(4.0, 1.0), (4.7625, 0.7112), (6.0, 0.75), (20.4, 0.4)] {
        let (tube, middle) = (tube(od, wall)?, od - wall);
        let missed =
            |u: f64| -> Outcome<f64> { Ok(ellipse_peak(u, middle / wall) / peak(&tube, u * middle)? - 1.0) };
        let [slightly, most] = [missed(0.02)?, missed(0.199_999)?];
        println!("{od} x {wall}: {slightly:.4} at 0.02, {most:.4} at 0.2");
        assert!((0.0..0.011).contains(&slightly), "{od} x {wall}: {slightly}");
        assert!((0.05..0.08).contains(&most), "{od} x {wall}: {most}");
        assert!(peak(&tube, 0.200_001 * middle).is_err());
    }
    // 10.85 times the round one's stress came out of this one.
    let (code, words) = refused(peak(&tube(4.7625, 0.7112)?, 4.7))?;
    assert_eq!(code, Code::OutOfRange);
    assert!(
        words.contains("4.7 mm") && words.contains("0.81 mm") && words.contains("first order"),
        "{words}"
    );
    Ok(())
}
