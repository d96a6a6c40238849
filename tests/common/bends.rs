//! Trial bends from plain numbers, and whether an interval holds the truth.

use linewright::springback::Trial;
use linewright::units::{Angle, deg, to_deg};

pub fn trials(sets: &[f64], gots: &[f64]) -> Vec<Trial> {
    sets.iter().zip(gots).map(|(set, got)| Trial { set: deg(*set), got: deg(*got) }).collect()
}

pub fn holds(interval: [Angle; 2], truth: f64) -> bool {
    (to_deg(interval[0])..=to_deg(interval[1])).contains(&truth)
}
