//! Flares: what they take of the tube against figures computed apart, the facts of the trade, hose ends.

use linewright::flare::{
    Flare, FlareForm, FlareTrial, HEXAGONS, HoseEnd, STANDARDS, Stretch, USUAL_THREADS, Way, allowances,
    flare_size, seats_of,
};
use linewright::source::{Checked, RowSource};
use linewright::thread::{CATALOGUE, ThreadSide};
use linewright::units::{inch, mm, to_mm};
use linewright::{Code, Fit, Nose, Seat, Thread};
use std::error::Error;
use std::fs;

type Outcome = Result<(), Box<dyn Error>>;

#[test]
fn developed_lengths_are_those_computed_apart() -> Outcome {
    let text = fs::read_to_string(concat!(env!("CARGO_MANIFEST_DIR"), "/tables/flare_allowance.csv"))?;
    let mut compared = 0;
    for line in text.lines().filter(|line| !line.starts_with('#')).skip(1) {
        let row: Vec<&str> = line.split(',').collect();
        let n = |i: usize| row[i].parse::<f64>();
        let form = FlareForm::new(Flare::from_name(row[0])?, mm(n(1)?), mm(n(2)?), mm(n(3)?))?;
        for (i, stretch) in Stretch::ALL.into_iter().enumerate().filter(|(i, _)| !row[4 + i].is_empty()) {
            let ours = to_mm(form.stick_out(stretch));
            assert!((ours - n(4 + i)?).abs() < 2e-5, "{line}: {} {ours}", stretch.name());
            compared += 1;
        }
        assert!((to_mm(form.height()) - n(7)?).abs() < 2e-5, "{line}: {}", to_mm(form.height()));
        let net = to_mm(form.net_shortening(Stretch::KeepsLength));
        assert!((net - (n(4)? - n(7)?)).abs() < 3e-5, "{line}: {net}");
    }
    assert_eq!(compared, 21 * 3 + 4);
    Ok(())
}

/// Facts of the trade, common practice without a source: at least 5 mm for a double flare on 3/16 in tube, and two
/// strokes. The geometry says that the rule is never short of the net shortening, and above the stick-out too.
#[test]
fn five_millimeters_are_enough_for_a_double_flare_on_brake_tube() -> Outcome {
    let (od, wall) = (inch(3.0 / 16.0), inch(0.028));
    let size = flare_size(Flare::Double45, od).ok_or("no size")?;
    assert_eq!((to_mm(size.least), to_mm(size.most)), (6.7, 7.1));
    let trial = FlareTrial::new(mm(200.0), mm(198.0))?;
    let ways = allowances(Flare::Double45, od, wall, Some([size.least, size.most]), Some(&trial))?;
    let order: Vec<Way> = ways.iter().map(|way| way.way).collect();
    assert_eq!(order, [Way::TestPiece, Way::Geometry, Way::Rule]);
    let [_, most_net] = ways[1].net_shortening.ok_or("no net")?;
    let [_, most_out] = ways[1].stick_out.ok_or("no stick-out")?;
    let rule = ways[2].cut_allowance.ok_or("no rule")?;
    assert!((to_mm(rule) - 5.0).abs() < 1e-12);
    assert!(to_mm(most_net) < 2.6 && to_mm(most_out) < 4.65 && to_mm(most_out) < to_mm(rule));
    assert_eq!(ways[2].source.checked, Checked::CommonPractice);
    // The test piece says what this bench does, and lies in what the geometry allows.
    assert_eq!(ways[0].net_shortening.map(|[least, _]| to_mm(least)), Some(2.0));
    assert_eq!((Flare::Double45.strokes(), Flare::Bubble.strokes()), (2, 1));
    Ok(())
}

#[test]
fn a_bubble_flare_has_one_public_figure_and_says_what_is_assumed() -> Outcome {
    let ways = allowances(Flare::Bubble, mm(4.75), mm(0.75), Some([mm(7.1), mm(7.1)]), None)?;
    assert!(ways[0].way == Way::Geometry && ways[0].source.text.contains("assumed"));
    assert_eq!(ways[1].cut_allowance.map(to_mm), Some(3.2));
    assert!(flare_size(Flare::Bubble, mm(4.75)).is_none() && flare_size(Flare::Double45, mm(6.0)).is_none());
    Ok(())
}

/// Every row of every table names its text, the edition or that it is not known, the place or that it is not known.
#[test]
fn every_row_of_a_table_has_its_source() {
    let rows: Vec<(String, RowSource)> = STANDARDS
        .iter()
        .map(|row| (row.name.to_owned(), row.source))
        .chain(USUAL_THREADS.iter().map(|row| (row.designation.to_owned(), row.source)))
        .chain(HEXAGONS.iter().map(|row| (row.on.to_owned(), row.source)))
        .chain(CATALOGUE.iter().map(|row| (row.thread.to_string(), row.source)))
        .collect();
    assert_eq!(rows.len(), STANDARDS.len() + USUAL_THREADS.len() + HEXAGONS.len() + CATALOGUE.len());
    for (name, RowSource { text, place, checked }) in rows {
        assert!(!text.is_empty() && !place.is_empty(), "{name}");
        let year = text.as_bytes().windows(4).any(|four| {
            four.iter().all(u8::is_ascii_digit) && (four.starts_with(b"19") || four.starts_with(b"20"))
        });
        let has_edition = year || text.contains("not known") || checked == Checked::CommonPractice;
        assert!(has_edition, "{name}: {text}");
        // What was seen was seen somewhere.
        let was_seen = matches!(checked, Checked::Seen | Checked::SecondHand);
        assert!(!was_seen || place != "place not known", "{name}: {text}");
    }
    for row in CATALOGUE {
        for side in [ThreadSide::External, ThreadSide::Internal] {
            let Ok(limits) = row.thread.limits(side) else { continue };
            let source = limits.source();
            assert!(!source.text.is_empty() && !source.place.is_empty(), "{}", row.thread);
            let has_edition =
                source.text.contains("not known") || source.text.ends_with(|c: char| c.is_ascii_digit());
            assert!(has_edition, "{}: {}", row.thread, source.text);
        }
    }
}

#[test]
fn a_form_that_cannot_be_is_refused() {
    let bad = [
        (Flare::Double45, 4.7625, 0.7112, 4.8, Code::OutOfRange),
        (Flare::Double45, 4.7625, 2.4, 7.0, Code::OutOfRange),
        (Flare::Double45, f64::NAN, 0.7112, 7.0, Code::NotANumber),
        (Flare::Bubble, 4.7625, 0.7112, 5.0, Code::OutOfRange),
        (Flare::Single37, 4.7625, 0.7112, 7.0, Code::NotKnown),
    ];
    for (flare, od, wall, diameter, code) in bad {
        let error = FlareForm::new(flare, mm(od), mm(wall), mm(diameter)).map(|form| form.height());
        assert_eq!(error.map_err(|error| error.code()), Err(code), "{} {diameter}", flare.name());
    }
}

/// The full cross table: only the listed pairs fit, and what is unknown never counts as yes.
#[test]
fn flare_seat_and_nose_fit_only_as_listed() {
    let pairs = [
        (Flare::Double45, Seat::Inverted45, Nose::Coned),
        (Flare::Bubble, Seat::Bubble, Nose::Flat),
        (Flare::Single37, Seat::Cone37, Nose::Sleeve),
    ];
    for flare in Flare::ALL {
        assert_eq!((flare.fits_seat(None), flare.fits_nose(None)), (Fit::NotKnown, Fit::NotKnown));
        for seat in Seat::ALL {
            let listed = pairs.iter().any(|(f, s, _)| *f == flare && *s == seat);
            assert_eq!(flare.fits_seat(Some(seat)) == Fit::Fits, listed);
            assert!(listed || flare.fits_seat(Some(seat)) == Fit::DoesNotFit);
        }
        for nose in Nose::ALL {
            let listed = pairs.iter().any(|(f, _, n)| *f == flare && *n == nose);
            assert_eq!(flare.fits_nose(Some(nose)) == Fit::Fits, listed);
        }
    }
    assert_eq!(Flare::from_name("single-45").map_err(|error| error.code()), Err(Code::Single45Refused));
}

#[test]
fn a_thread_does_not_tell_the_seat() -> Outcome {
    let od = inch(3.0 / 16.0);
    for designation in ["M10x1", "3/8-24"] {
        assert!(seats_of(&Thread::read(designation)?, od).len() > 1, "{designation}");
    }
    for row in USUAL_THREADS {
        let thread = Thread::read(row.designation)?;
        assert!(seats_of(&thread, mm(row.od_mm)).contains(&row.seat), "{}", row.designation);
    }
    assert!(STANDARDS.iter().all(|standard| !standard.covers.is_empty()));
    Ok(())
}

/// Two tables of different standards agree: the flares of SAE J533 pass the threads of J512 and ISO 13486-1 for their tubes.
#[test]
fn flares_pass_the_usual_threads_of_their_tubes() -> Outcome {
    let mut compared = 0;
    for row in USUAL_THREADS.iter().filter(|row| row.seat == Seat::Inverted45) {
        let Some(size) = flare_size(Flare::Double45, mm(row.od_mm)) else { continue };
        let crests = Thread::read(row.designation)?.limits(ThreadSide::Internal)?.minor.min;
        assert!(Some(size.most) < crests, "{}: {:?} in {crests:?}", row.designation, size.most);
        compared += 1;
    }
    assert_eq!(compared, 6);
    Ok(())
}

#[test]
fn washers_go_where_no_flare_seals() {
    for end in HoseEnd::ALL {
        assert!(end.check(end.washers()).is_none());
        assert!(end.check(end.washers() + 1).is_some());
    }
}
