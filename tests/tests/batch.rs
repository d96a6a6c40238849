//! A batch of lines: each row is what the single call gives, and a bad row stops no other.

#[path = "../common/mod.rs"]
mod common;

use common::{Outcome, sample};
use linewright::size::SizedLine;
use linewright::units::to_mm;
use linewright::{LineDraft, Plan, PlanOptions, Problem, size_lines};

const ROWS: u32 = 1200;
/// Rows in which something was typed wrongly, from 1, and what.
const BAD: [(usize, &str, &str, &str); 14] = [
    (1, "od", "316", "UNIT_MISSING@field od"),
    (17, "od", "16-Mar", "DATE_IN_SIZE@field od"),
    (99, "od", "45732", "DATE_IN_SIZE@field od"),
    (100, "wall", "", "FIELD_MISSING@field wall"),
    (200, "legs", "1,500 mm; 28 in; 9 1/4 in; 76 mm", "NUMBER_AMBIGUOUS@field legs, item 1"),
    (301, "legs", "55 mm; 28 in", "COUNT_MISMATCH@field legs"),
    (402, "bends", "30; 60 deg; 90 deg", "UNIT_MISSING@field bends, item 1"),
    (503, "bends", "30 deg; 540 deg; 90 deg", "NO_CORNER@bend 2"),
    (604, "material", "copper", "UNKNOWN_NAME@field material"),
    (705, "a_flare", "single-45", "SINGLE_45_REFUSED@field a_flare"),
    (806, "b_nut_bore", "nan", "NOT_A_NUMBER@field b_nut_bore"),
    (907, "rotations", "90 mm; 0 deg", "WRONG_KIND@field rotations, item 1"),
    (1008, "straights", "55 mm", "FIELDS_CONFLICT@field straights"),
    (1200, "radius", "14.3 bananas", "UNREADABLE@field radius, item 1"),
];

/// Rows that differ in length, angle, rotation and ends, so that two exchanged rows would show.
fn drafts() -> Outcome<Vec<LineDraft>> {
    let mut drafts = Vec::new();
    for row in 1..=ROWS {
        let legs = format!("{} mm; {}.5 mm; 9 1/4 in; 76 mm", 45 + row % 40, 200 + row);
        let bends = format!("{} deg; 60 deg; {}.25 deg", 5 + row % 110, 20 + row % 70);
        let seat = if row % 7 == 0 { "unknown" } else { "inverted-45" };
        drafts.push(sample::draft(&[
            ("name", &format!("V{row}")),
            ("legs", &legs),
            ("bends", &bends),
            ("a_seat", seat),
        ])?);
    }
    for (row, field, typed, _) in BAD {
        drafts[row - 1].set(field, typed)?;
    }
    Ok(drafts)
}

fn bits(plan: &Plan) -> Vec<u64> {
    let ends = [linewright::Side::A, linewright::Side::B].map(|side| plan.end(side));
    let lengths = plan
        .bends()
        .iter()
        .flat_map(|b| [b.mark, b.from_raw_end, Some(b.from_flare_face)])
        .chain(ends.iter().flat_map(|end| end.minima().iter().flat_map(|m| [m.need, m.shortfall])))
        .chain([Some(plan.finished_length()), plan.cut().map(|cut| cut.length())]);
    let settings = plan.bends().iter().map(|b| b.setting.map(linewright::units::to_deg));
    lengths.map(|length| length.map(to_mm)).chain(settings).map(|n| n.map_or(0, f64::to_bits)).collect()
}

#[test]
fn fourteen_bad_rows_stop_no_other() -> Outcome<()> {
    let sized = size_lines(&drafts()?, &sample::bench()?, &PlanOptions::default());
    assert_eq!(sized.len(), 1200);
    assert!(
        sized.iter().enumerate().all(|(i, line)| line.row == i + 1 && line.name == format!("V{}", i + 1))
    );
    assert_eq!(sized.iter().filter(|line| line.plan.is_some()).count(), 1186);
    let refused: Vec<&SizedLine> = sized.iter().filter(|line| line.plan.is_none()).collect();
    assert_eq!(refused.len(), 14);
    for (line, (row, _, typed, id)) in refused.iter().zip(BAD) {
        let ids: Vec<String> = line.problems.iter().map(Problem::id).collect();
        assert_eq!((line.row, ids), (row, vec![id.to_owned()]), "{typed}");
    }
    Ok(())
}

#[test]
fn a_row_is_what_the_single_call_gives_in_any_order() -> Outcome<()> {
    let (drafts, bench, options) =
        (drafts()?, sample::bench()?, PlanOptions::default().with_reserve(linewright::units::mm(15.0))?);
    let sized = size_lines(&drafts, &bench, &options);
    // 7 has no factor in common with 1200, so this visits every row once, far from its neighbors.
    let order: Vec<usize> = (0..drafts.len()).map(|i| (i * 7) % drafts.len()).collect();
    let shuffled: Vec<LineDraft> = order.iter().map(|i| drafts[*i].clone()).collect();
    let other = size_lines(&shuffled, &bench, &options);
    for (place, row) in order.into_iter().enumerate() {
        assert_eq!(other[place].row, place + 1);
        assert_eq!(other[place].name, sized[row].name);
        assert_eq!(other[place].plan, sized[row].plan);
        assert_eq!(other[place].problems, sized[row].problems);
        let checked = drafts[row].check();
        let alone = checked.line.map(|line| Plan::new(&line, &bench, &options));
        assert_eq!(alone, sized[row].plan);
        let problems = alone.as_ref().map_or(checked.problems, |plan| plan.problems().to_vec());
        assert_eq!(problems, sized[row].problems);
        if let (Some(alone), Some(batch)) = (&alone, &other[place].plan) {
            assert_eq!(bits(alone), bits(batch));
        }
    }
    Ok(())
}

#[test]
fn no_rows_give_no_rows() -> Outcome<()> {
    assert!(size_lines(&[], &sample::bench()?, &PlanOptions::default()).is_empty());
    Ok(())
}
