//! The moment integral: against quadrature, against figures computed apart, and in its limits.

use linewright::springback::{Basis, Columns, Hardening, MaterialScatter, Mechanics, Trial, TrialFit};
use linewright::units::{deg, mm, mpa, ratio, to_deg, to_mm, to_n_mm};
use std::error::Error;
use std::f64::consts::PI;
use std::fs;

type Outcome = Result<(), Box<dyn Error>>;

fn rows(name: &str) -> Result<Vec<Vec<String>>, Box<dyn Error>> {
    let text = fs::read_to_string(format!("{}/tables/bending/{name}", env!("CARGO_MANIFEST_DIR")))?;
    let lines = text.lines().filter(|line| !line.starts_with('#')).skip(1);
    Ok(lines.map(|line| line.split(',').map(str::to_owned).collect()).collect())
}

fn tube(row: &[String]) -> Result<Mechanics, Box<dyn Error>> {
    let n = |i: usize| row[i].parse::<f64>();
    let law = match row[2].as_str() {
        "epp" | "plastic" => Hardening::PerfectlyPlastic { yield_strength: mpa(n(4)?) },
        "bil" | "bilinear" => Hardening::Bilinear { yield_strength: mpa(n(4)?), tangent_modulus: mpa(n(5)?) },
        _ => Hardening::PowerLaw { strength_coefficient: mpa(n(4)?), hardening_exponent: ratio(n(5)?) },
    };
    Ok(Mechanics::new(mm(n(0)?), mm(n(1)?), mpa(n(3)?), law)?)
}

#[test]
fn the_moment_is_that_of_quadrature() -> Outcome {
    let rows = rows("moment_reference.csv")?;
    // 240 random ones, and 192 whose core ends a hair from the surface or the bore.
    assert_eq!(rows.len(), 432);
    let (mut moments, mut curvatures) = (0.0_f64, 0.0_f64);
    for row in &rows {
        let n = |i: usize| row[i].parse::<f64>();
        let bent = tube(row)?.bend(mm(n(6)?))?;
        let relative = (to_n_mm(bent.moment()) / n(7)? - 1.0).abs();
        let left = (1.0 - bent.share().value - n(8)?).abs();
        moments = moments.max(relative);
        curvatures = curvatures.max(left);
        assert!(relative <= 1e-10, "{row:?}: {relative:e}");
        assert!(left <= 1e-12, "{row:?}: {left:e}");
    }
    println!("moment within {moments:.1e}, remaining curvature times radius within {curvatures:.1e}");
    Ok(())
}

/// A column gives what the single call gives, and the same bits at any length and place; a row that is no tube spoils no other.
#[test]
fn a_column_has_the_same_bits_at_any_length() -> Outcome {
    let rows: Vec<Vec<String>> =
        rows("moment_reference.csv")?.into_iter().filter(|row| row[2] != "power").collect();
    let column = |i: usize| rows.iter().map(|row| row[i].parse::<f64>()).collect::<Result<Vec<_>, _>>();
    let lengths = |i: usize| column(i).map(|numbers| numbers.into_iter().map(mm).collect::<Vec<_>>());
    let stresses = |i: usize| column(i).map(|numbers| numbers.into_iter().map(mpa).collect::<Vec<_>>());
    let (mut od, wall, radius) = (lengths(0)?, lengths(1)?, lengths(6)?);
    let (modulus, yields, tangent) = (stresses(3)?, stresses(4)?, stresses(5)?);
    let expected = rows
        .iter()
        .map(|row| {
            let bent = tube(row)?.bend(mm(row[6].parse()?))?;
            Ok((1.0 - bent.share().value, row[6].parse::<f64>()?, row[8].parse::<f64>()?))
        })
        .collect::<Result<Vec<_>, Box<dyn Error>>>()?;
    let tubes = |from: usize, to: usize, od: &[linewright::units::Length]| {
        Columns {
            od: &od[from..to],
            wall: &wall[from..to],
            modulus: &modulus[from..to],
            yield_strength: &yields[from..to],
            tangent_modulus: &tangent[from..to],
            radius: &radius[from..to],
        }
        .remaining()
    };
    let all = tubes(0, rows.len(), &od)?;
    for (row, (curvature, (single, radius, left))) in all.iter().zip(&expected).enumerate() {
        assert!((curvature.value * radius - left).abs() <= 1e-12, "row {row}");
        // The single call states shares, so it rounds once more.
        assert!((curvature.value * radius - single).abs() <= 32.0 * f64::EPSILON, "row {row}");
    }
    for length in 1..20 {
        for from in 0..rows.len() - length {
            let part = tubes(from, from + length, &od)?;
            for (a, b) in part.iter().zip(&all[from..]) {
                assert_eq!(a.value.to_bits(), b.value.to_bits(), "{length} rows from {from}");
            }
        }
    }
    od[7] = mm(f64::NAN);
    let spoiled = tubes(0, rows.len(), &od)?;
    assert!(spoiled[7].value.is_nan());
    assert!((0..rows.len()).all(|i| i == 7 || spoiled[i].value.to_bits() == all[i].value.to_bits()));
    let short = Columns {
        od: &od,
        wall: &wall[1..],
        modulus: &modulus,
        yield_strength: &yields,
        tangent_modulus: &tangent,
        radius: &radius,
    };
    assert!(short.remaining().is_err());
    Ok(())
}

/// The first tubes of the benchmark, against quadrature with 30 digits.
#[test]
fn columns_are_those_of_quadrature() -> Outcome {
    let rows = rows("columns_reference.csv")?;
    let column = |i: usize| rows.iter().map(|row| row[i].parse::<f64>()).collect::<Result<Vec<_>, _>>();
    let lengths = |i: usize| column(i).map(|numbers| numbers.into_iter().map(mm).collect::<Vec<_>>());
    let stresses = |i: usize| column(i).map(|numbers| numbers.into_iter().map(mpa).collect::<Vec<_>>());
    let remaining = Columns {
        od: &lengths(0)?,
        wall: &lengths(1)?,
        modulus: &stresses(2)?,
        yield_strength: &stresses(3)?,
        tangent_modulus: &stresses(4)?,
        radius: &lengths(5)?,
    }
    .remaining()?;
    let mut worst = 0.0_f64;
    for ((curvature, radius), left) in remaining.iter().zip(column(5)?).zip(column(6)?) {
        let off = (curvature.value * radius - left).abs();
        assert!(off <= 1e-12, "radius {radius}: {off:e}");
        worst = worst.max(off);
    }
    println!("{} tubes: remaining curvature times radius within {worst:.1e}", remaining.len());
    assert_eq!(remaining.len(), 300);
    Ok(())
}

/// The power law of the table has no elastic core; ours has, and at these small radii it changes the moment little.
#[test]
fn figures_computed_apart_agree() -> Outcome {
    let rows = rows("springback_theory.csv")?;
    assert_eq!(rows.len(), 84);
    for row in &rows {
        let n = |i: usize| row[i].parse::<f64>();
        let bent = tube(row)?.bend(mm(n(6)?))?;
        let allowed = if row[2] == "holl" { 2e-5 } else { 1e-11 };
        assert!(
            (to_n_mm(bent.moment()) / n(7)? - 1.0).abs() <= allowed,
            "{row:?}: {}",
            to_n_mm(bent.moment())
        );
        assert!((bent.share().value - n(8)?).abs() <= allowed, "{row:?}");
        let formed = bent.formed_radius().ok_or("nothing left")?;
        assert!((to_mm(formed) / n(9)? - 1.0).abs() <= allowed.max(1e-9), "{row:?}");
        let setting = bent.springback(mm(0.0))?.setting(deg(90.0))?;
        assert!((to_deg(setting) - n(10)?).abs() <= 90.0 * allowed.max(1e-10), "{row:?}");
    }
    Ok(())
}

fn plastic(od: f64, wall: f64, yield_mpa: f64) -> Result<Mechanics, linewright::Error> {
    let law = Hardening::PerfectlyPlastic { yield_strength: mpa(yield_mpa) };
    Mechanics::new(mm(od), mm(wall), mpa(207_000.0), law)
}

#[test]
fn limits_are_those_of_the_textbook() -> Outcome {
    let (outer, bore, yield_mpa) = (2.381_25_f64, 1.670_05_f64, 250.0);
    let tube = plastic(2.0 * outer, outer - bore, yield_mpa)?;
    // Fully plastic: 4/3 sy (Ro^3 - Ri^3), approached from below as the core shrinks.
    let full = 4.0 / 3.0 * yield_mpa * (outer.powi(3) - bore.powi(3));
    let at = |radius: f64| tube.bend(mm(radius)).map(|bent| to_n_mm(bent.moment()));
    assert!(at(3.0)? < full && at(3.0)? > 0.9999 * full);
    // Purely elastic: M = E I / R, all of it springs back, and nothing is formed.
    let inertia = PI / 4.0 * (outer.powi(4) - bore.powi(4));
    let elastic = tube.bend(mm(207_000.0 * outer / yield_mpa + 10.0))?;
    assert!(
        (to_n_mm(elastic.moment()) * to_mm(elastic.radius()) / (207_000.0 * inertia) - 1.0).abs() < 1e-12
    );
    assert!(elastic.formed_radius().is_none());
    // Solid bar: shape factor 16 / (3 pi). Thin tube: 4 / pi.
    let factor = |tube: &Mechanics, outer: f64, bore: f64| -> Result<f64, linewright::Error> {
        let first = yield_mpa * PI / 4.0 * (outer.powi(4) - bore.powi(4)) / outer;
        Ok(to_n_mm(tube.bend(mm(outer * 1.01))?.moment()) / first)
    };
    let solid = plastic(4.0, 2.0, yield_mpa)?;
    assert!((factor(&solid, 2.0, 0.0)? - 16.0 / (3.0 * PI)).abs() < 1e-4);
    let thin = plastic(40.0, 0.1, yield_mpa)?;
    assert!((factor(&thin, 20.0, 19.9)? - 4.0 / PI).abs() < 5e-3);
    // A power law with exponent 0 is perfect plasticity, with any tangent modulus of 0 too.
    let flat = Hardening::PowerLaw { strength_coefficient: mpa(yield_mpa), hardening_exponent: ratio(0.0) };
    let line = Hardening::Bilinear { yield_strength: mpa(yield_mpa), tangent_modulus: mpa(0.0) };
    for law in [flat, line] {
        let other = Mechanics::new(mm(2.0 * outer), mm(outer - bore), mpa(207_000.0), law)?;
        for radius in [5.0, 14.2875, 300.0, 1_500.0, 1_900.0] {
            let (a, b) =
                (to_n_mm(tube.bend(mm(radius))?.moment()), to_n_mm(other.bend(mm(radius))?.moment()));
            assert!((a / b - 1.0).abs() < 1e-12, "{radius}: {a} and {b}");
        }
    }
    Ok(())
}

/// Figures of the limits that were computed apart, row by row, with 12 digits. Not ours to give are the sheet's springback,
/// and the power law with an exponent of 1, which is the elastic line.
#[test]
fn limits_computed_apart_agree() -> Outcome {
    let at = |tube: &Mechanics, core: f64, yield_mpa: f64| -> Result<f64, linewright::Error> {
        Ok(to_n_mm(tube.bend(mm(core * 207_000.0 / yield_mpa))?.moment()))
    };
    let brake = plastic(4.7625, 0.7112, 250.0)?;
    // A core of 0.5 mm in the bore, on it, in the wall, on the surface, beyond it.
    for (core, moment) in [
        (0.5, 2_918.294_905_19),
        (1.670_05, 2_566.678_913_4),
        (2.0, 2_335.975_738_21),
        (2.381_25, 2_009.794_081_72),
        (3.0, 1_595.274_052_36),
    ] {
        assert!((at(&brake, core, 250.0)? / moment - 1.0).abs() < 1e-11, "{core}");
    }
    // The thin tube of the table is ten times as large here, because 0.01 mm is no wall: a thousand times the moment.
    let thin = plastic(40.1, 0.1, 250.0)?;
    for (core, moment) in [(2.0, 39_933.316_307_1), (10.0, 38_264.541_886_8), (19.0, 32_628.943_078_7)] {
        assert!((at(&thin, core, 250.0)? / moment - 1.0).abs() < 1e-11, "{core}");
    }
    let bar = plastic(4.0, 2.0, 250.0)?;
    for (core, moment) in [(0.2, 2_653.353_357_21), (1.0, 2_346.235_656_87), (1.9, 1_651.741_825)] {
        assert!((at(&bar, core, 250.0)? / moment - 1.0).abs() < 1e-11, "{core}");
    }
    // Elastic from 1971.675 mm on.
    let left = |radius: f64| brake.bend(mm(radius)).map(|bent| bent.formed_radius().is_some());
    assert!(left(1_971.675 * 0.999)? && !left(1_971.675)? && !left(1_971.675 * 1.001)?);
    // The section's integral of y^(1 + n), from a metal so soft that its elastic core is nothing: M = K J / R^n.
    for (n, integral) in [
        (0.0, 11.792_857_747_6),
        (0.1, 12.302_803_155_2),
        (0.21, 12.914_414_971),
        (0.26, 13.210_578_246_2),
        (0.44, 14.375_684_042_6),
        (0.5, 14.800_142_082_3),
    ] {
        let law = Hardening::PowerLaw { strength_coefficient: mpa(1.0), hardening_exponent: ratio(n) };
        let soft = Mechanics::new(mm(4.7625), mm(0.7112), mpa(1_000_000.0), law)?;
        let moment = to_n_mm(soft.bend(mm(2.4))?.moment());
        assert!((moment * 2.4_f64.powf(n) / integral - 1.0).abs() < 1e-10, "{n}");
    }
    Ok(())
}

/// The recovered angle of an arm along which the moment falls to zero: M d / (2 E I); 25 mm give 0.80118 degrees for the
/// first tube of the table (computed apart).
#[test]
fn the_arm_of_the_tool_adds_a_constant() -> Outcome {
    let law = Hardening::PowerLaw { strength_coefficient: mpa(600.0), hardening_exponent: ratio(0.21) };
    let tube = Mechanics::new(mm(4.7625), mm(0.7112), mpa(207_000.0), law)?;
    let springback = tube.bend(mm(14.2875))?.springback(mm(25.0))?;
    assert!((to_deg(springback.constant()) - 0.801_18).abs() < 2e-5);
    assert!((springback.proportional().value - 0.015_982_9).abs() < 1e-7);
    Ok(())
}

#[test]
fn what_is_no_material_is_refused() {
    let bad = |od: f64, wall: f64, modulus: f64, yield_mpa: f64| {
        let law = Hardening::PerfectlyPlastic { yield_strength: mpa(yield_mpa) };
        Mechanics::new(mm(od), mm(wall), mpa(modulus), law).err().map(|error| error.code().name())
    };
    assert_eq!(bad(4.75, 2.5, 207_000.0, 250.0), Some("OUT_OF_RANGE"));
    assert_eq!(bad(4.75, 0.7, 200.0, 250.0), Some("OUT_OF_RANGE"));
    assert_eq!(bad(4.75, 0.7, 2_000.0, 2_500.0), Some("OUT_OF_RANGE"));
    assert_eq!(bad(4.75, 0.7, 207_000.0, f64::NAN), Some("NOT_A_NUMBER"));
    let tube = plastic(4.75, 0.7, 250.0);
    assert!(tube.is_ok_and(|tube| tube.bend(mm(2.3)).is_err() && tube.bend(mm(f64::INFINITY)).is_err()));
}

/// The interval of the setting holds what any material within the scatter would need; and the estimate marks the plan.
#[test]
fn the_scatter_of_the_material_is_an_interval() -> Outcome {
    let tube = plastic(4.7625, 0.7112, 250.0)?;
    let scatter = MaterialScatter { strength: ratio(0.2), modulus: ratio(0.05) };
    let [low, high] = tube.setting_range(mm(14.2875), mm(10.0), deg(90.0), scatter)?.map(to_deg);
    let estimate = to_deg(tube.bend(mm(14.2875))?.springback(mm(10.0))?.setting(deg(90.0))?);
    assert!(low < estimate && estimate < high);
    for strength in [0.8, 0.9, 1.0, 1.1, 1.2] {
        for modulus in [0.95, 1.0, 1.05] {
            let law = Hardening::PerfectlyPlastic { yield_strength: mpa(250.0 * strength) };
            let other = Mechanics::new(mm(4.7625), mm(0.7112), mpa(207_000.0 * modulus), law)?;
            let setting = to_deg(other.bend(mm(14.2875))?.springback(mm(10.0))?.setting(deg(90.0))?);
            assert!((low - 1e-9..=high + 1e-9).contains(&setting), "{setting} in {low} to {high}");
        }
    }
    let prior = tube.prior(mm(14.2875), mm(10.0), scatter, deg(0.3), 2)?;
    let fit = TrialFit::with_prior(prior, &[Trial { set: deg(90.0), got: deg(87.003) }])?;
    let blended = fit.springback()?;
    assert_eq!((blended.basis(), fit.degrees_of_freedom()), (Basis::Blend, 3));
    // One trial of 3 degrees pulls the estimate of about 1.6 toward itself, and not beyond.
    let at = to_deg(blended.constant()) + 90.0 * blended.proportional().value;
    assert!(at > estimate - 90.0 && at < 3.0, "{at}");
    let believed = to_deg(prior.constant[0]) + 90.0 * prior.proportional[0].value;
    let went = (at - believed) / (90.0 - 87.003 - believed);
    let weight = fit.weight_of_trials(deg(90.0))?.value;
    assert!((weight - went).abs() < 1e-9 && weight > 0.1, "{weight} for {went}");
    Ok(())
}
