use super::*;
use crate::bench::{Bench, FlareTool, Former};
use crate::flare::Flare;
use crate::line::LineDraft;
use crate::plan::PlanOptions;
use crate::springback::{Springback, Trial};
use crate::units::deg;

fn bench(net: f64) -> Bench {
    let tool = FlareTool::new(Flare::Double45, mm(13.0), mm(4.0)).unwrap();
    let tool = tool.with_net_shortening(mm(net)).unwrap().with_cut_spare(mm(3.0)).unwrap();
    let trials = [Trial { set: deg(90.0), got: deg(86.5) }, Trial { set: deg(45.0), got: deg(43.2) }];
    let springback = Springback::from_trials(&trials).unwrap();
    Bench::new(Former::new(mm(14.3), mm(20.0)).unwrap(), &[tool]).unwrap().with_springback(springback)
}

fn plan(legs: &str, net: f64) -> Plan {
    let mut draft = LineDraft::new();
    for (field, typed) in [
        ("name", "T2"),
        ("od", "3/16 in"),
        ("wall", "0.028 in"),
        ("material", "copper-nickel"),
        ("legs", legs),
        ("bends", "30 deg; 60 deg; 90 deg"),
        ("rotations", "180 deg; 90 deg"),
        ("radius", "14.3 mm"),
    ] {
        draft.set(field, typed).unwrap();
    }
    for (field, typed) in [
        ("thread", "M10x1"),
        ("nut_length", "17 mm"),
        ("nut_bore", "5 mm"),
        ("nose", "coned"),
        ("flare", "double-45"),
    ] {
        draft.set(&format!("a_{field}"), typed).unwrap();
        draft.set(&format!("b_{field}"), typed).unwrap();
    }
    Plan::new(&draft.check().line.unwrap(), &bench(net), &PlanOptions::default())
}

const T2: &str = "55 mm; 28 in; 9 1/4 in; 76 mm";

/// The numbers at the right of an explanation.
fn shown(text: &str) -> Vec<f64> {
    text.lines()
        .map(|l| l.trim_end_matches(" mm").split_whitespace().last().unwrap().parse().unwrap())
        .collect()
}

#[test]
fn every_sum_adds_up_to_the_figure_it_explains() {
    for legs in [T2, "76 mm; 28 in; 9 1/4 in; 55 mm"] {
        let plan = plan(legs, 2.0);
        let figure = |f: Figure| to_mm(sum(&plan, f).unwrap().total());
        assert!((figure(Figure::CutLength) - to_mm(plan.cut().unwrap().length())).abs() < 1e-9);
        assert!((figure(Figure::FinishedLength) - to_mm(plan.finished_length())).abs() < 1e-9);
        for bend in plan.bends() {
            let mark = to_mm(bend.mark.unwrap());
            assert!((figure(Figure::Mark(bend.number)) - mark).abs() < 1e-9, "{}", bend.number);
        }
        for side in [Side::A, Side::B] {
            for minimum in plan.end(side).minima() {
                let need = to_mm(minimum.need.unwrap());
                assert!((figure(Figure::EndMinimum(side, minimum.kind)) - need).abs() < 1e-9);
            }
        }
        for name in
            ["cut length", "finished length", "mark 1", "mark 3", "end A flare after", "end B assembled"]
        {
            let text = explain(&plan, Figure::from_name(name).unwrap()).unwrap();
            let mut numbers = shown(&text);
            let total = numbers.pop().unwrap();
            assert!((numbers.iter().sum::<f64>() - total).abs() < 1e-9, "{text}");
        }
    }
}

#[test]
fn the_cut_of_a_known_line_is_told_leg_by_leg() {
    let text = explain(&plan(T2, 2.0), Figure::CutLength).unwrap();
    let numbers = shown(&text);
    assert_eq!(numbers[..4], [55.0, 711.2, 235.0, 76.0], "{text}");
    assert!((numbers.last().unwrap() - 1079.3).abs() < 1e-9);
    let set = explain(&plan(T2, 2.0), Figure::Setting(2)).unwrap();
    assert!(set.contains("wanted 60.00") && set.contains("setting 62.46"), "{set}");
}

#[test]
fn what_is_not_known_is_not_explained() {
    let plan = plan(T2, 2.0);
    for figure in [Figure::Mark(9), Figure::Setting(0), Figure::Mark(0)] {
        let error = explain(&plan, figure).unwrap_err();
        assert!(
            error.code() == Code::NotKnown && error.problem().why.contains("its problems say why"),
            "{error}"
        );
    }
    for name in ["", "cut", "mark", "mark x", "end C assembled", "end A", "torque"] {
        assert_eq!(Figure::from_name(name).unwrap_err().code(), Code::UnknownName, "{name}");
    }
}

#[test]
fn only_what_changed_is_listed() {
    let before = plan(T2, 2.0);
    assert!(changes(&before, &before.clone()).is_empty());
    let after = plan("55 mm; 28 in; 9 1/4 in; 77 mm", 2.0);
    let found = changes(&before, &after);
    let whats: Vec<&str> = found.iter().map(|c| c.what.as_str()).collect();
    assert_eq!(whats, ["finished length", "cut length", "step 1"]);
    let other = changes(&before, &plan(T2, 1.5));
    assert!(other.iter().any(|c| c.what == "cut length") && other.iter().all(|c| c.before != c.after));
}
