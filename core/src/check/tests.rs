use super::*;
use crate::bend::Bend;
use crate::code::Code;
use crate::units::{deg, inch, mm, to_deg, to_mm};

/// A line of eight bends through a tunnel, from points in inches.
fn tunnel() -> Path {
    let points = [
        [0.0, 0.0, 0.0],
        [5.25, 0.0, 0.0],
        [9.0, -3.0, 0.0],
        [9.0, -3.0, -7.5],
        [10.2, -4.0, -8.6],
        [64.0, -4.0, -8.6],
        [66.5, -1.5, -8.6],
        [96.0, -1.5, -8.6],
        [96.0, 6.0, -8.6],
        [96.0, 6.0, -4.0],
    ];
    Path::from_vertices(&points.map(|p| p.map(inch)), &[mm(14.3)]).unwrap()
}

#[test]
fn the_chosen_distance_shows_a_turn_that_the_ends_hide() {
    let path = tunnel();
    // Turn 2 wrong by 10 degrees: end B moves by 272 mm, while the ends keep their distance within a few tenths.
    let wrong = path.map_bend(1, |b| b.turned(b.rotation() + deg(10.0)));
    let norm = |p: crate::Point| p.iter().map(|c| to_mm(*c) * to_mm(*c)).sum::<f64>().sqrt();
    assert!((norm(wrong.end_point()) - norm(path.end_point())).abs() < 1.0);
    let checks = tape_checks(&path, Side::A);
    assert_eq!(checks.len(), 7);
    let check = checks.iter().find(|c| c.bend == 2).unwrap();
    assert!(to_mm(check.change) >= 8.0, "{check:?}");
    for first in [Side::A, Side::B] {
        let bends: Vec<usize> = tape_checks(&path, first).iter().map(|c| c.bend).collect();
        assert_eq!(bends.len(), 7, "{bends:?}");
    }
}

#[test]
fn a_mirrored_part_is_found_by_one_look() {
    let path = tunnel();
    let look = hand_check(&path, Side::A).unwrap();
    let other = hand_check(&path.mirrored(), Side::A).unwrap();
    assert_eq!((look.level_legs, look.look_leg), (other.level_legs, other.look_leg));
    assert_ne!(look.up, other.up);
    assert_eq!(look.judge(look.up), None);
    assert_eq!(look.judge(!look.up).unwrap().code, Code::HandMismatch);
    // A flat line has no hand.
    let bends = Bend::list(&[deg(90.0), deg(45.0)], &[deg(180.0)], &[mm(14.3)]).unwrap();
    let flat = Path::from_straights(&[mm(50.0), mm(50.0), mm(50.0)], &bends).unwrap();
    assert_eq!(hand_check(&flat, Side::B), None);
}

#[test]
fn what_differs_is_named_and_a_mirror_as_that() {
    let path = tunnel();
    assert!(compare(&path, &path, mm(1.0), deg(1.0)).is_empty());
    let mirror = compare(&path, &path.mirrored(), mm(1.0), deg(1.0));
    assert_eq!(mirror.len(), 1);
    assert_eq!(mirror[0].code, Code::HandMismatch);
    let wrong = path.map_bend(3, |b| b.turned(b.rotation() + deg(3.0)));
    let found = compare(&path, &wrong, mm(1.0), deg(1.0));
    assert_eq!(found.iter().map(|p| p.id()).collect::<Vec<_>>(), ["PATHS_DIFFER@bend 4"]);
    let short = Path::from_straights(&path.straights()[..2], &path.bends()[..1]).unwrap();
    assert_eq!(compare(&path, &short, mm(1.0), deg(1.0))[0].code, Code::PathsDiffer);
}

#[test]
fn turns_read_the_same_on_the_bent_line() {
    // The reading of each turn against the line itself: with the bend before laid flat, the height of the leg after.
    let path = tunnel();
    for first in [Side::A, Side::B] {
        let worked = Worked::new(&path, first);
        for (i, turn) in turn_checks(&path, first).iter().enumerate() {
            let bends = worked.path.bends();
            let pair =
                Bend::list(&[bends[i].angle(), bends[i + 1].angle()], &[turn.rotation], &[mm(14.3)]).unwrap();
            let piece = Path::from_straights(&[mm(100.0); 3], &pair).unwrap();
            let rise = piece.end_place().direction[2].value;
            assert!((crate::math::sin(crate::units::to_rad(turn.reading)) - rise).abs() < 1e-12);
        }
    }
    let text = turn_checks(&path, Side::B)[0].text();
    assert!(text.starts_with("legs 9 and 8 level") && text.contains("leg 7 "), "{text}");
    assert!(to_deg(turn_checks(&path, Side::A)[0].reading) != 0.0);
    // Flipped and not flipped lie at the same height; the side tells them apart.
    for (turn, said) in [
        (0.0, "level, to the left"),
        (180.0, "level, to the right"),
        (30.0, "up, to the left"),
        (-150.0, "down, to the right"),
    ] {
        let pair = Bend::list(&[deg(60.0), deg(60.0)], &[deg(turn)], &[mm(14.3)]).unwrap();
        let piece = Path::from_straights(&[mm(100.0); 3], &pair).unwrap();
        let text = turn_checks(&piece, Side::A)[0].text();
        assert!(text.ends_with(said), "{text}");
        // The side against the line itself: the first bend goes to +y, and the last leg further to +y, or back.
        let y = piece.end_place().direction[1].value;
        assert_eq!(
            y > crate::math::sin(crate::units::to_rad(deg(60.0))) - 0.5 && turn.abs() < 90.0,
            said.contains("left"),
            "{y}"
        );
    }
}
