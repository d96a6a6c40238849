//! The plan of a line on a bench: cut length, marks, settings, order of work, and everything found on the way.

mod bends;
mod cut;
mod ends;
mod joints;
mod loading;
mod steps;
#[cfg(test)]
mod tests;
mod widths;

pub use bends::PlannedBend;
pub use cut::{CutLength, Term};
pub use ends::{EndPlan, FlareOrder, Minimum, MinimumKind};
pub use loading::Loaded;
pub use steps::{Step, StepKind};
pub(crate) use steps::{angles_text, both_units, turn_text};

use crate::bench::Bench;
use crate::bounds;
use crate::check::{self, HandCheck, TapeCheck, TurnCheck};
use crate::error::Error;
use crate::line::Line;
use crate::problem::{self, Acceptance, Assumption, Ledger, Problem, Side};
use crate::source::printable;
use crate::springback::Springback;
use crate::units::{Length, mm};

/// A straight that misses its need by less than this meets it: far below what a hand can measure, far above rounding.
const TOLERANCE_MM: f64 = 1e-6;

/// Where marks are measured from. A plan has one datum.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Datum {
    /// The tube's end as cut.
    RawEnd(Side),
    /// The face of the finished flare.
    FlareFace(Side),
}

impl Datum {
    /// The end it is at.
    #[must_use]
    pub fn side(self) -> Side {
        match self {
            Datum::RawEnd(side) | Datum::FlareFace(side) => side,
        }
    }

    /// As it is printed: `"flare A"`, `"raw end A"`.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Datum::RawEnd(Side::A) => "raw end A",
            Datum::RawEnd(Side::B) => "raw end B",
            Datum::FlareFace(Side::A) => "flare A",
            Datum::FlareFace(Side::B) => "flare B",
        }
    }
}

/// What a person decides about a plan.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct PlanOptions {
    trim_end: Option<Side>,
    reserve: Length,
    accepted: Vec<Acceptance>,
}

impl PlanOptions {
    /// With the end that is left long and finished last. Without it the longer end straight that can be flared
    /// after bending is taken.
    #[must_use]
    pub fn with_trim_end(mut self, side: Side) -> Self {
        self.trim_end = Some(side);
        self
    }

    /// With tube added at the trim end, for instance for a second try at its flare.
    ///
    /// # Errors
    /// `NOT_A_NUMBER` or `OUT_OF_RANGE`.
    pub fn with_reserve(mut self, reserve: Length) -> Result<Self, Error> {
        self.reserve = bounds::RESERVE.length(reserve)?;
        Ok(self)
    }

    /// With a stop lifted by a person. Only the codes that a person can lift obey.
    #[must_use]
    pub fn accept(mut self, id: &str, who: &str, why: &str) -> Self {
        self.accepted.push(Acceptance { id: id.to_owned(), who: printable(who), why: printable(why) });
        self
    }
}

/// How a line is made on a bench.
///
/// A plan with an open stop is a draft: its figures are computed, and the steps that depend on the stop are locked.
#[derive(Debug, Clone, PartialEq)]
pub struct Plan {
    line: Line,
    bench_revision: String,
    springback: Option<Springback>,
    cut: Option<CutLength>,
    first: Side,
    trim_end: Option<Side>,
    datum: Datum,
    ends: [EndPlan; 2],
    bends: Vec<PlannedBend>,
    steps: Vec<Step>,
    problems: Vec<Problem>,
    assumptions: Ledger,
}

impl Plan {
    /// Plans a line on a bench.
    #[must_use]
    pub fn new(line: &Line, bench: &Bench, options: &PlanOptions) -> Plan {
        let mut problems = line.found().to_vec();
        let mut assumptions = Ledger::default();
        for assumed in line.assumed() {
            assumptions.assume(&assumed.what, assumed.value.clone(), assumed.basis.clone());
        }
        let uses = [Side::A, Side::B]
            .map(|side| cut::FlareUse::new(line, bench, side, &mut problems, &mut assumptions));
        let cut = CutLength::new(line, &uses, options.reserve);
        let order = ends::Order::new(line, bench, &uses, options.trim_end, &mut problems, &mut assumptions);
        joints::check(line, &mut problems, &mut assumptions);
        bends::check(line, bench, order.first, &mut problems);
        let datum = order.datum();
        let first_net = uses[order.first as usize].net;
        let bends = bends::plan(line, bench, datum, first_net, &mut problems);
        problem::accept(&mut problems, &options.accepted);
        problem::sort(&mut problems);
        let mut plan = Plan {
            line: line.clone(),
            bench_revision: bench.revision().to_owned(),
            springback: bench.springback().cloned(),
            cut,
            first: order.first,
            trim_end: order.trim_end,
            datum,
            ends: order.ends,
            bends,
            steps: Vec::new(),
            problems,
            assumptions,
        };
        plan.steps = steps::steps(&plan);
        plan
    }

    /// The line.
    #[must_use]
    pub fn line(&self) -> &Line {
        &self.line
    }

    /// Revision of the bench it was made for.
    #[must_use]
    pub fn bench_revision(&self) -> &str {
        &self.bench_revision
    }

    /// The springback that its settings come from, if the bench has one.
    #[must_use]
    pub fn springback(&self) -> Option<&Springback> {
        self.springback.as_ref()
    }

    /// Flare face to flare face along the center line.
    #[must_use]
    pub fn finished_length(&self) -> Length {
        self.line.path().developed_length()
    }

    /// The cut length with its terms; None while a flare's need of tube is not known.
    #[must_use]
    pub fn cut(&self) -> Option<&CutLength> {
        self.cut.as_ref()
    }

    /// The end at which work starts.
    #[must_use]
    pub fn first(&self) -> Side {
        self.first
    }

    /// The end that is left long, trimmed after the trial fit and flared last.
    #[must_use]
    pub fn trim_end(&self) -> Option<Side> {
        self.trim_end
    }

    /// Where all marks are measured from.
    #[must_use]
    pub fn datum(&self) -> Datum {
        self.datum
    }

    /// What is needed and planned at an end.
    #[must_use]
    pub fn end(&self, side: Side) -> &EndPlan {
        &self.ends[side as usize]
    }

    /// The bends with marks and settings, in the order of the path.
    #[must_use]
    pub fn bends(&self) -> &[PlannedBend] {
        &self.bends
    }

    /// The steps, in working order.
    #[must_use]
    pub fn steps(&self) -> &[Step] {
        &self.steps
    }

    /// What must be on the tube before each end is closed, in the order in which it goes on.
    #[must_use]
    pub fn loading(&self) -> Vec<Loaded> {
        let gates = self
            .steps
            .iter()
            .filter_map(|s| if let StepKind::NutGate(side) = s.kind { Some(side) } else { None });
        gates.flat_map(|side| loading::of_end(self.line.end(side), side)).collect()
    }

    /// The distance that shows best whether each turn is right; see [`check::tape_checks`].
    #[must_use]
    pub fn tape_checks(&self) -> Vec<TapeCheck> {
        check::tape_checks(self.line.path(), self.first)
    }

    /// Each turn in every form a bench can use; see [`check::turn_checks`].
    #[must_use]
    pub fn turn_checks(&self) -> Vec<TurnCheck> {
        check::turn_checks(self.line.path(), self.first)
    }

    /// The look that tells the part from its mirror image; None for a flat line.
    #[must_use]
    pub fn hand_check(&self) -> Option<HandCheck> {
        check::hand_check(self.line.path(), self.first)
    }

    /// Whether the length forgives an error: an end can still be trimmed after the trial fit.
    #[must_use]
    pub fn is_forgiving(&self) -> bool {
        self.trim_end.is_some()
    }

    /// Everything found, the worst first.
    #[must_use]
    pub fn problems(&self) -> &[Problem] {
        &self.problems
    }

    /// Every default the plan rests on.
    #[must_use]
    pub fn assumptions(&self) -> &[Assumption] {
        self.assumptions.rows()
    }

    /// Whether a stop is open.
    #[must_use]
    pub fn is_draft(&self) -> bool {
        self.problems.iter().any(Problem::is_open)
    }
}

/// How far a value falls short of a need; zero within the tolerance.
fn shortfall(have_mm: f64, need_mm: f64) -> Length {
    let short = need_mm - have_mm;
    mm(if short > TOLERANCE_MM { short } else { 0.0 })
}
