//! Designations as the standards write them.

use super::{Family, Hand, Series, Size, Thread, inches, pipe, unified};
use std::fmt;

impl fmt::Display for Thread {
    /// The designation in its one spelling: `M10x1`, `M10x1-6g`, `3/8-24 UNF`, `3/8-24 UNF-2A`, `G1/8 A`, `Rc 1/8`,
    /// `1/8-27 NPT`, each with `LH` where it is left-handed.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let left = self.hand == Hand::Left;
        match self.size {
            Size::Metric { diameter_um, pitch_um } => {
                write!(f, "M{}x{}", f64::from(diameter_um) / 1000.0, f64::from(pitch_um) / 1000.0)?;
                if let Some(class) = self.class {
                    write!(f, "-{class}")?;
                }
                if let Some(group) = self.engagement {
                    write!(f, "-{}", group.letter())?;
                }
                if left { f.write_str("-LH") } else { Ok(()) }
            }
            Size::Unified { diameter_uin, per_two_inch } => {
                unified_size(f, diameter_uin, per_two_inch)?;
                f.write_str("-")?;
                count(f, per_two_inch)?;
                write!(f, " {}", Series::of(diameter_uin, per_two_inch).name())?;
                if let Some(class) = self.class {
                    write!(f, "-{class}")?;
                }
                if left { f.write_str("-LH") } else { Ok(()) }
            }
            Size::Pipe { family: Family::Npt, row } => {
                sixteenths(f, pipe::sixteenths(Family::Npt, row))?;
                f.write_str("-")?;
                count(f, pipe::per_two_inch(Family::Npt, row))?;
                f.write_str(if left { " NPT-LH" } else { " NPT" })
            }
            Size::Pipe { family, row } => {
                f.write_str(family.name())?;
                if family != Family::G {
                    f.write_str(" ")?;
                }
                sixteenths(f, pipe::sixteenths(family, row))?;
                if let Some(class) = self.class {
                    write!(f, " {class}")?;
                }
                if left { f.write_str(" LH") } else { Ok(()) }
            }
        }
    }
}

/// A fraction of an inch, a number size, or, where it is neither, decimals.
fn unified_size(f: &mut fmt::Formatter<'_>, diameter_uin: u32, per_two_inch: u32) -> fmt::Result {
    const IN_64TH: u32 = 15_625;
    // `1-80` is a number size, so an inch of so many threads has its decimals.
    let is_taken = diameter_uin.is_multiple_of(1_000_000)
        && inches::is_number_size(diameter_uin / 1_000_000, per_two_inch);
    if diameter_uin.is_multiple_of(IN_64TH) && !is_taken {
        return fraction(f, diameter_uin / IN_64TH, 64);
    }
    match unified::number_of(diameter_uin) {
        Some(number) => write!(f, "No. {number}"),
        None => {
            let decimals = format!("{:.6}", f64::from(diameter_uin) / 1e6);
            // At least four places, as the standard writes a diameter that is no fraction.
            let tail = decimals.trim_end_matches('0').len().max(decimals.len() - 2);
            f.write_str(&decimals[..tail])
        }
    }
}

fn sixteenths(f: &mut fmt::Formatter<'_>, number: u32) -> fmt::Result {
    fraction(f, number, 16)
}

fn fraction(f: &mut fmt::Formatter<'_>, parts: u32, base: u32) -> fmt::Result {
    let (whole, mut top, mut base) = (parts / base, parts % base, base);
    while top != 0 && top.is_multiple_of(2) {
        top /= 2;
        base /= 2;
    }
    match (whole, top) {
        (_, 0) => write!(f, "{whole}"),
        (0, _) => write!(f, "{top}/{base}"),
        (_, _) => write!(f, "{whole} {top}/{base}"),
    }
}

/// Threads per inch from twice their number.
fn count(f: &mut fmt::Formatter<'_>, per_two_inch: u32) -> fmt::Result {
    write!(f, "{}", f64::from(per_two_inch) / 2.0)
}
