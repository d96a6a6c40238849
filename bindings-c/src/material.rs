//! Materials: what is known of a metal, each figure with its source.

use crate::argument::{fill_text, given, given_mut, item, known, none_of, put, source_of, text};
use crate::call::{call, lw_status};
use crate::units::lw_pressure;
use linewright::Error;
use linewright::material::{ALL, Condition, Material, PowerLaw, Properties};
use linewright::source::{Source, Sourced};
use linewright::units::{kg_per_m3, per_kelvin, ratio, to_kg_per_m3, to_per_kelvin};
use std::ffi::c_char;
use std::mem::MaybeUninit;

/// What is known of a metal.
#[derive(Debug)]
pub struct lw_properties(pub(crate) Properties);

/// The figures, by the names of their getters.
const FIGURES: [&str; 9] = [
    "density",
    "modulus",
    "poisson",
    "yield_strength",
    "tensile_strength",
    "elongation",
    "tangent_modulus",
    "hardening",
    "expansion",
];

unsafe fn material(name: *const c_char) -> Result<Material, Error> {
    Material::from_name(unsafe { text(name, "material") }?)
}

/// The number of tube materials that the library knows.
#[unsafe(no_mangle)]
pub extern "C" fn lw_material_count(count: Option<&mut MaybeUninit<usize>>) -> lw_status {
    call(|| put(count, "count", ALL.len()))
}

/// The name of a tube material: "low-carbon steel", "copper-nickel" and so on.
///
/// Errors: LW_INDEX_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_material_name(
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(item(&ALL, index)?.name().to_owned())) })
}

/// The number of conditions of a material that strengths are known for.
///
/// Errors: LW_UNKNOWN_NAME.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_material_condition_count(
    material: *const c_char,
    count: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| put(count, "count", unsafe { self::material(material) }?.conditions().len()))
}

/// A condition of a material that strengths are known for: "annealed", "half hard" and so on.
///
/// Errors: LW_UNKNOWN_NAME, LW_INDEX_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_material_condition(
    material: *const c_char,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe {
        fill_text(buf, cap, need, || {
            Ok(item(&self::material(material)?.conditions(), index)?.name().to_owned())
        })
    })
}

/// What is known of a tube material; strengths only where `condition` is not NULL, and they are what a standard asks for
/// at least, not what a tube has. Free it with lw_properties_free.
///
/// Errors: LW_UNKNOWN_NAME for the material, and for a condition that no figures are known for.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_material_properties(
    material: *const c_char,
    condition: *const c_char,
    properties: Option<&mut MaybeUninit<Box<lw_properties>>>,
) -> lw_status {
    call(|| {
        let material = unsafe { self::material(material) }?;
        let found = if condition.is_null() {
            material.properties()
        } else {
            material.properties_in(Condition::from_name(unsafe { text(condition, "condition") }?)?)?
        };
        put(properties, "properties", Box::new(lw_properties(found)))
    })
}

/// A metal of which nothing is known yet but what it is called. Free it with lw_properties_free.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_properties_new(
    name: *const c_char,
    properties: Option<&mut MaybeUninit<Box<lw_properties>>>,
) -> lw_status {
    call(|| {
        let own = Properties::named(unsafe { text(name, "name") }?);
        put(properties, "properties", Box::new(lw_properties(own)))
    })
}

/// Sets a figure of a metal with its source.
unsafe fn set(
    properties: Option<&mut lw_properties>,
    source: *const c_char,
    with: impl FnOnce(Properties, &str) -> Result<Properties, Error>,
) -> lw_status {
    call(|| {
        let properties = given_mut(properties, "properties")?;
        properties.0 = with(properties.0.clone(), unsafe { text(source, "source") }?)?;
        Ok(())
    })
}

/// Sets the mass per volume, with where it was read.
///
/// Errors: LW_FIELD_MISSING for an empty source, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_properties_set_density(
    properties: Option<&mut lw_properties>,
    density_kg_per_m3: f64,
    source: *const c_char,
) -> lw_status {
    unsafe { set(properties, source, |own, source| own.with_density(kg_per_m3(density_kg_per_m3), source)) }
}

/// Sets the elastic modulus, with where it was read. Errors: as lw_properties_set_density; LW_OUT_OF_RANGE also where a
/// tangent modulus that is known is not below it.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_properties_set_modulus(
    properties: Option<&mut lw_properties>,
    modulus: lw_pressure,
    source: *const c_char,
) -> lw_status {
    unsafe { set(properties, source, |own, source| own.with_modulus(modulus.into(), source)) }
}

/// Sets Poisson's ratio, with where it was read. Errors: as lw_properties_set_density.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_properties_set_poisson(
    properties: Option<&mut lw_properties>,
    poisson: f64,
    source: *const c_char,
) -> lw_status {
    unsafe { set(properties, source, |own, source| own.with_poisson(ratio(poisson), source)) }
}

/// Sets the yield strength, with where it was read. Errors: as lw_properties_set_density.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_properties_set_yield_strength(
    properties: Option<&mut lw_properties>,
    yield_strength: lw_pressure,
    source: *const c_char,
) -> lw_status {
    unsafe { set(properties, source, |own, source| own.with_yield_strength(yield_strength.into(), source)) }
}

/// Sets the tensile strength, with where it was read. Errors: as lw_properties_set_density.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_properties_set_tensile_strength(
    properties: Option<&mut lw_properties>,
    tensile_strength: lw_pressure,
    source: *const c_char,
) -> lw_status {
    unsafe {
        set(properties, source, |own, source| own.with_tensile_strength(tensile_strength.into(), source))
    }
}

/// Sets the elongation at break as a share, with where it was read. Errors: as lw_properties_set_density.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_properties_set_elongation(
    properties: Option<&mut lw_properties>,
    elongation: f64,
    source: *const c_char,
) -> lw_status {
    unsafe { set(properties, source, |own, source| own.with_elongation(ratio(elongation), source)) }
}

/// Sets the slope of stress over strain beyond the yield strength, where hardening is taken as a straight line, with where
/// it was read. It is of use only beside a yield strength. Errors: as lw_properties_set_density; LW_OUT_OF_RANGE also where
/// it is not below an elastic modulus that is known.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_properties_set_tangent_modulus(
    properties: Option<&mut lw_properties>,
    tangent_modulus: lw_pressure,
    source: *const c_char,
) -> lw_status {
    unsafe { set(properties, source, |own, source| own.with_tangent_modulus(tangent_modulus.into(), source)) }
}

/// Sets the law of hardening, true stress = strength_coefficient x true strain ^ hardening_exponent, with where it was
/// read. Errors: as lw_properties_set_density.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_properties_set_hardening(
    properties: Option<&mut lw_properties>,
    strength_coefficient: lw_pressure,
    hardening_exponent: f64,
    source: *const c_char,
) -> lw_status {
    let law =
        PowerLaw { strength_coefficient: strength_coefficient.into(), exponent: ratio(hardening_exponent) };
    unsafe { set(properties, source, |own, source| own.with_hardening(law, source)) }
}

/// Sets the growth in length per kelvin as a share, with where it was read. Errors: as lw_properties_set_density.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_properties_set_expansion(
    properties: Option<&mut lw_properties>,
    expansion_per_k: f64,
    source: *const c_char,
) -> lw_status {
    unsafe { set(properties, source, |own, source| own.with_expansion(per_kelvin(expansion_per_k), source)) }
}

/// The metal's name.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_properties_name(
    properties: Option<&lw_properties>,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(given(properties, "properties")?.0.name().to_owned())) })
}

/// Gets a figure of a metal as a plain number.
fn get<T, N>(
    properties: Option<&lw_properties>,
    (output, argument): (Option<&mut MaybeUninit<N>>, &str),
    figure: impl FnOnce(&Properties) -> Option<&Sourced<T>>,
    number: impl FnOnce(&T) -> N,
) -> lw_status {
    call(|| {
        let figure = figure(&given(properties, "properties")?.0);
        let output = given_mut(output, argument)?;
        output.write(number(&known(figure, argument)?.value));
        Ok(())
    })
}

/// Mass per volume. Errors: LW_NOT_KNOWN.
#[unsafe(no_mangle)]
pub extern "C" fn lw_properties_density(
    properties: Option<&lw_properties>,
    density_kg_per_m3: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    get(properties, (density_kg_per_m3, "density_kg_per_m3"), Properties::density, |v| to_kg_per_m3(*v))
}

/// Elastic modulus. Errors: LW_NOT_KNOWN.
#[unsafe(no_mangle)]
pub extern "C" fn lw_properties_modulus(
    properties: Option<&lw_properties>,
    modulus: Option<&mut MaybeUninit<lw_pressure>>,
) -> lw_status {
    get(properties, (modulus, "modulus"), Properties::modulus, |v| (*v).into())
}

/// Poisson's ratio. Errors: LW_NOT_KNOWN.
#[unsafe(no_mangle)]
pub extern "C" fn lw_properties_poisson(
    properties: Option<&lw_properties>,
    poisson: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    get(properties, (poisson, "poisson"), Properties::poisson, |v| v.value)
}

/// Yield strength: of a standard the least that it asks for. Errors: LW_NOT_KNOWN.
#[unsafe(no_mangle)]
pub extern "C" fn lw_properties_yield_strength(
    properties: Option<&lw_properties>,
    yield_strength: Option<&mut MaybeUninit<lw_pressure>>,
) -> lw_status {
    get(properties, (yield_strength, "yield_strength"), Properties::yield_strength, |v| (*v).into())
}

/// Tensile strength: of a standard the least that it asks for. Errors: LW_NOT_KNOWN.
#[unsafe(no_mangle)]
pub extern "C" fn lw_properties_tensile_strength(
    properties: Option<&lw_properties>,
    tensile_strength: Option<&mut MaybeUninit<lw_pressure>>,
) -> lw_status {
    get(properties, (tensile_strength, "tensile_strength"), Properties::tensile_strength, |v| (*v).into())
}

/// Elongation at break as a share. Errors: LW_NOT_KNOWN.
#[unsafe(no_mangle)]
pub extern "C" fn lw_properties_elongation(
    properties: Option<&lw_properties>,
    elongation: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    get(properties, (elongation, "elongation"), Properties::elongation, |v| v.value)
}

/// Slope of stress over strain beyond the yield strength. Errors: LW_NOT_KNOWN.
#[unsafe(no_mangle)]
pub extern "C" fn lw_properties_tangent_modulus(
    properties: Option<&lw_properties>,
    tangent_modulus: Option<&mut MaybeUninit<lw_pressure>>,
) -> lw_status {
    get(properties, (tangent_modulus, "tangent_modulus"), Properties::tangent_modulus, |v| (*v).into())
}

/// Law of hardening; see lw_properties_set_hardening. Errors: LW_NOT_KNOWN.
#[unsafe(no_mangle)]
pub extern "C" fn lw_properties_hardening(
    properties: Option<&lw_properties>,
    strength_coefficient: Option<&mut MaybeUninit<lw_pressure>>,
    hardening_exponent: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| {
        let law = given(properties, "properties")?.0.hardening();
        let coefficient = given_mut(strength_coefficient, "strength_coefficient")?;
        let exponent = given_mut(hardening_exponent, "hardening_exponent")?;
        let law = known(law, "hardening")?.value;
        coefficient.write(law.strength_coefficient.into());
        exponent.write(law.exponent.value);
        Ok(())
    })
}

/// Growth in length per kelvin as a share. Errors: LW_NOT_KNOWN.
#[unsafe(no_mangle)]
pub extern "C" fn lw_properties_expansion(
    properties: Option<&lw_properties>,
    expansion_per_k: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    get(properties, (expansion_per_k, "expansion_per_k"), Properties::expansion, |v| to_per_kelvin(*v))
}

fn source<'a>(properties: &'a Properties, figure: &str) -> Result<&'a Source, Error> {
    let source = match figure {
        "density" => source_of(properties.density()),
        "modulus" => source_of(properties.modulus()),
        "poisson" => source_of(properties.poisson()),
        "yield_strength" => source_of(properties.yield_strength()),
        "tensile_strength" => source_of(properties.tensile_strength()),
        "elongation" => source_of(properties.elongation()),
        "tangent_modulus" => source_of(properties.tangent_modulus()),
        "hardening" => source_of(properties.hardening()),
        "expansion" => source_of(properties.expansion()),
        other => return Err(none_of("figure", other, &FIGURES)),
    };
    known(source, figure)
}

/// Where a figure was read, and how that was checked. `figure` is the name of its getter after lw_properties_, such as
/// "yield_strength".
///
/// Errors: LW_NOT_KNOWN where the figure is not, LW_UNKNOWN_NAME.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_properties_source(
    properties: Option<&lw_properties>,
    figure: *const c_char,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe {
        fill_text(buf, cap, need, || {
            Ok(source(&given(properties, "properties")?.0, text(figure, "figure")?)?.to_string())
        })
    })
}

/// Frees what is known of a metal. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_properties_free(properties: Option<Box<lw_properties>>) {
    drop(properties);
}
