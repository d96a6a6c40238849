//! Checks at the bench: distances that show a wrong turn, turns in every form, and the hand of the part.

use crate::argument::{fill_text, given, given_mut, item, known, put};
use crate::call::{call, lw_status};
use crate::plan::lw_plan;
use crate::problem::lw_problems;
use crate::units::{lw_angle, lw_length};
use linewright::Error;
use linewright::check::{HandCheck, TapeCheck, TurnCheck};
use std::ffi::c_char;
use std::mem::MaybeUninit;

fn tape(plan: Option<&lw_plan>, index: usize) -> Result<TapeCheck, Error> {
    item(&given(plan, "plan")?.0.tape_checks(), index).copied()
}

fn turn(plan: Option<&lw_plan>, index: usize) -> Result<TurnCheck, Error> {
    item(&given(plan, "plan")?.0.turn_checks(), index).cloned()
}

fn hand(plan: Option<&lw_plan>) -> Result<HandCheck, Error> {
    known(given(plan, "plan")?.0.hand_check(), "hand_check")
}

/// The number of checks, both of distances and of turns: one for each bend but the first made.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_check_count(
    plan: Option<&lw_plan>,
    count: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| put(count, "count", given(plan, "plan")?.0.turn_checks().len()))
}

/// The number, from 1 at end A, of the bend whose turn a check is about.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_check_bend(
    plan: Option<&lw_plan>,
    index: usize,
    number: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| put(number, "number", turn(plan, index)?.bend))
}

/// Where the distance that shows this turn best begins: "end A" or "mark 2".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_plan_tape_check_from(
    plan: Option<&lw_plan>,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(tape(plan, index)?.from.to_string())) })
}

/// Where that distance ends.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_plan_tape_check_to(
    plan: Option<&lw_plan>,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(tape(plan, index)?.to.to_string())) })
}

/// That distance, straight across on the center line, and how much it changes at the least when the turn is 10 degrees
/// off. Where that is less than a tape shows, the turn must be checked by its angle.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_tape_check(
    plan: Option<&lw_plan>,
    index: usize,
    distance: Option<&mut MaybeUninit<lw_length>>,
    change: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let check = tape(plan, index)?;
        let (distance, change) = (given_mut(distance, "distance")?, given_mut(change, "change")?);
        distance.write(check.distance.into());
        change.write(check.change.into());
        Ok(())
    })
}

/// The turn in words where it is a whole quarter, as lw_turn_words.
///
/// Errors: LW_NOT_KNOWN for other turns.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_plan_turn_check_words(
    plan: Option<&lw_plan>,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let words = || known(turn(plan, index)?.words.map(str::to_owned), "words");
    call(|| unsafe { fill_text(buf, cap, need, words) })
}

/// The turn on a clock, as lw_turn_clock.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_plan_turn_check_clock(
    plan: Option<&lw_plan>,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(turn(plan, index)?.clock)) })
}

/// What an inclinometer reads, positive upward, for this turn; lw_plan_turn_check_text says on which leg.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_turn_check_reading(
    plan: Option<&lw_plan>,
    index: usize,
    reading: Option<&mut MaybeUninit<lw_angle>>,
) -> lw_status {
    call(|| put(reading, "reading", turn(plan, index)?.reading.into()))
}

/// The check of a turn as a sentence: which legs are held level, which is read, and what it reads.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_plan_turn_check_text(
    plan: Option<&lw_plan>,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(turn(plan, index)?.text())) })
}

/// The look that tells the part from its mirror image, as a sentence.
///
/// Errors: LW_NOT_KNOWN for a flat line, which has no hand.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_plan_hand_check_text(
    plan: Option<&lw_plan>,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(hand(plan)?.text())) })
}

/// The leg that is looked at, and whether it points up (1) or down (0).
///
/// Errors: LW_NOT_KNOWN for a flat line.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_hand_check(
    plan: Option<&lw_plan>,
    leg: Option<&mut MaybeUninit<usize>>,
    is_up: Option<&mut MaybeUninit<i32>>,
) -> lw_status {
    call(|| {
        let check = hand(plan)?;
        let (leg, is_up) = (given_mut(leg, "leg")?, given_mut(is_up, "is_up")?);
        leg.write(check.look_leg);
        is_up.write(i32::from(check.up));
        Ok(())
    })
}

/// What it means that the leg points up (1) or down (0): a list with LW_HAND_MISMATCH for the mirror part, otherwise
/// empty. Free it with lw_problems_free.
///
/// Errors: LW_NOT_KNOWN for a flat line.
#[unsafe(no_mangle)]
pub extern "C" fn lw_plan_hand_check_judge(
    plan: Option<&lw_plan>,
    points_up: i32,
    problems: Option<&mut MaybeUninit<Box<lw_problems>>>,
) -> lw_status {
    call(|| {
        let found = hand(plan)?.judge(points_up != 0);
        put(problems, "problems", lw_problems::of(found.into_iter().collect()))
    })
}
