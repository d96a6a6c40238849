//! Every case through the C interface: the program `c/cases.c` answers all of them, and its figures have the bits of
//! Rust.

#[path = "../common/cc.rs"]
mod cc;
#[path = "../common/mod.rs"]
mod common;

use common::case::load_all;
use common::compare::{judge, same_bits};
use common::{Outcome, flat, here};
use std::fs::{self, File};
use std::path::Path;
use std::process::Command;

#[test]
fn every_case_gives_in_c_what_it_gives_in_rust() -> Outcome<()> {
    let Some(program) = cc::build(&here("c/cases.c"), "cases-c")? else { return Ok(()) };
    let cases = load_all()?;
    // By a file: a pipe could fill up while both sides write.
    let input = Path::new(env!("CARGO_TARGET_TMPDIR")).join("cases.txt");
    fs::write(&input, flat::write(&cases)?)?;
    let output = Command::new(program).stdin(File::open(input)?).output()?;
    let errors = String::from_utf8_lossy(&output.stderr);
    assert!(output.status.success(), "{}: {errors}", output.status);
    let answers = flat::read(&String::from_utf8(output.stdout)?)?;
    assert_eq!(answers.len(), cases.len());
    let mut wrong = Vec::new();
    for (case, answer) in cases.iter().zip(&answers) {
        wrong.extend(judge(case, answer).err());
        let bits = same_bits(&flat::answer(case), answer);
        wrong.extend(bits.err().map(|why| format!("{}: {why}", case.name())));
    }
    println!("{} cases in C", cases.len());
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    Ok(())
}
