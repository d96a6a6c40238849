//! What trial bends say: against another implementation, published numbers of Student's distribution, and simulation.

#[path = "../common/bends.rs"]
mod bends;
#[path = "../common/draw.rs"]
mod draw;

use bends::{holds, trials};
use draw::normal;
use linewright::springback::{Prior, TrialFit};
use linewright::units::{Angle, deg, ratio, to_deg};
use std::error::Error;
use std::fs;

type Outcome = Result<(), Box<dyn Error>>;

/// NumPy and SciPy: normal equations, Student's numbers, root finding on the definition of the setting's interval.
#[test]
fn intervals_are_those_of_another_implementation() -> Outcome {
    let text = fs::read_to_string(concat!(env!("CARGO_MANIFEST_DIR"), "/tables/bending/fit_reference.csv"))?;
    let (mut rows, mut blended) = (0, 0);
    for line in text.lines().skip(1) {
        let cells: Vec<&str> = line.split(',').collect();
        let list = |cell: &str| -> Result<Vec<f64>, std::num::ParseFloatError> {
            cell.split(';').filter(|item| !item.is_empty()).map(str::parse).collect()
        };
        let bends = trials(&list(cells[0])?, &list(cells[1])?);
        let (wanted, chance) = (deg(cells[2].parse()?), cells[3].parse::<f64>()?);
        let prior = list(cells[4])?;
        let fit = match prior[..] {
            [a, sa, b, sb, scatter, worth, correlation] => {
                blended += 1;
                #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a small count")]
                let worth = worth as usize;
                let constant = [deg(a), deg(sa)];
                let proportional = [ratio(b), ratio(sb)];
                let correlation = ratio(correlation);
                let prior = Prior { constant, proportional, correlation, scatter: deg(scatter), worth };
                TrialFit::with_prior(prior, &bends)?
            }
            _ => TrialFit::new(&bends)?,
        };
        let expected = cells[5..].iter().map(|cell| cell.parse::<f64>()).collect::<Result<Vec<_>, _>>()?;
        let springback = fit.springback()?;
        let [low, high] = fit.setting_interval(wanted, chance)?.ok_or("no interval")?.map(to_deg);
        let setting = deg((to_deg(wanted) + expected[0]) / (1.0 - expected[1]));
        let next = fit.next_bend(setting, chance)?.ok_or("no scatter")?;
        let ours = [
            to_deg(springback.constant()),
            springback.proportional().value,
            to_deg(fit.scatter().ok_or("no scatter")?),
            low,
            high,
            to_deg(next),
        ];
        for (ours, expected) in ours.iter().zip(&expected) {
            assert!(
                (ours - expected).abs() <= 1e-7 * expected.abs().max(1.0),
                "{line}: {ours} for {expected}"
            );
        }
        rows += 1;
    }
    assert!(rows == 120 && blended > 30 && blended < 100, "{rows} rows, {blended} with a prior");
    Ok(())
}

/// A set computed apart: eight bends, and the two outer ones of them.
#[test]
fn a_worked_set_agrees() -> Outcome {
    let sets = [20.0, 30.0, 45.0, 60.0, 75.0, 90.0, 105.0, 120.0];
    let gots = [18.4, 28.6, 42.9, 58.2, 72.5, 87.5, 102.2, 117.3];
    let fit = TrialFit::new(&trials(&sets, &gots))?;
    let near = |ours: f64, expected: f64| assert!((ours - expected).abs() < 5e-7, "{ours} for {expected}");
    let springback = fit.springback()?;
    near(to_deg(springback.constant()), 1.248_899_755_501);
    near(springback.proportional().value, 0.013_594_132_029);
    near(to_deg(fit.scatter().ok_or("scatter")?), 0.224_207_378_682);
    let (_, slope_error) = fit.standard_errors().ok_or("errors")?;
    near(slope_error.value, 0.002_370_359_49);
    let [low, high] = fit.constant_interval(0.95)?.ok_or("interval")?.map(to_deg);
    near(low, 0.808_729_979_025);
    near(high, 1.689_069_531_978);
    let [low, high] = fit.proportional_interval(0.95)?.ok_or("interval")?.map(|share| share.value);
    near(low, 0.007_794_071_302);
    near(high, 0.019_394_192_757);
    near(to_deg(springback.setting(deg(90.0))?), 92.506_445);
    near(to_deg(springback.setting(deg(45.0))?), 46.886_278);
    let next = fit.next_bend(springback.setting(deg(90.0))?, 0.95)?.ok_or("scatter")?;
    near(to_deg(next), 0.598_832);
    let two = TrialFit::new(&trials(&[20.0, 120.0], &[18.4, 117.3]))?;
    assert!(two.scatter().is_none() && two.setting_interval(deg(90.0), 0.95)?.is_none());
    assert!(
        two.outlier().is_none()
            && two.is_bent().is_none()
            && two.advice(&[deg(90.0)], deg(0.5), 0.95, &[deg(45.0)]).is_err()
    );
    near(to_deg(two.springback()?.constant()), 1.38);
    Ok(())
}

/// The fitted springback at a setting, from the middles of the intervals: also where the line is no springback for a bench.
fn on_line(fit: &TrialFit, setting: f64) -> Result<f64, Box<dyn Error>> {
    let [low, high] = fit.constant_interval(0.95)?.ok_or("constant")?.map(to_deg);
    let [least, most] = fit.proportional_interval(0.95)?.ok_or("slope")?.map(|share| share.value);
    Ok((low + high) / 2.0 + (least + most) / 2.0 * setting)
}

/// Every interval covers the truth in 95 of 100 cases, within one: constant, setting, next bend; with three to eight bends.
#[test]
fn intervals_cover_as_often_as_they_say() -> Outcome {
    const RUNS: u64 = 20_000;
    for (round, sets) in [
        vec![20.0, 60.0, 120.0],
        vec![30.0, 30.0, 90.0, 90.0],
        vec![20.0, 30.0, 45.0, 60.0, 75.0, 90.0, 105.0, 120.0],
    ]
    .iter()
    .enumerate()
    {
        let (a, b, sigma) = (1.2, 0.015, 0.2);
        let right = (75.0 + a) / (1.0 - b);
        let mut covered = [0_u32; 4];
        for run in 0..RUNS {
            let at = (u64::try_from(round)? * RUNS + run) * 32;
            let gots: Vec<f64> =
                (at..).zip(sets).map(|(i, set)| set - (a + b * set + sigma * normal(i))).collect();
            let fit = TrialFit::new(&trials(sets, &gots))?;
            let next = right - (a + b * right + sigma * normal(at + 20));
            let expected = right - on_line(&fit, right)?;
            let half = to_deg(fit.next_bend(deg(right), 0.95)?.ok_or("scatter")?);
            let setting = fit.setting_interval(deg(75.0), 0.95)?;
            covered[0] += u32::from(fit.constant_interval(0.95)?.is_some_and(|i| holds(i, a)));
            let slope = fit.proportional_interval(0.95)?.ok_or("slope")?.map(|share| share.value);
            covered[1] += u32::from((slope[0]..=slope[1]).contains(&b));
            // An interval without an end holds everything.
            covered[2] += u32::from(setting.is_none_or(|interval| holds(interval, right)));
            covered[3] += u32::from((next - expected).abs() <= half);
        }
        #[expect(clippy::cast_precision_loss, reason = "small counts")]
        let shares = covered.map(|count| f64::from(count) / RUNS as f64);
        println!("{} bends: {shares:?}", sets.len());
        assert!(shares.iter().all(|share| (share - 0.95).abs() <= 0.01), "{} bends: {shares:?}", sets.len());
    }
    Ok(())
}

/// A tube that springs back little: some honest sets of trials give a line that falls with
/// the angle. It is a fit as any other and its intervals keep their promise; only a springback for a bench it is not.
#[test]
fn trials_of_a_soft_tube_are_a_fit_whatever_their_line() -> Outcome {
    const RUNS: u64 = 20_000;
    let (a, b, sigma) = (1.5, 0.0078, 0.4);
    let right = (60.0 + a) / (1.0 - b);
    for sets in [&[30.0, 60.0, 90.0][..], &[30.0, 45.0, 60.0, 75.0, 90.0]] {
        let (mut covered, mut falling) = ([0_u32; 3], 0_u32);
        for run in 0..RUNS {
            let gots: Vec<f64> =
                (run * 16..).zip(sets).map(|(i, set)| set - (a + b * set + sigma * normal(i))).collect();
            let fit = TrialFit::new(&trials(sets, &gots))?;
            let constant = fit.constant_interval(0.95)?.ok_or("constant")?;
            let slope = fit.proportional_interval(0.95)?.ok_or("slope")?.map(|share| share.value);
            covered[0] += u32::from(holds(constant, a));
            covered[1] += u32::from((slope[0]..=slope[1]).contains(&b));
            let setting = fit.setting_interval(deg(60.0), 0.95)?;
            covered[2] += u32::from(setting.is_none_or(|interval| holds(interval, right)));
            if let Err(error) = fit.springback() {
                assert_eq!(error.code().name(), "OUT_OF_RANGE");
                falling += 1;
            }
        }
        #[expect(clippy::cast_precision_loss, reason = "small counts")]
        let shares = covered.map(|count| f64::from(count) / RUNS as f64);
        println!("{} bends: {shares:?}, {falling} falling lines of {RUNS}", sets.len());
        assert!(falling > 1_000, "{falling}");
        assert!(shares.iter().all(|share| (share - 0.95).abs() <= 0.01), "{} bends: {shares:?}", sets.len());
    }
    Ok(())
}

/// Bends that scatter by a degree lie more than 2 degrees off their line now and then, and agree with each other all the same.
#[test]
fn trials_that_scatter_a_degree_are_a_fit() -> Outcome {
    const RUNS: u64 = 4_000;
    let sets = [30.0, 40.0, 50.0, 60.0, 75.0, 90.0, 105.0, 120.0];
    let (a, b) = (1.5, 0.02);
    let right = (90.0 + a) / (1.0 - b);
    let (mut covered, mut refused) = (0_u32, 0_u32);
    for run in 0..RUNS {
        let gots: Vec<f64> = (run * 16..).zip(sets).map(|(i, set)| set - (a + b * set + normal(i))).collect();
        let Ok(fit) = TrialFit::new(&trials(&sets, &gots)) else {
            refused += 1;
            continue;
        };
        covered += u32::from(fit.setting_interval(deg(90.0), 0.95)?.is_none_or(|i| holds(i, right)));
    }
    #[expect(clippy::cast_precision_loss, reason = "small counts")]
    let share = f64::from(covered) / (RUNS as f64 - f64::from(refused));
    println!("{refused} of {RUNS} refused, {share} covered");
    assert!(refused < 160 && (share - 0.95).abs() < 0.012, "{refused} refused, {share}");
    Ok(())
}

#[test]
fn the_odd_bend_is_named_and_false_alarms_are_rare() -> Outcome {
    const RUNS: u64 = 4_000;
    let sets = [30.0, 45.0, 60.0, 75.0, 90.0, 105.0];
    let (mut named, mut alarms, mut bent) = (0_u32, 0_u32, 0_u32);
    for run in 0..RUNS {
        let at = run * 32;
        let good: Vec<f64> =
            (at..).zip(sets).map(|(i, set)| set - (1.2 + 0.015 * set + 0.1 * normal(i))).collect();
        let fit = TrialFit::new(&trials(&sets, &good))?;
        alarms += u32::from(fit.outlier().is_some());
        bent += u32::from(fit.is_bent() == Some(true));
        let mut bad = good.clone();
        bad[3] -= 1.5;
        named += u32::from(TrialFit::new(&trials(&sets, &bad)).is_ok_and(|fit| fit.outlier() == Some(3)));
    }
    #[expect(clippy::cast_precision_loss, reason = "small counts")]
    let share = |count: u32| f64::from(count) / RUNS as f64;
    println!("named {}, false alarms {}, bent {}", share(named), share(alarms), share(bent));
    assert!(share(named) > 0.9 && share(alarms) < 0.06 && (share(bent) - 0.05).abs() < 0.012);
    let curved: Vec<f64> = sets.iter().map(|set| set - (0.5 + 0.0003 * set * set)).collect();
    assert_eq!(TrialFit::new(&trials(&sets, &curved))?.is_bent(), Some(true));
    Ok(())
}

/// All multisets of a size, tried one by one.
fn brute(count: usize, candidates: &[f64], reach: &dyn Fn(&[f64]) -> f64) -> f64 {
    let mut best = f64::INFINITY;
    let mut places = vec![0_usize; count];
    loop {
        let angles: Vec<f64> = places.iter().map(|i| candidates[*i]).collect();
        best = best.min(reach(&angles));
        let Some(up) = (0..count).rev().find(|i| places[*i] + 1 < candidates.len()) else { return best };
        let next = places[up] + 1;
        places[up..].fill(next);
    }
}

/// Two-sided 95 %: degrees of freedom 1 to 10 (any statistics handbook).
const STUDENT: [f64; 10] = [
    12.706_205, 4.302_653, 3.182_446, 2.776_445, 2.570_582, 2.446_912, 2.364_624, 2.306_004, 2.262_157,
    2.228_139,
];

/// The farthest end of a wanted setting's interval after more bends, found by halving on the interval's definition, from
/// the normal equations and a printed table of Student's numbers.
fn reach_of(fit: &TrialFit, wanted: &[f64], more: &[f64]) -> Result<f64, Box<dyn Error>> {
    let line = fit.springback()?;
    let (a, b) = (to_deg(line.constant()), line.proportional().value);
    let scatter = to_deg(fit.scatter().ok_or("scatter")?);
    let all: Vec<f64> = fit.trials().iter().map(|t| to_deg(t.set)).chain(more.iter().copied()).collect();
    #[expect(clippy::cast_precision_loss, reason = "small counts")]
    let n = all.len() as f64;
    let mean = all.iter().sum::<f64>() / n;
    let sxx: f64 = all.iter().map(|x| (x - mean) * (x - mean)).sum();
    let width = |x: f64| STUDENT[all.len() - 3] * scatter * (1.0 / n + (x - mean).powi(2) / sxx).sqrt();
    let mut farthest = 0.0_f64;
    for wanted in wanted {
        let setting = (wanted + a) / (1.0 - b);
        for way in [-1.0, 1.0] {
            let is_out = |far: f64| {
                let x = setting + way * far;
                (x - a - b * x - wanted).abs() > width(x)
            };
            let (mut near, mut far) = (0.0, 1e-3);
            while !is_out(far) {
                far *= 1.1;
                if far > 1e5 {
                    return Ok(f64::INFINITY);
                }
            }
            for _ in 0..60 {
                let middle = (near + far) / 2.0;
                if is_out(middle) { far = middle } else { near = middle }
            }
            farthest = farthest.max(far);
        }
    }
    Ok(farthest)
}

fn advised(
    fit: &TrialFit,
    wanted: &[f64],
    goal: f64,
    candidates: &[f64],
) -> Result<(Vec<f64>, f64, bool), Box<dyn Error>> {
    let degs = |list: &[f64]| list.iter().copied().map(deg).collect::<Vec<Angle>>();
    let advice = fit.advice(&degs(wanted), deg(goal), 0.95, &degs(candidates))?;
    Ok((advice.angles.into_iter().map(to_deg).collect(), to_deg(advice.reaches), advice.is_enough))
}

/// The fewest bends, and of so few the best ones: every choice tried here, none of fewer bends is enough.
#[test]
fn advice_is_the_best_of_all_choices() -> Outcome {
    let samples = [
        (vec![30.0, 50.0, 70.0, 90.0], vec![28.3, 48.1, 67.6, 87.5]),
        (vec![30.0, 60.0, 90.0], vec![28.6, 58.2, 87.4]),
        (vec![80.0, 90.0, 100.0], vec![77.9, 87.4, 97.6]),
        (vec![40.0, 50.0, 52.5], vec![38.9, 47.7, 50.9]),
    ];
    let candidates = [20.0, 45.0, 60.0, 90.0, 120.0];
    for (sets, gots) in samples {
        let fit = TrialFit::new(&trials(&sets, &gots))?;
        for wanted in [&[35.0, 110.0][..], &[60.0], &[10.0, 45.0, 90.0], &[130.0]] {
            let reach = |more: &[f64]| reach_of(&fit, wanted, more).unwrap_or(f64::NAN);
            let mut fewer = reach(&[]);
            for count in 1..=4 {
                let best = brute(count, &candidates, &reach);
                if best < fewer {
                    // Asked for just what so many can reach, and for a little more than that.
                    let (angles, reaches, is_enough) = advised(&fit, wanted, best * 1.000_01, &candidates)?;
                    assert!(
                        is_enough && angles.len() == count,
                        "{wanted:?}, {count}: {angles:?}, best {best}"
                    );
                    assert!((reaches / best - 1.0).abs() < 1e-5, "{wanted:?}, {count}: {reaches} for {best}");
                    assert!((reach(&angles) / best - 1.0).abs() < 1e-5, "{wanted:?}: {angles:?}");
                    fewer = best;
                }
                let (angles, ..) = advised(&fit, wanted, best * 0.999_99, &candidates)?;
                assert!(angles.len() > count, "{wanted:?}, {count}: {angles:?}, best {best}");
            }
        }
        let (angles, _, is_enough) = advised(&fit, &[90.0], 0.001, &candidates)?;
        assert!(!is_enough && angles.len() == 12);
    }
    Ok(())
}

/// Of more choices than are tried one by one, what is found is the best here too, within a thousandth.
#[test]
fn advice_from_many_candidates_is_as_good() -> Outcome {
    let candidates: Vec<f64> = (0..15_u32).map(|i| 15.0 + 8.0 * f64::from(i)).collect();
    let fit = TrialFit::new(&trials(&[50.0, 60.0, 75.0], &[48.613, 58.227, 72.704]))?;
    for wanted in [&[35.0, 110.0][..], &[62.0]] {
        let reach = |more: &[f64]| reach_of(&fit, wanted, more).unwrap_or(f64::NAN);
        // 116 280 ways to spread seven bends over fifteen angles.
        let best = brute(7, &candidates, &reach);
        let (angles, reaches, is_enough) = advised(&fit, wanted, best * 1.001, &candidates)?;
        println!("{wanted:?}: {angles:?} reach {reaches}, the best {best}");
        assert!(is_enough && angles.len() <= 7 && reaches < best * 1.001, "{angles:?}: {reaches} for {best}");
    }
    Ok(())
}

/// What tells little of a setting far away can make its interval wider: no such bends are advised.
#[test]
fn advice_is_never_worse_than_none() -> Outcome {
    let fit = TrialFit::new(&trials(
        &[30.0, 40.0, 45.0, 55.0, 70.0, 100.0],
        &[28.0, 38.0, 43.0, 53.0, 68.0, 97.0],
    ))?;
    let [low, high] = fit.setting_interval(deg(90.0), 0.95)?.ok_or("interval")?.map(to_deg);
    let line = fit.springback()?;
    let setting = (90.0 + to_deg(line.constant())) / (1.0 - line.proportional().value);
    for candidate in [30.0, 40.0, 65.0, 90.0] {
        let (_, reaches, is_enough) = advised(&fit, &[90.0], 0.05, &[candidate])?;
        assert!(
            !is_enough && reaches <= (setting - low).max(high - setting) + 1e-9,
            "{candidate}: {reaches}"
        );
    }
    Ok(())
}

#[test]
fn advice_on_what_cannot_be_is_refused() -> Outcome {
    let fit = TrialFit::new(&trials(&[30.0, 60.0, 90.0], &[28.6, 58.2, 87.4]))?;
    let code =
        |candidates: &[f64]| advised(&fit, &[60.0], 0.5, candidates).err().map(|error| error.to_string());
    for (candidates, name) in [
        (&[][..], "FIELD_MISSING"),
        (&[0.0, 90.0], "OUT_OF_RANGE"),
        (&[-0.0, 90.0], "OUT_OF_RANGE"),
        (&[-1.0], "OUT_OF_RANGE"),
        (&[f64::NAN], "NOT_A_NUMBER"),
    ] {
        assert!(
            code(candidates).is_some_and(|text| text.contains(name)),
            "{candidates:?}: {:?}",
            code(candidates)
        );
    }
    assert_eq!(code(&[90.0, 90.0, 30.0]), None);
    Ok(())
}
