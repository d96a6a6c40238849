//! Preferred numbers R40 (ISO 3), which the tolerances of ISO 965-1 are rounded to.
//!
//! The rule was found by testing 694 printed table cells: a computed grade 6 tolerance goes to the nearest preferred
//! number, halves up; the other grades lie a fixed number of steps from it along the series, and are not multiplied
//! and rounded again. A number that is no whole micrometer goes to the even one.

/// R40 from 100 to 950 (ISO 3; seen in the tables that were tested).
const R40: [i32; 40] = [
    100, 106, 112, 118, 125, 132, 140, 150, 160, 170, 180, 190, 200, 212, 224, 236, 250, 265, 280, 300, 315,
    335, 355, 375, 400, 425, 450, 475, 500, 530, 560, 600, 630, 670, 710, 750, 800, 850, 900, 950,
];

/// A place in the series; 0 is 1 micrometer, 40 is 10, 80 is 100.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Step(usize);

/// Places in the series; the last is 95 mm.
const PLACES: usize = 200;
/// Halfway from each place to the next: whoever reaches it belongs to the next. Tables, because every limit of a metric
/// thread asks three times.
static MIDDLES: [f64; PLACES - 1] = {
    let mut middles = [0.0; PLACES - 1];
    let mut place = 0;
    while place < PLACES - 1 {
        middles[place] = (exact(place) + exact(place + 1)) / 2.0;
        place += 1;
    }
    middles
};
/// The numbers in whole micrometers, halves to even.
static WHOLE: [i32; PLACES] = {
    let mut numbers = [0; PLACES];
    let mut place = 0;
    while place < PLACES {
        numbers[place] = whole(place);
        place += 1;
    }
    numbers
};

const fn exact(place: usize) -> f64 {
    let mut value = R40[place % 40] as f64 / 100.0;
    let mut decade = 0;
    while decade < place / 40 {
        value *= 10.0;
        decade += 1;
    }
    value
}

const fn whole(place: usize) -> i32 {
    let (mut number, mut divisor) = (R40[place % 40], 100);
    let mut decade = 0;
    while decade < place / 40 {
        if divisor > 1 {
            divisor /= 10;
        } else {
            number *= 10;
        }
        decade += 1;
    }
    let (whole, rest) = (number / divisor, number % divisor);
    let is_up = rest * 2 > divisor || (rest * 2 == divisor && whole % 2 == 1);
    if is_up { whole + 1 } else { whole }
}

impl Step {
    /// The nearest preferred number, halves up. Whatever is below 1 micrometer is 1, above 95 mm is 95 mm.
    pub(super) fn nearest(um: f64) -> Step {
        Step(MIDDLES.partition_point(|middle| *middle <= um))
    }

    /// The place some steps on.
    pub(super) fn plus(self, steps: isize) -> Step {
        Step(self.0.saturating_add_signed(steps).min(PLACES - 1))
    }

    /// The number in whole micrometers.
    pub(super) fn um(self) -> i32 {
        WHOLE[self.0]
    }
}
