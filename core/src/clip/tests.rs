use super::*;
use crate::bend::Bend;
use crate::units::{deg, inch};

#[test]
fn three_lines_of_a_trailer() {
    // By hand, with 400 mm between and 100 mm from the ends: (2787.2 - 200) / 400 = 6.47, so 7 gaps and 8 clips;
    // (1069.3 - 200) / 400 = 2.17 and (1158.2 - 200) / 400 = 2.40, so 3 gaps and 4 clips each.
    let rule = &rules()[0];
    for (length, count) in
        [(2787.2, 8), (1069.3, 4), (1158.2, 4), (200.0, 1), (150.0, 1), (201.0, 2), (600.0, 2), (600.1, 3)]
    {
        let path = Path::from_straights(&[mm(length)], &[]).unwrap();
        let clips = rule.clips(&path).clips;
        assert_eq!(clips.len(), count, "{length}");
        let stations: Vec<f64> = clips.iter().map(|c| to_mm(c.station)).collect();
        assert!(stations.windows(2).all(|w| w[1] - w[0] <= 400.0 + 1e-6));
        assert!(stations[0] <= 100.0 + 1e-9 && length - stations[count - 1] <= 100.0 + 1e-9);
    }
    let nothing = Path::from_straights(&[mm(0.0)], &[]).unwrap();
    assert!(rule.clips(&nothing).clips.is_empty());
}

#[test]
fn a_clip_in_a_bend_is_said() {
    let bends = Bend::list(&[deg(90.0)], &[], &[inch(1.0)]).unwrap();
    let path = Path::from_straights(&[mm(90.0), mm(90.0)], &bends).unwrap();
    let rule = ClipRule::new(mm(400.0), mm(100.0), Source::common_practice()).unwrap();
    let clips = rule.clips(&path);
    assert_eq!(clips.clips[0].in_bend, Some(1));
    assert_eq!(clips.problems[0].id(), "CLIP_IN_BEND@bend 1");
    assert!(ClipRule::new(mm(0.0), mm(100.0), Source::common_practice()).is_err());
}

#[test]
fn old_clips_are_counted_and_spares_added() {
    assert_eq!(clips_to_buy(16, 11), (5, 2));
    assert_eq!(clips_to_buy(58, 38), (20, 2));
    assert_eq!(clips_to_buy(40, 2), (38, 4));
    assert_eq!(clips_to_buy(4, 9), (0, 0));
}
