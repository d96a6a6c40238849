//! Pipe threads: ISO 228-1 (G), ISO 7-1 (R, Rp, Rc), ASME B1.20.1 (NPT). The rows say how each was checked.

use super::class::Class;
use super::limits::Raw;
use super::{Family, Size, Thread, ThreadSide};
use crate::source::Checked;
use crate::units::{Length, inch, mm};

/// A row of the Whitworth pipe sizes: nominal size in 16ths of an inch, twice the threads per inch, basic major, pitch
/// and minor diameter in mm (ISO 228-1; ISO 7-1 has the same at its gauge plane), tolerances of ISO 228-1 in mm, and
/// the gauge length and the tolerances of ISO 7-1 in mm.
struct Whitworth {
    sixteenths: u32,
    per_two_inch: u32,
    basic_mm: [f64; 3],
    /// Pitch diameter, inside, and outside class A; class B has twice that. Minor inside. Major outside.
    tolerances_mm: [f64; 3],
    /// ISO 7-1 (from memory): nominal gauge length, and its tolerance outside (one turn).
    gauge_mm: [f64; 2],
    /// How the ISO 228-1 numbers were checked.
    checked: Checked,
}

const fn whitworth(
    sixteenths: u32,
    per_two_inch: u32,
    basic_mm: [f64; 3],
    tolerances_mm: [f64; 3],
    gauge_mm: [f64; 2],
    checked: Checked,
) -> Whitworth {
    Whitworth { sixteenths, per_two_inch, basic_mm, tolerances_mm, gauge_mm, checked }
}

/// Up to 1/2 seen in two open-source transcriptions of ISO 228-1:1994; the larger ones are from memory.
static WHITWORTH: [Whitworth; 7] = [
    whitworth(1, 56, [7.723, 7.142, 6.561], [0.107, 0.282, 0.214], [4.0, 0.9], Checked::Seen),
    whitworth(2, 56, [9.728, 9.147, 8.566], [0.107, 0.282, 0.214], [4.0, 0.9], Checked::Seen),
    whitworth(4, 38, [13.157, 12.301, 11.445], [0.125, 0.445, 0.250], [6.0, 1.3], Checked::Seen),
    whitworth(6, 38, [16.662, 15.806, 14.950], [0.125, 0.445, 0.250], [6.4, 1.3], Checked::Seen),
    whitworth(8, 28, [20.955, 19.793, 18.631], [0.142, 0.541, 0.284], [8.2, 1.8], Checked::Seen),
    whitworth(12, 28, [26.441, 25.279, 24.117], [0.142, 0.541, 0.284], [9.5, 1.8], Checked::Memory),
    whitworth(16, 22, [33.249, 31.770, 30.291], [0.180, 0.640, 0.360], [10.4, 2.3], Checked::Memory),
];

/// A row of NPT: nominal size in 16ths of an inch, twice the threads per inch, outside diameter of the pipe and hand-tight
/// engagement L1, both in inches.
struct Npt {
    sixteenths: u32,
    per_two_inch: u32,
    diameter_in: f64,
    hand_tight_in: f64,
}

/// 1/8, 1/4 and 3/8 seen in two charts (L1 there with three places; the fourth is from memory); the others from memory.
static NPT: [Npt; 7] = [
    npt(1, 54, 0.3125, 0.160),
    npt(2, 54, 0.405, 0.1615),
    npt(4, 36, 0.540, 0.2278),
    npt(6, 36, 0.675, 0.240),
    npt(8, 28, 0.840, 0.320),
    npt(12, 28, 1.050, 0.339),
    npt(16, 23, 1.315, 0.400),
];

const fn npt(sixteenths: u32, per_two_inch: u32, diameter_in: f64, hand_tight_in: f64) -> Npt {
    Npt { sixteenths, per_two_inch, diameter_in, hand_tight_in }
}

/// The row of a nominal size.
pub(super) fn row(family: Family, sixteenths: u32) -> Option<usize> {
    match family {
        Family::Npt => NPT.iter().position(|row| row.sixteenths == sixteenths),
        _ => WHITWORTH.iter().position(|row| row.sixteenths == sixteenths),
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
        Family::R if side == ThreadSide::External => Some(taper_outside(&WHITWORTH[row])),
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
                checked: row.checked,
            }
        }
        ThreadSide::Internal => Raw {
            major: [d, f64::NAN],
            pitch: [d2, d2 + pitch],
            minor: [d1, d1 + minor],
            rounded_root: f64::NAN,
            checked: row.checked,
        },
    }
}

/// R: the gauge plane, where the diameters are basic, lies a gauge length from the tip, more or less.
fn taper_outside(row: &Whitworth) -> Raw {
    let [length, tolerance] = row.gauge_mm;
    let span = |basic: f64| [basic - (length + tolerance) * TAPER, basic - (length - tolerance) * TAPER];
    let [d, d2, d1] = row.basic_mm;
    Raw { major: span(d), pitch: span(d2), minor: span(d1), rounded_root: f64::NAN, checked: Checked::Memory }
}

/// Turns that the gauge plane of Rp and Rc may lie away from the mouth, either way (ISO 7-1, from memory). Over the taper
/// that is the tolerance of the diameters: 0.071, 0.104, 0.142 and 0.180 mm for 28, 19, 14 and 11 threads per inch.
const INSIDE_TURNS: f64 = 1.25;

/// Rp and Rc: basic at the mouth, more or less.
fn at_gauge_plane(row: &Whitworth) -> Raw {
    let tolerance = INSIDE_TURNS * 2.0 * MM_PER_INCH / f64::from(row.per_two_inch) * TAPER;
    let span = |basic: f64| [basic - tolerance, basic + tolerance];
    let [d, d2, d1] = row.basic_mm;
    Raw { major: span(d), pitch: span(d2), minor: span(d1), rounded_root: f64::NAN, checked: Checked::Memory }
}

/// NPT: E0 = D - (0.05 D + 1.1) p at the tip, E1 = E0 + L1 / 16 at the mouth, thread height 0.8 p (all seen), gauging one
/// turn either way (from memory, so that the limits are too).
fn npt_limits(row: &Npt, side: ThreadSide) -> Raw {
    let p = 2.0 / f64::from(row.per_two_inch);
    let tip = row.diameter_in - (0.05 * row.diameter_in + 1.1) * p;
    let pitch = match side {
        ThreadSide::External => tip,
        ThreadSide::Internal => tip + row.hand_tight_in * TAPER,
    };
    let turn = p * TAPER;
    let span = |at: f64| [(at - turn) * MM_PER_INCH, (at + turn) * MM_PER_INCH];
    Raw {
        major: span(pitch + 0.8 * p),
        pitch: span(pitch),
        minor: span(pitch - 0.8 * p),
        rounded_root: f64::NAN,
        checked: Checked::Memory,
    }
}
