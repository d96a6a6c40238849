/* Which thread it may be: identification, what tells two apart, the catalogue; otherwise as thread.c. */
#include "thread.h"

static void identification(void) {
    const lw_thread *list[3] = {NULL, NULL, NULL};
    lw_thread *metric = read("M11x1");
    lw_thread *fine = read("7/16-20");
    lw_thread *special = read("7/16-24");
    lw_measured *measured = NULL;
    lw_measured *no_measured = NULL;
    lw_identification *found = NULL;
    lw_identification *none = NULL;
    lw_length length = {7.0}, least = {7.0}, most = {7.0};
    char text[256];
    size_t need = 0, count = 9, i;
    double share, total = 0.0;
    list[0] = metric;
    list[1] = fine;
    list[2] = special;
    OK(lw_measured_new("external", &measured));
    EXPECT(LW_FIELD_MISSING, lw_identify(measured, list, 3, &none));
    OK(lw_measured_set_diameter(measured, lw_mm(10.98), lw_mm(0.05)));
    for (i = 0; i < BADS; i += 1) {
        const double bad = BAD_NUMBERS[i];
        EXPECT(called(bad), lw_measured_set_diameter(measured, lw_mm(bad), lw_mm(0.05)));
        EXPECT(called(bad), lw_measured_set_diameter(measured, lw_mm(10.98), lw_mm(bad)));
        EXPECT(called(bad), lw_measured_set_pitches(measured, 10, lw_mm(bad), lw_mm(0.05)));
        EXPECT(called(bad), lw_measured_set_pitches(measured, 10, lw_mm(10.0), lw_mm(bad)));
        EXPECT(called(bad), lw_measured_set_per_inch(measured, bad, 0.0));
        EXPECT(called(bad), lw_measured_set_per_inch(measured, 24.0, bad));
        EXPECT(called(bad), lw_measured_set_wear(measured, lw_mm(bad)));
    }
    EXPECT(LW_OUT_OF_RANGE, lw_measured_set_pitches(measured, 0, lw_mm(10.0), lw_mm(0.05)));
    EXPECT(LW_UNKNOWN_NAME, lw_measured_new("outside", &no_measured));
    CHECK(none == NULL && no_measured == NULL);
    /* What was refused left the reading as it was: 10.794 to 10.974, 10.902 to 11.085 mm, and less where worn. */
    OK(lw_identify(measured, list, 3, &found));
    OK(lw_identification_count(found, &count));
    CHECK(count == 3);
    for (i = 0; i < count; i += 1) {
        OK(lw_identification_share(found, i, &share));
        total += share;
        OK(lw_identification_thread(found, i, text, sizeof text, &need));
        OK(lw_identification_ten_pitches(found, i, &length));
        OK(lw_identification_diameter(found, i, &least, &most));
        if (is(text, "M11x1")) {
            CHECK(near(length.mm, 10.0) && near(least.mm, 10.694) && near(most.mm, 10.974));
        } else {
            CHECK(near(length.mm, is(text, "7/16-24 UNS") ? 254.0 / 24.0 : 12.7) && least.mm < 10.83 && most.mm > 11.07);
        }
    }
    CHECK(near(total, 1.0));
    OK(lw_identification_next(found, text, sizeof text, &need));
    CHECK(is(text, "ten pitches"));
    OK(lw_identification_advice(found, text, sizeof text, &need));
    CHECK(strncmp(text, "measure the ten pitches: ", 25) == 0);
    UNKNOWN_TEXT(lw_identification_nearest(found, text, sizeof text, &need));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_identification_thread(found, 3, text, sizeof text, &need));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_identification_share(found, 3, &share));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_identification_ten_pitches(found, 3, &length));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_identification_diameter(found, 3, &least, &most));
    lw_identification_free(found);
    /* No wear and a good count leave one of them; one that reaches from 19.6 to 24.4 leaves two. */
    OK(lw_measured_set_wear(measured, lw_mm(0.0)));
    OK(lw_measured_set_per_inch(measured, 20.0, 0.5));
    OK(lw_identify(measured, list, 3, &found));
    OK(lw_identification_count(found, &count));
    OK(lw_identification_thread(found, 0, text, sizeof text, &need));
    CHECK(count == 1 && is(text, "7/16-20 UNF"));
    UNKNOWN_TEXT(lw_identification_next(found, text, sizeof text, &need));
    lw_identification_free(found);
    OK(lw_measured_set_per_inch(measured, 22.0, 2.4));
    OK(lw_identify(measured, list, 3, &found));
    OK(lw_identification_count(found, &count));
    CHECK(count == 2);
    lw_identification_free(found);
    OK(lw_measured_set_pitches(measured, 10, lw_mm(15.0), lw_mm(0.1)));
    OK(lw_identify(measured, list, 3, &found));
    OK(lw_identification_count(found, &count));
    OK(lw_identification_nearest(found, text, sizeof text, &need));
    CHECK(count == 0 && is(text, "7/16-20 UNF"));
    lw_identification_free(found);
    lw_measured_free(measured);
    lw_thread_free(special);
    lw_thread_free(fine);
    lw_thread_free(metric);
}

static void separation(void) {
    lw_thread *metric = read("M11x1");
    lw_thread *special = read("7/16-24");
    lw_thread *pipe = read("G1/8");
    lw_separation *found = NULL;
    lw_separation *none = NULL;
    lw_length least = {7.0}, most = {7.0};
    lw_angle flat = {7.0}, steep = {7.0};
    char text[256];
    size_t need = 0, count = 0;
    int32_t separates = 7;
    OK(lw_separation_new(metric, special, "external", &found));
    OK(lw_separation_measure(found, 0, text, sizeof text, &need));
    OK(lw_separation_separates(found, 0, &separates));
    CHECK(is(text, "ten pitches") && separates == 1);
    OK(lw_separation_length(found, 0, 0, &least, &most));
    CHECK(near(least.mm, 10.0) && near(most.mm, 10.0));
    OK(lw_separation_length(found, 0, 1, &least, &most));
    CHECK(near(least.mm, 254.0 / 24.0) && near(most.mm, 254.0 / 24.0));
    OK(lw_separation_words(found, 0, text, sizeof text, &need));
    CHECK(strstr(text, "10 mm for M11x1") != NULL && strstr(text, "10.58 mm for 7/16-24") != NULL);
    /* 10.794 to 10.974 and 10.902 to 11.085 mm overlap. */
    OK(lw_separation_measure(found, 1, text, sizeof text, &need));
    OK(lw_separation_separates(found, 1, &separates));
    CHECK(is(text, "diameter") && separates == 0);
    OK(lw_separation_length(found, 1, 0, &least, &most));
    CHECK(near(most.mm, 10.974) && least.mm < most.mm);
    EXPECT(LW_NOT_KNOWN, lw_separation_angle(found, 1, 0, &flat, &steep));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_separation_length(found, 0, 2, &least, &most));
    lw_separation_free(found);
    /* 60 degrees and 55. */
    OK(lw_separation_new(metric, pipe, "external", &found));
    OK(lw_separation_count(found, &count));
    OK(lw_separation_measure(found, count - 1, text, sizeof text, &need));
    OK(lw_separation_separates(found, count - 1, &separates));
    CHECK(is(text, "flank angle") && separates == 1);
    EXPECT(LW_NOT_KNOWN, lw_separation_length(found, count - 1, 0, &least, &most));
    CHECK(near(most.mm, 10.974) && flat.deg == 7.0 && steep.deg == 7.0);
    OK(lw_separation_angle(found, count - 1, 0, &flat, &steep));
    CHECK(near(flat.deg, 60.0) && near(steep.deg, 60.0));
    OK(lw_separation_angle(found, count - 1, 1, &flat, &steep));
    CHECK(near(flat.deg, 55.0) && near(steep.deg, 55.0));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_separation_measure(found, count, text, sizeof text, &need));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_separation_words(found, count, text, sizeof text, &need));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_separation_separates(found, count, &separates));
    lw_separation_free(found);
    OK(lw_thread_separate(metric, special, "external", text, sizeof text, &need));
    CHECK(strncmp(text, "measure the ten pitches: ", 25) == 0);
    UNKNOWN_TEXT(lw_thread_separate(metric, metric, "external", text, sizeof text, &need));
    EXPECT(LW_UNKNOWN_NAME, lw_separation_new(metric, pipe, "outside", &none));
    CHECK(none == NULL);
    lw_thread_free(pipe);
    lw_thread_free(special);
    lw_thread_free(metric);
}

/* How many limits of the catalogue there are, counted one by one. */
static size_t limits_there_are(size_t threads) {
    char text[64];
    size_t need, i, there = 0;
    for (i = 0; i < threads; i += 1) {
        static const char *const sides[2] = {"external", "internal"};
        lw_thread *thread;
        int side;
        OK(lw_catalogue_thread(i, text, sizeof text, &need));
        thread = read(text);
        for (side = 0; side < 2; side += 1) {
            lw_limits *found = NULL;
            there += lw_limits_new(thread, sides[side], &found) == LW_OK;
            lw_limits_free(found);
        }
        lw_thread_free(thread);
    }
    return there;
}

static void catalogue(void) {
    const lw_thread *two[2] = {NULL, NULL};
    lw_thread *nut = read("3/8-24");
    lw_thread *port = read("M10x1");
    lw_lookalikes *found = NULL;
    lw_lookalikes *all = NULL;
    lw_mating *pair = NULL;
    char text[256] = "";
    size_t need = 0, count = 0, rows = 0, said = 0, checked = 0, i;
    int32_t yes = 7;
    two[0] = nut;
    two[1] = port;
    OK(lw_catalogue_count(&count));
    CHECK(count > 50);
    OK(lw_catalogue_report_count(&rows));
    for (i = 0; i < rows; i += 1) {
        OK(lw_catalogue_report_family(i, text, sizeof text, &need));
        CHECK(strlen(text) > 0);
        OK(lw_catalogue_report_checked(i, text, sizeof text, &need));
        CHECK(strlen(text) > 0);
        OK(lw_catalogue_report_limits(i, &checked));
        CHECK(checked > 0);
        said += checked;
    }
    CHECK(said == limits_there_are(count));
    OK(lw_catalogue_met(0, text, sizeof text, &need));
    CHECK(strlen(text) > 0);
    OK(lw_catalogue_source(0, text, sizeof text, &need));
    CHECK(strlen(text) > 0);
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_catalogue_thread(count, text, sizeof text, &need));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_catalogue_met(count, text, sizeof text, &need));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_catalogue_source(count, text, sizeof text, &need));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_catalogue_report_family(rows, text, sizeof text, &need));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_catalogue_report_checked(rows, text, sizeof text, &need));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_catalogue_report_limits(rows, &checked));
    /* Of these two only 3/8-24 goes into M10x1; the other way round it does not start. */
    OK(lw_lookalikes_new_among(two, 2, &found));
    OK(lw_lookalikes_count(found, &count));
    CHECK(count == 1);
    OK(lw_lookalikes_mating(found, 0, &pair));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_lookalikes_mating(found, 1, &pair));
    lw_lookalikes_free(found);
    OK(lw_mating_is_lookalike(pair, &yes));
    OK(lw_mating_male(pair, text, sizeof text, &need));
    CHECK(yes == 1 && is(text, "3/8-24 UNF"));
    lw_mating_free(pair);
    OK(lw_lookalikes_new(&all));
    OK(lw_lookalikes_new_among(NULL, 0, &found));
    OK(lw_lookalikes_count(all, &count));
    OK(lw_lookalikes_count(found, &rows));
    CHECK(count == rows && count > 20);
    lw_lookalikes_free(found);
    lw_lookalikes_free(all);
    lw_thread_free(port);
    lw_thread_free(nut);
}

int main(void) {
    identification();
    separation();
    catalogue();
    return verdict("thread_find");
}
