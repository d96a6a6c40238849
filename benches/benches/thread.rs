//! Timings of threads: the list, designations, limits, pairs, and what a measured one may be. Each benchmark looks at
//! its result, so that nothing is timed that does not work.

use criterion::{BatchSize, Criterion, criterion_group, criterion_main};
use linewright::thread::{
    CATALOGUE, CatalogueRow, DiameterLimits, Feel, Mating, Measured, Profile, ThreadSide, identify,
    lookalikes,
};
use linewright::units::{Length, deg, mm, ratio, to_mm};
use linewright::{Error, Thread};
use std::hint::black_box;

/// A nut that looks like the port's own, and the port.
const MALE: &str = "3/8-24";
const FEMALE: &str = "M10x1";

fn list() -> Vec<Thread> {
    CATALOGUE.iter().map(|row| row.thread).collect()
}

fn read(text: &str) -> Option<Thread> {
    let read = Thread::read(text);
    assert!(read.is_ok(), "{read:?}");
    read.ok()
}

/// Every row by its own thread: a list that is searched from its top favors what stands there.
fn lookup(criterion: &mut Criterion) {
    let list = list();
    criterion.bench_function("thread, looked up", |bencher| {
        let mut threads = list.iter().cycle();
        bencher.iter_batched(
            || threads.next(),
            |thread| {
                let row = thread.and_then(|thread| CatalogueRow::of(black_box(thread)));
                assert!(row.map(|row| &row.thread) == thread);
                row
            },
            BatchSize::SmallInput,
        );
    });
    let strange = read("M9.5x1");
    criterion.bench_function("thread, looked up in vain", |bencher| {
        bencher.iter(|| {
            let row = strange.as_ref().and_then(|thread| CatalogueRow::of(black_box(thread)));
            assert!(row.is_none());
            row
        });
    });
}

fn designations(criterion: &mut Criterion) {
    for text in ["M10x1-6g", "7/16-24 UNS-2B", "G1/8 A"] {
        criterion.bench_function(&format!("designation {text}"), |bencher| {
            bencher.iter(|| {
                let read = Thread::read(black_box(text));
                assert!(read.as_ref().is_ok_and(|thread| thread.class().is_some()));
                read
            });
        });
    }
}

fn limits(criterion: &mut Criterion) {
    for (text, side) in [
        ("M10x1", ThreadSide::External),
        ("M10x1", ThreadSide::Internal),
        ("3/8-24", ThreadSide::External),
        ("3/8-24", ThreadSide::Internal),
        ("G1/8", ThreadSide::External),
        ("1/8-27 NPT", ThreadSide::External),
    ] {
        let Some(thread) = read(text) else { return };
        criterion.bench_function(&format!("limits of {text}, {}", side.name()), |bencher| {
            bencher.iter(|| {
                let limits = black_box(&thread).limits(black_box(side));
                assert!(limits.as_ref().is_ok_and(|limits| {
                    let DiameterLimits { min, max } = limits.pitch_diameter;
                    min.map(to_mm) < max.map(to_mm)
                }));
                limits
            });
        });
    }
}

fn mating(criterion: &mut Criterion) {
    let (Some(male), Some(female)) = (read(MALE), read(FEMALE)) else { return };
    criterion.bench_function("one pair, limits included", |bencher| {
        bencher.iter(|| {
            let pair = Mating::new(black_box(&male), black_box(&female));
            assert!(pair.as_ref().is_ok_and(|pair| pair.is_lookalike() && pair.feel() == Feel::TurnsIn));
            pair
        });
    });
    // Sizes between the limits of both.
    let profile = |pitch, [major, pitch_diameter, minor]: [f64; 3]| Profile {
        pitch: mm(pitch),
        half_angle: deg(30.0),
        major: mm(major),
        pitch_diameter: mm(pitch_diameter),
        minor: mm(minor),
        taper: ratio(0.0),
    };
    let (nut, port) = (profile(25.4 / 24.0, [9.4, 8.75, 8.2]), profile(1.0, [10.1, 9.4, 9.0]));
    criterion.bench_function("one pair of given sizes", |bencher| {
        bencher.iter(|| {
            let engagement = black_box(&nut).into_female(black_box(&port));
            assert!(engagement.starts && engagement.turns.is_some_and(|turns| turns > 3.0));
            engagement
        });
    });
}

/// The reading of a caliper and of ten pitches.
fn measured(diameter: Length) -> Result<Measured, Error> {
    Measured::new(ThreadSide::External).with_diameter(diameter, mm(0.05))?.with_pitches(10, mm(10.3), mm(0.5))
}

fn identification(criterion: &mut Criterion) {
    let list = list();
    criterion.bench_function("identification, all threads", |bencher| {
        bencher.iter(|| {
            let found = measured(black_box(mm(10.9))).and_then(|measured| identify(&measured, &list));
            assert!(found.as_ref().is_ok_and(|found| found.candidates.len() > 1 && found.next().is_some()));
            found
        });
    });
}

fn whole_list(criterion: &mut Criterion) {
    let list = list();
    criterion.bench_function("all threads in all threads", |bencher| {
        bencher.iter(|| {
            let found = lookalikes(black_box(&list));
            assert!(found.len() > 20 && found.iter().all(Mating::is_lookalike));
            found
        });
    });
}

criterion_group!(benches, lookup, designations, limits, mating, identification, whole_list);
criterion_main!(benches);
