//! One thread in another.

use super::lw_thread;
use crate::argument::{fill_text, given, given_mut, known, put};
use crate::call::{call, lw_status};
use crate::units::{lw_length, lw_unknown_length};
use linewright::thread::{Mating, Profile};
use std::ffi::c_char;
use std::mem::MaybeUninit;

/// A male thread in a female one, from the limits of both. Overlaps and shares of a taper thread are the mean along the
/// engaged length once it binds, as it does when it is hand-tight.
#[derive(Debug)]
pub struct lw_mating(pub(crate) Mating);

/// A male in a female thread, from the limits of their classes, the usual ones where none is given. Different threads are
/// a stop, whatever they overlap. Free it with lw_mating_free.
///
/// Errors: LW_THREAD_SIDE, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_mating_new(
    male: Option<&lw_thread>,
    female: Option<&lw_thread>,
    mating: Option<&mut MaybeUninit<Box<lw_mating>>>,
) -> lw_status {
    call(|| {
        let pair = Mating::new(&given(male, "male")?.0, &given(female, "female")?.0)?;
        put(mating, "mating", Box::new(lw_mating(pair)))
    })
}

/// One part in another, both with diameters as measured at the end that enters first: whether it starts, 1 or 0, the radial
/// overlap there, negative where the crests pass each other, and the engaged length until the play is used up,
/// lw_unknown_length() where nothing binds. Pitch, flanks and taper are those of the threads.
///
/// Errors: LW_THREAD_SIDE, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE also for diameters that do not follow each other or are not those
/// of the thread.
#[unsafe(no_mangle)]
pub extern "C" fn lw_mate_measured(
    male: Option<&lw_thread>,
    male_major: lw_length,
    male_pitch_diameter: lw_length,
    male_minor: lw_length,
    female: Option<&lw_thread>,
    female_major: lw_length,
    female_pitch_diameter: lw_length,
    female_minor: lw_length,
    starts: Option<&mut MaybeUninit<i32>>,
    overlap: Option<&mut MaybeUninit<lw_length>>,
    engaged: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let outside = [male_major, male_pitch_diameter, male_minor].map(Into::into);
        let inside = [female_major, female_pitch_diameter, female_minor].map(Into::into);
        let (male, female) = (&given(male, "male")?.0, &given(female, "female")?.0);
        let pair = Profile::mate((male, outside), (female, inside))?;
        let starts = given_mut(starts, "starts")?;
        let (overlap, engaged) = (given_mut(overlap, "overlap")?, given_mut(engaged, "engaged")?);
        starts.write(i32::from(pair.starts));
        overlap.write(pair.overlap.into());
        engaged.write(pair.length.map_or_else(|| lw_unknown_length(), Into::into));
        Ok(())
    })
}

/// The designation of the male.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_mating_male(
    mating: Option<&lw_mating>,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let found = || Ok(given(mating, "mating")?.0.male().to_string());
    call(|| unsafe { fill_text(buf, cap, need, found) })
}

/// The designation of the female.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_mating_female(
    mating: Option<&lw_mating>,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let found = || Ok(given(mating, "mating")?.0.female().to_string());
    call(|| unsafe { fill_text(buf, cap, need, found) })
}

/// Whether the male starts, over all sizes that the classes allow: "always", "sometimes" or "never".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_mating_starts(
    mating: Option<&lw_mating>,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let found = || Ok(given(mating, "mating")?.0.starts().name().to_owned());
    call(|| unsafe { fill_text(buf, cap, need, found) })
}

/// What fingers notice: "does not start", "binds", "turns in", "rattles" or "slides in". Where sizes disagree, the more
/// treacherous answer.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_mating_feel(
    mating: Option<&lw_mating>,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let found = || Ok(given(mating, "mating")?.0.feel().name().to_owned());
    call(|| unsafe { fill_text(buf, cap, need, found) })
}

/// How grave the pair is: "stop" for different threads, "note" for the same.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_mating_level(
    mating: Option<&lw_mating>,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let found = || Ok(given(mating, "mating")?.0.level().name().to_owned());
    call(|| unsafe { fill_text(buf, cap, need, found) })
}

/// The finding in plain words, the worst first.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_mating_verdict(
    mating: Option<&lw_mating>,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let found = || Ok(given(mating, "mating")?.0.verdict());
    call(|| unsafe { fill_text(buf, cap, need, found) })
}

/// Whether both are the same thread, or an R in an Rp or Rc of its size: 1, or 0.
#[unsafe(no_mangle)]
pub extern "C" fn lw_mating_is_same(
    mating: Option<&lw_mating>,
    is_same: Option<&mut MaybeUninit<i32>>,
) -> lw_status {
    call(|| put(is_same, "is_same", i32::from(given(mating, "mating")?.0.is_same())))
}

/// Whether it is another thread that turns in by hand and may hold on less than half of its thread: 1, or 0.
#[unsafe(no_mangle)]
pub extern "C" fn lw_mating_is_lookalike(
    mating: Option<&lw_mating>,
    is_lookalike: Option<&mut MaybeUninit<i32>>,
) -> lw_status {
    call(|| put(is_lookalike, "is_lookalike", i32::from(given(mating, "mating")?.0.is_lookalike())))
}

/// Radial overlap at worst and, of the sizes that start, at best; below zero where the crests pass each other.
#[unsafe(no_mangle)]
pub extern "C" fn lw_mating_overlap(
    mating: Option<&lw_mating>,
    worst: Option<&mut MaybeUninit<lw_length>>,
    best: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let pair = &given(mating, "mating")?.0;
        let (worst, best) = (given_mut(worst, "worst")?, given_mut(best, "best")?);
        worst.write(pair.overlap_worst().into());
        best.write(pair.overlap_best().into());
        Ok(())
    })
}

/// The overlap as a share of the female's full height, at worst and, of the sizes that start, at best; plain ratios, 0
/// where there is none. The right thread's own worst is well below 1 too.
#[unsafe(no_mangle)]
pub extern "C" fn lw_mating_share(
    mating: Option<&lw_mating>,
    worst: Option<&mut MaybeUninit<f64>>,
    best: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| {
        let pair = &given(mating, "mating")?.0;
        let (worst, best) = (given_mut(worst, "worst")?, given_mut(best, "best")?);
        worst.write(pair.share_worst().value);
        best.write(pair.share_best().value);
        Ok(())
    })
}

/// The engaged length at which the pair binds, at the tightest sizes that start (is_loose 0) or the loosest (1); 0 where
/// it does not start at all.
///
/// Errors: LW_NOT_KNOWN where it never binds, so that the length has no limit.
#[unsafe(no_mangle)]
pub extern "C" fn lw_mating_length(
    mating: Option<&lw_mating>,
    is_loose: i32,
    length: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let found = given(mating, "mating")?.0.lengths()[usize::from(is_loose != 0)];
        put(length, "length", known(found, "length")?.into())
    })
}

/// As lw_mating_length, in turns.
///
/// Errors: LW_NOT_KNOWN where it never binds, so that the turns have no limit.
#[unsafe(no_mangle)]
pub extern "C" fn lw_mating_turns(
    mating: Option<&lw_mating>,
    is_loose: i32,
    turns: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| {
        let found = given(mating, "mating")?.0.turns()[usize::from(is_loose != 0)];
        put(turns, "turns", known(found, "turns")?)
    })
}

/// What is left, at worst, of a full engagement over a wanted length: the share of it that is reached before the pair
/// binds, times the worst share of the height.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_mating_engaged_share(
    mating: Option<&lw_mating>,
    wanted: lw_length,
    share: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| put(share, "share", given(mating, "mating")?.0.engaged_share(wanted.into())?.value))
}

/// Frees a mating. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_mating_free(mating: Option<Box<lw_mating>>) {
    drop(mating);
}
