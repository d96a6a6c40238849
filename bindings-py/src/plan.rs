//! Plans: how a line is made on a bench.

mod parts;

pub(crate) use parts::{EndPlan, PlannedBend, Step};

use crate::bench::Bench;
use crate::check::HandCheck;
use crate::error;
use crate::line::Line;
use crate::problem::{Assumption, Problem, problems};
use crate::quantity;
use crate::record::{self, Call, Record, Reduced};
use crate::results::made;
use crate::units::{Angle, Length};
use linewright::{PlanOptions, Side, explain};
use pyo3::prelude::*;
use pyo3::types::PyDict;
use std::sync::Arc;

/// What a person decides about a plan, kept so that the plan can be made again.
pub(crate) struct Options {
    trim_end: Option<Side>,
    reserve: Option<linewright::units::Length>,
    accept: Vec<(String, String, String)>,
    /// The same for the core.
    pub(crate) core: PlanOptions,
}

impl Options {
    /// Reads the arguments that every way to a plan shares.
    pub(crate) fn read(
        trim_end: Option<&str>,
        reserve: Option<&Bound<'_, PyAny>>,
        accept: Option<Vec<(String, String, String)>>,
    ) -> PyResult<Self> {
        let trim_end = trim_end
            .map(|name| {
                error::call(|| {
                    Side::from_name(name).map_err(|e| e.at(linewright::Part::Field("trim_end".to_owned())))
                })
            })
            .transpose()?;
        let reserve = quantity::length_if(reserve, "reserve")?;
        let accept = accept.unwrap_or_default();
        let core = error::call(|| {
            let mut core = PlanOptions::default();
            if let Some(side) = trim_end {
                core = core.with_trim_end(side);
            }
            if let Some(reserve) = reserve {
                core = core.with_reserve(reserve)?;
            }
            Ok(accept.iter().fold(core, |core, (id, who, why)| core.accept(id, who, why)))
        })?;
        Ok(Options { trim_end, reserve, accept, core })
    }
}

/// How a line is made on a bench: made by `Line.plan`.
///
/// A plan with an open stop is a draft: its figures are computed, and the steps that depend on the stop are locked.
/// A figure that is not known is None. Figures are not rounded; `card` rounds them, cut lengths up, settings down.
///
/// >>> import linewright as lw
/// >>> nut = lw.Nut("M10x1", length="17 mm", bore="5.0 mm", nose="coned")
/// >>> end = lw.End(nut, "double-45", port=lw.Port("M10x1", "inverted-45"))
/// >>> path = lw.Path.from_legs(["55 mm", "28 in", "9 1/4 in", "76 mm"], bends=["30 deg", "60 deg", "90 deg"],
/// ...                          rotations=["180 deg", "90 deg"], radius="14.3 mm")
/// >>> line = lw.Line("T2", tube=lw.Tube("3/16 in", wall="0.028 in", material="low-carbon steel"), path=path,
/// ...                a=end, b=end)
/// >>> bench = lw.Bench(former=lw.Former(as_formed="14.3 mm", grip="20 mm"),
/// ...                  flare_tool=lw.FlareTool("double-45", clamp="13 mm", projection="4 mm",
/// ...                                          net_shortening="2 mm", cut_spare="3 mm"),
/// ...                  springback=lw.Springback.from_trials([("90 deg", "86.5 deg"), ("45 deg", "43.2 deg")]))
/// >>> plan = line.plan(bench)
/// >>> print(plan.finished_length, plan.cut_length, plan.is_draft)
/// 1069.3 mm 1079.3 mm False
/// >>> plan.datum, [str(mark) for mark in plan.marks]
/// ('flare A', ['51.17 mm', '757.77 mm', '985.14 mm'])
/// >>> [str(setting) for setting in plan.settings]
/// ['31.28 deg', '62.46 deg', '93.64 deg']
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone)]
pub(crate) struct Plan {
    plan: Arc<linewright::Plan>,
    line: Line,
    bench: Arc<linewright::Bench>,
    options: Arc<Options>,
}

impl PartialEq for Plan {
    fn eq(&self, other: &Self) -> bool {
        self.plan == other.plan
    }
}

impl Plan {
    /// Plans a line on a bench.
    pub(crate) fn new(line: &Line, bench: Arc<linewright::Bench>, options: Arc<Options>) -> PyResult<Self> {
        let plan = error::compute(|| linewright::Plan::new(&line.line, &bench, &options.core))?;
        Ok(Plan::of(plan, line.clone(), bench, options))
    }

    /// A plan that was made of just these.
    pub(crate) fn of(
        plan: linewright::Plan,
        line: Line,
        bench: Arc<linewright::Bench>,
        options: Arc<Options>,
    ) -> Self {
        Plan { plan: Arc::new(plan), line, bench, options }
    }
}

impl Record for Plan {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        let options = &self.options;
        let accept = Some(options.accept.clone()).filter(|accept| !accept.is_empty());
        Call::method(&Bound::new(py, self.line.clone())?.into_any(), "plan")?
            .arg(Bench((*self.bench).clone()))?
            .given("trim_end", options.trim_end.map(Side::name))?
            .given("reserve", options.reserve.map(Length))?
            .given("accept", accept)
    }
}

#[pymethods]
impl Plan {
    /// The line.
    #[getter]
    fn line(&self) -> Line {
        self.line.clone()
    }

    /// Revision of the bench it was made for; empty where the bench has none.
    #[getter]
    fn bench_revision(&self) -> &str {
        self.plan.bench_revision()
    }

    /// Flare face to flare face along the center line.
    #[getter]
    fn finished_length(&self) -> Length {
        Length(self.plan.finished_length())
    }

    /// The length to cut; None while a flare's need of tube is not known.
    #[getter]
    fn cut_length(&self) -> Option<Length> {
        self.plan.cut().map(|cut| Length(cut.length()))
    }

    /// The terms whose sum the cut length is, each with its name; None while the cut length is not known.
    #[getter]
    fn cut_terms(&self) -> Option<Vec<(String, Length)>> {
        let term = |term: &linewright::plan::Term| (term.what.clone(), Length(term.length));
        self.plan.cut().map(|cut| cut.terms().iter().map(term).collect())
    }

    /// The end at which work starts: "A" or "B".
    #[getter]
    fn first(&self) -> &'static str {
        self.plan.first().name()
    }

    /// The end left long, trimmed after the trial fit and flared last: "A", "B", or None where neither can be.
    #[getter]
    fn trim_end(&self) -> Option<&'static str> {
        self.plan.trim_end().map(Side::name)
    }

    /// Where all marks are measured from: "flare A", "raw end A", "flare B" or "raw end B".
    #[getter]
    fn datum(&self) -> &'static str {
        self.plan.datum().name()
    }

    /// The bends in the order of the path, A to B.
    #[getter]
    fn bends(&self) -> Vec<PlannedBend> {
        self.plan.bends().iter().map(PlannedBend::of).collect()
    }

    /// Where the pen goes for each bend, from the datum, in the order of the path; None where not known.
    #[getter]
    fn marks(&self) -> Vec<Option<Length>> {
        self.plan.bends().iter().map(|bend| bend.mark.map(Length)).collect()
    }

    /// What the tool is bent to for each bend, in the order of the path; None where not known.
    #[getter]
    fn settings(&self) -> Vec<Option<Angle>> {
        self.plan.bends().iter().map(|bend| bend.setting.map(Angle)).collect()
    }

    /// What is needed and planned at each end, by "A" and "B".
    #[getter]
    fn ends<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyDict>> {
        let ends = PyDict::new(py);
        for side in [Side::A, Side::B] {
            ends.set_item(side.name(), EndPlan::of(self.plan.end(side)))?;
        }
        Ok(ends)
    }

    /// The steps in working order. The gates are part of the order.
    #[getter]
    fn steps(&self) -> Vec<Step> {
        self.plan.steps().iter().map(Step::of).collect()
    }

    /// What must be on the tube before each end is closed, in the order in which it goes on.
    #[getter]
    fn loading<'py>(&self, py: Python<'py>) -> PyResult<Vec<Bound<'py, PyAny>>> {
        let each = self.plan.loading().into_iter();
        each.map(|part| made(py, "Loaded", (part.side.name(), part.what, part.facing))).collect()
    }

    /// Whether the length forgives an error: an end can still be trimmed after the trial fit.
    #[getter]
    fn is_forgiving(&self) -> bool {
        self.plan.is_forgiving()
    }

    /// For each bend but the first made, the distance that shows best whether its plane was turned rightly.
    #[getter]
    fn tape_checks<'py>(&self, py: Python<'py>) -> PyResult<Vec<Bound<'py, PyAny>>> {
        let checks = error::compute(|| self.plan.tape_checks())?;
        let each = checks.into_iter().map(|check| {
            let (distance, change) = (Length(check.distance), Length(check.change));
            made(
                py,
                "TapeCheck",
                (check.bend, check.from.to_string(), check.to.to_string(), distance, change),
            )
        });
        each.collect()
    }

    /// For each bend but the first made, its turn in every form a bench can use.
    #[getter]
    fn turn_checks<'py>(&self, py: Python<'py>) -> PyResult<Vec<Bound<'py, PyAny>>> {
        let checks = error::compute(|| self.plan.turn_checks())?;
        let each = checks.into_iter().map(|check| {
            let (rotation, reading, text) = (Angle(check.rotation), Angle(check.reading), check.text());
            let legs = (check.level_legs[0], check.level_legs[1]);
            let parts = (check.bend, rotation, check.words, check.clock, legs, check.read_leg, reading, text);
            made(py, "TurnCheck", parts)
        });
        each.collect()
    }

    /// The look that tells the part from its mirror image; None for a flat line, which has no hand.
    #[getter]
    fn hand_check(&self) -> PyResult<Option<HandCheck>> {
        error::compute(|| self.plan.hand_check().map(HandCheck))
    }

    /// What it means that the leg of `hand_check` points up, or does not: a problem (HAND_MISMATCH) for the mirror part,
    /// otherwise None; None also for a flat line.
    ///
    /// >>> import linewright as lw
    /// >>> end = lw.End(lw.Nut("M10x1", length="17 mm", bore="5.0 mm", nose="coned"), "double-45")
    /// >>> tube = lw.Tube("3/16 in", wall="0.028 in", material="copper-nickel")
    /// >>> path = lw.Path.from_straights(["60 mm"] * 3, bends=["45 deg"] * 2, rotations=["90 deg"], radius="14.3 mm")
    /// >>> bench = lw.Bench(former=lw.Former(as_formed="14.3 mm", grip="20 mm"),
    /// ...                  flare_tool=lw.FlareTool("double-45", clamp="13 mm", projection="4 mm"))
    /// >>> plan = lw.Line("T1", tube=tube, path=path, a=end, b=end).plan(bench)
    /// >>> plan.hand_check.up, plan.hand_problem(points_up=False).code
    /// (True, 'HAND_MISMATCH')
    #[pyo3(signature = (*, points_up))]
    fn hand_problem(&self, points_up: bool) -> PyResult<Option<Problem>> {
        let found = error::compute(|| self.plan.hand_check().and_then(|check| check.judge(points_up)))?;
        Ok(found.map(Problem))
    }

    /// The sum that makes a figure, line by line; the terms, rounded to 0.1 mm, add up to the figure shown. A figure is
    /// "finished length", "cut length", "mark 2", "setting 3", "end A flare after", "end A flare before" or
    /// "end B assembled".
    ///
    /// Raises `UnknownNameError`, `InputError` (NOT_KNOWN) where the plan does not know the figure.
    ///
    /// >>> import linewright as lw
    /// >>> end = lw.End(lw.Nut("M10x1", length="17 mm", bore="5.0 mm", nose="coned"), "double-45")
    /// >>> tube = lw.Tube("3/16 in", wall="0.028 in", material="copper-nickel")
    /// >>> path = lw.Path.from_straights(["60 mm"] * 3, bends=["45 deg"] * 2, rotations=["90 deg"], radius="14.3 mm")
    /// >>> bench = lw.Bench(former=lw.Former(as_formed="14.3 mm", grip="20 mm"),
    /// ...                  flare_tool=lw.FlareTool("double-45", clamp="13 mm", projection="4 mm"))
    /// >>> plan = lw.Line("T1", tube=tube, path=path, a=end, b=end).plan(bench)
    /// >>> print(plan.explain("end A assembled"))
    /// nut                                               17.0 mm
    /// back-off                                           3.0 mm
    /// = straight needed at A, assembled                 20.0 mm
    /// <BLANKLINE>
    #[pyo3(signature = (figure, /))]
    fn explain(&self, figure: &str) -> PyResult<String> {
        error::call(|| explain::explain(&self.plan, explain::Figure::from_name(figure)?))
    }

    /// Only what changed from this plan to another; empty for equal plans.
    ///
    /// >>> import linewright as lw
    /// >>> end = lw.End(lw.Nut("M10x1", length="17 mm", bore="5.0 mm", nose="coned"), "double-45")
    /// >>> tube = lw.Tube("3/16 in", wall="0.028 in", material="copper-nickel")
    /// >>> path = lw.Path.from_straights(["60 mm"] * 3, bends=["45 deg"] * 2, rotations=["90 deg"], radius="14.3 mm")
    /// >>> bench = lw.Bench(former=lw.Former(as_formed="14.3 mm", grip="20 mm"),
    /// ...                  flare_tool=lw.FlareTool("double-45", clamp="13 mm", projection="4 mm"))
    /// >>> plan = lw.Line("T1", tube=tube, path=path, a=end, b=end).plan(bench)
    /// >>> plan.changes(plan)
    /// []
    #[pyo3(signature = (other, /))]
    fn changes<'py>(&self, other: &Bound<'py, Plan>) -> PyResult<Vec<Bound<'py, PyAny>>> {
        let found = error::compute(|| explain::changes(&self.plan, &other.get().plan))?;
        let change =
            |change: explain::Change| made(other.py(), "Change", (change.what, change.before, change.after));
        found.into_iter().map(change).collect()
    }

    /// Everything found, the worst first.
    #[getter]
    fn problems(&self) -> Vec<Problem> {
        problems(self.plan.problems())
    }

    /// Every default the plan rests on, each once.
    #[getter]
    fn assumptions(&self) -> Vec<Assumption> {
        self.plan.assumptions().iter().cloned().map(Assumption).collect()
    }

    /// Whether a stop is open.
    #[getter]
    fn is_draft(&self) -> bool {
        self.plan.is_draft()
    }

    /// The bench card: ASCII text, at most 80 columns, one action a row, in working order.
    ///
    /// >>> import linewright as lw
    /// >>> end = lw.End(lw.Nut("M10x1", length="17 mm", bore="5.0 mm", nose="coned"), "double-45")
    /// >>> line = lw.Line("T1", tube=lw.Tube("3/16 in", wall="0.028 in", material="copper-nickel"),
    /// ...                path=lw.Path.from_straights(["400 mm"]), a=end, b=end)
    /// >>> bench = lw.Bench(former=lw.Former(as_formed="14.3 mm", grip="20 mm"),
    /// ...                  flare_tool=lw.FlareTool("double-45", clamp="13 mm", projection="4 mm"))
    /// >>> max(len(row) for row in line.plan(bench).card().splitlines())
    /// 80
    fn card(&self) -> PyResult<String> {
        error::compute(|| linewright::card::text(&self.plan))
    }

    fn __repr__(&self, py: Python<'_>) -> PyResult<String> {
        record::repr(self, py)
    }

    fn __hash__(&self, py: Python<'_>) -> PyResult<isize> {
        // Two benches can give one plan.
        self.line.__hash__(py)
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<Reduced<'py>> {
        record::reduce(self, py)
    }
}
