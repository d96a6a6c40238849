//! Compiles a C program against the C library that cargo built for the tests.

use std::env;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

/// Warnings are errors: a C program here is also a sample of how the header is used.
const STRICT: [&str; 6] = ["-std=c99", "-Wall", "-Wextra", "-Werror", "-pedantic", "-O1"];

/// The program, or nothing where there is no C compiler, which is then said.
pub fn build(source: &Path, name: &str) -> Result<Option<PathBuf>, String> {
    let line = env::var("CC").ok().filter(|line| !line.trim().is_empty()).unwrap_or_else(|| "cc".to_owned());
    let mut words = line.split_whitespace();
    let compiler = words.next().unwrap_or("cc");
    if !Command::new(compiler).arg("--version").output().is_ok_and(|output| output.status.success()) {
        println!("NOT RUN: {name} (no C compiler)");
        return Ok(None);
    }
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR"));
    fs::create_dir_all(folder).map_err(|error| format!("{}: {error}", folder.display()))?;
    let program = folder.join(name).with_extension(env::consts::EXE_EXTENSION);
    let include = Path::new(env!("CARGO_MANIFEST_DIR")).join("../bindings-c/include");
    let output = Command::new(compiler)
        .args(words)
        .args(STRICT)
        .arg("-I")
        .arg(include)
        .arg(source)
        .arg(library()?)
        .args(["-lm", "-lpthread", "-ldl", "-o"])
        .arg(&program)
        .output()
        .map_err(|error| format!("{compiler}: {error}"))?;
    if output.status.success() {
        Ok(Some(program))
    } else {
        Err(format!("{}:\n{}", source.display(), String::from_utf8_lossy(&output.stderr)))
    }
}

/// The static library beside the test's own program: cargo puts it there as a dependency of this package.
fn library() -> Result<PathBuf, String> {
    let program = env::current_exe().map_err(|error| error.to_string())?;
    let folder = program.parent().ok_or("a program in no folder")?;
    let entries = fs::read_dir(folder).map_err(|error| format!("{}: {error}", folder.display()))?;
    let newest = entries
        .filter_map(Result::ok)
        .filter(|entry| {
            let name = entry.file_name().to_string_lossy().into_owned();
            name.starts_with("liblinewright_c") && name.ends_with(".a")
        })
        .max_by_key(|entry| entry.metadata().and_then(|data| data.modified()).ok());
    newest.map(|entry| entry.path()).ok_or_else(|| format!("no liblinewright_c.a in {}", folder.display()))
}
