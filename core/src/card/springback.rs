//! A page of springback: the trial bends, the line through them, and how far the next bend may fall off it.

use super::svg::Svg;
use crate::bounds;
use crate::code::Code;
use crate::error::Error;
use crate::problem::Value;
use crate::springback::{Calibration, TrialFit, tube_text};
use crate::units::{Angle, Rounding, deg, ratio, round_angle, to_deg};

/// The sheet, and the frame of the picture on it: left, top, right, bottom, in mm.
const SHEET: [f64; 2] = [210.0, 148.0];
const FRAME: [f64; 4] = [20.0, 28.0, 130.0, 116.0];
/// Right edges of the columns of the list.
const LIST: [f64; 4] = [149.0, 164.0, 189.0, 203.0];
/// Rows of the list that there is room for.
const MOST_WANTED: usize = 14;
/// Longest second line, in characters.
const LONGEST: usize = 100;
/// Points of the band's edges.
const STEPS: u32 = 60;
/// Marks of trials closer than this, in mm on the sheet both ways, have one label.
const APART: f64 = 3.0;
/// Settings are listed to this, in degrees: finer than a hand can set, so that intervals can be compared.
const LISTED_DEG: f64 = 0.1;
const THIN: &str = "stroke=\"#bbbbbb\" stroke-width=\"0.15\"";
const AXIS: &str = "stroke=\"black\" stroke-width=\"0.3\"";
const FITTED: &str = "stroke=\"#1f4e8c\" stroke-width=\"0.6\"";
const EXTENDED: &str = "stroke=\"#1f4e8c\" stroke-width=\"0.6\" stroke-dasharray=\"2 1.2\"";
const BAND: &str = "#c9d8ec";
const TRIAL: &str = "fill=\"white\" stroke=\"black\" stroke-width=\"0.4\"";

/// The page of a fit as SVG, for print or a screen: springback over the angle bent to, with every trial, the line, the
/// band in which the next bend lies at a chance, and what to bend to for each wanted angle. `record` names the tube, the
/// former and the day.
///
/// What the trials cannot say is written on the page: no band for two trials, a line that goes beyond the trials dashed,
/// a trial that does not belong to the others.
///
/// # Errors
/// `NOT_A_NUMBER` or `OUT_OF_RANGE` for a wanted angle or the chance, for more than 14 wanted angles, and where the line is
/// no springback.
///
/// ```
/// use linewright::card;
/// use linewright::springback::{TrialFit, Trial};
/// use linewright::units::deg;
/// let pairs = [(30.0, 28.6), (60.0, 58.2), (90.0, 87.5), (120.0, 117.3)];
/// let trials = pairs.map(|(set, got)| Trial { set: deg(set), got: deg(got) });
/// let page = card::springback_page(&TrialFit::new(&trials)?, None, &[deg(45.0), deg(90.0)], 0.95)?;
/// assert!(page.starts_with("<svg") && page.matches("<circle").count() == 5); // Four trials and one in the key.
/// # Ok::<(), linewright::Error>(())
/// ```
pub fn springback_page(
    fit: &TrialFit,
    record: Option<&Calibration>,
    wanted: &[Angle],
    chance: f64,
) -> Result<String, Error> {
    let chance = bounds::CHANCE.ratio(ratio(chance))?.value;
    if wanted.len() > MOST_WANTED {
        let need = Value::text(format!("at most {MOST_WANTED} angles on one page"));
        return Err(Error::field(Code::OutOfRange, "wanted", Value::Count(wanted.len()), need));
    }
    let picture = Picture::new(fit, wanted, chance)?;
    let (title, made) = match record {
        Some(record) => (
            format!("Springback of {}", tube_text(record.tube())),
            format!("on {}; record of {}, revision {}", record.former(), record.date(), record.revision()),
        ),
        None => (
            "Springback; tube NOT RECORDED".to_owned(),
            "former and date of the trials NOT RECORDED".to_owned(),
        ),
    };
    let mut svg = Svg::new(&format!("{title} {made}"), SHEET[0], SHEET[1]);
    svg.text([FRAME[0], 10.0], 5.0, "start", &title);
    svg.text([FRAME[0], 16.5], 3.4, "start", &shortened(&made));
    svg.text([FRAME[0], 22.0], 3.4, "start", &picture.says());
    picture.band(&mut svg);
    picture.axes(&mut svg);
    picture.line(&mut svg);
    picture.trials(&mut svg);
    picture.key(&mut svg);
    picture.list(&mut svg, wanted)?;
    for (line, note) in (0_u32..).zip(picture.notes()) {
        svg.text([FRAME[0], 134.0 + 4.6 * f64::from(line)], 3.2, "start", &note);
    }
    Ok(svg.finish())
}

struct Picture<'a> {
    fit: &'a TrialFit,
    chance: f64,
    /// Ends of the two axes in degrees, and the steps of their numbers.
    ends: [f64; 2],
    steps: [f64; 2],
    /// Where the upward axis starts: at 0, or below it where a bend was read as springing forward.
    floor: f64,
    constant: f64,
    slope: f64,
    /// Where the trials lie, if there are any.
    span: Option<[f64; 2]>,
}

/// A round step that divides a length into at most eight.
fn step(length: f64) -> f64 {
    let mut step = 0.01;
    loop {
        for factor in [1.0, 2.0, 5.0] {
            if length <= 8.0 * step * factor {
                return step * factor;
            }
        }
        step *= 10.0;
    }
}

/// An axis from 0 that holds a value: its end and its step.
fn axis(most: f64) -> (f64, f64) {
    let step = step(most);
    (step * (most / step - 1e-9).ceil().max(1.0), step)
}

impl Picture<'_> {
    fn new<'a>(fit: &'a TrialFit, wanted: &[Angle], chance: f64) -> Result<Picture<'a>, Error> {
        let springback = fit.springback()?;
        let sets: Vec<f64> = fit.trials().iter().map(|trial| to_deg(trial.set)).collect();
        let span = sets.iter().copied().reduce(f64::min).zip(sets.iter().copied().reduce(f64::max));
        let mut farthest = span.map_or(0.0, |(_, high)| high);
        for angle in wanted {
            farthest = farthest.max(to_deg(springback.setting(*angle)?));
        }
        let (across, across_step) = axis(if farthest > 0.0 { farthest } else { 90.0 });
        // What a line can be asked for.
        let across = across.min(bounds::ANGLE.max);
        let (constant, slope) = (to_deg(springback.constant()), springback.proportional().value);
        // The band may be wide where trials are few: it is drawn as far as four times the line.
        let mut highest = fit.trials().iter().map(|t| to_deg(t.set) - to_deg(t.got)).fold(0.1, f64::max);
        let (low, high) = span.unwrap_or((0.0, across));
        for x in [low, high, across] {
            let line = constant + slope * x;
            let half = fit.next_bend(deg(x), chance)?.map_or(0.0, to_deg);
            highest = highest.max(line + half.min(3.0 * line));
        }
        let (up, up_step) = axis(1.05 * highest);
        // A bend can be read as springing forward.
        let lowest = fit.trials().iter().map(|t| to_deg(t.set) - to_deg(t.got)).fold(0.0, f64::min);
        Ok(Picture {
            fit,
            chance,
            ends: [across, up],
            floor: up_step * (lowest / up_step).floor(),
            steps: [across_step, up_step],
            constant,
            slope,
            span: span.map(|(low, high)| [low, high]),
        })
    }

    /// Where a point lies on the sheet.
    fn at(&self, set: f64, springback: f64) -> [f64; 2] {
        let [left, top, right, bottom] = FRAME;
        let up = (springback - self.floor) / (self.ends[1] - self.floor);
        [left + set / self.ends[0] * (right - left), bottom - up * (bottom - top)]
    }

    fn on_line(&self, set: f64) -> [f64; 2] {
        self.at(set, self.constant + self.slope * set)
    }

    /// The line in words.
    fn says(&self) -> String {
        format!("springback = {:.2} deg + {:.4} x the angle bent to", self.constant, self.slope)
    }

    fn axes(&self, svg: &mut Svg) {
        let [left, top, right, bottom] = FRAME;
        let ticks = |axis: usize| {
            let (start, end, step) = ([0.0, self.floor][axis], self.ends[axis], self.steps[axis]);
            let steps = (0..).map(move |i: u32| start + f64::from(i) * step);
            steps.take_while(move |value| *value < end + 0.5 * step)
        };
        svg.begin("across");
        for value in ticks(0) {
            let [x, _] = self.at(value, self.floor);
            svg.line(&[[x, top], [x, bottom]], THIN);
            svg.text([x, bottom + 5.0], 3.2, "middle", &number(value));
        }
        svg.end();
        svg.begin("up");
        for value in ticks(1) {
            let [_, y] = self.at(0.0, value);
            svg.line(&[[left, y], [right, y]], THIN);
            svg.text([left - 1.5, y + 1.1], 3.2, "end", &number(value));
        }
        svg.end();
        svg.line(&[[left, top], [left, bottom], [right, bottom]], AXIS);
        svg.text([f64::midpoint(left, right), bottom + 11.0], 3.4, "middle", "bent to, degrees");
        svg.upright([left - 11.0, f64::midpoint(top, bottom)], 3.4, "springback, degrees");
    }

    /// The edges of the band at a setting, None without a scatter.
    fn edges(&self, set: f64) -> Option<[[f64; 2]; 2]> {
        let half = to_deg(self.fit.next_bend(deg(set), self.chance).ok()??);
        let line = self.constant + self.slope * set;
        Some([self.at(set, line - half), self.at(set, line + half)])
    }

    fn band(&self, svg: &mut Svg) {
        let across = |i: u32| self.ends[0] * f64::from(i) / f64::from(STEPS);
        let edges: Option<Vec<_>> = (0..=STEPS).map(|i| self.edges(across(i))).collect();
        let Some(edges) = edges else { return };
        let lower = edges.iter().map(|[low, _]| *low);
        let band: Vec<_> = lower.chain(edges.iter().rev().map(|[_, high]| *high)).collect();
        svg.begin_inside("band", FRAME);
        svg.area(&band, BAND);
        svg.end();
    }

    fn line(&self, svg: &mut Svg) {
        svg.begin_inside("line", FRAME);
        let [low, high] = self.span.unwrap_or([0.0, 0.0]);
        for (from, to, style) in [(0.0, low, EXTENDED), (low, high, FITTED), (high, self.ends[0], EXTENDED)] {
            if to > from {
                svg.line(&[self.on_line(from), self.on_line(to)], style);
            }
        }
        svg.end();
    }

    fn trials(&self, svg: &mut Svg) {
        let odd = self.fit.outlier();
        svg.begin("trials");
        // Repeated bends lie on top of each other: such have one label.
        let mut labels: Vec<([f64; 2], Vec<usize>)> = Vec::new();
        for (i, trial) in self.fit.trials().iter().enumerate() {
            let (set, got) = (to_deg(trial.set), to_deg(trial.got));
            let [x, y] = self.at(set, set - got);
            svg.circle([x, y], 1.1, TRIAL);
            match labels.iter_mut().find(|([a, b], _)| (x - a).abs() < APART && (y - b).abs() < APART) {
                Some((_, numbers)) => numbers.push(i + 1),
                None => labels.push(([x, y], vec![i + 1])),
            }
            if odd == Some(i) {
                svg.line(&[[x - 2.2, y - 2.2], [x + 2.2, y + 2.2]], AXIS);
                svg.line(&[[x - 2.2, y + 2.2], [x + 2.2, y - 2.2]], AXIS);
            }
        }
        for ([x, y], numbers) in labels {
            svg.text([x - 1.6, y - 1.4], 2.6, "end", &runs(&numbers));
        }
        svg.end();
    }

    fn key(&self, svg: &mut Svg) {
        let (left, mut y) = (FRAME[2] + 8.0, FRAME[1] + 2.0);
        svg.begin("key");
        let mut row = |svg: &mut Svg, text: &str, mark: &dyn Fn(&mut Svg, f64)| {
            mark(svg, y);
            svg.text([left + 10.0, y + 1.1], 3.2, "start", text);
            y += 6.0;
        };
        if self.span.is_some() {
            row(svg, "trial bend, by number", &|svg, y| svg.circle([left + 4.0, y], 1.1, TRIAL));
        }
        if self.span.is_some_and(|[low, high]| high > low) {
            row(svg, "line, within the trials", &|svg, y| svg.line(&[[left, y], [left + 8.0, y]], FITTED));
        }
        let beyond = if self.span.is_some() { "line, beyond the trials" } else { "line, without a trial" };
        row(svg, beyond, &|svg, y| svg.line(&[[left, y], [left + 8.0, y]], EXTENDED));
        if self.fit.scatter().is_some() {
            let text = format!("next bend, {} times of 100", number(100.0 * self.chance));
            row(svg, &text, &|svg, y| {
                svg.area(
                    &[[left, y - 1.8], [left + 8.0, y - 1.8], [left + 8.0, y + 1.8], [left, y + 1.8]],
                    BAND,
                );
            });
        }
        svg.end();
    }

    /// What to bend to for each wanted angle, how sure that is, and how much of it is from the trials.
    fn list(&self, svg: &mut Svg, wanted: &[Angle]) -> Result<(), Error> {
        if wanted.is_empty() {
            return Ok(());
        }
        let mut y = FRAME[1] + 36.0;
        let mut row = |svg: &mut Svg, cells: [&str; 4]| {
            for (x, text) in LIST.iter().zip(cells).filter(|(_, text)| !text.is_empty()) {
                svg.text([*x, y], 3.2, "end", text);
            }
            y += 5.0;
        };
        let blended = |text: &str| if self.fit.prior().is_some() { text.to_owned() } else { String::new() };
        svg.begin("settings");
        svg.text([LIST[3], FRAME[1] + 31.0], 2.8, "end", "settings rounded down, intervals outward");
        row(svg, ["to get", "bend to", &format!("{} %", number(100.0 * self.chance)), &blended("from")]);
        row(svg, ["degrees", "degrees", "interval", &blended("trials")]);
        let springback = self.fit.springback()?;
        for angle in wanted {
            // No bend springs forward: nothing is listed below the angle wanted, which can have more digits.
            let listed = |listed: Angle, rounding| {
                let rounded = to_deg(round_angle(listed, deg(LISTED_DEG), rounding));
                if rounded < to_deg(*angle) { number(to_deg(*angle)) } else { format!("{rounded:.1}") }
            };
            let setting = listed(springback.setting(*angle)?, Rounding::Down);
            let range = match self.fit.setting_interval(*angle, self.chance)? {
                Some([low, high]) => {
                    format!("{} to {}", listed(low, Rounding::Down), listed(high, Rounding::Up))
                }
                None => "NOT KNOWN".to_owned(),
            };
            let share = 100.0 * self.fit.weight_of_trials(springback.setting(*angle)?)?.value;
            row(svg, [&number(to_deg(*angle)), &setting, &range, &blended(&format!("{share:.0} %"))]);
        }
        svg.end();
        Ok(())
    }

    /// What a reader must know, most important first.
    fn notes(&self) -> Vec<String> {
        let mut notes = Vec::new();
        if let Some(odd) = self.fit.outlier() {
            let which = odd + 1;
            notes.push(format!(
                "Trial {which} does not belong to the others (crossed, but in the line and its band): make it again."
            ));
        }
        if self.fit.is_contradicted() == Some(true) {
            notes.push(
                "The trials contradict what was believed before them, and are weighed against it: trust neither, make more.".to_owned(),
            );
        }
        if self.fit.is_bent() == Some(true) {
            notes.push(
                "The trials bend away from a straight line: trust settings only near a trial.".to_owned(),
            );
        }
        if self.fit.scatter().is_none() {
            notes.push(
                "Two trials lie on any line: how far the next bend may be off is NOT KNOWN.".to_owned(),
            );
        }
        if let Some(read) = self.fit.scatter_of_reading() {
            let step = number(to_deg(read));
            let unit = if step == "1" { "degree" } else { "degrees" };
            notes
                .push(format!("Angles were read to {step} {unit}: the band is what that alone leaves open."));
        }
        if self.fit.prior().is_some() && self.fit.is_contradicted() != Some(true) {
            notes.push(match self.span {
                Some(_) => "Trials weighed against what was believed before them.".to_owned(),
                None => "No trial bend yet: what was believed before any.".to_owned(),
            });
        }
        notes.push(
            "An estimate for this tube on this former, near the angles of its trials; another coil may differ."
                .to_owned(),
        );
        notes
    }
}

/// A text that fits its line; the title of the page has the whole of it.
fn shortened(text: &str) -> String {
    if text.chars().count() <= LONGEST {
        return text.to_owned();
    }
    text.chars().take(LONGEST - 3).chain("...".chars()).collect()
}

/// Numbers in rising order as text, runs of three and more by their ends: `"1-4, 7"`.
fn runs(numbers: &[usize]) -> String {
    let runs = numbers.chunk_by(|a, b| a + 1 == *b).map(|run| match run {
        [first, .., last] if run.len() > 2 => format!("{first}-{last}"),
        _ => run.iter().map(usize::to_string).collect::<Vec<_>>().join(", "),
    });
    runs.collect::<Vec<_>>().join(", ")
}

/// A number without trailing zeros.
fn number(value: f64) -> String {
    let text = format!("{value:.2}");
    text.trim_end_matches('0').trim_end_matches('.').to_owned()
}
