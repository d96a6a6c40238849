//! An invented small farm trailer: four brake lines, measured with two tapes, partly in inches.
//!
//! `cargo run --release --example trailer` prints cut list, marks, settings, cards, findings and assumptions, and
//! writes the cards to `target/trailer/`. The same trailer stands in Python and in C beside the bindings, and prints
//! the same figures to the last digit.

use linewright::units::{deg, mm, read_length, to_deg, to_mm};
use linewright::{
    Bench, Error, Flare, FlareTool, Former, LineDraft, Plan, PlanOptions, Side, Springback, Trial, card,
    size_lines,
};
use std::path::Path;

/// What was written down at the trailer: a field and what was typed into it.
type Notes = &'static [(&'static str, &'static str)];

/// The same for every line.
const COMMON: Notes = &[
    ("od", "3/16 in"),
    ("wall", "0.028 in"),
    ("material", "low-carbon steel"),
    ("radius", "14.3 mm"),
    ("a_nut_length", "17 mm"),
    ("a_nut_bore", "5.0 mm"),
    ("b_nut_length", "17 mm"),
    ("b_nut_bore", "5.0 mm"),
];

const LINES: [Notes; 4] = [
    &[
        ("name", "T1 coupling to frame hose"),
        ("legs", "6 in; 14 1/2 in; 1.85 m; 31 cm; 120 mm"),
        ("bends", "90 deg; 45 deg; 45 deg; 90 deg"),
        ("rotations", "90 deg; 180 deg; -90 deg"),
        ("a_port", "coupling cylinder"),
        ("a_port_thread", "7/16-24"),
        ("a_seat", "inverted-45"),
        ("a_thread", "7/16-24"),
        ("a_nose", "coned"),
        ("a_flare", "double-45"),
        ("b_port", "frame hose"),
        ("b_port_thread", "M10x1"),
        ("b_seat", "inverted-45"),
        ("b_thread", "M10x1"),
        ("b_nose", "coned"),
        ("b_flare", "double-45"),
    ],
    &[
        ("name", "T2 axle tee to left cylinder"),
        ("legs", "55 mm; 28 in; 9 1/4 in; 76 mm"),
        ("bends", "30 deg; 60 deg; 90 deg"),
        ("rotations", "180 deg; 90 deg"),
        ("a_port", "axle tee"),
        ("a_port_thread", "M10x1"),
        ("a_seat", "inverted-45"),
        ("a_thread", "M10x1"),
        ("a_nose", "coned"),
        ("a_flare", "double-45"),
        ("b_port", "left cylinder"),
        ("b_port_thread", "3/8-24"),
        ("b_seat", "unknown"),
        ("b_thread", "3/8-24"),
        ("b_nose", "coned"),
        ("b_flare", "double-45"),
    ],
    &[
        ("name", "T3 axle tee to right cylinder"),
        ("legs", "55 mm; 31 1/2 in; 9 1/4 in; 76 mm"),
        ("bends", "30 deg; 60 deg; 90 deg"),
        ("rotations", "-180 deg; -90 deg"),
        ("a_port", "axle tee"),
        ("a_port_thread", "M10x1"),
        ("a_seat", "inverted-45"),
        ("a_thread", "M10x1"),
        ("a_nose", "coned"),
        ("a_flare", "double-45"),
        ("b_port", "right cylinder"),
        ("b_port_thread", "3/8-24"),
        ("b_seat", "inverted-45"),
        ("b_thread", "3/8-24"),
        ("b_nose", "coned"),
        ("b_flare", "double-45"),
    ],
    &[
        ("name", "T4 hose bracket to axle tee"),
        ("legs", "70 mm; 5 1/2 in; 3.5 in"),
        ("bends", "120 deg included; 0.25 turn"),
        ("rotations", "3 o'clock"),
        ("a_port", "hose bracket"),
        ("a_port_thread", "M10x1"),
        ("a_seat", "bubble"),
        ("a_thread", "M10x1"),
        ("a_nose", "flat"),
        ("a_flare", "bubble"),
        ("b_port", "axle tee"),
        ("b_port_thread", "M10x1"),
        ("b_seat", "inverted-45"),
        ("b_thread", "M10x1"),
        ("b_nose", "coned"),
        ("b_flare", "double-45"),
    ],
];

/// The workshop's tools, from its own test pieces.
fn bench() -> Result<Bench, Error> {
    let double = FlareTool::new(Flare::Double45, mm(13.0), mm(4.0))?
        .with_net_shortening(mm(2.0))?
        .with_cut_spare(mm(3.0))?;
    let bubble = FlareTool::new(Flare::Bubble, mm(13.0), mm(4.0))?
        .with_net_shortening(mm(1.6))?
        .with_cut_spare(mm(3.0))?;
    let trials = [Trial { set: deg(90.0), got: deg(86.5) }, Trial { set: deg(45.0), got: deg(43.2) }];
    Ok(Bench::new(Former::new(read_length("14.3 mm")?, mm(20.0))?, &[double, bubble])?
        .with_springback(Springback::from_trials(&trials)?)
        .with_revision("r6"))
}

fn drafts() -> Result<Vec<LineDraft>, Error> {
    LINES
        .iter()
        .map(|notes| {
            let mut draft = LineDraft::new();
            for (field, typed) in COMMON.iter().chain(*notes) {
                draft.set(field, typed)?;
            }
            Ok(draft)
        })
        .collect()
}

/// One line of the cut list and of each table below it.
fn print_plan(plan: &Plan) {
    let cut = plan.cut().map_or("not known".to_owned(), |cut| format!("{:.4} mm", to_mm(cut.length())));
    println!("{}", plan.line().name());
    println!("  finished {:.4} mm, cut {cut}", to_mm(plan.finished_length()));
    for term in plan.cut().map_or(&[][..], |cut| cut.terms()) {
        println!("    {:<32} {:>10.4} mm", term.what, to_mm(term.length));
    }
    println!("  marks from {}", plan.datum().name());
    for bend in plan.bends() {
        let mark = bend.mark.map_or("not known".to_owned(), |mark| format!("{:.4} mm", to_mm(mark)));
        let set = bend.setting.map_or("not known".to_owned(), |set| format!("{:.4} deg", to_deg(set)));
        println!("    bend {}: mark {mark}, bend {:.4} deg, set {set}", bend.number, to_deg(bend.angle));
    }
    for side in [Side::A, Side::B] {
        let end = plan.end(side);
        let needs: Vec<String> = end
            .minima()
            .iter()
            .map(|m| m.need.map_or("not known".to_owned(), |n| format!("{:.4}", to_mm(n))))
            .collect();
        println!(
            "  end {}: straight {:.4} mm, needs {} mm, flared {}",
            side.name(),
            to_mm(end.straight()),
            needs.join(" / "),
            end.order().name()
        );
    }
    for problem in plan.problems() {
        println!("  {problem}");
    }
    for assumption in plan.assumptions() {
        println!("  assumed {assumption}");
    }
    println!();
}

fn write_card(folder: &Path, plan: &Plan) -> std::io::Result<()> {
    let short = plan.line().name().split_whitespace().next().unwrap_or("line").to_owned();
    std::fs::write(folder.join(format!("{short}.txt")), card::text(plan))
}

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let sized = size_lines(&drafts()?, &bench()?, &PlanOptions::default());
    let target = std::env::var("CARGO_TARGET_DIR").unwrap_or("target".to_owned());
    let folder = Path::new(&target).join("trailer");
    std::fs::create_dir_all(&folder)?;
    let mut total = 0.0;
    for line in &sized {
        match &line.plan {
            Some(plan) => {
                print_plan(plan);
                write_card(&folder, plan)?;
                total += plan.cut().map_or(0.0, |cut| to_mm(cut.length()));
            }
            None => line.problems.iter().for_each(|problem| println!("row {}: {problem}", line.row)),
        }
    }
    println!("tube for {} lines: {total:.4} mm", sized.len());
    println!();
    sized.iter().filter_map(|line| line.plan.as_ref()).for_each(|plan| println!("{}", card::text(plan)));
    Ok(())
}
