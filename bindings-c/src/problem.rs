//! Findings about a line: what, where, how grave, what was found, what is needed, and the cure.

use crate::argument::{fill_text, given, given_mut, item, known, put};
use crate::call::{call, lw_status, number};
use crate::units::{lw_angle, lw_length};
use linewright::problem::{Acceptance, Part, Problem, Value};
use linewright::{Code, Error};
use std::ffi::c_char;
use std::mem::MaybeUninit;

/// A list of findings, the worst first.
#[derive(Debug)]
pub struct lw_problems(Vec<Problem>);

impl lw_problems {
    pub(crate) fn of(problems: Vec<Problem>) -> Box<lw_problems> {
        Box::new(lw_problems(problems))
    }
}

fn problem(problems: Option<&lw_problems>, index: usize) -> Result<&Problem, Error> {
    item(&given(problems, "problems")?.0, index)
}

fn wrong_kind(which: &str, value: &Value, kind: &str) -> Error {
    Problem::new(Code::WrongKind, Part::Field(which.to_owned()))
        .got(Value::text(value.to_string()))
        .need(Value::text(kind))
        .into()
}

fn length(which: &str, value: &Value) -> Result<lw_length, Error> {
    match value {
        Value::Length(length) => Ok((*length).into()),
        other => Err(wrong_kind(which, other, "a length")),
    }
}

fn angle(which: &str, value: &Value) -> Result<lw_angle, Error> {
    match value {
        Value::Angle(angle) => Ok((*angle).into()),
        other => Err(wrong_kind(which, other, "an angle")),
    }
}

/// Words for a value; none where there is nothing to say.
fn words(value: &Value) -> String {
    if *value == Value::Nothing { String::new() } else { value.to_string() }
}

fn lifted(problem: &Problem) -> Result<&Acceptance, Error> {
    known(problem.lifted.as_ref(), "lifted")
}

/// The number of findings.
#[unsafe(no_mangle)]
pub extern "C" fn lw_problems_count(
    problems: Option<&lw_problems>,
    count: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| put(count, "count", given(problems, "problems")?.0.len()))
}

/// What was found: a number of enum lw_code.
#[unsafe(no_mangle)]
pub extern "C" fn lw_problems_code(
    problems: Option<&lw_problems>,
    index: usize,
    code: Option<&mut MaybeUninit<i32>>,
) -> lw_status {
    call(|| put(code, "code", number(problem(problems, index)?.code)))
}

/// How grave: "refuse", "stop", "caution" or "note".
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_problems_level(
    problems: Option<&lw_problems>,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(problem(problems, index)?.level().name().to_owned())) })
}

/// Code and place, by which a person lifts it: "BENDS_TOO_CLOSE@bend 4". See lw_plan_options_accept.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_problems_id(
    problems: Option<&lw_problems>,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(problem(problems, index)?.id())) })
}

/// What it is about: "line", "field od", "end A", "straight 2", "bend 4", counted from 1 as on paper.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_problems_part(
    problems: Option<&lw_problems>,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(problem(problems, index)?.part.to_string())) })
}

/// Why it matters.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_problems_why(
    problems: Option<&lw_problems>,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(problem(problems, index)?.why.clone())) })
}

/// How to mend it.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_problems_fix(
    problems: Option<&lw_problems>,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(problem(problems, index)?.fix.clone())) })
}

/// What was found, in words; empty where there is nothing to say.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_problems_got_text(
    problems: Option<&lw_problems>,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(words(&problem(problems, index)?.got))) })
}

/// What is needed, in words; empty where there is nothing to say.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_problems_need_text(
    problems: Option<&lw_problems>,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(words(&problem(problems, index)?.need))) })
}

/// What is found, as a length.
///
/// Errors: LW_WRONG_KIND where it is something else; lw_problems_got_text has it in words.
#[unsafe(no_mangle)]
pub extern "C" fn lw_problems_got_length(
    problems: Option<&lw_problems>,
    index: usize,
    got: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let value = &problem(problems, index)?.got;
        let got = given_mut(got, "got")?;
        got.write(length("got", value)?);
        Ok(())
    })
}

/// What is found, as an angle.
///
/// Errors: LW_WRONG_KIND where it is something else; lw_problems_got_text has it in words.
#[unsafe(no_mangle)]
pub extern "C" fn lw_problems_got_angle(
    problems: Option<&lw_problems>,
    index: usize,
    got: Option<&mut MaybeUninit<lw_angle>>,
) -> lw_status {
    call(|| {
        let value = &problem(problems, index)?.got;
        let got = given_mut(got, "got")?;
        got.write(angle("got", value)?);
        Ok(())
    })
}

/// What is needed, as a length.
///
/// Errors: LW_WRONG_KIND where it is something else; lw_problems_need_text has it in words.
#[unsafe(no_mangle)]
pub extern "C" fn lw_problems_need_length(
    problems: Option<&lw_problems>,
    index: usize,
    need: Option<&mut MaybeUninit<lw_length>>,
) -> lw_status {
    call(|| {
        let value = &problem(problems, index)?.need;
        let need = given_mut(need, "need")?;
        need.write(length("need", value)?);
        Ok(())
    })
}

/// What is needed, as an angle.
///
/// Errors: LW_WRONG_KIND where it is something else; lw_problems_need_text has it in words.
#[unsafe(no_mangle)]
pub extern "C" fn lw_problems_need_angle(
    problems: Option<&lw_problems>,
    index: usize,
    need: Option<&mut MaybeUninit<lw_angle>>,
) -> lw_status {
    call(|| {
        let value = &problem(problems, index)?.need;
        let need = given_mut(need, "need")?;
        need.write(angle("need", value)?);
        Ok(())
    })
}

/// The whole finding in one line: level, code, part, why, got, need, cure.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_problems_text(
    problems: Option<&lw_problems>,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(problem(problems, index)?.to_string())) })
}

/// Whether it holds a plan back: a refusal, or a stop that nobody has lifted.
#[unsafe(no_mangle)]
pub extern "C" fn lw_problems_is_open(
    problems: Option<&lw_problems>,
    index: usize,
    is_open: Option<&mut MaybeUninit<i32>>,
) -> lw_status {
    call(|| put(is_open, "is_open", i32::from(problem(problems, index)?.is_open())))
}

/// Who lifted it.
///
/// Errors: LW_NOT_KNOWN where nobody did.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_problems_lifted_by(
    problems: Option<&lw_problems>,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(lifted(problem(problems, index)?)?.who.clone())) })
}

/// Why it was lifted.
///
/// Errors: LW_NOT_KNOWN where nobody lifted it.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_problems_lifted_why(
    problems: Option<&lw_problems>,
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(lifted(problem(problems, index)?)?.why.clone())) })
}

/// Frees a list of findings. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_problems_free(problems: Option<Box<lw_problems>>) {
    drop(problems);
}
