//! Intervals of springback where angles are read by hand, come from mechanics, or went forward: simulation.

#[path = "../common/bends.rs"]
mod bends;
#[path = "../common/draw.rs"]
mod draw;

use bends::{holds, trials};
use draw::{normal, uniform};
use linewright::springback::{Hardening, MaterialScatter, Mechanics, Prior, TrialFit};
use linewright::units::{Angle, deg, mm, mpa, ratio, to_deg};
use std::error::Error;

type Outcome = Result<(), Box<dyn Error>>;

/// Angles as a hand reads them, to half or whole degrees: three or four of them lie on a line in many cases, and the
/// intervals still hold the truth at least as often as they say (within the noise of the count).
#[test]
fn readings_of_a_hand_are_covered_at_least_as_often_as_said() -> Outcome {
    const RUNS: u64 = 10_000;
    let again = |sets: &[f64], times: usize| sets.repeat(times);
    // Every setting once, and some again: a rounding is the same each time, and does not average out.
    let sets = [
        vec![30.0, 60.0, 90.0],
        vec![30.0, 60.0, 90.0, 120.0],
        vec![30.0, 45.0, 60.0, 75.0, 90.0],
        vec![20.0, 30.0, 45.0, 60.0, 75.0, 90.0, 105.0, 120.0],
        again(&[30.0, 60.0, 90.0], 6),
        again(&[45.0, 90.0], 5),
        [again(&[30.0], 3), again(&[90.0], 6)].concat(),
    ];
    let mut on_a_line = 0_u32;
    for (round, (step, sigma)) in
        [(0.5, 0.1), (0.5, 0.2), (1.0, 0.05), (1.0, 0.2), (1.0, 0.3)].into_iter().enumerate()
    {
        for sets in &sets {
            let mut covered = [0_u32; 2];
            for run in 0..RUNS {
                let at = (u64::try_from(round)? * RUNS + run) * 32;
                // Where the steps lie against the truth is chance too.
                let (a, b) = (1.0 + 2.0 * uniform(4 * at + 60), 0.01 + 0.03 * uniform(4 * at + 61));
                let gots: Vec<f64> = (at..)
                    .zip(sets)
                    .map(|(i, set)| ((set - a - b * set - sigma * normal(i)) / step).round() * step)
                    .collect();
                let fit = TrialFit::new(&trials(sets, &gots))?;
                let scatter = to_deg(fit.scatter().ok_or("scatter")?);
                assert!(
                    fit.reading().is_some_and(|read| to_deg(read) >= step)
                        && scatter >= step / 12.0_f64.sqrt()
                );
                on_a_line += u32::from((scatter - step / 12.0_f64.sqrt()).abs() < 1e-9);
                let setting = fit.setting_interval(deg(90.0), 0.95)?;
                covered[0] +=
                    u32::from(setting.is_none_or(|interval| holds(interval, (90.0 + a) / (1.0 - b))));
                covered[1] += u32::from(fit.constant_interval(0.95)?.is_some_and(|i| holds(i, a)));
            }
            #[expect(clippy::cast_precision_loss, reason = "small counts")]
            let shares = covered.map(|count| f64::from(count) / RUNS as f64);
            println!("{} bends read to {step} deg, sigma {sigma}: {shares:?}", sets.len());
            assert!(
                shares.iter().all(|share| *share >= 0.94),
                "{} bends, {step}, {sigma}: {shares:?}",
                sets.len()
            );
        }
    }
    assert!(on_a_line > 10_000, "{on_a_line}");
    Ok(())
}

/// One tube after the other: on each of them intervals hold as often as they say. Springback that changes by less than a step
/// over all settings is rounded to one side at all of them, and does not average out.
#[test]
fn readings_of_a_hand_are_covered_on_every_tube() -> Outcome {
    const RUNS: u64 = 600;
    let every = |from: u32, to: u32, by: usize| (from..=to).step_by(by).map(f64::from).collect::<Vec<f64>>();
    let sets = [
        every(20, 120, 10),
        every(30, 120, 15),
        vec![30.0, 35.0, 40.0, 80.0, 85.0, 90.0],
        vec![45.0, 85.0, 86.0, 87.0, 88.0, 89.0, 90.0],
        every(45, 90, 5),
    ];
    let (mut worst, mut at) = (1.0_f64, 0);
    for (number, sets) in sets.iter().enumerate() {
        for step in [1.0, 0.5, 1.0 / 3.0] {
            for (a, b) in [(1.8, 0.005), (0.6, 0.008), (1.4, 0.0125), (0.9, 0.02), (2.2, 0.03)] {
                for sigma in [0.05, 0.2, 0.5] {
                    let (mut covered, mut bent, mut made) = ([0_u32; 2], 0_u32, 0.0);
                    for _ in 0..RUNS {
                        let gots: Vec<f64> = sets
                            .iter()
                            .map(|set| {
                                at += 1;
                                ((set - a - b * set - sigma * normal(at)) / step).round() * step
                            })
                            .collect();
                        // One far off the line of all is refused, not fitted.
                        let Ok(fit) = TrialFit::new(&trials(sets, &gots)) else { continue };
                        made += 1.0;
                        let right = (90.0 + a) / (1.0 - b);
                        covered[0] += u32::from(
                            fit.setting_interval(deg(90.0), 0.95)?.is_some_and(|i| holds(i, right)),
                        );
                        covered[1] += u32::from(fit.constant_interval(0.95)?.is_some_and(|i| holds(i, a)));
                        bent += u32::from(fit.is_bent() == Some(true));
                    }
                    let [share, constant, bent] = [covered[0], covered[1], bent].map(|n| f64::from(n) / made);
                    worst = worst.min(share).min(constant);
                    assert!(
                        made >= 580.0 && share >= 0.925 && constant >= 0.925 && bent <= 0.09,
                        "sets {number}, step {step}, a {a}, b {b}, sigma {sigma}: {share}, {constant}, {bent} bent"
                    );
                }
            }
        }
    }
    println!("least cover of any tube: {worst}");
    Ok(())
}

/// A step that is seen in most readings is the step of all: a third of a degree, and half degrees with one finer reading.
#[test]
fn the_step_is_that_of_most_readings() -> Outcome {
    for (gots, step) in [
        ([28.0 + 1.0 / 3.0, 57.0 + 2.0 / 3.0, 87.0], 1.0 / 3.0),
        ([28.33, 57.67, 87.0], 1.0 / 3.0),
        ([28.17, 57.67, 86.83], 1.0 / 6.0),
        ([28.0, 57.5, 87.01], 0.5),
        ([28.3, 57.4, 87.1], 0.1),
    ] {
        let fit = TrialFit::new(&trials(&[30.0, 60.0, 90.0], &gots))?;
        let read = to_deg(fit.reading().ok_or("no step")?);
        assert!((read - step).abs() < 1e-9, "{gots:?}: {read}");
        let [low, high] = fit.setting_interval(deg(90.0), 0.95)?.ok_or("interval")?.map(to_deg);
        assert!(high - low > step, "{gots:?}: {low} to {high}");
    }
    Ok(())
}

/// Metals drawn as the prior of mechanics believes, with an arm on the tool or without: the interval of the setting holds
/// what the metal needs. Constant and proportional part come from one moment; taken for independent they cover 0.86.
#[test]
fn the_prior_of_mechanics_covers_the_metals_it_believes_in() -> Outcome {
    const RUNS: u64 = 8_000;
    let tube = |strength: f64, modulus: f64| {
        let law = Hardening::PerfectlyPlastic { yield_strength: mpa(250.0 * strength) };
        Mechanics::new(mm(4.7625), mm(0.7112), mpa(207_000.0 * modulus), law)
    };
    let scatter = MaterialScatter { strength: ratio(0.2), modulus: ratio(0.05) };
    for (round, arm) in [0.0, 25.0, 60.0].into_iter().enumerate() {
        let prior = tube(1.0, 1.0)?.prior(mm(14.2875), mm(arm), scatter, deg(0.05), 200)?;
        assert!(arm == 0.0 || prior.correlation.value > 0.9, "{arm}: {}", prior.correlation.value);
        let fit = TrialFit::with_prior(prior, &[])?;
        let interval = fit.setting_interval(deg(90.0), 0.95)?.ok_or("interval")?;
        let mut covered = 0_u32;
        for run in 0..RUNS {
            let at = (u64::try_from(round)? * RUNS + run) * 4;
            let metal = tube(1.0 + 0.2 * normal(at).clamp(-4.0, 4.0), 1.0 + 0.05 * normal(at + 1))?;
            let line = metal.bend(mm(14.2875))?.springback(mm(arm))?;
            // The arm of the real tool is off by what one bend scatters, as the prior has it.
            let constant = to_deg(line.constant()) + 0.05 * normal(at + 2);
            covered += u32::from(holds(interval, (90.0 + constant) / (1.0 - line.proportional().value)));
        }
        #[expect(clippy::cast_precision_loss, reason = "small counts")]
        let share = f64::from(covered) / RUNS as f64;
        println!("arm {arm} mm: {share}");
        assert!((share - 0.95).abs() <= 0.015, "arm {arm}: {share}");
    }
    Ok(())
}

/// A tube that springs back by next to nothing: one in ten readings goes forward. Left out, they would take the small ones
/// away and leave the large.
#[test]
fn readings_that_went_forward_belong_to_the_fit() -> Outcome {
    const RUNS: u64 = 20_000;
    let sets = [30.0, 45.0, 60.0, 75.0, 90.0, 105.0];
    let (b, sigma) = (0.007_33, 0.5);
    let right = 60.0 / (1.0 - b);
    let (mut covered, mut forward, mut refused) = ([0_u32; 2], 0_u32, 0_u32);
    for run in 0..RUNS {
        let gots: Vec<f64> =
            (run * 16..).zip(sets).map(|(i, set)| set - (b * set + sigma * normal(i))).collect();
        forward += u32::from(gots.iter().zip(sets).any(|(got, set)| *got > set));
        let Ok(fit) = TrialFit::new(&trials(&sets, &gots)) else {
            refused += 1;
            continue;
        };
        let slope = fit.proportional_interval(0.95)?.ok_or("slope")?.map(|share| share.value);
        covered[0] += u32::from((slope[0]..=slope[1]).contains(&b));
        covered[1] += u32::from(fit.setting_interval(deg(60.0), 0.95)?.is_none_or(|i| holds(i, right)));
    }
    #[expect(clippy::cast_precision_loss, reason = "small counts")]
    let shares = covered.map(|count| f64::from(count) / RUNS as f64);
    println!("{forward} of {RUNS} with a forward reading, {refused} refused: {shares:?}");
    assert!(forward > 10_000 && refused < 40, "{forward} {refused}");
    assert!(shares.iter().all(|share| (share - 0.95).abs() <= 0.01), "{shares:?}");
    // Trials that contradict a belief are no scatter of it, and are named.
    let prior = Prior {
        constant: [deg(1.0), deg(0.5)],
        proportional: [ratio(0.02), ratio(0.01)],
        correlation: ratio(0.0),
        scatter: deg(0.3),
        worth: 4,
    };
    let error = TrialFit::with_prior(prior, &trials(&[90.0], &[60.0])).err().ok_or("taken")?;
    assert_eq!(error.code().name(), "TRIALS_UNUSABLE");
    assert!(error.to_string().contains("where the prior expects"), "{error}");
    assert!(TrialFit::with_prior(prior, &trials(&[90.0], &[86.0])).is_ok());
    Ok(())
}

/// A belief, and trials read to a whole degree: their rounding counts beside the scatter of a bend, in what is expected of a
/// trial, in its weight and in the interval.
#[test]
fn a_prior_allows_for_readings_of_a_hand() -> Outcome {
    const RUNS: u64 = 10_000;
    for (round, (spread, scatter, worth, sets)) in [
        ([0.5, 0.01], 0.3, 4, &[90.0][..]),
        ([0.5, 0.01], 0.3, 4, &[45.0, 90.0, 120.0]),
        ([0.05, 0.001], 0.05, 50, &[30.0, 60.0, 90.0]),
        ([0.5, 0.01], 0.3, 20, &[60.0, 60.0, 60.0, 60.0, 90.0, 90.0, 90.0, 90.0]),
        ([0.5, 0.01], 0.1, 20, &[70.0, 72.0, 74.0, 76.0, 78.0, 80.0, 82.0, 84.0, 86.0, 88.0, 90.0]),
    ]
    .into_iter()
    .enumerate()
    {
        let prior = Prior {
            constant: [deg(1.5), deg(spread[0])],
            proportional: [ratio(0.03), ratio(spread[1])],
            correlation: ratio(0.0),
            scatter: deg(scatter),
            worth,
        };
        let (mut covered, mut refused) = (0_u32, 0_u32);
        for run in 0..RUNS {
            let at = (u64::try_from(round)? * RUNS + run) * 64;
            let chi: f64 = (0..u64::try_from(worth)?).map(|i| normal(at * 4 + i) * normal(at * 4 + i)).sum();
            #[expect(clippy::cast_precision_loss, reason = "a small count")]
            let sigma = scatter * (worth as f64 / chi).sqrt();
            let a = 1.5 + spread[0] * normal(at * 4 + 100);
            let b = 0.03 + spread[1] * normal(at * 4 + 101);
            let gots: Vec<f64> = (at * 4 + 110..)
                .zip(sets)
                .map(|(i, set)| (set - a - b * set - sigma * normal(i)).round())
                .collect();
            let Ok(fit) = TrialFit::with_prior(prior, &trials(sets, &gots)) else {
                refused += 1;
                continue;
            };
            let right = f64::max((90.0 + a) / (1.0 - b), 90.0);
            covered += u32::from(fit.setting_interval(deg(90.0), 0.95)?.is_none_or(|i| holds(i, right)));
        }
        #[expect(clippy::cast_precision_loss, reason = "small counts")]
        let share = f64::from(covered) / (RUNS as f64 - f64::from(refused));
        println!("{} trials beside a prior worth {worth}: {share}, {refused} refused", sets.len());
        assert!(refused < 150 && share >= 0.94, "{sets:?}: {share}, {refused}");
    }
    Ok(())
}

/// Bends repeated at one setting are rounded alike: advice does not count on them.
#[test]
fn advice_does_not_average_a_rounding_away() -> Outcome {
    let fit = TrialFit::new(&trials(&[30.0, 60.0, 90.0], &[28.0, 57.0, 87.0]))?;
    let one = fit.advice(&[deg(90.0)], deg(0.25), 0.95, &[deg(90.0)])?;
    assert!(!one.is_enough, "{one:?}");
    // However often it is repeated, one setting is known no better than a reading of it.
    let step = 1.0 / 12.0_f64.sqrt();
    assert!(to_deg(one.reaches) > step, "{one:?}");
    let candidates: Vec<Angle> = (4..=24).map(|i| deg(5.0 * f64::from(i))).collect();
    let many = fit.advice(&[deg(90.0)], deg(0.25), 0.95, &candidates)?;
    assert!(many.reaches < one.reaches, "{many:?}");
    Ok(())
}
