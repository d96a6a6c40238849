//! The steps in working order. The gates are part of the order itself: nothing removes them.

use super::{Datum, FlareOrder, Plan, PlannedBend};
use crate::bend::Making;
use crate::code::Locks;
use crate::problem::{Part, Problem, Side};
use crate::units::{
    Angle, Length, Rounding, deg, inch_text, length_text, mm, round_angle, round_length, to_deg, to_mm,
};

/// What a step is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum StepKind {
    /// Cut the tube.
    Cut,
    /// Gate: the nut of an end is on the tube, the right way round.
    NutGate(Side),
    /// Flare an end.
    Flare(Side),
    /// Gate: the flare was looked at.
    LookGate(Side),
    /// Put all marks on the straight tube.
    Mark,
    /// Make the bend of this number.
    Bend(usize),
    /// Gate: the line was tried on the vehicle.
    TrialFit,
    /// Trim the end that was left long.
    Trim(Side),
    /// Blow through, cap, tag.
    Finish,
}

impl StepKind {
    /// Whether it is a gate: to be confirmed before the next step.
    #[must_use]
    pub fn is_gate(self) -> bool {
        matches!(self, StepKind::NutGate(_) | StepKind::LookGate(_) | StepKind::TrialFit)
    }

    /// The name, the same in every language.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            StepKind::Cut => "cut",
            StepKind::NutGate(_) => "nut gate",
            StepKind::Flare(_) => "flare",
            StepKind::LookGate(_) => "look gate",
            StepKind::Mark => "mark",
            StepKind::Bend(_) => "bend",
            StepKind::TrialFit => "trial fit",
            StepKind::Trim(_) => "trim",
            StepKind::Finish => "finish",
        }
    }
}

/// One step.
#[derive(Debug, Clone, PartialEq)]
pub struct Step {
    /// What it is.
    pub kind: StepKind,
    /// What to do, in words and rounded figures.
    pub text: String,
    /// Whether an open stop holds it back.
    pub locked: bool,
}

/// Figures on paper go by these steps: what a hand can measure and set.
pub(crate) const PAPER_MM: f64 = 0.5;
const PAPER_DEG: f64 = 0.5;

/// A length in both units: `"1079.5 mm  42 1/2 in"`. Less than nothing, as bends that overlap give, is no figure.
pub(crate) fn both_units(length: Length, rounding: Rounding) -> String {
    if to_mm(length) < 0.0 {
        return "NOT KNOWN".to_owned();
    }
    let rounded = to_mm(round_length(length, mm(PAPER_MM), rounding));
    format!("{rounded:.1} mm  {} in", inch_text(length, rounding))
}

/// An angle on paper: `"31.0"`.
pub(crate) fn paper_angle(angle: Angle, rounding: Rounding) -> String {
    format!("{:.1}", to_deg(round_angle(angle, deg(PAPER_DEG), rounding)))
}

/// All steps of a plan.
pub(super) fn steps(plan: &Plan) -> Vec<Step> {
    let order = |side: Side| plan.end(side).order();
    let mut kinds = vec![StepKind::Cut];
    let sides = [plan.first, plan.first.other()];
    for side in sides.into_iter().filter(|s| order(*s) == FlareOrder::BeforeBending) {
        // Where neither end can be trimmed later, what was cut as spare comes off the straight tube.
        if plan.trim_end.is_none() && side != plan.first {
            kinds.push(StepKind::Trim(side));
        }
        kinds.extend([StepKind::NutGate(side), StepKind::Flare(side), StepKind::LookGate(side)]);
    }
    if !plan.bends().is_empty() {
        kinds.push(StepKind::Mark);
    }
    let mut bends: Vec<usize> = plan.bends().iter().map(|b| b.number).collect();
    if plan.first == Side::B {
        bends.reverse();
    }
    kinds.extend(bends.into_iter().map(StepKind::Bend));
    // The end that stays is flared before the trial fit. The last end carries the spare: it is trimmed by the trial fit
    // and flared after it, also where a person lifted the stop that it has no room for that.
    let late = |side: &Side| order(*side) != FlareOrder::BeforeBending;
    let last = plan.trim_end.or(Some(plan.first.other()).filter(late));
    for side in sides.into_iter().filter(late).filter(|s| last != Some(*s)) {
        kinds.extend([StepKind::NutGate(side), StepKind::Flare(side), StepKind::LookGate(side)]);
    }
    kinds.push(StepKind::TrialFit);
    if let Some(side) = last {
        kinds.extend([
            StepKind::Trim(side),
            StepKind::NutGate(side),
            StepKind::Flare(side),
            StepKind::LookGate(side),
        ]);
    }
    kinds.push(StepKind::Finish);
    let locked_from = plan.problems.iter().filter_map(|p| locked_step(plan, p, &kinds)).min();
    kinds
        .into_iter()
        .enumerate()
        .map(|(i, kind)| Step {
            kind,
            text: text(plan, kind),
            locked: locked_from.is_some_and(|from| i >= from),
        })
        .collect()
}

/// The first step that an open stop holds back.
fn locked_step(plan: &Plan, problem: &Problem, kinds: &[StepKind]) -> Option<usize> {
    if !problem.is_open() {
        return None;
    }
    match problem.code.row().locks {
        Locks::Nothing => None,
        Locks::Line => Some(0),
        Locks::Bend => {
            // A straight holds back the bend that is made after it.
            let number = match problem.part {
                Part::Bend(n) => n,
                Part::Straight(n) if plan.first == Side::A => n,
                Part::Straight(n) => n.saturating_sub(1),
                _ => return Some(0),
            };
            Some(kinds.iter().position(|k| *k == StepKind::Bend(number)).unwrap_or(0))
        }
    }
}

fn text(plan: &Plan, kind: StepKind) -> String {
    match kind {
        StepKind::Cut => match plan.cut() {
            Some(cut) => {
                format!("CUT {}. Slowly, square. Ream. Blow out.", both_units(cut.length(), Rounding::Up))
            }
            None => "CUT length NOT KNOWN. Do not cut.".to_owned(),
        },
        StepKind::NutGate(side) => super::loading::gate_text(plan.line.end(side), side),
        StepKind::Flare(side) => {
            let flare = plan.line.end(side).flare;
            let strokes = match flare.strokes() {
                1 => "one stroke",
                _ => "two strokes",
            };
            let flare = format!("{}, {strokes}. Hold the nut clear.", flare.name());
            if plan.line.end(side).flared_in_place {
                let room = plan.end(side).minima()[0]
                    .need
                    .map_or("NOT KNOWN".to_owned(), |need| both_units(need, Rounding::Up));
                format!(
                    "FLARE {} IN PLACE on the vehicle, on {room} of straight, clear tube: {flare}",
                    side.name()
                )
            } else {
                format!("FLARE {}: {flare}", side.name())
            }
        }
        StepKind::LookGate(side) => format!("LOOK AT FLARE {}: EVEN?  CENTERED?  NO CRACK?", side.name()),
        StepKind::Mark => {
            format!(
                "MARK where each bend starts, all on the straight tube, FROM {}.",
                plan.datum.name().to_uppercase()
            )
        }
        StepKind::Bend(number) => match plan.bends().iter().find(|b| b.number == number) {
            Some(bend) => bend_text(plan, bend),
            None => String::new(),
        },
        StepKind::TrialFit => "TRIAL FIT ON THE VEHICLE.  BOTH ENDS ENTER STRAIGHT?".to_owned(),
        StepKind::Trim(side) => trim_text(plan, side),
        StepKind::Finish => "BLOW THROUGH both ways. Cap both ends. Tag the line.".to_owned(),
    }
}

fn bend_text(plan: &Plan, bend: &PlannedBend) -> String {
    format!("BEND {0} at mark {0}: {1}, {2}", bend.number, turn_text(plan, bend), angles_text(bend))
}

/// What shall remain, and apart from it what to bend to.
pub(crate) fn angles_text(bend: &PlannedBend) -> String {
    if bend.making != Making::Former {
        let how = if bend.making == Making::Hand { "by hand" } else { "round a mandrel" };
        let wanted = paper_angle(bend.angle, Rounding::Nearest);
        return format!("{how}, R {}   wanted {wanted}", length_text(bend.radius));
    }
    let set = bend.setting.map_or("NOT KNOWN".to_owned(), |s| paper_angle(s, Rounding::Down));
    format!("wanted {}   SET |{set}|", paper_angle(bend.angle, Rounding::Nearest))
}

/// The turn of the bend plane in words, looking along the direction of work.
pub(crate) fn turn_text(plan: &Plan, bend: &PlannedBend) -> String {
    let Some(rotation) = bend.rotation else { return "first plane".to_owned() };
    let degrees = to_deg(round_angle(rotation, deg(PAPER_DEG), Rounding::Nearest));
    let (from, to) = (plan.first.name(), plan.first.other().name());
    let way = if degrees > 0.0 { "clockwise" } else { "anticlockwise" };
    if degrees == 0.0 {
        "same plane as the last".to_owned()
    } else if degrees.abs() >= 180.0 {
        "flip over (180)".to_owned()
    } else {
        format!("plane {:.1} {way} of the last, looking {from} to {to}", degrees.abs())
    }
}

fn trim_text(plan: &Plan, side: Side) -> String {
    let net = |side: Side| plan.end(side).net_shortening();
    // What a flare without a test piece takes of its 5 mm is not known, so neither is what remains of them.
    let about = if net(Side::A).and(net(Side::B)).is_some() { "about" } else { "at most" };
    let off = plan.cut().map_or("what comes off is NOT KNOWN".to_owned(), |cut| {
        let spare = length_text(round_length(cut.spare(), mm(PAPER_MM), Rounding::Nearest));
        format!("{about} {spare} comes off")
    });
    let is_straight = plan.end(side).order() == FlareOrder::BeforeBending;
    let place = match (is_straight, plan.datum) {
        (false, _) => net(side).map(|net| {
            let beyond = length_text(round_length(net, mm(0.1), Rounding::Nearest));
            format!("{beyond} beyond the fitted flare face")
        }),
        (true, Datum::FlareFace(first)) => net(side).map(|net| {
            let at = both_units(plan.finished_length() + net, Rounding::Nearest);
            format!("{at} from flare {}", first.name())
        }),
        (true, Datum::RawEnd(first)) => net(side).zip(net(first)).map(|(net, other)| {
            let at = both_units(plan.finished_length() + net + other, Rounding::Nearest);
            format!("{at} from raw end {}", first.name())
        }),
    };
    match place {
        Some(place) => format!("TRIM {} to {place} ({off}).", side.name()),
        None => {
            format!("TRIM {} only as far as a test piece of the flare says ({off}).", side.name())
        }
    }
}
