//! Cases about springback from mechanics and from trials, records, and test pieces: what they give, and how they run in
//! Rust.

use super::answer::{UNKNOWN, Value};
use super::springback_input::{
    Advice, Belief, Groove, Held, MechanicsPrior, Metal, Piece, Pieces, Range, Record, Trials,
};
use linewright::bench::{PieceFit, TestPiece};
use linewright::material::{PowerLaw, Properties};
use linewright::springback::{
    Calibration, Date, Hardening, MaterialScatter, Mechanics, Prior, Trial, TrialFit,
};
use linewright::units::{
    Angle, Length, mm, ratio, read_angle, read_length, read_pressure, to_deg, to_mm, to_n_mm,
};
use linewright::{Error, Former, Material, Tube};

/// Its operations.
pub const OPERATIONS: [&str; 8] = [
    "advice",
    "calibration",
    "former_of_groove",
    "held_bend",
    "mechanics_prior",
    "piece_fit",
    "setting_range",
    "trial_fit",
];

/// An operation with its input.
#[derive(Debug, Clone)]
pub enum AcceptSpringback {
    Advice(Advice),
    Calibration(Record),
    Groove(Groove),
    Held(Held),
    MechanicsPrior(MechanicsPrior),
    Pieces(Pieces),
    Range(Range),
    Trials(Trials),
}

type Figures = Vec<(&'static str, Value)>;

impl AcceptSpringback {
    /// The input of one of [`OPERATIONS`].
    pub fn read(operation: &str, accept: toml::Table) -> Result<AcceptSpringback, String> {
        fn of<T: serde::de::DeserializeOwned>(accept: toml::Table) -> Result<T, String> {
            toml::Value::Table(accept).try_into().map_err(|error: toml::de::Error| error.message().to_owned())
        }
        match operation {
            "advice" => of(accept).map(AcceptSpringback::Advice),
            "calibration" => of(accept).map(AcceptSpringback::Calibration),
            "former_of_groove" => of(accept).map(AcceptSpringback::Groove),
            "held_bend" => of(accept).map(AcceptSpringback::Held),
            "mechanics_prior" => of(accept).map(AcceptSpringback::MechanicsPrior),
            "piece_fit" => of(accept).map(AcceptSpringback::Pieces),
            "setting_range" => of(accept).map(AcceptSpringback::Range),
            "trial_fit" => of(accept).map(AcceptSpringback::Trials),
            other => Err(format!("unknown operation {other}")),
        }
    }

    /// The keys that an answer can have, besides `error`.
    pub fn answer_keys(&self) -> &'static [&'static str] {
        match self {
            AcceptSpringback::Advice(_) => &["angles_deg", "reaches_deg", "enough"],
            AcceptSpringback::Calibration(_) => &["record", "setting_deg", "is_for"],
            AcceptSpringback::Groove(_) => &["as_formed_mm"],
            AcceptSpringback::Held(_) => {
                &["moment_nmm", "share_1", "formed_mm", "constant_deg", "setting_deg", "basis"]
            }
            AcceptSpringback::MechanicsPrior(_) => {
                &["constants_deg", "proportionals_1", "correlation_1", "scatter_deg", "worth"]
            }
            AcceptSpringback::Pieces(_) => &[
                "radius_mm",
                "radius_error_mm",
                "radius_interval_mm",
                "scatter_mm",
                "gain_mm",
                "gain_interval_mm",
                "arc_radius_mm",
                "share_1",
                "share_interval_1",
            ],
            AcceptSpringback::Range(_) => &["least_deg", "most_deg"],
            AcceptSpringback::Trials(_) => &[
                "constant_deg",
                "proportional",
                "setting_deg",
                "basis",
                "reading_deg",
                "scatter_deg",
                "constant_error_deg",
                "proportional_error_1",
                "constant_interval_deg",
                "proportional_interval_1",
                "setting_interval_deg",
                "next_bend_deg",
                "weight_1",
                "outlier",
                "bent",
                "contradicted",
                "freedom",
            ],
        }
    }

    /// The input in the form that the C program reads.
    pub fn lines(&self, put: &mut impl FnMut(&str, &str)) {
        match self {
            AcceptSpringback::Advice(input) => {
                put("trials", &pairs(&input.trials));
                belief_lines(input.prior.as_ref(), put);
                put("wanted", &input.wanted.join(";"));
                put("half_width", &input.half_width);
                put("chance", &exact(input.chance));
                put("candidates", &input.candidates.join(";"));
            }
            AcceptSpringback::Calibration(input) => {
                put("trials", &pairs(&input.trials));
                put("tube", &input.tube.join("|"));
                put("other", &input.other.join("|"));
                for (key, text) in
                    [("former", &input.former), ("date", &input.date), ("revision", &input.revision)]
                {
                    put(key, text);
                }
                put("wanted", &input.wanted);
            }
            AcceptSpringback::Groove(input) => {
                metal_lines(&input.tube, put);
                put("groove", &input.groove);
                put("grip", &input.grip);
            }
            AcceptSpringback::Held(input) => {
                metal_lines(&input.tube, put);
                put("radius", &input.radius);
                input.arm.iter().for_each(|arm| put("arm", arm));
                input.wanted.iter().for_each(|wanted| put("wanted", wanted));
            }
            AcceptSpringback::MechanicsPrior(input) => {
                metal_lines(&input.tube, put);
                put("radius", &input.radius);
                input.arm.iter().for_each(|arm| put("arm", arm));
                put("strength_scatter", &exact(input.strength_scatter));
                put("modulus_scatter", &exact(input.modulus_scatter));
                put("bend_scatter", &input.bend_scatter);
                put("worth", &input.worth.to_string());
            }
            AcceptSpringback::Pieces(input) => {
                for piece in &input.pieces {
                    let [od, reading] =
                        [&piece.od, &piece.reading].map(|text| text.as_deref().unwrap_or_default());
                    let (legs, angles) = (piece.legs.join(";"), piece.angles.join(";"));
                    put("piece", &[&piece.length, &legs, &angles, od, reading].join("|"));
                }
                put("angle", &input.angle);
                put("chance", &exact(input.chance));
            }
            AcceptSpringback::Range(input) => {
                metal_lines(&input.tube, put);
                put("radius", &input.radius);
                input.arm.iter().for_each(|arm| put("arm", arm));
                put("wanted", &input.wanted);
                put("strength_scatter", &exact(input.strength_scatter));
                put("modulus_scatter", &exact(input.modulus_scatter));
            }
            AcceptSpringback::Trials(input) => {
                put("trials", &pairs(&input.trials));
                belief_lines(input.prior.as_ref(), put);
                put("wanted", &input.wanted);
                put("chance", &exact(input.chance));
            }
        }
    }

    /// The answer to a case.
    pub fn answer(&self) -> Result<Figures, Error> {
        match self {
            AcceptSpringback::Advice(input) => advice(input),
            AcceptSpringback::Calibration(input) => record(input),
            AcceptSpringback::Groove(input) => {
                let tube = tube(&input.tube)?;
                let former =
                    Former::of_groove(read_length(&input.groove)?, read_length(&input.grip)?, &tube)?;
                Ok(vec![("as_formed_mm", Value::mm(former.as_formed()))])
            }
            AcceptSpringback::Held(input) => held(input),
            AcceptSpringback::MechanicsPrior(input) => {
                let prior = tube(&input.tube)?.prior(
                    read_length(&input.radius)?,
                    arm(input.arm.as_deref())?,
                    scatter(input.strength_scatter, input.modulus_scatter),
                    read_angle(&input.bend_scatter)?,
                    input.worth as usize,
                )?;
                Ok(vec![
                    ("constants_deg", Value::deg_list(prior.constant.map(Some))),
                    ("proportionals_1", numbers(Some(prior.proportional.map(|part| part.value)))),
                    ("correlation_1", Value::number(prior.correlation.value)),
                    ("scatter_deg", Value::deg(prior.scatter)),
                    ("worth", Value::word(prior.worth.to_string())),
                ])
            }
            AcceptSpringback::Pieces(input) => pieces(input),
            AcceptSpringback::Range(input) => {
                let [least, most] = tube(&input.tube)?.setting_range(
                    read_length(&input.radius)?,
                    arm(input.arm.as_deref())?,
                    read_angle(&input.wanted)?,
                    scatter(input.strength_scatter, input.modulus_scatter),
                )?;
                Ok(vec![("least_deg", Value::deg(least)), ("most_deg", Value::deg(most))])
            }
            AcceptSpringback::Trials(input) => trial_fit(input),
        }
    }
}

/// A number as all languages read it back with the same bits.
fn exact(number: f64) -> String {
    format!("{number:?}")
}

fn pairs(trials: &[[String; 2]]) -> String {
    trials.iter().map(|trial| trial.join(">")).collect::<Vec<_>>().join(";")
}

fn belief_lines(prior: Option<&Belief>, put: &mut impl FnMut(&str, &str)) {
    let Some(prior) = prior else { return };
    put("prior.constant", &prior.constant.join(";"));
    put("prior.proportional", &prior.proportional.map(exact).join(";"));
    put("prior.correlation", &exact(prior.correlation));
    put("prior.scatter", &prior.scatter);
    put("prior.worth", &prior.worth.to_string());
}

fn metal_lines(tube: &Metal, put: &mut impl FnMut(&str, &str)) {
    put("od", &tube.od);
    put("wall", &tube.wall);
    for (key, text) in [
        ("modulus", &tube.modulus),
        ("yield_strength", &tube.yield_strength),
        ("tangent_modulus", &tube.tangent_modulus),
        ("strength_coefficient", &tube.strength_coefficient),
        ("source", &tube.source),
        ("material", &tube.material),
        ("condition", &tube.condition),
    ] {
        text.iter().for_each(|text| put(key, text));
    }
    tube.hardening_exponent.iter().for_each(|exponent| put("hardening_exponent", &exact(*exponent)));
}

fn numbers<const N: usize>(list: Option<[f64; N]>) -> Value {
    list.map_or(Value::word(UNKNOWN), |list| Value(list.map(exact).to_vec()))
}

fn degs(list: Option<[Angle; 2]>) -> Value {
    numbers(list.map(|list| list.map(to_deg)))
}

fn mms(list: Option<[Length; 2]>) -> Value {
    numbers(list.map(|list| list.map(to_mm)))
}

/// A metal of one's own by what a case gives of it.
fn own_metal(given: &Metal, source: &str) -> Result<Properties, Error> {
    let mut metal = Properties::named("own");
    if let Some(text) = &given.modulus {
        metal = metal.with_modulus(read_pressure(text)?, source)?;
    }
    if let Some(text) = &given.yield_strength {
        metal = metal.with_yield_strength(read_pressure(text)?, source)?;
    }
    if let Some(text) = &given.tangent_modulus {
        metal = metal.with_tangent_modulus(read_pressure(text)?, source)?;
    }
    if let (Some(text), Some(exponent)) = (&given.strength_coefficient, given.hardening_exponent) {
        let law = PowerLaw { strength_coefficient: read_pressure(text)?, exponent: ratio(exponent) };
        metal = metal.with_hardening(law, source)?;
    }
    Ok(metal)
}

fn tube(given: &Metal) -> Result<Mechanics, Error> {
    let (od, wall) = (read_length(&given.od)?, read_length(&given.wall)?);
    if let Some(material) = &given.material {
        let material = Material::from_name(material)?;
        let metal = match &given.condition {
            Some(condition) => {
                material.properties_in(linewright::material::Condition::from_name(condition)?)?
            }
            None => material.properties(),
        };
        return Mechanics::of_metal(od, wall, &metal);
    }
    if let Some(source) = &given.source {
        return Mechanics::of_metal(od, wall, &own_metal(given, source)?);
    }
    let text = |given: &Option<String>| read_pressure(given.as_deref().unwrap_or_default());
    let modulus = text(&given.modulus)?;
    let law = if let Some(exponent) = given.hardening_exponent {
        let strength_coefficient = text(&given.strength_coefficient)?;
        Hardening::PowerLaw { strength_coefficient, hardening_exponent: ratio(exponent) }
    } else if given.tangent_modulus.is_some() {
        let (yield_strength, tangent_modulus) = (text(&given.yield_strength)?, text(&given.tangent_modulus)?);
        Hardening::Bilinear { yield_strength, tangent_modulus }
    } else {
        Hardening::PerfectlyPlastic { yield_strength: text(&given.yield_strength)? }
    };
    Mechanics::new(od, wall, modulus, law)
}

fn arm(given: Option<&str>) -> Result<Length, Error> {
    given.map_or(Ok(mm(0.0)), read_length)
}

fn scatter(strength: f64, modulus: f64) -> MaterialScatter {
    MaterialScatter { strength: ratio(strength), modulus: ratio(modulus) }
}

fn held(input: &Held) -> Result<Figures, Error> {
    let bend = tube(&input.tube)?.bend(read_length(&input.radius)?)?;
    let mut figures = vec![
        ("moment_nmm", Value::number(to_n_mm(bend.moment()))),
        ("share_1", Value::number(bend.share().value)),
        ("formed_mm", Value::mm_list([bend.formed_radius()])),
    ];
    if let Some(wanted) = &input.wanted {
        let springback = bend.springback(arm(input.arm.as_deref())?)?;
        figures.push(("constant_deg", Value::deg(springback.constant())));
        figures.push(("setting_deg", Value::deg(springback.setting(read_angle(wanted)?)?)));
        figures.push(("basis", Value::word(springback.basis().name())));
    }
    Ok(figures)
}

fn trials(texts: &[[String; 2]]) -> Result<Vec<Trial>, Error> {
    texts.iter().map(|[set, got]| Ok(Trial { set: read_angle(set)?, got: read_angle(got)? })).collect()
}

fn fit(given: &[[String; 2]], prior: Option<&Belief>) -> Result<TrialFit, Error> {
    let trials = trials(given)?;
    let Some(prior) = prior else { return TrialFit::new(&trials) };
    let [constant, spread] = &prior.constant;
    let prior = Prior {
        constant: [read_angle(constant)?, read_angle(spread)?],
        proportional: prior.proportional.map(ratio),
        correlation: ratio(prior.correlation),
        scatter: read_angle(&prior.scatter)?,
        worth: prior.worth as usize,
    };
    TrialFit::with_prior(prior, &trials)
}

fn trial_fit(input: &Trials) -> Result<Figures, Error> {
    let fit = fit(&input.trials, input.prior.as_ref())?;
    let (wanted, chance) = (read_angle(&input.wanted)?, input.chance);
    let springback = fit.springback()?;
    let setting = springback.setting(wanted)?;
    let errors = fit.standard_errors();
    let proportional = fit.proportional_interval(chance)?;
    Ok(vec![
        ("constant_deg", Value::deg(springback.constant())),
        ("proportional", Value::number(springback.proportional().value)),
        ("setting_deg", Value::deg(setting)),
        ("basis", Value::word(springback.basis().name())),
        ("reading_deg", Value::deg_list([fit.reading()])),
        ("scatter_deg", Value::deg_list([fit.scatter()])),
        ("constant_error_deg", Value::deg_list([errors.map(|(constant, _)| constant)])),
        ("proportional_error_1", numbers(errors.map(|(_, share)| [share.value]))),
        ("constant_interval_deg", degs(fit.constant_interval(chance)?)),
        ("proportional_interval_1", numbers(proportional.map(|ends| ends.map(|end| end.value)))),
        ("setting_interval_deg", degs(fit.setting_interval(wanted, chance)?)),
        ("next_bend_deg", Value::deg_list([fit.next_bend(setting, chance)?])),
        ("weight_1", Value::number(fit.weight_of_trials(setting)?.value)),
        ("outlier", Value::word(fit.outlier().map_or("none".to_owned(), |i| (i + 1).to_string()))),
        ("bent", flag(fit.is_bent())),
        ("contradicted", flag(fit.is_contradicted())),
        ("freedom", Value::word(fit.degrees_of_freedom().to_string())),
    ])
}

fn flag(value: Option<bool>) -> Value {
    Value::word(value.map_or(UNKNOWN.to_owned(), |value| value.to_string()))
}

fn advice(input: &Advice) -> Result<Figures, Error> {
    let angles = |texts: &[String]| texts.iter().map(|text| read_angle(text)).collect::<Result<Vec<_>, _>>();
    let fit = fit(&input.trials, input.prior.as_ref())?;
    let half_width = read_angle(&input.half_width)?;
    let advice =
        fit.advice(&angles(&input.wanted)?, half_width, input.chance, &angles(&input.candidates)?)?;
    Ok(vec![
        ("angles_deg", Value::deg_list(advice.angles.into_iter().map(Some))),
        ("reaches_deg", Value::deg(advice.reaches)),
        ("enough", Value::word(advice.is_enough.to_string())),
    ])
}

fn plain_tube([od, wall, material]: &[String; 3]) -> Result<Tube, Error> {
    Tube::new(read_length(od)?, read_length(wall)?, Material::from_name(material)?)
}

fn record(input: &Record) -> Result<Figures, Error> {
    let (tube, other) = (plain_tube(&input.tube)?, plain_tube(&input.other)?);
    let date = Date::read(&input.date)?;
    let made = Calibration::new(&trials(&input.trials)?, &tube, &input.former, date, &input.revision)?;
    let springback = made.springback()?;
    Ok(vec![
        ("record", Value::word(springback.calibration().map_or(String::new(), ToString::to_string))),
        ("setting_deg", Value::deg(springback.setting(read_angle(&input.wanted)?)?)),
        ("is_for", Value::word(made.is_for(&other).to_string())),
    ])
}

fn pieces(input: &Pieces) -> Result<Figures, Error> {
    let piece = |given: &Piece| {
        let length = read_length(&given.length)?;
        let legs = given.legs.iter().map(|leg| read_length(leg)).collect::<Result<Vec<_>, _>>()?;
        let angles = given.angles.iter().map(|angle| read_angle(angle)).collect::<Result<Vec<_>, _>>()?;
        let piece = match &given.od {
            Some(od) => TestPiece::from_outer_legs(length, &legs, &angles, read_length(od)?),
            None => TestPiece::new(length, &legs, &angles),
        }?;
        match &given.reading {
            Some(reading) => piece.with_reading(Some(read_length(reading)?)),
            None => Ok(piece),
        }
    };
    let fit = PieceFit::new(&input.pieces.iter().map(piece).collect::<Result<Vec<_>, _>>()?)?;
    let (angle, chance) = (read_angle(&input.angle)?, input.chance);
    let stretch = fit.stretch();
    let share = stretch.map(|stretch| stretch.share_interval(chance)).transpose()?.flatten();
    Ok(vec![
        ("radius_mm", Value::mm(fit.radius())),
        ("radius_error_mm", Value::mm_list([fit.radius_error()])),
        ("radius_interval_mm", mms(fit.radius_interval(chance)?)),
        ("scatter_mm", Value::mm_list([fit.scatter()])),
        ("gain_mm", Value::mm(fit.gain(angle)?)),
        ("gain_interval_mm", mms(fit.gain_interval(angle, chance)?)),
        ("arc_radius_mm", Value::mm_list([stretch.map(|stretch| stretch.radius())])),
        ("share_1", numbers(stretch.map(|stretch| [stretch.share().value]))),
        ("share_interval_1", numbers(share.map(|ends| ends.map(|end| end.value)))),
    ])
}
