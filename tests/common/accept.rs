//! What a case gives to an operation, one struct for each; a key that is not here fails the file.

use serde::Deserialize;
use std::collections::BTreeMap;

/// An operation with its input.
#[derive(Debug, Clone)]
pub enum Accept {
    ReadLength(Text),
    ReadAngle(Text),
    Thread(Text),
    Bend(Bend),
    Tube(Tube),
    Springback(Springback),
    Path(Path),
    Vertices(Vertices),
    Plan(Box<Plan>),
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Text {
    pub text: String,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Bend {
    pub radius: String,
    pub angle: String,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Tube {
    pub od: String,
    pub wall: String,
    pub material: String,
    pub length: String,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Springback {
    pub trials: Vec<[String; 2]>,
    pub wanted: String,
}

/// Either legs or straights.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Path {
    pub legs: Option<Vec<String>>,
    pub straights: Option<Vec<String>>,
    #[serde(default)]
    pub bends: Vec<String>,
    #[serde(default)]
    pub rotations: Vec<String>,
    #[serde(default)]
    pub radius: Vec<String>,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Vertices {
    pub points: Vec<[String; 3]>,
    #[serde(default)]
    pub radius: Vec<String>,
}

/// `bench` names a table of the same file.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Plan {
    pub line: BTreeMap<String, String>,
    pub bench: String,
    pub trim_end: Option<End>,
    pub reserve: Option<String>,
    #[serde(default)]
    pub accepted: Vec<[String; 3]>,
    /// The bench itself, filled in by the loader.
    #[serde(skip)]
    pub tools: Bench,
}

#[derive(Debug, Clone, Copy, Deserialize)]
pub enum End {
    A,
    B,
}

#[derive(Debug, Clone, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Bench {
    pub former: String,
    pub grip: String,
    #[serde(default)]
    pub trials: Vec<[String; 2]>,
    pub clearance: Option<String>,
    pub back_off: Option<String>,
    #[serde(default)]
    pub flare_tools: Vec<FlareTool>,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct FlareTool {
    pub flare: String,
    pub clamp: String,
    pub projection: String,
    pub net_shortening: Option<String>,
    pub cut_spare: Option<String>,
}

impl Accept {
    /// The input of the operation of that name.
    pub fn read(operation: &str, accept: toml::Table) -> Result<Accept, String> {
        fn of<T: serde::de::DeserializeOwned>(accept: toml::Table) -> Result<T, String> {
            toml::Value::Table(accept).try_into().map_err(|error: toml::de::Error| error.message().to_owned())
        }
        Ok(match operation {
            "read_length" => Accept::ReadLength(of(accept)?),
            "read_angle" => Accept::ReadAngle(of(accept)?),
            "thread" => Accept::Thread(of(accept)?),
            "bend" => Accept::Bend(of(accept)?),
            "tube" => Accept::Tube(of(accept)?),
            "springback" => Accept::Springback(of(accept)?),
            "path" => {
                let path: Path = of(accept)?;
                if path.legs.is_some() == path.straights.is_some() {
                    return Err("a path has either legs or straights".to_owned());
                }
                Accept::Path(path)
            }
            "vertices" => Accept::Vertices(of(accept)?),
            "plan" => Accept::Plan(Box::new(of(accept)?)),
            other => return Err(format!("unknown operation {other}")),
        })
    }

    /// The keys that an answer to this operation can have, besides `error`.
    pub fn answer_keys(&self) -> &'static [&'static str] {
        match self {
            Accept::ReadLength(_) => &["value_mm"],
            Accept::ReadAngle(_) => &["value_deg"],
            Accept::Thread(_) => &["designation"],
            Accept::Bend(_) => &["arc_mm", "tangent_length_mm", "gain_mm"],
            Accept::Tube(_) => &["bore_mm", "volume_ml", "mass_g"],
            Accept::Springback(_) => &["setting_deg", "constant_deg", "proportional"],
            Accept::Path(_) => {
                &["developed_length_mm", "straights_mm", "angles_deg", "rotations_deg", "end_point_mm"]
            }
            Accept::Vertices(_) => &["straights_mm", "angles_deg", "rotations_deg", "developed_length_mm"],
            Accept::Plan(_) => &[
                "finished_length_mm",
                "cut_length_mm",
                "first",
                "trim_end",
                "datum",
                "draft",
                "marks_mm",
                "from_raw_mm",
                "from_flare_mm",
                "settings_deg",
                "minima_a_mm",
                "minima_b_mm",
                "shortfalls_a_mm",
                "shortfalls_b_mm",
                "problems",
                "assumptions",
                "steps",
            ],
        }
    }
}
