//! A section that bending has flattened, and the bore it leaves.

use crate::argument::{given, put, text};
use crate::call::{call, lw_status};
use crate::tube::lw_tube;
use crate::units::lw_length;
use linewright::Error;
use linewright::bend::wall::{FlattenedSection, Kinematics};
use linewright::units::{ratio, to_mm2};
use std::ffi::c_char;
use std::mem::MaybeUninit;

/// A flattened section of a tube.
#[derive(Debug)]
pub struct lw_section(FlattenedSection);

unsafe fn kinematics(name: *const c_char) -> Result<Kinematics, Error> {
    Kinematics::from_name(unsafe { text(name, "kinematics") }?)
}

/// A section by its flattening: smallest diameter as a share of the tube's, 1 = round. It flattens with its "perimeter
/// kept", as in free bending, or with its "sides held", as in the groove of a former. Free it with lw_section_free.
///
/// Errors: LW_UNKNOWN_NAME, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, also where no bore is left.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_section_of_flattening(
    tube: Option<&lw_tube>,
    flattening: f64,
    kinematics: *const c_char,
    section: Option<&mut MaybeUninit<Box<lw_section>>>,
) -> lw_status {
    call(|| {
        let (tube, kinematics) = (given(tube, "tube")?, unsafe { self::kinematics(kinematics) }?);
        let made = FlattenedSection::from_flattening(&tube.0, ratio(flattening), kinematics)?;
        put(section, "section", Box::new(lw_section(made)))
    })
}

/// A section by its ovality: largest less smallest diameter, as a share of the tube's nominal one, 0 = round. Otherwise as
/// lw_section_of_flattening.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_section_of_ovality(
    tube: Option<&lw_tube>,
    ovality: f64,
    kinematics: *const c_char,
    section: Option<&mut MaybeUninit<Box<lw_section>>>,
) -> lw_status {
    call(|| {
        let (tube, kinematics) = (given(tube, "tube")?, unsafe { self::kinematics(kinematics) }?);
        let made = FlattenedSection::from_ovality(&tube.0, ratio(ovality), kinematics)?;
        put(section, "section", Box::new(lw_section(made)))
    })
}

/// Largest outside diameter.
#[unsafe(no_mangle)]
pub extern "C" fn lw_section_largest(
    section: Option<&lw_section>,
    largest: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(largest, "largest", given(section, "section")?.0.largest().into()))
}

/// Smallest outside diameter.
#[unsafe(no_mangle)]
pub extern "C" fn lw_section_smallest(
    section: Option<&lw_section>,
    smallest: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(smallest, "smallest", given(section, "section")?.0.smallest().into()))
}

/// Largest less smallest diameter, as lw_ovality_amplification takes it.
#[unsafe(no_mangle)]
pub extern "C" fn lw_section_out_of_round(
    section: Option<&lw_section>,
    out_of_round: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(out_of_round, "out_of_round", given(section, "section")?.0.out_of_round().into()))
}

/// (Dmax - Dmin) / Dnom.
#[unsafe(no_mangle)]
pub extern "C" fn lw_section_ovality(
    section: Option<&lw_section>,
    ovality: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| put(ovality, "ovality", given(section, "section")?.0.ovality().value))
}

/// Dmin / D.
#[unsafe(no_mangle)]
pub extern "C" fn lw_section_flattening(
    section: Option<&lw_section>,
    flattening: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| put(flattening, "flattening", given(section, "section")?.0.flattening().value))
}

/// Bore left, in square millimeters.
#[unsafe(no_mangle)]
pub extern "C" fn lw_section_bore_area_mm2(
    section: Option<&lw_section>,
    bore_area_mm2: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| put(bore_area_mm2, "bore_area_mm2", to_mm2(given(section, "section")?.0.bore_area())))
}

/// Bore left as a share of the round tube's.
#[unsafe(no_mangle)]
pub extern "C" fn lw_section_bore_share(
    section: Option<&lw_section>,
    bore_share: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| put(bore_share, "bore_share", given(section, "section")?.0.bore_share().value))
}

/// Bore lost as a share of the round tube's.
#[unsafe(no_mangle)]
pub extern "C" fn lw_section_bore_loss(
    section: Option<&lw_section>,
    bore_loss: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| put(bore_loss, "bore_loss", given(section, "section")?.0.bore_loss().value))
}

/// Frees a section. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_section_free(section: Option<Box<lw_section>>) {
    drop(section);
}
