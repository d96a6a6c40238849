/* Every function with NULL for each of its pointers in turn: refused by the name of the argument, never a crash. */
#include "check.h"

/* What the functions work on. */
static lw_tube *tube;
static lw_path *path;
static lw_springback *springback;
static lw_bench *bench;
static lw_nut *nut;
static lw_end *end;
static lw_line *line;
static lw_draft *draft;
static lw_problems *problems;
static lw_plan *plan;
static lw_plan_options *plan_options;
static lw_sized *sized;

/* Where answers would go. */
static char text[64];
static size_t count;
static int32_t integer;
static double number;
static double xyz_mm[12] = {0.0, 0.0, 0.0, 100.0, 0.0, 0.0};
static lw_length length;
static lw_length shortfall;
static lw_angle angle;
static lw_pressure pressure;
static lw_side side;
static lw_tube *new_tube;
static lw_path *new_path;
static lw_springback *new_springback;
static lw_nut *new_nut;
static lw_end *new_end;
static lw_line *new_line;
static lw_problems *new_problems;
static lw_plan *new_plan;
static lw_sized *new_sized;

/* What goes in beside them. */
static const lw_length lengths[3] = {{90.0}, {400.0}, {120.0}};
static const lw_angle angles[2] = {{45.0}, {60.0}};
static const lw_angle rotations[1] = {{90.0}};
static const lw_length radii[1] = {{14.3}};
static const lw_angle set[2] = {{90.0}, {45.0}};
static const lw_angle got[2] = {{86.5}, {43.2}};
static const lw_draft *rows[2];
static lw_flare_tool tool = {sizeof(lw_flare_tool), "bubble", {13.0}, {4.0}, {2.0}, {3.0}};

static void make(void) {
    draft = sample_draft();
    bench = sample_bench();
    rows[0] = draft;
    rows[1] = draft;
    OK(lw_draft_check(draft, &line, &problems));
    lw_problems_free(problems);
    OK(lw_plan_new(line, bench, NULL, &plan));
    OK(lw_plan_problems(plan, &problems));
    OK(lw_size_lines(rows, 2, bench, NULL, &sized));
    OK(lw_tube_new(lw_mm(4.75), lw_mm(0.7), "copper-nickel", &tube));
    OK(lw_path_from_legs(lengths, 3, angles, 2, rotations, 1, radii, 1, &path));
    OK(lw_springback_from_trials(set, got, 2, &springback));
    OK(lw_nut_new("M10x1", lw_mm(17.0), lw_mm(5.0), "coned", &nut));
    OK(lw_end_new(nut, "double-45", &end));
    OK(lw_plan_options_new(&plan_options));
}

static void unmake(void) {
    lw_tube_free(tube);
    lw_path_free(path);
    lw_springback_free(springback);
    lw_bench_free(bench);
    lw_nut_free(nut);
    lw_end_free(end);
    lw_line_free(line);
    lw_draft_free(draft);
    lw_problems_free(problems);
    lw_plan_free(plan);
    lw_plan_options_free(plan_options);
    lw_sized_free(sized);
}

static void calls(void) {
    REFUSES_QUIETLY("buf", lw_last_error_text(NULL, sizeof text, &count));
    REFUSES_QUIETLY("need", lw_last_error_text(text, sizeof text, NULL));
    REFUSES_QUIETLY("code", lw_last_error_code(NULL));
    REFUSES_QUIETLY("problems", lw_last_error_problem(NULL));

    REFUSES("buf", lw_code_name(LW_NO_CORNER, NULL, sizeof text, &count));
    REFUSES("need", lw_code_name(LW_NO_CORNER, text, sizeof text, NULL));
    REFUSES("buf", lw_code_level(LW_NO_CORNER, NULL, sizeof text, &count));
    REFUSES("need", lw_code_level(LW_NO_CORNER, text, sizeof text, NULL));
    REFUSES("buf", lw_code_meaning(LW_NO_CORNER, NULL, sizeof text, &count));
    REFUSES("need", lw_code_meaning(LW_NO_CORNER, text, sizeof text, NULL));
}

static void parts(void) {
    REFUSES("text", lw_length_read(NULL, &length));
    REFUSES("length", lw_length_read("1 mm", NULL));

    REFUSES("text", lw_pressure_read(NULL, &pressure));
    REFUSES("pressure", lw_pressure_read("1 MPa", NULL));
    REFUSES("text", lw_angle_read(NULL, &angle));
    REFUSES("angle", lw_angle_read("1 deg", NULL));

    REFUSES("arc", lw_bend_arc(lw_mm(30.0), lw_deg(90.0), NULL));
    REFUSES("tangent_length", lw_bend_tangent_length(lw_mm(30.0), lw_deg(90.0), NULL));
    REFUSES("gain", lw_bend_gain(lw_mm(30.0), lw_deg(90.0), NULL));

    REFUSES("material", lw_tube_new(lw_mm(4.75), lw_mm(0.7), NULL, &new_tube));
    REFUSES("tube", lw_tube_new(lw_mm(4.75), lw_mm(0.7), "copper-nickel", NULL));
    REFUSES("tube", lw_tube_set_min_radius(NULL, lw_mm(30.0), "maker"));
    REFUSES("source", lw_tube_set_min_radius(tube, lw_mm(30.0), NULL));
    REFUSES("tube", lw_tube_od(NULL, &length));
    REFUSES("od", lw_tube_od(tube, NULL));
    REFUSES("tube", lw_tube_wall(NULL, &length));
    REFUSES("wall", lw_tube_wall(tube, NULL));
    REFUSES("tube", lw_tube_bore(NULL, &length));
    REFUSES("bore", lw_tube_bore(tube, NULL));
    REFUSES("tube", lw_tube_bore_volume_ml(NULL, lw_mm(17.0), &number));
    REFUSES("volume_ml", lw_tube_bore_volume_ml(tube, lw_mm(17.0), NULL));
    REFUSES("tube", lw_tube_mass_g(NULL, lw_mm(17.0), &number));
    REFUSES("mass_g", lw_tube_mass_g(tube, lw_mm(17.0), NULL));

    REFUSES("text", lw_thread_read(NULL, text, sizeof text, &count));
    REFUSES("buf", lw_thread_read("M10x1", NULL, sizeof text, &count));
    REFUSES("need", lw_thread_read("M10x1", text, sizeof text, NULL));

    REFUSES("springback", lw_springback_new(lw_deg(0.1), 0.038, NULL));
    REFUSES("set", lw_springback_from_trials(NULL, got, 2, &new_springback));
    REFUSES("got", lw_springback_from_trials(set, NULL, 2, &new_springback));
    REFUSES("springback", lw_springback_from_trials(set, got, 2, NULL));
    REFUSES("springback", lw_springback_setting(NULL, lw_deg(60.0), &angle));
    REFUSES("setting", lw_springback_setting(springback, lw_deg(60.0), NULL));
    REFUSES("springback", lw_springback_constant(NULL, &angle));
    REFUSES("constant", lw_springback_constant(springback, NULL));
    REFUSES("springback", lw_springback_proportional(NULL, &number));
    REFUSES("proportional", lw_springback_proportional(springback, NULL));
}

static void of_path(void) {
    REFUSES("legs", lw_path_from_legs(NULL, 3, angles, 2, rotations, 1, radii, 1, &new_path));
    REFUSES("bends", lw_path_from_legs(lengths, 3, NULL, 2, rotations, 1, radii, 1, &new_path));
    REFUSES("rotations", lw_path_from_legs(lengths, 3, angles, 2, NULL, 1, radii, 1, &new_path));
    REFUSES("radii", lw_path_from_legs(lengths, 3, angles, 2, rotations, 1, NULL, 1, &new_path));
    REFUSES("path", lw_path_from_legs(lengths, 3, angles, 2, rotations, 1, radii, 1, NULL));
    REFUSES("straights", lw_path_from_straights(NULL, 3, angles, 2, rotations, 1, radii, 1, &new_path));
    REFUSES("bends", lw_path_from_straights(lengths, 3, NULL, 2, rotations, 1, radii, 1, &new_path));
    REFUSES("rotations", lw_path_from_straights(lengths, 3, angles, 2, NULL, 1, radii, 1, &new_path));
    REFUSES("radii", lw_path_from_straights(lengths, 3, angles, 2, rotations, 1, NULL, 1, &new_path));
    REFUSES("path", lw_path_from_straights(lengths, 3, angles, 2, rotations, 1, radii, 1, NULL));
    REFUSES("xyz_mm", lw_path_from_vertices(NULL, 2, radii, 1, &new_path));
    REFUSES("radii", lw_path_from_vertices(xyz_mm, 2, NULL, 1, &new_path));
    REFUSES("path", lw_path_from_vertices(xyz_mm, 2, radii, 1, NULL));
    REFUSES("path", lw_path_bend_count(NULL, &count));
    REFUSES("count", lw_path_bend_count(path, NULL));
    REFUSES("path", lw_path_straight(NULL, 0, &length));
    REFUSES("straight", lw_path_straight(path, 0, NULL));
    REFUSES("path", lw_path_leg(NULL, 0, &length));
    REFUSES("leg", lw_path_leg(path, 0, NULL));
    REFUSES("path", lw_path_angle(NULL, 0, &angle));
    REFUSES("angle", lw_path_angle(path, 0, NULL));
    REFUSES("path", lw_path_rotation(NULL, 0, &angle));
    REFUSES("rotation", lw_path_rotation(path, 0, NULL));
    REFUSES("path", lw_path_radius(NULL, 0, &length));
    REFUSES("radius", lw_path_radius(path, 0, NULL));
    REFUSES("path", lw_path_developed_length(NULL, &length));
    REFUSES("length", lw_path_developed_length(path, NULL));
    REFUSES("path", lw_path_total_gain(NULL, &length));
    REFUSES("gain", lw_path_total_gain(path, NULL));
    REFUSES("path", lw_path_vertices_mm(NULL, xyz_mm, 4, &count));
    REFUSES("xyz_mm", lw_path_vertices_mm(path, NULL, 4, &count));
    REFUSES("need_points", lw_path_vertices_mm(path, xyz_mm, 4, NULL));
    REFUSES("path", lw_path_end_point_mm(NULL, xyz_mm));
    REFUSES("xyz_mm", lw_path_end_point_mm(path, NULL));
    REFUSES("path", lw_path_reversed(NULL, &new_path));
    REFUSES("reversed", lw_path_reversed(path, NULL));
    REFUSES("path", lw_path_mirrored(NULL, &new_path));
    REFUSES("mirrored", lw_path_mirrored(path, NULL));
}

static void of_bench(void) {
    REFUSES("bench", lw_bench_new(lw_mm(14.3), lw_mm(20.0), NULL));
    REFUSES("bench", lw_bench_add_flare_tool(NULL, &tool));
    REFUSES("tool", lw_bench_add_flare_tool(bench, NULL));
    REFUSES("bench", lw_bench_set_springback(NULL, springback));
    REFUSES("springback", lw_bench_set_springback(bench, NULL));
    REFUSES("bench", lw_bench_set_clearance(NULL, lw_mm(2.0)));
    REFUSES("bench", lw_bench_set_back_off(NULL, lw_mm(3.0)));
    REFUSES("bench", lw_bench_set_revision(NULL, "1"));
    REFUSES("revision", lw_bench_set_revision(bench, NULL));

    REFUSES("thread", lw_nut_new(NULL, lw_mm(17.0), lw_mm(5.0), "coned", &new_nut));
    REFUSES("nose", lw_nut_new("M10x1", lw_mm(17.0), lw_mm(5.0), NULL, &new_nut));
    REFUSES("nut", lw_nut_new("M10x1", lw_mm(17.0), lw_mm(5.0), "coned", NULL));

    REFUSES("nut", lw_end_new(NULL, "bubble", &new_end));
    REFUSES("flare", lw_end_new(nut, NULL, &new_end));
    REFUSES("end", lw_end_new(nut, "bubble", NULL));
    REFUSES("end", lw_end_set_port(NULL, "K8", "M10x1", "bubble"));
    REFUSES("name", lw_end_set_port(end, NULL, "M10x1", "bubble"));
    REFUSES("thread", lw_end_set_port(end, "K8", NULL, "bubble"));
    REFUSES("seat", lw_end_set_port(end, "K8", "M10x1", NULL));

    REFUSES("name", lw_line_new(NULL, tube, path, end, end, &new_line));
    REFUSES("tube", lw_line_new("K8", NULL, path, end, end, &new_line));
    REFUSES("path", lw_line_new("K8", tube, NULL, end, end, &new_line));
    REFUSES("a", lw_line_new("K8", tube, path, NULL, end, &new_line));
    REFUSES("b", lw_line_new("K8", tube, path, end, NULL, &new_line));
    REFUSES("line", lw_line_new("K8", tube, path, end, end, NULL));
}

static void of_draft(void) {
    REFUSES("draft", lw_draft_new(NULL));
    REFUSES("draft", lw_draft_set(NULL, "od", "5 mm"));
    REFUSES("field", lw_draft_set(draft, NULL, "5 mm"));
    REFUSES("typed", lw_draft_set(draft, "od", NULL));
    REFUSES("draft", lw_draft_check(NULL, &new_line, &new_problems));
    REFUSES("line", lw_draft_check(draft, NULL, &new_problems));
    REFUSES("problems", lw_draft_check(draft, &new_line, NULL));
    REFUSES("count", lw_draft_field_count(NULL));
    REFUSES("buf", lw_draft_field_name(0, NULL, sizeof text, &count));
    REFUSES("need", lw_draft_field_name(0, text, sizeof text, NULL));
    REFUSES("buf", lw_draft_field_meaning(0, NULL, sizeof text, &count));
    REFUSES("need", lw_draft_field_meaning(0, text, sizeof text, NULL));
    REFUSES("is_needed", lw_draft_field_is_needed(0, NULL));
}

static void of_problems(void) {
    REFUSES("problems", lw_problems_count(NULL, &count));
    REFUSES("count", lw_problems_count(problems, NULL));
    REFUSES("problems", lw_problems_code(NULL, 0, &integer));
    REFUSES("code", lw_problems_code(problems, 0, NULL));
    REFUSES("problems", lw_problems_level(NULL, 0, text, sizeof text, &count));
    REFUSES("buf", lw_problems_level(problems, 0, NULL, sizeof text, &count));
    REFUSES("need", lw_problems_level(problems, 0, text, sizeof text, NULL));
    REFUSES("problems", lw_problems_id(NULL, 0, text, sizeof text, &count));
    REFUSES("buf", lw_problems_id(problems, 0, NULL, sizeof text, &count));
    REFUSES("need", lw_problems_id(problems, 0, text, sizeof text, NULL));
    REFUSES("problems", lw_problems_part(NULL, 0, text, sizeof text, &count));
    REFUSES("buf", lw_problems_part(problems, 0, NULL, sizeof text, &count));
    REFUSES("need", lw_problems_part(problems, 0, text, sizeof text, NULL));
    REFUSES("problems", lw_problems_why(NULL, 0, text, sizeof text, &count));
    REFUSES("buf", lw_problems_why(problems, 0, NULL, sizeof text, &count));
    REFUSES("need", lw_problems_why(problems, 0, text, sizeof text, NULL));
    REFUSES("problems", lw_problems_fix(NULL, 0, text, sizeof text, &count));
    REFUSES("buf", lw_problems_fix(problems, 0, NULL, sizeof text, &count));
    REFUSES("need", lw_problems_fix(problems, 0, text, sizeof text, NULL));
    REFUSES("problems", lw_problems_got_text(NULL, 0, text, sizeof text, &count));
    REFUSES("buf", lw_problems_got_text(problems, 0, NULL, sizeof text, &count));
    REFUSES("need", lw_problems_got_text(problems, 0, text, sizeof text, NULL));
    REFUSES("problems", lw_problems_need_text(NULL, 0, text, sizeof text, &count));
    REFUSES("buf", lw_problems_need_text(problems, 0, NULL, sizeof text, &count));
    REFUSES("need", lw_problems_need_text(problems, 0, text, sizeof text, NULL));
    REFUSES("problems", lw_problems_got_length(NULL, 0, &length));
    REFUSES("got", lw_problems_got_length(problems, 0, NULL));
    REFUSES("problems", lw_problems_got_angle(NULL, 0, &angle));
    REFUSES("got", lw_problems_got_angle(problems, 0, NULL));
    REFUSES("problems", lw_problems_need_length(NULL, 0, &length));
    REFUSES("need", lw_problems_need_length(problems, 0, NULL));
    REFUSES("problems", lw_problems_need_angle(NULL, 0, &angle));
    REFUSES("need", lw_problems_need_angle(problems, 0, NULL));
    REFUSES("problems", lw_problems_text(NULL, 0, text, sizeof text, &count));
    REFUSES("buf", lw_problems_text(problems, 0, NULL, sizeof text, &count));
    REFUSES("need", lw_problems_text(problems, 0, text, sizeof text, NULL));
    REFUSES("problems", lw_problems_is_open(NULL, 0, &integer));
    REFUSES("is_open", lw_problems_is_open(problems, 0, NULL));
    REFUSES("problems", lw_problems_lifted_by(NULL, 0, text, sizeof text, &count));
    REFUSES("buf", lw_problems_lifted_by(problems, 0, NULL, sizeof text, &count));
    REFUSES("need", lw_problems_lifted_by(problems, 0, text, sizeof text, NULL));
    REFUSES("problems", lw_problems_lifted_why(NULL, 0, text, sizeof text, &count));
    REFUSES("buf", lw_problems_lifted_why(problems, 0, NULL, sizeof text, &count));
    REFUSES("need", lw_problems_lifted_why(problems, 0, text, sizeof text, NULL));
}

static void of_plan(void) {
    REFUSES("line", lw_plan_new(NULL, bench, plan_options, &new_plan));
    REFUSES("bench", lw_plan_new(line, NULL, plan_options, &new_plan));
    ALLOWS("options", lw_plan_new(line, bench, NULL, &new_plan));
    lw_plan_free(new_plan);
    REFUSES("plan", lw_plan_new(line, bench, plan_options, NULL));
    REFUSES("plan", lw_plan_finished_length(NULL, &length));
    REFUSES("length", lw_plan_finished_length(plan, NULL));
    REFUSES("plan", lw_plan_first(NULL, &side));
    REFUSES("side", lw_plan_first(plan, NULL));
    REFUSES("plan", lw_plan_trim_end(NULL, &side));
    REFUSES("side", lw_plan_trim_end(plan, NULL));
    REFUSES("plan", lw_plan_datum(NULL, text, sizeof text, &count));
    REFUSES("buf", lw_plan_datum(plan, NULL, sizeof text, &count));
    REFUSES("need", lw_plan_datum(plan, text, sizeof text, NULL));
    REFUSES("plan", lw_plan_is_draft(NULL, &integer));
    REFUSES("is_draft", lw_plan_is_draft(plan, NULL));
    REFUSES("plan", lw_plan_problems(NULL, &new_problems));
    REFUSES("problems", lw_plan_problems(plan, NULL));
    REFUSES("plan", lw_plan_assumption_count(NULL, &count));
    REFUSES("count", lw_plan_assumption_count(plan, NULL));
    REFUSES("plan", lw_plan_assumption_text(NULL, 0, text, sizeof text, &count));
    REFUSES("buf", lw_plan_assumption_text(plan, 0, NULL, sizeof text, &count));
    REFUSES("need", lw_plan_assumption_text(plan, 0, text, sizeof text, NULL));
    REFUSES("plan", lw_plan_card(NULL, text, sizeof text, &count));
    REFUSES("buf", lw_plan_card(plan, NULL, sizeof text, &count));
    REFUSES("need", lw_plan_card(plan, text, sizeof text, NULL));
    REFUSES("options", lw_plan_options_new(NULL));
    REFUSES("options", lw_plan_options_set_trim_end(NULL, LW_A));
    REFUSES("options", lw_plan_options_set_reserve(NULL, lw_mm(1.0)));
    REFUSES("options", lw_plan_options_accept(NULL, "X@line", "A. Fitter", "tried"));
    REFUSES("id", lw_plan_options_accept(plan_options, NULL, "A. Fitter", "tried"));
    REFUSES("who", lw_plan_options_accept(plan_options, "X@line", NULL, "tried"));
    REFUSES("why", lw_plan_options_accept(plan_options, "X@line", "A. Fitter", NULL));
    REFUSES("plan", lw_plan_cut_length(NULL, &length));
    REFUSES("length", lw_plan_cut_length(plan, NULL));
    REFUSES("plan", lw_plan_cut_term_count(NULL, &count));
    REFUSES("count", lw_plan_cut_term_count(plan, NULL));
    REFUSES("plan", lw_plan_cut_term_text(NULL, 0, text, sizeof text, &count));
    REFUSES("buf", lw_plan_cut_term_text(plan, 0, NULL, sizeof text, &count));
    REFUSES("need", lw_plan_cut_term_text(plan, 0, text, sizeof text, NULL));
    REFUSES("plan", lw_plan_cut_term_length(NULL, 0, &length));
    REFUSES("length", lw_plan_cut_term_length(plan, 0, NULL));
    REFUSES("plan", lw_plan_end_straight(NULL, LW_A, &length));
    REFUSES("straight", lw_plan_end_straight(plan, LW_A, NULL));
    REFUSES("plan", lw_plan_end_order(NULL, LW_A, text, sizeof text, &count));
    REFUSES("buf", lw_plan_end_order(plan, LW_A, NULL, sizeof text, &count));
    REFUSES("need", lw_plan_end_order(plan, LW_A, text, sizeof text, NULL));
    REFUSES("plan", lw_plan_end_minimum(NULL, LW_A, LW_FLARE_AFTER, &length, &shortfall));
    REFUSES("needed", lw_plan_end_minimum(plan, LW_A, LW_FLARE_AFTER, NULL, &shortfall));
    REFUSES("shortfall", lw_plan_end_minimum(plan, LW_A, LW_FLARE_AFTER, &length, NULL));
    REFUSES("plan", lw_plan_bend_count(NULL, &count));
    REFUSES("count", lw_plan_bend_count(plan, NULL));
    REFUSES("plan", lw_plan_bend_number(NULL, 0, &count));
    REFUSES("number", lw_plan_bend_number(plan, 0, NULL));
    REFUSES("plan", lw_plan_bend_angle(NULL, 0, &angle));
    REFUSES("angle", lw_plan_bend_angle(plan, 0, NULL));
    REFUSES("plan", lw_plan_bend_rotation(NULL, 0, &angle));
    REFUSES("rotation", lw_plan_bend_rotation(plan, 0, NULL));
    REFUSES("plan", lw_plan_bend_radius(NULL, 0, &length));
    REFUSES("radius", lw_plan_bend_radius(plan, 0, NULL));
    REFUSES("plan", lw_plan_bend_mark(NULL, 0, &length));
    REFUSES("mark", lw_plan_bend_mark(plan, 0, NULL));
    REFUSES("plan", lw_plan_bend_from_raw_end(NULL, 0, &length));
    REFUSES("from_raw_end", lw_plan_bend_from_raw_end(plan, 0, NULL));
    REFUSES("plan", lw_plan_bend_from_flare_face(NULL, 0, &length));
    REFUSES("from_flare_face", lw_plan_bend_from_flare_face(plan, 0, NULL));
    REFUSES("plan", lw_plan_bend_setting(NULL, 0, &angle));
    REFUSES("setting", lw_plan_bend_setting(plan, 0, NULL));
    REFUSES("plan", lw_plan_step_count(NULL, &count));
    REFUSES("count", lw_plan_step_count(plan, NULL));
    REFUSES("plan", lw_plan_step_kind(NULL, 0, text, sizeof text, &count));
    REFUSES("buf", lw_plan_step_kind(plan, 0, NULL, sizeof text, &count));
    REFUSES("need", lw_plan_step_kind(plan, 0, text, sizeof text, NULL));
    REFUSES("plan", lw_plan_step_text(NULL, 0, text, sizeof text, &count));
    REFUSES("buf", lw_plan_step_text(plan, 0, NULL, sizeof text, &count));
    REFUSES("need", lw_plan_step_text(plan, 0, text, sizeof text, NULL));
    REFUSES("plan", lw_plan_step_is_gate(NULL, 0, &integer));
    REFUSES("is_gate", lw_plan_step_is_gate(plan, 0, NULL));
    REFUSES("plan", lw_plan_step_is_locked(NULL, 0, &integer));
    REFUSES("is_locked", lw_plan_step_is_locked(plan, 0, NULL));
}

static void of_sized(void) {
    REFUSES("rows", lw_size_lines(NULL, 2, bench, plan_options, &new_sized));
    REFUSES("bench", lw_size_lines(rows, 2, NULL, plan_options, &new_sized));
    ALLOWS("options", lw_size_lines(rows, 2, bench, NULL, &new_sized));
    lw_sized_free(new_sized);
    REFUSES("sized", lw_size_lines(rows, 2, bench, plan_options, NULL));

    REFUSES("sized", lw_sized_count(NULL, &count));
    REFUSES("count", lw_sized_count(sized, NULL));
    REFUSES("sized", lw_sized_name(NULL, 0, text, sizeof text, &count));
    REFUSES("buf", lw_sized_name(sized, 0, NULL, sizeof text, &count));
    REFUSES("need", lw_sized_name(sized, 0, text, sizeof text, NULL));
    REFUSES("sized", lw_sized_plan(NULL, 0, &new_plan));
    REFUSES("plan", lw_sized_plan(sized, 0, NULL));
    REFUSES("sized", lw_sized_problems(NULL, 0, &new_problems));
    REFUSES("problems", lw_sized_problems(sized, 0, NULL));
}

static void frees(void) {
    lw_tube_free(NULL);
    lw_path_free(NULL);
    lw_springback_free(NULL);
    lw_bench_free(NULL);
    lw_nut_free(NULL);
    lw_end_free(NULL);
    lw_line_free(NULL);
    lw_draft_free(NULL);
    lw_problems_free(NULL);
    lw_plan_free(NULL);
    lw_plan_options_free(NULL);
    lw_sized_free(NULL);
}

int main(void) {
    const lw_draft *const holed[2] = {NULL, NULL};
    make();
    calls();
    parts();
    of_path();
    of_bench();
    of_draft();
    of_problems();
    of_plan();
    of_sized();
    REFUSES("rows[0]", lw_size_lines(holed, 2, bench, NULL, &new_sized));
    frees();
    unmake();
    return verdict("null");
}
