/* Ports, flares, hose ends and what public texts say about them, used as a caller uses them: and bad input to each. */
#include "check.h"

#include <math.h>

static const double BAD_NUMBERS[] = {NAN, INFINITY, -INFINITY, 1e308, -1e308, -1.0};
enum { BADS = sizeof BAD_NUMBERS / sizeof BAD_NUMBERS[0] };

static lw_status called(double value) {
    return isnan(value) || isinf(value) ? LW_NOT_A_NUMBER : LW_OUT_OF_RANGE;
}

static int near(lw_length length, double wanted_mm) {
    return fabs(length.mm - wanted_mm) < 1e-9;
}

/* The list has one finding of this code, or none for LW_OK; freed afterward. */
static void finds(lw_problems *problems, int32_t code) {
    size_t count = 9;
    int32_t found = LW_OK;
    OK(lw_problems_count(problems, &count));
    CHECK(count == (code == LW_OK ? 0 : 1));
    if (count == 1) {
        OK(lw_problems_code(problems, 0, &found));
    }
    CHECK(found == code);
    lw_problems_free(problems);
}

/* The last failure was about this field. */
static void about(const char *field) {
    lw_problems *problems = NULL;
    char text[64] = "";
    char wanted[64];
    size_t need = 0;
    OK(lw_last_error_problem(&problems));
    OK(lw_problems_part(problems, 0, text, sizeof text, &need));
    sprintf(wanted, "field %s", field);
    CHECK(strcmp(text, wanted) == 0);
    lw_problems_free(problems);
}

static void clamp(void) {
    const lw_length wall = lw_mm(0.7);
    lw_length under = {7.0}, beyond = {7.0};
    lw_length engaged = {7.0};
    double threads = 7.0;
    lw_nut *nut = NULL;
    lw_end *end = NULL;
    int i;
    OK(lw_nut_new("M10x1", lw_mm(17.0), lw_mm(5.0), "coned", &nut));
    EXPECT(LW_NOT_KNOWN, lw_nut_thread_length(nut, &under, &beyond));
    OK(lw_end_new(nut, "double-45", &end));
    EXPECT(LW_FIELD_MISSING, lw_end_set_port_depths(end, lw_mm(9.5), lw_mm(10.0)));
    about("port");
    EXPECT(LW_NOT_KNOWN, lw_end_port_depths(end, &under, &beyond));
    OK(lw_end_set_port(end, "tee", "M10x1", "inverted-45"));
    EXPECT(LW_NOT_KNOWN, lw_end_port_depths(end, &under, &beyond));
    OK(lw_end_set_port_depths(end, lw_mm(9.5), lw_mm(10.0)));
    /* The nut of this end was not measured. */
    EXPECT(LW_NOT_KNOWN, lw_end_clamp_margin(end, wall, &under, &beyond, &engaged));
    EXPECT(LW_NOT_KNOWN, lw_end_threads_showing(end, wall, lw_mm(1.0), &threads));
    CHECK(under.mm == 7.0 && beyond.mm == 7.0 && threads == 7.0);
    lw_end_free(end);

    EXPECT(LW_OUT_OF_RANGE, lw_nut_set_thread_length(nut, lw_mm(15.0), lw_mm(2.5)));
    about("nut_thread_length");
    OK(lw_nut_set_thread_length(nut, lw_mm(11.0), lw_mm(0.5)));
    OK(lw_nut_thread_length(nut, &under, &beyond));
    CHECK(under.mm == 11.0 && beyond.mm == 0.5);
    OK(lw_end_new(nut, "double-45", &end));
    OK(lw_end_set_port(end, "tee", "M10x1", "inverted-45"));
    OK(lw_end_set_port_depths(end, lw_mm(9.5), lw_mm(10.0)));
    OK(lw_end_port_depths(end, &under, &beyond));
    CHECK(under.mm == 9.5 && beyond.mm == 10.0);
    /* The tip stands at 10 - 2 x 0.7 = 8.6: 11.5 - 8.6 under the head, 9.5 - 8.1 of thread beyond. */
    OK(lw_end_clamp_margin(end, wall, &under, &beyond, &engaged));
    CHECK(near(under, 2.9) && near(beyond, 1.4) && near(engaged, 9.5 - 1.4 * sqrt(2.0)));
    OK(lw_end_threads_showing(end, wall, lw_mm(1.25), &threads));
    CHECK(fabs(threads - 2.32) < 1e-9);
    for (i = 0; i < BADS; i += 1) {
        const lw_length bad = lw_mm(BAD_NUMBERS[i]);
        const lw_status status = called(BAD_NUMBERS[i]);
        lw_length kept = {7.0};
        EXPECT(status, lw_nut_set_thread_length(nut, bad, lw_mm(0.0)));
        about("nut_thread_length");
        EXPECT(status, lw_nut_set_thread_length(nut, lw_mm(11.0), bad));
        about("nut_lead");
        EXPECT(status, lw_end_set_port_depths(end, bad, lw_mm(10.0)));
        about("port_thread_depth");
        EXPECT(status, lw_end_set_port_depths(end, lw_mm(9.5), bad));
        about("seat_depth");
        EXPECT(status, lw_end_clamp_margin(end, bad, &kept, &kept, &kept));
        EXPECT(status, lw_end_threads_showing(end, bad, lw_mm(1.0), &threads));
        EXPECT(status, lw_end_threads_showing(end, wall, bad, &threads));
        EXPECT(status, lw_flare_thickness_at_least("double-45", bad, &kept));
        CHECK(kept.mm == 7.0);
    }
    CHECK(fabs(threads - 2.32) < 1e-9);
    /* What was refused changed nothing; another port has depths of its own. */
    OK(lw_end_clamp_margin(end, wall, &under, &beyond, &engaged));
    CHECK(near(under, 2.9) && near(beyond, 1.4) && near(engaged, 9.5 - 1.4 * sqrt(2.0)));
    OK(lw_end_set_port(end, "cylinder", "M10x1", "inverted-45"));
    EXPECT(LW_NOT_KNOWN, lw_end_clamp_margin(end, wall, &under, &beyond, &engaged));
    OK(lw_flare_thickness_at_least("double-45", wall, &under));
    OK(lw_flare_thickness_at_least("bubble", wall, &beyond));
    CHECK(under.mm == 1.4 && beyond.mm == 0.7);
    EXPECT(LW_SINGLE_45_REFUSED, lw_flare_thickness_at_least("single-45", wall, &under));
    lw_nut_free(nut);
    lw_end_free(end);
}

static void forms(void) {
    const lw_length od = lw_mm(4.7625), wall = lw_mm(0.7112), diameter = lw_mm(6.9);
    lw_length out = {7.0}, height = {7.0}, net = {7.0};
    int i;
    OK(lw_flare_stick_out("double-45", "keeps wall", od, wall, diameter, &out));
    OK(lw_flare_height("double-45", od, wall, diameter, &height));
    OK(lw_flare_net("double-45", "keeps wall", od, wall, diameter, &net));
    CHECK(near(net, out.mm - height.mm));
    out.mm = height.mm = net.mm = 7.0;
    EXPECT(LW_UNKNOWN_NAME, lw_flare_stick_out("double-45", "rubber", od, wall, diameter, &out));
    about("stretch");
    EXPECT(LW_UNKNOWN_NAME, lw_flare_net("triple", "uniaxial", od, wall, diameter, &net));
    about("flare");
    EXPECT(LW_SINGLE_45_REFUSED, lw_flare_height("single-45", od, wall, diameter, &height));
    EXPECT(LW_NOT_KNOWN, lw_flare_height("single-37", od, wall, diameter, &height));
    for (i = 0; i < BADS; i += 1) {
        const lw_length bad = lw_mm(BAD_NUMBERS[i]);
        const lw_status status = called(BAD_NUMBERS[i]);
        EXPECT(status, lw_flare_stick_out("double-45", "uniaxial", bad, wall, diameter, &out));
        EXPECT(status, lw_flare_height("double-45", od, bad, diameter, &height));
        EXPECT(status, lw_flare_net("bubble", "keeps length", od, wall, bad, &net));
    }
    EXPECT(LW_OUT_OF_RANGE, lw_flare_height("double-45", od, wall, od, &height));
    CHECK(out.mm == 7.0 && height.mm == 7.0 && net.mm == 7.0);
}

static void text_is(const lw_allowances *allowances, size_t index, const char *way, const char *in_source) {
    char text[128] = "";
    size_t need = 0;
    OK(lw_allowances_way(allowances, index, text, sizeof text, &need));
    CHECK(strcmp(text, way) == 0);
    OK(lw_allowances_source(allowances, index, text, sizeof text, &need));
    CHECK(strstr(text, in_source) != NULL);
}

static void allowances(void) {
    const lw_length od = lw_in(3.0 / 16.0), wall = lw_in(0.028), none = lw_unknown_length();
    lw_length least = {7.0}, most = {7.0}, form_least = {0.0}, form_most = {0.0};
    lw_allowances *ways = NULL;
    char text[8] = "kept";
    size_t count = 9, need = 0;
    OK(lw_flare_allowances("double-45", od, wall, none, none, lw_mm(200.0), lw_mm(198.0), &ways));
    OK(lw_allowances_count(ways, &count));
    CHECK(count == 3);
    text_is(ways, 0, "test piece", "test piece");
    text_is(ways, 1, "geometry", "computed");
    text_is(ways, 2, "rule", "common practice");
    EXPECT(LW_NOT_KNOWN, lw_allowances_stick_out(ways, 0, &least, &most));
    EXPECT(LW_NOT_KNOWN, lw_allowances_net_shortening(ways, 2, &least, &most));
    EXPECT(LW_NOT_KNOWN, lw_allowances_cut_allowance(ways, 1, &least));
    CHECK(least.mm == 7.0 && most.mm == 7.0);
    OK(lw_allowances_net_shortening(ways, 0, &least, &most));
    CHECK(least.mm == 2.0 && most.mm == 2.0);
    /* The public diameters are 6.7 to 7.1 mm; the wall that keeps its length takes the least. */
    OK(lw_allowances_stick_out(ways, 1, &least, &most));
    OK(lw_flare_stick_out("double-45", "keeps length", od, wall, lw_mm(6.7), &form_least));
    OK(lw_flare_stick_out("double-45", "keeps wall", od, wall, lw_mm(7.1), &form_most));
    CHECK(least.mm == form_least.mm && most.mm == form_most.mm);
    OK(lw_allowances_cut_allowance(ways, 2, &least));
    CHECK(least.mm == 5.0);
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_allowances_way(ways, 3, text, sizeof text, &need));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_allowances_source(ways, SIZE_MAX, text, sizeof text, &need));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_allowances_stick_out(ways, 3, &least, &most));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_allowances_net_shortening(ways, 3, &least, &most));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_allowances_cut_allowance(ways, 3, &least));
    CHECK(strcmp(text, "kept") == 0);
    lw_allowances_free(ways);

    /* A wall that the public figures are not for leaves the rule alone; a diameter of one's own brings the form back. */
    OK(lw_flare_allowances("double-45", od, lw_mm(0.9), none, none, none, none, &ways));
    OK(lw_allowances_count(ways, &count));
    CHECK(count == 1);
    lw_allowances_free(ways);
    OK(lw_flare_allowances("double-45", od, lw_mm(0.9), lw_mm(7.0), lw_mm(7.0), none, none, &ways));
    OK(lw_allowances_count(ways, &count));
    CHECK(count == 2);
    lw_allowances_free(ways);
    ways = NULL;
    EXPECT(LW_NOT_KNOWN, lw_flare_allowances("single-37", od, wall, none, none, none, none, &ways));
    EXPECT(LW_NOT_KNOWN, lw_flare_allowances("bubble", lw_mm(6.0), wall, none, none, none, none, &ways));
    EXPECT(LW_OUT_OF_RANGE, lw_flare_allowances("double-45", od, lw_mm(2.5), none, none, none, none, &ways));
    EXPECT(LW_OUT_OF_RANGE, lw_flare_allowances("double-45", od, wall, lw_mm(7.1), lw_mm(6.7), none, none, &ways));
    EXPECT(LW_NOT_A_NUMBER, lw_flare_allowances("double-45", od, wall, lw_mm(7.0), none, none, none, &ways));
    EXPECT(LW_NOT_A_NUMBER, lw_flare_allowances("double-45", od, wall, none, lw_mm(7.0), none, none, &ways));
    EXPECT(LW_NOT_A_NUMBER, lw_flare_allowances("double-45", od, wall, none, none, lw_mm(200.0), none, &ways));
    EXPECT(LW_NOT_A_NUMBER, lw_flare_allowances("double-45", none, wall, none, none, none, none, &ways));
    EXPECT(LW_OUT_OF_RANGE, lw_flare_allowances("double-45", od, lw_mm(-1.0), none, none, none, none, &ways));
    EXPECT(LW_OUT_OF_RANGE, lw_flare_allowances("double-45", od, wall, none, none, lw_mm(1.0), lw_mm(2.0), &ways));
    EXPECT(LW_SINGLE_45_REFUSED, lw_flare_allowances("single-45", od, wall, none, none, none, none, &ways));
    CHECK(ways == NULL);
}

static void hose_ends(void) {
    static const char *const ends[4] = {"banjo", "male-washer", "female-flare", "banjo"};
    static const char *const threads[4] = {"M10x1", "3/8-24", "M12x1", "M 10 x 1,0"};
    static const char *const wrong[2] = {"banjo", "elbow"};
    static const char *const bare[2] = {"M10x1", "M10"};
    lw_problems *problems = NULL;
    lw_washers *washers = NULL;
    char text[32] = "kept";
    size_t count = 9, spares = 9, need = 0;
    OK(lw_hose_end_sealed_by("female-flare", text, sizeof text, &need));
    CHECK(strcmp(text, "flare") == 0);
    OK(lw_hose_end_washers("Banjo", &count));
    CHECK(count == 2);
    OK(lw_hose_end_check("female-flare", 1, &problems));
    finds(problems, LW_WASHER_ON_FLARE);
    OK(lw_hose_end_check("banjo", 3, &problems));
    finds(problems, LW_WASHER_COUNT);
    OK(lw_hose_end_check("male-washer", SIZE_MAX, &problems));
    finds(problems, LW_WASHER_COUNT);
    OK(lw_hose_end_check("banjo", 2, &problems));
    finds(problems, LW_OK);
    EXPECT(LW_UNKNOWN_NAME, lw_hose_end_washers("elbow", &count));
    EXPECT(LW_UNKNOWN_NAME, lw_hose_end_sealed_by("elbow", text, sizeof text, &need));
    EXPECT(LW_UNKNOWN_NAME, lw_hose_end_check("elbow", 2, &problems));
    about("hose_end");
    CHECK(count == 2 && strcmp(text, "flare") == 0);

    OK(lw_washers_new(ends, threads, 4, &washers));
    OK(lw_washers_count(washers, &count));
    CHECK(count == 2);
    OK(lw_washers_thread(washers, 0, text, sizeof text, &need));
    OK(lw_washers_to_buy(washers, 0, &count, &spares));
    CHECK(strcmp(text, "M10x1") == 0 && count == 4 && spares == 1);
    OK(lw_washers_thread(washers, 1, text, sizeof text, &need));
    OK(lw_washers_to_buy(washers, 1, &count, &spares));
    CHECK(strncmp(text, "3/8-24 UNF", 10) == 0 && count == 1 && spares == 1);
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_washers_thread(washers, 2, text, sizeof text, &need));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_washers_to_buy(washers, SIZE_MAX, &count, &spares));
    CHECK(count == 1 && spares == 1);
    lw_washers_free(washers);
    OK(lw_washers_new(NULL, NULL, 0, &washers));
    OK(lw_washers_count(washers, &count));
    CHECK(count == 0);
    lw_washers_free(washers);
    washers = NULL;
    EXPECT(LW_UNKNOWN_NAME, lw_washers_new(wrong, threads, 2, &washers));
    about("ends[1]");
    EXPECT(LW_THREAD_AMBIGUOUS, lw_washers_new(ends, bare, 2, &washers));
    about("threads[1]");
    EXPECT(LW_UNREADABLE, lw_washers_new(ends, wrong, 1, &washers));
    EXPECT(LW_OUT_OF_RANGE, lw_washers_new(ends, threads, SIZE_MAX, &washers));
    CHECK(washers == NULL);
}

typedef lw_status row_text(size_t index, char *buf, size_t cap, size_t *need);

/* Every row has the text, and there is none after the last. */
static void has_rows(row_text *get, size_t count) {
    char text[256];
    size_t need = 0, i;
    for (i = 0; i < count; i += 1) {
        OK(get(i, text, sizeof text, &need));
        CHECK(need > 1 && text[0] != '\0');
    }
    EXPECT(LW_INDEX_OUT_OF_RANGE, get(count, text, sizeof text, &need));
}

/* Every row of usual threads is found again by its thread and its tube. */
static void seats_are_found(size_t rows) {
    char thread[32], seat[32], found[32];
    lw_length od = {0.0};
    size_t count = 0, need = 0, i, j;
    for (i = 0; i < rows; i += 1) {
        int is_there = 0;
        OK(lw_usual_thread_designation(i, thread, sizeof thread, &need));
        OK(lw_usual_thread_seat(i, seat, sizeof seat, &need));
        OK(lw_usual_thread_od(i, &od));
        OK(lw_seats_of_thread_count(thread, od, &count));
        for (j = 0; j < count; j += 1) {
            OK(lw_seats_of_thread(thread, od, j, found, sizeof found, &need));
            is_there = is_there || strcmp(found, seat) == 0;
        }
        CHECK(is_there);
        EXPECT(LW_INDEX_OUT_OF_RANGE, lw_seats_of_thread(thread, od, count, found, sizeof found, &need));
    }
}

static void public_texts(void) {
    lw_length least = {7.0}, most = {7.0}, wall_most = {7.0};
    char text[128] = "kept";
    size_t count = 0, need = 0;
    int i;
    OK(lw_flare_size("double-45", lw_in(3.0 / 16.0), &least, &most, &wall_most));
    CHECK(least.mm == 6.7 && most.mm == 7.1 && wall_most.mm == 0.71);
    OK(lw_flare_size_source("double-45", lw_mm(4.76), text, sizeof text, &need));
    CHECK(strstr(text, "SAE J533-2024") != NULL && strstr(text, "seen second-hand") != NULL);
    EXPECT(LW_NOT_KNOWN, lw_flare_size("bubble", lw_mm(4.76), &least, &most, &wall_most));
    EXPECT(LW_NOT_KNOWN, lw_flare_size_source("double-45", lw_mm(6.0), text, sizeof text, &need));
    EXPECT(LW_UNKNOWN_NAME, lw_flare_size("", lw_mm(4.76), &least, &most, &wall_most));
    CHECK(need == 0 && least.mm == 6.7);
    for (i = 0; i < BADS; i += 1) {
        const lw_length bad = lw_mm(BAD_NUMBERS[i]);
        EXPECT(called(BAD_NUMBERS[i]), lw_flare_size("double-45", bad, &least, &most, &wall_most));
        EXPECT(called(BAD_NUMBERS[i]), lw_flare_size_source("double-45", bad, text, sizeof text, &need));
        EXPECT(called(BAD_NUMBERS[i]), lw_seats_of_thread_count("M10x1", bad, &count));
    }
    OK(lw_flare_standard_count(&count));
    CHECK(count > 5);
    has_rows(lw_flare_standard_name, count);
    has_rows(lw_flare_standard_covers, count);
    has_rows(lw_flare_standard_checked, count);
    has_rows(lw_flare_standard_source, count);
    OK(lw_usual_thread_count(&count));
    CHECK(count > 10);
    has_rows(lw_usual_thread_designation, count);
    has_rows(lw_usual_thread_standard, count);
    has_rows(lw_usual_thread_seat, count);
    has_rows(lw_usual_thread_checked, count);
    has_rows(lw_usual_thread_source, count);
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_usual_thread_od(count, &least));
    seats_are_found(count);
    /* Both threads of brake tube are known with more than one seat: they do not settle it. */
    OK(lw_seats_of_thread_count("M10x1", lw_in(3.0 / 16.0), &count));
    CHECK(count == 2);
    OK(lw_seats_of_thread_count("M8x1", lw_in(3.0 / 16.0), &count));
    CHECK(count == 0);
    EXPECT(LW_THREAD_AMBIGUOUS, lw_seats_of_thread_count("M10", lw_mm(4.76), &count));
    OK(lw_hexagon_count(&count));
    CHECK(count > 5);
    has_rows(lw_hexagon_on, count);
    has_rows(lw_hexagon_checked, count);
    has_rows(lw_hexagon_source, count);
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_hexagon_across_flats(count, &least));
    OK(lw_hexagon_across_flats(0, &least));
    CHECK(least.mm > 5.0 && least.mm < 20.0);
}

/* What belongs together, and the public diameters. */
static void fits(void) {
    lw_length under;
    lw_length beyond;
    size_t strokes = 0;
    size_t needed = 0;
    char fit[16];
    OK(lw_flare_strokes("double-45", &strokes));
    CHECK(strokes == 2);
    OK(lw_flare_strokes("bubble", &strokes));
    CHECK(strokes == 1);
    OK(lw_flare_fits_seat("double-45", "inverted-45", fit, sizeof fit, &needed));
    CHECK(strcmp(fit, "fits") == 0);
    OK(lw_flare_fits_seat("double-45", "bubble", fit, sizeof fit, &needed));
    CHECK(strcmp(fit, "does not fit") == 0);
    OK(lw_flare_fits_seat("double-45", "unknown", fit, sizeof fit, &needed));
    CHECK(strcmp(fit, "not known") == 0);
    OK(lw_flare_fits_nose("bubble", "flat", fit, sizeof fit, &needed));
    CHECK(strcmp(fit, "fits") == 0);
    OK(lw_flare_fits_nose("bubble", "coned", fit, sizeof fit, &needed));
    CHECK(strcmp(fit, "does not fit") == 0);
    EXPECT(LW_UNKNOWN_NAME, lw_flare_fits_seat("bubble", "hole", fit, sizeof fit, &needed));
    OK(lw_flare_known_diameters("double-45", lw_mm(4.7625), lw_mm(0.7112), &under, &beyond));
    CHECK(under.mm == 6.7 && beyond.mm == 7.1);
    EXPECT(LW_NOT_KNOWN, lw_flare_known_diameters("double-45", lw_mm(4.7625), lw_mm(0.9), &under, &beyond));
}

int main(void) {
    fits();
    clamp();
    forms();
    allowances();
    hose_ends();
    public_texts();
    return verdict("flare");
}
