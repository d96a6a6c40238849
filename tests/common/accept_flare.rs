//! What a case about flares and hose ends gives to its operation.

use serde::Deserialize;

/// An operation about flares with its input.
#[derive(Debug, Clone)]
pub enum AcceptFlare {
    Form(Form),
    Size(Size),
    HoseEnd(HoseEnd),
    Washers(Washers),
}

/// Its operations.
pub const OPERATIONS: [&str; 4] = ["flare_form", "flare_size", "hose_end", "washers"];

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Form {
    pub flare: String,
    pub od: String,
    pub wall: String,
    pub diameter: String,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Size {
    pub flare: String,
    pub od: String,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct HoseEnd {
    pub name: String,
    pub washers: usize,
}

/// Each end by its name and its thread.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Washers {
    pub ends: Vec<[String; 2]>,
}

impl AcceptFlare {
    /// The input of one of [`OPERATIONS`].
    pub fn read(operation: &str, accept: toml::Table) -> Result<AcceptFlare, String> {
        fn of<T: serde::de::DeserializeOwned>(accept: toml::Table) -> Result<T, String> {
            toml::Value::Table(accept).try_into().map_err(|error: toml::de::Error| error.message().to_owned())
        }
        match operation {
            "flare_form" => of(accept).map(AcceptFlare::Form),
            "flare_size" => of(accept).map(AcceptFlare::Size),
            "hose_end" => of(accept).map(AcceptFlare::HoseEnd),
            "washers" => of(accept).map(AcceptFlare::Washers),
            other => Err(format!("unknown operation {other}")),
        }
    }

    /// The keys that an answer can have, besides `error`.
    pub fn answer_keys(&self) -> &'static [&'static str] {
        match self {
            AcceptFlare::Form(_) => &["stick_out_mm", "height_mm", "net_mm"],
            AcceptFlare::Size(_) => &["diameter_mm"],
            AcceptFlare::HoseEnd(_) => &["sealed_by", "needed", "problem"],
            AcceptFlare::Washers(_) => &["list"],
        }
    }

    /// The lines of the flat form.
    pub fn lines(&self, put: &mut impl FnMut(&str, &str)) {
        match self {
            AcceptFlare::Form(input) => {
                put("flare", &input.flare);
                put("od", &input.od);
                put("wall", &input.wall);
                put("diameter", &input.diameter);
            }
            AcceptFlare::Size(input) => {
                put("flare", &input.flare);
                put("od", &input.od);
            }
            AcceptFlare::HoseEnd(input) => {
                put("name", &input.name);
                put("washers", &input.washers.to_string());
            }
            AcceptFlare::Washers(input) => {
                let ends: Vec<String> = input.ends.iter().map(|end| end.join(">")).collect();
                put("ends", &ends.join(";"));
            }
        }
    }
}
