//! Designations of pipe threads as people write them.

use super::class::Class;
use super::inches::{LARGEST_SCREW, halves, pipe_parts};
use super::read::{Wrong, is_count, wrong};
use super::unified::Series;
use super::{Family, Size, Thread, pipe};
use crate::code::Code;

/// `G1/8 A`, `Rp 1/4`, `1/8-27 NPT`, `NPT 1/8`, `1/8 BSPP`.
pub(super) fn pipe_thread(text: &str, low: &str) -> Result<Option<Thread>, Wrong> {
    // The longer names first: `npt` stands in `nptf`, `bsp` in `bspp`.
    let names: [(&str, Option<Family>); 10] = [
        ("nptf", None),
        ("npsm", None),
        ("npt", Some(Family::Npt)),
        ("bspp", Some(Family::G)),
        ("bspt", None),
        ("bsp", None),
        ("rp", Some(Family::Rp)),
        ("rc", Some(Family::Rc)),
        ("g", Some(Family::G)),
        ("r", Some(Family::R)),
    ];
    let found = names.into_iter().find_map(|(name, family)| {
        let at = low.find(name)?;
        let outside = |c: Option<char>| c.is_none_or(|c| !c.is_ascii_alphabetic());
        let is_word =
            outside(low[..at].chars().next_back()) && outside(low[at + name.len()..].chars().next());
        is_word.then(|| (name, family, text[..at].trim(), text[at + name.len()..].trim()))
    });
    let Some((name, family, before, after)) = found else { return Ok(None) };
    let Some(family) = family else {
        return match name {
            "bspt" => wrong(
                Code::ThreadAmbiguous,
                "R (external, taper), Rc (internal, taper) or Rp (internal, parallel)",
            ),
            "bsp" => wrong(Code::ThreadAmbiguous, "G (parallel) or R, Rc, Rp (for sealing on the thread)"),
            _ => wrong(Code::Unreadable, "NPT: the other American pipe threads are not computed here"),
        };
    };
    let (size, per_inch, rest) = size_and_rest(before, after);
    let Some(row) = pipe_parts(size).and_then(|parts| pipe::row(family, parts)) else {
        return wrong(
            Code::Unreadable,
            "a pipe size that its standard has, from 1/16 to 6 (NPT to 12), such as G1/8 or 1/8-27 NPT",
        );
    };
    if let Some(count) = per_inch {
        let own = f64::from(pipe::per_two_inch(family, row)) / 2.0;
        if halves(count).map(|halves| f64::from(halves) / 2.0) != Some(own) {
            return wrong(Code::ThreadContradiction, format!("{own} threads per inch for this size"));
        }
    }
    let class = match (family, rest.trim_start_matches('-').trim()) {
        (_, "") => None,
        (Family::G, "A" | "a") => Some(Class::PipeA),
        (Family::G, "B" | "b") => Some(Class::PipeB),
        (Family::G, _) => return wrong(Code::Unreadable, "class A or B after the size, or nothing"),
        _ => return wrong(Code::Unreadable, "nothing after the size: this family has no classes"),
    };
    Ok(Some(Thread { class, ..Thread::of(Size::Pipe { family, row }) }))
}

/// The size, threads per inch where they are given, and what stands after both. The name of the family stood between the two
/// texts: `1/8-27` and nothing, or nothing and `1/8 A`.
fn size_and_rest<'a>(before: &'a str, after: &'a str) -> (&'a str, Option<&'a str>, &'a str) {
    let ((before, first), (after, last)) = (spelled_count(before), spelled_count(after));
    // `1/8 NPT-27`.
    let named = (!before.is_empty()).then(|| after.trim_start_matches(['-', ' ']));
    let (after, last) = match named.filter(|count| halves(count).is_some()) {
        Some(count) => ("", Some(count)),
        None => (after, last),
    };
    let (size, rest) = match before {
        "" => split_size(after.trim_start_matches('-').trim_start()),
        size => (size, after),
    };
    // `G 1/8 in A`, `R1/8"`: a size in inches is all there is.
    let rest = rest.trim_start();
    let rest = ["inch", "in.", "in", "\""].iter().find_map(|word| rest.strip_prefix(word)).unwrap_or(rest);
    let dashed = size.rsplit_once('-').filter(|(_, count)| is_count(count));
    // `3/8 18 NPT`.
    let spaced =
        || size.rsplit_once(' ').filter(|(size, count)| size.contains('/') && halves(count).is_some());
    match dashed.or_else(spaced) {
        Some((size, count)) => (size.trim(), Some(count.trim()), rest),
        None => (size, first.or(last), rest),
    }
}

/// `1/8 28 tpi` into what stands before its count, and the count.
fn spelled_count(text: &str) -> (&str, Option<&str>) {
    let Some(numbers) =
        text.to_ascii_lowercase().strip_suffix("tpi").map(|start| text[..start.len()].trim_end())
    else {
        return (text, None);
    };
    let (size, count) = numbers.rsplit_once(' ').unwrap_or(("", numbers));
    if halves(count).is_some() { (size.trim_end(), Some(count)) } else { (text, None) }
}

/// `1/8 A` into size and rest: the size is digits, spaces, `/`, `-` and points.
fn split_size(text: &str) -> (&str, &str) {
    let is_rest = |c: char| c.is_ascii_alphabetic() || c == '"';
    let at = text.find(is_rest).unwrap_or(text.len());
    (text[..at].trim().trim_end_matches('-'), &text[at..])
}

/// A bare size and count that a pipe thread, larger than its name, has too.
pub(super) fn pipe_or_screw(sixteenths: u32, per_two_inch: u32) -> Result<(), Wrong> {
    const IN_16TH: u32 = 62_500;
    let has = |family: &Family| {
        pipe::row(*family, sixteenths).is_some_and(|row| pipe::per_two_inch(*family, row) == per_two_inch)
    };
    let all = [Family::G, Family::R, Family::Rp, Family::Rc, Family::Npt];
    let families: Vec<_> = all.into_iter().filter(has).map(Family::name).collect();
    if families.is_empty() {
        return Ok(());
    }
    let families = families.join(", ");
    let series = Series::of(sixteenths * IN_16TH, per_two_inch).name();
    let screw = format!(", or {series} after it for the screw of that diameter");
    let screw = if sixteenths <= 16 * LARGEST_SCREW { screw } else { String::new() };
    wrong(Code::ThreadAmbiguous, format!("the family of this pipe size, {families}{screw}"))
}
