//! Whether a nut clamps its flare before it comes to its own end, and on how much thread.
//!
//! Depths count from the face that the nut's head comes to. With the flare on its seat, the place of the nose that presses
//! on it stands at the middle of the seat less the thickness of the flare. Two things can end the nut's way before that: its
//! head reaches the face, or its thread reaches the end of the port's. Either feels tight and clamps nothing. And a nut that
//! clamps may still have hardly any thread in the port.
//!
//! The nut is taken to press on the flare opposite the middle of the seat; one that touches it elsewhere shifts all three
//! figures by as much. A sleeve nut goes over its port and is not computed.

use super::{End, Nut, Port};
use crate::flare::Flare;
use crate::units::{Length, mm, to_mm};

/// What is left when the flare is clamped, at least: the thinnest flare leaves the least room, the thickest the least thread.
/// Of bubbles that holds up to 1.6 tubes wide, on tube up to ten walls wide.
/// All three must be more than the depths can be off.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ClampMargin {
    /// Between the nut's head and the port's face: threads that show, times the pitch.
    pub under_head: Length,
    /// Full thread of the port beyond the nut's first thread.
    pub beyond_thread: Length,
    /// Thread of the nut that is in the thread of the port, at least; below zero where they do not reach each other.
    pub engaged: Length,
}

impl ClampMargin {
    /// What a depth measured with a caliper may be off (common practice, no source).
    pub const DEPTH_ERROR_MM: f64 = 0.2;
    /// Turns that a nut must have in its port: several full turns by fingers (common practice, no source).
    pub const TURNS: u32 = 3;

    /// The smaller of the first two.
    #[must_use]
    pub fn least(&self) -> Length {
        if to_mm(self.under_head) < to_mm(self.beyond_thread) { self.under_head } else { self.beyond_thread }
    }

    /// Threads that show between head and face, at least: more with a thicker flare. Two are usual, none is suspicious (common practice, no source).
    #[must_use]
    pub fn threads_showing(&self, pitch: Length) -> f64 {
        to_mm(self.under_head) / to_mm(pitch)
    }

    /// Turns of thread that hold.
    #[must_use]
    pub fn turns(&self, pitch: Length) -> f64 {
        to_mm(self.engaged) / to_mm(pitch)
    }

    fn of(nut: &Nut, port: &Port, [thin, thick]: [Length; 2]) -> Option<ClampMargin> {
        let [least, most] = [Ends::of(nut, port, thin)?, Ends::of(nut, port, thick)?];
        Some(ClampMargin {
            under_head: mm(-least.back),
            beyond_thread: mm(least.depth - least.front),
            engaged: mm(least.engaged().min(most.engaged())),
        })
    }
}

/// How deep the two ends of a nut's thread lie, and how deep the port's goes, in mm.
struct Ends {
    front: f64,
    back: f64,
    depth: f64,
}

impl Ends {
    fn of(nut: &Nut, port: &Port, flare_thickness: Length) -> Option<Ends> {
        let (thread, lead) = (to_mm(nut.thread_length()?), to_mm(nut.lead()?));
        let front = to_mm(port.seat_depth?) - to_mm(flare_thickness) - lead;
        Some(Ends { front, back: front - thread, depth: to_mm(port.thread_depth?) })
    }

    /// The port's thread lies between 0 and its own depth.
    fn engaged(&self) -> f64 {
        self.front.min(self.depth) - self.back.max(0.0)
    }
}

impl End {
    /// The margin of this end on a tube with this wall; None where the port is not recorded or a length is not known, and for
    /// a 37 degree flare, whose nut goes over its port.
    ///
    /// ```
    /// use linewright::units::{mm, to_mm};
    /// use linewright::*;
    /// let nut = Nut::new(Some(Thread::read("M10x1")?), mm(17.0), mm(5.0), Some(Nose::Coned))?
    ///     .with_thread_length(mm(11.0), mm(0.0))?;
    /// let port = Port::new("tee", nut.thread(), Some(Seat::Inverted45)).with_depths(mm(9.5), mm(10.0))?;
    /// let end = End { port: Some(port), ..End::new(nut, Flare::Double45) };
    /// let margin = end.clamp_margin(mm(0.7)).unwrap();
    /// // The nose presses at 10 - 2 x 0.7 = 8.6 or before: 11 - 8.6 under the head, 9.5 - 8.6 of thread beyond. A flare
    /// // that is not thinned is 2 x 0.7 / sin 45 thick along the axis.
    /// assert!((to_mm(margin.under_head) - 2.4).abs() < 1e-9 && (to_mm(margin.beyond_thread) - 0.9).abs() < 1e-9);
    /// assert!((to_mm(margin.engaged) - (10.0 - 1.4 * 2.0_f64.sqrt())).abs() < 1e-9);
    /// # Ok::<(), linewright::Error>(())
    /// ```
    #[must_use]
    pub fn clamp_margin(&self, wall: Length) -> Option<ClampMargin> {
        if self.flare == Flare::Single37 {
            return None;
        }
        let thickness = [self.flare.thickness_at_least(wall), self.flare.thickness_at_most(wall)];
        ClampMargin::of(&self.nut, self.port.as_ref()?, thickness)
    }

    /// The most of the nut's thread that can be in the port's, with the thinnest flare.
    pub(crate) fn engaged_at_most(&self, wall: Length) -> Option<Length> {
        let ends = Ends::of(&self.nut, self.port.as_ref()?, self.flare.thickness_at_least(wall))?;
        Some(mm(ends.engaged()))
    }
}
