//! Cautions that stand on every card, and those that a line brings with it.

use crate::flare::Flare;
use crate::line::Line;
use crate::material::Material;
use crate::plan::Plan;
use crate::problem::Side;
use crate::springback::Springback;

/// Printed on every card.
pub(super) const STANDING: &[&str] = &[
    "People brake with this line. The card is arithmetic, not an approval: the vehicle maker's data, the local code \
     and whoever they require to inspect the work decide.",
    "Before each flare: nut on, threads toward the end. Cut off a flare that is cracked or one-sided; never tighten \
     it harder.",
    "Thread, seat and nose must all agree. That a nut turns in easily proves nothing. Some two threads \
     show when a nut is snug; none is suspicious.",
    "Start every nut by hand, several turns, before any wrench. Never pull a line into place with its nut.",
    "No sealant, tape or paste on flare joints; never a washer and a flare on one joint.",
    "Cut ends are sharp and chips stay inside: ream, blow out, cap. Brake fluid harms skin, eyes and paint; only from \
     sealed bottles, never used again.",
    "Nothing that moves, is hot or is sharp may touch the line through full travel and lock: look on the vehicle.",
    "Bleed as the vehicle maker says, look for leaks with the pedal held, try it slowly away from traffic, look \
     again later. Torque, bleeding order and fluid are the maker's.",
];

/// Printed on every card after those: how figures were rounded, and what the settings hold for.
pub(super) fn settings(plan: &Plan) -> String {
    let hold = match plan.springback().and_then(Springback::calibration) {
        None => "the tube and former of the trial bends".to_owned(),
        Some(record) => format!("the tube and former of the trial bends: {record}"),
    };
    format!(
        "Marks and cut are rounded to 0.5 mm, settings down to 0.5 degrees: stop short and top up. An over-bend cannot \
         be undone. Settings hold only for {hold}."
    )
}

/// Printed where they apply.
pub(super) fn for_line(line: &Line) -> Vec<&'static str> {
    let mut cautions = Vec::new();
    let stainless = matches!(line.tube().material(), Material::Stainless304 | Material::Stainless316);
    let flares = [Side::A, Side::B].map(|side| line.end(side).flare);
    if stainless {
        cautions.push(
            "Stainless tube hardens as it is formed: make test flares first and look at them (common practice, no \
             source).",
        );
    }
    if flares[0] != flares[1] {
        cautions.push(
            "The two ends have different flares: look at the end, then at the tool, before each stroke.",
        );
    }
    if flares.contains(&Flare::Single37) {
        cautions
            .push("The support sleeve of a 37 degree flare goes on with the nut, its cone toward the flare.");
    }
    cautions
}
