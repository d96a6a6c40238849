//! What a bend does to the wall of a tube.

use crate::argument::{fill_text, given, given_mut, known_or, put, text};
use crate::call::{call, lw_status};
use crate::tube::lw_tube;
use crate::units::lw_length;
use linewright::Error;
use linewright::bend::wall::{BentWall, Place, Thinning};
use linewright::units::ratio;
use std::ffi::c_char;
use std::mem::MaybeUninit;

/// The wall of a tube bent to a centerline radius.
#[derive(Debug)]
pub struct lw_bent_wall(BentWall);

/// A place around the section: "extrados", "intrados" or "side".
pub(super) unsafe fn place(name: *const c_char) -> Result<Place, Error> {
    Place::from_name(unsafe { text(name, "place") }?)
}

/// How freely the hoop follows the stretch: "plane strain" or "uniaxial".
pub(super) unsafe fn thinning(name: *const c_char) -> Result<Thinning, Error> {
    Thinning::from_name(unsafe { text(name, "thinning") }?)
}

/// A tube bent to a centerline radius, the neutral axis on the centerline. Free it with lw_bent_wall_free.
///
/// Where it ends (limits of ours): the outside is stretched to at most twice its length and the inside pressed to half of it,
/// which is a radius of one diameter while nothing is shifted, and the thickened inside leaves a bore.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also beyond those limits.
#[unsafe(no_mangle)]
pub extern "C" fn lw_bent_wall_new(
    tube: Option<&lw_tube>,
    radius: lw_length,
    bent: Option<&mut MaybeUninit<Box<lw_bent_wall>>>,
) -> lw_status {
    call(|| {
        let made = BentWall::new(&given(tube, "tube")?.0, radius.into())?;
        put(bent, "bent", Box::new(lw_bent_wall(made)))
    })
}

/// Moves the neutral axis toward the inside of the bend; a negative shift moves it outward.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also where it would leave the tube and beyond the limits of lw_bent_wall_new.
#[unsafe(no_mangle)]
pub extern "C" fn lw_bent_wall_set_neutral_shift(
    bent: Option<&mut lw_bent_wall>,
    shift: lw_length,
) -> lw_status {
    call(|| {
        let bent = given_mut(bent, "bent")?;
        bent.0 = bent.0.with_neutral_shift(shift.into())?;
        Ok(())
    })
}

/// Moves the neutral axis to where a thin, perfectly plastic tube has it without any pull along it.
#[unsafe(no_mangle)]
pub extern "C" fn lw_bent_wall_set_plastic_neutral_axis(bent: Option<&mut lw_bent_wall>) -> lw_status {
    call(|| {
        let bent = given_mut(bent, "bent")?;
        bent.0 = bent.0.with_plastic_neutral_axis();
        Ok(())
    })
}

/// By how much the neutral axis lies inside the centerline.
#[unsafe(no_mangle)]
pub extern "C" fn lw_bent_wall_neutral_shift(
    bent: Option<&lw_bent_wall>,
    shift: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(shift, "shift", given(bent, "bent")?.0.neutral_shift().into()))
}

/// Wall at a place ("extrados", "intrados" or "side") under an assumption ("plane strain" or "uniaxial").
///
/// Errors: LW_UNKNOWN_NAME.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_bent_wall_at(
    bent: Option<&lw_bent_wall>,
    place: *const c_char,
    thinning: *const c_char,
    wall: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let bent = given(bent, "bent")?.0;
        let (place, thinning) = unsafe { (self::place(place)?, self::thinning(thinning)?) };
        put(wall, "wall", bent.wall(place, thinning).into())
    })
}

/// Smallest and largest wall at a place over both assumptions.
///
/// Errors: LW_UNKNOWN_NAME.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_bent_wall_range(
    bent: Option<&lw_bent_wall>,
    place: *const c_char,
    least: Option<&mut MaybeUninit<lw_length>>,
    most: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let bent = given(bent, "bent")?.0;
        let (least, most) = (given_mut(least, "least")?, given_mut(most, "most")?);
        let range = bent.range(unsafe { self::place(place) }?);
        least.write(range.least.into());
        most.write(range.most.into());
        Ok(())
    })
}

/// Stretch of the outermost surface, 0.1 for a tenth; to be held against what the metal takes before it breaks.
#[unsafe(no_mangle)]
pub extern "C" fn lw_bent_wall_outer_stretch(
    bent: Option<&lw_bent_wall>,
    stretch: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| put(stretch, "stretch", given(bent, "bent")?.0.outer_stretch().value))
}

/// The compression inside the bend, and the one at which a free, thin cylinder of this wall begins to wrinkle, for a metal of
/// a hardening exponent; both plain shares. The criterion holds for walls up to a tenth of their radius; for a thicker one
/// critical is what one of a tenth bears, and it bears that at least.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE for the exponent.
#[unsafe(no_mangle)]
pub extern "C" fn lw_bent_wall_free_wrinkling(
    bent: Option<&lw_bent_wall>,
    hardening_exponent: f64,
    compression: Option<&mut MaybeUninit<f64>>,
    critical: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| {
        let bent = given(bent, "bent")?.0;
        let (compression, critical) =
            (given_mut(compression, "compression")?, given_mut(critical, "critical")?);
        let found = bent.free_wrinkling(ratio(hardening_exponent))?;
        compression.write(found.compression().value);
        critical.write(found.critical().value);
        Ok(())
    })
}

/// Whether the inside of the bend would wrinkle or kink unless a groove that fits, or a mandrel, holds it. That it needs one
/// is no verdict on a bend that has one. Not compared with bends.
///
/// Errors: as lw_bent_wall_free_wrinkling; LW_NOT_KNOWN where the criterion does not say, as for nearly all brake tube and for a
/// compression of less than 1 % beyond critical, which may be elastic.
#[unsafe(no_mangle)]
pub extern "C" fn lw_bent_wall_needs_groove(
    bent: Option<&lw_bent_wall>,
    hardening_exponent: f64,
    needs_groove: Option<&mut MaybeUninit<i32>>,
) -> lw_status {
    call(|| {
        let bent = given(bent, "bent")?.0;
        let needs_groove = given_mut(needs_groove, "needs_groove")?;
        let found = bent.free_wrinkling(ratio(hardening_exponent))?;
        let instead = "a smallest radius with its scope and source, see lw_radius_rule_count";
        let needs = known_or(found.needs_groove(), "needs_groove", found.words(), instead)?;
        needs_groove.write(i32::from(needs));
        Ok(())
    })
}

/// The same in a sentence, with the reason where it is not known.
///
/// Errors: as lw_bent_wall_free_wrinkling.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_bent_wall_wrinkling_words(
    bent: Option<&lw_bent_wall>,
    hardening_exponent: f64,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let words = || Ok(given(bent, "bent")?.0.free_wrinkling(ratio(hardening_exponent))?.words().to_owned());
    call(|| unsafe { fill_text(buf, cap, need, words) })
}

/// Frees a bent wall. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_bent_wall_free(bent: Option<Box<lw_bent_wall>>) {
    drop(bent);
}
