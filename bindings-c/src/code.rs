//! The table of codes. The header's enum lw_code is written from the core's table.

use crate::argument::fill_text;
use crate::call::{call, lw_status};
use linewright::code::CodeRow;
use linewright::problem::{Part, Problem, Value};
use linewright::{Code, Error};
use std::ffi::c_char;
use std::mem::MaybeUninit;

fn row(code: i32) -> Result<&'static CodeRow, Error> {
    u16::try_from(code).ok().and_then(Code::from_number).map(Code::row).ok_or_else(|| {
        Problem::new(Code::UnknownName, Part::Field("code".to_owned()))
            .got(Value::text(code.to_string()))
            .need(Value::text("a number of enum lw_code, other than LW_OK"))
            .into()
    })
}

/// The name of a code without its prefix, the same in every language: "UNIT_MISSING".
///
/// Errors: LW_UNKNOWN_NAME for a number that is no code.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_code_name(
    code: i32,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(row(code)?.name.to_owned())) })
}

/// How grave a code is: "refuse" (there is no result), "stop" (the plan is a draft), "caution" or "note".
///
/// Errors: LW_UNKNOWN_NAME for a number that is no code.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_code_level(
    code: i32,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(row(code)?.level.name().to_owned())) })
}

/// What a code says, in one sentence.
///
/// Errors: LW_UNKNOWN_NAME for a number that is no code.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_code_meaning(
    code: i32,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(row(code)?.meaning.to_owned())) })
}
