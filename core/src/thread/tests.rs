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
        ("24 tpi 3/8", "3/8-24 UNF"),
        ("24tpi 7/16\" UNS", "7/16-24 UNS"),
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
        ("2-11.5 NPT", "2-11.5 NPT"),
        ("G 5/8 B", "G5/8 B"),
        ("G1 3/4", "G1 3/4"),
        ("R 1 1/2", "R 1 1/2"),
        ("G 5-1/2", "G5 1/2"),
        ("Rp 6\"", "Rp 6"),
        ("2 1/2 NPT", "2 1/2-8 NPT"),
        ("NPT 12", "12-8 NPT"),
        ("1.250-12", "1 1/4-12 UNF"),
        ("1.0-8", "1-8 UNC"),
        (".5-20 UNF", "1/2-20 UNF"),
        ("0.50-20", "1/2-20 UNF"),
        (".4000-24 UNS", "0.4000-24 UNS"),
        ("0.40625-24", "13/32-24 UNS"),
        ("0.406-24", "13/32-24 UNS"),
        ("1.03125-12 UNS", "1 1/32-12 UNS"),
        ("M10/1", "M10x1"),
        ("M10mmx1mm", "M10x1"),
        ("M10 mm x 1 mm", "M10x1"),
        ("MF10x1", "M10x1"),
        ("3/8 in - 24", "3/8-24 UNF"),
        ("3/8 inch UNF", "3/8-24 UNF"),
        ("3/8-24-2A", "3/8-24 UNF-2A"),
        ("3/8-24 2B", "3/8-24 UNF-2B"),
        ("3/8-24 LH-2A", "3/8-24 UNF-2A-LH"),
        ("1/4 nf", "1/4-28 UNF"),
        ("3/8 NEF", "3/8-32 UNEF"),
        ("1/2 NC", "1/2-13 UNC"),
        ("G 1/8 in", "G1/8"),
        ("G1/8\"", "G1/8"),
        ("R1/8 inch", "R 1/8"),
        ("1/2-20 NF", "1/2-20 UNF"),
        ("7/16-20 UNF LH-2A", "7/16-20 UNF-2A-LH"),
        ("3/8in-24", "3/8-24 UNF"),
        ("3/8in UNF-2A", "3/8-24 UNF-2A"),
        ("3/8 inch 24 tpi", "3/8-24 UNF"),
        ("3/8 24 UNF", "3/8-24 UNF"),
        ("3/8\" 24 tpi", "3/8-24 UNF"),
        ("1 1/4 12 UNF", "1 1/4-12 UNF"),
        ("1 inch 12 UNF", "1-12 UNF"),
        ("No. 10 32 UNF", "No. 10-32 UNF"),
        ("10 32 UNF", "No. 10-32 UNF"),
        ("1/8in NPT", "1/8-27 NPT"),
        ("3/8-24UNF2A", "3/8-24 UNF-2A"),
        ("2-4 1/2 UNC", "2-4.5 UNC"),
        ("2-4½ UNC-2B", "2-4.5 UNC-2B"),
        ("2 1/4-4 1/2", "2 1/4-4.5 UNC"),
        ("LH M10x1", "M10x1-LH"),
        ("left hand 3/8-24 UNF", "3/8-24 UNF-LH"),
        ("M10x1-LH-6g", "M10x1-6g-LH"),
        ("3/8-24 lh unf", "3/8-24 UNF-LH"),
        ("M10x1 6g right hand", "M10x1-6g"),
        ("M10x1-6g-L", "M10x1-6g-L"),
        ("M10 1.0", "M10x1"),
        ("M10 1 6g", "M10x1-6g"),
        ("M10x.75", "M10x0.75"),
        ("mf10x1", "M10x1"),
        ("M20-2.5", "M20x2.5"),
        ("M3/0.5", "M3x0.5"),
        ("M4-0.7", "M4x0.7"),
        ("M3.5/0.6", "M3.5x0.6"),
        ("M18 2.5", "M18x2.5"),
        ("M36-4", "M36x4"),
        ("UNF 3/8-24", "3/8-24 UNF"),
        ("3/8-24 inch", "3/8-24 UNF"),
        ("3/8-24UNF-2ALH", "3/8-24 UNF-2A-LH"),
        ("1 1/2-11 1/2 NPT", "1 1/2-11.5 NPT"),
        ("4.75-24 UNS", "4 3/4-24 UNS"),
        ("1\"-80 UNS", "1.0000-80 UNS"),
        ("6\"-32 UNS", "6.0000-32 UNS"),
        ("1-32 UN", "1-32 UN"),
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
        ("1/16-27", Code::ThreadAmbiguous),
        ("7/8-14", Code::ThreadAmbiguous),
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
        ("10x1 mm", Code::ThreadAmbiguous),
        ("M10x1L", Code::ThreadAmbiguous),
        ("M10x1-L", Code::ThreadAmbiguous),
        ("M10x1x20", Code::Unreadable),
        ("M10x1-LH-RH", Code::Unreadable),
        ("1-1 1/2 UN", Code::Unreadable),
        ("10 in 24", Code::Unreadable),
        ("M10x1 left", Code::Unreadable),
        // Strengths, lengths, tapers, coils and tubes are no threads.
        ("M20-8.8", Code::ThreadAmbiguous),
        ("M16-4.6", Code::ThreadAmbiguous),
        ("M24-10.9", Code::ThreadAmbiguous),
        ("M20/8.8", Code::ThreadAmbiguous),
        ("M16-6", Code::ThreadAmbiguous),
        ("M12 - 5", Code::ThreadAmbiguous),
        ("M12-8.8", Code::ThreadAmbiguous),
        ("M10-6", Code::ThreadAmbiguous),
        ("M10 20", Code::ThreadAmbiguous),
        ("M30/12", Code::ThreadAmbiguous),
        ("M30x10", Code::OutOfRange),
        ("1/4-20 1/2", Code::Unreadable),
        ("1/2-13 1/2", Code::Unreadable),
        ("1 in 16", Code::Unreadable),
        ("1 in 20", Code::Unreadable),
        ("3/16x25", Code::ThreadAmbiguous),
        ("1/4 x 25", Code::ThreadAmbiguous),
        ("1/4-20 x 10", Code::Unreadable),
        ("4.75-24", Code::ThreadAmbiguous),
        ("4.75x24", Code::ThreadAmbiguous),
        ("M241/8", Code::ThreadAmbiguous),
        ("24 tpi", Code::Unreadable),
        ("3/8 BSW", Code::Unreadable),
        ("3/8-20 BSF", Code::Unreadable),
        ("2 BA", Code::Unreadable),
        ("M10mm", Code::ThreadAmbiguous),
        ("5-24", Code::ThreadAmbiguous),
        ("SW 11", Code::HexNotThread),
        ("11mm A/F", Code::HexNotThread),
        ("9/16", Code::ThreadAmbiguous),
        ("3/8 fine", Code::ThreadAmbiguous),
        ("G 1 1/16", Code::Unreadable),
        ("R 5/8", Code::Unreadable),
        ("5/8-14 NPT", Code::Unreadable),
        ("0.38-24", Code::Unreadable),
        ("7.5-12 UN", Code::Unreadable),
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
        ("M5x0.2-6H", ThreadSide::Internal),
    ] {
        assert_eq!(
            Thread::read(typed).unwrap().limits(side).unwrap_err().code(),
            Code::OutOfRange,
            "{typed}"
        );
    }
}

/// What the message about a pipe size says to write can be written, and names another thread each.
#[test]
fn a_pipe_size_is_told_from_a_screw_by_what_the_message_says() {
    for (typed, families, series) in [
        ("7/8-14", &["G"][..], "UNF"),
        ("5/8-14", &["G"], "UNS"),
        ("1/8-28", &["G", "R", "Rp", "Rc"], "UNS"),
        ("1/8-27", &["NPT"], "UNS"),
        ("1/2-14", &["G", "R", "Rp", "Rc", "NPT"], "UNS"),
        ("2 1/2-8", &["NPT"], "UN"),
        ("6-11", &["G", "R", "Rp", "Rc"], "UNS"),
    ] {
        let error = Thread::read(typed).unwrap_err();
        let need = format!(
            "the family of this pipe size, {}, or {series} after it for the screw of that diameter",
            families.join(", ")
        );
        assert_eq!((error.code(), error.need().to_string()), (Code::ThreadAmbiguous, need), "{typed}");
        let screw = Thread::read(&format!("{typed} {series}")).unwrap();
        let size = typed.split('-').next().unwrap();
        for family in families {
            let pipe = Thread::read(&format!("{family} {size}")).unwrap();
            assert!(to_mm(pipe.diameter()) > to_mm(screw.diameter()) + 2.0, "{typed} {family}");
        }
    }
}

/// Where the usual class has no such grade, the next closer one is assumed, and says so; where none has, the pitch is named.
#[test]
fn a_finer_pitch_has_a_closer_usual_class() {
    for (typed, class) in [
        ("M1x0.2", "4H"),
        ("M5x0.2", "4H"),
        ("M1.4x0.2-LH", "4H"),
        ("M10x0.25", "5H"),
        ("M10x0.3", "6H"),
        ("M1x0.25", "5H"),
    ] {
        let limits = Thread::read(typed).unwrap().limits(ThreadSide::Internal).unwrap();
        assert_eq!(limits.class.map(|class| class.to_string()).as_deref(), Some(class), "{typed}");
        assert!(limits.is_class_assumed, "{typed}");
    }
    for side in [ThreadSide::External, ThreadSide::Internal] {
        let error = Thread::read("M10x0.19").unwrap().limits(side).unwrap_err();
        assert!(error.code() == Code::OutOfRange && error.need().to_string().contains("0.2 mm"), "{error}");
    }
}

/// Limits of one side that overlap are no thread: so many turns to the inch, or so long an engagement.
#[test]
fn unified_limits_that_overlap_are_refused() {
    let thread = |typed: &str| Thread::read(typed).unwrap();
    for (typed, side, engaged) in [
        ("No. 6-80 UNS-1B", ThreadSide::Internal, Some(200.0)),
        ("No. 6-80 UNS-1A", ThreadSide::External, Some(200.0)),
        ("No. 0-80 UNF-1B", ThreadSide::Internal, Some(100.0)),
        ("1/4-80 UNS-1B", ThreadSide::Internal, Some(100.0)),
        ("5 63/64-80 UNS-1A", ThreadSide::External, None),
    ] {
        let limits = match engaged {
            Some(engaged) => thread(typed).limits_over(side, mm(engaged)),
            None => thread(typed).limits(side),
        };
        assert_eq!(limits.unwrap_err().code(), Code::OutOfRange, "{typed}");
    }
    assert!(thread("No. 6-32 UNC-1B").limits_over(ThreadSide::Internal, mm(30.0)).is_ok());
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

#[test]
fn small_metric_threads_have_their_usual_class() {
    // A maker's table of the coarse series: 5H/6h from M1 to M1.4, 6H/6g from M1.6 on (external d, d2, internal D2, D1).
    for (name, outside, inside) in [
        ("M1x0.25", [0.933, 1.000, 0.785, 0.838], [0.838, 0.894, 0.729, 0.785]),
        ("M1.1x0.25", [1.033, 1.100, 0.885, 0.938], [0.938, 0.994, 0.829, 0.885]),
        ("M1.2x0.25", [1.133, 1.200, 0.985, 1.038], [1.038, 1.094, 0.929, 0.985]),
        ("M1.4x0.3", [1.325, 1.400, 1.149, 1.205], [1.205, 1.265, 1.075, 1.142]),
        ("M1.6x0.35", [1.496, 1.581, 1.291, 1.354], [1.373, 1.458, 1.221, 1.321]),
        ("M1.8x0.35", [1.696, 1.781, 1.491, 1.554], [1.573, 1.658, 1.421, 1.521]),
        ("M2x0.4", [1.886, 1.981, 1.654, 1.721], [1.740, 1.830, 1.567, 1.679]),
    ] {
        let thread = Thread::read(name).unwrap();
        let ours = |side, of: fn(&Limits) -> [DiameterLimits; 2]| {
            let limits = thread.limits(side).unwrap();
            of(&limits).map(|span| [span.min, span.max].map(|one| to_mm(one.unwrap()))).concat()
        };
        let external = ours(ThreadSide::External, |limits| [limits.major, limits.pitch_diameter]);
        let internal = ours(ThreadSide::Internal, |limits| [limits.pitch_diameter, limits.minor]);
        for (ours, printed) in [(external, outside), (internal, inside)] {
            assert!(
                ours.iter().zip(printed).all(|(a, b)| (a - b).abs() < 1e-9),
                "{name}: {ours:?} {printed:?}"
            );
        }
    }
}

#[test]
fn identification_heeds_classes_and_hands_and_counts_a_thread_once() {
    let list = |names: &[&str]| names.iter().map(|name| Thread::read(name).unwrap()).collect::<Vec<_>>();
    let found = |side, value: f64, names: &[&str]| {
        let error = crate::units::mm(0.002);
        let measured = Measured::new(side).with_diameter(crate::units::mm(value), error).unwrap();
        let measured = measured.with_wear(crate::units::mm(0.0)).unwrap();
        identify(&measured, &list(names)).unwrap()
    };
    let names = |found: &Identification| {
        found.candidates.iter().map(|one| one.thread.to_string()).collect::<Vec<_>>()
    };
    // Major diameters outside: 6g from 9.794 to 9.974, 6e from 9.760 to 9.940 (ISO 965-1).
    let among = ["M10x1-6e", "M10x1-6g", "M10x1-6H", "Rp 1/8"];
    assert_eq!(names(&found(ThreadSide::External, 9.974, &among)), ["M10x1-6g"]);
    assert_eq!(names(&found(ThreadSide::External, 9.765, &among)), ["M10x1-6e"]);
    let two = found(ThreadSide::External, 9.9, &among);
    assert_eq!(two.candidates.len(), 2);
    assert!(two.advice().contains("one size of thread in two classes"), "{}", two.advice());
    assert_eq!(names(&found(ThreadSide::Internal, 9.0, &among)), ["M10x1-6H"]);
    // Once, however often and however it is written.
    let twice = found(ThreadSide::External, 9.9, &["M10x1", "M10x1", "M10x1-6g"]);
    assert_eq!(names(&twice), ["M10x1"]);
    assert!((twice.candidates[0].share.value - 1.0).abs() < 1e-12);
    // The hand is seen before anything is measured.
    let hands = found(ThreadSide::External, 9.9, &["M10x1", "M10x1-LH"]);
    assert_eq!(hands.advice(), "look at the hand: right for M10x1, left for M10x1-LH");
    let none = found(ThreadSide::External, 9.9, &["Rc 1/8", "M10x1-6H"]);
    assert_eq!((none.candidates.len(), none.nearest), (0, None));
    assert_eq!(none.advice(), "no thread of this side to compare with");
}

#[test]
fn two_hands_never_hold_and_sides_are_heeded() {
    use crate::units::mm;
    let read = |name: &str| Thread::read(name).unwrap();
    let held = Stripping::new(&read("M10x1-LH"), &read("M10x1"), mm(6.0)).unwrap();
    assert!(held.share.iter().all(|share| share.value.abs() < 1e-12));
    assert!(held.external[1].value.abs() < 1e-12);
    let (outside, inside) = ([9.95, 9.28, 8.7].map(mm), [10.2, 9.45, 9.1].map(mm));
    let mate = |male: &str, female: &str| Profile::mate((&read(male), outside), (&read(female), inside));
    assert!(mate("M10x1", "M10x1").is_ok_and(|pair| pair.starts && pair.length.is_none()));
    assert!(mate("M10x1-LH", "M10x1").is_ok_and(|pair| !pair.starts && pair.length == Some(mm(0.0))));
    for (male, female) in [("M10x1-6H", "M10x1"), ("M10x1", "M10x1-6g"), ("Rc 1/8", "R 1/8")] {
        assert!(mate(male, female).is_err_and(|error| error.code() == Code::ThreadSide), "{male} {female}");
    }
}

#[test]
fn what_starts_never_has_no_share() {
    let read = |name: &str| Thread::read(name).unwrap();
    for (male, female) in [("M10x1", "3/8-24"), ("M10x1-LH", "M10x1")] {
        let pair = Mating::new(&read(male), &read(female)).unwrap();
        assert_eq!(pair.starts(), Starts::Never, "{male}");
        assert!(pair.share_best().value.abs() + pair.share_worst().value.abs() < 1e-12, "{male}");
    }
    let right = Mating::new(&read("M10x1"), &read("M10x1")).unwrap();
    assert!(right.share_best() > right.share_worst() && right.share_worst().value > 0.5);
}

/// ISO 965-1 has position e from a pitch of 0.5 mm and f from 0.35 mm on (its table, seen); the series of B1.1 end.
#[test]
fn classes_and_series_end_where_their_tables_do() {
    let limits = |name: &str| Thread::read(name).unwrap().limits(ThreadSide::External);
    for name in ["M3x0.5-6e", "M1.6x0.35-6f", "M1.6x0.35-6g", "M1.6x0.35-6h"] {
        assert!(limits(name).is_ok(), "{name}");
    }
    for name in ["M3x0.45-6e", "M1.6x0.35-6e", "M1.4x0.3-6f"] {
        assert!(limits(name).is_err_and(|error| error.code() == Code::OutOfRange), "{name}");
    }
    for (size, series) in [
        ("2 7/16-16", "UNS"),
        ("2 3/8-16", "UN"),
        ("1 15/16-16", "UN"),
        ("1\"-32", "UN"),
        ("1 1/8-32", "UNS"),
        ("1 1/2-28", "UN"),
        ("1 5/8-28", "UNS"),
        ("3 1/8-20", "UNS"),
    ] {
        assert_eq!(Thread::read(size).unwrap().series().map(Series::name), Some(series), "{size}");
    }
}
