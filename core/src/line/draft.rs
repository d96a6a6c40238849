//! A line as it was typed: every field is text until it is checked, and checking finds everything at once.

use super::field::{FIELDS, find};
use super::{End, Line, Nut, Port};
use crate::bend::Bend;
use crate::code::{Code, Level};
use crate::error::Error;
use crate::flare::{Flare, Nose, Seat};
use crate::material::Material;
use crate::path::Path;
use crate::problem::{self, Part, Problem, Side, Value};
use crate::thread::Thread;
use crate::tube::Tube;
use crate::units::{Length, read_angle, read_length};
use std::collections::BTreeMap;

/// The fields of a line, as typed. See [`super::FIELDS`] for their names.
///
/// ```
/// use linewright::{Code, LineDraft};
/// let mut draft = LineDraft::new();
/// draft.set("name", "T2")?.set("od", "316")?.set("wall", "0.028 in")?;
/// let checked = draft.check();
/// assert!(checked.line.is_none());
/// assert!(checked.problems.iter().any(|p| p.code == Code::UnitMissing && p.id() == "UNIT_MISSING@field od"));
/// # Ok::<(), linewright::Error>(())
/// ```
#[derive(Debug, Clone, Default, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(
    feature = "serde",
    serde(try_from = "BTreeMap<String, String>", into = "BTreeMap<String, String>")
)]
pub struct LineDraft {
    fields: BTreeMap<String, String>,
}

/// What checking a draft gives: the line, unless something was refused, and everything found.
#[derive(Debug, Clone, PartialEq)]
pub struct Draft {
    /// The line, if nothing was refused.
    pub line: Option<Line>,
    /// Everything found, the worst first.
    pub problems: Vec<Problem>,
}

impl LineDraft {
    /// A draft with nothing in it.
    #[must_use]
    pub fn new() -> LineDraft {
        LineDraft::default()
    }

    /// Fills a field with what was typed.
    ///
    /// # Errors
    /// `UNKNOWN_NAME` with the list of fields.
    pub fn set(&mut self, field: &str, typed: &str) -> Result<&mut LineDraft, Error> {
        if find(field).is_none() {
            let names: Vec<&str> = FIELDS.iter().map(|f| f.name).collect();
            let need = Value::text(format!("one of {}", names.join(", ")));
            return Err(Error::field(Code::UnknownName, field, Value::text(field), need));
        }
        self.fields.insert(field.to_owned(), typed.to_owned());
        Ok(self)
    }

    /// What was typed into a field; empty where nothing was.
    #[must_use]
    pub fn get(&self, field: &str) -> &str {
        self.fields.get(field).map_or("", |typed| typed.trim())
    }

    /// Checks every field and puts the line together.
    #[must_use]
    pub fn check(&self) -> Draft {
        let mut reader = Reader { draft: self, problems: Vec::new() };
        for field in FIELDS.iter().filter(|f| f.needed && self.get(f.name).is_empty()) {
            reader.problems.push(
                Problem::new(Code::FieldMissing, Part::Field(field.name.to_owned()))
                    .need(Value::text(field.meaning)),
            );
        }
        let tube = reader.tube();
        let path = reader.path();
        let (a, b) = (reader.end(Side::A), reader.end(Side::B));
        let mut problems = reader.problems;
        problem::sort(&mut problems);
        let refused = problems.iter().any(|p| p.level() == Level::Refuse);
        let line = match (tube, path, a, b) {
            (Some(tube), Some(path), Some(a), Some(b)) if !refused => {
                Some(Line::new(self.get("name"), tube, path, a, b).with_found(problems.clone()))
            }
            _ => None,
        };
        Draft { line, problems }
    }
}

impl TryFrom<BTreeMap<String, String>> for LineDraft {
    type Error = Error;

    fn try_from(fields: BTreeMap<String, String>) -> Result<LineDraft, Error> {
        let mut draft = LineDraft::new();
        for (field, typed) in fields {
            draft.set(&field, &typed)?;
        }
        Ok(draft)
    }
}

impl From<LineDraft> for BTreeMap<String, String> {
    fn from(draft: LineDraft) -> Self {
        draft.fields
    }
}

/// Reads fields and keeps what it finds on the way.
struct Reader<'a> {
    draft: &'a LineDraft,
    problems: Vec<Problem>,
}

impl Reader<'_> {
    /// The value of a filled field; None, with the finding kept, where it cannot be read.
    fn read<T>(&mut self, field: &str, read: impl Fn(&str) -> Result<T, Error>) -> Option<T> {
        let typed = self.draft.get(field);
        if typed.is_empty() { None } else { self.keep(field, read(typed)) }
    }

    fn keep<T>(&mut self, field: &str, result: Result<T, Error>) -> Option<T> {
        result
            .map_err(|error| self.problems.push(error.at(Part::Field(field.to_owned())).into_problem()))
            .ok()
    }

    /// A list; None where one of its items cannot be read. Every bad item is named.
    fn list<T>(&mut self, field: &str, read: impl Fn(&str) -> Result<T, Error>) -> Option<Vec<T>> {
        let typed = self.draft.get(field);
        let items: Vec<&str> = if typed.is_empty() { Vec::new() } else { typed.split(';').collect() };
        let read: Vec<Option<T>> = items
            .into_iter()
            .enumerate()
            .map(|(i, item)| self.keep(&format!("{field}, item {}", i + 1), read(item)))
            .collect();
        read.into_iter().collect()
    }

    fn tube(&mut self) -> Option<Tube> {
        let od = self.read("od", read_size);
        let wall = self.read("wall", read_size);
        let material = self.read("material", Material::from_name);
        let min_radius = self.read("min_radius", read_length);
        let source = self.draft.get("min_radius_source");
        if min_radius.is_some() && source.is_empty() {
            self.problems.push(
                Problem::new(Code::FieldMissing, Part::Field("min_radius_source".to_owned()))
                    .need(Value::text("where the smallest radius was read")),
            );
        }
        let tube = Tube::new(od?, wall?, material?);
        let tube = match tube {
            Ok(tube) => tube,
            Err(error) => {
                self.problems.push(error.into_problem());
                return None;
            }
        };
        match min_radius {
            Some(radius) => self.keep("min_radius", tube.with_min_radius(radius, source)),
            None => Some(tube),
        }
    }

    fn path(&mut self) -> Option<Path> {
        let angles = self.list("bends", read_angle);
        let rotations = self.list("rotations", read_angle);
        let radii = self.list("radius", read_length);
        let legs = self.list("legs", read_length);
        let straights = self.list("straights", read_length);
        let given = |field| !self.draft.get(field).is_empty();
        let from_legs = match (given("legs"), given("straights")) {
            (true, false) => true,
            (false, true) => false,
            (both, _) => {
                let code = if both { Code::FieldsConflict } else { Code::FieldMissing };
                self.problems.push(
                    Problem::new(code, Part::Field("legs".to_owned()))
                        .need(Value::text("either legs or straights, in A to B order")),
                );
                return None;
            }
        };
        let (angles, rotations, radii) = (angles?, rotations?, radii?);
        if !angles.is_empty() && radii.is_empty() {
            self.problems.push(
                Problem::new(Code::FieldMissing, Part::Field("radius".to_owned()))
                    .need(Value::text("the centerline radius as formed")),
            );
            return None;
        }
        let bends = Bend::list(&angles, &rotations, &radii);
        let path = bends.and_then(|bends| {
            if from_legs {
                legs.map(|legs| Path::from_legs(&legs, &bends)).transpose()
            } else {
                straights.map(|straights| Path::from_straights(&straights, &bends)).transpose()
            }
        });
        match path {
            Ok(path) => path,
            Err(error) => {
                self.problems.push(error.into_problem());
                None
            }
        }
    }

    /// A thread that is not known is None; one that cannot be told apart is None with the stop kept.
    fn thread(&mut self, field: &str) -> Option<Thread> {
        self.read(field, |typed| {
            if typed.eq_ignore_ascii_case("unknown") { Ok(None) } else { Thread::read(typed).map(Some) }
        })
        .flatten()
    }

    fn end(&mut self, side: Side) -> Option<End> {
        let name = |field: &str| format!("{}_{field}", side.name().to_lowercase());
        let thread = self.thread(&name("thread"));
        let length = self.read(&name("nut_length"), read_length);
        let bore = self.read(&name("nut_bore"), read_length);
        let nose = self.read(&name("nose"), Nose::from_name);
        let flare = self.read(&name("flare"), Flare::from_name);
        let port_thread = self.thread(&name("port_thread"));
        let seat = self.read(&name("seat"), Seat::from_name).flatten();
        let port_name = self.draft.get(&name("port"));
        let given = ["port", "port_thread", "seat"].iter().any(|f| !self.draft.get(&name(f)).is_empty());
        let port = given.then(|| Port { name: super::printable(port_name), thread: port_thread, seat });
        match Nut::new(thread, length?, bore?, nose?) {
            Ok(nut) => Some(End { nut, flare: flare?, port }),
            Err(error) => {
                let field = match &error.problem().part {
                    Part::Field(field) => name(field),
                    other => other.to_string(),
                };
                self.problems.push(error.at(Part::Field(field)).into_problem());
                None
            }
        }
    }
}

/// Days since 1900 that spreadsheets store for the years 1990 to 2064: a size that was turned into a date.
const DATE_SERIALS: std::ops::RangeInclusive<u32> = 32_874..=60_267;

/// A length in a field for sizes, where a bare five-digit number is a date that was a fraction before.
fn read_size(typed: &str) -> Result<Length, Error> {
    if typed.parse::<u32>().is_ok_and(|number| DATE_SERIALS.contains(&number)) {
        return Err(Problem::new(Code::DateInSize, Part::Field("od".to_owned()))
            .got(Value::text(typed))
            .need(Value::text("the size as text with its unit, such as 3/16 in"))
            .why("this is how a spreadsheet stores a date; 3/16 turns into one")
            .fix("format the column as text and type the size again")
            .into());
    }
    read_length(typed)
}
