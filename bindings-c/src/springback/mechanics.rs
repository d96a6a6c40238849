//! Springback from mechanics: the bending moment of a tube, and what remains when it is let go.

use crate::argument::{given, given_mut, known, put};
use crate::call::{call, lw_status};
use crate::material::lw_properties;
use crate::springback::fit::lw_prior;
use crate::springback::lw_springback;
use crate::units::{lw_angle, lw_length, lw_pressure};
use linewright::Error;
use linewright::springback::{Hardening, HeldBend, MaterialScatter, Mechanics};
use linewright::units::{ratio, to_n_mm};
use std::mem::MaybeUninit;

/// A tube of known material data, to be bent: an estimate of its springback for the time before there are trial bends. It
/// leaves out that the section flattens, that the modulus falls with strain, creep, and friction in the tool, and has not been
/// compared with bends: no validation by experiment is claimed.
#[derive(Debug)]
pub struct lw_mechanics(pub(crate) Mechanics);

/// A tube held at a radius, and what it would do when let go. An estimate, see lw_mechanics.
#[derive(Debug)]
pub struct lw_held_bend(HeldBend);

type Out<'a> = Option<&'a mut MaybeUninit<Box<lw_mechanics>>>;

fn new(
    [od, wall]: [lw_length; 2],
    modulus: lw_pressure,
    hardening: Hardening,
    mechanics: Out<'_>,
) -> Result<(), Error> {
    let made = Mechanics::new(od.into(), wall.into(), modulus.into(), hardening)?;
    put(mechanics, "mechanics", Box::new(lw_mechanics(made)))
}

/// A tube whose wall does not harden: beyond its yield strength the stress stays. Free it with lw_mechanics_free.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_mechanics_plastic(
    od: lw_length,
    wall: lw_length,
    modulus: lw_pressure,
    yield_strength: lw_pressure,
    mechanics: Option<&mut MaybeUninit<Box<lw_mechanics>>>,
) -> lw_status {
    let law = Hardening::PerfectlyPlastic { yield_strength: yield_strength.into() };
    call(|| new([od, wall], modulus, law, mechanics))
}

/// A tube whose wall hardens along a straight line: beyond its yield strength the stress rises with a tangent modulus.
/// Free it with lw_mechanics_free.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_mechanics_bilinear(
    od: lw_length,
    wall: lw_length,
    modulus: lw_pressure,
    yield_strength: lw_pressure,
    tangent_modulus: lw_pressure,
    mechanics: Option<&mut MaybeUninit<Box<lw_mechanics>>>,
) -> lw_status {
    let law = Hardening::Bilinear {
        yield_strength: yield_strength.into(),
        tangent_modulus: tangent_modulus.into(),
    };
    call(|| new([od, wall], modulus, law, mechanics))
}

/// A tube whose wall hardens by a power law: stress = strength_coefficient x strain ^ hardening_exponent where that is
/// below the elastic line. Free it with lw_mechanics_free.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_mechanics_power_law(
    od: lw_length,
    wall: lw_length,
    modulus: lw_pressure,
    strength_coefficient: lw_pressure,
    hardening_exponent: f64,
    mechanics: Option<&mut MaybeUninit<Box<lw_mechanics>>>,
) -> lw_status {
    let law = Hardening::PowerLaw {
        strength_coefficient: strength_coefficient.into(),
        hardening_exponent: ratio(hardening_exponent),
    };
    call(|| new([od, wall], modulus, law, mechanics))
}

/// A tube by its size and what is known of its metal. Of the laws the first is taken that is known: the power law of
/// hardening; else a straight line of it, where there are a yield strength and a tangent modulus; else no hardening beyond
/// the yield strength. Free it with lw_mechanics_free.
///
/// Errors: LW_NOT_KNOWN naming what is missing, the yield strength also where there is a tangent modulus, which begins
/// there; LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_mechanics_of_metal(
    od: lw_length,
    wall: lw_length,
    metal: Option<&lw_properties>,
    mechanics: Option<&mut MaybeUninit<Box<lw_mechanics>>>,
) -> lw_status {
    call(|| {
        let made = Mechanics::of_metal(od.into(), wall.into(), &given(metal, "metal")?.0)?;
        put(mechanics, "mechanics", Box::new(lw_mechanics(made)))
    })
}

/// The tube held at a centerline radius, as by the groove of a former. Free it with lw_held_bend_free.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also for a radius of no more than half the tube.
#[unsafe(no_mangle)]
pub extern "C" fn lw_mechanics_bend(
    mechanics: Option<&lw_mechanics>,
    radius: lw_length,
    bend: Option<&mut MaybeUninit<Box<lw_held_bend>>>,
) -> lw_status {
    call(|| {
        let held = given(mechanics, "mechanics")?.0.bend(radius.into())?;
        put(bend, "bend", Box::new(lw_held_bend(held)))
    })
}

/// Least and most setting for a wanted angle while the strength and the modulus of the material are off by shares of
/// their value, either way. What the model leaves out is not in it.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_mechanics_setting_range(
    mechanics: Option<&lw_mechanics>,
    radius: lw_length,
    arm: lw_length,
    wanted: lw_angle,
    strength_scatter: f64,
    modulus_scatter: f64,
    least: Option<&mut MaybeUninit<lw_angle>>,
    most: Option<&mut MaybeUninit<lw_angle>>,
) -> lw_status {
    call(|| {
        let scatter = MaterialScatter { strength: ratio(strength_scatter), modulus: ratio(modulus_scatter) };
        let mechanics = &given(mechanics, "mechanics")?.0;
        let (least, most) = (given_mut(least, "least")?, given_mut(most, "most")?);
        let range = mechanics.setting_range(radius.into(), arm.into(), wanted.into(), scatter)?;
        least.write(range[0].into());
        most.write(range[1].into());
        Ok(())
    })
}

/// What mechanics believes before any trial, to be weighed against trials by lw_trial_fit_with_prior: the estimate, spread
/// as strength and modulus scatter (one standard deviation of each, as shares), and a scatter of one bend that counts like
/// `worth` bends.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_mechanics_prior(
    mechanics: Option<&lw_mechanics>,
    radius: lw_length,
    arm: lw_length,
    strength_scatter: f64,
    modulus_scatter: f64,
    bend_scatter: lw_angle,
    worth: usize,
    prior: Option<&mut MaybeUninit<lw_prior>>,
) -> lw_status {
    call(|| {
        let scatter = MaterialScatter { strength: ratio(strength_scatter), modulus: ratio(modulus_scatter) };
        let mechanics = &given(mechanics, "mechanics")?.0;
        let belief = mechanics.prior(radius.into(), arm.into(), scatter, bend_scatter.into(), worth)?;
        put(prior, "prior", belief.into())
    })
}

/// Frees a tube of known material data. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_mechanics_free(mechanics: Option<Box<lw_mechanics>>) {
    drop(mechanics);
}

/// The centerline radius it is held at.
#[unsafe(no_mangle)]
pub extern "C" fn lw_held_bend_radius(
    bend: Option<&lw_held_bend>,
    radius: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(radius, "radius", given(bend, "bend")?.0.radius().into()))
}

/// The bending moment, in newton millimeters.
#[unsafe(no_mangle)]
pub extern "C" fn lw_held_bend_moment_nmm(
    bend: Option<&lw_held_bend>,
    moment_nmm: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| put(moment_nmm, "moment_nmm", to_n_mm(given(bend, "bend")?.0.moment())))
}

/// Share of the angle that springs back; 1 where the tube never leaves its elastic range.
#[unsafe(no_mangle)]
pub extern "C" fn lw_held_bend_share(
    bend: Option<&lw_held_bend>,
    share: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| put(share, "share", given(bend, "bend")?.0.share().value))
}

/// Centerline radius as formed, after letting go.
///
/// Errors: LW_NOT_KNOWN where nothing of the bend remains.
#[unsafe(no_mangle)]
pub extern "C" fn lw_held_bend_formed_radius(
    bend: Option<&lw_held_bend>,
    formed_radius: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let formed = given(bend, "bend")?.0.formed_radius();
        let output = given_mut(formed_radius, "formed_radius")?;
        output.write(known(formed, "formed_radius")?.into());
        Ok(())
    })
}

/// The springback as a line over the set angle, for a tool whose moment falls to zero along an arm; an arm of 0 mm leaves
/// the constant part out. Free it with lw_springback_free.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also where so much springs back that no setting is credible.
#[unsafe(no_mangle)]
pub extern "C" fn lw_held_bend_springback(
    bend: Option<&lw_held_bend>,
    arm: lw_length,
    springback: Option<&mut MaybeUninit<Box<lw_springback>>>,
) -> lw_status {
    call(|| {
        let line = given(bend, "bend")?.0.springback(arm.into())?;
        put(springback, "springback", Box::new(lw_springback(line)))
    })
}

/// Frees a held bend. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_held_bend_free(bend: Option<Box<lw_held_bend>>) {
    drop(bend);
}
