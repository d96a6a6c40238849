//! Timings.
fn main() {}
