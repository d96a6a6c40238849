//! How the source is built: which module may know which, how long a file is, and what is tested at all.

#[path = "../common/mod.rs"]
mod common;

use common::case::{Expect, Item, load_all};
use common::source::{self, Source};
use common::{Outcome, here};
use linewright::code::TABLE;
use std::collections::{BTreeMap, BTreeSet};
use std::fs;

/// The modules of core by rank: one may know those of a lower rank, itself, and nothing else.
const RANKS: [(&str, u8); 26] = [
    ("card", 11),
    ("size", 10),
    ("explain", 10),
    ("tape", 10),
    ("plan", 9),
    ("line", 8),
    ("bench", 7),
    ("check", 8),
    ("turn", 7),
    ("clip", 7),
    ("path", 6),
    ("thread", 5),
    ("flare", 6),
    ("bend", 5),
    ("springback", 5),
    ("hydraulics", 5),
    ("tube", 4),
    ("material", 3),
    ("statistics", 2),
    ("bounds", 2),
    // These four say together what a quantity is and what is wrong with it.
    ("code", GROUND),
    ("error", GROUND),
    ("problem", GROUND),
    ("units", GROUND),
    ("source", 0),
    ("math", 0),
];
/// The one rank whose modules know each other.
const GROUND: u8 = 1;
const LONGEST: usize = 500;

/// Codes that no case file can trigger, and where they are triggered or why not at all.
const BY_BINDING: [(&str, Where); 14] = [
    ("CALIBRATION_OTHER_TUBE", Where::Unit("plan/tests.rs")),
    ("SPRINGBACK_ESTIMATED", Where::Unit("plan/tests.rs")),
    ("RADIUS_ESTIMATED", Where::Unit("plan/tests.rs")),
    ("NULL_ARGUMENT", Where::C),
    ("TEXT_NOT_UTF8", Where::C),
    ("SPACE_TOO_SMALL", Where::C),
    ("STRUCT_SIZE", Where::C),
    ("INDEX_OUT_OF_RANGE", Where::C),
    ("ASSUMED_INCH", Where::C),
    ("HAND_MISMATCH", Where::C),
    ("PATHS_DIFFER", Where::C),
    ("FLARE_SLIPPED", Where::C),
    ("CLIP_IN_BEND", Where::Unit("clip/tests.rs")),
    (
        "INTERNAL_FAULT",
        Where::Nowhere("a fault inside the library is what the other tests show not to be there"),
    ),
];

#[derive(Debug, Clone, Copy)]
enum Where {
    /// A program under tests/c names it.
    C,
    /// A unit test of core names it.
    Unit(&'static str),
    /// Nothing can trigger it, for this reason.
    Nowhere(&'static str),
}

fn core() -> Result<Vec<Source>, String> {
    source::under(&here("../core/src"))
}

/// The module a file belongs to, and how deep it lies below the root.
fn module(source: &Source) -> Result<(String, usize), String> {
    let root = here("../core/src");
    let inside = source.path.strip_prefix(&root).map_err(|error| error.to_string())?.with_extension("");
    let parts: Vec<String> = inside.iter().map(|part| part.to_string_lossy().into_owned()).collect();
    let first = parts.first().cloned().ok_or("a file in no module")?;
    Ok((first, parts.len()))
}

fn rank(module: &str) -> Result<u8, String> {
    let found = RANKS.iter().find(|(name, _)| *name == module);
    found
        .map(|(_, rank)| *rank)
        .ok_or_else(|| format!("module {module} has no rank: give it one in this test"))
}

/// The names that a text begins with: one, or those of a group in braces.
fn heads(text: &str) -> Vec<String> {
    let word = |text: &str| text.chars().take_while(|c| c.is_alphanumeric() || *c == '_').collect::<String>();
    let Some(group) = text.strip_prefix('{') else { return vec![word(text)] };
    let mut depth = 0;
    let mut names = vec![String::new()];
    for c in group.chars() {
        match c {
            '{' => depth += 1,
            '}' if depth == 0 => break,
            '}' => depth -= 1,
            ',' if depth == 0 => names.push(String::new()),
            c if depth == 0 => names.iter_mut().last().into_iter().for_each(|name| name.push(c)),
            _ => {}
        }
    }
    names.iter().map(|name| word(name.trim())).filter(|name| !name.is_empty()).collect()
}

/// What lib.rs lifts to the root, by name, with the module it comes from.
fn lifted(sources: &[Source]) -> BTreeMap<String, String> {
    let lib = sources.iter().find(|source| source.path.ends_with("lib.rs"));
    let uses = lib.iter().flat_map(|lib| lib.code.split("pub use ").skip(1));
    let mut lifted = BTreeMap::new();
    for line in uses {
        let line = line.split(';').next().unwrap_or_default();
        if let Some((module, names)) = line.split_once("::") {
            lifted.extend(heads(names).into_iter().map(|name| (name, module.to_owned())));
        }
    }
    lifted
}

/// Everything a file reaches from the root of the crate.
fn reached(source: &Source, depth: usize, lifted: &BTreeMap<String, String>) -> BTreeSet<String> {
    let mut reached = BTreeSet::new();
    for rest in source.code.split("crate::").skip(1) {
        for name in heads(rest) {
            reached.insert(lifted.get(&name).cloned().unwrap_or(name));
        }
    }
    // As many steps up as the file lies deep lead to the root as well.
    let up = "super::".repeat(depth);
    for rest in source.code.split(&up).skip(1).filter(|rest| !rest.starts_with("super")) {
        reached.extend(heads(rest).into_iter().map(|name| lifted.get(&name).cloned().unwrap_or(name)));
    }
    reached
}

#[test]
fn nothing_points_back() -> Outcome<()> {
    let sources = core()?;
    let lifted = lifted(&sources);
    assert!(lifted.len() > 20, "lib.rs was not understood: {lifted:?}");
    let mut wrong = Vec::new();
    let mut arrows = 0;
    for source in sources.iter().filter(|source| !source.path.ends_with("lib.rs")) {
        let (module, depth) = module(source)?;
        let own = rank(&module)?;
        for other in reached(source, depth, &lifted) {
            let theirs = rank(&other)?;
            arrows += 1;
            if other != module && theirs >= own && !(own == GROUND && theirs == GROUND) {
                wrong.push(format!("{}: {module} knows {other}", source.path.display()));
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    assert!(arrows > 100, "only {arrows} imports were found");
    let seen: BTreeSet<String> =
        sources.iter().map(module).map(|m| m.map(|m| m.0)).collect::<Result<_, _>>()?;
    let unused: Vec<&str> =
        RANKS.iter().map(|(name, _)| *name).filter(|name| !seen.contains(*name)).collect();
    assert!(unused.is_empty(), "ranks of modules that are gone: {unused:?}");
    Ok(())
}

#[test]
fn imports_are_found_in_every_form() {
    assert_eq!(heads("units::{Length, mm}"), ["units"]);
    assert_eq!(heads("{units::{self, mm}, Bend, path}"), ["units", "Bend", "path"]);
    let (code, literals) = source::split(
        "// crate::no\nuse crate::a; /* crate::no */ let c = '\"'; let s = \"crate::no \\\n   x\"; \
         let r = r#\"y\"z\"#; f::<'a>('\\'');",
    );
    assert_eq!(code.matches("crate::").count(), 1, "{code}");
    assert_eq!(literals, ["crate::no x", "y\"z"]);
}

#[test]
fn files_are_short_and_nothing_is_unsafe() -> Outcome<()> {
    for source in core()? {
        assert!(source.lines <= LONGEST, "{}: {} lines", source.path.display(), source.lines);
        let word =
            |word: &str| source.code.split(|c: char| !c.is_alphanumeric() && c != '_').any(|w| w == word);
        assert!(!word("unsafe"), "{}: unsafe", source.path.display());
    }
    Ok(())
}

#[test]
fn every_code_is_triggered_somewhere() -> Outcome<()> {
    let mut triggered: BTreeSet<String> = BTreeSet::new();
    for case in load_all()? {
        match case.expect {
            Expect::Error(code) => {
                triggered.insert(code.name().to_owned());
            }
            Expect::Values(values) => {
                for item in values
                    .into_iter()
                    .filter(|value| ["problem", "problems"].contains(&value.key.as_str()))
                    .flat_map(|value| value.items)
                {
                    if let Item::Word(id) = item {
                        triggered.extend(id.split('@').next().map(str::to_owned));
                    }
                }
            }
        }
    }
    let mut c = String::new();
    for entry in fs::read_dir(here("c"))? {
        c.push_str(&fs::read_to_string(entry?.path())?);
    }
    for row in TABLE {
        match BY_BINDING.iter().find(|(name, _)| *name == row.name) {
            None => assert!(triggered.contains(row.name), "no case gives {}", row.name),
            Some((name, _)) if triggered.contains(*name) => {
                return Err(format!("{name} is triggered by a case: take it off the list").into());
            }
            Some((name, Where::C)) => {
                assert!(c.contains(&format!("LW_{name}")), "no C program names LW_{name}")
            }
            Some((name, Where::Unit(file))) => {
                let tests = fs::read_to_string(here("../core/src").join(file))?;
                assert!(tests.contains(name), "{file} does not name {name}");
            }
            Some((name, Where::Nowhere(reason))) => println!("{name} is not triggered: {reason}"),
        }
    }
    Ok(())
}

/// Paths in backticks: words with a slash that are no commands, patterns or addresses.
fn cited(text: &str) -> Vec<&str> {
    let path = |word: &&str| {
        let plain = word.chars().all(|c| c.is_ascii_alphanumeric() || "/._-".contains(c));
        plain && word.contains('/') && !word.starts_with(['/', '-']) && !word.starts_with("target/")
    };
    text.split('`').skip(1).step_by(2).filter(path).collect()
}

#[test]
fn paths_cited_for_developers_exist() -> Outcome<()> {
    assert_eq!(
        cited("see `core/src/bend.rs`, `cargo x/y z`, `target/tmp`, `a::b` and `tests/`"),
        ["core/src/bend.rs", "tests/"]
    );
    let root = here("..");
    let file = root.join("DEVELOPERS.md");
    if !file.exists() {
        println!("NOT RUN: paths cited in DEVELOPERS.md (there is no such file)");
        return Ok(());
    }
    let text = fs::read_to_string(file)?;
    // A file of core may be cited from its own folder.
    let there = |path: &str| root.join(path).exists() || root.join("core/src").join(path).exists();
    let gone: Vec<&str> = cited(&text).into_iter().filter(|path| !there(path)).collect();
    assert!(gone.is_empty(), "DEVELOPERS.md cites what is not there: {gone:?}");
    Ok(())
}
