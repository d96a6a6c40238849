//! The two ends: the straight each needs, which is flared when, and which is left long.

use super::cut::{FlareUse, Term};
use super::{Datum, TOLERANCE_MM, shortfall};
use crate::bench::Bench;
use crate::code::Code;
use crate::line::Line;
use crate::problem::{Ledger, Part, Problem, Side, Value};
use crate::source::Source;
use crate::units::{Length, Rounding, length_text, mm, round_length, to_mm};

/// What an end straight must have room for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum MinimumKind {
    /// Flaring after bending: the clamp, what stands out of it, the nut behind it, and room to work.
    FlareAfter,
    /// Flaring before bending: the nut lies between flare and former, and the former must hold.
    FlareBefore,
    /// Assembly: the nut seats and can back off.
    Assembled,
}

impl MinimumKind {
    /// All needs, in the order they are listed.
    pub const ALL: [MinimumKind; 3] =
        [MinimumKind::FlareAfter, MinimumKind::FlareBefore, MinimumKind::Assembled];

    /// The name, the same in every language.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            MinimumKind::FlareAfter => "flare after",
            MinimumKind::FlareBefore => "flare before",
            MinimumKind::Assembled => "assembled",
        }
    }
}

/// One need of an end straight.
#[derive(Debug, Clone, PartialEq)]
pub struct Minimum {
    /// Which.
    pub kind: MinimumKind,
    /// The straight needed; None while the bench lacks the flare tool.
    pub need: Option<Length>,
    /// The smallest move of the bend away from the end that meets the need; zero where it is met.
    pub shortfall: Option<Length>,
    /// What the need is the sum of; empty where it is not known.
    pub terms: Vec<Term>,
}

/// When an end is flared.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum FlareOrder {
    /// Before the first bend.
    BeforeBending,
    /// After the last bend.
    AfterBending,
    /// The straight has room for neither.
    Neither,
}

impl FlareOrder {
    /// As it is printed and as the bindings spell it.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            FlareOrder::BeforeBending => "before bending",
            FlareOrder::AfterBending => "after bending",
            FlareOrder::Neither => "neither",
        }
    }
}

/// What is needed and planned at one end.
#[derive(Debug, Clone, PartialEq)]
pub struct EndPlan {
    pub(super) straight: Length,
    pub(super) minima: [Minimum; 3],
    pub(super) order: FlareOrder,
    pub(super) net: Option<Length>,
}

impl EndPlan {
    /// The finished straight at this end.
    #[must_use]
    pub fn straight(&self) -> Length {
        self.straight
    }

    /// The three needs: flare after bending, flare before bending, assembled.
    #[must_use]
    pub fn minima(&self) -> &[Minimum; 3] {
        &self.minima
    }

    /// When it is flared.
    #[must_use]
    pub fn order(&self) -> FlareOrder {
        self.order
    }

    /// How much the flare shortens the tube, if measured.
    #[must_use]
    pub fn net_shortening(&self) -> Option<Length> {
        self.net
    }

    fn need_after(&self) -> Option<Length> {
        self.minima.iter().find(|m| m.kind == MinimumKind::FlareAfter).and_then(|m| m.need)
    }

    /// The straight needed to flare after bending where the former holds this end while it is still raw, that is, by its
    /// shortening longer.
    fn held_raw(&self, grip: Length) -> Option<Length> {
        let raw = to_mm(grip) - self.net.map_or(0.0, to_mm);
        self.need_after().map(|need| mm(to_mm(need).max(raw)))
    }

    fn allows(&self, kind: MinimumKind) -> bool {
        self.minima.iter().any(|m| m.kind == kind && m.shortfall.is_some_and(|s| to_mm(s) == 0.0))
    }
}

/// Which end comes first, which is trimmed, and what each needs.
pub(super) struct Order {
    pub(super) first: Side,
    pub(super) trim_end: Option<Side>,
    pub(super) ends: [EndPlan; 2],
}

impl Order {
    pub(super) fn new(
        line: &Line,
        bench: &Bench,
        uses: &[FlareUse; 2],
        wanted: Option<Side>,
        problems: &mut Vec<Problem>,
        ledger: &mut Ledger,
    ) -> Order {
        let (clearance, clearance_assumed) = bench.clearance();
        let (back_off, back_off_assumed) = bench.back_off();
        if clearance_assumed {
            ledger.assume(
                "working clearance beside the flare tool",
                Value::Length(clearance),
                Source::common_practice(),
            );
        }
        if back_off_assumed {
            ledger.assume("back-off of a nut", Value::Length(back_off), Source::common_practice());
        }
        let mut ends = [Side::A, Side::B].map(|side| EndPlan {
            straight: end_straight(line, side),
            minima: minima(line, bench, side, uses[side as usize].net),
            order: FlareOrder::Neither,
            net: uses[side as usize].net,
        });
        let trim_end = trim_end(&ends, wanted, problems);
        let first = trim_end.map_or(Side::A, Side::other);
        let grip = bench.former().grip();
        for side in [Side::A, Side::B] {
            let end = &mut ends[side as usize];
            let after =
                if trim_end != Some(side) && side == first { end.held_raw(grip) } else { end.need_after() };
            // On a line without bends the end flared second has the other nut beside it.
            let is_second = side != first && line.path().bends().is_empty();
            let before = end.minima[MinimumKind::FlareBefore as usize].need.filter(|_| !is_second);
            end.order = if trim_end == Some(side) {
                FlareOrder::AfterBending
            } else if end.allows(MinimumKind::FlareBefore) && before.is_some() {
                FlareOrder::BeforeBending
            } else if after.is_some_and(|need| to_mm(shortfall(to_mm(end.straight), to_mm(need))) == 0.0) {
                FlareOrder::AfterBending
            } else {
                FlareOrder::Neither
            };
            report(line, side, end, [after, before], problems);
        }
        Order { first, trim_end, ends }
    }

    /// The flare face where the first end is flared before bending, otherwise the raw end.
    pub(super) fn datum(&self) -> Datum {
        match self.ends[self.first as usize].order {
            FlareOrder::BeforeBending => Datum::FlareFace(self.first),
            FlareOrder::AfterBending | FlareOrder::Neither => Datum::RawEnd(self.first),
        }
    }
}

fn end_straight(line: &Line, side: Side) -> Length {
    let straights = line.path().straights();
    let straight = match side {
        Side::A => straights.first(),
        Side::B => straights.last(),
    };
    straight.copied().unwrap_or(mm(0.0))
}

fn minima(line: &Line, bench: &Bench, side: Side, net: Option<Length>) -> [Minimum; 3] {
    let end = line.end(side);
    let nut = end.nut.length();
    let straight = to_mm(end_straight(line, side));
    // On a line without bends no former holds, and both nuts share the one straight.
    let other = line.path().bends().is_empty().then(|| line.end(side.other()).nut.length());
    let term = |what: &str, length: Length| Term { what: what.to_owned(), length };
    let minimum = |kind, terms: Vec<Term>| {
        let need = (!terms.is_empty()).then(|| mm(terms.iter().map(|t| to_mm(t.length)).sum()));
        Minimum { kind, need, shortfall: need.map(|need| shortfall(straight, to_mm(need))), terms }
    };
    // Without a test piece the smallest shortening that can be is none at all.
    let net = net.unwrap_or(mm(0.0));
    let after = bench.flare_tool(end.flare).map(|tool| {
        vec![
            term("projection", tool.projection()),
            term("clamp", tool.clamp()),
            term("nut", nut),
            term("clearance", bench.clearance().0),
            term("less net shortening", mm(0.0) - net),
        ]
    });
    let before = match other {
        // The end flared first has only its own nut behind the clamp.
        Some(_) => after.clone().unwrap_or_default(),
        None => vec![term("nut", nut), term("grip", bench.former().grip())],
    };
    let beside = |mut terms: Vec<Term>| {
        if let Some(other) = other.filter(|_| !terms.is_empty()) {
            terms.push(term("nut of the other end", other));
        }
        terms
    };
    [
        minimum(MinimumKind::FlareAfter, beside(after.unwrap_or_default())),
        minimum(MinimumKind::FlareBefore, before),
        minimum(MinimumKind::Assembled, beside(vec![term("nut", nut), term("back-off", bench.back_off().0)])),
    ]
}

/// The end that is left long: the one wanted if it can be, otherwise the longer of those that can be flared after
/// bending; of two equal ones B.
fn trim_end(ends: &[EndPlan; 2], wanted: Option<Side>, problems: &mut Vec<Problem>) -> Option<Side> {
    let longer = if to_mm(ends[0].straight) > to_mm(ends[1].straight) { Side::A } else { Side::B };
    let preferred = wanted.unwrap_or(longer);
    let chosen = [preferred, preferred.other()]
        .into_iter()
        .find(|s| ends[*s as usize].allows(MinimumKind::FlareAfter));
    // Without a flare tool nobody knows whether an end can be trimmed; the missing tool is reported as such.
    let is_known = ends.iter().all(|end| end.need_after().is_some());
    match (chosen, wanted) {
        (None, _) if !is_known => {}
        (None, _) => problems.push(Problem::new(Code::TrimEndNone, Part::Line)),
        (Some(side), Some(wanted)) if side != wanted => problems.push(
            Problem::new(Code::TrimEndNone, Part::End(wanted))
                .why("this end cannot be trimmed and flared after bending, so the other end is left long"),
        ),
        _ => {}
    }
    chosen
}

/// Reports an end without room, each with the smallest move that cures it.
fn report(
    line: &Line,
    side: Side,
    end: &EndPlan,
    [after, before]: [Option<Length>; 2],
    problems: &mut Vec<Problem>,
) {
    let straight = end.straight;
    if to_mm(straight) < -TOLERANCE_MM {
        // A bend that overlaps the end is reported as such.
        return;
    }
    let bends = line.path().bends().len();
    let bend = match side {
        Side::A => bends.min(1),
        Side::B => bends,
    };
    let cure = |by: Length| {
        let by = length_text(round_length(by, mm(0.1), Rounding::Up));
        match bend {
            0 => format!("lengthen the line by {by}, or join the two ports without tube"),
            _ => format!("move bend {bend} away from end {} by {by}", side.name()),
        }
    };
    let assembled = &end.minima[MinimumKind::Assembled as usize];
    if end.order == FlareOrder::Neither {
        let least = [after, before].into_iter().flatten().min_by(|a, b| to_mm(*a).total_cmp(&to_mm(*b)));
        if let Some(need) = least {
            let short = shortfall(to_mm(straight), to_mm(need));
            let after = after.map_or("not known".to_owned(), length_text);
            let before = before.map_or("not known".to_owned(), length_text);
            let why = match bend {
                0 => "the flare tool's clamp and the nuts have no room on this line".to_owned(),
                _ => format!("needed to flare after bending: {after}; to flare before bending: {before}"),
            };
            problems.push(
                Problem::new(Code::BendInClamp, Part::End(side))
                    .got(Value::Length(straight))
                    .need(Value::Length(need))
                    .why(why)
                    .fix(cure(short)),
            );
        }
    }
    if let (Some(need), Some(short)) = (assembled.need, assembled.shortfall)
        && to_mm(short) > 0.0
        && !slides_round(line, side, bend)
    {
        problems.push(
            Problem::new(Code::NutOnBend, Part::End(side))
                .got(Value::Length(straight))
                .need(Value::Length(need))
                .fix(cure(short)),
        );
    }
}

/// Whether the nut slides round the bend next to its end, as it does on a long sweep; then it needs no straight.
fn slides_round(line: &Line, side: Side, bend: usize) -> bool {
    let tightest = line.end(side).nut.tightest_curve(line.tube().od());
    let radius = line.path().bends().get(bend.wrapping_sub(1)).map(crate::Bend::radius);
    tightest.zip(radius).is_some_and(|(tightest, radius)| radius >= tightest)
}
