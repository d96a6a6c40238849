//! Input that a thread, a washer or a flare cannot be: refused with a code, and never answered with a number.

use linewright::flare::{Flare, FlareTrial, HoseEnd, allowances, seats_of, washers};
use linewright::thread::{CATALOGUE, Measure, Measured, Profile, ThreadSide, identify, separate};
use linewright::units::{Length, inch, mm};
use linewright::{Code, Thread};
use std::error::Error;

type Outcome = Result<(), Box<dyn Error>>;

fn thread(text: &str) -> Result<Thread, linewright::Error> {
    Thread::read(text)
}

#[test]
fn threads_are_told_apart_on_a_side_that_both_have() -> Outcome {
    for (first, second, side) in [
        ("M10x1-6H", "M11x1", ThreadSide::External),
        ("R 1/8", "M10x1", ThreadSide::Internal),
        ("R 1/4", "R 3/8", ThreadSide::Internal),
    ] {
        let refused = separate(&thread(first)?, &thread(second)?, side).err().ok_or("taken")?;
        assert_eq!(refused.code(), Code::ThreadSide, "{first} {second}");
    }
    // The usual class inside is not made for so fine a pitch; the next closer one is.
    let ways = separate(&thread("M1x0.2")?, &thread("M1.2x0.2")?, ThreadSide::Internal)?;
    assert!(ways.iter().any(|way| way.measure == Measure::Diameter));
    Ok(())
}

#[test]
fn an_engaged_length_is_a_length() -> Outcome {
    for length in [-3.0, 0.0, 201.0, f64::NAN] {
        assert!(thread("M10x1")?.engagement_group(mm(length)).is_err(), "{length}");
    }
    Ok(())
}

#[test]
fn measured_sizes_are_those_of_the_thread_that_is_named() -> Outcome {
    let sizes = |[major, pitch, minor]: [f64; 3]| -> Result<(), linewright::Error> {
        Profile::measured(&Thread::read("M10x1")?, mm(major), mm(pitch), mm(minor)).map(|_| ())
    };
    assert!(sizes([9.3, 8.8, 8.4]).is_ok() && sizes([10.9, 10.3, 9.9]).is_ok());
    for wrong in [[300.0, 200.0, 100.0], [8.4, 8.0, 7.0], [11.6, 10.8, 10.0]] {
        assert_eq!(sizes(wrong).map_err(|error| error.code()), Err(Code::OutOfRange), "{wrong:?}");
    }
    Ok(())
}

/// A pitch alone lies equally far from every thread that has another.
#[test]
fn nothing_is_nearest_where_several_are() -> Outcome {
    let list: Vec<Thread> = CATALOGUE.iter().map(|row| row.thread).collect();
    let pitch = Measured::new(ThreadSide::External).with_pitches(10, mm(10.3), mm(0.05))?;
    let found = identify(&pitch, &list)?;
    assert!(found.candidates.is_empty() && found.nearest.is_none());
    assert!(found.advice().contains("several come equally near"), "{}", found.advice());
    let diameter = Measured::new(ThreadSide::External).with_diameter(mm(2.0), mm(0.02))?;
    assert!(identify(&diameter, &list)?.nearest.is_some());
    Ok(())
}

#[test]
fn washers_lie_under_parallel_external_threads() -> Outcome {
    for (end, text, code) in [
        (HoseEnd::Banjo, "1/8-27 NPT", Code::OutOfRange),
        (HoseEnd::MaleWasher, "R 1/8", Code::OutOfRange),
        (HoseEnd::Banjo, "M10x1-6H", Code::ThreadSide),
        (HoseEnd::Banjo, "Rc 1/8", Code::ThreadSide),
    ] {
        let refused = washers(&[(HoseEnd::Banjo, thread("M10x1")?), (end, thread(text)?)]);
        let refused = refused.err().ok_or("taken")?;
        assert_eq!(refused.code(), code, "{text}");
        assert!(refused.to_string().contains("item 2"), "{refused}");
    }
    // One washer for both hands, and so one spare.
    let list = washers(&[(HoseEnd::Banjo, thread("M10x1")?), (HoseEnd::Banjo, thread("M10x1-LH")?)])?;
    assert_eq!(list.iter().map(|row| (row.needed, row.spares)).collect::<Vec<_>>(), [(4, 1)]);
    Ok(())
}

#[test]
fn flares_have_sizes_that_flares_have() -> Outcome {
    let (od, wall) = (inch(3.0 / 16.0), inch(0.028));
    let wide: Option<[Length; 2]> = Some([mm(9.0), mm(9.6)]);
    let refused = allowances(Flare::Double45, od, wall, wide, None).err().ok_or("taken")?;
    assert_eq!(refused.code(), Code::OutOfRange);
    assert!(allowances(Flare::Double45, od, wall, Some([mm(6.7), mm(7.1)]), None).is_ok());
    assert!(FlareTrial::new(mm(100.0), mm(79.0)).is_err() && FlareTrial::new(mm(100.0), mm(97.0)).is_ok());
    // On 4.7 mm tube the geometry goes beyond 5 mm, so the rule is none there.
    let narrow = allowances(Flare::Double45, mm(4.7), mm(1.1), Some([mm(6.7), mm(7.1)]), None)?;
    assert!(narrow.iter().all(|way| way.cut_allowance.is_none()));
    assert_eq!(seats_of(&thread("7/8-14 UNF")?, mm(15.875)).len(), 1);
    Ok(())
}

/// What is from memory, or printed otherwise than the formulas have it, is not called computed.
#[test]
fn unified_limits_say_how_they_were_checked() -> Outcome {
    use linewright::source::Checked;
    for (text, side, checked) in [
        ("3/8-24 UNF", ThreadSide::External, Checked::Computed),
        ("3/8-24 UNF", ThreadSide::Internal, Checked::Computed),
        ("No. 10-32 UNF", ThreadSide::Internal, Checked::Memory),
        ("No. 10-24 UNC", ThreadSide::Internal, Checked::SecondHand),
        ("5/8-11 UNC-2A", ThreadSide::External, Checked::SecondHand),
        ("5/8-11 UNC-3A", ThreadSide::External, Checked::Computed),
        ("9/16-24 UNEF-2A", ThreadSide::External, Checked::SecondHand),
        ("3 1/4-4 UNC", ThreadSide::Internal, Checked::Memory),
    ] {
        assert_eq!(thread(text)?.limits(side)?.checked, checked, "{text}");
    }
    Ok(())
}
