//! A span of line between two clips: its first bending frequency, the span for a frequency, and spacings of public texts.

use super::fluid::lw_fluid;
use crate::argument::{fill_text, given, given_mut, item, put, text};
use crate::call::{call, lw_status};
use crate::material::lw_properties;
use crate::tube::lw_tube;
use crate::units::{lw_length, lw_unknown_length};
use linewright::Error;
use linewright::hydraulics::{SpacingRow, Span, SpanEnds, handbook_spacings};
use linewright::units::{hz, to_g, to_hz};
use std::ffi::c_char;
use std::mem::MaybeUninit;

/// A tube between clips, full or empty.
#[derive(Debug)]
pub struct lw_span(Span);

unsafe fn ends(name: *const c_char) -> Result<SpanEnds, Error> {
    SpanEnds::from_name(unsafe { text(name, "ends") }?)
}

/// A tube with what is known of its metal, and of the fluid in it; empty where `fluid` is NULL. Free it with lw_span_free.
///
/// Errors: LW_NOT_KNOWN where the metal's modulus or one of the densities is missing.
#[unsafe(no_mangle)]
pub extern "C" fn lw_span_new(
    tube: Option<&lw_tube>,
    metal: Option<&lw_properties>,
    fluid: Option<&lw_fluid>,
    span: Option<&mut MaybeUninit<Box<lw_span>>>,
) -> lw_status {
    call(|| {
        let (tube, metal) = (given(tube, "tube")?, given(metal, "metal")?);
        let made = Span::new(&tube.0, &metal.0, fluid.map(|fluid| &fluid.0))?;
        put(span, "span", Box::new(lw_span(made)))
    })
}

/// Mass of a length with the fluid in it, in grams. Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_span_mass_g(
    span: Option<&lw_span>,
    length: lw_length,
    mass_g: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| put(mass_g, "mass_g", to_g(given(span, "span")?.0.mass(length.into())?)))
}

/// First bending frequency of a span, in hertz; its clips are "pinned" (let it tilt), "clamped" or "clamped-pinned".
///
/// Errors: LW_UNKNOWN_NAME, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_span_first_frequency_hz(
    span: Option<&lw_span>,
    length: lw_length,
    ends: *const c_char,
    frequency_hz: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| {
        let span = given(span, "span")?.0;
        let frequency = span.first_frequency(length.into(), unsafe { self::ends(ends) }?)?;
        put(frequency_hz, "frequency_hz", to_hz(frequency))
    })
}

/// The span whose first frequency is the wanted one; clips nearer than that raise it.
///
/// Errors: as lw_span_first_frequency_hz, LW_OUT_OF_RANGE also for a span that no clips are set at.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_span_length_for(
    span: Option<&lw_span>,
    wanted_hz: f64,
    ends: *const c_char,
    length: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let span = given(span, "span")?.0;
        put(length, "length", span.length_for(hz(wanted_hz), unsafe { self::ends(ends) }?)?.into())
    })
}

/// Frees a span. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_span_free(span: Option<Box<lw_span>>) {
    drop(span);
}

fn spacing(od: lw_length, index: usize) -> Result<SpacingRow, Error> {
    item(&handbook_spacings(od.into())?, index).cloned()
}

/// The number of distances between clips that public texts give for a tube diameter; 0 where none is known. None is of
/// brakes.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_handbook_spacing_count(
    od: lw_length,
    count: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| put(count, "count", handbook_spacings(od.into())?.len()))
}

/// What a distance is said of. Errors: as lw_handbook_spacing_count, LW_INDEX_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_handbook_spacing_scope(
    od: lw_length,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(spacing(od, index)?.scope.to_owned())) })
}

/// Smallest and largest distance of a row; the smallest is lw_unknown_length() where the row gives only one. Errors: as
/// lw_handbook_spacing_scope.
#[unsafe(no_mangle)]
pub extern "C" fn lw_handbook_spacing(
    od: lw_length,
    index: usize,
    least: Option<&mut MaybeUninit<lw_length>>,
    most: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let row = spacing(od, index)?;
        let (least, most) = (given_mut(least, "least")?, given_mut(most, "most")?);
        least.write(row.least.map_or_else(|| lw_unknown_length(), Into::into));
        most.write(row.most.into());
        Ok(())
    })
}

/// Where it was read, and how that was checked. Errors: as lw_handbook_spacing_scope.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_handbook_spacing_source(
    od: lw_length,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(spacing(od, index)?.source.to_string())) })
}
