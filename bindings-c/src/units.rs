//! Lengths, angles and pressures. They are different types, so that one given for the other does not compile.

use crate::argument::{fill_text, given_mut, options, put, text};
use crate::call::{call, lw_status};
use linewright::Error;
use linewright::units::{
    Angle, Length, Notation, Pressure, deg, exact_angle_text, exact_length_text, exact_pressure_text, inch,
    meter, mm, mpa, rad, read_angle, read_length, read_pressure, read_rotation, read_tolerance, to_deg,
    to_mm, to_mpa,
};
use std::ffi::c_char;
use std::mem::MaybeUninit;

/// A length.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct lw_length {
    /// Millimeters.
    pub mm: f64,
}

/// An angle.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct lw_angle {
    /// Degrees.
    pub deg: f64,
}

/// A pressure or a stress.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct lw_pressure {
    /// Megapascals.
    pub mpa: f64,
}

impl From<Pressure> for lw_pressure {
    fn from(pressure: Pressure) -> Self {
        lw_pressure { mpa: to_mpa(pressure) }
    }
}

impl From<lw_pressure> for Pressure {
    fn from(pressure: lw_pressure) -> Self {
        mpa(pressure.mpa)
    }
}

impl From<Length> for lw_length {
    fn from(length: Length) -> Self {
        lw_length { mm: to_mm(length) }
    }
}

impl From<lw_length> for Length {
    fn from(length: lw_length) -> Self {
        mm(length.mm)
    }
}

impl From<Angle> for lw_angle {
    fn from(angle: Angle) -> Self {
        lw_angle { deg: to_deg(angle) }
    }
}

impl From<lw_angle> for Angle {
    fn from(angle: lw_angle) -> Self {
        deg(angle.deg)
    }
}

/// How the numbers of one file are written. Set size to sizeof(lw_notation).
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct lw_notation {
    /// sizeof(lw_notation).
    pub size: usize,
    /// 1 where the file uses a decimal comma, so that "1.500 mm" is doubtful; what a text itself shows counts as well.
    pub decimal_comma: i32,
    /// 1 where a bare fraction in a field for tube sizes is inches; it is then listed as an assumption.
    pub bare_fraction_is_inch: i32,
}

/// The notation of a file; NULL where nothing is known about it.
///
/// # Safety
/// `notation` is NULL or points to a struct of the size that it begins with.
pub(crate) unsafe fn notation(notation: *const lw_notation) -> Result<Notation, Error> {
    if notation.is_null() {
        return Ok(Notation::default());
    }
    let given = unsafe { options(notation, "notation") }?;
    Ok(Notation {
        decimal_comma: given.decimal_comma != 0,
        bare_fraction_is_inch: given.bare_fraction_is_inch != 0,
    })
}

impl lw_angle {
    /// None where the caller says that it is not known.
    pub(crate) fn known(self) -> Option<Angle> {
        (!self.deg.is_nan()).then(|| self.into())
    }
}

impl lw_length {
    /// None where the caller says that it is not known.
    pub(crate) fn known(self) -> Option<Length> {
        (!self.mm.is_nan()).then(|| self.into())
    }
}

/// Lists of C quantities as the core takes them.
pub(crate) fn quantities<C: Copy + Into<Q>, Q>(items: &[C]) -> Vec<Q> {
    items.iter().map(|item| (*item).into()).collect()
}

/// A length of so many millimeters.
#[unsafe(no_mangle)]
pub extern "C" fn lw_mm(value_mm: f64) -> lw_length {
    lw_length { mm: value_mm }
}

/// A length of so many inches, taken as value x 25.4 mm without loss: 3.0 / 16.0 gives 4.7625 mm.
#[unsafe(no_mangle)]
pub extern "C" fn lw_in(value_in: f64) -> lw_length {
    inch(value_in).into()
}

/// A length of so many meters.
#[unsafe(no_mangle)]
pub extern "C" fn lw_m(value_m: f64) -> lw_length {
    meter(value_m).into()
}

/// An angle of so many degrees.
#[unsafe(no_mangle)]
pub extern "C" fn lw_deg(value_deg: f64) -> lw_angle {
    lw_angle { deg: value_deg }
}

/// An angle of so many radians.
#[unsafe(no_mangle)]
pub extern "C" fn lw_rad(value_rad: f64) -> lw_angle {
    rad(value_rad).into()
}

/// A pressure or stress of so many megapascals.
#[unsafe(no_mangle)]
pub extern "C" fn lw_mpa(value_mpa: f64) -> lw_pressure {
    lw_pressure { mpa: value_mpa }
}

/// A length that is not known or was not measured (NaN inside). Only where a comment allows it is it understood;
/// everywhere else it is refused with LW_NOT_A_NUMBER.
#[unsafe(no_mangle)]
pub extern "C" fn lw_unknown_length() -> lw_length {
    lw_length { mm: f64::NAN }
}

/// Reads a length as people write it: "3/16 in", "9 1/4 in", "5'-3 1/4\"", "1.85 m", "2,84 m", "28 thou". A number
/// without a unit is refused. The range is checked where the length is used.
///
/// Errors: LW_UNIT_MISSING, LW_WRONG_KIND for an angle, LW_NUMBER_AMBIGUOUS, LW_NOT_A_NUMBER, LW_DATE_IN_SIZE,
/// LW_UNREADABLE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_length_read(
    text: *const c_char,
    length: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(length, "length", read_length(unsafe { self::text(text, "text") }?)?.into()))
}

/// Reads an angle as people write it: "90 deg", "1.5708 rad", "0.25 turn", "150 deg included" (a bend of 30 degrees),
/// but no clock position, which is for rotations. A number without a unit is refused.
///
/// Errors: as lw_length_read, LW_WRONG_KIND for a length or a clock position, and LW_OUT_OF_RANGE for an included angle
/// that cannot be.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_angle_read(
    text: *const c_char,
    angle: Option<&mut MaybeUninit<lw_angle>>,
) -> lw_status {
    call(|| put(angle, "angle", read_angle(unsafe { self::text(text, "text") }?)?.into()))
}

/// Reads a pressure or a stress as people write it: "205 GPa", "240 N/mm2", "130 bar", "1900 psi", "30 ksi". Case does not
/// count, but for "mPa", a thousandth of a pascal, which is refused. A number without a unit is refused.
///
/// Errors: as lw_length_read, LW_WRONG_KIND for a length or an angle.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_pressure_read(
    text: *const c_char,
    pressure: Option<&mut MaybeUninit<lw_pressure>>,
) -> lw_status {
    call(|| put(pressure, "pressure", read_pressure(unsafe { self::text(text, "text") }?)?.into()))
}

/// A pressure that is not known (NaN inside). Only where a comment allows it is it understood; everywhere else it is
/// refused with LW_NOT_A_NUMBER.
#[unsafe(no_mangle)]
pub extern "C" fn lw_unknown_pressure() -> lw_pressure {
    lw_pressure { mpa: f64::NAN }
}

/// An angle that is not known (NaN inside). Only where a comment allows it is it understood; everywhere else it is
/// refused with LW_NOT_A_NUMBER.
#[unsafe(no_mangle)]
pub extern "C" fn lw_unknown_angle() -> lw_angle {
    lw_angle { deg: f64::NAN }
}

/// Reads the rotation of a bend plane: an angle with its sign, or "3 o'clock" for a quarter turn clockwise.
///
/// Errors: as lw_angle_read; LW_WRONG_KIND for an included angle, LW_OUT_OF_RANGE for an hour that cannot be.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_rotation_read(
    text: *const c_char,
    rotation: Option<&mut MaybeUninit<lw_angle>>,
) -> lw_status {
    call(|| put(rotation, "rotation", read_rotation(unsafe { self::text(text, "text") }?)?.into()))
}

/// Reads a length with its uncertainty: "9.45 mm +- 0.05 mm". Both numbers need their unit.
///
/// Errors: as lw_length_read; LW_OUT_OF_RANGE for a negative uncertainty.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_tolerance_read(
    text: *const c_char,
    value: Option<&mut MaybeUninit<lw_length>>,
    plus_minus: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let read = read_tolerance(unsafe { self::text(text, "text") }?)?;
        let (value, plus_minus) = (given_mut(value, "value")?, given_mut(plus_minus, "plus_minus")?);
        value.write(read.0.into());
        plus_minus.write(read.1.into());
        Ok(())
    })
}

/// A length with every digit: lw_length_read gives the same bits back.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_length_text(
    length: lw_length,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(exact_length_text(length.into()))) })
}

/// An angle with every digit of its degrees: lw_angle_read gives the same degrees back.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_angle_text(
    angle: lw_angle,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(exact_angle_text(angle.into()))) })
}

/// A pressure with every digit: lw_pressure_read gives the same bits back.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_pressure_text(
    pressure: lw_pressure,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(exact_pressure_text(pressure.into()))) })
}
