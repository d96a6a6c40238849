/* Operations about springback from mechanics and from trials, records, and test pieces. */
#ifndef CASES_SPRINGBACK_H
#define CASES_SPRINGBACK_H

#include "cases.h"

/* A figure that may be not known. */
static lw_status put_if(const char *key, lw_status status, double number) {
    put("%s\t", key);
    TRY(put_item(0, status, number));
    put("\n");
    return LW_OK;
}

/* Two ends of an interval, or `unknown`. */
static lw_status put_ends(const char *key, lw_status status, double low, double high) {
    put("%s\t", key);
    TRY(put_item(0, status, low));
    if (status == LW_OK) {
        TRY(put_item(1, status, high));
    }
    put("\n");
    return LW_OK;
}

static double number(const char *key) {
    return strtod(value(key), NULL);
}

/* What a case gives of a metal of one's own, set in the metal. */
static lw_status own_metal(lw_properties *metal) {
    const char *source = value("source");
    lw_pressure figure;
    if (has("modulus")) {
        TRY(lw_pressure_read(value("modulus"), &figure));
        TRY(lw_properties_set_modulus(metal, figure, source));
    }
    if (has("yield_strength")) {
        TRY(lw_pressure_read(value("yield_strength"), &figure));
        TRY(lw_properties_set_yield_strength(metal, figure, source));
    }
    if (has("tangent_modulus")) {
        TRY(lw_pressure_read(value("tangent_modulus"), &figure));
        TRY(lw_properties_set_tangent_modulus(metal, figure, source));
    }
    if (has("hardening_exponent")) {
        TRY(lw_pressure_read(value("strength_coefficient"), &figure));
        TRY(lw_properties_set_hardening(metal, figure, number("hardening_exponent"), source));
    }
    return LW_OK;
}

/* The tube of known metal: a material in a condition, figures of one's own, or one hardening law in parts. */
static lw_status metal_tube(lw_mechanics **tube) {
    lw_length od, wall;
    lw_pressure modulus, strength, tangent;
    TRY(lw_length_read(value("od"), &od));
    TRY(lw_length_read(value("wall"), &wall));
    if (has("material")) {
        const char *condition = has("condition") ? value("condition") : NULL;
        lw_properties *metal = NULL;
        lw_status status;
        TRY(lw_material_properties(value("material"), condition, &metal));
        status = lw_mechanics_of_metal(od, wall, metal, tube);
        lw_properties_free(metal);
        return status;
    }
    if (has("source")) {
        lw_properties *metal = NULL;
        lw_status status;
        TRY(lw_properties_new("own", &metal));
        status = own_metal(metal);
        if (status == LW_OK) {
            status = lw_mechanics_of_metal(od, wall, metal, tube);
        }
        lw_properties_free(metal);
        return status;
    }
    TRY(lw_pressure_read(value("modulus"), &modulus));
    if (has("hardening_exponent")) {
        TRY(lw_pressure_read(value("strength_coefficient"), &strength));
        return lw_mechanics_power_law(od, wall, modulus, strength, number("hardening_exponent"), tube);
    }
    TRY(lw_pressure_read(value("yield_strength"), &strength));
    if (has("tangent_modulus")) {
        TRY(lw_pressure_read(value("tangent_modulus"), &tangent));
        return lw_mechanics_bilinear(od, wall, modulus, strength, tangent, tube);
    }
    return lw_mechanics_plastic(od, wall, modulus, strength, tube);
}

static lw_status read_arm(lw_length *arm) {
    *arm = lw_mm(0.0);
    return has("arm") ? lw_length_read(value("arm"), arm) : LW_OK;
}

/* Constant part, setting and what it rests on; the springback is the caller's. */
static lw_status put_line(const lw_springback *springback, lw_angle wanted) {
    char basis[LONGEST_TEXT];
    lw_angle constant, setting;
    size_t need;
    TRY(lw_springback_constant(springback, &constant));
    TRY(lw_springback_setting(springback, wanted, &setting));
    TRY(lw_springback_basis(springback, basis, sizeof basis, &need));
    put_number("constant_deg", constant.deg);
    put_number("setting_deg", setting.deg);
    put_text("basis", basis);
    return LW_OK;
}

static lw_status put_held(const lw_held_bend *bend) {
    double moment_nmm, share;
    lw_length formed = {0.0}, arm;
    lw_springback *springback = NULL;
    lw_angle wanted;
    lw_status status;
    TRY(lw_held_bend_moment_nmm(bend, &moment_nmm));
    TRY(lw_held_bend_share(bend, &share));
    put_number("moment_nmm", moment_nmm);
    put_number("share_1", share);
    status = lw_held_bend_formed_radius(bend, &formed);
    TRY(put_if("formed_mm", status, formed.mm));
    if (!has("wanted")) {
        return LW_OK;
    }
    TRY(read_arm(&arm));
    TRY(lw_held_bend_springback(bend, arm, &springback));
    status = lw_angle_read(value("wanted"), &wanted);
    if (status == LW_OK) {
        status = put_line(springback, wanted);
    }
    lw_springback_free(springback);
    return status;
}

static lw_status held_bend(void) {
    lw_mechanics *tube = NULL;
    lw_held_bend *bend = NULL;
    lw_length radius;
    lw_status status;
    TRY(metal_tube(&tube));
    status = lw_length_read(value("radius"), &radius);
    if (status == LW_OK) {
        status = lw_mechanics_bend(tube, radius, &bend);
    }
    if (status == LW_OK) {
        status = put_held(bend);
    }
    lw_held_bend_free(bend);
    lw_mechanics_free(tube);
    return status;
}

static lw_status put_range(const lw_mechanics *tube) {
    lw_length radius, arm;
    lw_angle wanted, least, most;
    TRY(lw_length_read(value("radius"), &radius));
    TRY(read_arm(&arm));
    TRY(lw_angle_read(value("wanted"), &wanted));
    TRY(lw_mechanics_setting_range(tube, radius, arm, wanted, number("strength_scatter"), number("modulus_scatter"),
                                   &least, &most));
    put_number("least_deg", least.deg);
    put_number("most_deg", most.deg);
    return LW_OK;
}

static lw_status put_mechanics_prior(const lw_mechanics *tube) {
    lw_length radius, arm;
    lw_angle scatter;
    lw_prior prior;
    TRY(lw_length_read(value("radius"), &radius));
    TRY(read_arm(&arm));
    TRY(lw_angle_read(value("bend_scatter"), &scatter));
    prior.size = sizeof prior;
    TRY(lw_mechanics_prior(tube, radius, arm, number("strength_scatter"), number("modulus_scatter"), scatter,
                           (size_t)number("worth"), &prior));
    put("constants_deg\t%.17g;%.17g\n", prior.constant.deg, prior.constant_spread.deg);
    put("proportionals_1\t%.17g;%.17g\n", prior.proportional, prior.proportional_spread);
    put_number("correlation_1", prior.correlation);
    put_number("scatter_deg", prior.scatter.deg);
    put("worth\t%lu\n", (unsigned long)prior.worth);
    return LW_OK;
}

static lw_status put_groove(const lw_mechanics *tube) {
    lw_length groove, grip, as_formed;
    lw_bench *bench = NULL;
    lw_status status;
    TRY(lw_length_read(value("groove"), &groove));
    TRY(lw_length_read(value("grip"), &grip));
    TRY(lw_bench_of_groove(groove, grip, tube, &bench));
    status = lw_bench_as_formed(bench, &as_formed);
    lw_bench_free(bench);
    TRY(status);
    put_number("as_formed_mm", as_formed.mm);
    return LW_OK;
}

static lw_status with_metal_tube(lw_status (*figures)(const lw_mechanics *tube)) {
    lw_mechanics *tube = NULL;
    lw_status status;
    TRY(metal_tube(&tube));
    status = figures(tube);
    lw_mechanics_free(tube);
    return status;
}

static lw_status setting_range(void) {
    return with_metal_tube(put_range);
}

static lw_status mechanics_prior(void) {
    return with_metal_tube(put_mechanics_prior);
}

static lw_status former_of_groove(void) {
    return with_metal_tube(put_groove);
}

static lw_status read_trials(lw_angle *set, lw_angle *got, size_t *count) {
    const char *rest = value("trials");
    char trial[LONGEST_TEXT], text[LONGEST_TEXT];
    for (*count = 0; next(&rest, *count, trial); *count += 1) {
        const char *second = part(trial, '>', text);
        TRY(lw_angle_read(text, &set[*count]));
        TRY(lw_angle_read(second == NULL ? "" : second, &got[*count]));
    }
    return LW_OK;
}

static lw_status make_fit(lw_trial_fit **fit) {
    static lw_angle set[MOST_ITEMS], got[MOST_ITEMS], belief[MOST_ITEMS];
    const char *second;
    lw_prior prior;
    size_t count, two;
    TRY(read_trials(set, got, &count));
    if (!has("prior.worth")) {
        return lw_trial_fit_new(set, got, count, fit);
    }
    TRY(read_angles("prior.constant", belief, &two));
    second = strchr(value("prior.proportional"), ';');
    prior.size = sizeof prior;
    prior.constant = belief[0];
    prior.constant_spread = belief[1];
    prior.proportional = number("prior.proportional");
    prior.proportional_spread = second == NULL ? 0.0 : strtod(second + 1, NULL);
    prior.correlation = number("prior.correlation");
    TRY(lw_angle_read(value("prior.scatter"), &prior.scatter));
    prior.worth = (size_t)number("prior.worth");
    return lw_trial_fit_with_prior(&prior, set, got, count, fit);
}

static lw_status put_intervals(const lw_trial_fit *fit, lw_angle wanted, lw_angle setting) {
    const double chance = number("chance");
    lw_angle scatter = {0.0}, error = {0.0}, low = {0.0}, high = {0.0}, next_bend = {0.0};
    double share = 0.0, least = 0.0, most = 0.0;
    lw_status status = lw_trial_fit_reading(fit, &next_bend);
    TRY(put_if("reading_deg", status, next_bend.deg));
    status = lw_trial_fit_scatter(fit, &scatter);
    TRY(put_if("scatter_deg", status, scatter.deg));
    status = lw_trial_fit_standard_errors(fit, &error, &share);
    TRY(put_if("constant_error_deg", status, error.deg));
    TRY(put_if("proportional_error_1", status, share));
    status = lw_trial_fit_constant_interval(fit, chance, &low, &high);
    TRY(put_ends("constant_interval_deg", status, low.deg, high.deg));
    status = lw_trial_fit_proportional_interval(fit, chance, &least, &most);
    TRY(put_ends("proportional_interval_1", status, least, most));
    status = lw_trial_fit_setting_interval(fit, wanted, chance, &low, &high);
    TRY(put_ends("setting_interval_deg", status, low.deg, high.deg));
    status = lw_trial_fit_next_bend(fit, setting, chance, &next_bend);
    return put_if("next_bend_deg", status, next_bend.deg);
}

static lw_status put_fit(const lw_trial_fit *fit, const lw_springback *springback) {
    lw_angle wanted, setting;
    double proportional, weight;
    int32_t is_bent = 0, is_contradicted = 0;
    size_t outlier, freedom;
    lw_status status;
    TRY(lw_angle_read(value("wanted"), &wanted));
    TRY(put_line(springback, wanted));
    TRY(lw_springback_proportional(springback, &proportional));
    put_number("proportional", proportional);
    TRY(lw_springback_setting(springback, wanted, &setting));
    TRY(put_intervals(fit, wanted, setting));
    TRY(lw_trial_fit_weight_of_trials(fit, setting, &weight));
    put_number("weight_1", weight);
    TRY(lw_trial_fit_outlier(fit, &outlier));
    if (outlier == 0) {
        put_text("outlier", "none");
    } else {
        put("outlier\t%lu\n", (unsigned long)outlier);
    }
    status = lw_trial_fit_is_bent(fit, &is_bent);
    if (status != LW_NOT_KNOWN) {
        TRY(status);
    }
    put_text("bent", status == LW_NOT_KNOWN ? "unknown" : is_bent ? "true" : "false");
    status = lw_trial_fit_is_contradicted(fit, &is_contradicted);
    if (status != LW_NOT_KNOWN) {
        TRY(status);
    }
    put_text("contradicted", status == LW_NOT_KNOWN ? "unknown" : is_contradicted ? "true" : "false");
    TRY(lw_trial_fit_degrees_of_freedom(fit, &freedom));
    put("freedom\t%lu\n", (unsigned long)freedom);
    return LW_OK;
}

static lw_status trial_fit(void) {
    lw_trial_fit *fit = NULL;
    lw_springback *springback = NULL;
    lw_status status;
    TRY(make_fit(&fit));
    status = lw_trial_fit_springback(fit, &springback);
    if (status == LW_OK) {
        status = put_fit(fit, springback);
    }
    lw_springback_free(springback);
    lw_trial_fit_free(fit);
    return status;
}

static lw_status put_advice(const lw_trial_fit *fit) {
    static lw_angle wanted[MOST_ITEMS], candidates[MOST_ITEMS], angles[MOST_ITEMS];
    lw_angle half_width, reaches;
    size_t n_wanted, n_candidates, count, i;
    int32_t is_enough;
    TRY(lw_angle_read(value("half_width"), &half_width));
    TRY(read_angles("wanted", wanted, &n_wanted));
    TRY(read_angles("candidates", candidates, &n_candidates));
    TRY(lw_trial_fit_advice(fit, wanted, n_wanted, half_width, number("chance"), candidates, n_candidates, angles,
                            MOST_ITEMS, &count, &reaches, &is_enough));
    put("angles_deg\t");
    for (i = 0; i < count; i += 1) {
        TRY(put_item(i, LW_OK, angles[i].deg));
    }
    put("\n");
    put_number("reaches_deg", reaches.deg);
    put_text("enough", is_enough ? "true" : "false");
    return LW_OK;
}

static lw_status advice(void) {
    lw_trial_fit *fit = NULL;
    lw_status status;
    TRY(make_fit(&fit));
    status = put_advice(fit);
    lw_trial_fit_free(fit);
    return status;
}

/* `od|wall|material` */
static lw_status tube_of(const char *key, lw_tube **tube) {
    char text[LONGEST_TEXT];
    lw_length od, wall;
    const char *rest = part(value(key), '|', text);
    TRY(lw_length_read(text, &od));
    rest = part(rest == NULL ? "" : rest, '|', text);
    TRY(lw_length_read(text, &wall));
    return lw_tube_new(od, wall, rest == NULL ? "" : rest, tube);
}

static lw_status put_record(const lw_calibration *record, const lw_tube *other, const lw_springback *springback) {
    char text[LONGEST_TEXT];
    lw_angle wanted, setting;
    int32_t is_for;
    size_t need;
    TRY(lw_springback_calibration_text(springback, text, sizeof text, &need));
    TRY(lw_angle_read(value("wanted"), &wanted));
    TRY(lw_springback_setting(springback, wanted, &setting));
    TRY(lw_calibration_is_for(record, other, &is_for));
    put_text("record", text);
    put_number("setting_deg", setting.deg);
    put_text("is_for", is_for ? "true" : "false");
    return LW_OK;
}

static lw_status calibration(void) {
    static lw_angle set[MOST_ITEMS], got[MOST_ITEMS];
    lw_tube *tube = NULL, *other = NULL;
    lw_calibration *record = NULL;
    lw_springback *springback = NULL;
    size_t count;
    lw_status status = tube_of("tube", &tube);
    if (status == LW_OK) {
        status = tube_of("other", &other);
    }
    if (status == LW_OK) {
        status = read_trials(set, got, &count);
    }
    if (status == LW_OK) {
        status =
            lw_calibration_new(set, got, count, tube, value("former"), value("date"), value("revision"), &record);
    }
    if (status == LW_OK) {
        status = lw_calibration_springback(record, &springback);
    }
    if (status == LW_OK) {
        status = put_record(record, other, springback);
    }
    lw_springback_free(springback);
    lw_calibration_free(record);
    lw_tube_free(other);
    lw_tube_free(tube);
    return status;
}

/* `length|legs|angles|od or empty|reading or empty`; with a diameter the legs are outer ones. */
static lw_status add_piece(lw_pieces *pieces, const char *text) {
    static lw_length legs[MOST_ITEMS];
    static lw_angle angles[MOST_ITEMS];
    char parts[5][LONGEST_TEXT], item[LONGEST_TEXT];
    size_t n_legs, n_angles, n_pieces;
    const char *rest;
    lw_length length, od, reading;
    int i;
    for (i = 0; i < 5; i += 1) {
        text = part(text == NULL ? "" : text, '|', parts[i]);
    }
    TRY(lw_length_read(parts[0], &length));
    rest = parts[1];
    for (n_legs = 0; next(&rest, n_legs, item); n_legs += 1) {
        TRY(lw_length_read(item, &legs[n_legs]));
    }
    rest = parts[2];
    for (n_angles = 0; next(&rest, n_angles, item); n_angles += 1) {
        TRY(lw_angle_read(item, &angles[n_angles]));
    }
    if (parts[3][0] == '\0') {
        TRY(lw_pieces_add(pieces, length, legs, n_legs, angles, n_angles));
    } else {
        TRY(lw_length_read(parts[3], &od));
        TRY(lw_pieces_add_outer(pieces, length, legs, n_legs, angles, n_angles, od));
    }
    if (parts[4][0] == '\0') {
        return LW_OK;
    }
    TRY(lw_length_read(parts[4], &reading));
    TRY(lw_pieces_count(pieces, &n_pieces));
    return lw_pieces_set_reading(pieces, n_pieces - 1, reading);
}

static lw_status put_piece_fit(const lw_piece_fit *fit) {
    const double chance = number("chance");
    lw_length radius, error = {0.0}, scatter = {0.0}, low = {0.0}, high = {0.0}, gain, arc = {0.0};
    double share = 0.0, least = 0.0, most = 0.0;
    lw_angle angle;
    lw_status status;
    TRY(lw_angle_read(value("angle"), &angle));
    TRY(lw_piece_fit_radius(fit, &radius));
    put_number("radius_mm", radius.mm);
    status = lw_piece_fit_radius_error(fit, &error);
    TRY(put_if("radius_error_mm", status, error.mm));
    status = lw_piece_fit_radius_interval(fit, chance, &low, &high);
    TRY(put_ends("radius_interval_mm", status, low.mm, high.mm));
    status = lw_piece_fit_scatter(fit, &scatter);
    TRY(put_if("scatter_mm", status, scatter.mm));
    TRY(lw_piece_fit_gain(fit, angle, &gain));
    put_number("gain_mm", gain.mm);
    status = lw_piece_fit_gain_interval(fit, angle, chance, &low, &high);
    TRY(put_ends("gain_interval_mm", status, low.mm, high.mm));
    status = lw_piece_fit_stretch(fit, &arc, &share);
    TRY(put_if("arc_radius_mm", status, arc.mm));
    TRY(put_if("share_1", status, share));
    status = lw_piece_fit_stretch_interval(fit, chance, &least, &most);
    return put_ends("share_interval_1", status, least, most);
}

static lw_status piece_fit(void) {
    lw_pieces *pieces = NULL;
    lw_piece_fit *fit = NULL;
    lw_status status;
    int i;
    TRY(lw_pieces_new(&pieces));
    status = LW_OK;
    for (i = 0; i < asked.count && status == LW_OK; i += 1) {
        if (strcmp(asked.keys[i], "piece") == 0) {
            status = add_piece(pieces, asked.values[i]);
        }
    }
    if (status == LW_OK) {
        status = lw_piece_fit_new(pieces, &fit);
    }
    if (status == LW_OK) {
        status = put_piece_fit(fit);
    }
    lw_piece_fit_free(fit);
    lw_pieces_free(pieces);
    return status;
}

#endif
