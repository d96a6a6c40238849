//! What public texts say about flares, their sizes and their threads: rows with their sources. A row of memory says so.

use super::{Flare, Seat};
use crate::source::{Checked, RowSource, Source};
use crate::thread::Thread;
use crate::units::{Length, mm, to_mm};

/// Diameter of a finished flare.
#[derive(Debug, Clone, PartialEq)]
pub struct FlareSize {
    /// Smallest.
    pub least: Length,
    /// Largest.
    pub most: Length,
    /// Thickest wall that the figure is for.
    pub wall_most: Length,
    /// Where it was read.
    pub source: Source,
}

impl FlareSize {
    /// Whether the figures are for a tube with this wall.
    #[must_use]
    pub fn is_for(&self, wall: Length) -> bool {
        to_mm(wall) <= to_mm(self.wall_most) + SAME_WALL_MM
    }
}

/// Outside diameter in mm, smallest and largest flare diameter, thickest wall: double 45 degree flares.
const DOUBLE_45: [(f64, f64, f64, f64); 4] =
    [(3.18, 5.0, 5.4, 0.63), (4.76, 6.7, 7.1, 0.71), (6.35, 8.7, 9.1, 0.83), (7.94, 10.4, 10.8, 0.89)];
/// Tube diameters within this are the same size; the table prints two decimals.
const SAME_OD_MM: f64 = 0.02;
/// The table prints walls with two decimals too: 0.71 mm stands for 0.028 in, which is 0.7112 mm.
const SAME_WALL_MM: f64 = 0.005;

/// Diameter of a finished flare on a tube; None where no public text was seen. Only double 45 degree flares on inch
/// tube are known (an article that quotes SAE J533-2024).
#[must_use]
pub fn flare_size(flare: Flare, od: Length) -> Option<FlareSize> {
    if flare != Flare::Double45 {
        return None;
    }
    let row = DOUBLE_45.iter().find(|row| (row.0 - to_mm(od)).abs() <= SAME_OD_MM)?;
    Some(FlareSize {
        least: mm(row.1),
        most: mm(row.2),
        wall_most: mm(row.3),
        source: Source::new(
            "SAE J533-2024, quoted by a public article",
            "45 degree flares, inch tube",
            Checked::SecondHand,
        ),
    })
}

/// Smallest and largest diameter of a finished flare on a tube of this wall; None where no public text was seen, and for
/// a wall thicker than its figures are for.
///
/// ```
/// use linewright::flare::{Flare, known_diameters};
/// use linewright::units::{inch, mm};
/// let od = inch(3.0 / 16.0);
/// assert_eq!(known_diameters(Flare::Double45, od, mm(0.71)), Some([mm(6.7), mm(7.1)]));
/// assert_eq!(known_diameters(Flare::Double45, od, mm(0.9)), None);
/// ```
#[must_use]
pub fn known_diameters(flare: Flare, od: Length, wall: Length) -> Option<[Length; 2]> {
    flare_size(flare, od).filter(|size| size.is_for(wall)).map(|size| [size.least, size.most])
}

/// What a standard covers, as far as a public text shows it. None of these texts was opened in full.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Standard {
    /// Its number and edition, as seen.
    pub name: &'static str,
    /// What it covers.
    pub covers: &'static str,
    /// Where that was read, and how it was checked.
    pub source: RowSource,
}

const fn standard(
    name: &'static str,
    covers: &'static str,
    place: &'static str,
    checked: Checked,
) -> Standard {
    Standard { name, covers, source: RowSource::new(name, place, checked) }
}

/// Standards of flared lines and their fittings.
pub static STANDARDS: &[Standard] = &[
    standard(
        "ISO 13486-1:1999",
        "double flares of metal pipes, tapped holes, male fittings of types A and B, tube seats for hydraulic brakes",
        "catalog record and list of contents",
        Checked::SecondHand,
    ),
    standard(
        "ISO 4038:1996",
        "single-flare metal pipes, tapped holes, male fittings and hose end fittings for hydraulic brakes",
        "a seller's article about it",
        Checked::SecondHand,
    ),
    standard(
        "DIN 74234:1992-09",
        "brake pipes with and without flare, among them form F",
        "public preview of its first pages",
        Checked::Seen,
    ),
    standard("DIN 74233, edition not known", "nuts for DIN 74234 pipes", "place not known", Checked::Memory),
    standard(
        "SAE J1290 OCT2002",
        "metric brake tube with flared ends, threaded ports and male nuts; meant to work with ISO 4038",
        "its first page",
        Checked::Seen,
    ),
    standard("SAE J1291:2002", "metric banjo bolts and their ports", "catalog record", Checked::SecondHand),
    standard(
        "SAE J533:2017 and 2024",
        "37 and 45 degree single and double flares",
        "catalog records",
        Checked::SecondHand,
    ),
    standard(
        "SAE J512:1990, 2017 and 2022",
        "45 degree flare, inverted flare and tapered sleeve fittings; inverted seats assume double-flared tube",
        "catalog records and an article about it",
        Checked::SecondHand,
    ),
    standard("SAE J514, edition not known", "37 degree flare fittings", "place not known", Checked::Memory),
    standard(
        "JASO F402:2001",
        "flared fittings and flares; double flare in line with ISO 13486-1",
        "a public excerpt",
        Checked::SecondHand,
    ),
    standard(
        "49 CFR 571.106, edition not known",
        "brake hoses and their ends; not metal brake tube",
        "letters of interpretation of 1993 and 2004",
        Checked::SecondHand,
    ),
];

/// A thread that goes with a seat and a tube by a standard.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct UsualThread {
    /// The standard.
    pub standard: &'static str,
    /// The seat.
    pub seat: Seat,
    /// Outside diameter of the tube.
    pub od_mm: f64,
    /// The thread's designation.
    pub designation: &'static str,
    /// Where that was read, and how it was checked.
    pub source: RowSource,
}

const fn usual(
    standard: &'static str,
    seat: Seat,
    od_mm: f64,
    designation: &'static str,
    source: RowSource,
) -> UsualThread {
    UsualThread { standard, seat, od_mm, designation, source }
}

const J512: RowSource = RowSource::memory("SAE J512, edition not known");
const ISO_13486: RowSource = RowSource::memory("ISO 13486-1 and JASO F402, editions not known");
const ISO_4038: RowSource = RowSource::memory("ISO 4038, edition not known");
const J1290: RowSource = RowSource::memory("SAE J1290, edition not known");
const J514: RowSource = RowSource::memory("SAE J514, edition not known");
const CHART: RowSource = RowSource::new(
    "SAE J514, edition not known",
    "quoted by a public chart of hydraulic fittings",
    Checked::SecondHand,
);
const TRUCK_MANUAL: RowSource = RowSource::new(
    "a lift truck's service manual, edition not known",
    "page 159: form F pipe of 4.75 x 0.7 mm with an M10x1 nut",
    Checked::Seen,
);

/// Threads by seat and tube. The thread never tells the seat: M10x1 and 3/8-24 each stand here with two.
pub static USUAL_THREADS: &[UsualThread] = &[
    usual("SAE J512", Seat::Inverted45, 3.175, "5/16-24", J512),
    usual("SAE J512", Seat::Inverted45, 4.7625, "3/8-24", J512),
    usual("SAE J512", Seat::Inverted45, 6.35, "7/16-24", J512),
    usual("SAE J512", Seat::Inverted45, 7.9375, "1/2-20", J512),
    usual("SAE J512", Seat::Inverted45, 9.525, "5/8-18", J512),
    usual("ISO 13486-1, JASO F402", Seat::Inverted45, 4.7625, "M10x1", ISO_13486),
    usual("ISO 13486-1, JASO F402", Seat::Inverted45, 6.35, "M12x1", ISO_13486),
    usual("DIN 74234 form F", Seat::Bubble, 4.75, "M10x1", TRUCK_MANUAL),
    usual("ISO 4038", Seat::Bubble, 6.0, "M12x1", ISO_4038),
    usual("ISO 4038", Seat::Bubble, 8.0, "M14x1.5", ISO_4038),
    usual("ISO 4038", Seat::Bubble, 10.0, "M16x1.5", ISO_4038),
    usual("SAE J1290", Seat::Bubble, 4.7625, "M10x1", J1290),
    usual("SAE J1290", Seat::Bubble, 6.35, "M12x1", J1290),
    usual("SAE J514", Seat::Cone37, 3.175, "5/16-24", J514),
    usual("SAE J514", Seat::Cone37, 4.7625, "3/8-24", J514),
    usual("SAE J514", Seat::Cone37, 6.35, "7/16-20", CHART),
    usual("SAE J514", Seat::Cone37, 7.9375, "1/2-20", J514),
    usual("SAE J514", Seat::Cone37, 9.525, "9/16-18", CHART),
    usual("SAE J514", Seat::Cone37, 12.7, "3/4-16", CHART),
    usual("SAE J514", Seat::Cone37, 15.875, "7/8-14 UNF", CHART),
];

/// Seats that a thread is known with on a tube, each once; more than one says that the thread does not settle the seat.
#[must_use]
pub fn seats_of(thread: &Thread, od: Length) -> Vec<Seat> {
    let mut seats = Vec::new();
    for row in USUAL_THREADS {
        let is_thread = Thread::read(row.designation).is_ok_and(|usual| usual.is_same_size(thread));
        if is_thread && (row.od_mm - to_mm(od)).abs() <= SAME_OD_MM && !seats.contains(&row.seat) {
            seats.push(row.seat);
        }
    }
    seats
}

/// A hexagon that is met with a thread: information for choosing a spanner, never a way to the thread.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Hexagon {
    /// The thread's designation, or where it is met.
    pub on: &'static str,
    /// Across flats in mm.
    pub across_flats_mm: f64,
    /// Where that comes from, and how it was checked.
    pub source: RowSource,
}

/// Nut dimensions that nobody has looked up.
const NUTS_INCH: RowSource = RowSource::memory("SAE J512, edition not known");
const NUTS_METRIC: RowSource = RowSource::memory("ISO 4038 and DIN 74233, editions not known");

/// Hexagons met in practice (common practice or memory, no text seen): look, do not assume.
pub static HEXAGONS: &[Hexagon] = &[
    Hexagon { on: "M10x1 nut", across_flats_mm: 10.0, source: RowSource::common_practice() },
    Hexagon { on: "M10x1 nut", across_flats_mm: 11.0, source: RowSource::common_practice() },
    Hexagon { on: "M12x1 nut", across_flats_mm: 12.0, source: NUTS_METRIC },
    Hexagon { on: "M12x1 nut", across_flats_mm: 13.0, source: NUTS_METRIC },
    Hexagon { on: "hose end", across_flats_mm: 17.0, source: RowSource::common_practice() },
    Hexagon { on: "3/8-24 nut", across_flats_mm: 9.525, source: NUTS_INCH },
    Hexagon { on: "7/16-24 nut", across_flats_mm: 11.1125, source: NUTS_INCH },
    Hexagon { on: "1/2-20 nut", across_flats_mm: 12.7, source: NUTS_INCH },
    Hexagon { on: "5/8-18 nut", across_flats_mm: 15.875, source: NUTS_INCH },
];
