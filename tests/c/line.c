/* What a single line needs beside its plan, used as a caller uses it: and bad input to each of it. */
#include "check.h"

static lw_path *bent(double turn_deg) {
    static const lw_length straights[3] = {{90.0}, {120.0}, {80.0}};
    static const lw_angle angles[2] = {{60.0}, {90.0}};
    const lw_angle rotation = lw_deg(turn_deg);
    const lw_length radius = lw_mm(14.3);
    lw_path *path = NULL;
    OK(lw_path_from_straights(straights, 3, angles, 2, &rotation, 1, &radius, 1, &path));
    return path;
}

/* The list has one finding, and it is of this code. */
static void finds(const lw_problems *problems, int32_t code) {
    size_t count = 9;
    int32_t found = 0;
    OK(lw_problems_count(problems, &count));
    CHECK(count == 1);
    OK(lw_problems_code(problems, 0, &found));
    CHECK(found == code);
}

static void paths(void) {
    lw_path *right = bent(90.0);
    lw_path *mirror = bent(-90.0);
    lw_path *wrong = bent(80.0);
    lw_problems *problems = NULL;
    double xyz_mm[3] = {7.0, 7.0, 7.0};
    double direction[3] = {7.0, 7.0, 7.0};
    char text[64] = "kept";
    size_t need = 0, count = 9;
    OK(lw_path_compare(right, right, lw_mm(1.0), lw_deg(1.0), &problems));
    OK(lw_problems_count(problems, &count));
    CHECK(count == 0);
    lw_problems_free(problems);
    OK(lw_path_compare(right, mirror, lw_mm(1.0), lw_deg(1.0), &problems));
    finds(problems, LW_HAND_MISMATCH);
    lw_problems_free(problems);
    OK(lw_path_compare(right, wrong, lw_mm(1.0), lw_deg(1.0), &problems));
    finds(problems, LW_PATHS_DIFFER);
    lw_problems_free(problems);
    EXPECT(LW_NOT_A_NUMBER, lw_path_compare(right, wrong, lw_unknown_length(), lw_deg(1.0), &problems));
    EXPECT(LW_OUT_OF_RANGE, lw_path_compare(right, wrong, lw_mm(1.0), lw_deg(-1.0), &problems));
    EXPECT(LW_OUT_OF_RANGE, lw_path_place_at(right, lw_mm(1e9), xyz_mm, direction));
    EXPECT(LW_NOT_A_NUMBER, lw_path_place_at(right, lw_unknown_length(), xyz_mm, direction));
    EXPECT(LW_OUT_OF_RANGE, lw_path_extent_mm(right, lw_mm(1e308), xyz_mm, direction));
    CHECK(xyz_mm[0] == 7.0 && direction[2] == 7.0);
    OK(lw_path_end_place(right, xyz_mm, direction));
    CHECK(direction[0] * direction[0] + direction[1] * direction[1] + direction[2] * direction[2] < 1.000001);
    EXPECT(LW_UNKNOWN_NAME, lw_path_set_making(right, 0, "machine"));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_path_set_making(right, 2, "hand"));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_path_making(right, 2, text, sizeof text, &need));
    OK(lw_path_set_making(right, 1, "hand"));
    OK(lw_path_making(right, 1, text, sizeof text, &need));
    CHECK(strcmp(text, "hand") == 0);
    EXPECT(LW_OUT_OF_RANGE, lw_clip_stations(right, lw_mm(0.0), lw_mm(100.0), NULL, 0, &need));
    EXPECT(LW_SPACE_TOO_SMALL, lw_clip_stations(right, lw_mm(100.0), lw_mm(50.0), NULL, 0, &need));
    CHECK(need > 1);
    /* Bends from 90 to 104.97 and from 224.97 to 247.43 of 327.43 mm: of the clips at 104 and 223.43 one falls in. */
    OK(lw_clip_problems(right, lw_mm(400.0), lw_mm(104.0), &problems));
    finds(problems, LW_CLIP_IN_BEND);
    lw_problems_free(problems);
    OK(lw_clip_problems(right, lw_mm(400.0), lw_mm(50.0), &problems));
    OK(lw_problems_count(problems, &count));
    CHECK(count == 0);
    lw_problems_free(problems);
    lw_path_free(right);
    lw_path_free(mirror);
    lw_path_free(wrong);
}

static void drafts(void) {
    lw_notation notation = {sizeof notation, 0, 1};
    lw_draft *draft = sample_draft();
    lw_problems *problems = NULL;
    lw_line *line = NULL;
    lw_bench *bench = sample_bench();
    lw_plan *plan = NULL;
    lw_plan *later = NULL;
    lw_changes *changes = NULL;
    char text[2000];
    size_t need = 0, count = 9, leg = 0;
    int32_t is_up = 7, code = 0;
    OK(lw_draft_set(draft, "od", "3/16"));
    OK(lw_draft_check(draft, &line, &problems));
    CHECK(line == NULL);
    lw_problems_free(problems);
    OK(lw_draft_check_in(draft, &notation, &line, &problems));
    CHECK(line != NULL);
    OK(lw_problems_code(problems, 0, &code));
    CHECK(code == LW_ASSUMED_INCH);
    lw_problems_free(problems);
    notation.size = 3;
    EXPECT(LW_STRUCT_SIZE, lw_draft_check_in(draft, &notation, &line, &problems));
    OK(lw_plan_new(line, bench, NULL, &plan));
    OK(lw_line_set_deferred(line, "waits for a cylinder"));
    OK(lw_plan_new(line, bench, NULL, &later));
    OK(lw_plan_changes(plan, plan, &changes));
    OK(lw_changes_count(changes, &count));
    CHECK(count == 0);
    lw_changes_free(changes);
    OK(lw_plan_changes(plan, later, &changes));
    OK(lw_changes_count(changes, &count));
    CHECK(count > 0);
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_changes_what(changes, count, text, sizeof text, &need));
    OK(lw_plan_explain(plan, "finished length", text, sizeof text, &need));
    CHECK(strstr(text, "= finished length") != NULL);
    EXPECT(LW_UNKNOWN_NAME, lw_plan_explain(plan, "torque", text, sizeof text, &need));
    EXPECT(LW_NOT_KNOWN, lw_plan_explain(plan, "mark 9", text, sizeof text, &need));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_plan_turn_check_text(plan, 1, text, sizeof text, &need));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_plan_loading_what(plan, 9, text, sizeof text, &need));
    OK(lw_plan_hand_check(plan, &leg, &is_up));
    OK(lw_plan_hand_check_judge(plan, !is_up, &problems));
    finds(problems, LW_HAND_MISMATCH);
    lw_problems_free(problems);
    lw_changes_free(changes);
    lw_plan_free(plan);
    lw_plan_free(later);
    lw_line_free(line);
    lw_draft_free(draft);
    lw_bench_free(bench);
}

static void parts(void) {
    lw_tape tape = {sizeof tape, {1640.0}, 4, "string outside", {4.7625}, {0.0}, {0.0}, NULL, NULL, 0.0};
    lw_tape_cut *cut = NULL;
    lw_problems *problems = NULL;
    lw_nut *nut = NULL;
    lw_length length = {7.0};
    lw_angle angle = {7.0};
    char text[300];
    double chance = 7.0;
    size_t need = 0, count = 0;
    OK(lw_flare_slip(lw_mm(2.4), lw_mm(2.0), &problems));
    finds(problems, LW_FLARE_SLIPPED);
    lw_problems_free(problems);
    OK(lw_flare_slip(lw_mm(2.4), lw_mm(2.4), &problems));
    OK(lw_problems_count(problems, &count));
    CHECK(count == 0);
    lw_problems_free(problems);
    EXPECT(LW_NOT_A_NUMBER, lw_flare_slip(lw_unknown_length(), lw_mm(2.0), &problems));
    EXPECT(LW_OUT_OF_RANGE, lw_flare_net_shortening(lw_mm(200.0), lw_mm(100.0), &length));
    OK(lw_nut_new("M10x1", lw_mm(17.0), lw_mm(4.7), "coned", &nut));
    EXPECT(LW_NOT_KNOWN, lw_nut_tightest_curve(nut, lw_in(3.0 / 16.0), &length));
    EXPECT(LW_NOT_KNOWN, lw_nut_across_corners(nut, &length));
    EXPECT(LW_OUT_OF_RANGE, lw_nut_set_across_flats(nut, lw_mm(-1.0)));
    EXPECT(LW_OUT_OF_RANGE, lw_nut_tightest_curve(nut, lw_mm(1e308), &length));
    EXPECT(LW_NOT_KNOWN, lw_turn_words(lw_deg(30.0), text, sizeof text, &need));
    EXPECT(LW_NOT_A_NUMBER, lw_turn_clock(lw_unknown_angle(), text, sizeof text, &need));
    EXPECT(LW_OUT_OF_RANGE, lw_turn_inclinometer(lw_deg(-1.0), lw_deg(30.0), 1, &angle));
    CHECK(length.mm == 7.0 && angle.deg == 7.0);
    tape.total_angle = lw_unknown_angle();
    tape.radius = lw_unknown_length();
    OK(lw_tape_cut_new(&tape, NULL, &cut));
    OK(lw_tape_cut_chance(cut, &chance));
    CHECK(chance == 0.95);
    OK(lw_tape_cut_assumption_count(cut, &count));
    CHECK(count >= 4);
    OK(lw_tape_cut_assumption_text(cut, 0, text, sizeof text, &need));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_tape_cut_term_text(cut, 99, text, sizeof text, &need));
    lw_tape_cut_free(cut);
    tape.chance = 2.0;
    EXPECT(LW_OUT_OF_RANGE, lw_tape_cut_new(&tape, NULL, &cut));
    tape.chance = 0.0;
    tape.laid = "";
    EXPECT(LW_METHOD_MISSING, lw_tape_cut_new(&tape, NULL, &cut));
    tape.size = 1;
    EXPECT(LW_STRUCT_SIZE, lw_tape_cut_new(&tape, NULL, &cut));
    lw_nut_free(nut);
}

/* What is read back from a text has the bits that went in; rotations and uncertainties are read as people write them. */
static void texts(void) {
    static const double numbers[] = {4.7625, 0.1, 1.0 / 3.0, 1e-300, 123456789.123456789, 0.0};
    lw_length value, plus_minus;
    lw_angle angle;
    char text[400];
    size_t need = 0, i;
    for (i = 0; i < sizeof numbers / sizeof numbers[0]; i += 1) {
        OK(lw_length_text(lw_mm(numbers[i]), text, sizeof text, &need));
        OK(lw_length_read(text, &value));
        CHECK(memcmp(&value.mm, &numbers[i], sizeof value.mm) == 0);
        OK(lw_angle_text(lw_deg(numbers[i]), text, sizeof text, &need));
        OK(lw_angle_read(text, &angle));
        CHECK(memcmp(&angle.deg, &numbers[i], sizeof angle.deg) == 0);
    }
    OK(lw_rotation_read("3 o'clock", &angle));
    CHECK(angle.deg == 90.0);
    OK(lw_rotation_read("-37.5 deg", &angle));
    CHECK(angle.deg == -37.5);
    OK(lw_tolerance_read("9.45 mm +- 0.05 mm", &value, &plus_minus));
    CHECK(value.mm == 9.45 && plus_minus.mm == 0.05);
}

/* The needs of an end are the sums of their terms. */
static void minima(const lw_plan *plan) {
    static const lw_minimum kinds[3] = {LW_FLARE_AFTER, LW_FLARE_BEFORE, LW_ASSEMBLED};
    static const size_t counts[3] = {5, 2, 2};
    size_t i, k;
    for (i = 0; i < 3; i += 1) {
        lw_length needed = {0.0}, shortfall = {0.0}, term = {0.0};
        double sum_mm = 0.0;
        char text[64] = "";
        size_t count = 0, need = 0;
        OK(lw_plan_end_minimum(plan, LW_B, kinds[i], &needed, &shortfall));
        OK(lw_plan_end_minimum_term_count(plan, LW_B, kinds[i], &count));
        CHECK(count == counts[i]);
        for (k = 0; k < count; k += 1) {
            OK(lw_plan_end_minimum_term_text(plan, LW_B, kinds[i], k, text, sizeof text, &need));
            CHECK(need > 1);
            OK(lw_plan_end_minimum_term_length(plan, LW_B, kinds[i], k, &term));
            sum_mm += term.mm;
        }
        CHECK(sum_mm == needed.mm);
        EXPECT(LW_INDEX_OUT_OF_RANGE, lw_plan_end_minimum_term_length(plan, LW_B, kinds[i], count, &term));
    }
}

/* A line from its parts, with what goes onto it, through it and round it. */
static void made_up(void) {
    lw_path *path = bent(90.0);
    lw_bench *bench = sample_bench();
    lw_tube *tube = NULL;
    lw_nut *nut = NULL;
    lw_end *a = NULL;
    lw_end *b = NULL;
    lw_line *line = NULL;
    lw_plan *plan = NULL;
    lw_problems *problems = NULL;
    lw_length length = {7.0};
    lw_angle angle = {7.0};
    char text[400];
    size_t need = 0, count = 0, i;
    int32_t code = 0, holes = 0, odd = 0, is_forgiving = 7;
    lw_side side = LW_B;
    OK(lw_tube_new(lw_in(3.0 / 16.0), lw_in(0.028), "low-carbon steel", &tube));
    OK(lw_nut_new("M10x1", lw_mm(17.0), lw_mm(5.0), "coned", &nut));
    OK(lw_nut_set_across_flats(nut, lw_mm(11.0)));
    OK(lw_nut_across_corners(nut, &length));
    CHECK(length.mm > 12.70 && length.mm < 12.71);
    OK(lw_end_new(nut, "double-45", &a));
    OK(lw_end_new(nut, "double-45", &b));
    OK(lw_end_add_loaded(a, "rubber boot", "lip to end A"));
    OK(lw_end_add_hole(a, lw_mm(9.0)));
    OK(lw_path_set_making(path, 1, "hand"));
    OK(lw_line_new("K9", tube, path, a, b, &line));
    OK(lw_plan_new(line, bench, NULL, &plan));
    OK(lw_plan_is_forgiving(plan, &is_forgiving));
    CHECK(is_forgiving == 1);
    /* What goes on first stands first: the boot, then the nut. */
    OK(lw_plan_loading_count(plan, &count));
    CHECK(count == 3);
    for (i = 0; i < count; i += 1) {
        OK(lw_plan_loading_what(plan, i, text, sizeof text, &need));
        if (strcmp(text, "rubber boot") == 0) {
            break;
        }
    }
    OK(lw_plan_loading_facing(plan, i, text, sizeof text, &need));
    CHECK(strcmp(text, "lip to end A") == 0);
    OK(lw_plan_loading_side(plan, i, &side));
    CHECK(side == LW_A);
    OK(lw_plan_loading_what(plan, i + 1, text, sizeof text, &need));
    CHECK(strncmp(text, "nut A", 5) == 0);
    /* A nut of 12.7 mm over its corners does not pass a hole of 9 mm, unless its end is flared behind it. */
    OK(lw_plan_problems(plan, &problems));
    OK(lw_problems_count(problems, &count));
    for (i = 0; i < count; i += 1) {
        OK(lw_problems_code(problems, i, &code));
        holes += code == LW_HOLE_TOO_SMALL;
    }
    CHECK(holes == 1);
    lw_problems_free(problems);
    /* A bend by hand has no setting. */
    OK(lw_plan_bend_making(plan, 0, text, sizeof text, &need));
    CHECK(strcmp(text, "former") == 0);
    OK(lw_plan_bend_setting(plan, 0, &angle));
    angle.deg = 7.0;
    OK(lw_plan_bend_making(plan, 1, text, sizeof text, &need));
    CHECK(strcmp(text, "hand") == 0);
    EXPECT(LW_NOT_KNOWN, lw_plan_bend_setting(plan, 1, &angle));
    CHECK(angle.deg == 7.0);
    OK(lw_plan_check_count(plan, &count));
    CHECK(count == 1);
    OK(lw_plan_turn_check_words(plan, 0, text, sizeof text, &need));
    CHECK(strncmp(text, "quarter turn ", 13) == 0);
    OK(lw_plan_turn_check_clock(plan, 0, text, sizeof text, &need));
    CHECK(strcmp(text, "3:00") == 0 || strcmp(text, "9:00") == 0);
    minima(plan);
    lw_plan_free(plan);
    OK(lw_end_set_flared_in_place(a, 1));
    EXPECT(LW_OUT_OF_RANGE, lw_end_set_flare_diameter(a, lw_mm(1.0)));
    OK(lw_end_set_flare_diameter(a, lw_mm(30.0)));
    lw_line_free(line);
    OK(lw_line_new("K9", tube, path, a, b, &line));
    OK(lw_plan_new(line, bench, NULL, &plan));
    OK(lw_plan_problems(plan, &problems));
    OK(lw_problems_count(problems, &count));
    for (i = 0; i < count; i += 1) {
        OK(lw_problems_code(problems, i, &code));
        CHECK(code != LW_HOLE_TOO_SMALL);
        odd += code == LW_FLARE_SIZE_ODD;
    }
    /* No flare of a tube of 3/16 in is 30 mm wide. */
    CHECK(odd == 1);
    lw_problems_free(problems);
    lw_plan_free(plan);
    lw_line_free(line);
    lw_end_free(a);
    lw_end_free(b);
    lw_nut_free(nut);
    lw_tube_free(tube);
    lw_path_free(path);
    lw_bench_free(bench);
}

/* A turn that is no whole quarter has no words. */
static void other_turn(void) {
    lw_draft *draft = sample_draft();
    lw_bench *bench = sample_bench();
    lw_line *line = NULL;
    lw_plan *plan = NULL;
    lw_problems *problems = NULL;
    char text[64] = "kept";
    size_t need = 9;
    OK(lw_draft_set(draft, "rotations", "30 deg"));
    OK(lw_draft_check(draft, &line, &problems));
    OK(lw_plan_new(line, bench, NULL, &plan));
    EXPECT(LW_NOT_KNOWN, lw_plan_turn_check_words(plan, 0, text, sizeof text, &need));
    CHECK(need == 0 && strcmp(text, "kept") == 0);
    OK(lw_plan_turn_check_clock(plan, 0, text, sizeof text, &need));
    CHECK(strchr(text, ':') != NULL);
    lw_plan_free(plan);
    lw_line_free(line);
    lw_problems_free(problems);
    lw_draft_free(draft);
    lw_bench_free(bench);
}

int main(void) {
    texts();
    paths();
    drafts();
    parts();
    made_up();
    other_turn();
    return verdict("line");
}
