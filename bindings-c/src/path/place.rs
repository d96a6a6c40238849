//! How the bends of a path are made, where it is at a station, the room it takes, and how two paths differ.

use crate::argument::{fill_text, given, given_mut, item, put, text};
use crate::call::{call, lw_status};
use crate::path::lw_path;
use crate::problem::lw_problems;
use crate::units::{lw_angle, lw_length};
use linewright::path::Place;
use linewright::units::to_mm;
use linewright::{Bend, Error, Making, Path, bounds, check};
use std::ffi::c_char;
use std::mem::MaybeUninit;

/// Three numbers to be filled; the array may hold anything.
///
/// # Safety
/// `pointer` is NULL or points to an array of three.
unsafe fn three<'a>(pointer: *mut f64) -> Option<&'a mut MaybeUninit<[f64; 3]>> {
    // SAFETY: the caller's promise.
    unsafe { pointer.cast::<MaybeUninit<[f64; 3]>>().as_mut() }
}

/// Says how one bend is made: "former", "hand" or "mandrel". A new path's bends are made on the former; the others take
/// neither setting nor grip from the bench.
///
/// Errors: LW_UNKNOWN_NAME.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_path_set_making(
    path: Option<&mut lw_path>,
    index: usize,
    making: *const c_char,
) -> lw_status {
    call(|| {
        let path = given_mut(path, "path")?;
        let making = Making::from_name(unsafe { text(making, "making") }?)?;
        item(path.0.bends(), index)?;
        let made = |(i, bend): (usize, &Bend)| if i == index { bend.made(making) } else { *bend };
        let bends: Vec<Bend> = path.0.bends().iter().enumerate().map(made).collect();
        path.0 = Path::restored(path.0.straights(), &bends)?;
        Ok(())
    })
}

/// How a bend is made: "former", "hand" or "mandrel".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_path_making(
    path: Option<&lw_path>,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let name = || Ok(item(given(path, "path")?.0.bends(), index)?.making().name().to_owned());
    call(|| unsafe { fill_text(buf, cap, need, name) })
}

unsafe fn put_place(place: &Place, xyz_mm: *mut f64, direction: *mut f64) -> Result<(), Error> {
    let (xyz_mm, direction) = unsafe { (three(xyz_mm), three(direction)) };
    let (xyz_mm, direction) = (given_mut(xyz_mm, "xyz_mm")?, given_mut(direction, "direction")?);
    xyz_mm.write(place.point.map(to_mm));
    direction.write(place.direction.map(|part| part.value));
    Ok(())
}

/// Where a path is at a station, a distance along the center line from end A, in the pose of lw_path_vertices_mm: the
/// point in millimeters and the direction from A to B, of length one, each in an array of three.
///
/// Errors: LW_OUT_OF_RANGE beyond either end, LW_NOT_A_NUMBER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_path_place_at(
    path: Option<&lw_path>,
    station: lw_length,
    xyz_mm: *mut f64,
    direction: *mut f64,
) -> lw_status {
    call(|| unsafe { put_place(&given(path, "path")?.0.place_at(station.into())?, xyz_mm, direction) })
}

/// Where a path is at end B; otherwise as lw_path_place_at.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_path_end_place(
    path: Option<&lw_path>,
    xyz_mm: *mut f64,
    direction: *mut f64,
) -> lw_status {
    call(|| unsafe { put_place(&given(path, "path")?.0.end_place(), xyz_mm, direction) })
}

/// The box around tube of diameter od along a path, its sides along the axes of lw_path_vertices_mm: the corners with
/// the smallest and the largest coordinates in millimeters, each in an array of three.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_path_extent_mm(
    path: Option<&lw_path>,
    od: lw_length,
    low_mm: *mut f64,
    high_mm: *mut f64,
) -> lw_status {
    call(|| {
        let extent = given(path, "path")?.0.extent(bounds::OD.length(od.into())?);
        let (low_mm, high_mm) = unsafe { (three(low_mm), three(high_mm)) };
        let (low_mm, high_mm) = (given_mut(low_mm, "low_mm")?, given_mut(high_mm, "high_mm")?);
        low_mm.write(extent.low.map(to_mm));
        high_mm.write(extent.high.map(to_mm));
        Ok(())
    })
}

/// Compares a line as it was measured with what it shall be: every straight, bend and turn that differs by more than
/// the tolerances is named, and a mirror part is named as that; the list is empty where they agree. Free it with
/// lw_problems_free.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE for the tolerances.
#[unsafe(no_mangle)]
pub extern "C" fn lw_path_compare(
    wanted: Option<&lw_path>,
    measured: Option<&lw_path>,
    length: lw_length,
    angle: lw_angle,
    problems: Option<&mut MaybeUninit<Box<lw_problems>>>,
) -> lw_status {
    call(|| {
        let (wanted, measured) = (given(wanted, "wanted")?, given(measured, "measured")?);
        let length = bounds::CLEARANCE.length(length.into())?;
        let angle = bounds::ANGLE.angle(angle.into())?;
        put(problems, "problems", lw_problems::of(check::compare(&wanted.0, &measured.0, length, angle)))
    })
}
