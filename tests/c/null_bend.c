/* As null.c, for springback, test pieces, and what a bend does to a tube. */
#include "check.h"

/* What the functions work on. */
static lw_tube *tube;
static lw_properties *metal;
static lw_mechanics *mechanics;
static lw_held_bend *held;
static lw_springback *springback;
static lw_trial_fit *fit;
static lw_calibration *record;
static lw_pieces *pieces;
static lw_piece_fit *piece_fit;
static lw_bench *bench;
static lw_bent_wall *bent;
static lw_section *section;

/* Where answers would go. */
static char text[16384];
static size_t count;
static int32_t flag;
static double number_0;
static double number_1;
static lw_length length_0;
static lw_length length_1;
static lw_length length_2;
static lw_angle angle_0;
static lw_angle angle_1;
static lw_angle angles[8];
static lw_length lengths[8];
static lw_prior new_prior;
static lw_tube *new_tube;
static lw_mechanics *new_mechanics;
static lw_held_bend *new_held;
static lw_springback *new_springback;
static lw_trial_fit *new_fit;
static lw_calibration *new_record;
static lw_piece_fit *new_piece_fit;
static lw_bent_wall *new_bent;
static lw_section *new_section;
static lw_bench *new_bench;

/* What goes in beside them. */
static const lw_angle set[3] = {{30.0}, {60.0}, {90.0}};
static const lw_angle got[3] = {{28.6}, {58.2}, {87.5}};
static const lw_angle bend[1] = {{90.0}};
static const lw_length legs[2] = {{112.1}, {94.2}};
static lw_prior prior;

static void make(void) {
    OK(lw_tube_new(lw_mm(4.7625), lw_mm(0.7112), "low-carbon steel", &tube));
    OK(lw_material_properties("copper-nickel", "half hard", &metal));
    OK(lw_mechanics_plastic(lw_mm(4.7625), lw_mm(0.7112), lw_mpa(205000.0), lw_mpa(240.0), &mechanics));
    OK(lw_mechanics_bend(mechanics, lw_mm(14.2875), &held));
    OK(lw_mechanics_prior(mechanics, lw_mm(14.2875), lw_mm(0.0), 0.1, 0.03, lw_deg(0.3), 2, &prior));
    OK(lw_springback_from_trials(set, got, 3, &springback));
    OK(lw_trial_fit_new(set, got, 3, &fit));
    OK(lw_calibration_new(set, got, 3, tube, "former 1", "2026-05-14", "2", &record));
    OK(lw_pieces_new(&pieces));
    OK(lw_pieces_add(pieces, lw_mm(200.0), legs, 2, bend, 1));
    OK(lw_piece_fit_new(pieces, &piece_fit));
    OK(lw_bench_of_groove(lw_mm(14.3), lw_mm(20.0), mechanics, &bench));
    OK(lw_bent_wall_new(tube, lw_mm(14.3), &bent));
    OK(lw_section_of_flattening(tube, 0.9, "sides held", &section));
}

static void unmake(void) {
    lw_tube_free(tube);
    lw_properties_free(metal);
    lw_mechanics_free(mechanics);
    lw_held_bend_free(held);
    lw_springback_free(springback);
    lw_trial_fit_free(fit);
    lw_calibration_free(record);
    lw_pieces_free(pieces);
    lw_piece_fit_free(piece_fit);
    lw_bench_free(bench);
    lw_bent_wall_free(bent);
    lw_section_free(section);
}

static void of_mechanics(void) {
    REFUSES("bend", lw_held_bend_formed_radius(NULL, &length_0));
    REFUSES("formed_radius", lw_held_bend_formed_radius(held, NULL));
    REFUSES("bend", lw_held_bend_moment_nmm(NULL, &number_0));
    REFUSES("moment_nmm", lw_held_bend_moment_nmm(held, NULL));
    REFUSES("bend", lw_held_bend_radius(NULL, &length_0));
    REFUSES("radius", lw_held_bend_radius(held, NULL));
    REFUSES("bend", lw_held_bend_share(NULL, &number_0));
    REFUSES("share", lw_held_bend_share(held, NULL));
    REFUSES("bend", lw_held_bend_springback(NULL, lw_mm(0.0), &new_springback));
    REFUSES("springback", lw_held_bend_springback(held, lw_mm(0.0), NULL));
    REFUSES("mechanics", lw_mechanics_bend(NULL, lw_mm(14.3), &new_held));
    REFUSES("bend", lw_mechanics_bend(mechanics, lw_mm(14.3), NULL));
    REFUSES("mechanics", lw_mechanics_bilinear(lw_mm(4.7625), lw_mm(0.7112), lw_mpa(205000.0), lw_mpa(240.0),
                                               lw_mpa(2000.0), NULL));
    REFUSES("metal", lw_mechanics_of_metal(lw_mm(4.7625), lw_mm(0.7112), NULL, &new_mechanics));
    REFUSES("mechanics", lw_mechanics_of_metal(lw_mm(4.7625), lw_mm(0.7112), metal, NULL));
    REFUSES("mechanics", lw_mechanics_plastic(lw_mm(4.7625), lw_mm(0.7112), lw_mpa(205000.0), lw_mpa(240.0), NULL));
    REFUSES("mechanics", lw_mechanics_power_law(lw_mm(4.7625), lw_mm(0.7112), lw_mpa(205000.0), lw_mpa(600.0), 0.2,
                                                NULL));
    REFUSES("mechanics", lw_mechanics_prior(NULL, lw_mm(14.3), lw_mm(0.0), 0.1, 0.03, lw_deg(0.3), 2, &new_prior));
    REFUSES("prior", lw_mechanics_prior(mechanics, lw_mm(14.3), lw_mm(0.0), 0.1, 0.03, lw_deg(0.3), 2, NULL));
    REFUSES("mechanics", lw_mechanics_setting_range(NULL, lw_mm(14.3), lw_mm(0.0), lw_deg(60.0), 0.1, 0.03, &angle_0,
                                                    &angle_1));
    REFUSES("least", lw_mechanics_setting_range(mechanics, lw_mm(14.3), lw_mm(0.0), lw_deg(60.0), 0.1, 0.03, NULL,
                                                &angle_1));
    REFUSES("most", lw_mechanics_setting_range(mechanics, lw_mm(14.3), lw_mm(0.0), lw_deg(60.0), 0.1, 0.03, &angle_0,
                                               NULL));
}

static void of_records(void) {
    REFUSES("calibration", lw_calibration_date(NULL, text, sizeof text, &count));
    REFUSES("buf", lw_calibration_date(record, NULL, sizeof text, &count));
    REFUSES("need", lw_calibration_date(record, text, sizeof text, NULL));
    REFUSES("calibration", lw_calibration_former(NULL, text, sizeof text, &count));
    REFUSES("buf", lw_calibration_former(record, NULL, sizeof text, &count));
    REFUSES("need", lw_calibration_former(record, text, sizeof text, NULL));
    REFUSES("calibration", lw_calibration_revision(NULL, text, sizeof text, &count));
    REFUSES("buf", lw_calibration_revision(record, NULL, sizeof text, &count));
    REFUSES("need", lw_calibration_revision(record, text, sizeof text, NULL));
    REFUSES("calibration", lw_calibration_text(NULL, text, sizeof text, &count));
    REFUSES("buf", lw_calibration_text(record, NULL, sizeof text, &count));
    REFUSES("need", lw_calibration_text(record, text, sizeof text, NULL));
    REFUSES("calibration", lw_calibration_trials(NULL, angles, &angles[4], 3, &count));
    REFUSES("set", lw_calibration_trials(record, NULL, angles, 3, &count));
    REFUSES("got", lw_calibration_trials(record, angles, NULL, 3, &count));
    REFUSES("need", lw_calibration_trials(record, angles, &angles[4], 3, NULL));
    REFUSES("calibration", lw_calibration_tube(NULL, &new_tube));
    REFUSES("tube", lw_calibration_tube(record, NULL));
    REFUSES("springback", lw_springback_calibration(NULL, &new_record));
    REFUSES("calibration", lw_springback_calibration(springback, NULL));
    REFUSES("tube", lw_tube_material(NULL, text, sizeof text, &count));
    REFUSES("buf", lw_tube_material(tube, NULL, sizeof text, &count));
    REFUSES("need", lw_tube_material(tube, text, sizeof text, NULL));
    REFUSES("tube", lw_tube_min_radius(NULL, &length_0));
    REFUSES("min_radius", lw_tube_min_radius(tube, NULL));
    REFUSES("tube", lw_tube_min_radius_source(NULL, text, sizeof text, &count));
    REFUSES("buf", lw_tube_min_radius_source(tube, NULL, sizeof text, &count));
    REFUSES("need", lw_tube_min_radius_source(tube, text, sizeof text, NULL));
}

static void of_fits(void) {
    REFUSES("calibration", lw_calibration_is_for(NULL, tube, &flag));
    REFUSES("tube", lw_calibration_is_for(record, NULL, &flag));
    REFUSES("is_for", lw_calibration_is_for(record, tube, NULL));
    REFUSES("set", lw_calibration_new(NULL, got, 3, tube, "former 1", "2026-05-14", "2", &new_record));
    REFUSES("got", lw_calibration_new(set, NULL, 3, tube, "former 1", "2026-05-14", "2", &new_record));
    REFUSES("tube", lw_calibration_new(set, got, 3, NULL, "former 1", "2026-05-14", "2", &new_record));
    REFUSES("former", lw_calibration_new(set, got, 3, tube, NULL, "2026-05-14", "2", &new_record));
    REFUSES("date", lw_calibration_new(set, got, 3, tube, "former 1", NULL, "2", &new_record));
    REFUSES("revision", lw_calibration_new(set, got, 3, tube, "former 1", "2026-05-14", NULL, &new_record));
    REFUSES("calibration", lw_calibration_new(set, got, 3, tube, "former 1", "2026-05-14", "2", NULL));
    REFUSES("calibration", lw_calibration_springback(NULL, &new_springback));
    REFUSES("springback", lw_calibration_springback(record, NULL));
    REFUSES("basis", lw_springback_kept(lw_deg(0.1), 0.038, NULL, set, got, 3, &new_springback));
    REFUSES("set", lw_springback_kept(lw_deg(0.1), 0.038, "trials", NULL, got, 3, &new_springback));
    REFUSES("got", lw_springback_kept(lw_deg(0.1), 0.038, "trials", set, NULL, 3, &new_springback));
    REFUSES("springback", lw_springback_kept(lw_deg(0.1), 0.038, "trials", set, got, 3, NULL));
    REFUSES("springback", lw_springback_trials(NULL, angles, angles, 3, &count));
    REFUSES("set", lw_springback_trials(springback, NULL, angles, 3, &count));
    REFUSES("got", lw_springback_trials(springback, angles, NULL, 3, &count));
    REFUSES("need", lw_springback_trials(springback, angles, angles, 3, NULL));
    REFUSES("springback", lw_springback_is_weak(NULL, &flag));
    REFUSES("is_weak", lw_springback_is_weak(springback, NULL));
    REFUSES("springback", lw_springback_basis(NULL, text, sizeof text, &count));
    REFUSES("buf", lw_springback_basis(springback, NULL, sizeof text, &count));
    REFUSES("need", lw_springback_basis(springback, text, sizeof text, NULL));
    REFUSES("springback", lw_springback_calibration_text(NULL, text, sizeof text, &count));
    REFUSES("buf", lw_springback_calibration_text(springback, NULL, sizeof text, &count));
    REFUSES("need", lw_springback_calibration_text(springback, text, sizeof text, NULL));
    REFUSES("fit", lw_springback_page(NULL, record, set, 3, 0.95, text, sizeof text, &count));
    ALLOWS("record", lw_springback_page(fit, NULL, set, 3, 0.95, text, sizeof text, &count));
    REFUSES("wanted", lw_springback_page(fit, record, NULL, 3, 0.95, text, sizeof text, &count));
    REFUSES("buf", lw_springback_page(fit, record, set, 3, 0.95, NULL, sizeof text, &count));
    REFUSES("need", lw_springback_page(fit, record, set, 3, 0.95, text, sizeof text, NULL));
    REFUSES("springback", lw_springback_set_calibration(NULL, record));
    REFUSES("calibration", lw_springback_set_calibration(springback, NULL));
    REFUSES("fit", lw_trial_fit_advice(NULL, set, 3, lw_deg(0.3), 0.95, set, 3, angles, 8, &count, &angle_1, &flag));
    REFUSES("wanted", lw_trial_fit_advice(fit, NULL, 3, lw_deg(0.3), 0.95, set, 3, angles, 8, &count, &angle_1, &flag));
    REFUSES("candidates", lw_trial_fit_advice(fit, set, 3, lw_deg(0.3), 0.95, NULL, 3, angles, 8, &count, &angle_1,
                                              &flag));
    REFUSES("angles", lw_trial_fit_advice(fit, set, 3, lw_deg(0.3), 0.95, set, 3, NULL, 8, &count, &angle_1, &flag));
    REFUSES("need", lw_trial_fit_advice(fit, set, 3, lw_deg(0.3), 0.95, set, 3, angles, 8, NULL, &angle_1, &flag));
    REFUSES("reaches", lw_trial_fit_advice(fit, set, 3, lw_deg(0.3), 0.95, set, 3, angles, 8, &count, NULL, &flag));
    REFUSES("is_enough", lw_trial_fit_advice(fit, set, 3, lw_deg(0.3), 0.95, set, 3, angles, 8, &count, &angle_1,
                                             NULL));
    REFUSES("fit", lw_trial_fit_constant_interval(NULL, 0.95, &angle_0, &angle_1));
    REFUSES("low", lw_trial_fit_constant_interval(fit, 0.95, NULL, &angle_1));
    REFUSES("high", lw_trial_fit_constant_interval(fit, 0.95, &angle_0, NULL));
    REFUSES("fit", lw_trial_fit_degrees_of_freedom(NULL, &count));
    REFUSES("degrees_of_freedom", lw_trial_fit_degrees_of_freedom(fit, NULL));
    REFUSES("fit", lw_trial_fit_is_bent(NULL, &flag));
    REFUSES("is_bent", lw_trial_fit_is_bent(fit, NULL));
    REFUSES("fit", lw_trial_fit_is_contradicted(NULL, &flag));
    REFUSES("is_contradicted", lw_trial_fit_is_contradicted(fit, NULL));
    REFUSES("set", lw_trial_fit_new(NULL, got, 3, &new_fit));
    REFUSES("got", lw_trial_fit_new(set, NULL, 3, &new_fit));
    REFUSES("fit", lw_trial_fit_new(set, got, 3, NULL));
    REFUSES("fit", lw_trial_fit_next_bend(NULL, lw_deg(60.0), 0.95, &angle_0));
    REFUSES("half_width", lw_trial_fit_next_bend(fit, lw_deg(60.0), 0.95, NULL));
    REFUSES("fit", lw_trial_fit_outlier(NULL, &count));
    REFUSES("number", lw_trial_fit_outlier(fit, NULL));
    REFUSES("fit", lw_trial_fit_prior(NULL, &new_prior));
    REFUSES("prior", lw_trial_fit_prior(fit, NULL));
    REFUSES("fit", lw_trial_fit_proportional_interval(NULL, 0.95, &number_0, &number_1));
    REFUSES("low", lw_trial_fit_proportional_interval(fit, 0.95, NULL, &number_1));
    REFUSES("high", lw_trial_fit_proportional_interval(fit, 0.95, &number_0, NULL));
    REFUSES("fit", lw_trial_fit_reading(NULL, &angle_0));
    REFUSES("reading", lw_trial_fit_reading(fit, NULL));
    REFUSES("fit", lw_trial_fit_scatter(NULL, &angle_0));
    REFUSES("scatter", lw_trial_fit_scatter(fit, NULL));
    REFUSES("fit", lw_trial_fit_setting_interval(NULL, lw_deg(60.0), 0.95, &angle_0, &angle_1));
    REFUSES("low", lw_trial_fit_setting_interval(fit, lw_deg(60.0), 0.95, NULL, &angle_1));
    REFUSES("high", lw_trial_fit_setting_interval(fit, lw_deg(60.0), 0.95, &angle_0, NULL));
    REFUSES("fit", lw_trial_fit_springback(NULL, &new_springback));
    REFUSES("springback", lw_trial_fit_springback(fit, NULL));
    REFUSES("fit", lw_trial_fit_standard_errors(NULL, &angle_0, &number_0));
    REFUSES("constant", lw_trial_fit_standard_errors(fit, NULL, &number_0));
    REFUSES("proportional", lw_trial_fit_standard_errors(fit, &angle_0, NULL));
    REFUSES("fit", lw_trial_fit_trials(NULL, angles, &angles[4], 3, &count));
    REFUSES("set", lw_trial_fit_trials(fit, NULL, angles, 3, &count));
    REFUSES("got", lw_trial_fit_trials(fit, angles, NULL, 3, &count));
    REFUSES("need", lw_trial_fit_trials(fit, angles, &angles[4], 3, NULL));
    REFUSES("fit", lw_trial_fit_weight_of_trials(NULL, lw_deg(60.0), &number_0));
    REFUSES("weight", lw_trial_fit_weight_of_trials(fit, lw_deg(60.0), NULL));
    REFUSES("prior", lw_trial_fit_with_prior(NULL, set, got, 3, &new_fit));
    REFUSES("set", lw_trial_fit_with_prior(&prior, NULL, got, 3, &new_fit));
    REFUSES("got", lw_trial_fit_with_prior(&prior, set, NULL, 3, &new_fit));
    REFUSES("fit", lw_trial_fit_with_prior(&prior, set, got, 3, NULL));
}

static void of_pieces(void) {
    REFUSES("tube", lw_bench_of_groove(lw_mm(14.3), lw_mm(20.0), NULL, &new_bench));
    REFUSES("bench", lw_bench_of_groove(lw_mm(14.3), lw_mm(20.0), mechanics, NULL));
    REFUSES("bench", lw_bench_as_formed(NULL, &length_0));
    REFUSES("as_formed", lw_bench_as_formed(bench, NULL));
    REFUSES("bench", lw_bench_grip(NULL, &length_0));
    REFUSES("grip", lw_bench_grip(bench, NULL));
    REFUSES("bench", lw_bench_groove(NULL, &length_0));
    REFUSES("groove", lw_bench_groove(bench, NULL));
    REFUSES("bench", lw_bench_kept(lw_mm(14.4), lw_mm(20.0), lw_mm(14.3), NULL));
    REFUSES("fit", lw_piece_fit_gain(NULL, lw_deg(60.0), &length_0));
    REFUSES("gain", lw_piece_fit_gain(piece_fit, lw_deg(60.0), NULL));
    REFUSES("fit", lw_piece_fit_gain_interval(NULL, lw_deg(60.0), 0.95, &length_0, &length_1));
    REFUSES("low", lw_piece_fit_gain_interval(piece_fit, lw_deg(60.0), 0.95, NULL, &length_1));
    REFUSES("high", lw_piece_fit_gain_interval(piece_fit, lw_deg(60.0), 0.95, &length_0, NULL));
    REFUSES("pieces", lw_piece_fit_new(NULL, &new_piece_fit));
    REFUSES("fit", lw_piece_fit_new(pieces, NULL));
    REFUSES("fit", lw_piece_fit_radius(NULL, &length_0));
    REFUSES("radius", lw_piece_fit_radius(piece_fit, NULL));
    REFUSES("fit", lw_piece_fit_radius_error(NULL, &length_0));
    REFUSES("radius_error", lw_piece_fit_radius_error(piece_fit, NULL));
    REFUSES("fit", lw_piece_fit_radius_interval(NULL, 0.95, &length_0, &length_1));
    REFUSES("low", lw_piece_fit_radius_interval(piece_fit, 0.95, NULL, &length_1));
    REFUSES("high", lw_piece_fit_radius_interval(piece_fit, 0.95, &length_0, NULL));
    REFUSES("fit", lw_piece_fit_scatter(NULL, &length_0));
    REFUSES("scatter", lw_piece_fit_scatter(piece_fit, NULL));
    REFUSES("fit", lw_piece_fit_stretch(NULL, &length_0, &number_0));
    REFUSES("radius", lw_piece_fit_stretch(piece_fit, NULL, &number_0));
    REFUSES("share", lw_piece_fit_stretch(piece_fit, &length_0, NULL));
    REFUSES("fit", lw_piece_fit_stretch_interval(NULL, 0.95, &number_0, &number_1));
    REFUSES("low", lw_piece_fit_stretch_interval(piece_fit, 0.95, NULL, &number_1));
    REFUSES("high", lw_piece_fit_stretch_interval(piece_fit, 0.95, &number_0, NULL));
    REFUSES("fit", lw_piece_fit_stretch_radius_error(NULL, &length_0));
    REFUSES("radius_error", lw_piece_fit_stretch_radius_error(piece_fit, NULL));
    REFUSES("pieces", lw_pieces_add(NULL, lw_mm(200.0), legs, 2, bend, 1));
    REFUSES("legs", lw_pieces_add(pieces, lw_mm(200.0), NULL, 2, bend, 1));
    REFUSES("angles", lw_pieces_add(pieces, lw_mm(200.0), legs, 2, NULL, 1));
    REFUSES("pieces", lw_pieces_add_outer(NULL, lw_mm(200.0), legs, 2, bend, 1, lw_mm(4.7625)));
    REFUSES("outer_legs", lw_pieces_add_outer(pieces, lw_mm(200.0), NULL, 2, bend, 1, lw_mm(4.7625)));
    REFUSES("angles", lw_pieces_add_outer(pieces, lw_mm(200.0), legs, 2, NULL, 1, lw_mm(4.7625)));
    REFUSES("pieces", lw_pieces_new(NULL));
    REFUSES("pieces", lw_pieces_angles(NULL, 0, angles, 8, &count));
    REFUSES("angles", lw_pieces_angles(pieces, 0, NULL, 8, &count));
    REFUSES("need", lw_pieces_angles(pieces, 0, angles, 8, NULL));
    REFUSES("pieces", lw_pieces_count(NULL, &count));
    REFUSES("count", lw_pieces_count(pieces, NULL));
    REFUSES("pieces", lw_pieces_gain(NULL, 0, &length_0));
    REFUSES("gain", lw_pieces_gain(pieces, 0, NULL));
    REFUSES("pieces", lw_pieces_legs(NULL, 0, lengths, 8, &count));
    REFUSES("legs", lw_pieces_legs(pieces, 0, NULL, 8, &count));
    REFUSES("need", lw_pieces_legs(pieces, 0, lengths, 8, NULL));
    REFUSES("pieces", lw_pieces_length(NULL, 0, &length_0));
    REFUSES("length", lw_pieces_length(pieces, 0, NULL));
    REFUSES("pieces", lw_pieces_reading(NULL, 0, &length_0));
    REFUSES("reading", lw_pieces_reading(pieces, 0, NULL));
    REFUSES("pieces", lw_pieces_set_reading(NULL, 0, lw_mm(1.0)));
}

static void of_bends(void) {
    REFUSES("bent", lw_bent_wall_at(NULL, "extrados", "uniaxial", &length_0));
    REFUSES("place", lw_bent_wall_at(bent, NULL, "uniaxial", &length_0));
    REFUSES("thinning", lw_bent_wall_at(bent, "extrados", NULL, &length_0));
    REFUSES("wall", lw_bent_wall_at(bent, "extrados", "uniaxial", NULL));
    REFUSES("bent", lw_bent_wall_free_wrinkling(NULL, 0.2, &number_0, &number_1));
    REFUSES("compression", lw_bent_wall_free_wrinkling(bent, 0.2, NULL, &number_1));
    REFUSES("critical", lw_bent_wall_free_wrinkling(bent, 0.2, &number_0, NULL));
    REFUSES("bent", lw_bent_wall_needs_groove(NULL, 0.2, &flag));
    REFUSES("needs_groove", lw_bent_wall_needs_groove(bent, 0.2, NULL));
    REFUSES("bent", lw_bent_wall_wrinkling_words(NULL, 0.2, text, sizeof text, &count));
    REFUSES("buf", lw_bent_wall_wrinkling_words(bent, 0.2, NULL, sizeof text, &count));
    REFUSES("need", lw_bent_wall_wrinkling_words(bent, 0.2, text, sizeof text, NULL));
    REFUSES("bent", lw_bent_wall_neutral_shift(NULL, &length_0));
    REFUSES("shift", lw_bent_wall_neutral_shift(bent, NULL));
    REFUSES("tube", lw_bent_wall_new(NULL, lw_mm(14.3), &new_bent));
    REFUSES("bent", lw_bent_wall_new(tube, lw_mm(14.3), NULL));
    REFUSES("bent", lw_bent_wall_outer_stretch(NULL, &number_0));
    REFUSES("stretch", lw_bent_wall_outer_stretch(bent, NULL));
    REFUSES("bent", lw_bent_wall_range(NULL, "extrados", &length_0, &length_1));
    REFUSES("place", lw_bent_wall_range(bent, NULL, &length_0, &length_1));
    REFUSES("least", lw_bent_wall_range(bent, "extrados", NULL, &length_1));
    REFUSES("most", lw_bent_wall_range(bent, "extrados", &length_0, NULL));
    REFUSES("bent", lw_bent_wall_set_neutral_shift(NULL, lw_mm(0.1)));
    REFUSES("bent", lw_bent_wall_set_plastic_neutral_axis(NULL));
    REFUSES("section", lw_section_bore_area_mm2(NULL, &number_0));
    REFUSES("bore_area_mm2", lw_section_bore_area_mm2(section, NULL));
    REFUSES("section", lw_section_out_of_round(NULL, &length_0));
    REFUSES("out_of_round", lw_section_out_of_round(section, NULL));
    REFUSES("section", lw_section_bore_share(NULL, &number_0));
    REFUSES("bore_share", lw_section_bore_share(section, NULL));
    REFUSES("section", lw_section_bore_loss(NULL, &number_0));
    REFUSES("bore_loss", lw_section_bore_loss(section, NULL));
    REFUSES("section", lw_section_flattening(NULL, &number_0));
    REFUSES("flattening", lw_section_flattening(section, NULL));
    REFUSES("section", lw_section_largest(NULL, &length_0));
    REFUSES("largest", lw_section_largest(section, NULL));
    REFUSES("tube", lw_section_of_flattening(NULL, 0.9, "sides held", &new_section));
    REFUSES("kinematics", lw_section_of_flattening(tube, 0.9, NULL, &new_section));
    REFUSES("section", lw_section_of_flattening(tube, 0.9, "sides held", NULL));
    REFUSES("tube", lw_section_of_ovality(NULL, 0.1, "sides held", &new_section));
    REFUSES("kinematics", lw_section_of_ovality(tube, 0.1, NULL, &new_section));
    REFUSES("section", lw_section_of_ovality(tube, 0.1, "sides held", NULL));
    REFUSES("section", lw_section_ovality(NULL, &number_0));
    REFUSES("ovality", lw_section_ovality(section, NULL));
    REFUSES("section", lw_section_smallest(NULL, &length_0));
    REFUSES("smallest", lw_section_smallest(section, NULL));
}

static void of_rules(void) {
    REFUSES("count", lw_radius_rule_count(lw_mm(4.7625), NULL));
    REFUSES("least", lw_radius_rule_least(lw_mm(4.7625), 0, NULL));
    REFUSES("buf", lw_radius_rule_scope(lw_mm(4.7625), 0, NULL, sizeof text, &count));
    REFUSES("need", lw_radius_rule_scope(lw_mm(4.7625), 0, text, sizeof text, NULL));
    REFUSES("buf", lw_radius_rule_source(lw_mm(4.7625), 0, NULL, sizeof text, &count));
    REFUSES("need", lw_radius_rule_source(lw_mm(4.7625), 0, text, sizeof text, NULL));
    REFUSES("count", lw_section_limit_count(NULL));
    REFUSES("buf", lw_section_limit_measure(0, NULL, sizeof text, &count));
    REFUSES("need", lw_section_limit_measure(0, text, sizeof text, NULL));
    REFUSES("buf", lw_section_limit_scope(0, NULL, sizeof text, &count));
    REFUSES("need", lw_section_limit_scope(0, text, sizeof text, NULL));
    REFUSES("buf", lw_section_limit_source(0, NULL, sizeof text, &count));
    REFUSES("need", lw_section_limit_source(0, text, sizeof text, NULL));
    REFUSES("limit", lw_section_limit_value(0, NULL));
    REFUSES("wall", lw_size_tolerance(lw_mm(4.7625), 0, NULL, &length_1, &length_2));
    REFUSES("wall_plus_minus", lw_size_tolerance(lw_mm(4.7625), 0, &length_0, NULL, &length_2));
    REFUSES("od_plus_minus", lw_size_tolerance(lw_mm(4.7625), 0, &length_0, &length_1, NULL));
    REFUSES("count", lw_size_tolerance_count(lw_mm(4.7625), NULL));
    REFUSES("buf", lw_size_tolerance_scope(lw_mm(4.7625), 0, NULL, sizeof text, &count));
    REFUSES("need", lw_size_tolerance_scope(lw_mm(4.7625), 0, text, sizeof text, NULL));
    REFUSES("buf", lw_size_tolerance_source(lw_mm(4.7625), 0, NULL, sizeof text, &count));
    REFUSES("need", lw_size_tolerance_source(lw_mm(4.7625), 0, text, sizeof text, NULL));
    REFUSES("radius_in_diameters", lw_wall_reserve(0, NULL, &number_1));
    REFUSES("multiple", lw_wall_reserve(0, &number_0, NULL));
    REFUSES("count", lw_wall_reserve_count(NULL));
    REFUSES("buf", lw_wall_reserve_source(0, NULL, sizeof text, &count));
    REFUSES("need", lw_wall_reserve_source(0, text, sizeof text, NULL));
}

int main(void) {
    make();
    of_mechanics();
    of_records();
    of_fits();
    of_pieces();
    of_bends();
    of_rules();
    lw_mechanics_free(NULL);
    lw_held_bend_free(NULL);
    lw_trial_fit_free(NULL);
    lw_calibration_free(NULL);
    lw_pieces_free(NULL);
    lw_piece_fit_free(NULL);
    lw_bent_wall_free(NULL);
    lw_section_free(NULL);
    unmake();
    return verdict("null_bend");
}
