//! The samples of the README: the Rust one runs as a documentation test of the core, the Python one in
//! `tests/python/test_readme.py`, and the C one is the file that `c_abi.rs` compiles and runs.

use std::path::Path;

fn read(path: &str) -> std::io::Result<String> {
    std::fs::read_to_string(Path::new(env!("CARGO_MANIFEST_DIR")).join("..").join(path))
}

#[test]
fn the_c_sample_is_the_program_that_is_tested() {
    let readme = read("README.md").expect("the README");
    let (_, rest) = readme.split_once("```c\n").expect("a C sample");
    let (sample, _) = rest.split_once("```").expect("the end of the C sample");
    assert_eq!(sample, read("bindings-c/examples/readme.c").expect("the program"));
}

#[test]
fn the_job_comes_first() {
    let readme = read("README.md").expect("the README");
    let first = readme.split("\n\n").nth(1).expect("a first paragraph");
    assert!(first.starts_with("A corroded brake line") && first.len() > 400, "{first}");
}
