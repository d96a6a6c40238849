//! Runs a case about flares and hose ends in Rust.

use super::accept_flare::{self, AcceptFlare};
use super::answer::{UNKNOWN, Value};
use linewright::flare::{FlareForm, HoseEnd, Stretch, flare_size, washers};
use linewright::units::read_length;
use linewright::{Error, Flare, Thread, bounds};

/// The answer to a case.
pub fn answer(accept: &AcceptFlare) -> Result<Vec<(&'static str, Value)>, Error> {
    match accept {
        AcceptFlare::Form(input) => form(input),
        AcceptFlare::Size(input) => {
            let found =
                flare_size(Flare::from_name(&input.flare)?, bounds::OD.length(read_length(&input.od)?)?);
            let diameters = found.map(|size| Value::mm_list([size.least, size.most].map(Some)));
            Ok(vec![("diameter_mm", diameters.unwrap_or_else(|| Value::word(UNKNOWN)))])
        }
        AcceptFlare::HoseEnd(input) => {
            let end = HoseEnd::from_name(&input.name)?;
            let problem = end.check(input.washers);
            Ok(vec![
                ("sealed_by", Value::word(end.sealed_by().name())),
                ("needed", Value::word(end.washers().to_string())),
                ("problem", Value::word(problem.map_or("none", |problem| problem.code.name()))),
            ])
        }
        AcceptFlare::Washers(input) => {
            let read = |[end, thread]: &[String; 2]| Ok((HoseEnd::from_name(end)?, Thread::read(thread)?));
            let list = washers(&input.ends.iter().map(read).collect::<Result<Vec<_>, Error>>()?)?;
            let row =
                |row: linewright::flare::Washers| format!("{} {}+{}", row.thread, row.needed, row.spares);
            Ok(vec![("list", Value::words(list.into_iter().map(row)))])
        }
    }
}

fn form(input: &accept_flare::Form) -> Result<Vec<(&'static str, Value)>, Error> {
    let flare = Flare::from_name(&input.flare)?;
    let (od, wall) = (read_length(&input.od)?, read_length(&input.wall)?);
    let form = FlareForm::new(flare, od, wall, read_length(&input.diameter)?)?;
    Ok(vec![
        ("stick_out_mm", Value::mm_list(Stretch::ALL.map(|stretch| Some(form.stick_out(stretch))))),
        ("height_mm", Value::mm(form.height())),
        ("net_mm", Value::mm_list(Stretch::ALL.map(|stretch| Some(form.net_shortening(stretch))))),
    ])
}
