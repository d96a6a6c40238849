//! What the cases about springback give, one struct for each operation; a key that is not here fails the file.

use serde::Deserialize;

/// A tube with its metal: one hardening law in parts, the figures of a metal of one's own with where they were read, or a
/// material in a condition.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Metal {
    pub od: String,
    pub wall: String,
    pub modulus: Option<String>,
    pub yield_strength: Option<String>,
    pub tangent_modulus: Option<String>,
    pub strength_coefficient: Option<String>,
    pub hardening_exponent: Option<f64>,
    pub source: Option<String>,
    pub material: Option<String>,
    pub condition: Option<String>,
}

/// What is asked of a tube held at a radius; the springback only where an angle is wanted.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Held {
    pub tube: Metal,
    pub radius: String,
    pub arm: Option<String>,
    pub wanted: Option<String>,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Range {
    pub tube: Metal,
    pub radius: String,
    pub arm: Option<String>,
    pub wanted: String,
    pub strength_scatter: f64,
    pub modulus_scatter: f64,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct MechanicsPrior {
    pub tube: Metal,
    pub radius: String,
    pub arm: Option<String>,
    pub strength_scatter: f64,
    pub modulus_scatter: f64,
    pub bend_scatter: String,
    pub worth: u32,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Groove {
    pub tube: Metal,
    pub groove: String,
    pub grip: String,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Belief {
    pub constant: [String; 2],
    pub proportional: [f64; 2],
    #[serde(default)]
    pub correlation: f64,
    pub scatter: String,
    pub worth: u32,
}

/// What is asked of trials; figures at the setting that the line gives for the angle wanted.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Trials {
    pub trials: Vec<[String; 2]>,
    pub prior: Option<Belief>,
    pub wanted: String,
    pub chance: f64,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Advice {
    pub trials: Vec<[String; 2]>,
    pub prior: Option<Belief>,
    pub wanted: Vec<String>,
    pub half_width: String,
    pub chance: f64,
    pub candidates: Vec<String>,
}

/// A record, an angle wanted, and another tube that it may be for.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Record {
    pub trials: Vec<[String; 2]>,
    /// Outside diameter, wall, material.
    pub tube: [String; 3],
    pub other: [String; 3],
    pub former: String,
    pub date: String,
    pub revision: String,
    pub wanted: String,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Pieces {
    pub pieces: Vec<Piece>,
    pub angle: String,
    pub chance: f64,
}

/// A test piece; with a diameter its legs are outer ones. A reading takes the place of what the legs show.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Piece {
    pub length: String,
    pub legs: Vec<String>,
    pub angles: Vec<String>,
    pub od: Option<String>,
    pub reading: Option<String>,
}
