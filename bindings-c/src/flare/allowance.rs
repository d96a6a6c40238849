//! How much tube a flare takes: by the geometry of the finished form, by a rule of the trade, by a test piece.

use super::named;
use crate::argument::{fill_text, given, given_mut, item, known, put, text};
use crate::call::{call, lw_status};
use crate::units::lw_length;
use linewright::Error;
use linewright::flare::{Allowance, FlareForm, FlareTrial, Stretch, allowances, known_diameters};
use linewright::units::Length;
use std::ffi::c_char;
use std::mem::MaybeUninit;

/// The ways to the allowance of a flare, the one that wins first.
#[derive(Debug)]
pub struct lw_allowances(Vec<Allowance>);

fn way(allowances: Option<&lw_allowances>, index: usize) -> Result<&Allowance, Error> {
    item(&given(allowances, "allowances")?.0, index)
}

unsafe fn form(
    flare: *const c_char,
    od: lw_length,
    wall: lw_length,
    diameter: lw_length,
) -> Result<FlareForm, Error> {
    FlareForm::new(unsafe { named(flare) }?, od.into(), wall.into(), diameter.into())
}

unsafe fn assumed(stretch: *const c_char) -> Result<Stretch, Error> {
    Stretch::from_name(unsafe { text(stretch, "stretch") }?)
}

/// Tube that must stand out of the clamp before a flare ("double-45" or "bubble") of this finished diameter is formed, on
/// tube with this outside diameter and wall. Nobody knows beforehand how the wall stretches, so it is one of "keeps
/// length", "uniaxial" and "keeps wall": the middle of the wall keeps its length, thins as under hoop tension alone, or
/// keeps its thickness. The front angle of a bubble flare is an assumption.
///
/// Errors: LW_SINGLE_45_REFUSED, LW_UNKNOWN_NAME, LW_NOT_KNOWN for "single-37", whose geometry is not computed,
/// LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also where the diameter leaves no room for two leaves.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_flare_stick_out(
    flare: *const c_char,
    stretch: *const c_char,
    od: lw_length,
    wall: lw_length,
    diameter: lw_length,
    stick_out: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let stretch = unsafe { assumed(stretch) }?;
        put(stick_out, "stick_out", unsafe { form(flare, od, wall, diameter) }?.stick_out(stretch).into())
    })
}

/// Height of a finished flare from where the tube starts to widen.
///
/// Errors: as lw_flare_stick_out.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_flare_height(
    flare: *const c_char,
    od: lw_length,
    wall: lw_length,
    diameter: lw_length,
    height: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(height, "height", unsafe { form(flare, od, wall, diameter) }?.height().into()))
}

/// How much shorter a flare makes the tube, tip to tip, by its geometry: lw_flare_stick_out less lw_flare_height.
/// lw_flare_net_shortening gives the same from a test piece, which wins.
///
/// Errors: as lw_flare_stick_out.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_flare_net(
    flare: *const c_char,
    stretch: *const c_char,
    od: lw_length,
    wall: lw_length,
    diameter: lw_length,
    net: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let stretch = unsafe { assumed(stretch) }?;
        put(net, "net", unsafe { form(flare, od, wall, diameter) }?.net_shortening(stretch).into())
    })
}

/// Every way to the allowance of a flare, the one that wins first: a test piece, the geometry, a rule of the trade. A way
/// that says nothing is not in the list. least and most are the smallest and the largest diameter of the finished flare;
/// both lw_unknown_length() where the public figures are taken, if there are any for this tube and wall. before and after
/// are a test piece over all before and after one of its ends was flared; both lw_unknown_length() where there is none.
/// Free it with lw_allowances_free.
///
/// Errors: LW_SINGLE_45_REFUSED, LW_UNKNOWN_NAME for the flare, LW_NOT_A_NUMBER, also where one of two lengths that
/// belong together is unknown, LW_OUT_OF_RANGE, LW_NOT_KNOWN where no way says anything.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_flare_allowances(
    flare: *const c_char,
    od: lw_length,
    wall: lw_length,
    least: lw_length,
    most: lw_length,
    before: lw_length,
    after: lw_length,
    allowances: Option<&mut MaybeUninit<Box<lw_allowances>>>,
) -> lw_status {
    call(|| {
        let flare = unsafe { named(flare) }?;
        let (od, wall) = (od.into(), wall.into());
        let sizes = pair(least, most).or_else(|| known_diameters(flare, od, wall));
        let trial = pair(before, after).map(|[before, after]| FlareTrial::new(before, after)).transpose()?;
        let found = self::allowances(flare, od, wall, sizes, trial.as_ref())?;
        put(allowances, "allowances", Box::new(lw_allowances(found)))
    })
}

/// Two lengths, unless both are unknown. One alone is left to be refused as no number.
fn pair(first: lw_length, second: lw_length) -> Option<[Length; 2]> {
    let given = first.known().is_some() || second.known().is_some();
    given.then(|| [first.into(), second.into()])
}

/// The number of ways.
#[unsafe(no_mangle)]
pub extern "C" fn lw_allowances_count(
    allowances: Option<&lw_allowances>,
    count: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| put(count, "count", given(allowances, "allowances")?.0.len()))
}

/// What a way is: "test piece", "geometry" or "rule".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_allowances_way(
    allowances: Option<&lw_allowances>,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(way(allowances, index)?.way.name().to_owned())) })
}

fn put_range(
    range: Option<[Length; 2]>,
    what: &str,
    least: Option<&mut MaybeUninit<lw_length>>,
    most: Option<&mut MaybeUninit<lw_length>>,
) -> Result<(), Error> {
    let (least, most) = (given_mut(least, "least")?, given_mut(most, "most")?);
    let range = known(range, what)?;
    least.write(range[0].into());
    most.write(range[1].into());
    Ok(())
}

/// Tube that must stand out before forming, by this way.
///
/// Errors: LW_NOT_KNOWN where the way does not say it.
#[unsafe(no_mangle)]
pub extern "C" fn lw_allowances_stick_out(
    allowances: Option<&lw_allowances>,
    index: usize,
    least: Option<&mut MaybeUninit<lw_length>>,
    most: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put_range(way(allowances, index)?.stick_out, "stick_out", least, most))
}

/// How much shorter the tube gets, tip to tip, by this way.
///
/// Errors: LW_NOT_KNOWN where the way does not say it.
#[unsafe(no_mangle)]
pub extern "C" fn lw_allowances_net_shortening(
    allowances: Option<&lw_allowances>,
    index: usize,
    least: Option<&mut MaybeUninit<lw_length>>,
    most: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put_range(way(allowances, index)?.net_shortening, "net_shortening", least, most))
}

/// What is added to the cut as a whole, shortening and spare together, by this way.
///
/// Errors: LW_NOT_KNOWN where the way does not say it.
#[unsafe(no_mangle)]
pub extern "C" fn lw_allowances_cut_allowance(
    allowances: Option<&lw_allowances>,
    index: usize,
    cut_allowance: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let value = way(allowances, index)?.cut_allowance;
        let cut_allowance = given_mut(cut_allowance, "cut_allowance")?;
        cut_allowance.write(known(value, "cut_allowance")?.into());
        Ok(())
    })
}

/// Where a way's figures come from, and how that was checked.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_allowances_source(
    allowances: Option<&lw_allowances>,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(way(allowances, index)?.source.to_string())) })
}

/// Frees a list of allowances. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_allowances_free(allowances: Option<Box<lw_allowances>>) {
    drop(allowances);
}
