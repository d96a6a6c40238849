//! The C header: current, documented, in step with the version, the table of codes and the list of symbols.
//!
//! `LINEWRIGHT_BLESS=1 cargo test --test header` writes the header and the list of symbols anew.

use linewright::code::TABLE;
use std::collections::BTreeMap;
use std::error::Error;
use std::num::ParseIntError;
use std::path::{Path, PathBuf};
use std::{env, fs};

type Outcome<T = ()> = Result<T, Box<dyn Error>>;

const HEADER: &str = "bindings-c/include/linewright.h";
const SYMBOLS: &str = "tests/tables/c_symbols.txt";

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("..")
}

fn read(path: &str) -> Outcome<String> {
    Ok(fs::read_to_string(root().join(path))
        .map_err(|error| format!("{path}: {error}"))?
        .replace("\r\n", "\n"))
}

/// Writes the file where that was asked for; otherwise compares it.
fn bless_or_compare(path: &str, made: &str) -> Outcome {
    if env::var_os("LINEWRIGHT_BLESS").is_some_and(|value| value == "1") {
        fs::write(root().join(path), made)?;
    }
    let kept = read(path)?;
    let same = kept.lines().zip(made.lines()).take_while(|(kept, made)| kept == made).count();
    let line = same + 1;
    assert!(
        kept == made,
        "{path} is not what the sources give, from line {line}; LINEWRIGHT_BLESS=1 writes it anew"
    );
    Ok(())
}

fn version() -> Result<[u32; 3], ParseIntError> {
    let [major, minor, patch] =
        [env!("CARGO_PKG_VERSION_MAJOR"), env!("CARGO_PKG_VERSION_MINOR"), env!("CARGO_PKG_VERSION_PATCH")]
            .map(str::parse);
    Ok([major?, minor?, patch?])
}

/// What the header has that is not typed in the binding: the version of the workspace and the core's table of codes.
fn macros_and_codes() -> Outcome<String> {
    let [major, minor, patch] = version()?;
    let mut text = format!(
        "\n/** The version that a program is compiled against; lw_version() is the one it runs with. */\n\
         #define LW_VERSION_MAJOR {major}\n#define LW_VERSION_MINOR {minor}\n#define LW_VERSION_PATCH {patch}\n\
         /** Major x 1000000 + minor x 1000 + patch. */\n#define LW_VERSION_NUMBER {}\n\n\
         /** What a call or a finding says. The numbers never change and are never used again. */\n\
         enum lw_code {{\n    /** the call was answered */\n    LW_OK = 0,\n",
        major * 1_000_000 + minor * 1_000 + patch
    );
    for row in TABLE {
        text += &format!("    /** {} */\n    LW_{} = {},\n", row.meaning, row.name, row.code.number());
    }
    Ok(text + "};")
}

fn generate() -> Outcome<String> {
    let binding = root().join("bindings-c");
    let mut config = cbindgen::Config::from_file(binding.join("cbindgen.toml"))?;
    config.after_includes = Some(macros_and_codes()?);
    // Reads the modules in the order in which they are declared, and asks no other program for them.
    let builder = cbindgen::Builder::new().with_config(config).with_src(binding.join("src/lib.rs"));
    let mut header = Vec::new();
    builder.generate()?.write(&mut header);
    Ok(String::from_utf8(header)?)
}

/// A function of the header.
struct Function {
    /// The names of its parameters that are pointers.
    pointers: Vec<String>,
    /// Whether it answers with a status.
    has_status: bool,
    /// Whether a comment stands right before it.
    documented: bool,
}

/// The functions that the header declares.
fn functions() -> Outcome<BTreeMap<String, Function>> {
    let header = generate()?;
    let mut found = BTreeMap::new();
    for (at, _) in header.match_indices("lw_") {
        let line = header[..at].rfind('\n').map_or(0, |end| end + 1);
        let returns = header[line..at].trim();
        let name =
            header[at..].split(|c: char| !(c.is_ascii_alphanumeric() || c == '_')).next().unwrap_or_default();
        // A declaration begins its line with a type; a mention in a comment does not.
        let parameters = header[at + name.len()..].strip_prefix('(').and_then(|rest| rest.split_once(");"));
        let Some((parameters, _)) = parameters.filter(|_| returns.starts_with(char::is_alphabetic)) else {
            continue;
        };
        let pointers = parameters.split(',').filter(|parameter| parameter.contains('*'));
        let last_word = |text: &str| text.rsplit(['*', ' ']).next().unwrap_or_default().to_owned();
        let function = Function {
            pointers: pointers.map(last_word).collect(),
            has_status: returns == "lw_status",
            documented: header[..line].trim_end().ends_with("*/"),
        };
        found.insert(name.to_owned(), function);
    }
    assert!(found.len() > 100, "only {} functions were found in the header", found.len());
    Ok(found)
}

#[test]
fn is_what_the_sources_give() -> Outcome {
    bless_or_compare(HEADER, &generate()?)
}

#[test]
fn every_function_is_documented() -> Outcome {
    let bare: Vec<String> =
        functions()?.into_iter().filter(|(_, f)| !f.documented).map(|(name, _)| name).collect();
    assert!(bare.is_empty(), "no comment before {}", bare.join(", "));
    Ok(())
}

#[test]
fn functions_are_the_listed_symbols() -> Outcome {
    let names: Vec<String> = functions()?.into_keys().collect();
    bless_or_compare(SYMBOLS, &(names.join("\n") + "\n"))
}

#[test]
fn version_is_that_of_the_crate() -> Outcome {
    let header = read(HEADER)?;
    let defined = |name: &str| -> Outcome<u32> {
        let line = header.lines().find_map(|line| line.strip_prefix(&format!("#define {name} ")));
        Ok(line.ok_or_else(|| format!("the header does not define {name}"))?.parse()?)
    };
    let [major, minor, patch] = version()?;
    assert_eq!(defined("LW_VERSION_MAJOR")?, major);
    assert_eq!(defined("LW_VERSION_MINOR")?, minor);
    assert_eq!(defined("LW_VERSION_PATCH")?, patch);
    assert_eq!(defined("LW_VERSION_NUMBER")?, (major * 1_000 + minor) * 1_000 + patch);
    Ok(())
}

#[test]
fn codes_are_those_of_the_core() -> Outcome {
    let header = read(HEADER)?;
    let (_, list) = header.split_once("enum lw_code {").ok_or("the header has no codes")?;
    let (list, _) = list.split_once('}').ok_or("the list of codes has no end")?;
    let items = list.lines().filter_map(|line| line.trim().trim_end_matches(',').split_once(" = "));
    let in_header: BTreeMap<String, u16> =
        items.map(|(name, number)| Ok((name.to_owned(), number.parse()?))).collect::<Outcome<_>>()?;
    let mut in_core: BTreeMap<String, u16> =
        TABLE.iter().map(|row| (format!("LW_{}", row.name), row.code.number())).collect();
    in_core.insert("LW_OK".to_owned(), 0);
    assert_eq!(in_header, in_core);
    Ok(())
}

/// One of the null programs has a line for every pointer of every function, so that none is added without being tried.
#[test]
fn every_pointer_is_tried_with_null() -> Outcome {
    let program = ["null", "null_more", "null_thread", "null_flare", "null_bend", "null_metal"]
        .map(|name| read(&format!("tests/c/{name}.c")))
        .into_iter()
        .collect::<Outcome<String>>()?;
    let tries = |parts: [&str; 2]| program.lines().any(|line| parts.iter().all(|part| line.contains(part)));
    let mut missing = Vec::new();
    for (name, function) in functions()? {
        for pointer in &function.pointers {
            let tried = if function.has_status {
                tries([&format!("(\"{pointer}\", "), &format!(" {name}(")])
            } else {
                tries([&format!(" {name}(NULL);"), ""])
            };
            if !tried {
                missing.push(format!("{name}: {pointer}"));
            }
        }
    }
    assert!(missing.is_empty(), "the null programs do not try\n{}", missing.join("\n"));
    Ok(())
}
