//! Columns of springback against peers in Python, `peers/springback.py`: the same closed form with NumPy and with numba,
//! the same tubes, one core each, both timed in this run.
//!
//! `cargo bench -p benches --bench springback_peer` compares and times; with `--test` it compares only. The interpreter is
//! `python3`, or what the environment variable `PYTHON` names; `peers/requirements.txt` has what it needs.

use benches::peer::{ask, best, is_timed, machine, python};
use benches::tubes::Tubes;
use linewright::springback::Columns;
use linewright::units::{per_mm, to_mm, to_mpa};
use serde_json::Value;
use std::hint::black_box;

const PEER: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/peers/springback.py");
const COUNTS: [usize; 3] = [1_000, 10_000, 100_000];
const MOST: usize = 100_000;
/// Rounds of which the best counts.
const ROUNDS: usize = 40;
/// How many times faster than numba at least, at the largest count (what was promised).
const LEAST_RATIO: f64 = 4.0;
/// Curvature times radius agrees to this; both round differently.
const AGREE: f64 = 1e-12;
/// SHA-256 of the first thousand rows of outer radius, bore radius, modulus, yield strength and tangent modulus, eight
/// bytes of each: made once by another program from the same recipe. The radius goes through a library's exponential
/// function, whose last bit is the platform's.
const DIGESTS: [&str; 5] =
    ["0dce92cc087f7939", "8c0dc2483125bf0c", "0f930325ddc5f88c", "8c87b05df008f3a3", "6b9304333ff67cf1"];

fn main() {
    let is_timed = is_timed();
    let python = match python() {
        Ok(python) => python,
        Err(reason) => {
            println!("NOT RUN: springback against peers in Python ({reason})");
            return;
        }
    };
    let tubes = Tubes::new(MOST as u64);
    let all = tubes.columns(MOST);
    let asked = ask(&python, PEER, is_timed, &bytes(&all));
    assert!(asked.is_ok(), "{PEER}: {asked:?}");
    let Ok(answer) = asked else { return };
    if let Some(missing) = answer["missing"].as_str() {
        println!("NOT RUN: springback against numba ({missing})");
        if answer["numpy"].is_null() {
            return;
        }
    }
    for (ours, digest) in DIGESTS.iter().zip(answer["digests"].as_array().map_or(&[][..], Vec::as_slice)) {
        assert_eq!(digest.as_str(), Some(*ours), "the tubes are others");
    }
    let mut curvatures = vec![per_mm(0.0); MOST];
    assert!(all.remaining_into(&mut curvatures).is_ok());
    for peer in ["numpy", "numba"].into_iter().filter(|peer| answer[*peer].is_string()) {
        let theirs = answer["curvatures"][peer].as_array().map_or(&[][..], Vec::as_slice);
        assert_eq!(theirs.len(), MOST, "{peer}");
        let off = |((ours, theirs), radius): ((&linewright::units::Curvature, &Value), &_)| {
            (ours.value - theirs.as_f64().unwrap_or(f64::NAN)).abs() * to_mm(*radius)
        };
        // A difference that is no number must not pass.
        let bad =
            curvatures.iter().zip(theirs).zip(all.radius).map(off).find(|off| off.is_nan() || *off > AGREE);
        assert_eq!(bad, None, "curvature times radius against {peer}");
    }
    if is_timed {
        report(&answer, &tubes);
    } else {
        println!("Testing springback against peers in Python\nSuccess");
    }
}

/// The tubes as the peer reads them.
fn bytes(tubes: &Columns<'_>) -> Vec<u8> {
    let outer = |i: usize| 0.5 * to_mm(tubes.od[i]);
    let columns: [&dyn Fn(usize) -> f64; 6] = [
        &outer,
        &|i| outer(i) - to_mm(tubes.wall[i]),
        &|i| to_mpa(tubes.modulus[i]),
        &|i| to_mpa(tubes.yield_strength[i]),
        &|i| to_mpa(tubes.tangent_modulus[i]),
        &|i| to_mm(tubes.radius[i]),
    ];
    let numbers = columns.iter().flat_map(|column| (0..tubes.od.len()).map(move |i| column(i).to_le_bytes()));
    (tubes.od.len() as u64).to_le_bytes().into_iter().chain(numbers.flatten()).collect()
}

/// Prints the times, and asserts the ratio that was promised.
fn report(answer: &Value, tubes: &Tubes) {
    let version = |name: &str| answer[name].as_str().unwrap_or("missing").to_owned();
    println!(
        "{}; one of them used; Python {}, NumPy {}, numba {}",
        machine(),
        version("python"),
        version("numpy"),
        version("numba")
    );
    println!(
        "{:<18} {:>10} {:>10} {:>7} {:>10} {:>7}",
        "ns a tube", "ours", "numba", "ratio", "NumPy", "ratio"
    );
    for count in COUNTS {
        let columns = tubes.columns(count);
        let mut out = vec![per_mm(0.0); count];
        let ours = best(ROUNDS, count, || {
            assert!(black_box(&columns).remaining_into(black_box(&mut out)).is_ok());
        });
        let of = |peer: &str| answer["times"][format!("{peer} {count}")].as_f64().unwrap_or(f64::NAN);
        let (numba, numpy) = (of("numba"), of("numpy"));
        println!(
            "{:<18} {ours:>10.2} {numba:>10.2} {:>7.1} {numpy:>10.2} {:>7.1}",
            format!("{count} tubes"),
            numba / ours,
            numpy / ours
        );
        if count == MOST && answer["numba"].is_string() {
            let ratio = numba / ours;
            assert!(ratio >= LEAST_RATIO, "{ratio:.2} times as fast as numba, less than {LEAST_RATIO}");
        }
    }
}
