/* The ideal cylinder under pressure, straight, bent and oval, asked from C. Where no other source is named, figures
 * were computed apart from the library: in closed form, or by integration over the wall. */
#include "check.h"

#include <math.h>

static lw_cylinder *cylinder_of(lw_length od, lw_length wall) {
    lw_tube *tube = steel_tube(od, wall);
    lw_cylinder *cylinder = NULL;
    OK(lw_cylinder_new(tube, &cylinder));
    lw_tube_free(tube);
    return cylinder;
}

static lw_strength strength_of(lw_pressure value, double factor) {
    lw_strength strength;
    strength.size = sizeof strength;
    strength.value = value;
    strength.factor = factor;
    strength.source = "this test";
    return strength;
}

/* A published table of working pressures at 50,000 psi and 4:1 is Lame's formula printed to 50 psi. */
static void published_pressures(void) {
    static const struct {
        double od, wall, psi;
    } rows[] = {
        {0.125, 0.028, 6650}, {0.1875, 0.028, 4250}, {0.25, 0.028, 3100},  {0.3125, 0.028, 2450}, {0.375, 0.028, 2000},
        {0.125, 0.035, 8450}, {0.1875, 0.035, 5450}, {0.25, 0.035, 3950},  {0.3125, 0.035, 3100}, {0.375, 0.035, 2550},
        {0.5, 0.035, 1850},   {0.625, 0.035, 1500},  {0.75, 0.035, 1200},  {0.875, 0.035, 1050},  {1.0, 0.035, 900},
    };
    lw_pressure psi = {0.0}, whole = {0.0}, ideal = {0.0};
    lw_length wall = {0.0};
    lw_strength strength;
    size_t i;
    OK(lw_pressure_read("1 psi", &psi));
    OK(lw_pressure_read("50000 psi", &whole));
    strength = strength_of(whole, 4.0);
    for (i = 0; i < sizeof rows / sizeof rows[0]; i += 1) {
        lw_cylinder *cylinder = cylinder_of(lw_in(rows[i].od), lw_in(rows[i].wall));
        OK(lw_ideal_cylinder_pressure(cylinder, "Lame", &strength, &ideal, &wall));
        NEAR(ideal.mpa / psi.mpa, rows[i].psi, 25.0);
        lw_cylinder_free(cylinder);
    }
}

/* Five theories at a whole 290 MPa. With Tresca the 4.75 x 0.75 mm tube meets the one legible row of DIN 74234:1992, a
 * burst of at least 1100 bar, which may be chance. */
static void theories(void) {
    static const char *const names[5] = {"Barlow", "Boardman", "Lame", "Tresca", "von Mises"};
    static const struct {
        double od, wall, mpa[5];
    } rows[] = {
        {4.7625, 0.7112, {86.61333, 98.36463, 98.77423, 102.88388, 118.80007}},
        {6.35, 0.7112, {64.96000, 71.35325, 72.00767, 73.54480, 84.92222}},
        {4.75, 0.75, {91.57895, 104.81928, 105.05660, 110.05199, 127.07709}},
        {10.0, 1.0, {58.00000, 63.04348, 63.65854, 64.71163, 74.72255}},
    };
    const lw_strength strength = strength_of(lw_mpa(290.0), 1.0);
    lw_pressure ideal = {0.0}, stress = {0.0};
    lw_length wall = {0.0};
    char place[32] = "";
    double found = 0.0;
    int32_t is_reached = -1;
    size_t i, j, need = 0;
    for (i = 0; i < sizeof rows / sizeof rows[0]; i += 1) {
        lw_cylinder *cylinder = cylinder_of(lw_mm(rows[i].od), lw_mm(rows[i].wall));
        for (j = 0; j < 5; j += 1) {
            OK(lw_ideal_cylinder_pressure(cylinder, names[j], &strength, &ideal, &wall));
            NEAR(ideal.mpa, rows[i].mpa[j], 6e-6);
            CHECK(wall.mm == rows[i].wall);
            /* The stress at that pressure is the strength again, and leaves a margin of 1. */
            OK(lw_cylinder_stress(cylinder, names[j], ideal, &stress));
            WITHIN(stress.mpa, 290.0, 1e-13);
            OK(lw_ideal_cylinder_margin(cylinder, names[j], ideal, &strength, &found, &is_reached));
            WITHIN(found, 1.0, 1e-13);
            OK(lw_ideal_cylinder_place(cylinder, names[j], &strength, place, sizeof place, &need));
            CHECK(strcmp(place, "straight") == 0 && need == sizeof "straight");
        }
        lw_cylinder_free(cylinder);
    }
}

/* 3/16 x 0.028 in at its worst size by the tolerances of SAE J526 (tube seller's page), on three diameters. */
static void worst_size_in_a_bend(void) {
    const lw_strength strength = strength_of(lw_mpa(290.0), 4.0);
    lw_cylinder *cylinder = cylinder_of(lw_in(3.0 / 16.0), lw_in(0.028));
    lw_length wall = {0.0}, wall_minus = {0.0}, od_plus = {0.0};
    lw_pressure ideal = {0.0}, stress = {0.0};
    char text[512] = "", excludes[512] = "";
    double found = 0.0;
    int32_t is_reached = -1;
    size_t count = 0, need = 0;
    OK(lw_size_tolerance_count(lw_in(3.0 / 16.0), &count));
    CHECK(count == 1);
    OK(lw_size_tolerance(lw_in(3.0 / 16.0), 0, &wall, &wall_minus, &od_plus));
    NEAR(wall.mm, 0.7112, 1e-12);
    NEAR(wall_minus.mm, 0.127, 1e-12);
    NEAR(od_plus.mm, 0.0762, 1e-12);
    OK(lw_size_tolerance_scope(lw_in(3.0 / 16.0), 0, text, sizeof text, &need));
    CHECK(strcmp(text, "SAE J526, 3/16 in") == 0);
    OK(lw_size_tolerance_source(lw_in(3.0 / 16.0), 0, text, sizeof text, &need));
    CHECK(strstr(text, "SAE J526") != NULL && strstr(text, "seen") != NULL);
    EXPECT(LW_FIELD_MISSING, lw_cylinder_set_neutral_shift(cylinder, lw_mm(0.1)));
    OK(lw_cylinder_set_tolerances(cylinder, od_plus, wall_minus));
    OK(lw_cylinder_set_bend(cylinder, lw_mm(14.2875)));
    OK(lw_ideal_cylinder_pressure(cylinder, "lame", &strength, &ideal, &wall));
    WITHIN(ideal.mpa, 17.762907474743578, 1e-11);
    WITHIN(wall.mm, 0.49960091220068426, 1e-11);
    OK(lw_cylinder_stress(cylinder, "Lame", lw_mpa(15.0), &stress));
    WITHIN(stress.mpa, 61.2230853280228, 1e-11);
    OK(lw_ideal_cylinder_margin(cylinder, "Lame", lw_mpa(15.0), &strength, &found, &is_reached));
    WITHIN(found, 4.736775326598288, 1e-11);
    CHECK(is_reached == 1);
    OK(lw_ideal_cylinder_margin(cylinder, "Lame", lw_mpa(18.0), &strength, &found, &is_reached));
    CHECK(found < 4.0 && is_reached == 0);
    OK(lw_ideal_cylinder_place(cylinder, "Lame", &strength, text, sizeof text, &need));
    CHECK(strcmp(text, "extrados") == 0);
    /* What it leaves out travels with it, and so does who gave the strength. */
    OK(lw_ideal_cylinder_excludes(excludes, sizeof excludes, &need));
    CHECK(need == strlen(excludes) + 1 && strstr(excludes, "flares, joints, corrosion") != NULL);
    OK(lw_ideal_cylinder_pressure_text(cylinder, "Lame", &strength, text, sizeof text, &need));
    CHECK(strstr(text, "ideal cylinder pressure 17.76 MPa (Lame, 290 MPa / 4, given by the caller: this test)") == text);
    CHECK(strstr(text, excludes) != NULL && need == strlen(text) + 1);
    EXPECT(LW_SPACE_TOO_SMALL, lw_ideal_cylinder_pressure_text(cylinder, "Lame", &strength, text, 8, &need));
    CHECK(need == strlen(text) + 1);
    lw_cylinder_free(cylinder);
    cylinder = cylinder_of(lw_mm(8.0), lw_mm(1.0));
    OK(lw_cylinder_set_bend(cylinder, lw_mm(9.0)));
    OK(lw_cylinder_set_neutral_shift(cylinder, lw_mm(0.5)));
    OK(lw_ideal_cylinder_pressure(cylinder, "Lame", &strength, &ideal, &wall));
    WITHIN(ideal.mpa, 15.132383118649091, 1e-11);
    WITHIN(wall.mm, 8.5 / 13.0, 1e-13);
    lw_cylinder_free(cylinder);
}

static void other_tolerances(void) {
    lw_length wall = {-1.0}, wall_off = {-1.0}, od_off = {-1.0};
    char text[256] = "";
    size_t count = 9, need = 0;
    OK(lw_size_tolerance_count(lw_mm(4.75), &count));
    CHECK(count == 1);
    OK(lw_size_tolerance(lw_mm(4.75), 0, &wall, &wall_off, &od_off));
    CHECK(wall.mm == 0.75 && wall_off.mm == 0.075 && isnan(od_off.mm));
    OK(lw_size_tolerance(lw_in(0.25), 0, &wall, &wall_off, &od_off));
    NEAR(wall_off.mm, 0.003 * 25.4, 1e-12);
    CHECK(isnan(od_off.mm));
    OK(lw_size_tolerance_count(lw_mm(7.0), &count));
    CHECK(count == 0);
    EXPECT(LW_NOT_A_NUMBER, lw_size_tolerance_count(lw_unknown_length(), &count));
    wall.mm = -1.0;
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_size_tolerance(lw_mm(4.75), 1, &wall, &wall_off, &od_off));
    EXPECT(LW_INDEX_OUT_OF_RANGE, lw_size_tolerance_source(lw_mm(7.0), 0, text, sizeof text, &need));
    CHECK(wall.mm == -1.0 && count == 0 && need == 0);
}

/* Three public sheets after ASME B31.3 304.2.1: diameter, radius, pressure, strength with its weld factor, allowance;
 * factors and walls worked out apart to six decimals, and the factors as the sheets print them. Their pipes are wider
 * than tube is here; the formulas hold in any scale, so theirs is divided by 20. */
static void bends_of_public_sheets(void) {
    static const struct {
        double d, r, p, s, allowance, i_in, i_ex, t_in, t_ex, printed_in, printed_ex;
    } rows[3] = {
        {273.2, 1270.0, 5.82, 82.68 * 0.975, 0.0, 1.060261, 0.951443, 10.145730, 9.132288, 1.060, 0.951},
        {219.1, 609.6, 0.6, 137.9, 0.0, 1.109539, 0.923834, 0.527842, 0.439638, 1.110, 0.924},
        {273.05, 762.0, 1.0, 95.0 * 0.956, 0.063, 1.109137, 0.924028, 1.722203, 1.446414, 1.109, 0.924},
    };
    const double scale = 20.0;
    double factor = 0.0;
    lw_length wall = {0.0};
    size_t i;
    for (i = 0; i < 3; i += 1) {
        const lw_length od = lw_mm(rows[i].d / scale), radius = lw_mm(rows[i].r / scale);
        const lw_strength strength = strength_of(lw_mpa(rows[i].s), 1.0);
        const lw_pressure pressure = lw_mpa(rows[i].p);
        OK(lw_bend_shell_factor(od, radius, "intrados", &factor));
        NEAR(factor, rows[i].i_in, 6e-7);
        NEAR(factor, rows[i].printed_in, 0.0005);
        OK(lw_bend_shell_factor(od, radius, "extrados", &factor));
        NEAR(factor, rows[i].i_ex, 6e-7);
        NEAR(factor, rows[i].printed_ex, 0.0005);
        OK(lw_bend_ideal_wall(od, radius, "intrados", pressure, &strength, 0.4, &wall));
        NEAR(wall.mm * scale + rows[i].allowance, rows[i].t_in, 6e-7);
        OK(lw_bend_ideal_wall(od, radius, "extrados", pressure, &strength, 0.4, &wall));
        NEAR(wall.mm * scale + rows[i].allowance, rows[i].t_ex, 6e-7);
        OK(lw_bend_ideal_wall(od, radius, "side", pressure, &strength, 0.4, &wall));
        WITHIN(wall.mm * scale, rows[i].p * rows[i].d / (2.0 * (rows[i].s + 0.4 * rows[i].p)), 1e-13);
    }
    OK(lw_bend_shell_factor(lw_mm(4.75), lw_mm(14.25), "side", &factor));
    CHECK(factor == 1.0);
    /* On three diameters, a hoop that keeps its length: 1 + D / (4 R) outside and 1 - D / (4 R) inside. */
    OK(lw_bend_factor_after_bending(lw_mm(4.75), lw_mm(14.25), "extrados", "plane strain", &factor));
    WITHIN(factor, 13.0 / 12.0, 1e-13);
    OK(lw_bend_factor_after_bending(lw_mm(4.75), lw_mm(14.25), "intrados", "plane strain", &factor));
    WITHIN(factor, 11.0 / 12.0, 1e-13);
    /* Uniaxial, the wall goes with the root of the stretch of 7/6. */
    OK(lw_bend_factor_after_bending(lw_mm(4.75), lw_mm(14.25), "extrados", "uniaxial", &factor));
    WITHIN(factor, 13.0 / 14.0 * sqrt(7.0 / 6.0), 1e-13);
}

/* A middle diameter 5 % out of round, at 15 MPa. */
static void oval_tubes(void) {
    lw_tube *tube = steel_tube(lw_mm(4.7625), lw_mm(0.7112));
    const lw_length apart = lw_mm(0.05 * 4.0513);
    const lw_pressure pressure = lw_mpa(15.0), modulus = lw_mpa(207000.0);
    double factor = 0.0;
    OK(lw_ovality_amplification(tube, apart, pressure, modulus, 0.29, &factor));
    NEAR(factor, 1.424627459, 1e-9);
    OK(lw_ovality_amplification(tube, lw_mm(0.0), pressure, modulus, 0.29, &factor));
    CHECK(factor == 1.0);
    factor = -1.0;
    EXPECT(LW_OUT_OF_RANGE, lw_ovality_amplification(tube, lw_mm(4.7625), pressure, modulus, 0.29, &factor));
    EXPECT(LW_OUT_OF_RANGE, lw_ovality_amplification(tube, apart, pressure, modulus, 0.6, &factor));
    EXPECT(LW_NOT_A_NUMBER, lw_ovality_amplification(tube, apart, lw_unknown_pressure(), modulus, 0.29, &factor));
    CHECK(factor == -1.0);
    lw_tube_free(tube);
}

static void pressures_are_refused(void) {
    lw_cylinder *cylinder = cylinder_of(lw_mm(4.75), lw_mm(0.75)), *thick = cylinder_of(lw_mm(20.0), lw_mm(9.99));
    lw_strength strength = strength_of(lw_mpa(290.0), 0.5);
    lw_pressure ideal = {-1.0}, stress = {-1.0};
    lw_length wall = {-1.0};
    double found = -1.0;
    int32_t is_reached = -1;
    EXPECT(LW_OUT_OF_RANGE, lw_ideal_cylinder_pressure(cylinder, "Lame", &strength, &ideal, &wall));
    SAYS("factor", "0.5", "1 to 100");
    strength.factor = 4.0;
    EXPECT(LW_UNKNOWN_NAME, lw_ideal_cylinder_pressure(cylinder, "Clavarino", &strength, &ideal, &wall));
    SAYS("theory", "Clavarino", "one of Barlow, Boardman, Lame, Tresca, von Mises");
    EXPECT(LW_OUT_OF_RANGE, lw_ideal_cylinder_pressure(thick, "Boardman", &strength, &ideal, &wall));
    SAYS("wall", "9.99 mm", "at most 3.3333 mm, a sixth of the diameter");
    EXPECT(LW_OUT_OF_RANGE, lw_cylinder_stress(thick, "Boardman", lw_mpa(10.0), &stress));
    EXPECT(LW_OUT_OF_RANGE,
           lw_bend_ideal_wall(lw_mm(60.0), lw_mm(180.0), "intrados", lw_mpa(500.0), &strength, 0.4, &wall));
    SAYS("pressure", "500 MPa", "at most 25.3497 MPa");
    lw_cylinder_free(thick);
    strength.value = lw_unknown_pressure();
    EXPECT(LW_NOT_A_NUMBER, lw_ideal_cylinder_pressure(cylinder, "Lame", &strength, &ideal, &wall));
    strength.value = lw_mpa(290.0);
    strength.source = " ";
    EXPECT(LW_FIELD_MISSING, lw_ideal_cylinder_pressure(cylinder, "Lame", &strength, &ideal, &wall));
    strength.source = "this test";
    strength.size = sizeof strength - 1;
    EXPECT(LW_STRUCT_SIZE, lw_ideal_cylinder_pressure(cylinder, "Lame", &strength, &ideal, &wall));
    strength.size = sizeof strength;
    EXPECT(LW_OUT_OF_RANGE, lw_ideal_cylinder_margin(cylinder, "Lame", lw_mpa(0.0), &strength, &found, &is_reached));
    EXPECT(LW_OUT_OF_RANGE, lw_cylinder_stress(cylinder, "Lame", lw_mpa(-1.0), &stress));
    EXPECT(LW_UNKNOWN_NAME, lw_bend_shell_factor(lw_mm(4.75), lw_mm(14.25), "straight", &found));
    EXPECT(LW_OUT_OF_RANGE, lw_bend_shell_factor(lw_mm(4.75), lw_mm(2.0), "side", &found));
    EXPECT(LW_UNKNOWN_NAME, lw_bend_factor_after_bending(lw_mm(4.75), lw_mm(14.25), "side", "free", &found));
    EXPECT(LW_OUT_OF_RANGE,
           lw_bend_ideal_wall(lw_mm(4.75), lw_mm(14.25), "side", lw_mpa(15.0), &strength, 1.5, &wall));
    CHECK(ideal.mpa == -1.0 && stress.mpa == -1.0 && wall.mm == -1.0 && found == -1.0 && is_reached == -1);
    /* What is refused leaves the cylinder as it was: straight, of its nominal size. */
    EXPECT(LW_OUT_OF_RANGE, lw_cylinder_set_tolerances(cylinder, lw_mm(0.0), lw_mm(0.7)));
    SAYS("wall_minus", "0.7 mm", "a wall of at least 0.1 mm left");
    EXPECT(LW_NOT_A_NUMBER, lw_cylinder_set_tolerances(cylinder, lw_mm(HUGE_VAL), lw_mm(0.0)));
    /* Both are bends of less than one diameter. */
    EXPECT(LW_OUT_OF_RANGE, lw_cylinder_set_bend(cylinder, lw_mm(2.3)));
    EXPECT(LW_OUT_OF_RANGE, lw_cylinder_set_bend(cylinder, lw_mm(2.6)));
    OK(lw_ideal_cylinder_pressure(cylinder, "Tresca", &strength, &ideal, &wall));
    NEAR(ideal.mpa, 110.05199 / 4.0, 2e-6);
    CHECK(wall.mm == 0.75);
    lw_cylinder_free(cylinder);
}

int main(void) {
    published_pressures();
    theories();
    worst_size_in_a_bend();
    other_tolerances();
    bends_of_public_sheets();
    oval_tubes();
    pressures_are_refused();
    return verdict("pressure");
}
