//! Laws of what a single line needs beside its plan, tried on random lines.

#[path = "../common/mod.rs"]
mod common;

use common::random;
use linewright::check::{Spot, hand_check, tape_checks};
use linewright::explain::{Figure, changes, explain, sum};
use linewright::units::{
    deg, exact_angle_text, exact_length_text, mm, read_angle, read_length, read_rotation, to_deg, to_mm,
};
use linewright::{Bend, Path, Plan, PlanOptions, Point, Side};
use proptest::prelude::*;

const LENGTH_MM: f64 = 1e-9;

fn distance(a: &Point, b: &Point) -> f64 {
    let square = |i: usize| (to_mm(a[i]) - to_mm(b[i])) * (to_mm(a[i]) - to_mm(b[i]));
    (square(0) + square(1) + square(2)).sqrt()
}

proptest! {
    #![proptest_config(random::config(10_000))]

    #[test]
    fn what_is_printed_in_full_reads_back(length in -1e8..1e8_f64, tiny in 1e-12..1e-3_f64, angle in -3600.0..3600.0_f64) {
        for value in [length, tiny] {
            let again = read_length(&exact_length_text(mm(value))).map(to_mm);
            prop_assert_eq!(again.map(f64::to_bits), Ok(value.to_bits()));
        }
        let printed = exact_angle_text(deg(angle));
        for again in [read_angle(&printed), read_rotation(&printed)] {
            prop_assert_eq!(again.map(|a| to_deg(a).to_bits()), Ok(to_deg(deg(angle)).to_bits()));
        }
    }

    #[test]
    fn reverse_and_mirror_keep_every_distance(path in random::path()) {
        let corners = path.vertices().map_err(|e| TestCaseError::fail(e.to_string()))?;
        let other = |path: &Path| path.vertices().map_err(|e| TestCaseError::fail(e.to_string()));
        let (mirrored, mut reversed) = (other(&path.mirrored())?, other(&path.reversed())?);
        reversed.reverse();
        for (i, a) in corners.iter().enumerate() {
            for (j, b) in corners.iter().enumerate().skip(i + 1) {
                let right = distance(a, b);
                prop_assert!((distance(&mirrored[i], &mirrored[j]) - right).abs() <= LENGTH_MM);
                prop_assert!((distance(&reversed[i], &reversed[j]) - right).abs() <= LENGTH_MM);
            }
        }
        prop_assert!(path.reversed().reversed() == path && path.mirrored().mirrored() == path);
    }

    #[test]
    fn ways_of_measuring_agree(path in random::path(), od in 3.0..12.0_f64) {
        let fail = |e: linewright::Error| TestCaseError::fail(e.to_string());
        let legs = path.legs().map_err(fail)?;
        // Outer corners lie half the diameter x tan(angle / 2) further out along both legs.
        let half = |bend: Option<&Bend>| bend.map_or(0.0, |b| od / 2.0 * (to_deg(b.angle()) / 2.0).to_radians().tan());
        let outer: Vec<_> = legs
            .iter()
            .enumerate()
            .map(|(i, leg)| mm(to_mm(*leg) + half(i.checked_sub(1).and_then(|i| path.bends().get(i))) + half(path.bends().get(i))))
            .collect();
        for again in [
            Path::from_legs(&legs, path.bends()).map_err(fail)?,
            Path::from_outer_legs(&outer, path.bends(), mm(od)).map_err(fail)?,
            Path::restored(path.straights(), path.bends()).map_err(fail)?,
        ] {
            for (a, b) in again.straights().iter().zip(path.straights()) {
                prop_assert!((to_mm(*a) - to_mm(*b)).abs() <= LENGTH_MM, "{} {}", to_mm(*a), to_mm(*b));
            }
        }
    }
}

proptest! {
    #![proptest_config(random::config(1_000))]

    #[test]
    fn a_line_is_continuous_and_fills_its_box(path in random::path(), od in 3.0..12.0_f64) {
        let whole = path.developed_length();
        let extent = path.extent(mm(od));
        let mut reached = [[f64::INFINITY; 2]; 3];
        let steps = 400_u32;
        let mut last: Option<Point> = None;
        for i in 0..=steps {
            let share = f64::from(i) / f64::from(steps);
            let place = path.place_at(whole * share).map_err(|e| TestCaseError::fail(e.to_string()))?;
            let long: f64 = place.direction.iter().map(|part| part.value * part.value).sum();
            prop_assert!((long - 1.0).abs() <= 1e-12);
            // A chord is never longer than the way along the line.
            if let Some(last) = last {
                prop_assert!(distance(&last, &place.point) <= to_mm(whole) / f64::from(steps) + LENGTH_MM);
            }
            for (axis, reached) in reached.iter_mut().enumerate() {
                let at = to_mm(place.point[axis]);
                let (low, high) = (to_mm(extent.low[axis]) + od / 2.0, to_mm(extent.high[axis]) - od / 2.0);
                prop_assert!(at >= low - LENGTH_MM && at <= high + LENGTH_MM);
                reached[0] = reached[0].min(at - low);
                reached[1] = reached[1].min(high - at);
            }
            last = Some(place.point);
        }
        // No face of the box stands off the line by more than a step can miss.
        let step = to_mm(whole) / f64::from(steps);
        prop_assert!(reached.iter().flatten().all(|off| *off <= step), "{reached:?}");
        let end = path.end_place();
        prop_assert!(last.is_some_and(|last| distance(&last, &end.point) <= 1e-7));
    }

    #[test]
    fn the_chosen_distance_changes_most(path in random::path(), from_b in any::<bool>()) {
        let first = if from_b { Side::B } else { Side::A };
        let worked = if from_b { path.reversed() } else { path.clone() };
        let count = path.bends().len();
        let spots = |path: &Path| {
            let mut spots = vec![path.place_at(mm(0.0)).map(|p| p.point)];
            spots.extend(path.bend_starts().into_iter().map(Ok));
            spots.push(Ok(path.end_point()));
            spots.into_iter().collect::<Result<Vec<Point>, _>>().map_err(|e| TestCaseError::fail(e.to_string()))
        };
        let right = spots(&worked)?;
        for check in tape_checks(&path, first) {
            let order = if from_b { count - check.bend } else { check.bend - 1 };
            let turned = |by: f64| {
                let mut bends = worked.bends().to_vec();
                let bend = bends[order];
                bends[order] = Bend::new(bend.angle(), bend.rotation() + deg(by), bend.radius())?;
                Path::restored(worked.straights(), &bends)
            };
            let wrong = [10.0, -10.0].map(|by| turned(by).map_err(|e| TestCaseError::fail(e.to_string())).and_then(|p| spots(&p)));
            let [plus, minus] = wrong;
            let (plus, minus) = (plus?, minus?);
            let mut most = 0.0_f64;
            for i in 0..right.len() {
                for j in i + 1..right.len() {
                    let was = distance(&right[i], &right[j]);
                    let least = (distance(&plus[i], &plus[j]) - was).abs().min((distance(&minus[i], &minus[j]) - was).abs());
                    most = most.max(least);
                }
            }
            prop_assert!((to_mm(check.change) - most).abs() <= 1e-6, "{} instead of {most}", to_mm(check.change));
            prop_assert!(check.from != check.to && check.from != Spot::End(first.other()));
        }
        let look = (hand_check(&path, first), hand_check(&path.mirrored(), first));
        match look {
            (Some(a), Some(b)) => prop_assert!(a.up != b.up && a.look_leg == b.look_leg),
            (a, b) => prop_assert!(a.is_none() && b.is_none()),
        }
    }

    #[test]
    fn every_explanation_adds_up(line in random::line(), bench in random::bench(), options in random::options()) {
        let plan = Plan::new(&line, &bench, &options);
        let mut figures = vec![Figure::FinishedLength, Figure::CutLength];
        figures.extend((1..=plan.bends().len()).map(Figure::Mark));
        for figure in figures {
            let Ok(total) = sum(&plan, figure).map(|sum| to_mm(sum.total())) else { continue };
            let known = match figure {
                Figure::FinishedLength => Some(plan.finished_length()),
                Figure::CutLength => plan.cut().map(|cut| cut.length()),
                Figure::Mark(n) => plan.bends()[n - 1].mark,
                _ => None,
            };
            let known = known.map(to_mm).ok_or_else(|| TestCaseError::fail("explained, but not known"))?;
            // Gains near half a turn are long differences; what is left of a huge leg keeps its share of rounding.
            prop_assert!((total - known).abs() <= 1e-9 * (1.0 + known.abs()) + 1e-6, "{figure:?}: {total} {known}");
            let text = explain(&plan, figure).map_err(|e| TestCaseError::fail(e.to_string()))?;
            let shown: Option<Vec<f64>> = text
                .lines()
                .map(|line| line.trim_end_matches(" mm").split_whitespace().last().and_then(|n| n.parse().ok()))
                .collect();
            let mut shown = shown.ok_or_else(|| TestCaseError::fail(text.clone()))?;
            let last = shown.pop().ok_or_else(|| TestCaseError::fail("empty"))?;
            prop_assert!((shown.iter().sum::<f64>() - last).abs() <= 1e-6 * (1.0 + last.abs()), "{text}");
        }
        prop_assert!(changes(&plan, &plan.clone()).is_empty());
        if let (Some(_), Ok(more)) = (plan.cut(), PlanOptions::default().with_reserve(mm(999.0))) {
            let other = Plan::new(&line, &bench, &more);
            prop_assert!(changes(&plan, &other).iter().any(|change| change.what == "cut length"));
        }
    }
}
