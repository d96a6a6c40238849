//! The C interface of linewright: opaque handles, a status from every call that can fail, and a header that a test
//! regenerates. The contract stands at the head of `include/linewright.h`.
//!
//! Everything here only converts; what is true about tube is decided in the core.
//!
//! # Safety
//! This is the only package with `unsafe`, and all of it rests on one promise of the C caller: a pointer is NULL, or
//! it points to what its type and its count say, for as long as the call lasts. A handle comes as `Option<&T>`, so
//! NULL is a case the compiler makes us handle; texts, lists and buffers come as raw pointers and are read and
//! written by `argument` alone.

#![allow(unsafe_code, reason = "a C interface cannot do without; the promise it rests on stands above")]
#![allow(non_camel_case_types, reason = "types are named as C sees them")]
#![allow(clippy::missing_safety_doc, reason = "the promise is the same for every function and stands above")]
#![allow(clippy::too_many_arguments, reason = "C has no slices: a list is a pointer and a count")]

pub mod version;

pub mod call;

pub mod code;

pub mod units;

pub mod bend;

pub mod tube;

pub mod material;

pub mod thread;

pub mod flare;

pub mod hydraulics;

pub mod turn;

pub mod path;

pub mod springback;

pub mod bench;

pub mod end;

pub mod line;

pub mod draft;

pub mod problem;

pub mod plan;

pub mod size;

pub mod explain;

pub mod clip;

pub mod tape;

pub mod spreadsheet;

mod argument;
