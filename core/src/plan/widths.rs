//! What a flare must pass and what must hold it: the thread of its port is wider than the flare, the bore of its nut narrower.

use crate::code::Code;
use crate::flare::{Flare, flare_size, known_diameters};
use crate::line::End;
use crate::problem::Value;
use crate::thread::{Thread, ThreadSide};
use crate::units::{Length, mm, to_mm};

/// A flare is wider than its tube, and no wider than so many tubes (ours, no source).
const WIDEST_FLARE: f64 = 2.0;

/// To the micrometer that limits of threads have, and no more than it is.
fn fine(size_mm: f64) -> String {
    format!("{} mm", (size_mm * 1e3 + 1e-6).floor() / 1e3)
}

/// The widths of an end. A nut over its port, of a 37 degree flare, presses on a sleeve, which is not recorded, and its flare
/// passes no thread.
pub(super) fn check(end: &End, od: Length, wall: Length, find: &mut impl FnMut(Code, Value, Value)) {
    let is_over = end.flare == Flare::Single37;
    let is_flare = |size: &Length| to_mm(od) < to_mm(*size) && to_mm(*size) <= WIDEST_FLARE * to_mm(od);
    let measured = end.flare_diameter.filter(is_flare);
    let flared = measured.map(|size| [size; 2]).or_else(|| known_diameters(end.flare, od, wall));
    let flared = flared.filter(|_| !is_over);
    bore(end, flared.map(|[least, _]| to_mm(least)), find);
    if let Some(sizes) = flared {
        passage(end, sizes, find);
    }
    match (end.flare_diameter, flare_size(end.flare, od)) {
        (Some(given), _) if measured.is_none() => find(
            Code::FlareSizeUnknown,
            Value::Length(given),
            Value::text(format!(
                "more than {}, the tube's, and at most {}",
                Value::Length(od),
                Value::Length(mm(WIDEST_FLARE * to_mm(od)))
            )),
        ),
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

/// A bore as wide as the flare, or as what its own thread leaves of the nut, holds nothing.
fn bore(end: &End, flare_least: Option<f64>, find: &mut impl FnMut(Code, Value, Value)) {
    let side = if end.flare == Flare::Single37 { ThreadSide::Internal } else { ThreadSide::External };
    let root = end.nut.thread().map(|thread| {
        let minor = thread.plain().limits(side).ok().and_then(|limits| limits.minor.max);
        minor.map_or(to_mm(thread.diameter()) - 2.0 * to_mm(thread.height()), to_mm)
    });
    if let Some(most) = flare_least.into_iter().chain(root).reduce(f64::min)
        && to_mm(end.nut.bore()) >= most
    {
        let need = Value::text(format!("less than {}", fine(most)));
        find(Code::NutBoreLarge, Value::Length(end.nut.bore()), need);
    }
}

/// Whether the flare passes the crests of the port's thread on its way to the seat. A taper thread is narrower inside.
fn passage(end: &End, [least, most]: [Length; 2], find: &mut impl FnMut(Code, Value, Value)) {
    let crests = |thread: Thread| thread.limits(ThreadSide::Internal).ok().map(|limits| limits.minor);
    let Some(hole) = end.port.as_ref().and_then(|port| port.thread).and_then(crests) else { return };
    let need = |size: Length| {
        Value::text(format!("less than {}, the port's thread over its crests", fine(to_mm(size))))
    };
    match (hole.min, hole.max) {
        (_, Some(widest)) if least >= widest => find(Code::FlareTooWide, Value::Length(least), need(widest)),
        (Some(narrowest), _) if most >= narrowest => {
            find(Code::FlareWidthClose, Value::Length(most), need(narrowest));
        }
        _ => {}
    }
}
