//! A line full of fluid: against figures computed apart, against the equations of a thick cylinder integrated here, against
//! a beam of finite elements written here, and in its limits.

#[path = "../common/mod.rs"]
mod common;

use common::{Outcome, here, random};
use linewright::hydraulics::{
    AxialEnds, FilledTube, Fluid, Hold, Span, SpanEnds, WallElasticity, handbook_spacings,
};
use linewright::source::Checked;
use linewright::units::{
    hz, inch, kelvin, kg_per_m3, meter, ml, mm, mpa, per_kelvin, ratio, to_bar, to_g, to_hz, to_inch,
    to_m_per_s, to_ml, to_mm, to_mm2, to_mpa, to_per_mpa,
};
use linewright::{Code, Material, Tube};
use proptest::prelude::*;
use std::f64::consts::PI;

fn rows(name: &str) -> Outcome<Vec<Vec<f64>>> {
    let text = std::fs::read_to_string(here("tables/bending").join(name))?;
    let lines = text.lines().filter(|line| !line.starts_with('#')).skip(1);
    // The first column is the material's name.
    let row = |line: &str| line.split(',').skip(1).map(str::parse).collect::<Result<Vec<f64>, _>>();
    Ok(lines.map(row).collect::<Result<_, _>>()?)
}

fn tube(od: f64, wall: f64) -> Result<Tube, linewright::Error> {
    Tube::new(mm(od), mm(wall), Material::LowCarbonSteel)
}

fn fluid(bulk: f64, density: f64) -> Result<Fluid, linewright::Error> {
    Fluid::named("of this test")
        .with_bulk_modulus(mpa(bulk), "table of this test")?
        .with_density(kg_per_m3(density), "table of this test")?
        .with_expansion(per_kelvin(7e-4), "table of this test")
}

fn near(got: f64, want: f64, share: f64) -> bool {
    (got - want).abs() <= share * want.abs()
}

#[test]
fn filled_tubes_row_by_row() -> Outcome<()> {
    let rows = rows("filled_tube.csv")?;
    assert_eq!(rows.len(), 18);
    for row in &rows {
        let [od, wall, modulus, density, poisson, fluid_density, bulk, ..] = row[..] else {
            return Err("a row".into());
        };
        let [metal, bore, inertia, stiffness, mass, closed, open, fixed, effective, wave] = row[7..] else {
            return Err("ten figures".into());
        };
        let (tube, fluid) = (tube(od, wall)?, fluid(bulk, fluid_density)?);
        // Areas, inertia, stiffness and mass are printed to 1e-7.
        assert!(
            (to_mm2(tube.metal_area()) - metal).abs() < 6e-8
                && (to_mm2(tube.bore_area()) - bore).abs() < 6e-8
        );
        assert!((to_ml(tube.bore_volume(meter(1.0))?) - bore).abs() < 6e-8);
        let span =
            Span::from_figures(&tube, mpa(modulus), kg_per_m3(density), Some(kg_per_m3(fluid_density)))?;
        assert!((to_g(span.mass(meter(1.0))?) / 1000.0 - mass).abs() < 6e-8, "{row:?}");
        // Stiffness from a frequency: f = pi / 2 sqrt(E I / m) / L^2, with E I of the table in N m2.
        let frequency = PI / 2.0 * (stiffness / mass).sqrt();
        assert!(near(to_hz(span.first_frequency(meter(1.0), SpanEnds::Pinned)?), frequency, 1e-6), "{row:?}");
        assert!(near(inertia * modulus / 1e6, stiffness, 1e-7), "{row:?}");
        let elastic = WallElasticity::new(mpa(modulus), ratio(poisson))?;
        for (ends, want) in AxialEnds::ALL.into_iter().zip([closed, open, fixed]) {
            let line = FilledTube::new(&tube, elastic, ends, &fluid)?;
            // Seven digits are printed.
            assert!(near(to_per_mpa(line.wall_compliance()), want, 3e-7), "{} {row:?}", ends.name());
        }
        let line = FilledTube::new(&tube, elastic, AxialEnds::Closed, &fluid)?;
        assert!((to_mpa(line.effective_bulk_modulus()) - effective).abs() < 0.05, "{row:?}");
        // The table's speeds come from a bulk modulus of one digit more than it prints.
        assert!((to_m_per_s(line.wave_speed()?) - wave).abs() < 0.02, "{row:?}");
    }
    Ok(())
}

#[test]
fn spans_row_by_row() -> Outcome<()> {
    let rows = rows("span_frequency.csv")?;
    assert_eq!(rows.len(), 90);
    for row in &rows {
        let [od, wall, modulus, density, fluid, length, a, b, c] = row[..] else { return Err("nine".into()) };
        let span =
            Span::from_figures(&tube(od, wall)?, mpa(modulus), kg_per_m3(density), Some(kg_per_m3(fluid)))?;
        for (ends, want) in SpanEnds::ALL.into_iter().zip([a, b, c]) {
            let got = to_hz(span.first_frequency(mm(length), ends)?);
            assert!((got - want).abs() <= 1e-5, "{} {row:?}: {got}", ends.name());
            assert!(near(to_mm(span.length_for(hz(got), ends)?), length, 1e-14));
        }
    }
    Ok(())
}

/// A thick cylinder by integrating equilibrium and Hooke's law outward from the bore: state (displacement, radial stress),
/// bore pressure `p`, axial strain `z`, warming strain `w` of the free metal. Gives the state outside and the axial force.
struct Cylinder {
    bore: f64,
    outer: f64,
    modulus: f64,
    poisson: f64,
}

impl Cylinder {
    fn outward(&self, u0: f64, p: f64, z: f64, w: f64) -> (f64, f64) {
        let lame = self.modulus * self.poisson / ((1.0 + self.poisson) * (1.0 - 2.0 * self.poisson));
        let stiff = lame + self.modulus / (1.0 + self.poisson);
        // Warming acts as a pull of (3 lame + 2 mu) w in every direction.
        let warm = (2.0 * lame + stiff) * w;
        let slope = |r: f64, u: f64, s: f64| {
            let du = (s + warm - lame * (u / r + z)) / stiff;
            let hoop = stiff * u / r + lame * (du + z) - warm;
            let axial = stiff * z + lame * (du + u / r) - warm;
            (du, (hoop - s) / r, 2.0 * PI * r * axial)
        };
        let steps = 2_000_u32;
        let h = (self.outer - self.bore) / f64::from(steps);
        let (mut u, mut s, mut force) = (u0, -p, 0.0);
        for i in 0..steps {
            let r = self.bore + h * f64::from(i);
            let k1 = slope(r, u, s);
            let k2 = slope(r + h / 2.0, u + h / 2.0 * k1.0, s + h / 2.0 * k1.1);
            let k3 = slope(r + h / 2.0, u + h / 2.0 * k2.0, s + h / 2.0 * k2.1);
            let k4 = slope(r + h, u + h * k3.0, s + h * k3.1);
            u += h / 6.0 * (k1.0 + 2.0 * k2.0 + 2.0 * k3.0 + k4.0);
            s += h / 6.0 * (k1.1 + 2.0 * k2.1 + 2.0 * k3.1 + k4.1);
            force += h / 6.0 * (k1.2 + 2.0 * k2.2 + 2.0 * k3.2 + k4.2);
        }
        (s, force)
    }

    /// Share of the bore's volume gained by a pressure and a warming strain.
    fn gain(&self, ends: AxialEnds, p: f64, w: f64) -> f64 {
        // Everything is linear: three runs give what bore displacement, axial strain and load do.
        let (a, load, b) = (
            self.outward(1.0, 0.0, 0.0, 0.0),
            self.outward(0.0, p, 0.0, w),
            self.outward(0.0, 0.0, 1.0, 0.0),
        );
        let wanted = if ends == AxialEnds::Closed { p * PI * self.bore * self.bore } else { 0.0 };
        let (u, z) = if ends == AxialEnds::Fixed {
            (-load.0 / a.0, 0.0)
        } else {
            // a.0 u + b.0 z = -load.0;  a.1 u + b.1 z = wanted - load.1
            let det = a.0 * b.1 - a.1 * b.0;
            let right = (-load.0, wanted - load.1);
            ((right.0 * b.1 - right.1 * b.0) / det, (a.0 * right.1 - a.1 * right.0) / det)
        };
        2.0 * u / self.bore + z
    }
}

#[test]
fn the_wall_gives_way_as_the_equations_say() -> Outcome<()> {
    let mut widest = 0.0_f64;
    for (od, wall) in [(4.7625, 0.7112), (4.75, 0.75), (10.0, 1.0), (12.0, 4.0), (30.0, 0.5)] {
        for (modulus, poisson) in [(207_000.0, 0.29), (124_106.0, 0.34), (70_000.0, 0.0), (200_000.0, 0.45)] {
            let there = Cylinder { bore: od / 2.0 - wall, outer: od / 2.0, modulus, poisson };
            let elastic = WallElasticity::new(mpa(modulus), ratio(poisson))?;
            for ends in AxialEnds::ALL {
                let line = FilledTube::new(&tube(od, wall)?, elastic, ends, &fluid(1975.2, 1050.0)?)?;
                let (got, want) = (to_per_mpa(line.wall_compliance()), there.gain(ends, 1.0, 0.0));
                widest = widest.max((got / want - 1.0).abs());
                assert!(near(got, want, 1e-9), "{od} {wall} {}: {got} {want}", ends.name());
                // Warming: the fluid wants to grow by 7e-4, the bore grows by what the equations say.
                let rise = to_mpa(line.pressure_of_warming(kelvin(1.0), per_kelvin(12e-6))?);
                let bore = there.gain(ends, 0.0, 12e-6);
                let want = (7e-4 - bore) / (1.0 / 1975.2 + want);
                assert!(near(rise, want, 1e-9), "{od} {wall} {}: {rise} {want}", ends.name());
            }
        }
    }
    println!("compliance within {widest:.1e} of the integrated equations");
    Ok(())
}

/// First frequency factor (lambda squared) of a uniform beam of unit length, stiffness and mass, by `count` Hermite elements
/// and inverse iteration. `held` says which of the end rotations are held; both ends are held in place.
fn by_elements(count: usize, held: [bool; 2]) -> f64 {
    #[expect(clippy::cast_precision_loss, reason = "a small count is exact")]
    let h = 1.0 / count as f64;
    let stiff = [
        [12.0, 6.0 * h, -12.0, 6.0 * h],
        [6.0 * h, 4.0 * h * h, -6.0 * h, 2.0 * h * h],
        [-12.0, -6.0 * h, 12.0, -6.0 * h],
        [6.0 * h, 2.0 * h * h, -6.0 * h, 4.0 * h * h],
    ];
    let heavy = [
        [156.0, 22.0 * h, 54.0, -13.0 * h],
        [22.0 * h, 4.0 * h * h, 13.0 * h, -3.0 * h * h],
        [54.0, 13.0 * h, 156.0, -22.0 * h],
        [-13.0 * h, -3.0 * h * h, -22.0 * h, 4.0 * h * h],
    ];
    let size = 2 * (count + 1);
    let (mut k, mut m) = (vec![vec![0.0; size]; size], vec![vec![0.0; size]; size]);
    for e in 0..count {
        for i in 0..4 {
            for j in 0..4 {
                k[2 * e + i][2 * e + j] += stiff[i][j] / (h * h * h);
                m[2 * e + i][2 * e + j] += heavy[i][j] * h / 420.0;
            }
        }
    }
    let mut free: Vec<usize> = (0..size).filter(|i| *i != 0 && *i != size - 2).collect();
    free.retain(|i| !((held[0] && *i == 1) || (held[1] && *i == size - 1)));
    let pick = |full: &[Vec<f64>]| -> Vec<Vec<f64>> {
        free.iter().map(|i| free.iter().map(|j| full[*i][*j]).collect()).collect()
    };
    let (mut k, m) = (pick(&k), pick(&m));
    // Symmetric and positive: elimination needs no pivots. Factors stay below the diagonal.
    let n = free.len();
    for p in 0..n {
        let pivot = k[p].clone();
        for row in &mut k[p + 1..] {
            let factor = row[p] / pivot[p];
            row[p] = factor;
            for (cell, above) in row[p + 1..].iter_mut().zip(&pivot[p + 1..]) {
                *cell -= factor * above;
            }
        }
    }
    let times =
        |x: &[f64]| -> Vec<f64> { m.iter().map(|row| row.iter().zip(x).map(|(a, b)| a * b).sum()).collect() };
    let dot = |a: &[f64], b: &[f64]| -> f64 { a.iter().zip(b).map(|(a, b)| a * b).sum() };
    let mut shape = vec![1.0; n];
    let mut square = 0.0;
    for _ in 0..40 {
        let load = times(&shape);
        let mut next = load.clone();
        for i in 0..n {
            next[i] -= (0..i).map(|p| k[i][p] * next[p]).sum::<f64>();
        }
        for i in (0..n).rev() {
            next[i] = (next[i] - (i + 1..n).map(|j| k[i][j] * next[j]).sum::<f64>()) / k[i][i];
        }
        square = dot(&next, &load) / dot(&next, &times(&next));
        let length = dot(&next, &next).sqrt();
        shape = next.iter().map(|x| x / length).collect();
    }
    square.sqrt()
}

#[test]
fn spans_swing_as_a_beam_of_elements_does() -> Outcome<()> {
    let (modulus, density, fluid) = (207_000.0, 7_850.0, 1_050.0);
    let (od, wall, length) = (4.7625, 0.7112, 355.6);
    let span =
        Span::from_figures(&tube(od, wall)?, mpa(modulus), kg_per_m3(density), Some(kg_per_m3(fluid)))?;
    // SI units here: N m2 and kg/m.
    let bore = od - 2.0 * wall;
    let stiffness = modulus * PI / 64.0 * (od.powi(4) - bore.powi(4)) * 1e-6;
    let mass = PI / 4.0 * (density * (od * od - bore * bore) + fluid * bore * bore) * 1e-6;
    let unit = (stiffness / mass).sqrt() / (length / 1000.0_f64).powi(2) / (2.0 * PI);
    for (ends, held) in SpanEnds::ALL.into_iter().zip([[false, false], [true, false], [true, true]]) {
        let want = by_elements(60, held) * unit;
        let got = to_hz(span.first_frequency(mm(length), ends)?);
        println!("{}: {got:.6} Hz, by elements {want:.6}", ends.name());
        assert!((got - want).abs() < 1e-4, "{}: {got} {want}", ends.name());
    }
    // Roots of the beam's equations, found again: tan x = tanh x, cos x cosh x = 1.
    let root = |mut low: f64, mut high: f64, f: &dyn Fn(f64) -> f64| {
        for _ in 0..100 {
            let middle = (low + high) / 2.0;
            if (f(middle) < 0.0) == (f(low) < 0.0) { low = middle } else { high = middle }
        }
        low
    };
    let one = to_hz(span.first_frequency(mm(length), SpanEnds::Pinned)?) / (PI * PI);
    let pinned = root(3.5, 4.5, &|x| x.sin() * x.cosh() - x.cos() * x.sinh());
    let clamped = root(4.5, 5.0, &|x| x.cos() * x.cosh() - 1.0);
    for (ends, want) in [(SpanEnds::ClampedPinned, pinned), (SpanEnds::Clamped, clamped)] {
        let got = to_hz(span.first_frequency(mm(length), ends)?) / one;
        assert!(near(got, want * want, 1e-14), "{}: {got}", ends.name());
    }
    Ok(())
}

/// The spacing of the handbooks for the two smallest common sizes lies near one frequency of pinned steel spans.
#[test]
fn handbook_spacings_lie_near_one_frequency() -> Outcome<()> {
    for (od, checked) in [(3.0 / 16.0, Checked::Memory), (1.0 / 4.0, Checked::Seen)] {
        let row = handbook_spacings(inch(od))?.into_iter().next().ok_or("a row")?;
        assert_eq!(row.source.checked, checked);
        let steel = Material::LowCarbonSteel.properties();
        let tube = Tube::new(inch(od), inch(0.028), Material::LowCarbonSteel)?;
        let span = Span::new(&tube, &steel, Some(&Fluid::glycol()))?;
        let frequency = to_hz(span.first_frequency(row.most, SpanEnds::Pinned)?);
        assert!((87.0..90.0).contains(&frequency), "{od}: {frequency}");
    }
    let shore = handbook_spacings(inch(0.375))?;
    let most: Vec<f64> = shore.iter().map(|row| to_inch(row.most)).collect();
    assert_eq!(most, [20.0, 50.0]);
    assert!(handbook_spacings(mm(6.0))?.is_empty() && handbook_spacings(mm(10.0))?.is_empty());
    Ok(())
}

/// Arithmetic of a pressure hold by hand: 90 mL x 7e-4 = 0.063 mL per degree; 1700 MPa x 0.05 / 90 = 0.944 MPa.
#[test]
fn a_hold_is_blind_to_what_a_degree_does() -> Outcome<()> {
    let hold = Hold::new(ml(90.0), &fluid(1700.0, 1050.0)?)?;
    let degree = hold.volume_of_temperature(kelvin(1.0))?;
    assert!(near(to_ml(degree), 0.063, 1e-14));
    let fall = hold.ideal_rigid_pressure(ml(0.05))?;
    assert!(near(to_bar(fall), 9.444_444_444_444_4, 1e-13));
    // The leak of 0.05 mL is smaller than what one degree does, so a degree of cooling hides it or feigns it.
    assert!(to_mpa(hold.ideal_rigid_warming(kelvin(1.0))?) > to_mpa(fall));
    assert!(near(to_ml(hold.ideal_rigid_loss(fall)?), 0.05, 1e-14));
    assert!(to_ml(hold.volume_of_temperature(kelvin(-1.0))?) < 0.0);
    Ok(())
}

/// Refusals with their numbers: beyond a twentieth of the volume a constant stiffness is none. By hand: 90 / 20 = 4.5 mL;
/// 1700 / 20 = 85 MPa; 0.05 / 7e-4 = 71.4 K, and 0.25 / 7e-4 = 357 K, which no brake fluid is warmed by.
#[test]
fn no_arithmetic_of_small_changes_for_large_ones() -> Outcome<()> {
    let hold = Hold::new(ml(90.0), &fluid(1700.0, 1050.0)?)?;
    let words = |result: Result<(), linewright::Error>| match result {
        Ok(()) => "answered".to_owned(),
        Err(error) => format!("{} {error}", error.code().name()),
    };
    // 21948 MPa came out of a loss of eleven times the volume.
    let lost = |by: f64| words(hold.ideal_rigid_pressure(ml(by)).map(drop));
    for (by, fine) in [(4.499, true), (4.501, false), (90.1, false), (1000.0, false)] {
        let words = lost(by);
        assert_eq!(words == "answered", fine, "{by}: {words}");
        let told = ["OUT_OF_RANGE", &format!("{by} mL"), "at most 4.5 mL", "a twentieth"];
        assert!(fine || told.iter().all(|part| words.contains(part)), "{words}");
    }
    let loss = |fall: f64| words(hold.ideal_rigid_loss(mpa(fall)).map(drop));
    assert_eq!(loss(84.9), "answered");
    assert!(loss(85.1).contains("at most 85 MPa"), "{}", loss(85.1));
    let warmed = |by: f64| words(hold.ideal_rigid_warming(kelvin(by)).map(drop));
    assert!(warmed(71.0) == "answered" && warmed(-71.0) == "answered");
    assert!(warmed(72.0).contains("at most 71.4285 K"), "{}", warmed(72.0));
    assert!(warmed(-72.0).contains("a change of at most 71.4285 K"), "{}", warmed(-72.0));
    // The volume itself follows the temperature further than the pressure does.
    let grown = |by: f64| words(hold.volume_of_temperature(kelvin(by)).map(drop));
    assert!(grown(200.0) == "answered" && grown(-200.0) == "answered");
    assert!(grown(301.0).contains("OUT_OF_RANGE") && grown(-301.0).contains("OUT_OF_RANGE"));
    let lively = Fluid::named("lively").with_bulk_modulus(mpa(1000.0), "here")?;
    let lively = Hold::new(ml(90.0), &lively.with_expansion(per_kelvin(0.01), "here")?)?;
    assert!(
        words(lively.volume_of_temperature(kelvin(-26.0)).map(drop)).contains("a change of at most 25 K")
    );

    // 652 MPa below nothing came out of a tube cooled by 500 K.
    let steel = WallElasticity::new(mpa(207_000.0), ratio(0.29))?;
    let line = FilledTube::new(&tube(4.7625, 0.7112)?, steel, AxialEnds::Closed, &Fluid::glycol())?;
    let cooled = |by: f64| words(line.pressure_of_warming(kelvin(by), per_kelvin(1.2e-5)).map(drop));
    assert!(cooled(-500.0).contains("OUT_OF_RANGE") && cooled(-200.0).contains("a twentieth"));
    // 0.05 / (7e-4 - 3.6e-5) = 75.3 K.
    assert!(cooled(-75.2) == "answered" && cooled(-75.4).contains("at most 75.3012 K"), "{}", cooled(-75.4));
    // A bore that grows as the fluid does changes nothing.
    let even = line.pressure_of_warming(kelvin(300.0), per_kelvin(7e-4 / 3.0))?;
    assert!(to_mpa(even).abs() < 1e-9);
    let raised = |by: f64| words(line.volume_to_raise(meter(1.0), mpa(by)).map(drop));
    let most = 0.05 / to_per_mpa(line.compliance());
    assert!(raised(0.999 * most) == "answered" && raised(1.001 * most).contains("a twentieth"));
    // So stiff a fluid is squeezed by little, and the pressure is still one that no line has.
    let stiff = Hold::new(ml(100.0), &fluid(100_000.0, 1050.0)?)?;
    let far = words(stiff.ideal_rigid_pressure(ml(2.0)).map(drop));
    assert!(far.contains("at most 1 mL") && far.contains("any small-bore line"), "{far}");
    Ok(())
}

#[test]
fn what_is_not_known_is_asked_for() -> Outcome<()> {
    let code = |result: Result<(), linewright::Error>| result.err().map(|error| error.code());
    let tube = tube(4.75, 0.75)?;
    let steel = Material::LowCarbonSteel.properties();
    // Poisson's ratio of 316 and the density of 304 were not seen.
    assert_eq!(
        code(WallElasticity::of(&Material::Stainless316.properties()).map(drop)),
        Some(Code::NotKnown)
    );
    assert_eq!(
        code(Span::new(&tube, &Material::Stainless304.properties(), None).map(drop)),
        Some(Code::NotKnown)
    );
    let bare = Fluid::named("bare");
    let elastic = WallElasticity::of(&steel)?;
    assert_eq!(code(FilledTube::new(&tube, elastic, AxialEnds::Open, &bare).map(drop)), Some(Code::NotKnown));
    assert_eq!(code(Hold::new(ml(90.0), &bare).map(drop)), Some(Code::NotKnown));
    assert_eq!(code(Span::new(&tube, &steel, Some(&bare)).map(drop)), Some(Code::NotKnown));
    let stiff = bare.with_bulk_modulus(mpa(2000.0), "here")?;
    let line = FilledTube::new(&tube, elastic, AxialEnds::Closed, &stiff)?;
    assert_eq!(code(line.wave_speed().map(drop)), Some(Code::NotKnown));
    let warming = |by: f64| line.pressure_of_warming(kelvin(by), per_kelvin(1.2e-5)).map(drop);
    assert_eq!(code(warming(1.0)), Some(Code::NotKnown));
    assert_eq!(code(warming(f64::NAN)), Some(Code::NotANumber));
    assert_eq!(
        code(Hold::new(ml(1.0), &stiff)?.volume_of_temperature(kelvin(1.0)).map(drop)),
        Some(Code::NotKnown)
    );
    assert_eq!(code(Hold::new(ml(0.0), &stiff).map(drop)), Some(Code::OutOfRange));
    assert_eq!(code(Hold::new(ml(f64::NAN), &stiff).map(drop)), Some(Code::NotANumber));
    let span = Span::new(&tube, &steel, None)?;
    assert_eq!(code(span.first_frequency(mm(0.0), SpanEnds::Pinned).map(drop)), Some(Code::OutOfRange));
    assert_eq!(code(span.length_for(hz(0.0), SpanEnds::Pinned).map(drop)), Some(Code::OutOfRange));
    assert_eq!(code(span.length_for(hz(f64::NAN), SpanEnds::Pinned).map(drop)), Some(Code::NotANumber));
    assert_eq!(code(WallElasticity::new(mpa(207_000.0), ratio(0.6)).map(drop)), Some(Code::OutOfRange));
    assert_eq!(
        code(Fluid::named("x").with_density(kg_per_m3(1000.0), " ").map(drop)),
        Some(Code::FieldMissing)
    );
    assert_eq!(code(Fluid::named("x").with_bulk_modulus(mpa(1.0), "here").map(drop)), Some(Code::OutOfRange));
    assert_eq!(code(line.volume_to_raise(mm(-1.0), mpa(1.0)).map(drop)), Some(Code::OutOfRange));
    assert_eq!(code(handbook_spacings(mm(f64::NAN)).map(drop)), Some(Code::NotANumber));
    Ok(())
}

proptest! {
    #![proptest_config(random::config(2_000))]

    #[test]
    fn stiffness_keeps_its_order(
        od in 12.0..30.0_f64, share in 0.05..0.3_f64, poisson in 0.0..0.5_f64, bulk in 500.0..3000.0_f64,
    ) {
        let elastic = WallElasticity::new(mpa(207_000.0), ratio(poisson))?;
        let fluid = fluid(bulk, 1050.0)?;
        let of = |share: f64, ends| FilledTube::new(&tube(od, share * od)?, elastic, ends, &fluid);
        let line = |ends| of(share, ends);
        let give = |line: &FilledTube| to_per_mpa(line.wall_compliance());
        // Open ends give way least, closed ones most; held between them.
        let (closed, open, fixed) = (line(AxialEnds::Closed)?, line(AxialEnds::Open)?, line(AxialEnds::Fixed)?);
        prop_assert!(give(&fixed) >= give(&open) - 1e-18 && give(&fixed) <= give(&closed) + 1e-18);
        prop_assert!(give(&of(1.1 * share, AxialEnds::Closed)?) < give(&closed));
        prop_assert!(to_mpa(closed.effective_bulk_modulus()) < bulk);
        let speed = to_m_per_s(closed.wave_speed()?);
        prop_assert!(speed < (bulk * 1e6 / 1050.0).sqrt());
        // Thin wall, open ends: D / (E t) (1 - nu / 2), to the order of t / D.
        let thin = of(0.01, AxialEnds::Open)?;
        let textbook = 0.99 / 0.01 / 207_000.0 * (1.0 - poisson / 2.0);
        prop_assert!(near(give(&thin), textbook, 0.03), "{} {}", give(&thin), textbook);
        let volume = |length: f64, p: f64| closed.volume_to_raise(mm(length), mpa(p)).map(to_ml);
        prop_assert!(near(volume(2000.0, 10.0)?, 4.0 * volume(1000.0, 5.0)?, 1e-14));
        let rise = |by: f64| closed.pressure_of_warming(kelvin(by), per_kelvin(1.2e-5)).map(to_mpa);
        prop_assert!(rise(10.0)? > 0.0 && near(rise(-10.0)?, -rise(10.0)?, 1e-15));
    }

    #[test]
    fn spans_keep_their_laws(od in 3.0..20.0_f64, share in 0.05..0.3_f64, length in 20.0..3000.0_f64) {
        let tube = tube(od, share * od)?;
        let span = |fluid: Option<f64>| {
            Span::from_figures(&tube, mpa(207_000.0), kg_per_m3(7850.0), fluid.map(kg_per_m3))
        };
        let (full, empty) = (span(Some(1050.0))?, span(None)?);
        let at = |span: &Span, length: f64, ends| span.first_frequency(mm(length), ends).map(to_hz);
        let pinned = at(&full, length, SpanEnds::Pinned)?;
        prop_assert!(pinned < at(&full, length, SpanEnds::ClampedPinned)?);
        prop_assert!(at(&full, length, SpanEnds::ClampedPinned)? < at(&full, length, SpanEnds::Clamped)?);
        prop_assert!(at(&empty, length, SpanEnds::Pinned)? > pinned);
        prop_assert!(near(at(&full, 2.0 * length, SpanEnds::Pinned)? * 4.0, pinned, 1e-14));
        let wanted = full.length_for(hz(pinned), SpanEnds::Pinned)?;
        prop_assert!(near(to_mm(wanted), length, 1e-14));
    }
}
