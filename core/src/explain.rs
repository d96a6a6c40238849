//! Where a figure of a plan comes from, as a sum that a person can follow; and what changed between two plans.

#[cfg(test)]
mod tests;

use crate::code::Code;
use crate::error::Error;
use crate::plan::{Datum, MinimumKind, Plan};
use crate::problem::{Part, Problem, Side, Value};
use crate::units::{Length, mm, to_deg, to_mm};
use std::fmt::Write;

/// A figure of a plan.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Figure {
    /// The finished length.
    FinishedLength,
    /// The cut length.
    CutLength,
    /// The mark of a bend, numbered from 1 at end A.
    Mark(usize),
    /// The setting of a bend.
    Setting(usize),
    /// A need of an end straight.
    EndMinimum(Side, MinimumKind),
}

/// A sum: its terms, and what they come to.
#[derive(Debug, Clone, PartialEq)]
pub struct Sum {
    /// What is added, in order; a term may be negative.
    pub terms: Vec<(String, Length)>,
}

impl Sum {
    fn new() -> Sum {
        Sum { terms: Vec::new() }
    }

    fn add(&mut self, what: impl Into<String>, length: Length) {
        self.terms.push((what.into(), length));
    }

    /// What the terms come to.
    #[must_use]
    pub fn total(&self) -> Length {
        mm(self.terms.iter().map(|(_, length)| to_mm(*length)).sum())
    }
}

/// Rounds terms to 0.1 mm so that the rounded terms still add up to the rounded total: what each rounding leaves over is
/// carried into the next.
fn carried(sum: &Sum) -> Vec<(String, f64)> {
    let mut exact = 0.0;
    let mut shown = 0.0;
    sum.terms
        .iter()
        .map(|(what, length)| {
            exact += to_mm(*length);
            let next = (exact * 10.0).round();
            let term = next - shown;
            shown = next;
            (what.clone(), term / 10.0)
        })
        .collect()
}

fn unknown(figure: &str) -> Error {
    Problem::new(Code::NotKnown, Part::Field("figure".to_owned()))
        .got(Value::text(figure))
        .need(Value::text("a figure that this plan knows"))
        .why("the plan does not know this figure; its problems say why")
        .fix("give the facts that the problems ask for")
        .into()
}

/// The sum behind a length of a plan.
///
/// # Errors
/// `NOT_KNOWN` where the plan does not know the figure, or has no such bend; settings are no sums, see [`explain`].
pub fn sum(plan: &Plan, figure: Figure) -> Result<Sum, Error> {
    match figure {
        Figure::FinishedLength => Ok(finished(plan)),
        Figure::CutLength => {
            let cut = plan.cut().ok_or_else(|| unknown("cut length"))?;
            let mut sum = finished(plan);
            // The first two terms of the cut are the straights and the arcs, told one by one here.
            cut.terms().iter().skip(2).for_each(|term| sum.add(term.what.clone(), term.length));
            Ok(sum)
        }
        Figure::Mark(bend) => mark(plan, bend),
        Figure::EndMinimum(side, kind) => minimum(plan, side, kind),
        Figure::Setting(_) => Err(unknown("the sum of a setting")),
    }
}

/// Legs less gains where the line has corners; otherwise straights and arcs.
fn finished(plan: &Plan) -> Sum {
    let path = plan.line().path();
    let mut sum = Sum::new();
    let gains: Result<Vec<Length>, Error> = path.bends().iter().map(crate::Bend::gain).collect();
    match (path.legs(), gains) {
        (Ok(legs), Ok(gains)) => {
            legs.iter().enumerate().for_each(|(i, leg)| sum.add(format!("leg {}", i + 1), *leg));
            gains
                .iter()
                .enumerate()
                .for_each(|(i, gain)| sum.add(format!("less gain {}", i + 1), mm(0.0) - *gain));
        }
        _ => {
            for (i, straight) in path.straights().iter().enumerate() {
                sum.add(format!("straight {}", i + 1), *straight);
                if let Some(bend) = path.bends().get(i) {
                    sum.add(format!("arc {}", i + 1), bend.arc());
                }
            }
        }
    }
    sum
}

fn mark(plan: &Plan, bend: usize) -> Result<Sum, Error> {
    let planned = plan.bends().iter().find(|b| b.number == bend).ok_or_else(|| unknown("mark"))?;
    planned.mark.ok_or_else(|| unknown("mark"))?;
    let path = plan.line().path();
    let count = path.bends().len();
    let backward = plan.first() == Side::B;
    let mut sum = Sum::new();
    if let Datum::RawEnd(side) = plan.datum() {
        let net = plan.end(side).net_shortening().ok_or_else(|| unknown("mark"))?;
        sum.add(format!("net shortening at {}", side.name()), net);
    }
    let order: Vec<usize> = if backward { (bend..=count).rev().collect() } else { (1..=bend).collect() };
    for number in order {
        let straight = if backward { number } else { number - 1 };
        sum.add(format!("straight {}", straight + 1), path.straights()[straight]);
        if number != bend {
            sum.add(format!("arc {number}"), path.bends()[number - 1].arc());
        }
    }
    Ok(sum)
}

fn minimum(plan: &Plan, side: Side, kind: MinimumKind) -> Result<Sum, Error> {
    let minimum =
        plan.end(side).minima().iter().find(|m| m.kind == kind).ok_or_else(|| unknown("end minimum"))?;
    if minimum.need.is_none() {
        return Err(unknown("end minimum"));
    }
    let mut sum = Sum::new();
    minimum.terms.iter().for_each(|term| sum.add(term.what.clone(), term.length));
    Ok(sum)
}

/// A figure in words, with the sum that makes it; the terms, rounded to 0.1 mm, add up to the figure shown.
///
/// # Errors
/// `NOT_KNOWN` where the plan does not know the figure.
pub fn explain(plan: &Plan, figure: Figure) -> Result<String, Error> {
    if let Figure::Setting(bend) = figure {
        return setting(plan, bend);
    }
    let sum = sum(plan, figure)?;
    let mut text = String::new();
    for (what, value) in carried(&sum) {
        // Writing to a string cannot fail.
        let _ = writeln!(text, "{what:<44}{value:>10.1} mm");
    }
    let total = (to_mm(sum.total()) * 10.0).round() / 10.0;
    let _ = writeln!(text, "{:<44}{total:>10.1} mm", title(plan, figure));
    Ok(text)
}

fn title(plan: &Plan, figure: Figure) -> String {
    match figure {
        Figure::FinishedLength => "= finished length".to_owned(),
        Figure::CutLength => "= cut length before rounding".to_owned(),
        Figure::Mark(bend) => format!("= mark {bend} from {}", plan.datum().name()),
        Figure::Setting(bend) => format!("= setting {bend}"),
        Figure::EndMinimum(side, kind) => format!("= straight needed at {}, {}", side.name(), kind.name()),
    }
}

fn setting(plan: &Plan, bend: usize) -> Result<String, Error> {
    let planned = plan.bends().iter().find(|b| b.number == bend).ok_or_else(|| unknown("setting"))?;
    let (Some(set), Some(springback)) = (planned.setting, plan.springback()) else {
        return Err(unknown("setting"));
    };
    Ok(format!(
        "(wanted {:.2} deg + constant {:.2} deg) / (1 - proportional {:.5}) = setting {:.2} deg\n",
        to_deg(planned.angle),
        to_deg(springback.constant()),
        springback.proportional().value,
        to_deg(set)
    ))
}

/// One difference between two plans.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Change {
    /// What changed.
    pub what: String,
    /// How it was.
    pub before: String,
    /// How it is.
    pub after: String,
}

/// Only what changed from one plan to another: steps, findings and assumptions as they are printed, and the exact
/// figures behind them. Empty for equal plans.
#[must_use]
pub fn changes(before: &Plan, after: &Plan) -> Vec<Change> {
    let (old, new) = (figures(before), figures(after));
    let mut found = Vec::new();
    for (what, value) in &old {
        let now = new.iter().find(|(name, _)| name == what).map_or(GONE, |(_, now)| now);
        if now != value {
            found.push(Change { what: what.clone(), before: value.clone(), after: now.to_owned() });
        }
    }
    for (what, value) in new.iter().filter(|(what, _)| !old.iter().any(|(name, _)| name == what)) {
        found.push(Change { what: what.clone(), before: GONE.to_owned(), after: value.clone() });
    }
    found
}

/// Stands for what one of the plans does not have.
const GONE: &str = "-";

/// Every figure of a plan under a name.
fn figures(plan: &Plan) -> Vec<(String, String)> {
    let exact =
        |length: Option<Length>| length.map_or("not known".to_owned(), crate::units::exact_length_text);
    let mut all = vec![
        ("name".to_owned(), plan.line().name().to_owned()),
        ("bench".to_owned(), plan.bench_revision().to_owned()),
        ("finished length".to_owned(), exact(Some(plan.finished_length()))),
        ("cut length".to_owned(), exact(plan.cut().map(crate::plan::CutLength::length))),
        ("marks from".to_owned(), plan.datum().name().to_owned()),
    ];
    for bend in plan.bends() {
        all.push((format!("mark {}", bend.number), exact(bend.mark)));
        let set = bend.setting.map_or("not known".to_owned(), crate::units::exact_angle_text);
        all.push((format!("setting {}", bend.number), set));
    }
    for (i, step) in plan.steps().iter().enumerate() {
        let locked = if step.locked { " (locked)" } else { "" };
        all.push((format!("step {}", i + 1), format!("{}{locked}", step.text)));
    }
    for problem in plan.problems() {
        let lifted =
            problem.lifted.as_ref().map_or(String::new(), |l| format!("; lifted by {}: {}", l.who, l.why));
        all.push((problem.id(), format!("{problem}{lifted}")));
    }
    for assumption in plan.assumptions() {
        all.push((
            format!("assumed {}", assumption.what),
            format!("{} ({})", assumption.value, assumption.basis),
        ));
    }
    all
}

impl Figure {
    /// Reads a figure by its name: `"cut length"`, `"finished length"`, `"mark 2"`, `"setting 3"`, `"end A flare after"`,
    /// `"end B flare before"`, `"end A assembled"`.
    ///
    /// # Errors
    /// `UNKNOWN_NAME` with examples.
    pub fn from_name(name: &str) -> Result<Figure, Error> {
        let words: Vec<&str> = name.split_whitespace().collect();
        let figure = match words[..] {
            ["finished", "length"] => Some(Figure::FinishedLength),
            ["cut", "length"] => Some(Figure::CutLength),
            ["mark", bend] => bend.parse().ok().map(Figure::Mark),
            ["setting", bend] => bend.parse().ok().map(Figure::Setting),
            ["end", side, ref rest @ ..] => {
                let side = match side {
                    "A" => Some(Side::A),
                    "B" => Some(Side::B),
                    _ => None,
                };
                let kind = MinimumKind::ALL.into_iter().find(|k| k.name() == rest.join(" "));
                side.zip(kind).map(|(side, kind)| Figure::EndMinimum(side, kind))
            }
            _ => None,
        };
        figure.ok_or_else(|| {
            Problem::new(Code::UnknownName, Part::Field("figure".to_owned()))
                .got(Value::text(name))
                .need(Value::text(
                    "finished length, cut length, mark 1, setting 1, end A flare after, end A flare before or \
                     end A assembled",
                ))
                .into()
        })
    }
}
