//! Clips: where along a line it is held, and how many to buy.

use crate::argument::{ArrayNames, fill, fill_text, given, given_mut, item, put};
use crate::call::{call, lw_status};
use crate::path::lw_path;
use crate::problem::lw_problems;
use crate::units::lw_length;
use linewright::clip::{self, ClipRule};
use linewright::source::Source;
use std::ffi::c_char;
use std::mem::MaybeUninit;

/// The stations of the fewest clips that keep a rule: no further apart than spacing, the first and last no further from
/// the ends than from_end; distances along the center line from end A. stations has room for cap of them; need receives
/// their number. A clip may fall into a bend: ask lw_clip_problems as well.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_clip_stations(
    path: Option<&lw_path>,
    spacing: lw_length,
    from_end: lw_length,
    stations: *mut lw_length,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let found = || {
        let rule = ClipRule::new(spacing.into(), from_end.into(), Source::common_practice())?;
        let clips = rule.clips(&given(path, "path")?.0).clips;
        Ok(clips.into_iter().map(|clip| clip.station.into()).collect())
    };
    call(|| unsafe { fill(&ArrayNames { buf: "stations", need: "need" }, stations, cap, need, found) })
}

/// What is worth knowing about the clips that lw_clip_stations gives for the same rule: LW_CLIP_IN_BEND for each that
/// falls into a bend. Free it with lw_problems_free.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_clip_problems(
    path: Option<&lw_path>,
    spacing: lw_length,
    from_end: lw_length,
    problems: Option<&mut MaybeUninit<Box<lw_problems>>>,
) -> lw_status {
    call(|| {
        let rule = ClipRule::new(spacing.into(), from_end.into(), Source::common_practice())?;
        put(problems, "problems", lw_problems::of(rule.clips(&given(path, "path")?.0).problems))
    })
}

/// Clips to buy: those that are missing, and spares.
#[unsafe(no_mangle)]
pub extern "C" fn lw_clips_to_buy(
    needed: usize,
    reusable: usize,
    buy: Option<&mut MaybeUninit<usize>>,
    spares: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| {
        let (buy, spares) = (given_mut(buy, "buy")?, given_mut(spares, "spares")?);
        let figures = clip::clips_to_buy(needed, reusable);
        buy.write(figures.0);
        spares.write(figures.1);
        Ok(())
    })
}

/// The number of spacing rules that the library knows.
#[unsafe(no_mangle)]
pub extern "C" fn lw_clip_rule_count(count: Option<&mut MaybeUninit<usize>>) -> lw_status {
    call(|| put(count, "count", clip::rules().len()))
}

/// A spacing rule: the largest distance between clips and from an end. Local codes and the vehicle maker's data rule
/// over it.
#[unsafe(no_mangle)]
pub extern "C" fn lw_clip_rule(
    index: usize,
    spacing: Option<&mut MaybeUninit<lw_length>>,
    from_end: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let rules = clip::rules();
        let rule = item(&rules, index)?;
        let (spacing, from_end) = (given_mut(spacing, "spacing")?, given_mut(from_end, "from_end")?);
        spacing.write(rule.spacing().into());
        from_end.write(rule.from_end().into());
        Ok(())
    })
}

/// Where a spacing rule comes from, and how that was checked.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_clip_rule_source(
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(item(&clip::rules(), index)?.source().to_string())) })
}
