//! What a flare must pass and what must hold it: the thread of its port is wider than the flare, the bore of its nut narrower.

use crate::code::Code;
use crate::flare::{Flare, flare_size, known_diameters};
use crate::line::End;
use crate::problem::Value;
use crate::thread::{Thread, ThreadSide};
use crate::units::{Length, to_mm};

/// A flare is wider than its tube, and no wider than so many tubes (ours, no source).
const WIDEST_FLARE: f64 = 2.0;
/// How well a diameter is measured with a caliper, in mm either way (ours, no source).
const ERROR_MM: f64 = 0.05;

/// To the micrometer that limits of threads have, and no more than it is.
fn fine(size_mm: f64) -> String {
    format!("{} mm", (size_mm * 1e3 + 1e-6).floor() / 1e3)
}

/// The widths of an end. A nut over its port, of a 37 degree flare, presses on a sleeve, which is not recorded, and its flare
/// passes no thread.
pub(super) fn check(end: &End, od: Length, wall: Length, find: &mut impl FnMut(Code, Value, Value)) {
    let is_over = end.flare == Flare::Single37;
    let known = known_diameters(end.flare, od, wall).map(|sizes| sizes.map(to_mm));
    let measured = end.flare_diameter.map(|size| [to_mm(size) - ERROR_MM, to_mm(size) + ERROR_MM]);
    let flared = measured.or(known).filter(|_| !is_over);
    bore(end, flared.map(|[least, _]| least), find);
    if let Some(sizes) = flared {
        passage(end, sizes, find);
    }
    match (end.flare_diameter, flare_size(end.flare, od)) {
        (Some(given), _) => odd(given, od, known, find),
        (None, None) if !is_over => find(
            Code::FlareSizeUnknown,
            Value::text(format!("{} flare", end.flare.name())),
            Value::text(format!("a flare wider than the nut's bore, {}", Value::Length(end.nut.bore()))),
        ),
        (None, Some(size)) if !size.is_for(wall) => find(
            Code::FlareWallUnseen,
            Value::Length(wall),
            Value::text(format!("at most {}", Value::Length(size.wall_most))),
        ),
        _ => {}
    }
}

/// Whether what was measured can be a flare of this tube, and one as the public figures have it.
fn odd(given: Length, od: Length, known: Option<[f64; 2]>, find: &mut impl FnMut(Code, Value, Value)) {
    let [least, most] = known.unwrap_or([to_mm(od), WIDEST_FLARE * to_mm(od)]);
    if to_mm(given) < least - ERROR_MM || to_mm(given) > most + ERROR_MM {
        let need = Value::text(format!("{} to {}", fine(least), fine(most)));
        find(Code::FlareSizeOdd, Value::text(fine(to_mm(given))), need);
    }
}

/// A bore as wide as the flare, or as what its own thread leaves of the nut, holds nothing. The bore was measured too.
fn bore(end: &End, flare_least: Option<f64>, find: &mut impl FnMut(Code, Value, Value)) {
    let side = if end.flare == Flare::Single37 { ThreadSide::Internal } else { ThreadSide::External };
    let root = end.nut.thread().map(|thread| {
        let minor = thread.plain().limits(side).ok().and_then(|limits| limits.minor.max);
        minor.map_or(to_mm(thread.diameter()) - 2.0 * to_mm(thread.height()), to_mm)
    });
    if let Some(most) = flare_least.into_iter().chain(root).reduce(f64::min)
        && to_mm(end.nut.bore()) >= most - ERROR_MM
    {
        let need = Value::text(format!("less than {}", fine(most - ERROR_MM)));
        find(Code::NutBoreLarge, Value::text(fine(to_mm(end.nut.bore()))), need);
    }
}

/// Whether the flare passes the crests of the port's thread on its way to the seat. A taper thread is narrower inside.
fn passage(end: &End, [least, most]: [f64; 2], find: &mut impl FnMut(Code, Value, Value)) {
    let crests = |thread: Thread| thread.limits(ThreadSide::Internal).ok().map(|limits| limits.minor);
    let Some(hole) = end.port.as_ref().and_then(|port| port.thread).and_then(crests) else { return };
    let mut tell = |code: Code, flare: f64, hole: f64| {
        let need = format!("less than {}, the port's thread over its crests", fine(hole));
        find(code, Value::text(fine(flare)), Value::text(need));
    };
    match (hole.min.map(to_mm), hole.max.map(to_mm)) {
        (_, Some(widest)) if least >= widest => tell(Code::FlareTooWide, least, widest),
        (Some(narrowest), _) if most >= narrowest => tell(Code::FlareWidthClose, most, narrowest),
        _ => {}
    }
}
