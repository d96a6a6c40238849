//! Threads: their designations, and what follows from them.

pub mod catalogue;

pub mod identify;

pub mod limits;

pub mod mate;

pub mod separate;

pub mod strip;

use crate::argument::{fill_text, given, given_mut, known, list, put, text};
use crate::call::{call, lw_status};
use crate::units::{lw_angle, lw_length};
use linewright::thread::{CATALOGUE, Class, Series, ThreadSide};
use linewright::units::{ratio, to_mm2};
use linewright::{Error, Thread};
use std::ffi::c_char;
use std::mem::MaybeUninit;

/// A thread: family, diameter and pitch, hand, and the class of its tolerances where one was given.
#[derive(Debug)]
pub struct lw_thread(pub(crate) Thread);

/// The threads of a list; where it is empty, those of the catalogue.
///
/// # Safety
/// `threads` is NULL or points to `n` threads.
unsafe fn among_or_all(threads: *const Option<&lw_thread>, n: usize) -> Result<Vec<Thread>, Error> {
    let named = unsafe { list(threads, n, "threads") }?;
    if named.is_empty() {
        return Ok(CATALOGUE.iter().map(|row| row.thread).collect());
    }
    let named = named.iter().enumerate();
    named.map(|(i, thread)| Ok(given(*thread, &format!("threads[{i}]"))?.0)).collect()
}

/// Reads a thread as people write it ("M 10 x 1,0", "7/16 - 24 UNS") and gives its designation in its one spelling
/// ("M10x1", "7/16-24").
///
/// Errors: LW_THREAD_AMBIGUOUS for a metric diameter without pitch, LW_HEX_NOT_THREAD for a spanner size,
/// LW_THREAD_CONTRADICTION, LW_UNREADABLE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_thread_read(
    text: *const c_char,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let designation = || Ok(Thread::read(unsafe { self::text(text, "text") }?)?.to_string());
    call(|| unsafe { fill_text(buf, cap, need, designation) })
}

/// A thread by its designation as people write it: "M10x1-6g", "3/8-24 UNF-2A", "G1/8 A", "Rc 1/8", "1/8-27 NPT". Free
/// it with lw_thread_free.
///
/// Errors: as lw_thread_read.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_thread_new(
    designation: *const c_char,
    thread: Option<&mut MaybeUninit<Box<lw_thread>>>,
) -> lw_status {
    call(|| {
        let read = Thread::read(unsafe { text(designation, "designation") }?)?;
        put(thread, "thread", Box::new(lw_thread(read)))
    })
}

/// The designation of a thread in its one spelling.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_thread_designation(
    thread: Option<&lw_thread>,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(given(thread, "thread")?.0.to_string())) })
}

/// The family of a thread: "metric", "unified", "G", "R", "Rp", "Rc" or "NPT".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_thread_family(
    thread: Option<&lw_thread>,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe {
        fill_text(buf, cap, need, || Ok(given(thread, "thread")?.0.family().name().to_owned()))
    })
}

/// The side of a thread, "external" or "internal", where its class or its family says it.
///
/// Errors: LW_NOT_KNOWN.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_thread_side(
    thread: Option<&lw_thread>,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let side = || Ok(known(given(thread, "thread")?.0.side().map(ThreadSide::name), "side")?.to_owned());
    call(|| unsafe { fill_text(buf, cap, need, side) })
}

/// The class of a thread, such as "6g" or "2B", where one was given.
///
/// Errors: LW_NOT_KNOWN.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_thread_class(
    thread: Option<&lw_thread>,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let class = || known(given(thread, "thread")?.0.class().map(|class: Class| class.to_string()), "class");
    call(|| unsafe { fill_text(buf, cap, need, class) })
}

/// The series of a Unified thread, "UNC", "UNF", "UNEF", "UN" or "UNS", which follows from diameter and count.
///
/// Errors: LW_NOT_KNOWN for other families, which have none.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_thread_series(
    thread: Option<&lw_thread>,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let series = || Ok(known(given(thread, "thread")?.0.series().map(Series::name), "series")?.to_owned());
    call(|| unsafe { fill_text(buf, cap, need, series) })
}

/// The group of engagement lengths that a metric designation names: "S", "N" or "L".
///
/// Errors: LW_NOT_KNOWN where it names none.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_thread_engagement(
    thread: Option<&lw_thread>,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let letter = || {
        let group = given(thread, "thread")?.0.engagement();
        Ok(known(group, "engagement")?.letter().to_string())
    };
    call(|| unsafe { fill_text(buf, cap, need, letter) })
}

/// The same thread without class and group of engagement lengths, as a thread of its own. Free it with lw_thread_free.
#[unsafe(no_mangle)]
pub extern "C" fn lw_thread_plain(
    thread: Option<&lw_thread>,
    plain: Option<&mut MaybeUninit<Box<lw_thread>>>,
) -> lw_status {
    call(|| put(plain, "plain", Box::new(lw_thread(given(thread, "thread")?.0.plain()))))
}

/// Writes a length that follows from a thread.
fn length(
    thread: Option<&lw_thread>,
    output: Option<&mut MaybeUninit<lw_length>>,
    name: &str,
    figure: impl FnOnce(&Thread) -> Result<linewright::units::Length, Error>,
) -> lw_status {
    call(|| {
        let value = figure(&given(thread, "thread")?.0)?;
        put(output, name, value.into())
    })
}

/// Nominal diameter; of a pipe thread its basic major diameter at the gauge plane, of NPT the pipe's.
#[unsafe(no_mangle)]
pub extern "C" fn lw_thread_diameter(
    thread: Option<&lw_thread>,
    diameter: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    length(thread, diameter, "diameter", |thread| Ok(thread.diameter()))
}

/// Pitch.
#[unsafe(no_mangle)]
pub extern "C" fn lw_thread_pitch(
    thread: Option<&lw_thread>,
    pitch: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    length(thread, pitch, "pitch", |thread| Ok(thread.pitch()))
}

/// Threads per inch.
#[unsafe(no_mangle)]
pub extern "C" fn lw_thread_per_inch(
    thread: Option<&lw_thread>,
    per_inch: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| put(per_inch, "per_inch", given(thread, "thread")?.0.per_inch()))
}

/// Half the angle between the flanks.
#[unsafe(no_mangle)]
pub extern "C" fn lw_thread_half_angle(
    thread: Option<&lw_thread>,
    half_angle: Option<&mut MaybeUninit<lw_angle>>,
) -> lw_status {
    call(|| put(half_angle, "half_angle", given(thread, "thread")?.0.half_angle().into()))
}

/// Change of diameter along the axis, a plain ratio: 1/16 for a taper thread, 0 for a parallel one.
#[unsafe(no_mangle)]
pub extern "C" fn lw_thread_taper(
    thread: Option<&lw_thread>,
    taper: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| put(taper, "taper", given(thread, "thread")?.0.taper().value))
}

/// Whether a thread is left-handed: 1, or 0.
#[unsafe(no_mangle)]
pub extern "C" fn lw_thread_is_left_hand(
    thread: Option<&lw_thread>,
    is_left_hand: Option<&mut MaybeUninit<i32>>,
) -> lw_status {
    let left = |thread: &Thread| thread.hand() == linewright::thread::Hand::Left;
    call(|| put(is_left_hand, "is_left_hand", i32::from(left(&given(thread, "thread")?.0))))
}

/// Basic height of the thread.
#[unsafe(no_mangle)]
pub extern "C" fn lw_thread_height(
    thread: Option<&lw_thread>,
    height: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    length(thread, height, "height", |thread| Ok(thread.height()))
}

/// Basic pitch diameter, not rounded; of NPT the one at the tip.
#[unsafe(no_mangle)]
pub extern "C" fn lw_thread_basic_pitch_diameter(
    thread: Option<&lw_thread>,
    diameter: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    length(thread, diameter, "diameter", |thread| Ok(thread.basic_pitch_diameter()))
}

/// Lead angle at the basic pitch diameter.
#[unsafe(no_mangle)]
pub extern "C" fn lw_thread_lead_angle(
    thread: Option<&lw_thread>,
    lead_angle: Option<&mut MaybeUninit<lw_angle>>,
) -> lw_status {
    call(|| put(lead_angle, "lead_angle", given(thread, "thread")?.0.lead_angle().into()))
}

/// Tensile stress area of the external thread in mm2.
///
/// Errors: LW_NOT_KNOWN for pipe threads, whose standards define none.
#[unsafe(no_mangle)]
pub extern "C" fn lw_thread_stress_area_mm2(
    thread: Option<&lw_thread>,
    area_mm2: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| {
        let area = known(given(thread, "thread")?.0.stress_area(), "area_mm2")?;
        put(area_mm2, "area_mm2", to_mm2(area))
    })
}

/// The hole for tapping with a share of the full thread, a plain ratio from 0.3 to 1; full is what drill charts count, 3/4
/// of the sharp triangle at 60 degrees: d - share x 1.299 P. At 55 degrees it is the thread's own height.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, LW_NOT_KNOWN for a taper thread.
#[unsafe(no_mangle)]
pub extern "C" fn lw_thread_tap_drill(
    thread: Option<&lw_thread>,
    share: f64,
    hole: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    length(thread, hole, "hole", |thread| thread.tap_drill(ratio(share)))
}

/// The share of the full thread that a hole leaves, a plain ratio in the sense of lw_thread_tap_drill: 5/6 for a hole of the
/// basic minor diameter at 60 degrees.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, LW_NOT_KNOWN for a taper thread.
#[unsafe(no_mangle)]
pub extern "C" fn lw_thread_share(
    thread: Option<&lw_thread>,
    hole: lw_length,
    share: Option<&mut MaybeUninit<f64>>,
) -> lw_status {
    call(|| put(share, "share", given(thread, "thread")?.0.thread_share(hole.into())?.value))
}

/// The shortest and longest normal engagement of a metric thread (ISO 965-1).
///
/// Errors: LW_NOT_KNOWN where the table has no row for it.
#[unsafe(no_mangle)]
pub extern "C" fn lw_thread_normal_engagement(
    thread: Option<&lw_thread>,
    shortest: Option<&mut MaybeUninit<lw_length>>,
    longest: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let (short, long) = known(given(thread, "thread")?.0.normal_engagement(), "engagement")?;
        let (shortest, longest) = (given_mut(shortest, "shortest")?, given_mut(longest, "longest")?);
        shortest.write(short.into());
        longest.write(long.into());
        Ok(())
    })
}

/// The group that an engaged length of a metric thread belongs to: "S" up to the shortest normal one, "N", or "L" beyond
/// the longest.
///
/// Errors: LW_NOT_A_NUMBER, LW_OUT_OF_RANGE, LW_NOT_KNOWN where the table has no row for the thread.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_thread_engagement_group(
    thread: Option<&lw_thread>,
    engaged: lw_length,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let letter = || {
        let group = given(thread, "thread")?.0.engagement_group(engaged.into())?;
        Ok(known(group, "engagement group")?.letter().to_string())
    };
    call(|| unsafe { fill_text(buf, cap, need, letter) })
}

/// The length of engagement that the tolerances of a Unified thread are based on where none is stated; lw_limits_new_over
/// takes another one.
///
/// Errors: LW_NOT_KNOWN for other families.
#[unsafe(no_mangle)]
pub extern "C" fn lw_thread_basic_engagement(
    thread: Option<&lw_thread>,
    engagement: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    length(thread, engagement, "engagement", |thread| known(thread.basic_engagement(), "engagement"))
}

/// How far a taper thread goes in by hand: the gauge length of R and Rc (ISO 7-1, from memory), L1 of NPT.
///
/// Errors: LW_NOT_KNOWN for a thread without taper.
#[unsafe(no_mangle)]
pub extern "C" fn lw_thread_gauge_length(
    thread: Option<&lw_thread>,
    gauge_length: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    length(thread, gauge_length, "gauge_length", |thread| known(thread.gauge_length(), "gauge_length"))
}

/// Thread with full flanks that an external taper thread has at least: of R (ISO 7-1, from memory), L2 of NPT.
///
/// Errors: LW_NOT_KNOWN for other families.
#[unsafe(no_mangle)]
pub extern "C" fn lw_thread_useful_length(
    thread: Option<&lw_thread>,
    useful_length: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    length(thread, useful_length, "useful_length", |thread| known(thread.useful_length(), "useful_length"))
}

/// Whether two designations name the same thread, whatever their classes: 1, or 0.
#[unsafe(no_mangle)]
pub extern "C" fn lw_thread_is_same_size(
    thread: Option<&lw_thread>,
    other: Option<&lw_thread>,
    is_same: Option<&mut MaybeUninit<i32>>,
) -> lw_status {
    call(|| {
        let same = given(thread, "thread")?.0.is_same_size(&given(other, "other")?.0);
        put(is_same, "is_same", i32::from(same))
    })
}

/// Frees a thread. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_thread_free(thread: Option<Box<lw_thread>>) {
    drop(thread);
}
