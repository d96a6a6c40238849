//! Reads the fields of a draft into the parts of a line, and keeps everything it finds on the way.

use super::{End, LineDraft, LoadedPart, Nut, Port};
use crate::bend::{Bend, Making};
use crate::bounds;
use crate::code::Code;
use crate::error::Error;
use crate::flare::{Flare, Nose, Seat};
use crate::material::Material;
use crate::path::Path;
use crate::problem::{Assumption, Part, Problem, Side, Value};
use crate::source::{Checked, Source};
use crate::thread::Thread;
use crate::tube::Tube;
use crate::units::{Length, Notation, read_angle_in, read_length_in, read_rotation_in};

/// A draft being read.
pub(super) struct Reader<'a> {
    pub(super) draft: &'a LineDraft,
    pub(super) notation: Notation,
    pub(super) problems: Vec<Problem>,
    pub(super) assumed: Vec<Assumption>,
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

    fn length(&mut self, field: &str) -> Option<Length> {
        let notation = self.notation;
        self.read(field, |typed| read_length_in(typed, notation))
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

    fn lengths(&mut self, field: &str) -> Option<Vec<Length>> {
        let notation = self.notation;
        self.list(field, |typed| read_length_in(typed, notation))
    }

    /// Two lengths that mean nothing alone; one without the other is reported.
    fn pair(&mut self, first: &str, second: &str) -> Option<(Length, Length)> {
        let read = (self.length(first), self.length(second));
        for (field, other) in [(first, second), (second, first)] {
            if self.draft.get(field).is_empty() && !self.draft.get(other).is_empty() {
                self.problems.push(
                    Problem::new(Code::FieldMissing, Part::Field(field.to_owned()))
                        .need(Value::text(format!("a length, as {other} is given"))),
                );
            }
        }
        Some((read.0?, read.1?))
    }

    pub(super) fn tube(&mut self) -> Option<Tube> {
        let od = self.size("od");
        let wall = self.size("wall");
        let material = self.read("material", Material::from_name);
        let min_radius = self.length("min_radius");
        let source = self.draft.get("min_radius_source");
        let tube = Tube::new(od?, wall?, material?);
        let tube = match tube {
            Ok(tube) => tube,
            Err(error) => {
                self.problems.push(error.into_problem());
                return None;
            }
        };
        match min_radius {
            Some(radius) => {
                let field = if source.is_empty() { "min_radius_source" } else { "min_radius" };
                self.keep(field, tube.with_min_radius(radius, source))
            }
            None => Some(tube),
        }
    }

    /// A tube size: a bare five-digit number is a date that was a fraction before, and a bare fraction is inches where
    /// the import was told so.
    fn size(&mut self, field: &str) -> Option<Length> {
        let notation = self.notation;
        let typed = self.draft.get(field);
        if typed.is_empty() {
            return None;
        }
        let bare = is_bare_fraction(typed);
        if bare && notation.bare_fraction_is_inch {
            let read = read_length_in(&format!("{typed} in"), notation);
            let length = self.keep(field, read)?;
            self.problems
                .push(Problem::new(Code::AssumedInch, Part::Field(field.to_owned())).got(Value::text(typed)));
            self.assumed.push(Assumption {
                what: format!("{field} {typed} without a unit is in inches"),
                value: Value::Length(length),
                basis: Source::new("the import was told so", "", Checked::CommonPractice),
            });
            return Some(length);
        }
        self.read(field, |typed| {
            if is_date_serial(typed) { Err(date_error(typed)) } else { read_length_in(typed, notation) }
        })
    }

    /// The path; `od` is None where the tube could not be read, and only outer legs need it.
    pub(super) fn path(&mut self, od: Option<Length>) -> Option<Path> {
        let notation = self.notation;
        let angles = self.list("bends", |typed| read_angle_in(typed, notation));
        let rotations = self.list("rotations", |typed| read_rotation_in(typed, notation));
        let radii = self.lengths("radius");
        let making = self.list("making", Making::from_name);
        let ways = ["straights", "legs", "outer_legs"];
        let lengths = ways.map(|way| self.lengths(way));
        let filled: Vec<usize> = (0..ways.len()).filter(|i| !self.draft.get(ways[*i]).is_empty()).collect();
        let [way] = filled[..] else {
            let code = if filled.is_empty() { Code::FieldMissing } else { Code::FieldsConflict };
            self.problems.push(
                Problem::new(code, Part::Field("straights".to_owned()))
                    .need(Value::text("one of straights, legs and outer_legs, in A to B order")),
            );
            return None;
        };
        let (angles, rotations, radii, making) = (angles?, rotations?, radii?, making?);
        if !angles.is_empty() && radii.is_empty() {
            self.problems.push(
                Problem::new(Code::FieldMissing, Part::Field("radius".to_owned()))
                    .need(Value::text("the centerline radius as formed")),
            );
            return None;
        }
        let lengths = lengths.into_iter().nth(way).flatten()?;
        let bends = Bend::list(&angles, &rotations, &radii).and_then(|bends| made(bends, &making));
        let path = match (bends, way) {
            (Err(error), _) => Err(error),
            (Ok(bends), 0) => Path::from_straights(&lengths, &bends),
            (Ok(bends), 1) => Path::from_legs(&lengths, &bends),
            (Ok(bends), _) => Path::from_outer_legs(&lengths, &bends, od?),
        };
        match path {
            Ok(path) => Some(path),
            Err(error) => {
                self.problems.push(error.into_problem());
                None
            }
        }
    }

    /// A thread that is not known is None; one that cannot be told apart is None with the stop kept.
    fn thread(&mut self, field: &str) -> Option<Thread> {
        self.read(field, Thread::read_or_unknown).flatten()
    }

    pub(super) fn end(&mut self, side: Side) -> Option<End> {
        let name = |field: &str| format!("{}_{field}", side.name().to_lowercase());
        let nut = self.nut(&name);
        let flare = self.read(&name("flare"), Flare::from_name);
        let flare_diameter = self.length(&name("flare_diameter")).and_then(|size| {
            let checked = bounds::MEASURED_FLARE.length(size);
            self.keep(&name("flare_diameter"), checked)
        });
        let port_thread = self.thread(&name("port_thread"));
        let seat = self.read(&name("seat"), Seat::from_name).flatten();
        let port_name = self.draft.get(&name("port"));
        let given = ["port", "port_thread", "seat"].iter().any(|f| !self.draft.get(&name(f)).is_empty());
        let depths = self.pair(&name("port_thread_depth"), &name("seat_depth"));
        let given = given || depths.is_some();
        let mut port = given.then(|| Port::new(port_name, port_thread, seat));
        if let (Some(known), Some((thread, seat))) = (&port, depths) {
            let deep = known.clone().with_depths(thread, seat);
            port = deep.map_err(|error| self.push_named(&name, error)).ok();
        }
        let loaded = self.list(&name("loaded"), |typed| Ok(loaded_part(typed)));
        let holes = self.lengths(&name("holes"));
        let holes = holes.and_then(|holes| {
            let checked =
                holes.into_iter().map(|hole| bounds::HOLE.length(hole)).collect::<Result<Vec<_>, _>>();
            self.keep(&name("holes"), checked)
        });
        let in_place = self.read(&name("in_place"), |typed| match typed.to_lowercase().as_str() {
            "yes" => Ok(true),
            "no" => Ok(false),
            _ => {
                Err(Error::field(Code::UnknownName, "in_place", Value::text(typed), Value::text("yes or no")))
            }
        });
        let (loaded, holes) = (loaded?, holes?);
        Some(End {
            flare_diameter,
            port,
            loaded,
            holes,
            flared_in_place: in_place.unwrap_or(false),
            ..End::new(nut?, flare?)
        })
    }

    fn nut(&mut self, name: &impl Fn(&str) -> String) -> Option<Nut> {
        let thread = self.thread(&name("thread"));
        let length = self.length(&name("nut_length"));
        let bore = self.length(&name("nut_bore"));
        let nose = self.read(&name("nose"), Nose::from_name);
        let flats = self.length(&name("across_flats"));
        let parts = self.pair(&name("nut_thread_length"), &name("nut_lead"));
        let nut = Nut::new(thread, length?, bore?, nose?).and_then(|nut| match flats {
            Some(flats) => nut.with_across_flats(flats),
            None => Ok(nut),
        });
        let nut = nut.and_then(|nut| match parts {
            Some((thread, lead)) => nut.with_thread_length(thread, lead),
            None => Ok(nut),
        });
        nut.map_err(|error| self.push_named(name, error)).ok()
    }

    /// Keeps an error that names its field, under the name that the field has at this end.
    fn push_named(&mut self, name: &impl Fn(&str) -> String, error: Error) {
        let field = match &error.problem().part {
            Part::Field(field) => name(field),
            other => other.to_string(),
        };
        self.problems.push(error.at(Part::Field(field)).into_problem());
    }
}

/// `"armor (long end to A)"`: the name and which way round.
fn loaded_part(typed: &str) -> LoadedPart {
    let (name, facing) = typed.split_once('(').unwrap_or((typed, ""));
    LoadedPart {
        name: super::printable(name),
        facing: super::printable(facing.trim_end().trim_end_matches(')')),
    }
}

/// Sets how each bend is made: one way for all, or one each.
fn made(bends: Vec<Bend>, making: &[Making]) -> Result<Vec<Bend>, Error> {
    match making {
        [] => Ok(bends),
        [one] => Ok(bends.into_iter().map(|bend| bend.made(*one)).collect()),
        many if many.len() == bends.len() => {
            Ok(bends.iter().zip(many).map(|(bend, way)| bend.made(*way)).collect())
        }
        many => Err(Problem::new(Code::CountMismatch, Part::Field("making".to_owned()))
            .got(Value::Count(many.len()))
            .need(Value::Count(bends.len()))
            .into()),
    }
}

fn is_bare_fraction(typed: &str) -> bool {
    let digits = |part: &str| !part.is_empty() && part.chars().all(|c| c.is_ascii_digit());
    typed
        .replace(['\u{2044}', '\u{2215}'], "/")
        .split_once('/')
        .is_some_and(|(a, b)| digits(a.trim()) && digits(b.trim()))
}

/// Days since 1900 that spreadsheets store for the years 1990 to 2064: a size that was turned into a date.
const DATE_SERIALS: std::ops::RangeInclusive<u32> = 32_874..=60_267;

fn is_date_serial(typed: &str) -> bool {
    typed.parse::<u32>().is_ok_and(|number| DATE_SERIALS.contains(&number))
}

fn date_error(typed: &str) -> Error {
    Problem::new(Code::DateInSize, Part::Field("od".to_owned()))
        .got(Value::text(typed))
        .need(Value::text("the size as text with its unit, such as 3/16 in"))
        .why("this is how a spreadsheet stores a date; 3/16 turns into one")
        .fix("format the column as text and type the size again")
        .into()
}
