//! The measurements that tell two threads apart, with the readings to expect for each.

use super::lw_thread;
use crate::argument::{fill_text, given, given_mut, item, known, put, text};
use crate::call::{call, lw_status};
use crate::units::{lw_angle, lw_length};
use linewright::thread::{Separation, ThreadSide, separate};
use linewright::{Error, Thread, Value};
use std::ffi::c_char;
use std::mem::MaybeUninit;

/// Ways to tell two threads apart, in the order to be tried.
#[derive(Debug)]
pub struct lw_separation {
    threads: [Thread; 2],
    ways: Vec<Separation>,
}

fn way(separation: Option<&lw_separation>, index: usize) -> Result<&Separation, Error> {
    item(&given(separation, "separation")?.ways, index)
}

/// Every way to tell two threads apart on the "external" or "internal" side. Free it with
/// lw_separation_free.
///
/// Errors: LW_UNKNOWN_NAME for the side, LW_THREAD_SIDE where class or family of one belong to the other, LW_OUT_OF_RANGE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_separation_new(
    first: Option<&lw_thread>,
    second: Option<&lw_thread>,
    side: *const c_char,
    separation: Option<&mut MaybeUninit<Box<lw_separation>>>,
) -> lw_status {
    call(|| {
        let threads = [given(first, "first")?.0, given(second, "second")?.0];
        let side = ThreadSide::from_name(unsafe { text(side, "side") }?)?;
        let ways = separate(&threads[0], &threads[1], side)?;
        put(separation, "separation", Box::new(lw_separation { threads, ways }))
    })
}

/// The number of ways.
#[unsafe(no_mangle)]
pub extern "C" fn lw_separation_count(
    separation: Option<&lw_separation>,
    count: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| put(count, "count", given(separation, "separation")?.ways.len()))
}

/// What to measure: "hand", which a look shows, "ten pitches", "diameter", "taper over 5 mm" or "flank angle".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_separation_measure(
    separation: Option<&lw_separation>,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(way(separation, index)?.measure.name().to_owned())) })
}

/// Whether the readings do not overlap, the error of the measurement included: 1, or 0.
#[unsafe(no_mangle)]
pub extern "C" fn lw_separation_separates(
    separation: Option<&lw_separation>,
    index: usize,
    separates: Option<&mut MaybeUninit<i32>>,
) -> lw_status {
    call(|| put(separates, "separates", i32::from(way(separation, index)?.separates)))
}

/// The measurement in words: "measure the ten pitches: 10 mm for M11x1, 10.58 mm for 7/16-24".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_separation_words(
    separation: Option<&lw_separation>,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    let words = || {
        let way = way(separation, index)?;
        let [first, second] = given(separation, "separation")?.threads;
        Ok(way.words(first, second))
    };
    call(|| unsafe { fill_text(buf, cap, need, words) })
}

/// What a reading is, of two that are of the same kind.
fn expected<T>(
    separation: Option<&lw_separation>,
    index: usize,
    thread: usize,
    kind: impl Fn(&Value) -> Option<T>,
) -> Result<Option<[T; 2]>, Error> {
    let [least, most] = item(&way(separation, index)?.expected, thread)?;
    Ok(kind(least).zip(kind(most)).map(|(least, most)| [least, most]))
}

/// The least and the most length to read on the first thread (0) or the second (1).
///
/// Errors: LW_NOT_KNOWN where an angle is measured, or the hand looked at.
#[unsafe(no_mangle)]
pub extern "C" fn lw_separation_length(
    separation: Option<&lw_separation>,
    index: usize,
    thread: usize,
    least: Option<&mut MaybeUninit<lw_length>>,
    most: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let length = |value: &Value| if let Value::Length(length) = value { Some(*length) } else { None };
        let both = expected(separation, index, thread, length)?;
        let (least, most) = (given_mut(least, "least")?, given_mut(most, "most")?);
        let [min, max] = known(both, "length")?;
        least.write(min.into());
        most.write(max.into());
        Ok(())
    })
}

/// The least and the most angle to read on the first thread (0) or the second (1).
///
/// Errors: LW_NOT_KNOWN where a length is measured, or the hand looked at.
#[unsafe(no_mangle)]
pub extern "C" fn lw_separation_angle(
    separation: Option<&lw_separation>,
    index: usize,
    thread: usize,
    least: Option<&mut MaybeUninit<lw_angle>>,
    most: Option<&mut MaybeUninit<lw_angle>>,
) -> lw_status {
    call(|| {
        let angle = |value: &Value| if let Value::Angle(angle) = value { Some(*angle) } else { None };
        let both = expected(separation, index, thread, angle)?;
        let (least, most) = (given_mut(least, "least")?, given_mut(most, "most")?);
        let [min, max] = known(both, "angle")?;
        least.write(min.into());
        most.write(max.into());
        Ok(())
    })
}

/// Frees ways to tell threads apart. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_separation_free(separation: Option<Box<lw_separation>>) {
    drop(separation);
}
