//! What a belief and trial bends leave of a line. Spreads of the belief are degrees, whatever the trials scatter: given the
//! scatter, both parts of the line are normal and precisions add up; the scatter is known from the belief's worth and from
//! the trials, and is integrated over. What is left is a mixture of normal lines, one for each scatter there may be.

use super::prior::Prior;
use super::reading;
use super::scatter::{believed, scatters, shares};
use crate::math::{exp, ln, sqrt};
use crate::statistics::{Line, normal_below, one_sided};

/// Rounds after which an end of an interval is taken as it is (a dozen settle it), and the change that is rounding.
const MOST_ROUNDS: u32 = 100;
const SETTLED: f64 = 1e-13;
/// Beyond so many degrees an interval has no end.
const NOWHERE_DEG: f64 = 1e6;

/// One scatter that there may be, and the line that it leaves.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Node {
    weight: f64,
    /// Scatter of one bend as read, and matrix in units of it.
    line: Line,
    /// Scatter of one bend.
    scatter: f64,
    /// How far every reading may be off to one side.
    half: f64,
}

/// A belief and trials, as a mixture of lines.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Blend {
    nodes: Vec<Node>,
    /// Settings of the trials in degrees.
    settings: Vec<f64>,
}

/// A belief and trials before a scatter is assumed. Both parts of the line are counted from what is believed of them, in
/// spreads of the belief, so that nothing is lost where one of the two is far surer than the other.
struct Evidence {
    center: [f64; 2],
    /// The believed parts move by `root` times two independent standard numbers: first row [r0, 0], second [r1, r2].
    root: [f64; 3],
    believed_scatter: f64,
    worth: f64,
    /// For each trial: by how much it moves with the two numbers, and how far it lies off the belief.
    rows: Vec<([f64; 2], f64)>,
    /// Sums over the trials: squares and product of the two, products with the distance, and the determinant of the first.
    squares: [f64; 3],
    products: [f64; 2],
    determinant: f64,
    /// Variance that rounding adds to a reading.
    rounding: f64,
}

impl Evidence {
    fn new(prior: &Prior, points: &[(f64, f64)], rounding: f64) -> Evidence {
        let (center, root) = (prior.center(), prior.root());
        let row = |(x, y): &(f64, f64)| ([root[0] + x * root[1], x * root[2]], y - center[0] - center[1] * x);
        let rows: Vec<([f64; 2], f64)> = points.iter().map(row).collect();
        let (mut squares, mut products, mut sums) = ([0.0; 3], [0.0; 2], [0.0; 2]);
        for ([g, h], off) in &rows {
            squares = [squares[0] + g * g, squares[1] + h * h, squares[2] + g * h];
            products = [products[0] + g * off, products[1] + h * off];
        }
        for (x, _) in points {
            sums = [sums[0] + 1.0, sums[1] + x];
        }
        // Of the squares themselves the determinant would lose all digits for trials at one angle.
        let middle = sums[1] / f64::max(sums[0], 1.0);
        let across: f64 = points.iter().map(|(x, _)| (x - middle) * (x - middle)).sum();
        let area = root[0] * root[2];
        Evidence {
            center,
            root,
            believed_scatter: prior.scatter_deg(),
            worth: f64::from(prior.worth()),
            rows,
            squares,
            products,
            determinant: area * area * sums[0] * across,
            rounding: rounding * rounding,
        }
    }

    /// For a logarithm of the scatter over the believed one: how likely it is, as a logarithm, and what it leaves of the line.
    fn at(&self, u: f64) -> (f64, Node) {
        let scatter = self.believed_scatter * exp(u);
        let variance = scatter * scatter + self.rounding;
        let [g, h, gh] = self.squares.map(|sum| sum / variance);
        // Covariance of the two numbers: the inverse of one plus these.
        let determinant = 1.0 + g + h + self.determinant / variance / variance;
        let [c0, c1, c01] = [(1.0 + h) / determinant, (1.0 + g) / determinant, -gh / determinant];
        let [p, q] = self.products.map(|sum| sum / variance);
        let moved = [c0 * p + c01 * q, c01 * p + c1 * q];
        let off = |(row, off): &([f64; 2], f64)| off - row[0] * moved[0] - row[1] * moved[1];
        let residual: f64 = self.rows.iter().map(off).map(|r| r * r).sum();
        let gave = moved[0] * moved[0] + moved[1] * moved[1];
        #[expect(clippy::cast_precision_loss, reason = "a count of trials")]
        let count = self.rows.len() as f64;
        let likely = believed(self.worth, u)
            - (count * ln(variance) + ln(determinant) + residual / variance + gave) / 2.0;
        let [r0, r1, r2] = self.root;
        let matrix =
            [r0 * r0 * c0, r1 * r1 * c0 + 2.0 * r1 * r2 * c01 + r2 * r2 * c1, r0 * (r1 * c0 + r2 * c01)];
        let line = Line {
            constant: self.center[0] + r0 * moved[0],
            slope: self.center[1] + r1 * moved[0] + r2 * moved[1],
            matrix: matrix.map(|v| v / variance),
            scatter: sqrt(variance),
        };
        (likely, Node { weight: 0.0, line, scatter, half: 0.0 })
    }
}

impl Blend {
    /// A belief and trials (set angle and springback in degrees) read to a step.
    pub(super) fn new(prior: &Prior, points: &[(f64, f64)], step: Option<f64>) -> Blend {
        let evidence = Evidence::new(prior, points, crate::statistics::rounding(step));
        let nodes = scatters(|u| evidence.at(u).0).into_iter().map(|u| {
            let (likely, node) = evidence.at(u);
            (likely, Node { half: one_sided(step, node.line.scatter), ..node })
        });
        Blend { nodes: weighted(nodes.collect()), settings: points.iter().map(|(x, _)| *x).collect() }
    }

    /// What it would be after more bends at some settings, if line and scatter of a reading stay as they are.
    pub(super) fn with_more(&self, settings: &[f64]) -> Blend {
        let square = 1.0 / self.mean(|node| 1.0 / (node.line.scatter * node.line.scatter));
        #[expect(clippy::cast_precision_loss, reason = "a count of bends")]
        let count = settings.len() as f64;
        let more = |node: &Node| {
            let line = node.line.with_more(settings, 1.0);
            let [before, after] = [node.line.matrix, line.matrix].map(|[a, b, ab]| a * b - ab * ab);
            let variance = node.line.scatter * node.line.scatter;
            let likely =
                ln(node.weight) - (count * (ln(variance) + square / variance) - ln(after / before)) / 2.0;
            (likely, Node { line, ..*node })
        };
        let nodes = self.nodes.iter().filter(|node| node.weight > 0.0).map(more).collect();
        Blend { nodes: weighted(nodes), settings: [&self.settings, settings].concat() }
    }

    fn mean(&self, of: impl Fn(&Node) -> f64) -> f64 {
        self.nodes.iter().map(|node| node.weight * of(node)).sum()
    }

    /// The line that all of them make together: the mean of its parts, and their variances about it, in units of the scatter
    /// (the one whose precision is the mean precision: without trials the believed one).
    pub(super) fn line(&self) -> Line {
        let scatter = 1.0 / sqrt(self.mean(|node| 1.0 / (node.scatter * node.scatter)));
        let (constant, slope) = (self.mean(|node| node.line.constant), self.mean(|node| node.line.slope));
        let of = |at: usize, first: &dyn Fn(&Node) -> f64, second: &dyn Fn(&Node) -> f64| {
            let own = |node: &Node| node.line.matrix[at] * node.line.scatter * node.line.scatter;
            self.mean(|node| own(node) + first(node) * second(node)) / (scatter * scatter)
        };
        let a = |node: &Node| node.line.constant - constant;
        let b = |node: &Node| node.line.slope - slope;
        Line { constant, slope, matrix: [of(0, &a, &a), of(1, &b, &b), of(2, &a, &b)], scatter }
    }

    /// Share of a variance of the belief at `x`, given by its root, that the trials took away, on average.
    pub(super) fn taken(&self, x: f64, before: f64) -> f64 {
        let left = |node: &Node| node.line.error(x) / before;
        self.mean(|node| 1.0 - left(node) * left(node)).clamp(0.0, 1.0)
    }

    /// The value below which something lies with a chance. It is looked for from one that is near, in steps that start with
    /// a width and double, and then closed in on. None where it has no end on that side.
    fn end(near: f64, width: f64, chance: f64, below: impl Fn(f64) -> f64) -> Option<f64> {
        let off = |value: f64| below(value) - chance;
        let (mut from, mut off_from) = (near, off(near));
        let mut step = if off_from < 0.0 { width } else { -width };
        let (mut to, mut off_to) = (from + step, off(from + step));
        while off_to * off_from > 0.0 || off_to.is_nan() {
            if step.abs() > NOWHERE_DEG {
                return None;
            }
            step *= 2.0;
            (from, off_from, to) = (to, off_to, to + step);
            off_to = off(to);
        }
        // Regula falsi; an end that stays twice counts half (the Illinois rule), so that both ends close in.
        for _ in 0..MOST_ROUNDS {
            let next = to - off_to * (to - from) / (off_to - off_from);
            let off_next = off(next);
            if off_next * off_to <= 0.0 {
                (from, off_from) = (to, off_to)
            } else {
                off_from /= 2.0
            }
            let change = (next - to).abs();
            (to, off_to) = (next, off_next);
            // Also where the value was met exactly, and the next step would divide nothing by nothing.
            if change <= SETTLED || off_to.abs() <= f64::MIN_POSITIVE {
                break;
            }
        }
        Some(to)
    }

    /// Both ends of what lies in an interval with a chance, as much beyond the one as beyond the other. `lies` gives for a
    /// line and a value how far beyond its own expectation the value is, its standard deviation, and how far it may be off
    /// to one side besides.
    fn both_ends(
        &self,
        [near, width]: [f64; 2],
        chance: f64,
        lies: impl Fn(&Node, f64) -> [f64; 3],
    ) -> Option<[f64; 2]> {
        let outside = (1.0 - chance) / 2.0;
        let below = |value: f64, side: f64| {
            self.mean(|node| {
                let [beyond, error, bias] = lies(node, value);
                normal_below((beyond - side * bias) / error.max(f64::MIN_POSITIVE))
            })
        };
        let low = Self::end(near, width, outside, |value| below(value, -1.0))?;
        Some([low, Self::end(near, width, 1.0 - outside, |value| below(value, 1.0))?])
    }

    /// How far a line may be off at `x` because all readings are rounded to one side.
    fn bias(&self, node: &Node, x: f64) -> f64 {
        reading::bias(&node.line, self.settings.iter().copied(), node.half, x)
    }

    /// The interval of the setting for a wanted angle, not yet held to be no less than it. A line to start from is given.
    pub(super) fn setting_interval(&self, line: &Line, wanted: f64, chance: f64) -> Option<[f64; 2]> {
        let setting = (wanted + line.constant) / (1.0 - line.slope);
        self.both_ends([setting, 2.0 * line.error(setting)], chance, |node, x| {
            [x - wanted - node.line.at(x), node.line.error(x), self.bias(node, x)]
        })
    }

    /// The interval of the constant part.
    pub(super) fn constant_interval(&self, line: &Line, chance: f64) -> Option<[f64; 2]> {
        self.both_ends([line.constant, 2.0 * line.error(0.0)], chance, |node, value| {
            [value - node.line.constant, node.line.error(0.0), self.bias(node, 0.0)]
        })
    }

    /// The interval of the proportional part.
    pub(super) fn slope_interval(&self, line: &Line, chance: f64) -> Option<[f64; 2]> {
        self.both_ends([line.slope, 2.0 * line.slope_error()], chance, |node, value| {
            let bias = reading::slope_bias(&node.line, self.settings.iter().copied(), node.half);
            [value - node.line.slope, node.line.slope_error(), bias]
        })
    }

    /// The chance that one more bend at `x` lands within a half width about a line, as read.
    pub(super) fn next_within(&self, line: &Line, x: f64, half: f64) -> f64 {
        let at = line.at(x);
        self.mean(|node| {
            let (error, bias) = (node.line.next_half_width(x, 1.0), self.bias(node, x));
            let (middle, half) = (node.line.at(x) - at, half - bias);
            let inside = normal_below((half - middle) / error) - normal_below((-half - middle) / error);
            inside.max(0.0)
        })
    }

    /// How far one more bend at `x` lands from a line at most with a chance, as read.
    pub(super) fn next_half_width(&self, line: &Line, x: f64, chance: f64) -> Option<f64> {
        Self::end(0.0, line.next_half_width(x, 2.0), chance, |half| self.next_within(line, x, half))
    }
}

/// Nodes with weights that add up to one.
fn weighted(nodes: Vec<(f64, Node)>) -> Vec<Node> {
    let weights = shares(&nodes.iter().map(|(likely, _)| *likely).collect::<Vec<f64>>());
    weights.into_iter().zip(&nodes).map(|(weight, (_, node))| Node { weight, ..*node }).collect()
}
