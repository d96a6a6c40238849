//! Limits of ISO metric threads, ISO 965-1: tolerances by formula and preferred numbers, and the printed table where
//! it departs from them. All in whole micrometers, as the tables are.

use super::class::{Class, Position, Zone};
use super::limits::Raw;
use super::preferred::Step;
use super::{Size, Thread, ThreadSide};
use crate::math::{cbrt, pow, sqrt};
use crate::source::Checked;

/// Steps of the nominal diameter in micrometers, over and up to and including (ISO 965-1; seen).
const DIAMETER_STEPS: [(u32, u32); 9] = [
    (990, 1_400),
    (1_400, 2_800),
    (2_800, 5_600),
    (5_600, 11_200),
    (11_200, 22_400),
    (22_400, 45_000),
    (45_000, 90_000),
    (90_000, 180_000),
    (180_000, 355_000),
];

/// The step that a diameter lies in; None outside the standard's range.
pub(super) fn diameter_step(diameter_um: u32) -> Option<(u32, u32)> {
    DIAMETER_STEPS.into_iter().find(|(over, most)| (over + 1..=*most).contains(&diameter_um))
}

/// Sizes whose limits of class 6g were seen in print to the micrometer, and are those computed here, but for the root, which is
/// for reference only (outside it was not seen, inside print has a micrometer less at a pitch of 1.5 mm); of all others they
/// are computed from the rules, also where the tolerance itself stands in a table that was seen.
const PRINTED_OUTSIDE: [(u32, u32); 5] =
    [(8_000, 1_000), (9_000, 1_000), (10_000, 1_000), (10_000, 1_250), (10_000, 1_500)];
/// The same of class 6H.
const PRINTED_INSIDE: [(u32, u32); 11] = [
    (8_000, 1_000),
    (10_000, 1_000),
    (10_000, 1_250),
    (10_000, 1_500),
    (11_000, 1_000),
    (12_000, 1_000),
    (12_000, 1_250),
    (12_000, 1_500),
    (14_000, 1_500),
    (16_000, 1_500),
    (18_000, 1_500),
];

/// Pitches that the standard covers, in micrometers.
const PITCHES: std::ops::RangeInclusive<u32> = 200..=8_000;

/// Pitches that the table of fundamental deviations has a row for (seen).
pub(super) const TABLE_PITCHES: [u32; 25] = [
    200, 250, 300, 350, 400, 450, 500, 600, 700, 750, 800, 1_000, 1_250, 1_500, 1_750, 2_000, 2_500, 3_000,
    3_500, 4_000, 4_500, 5_000, 5_500, 6_000, 8_000,
];

/// Position e, from P = 0.5 mm: pitch and size of the deviation in micrometers. Small ones follow no rounding rule, so
/// the table stands here (ISO 965-1 as transcribed by an open-source program; seen).
const POSITION_E: [(u32, i32); 19] = [
    (500, 50),
    (600, 53),
    (700, 56),
    (750, 56),
    (800, 60),
    (1_000, 60),
    (1_250, 63),
    (1_500, 67),
    (1_750, 71),
    (2_000, 71),
    (2_500, 80),
    (3_000, 85),
    (3_500, 90),
    (4_000, 95),
    (4_500, 100),
    (5_000, 106),
    (5_500, 112),
    (6_000, 118),
    (8_000, 140),
];

/// Position f: pitch, size of the deviation. The first three were seen, the others are from memory.
const POSITION_F: [(u32, i32); 16] = [
    (350, 34),
    (400, 34),
    (450, 35),
    (500, 36),
    (600, 36),
    (700, 38),
    (750, 38),
    (800, 38),
    (1_000, 40),
    (1_250, 42),
    (1_500, 45),
    (1_750, 48),
    (2_000, 52),
    (2_500, 58),
    (3_000, 63),
    (3_500, 70),
];
/// Rows of [`POSITION_F`] that were seen.
const POSITION_F_SEEN: usize = 3;

fn mm(um: u32) -> f64 {
    f64::from(um) / 1000.0
}

/// A quantity of the table for one pitch, where nearest-preferred-number rounding of the formula misses the printed
/// value (seen; the rule is "broken in places for smooth progression").
fn printed(pitch_um: u32, rows: &[(u32, i32)]) -> Option<i32> {
    rows.iter().find(|(pitch, _)| *pitch == pitch_um).map(|(_, um)| *um)
}

/// Size of the fundamental deviation, and how its number was checked.
fn deviation(position: Position, pitch_um: u32) -> (i32, Checked) {
    let p = mm(pitch_um);
    let in_table = |seen: bool| if seen { Checked::Seen } else { Checked::Computed };
    match position {
        Position::H | Position::HInternal => (0, Checked::Seen),
        Position::G | Position::GInternal => {
            let um = printed(pitch_um, &[(750, 22), (8_000, 100)])
                .unwrap_or_else(|| Step::nearest(15.0 + 11.0 * p).um());
            (um, in_table(TABLE_PITCHES.contains(&pitch_um)))
        }
        Position::E => match printed(pitch_um, &POSITION_E) {
            Some(um) => (um, Checked::Seen),
            None => (Step::nearest(50.0 + 11.0 * p).um(), Checked::Computed),
        },
        Position::F => match POSITION_F.iter().position(|(pitch, _)| *pitch == pitch_um) {
            Some(row) if row < POSITION_F_SEEN => (POSITION_F[row].1, Checked::Seen),
            Some(row) => (POSITION_F[row].1, Checked::Memory),
            None => (Step::nearest(30.0 + 11.0 * p).um(), Checked::Computed),
        },
    }
}

/// Tolerance of the pitch diameter, outside; TD2 is the same series some steps on.
fn pitch_tolerance(side: ThreadSide, grade: u8, step: (u32, u32), pitch_um: u32) -> i32 {
    // The middle of the step is its geometric mean: it reproduces the table (from memory).
    let diameter = sqrt(mm(step.0) * mm(step.1));
    let six = match (step.1, pitch_um) {
        (5_600, 500) => Step::nearest(75.0),
        (90_000, 5_000) | (355_000, 3_000) => Step::nearest(250.0),
        (355_000, 4_000) => Step::nearest(280.0),
        _ => Step::nearest(90.0 * pow(mm(pitch_um), 0.4) * pow(diameter, 0.1)),
    };
    let steps = match side {
        // Grades 3 to 9: -12, -8, -4, 0, 4, 8, 12 steps of the series.
        ThreadSide::External => 4 * (isize::from(grade) - 6),
        // Grades 4 to 8: -3, 1, 5, 9, 13.
        ThreadSide::Internal => 4 * (isize::from(grade) - 6) + 5,
    };
    six.plus(steps).um()
}

/// Tolerance of the major diameter, outside: grades 4, 6, 8.
fn major_tolerance(grade: u8, pitch_um: u32) -> i32 {
    let p = mm(pitch_um);
    let root = cbrt(p);
    let six = match pitch_um {
        4_000 => Step::nearest(475.0),
        _ => Step::nearest(180.0 * root * root - 3.15 / sqrt(p)),
    };
    match (grade, pitch_um) {
        (8, 8_000) => 1_180,
        _ => six.plus(4 * (isize::from(grade) - 6)).um(),
    }
}

/// Tolerance of the minor diameter, inside: grades 4 to 8.
fn minor_tolerance(grade: u8, pitch_um: u32) -> i32 {
    let p = mm(pitch_um);
    let six = match pitch_um {
        // Its grades 4 and 5 are printed, its grade 6 is not.
        250 => Step::nearest(71.0),
        500 => Step::nearest(140.0),
        2_500 => Step::nearest(450.0),
        // The standard gives one formula up to 0.8 and one from 1; between them, as below 0.8, the first.
        pitch if pitch < 1_000 => Step::nearest(433.0 * p - 190.0 * pow(p, 1.22)),
        _ => Step::nearest(230.0 * pow(p, 0.7)),
    };
    six.plus(4 * (isize::from(grade) - 6)).um()
}

/// Finest pitch in micrometers that the standard has a grade for (seen: the tables end there).
fn finest_pitch(side: ThreadSide, pitch: u8, crest: u8) -> u32 {
    let internal = |grade: u8| match grade {
        5 => 250,
        6 => 300,
        7 => 500,
        8 => 800,
        _ => 200,
    };
    let external = |grade: u8, coarse_only: u8| match grade {
        7 => 350,
        grade if grade >= coarse_only => 800,
        _ => 200,
    };
    match side {
        ThreadSide::Internal => internal(pitch).max(internal(crest)),
        ThreadSide::External => external(pitch, 8).max(external(crest, 8)),
    }
}

/// Whether the standard has an internal grade for the thread's pitch.
pub(super) fn is_made_inside(thread: &Thread, grade: u8) -> bool {
    let Size::Metric { pitch_um, .. } = thread.size else { return false };
    pitch_um >= finest_pitch(ThreadSide::Internal, grade, grade)
}

/// Whether the standard has tolerances of a class for the thread's pitch.
pub(super) fn has_class(thread: &Thread, class: Class) -> bool {
    let (Size::Metric { pitch_um, .. }, Class::Metric { pitch, crest }) = (thread.size, class) else {
        return false;
    };
    // Fundamental deviations of ISO 965-1 begin at these pitches (seen); one class has one position.
    let finest_of_position = match pitch.position {
        Position::E => 500,
        Position::F => 350,
        Position::G | Position::H | Position::GInternal | Position::HInternal => 0,
    };
    pitch_um >= finest_of_position.max(finest_pitch(pitch.position.side(), pitch.grade, crest.grade))
}

/// Limits in micrometers; None outside the standard's range of diameters and pitches, and where the diameters of one side
/// would overlap each other: no such thread is made.
pub(super) fn limits(thread: &Thread, class: Class, side: ThreadSide) -> Option<Raw> {
    let (Size::Metric { diameter_um, pitch_um }, Class::Metric { pitch, crest }) = (thread.size, class)
    else {
        return None;
    };
    let step = diameter_step(diameter_um)?;
    if !PITCHES.contains(&pitch_um) {
        return None;
    }
    let (d, p) = (f64::from(diameter_um), f64::from(pitch_um));
    // Basic diameters are rounded to the micrometer first, then deviations are added.
    let whole = |um: f64| (um + 0.5).floor();
    let (d2, d1) = (whole(d - 0.649_519 * p), whole(d - 1.082_532 * p));
    let (off, off_checked) = deviation(pitch.position, pitch_um);
    let off = f64::from(off);
    let t2 = f64::from(pitch_tolerance(side, pitch.grade, step, pitch_um));
    let is_usual =
        pitch == crest && matches!(pitch, Zone { grade: 6, position: Position::G | Position::HInternal });
    let printed: &[_] = match side {
        ThreadSide::External => &PRINTED_OUTSIDE,
        ThreadSide::Internal => &PRINTED_INSIDE,
    };
    let checked = match off_checked {
        Checked::Memory => Checked::Memory,
        _ if is_usual && printed.contains(&(diameter_um, pitch_um)) => Checked::Seen,
        _ => Checked::Computed,
    };
    let raw = match side {
        ThreadSide::External => {
            let pitch_max = d2 - off;
            Raw {
                major: [d - off - f64::from(major_tolerance(crest.grade, pitch_um)), d - off],
                pitch: [pitch_max - t2, pitch_max],
                // Root: flat no shallower than the basic minor diameter allows, which is rounded on its own; rounded at its deepest, flat at its shallowest (Machinery's Handbook 27; seen).
                minor: [
                    whole(pitch_max - t2 - 0.616_025 * p),
                    whole(pitch_max - 0.433_013 * p).min(d1 - off),
                ],
                rounded_root: f64::NAN,
                checked,
            }
        }
        ThreadSide::Internal => {
            let pitch_min = d2 + off;
            // The largest root is for reference only, and is taken from the unrounded pitch diameter.
            let root = whole(d - 0.649_519 * p + off + t2 + 0.793_857 * p);
            Raw {
                major: [d + off, root],
                pitch: [pitch_min, pitch_min + t2],
                minor: [d1 + off, d1 + off + f64::from(minor_tolerance(crest.grade, pitch_um))],
                rounded_root: f64::NAN,
                checked,
            }
        }
    };
    let is_thread = raw.minor[1] < raw.pitch[0] && raw.pitch[1] < raw.major[0];
    is_thread.then_some(raw)
}
