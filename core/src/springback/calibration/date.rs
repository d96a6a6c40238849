//! A day of the calendar. Nothing here asks a clock.

use crate::code::Code;
use crate::error::Error;
use crate::problem::Value;
use std::fmt;

/// A day, written year-month-day as ISO 8601 has it.
///
/// ```
/// use linewright::springback::Date;
/// assert!(Date::read("2026-05-14")? < Date::read("2026-10-02")?);
/// assert_eq!(Date::read("14.05.2026").unwrap_err().code().name(), "UNREADABLE");
/// assert!(Date::read("2026-02-29").is_err());
/// # Ok::<(), linewright::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct Date {
    year: u16,
    month: u8,
    day: u8,
}

/// Days of a month in the Gregorian calendar.
fn days(year: u16, month: u8) -> u8 {
    let leap = year.is_multiple_of(4) && (!year.is_multiple_of(100) || year.is_multiple_of(400));
    match month {
        2 if leap => 29,
        2 => 28,
        4 | 6 | 9 | 11 => 30,
        _ => 31,
    }
}

impl Date {
    /// Reads `2026-05-14`: four, two and two digits. Other orders of day and month are not guessed at.
    ///
    /// # Errors
    /// `UNREADABLE` for another form, and for a day that the calendar does not have.
    pub fn read(text: &str) -> Result<Date, Error> {
        let text = text.trim();
        let number = |from: usize, to: usize| -> Option<u16> {
            let digits = text.get(from..to)?;
            digits.bytes().all(|b| b.is_ascii_digit()).then(|| digits.parse().ok())?
        };
        let read = || {
            let dashes = text.len() == 10 && text.get(4..5) == Some("-") && text.get(7..8) == Some("-");
            let (year, month, day) = (number(0, 4)?, number(5, 7)?, number(8, 10)?);
            let (month, day) = (u8::try_from(month).ok()?, u8::try_from(day).ok()?);
            let exists = (1..=12).contains(&month) && (1..=days(year, month)).contains(&day);
            (dashes && exists && year > 0).then_some(Date { year, month, day })
        };
        read().ok_or_else(|| {
            let need = Value::text("a day as year-month-day, such as 2026-05-14");
            Error::field(Code::Unreadable, "date", Value::text(text), need)
        })
    }
}

impl fmt::Display for Date {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:04}-{:02}-{:02}", self.year, self.month, self.day)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_days_of_the_calendar_are_read() {
        for good in ["2026-05-14", "2024-02-29", "2000-02-29", "1999-12-31", "0001-01-01"] {
            assert_eq!(Date::read(good).unwrap().to_string(), good);
        }
        assert_eq!(Date::read(" 2026-05-14 ").unwrap(), Date::read("2026-05-14").unwrap());
        for bad in [
            "",
            "2026",
            "2026-5-14",
            "2026-05-14T00",
            "26-05-14",
            "2026/05/14",
            "14-05-2026",
            "2026-13-01",
            "2026-00-10",
            "2026-04-31",
            "2026-02-29",
            "1900-02-29",
            "2026-05-00",
            "0000-01-01",
            "+026-05-14",
            "2026-05-1\u{664}",
            "2026\u{2010}05-14",
        ] {
            assert_eq!(Date::read(bad).unwrap_err().code(), Code::Unreadable, "{bad}");
        }
    }
}
