//! What each flare takes of the tube, and the cut length as a sum.

use crate::bench::Bench;
use crate::code::Code;
use crate::flare;
use crate::line::Line;
use crate::problem::{Ledger, Part, Problem, Side, Value};
use crate::units::{Length, mm, to_mm};

/// One term of the cut length.
#[derive(Debug, Clone, PartialEq)]
pub struct Term {
    /// What it is, in words.
    pub what: String,
    /// How much it adds.
    pub length: Length,
}

/// The cut length and the terms it is the sum of.
#[derive(Debug, Clone, PartialEq)]
pub struct CutLength {
    terms: Vec<Term>,
    spare: Length,
}

/// What one flare takes of the tube.
#[derive(Debug, Clone)]
pub(super) struct FlareUse {
    /// Measured shortening; None where nobody measured it.
    pub(super) net: Option<Length>,
    /// What is added for safety, or, while the shortening is unmeasured, for both together.
    pub(super) spare: Option<Length>,
}

impl FlareUse {
    /// Reads the bench; enters what it has to assume, and what stays unknown.
    pub(super) fn new(
        line: &Line,
        bench: &Bench,
        side: Side,
        problems: &mut Vec<Problem>,
        ledger: &mut Ledger,
    ) -> FlareUse {
        let form = line.end(side).flare;
        let Some(tool) = bench.flare_tool(form) else {
            problems
                .push(Problem::new(Code::FlareToolMissing, Part::End(side)).got(Value::text(form.name())));
            return FlareUse { net: None, spare: None };
        };
        let tube = (line.tube().od(), Some(line.tube().wall()));
        let spare = flare::spare(form, (tool.net_shortening(), tool.cut_spare()), tube, ledger);
        let need = Value::text("the shortening of a test piece");
        match (tool.net_shortening(), spare) {
            (Some(_), _) => {}
            (None, Some(_)) => {
                let used = "no test piece of this flare: 5 mm is used for shortening and spare together";
                let why = if flare::has_double_rule(line.tube().od(), line.tube().wall()) {
                    used.to_owned()
                } else {
                    format!(
                        "{used}, which is known for 3/16 in tube with a wall up to 1.1 mm and can be short on this one"
                    )
                };
                problems.push(Problem::new(Code::FlareNetAssumed, Part::End(side)).need(need).why(&why));
            }
            (None, None) => {
                let problem = Problem::new(Code::FlareNetUnknown, Part::End(side));
                problems.push(problem.got(Value::text(form.name())).need(need));
            }
        }
        FlareUse { net: tool.net_shortening(), spare }
    }
}

impl CutLength {
    /// Every term, or nothing while one of them is not known or bends that overlap leave no length at all.
    pub(super) fn new(line: &Line, uses: &[FlareUse; 2], reserve: Length) -> Option<CutLength> {
        let path = line.path();
        let mut terms = vec![
            Term { what: "straights".to_owned(), length: path.straight_length() },
            Term { what: "arcs".to_owned(), length: path.arc_length() },
        ];
        let mut spare = mm(0.0);
        for (side, flare) in [Side::A, Side::B].into_iter().zip(uses) {
            let name = line.end(side).flare.name();
            let extra = flare.spare?;
            spare += extra;
            let what = match flare.net {
                Some(net) => {
                    terms.push(Term {
                        what: format!("net shortening, {name} at {}", side.name()),
                        length: net,
                    });
                    format!("cut spare, {name} at {}", side.name())
                }
                None => format!("shortening and spare, {name} at {} (assumed)", side.name()),
            };
            terms.push(Term { what, length: extra });
        }
        if to_mm(reserve) > 0.0 {
            terms.push(Term { what: "reserve".to_owned(), length: reserve });
        }
        let cut = CutLength { terms, spare: spare + reserve };
        (to_mm(cut.length()) > 0.0).then_some(cut)
    }

    /// The terms, in the order they are added.
    #[must_use]
    pub fn terms(&self) -> &[Term] {
        &self.terms
    }

    /// Their sum, not rounded.
    #[must_use]
    pub fn length(&self) -> Length {
        mm(self.terms.iter().map(|t| to_mm(t.length)).sum())
    }

    /// All that is on the tube for safety; it waits at the trim end.
    #[must_use]
    pub fn spare(&self) -> Length {
        self.spare
    }
}
