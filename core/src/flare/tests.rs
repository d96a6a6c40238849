use super::*;

#[test]
fn only_the_listed_pairs_fit() {
    let mut fits = 0;
    for flare in Flare::ALL {
        assert_eq!(flare.fits_seat(None), Fit::NotKnown);
        assert_eq!(flare.fits_nose(None), Fit::NotKnown);
        fits += Seat::ALL.into_iter().filter(|s| flare.fits_seat(Some(*s)) == Fit::Fits).count();
        fits += Nose::ALL.into_iter().filter(|n| flare.fits_nose(Some(*n)) == Fit::Fits).count();
    }
    assert_eq!(fits, 6, "each flare has one seat and one nose");
    assert_eq!(Flare::Single37.fits_seat(Some(Seat::Inverted45)), Fit::DoesNotFit);
    assert_eq!(Flare::Double45.fits_seat(Some(Seat::Bubble)), Fit::DoesNotFit);
}

#[test]
fn names_lead_back() {
    for flare in Flare::ALL {
        assert_eq!(Flare::from_name(flare.name()).unwrap(), flare);
    }
    for seat in Seat::ALL {
        assert_eq!(Seat::from_name(seat.name()).unwrap(), Some(seat));
    }
    for nose in Nose::ALL {
        assert_eq!(Nose::from_name(nose.name()).unwrap(), Some(nose));
    }
    assert_eq!(Seat::from_name("unknown").unwrap(), None);
    for name in ["single-45", "single45", "45 single", "Single 45°", "single_45"] {
        assert_eq!(Flare::from_name(name).unwrap_err().code(), Code::Single45Refused, "{name}");
    }
    assert_eq!(Flare::from_name("unknown").unwrap_err().code(), Code::UnknownName);
    assert_eq!(Seat::from_name("").unwrap_err().code(), Code::UnknownName);
}

#[test]
fn a_test_piece_gives_the_shortening() {
    use crate::units::{mm, to_mm};
    let trial = FlareTrial::new(mm(200.0), mm(195.2)).unwrap();
    assert!((to_mm(trial.net_shortening()) - 4.8).abs() < 1e-9);
    for (before, after) in [(200.0, 201.0), (200.0, 100.0), (f64::NAN, 1.0), (-1.0, -2.0)] {
        assert!(FlareTrial::new(mm(before), mm(after)).is_err(), "{before} {after}");
    }
}

#[test]
fn a_slip_of_tenths_is_told() {
    use crate::units::mm;
    assert_eq!(slip(mm(2.4), mm(2.4)).unwrap(), None);
    assert_eq!(slip(mm(2.4), mm(2.2)).unwrap(), None);
    let slipped = slip(mm(2.4), mm(2.1)).unwrap().unwrap();
    assert_eq!(slipped.code, Code::FlareSlipped);
    assert!(slipped.why.contains("0.3 mm"));
    assert!(slip(mm(2.4), mm(f64::NAN)).is_err());
}

#[test]
fn names_of_assumptions_lead_back_and_a_thick_wall_has_no_known_diameter() {
    use crate::units::{inch, mm};
    for stretch in Stretch::ALL {
        assert_eq!(Stretch::from_name(stretch.name()).unwrap(), stretch);
    }
    assert_eq!(Stretch::from_name("rubber").unwrap_err().code(), Code::UnknownName);
    // Of the table's walls each stands for inches: 0.028 in is printed 0.71 and 0.035 in 0.89.
    for (od, wall, least) in [(0.1875, 0.028, 6.7), (0.3125, 0.035, 10.4)] {
        let found = known_diameters(Flare::Double45, inch(od), inch(wall)).unwrap();
        assert_eq!(found[0], mm(least));
        assert_eq!(known_diameters(Flare::Double45, inch(od), inch(wall + 0.007)), None);
    }
    assert_eq!(known_diameters(Flare::Bubble, inch(0.1875), inch(0.028)), None);
}

#[test]
fn a_tube_that_cannot_be_has_no_allowance_by_any_way() {
    use crate::units::mm;
    for (od, wall, code) in [
        (f64::NAN, 0.7, Code::NotANumber),
        (4.76, f64::INFINITY, Code::NotANumber),
        (-4.76, 0.7, Code::OutOfRange),
        (4.76, 0.0, Code::OutOfRange),
        (4.76, 2.4, Code::OutOfRange),
    ] {
        for flare in Flare::ALL {
            let refused = allowances(flare, mm(od), mm(wall), None, None).unwrap_err();
            assert_eq!(refused.code(), code, "{} {od} {wall}", flare.name());
        }
    }
    // What is usual for one size of tube says so, and is not given for another.
    let ways = allowances(Flare::Double45, mm(4.7625), mm(0.7), None, None).unwrap();
    assert_eq!(ways[0].source.to_string(), "for 3/16 in tube, common practice, no source");
    // Where no way says anything, that is the answer.
    for (flare, od, wall) in
        [(Flare::Double45, 9.525, 0.9), (Flare::Bubble, 10.0, 0.9), (Flare::Single37, 4.7625, 0.7)]
    {
        let unknown = allowances(flare, mm(od), mm(wall), None, None).unwrap_err();
        assert_eq!(unknown.code(), Code::NotKnown, "{}", flare.name());
    }
    let swapped =
        allowances(Flare::Double45, mm(4.7625), mm(0.7), Some([mm(7.1), mm(6.7)]), None).unwrap_err();
    assert_eq!(
        (swapped.code(), swapped.problem().part.to_string()),
        (Code::OutOfRange, "field most".to_owned())
    );
}
