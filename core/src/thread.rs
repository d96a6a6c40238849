//! Threads by their designation.

#[cfg(test)]
mod tests;

use crate::code::Code;
use crate::error::Error;
use crate::problem::Value;
use crate::units::{Length, inch, mm};
use std::fmt;

/// A thread, named by diameter and pitch. Whole numbers inside, so that two spellings of one thread are equal.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Thread(Kind);

#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
enum Kind {
    /// ISO metric: diameter and pitch in micrometers.
    Metric { diameter_um: u32, pitch_um: u32 },
    /// Unified: diameter in 64ths of an inch, threads per inch.
    Inch { diameter_64: u32, per_inch: u32 },
}

impl Thread {
    /// Reads a designation: `"M10x1"`, `"M 10 × 1,0"`, `"3/8-24"`, `"7/16-24 UNS"`.
    ///
    /// # Errors
    /// `THREAD_AMBIGUOUS` for a metric diameter without pitch, `HEX_NOT_THREAD` for a spanner size or a bare length,
    /// `UNREADABLE` otherwise.
    ///
    /// ```
    /// use linewright::Thread;
    /// assert_eq!(Thread::read("M 10 × 1,0")?, Thread::read("M10x1")?);
    /// # Ok::<(), linewright::Error>(())
    /// ```
    pub fn read(text: &str) -> Result<Thread, Error> {
        let plain: String = text
            .chars()
            .map(|c| match c {
                '×' | '*' => 'x',
                ',' => '.',
                '\u{2044}' | '\u{2215}' => '/',
                '–' | '−' => '-',
                c => c.to_ascii_lowercase(),
            })
            .collect();
        let tight: String = plain.chars().filter(|c| !c.is_whitespace()).collect();
        let fail = |code, need: &str| Err(Error::field(code, "thread", Value::text(text), Value::text(need)));
        if let Some(rest) =
            tight.strip_prefix('m').filter(|rest| rest.starts_with(|c: char| c.is_ascii_digit()))
        {
            return match rest.split_once('x') {
                Some((diameter, pitch)) => match (thousandths(diameter), thousandths(pitch)) {
                    (Some(diameter_um), Some(pitch_um)) if pitch_um > 0 && pitch_um * 2 < diameter_um => {
                        Ok(Thread(Kind::Metric { diameter_um, pitch_um }))
                    }
                    _ => fail(Code::Unreadable, "diameter and pitch, such as M10x1"),
                },
                None if thousandths(rest).is_some() => {
                    fail(Code::ThreadAmbiguous, "the pitch too, such as M10x1: measure ten pitches")
                }
                None => fail(Code::Unreadable, "diameter and pitch, such as M10x1"),
            };
        }
        if let Some(thread) = unified(&plain) {
            return Ok(thread);
        }
        let is_size = ["mm", "in", "inch", "\"", "″", "spanner", "wrench", "hex", "af"]
            .iter()
            .any(|word| tight.ends_with(word));
        if is_size && tight.starts_with(|c: char| c.is_ascii_digit()) {
            return fail(
                Code::HexNotThread,
                "the thread's own diameter and pitch, not the size of its hexagon",
            );
        }
        fail(Code::Unreadable, "a designation such as M10x1 or 3/8-24")
    }

    /// Reads a designation, or `"unknown"` as a thread that is not known.
    ///
    /// # Errors
    /// As [`Thread::read`].
    pub fn read_or_unknown(text: &str) -> Result<Option<Thread>, Error> {
        if text.trim().eq_ignore_ascii_case("unknown") { Ok(None) } else { Thread::read(text).map(Some) }
    }

    /// Nominal diameter.
    #[must_use]
    pub fn diameter(&self) -> Length {
        match self.0 {
            Kind::Metric { diameter_um, .. } => mm(f64::from(diameter_um) / 1000.0),
            Kind::Inch { diameter_64, .. } => inch(f64::from(diameter_64) / 64.0),
        }
    }

    /// Pitch.
    #[must_use]
    pub fn pitch(&self) -> Length {
        match self.0 {
            Kind::Metric { pitch_um, .. } => mm(f64::from(pitch_um) / 1000.0),
            Kind::Inch { per_inch, .. } => inch(1.0 / f64::from(per_inch)),
        }
    }
}

/// `"10"` as 10 000, `"1.25"` as 1 250.
fn thousandths(text: &str) -> Option<u32> {
    let (whole, part) = text.split_once('.').unwrap_or((text, ""));
    let digits = |t: &str| t.chars().all(|c| c.is_ascii_digit());
    if whole.is_empty() || whole.len() > 3 || part.len() > 3 || !digits(whole) || !digits(part) {
        return None;
    }
    format!("{whole}{part:0<3}").parse().ok()
}

/// `3/8-24`, `7/16 - 24 UNS`, `1 1/4-12`. The letters of the series add nothing that diameter and count do not say.
fn unified(plain: &str) -> Option<Thread> {
    let (size, rest) = plain.split_once('-')?;
    let rest = rest.trim();
    let digits = rest.find(|c: char| !c.is_ascii_digit()).unwrap_or(rest.len());
    if !matches!(rest[digits..].trim(), "" | "un" | "unf" | "unc" | "unef" | "uns" | "tpi") {
        return None;
    }
    let per_inch: u32 = rest[..digits].parse().ok().filter(|n| (4..=80).contains(n))?;
    let size = size.trim();
    let (whole, part) = match size.rsplit_once(' ') {
        Some((whole, part)) => (whole.trim().parse::<u32>().ok().filter(|w| *w <= 6)?, part),
        None => (0, size),
    };
    let (top, base) = part.split_once('/')?;
    let top: u32 = top.trim().parse().ok()?;
    let base: u32 = base.trim().parse().ok()?;
    let fits = matches!(base, 2 | 4 | 8 | 16 | 32 | 64) && top > 0 && top < base;
    fits.then(|| Thread(Kind::Inch { diameter_64: whole * 64 + top * (64 / base), per_inch }))
}

impl fmt::Display for Thread {
    /// The designation in its one spelling: `M10x1`, `3/8-24`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.0 {
            Kind::Metric { diameter_um, pitch_um } => {
                write!(f, "M{}x{}", f64::from(diameter_um) / 1000.0, f64::from(pitch_um) / 1000.0)
            }
            Kind::Inch { diameter_64, per_inch } => {
                let (whole, mut top, mut base) = (diameter_64 / 64, diameter_64 % 64, 64);
                while top % 2 == 0 && base > 1 {
                    top /= 2;
                    base /= 2;
                }
                match (whole, top) {
                    (_, 0) => write!(f, "{whole}-{per_inch}"),
                    (0, _) => write!(f, "{top}/{base}-{per_inch}"),
                    (_, _) => write!(f, "{whole} {top}/{base}-{per_inch}"),
                }
            }
        }
    }
}
