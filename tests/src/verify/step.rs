//! The runner: runs the commands of one step, writes its log and counts what passed.

use std::ffi::OsStr;
use std::fs::{self, File, OpenOptions};
use std::io::{Read, Seek, SeekFrom, Write};
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::time::Instant;

use crate::count::{Counts, not_run_lines};
use crate::place::Place;

/// How many of a failed command's last lines go to the terminal; the log has all of them.
const TAIL: usize = 60;

/// A named step of `cargo verify`.
#[derive(Debug)]
pub struct Step {
    /// What a person types to run this step alone, and the name of its log.
    pub name: &'static str,
    /// What it checks, for `--list`.
    pub about: &'static str,
    /// Whether it runs only with `--full` or when named.
    pub full: bool,
    /// Runs the step. `Err` means that it could not go on, and counts as one failure.
    pub body: fn(&mut Run<'_>) -> Result<(), String>,
}

/// What one step leaves for the ones after it, so that nothing is built twice.
#[derive(Debug, Default)]
pub struct Shared {
    /// `git status` before the first step.
    pub status_before: Option<Vec<u8>>,
    /// Whether the C library could be built; `None` until a step tries.
    pub c_library: Option<bool>,
    /// The interpreter with the extension module installed; `None` until a step tries.
    pub python: Option<Option<PathBuf>>,
    /// The wheel that was installed there.
    pub wheel: Option<PathBuf>,
}

/// One step while it runs.
#[derive(Debug)]
pub struct Run<'a> {
    /// The checkout.
    pub place: &'a Place,
    /// What earlier steps left.
    pub shared: &'a mut Shared,
    log: File,
    log_path: PathBuf,
    counts: Counts,
}

/// What came of a step.
#[derive(Debug)]
pub struct Report {
    /// Checks that passed and failed.
    pub counts: Counts,
    /// What could not be run here, once each.
    pub not_run: Vec<String>,
}

/// How a command counts.
#[derive(Clone, Copy, Debug)]
enum Kind {
    /// Not at all, unless it fails.
    Prepare,
    /// Once, by its exit status.
    Check,
    /// By the tests found in its output.
    Tests(fn(&str) -> Counts),
}

impl Step {
    /// Runs the step from its heading to its closing line.
    pub fn run(&self, position: &str, place: &Place, shared: &mut Shared) -> Result<Report, String> {
        println!("\n[{position}] {}: {}", self.name, self.about);
        let started = Instant::now();
        let log_path = place.out.join(format!("{}.log", self.name));
        // Emptied first and then only appended to: the children share the file with this program.
        let opened = File::create(&log_path)
            .and_then(|_| OpenOptions::new().append(true).read(true).open(&log_path))
            .map_err(|error| format!("cannot write {}: {error}", log_path.display()))?;
        let mut run = Run { place, shared, log: opened, log_path, counts: Counts::default() };
        if let Err(problem) = (self.body)(&mut run) {
            run.fail(self.name, &problem);
        }
        let not_run = not_run_lines(&run.log_from(0));
        for what in &not_run {
            println!("    NOT RUN: {what}");
        }
        let Counts { passed, failed, .. } = run.counts;
        let verdict = if failed > 0 { "FAILED" } else { "done" };
        println!("    {verdict} in {}: {passed} passed, {failed} failed", seconds(started));
        Ok(Report { counts: run.counts, not_run })
    }
}

impl Run<'_> {
    /// Runs a command that is a check by itself: its exit status counts once.
    pub fn check(&mut self, what: &str, command: &mut Command) -> bool {
        self.execute(what, command, None, Kind::Check)
    }

    /// Runs a test runner and counts the tests that `count` finds in its output; none at all is a failure.
    pub fn tests(&mut self, what: &str, command: &mut Command, count: fn(&str) -> Counts) -> bool {
        self.execute(what, command, None, Kind::Tests(count))
    }

    /// Runs a command that later ones need. It counts only if it fails.
    pub fn prepare(&mut self, what: &str, command: &mut Command) -> bool {
        self.execute(what, command, None, Kind::Prepare)
    }

    /// Like [`Run::check`], with the command's standard output in a file of its own.
    pub fn check_into(&mut self, what: &str, command: &mut Command, stdout: &Path) -> bool {
        self.execute(what, command, Some(stdout), Kind::Check)
    }

    /// Counts a check that this program did itself.
    pub fn pass(&mut self, what: &str) {
        println!("    {what} ... 1 passed, 0 failed");
        self.note(&format!("{what}: passed"));
        self.counts.passed += 1;
    }

    /// Counts a failure and says why.
    pub fn fail(&mut self, what: &str, why: &str) {
        println!("    {what} ... 0 passed, 1 failed");
        for line in why.lines() {
            println!("      | {line}");
        }
        self.note(&format!("{what}: FAILED\n{why}"));
        self.counts.failed += 1;
    }

    /// Records that something could not be run on this machine. The step's log is where such lines are collected from,
    /// whether this program or a test wrote them.
    pub fn not_run(&mut self, what: &str) {
        self.note(&format!("NOT RUN: {what}"));
    }

    /// Writes a line to the log alone.
    pub fn note(&mut self, line: &str) {
        if let Err(error) = writeln!(self.log, "{line}") {
            println!("    cannot write {}: {error}", self.log_path.display());
            self.counts.failed += 1;
        }
    }

    fn execute(&mut self, what: &str, command: &mut Command, stdout: Option<&Path>, kind: Kind) -> bool {
        print!("    {what} ... ");
        // The name stands there while the command runs; a terminal that cannot be flushed shows it later.
        drop(std::io::stdout().flush());
        let started = Instant::now();
        let from = self.log.metadata().map_or(0, |metadata| metadata.len());
        self.note(&format!("$ {}", shown(command)));
        let success = self.spawn(command, stdout).unwrap_or_else(|problem| {
            self.note(&problem);
            false
        });
        let output = self.log_from(from);
        let counts = match kind {
            Kind::Prepare => Counts { failed: usize::from(!success), ..Counts::default() },
            Kind::Check => Counts { passed: usize::from(success), failed: usize::from(!success), ignored: 0 },
            Kind::Tests(count) => count(&output).settled(success),
        };
        let Counts { passed, failed, ignored } = counts;
        if passed + failed == 0 {
            println!("ready in {}", seconds(started));
        } else {
            println!("{passed} passed, {failed} failed in {}", seconds(started));
        }
        if failed > 0 {
            if success {
                println!("      | it succeeded, but no passed test was found in its output");
            }
            self.show_failure(&output);
        }
        if ignored > 0 {
            self.not_run(&format!("{ignored} ignored in {what}"));
        }
        self.counts.passed += passed;
        self.counts.failed += failed;
        failed == 0
    }

    fn spawn(&self, command: &mut Command, stdout: Option<&Path>) -> Result<bool, String> {
        let copy = || self.log.try_clone().map_err(|error| format!("cannot share the log: {error}"));
        let out = match stdout {
            Some(path) => {
                File::create(path).map_err(|error| format!("cannot write {}: {error}", path.display()))?
            }
            None => copy()?,
        };
        let status = command
            .stdin(Stdio::null())
            .stdout(out)
            .stderr(copy()?)
            .status()
            .map_err(|error| format!("cannot run {}: {error}", command.get_program().display()))?;
        if !status.success() {
            writeln!(&self.log, "-> {status}").map_err(|error| format!("cannot write the log: {error}"))?;
        }
        Ok(status.success())
    }

    fn show_failure(&self, output: &str) {
        let lines: Vec<&str> = output.lines().collect();
        let skipped = lines.len().saturating_sub(TAIL);
        if skipped > 0 {
            for line in highlights(lines.get(..skipped).unwrap_or_default()) {
                println!("      | {line}");
            }
            println!("      | ({skipped} lines above are in the log)");
        }
        for line in lines.iter().skip(skipped) {
            println!("      | {line}");
        }
        println!("      log: {}", self.log_path.display());
    }

    /// The log from byte `start` on. Bytes that are no UTF-8 are replaced: programs under test may print anything.
    fn log_from(&self, start: u64) -> String {
        let mut bytes = Vec::new();
        let read = File::open(&self.log_path).and_then(|mut file| {
            file.seek(SeekFrom::Start(start)).and_then(|_| file.read_to_end(&mut bytes))
        });
        match read {
            Ok(_) => String::from_utf8_lossy(&bytes).into_owned(),
            // Counts as a run without tests, which is a failure.
            Err(error) => format!("cannot read {}: {error}", self.log_path.display()),
        }
    }
}

/// What a person needs first from the part of a long output that is not shown: which tests failed, and how the panic
/// messages begin.
fn highlights<'a>(lines: &[&'a str]) -> Vec<&'a str> {
    const MESSAGE: usize = 4;
    let mut chosen = Vec::new();
    let mut left = 0;
    for line in lines {
        if line.contains(" panicked at ") {
            left = MESSAGE;
        } else if line.starts_with("stack backtrace:") || line.starts_with("note: ") {
            left = 0;
        }
        if left > 0 || line.ends_with("... FAILED") {
            chosen.push(*line);
        }
        left = left.saturating_sub(1);
    }
    chosen
}

/// Removes a directory if it is there.
pub fn remove_directory(path: &Path) -> Result<(), String> {
    if path.exists() {
        fs::remove_dir_all(path).map_err(|error| format!("cannot remove {}: {error}", path.display()))?;
    }
    Ok(())
}

fn seconds(since: Instant) -> String {
    format!("{:.1} s", since.elapsed().as_secs_f64())
}

fn shown(command: &Command) -> String {
    let words: Vec<_> =
        std::iter::once(command.get_program()).chain(command.get_args()).map(OsStr::display).collect();
    words.iter().map(ToString::to_string).collect::<Vec<_>>().join(" ")
}

#[cfg(test)]
mod tests {
    use super::highlights;

    #[test]
    fn highlights_name_the_failed_test_and_its_panic() {
        let lines = [
            "test a ... ok",
            "test b ... FAILED",
            "---- b stdout ----",
            "thread 'b' (7) panicked at b.rs:1:1:",
            "wrong",
            "note: run with",
            "more",
        ];
        assert_eq!(highlights(&lines), [lines[1], lines[3], lines[4]]);
    }
}
