//! A line and what is at its ends.

mod clamp;
mod draft;
mod nut;

pub(crate) use clamp::ClampMargin;
pub(crate) use draft::{Draft, Field, LineDraft, draft_of};
pub(crate) use nut::Nut;

use crate::bench::Bench;
use crate::error;
use crate::path::Path;
use crate::plan::{Options, Plan};
use crate::quantity;
use crate::record::{self, Call, Record, Reduced};
use crate::thread::{self, Thread};
use crate::tube::Tube;
use crate::units::Length;
use linewright::units::Notation;
use linewright::{Code, Error, Flare, LoadedPart, Part, Problem, Seat, Side, Value, bounds};
use pyo3::prelude::*;
use std::sync::Arc;

/// Two lengths that mean nothing alone: both, or none. One without the other is an error of the field that is empty.
fn pair(
    first: (&str, Option<linewright::units::Length>),
    second: (&str, Option<linewright::units::Length>),
) -> Result<Option<(linewright::units::Length, linewright::units::Length)>, Error> {
    let missing = |field: &str, other: &str| {
        let problem = Problem::new(Code::FieldMissing, Part::Field(field.to_owned()));
        Err(problem.need(Value::text(format!("a length, as {other} is given"))).into())
    };
    match (first.1, second.1) {
        (Some(one), Some(other)) => Ok(Some((one, other))),
        (None, None) => Ok(None),
        (None, Some(_)) => missing(first.0, second.0),
        (Some(_), None) => missing(second.0, first.0),
    }
}

/// The port an end is screwed into, by thread, seat ("inverted-45", "bubble", "cone-37") and name. Thread and seat may
/// be None or "unknown": not known. `thread_depth` and `seat_depth` are its depths from the face that the nut's head comes
/// to: to the end of the full thread, and to the middle of the seat, where the flare closes; both, or None for not measured.
///
/// Raises `InputError` (FIELD_MISSING for one depth without the other, OUT_OF_RANGE and the codes of `Thread` and
/// `read_length`), `UnknownNameError` for the seat, `QuantityError` for a bare number.
///
/// >>> import linewright as lw
/// >>> port = lw.Port("M10x1", "inverted-45", name="axle tee", thread_depth="9.5 mm", seat_depth="10 mm")
/// >>> port.seat, port.seat_depth
/// ('inverted-45', mm(10.0))
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct Port(linewright::Port);

impl Record for Port {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        let thread = self.thread().map(|thread| thread.0.to_string());
        Call::class::<Self>(py)
            .arg(thread)?
            .arg(self.seat())?
            .named("name", self.name())?
            .given("thread_depth", self.thread_depth())?
            .given("seat_depth", self.seat_depth())
    }
}

#[pymethods]
impl Port {
    #[new]
    #[pyo3(signature = (thread=None, seat=None, *, name="", thread_depth=None, seat_depth=None))]
    fn new(
        thread: Option<&Bound<'_, PyAny>>,
        seat: Option<&str>,
        name: &str,
        thread_depth: Option<&Bound<'_, PyAny>>,
        seat_depth: Option<&Bound<'_, PyAny>>,
    ) -> PyResult<Self> {
        let thread = thread::known(thread)?;
        let thread_depth = quantity::length_if(thread_depth, "thread_depth")?;
        let seat_depth = quantity::length_if(seat_depth, "seat_depth")?;
        error::call(|| {
            let port = linewright::Port::new(name, thread, seat.map_or(Ok(None), Seat::from_name)?);
            match pair(("thread_depth", thread_depth), ("seat_depth", seat_depth))? {
                Some((thread, seat)) => port.with_depths(thread, seat),
                None => Ok(port),
            }
        })
        .map(Port)
    }

    /// Thread; None where not known.
    #[getter]
    fn thread(&self) -> Option<Thread> {
        self.0.thread.map(Thread)
    }

    /// Form of the seat; None where not known.
    #[getter]
    fn seat(&self) -> Option<&'static str> {
        self.0.seat.map(Seat::name)
    }

    /// What it is on.
    #[getter]
    fn name(&self) -> &str {
        &self.0.name
    }

    /// Depth to the end of its full thread, from the face that the nut's head comes to; None where not measured.
    #[getter]
    fn thread_depth(&self) -> Option<Length> {
        self.0.thread_depth.map(Length)
    }

    /// Depth to the middle of its seat, where the flare closes, from the same face; None where not measured.
    #[getter]
    fn seat_depth(&self) -> Option<Length> {
        self.0.seat_depth.map(Length)
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

/// A loaded part as it is given: its name, or its name and which way round it goes.
#[derive(FromPyObject)]
enum Loaded {
    Name(String),
    Facing(String, String),
}

impl Loaded {
    fn part(self) -> LoadedPart {
        match self {
            Loaded::Name(name) => LoadedPart::new(&name, ""),
            Loaded::Facing(name, facing) => LoadedPart::new(&name, &facing),
        }
    }
}

/// What is at one end of a line: the nut, the flare to be made ("double-45", "bubble", "single-37"), and the port it
/// belongs to (None: not recorded). `flare_diameter` is that of a finished flare like it, measured on a test piece of its tube:
/// with it the nut's bore is compared where no public figure is known.
///
/// Raises `UnknownNameError` for the flare, `InputError` (SINGLE_45_REFUSED, OUT_OF_RANGE), `QuantityError` for a bare number.
///
/// >>> import linewright as lw
/// >>> nut = lw.Nut("M10x1", length="17 mm", bore="5.0 mm", nose="coned")
/// >>> lw.End(nut, "double-45", port=lw.Port("M10x1", "inverted-45")).flare
/// 'double-45'
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone, PartialEq)]
pub(crate) struct End(linewright::End);

impl Record for End {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        let some = |list: Vec<(String, String)>| Some(list).filter(|list| !list.is_empty());
        Call::class::<Self>(py)
            .arg(self.nut())?
            .arg(self.flare())?
            .given("port", self.port())?
            .given("flare_diameter", self.flare_diameter())?
            .given("loaded", some(self.loaded()))?
            .given("holes", Some(self.holes()).filter(|holes| !holes.is_empty()))?
            .given("flared_in_place", self.flared_in_place().then_some(true))
    }
}

#[pymethods]
impl End {
    #[new]
    #[pyo3(signature = (nut, flare, *, port=None, flare_diameter=None, loaded=None, holes=None, flared_in_place=false))]
    fn new(
        nut: &Bound<'_, Nut>,
        flare: &str,
        port: Option<&Bound<'_, Port>>,
        flare_diameter: Option<&Bound<'_, PyAny>>,
        loaded: Option<Vec<Loaded>>,
        holes: Option<&Bound<'_, PyAny>>,
        flared_in_place: bool,
    ) -> PyResult<Self> {
        let port = port.map(|port| port.get().0.clone());
        let flare_diameter = quantity::length_if(flare_diameter, "flare_diameter")?;
        let holes = quantity::lengths(holes, "holes")?;
        let loaded = loaded.unwrap_or_default().into_iter().map(Loaded::part).collect();
        error::call(|| {
            let holes = holes.into_iter().map(|hole| bounds::HOLE.length(hole)).collect::<Result<_, _>>()?;
            let flare_diameter =
                flare_diameter.map(|size| bounds::MEASURED_FLARE.length(size)).transpose()?;
            let end = linewright::End::new(nut.get().core(), Flare::from_name(flare)?);
            Ok(End(linewright::End { flare_diameter, port, loaded, holes, flared_in_place, ..end }))
        })
    }

    /// What goes onto the tube from this end before the nut, in that order: name, and which way round.
    #[getter]
    fn loaded(&self) -> Vec<(String, String)> {
        self.0.loaded.iter().map(|part| (part.name.clone(), part.facing.clone())).collect()
    }

    /// Diameters of the holes that this end goes through when the line is fitted.
    #[getter]
    fn holes(&self) -> Vec<Length> {
        self.0.holes.iter().copied().map(Length).collect()
    }

    /// Whether this end is flared on the vehicle, after it went through its holes.
    #[getter]
    fn flared_in_place(&self) -> bool {
        self.0.flared_in_place
    }

    /// The nut.
    #[getter]
    fn nut(&self) -> Nut {
        Nut::of(self.0.nut)
    }

    /// Form of the flare.
    #[getter]
    fn flare(&self) -> &'static str {
        self.0.flare.name()
    }

    /// Diameter of a finished flare like it, as measured on a test piece of this tube; None where none was.
    #[getter]
    fn flare_diameter(&self) -> Option<Length> {
        self.0.flare_diameter.map(Length)
    }

    /// The port; None where none was recorded.
    #[getter]
    fn port(&self) -> Option<Port> {
        self.0.port.clone().map(Port)
    }

    /// What is left of the nut's way when the flare is clamped, on a tube with this wall; None where the port is not
    /// recorded or one of the lengths is not known. All three are the least, for the thinnest and the thickest flare of this wall; of bubbles up to 1.6
    /// tubes wide, on tube up to ten walls wide. What is not
    /// above zero clamps nothing, however tight it feels.
    ///
    /// Raises `InputError` (OUT_OF_RANGE and the codes of `read_length`), `QuantityError` for a bare number.
    ///
    /// >>> import linewright as lw
    /// >>> nut = lw.Nut("M10x1", length="17 mm", bore="5.0 mm", nose="coned", thread_length="11 mm", lead="0 mm")
    /// >>> port = lw.Port("M10x1", "inverted-45", thread_depth="9.5 mm", seat_depth="10 mm")
    /// >>> margin = lw.End(nut, "double-45", port=port).clamp_margin("0.7 mm")
    /// >>> print(margin.under_head, margin.beyond_thread)
    /// 2.4 mm 0.9 mm
    #[pyo3(signature = (wall, /))]
    fn clamp_margin(&self, wall: &Bound<'_, PyAny>) -> PyResult<Option<ClampMargin>> {
        let wall = quantity::length(wall, "wall")?;
        error::call(|| Ok(self.0.clamp_margin(bounds::WALL.length(wall)?).map(ClampMargin::of)))
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

/// A line to be made: name, tube, path, and its two ends. A is the end nearer the pressure source.
///
/// >>> import linewright as lw
/// >>> end = lw.End(lw.Nut("M10x1", length="17 mm", bore="5.0 mm", nose="coned"), "double-45")
/// >>> line = lw.Line("T1", tube=lw.Tube("3/16 in", wall="0.028 in", material="copper-nickel"),
/// ...                path=lw.Path.from_straights(["400 mm"]), a=end, b=end)
/// >>> line.name, line.a == line.b
/// ('T1', True)
#[pyclass(frozen, eq, module = "linewright")]
#[derive(Clone)]
pub(crate) struct Line {
    pub(crate) line: linewright::Line,
    /// The draft it was read from, which made the findings that the line carries.
    draft: Option<(LineDraft, Notation)>,
}

impl PartialEq for Line {
    fn eq(&self, other: &Self) -> bool {
        self.line == other.line
    }
}

impl Line {
    /// A line that was read from a draft.
    pub(crate) fn of_draft(line: linewright::Line, draft: &LineDraft, notation: Notation) -> Self {
        let draft = (!line.found().is_empty()).then(|| (draft.clone(), notation));
        Line { line, draft }
    }
}

impl Record for Line {
    fn call<'py>(&self, py: Python<'py>) -> PyResult<Call<'py>> {
        match &self.draft {
            Some((draft, notation)) => {
                let getattr = py.import("builtins")?.getattr("getattr")?;
                let checked = draft.check(notation.decimal_comma, notation.bare_fraction_is_inch)?;
                Call::of(getattr, "getattr").arg(checked)?.arg("line")
            }
            None => Call::class::<Self>(py)
                .arg(self.name())?
                .named("tube", self.tube())?
                .named("path", self.path())?
                .named("a", self.a())?
                .named("b", self.b())?
                .given("deferred", self.waits_for()),
        }
    }
}

#[pymethods]
impl Line {
    #[new]
    #[pyo3(signature = (name, *, tube, path, a, b, deferred=None))]
    fn new(
        name: &str,
        tube: &Bound<'_, Tube>,
        path: &Bound<'_, Path>,
        a: &Bound<'_, End>,
        b: &Bound<'_, End>,
        deferred: Option<&str>,
    ) -> PyResult<Self> {
        let (tube, path) = (tube.get().0.clone(), path.get().0.clone());
        let (a, b) = (a.get().0.clone(), b.get().0.clone());
        let line = error::compute(|| {
            linewright::Line::new(name, tube, path, a, b).deferred(deferred.unwrap_or_default())
        })?;
        Ok(Line { line, draft: None })
    }

    /// Name.
    #[getter]
    fn name(&self) -> &str {
        self.line.name()
    }

    /// Tube.
    #[getter]
    fn tube(&self) -> Tube {
        Tube(self.line.tube().clone())
    }

    /// Path.
    #[getter]
    fn path(&self) -> Path {
        Path(self.line.path().clone())
    }

    /// The end nearer the pressure source.
    #[getter]
    fn a(&self) -> End {
        End(self.line.end(Side::A).clone())
    }

    /// The other end.
    #[getter]
    fn b(&self) -> End {
        End(self.line.end(Side::B).clone())
    }

    /// What the line waits for, if it is deferred: its figures are computed, its cut is locked.
    #[getter]
    fn waits_for(&self) -> Option<&str> {
        self.line.waits_for()
    }

    /// Plans the line on a bench.
    ///
    /// `trim_end` is the end left long and finished last, "A" or "B"; without it the longer one that can be flared
    /// after bending is taken. `reserve` is tube added there, for instance for a second try at its flare. `accept`
    /// lifts stops that a person may lift: a list of (id of the finding, who, why).
    ///
    /// A plan always comes back; what is wrong with it stands in its problems. Raises `InputError` (OUT_OF_RANGE and
    /// the codes of `read_length`), `UnknownNameError` for the end, `QuantityError` for a bare reserve.
    ///
    /// >>> import linewright as lw
    /// >>> end = lw.End(lw.Nut("M10x1", length="17 mm", bore="5.0 mm", nose="coned"), "double-45")
    /// >>> line = lw.Line("T1", tube=lw.Tube("3/16 in", wall="0.028 in", material="copper-nickel"),
    /// ...                path=lw.Path.from_straights(["400 mm"]), a=end, b=end)
    /// >>> bench = lw.Bench(former=lw.Former(as_formed="14.3 mm", grip="20 mm"),
    /// ...                  flare_tool=lw.FlareTool("double-45", clamp="13 mm", projection="4 mm"))
    /// >>> plan = line.plan(bench, reserve="20 mm")
    /// >>> print(plan.cut_length, plan.is_draft)
    /// 430 mm True
    /// >>> [problem.id for problem in plan.problems if problem.is_open]
    /// ['PORT_UNKNOWN@end A', 'PORT_UNKNOWN@end B']
    #[pyo3(signature = (bench, *, trim_end=None, reserve=None, accept=None))]
    fn plan(
        &self,
        bench: &Bound<'_, Bench>,
        trim_end: Option<&str>,
        reserve: Option<&Bound<'_, PyAny>>,
        accept: Option<Vec<(String, String, String)>>,
    ) -> PyResult<Plan> {
        let options = Arc::new(Options::read(trim_end, reserve, accept)?);
        Plan::new(self, Arc::new(bench.get().0.clone()), options)
    }

    fn __repr__(&self, py: Python<'_>) -> PyResult<String> {
        match &self.draft {
            Some((draft, notation)) => {
                let checked = draft.check(notation.decimal_comma, notation.bare_fraction_is_inch)?;
                Ok(format!("{}.line", record::repr(&checked, py)?))
            }
            None => record::repr(self, py),
        }
    }

    pub(crate) fn __hash__(&self, py: Python<'_>) -> PyResult<isize> {
        // Two drafts can spell one line differently.
        record::hash(&Line { line: self.line.clone(), draft: None }, py)
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<Reduced<'py>> {
        record::reduce(self, py)
    }
}
