//! What a case gives to an operation, one struct for each; a key that is not here fails the file.

use super::accept_flare::{self, AcceptFlare};
use super::filled::{self, AcceptFilled};
use super::springback::{self, AcceptSpringback};
use super::threads::Threads;
use super::wall::{self, AcceptWall};
use serde::Deserialize;
use std::collections::BTreeMap;

/// An operation with its input.
#[derive(Debug, Clone)]
pub enum Accept {
    ReadLength(Text),
    ReadAngle(Text),
    ReadPressure(Text),
    Thread(Text),
    Bend(Bend),
    Tube(Tube),
    Springback(Springback),
    Path(Path),
    Vertices(Vertices),
    Plan(Box<Plan>),
    ReadRotation(Text),
    Tolerance(Text),
    Place(Place),
    Nut(Nut),
    Tape(Tape),
    Clips(Clips),
    ClipsToBuy(ClipsToBuy),
    FlareTrial(FlareTrial),
    Turn(Turn),
    Flare(AcceptFlare),
    Threads(Threads),
    SpringbackFigures(Box<AcceptSpringback>),
    Wall(AcceptWall),
    Filled(AcceptFilled),
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

/// One of legs, straights and outer legs; outer legs need the diameter, and with it the box is answered.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Path {
    pub legs: Option<Vec<String>>,
    pub straights: Option<Vec<String>>,
    pub outer_legs: Option<Vec<String>>,
    pub od: Option<String>,
    #[serde(default)]
    pub making: Vec<String>,
    #[serde(default)]
    pub bends: Vec<String>,
    #[serde(default)]
    pub rotations: Vec<String>,
    #[serde(default)]
    pub radius: Vec<String>,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Place {
    pub path: Path,
    pub station: String,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Nut {
    pub length: String,
    pub bore: String,
    pub od: String,
    pub across_flats: Option<String>,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Tape {
    pub measured: String,
    pub bends: usize,
    pub laid: String,
    pub od: String,
    pub chance: f64,
    pub radius: Option<String>,
    pub total_angle: Option<String>,
    pub flares: Option<[String; 2]>,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Clips {
    pub path: Path,
    pub spacing: String,
    pub from_end: String,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ClipsToBuy {
    pub needed: usize,
    pub reusable: usize,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct FlareTrial {
    pub before: String,
    pub after: String,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Turn {
    pub rotation: String,
    pub bend: String,
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

impl Path {
    fn check(&self) -> Result<(), String> {
        let ways =
            [&self.legs, &self.straights, &self.outer_legs].into_iter().filter(|way| way.is_some()).count();
        if ways == 1 { Ok(()) } else { Err("a path has one of legs, straights and outer_legs".to_owned()) }
    }
}

impl Accept {
    /// The input of the operation of that name.
    pub fn read(operation: &str, accept: toml::Table) -> Result<Accept, String> {
        fn of<T: serde::de::DeserializeOwned>(accept: toml::Table) -> Result<T, String> {
            toml::Value::Table(accept).try_into().map_err(|error: toml::de::Error| error.message().to_owned())
        }
        if let Some(threads) = Threads::read(operation, &accept) {
            return threads.map(Accept::Threads);
        }
        Ok(match operation {
            "read_length" => Accept::ReadLength(of(accept)?),
            "read_angle" => Accept::ReadAngle(of(accept)?),
            "read_pressure" => Accept::ReadPressure(of(accept)?),
            "thread" => Accept::Thread(of(accept)?),
            "bend" => Accept::Bend(of(accept)?),
            "tube" => Accept::Tube(of(accept)?),
            "springback" => Accept::Springback(of(accept)?),
            "path" => {
                let path: Path = of(accept)?;
                path.check()?;
                Accept::Path(path)
            }
            "vertices" => Accept::Vertices(of(accept)?),
            "plan" => Accept::Plan(Box::new(of(accept)?)),
            "read_rotation" => Accept::ReadRotation(of(accept)?),
            "tolerance" => Accept::Tolerance(of(accept)?),
            "place" => {
                let place: Place = of(accept)?;
                place.path.check()?;
                Accept::Place(place)
            }
            "nut" => Accept::Nut(of(accept)?),
            "tape" => Accept::Tape(of(accept)?),
            "clips" => {
                let clips: Clips = of(accept)?;
                clips.path.check()?;
                Accept::Clips(clips)
            }
            "clips_to_buy" => Accept::ClipsToBuy(of(accept)?),
            "flare_trial" => Accept::FlareTrial(of(accept)?),
            "turn" => Accept::Turn(of(accept)?),
            name if accept_flare::OPERATIONS.contains(&name) => {
                Accept::Flare(AcceptFlare::read(name, accept)?)
            }
            name if filled::OPERATIONS.contains(&name) => Accept::Filled(AcceptFilled::read(name, accept)?),
            name if springback::OPERATIONS.contains(&name) => {
                Accept::SpringbackFigures(Box::new(AcceptSpringback::read(name, accept)?))
            }
            name if wall::OPERATIONS.contains(&name) => Accept::Wall(AcceptWall::read(name, accept)?),
            other => return Err(format!("unknown operation {other}")),
        })
    }

    /// The keys that an answer to this operation can have, besides `error`.
    pub fn answer_keys(&self) -> &'static [&'static str] {
        match self {
            Accept::ReadLength(_) => &["value_mm"],
            Accept::ReadAngle(_) => &["value_deg"],
            Accept::ReadPressure(_) => &["value_mpa"],
            Accept::Thread(_) => &["designation"],
            Accept::Bend(_) => &["arc_mm", "tangent_length_mm", "gain_mm"],
            Accept::Tube(_) => &["bore_mm", "volume_ml", "mass_g"],
            Accept::Springback(_) => &["setting_deg", "constant_deg", "proportional"],
            Accept::Path(_) => &[
                "developed_length_mm",
                "straights_mm",
                "angles_deg",
                "rotations_deg",
                "end_point_mm",
                "reversed_rotations_deg",
                "mirrored_rotations_deg",
                "legs_mm",
                "total_gain_mm",
                "extent_low_mm",
                "extent_high_mm",
            ],
            Accept::ReadRotation(_) => &["value_deg"],
            Accept::Tolerance(_) => &["value_mm", "plus_minus_mm"],
            Accept::Place(_) => &["point_mm", "direction_1"],
            Accept::Nut(_) => &["tightest_curve_mm", "across_corners_mm"],
            Accept::Tape(_) => &["length_mm", "rounded_mm", "sigma_mm", "floor_acts"],
            Accept::Clips(_) => &["stations_mm"],
            Accept::ClipsToBuy(_) => &["buy", "spares"],
            Accept::FlareTrial(_) => &["net_shortening_mm"],
            Accept::Threads(threads) => threads.answer_keys(),
            Accept::Turn(_) => &["words", "clock", "inclinometer_deg"],
            Accept::Flare(input) => input.answer_keys(),
            Accept::SpringbackFigures(input) => input.answer_keys(),
            Accept::Wall(input) => input.answer_keys(),
            Accept::Filled(input) => input.answer_keys(),
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
                "loading",
                "forgiving",
                "from_last_mm",
                "tape_checks",
                "tape_changes_mm",
                "hand",
            ],
        }
    }
}
