//! The scatter of a bend, where it is not known but only how likely each is.

use crate::math::exp;

/// Scatters are taken in equal steps of their logarithm, no longer than this and at least so many. What is integrated over them
/// is smooth and falls off at both ends, so that little is lost: ends of intervals agree with Gauss and Legendre's rule to 1e-7
/// degrees (for spreads of some degrees; of 30 degrees, beside a scatter of 0.001, to 1e-5).
const LONGEST_STEP: f64 = 0.2;
const FEWEST_STEPS: f64 = 40.0;
/// Scatters are looked for from e^-10 to e^24 times the believed one, in such steps of the logarithm.
const LOOK: [i32; 2] = [-50, 120];
const LOOK_STEP: f64 = 0.2;
/// A scatter less likely than the likeliest by this power of e has no weight: 1e-10.
const UNLIKELY: f64 = 23.0;
/// Halvings of a step that a likely scatter begins or ends in, which no digit of an interval hangs on.
const HALVINGS: u32 = 30;

/// How likely a scatter is by a belief that is worth so many bends, as a logarithm, for the logarithm `u` of the scatter over
/// the believed one: the square of the believed one over that of the scatter is a chi-square number over its degrees of freedom.
pub(super) fn believed(worth: f64, u: f64) -> f64 {
    -worth * (u + exp(-2.0 * u) / 2.0)
}

/// The scatters to take, as logarithms over the believed one, for how likely each is.
pub(super) fn scatters(likely: impl Fn(f64) -> f64) -> Vec<f64> {
    let [low, high] = ends(likely);
    let steps = ((high - low) / LONGEST_STEP).ceil().max(FEWEST_STEPS);
    (0_u32..).map(f64::from).take_while(|i| *i <= steps).map(|i| low + (high - low) * i / steps).collect()
}

/// The ends of the scatters that are likely enough to count.
fn ends(likely: impl Fn(f64) -> f64) -> [f64; 2] {
    let looked: Vec<(f64, f64)> =
        (LOOK[0]..=LOOK[1]).map(|i| f64::from(i) * LOOK_STEP).map(|u| (u, likely(u))).collect();
    let best = |best: (f64, f64), one: &(f64, f64)| if one.1 > best.1 { *one } else { best };
    let (near, _) = looked.iter().fold((0.0, f64::NEG_INFINITY), best);
    // The peak can be narrower than a step: it is closed in on from both sides.
    let (mut low, mut high) = (near - LOOK_STEP, near + LOOK_STEP);
    for _ in 0..HALVINGS {
        let third = (high - low) / 3.0;
        if likely(low + third) < likely(high - third) { low += third } else { high -= third }
    }
    let peak = (low + high) / 2.0;
    let least = likely(peak) - UNLIKELY;
    let within = looked.iter().filter(|(_, likely)| *likely > least).map(|(u, _)| *u).chain([peak]);
    let (first, last) = within.fold((peak, peak), |(a, b), u| (a.min(u), b.max(u)));
    [(first, -LOOK_STEP), (last, LOOK_STEP)].map(|(inside, step)| {
        let (mut within, mut beyond) = (0.0, 1.0);
        for _ in 0..HALVINGS {
            let middle = (within + beyond) / 2.0;
            if likely(inside + step * middle) > least { within = middle } else { beyond = middle }
        }
        inside + step * beyond
    })
}

/// Shares that add up to one, of how likely each is as a logarithm.
pub(super) fn shares(likely: &[f64]) -> Vec<f64> {
    let most = likely.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    // No power below this is a number of full precision; nothing is lost of a sum with 1 in it.
    let powers: Vec<f64> = likely.iter().map(|one| exp((one - most).max(-700.0))).collect();
    let sum: f64 = powers.iter().sum();
    powers.into_iter().map(|power| power / sum).collect()
}
