//! A line as it was typed: every field is text until it is checked.

use crate::argument::{fill_text, given, given_mut, item, put, text};
use crate::call::{call, lw_status};
use crate::line::lw_line;
use crate::problem::lw_problems;
use crate::units::{self, lw_notation};
use linewright::LineDraft;
use linewright::line::FIELDS;
use std::ffi::c_char;
use std::mem::MaybeUninit;

/// A line as it was typed.
#[derive(Debug)]
pub struct lw_draft(pub(crate) LineDraft);

/// A draft with nothing in it. Free it with lw_draft_free.
#[unsafe(no_mangle)]
pub extern "C" fn lw_draft_new(draft: Option<&mut MaybeUninit<Box<lw_draft>>>) -> lw_status {
    call(|| put(draft, "draft", Box::new(lw_draft(LineDraft::new()))))
}

/// Fills a field with what was typed; it is not looked at before lw_draft_check.
///
/// Errors: LW_UNKNOWN_NAME for the field.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_draft_set(
    draft: Option<&mut lw_draft>,
    field: *const c_char,
    typed: *const c_char,
) -> lw_status {
    call(|| {
        let draft = given_mut(draft, "draft")?;
        let (field, typed) = unsafe { (text(field, "field")?, text(typed, "typed")?) };
        draft.0.set(field, typed)?;
        Ok(())
    })
}

/// Checks every field and puts the line together. The status is LW_OK whatever was found: line receives the line, or
/// NULL where something was refused, and problems everything found, the worst first. Free them with lw_line_free and
/// lw_problems_free.
#[unsafe(no_mangle)]
pub extern "C" fn lw_draft_check(
    draft: Option<&lw_draft>,
    line: Option<&mut MaybeUninit<Option<Box<lw_line>>>>,
    problems: Option<&mut MaybeUninit<Box<lw_problems>>>,
) -> lw_status {
    call(|| {
        let draft = given(draft, "draft")?;
        let (line, problems) = (given_mut(line, "line")?, given_mut(problems, "problems")?);
        let checked = draft.0.check();
        line.write(checked.line.map(|line| Box::new(lw_line(line))));
        problems.write(lw_problems::of(checked.problems));
        Ok(())
    })
}

/// lw_draft_check of a draft from a file whose way of writing numbers is known; notation may be NULL.
///
/// Errors: LW_STRUCT_SIZE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_draft_check_in(
    draft: Option<&lw_draft>,
    notation: *const lw_notation,
    line: Option<&mut MaybeUninit<Option<Box<lw_line>>>>,
    problems: Option<&mut MaybeUninit<Box<lw_problems>>>,
) -> lw_status {
    call(|| {
        let draft = given(draft, "draft")?;
        let notation = unsafe { units::notation(notation) }?;
        let (line, problems) = (given_mut(line, "line")?, given_mut(problems, "problems")?);
        let checked = draft.0.check_in(notation);
        line.write(checked.line.map(|line| Box::new(lw_line(line))));
        problems.write(lw_problems::of(checked.problems));
        Ok(())
    })
}

/// The number of fields that a draft has.
#[unsafe(no_mangle)]
pub extern "C" fn lw_draft_field_count(count: Option<&mut MaybeUninit<usize>>) -> lw_status {
    call(|| put(count, "count", FIELDS.len()))
}

/// The name of a field, the same in every language.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_draft_field_name(
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(item(FIELDS, index)?.name.to_owned())) })
}

/// What belongs in a field.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn lw_draft_field_meaning(
    index: usize,
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
) -> lw_status {
    call(|| unsafe { fill_text(buf, cap, need, || Ok(item(FIELDS, index)?.meaning.to_owned())) })
}

/// Whether a line needs a field.
#[unsafe(no_mangle)]
pub extern "C" fn lw_draft_field_is_needed(
    index: usize,
    is_needed: Option<&mut MaybeUninit<i32>>,
) -> lw_status {
    call(|| put(is_needed, "is_needed", i32::from(item(FIELDS, index)?.needed)))
}

/// Frees a draft. NULL is allowed.
#[unsafe(no_mangle)]
pub extern "C" fn lw_draft_free(draft: Option<Box<lw_draft>>) {
    drop(draft);
}
