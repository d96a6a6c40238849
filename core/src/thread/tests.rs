use super::*;
use crate::code::Code;
use crate::units::to_mm;

#[test]
fn one_thread_has_one_spelling() {
    for (typed, printed) in [
        ("M10x1", "M10x1"),
        ("M10×1,0", "M10x1"),
        ("M 10 x 1.00", "M10x1"),
        ("m12x1.25", "M12x1.25"),
        ("M10X1-6g", "M10x1-6g"),
        ("M10×1 – 4g6g", "M10x1-4g6g"),
        ("M10x1 6H", "M10x1-6H"),
        ("M10x1-5H6H-S-LH", "M10x1-5H6H-S-LH"),
        ("M10x1 left hand", "M10x1-LH"),
        ("M10x1.0 mm - 6g", "M10x1-6g"),
        ("3/8-24", "3/8-24 UNF"),
        ("3/8 - 24 UNF", "3/8-24 UNF"),
        ("3/8 UNF", "3/8-24 UNF"),
        ("⅜-24", "3/8-24 UNF"),
        ("1¼-12 UNF", "1 1/4-12 UNF"),
        ("G⅛", "G1/8"),
        ("M10x1-6g-RH", "M10x1-6g"),
        ("3/8x24 tpi", "3/8-24 UNF"),
        (".375-24 UNF-2A", "3/8-24 UNF-2A"),
        ("0.4375-20", "7/16-20 UNF"),
        ("3/8-24 UNF-2A", "3/8-24 UNF-2A"),
        ("3/8-24 unf 2a lh", "3/8-24 UNF-2A-LH"),
        ("7/16-24 UNS-2B", "7/16-24 UNS-2B"),
        ("7/16-24 UNS", "7/16-24 UNS"),
        ("7/16-24", "7/16-24 UNS"),
        ("6/16-24", "3/8-24 UNF"),
        ("1 1/4-12", "1 1/4-12 UNF"),
        ("1-12 UNF", "1-12 UNF"),
        ("M10-1.0", "M10x1"),
        ("M10-1-6g", "M10x1-6g"),
        ("3/8\" UNF", "3/8-24 UNF"),
        ("1/8-28 UNS", "1/8-28 UNS"),
        ("10-32 UNF-2B", "No. 10-32 UNF-2B"),
        ("#10-24", "No. 10-24 UNC"),
        ("No. 4-40", "No. 4-40 UNC"),
        ("G1/8 A", "G1/8 A"),
        ("g 1/8", "G1/8"),
        ("G 1/8-28", "G1/8"),
        ("1/4 BSPP", "G1/4"),
        ("G1/8 LH", "G1/8 LH"),
        ("Rc1/8", "Rc 1/8"),
        ("R 1/4", "R 1/4"),
        ("Rp 3/8", "Rp 3/8"),
        ("1/8-27 NPT", "1/8-27 NPT"),
        ("NPT 1/4", "1/4-18 NPT"),
        ("1/8 npt", "1/8-27 NPT"),
        ("1-11.5 NPT", "1-11.5 NPT"),
    ] {
        let thread = Thread::read(typed).unwrap_or_else(|error| panic!("{typed}: {error}"));
        assert_eq!(thread.to_string(), printed, "{typed}");
        assert_eq!(Thread::read(printed), Ok(thread), "{printed}");
    }
}

#[test]
fn what_names_no_thread_says_why() {
    for (typed, code) in [
        ("M10", Code::ThreadAmbiguous),
        ("M10-6g", Code::ThreadAmbiguous),
        ("M10 fine", Code::ThreadAmbiguous),
        ("1/8 BSP", Code::ThreadAmbiguous),
        ("1/8 BSPT", Code::ThreadAmbiguous),
        ("7/16 UNS", Code::ThreadAmbiguous),
        ("1/8-28", Code::ThreadAmbiguous),
        ("1/8-27", Code::ThreadAmbiguous),
        ("1/4-18", Code::ThreadAmbiguous),
        ("10mm nut", Code::HexNotThread),
        ("AF 10", Code::HexNotThread),
        ("10 mm across flats", Code::HexNotThread),
        ("#400000-32", Code::Unreadable),
        ("8x16", Code::Unreadable),
        ("10 mm spanner", Code::HexNotThread),
        ("10 mm", Code::HexNotThread),
        ("3/8 in", Code::HexNotThread),
        ("7/16\"", Code::HexNotThread),
        ("3/8-24 UNC", Code::ThreadContradiction),
        ("1/8-28 NPT", Code::ThreadContradiction),
        ("M10x", Code::Unreadable),
        ("M10x9", Code::OutOfRange),
        ("M10x0", Code::OutOfRange),
        ("M10x6", Code::OutOfRange),
        ("M1000x1", Code::OutOfRange),
        ("M400x4", Code::OutOfRange),
        ("M9999999x1", Code::Unreadable),
        ("10mm x 1.0mm", Code::ThreadAmbiguous),
        ("10x1", Code::ThreadAmbiguous),
        ("SW 11", Code::HexNotThread),
        ("11mm A/F", Code::HexNotThread),
        ("9/16", Code::ThreadAmbiguous),
        ("M10x1-6H/6g", Code::Unreadable),
        ("M10x1-9H", Code::Unreadable),
        ("M10x1-5g7H", Code::Unreadable),
        ("M10x1-6A", Code::Unreadable),
        ("3/8-24 UNF-4A", Code::Unreadable),
        ("3/8-24 UNF-2C", Code::Unreadable),
        ("G1/7", Code::Unreadable),
        ("Rc 1/8 A", Code::Unreadable),
        ("1/8-27 NPTF", Code::Unreadable),
        ("3/8", Code::ThreadAmbiguous),
        ("3/8-999", Code::Unreadable),
        ("1/64-4", Code::Unreadable),
        ("", Code::Unreadable),
        ("metric", Code::Unreadable),
        ("lh", Code::Unreadable),
        ("M", Code::Unreadable),
        ("é", Code::Unreadable),
        ("Größe G", Code::Unreadable),
    ] {
        match Thread::read(typed) {
            Ok(thread) => panic!("{typed} was read as {thread}"),
            Err(error) => assert_eq!(error.code(), code, "{typed}"),
        }
    }
}

#[test]
fn diameter_and_pitch_follow_from_the_name() {
    let thread = Thread::read("3/8-24").unwrap();
    assert!((to_mm(thread.diameter()) - 9.525).abs() < 1e-12);
    assert!((to_mm(thread.pitch()) - 25.4 / 24.0).abs() < 1e-12);
}

#[test]
fn the_side_of_a_class_is_asked_for() {
    for (typed, side) in [
        ("M10x1-6g", ThreadSide::Internal),
        ("M10x1-6H", ThreadSide::External),
        ("3/8-24 UNF-2B", ThreadSide::External),
        ("R 1/8", ThreadSide::Internal),
        ("G1/8 A", ThreadSide::Internal),
    ] {
        assert_eq!(
            Thread::read(typed).unwrap().limits(side).unwrap_err().code(),
            Code::ThreadSide,
            "{typed}"
        );
    }
    // ISO 965-1 has no such grades for such pitches.
    for (typed, side) in [
        ("M6x0.5-8H", ThreadSide::Internal),
        ("M10x0.25-9g8g", ThreadSide::External),
        ("M5x0.2", ThreadSide::Internal),
    ] {
        assert_eq!(
            Thread::read(typed).unwrap().limits(side).unwrap_err().code(),
            Code::OutOfRange,
            "{typed}"
        );
    }
}

/// Whole numbers are inches or number sizes by the count that each can have (tables of ASME B1.1, from memory); a wrong
/// answer would be off by forty times.
#[test]
fn whole_numbers_are_inches_or_number_sizes() {
    let mm_of = |typed: &str| Thread::read(typed).map(|thread| to_mm(thread.diameter()));
    for (typed, inches) in [
        ("6-16 UN-2A", 6.0),
        ("6\"-16 UN", 6.0),
        ("5\"-16 UN", 5.0),
        ("5-16 UN", 5.0),
        ("6-8 UN", 6.0),
        ("5-12 UN", 5.0),
        ("5-4 UN", 5.0),
        ("4-36 UNS", 0.112),
        ("4-40", 0.112),
        ("5-40", 0.125),
        ("6-32", 0.138),
        ("10-24", 0.19),
        ("10-28 UNS", 0.19),
        ("#10-32", 0.19),
        ("12-28", 0.216),
        ("1-8", 1.0),
        ("1-14 UNS", 1.0),
        ("1-64", 0.073),
        ("2-4.5", 2.0),
        ("2-56 UNC", 0.086),
        ("1 1/4-12", 1.25),
    ] {
        let found = mm_of(typed).unwrap_or_else(|error| panic!("{typed}: {error}"));
        assert!((found - inches * 25.4).abs() < 1e-9, "{typed}: {found}");
        let thread = Thread::read(typed).unwrap();
        assert_eq!(Thread::read(&thread.to_string()), Ok(thread), "{typed} is printed as {thread}");
    }
    for typed in ["5-16", "5-8", "3-16", "3-8", "1-16", "1-32", "10-12", "12-16 UN", "2 UNC", "4 UNC"] {
        let error = mm_of(typed).map(|found| panic!("{typed}: {found} mm")).unwrap_err();
        assert_eq!(error.code(), Code::ThreadAmbiguous, "{typed}: {error}");
    }
}
