//! The math kernels against a table of correctly rounded results (`tables/math_reference.csv`).

use std::error::Error;
use std::fs;

use linewright::math;

/// Fewer rows than this per function would mean that the table was cut or misread.
const ROWS_AT_LEAST: usize = 500;

/// What the kernels promise: an error below 1.5 ulp (tan, ln, exp) or 1 ulp (the others), and less than 1.5 ulp from
/// the exact value is at most one double away from the exact value rounded.
const ULPS_AT_MOST: u64 = 1;

/// FNV-1a digest of all result bits in table order. It was printed by this test in a debug build on x86-64
/// and witnesses that other builds and processors give the same bits; it says nothing about correctness.
/// A change of a kernel or of the table changes it.
const DIGEST: u64 = 0x074b_c143_24e3_320c;

/// The functions and how many of a thousand rows may be that neighbor. A kernel as good as it says misses
/// rarely; one that has lost its last guard against rounding could pass the bound above, but not this one.
const FUNCTIONS: [(&str, usize); 8] = [
    ("sin", 40),
    ("cos", 40),
    ("tan", 40),
    ("ln", 60),
    ("exp", 150),
    ("asin", 250),
    ("cbrt", 250),
    ("atan2", 10),
];

struct Row {
    function: String,
    x: f64,
    y: f64,
    expected: f64,
}

impl Row {
    fn result(&self) -> f64 {
        match self.function.as_str() {
            "sin" => math::sin(self.x),
            "cos" => math::cos(self.x),
            "tan" => math::tan(self.x),
            "ln" => math::ln(self.x),
            "asin" => math::asin(self.x),
            "exp" => math::exp(self.x),
            "cbrt" => math::cbrt(self.x),
            _ => math::atan2(self.y, self.x),
        }
    }
}

fn table() -> Result<Vec<Row>, Box<dyn Error>> {
    let text = fs::read_to_string(concat!(env!("CARGO_MANIFEST_DIR"), "/tables/math_reference.csv"))?;
    let mut lines = text.lines();
    assert_eq!(lines.next(), Some("function,x_bits_hex,y_bits_hex,result_bits_hex"));
    let number = |hex: &str| u64::from_str_radix(hex, 16).map(f64::from_bits);
    lines
        .map(|line| {
            let fields: Vec<&str> = line.split(',').collect();
            let [function, x, y, expected] = fields[..] else {
                return Err(format!("not four fields: {line}").into());
            };
            if !FUNCTIONS.iter().any(|(known, _)| *known == function) {
                return Err(format!("unknown function: {line}").into());
            }
            let y = if function == "atan2" { number(y)? } else { 0.0 };
            Ok(Row { function: function.to_owned(), x: number(x)?, y, expected: number(expected)? })
        })
        .collect()
}

/// How many doubles apart two results are. Zero, NaN and the sign leave no room: they agree or they do not.
fn distance(result: f64, expected: f64) -> u64 {
    let (a, b) = (result.to_bits(), expected.to_bits());
    let strict = expected.is_nan() || b << 1 == 0 || (a ^ b) >> 63 == 1;
    if a == b {
        0
    } else if strict {
        u64::MAX
    } else {
        a.abs_diff(b)
    }
}

#[test]
fn results_are_within_the_stated_bound() -> Result<(), Box<dyn Error>> {
    let table = table()?;
    for (function, misses_per_thousand) in FUNCTIONS {
        let (mut rows, mut misses, mut largest) = (0, 0, 0);
        for row in table.iter().filter(|row| row.function == function) {
            let apart = distance(row.result(), row.expected);
            assert!(
                apart <= ULPS_AT_MOST,
                "{function} of x = {:e}, y = {:e} is {:e}, not {:e}",
                row.x,
                row.y,
                row.result(),
                row.expected
            );
            rows += 1;
            misses += usize::from(apart != 0);
            largest = largest.max(apart);
        }
        println!("{function}: {rows} rows, {misses} not correctly rounded, at most {largest} ulp");
        assert!(rows >= ROWS_AT_LEAST, "only {rows} rows for {function}");
        assert!(misses * 1000 <= rows * misses_per_thousand, "{misses} of {rows} for {function}");
    }
    Ok(())
}

#[test]
fn every_build_gives_the_same_bits() -> Result<(), Box<dyn Error>> {
    let mut digest: u64 = 0xcbf2_9ce4_8422_2325;
    for row in table()? {
        for byte in row.result().to_bits().to_le_bytes() {
            digest = (digest ^ u64::from(byte)).wrapping_mul(0x0000_0100_0000_01b3);
        }
    }
    assert_eq!(digest, DIGEST, "the digest is {digest:#018x}");
    Ok(())
}

/// Compares the wide forms with the scalar ones on all arguments of the table, `N` at a time.
fn compare_wide<const N: usize>(table: &[Row]) {
    let same = |wide: [f64; N], scalar: [f64; N], what: &str| {
        assert_eq!(wide.map(f64::to_bits), scalar.map(f64::to_bits), "{what}, {N} wide");
    };
    // Every window, so that each argument has been in each lane, beside its neighbors.
    for rows in table.windows(N) {
        let x = std::array::from_fn(|i| rows[i].x);
        let y = std::array::from_fn(|i| rows[i].y);
        same(math::sin_wide(x), x.map(math::sin), "sin");
        same(math::cos_wide(x), x.map(math::cos), "cos");
        same(math::tan_wide(x), x.map(math::tan), "tan");
        same(math::sin_cos_wide(x).0, x.map(math::sin), "sin of sin_cos");
        same(math::sin_cos_wide(x).1, x.map(math::cos), "cos of sin_cos");
        same(math::sqrt_wide(x), x.map(math::sqrt), "sqrt");
        same(math::ln_wide(x), x.map(math::ln), "ln");
        same(math::asin_wide(x), x.map(math::asin), "asin");
        same(math::exp_wide(x), x.map(math::exp), "exp");
        let scalar = std::array::from_fn(|i| math::atan2(y[i], x[i]));
        same(math::atan2_wide(y, x), scalar, "atan2");
    }
}

#[test]
fn every_width_gives_the_same_bits() -> Result<(), Box<dyn Error>> {
    let table = table()?;
    compare_wide::<1>(&table);
    compare_wide::<2>(&table);
    compare_wide::<4>(&table);
    compare_wide::<8>(&table);
    Ok(())
}

#[test]
fn outside_the_domain_the_result_is_nan() {
    let beyond = f64::from_bits(math::TRIG_LIMIT.to_bits() + 1);
    for x in [beyond, -beyond, 1e300, f64::INFINITY, f64::NEG_INFINITY, f64::NAN, -f64::NAN] {
        for result in [math::sin(x), math::cos(x), math::tan(x)] {
            assert_eq!(result.to_bits(), f64::NAN.to_bits(), "at {x:e}");
        }
        // One lane outside leaves the other alone.
        let [outside, inside] = math::sin_wide([x, 1.0]);
        assert!(outside.is_nan());
        assert_eq!(inside.to_bits(), math::sin(1.0).to_bits());
    }
    for result in [math::atan2(f64::NAN, 1.0), math::atan2(1.0, f64::NAN), math::atan2(-f64::NAN, f64::NAN)] {
        assert_eq!(result.to_bits(), f64::NAN.to_bits());
    }
}
