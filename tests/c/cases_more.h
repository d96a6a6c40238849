/* Operations that keep nothing: readers, bends, nuts, string and tape, clips, test pieces, turns; and a plan's checks. */
#ifndef CASES_MORE_H
#define CASES_MORE_H

#include "cases.h"

static lw_status read_length(void) {
    lw_length length;
    TRY(lw_length_read(value("text"), &length));
    put_number("value_mm", length.mm);
    return LW_OK;
}

static lw_status read_angle(void) {
    lw_angle angle;
    TRY(lw_angle_read(value("text"), &angle));
    put_number("value_deg", angle.deg);
    return LW_OK;
}

static lw_status read_pressure(void) {
    lw_pressure pressure;
    TRY(lw_pressure_read(value("text"), &pressure));
    put_number("value_mpa", pressure.mpa);
    return LW_OK;
}

static lw_status thread(void) {
    char text[LONGEST_TEXT];
    size_t need;
    TRY(lw_thread_read(value("text"), text, sizeof text, &need));
    put_text("designation", text);
    return LW_OK;
}

static lw_status bend(void) {
    lw_length radius, arc, tangent_length, gain;
    lw_angle angle;
    TRY(lw_length_read(value("radius"), &radius));
    TRY(lw_angle_read(value("angle"), &angle));
    TRY(lw_bend_arc(radius, angle, &arc));
    TRY(lw_bend_tangent_length(radius, angle, &tangent_length));
    TRY(lw_bend_gain(radius, angle, &gain));
    put_number("arc_mm", arc.mm);
    put_number("tangent_length_mm", tangent_length.mm);
    put_number("gain_mm", gain.mm);
    return LW_OK;
}

static lw_status read_rotation(void) {
    lw_angle rotation;
    TRY(lw_rotation_read(value("text"), &rotation));
    put_number("value_deg", rotation.deg);
    return LW_OK;
}

static lw_status tolerance(void) {
    lw_length length, plus_minus;
    TRY(lw_tolerance_read(value("text"), &length, &plus_minus));
    put_number("value_mm", length.mm);
    put_number("plus_minus_mm", plus_minus.mm);
    return LW_OK;
}

static lw_status nut(void) {
    lw_length length, bore, od, across_flats;
    lw_length found = {0.0};
    lw_nut *made_nut = NULL;
    lw_status status;
    TRY(lw_length_read(value("length"), &length));
    TRY(lw_length_read(value("bore"), &bore));
    TRY(lw_nut_new("unknown", length, bore, "unknown", &made_nut));
    status = LW_OK;
    if (has("across_flats")) {
        status = lw_length_read(value("across_flats"), &across_flats);
        if (status == LW_OK) {
            status = lw_nut_set_across_flats(made_nut, across_flats);
        }
    }
    if (status == LW_OK) {
        status = lw_length_read(value("od"), &od);
    }
    if (status == LW_OK) {
        const lw_status curve = lw_nut_tightest_curve(made_nut, od, &found);
        put("tightest_curve_mm\t");
        status = put_item(0, curve, found.mm);
        put("\n");
    }
    if (status == LW_OK) {
        const lw_status corners = lw_nut_across_corners(made_nut, &found);
        put("across_corners_mm\t");
        status = put_item(0, corners, found.mm);
        put("\n");
    }
    lw_nut_free(made_nut);
    return status;
}

static lw_status tape(void) {
    lw_tape asked_tape = {sizeof(lw_tape), {0.0}, 0, NULL, {0.0}, {0.0}, {0.0}, NULL, NULL, 0.0};
    lw_tape_cut *cut = NULL;
    lw_length length, rounded, sigma;
    int32_t floor_acts = 0;
    TRY(lw_length_read(value("measured"), &asked_tape.measured));
    asked_tape.bends = (size_t)strtoul(value("bends"), NULL, 10);
    asked_tape.laid = value("laid");
    TRY(lw_length_read(value("od"), &asked_tape.od));
    asked_tape.chance = strtod(value("chance"), NULL);
    asked_tape.total_angle = lw_unknown_angle();
    asked_tape.radius = lw_unknown_length();
    if (has("total_angle")) {
        TRY(lw_angle_read(value("total_angle"), &asked_tape.total_angle));
    }
    if (has("radius")) {
        TRY(lw_length_read(value("radius"), &asked_tape.radius));
    }
    if (has("flare_a")) {
        asked_tape.flare_a = value("flare_a");
        asked_tape.flare_b = value("flare_b");
    }
    TRY(lw_tape_cut_new(&asked_tape, NULL, &cut));
    if (lw_tape_cut_length(cut, &length) != LW_OK || lw_tape_cut_rounded(cut, &rounded) != LW_OK ||
        lw_tape_cut_sigma(cut, &sigma) != LW_OK || lw_tape_cut_floor_acts(cut, &floor_acts) != LW_OK) {
        give_up("a cut has no figures");
    }
    lw_tape_cut_free(cut);
    put_number("length_mm", length.mm);
    put_number("rounded_mm", rounded.mm);
    put_number("sigma_mm", sigma.mm);
    put_text("floor_acts", floor_acts ? "true" : "false");
    return LW_OK;
}

static lw_status clips_to_buy(void) {
    size_t buy, spares;
    TRY(lw_clips_to_buy((size_t)strtoul(value("needed"), NULL, 10), (size_t)strtoul(value("reusable"), NULL, 10), &buy,
                        &spares));
    put("buy\t%lu\nspares\t%lu\n", (unsigned long)buy, (unsigned long)spares);
    return LW_OK;
}

static lw_status flare_trial(void) {
    lw_length before, after, net;
    TRY(lw_length_read(value("before"), &before));
    TRY(lw_length_read(value("after"), &after));
    TRY(lw_flare_net_shortening(before, after, &net));
    put_number("net_shortening_mm", net.mm);
    return LW_OK;
}

static lw_status turn(void) {
    char text[LONGEST_TEXT];
    lw_angle rotation, bend, reading;
    lw_status status;
    size_t need;
    TRY(lw_rotation_read(value("rotation"), &rotation));
    TRY(lw_angle_read(value("bend"), &bend));
    status = lw_turn_words(rotation, text, sizeof text, &need);
    if (status != LW_NOT_KNOWN) {
        TRY(status);
    }
    put_text("words", status == LW_OK ? text : "none");
    TRY(lw_turn_clock(rotation, text, sizeof text, &need));
    put_text("clock", text);
    TRY(lw_turn_inclinometer(bend, rotation, 1, &reading));
    put_number("inclinometer_deg", reading.deg);
    return LW_OK;
}

/* Loading, checks and hand of a plan. */
static lw_status put_checks(const lw_plan *plan) {
    char from[LONGEST_TEXT], to[LONGEST_TEXT];
    lw_length distance, change;
    size_t count, need, leg, bend, i;
    int32_t is_up, is_forgiving;
    lw_status status;
    TRY(lw_plan_loading_count(plan, &count));
    put("loading\t");
    for (i = 0; i < count; i += 1) {
        TRY(lw_plan_loading_what(plan, i, from, sizeof from, &need));
        put("%s%s", i > 0 ? ";" : "", from);
    }
    TRY(lw_plan_is_forgiving(plan, &is_forgiving));
    put("\nforgiving\t%s\n", is_forgiving ? "true" : "false");
    TRY(lw_plan_bend_count(plan, &count));
    put("from_last_mm\t");
    for (i = 0; i < count; i += 1) {
        distance.mm = 0.0;
        status = lw_plan_bend_from_last_bend(plan, i, &distance);
        TRY(put_item(i, status, distance.mm));
    }
    TRY(lw_plan_check_count(plan, &count));
    put("\ntape_checks\t");
    for (i = 0; i < count; i += 1) {
        TRY(lw_plan_check_bend(plan, i, &bend));
        TRY(lw_plan_tape_check_from(plan, i, from, sizeof from, &need));
        TRY(lw_plan_tape_check_to(plan, i, to, sizeof to, &need));
        put("%s%lu:%s>%s", i > 0 ? ";" : "", (unsigned long)bend, from, to);
    }
    put("\ntape_changes_mm\t");
    for (i = 0; i < count; i += 1) {
        TRY(lw_plan_tape_check(plan, i, &distance, &change));
        TRY(put_item(i, LW_OK, change.mm));
    }
    status = lw_plan_hand_check(plan, &leg, &is_up);
    if (status != LW_NOT_KNOWN) {
        TRY(status);
    }
    put("\nhand\t%s\n", status != LW_OK ? "none" : is_up ? "up" : "down");
    return LW_OK;
}

#endif
