//! Cases about the ideal cylinder under pressure and about a line full of fluid: what they give, and how they run in Rust.

use super::answer::Value;
use linewright::bend::pressure::{Cylinder, Strength, Theory};
use linewright::hydraulics::{AxialEnds, FilledTube, Fluid, Hold, Span, SpanEnds, WallElasticity};
use linewright::material::Properties;
use linewright::units::{
    hz, kelvin, kg_per_m3, ml, mm, per_kelvin, ratio, read_length, read_pressure, to_g, to_hz, to_m_per_s,
    to_ml, to_mpa, to_per_mpa,
};
use linewright::{Error, Material, Tube};
use serde::Deserialize;

/// Its operations.
pub const OPERATIONS: [&str; 4] = ["ideal_cylinder", "filled_tube", "span", "hold"];

/// Where all made-up figures come from.
const SOURCE: &str = "a case";

/// An operation with its input.
#[derive(Debug, Clone)]
pub enum AcceptFilled {
    Ideal(Ideal),
    Tube(Filled),
    Span(Beam),
    Hold(Held),
}

/// A cylinder, straight or bent, with a strength.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Ideal {
    pub od: String,
    pub wall: String,
    pub od_plus: Option<String>,
    pub wall_minus: Option<String>,
    pub radius: Option<String>,
    pub neutral_shift: Option<String>,
    pub theory: String,
    pub strength: String,
    pub factor: f64,
    pub source: String,
    pub pressure: String,
}

/// A tube full of fluid; what the fluid lacks is left out.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Filled {
    pub od: String,
    pub wall: String,
    pub modulus: String,
    pub poisson: f64,
    pub ends: String,
    pub bulk_modulus: Option<String>,
    pub density: Option<f64>,
    pub expansion: Option<f64>,
    pub length: String,
    pub pressure: String,
    pub warming: f64,
    pub wall_expansion: f64,
}

/// A span between clips; without a fluid's density it is empty.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Beam {
    pub od: String,
    pub wall: String,
    pub modulus: String,
    pub density: Option<f64>,
    pub fluid_density: Option<f64>,
    pub length: String,
    pub ends: String,
    pub wanted: f64,
}

/// A rigid volume whose pressure is held.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Held {
    pub volume: f64,
    pub bulk_modulus: Option<String>,
    pub expansion: Option<f64>,
    pub warming: f64,
    pub lost: f64,
    pub fall: String,
}

fn tube(od: &str, wall: &str) -> Result<Tube, Error> {
    Tube::new(read_length(od)?, read_length(wall)?, Material::LowCarbonSteel)
}

fn fluid(density: Option<f64>, bulk: Option<&String>, expansion: Option<f64>) -> Result<Fluid, Error> {
    let mut fluid = Fluid::named(SOURCE);
    if let Some(density) = density {
        fluid = fluid.with_density(kg_per_m3(density), SOURCE)?;
    }
    if let Some(bulk) = bulk {
        fluid = fluid.with_bulk_modulus(read_pressure(bulk)?, SOURCE)?;
    }
    match expansion {
        Some(expansion) => fluid.with_expansion(per_kelvin(expansion), SOURCE),
        None => Ok(fluid),
    }
}

impl AcceptFilled {
    /// The input of one of [`OPERATIONS`].
    pub fn read(operation: &str, accept: toml::Table) -> Result<AcceptFilled, String> {
        fn of<T: serde::de::DeserializeOwned>(accept: toml::Table) -> Result<T, String> {
            toml::Value::Table(accept).try_into().map_err(|error: toml::de::Error| error.message().to_owned())
        }
        match operation {
            "ideal_cylinder" => of(accept).map(AcceptFilled::Ideal),
            "filled_tube" => of(accept).map(AcceptFilled::Tube),
            "span" => of(accept).map(AcceptFilled::Span),
            "hold" => of(accept).map(AcceptFilled::Hold),
            other => Err(format!("unknown operation {other}")),
        }
    }

    /// The keys that an answer can have, besides `error`.
    pub fn answer_keys(&self) -> &'static [&'static str] {
        match self {
            AcceptFilled::Ideal(_) => &["ideal_mpa", "wall_mm", "place", "stress_mpa", "margin_1", "reached"],
            AcceptFilled::Tube(_) => {
                &["wall_per_mpa", "all_per_mpa", "bulk_mpa", "volume_ml", "rise_mpa", "wave_m_per_s"]
            }
            AcceptFilled::Span(_) => &["mass_g", "frequency_hz", "length_mm"],
            AcceptFilled::Hold(_) => &["grown_ml", "warmed_mpa", "fallen_mpa", "loss_ml"],
        }
    }

    /// The input in the form that the C program reads.
    pub fn lines(&self, put: &mut impl FnMut(&str, &str)) {
        let number = |value: f64| format!("{value:?}");
        match self {
            AcceptFilled::Ideal(input) => {
                put("od", &input.od);
                put("wall", &input.wall);
                input.od_plus.iter().for_each(|value| put("od_plus", value));
                input.wall_minus.iter().for_each(|value| put("wall_minus", value));
                input.radius.iter().for_each(|value| put("radius", value));
                input.neutral_shift.iter().for_each(|value| put("neutral_shift", value));
                put("theory", &input.theory);
                put("strength", &input.strength);
                put("factor", &number(input.factor));
                put("source", &input.source);
                put("pressure", &input.pressure);
            }
            AcceptFilled::Tube(input) => {
                put("od", &input.od);
                put("wall", &input.wall);
                put("modulus", &input.modulus);
                put("poisson", &number(input.poisson));
                put("ends", &input.ends);
                input.bulk_modulus.iter().for_each(|value| put("bulk_modulus", value));
                input.density.iter().for_each(|value| put("density", &number(*value)));
                input.expansion.iter().for_each(|value| put("expansion", &number(*value)));
                put("length", &input.length);
                put("pressure", &input.pressure);
                put("warming", &number(input.warming));
                put("wall_expansion", &number(input.wall_expansion));
            }
            AcceptFilled::Span(input) => {
                put("od", &input.od);
                put("wall", &input.wall);
                put("modulus", &input.modulus);
                input.density.iter().for_each(|value| put("density", &number(*value)));
                input.fluid_density.iter().for_each(|value| put("fluid_density", &number(*value)));
                put("length", &input.length);
                put("ends", &input.ends);
                put("wanted", &number(input.wanted));
            }
            AcceptFilled::Hold(input) => {
                put("volume", &number(input.volume));
                input.bulk_modulus.iter().for_each(|value| put("bulk_modulus", value));
                input.expansion.iter().for_each(|value| put("expansion", &number(*value)));
                put("warming", &number(input.warming));
                put("lost", &number(input.lost));
                put("fall", &input.fall);
            }
        }
    }

    /// The answer to a case.
    pub fn answer(&self) -> Result<Vec<(&'static str, Value)>, Error> {
        match self {
            AcceptFilled::Ideal(input) => ideal(input),
            AcceptFilled::Tube(input) => filled(input),
            AcceptFilled::Span(input) => span(input),
            AcceptFilled::Hold(input) => hold(input),
        }
    }
}

fn ideal(input: &Ideal) -> Result<Vec<(&'static str, Value)>, Error> {
    let length = |text: &Option<String>| text.as_deref().map_or(Ok(mm(0.0)), read_length);
    let tube = tube(&input.od, &input.wall)?;
    let mut cylinder =
        Cylinder::new(&tube).with_tolerances(length(&input.od_plus)?, length(&input.wall_minus)?)?;
    if let Some(radius) = &input.radius {
        cylinder = cylinder.bent(read_length(radius)?)?;
    }
    if let Some(shift) = &input.neutral_shift {
        cylinder = cylinder.with_neutral_shift(read_length(shift)?)?;
    }
    let strength = Strength::new(read_pressure(&input.strength)?, ratio(input.factor), &input.source)?;
    let (theory, pressure) = (Theory::from_name(&input.theory)?, read_pressure(&input.pressure)?);
    let ideal = cylinder.ideal_cylinder_pressure(theory, &strength)?;
    let margin = cylinder.margin(theory, pressure, &strength)?;
    Ok(vec![
        ("ideal_mpa", Value::number(to_mpa(ideal.pressure()))),
        ("wall_mm", Value::mm(ideal.wall())),
        ("place", Value::word(ideal.place().map_or("straight", |place| place.name()))),
        ("stress_mpa", Value::number(to_mpa(cylinder.stress(theory, pressure)?))),
        ("margin_1", Value::number(margin.found().value)),
        ("reached", Value::word(margin.is_reached().to_string())),
    ])
}

fn filled(input: &Filled) -> Result<Vec<(&'static str, Value)>, Error> {
    let metal = Properties::named(SOURCE)
        .with_modulus(read_pressure(&input.modulus)?, SOURCE)?
        .with_poisson(ratio(input.poisson), SOURCE)?;
    let fluid = fluid(input.density, input.bulk_modulus.as_ref(), input.expansion)?;
    let ends = AxialEnds::from_name(&input.ends)?;
    let filled = FilledTube::new(&tube(&input.od, &input.wall)?, WallElasticity::of(&metal)?, ends, &fluid)?;
    let volume = filled.volume_to_raise(read_length(&input.length)?, read_pressure(&input.pressure)?)?;
    let rise = filled.pressure_of_warming(kelvin(input.warming), per_kelvin(input.wall_expansion))?;
    Ok(vec![
        ("wall_per_mpa", Value::number(to_per_mpa(filled.wall_compliance()))),
        ("all_per_mpa", Value::number(to_per_mpa(filled.compliance()))),
        ("bulk_mpa", Value::number(to_mpa(filled.effective_bulk_modulus()))),
        ("volume_ml", Value::number(to_ml(volume))),
        ("rise_mpa", Value::number(to_mpa(rise))),
        ("wave_m_per_s", Value::number(to_m_per_s(filled.wave_speed()?))),
    ])
}

fn span(input: &Beam) -> Result<Vec<(&'static str, Value)>, Error> {
    let mut metal = Properties::named(SOURCE).with_modulus(read_pressure(&input.modulus)?, SOURCE)?;
    if let Some(density) = input.density {
        metal = metal.with_density(kg_per_m3(density), SOURCE)?;
    }
    let fluid = input.fluid_density.map(|density| fluid(Some(density), None, None)).transpose()?;
    let span = Span::new(&tube(&input.od, &input.wall)?, &metal, fluid.as_ref())?;
    let (length, ends) = (read_length(&input.length)?, SpanEnds::from_name(&input.ends)?);
    Ok(vec![
        ("mass_g", Value::number(to_g(span.mass(length)?))),
        ("frequency_hz", Value::number(to_hz(span.first_frequency(length, ends)?))),
        ("length_mm", Value::mm(span.length_for(hz(input.wanted), ends)?)),
    ])
}

fn hold(input: &Held) -> Result<Vec<(&'static str, Value)>, Error> {
    let hold = Hold::new(ml(input.volume), &fluid(None, input.bulk_modulus.as_ref(), input.expansion)?)?;
    let warming = kelvin(input.warming);
    Ok(vec![
        ("grown_ml", Value::number(to_ml(hold.volume_of_temperature(warming)?))),
        ("warmed_mpa", Value::number(to_mpa(hold.ideal_rigid_warming(warming)?))),
        ("fallen_mpa", Value::number(to_mpa(hold.ideal_rigid_pressure(ml(input.lost))?))),
        ("loss_ml", Value::number(to_ml(hold.ideal_rigid_loss(read_pressure(&input.fall)?)?))),
    ])
}
