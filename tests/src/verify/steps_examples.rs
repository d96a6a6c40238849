//! The same example in the three languages, which must print the same bytes.

use std::fs;
use std::path::Path;

use crate::step::Run;
use crate::steps_c::{Linkage, build_example};
use crate::steps_python;

type Outcome = Result<(), String>;

/// Runs the trailer example in Rust, Python and C and compares what they print.
pub fn examples(run: &mut Run<'_>) -> Outcome {
    let rust = run.place.out.join("trailer-rust.txt");
    let mut command = run.place.cargo("run --release --locked --example trailer");
    // Without the Rust output there is nothing to compare with, but the others still show whether they run at all.
    let reference = run.check_into("Rust example", &mut command, &rust).then_some(rust);
    compare(run, "Rust output is not empty", reference.as_deref(), reference.as_deref())?;

    if let Some(python) = steps_python::installed(run)? {
        let output = run.place.out.join("trailer-python.txt");
        let mut command = run.place.command(&python);
        command.args(["-W", "error", "bindings-py/examples/trailer.py"]);
        let printed = run.check_into("Python example", &mut command, &output).then_some(output);
        compare(run, "Python output = Rust output", reference.as_deref(), printed.as_deref())?;
    } else {
        run.not_run("Python example");
    }

    for (linkage, name) in [(Linkage::Static, "static"), (Linkage::Shared, "shared")] {
        let Some(program) = build_example(run, linkage) else {
            run.not_run(&format!("C example, {name}"));
            continue;
        };
        let output = run.place.out.join(format!("trailer-c-{name}.txt"));
        let mut command = run.place.command(&program);
        let printed = run.check_into(&format!("C example, {name}"), &mut command, &output).then_some(output);
        compare(run, &format!("C output, {name} = Rust output"), reference.as_deref(), printed.as_deref())?;
    }
    Ok(())
}

/// Compares two outputs byte for byte. An output that is missing has been counted as a failure already.
fn compare(run: &mut Run<'_>, what: &str, expected: Option<&Path>, found: Option<&Path>) -> Outcome {
    let (Some(expected), Some(found)) = (expected, found) else { return Ok(()) };
    let read =
        |path: &Path| fs::read(path).map_err(|error| format!("cannot read {}: {error}", path.display()));
    let (expected, found) = (read(expected)?, read(found)?);
    if found.is_empty() {
        run.fail(what, "it printed nothing");
    } else if let Some(difference) = first_difference(&expected, &found) {
        run.fail(what, &difference);
    } else {
        run.pass(what);
    }
    Ok(())
}

/// Says where two texts start to differ; `None` if they do not.
fn first_difference(expected: &[u8], found: &[u8]) -> Option<String> {
    if expected == found {
        return None;
    }
    let mut theirs = found.split_inclusive(|&byte| byte == b'\n');
    let mut number = 0_usize;
    for line in expected.split_inclusive(|&byte| byte == b'\n') {
        number += 1;
        let other = theirs.next();
        if other != Some(line) {
            return Some(describe(number, Some(line), other));
        }
    }
    Some(describe(number + 1, None, theirs.next()))
}

fn describe(number: usize, expected: Option<&[u8]>, found: Option<&[u8]>) -> String {
    // The debug form shows blanks, line ends and bytes that are no text.
    let shown = |line: Option<&[u8]>| {
        line.map_or_else(|| "nothing".to_owned(), |line| format!("{:?}", String::from_utf8_lossy(line)))
    };
    format!("line {number} differs:\nexpected {}\nfound    {}", shown(expected), shown(found))
}

#[cfg(test)]
mod tests {
    use super::first_difference;

    #[test]
    fn finds_the_first_difference() {
        assert_eq!(first_difference(b"a\nb\n", b"a\nb\n"), None);
        let middle = "line 2 differs:\nexpected \"b\\n\"\nfound    \"c\\n\"";
        assert_eq!(first_difference(b"a\nb\n", b"a\nc\n").as_deref(), Some(middle));
        let longer = "line 2 differs:\nexpected nothing\nfound    \"b\"";
        assert_eq!(first_difference(b"a\n", b"a\nb").as_deref(), Some(longer));
        let end = "line 1 differs:\nexpected \"a\\n\"\nfound    \"a\"";
        assert_eq!(first_difference(b"a\n", b"a").as_deref(), Some(end));
    }
}
