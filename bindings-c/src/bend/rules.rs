//! What public texts ask of a bend, and what sizes they allow: rows with scope and source.

use crate::argument::{fill_text, given_mut, item, put};
use crate::call::{call, lw_status};
use crate::units::{lw_length, lw_unknown_length};
use linewright::Error;
use linewright::bend::pressure::{SizeTolerance, size_tolerances};
use linewright::bend::wall::{
    RadiusRule, SectionLimit, WallReserve, radius_rules, section_limits, wall_reserves,
};
use std::ffi::c_char;
use std::mem::MaybeUninit;

fn radius_rule(od: lw_length, index: usize) -> Result<RadiusRule, Error> {
    item(&radius_rules(od.into())?, index).cloned()
}

/// The number of smallest radii that public texts give for a tube diameter.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_radius_rule_count(od: lw_length, count: Option<&mut MaybeUninit<usize>>) -> lw_status {
    call(|| put(count, "count", radius_rules(od.into())?.len()))
}

/// What a smallest radius is said of. Errors: as lw_radius_rule_count, LW_INDEX_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_radius_rule_scope(
    od: lw_length,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(radius_rule(od, index)?.scope.to_owned())) })
}

/// The smallest centerline radius of a rule. Errors: as lw_radius_rule_scope.
#[unsafe(no_mangle)]
pub extern "C" fn lw_radius_rule_least(
    od: lw_length,
    index: usize,
    least: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(least, "least", radius_rule(od, index)?.least.into()))
}

/// Where it was read, and how that was checked. Errors: as lw_radius_rule_scope.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_radius_rule_source(
    od: lw_length,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(radius_rule(od, index)?.source.to_string())) })
}

fn section_limit(index: usize) -> Result<SectionLimit, Error> {
    item(&section_limits(), index).cloned()
}

/// The number of limits of flattening, ovality and wrinkles that public texts give.
#[unsafe(no_mangle)]
pub extern "C" fn lw_section_limit_count(count: Option<&mut MaybeUninit<usize>>) -> lw_status {
    call(|| put(count, "count", section_limits().len()))
}

/// What is limited: "flattening" (at least), "ovality" or "wrinkle" (at most). Errors: LW_INDEX_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_section_limit_measure(
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(section_limit(index)?.measure.name().to_owned())) })
}

/// What a limit is said of. Errors: LW_INDEX_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_section_limit_scope(
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(section_limit(index)?.scope.to_owned())) })
}

/// The limit, a plain share. Errors: LW_INDEX_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_section_limit_value(index: usize, limit: Option<&mut MaybeUninit<f64>>) -> lw_status {
    call(|| put(limit, "limit", section_limit(index)?.limit.value))
}

/// Where it was read, and how that was checked. Errors: LW_INDEX_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_section_limit_source(
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(section_limit(index)?.source.to_string())) })
}

fn wall_reserve(index: usize) -> Result<WallReserve, Error> {
    item(&wall_reserves(), index).cloned()
}

/// The number of rows of wall to have before bending.
#[unsafe(no_mangle)]
pub extern "C" fn lw_wall_reserve_count(count: Option<&mut MaybeUninit<usize>>) -> lw_status {
    call(|| put(count, "count", wall_reserves().len()))
}

/// Wall to have before bending as a multiple of the wall that is needed, for a centerline radius in diameters; for pipe.
///
/// Errors: LW_INDEX_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_wall_reserve(
    index: usize,
    radius_in_diameters: Option<&mut MaybeUninit<f64>>,
    multiple: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| {
        let row = wall_reserve(index)?;
        let radius = given_mut(radius_in_diameters, "radius_in_diameters")?;
        let multiple = given_mut(multiple, "multiple")?;
        radius.write(row.radius_in_diameters.value);
        multiple.write(row.multiple.value);
        Ok(())
    })
}

/// Where it was read, and how that was checked. Errors: LW_INDEX_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_wall_reserve_source(
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(wall_reserve(index)?.source.to_string())) })
}

fn tolerance(od: lw_length, index: usize) -> Result<SizeTolerance, Error> {
    item(&size_tolerances(od.into())?, index).cloned()
}

/// The number of tolerances of size that public texts give for a tube diameter; 0 where none was seen.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_size_tolerance_count(
    od: lw_length,
    count: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| put(count, "count", size_tolerances(od.into())?.len()))
}

/// What a tolerance is said of. Errors: as lw_size_tolerance_count, LW_INDEX_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_size_tolerance_scope(
    od: lw_length,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(tolerance(od, index)?.scope.to_owned())) })
}

/// The wall that a tolerance is said of, by how much it may be off either way, and the same of the outside diameter, which
/// is lw_unknown_length() where the text was not seen to say. Errors: as lw_size_tolerance_scope.
#[unsafe(no_mangle)]
pub extern "C" fn lw_size_tolerance(
    od: lw_length,
    index: usize,
    wall: Option<&mut MaybeUninit<lw_length>>,
    wall_plus_minus: Option<&mut MaybeUninit<lw_length>>,
    od_plus_minus: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let row = tolerance(od, index)?;
        let wall = given_mut(wall, "wall")?;
        let of_wall = given_mut(wall_plus_minus, "wall_plus_minus")?;
        let of_od = given_mut(od_plus_minus, "od_plus_minus")?;
        wall.write(row.wall.into());
        of_wall.write(row.wall_plus_minus.into());
        of_od.write(row.od_plus_minus.map_or_else(|| lw_unknown_length(), Into::into));
        Ok(())
    })
}

/// Where it was read, and how that was checked. Errors: as lw_size_tolerance_scope.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_size_tolerance_source(
    od: lw_length,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(tolerance(od, index)?.source.to_string())) })
}
