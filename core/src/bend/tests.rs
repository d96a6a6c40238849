use super::*;

fn bend(angle: f64, radius: f64) -> Bend {
    Bend::new(deg(angle), deg(0.0), mm(radius)).unwrap()
}

#[test]
fn rotations_are_brought_into_one_turn() {
    for (typed, kept) in
        [(180.0, 180.0), (-180.0, 180.0), (270.0, -90.0), (-90.0, -90.0), (720.0, 0.0), (0.0, 0.0)]
    {
        let bend = Bend::new(deg(90.0), deg(typed), mm(14.3)).unwrap();
        assert_eq!(to_deg(bend.rotation()).to_bits(), f64::to_bits(kept), "{typed}");
    }
}

#[test]
fn gain_is_smooth_where_the_series_ends() {
    let below = gain_mm(14.3, SERIES_EDGE - 1e-12);
    let above = gain_mm(14.3, SERIES_EDGE);
    assert!((above - below).abs() < 1e-11);
    assert!(gain_mm(14.3, 1e-6) > 0.0);
    // Leading term of the series, R angle^3 / 12.
    assert!((gain_mm(14.3, 1e-3) / (14.3 * 1e-9 / 12.0) - 1.0).abs() < 1e-6);
}

const SERIES_EDGE: f64 = 0.4;

#[test]
fn no_bend_takes_no_tube_and_half_a_turn_has_no_corner() {
    let none = bend(0.0, 14.3);
    assert_eq!(to_mm(none.arc()).to_bits(), 0.0_f64.to_bits());
    assert_eq!(to_mm(none.gain().unwrap()).to_bits(), 0.0_f64.to_bits());
    for angle in [180.0, 540.0] {
        assert_eq!(bend(angle, 25.0).gain().unwrap_err().code(), Code::NoCorner);
        assert_eq!(bend(angle, 25.0).tangent_length().unwrap_err().code(), Code::NoCorner);
    }
    assert!(bend(179.999, 25.0).tangent_length().is_ok());
}

#[test]
fn a_list_must_belong_together() {
    let angles = [deg(30.0), deg(60.0)];
    let counts = |rotations: usize, radii: usize| {
        Bend::list(&angles, &vec![deg(90.0); rotations], &vec![mm(14.3); radii]).map(|b| b.len())
    };
    assert_eq!(counts(1, 1).unwrap(), 2);
    assert_eq!(counts(1, 2).unwrap(), 2);
    for (rotations, radii) in [(0, 1), (2, 1), (1, 0), (1, 3)] {
        assert_eq!(counts(rotations, radii).unwrap_err().code(), Code::CountMismatch);
    }
    assert_eq!(Bend::list(&[], &[], &[]).unwrap().len(), 0);
    let error = Bend::list(&[deg(10.0), deg(-10.0)], &[deg(0.0)], &[mm(14.3)]).unwrap_err();
    assert_eq!((error.code(), &error.problem().part), (Code::OutOfRange, &Part::Bend(2)));
}
