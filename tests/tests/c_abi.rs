//! The C interface from C: programs compiled with warnings as errors, linked with the library, and run.
//!
//! The programs stay in the target directory, under tmp/c, so that valgrind can be run on them.

use std::error::Error;
use std::io::Write;
use std::path::{Path, PathBuf};
use std::process::{Command, Output, Stdio};
use std::{env, fs};

type Outcome<T = ()> = Result<T, Box<dyn Error>>;

const STRICT: [&str; 4] = ["-Wall", "-Wextra", "-Wpedantic", "-Werror"];

/// A compiler with the language it is to read.
struct Compiler {
    command: String,
    language: [&'static str; 3],
}

impl Compiler {
    /// The compiler that the variable names, with the arguments in it, or the default; None, with a word on it, where
    /// it does not run.
    fn find(variable: &str, default: &str, language: [&'static str; 3], what: &str) -> Option<Compiler> {
        let named = env::var(variable).ok().filter(|named| !named.trim().is_empty());
        let compiler = Compiler { command: named.unwrap_or_else(|| default.to_owned()), language };
        let runs = compiler.command().arg("--version").output().is_ok_and(|output| output.status.success());
        if !runs {
            println!("NOT RUN: {what}");
        }
        runs.then_some(compiler)
    }

    fn c99(what: &str) -> Option<Compiler> {
        Compiler::find("CC", "cc", ["-std=c99", "-x", "c"], what)
    }

    fn cpp17(what: &str) -> Option<Compiler> {
        Compiler::find("CXX", "c++", ["-std=c++17", "-x", "c++"], what)
    }

    fn command(&self) -> Command {
        let mut words = self.command.split_whitespace();
        let mut command = Command::new(words.next().unwrap_or_default());
        command.args(words);
        command
    }

    /// Checks a source file without making anything of it.
    fn check(&self, source: &Path, flags: &[&str]) -> Outcome<Output> {
        let mut command = self.command();
        command
            .args(STRICT)
            .args(flags)
            .arg("-fsyntax-only")
            .arg("-I")
            .arg(root().join("bindings-c/include"));
        Ok(command.args(self.language).arg(source).output()?)
    }

    /// Makes a program and links it with a library.
    fn build(&self, source: &Path, name: &str, library: &Path) -> Outcome<PathBuf> {
        let directory = Path::new(env!("CARGO_TARGET_TMPDIR")).join("c");
        fs::create_dir_all(&directory)?;
        let program = directory.join(name).with_extension(env::consts::EXE_EXTENSION);
        let mut command = self.command();
        command.args(STRICT).arg("-g").arg("-I").arg(root().join("bindings-c/include"));
        command.args(self.language).arg(source).args(["-x", "none"]).arg(library);
        command.arg(format!("-Wl,-rpath,{}", libraries()?.display())).args(["-lm", "-lpthread", "-ldl"]);
        let output = command.arg("-o").arg(&program).output()?;
        assert!(output.status.success(), "{name}: {}", String::from_utf8_lossy(&output.stderr));
        Ok(program)
    }
}

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("..")
}

fn program_source(name: &str) -> PathBuf {
    root().join("tests/c").join(name).with_extension("c")
}

/// Where cargo puts the libraries of the packages that this test depends on: beside the test itself.
fn libraries() -> Outcome<PathBuf> {
    Ok(env::current_exe()?.parent().ok_or("a test in no directory")?.to_owned())
}

fn static_library() -> Outcome<PathBuf> {
    Ok(libraries()?.join("liblinewright_c.a"))
}

fn shared_library() -> Outcome<PathBuf> {
    Ok(libraries()?.join(format!("{}linewright_c{}", env::consts::DLL_PREFIX, env::consts::DLL_SUFFIX)))
}

/// Runs a program that must end well; what it printed.
fn run(program: &Path, input: &str) -> Outcome<String> {
    let mut command = Command::new(program);
    command.stdin(Stdio::piped()).stdout(Stdio::piped()).stderr(Stdio::piped());
    let mut child = command.spawn()?;
    child.stdin.take().ok_or("a program without input")?.write_all(input.as_bytes())?;
    let output = child.wait_with_output()?;
    let said = String::from_utf8_lossy(&output.stderr);
    assert!(output.status.success(), "{}: {}\n{said}", program.display(), output.status);
    Ok(String::from_utf8(output.stdout)?)
}

/// A program of checks: all of them hold, and there are at least so many.
fn all_checks_hold(name: &str, least: usize) -> Outcome {
    let Some(c) = Compiler::c99(&format!("C program {name}.c")) else { return Ok(()) };
    let said = run(&c.build(&program_source(name), name, &static_library()?)?, "")?;
    let checks = said.strip_prefix(&format!("{name}: "));
    let checks =
        checks.and_then(|rest| rest.trim().strip_suffix(" checks, 0 failures")).ok_or(said.as_str())?;
    assert!(checks.parse::<usize>()? >= least, "{name} made only {checks} checks");
    Ok(())
}

#[test]
fn null_is_refused_by_name() -> Outcome {
    all_checks_hold("null", 500)?;
    all_checks_hold("null_bend", 500)?;
    all_checks_hold("null_flare", 180)?;
    all_checks_hold("null_metal", 330)?;
    all_checks_hold("null_more", 350)?;
    all_checks_hold("null_thread", 430)
}

#[test]
fn bad_input_is_refused_and_outputs_are_kept() -> Outcome {
    all_checks_hold("bad", 500)
}

#[test]
fn a_single_line_has_what_it_needs() -> Outcome {
    all_checks_hold("line", 280)
}

#[test]
fn threads_are_answered() -> Outcome {
    all_checks_hold("thread", 200)?;
    all_checks_hold("thread_find", 320)
}

#[test]
fn flares_ports_and_hose_ends_are_answered() -> Outcome {
    all_checks_hold("flare", 500)
}

#[test]
fn pressures_and_walls_are_answered() -> Outcome {
    all_checks_hold("wall", 145)
}

#[test]
fn ideal_cylinders_and_lines_full_of_fluid_are_answered() -> Outcome {
    all_checks_hold("pressure", 360)?;
    all_checks_hold("hydraulics", 290)
}

#[test]
fn springback_and_formers_are_answered() -> Outcome {
    all_checks_hold("springback", 170)
}

#[test]
fn what_was_put_in_is_handed_back() -> Outcome {
    all_checks_hold("records", 220)
}

#[test]
fn last_error_belongs_to_its_thread() -> Outcome {
    all_checks_hold("threads", 30)
}

fn version_line() -> Outcome<String> {
    let [major, minor, patch] =
        [env!("CARGO_PKG_VERSION_MAJOR"), env!("CARGO_PKG_VERSION_MINOR"), env!("CARGO_PKG_VERSION_PATCH")]
            .map(str::parse::<u32>);
    let number = major? * 1_000_000 + minor? * 1_000 + patch?;
    Ok(format!("header {0} number {number} library {0}\n", env!("CARGO_PKG_VERSION")))
}

#[test]
fn version_in_c99_with_both_libraries() -> Outcome {
    let Some(c) = Compiler::c99("C99 compile of the header") else { return Ok(()) };
    for (name, library) in [("header-static", static_library()?), ("header-shared", shared_library()?)] {
        assert_eq!(run(&c.build(&program_source("header"), name, &library)?, "")?, version_line()?);
    }
    Ok(())
}

#[test]
fn version_in_cpp17() -> Outcome {
    let Some(cpp) = Compiler::cpp17("C++17 compile of the header") else { return Ok(()) };
    assert_eq!(
        run(&cpp.build(&program_source("header"), "header-cpp", &static_library()?)?, "")?,
        version_line()?
    );
    Ok(())
}

/// A program that is right compiles, and the same with a length for an angle, or with no unit at all, does not.
#[test]
fn wrong_quantities_do_not_compile() -> Outcome {
    let compilers =
        [Compiler::c99("C compile of wrong quantities"), Compiler::cpp17("C++ compile of wrong quantities")];
    for compiler in compilers.into_iter().flatten() {
        for name in ["swap_length_angle", "swap_pressure_length", "bare_double"] {
            let right = compiler.check(&program_source(name), &[])?;
            assert!(right.status.success(), "{name}: {}", String::from_utf8_lossy(&right.stderr));
            let wrong = compiler.check(&program_source(name), &["-DWRONG"])?;
            let said = String::from_utf8_lossy(&wrong.stderr);
            assert!(!wrong.status.success(), "{name} compiles with the wrong quantities");
            assert!(said.contains("lw_bend_arc") && said.contains("error"), "{name}: {said}");
        }
    }
    Ok(())
}

#[test]
fn example_of_the_readme_runs() -> Outcome {
    let Some(c) = Compiler::c99("C example readme.c") else { return Ok(()) };
    let source = root().join("bindings-c/examples/readme.c");
    let said = run(&c.build(&source, "readme", &static_library()?)?, "")?;
    assert_eq!(said, "to keep 60 degrees, bend to 62.5\n");
    Ok(())
}

/// The shared library exports what the header declares, and nothing else.
#[test]
fn exported_symbols_are_the_listed_ones() -> Outcome {
    let output = Command::new("nm").args(["-D", "--defined-only"]).arg(shared_library()?).output();
    let Ok(output) = output.map_err(|_| println!("NOT RUN: symbols of the C library")) else { return Ok(()) };
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    let text = String::from_utf8(output.stdout)?;
    let mut exported: Vec<&str> = text.lines().filter_map(|line| line.split_whitespace().nth(2)).collect();
    exported.sort_unstable();
    let listed = fs::read_to_string(root().join("tests/tables/c_symbols.txt"))?;
    assert_eq!(exported, listed.lines().collect::<Vec<_>>());
    Ok(())
}

/// The program that answers the conformance cases understands their form; the figures stand in the case files.
#[test]
fn cases_are_understood() -> Outcome {
    let Some(c) = Compiler::c99("C program cases.c") else { return Ok(()) };
    let program = c.build(&program_source("cases"), "cases", &static_library()?)?;
    let asked = "case 1\noperation read_length\ntext\t5.5 mm\nend\n\
                 case 2\noperation read_angle\ntext\t316\nend\n\
                 case 3\noperation tube\nod\t6 mm\nwall\t1 mm\nmaterial\tstainless 304\nlength\t0 mm\nend\n\
                 case 4\noperation path\nstraights\t10 mm;20 mm\nbends\t0 deg\nradius\t14 mm\nend\n\
                 case 5\noperation plan\nline.od\t316\nbench.former\t14 mm\nbench.grip\t20 mm\nend\n\
                 case 6\noperation thread\ntext\tM 10 × 1,0\nend\n";
    let answered = run(&program, asked)?;
    let (others, plan) = answered.split_once("case 5\n").ok_or("no case 5")?;
    let (plan, thread) = plan.split_once("end\n").ok_or("no end")?;
    assert_eq!(
        others,
        "case 1\nvalue_mm\t5.5\nend\n\
         case 2\nerror\tUNIT_MISSING\nend\n\
         case 3\nbore_mm\t4\nvolume_ml\t0\nmass_g\tunknown\nend\n\
         case 4\ndeveloped_length_mm\t30\nstraights_mm\t10;20\nangles_deg\t0\nrotations_deg\t\n\
         end_point_mm\t30;0;0\nreversed_rotations_deg\t\nmirrored_rotations_deg\t\n\
         legs_mm\t10;20\ntotal_gain_mm\t0\nend\n"
    );
    assert!(plan.starts_with("problems\t") && plan.contains("UNIT_MISSING@field od"), "{plan}");
    assert_eq!(thread, "case 6\ndesignation\tM10x1\nend\n");
    Ok(())
}
