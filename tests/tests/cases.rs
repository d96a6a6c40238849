//! Every case file, run in Rust; and the strictness of their reader.

#[path = "../common/mod.rs"]
mod common;

use common::case::{load, load_all};
use common::compare::judge;
use common::flat::answer;

#[test]
fn every_case_gives_what_it_expects() -> common::Outcome<()> {
    let cases = load_all()?;
    let wrong: Vec<String> = cases.iter().filter_map(|case| judge(case, &answer(case)).err()).collect();
    println!("{} cases", cases.len());
    assert!(wrong.is_empty(), "{} of {} cases:\n{}", wrong.len(), cases.len(), wrong.join("\n"));
    Ok(())
}

/// A case that is right, with one thing changed.
fn bend(from: &str, to: &str) -> String {
    let good = r#"
[[case]]
operation = "bend"
accept = { radius = "10 mm", angle = "90 deg" }
expect = { tangent_length_mm = 10.0, arc_mm = 15.707963267948966 }
tolerance = "0.000001 mm"
origin = "R tan 45 = R"
"#;
    good.replace(from, to)
}

#[test]
fn a_right_file_is_read_and_judged() -> common::Outcome<()> {
    let cases = load("good", &bend("", ""))?;
    assert_eq!(cases.len(), 1);
    judge(&cases[0], &answer(&cases[0]))?;
    Ok(())
}

#[test]
fn what_nobody_reads_is_an_error() {
    for (from, to, why) in [
        ("\"bend\"", "\"bending\"", "unknown operation"),
        ("origin", "source", "unknown field"),
        ("R tan 45 = R", " ", "origin is empty"),
        ("angle =", "angel =", "unknown field"),
        (", angle = \"90 deg\"", "", "missing field"),
        ("arc_mm", "arch_mm", "no key arch_mm"),
        ("0.000001 mm", "0.000001 deg", "not in the unit"),
        ("0.000001 mm", "0.000001", "has no unit"),
        ("0.000001 mm", "-1 mm", "has no number"),
        ("0.000001 mm", "nan mm", "has no number"),
        ("tolerance = \"0.000001 mm\"", "", "without a tolerance"),
        ("\"0.000001 mm\"", "{ arc_mm = \"1 mm\" }", "no tolerance for tangent_length_mm"),
        (
            "\"0.000001 mm\"",
            "{ arc_mm = \"1 mm\", tangent_length_mm = \"1 mm\", gain_mm = \"1 mm\" }",
            "no figure",
        ),
        ("tangent_length_mm = 10.0, arc_mm = 15.707963267948966", "", "nothing is expected"),
        ("tangent_length_mm = 10.0, arc_mm = 15.707963267948966", "error = \"NO_CORNER\"", "stands alone"),
        ("[[case]]", "skip = true\n[[case]]", "unknown field"),
        ("operation", "known_failing = \"\"\noperation", "needs a reason"),
        (
            "[[case]]",
            "[benches.spare]\nformer = \"1 mm\"\ngrip = \"1 mm\"\n[[case]]",
            "no case uses bench spare",
        ),
    ] {
        let read = load("bad", &bend(from, to)).map(|cases| cases.len());
        assert!(read.as_ref().is_err_and(|error| error.contains(why)), "{to}: {read:?}");
    }
    for text in ["", "[benches]\n", "case = []\n"] {
        assert!(load("empty", text).is_err_and(|error| error == "empty: no cases"));
    }
    let unknown = "[[case]]\noperation = \"thread\"\naccept = { text = \"M10\" }\norigin = \"rule\"\n";
    let error =
        load("bad", &format!("{unknown}expect = {{ error = \"TOO_BIG\" }}\n")).map(|cases| cases.len());
    assert!(error.is_err_and(|why| why.contains("no code")));
}

#[test]
fn a_wrong_answer_fails_and_so_does_a_known_failure_that_passes() -> common::Outcome<()> {
    let verdict = |text: &str| {
        let cases = load("case", text)?;
        judge(&cases[0], &answer(&cases[0]))
    };
    let failing = |text: String| text.replace("operation =", "known_failing = \"a reason\"\noperation =");
    let wrong = bend("10.0", "10.1");
    assert!(verdict(&wrong).is_err_and(|why| why.contains("tangent_length_mm")));
    verdict(&failing(wrong))?;
    assert!(verdict(&failing(bend("", ""))).is_err_and(|why| why.contains("it passes")));
    // A sentence is compared whole, semicolons and all.
    let sentence = |words: &str| {
        let mate = r#"accept = { male = "M5x0.8", female = "M20x1.5" }"#;
        verdict(&format!(
            "[[case]]\noperation = \"mate\"\n{mate}\nexpect = {{ verdict = \"{words}\" }}\norigin = \"rule\"\n"
        ))
    };
    sentence("M5x0.8 in M20x1.5: different threads; it goes in without holding on anything")?;
    assert!(sentence("M5x0.8 in M20x1.5: different threads").is_err());
    assert!(sentence("M5x0.8 in M20x1.5: different threads; it goes in").is_err());
    // One wrong figure among right ones, a missing item, an error for values and values for an error.
    assert!(verdict(&bend("15.707963267948966", "15.70797")).is_err());
    assert!(verdict(&bend("tangent_length_mm = 10.0", "tangent_length_mm = [10.0, 10.0]")).is_err());
    assert!(verdict(&bend("90 deg", "180 deg")).is_err_and(|why| why.contains("NO_CORNER")));
    let error = bend("tangent_length_mm = 10.0, arc_mm = 15.707963267948966", "error = \"NO_CORNER\"");
    assert!(verdict(&error.replace("tolerance = \"0.000001 mm\"\n", "")).is_err());
    Ok(())
}
