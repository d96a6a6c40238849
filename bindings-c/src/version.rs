//! The version of the library that is running; the header has the one that was compiled against.

use std::ffi::c_char;

/// The version of the library, such as "1.2.3". The text is the library's own and is never freed. The header's
/// LW_VERSION_NUMBER says what a program was compiled against.
#[unsafe(no_mangle)]
pub extern "C" fn lw_version() -> *const c_char {
    concat!(env!("CARGO_PKG_VERSION"), "\0").as_ptr().cast()
}
