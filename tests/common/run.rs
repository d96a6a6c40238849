//! Runs a case in Rust.

use super::accept::{self, Accept};
use super::answer::{Answer, Value, or_unknown};
use linewright::plan::{Datum, Minimum};
use linewright::units::{Angle, Length, read_angle, read_length, to_g, to_ml};
use linewright::{
    Bench, Bend, Error, Flare, FlareTool, Former, LineDraft, Material, Path, Plan, PlanOptions, Side,
    Springback, Thread, Trial, Tube,
};

/// The answer to a case.
pub fn run(accept: &Accept) -> Answer {
    answer(accept).map_err(|error| error.code())
}

fn answer(accept: &Accept) -> Result<Vec<(&'static str, Value)>, Error> {
    match accept {
        Accept::ReadLength(input) => Ok(vec![("value_mm", Value::mm(read_length(&input.text)?))]),
        Accept::ReadAngle(input) => Ok(vec![("value_deg", Value::deg(read_angle(&input.text)?))]),
        Accept::Thread(input) => {
            Ok(vec![("designation", Value::word(Thread::read(&input.text)?.to_string()))])
        }
        Accept::Bend(input) => bend(input),
        Accept::Tube(input) => tube(input),
        Accept::Springback(input) => springback(input),
        Accept::Path(input) => path(input),
        Accept::Vertices(input) => vertices(input),
        Accept::Plan(input) => plan(input),
    }
}

fn bend(input: &accept::Bend) -> Result<Vec<(&'static str, Value)>, Error> {
    let bend =
        Bend::new(read_angle(&input.angle)?, linewright::units::deg(0.0), read_length(&input.radius)?)?;
    Ok(vec![
        ("arc_mm", Value::mm(bend.arc())),
        ("tangent_length_mm", Value::mm(bend.tangent_length()?)),
        ("gain_mm", Value::mm(bend.gain()?)),
    ])
}

fn tube(input: &accept::Tube) -> Result<Vec<(&'static str, Value)>, Error> {
    let material = Material::from_name(&input.material)?;
    let tube = Tube::new(read_length(&input.od)?, read_length(&input.wall)?, material)?;
    let length = read_length(&input.length)?;
    Ok(vec![
        ("bore_mm", Value::mm(tube.bore())),
        ("volume_ml", Value::number(to_ml(tube.bore_volume(length)))),
        ("mass_g", Value::word(or_unknown(tube.mass(length).map(|mass| to_g(mass.value))))),
    ])
}

fn springback(input: &accept::Springback) -> Result<Vec<(&'static str, Value)>, Error> {
    let springback = Springback::from_trials(&trials(&input.trials)?)?;
    Ok(vec![
        ("setting_deg", Value::deg(springback.setting(read_angle(&input.wanted)?))),
        ("constant_deg", Value::deg(springback.constant())),
        ("proportional", Value::number(springback.proportional().value)),
    ])
}

fn trials(texts: &[[String; 2]]) -> Result<Vec<Trial>, Error> {
    texts.iter().map(|[set, got]| Ok(Trial { set: read_angle(set)?, got: read_angle(got)? })).collect()
}

fn lengths(texts: &[String]) -> Result<Vec<Length>, Error> {
    texts.iter().map(|text| read_length(text)).collect()
}

fn angles(texts: &[String]) -> Result<Vec<Angle>, Error> {
    texts.iter().map(|text| read_angle(text)).collect()
}

fn shape(path: &Path) -> Vec<(&'static str, Value)> {
    vec![
        ("developed_length_mm", Value::mm(path.developed_length())),
        ("straights_mm", Value::mm_list(path.straights().iter().map(|s| Some(*s)))),
        ("angles_deg", Value::deg_list(path.bends().iter().map(|b| Some(b.angle())))),
        ("rotations_deg", Value::deg_list(path.bends().iter().skip(1).map(|b| Some(b.rotation())))),
    ]
}

fn path(input: &accept::Path) -> Result<Vec<(&'static str, Value)>, Error> {
    let bends = Bend::list(&angles(&input.bends)?, &angles(&input.rotations)?, &lengths(&input.radius)?)?;
    let path = match (&input.legs, &input.straights) {
        (Some(legs), _) => Path::from_legs(&lengths(legs)?, &bends)?,
        (None, straights) => {
            Path::from_straights(&lengths(straights.as_deref().unwrap_or_default())?, &bends)?
        }
    };
    let mut values = shape(&path);
    values.push(("end_point_mm", Value::mm_list(path.end_point().map(Some))));
    Ok(values)
}

fn vertices(input: &accept::Vertices) -> Result<Vec<(&'static str, Value)>, Error> {
    let mut points = Vec::new();
    for [x, y, z] in &input.points {
        points.push([read_length(x)?, read_length(y)?, read_length(z)?]);
    }
    Ok(shape(&Path::from_vertices(&points, &lengths(&input.radius)?)?))
}

/// A bench as a case describes it.
pub fn bench(input: &accept::Bench) -> Result<Bench, Error> {
    let mut tools = Vec::new();
    for tool in &input.flare_tools {
        let flare = Flare::from_name(&tool.flare)?;
        let mut made = FlareTool::new(flare, read_length(&tool.clamp)?, read_length(&tool.projection)?)?;
        if let Some(net) = &tool.net_shortening {
            made = made.with_net_shortening(read_length(net)?)?;
        }
        if let Some(spare) = &tool.cut_spare {
            made = made.with_cut_spare(read_length(spare)?)?;
        }
        tools.push(made);
    }
    let mut bench = Bench::new(Former::new(read_length(&input.former)?, read_length(&input.grip)?)?, &tools)?;
    if !input.trials.is_empty() {
        bench = bench.with_springback(Springback::from_trials(&trials(&input.trials)?)?);
    }
    if let Some(clearance) = &input.clearance {
        bench = bench.with_clearance(read_length(clearance)?)?;
    }
    if let Some(back_off) = &input.back_off {
        bench = bench.with_back_off(read_length(back_off)?)?;
    }
    Ok(bench)
}

fn plan(input: &accept::Plan) -> Result<Vec<(&'static str, Value)>, Error> {
    let mut draft = LineDraft::new();
    for (field, typed) in &input.line {
        draft.set(field, typed)?;
    }
    let bench = bench(&input.tools)?;
    let mut options = PlanOptions::default();
    if let Some(end) = input.trim_end {
        options = options.with_trim_end(match end {
            accept::End::A => Side::A,
            accept::End::B => Side::B,
        });
    }
    if let Some(reserve) = &input.reserve {
        options = options.with_reserve(read_length(reserve)?)?;
    }
    for [id, who, why] in &input.accepted {
        options = options.accept(id, who, why);
    }
    let checked = draft.check();
    let Some(line) = checked.line else {
        return Ok(vec![("problems", Value::words(checked.problems.iter().map(linewright::Problem::id)))]);
    };
    Ok(figures(&Plan::new(&line, &bench, &options)))
}

fn figures(plan: &Plan) -> Vec<(&'static str, Value)> {
    let bends = plan.bends();
    let [a, b] = [Side::A, Side::B].map(|side| *plan.end(side).minima());
    let needs = |minima: &[Minimum]| Value::mm_list(minima.iter().map(|m| m.need));
    let shortfalls = |minima: &[Minimum]| Value::mm_list(minima.iter().map(|m| m.shortfall));
    vec![
        ("finished_length_mm", Value::mm(plan.finished_length())),
        ("cut_length_mm", Value::mm_list([plan.cut().map(|cut| cut.length())])),
        ("first", Value::word(plan.first().name())),
        ("trim_end", Value::word(plan.trim_end().map_or("none", Side::name))),
        ("datum", Value::word(Datum::name(plan.datum()))),
        ("draft", Value::word(plan.is_draft().to_string())),
        ("marks_mm", Value::mm_list(bends.iter().map(|b| b.mark))),
        ("from_raw_mm", Value::mm_list(bends.iter().map(|b| b.from_raw_end))),
        ("from_flare_mm", Value::mm_list(bends.iter().map(|b| Some(b.from_flare_face)))),
        ("settings_deg", Value::deg_list(bends.iter().map(|b| b.setting))),
        ("minima_a_mm", needs(&a)),
        ("minima_b_mm", needs(&b)),
        ("shortfalls_a_mm", shortfalls(&a)),
        ("shortfalls_b_mm", shortfalls(&b)),
        ("problems", Value::words(plan.problems().iter().map(linewright::Problem::id))),
        ("assumptions", Value::word(plan.assumptions().len().to_string())),
        ("steps", Value::words(plan.steps().iter().map(|step| step.kind.name().to_owned()))),
    ]
}
