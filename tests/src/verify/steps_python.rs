//! The Python side: a virtual environment under the target directory, the wheel in it, pytest and the type checks.

use std::env;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Stdio;

use crate::count;
use crate::place::{Place, files_with_extension};
use crate::step::{Run, remove_directory};

type Outcome = Result<(), String>;

/// The newest first; `python3` last, because it may be an older one.
const INTERPRETERS: [&str; 4] = ["python3.13", "python3.12", "python3.11", "python3"];
const NO_PYTHON: &str = "Python (3.11 or newer, with the venv and ensurepip modules)";
/// Prints what tells one interpreter from another, and fails for one that cannot be used.
const PROBE: &str =
    "import sys, venv, ensurepip; print(sys.executable, sys.version); sys.exit(sys.version_info < (3, 11))";

/// The tests, the stub file against the module, and the type checks of what a user would write.
pub fn python(run: &mut Run<'_>) -> Outcome {
    let Some(python) = installed(run)? else { return Ok(()) };
    // What Rust answers to the cases, which the Python tests compare bit for bit.
    let mut cases = run.place.cargo("run --quiet --release --locked -p conformance --example case_results");
    let answers = run.place.out.join("case_results.txt");
    run.check_into("answers of Rust to the cases", &mut cases, &answers);
    pytest(run, &python, "pytest", &["tests/python", "--ignore=tests/python/full"]);

    let mut stubtest = run.place.command(&python);
    // It leaves a cache in its directory whatever the environment says.
    stubtest.current_dir(&run.place.out).args(["-P", "-m", "mypy.stubtest", "linewright"]);
    run.check("stubtest", &mut stubtest);

    let mut typed = files_with_extension(&run.place.root.join("bindings-py/examples"), "py");
    if typed.is_empty() {
        return Err("bindings-py/examples has no Python file to check the types of".to_owned());
    }
    let samples = files_with_extension(&run.place.root.join("tests/python"), "py");
    typed.extend(
        samples
            .into_iter()
            .filter(|path| path.file_name().is_some_and(|name| starts_typed(&name.to_string_lossy()))),
    );
    let mut mypy = run.place.command(&python);
    mypy.args(["-P", "-m", "mypy", "--strict"]).args(&typed);
    run.check("mypy --strict", &mut mypy);
    Ok(())
}

/// The tests against a solid-modeling kernel, which is too large to install on every run.
pub fn python_full(run: &mut Run<'_>) -> Outcome {
    if !run.place.root.join("tests/python/full").is_dir() {
        run.not_run("tests/python/full (there is no such directory)");
        return Ok(());
    }
    if installed(run)?.is_none() {
        return Ok(());
    }
    let Some(wheel) = run.shared.wheel.clone() else { return Err("the wheel is missing".to_owned()) };
    let Some(base) = interpreter(run.place) else { return Ok(()) };
    let Some(python) = environment(run, &base, "venv-full", "tests/python/full/requirements.txt")? else {
        return Ok(());
    };
    if install_wheel(run, &python, &wheel) {
        pytest(run, &python, "pytest, full", &["tests/python/full"]);
    }
    Ok(())
}

/// The interpreter of `target/venv` with the package as it is now installed. `None` if there is no Python, which has
/// been recorded, or if something failed, which has been counted.
pub fn installed(run: &mut Run<'_>) -> Result<Option<PathBuf>, String> {
    if let Some(known) = &run.shared.python {
        return Ok(known.clone());
    }
    // Until everything went well it counts as tried and failed.
    run.shared.python = Some(None);
    let Some(base) = interpreter(run.place) else {
        run.not_run(NO_PYTHON);
        return Ok(None);
    };
    let Some(python) = environment(run, &base, "venv", "tests/python/requirements.txt")? else {
        return Ok(None);
    };
    let Some(wheel) = build_wheel(run, &python)? else { return Ok(None) };
    if !install_wheel(run, &python, &wheel) {
        return Ok(None);
    }
    run.shared.wheel = Some(wheel);
    run.shared.python = Some(Some(python.clone()));
    Ok(Some(python))
}

/// The interpreter for the peers of the benchmarks, with what they need; `None` where there is no Python or something
/// failed, which has been recorded.
pub fn of_peers(run: &mut Run<'_>) -> Result<Option<PathBuf>, String> {
    let Some(base) = interpreter(run.place) else {
        run.not_run(NO_PYTHON);
        return Ok(None);
    };
    environment(run, &base, "venv-peers", "benches/peers/requirements.txt")
}

fn pytest(run: &mut Run<'_>, python: &Path, what: &str, arguments: &[&str]) {
    let mut pytest = run.place.command(python);
    // -P keeps the checkout off the module path: the installed package is tested, not the one next to the sources.
    // -rs prints the reasons of skipped tests, which become NOT RUN lines.
    pytest.args(["-P", "-m", "pytest", "-q", "-rfEs", "-W", "error", "--color=no", "-p", "no:cacheprovider"]);
    run.tests(what, pytest.args(arguments), count::pytest);
}

/// A Python that was found, and what it says about itself.
struct Interpreter {
    program: String,
    version: String,
}

/// The one that `PYTHON` names, and no other if it is set; otherwise the newest on the path.
fn interpreter(place: &Place) -> Option<Interpreter> {
    let chosen = env::var("PYTHON").ok().filter(|name| !name.is_empty());
    let candidates: Vec<String> =
        chosen.map_or_else(|| INTERPRETERS.iter().map(ToString::to_string).collect(), |name| vec![name]);
    candidates.into_iter().find_map(|program| {
        let answer = place.command(&program).args(["-c", PROBE]).stdin(Stdio::null()).output().ok()?;
        let version = String::from_utf8_lossy(&answer.stdout).into_owned();
        answer.status.success().then_some(Interpreter { program, version })
    })
}

/// A virtual environment under the target directory with the requirements installed. Nothing is installed again while
/// the requirements and the interpreter stay the same.
fn environment(
    run: &mut Run<'_>,
    base: &Interpreter,
    name: &str,
    requirements: &str,
) -> Result<Option<PathBuf>, String> {
    let directory = run.place.target.join(name);
    let stamp = directory.join("installed.txt");
    let wanted = fs::read_to_string(run.place.root.join(requirements))
        .map(|text| format!("{}{text}", base.version))
        .map_err(|error| format!("cannot read {requirements}: {error}"))?;
    let python = directory.join(if cfg!(windows) { "Scripts/python.exe" } else { "bin/python" });
    if python.exists() && fs::read_to_string(&stamp).is_ok_and(|installed| installed == wanted) {
        return Ok(Some(python));
    }
    remove_directory(&directory)?;
    let mut create = run.place.command(&base.program);
    if !run.prepare(&format!("python -m venv, {name}"), create.args(["-m", "venv"]).arg(&directory)) {
        return Ok(None);
    }
    let mut install = run.place.command(&python);
    install.args(["-m", "pip", "install", "--quiet", "--disable-pip-version-check", "-r", requirements]);
    if !run.prepare(&format!("pip install -r {requirements}"), &mut install) {
        return Ok(None);
    }
    fs::write(&stamp, wanted).map_err(|error| format!("cannot write {}: {error}", stamp.display()))?;
    Ok(Some(python))
}

/// Builds the wheel as it would be published. An editable install would be quicker, but puts the compiled module next
/// to the sources.
fn build_wheel(run: &mut Run<'_>, python: &Path) -> Result<Option<PathBuf>, String> {
    let wheels = run.place.out.join("wheels");
    remove_directory(&wheels)?;
    let mut build = run.place.command(python);
    build.args(["-m", "maturin", "build", "--release", "--locked", "--auditwheel", "skip"]);
    build
        .args(["--manifest-path", "bindings-py/Cargo.toml", "--interpreter"])
        .arg(python)
        .arg("--out")
        .arg(&wheels);
    if !run.check("maturin build", &mut build) {
        return Ok(None);
    }
    match files_with_extension(&wheels, "whl").as_slice() {
        [wheel] => Ok(Some(wheel.clone())),
        other => Err(format!("maturin should have made one wheel, but made {}", other.len())),
    }
}

fn install_wheel(run: &mut Run<'_>, python: &Path, wheel: &Path) -> bool {
    let mut install = run.place.command(python);
    install.args([
        "-m",
        "pip",
        "install",
        "--quiet",
        "--disable-pip-version-check",
        "--no-deps",
        "--no-index",
    ]);
    run.prepare("pip install of the wheel", install.arg("--force-reinstall").arg(wheel))
}

/// Samples that exist for the type checker alone.
fn starts_typed(name: &str) -> bool {
    name.starts_with("typed")
}
