//! Runs a case in Rust.

use super::accept::{self, Accept};
use super::answer::{Answer, Value, or_unknown};
use linewright::clip::{ClipRule, clips_to_buy};
use linewright::flare::FlareTrial;
use linewright::plan::{Datum, Minimum};
use linewright::source::Source;
use linewright::tape::{Laid, TapeLength};
use linewright::units::{
    Angle, Length, ratio, read_angle, read_length, read_pressure, read_rotation, read_tolerance, to_g, to_ml,
    to_mpa,
};
use linewright::{
    Bench, Bend, Error, Flare, FlareTool, Former, LineDraft, Making, Material, Nut, Path, Plan, PlanOptions,
    Side, Springback, Thread, Trial, Tube, bounds, turn,
};

/// The answer to a case.
pub fn run(accept: &Accept) -> Answer {
    answer(accept).map_err(|error| error.code())
}

fn answer(accept: &Accept) -> Result<Vec<(&'static str, Value)>, Error> {
    match accept {
        Accept::ReadLength(input) => Ok(vec![("value_mm", Value::mm(read_length(&input.text)?))]),
        Accept::ReadPressure(input) => {
            Ok(vec![("value_mpa", Value::number(to_mpa(read_pressure(&input.text)?)))])
        }
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
        Accept::ReadRotation(input) => Ok(vec![("value_deg", Value::deg(read_rotation(&input.text)?))]),
        Accept::Tolerance(input) => {
            let (value, plus_minus) = read_tolerance(&input.text)?;
            Ok(vec![("value_mm", Value::mm(value)), ("plus_minus_mm", Value::mm(plus_minus))])
        }
        Accept::Place(input) => place(input),
        Accept::Nut(input) => nut(input),
        Accept::Tape(input) => tape(input),
        Accept::Clips(input) => clips(input),
        Accept::ClipsToBuy(input) => {
            let (buy, spares) = clips_to_buy(input.needed, input.reusable);
            Ok(vec![("buy", Value::word(buy.to_string())), ("spares", Value::word(spares.to_string()))])
        }
        Accept::FlareTrial(input) => {
            let trial = FlareTrial::new(read_length(&input.before)?, read_length(&input.after)?)?;
            Ok(vec![("net_shortening_mm", Value::mm(trial.net_shortening()))])
        }
        Accept::Turn(input) => turn_of(input),
        Accept::Flare(input) => super::run_flare::answer(input),
        Accept::Threads(threads) => threads.run(),
        Accept::SpringbackFigures(input) => input.answer(),
        Accept::Wall(input) => input.answer(),
        Accept::Filled(input) => input.answer(),
    }
}

fn place(input: &accept::Place) -> Result<Vec<(&'static str, Value)>, Error> {
    let place = made(&input.path)?.place_at(read_length(&input.station)?)?;
    Ok(vec![
        ("point_mm", Value::mm_list(place.point.map(Some))),
        ("direction_1", Value(place.direction.map(|part| or_unknown(Some(part.value))).to_vec())),
    ])
}

fn nut(input: &accept::Nut) -> Result<Vec<(&'static str, Value)>, Error> {
    let mut nut = Nut::new(None, read_length(&input.length)?, read_length(&input.bore)?, None)?;
    if let Some(flats) = &input.across_flats {
        nut = nut.with_across_flats(read_length(flats)?)?;
    }
    let od = bounds::OD.length(read_length(&input.od)?)?;
    Ok(vec![
        ("tightest_curve_mm", Value::mm_list([nut.tightest_curve(od)])),
        ("across_corners_mm", Value::mm_list([nut.across_corners()])),
    ])
}

fn tape(input: &accept::Tape) -> Result<Vec<(&'static str, Value)>, Error> {
    let laid = Laid::from_name(&input.laid)?;
    let mut tape =
        TapeLength::new(read_length(&input.measured)?, input.bends, laid, read_length(&input.od)?)?;
    if let Some(total) = &input.total_angle {
        tape = tape.with_total_angle(read_angle(total)?)?;
    }
    if let Some(radius) = &input.radius {
        tape = tape.with_radius(read_length(radius)?)?;
    }
    if let Some([a, b]) = &input.flares {
        tape = tape.with_flares(Flare::from_name(a)?, Flare::from_name(b)?);
    }
    let cut = tape.cut(None, ratio(input.chance))?;
    Ok(vec![
        ("length_mm", Value::mm(cut.length())),
        ("rounded_mm", Value::mm(cut.rounded())),
        ("sigma_mm", Value::mm(cut.sigma())),
        ("floor_acts", Value::word(cut.floor_acts().to_string())),
    ])
}

fn clips(input: &accept::Clips) -> Result<Vec<(&'static str, Value)>, Error> {
    let (spacing, from_end) = (read_length(&input.spacing)?, read_length(&input.from_end)?);
    let rule = ClipRule::new(spacing, from_end, Source::common_practice())?;
    let stations = rule.clips(&made(&input.path)?).clips.into_iter().map(|clip| Some(clip.station));
    Ok(vec![("stations_mm", Value::mm_list(stations))])
}

fn turn_of(input: &accept::Turn) -> Result<Vec<(&'static str, Value)>, Error> {
    let rotation = bounds::ROTATION.angle(read_rotation(&input.rotation)?)?;
    let bend = bounds::ANGLE.angle(read_angle(&input.bend)?)?;
    Ok(vec![
        ("words", Value::word(turn::words(rotation).unwrap_or("none"))),
        ("clock", Value::word(turn::clock(rotation))),
        ("inclinometer_deg", Value::deg(turn::inclinometer(bend, rotation, true))),
    ])
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
        ("volume_ml", Value::number(to_ml(tube.bore_volume(length)?))),
        ("mass_g", Value::word(or_unknown(tube.mass(length)?.map(|mass| to_g(mass.value))))),
    ])
}

fn springback(input: &accept::Springback) -> Result<Vec<(&'static str, Value)>, Error> {
    let springback = Springback::from_trials(&trials(&input.trials)?)?;
    Ok(vec![
        ("setting_deg", Value::deg(springback.setting(read_angle(&input.wanted)?)?)),
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

fn made(input: &accept::Path) -> Result<Path, Error> {
    let rotations = input.rotations.iter().map(|text| read_rotation(text)).collect::<Result<Vec<_>, _>>()?;
    let mut bends = Bend::list(&angles(&input.bends)?, &rotations, &lengths(&input.radius)?)?;
    for (bend, way) in bends.iter_mut().zip(&input.making) {
        *bend = bend.made(Making::from_name(way)?);
    }
    match (&input.legs, &input.straights, &input.outer_legs) {
        (Some(legs), _, _) => Path::from_legs(&lengths(legs)?, &bends),
        (_, Some(straights), _) => Path::from_straights(&lengths(straights)?, &bends),
        (_, _, outer) => {
            let od = read_length(input.od.as_deref().unwrap_or_default())?;
            Path::from_outer_legs(&lengths(outer.as_deref().unwrap_or_default())?, &bends, od)
        }
    }
}

fn path(input: &accept::Path) -> Result<Vec<(&'static str, Value)>, Error> {
    let path = made(input)?;
    let turns = |path: &Path| {
        let rotations: Vec<Angle> = path.bends().iter().skip(1).map(Bend::rotation).collect();
        Value::deg_list(rotations.into_iter().map(Some))
    };
    let mut values = shape(&path);
    values.push(("end_point_mm", Value::mm_list(path.end_point().map(Some))));
    values.push(("reversed_rotations_deg", turns(&path.reversed())));
    values.push(("mirrored_rotations_deg", turns(&path.mirrored())));
    if let (Ok(legs), Ok(gain)) = (path.legs(), path.total_gain()) {
        values.push(("legs_mm", Value::mm_list(legs.into_iter().map(Some))));
        values.push(("total_gain_mm", Value::mm(gain)));
    }
    if let Some(od) = &input.od {
        let extent = path.extent(bounds::OD.length(read_length(od)?)?);
        values.push(("extent_low_mm", Value::mm_list(extent.low.map(Some))));
        values.push(("extent_high_mm", Value::mm_list(extent.high.map(Some))));
    }
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
    let [a, b] = [Side::A, Side::B].map(|side| plan.end(side).minima().clone());
    let checks = plan.tape_checks();
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
        ("loading", Value::words(plan.loading().into_iter().map(|part| part.what))),
        ("forgiving", Value::word(plan.is_forgiving().to_string())),
        ("from_last_mm", Value::mm_list(bends.iter().map(|b| b.from_last_bend))),
        ("tape_checks", Value::words(checks.iter().map(|c| format!("{}:{}>{}", c.bend, c.from, c.to)))),
        ("tape_changes_mm", Value::mm_list(checks.iter().map(|c| Some(c.change)))),
        ("hand", Value::word(plan.hand_check().map_or("none", |check| if check.up { "up" } else { "down" }))),
    ]
}
