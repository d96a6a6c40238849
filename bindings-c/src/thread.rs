//! Threads by their designation.

use crate::argument::{fill_text, text};
use crate::call::{call, lw_status};
use linewright::Thread;
use std::ffi::c_char;
use std::mem::MaybeUninit;

/// Reads a thread as people write it ("M 10 x 1,0", "7/16 - 24 UNS") and gives its designation in its one spelling
/// ("M10x1", "7/16-24").
///
/// Errors: LW_THREAD_AMBIGUOUS for a metric diameter without pitch, LW_HEX_NOT_THREAD for a spanner size,
/// LW_UNREADABLE.
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
