//! Reads what test runners print: how many tests passed, failed and were left out.

/// What a command or a step adds to the total.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Counts {
    /// Checks or tests that passed.
    pub passed: usize,
    /// Checks or tests that failed.
    pub failed: usize,
    /// Tests that the runner left out because the test says so.
    pub ignored: usize,
}

impl Counts {
    /// Brings the counts in line with the exit status. A run without a passed test is a failure, and so is a command
    /// that fails without saying which test did (a build that broke, a crash).
    pub fn settled(mut self, success: bool) -> Self {
        if self.failed == 0 && (!success || self.passed == 0) {
            self.failed = 1;
        }
        self
    }
}

/// The sums of libtest's `test result:` lines.
pub fn libtest(output: &str) -> Counts {
    let mut sum = Counts::default();
    for line in output.lines().filter_map(|line| line.strip_prefix("test result:")) {
        sum.passed += number_before(line, "passed");
        sum.failed += number_before(line, "failed");
        sum.ignored += number_before(line, "ignored");
    }
    sum
}

/// The closing line of pytest, such as `5 passed, 1 skipped in 0.12s`. Skipped tests are reported by their reasons
/// instead, see [`not_run_lines`].
pub fn pytest(output: &str) -> Counts {
    let closing = output.lines().rev().find(|line| {
        line.contains(" in ")
            && line.trim_matches('=').trim_start().starts_with(|first: char| first.is_ascii_digit())
    });
    let Some(line) = closing else { return Counts::default() };
    let failed = number_before(line, "failed") + number_before(line, "error") + number_before(line, "errors");
    Counts { passed: number_before(line, "passed"), failed, ignored: 0 }
}

/// The benchmarks that criterion ran once in its test mode.
pub fn criterion(output: &str) -> Counts {
    Counts { passed: output.lines().filter(|line| line.trim_end() == "Success").count(), ..Counts::default() }
}

/// What could not be run here, once each, in order: the lines that start with `NOT RUN: `, and the tests that pytest
/// skipped.
pub fn not_run_lines(log: &str) -> Vec<String> {
    let mut found: Vec<String> = Vec::new();
    for line in log.lines() {
        let what = line.trim_start().strip_prefix("NOT RUN: ").or_else(|| line.strip_prefix("SKIPPED "));
        if let Some(what) = what.map(str::trim).filter(|what| !what.is_empty())
            && !found.iter().any(|known| known == what)
        {
            found.push(what.to_owned());
        }
    }
    found
}

/// The number in front of `word`, as in `12 passed;`; 0 if the word is not there.
fn number_before(line: &str, word: &str) -> usize {
    let words: Vec<&str> =
        line.split_whitespace().map(|part| part.trim_matches([',', ';', '.', '='])).collect();
    let pair = words.windows(2).find(|pair| pair.last() == Some(&word));
    pair.and_then(|pair| pair.first()).and_then(|number| number.parse().ok()).unwrap_or(0)
}

#[cfg(test)]
mod tests {
    use super::{Counts, criterion, libtest, not_run_lines, pytest};

    fn counts(passed: usize, failed: usize, ignored: usize) -> Counts {
        Counts { passed, failed, ignored }
    }

    #[test]
    fn sums_test_results() {
        let output = "running 3 tests\n\
            test result: ok. 3 passed; 0 failed; 1 ignored; 0 measured; 0 filtered out; finished in 0.00s\n\
            test result: FAILED. 4 passed; 2 failed; 0 ignored; 0 measured; 0 filtered out; finished in 0.01s\n";
        assert_eq!(libtest(output), counts(7, 2, 1));
        assert_eq!(libtest("error: could not compile"), counts(0, 0, 0));
    }

    #[test]
    fn reads_the_closing_line_of_pytest() {
        assert_eq!(pytest("..s\n5 passed, 1 skipped in 0.12s\n"), counts(5, 0, 0));
        assert_eq!(pytest("=== 1 failed, 5 passed, 2 errors in 1.20s ===\n"), counts(5, 3, 0));
        assert_eq!(pytest("1 error in 0.10s"), counts(0, 1, 0));
        assert_eq!(pytest("no tests ran in 0.01s"), counts(0, 0, 0));
    }

    #[test]
    fn counts_benchmarks() {
        assert_eq!(criterion("Testing a\nSuccess\n\nTesting b\nSuccess\n"), counts(2, 0, 0));
    }

    #[test]
    fn a_run_without_tests_fails() {
        assert_eq!(counts(0, 0, 0).settled(true), counts(0, 1, 0));
        assert_eq!(counts(0, 0, 0).settled(false), counts(0, 1, 0));
        assert_eq!(counts(4, 0, 0).settled(false), counts(4, 1, 0));
        assert_eq!(counts(9, 2, 0).settled(false), counts(9, 2, 0));
        assert_eq!(counts(9, 0, 1).settled(true), counts(9, 0, 1));
    }

    #[test]
    fn collects_what_was_not_run_once() {
        let log = "test a ... ok\nNOT RUN: C++17 compile\n  NOT RUN: C++17 compile\nthis was NOT RUN: no\n\
            SKIPPED [1] tests/python/test_x.py:3: no display\n";
        assert_eq!(not_run_lines(log), ["C++17 compile", "[1] tests/python/test_x.py:3: no display"]);
    }
}
