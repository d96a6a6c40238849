/* As null.c, for ports, flares, hose ends and what public texts say about them. */
#include "check.h"

/* What the functions work on. */
static lw_nut *nut;
static lw_end *end;
static lw_allowances *allowances;
static lw_washers *washers;

/* Where answers would go. */
static char text[64];
static size_t count;
static size_t spares;
static double number;
static lw_length length;
static lw_length other;
static lw_length third;
static lw_problems *new_problems;
static lw_allowances *new_allowances;
static lw_washers *new_washers;

/* What goes in beside them. */
static const char *const ends[2] = {"banjo", "male-washer"};
static const char *const threads[2] = {"M10x1", "3/8-24"};
static const lw_length od = {4.7625};
static const lw_length wall = {0.7112};
static const lw_length diameter = {6.9};
static const lw_length depth = {10.0};

static void make(void) {
    OK(lw_nut_new("M10x1", lw_mm(17.0), lw_mm(5.0), "coned", &nut));
    OK(lw_nut_set_thread_length(nut, lw_mm(11.0), lw_mm(0.0)));
    OK(lw_end_new(nut, "double-45", &end));
    OK(lw_end_set_port(end, "tee", "M10x1", "inverted-45"));
    OK(lw_end_set_port_depths(end, depth, depth));
    OK(lw_flare_allowances("double-45", od, wall, diameter, diameter, lw_mm(200.0), lw_mm(198.0), &allowances));
    OK(lw_washers_new(ends, threads, 2, &washers));
}

static void unmake(void) {
    lw_nut_free(nut);
    lw_end_free(end);
    lw_allowances_free(allowances);
    lw_washers_free(washers);
}

static void of_ends(void) {
    REFUSES("nut", lw_nut_set_thread_length(NULL, lw_mm(11.0), lw_mm(0.0)));
    REFUSES("nut", lw_nut_thread_length(NULL, &length, &other));
    REFUSES("thread_length", lw_nut_thread_length(nut, NULL, &other));
    REFUSES("lead", lw_nut_thread_length(nut, &length, NULL));
    REFUSES("end", lw_end_set_port_depths(NULL, depth, depth));
    REFUSES("end", lw_end_port_depths(NULL, &length, &other));
    REFUSES("thread", lw_end_port_depths(end, NULL, &other));
    REFUSES("seat", lw_end_port_depths(end, &length, NULL));
    REFUSES("end", lw_end_clamp_margin(NULL, wall, &length, &other, &length));
    REFUSES("under_head", lw_end_clamp_margin(end, wall, NULL, &other, &length));
    REFUSES("beyond_thread", lw_end_clamp_margin(end, wall, &length, NULL, &length));
    REFUSES("engaged", lw_end_clamp_margin(end, wall, &length, &other, NULL));
    REFUSES("end", lw_end_threads_showing(NULL, wall, lw_mm(1.0), &number));
    REFUSES("threads", lw_end_threads_showing(end, wall, lw_mm(1.0), NULL));
}

static void of_flares(void) {
    const lw_length none = lw_unknown_length();
    REFUSES("flare", lw_flare_strokes(NULL, &count));
    REFUSES("strokes", lw_flare_strokes("bubble", NULL));
    REFUSES("flare", lw_flare_fits_seat(NULL, "bubble", text, sizeof text, &count));
    REFUSES("seat", lw_flare_fits_seat("bubble", NULL, text, sizeof text, &count));
    REFUSES("buf", lw_flare_fits_seat("bubble", "bubble", NULL, sizeof text, &count));
    REFUSES("need", lw_flare_fits_seat("bubble", "bubble", text, sizeof text, NULL));
    REFUSES("flare", lw_flare_fits_nose(NULL, "flat", text, sizeof text, &count));
    REFUSES("nose", lw_flare_fits_nose("bubble", NULL, text, sizeof text, &count));
    REFUSES("buf", lw_flare_fits_nose("bubble", "flat", NULL, sizeof text, &count));
    REFUSES("need", lw_flare_fits_nose("bubble", "flat", text, sizeof text, NULL));
    REFUSES("flare", lw_flare_known_diameters(NULL, lw_mm(4.76), lw_mm(0.7), &length, &length));
    REFUSES("least", lw_flare_known_diameters("double-45", lw_mm(4.76), lw_mm(0.7), NULL, &length));
    REFUSES("most", lw_flare_known_diameters("double-45", lw_mm(4.76), lw_mm(0.7), &length, NULL));
    REFUSES("flare", lw_flare_thickness_at_least(NULL, wall, &length));
    REFUSES("thickness", lw_flare_thickness_at_least("bubble", wall, NULL));
    REFUSES("flare", lw_flare_stick_out(NULL, "uniaxial", od, wall, diameter, &length));
    REFUSES("stretch", lw_flare_stick_out("double-45", NULL, od, wall, diameter, &length));
    REFUSES("stick_out", lw_flare_stick_out("double-45", "uniaxial", od, wall, diameter, NULL));
    REFUSES("flare", lw_flare_height(NULL, od, wall, diameter, &length));
    REFUSES("height", lw_flare_height("double-45", od, wall, diameter, NULL));
    REFUSES("flare", lw_flare_net(NULL, "uniaxial", od, wall, diameter, &length));
    REFUSES("stretch", lw_flare_net("double-45", NULL, od, wall, diameter, &length));
    REFUSES("net", lw_flare_net("double-45", "uniaxial", od, wall, diameter, NULL));
    REFUSES("flare", lw_flare_allowances(NULL, od, wall, none, none, none, none, &new_allowances));
    REFUSES("allowances", lw_flare_allowances("bubble", od, wall, none, none, none, none, NULL));
    REFUSES("allowances", lw_allowances_count(NULL, &count));
    REFUSES("count", lw_allowances_count(allowances, NULL));
    REFUSES("allowances", lw_allowances_way(NULL, 0, text, sizeof text, &count));
    REFUSES("buf", lw_allowances_way(allowances, 0, NULL, sizeof text, &count));
    REFUSES("need", lw_allowances_way(allowances, 0, text, sizeof text, NULL));
    REFUSES("allowances", lw_allowances_stick_out(NULL, 1, &length, &other));
    REFUSES("least", lw_allowances_stick_out(allowances, 1, NULL, &other));
    REFUSES("most", lw_allowances_stick_out(allowances, 1, &length, NULL));
    REFUSES("allowances", lw_allowances_net_shortening(NULL, 0, &length, &other));
    REFUSES("least", lw_allowances_net_shortening(allowances, 0, NULL, &other));
    REFUSES("most", lw_allowances_net_shortening(allowances, 0, &length, NULL));
    REFUSES("allowances", lw_allowances_cut_allowance(NULL, 2, &length));
    REFUSES("cut_allowance", lw_allowances_cut_allowance(allowances, 2, NULL));
    REFUSES("allowances", lw_allowances_source(NULL, 0, text, sizeof text, &count));
    REFUSES("buf", lw_allowances_source(allowances, 0, NULL, sizeof text, &count));
    REFUSES("need", lw_allowances_source(allowances, 0, text, sizeof text, NULL));
    REFUSES("flare", lw_flare_size(NULL, od, &length, &other, &third));
    REFUSES("least", lw_flare_size("double-45", od, NULL, &other, &third));
    REFUSES("most", lw_flare_size("double-45", od, &length, NULL, &third));
    REFUSES("wall_most", lw_flare_size("double-45", od, &length, &other, NULL));
    REFUSES("flare", lw_flare_size_source(NULL, od, text, sizeof text, &count));
    REFUSES("buf", lw_flare_size_source("double-45", od, NULL, sizeof text, &count));
    REFUSES("need", lw_flare_size_source("double-45", od, text, sizeof text, NULL));
}

static void of_hose_ends(void) {
    static const char *const no_end[2] = {"banjo", NULL};
    static const char *const no_thread[2] = {"M10x1", NULL};
    REFUSES("name", lw_hose_end_sealed_by(NULL, text, sizeof text, &count));
    REFUSES("buf", lw_hose_end_sealed_by("banjo", NULL, sizeof text, &count));
    REFUSES("need", lw_hose_end_sealed_by("banjo", text, sizeof text, NULL));
    REFUSES("name", lw_hose_end_washers(NULL, &count));
    REFUSES("count", lw_hose_end_washers("banjo", NULL));
    REFUSES("name", lw_hose_end_check(NULL, 2, &new_problems));
    REFUSES("problems", lw_hose_end_check("banjo", 2, NULL));
    REFUSES("ends", lw_washers_new(NULL, threads, 2, &new_washers));
    REFUSES("threads", lw_washers_new(ends, NULL, 2, &new_washers));
    REFUSES("washers", lw_washers_new(ends, threads, 2, NULL));
    REFUSES("ends[1]", lw_washers_new(no_end, threads, 2, &new_washers));
    REFUSES("threads[1]", lw_washers_new(ends, no_thread, 2, &new_washers));
    REFUSES("washers", lw_washers_count(NULL, &count));
    REFUSES("count", lw_washers_count(washers, NULL));
    REFUSES("washers", lw_washers_thread(NULL, 0, text, sizeof text, &count));
    REFUSES("buf", lw_washers_thread(washers, 0, NULL, sizeof text, &count));
    REFUSES("need", lw_washers_thread(washers, 0, text, sizeof text, NULL));
    REFUSES("washers", lw_washers_to_buy(NULL, 0, &count, &spares));
    REFUSES("needed", lw_washers_to_buy(washers, 0, NULL, &spares));
    REFUSES("spares", lw_washers_to_buy(washers, 0, &count, NULL));
}

static void of_texts(void) {
    REFUSES("count", lw_flare_standard_count(NULL));
    REFUSES("buf", lw_flare_standard_name(0, NULL, sizeof text, &count));
    REFUSES("need", lw_flare_standard_name(0, text, sizeof text, NULL));
    REFUSES("buf", lw_flare_standard_covers(0, NULL, sizeof text, &count));
    REFUSES("need", lw_flare_standard_covers(0, text, sizeof text, NULL));
    REFUSES("buf", lw_flare_standard_checked(0, NULL, sizeof text, &count));
    REFUSES("need", lw_flare_standard_checked(0, text, sizeof text, NULL));
    REFUSES("buf", lw_flare_standard_source(0, NULL, sizeof text, &count));
    REFUSES("need", lw_flare_standard_source(0, text, sizeof text, NULL));
    REFUSES("count", lw_usual_thread_count(NULL));
    REFUSES("buf", lw_usual_thread_designation(0, NULL, sizeof text, &count));
    REFUSES("need", lw_usual_thread_designation(0, text, sizeof text, NULL));
    REFUSES("buf", lw_usual_thread_standard(0, NULL, sizeof text, &count));
    REFUSES("need", lw_usual_thread_standard(0, text, sizeof text, NULL));
    REFUSES("buf", lw_usual_thread_seat(0, NULL, sizeof text, &count));
    REFUSES("need", lw_usual_thread_seat(0, text, sizeof text, NULL));
    REFUSES("od", lw_usual_thread_od(0, NULL));
    REFUSES("buf", lw_usual_thread_checked(0, NULL, sizeof text, &count));
    REFUSES("need", lw_usual_thread_checked(0, text, sizeof text, NULL));
    REFUSES("buf", lw_usual_thread_source(0, NULL, sizeof text, &count));
    REFUSES("need", lw_usual_thread_source(0, text, sizeof text, NULL));
    REFUSES("thread", lw_seats_of_thread_count(NULL, od, &count));
    REFUSES("count", lw_seats_of_thread_count("M10x1", od, NULL));
    REFUSES("thread", lw_seats_of_thread(NULL, od, 0, text, sizeof text, &count));
    REFUSES("buf", lw_seats_of_thread("M10x1", od, 0, NULL, sizeof text, &count));
    REFUSES("need", lw_seats_of_thread("M10x1", od, 0, text, sizeof text, NULL));
    REFUSES("count", lw_hexagon_count(NULL));
    REFUSES("buf", lw_hexagon_on(0, NULL, sizeof text, &count));
    REFUSES("need", lw_hexagon_on(0, text, sizeof text, NULL));
    REFUSES("across_flats", lw_hexagon_across_flats(0, NULL));
    REFUSES("buf", lw_hexagon_checked(0, NULL, sizeof text, &count));
    REFUSES("need", lw_hexagon_checked(0, text, sizeof text, NULL));
    REFUSES("buf", lw_hexagon_source(0, NULL, sizeof text, &count));
    REFUSES("need", lw_hexagon_source(0, text, sizeof text, NULL));
}

int main(void) {
    make();
    of_ends();
    of_flares();
    of_hose_ends();
    of_texts();
    lw_allowances_free(NULL);
    lw_washers_free(NULL);
    unmake();
    return verdict("null_flare");
}
