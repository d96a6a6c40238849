//! Threads by name: what a person who looks at a small hydraulic port may have before them. Limits are computed for any
//! size; the list only says which threads to think of.

use super::profile::slope;
use super::{Family, Limits, Mating, Size, Thread, ThreadSide};
use crate::source::Checked;

/// A thread to think of.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CatalogueRow {
    /// The thread.
    pub thread: Thread,
    /// Where it is met.
    pub met: &'static str,
    /// The text that the thread and its use come from, or empty.
    pub text: &'static str,
    /// How that was checked.
    pub checked: Checked,
}

const fn row(size: Size, met: &'static str, text: &'static str, checked: Checked) -> CatalogueRow {
    CatalogueRow { thread: Thread::of(size), met, text, checked }
}

const fn metric(diameter_um: u32, pitch_um: u32) -> Size {
    Size::Metric { diameter_um, pitch_um }
}

/// Diameter in 64ths of an inch.
const fn inch(diameter_64: u32, per_inch: u32) -> Size {
    Size::Unified { diameter_uin: diameter_64 * 15_625, per_two_inch: 2 * per_inch }
}

/// A metric size that general hardware has.
const fn hardware(diameter_um: u32, pitch_um: u32) -> CatalogueRow {
    row(metric(diameter_um, pitch_um), "general hardware", "ISO 261", Checked::Memory)
}

const fn unified(diameter_64: u32, per_inch: u32) -> CatalogueRow {
    row(inch(diameter_64, per_inch), "general hardware", "ASME B1.1", Checked::Memory)
}

const fn of_pipe(family: Family, index: usize, text: &'static str, checked: Checked) -> CatalogueRow {
    row(Size::Pipe { family, row: index }, "pipe and hose fittings", text, checked)
}

const LIMITS_SEEN: &str = "ISO 965-1 limits in public tables";
const G: &str = "ISO 228-1:1994, two open-source transcriptions";
const R: &str = "ISO 7-1, handbook page";

/// Every thread that is thought of. Whitworth, BA and other older threads are not in it.
pub static CATALOGUE: &[CatalogueRow] = &[
    hardware(5_000, 800),
    hardware(6_000, 1_000),
    hardware(7_000, 1_000),
    row(metric(8_000, 1_000), "bleed screws", LIMITS_SEEN, Checked::Seen),
    row(metric(8_000, 1_250), "general hardware, bleed screws", LIMITS_SEEN, Checked::Seen),
    row(metric(9_000, 1_000), "brake nuts of old vehicles (common practice)", LIMITS_SEEN, Checked::Seen),
    row(
        metric(10_000, 1_000),
        "most brake nuts on 3/16 in tube (common practice)",
        "two vehicle manuals",
        Checked::Seen,
    ),
    row(metric(10_000, 1_250), "general hardware", LIMITS_SEEN, Checked::Seen),
    row(metric(10_000, 1_500), "general hardware", LIMITS_SEEN, Checked::Seen),
    row(metric(11_000, 1_000), "brake nuts of old vehicles (common practice)", LIMITS_SEEN, Checked::Seen),
    row(metric(11_000, 1_500), "brake nuts", "SAE J1290", Checked::Memory),
    row(metric(12_000, 1_000), "brake nuts on 6 mm and 1/4 in tube", "ISO 4038", Checked::Memory),
    hardware(12_000, 1_250),
    hardware(12_000, 1_500),
    hardware(12_000, 1_750),
    row(metric(13_000, 1_000), "special fittings", "ISO 261 second choice", Checked::Memory),
    row(metric(13_000, 1_500), "brake nuts", "SAE J1290", Checked::Memory),
    hardware(14_000, 1_000),
    row(metric(14_000, 1_500), "brake nuts on 8 mm tube", "ISO 4038", Checked::Memory),
    hardware(14_000, 2_000),
    hardware(16_000, 1_000),
    row(metric(16_000, 1_500), "brake nuts on 10 mm tube", "ISO 4038", Checked::Memory),
    hardware(16_000, 2_000),
    hardware(18_000, 1_500),
    hardware(20_000, 1_500),
    unified(16, 20),
    unified(16, 28),
    unified(20, 18),
    row(inch(20, 24), "1/8 in tube, bleed screws", "SAE J512, J514", Checked::Memory),
    unified(24, 16),
    row(inch(24, 20), "special", "ASME B1.1, special pitch", Checked::Memory),
    row(inch(24, 24), "3/16 in tube", "SAE J512, J514", Checked::Memory),
    unified(28, 14),
    row(inch(28, 20), "1/4 in tube, 37 degree flare", "hydraulic fitting chart", Checked::Seen),
    row(inch(28, 24), "1/4 in tube, inverted flare", "SAE J512", Checked::Memory),
    unified(32, 13),
    row(inch(32, 20), "5/16 in tube", "SAE J512, J514", Checked::Memory),
    unified(36, 12),
    row(inch(36, 18), "3/8 in tube, 37 degree flare", "hydraulic fitting chart", Checked::Seen),
    unified(40, 11),
    row(inch(40, 18), "3/8 in tube, inverted flare", "SAE J512", Checked::Memory),
    row(inch(44, 18), "7/16 in tube, inverted flare", "SAE J512", Checked::Memory),
    row(inch(48, 16), "1/2 in tube, 37 degree flare", "hydraulic fitting chart", Checked::Seen),
    row(inch(48, 18), "1/2 in tube, inverted flare", "SAE J512", Checked::Memory),
    row(inch(56, 14), "5/8 in tube, 37 degree flare", "hydraulic fitting chart", Checked::Seen),
    of_pipe(Family::G, 0, G, Checked::Seen),
    of_pipe(Family::G, 1, G, Checked::Seen),
    of_pipe(Family::G, 2, G, Checked::Seen),
    of_pipe(Family::G, 3, G, Checked::Seen),
    of_pipe(Family::G, 4, G, Checked::Seen),
    of_pipe(Family::R, 1, R, Checked::Seen),
    of_pipe(Family::R, 2, R, Checked::Seen),
    of_pipe(Family::R, 3, R, Checked::Seen),
    of_pipe(Family::Rp, 1, R, Checked::Seen),
    of_pipe(Family::Rp, 2, R, Checked::Seen),
    of_pipe(Family::Rp, 3, R, Checked::Seen),
    of_pipe(Family::Rc, 1, R, Checked::Seen),
    of_pipe(Family::Rc, 2, R, Checked::Seen),
    of_pipe(Family::Rc, 3, R, Checked::Seen),
    of_pipe(Family::Npt, 1, "ASME B1.20.1, two charts", Checked::Seen),
    of_pipe(Family::Npt, 2, "ASME B1.20.1, two charts", Checked::Seen),
    of_pipe(Family::Npt, 3, "ASME B1.20.1, a chart", Checked::Seen),
];

impl CatalogueRow {
    /// The row of a thread, whatever its class.
    #[must_use]
    pub fn of(thread: &Thread) -> Option<&'static CatalogueRow> {
        CATALOGUE.iter().find(|row| row.thread.is_same_size(thread))
    }
}

/// How the limits of a family's rows were checked, external and internal counted one each.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Count {
    /// The family.
    pub family: Family,
    /// The way.
    pub checked: Checked,
    /// How many.
    pub rows: usize,
}

/// How the limits in the catalogue were checked, by family.
#[must_use]
pub fn report() -> Vec<Count> {
    let mut counts = Vec::new();
    for family in Family::ALL {
        for checked in Checked::ALL {
            let rows = CATALOGUE
                .iter()
                .filter(|row| row.thread.family() == family)
                .flat_map(|row| {
                    [ThreadSide::External, ThreadSide::Internal].map(|side| row.thread.limits(side))
                })
                .filter(|limits| limits.as_ref().is_ok_and(|limits| limits.checked == checked))
                .count();
            if rows > 0 {
                counts.push(Count { family, checked, rows });
            }
        }
    }
    counts
}

/// Every male in every female of a list: the pairs of different threads that turn in by hand and may hold on less than
/// half of the thread, the most treacherous first (the best overlap is the most convincing).
///
/// ```
/// use linewright::thread::{CATALOGUE, lookalikes};
/// let list: Vec<_> = CATALOGUE.iter().map(|row| row.thread).collect();
/// let found = lookalikes(&list);
/// assert!(found.iter().any(|m| m.male().to_string() == "3/8-24" && m.female().to_string() == "M10x1"));
/// ```
#[must_use]
pub fn lookalikes(list: &[Thread]) -> Vec<Mating> {
    // What each thread brings to all its pairs, once.
    let sides = |side: ThreadSide| -> Vec<(&Thread, Limits, f64)> {
        list.iter()
            .filter_map(|thread| Some((thread, thread.limits(side).ok()?, slope(thread.half_angle()))))
            .collect()
    };
    let (males, females) = (sides(ThreadSide::External), sides(ThreadSide::Internal));
    let mut found = Vec::new();
    for (male, outside, rise) in &males {
        let pairs = females.iter().map(|(female, inside, fall)| {
            Mating::of_limits((male, outside), (female, inside), [*rise, *fall])
        });
        found.extend(pairs.filter(Mating::is_lookalike));
    }
    found.sort_by(|a, b| b.share_best().value.total_cmp(&a.share_best().value));
    found
}
