use super::*;
use crate::bench::{FlareTool, Former};
use crate::units::inch;

fn od() -> Length {
    inch(3.0 / 16.0)
}

fn cut(measured: Length, bends: usize, laid: Laid) -> TapeCut {
    TapeLength::new(measured, bends, laid, od())
        .unwrap()
        .with_radius(mm(14.3))
        .unwrap()
        .cut(None, ratio(0.95))
        .unwrap()
}

#[test]
fn lengths_at_ninety_five_of_a_hundred() {
    // By hand: 1640: sigma = sqrt(4.92^2 + 4 x 4 + 9) = 7.01, x 1.645 = 11.54; 1640 + 10 + 11.54 = 1661.54.
    for (measured, bends, want) in [
        (mm(1640.0), 4, 1662.0),
        (inch(63.25), 5, 1629.0),
        (mm(2840.0), 6, 2867.0),
        (inch(112.0), 7, 2873.0),
        (mm(950.0), 3, 970.0),
    ] {
        let cut = cut(measured, bends, Laid::CenterLine);
        assert_eq!(to_mm(cut.rounded()).to_bits(), f64::to_bits(want), "{}", to_mm(cut.length()));
    }
    assert!(cut(mm(950.0), 3, Laid::CenterLine).floor_acts());
    assert!(!cut(mm(1640.0), 4, Laid::CenterLine).floor_acts());
}

#[test]
fn each_way_of_laying_is_corrected() {
    // Per right angle at radius 14.3 on 4.7625 mm tube, by hand: half the diameter x pi/2; 2 x 14.3 - 14.3 pi/2; and that
    // and twice half the diameter.
    let base = to_mm(cut(mm(2000.0), 9, Laid::CenterLine).length());
    for (laid, over) in [
        (Laid::StringOutside, 3.740_46),
        (Laid::StringInside, -3.740_46),
        (Laid::CornerLegs, 6.137_61),
        (Laid::OuterLegs, 10.900_11),
    ] {
        let less = base - to_mm(cut(mm(2000.0), 9, laid).length());
        assert!((less - 9.0 * over).abs() < 1e-3, "{}: {less}", laid.name());
    }
}

#[test]
fn what_is_assumed_stands_in_the_ledger() {
    let tape = TapeLength::new(mm(2000.0), 4, Laid::CornerLegs, od()).unwrap();
    let whats = |cut: &TapeCut| cut.assumptions().iter().map(|a| a.what.clone()).collect::<Vec<_>>();
    let bare = whats(&tape.cut(None, usual_chance()).unwrap());
    for word in ["radius as formed", "angle of each bend", "double-45", "standard deviation", "least margin"]
    {
        assert!(bare.iter().any(|w| w.contains(word)), "{word}: {bare:?}");
    }
    // The 5 mm are known for one tube, and the row says so on every other.
    for (od, words) in [(od(), "can be short on a thicker one"), (mm(6.0), "can be short on this one")] {
        let other = TapeLength::new(mm(2000.0), 4, Laid::CornerLegs, od).unwrap();
        let cut = other.cut(None, usual_chance()).unwrap();
        let row = cut.assumptions().iter().find(|a| a.what.contains("double-45")).unwrap();
        assert!(row.basis.place.contains("3/16 in tube with a wall up to 1.1 mm"), "{}", row.basis);
        assert!(row.basis.place.contains(words), "{}", row.basis);
    }
    let tool = FlareTool::new(Flare::Double45, mm(13.0), mm(4.0)).unwrap();
    let tool = tool.with_net_shortening(mm(2.0)).unwrap().with_cut_spare(mm(3.0)).unwrap();
    let bench = Bench::new(Former::new(mm(14.3), mm(20.0)).unwrap(), &[tool]).unwrap();
    let told = tape.with_total_angle(deg(300.0)).unwrap().cut(Some(&bench), usual_chance()).unwrap();
    assert_eq!(whats(&told).len(), 2, "only the measuring model and its least margin are left");
}

#[test]
fn a_length_shorter_than_its_bends_is_in_another_unit() {
    let tape = TapeLength::new(mm(88.5), 6, Laid::StringOutside, od()).unwrap();
    let error = tape.cut(None, usual_chance()).unwrap_err();
    assert_eq!(error.code(), Code::UnitImplausible);
    assert!(error.problem().fix.contains("2247.9 mm"), "{}", error.problem().fix);
}

#[test]
fn bad_input_is_refused() {
    for (measured, od) in
        [(f64::NAN, 4.75), (-1.0, 4.75), (1e308, 4.75), (100.0, f64::INFINITY), (100.0, 316.0)]
    {
        assert!(TapeLength::new(mm(measured), 2, Laid::CenterLine, mm(od)).is_err());
    }
    let tape = TapeLength::new(mm(2000.0), 2, Laid::CenterLine, od()).unwrap();
    for chance in [0.0, 0.4, 1.0, f64::NAN] {
        assert!(tape.cut(None, ratio(chance)).is_err());
    }
    let bubble = tape.clone().with_flares(Flare::Bubble, Flare::Double45);
    assert_eq!(bubble.cut(None, usual_chance()).unwrap_err().code(), Code::FlareToolMissing);
    let loops =
        TapeLength::new(mm(2000.0), 2, Laid::CornerLegs, od()).unwrap().with_total_angle(deg(400.0)).unwrap();
    assert_eq!(loops.cut(None, usual_chance()).unwrap_err().code(), Code::NoCorner);
    assert_eq!(Laid::from_name(" ").unwrap_err().code(), Code::MethodMissing);
    assert_eq!(Laid::from_name("guess").unwrap_err().code(), Code::UnknownName);
    assert!(TapeLength::new(mm(2000.0), 100_000, Laid::CenterLine, od()).is_err());
}

/// As in a plan: the user's own test piece wins, and a double flare has at least the trade's 5 mm.
#[test]
fn a_test_piece_wins_over_the_trade() {
    let former = Former::new(mm(14.3), mm(20.0)).unwrap();
    let taken = |flare, net: Option<f64>, spare: Option<f64>| {
        let mut tool = FlareTool::new(flare, mm(13.0), mm(8.0)).unwrap();
        if let Some(net) = net {
            tool = tool.with_net_shortening(mm(net)).unwrap();
        }
        if let Some(spare) = spare {
            tool = tool.with_cut_spare(mm(spare)).unwrap();
        }
        let bench = Bench::new(former, &[tool]).unwrap();
        flare_mm(flare, od(), Some(&bench), &mut Ledger::default())
    };
    for (net, spare, want) in [
        (Some(6.0), None, 6.0),
        (Some(2.0), None, 5.0),
        (Some(6.0), Some(1.0), 7.0),
        (None, Some(4.0), 9.0),
        (None, None, 5.0),
    ] {
        assert_eq!(taken(Flare::Double45, net, spare), Ok(want), "{net:?} {spare:?}");
    }
    assert_eq!(taken(Flare::Bubble, Some(2.0), None), Ok(2.0));
    assert_eq!(taken(Flare::Bubble, None, None).unwrap_err().code(), Code::FlareNetUnknown);
}
