//! Laws of bends and paths that hold for every line, tried on random ones.

#[path = "../common/mod.rs"]
mod common;

use common::random;
use linewright::units::{deg, mm, ratio, to_deg, to_mm};
use linewright::{Bend, Path, Point, Springback, Trial};
use proptest::prelude::*;

/// A law about lengths holds to a picometer, far above rounding and far below everything else.
const LENGTH_MM: f64 = 1e-9;
const ANGLE_DEG: f64 = 1e-9;

fn close(a: f64, b: f64) -> bool {
    (a - b).abs() <= LENGTH_MM
}

/// Whether two rotations differ by whole turns only.
fn same_turn(a: f64, b: f64) -> bool {
    let apart = (a - b).rem_euclid(360.0);
    apart.min(360.0 - apart) <= ANGLE_DEG
}

fn distance(a: &Point, b: &Point) -> f64 {
    let square = |i: usize| (to_mm(a[i]) - to_mm(b[i])) * (to_mm(a[i]) - to_mm(b[i]));
    (square(0) + square(1) + square(2)).sqrt()
}

fn same_shape(a: &Path, b: &Path) -> Result<(), TestCaseError> {
    prop_assert_eq!(a.straights().len(), b.straights().len());
    for (a, b) in a.straights().iter().zip(b.straights()) {
        prop_assert!(close(to_mm(*a), to_mm(*b)), "straight {} and {}", to_mm(*a), to_mm(*b));
    }
    for (a, b) in a.bends().iter().zip(b.bends()) {
        prop_assert!((to_deg(a.angle()) - to_deg(b.angle())).abs() <= ANGLE_DEG, "{a:?} {b:?}");
        prop_assert!(same_turn(to_deg(a.rotation()), to_deg(b.rotation())), "{a:?} {b:?}");
        prop_assert!(close(to_mm(a.radius()), to_mm(b.radius())));
    }
    Ok(())
}

fn radii(path: &Path) -> Vec<linewright::units::Length> {
    path.bends().iter().map(Bend::radius).collect()
}

/// Turned about z, y and x, then moved.
fn moved(points: &[Point], angles: [f64; 3], by: [f64; 3]) -> Vec<Point> {
    let turn = |p: [f64; 3], i: usize, j: usize, angle: f64| {
        let (sin, cos) = angle.sin_cos();
        let mut q = p;
        q[i] = cos * p[i] - sin * p[j];
        q[j] = sin * p[i] + cos * p[j];
        q
    };
    let place = |p: &Point| {
        let p = turn(turn(turn(p.map(to_mm), 0, 1, angles[0]), 2, 0, angles[1]), 1, 2, angles[2]);
        [p[0] + by[0], p[1] + by[1], p[2] + by[2]].map(mm)
    };
    points.iter().map(place).collect()
}

proptest! {
    #![proptest_config(random::config(10_000))]

    #[test]
    fn straights_lead_to_points_and_back(path in random::path()) {
        let points = path.vertices()?;
        let again = Path::from_vertices(&points, &radii(&path))?;
        same_shape(&path, &again)?;
        let legs = Path::from_legs(&path.legs()?, path.bends())?;
        same_shape(&path, &legs)?;
    }

    #[test]
    fn the_end_point_is_the_last_corner_point(path in random::path()) {
        let points = path.vertices()?;
        let last = points.last().ok_or(TestCaseError::fail("no points"))?;
        prop_assert!(distance(last, &path.end_point()) <= LENGTH_MM);
    }

    #[test]
    fn a_line_is_the_same_wherever_it_lies(
        path in random::path(),
        angles in prop::array::uniform3(-3.2..3.2_f64),
        by in prop::array::uniform3(-1000.0..1000.0_f64),
    ) {
        let points = moved(&path.vertices()?, angles, by);
        same_shape(&path, &Path::from_vertices(&points, &radii(&path))?)?;
    }

    #[test]
    fn from_the_other_end_it_is_the_same_line(path in random::path()) {
        let back = path.reversed();
        prop_assert_eq!(&back.reversed(), &path);
        prop_assert!(close(to_mm(path.developed_length()), to_mm(back.developed_length())));
        prop_assert!(close(to_mm(path.total_gain()?), to_mm(back.total_gain()?)));
        let (here, there) = (path.vertices()?, back.vertices()?);
        let n = here.len();
        for i in 0..n {
            for j in 0..i {
                let apart = distance(&here[i], &here[j]);
                prop_assert!(close(apart, distance(&there[n - 1 - i], &there[n - 1 - j])), "{i} {j}");
            }
        }
        let origin = [mm(0.0); 3];
        prop_assert!(close(distance(&origin, &path.end_point()), distance(&origin, &back.end_point())));
    }

    #[test]
    fn the_other_hand_is_the_mirror_image(path in random::path()) {
        let other = path.mirrored();
        prop_assert_eq!(&other.mirrored(), &path);
        // The first bend lies in the x-y plane, so the mirror is that plane.
        for (here, there) in path.vertices()?.iter().zip(&other.vertices()?) {
            prop_assert!(close(to_mm(here[0]), to_mm(there[0])));
            prop_assert!(close(to_mm(here[1]), to_mm(there[1])));
            prop_assert!(close(to_mm(here[2]), -to_mm(there[2])));
        }
    }

    #[test]
    fn a_bend_of_zero_adds_nothing(
        path in random::path(),
        at in any::<prop::sample::Index>(),
        turn in -180.0..180.0,
    ) {
        // Cut one straight in two and put the bend between; the rotation before it must be undone after it.
        let at = at.index(path.straights().len());
        let mut straights = path.straights().to_vec();
        let half = straights[at] / 2.0;
        straights[at] = half;
        straights.insert(at, half);
        let mut bends = path.bends().to_vec();
        let nothing = Bend::new(deg(0.0), deg(if at == 0 { 0.0 } else { turn }), mm(14.3))?;
        if let Some(next) = bends.get(at).copied() {
            let undone = to_deg(next.rotation()) - to_deg(nothing.rotation());
            bends[at] = Bend::new(next.angle(), deg(undone), next.radius())?;
        }
        bends.insert(at, nothing);
        let same = Path::from_straights(&straights, &bends)?;
        prop_assert!(close(to_mm(path.developed_length()), to_mm(same.developed_length())));
        prop_assert!(distance(&path.end_point(), &same.end_point()) <= LENGTH_MM);
    }

    #[test]
    fn developed_length_is_legs_less_gains(path in random::path()) {
        let legs: f64 = path.legs()?.iter().map(|leg| to_mm(*leg)).sum();
        prop_assert!((to_mm(path.developed_length()) - (legs - to_mm(path.total_gain()?))).abs() <= 1e-9);
        let parts = to_mm(path.straight_length()) + to_mm(path.arc_length());
        prop_assert!(close(to_mm(path.developed_length()), parts));
    }

    #[test]
    fn a_bend_keeps_its_proportions(angle in 0.0..179.9_f64, radius in 1.0..5000.0_f64) {
        let bend = Bend::new(deg(angle), deg(0.0), mm(radius))?;
        let (arc, tangent, gain) = (to_mm(bend.arc()), to_mm(bend.tangent_length()?), to_mm(bend.gain()?));
        prop_assert!(gain >= 0.0 && arc >= 0.0 && tangent >= 0.0);
        prop_assert!((2.0 * tangent - arc - gain).abs() <= 1e-14 * tangent.max(1.0));
        let double = Bend::new(deg(angle), deg(0.0), mm(radius * 2.0))?;
        prop_assert!((to_mm(double.gain()?) - 2.0 * gain).abs() <= 1e-12 * gain);
    }

    #[test]
    fn a_setting_springs_back_to_what_was_wanted(
        constant in 0.0..5.0_f64,
        proportional in 0.0..0.2_f64,
        wanted in 0.1..360.0_f64,
    ) {
        let remains = |set: f64| set - constant - proportional * set;
        let springback = Springback::new(deg(constant), ratio(proportional))?;
        let set = |springback: &Springback| springback.setting(deg(wanted)).map_or(f64::NAN, to_deg);
        prop_assert!((remains(set(&springback)) - wanted).abs() <= 1e-9);
        // Trials made with that springback find it again.
        let trial = |set: f64| Trial { set: deg(set), got: deg(remains(set)) };
        let fitted = Springback::from_trials(&[trial(30.0), trial(75.0), trial(120.0)])?;
        prop_assert!((set(&fitted) - set(&springback)).abs() <= 1e-9);
    }
}
