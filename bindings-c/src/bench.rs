//! The bench: the tools and habits of one workshop.

pub mod pieces;

use crate::argument::{given, given_mut, known, options, put, text};
use crate::call::{call, lw_status};
use crate::springback::lw_springback;
use crate::springback::mechanics::lw_mechanics;
use crate::units::lw_length;
use linewright::{Bench, Flare, FlareTool, Former};
use std::ffi::c_char;
use std::mem::MaybeUninit;

/// A bench.
#[derive(Debug)]
pub struct lw_bench(pub(crate) Bench);

/// A flare tool. Set size to sizeof(lw_flare_tool), and state both net_shortening and cut_spare: a struct filled with
/// zeros says that the tool was measured and shortens nothing.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct lw_flare_tool {
    /// sizeof(lw_flare_tool).
    pub size: usize,
    /// The form it makes: "double-45", "bubble" or "single-37".
    pub flare: *const c_char,
    /// The tube it grips.
    pub clamp: lw_length,
    /// The tube that stands out of the clamp before the first stroke.
    pub projection: lw_length,
    /// How much shorter the tube gets, tip to tip; lw_unknown_length() where no test piece was measured.
    pub net_shortening: lw_length,
    /// What is added on top for safety; lw_unknown_length() where none was stated.
    pub cut_spare: lw_length,
}

/// A bench with one former, which leaves a centerline radius of as_formed after springback and must hold grip of
/// straight tube before the bend. Free it with lw_bench_free.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_bench_new(
    as_formed: lw_length,
    grip: lw_length,
    bench: Option<&mut MaybeUninit<Box<lw_bench>>>,
) -> lw_status {
    call(|| {
        let former = Former::new(as_formed.into(), grip.into())?;
        put(bench, "bench", Box::new(lw_bench(Bench::new(former, &[])?)))
    })
}

/// A bench whose former is described by the centerline radius of its groove, for a tube whose material data are known: the
/// radius as formed is computed, and a plan says so. A test piece is better. Free it with lw_bench_free.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also where nothing of the bend would remain.
#[unsafe(no_mangle)]
pub extern "C" fn lw_bench_of_groove(
    groove: lw_length,
    grip: lw_length,
    tube: Option<&lw_mechanics>,
    bench: Option<&mut MaybeUninit<Box<lw_bench>>>,
) -> lw_status {
    call(|| {
        let former = Former::of_groove(groove.into(), grip.into(), &given(tube, "tube")?.0)?;
        put(bench, "bench", Box::new(lw_bench(Bench::new(former, &[])?)))
    })
}

/// A bench read back from where it was kept, whose former's radius as formed had been computed from the centerline radius of its
/// groove: the two radii of lw_bench_as_formed and lw_bench_groove. A plan says that the radius was computed. Free it with
/// lw_bench_free.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also for a groove wider than the radius as formed: a bend opens when it is let go.
#[unsafe(no_mangle)]
pub extern "C" fn lw_bench_kept(
    as_formed: lw_length,
    grip: lw_length,
    groove: lw_length,
    bench: Option<&mut MaybeUninit<Box<lw_bench>>>,
) -> lw_status {
    call(|| {
        let former = Former::new(as_formed.into(), grip.into())?.with_groove(groove.into())?;
        put(bench, "bench", Box::new(lw_bench(Bench::new(former, &[])?)))
    })
}

/// The centerline radius that the bench's former leaves after springback.
#[unsafe(no_mangle)]
pub extern "C" fn lw_bench_as_formed(
    bench: Option<&lw_bench>,
    as_formed: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(as_formed, "as_formed", given(bench, "bench")?.0.former().as_formed().into()))
}

/// The straight tube that the bench's former must hold before the bend.
#[unsafe(no_mangle)]
pub extern "C" fn lw_bench_grip(
    bench: Option<&lw_bench>,
    grip: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(grip, "grip", given(bench, "bench")?.0.former().grip().into()))
}

/// The centerline radius of the groove of the bench's former, where the radius as formed was computed from it.
///
/// Errors: LW_NOT_KNOWN where it was given.
#[unsafe(no_mangle)]
pub extern "C" fn lw_bench_groove(
    bench: Option<&lw_bench>,
    groove: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let found = given(bench, "bench")?.0.former().groove();
        let output = given_mut(groove, "groove")?;
        output.write(known(found, "groove")?.into());
        Ok(())
    })
}

/// Adds the tool for one form of flare. The tool's text and struct are not needed afterward.
///
/// Errors: LW_STRUCT_SIZE, LW_SINGLE_45_REFUSED, LW_UNKNOWN_NAME for the flare, LW_FIELDS_CONFLICT when the bench has a
/// tool for that form, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_bench_add_flare_tool(
    bench: Option<&mut lw_bench>,
    tool: *const lw_flare_tool,
) -> lw_status {
    call(|| {
        let bench = given_mut(bench, "bench")?;
        let tool = unsafe { options(tool, "tool") }?;
        let flare = Flare::from_name(unsafe { text(tool.flare, "tool.flare") }?)?;
        let mut made = FlareTool::new(flare, tool.clamp.into(), tool.projection.into())?;
        if let Some(net) = tool.net_shortening.known() {
            made = made.with_net_shortening(net)?;
        }
        if let Some(spare) = tool.cut_spare.known() {
            made = made.with_cut_spare(spare)?;
        }
        bench.0 = bench.0.clone().with_flare_tool(made)?;
        Ok(())
    })
}

/// Sets the springback of the former; without it a plan has no settings.
#[unsafe(no_mangle)]
pub extern "C" fn lw_bench_set_springback(
    bench: Option<&mut lw_bench>,
    springback: Option<&lw_springback>,
) -> lw_status {
    call(|| {
        let bench = given_mut(bench, "bench")?;
        bench.0 = bench.0.clone().with_springback(given(springback, "springback")?.0.clone());
        Ok(())
    })
}

/// Sets the working clearance beside a clamped flare tool; without it 2 mm are assumed and listed as an assumption.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_bench_set_clearance(bench: Option<&mut lw_bench>, clearance: lw_length) -> lw_status {
    call(|| {
        let bench = given_mut(bench, "bench")?;
        bench.0 = bench.0.clone().with_clearance(clearance.into())?;
        Ok(())
    })
}

/// Sets how far a nut must be able to back off; without it 3 mm are assumed and listed as an assumption.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_bench_set_back_off(bench: Option<&mut lw_bench>, back_off: lw_length) -> lw_status {
    call(|| {
        let bench = given_mut(bench, "bench")?;
        bench.0 = bench.0.clone().with_back_off(back_off.into())?;
        Ok(())
    })
}

/// Sets a name or number for this state of the bench; it is printed on the card.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_bench_set_revision(
    bench: Option<&mut lw_bench>,
    revision: *const c_char,
) -> lw_status {
    call(|| {
        let bench = given_mut(bench, "bench")?;
        bench.0 = bench.0.clone().with_revision(unsafe { text(revision, "revision") }?);
        Ok(())
    })
}

/// Frees a bench. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_bench_free(bench: Option<Box<lw_bench>>) {
    drop(bench);
}
