//! The bends: whether they can be made, where their marks are, and what the tool is set to.

use super::{Datum, shortfall};
use crate::bench::Bench;
use crate::bend::{Bend, Making};
use crate::code::Code;
use crate::line::Line;
use crate::problem::{Part, Problem, Side, Value};
use crate::springback::{Basis, tube_text};
use crate::tube::Tube;
use crate::units::{Angle, Length, Rounding, deg, length_text, mm, round_length, to_deg, to_mm};

/// A bend whose radius differs from the former's by less than this is made on it (ours, no source).
const SAME_RADIUS_MM: f64 = 0.05;
/// Above this a bend angle may have been read as the included angle (common practice, no source).
const LARGE_ANGLE_DEG: f64 = 120.0;

/// The only public figure seen for the smallest radius of brake tube: at least 25 mm for 4.75 x 0.7 mm, cold-formed.
/// Source: a lift-truck chassis service manual, page 159, citing DIN 74234 (seen there; the standard was not opened).
const SEEN_RADIUS_MM: f64 = 25.0;
/// Outside diameters that the figure is applied to: 4.75 mm and 3/16 in.
const SEEN_OD_MM: std::ops::RangeInclusive<f64> = 4.7..=4.8;

/// One bend of a plan.
#[derive(Debug, Clone, PartialEq)]
pub struct PlannedBend {
    /// Number along the path, from 1 at end A.
    pub number: usize,
    /// The angle that shall remain.
    pub angle: Angle,
    /// Turn of the bend plane, in the direction of work, against the bend made before it; None for the first one made.
    pub rotation: Option<Angle>,
    /// Radius as formed.
    pub radius: Length,
    /// Where the pen goes, from the plan's datum: the start of the bend seen from there. None while the datum is a
    /// raw end and the shortening of its flare is not known.
    pub mark: Option<Length>,
    /// The same place from the raw end at which work starts.
    pub from_raw_end: Option<Length>,
    /// The same place from the finished flare face at which work starts.
    pub from_flare_face: Length,
    /// From the end of the bend made before it to the start of this one, for marking again after each bend; for the
    /// first bend made it is the mark itself.
    pub from_last_bend: Option<Length>,
    /// How it is made.
    pub making: Making,
    /// What the tool is bent to; None where it is not known or the bend is not made on the former.
    pub setting: Option<Angle>,
}

/// Plans the bends, numbered along the path; marks and rotations follow the direction of work.
pub(super) fn plan(
    line: &Line,
    bench: &Bench,
    datum: Datum,
    net: Option<Length>,
    problems: &mut Vec<Problem>,
) -> Vec<PlannedBend> {
    let backward = datum.side() == Side::B;
    let path = if backward { line.path().reversed() } else { line.path().clone() };
    let count = path.bends().len();
    let mut at = 0.0;
    let mut planned: Vec<PlannedBend> = Vec::with_capacity(count);
    for (i, (straight, bend)) in path.straights().iter().zip(path.bends()).enumerate() {
        at += to_mm(*straight);
        let from_flare_face = mm(at);
        let from_raw_end = net.map(|net| mm(at) + net);
        let mark = if matches!(datum, Datum::RawEnd(_)) { from_raw_end } else { Some(from_flare_face) };
        planned.push(PlannedBend {
            number: if backward { count - i } else { i + 1 },
            angle: bend.angle(),
            rotation: (i > 0).then(|| bend.rotation()),
            radius: bend.radius(),
            mark,
            from_raw_end,
            from_flare_face,
            from_last_bend: if i > 0 { Some(*straight) } else { mark },
            making: bend.making(),
            setting: setting(bench, bend),
        });
        at += to_mm(bend.arc());
    }
    let part = Part::End(datum.side());
    let is_said = problems.iter().any(|p| p.code == Code::FlareNetUnknown && p.part == part);
    if planned.iter().any(|b| b.mark.is_none()) && !is_said {
        problems.push(
            Problem::new(Code::FlareNetUnknown, part)
                .need(Value::text("the shortening of a test piece"))
                .why(
                    "this end is flared after bending, so marks are from the raw end and need the shortening",
                ),
        );
    }
    if backward {
        planned.reverse();
    }
    note_settings(line.tube(), bench, &planned, problems);
    planned
}

fn is_formers(bench: &Bench, radius: Length) -> bool {
    (to_mm(radius) - to_mm(bench.former().as_formed())).abs() <= SAME_RADIUS_MM
}

fn setting(bench: &Bench, bend: &Bend) -> Option<Angle> {
    let on_former = bend.making() == Making::Former && is_formers(bench, bend.radius());
    let springback = bench.springback().filter(|s| on_former && !s.is_forward(bend.angle()))?;
    Some(springback.setting_of(bend.angle()))
}

fn note_settings(tube: &Tube, bench: &Bench, planned: &[PlannedBend], problems: &mut Vec<Problem>) {
    let on_former = |b: &PlannedBend| b.making == Making::Former && is_formers(bench, b.radius);
    if let (Some(groove), true) = (bench.former().groove(), planned.iter().any(on_former)) {
        problems.push(Problem::new(Code::RadiusEstimated, Part::Line).got(Value::Length(groove)));
    }
    let Some(springback) = bench.springback() else { return };
    let made: Vec<_> = planned.iter().filter_map(|b| Some((b.number, b.setting?))).collect();
    if matches!(springback.basis(), Basis::Mechanics | Basis::Prior) && !made.is_empty() {
        problems.push(Problem::new(Code::SpringbackEstimated, Part::Line));
    }
    if let Some(record) = springback.calibration().filter(|record| !record.is_for(tube) && !made.is_empty()) {
        problems.push(
            Problem::new(Code::CalibrationOtherTube, Part::Line)
                .got(Value::text(tube_text(record.tube())))
                .need(Value::text(tube_text(tube))),
        );
    }
    if springback.is_weak() && !made.is_empty() {
        problems.push(Problem::new(Code::SpringbackWeak, Part::Line));
    }
    let outside: Vec<String> =
        made.iter().filter(|(_, s)| springback.is_outside_trials(*s)).map(|(n, _)| n.to_string()).collect();
    if !outside.is_empty() {
        problems.push(
            Problem::new(Code::SettingOutsideTrials, Part::Line)
                .got(Value::text(format!("bends {}", outside.join(", ")))),
        );
    }
}

/// Everything about the bends that a person must know or mend. `first` is the end at which work starts.
pub(super) fn check(line: &Line, bench: &Bench, first: Side, problems: &mut Vec<Problem>) {
    check_straights(line, bench, first, problems);
    for (i, bend) in line.path().bends().iter().enumerate() {
        let part = Part::Bend(i + 1);
        if to_deg(bend.angle()) > LARGE_ANGLE_DEG {
            problems.push(
                Problem::new(Code::AngleLarge, part.clone())
                    .got(Value::Angle(bend.angle()))
                    .need(Value::text(format!("a bend of {}?", Value::Angle(deg(180.0) - bend.angle()))))
                    .fix("measure again; write an included angle as 150 deg included"),
            );
        }
        if bend.making() != Making::Former {
            continue;
        }
        match bench.springback() {
            None => problems
                .push(Problem::new(Code::SpringbackUnknown, part.clone()).got(Value::Angle(bend.angle()))),
            Some(springback) if springback.is_forward(bend.angle()) => problems.push(
                Problem::new(Code::SpringbackUnknown, part.clone())
                    .got(Value::Angle(bend.angle()))
                    .why("the springback of the bench would have this bend spring forward, so it tells nothing here")
                    .fix("make a trial bend near this angle"),
            ),
            Some(_) => {}
        }
        if !is_formers(bench, bend.radius()) {
            problems.push(
                Problem::new(Code::NotThisFormer, part)
                    .got(Value::Length(bend.radius()))
                    .need(Value::Length(bench.former().as_formed())),
            );
        }
    }
    check_radius(line.tube(), line, problems);
}

fn check_straights(line: &Line, bench: &Bench, first: Side, problems: &mut Vec<Problem>) {
    let straights = line.path().straights();
    let bends = line.path().bends();
    let tangent = |i: Option<usize>| {
        i.and_then(|i| bends.get(i)).and_then(|b| b.tangent_length().ok()).map_or(0.0, to_mm)
    };
    for (i, straight) in straights.iter().enumerate() {
        let value = to_mm(*straight);
        let part = Part::Straight(i + 1);
        let more = |by: Length| length_text(round_length(by, mm(0.1), Rounding::Up));
        if value < -super::TOLERANCE_MM {
            let (before, after) = (tangent(i.checked_sub(1)), tangent(Some(i)));
            problems.push(
                Problem::new(Code::StraightNegative, part)
                    .got(Value::Length(*straight))
                    .need(Value::Length(mm(0.0)))
                    .why(format!(
                        "the leg is {}; its bends take {} and {} of it",
                        length_text(mm(value + before + after)),
                        length_text(mm(before)),
                        length_text(mm(after))
                    ))
                    .fix(format!("lengthen the leg by at least {}", more(mm(-value)))),
            );
            continue;
        }
        let between = i > 0 && i + 1 < straights.len();
        let grip = bench.former().grip();
        let short = shortfall(value, to_mm(grip));
        let (held, made) = if first == Side::A { (i, i + 1) } else { (i + 1, i) };
        let on_former = bends.get(made.wrapping_sub(1)).is_some_and(|b| b.making() == Making::Former);
        if between && on_former && to_mm(short) > 0.0 {
            problems.push(
                Problem::new(Code::BendsTooClose, part)
                    .got(Value::Length(*straight))
                    .need(Value::Length(grip))
                    .why(format!(
                        "after bend {held} the former has too little straight to hold for bend {made}"
                    ))
                    .fix(format!(
                        "lengthen straight {} by {}, or bend this pair by hand",
                        i + 1,
                        more(short)
                    )),
            );
        }
    }
}

fn check_radius(tube: &Tube, line: &Line, problems: &mut Vec<Problem>) {
    let bends = line.path().bends();
    let Some(smallest) = bends.iter().map(Bend::radius).reduce(|a, b| if b < a { b } else { a }) else {
        return;
    };
    if let Some(limit) = tube.min_radius() {
        for (i, bend) in bends.iter().enumerate() {
            if to_mm(shortfall(to_mm(bend.radius()), to_mm(limit.value))) > 0.0 {
                problems.push(
                    Problem::new(Code::RadiusTooSmall, Part::Bend(i + 1))
                        .got(Value::Length(bend.radius()))
                        .need(Value::Length(limit.value))
                        .why(format!("tighter than the limit recorded for the tube ({})", limit.source)),
                );
            }
        }
    } else if !SEEN_OD_MM.contains(&to_mm(tube.od())) {
        problems.push(Problem::new(Code::RadiusLimitUnknown, Part::Line).got(Value::Length(smallest)));
    } else if to_mm(smallest) < SEEN_RADIUS_MM {
        problems.push(
            Problem::new(Code::RadiusBelowSeen, Part::Line)
                .got(Value::Length(smallest))
                .need(Value::Length(mm(SEEN_RADIUS_MM)))
                .why(
                    "the only public figure seen for 4.75 x 0.7 mm brake tube is a radius of at least 25 mm \
                     (a service manual citing DIN 74234); the tube maker's own figure overrides it",
                ),
        );
    } else {
        problems.push(Problem::new(Code::RadiusLimitUnknown, Part::Line).got(Value::Length(smallest)).why(
            "no radius of the tube's maker is recorded; the line keeps to the only public figure seen, 25 mm",
        ));
    }
}
