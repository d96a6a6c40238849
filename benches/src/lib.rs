//! Timings of linewright; the benchmarks themselves are under `benches/`.
