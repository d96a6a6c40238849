//! String and tape only: a cut length at a stated chance of being long enough.

use crate::argument::{fill_text, given, item, options, put, text};
use crate::bench::lw_bench;
use crate::call::{call, lw_status};
use crate::units::{lw_angle, lw_length};
use linewright::tape::{Laid, TapeCut, TapeLength, usual_chance};
use linewright::units::ratio;
use linewright::{Error, Flare};
use std::ffi::c_char;
use std::mem::MaybeUninit;

/// What is known beside the length. Set size to sizeof(lw_tape).
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct lw_tape {
    /// sizeof(lw_tape).
    pub size: usize,
    /// The length measured.
    pub measured: lw_length,
    /// The number of bends it was measured round.
    pub bends: usize,
    /// What string or tape was laid along: "center line", "string outside", "string inside", "corner legs" or "outer
    /// legs".
    pub laid: *const c_char,
    /// Outside diameter of the tube.
    pub od: lw_length,
    /// All bend angles together; lw_unknown_angle() where each is taken for a right angle.
    pub total_angle: lw_angle,
    /// Centerline radius as formed; lw_unknown_length() where the bench's or three diameters are taken.
    pub radius: lw_length,
    /// The flare at A; NULL for a double flare.
    pub flare_a: *const c_char,
    /// The flare at B; NULL for a double flare.
    pub flare_b: *const c_char,
    /// The chance of being long enough, 0.5 to 0.9999; 0 for 0.95.
    pub chance: f64,
}

/// A cut length with its terms and assumptions.
#[derive(Debug)]
pub struct lw_tape_cut(TapeCut);

unsafe fn flare(name: *const c_char, argument: &str) -> Result<Flare, Error> {
    if name.is_null() { Ok(Flare::Double45) } else { Flare::from_name(unsafe { text(name, argument) }?) }
}

/// The cut length that is long enough with the chance asked for. bench may be NULL. Free it with lw_tape_cut_free.
///
/// Errors: LW_STRUCT_SIZE, LW_METHOD_MISSING, LW_UNKNOWN_NAME, LW_UNIT_IMPLAUSIBLE where the bends alone take more than
/// the length, LW_FLARE_NET_UNKNOWN, LW_FLARE_TOOL_MISSING, LW_NO_CORNER, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_tape_cut_new(
    tape: *const lw_tape,
    bench: Option<&lw_bench>,
    cut: Option<&mut MaybeUninit<Box<lw_tape_cut>>>,
) -> lw_status {
    call(|| {
        let tape = unsafe { options(tape, "tape") }?;
        let laid = Laid::from_name(unsafe { text(tape.laid, "tape.laid") }?)?;
        let (a, b) = unsafe { (flare(tape.flare_a, "tape.flare_a")?, flare(tape.flare_b, "tape.flare_b")?) };
        let mut length =
            TapeLength::new(tape.measured.into(), tape.bends, laid, tape.od.into())?.with_flares(a, b);
        if let Some(total) = tape.total_angle.known() {
            length = length.with_total_angle(total)?;
        }
        if let Some(radius) = tape.radius.known() {
            length = length.with_radius(radius)?;
        }
        let chance = if tape.chance == 0.0 { usual_chance() } else { ratio(tape.chance) };
        put(cut, "cut", Box::new(lw_tape_cut(length.cut(bench.map(|bench| &bench.0), chance)?)))
    })
}

/// The cut length, not rounded.
#[unsafe(no_mangle)]
pub extern "C" fn lw_tape_cut_length(
    cut: Option<&lw_tape_cut>,
    length: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(length, "length", given(cut, "cut")?.0.length().into()))
}

/// What to cut, in whole millimeters: rounded up.
#[unsafe(no_mangle)]
pub extern "C" fn lw_tape_cut_rounded(
    cut: Option<&lw_tape_cut>,
    length: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(length, "length", given(cut, "cut")?.0.rounded().into()))
}

/// Standard deviation of the measurement, by a model of our own that stands among the assumptions.
#[unsafe(no_mangle)]
pub extern "C" fn lw_tape_cut_sigma(
    cut: Option<&lw_tape_cut>,
    sigma: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(sigma, "sigma", given(cut, "cut")?.0.sigma().into()))
}

/// The chance of being long enough that was asked for, a plain ratio.
#[unsafe(no_mangle)]
pub extern "C" fn lw_tape_cut_chance(
    cut: Option<&lw_tape_cut>,
    chance: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| put(chance, "chance", given(cut, "cut")?.0.chance().value))
}

/// Whether the least margin is larger than the one that the chance asks for; the true chance is then better.
#[unsafe(no_mangle)]
pub extern "C" fn lw_tape_cut_floor_acts(
    cut: Option<&lw_tape_cut>,
    floor_acts: Option<&mut MaybeUninit<i32>>,
) -> lw_status {
    call(|| put(floor_acts, "floor_acts", i32::from(given(cut, "cut")?.0.floor_acts())))
}

/// The number of terms that the length is the sum of.
#[unsafe(no_mangle)]
pub extern "C" fn lw_tape_cut_term_count(
    cut: Option<&lw_tape_cut>,
    count: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| put(count, "count", given(cut, "cut")?.0.terms().len()))
}

/// What a term is.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_tape_cut_term_text(
    cut: Option<&lw_tape_cut>,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe {
        fill_text(buf, cap, need, || Ok(item(given(cut, "cut")?.0.terms(), index)?.what.clone()))
    })
}

/// How much a term adds; it may be negative.
#[unsafe(no_mangle)]
pub extern "C" fn lw_tape_cut_term_length(
    cut: Option<&lw_tape_cut>,
    index: usize,
    length: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(length, "length", item(given(cut, "cut")?.0.terms(), index)?.length.into()))
}

/// The number of defaults that the length rests on.
#[unsafe(no_mangle)]
pub extern "C" fn lw_tape_cut_assumption_count(
    cut: Option<&lw_tape_cut>,
    count: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| put(count, "count", given(cut, "cut")?.0.assumptions().len()))
}

/// A default that the length rests on: what, the value used, and why this value.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_tape_cut_assumption_text(
    cut: Option<&lw_tape_cut>,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let assumption = || Ok(item(given(cut, "cut")?.0.assumptions(), index)?.to_string());
    call(|| unsafe { fill_text(buf, cap, need, assumption) })
}

/// Frees a cut length. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_tape_cut_free(cut: Option<Box<lw_tape_cut>>) {
    drop(cut);
}
