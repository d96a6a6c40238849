//! Designations as people write them.

use super::class::{Class, METRIC_CLASSES};
use super::engagement::EngagementGroup;
use super::inches::{halves, parts_of_inch, pipe_parts, unified_size, whole_size};
use super::metric::TABLE_PITCHES;
use super::read_pipe::{pipe_or_screw, pipe_thread};
use super::unified::Series;
use super::{Size, Thread, spelling};
use crate::code::Code;
use crate::error::Error;
use crate::problem::{Part, Problem, Value};

#[cfg(test)]
mod tests;

/// Largest diameter of ISO 965-1, in micrometers.
const LARGEST_UM: u32 = 355_000;
/// Coarsest pitch of ISO 261 and ISO 965-1, in micrometers.
const COARSEST_PITCH_UM: u32 = 8_000;

/// What goes wrong while reading: a code, and what is needed.
pub(super) type Wrong = (Code, String);

pub(super) fn wrong<T>(code: Code, need: impl Into<String>) -> Result<T, Wrong> {
    Err((code, need.into()))
}

impl Thread {
    /// Reads a designation: `"M10x1"`, `"M 10 × 1,0 - 6g"`, `"3/8-24"`, `"7/16-24 UNS-2B"`, `"3/8 UNF"`, `"G1/8 A"`,
    /// `"Rc 1/8"`, `"1/8-27 NPT"`, each with `LH` for left hand.
    ///
    /// # Errors
    /// `THREAD_AMBIGUOUS` for a metric diameter without pitch or without its M, a fraction of an inch alone or a pipe thread without its family, `HEX_NOT_THREAD` for
    /// a spanner size or a bare length, `THREAD_CONTRADICTION` where count, series or class do not belong to the size,
    /// `OUT_OF_RANGE` for a metric size that cannot be, `UNREADABLE` otherwise.
    ///
    /// ```
    /// use linewright::Thread;
    /// assert_eq!(Thread::read("M 10 × 1,0")?, Thread::read("M10x1")?);
    /// assert_eq!(Thread::read("3/8 UNF 2a")?.to_string(), "3/8-24 UNF-2A");
    /// # Ok::<(), linewright::Error>(())
    /// ```
    pub fn read(text: &str) -> Result<Thread, Error> {
        parse(spelling::plain(text).trim()).map_err(|(code, need)| {
            Problem::new(code, Part::Field("thread".to_owned()))
                .got(Value::text(text))
                .need(Value::text(need))
                .into()
        })
    }

    /// Reads a designation, or `"unknown"` as a thread that is not known.
    ///
    /// # Errors
    /// As [`Thread::read`].
    pub fn read_or_unknown(text: &str) -> Result<Option<Thread>, Error> {
        if text.trim().eq_ignore_ascii_case("unknown") { Ok(None) } else { Thread::read(text).map(Some) }
    }
}

fn parse(plain: &str) -> Result<Thread, Wrong> {
    let (body, hand) = spelling::without_hand(plain);
    let (body, is_inch) = spelling::without_inch(&body);
    // `MF10x1` is metric fine.
    let is_fine = |rest: &&str| rest.starts_with(|c: char| c.is_ascii_digit());
    let fine = body.get(..2).filter(|start| start.eq_ignore_ascii_case("mf")).and_then(|_| body.get(2..));
    let fine = fine.map(str::trim_start).filter(is_fine).map(|rest| format!("M{rest}"));
    // `UNF 3/8-24` has its series first.
    let first = body.split_once(' ').filter(|(word, _)| Series::read(word).is_some());
    let turned = first.map(|(word, rest)| format!("{rest} {word}")).or_else(|| count_first(&body));
    let body = fine.or(turned).unwrap_or(body);
    let body = body.as_str();
    let low = body.to_ascii_lowercase();
    let is_metric =
        low.strip_prefix('m').is_some_and(|rest| rest.trim_start().starts_with(|c: char| c.is_ascii_digit()));
    let thread = if is_metric {
        metric(body)?
    } else if let Some(thread) = pipe_thread(body, &low)? {
        thread
    } else if let Some(thread) = unified(body, is_inch)? {
        thread
    } else {
        return Err(no_thread(&low));
    };
    Ok(Thread { hand, ..thread })
}

/// `24 tpi 3/8 UNF` as `3/8-24 UNF`.
fn count_first(body: &str) -> Option<String> {
    let at = body.to_ascii_lowercase().find("tpi")?;
    let (count, rest) = (body[..at].trim(), body[at + 3..].trim());
    // A class begins with its digit.
    let at = rest.find(|c: char| c.is_ascii_alphabetic()).unwrap_or(rest.len());
    let is_class = rest[at..].starts_with(['a', 'A', 'b', 'B']) && rest[..at].ends_with(['1', '2', '3']);
    let (size, words) = rest.split_at(if is_class { at - 1 } else { at });
    let size = size.trim_end_matches(['"', '-', ' ']);
    let is_size = size.starts_with(|c: char| c.is_ascii_digit() || c == '.' || c == '#');
    (is_size && halves(count).is_some()).then(|| format!("{size}-{count} {words}"))
}

/// Why a text that is no designation is none.
fn no_thread(low: &str) -> Wrong {
    let tight: String = low.chars().filter(|c| !c.is_whitespace()).collect();
    // Old British screws; their pipe threads are read.
    if ["bsw", "bsf", "whit"].iter().any(|word| tight.contains(word)) || tight.ends_with("ba") {
        let need = "a metric, Unified or pipe thread: Whitworth, BSF and BA threads are not computed here";
        return (Code::Unreadable, need.to_owned());
    }
    let ends = ["mm", "in", "inch", "\""].iter().any(|word| tight.ends_with(word));
    let is_tool = ["spanner", "wrench", "hex", "af", "a/f", "flats", "nut", "sw"]
        .iter()
        .any(|word| tight.contains(word));
    let has_digit = tight.contains(|c: char| c.is_ascii_digit());
    if let (Some(size), false) = (bare_metric(&tight), is_tool) {
        let need = format!("{size} with its M, if it is a metric thread");
        return (Code::ThreadAmbiguous, need);
    }
    let bare = ["fine", "coarse"].iter().find_map(|word| tight.strip_suffix(word)).unwrap_or(&tight);
    if parts_of_inch(bare, 64).is_some_and(|_| tight.contains('/')) {
        let need = format!(
            "threads per inch or family of {tight} too, such as 3/8-24 or G1/8; a spanner's size is no thread"
        );
        return (Code::ThreadAmbiguous, need);
    }
    if has_digit && (is_tool || ends && tight.starts_with(|c: char| c.is_ascii_digit())) {
        let need = "the thread's own diameter and pitch, not the size of its hexagon";
        return (Code::HexNotThread, need.to_owned());
    }
    (Code::Unreadable, "a designation such as M10x1, 3/8-24, G1/8 or 1/8-27 NPT".to_owned())
}

/// `10mmx1.0mm` or `10x1` as `M10x1`: a metric thread without its M, or some other size.
fn bare_metric(tight: &str) -> Option<String> {
    let (diameter, pitch) = tight.split_once('x')?;
    let size =
        |text: &str| thousandths(text.strip_suffix("mm").unwrap_or(text)).map(|um| f64::from(um) / 1000.0);
    let (diameter, pitch) = (size(diameter)?, size(pitch)?);
    (0.0 < pitch && 2.0 * pitch < diameter).then(|| format!("M{diameter}x{pitch}"))
}

/// `M10x1`, then a class, then a group of engagement, set off by `-` or spaces.
fn metric(text: &str) -> Result<Thread, Wrong> {
    const SHAPE: &str = "diameter and pitch, such as M10x1";
    let rest = text[1..].trim_start();
    let number = |text: &str| text.find(|c: char| !c.is_ascii_digit() && c != '.').unwrap_or(text.len());
    let (diameter, rest) = rest.split_at(number(rest));
    let Some(diameter_um) = thousandths(diameter) else { return wrong(Code::Unreadable, SHAPE) };
    let bare = rest.trim_start();
    let rest = bare.strip_prefix("mm").unwrap_or(rest);
    // Some write the pitch after a dash, a slash or a space; a class after it has letters. What is no pitch that such a
    // diameter is made with is a strength, `M20-8.8`, or a length.
    // A slash after three digits is that of a fraction: 24 and an eighth.
    let marks: &[char] = if diameter_um < 100_000 { &['-', '/', ' '] } else { &['-', ' '] };
    let loose = rest.strip_prefix(marks).map(|rest| rest.trim_start_matches(marks));
    let loose = loose.filter(|rest| {
        let word = rest.split(['-', ' ']).next().unwrap_or_default();
        thousandths(word).is_some_and(|pitch_um| is_usual_pitch(diameter_um, pitch_um))
    });
    let rest = rest.trim_start();
    let Some(rest) = rest.strip_prefix(['x', 'X']).or(loose) else {
        let is_word = rest.is_empty() || rest.starts_with(['-', '/', ' ', 'f', 'c', '6']);
        return if is_word || rest.chars().all(char::is_alphanumeric) {
            wrong(Code::ThreadAmbiguous, "the pitch too, such as M10x1: measure ten pitches")
        } else {
            wrong(Code::Unreadable, SHAPE)
        };
    };
    let rest = rest.trim_start();
    let (pitch, rest) = rest.split_at(number(rest));
    let Some(pitch_um) = thousandths(pitch) else { return wrong(Code::Unreadable, SHAPE) };
    if pitch_um == 0
        || pitch_um * 2 >= diameter_um
        || pitch_um > COARSEST_PITCH_UM
        || diameter_um > LARGEST_UM
    {
        return wrong(
            Code::OutOfRange,
            "a diameter up to 355 mm, and a pitch up to 8 mm and below half of it (ISO 965-1); the length of a bolt is no pitch",
        );
    }
    let mut thread = Thread::of(Size::Metric { diameter_um, pitch_um });
    let rest = rest.trim_start();
    let rest = rest.strip_prefix("mm").unwrap_or(rest);
    if rest.trim_start().starts_with(['x', 'X']) {
        return wrong(
            Code::Unreadable,
            "diameter and pitch alone, such as M10x1: the length of a bolt is not its thread's",
        );
    }
    for word in rest.split(['-', ' ']).filter(|word| !word.is_empty()) {
        if let (Some(class), None) = (Class::metric(word), thread.class) {
            thread.class = Some(class);
        } else if let (Some(group), None) = (EngagementGroup::read(word), thread.engagement) {
            // The standard puts a group after a class only, and an L that stands alone may be somebody's left hand.
            if thread.class.is_none() {
                return wrong(
                    Code::ThreadAmbiguous,
                    "a class before the group of engagement, such as M10x1-6g-L, or LH for left hand",
                );
            }
            thread.engagement = Some(group);
        } else if word.contains('/') {
            return wrong(Code::Unreadable, "one thread: a nut's or a port's, not the pair of classes");
        } else {
            return wrong(Code::Unreadable, METRIC_CLASSES);
        }
    }
    Ok(thread)
}

/// The coarse series of ISO 261 (from memory): from which diameter on a pitch is the coarse one, both in micrometers.
const COARSE: [(u32, u32); 23] = [
    (1_000, 250),
    (1_400, 300),
    (1_600, 350),
    (2_000, 400),
    (2_200, 450),
    (3_000, 500),
    (3_500, 600),
    (4_000, 700),
    (4_500, 750),
    (5_000, 800),
    (6_000, 1_000),
    (8_000, 1_250),
    (10_000, 1_500),
    (12_000, 1_750),
    (14_000, 2_000),
    (18_000, 2_500),
    (24_000, 3_000),
    (30_000, 3_500),
    (36_000, 4_000),
    (42_000, 4_500),
    (48_000, 5_000),
    (56_000, 5_500),
    (64_000, 6_000),
];

/// Whether a pitch is one of the standard's, and no coarser than the coarse one of such a diameter.
fn is_usual_pitch(diameter_um: u32, pitch_um: u32) -> bool {
    let coarse = COARSE.iter().take_while(|(from, _)| *from <= diameter_um).last();
    TABLE_PITCHES.contains(&pitch_um) && coarse.is_some_and(|(_, coarse)| pitch_um <= *coarse)
}

/// `"10"` as 10 000, `"1.25"` as 1 250, `".75"` as 750.
fn thousandths(text: &str) -> Option<u32> {
    let (whole, part) = text.split_once('.').unwrap_or((text, ""));
    let digits = |t: &str| t.chars().all(|c| c.is_ascii_digit());
    if whole.is_empty() && part.is_empty()
        || text.ends_with('.')
        || whole.len() > 4
        || part.len() > 3
        || !digits(whole)
        || !digits(part)
    {
        return None;
    }
    format!("0{whole}{part:0<3}").parse().ok()
}

/// `3/8-24`, `7/16 - 24 UNS-2A`, `1 1/4-12`, `No. 10-32`, `.375-24 UNF`, `3/8 UNF`.
fn unified(text: &str, is_inch: bool) -> Result<Option<Thread>, Wrong> {
    let at = text.find(|c: char| c.is_ascii_alphabetic() && !"xXnNoO".contains(c));
    let at = at.unwrap_or(text.len());
    // "UN..." begins the series, or its older "N..."; `N` and `o` may stand in "No." before it.
    let low = text.to_ascii_lowercase();
    let series = ["un", "nf", "nc", "nef"];
    let at = series.iter().filter_map(|word| low.find(word)).fold(at, usize::min);
    // A class right after the count, `3/8-24-2A`, begins with its digit.
    let signs = text.as_bytes();
    let is_class = at >= 2 && matches!(signs[at - 1], b'1'..=b'3') && matches!(signs[at - 2], b'-' | b' ');
    let at = if is_class && low[at..].starts_with(['a', 'b']) { at - 1 } else { at };
    let (numbers, words) = text.split_at(at);
    let numbers = numbers.trim().trim_end_matches('-').trim();
    // Only what looks like a designation is told what its words should be.
    let is_named = series.iter().chain(&["tpi"]).any(|word| low[at..].starts_with(word));
    if !numbers.contains(['-', 'x', 'X']) && !is_named {
        return Ok(None);
    }
    // A whole number before an x is the length of a bolt or the wall of a tube, no number size.
    let is_other = numbers.split_once(['x', 'X']).is_some_and(|(size, _)| size.trim().parse::<u32>().is_ok());
    if is_other {
        return Ok(None);
    }
    let (series, class) = series_and_class(words)?;
    let (size, count) = size_and_count(numbers, is_named);
    let is_bare = words.trim().is_empty();
    if let (true, Some(count)) = (is_bare && numbers.contains(['x', 'X']), count.and_then(halves)) {
        if size.contains('-') {
            return wrong(Code::Unreadable, "the thread alone: the length of a screw is no part of it");
        }
        // A coil of 3/16 in and so many feet is written just so.
        let count = f64::from(count) / 2.0;
        let series = if is_tube_like(size) { " UNS" } else { "" };
        return wrong(
            Code::ThreadAmbiguous,
            format!("{size}-{count}{series} with a dash, if it is a thread"),
        );
    }
    let per_two_inch = match count.map(halves) {
        Some(None) => return Ok(None),
        Some(halves) => halves,
        None => None,
    };
    let is_plain = series.is_none() && class.is_none();
    if let (true, Some(parts), Some(count)) = (is_plain, pipe_parts(size), per_two_inch) {
        pipe_or_screw(parts, count)?;
    }
    let found = match size.parse::<u32>() {
        Ok(whole) => whole_size(whole, per_two_inch, series, is_inch)?,
        Err(_) => unified_size(size),
    };
    let Some(diameter_uin) = found else { return Ok(None) };
    let own = series.and_then(|series| series.per_two_inch(diameter_uin));
    let per_two_inch = match (per_two_inch, own) {
        (Some(count), _) => count,
        (None, Some(count)) => count,
        (None, None) if series.is_some() => {
            return wrong(Code::ThreadAmbiguous, "the threads per inch too, such as 7/16-24 UNS");
        }
        (None, None) => return Ok(None),
    };
    let actual = Series::of(diameter_uin, per_two_inch);
    if f64::from(per_two_inch) / 2.0 * f64::from(diameter_uin) / 1e6 < 2.0 {
        return Ok(None);
    }
    let contradicts = |said: Series| {
        let is_loose = matches!((said, actual), (Series::Un, _) | (Series::Uns, Series::Un));
        said != actual && !is_loose
    };
    if is_bare && actual == Series::Uns && is_tube_like(size) {
        return wrong(Code::ThreadAmbiguous, format!("UNS after it, if {size} are inches"));
    }
    if series.is_some_and(contradicts) {
        return wrong(Code::ThreadContradiction, format!("{} for this diameter and count", actual.name()));
    }
    Ok(Some(Thread { class, ..Thread::of(Size::Unified { diameter_uin, per_two_inch }) }))
}

/// Whether a size may be that of a tube in millimeters, as 4.75 is.
fn is_tube_like(size: &str) -> bool {
    size.contains('.') && !size.starts_with(['.', '0'])
}

/// `3/8-24`, `3/8 x 24`, `2-4 1/2` in two; with a word after it also `3/8 24`.
fn size_and_count(numbers: &str, is_named: bool) -> (&str, Option<&str>) {
    let has_size = |size: &str| size.contains(|c: char| c.is_ascii_digit());
    let dashed = numbers.rsplit_once(['-', 'x', 'X']).filter(|(_, count)| is_count(count));
    let spaced = || {
        let pair = numbers.rsplit_once(' ')?;
        (is_named && has_size(pair.0) && !pair.1.contains('/') && !numbers.contains('-')).then_some(pair)
    };
    match dashed.or_else(spaced) {
        Some((size, count)) => (size.trim_end(), Some(count.trim_start())),
        None => (numbers, None),
    }
}

/// Whether what stands after a dash is a number of threads: all numbers, and of fractions 4 1/2 and 11 1/2.
pub(super) fn is_count(text: &str) -> bool {
    !text.contains('/') || halves(text.trim()).is_some()
}

/// `UNF-2A`, `uns`, `2B`, `tpi`, nothing.
fn series_and_class(words: &str) -> Result<(Option<Series>, Option<Class>), Wrong> {
    const NEED: &str =
        "a series (UNC, UNF, UNEF, UN, UNS) and a class (1A to 3A outside, 1B to 3B inside), or nothing";
    let (mut series, mut class) = (None, None);
    // `UNF2A` is two words.
    let words = words.split(['-', ' ']).flat_map(|word| {
        let (series, class) = word.split_at(word.find(|c: char| c.is_ascii_digit()).unwrap_or(word.len()));
        [series, class]
    });
    for word in words.filter(|word| !word.is_empty()) {
        if let (Some(read), None) = (Series::read(word), series) {
            series = Some(read);
        } else if let (Some(read), None) = (Class::unified(word), class) {
            class = Some(read);
        } else if !word.eq_ignore_ascii_case("tpi") {
            return wrong(Code::Unreadable, NEED);
        }
    }
    Ok((series, class))
}
