use super::*;
use crate::code::Code;

fn length(text: &str) -> f64 {
    match read_length(text) {
        Ok(value) => to_mm(value),
        Err(error) => panic!("{text}: {error}"),
    }
}

fn length_code(text: &str) -> Code {
    match read_length(text) {
        Ok(value) => panic!("{text} gave {}", to_mm(value)),
        Err(error) => error.code(),
    }
}

fn angle(text: &str) -> f64 {
    match read_angle(text) {
        Ok(value) => to_deg(value),
        Err(error) => panic!("{text}: {error}"),
    }
}

fn angle_code(text: &str) -> Code {
    match read_angle(text) {
        Ok(value) => panic!("{text} gave {}", to_deg(value)),
        Err(error) => error.code(),
    }
}

#[test]
fn lengths_as_people_write_them() {
    // Each value is the definition of the inch (25.4 mm) times the number written.
    let table = [
        ("3/16 in", 4.7625),
        ("3⁄16″", 4.7625),
        ("0.1875 in", 4.7625),
        ("⅜ in", 9.525),
        ("9/16\"", 14.2875),
        ("28 thou", 0.7112),
        ("5'-3 1/4\"", 1606.55),
        ("7 ft 4 1/2 in", 2247.9),
        ("3-1/4 in", 82.55),
        ("5 ¼ in", 133.35),
        ("5¼ in", 133.35),
        ("1.85 m", 1850.0),
        ("2,84 m", 2840.0),
        ("0,500 m", 500.0),
        ("31 cm", 310.0),
        ("14.3mm", 14.3),
        ("1500 mm", 1500.0),
        ("1.500,0 mm", 1500.0),
        ("1,500.0 mm", 1500.0),
        ("1\u{a0}500 mm".replace('\u{a0}', "").as_str(), 1500.0),
        ("12\u{a0}mm", 12.0),
        ("'12 mm", 12.0),
        ("-8 mm", -8.0),
        ("1e2 mm", 100.0),
    ]
    .map(|(text, want)| (text.to_owned(), want));
    for (text, want) in table {
        assert!((length(&text) - want).abs() < 1e-12 * want.abs(), "{text}: {} not {want}", length(&text));
    }
}

#[test]
fn lengths_that_are_no_lengths() {
    for (text, code) in [
        ("316", Code::UnitMissing),
        ("3.16", Code::UnitMissing),
        ("3/16", Code::UnitMissing),
        ("820", Code::UnitMissing),
        ("", Code::NotANumber),
        ("  ", Code::NotANumber),
        ("nan", Code::NotANumber),
        ("inf", Code::NotANumber),
        ("1e999 mm", Code::NotANumber),
        ("3/0 in", Code::NotANumber),
        ("1,500 mm", Code::NumberAmbiguous),
        ("1,2,3 mm", Code::NumberAmbiguous),
        ("16-Mar", Code::DateInSize),
        ("2025-03-16", Code::DateInSize),
        ("2026-03-16 00:00:00", Code::DateInSize),
        ("16-Mar 10:30", Code::DateInSize),
        ("16 March", Code::DateInSize),
        ("Sept-16", Code::DateInSize),
        ("12 marbles", Code::Unreadable),
        ("3/16/2025", Code::DateInSize),
        ("90 deg", Code::WrongKind),
        ("mm", Code::Unreadable),
        ("ten mm", Code::Unreadable),
        ("10 mm spanner", Code::Unreadable),
        ("10 20 mm", Code::Unreadable),
        ("9 5/4 in", Code::Unreadable),
        ("--3 mm", Code::Unreadable),
        (". mm", Code::Unreadable),
    ] {
        assert_eq!(length_code(text), code, "{text}");
    }
}

#[test]
fn a_bare_number_is_asked_about_and_never_read() {
    let text = read_length("316").unwrap_err().to_string();
    assert!(text.contains("3/16 in (4.76 mm)") && text.contains("stainless grade"), "{text}");
    let text = read_length("820").unwrap_err().to_string();
    assert!(text.contains("820 mm or 820 in"), "{text}");
}

#[test]
fn angles_as_people_write_them() {
    for (text, want) in [
        ("90°", 90.0),
        ("90 deg", 90.0),
        ("90 Degrees", 90.0),
        ("0.25 turn", 90.0),
        ("150 deg included", 30.0),
        ("150°  included", 30.0),
        ("150 deg bend", 150.0),
        ("-178,9 deg", -178.9),
    ] {
        assert_eq!(angle(text).to_bits(), f64::to_bits(want), "{text}");
    }
    assert!((angle("1.5708 rad") - 90.0002).abs() < 1e-4);
}

#[test]
fn angles_that_are_no_angles() {
    for (text, code) in [
        ("90", Code::UnitMissing),
        ("90 mm", Code::WrongKind),
        ("200 deg included", Code::OutOfRange),
        ("3 o'clock", Code::WrongKind),
        ("", Code::NotANumber),
        ("right", Code::Unreadable),
    ] {
        assert_eq!(angle_code(text), code, "{text}");
    }
}

#[test]
fn rotations_may_be_read_off_a_clock() {
    for (text, want) in [
        ("3 o'clock", 90.0),
        ("3 o’clock", 90.0),
        ("9 o'clock", -90.0),
        ("12 o'clock", -0.0),
        ("-47.7 deg", -47.7),
    ] {
        assert!((to_deg(read_rotation(text).unwrap()) - want).abs() < 1e-12, "{text}");
    }
    for (text, code) in
        [("13 o'clock", Code::OutOfRange), ("150 deg included", Code::WrongKind), ("90", Code::UnitMissing)]
    {
        assert_eq!(read_rotation(text).unwrap_err().code(), code, "{text}");
    }
}

#[test]
fn among_decimal_commas_a_point_may_be_a_thousands_sign() {
    let file = Notation::default().seen_in("2,84 m; 31 cm");
    assert!(file.decimal_comma);
    assert_eq!(read_length_in("1.500 mm", file).unwrap_err().code(), Code::NumberAmbiguous);
    assert_eq!(to_mm(read_length_in("1.5 mm", file).unwrap()).to_bits(), 1.5_f64.to_bits());
    assert_eq!(to_mm(read_length("1.500 mm").unwrap()).to_bits(), 1.5_f64.to_bits());
    for text in ["0,500 m", "14,3", "1234,567 mm"] {
        assert!(Notation::default().seen_in(text).decimal_comma, "{text}");
    }
    for text in ["1,500 mm", "1,500,000 mm", "12 mm", "a, b", "3, 4"] {
        assert!(!Notation::default().seen_in(text).decimal_comma, "{text}");
    }
}

#[test]
fn a_length_may_carry_its_uncertainty() {
    for text in
        ["9.45 mm +- 0.05 mm", "9.45 mm ± 0.05 mm", "9,45mm+/-50 µm".replace("50 µm", "0,05 mm").as_str()]
    {
        let (value, plus_minus) = read_tolerance(text).unwrap();
        assert_eq!(
            (to_mm(value).to_bits(), to_mm(plus_minus).to_bits()),
            (9.45_f64.to_bits(), 0.05_f64.to_bits())
        );
    }
    for (text, code) in [
        ("9.45 mm", Code::Unreadable),
        ("9.45 +- 0.05 mm", Code::UnitMissing),
        ("9.45 mm +- 0.05", Code::UnitMissing),
        ("9.45 mm +- -0.05 mm", Code::OutOfRange),
    ] {
        assert_eq!(read_tolerance(text).unwrap_err().code(), code, "{text}");
    }
}

#[test]
fn what_is_printed_in_full_is_read_back() {
    for value in [4.7625, 0.1, -178.9, 1e-7, 1.0 / 3.0, 123_456.789] {
        assert_eq!(to_mm(read_length(&exact_length_text(mm(value))).unwrap()).to_bits(), f64::to_bits(value));
        assert_eq!(
            to_deg(read_angle(&exact_angle_text(deg(value))).unwrap()).to_bits(),
            to_deg(deg(value)).to_bits()
        );
    }
}

#[test]
fn what_was_typed_comes_back() {
    for hundredths in 0..100_000_u32 {
        let typed = f64::from(hundredths) / 100.0;
        assert_eq!(to_mm(mm(typed)).to_bits(), typed.to_bits());
        assert_eq!(to_deg(deg(typed)).to_bits(), typed.to_bits());
    }
}

#[test]
fn rounding_goes_the_way_it_is_told() {
    let step = mm(0.5);
    let at = |value, way| to_mm(round_length(mm(value), step, way));
    for (value, up, down, nearest) in [(1079.3, 1079.5, 1079.0, 1079.5), (757.8, 758.0, 757.5, 758.0)] {
        assert_eq!(at(value, Rounding::Up).to_bits(), f64::to_bits(up));
        assert_eq!(at(value, Rounding::Down).to_bits(), f64::to_bits(down));
        assert_eq!(at(value, Rounding::Nearest).to_bits(), f64::to_bits(nearest));
    }
    // Halves go to the even step; what has no fraction left stays.
    assert_eq!(at(0.25, Rounding::Nearest).to_bits(), 0.0_f64.to_bits());
    assert_eq!(at(-0.75, Rounding::Up).to_bits(), (-0.5_f64).to_bits());
    assert_eq!(at(-0.75, Rounding::Down).to_bits(), (-1.0_f64).to_bits());
    assert_eq!(at(1e18, Rounding::Nearest).to_bits(), 1e18_f64.to_bits());
    // A sum that ends a hair above a step stays on it.
    assert_eq!(at(0.1 + 0.2 + 0.2, Rounding::Up).to_bits(), 0.5_f64.to_bits());
    assert_eq!(to_deg(round_angle(deg(93.6), deg(0.5), Rounding::Down)).to_bits(), 93.5_f64.to_bits());
}

#[test]
fn inches_are_printed_in_thirty_seconds() {
    for (value, way, want) in [
        (1079.3, Rounding::Up, "42 1/2"),
        (757.8, Rounding::Nearest, "29 27/32"),
        (985.1, Rounding::Nearest, "38 25/32"),
        (51.168, Rounding::Nearest, "2"),
        (0.0, Rounding::Nearest, "0"),
        (-12.7, Rounding::Nearest, "-1/2"),
    ] {
        assert_eq!(inch_text(mm(value), way), want);
    }
    assert_eq!(length_text(mm(-0.001)), "0 mm");
    assert_eq!(angle_text(deg(31.281_755)), "31.28 deg");
}

#[test]
fn a_unit_takes_no_number_beyond_all_bounds() {
    for text in ["1e308 m", "1e308 ft", "1e308 in", "1e308 ft 1 in"] {
        assert_eq!(read_length(text).unwrap_err().code(), Code::OutOfRange, "{text}");
    }
    assert_eq!(read_angle("1e308 turn").unwrap_err().code(), Code::OutOfRange);
    assert_eq!(read_rotation("-1e308 turn").unwrap_err().code(), Code::OutOfRange);
}

/// Each comes back as it was given; the pound per square inch by its definition (4.448 221 615 260 5 N on 645.16 mm2).
#[test]
fn quantities_of_fluids_come_back() {
    for value in [1.0, 0.063, 1975.2, 7e-4, -12.5] {
        let same = |got: f64| (got - value).abs() <= 2.0 * f64::EPSILON * value.abs();
        assert!(same(to_hz(hz(value))) && same(to_kelvin(kelvin(value))) && same(to_ml(ml(value))));
        assert!(same(to_per_kelvin(per_kelvin(value))) && same(to_per_mpa(per_mpa(value))));
        assert!(same(to_m_per_s(m_per_s(value))) && same(to_bar(bar(value))));
    }
    assert!((to_mpa(psi(1000.0)) - 6.894_757_293_168_361).abs() < 1e-14);
    // The aliases fit together: a compressibility times a pressure is a ratio, a speed is a length times a frequency.
    let share: Ratio = per_mpa(0.5) * mpa(3.0);
    let speed: Velocity = mm(2.0) * hz(500.0);
    let grown: Ratio = per_kelvin(7e-4) * kelvin(10.0);
    assert!((share.value - 1.5).abs() < 1e-15 && (to_m_per_s(speed) - 1.0).abs() < 1e-15);
    assert!((grown.value - 7e-3).abs() < 1e-15);
}

fn pressure_code(text: &str) -> Code {
    match read_pressure(text) {
        Ok(value) => panic!("{text} gave {}", to_mpa(value)),
        Err(error) => error.code(),
    }
}

/// A bar is 0.1 MPa; a pound per square inch 4.448 221 615 260 5 N on 645.16 mm2, by definition.
#[test]
fn pressures_as_people_write_them() {
    for (text, want) in [
        ("290 MPa", 290.0),
        ("290 mpa", 290.0),
        ("290Mpa", 290.0),
        ("150 bar", 15.0),
        ("0,5 bar", 0.05),
        ("207 GPa", 207_000.0),
        ("5 kPa", 0.005),
        ("101325 Pa", 0.101_325),
        ("200 N/mm2", 200.0),
        ("200 N/mm²", 200.0),
        ("200 N/mm^2", 200.0),
        ("1 psi", 0.006_894_757_293_168_361),
        ("25 ksi", 172.368_932_329_209),
        ("1/2 bar", 0.05),
        ("-1 bar", -0.1),
    ] {
        let got = read_pressure(text).map(to_mpa);
        assert!(got.as_ref().is_ok_and(|got| (got - want).abs() <= 1e-14 * want.abs()), "{text}: {got:?}");
    }
}

#[test]
fn pressures_that_are_no_pressures() {
    for (text, code) in [
        ("290", Code::UnitMissing),
        ("290 mPa", Code::Unreadable),
        ("290 mPa ", Code::Unreadable),
        ("5 mm", Code::WrongKind),
        ("90 deg", Code::WrongKind),
        ("", Code::NotANumber),
        ("nan", Code::NotANumber),
        ("1,500 psi", Code::NumberAmbiguous),
        ("150 psig", Code::Unreadable),
        ("150 N/m2", Code::Unreadable),
        ("150 mbar", Code::Unreadable),
        ("bar", Code::Unreadable),
        ("10 bar 5 psi", Code::Unreadable),
        ("1e308 GPa", Code::OutOfRange),
    ] {
        assert_eq!(pressure_code(text), code, "{text}");
    }
    assert_eq!(length_code("5 bar"), Code::WrongKind);
    assert_eq!(angle_code("5 bar"), Code::WrongKind);
    let text = read_pressure("290").unwrap_err().to_string();
    assert!(text.contains("290 MPa, 290 bar or 290 psi"), "{text}");
}

#[test]
fn pressures_are_printed_and_read_back() {
    for (value, want) in [
        (290.0, "290 MPa"),
        (172.368_93, "172.37 MPa"),
        (6.894_757, "6.895 MPa"),
        (0.006_894_757, "0.006895 MPa"),
        (-0.0, "0 MPa"),
        (1e-20, "0 MPa"),
    ] {
        assert_eq!(pressure_text(mpa(value)), want);
        let again = read_pressure(&exact_pressure_text(mpa(value))).map(to_mpa);
        assert!(again.is_ok_and(|again| again.to_bits() == f64::to_bits(value)), "{value}");
    }
}
