//! A belief, alone and beside trial bends: what it promises by simulation, and what it leaves where nothing was tried.

#[path = "../common/bends.rs"]
mod bends;
#[path = "../common/draw.rs"]
mod draw;

use bends::{holds, trials};
use draw::normal;
use linewright::springback::{Hardening, MaterialScatter, Mechanics, Prior, Trial, TrialFit};
use linewright::units::{deg, mm, mpa, ratio, to_deg};
use std::error::Error;

type Outcome = Result<(), Box<dyn Error>>;

/// The springback at a setting, from the middles of the intervals where the line is no springback for a bench.
fn on_line(fit: &TrialFit, setting: f64) -> Result<f64, Box<dyn Error>> {
    if let Ok(line) = fit.springback() {
        return Ok(to_deg(line.constant()) + line.proportional().value * setting);
    }
    let [low, high] = fit.constant_interval(0.95)?.ok_or("constant")?.map(to_deg);
    let [least, most] = fit.proportional_interval(0.95)?.ok_or("slope")?.map(|share| share.value);
    Ok((low + high) / 2.0 + (least + most) / 2.0 * setting)
}

/// With a prior the promise is kept on average over what the prior believes, not for every single truth.
#[test]
fn blended_intervals_cover_on_average_over_their_prior() -> Outcome {
    const RUNS: u64 = 16_000;
    let (worth, scatter) = (4, 0.3);
    for count in [0, 1, 2, 4] {
        let (mut covered, mut refused) = ([0_u32; 4], 0_u32);
        for run in 0..RUNS {
            let at = (count * RUNS + run) * 64;
            // The scatter that the prior believes in: its square is worth x scatter^2 over a chi-square number.
            let chi: f64 = (0..worth).map(|i| normal(at + i) * normal(at + i)).sum();
            let sigma = scatter * (4.0 / chi).sqrt();
            let a = 1.0 + 0.4 * normal(at + 10);
            let b = 0.015 + 0.004 * normal(at + 11);
            let bends: Vec<Trial> = (0..count)
                .map(|i| {
                    #[expect(clippy::cast_precision_loss, reason = "small counts")]
                    let set = 40.0 + 25.0 * i as f64;
                    let got = set - (a + b * set + sigma * normal(at + 20 + i));
                    Trial { set: deg(set), got: deg(got) }
                })
                .collect();
            let prior = Prior {
                constant: [deg(1.0), deg(0.4)],
                proportional: [ratio(0.015), ratio(0.004)],
                correlation: ratio(0.0),
                scatter: deg(scatter),
                worth: 4,
            };
            // A trial beyond what the prior can be right beside is refused, and nothing promised; the rarer the better.
            let Ok(fit) = TrialFit::with_prior(prior, &bends) else {
                refused += 1;
                continue;
            };
            // A truth may be drawn that springs forward; no setting does.
            let right = f64::max((90.0 + a) / (1.0 - b), 90.0);
            covered[0] += u32::from(holds(fit.constant_interval(0.95)?.ok_or("constant")?, a));
            let slope = fit.proportional_interval(0.95)?.ok_or("slope")?.map(|share| share.value);
            covered[1] += u32::from((slope[0]..=slope[1]).contains(&b));
            covered[2] += u32::from(
                fit.setting_interval(deg(90.0), 0.95)?.is_none_or(|interval| holds(interval, right)),
            );
            // One more bend at 90 degrees, against the line as the page draws it.
            let next = a + b * 90.0 + sigma * normal(at + 40);
            let half = to_deg(fit.next_bend(deg(90.0), 0.95)?.ok_or("scatter")?);
            covered[3] += u32::from((next - on_line(&fit, 90.0)?).abs() <= half);
        }
        #[expect(clippy::cast_precision_loss, reason = "small counts")]
        let shares = covered.map(|count| f64::from(count) / (RUNS as f64 - f64::from(refused)));
        println!("{count} bends and a prior: {shares:?}, {refused} of {RUNS} refused");
        assert!(refused < 160 * u32::try_from(count)?.max(1), "{refused}");
        assert!(shares.iter().all(|share| (share - 0.95).abs() <= 0.01), "{count} bends: {shares:?}");
    }
    Ok(())
}

/// Trials that repeat ten times better than believed make the angle surer that they were made at, and no other: with the line
/// at 90 degrees known, its normal distribution leaves so much at 30 degrees, and intervals cover.
#[test]
fn what_was_not_tried_stays_as_doubtful_as_believed() -> Outcome {
    const RUNS: u64 = 4_000;
    let (spread, share) = (0.4, 0.004);
    let prior = Prior {
        constant: [deg(1.0), deg(spread)],
        proportional: [ratio(0.015), ratio(share)],
        correlation: ratio(0.0),
        scatter: deg(0.3),
        worth: 4,
    };
    let joint = |x: f64, y: f64| spread * spread + share * share * x * y;
    let least = 1.96 * (joint(30.0, 30.0) - joint(30.0, 90.0).powi(2) / joint(90.0, 90.0)).sqrt();
    let mut covered = [0_u32; 2];
    for run in 0..RUNS {
        let at = run * 32;
        let (a, b) = (1.0 + spread * normal(at), 0.015 + share * normal(at + 1));
        let gots: Vec<f64> = (at + 2..at + 12).map(|i| 90.0 - a - b * 90.0 - 0.03 * normal(i)).collect();
        let Ok(fit) = TrialFit::with_prior(prior, &trials(&[90.0; 10], &gots)) else { continue };
        for (at, wanted) in [30.0, 87.0].into_iter().enumerate() {
            let right = f64::max((wanted + a) / (1.0 - b), wanted);
            let interval = fit.setting_interval(deg(wanted), 0.95)?.ok_or("interval")?;
            covered[at] += u32::from(holds(interval, right));
            let [low, high] = interval.map(to_deg);
            let half = (high - low) / 2.0;
            // Unless springing back by less than nothing is cut off.
            assert!(
                at == 1 || low <= wanted || (half > 0.98 * least && half < 1.15 * least),
                "{half} for {least}"
            );
            assert!(at == 0 || half < 0.2, "{half}");
        }
    }
    #[expect(clippy::cast_precision_loss, reason = "small counts")]
    let shares = covered.map(|count| f64::from(count) / RUNS as f64);
    println!("a scatter a tenth of the believed one: {shares:?}");
    assert!((0.94..0.975).contains(&shares[0]) && shares[1] >= 0.94, "{shares:?}");
    Ok(())
}

#[test]
fn trials_outweigh_the_prior_as_they_grow() -> Outcome {
    let prior = Prior {
        constant: [deg(0.5), deg(0.5)],
        proportional: [ratio(0.01), ratio(0.005)],
        correlation: ratio(0.0),
        scatter: deg(0.3),
        worth: 2,
    };
    let mut last = -1.0;
    for count in 0..8_u32 {
        let sets: Vec<f64> = (0..count).map(|i| 30.0 + 12.0 * f64::from(i)).collect();
        let gots: Vec<f64> = sets.iter().map(|set| set - 1.2 - 0.015 * set).collect();
        let fit = TrialFit::with_prior(prior, &trials(&sets, &gots))?;
        let weight = fit.weight_of_trials(deg(80.0))?.value;
        assert!(weight > last, "{count}: {weight}");
        last = weight;
        if count == 0 {
            assert!(weight.abs() < 1e-12 && (to_deg(fit.springback()?.constant()) - 0.5).abs() < 1e-12);
        }
    }
    assert!(last > 0.9 && last < 1.0);
    Ok(())
}

/// Where the belief is right, one set of trials in twenty contradicts it and one in five hundred is refused (in a thousand for
/// all together, and in a thousand for each alone).
#[test]
fn a_right_belief_is_seldom_contradicted() -> Outcome {
    const RUNS: u64 = 8_000;
    for (round, (worth, correlation, sets)) in [
        (4, 0.0, &[90.0, 90.0, 90.0][..]),
        (1, 0.9, &[45.0, 90.0]),
        (20, -0.5, &[30.0, 60.0, 90.0, 120.0]),
        (2, 0.0, &[30.0, 30.0, 60.0, 75.0, 90.0, 90.0, 120.0, 120.0]),
    ]
    .into_iter()
    .enumerate()
    {
        let prior = Prior {
            constant: [deg(3.0), deg(0.4)],
            proportional: [ratio(0.03), ratio(0.004)],
            correlation: ratio(correlation),
            scatter: deg(0.3),
            worth,
        };
        let (mut contradicted, mut refused) = (0_u32, 0_u32);
        for run in 0..RUNS {
            let at = (u64::try_from(round)? * RUNS + run) * 64;
            let chi: f64 = (0..u64::try_from(worth)?).map(|i| normal(at + i) * normal(at + i)).sum();
            #[expect(clippy::cast_precision_loss, reason = "a small count")]
            let sigma = 0.3 * (worth as f64 / chi).sqrt();
            let (one, other) = (normal(at + 30), normal(at + 31));
            let a = 3.0 + 0.4 * one;
            let b = 0.03 + 0.004 * (correlation * one + (1.0_f64 - correlation * correlation).sqrt() * other);
            let gots: Vec<f64> =
                (at + 32..).zip(sets).map(|(i, set)| set - a - b * set - sigma * normal(i)).collect();
            match TrialFit::with_prior(prior, &trials(sets, &gots)) {
                Ok(fit) => contradicted += u32::from(fit.is_contradicted().ok_or("unknown")?),
                Err(_) => refused += 1,
            }
        }
        #[expect(clippy::cast_precision_loss, reason = "small counts")]
        let share = |count: u32| f64::from(count) / RUNS as f64;
        println!("{sets:?}: contradicted {}, refused {}", share(contradicted), share(refused));
        assert!(
            (share(contradicted + refused) - 0.05).abs() < 0.011,
            "{sets:?}: {}",
            share(contradicted + refused)
        );
        // Scatters of a belief worth one bend can be such that trials spring forward, which is refused as well.
        assert!(share(refused) < if worth < 4 { 0.04 } else { 0.004 }, "{sets:?}: {}", share(refused));
    }
    Ok(())
}

/// Read coarsely, trials at two angles can each be rounded to a side of their own: no contradiction, however often repeated.
#[test]
fn a_rounding_contradicts_no_belief() -> Outcome {
    const RUNS: u64 = 600;
    for (round, (spreads, scatter, worth, sets)) in [
        ([0.1, 0.001], 0.05, 50, [60.0, 75.0].repeat(8)),
        ([0.3, 0.004], 0.1, 5, [45.0, 90.0].repeat(5)),
        ([0.3, 0.003], 0.1, 10, [30.0, 120.0].repeat(20)),
        ([0.3, 0.003], 0.1, 10, vec![90.0; 12]),
    ]
    .into_iter()
    .enumerate()
    {
        let prior = Prior {
            constant: [deg(1.0), deg(spreads[0])],
            proportional: [ratio(0.03), ratio(spreads[1])],
            correlation: ratio(0.0),
            scatter: deg(scatter),
            worth,
        };
        let mut contradicted = 0_u32;
        for run in 0..RUNS {
            let at = (u64::try_from(round)? * RUNS + run) * 128;
            let (a, b) = (1.0 + spreads[0] * normal(at), 0.03 + spreads[1] * normal(at + 1));
            let gots: Vec<f64> = (at + 2..)
                .zip(&sets)
                .map(|(i, set)| (set - a - b * set - scatter * normal(i)).round())
                .collect();
            let fit = TrialFit::with_prior(prior, &trials(&sets, &gots));
            contradicted += u32::from(fit.map_or(true, |fit| fit.is_contradicted() == Some(true)));
        }
        #[expect(clippy::cast_precision_loss, reason = "small counts")]
        let share = f64::from(contradicted) / RUNS as f64;
        println!("{} trials read to a degree: contradicted {share}", sets.len());
        assert!(share < 0.05, "{sets:?}: {share}");
    }
    Ok(())
}

/// Steel that is far stronger than its least: trials that agree with each other are no scatter of a belief from mechanics.
#[test]
fn trials_that_agree_against_a_belief_are_refused_or_named() -> Outcome {
    let law = Hardening::PerfectlyPlastic { yield_strength: mpa(250.0) };
    let tube = Mechanics::new(mm(4.7625), mm(0.7112), mpa(207_000.0), law)?;
    let scatter = MaterialScatter { strength: ratio(0.2), modulus: ratio(0.03) };
    let prior = tube.prior(mm(14.2875), mm(0.0), scatter, deg(0.3), 4)?;
    // The belief expects 1.0 +- 0.4 degrees at 90.
    for (gots, is_refused) in [
        (&[86.8, 86.9, 86.7][..], true),
        (&[86.8, 86.9, 86.7, 86.85, 86.75, 86.8], true),
        (&[86.8], false),
        (&[87.7, 87.6], false),
    ] {
        match TrialFit::with_prior(prior, &trials(&vec![90.0; gots.len()], gots)) {
            Ok(fit) => assert!(!is_refused && fit.is_contradicted() == Some(true), "{gots:?}"),
            Err(error) => {
                assert!(
                    is_refused && error.to_string().contains("where the prior expects"),
                    "{gots:?}: {error}"
                );
            }
        }
    }
    let fit = TrialFit::with_prior(prior, &trials(&[90.0, 90.0], &[88.7, 88.8]))?;
    assert_eq!(fit.is_contradicted(), Some(false));
    assert_eq!(TrialFit::with_prior(prior, &[])?.is_contradicted(), None);
    Ok(())
}

/// For one trial the weight is how much of the way to it the line went, however far it lies.
#[test]
fn the_weight_is_how_far_the_line_went() -> Outcome {
    let prior = Prior {
        constant: [deg(0.0), deg(0.2)],
        proportional: [ratio(0.01), ratio(0.003)],
        correlation: ratio(0.2),
        scatter: deg(0.3),
        worth: 4,
    };
    for got in [89.003, 88.503, 88.003, 87.503, 87.003] {
        let fit = TrialFit::with_prior(prior, &trials(&[90.0], &[got]))?;
        let [low, high] = fit.constant_interval(0.95)?.ok_or("constant")?.map(to_deg);
        assert!(low < high);
        let went = (on_line(&fit, 90.0)? - 0.9) / (90.0 - got - 0.9);
        let weight = fit.weight_of_trials(deg(90.0))?.value;
        assert!((weight - went).abs() < 1e-9 && weight > 0.05, "{got}: {weight} for {went}");
    }
    Ok(())
}
