//! The operations about threads: what a case gives, how it is written for the C program, and what Rust answers.

use super::answer::{UNKNOWN, Value};
use linewright::thread::{
    CATALOGUE, Class, DiameterLimits, Limits, Mating, Measured, Stripping, ThreadSide, identify,
};
use linewright::units::{Length, ratio, read_length, read_tolerance, to_deg, to_mm, to_mm2};
use linewright::{Error, Thread};
use serde::Deserialize;

/// An operation about threads with its input.
#[derive(Debug, Clone)]
pub enum Threads {
    Form(Form),
    Limits(Side),
    Mate(Pair),
    Stripping(Strip),
    Identify(Identify),
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Form {
    pub text: String,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Side {
    pub text: String,
    pub side: String,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Pair {
    pub male: String,
    pub female: String,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Strip {
    pub male: String,
    pub female: String,
    pub engagement: String,
}

/// `list` is empty for the whole catalogue; `pitches` counts what `pitch_length` goes over.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Identify {
    pub side: String,
    pub diameter: Option<String>,
    pub pitches: Option<usize>,
    pub pitch_length: Option<String>,
    pub per_inch: Option<f64>,
    pub wear: Option<String>,
    #[serde(default)]
    pub list: Vec<String>,
}

type Answer = Result<Vec<(&'static str, Value)>, Error>;

impl Threads {
    /// The input of an operation, if it is one about threads.
    pub fn read(operation: &str, accept: &toml::Table) -> Option<Result<Threads, String>> {
        fn of<T: serde::de::DeserializeOwned>(accept: &toml::Table) -> Result<T, String> {
            let value = toml::Value::Table(accept.clone());
            value.try_into().map_err(|error: toml::de::Error| error.message().to_owned())
        }
        Some(match operation {
            "thread_form" => of(accept).map(Threads::Form),
            "limits" => of(accept).map(Threads::Limits),
            "mate" => of(accept).map(Threads::Mate),
            "stripping" => of(accept).map(Threads::Stripping),
            "identify" => of(accept).map(Threads::Identify),
            _ => return None,
        })
    }

    /// The keys of an answer.
    pub fn answer_keys(&self) -> &'static [&'static str] {
        match self {
            Threads::Form(_) => {
                &["diameter_mm", "pitch_mm", "height_mm", "lead_deg", "stress_area_mm2", "side", "class"]
            }
            Threads::Limits(_) => &[
                "major_min_mm",
                "major_max_mm",
                "pitch_min_mm",
                "pitch_max_mm",
                "minor_min_mm",
                "minor_max_mm",
                "class",
                "assumed",
                "checked",
            ],
            Threads::Mate(_) => &[
                "starts",
                "feel",
                "level",
                "lookalike",
                "overlap_worst_mm",
                "overlap_best_mm",
                "lengths_mm",
                "verdict",
            ],
            Threads::Stripping(_) => &["engaged_mm", "external_mm2", "internal_mm2", "share_1"],
            Threads::Identify(_) => &["candidates", "nearest", "next", "ten_pitches_mm"],
        }
    }

    /// The input as lines for the C program.
    pub fn lines(&self) -> Vec<(&'static str, String)> {
        match self {
            Threads::Form(input) => vec![("text", input.text.clone())],
            Threads::Limits(input) => vec![("text", input.text.clone()), ("side", input.side.clone())],
            Threads::Mate(input) => vec![("male", input.male.clone()), ("female", input.female.clone())],
            Threads::Stripping(input) => vec![
                ("male", input.male.clone()),
                ("female", input.female.clone()),
                ("engagement", input.engagement.clone()),
            ],
            Threads::Identify(input) => {
                let mut lines = vec![("side", input.side.clone()), ("list", input.list.join(";"))];
                lines.extend(input.diameter.clone().map(|text| ("diameter", text)));
                lines.extend(input.pitches.map(|count| ("pitches", count.to_string())));
                lines.extend(input.pitch_length.clone().map(|text| ("pitch_length", text)));
                lines.extend(input.per_inch.map(|count| ("per_inch", count.to_string())));
                lines.extend(input.wear.clone().map(|text| ("wear", text)));
                lines
            }
        }
    }

    /// What Rust answers.
    pub fn run(&self) -> Answer {
        match self {
            Threads::Form(input) => form(&Thread::read(&input.text)?),
            Threads::Limits(input) => {
                let side = ThreadSide::from_name(&input.side)?;
                Ok(limits(&Thread::read(&input.text)?.limits(side)?))
            }
            Threads::Mate(input) => {
                mate(&Mating::new(&Thread::read(&input.male)?, &Thread::read(&input.female)?)?)
            }
            Threads::Stripping(input) => {
                let (male, female) = (Thread::read(&input.male)?, Thread::read(&input.female)?);
                stripping(&Stripping::new(&male, &female, read_length(&input.engagement)?)?)
            }
            Threads::Identify(input) => identified(input),
        }
    }
}

fn none_or(word: Option<String>) -> Value {
    Value::word(word.unwrap_or("none".to_owned()))
}

fn form(thread: &Thread) -> Answer {
    let area = thread.stress_area().map_or(Value::word(UNKNOWN), |area| Value::number(to_mm2(area)));
    Ok(vec![
        ("diameter_mm", Value::mm(thread.diameter())),
        ("pitch_mm", Value::mm(thread.pitch())),
        ("height_mm", Value::mm(thread.height())),
        ("lead_deg", Value::number(to_deg(thread.lead_angle()))),
        ("stress_area_mm2", area),
        ("side", none_or(thread.side().map(|side| side.name().to_owned()))),
        ("class", none_or(thread.class().map(|class: Class| class.to_string()))),
    ])
}

fn limits(limits: &Limits) -> Vec<(&'static str, Value)> {
    let one = |length: Option<Length>| Value::mm_list([length]);
    let DiameterLimits { min: major_min, max: major_max } = limits.major;
    let DiameterLimits { min: pitch_min, max: pitch_max } = limits.pitch_diameter;
    let DiameterLimits { min: minor_min, max: minor_max } = limits.minor;
    vec![
        ("major_min_mm", one(major_min)),
        ("major_max_mm", one(major_max)),
        ("pitch_min_mm", one(pitch_min)),
        ("pitch_max_mm", one(pitch_max)),
        ("minor_min_mm", one(minor_min)),
        ("minor_max_mm", one(minor_max)),
        ("class", none_or(limits.class.map(|class| class.to_string()))),
        ("assumed", Value::word(limits.is_class_assumed.to_string())),
        ("checked", Value::word(limits.checked.name())),
    ]
}

fn mate(pair: &Mating) -> Answer {
    Ok(vec![
        ("starts", Value::word(pair.starts().name())),
        ("feel", Value::word(pair.feel().name())),
        ("level", Value::word(pair.level().name())),
        ("lookalike", Value::word(pair.is_lookalike().to_string())),
        ("overlap_worst_mm", Value::mm(pair.overlap_worst())),
        ("overlap_best_mm", Value::mm(pair.overlap_best())),
        ("lengths_mm", Value::mm_list(pair.lengths())),
        ("verdict", Value::word(pair.verdict())),
    ])
}

fn stripping(found: &Stripping) -> Answer {
    let numbers = |pair: [f64; 2]| Value(pair.map(|number| Value::number(number).text()).to_vec());
    Ok(vec![
        ("engaged_mm", Value::mm(found.engaged)),
        ("external_mm2", numbers(found.external.map(to_mm2))),
        ("internal_mm2", numbers(found.internal.map(to_mm2))),
        ("share_1", numbers(found.share.map(|share| share.value))),
    ])
}

fn identified(input: &Identify) -> Answer {
    let mut measured = Measured::new(ThreadSide::from_name(&input.side)?);
    if let Some(text) = &input.diameter {
        let (value, plus_minus) = read_tolerance(text)?;
        measured = measured.with_diameter(value, plus_minus)?;
    }
    if let (Some(count), Some(text)) = (input.pitches, &input.pitch_length) {
        let (value, plus_minus) = read_tolerance(text)?;
        measured = measured.with_pitches(count, value, plus_minus)?;
    }
    if let Some(count) = input.per_inch {
        measured = measured.with_per_inch(ratio(count), None)?;
    }
    if let Some(text) = &input.wear {
        measured = measured.with_wear(read_length(text)?)?;
    }
    let list: Vec<Thread> = if input.list.is_empty() {
        CATALOGUE.iter().map(|row| row.thread).collect()
    } else {
        input.list.iter().map(|name| Thread::read(name)).collect::<Result<_, _>>()?
    };
    let found = identify(&measured, &list)?;
    let tens = found.candidates.iter().map(|candidate| to_mm(candidate.ten_pitches));
    Ok(vec![
        ("candidates", Value::words(found.candidates.iter().map(|candidate| candidate.thread.to_string()))),
        ("nearest", none_or(found.nearest.map(|thread| thread.to_string()))),
        ("next", none_or(found.next().map(|way| way.measure.name().to_owned()))),
        ("ten_pitches_mm", Value(tens.map(|length| Value::number(length).text()).collect())),
    ])
}
