//! The radius of a former from bent pieces: against another implementation, by hand, and by simulation.

#[path = "../common/draw.rs"]
mod draw;

use draw::normal;
use linewright::bench::{PieceFit, TestPiece};
use linewright::units::{Length, deg, mm, to_mm};
use std::error::Error;
use std::f64::consts::{FRAC_PI_2, PI};
use std::fs;

type Outcome = Result<(), Box<dyn Error>>;

fn piece(length: f64, legs: &[f64], angles: &[f64]) -> Result<TestPiece, linewright::Error> {
    let legs: Vec<Length> = legs.iter().copied().map(mm).collect();
    TestPiece::new(mm(length), &legs, &angles.iter().copied().map(deg).collect::<Vec<_>>())
}

/// NumPy and SciPy: least squares of their own, Student's numbers, root finding on the definition of the share's interval.
#[test]
fn figures_are_those_of_another_implementation() -> Outcome {
    let text =
        fs::read_to_string(concat!(env!("CARGO_MANIFEST_DIR"), "/tables/bending/pieces_reference.csv"))?;
    let (mut rows, mut told, mut bounded) = (0, 0, 0);
    for line in text.lines().skip(1) {
        let cells: Vec<&str> = line.split(',').collect();
        let list = |cell: &str| cell.split(';').map(str::parse).collect::<Result<Vec<f64>, _>>();
        let pieces = cells[0].split('|').map(|text| -> Result<TestPiece, Box<dyn Error>> {
            let parts: Vec<&str> = text.split(' ').collect();
            Ok(piece(parts[0].parse()?, &list(parts[1])?, &list(parts[2])?)?)
        });
        let fit = PieceFit::new(&pieces.collect::<Result<Vec<_>, _>>()?)?;
        let chance = cells[1].parse()?;
        let interval = fit.radius_interval(chance)?;
        let stretch = fit.stretch();
        let share = stretch.map(|s| s.share_interval(chance)).transpose()?.flatten();
        let ours = [
            Some(to_mm(fit.radius())),
            fit.radius_error().map(to_mm),
            interval.map(|[low, _]| to_mm(low)),
            interval.map(|[_, high]| to_mm(high)),
            fit.scatter().map(to_mm),
            Some(to_mm(fit.gain(deg(90.0))?)),
            stretch.map(|s| to_mm(s.radius())),
            stretch.and_then(|s| s.radius_error()).map(to_mm),
            stretch.map(|s| s.share().value),
            share.map(|[low, _]| low.value),
            share.map(|[_, high]| high.value),
        ];
        for (place, (ours, cell)) in ours.iter().zip(&cells[2..]).enumerate() {
            let expected = Some(*cell).filter(|cell| !cell.is_empty()).map(str::parse::<f64>).transpose()?;
            let agree = match (ours, expected) {
                (Some(ours), Some(expected)) => (ours - expected).abs() <= 1e-8 * expected.abs().max(1.0),
                (None, None) => true,
                _ => false,
            };
            assert!(agree, "{line}: number {place} is {ours:?}, not {expected:?}");
        }
        rows += 1;
        told += u32::from(stretch.is_some());
        bounded += u32::from(share.is_some());
    }
    println!("{rows} sets, {told} with a stretch, {bounded} with its interval");
    assert!(rows == 80 && told > 30 && told < 75 && bounded > 20, "{rows}, {told}, {bounded}");
    Ok(())
}

#[test]
fn one_piece_gives_a_radius_without_an_interval() -> Outcome {
    // A right angle of radius 20: each leg 100 + 20, length 200 + 10 pi; so the gain is 40 - 10 pi.
    let one = piece(200.0 + 10.0 * PI, &[120.0, 120.0], &[90.0])?;
    assert!((to_mm(one.gain()) - (40.0 - 10.0 * PI)).abs() < 1e-12);
    let fit = PieceFit::new(std::slice::from_ref(&one))?;
    assert!((to_mm(fit.radius()) - 20.0).abs() < 1e-12);
    assert!(fit.radius_error().is_none() && fit.scatter().is_none() && fit.stretch().is_none());
    assert!(fit.radius_interval(0.95)?.is_none() && fit.gain_interval(deg(90.0), 0.95)?.is_none());
    assert!((to_mm(fit.former(mm(25.0))?.as_formed()) - 20.0).abs() < 1e-12);
    // Outer legs of a right angle are longer by half the diameter each.
    let outer = TestPiece::from_outer_legs(one.length(), &[mm(123.0), mm(123.0)], &[deg(90.0)], mm(6.0))?;
    assert!(outer.legs().iter().all(|leg| (to_mm(*leg) - 120.0).abs() < 1e-12));
    Ok(())
}

#[test]
fn two_angles_tell_radius_and_stretch_apart() -> Outcome {
    // Radius 20 again, and of every arc 3 % is stretch: the tube in it is 0.97 x arc.
    let right = piece(200.0 + 0.97 * 20.0 * FRAC_PI_2, &[120.0, 120.0], &[90.0])?;
    let third = 20.0 * 3.0_f64.sqrt();
    let wide = piece(200.0 + 0.97 * 40.0 * PI / 3.0, &[100.0 + third, 100.0 + third], &[120.0])?;
    let fit = PieceFit::new(&[right.clone(), wide])?;
    let stretch = fit.stretch().ok_or("no stretch")?;
    assert!((to_mm(stretch.radius()) - 20.0).abs() < 1e-9 && (stretch.share().value - 0.03).abs() < 1e-9);
    assert!(stretch.radius_error().is_none() && stretch.share_interval(0.95)?.is_none());
    // The radius that makes lengths come out has the stretch in it.
    assert!(to_mm(fit.radius()) > 21.0 && fit.radius_error().is_some());
    // Twice the same angle tells nothing apart.
    assert!(PieceFit::new(&[right.clone(), right])?.stretch().is_none());
    Ok(())
}

#[test]
fn pieces_that_make_no_sense_are_refused() -> Outcome {
    let code = |pieces: &[TestPiece]| PieceFit::new(pieces).err().map(|error| error.code().name());
    assert_eq!(code(&[]), Some("TRIALS_UNUSABLE"));
    let short = piece(240.0, &[110.0, 110.0], &[90.0])?;
    assert_eq!(code(std::slice::from_ref(&short)), Some("TRIALS_UNUSABLE"));
    let good = piece(200.0 + 10.0 * PI, &[120.0, 120.0], &[90.0])?;
    let misread = piece(200.0 + 10.0 * PI, &[120.0, 130.0], &[90.0])?;
    assert_eq!(code(&[good.clone(), good.clone(), misread]), Some("TRIALS_UNUSABLE"));
    let made = |length: f64, legs: &[f64], angles: &[f64]| {
        piece(length, legs, angles).err().map(|error| error.code().name())
    };
    assert_eq!(made(200.0, &[120.0], &[90.0]), Some("COUNT_MISMATCH"));
    assert_eq!(made(200.0, &[200.0], &[]), Some("COUNT_MISMATCH"));
    assert_eq!(made(200.0, &[120.0, 90.0], &[175.0]), Some("OUT_OF_RANGE"));
    assert_eq!(made(200.0, &[f64::NAN, 90.0], &[90.0]), Some("NOT_A_NUMBER"));
    assert_eq!(made(-1.0, &[120.0, 90.0], &[90.0]), Some("OUT_OF_RANGE"));
    let fit = PieceFit::new(&[good])?;
    assert!(fit.gain(deg(175.0)).is_err() && fit.radius_interval(1.0).is_err());
    Ok(())
}

/// Length 1 mm, legs of 4 and 4 mm, a right angle: the radius of 7 / (2 - pi / 2) = 16.31 mm has an arc of 25.62 mm and
/// tangents of 16.31 mm.
#[test]
fn a_piece_too_short_for_its_bends_is_refused() -> Outcome {
    let words = |piece: Result<TestPiece, linewright::Error>| match piece {
        Ok(_) => "made".to_owned(),
        Err(error) => format!("{} {error}", error.code().name()),
    };
    let tiny = words(piece(1.0, &[4.0, 4.0], &[90.0]));
    for part in ["OUT_OF_RANGE", "length", "got 1 mm", "16.31 mm", "at least 25.62 mm"] {
        assert!(tiny.contains(part), "{tiny}");
    }
    // 200 mm of radius 100 with its corner near one end: the tangent of 100 mm does not fit into 40.
    let one_sided = words(piece(200.0, &[40.0, 202.92], &[90.0]));
    for part in ["OUT_OF_RANGE", "legs", "leg 1, 40 mm", "at least 100.00 mm", "tangents"] {
        assert!(one_sided.contains(part), "{one_sided}");
    }
    // The middle leg holds two tangents: 2 x 20 of 30 mm, while 45 is enough.
    let gain = 2.0 * 20.0 * (2.0 - FRAC_PI_2);
    let double = |middle: f64| words(piece(80.0 + middle - gain, &[40.0, middle, 40.0], &[90.0, 90.0]));
    assert!(double(30.0).contains("leg 2") && double(30.0).contains("at least 40.00 mm"), "{}", double(30.0));
    assert_eq!(double(45.0), "made");
    // Legs that a misreading of 3 mm explains are believed, until another piece tells the radius.
    let alone = piece(45.0, &[26.0, 26.0], &[90.0])?;
    assert!(
        (to_mm(PieceFit::new(std::slice::from_ref(&alone))?.radius()) - 7.0 / (2.0 - FRAC_PI_2)).abs() < 1e-9
    );
    // A short piece beside two long ones of radius 30: its leg of 20 mm cannot hold 30.
    let long = piece(200.0 + 15.0 * PI, &[130.0, 130.0], &[90.0])?;
    let short = piece(60.0, &[20.0, 51.0], &[90.0])?;
    let both = PieceFit::new(&[long.clone(), long, short]).err().ok_or("fitted")?;
    assert_eq!(both.code().name(), "TRIALS_UNUSABLE");
    let told = both.to_string();
    assert!(told.contains("piece 3, leg 1, 20 mm") && told.contains("tangents"), "{told}");
    Ok(())
}

/// Two pieces that tell little: 14 mm more or less 14, at 95 %. No radius is below nothing.
#[test]
fn an_interval_of_radii_begins_at_nothing() -> Outcome {
    let fit =
        PieceFit::new(&[piece(200.0, &[104.0, 102.0], &[90.0])?, piece(201.0, &[102.0, 100.0], &[60.0])?])?;
    let half = 12.706_204_736 * to_mm(fit.radius_error().ok_or("no error")?);
    assert!(half > to_mm(fit.radius()));
    let [low, high] = fit.radius_interval(0.95)?.ok_or("no interval")?.map(to_mm);
    assert_eq!(low.to_bits(), 0.0_f64.to_bits());
    assert!((high - to_mm(fit.radius()) - half).abs() < 1e-6, "{high}");
    let [low, high] = fit.gain_interval(deg(90.0), 0.95)?.ok_or("no interval")?.map(to_mm);
    assert!(low.abs() < 1e-300 && high > 11.0);
    // At a lower chance it ends above nothing, as far below the radius as above.
    let [low, high] = fit.radius_interval(0.8)?.ok_or("no interval")?.map(to_mm);
    assert!(low > 0.0 && (low + high - 2.0 * to_mm(fit.radius())).abs() < 1e-9);
    Ok(())
}

/// Radius, gain and share are in their intervals in 95 of 100 cases, within one.
#[test]
fn intervals_cover_as_often_as_they_say() -> Outcome {
    const RUNS: u64 = 20_000;
    for (round, angles) in [
        vec![90.137, 90.137],
        vec![45.291, 90.137, 120.413],
        vec![30.511, 60.323, 90.137, 90.137, 120.413, 130.271],
    ]
    .iter()
    .enumerate()
    {
        // Read far more finely than to whole degrees: nothing but the scatter is off.
        // The intervals of the radius hold for tube that keeps its length; that of the share for any.
        let mut covered = [0_u32; 3];
        let radius = 20.0;
        for run in 0..RUNS {
            let at = (u64::try_from(round)? * RUNS + run) * 16;
            let made = |share: f64| -> Result<PieceFit, linewright::Error> {
                let pieces = (at..).zip(angles).map(|(i, angle)| {
                    let turn = angle * PI / 180.0;
                    let leg = 80.0 + radius * (turn / 2.0).tan();
                    piece(160.0 + radius * turn * (1.0 - share), &[leg, leg + 0.4 * normal(i)], &[*angle])
                });
                PieceFit::new(&pieces.collect::<Result<Vec<_>, _>>()?)
            };
            let kept = made(0.0)?;
            let [low, high] = kept.radius_interval(0.95)?.ok_or("no interval")?.map(to_mm);
            covered[0] += u32::from((low..=high).contains(&radius));
            let gain = radius * (2.0 - FRAC_PI_2);
            let [low, high] = kept.gain_interval(deg(90.0), 0.95)?.ok_or("no interval")?.map(to_mm);
            covered[1] += u32::from((low..=high).contains(&gain));
            let stretched = made(0.02)?;
            // An interval without an end holds everything.
            let share = stretched.stretch().map(|s| s.share_interval(0.95)).transpose()?.flatten();
            covered[2] += u32::from(share.is_none_or(|[low, high]| (low.value..=high.value).contains(&0.02)));
        }
        #[expect(clippy::cast_precision_loss, reason = "small counts")]
        let shares = covered.map(|count| f64::from(count) / RUNS as f64);
        println!("{} pieces: radius {}, gain {}, share {}", angles.len(), shares[0], shares[1], shares[2]);
        let asked = if angles.len() > 2 { &shares[..] } else { &shares[..2] };
        assert!(
            asked.iter().all(|share| (share - 0.95).abs() <= 0.01),
            "{} pieces: {shares:?}",
            angles.len()
        );
    }
    Ok(())
}

/// Legs as a ruler reads them, to a millimeter or half of one: two or three pieces agree exactly in many cases, and the
/// interval still holds the radius at least as often as it says (within the noise of the count).
#[test]
fn readings_of_a_ruler_are_covered_at_least_as_often_as_said() -> Outcome {
    const RUNS: u64 = 10_000;
    let mut on_the_floor = 0_u32;
    for (round, (angles, step)) in [
        (&[90.137, 90.137][..], 1.0),
        (&[90.137, 95.611, 98.733], 1.0),
        (&[90.137, 90.137], 0.5),
        (&[45.291, 90.137, 120.413, 120.413], 1.0),
        (&[45.291, 60.323, 90.137, 94.719, 120.413, 130.271], 0.5),
    ]
    .into_iter()
    .enumerate()
    {
        let (mut covered, radius) = (0_u32, 14.3);
        for run in 0..RUNS {
            let at = (u64::try_from(round)? * RUNS + run) * 64;
            let pieces = (at..).step_by(5).zip(angles).map(|(i, angle)| {
                let turn = angle * PI / 180.0;
                // Where the bend lies is chance, and so is where its legs lie between the marks of the ruler.
                let legs =
                    [90.0 + 4.0 * normal(i), 95.0 + 4.0 * normal(i + 1)].map(|leg| leg + 0.1 * normal(i + 2));
                let length = legs[0] + legs[1] - radius * (2.0 * (turn / 2.0).tan() - turn);
                piece((length / step).round() * step, &legs.map(|leg| (leg / step).round() * step), &[*angle])
            });
            let fit = PieceFit::new(&pieces.collect::<Result<Vec<_>, _>>()?)?;
            let [low, high] = fit.radius_interval(0.95)?.ok_or("no interval")?.map(to_mm);
            covered += u32::from((low..=high).contains(&radius));
            let scatter = to_mm(fit.scatter().ok_or("no scatter")?);
            on_the_floor += u32::from((scatter - step * 0.5).abs() < 1e-9);
        }
        #[expect(clippy::cast_precision_loss, reason = "small counts")]
        let share = f64::from(covered) / RUNS as f64;
        println!("{} pieces read to {step} mm: {share}", angles.len());
        assert!(share >= 0.94, "{} pieces, {step}: {share}", angles.len());
    }
    // Three readings to a step scatter by half of it.
    assert!(on_the_floor > 5_000, "{on_the_floor}");
    Ok(())
}

/// Pieces set out by the marks of a ruler and bent to one angle are all rounded alike: the interval holds the radius of every
/// former, whatever it is, and not on average over formers only. Legs to a millimeter or half of one, angles to a degree.
#[test]
fn pieces_that_are_alike_are_covered_on_every_former() -> Outcome {
    const RUNS: u64 = 300;
    let same = [90.0; 6];
    let apart = [84.0, 91.0, 97.0, 102.0, 110.0];
    let mut least: f64 = 1.0;
    let mut at = 0;
    for (marks, step, scatter) in [
        (&same[..3], 1.0, 0.05),
        (&same, 1.0, 0.05),
        (&same, 1.0, 0.3),
        (&same, 0.5, 0.1),
        (&apart, 1.0, 0.05),
        (&apart, 1.0, 0.2),
        (&apart, 0.5, 0.2),
    ] {
        for former in 0..12_u32 {
            let radius = 12.0 + 0.37 * f64::from(former);
            // What a protractor shows as 90 degrees.
            let turn = (89.55 + 0.08 * f64::from(former)).to_radians();
            let mut covered = 0_u32;
            for _ in 0..RUNS {
                let pieces = marks.iter().map(|mark| {
                    at += 2;
                    let tangent = radius * (turn / 2.0).tan();
                    let legs = [mark + tangent, 220.0 - mark - radius * turn + tangent];
                    let read = |leg: f64, i: u64| ((leg + scatter * normal(i)) / step).round() * step;
                    let legs = [read(legs[0], at), read(legs[1], at + 1)];
                    piece(220.0, &legs, &[90.0])
                });
                let fit = PieceFit::new(&pieces.collect::<Result<Vec<_>, _>>()?)?;
                let [low, high] = fit.radius_interval(0.95)?.ok_or("no interval")?.map(to_mm);
                covered += u32::from((low..=high).contains(&radius));
            }
            #[expect(clippy::cast_precision_loss, reason = "small counts")]
            let share = f64::from(covered) / RUNS as f64;
            least = least.min(share);
            assert!(share >= 0.93, "{marks:?}, {step} mm, {scatter} mm, radius {radius}: {share}");
        }
    }
    println!("least cover of any former: {least}");
    Ok(())
}

/// Pieces cut from one stop, all a little longer than they were read, and bent to different angles: what their lengths share
/// does not average out, however many there are. On average over the stops.
#[test]
fn pieces_cut_from_one_stop_are_covered() -> Outcome {
    const RUNS: u64 = 2_000;
    let radius = 14.3;
    for count in [3_u32, 10, 30] {
        let mut covered = 0_u32;
        for run in 0..RUNS {
            let at = (u64::from(count) * RUNS + run) * 128;
            // Anything within half a millimeter is read alike.
            let longer = (normal(at).atan() / PI).clamp(-0.5, 0.5);
            let pieces = (0..count).map(|i| {
                let turn = (30.137 + 97.0 / f64::from(count) * f64::from(i)).to_radians();
                let tangent = radius * (turn / 2.0).tan();
                let at = at + 1 + 3 * u64::from(i);
                let straight = 60.0 + 5.0 * normal(at);
                let legs = [straight + tangent, 200.0 + longer - straight - radius * turn + tangent];
                let read = |leg: f64, i: u64| (leg + 0.1 * normal(i)).round();
                piece(200.0, &[read(legs[0], at + 1), read(legs[1], at + 2)], &[turn.to_degrees()])
            });
            let fit = PieceFit::new(&pieces.collect::<Result<Vec<_>, _>>()?)?;
            let [low, high] = fit.radius_interval(0.95)?.ok_or("no interval")?.map(to_mm);
            covered += u32::from((low..=high).contains(&radius));
        }
        #[expect(clippy::cast_precision_loss, reason = "small counts")]
        let share = f64::from(covered) / RUNS as f64;
        println!("{count} pieces from one stop: {share}");
        assert!(share >= 0.94, "{count}: {share}");
    }
    Ok(())
}
