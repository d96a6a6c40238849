use super::*;
use crate::bench::{FlareTool, Former};
use crate::bend::Bend;
use crate::code::Code;
use crate::flare::{Flare, Nose, Seat};
use crate::line::{End, Nut, Port};
use crate::material::Material;
use crate::path::Path;
use crate::problem::Part;
use crate::springback::{Calibration, Date, Hardening, Mechanics, Springback, Trial};
use crate::thread::Thread;
use crate::tube::Tube;
use crate::units::{deg, inch, mm, mpa, to_deg, to_mm};

fn bench() -> Bench {
    let tool = FlareTool::new(Flare::Double45, mm(13.0), mm(4.0)).unwrap();
    let tool = tool.with_net_shortening(mm(2.0)).unwrap().with_cut_spare(mm(3.0)).unwrap();
    let trials = [Trial { set: deg(90.0), got: deg(86.5) }, Trial { set: deg(45.0), got: deg(43.2) }];
    Bench::new(Former::new(mm(14.3), mm(20.0)).unwrap(), &[tool])
        .unwrap()
        .with_springback(Springback::from_trials(&trials).unwrap())
}

fn end() -> End {
    let thread = Some(Thread::read("M10x1").unwrap());
    let nut = Nut::new(thread, mm(17.0), mm(5.0), Some(Nose::Coned)).unwrap();
    let port = Port::new("tee", thread, Some(Seat::Inverted45));
    End { port: Some(port), ..End::new(nut, Flare::Double45) }
}

fn line(straights: &[f64], angle: f64, radius: f64) -> Line {
    let straights: Vec<Length> = straights.iter().map(|s| mm(*s)).collect();
    let count = straights.len() - 1;
    let turns = vec![deg(90.0); count.saturating_sub(1)];
    let bends = Bend::list(&vec![deg(angle); count], &turns, &[mm(radius)]).unwrap();
    let tube = Tube::new(inch(3.0 / 16.0), inch(0.028), Material::LowCarbonSteel).unwrap();
    Line::new("test", tube, Path::from_straights(&straights, &bends).unwrap(), end(), end())
}

fn plan(line: &Line) -> Plan {
    Plan::new(line, &bench(), &PlanOptions::default())
}

fn codes(plan: &Plan) -> Vec<String> {
    plan.problems().iter().filter(|p| p.level() <= crate::Level::Stop).map(Problem::id).collect()
}

fn kinds(plan: &Plan) -> Vec<StepKind> {
    plan.steps().iter().map(|s| s.kind).collect()
}

#[test]
fn the_longer_end_is_trimmed_and_work_starts_at_the_other() {
    let from_a = plan(&line(&[60.0, 100.0, 90.0], 90.0, 14.3));
    assert_eq!(
        (from_a.trim_end(), from_a.first(), from_a.datum().name()),
        (Some(Side::B), Side::A, "flare A")
    );
    let from_b = plan(&line(&[90.0, 100.0, 60.0], 90.0, 14.3));
    assert_eq!(
        (from_b.trim_end(), from_b.first(), from_b.datum().name()),
        (Some(Side::A), Side::B, "flare B")
    );
    // A mirror pair of straights: what is bend 1 from A is bend 2 from B, at the same distance from the datum.
    let (a, b) = (&from_a.bends()[0], &from_b.bends()[1]);
    assert_eq!(a.mark, b.mark);
    assert_eq!(kinds(&from_b)[5..7], [StepKind::Bend(2), StepKind::Bend(1)]);
    // Equal ends: B is trimmed.
    assert_eq!(plan(&line(&[60.0, 100.0, 60.0], 90.0, 14.3)).trim_end(), Some(Side::B));
}

#[test]
fn a_short_first_end_is_flared_after_bending_and_marks_are_from_the_raw_end() {
    let plan = plan(&line(&[35.0, 100.0, 90.0], 90.0, 14.3));
    assert_eq!(plan.end(Side::A).order(), FlareOrder::AfterBending);
    assert_eq!(plan.datum(), Datum::RawEnd(Side::A));
    assert!((to_mm(plan.bends()[0].mark.unwrap()) - 37.0).abs() < 1e-9, "35 mm and the shortening of 2 mm");
    let kinds = kinds(&plan);
    let at = |kind| kinds.iter().position(|k| *k == kind).unwrap();
    assert!(at(StepKind::Bend(2)) < at(StepKind::Flare(Side::A)));
    assert!(at(StepKind::Flare(Side::A)) < at(StepKind::TrialFit));
    assert!(at(StepKind::TrialFit) < at(StepKind::Flare(Side::B)));
    assert!(!plan.is_draft(), "{:?}", plan.problems());
}

#[test]
fn the_three_needs_of_an_end_and_the_smallest_move() {
    let of = |straight: f64| plan(&line(&[straight, 100.0, 90.0], 90.0, 14.3));
    let needs: Vec<f64> = of(50.0).end(Side::A).minima().iter().map(|m| to_mm(m.need.unwrap())).collect();
    assert_eq!(needs, [34.0, 37.0, 20.0]);
    for (straight, order) in [
        (33.9, FlareOrder::Neither),
        (34.0, FlareOrder::AfterBending),
        (36.9, FlareOrder::AfterBending),
        (37.0, FlareOrder::BeforeBending),
    ] {
        assert_eq!(of(straight).end(Side::A).order(), order, "{straight}");
    }
    let short = of(26.2);
    assert_eq!(codes(&short), ["BEND_IN_CLAMP@end A"]);
    assert!(short.problems()[0].fix.contains("by 7.8 mm"), "{}", short.problems()[0].fix);
    assert!(short.steps().iter().all(|s| s.locked));
    let shorter = of(19.0);
    assert_eq!(codes(&shorter), ["BEND_IN_CLAMP@end A", "NUT_ON_BEND@end A"]);
}

#[test]
fn without_a_trim_end_the_spare_comes_off_the_straight_tube() {
    // A clamp so deep that no end can be flared after bending, while both can be before.
    let deep = FlareTool::new(Flare::Double45, mm(60.0), mm(4.0)).unwrap();
    let deep = deep.with_net_shortening(mm(2.0)).unwrap().with_cut_spare(mm(3.0)).unwrap();
    let bench = Bench::new(*bench().former(), &[deep])
        .unwrap()
        .with_springback(bench().springback().unwrap().clone());
    let plan = Plan::new(&line(&[50.0, 100.0, 50.0], 90.0, 14.3), &bench, &PlanOptions::default());
    assert_eq!(plan.trim_end(), None);
    assert!(plan.problems().iter().any(|p| p.code == Code::TrimEndNone && p.part == Part::Line));
    let kinds = kinds(&plan);
    assert_eq!(kinds[4..7], [StepKind::Trim(Side::B), StepKind::NutGate(Side::B), StepKind::Flare(Side::B)]);
    // By hand: 200 straight and 2 x 22.462 arc are 244.9; with the last flare's 2 mm the trim is at 246.9, on paper 247.
    assert!(plan.steps()[4].text.contains("247.0 mm"), "{}", plan.steps()[4].text);
}

#[test]
fn a_trim_end_that_cannot_be_is_said_and_the_other_taken() {
    let options = PlanOptions::default().with_trim_end(Side::A);
    let plan = Plan::new(&line(&[30.0, 100.0, 90.0], 90.0, 14.3), &bench(), &options);
    assert_eq!(plan.trim_end(), Some(Side::B));
    assert!(plan.problems().iter().any(|p| p.id() == "TRIM_END_NONE@end A"));
}

#[test]
fn a_stop_locks_the_step_it_concerns_and_a_person_can_lift_it() {
    let close = line(&[60.0, 15.0, 90.0], 90.0, 14.3);
    let stopped = plan(&close);
    assert_eq!(codes(&stopped), ["BENDS_TOO_CLOSE@straight 2"]);
    assert!(stopped.problems()[0].fix.contains("by 5 mm"));
    let locked: Vec<StepKind> = stopped.steps().iter().filter(|s| s.locked).map(|s| s.kind).collect();
    assert_eq!(locked[0], StepKind::Bend(2));
    // From B the same straight holds back bend 1.
    let backward = plan(&line(&[90.0, 15.0, 60.0], 90.0, 14.3));
    let locked: Vec<StepKind> = backward.steps().iter().filter(|s| s.locked).map(|s| s.kind).collect();
    assert_eq!(locked[0], StepKind::Bend(1));

    let lift = |id: &str, who: &str| {
        Plan::new(&close, &bench(), &PlanOptions::default().accept(id, who, "made on a hand mandrel"))
    };
    let lifted = lift("BENDS_TOO_CLOSE@straight 2", "the fitter");
    assert!(!lifted.is_draft() && lifted.steps().iter().all(|s| !s.locked));
    assert_eq!(lifted.problems()[0].lifted.as_ref().unwrap().who, "the fitter");
    for (id, who, code) in [
        ("BENDS_TOO_CLOSE@straight 2", " ", Code::NotLiftable),
        ("BENDS_TOO_CLOSE@straight 3", "the fitter", Code::NothingToLift),
    ] {
        let plan = lift(id, who);
        assert!(plan.is_draft() && plan.problems().iter().any(|p| p.code == code), "{id} {who}");
    }
}

#[test]
fn a_missing_fact_is_lifted_by_nobody() {
    let base = line(&[60.0, 100.0, 90.0], 90.0, 14.3);
    let mut b = end();
    b.port = Some(Port { seat: None, ..b.port.unwrap() });
    let unknown = Line::new("test", base.tube().clone(), base.path().clone(), end(), b);
    let options = PlanOptions::default().accept("SEAT_UNKNOWN@end B", "the fitter", "it looks right");
    let plan = Plan::new(&unknown, &bench(), &options);
    assert!(plan.is_draft() && plan.steps()[0].locked);
    assert!(plan.problems().iter().any(|p| p.code == Code::NotLiftable));
}

#[test]
fn a_radius_that_is_not_the_formers_has_no_setting() {
    let plan = plan(&line(&[60.0, 100.0, 90.0], 90.0, 25.0));
    assert_eq!(codes(&plan), ["NOT_THIS_FORMER@bend 1", "NOT_THIS_FORMER@bend 2"]);
    assert!(plan.bends().iter().all(|b| b.setting.is_none()));
    let step = plan.steps().iter().find(|s| s.kind == StepKind::Bend(1)).unwrap();
    assert!(step.locked && step.text.contains("NOT KNOWN"));
}

#[test]
fn an_unmeasured_flare_is_assumed_or_not_known() {
    let tools = |flare| [FlareTool::new(flare, mm(13.0), mm(4.0)).unwrap()];
    let with = |flare: Flare, straights: &[f64]| {
        let bench = Bench::new(*bench().former(), &tools(flare)).unwrap();
        let base = line(straights, 90.0, 14.3);
        let end = End { flare, ..end() };
        let line = Line::new("test", base.tube().clone(), base.path().clone(), end.clone(), end);
        Plan::new(&line, &bench, &PlanOptions::default())
    };
    let double = with(Flare::Double45, &[60.0, 100.0, 90.0]);
    let cut = double.cut().unwrap();
    assert!(
        (to_mm(cut.length()) - to_mm(double.finished_length()) - 10.0).abs() < 1e-9,
        "5 mm for each flare"
    );
    assert!(double.problems().iter().any(|p| p.id() == "FLARE_NET_ASSUMED@end A"));
    assert_eq!(double.assumptions().iter().filter(|a| a.what.contains("double-45")).count(), 1);
    // Its marks are from the flare face and need no shortening; from the raw end they would not be known.
    assert!(double.bends()[0].mark.is_some() && double.bends()[0].from_raw_end.is_none());
    let raw = with(Flare::Double45, &[36.5, 100.0, 90.0]);
    assert!(raw.bends()[0].mark.is_none() && codes(&raw).contains(&"FLARE_NET_UNKNOWN@end A".to_owned()));
    let bubble = with(Flare::Bubble, &[60.0, 100.0, 90.0]);
    assert!(bubble.cut().is_none() && bubble.steps()[0].text.contains("NOT KNOWN"));
}

#[test]
fn a_bench_without_the_tool_has_no_cut_length() {
    let bench = Bench::new(*bench().former(), &[]).unwrap();
    let plan = Plan::new(&line(&[60.0, 100.0, 90.0], 90.0, 14.3), &bench, &PlanOptions::default());
    assert!(plan.cut().is_none());
    assert!(codes(&plan).contains(&"FLARE_TOOL_MISSING@end B".to_owned()));
    assert_eq!(plan.end(Side::A).minima()[0].need, None);
}

#[test]
fn a_straight_line_needs_no_marks() {
    let plan = plan(&line(&[300.0], 0.0, 14.3));
    assert!(!plan.is_draft(), "{:?}", plan.problems());
    assert!(!kinds(&plan).contains(&StepKind::Mark) && plan.bends().is_empty());
    assert!((to_mm(plan.cut().unwrap().length()) - 310.0).abs() < 1e-9);
    assert_eq!(plan.loading().iter().map(|l| l.side).collect::<Vec<_>>(), [Side::A, Side::B]);
}

#[test]
fn a_short_straight_line_has_no_room_for_clamp_and_nuts() {
    let with = |length: f64| plan(&line(&[length], 0.0, 14.3));
    // Flared last: 4 + 13 + 17 + 2 - 2, and the other nut, 17. Flared first: 34. Assembled: two nuts and 3.
    let needs = |side| with(300.0).end(side).minima().each_ref().map(|m| to_mm(m.need.unwrap()));
    assert_eq!([needs(Side::A), needs(Side::B)], [[51.0, 34.0, 37.0]; 2]);
    assert_eq!((with(51.0).trim_end(), codes(&with(51.0))), (Some(Side::B), vec![]));
    for (length, found) in [
        (50.0, vec!["BEND_IN_CLAMP@end B"]),
        (36.0, vec!["BEND_IN_CLAMP@end B", "NUT_ON_BEND@end A", "NUT_ON_BEND@end B"]),
        (5.0, vec!["BEND_IN_CLAMP@end A", "BEND_IN_CLAMP@end B", "NUT_ON_BEND@end A", "NUT_ON_BEND@end B"]),
    ] {
        let plan = with(length);
        let mut stops = codes(&plan);
        stops.sort();
        assert_eq!(stops, found, "{length}");
        assert!(plan.is_draft() && plan.steps()[0].locked, "{length}");
    }
    let short = with(50.0);
    let stop = short.problems().iter().find(|p| p.id() == "BEND_IN_CLAMP@end B").unwrap();
    assert_eq!(stop.fix, "lengthen the line by 1 mm, or join the two ports without tube");
}

#[test]
fn a_springback_that_would_spring_forward_gives_no_setting() {
    let trials = [Trial { set: deg(90.0), got: deg(84.0) }, Trial { set: deg(45.0), got: deg(43.5) }];
    let bench = bench().with_springback(Springback::from_trials(&trials).unwrap());
    let with = |angle| Plan::new(&line(&[60.0, 100.0, 90.0], angle, 14.3), &bench, &PlanOptions::default());
    // (10 - 3) / 0.9 = 7.8: the tool would be set below what is wanted. (60 - 3) / 0.9 = 63.3.
    let small = with(10.0);
    assert!(small.bends().iter().all(|b| b.setting.is_none()) && small.is_draft());
    assert!(codes(&small).contains(&"SPRINGBACK_UNKNOWN@bend 1".to_owned()), "{:?}", codes(&small));
    assert!((to_deg(with(60.0).bends()[0].setting.unwrap()) - 57.0 / 0.9).abs() < 1e-9);
}

#[test]
fn a_reserve_is_a_term_of_the_cut() {
    let options = PlanOptions::default().with_reserve(mm(15.0)).unwrap();
    let plan = Plan::new(&line(&[300.0], 0.0, 14.3), &bench(), &options);
    assert!((to_mm(plan.cut().unwrap().length()) - 325.0).abs() < 1e-9);
    assert!((to_mm(plan.cut().unwrap().spare()) - 21.0).abs() < 1e-9);
    assert_eq!(PlanOptions::default().with_reserve(mm(-1.0)).unwrap_err().code(), Code::OutOfRange);
}

#[test]
fn the_only_public_radius_figure_is_cited_until_the_maker_speaks() {
    let has = |plan: &Plan, code: Code| plan.problems().iter().any(|p| p.code == code);
    let tight = line(&[60.0, 100.0, 90.0], 90.0, 14.3);
    assert!(has(&plan(&tight), Code::RadiusBelowSeen));
    let with = |limit: f64| {
        let tube = tight.tube().clone().with_min_radius(mm(limit), "tube maker's sheet").unwrap();
        plan(&Line::new("test", tube, tight.path().clone(), end(), end()))
    };
    assert!(!has(&with(14.0), Code::RadiusBelowSeen) && !has(&with(14.0), Code::RadiusTooSmall));
    assert!(has(&with(15.0), Code::RadiusTooSmall));
    let other = Tube::new(mm(6.0), mm(1.0), Material::CopperNickel).unwrap();
    let mut wide = end();
    wide.nut = Nut::new(wide.nut.thread(), mm(17.0), mm(6.3), wide.nut.nose()).unwrap();
    let other = Line::new("test", other, tight.path().clone(), wide.clone(), wide);
    assert!(has(&plan(&other), Code::RadiusLimitUnknown));
}

#[test]
fn a_flare_in_place_says_what_room_it_needs() {
    let base = line(&[60.0, 100.0, 90.0], 90.0, 14.3);
    let in_place = End { flared_in_place: true, ..end() };
    let plan = plan(&Line::new("test", base.tube().clone(), base.path().clone(), end(), in_place));
    let step = plan.steps().iter().find(|s| s.kind == StepKind::Flare(Side::B)).unwrap();
    // 4 + 13 + 17 + 2 - 2 mm, as for any flare after bending.
    assert!(step.text.contains("IN PLACE on the vehicle, on 34.0 mm"), "{}", step.text);
}

#[test]
fn settings_come_from_the_trials() {
    let plan = plan(&line(&[60.0, 100.0, 90.0], 90.0, 14.3));
    assert!((to_deg(plan.bends()[0].setting.unwrap()) - 93.64).abs() < 0.005);
    let note = plan.problems().iter().find(|p| p.code == Code::SettingOutsideTrials).unwrap();
    assert_eq!(note.got.to_string(), "bends 1, 2");
}

/// CALIBRATION_OTHER_TUBE stands on a plan whose trials were made on another tube, and on no other.
#[test]
fn settings_from_trials_of_another_tube_are_a_caution() {
    let bent = line(&[60.0, 100.0, 90.0], 90.0, 14.3);
    let trials = bench().springback().unwrap().trials().to_vec();
    let said = |tube: &Tube| {
        let date = Date::read("2026-05-14").unwrap();
        let record = Calibration::new(&trials, tube, "former 1", date, "2").unwrap();
        let plan =
            Plan::new(&bent, &bench().with_springback(record.springback().unwrap()), &PlanOptions::default());
        let found = plan.problems().iter().find(|p| p.code.name() == "CALIBRATION_OTHER_TUBE").cloned();
        (found, plan)
    };
    let (found, made) = said(bent.tube());
    assert_eq!(found, None);
    // The settings are those of the trials without a record.
    assert_eq!(made.bends(), plan(&bent).bends());
    let (found, _) = said(&Tube::new(mm(6.0), mm(1.0), Material::CopperNickel).unwrap());
    let found = found.unwrap();
    assert_eq!(found.got.to_string(), "6 mm x 1 mm, copper-nickel");
    assert_eq!(found.need.to_string(), "4.76 mm x 0.71 mm, low-carbon steel");
}

/// SPRINGBACK_ESTIMATED and RADIUS_ESTIMATED stand on a plan whose bench rests on mechanics, and on no other.
#[test]
fn an_estimate_from_mechanics_is_never_shown_like_a_trial() {
    let law = Hardening::PerfectlyPlastic { yield_strength: mpa(250.0) };
    let tube = Mechanics::new(inch(3.0 / 16.0), inch(0.028), mpa(207_000.0), law).unwrap();
    let former = Former::of_groove(mm(14.2875), mm(20.0), &tube).unwrap();
    let tool = *bench().flare_tool(Flare::Double45).unwrap();
    let springback = tube.bend(mm(14.2875)).unwrap().springback(mm(0.0)).unwrap();
    let estimated = Bench::new(former, &[tool]).unwrap().with_springback(springback);
    let bent = line(&[200.0, 200.0], 90.0, 14.441);
    let codes = |bench: &Bench| -> Vec<&str> {
        Plan::new(&bent, bench, &PlanOptions::default()).problems().iter().map(|p| p.code.name()).collect()
    };
    let said = codes(&estimated);
    assert!(said.contains(&"SPRINGBACK_ESTIMATED") && said.contains(&"RADIUS_ESTIMATED"), "{said:?}");
    let tried = codes(&bench());
    assert!(!tried.contains(&"SPRINGBACK_ESTIMATED") && !tried.contains(&"RADIUS_ESTIMATED"), "{tried:?}");
}
