use super::*;

fn trials(pairs: &[(f64, f64)]) -> Vec<Trial> {
    pairs.iter().map(|&(set, got)| Trial { set: deg(set), got: deg(got) }).collect()
}

#[test]
fn two_trials_give_the_line_through_them() {
    // By hand: springback 3.5 at 90 and 1.8 at 45, so slope 1.7/45 and constant 0.1;
    // setting = (wanted + 0.1) / (1 - 1.7/45).
    let springback = Springback::from_trials(&trials(&[(90.0, 86.5), (45.0, 43.2)])).unwrap();
    assert!((to_deg(springback.constant()) - 0.1).abs() < 1e-9);
    assert!((springback.proportional().value - 1.7 / 45.0).abs() < 1e-12);
    for (wanted, setting) in [(30.0, 31.28), (45.0, 46.87), (60.0, 62.46), (90.0, 93.64)] {
        assert!((to_deg(springback.setting(deg(wanted)).unwrap()) - setting).abs() < 0.005, "{wanted}");
    }
    // What was set comes back as what was got.
    assert!((to_deg(springback.setting(deg(86.5)).unwrap()) - 90.0).abs() < 1e-9);
    assert!(!springback.is_weak());
}

#[test]
fn more_trials_are_fitted_by_least_squares() {
    // Symmetric about the line 0.5 + 0.02 set, so the fit must return that line.
    let set = [30.0, 30.0, 90.0, 90.0];
    let off = [0.1, -0.1, 0.1, -0.1];
    let pairs: Vec<_> = set.iter().zip(off).map(|(s, o)| (*s, s - (0.5 + 0.02 * s + o))).collect();
    let springback = Springback::from_trials(&trials(&pairs)).unwrap();
    assert!((to_deg(springback.constant()) - 0.5).abs() < 1e-9);
    assert!((springback.proportional().value - 0.02).abs() < 1e-12);
}

#[test]
fn one_angle_is_weak_and_in_proportion() {
    let springback = Springback::from_trials(&trials(&[(90.0, 87.3)])).unwrap();
    assert!(springback.is_weak());
    assert!((to_deg(springback.setting(deg(45.0)).unwrap()) - 45.0 / 0.97).abs() < 1e-9);
}

#[test]
fn trials_that_make_no_sense_are_refused() {
    for pairs in [
        &[][..],
        &[(86.5, 90.0)],
        &[(90.0, 0.0)],
        &[(90.0, 88.0), (45.0, 40.0)],
        &[(90.0, 30.0), (45.0, 20.0)],
        // The line through these leaves the middle one 4 degrees off.
        &[(90.0, 86.5), (60.0, 50.0), (45.0, 43.2)],
        &[(90.0, 86.5), (90.0, 80.0)],
    ] {
        let error = Springback::from_trials(&trials(pairs)).unwrap_err();
        assert_eq!(error.code(), Code::TrialsUnusable, "{pairs:?}");
    }
    let error = Springback::from_trials(&trials(&[(f64::NAN, 1.0)])).unwrap_err();
    assert_eq!(error.code(), Code::NotANumber);
}

#[test]
fn only_an_angle_has_a_setting() {
    let springback = Springback::new(deg(1.0), ratio(0.03)).unwrap();
    for wanted in [f64::NAN, f64::INFINITY, -1.0, 1e308] {
        assert!(springback.setting(deg(wanted)).is_err(), "{wanted}");
    }
}

#[test]
fn no_bend_springs_forward() {
    // The line through these two says -12 degrees for half a degree.
    let springback = Springback::from_trials(&trials(&[(70.3, 56.3), (38.6, 34.8)])).unwrap();
    assert!(to_deg(springback.constant()) < 0.0);
    assert_eq!(to_deg(springback.setting(deg(0.5)).unwrap()).to_bits(), 0.5_f64.to_bits());
}

#[test]
fn no_bend_needs_no_setting() {
    let springback = Springback::new(deg(1.0), ratio(0.03)).unwrap();
    assert_eq!(to_deg(springback.setting(deg(0.0)).unwrap()).to_bits(), 0.0_f64.to_bits());
}

#[test]
fn the_trial_that_contradicts_the_others_is_named() {
    let mut pairs: Vec<_> =
        [30.0, 45.0, 60.0, 75.0, 90.0].iter().map(|set| (*set, set - (0.5 + 0.02 * set))).collect();
    pairs[4].1 -= 8.0; // Its weight at the end draws the line to it: the worst distance from the line is another's.
    let error = Springback::from_trials(&trials(&pairs)).unwrap_err();
    assert_eq!(error.code(), Code::TrialsUnusable);
    assert!(error.problem().got.to_string().contains("trial 5, set 90 deg, got 79.7 deg"), "{error}");
    // Of four trials any one may be it.
    let error = Springback::from_trials(&trials(&pairs[1..])).unwrap_err();
    assert!(!error.problem().got.to_string().contains("odd one"), "{error}");
}

#[test]
fn what_was_kept_comes_back_whole() {
    let made = Springback::from_trials(&trials(&[(90.0, 86.5), (45.0, 43.2)])).unwrap();
    let back = Springback::kept(made.constant(), made.proportional(), made.basis(), made.trials()).unwrap();
    assert_eq!(back, made);
    for (basis, pairs) in [(Basis::Given, &[(90.0, 86.5)][..]), (Basis::Blend, &[]), (Basis::Trials, &[])] {
        let error = Springback::kept(deg(1.0), ratio(0.02), basis, &trials(pairs)).unwrap_err();
        assert_eq!(error.code(), Code::FieldsConflict, "{}", basis.name());
    }
    assert_eq!(Basis::from_name("Blend").unwrap(), Basis::Blend);
}
