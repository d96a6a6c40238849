//! How a peer in Python is found, asked and timed against.

use serde_json::Value;
use std::env;
use std::fs;
use std::io::Write as _;
use std::process::{Command, Stdio};
use std::thread::available_parallelism;
use std::time::Instant;

/// How long one round of [`best`] takes. The machine may be busy with other things.
const ROUND_NS: f64 = 3e6;

/// Whether times are wanted. As criterion does: without `--bench` the caller wants to know whether it works.
#[must_use]
pub fn is_timed() -> bool {
    let has = |flag: &str| env::args().any(|argument| argument == flag);
    has("--bench") && !has("--test")
}

/// The interpreter, `python3` or what the environment variable `PYTHON` names, or why there is none.
///
/// # Errors
/// Where it cannot be run or is too old.
pub fn python() -> Result<String, String> {
    let python = env::var("PYTHON").ok().filter(|name| !name.is_empty()).unwrap_or("python3".to_owned());
    let mut probe = Command::new(&python);
    probe.args(["-c", "import sys; sys.exit(sys.version_info < (3, 11))"]).stderr(Stdio::null());
    match probe.status() {
        Ok(status) if status.success() => Ok(python),
        Ok(_) => Err(format!("{python} is older than 3.11 or does not work")),
        Err(error) => Err(format!("{python}: {error}")),
    }
}

/// Runs the peer on an input.
///
/// # Errors
/// Where it fails, or answers what is not JSON.
pub fn ask(python: &str, peer: &str, is_timed: bool, input: &[u8]) -> Result<Value, String> {
    let mut command = Command::new(python);
    command.arg(peer).args((!is_timed).then_some("--once"));
    let mut child = command
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .map_err(|error| format!("{python}: {error}"))?;
    let mut pipe = child.stdin.take().ok_or("no input")?;
    // A peer that ends before it has read all says why in its status.
    let sent = pipe.write_all(input);
    drop(pipe);
    let output = child.wait_with_output().map_err(|error| error.to_string())?;
    if !output.status.success() {
        return Err(format!("{}", output.status));
    }
    sent.map_err(|error| error.to_string())?;
    serde_json::from_slice(&output.stdout).map_err(|error| error.to_string())
}

/// Nanoseconds for one of `count` operations: the best of some rounds.
pub fn best(rounds: usize, count: usize, mut work: impl FnMut()) -> f64 {
    let start = Instant::now();
    work();
    let once = start.elapsed().as_secs_f64() * 1e9;
    let mut repeats = 1;
    while rounds > 1 && f64::from(repeats) * once < ROUND_NS {
        repeats *= 2;
    }
    let mut least = f64::INFINITY;
    for _ in 0..rounds {
        let start = Instant::now();
        for _ in 0..repeats {
            work();
        }
        least = least.min(start.elapsed().as_secs_f64() * 1e9);
    }
    least / f64::from(repeats) / count as f64
}

/// The processor's name where the system gives it, and how many of them.
#[must_use]
pub fn machine() -> String {
    let about = fs::read_to_string("/proc/cpuinfo").unwrap_or_default();
    let name = about.lines().find_map(|line| line.strip_prefix("model name")?.split_once(':'));
    let name = name.map_or("a processor that does not say its name", |(_, name)| name.trim());
    let cores = available_parallelism().map_or("unknown number of".to_owned(), |cores| cores.to_string());
    format!("{name}, {cores} cores")
}
