use super::*;
use crate::units::{inch, to_deg};

fn t2() -> Path {
    let bends =
        Bend::list(&[deg(30.0), deg(60.0), deg(90.0)], &[deg(180.0), deg(90.0)], &[mm(14.3)]).unwrap();
    Path::from_legs(&[mm(55.0), inch(28.0), inch(9.25), mm(76.0)], &bends).unwrap()
}

fn close(a: Length, b: f64) -> bool {
    (to_mm(a) - b).abs() < 1e-9
}

#[test]
fn legs_and_straights_are_one_path() {
    let path = t2();
    let again = Path::from_straights(path.straights(), path.bends()).unwrap();
    assert_eq!(path, again);
    for (leg, want) in path.legs().unwrap().iter().zip([55.0, 711.2, 234.95, 76.0]) {
        assert!(close(*leg, want));
    }
    let sum: f64 = path.legs().unwrap().iter().map(|l| to_mm(*l)).sum();
    assert!(close(path.developed_length(), sum - to_mm(path.total_gain().unwrap())));
}

#[test]
fn a_flat_square_line_ends_where_it_must() {
    // Two quarter bends of radius 10 in one plane, straights 30, 20, 30: a U. By hand: x = 30 + 10 - 10 - 30,
    // y = 10 + 20 + 10.
    let bends = Bend::list(&[deg(90.0), deg(90.0)], &[deg(0.0)], &[mm(10.0)]).unwrap();
    let path = Path::from_straights(&[mm(30.0), mm(20.0), mm(30.0)], &bends).unwrap();
    let end = path.end_point();
    assert!(close(end[0], 0.0) && close(end[1], 40.0) && close(end[2], 0.0), "{end:?}");
    assert_eq!(path.vertices().unwrap().len(), 4);
    // A quarter turn of the plane, right-handed about +y, sends the last leg toward +z x ... by hand: ahead +y,
    // normal +z turned about +y is +x, so the last leg heads from +y toward x cross y = +z.
    let bends = Bend::list(&[deg(90.0), deg(90.0)], &[deg(90.0)], &[mm(10.0)]).unwrap();
    let path = Path::from_straights(&[mm(30.0), mm(20.0), mm(30.0)], &bends).unwrap();
    let end = path.end_point();
    assert!(close(end[0], 40.0) && close(end[1], 40.0) && close(end[2], 40.0), "{end:?}");
}

#[test]
fn a_full_loop_comes_back_to_its_start() {
    let bends = Bend::list(&[deg(360.0)], &[], &[mm(25.0)]).unwrap();
    let path = Path::from_straights(&[mm(60.0), mm(40.0)], &bends).unwrap();
    let end = path.end_point();
    assert!(close(end[0], 100.0) && close(end[1], 0.0) && close(end[2], 0.0));
    assert_eq!(path.vertices().unwrap_err().problem().part, Part::Bend(1));
}

#[test]
fn points_lead_back_to_the_path() {
    let path = t2();
    let again = Path::from_vertices(&path.vertices().unwrap(), &[mm(14.3)]).unwrap();
    for (a, b) in path.straights().iter().zip(again.straights()) {
        assert!(close(*a, to_mm(*b)));
    }
    for (a, b) in path.bends().iter().zip(again.bends()) {
        assert!((to_deg(a.angle()) - to_deg(b.angle())).abs() < 1e-9);
        assert!((to_deg(a.rotation()) - to_deg(b.rotation())).abs() < 1e-9);
    }
}

#[test]
fn points_that_coincide_or_lie_on_a_straight_change_nothing() {
    let p = |x: f64, y: f64| [mm(x), mm(y), mm(0.0)];
    let clean = [p(0.0, 0.0), p(100.0, 0.0), p(100.0, 100.0)];
    let noisy = [p(0.0, 0.0), p(0.0, 0.0), p(40.0, 0.0), p(100.0, 0.0), p(100.0, 0.0), p(100.0, 100.0)];
    let radius = [mm(14.3)];
    assert_eq!(Path::from_vertices(&clean, &radius).unwrap(), Path::from_vertices(&noisy, &radius).unwrap());
    for points in
        [&[][..], &[p(1.0, 1.0)], &[p(1.0, 1.0), p(1.0, 1.0)], &[p(0.0, 0.0), p(9.0, 0.0), p(3.0, 0.0)]]
    {
        assert_eq!(Path::from_vertices(points, &radius).unwrap_err().code(), Code::PathDegenerate);
    }
    assert_eq!(Path::from_vertices(&[p(0.0, 0.0), p(9.0, 0.0)], &[]).unwrap().bends().len(), 0);
    assert_eq!(Path::from_vertices(&[p(0.0, 0.0), p(9.0, 0.0)], &[mm(14.3); 3]).unwrap().bends().len(), 0);
    let far = [p(0.0, 0.0), p(f64::NAN, 0.0)];
    assert_eq!(Path::from_vertices(&far, &radius).unwrap_err().code(), Code::NotANumber);
}

#[test]
fn a_line_without_bends_has_plain_zeros() {
    let path = Path::from_straights(&[mm(300.0)], &[]).unwrap();
    for length in [path.arc_length(), path.total_gain().unwrap()] {
        assert_eq!(to_mm(length).to_bits(), 0.0_f64.to_bits());
    }
}

#[test]
fn reverse_and_mirror_undo_themselves() {
    let path = t2();
    assert_eq!(path.reversed().reversed(), path);
    assert_eq!(path.mirrored().mirrored(), path);
    let turns = |p: &Path| p.bends().iter().map(|b| to_deg(b.rotation())).collect::<Vec<_>>();
    assert_eq!(turns(&path), [0.0, 180.0, 90.0]);
    assert_eq!(turns(&path.mirrored()), [0.0, 180.0, -90.0]);
    assert_eq!(turns(&path.reversed()), [0.0, 90.0, 180.0]);
}

#[test]
fn typed_straights_are_checked() {
    let bends = Bend::list(&[deg(90.0)], &[], &[mm(14.3)]).unwrap();
    let code = |s: &[Length]| Path::from_straights(s, &bends).unwrap_err().code();
    assert_eq!(code(&[mm(10.0)]), Code::CountMismatch);
    assert_eq!(code(&[mm(10.0), mm(-8.0)]), Code::OutOfRange);
    assert_eq!(code(&[mm(f64::INFINITY), mm(8.0)]), Code::NotANumber);
    // Worked out from legs, a straight may come out negative: the finding belongs to the plan.
    let path = Path::from_legs(&[mm(10.0), mm(50.0)], &bends).unwrap();
    assert!(close(path.straights()[0], -4.3));
}

#[test]
fn four_ways_of_measuring_give_one_path() {
    // Five quarter bends. A string outside them measures half the diameter x angle more at each: 5 x 3.740 mm.
    let od = inch(3.0 / 16.0);
    let bends = Bend::list(&[deg(90.0); 5], &[deg(90.0); 4], &[mm(14.3)]).unwrap();
    let straights = [60.0, 100.0, 110.0, 120.0, 130.0, 80.0].map(mm);
    let path = Path::from_straights(&straights, &bends).unwrap();
    let corner = path.legs().unwrap();
    let half = to_mm(od) / 2.0;
    let outer: Vec<Length> = corner
        .iter()
        .enumerate()
        .map(|(i, l)| *l + mm(if i == 0 || i == 5 { half } else { 2.0 * half }))
        .collect();
    for again in
        [Path::from_legs(&corner, &bends).unwrap(), Path::from_outer_legs(&outer, &bends, od).unwrap()]
    {
        for (a, b) in again.straights().iter().zip(&straights) {
            assert!(close(*a, to_mm(*b)));
        }
    }
}

#[test]
fn a_station_lies_on_the_line() {
    let path = t2();
    let whole = path.developed_length();
    let end = path.place_at(whole).unwrap();
    for (a, b) in end.point.iter().zip(path.end_point()) {
        assert!(close(*a, to_mm(b)));
    }
    let start = path.place_at(mm(0.0)).unwrap();
    assert!(start.point.iter().all(|c| close(*c, 0.0)));
    // Half way round the first bend of 30 degrees the line heads 15 degrees aside.
    let middle = path.place_at(path.straights()[0] + path.bends()[0].arc() / 2.0).unwrap();
    assert!((middle.direction[1].value - 0.258_819_045_102_520_76).abs() < 1e-12);
    for station in [-1.0, to_mm(whole) + 0.1, f64::NAN] {
        assert!(path.place_at(mm(station)).is_err());
    }
}

#[test]
fn the_box_holds_every_station_and_is_no_larger() {
    // A half circle of radius 25 bulges beyond both its ends: by hand, x from 0 to 40 + 25, y from 0 to 50.
    let bends = Bend::list(&[deg(180.0)], &[], &[mm(25.0)]).unwrap();
    let path = Path::from_straights(&[mm(40.0), mm(40.0)], &bends).unwrap();
    let extent = path.extent(mm(2.0));
    for (got, want) in extent.low.iter().chain(&extent.high).zip([-1.0, -1.0, -1.0, 66.0, 51.0, 1.0]) {
        assert!(close(*got, want), "{extent:?}");
    }
    let path = t2();
    let extent = path.extent(mm(0.001));
    for i in 0..=1000 {
        let place = path.place_at(path.developed_length() * (f64::from(i) / 1000.0)).unwrap();
        for axis in 0..3 {
            assert!(
                to_mm(place.point[axis]) >= to_mm(extent.low[axis])
                    && to_mm(place.point[axis]) <= to_mm(extent.high[axis])
            );
        }
    }
}

#[test]
fn a_radius_that_rounds_nothing_shall_still_be_one() {
    let points = [[0.0, 0.0, 0.0], [50.0, 0.0, 0.0]].map(|p: [f64; 3]| p.map(mm));
    let code = |radius: f64| Path::from_vertices(&points, &[mm(radius)]).unwrap_err().code();
    assert_eq!([code(-5.0), code(f64::NAN)], [Code::OutOfRange, Code::NotANumber]);
    assert_eq!(Bend::list(&[], &[], &[mm(-3.0)]).unwrap_err().code(), Code::OutOfRange);
}
