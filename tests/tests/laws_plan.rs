//! Laws of plans and cards that hold whatever the line, the bench and the options are.

#[path = "../common/mod.rs"]
mod common;

use common::{random, sample};
use linewright::code::Locks;
use linewright::plan::{Datum, FlareOrder, Step, StepKind};
use linewright::units::{mm, to_deg, to_mm};
use linewright::{Level, Line, Plan, PlanOptions, Problem, Side, card};
use proptest::prelude::*;
use std::collections::BTreeSet;

/// What every card must say, in words that nobody may shorten away.
const CAUTIONS: [&str; 12] = [
    "People brake with this line.",
    "The card is arithmetic, not an approval",
    "Before each flare: nut on, threads toward the end.",
    "Cut off a flare that is cracked or one-sided",
    "Thread, seat and nose must all agree.",
    "Start every nut by hand",
    "Never pull a line into place with its nut.",
    "No sealant, tape or paste on flare joints",
    "ream, blow out, cap",
    "Nothing that moves, is hot or is sharp may touch the line",
    "look for leaks with the pedal held",
    "stop short and top up",
];

/// A plan that shows itself as its card: what a person can read when a law does not hold.
struct Planned(Plan);

impl std::fmt::Debug for Planned {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{:?}\n{}", self.0.line().path(), card::text(&self.0))
    }
}

impl std::ops::Deref for Planned {
    type Target = Plan;

    fn deref(&self) -> &Plan {
        &self.0
    }
}

fn plans() -> impl Strategy<Value = Planned> {
    (random::line(), random::bench(), random::options())
        .prop_map(|(line, bench, options)| Planned(Plan::new(&line, &bench, &options)))
}

fn kinds(plan: &Plan) -> Vec<StepKind> {
    plan.steps().iter().map(|step| step.kind).collect()
}

/// The number that stands behind these words.
fn figure(text: &str, words: &str) -> Result<f64, TestCaseError> {
    let at = text.find(words).ok_or_else(|| TestCaseError::fail(format!("no {words} in {text}")))?;
    let number: String =
        text[at + words.len()..].trim_start().chars().take_while(|c| "-0123456789.".contains(*c)).collect();
    number.parse().map_err(|_| TestCaseError::fail(format!("no number behind {words} in {text}")))
}

fn position(kinds: &[StepKind], kind: StepKind) -> Result<usize, TestCaseError> {
    let found: Vec<usize> = (0..kinds.len()).filter(|i| kinds[*i] == kind).collect();
    match found[..] {
        [one] => Ok(one),
        _ => Err(TestCaseError::fail(format!("{kind:?} is there {} times: {kinds:?}", found.len()))),
    }
}

proptest! {
    #![proptest_config(random::config(10_000))]

    #[test]
    fn every_flare_stands_between_its_gates(plan in plans()) {
        let kinds = kinds(&plan);
        for side in [Side::A, Side::B] {
            let flare = position(&kinds, StepKind::Flare(side))?;
            prop_assert_eq!(kinds.get(flare.wrapping_sub(1)), Some(&StepKind::NutGate(side)));
            prop_assert_eq!(kinds.get(flare + 1), Some(&StepKind::LookGate(side)));
            position(&kinds, StepKind::NutGate(side))?;
            position(&kinds, StepKind::LookGate(side))?;
            let gate = &plan.steps()[flare - 1].text;
            prop_assert!(gate.contains(&format!("THREADS TO END {}", side.name())), "{gate}");
        }
        // Both nuts are loaded, each once and from its own end.
        for side in [Side::A, Side::B] {
            let nut = format!("nut {} (", side.name());
            let loaded = plan.loading().into_iter().filter(|part| part.what.starts_with(&nut)).collect::<Vec<_>>();
            prop_assert!(loaded.len() == 1 && loaded[0].side == side, "{loaded:?}");
        }
    }

}

proptest! {
    #![proptest_config(random::config(2_000))]

    #[test]
    fn the_order_of_work_can_be_worked(plan in plans()) {
        let kinds = kinds(&plan);
        prop_assert_eq!(kinds.first(), Some(&StepKind::Cut));
        prop_assert_eq!(kinds.last(), Some(&StepKind::Finish));
        let fit = position(&kinds, StepKind::TrialFit)?;
        let number = |kind: &StepKind| if let StepKind::Bend(n) = kind { Some(*n) } else { None };
        let bends: Vec<usize> = kinds.iter().filter_map(number).collect();
        let mut wanted: Vec<usize> = (1..=plan.bends().len()).collect();
        if plan.first() == Side::B {
            wanted.reverse();
        }
        prop_assert_eq!(bends, wanted);
        for (i, kind) in kinds.iter().enumerate() {
            if let StepKind::Bend(_) = kind {
                prop_assert!(position(&kinds, StepKind::Mark)? < i && i < fit);
            }
        }
        for side in [Side::A, Side::B] {
            let flare = position(&kinds, StepKind::Flare(side))?;
            let first_bend = kinds.iter().position(|k| matches!(k, StepKind::Bend(_)));
            match plan.end(side).order() {
                FlareOrder::BeforeBending => prop_assert!(first_bend.is_none_or(|bend| flare < bend)),
                FlareOrder::AfterBending | FlareOrder::Neither => {
                    prop_assert!(first_bend.is_none_or(|bend| flare > bend));
                }
            }
            // The last end that is flared after bending carries the spare, whether or not it has the room for that.
            let is_last = plan.first() != side && plan.end(side).order() != FlareOrder::BeforeBending;
            prop_assert!(plan.trim_end() != Some(side) || is_last, "work starts at the end that is left long");
            if is_last {
                prop_assert!(position(&kinds, StepKind::Trim(side))? > fit && flare > fit);
            } else {
                prop_assert!(flare < fit, "an end that stays is flared before the trial fit");
            }
        }
    }

    #[test]
    fn marks_ascend_from_the_datum(plan in plans()) {
        let path = plan.line().path();
        prop_assert_eq!(plan.datum().side(), plan.first());
        let mut bends: Vec<_> = plan.bends().iter().collect();
        if plan.first() == Side::B {
            bends.reverse();
        }
        for bend in &bends {
            let raw = matches!(plan.datum(), Datum::RawEnd(_));
            prop_assert_eq!(bend.mark, if raw { bend.from_raw_end } else { Some(bend.from_flare_face) });
            let net = plan.end(plan.first()).net_shortening();
            prop_assert_eq!(net.is_some(), bend.from_raw_end.is_some());
            if let (Some(net), Some(raw)) = (net, bend.from_raw_end) {
                prop_assert!((to_mm(raw) - to_mm(bend.from_flare_face) - to_mm(net)).abs() <= 1e-9);
            }
        }
        if path.straights().iter().all(|straight| to_mm(*straight) >= 0.0) {
            for pair in bends.windows(2) {
                prop_assert!(pair[0].from_flare_face <= pair[1].from_flare_face);
                prop_assert!(pair[0].mark <= pair[1].mark);
            }
            for bend in bends {
                prop_assert!(to_mm(bend.from_flare_face) >= 0.0);
                prop_assert!(bend.from_flare_face <= plan.finished_length());
            }
        }
    }

    #[test]
    fn the_cut_is_the_sum_of_its_terms(plan in plans()) {
        let Some(cut) = plan.cut() else {
            // Bends that overlap by more than the line is long leave nothing to cut.
            let nothing = to_mm(plan.finished_length()) < 0.0;
            let missing = |p: &Problem| {
                matches!(p.code.name(), "FLARE_TOOL_MISSING" | "FLARE_NET_UNKNOWN")
                    || nothing && p.code.name() == "STRAIGHT_NEGATIVE"
            };
            prop_assert!(plan.problems().iter().any(missing), "no cut length and no reason");
            prop_assert!(plan.is_draft());
            return Ok(());
        };
        let sum: f64 = cut.terms().iter().map(|term| to_mm(term.length)).sum();
        prop_assert_eq!(to_mm(cut.length()).to_bits(), sum.to_bits());
        prop_assert!(cut.length() >= plan.finished_length());
        let nets: f64 =
            [Side::A, Side::B].iter().filter_map(|side| plan.end(*side).net_shortening()).map(to_mm).sum();
        let rest = to_mm(plan.finished_length()) + nets + to_mm(cut.spare());
        prop_assert!((to_mm(cut.length()) - rest).abs() <= 1e-9);
    }

    #[test]
    fn what_was_cut_as_spare_comes_off_once(plan in plans()) {
        let trims = kinds(&plan).iter().filter(|kind| matches!(kind, StepKind::Trim(_))).count();
        if plan.cut().is_some_and(|cut| to_mm(cut.spare()) > 0.0) {
            prop_assert_eq!(trims, 1, "the spare has no step that takes it off");
        }
    }

    #[test]
    fn findings_are_told_apart_and_the_worst_comes_first(plan in plans()) {
        let ids: Vec<String> = plan.problems().iter().map(Problem::id).collect();
        let different: BTreeSet<&String> = ids.iter().collect();
        prop_assert_eq!(ids.len(), different.len(), "{:?}", ids);
        let levels: Vec<Level> = plan.problems().iter().map(Problem::level).collect();
        prop_assert!(levels.is_sorted(), "{levels:?}");
        for problem in plan.problems() {
            prop_assert!(!problem.why.is_empty() && !problem.fix.is_empty());
            if problem.lifted.is_some() {
                prop_assert_eq!(problem.code.lift(), linewright::Lift::Person);
            }
        }
        let defaults: BTreeSet<String> = plan.assumptions().iter().map(ToString::to_string).collect();
        prop_assert_eq!(plan.assumptions().len(), defaults.len());
    }

    #[test]
    fn an_open_stop_makes_a_draft_and_locks_what_follows(plan in plans()) {
        let open: Vec<&Problem> = plan.problems().iter().filter(|p| p.is_open()).collect();
        prop_assert_eq!(plan.is_draft(), !open.is_empty());
        let locked: Vec<bool> = plan.steps().iter().map(|step: &Step| step.locked).collect();
        prop_assert!(locked.is_sorted(), "a step is free behind a locked one: {locked:?}");
        if open.iter().any(|p| p.code.row().locks == Locks::Line) {
            prop_assert!(locked.iter().all(|locked| *locked));
        }
        prop_assert_eq!(locked.iter().any(|locked| *locked), !open.is_empty());
    }

    #[test]
    fn paper_rounds_the_cut_up_settings_down_and_marks_to_the_nearest(plan in plans()) {
        let card = card::text(&plan);
        if let Some(cut) = plan.cut() {
            // On the card's heading and in the step.
            for text in [card.as_str(), plan.steps()[0].text.as_str()] {
                let up = figure(text, "CUT ")? - to_mm(cut.length());
                prop_assert!((-1e-6..0.5).contains(&up), "cut {up} mm longer: {text}");
            }
        }
        for bend in plan.bends() {
            if bend.mark.is_some_and(|mark| to_mm(mark) < 0.0) {
                prop_assert!(card.contains(&format!("mark {}:  NOT KNOWN", bend.number)), "{card}");
            } else if let Some(mark) = bend.mark {
                let off = figure(&card, &format!("mark {}:  ", bend.number))? - to_mm(mark);
                prop_assert!(off.abs() <= 0.25 + 1e-6, "mark {off} mm off");
            }
            let step = plan.steps().iter().find(|step| step.kind == StepKind::Bend(bend.number));
            let text = &step.ok_or_else(|| TestCaseError::fail("a bend without a step"))?.text;
            match bend.setting {
                Some(setting) => {
                    let down = to_deg(setting) - figure(text, "SET |")?;
                    prop_assert!((-1e-6..0.5).contains(&down), "set {down} deg short: {text}");
                }
                None => prop_assert!(text.contains("SET |NOT KNOWN|"), "{text}"),
            }
        }
    }

    #[test]
    fn a_need_that_is_met_has_no_shortfall(plan in plans()) {
        for side in [Side::A, Side::B] {
            for minimum in plan.end(side).minima() {
                prop_assert_eq!(minimum.need.is_some(), minimum.shortfall.is_some());
                let Some((need, short)) = minimum.need.zip(minimum.shortfall) else { continue };
                prop_assert!(short >= mm(0.0));
                if !plan.bends().is_empty() {
                    // A billionth of a meter is nobody's shortfall.
                    let straight = to_mm(plan.end(side).straight());
                    prop_assert!(straight + to_mm(short) >= to_mm(need) - 1.1e-6);
                    prop_assert!(to_mm(short) == 0.0 || (straight + to_mm(short) - to_mm(need)).abs() <= 1e-9);
                }
            }
        }
    }

    #[test]
    fn a_plan_is_the_same_twice(line in random::line(), bench in random::bench(), options in random::options()) {
        let (once, twice) = (Plan::new(&line, &bench, &options), Plan::new(&line, &bench, &options));
        prop_assert!(once == twice);
        prop_assert_eq!(card::text(&once), card::text(&twice));
    }
}

fn check_card(plan: &Plan) -> Result<(), TestCaseError> {
    let card = card::text(plan);
    for line in card.lines() {
        prop_assert!(line.len() <= 80, "{} columns: {line}", line.len());
        prop_assert!(line.bytes().all(|byte| (b' '..=b'~').contains(&byte)), "{line:?}");
    }
    prop_assert!(card.ends_with('\n') && !card.contains('\r'));
    // The frame of a gate is no word of it, and a long gate goes on in the next row.
    let is_frame = |word: &&str| !word.chars().all(|c| c == '#');
    let flowing = card.split_whitespace().filter(is_frame).collect::<Vec<_>>().join(" ");
    for caution in CAUTIONS {
        prop_assert!(flowing.contains(caution), "without: {caution}");
    }
    // Steps stand in the card as in the plan, gates among them. Look behind the heading: a name can say anything.
    let mut rest = &flowing[flowing.find("CUT ").ok_or(TestCaseError::fail("no cut"))?..];
    for step in
        plan.steps().iter().filter(|step| step.kind.is_gate() || matches!(step.kind, StepKind::Flare(_)))
    {
        let text = step.text.split_whitespace().collect::<Vec<_>>().join(" ");
        let at =
            rest.find(&text).ok_or_else(|| TestCaseError::fail(format!("no {text} in its place\n{card}")))?;
        rest = &rest[at + text.len()..];
    }
    prop_assert_eq!(flowing.contains("DRAFT - stops are open"), plan.is_draft());
    prop_assert_eq!(flowing.contains("No stop is open."), !plan.is_draft());
    for problem in plan.problems() {
        prop_assert!(flowing.contains(problem.code.name()), "without {}", problem.id());
    }
    Ok(())
}

proptest! {
    #![proptest_config(random::config(1_000))]

    #[test]
    fn a_card_is_80_columns_of_ascii_with_every_caution_and_gate(plan in plans()) {
        check_card(&plan)?;
    }

    #[test]
    fn no_name_breaks_a_card(name in any::<String>(), port in random::text(), revision in any::<String>()) {
        let typed = sample::draft(&[("name", &format!("T{name}")), ("a_port", &port)])?;
        let line: Line = typed.check().line.ok_or_else(|| TestCaseError::fail("refused"))?;
        check_card(&Plan::new(&line, &sample::bench()?.with_revision(&revision), &PlanOptions::default()))?;
    }
}
