//! Tolerances of tube that public texts give, for the worst wall.

use crate::bounds;
use crate::error::Error;
use crate::source::{Checked, Source};
use crate::units::{Length, inch, mm, to_mm};

/// How far a tube may be off its size.
#[derive(Debug, Clone, PartialEq)]
pub struct SizeTolerance {
    /// What it is said of.
    pub scope: &'static str,
    /// The wall it is said of.
    pub wall: Length,
    /// By how much the wall may be off, either way.
    pub wall_plus_minus: Length,
    /// By how much the outside diameter may be off, either way; None where the text was not seen to say.
    pub od_plus_minus: Option<Length>,
    /// Where it comes from.
    pub source: Source,
}

/// Tube diameters within this are the same size.
const SAME_OD_MM: f64 = 0.005;

/// Tolerances known for a tube diameter; empty where none was seen.
///
/// # Errors
/// `NOT_A_NUMBER` or `OUT_OF_RANGE`.
///
/// ```
/// use linewright::bend::pressure::size_tolerances;
/// use linewright::units::{inch, to_inch};
/// let rows = size_tolerances(inch(3.0 / 16.0))?;
/// assert!((to_inch(rows[0].wall_plus_minus) - 0.005).abs() < 1e-12);
/// # Ok::<(), linewright::Error>(())
/// ```
pub fn size_tolerances(od: Length) -> Result<Vec<SizeTolerance>, Error> {
    let od_mm = to_mm(bounds::OD.length(od)?);
    let is = |size: Length| (to_mm(size) - od_mm).abs() <= SAME_OD_MM;
    let j526 = || Source::new("tube seller's page on SAE J526", "tolerances", Checked::Seen);
    if is(inch(3.0 / 16.0)) {
        return Ok(vec![SizeTolerance {
            scope: "SAE J526, 3/16 in",
            wall: inch(0.028),
            wall_plus_minus: inch(0.005),
            od_plus_minus: Some(inch(0.003)),
            source: j526(),
        }]);
    }
    if [4.0, 5.0, 6.0].into_iter().any(|sixteenths| is(inch(sixteenths / 16.0))) {
        return Ok(vec![SizeTolerance {
            scope: "SAE J526, 1/4 to 3/8 in",
            wall: inch(0.028),
            wall_plus_minus: inch(0.003),
            od_plus_minus: None,
            source: j526(),
        }]);
    }
    if is(mm(4.75)) {
        return Ok(vec![SizeTolerance {
            scope: "DIN 74234, 4.75 mm",
            wall: mm(0.75),
            wall_plus_minus: mm(0.075),
            od_plus_minus: None,
            source: Source::new("DIN 74234:1992", "preview, a scan that is partly garbled", Checked::Seen),
        }]);
    }
    Ok(Vec::new())
}
