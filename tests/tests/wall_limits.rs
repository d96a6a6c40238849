//! Where the formulas of bends, walls and pressure end: what no tube can do is refused with its numbers, and what lies just
//! inside is answered.

#[path = "../common/mod.rs"]
mod common;

use common::Outcome;
use linewright::bend::pressure::{BendFactors, Cylinder, Strength, Theory, ovality_amplification};
use linewright::bend::wall::Place;
use linewright::units::{mm, mpa, ratio, to_mm, to_mpa};
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

/// At a sixth of the diameter both give 2.6 times the pressure; beyond it Boardman's would be the bolder one: 482.5 MPa for
/// 20 x 9.99 mm, where Lame's gives 290.
#[test]
fn boardman_ends_where_it_meets_lame() -> Outcome<()> {
    let strength = whole(290.0)?;
    let at = |od: f64, wall: f64, theory| {
        Cylinder::new(&tube(od, wall)?)
            .ideal_cylinder_pressure(theory, &strength)
            .map(|ideal| to_mpa(ideal.pressure()))
    };
    for (od, wall) in [(6.0, 1.0), (12.0, 2.0), (4.8, 0.8), (60.0, 10.0)] {
        let (boardman, lame) = (at(od, wall, Theory::Boardman)?, at(od, wall, Theory::Lame)?);
        assert!((boardman - 290.0 / 2.6).abs() < 1e-9 && (lame - boardman).abs() < 1e-9, "{boardman} {lame}");
        assert!(at(od, 0.99 * wall, Theory::Boardman)? < at(od, 0.99 * wall, Theory::Lame)?);
        if let Ok(thicker) = tube(od, 1.001 * wall) {
            let thicker = Cylinder::new(&thicker);
            assert!(thicker.stress(Theory::Boardman, mpa(10.0)).is_err());
            assert!(thicker.margin(Theory::Boardman, mpa(10.0), &strength).is_err());
            assert!(thicker.stress(Theory::Lame, mpa(10.0)).is_ok());
        }
    }
    let (code, words) = refused(at(20.0, 9.99, Theory::Boardman))?;
    assert_eq!(code, Code::OutOfRange);
    assert!(words.contains("9.99 mm") && words.contains("3.33 mm") && words.contains("Lame"), "{words}");
    assert!((at(20.0, 9.99, Theory::Lame)? - 290.0).abs() < 0.01);
    // The wall that tolerances and a bend leave is what counts.
    let thick = Cylinder::new(&tube(6.0, 1.1)?);
    assert!(thick.ideal_cylinder_pressure(Theory::Boardman, &strength).is_err());
    let worn = thick.with_tolerances(mm(0.0), mm(0.1))?;
    assert!(worn.ideal_cylinder_pressure(Theory::Boardman, &strength).is_ok());
    let bent = worn.bent(mm(18.0))?.ideal_cylinder_pressure(Theory::Boardman, &strength)?;
    assert_eq!(bent.place(), Some(Place::Extrados));
    Ok(())
}
