//! Laws of threads: designations come back as they were printed, limits are ordered, and what is drawn by the model of
//! identification is found as often as the shares say.

#[path = "../common/mod.rs"]
mod common;

use common::Outcome;
use common::draw::uniform;
use common::random::config;
use linewright::thread::{
    CATALOGUE, CatalogueRow, DiameterLimits, Measure, Measured, ThreadSide, identify, separate,
};
use linewright::units::{Length, mm, ratio, to_mm};
use linewright::{Thread, Value};
use proptest::prelude::*;

/// A designation of any family, with or without class and hand.
fn designation() -> impl Strategy<Value = String> {
    let metric_class = prop::sample::select(vec![
        "", "-6g", "-6h", "-6e", "-6f", "-4g6g", "-3h4h", "-9g8g", "-6H", "-5H6H", "-6G", "-8H", "-6g-S",
        "-6H-L",
    ]);
    let metric = (1_000..355_000_u32, 200..6_000_u32, metric_class).prop_filter_map(
        "a pitch that fits",
        |(d, p, class)| {
            (p * 4 < d).then(|| format!("M{}x{}{class}", f64::from(d) / 1000.0, f64::from(p) / 1000.0))
        },
    );
    let unified_class =
        prop::sample::select(vec!["", " UN-1A", " UN-2A", " UN-3A", " UN-1B", " UN-2B", " UN-3B"]);
    let unified = (4..300_u32, 8..160_u32, unified_class).prop_filter_map(
        "a count that fits",
        |(parts, count, class)| {
            let (whole, part) = (parts / 64, parts % 64);
            let size = match (whole, part) {
                (0, part) => format!("{part}/64"),
                (whole, 0) => format!("{whole}"),
                (whole, part) => format!("{whole} {part}/64"),
            };
            // Whole numbers with fine threads are number sizes, and what could be a pipe thread must name its series.
            let is_number = part == 0 && count >= 80;
            let pitch_fits = count * parts >= 64 * 2 * 4;
            let is_pipe =
                class.is_empty() && parts % 4 == 0 && [16, 22, 23, 28, 36, 38, 54, 56].contains(&count);
            (!is_number && pitch_fits && !is_pipe)
                .then(|| format!("{size}-{}{class}", f64::from(count) / 2.0))
        },
    );
    let pipe = prop::sample::select(vec![
        "G1/8",
        "G1/4 A",
        "G3/8 B",
        "G1",
        "R 1/8",
        "Rp 1/4",
        "Rc 3/8",
        "1/8-27 NPT",
        "1-11.5 NPT",
        "12-8 NPT",
        "2 1/2-8 NPT-LH",
        "G5 1/2 B",
        "R 6",
        "G3/4 LH",
    ]);
    prop_oneof![metric, unified, pipe.prop_map(str::to_owned)]
}

fn both(span: DiameterLimits) -> (Option<f64>, Option<f64>) {
    (span.min.map(to_mm), span.max.map(to_mm))
}

proptest! {
    #![proptest_config(config(2_000))]

    #[test]
    fn a_printed_designation_reads_back(text in designation()) {
        let thread = Thread::read(&text).map_err(|error| TestCaseError::fail(format!("{text}: {error}")))?;
        let printed = thread.to_string();
        let again = Thread::read(&printed).map_err(|error| TestCaseError::fail(format!("{printed}: {error}")))?;
        prop_assert_eq!(again, thread, "{} printed as {}", text, printed);
        prop_assert_eq!(again.to_string(), printed);
    }

    #[test]
    fn limits_are_ordered_wherever_there_are_any(text in designation()) {
        let thread = Thread::read(&text).map_err(|error| TestCaseError::fail(error.to_string()))?;
        for side in [ThreadSide::External, ThreadSide::Internal] {
            let Ok(limits) = thread.limits(side) else { continue };
            for span in [limits.major, limits.pitch_diameter, limits.minor] {
                if let (Some(min), Some(max)) = both(span) {
                    prop_assert!(min < max, "{text}: {min} to {max}");
                }
                let (min, max) = both(span);
                prop_assert!(min.or(max).is_some_and(|size| size > 0.0 && size < 400.0), "{text}");
            }
        }
    }

    #[test]
    fn no_text_panics(text in "\\PC{0,24}") {
        if let Ok(thread) = Thread::read(&text) {
            prop_assert!(Thread::read(&thread.to_string()).is_ok(), "{}", text);
        }
    }

    #[test]
    fn no_text_like_a_designation_panics(text in "(M|No\\.|G|Rc|R|UN|#|)[ 0-9./x,-]{0,10}(UNF|-6g|LH|NPT|A|mm|)") {
        if let Ok(thread) = Thread::read(&text) {
            prop_assert!(Thread::read(&thread.to_string()) == Ok(thread), "{}", text);
        }
    }
}

/// The threads of the catalogue that a side has.
fn list(side: ThreadSide) -> Vec<Thread> {
    CATALOGUE.iter().map(|row| row.thread).filter(|thread| thread.limits(side).is_ok()).collect()
}

/// One of a list by a number in [0, 1).
fn chosen(list: &[Thread], share: f64) -> Thread {
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        clippy::cast_precision_loss,
        reason = "the product lies between 0 and the length of a short list"
    )]
    let index = (share * list.len() as f64) as usize;
    list[index.min(list.len() - 1)]
}

/// A part of a thread as the model makes it: any size between the limits, any wear, any error of the reading.
fn drawn(
    thread: &Thread,
    side: ThreadSide,
    wear: f64,
    error: f64,
    at: u64,
) -> Result<f64, linewright::Error> {
    let limits = thread.limits(side)?;
    let span = if side == ThreadSide::External { limits.major } else { limits.minor };
    let (mut least, mut most) = (span.min.map_or(f64::NAN, to_mm), span.max.map_or(f64::NAN, to_mm));
    // A taper thread is measured anywhere over its first eight turns, where it is thicker outside and narrower inside.
    let along = 8.0 * to_mm(thread.pitch()) * thread.taper().value;
    match side {
        ThreadSide::External => most += along,
        ThreadSide::Internal => least -= along,
    }
    let made = least + (most - least) * uniform(at);
    let worn = wear * uniform(at + 1);
    let off = error * (2.0 * uniform(at + 2) - 1.0);
    Ok(if side == ThreadSide::External { made - worn + off } else { made + worn + off })
}

/// The share is a chance: over many drawn parts the first candidate is the truth as often as the shares add up to.
#[test]
fn the_truth_comes_first_as_often_as_the_shares_say() -> Outcome<()> {
    const PARTS: u64 = 12_000;
    for (round, side, with_pitch) in
        [(0, ThreadSide::External, false), (1, ThreadSide::Internal, false), (2, ThreadSide::External, true)]
    {
        let list = list(side);
        let (mut first, mut promised, mut spread, mut lost) = (0.0, 0.0, 0.0, 0);
        for part in 0..PARTS {
            let at = (round * PARTS + part) * 8;
            let truth = chosen(&list, uniform(at));
            let (wear, error) = (0.15, 0.05);
            let reading = drawn(&truth, side, wear, error, at + 1)?;
            let mut measured =
                Measured::new(side).with_wear(mm(wear))?.with_diameter(mm(reading), mm(error))?;
            if with_pitch {
                let ten = 10.0 * to_mm(truth.pitch()) + 0.3 * (2.0 * uniform(at + 5) - 1.0);
                measured = measured.with_pitches(10, mm(ten), mm(0.3))?;
            }
            let found = identify(&measured, &list)?;
            lost += usize::from(!found.candidates.iter().any(|candidate| candidate.thread == truth));
            let share = found.candidates[0].share.value;
            let sum: f64 = found.candidates.iter().map(|candidate| candidate.share.value).sum();
            assert!((sum - 1.0).abs() < 1e-9, "shares add up to {sum}");
            first += f64::from(u8::from(found.candidates[0].thread == truth));
            promised += share;
            spread += share * (1.0 - share);
        }
        // Four standard deviations of the difference.
        let bound = 4.0 * spread.sqrt();
        println!("{}: {first} first, {promised:.0} promised, bound {bound:.0}", side.name());
        assert_eq!(lost, 0, "the truth is always among the candidates");
        assert!((first - promised).abs() <= bound, "{first} first, {promised} promised, bound {bound}");
        assert!(
            !with_pitch || promised > 0.9 * f64::from(u32::try_from(PARTS)?),
            "with the pitch it is nearly sure"
        );
    }
    Ok(())
}

#[test]
fn readings_of_the_trade_find_what_they_should() -> Outcome<()> {
    let list = |names: &[&str]| names.iter().map(|name| Thread::read(name)).collect::<Result<Vec<_>, _>>();
    let named =
        ["3/8-24", "3/8-20", "G1/8", "M10x1", "M10x1.25", "M9x1", "M11x1", "7/16-24", "7/16-20", "M12x1"];
    let names = list(&named)?;
    // Wear 0 to 0.25 mm under nominal is common practice without a source; the first 0.2 are the tolerance.
    for (reading, expected) in [
        (9.45, vec!["3/8-20 UN", "3/8-24 UNF", "G1/8"]),
        (10.98, vec!["7/16-20 UNF", "7/16-24 UNS", "M11x1"]),
        (9.90, vec!["M10x1", "M10x1.25"]),
    ] {
        let measured = Measured::new(ThreadSide::External).with_diameter(mm(reading), mm(0.05))?;
        let found = identify(&measured, &names)?;
        let mut candidates: Vec<String> = found.candidates.iter().map(|c| c.thread.to_string()).collect();
        candidates.sort();
        assert_eq!(candidates, expected, "{reading}");
        let next = found.next().ok_or("no next")?;
        assert_eq!(next.measure, Measure::TenPitches, "{}", found.advice());
    }
    let tens: Vec<Length> = ["M11x1", "7/16-24", "7/16-20"]
        .iter()
        .map(|name| Thread::read(name).map(|thread| 10.0 * thread.pitch()))
        .collect::<Result<_, _>>()?;
    assert!((to_mm(tens[0]) - 10.0).abs() < 1e-9);
    assert!((to_mm(tens[1]) - 10.583).abs() < 1e-3 && (to_mm(tens[2]) - 12.7).abs() < 1e-9);
    Ok(())
}

/// Common practice, no source: what is met most, and what old vehicles have.
#[test]
fn facts_of_the_trade_are_marked_as_such() -> Outcome<()> {
    for (name, said) in
        [("M10x1", "most brake nuts on 3/16 in tube"), ("M9x1", "old vehicles"), ("M11x1", "old vehicles")]
    {
        let row = CatalogueRow::of(&Thread::read(name)?).ok_or(name)?;
        assert!(row.met.contains(said), "{}", row.met);
        assert_eq!(row.source.checked, linewright::source::Checked::CommonPractice, "{name}");
    }
    Ok(())
}

/// The tolerance grows with the engaged length as the formula says: 0.0015 sqrt(LE) of it.
#[test]
fn a_longer_engagement_widens_a_unified_thread() -> Outcome<()> {
    let thread = Thread::read("7/16-24 UNS-2A")?;
    let engaged = thread.basic_engagement().ok_or("no engagement")?;
    assert!((to_mm(engaged) - 9.0 * 25.4 / 24.0).abs() < 1e-4);
    let width = |limits: linewright::thread::Limits| {
        limits.pitch_diameter.max.zip(limits.pitch_diameter.min).map(|(max, min)| to_mm(max - min) / 25.4)
    };
    let usual = width(thread.limits(ThreadSide::External)?).ok_or("no limits")?;
    assert_eq!(Some(usual), width(thread.limits_over(ThreadSide::External, engaged)?));
    let long = width(thread.limits_over(ThreadSide::External, 4.0 * engaged)?).ok_or("no limits")?;
    let grown = 0.0015 * (9.0 / 24.0_f64).sqrt();
    assert!((long - usual - grown).abs() < 1.5e-4, "{usual} to {long}");
    assert!(Thread::read("M10x1")?.limits_over(ThreadSide::External, engaged).is_err());
    assert!(
        (thread.limits(ThreadSide::External)?.allowance().map_or(0.0, to_mm) / 25.4 - 0.0012).abs() < 1e-9
    );
    Ok(())
}

fn millimeters(value: &Value) -> f64 {
    match value {
        Value::Length(length) => to_mm(*length),
        _ => f64::NAN,
    }
}

#[test]
fn ways_apart_hold_what_they_say_for_every_pair() -> Outcome<()> {
    // What a caliper reads, and how far it is off: as the docs of the ways say.
    const ERROR: f64 = 0.05;
    const WEAR: f64 = 0.1;
    let (mut none, mut tried, mut diameters) = (Vec::new(), 0, 0);
    for side in [ThreadSide::External, ThreadSide::Internal] {
        let list = list(side);
        for (i, a) in list.iter().enumerate() {
            for (j, b) in list.iter().enumerate().skip(i + 1) {
                let ways = separate(a, b, side)?;
                assert_eq!(ways.len(), 4);
                tried += 1;
                let tens = [a, b].map(|thread| 254.0 / thread.per_inch());
                assert_eq!(ways[0].separates, (tens[0] - tens[1]).abs() > 0.2, "{a} and {b}");
                let ranges = ways[1].expected.each_ref().map(|range| range.each_ref().map(millimeters));
                // Whoever draws parts of one finds no reading that the other can give, where the way separates.
                for (own, other, thread) in [(0, 1, a), (1, 0, b)] {
                    for part in 0..20 {
                        let reading =
                            drawn(thread, side, WEAR, ERROR, ((i * 64 + j) as u64 * 20 + part) * 8)?;
                        let within = |[least, most]: [f64; 2]| {
                            (least - ERROR - 1e-9..=most + ERROR + 1e-9).contains(&reading)
                        };
                        assert!(within(ranges[own]), "{thread}: {reading}");
                        assert!(!ways[1].separates || !within(ranges[other]), "{a} and {b}: {reading}");
                    }
                }
                diameters += usize::from(ways[1].separates);
                if !ways.iter().any(|way| way.separates) {
                    none.push(format!("{a} and {b}"));
                }
            }
        }
    }
    assert!(diameters > tried / 2, "{diameters} of {tried} are told apart by their diameters");
    println!("{} of {tried} pairs are not separated: {none:?}", none.len());
    // Nothing that a caliper and a gauge can tell is declared hopeless, and what is close in all of it is.
    assert!(none.len() < tried / 50);
    Ok(())
}

#[test]
fn what_was_not_measured_or_fits_nothing_says_so() -> Outcome<()> {
    let list = list(ThreadSide::External);
    let nothing = identify(&Measured::new(ThreadSide::External), &list).map(|found| found.candidates.len());
    assert!(nothing.is_err_and(|error| error.code() == linewright::Code::FieldMissing));
    let odd = Measured::new(ThreadSide::External).with_diameter(mm(8.4), mm(0.01))?;
    let found = identify(&odd, &list)?;
    assert!(found.candidates.is_empty() && found.nearest.is_some() && found.next().is_none());
    assert!(found.advice().contains("measure again"));
    let alone = Measured::new(ThreadSide::External)
        .with_diameter(mm(9.95), mm(0.02))?
        .with_per_inch(ratio(25.4), None)?;
    let found = identify(&alone, &[Thread::read("M10x1")?, Thread::read("M12x1.75")?])?;
    assert!(found.candidates.len() == 1 && found.advice().contains("not in the list"));
    assert!(Measured::new(ThreadSide::External).with_diameter(mm(9.95), mm(0.0)).is_err());
    assert!(Measured::new(ThreadSide::External).with_pitches(0, mm(10.0), mm(0.1)).is_err());
    Ok(())
}
