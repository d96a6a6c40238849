//! Pipe threads: ISO 228-1 (G), ISO 7-1 (R, Rp, Rc), ASME B1.20.1 (NPT). The rows say how each was checked.

use super::class::Class;
use super::limits::Raw;
use super::{Family, Size, Thread, ThreadSide};
use crate::source::Checked;
use crate::units::{Length, inch, mm};

impl Thread {
    /// How far a taper thread goes in by hand, from its tip to the plane where the two have the same size: the nominal gauge
    /// length of R and Rc (ISO 7-1), L1 of NPT (ASME B1.20.1). None for a thread without taper, and for Rp.
    ///
    /// ```
    /// use linewright::{Thread, units::to_inch};
    /// let length = Thread::read("1/2-14 NPT")?.gauge_length().unwrap();
    /// assert!((to_inch(length) - 0.320).abs() < 1e-9);
    /// # Ok::<(), linewright::Error>(())
    /// ```
    #[must_use]
    pub fn gauge_length(&self) -> Option<Length> {
        match self.size {
            Size::Pipe { family: Family::Npt, row } => Some(inch(NPT[row].hand_tight_in)),
            Size::Pipe { family: Family::R | Family::Rc, row } => {
                WHITWORTH[row].sealing_mm.map(|[length, ..]| mm(length))
            }
            _ => None,
        }
    }

    /// Thread with full flanks that an external taper thread has at least: of R with the nominal gauge length (ISO 7-1, from
    /// memory), of NPT L2 = (0.8 D + 6.8) p (ASME B1.20.1; seen). None for the others.
    #[must_use]
    pub fn useful_length(&self) -> Option<Length> {
        match self.size {
            Size::Pipe { family: Family::Npt, row } => {
                let row = &NPT[row];
                Some(inch((0.8 * row.diameter_in + 6.8) * 2.0 / f64::from(row.per_two_inch)))
            }
            Size::Pipe { family: Family::R, row } => WHITWORTH[row].sealing_mm.map(|[.., length]| mm(length)),
            _ => None,
        }
    }
}

/// A row of the Whitworth pipe sizes: nominal size in 16ths of an inch, twice the threads per inch, basic major, pitch
/// and minor diameter in mm (ISO 228-1; ISO 7-1 has the same at its gauge plane), tolerances of ISO 228-1 in mm, and
/// lengths of ISO 7-1 in mm.
struct Whitworth {
    sixteenths: u32,
    per_two_inch: u32,
    basic_mm: [f64; 3],
    /// Pitch diameter, inside, and outside class A; class B has twice that. Minor inside. Major outside.
    tolerances_mm: [f64; 3],
    /// ISO 7-1: nominal gauge length, its tolerance outside, and the least useful thread with a nominal gauge length. None
    /// for a size that only ISO 228-1 has.
    sealing_mm: Option<[f64; 3]>,
}

const fn whitworth(
    sixteenths: u32,
    per_two_inch: u32,
    basic_mm: [f64; 3],
    tolerances_mm: [f64; 3],
    sealing_mm: Option<[f64; 3]>,
) -> Whitworth {
    Whitworth { sixteenths, per_two_inch, basic_mm, tolerances_mm, sealing_mm }
}

/// Tolerances of ISO 228-1 in mm, by threads per inch: 28, 19, 14 and 11, the last up to 2 in and above.
const TOLERANCES_28: [f64; 3] = [0.107, 0.282, 0.214];
const TOLERANCES_19: [f64; 3] = [0.125, 0.445, 0.250];
const TOLERANCES_14: [f64; 3] = [0.142, 0.541, 0.284];
const TOLERANCES_11: [f64; 3] = [0.180, 0.640, 0.360];
const TOLERANCES_WIDE: [f64; 3] = [0.217, 0.640, 0.434];

/// Diameters and tolerances of ISO 228-1:1994, every size of it, as two open-source projects quote it. The gauge lengths of
/// ISO 7-1 were seen in a public table (4 in is rounded to 25.5 there; here it is 25.4, from memory); their tolerances and
/// the useful lengths are from memory.
static WHITWORTH: [Whitworth; 24] = [
    whitworth(1, 56, [7.723, 7.142, 6.561], TOLERANCES_28, Some([4.0, 0.9, 6.5])),
    whitworth(2, 56, [9.728, 9.147, 8.566], TOLERANCES_28, Some([4.0, 0.9, 6.5])),
    whitworth(4, 38, [13.157, 12.301, 11.445], TOLERANCES_19, Some([6.0, 1.3, 9.7])),
    whitworth(6, 38, [16.662, 15.806, 14.950], TOLERANCES_19, Some([6.4, 1.3, 10.1])),
    whitworth(8, 28, [20.955, 19.793, 18.631], TOLERANCES_14, Some([8.2, 1.8, 13.2])),
    whitworth(10, 28, [22.911, 21.749, 20.587], TOLERANCES_14, None),
    whitworth(12, 28, [26.441, 25.279, 24.117], TOLERANCES_14, Some([9.5, 1.8, 14.5])),
    whitworth(14, 28, [30.201, 29.039, 27.877], TOLERANCES_14, None),
    whitworth(16, 22, [33.249, 31.770, 30.291], TOLERANCES_11, Some([10.4, 2.3, 16.8])),
    whitworth(18, 22, [37.897, 36.418, 34.939], TOLERANCES_11, None),
    whitworth(20, 22, [41.910, 40.431, 38.952], TOLERANCES_11, Some([12.7, 2.3, 19.1])),
    whitworth(24, 22, [47.803, 46.324, 44.845], TOLERANCES_11, Some([12.7, 2.3, 19.1])),
    whitworth(28, 22, [53.746, 52.267, 50.788], TOLERANCES_11, None),
    whitworth(32, 22, [59.614, 58.135, 56.656], TOLERANCES_11, Some([15.9, 2.3, 23.4])),
    whitworth(36, 22, [65.710, 64.231, 62.752], TOLERANCES_WIDE, None),
    whitworth(40, 22, [75.184, 73.705, 72.226], TOLERANCES_WIDE, Some([17.5, 3.5, 26.7])),
    whitworth(44, 22, [81.534, 80.055, 78.576], TOLERANCES_WIDE, None),
    whitworth(48, 22, [87.884, 86.405, 84.926], TOLERANCES_WIDE, Some([20.6, 3.5, 29.8])),
    whitworth(56, 22, [100.330, 98.851, 97.372], TOLERANCES_WIDE, None),
    whitworth(64, 22, [113.030, 111.551, 110.072], TOLERANCES_WIDE, Some([25.4, 3.5, 35.8])),
    whitworth(72, 22, [125.730, 124.251, 122.772], TOLERANCES_WIDE, None),
    whitworth(80, 22, [138.430, 136.951, 135.472], TOLERANCES_WIDE, Some([28.6, 3.5, 40.1])),
    whitworth(88, 22, [151.130, 149.651, 148.172], TOLERANCES_WIDE, None),
    whitworth(96, 22, [163.830, 162.351, 160.872], TOLERANCES_WIDE, Some([28.6, 3.5, 40.1])),
];

/// A row of NPT: nominal size in 16ths of an inch, twice the threads per inch, outside diameter of the pipe and hand-tight
/// engagement L1, both in inches.
struct Npt {
    sixteenths: u32,
    per_two_inch: u32,
    diameter_in: f64,
    hand_tight_in: f64,
}

/// ASME B1.20.1, Table 2: from 1/8 on in a public copy of its page, and up to 8 in two charts besides. The row of 1/16 is
/// from memory. Sizes above 12, which go by the outside diameter of the pipe, are left out.
static NPT: [Npt; 19] = [
    npt(1, 54, 0.3125, 0.160),
    npt(2, 54, 0.405, 0.1615),
    npt(4, 36, 0.540, 0.2278),
    npt(6, 36, 0.675, 0.240),
    npt(8, 28, 0.840, 0.320),
    npt(12, 28, 1.050, 0.339),
    npt(16, 23, 1.315, 0.400),
    npt(20, 23, 1.660, 0.420),
    npt(24, 23, 1.900, 0.420),
    npt(32, 23, 2.375, 0.436),
    npt(40, 16, 2.875, 0.682),
    npt(48, 16, 3.500, 0.766),
    npt(56, 16, 4.000, 0.821),
    npt(64, 16, 4.500, 0.844),
    npt(80, 16, 5.563, 0.937),
    npt(96, 16, 6.625, 0.958),
    npt(128, 16, 8.625, 1.063),
    npt(160, 16, 10.750, 1.210),
    npt(192, 16, 12.750, 1.360),
];

const fn npt(sixteenths: u32, per_two_inch: u32, diameter_in: f64, hand_tight_in: f64) -> Npt {
    Npt { sixteenths, per_two_inch, diameter_in, hand_tight_in }
}

/// How far the full flanks of a taper thread go from its end: what is useful of the external one, and as far in the other.
pub(super) fn reach(thread: &Thread) -> Option<Length> {
    match thread.size {
        Size::Pipe { family: Family::Rc, row } => WHITWORTH[row].sealing_mm.map(|[.., length]| mm(length)),
        _ => thread.useful_length(),
    }
}

/// The row of a nominal size.
pub(super) fn row(family: Family, sixteenths: u32) -> Option<usize> {
    match family {
        Family::Npt => NPT.iter().position(|row| row.sixteenths == sixteenths),
        Family::G => WHITWORTH.iter().position(|row| row.sixteenths == sixteenths),
        _ => WHITWORTH.iter().position(|row| row.sixteenths == sixteenths && row.sealing_mm.is_some()),
    }
}

/// Nominal size in 16ths of an inch.
pub(super) fn sixteenths(family: Family, row: usize) -> u32 {
    match family {
        Family::Npt => NPT[row].sixteenths,
        _ => WHITWORTH[row].sixteenths,
    }
}

pub(super) fn per_two_inch(family: Family, row: usize) -> u32 {
    match family {
        Family::Npt => NPT[row].per_two_inch,
        _ => WHITWORTH[row].per_two_inch,
    }
}

pub(super) fn diameter(family: Family, row: usize) -> Length {
    match family {
        Family::Npt => inch(NPT[row].diameter_in),
        _ => mm(WHITWORTH[row].basic_mm[0]),
    }
}

/// Change of diameter along the axis of a taper thread.
const TAPER: f64 = 1.0 / 16.0;
const MM_PER_INCH: f64 = 25.4;

/// Limits in mm. Those of a taper thread are at the end that enters first: the tip outside, the mouth inside. None for
/// a side that the family has not.
pub(super) fn limits(thread: &Thread, class: Option<Class>, side: ThreadSide) -> Option<Raw> {
    let Size::Pipe { family, row } = thread.size else { return None };
    match family {
        Family::Npt => Some(npt_limits(&NPT[row], side)),
        Family::G => Some(parallel(&WHITWORTH[row], class, side)),
        Family::R if side == ThreadSide::External => taper_outside(&WHITWORTH[row]),
        Family::Rp if side == ThreadSide::Internal => Some(at_gauge_plane(&WHITWORTH[row])),
        Family::Rc if side == ThreadSide::Internal => Some(at_gauge_plane(&WHITWORTH[row])),
        _ => None,
    }
}

fn parallel(row: &Whitworth, class: Option<Class>, side: ThreadSide) -> Raw {
    let [d, d2, d1] = row.basic_mm;
    let [pitch, minor, major] = row.tolerances_mm;
    match side {
        ThreadSide::External => {
            let pitch = if class == Some(Class::PipeB) { 2.0 * pitch } else { pitch };
            Raw {
                major: [d - major, d],
                pitch: [d2 - pitch, d2],
                minor: [f64::NAN, d1],
                rounded_root: f64::NAN,
                checked: Checked::SecondHand,
            }
        }
        ThreadSide::Internal => Raw {
            major: [d, f64::NAN],
            pitch: [d2, d2 + pitch],
            minor: [d1, d1 + minor],
            rounded_root: f64::NAN,
            checked: Checked::SecondHand,
        },
    }
}

/// R: the gauge plane, where the diameters are basic, lies a gauge length from the tip, more or less.
fn taper_outside(row: &Whitworth) -> Option<Raw> {
    let [length, tolerance, _] = row.sealing_mm?;
    let span = |basic: f64| [basic - (length + tolerance) * TAPER, basic - (length - tolerance) * TAPER];
    let [d, d2, d1] = row.basic_mm;
    Some(Raw {
        major: span(d),
        pitch: span(d2),
        minor: span(d1),
        rounded_root: f64::NAN,
        checked: Checked::Memory,
    })
}

/// Turns that the gauge plane of Rp and Rc may lie away from the mouth, either way, up to 2 in and above (ISO 7-1, from
/// memory). Over the taper that is the tolerance of the diameters: 0.071, 0.104, 0.142 and 0.180 mm for 28, 19, 14 and 11
/// threads per inch, and 0.216 mm above 2 in.
const INSIDE_TURNS: [f64; 2] = [1.25, 1.5];
const TWO_INCHES: u32 = 32;

/// Rp and Rc: basic at the mouth, more or less.
fn at_gauge_plane(row: &Whitworth) -> Raw {
    let turns = INSIDE_TURNS[usize::from(row.sixteenths > TWO_INCHES)];
    let tolerance = turns * 2.0 * MM_PER_INCH / f64::from(row.per_two_inch) * TAPER;
    let span = |basic: f64| [basic - tolerance, basic + tolerance];
    let [d, d2, d1] = row.basic_mm;
    Raw { major: span(d), pitch: span(d2), minor: span(d1), rounded_root: f64::NAN, checked: Checked::Memory }
}

/// Most truncation of a crest of NPT, from the sharp V, in inches: twice the threads per inch, and how much (ASME B1.20.1, in a
/// chart; the least is 0.033 p, which leaves the height of 0.8 p).
const TRUNCATION_IN: [(u32, f64); 5] = [(54, 0.0036), (36, 0.0049), (28, 0.0056), (23, 0.0063), (16, 0.0078)];
/// Height of the sharp V over the pitch: sqrt(3) / 2.
const SHARP: f64 = 0.866_025_403_784_438_6;

/// NPT: E0 = D - (0.05 D + 1.1) p at the tip, E1 = E0 + L1 / 16 at the mouth, thread height 0.8 p less the truncation of its
/// crest (all seen), gauging one turn either way (from memory, so that the limits are too). Roots are taken as deep as the
/// least truncation leaves them: how a crest meets a flatter one is left to the sealant.
fn npt_limits(row: &Npt, side: ThreadSide) -> Raw {
    let p = 2.0 / f64::from(row.per_two_inch);
    let tip = row.diameter_in - (0.05 * row.diameter_in + 1.1) * p;
    let pitch = match side {
        ThreadSide::External => tip,
        ThreadSide::Internal => tip + row.hand_tight_in * TAPER,
    };
    let turn = p * TAPER;
    let cut =
        TRUNCATION_IN.iter().find(|(count, _)| *count == row.per_two_inch).map_or(f64::NAN, |row| row.1);
    let flat = (0.8 - SHARP) * p + 2.0 * cut;
    let [major_less, minor_more] = match side {
        ThreadSide::External => [flat, 0.0],
        ThreadSide::Internal => [0.0, flat],
    };
    let span = |low: f64, high: f64| [(low - turn) * MM_PER_INCH, (high + turn) * MM_PER_INCH];
    Raw {
        major: span(pitch + 0.8 * p - major_less, pitch + 0.8 * p),
        pitch: span(pitch, pitch),
        minor: span(pitch - 0.8 * p, pitch - 0.8 * p + minor_more),
        rounded_root: f64::NAN,
        checked: Checked::Memory,
    }
}
