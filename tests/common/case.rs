//! The case files and their strict reader: a file that says something nobody reads is an error.

use super::accept::{Accept, Bench};
use super::here;
use linewright::Code;
use serde::Deserialize;
use std::collections::BTreeMap;
use std::fs;

/// One case.
#[derive(Debug, Clone)]
pub struct Case {
    /// File name without its extension.
    pub file: String,
    /// Number in the file, from 0.
    pub index: usize,
    pub operation: String,
    pub accept: Accept,
    pub expect: Expect,
    /// Why it fails today, if it is known to.
    pub known_failing: Option<String>,
}

#[derive(Debug, Clone)]
pub enum Expect {
    Error(Code),
    /// Each key with its items and, for figures, how far off they may be.
    Values(Vec<Expected>),
}

#[derive(Debug, Clone)]
pub struct Expected {
    pub key: String,
    pub items: Vec<Item>,
    pub tolerance: Option<f64>,
}

#[derive(Debug, Clone, PartialEq)]
pub enum Item {
    Number(f64),
    Word(String),
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct RawFile {
    #[serde(default)]
    benches: BTreeMap<String, Bench>,
    #[serde(default)]
    case: Vec<RawCase>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct RawCase {
    operation: String,
    accept: toml::Table,
    expect: toml::Table,
    tolerance: Option<RawTolerance>,
    origin: String,
    known_failing: Option<String>,
}

#[derive(Debug, Deserialize)]
#[serde(untagged)]
enum RawTolerance {
    All(String),
    PerKey(BTreeMap<String, String>),
}

impl Case {
    /// How messages call it.
    pub fn name(&self) -> String {
        format!("{}#{} ({})", self.file, self.index, self.operation)
    }
}

/// Every case of every file, in the order of the files' names.
pub fn load_all() -> Result<Vec<Case>, String> {
    let folder = here("cases");
    let entries = fs::read_dir(&folder).map_err(|error| format!("{}: {error}", folder.display()))?;
    let mut paths = Vec::new();
    for entry in entries {
        let path = entry.map_err(|error| error.to_string())?.path();
        if path.extension().is_none_or(|extension| extension != "toml") {
            return Err(format!("{}: not a case file", path.display()));
        }
        paths.push(path);
    }
    paths.sort();
    if paths.is_empty() {
        return Err("no case files".to_owned());
    }
    let mut all = Vec::new();
    for path in paths {
        let name = path.file_stem().map(|stem| stem.to_string_lossy().into_owned()).unwrap_or_default();
        let text = fs::read_to_string(&path).map_err(|error| format!("{}: {error}", path.display()))?;
        all.extend(load(&name, &text)?);
    }
    Ok(all)
}

/// The cases of one file.
pub fn load(file: &str, text: &str) -> Result<Vec<Case>, String> {
    let raw: RawFile = toml::from_str(text).map_err(|error| format!("{file}: {error}"))?;
    if raw.case.is_empty() {
        return Err(format!("{file}: no cases"));
    }
    let benches = raw.benches;
    let mut used = Vec::new();
    let mut cases = Vec::new();
    for (index, raw) in raw.case.into_iter().enumerate() {
        let at = |why: String| format!("{file}#{index}: {why}");
        let mut accept = Accept::read(&raw.operation, raw.accept).map_err(at)?;
        if let Accept::Plan(plan) = &mut accept {
            let Some(bench) = benches.get(&plan.bench) else {
                return Err(at(format!("no bench {}", plan.bench)));
            };
            plan.tools = bench.clone();
            used.push(plan.bench.clone());
        }
        if raw.origin.trim().is_empty() {
            return Err(at("origin is empty".to_owned()));
        }
        if raw.known_failing.as_ref().is_some_and(|reason| reason.trim().is_empty()) {
            return Err(at("known_failing needs a reason".to_owned()));
        }
        let expect = expected(&accept, raw.expect, raw.tolerance.as_ref()).map_err(at)?;
        cases.push(Case {
            file: file.to_owned(),
            index,
            operation: raw.operation,
            accept,
            expect,
            known_failing: raw.known_failing,
        });
    }
    match benches.keys().find(|name| !used.contains(name)) {
        Some(name) => Err(format!("{file}: no case uses bench {name}")),
        None => Ok(cases),
    }
}

fn expected(
    accept: &Accept,
    expect: toml::Table,
    tolerance: Option<&RawTolerance>,
) -> Result<Expect, String> {
    if let Some(error) = expect.get("error") {
        if expect.len() > 1 || tolerance.is_some() {
            return Err("an error stands alone, without values and tolerance".to_owned());
        }
        let name = error.as_str().unwrap_or_default();
        return Code::from_name(name).map(Expect::Error).ok_or_else(|| format!("no code {error}"));
    }
    if expect.is_empty() {
        return Err("nothing is expected".to_owned());
    }
    let mut values = Vec::new();
    for (key, value) in expect {
        if !accept.answer_keys().contains(&key.as_str()) {
            return Err(format!("no key {key} in an answer"));
        }
        let items = items(&value).map_err(|why| format!("{key}: {why}"))?;
        values.push(Expected { key, items, tolerance: None });
    }
    set_tolerances(&mut values, tolerance)?;
    Ok(Expect::Values(values))
}

fn items(value: &toml::Value) -> Result<Vec<Item>, String> {
    match value {
        toml::Value::Array(array) => array.iter().map(item).collect(),
        one => Ok(vec![item(one)?]),
    }
}

fn item(value: &toml::Value) -> Result<Item, String> {
    match value {
        toml::Value::Float(number) if number.is_finite() => Ok(Item::Number(*number)),
        toml::Value::Integer(number) => i32::try_from(*number)
            .map(|number| Item::Number(f64::from(number)))
            .map_err(|error| error.to_string()),
        toml::Value::String(word) => Ok(Item::Word(word.clone())),
        toml::Value::Boolean(yes) => Ok(Item::Word(yes.to_string())),
        other => Err(format!("{other} is neither a number nor a word")),
    }
}

/// The unit that a key's suffix names; a plain ratio is in "1", and what is counted or named has none.
fn unit_of(key: &str) -> Option<&'static str> {
    if key == "proportional" || key.ends_with("_1") {
        return Some("1");
    }
    ["nmm", "mm2", "mm", "deg", "mpa", "ml", "m_per_s", "hz", "g"]
        .into_iter()
        .find(|unit| key.ends_with(&format!("_{unit}")))
}

fn set_tolerances(values: &mut [Expected], tolerance: Option<&RawTolerance>) -> Result<(), String> {
    let figures: Vec<&mut Expected> = values
        .iter_mut()
        .filter(|e| unit_of(&e.key).is_some() && e.items.iter().any(|item| matches!(item, Item::Number(_))))
        .collect();
    match tolerance {
        None if figures.is_empty() => return Ok(()),
        None => return Err("figures without a tolerance".to_owned()),
        Some(_) if figures.is_empty() => return Err("a tolerance without figures".to_owned()),
        Some(RawTolerance::PerKey(table)) => {
            if let Some(key) = table.keys().find(|key| !figures.iter().any(|e| e.key == **key)) {
                return Err(format!("a tolerance for {key}, which has no figure"));
            }
        }
        Some(RawTolerance::All(_)) => {}
    }
    for expected in figures {
        let text = match tolerance {
            Some(RawTolerance::All(text)) => Some(text),
            Some(RawTolerance::PerKey(table)) => table.get(&expected.key),
            None => None,
        };
        let text = text.ok_or_else(|| format!("no tolerance for {}", expected.key))?;
        expected.tolerance = Some(read_tolerance(&expected.key, text)?);
    }
    Ok(())
}

/// `"0.05 mm"`; its unit is the key's own.
fn read_tolerance(key: &str, text: &str) -> Result<f64, String> {
    let (number, unit) = text.split_once(' ').ok_or_else(|| format!("tolerance {text} has no unit"))?;
    if unit_of(key) != Some(unit) {
        return Err(format!("tolerance {text} is not in the unit of {key}"));
    }
    match number.parse::<f64>() {
        Ok(number) if number.is_finite() && number >= 0.0 => Ok(number),
        _ => Err(format!("tolerance {text} has no number")),
    }
}
