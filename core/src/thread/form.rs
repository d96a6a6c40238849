//! The form of a thread: height, lead angle, stress area, and the hole to tap it into.

use super::{Family, Thread};
use crate::bounds;
use crate::code::Code;
use crate::error::Error;
use crate::math::{atan2, sqrt};
use crate::problem::Value;
use crate::units::{Angle, Area, Length, Ratio, mm, mm2, rad, ratio, to_mm};
use std::f64::consts::PI;

/// Height of the sharp 60 degree triangle over the pitch, sqrt(3)/2 (ISO 68-1).
const SHARP_60: f64 = 0.866_025_403_784_438_6;
/// Height of the 55 degree thread over the pitch, rounded crests and roots (ISO 228-1; seen).
const HEIGHT_55: f64 = 0.640_327;
/// Height of an NPT thread over the pitch (ASME B1.20.1; seen).
const HEIGHT_NPT: f64 = 0.8;
/// What rounding may make of a full share.
const SAME_SHARE: f64 = 1e-9;

impl Thread {
    /// Basic height of the thread: 5/8 of the sharp triangle for metric and Unified, 0.640327 P for 55 degrees, 0.8 P for
    /// NPT.
    #[must_use]
    pub fn height(&self) -> Length {
        let factor = match self.family() {
            Family::Metric | Family::Unified => SHARP_60 * 5.0 / 8.0,
            Family::G | Family::R | Family::Rp | Family::Rc => HEIGHT_55,
            Family::Npt => HEIGHT_NPT,
        };
        mm(factor * to_mm(self.pitch()))
    }

    /// Basic pitch diameter, not rounded: the diameter less 0.75 of the sharp triangle, or less the height at 55 degrees.
    /// Of NPT it is the one at the tip, E0.
    #[must_use]
    pub fn basic_pitch_diameter(&self) -> Length {
        let (d, p) = (to_mm(self.diameter()), to_mm(self.pitch()));
        mm(match self.family() {
            Family::Metric | Family::Unified => d - 0.75 * SHARP_60 * p,
            Family::G | Family::R | Family::Rp | Family::Rc => d - HEIGHT_55 * p,
            // E0 = D - (0.05 D + 1.1) p in inches.
            Family::Npt => d - (0.05 * d / 25.4 + 1.1) * p,
        })
    }

    /// Lead angle at the basic pitch diameter.
    #[must_use]
    pub fn lead_angle(&self) -> Angle {
        rad(atan2(to_mm(self.pitch()), PI * to_mm(self.basic_pitch_diameter())))
    }

    /// Tensile stress area of an external thread: the circle of the mean of pitch and root diameter, pi/4 (d - 0.9382 P)^2
    /// (ISO 898-1; ASME B1.1 rounds the factor to 0.9743 threads per inch less, which is 0.9743 P; formulas from memory).
    /// None for pipe threads, whose standards define none.
    ///
    /// ```
    /// use linewright::{Thread, units::to_mm2};
    /// let area = Thread::read("M10x1")?.stress_area().unwrap();
    /// assert!((to_mm2(area) - 64.5).abs() < 0.05);
    /// # Ok::<(), linewright::Error>(())
    /// ```
    #[must_use]
    pub fn stress_area(&self) -> Option<Area> {
        let factor = match self.family() {
            // d2 and d3 are d less 3/4 H and d less 17/12 H; their mean is d less 13/12 H.
            Family::Metric => SHARP_60 * 13.0 / 12.0,
            // The root of the Unified stress area is the sharp one of 9/16 H below the pitch line.
            Family::Unified => SHARP_60 * 9.0 / 8.0,
            _ => return None,
        };
        let mean = to_mm(self.diameter()) - factor * to_mm(self.pitch());
        Some(mm2(PI / 4.0 * mean * mean))
    }

    /// The hole for tapping with a share of the full thread as drill charts count it: of 3/4 of the sharp triangle, so that
    /// the hole is d - share x 1.299 P at 60 degrees. (Of the basic height, 5/8 of the triangle, the same hole has 6/5 of the
    /// share.) At 55 degrees it is the thread's own height.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`, `OUT_OF_RANGE` outside 0.3 to 1; `NOT_KNOWN` for a taper thread.
    pub fn tap_drill(&self, share: Ratio) -> Result<Length, Error> {
        let share = bounds::THREAD_SHARE.ratio(share)?.value;
        self.parallel_only()?;
        Ok(mm(to_mm(self.diameter()) - 2.0 * share * self.chart_height()))
    }

    /// The share of the full thread that a hole leaves, in the sense of [`Thread::tap_drill`]: 5/6 for a hole of the basic
    /// minor diameter at 60 degrees.
    ///
    /// # Errors
    /// `NOT_A_NUMBER`; `OUT_OF_RANGE` for a hole that leaves no thread, or more than the full one; `NOT_KNOWN` for a taper
    /// thread.
    pub fn thread_share(&self, hole: Length) -> Result<Ratio, Error> {
        let hole = bounds::THREAD_DIAMETER.length(hole)?;
        self.parallel_only()?;
        let (major, full) = (to_mm(self.diameter()), 2.0 * self.chart_height());
        let share = (major - to_mm(hole)) / full;
        if share < 0.0 || share > 1.0 + SAME_SHARE {
            let ends = [mm(major - full), mm(major)].map(Value::Length);
            let need = Value::text(format!("a hole from {} to {} for this thread", ends[0], ends[1]));
            return Err(Error::field(Code::OutOfRange, "hole", Value::Length(hole), need));
        }
        Ok(ratio(share.min(1.0)))
    }

    /// What drill charts call the full thread, in mm.
    fn chart_height(&self) -> f64 {
        match self.family() {
            Family::Metric | Family::Unified => 0.75 * SHARP_60 * to_mm(self.pitch()),
            _ => to_mm(self.height()),
        }
    }

    fn parallel_only(&self) -> Result<(), Error> {
        if self.taper().value > 0.0 {
            return Err(
                self.has_no("one hole: a taper thread's changes along its depth", "a parallel thread")
            );
        }
        Ok(())
    }

    /// Radial share of a thread's own height that two diameters overlap by; negative where they do not.
    pub(super) fn share_of_height(&self, male_major_mm: f64, female_minor_mm: f64) -> f64 {
        (male_major_mm - female_minor_mm) / 2.0 / to_mm(self.height())
    }

    /// Widths of ridge or groove change by twice this with the radius.
    pub(super) fn flank(&self) -> f64 {
        match self.family() {
            // tan 30 degrees.
            Family::Metric | Family::Unified | Family::Npt => 1.0 / sqrt(3.0),
            Family::G | Family::R | Family::Rp | Family::Rc => crate::math::tan(self.half_angle().value),
        }
    }
}
