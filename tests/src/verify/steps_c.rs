//! The C side: the header in C99 and C++17, the C example, valgrind and the sanitizers.

use std::env;
use std::fs;
use std::io::Read;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

use crate::place::Place;
use crate::step::Run;

type Outcome = Result<(), String>;

const EXAMPLE: &str = "bindings-c/examples/trailer.c";
const STRICT_C: [&str; 5] = ["-std=c99", "-Wall", "-Wextra", "-Werror", "-pedantic"];
const STRICT_CPP: [&str; 5] = ["-std=c++17", "-Wall", "-Wextra", "-Werror", "-pedantic"];
const SANITIZE: [&str; 3] = ["-g", "-fsanitize=address,undefined", "-fno-sanitize-recover=all"];

/// Which of the two libraries a C program is linked to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Linkage {
    /// `liblinewright_c.a`, in strict C99.
    Static,
    /// The shared library, in the compiler's own default language.
    Shared,
    /// The shared library, with the address and undefined-behavior sanitizers.
    Sanitized,
}

/// The header compiles alone. The conformance tests compile and run whole programs with it.
pub fn header(run: &mut Run<'_>) -> Outcome {
    let unit = run.place.out.join("header.inc");
    fs::write(&unit, "#include \"linewright.h\"\n")
        .map_err(|error| format!("cannot write a C file: {error}"))?;
    let c = ("CC", "cc", STRICT_C, "c", "C99 compile of the header", "C compiler");
    let what = "C++17 compile of the header";
    let cpp = ("CXX", "c++", STRICT_CPP, "c++", what, what);
    for (variable, default, flags, language, what, missing) in [c, cpp] {
        let Some(mut compile) = compiler(run.place, variable, default) else {
            run.not_run(missing);
            continue;
        };
        compile.args(flags).args(["-fsyntax-only", "-Ibindings-c/include", "-x", language]).arg(&unit);
        run.check(what, &mut compile);
    }
    Ok(())
}

/// Builds the C example; `None` if that failed, which has been counted, or if there is no compiler, which has been
/// recorded.
pub fn build_example(run: &mut Run<'_>, linkage: Linkage) -> Option<PathBuf> {
    let Some(mut compile) = compiler(run.place, "CC", "cc") else {
        run.not_run("C compiler");
        return None;
    };
    if !build_library(run) {
        return None;
    }
    let (name, what) = match linkage {
        Linkage::Static => ("trailer-c-static", "cc, C99, static library"),
        Linkage::Shared => ("trailer-c-shared", "cc, shared library"),
        Linkage::Sanitized => ("trailer-c-sanitized", "cc, sanitizers"),
    };
    let program = run.place.out.join(name).with_extension(env::consts::EXE_EXTENSION);
    let libraries = run.place.target.join("release");
    match linkage {
        Linkage::Static => compile.args(STRICT_C).arg("-O2"),
        Linkage::Shared => compile.arg("-O2"),
        Linkage::Sanitized => compile.args(SANITIZE),
    };
    compile.args(["-Ibindings-c/include", EXAMPLE, "-o"]).arg(&program);
    if linkage == Linkage::Static {
        compile.arg(libraries.join("liblinewright_c.a"));
    } else {
        compile
            .arg("-L")
            .arg(&libraries)
            .arg(format!("-Wl,-rpath,{}", libraries.display()))
            .arg("-llinewright_c");
    }
    compile.args(["-lm", "-lpthread", "-ldl"]);
    run.check(what, &mut compile).then_some(program)
}

/// The C example and the programs that the conformance tests left behind, under valgrind.
pub fn valgrind(run: &mut Run<'_>) -> Outcome {
    if !answers(run.place.command("valgrind").arg("--version")) {
        run.not_run("valgrind");
        return Ok(());
    }
    let mut programs: Vec<PathBuf> = build_example(run, Linkage::Static).into_iter().collect();
    // Cargo gives integration tests this directory for what they write.
    let left = executables(&run.place.target.join("tmp"));
    if left.is_empty() {
        run.fail(
            "C test programs",
            "the conformance tests left none under tmp in the target directory; run `tests` first",
        );
    }
    programs.extend(left);
    for program in programs {
        let mut check = run.place.command("valgrind");
        check
            .args(["-q", "--error-exitcode=9", "--leak-check=full"])
            .arg(&program)
            .env("RUST_BACKTRACE", "0");
        run.check(&format!("valgrind {}", file_name(&program)), &mut check);
    }
    Ok(())
}

/// The C example with the sanitizers watching the C side and the calls across the border.
pub fn sanitizers(run: &mut Run<'_>) -> Outcome {
    let Some(mut probe) = compiler(run.place, "CC", "cc") else {
        run.not_run("C compiler");
        return Ok(());
    };
    let unit = run.place.out.join("probe.c");
    fs::write(&unit, "int main(void) { return 0; }\n")
        .map_err(|error| format!("cannot write a C file: {error}"))?;
    if !answers(probe.args(SANITIZE).arg(&unit).arg("-o").arg(run.place.out.join("probe"))) {
        run.not_run("C address sanitizer");
        return Ok(());
    }
    if let Some(program) = build_example(run, Linkage::Sanitized) {
        let mut check = run.place.command(&program);
        run.check("C example with sanitizers", &mut check);
    }
    Ok(())
}

/// Builds both C libraries in release, once per run of the checker.
fn build_library(run: &mut Run<'_>) -> bool {
    if let Some(known) = run.shared.c_library {
        return known;
    }
    let mut build = run.place.cargo("build --release --locked -p linewright-c");
    let built = run.prepare("cargo build, C library", &mut build);
    run.shared.c_library = Some(built);
    built
}

/// The compiler that the variable names, with the arguments in it, or the default; `None` if it does not run.
fn compiler(place: &Place, variable: &str, default: &str) -> Option<Command> {
    let line =
        env::var(variable).ok().filter(|line| !line.trim().is_empty()).unwrap_or_else(|| default.to_owned());
    let mut words = line.split_whitespace();
    let program = words.next()?;
    let mut command = place.command(program);
    command.args(words);
    let mut probe = place.command(program);
    answers(probe.arg("--version")).then_some(command)
}

fn answers(command: &mut Command) -> bool {
    command.stdin(Stdio::null()).output().is_ok_and(|output| output.status.success())
}

/// The programs under a directory: files that a person may execute and that start like a program of Linux and have no
/// extension (shared objects have one).
fn executables(directory: &Path) -> Vec<PathBuf> {
    let mut found = Vec::new();
    for entry in fs::read_dir(directory).into_iter().flatten().flatten() {
        let path = entry.path();
        // A link is not followed: it could lead out of the directory or in a circle.
        match entry.file_type() {
            Ok(kind) if kind.is_dir() => found.extend(executables(&path)),
            Ok(kind) if kind.is_file() && path.extension().is_none() && is_program(&path) => found.push(path),
            _ => {}
        }
    }
    found.sort();
    found
}

fn is_program(path: &Path) -> bool {
    // Bytes 0 to 3 are ELF's mark; the 16-bit type at byte 16 is 2 for a program and 3 for one that may be placed
    // anywhere, and 1 for an object file.
    let mut head = [0_u8; 18];
    let read = fs::File::open(path).and_then(|mut file| file.read_exact(&mut head));
    let [mark @ .., low, high] = head;
    read.is_ok() && mark.starts_with(b"\x7fELF") && matches!(low.max(high), 2 | 3)
}

fn file_name(path: &Path) -> String {
    path.file_name().map(|name| name.display().to_string()).unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::is_program;
    use std::env;
    use std::path::Path;

    #[test]
    #[cfg(target_os = "linux")]
    fn tells_programs_from_other_files() {
        assert!(env::current_exe().is_ok_and(|program| is_program(&program)));
        assert!(!is_program(Path::new(file!())));
    }
}
