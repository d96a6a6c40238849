//! Timings of one bend, of the plan of one line, and of a batch. Each benchmark looks at its result, so that nothing
//! is timed that does not work.

use criterion::{Criterion, criterion_group, criterion_main};
use linewright::units::{deg, mm, to_mm};
use linewright::{
    Bench, Bend, Error, Flare, FlareTool, Former, Line, LineDraft, Plan, PlanOptions, Springback, Trial,
    size_lines,
};
use std::hint::black_box;

/// An invented line of six bends.
const FIELDS: [(&str, &str); 24] = [
    ("name", "six bends"),
    ("od", "3/16 in"),
    ("wall", "0.028 in"),
    ("material", "low-carbon steel"),
    ("legs", "70 mm; 16 in; 9.5 in; 210 mm; 31 cm; 140 mm; 88 mm"),
    ("bends", "90 deg; 45 deg; 90 deg; 30 deg; 30 deg; 60 deg"),
    ("rotations", "90 deg; 90 deg; 180 deg; 180 deg; -45 deg"),
    ("radius", "14.3 mm"),
    ("a_thread", "M10x1"),
    ("a_nut_length", "17 mm"),
    ("a_nut_bore", "5 mm"),
    ("a_nose", "coned"),
    ("a_flare", "double-45"),
    ("a_port", "axle tee"),
    ("a_port_thread", "M10x1"),
    ("a_seat", "inverted-45"),
    ("b_thread", "M10x1"),
    ("b_nut_length", "17 mm"),
    ("b_nut_bore", "5 mm"),
    ("b_nose", "coned"),
    ("b_flare", "double-45"),
    ("b_port", "cylinder"),
    ("b_port_thread", "M10x1"),
    ("b_seat", "inverted-45"),
];
const ROWS: usize = 100;

fn draft() -> Result<LineDraft, Error> {
    let mut draft = LineDraft::new();
    for (field, typed) in FIELDS {
        draft.set(field, typed)?;
    }
    Ok(draft)
}

fn bench() -> Result<Bench, Error> {
    let tool = FlareTool::new(Flare::Double45, mm(13.0), mm(4.0))?
        .with_net_shortening(mm(2.0))?
        .with_cut_spare(mm(3.0))?;
    let trials = [Trial { set: deg(90.0), got: deg(86.5) }, Trial { set: deg(45.0), got: deg(43.2) }];
    Ok(Bench::new(Former::new(mm(14.3), mm(20.0))?, &[tool])?
        .with_springback(Springback::from_trials(&trials)?))
}

fn setup() -> Result<(LineDraft, Line, Bench), Error> {
    let draft = draft()?;
    let checked = draft.check();
    let line = checked.line.ok_or_else(|| Error::from(checked.problems[0].clone()))?;
    Ok((draft, line, bench()?))
}

/// Arc, tangent length and gain of one bend.
fn one_bend(criterion: &mut Criterion) {
    criterion.bench_function("one bend", |bencher| {
        bencher.iter(|| {
            let figures = Bend::new(black_box(deg(60.0)), deg(0.0), black_box(mm(14.3))).and_then(|bend| {
                Ok(to_mm(bend.arc()) + to_mm(bend.gain()?) - 2.0 * to_mm(bend.tangent_length()?))
            });
            assert!(figures.as_ref().is_ok_and(|rest| rest.abs() < 1e-12));
            figures
        });
    });
}

fn one_plan(criterion: &mut Criterion) {
    let made = setup();
    assert!(made.is_ok(), "{made:?}");
    let Ok((_, line, bench)) = made else { return };
    criterion.bench_function("plan of six bends", |bencher| {
        bencher.iter(|| {
            let plan = Plan::new(black_box(&line), black_box(&bench), &PlanOptions::default());
            assert!(plan.bends().len() == 6 && plan.cut().is_some() && !plan.is_draft());
            plan
        });
    });
}

/// From what was typed to the plans.
fn batch(criterion: &mut Criterion) {
    let made = setup();
    assert!(made.is_ok(), "{made:?}");
    let Ok((draft, _, bench)) = made else { return };
    let drafts = vec![draft; ROWS];
    criterion.bench_function("batch of 100 lines", |bencher| {
        bencher.iter(|| {
            let sized = size_lines(black_box(&drafts), black_box(&bench), &PlanOptions::default());
            assert!(sized.len() == ROWS && sized.iter().all(|line| line.plan.is_some()));
            sized
        });
    });
}

criterion_group!(benches, one_bend, one_plan, batch);
criterion_main!(benches);
