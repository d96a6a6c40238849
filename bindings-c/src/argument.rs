//! What comes in and goes out: NULL refused by name, text checked, buffers filled whole or not at all.

use linewright::problem::{Part, Problem, Side, Value};
use linewright::source::{Source, Sourced};
use linewright::{Code, Error};
use std::ffi::{CStr, c_char};
use std::mem::MaybeUninit;
use std::{ptr, slice};

fn refuse(code: Code, argument: &str, got: Value, need: Value) -> Error {
    Problem::new(code, Part::Field(argument.to_owned())).got(got).need(need).into()
}

fn null(argument: &str) -> Error {
    refuse(Code::NullArgument, argument, Value::Nothing, Value::Nothing)
}

/// What a pointer to something to read points to.
pub(crate) fn given<'a, T>(pointer: Option<&'a T>, argument: &str) -> Result<&'a T, Error> {
    pointer.ok_or_else(|| null(argument))
}

/// What a pointer to something to change or fill points to.
pub(crate) fn given_mut<'a, T>(pointer: Option<&'a mut T>, argument: &str) -> Result<&'a mut T, Error> {
    pointer.ok_or_else(|| null(argument))
}

/// Writes the one output of a call.
pub(crate) fn put<T>(output: Option<&mut MaybeUninit<T>>, argument: &str, value: T) -> Result<(), Error> {
    given_mut(output, argument)?.write(value);
    Ok(())
}

/// A text.
///
/// # Safety
/// `pointer` is NULL or points to a text that ends in NUL and stays as it is for `'a`.
pub(crate) unsafe fn text<'a>(pointer: *const c_char, argument: &str) -> Result<&'a str, Error> {
    if pointer.is_null() {
        return Err(null(argument));
    }
    // SAFETY: not NULL; the rest is the caller's promise.
    let text = unsafe { CStr::from_ptr(pointer) };
    text.to_str().map_err(|error| {
        let got = format!(
            "{} and a byte that belongs to no character",
            &text.to_string_lossy()[..error.valid_up_to()]
        );
        refuse(Code::TextNotUtf8, argument, Value::text(got), Value::Nothing)
    })
}

/// A list; NULL will do where it is empty.
///
/// # Safety
/// `pointer` is NULL or points to `count` items that stay as they are for `'a`.
pub(crate) unsafe fn list<'a, T>(pointer: *const T, count: usize, argument: &str) -> Result<&'a [T], Error> {
    if count == 0 {
        return Ok(&[]);
    }
    if pointer.is_null() {
        return Err(null(argument));
    }
    let most = isize::MAX.unsigned_abs() / size_of::<T>().max(1);
    if count > most {
        return Err(refuse(
            Code::OutOfRange,
            argument,
            Value::Count(count),
            Value::text(format!("at most {most} items")),
        ));
    }
    // SAFETY: not NULL and within what memory can hold; the rest is the caller's promise.
    Ok(unsafe { slice::from_raw_parts(pointer, count) })
}

/// The names of the two arguments that take an array.
pub(crate) struct ArrayNames {
    pub(crate) buf: &'static str,
    pub(crate) need: &'static str,
}

/// Refuses an array that is NULL and is said to have room.
pub(crate) fn room<T>(buf: *mut T, cap: usize, argument: &str) -> Result<(), Error> {
    if buf.is_null() && cap > 0 { Err(null(argument)) } else { Ok(()) }
}

/// Fills the caller's array with all items or, where it is too small, with none; says in any case how many there are.
///
/// # Safety
/// `buf` is NULL or has room for `cap` items.
pub(crate) unsafe fn fill<T: Copy>(
    names: &ArrayNames,
    buf: *mut T,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
    work: impl FnOnce() -> Result<Vec<T>, Error>,
) -> Result<(), Error> {
    let need = given_mut(need, names.need)?.write(0);
    room(buf, cap, names.buf)?;
    let items = work()?;
    *need = items.len();
    if items.len() > cap {
        return Err(refuse(Code::SpaceTooSmall, names.buf, Value::Count(cap), Value::Count(items.len())));
    }
    if !items.is_empty() {
        // SAFETY: cap is at least the number of items and so not 0, and buf is then not NULL and has room for them;
        // it cannot overlap with a Vec of our own.
        unsafe { ptr::copy_nonoverlapping(items.as_ptr(), buf, items.len()) };
    }
    Ok(())
}

/// Fills the caller's buffer with a text and its NUL.
///
/// # Safety
/// `buf` is NULL or has room for `cap` bytes.
pub(crate) unsafe fn fill_text(
    buf: *mut c_char,
    cap: usize,
    need: Option<&mut MaybeUninit<usize>>,
    work: impl FnOnce() -> Result<String, Error>,
) -> Result<(), Error> {
    let bytes = || {
        let mut bytes = work()?.into_bytes();
        bytes.push(0);
        Ok(bytes)
    };
    // SAFETY: the caller's promise; a C char is a byte.
    unsafe { fill(&ArrayNames { buf: "buf", need: "need" }, buf.cast::<u8>(), cap, need, bytes) }
}

/// The item at an index.
pub(crate) fn item<T>(items: &[T], index: usize) -> Result<&T, Error> {
    items.get(index).ok_or_else(|| {
        let need = Value::text(format!("less than {}", items.len()));
        refuse(Code::IndexOutOfRange, "index", Value::Count(index), need)
    })
}

/// The error of a name that is none of a few.
pub(crate) fn none_of(argument: &str, got: &str, names: &[&str]) -> Error {
    refuse(Code::UnknownName, argument, Value::text(got), Value::text(format!("one of {}", names.join(", "))))
}

/// Where a figure was read, if it is known.
pub(crate) fn source_of<T>(figure: Option<&Sourced<T>>) -> Option<&Source> {
    figure.map(|figure| &figure.source)
}

/// A figure, or that it is not known.
pub(crate) fn known<T>(figure: Option<T>, what: &str) -> Result<T, Error> {
    figure.ok_or_else(|| refuse(Code::NotKnown, what, Value::Nothing, Value::Nothing))
}

/// A figure, or that it is not known, with the reason and what there is instead.
pub(crate) fn known_or<T>(figure: Option<T>, what: &str, why: &str, instead: &str) -> Result<T, Error> {
    let unknown = || Problem::new(Code::NotKnown, Part::Field(what.to_owned())).why(why).fix(instead).into();
    figure.ok_or_else(unknown)
}

/// Writes the ends of an interval, if there is one.
pub(crate) fn interval<T>(
    low: Option<&mut MaybeUninit<T>>,
    high: Option<&mut MaybeUninit<T>>,
    found: impl FnOnce() -> Result<Option<[T; 2]>, Error>,
) -> Result<(), Error> {
    let (low, high) = (given_mut(low, "low")?, given_mut(high, "high")?);
    let [least, most] = known(found()?, "interval")?;
    low.write(least);
    high.write(most);
    Ok(())
}

/// One of a few constants.
pub(crate) fn choice<T: Copy>(value: i32, argument: &str, choices: &[(i32, &str, T)]) -> Result<T, Error> {
    choices.iter().find(|(number, ..)| *number == value).map(|(.., choice)| *choice).ok_or_else(|| {
        let names: Vec<&str> = choices.iter().map(|(_, name, _)| *name).collect();
        let need = Value::text(format!("one of {}", names.join(", ")));
        refuse(Code::OutOfRange, argument, Value::text(value.to_string()), need)
    })
}

/// An end of a line.
pub(crate) fn side(value: i32, argument: &str) -> Result<Side, Error> {
    use crate::line::{LW_A, LW_B};
    choice(value, argument, &[(LW_A, "LW_A", Side::A), (LW_B, "LW_B", Side::B)])
}

/// A struct of options that begins with its size.
///
/// # Safety
/// `pointer` is NULL or points to a struct of the size that it begins with.
pub(crate) unsafe fn options<'a, T>(pointer: *const T, argument: &str) -> Result<&'a T, Error> {
    if pointer.is_null() {
        return Err(null(argument));
    }
    // SAFETY: every struct of options begins with a size_t. No reference to the whole is made before it is known to
    // be there.
    let size = unsafe { pointer.cast::<usize>().read() };
    if size != size_of::<T>() {
        return Err(refuse(Code::StructSize, argument, Value::Count(size), Value::Count(size_of::<T>())));
    }
    // SAFETY: not NULL and of this size.
    Ok(unsafe { &*pointer })
}
