//! Limits of Unified inch threads, ASME B1.1: formulas in inches, rounded at each stage as the worked examples of
//! Machinery's Handbook 31 do (seen). Rules that were not seen are named where they stand.

use super::class::Class;
use super::limits::Raw;
use super::{Size, Thread, ThreadSide};
use crate::math::{cbrt, sqrt};
use crate::source::Checked;
use crate::units::{Length, inch};

/// A series of diameter and pitch combinations.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Series {
    /// Coarse.
    Unc,
    /// Fine.
    Unf,
    /// Extra fine.
    Unef,
    /// Constant pitch.
    Un,
    /// Special.
    Uns,
}

/// Diameters in millionths of an inch with twice their threads per inch (from memory of ASME B1.1 table 1; the sizes
/// from 5/16 to 7/8 that hydraulic fittings use were seen).
const COARSE: [(u32, u32); 33] = [
    (73_000, 128),
    (86_000, 112),
    (99_000, 96),
    (112_000, 80),
    (125_000, 80),
    (138_000, 64),
    (164_000, 64),
    (190_000, 48),
    (216_000, 48),
    (250_000, 40),
    (312_500, 36),
    (375_000, 32),
    (437_500, 28),
    (500_000, 26),
    (562_500, 24),
    (625_000, 22),
    (750_000, 20),
    (875_000, 18),
    (1_000_000, 16),
    (1_125_000, 14),
    (1_250_000, 14),
    (1_375_000, 12),
    (1_500_000, 12),
    (1_750_000, 10),
    (2_000_000, 9),
    (2_250_000, 9),
    (2_500_000, 8),
    (2_750_000, 8),
    (3_000_000, 8),
    (3_250_000, 8),
    (3_500_000, 8),
    (3_750_000, 8),
    (4_000_000, 8),
];
const FINE: [(u32, u32); 24] = [
    (60_000, 160),
    (73_000, 144),
    (86_000, 128),
    (99_000, 112),
    (112_000, 96),
    (125_000, 88),
    (138_000, 80),
    (164_000, 72),
    (190_000, 64),
    (216_000, 56),
    (250_000, 56),
    (312_500, 48),
    (375_000, 48),
    (437_500, 40),
    (500_000, 40),
    (562_500, 36),
    (625_000, 36),
    (750_000, 32),
    (875_000, 28),
    (1_000_000, 24),
    (1_125_000, 24),
    (1_250_000, 24),
    (1_375_000, 24),
    (1_500_000, 24),
];
const EXTRA_FINE: [(u32, u32); 25] = [
    (216_000, 64),
    (250_000, 64),
    (312_500, 64),
    (375_000, 64),
    (437_500, 56),
    (500_000, 56),
    (562_500, 48),
    (625_000, 48),
    (687_500, 48),
    (750_000, 40),
    (812_500, 40),
    (875_000, 40),
    (937_500, 40),
    (1_000_000, 40),
    (1_062_500, 36),
    (1_125_000, 36),
    (1_187_500, 36),
    (1_250_000, 36),
    (1_312_500, 36),
    (1_375_000, 36),
    (1_437_500, 36),
    (1_500_000, 36),
    (1_562_500, 36),
    (1_625_000, 36),
    (1_687_500, 36),
];
/// Twice the threads per inch of the constant-pitch series, and the smallest and the largest diameter of each (from memory).
const CONSTANT_PITCH: [(u32, u32, u32); 8] = [
    (8, 2_500_000, 6_000_000),
    (12, 1_375_000, 6_000_000),
    (16, 1_000_000, 6_000_000),
    (24, 562_500, 6_000_000),
    (32, 375_000, 6_000_000),
    (40, 250_000, 3_000_000),
    (56, 216_000, 1_500_000),
    (64, 138_000, 1_000_000),
];

impl Series {
    /// The letters in a designation.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Series::Unc => "UNC",
            Series::Unf => "UNF",
            Series::Unef => "UNEF",
            Series::Un => "UN",
            Series::Uns => "UNS",
        }
    }

    /// The series of its letters, also in the older spelling without U (sizes and counts are the same; from memory).
    pub(super) fn read(letters: &str) -> Option<Series> {
        [Series::Unc, Series::Unf, Series::Unef, Series::Un, Series::Uns].into_iter().find(|series| {
            let name = series.name();
            let older = &name[1..];
            name.eq_ignore_ascii_case(letters) || older.len() > 1 && older.eq_ignore_ascii_case(letters)
        })
    }

    pub(super) fn of(diameter_uin: u32, per_two_inch: u32) -> Series {
        let size = (diameter_uin, per_two_inch);
        if COARSE.contains(&size) {
            Series::Unc
        } else if FINE.contains(&size) {
            Series::Unf
        } else if EXTRA_FINE.contains(&size) {
            Series::Unef
        } else if is_tabulated(diameter_uin)
            && CONSTANT_PITCH.iter().any(|(count, least, most)| {
                *count == per_two_inch && (*least..=*most).contains(&diameter_uin)
            })
        {
            Series::Un
        } else {
            Series::Uns
        }
    }

    /// Twice the threads per inch that a series has for a diameter, for spellings without a count.
    pub(super) fn per_two_inch(self, diameter_uin: u32) -> Option<u32> {
        let rows: &[(u32, u32)] = match self {
            Series::Unc => &COARSE,
            Series::Unf => &FINE,
            Series::Unef => &EXTRA_FINE,
            Series::Un | Series::Uns => return None,
        };
        rows.iter().find(|row| row.0 == diameter_uin).map(|row| row.1)
    }
}

/// Whether the tables of constant pitch have a diameter: number sizes, 16ths to 2 in, eighths beyond (from memory; 2 7/16-16
/// was seen as UNS).
fn is_tabulated(diameter_uin: u32) -> bool {
    const IN_16TH: u32 = 62_500;
    let step = if diameter_uin <= 2_000_000 { IN_16TH } else { 2 * IN_16TH };
    diameter_uin.is_multiple_of(step) || number_of(diameter_uin).is_some()
}

/// Number sizes: 0.060 in and 0.013 in more for each (from memory of ASME B1.1).
pub(super) fn number_size(number: u32) -> Option<u32> {
    matches!(number, 0..=6 | 8 | 10 | 12).then(|| 60_000 + 13_000 * number)
}

/// The number size of a diameter. No. 5 is 1/8 in, and is written so.
pub(super) fn number_of(diameter_uin: u32) -> Option<u32> {
    (0..=12).find(|number| number_size(*number) == Some(diameter_uin))
}

/// Rounds to a number of decimal places, a half to the even digit: 2 1/2-6 UN-2A is 2.38005 by the formulas and printed 2.3800
/// (Machinery's Handbook 27), 1-8 UNC-2A .91005 and .9100, 1 1/8-7 UNC-2A 1.02275 and 1.0228 (a public list; all seen).
fn places(value: f64, scale: f64) -> f64 {
    // A half of decimals is one but for the last bits of a double.
    const SAME: f64 = 1e6;
    // From here on doubles are whole numbers: a sum with it is rounded to one, a half to the even, and by no call.
    const WHOLE: f64 = 4_503_599_627_370_496.0;
    let whole = |number: f64| number + WHOLE - WHOLE;
    whole(whole(value * scale * SAME) / SAME) / scale
}
const THREE: f64 = 1e3;
const FOUR: f64 = 1e4;
const SIX: f64 = 1e6;
const EIGHT: f64 = 1e8;

/// No. 6: from here on the minor diameter of an internal thread is printed with three places (seen in public charts).
const NUMBER_SIX_UIN: u32 = 138_000;
/// Quarter inch: where the rule of the minor diameter's tolerance changes.
const QUARTER_UIN: u32 = 250_000;

/// Length of engagement in inches that the tolerances are based on where nobody states one: the diameter for the coarse,
/// the fine and the 4-, 6- and 8-thread series, nine pitches for the others (8 seen; 4 and 6 from memory).
fn usual_engagement(diameter_uin: u32, per_two_inch: u32) -> f64 {
    match Series::of(diameter_uin, per_two_inch) {
        Series::Unc | Series::Unf => places(f64::from(diameter_uin) / 1e6, FOUR),
        Series::Un if matches!(per_two_inch, 8 | 12 | 16) => places(f64::from(diameter_uin) / 1e6, FOUR),
        Series::Un | Series::Unef | Series::Uns => 9.0 * places(2.0 / f64::from(per_two_inch), EIGHT),
    }
}

/// Allowances in inches that print differs from the formula in: 0.3 x 0.005501 is 0.00165, printed 0.0016 (5/8-11, seen
/// in a public copy of the table of ASME B1.1); 9/16-32 has that of 1/2 in (seen in a public list of external limits).
const PRINTED_ALLOWANCE: [((u32, u32), f64); 2] = [((625_000, 22), 0.0016), ((562_500, 64), 0.0010)];

/// Pitch diameters in inches that print differs from the formulas in by one unit of the fourth place: size, class number,
/// side, the limit away from basic. 15/16 seen in a public chart (tolerances of 1 in), 9/16 in a public list of external limits
/// (those of 1/2 in; its internal limits were not seen), 2 3/8-20 in Machinery's Handbook 27, table 3.
#[rustfmt::skip]
const PRINTED_PITCH: [((u32, u32), u8, ThreadSide, f64); 10] = [
    ((562_500, 40), 2, ThreadSide::External, 0.5245),
    ((562_500, 48), 2, ThreadSide::External, 0.5303),
    ((562_500, 48), 3, ThreadSide::External, 0.5325),
    ((937_500, 24), 2, ThreadSide::External, 0.8760),
    ((937_500, 24), 3, ThreadSide::External, 0.8793),
    ((937_500, 24), 2, ThreadSide::Internal, 0.8908),
    ((937_500, 32), 2, ThreadSide::Internal, 0.9034),
    ((937_500, 32), 3, ThreadSide::Internal, 0.9018),
    ((2_375_000, 40), 2, ThreadSide::External, 2.3359),
    ((2_375_000, 40), 3, ThreadSide::Internal, 2.3475),
];

/// Smallest and largest minor diameter inside, in inches, of classes 1B and 2B that print differs from the formulas in by one
/// unit of the third place (seen in a public table of internal threads). The smallest is that of class 3B too. 7/8-14 is
/// 0.81348 by the formulas, so 0.813 here; 0.814 is remembered of charts, and was not seen.
const PRINTED_MINOR: [((u32, u32), [f64; 2]); 2] =
    [((190_000, 48), [0.145, 0.156]), ((1_750_000, 10), [1.534, 1.568])];

/// The printed pitch diameter where the tables have another than the formulas.
fn printed_pitch(size: (u32, u32), number: u8, side: ThreadSide) -> Option<f64> {
    PRINTED_PITCH.iter().find(|row| (row.0, row.1, row.2) == (size, number, side)).map(|row| row.3)
}

impl Thread {
    /// The length of engagement that the tolerances of a Unified thread are based on where none is stated; None for other
    /// families.
    #[must_use]
    pub fn basic_engagement(&self) -> Option<Length> {
        let Size::Unified { diameter_uin, per_two_inch } = self.size else { return None };
        Some(inch(usual_engagement(diameter_uin, per_two_inch)))
    }
}

/// Limits in inches, based on an engaged length in inches or on the usual one; None for a class of another family, and where
/// the diameters of one side would overlap each other: no such thread is made.
pub(super) fn limits(
    thread: &Thread,
    class: Class,
    side: ThreadSide,
    engaged_in: Option<f64>,
) -> Option<Raw> {
    let (Size::Unified { diameter_uin, per_two_inch }, Class::Unified { number, .. }) = (thread.size, class)
    else {
        return None;
    };
    let d = places(f64::from(diameter_uin) / 1e6, FOUR);
    let p = places(2.0 / f64::from(per_two_inch), EIGHT);
    let engaged = engaged_in.unwrap_or_else(|| usual_engagement(diameter_uin, per_two_inch));
    let root_p = cbrt(p);
    let p_two_thirds = root_p * root_p;
    let two_a = places(0.0015 * (cbrt(d) + sqrt(engaged) + 10.0 * p_two_thirds), SIX);
    let basic_pitch = places(d - places(0.649_519_05 * p, SIX), FOUR);
    let size = (diameter_uin, per_two_inch);
    // Tables hold for the usual engagement only.
    let printed = if engaged_in.is_none() { printed_pitch(size, number, side) } else { None };
    // Some rules of internal threads, and of lengths of engagement, are from memory; what print has otherwise is quoted.
    let is_printed = engaged_in.is_none()
        && (printed.is_some()
            || PRINTED_MINOR.iter().any(|row| row.0 == size) && side == ThreadSide::Internal
            || PRINTED_ALLOWANCE.iter().any(|row| row.0 == size)
                && side == ThreadSide::External
                && number < 3);
    let is_small = diameter_uin < QUARTER_UIN && side == ThreadSide::Internal;
    let checked = match (is_printed, is_small || p > 0.25 || matches!(per_two_inch, 8 | 12)) {
        (true, _) => Checked::SecondHand,
        (false, true) => Checked::Memory,
        (false, false) => Checked::Computed,
    };
    let raw = match side {
        ThreadSide::External => {
            let factor = match number {
                1 => 1.5,
                2 => 1.0,
                _ => 0.75,
            };
            let allowance = match PRINTED_ALLOWANCE.iter().find(|row| row.0 == size) {
                _ if number == 3 => 0.0,
                Some(row) if engaged_in.is_none() => row.1,
                _ => places(0.3 * two_a, FOUR),
            };
            let major_tolerance = places(if number == 1 { 0.09 } else { 0.06 } * p_two_thirds, FOUR);
            let major_max = places(d - allowance, FOUR);
            let pitch_max = places(basic_pitch - allowance, FOUR);
            let pitch_min = printed.unwrap_or(places(pitch_max - places(factor * two_a, SIX), FOUR));
            Raw {
                major: [places(major_max - major_tolerance, FOUR), major_max],
                pitch: [pitch_min, pitch_max],
                // Flat root of the UN form at its shallowest; for reference only, so no least is given.
                minor: [f64::NAN, places(major_max - places(1.082_531_75 * p, SIX), FOUR)],
                rounded_root: places(major_max - places(1.190_784_93 * p, SIX), FOUR),
                checked,
            }
        }
        ThreadSide::Internal => {
            let factor = match number {
                1 => 1.95,
                2 => 1.3,
                _ => 0.975,
            };
            let pitch_max = printed.unwrap_or(places(basic_pitch + places(factor * two_a, SIX), FOUR));
            let minor = places(d - places(1.082_531_75 * p, SIX), SIX);
            let tolerance = minor_tolerance(number, diameter_uin, p, p_two_thirds);
            let [least, most] = PRINTED_MINOR
                .iter()
                .find(|row| row.0 == size)
                .map_or([places(minor, THREE), places(minor + tolerance, THREE)], |row| row.1);
            Raw {
                major: [places(d, FOUR), f64::NAN],
                pitch: [basic_pitch, pitch_max],
                // Below No. 6 four places are printed, above three, and of class 3B four of the largest.
                minor: match number {
                    _ if diameter_uin < NUMBER_SIX_UIN => {
                        [places(minor, FOUR), places(minor + tolerance, FOUR)]
                    }
                    3 => [least, places(minor + tolerance, FOUR)],
                    _ => [least, most],
                },
                rounded_root: f64::NAN,
                checked,
            }
        }
    };
    (raw.minor[1] < raw.pitch[0] && raw.pitch[1] < raw.major[0]).then_some(raw)
}

/// Tolerance of the minor diameter, inside. The rules below a quarter inch are from memory, and give every printed limit that
/// was seen of No. 0, 1, 2, 4, 6, 8, 10, 12 and 1/8-40; those above it were seen; coarser than 4 threads per inch is from
/// memory.
fn minor_tolerance(number: u8, diameter_uin: u32, p: f64, p_two_thirds: f64) -> f64 {
    let d = f64::from(diameter_uin) / 1e6;
    let coarse = p > 0.25;
    let least = 0.25 * p - 0.4 * p * p;
    let small = 0.05 * p_two_thirds + 0.03 * p / d - 0.002;
    let tolerance = match number {
        3 => {
            let floor = if p <= 1.0 / 13.0 + 1e-9 { 0.23 * p - 1.5 * p * p } else { 0.12 * p };
            small.min(0.394 * p).max(floor)
        }
        _ if coarse => 0.15 * p,
        _ if diameter_uin < QUARTER_UIN => small.min(0.394 * p).max(least),
        _ => least,
    };
    places(tolerance, FOUR)
}
