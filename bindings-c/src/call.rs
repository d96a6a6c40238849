//! The boundary: every call that can fail goes through one function, which lets no panic out and keeps the error.

#[cfg(test)]
mod tests;

use crate::argument::{fill_text, given_mut, put};
use crate::problem::lw_problems;
use linewright::problem::{Part, Problem, Value};
use linewright::{Code, Error};
use std::any::Any;
use std::cell::RefCell;
use std::ffi::c_char;
use std::mem::MaybeUninit;
use std::panic::{AssertUnwindSafe, catch_unwind};

/// LW_OK, or the number of the code that ended the call; see enum lw_code.
pub type lw_status = i32;

/// The status of a call that was answered.
pub(crate) const OK: lw_status = 0;

thread_local! {
    static LAST_ERROR: RefCell<Option<Error>> = const { RefCell::new(None) };
}

/// Runs a call, and keeps its error for this thread to ask about.
pub(crate) fn call(work: impl FnOnce() -> Result<(), Error>) -> lw_status {
    match catch(work) {
        Ok(()) => OK,
        Err(error) => {
            let status = number(error.code());
            // Only a thread that is ending has no place for it any more.
            let _ = LAST_ERROR.try_with(|last| last.replace(Some(error)));
            status
        }
    }
}

/// Runs a call about the last error, which its own failure must not overwrite.
fn ask(work: impl FnOnce(Option<&Error>) -> Result<(), Error>) -> lw_status {
    let last = LAST_ERROR.try_with(|last| last.borrow().clone()).ok().flatten();
    catch(|| work(last.as_ref())).map_or_else(|error| number(error.code()), |()| OK)
}

/// Turns a panic into an error. What a call changes it changes in its last step, so a panic leaves nothing half done.
pub(crate) fn catch<T>(work: impl FnOnce() -> Result<T, Error>) -> Result<T, Error> {
    catch_unwind(AssertUnwindSafe(work)).unwrap_or_else(|panic| {
        let fault = Problem::new(Code::InternalFault, Part::Line);
        Err(fault.got(Value::text(words(panic.as_ref()))).into())
    })
}

fn words(panic: &(dyn Any + Send)) -> &str {
    let text = panic.downcast_ref::<&str>().copied();
    text.or_else(|| panic.downcast_ref::<String>().map(String::as_str)).unwrap_or("no words")
}

pub(crate) fn number(code: Code) -> i32 {
    i32::from(code.number())
}

/// What the last failed call of this thread said, in one line: level, code, what it is about, got, need, cure. Empty
/// if no call failed yet. A call that succeeds leaves it as it is, and so do the lw_last_error functions.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_last_error_text(
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    ask(|last| unsafe { fill_text(buf, cap, need, || Ok(last.map(Error::to_string).unwrap_or_default())) })
}

/// The code of the last failed call of this thread; LW_OK if no call failed yet.
#[unsafe(no_mangle)]
pub extern "C" fn lw_last_error_code(code: Option<&mut MaybeUninit<i32>>) -> lw_status {
    ask(|last| put(code, "code", last.map_or(OK, |error| number(error.code()))))
}

/// The last failed call of this thread as a list of one problem; empty if no call failed yet. Free it with
/// lw_problems_free.
#[unsafe(no_mangle)]
pub extern "C" fn lw_last_error_problem(problems: Option<&mut MaybeUninit<Box<lw_problems>>>) -> lw_status {
    ask(|last| {
        let problems = given_mut(problems, "problems")?;
        problems.write(lw_problems::of(last.map(Error::problem).into_iter().cloned().collect()));
        Ok(())
    })
}
