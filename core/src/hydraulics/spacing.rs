//! Distances between clips that public texts give: rows with scope and source. None is of brakes.

use crate::bounds;
use crate::error::Error;
use crate::source::{Checked, Source};
use crate::units::{Length, inch, to_mm};

/// Distance between supports for one tube diameter.
#[derive(Debug, Clone, PartialEq)]
pub struct SpacingRow {
    /// What it is said of.
    pub scope: &'static str,
    /// Smallest distance of the row, where it gives two.
    pub least: Option<Length>,
    /// Largest distance.
    pub most: Length,
    /// Where it comes from.
    pub source: Source,
}

/// Tube diameters within this are the same size.
const SAME_OD_MM: f64 = 0.02;

/// Hydraulic lines of aircraft, diameter and largest distance in inches: MIL-H-8891A table II. Rows and columns were paired
/// again from scanned text.
const AIRCRAFT: [(f64, f64); 9] = [
    (1.0 / 4.0, 16.0),
    (5.0 / 16.0, 18.0),
    (3.0 / 8.0, 20.0),
    (1.0 / 2.0, 23.0),
    (5.0 / 8.0, 25.5),
    (3.0 / 4.0, 27.5),
    (1.0, 30.0),
    (1.25, 31.5),
    (1.5, 32.5),
];
/// The two smallest sizes of the same kind, steel, from memory: they are missing in the copy that was seen.
const AIRCRAFT_SMALL: [(f64, f64); 2] = [(1.0 / 8.0, 11.5), (3.0 / 16.0, 14.0)];
/// Tubing on land, diameter and distances in inches: UFC 4-390-01.
const SHORE: [(f64, f64, f64); 7] = [
    (1.0 / 8.0, 18.0, 24.0),
    (1.0 / 4.0, 24.0, 30.0),
    (5.0 / 16.0, 30.0, 40.0),
    (3.0 / 8.0, 40.0, 50.0),
    (1.0 / 2.0, 50.0, 60.0),
    (3.0 / 4.0, 60.0, 70.0),
    (1.0, 70.0, 80.0),
];

/// Distances between clips that public texts give for a tube diameter; empty where none is known, as for metric sizes. The
/// text for aircraft takes 20 % off at unions and tees.
///
/// # Errors
/// `NOT_A_NUMBER` or `OUT_OF_RANGE`.
///
/// ```
/// use linewright::hydraulics::handbook_spacings;
/// use linewright::source::Checked;
/// use linewright::units::{inch, mm, to_inch};
/// let rows = handbook_spacings(inch(3.0 / 16.0))?;
/// assert!((to_inch(rows[0].most) - 14.0).abs() < 1e-12);
/// assert_eq!(rows[0].source.checked, Checked::Memory);
/// assert!(handbook_spacings(mm(6.0))?.is_empty());
/// # Ok::<(), linewright::Error>(())
/// ```
pub fn handbook_spacings(od: Length) -> Result<Vec<SpacingRow>, Error> {
    let od_mm = to_mm(bounds::OD.length(od)?);
    let is = |inches: f64| (to_mm(inch(inches)) - od_mm).abs() <= SAME_OD_MM;
    let mut rows = Vec::new();
    for (_, most) in AIRCRAFT.iter().filter(|row| is(row.0)) {
        rows.push(SpacingRow {
            scope: "hydraulic lines of aircraft",
            least: None,
            most: inch(*most),
            source: Source::new(
                "MIL-H-8891A",
                "table II, rows paired again from scanned text",
                Checked::Seen,
            ),
        });
    }
    for (_, most) in AIRCRAFT_SMALL.iter().filter(|row| is(row.0)) {
        rows.push(SpacingRow {
            scope: "steel lines of aircraft",
            least: None,
            most: inch(*most),
            source: Source::new("FAA-H-8083-30 or AC 43.13-1B", "support spacing", Checked::Memory),
        });
    }
    for (_, least, most) in SHORE.iter().filter(|row| is(row.0)) {
        rows.push(SpacingRow {
            scope: "tubing for gas and liquid on land",
            least: Some(inch(*least)),
            most: inch(*most),
            source: Source::new("UFC 4-390-01", "page 79", Checked::Seen),
        });
    }
    Ok(rows)
}
