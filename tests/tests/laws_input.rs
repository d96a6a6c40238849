//! Whatever comes in: a reader or constructor answers or refuses, and what it answers is a number.

#[path = "../common/mod.rs"]
mod common;

use common::{random, sample};
use linewright::units::{Length, deg, inch, mm, rad, ratio, read_angle, read_length, to_deg, to_mm, to_rad};
use linewright::{
    Bench, Bend, Code, Flare, FlareTool, Former, LineDraft, Material, Nose, Nut, Path, Plan, PlanOptions,
    Point, Seat, Springback, Thread, Trial, Tube, line, size_lines,
};
use proptest::prelude::*;

fn finite(path: &Path) -> bool {
    let numbers = path.straights().iter().map(|s| to_mm(*s)).chain(path.end_point().map(to_mm));
    let legs = path.legs().map(|legs| legs.iter().all(|leg| to_mm(*leg).is_finite())).unwrap_or(true);
    legs && numbers.chain([to_mm(path.developed_length())]).all(f64::is_finite)
}

proptest! {
    #![proptest_config(random::config(10_000))]

    #[test]
    fn a_text_is_read_as_a_finite_number_or_refused(text in random::text()) {
        if let Ok(length) = read_length(&text) {
            prop_assert!(to_mm(length).is_finite(), "{text:?}");
        }
        if let Ok(angle) = read_angle(&text) {
            prop_assert!(to_deg(angle).is_finite() && to_rad(angle).is_finite(), "{text:?}");
        }
    }

    #[test]
    fn a_bare_number_never_gets_a_unit(number in random::bits(), trailing in "[ ]{0,2}") {
        for text in [format!("{number}{trailing}"), format!("{number:e}"), format!("{number:.3}")] {
            let refused = [Code::UnitMissing, Code::NotANumber, Code::NumberAmbiguous, Code::Unreadable];
            for code in [read_length(&text).map(to_mm), read_angle(&text).map(to_deg)] {
                let code = code.map_err(|error| error.code());
                prop_assert!(code.is_err_and(|code| refused.contains(&code)), "{text}: {code:?}");
            }
        }
    }

    #[test]
    fn what_is_printed_of_a_length_is_read_as_it(number in -100_000.0..100_000.0_f64) {
        for (text, want) in [(format!("{number} mm"), number), (format!("{number}mm"), number)] {
            prop_assert_eq!(to_mm(read_length(&text)?).to_bits(), want.to_bits());
        }
    }

    #[test]
    fn a_thread_has_one_spelling_that_reads_as_itself(text in random::text()) {
        if let Ok(thread) = Thread::read(&text) {
            prop_assert_eq!(Thread::read(&thread.to_string())?, thread);
            prop_assert!(to_mm(thread.diameter()) > 0.0 && to_mm(thread.pitch()) > 0.0);
            prop_assert!(thread.pitch() < thread.diameter(), "{thread}");
        }
    }

    #[test]
    fn names_are_known_or_refused(text in random::text()) {
        if let Ok(material) = Material::from_name(&text) {
            prop_assert!(material.name().eq_ignore_ascii_case(text.trim()));
        }
        prop_assert!(Flare::from_name(&text).is_err() && Code::from_name(&text).is_none());
        prop_assert!(Seat::from_name(&text).is_err() && Nose::from_name(&text).is_err());
    }

    #[test]
    fn any_draft_is_checked(fields in prop::collection::vec((0..line::FIELDS.len(), random::text()), 0..12)) {
        let mut draft: LineDraft = sample::draft(&[])?;
        for (field, typed) in &fields {
            draft.set(line::FIELDS[*field].name, typed)?;
        }
        let checked = draft.check();
        let refused = checked.problems.iter().any(|problem| problem.level() == linewright::Level::Refuse);
        prop_assert_eq!(checked.line.is_none(), refused, "{:?}", checked.problems);
        let rows = size_lines(&[draft], &sample::bench()?, &PlanOptions::default());
        prop_assert_eq!(rows[0].plan.is_some(), checked.line.is_some());
        if let Some(line) = checked.line {
            prop_assert!(finite(line.path()));
            // What was found while reading is not lost in the plan.
            for problem in &checked.problems {
                prop_assert!(rows[0].problems.contains(problem), "{problem}");
            }
        }
    }

    #[test]
    fn any_bits_make_a_bend_or_are_refused(
        angle in random::bits(),
        turn in random::bits(),
        radius in random::bits(),
    ) {
        if let Ok(bend) = Bend::new(deg(angle), deg(turn), mm(radius)) {
            prop_assert!(to_mm(bend.arc()).is_finite() && to_mm(bend.arc()) >= 0.0);
            let turn = to_deg(bend.rotation());
            prop_assert!(turn > -180.0 && turn <= 180.0, "{turn}");
            if let Ok(tangent) = bend.tangent_length() {
                prop_assert!(to_mm(tangent).is_finite() && to_mm(tangent) >= 0.0);
                prop_assert!(bend.gain().is_ok_and(|gain| to_mm(gain).is_finite() && to_mm(gain) >= 0.0));
            }
        }
        if let Ok(bend) = Bend::new(rad(angle), rad(turn), inch(radius)) {
            prop_assert!(to_mm(bend.arc()).is_finite() && to_rad(bend.rotation()).is_finite());
        }
    }

    #[test]
    fn any_bits_make_a_path_or_are_refused(
        lengths in prop::collection::vec(random::bits(), 0..6),
        angles in prop::collection::vec(random::bits(), 0..5),
        points in prop::collection::vec(prop::array::uniform3(random::bits()), 0..7),
        radii in prop::collection::vec(random::bits(), 0..5),
    ) {
        let lengths: Vec<Length> = lengths.into_iter().map(mm).collect();
        let angles: Vec<_> = angles.into_iter().map(deg).collect();
        let radii: Vec<Length> = radii.into_iter().map(mm).collect();
        let turns = &angles[..angles.len().saturating_sub(1)];
        if let Ok(bends) = Bend::list(&angles, turns, &radii) {
            let paths = [Path::from_straights(&lengths, &bends), Path::from_legs(&lengths, &bends)];
            for path in paths.into_iter().flatten() {
                prop_assert!(finite(&path) && finite(&path.reversed()) && finite(&path.mirrored()));
            }
        }
        let points: Vec<Point> = points.into_iter().map(|point| point.map(mm)).collect();
        if let Ok(path) = Path::from_vertices(&points, &radii) {
            prop_assert!(finite(&path), "{path:?}");
        }
    }

    #[test]
    fn any_bits_make_tools_or_are_refused(a in prop::array::uniform8(random::bits())) {
        let [a, b, c, d, e, f, g, h] = a;
        if let Ok(tube) = Tube::new(mm(a), mm(b), Material::CopperNickel) {
            prop_assert!(to_mm(tube.bore()) > 0.0 && tube.mass(mm(1.0)).is_ok_and(|mass| mass.is_some()));
        }
        if let Ok(nut) = Nut::new(None, mm(a), mm(b), None) {
            prop_assert!(to_mm(nut.bore()) > 0.0 && to_mm(nut.length()) > 0.0);
        }
        let tool = FlareTool::new(Flare::Double45, mm(c), mm(d))
            .and_then(|tool| tool.with_net_shortening(mm(e)))
            .and_then(|tool| tool.with_cut_spare(mm(f)));
        if let (Ok(tool), Ok(former)) = (tool, Former::new(mm(g), mm(h))) {
            let bench = Bench::new(former, &[tool])
                .and_then(|bench| bench.with_clearance(mm(a)))
                .and_then(|bench| bench.with_back_off(mm(b)));
            if let (Ok(bench), Some(line)) = (bench, sample::draft(&[])?.check().line) {
                let plan = Plan::new(&line, &bench, &PlanOptions::default());
                prop_assert!(plan.cut().is_some_and(|cut| to_mm(cut.length()).is_finite()));
            }
        }
        if let Ok(options) = PlanOptions::default().with_reserve(mm(a)) {
            prop_assert!(a >= 0.0, "{options:?}");
        }
    }

    #[test]
    fn any_bits_make_a_springback_or_are_refused(
        trials in prop::collection::vec((random::bits(), random::bits()), 0..5),
        constant in random::bits(),
        proportional in random::bits(),
        wanted in 0.0..3600.0_f64,
    ) {
        let trials: Vec<Trial> =
            trials.into_iter().map(|(set, got)| Trial { set: deg(set), got: deg(got) }).collect();
        let both = [Springback::from_trials(&trials), Springback::new(deg(constant), ratio(proportional))];
        for springback in both.into_iter().flatten() {
            prop_assert!(springback.setting(deg(wanted)).is_ok_and(|set| to_deg(set).is_finite()));
        }
    }

    #[test]
    fn likely_trials_never_set_the_tool_backward(
        trials in prop::collection::vec((10.0..180.0_f64, 0.8..1.0_f64), 1..6),
        wanted in 0.5..180.0_f64,
    ) {
        let trials: Vec<Trial> =
            trials.into_iter().map(|(set, share)| Trial { set: deg(set), got: deg(set * share) }).collect();
        if let Ok(springback) = Springback::from_trials(&trials) {
            let set = springback.setting(deg(wanted)).map_or(f64::NAN, to_deg);
            prop_assert!(set > 0.0, "{set} for {wanted}: {trials:?}");
        }
    }
}
