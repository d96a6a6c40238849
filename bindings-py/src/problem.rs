//! Findings and assumptions.

use crate::code;
use crate::error;
use crate::record::{self, Call, Record, Reduced};
use crate::units::{Angle, Length, Pressure};
use linewright::problem::Acceptance;
use linewright::source::{Checked, Source};
use linewright::units::ratio;
use linewright::{Part, Side, Value, problem};
use pyo3::prelude::*;

/// What was found or is needed, as Python has it: a `Length`, an `Angle`, a `Pressure`, an int, a float, a str, or None.
#[derive(FromPyObject, IntoPyObject)]
pub(crate) enum Fact {
    Length(Length),
    Angle(Angle),
    Pressure(Pressure),
    Count(usize),
    Ratio(f64),
    Text(String),
}

impl Fact {
    pub(crate) fn of(value: &Value) -> Option<Fact> {
        Some(match value {
            Value::Nothing => return None,
            Value::Length(length) => Fact::Length(Length(*length)),
            Value::Angle(angle) => Fact::Angle(Angle(*angle)),
            Value::Pressure(pressure) => Fact::Pressure(Pressure(*pressure)),
            Value::Ratio(ratio) => Fact::Ratio(ratio.value),
            Value::Count(count) => Fact::Count(*count),
            Value::Text(text) => Fact::Text(text.clone()),
        })
    }

    fn value(fact: Option<Fact>) -> Value {
        match fact {
            None => Value::Nothing,
            Some(Fact::Length(length)) => Value::Length(length.0),
            Some(Fact::Angle(angle)) => Value::Angle(angle.0),
            Some(Fact::Pressure(pressure)) => Value::Pressure(pressure.0),
            Some(Fact::Count(count)) => Value::Count(count),
            Some(Fact::Ratio(value)) => Value::Ratio(ratio(value)),
            Some(Fact::Text(text)) => Value::Text(text),
        }
    }
}

/// The part of a name such as "bend 4"; what is not a part of a line is the name of a field.
fn part(name: &str) -> Part {
    let numbered = |word: &str| name.strip_prefix(word).and_then(|number| number.parse().ok());
    match name {
        "line" => Part::Line,
        "end A" => Part::End(Side::A),
        "end B" => Part::End(Side::B),
        _ => numbered("straight ")
            .map(Part::Straight)
            .or_else(|| numbered("bend ").map(Part::Bend))
            .unwrap_or_else(|| Part::Field(name.strip_prefix("field ").unwrap_or(name).to_owned())),
    }
}

/// A finding about a line or an input: what, where, how grave, what was found, what is needed, why, and the cure.
///
/// Plans, drafts and exceptions carry them; nobody needs to make one. Without `why` and `fix` the words of its code's
/// row in `CODES` stand there.
///
/// >>> import linewright as lw
/// >>> problem = next(found for found in lw.LineDraft(od="316").check().problems if found.part == "field od")
/// >>> problem.code, problem.level, problem.got
/// ('UNIT_MISSING', 'refuse', '316')
/// >>> problem.fix
/// 'did you mean 3/16 in (4.76 mm)? Write 3/16 in, or 316 mm'
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct Problem(pub(crate) linewright::Problem);

/// All findings of a list.
pub(crate) fn problems(list: &[linewright::Problem]) -> Vec<Problem> {
    list.iter().cloned().map(Problem).collect()
}

impl Record for Problem {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        Call::class::<Self>(py)
            .arg(self.code())?
            .arg(self.part())?
            .given("got", self.got())?
            .given("need", self.need())?
            .named("why", self.why())?
            .named("fix", self.fix())?
            .given("lifted", self.lifted())
    }
}

#[pymethods]
impl Problem {
    #[new]
    #[pyo3(signature = (code, part, *, got=None, need=None, why=None, fix=None, lifted=None))]
    fn new(
        code: &str,
        part: &str,
        got: Option<Fact>,
        need: Option<Fact>,
        why: Option<&str>,
        fix: Option<&str>,
        lifted: Option<(String, String)>,
    ) -> PyResult<Self> {
        let code = error::call(|| code::named(code))?;
        let mut made =
            linewright::Problem::new(code, self::part(part)).got(Fact::value(got)).need(Fact::value(need));
        if let Some(why) = why {
            made = made.why(why);
        }
        if let Some(fix) = fix {
            made = made.fix(fix);
        }
        made.lifted = lifted.map(|(who, why)| Acceptance { id: made.id(), who, why });
        Ok(Problem(made))
    }

    /// Name of the code; `CODES` says what it means.
    #[getter]
    fn code(&self) -> &'static str {
        self.0.code.name()
    }

    /// Number of the code.
    #[getter]
    fn number(&self) -> u16 {
        self.0.code.number()
    }

    /// How grave: "refuse", "stop", "caution" or "note".
    #[getter]
    fn level(&self) -> &'static str {
        self.0.level().name()
    }

    /// Code and part, by which a person lifts it: "BENDS_TOO_CLOSE@straight 2".
    #[getter]
    fn id(&self) -> String {
        self.0.id()
    }

    /// What it is about: "line", "field od", "end A", "straight 2", "bend 4". Numbers count from 1.
    #[getter]
    fn part(&self) -> String {
        self.0.part.to_string()
    }

    /// What was found; None where there is nothing to say.
    #[getter]
    fn got(&self) -> Option<Fact> {
        Fact::of(&self.0.got)
    }

    /// What is needed; None where there is nothing to say.
    #[getter]
    fn need(&self) -> Option<Fact> {
        Fact::of(&self.0.need)
    }

    /// Why it matters.
    #[getter]
    fn why(&self) -> &str {
        &self.0.why
    }

    /// How to mend it.
    #[getter]
    fn fix(&self) -> &str {
        &self.0.fix
    }

    /// Whether it holds a plan back: a refusal, or a stop that nobody has lifted.
    #[getter]
    fn is_open(&self) -> bool {
        self.0.is_open()
    }

    /// Who lifted it and why; None while nobody did.
    #[getter]
    fn lifted(&self) -> Option<(&str, &str)> {
        self.0.lifted.as_ref().map(|lifted| (lifted.who.as_str(), lifted.why.as_str()))
    }

    fn __str__(&self) -> String {
        self.0.to_string()
    }

    fn __repr__(&self, py: Python<'_>) -> PyResult<String> {
        record::repr(self, py)
    }

    fn __hash__(&self, py: Python<'_>) -> PyResult<isize> {
        record::hash(self, py)
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<Reduced<'py>> {
        record::reduce(self, py)
    }
}

/// A default that a plan rests on, with its basis.
///
/// Plans carry them; nobody needs to make one. `checked` is how the source was checked.
///
/// >>> import linewright as lw
/// >>> print(lw.Assumption("back-off of a nut", lw.mm(3), checked="common practice, no source"))
/// back-off of a nut: 3 mm (common practice, no source)
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct Assumption(pub(crate) problem::Assumption);

impl Record for Assumption {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        let call = Call::class::<Self>(py).arg(self.what())?.arg(self.value())?;
        call.named("source", self.source())?.named("place", self.place())?.named("checked", self.checked())
    }
}

#[pymethods]
impl Assumption {
    #[new]
    #[pyo3(signature = (what, value, *, source="", place="", checked))]
    fn new(what: String, value: Option<Fact>, source: &str, place: &str, checked: &str) -> PyResult<Self> {
        let checked = error::call(|| {
            Checked::ALL.into_iter().find(|way| way.name() == checked).ok_or_else(|| {
                linewright::Problem::new(linewright::Code::UnknownName, Part::Field("checked".to_owned()))
                    .got(Value::text(checked))
                    .need(Value::text(format!("one of: {}", Checked::ALL.map(Checked::name).join("; "))))
                    .into()
            })
        })?;
        let basis = Source::new(source, place, checked);
        Ok(Assumption(problem::Assumption { what, value: Fact::value(value), basis }))
    }

    /// What was assumed, in words.
    #[getter]
    fn what(&self) -> &str {
        &self.0.what
    }

    /// The value used.
    #[getter]
    fn value(&self) -> Option<Fact> {
        Fact::of(&self.0.value)
    }

    /// The text it comes from; empty where no text is known.
    #[getter]
    fn source(&self) -> &str {
        &self.0.basis.text
    }

    /// Table, clause or page of that text; empty where not known.
    #[getter]
    fn place(&self) -> &str {
        &self.0.basis.place
    }

    /// How the value was checked against that text.
    #[getter]
    fn checked(&self) -> &'static str {
        self.0.basis.checked.name()
    }

    fn __str__(&self) -> String {
        self.0.to_string()
    }

    fn __repr__(&self, py: Python<'_>) -> PyResult<String> {
        record::repr(self, py)
    }

    fn __hash__(&self, py: Python<'_>) -> PyResult<isize> {
        record::hash(self, py)
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<Reduced<'py>> {
        record::reduce(self, py)
    }
}
