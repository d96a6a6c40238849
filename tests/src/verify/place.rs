//! Where the checkout, the target directory and the tools are, and the environment child programs get.

use std::env;
use std::ffi::{OsStr, OsString};
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

/// The checkout under test.
#[derive(Debug)]
pub struct Place {
    /// The workspace's directory; every child program runs there.
    pub root: PathBuf,
    /// Cargo's target directory, wherever the environment or the configuration put it.
    pub target: PathBuf,
    /// Where the logs and everything else the checker makes go: `target/verify`.
    pub out: PathBuf,
    cargo: OsString,
}

impl Place {
    /// Finds the workspace and asks cargo for its target directory.
    pub fn find() -> Result<Self, String> {
        // Cargo sets the variable for the programs it runs; the compile-time value serves a program started by hand.
        let package = env::var_os("CARGO_MANIFEST_DIR").unwrap_or_else(|| env!("CARGO_MANIFEST_DIR").into());
        let root = Path::new(&package).parent().ok_or("the package has no parent directory")?.to_path_buf();
        let cargo = env::var_os("CARGO").unwrap_or_else(|| "cargo".into());
        let mut metadata = Command::new(&cargo);
        // Run where the person ran the checker: a relative CARGO_TARGET_DIR is relative to that directory.
        metadata.args(["metadata", "--format-version=1", "--no-deps", "--offline", "--manifest-path"]);
        let answer = metadata
            .arg(root.join("Cargo.toml"))
            .output()
            .map_err(|error| format!("cannot run `cargo metadata`: {error}"))?;
        let text = String::from_utf8_lossy(&answer.stdout);
        let named = json_string(&text, "target_directory").map(PathBuf::from).ok_or_else(|| {
            format!("`cargo metadata` failed:\n{}", String::from_utf8_lossy(&answer.stderr))
        })?;
        fs::create_dir_all(&named).map_err(|error| format!("cannot make {}: {error}", named.display()))?;
        // Paths are compared below and in other modules, so `..` and links have to go.
        let real = |path: &Path| {
            fs::canonicalize(path).map_err(|error| format!("cannot resolve {}: {error}", path.display()))
        };
        let (root, target) = (real(&root)?, real(&named)?);
        let out = target.join("verify");
        fs::create_dir_all(&out).map_err(|error| format!("cannot make {}: {error}", out.display()))?;
        Ok(Self { root, target, out, cargo })
    }

    /// A child program in the workspace's directory, with what this program inherited from `cargo run` taken out.
    pub fn command(&self, program: impl AsRef<OsStr>) -> Command {
        let mut command = Command::new(program);
        command.current_dir(&self.root);
        for (name, _) in env::vars_os() {
            if name.to_str().is_some_and(is_left_over) {
                command.env_remove(name);
            }
        }
        // `cargo run` puts target/debug in front of the library path, where a C program linked to the release library
        // would find the debug one first.
        for name in ["LD_LIBRARY_PATH", "DYLD_FALLBACK_LIBRARY_PATH"] {
            if let Some(value) = env::var_os(name) {
                let own =
                    |entry: &Path| fs::canonicalize(entry).is_ok_and(|real| real.starts_with(&self.target));
                let kept = env::split_paths(&value).filter(|entry| !own(entry));
                if let Ok(paths) = env::join_paths(kept) {
                    command.env(name, paths);
                }
            }
        }
        command
            .env("CARGO_TARGET_DIR", &self.target)
            .env("LINEWRIGHT_TARGET", &self.target)
            // The logs are read by this program as well as by people.
            .env("CARGO_TERM_COLOR", "never")
            .env("NO_COLOR", "1")
            .env("TERM", "dumb")
            // Nothing may be written next to the sources.
            .env("PYTHONDONTWRITEBYTECODE", "1")
            .env("MYPY_CACHE_DIR", self.out.join("mypy-cache"));
        command
    }

    /// Cargo with `line` split at blanks.
    pub fn cargo(&self, line: &str) -> Command {
        let mut command = self.command(&self.cargo);
        command.args(line.split_whitespace());
        command
    }
}

/// Whether a variable describes this program's own package or would make a child test something else than the checkout.
fn is_left_over(name: &str) -> bool {
    const PREFIXES: [&str; 4] = ["CARGO_PKG_", "CARGO_MANIFEST_", "CARGO_BIN_", "CARGO_CRATE_"];
    const NAMES: [&str; 6] =
        ["CARGO_BUILD_TARGET", "CARGO_PRIMARY_PACKAGE", "FORCE_COLOR", "PYTHONHOME", "PYTHONPATH", "OUT_DIR"];
    PREFIXES.iter().any(|prefix| name.starts_with(prefix)) || NAMES.contains(&name)
}

/// The value of the last string member called `name` in a JSON text. Good enough for paths: only `\\`, `\"` and `\/`
/// escapes are undone.
fn json_string(text: &str, name: &str) -> Option<String> {
    let key = format!("\"{name}\":\"");
    let start = text.rfind(&key)? + key.len();
    let mut value = String::new();
    let mut characters = text.get(start..)?.chars();
    loop {
        match characters.next()? {
            '"' => return Some(value),
            '\\' => value.push(characters.next()?),
            other => value.push(other),
        }
    }
}

/// The files directly in `directory` whose names end in `.extension`, in order of name; none if there is no such
/// directory.
pub fn files_with_extension(directory: &Path, extension: &str) -> Vec<PathBuf> {
    let mut found: Vec<PathBuf> = fs::read_dir(directory)
        .into_iter()
        .flatten()
        .filter_map(|entry| entry.ok().map(|entry| entry.path()))
        .filter(|path| path.extension().is_some_and(|own| own == extension))
        .collect();
    found.sort();
    found
}

#[cfg(test)]
mod tests {
    use super::{is_left_over, json_string};

    #[test]
    fn reads_the_target_directory() {
        let text = r#"{"workspace_root":"/w","target_directory":"C:\\w\\target","version":1}"#;
        assert_eq!(json_string(text, "target_directory").as_deref(), Some(r"C:\w\target"));
        assert_eq!(json_string("{}", "target_directory"), None);
    }

    #[test]
    fn keeps_what_belongs_to_the_person() {
        assert!(is_left_over("CARGO_PKG_NAME"));
        assert!(!is_left_over("CARGO_HOME"));
        assert!(!is_left_over("RUSTFLAGS"));
    }
}
