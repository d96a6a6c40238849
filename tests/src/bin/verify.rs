//! `cargo verify`: every check of the project with one command.
//!
//! The steps run in order, and all of them run even if one fails. What the commands print goes to
//! `target/verify/<step>.log`. The last line is `N passed, N failed`; the exit status is 1 if anything failed and 2 for
//! a wrong argument.

use std::env;
use std::process::ExitCode;
use std::time::Instant;

#[path = "../verify/count.rs"]
mod count;
#[path = "../verify/place.rs"]
mod place;
#[path = "../verify/step.rs"]
mod step;
#[path = "../verify/steps_c.rs"]
mod steps_c;
#[path = "../verify/steps_examples.rs"]
mod steps_examples;
#[path = "../verify/steps_python.rs"]
mod steps_python;
#[path = "../verify/steps_rust.rs"]
mod steps_rust;
#[path = "../verify/steps_tree.rs"]
mod steps_tree;

use place::Place;
use step::{Run, Shared, Step};

/// All steps. `tree` is the last, so that it sees what the others left behind.
const STEPS: [Step; 13] = [
    usual("format", "rustfmt has nothing to change", steps_rust::format),
    usual("lints", "clippy has nothing to say", steps_rust::lints),
    usual("tests", "Rust tests and the conformance tests, debug and release", steps_rust::tests),
    usual("docs", "rustdoc without warnings", steps_rust::docs),
    usual("c", "the header as C99 and as C++17", steps_c::header),
    usual("python", "the wheel, pytest, the stub file, the types", steps_python::python),
    usual("examples", "the example prints the same bytes in Rust, Python and C", steps_examples::examples),
    usual("benches", "every benchmark once", steps_rust::benches),
    long("valgrind", "the C example and the C test programs under valgrind", steps_c::valgrind),
    long(
        "sanitizers",
        "the C example with the address and undefined-behavior sanitizers",
        steps_c::sanitizers,
    ),
    long("long-tests", "the property tests with 20000 cases each", steps_rust::long_tests),
    long("python-full", "the Python tests against a solid-modeling kernel", steps_python::python_full),
    usual("tree", "the top level, the length of files, nothing left behind", steps_tree::tree),
];

type Body = fn(&mut Run<'_>) -> Result<(), String>;

const fn usual(name: &'static str, about: &'static str, body: Body) -> Step {
    Step { name, about, full: false, body }
}

const fn long(name: &'static str, about: &'static str, body: Body) -> Step {
    Step { name, about, full: true, body }
}

/// What the arguments ask for.
#[derive(Debug, PartialEq, Eq)]
enum Request {
    Help,
    List,
    Steps { full: bool, names: Vec<String> },
}

fn main() -> ExitCode {
    let arguments: Vec<String> =
        env::args_os().skip(1).map(|argument| argument.to_string_lossy().into_owned()).collect();
    match parse(&arguments) {
        Ok(Request::Help) => println!("{}", usage()),
        Ok(Request::List) => println!("{}", list()),
        Ok(Request::Steps { full, names }) => match verify(full, &names) {
            Ok(true) => {}
            Ok(false) => return ExitCode::from(1),
            Err(problem) => {
                eprintln!("error: {problem}");
                return ExitCode::from(1);
            }
        },
        Err(problem) => {
            eprintln!("error: {problem}\n\n{}", usage());
            return ExitCode::from(2);
        }
    }
    ExitCode::SUCCESS
}

fn parse(arguments: &[String]) -> Result<Request, String> {
    let mut full = false;
    let mut names = Vec::new();
    for argument in arguments {
        match argument.as_str() {
            "--help" | "-h" => return Ok(Request::Help),
            "--list" => return Ok(Request::List),
            "--full" => full = true,
            name if STEPS.iter().any(|step| step.name == name) => names.push(name.to_owned()),
            other => return Err(format!("there is no step or option `{other}`")),
        }
    }
    Ok(Request::Steps { full, names })
}

fn list() -> String {
    let lines = STEPS.iter().map(|step| {
        let full = if step.full { " (only with --full or by name)" } else { "" };
        format!("  {:<12} {}{full}", step.name, step.about)
    });
    lines.collect::<Vec<_>>().join("\n")
}

fn usage() -> String {
    format!(
        "cargo verify [--full] [step...]\n\n  \
         --full       also the long steps; whatever cannot be run on this machine is a failure\n  \
         --list       print the steps\n  \
         --help       print this text\n\n\
         Steps, all of them unless some are named:\n{}",
        list()
    )
}

/// Runs the steps and prints the closing lines; whether all is well.
fn verify(full: bool, names: &[String]) -> Result<bool, String> {
    let started = Instant::now();
    let place = Place::find()?;
    let mut shared = Shared { status_before: steps_tree::status(&place), ..Shared::default() };
    let wanted = |step: &&Step| {
        if names.is_empty() { full || !step.full } else { names.iter().any(|name| name == step.name) }
    };
    let chosen: Vec<&Step> = STEPS.iter().filter(wanted).collect();
    println!("Logs: {}", place.out.display());

    let (mut passed, mut failed) = (0, 0);
    let mut not_run: Vec<String> = Vec::new();
    let mut table = Vec::new();
    for (index, step) in chosen.iter().enumerate() {
        let report = step.run(&format!("{}/{}", index + 1, chosen.len()), &place, &mut shared)?;
        passed += report.counts.passed;
        failed += report.counts.failed;
        table.push(format!(
            "  {:<12} {:>5} passed, {} failed",
            step.name, report.counts.passed, report.counts.failed
        ));
        // The debug and the release tests say the same thing; it is missing once.
        not_run.extend(report.not_run.into_iter().filter(|what| !not_run.contains(what)).collect::<Vec<_>>());
    }

    println!(
        "\nCounted are the lines with `...` above: every test of a test run, and every other check once."
    );
    println!("{}", table.join("\n"));
    println!("  in {:.0} s", started.elapsed().as_secs_f64());
    if full && !not_run.is_empty() {
        println!("With --full, whatever was not run counts as failed.");
        failed += not_run.len();
    }
    if not_run.is_empty() {
        println!("NOT RUN: 0");
    } else {
        println!("NOT RUN: {} ({})", not_run.len(), not_run.join("; "));
    }
    println!("{passed} passed, {failed} failed");
    // A run that checked nothing has not shown that anything is well.
    Ok(failed == 0 && passed > 0)
}

#[cfg(test)]
mod tests {
    use super::{Request, STEPS, parse};

    fn words(line: &str) -> Vec<String> {
        line.split_whitespace().map(str::to_owned).collect()
    }

    #[test]
    fn reads_arguments() {
        assert_eq!(parse(&words("")), Ok(Request::Steps { full: false, names: vec![] }));
        assert_eq!(parse(&words("--full c")), Ok(Request::Steps { full: true, names: words("c") }));
        assert_eq!(parse(&words("--list")), Ok(Request::List));
        assert!(parse(&words("nonsense")).is_err());
    }

    #[test]
    fn names_of_steps_are_different() {
        for (index, step) in STEPS.iter().enumerate() {
            assert!(STEPS.iter().skip(index + 1).all(|other| other.name != step.name));
        }
    }
}
