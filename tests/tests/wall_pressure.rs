//! The wall after a bend and the ideal cylinder under pressure: row by row against figures computed apart and figures that
//! were published, and in their limits.

#[path = "../common/mod.rs"]
mod common;

use common::{Outcome, here, source};
use linewright::bend::pressure::{BendFactors, Cylinder, Strength, Theory, ovality_amplification};
use linewright::bend::wall::{
    BentWall, FlattenedSection, Kinematics, Place, Thinning, radius_rules, wall_reserves,
};
use linewright::source::Checked;
use linewright::units::{inch, mm, mpa, psi, ratio, to_bar, to_mm, to_mm2, to_mpa};
use linewright::{Code, Material, Tube};
use std::collections::BTreeMap;
use std::f64::consts::PI;

/// A row: kind, up to seven inputs, what is asked, the published and the computed figure as printed, and how it is printed.
struct Row {
    input: Vec<f64>,
    quantity: String,
    published: Option<f64>,
    computed: Option<f64>,
    decimals: usize,
    how: String,
}

fn rows(kind: &str) -> Outcome<Vec<Row>> {
    let text = std::fs::read_to_string(here("tables/bending/wall_pressure.csv"))?;
    let mut rows = Vec::new();
    for line in text.lines().filter(|line| !line.starts_with('#')).skip(1) {
        let cells: Vec<&str> = line.split(',').collect();
        if cells[0] != kind {
            continue;
        }
        let input = cells[1..8].iter().filter(|cell| !cell.is_empty()).map(|cell| cell.parse());
        rows.push(Row {
            input: input.collect::<Result<_, _>>()?,
            quantity: cells[8].to_owned(),
            published: if cells[9].is_empty() { None } else { Some(cells[9].parse()?) },
            computed: if cells[10].is_empty() { None } else { Some(cells[10].parse()?) },
            decimals: cells[10].split('.').nth(1).map_or(0, str::len),
            how: cells[11].to_owned(),
        });
    }
    Ok(rows)
}

impl Row {
    /// Whether a figure is the computed one, to the digits that it is printed with.
    fn is_computed(&self, got: f64) -> bool {
        let Some(want) = self.computed else { return false };
        let half = 0.5 / 10_f64.powi(i32::try_from(self.decimals).unwrap_or(0));
        (got - want).abs() <= half * 1.000_001
    }
}

fn tube(od: f64, wall: f64) -> Result<Tube, linewright::Error> {
    Tube::new(mm(od), mm(wall), Material::LowCarbonSteel)
}

fn whole(strength_mpa: f64) -> Result<Strength, linewright::Error> {
    Strength::new(mpa(strength_mpa), ratio(1.0), "table of this test")
}

/// Pipes of the sheets are wider than tube is here; the formulas hold in any scale, so theirs is divided by this.
const SCALE: f64 = 20.0;

#[test]
fn three_public_sheets_after_b31_3() -> Outcome<()> {
    let rows = rows("b31.3")?;
    assert_eq!(rows.len(), 13);
    for row in &rows {
        let [d, r, p, s, w, y, allowance] = row.input[..] else { return Err("seven inputs".into()) };
        let bend = BendFactors::new(mm(d / SCALE), mm(r / SCALE))?;
        let wall = |place, strength: f64| -> Outcome<f64> {
            Ok(to_mm(bend.ideal_wall(place, mpa(p), &whole(strength)?, ratio(y))?) * SCALE + allowance)
        };
        let got = match row.quantity.as_str() {
            "I_in" => bend.shell(Place::Intrados).value,
            "I_ex" => bend.shell(Place::Extrados).value,
            "t_in" => wall(Place::Intrados, s * w)?,
            "t_ex" => wall(Place::Extrados, s * w)?,
            // This sheet takes no weld factor for its straight.
            _ => wall(Place::Side, s)?,
        };
        assert!(row.is_computed(got), "{} of {:?}: {got}", row.quantity, row.input);
        let published = row.published.ok_or("published")?;
        let printed = match row.how.as_str() {
            "two" => (got - published).abs() <= 0.005,
            "three" => (got - published).abs() <= 0.0005,
            // The first sheet goes on with its factor as printed, 1.06, and that gives its 10.14 instead of 10.15.
            "factor" => {
                let t = p * d / (2.0 * (s * w / 1.06 + p * y));
                (t - published).abs() <= 0.005 && (got - published).abs() > 0.005
            }
            // The third sheet rounds the walls of its bend up: 1.7222 to 1.723, 1.4464 to 1.447.
            "up" => ((got * 1000.0).ceil() / 1000.0 - published).abs() < 1e-9,
            _ => false,
        };
        assert!(printed, "{} of {:?}: {got} printed as {published}", row.quantity, row.input);
    }
    Ok(())
}

/// Factors of the fourth sheet, printed to two decimals. Its thicknesses are not here: they could not be reproduced.
#[test]
fn factors_of_a_fourth_sheet() -> Outcome<()> {
    let rows = rows("b31.1")?;
    assert_eq!(rows.len(), 12);
    for row in &rows {
        let bend = BendFactors::new(mm(row.input[0] / SCALE), mm(row.input[1] / SCALE))?;
        let place = if row.quantity == "I_in" { Place::Intrados } else { Place::Extrados };
        let got = bend.shell(place).value;
        assert!(row.is_computed(got), "{:?}: {got}", row.input);
        assert!((got - row.published.ok_or("published")?).abs() <= 0.005 + 1e-12, "{:?}: {got}", row.input);
    }
    Ok(())
}

/// All fifteen entries with a wall of 0.028 or 0.035 in: the table is Lame's formula printed to 50 psi.
#[test]
fn a_published_table_is_lames_formula() -> Outcome<()> {
    let rows = rows("lame")?;
    assert_eq!(rows.len(), 15);
    let mut widest = 0.0_f64;
    for row in &rows {
        let tube = Tube::new(inch(row.input[0]), inch(row.input[1]), Material::LowCarbonSteel)?;
        let strength =
            Strength::new(psi(4.0 * row.input[2]), ratio(4.0), "table of this test: 50,000 psi, 4:1")?;
        let ideal = Cylinder::new(&tube).ideal_cylinder_pressure(Theory::Lame, &strength)?;
        let got = to_mpa(ideal.pressure()) / to_mpa(psi(1.0));
        assert!(row.is_computed(got), "{:?}: {got}", row.input);
        let off = (got - row.published.ok_or("published")?).abs();
        widest = widest.max(off);
        assert!(off <= 25.0, "{:?}: {got}", row.input);
    }
    println!("fifteen entries within {widest:.1} psi, printed to 50");
    Ok(())
}

#[test]
fn five_theories_row_by_row() -> Outcome<()> {
    let rows = rows("ideal")?;
    assert_eq!(rows.len(), 40);
    for row in &rows {
        let theory = match row.quantity.as_str() {
            "von" => Theory::VonMises,
            name => *Theory::ALL.iter().find(|theory| theory.name() == name).ok_or("a theory")?,
        };
        let cylinder = Cylinder::new(&tube(row.input[0], row.input[1])?);
        let ideal = cylinder.ideal_cylinder_pressure(theory, &whole(row.input[2])?)?;
        assert!(row.is_computed(to_mpa(ideal.pressure())), "{} {:?}: {ideal}", row.quantity, row.input);
        // Stress at that pressure is the strength again.
        let back = to_mpa(cylinder.stress(theory, ideal.pressure())?);
        assert!((back / row.input[2] - 1.0).abs() < 1e-14, "{back}");
    }
    Ok(())
}

/// The match with the one legible row is close, and may be chance: the same table's last row, 550 bar for a wall of 1.00, is
/// met by no formula with the diameter of 10 mm that is remembered for it.
#[test]
fn the_legible_row_of_din_74234() -> Outcome<()> {
    let rows = rows("burst")?;
    let [row] = &rows[..] else { return Err("one row".into()) };
    let cylinder = Cylinder::new(&tube(row.input[0], row.input[1])?);
    let got = to_bar(cylinder.ideal_cylinder_pressure(Theory::Tresca, &whole(row.input[2])?)?.pressure());
    assert!(row.is_computed(got), "{got}");
    assert!((got - row.published.ok_or("published")?).abs() < 1.0, "{got}");
    let ten = Cylinder::new(&tube(10.0, 1.0)?);
    for theory in Theory::ALL {
        let got = to_bar(ten.ideal_cylinder_pressure(theory, &whole(row.input[2])?)?.pressure());
        assert!(got > 1.05 * 550.0, "{}: {got}", theory.name());
    }
    Ok(())
}

#[test]
fn thinning_row_by_row() -> Outcome<()> {
    let rows = rows("thinning")?;
    assert_eq!(rows.len(), 30);
    for row in &rows {
        let od = 4.75;
        let radius = mm(row.input[0] * od);
        let bent = BentWall::new(&tube(od, 0.75)?, radius)?;
        let bend = BendFactors::new(mm(od), radius)?;
        let share = |place, thinning| to_mm(bent.wall(place, thinning)) / 0.75;
        let got = match row.quantity.as_str() {
            "ex_plane" => share(Place::Extrados, Thinning::PlaneStrain),
            "ex_uniaxial" => share(Place::Extrados, Thinning::Uniaxial),
            "in_plane" => share(Place::Intrados, Thinning::PlaneStrain),
            "ex_stress" => bend.after_bending(Place::Extrados, Thinning::PlaneStrain).value,
            _ => bend.after_bending(Place::Intrados, Thinning::PlaneStrain).value,
        };
        assert!(row.is_computed(got), "{} {:?}: {got}", row.quantity, row.input);
    }
    // The published spare walls lie near the stretch of the outermost fiber, at three diameters well above it.
    let published = self::rows("reserve")?;
    let ours = wall_reserves();
    assert_eq!(published.len(), ours.len());
    for (row, reserve) in published.iter().zip(&ours) {
        let got = (reserve.radius_in_diameters.value, reserve.multiple.value);
        assert_eq!(Some(got), row.published.map(|multiple| (row.input[0], multiple)));
        assert_eq!(reserve.source.checked, Checked::Seen);
    }
    Ok(())
}

#[test]
fn flattened_sections_row_by_row() -> Outcome<()> {
    let rows = rows("flat")?;
    assert_eq!(rows.len(), 16);
    for row in &rows {
        let tube = tube(row.input[0], row.input[1])?;
        let share = ratio(1.0 - row.input[2]);
        let section = FlattenedSection::from_flattening(&tube, share, Kinematics::PerimeterKept)?;
        let got = match row.quantity.as_str() {
            "largest" => to_mm(section.largest()),
            "smallest" => to_mm(section.smallest()),
            "ovality" => section.ovality().value,
            _ => section.bore_share().value,
        };
        // The table prints four decimals and drops a zero at the end.
        let want = row.computed.ok_or("computed")?;
        assert!((got - want).abs() <= 0.000_05 + 1e-9, "{} {:?}: {got}", row.quantity, row.input);
        if row.quantity == "bore" {
            // A wall of constant thickness along the ellipse: area less half the perimeter's strip.
            let (a, b) = (
                (to_mm(section.largest()) - row.input[1]) / 2.0,
                (to_mm(section.smallest()) - row.input[1]) / 2.0,
            );
            let (round, t) = (PI * (row.input[0] - row.input[1]), row.input[1]);
            let exact = PI * a * b - round * t / 2.0 + PI * t * t / 4.0;
            let less = 1.0 - exact / to_mm2(section.bore_area());
            assert!((-1e-12..0.013).contains(&less), "{:?}: {less}", row.input);
        }
        // The other measure of the same section leads back to it.
        let back = FlattenedSection::from_ovality(&tube, section.ovality(), Kinematics::PerimeterKept)?;
        assert!((back.flattening().value - share.value).abs() < 1e-12, "{:?}", row.input);
        let held = FlattenedSection::from_flattening(&tube, share, Kinematics::SidesHeld)?;
        assert!((held.ovality().value - row.input[2]).abs() < 1e-12);
        assert!(held.bore_share().value < section.bore_share().value);
    }
    Ok(())
}

/// The perimeter of the flattened middle of the wall, summed over many chords, is that of the round one.
#[test]
fn the_perimeter_is_kept() -> Outcome<()> {
    for share in [0.99, 0.9, 0.75, 0.6, 0.4] {
        let section =
            FlattenedSection::from_flattening(&tube(6.0, 0.75)?, ratio(share), Kinematics::PerimeterKept)?;
        let (a, b) = ((to_mm(section.largest()) - 0.75) / 2.0, (to_mm(section.smallest()) - 0.75) / 2.0);
        let steps = 20_000_u32;
        let speed = |i: u32| {
            let (s, c) = (2.0 * PI * f64::from(i) / f64::from(steps)).sin_cos();
            (a * a * s * s + b * b * c * c).sqrt()
        };
        let around = (0..steps).map(speed).sum::<f64>() * 2.0 * PI / f64::from(steps);
        assert!((around / (PI * 5.25) - 1.0).abs() < 1e-13, "{share}: {around}");
    }
    Ok(())
}

#[test]
fn an_oval_ring_row_by_row() -> Outcome<()> {
    let rows = rows("oval")?;
    let [row] = &rows[..] else { return Err("one row".into()) };
    let [middle, t, u, p, e, nu] = row.input[..] else { return Err("six inputs".into()) };
    let got = ovality_amplification(&tube(middle + t, t)?, mm(u * middle), mpa(p), mpa(e), ratio(nu))?.value;
    // Eleven digits of the sum of diameter and wall are lost in tenths of the last place.
    assert!((got - row.computed.ok_or("computed")?).abs() < 1e-9, "{got}");
    Ok(())
}

/// Zero pull along a perfectly plastic thin tube whose wall thins in plane strain: the neutral axis found by summing the
/// stress around the section is at r^2 / R inside the center line.
#[test]
fn the_plastic_neutral_axis_balances() -> Outcome<()> {
    for (od, wall, radius) in [(4.7625, 0.7112, 14.2875), (6.0, 0.75, 12.0), (8.0, 1.0, 40.0)] {
        let middle = (od - wall) / 2.0;
        let pull = |neutral: f64| {
            let steps = 200_000_u32;
            (0..steps)
                .map(|i| {
                    let fiber = radius + middle * (PI * (f64::from(i) + 0.5) / f64::from(steps)).cos();
                    (fiber - neutral).signum() / fiber
                })
                .sum::<f64>()
        };
        let (mut low, mut high) = (radius - middle, radius + middle);
        for _ in 0..60 {
            let neutral = (low + high) / 2.0;
            if pull(neutral) > 0.0 { low = neutral } else { high = neutral }
        }
        let bent = BentWall::new(&tube(od, wall)?, mm(radius))?.with_plastic_neutral_axis();
        assert!((to_mm(bent.neutral_shift()) - (radius - low)).abs() < 1e-4, "{od}: {}", radius - low);
        assert!(bent.extrados().least < BentWall::new(&tube(od, wall)?, mm(radius))?.extrados().least);
    }
    Ok(())
}

#[test]
fn limits_are_those_of_the_textbook() -> Outcome<()> {
    let at = |theory, od: f64, wall: f64| -> Outcome<f64> {
        let ideal = Cylinder::new(&tube(od, wall)?).ideal_cylinder_pressure(theory, &whole(290.0)?)?;
        Ok(to_mpa(ideal.pressure()))
    };
    // Thin wall: all but von Mises become Barlow, which stands 2 / sqrt(3) above.
    let barlow = at(Theory::Barlow, 60.0, 0.1)?;
    for theory in [Theory::Boardman, Theory::Lame, Theory::Tresca] {
        assert!((at(theory, 60.0, 0.1)? / barlow - 1.0).abs() < 0.003, "{}", theory.name());
    }
    assert!((at(Theory::VonMises, 60.0, 0.1)? / barlow - 2.0 / 3.0_f64.sqrt()).abs() < 0.003);
    // A nearly straight bend is a straight one; a round ring has no peak.
    let straight = BendFactors::new(mm(4.75), mm(1_000_000.0))?;
    for place in Place::ALL {
        assert!((straight.shell(place).value - 1.0).abs() < 2e-6);
        for thinning in Thinning::ALL {
            assert!((straight.after_bending(place, thinning).value - 1.0).abs() < 4e-6);
        }
    }
    let round = ovality_amplification(&tube(4.75, 0.75)?, mm(0.0), mpa(15.0), mpa(207_000.0), ratio(0.29))?;
    assert_eq!(round.value.to_bits(), 1.0_f64.to_bits());
    for kinematics in Kinematics::ALL {
        let section = FlattenedSection::from_ovality(&tube(4.75, 0.75)?, ratio(0.0), kinematics)?;
        assert_eq!(section.bore_share().value.to_bits(), 1.0_f64.to_bits(), "{}", kinematics.name());
    }
    let thin = BentWall::new(&tube(25.0, 0.5)?, mm(37.5))?;
    // The strain t / (2 D) at n = 9 / 64, where (2 / 3) sqrt(n) is a quarter and D that of the middle of the wall.
    let at = thin.free_wrinkling(ratio(9.0 / 64.0))?.critical().value;
    assert!((at - 0.5 / (2.0 * 24.5)).abs() < 1e-12);
    // At the critical strain the power law's stress is the buckling stress of its root of secant times tangent modulus.
    let (n, e) = (0.2, thin.free_wrinkling(ratio(0.2))?.critical().value);
    let stress = 600.0 * e.powf(n);
    let buckling = (stress / e * (n * stress / e)).sqrt() * (0.5 / 12.25) / (3.0 * (1.0 - 0.25_f64)).sqrt();
    assert!((stress / buckling - 1.0).abs() < 1e-12);
    Ok(())
}

#[test]
fn what_the_caller_must_give_is_asked_for() -> Outcome<()> {
    let code = |result: Result<Strength, linewright::Error>| result.err().map(|error| error.code());
    assert_eq!(code(Strength::new(mpa(290.0), ratio(4.0), "  ")), Some(Code::FieldMissing));
    assert_eq!(code(Strength::new(mpa(290.0), ratio(0.5), "x")), Some(Code::OutOfRange));
    assert_eq!(code(Strength::new(mpa(f64::NAN), ratio(4.0), "x")), Some(Code::NotANumber));
    let cylinder = Cylinder::new(&tube(4.75, 0.75)?);
    let code = |result: Result<Cylinder, linewright::Error>| result.err().map(|error| error.code());
    assert_eq!(code(cylinder.with_tolerances(mm(0.0), mm(0.7))), Some(Code::OutOfRange));
    assert_eq!(code(cylinder.with_tolerances(mm(f64::INFINITY), mm(0.0))), Some(Code::NotANumber));
    assert_eq!(code(cylinder.bent(mm(2.3))), Some(Code::OutOfRange));
    // Less than one diameter.
    assert_eq!(code(cylinder.bent(mm(2.6))), Some(Code::OutOfRange));
    assert_eq!(code(cylinder.with_neutral_shift(mm(0.1))), Some(Code::FieldMissing));
    let strength = whole(290.0)?;
    let code = |result: Result<_, linewright::Error>| result.err().map(|error| error.code());
    assert_eq!(code(cylinder.margin(Theory::Lame, mpa(0.0), &strength).map(drop)), Some(Code::OutOfRange));
    assert_eq!(code(cylinder.stress(Theory::Lame, mpa(-1.0)).map(drop)), Some(Code::OutOfRange));
    assert_eq!(code(BendFactors::new(mm(4.75), mm(2.0)).map(drop)), Some(Code::OutOfRange));
    let tube = tube(4.75, 0.75)?;
    let flat = |share: f64| FlattenedSection::from_flattening(&tube, ratio(share), Kinematics::PerimeterKept);
    assert_eq!(code(flat(0.3).map(drop)), Some(Code::OutOfRange));
    assert_eq!(code(flat(0.1).map(drop)), Some(Code::OutOfRange));
    assert_eq!(code(flat(f64::NAN).map(drop)), Some(Code::NotANumber));
    // Held at its sides it is shut at 1; bulging it still has a bore there, and none at 1.3.
    let oval = |share: f64, kinematics| FlattenedSection::from_ovality(&tube, ratio(share), kinematics);
    assert_eq!(code(oval(1.0, Kinematics::SidesHeld).map(drop)), Some(Code::OutOfRange));
    assert_eq!(code(oval(1.0, Kinematics::PerimeterKept).map(drop)), None);
    assert_eq!(code(oval(1.3, Kinematics::PerimeterKept).map(drop)), Some(Code::OutOfRange));
    assert_eq!(code(oval(2.5, Kinematics::PerimeterKept).map(drop)), Some(Code::OutOfRange));
    let bent = BentWall::new(&tube, mm(15.0))?;
    assert_eq!(code(bent.with_neutral_shift(mm(2.5)).map(drop)), Some(Code::OutOfRange));
    assert_eq!(code(bent.free_wrinkling(ratio(1.0)).map(drop)), Some(Code::OutOfRange));
    let oval = |apart: f64| {
        ovality_amplification(&tube, mm(apart), mpa(15.0), mpa(207_000.0), ratio(0.29)).map(drop)
    };
    assert_eq!(code(oval(4.75)), Some(Code::OutOfRange));
    assert_eq!(code(radius_rules(mm(0.0)).map(drop)), Some(Code::OutOfRange));
    Ok(())
}

/// A figure that only memory stands behind says so, and the one that was seen is of one truck.
#[test]
fn rules_carry_their_scope() -> Outcome<()> {
    let mut counts: BTreeMap<&str, usize> = BTreeMap::new();
    for od in [4.75, 4.7625, 6.0, 6.35, 9.525, 12.7] {
        for rule in radius_rules(mm(od))? {
            *counts.entry(rule.source.checked.name()).or_default() += 1;
            assert!(!rule.scope.is_empty() && to_mm(rule.least) > od);
            if rule.source.text.starts_with("AC 43.13") {
                assert_eq!(rule.source.checked, Checked::Memory);
            }
        }
    }
    // 4.7625 is within the tolerance of 4.75, so both rows speak of both.
    assert_eq!(counts.get(Checked::Seen.name()), Some(&2));
    Ok(())
}

/// An ideal cylinder's pressure on a bench card would be taken for a rating.
#[test]
fn no_card_and_no_plan_knows_the_pressure() -> Outcome<()> {
    let mut looked = 0;
    for source in source::under(&here("../core/src"))? {
        let inside = source.path.strip_prefix(here("../core/src"))?;
        if inside.starts_with("bend") || inside.ends_with("bend.rs") {
            continue;
        }
        looked += 1;
        for word in ["bend::pressure", "IdealCylinder", "ideal_cylinder_pressure", "Cylinder::new"] {
            assert!(!source.code.contains(word), "{} knows {word}", inside.display());
        }
    }
    assert!(looked > 60, "only {looked} files were looked at");
    let ideal = Cylinder::new(&tube(4.75, 0.75)?).ideal_cylinder_pressure(Theory::Lame, &whole(290.0)?)?;
    for word in ["ideal cylinder", "flares", "joints", "corrosion", "fatigue", "given by the caller"] {
        assert!(ideal.to_string().contains(word), "{ideal}");
    }
    Ok(())
}
