//! Clips: where along a line it is held, and how many to buy.

#[cfg(test)]
mod tests;

use crate::bounds;
use crate::code::Code;
use crate::error::Error;
use crate::path::Path;
use crate::problem::{Part, Problem, Value};
use crate::source::{Checked, Source};
use crate::units::{Length, mm, to_mm};

/// How far apart clips may be, and how far from an end the first may be.
#[derive(Debug, Clone, PartialEq)]
pub struct ClipRule {
    spacing: Length,
    from_end: Length,
    source: Source,
}

/// One clip along a line.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Clip {
    /// Distance along the center line from the finished face at end A, so that it can be marked like a bend.
    pub station: Length,
    /// The bend it falls into, if it does.
    pub in_bend: Option<usize>,
}

/// The clips of a line.
#[derive(Debug, Clone, PartialEq)]
pub struct Clips {
    /// The positions, A to B.
    pub clips: Vec<Clip>,
    /// What is worth knowing about them.
    pub problems: Vec<Problem>,
}

/// Rows of spacing rules. Local codes and the vehicle maker's data rule over all of them.
#[must_use]
pub fn rules() -> Vec<ClipRule> {
    let row = |spacing, from_end, source| ClipRule { spacing: mm(spacing), from_end: mm(from_end), source };
    vec![
        row(400.0, 100.0, Source::common_practice()),
        row(
            500.0,
            100.0,
            Source::new(
                "light commercial vehicle body builder manual 2015 (spacing only; the end distance is common practice)",
                "page 104",
                Checked::Seen,
            ),
        ),
    ]
}

impl ClipRule {
    /// A rule of the caller's own, with where it was read.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE`.
    pub fn new(spacing: Length, from_end: Length, source: Source) -> Result<ClipRule, Error> {
        let spacing = bounds::CLIP_SPACING.length(spacing)?;
        Ok(ClipRule { spacing, from_end: bounds::CLEARANCE.length(from_end)?, source })
    }

    /// Largest distance between clips.
    #[must_use]
    pub fn spacing(&self) -> Length {
        self.spacing
    }

    /// Largest distance of the first and last clip from its end.
    #[must_use]
    pub fn from_end(&self) -> Length {
        self.from_end
    }

    /// Where the rule comes from.
    #[must_use]
    pub fn source(&self) -> &Source {
        &self.source
    }

    /// The fewest clips that keep the rule, evenly spread: one at the end distance from each end, and between them as many
    /// as the spacing asks for. A line no longer than two end distances gets one in its middle.
    ///
    /// ```
    /// use linewright::{Bend, Path, clip, units::{deg, inch, mm}};
    /// let bends = Bend::list(&[deg(30.0), deg(60.0), deg(90.0)], &[deg(180.0), deg(90.0)], &[mm(14.3)])?;
    /// let path = Path::from_legs(&[mm(55.0), inch(28.0), inch(9.25), mm(76.0)], &bends)?;
    /// assert_eq!(clip::rules()[0].clips(&path).clips.len(), 4);
    /// # Ok::<(), linewright::Error>(())
    /// ```
    #[must_use]
    pub fn clips(&self, path: &Path) -> Clips {
        let whole = to_mm(path.developed_length());
        let (end, spacing) = (to_mm(self.from_end), to_mm(self.spacing));
        let between = whole - 2.0 * end;
        let stations: Vec<f64> = if whole <= 0.0 {
            Vec::new()
        } else if between <= 0.0 {
            vec![whole / 2.0]
        } else {
            let gaps = (between / spacing - GAP_NOISE).ceil().max(1.0);
            let mut at = 0.0;
            let mut stations = Vec::new();
            while at <= gaps {
                stations.push(end + between * at / gaps);
                at += 1.0;
            }
            stations
        };
        let clips: Vec<Clip> =
            stations.into_iter().map(|at| Clip { station: mm(at), in_bend: bend_at(path, at) }).collect();
        let problems = clips
            .iter()
            .filter_map(|clip| {
                let at = Value::text(format!("a clip at {} from A", Value::Length(clip.station)));
                clip.in_bend.map(|bend| Problem::new(Code::ClipInBend, Part::Bend(bend)).got(at))
            })
            .collect();
        Clips { clips, problems }
    }
}

/// A gap longer than the spacing by less than this share is rounding.
const GAP_NOISE: f64 = 1e-9;

/// The bend that a station falls into.
fn bend_at(path: &Path, station_mm: f64) -> Option<usize> {
    let mut at = 0.0;
    for (i, (straight, bend)) in path.straights().iter().zip(path.bends()).enumerate() {
        at += to_mm(*straight);
        if station_mm > at && station_mm < at + to_mm(bend.arc()) {
            return Some(i + 1);
        }
        at += to_mm(bend.arc());
    }
    None
}

/// Clips to buy: what is missing, and spares of one in ten, at least two (common practice, no source).
///
/// Old clips count only where they are springy, complete and smooth.
#[must_use]
pub fn clips_to_buy(needed: usize, reusable: usize) -> (usize, usize) {
    let missing = needed.saturating_sub(reusable);
    let spares = if missing == 0 { 0 } else { missing.div_ceil(10).max(2) };
    (missing, spares)
}
