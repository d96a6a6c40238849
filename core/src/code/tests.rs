use super::*;

/// The promise of the table, written a second time: whoever changes a number, a name or what lifts a code must
/// change it here too, and think.
const PROMISED: &[(u16, &str, Level, Lift)] = &[
    (101, "UNIT_MISSING", Level::Refuse, Lift::Never),
    (102, "NOT_A_NUMBER", Level::Refuse, Lift::Never),
    (103, "NUMBER_AMBIGUOUS", Level::Refuse, Lift::Never),
    (104, "UNREADABLE", Level::Refuse, Lift::Never),
    (105, "WRONG_KIND", Level::Refuse, Lift::Never),
    (106, "DATE_IN_SIZE", Level::Refuse, Lift::Never),
    (107, "OUT_OF_RANGE", Level::Refuse, Lift::Never),
    (108, "UNKNOWN_NAME", Level::Refuse, Lift::Never),
    (109, "FIELD_MISSING", Level::Refuse, Lift::Never),
    (110, "COUNT_MISMATCH", Level::Refuse, Lift::Never),
    (111, "THREAD_AMBIGUOUS", Level::Stop, Lift::Fact),
    (112, "HEX_NOT_THREAD", Level::Stop, Lift::Fact),
    (113, "ANGLE_LARGE", Level::Caution, Lift::Fact),
    (114, "FIELDS_CONFLICT", Level::Refuse, Lift::Never),
    (115, "METHOD_MISSING", Level::Refuse, Lift::Never),
    (116, "UNIT_IMPLAUSIBLE", Level::Refuse, Lift::Never),
    (117, "ASSUMED_INCH", Level::Caution, Lift::Fact),
    (118, "THREAD_CONTRADICTION", Level::Stop, Lift::Fact),
    (119, "THREAD_SIDE", Level::Refuse, Lift::Never),
    (201, "STRAIGHT_NEGATIVE", Level::Stop, Lift::Fact),
    (202, "NO_CORNER", Level::Refuse, Lift::Never),
    (203, "PATH_DEGENERATE", Level::Refuse, Lift::Never),
    (204, "HAND_MISMATCH", Level::Stop, Lift::Fact),
    (205, "PATHS_DIFFER", Level::Stop, Lift::Fact),
    (301, "BEND_IN_CLAMP", Level::Stop, Lift::Person),
    (302, "NUT_ON_BEND", Level::Stop, Lift::Person),
    (303, "BENDS_TOO_CLOSE", Level::Stop, Lift::Person),
    (304, "RADIUS_TOO_SMALL", Level::Stop, Lift::Fact),
    (305, "RADIUS_BELOW_SEEN", Level::Caution, Lift::Fact),
    (306, "RADIUS_LIMIT_UNKNOWN", Level::Caution, Lift::Fact),
    (307, "TRIM_END_NONE", Level::Caution, Lift::Fact),
    (308, "NOT_THIS_FORMER", Level::Stop, Lift::Fact),
    (309, "SPRINGBACK_UNKNOWN", Level::Stop, Lift::Fact),
    (310, "SPRINGBACK_WEAK", Level::Caution, Lift::Fact),
    (311, "SETTING_OUTSIDE_TRIALS", Level::Note, Lift::Fact),
    (312, "FLARE_TOOL_MISSING", Level::Stop, Lift::Fact),
    (313, "FLARE_NET_UNKNOWN", Level::Stop, Lift::Fact),
    (314, "FLARE_NET_ASSUMED", Level::Caution, Lift::Fact),
    (315, "NUT_BORE_SMALL", Level::Stop, Lift::Fact),
    (316, "TRIALS_UNUSABLE", Level::Refuse, Lift::Never),
    (317, "HOLE_TOO_SMALL", Level::Stop, Lift::Fact),
    (318, "HEX_UNKNOWN", Level::Stop, Lift::Fact),
    (319, "DEFERRED", Level::Stop, Lift::Fact),
    (320, "FLARE_SLIPPED", Level::Caution, Lift::Fact),
    (321, "CLIP_IN_BEND", Level::Note, Lift::Fact),
    (322, "SPRINGBACK_ESTIMATED", Level::Caution, Lift::Fact),
    (323, "RADIUS_ESTIMATED", Level::Caution, Lift::Fact),
    (324, "CALIBRATION_OTHER_TUBE", Level::Caution, Lift::Fact),
    (325, "FLARE_WALL_UNSEEN", Level::Caution, Lift::Fact),
    (326, "NUT_BORE_LARGE", Level::Stop, Lift::Fact),
    (327, "FLARE_SIZE_UNKNOWN", Level::Caution, Lift::Fact),
    (328, "FLARE_TOO_WIDE", Level::Stop, Lift::Fact),
    (329, "FLARE_WIDTH_CLOSE", Level::Caution, Lift::Fact),
    (330, "FLARE_SIZE_ODD", Level::Stop, Lift::Person),
    (401, "SEAT_UNKNOWN", Level::Stop, Lift::Fact),
    (402, "FLARE_SEAT_MISMATCH", Level::Stop, Lift::Fact),
    (403, "SINGLE_45_REFUSED", Level::Refuse, Lift::Never),
    (404, "THREAD_MISMATCH", Level::Stop, Lift::Fact),
    (405, "THREAD_UNKNOWN", Level::Stop, Lift::Fact),
    (406, "PORT_UNKNOWN", Level::Stop, Lift::Fact),
    (407, "NOSE_MISMATCH", Level::Stop, Lift::Fact),
    (408, "NOSE_UNKNOWN", Level::Stop, Lift::Fact),
    (409, "THREAD_LOOKALIKE", Level::Stop, Lift::Fact),
    (410, "CLAMP_MARGIN_NONE", Level::Stop, Lift::Fact),
    (411, "CLAMP_MARGIN_UNKNOWN", Level::Caution, Lift::Fact),
    (412, "WASHER_ON_FLARE", Level::Stop, Lift::Fact),
    (413, "WASHER_COUNT", Level::Stop, Lift::Fact),
    (414, "PORT_DEPTHS_ODD", Level::Stop, Lift::Person),
    (501, "NOT_LIFTABLE", Level::Caution, Lift::Fact),
    (502, "NOTHING_TO_LIFT", Level::Note, Lift::Fact),
    (901, "NULL_ARGUMENT", Level::Refuse, Lift::Never),
    (902, "TEXT_NOT_UTF8", Level::Refuse, Lift::Never),
    (903, "SPACE_TOO_SMALL", Level::Refuse, Lift::Never),
    (904, "STRUCT_SIZE", Level::Refuse, Lift::Never),
    (905, "INDEX_OUT_OF_RANGE", Level::Refuse, Lift::Never),
    (906, "INTERNAL_FAULT", Level::Refuse, Lift::Never),
    (907, "NOT_KNOWN", Level::Refuse, Lift::Never),
];

#[test]
fn the_table_keeps_its_promise() {
    let now: Vec<_> = TABLE.iter().map(|r| (r.code.number(), r.name, r.level, r.lift)).collect();
    assert_eq!(now, PROMISED);
}

#[test]
fn numbers_rise_and_names_are_unique() {
    assert!(TABLE.windows(2).all(|pair| pair[0].code.number() < pair[1].code.number()));
    let mut names: Vec<_> = TABLE.iter().map(|r| r.name).collect();
    names.sort_unstable();
    names.dedup();
    assert_eq!(names.len(), TABLE.len());
}

#[test]
fn a_refusal_is_never_lifted_and_only_a_stop_locks() {
    for row in TABLE {
        assert_eq!(row.level == Level::Refuse, row.lift == Lift::Never, "{}", row.name);
        assert_eq!(row.level == Level::Stop, row.locks != Locks::Nothing, "{}", row.name);
        assert!(!row.meaning.is_empty() && !row.cleared_by.is_empty(), "{}", row.name);
    }
}

#[test]
fn name_number_and_code_lead_to_each_other() {
    for row in TABLE {
        assert_eq!(Code::from_number(row.code.number()), Some(row.code));
        assert_eq!(Code::from_name(row.name), Some(row.code));
        assert_eq!(row.code.name(), row.name);
    }
    assert_eq!(Code::from_number(0), None);
    assert_eq!(Code::from_name("unit_missing"), None);
}
