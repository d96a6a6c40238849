/* One thread, its limits, and one in another, used as a caller uses them, and bad input to each; the figures that the case
 * files do not reach. */
#include "thread.h"

static void names(void) {
    lw_thread *metric = read("M 10 x 1,0 - 5H6H - L - LH");
    lw_thread *unified = read("3/8-24 UNF-2A");
    lw_thread *pipe = read("Rc 1/8");
    lw_thread *plain = NULL;
    char text[64];
    size_t need = 0;
    int32_t yes = 7;
    OK(lw_thread_designation(metric, text, sizeof text, &need));
    CHECK(is(text, "M10x1-5H6H-L-LH") && need == strlen(text) + 1);
    OK(lw_thread_family(metric, text, sizeof text, &need));
    CHECK(is(text, "metric"));
    OK(lw_thread_side(metric, text, sizeof text, &need));
    CHECK(is(text, "internal"));
    OK(lw_thread_class(metric, text, sizeof text, &need));
    CHECK(is(text, "5H6H"));
    OK(lw_thread_engagement(metric, text, sizeof text, &need));
    CHECK(is(text, "L"));
    UNKNOWN_TEXT(lw_thread_series(metric, text, sizeof text, &need));
    OK(lw_thread_is_left_hand(metric, &yes));
    CHECK(yes == 1);
    OK(lw_thread_plain(metric, &plain));
    OK(lw_thread_designation(plain, text, sizeof text, &need));
    CHECK(is(text, "M10x1-LH"));
    UNKNOWN_TEXT(lw_thread_side(plain, text, sizeof text, &need));
    UNKNOWN_TEXT(lw_thread_class(plain, text, sizeof text, &need));
    UNKNOWN_TEXT(lw_thread_engagement(plain, text, sizeof text, &need));
    OK(lw_thread_is_same_size(metric, plain, &yes));
    CHECK(yes == 1);
    OK(lw_thread_is_same_size(unified, plain, &yes));
    CHECK(yes == 0);
    /* 24 threads at 3/8 in are those of the fine series. */
    OK(lw_thread_series(unified, text, sizeof text, &need));
    CHECK(is(text, "UNF"));
    OK(lw_thread_is_left_hand(unified, &yes));
    CHECK(yes == 0);
    OK(lw_thread_side(unified, text, sizeof text, &need));
    CHECK(is(text, "external"));
    OK(lw_thread_family(pipe, text, sizeof text, &need));
    CHECK(is(text, "Rc"));
    OK(lw_thread_side(pipe, text, sizeof text, &need));
    CHECK(is(text, "internal"));
    sprintf(text, "kept");
    EXPECT(LW_SPACE_TOO_SMALL, lw_thread_designation(unified, text, 4, &need));
    CHECK(is(text, "kept") && need == strlen("3/8-24 UNF-2A") + 1);
    EXPECT(LW_TEXT_NOT_UTF8, lw_thread_new("M10\xff", &plain));
    EXPECT(LW_THREAD_AMBIGUOUS, lw_thread_new("M10", &plain));
    EXPECT(LW_HEX_NOT_THREAD, lw_thread_new("10 mm", &plain));
    EXPECT(LW_THREAD_CONTRADICTION, lw_thread_new("3/8-24 UNC", &plain));
    EXPECT(LW_OUT_OF_RANGE, lw_thread_new("M10x9", &plain));
    OK(lw_thread_designation(plain, text, sizeof text, &need));
    CHECK(is(text, "M10x1-LH"));
    lw_thread_free(plain);
    lw_thread_free(pipe);
    lw_thread_free(unified);
    lw_thread_free(metric);
}

/* Figures of one thread, from printed values and from the geometry of the sharp triangle. */
static void figures(void) {
    lw_thread *metric = read("M10x1");
    lw_thread *fine = read("3/8-24");
    lw_thread *special = read("7/16-24");
    lw_thread *pipe = read("G1/8");
    lw_thread *taper = read("1/8-27 NPT");
    lw_length length = {7.0}, longest = {7.0};
    lw_angle angle = {7.0};
    char text[64];
    size_t need = 0;
    double number = 7.0;
    int i;
    OK(lw_thread_per_inch(metric, &number));
    CHECK(near(number, 25.4));
    OK(lw_thread_per_inch(pipe, &number));
    CHECK(number == 28.0);
    OK(lw_thread_half_angle(metric, &angle));
    CHECK(near(angle.deg, 30.0));
    OK(lw_thread_half_angle(pipe, &angle));
    CHECK(near(angle.deg, 27.5));
    OK(lw_thread_taper(taper, &number));
    CHECK(number == 1.0 / 16.0);
    OK(lw_thread_taper(pipe, &number));
    CHECK(number == 0.0);
    /* ISO 724 and ASME B1.20.1 print 9.350 mm and 0.36351 in. */
    OK(lw_thread_basic_pitch_diameter(metric, &length));
    CHECK(fabs(length.mm - 9.350) < 0.0006);
    OK(lw_thread_basic_pitch_diameter(taper, &length));
    CHECK(fabs(length.mm / 25.4 - 0.36351) < 0.000006);
    /* ISO 965-1, 5.6 to 11.2 mm, pitch 1: over 3 up to 9 mm. */
    OK(lw_thread_normal_engagement(metric, &length, &longest));
    CHECK(length.mm == 3.0 && longest.mm == 9.0);
    EXPECT(LW_NOT_KNOWN, lw_thread_normal_engagement(fine, &length, &longest));
    CHECK(length.mm == 3.0 && longest.mm == 9.0);
    OK(lw_thread_engagement_group(metric, lw_mm(3.0), text, sizeof text, &need));
    CHECK(is(text, "S"));
    OK(lw_thread_engagement_group(metric, lw_mm(3.1), text, sizeof text, &need));
    CHECK(is(text, "N"));
    OK(lw_thread_engagement_group(metric, lw_mm(9.0), text, sizeof text, &need));
    CHECK(is(text, "N"));
    OK(lw_thread_engagement_group(metric, lw_mm(9.1), text, sizeof text, &need));
    CHECK(is(text, "L"));
    UNKNOWN_TEXT(lw_thread_engagement_group(pipe, lw_mm(6.0), text, sizeof text, &need));
    /* ASME B1.1: the diameter for the fine series, nine pitches for special ones. */
    OK(lw_thread_basic_engagement(fine, &length));
    CHECK(near(length.mm, 9.525));
    OK(lw_thread_basic_engagement(special, &length));
    CHECK(fabs(length.mm - 9.0 * 25.4 / 24.0) < 1e-6);
    EXPECT(LW_NOT_KNOWN, lw_thread_basic_engagement(metric, &length));
    CHECK(length.mm > 9.5);
    /* Three quarters of the sharp triangle are 0.75 sqrt(3)/2 of the pitch, on both sides; the basic minor diameter
     * leaves five eighths. */
    /* 1/8-27 NPT: L1 is 0.1615 in and L2 0.2639 in by two charts. */
    OK(lw_thread_gauge_length(taper, &length));
    CHECK(fabs(length.mm - 0.1615 * 25.4) < 1e-9);
    OK(lw_thread_useful_length(taper, &length));
    CHECK(fabs(length.mm - 0.2639 * 25.4) < 0.0005 * 25.4);
    EXPECT(LW_NOT_KNOWN, lw_thread_gauge_length(metric, &length));
    EXPECT(LW_NOT_KNOWN, lw_thread_useful_length(metric, &length));
    /* The play, 0.5 mm tan 30 and half the difference of pitches of 1.0 and 1.25 mm, over that difference, in turns. */
    {
        lw_thread *coarse = read("M10x1.25");
        int32_t starts = 0;
        lw_length engaged;
        OK(lw_mate_measured(metric, lw_mm(9.5), lw_mm(8.85), lw_mm(8.4), coarse, lw_mm(10.0), lw_mm(9.35), lw_mm(8.9),
                            &starts, &length, &engaged));
        CHECK(starts == 1 && fabs(length.mm - 0.3) < 1e-12);
        CHECK(fabs(engaged.mm - (0.125 + 0.5 / sqrt(3.0)) / 0.25) < 1e-9);
        EXPECT(LW_OUT_OF_RANGE, lw_mate_measured(metric, lw_mm(9.5), lw_mm(9.6), lw_mm(8.4), coarse, lw_mm(10.0),
                                                 lw_mm(9.35), lw_mm(8.9), &starts, &length, &engaged));
        lw_thread_free(coarse);
    }
    OK(lw_thread_tap_drill(metric, 0.75, &length));
    CHECK(near(length.mm, 10.0 - 0.75 * 0.75 * sqrt(3.0)));
    OK(lw_thread_share(metric, length, &number));
    CHECK(near(number, 0.75));
    OK(lw_thread_share(metric, lw_mm(10.0 - 1.25 * sqrt(3.0) / 2.0), &number));
    CHECK(near(number, 5.0 / 6.0));
    number = 7.0;
    length.mm = 7.0;
    EXPECT(LW_NOT_KNOWN, lw_thread_tap_drill(taper, 0.75, &length));
    EXPECT(LW_NOT_KNOWN, lw_thread_share(taper, lw_mm(8.5), &number));
    EXPECT(LW_OUT_OF_RANGE, lw_thread_share(metric, lw_mm(10.1), &number));
    EXPECT(LW_OUT_OF_RANGE, lw_thread_share(metric, lw_mm(8.5), &number));
    EXPECT(LW_NOT_KNOWN, lw_thread_stress_area_mm2(pipe, &number));
    sprintf(text, "kept");
    for (i = 0; i < BADS; i += 1) {
        const double bad = BAD_NUMBERS[i];
        EXPECT(called(bad), lw_thread_tap_drill(metric, bad, &length));
        EXPECT(called(bad), lw_thread_share(metric, lw_mm(bad), &number));
        EXPECT(called(bad), lw_thread_engagement_group(metric, lw_mm(bad), text, sizeof text, &need));
    }
    CHECK(length.mm == 7.0 && number == 7.0 && is(text, "kept") && need == 0);
    lw_thread_free(taper);
    lw_thread_free(pipe);
    lw_thread_free(special);
    lw_thread_free(fine);
    lw_thread_free(metric);
}

static void limits(void) {
    lw_thread *metric = read("M10x1");
    lw_thread *fine = read("3/8-24");
    lw_limits *found = NULL;
    lw_limits *none = NULL;
    lw_length length = {7.0};
    char text[256];
    size_t need = 0;
    double usual_mm;
    int i;
    /* The largest M10x1-6g is printed as 9.974. */
    OK(lw_limits_new(metric, "male", &found));
    OK(lw_limits_side(found, text, sizeof text, &need));
    CHECK(is(text, "external"));
    OK(lw_limits_allowance(found, &length));
    CHECK(near(length.mm, 0.026));
    EXPECT(LW_NOT_KNOWN, lw_limits_rounded_root(found, &length));
    CHECK(near(length.mm, 0.026));
    OK(lw_limits_source(found, text, sizeof text, &need));
    CHECK(strncmp(text, "ISO 965-1:1998, ", 16) == 0 && is(text + strlen(text) - 6, ", seen"));
    lw_limits_free(found);
    OK(lw_limits_new(metric, "internal", &found));
    OK(lw_limits_side(found, text, sizeof text, &need));
    CHECK(is(text, "internal"));
    EXPECT(LW_NOT_KNOWN, lw_limits_allowance(found, &length));
    lw_limits_free(found);
    /* The rounded root of 3/8-24 is deeper than the flat one, 0.3288 in. */
    OK(lw_limits_new(fine, "external", &found));
    OK(lw_limits_rounded_root(found, &length));
    CHECK(length.mm > 8.0 && length.mm < 0.3288 * 25.4);
    OK(lw_limits_pitch_diameter_min(found, &length));
    usual_mm = length.mm;
    lw_limits_free(found);
    /* The tolerance grows with the length of engagement; over the usual length it is the usual one. */
    OK(lw_limits_new_over(fine, "external", lw_in(0.375), &found));
    OK(lw_limits_pitch_diameter_min(found, &length));
    CHECK(length.mm == usual_mm);
    lw_limits_free(found);
    OK(lw_limits_new_over(fine, "external", lw_in(0.75), &found));
    OK(lw_limits_pitch_diameter_min(found, &length));
    CHECK(length.mm < usual_mm);
    lw_limits_free(found);
    EXPECT(LW_NOT_KNOWN, lw_limits_new_over(metric, "external", lw_mm(9.0), &none));
    EXPECT(LW_UNKNOWN_NAME, lw_limits_new(metric, "outside", &none));
    EXPECT(LW_UNKNOWN_NAME, lw_limits_new_over(fine, "outside", lw_mm(9.0), &none));
    for (i = 0; i < BADS; i += 1) {
        EXPECT(called(BAD_NUMBERS[i]), lw_limits_new_over(fine, "external", lw_mm(BAD_NUMBERS[i]), &none));
    }
    CHECK(none == NULL);
    lw_thread_free(fine);
    lw_thread_free(metric);
}

/* 3/8-24 in M10x1: overlaps of (9.497 - 8.917) / 2 and (9.314 - 9.153) / 2 mm of 0.5413 mm. */
static void pairs(void) {
    lw_thread *nut = read("3/8-24");
    lw_thread *port = read("M10x1");
    lw_mating *wrong = NULL;
    lw_mating *right = NULL;
    lw_mating *none = NULL;
    lw_stripping *stripping = NULL;
    lw_stripping *no_stripping = NULL;
    lw_length tight = {7.0}, loose = {7.0}, worst = {7.0}, best = {7.0};
    double turns = 7.0, least = 7.0, most = 7.0, share = 7.0;
    char text[256];
    size_t need = 0;
    int32_t yes = 7;
    int i;
    OK(lw_mating_new(nut, port, &wrong));
    OK(lw_mating_new(port, port, &right));
    OK(lw_mating_male(wrong, text, sizeof text, &need));
    CHECK(is(text, "3/8-24 UNF"));
    OK(lw_mating_female(wrong, text, sizeof text, &need));
    CHECK(is(text, "M10x1"));
    OK(lw_mating_is_same(wrong, &yes));
    CHECK(yes == 0);
    OK(lw_mating_is_same(right, &yes));
    CHECK(yes == 1);
    OK(lw_mating_length(wrong, 0, &tight));
    OK(lw_mating_length(wrong, 1, &loose));
    CHECK(tight.mm > 5.0 && loose.mm > tight.mm);
    OK(lw_mating_turns(wrong, 0, &turns));
    CHECK(near(turns, tight.mm * 24.0 / 25.4));
    OK(lw_mating_turns(wrong, 1, &turns));
    CHECK(near(turns, loose.mm * 24.0 / 25.4));
    EXPECT(LW_NOT_KNOWN, lw_mating_length(right, 1, &loose));
    EXPECT(LW_NOT_KNOWN, lw_mating_turns(right, 0, &turns));
    CHECK(near(turns, loose.mm * 24.0 / 25.4));
    OK(lw_mating_share(wrong, &least, &most));
    CHECK(fabs(least - 0.0806 / 0.54127) < 0.0005 && fabs(most - 0.2900 / 0.54127) < 0.0005);
    /* Reached before it binds, times the worst share of the height. */
    OK(lw_mating_engaged_share(wrong, lw_mm(10.0), &share));
    CHECK(near(share, tight.mm / 10.0 * least));
    OK(lw_mating_engaged_share(wrong, lw_mm(5.0), &share));
    CHECK(near(share, least));
    OK(lw_mating_overlap(wrong, &worst, &best));
    CHECK(fabs(worst.mm - 0.0806) < 0.0001 && fabs(best.mm - 0.2900) < 0.0001);
    OK(lw_mating_verdict(wrong, text, sizeof text, &need));
    CHECK(strstr(text, "15 % (worst) to 54 % (best)") != NULL);
    OK(lw_stripping_new(nut, port, lw_mm(10.0), &stripping));
    OK(lw_stripping_engaged(stripping, &loose));
    CHECK(loose.mm == tight.mm);
    OK(lw_stripping_share(stripping, &least, &most));
    CHECK(least > 0.0 && least < most && most < 1.0);
    lw_stripping_free(stripping);
    share = 7.0;
    for (i = 0; i < BADS; i += 1) {
        const lw_length bad = lw_mm(BAD_NUMBERS[i]);
        EXPECT(called(bad.mm), lw_mating_engaged_share(wrong, bad, &share));
        EXPECT(called(bad.mm), lw_stripping_new(nut, port, bad, &no_stripping));
    }
    lw_thread_free(port);
    port = read("M10x1-6H");
    EXPECT(LW_THREAD_SIDE, lw_mating_new(port, port, &none));
    EXPECT(LW_THREAD_SIDE, lw_stripping_new(port, port, lw_mm(6.0), &no_stripping));
    CHECK(share == 7.0 && none == NULL && no_stripping == NULL);
    lw_mating_free(right);
    lw_mating_free(wrong);
    lw_thread_free(port);
    lw_thread_free(nut);
}

int main(void) {
    names();
    figures();
    limits();
    pairs();
    return verdict("thread");
}
