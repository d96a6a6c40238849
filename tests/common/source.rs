//! Rust source without its comments, and the texts of its string literals.

use std::fs;
use std::path::{Path, PathBuf};

/// A source file, taken apart.
#[derive(Debug)]
pub struct Source {
    pub path: PathBuf,
    pub lines: usize,
    /// The code with comments taken out and string literals emptied.
    pub code: String,
    /// The string literals, escapes undone as far as they matter for reading.
    pub literals: Vec<String>,
}

/// Every Rust file under a folder, in the order of names.
pub fn under(folder: &Path) -> Result<Vec<Source>, String> {
    let mut sources = Vec::new();
    let entries = fs::read_dir(folder).map_err(|error| format!("{}: {error}", folder.display()))?;
    for entry in entries {
        let path = entry.map_err(|error| error.to_string())?.path();
        if path.is_dir() {
            sources.extend(under(&path)?);
        } else if path.extension().is_some_and(|extension| extension == "rs") {
            let text = fs::read_to_string(&path).map_err(|error| format!("{}: {error}", path.display()))?;
            let (code, literals) = split(&text);
            sources.push(Source { path, lines: text.lines().count(), code, literals });
        }
    }
    sources.sort_by(|a, b| a.path.cmp(&b.path));
    Ok(sources)
}

/// The code without comments and literals, and the literals.
pub fn split(text: &str) -> (String, Vec<String>) {
    let chars: Vec<char> = text.chars().collect();
    let (mut code, mut literals) = (String::new(), Vec::new());
    let mut i = 0;
    while i < chars.len() {
        let next = chars.get(i + 1).copied();
        let after_word = i > 0 && (chars[i - 1].is_alphanumeric() || chars[i - 1] == '_');
        match (chars[i], next) {
            ('/', Some('/')) => i = line_end(&chars, i),
            ('/', Some('*')) => i = comment_end(&chars, i),
            ('"', _) => {
                let (literal, end) = literal(&chars, i + 1);
                literals.push(literal);
                code.push_str("\"\"");
                i = end;
            }
            ('r', Some('"' | '#')) if !after_word && raw_start(&chars, i).is_some() => {
                let hashes = raw_start(&chars, i).unwrap_or_default();
                let (literal, end) = raw_literal(&chars, i + 2 + hashes, hashes);
                literals.push(literal);
                code.push_str("\"\"");
                i = end;
            }
            // A quote followed by one character or an escape and a quote is a character, otherwise a lifetime.
            ('\'', Some('\\')) => {
                i += 3;
                while i < chars.len() && chars[i - 1] != '\'' {
                    i += 1;
                }
            }
            ('\'', Some(_)) if chars.get(i + 2) == Some(&'\'') => i += 3,
            (c, _) => {
                code.push(c);
                i += 1;
            }
        }
    }
    (code, literals)
}

fn line_end(chars: &[char], from: usize) -> usize {
    chars[from..].iter().position(|c| *c == '\n').map_or(chars.len(), |length| from + length)
}

fn comment_end(chars: &[char], from: usize) -> usize {
    let (mut depth, mut i) = (0, from);
    while i + 1 < chars.len() {
        match (chars[i], chars[i + 1]) {
            ('/', '*') => {
                depth += 1;
                i += 2;
            }
            ('*', '/') => {
                depth -= 1;
                i += 2;
                if depth == 0 {
                    return i;
                }
            }
            _ => i += 1,
        }
    }
    chars.len()
}

fn literal(chars: &[char], from: usize) -> (String, usize) {
    let (mut text, mut i) = (String::new(), from);
    while i < chars.len() && chars[i] != '"' {
        if chars[i] == '\\' {
            match chars.get(i + 1) {
                // A line that goes on: its indentation is not part of the text.
                Some('\n') => {
                    i += 2;
                    while chars.get(i).is_some_and(|c| c.is_whitespace()) {
                        i += 1;
                    }
                    continue;
                }
                Some('n' | 't' | 'r' | '0') => text.push(' '),
                Some(c) => text.push(*c),
                None => {}
            }
            i += 2;
        } else {
            text.push(chars[i]);
            i += 1;
        }
    }
    (text, i + 1)
}

/// How many hashes a raw literal starts with, if one starts here.
fn raw_start(chars: &[char], at: usize) -> Option<usize> {
    let hashes = chars[at + 1..].iter().take_while(|c| **c == '#').count();
    (chars.get(at + 1 + hashes) == Some(&'"')).then_some(hashes)
}

fn raw_literal(chars: &[char], from: usize, hashes: usize) -> (String, usize) {
    let mut i = from;
    while i < chars.len() {
        if chars[i] == '"' && chars[i + 1..].iter().take_while(|c| **c == '#').count() >= hashes {
            break;
        }
        i += 1;
    }
    (chars[from..i.min(chars.len())].iter().collect(), i + 1 + hashes)
}
