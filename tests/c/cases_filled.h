/* Operations about the ideal cylinder under pressure and a line full of fluid. */
#ifndef CASES_FILLED_H
#define CASES_FILLED_H

#include "cases.h"
#include "cases_wall.h"

static const char CASE_SOURCE[] = "a case";

static double number_of(const char *key) {
    return strtod(value(key), NULL);
}

static lw_status length_of(const char *key, lw_length *length) {
    length->mm = 0.0;
    return has(key) ? lw_length_read(value(key), length) : LW_OK;
}

static lw_status put_ideal(lw_cylinder *cylinder) {
    lw_length od_plus, wall_minus, radius, shift, wall;
    lw_pressure strength, pressure, ideal, stress;
    lw_strength asked_strength;
    char place[LONGEST_TEXT];
    double margin;
    int32_t reached;
    size_t need;
    TRY(length_of("od_plus", &od_plus));
    TRY(length_of("wall_minus", &wall_minus));
    TRY(lw_cylinder_set_tolerances(cylinder, od_plus, wall_minus));
    if (has("radius")) {
        TRY(length_of("radius", &radius));
        TRY(lw_cylinder_set_bend(cylinder, radius));
    }
    if (has("neutral_shift")) {
        TRY(length_of("neutral_shift", &shift));
        TRY(lw_cylinder_set_neutral_shift(cylinder, shift));
    }
    TRY(lw_pressure_read(value("strength"), &strength));
    TRY(lw_pressure_read(value("pressure"), &pressure));
    asked_strength.size = sizeof asked_strength;
    asked_strength.value = strength;
    asked_strength.factor = number_of("factor");
    asked_strength.source = value("source");
    TRY(lw_ideal_cylinder_pressure(cylinder, value("theory"), &asked_strength, &ideal, &wall));
    TRY(lw_ideal_cylinder_place(cylinder, value("theory"), &asked_strength, place, sizeof place, &need));
    TRY(lw_cylinder_stress(cylinder, value("theory"), pressure, &stress));
    TRY(lw_ideal_cylinder_margin(cylinder, value("theory"), pressure, &asked_strength, &margin, &reached));
    put_number("ideal_mpa", ideal.mpa);
    put_number("wall_mm", wall.mm);
    put_text("place", place);
    put_number("stress_mpa", stress.mpa);
    put_number("margin_1", margin);
    put_text("reached", reached ? "true" : "false");
    return LW_OK;
}

static lw_status ideal_cylinder(void) {
    lw_tube *tube = NULL;
    lw_cylinder *cylinder = NULL;
    lw_status status;
    TRY(steel_tube(&tube));
    status = lw_cylinder_new(tube, &cylinder);
    lw_tube_free(tube);
    TRY(status);
    status = put_ideal(cylinder);
    lw_cylinder_free(cylinder);
    return status;
}

/* What the figures of a case make; freed together. */
static struct {
    lw_tube *tube;
    lw_properties *metal;
    lw_fluid *fluid;
    lw_filled_tube *filled;
    lw_span *span;
    lw_hold *hold;
} parts;

static void free_parts(void) {
    lw_hold_free(parts.hold);
    lw_span_free(parts.span);
    lw_filled_tube_free(parts.filled);
    lw_fluid_free(parts.fluid);
    lw_properties_free(parts.metal);
    lw_tube_free(parts.tube);
    memset(&parts, 0, sizeof parts);
}

static lw_status make_fluid(const char *density) {
    lw_pressure bulk;
    TRY(lw_fluid_new(CASE_SOURCE, &parts.fluid));
    if (has(density)) {
        TRY(lw_fluid_set_density(parts.fluid, number_of(density), CASE_SOURCE));
    }
    if (has("bulk_modulus")) {
        TRY(lw_pressure_read(value("bulk_modulus"), &bulk));
        TRY(lw_fluid_set_bulk_modulus(parts.fluid, bulk, CASE_SOURCE));
    }
    if (has("expansion")) {
        TRY(lw_fluid_set_expansion(parts.fluid, number_of("expansion"), CASE_SOURCE));
    }
    return LW_OK;
}

static lw_status make_metal(void) {
    lw_pressure modulus;
    TRY(lw_properties_new(CASE_SOURCE, &parts.metal));
    TRY(lw_pressure_read(value("modulus"), &modulus));
    TRY(lw_properties_set_modulus(parts.metal, modulus, CASE_SOURCE));
    if (has("poisson")) {
        TRY(lw_properties_set_poisson(parts.metal, number_of("poisson"), CASE_SOURCE));
    }
    return LW_OK;
}

static lw_status put_filled(void) {
    lw_length length;
    lw_pressure pressure, bulk, rise;
    double wall, all, volume, speed;
    TRY(make_metal());
    TRY(make_fluid("density"));
    TRY(steel_tube(&parts.tube));
    TRY(lw_filled_tube_new(parts.tube, parts.metal, value("ends"), parts.fluid, &parts.filled));
    TRY(lw_length_read(value("length"), &length));
    TRY(lw_pressure_read(value("pressure"), &pressure));
    TRY(lw_filled_tube_volume_to_raise_ml(parts.filled, length, pressure, &volume));
    TRY(lw_filled_tube_pressure_of_warming(parts.filled, number_of("warming"), number_of("wall_expansion"), &rise));
    TRY(lw_filled_tube_wall_compliance_per_mpa(parts.filled, &wall));
    TRY(lw_filled_tube_compliance_per_mpa(parts.filled, &all));
    TRY(lw_filled_tube_effective_bulk_modulus(parts.filled, &bulk));
    TRY(lw_filled_tube_wave_speed_m_per_s(parts.filled, &speed));
    put_number("wall_per_mpa", wall);
    put_number("all_per_mpa", all);
    put_number("bulk_mpa", bulk.mpa);
    put_number("volume_ml", volume);
    put_number("rise_mpa", rise.mpa);
    put_number("wave_m_per_s", speed);
    return LW_OK;
}

static lw_status filled_tube(void) {
    const lw_status status = put_filled();
    free_parts();
    return status;
}

static lw_status put_span(void) {
    lw_length length, spaced;
    double mass, frequency;
    TRY(make_metal());
    if (has("density")) {
        TRY(lw_properties_set_density(parts.metal, number_of("density"), CASE_SOURCE));
    }
    if (has("fluid_density")) {
        TRY(make_fluid("fluid_density"));
    }
    TRY(steel_tube(&parts.tube));
    TRY(lw_span_new(parts.tube, parts.metal, parts.fluid, &parts.span));
    TRY(lw_length_read(value("length"), &length));
    TRY(lw_span_mass_g(parts.span, length, &mass));
    TRY(lw_span_first_frequency_hz(parts.span, length, value("ends"), &frequency));
    TRY(lw_span_length_for(parts.span, number_of("wanted"), value("ends"), &spaced));
    put_number("mass_g", mass);
    put_number("frequency_hz", frequency);
    put_number("length_mm", spaced.mm);
    return LW_OK;
}

static lw_status span(void) {
    const lw_status status = put_span();
    free_parts();
    return status;
}

static lw_status put_hold(void) {
    lw_pressure warmed, fallen, fall;
    double grown, loss;
    TRY(make_fluid("density"));
    TRY(lw_hold_new(number_of("volume"), parts.fluid, &parts.hold));
    TRY(lw_hold_volume_of_temperature_ml(parts.hold, number_of("warming"), &grown));
    TRY(lw_hold_ideal_rigid_warming(parts.hold, number_of("warming"), &warmed));
    TRY(lw_hold_ideal_rigid_pressure(parts.hold, number_of("lost"), &fallen));
    TRY(lw_pressure_read(value("fall"), &fall));
    TRY(lw_hold_ideal_rigid_loss_ml(parts.hold, fall, &loss));
    put_number("grown_ml", grown);
    put_number("warmed_mpa", warmed.mpa);
    put_number("fallen_mpa", fallen.mpa);
    put_number("loss_ml", loss);
    return LW_OK;
}

static lw_status hold(void) {
    const lw_status status = put_hold();
    free_parts();
    return status;
}

#endif
