use super::*;
use crate::units::{inch, meter, to_g, to_ml};

#[test]
fn volumes_are_those_of_the_bore() {
    // Independent route: pi/4 x bore squared in exact decimals (bore 3.3401 and 4.9276 mm).
    for (od, want_ml) in [(3.0 / 16.0, 87.621), (1.0 / 4.0, 190.705)] {
        let tube = Tube::new(inch(od), inch(0.028), Material::CopperNickel).unwrap();
        assert!((to_ml(tube.bore_volume(meter(10.0)).unwrap()) - want_ml).abs() < 0.001);
    }
}

#[test]
fn mass_is_metal_times_density_or_unknown() {
    // Full disk less bore, an independent sum: pi/4 (4.75^2 - 3.35^2) mm2 x 1 m x 7.85 g/cm3.
    let steel = Tube::new(mm(4.75), mm(0.7), Material::LowCarbonSteel).unwrap();
    let want = PI / 4.0 * (4.75 * 4.75 - 3.35 * 3.35) * 7.85;
    assert!((to_g(steel.mass(meter(1.0)).unwrap().unwrap().value) - want).abs() < 1e-9 * want);
    let stainless = Tube::new(mm(4.75), mm(0.7), Material::Stainless304).unwrap();
    assert!(stainless.mass(meter(1.0)).unwrap().is_none());
}

#[test]
fn a_wall_must_leave_a_bore() {
    for (od, wall, code) in [
        (4.75, 2.375, Code::OutOfRange),
        (4.75, 0.0, Code::OutOfRange),
        (0.1875, 0.028, Code::OutOfRange),
        (f64::NAN, 0.7, Code::NotANumber),
        (4.75, f64::INFINITY, Code::NotANumber),
        (1e308, 0.7, Code::OutOfRange),
    ] {
        let error = Tube::new(mm(od), mm(wall), Material::CopperNickel).unwrap_err();
        assert_eq!(error.code(), code, "{od} x {wall}");
    }
}

#[test]
fn a_limit_and_a_length_must_be_real() {
    let tube = Tube::new(mm(4.75), mm(0.7), Material::CopperNickel).unwrap();
    assert_eq!(tube.clone().with_min_radius(mm(14.0), " ").unwrap_err().code(), Code::FieldMissing);
    for length in [f64::NAN, -1.0, 1e308] {
        assert!(tube.bore_volume(mm(length)).is_err() && tube.mass(mm(length)).is_err(), "{length}");
    }
}
