//! Preferred numbers R40 (ISO 3), which the tolerances of ISO 965-1 are rounded to.
//!
//! The rule was found by testing 694 printed table cells: a computed grade 6 tolerance goes to the nearest preferred
//! number, halves up; the other grades lie a fixed number of steps from it along the series, and are not multiplied
//! and rounded again. A number that is no whole micrometer goes to the even one.

/// R40 from 100 to 950 (ISO 3; seen in the tables that were tested).
const R40: [u32; 40] = [
    100, 106, 112, 118, 125, 132, 140, 150, 160, 170, 180, 190, 200, 212, 224, 236, 250, 265, 280, 300, 315,
    335, 355, 375, 400, 425, 450, 475, 500, 530, 560, 600, 630, 670, 710, 750, 800, 850, 900, 950,
];

/// A place in the series; 0 is 1 micrometer, 40 is 10, 80 is 100.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Step(i32);

/// The largest place, 95 mm.
const LAST: i32 = 199;

impl Step {
    /// The nearest preferred number, halves up. Whatever is below 1 micrometer is 1, above 95 mm is 95 mm.
    pub(super) fn nearest(um: f64) -> Step {
        let (mut scaled, mut decade) = (um, 0);
        while scaled >= 10.0 && decade < 5 {
            scaled /= 10.0;
            decade += 1;
        }
        let index = R40.partition_point(|n| f64::from(*n) <= scaled * 100.0);
        let below = (40 * decade + i32::try_from(index).unwrap_or(0) - 1).clamp(0, LAST - 1);
        let middle = (Step(below).exact() + Step(below + 1).exact()) / 2.0;
        Step(if um < middle { below } else { below + 1 })
    }

    /// The place some steps on.
    pub(super) fn plus(self, steps: i32) -> Step {
        Step((self.0 + steps).clamp(0, LAST))
    }

    fn exact(self) -> f64 {
        let index = usize::try_from(self.0.rem_euclid(40)).unwrap_or(0);
        let mut value = f64::from(R40[index]) / 100.0;
        for _ in 0..self.0.div_euclid(40) {
            value *= 10.0;
        }
        value
    }

    /// The number in whole micrometers, halves to even.
    pub(super) fn um(self) -> i32 {
        let index = usize::try_from(self.0.rem_euclid(40)).unwrap_or(0);
        let (mut number, mut divisor) = (R40[index], 100);
        for _ in 0..self.0.div_euclid(40) {
            if divisor > 1 {
                divisor /= 10;
            } else {
                number *= 10;
            }
        }
        let (whole, rest) = (number / divisor, number % divisor);
        let up = rest * 2 > divisor || (rest * 2 == divisor && whole % 2 == 1);
        i32::try_from(whole + u32::from(up)).unwrap_or(i32::MAX)
    }
}
