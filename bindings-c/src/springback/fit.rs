//! What trial bends say about springback, with intervals, and which further bends would say more.

use super::{fill_trials, lw_springback, trials};
use crate::argument::{ArrayNames, fill, fill_text, given, given_mut, interval, known, list, options, put};
use crate::call::{call, lw_status};
use crate::springback::calibration::lw_calibration;
use crate::units::{lw_angle, quantities};
use linewright::card::springback_page;
use linewright::springback::{Prior, TrialFit};
use linewright::units::ratio;
use std::ffi::c_char;
use std::mem::MaybeUninit;

/// The line through trial bends with its uncertainty.
#[derive(Debug)]
pub struct lw_trial_fit(TrialFit);

/// What is believed about springback before any trial. Set size to sizeof(lw_prior). Spreads and scatter are one standard
/// deviation each: at least 0.001 degrees, and 0.000 01 of the proportional part.
///
/// Both spreads are what they say, whatever the trials scatter: trials that repeat well make the angles surer that they were
/// made at, and what was only believed stays as doubtful as it was believed to be.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct lw_prior {
    /// sizeof(lw_prior).
    pub size: usize,
    /// Expected constant part.
    pub constant: lw_angle,
    /// How far off it may be.
    pub constant_spread: lw_angle,
    /// Expected proportional part, a plain ratio.
    pub proportional: f64,
    /// How far off it may be.
    pub proportional_spread: f64,
    /// How the two are off together, from -0.999 to 0.999; 0 where one says nothing of the other.
    pub correlation: f64,
    /// Scatter of one bend.
    pub scatter: lw_angle,
    /// Number of bends that the scatter is believed like: 1 to 10 000.
    pub worth: usize,
}

impl From<Prior> for lw_prior {
    fn from(prior: Prior) -> Self {
        lw_prior {
            size: size_of::<lw_prior>(),
            constant: prior.constant[0].into(),
            constant_spread: prior.constant[1].into(),
            proportional: prior.proportional[0].value,
            proportional_spread: prior.proportional[1].value,
            correlation: prior.correlation.value,
            scatter: prior.scatter.into(),
            worth: prior.worth,
        }
    }
}

impl From<&lw_prior> for Prior {
    fn from(prior: &lw_prior) -> Self {
        Prior {
            constant: [prior.constant.into(), prior.constant_spread.into()],
            proportional: [ratio(prior.proportional), ratio(prior.proportional_spread)],
            correlation: ratio(prior.correlation),
            scatter: prior.scatter.into(),
            worth: prior.worth,
        }
    }
}

/// The line through n trial bends, at least two at clearly different angles; see lw_springback_from_trials. Free it with
/// lw_trial_fit_free.
///
/// Errors: LW_TRIALS_UNUSABLE, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_trial_fit_new(
    set: *const lw_angle,
    got: *const lw_angle,
    n: usize,
    fit: Option<&mut MaybeUninit<Box<lw_trial_fit>>>,
) -> lw_status {
    call(|| {
        let made = TrialFit::new(&unsafe { trials(set, got, n) }?)?;
        put(fit, "fit", Box::new(lw_trial_fit(made)))
    })
}

/// A belief and n trial bends, none will do, weighed against each other by how sure each is. Free it with
/// lw_trial_fit_free.
///
/// Errors: LW_STRUCT_SIZE, LW_TRIALS_UNUSABLE, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_trial_fit_with_prior(
    prior: *const lw_prior,
    set: *const lw_angle,
    got: *const lw_angle,
    n: usize,
    fit: Option<&mut MaybeUninit<Box<lw_trial_fit>>>,
) -> lw_status {
    call(|| {
        let belief = unsafe { options(prior, "prior") }?;
        let made = TrialFit::with_prior(belief.into(), &unsafe { trials(set, got, n) }?)?;
        put(fit, "fit", Box::new(lw_trial_fit(made)))
    })
}

/// The springback, for a bench. Free it with lw_springback_free.
///
/// Errors: LW_OUT_OF_RANGE where the line is no springback.
#[unsafe(no_mangle)]
pub extern "C" fn lw_trial_fit_springback(
    fit: Option<&lw_trial_fit>,
    springback: Option<&mut MaybeUninit<Box<lw_springback>>>,
) -> lw_status {
    call(|| {
        let line = given(fit, "fit")?.0.springback()?;
        put(springback, "springback", Box::new(lw_springback(line)))
    })
}

/// The trials it was made of: fills `set` and `got`, each with room for cap angles; none where there is only a belief. `need` is
/// their number.
///
/// Errors: LW_SPACE_TOO_SMALL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_trial_fit_trials(
    fit: Option<&lw_trial_fit>,
    set: *mut lw_angle,
    got: *mut lw_angle,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let trials = || Ok(given(fit, "fit")?.0.trials());
    call(|| unsafe { fill_trials(set, got, cap, need, trials) })
}

/// What was believed before them. The struct is written whole, its size too.
///
/// Errors: LW_NOT_KNOWN where nothing was.
#[unsafe(no_mangle)]
pub extern "C" fn lw_trial_fit_prior(
    fit: Option<&lw_trial_fit>,
    prior: Option<&mut MaybeUninit<lw_prior>>,
) -> lw_status {
    call(|| {
        let belief = given(fit, "fit")?.0.prior().copied();
        let output = given_mut(prior, "prior")?;
        output.write(known(belief, "prior")?.into());
        Ok(())
    })
}

/// The step that the angles left were read to, as their numbers show: the coarsest of 1, 1/2, 1/3, 1/4, 1/5, 1/6, 1/10,
/// 1/20, 1/60, 1/50 and 1/100 degree that they are multiples of. A minority read far finer does not count.
///
/// Errors: LW_NOT_KNOWN where there is none, and without trials.
#[unsafe(no_mangle)]
pub extern "C" fn lw_trial_fit_reading(
    fit: Option<&lw_trial_fit>,
    reading: Option<&mut MaybeUninit<lw_angle>>,
) -> lw_status {
    call(|| put(reading, "reading", known(given(fit, "fit")?.0.reading(), "reading")?.into()))
}

/// Scatter of one bend, one standard deviation. Without a prior it is at least what the rounding of a reading makes, its step
/// (0.001 degrees where none shows) divided by the root of 12; with one, that of the mean precision of all that it may be.
///
/// Errors: LW_NOT_KNOWN for two trials without a prior, which lie on any line.
#[unsafe(no_mangle)]
pub extern "C" fn lw_trial_fit_scatter(
    fit: Option<&lw_trial_fit>,
    scatter: Option<&mut MaybeUninit<lw_angle>>,
) -> lw_status {
    call(|| {
        let found = given(fit, "fit")?.0.scatter();
        let output = given_mut(scatter, "scatter")?;
        output.write(known(found, "scatter")?.into());
        Ok(())
    })
}

/// Standard errors of the constant and of the proportional part.
///
/// Errors: LW_NOT_KNOWN for two trials without a prior.
#[unsafe(no_mangle)]
pub extern "C" fn lw_trial_fit_standard_errors(
    fit: Option<&lw_trial_fit>,
    constant: Option<&mut MaybeUninit<lw_angle>>,
    proportional: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| {
        let errors = given(fit, "fit")?.0.standard_errors();
        let constant = given_mut(constant, "constant")?;
        let proportional = given_mut(proportional, "proportional")?;
        let (of_constant, of_proportional) = known(errors, "standard_errors")?;
        constant.write(of_constant.into());
        proportional.write(of_proportional.value);
        Ok(())
    })
}

/// Interval of the constant part at a chance such as 0.95.
///
/// Errors: LW_NOT_KNOWN for two trials without a prior, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE for the chance.
#[unsafe(no_mangle)]
pub extern "C" fn lw_trial_fit_constant_interval(
    fit: Option<&lw_trial_fit>,
    chance: f64,
    low: Option<&mut MaybeUninit<lw_angle>>,
    high: Option<&mut MaybeUninit<lw_angle>>,
) -> lw_status {
    call(|| {
        let fit = &given(fit, "fit")?.0;
        interval(low, high, || Ok(fit.constant_interval(chance)?.map(|ends| ends.map(Into::into))))
    })
}

/// Interval of the proportional part at a chance. Errors: as lw_trial_fit_constant_interval.
#[unsafe(no_mangle)]
pub extern "C" fn lw_trial_fit_proportional_interval(
    fit: Option<&lw_trial_fit>,
    chance: f64,
    low: Option<&mut MaybeUninit<f64>>,
    high: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| {
        let fit = &given(fit, "fit")?.0;
        interval(low, high, || Ok(fit.proportional_interval(chance)?.map(|ends| ends.map(|end| end.value))))
    })
}

/// Interval of the right setting for a wanted angle at a chance (Fieller's).
///
/// Neither end is ever below the wanted angle.
///
/// Errors: LW_NOT_KNOWN for two trials without a prior, and where the trials say so little that it has no end, or that all of it
/// would spring forward;
/// LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_trial_fit_setting_interval(
    fit: Option<&lw_trial_fit>,
    wanted: lw_angle,
    chance: f64,
    low: Option<&mut MaybeUninit<lw_angle>>,
    high: Option<&mut MaybeUninit<lw_angle>>,
) -> lw_status {
    call(|| {
        let fit = &given(fit, "fit")?.0;
        let found = || fit.setting_interval(wanted.into(), chance);
        interval(low, high, || Ok(found()?.map(|ends| ends.map(Into::into))))
    })
}

/// How far the next bend at a setting may land from what the line says, either way, at a chance, read as those before.
///
/// Errors: LW_NOT_KNOWN for two trials without a prior, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_trial_fit_next_bend(
    fit: Option<&lw_trial_fit>,
    setting: lw_angle,
    chance: f64,
    half_width: Option<&mut MaybeUninit<lw_angle>>,
) -> lw_status {
    call(|| {
        let fit = &given(fit, "fit")?.0;
        let output = given_mut(half_width, "half_width")?;
        output.write(known(fit.next_bend(setting.into(), chance)?, "half_width")?.into());
        Ok(())
    })
}

/// Share of what is known at a setting that comes from the trials: 1 without a prior, 0 without trials. It is
/// the share of the belief's variance there that the trials took away: for one trial there, how much of the way to it the line
/// went.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_trial_fit_weight_of_trials(
    fit: Option<&lw_trial_fit>,
    setting: lw_angle,
    weight: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| put(weight, "weight", given(fit, "fit")?.0.weight_of_trials(setting.into())?.value))
}

/// The trial that does not belong to the others: `number` counts from 1, and is 0 where none stands out, where there are
/// fewer than five, and with a prior.
#[unsafe(no_mangle)]
pub extern "C" fn lw_trial_fit_outlier(
    fit: Option<&lw_trial_fit>,
    number: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| put(number, "number", given(fit, "fit")?.0.outlier().map_or(0, |index| index + 1)))
}

/// Whether the trials bend away from a straight line: 1 or 0.
///
/// Errors: LW_NOT_KNOWN for fewer than five trials at three or more angles, and with a prior.
#[unsafe(no_mangle)]
pub extern "C" fn lw_trial_fit_is_bent(
    fit: Option<&lw_trial_fit>,
    is_bent: Option<&mut MaybeUninit<i32>>,
) -> lw_status {
    call(|| {
        let found = given(fit, "fit")?.0.is_bent();
        let output = given_mut(is_bent, "is_bent")?;
        output.write(i32::from(known(found, "is_bent")?));
        Ok(())
    })
}

/// Whether the trials contradict what was believed: 1 where the belief, if it is right, makes trials that lie so far from it less
/// than once in twenty times, else 0. They are weighed against each other all the same, and neither should be trusted before
/// more trials agree with one of them.
///
/// Errors: LW_NOT_KNOWN without a prior, and without trials.
#[unsafe(no_mangle)]
pub extern "C" fn lw_trial_fit_is_contradicted(
    fit: Option<&lw_trial_fit>,
    is_contradicted: Option<&mut MaybeUninit<i32>>,
) -> lw_status {
    call(|| {
        let found = given(fit, "fit")?.0.is_contradicted();
        let output = given_mut(is_contradicted, "is_contradicted")?;
        output.write(i32::from(known(found, "is_contradicted")?));
        Ok(())
    })
}

/// Degrees of freedom of what is known of the scatter: the trials less two, with a prior its worth and the trials.
#[unsafe(no_mangle)]
pub extern "C" fn lw_trial_fit_degrees_of_freedom(
    fit: Option<&lw_trial_fit>,
    degrees_of_freedom: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| put(degrees_of_freedom, "degrees_of_freedom", given(fit, "fit")?.0.degrees_of_freedom()))
}

/// The fewest further bends, from angles that can be tried, after which the interval of every wanted angle's setting reaches
/// no further than half_width either way at a chance, if line and scatter stay as they are; at most twelve. Fills `angles`
/// with the angles to set, in rising order; none where nothing more is needed. `reaches` is how far the farthest interval
/// then reaches, and is_enough is 1 where that is what was asked for.
///
/// Errors: LW_NOT_KNOWN for two trials without a prior, LW_FIELD_MISSING for an empty list, LW_NOT_A_NUMBER,
/// LW_OUT_OF_RANGE, also for a candidate of 0 degrees, LW_SPACE_TOO_SMALL.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_trial_fit_advice(
    fit: Option<&lw_trial_fit>,
    wanted: *const lw_angle,
    n_wanted: usize,
    half_width: lw_angle,
    chance: f64,
    candidates: *const lw_angle,
    n_candidates: usize,
    angles: *mut lw_angle,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
    reaches: Option<&mut MaybeUninit<lw_angle>>,
    is_enough: Option<&mut MaybeUninit<i32>>,
) -> lw_status {
    call(|| {
        let fit = &given(fit, "fit")?.0;
        let (reaches, is_enough) = (given_mut(reaches, "reaches")?, given_mut(is_enough, "is_enough")?);
        let (wanted, candidates) =
            unsafe { (list(wanted, n_wanted, "wanted")?, list(candidates, n_candidates, "candidates")?) };
        let mut then = None;
        let work = || {
            let (wanted, candidates) = (quantities(wanted), quantities(candidates));
            let advice = fit.advice(&wanted, half_width.into(), chance, &candidates)?;
            then = Some((advice.reaches, advice.is_enough));
            Ok(advice.angles.into_iter().map(lw_angle::from).collect())
        };
        unsafe { fill(&ArrayNames { buf: "angles", need: "need" }, angles, cap, need, work) }?;
        if let Some((width, enough)) = then {
            reaches.write(width.into());
            is_enough.write(i32::from(enough));
        }
        Ok(())
    })
}

/// The page of a fit as SVG, for print or a screen: every trial, the line, the band in which the next bend lies at a
/// chance, and what to bend to for each of n wanted angles, at most 14. `record` may be NULL.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_springback_page(
    fit: Option<&lw_trial_fit>,
    record: Option<&lw_calibration>,
    wanted: *const lw_angle,
    n: usize,
    chance: f64,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe {
        fill_text(buf, cap, need, || {
            let wanted = quantities(list(wanted, n, "wanted")?);
            springback_page(&given(fit, "fit")?.0, record.map(|record| &record.0), &wanted, chance)
        })
    })
}

/// Frees a fit. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_trial_fit_free(fit: Option<Box<lw_trial_fit>>) {
    drop(fit);
}
