//! A line: tube, path, and what is at its two ends.

use crate::argument::{given, given_mut, put, text};
use crate::call::{call, lw_status};
use crate::end::lw_end;
use crate::path::lw_path;
use crate::tube::lw_tube;
use linewright::Line;
use std::ffi::c_char;
use std::mem::MaybeUninit;

/// A line to be made.
#[derive(Debug)]
pub struct lw_line(pub(crate) Line);

/// An end of a line: LW_A or LW_B.
pub type lw_side = i32;

/// The end nearer the pressure source.
pub const LW_A: lw_side = 0;

/// The other end.
pub const LW_B: lw_side = 1;

/// A line from its parts. Free it with lw_line_free.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_line_new(
    name: *const c_char,
    tube: Option<&lw_tube>,
    path: Option<&lw_path>,
    a: Option<&lw_end>,
    b: Option<&lw_end>,
    line: Option<&mut MaybeUninit<Box<lw_line>>>,
) -> lw_status {
    call(|| {
        let name = unsafe { text(name, "name") }?;
        let (tube, path) = (given(tube, "tube")?.0.clone(), given(path, "path")?.0.clone());
        let (a, b) = (given(a, "a")?.0.clone(), given(b, "b")?.0.clone());
        put(line, "line", Box::new(lw_line(Line::new(name, tube, path, a, b))))
    })
}

/// Defers a line: its figures are computed, its cut is locked. waits_for says for what; an empty text ends the wait.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_line_set_deferred(
    line: Option<&mut lw_line>,
    waits_for: *const c_char,
) -> lw_status {
    call(|| {
        let line = given_mut(line, "line")?;
        line.0 = line.0.clone().deferred(unsafe { text(waits_for, "waits_for") }?);
        Ok(())
    })
}

/// Frees a line. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_line_free(line: Option<Box<lw_line>>) {
    drop(line);
}
