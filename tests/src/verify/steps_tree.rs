//! The source tree: what is in it, how long its files are, and that the checks left it alone.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use crate::place::Place;
use crate::step::Run;

type Outcome = Result<(), String>;

/// Everything that belongs at the top, besides names that start with a dot.
const TOP: [&str; 11] = [
    "Cargo.lock",
    "Cargo.toml",
    "DEVELOPERS.md",
    "LICENSE-APACHE",
    "LICENSE-MIT",
    "README.md",
    "benches",
    "bindings-c",
    "bindings-py",
    "core",
    "tests",
];
/// Generated, and as long as the interface is.
const GENERATED: &str = "bindings-c/include/linewright.h";
const LONGEST: usize = 500;

pub fn tree(run: &mut Run<'_>) -> Outcome {
    let Some(before) = run.shared.status_before.take() else {
        run.not_run("checks of the source tree (git is missing, or this is no checkout)");
        return Ok(());
    };
    let listed = git(run.place, &["ls-files", "-z"]).ok_or("`git ls-files` failed")?;
    let files: Vec<String> = records(&listed).collect();

    settle(run, "top-level entries", &top_level_problems(&files));
    settle(run, "length of source files", &long_files(&run.place.root, &files)?);

    let after = status(run.place).ok_or("`git status` failed")?;
    let (before, after): (BTreeSet<_>, BTreeSet<_>) = (records(&before).collect(), records(&after).collect());
    let changed: Vec<String> = after.symmetric_difference(&before).cloned().collect();
    settle(run, "nothing written next to the sources", &changed);
    Ok(())
}

/// `git status` with ignored files, for a comparison of the tree before and after. `None` outside a checkout.
pub fn status(place: &Place) -> Option<Vec<u8>> {
    // Without the lock git does not write its index, which another git may be using.
    let mut wanted: Vec<String> = [
        "--no-optional-locks",
        "status",
        "--porcelain",
        "--ignored",
        "--untracked-files=all",
        "-z",
        "--",
        ".",
    ]
    .map(str::to_owned)
    .into();
    // The target directory is where everything is meant to be written, and listing it takes long.
    if let Ok(target) = place.target.strip_prefix(&place.root) {
        wanted.push(format!(":(exclude){}", target.display()));
    }
    let wanted: Vec<&str> = wanted.iter().map(String::as_str).collect();
    git(place, &wanted)
}

fn git(place: &Place, arguments: &[&str]) -> Option<Vec<u8>> {
    let answer = place.command("git").args(arguments).output().ok()?;
    answer.status.success().then_some(answer.stdout)
}

fn records(bytes: &[u8]) -> impl Iterator<Item = String> {
    bytes
        .split(|&byte| byte == 0)
        .filter(|part| !part.is_empty())
        .map(|part| String::from_utf8_lossy(part).into_owned())
}

fn settle(run: &mut Run<'_>, what: &str, problems: &[String]) {
    if problems.is_empty() {
        run.pass(what);
    } else {
        run.fail(what, &problems.join("\n"));
    }
}

fn top_level_problems(files: &[String]) -> Vec<String> {
    let found: BTreeSet<&str> = files.iter().filter_map(|file| file.split('/').next()).collect();
    let allowed = BTreeSet::from(TOP);
    let extra = found
        .difference(&allowed)
        .filter(|name| !name.starts_with('.'))
        .map(|name| format!("unexpected: {name}"));
    let missing = allowed.difference(&found).map(|name| format!("missing or not tracked: {name}"));
    extra.chain(missing).collect()
}

fn long_files(root: &Path, files: &[String]) -> Result<Vec<String>, String> {
    let mut long = Vec::new();
    for file in files.iter().filter(|file| is_source(file)) {
        let path = root.join(file);
        // A tracked file that was deleted is no concern of this check.
        if !path.exists() {
            continue;
        }
        let bytes = fs::read(&path).map_err(|error| format!("cannot read {file}: {error}"))?;
        let lines = bytes.split_inclusive(|&byte| byte == b'\n').count();
        if lines > LONGEST {
            long.push(format!("{file}: {lines} lines, more than {LONGEST}"));
        }
    }
    Ok(long)
}

fn is_source(file: &str) -> bool {
    let extension = Path::new(file).extension().and_then(|extension| extension.to_str());
    file != GENERATED && matches!(extension, Some("rs" | "py" | "c" | "h"))
}

#[cfg(test)]
mod tests {
    use super::{TOP, is_source, top_level_problems};

    #[test]
    fn names_what_is_extra_and_what_is_missing() {
        let mut files: Vec<String> = TOP.iter().map(|name| format!("{name}/x")).collect();
        files.push(".gitignore".to_owned());
        assert_eq!(top_level_problems(&files), Vec::<String>::new());
        files.push("notes.txt".to_owned());
        files.remove(0);
        assert_eq!(
            top_level_problems(&files),
            ["unexpected: notes.txt", "missing or not tracked: Cargo.lock"]
        );
    }

    #[test]
    fn stubs_and_the_generated_header_may_be_long() {
        assert!(is_source("core/src/lib.rs"));
        assert!(!is_source("bindings-py/python/linewright/_native.pyi"));
        assert!(!is_source("bindings-c/include/linewright.h"));
    }
}
