/* What records, fits, test pieces, tubes and formers hold, asked back from C. Every figure expected here was put in by the
 * program itself or follows from that by hand. */
#include "check.h"

#include <math.h>

static const double pi = 3.14159265358979323846;
static const lw_angle sets[3] = {{30.0}, {60.0}, {90.0}};
static const lw_angle gots[3] = {{28.5}, {58.0}, {87.25}};

/* Three angles set and three left, as given above. */
static int are_the_trials(const lw_angle *set, const lw_angle *got) {
    int i, same = 1;
    for (i = 0; i < 3; i += 1) {
        same = same && set[i].deg == sets[i].deg && got[i].deg == gots[i].deg;
    }
    return same;
}

typedef lw_status (*text_getter)(const lw_calibration *record, char *buf, size_t cap, size_t *need);

/* A text of a record: its size asked for, refused a byte too small, and filled. */
static void holds_text(text_getter get, const lw_calibration *record, const char *wanted) {
    char text[128] = "as it was";
    size_t need = 0;
    EXPECT(LW_SPACE_TOO_SMALL, get(record, NULL, 0, &need));
    CHECK(need == strlen(wanted) + 1);
    need = 0;
    EXPECT(LW_SPACE_TOO_SMALL, get(record, text, strlen(wanted), &need));
    CHECK(need == strlen(wanted) + 1 && strcmp(text, "as it was") == 0);
    OK(get(record, text, need, &need));
    CHECK(need == strlen(wanted) + 1 && strcmp(text, wanted) == 0);
}

static void records(void) {
    lw_tube *tube = steel_tube(lw_mm(4.75), lw_mm(0.7)), *of = NULL;
    lw_calibration *record = NULL, *again = NULL;
    lw_angle set[3] = {{-1.0}, {-1.0}, {-1.0}}, got[3] = {{-1.0}, {-1.0}, {-1.0}};
    lw_length length = {-1.0};
    char material[32], former[32], date[16], revision[8];
    size_t need = 99;
    OK(lw_tube_set_min_radius(tube, lw_mm(12.0), "sheet 1"));
    /* A name of the workshop with a letter of two bytes. */
    OK(lw_calibration_new(sets, gots, 3, tube, "former \xC3\x98 28", "2026-05-14", "2 b", &record));
    lw_tube_free(tube);
    EXPECT(LW_SPACE_TOO_SMALL, lw_calibration_trials(record, NULL, NULL, 0, &need));
    CHECK(need == 3);
    need = 99;
    EXPECT(LW_SPACE_TOO_SMALL, lw_calibration_trials(record, set, got, 2, &need));
    CHECK(need == 3 && set[0].deg == -1.0 && got[0].deg == -1.0);
    OK(lw_calibration_trials(record, set, got, 3, &need));
    CHECK(need == 3 && are_the_trials(set, got));
    holds_text(lw_calibration_former, record, "former \xC3\x98 28");
    holds_text(lw_calibration_date, record, "2026-05-14");
    holds_text(lw_calibration_revision, record, "2 b");
    holds_text(lw_calibration_text, record,
               "4.75 mm x 0.7 mm, low-carbon steel, former \xC3\x98 28, 2026-05-14, revision 2 b");
    OK(lw_calibration_tube(record, &of));
    OK(lw_tube_od(of, &length));
    CHECK(length.mm == 4.75);
    OK(lw_tube_wall(of, &length));
    CHECK(length.mm == 0.7);
    OK(lw_tube_material(of, material, sizeof material, &need));
    CHECK(strcmp(material, "low-carbon steel") == 0);
    EXPECT(LW_NOT_KNOWN, lw_tube_min_radius(of, &length));
    /* The same record made of what the first gives. */
    OK(lw_calibration_former(record, former, sizeof former, &need));
    OK(lw_calibration_date(record, date, sizeof date, &need));
    OK(lw_calibration_revision(record, revision, sizeof revision, &need));
    OK(lw_calibration_new(set, got, 3, of, former, date, revision, &again));
    lw_calibration_free(record);
    holds_text(lw_calibration_text, again,
               "4.75 mm x 0.7 mm, low-carbon steel, former \xC3\x98 28, 2026-05-14, revision 2 b");
    lw_calibration_free(again);
    /* A record may wait for its trials. */
    OK(lw_calibration_new(NULL, NULL, 0, of, "former 1", "2026-05-14", "1", &record));
    need = 99;
    OK(lw_calibration_trials(record, NULL, NULL, 0, &need));
    CHECK(need == 0);
    lw_calibration_free(record);
    lw_tube_free(of);
}

/* The record that a springback carries is its own: it outlives what it was asked of. */
static void records_of_springbacks(void) {
    lw_tube *tube = steel_tube(lw_mm(4.75), lw_mm(0.7));
    lw_calibration *record = NULL, *carried = NULL;
    lw_springback *springback = NULL;
    lw_angle set[3] = {{-1.0}, {-1.0}, {-1.0}}, got[3] = {{-1.0}, {-1.0}, {-1.0}};
    size_t need = 99;
    OK(lw_springback_from_trials(sets, gots, 3, &springback));
    EXPECT(LW_NOT_KNOWN, lw_springback_calibration(springback, &carried));
    CHECK(carried == NULL);
    OK(lw_calibration_new(sets, gots, 3, tube, "former 1", "2026-05-14", "2", &record));
    OK(lw_springback_set_calibration(springback, record));
    OK(lw_springback_calibration(springback, &carried));
    /* One array alone is never filled. */
    EXPECT(LW_NULL_ARGUMENT, lw_springback_trials(springback, set, NULL, 3, &need));
    CHECK(need == 0 && set[0].deg == -1.0);
    lw_springback_free(springback);
    lw_calibration_free(record);
    OK(lw_calibration_trials(carried, set, got, 3, &need));
    CHECK(need == 3 && are_the_trials(set, got));
    holds_text(lw_calibration_former, carried, "former 1");
    lw_calibration_free(carried);
    lw_tube_free(tube);
}

static void fits(void) {
    lw_prior prior, back;
    lw_trial_fit *fit = NULL;
    lw_angle set[3] = {{-1.0}, {-1.0}, {-1.0}}, got[3] = {{-1.0}, {-1.0}, {-1.0}};
    size_t need = 99;
    memset(&back, 0, sizeof back);
    OK(lw_trial_fit_new(sets, gots, 3, &fit));
    EXPECT(LW_SPACE_TOO_SMALL, lw_trial_fit_trials(fit, set, got, 1, &need));
    CHECK(need == 3 && set[0].deg == -1.0 && got[0].deg == -1.0);
    OK(lw_trial_fit_trials(fit, set, got, 3, &need));
    CHECK(need == 3 && are_the_trials(set, got));
    EXPECT(LW_NOT_KNOWN, lw_trial_fit_prior(fit, &back));
    CHECK(back.size == 0 && back.worth == 0);
    lw_trial_fit_free(fit);
    prior.size = sizeof prior;
    prior.constant = lw_deg(1.0);
    prior.constant_spread = lw_deg(0.5);
    prior.proportional = 0.02;
    prior.proportional_spread = 0.01;
    prior.correlation = -0.25;
    prior.scatter = lw_deg(0.3);
    prior.worth = 7;
    OK(lw_trial_fit_with_prior(&prior, NULL, NULL, 0, &fit));
    OK(lw_trial_fit_trials(fit, NULL, NULL, 0, &need));
    CHECK(need == 0);
    OK(lw_trial_fit_prior(fit, &back));
    CHECK(back.size == sizeof prior && back.constant.deg == 1.0 && back.constant_spread.deg == 0.5);
    CHECK(back.proportional == 0.02 && back.proportional_spread == 0.01 && back.correlation == -0.25);
    CHECK(back.scatter.deg == 0.3 && back.worth == 7);
    lw_trial_fit_free(fit);
    /* What came back is a belief to go on with. */
    OK(lw_trial_fit_with_prior(&back, sets, gots, 3, &fit));
    OK(lw_trial_fit_trials(fit, set, got, 3, &need));
    CHECK(need == 3 && are_the_trials(set, got));
    lw_trial_fit_free(fit);
}

static void tubes(void) {
    lw_tube *tube = NULL;
    lw_length radius = {-1.0};
    char name[64], found[64];
    size_t count = 0, need = 0, i;
    OK(lw_material_count(&count));
    CHECK(count >= 4);
    for (i = 0; i < count; i += 1) {
        OK(lw_material_name(i, name, sizeof name, &need));
        OK(lw_tube_new(lw_mm(6.0), lw_mm(1.0), name, &tube));
        OK(lw_tube_material(tube, found, sizeof found, &need));
        CHECK(strcmp(found, name) == 0);
        EXPECT(LW_SPACE_TOO_SMALL, lw_tube_material(tube, found, 3, &need));
        lw_tube_free(tube);
    }
    tube = steel_tube(lw_mm(6.0), lw_mm(1.0));
    strcpy(found, "as it was");
    EXPECT(LW_NOT_KNOWN, lw_tube_min_radius(tube, &radius));
    EXPECT(LW_NOT_KNOWN, lw_tube_min_radius_source(tube, found, sizeof found, &need));
    CHECK(radius.mm == -1.0 && strcmp(found, "as it was") == 0 && need == 0);
    OK(lw_tube_set_min_radius(tube, lw_mm(18.5), "sheet 4 of the coil"));
    OK(lw_tube_min_radius(tube, &radius));
    CHECK(radius.mm == 18.5);
    OK(lw_tube_min_radius_source(tube, found, sizeof found, &need));
    CHECK(strcmp(found, "sheet 4 of the coil") == 0 && need == 20);
    lw_tube_free(tube);
}

/* An angle that is read so finely that its rounding counts for nothing: a multiple of no step. */
static const double odd_deg = 90.0037;

/* Scatter and error of the radius of a list of two pieces of that angle that agree. */
static void scatters_by(const lw_pieces *list, double scatter) {
    const double angle = odd_deg * pi / 180.0;
    lw_piece_fit *fit = NULL;
    lw_length found = {-1.0};
    OK(lw_piece_fit_new(list, &fit));
    OK(lw_piece_fit_scatter(fit, &found));
    NEAR(found.mm, scatter, 1e-12);
    /* Over the root of two squared gains of a radius of 1 mm. */
    OK(lw_piece_fit_radius_error(fit, &found));
    NEAR(found.mm, scatter / (sqrt(2.0) * (2.0 * tan(angle / 2.0) - angle)), 1e-12);
    lw_piece_fit_free(fit);
}

/* Two pieces alike, of two legs and a length: what they scatter by is what their rounding makes, for each of three
 * numbers its step over the root of 12. */
static void readings(void) {
    const lw_length legs[2] = {{112.0}, {94.0}}, outer[2] = {{114.5}, {96.5}};
    const lw_angle quarter[1] = {{90.0}};
    lw_angle odd[1];
    lw_pieces *list = NULL;
    lw_length reading = {-1.0}, found[2] = {{-1.0}, {-1.0}};
    lw_angle angle[1] = {{-1.0}};
    size_t count = 99, need = 99;
    odd[0].deg = odd_deg;
    OK(lw_pieces_new(&list));
    OK(lw_pieces_count(list, &count));
    CHECK(count == 0);
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_pieces_set_reading(list, 0, lw_mm(1.0)));
    OK(lw_pieces_add(list, lw_mm(200.0), legs, 2, odd, 1));
    OK(lw_pieces_add(list, lw_mm(200.0), legs, 2, odd, 1));
    OK(lw_pieces_reading(list, 0, &reading));
    CHECK(reading.mm == 1.0);
    scatters_by(list, 0.5);
    OK(lw_pieces_set_reading(list, 1, lw_mm(0.2)));
    OK(lw_pieces_reading(list, 0, &reading));
    CHECK(reading.mm == 1.0);
    OK(lw_pieces_reading(list, 1, &reading));
    CHECK(reading.mm == 0.2);
    /* The mean of the two variances, 0.25 and 0.01. */
    scatters_by(list, sqrt(0.13));
    OK(lw_pieces_set_reading(list, 0, lw_mm(0.2)));
    scatters_by(list, 0.1);
    OK(lw_pieces_set_reading(list, 0, lw_unknown_length()));
    reading.mm = -1.0;
    EXPECT(LW_NOT_KNOWN, lw_pieces_reading(list, 0, &reading));
    CHECK(reading.mm == -1.0);
    scatters_by(list, sqrt(0.005));
    EXPECT(LW_OUT_OF_RANGE, lw_pieces_set_reading(list, 1, lw_mm(0.0)));
    EXPECT(LW_OUT_OF_RANGE, lw_pieces_set_reading(list, 1, lw_mm(-1.0)));
    EXPECT(LW_OUT_OF_RANGE, lw_pieces_set_reading(list, 1, lw_mm(10.5)));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_pieces_set_reading(list, 2, lw_mm(1.0)));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_pieces_set_reading(list, SIZE_MAX, lw_mm(1.0)));
    OK(lw_pieces_reading(list, 1, &reading));
    CHECK(reading.mm == 0.2);
    /* Outer legs 2.5 mm longer each, as the edge of a 5 mm tube is: their step is that of what was read. */
    OK(lw_pieces_add_outer(list, lw_mm(200.25), outer, 2, quarter, 1, lw_mm(5.0)));
    OK(lw_pieces_count(list, &count));
    CHECK(count == 3);
    OK(lw_pieces_reading(list, 2, &reading));
    CHECK(reading.mm == 0.5);
    EXPECT(LW_SPACE_TOO_SMALL, lw_pieces_legs(list, 2, found, 1, &need));
    CHECK(need == 2 && found[0].mm == -1.0);
    OK(lw_pieces_legs(list, 2, found, 2, &need));
    CHECK(need == 2);
    NEAR(found[0].mm, 112.0, 1e-12);
    NEAR(found[1].mm, 94.0, 1e-12);
    EXPECT(LW_SPACE_TOO_SMALL, lw_pieces_angles(list, 2, NULL, 0, &need));
    CHECK(need == 1);
    OK(lw_pieces_angles(list, 2, angle, 1, &need));
    CHECK(need == 1 && angle[0].deg == 90.0);
    OK(lw_pieces_length(list, 2, &reading));
    CHECK(reading.mm == 200.25);
    OK(lw_pieces_gain(list, 2, &reading));
    NEAR(reading.mm, 5.75, 1e-12);
    OK(lw_pieces_gain(list, 0, &reading));
    CHECK(reading.mm == 6.0);
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_pieces_reading(list, 3, &reading));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_pieces_length(list, 3, &reading));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_pieces_gain(list, 3, &reading));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_pieces_legs(list, 3, found, 2, &need));
    CHECK(need == 0);
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_pieces_angles(list, 3, angle, 1, &need));
    CHECK(need == 0 && reading.mm == 6.0);
    lw_pieces_free(list);
}

/* Three gains of radius 20 and a stretch of 3 %, off by 0.4 along what neither figure can explain: the cross product of the
 * gains x of 1 mm and of the angles t. That leaves both figures as they are and a scatter of 0.4, and the error of the radius
 * is 0.4 over what of x is not along t, which is |x cross t| / |t|. */
static void stretches(void) {
    const double degrees[3] = {45.0037, 90.0037, 135.0037}, radius = 20.0, longer = 0.03 * 20.0, off = 0.4;
    double x[3], t[3], cross[3], across = 0.0, along = 0.0, share = -1.0, low = -1.0, high = -1.0;
    lw_pieces *list = NULL;
    lw_piece_fit *fit = NULL;
    lw_length found = {-1.0};
    int i;
    for (i = 0; i < 3; i += 1) {
        t[i] = degrees[i] * pi / 180.0;
        x[i] = 2.0 * tan(t[i] / 2.0) - t[i];
        along += t[i] * t[i];
    }
    for (i = 0; i < 3; i += 1) {
        cross[i] = x[(i + 1) % 3] * t[(i + 2) % 3] - x[(i + 2) % 3] * t[(i + 1) % 3];
        across += cross[i] * cross[i];
    }
    OK(lw_pieces_new(&list));
    for (i = 0; i < 3; i += 1) {
        const double gain = radius * x[i] + longer * t[i] + off * cross[i] / sqrt(across);
        const lw_angle angle[1] = {{degrees[i]}};
        lw_length legs[2];
        legs[0].mm = legs[1].mm = (300.0 + gain) / 2.0;
        OK(lw_pieces_add(list, lw_mm(300.0), legs, 2, angle, 1));
        if (i == 0) {
            /* One angle tells no stretch. */
            OK(lw_piece_fit_new(list, &fit));
            EXPECT(LW_NOT_KNOWN, lw_piece_fit_stretch_radius_error(fit, &found));
            lw_piece_fit_free(fit);
        } else if (i == 1) {
            /* Two figures fit any two pieces. */
            OK(lw_piece_fit_new(list, &fit));
            OK(lw_piece_fit_stretch(fit, &found, &share));
            found.mm = -1.0;
            EXPECT(LW_NOT_KNOWN, lw_piece_fit_stretch_radius_error(fit, &found));
            lw_piece_fit_free(fit);
        }
        CHECK(found.mm == -1.0);
    }
    OK(lw_piece_fit_new(list, &fit));
    OK(lw_piece_fit_stretch(fit, &found, &share));
    NEAR(found.mm, radius, 1e-9);
    NEAR(share, 0.03, 1e-10);
    OK(lw_piece_fit_stretch_radius_error(fit, &found));
    NEAR(found.mm, off * sqrt(along / across), 1e-9);
    /* One degree of freedom says little of the share. */
    OK(lw_piece_fit_stretch_interval(fit, 0.9, &low, &high));
    CHECK(low < 0.0 && high > 0.03);
    lw_piece_fit_free(fit);
    lw_pieces_free(list);
}

static void formers(void) {
    lw_mechanics *tube = NULL;
    lw_held_bend *held = NULL;
    lw_bench *bench = NULL, *kept = NULL;
    lw_length radius = {-1.0}, formed = {-1.0}, grip = {-1.0};
    OK(lw_mechanics_plastic(lw_in(3.0 / 16.0), lw_in(0.028), lw_mpa(207000.0), lw_mpa(250.0), &tube));
    OK(lw_mechanics_bend(tube, lw_mm(14.2875), &held));
    OK(lw_held_bend_radius(held, &radius));
    CHECK(radius.mm == 14.2875);
    OK(lw_bench_of_groove(lw_mm(14.2875), lw_mm(20.5), tube, &bench));
    OK(lw_bench_groove(bench, &radius));
    OK(lw_bench_as_formed(bench, &formed));
    OK(lw_bench_grip(bench, &grip));
    CHECK(radius.mm == 14.2875 && grip.mm == 20.5);
    OK(lw_held_bend_formed_radius(held, &radius));
    CHECK(radius.mm == formed.mm);
    /* Kept and read back it is the same former. */
    OK(lw_bench_kept(formed, grip, lw_mm(14.2875), &kept));
    lw_bench_free(bench);
    OK(lw_bench_groove(kept, &radius));
    CHECK(radius.mm == 14.2875);
    OK(lw_bench_as_formed(kept, &radius));
    CHECK(radius.mm == formed.mm);
    OK(lw_bench_grip(kept, &radius));
    CHECK(radius.mm == 20.5);
    lw_bench_free(kept);
    kept = NULL;
    EXPECT(LW_OUT_OF_RANGE, lw_bench_kept(lw_mm(14.4), lw_mm(20.0), lw_mm(14.41), &kept));
    SAYS("groove", "14.41 mm", "at most the radius as formed, 14.4 mm");
    EXPECT(LW_OUT_OF_RANGE, lw_bench_kept(lw_mm(14.4), lw_mm(-1.0), lw_mm(14.3), &kept));
    EXPECT(LW_OUT_OF_RANGE, lw_bench_kept(lw_mm(-14.4), lw_mm(20.0), lw_mm(14.3), &kept));
    EXPECT(LW_NOT_A_NUMBER, lw_bench_kept(lw_mm(14.4), lw_mm(20.0), lw_unknown_length(), &kept));
    CHECK(kept == NULL);
    OK(lw_bench_new(lw_mm(14.3), lw_mm(20.0), &bench));
    radius.mm = -1.0;
    EXPECT(LW_NOT_KNOWN, lw_bench_groove(bench, &radius));
    CHECK(radius.mm == -1.0);
    OK(lw_bench_grip(bench, &grip));
    CHECK(grip.mm == 20.0);
    lw_bench_free(bench);
    lw_held_bend_free(held);
    lw_mechanics_free(tube);
}

int main(void) {
    records();
    records_of_springbacks();
    fits();
    tubes();
    readings();
    stretches();
    formers();
    return verdict("records");
}
