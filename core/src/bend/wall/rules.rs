//! What public texts ask of a bend: smallest radii, flattening, wrinkles, spare wall. Each row with its scope and its
//! source; none is this library's own advice, and a row from memory says so.

use crate::bounds;
use crate::error::Error;
use crate::source::{Checked, Source};
use crate::units::{Length, Ratio, inch, mm, ratio, to_mm};

/// A smallest center-line radius.
#[derive(Debug, Clone, PartialEq)]
pub struct RadiusRule {
    /// What it is said of.
    pub scope: &'static str,
    /// The radius for the diameter asked for.
    pub least: Length,
    /// Where it comes from.
    pub source: Source,
}

/// A limit of a section's shape.
#[derive(Debug, Clone, PartialEq)]
pub struct SectionLimit {
    /// What is limited.
    pub measure: Measure,
    /// What it is said of.
    pub scope: &'static str,
    /// The limit.
    pub limit: Ratio,
    /// Where it comes from.
    pub source: Source,
}

/// What a limit of a section's shape is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Measure {
    /// Dmin / D, at least.
    Flattening,
    /// (Dmax - Dmin) / Dnom, at most.
    Ovality,
    /// Height of a wrinkle or kink as a share of the diameter, at most.
    Wrinkle,
}

impl Measure {
    /// The name, the same in every language.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Measure::Flattening => "flattening",
            Measure::Ovality => "ovality",
            Measure::Wrinkle => "wrinkle",
        }
    }
}

/// Wall to have before bending, as a multiple of the wall that is needed.
#[derive(Debug, Clone, PartialEq)]
pub struct WallReserve {
    /// Center-line radius in diameters.
    pub radius_in_diameters: Ratio,
    /// Multiple of the wall.
    pub multiple: Ratio,
    /// Where it comes from.
    pub source: Source,
}

/// Tube diameters within this are the same size.
const SAME_OD_MM: f64 = 0.02;

/// Smallest radius for steel tube by its diameter, both in inches: AC 43.13-1B table 9-2 from memory. The table itself was
/// looked for and not found.
const AC_43_13_STEEL: [(f64, f64); 12] = [
    (3.0 / 16.0, 21.0 / 32.0),
    (1.0 / 4.0, 7.0 / 8.0),
    (5.0 / 16.0, 1.125),
    (3.0 / 8.0, 1.3125),
    (1.0 / 2.0, 1.75),
    (5.0 / 8.0, 2.1875),
    (3.0 / 4.0, 2.625),
    (1.0, 3.5),
    (1.25, 4.375),
    (1.5, 5.25),
    (1.75, 6.125),
    (2.0, 7.0),
];

/// Smallest radii that public texts give for a tube diameter, in no order of merit. They disagree: each is of its own
/// trade. Empty where none is known.
///
/// # Errors
/// `NOT_A_NUMBER` or `OUT_OF_RANGE`.
///
/// ```
/// use linewright::bend::wall::radius_rules;
/// use linewright::units::{mm, to_mm};
/// let rules = radius_rules(mm(4.75))?;
/// assert!(rules.iter().any(|rule| to_mm(rule.least) == 25.0 && rule.scope.contains("DIN 74234")));
/// # Ok::<(), linewright::Error>(())
/// ```
pub fn radius_rules(od: Length) -> Result<Vec<RadiusRule>, Error> {
    let od_mm = to_mm(bounds::OD.length(od)?);
    let mut rules = Vec::new();
    if (od_mm - 4.75).abs() <= SAME_OD_MM {
        rules.push(RadiusRule {
            scope: "brake line 4.75 x 0.7 mm to DIN 74234, bent cold",
            least: mm(25.0),
            source: Source::new(
                "chassis service manual of one lift truck",
                "page 159: a smaller radius is not allowed",
                Checked::Seen,
            ),
        });
    }
    for (diameter, radius) in AC_43_13_STEEL {
        if (to_mm(inch(diameter)) - od_mm).abs() <= SAME_OD_MM {
            rules.push(RadiusRule {
                scope: "steel tube of aircraft",
                least: inch(radius),
                source: Source::new("AC 43.13-1B", "table 9-2", Checked::Memory),
            });
        }
    }
    // 2.5 to 3 diameters: the smaller is the limit, the text leaves open when the larger one holds.
    rules.push(RadiusRule {
        scope: "tube of aircraft in general, 2.5 to 3 diameters",
        least: mm(2.5 * od_mm),
        source: Source::new("study cards on CASA notes", "", Checked::SecondHand),
    });
    Ok(rules)
}

/// Limits of flattening, ovality and wrinkles that public texts give.
#[must_use]
pub fn section_limits() -> Vec<SectionLimit> {
    let row = |measure, scope, limit, text, place, checked| SectionLimit {
        measure,
        scope,
        limit: ratio(limit),
        source: Source::new(text, place, checked),
    };
    vec![
        row(
            Measure::Flattening,
            "tube of aircraft",
            0.75,
            "FAA-H-8083-30, repeated in public course notes",
            "smallest diameter of the flattened part",
            Checked::SecondHand,
        ),
        row(
            Measure::Ovality,
            "ferrous pipe, radius of five diameters or more, wall of schedule 40 or more",
            0.08,
            "UFC 4-159-01",
            "(Dmax - Dmin) / Daverage",
            Checked::Seen,
        ),
        row(
            Measure::Ovality,
            "U-tubes of heat exchangers",
            0.10,
            "public data sheet for U-tube bends",
            "flattening at the bend",
            Checked::Seen,
        ),
        row(
            Measure::Wrinkle,
            "aircraft systems of 500 psi and more",
            0.01,
            "study cards on CASA notes",
            "share of the diameter",
            Checked::SecondHand,
        ),
    ]
}

/// Wall to have before bending, by radius, for pipe (UFC 4-159-01 table 5-4). The row of six diameters holds for larger
/// radii too.
#[must_use]
pub fn wall_reserves() -> Vec<WallReserve> {
    [(6.0, 1.06), (5.0, 1.08), (4.0, 1.14), (3.0, 1.25)]
        .into_iter()
        .map(|(radius, multiple)| WallReserve {
            radius_in_diameters: ratio(radius),
            multiple: ratio(multiple),
            source: Source::new("UFC 4-159-01", "table 5-4", Checked::Seen),
        })
        .collect()
}
