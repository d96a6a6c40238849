//! What a belief and trial bends leave of a line. Spreads of the belief are degrees, whatever the trials scatter: given the
//! scatter, both parts of the line are normal and precisions add up; the scatter is known from the belief's worth and from
//! the trials, and is integrated over. What is left is a mixture of normal lines, one for each scatter there may be.

use super::fit::point;
use super::prior::Prior;
use super::scatter::{believed, scatters, shares};
use super::{Trial, reading};
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

/// A belief and trials before a scatter is assumed. Both parts of the line are counted from what is believed of them, by two
/// numbers that are standard and independent in the belief, and turned so that they are independent in the trials too: then
/// nothing is lost by subtraction where the trials tell one of them far better than the other.
struct Evidence {
    center: [f64; 2],
    /// How the believed constant and slope move with the two numbers.
    root: [[f64; 2]; 2],
    believed_scatter: f64,
    worth: f64,
    /// For each trial: by how much it moves with the two numbers, and how far it lies off the belief.
    rows: Vec<([f64; 2], f64)>,
    /// Sums over the trials: squares of the two, and their products with the distance.
    squares: [f64; 2],
    products: [f64; 2],
    /// Variance that rounding adds to a reading.
    rounding: f64,
}

/// The turn [c, s] after which two columns with some sums of squares and product, (x, y) to (c x - s y, s x + c y), have no
/// product (a step of Jacobi's).
fn turn(first: f64, second: f64, product: f64) -> [f64; 2] {
    if product.abs() <= f64::MIN_POSITIVE {
        return [1.0, 0.0];
    }
    let tau = (second - first) / (2.0 * product);
    let tangent = f64::copysign(1.0, tau) / (tau.abs() + sqrt(1.0 + tau * tau));
    let cosine = 1.0 / sqrt(1.0 + tangent * tangent);
    [cosine, tangent * cosine]
}

impl Evidence {
    fn new(prior: &Prior, points: &[(f64, f64)], rounding: f64) -> Evidence {
        let (center, [r0, r1, r2]) = (prior.center(), prior.root());
        let row = |x: f64| [r0 + x * r1, x * r2];
        let sum = |of: &dyn Fn([f64; 2]) -> f64| points.iter().map(|(x, _)| of(row(*x))).sum::<f64>();
        let [c, s] = turn(sum(&|[g, _]| g * g), sum(&|[_, h]| h * h), sum(&|[g, h]| g * h));
        let turned = |[g, h]: [f64; 2]| [c * g - s * h, s * g + c * h];
        let off = |(x, y): &(f64, f64)| (turned(row(*x)), y - center[0] - center[1] * x);
        let rows: Vec<([f64; 2], f64)> = points.iter().map(off).collect();
        let (mut squares, mut products) = ([0.0; 2], [0.0; 2]);
        for ([g, h], off) in &rows {
            squares = [squares[0] + g * g, squares[1] + h * h];
            products = [products[0] + g * off, products[1] + h * off];
        }
        Evidence {
            center,
            root: [turned([r0, 0.0]), turned([r1, r2])],
            believed_scatter: prior.scatter_deg(),
            worth: f64::from(prior.worth()),
            rows,
            squares,
            products,
            rounding: rounding * rounding,
        }
    }

    /// For a logarithm of the scatter over the believed one: how likely it is, as a logarithm, and what it leaves of the line.
    fn at(&self, u: f64) -> (f64, Node) {
        let scatter = self.believed_scatter * exp(u);
        let variance = scatter * scatter + self.rounding;
        // Variances of the two numbers: the inverse of one plus what the trials tell.
        let left = self.squares.map(|sum| variance / (variance + sum));
        let moved = [0, 1].map(|i| self.products[i] / (variance + self.squares[i]));
        let off = |(row, off): &([f64; 2], f64)| off - row[0] * moved[0] - row[1] * moved[1];
        let residual: f64 = self.rows.iter().map(off).map(|r| r * r).sum();
        let gave = moved[0] * moved[0] + moved[1] * moved[1];
        #[expect(clippy::cast_precision_loss, reason = "a count of trials")]
        let count = self.rows.len() as f64;
        let likely = believed(self.worth, u)
            - (count * ln(variance) - ln(left[0]) - ln(left[1]) + residual / variance + gave) / 2.0;
        let dot = |a: [f64; 2], b: [f64; 2]| a[0] * left[0] * b[0] + a[1] * left[1] * b[1];
        let [constant, slope] = self.root;
        let matrix = [dot(constant, constant), dot(slope, slope), dot(constant, slope)];
        let line = Line {
            constant: self.center[0] + constant[0] * moved[0] + constant[1] * moved[1],
            slope: self.center[1] + slope[0] * moved[0] + slope[1] * moved[1],
            matrix: matrix.map(|v| v / variance),
            scatter: sqrt(variance),
        };
        (likely, Node { weight: 0.0, line, scatter, half: 0.0 })
    }
}

impl Blend {
    /// What a belief leaves where there is no trial.
    pub(super) fn alone(prior: &Prior) -> Blend {
        Blend::new(prior, &[])
    }

    /// A belief and trials.
    pub(super) fn new(prior: &Prior, trials: &[Trial]) -> Blend {
        let points: Vec<(f64, f64)> = trials.iter().map(point).collect();
        let step = reading::step(trials);
        let evidence = Evidence::new(prior, &points, reading::rounding(trials));
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
