//! Timings of columns of springback: the curvature that remains of many bends.

use benches::tubes::Tubes;
use criterion::{BenchmarkId, Criterion, Throughput, criterion_group, criterion_main};
use linewright::units::per_mm;
use std::hint::black_box;

const COUNTS: [usize; 3] = [1_000, 10_000, 100_000];

fn columns(criterion: &mut Criterion) {
    let tubes = Tubes::new(100_000);
    let mut group = criterion.benchmark_group("curvature that remains, tubes");
    for count in COUNTS {
        let columns = tubes.columns(count);
        let mut out = vec![per_mm(0.0); count];
        group.throughput(Throughput::Elements(count as u64));
        group.bench_with_input(BenchmarkId::from_parameter(count), &columns, |bencher, columns| {
            bencher.iter(|| assert!(black_box(columns).remaining_into(black_box(&mut out)).is_ok()));
        });
        // Known from the quadrature of the first tube; see the conformance tests for the rest.
        assert!((out[0].value - 0.002_556_353_422_531_684).abs() < 1e-15, "{}", out[0].value);
    }
    group.finish();
}

criterion_group!(benches, columns);
criterion_main!(benches);
