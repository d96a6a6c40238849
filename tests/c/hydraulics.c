/* A line full of fluid, asked from C. Where no other source is named, figures were computed apart from the library: in
 * closed form, or with SciPy. */
#include "check.h"

#include <math.h>

static lw_properties *steel(void) {
    lw_properties *metal = NULL;
    OK(lw_properties_new("steel of the table", &metal));
    OK(lw_properties_set_modulus(metal, lw_mpa(207000.0), "this test"));
    OK(lw_properties_set_poisson(metal, 0.29, "this test"));
    OK(lw_properties_set_density(metal, 7850.0, "this test"));
    return metal;
}

static lw_fluid *fluid_of(lw_pressure bulk_modulus, double density_kg_per_m3) {
    lw_fluid *fluid = NULL;
    OK(lw_fluid_new("drum 3", &fluid));
    OK(lw_fluid_set_bulk_modulus(fluid, bulk_modulus, "this test"));
    OK(lw_fluid_set_density(fluid, density_kg_per_m3, "this test"));
    OK(lw_fluid_set_expansion(fluid, 7e-4, "this test"));
    return fluid;
}

static void fluids(void) {
    lw_fluid *fluid = NULL;
    lw_pressure bulk = {-1.0};
    double density = -1.0, expansion = -1.0;
    char text[256] = "";
    size_t need = 0;
    /* 1050 kg/m3 and 7e-4 per kelvin are from memory; sound at 4500 ft/s was seen. */
    OK(lw_fluid_glycol(&fluid));
    OK(lw_fluid_density(fluid, &density));
    OK(lw_fluid_bulk_modulus(fluid, &bulk));
    OK(lw_fluid_expansion(fluid, &expansion));
    CHECK(density == 1050.0 && expansion == 7e-4);
    WITHIN(bulk.mpa, 1050.0 * (4500.0 * 0.3048) * (4500.0 * 0.3048) / 1e6, 1e-13);
    OK(lw_fluid_source(fluid, "density", text, sizeof text, &need));
    CHECK(strstr(text, "memory") != NULL);
    OK(lw_fluid_source(fluid, "bulk_modulus", text, sizeof text, &need));
    CHECK(strstr(text, "4500 ft/s") != NULL && strstr(text, "computed") != NULL);
    EXPECT(LW_UNKNOWN_NAME, lw_fluid_source(fluid, "viscosity", text, sizeof text, &need));
    lw_fluid_free(fluid);
    /* Of a user's own only what was given is there. */
    OK(lw_fluid_new("drum 3", &fluid));
    OK(lw_fluid_name(fluid, text, sizeof text, &need));
    CHECK(strcmp(text, "drum 3") == 0 && need == sizeof "drum 3");
    density = bulk.mpa = expansion = -1.0;
    EXPECT(LW_NOT_KNOWN, lw_fluid_density(fluid, &density));
    EXPECT(LW_NOT_KNOWN, lw_fluid_bulk_modulus(fluid, &bulk));
    EXPECT(LW_NOT_KNOWN, lw_fluid_expansion(fluid, &expansion));
    EXPECT(LW_NOT_KNOWN, lw_fluid_source(fluid, "density", text, sizeof text, &need));
    CHECK(density == -1.0 && bulk.mpa == -1.0 && expansion == -1.0);
    OK(lw_fluid_set_density(fluid, 1060.0, "label"));
    EXPECT(LW_FIELD_MISSING, lw_fluid_set_density(fluid, 900.0, " "));
    EXPECT(LW_NOT_A_NUMBER, lw_fluid_set_density(fluid, nan(""), "label"));
    EXPECT(LW_OUT_OF_RANGE, lw_fluid_set_expansion(fluid, 0.5, "label"));
    EXPECT(LW_OUT_OF_RANGE, lw_fluid_set_bulk_modulus(fluid, lw_mpa(1.0), "label"));
    SAYS("bulk_modulus", "1 MPa", "10 to 100000 MPa");
    OK(lw_fluid_density(fluid, &density));
    WITHIN(density, 1060.0, 1e-14);
    OK(lw_fluid_source(fluid, "density", text, sizeof text, &need));
    CHECK(strstr(text, "label") == text);
    EXPECT(LW_NOT_KNOWN, lw_fluid_bulk_modulus(fluid, &bulk));
    lw_fluid_free(fluid);
}

static void filled_tubes(void) {
    static const char *const ends[3] = {"closed", "open", "fixed"};
    static const struct {
        double od, wall, bore_mm2, per_mpa[3], effective, wave;
    } rows[] = {
        {4.7625, 0.7112, 8.7621124, {3.042076e-5, 2.845672e-5, 2.959586e-5}, 1863.2431, 1332.1101},
        {6.35, 0.7112, 19.0704427, {4.054352e-5, 3.747230e-5, 3.925361e-5}, 1828.7508, 1319.7225},
        {9.525, 0.889, 47.1364632, {4.871757e-5, 4.475231e-5, 4.705216e-5}, 1801.8167, 1309.9679},
        {4.75, 0.75, 8.2957681, {2.879227e-5, 2.700634e-5, 2.804218e-5}, 1868.9139, 1334.1357},
    };
    lw_properties *metal = steel();
    lw_fluid *fluid = fluid_of(lw_mpa(1975.2), 1050.0);
    lw_filled_tube *filled = NULL;
    lw_pressure bulk = {0.0};
    double wall_gives = 0.0, all_gives = 0.0, number = 0.0;
    size_t i, j;
    for (i = 0; i < sizeof rows / sizeof rows[0]; i += 1) {
        lw_tube *tube = steel_tube(lw_mm(rows[i].od), lw_mm(rows[i].wall));
        for (j = 0; j < 3; j += 1) {
            OK(lw_filled_tube_new(tube, metal, ends[j], fluid, &filled));
            OK(lw_filled_tube_wall_compliance_per_mpa(filled, &wall_gives));
            WITHIN(wall_gives, rows[i].per_mpa[j], 3e-7);
            OK(lw_filled_tube_compliance_per_mpa(filled, &all_gives));
            WITHIN(all_gives, rows[i].per_mpa[j] + 1.0 / 1975.2, 3e-8);
            if (j == 0) {
                OK(lw_filled_tube_effective_bulk_modulus(filled, &bulk));
                NEAR(bulk.mpa, rows[i].effective, 0.05);
                /* The table's speeds come from a bulk modulus of one digit more than it prints. */
                OK(lw_filled_tube_wave_speed_m_per_s(filled, &number));
                NEAR(number, rows[i].wave, 0.02);
                /* A meter holds as many milliliters as its bore has square millimeters. */
                OK(lw_filled_tube_volume_to_raise_ml(filled, lw_m(2.0), lw_mpa(10.0), &number));
                WITHIN(number, 2.0 * rows[i].bore_mm2 * 10.0 / rows[i].effective, 5e-5);
            }
            lw_filled_tube_free(filled);
        }
        lw_tube_free(tube);
    }
    lw_fluid_free(fluid);
    lw_properties_free(metal);
}

/* A closed length, warmed by 10 K and cooled by 25 K. */
static void warming(void) {
    static const struct {
        const char *ends;
        double by, rise;
    } rows[] = {
        {"closed", 10.0, 11.331515937484518}, {"open", 10.0, 11.369624080000996}, {"fixed", 10.0, 11.433621750808548},
        {"closed", -25.0, -28.328789843711295},
    };
    lw_tube *tube = steel_tube(lw_in(3.0 / 16.0), lw_in(0.028));
    lw_properties *metal = steel(), *stainless = NULL;
    lw_fluid *fluid = fluid_of(lw_mpa(1800.0), 1060.0), *bare = NULL;
    lw_filled_tube *filled = NULL, *none = NULL;
    lw_pressure rise = {-1.0};
    double number = -1.0;
    char text[512] = "";
    size_t i, need = 0;
    for (i = 0; i < sizeof rows / sizeof rows[0]; i += 1) {
        OK(lw_filled_tube_new(tube, metal, rows[i].ends, fluid, &filled));
        OK(lw_filled_tube_pressure_of_warming(filled, rows[i].by, 1.2e-5, &rise));
        WITHIN(rise.mpa, rows[i].rise, 1e-11);
        lw_filled_tube_free(filled);
    }
    EXPECT(LW_UNKNOWN_NAME, lw_filled_tube_new(tube, metal, "loose", fluid, &none));
    OK(lw_fluid_new("drum 4", &bare));
    EXPECT(LW_NOT_KNOWN, lw_filled_tube_new(tube, metal, "closed", bare, &none));
    OK(lw_last_error_text(text, sizeof text, &need));
    CHECK(strstr(text, "field bulk_modulus: ") != NULL);
    CHECK(strstr(text, "need a figure for drum 4 with its source") != NULL);
    /* No page with Poisson's ratio of 316 was seen. */
    OK(lw_material_properties("stainless 316", NULL, &stainless));
    EXPECT(LW_NOT_KNOWN, lw_filled_tube_new(tube, stainless, "closed", fluid, &none));
    CHECK(none == NULL);
    OK(lw_fluid_set_bulk_modulus(bare, lw_mpa(1800.0), "this test"));
    OK(lw_filled_tube_new(tube, metal, "closed", bare, &filled));
    rise.mpa = -1.0;
    EXPECT(LW_NOT_KNOWN, lw_filled_tube_pressure_of_warming(filled, 1.0, 1.2e-5, &rise));
    EXPECT(LW_NOT_KNOWN, lw_filled_tube_wave_speed_m_per_s(filled, &number));
    EXPECT(LW_NOT_A_NUMBER, lw_filled_tube_pressure_of_warming(filled, nan(""), 1.2e-5, &rise));
    EXPECT(LW_OUT_OF_RANGE, lw_filled_tube_pressure_of_warming(filled, 501.0, 1.2e-5, &rise));
    SAYS("warming", "501 K", "-300 to 300 K");
    EXPECT(LW_OUT_OF_RANGE, lw_filled_tube_volume_to_raise_ml(filled, lw_mm(-1.0), lw_mpa(1.0), &number));
    EXPECT(LW_OUT_OF_RANGE, lw_filled_tube_volume_to_raise_ml(filled, lw_mm(1000.0), lw_mpa(100.0), &number));
    CHECK(rise.mpa == -1.0 && number == -1.0);
    lw_filled_tube_free(filled);
    lw_properties_free(stainless);
    lw_properties_free(metal);
    lw_fluid_free(bare);
    lw_fluid_free(fluid);
    lw_tube_free(tube);
}

/* 90 mL x 7e-4 = 0.063 mL a degree; 1700 MPa x 7e-4 = 1.19 MPa a degree; 1700 MPa x 0.05 / 90 for 0.05 mL lost. */
static void holds(void) {
    lw_fluid *fluid = fluid_of(lw_mpa(1700.0), 1050.0), *bare = NULL;
    lw_hold *hold = NULL, *none = NULL;
    lw_pressure fall = {0.0}, rise = {0.0};
    double volume = 0.0;
    OK(lw_hold_new(90.0, fluid, &hold));
    OK(lw_hold_volume_of_temperature_ml(hold, 1.0, &volume));
    WITHIN(volume, 0.063, 1e-13);
    OK(lw_hold_volume_of_temperature_ml(hold, -2.5, &volume));
    WITHIN(volume, -0.1575, 1e-13);
    OK(lw_hold_ideal_rigid_warming(hold, 1.0, &rise));
    WITHIN(rise.mpa, 1.19, 1e-13);
    OK(lw_hold_ideal_rigid_pressure(hold, 0.05, &fall));
    WITHIN(fall.mpa, 1700.0 * 0.05 / 90.0, 1e-13);
    OK(lw_hold_ideal_rigid_loss_ml(hold, fall, &volume));
    WITHIN(volume, 0.05, 1e-13);
    volume = fall.mpa = -1.0;
    EXPECT(LW_NOT_A_NUMBER, lw_hold_volume_of_temperature_ml(hold, nan(""), &volume));
    EXPECT(LW_OUT_OF_RANGE, lw_hold_ideal_rigid_loss_ml(hold, lw_mpa(-0.2), &volume));
    EXPECT(LW_OUT_OF_RANGE, lw_hold_ideal_rigid_pressure(hold, -0.05, &fall));
    /* A twentieth of the volume and of 1700 MPa; 0.05 / 7e-4. */
    EXPECT(LW_OUT_OF_RANGE, lw_hold_ideal_rigid_pressure(hold, 1000.0, &fall));
    SAYS("lost", "1000 mL", "at most 4.5 mL");
    EXPECT(LW_OUT_OF_RANGE, lw_hold_ideal_rigid_loss_ml(hold, lw_mpa(86.0), &volume));
    SAYS("fall", "86 MPa", "at most 85 MPa");
    EXPECT(LW_OUT_OF_RANGE, lw_hold_ideal_rigid_warming(hold, -100.0, &fall));
    SAYS("warming", "-100 K", "a change of at most 71.4285 K");
    CHECK(volume == -1.0 && fall.mpa == -1.0);
    lw_hold_free(hold);
    EXPECT(LW_OUT_OF_RANGE, lw_hold_new(0.0, fluid, &none));
    EXPECT(LW_NOT_A_NUMBER, lw_hold_new(nan(""), fluid, &none));
    OK(lw_fluid_new("drum 4", &bare));
    EXPECT(LW_NOT_KNOWN, lw_hold_new(90.0, bare, &none));
    CHECK(none == NULL);
    OK(lw_fluid_set_bulk_modulus(bare, lw_mpa(1700.0), "this test"));
    OK(lw_hold_new(90.0, bare, &hold));
    EXPECT(LW_NOT_KNOWN, lw_hold_volume_of_temperature_ml(hold, 1.0, &volume));
    CHECK(volume == -1.0);
    lw_hold_free(hold);
    lw_fluid_free(bare);
    lw_fluid_free(fluid);
}

/* First frequencies of full steel spans, worked out apart and checked there with 60 finite elements. */
static void spans(void) {
    static const char *const ends[3] = {"pinned", "clamped-pinned", "clamped"};
    static const struct {
        double od, length, kg_per_m, hz[3];
    } rows[] = {
        {4.7625, 355.6, 0.080257, {87.28674, 136.35855, 197.86925}},
        {4.7625, 200.0, 0.080257, {275.93819, 431.06811, 625.5209}},
        {6.35, 406.4, 0.1189243, {89.49428, 139.80714, 202.87348}},
    };
    lw_properties *metal = steel(), *stainless = NULL;
    lw_fluid *fluid = fluid_of(lw_mpa(1975.2), 1050.0), *bare = NULL;
    lw_tube *tube = NULL;
    lw_span *span = NULL, *none = NULL;
    lw_length length = {0.0};
    double number = 0.0;
    size_t i, j;
    for (i = 0; i < sizeof rows / sizeof rows[0]; i += 1) {
        tube = steel_tube(lw_mm(rows[i].od), lw_mm(0.7112));
        OK(lw_span_new(tube, metal, fluid, &span));
        OK(lw_span_mass_g(span, lw_m(1.0), &number));
        NEAR(number / 1000.0, rows[i].kg_per_m, 6e-8);
        for (j = 0; j < 3; j += 1) {
            OK(lw_span_first_frequency_hz(span, lw_mm(rows[i].length), ends[j], &number));
            NEAR(number, rows[i].hz[j], 1e-5);
            OK(lw_span_length_for(span, number, ends[j], &length));
            WITHIN(length.mm, rows[i].length, 1e-13);
        }
        lw_span_free(span);
        lw_tube_free(tube);
    }
    /* Empty: 7850 kg/m3 on 9.0518224 mm2 alone. */
    tube = steel_tube(lw_mm(4.7625), lw_mm(0.7112));
    OK(lw_span_new(tube, metal, NULL, &span));
    OK(lw_span_mass_g(span, lw_m(1.0), &number));
    WITHIN(number, 7.850 * 9.0518224, 1e-8);
    OK(lw_span_first_frequency_hz(span, lw_mm(300.0), "pinned", &number));
    WITHIN(number, 130.33707586404233, 1e-11);
    number = length.mm = -1.0;
    EXPECT(LW_UNKNOWN_NAME, lw_span_first_frequency_hz(span, lw_mm(300.0), "free", &number));
    EXPECT(LW_NOT_A_NUMBER, lw_span_first_frequency_hz(span, lw_unknown_length(), "pinned", &number));
    EXPECT(LW_OUT_OF_RANGE, lw_span_first_frequency_hz(span, lw_mm(0.0), "pinned", &number));
    EXPECT(LW_OUT_OF_RANGE, lw_span_mass_g(span, lw_mm(-1.0), &number));
    EXPECT(LW_OUT_OF_RANGE, lw_span_length_for(span, 0.0, "pinned", &length));
    SAYS("frequency", "0 Hz", "0.01 to 1000000 Hz");
    /* No clips are set so near that a span swings a million times a second. */
    EXPECT(LW_OUT_OF_RANGE, lw_span_length_for(span, 1e6, "pinned", &length));
    CHECK(number == -1.0 && length.mm == -1.0);
    lw_span_free(span);
    OK(lw_fluid_new("drum 4", &bare));
    EXPECT(LW_NOT_KNOWN, lw_span_new(tube, metal, bare, &none));
    /* No page with the density of 304 was seen. */
    OK(lw_material_properties("stainless 304", NULL, &stainless));
    EXPECT(LW_NOT_KNOWN, lw_span_new(tube, stainless, fluid, &none));
    CHECK(none == NULL);
    lw_properties_free(stainless);
    lw_properties_free(metal);
    lw_fluid_free(bare);
    lw_fluid_free(fluid);
    lw_tube_free(tube);
}

/* Inches of MIL-H-8891A table II and UFC 4-390-01 page 79 (seen), and 14 in for 3/16 in (from memory). */
static void spacings(void) {
    lw_length least = {-1.0}, most = {-1.0};
    char text[256] = "";
    size_t count = 9, need = 0;
    OK(lw_handbook_spacing_count(lw_in(3.0 / 16.0), &count));
    CHECK(count == 1);
    OK(lw_handbook_spacing(lw_in(3.0 / 16.0), 0, &least, &most));
    CHECK(isnan(least.mm));
    NEAR(most.mm, 14.0 * 25.4, 1e-10);
    OK(lw_handbook_spacing_source(lw_in(3.0 / 16.0), 0, text, sizeof text, &need));
    CHECK(strstr(text, "from memory") != NULL);
    OK(lw_handbook_spacing_count(lw_in(0.375), &count));
    CHECK(count == 2);
    OK(lw_handbook_spacing(lw_in(0.375), 0, &least, &most));
    CHECK(isnan(least.mm));
    NEAR(most.mm, 20.0 * 25.4, 1e-10);
    OK(lw_handbook_spacing_scope(lw_in(0.375), 0, text, sizeof text, &need));
    CHECK(strcmp(text, "hydraulic lines of aircraft") == 0);
    OK(lw_handbook_spacing(lw_in(0.375), 1, &least, &most));
    NEAR(least.mm, 40.0 * 25.4, 1e-10);
    NEAR(most.mm, 50.0 * 25.4, 1e-10);
    OK(lw_handbook_spacing_source(lw_in(0.375), 1, text, sizeof text, &need));
    CHECK(strcmp(text, "UFC 4-390-01, page 79, seen") == 0);
    OK(lw_handbook_spacing_count(lw_mm(6.0), &count));
    CHECK(count == 0);
    least.mm = most.mm = -1.0;
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_handbook_spacing(lw_in(0.375), 2, &least, &most));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_handbook_spacing_scope(lw_mm(6.0), 0, text, sizeof text, &need));
    EXPECT(LW_NOT_A_NUMBER, lw_handbook_spacing_count(lw_unknown_length(), &count));
    CHECK(least.mm == -1.0 && most.mm == -1.0 && count == 0 && need == 0);
}

int main(void) {
    fluids();
    filled_tubes();
    warming();
    holds();
    spans();
    spacings();
    return verdict("hydraulics");
}
