//! The steps that are cargo alone: format, lints, tests, documentation, benchmarks.

use std::env;

use crate::count;
use crate::step::Run;
use crate::steps_python;

type Outcome = Result<(), String>;

pub fn format(run: &mut Run<'_>) -> Outcome {
    let mut fmt = run.place.cargo("fmt --all --check");
    run.check("cargo fmt", &mut fmt);
    Ok(())
}

pub fn lints(run: &mut Run<'_>) -> Outcome {
    let mut all = run.place.cargo("clippy --workspace --all-targets --locked -- -D warnings");
    run.check("cargo clippy, every target", &mut all);
    let mut features = run.place.cargo("clippy -p linewright --all-features --locked -- -D warnings");
    run.check("cargo clippy, every feature", &mut features);
    Ok(())
}

/// Both profiles, because the same bits from both are part of the contract. The passed tests' output is shown so that
/// their `NOT RUN: ` lines reach the log.
pub fn tests(run: &mut Run<'_>) -> Outcome {
    let mut debug = run.place.cargo("test --workspace --locked --no-fail-fast -- --show-output");
    run.tests("cargo test, debug", &mut debug, count::libtest);
    let mut release = run
        .place
        .cargo("test --release -p linewright -p conformance --locked --no-fail-fast -- --show-output");
    run.tests("cargo test, release", &mut release, count::libtest);
    Ok(())
}

pub fn docs(run: &mut Run<'_>) -> Outcome {
    let mut doc = run.place.cargo("doc --workspace --no-deps --locked");
    let flags = env::var("RUSTDOCFLAGS").unwrap_or_default();
    doc.env("RUSTDOCFLAGS", format!("{flags} -D warnings").trim());
    run.check("cargo doc", &mut doc);
    Ok(())
}

/// Every benchmark once, without timing it: a benchmark that broke is found here and not on the day it is needed.
pub fn benches(run: &mut Run<'_>) -> Outcome {
    let mut bench = run.place.cargo("bench -p benches --locked -- --test");
    if let Some(python) = steps_python::of_peers(run)? {
        bench.env("PYTHON", python);
    }
    run.tests("cargo bench, each once", &mut bench, count::criterion);
    Ok(())
}

pub fn long_tests(run: &mut Run<'_>) -> Outcome {
    let mut long = run.place.cargo("test --release -p conformance --locked --no-fail-fast -- --show-output");
    long.env("PROPTEST_CASES", "20000");
    run.tests("cargo test, 20000 cases per property", &mut long, count::libtest);
    Ok(())
}
