//! Cases about the wall of a bend and its section: what they give, and how they run in Rust.

use super::answer::Value;
use linewright::bend::wall::{BentWall, FlattenedSection, Kinematics, Place, Thinning};
use linewright::units::{ratio, read_length, to_mm2};
use linewright::{Error, Material, Tube};
use serde::Deserialize;

/// Its operations.
pub const OPERATIONS: [&str; 3] = ["bent_wall", "free_wrinkling", "section"];

/// An operation with its input.
#[derive(Debug, Clone)]
pub enum AcceptWall {
    Bent(Bent),
    Wrinkling(Wrinkling),
    Section(Section),
}

/// A tube bent to a radius; the neutral axis may be moved, or put where it is in a perfectly plastic tube.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Bent {
    pub od: String,
    pub wall: String,
    pub radius: String,
    pub neutral_shift: Option<String>,
    #[serde(default)]
    pub plastic: bool,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Wrinkling {
    pub od: String,
    pub wall: String,
    pub radius: String,
    pub exponent: f64,
}

/// A section by one of its two measures.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Section {
    pub od: String,
    pub wall: String,
    pub measure: Measure,
    pub share: f64,
    pub kinematics: String,
}

#[derive(Debug, Clone, Copy, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Measure {
    Flattening,
    Ovality,
}

fn tube(od: &str, wall: &str) -> Result<Tube, Error> {
    Tube::new(read_length(od)?, read_length(wall)?, Material::LowCarbonSteel)
}

impl AcceptWall {
    /// The input of one of [`OPERATIONS`].
    pub fn read(operation: &str, accept: toml::Table) -> Result<AcceptWall, String> {
        fn of<T: serde::de::DeserializeOwned>(accept: toml::Table) -> Result<T, String> {
            toml::Value::Table(accept).try_into().map_err(|error: toml::de::Error| error.message().to_owned())
        }
        match operation {
            "bent_wall" => of(accept).map(AcceptWall::Bent),
            "free_wrinkling" => of(accept).map(AcceptWall::Wrinkling),
            "section" => of(accept).map(AcceptWall::Section),
            other => Err(format!("unknown operation {other}")),
        }
    }

    /// The keys that an answer can have, besides `error`.
    pub fn answer_keys(&self) -> &'static [&'static str] {
        match self {
            AcceptWall::Bent(_) => {
                &["extrados_mm", "intrados_mm", "side_mm", "uniaxial_mm", "stretch_1", "neutral_shift_mm"]
            }
            AcceptWall::Wrinkling(_) => &["compression_1", "critical_1", "needs_groove", "words"],
            AcceptWall::Section(_) => &[
                "largest_mm",
                "smallest_mm",
                "apart_mm",
                "ovality_1",
                "flattening_1",
                "bore_mm2",
                "bore_share_1",
                "bore_loss_1",
            ],
        }
    }

    /// The input in the form that the C program reads.
    pub fn lines(&self, put: &mut impl FnMut(&str, &str)) {
        match self {
            AcceptWall::Bent(input) => {
                put("od", &input.od);
                put("wall", &input.wall);
                put("radius", &input.radius);
                input.neutral_shift.iter().for_each(|shift| put("neutral_shift", shift));
                if input.plastic {
                    put("plastic", "true");
                }
            }
            AcceptWall::Wrinkling(input) => {
                put("od", &input.od);
                put("wall", &input.wall);
                put("radius", &input.radius);
                put("exponent", &format!("{:?}", input.exponent));
            }
            AcceptWall::Section(input) => {
                put("od", &input.od);
                put("wall", &input.wall);
                put("measure", &format!("{:?}", input.measure).to_lowercase());
                put("share", &format!("{:?}", input.share));
                put("kinematics", &input.kinematics);
            }
        }
    }

    /// The answer to a case.
    pub fn answer(&self) -> Result<Vec<(&'static str, Value)>, Error> {
        match self {
            AcceptWall::Bent(input) => bent(input),
            AcceptWall::Wrinkling(input) => {
                let tube = tube(&input.od, &input.wall)?;
                let found = BentWall::new(&tube, read_length(&input.radius)?)?
                    .free_wrinkling(ratio(input.exponent))?;
                let needs = found.needs_groove().map_or("unknown".to_owned(), |needs| needs.to_string());
                Ok(vec![
                    ("compression_1", Value::number(found.compression().value)),
                    ("critical_1", Value::number(found.critical().value)),
                    ("needs_groove", Value::word(needs)),
                    ("words", Value::word(found.words())),
                ])
            }
            AcceptWall::Section(input) => section(input),
        }
    }
}

fn bent(input: &Bent) -> Result<Vec<(&'static str, Value)>, Error> {
    let mut bent = BentWall::new(&tube(&input.od, &input.wall)?, read_length(&input.radius)?)?;
    if let Some(shift) = &input.neutral_shift {
        bent = bent.with_neutral_shift(read_length(shift)?)?;
    }
    if input.plastic {
        bent = bent.with_plastic_neutral_axis();
    }
    let range = |place| {
        let range = bent.range(place);
        Value::mm_list([range.least, range.most].map(Some))
    };
    let uniaxial = Place::ALL.map(|place| Some(bent.wall(place, Thinning::Uniaxial)));
    Ok(vec![
        ("extrados_mm", range(Place::Extrados)),
        ("intrados_mm", range(Place::Intrados)),
        ("side_mm", range(Place::Side)),
        ("uniaxial_mm", Value::mm_list(uniaxial)),
        ("stretch_1", Value::number(bent.outer_stretch().value)),
        ("neutral_shift_mm", Value::mm(bent.neutral_shift())),
    ])
}

fn section(input: &Section) -> Result<Vec<(&'static str, Value)>, Error> {
    let (tube, kinematics) = (tube(&input.od, &input.wall)?, Kinematics::from_name(&input.kinematics)?);
    let section = match input.measure {
        Measure::Flattening => FlattenedSection::from_flattening(&tube, ratio(input.share), kinematics),
        Measure::Ovality => FlattenedSection::from_ovality(&tube, ratio(input.share), kinematics),
    }?;
    Ok(vec![
        ("largest_mm", Value::mm(section.largest())),
        ("smallest_mm", Value::mm(section.smallest())),
        ("apart_mm", Value::mm(section.out_of_round())),
        ("ovality_1", Value::number(section.ovality().value)),
        ("flattening_1", Value::number(section.flattening().value)),
        ("bore_mm2", Value::number(to_mm2(section.bore_area()))),
        ("bore_share_1", Value::number(section.bore_share().value)),
        ("bore_loss_1", Value::number(section.bore_loss().value)),
    ])
}
