//! The flat form of cases that the C program reads, and of its answers.
//!
//! ```text
//! case 0                     case 0
//! operation bend             arc_mm<TAB>22.46…
//! radius<TAB>14.3 mm         tangent_length_mm<TAB>14.3
//! angle<TAB>90 deg           gain_mm<TAB>6.13…
//! end                        end
//! ```
//! Lists are joined by semicolons. An error is the one line `error<TAB>CODE`.

use super::accept::{self, Accept};
use super::case::Case;
use super::run::run;

/// An answer as it was printed: its lines, or the name of the error's code.
pub type FlatAnswer = Result<Vec<(String, String)>, String>;

/// What Rust answers to a case.
pub fn answer(case: &Case) -> FlatAnswer {
    match run(&case.accept) {
        Ok(values) => Ok(values.into_iter().map(|(key, value)| (key.to_owned(), value.text())).collect()),
        Err(code) => Err(code.name().to_owned()),
    }
}

/// All cases as one text, numbered from 0 in the order given.
pub fn write(cases: &[Case]) -> Result<String, String> {
    let mut out = String::new();
    for (number, case) in cases.iter().enumerate() {
        out.push_str(&format!("case {number}\noperation {}\n", case.operation));
        for (key, value) in lines(&case.accept) {
            if value.contains(['\n', '\r', '\t', '\0']) {
                return Err(format!("{}: {key} cannot be written on one line", case.name()));
            }
            out.push_str(&format!("{key}\t{value}\n"));
        }
        out.push_str("end\n");
    }
    Ok(out)
}

fn lines(accept: &Accept) -> Vec<(String, String)> {
    let mut lines = Vec::new();
    let mut put = |key: &str, value: &str| lines.push((key.to_owned(), value.to_owned()));
    match accept {
        Accept::ReadLength(input)
        | Accept::ReadAngle(input)
        | Accept::ReadPressure(input)
        | Accept::ReadRotation(input)
        | Accept::Tolerance(input)
        | Accept::Thread(input) => put("text", &input.text),
        Accept::Bend(input) => {
            put("radius", &input.radius);
            put("angle", &input.angle);
        }
        Accept::Tube(input) => {
            put("od", &input.od);
            put("wall", &input.wall);
            put("material", &input.material);
            put("length", &input.length);
        }
        Accept::Springback(input) => {
            put("trials", &trials(&input.trials));
            put("wanted", &input.wanted);
        }
        Accept::Path(input) => path(input, &mut put),
        Accept::Place(input) => {
            path(&input.path, &mut put);
            put("station", &input.station);
        }
        Accept::Clips(input) => {
            path(&input.path, &mut put);
            put("spacing", &input.spacing);
            put("from_end", &input.from_end);
        }
        Accept::Nut(input) => {
            put("length", &input.length);
            put("bore", &input.bore);
            put("od", &input.od);
            input.across_flats.iter().for_each(|flats| put("across_flats", flats));
        }
        Accept::Tape(input) => {
            put("measured", &input.measured);
            put("bends", &input.bends.to_string());
            put("laid", &input.laid);
            put("od", &input.od);
            put("chance", &input.chance.to_string());
            input.radius.iter().for_each(|radius| put("radius", radius));
            input.total_angle.iter().for_each(|total| put("total_angle", total));
            if let Some([a, b]) = &input.flares {
                put("flare_a", a);
                put("flare_b", b);
            }
        }
        Accept::ClipsToBuy(input) => {
            put("needed", &input.needed.to_string());
            put("reusable", &input.reusable.to_string());
        }
        Accept::FlareTrial(input) => {
            put("before", &input.before);
            put("after", &input.after);
        }
        Accept::Turn(input) => {
            put("rotation", &input.rotation);
            put("bend", &input.bend);
        }
        Accept::Flare(input) => input.lines(&mut put),
        Accept::SpringbackFigures(input) => input.lines(&mut put),
        Accept::Wall(input) => input.lines(&mut put),
        Accept::Filled(input) => input.lines(&mut put),
        Accept::Vertices(input) => {
            let points: Vec<String> = input.points.iter().map(|point| point.join("|")).collect();
            put("points", &points.join(";"));
            put("radius", &input.radius.join(";"));
        }
        Accept::Plan(input) => plan(input, &mut put),
        Accept::Threads(threads) => threads.lines().iter().for_each(|(key, value)| put(key, value)),
    }
    lines
}

fn path(input: &accept::Path, put: &mut impl FnMut(&str, &str)) {
    let ways = [("legs", &input.legs), ("straights", &input.straights), ("outer_legs", &input.outer_legs)];
    for (key, list) in ways {
        list.iter().for_each(|list| put(key, &list.join(";")));
    }
    put("bends", &input.bends.join(";"));
    put("rotations", &input.rotations.join(";"));
    put("radius", &input.radius.join(";"));
    put("making", &input.making.join(";"));
    input.od.iter().for_each(|od| put("od", od));
}

fn plan(input: &accept::Plan, put: &mut impl FnMut(&str, &str)) {
    for (field, typed) in &input.line {
        put(&format!("line.{field}"), typed);
    }
    let bench = &input.tools;
    put("bench.former", &bench.former);
    put("bench.grip", &bench.grip);
    if !bench.trials.is_empty() {
        put("bench.trials", &trials(&bench.trials));
    }
    for (key, value) in [("bench.clearance", &bench.clearance), ("bench.back_off", &bench.back_off)] {
        value.iter().for_each(|value| put(key, value));
    }
    for tool in &bench.flare_tools {
        let [net, spare] =
            [&tool.net_shortening, &tool.cut_spare].map(|value| value.as_deref().unwrap_or(""));
        put("bench.tool", &[&tool.flare, &tool.clamp, &tool.projection, net, spare].join("|"));
    }
    if let Some(end) = input.trim_end {
        put("option.trim_end", &format!("{end:?}"));
    }
    input.reserve.iter().for_each(|reserve| put("option.reserve", reserve));
    for accepted in &input.accepted {
        put("option.accept", &accepted.join("|"));
    }
}

fn trials(trials: &[[String; 2]]) -> String {
    trials.iter().map(|trial| trial.join(">")).collect::<Vec<_>>().join(";")
}

/// The answers in a program's output, which must be those to cases 0, 1, 2 … and nothing else.
pub fn read(output: &str) -> Result<Vec<FlatAnswer>, String> {
    let mut answers = Vec::new();
    let mut lines = output.lines();
    while let Some(line) = lines.next() {
        if line != format!("case {}", answers.len()) {
            return Err(format!("expected case {}, got {line}", answers.len()));
        }
        let mut values = Vec::new();
        loop {
            let line = lines.next().ok_or_else(|| format!("case {} has no end", answers.len()))?;
            if line == "end" {
                break;
            }
            let (key, value) = line.split_once('\t').ok_or_else(|| format!("no tab in {line}"))?;
            values.push((key.to_owned(), value.to_owned()));
        }
        let error = values.iter().find(|(key, _)| key == "error").map(|(_, code)| code.clone());
        answers.push(error.map_or(Ok(values), Err));
    }
    Ok(answers)
}
