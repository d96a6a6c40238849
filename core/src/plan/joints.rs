//! Nut, flare and port of each end: whether they belong together. Not known is never taken for yes.

use super::widths;
use crate::code::Code;
use crate::flare::{Fit, Flare};
use crate::line::{ClampMargin, End, Line};
use crate::problem::{Ledger, Part, Problem, Side, Value};
use crate::source::Source;
use crate::thread::{Mating, Thread, ThreadSide, ways_apart};
use crate::units::{Length, mm, to_mm};

pub(super) fn check(line: &Line, problems: &mut Vec<Problem>, ledger: &mut Ledger) {
    if let Some(reason) = line.waits_for() {
        problems.push(Problem::new(Code::Deferred, Part::Line).got(Value::text(reason)));
    }
    for side in [Side::A, Side::B] {
        check_end(line, Part::End(side), line.end(side), problems, ledger);
        check_holes(line.end(side), line.tube().od(), Part::End(side), problems);
    }
}

/// Whether the end goes through its holes: with its nut on, or bare where it is flared in place.
fn check_holes(end: &End, od: Length, part: Part, problems: &mut Vec<Problem>) {
    let Some(smallest) = end.holes.iter().copied().reduce(|a, b| if b < a { b } else { a }) else { return };
    let (what, size) = if end.flared_in_place {
        ("tube", Some(od))
    } else {
        ("nut across its corners", end.nut.across_corners())
    };
    match size {
        None => problems.push(
            Problem::new(Code::HexUnknown, part).need(Value::text("the hexagon of the nut across its flats")),
        ),
        Some(size) if to_mm(size) >= to_mm(smallest) => problems.push(
            Problem::new(Code::HoleTooSmall, part)
                .got(Value::Length(smallest))
                .need(Value::text(format!("more than {what}, {}", Value::Length(size)))),
        ),
        Some(_) => {}
    }
}

/// Nut and port: the same thread, or what the other one does in it.
fn threads(end: &End, nut: &Thread, hole: &Thread, part: &Part, problems: &mut Vec<Problem>) {
    let named = [format!("nut {nut}"), format!("port {hole}")].map(Value::text);
    let found = |code| {
        let [got, need] = named.clone();
        Problem::new(code, part.clone()).got(got).need(need)
    };
    // The nut of a 37 degree flare goes over its port.
    let is_over = end.flare == Flare::Single37;
    let (male, female) = if is_over { (hole, nut) } else { (nut, hole) };
    let side_of_nut = if is_over { ThreadSide::Internal } else { ThreadSide::External };
    match Mating::new(male, female) {
        Ok(pair) if pair.is_same() => {}
        Ok(pair) => {
            let code = if pair.is_lookalike() { Code::ThreadLookalike } else { Code::ThreadMismatch };
            let mut problem = found(code).why(pair.verdict());
            if let Some(way) =
                ways_apart(nut, hole, side_of_nut).iter().find(|way| way.separates && pair.is_lookalike())
            {
                let words = way.words(nut.plain(), hole.plain());
                problem = problem
                    .fix(format!("the nut that the port was made for; to be sure, on the nut {words}"));
            }
            problems.push(problem);
        }
        Err(error) => problems.push(Problem { part: part.clone(), ..error.into_problem() }),
    }
}

/// The length after which the right nut may bind in its port all the same, as a taper thread does that seals by wedging.
fn wedges(end: &End) -> Option<Length> {
    let (nut, hole) = (end.nut.thread()?, end.port.as_ref()?.thread?);
    let (male, female) = if end.flare == Flare::Single37 { (hole, nut) } else { (nut, hole) };
    Mating::new(&male, &female).ok().filter(Mating::is_same)?.lengths()[0]
}

/// Whether the nut clamps the flare before it comes to its end, and on enough thread.
fn clamp(end: &End, wall: Length, part: &Part, problems: &mut Vec<Problem>, ledger: &mut Ledger) {
    let wedges = wedges(end);
    let Some(margin) = end.clamp_margin(wall) else {
        if let Some(after) = wedges {
            problems.push(
                Problem::new(Code::ClampMarginNone, part.clone())
                    .got(Value::text(format!("a taper thread that may wedge after {}", Value::Length(after))))
                    .need(Value::text(
                        "a parallel thread, or depths that show that the flare is clamped before",
                    ))
                    .why("a thread that wedges feels tight and may clamp no flare"),
            );
            return;
        }
        let unknown = Problem::new(Code::ClampMarginUnknown, part.clone());
        problems.push(if end.flare == Flare::Single37 {
            unknown
                .why("whether the nut clamps the flare before it comes to its end is not computed for a nut over its port")
                .fix("looking how many threads show when it is snug")
        } else {
            unknown.need(Value::text("the port's depths to thread end and seat, the nut's thread and lead"))
        });
        return;
    };
    let error = mm(ClampMargin::DEPTH_ERROR_MM);
    let turns = ClampMargin::TURNS;
    ledger.assume(
        "error of a measured depth of nut or port",
        Value::Length(error),
        Source::common_practice(),
    );
    ledger.assume(
        "turns a nut must have in its port",
        Value::Count(turns as usize),
        Source::common_practice(),
    );
    let held = end.nut.thread().map_or(error, |thread| error + mm(f64::from(turns) * to_mm(thread.pitch())));
    let engaged_most = end.engaged_at_most(wall).unwrap_or(margin.engaged);
    // How thick a flare is is known within bounds only: between them it is not known whether enough thread holds.
    if margin.engaged < held && engaged_most >= held {
        let [least, most] = [margin.engaged, engaged_most].map(Value::Length);
        problems.push(
            Problem::new(Code::ClampMarginUnknown, part.clone())
                .got(Value::text(format!("{least} to {most} of the nut's thread in the port's")))
                .need(Value::text(format!("at least {}", Value::Length(held))))
                .why("whether enough thread holds when the nut clamps depends on how thick the flare is, which is not known")
                .fix("counting the turns of the nut until it is snug on a finished flare"),
        );
    }
    let short: Vec<_> = [
        (
            margin.under_head,
            error,
            "between the nut's head and the face of the port",
            "its head meets the port's face",
        ),
        (
            margin.beyond_thread,
            error,
            "of the port's thread beyond the nut's",
            "its thread meets the end of the port's",
        ),
        (engaged_most, held, "of the nut's thread in the port's", "hardly any thread holds it"),
    ]
    .into_iter()
    .chain(wedges.map(|after| {
        let left = mm(to_mm(after) - to_mm(engaged_most));
        (left, error, "left before the thread may wedge", "its taper thread may wedge first")
    }))
    .filter(|(length, least, ..)| length < least)
    .collect();
    if short.is_empty() {
        return;
    }
    let reasons = join(short.iter().map(|(_, _, _, why)| (*why).to_owned()));
    let found = join(short.iter().map(|(length, _, what, _)| format!("{} {what}", Value::Length(*length))));
    let wanted =
        join(short.iter().map(|(_, least, what, _)| format!("at least {} {what}", Value::Length(*least))));
    problems.push(
        Problem::new(Code::ClampMarginNone, part.clone())
            .got(Value::text(found))
            .need(Value::text(wanted))
            .why(format!("when the nut should clamp its flare: {reasons}")),
    );
}

fn join(parts: impl Iterator<Item = String>) -> String {
    parts.collect::<Vec<_>>().join("; ")
}

/// How far beyond the middle of its seat the thread of a port may end, in outside diameters of the tube: a seat is about
/// as high as the tube is thick, so a thread that goes on further was measured or typed wrongly (ours, no source).
const THREAD_BEYOND_SEAT: f64 = 1.0;

/// Whether the depths of a port can belong to one port.
fn depths(end: &End, od: Length, part: &Part, problems: &mut Vec<Problem>) {
    let depths = end.port.as_ref().and_then(|port| port.thread_depth.zip(port.seat_depth));
    let Some((thread, seat)) = depths.filter(|_| end.flare != Flare::Single37) else { return };
    let most = mm(to_mm(seat) + THREAD_BEYOND_SEAT * to_mm(od));
    if thread > most {
        problems.push(Problem::new(Code::PortDepthsOdd, part.clone()).got(Value::Length(thread)).need(
            Value::text(format!("at most {}, a tube's diameter beyond the seat", Value::Length(most))),
        ));
    }
}

fn check_end(line: &Line, part: Part, end: &End, problems: &mut Vec<Problem>, ledger: &mut Ledger) {
    let (od, wall) = (line.tube().od(), line.tube().wall());
    let mut find =
        |code, got: Value, need: Value| problems.push(Problem::new(code, part.clone()).got(got).need(need));
    let flare = Value::text(format!("{} flare", end.flare.name()));
    if to_mm(end.nut.bore()) <= to_mm(od) {
        find(
            Code::NutBoreSmall,
            Value::Length(end.nut.bore()),
            Value::text(format!("more than {}", Value::Length(od))),
        );
    }
    widths::check(end, od, wall, &mut find);
    let nose = end.nut.nose();
    match end.flare.fits_nose(nose) {
        Fit::Fits => {}
        Fit::DoesNotFit => find(Code::NoseMismatch, named("nose", nose.map(|n| n.name())), flare.clone()),
        Fit::NotKnown => {
            find(Code::NoseUnknown, Value::text("unknown nose"), Value::text("the form of the nose"))
        }
    }
    let Some(port) = &end.port else {
        find(Code::PortUnknown, Value::Nothing, Value::text("the port's thread and seat"));
        if end.nut.thread().is_none() {
            find(Code::ThreadUnknown, Value::text("nut"), Value::text("diameter and pitch"));
        }
        return;
    };
    match (end.nut.thread(), port.thread) {
        (Some(nut), Some(hole)) => threads(end, &nut, &hole, &part, problems),
        (nut, hole) => {
            let missing = match (nut, hole) {
                (None, None) => "nut and port",
                (None, _) => "nut",
                _ => "port",
            };
            find(Code::ThreadUnknown, Value::text(missing), Value::text("diameter and pitch"));
        }
    }
    depths(end, od, &part, problems);
    clamp(end, wall, &part, problems, ledger);
    let mut find =
        |code, got: Value, need: Value| problems.push(Problem::new(code, part.clone()).got(got).need(need));
    match end.flare.fits_seat(port.seat) {
        Fit::Fits => {}
        Fit::DoesNotFit => find(Code::FlareSeatMismatch, named("seat", port.seat.map(|s| s.name())), flare),
        Fit::NotKnown => {
            find(Code::SeatUnknown, Value::text("unknown seat"), Value::text("the form of the seat"))
        }
    }
}

fn named(what: &str, name: Option<&str>) -> Value {
    Value::text(format!("{} {what}", name.unwrap_or("unknown")))
}
