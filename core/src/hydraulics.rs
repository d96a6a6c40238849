//! A line full of fluid: what it holds, how stiff that is, how it swings between clips, and what a pressure hold can show.
//!
//! | question | here |
//! |---|---|
//! | fluid in a length of line | [`Tube::bore_volume`](crate::Tube::bore_volume) |
//! | fluid pressed in to raise the pressure, warming of a closed line, wave speed | [`FilledTube`] |
//! | first frequency of a span, clip spacing for a frequency | [`Span`] |
//! | spacings that public texts give | [`handbook_spacings`] |
//! | what a leak, and a degree, do to a pressure that is held | [`Hold`] |
//!
//! Stiffness and expansion of a fluid are taken as constant. That is for small changes: a pressure, a loss or a warming that
//! squeezes the fluid by more than a twentieth of its volume is refused (a limit of ours), and so is a change of pressure beyond
//! that of any line.
//!
//! All of it is about smooth tube and pure fluid. Hoses and calipers give way far more than tube, and air more than all.

mod compliance;
mod fluid;
mod hold;
mod linear;
mod spacing;
mod span;

pub use compliance::{AxialEnds, FilledTube, WallElasticity};
pub use fluid::Fluid;
pub use hold::Hold;
pub use spacing::{SpacingRow, handbook_spacings};
pub use span::{Span, SpanEnds};
