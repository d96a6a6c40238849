use super::*;
use crate::bend::Bend;
use crate::path::Path;
use crate::units::mm;

#[test]
fn quarters_have_words_and_all_turns_an_hour() {
    for (turn, said, hour) in [
        (0.0, Some("same way"), "12:00"),
        (90.0, Some("quarter turn clockwise"), "3:00"),
        (-90.0, Some("quarter turn anticlockwise"), "9:00"),
        (180.0, Some("flip over"), "6:00"),
        (-179.7, Some("flip over"), "6:01"),
        (30.0, None, "1:00"),
        (-47.7, None, "10:25"),
        (-0.1, Some("same way"), "12:00"),
    ] {
        assert_eq!(words(deg(turn)), said, "{turn}");
        assert_eq!(clock(deg(turn)), hour, "{turn}");
    }
}

#[test]
fn the_inclinometer_reads_what_the_geometry_says() {
    // In the pose of a path the first bend lies flat and goes to the left seen from above (+y); the third leg's height
    // over its length is the sine of the reading.
    for (bend, turn) in
        [(60.0, 37.0), (90.0, 90.0), (45.0, -120.0), (30.0, 180.0), (150.0, 20.0), (0.0, 50.0)]
    {
        let bends = Bend::list(&[deg(70.0), deg(bend)], &[deg(turn)], &[mm(14.3)]).unwrap();
        let path = Path::from_straights(&[mm(100.0), mm(100.0), mm(100.0)], &bends).unwrap();
        let rise = path.end_place().direction[2].value;
        let reading = to_rad(inclinometer(deg(bend), deg(turn), true));
        assert!((math::sin(reading) - rise).abs() < 1e-12, "{bend} {turn}");
    }
}
