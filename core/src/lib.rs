//! linewright computes what a person needs to re-make a rigid hydraulic line by hand: cut length, marks, bend
//! settings, order of work with its gates, and a bench card; and it says everything it found on the way.
//!
//! ```
//! use linewright::units::{deg, inch, mm, to_mm};
//! use linewright::*;
//!
//! let tube = Tube::new(inch(3.0 / 16.0), inch(0.028), Material::LowCarbonSteel)?;
//! let tool = FlareTool::new(Flare::Double45, mm(13.0), mm(4.0))?.with_net_shortening(mm(2.0))?.with_cut_spare(mm(3.0))?;
//! let trials = [Trial { set: deg(90.0), got: deg(86.5) }, Trial { set: deg(45.0), got: deg(43.2) }];
//! let bench = Bench::new(Former::new(mm(14.3), mm(20.0))?, &[tool])?.with_springback(Springback::from_trials(&trials)?);
//! let bends = Bend::list(&[deg(30.0), deg(60.0), deg(90.0)], &[deg(180.0), deg(90.0)], &[mm(14.3)])?;
//! let path = Path::from_legs(&[mm(55.0), inch(28.0), inch(9.25), mm(76.0)], &bends)?;
//! let nut = Nut::new(Some(Thread::read("M10x1")?), mm(17.0), mm(5.0), Some(Nose::Coned))?;
//! let end = End::new(nut, Flare::Double45);
//! let plan = Plan::new(&Line::new("T2", tube, path, end.clone(), end), &bench, &PlanOptions::default());
//!
//! assert!((to_mm(plan.cut().unwrap().length()) - 1079.30).abs() < 0.005);
//! // Nobody has recorded the ports, so the plan is a draft and says so.
//! assert!(plan.is_draft() && plan.problems()[0].code == Code::PortUnknown);
//! # Ok::<(), Error>(())
//! ```
//!
//! | word | here |
//! |---|---|
//! | line, end A and B, nut, port | [`Line`], [`End`], [`Nut`], [`Port`] |
//! | straight, leg, bend, rotation | [`Path`], [`Bend`] |
//! | former, flare tool, trial bends | [`Bench`], [`Former`], [`FlareTool`], [`Springback`] |
//! | cut, mark, setting, gate, card | [`Plan`], [`plan::Step`], [`card::text`] |
//! | wall of a bend, ideal cylinder under pressure | [`bend::wall`], [`bend::pressure`] |
//! | a line full of fluid, a span between clips | [`hydraulics`] |
//! | what was typed, before it is believed | [`LineDraft`], [`units::read_length`] |
//! | what is wrong, what was assumed | [`Problem`], [`problem::Assumption`] |
//!
//! Not here: pressure ratings (the pressure of an ideal cylinder at the caller's own strength and factor is none),
//! torques, valve settings, bleeding orders, or any statement that a line may be used.

pub mod bench;
pub mod bend;
pub mod bounds;
pub mod card;
pub mod check;
pub mod clip;
pub mod code;
pub mod error;
pub mod explain;
pub mod flare;
pub mod hydraulics;
pub mod line;
pub mod material;
pub mod math;
pub mod path;
pub mod plan;
pub mod problem;
pub mod size;
pub mod source;
pub mod springback;
mod statistics;
pub mod tape;
pub mod thread;
pub mod tube;
pub mod turn;
pub mod units;

pub use bench::{Bench, FlareTool, Former};
pub use bend::{Bend, Making};
pub use code::{Code, Level, Lift};
pub use error::Error;
pub use flare::{Fit, Flare, Nose, Seat};
pub use line::{End, Line, LineDraft, LoadedPart, Nut, Port};
pub use material::Material;
pub use path::{Path, Point};
pub use plan::{Plan, PlanOptions};
pub use problem::{Part, Problem, Side, Value};
pub use size::{size_lines, size_lines_in};
pub use springback::{Springback, Trial};
pub use thread::Thread;
pub use tube::Tube;
pub use uom;

/// The samples of the README.
#[cfg(doctest)]
#[doc = include_str!("../../README.md")]
struct Readme;
