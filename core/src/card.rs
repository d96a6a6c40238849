//! The bench card of a plan as text: 80 columns, ASCII, one action a row, in working order.
//!
//! Gates reach across the full width and break the rhythm on purpose. Open stops, defaults and the standing cautions
//! belong to the card; nothing switches them off.

mod cautions;
mod page;
mod springback;
mod svg;
#[cfg(test)]
mod tests;

use crate::check::{Spot, TapeCheck};
use crate::line::End;
use crate::plan::{Plan, PlannedBend, StepKind, angles_text, both_units, turn_text};
use crate::problem::{Problem, Side};
use crate::units::{Length, Rounding, length_text, to_mm};
use page::Page;

pub use springback::springback_page;

/// The card. Every line is at most 80 ASCII characters.
#[must_use]
pub fn text(plan: &Plan) -> String {
    let mut page = Page::default();
    heading(plan, &mut page);
    steps(plan, &mut page);
    findings(plan, &mut page);
    cautions(plan, &mut page);
    record(plan, &mut page);
    page.finish()
}

fn title(plan: &Plan, page: &mut Page) {
    let state = if plan.is_draft() { "DRAFT - stops are open" } else { "bench card" };
    page.bar('=');
    page.split(&format!("LINE {}", plan.line().name()), state);
    page.bar('=');
}

fn heading(plan: &Plan, page: &mut Page) {
    title(plan, page);
    let tube = plan.line().tube();
    let (od, wall) = (length_text(tube.od()), length_text(tube.wall()));
    let revision = if plan.bench_revision().is_empty() { "not named" } else { plan.bench_revision() };
    page.split(&format!("tube {od} x {wall}, {}", tube.material().name()), &format!("bench {revision}"));
    for side in [Side::A, Side::B] {
        page.wrapped(&format!("{}  ", side.name()), &end_text(plan.line().end(side), tube.wall()));
    }
    page.bar('-');
    let cut = plan.cut().map_or("NOT KNOWN".to_owned(), |cut| both_units(cut.length(), Rounding::Up));
    let finished = Some(plan.finished_length()).filter(|length| to_mm(*length) > 0.0);
    let finished = finished.map_or("NOT KNOWN".to_owned(), length_text);
    page.split(&format!("CUT  {cut}"), &format!("finished {finished}"));
    let trim = match plan.trim_end() {
        Some(side) => format!("end {} stays long and is trimmed last", side.name()),
        None if plan.cut().is_none() => "trim end NOT KNOWN".to_owned(),
        None => "UNFORGIVING: no end can be trimmed, make a wire dummy first".to_owned(),
    };
    page.split(&format!("marks FROM {}", plan.datum().name().to_uppercase()), &trim);
    page.bar('-');
}

fn end_text(end: &End, wall: Length) -> String {
    let known = |text: Option<String>, what: &str| text.unwrap_or(format!("{what} NOT KNOWN"));
    let nut = known(end.nut.thread().map(|t| format!("nut {t}")), "nut thread");
    let nose = known(end.nut.nose().map(|n| format!("{} nose", n.name())), "nose");
    let port = match &end.port {
        None => "port NOT RECORDED".to_owned(),
        Some(port) => {
            let name = if port.name.is_empty() { "port" } else { &port.name };
            let thread = known(port.thread.map(|t| t.to_string()), "thread");
            format!("{name}: {thread}, {}", known(port.seat.map(|s| format!("{} seat", s.name())), "seat"))
        }
    };
    // What the eye can compare when the nut is snug.
    let snug = match end.clamp_margin(wall) {
        Some(margin) => format!(
            "when snug at least {} under the head, {} of thread in the port",
            length_text(margin.under_head),
            length_text(margin.engaged)
        ),
        None => "room under the head when snug NOT KNOWN".to_owned(),
    };
    format!("{port} | {nut}, {nose}, {} flare | {snug}", end.flare.name())
}

fn steps(plan: &Plan, page: &mut Page) {
    let mut number = 0;
    let mut told = false;
    for step in plan.steps() {
        if step.locked && !told {
            told = true;
            page.gate('!', "", "LOCKED FROM HERE ON UNTIL THE STOPS BELOW ARE CLEARED");
        }
        let tick = if step.locked { "[-]" } else { "[ ]" };
        if step.kind == StepKind::TrialFit {
            whole_line(plan, page);
        }
        if step.kind.is_gate() {
            page.gate('#', tick, &step.text);
            continue;
        }
        number += 1;
        let lead = format!("{tick} {number:>2}  ");
        match (step.kind, plan.bends()) {
            (StepKind::Bend(n), bends) => {
                bends.iter().filter(|b| b.number == n).for_each(|bend| bend_rows(plan, bend, &lead, page));
            }
            (StepKind::Mark, _) => {
                page.wrapped(&lead, &step.text);
                marks(plan, page);
            }
            _ => page.wrapped(&lead, &step.text),
        }
    }
}

/// The turn first, because the tube is turned before it is bent; the setting alone in its box at the right.
fn bend_rows(plan: &Plan, bend: &PlannedBend, lead: &str, page: &mut Page) {
    page.split(&format!("{lead}BEND {0} at mark {0}", bend.number), &angles_text(bend));
    page.split(&format!("        {}", turn_text(plan, bend)), "as bent: ______");
    if let Some(turn) = plan.turn_checks().iter().find(|t| t.bend == bend.number) {
        page.wrapped("        ", &format!("CHECK  {}", turn.text()));
    }
    for check in plan.tape_checks().iter().filter(|c| last_mark(plan, c) == Some(bend.number)) {
        page.wrapped("        ", &tape_text(check));
    }
}

/// A change smaller than this does not show on a tape held against a bent tube (ours, no source).
const TAPE_SHOWS_MM: f64 = 4.0;

/// The bend after which a distance can be measured: its far point is the next mark. None for a distance that shows
/// nothing, and for one to the end that is still raw.
fn last_mark(plan: &Plan, check: &TapeCheck) -> Option<usize> {
    let Spot::Mark(far) = check.to else { return None };
    let before = if plan.first() == Side::A { far.checked_sub(1) } else { Some(far + 1) };
    before.filter(|_| to_mm(check.change) >= TAPE_SHOWS_MM)
}

fn tape_text(check: &TapeCheck) -> String {
    let distance = both_units(check.distance, Rounding::Nearest);
    format!("CHECK  {} to {}, straight across: {distance} (+-3 mm)", check.from, check.to)
}

/// The marks in the order the tape passes them.
fn marks(plan: &Plan, page: &mut Page) {
    let mut bends: Vec<_> = plan.bends().iter().collect();
    if plan.first() == Side::B {
        bends.reverse();
    }
    for bend in bends {
        let mark = bend.mark.map_or("NOT KNOWN".to_owned(), |mark| both_units(mark, Rounding::Nearest));
        page.plain(&format!("          mark {}:  {mark}", bend.number));
    }
}

fn finding(problem: &Problem, page: &mut Page) {
    page.wrapped("  ", &problem.to_string());
    if let Some(lifted) = &problem.lifted {
        page.wrapped("    ", &format!("LIFTED by {}: {}", lifted.who, lifted.why));
    }
}

/// What is looked at on the whole line: its hand, and distances that need its last end.
fn whole_line(plan: &Plan, page: &mut Page) {
    if let Some(hand) = plan.hand_check() {
        page.wrapped("        ", &format!("HAND   {}. Otherwise it is the mirror part.", hand.text()));
    }
}

fn findings(plan: &Plan, page: &mut Page) {
    let (open, rest): (Vec<_>, Vec<_>) = plan.problems().iter().partition(|p| p.is_open());
    page.bar('-');
    page.plain(if open.is_empty() { "No stop is open." } else { "OPEN STOPS" });
    open.iter().for_each(|p| finding(p, page));
    if !rest.is_empty() {
        page.plain("ALSO FOUND");
        rest.iter().for_each(|p| finding(p, page));
    }
    page.plain(if plan.assumptions().is_empty() { "Nothing was assumed." } else { "ASSUMED" });
    for assumption in plan.assumptions() {
        page.wrapped("  ", &assumption.to_string());
    }
}

fn cautions(plan: &Plan, page: &mut Page) {
    page.bar('-');
    page.plain("CAUTIONS");
    let (more, settings) = (cautions::for_line(plan.line()), cautions::settings(plan));
    for (i, caution) in cautions::STANDING.iter().copied().chain([&*settings]).chain(more).enumerate() {
        page.wrapped(&format!("{:>3} ", i + 1), caution);
    }
}

fn record(plan: &Plan, page: &mut Page) {
    page.bar('-');
    page.plain("made by ______________  date __________  looked at by ______________");
    page.split("", &format!("linewright {}", env!("CARGO_PKG_VERSION")));
    title(plan, page);
}
