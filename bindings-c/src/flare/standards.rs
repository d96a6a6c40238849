//! What public texts say about flares, their sizes and their threads: rows with how each was checked.

use super::named;
use crate::argument::{fill_text, given_mut, item, known, put, text};
use crate::call::{call, lw_status};
use crate::units::lw_length;
use linewright::flare::{
    FlareSize, HEXAGONS, Hexagon, STANDARDS, Standard, USUAL_THREADS, UsualThread, flare_size,
    known_diameters, seats_of,
};
use linewright::units::mm;
use linewright::{Error, Seat, Thread, bounds};
use std::ffi::c_char;
use std::mem::MaybeUninit;

unsafe fn size(flare: *const c_char, od: lw_length) -> Result<FlareSize, Error> {
    let flare = unsafe { named(flare) }?;
    known(flare_size(flare, bounds::OD.length(od.into())?), "diameter")
}

/// Smallest and largest diameter of a finished flare ("double-45", "bubble" or "single-37") on a tube, and the thickest
/// wall that they are for.
///
/// Errors: LW_NOT_KNOWN where no public text was seen, LW_SINGLE_45_REFUSED, LW_UNKNOWN_NAME for the flare,
/// LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_flare_size(
    flare: *const c_char,
    od: lw_length,
    least: Option<&mut MaybeUninit<lw_length>>,
    most: Option<&mut MaybeUninit<lw_length>>,
    wall_most: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let (least, most) = (given_mut(least, "least")?, given_mut(most, "most")?);
        let wall_most = given_mut(wall_most, "wall_most")?;
        let size = unsafe { size(flare, od) }?;
        least.write(size.least.into());
        most.write(size.most.into());
        wall_most.write(size.wall_most.into());
        Ok(())
    })
}

/// Smallest and largest diameter of a finished flare on a tube with this wall, as lw_flare_size has them.
///
/// Errors: LW_NOT_KNOWN where no public text was seen, and for a wall thicker than its figures are for;
/// LW_SINGLE_45_REFUSED, LW_UNKNOWN_NAME for the flare, LW_NOT_A_NUMBER, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_flare_known_diameters(
    flare: *const c_char,
    od: lw_length,
    wall: lw_length,
    least: Option<&mut MaybeUninit<lw_length>>,
    most: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let (least, most) = (given_mut(least, "least")?, given_mut(most, "most")?);
        let flare = unsafe { named(flare) }?;
        let (od, wall) = (bounds::OD.length(od.into())?, bounds::WALL.length(wall.into())?);
        let found = known(known_diameters(flare, od, wall), "diameter")?;
        least.write(found[0].into());
        most.write(found[1].into());
        Ok(())
    })
}

/// Where the diameters of lw_flare_size were read, and how that was checked.
///
/// Errors: as lw_flare_size.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_flare_size_source(
    flare: *const c_char,
    od: lw_length,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(size(flare, od)?.source.to_string())) })
}

fn standard(index: usize) -> Result<&'static Standard, Error> {
    item(STANDARDS, index)
}

/// The number of standards of flared lines and their fittings that the library has heard of.
#[unsafe(no_mangle)]
pub extern "C" fn lw_flare_standard_count(count: Option<&mut MaybeUninit<usize>>) -> lw_status {
    call(|| put(count, "count", STANDARDS.len()))
}

/// Number and edition of a standard, as seen.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_flare_standard_name(
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(standard(index)?.name.to_owned())) })
}

/// What a standard covers.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_flare_standard_covers(
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(standard(index)?.covers.to_owned())) })
}

/// How that was checked: "seen", "seen second-hand", "from memory, not checked" and so on.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_flare_standard_checked(
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(standard(index)?.source.checked.name().to_owned())) })
}

/// Where what a standard covers comes from: the text with its edition, the place in it, and how that was checked.
///
/// Errors: LW_INDEX_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_flare_standard_source(
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(standard(index)?.source.source().to_string())) })
}

fn usual(index: usize) -> Result<&'static UsualThread, Error> {
    item(USUAL_THREADS, index)
}

/// The number of rows of threads by seat and tube.
#[unsafe(no_mangle)]
pub extern "C" fn lw_usual_thread_count(count: Option<&mut MaybeUninit<usize>>) -> lw_status {
    call(|| put(count, "count", USUAL_THREADS.len()))
}

/// The designation of a usual thread. A thread never tells the seat: see lw_seats_of_thread.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_usual_thread_designation(
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(usual(index)?.designation.to_owned())) })
}

/// The standard that names a usual thread.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_usual_thread_standard(
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(usual(index)?.standard.to_owned())) })
}

/// The seat that a usual thread goes with: "inverted-45", "bubble" or "cone-37".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_usual_thread_seat(
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(usual(index)?.seat.name().to_owned())) })
}

/// Outside diameter of the tube that a usual thread goes with.
#[unsafe(no_mangle)]
pub extern "C" fn lw_usual_thread_od(index: usize, od: Option<&mut MaybeUninit<lw_length>>) -> lw_status {
    call(|| put(od, "od", mm(usual(index)?.od_mm).into()))
}

/// How a row of usual threads was checked.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_usual_thread_checked(
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(usual(index)?.source.checked.name().to_owned())) })
}

/// Where a usual thread comes from: the text with its edition, the place in it, and how that was checked.
///
/// Errors: LW_INDEX_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_usual_thread_source(
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(usual(index)?.source.source().to_string())) })
}

/// The seats that a thread ("M10x1") is known with on a tube.
///
/// # Safety
/// `thread` is NULL or points to a text that ends in NUL.
unsafe fn seats(thread: *const c_char, od: lw_length) -> Result<Vec<Seat>, Error> {
    let thread = Thread::read(unsafe { text(thread, "thread") }?)?;
    Ok(seats_of(&thread, bounds::OD.length(od.into())?))
}

/// The number of seats that a thread ("M10x1") is known with on a tube. More than one says that the thread does not
/// settle the seat; none says that nothing is known.
///
/// Errors: LW_THREAD_AMBIGUOUS, LW_THREAD_CONTRADICTION, LW_HEX_NOT_THREAD, LW_UNREADABLE, LW_NOT_A_NUMBER,
/// LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_seats_of_thread_count(
    thread: *const c_char,
    od: lw_length,
    count: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| put(count, "count", unsafe { seats(thread, od) }?.len()))
}

/// One of the seats that a thread is known with on a tube: "inverted-45", "bubble" or "cone-37".
///
/// Errors: as lw_seats_of_thread_count.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_seats_of_thread(
    thread: *const c_char,
    od: lw_length,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let seat = || Ok(item(&unsafe { seats(thread, od) }?, index)?.name().to_owned());
    call(|| unsafe { fill_text(buf, cap, need, seat) })
}

fn hexagon(index: usize) -> Result<&'static Hexagon, Error> {
    item(HEXAGONS, index)
}

/// The number of hexagons that are met with threads. They are for choosing a spanner, and no way to a thread.
#[unsafe(no_mangle)]
pub extern "C" fn lw_hexagon_count(count: Option<&mut MaybeUninit<usize>>) -> lw_status {
    call(|| put(count, "count", HEXAGONS.len()))
}

/// Where a hexagon is met: "M10x1 nut".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_hexagon_on(
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(hexagon(index)?.on.to_owned())) })
}

/// A hexagon across its flats.
#[unsafe(no_mangle)]
pub extern "C" fn lw_hexagon_across_flats(
    index: usize,
    across_flats: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| put(across_flats, "across_flats", mm(hexagon(index)?.across_flats_mm).into()))
}

/// How a row of hexagons was checked.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_hexagon_checked(
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(hexagon(index)?.source.checked.name().to_owned())) })
}

/// Where a hexagon comes from: the text with its edition, the place in it, and how that was checked.
///
/// Errors: LW_INDEX_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_hexagon_source(
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(hexagon(index)?.source.source().to_string())) })
}
