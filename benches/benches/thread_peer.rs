//! Threads against a peer in Python, `peers/threads.py`: the same limits, the same pairs, the same look-alikes, and how
//! much faster. Both sides are timed in this run, so that the ratios hold whatever the machine does meanwhile.
//!
//! `cargo bench -p benches --bench thread_peer` compares and times; with `--test` it compares only. The interpreter is
//! `python3`, or what the environment variable `PYTHON` names.

use benches::peer::{ask, best, is_timed, machine, python};
use linewright::thread::{
    CATALOGUE, CatalogueRow, DiameterLimits, Engagement, Family, Limits, Mating, Profile, Starts, ThreadSide,
    lookalikes,
};
use linewright::units::{Length, to_inch, to_mm};
use linewright::{Error, Thread};
use serde_json::Value;
use std::fmt::Write as _;
use std::hint::black_box;

const PEER: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/peers/threads.py");

/// What is timed, by the peer's name for it.
struct Operation {
    name: &'static str,
    what: &'static str,
    /// The most that one may take, in nanoseconds (ours, no source).
    most_ns: Option<f64>,
    /// How many times faster than the peer at least: about half of what two cores of an EPYC gave, for machines differ.
    least_ratio: f64,
}

const fn operation(
    name: &'static str,
    what: &'static str,
    most_ns: Option<f64>,
    least_ratio: f64,
) -> Operation {
    Operation { name, what, most_ns, least_ratio }
}

const OPERATIONS: [Operation; 6] = [
    operation("lookup", "a thread in the list", Some(100.0), 1.0),
    operation("limits, metric", "limits of one side, metric", Some(300.0), 2.2),
    operation("limits, unified", "limits of one side, Unified", Some(300.0), 2.7),
    operation("pair", "one pair, limits of both included", Some(1000.0), 3.0),
    operation("pair, limits given", "one pair, limits given", None, 3.5),
    operation("list", "metric and Unified list in itself", None, 6.0),
];

/// Limits agree to this, in mm; both are decimal numbers of few places.
const LIMIT_MM: f64 = 1e-6;
/// Turns and overlaps agree to this.
const PAIR: f64 = 1e-9;

/// Rounds of which the best counts.
const ROUNDS: usize = 40;

/// A thread with the limits of both sides.
type Sides = (Thread, Limits, Limits);

fn main() {
    let is_timed = is_timed();
    let python = match python() {
        Ok(python) => python,
        Err(reason) => {
            println!("NOT RUN: threads against a peer in Python ({reason})");
            return;
        }
    };
    let asked = ask(&python, PEER, is_timed, lines().as_bytes());
    assert!(asked.is_ok(), "{PEER}: {asked:?}");
    let Ok(answer) = asked else { return };

    let paired: Vec<Thread> = CATALOGUE.iter().map(|row| row.thread).filter(is_paired).collect();
    let sides: Result<Vec<Sides>, Error> = paired
        .iter()
        .map(|thread| {
            Ok((*thread, thread.limits(ThreadSide::External)?, thread.limits(ThreadSide::Internal)?))
        })
        .collect();
    assert!(sides.is_ok(), "{sides:?}");
    let Ok(sides) = sides else { return };

    let results = &answer["results"];
    compare_rows(&results["rows"]);
    compare_limits(&sides, results);
    compare_pairs(&paired, results);
    compare_counts(&paired, &results["lookalikes"]);
    let times = measure(&paired, &sides, if is_timed { ROUNDS } else { 1 });
    if is_timed {
        report(&answer, &times);
    } else {
        println!("Testing threads against a peer in Python\nSuccess");
    }
}

fn is_paired(thread: &Thread) -> bool {
    matches!(thread.family(), Family::Metric | Family::Unified)
}

/// A line for each thread of the list, as the peer reads them.
fn lines() -> String {
    let mut lines = String::new();
    for thread in CATALOGUE.iter().map(|row| row.thread) {
        let (diameter, pitch) = match thread.family() {
            Family::Metric => (1e3 * to_mm(thread.diameter()), 1e3 * to_mm(thread.pitch())),
            Family::Unified => (1e6 * to_inch(thread.diameter()), 2.0 * thread.per_inch()),
            _ => (1e3 * to_mm(thread.diameter()), 2.0 * thread.per_inch()),
        };
        let written = writeln!(lines, "{} {diameter:.0} {pitch:.0}", thread.family().name());
        assert!(written.is_ok());
    }
    lines
}

/// The items of a list that must have a certain length.
fn items<'a>(list: &'a Value, count: usize, what: &str) -> &'a [Value] {
    let items = list.as_array().map_or(&[][..], Vec::as_slice);
    assert_eq!(items.len(), count, "{what}: {list}");
    items
}

/// Whether a number of ours is the peer's; null is none.
fn is_near(ours: Option<f64>, peer: &Value, within: f64) -> bool {
    match (ours, peer.as_f64()) {
        (Some(ours), Some(peer)) => (ours - peer).abs() <= within,
        (None, None) => peer.is_null(),
        _ => false,
    }
}

fn compare_rows(rows: &Value) {
    for (number, (row, peer)) in CATALOGUE.iter().zip(items(rows, CATALOGUE.len(), "rows")).enumerate() {
        let ours = CatalogueRow::of(&row.thread);
        assert!(ours.is_some_and(|ours| std::ptr::eq(ours, row)), "{}", row.thread);
        assert_eq!(peer.as_u64().and_then(|peer| usize::try_from(peer).ok()), Some(number), "{}", row.thread);
    }
}

fn compare_limits(sides: &[Sides], results: &Value) {
    for (name, is_outside) in [("external", true), ("internal", false)] {
        for ((thread, outside, inside), peer) in sides.iter().zip(items(&results[name], sides.len(), name)) {
            let limits = if is_outside { outside } else { inside };
            let [major, pitch, minor] = [limits.major, limits.pitch_diameter, limits.minor];
            let ours =
                [major.min, major.max, pitch.min, pitch.max, minor.min, minor.max, limits.rounded_root];
            for (ours, peer) in ours.iter().zip(items(peer, ours.len(), name)) {
                let ours = ours.map(to_mm);
                assert!(is_near(ours, peer, LIMIT_MM), "{thread}, {name}: {ours:?} and {peer} of the peer");
            }
        }
    }
}

fn pairs(list: &[Thread]) -> impl Iterator<Item = (&Thread, &Thread)> {
    list.iter().flat_map(move |male| list.iter().map(move |female| (male, female)))
}

fn compare_pairs(list: &[Thread], results: &Value) {
    let count = list.len() * list.len();
    let of_peer = |name: &str| items(&results[name], count, name);
    let (starts, turns, overlaps) = (of_peer("starts"), of_peer("turns"), of_peer("overlaps"));
    for (number, (male, female)) in pairs(list).enumerate() {
        let pair = Mating::new(male, female);
        assert!(pair.is_ok(), "{pair:?}");
        let Ok(pair) = pair else { return };
        let tight_and_loose = |value: &Value| [value[0] == true, value[1] == true];
        let peer = match tight_and_loose(&starts[number]) {
            [true, true] => Starts::Always,
            [false, false] => Starts::Never,
            _ => Starts::Sometimes,
        };
        assert_eq!(pair.starts(), peer, "{male} in {female}");
        let both_overlaps = [pair.overlap_best(), pair.overlap_worst()].map(|overlap| Some(to_mm(overlap)));
        for (ours, peer) in [(pair.turns(), &turns[number]), (both_overlaps, &overlaps[number])] {
            let agree =
                ours.iter().zip(items(peer, 2, "pair")).all(|(ours, peer)| is_near(*ours, peer, PAIR));
            assert!(agree, "{male} in {female}: {ours:?} and {peer} of the peer");
        }
    }
}

/// Both count the same look-alikes.
fn compare_counts(list: &[Thread], counts: &Value) {
    let ours = lookalikes(list).len();
    let counts = counts.as_array().map_or(&[][..], Vec::as_slice);
    assert!(!counts.is_empty() && ours > 0);
    for peer in counts {
        assert_eq!(peer.as_u64().and_then(|peer| usize::try_from(peer).ok()), Some(ours), "look-alikes");
    }
}

/// Our times, by the peer's names.
fn measure(paired: &[Thread], sides: &[Sides], rounds: usize) -> Vec<(&'static str, f64)> {
    let all: Vec<Thread> = CATALOGUE.iter().map(|row| row.thread).collect();
    let limits = |family: Family| {
        let threads: Vec<Thread> =
            paired.iter().copied().filter(|thread| thread.family() == family).collect();
        best(rounds, 2 * threads.len(), || {
            for thread in &threads {
                for side in [ThreadSide::External, ThreadSide::Internal] {
                    let limits = black_box(thread).limits(black_box(side));
                    assert!(black_box(limits).is_ok());
                }
            }
        })
    };
    let count = paired.len() * paired.len();
    let list = best(rounds, 1, || assert!(!black_box(lookalikes(black_box(paired))).is_empty()));
    vec![
        (
            "lookup",
            best(rounds, all.len(), || {
                for thread in &all {
                    assert!(black_box(CatalogueRow::of(black_box(thread))).is_some());
                }
            }),
        ),
        ("limits, metric", limits(Family::Metric)),
        ("limits, unified", limits(Family::Unified)),
        (
            "pair",
            best(rounds, count, || {
                for (male, female) in pairs(paired) {
                    assert!(black_box(Mating::new(black_box(male), black_box(female))).is_ok());
                }
            }),
        ),
        (
            "pair, limits given",
            best(rounds, count, || {
                for (male, outside, _) in sides {
                    for (female, _, inside) in sides {
                        let engaged = engage(black_box((male, outside)), black_box((female, inside)));
                        assert!(black_box(engaged).is_some());
                    }
                }
            }),
        ),
        ("list", list),
    ]
}

/// The tightest and the loosest sizes of a pair, as [`Mating`] chooses them.
fn engage(male: (&Thread, &Limits), female: (&Thread, &Limits)) -> Option<[Engagement; 2]> {
    let upper = |span: DiameterLimits| span.max.or(span.min);
    let lower = |span: DiameterLimits| span.min.or(span.max);
    let tight = profile(male, upper)?.into_female(&profile(female, lower)?);
    let loose = profile(male, lower)?.into_female(&profile(female, upper)?);
    Some([tight, loose])
}

fn profile(
    (thread, limits): (&Thread, &Limits),
    pick: impl Fn(DiameterLimits) -> Option<Length>,
) -> Option<Profile> {
    Some(Profile {
        pitch: thread.pitch(),
        half_angle: thread.half_angle(),
        major: pick(limits.major)?,
        pitch_diameter: pick(limits.pitch_diameter)?,
        minor: limits.rounded_root.or_else(|| pick(limits.minor))?,
        taper: thread.taper(),
    })
}

/// Prints the times, and asserts that none is worse than it may be.
fn report(answer: &Value, times: &[(&str, f64)]) {
    println!("{}; Python {}", machine(), answer["python"].as_str().unwrap_or("of unknown version"));
    println!("{:<42} {:>11} {:>11} {:>7}", "", "ours, ns", "peer, ns", "ratio");
    let mut problems = Vec::new();
    for Operation { name, what, most_ns, least_ratio } in OPERATIONS {
        let Some(peer) = answer["times"][name].as_f64() else {
            problems.push(format!("the peer has no time for {what}"));
            continue;
        };
        let ours = times.iter().find(|(timed, _)| *timed == name).map_or(f64::NAN, |(_, ns)| *ns);
        let ratio = peer / ours;
        println!("{what:<42} {ours:>11.1} {peer:>11.1} {ratio:>7.1}");
        if let Some(most) = most_ns.filter(|most| ours > *most) {
            problems.push(format!("{what}: {ours:.1} ns, more than {most}"));
        }
        // A time that is no number must not pass.
        if ratio.is_nan() || ratio < least_ratio {
            problems.push(format!("{what}: {ratio:.2} times as fast as the peer, less than {least_ratio}"));
        }
    }
    assert!(problems.is_empty(), "{}", problems.join("\n"));
}
