/* What records, fits, tubes and formers hold, asked back from C. Every figure expected here was put in by the
 * program itself or follows from that by hand. */
#include "check.h"

#include <math.h>

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
    formers();
    return verdict("records");
}
