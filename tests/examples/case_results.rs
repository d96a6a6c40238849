//! Prints the answer of Rust to every case, for comparison bit for bit in other languages.
//!
//! One line a figure: `FILE#INDEX<TAB>key<TAB>value`. The file is named without its extension, cases count from 0,
//! lists are joined by semicolons, numbers read back as the same bits, and an error is `FILE#INDEX<TAB>error<TAB>CODE`.

#[path = "../common/mod.rs"]
mod common;

use std::io::Write;

fn main() -> common::Outcome<()> {
    let mut out = std::io::stdout().lock();
    for case in common::case::load_all()? {
        let id = format!("{}#{}", case.file, case.index);
        for (key, text) in common::flat::answer(&case).unwrap_or_else(|code| vec![("error".to_owned(), code)])
        {
            writeln!(out, "{id}\t{key}\t{text}")?;
        }
    }
    Ok(())
}
