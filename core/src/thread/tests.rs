use super::*;
use crate::units::to_mm;

#[test]
fn one_thread_has_one_spelling() {
    for (typed, printed) in [
        ("M10x1", "M10x1"),
        ("M10×1,0", "M10x1"),
        ("M 10 x 1.00", "M10x1"),
        ("m12x1.25", "M12x1.25"),
        ("3/8-24", "3/8-24"),
        ("3/8 - 24 UNF", "3/8-24"),
        ("7/16-24 UNS", "7/16-24"),
        ("6/16-24", "3/8-24"),
        ("1 1/4-12", "1 1/4-12"),
    ] {
        let thread = Thread::read(typed).unwrap();
        assert_eq!(thread.to_string(), printed);
        assert_eq!(Thread::read(printed).unwrap(), thread);
    }
}

#[test]
fn what_names_no_thread_says_why() {
    for (typed, code) in [
        ("M10", Code::ThreadAmbiguous),
        ("10 mm spanner", Code::HexNotThread),
        ("10 mm", Code::HexNotThread),
        ("3/8 in", Code::HexNotThread),
        ("7/16\"", Code::HexNotThread),
        ("M10x", Code::Unreadable),
        ("M10x9", Code::Unreadable),
        ("M10x0", Code::Unreadable),
        ("M9999999x1", Code::Unreadable),
        ("3/8", Code::Unreadable),
        ("3/8-999", Code::Unreadable),
        ("", Code::Unreadable),
        ("metric", Code::Unreadable),
    ] {
        assert_eq!(Thread::read(typed).unwrap_err().code(), code, "{typed}");
    }
}

#[test]
fn diameter_and_pitch_follow_from_the_name() {
    let thread = Thread::read("3/8-24").unwrap();
    assert!((to_mm(thread.diameter()) - 9.525).abs() < 1e-12);
    assert!((to_mm(thread.pitch()) - 25.4 / 24.0).abs() < 1e-12);
}
