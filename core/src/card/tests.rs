use super::*;
use crate::bench::{Bench, FlareTool, Former};
use crate::flare::Flare;
use crate::line::LineDraft;
use crate::material::Material;
use crate::plan::PlanOptions;
use crate::springback::{Calibration, Date, Springback, Trial};
use crate::tube::Tube;
use crate::units::{deg, mm};

fn draft(name: &str) -> LineDraft {
    let mut draft = LineDraft::new();
    for (field, typed) in [
        ("name", name),
        ("od", "3/16 in"),
        ("wall", "0.028 in"),
        ("material", "stainless 316"),
        ("legs", "55 mm; 28 in; 76 mm"),
        ("bends", "30 deg; 60 deg"),
        ("rotations", "-47.3 deg"),
        ("radius", "14.3 mm"),
    ] {
        draft.set(field, typed).unwrap();
    }
    for side in ["a", "b"] {
        for (field, typed) in [
            ("thread", "M10x1"),
            ("nut_length", "17 mm"),
            ("nut_bore", "5 mm"),
            ("nose", "coned"),
            ("flare", "double-45"),
            ("port", "Bremskraftverteiler hinten links \u{fc}ber der Achse"),
            ("port_thread", "M10x1"),
            ("seat", "inverted-45"),
        ] {
            draft.set(&format!("{side}_{field}"), typed).unwrap();
        }
    }
    draft
}

fn bench() -> Bench {
    let tool = FlareTool::new(Flare::Double45, mm(13.0), mm(4.0)).unwrap();
    Bench::new(Former::new(mm(14.3), mm(20.0)).unwrap(), &[tool]).unwrap()
}

fn card_on(bench: &Bench, name: &str) -> String {
    let line = draft(name).check().line.unwrap();
    text(&Plan::new(&line, bench, &PlanOptions::default()))
}

fn card(name: &str) -> String {
    card_on(&bench(), name)
}

/// A caution names the tube, the former and the day of the trials where their record has them.
#[test]
fn trials_are_named_by_their_record() {
    let trials = [Trial { set: deg(90.0), got: deg(86.5) }, Trial { set: deg(45.0), got: deg(43.2) }];
    let of = |springback: Springback| {
        card_on(&bench().with_springback(springback), "T2").split_whitespace().collect::<Vec<_>>().join(" ")
    };
    let bare = of(Springback::from_trials(&trials).unwrap());
    assert!(bare.contains("only for the tube and former of the trial bends."), "{bare}");
    let tube = Tube::new(mm(4.7625), mm(0.7112), Material::Stainless316).unwrap();
    let date = Date::read("2026-05-14").unwrap();
    let record = Calibration::new(&trials, &tube, "former 1", date, "2").unwrap();
    let named =
        "former of the trial bends: 4.76 mm x 0.71 mm, stainless 316, former 1, 2026-05-14, revision 2.";
    let recorded = of(record.springback().unwrap());
    assert!(recorded.contains(named) && !bare.contains("former 1"), "{recorded}");
}

#[test]
fn it_is_ascii_of_eighty_columns_whatever_the_name() {
    for name in ["T2", &"x".repeat(300), "a \u{1F527} b\nc", &"word ".repeat(60)] {
        let card = card(name);
        assert!(card.is_ascii());
        assert!(card.lines().all(|line| line.len() <= 80), "{card}");
        assert!(card.lines().count() > 50);
    }
}

#[test]
fn the_cautions_stand_on_it_and_gates_cross_it() {
    let card = card("T2");
    let flat = card.split_whitespace().collect::<Vec<_>>().join(" ");
    for caution in cautions::STANDING {
        let caution = caution.split_whitespace().collect::<Vec<_>>().join(" ");
        assert!(flat.contains(&caution), "{caution}");
    }
    assert!(flat.contains("Stainless tube hardens"));
    let gates: Vec<&str> = card.lines().filter(|l| l.starts_with("####")).collect();
    assert_eq!(gates.len(), 5);
    assert!(gates.iter().all(|l| l.len() == 80 && l.ends_with("####")));
}

#[test]
fn what_is_not_known_is_printed_as_such() {
    // No trial bends: the plan is a draft and its settings are not known.
    let card = card("T2");
    assert!(card.contains("SET |NOT KNOWN|") && card.contains("DRAFT") && card.contains("LOCKED FROM HERE"));
    assert!(card.contains("plane 47.5 anticlockwise of the last, looking A to B"));
    assert!(card.contains("stop SPRINGBACK_UNKNOWN, bend 1"));
    let flat = card.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(
        flat.contains(
            "together: 5 mm (for 3/16 in tube with a wall up to 1.1 mm, common practice, no source)"
        )
    );
}

#[test]
fn overlapping_bends_leave_no_length_to_cut_or_mark() {
    let mut draft = draft("overlap");
    for (field, typed) in [("legs", "60 mm; 100 mm"), ("bends", "175 deg"), ("rotations", "")] {
        draft.set(field, typed).unwrap();
    }
    let tool = FlareTool::new(Flare::Double45, mm(13.0), mm(4.0)).unwrap();
    let bench = Bench::new(Former::new(mm(14.3), mm(20.0)).unwrap(), &[tool]).unwrap();
    let plan = Plan::new(&draft.check().line.unwrap(), &bench, &PlanOptions::default());
    assert!(to_mm(plan.finished_length()) < 0.0 && plan.cut().is_none() && plan.steps()[0].locked);
    let card = text(&plan);
    assert!(card.contains("CUT  NOT KNOWN") && card.contains("finished NOT KNOWN"), "{card}");
    assert!(card.contains("mark 1:  NOT KNOWN"), "{card}");
}
