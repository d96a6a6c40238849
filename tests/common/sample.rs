//! A line and a bench, invented, that nothing is wrong with.

use linewright::units::{deg, mm};
use linewright::{Bench, Error, Flare, FlareTool, Former, LineDraft, Springback, Trial};

/// What was typed for the sample line: three bends, both ends alike.
pub const FIELDS: [(&str, &str); 24] = [
    ("name", "T2"),
    ("od", "3/16 in"),
    ("wall", "0.028 in"),
    ("material", "low-carbon steel"),
    ("legs", "55 mm; 28 in; 9 1/4 in; 76 mm"),
    ("bends", "30 deg; 60 deg; 90 deg"),
    ("rotations", "180 deg; 90 deg"),
    ("radius", "14.3 mm"),
    ("a_thread", "M10x1"),
    ("a_nut_length", "17 mm"),
    ("a_nut_bore", "5 mm"),
    ("a_nose", "coned"),
    ("a_flare", "double-45"),
    ("a_port", "axle tee"),
    ("a_port_thread", "M10x1"),
    ("a_seat", "inverted-45"),
    ("b_thread", "M10x1"),
    ("b_nut_length", "17 mm"),
    ("b_nut_bore", "5 mm"),
    ("b_nose", "coned"),
    ("b_flare", "double-45"),
    ("b_port", "left cylinder"),
    ("b_port_thread", "M10x1"),
    ("b_seat", "inverted-45"),
];

/// The sample line with some fields typed otherwise.
pub fn draft(changes: &[(&str, &str)]) -> Result<LineDraft, Error> {
    let mut draft = LineDraft::new();
    for (field, typed) in FIELDS.iter().chain(changes) {
        draft.set(field, typed)?;
    }
    Ok(draft)
}

/// The sample bench.
pub fn bench() -> Result<Bench, Error> {
    let tool = FlareTool::new(Flare::Double45, mm(13.0), mm(4.0))?
        .with_net_shortening(mm(2.0))?
        .with_cut_spare(mm(3.0))?;
    let trials = [Trial { set: deg(90.0), got: deg(86.5) }, Trial { set: deg(45.0), got: deg(43.2) }];
    Bench::new(Former::new(mm(14.3), mm(20.0))?, &[tool])?
        .with_springback(Springback::from_trials(&trials)?)
        .with_revision("r6")
        .with_clearance(mm(2.0))?
        .with_back_off(mm(3.0))
}
