//! Threads by name: what a person who looks at a small hydraulic port may have before them. Limits are computed for any
//! size; the list only says which threads to think of.

use super::profile::slope;
use super::{Family, Limits, Mating, Size, Thread, ThreadSide};
use crate::source::{Checked, RowSource};

/// A thread to think of.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CatalogueRow {
    /// The thread.
    pub thread: Thread,
    /// Where it is met.
    pub met: &'static str,
    /// The text that the thread and its use come from.
    pub source: RowSource,
}

const fn row(size: Size, met: &'static str, source: RowSource) -> CatalogueRow {
    CatalogueRow { thread: Thread::of(size), met, source }
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
    row(metric(diameter_um, pitch_um), "general hardware", ISO_261)
}

const fn unified(diameter_64: u32, per_inch: u32) -> CatalogueRow {
    row(inch(diameter_64, per_inch), "general hardware", B1_1)
}

const fn of_pipe(family: Family, index: usize, source: RowSource) -> CatalogueRow {
    row(Size::Pipe { family, row: index }, "pipe and hose fittings", source)
}

const ISO_261: RowSource = RowSource::memory("ISO 261, edition not known");
const B1_1: RowSource = RowSource::memory("ASME B1.1, edition not known");
const J512: RowSource = RowSource::memory("SAE J512, edition not known");
const J512_J514: RowSource = RowSource::memory("SAE J512 and J514, editions not known");
const J1290: RowSource = RowSource::memory("SAE J1290, edition not known");
const ISO_4038: RowSource = RowSource::memory("ISO 4038, edition not known");
/// The size is printed there; where it is met is not.
const LIMITS_SEEN: RowSource =
    RowSource::new("ISO 965-1, edition not known", "its limits 6g and 6H in public tables", Checked::Seen);
/// That it is met there is a habit of the trade. Port M10x1.0-6H with brake pipe of 4.75 x 0.7 mm was seen in two manuals.
const TRADE: RowSource = RowSource::common_practice();
const CHART: RowSource = RowSource::new(
    "SAE J514, edition not known",
    "quoted by a public chart of hydraulic fittings",
    Checked::SecondHand,
);
const G: RowSource =
    RowSource::new("ISO 228-1:1994", "table 1, quoted by two open-source projects", Checked::SecondHand);
const R: RowSource = RowSource::new(
    "ISO 7-1, edition not known",
    "quoted by Mechanical Engineer's Pocket Book, 4.1.38",
    Checked::SecondHand,
);
const NPT: RowSource =
    RowSource::new("ASME B1.20.1, edition not known", "quoted by public charts", Checked::SecondHand);

/// Every thread that is thought of. Whitworth, BA and other older threads are not in it.
pub static CATALOGUE: &[CatalogueRow] = &[
    hardware(5_000, 800),
    hardware(6_000, 1_000),
    hardware(7_000, 1_000),
    row(metric(8_000, 1_000), "bleed screws", LIMITS_SEEN),
    row(metric(8_000, 1_250), "general hardware, bleed screws", ISO_261),
    row(metric(9_000, 1_000), "brake nuts of old vehicles", TRADE),
    row(metric(10_000, 1_000), "most brake nuts on 3/16 in tube", TRADE),
    row(metric(10_000, 1_250), "general hardware", LIMITS_SEEN),
    row(metric(10_000, 1_500), "general hardware", LIMITS_SEEN),
    row(metric(11_000, 1_000), "brake nuts of old vehicles", TRADE),
    row(metric(11_000, 1_500), "brake nuts", J1290),
    row(metric(12_000, 1_000), "brake nuts on 6 mm and 1/4 in tube", ISO_4038),
    hardware(12_000, 1_250),
    hardware(12_000, 1_500),
    hardware(12_000, 1_750),
    row(metric(13_000, 1_000), "special fittings", ISO_261),
    row(metric(13_000, 1_500), "brake nuts", J1290),
    hardware(14_000, 1_000),
    row(metric(14_000, 1_500), "brake nuts on 8 mm tube", ISO_4038),
    hardware(14_000, 2_000),
    hardware(16_000, 1_000),
    row(metric(16_000, 1_500), "brake nuts on 10 mm tube", ISO_4038),
    hardware(16_000, 2_000),
    hardware(18_000, 1_500),
    hardware(20_000, 1_500),
    unified(16, 20),
    unified(16, 28),
    unified(20, 18),
    row(inch(20, 24), "1/8 in tube, bleed screws", J512_J514),
    unified(24, 16),
    row(inch(24, 20), "special", B1_1),
    row(inch(24, 24), "3/16 in tube", J512_J514),
    unified(28, 14),
    row(inch(28, 20), "1/4 in tube, 37 degree flare", CHART),
    row(inch(28, 24), "1/4 in tube, inverted flare", J512),
    unified(32, 13),
    row(inch(32, 20), "5/16 in tube", J512_J514),
    unified(36, 12),
    row(inch(36, 18), "3/8 in tube, 37 degree flare", CHART),
    unified(40, 11),
    row(inch(40, 18), "3/8 in tube, inverted flare", J512),
    row(inch(44, 18), "7/16 in tube, inverted flare", J512),
    row(inch(48, 16), "1/2 in tube, 37 degree flare", CHART),
    row(inch(48, 18), "1/2 in tube, inverted flare", J512),
    row(inch(56, 14), "5/8 in tube, 37 degree flare", CHART),
    of_pipe(Family::G, 0, G),
    of_pipe(Family::G, 1, G),
    of_pipe(Family::G, 2, G),
    of_pipe(Family::G, 3, G),
    of_pipe(Family::G, 4, G),
    of_pipe(Family::R, 1, R),
    of_pipe(Family::R, 2, R),
    of_pipe(Family::R, 3, R),
    of_pipe(Family::Rp, 1, R),
    of_pipe(Family::Rp, 2, R),
    of_pipe(Family::Rp, 3, R),
    of_pipe(Family::Rc, 1, R),
    of_pipe(Family::Rc, 2, R),
    of_pipe(Family::Rc, 3, R),
    of_pipe(Family::Npt, 1, NPT),
    of_pipe(Family::Npt, 2, NPT),
    of_pipe(Family::Npt, 3, NPT),
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
/// assert!(found.iter().any(|m| m.male().to_string() == "3/8-24 UNF" && m.female().to_string() == "M10x1"));
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
