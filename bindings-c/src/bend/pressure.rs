//! Pressure arithmetic of an ideal cylinder, at a strength and a factor that the caller gives with a source.

use super::wall::{place, thinning};
use crate::argument::{fill_text, given, given_mut, options, put, text};
use crate::call::{call, lw_status};
use crate::tube::lw_tube;
use crate::units::{lw_length, lw_pressure};
use linewright::Error;
use linewright::bend::pressure::{BendFactors, Cylinder, EXCLUDES, Strength, Theory, ovality_amplification};
use linewright::units::ratio;
use std::ffi::c_char;
use std::mem::MaybeUninit;

/// A strength, what it is divided by, and who says so: all three the caller's. Set size to sizeof(lw_strength).
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct lw_strength {
    /// sizeof(lw_strength).
    pub size: usize,
    /// The strength, undivided.
    pub value: lw_pressure,
    /// What it is divided by; 1 leaves it whole.
    pub factor: f64,
    /// Where both were read; not empty.
    pub source: *const c_char,
}

/// A tube at its worst size as an ideal cylinder, straight or bent.
#[derive(Debug)]
pub struct lw_cylinder(Cylinder);

/// # Safety
/// `strength` is NULL or points to a struct of the size that it begins with, whose source is NULL or a text.
unsafe fn strength(strength: *const lw_strength) -> Result<Strength, Error> {
    let given = unsafe { options(strength, "strength") }?;
    let source = unsafe { text(given.source, "strength.source") }?;
    Strength::new(given.value.into(), ratio(given.factor), source)
}

/// "Barlow", "Boardman", "Lame", "Tresca" or "von Mises".
unsafe fn theory(name: *const c_char) -> Result<Theory, Error> {
    Theory::from_name(unsafe { text(name, "theory") }?)
}

/// A straight cylinder of a tube's nominal size. Free it with lw_cylinder_free.
#[unsafe(no_mangle)]
pub extern "C" fn lw_cylinder_new(
    tube: Option<&lw_tube>,
    cylinder: Option<&mut MaybeUninit<Box<lw_cylinder>>>,
) -> lw_status {
    call(|| {
        let made = Cylinder::new(&given(tube, "tube")?.0);
        put(cylinder, "cylinder", Box::new(lw_cylinder(made)))
    })
}

/// Puts a cylinder at its worst size: the diameter larger by od_plus, the wall thinner by wall_minus. Wall that was lost to
/// corrosion or filing can be counted in.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also where no wall is left.
#[unsafe(no_mangle)]
pub extern "C" fn lw_cylinder_set_tolerances(
    cylinder: Option<&mut lw_cylinder>,
    od_plus: lw_length,
    wall_minus: lw_length,
) -> lw_status {
    call(|| {
        let cylinder = given_mut(cylinder, "cylinder")?;
        cylinder.0 = cylinder.0.with_tolerances(od_plus.into(), wall_minus.into())?;
        Ok(())
    })
}

/// Bends a cylinder to a centerline radius, with the neutral axis on the centerline.
///
/// Errors: as lw_bent_wall_new.
#[unsafe(no_mangle)]
pub extern "C" fn lw_cylinder_set_bend(cylinder: Option<&mut lw_cylinder>, radius: lw_length) -> lw_status {
    call(|| {
        let cylinder = given_mut(cylinder, "cylinder")?;
        cylinder.0 = cylinder.0.bent(radius.into())?;
        Ok(())
    })
}

/// Moves the neutral axis of the bend inward, which thins the outside further.
///
/// Errors: as lw_bent_wall_set_neutral_shift, LW_FIELD_MISSING for a straight cylinder.
#[unsafe(no_mangle)]
pub extern "C" fn lw_cylinder_set_neutral_shift(
    cylinder: Option<&mut lw_cylinder>,
    shift: lw_length,
) -> lw_status {
    call(|| {
        let cylinder = given_mut(cylinder, "cylinder")?;
        cylinder.0 = cylinder.0.with_neutral_shift(shift.into())?;
        Ok(())
    })
}

/// The pressure at which the worst place of the ideal cylinder meets the caller's strength divided by the caller's factor,
/// by a theory ("Barlow", "Boardman", "Lame", "Tresca" or "von Mises"), and the wall at that place. It is no pressure that
/// a line may be used at: lw_ideal_cylinder_excludes says what it leaves out. "Boardman" is for walls up to a sixth of the
/// diameter; with a thicker one it would say more than "Lame".
///
/// Errors: LW_STRUCT_SIZE, LW_UNKNOWN_NAME, LW_FIELD_MISSING for an empty source, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also for
/// "Boardman" and a thicker wall.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_ideal_cylinder_pressure(
    cylinder: Option<&lw_cylinder>,
    theory: *const c_char,
    strength: *const lw_strength,
    pressure: Option<&mut MaybeUninit<lw_pressure>>,
    wall: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let cylinder = given(cylinder, "cylinder")?.0;
        let (theory, strength) = unsafe { (self::theory(theory)?, self::strength(strength)?) };
        let (pressure, wall) = (given_mut(pressure, "pressure")?, given_mut(wall, "wall")?);
        let ideal = cylinder.ideal_cylinder_pressure(theory, &strength)?;
        pressure.write(ideal.pressure().into());
        wall.write(ideal.wall().into());
        Ok(())
    })
}

/// The same in words: the pressure, the theory, the caller's strength, factor and source, and what it leaves out.
///
/// Errors: as lw_ideal_cylinder_pressure.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_ideal_cylinder_pressure_text(
    cylinder: Option<&lw_cylinder>,
    theory: *const c_char,
    strength: *const lw_strength,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe {
        fill_text(buf, cap, need, || {
            let cylinder = given(cylinder, "cylinder")?.0;
            let strength = self::strength(strength)?;
            Ok(cylinder.ideal_cylinder_pressure(self::theory(theory)?, &strength)?.to_string())
        })
    })
}

/// Where around the bend that worst place is: "extrados", "intrados" or "side"; "straight" for a straight cylinder.
///
/// Errors: as lw_ideal_cylinder_pressure.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_ideal_cylinder_place(
    cylinder: Option<&lw_cylinder>,
    theory: *const c_char,
    strength: *const lw_strength,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe {
        fill_text(buf, cap, need, || {
            let cylinder = given(cylinder, "cylinder")?.0;
            let strength = self::strength(strength)?;
            let ideal = cylinder.ideal_cylinder_pressure(self::theory(theory)?, &strength)?;
            Ok(ideal.place().map_or("straight", |place| place.name()).to_owned())
        })
    })
}

/// What an ideal cylinder's pressure leaves out.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_ideal_cylinder_excludes(
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(EXCLUDES.to_owned())) })
}

/// Stress at a pressure, at the worst place: the hoop stress for Barlow, Boardman and Lame, the strength that the whole
/// wall would need for Tresca and von Mises.
///
/// Errors: LW_UNKNOWN_NAME, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also for "Boardman" and a wall of more than a sixth of the
/// diameter.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_cylinder_stress(
    cylinder: Option<&lw_cylinder>,
    theory: *const c_char,
    pressure: lw_pressure,
    stress: Option<&mut MaybeUninit<lw_pressure>>,
) -> lw_status {
    call(|| {
        let cylinder = given(cylinder, "cylinder")?.0;
        let theory = unsafe { self::theory(theory) }?;
        put(stress, "stress", cylinder.stress(theory, pressure.into())?.into())
    })
}

/// How often the stress at a pressure goes into the caller's strength, and whether that is as often as the caller's factor
/// asks (1 or 0). It speaks of the ideal cylinder, not of a line: see lw_ideal_cylinder_excludes.
///
/// Errors: as lw_ideal_cylinder_pressure, LW_OUT_OF_RANGE also for no pressure at all.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_ideal_cylinder_margin(
    cylinder: Option<&lw_cylinder>,
    theory: *const c_char,
    pressure: lw_pressure,
    strength: *const lw_strength,
    found: Option<&mut MaybeUninit<f64>>,
    is_reached: Option<&mut MaybeUninit<i32>>,
) -> lw_status {
    call(|| {
        let cylinder = given(cylinder, "cylinder")?.0;
        let (theory, strength) = unsafe { (self::theory(theory)?, self::strength(strength)?) };
        let (found, is_reached) = (given_mut(found, "found")?, given_mut(is_reached, "is_reached")?);
        let margin = cylinder.margin(theory, pressure.into(), &strength)?;
        found.write(margin.found().value);
        is_reached.write(i32::from(margin.is_reached()));
        Ok(())
    })
}

/// Frees a cylinder. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_cylinder_free(cylinder: Option<Box<lw_cylinder>>) {
    drop(cylinder);
}

/// Stress in a bend as a multiple of the straight tube's, by the shape alone: the factor I of ASME B31.3 paragraph 304.2.1.
///
/// Errors: LW_UNKNOWN_NAME, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also for a radius of less than one diameter.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_bend_shell_factor(
    od: lw_length,
    radius: lw_length,
    place: *const c_char,
    factor: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| {
        let place = unsafe { self::place(place) }?;
        put(factor, "factor", BendFactors::new(od.into(), radius.into())?.shell(place).value)
    })
}

/// The same by the shape and by what bending does to a thin wall under an assumption.
///
/// Errors: as lw_bend_shell_factor.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_bend_factor_after_bending(
    od: lw_length,
    radius: lw_length,
    place: *const c_char,
    thinning: *const c_char,
    factor: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| {
        let (place, thinning) = unsafe { (self::place(place)?, self::thinning(thinning)?) };
        let bend = BendFactors::new(od.into(), radius.into())?;
        put(factor, "factor", bend.after_bending(place, thinning).value)
    })
}

/// Wall at a place of a bend by the form of ASME B31.3 paragraph 304.2.1, with the caller's divided strength and the
/// caller's Y; without any allowance, and without what lw_ideal_cylinder_excludes lists. "side" is the straight. With Y = 0.4 it
/// is Boardman's formula. It is for walls up to a sixth of the diameter.
///
/// Errors: as lw_ideal_cylinder_pressure, LW_OUT_OF_RANGE also for a pressure that wants a wall of more than a sixth of the
/// diameter.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_bend_ideal_wall(
    od: lw_length,
    radius: lw_length,
    place: *const c_char,
    pressure: lw_pressure,
    strength: *const lw_strength,
    y: f64,
    wall: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let (place, strength) = unsafe { (self::place(place)?, self::strength(strength)?) };
        let bend = BendFactors::new(od.into(), radius.into())?;
        put(wall, "wall", bend.ideal_wall(place, pressure.into(), &strength, ratio(y))?.into())
    })
}

/// Peak hoop stress of a slightly oval tube under pressure as a multiple of the round one's; out_of_round is the largest
/// less the smallest diameter. An elastic peak: it matters for fatigue and hardly for bursting. Its limit is ours: a fifth of
/// the diameter less the wall, where an ellipse's true peak is 5 to 8 % higher.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also beyond that fifth.
#[unsafe(no_mangle)]
pub extern "C" fn lw_ovality_amplification(
    tube: Option<&lw_tube>,
    out_of_round: lw_length,
    pressure: lw_pressure,
    modulus: lw_pressure,
    poisson: f64,
    factor: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| {
        let tube = &given(tube, "tube")?.0;
        let (pressure, modulus) = (pressure.into(), modulus.into());
        let peak = ovality_amplification(tube, out_of_round.into(), pressure, modulus, ratio(poisson))?;
        put(factor, "factor", peak.value)
    })
}
