//! The tube that a line is made of.

use crate::argument::{fill_text, given, given_mut, known, put, text};
use crate::call::{call, lw_status};
use crate::units::lw_length;
use linewright::units::{to_g, to_ml};
use linewright::{Material, Tube};
use std::ffi::c_char;
use std::mem::MaybeUninit;

/// A tube.
#[derive(Debug)]
pub struct lw_tube(pub(crate) Tube);

/// A round tube by outside diameter, wall and the name of its material: "low-carbon steel", "copper-nickel",
/// "stainless 304" or "stainless 316". Free it with lw_tube_free.
///
/// Errors: LW_UNKNOWN_NAME for the material, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE (also when the wall leaves no bore).
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_tube_new(
    od: lw_length,
    wall: lw_length,
    material: *const c_char,
    tube: Option<&mut MaybeUninit<Box<lw_tube>>>,
) -> lw_status {
    call(|| {
        let material = Material::from_name(unsafe { text(material, "material") }?)?;
        put(tube, "tube", Box::new(lw_tube(Tube::new(od.into(), wall.into(), material)?)))
    })
}

/// Records the smallest bend radius that the tube's maker gives, and where that was read.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_tube_set_min_radius(
    tube: Option<&mut lw_tube>,
    radius: lw_length,
    source: *const c_char,
) -> lw_status {
    call(|| {
        let tube = given_mut(tube, "tube")?;
        tube.0 = tube.0.clone().with_min_radius(radius.into(), unsafe { text(source, "source") }?)?;
        Ok(())
    })
}

/// Outside diameter.
#[unsafe(no_mangle)]
pub extern "C" fn lw_tube_od(tube: Option<&lw_tube>, od: Option<&mut MaybeUninit<lw_length>>) -> lw_status {
    call(|| put(od, "od", given(tube, "tube")?.0.od().into()))
}

/// Wall thickness.
#[unsafe(no_mangle)]
pub extern "C" fn lw_tube_wall(
    tube: Option<&lw_tube>,
    wall: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(wall, "wall", given(tube, "tube")?.0.wall().into()))
}

/// Inside diameter.
#[unsafe(no_mangle)]
pub extern "C" fn lw_tube_bore(
    tube: Option<&lw_tube>,
    bore: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(bore, "bore", given(tube, "tube")?.0.bore().into()))
}

/// The name of the material, as lw_tube_new takes it.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_tube_material(
    tube: Option<&lw_tube>,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(given(tube, "tube")?.0.material().name().to_owned())) })
}

/// The smallest bend radius that the tube's maker gives, to the centerline. Errors: LW_NOT_KNOWN where none was recorded.
#[unsafe(no_mangle)]
pub extern "C" fn lw_tube_min_radius(
    tube: Option<&lw_tube>,
    min_radius: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let found = given(tube, "tube")?.0.min_radius();
        let output = given_mut(min_radius, "min_radius")?;
        output.write(known(found, "min_radius")?.value.into());
        Ok(())
    })
}

/// Where that radius was read. Errors: LW_NOT_KNOWN where none was recorded.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_tube_min_radius_source(
    tube: Option<&lw_tube>,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe {
        fill_text(buf, cap, need, || {
            let found = given(tube, "tube")?.0.min_radius();
            Ok(known(found, "min_radius")?.source.text.clone())
        })
    })
}

/// Volume of fluid in a length of this tube, in milliliters.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_tube_bore_volume_ml(
    tube: Option<&lw_tube>,
    length: lw_length,
    volume_ml: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| put(volume_ml, "volume_ml", to_ml(given(tube, "tube")?.0.bore_volume(length.into())?)))
}

/// Mass of a length of this tube, empty and without coating, in grams.
///
/// Errors: LW_NOT_KNOWN where the density of the material is not known, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub extern "C" fn lw_tube_mass_g(
    tube: Option<&lw_tube>,
    length: lw_length,
    mass_g: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| {
        let mass = given(tube, "tube")?.0.mass(length.into())?;
        let mass_g = given_mut(mass_g, "mass_g")?;
        mass_g.write(to_g(known(mass, "mass")?.value));
        Ok(())
    })
}

/// Frees a tube. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_tube_free(tube: Option<Box<lw_tube>>) {
    drop(tube);
}
