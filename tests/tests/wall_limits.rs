//! Where the formulas of bends, walls and pressure end: what no tube can do is refused with its numbers, and what lies just
//! inside is answered.

#[path = "../common/mod.rs"]
mod common;

use common::Outcome;
use linewright::bend::pressure::{BendFactors, Cylinder, Strength, Theory, ovality_amplification};
use linewright::bend::wall::{BentWall, Place};
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
fn a_wall_beyond_a_sixth_of_the_tube_is_no_answer() -> Outcome<()> {
    // 32.35 mm of 60, 7.6 mm of 4.75, and 1.19 mm of 4.75.
    for (od, radius, place, p, y) in [
        (60.0, 180.0, Place::Intrados, 500.0, 0.4),
        (4.75, 14.0, Place::Extrados, 1000.0, 0.0),
        (4.75, 14.25, Place::Side, 290.0, 1.0),
    ] {
        let bend = BendFactors::new(mm(od), mm(radius))?;
        let (code, words) = refused(bend.ideal_wall(place, mpa(p), &whole(290.0)?, ratio(y)))?;
        assert_eq!(code, Code::OutOfRange);
        assert!(words.contains("pressure") && words.contains(&format!("{p} MPa")), "{words}");
        // The most that the words name: P D / (2 (S + P Y)) is D / 6 where P (3 - Y) is S.
        let most = 290.0 / bend.shell(place).value / (3.0 - y);
        assert!(words.contains(&format!("{most:.4} MPa")), "{words}");
        let wall = to_mm(bend.ideal_wall(place, mpa(most), &whole(290.0)?, ratio(y))?);
        assert!((wall - od / 6.0).abs() < 1e-9, "{wall} of {od}");
        assert!(bend.ideal_wall(place, mpa(1.000_001 * most), &whole(290.0)?, ratio(y)).is_err());
    }
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
        words.contains("4.7 mm") && words.contains("0.8102 mm") && words.contains("first order"),
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
    assert!(words.contains("9.99 mm") && words.contains("3.3333 mm") && words.contains("Lame"), "{words}");
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

#[test]
fn a_bend_of_less_than_a_diameter_is_refused() -> Outcome<()> {
    let brake = tube(4.7625, 0.7112)?;
    // Walls of 8 to 91 mm came out of the first, up to 3.45 of 4.76 mm out of the second.
    for radius in [2.4, 3.0, 4.76] {
        let (code, words) = refused(BentWall::new(&brake, mm(radius)))?;
        assert_eq!(code, Code::OutOfRange);
        assert!(
            words.contains("radius") && words.contains("at least one diameter of the tube, 4.7625 mm"),
            "{words}"
        );
        assert!(BendFactors::new(mm(4.7625), mm(radius)).is_err());
        assert!(Cylinder::new(&brake).bent(mm(radius)).is_err());
    }
    // At one diameter the inside has half its length and up to twice its wall.
    let least = BentWall::new(&brake, mm(4.7625))?;
    assert!((to_mm(least.intrados().most) - 2.0 * 0.7112).abs() < 1e-12);
    assert!((least.outer_stretch().value - 0.5).abs() < 1e-12);
    assert!(BendFactors::new(mm(4.7625), mm(4.7625)).is_ok());
    // Twice a wall of more than a quarter of the diameter fills the bore: R > r^2 / (r - t), 4 / 0.8 here.
    let thick = tube(4.0, 1.2)?;
    let (code, words) = refused(BentWall::new(&thick, mm(4.9)))?;
    assert_eq!(code, Code::OutOfRange);
    assert!(words.contains("more than 5 mm") && words.contains("fill the bore"), "{words}");
    assert!(BentWall::new(&thick, mm(5.01)).is_ok() && BendFactors::new(mm(4.0), mm(4.9)).is_ok());
    Ok(())
}

#[test]
fn a_neutral_axis_stays_where_metal_can_follow() -> Outcome<()> {
    let brake = tube(4.7625, 0.7112)?;
    // Tight: 2.38 left 0.003 mm of the outside, 2.4 is outside the tube.
    let tight = BentWall::new(&brake, mm(5.0))?;
    let (code, words) = refused(tight.with_neutral_shift(mm(2.38)))?;
    assert_eq!(code, Code::OutOfRange);
    // Fibers at 2.61875 and 7.38125: the axis from 3.690625, half of the outer one, to 5.2375, twice the inner one.
    assert!(words.contains("2.38 mm") && words.contains("-0.2375 mm to 1.3093 mm"), "{words}");
    for (shift, fine) in [(1.31, false), (1.309, true), (0.0, true), (-0.237, true), (-0.238, false)] {
        assert_eq!(tight.with_neutral_shift(mm(shift)).is_ok(), fine, "{shift}");
    }
    assert!(refused(tight.with_neutral_shift(mm(-2.4)))?.1.contains("leave the tube"));
    // Outward, a thick inside grows until it fills the bore: (R - s) t < r (R - r), s > 12 - 2 x 10 / 1.5.
    let thick = BentWall::new(&tube(4.0, 1.5)?, mm(12.0))?;
    assert!(thick.with_neutral_shift(mm(-1.33)).is_ok());
    let (code, words) = refused(thick.with_neutral_shift(mm(-1.34)))?;
    assert_eq!(code, Code::OutOfRange);
    assert!(words.contains("more than -1.3333 mm") && words.contains("fill the bore"), "{words}");
    Ok(())
}
