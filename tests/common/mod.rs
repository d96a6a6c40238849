//! What the conformance tests share: the case files, their runner in Rust, the flat form that other languages read,
//! and sample lines.
#![allow(dead_code, reason = "every test target compiles this module and uses a part of it")]

pub mod accept;
pub mod accept_flare;
pub mod answer;
pub mod case;
pub mod compare;
pub mod draw;
pub mod filled;
pub mod flat;
pub mod random;
pub mod run;
pub mod run_flare;
pub mod sample;
pub mod source;
pub mod springback;
pub mod springback_input;
pub mod threads;
pub mod wall;

/// What a helper gives back: a test fails on an error with its text.
pub type Outcome<T> = Result<T, Box<dyn std::error::Error>>;

/// A folder or file of this package.
pub fn here(path: &str) -> std::path::PathBuf {
    std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join(path)
}

/// How many random cases a law is tried on: `PROPTEST_CASES`, or as many as the law asks for.
pub fn cases(usual: u32) -> u32 {
    std::env::var("PROPTEST_CASES").ok().and_then(|count| count.parse().ok()).unwrap_or(usual)
}
