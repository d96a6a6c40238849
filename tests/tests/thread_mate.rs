//! Threads in one another: against an exact geometry of our own in Python, against pairs computed apart, and by law.

use linewright::thread::{
    CATALOGUE, Feel, Mating, Profile, Starts, Stripping, ThreadSide, lookalikes, report,
};
use linewright::units::{deg, mm, ratio, to_mm};
use linewright::{Level, Thread};
use std::error::Error;
use std::fs;

type Outcome = Result<(), Box<dyn Error>>;

fn rows(name: &str) -> Result<Vec<Vec<String>>, Box<dyn Error>> {
    let text = fs::read_to_string(format!("{}/tables/{name}", env!("CARGO_MANIFEST_DIR")))?;
    let lines = text.lines().filter(|line| !line.starts_with('#')).skip(1);
    Ok(lines.map(|line| line.split(',').map(str::to_owned).collect()).collect())
}

fn list() -> Vec<Thread> {
    CATALOGUE.iter().map(|row| row.thread).collect()
}

fn mate(male: &str, female: &str) -> Result<Mating, Box<dyn Error>> {
    Ok(Mating::new(&Thread::read(male)?, &Thread::read(female)?)?)
}

/// The reference samples the sections of ridge and groove along the helix and bisects on the depth; it knows no formula
/// for play.
#[test]
fn two_hundred_random_pairs_agree_with_exact_geometry() -> Outcome {
    let rows = rows("mate_reference.csv")?;
    assert_eq!(rows.len(), 200);
    let (mut starting, mut bound) = (0, 0);
    for (number, row) in rows.iter().enumerate() {
        let n = |i: usize| row[i].parse::<f64>();
        let profile = |at: usize| -> Result<Profile, Box<dyn Error>> {
            Ok(Profile {
                pitch: mm(n(at)?),
                half_angle: deg(n(at + 1)?),
                major: mm(n(at + 2)?),
                pitch_diameter: mm(n(at + 3)?),
                minor: mm(n(at + 4)?),
                taper: ratio(n(at + 5)?),
            })
        };
        let ours = profile(0)?.into_female(&profile(6)?);
        assert_eq!(ours.starts, row[12] == "yes", "pair {number}");
        assert!((to_mm(ours.overlap) - n(13)?).abs() < 1e-9, "pair {number}");
        starting += usize::from(ours.starts);
        match (ours.turns, row[14].as_str()) {
            (None, "inf") => {}
            (Some(turns), text) if text != "inf" => {
                let reference: f64 = text.parse()?;
                bound += usize::from(turns > 0.0);
                assert!(
                    (turns - reference).abs() <= 1e-8 * reference.max(1.0),
                    "pair {number}: {turns} for {reference}"
                );
            }
            (turns, text) => return Err(format!("pair {number}: {turns:?} for {text}").into()),
        }
    }
    assert!(starting > 100 && bound > 100, "{starting} start, {bound} bind");
    Ok(())
}

/// The table's lengths leave half the difference of the pitches out of the play; with it put back they are ours, divided
/// by the difference and times the male's pitch.
#[test]
fn pairs_computed_apart_agree() -> Outcome {
    let rows = rows("threads/lookalikes.csv")?;
    assert_eq!(rows.len(), 46);
    for row in &rows {
        let pair = mate(&row[0], &row[1])?;
        // The table does not say whether its height is the basic one or that between the least diameters as printed, which
        // B1.1 prints with three places: they differ by a percent, and its figures are whole percents.
        let female = pair.female().limits(ThreadSide::Internal)?;
        let [major, minor] = [female.major.min, female.minor.min].map(|d| d.map_or(f64::NAN, to_mm));
        let heights = [to_mm(pair.female().height()), (major - minor) / 2.0];
        // Of sizes that do not start the table gives an overlap too, and lengths of nothing.
        let all_start = pair.starts() == Starts::Always;
        for (overlap, table) in [pair.overlap_best(), pair.overlap_worst()].iter().zip(&row[2..4]) {
            let table: f64 = table.parse()?;
            if !all_start {
                continue;
            }
            let near = heights.iter().any(|height| (100.0 * to_mm(*overlap) / height - table).abs() < 0.75);
            assert!(near, "{} in {}: {} for {table}", row[0], row[1], to_mm(*overlap));
        }
        let (male, female) = (to_mm(pair.male().pitch()), to_mm(pair.female().pitch()));
        if pair.male().half_angle() != pair.female().half_angle() {
            continue;
        }
        for (ours, table) in pair.lengths().iter().zip(&row[4..6]) {
            let missing = (female - male) / 2.0 / (male - female).abs() * male;
            let table = table.parse::<f64>().ok().map(|length| (length + missing).max(0.0));
            match (ours.map(to_mm), table) {
                (Some(ours), Some(table)) => {
                    assert!((ours - table).abs() < 0.02, "{} in {}: {ours} for {table}", row[0], row[1]);
                }
                (None, None) => {}
                // The table goes on where the crests pass each other and no flank can bind.
                (None, Some(_)) if to_mm(pair.overlap_worst()) < 0.0 => {}
                (Some(ours), None) => assert!(ours < male, "{} in {}: {ours}", row[0], row[1]),
                (None, table) => return Err(format!("{} in {}: {table:?}", row[0], row[1]).into()),
            }
        }
    }
    Ok(())
}

#[test]
fn the_dangerous_lookalikes_come_out_of_the_computation() -> Outcome {
    for (male, female) in [
        ("3/8-24", "M10x1"),
        ("M12x1.25", "1/2-20"),
        ("7/16-20", "M12x1.25"),
        ("M9x1", "3/8-24"),
        ("5/16-24", "M8x1"),
    ] {
        let pair = mate(male, female)?;
        assert!(pair.is_lookalike(), "{}", pair.verdict());
        assert_eq!((pair.feel(), pair.starts()), (Feel::TurnsIn, Starts::Always));
        assert_eq!(pair.level(), Level::Stop);
    }
    // The last overlaps by more than half of the height at worst, and binds before it has half of its thread.
    assert!(mate("5/16-24", "M8x1")?.share_worst().value > 0.5);
    Ok(())
}

/// Sizes of a metric thread between its limits: 0 is the tightest, 1 the loosest.
fn sized(thread: &Thread, side: ThreadSide, at: f64) -> Result<Profile, Box<dyn Error>> {
    let limits = thread.limits(side)?;
    let between = |span: linewright::thread::DiameterLimits| {
        let (min, max) = (span.min.map_or(f64::NAN, to_mm), span.max.map_or(f64::NAN, to_mm));
        mm(if side == ThreadSide::External { max - (max - min) * at } else { min + (max - min) * at })
    };
    Ok(Profile {
        pitch: thread.pitch(),
        half_angle: thread.half_angle(),
        major: between(limits.major),
        pitch_diameter: between(limits.pitch_diameter),
        minor: between(limits.minor),
        taper: thread.taper(),
    })
}

/// The whole list against itself. Metric threads are tried at forty sizes between tightest and loosest: where one turns in
/// by three turns and has less than half of a 6 mm thread, the search must have the pair. What it has besides turns in too.
#[test]
fn the_search_finds_every_lookalike_and_nothing_else() -> Outcome {
    let list = list();
    let found = lookalikes(&list);
    let has = |male: &Thread, female: &Thread| {
        found.iter().any(|pair| pair.male() == *male && pair.female() == *female)
    };
    let metric: Vec<&Thread> = list.iter().filter(|thread| thread.family().name() == "metric").collect();
    let mut dangerous = 0;
    for male in &metric {
        for female in &metric {
            let mut is_dangerous = false;
            for step in 0..=40 {
                let at = f64::from(step) / 40.0;
                let pair = sized(male, ThreadSide::External, at)?.into_female(&sized(
                    female,
                    ThreadSide::Internal,
                    at,
                )?);
                let by_hand = pair.starts && pair.turns.is_none_or(|turns| turns >= 3.0);
                let reach = pair.length.map_or(1.0, |length| (to_mm(length) / 6.0).min(1.0));
                let share = to_mm(pair.overlap) / to_mm(female.height()) * reach;
                is_dangerous |= by_hand && share > 0.0 && share < 0.5 && male != female;
            }
            dangerous += usize::from(is_dangerous);
            assert!(!is_dangerous || has(male, female), "{male} in {female} is not found");
        }
    }
    println!(
        "{} look-alike pairs among {} threads, {dangerous} of sampled metric ones",
        found.len(),
        list.len()
    );
    for pair in &found {
        let turns_in = pair.turns().iter().any(|turns| turns.is_none_or(|turns| turns >= 3.0));
        assert!(turns_in && !pair.is_same() && pair.starts() != Starts::Never, "{}", pair.verdict());
        assert!(to_mm(pair.overlap_best()) > 0.0 && pair.share_worst().value < 1.0, "{}", pair.verdict());
    }
    // A parallel pipe thread in the parallel one for taper threads holds on most of its height: wrong, but no look-alike.
    assert!(!has(&Thread::read("G1/8")?, &Thread::read("Rp 1/8")?));
    assert!(dangerous > 10 && found.len() > 100);
    Ok(())
}

#[test]
fn internal_threads_never_overlap_external_ones_of_their_own_clearance_classes() -> Outcome {
    for row in CATALOGUE {
        let full = row.thread.to_string();
        let name = full.split(" UN").next().unwrap_or_default();
        let classes: &[(&str, &str)] = match row.thread.family().name() {
            "metric" => &[("-6g", "-6H"), ("-6e", "-6G"), ("-4h", "-4H"), ("-8g", "-8H")],
            "unified" => &[(" UN-1A", " UN-1B"), (" UN-2A", " UN-2B"), (" UN-3A", " UN-3B")],
            "G" => &[(" A", ""), (" B", "")],
            _ => continue,
        };
        for (male, female) in classes {
            let pair = mate(&format!("{name}{male}"), &format!("{name}{female}"))?;
            assert_eq!(pair.starts(), Starts::Always, "{name}{male} in {name}{female}");
            assert!(pair.is_same() && pair.level() == Level::Note && pair.turns() == [None; 2]);
            for side in [ThreadSide::External, ThreadSide::Internal] {
                let thread = if side == ThreadSide::External { pair.male() } else { pair.female() };
                let limits = thread.limits(side)?;
                for span in [limits.major, limits.pitch_diameter, limits.minor] {
                    if let (Some(min), Some(max)) = (span.min, span.max) {
                        assert!(to_mm(min) < to_mm(max), "{thread}");
                    }
                }
                let middle = |span: linewright::thread::DiameterLimits| span.min.or(span.max).map(to_mm);
                assert!(middle(limits.major) > middle(limits.pitch_diameter));
                assert!(middle(limits.pitch_diameter) > middle(limits.minor));
            }
        }
    }
    Ok(())
}

#[test]
fn a_taper_thread_goes_hand_tight_as_far_as_its_standard_says() -> Outcome {
    // B1.20.1: hand-tight engagement L1 in the middle of the limits; 1/8-27: 0.1615 in, which a turn either way changes.
    for (size, hand_tight_in, count) in [("1/8-27 NPT", 0.1615, 27.0), ("1/4-18 NPT", 0.2278, 18.0)] {
        let pair = mate(size, size)?;
        let [tight, loose] = pair.lengths().map(|length| length.map_or(f64::NAN, to_mm) / 25.4);
        let turns = 2.0 / count;
        assert!(
            (tight - (hand_tight_in - turns)).abs() < 1e-9 && (loose - (hand_tight_in + turns)).abs() < 1e-9
        );
    }
    assert!(mate("R 1/8", "Rp 1/8")?.is_same() && mate("R 1/8", "Rc 1/8")?.is_same());
    assert!(!mate("R 1/8", "G1/8")?.is_same() && !mate("R 1/8", "Rp 1/4")?.is_same());
    // Taper outside, parallel inside: 4.0 mm from tip to gauge plane at basic size, 0.9 either way outside, 5/4 turns inside.
    let [tight, loose] = mate("R 1/8", "Rp 1/8")?.lengths().map(|length| length.map_or(f64::NAN, to_mm));
    let either = 0.9 + 1.25 * 25.4 / 28.0;
    assert!(
        (tight - (4.0 - either)).abs() < 1e-9 && (loose - (4.0 + either)).abs() < 1e-9,
        "{tight} to {loose}"
    );
    Ok(())
}

/// Diameters of both extremes as they stand over one another, sampled along the engaged length: a taper male grows away from
/// its tip, a taper female narrows with depth.
#[test]
fn a_taper_pair_overlaps_by_the_mean_along_its_engaged_length() -> Outcome {
    const SAMPLES: u32 = 10_000;
    for (male, female) in [
        ("R 1/8", "Rc 1/8"),
        ("R 6", "Rc 6"),
        ("R 1/4", "Rp 1/4"),
        ("R 1/8", "G1/8"),
        ("1/8-27 NPT", "1/8-27 NPT"),
        ("12-8 NPT", "12-8 NPT"),
        ("R 1/4", "M14x1.5"),
    ] {
        let pair = mate(male, female)?;
        assert_eq!(pair.starts(), Starts::Always, "{male} in {female}");
        let (outside, inside) =
            (pair.male().limits(ThreadSide::External)?, pair.female().limits(ThreadSide::Internal)?);
        let sizes = [(outside.major.max, inside.minor.min), (outside.major.min, inside.minor.max)];
        let mut means = Vec::new();
        for ((major, minor), length) in sizes.into_iter().zip(pair.lengths()) {
            let (major, minor) = (to_mm(major.ok_or("no size")?), to_mm(minor.ok_or("no size")?));
            let depth = to_mm(length.ok_or("it never binds")?);
            let at = |n: u32| {
                let from_tip = depth * (f64::from(n) + 0.5) / f64::from(SAMPLES);
                let male = major + pair.male().taper().value * from_tip;
                let female = minor - pair.female().taper().value * (depth - from_tip);
                (male - female) / 2.0
            };
            means.push((0..SAMPLES).map(at).sum::<f64>() / f64::from(SAMPLES));
        }
        let [worst, best] = [means[0].min(means[1]), means[0].max(means[1])];
        assert!((to_mm(pair.overlap_worst()) - worst).abs() < 1e-9, "{male} in {female}: {worst}");
        assert!((to_mm(pair.overlap_best()) - best).abs() < 1e-9, "{male} in {female}: {best}");
        let height = to_mm(pair.female().height());
        assert!((pair.share_worst().value - (worst / height).min(1.0)).abs() < 1e-9, "{male} in {female}");
    }
    // Hand-tight, two tapers of one standard meet where both have their basic size: on the whole height, in the table's
    // rounding of it; of NPT less the truncation of both crests, 0.0036 in each from a sharp V of 0.866 p.
    let npt = (0.75_f64.sqrt() - 2.0 * 0.0036 * 27.0) / 0.8;
    for (male, female, worst) in
        [("R 1/8", "Rc 1/8", 1.0), ("R 6", "Rc 6", 1.0), ("1/8-27 NPT", "1/8-27 NPT", npt)]
    {
        let pair = mate(male, female)?;
        assert!((pair.share_worst().value - worst).abs() < 0.001, "{}", pair.verdict());
        assert!((pair.share_best().value - 1.0).abs() < 0.001, "{}", pair.verdict());
        assert!(pair.verdict().contains("hand-tight") && pair.level() == Level::Note);
    }
    // A shorter length than that to which they bind is held on less: the loosest bind after 28.6 + 3.5 mm outside and a turn and
    // a half inside, and lose two tapers of 1/32 in radius on the way back from there.
    let pair = mate("R 6", "Rc 6")?;
    let (last, height) = (28.6 + 3.5 + 1.5 * 25.4 / 11.0, to_mm(pair.female().height()));
    for wanted in [6.0, 20.0] {
        let share = 1.0 - (last - wanted) / 32.0 / height;
        assert!((pair.engaged_share(mm(wanted))?.value - share).abs() < 0.001, "{wanted} mm: {share}");
    }
    Ok(())
}

#[test]
fn a_left_hand_thread_starts_in_no_right_hand_one() -> Outcome {
    let pair = mate("M10x1-LH", "M10x1")?;
    assert!(pair.starts() == Starts::Never && !pair.is_same() && pair.level() == Level::Stop);
    assert_eq!(mate("M10x1-LH", "M10x1-LH")?.starts(), Starts::Always);
    Ok(())
}

/// The formulas of FED-STD-H28 for a thread in its own, with its factors 1/(2n) and 0.57735.
#[test]
fn shear_areas_are_those_of_the_handbook_formula() -> Outcome {
    let (d_min, d2_min, d1_max, d2_max, n, engaged) = (9.794, 9.212, 9.153, 9.5, 1.0, 6.0);
    let pi = std::f64::consts::PI;
    let external = pi * n * engaged * d1_max * (1.0 / (2.0 * n) + 0.577_35 * (d2_min - d1_max));
    let internal = pi * n * engaged * d_min * (1.0 / (2.0 * n) + 0.577_35 * (d_min - d2_max));
    let ours = Stripping::new(&Thread::read("M10x1-6g")?, &Thread::read("M10x1-6H")?, mm(6.0))?;
    assert!((ours.external[0].value / external - 1.0).abs() < 1e-5);
    assert!((ours.internal[0].value / internal - 1.0).abs() < 1e-5);
    assert!((ours.share[0].value - 1.0).abs() < 1e-12 && (ours.share[1].value - 1.0).abs() < 1e-12);
    let wrong = Stripping::new(&Thread::read("3/8-24")?, &Thread::read("M10x1")?, mm(6.0))?;
    assert!(wrong.share[0].value < wrong.share[1].value && wrong.share[1].value < 1.0);
    // Crests that pass each other leave nothing to shear.
    let none = Stripping::new(&Thread::read("M10x1")?, &Thread::read("M11x1")?, mm(6.0))?;
    assert!(none.share[0].value.abs() < 1e-12);
    Ok(())
}

#[test]
fn the_report_counts_every_row_once() {
    let counted: usize = report().iter().map(|count| count.rows).sum();
    let sides: usize =
        CATALOGUE.iter().map(|row| if row.thread.family().only_side().is_some() { 1 } else { 2 }).sum();
    assert_eq!(counted, sides);
    for count in report() {
        println!("{}: {} {}", count.family.name(), count.rows, count.checked.name());
    }
}
