use super::*;
use crate::code::Code;
use crate::units::to_mm;

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

/// A caliper may be anywhere on a taper thread's useful length: R 2 is 59.614 mm wide 15.9 mm from its tip and has 23.4 mm of
/// thread; the large ones have more than eight turns.
#[test]
fn a_taper_thread_is_found_wherever_it_was_measured() {
    let list: Vec<Thread> = ["2-11.5 NPT", "R 2", "G2", "R 6", "4-8 NPT", "12-8 NPT"]
        .map(|name| Thread::read(name).unwrap())
        .to_vec();
    for (name, basic, at) in [
        ("R 2", 59.614, 15.9),
        ("R 6", 163.83, 28.6),
        ("4-8 NPT", 4.38712 * 25.4 + 0.8 * 25.4 / 8.0, 0.844 * 25.4),
        ("12-8 NPT", 12.61781 * 25.4 + 0.8 * 25.4 / 8.0, 1.36 * 25.4),
    ] {
        let thread = Thread::read(name).unwrap();
        let useful = to_mm(thread.useful_length().unwrap());
        for step in 0..=10 {
            let diameter = basic + (useful * f64::from(step) / 10.0 - at) / 16.0;
            let measured = Measured::new(ThreadSide::External).with_diameter(mm(diameter), mm(0.05)).unwrap();
            let found = identify(&measured, &list).unwrap();
            assert!(found.candidates.iter().any(|c| c.thread == thread), "{name} at {diameter}");
        }
    }
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
