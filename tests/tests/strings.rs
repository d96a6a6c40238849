//! What the library says: never that a line may be used, and never a figure that is none.

#[path = "../common/mod.rs"]
mod common;

use common::accept::Accept;
use common::case::load_all;
use common::{Outcome, here, run, source};
use linewright::code::TABLE;
use linewright::{LineDraft, Plan, PlanOptions, card, size_lines};
use std::collections::BTreeSet;

/// Words that a person could take for a permission.
const NEVER: [&str; 6] = ["safe", "approved", "roadworthy", "passed", "certified", "legal"];

fn words(text: &str) -> BTreeSet<String> {
    text.split(|c: char| !c.is_alphabetic()).map(str::to_lowercase).filter(|word| !word.is_empty()).collect()
}

fn forbidden(text: &str) -> Option<&'static str> {
    let words = words(text);
    NEVER.into_iter().find(|word| words.contains(*word))
}

#[test]
fn no_text_of_the_library_permits_anything() -> Outcome<()> {
    assert_eq!(forbidden("It is Safe."), Some("safe"));
    assert_eq!(forbidden("unsafe surpassed illegal"), None);
    let sources = source::under(&here("../core/src"))?;
    let mut literals = 0;
    for source in &sources {
        for literal in &source.literals {
            literals += 1;
            assert_eq!(forbidden(literal), None, "{}: {literal}", source.path.display());
        }
    }
    assert!(literals > 500, "only {literals} literals were found");
    Ok(())
}

/// The plans of all case files.
fn plans() -> Outcome<Vec<Plan>> {
    let mut plans = Vec::new();
    for case in load_all()? {
        let Accept::Plan(input) = &case.accept else { continue };
        let mut draft = LineDraft::new();
        let known = input.line.iter().all(|(field, typed)| draft.set(field, typed).is_ok());
        if let (true, Ok(bench)) = (known, run::bench(&input.tools)) {
            plans.extend(
                size_lines(&[draft], &bench, &PlanOptions::default())
                    .into_iter()
                    .filter_map(|line| line.plan),
            );
        }
    }
    Ok(plans)
}

#[test]
fn what_is_printed_has_no_broken_figures() -> Outcome<()> {
    let plans = plans()?;
    assert!(plans.len() > 50, "only {} plans", plans.len());
    for plan in &plans {
        let mut said: Vec<String> = plan.problems().iter().map(ToString::to_string).collect();
        said.extend(plan.assumptions().iter().map(ToString::to_string));
        said.extend(plan.steps().iter().map(|step| step.text.clone()));
        said.push(card::text(plan));
        for text in said {
            let words = words(&text);
            assert!(!words.contains("nan") && !words.contains("inf"), "{text}");
            assert!(!text.contains("-0 ") && !text.contains("-0.0 ") && !text.contains("{}"), "{text}");
            assert!(!text.trim().is_empty());
        }
    }
    Ok(())
}

#[test]
fn every_code_says_what_it_means_and_what_clears_it() {
    let meanings: BTreeSet<&str> = TABLE.iter().map(|row| row.meaning).collect();
    assert_eq!(meanings.len(), TABLE.len(), "two codes mean the same");
    for row in TABLE {
        for text in [row.meaning, row.cleared_by] {
            assert!(text.is_ascii() && text.len() > 8 && !text.ends_with('.'), "{}: {text}", row.name);
            assert!(text.len() <= 140, "{}: {} characters", row.name, text.len());
        }
        assert_eq!(forbidden(row.name), None);
    }
}
