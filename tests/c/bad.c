/* Bad numbers, bad texts, small buffers, wrong sizes, wrong indices: a status each, and no output touched. */
#include "check.h"

#include <math.h>

static const double BAD_NUMBERS[] = {NAN, INFINITY, -INFINITY, 1e308, -1e308, -1.0};
enum { BADS = sizeof BAD_NUMBERS / sizeof BAD_NUMBERS[0] };

/* What a bad number is called: no number, or one outside its limits. */
static lw_status called(double value) {
    return isnan(value) || isinf(value) ? LW_NOT_A_NUMBER : LW_OUT_OF_RANGE;
}

static void numbers(void) {
    lw_tube *tube = NULL;
    lw_bench *bench = sample_bench();
    lw_plan_options *options = NULL;
    int i;
    OK(lw_tube_new(lw_mm(4.75), lw_mm(0.7), "copper-nickel", &tube));
    OK(lw_plan_options_new(&options));
    for (i = 0; i < BADS; i += 1) {
        const double bad = BAD_NUMBERS[i];
        const lw_length length = lw_mm(bad);
        const lw_angle angle = lw_deg(bad);
        const lw_length lengths[2] = {{90.0}, {bad}};
        const double xyz_mm[6] = {0.0, 0.0, 0.0, bad * 1e7, 0.0, 0.0};
        lw_length kept = {7.0};
        double number = 7.0;
        lw_tube *none = NULL;
        lw_bench *no_bench = NULL;
        lw_nut *no_nut = NULL;
        lw_path *no_path = NULL;
        lw_springback *no_springback = NULL;
        EXPECT(called(bad), lw_bend_arc(length, lw_deg(90.0), &kept));
        EXPECT(called(bad), lw_bend_arc(lw_mm(14.3), angle, &kept));
        EXPECT(called(bad), lw_bend_tangent_length(length, lw_deg(90.0), &kept));
        EXPECT(called(bad), lw_bend_gain(lw_mm(14.3), angle, &kept));
        EXPECT(called(bad), lw_tube_new(length, lw_mm(0.7), "copper-nickel", &none));
        EXPECT(called(bad), lw_tube_new(lw_mm(4.75), length, "copper-nickel", &none));
        EXPECT(called(bad), lw_tube_set_min_radius(tube, length, "maker"));
        EXPECT(called(bad), lw_tube_bore_volume_ml(tube, length, &number));
        EXPECT(called(bad), lw_tube_mass_g(tube, length, &number));
        EXPECT(called(bad), lw_bench_new(length, lw_mm(20.0), &no_bench));
        EXPECT(called(bad), lw_bench_new(lw_mm(14.3), length, &no_bench));
        EXPECT(called(bad), lw_bench_set_clearance(bench, length));
        EXPECT(called(bad), lw_bench_set_back_off(bench, length));
        EXPECT(called(bad), lw_nut_new("M10x1", length, lw_mm(5.0), "coned", &no_nut));
        EXPECT(called(bad), lw_nut_new("M10x1", lw_mm(17.0), length, "coned", &no_nut));
        EXPECT(called(bad), lw_plan_options_set_reserve(options, length));
        EXPECT(called(bad), lw_springback_new(lw_deg(0.1), bad, &no_springback));
        EXPECT(called(bad * 100.0), lw_springback_new(lw_deg(bad * 100.0), 0.038, &no_springback));
        EXPECT(called(bad), lw_path_from_straights(lengths + 1, 1, NULL, 0, NULL, 0, NULL, 0, &no_path));
        EXPECT(called(bad), lw_path_from_legs(lengths + 1, 1, NULL, 0, NULL, 0, NULL, 0, &no_path));
        EXPECT(called(xyz_mm[3]), lw_path_from_vertices(xyz_mm, 2, NULL, 0, &no_path));
        CHECK(kept.mm == 7.0 && number == 7.0);
        CHECK(none == NULL && no_bench == NULL && no_nut == NULL && no_path == NULL && no_springback == NULL);
        CHECK(isnan(lw_arc_mm(bad, 90.0)) && isnan(lw_arc_mm(14.3, bad)));
        CHECK(isnan(lw_tangent_length_mm(bad, 90.0)) && isnan(lw_gain_mm(bad, 90.0)));
        CHECK(isnan(lw_setting_deg(bad, 0.1, 0.038)) && isnan(lw_setting_deg(60.0, 0.1, bad)));
    }
    CHECK(isnan(lw_tangent_length_mm(14.3, 180.0)) && isnan(lw_gain_mm(14.3, 180.0)));
    CHECK(lw_arc_mm(14.3, 180.0) > 44.9 && lw_arc_mm(14.3, 180.0) < 45.0);
    lw_tube_free(tube);
    lw_bench_free(bench);
    lw_plan_options_free(options);
}

/* The same numbers to what a single line needs beside its plan. */
static void more_numbers(void) {
    static const lw_length lengths[2] = {{90.0}, {120.0}};
    static const lw_length radii[1] = {{14.3}};
    static const lw_angle angles[1] = {{60.0}};
    lw_bench *bench = sample_bench();
    lw_nut *nut = NULL;
    lw_end *end = NULL;
    lw_path *path = NULL;
    int i;
    OK(lw_nut_new("M10x1", lw_mm(17.0), lw_mm(5.0), "coned", &nut));
    OK(lw_end_new(nut, "double-45", &end));
    OK(lw_path_from_legs(lengths, 2, angles, 1, NULL, 0, radii, 1, &path));
    for (i = 0; i < BADS; i += 1) {
        const double bad = BAD_NUMBERS[i];
        const lw_length length = lw_mm(bad);
        const lw_angle turn = lw_deg(bad * 4000.0);
        lw_tape tape = {sizeof tape, {1640.0}, 4, "center line", {4.75}, {360.0}, {14.3}, NULL, NULL, 0.9};
        lw_length kept = {7.0};
        lw_angle angle = {7.0};
        lw_path *no_path = NULL;
        lw_problems *no_problems = NULL;
        lw_tape_cut *no_cut = NULL;
        double low_mm[3] = {7.0, 7.0, 7.0};
        double high_mm[3] = {7.0, 7.0, 7.0};
        char text[8] = "kept";
        size_t need = 99;
        EXPECT(called(bad), lw_nut_set_across_flats(nut, length));
        EXPECT(called(bad), lw_nut_tightest_curve(nut, length, &kept));
        EXPECT(called(bad), lw_end_add_hole(end, length));
        EXPECT(called(bad), lw_path_from_outer_legs(lengths, 2, angles, 1, NULL, 0, radii, 1, length, &no_path));
        EXPECT(called(bad), lw_path_extent_mm(path, length, low_mm, high_mm));
        EXPECT(called(bad), lw_path_compare(path, path, length, lw_deg(1.0), &no_problems));
        EXPECT(called(bad), lw_path_compare(path, path, lw_mm(1.0), lw_deg(bad), &no_problems));
        EXPECT(called(bad), lw_clip_stations(path, length, lw_mm(100.0), NULL, 0, &need));
        EXPECT(called(bad), lw_clip_stations(path, lw_mm(400.0), length, NULL, 0, &need));
        EXPECT(called(bad), lw_clip_problems(path, length, lw_mm(100.0), &no_problems));
        EXPECT(called(bad), lw_flare_net_shortening(length, lw_mm(198.0), &kept));
        EXPECT(called(bad), lw_flare_net_shortening(lw_mm(200.0), length, &kept));
        EXPECT(called(bad), lw_flare_slip(length, lw_mm(2.0), &no_problems));
        EXPECT(called(bad), lw_flare_slip(lw_mm(2.0), length, &no_problems));
        EXPECT(called(turn.deg), lw_turn_words(turn, text, sizeof text, &need));
        EXPECT(called(turn.deg), lw_turn_clock(turn, text, sizeof text, &need));
        EXPECT(called(bad), lw_turn_inclinometer(lw_deg(bad), lw_deg(30.0), 1, &angle));
        EXPECT(called(turn.deg), lw_turn_inclinometer(lw_deg(60.0), turn, 1, &angle));
        tape.measured = length;
        EXPECT(called(bad), lw_tape_cut_new(&tape, bench, &no_cut));
        tape.measured = lw_mm(1640.0);
        tape.od = length;
        EXPECT(called(bad), lw_tape_cut_new(&tape, bench, &no_cut));
        tape.od = lw_mm(4.75);
        tape.chance = bad;
        EXPECT(called(bad), lw_tape_cut_new(&tape, bench, &no_cut));
        /* NaN says that these two are not known. */
        if (!isnan(bad)) {
            tape.chance = 0.9;
            tape.radius = length;
            EXPECT(called(bad), lw_tape_cut_new(&tape, bench, &no_cut));
            tape.radius = lw_mm(14.3);
            tape.total_angle = lw_deg(bad);
            EXPECT(called(bad), lw_tape_cut_new(&tape, bench, &no_cut));
        }
        CHECK(kept.mm == 7.0 && angle.deg == 7.0 && strcmp(text, "kept") == 0 && need == 0);
        CHECK(low_mm[0] == 7.0 && low_mm[2] == 7.0 && high_mm[0] == 7.0 && high_mm[2] == 7.0);
        CHECK(no_path == NULL && no_problems == NULL && no_cut == NULL);
    }
    lw_path_free(path);
    lw_end_free(end);
    lw_nut_free(nut);
    lw_bench_free(bench);
}

static void texts(void) {
    static const struct {
        const char *text;
        lw_status length;
        lw_status angle;
    } rows[] = {
        {"316", LW_UNIT_MISSING, LW_UNIT_MISSING},         {"90 deg", LW_WRONG_KIND, LW_OK},
        {"90 mm", LW_OK, LW_WRONG_KIND},                   {"\xff mm", LW_TEXT_NOT_UTF8, LW_TEXT_NOT_UTF8},
        {"90 mm\xc3", LW_TEXT_NOT_UTF8, LW_TEXT_NOT_UTF8}, {"1,500 mm", LW_NUMBER_AMBIGUOUS, LW_NUMBER_AMBIGUOUS},
        {"", LW_NOT_A_NUMBER, LW_NOT_A_NUMBER},
    };
    lw_draft *draft = sample_draft();
    lw_tube *tube = NULL;
    lw_nut *nut = NULL;
    lw_end *end = NULL;
    size_t i;
    for (i = 0; i < sizeof rows / sizeof rows[0]; i += 1) {
        lw_length length = {7.0};
        lw_angle angle = {7.0};
        EXPECT(rows[i].length, lw_length_read(rows[i].text, &length));
        EXPECT(rows[i].angle, lw_angle_read(rows[i].text, &angle));
        CHECK(length.mm == (rows[i].length == LW_OK ? 90.0 : 7.0));
        CHECK(angle.deg == (rows[i].angle == LW_OK ? 90.0 : 7.0));
    }
    {
        lw_length value = {7.0};
        lw_length plus_minus = {7.0};
        lw_angle rotation = {7.0};
        EXPECT(LW_UNIT_MISSING, lw_rotation_read("90", &rotation));
        EXPECT(LW_WRONG_KIND, lw_rotation_read("90 mm", &rotation));
        EXPECT(LW_WRONG_KIND, lw_rotation_read("150 deg included", &rotation));
        EXPECT(LW_OUT_OF_RANGE, lw_rotation_read("13 o'clock", &rotation));
        EXPECT(LW_WRONG_KIND, lw_angle_read("3 o'clock", &rotation));
        EXPECT(LW_UNREADABLE, lw_tolerance_read("9.45 mm", &value, &plus_minus));
        EXPECT(LW_UNIT_MISSING, lw_tolerance_read("9.45 +- 0.05 mm", &value, &plus_minus));
        EXPECT(LW_OUT_OF_RANGE, lw_tolerance_read("9.45 mm +- -0.05 mm", &value, &plus_minus));
        EXPECT(LW_TEXT_NOT_UTF8, lw_tolerance_read("9.45 mm \xb1 0.05 mm", &value, &plus_minus));
        CHECK(value.mm == 7.0 && plus_minus.mm == 7.0 && rotation.deg == 7.0);
    }
    EXPECT(LW_UNKNOWN_NAME, lw_tube_new(lw_mm(4.75), lw_mm(0.7), "cheese", &tube));
    EXPECT(LW_OUT_OF_RANGE, lw_tube_new(lw_mm(4.75), lw_mm(2.375), "copper-nickel", &tube));
    EXPECT(LW_THREAD_AMBIGUOUS, lw_nut_new("M10", lw_mm(17.0), lw_mm(5.0), "coned", &nut));
    EXPECT(LW_HEX_NOT_THREAD, lw_nut_new("11 mm", lw_mm(17.0), lw_mm(5.0), "coned", &nut));
    EXPECT(LW_UNKNOWN_NAME, lw_nut_new("M10x1", lw_mm(17.0), lw_mm(5.0), "red", &nut));
    OK(lw_nut_new("unknown", lw_mm(17.0), lw_mm(5.0), "unknown", &nut));
    EXPECT(LW_SINGLE_45_REFUSED, lw_end_new(nut, "single-45", &end));
    EXPECT(LW_UNKNOWN_NAME, lw_end_new(nut, "triple", &end));
    OK(lw_end_new(nut, "bubble", &end));
    EXPECT(LW_UNKNOWN_NAME, lw_end_set_port(end, "tee", "unknown", "green"));
    EXPECT(LW_TEXT_NOT_UTF8, lw_end_set_port(end, "\xfe", "unknown", "unknown"));
    EXPECT(LW_TEXT_NOT_UTF8, lw_end_add_loaded(end, "\xfe", ""));
    EXPECT(LW_TEXT_NOT_UTF8, lw_end_add_loaded(end, "boot", "\xfe"));
    EXPECT(LW_UNKNOWN_NAME, lw_draft_set(draft, "colour", "blue"));
    EXPECT(LW_TEXT_NOT_UTF8, lw_draft_set(draft, "od", "\x80"));
    CHECK(tube == NULL);
    lw_end_free(end);
    lw_nut_free(nut);
    lw_draft_free(draft);
}

static void buffers(void) {
    char text[8] = "kept";
    size_t need = 99;
    EXPECT(LW_SPACE_TOO_SMALL, lw_thread_read("M 10 x 1,0", NULL, 0, &need));
    CHECK(need == sizeof "M10x1");
    need = 99;
    EXPECT(LW_SPACE_TOO_SMALL, lw_thread_read("M 10 x 1,0", text, sizeof "M10x1" - 1, &need));
    CHECK(need == sizeof "M10x1" && strcmp(text, "kept") == 0);
    OK(lw_thread_read("M 10 x 1,0", text, sizeof "M10x1", &need));
    CHECK(need == sizeof "M10x1" && strcmp(text, "M10x1") == 0);
    EXPECT(LW_UNREADABLE, lw_thread_read("screw", text, sizeof text, &need));
    CHECK(need == 0 && strcmp(text, "M10x1") == 0);
}

static void last_error(void) {
    char text[256];
    char again[256];
    size_t need = 0;
    int32_t code = -1;
    lw_length length = {7.0};
    lw_problems *problems = NULL;
    EXPECT(LW_UNIT_MISSING, lw_length_read("316", &length));
    EXPECT(LW_SPACE_TOO_SMALL, lw_last_error_text(NULL, 0, &need));
    OK(lw_last_error_text(text, sizeof text, &need));
    CHECK(need == strlen(text) + 1 && strstr(text, "3/16 in") != NULL);
    OK(lw_length_read("90 mm", &length));
    OK(lw_last_error_text(again, sizeof again, &need));
    CHECK(strcmp(text, again) == 0);
    OK(lw_last_error_code(&code));
    CHECK(code == LW_UNIT_MISSING);
    OK(lw_last_error_problem(&problems));
    OK(lw_problems_code(problems, 0, &code));
    CHECK(code == LW_UNIT_MISSING);
    EXPECT(LW_WRONG_KIND, lw_problems_got_length(problems, 0, &length));
    OK(lw_problems_got_text(problems, 0, text, sizeof text, &need));
    CHECK(strcmp(text, "316") == 0);
    EXPECT(LW_NOT_KNOWN, lw_problems_lifted_by(problems, 0, text, sizeof text, &need));
    EXPECT(LW_NOT_KNOWN, lw_problems_lifted_why(problems, 0, text, sizeof text, &need));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_problems_code(problems, 1, &code));
    lw_problems_free(problems);
    EXPECT(LW_UNKNOWN_NAME, lw_code_name(LW_OK, text, sizeof text, &need));
    EXPECT(LW_UNKNOWN_NAME, lw_code_level(-1, text, sizeof text, &need));
    EXPECT(LW_UNKNOWN_NAME, lw_code_meaning(65536 + LW_UNIT_MISSING, text, sizeof text, &need));
}

static void structs(void) {
    lw_flare_tool tool = {0, "bubble", {13.0}, {4.0}, {2.0}, {3.0}};
    lw_bench *bench = sample_bench();
    EXPECT(LW_STRUCT_SIZE, lw_bench_add_flare_tool(bench, &tool));
    tool.size = sizeof tool - 1;
    EXPECT(LW_STRUCT_SIZE, lw_bench_add_flare_tool(bench, &tool));
    tool.size = sizeof tool;
    tool.flare = NULL;
    EXPECT(LW_NULL_ARGUMENT, lw_bench_add_flare_tool(bench, &tool));
    tool.flare = "double-45";
    EXPECT(LW_FIELDS_CONFLICT, lw_bench_add_flare_tool(bench, &tool));
    tool.flare = "bubble";
    tool.clamp = lw_unknown_length();
    EXPECT(LW_NOT_A_NUMBER, lw_bench_add_flare_tool(bench, &tool));
    tool.clamp = lw_mm(13.0);
    tool.net_shortening = lw_unknown_length();
    tool.cut_spare = lw_unknown_length();
    OK(lw_bench_add_flare_tool(bench, &tool));
    lw_bench_free(bench);
}

static void lists(void) {
    const lw_length lengths[3] = {{90.0}, {400.0}, {120.0}};
    const lw_angle angles[2] = {{45.0}, {60.0}};
    const lw_angle larger[2] = {{46.0}, {62.0}};
    const lw_angle half_turn[1] = {{180.0}};
    const lw_length radii[1] = {{14.3}};
    lw_path *path = NULL;
    lw_path *other = NULL;
    lw_springback *springback = NULL;
    lw_length length = {7.0};
    lw_angle angle = {7.0};
    double xyz_mm[12] = {7.0};
    size_t need = 99;
    EXPECT(LW_COUNT_MISMATCH, lw_path_from_legs(lengths, 2, angles, 2, angles, 1, radii, 1, &path));
    EXPECT(LW_COUNT_MISMATCH, lw_path_from_legs(lengths, 3, angles, 2, NULL, 0, radii, 1, &path));
    EXPECT(LW_OUT_OF_RANGE, lw_path_from_legs(lengths, SIZE_MAX, angles, 2, angles, 1, radii, 1, &path));
    EXPECT(LW_NO_CORNER, lw_path_from_legs(lengths, 2, half_turn, 1, NULL, 0, radii, 1, &path));
    EXPECT(LW_PATH_DEGENERATE, lw_path_from_vertices(NULL, 0, NULL, 0, &path));
    CHECK(path == NULL);
    OK(lw_path_from_straights(lengths, 2, half_turn, 1, NULL, 0, radii, 1, &other));
    EXPECT(LW_NO_CORNER, lw_path_leg(other, 0, &length));
    EXPECT(LW_NO_CORNER, lw_path_total_gain(other, &length));
    EXPECT(LW_NO_CORNER, lw_path_vertices_mm(other, xyz_mm, 4, &need));
    CHECK(need == 0);
    OK(lw_path_from_legs(lengths, 3, angles, 2, angles, 1, radii, 1, &path));
    EXPECT(LW_SPACE_TOO_SMALL, lw_path_vertices_mm(path, xyz_mm, 3, &need));
    CHECK(need == 4 && xyz_mm[0] == 7.0);
    OK(lw_path_vertices_mm(path, xyz_mm, 4, &need));
    CHECK(need == 4 && xyz_mm[0] == 0.0 && xyz_mm[3] > 89.9 && xyz_mm[3] < 90.1);
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_path_straight(path, 3, &length));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_path_leg(path, SIZE_MAX, &length));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_path_angle(path, 2, &angle));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_path_radius(path, 2, &length));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_path_rotation(path, 2, &angle));
    EXPECT(LW_NOT_KNOWN, lw_path_rotation(path, 0, &angle));
    EXPECT(LW_TRIALS_UNUSABLE, lw_springback_from_trials(NULL, NULL, 0, &springback));
    EXPECT(LW_TRIALS_UNUSABLE, lw_springback_from_trials(angles, larger, 2, &springback));
    CHECK(length.mm == 7.0 && angle.deg == 7.0);
    lw_path_free(path);
    lw_path_free(other);
}

static void plans(void) {
    lw_draft *draft = sample_draft();
    lw_draft *empty = NULL;
    lw_bench *bench = NULL;
    lw_line *line = NULL;
    lw_plan *plan = NULL;
    lw_plan *none = NULL;
    lw_problems *problems = NULL;
    lw_plan_options *options = NULL;
    lw_sized *sized = NULL;
    lw_notation notation = {sizeof notation, 0, 0};
    const lw_draft *rows[2];
    char text[256];
    size_t need = 99;
    lw_length length = {7.0};
    lw_length other = {7.0};
    lw_angle angle = {7.0};
    int32_t flag = 7;
    OK(lw_draft_new(&empty));
    OK(lw_draft_check(empty, &line, &problems));
    CHECK(line == NULL);
    lw_problems_free(problems);
    OK(lw_draft_check(draft, &line, &problems));
    CHECK(line != NULL);
    lw_problems_free(problems);
    /* A bench that knows nothing: what rests on it is not known, and never a number. */
    OK(lw_bench_new(lw_mm(14.3), lw_mm(20.0), &bench));
    OK(lw_plan_new(line, bench, NULL, &plan));
    OK(lw_plan_is_draft(plan, &flag));
    CHECK(flag == 1);
    EXPECT(LW_NOT_KNOWN, lw_plan_cut_length(plan, &length));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_plan_cut_term_text(plan, 0, text, sizeof text, &need));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_plan_cut_term_length(plan, 0, &length));
    EXPECT(LW_NOT_KNOWN, lw_plan_bend_setting(plan, 0, &angle));
    EXPECT(LW_NOT_KNOWN, lw_plan_bend_from_raw_end(plan, 0, &length));
    EXPECT(LW_NOT_KNOWN, lw_plan_end_minimum(plan, LW_A, LW_FLARE_AFTER, &length, &other));
    EXPECT(LW_OUT_OF_RANGE, lw_plan_end_minimum(plan, 2, LW_FLARE_AFTER, &length, &other));
    EXPECT(LW_OUT_OF_RANGE, lw_plan_end_minimum(plan, LW_B, -1, &length, &other));
    EXPECT(LW_OUT_OF_RANGE, lw_plan_end_straight(plan, -1, &length));
    EXPECT(LW_OUT_OF_RANGE, lw_plan_end_order(plan, 2, text, sizeof text, &need));
    OK(lw_plan_end_minimum_term_count(plan, LW_A, LW_FLARE_AFTER, &need));
    CHECK(need == 0);
    EXPECT(LW_OUT_OF_RANGE, lw_plan_end_minimum_term_count(plan, 2, LW_FLARE_AFTER, &need));
    EXPECT(LW_OUT_OF_RANGE, lw_plan_end_minimum_term_text(plan, LW_A, 3, 0, text, sizeof text, &need));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_plan_end_minimum_term_length(plan, LW_A, LW_FLARE_AFTER, 0, &length));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_plan_bend_from_last_bend(plan, 2, &length));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_plan_bend_making(plan, 2, text, sizeof text, &need));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_plan_check_bend(plan, 1, &need));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_plan_tape_check(plan, 1, &length, &other));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_plan_tape_check_from(plan, 1, text, sizeof text, &need));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_plan_turn_check_reading(plan, 1, &angle));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_plan_turn_check_words(plan, SIZE_MAX, text, sizeof text, &need));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_plan_turn_check_clock(plan, 1, text, sizeof text, &need));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_plan_loading_side(plan, 99, &flag));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_clip_rule(99, &length, &other));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_clip_rule_source(99, text, sizeof text, &need));
    EXPECT(LW_NOT_KNOWN, lw_plan_explain(plan, "cut length", text, sizeof text, &need));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_plan_bend_mark(plan, 2, &length));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_plan_step_text(plan, SIZE_MAX, text, sizeof text, &need));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_plan_assumption_text(plan, 99, text, sizeof text, &need));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_draft_field_name(999, text, sizeof text, &need));
    CHECK(length.mm == 7.0 && other.mm == 7.0 && angle.deg == 7.0);
    OK(lw_plan_options_new(&options));
    EXPECT(LW_OUT_OF_RANGE, lw_plan_options_set_trim_end(options, 2));
    rows[0] = empty;
    rows[1] = draft;
    OK(lw_size_lines(rows, 2, bench, options, &sized));
    EXPECT(LW_NOT_KNOWN, lw_sized_plan(sized, 0, &none));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_sized_plan(sized, 2, &none));
    CHECK(none == NULL);
    lw_sized_free(sized);
    sized = NULL;
    notation.size -= 1;
    EXPECT(LW_STRUCT_SIZE, lw_size_lines_in(rows, 2, bench, options, &notation, &sized));
    CHECK(sized == NULL);
    OK(lw_size_lines(NULL, 0, bench, NULL, &sized));
    OK(lw_sized_count(sized, &need));
    CHECK(need == 0);
    lw_sized_free(sized);
    lw_plan_options_free(options);
    lw_plan_free(plan);
    lw_bench_free(bench);
    lw_line_free(line);
    lw_draft_free(empty);
    lw_draft_free(draft);
}

int main(void) {
    numbers();
    more_numbers();
    texts();
    buffers();
    last_error();
    structs();
    lists();
    plans();
    return verdict("bad");
}
