//! What the benchmarks under `benches/` share: inputs that are the same on every machine, and how a peer is run.

pub mod peer;
pub mod tubes;
