/* Operations about threads: form, limits, one in another, shear areas, identification. */
#ifndef CASES_THREAD_H
#define CASES_THREAD_H

#include "cases.h"

#include <stdlib.h>

/* A word, or `none` where the status says that there is none. */
static lw_status put_word(const char *key, lw_status status, const char *word) {
    if (status != LW_OK && status != LW_NOT_KNOWN) {
        return status;
    }
    put_text(key, status == LW_OK ? word : "none");
    return LW_OK;
}

static lw_status put_figure(const char *key, lw_status status, double number) {
    put("%s\t", key);
    TRY(put_item(0, status, number));
    put("\n");
    return LW_OK;
}

static lw_status answer_form(const lw_thread *of) {
    char text[LONGEST_TEXT];
    size_t need;
    lw_length length;
    lw_angle lead;
    double area = 0.0;
    lw_status status;
    TRY(lw_thread_diameter(of, &length));
    put_number("diameter_mm", length.mm);
    TRY(lw_thread_pitch(of, &length));
    put_number("pitch_mm", length.mm);
    TRY(lw_thread_height(of, &length));
    put_number("height_mm", length.mm);
    TRY(lw_thread_lead_angle(of, &lead));
    put_number("lead_deg", lead.deg);
    status = lw_thread_stress_area_mm2(of, &area);
    TRY(put_figure("stress_area_mm2", status, area));
    status = lw_thread_side(of, text, sizeof text, &need);
    TRY(put_word("side", status, text));
    status = lw_thread_class(of, text, sizeof text, &need);
    return put_word("class", status, text);
}

static lw_status thread_form(void) {
    lw_thread *of = NULL;
    lw_status status;
    TRY(lw_thread_new(value("text"), &of));
    status = answer_form(of);
    lw_thread_free(of);
    return status;
}

static lw_status answer_limits(const lw_limits *of) {
    static const struct {
        const char *key;
        lw_status (*limit)(const lw_limits *, lw_length *);
    } figures[] = {
        {"major_min_mm", lw_limits_major_min},          {"major_max_mm", lw_limits_major_max},
        {"pitch_min_mm", lw_limits_pitch_diameter_min}, {"pitch_max_mm", lw_limits_pitch_diameter_max},
        {"minor_min_mm", lw_limits_minor_min},          {"minor_max_mm", lw_limits_minor_max},
    };
    char text[LONGEST_TEXT];
    size_t need, i;
    int32_t assumed;
    lw_status status;
    for (i = 0; i < sizeof figures / sizeof figures[0]; i += 1) {
        lw_length length = {0.0};
        status = figures[i].limit(of, &length);
        TRY(put_figure(figures[i].key, status, length.mm));
    }
    status = lw_limits_class(of, text, sizeof text, &need);
    TRY(put_word("class", status, text));
    TRY(lw_limits_is_class_assumed(of, &assumed));
    put_text("assumed", assumed ? "true" : "false");
    TRY(lw_limits_checked(of, text, sizeof text, &need));
    put_text("checked", text);
    return LW_OK;
}

static lw_status limits(void) {
    lw_thread *of = NULL;
    lw_limits *found = NULL;
    lw_status status;
    TRY(lw_thread_new(value("text"), &of));
    status = lw_limits_new(of, value("side"), &found);
    if (status == LW_OK) {
        status = answer_limits(found);
    }
    lw_limits_free(found);
    lw_thread_free(of);
    return status;
}

static lw_status answer_mating(const lw_mating *of) {
    static const struct {
        const char *key;
        lw_status (*word)(const lw_mating *, char *, size_t, size_t *);
    } words[] = {{"starts", lw_mating_starts}, {"feel", lw_mating_feel}, {"level", lw_mating_level}};
    char text[LONGEST_TEXT];
    size_t need, i;
    int32_t is_loose, lookalike;
    lw_length worst, best;
    for (i = 0; i < sizeof words / sizeof words[0]; i += 1) {
        TRY(words[i].word(of, text, sizeof text, &need));
        put_text(words[i].key, text);
    }
    TRY(lw_mating_is_lookalike(of, &lookalike));
    put_text("lookalike", lookalike ? "true" : "false");
    TRY(lw_mating_overlap(of, &worst, &best));
    put_number("overlap_worst_mm", worst.mm);
    put_number("overlap_best_mm", best.mm);
    put("lengths_mm\t");
    for (is_loose = 0; is_loose < 2; is_loose += 1) {
        lw_length length = {0.0};
        const lw_status status = lw_mating_length(of, is_loose, &length);
        TRY(put_item((size_t)is_loose, status, length.mm));
    }
    put("\n");
    TRY(lw_mating_verdict(of, text, sizeof text, &need));
    put_text("verdict", text);
    return LW_OK;
}

static lw_status mate(void) {
    lw_thread *male = NULL;
    lw_thread *female = NULL;
    lw_mating *found = NULL;
    lw_status status = lw_thread_new(value("male"), &male);
    if (status == LW_OK) {
        status = lw_thread_new(value("female"), &female);
    }
    if (status == LW_OK) {
        status = lw_mating_new(male, female, &found);
    }
    if (status == LW_OK) {
        status = answer_mating(found);
    }
    lw_mating_free(found);
    lw_thread_free(female);
    lw_thread_free(male);
    return status;
}

static lw_status answer_stripping(const lw_stripping *of) {
    lw_length engaged;
    double worst, best;
    TRY(lw_stripping_engaged(of, &engaged));
    put_number("engaged_mm", engaged.mm);
    TRY(lw_stripping_external_mm2(of, &worst, &best));
    put("external_mm2\t%.17g;%.17g\n", worst, best);
    TRY(lw_stripping_internal_mm2(of, &worst, &best));
    put("internal_mm2\t%.17g;%.17g\n", worst, best);
    TRY(lw_stripping_share(of, &worst, &best));
    put("share_1\t%.17g;%.17g\n", worst, best);
    return LW_OK;
}

static lw_status stripping(void) {
    lw_thread *male = NULL;
    lw_thread *female = NULL;
    lw_stripping *found = NULL;
    lw_length wanted;
    lw_status status = lw_thread_new(value("male"), &male);
    if (status == LW_OK) {
        status = lw_thread_new(value("female"), &female);
    }
    if (status == LW_OK) {
        status = lw_length_read(value("engagement"), &wanted);
    }
    if (status == LW_OK) {
        status = lw_stripping_new(male, female, wanted, &found);
    }
    if (status == LW_OK) {
        status = answer_stripping(found);
    }
    lw_stripping_free(found);
    lw_thread_free(female);
    lw_thread_free(male);
    return status;
}

static lw_status read_measured(lw_measured *measured) {
    lw_length length, plus_minus;
    if (has("diameter")) {
        TRY(lw_tolerance_read(value("diameter"), &length, &plus_minus));
        TRY(lw_measured_set_diameter(measured, length, plus_minus));
    }
    if (has("pitches") && has("pitch_length")) {
        TRY(lw_tolerance_read(value("pitch_length"), &length, &plus_minus));
        TRY(lw_measured_set_pitches(measured, (size_t)strtoul(value("pitches"), NULL, 10), length, plus_minus));
    }
    if (has("per_inch")) {
        TRY(lw_measured_set_per_inch(measured, strtod(value("per_inch"), NULL), 0.0));
    }
    if (has("wear")) {
        TRY(lw_length_read(value("wear"), &length));
        TRY(lw_measured_set_wear(measured, length));
    }
    return LW_OK;
}

static lw_status answer_identification(const lw_identification *of) {
    char text[LONGEST_TEXT];
    size_t need, count, i;
    lw_status status;
    TRY(lw_identification_count(of, &count));
    put("candidates\t");
    for (i = 0; i < count; i += 1) {
        TRY(lw_identification_thread(of, i, text, sizeof text, &need));
        put("%s%s", i > 0 ? ";" : "", text);
    }
    put("\n");
    status = lw_identification_nearest(of, text, sizeof text, &need);
    TRY(put_word("nearest", status, text));
    status = lw_identification_next(of, text, sizeof text, &need);
    TRY(put_word("next", status, text));
    put("ten_pitches_mm\t");
    for (i = 0; i < count; i += 1) {
        lw_length length;
        TRY(lw_identification_ten_pitches(of, i, &length));
        TRY(put_item(i, LW_OK, length.mm));
    }
    put("\n");
    return LW_OK;
}

static lw_status identify(void) {
    static lw_thread *named[MOST_ITEMS];
    const char *rest = value("list");
    char text[LONGEST_TEXT];
    lw_measured *measured = NULL;
    lw_identification *found = NULL;
    size_t count = 0;
    lw_status status = lw_measured_new(value("side"), &measured);
    if (status == LW_OK) {
        status = read_measured(measured);
    }
    while (status == LW_OK && next(&rest, count, text)) {
        status = lw_thread_new(text, &named[count]);
        count += status == LW_OK;
    }
    if (status == LW_OK) {
        status = lw_identify(measured, (const lw_thread *const *)named, count, &found);
    }
    if (status == LW_OK) {
        status = answer_identification(found);
    }
    lw_identification_free(found);
    while (count > 0) {
        count -= 1;
        lw_thread_free(named[count]);
    }
    lw_measured_free(measured);
    return status;
}

#endif
