use super::*;
use crate::code::{Code, Level};
use crate::units::to_mm;

fn filled() -> LineDraft {
    let mut draft = LineDraft::new();
    for (field, typed) in [
        ("name", " T2 "),
        ("od", "3/16 in"),
        ("wall", "0.028 in"),
        ("material", "low-carbon steel"),
        ("legs", "55 mm; 28 in; 9 1/4 in; 76 mm"),
        ("bends", "30 deg; 60 deg; 90 deg"),
        ("rotations", "180 deg; 90 deg"),
        ("radius", "14.3 mm"),
        ("a_thread", "M10x1"),
        ("a_nut_length", "17 mm"),
        ("a_nut_bore", "5 mm"),
        ("a_nose", "coned"),
        ("a_flare", "double-45"),
        ("b_thread", "M10"),
        ("b_nut_length", "17 mm"),
        ("b_nut_bore", "5 mm"),
        ("b_nose", "unknown"),
        ("b_flare", "double-45"),
        ("b_port", "cylinder"),
    ] {
        draft.set(field, typed).unwrap();
    }
    draft
}

fn ids(draft: &LineDraft) -> Vec<String> {
    draft.check().problems.iter().map(Problem::id).collect()
}

#[test]
fn a_stop_still_gives_a_line_and_travels_with_it() {
    let checked = filled().check();
    let line = checked.line.unwrap();
    assert_eq!(line.name(), "T2");
    assert!((to_mm(line.path().developed_length()) - 1069.3).abs() < 0.005);
    assert_eq!(ids(&filled()), ["THREAD_AMBIGUOUS@field b_thread"]);
    assert_eq!(line.found(), checked.problems);
    assert_eq!(line.end(Side::B).nut.thread(), None);
    assert_eq!(line.end(Side::A).port, None);
    assert_eq!(line.end(Side::B).port.as_ref().unwrap().seat, None);
}

#[test]
fn everything_wrong_is_found_at_once() {
    let mut draft = filled();
    for (field, typed) in [
        ("od", "316"),
        ("wall", "45732"),
        ("material", "unobtainium"),
        ("legs", "55; 28 in; 1,500 mm; 76 mm"),
        ("bends", "30 deg; 60 mm; 90 deg"),
        ("a_flare", "single-45"),
        ("a_nut_bore", "1e9 mm"),
        ("b_nose", ""),
    ] {
        draft.set(field, typed).unwrap();
    }
    let ids = ids(&draft);
    for id in [
        "UNIT_MISSING@field od",
        "DATE_IN_SIZE@field wall",
        "UNKNOWN_NAME@field material",
        "UNIT_MISSING@field legs, item 1",
        "NUMBER_AMBIGUOUS@field legs, item 3",
        "WRONG_KIND@field bends, item 2",
        "SINGLE_45_REFUSED@field a_flare",
        "OUT_OF_RANGE@field a_nut_bore",
        "FIELD_MISSING@field b_nose",
        "THREAD_AMBIGUOUS@field b_thread",
    ] {
        assert!(ids.iter().any(|i| i == id), "{id} not in {ids:?}");
    }
    assert!(draft.check().line.is_none());
    assert_eq!(ids.last().unwrap(), "THREAD_AMBIGUOUS@field b_thread", "stops come after refusals");
}

#[test]
fn an_empty_draft_names_every_needed_field() {
    let ids = ids(&LineDraft::new());
    for field in FIELDS.iter().filter(|f| f.needed) {
        assert!(ids.contains(&format!("FIELD_MISSING@field {}", field.name)), "{}", field.name);
    }
}

#[test]
fn lists_that_do_not_belong_together_are_refused() {
    for (field, typed, code) in [
        ("rotations", "180 deg", Code::CountMismatch),
        ("legs", "55 mm; 28 in", Code::CountMismatch),
        ("radius", "", Code::FieldMissing),
        ("straights", "55 mm; 20 mm; 20 mm; 76 mm", Code::FieldsConflict),
        ("outer_legs", "55 mm; 20 mm; 20 mm; 76 mm", Code::FieldsConflict),
        ("legs", "", Code::FieldMissing),
        ("making", "former; hand", Code::CountMismatch),
        ("making", "machine", Code::UnknownName),
        ("a_in_place", "perhaps", Code::UnknownName),
        ("a_holes", "-3 mm", Code::OutOfRange),
        ("b_flare_diameter", "1 mm", Code::OutOfRange),
        ("a_across_flats", "8.6 mm", Code::OutOfRange),
        ("bends", "30 deg; 180 deg; 90 deg", Code::NoCorner),
        ("min_radius", "14 mm", Code::FieldMissing),
    ] {
        let mut draft = filled();
        draft.set(field, typed).unwrap();
        let problems = draft.check().problems;
        assert!(problems.iter().any(|p| p.code == code), "{field}: {problems:?}");
        assert_eq!(problems[0].level(), Level::Refuse);
    }
}

#[test]
fn a_field_must_exist() {
    let error = LineDraft::new().set("odd", "3/16 in").unwrap_err();
    assert_eq!(error.code(), Code::UnknownName);
    assert!(error.need().to_string().contains("od, wall"));
}

#[test]
fn the_rest_of_an_end_is_read() {
    let mut draft = filled();
    for (field, typed) in [
        ("a_across_flats", "11 mm"),
        ("a_loaded", "spring armor (long end to A); grommet"),
        ("a_holes", "13 mm; 12.5 mm"),
        ("b_in_place", "yes"),
        ("b_flare_diameter", "7.2 mm"),
        ("making", "hand"),
        ("deferred", "left cylinder not bought yet"),
    ] {
        draft.set(field, typed).unwrap();
    }
    let line = draft.check().line.unwrap();
    let a = line.end(Side::A);
    // 11 x 2 / sqrt 3.
    assert!((to_mm(a.nut.across_corners().unwrap()) - 12.701_705_922_171_767).abs() < 1e-12);
    assert_eq!(
        a.loaded[0],
        LoadedPart { name: "spring armor".to_owned(), facing: "long end to A".to_owned() }
    );
    assert_eq!(a.loaded[1], LoadedPart { name: "grommet".to_owned(), facing: String::new() });
    assert_eq!(a.holes.len(), 2);
    assert!(line.end(Side::B).flared_in_place && !a.flared_in_place);
    assert_eq!(line.end(Side::B).flare_diameter.map(to_mm), Some(7.2));
    assert_eq!(line.path().bends()[2].making(), crate::Making::Hand);
    assert_eq!(line.waits_for(), Some("left cylinder not bought yet"));
}

#[test]
fn a_bare_fraction_is_inches_only_where_the_import_was_told_so() {
    let mut draft = filled();
    draft.set("od", "3/16").unwrap();
    assert!(ids(&draft).contains(&"UNIT_MISSING@field od".to_owned()));
    let told = draft.check_in(crate::units::Notation { bare_fraction_is_inch: true, ..Default::default() });
    let line = told.line.unwrap();
    assert_eq!(to_mm(line.tube().od()).to_bits(), 4.7625_f64.to_bits());
    assert!(told.problems.iter().any(|p| p.id() == "ASSUMED_INCH@field od"));
    assert_eq!(line.assumed().len(), 1);
}

#[test]
fn how_tight_a_curve_a_nut_follows() {
    // Brute force: a bore of the given length and width, the tube's edges two arcs about one center.
    let od = crate::units::inch(3.0 / 16.0);
    for (bore, want) in [(4.9, 265.2), (5.0, 154.6), (5.1, 109.6)] {
        let nut = Nut::new(None, crate::units::mm(17.0), crate::units::mm(bore), None).unwrap();
        let radius = to_mm(nut.tightest_curve(od).unwrap());
        assert!((radius - want).abs() < 0.05, "{bore}: {radius}");
        let half = to_mm(od) / 2.0;
        let room = |r: f64| r + half - ((r - half) * (r - half) - 8.5 * 8.5).sqrt();
        assert!((room(radius) - bore).abs() < 1e-9 && room(radius + 1.0) < bore && room(radius - 1.0) > bore);
    }
    assert_eq!(
        Nut::new(None, crate::units::mm(17.0), crate::units::mm(4.7), None).unwrap().tightest_curve(od),
        None
    );
}

#[test]
fn a_bad_depth_is_said_of_the_field_it_was_typed_into() {
    let fields = ["a_nut_thread_length", "a_nut_lead", "a_port_thread_depth", "a_seat_depth"];
    for bad in fields {
        let mut draft = filled();
        for field in fields {
            draft.set(field, if field == bad { "900 mm" } else { "5 mm" }).unwrap();
        }
        assert!(ids(&draft).contains(&format!("OUT_OF_RANGE@field {bad}")), "{bad}: {:?}", ids(&draft));
    }
    let mut draft = filled();
    draft.set("a_nut_thread_length", "16 mm").unwrap().set("a_nut_lead", "1.1 mm").unwrap();
    assert!(ids(&draft).contains(&"OUT_OF_RANGE@field a_nut_thread_length".to_owned()));
}
