//! Fluids: what is known of them, each figure with its source.

use crate::argument::{fill_text, given, given_mut, known, none_of, put, source_of, text};
use crate::call::{call, lw_status};
use crate::units::lw_pressure;
use linewright::Error;
use linewright::hydraulics::Fluid;
use linewright::source::Source;
use linewright::units::{kg_per_m3, per_kelvin, to_kg_per_m3, to_per_kelvin};
use std::ffi::c_char;
use std::mem::MaybeUninit;

/// What is known of a fluid.
#[derive(Debug)]
pub struct lw_fluid(pub(crate) Fluid);

/// A fluid of which nothing is known yet but what it is called. Free it with lw_fluid_free.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_fluid_new(
    name: *const c_char,
    fluid: Option<&mut MaybeUninit<Box<lw_fluid>>>,
) -> lw_status {
    call(|| {
        let made = Fluid::named(unsafe { text(name, "name") }?);
        put(fluid, "fluid", Box::new(lw_fluid(made)))
    })
}

/// Brake fluid on glycol, by what could be found: most of it from memory, as lw_fluid_source says. Free it with
/// lw_fluid_free.
#[unsafe(no_mangle)]
pub extern "C" fn lw_fluid_glycol(fluid: Option<&mut MaybeUninit<Box<lw_fluid>>>) -> lw_status {
    call(|| put(fluid, "fluid", Box::new(lw_fluid(Fluid::glycol()))))
}

unsafe fn set(
    fluid: Option<&mut lw_fluid>,
    source: *const c_char,
    with: impl FnOnce(Fluid, &str) -> Result<Fluid, Error>,
) -> lw_status {
    call(|| {
        let fluid = given_mut(fluid, "fluid")?;
        fluid.0 = with(fluid.0.clone(), unsafe { text(source, "source") }?)?;
        Ok(())
    })
}

/// Sets the mass per volume, with where it was read.
///
/// Errors: LW_FIELD_MISSING for an empty source, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_fluid_set_density(
    fluid: Option<&mut lw_fluid>,
    density_kg_per_m3: f64,
    source: *const c_char,
) -> lw_status {
    unsafe { set(fluid, source, |own, source| own.with_density(kg_per_m3(density_kg_per_m3), source)) }
}

/// Sets the bulk modulus, with where it was read. Errors: as lw_fluid_set_density.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_fluid_set_bulk_modulus(
    fluid: Option<&mut lw_fluid>,
    bulk_modulus: lw_pressure,
    source: *const c_char,
) -> lw_status {
    unsafe { set(fluid, source, |own, source| own.with_bulk_modulus(bulk_modulus.into(), source)) }
}

/// Sets the growth in volume per kelvin as a share, with where it was read. Errors: as lw_fluid_set_density.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_fluid_set_expansion(
    fluid: Option<&mut lw_fluid>,
    expansion_per_k: f64,
    source: *const c_char,
) -> lw_status {
    unsafe { set(fluid, source, |own, source| own.with_expansion(per_kelvin(expansion_per_k), source)) }
}

/// The fluid's name.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_fluid_name(
    fluid: Option<&lw_fluid>,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(given(fluid, "fluid")?.0.name().to_owned())) })
}

/// Mass per volume. Errors: LW_NOT_KNOWN.
#[unsafe(no_mangle)]
pub extern "C" fn lw_fluid_density(
    fluid: Option<&lw_fluid>,
    density_kg_per_m3: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| {
        let figure = given(fluid, "fluid")?.0.density();
        let output = given_mut(density_kg_per_m3, "density_kg_per_m3")?;
        output.write(to_kg_per_m3(known(figure, "density")?.value));
        Ok(())
    })
}

/// Bulk modulus. Errors: LW_NOT_KNOWN.
#[unsafe(no_mangle)]
pub extern "C" fn lw_fluid_bulk_modulus(
    fluid: Option<&lw_fluid>,
    bulk_modulus: Option<&mut MaybeUninit<lw_pressure>>,
) -> lw_status {
    call(|| {
        let figure = given(fluid, "fluid")?.0.bulk_modulus();
        let output = given_mut(bulk_modulus, "bulk_modulus")?;
        output.write(known(figure, "bulk_modulus")?.value.into());
        Ok(())
    })
}

/// Growth in volume per kelvin as a share. Errors: LW_NOT_KNOWN.
#[unsafe(no_mangle)]
pub extern "C" fn lw_fluid_expansion(
    fluid: Option<&lw_fluid>,
    expansion_per_k: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| {
        let figure = given(fluid, "fluid")?.0.expansion();
        let output = given_mut(expansion_per_k, "expansion_per_k")?;
        output.write(to_per_kelvin(known(figure, "expansion")?.value));
        Ok(())
    })
}

fn source<'a>(fluid: &'a Fluid, figure: &str) -> Result<&'a Source, Error> {
    let source = match figure {
        "density" => source_of(fluid.density()),
        "bulk_modulus" => source_of(fluid.bulk_modulus()),
        "expansion" => source_of(fluid.expansion()),
        other => return Err(none_of("figure", other, &["density", "bulk_modulus", "expansion"])),
    };
    known(source, figure)
}

/// Where a figure was read, and how that was checked: "density", "bulk_modulus" or "expansion".
///
/// Errors: LW_NOT_KNOWN where the figure is not, LW_UNKNOWN_NAME.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_fluid_source(
    fluid: Option<&lw_fluid>,
    figure: *const c_char,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe {
        fill_text(buf, cap, need, || {
            Ok(source(&given(fluid, "fluid")?.0, text(figure, "figure")?)?.to_string())
        })
    })
}

/// Frees a fluid. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_fluid_free(fluid: Option<Box<lw_fluid>>) {
    drop(fluid);
}
