//! The measurement that decided the base units: which base gives back what a person typed.

use linewright::units::{Pressure, deg, inch, mm, rad, to_deg, to_mm, to_rad};
use linewright::uom::si::f64 as stock;
use linewright::uom::si::length::{inch as stock_inch, millimeter};
use linewright::uom::si::pressure::megapascal;

/// 0.01 mm steps up to a meter.
const STEPS: u32 = 100_000;

fn hundredths() -> impl Iterator<Item = f64> {
    (1..=STEPS).map(|step| f64::from(step) / 100.0)
}

/// How many of the steps come back with other bits.
fn lost(there_and_back: impl Fn(f64) -> f64) -> usize {
    hundredths().filter(|typed| there_and_back(*typed).to_bits() != typed.to_bits()).count()
}

#[test]
fn a_meter_base_loses_what_was_typed_and_ours_does_not() {
    let meter_base = lost(|typed| stock::Length::new::<millimeter>(typed).get::<millimeter>());
    println!(
        "of {STEPS} steps of 0.01 mm a meter base loses {meter_base}, ours {}",
        lost(|typed| to_mm(mm(typed)))
    );
    assert!(meter_base > 10_000, "the meter base loses only {meter_base}");
    assert_eq!(lost(|typed| to_mm(mm(typed))), 0);
    let ours = |typed| linewright::units::Length::new::<millimeter>(typed).get::<millimeter>();
    assert_eq!(lost(ours), 0);
}

#[test]
fn megapascals_come_back_too() {
    assert_eq!(lost(|typed| Pressure::new::<megapascal>(typed).get::<megapascal>()), 0);
    // In this base the megapascal is the unit itself, not a power of ten of it.
    assert_eq!(lost(|typed| Pressure::new::<megapascal>(typed).value), 0);
}

#[test]
fn three_sixteenths_of_an_inch_is_exact() {
    assert_eq!(to_mm(inch(3.0 / 16.0)).to_bits(), 4.7625_f64.to_bits());
    let meter_base = stock::Length::new::<stock_inch>(3.0 / 16.0).get::<millimeter>();
    assert_ne!(meter_base.to_bits(), 4.7625_f64.to_bits());
    // Every 64th up to 2 ft against one correctly rounded division of whole numbers.
    for sixty_fourths in 1..=1536_u32 {
        let nearest = f64::from(sixty_fourths * 254) / 640.0;
        assert_eq!(
            to_mm(inch(f64::from(sixty_fourths) / 64.0)).to_bits(),
            nearest.to_bits(),
            "{sixty_fourths}/64 in"
        );
    }
}

#[test]
fn angles_come_back_as_they_were_typed() {
    for step in 0..=3_600_000_u32 {
        let typed = f64::from(step) / 1000.0;
        assert_eq!(to_deg(deg(typed)).to_bits(), typed.to_bits(), "{typed} deg");
        assert_eq!(to_deg(deg(-typed)).abs().to_bits(), typed.to_bits(), "-{typed} deg");
    }
    for typed in [1.25, 0.1, std::f64::consts::PI] {
        assert_eq!(to_rad(rad(typed)).to_bits(), typed.to_bits());
    }
}
