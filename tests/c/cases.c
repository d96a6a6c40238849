/* Answers conformance cases from the standard input; see cases.h for their form. */
#include "cases_flare.h"
#include "cases_more.h"
#include "cases_springback.h"
#include "cases_thread.h"
#include "cases_filled.h"
#include "cases_wall.h"

/* What a case makes on its way; freed when it is answered. */
static struct {
    lw_tube *tube;
    lw_path *path;
    lw_springback *springback;
    lw_bench *bench;
    lw_draft *draft;
    lw_line *line;
    lw_problems *found;
    lw_plan_options *options;
    lw_plan *plan;
    lw_problems *problems;
} made;

static lw_status tube(void) {
    lw_length od, wall, length, bore;
    lw_status status;
    double volume_ml;
    double mass_g = 0.0;
    TRY(lw_length_read(value("od"), &od));
    TRY(lw_length_read(value("wall"), &wall));
    TRY(lw_length_read(value("length"), &length));
    TRY(lw_tube_new(od, wall, value("material"), &made.tube));
    TRY(lw_tube_bore(made.tube, &bore));
    TRY(lw_tube_bore_volume_ml(made.tube, length, &volume_ml));
    put_number("bore_mm", bore.mm);
    put_number("volume_ml", volume_ml);
    status = lw_tube_mass_g(made.tube, length, &mass_g);
    put("mass_g\t");
    TRY(put_item(0, status, mass_g));
    put("\n");
    return LW_OK;
}

static lw_status make_springback(const char *key) {
    static lw_angle set[MOST_ITEMS], got[MOST_ITEMS];
    const char *rest = value(key);
    char trial[LONGEST_TEXT];
    char text[LONGEST_TEXT];
    size_t count;
    for (count = 0; next(&rest, count, trial); count += 1) {
        const char *second = part(trial, '>', text);
        TRY(lw_angle_read(text, &set[count]));
        TRY(lw_angle_read(second == NULL ? "" : second, &got[count]));
    }
    return lw_springback_from_trials(set, got, count, &made.springback);
}

static lw_status springback(void) {
    lw_angle wanted, setting, constant;
    double proportional;
    TRY(make_springback("trials"));
    TRY(lw_angle_read(value("wanted"), &wanted));
    TRY(lw_springback_setting(made.springback, wanted, &setting));
    TRY(lw_springback_constant(made.springback, &constant));
    TRY(lw_springback_proportional(made.springback, &proportional));
    put_number("setting_deg", setting.deg);
    put_number("constant_deg", constant.deg);
    put_number("proportional", proportional);
    return LW_OK;
}

/* The shape of the path: straights, angles, the rotations between bends, developed length. */
static lw_status put_path(void) {
    lw_length length = {0.0};
    lw_angle angle = {0.0};
    size_t bends, i;
    TRY(lw_path_developed_length(made.path, &length));
    put_number("developed_length_mm", length.mm);
    TRY(lw_path_bend_count(made.path, &bends));
    put("straights_mm\t");
    for (i = 0; i <= bends; i += 1) {
        const lw_status status = lw_path_straight(made.path, i, &length);
        TRY(put_item(i, status, length.mm));
    }
    put("\nangles_deg\t");
    for (i = 0; i < bends; i += 1) {
        const lw_status status = lw_path_angle(made.path, i, &angle);
        TRY(put_item(i, status, angle.deg));
    }
    put("\nrotations_deg\t");
    for (i = 1; i < bends; i += 1) {
        const lw_status status = lw_path_rotation(made.path, i, &angle);
        TRY(put_item(i - 1, status, angle.deg));
    }
    put("\n");
    return LW_OK;
}

static lw_status make_path(void) {
    static lw_length lengths[MOST_ITEMS], radii[MOST_ITEMS];
    static lw_angle bends[MOST_ITEMS], rotations[MOST_ITEMS];
    const char *way = has("legs") ? "legs" : has("outer_legs") ? "outer_legs" : "straights";
    const char *rest = value("making");
    size_t n_lengths, n_bends, n_rotations, n_radii, i;
    char text[LONGEST_TEXT];
    lw_length od;
    TRY(read_lengths(way, lengths, &n_lengths));
    TRY(read_angles("bends", bends, &n_bends));
    TRY(read_rotations("rotations", rotations, &n_rotations));
    TRY(read_lengths("radius", radii, &n_radii));
    if (has("outer_legs")) {
        TRY(lw_length_read(value("od"), &od));
        TRY(lw_path_from_outer_legs(lengths, n_lengths, bends, n_bends, rotations, n_rotations, radii, n_radii, od,
                                    &made.path));
    } else {
        TRY((has("legs") ? lw_path_from_legs : lw_path_from_straights)(
            lengths, n_lengths, bends, n_bends, rotations, n_rotations, radii, n_radii, &made.path));
    }
    for (i = 0; next(&rest, i, text); i += 1) {
        TRY(lw_path_set_making(made.path, i, text));
    }
    return LW_OK;
}

static lw_status put_three(const char *key, const double *numbers) {
    put("%s\t%.17g;%.17g;%.17g\n", key, numbers[0], numbers[1], numbers[2]);
    return LW_OK;
}

/* The rotations of another path that was made of the case's. */
static lw_status put_rotations(const char *key, lw_path *other) {
    lw_angle angle = {0.0};
    lw_status status = LW_OK;
    size_t bends, i;
    TRY(lw_path_bend_count(made.path, &bends));
    put("%s\t", key);
    for (i = 1; i < bends && status == LW_OK; i += 1) {
        const lw_status known = lw_path_rotation(other, i, &angle);
        status = put_item(i - 1, known, angle.deg);
    }
    put("\n");
    lw_path_free(other);
    return status;
}

static lw_status path(void) {
    double xyz_mm[3], high_mm[3];
    lw_path *other = NULL;
    lw_length length = {0.0};
    size_t bends, i;
    TRY(make_path());
    TRY(put_path());
    TRY(lw_path_end_point_mm(made.path, xyz_mm));
    TRY(put_three("end_point_mm", xyz_mm));
    TRY(lw_path_reversed(made.path, &other));
    TRY(put_rotations("reversed_rotations_deg", other));
    TRY(lw_path_mirrored(made.path, &other));
    TRY(put_rotations("mirrored_rotations_deg", other));
    TRY(lw_path_bend_count(made.path, &bends));
    if (lw_path_total_gain(made.path, &length) == LW_OK) {
        const double gain_mm = length.mm;
        put("legs_mm\t");
        for (i = 0; i <= bends; i += 1) {
            const lw_status status = lw_path_leg(made.path, i, &length);
            TRY(put_item(i, status, length.mm));
        }
        put("\n");
        put_number("total_gain_mm", gain_mm);
    }
    if (has("od")) {
        TRY(lw_length_read(value("od"), &length));
        TRY(lw_path_extent_mm(made.path, length, xyz_mm, high_mm));
        TRY(put_three("extent_low_mm", xyz_mm));
        TRY(put_three("extent_high_mm", high_mm));
    }
    return LW_OK;
}

static lw_status place(void) {
    double xyz_mm[3], direction[3];
    lw_length station;
    TRY(make_path());
    TRY(lw_length_read(value("station"), &station));
    TRY(lw_path_place_at(made.path, station, xyz_mm, direction));
    TRY(put_three("point_mm", xyz_mm));
    return put_three("direction_1", direction);
}

static lw_status clips(void) {
    static lw_length stations[MOST_ITEMS];
    lw_length spacing, from_end;
    size_t count, i;
    TRY(make_path());
    TRY(lw_length_read(value("spacing"), &spacing));
    TRY(lw_length_read(value("from_end"), &from_end));
    TRY(lw_clip_stations(made.path, spacing, from_end, stations, MOST_ITEMS, &count));
    put("stations_mm\t");
    for (i = 0; i < count; i += 1) {
        TRY(put_item(i, LW_OK, stations[i].mm));
    }
    put("\n");
    return LW_OK;
}

static lw_status vertices(void) {
    static lw_length radii[MOST_ITEMS];
    static double xyz_mm[3 * MOST_ITEMS];
    const char *rest = value("points");
    char point[LONGEST_TEXT];
    char text[LONGEST_TEXT];
    size_t n_points, n_radii;
    for (n_points = 0; next(&rest, n_points, point); n_points += 1) {
        const char *coordinates = point;
        int i;
        for (i = 0; i < 3; i += 1) {
            lw_length coordinate;
            coordinates = part(coordinates == NULL ? "" : coordinates, '|', text);
            TRY(lw_length_read(text, &coordinate));
            xyz_mm[3 * n_points + (size_t)i] = coordinate.mm;
        }
    }
    TRY(read_lengths("radius", radii, &n_radii));
    TRY(lw_path_from_vertices(xyz_mm, n_points, radii, n_radii, &made.path));
    return put_path();
}

/* `flare|clamp|projection|net or empty|spare or empty` */
static lw_status add_tool(const char *text) {
    char parts[5][LONGEST_TEXT];
    lw_flare_tool tool;
    int i;
    for (i = 0; i < 5; i += 1) {
        text = part(text == NULL ? "" : text, '|', parts[i]);
    }
    tool.size = sizeof tool;
    tool.flare = parts[0];
    tool.net_shortening = lw_unknown_length();
    tool.cut_spare = lw_unknown_length();
    TRY(lw_length_read(parts[1], &tool.clamp));
    TRY(lw_length_read(parts[2], &tool.projection));
    if (parts[3][0] != '\0') {
        TRY(lw_length_read(parts[3], &tool.net_shortening));
    }
    if (parts[4][0] != '\0') {
        TRY(lw_length_read(parts[4], &tool.cut_spare));
    }
    return lw_bench_add_flare_tool(made.bench, &tool);
}

static lw_status make_bench(void) {
    lw_length as_formed, grip, length;
    int i;
    TRY(lw_length_read(value("bench.former"), &as_formed));
    TRY(lw_length_read(value("bench.grip"), &grip));
    TRY(lw_bench_new(as_formed, grip, &made.bench));
    if (has("bench.trials")) {
        TRY(make_springback("bench.trials"));
        TRY(lw_bench_set_springback(made.bench, made.springback));
    }
    if (has("bench.clearance")) {
        TRY(lw_length_read(value("bench.clearance"), &length));
        TRY(lw_bench_set_clearance(made.bench, length));
    }
    if (has("bench.back_off")) {
        TRY(lw_length_read(value("bench.back_off"), &length));
        TRY(lw_bench_set_back_off(made.bench, length));
    }
    for (i = 0; i < asked.count; i += 1) {
        if (strcmp(asked.keys[i], "bench.tool") == 0) {
            TRY(add_tool(asked.values[i]));
        }
    }
    return LW_OK;
}

static lw_status make_options(void) {
    char id[LONGEST_TEXT], who[LONGEST_TEXT], why[LONGEST_TEXT];
    lw_length reserve;
    int i;
    TRY(lw_plan_options_new(&made.options));
    if (has("option.trim_end")) {
        const char *side = value("option.trim_end");
        if (strcmp(side, "A") != 0 && strcmp(side, "B") != 0) {
            give_up("a side is A or B");
        }
        TRY(lw_plan_options_set_trim_end(made.options, *side == 'A' ? LW_A : LW_B));
    }
    if (has("option.reserve")) {
        TRY(lw_length_read(value("option.reserve"), &reserve));
        TRY(lw_plan_options_set_reserve(made.options, reserve));
    }
    for (i = 0; i < asked.count; i += 1) {
        if (strcmp(asked.keys[i], "option.accept") == 0) {
            const char *rest = part(asked.values[i], '|', id);
            rest = part(rest == NULL ? "" : rest, '|', who);
            part(rest == NULL ? "" : rest, '|', why);
            TRY(lw_plan_options_accept(made.options, id, who, why));
        }
    }
    return LW_OK;
}

static lw_status put_problems(const lw_problems *problems) {
    char id[LONGEST_TEXT];
    size_t count, need, i;
    TRY(lw_problems_count(problems, &count));
    put("problems\t");
    for (i = 0; i < count; i += 1) {
        TRY(lw_problems_id(problems, i, id, sizeof id, &need));
        put("%s%s", i > 0 ? ";" : "", id);
    }
    put("\n");
    return LW_OK;
}

static const char *side_name(lw_side side) {
    return side == LW_A ? "A" : "B";
}

typedef lw_status bend_length(const lw_plan *plan, size_t index, lw_length *length);

static lw_status put_bend_lengths(const char *key, bend_length *get) {
    lw_length length = {0.0};
    size_t count, i;
    TRY(lw_plan_bend_count(made.plan, &count));
    put("%s\t", key);
    for (i = 0; i < count; i += 1) {
        const lw_status status = get(made.plan, i, &length);
        TRY(put_item(i, status, length.mm));
    }
    put("\n");
    return LW_OK;
}

static lw_status put_settings(void) {
    lw_angle setting = {0.0};
    size_t count, i;
    TRY(lw_plan_bend_count(made.plan, &count));
    put("settings_deg\t");
    for (i = 0; i < count; i += 1) {
        const lw_status status = lw_plan_bend_setting(made.plan, i, &setting);
        TRY(put_item(i, status, setting.deg));
    }
    put("\n");
    return LW_OK;
}

static lw_status put_minima(const char *key, lw_side side, int shortfalls) {
    static const lw_minimum kinds[3] = {LW_FLARE_AFTER, LW_FLARE_BEFORE, LW_ASSEMBLED};
    size_t i;
    put("%s\t", key);
    for (i = 0; i < 3; i += 1) {
        lw_length needed = {0.0};
        lw_length shortfall = {0.0};
        const lw_status status = lw_plan_end_minimum(made.plan, side, kinds[i], &needed, &shortfall);
        TRY(put_item(i, status, shortfalls ? shortfall.mm : needed.mm));
    }
    put("\n");
    return LW_OK;
}

static lw_status put_steps(void) {
    char kind[LONGEST_TEXT];
    size_t count, need, i;
    TRY(lw_plan_step_count(made.plan, &count));
    put("steps\t");
    for (i = 0; i < count; i += 1) {
        TRY(lw_plan_step_kind(made.plan, i, kind, sizeof kind, &need));
        put("%s%s", i > 0 ? ";" : "", kind);
    }
    put("\n");
    return LW_OK;
}

static lw_status put_plan(void) {
    char datum[LONGEST_TEXT];
    lw_length length = {0.0};
    lw_status status;
    lw_side side = LW_A;
    int32_t is_draft;
    size_t count;
    TRY(lw_plan_finished_length(made.plan, &length));
    put_number("finished_length_mm", length.mm);
    status = lw_plan_cut_length(made.plan, &length);
    put("cut_length_mm\t");
    TRY(put_item(0, status, length.mm));
    put("\n");
    TRY(lw_plan_first(made.plan, &side));
    put_text("first", side_name(side));
    status = lw_plan_trim_end(made.plan, &side);
    if (status != LW_NOT_KNOWN) {
        TRY(status);
    }
    put_text("trim_end", status == LW_OK ? side_name(side) : "none");
    TRY(lw_plan_datum(made.plan, datum, sizeof datum, &count));
    put_text("datum", datum);
    TRY(lw_plan_is_draft(made.plan, &is_draft));
    put_text("draft", is_draft ? "true" : "false");
    TRY(put_bend_lengths("marks_mm", lw_plan_bend_mark));
    TRY(put_bend_lengths("from_raw_mm", lw_plan_bend_from_raw_end));
    TRY(put_bend_lengths("from_flare_mm", lw_plan_bend_from_flare_face));
    TRY(put_settings());
    TRY(put_minima("minima_a_mm", LW_A, 0));
    TRY(put_minima("minima_b_mm", LW_B, 0));
    TRY(put_minima("shortfalls_a_mm", LW_A, 1));
    TRY(put_minima("shortfalls_b_mm", LW_B, 1));
    TRY(lw_plan_problems(made.plan, &made.problems));
    TRY(put_problems(made.problems));
    TRY(lw_plan_assumption_count(made.plan, &count));
    put("assumptions\t%lu\n", (unsigned long)count);
    TRY(put_steps());
    return put_checks(made.plan);
}

static lw_status plan(void) {
    static const char prefix[] = "line.";
    int i;
    TRY(lw_draft_new(&made.draft));
    for (i = 0; i < asked.count; i += 1) {
        if (strncmp(asked.keys[i], prefix, sizeof prefix - 1) == 0) {
            TRY(lw_draft_set(made.draft, asked.keys[i] + sizeof prefix - 1, asked.values[i]));
        }
    }
    TRY(make_bench());
    TRY(make_options());
    TRY(lw_draft_check(made.draft, &made.line, &made.found));
    if (made.line == NULL) {
        return put_problems(made.found);
    }
    TRY(lw_plan_new(made.line, made.bench, made.options, &made.plan));
    return put_plan();
}

static lw_status run(void) {
    static const struct {
        const char *name;
        lw_status (*run)(void);
    } operations[] = {
        {"read_length", read_length}, {"read_angle", read_angle}, {"read_pressure", read_pressure}, {"thread", thread}, {"bend", bend},
        {"tube", tube}, {"springback", springback}, {"path", path}, {"vertices", vertices}, {"plan", plan},
        {"read_rotation", read_rotation}, {"tolerance", tolerance}, {"place", place}, {"nut", nut}, {"tape", tape},
        {"flare_form", flare_form}, {"flare_size", flare_size}, {"hose_end", hose_end}, {"washers", washers},
        {"clips", clips}, {"clips_to_buy", clips_to_buy}, {"flare_trial", flare_trial}, {"turn", turn},
        {"thread_form", thread_form}, {"limits", limits}, {"mate", mate}, {"stripping", stripping},
        {"identify", identify}, {"bent_wall", bent_wall}, {"free_wrinkling", free_wrinkling},
        {"section", section}, {"ideal_cylinder", ideal_cylinder}, {"filled_tube", filled_tube}, {"span", span},
        {"hold", hold},
        {"advice", advice}, {"calibration", calibration}, {"former_of_groove", former_of_groove},
        {"held_bend", held_bend}, {"mechanics_prior", mechanics_prior}, {"piece_fit", piece_fit},
        {"setting_range", setting_range}, {"trial_fit", trial_fit},
    };
    size_t i;
    for (i = 0; i < sizeof operations / sizeof operations[0]; i += 1) {
        if (strcmp(operations[i].name, asked.operation) == 0) {
            return operations[i].run();
        }
    }
    give_up("an operation is not known");
    return LW_INTERNAL_FAULT;
}

static void forget(void) {
    lw_tube_free(made.tube);
    lw_path_free(made.path);
    lw_springback_free(made.springback);
    lw_bench_free(made.bench);
    lw_draft_free(made.draft);
    lw_line_free(made.line);
    lw_problems_free(made.found);
    lw_plan_options_free(made.options);
    lw_plan_free(made.plan);
    lw_problems_free(made.problems);
    memset(&made, 0, sizeof made);
}

int main(void) {
    static char line[LONGEST_LINE];
    while (fgets(line, sizeof line, stdin) != NULL) {
        line[strcspn(line, "\n")] = '\0';
        if (strncmp(line, "case ", 5) == 0) {
            puts(line);
        } else if (strncmp(line, "operation ", 10) == 0) {
            sprintf(asked.operation, "%.63s", line + 10);
        } else if (strcmp(line, "end") == 0) {
            finish(run());
            forget();
        } else if (*line != '\0') {
            add(line);
        }
    }
    return EXIT_SUCCESS;
}
