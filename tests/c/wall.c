/* Pressures, metals and their laws, and the wall of a bend, asked from C. */
#include "check.h"

#include <math.h>

static void pressures(void) {
    static const struct {
        lw_status status;
        const char *text;
        double mpa;
    } rows[] = {
        {LW_OK, "150 bar", 15.0},          {LW_OK, "200 N/mm2", 200.0},      {LW_OK, "207 GPa", 207000.0},
        {LW_UNIT_MISSING, "290", 0.0},     {LW_WRONG_KIND, "5 mm", 0.0},     {LW_UNREADABLE, "290 mPa", 0.0},
        {LW_NOT_A_NUMBER, "", 0.0},        {LW_NUMBER_AMBIGUOUS, "1,500 psi", 0.0},
        {LW_OUT_OF_RANGE, "1e308 GPa", 0.0},
    };
    const double numbers[3] = {172.368932329209, 1.0 / 3.0, -0.1};
    char text[64];
    size_t need, i;
    for (i = 0; i < sizeof rows / sizeof rows[0]; i += 1) {
        lw_pressure pressure = {-7.0};
        EXPECT(rows[i].status, lw_pressure_read(rows[i].text, &pressure));
        CHECK(pressure.mpa == (rows[i].status == LW_OK ? rows[i].mpa : -7.0));
    }
    for (i = 0; i < 3; i += 1) {
        lw_pressure again = {0.0};
        OK(lw_pressure_text(lw_mpa(numbers[i]), text, sizeof text, &need));
        CHECK(need == strlen(text) + 1);
        OK(lw_pressure_read(text, &again));
        CHECK(again.mpa == numbers[i]);
    }
    CHECK(isnan(lw_unknown_pressure().mpa));
    EXPECT(LW_SPACE_TOO_SMALL, lw_pressure_text(lw_mpa(2.5), text, 3, &need));
    CHECK(need == sizeof "2.5 MPa");
}

/* 3/16 x 0.028 in on 14.2875 mm, three diameters: 6/7 and 6/5 of the wall where the hoop keeps its length. */
static void walls(const lw_tube *tube) {
    lw_bent_wall *bent = NULL, *tight = NULL;
    lw_length least = {-1.0}, most = {-1.0}, wall = {-1.0};
    double stretch = -1.0;
    EXPECT(LW_OUT_OF_RANGE, lw_bent_wall_new(tube, lw_mm(2.0), &bent));
    EXPECT(LW_NOT_A_NUMBER, lw_bent_wall_new(tube, lw_unknown_length(), &bent));
    CHECK(bent == NULL);
    OK(lw_bent_wall_new(tube, lw_mm(14.2875), &bent));
    OK(lw_bent_wall_at(bent, "extrados", "plane strain", &wall));
    CHECK(fabs(wall.mm - 0.7112 * 6.0 / 7.0) < 1e-12);
    OK(lw_bent_wall_range(bent, "intrados", &least, &most));
    CHECK(fabs(most.mm - 0.7112 * 6.0 / 5.0) < 1e-12 && fabs(least.mm - 0.7112 * sqrt(6.0 / 5.0)) < 1e-12);
    EXPECT(LW_UNKNOWN_NAME, lw_bent_wall_at(bent, "outside", "uniaxial", &wall));
    EXPECT(LW_UNKNOWN_NAME, lw_bent_wall_at(bent, "side", "free", &wall));
    least.mm = -1.0;
    EXPECT(LW_UNKNOWN_NAME, lw_bent_wall_range(bent, "", &least, &most));
    CHECK(least.mm == -1.0 && fabs(wall.mm - 0.7112 * 6.0 / 7.0) < 1e-12);
    EXPECT(LW_OUT_OF_RANGE, lw_bent_wall_set_neutral_shift(bent, lw_mm(3.0)));
    EXPECT(LW_OUT_OF_RANGE, lw_bent_wall_new(tube, lw_mm(3.0), &tight));
    CHECK(tight == NULL);
    /* At a radius of 5 mm the axis must stay within twice the inner and half the outer length, 5.2375 and 3.6906 mm. */
    OK(lw_bent_wall_new(tube, lw_mm(5.0), &tight));
    EXPECT(LW_OUT_OF_RANGE, lw_bent_wall_set_neutral_shift(tight, lw_mm(1.31)));
    EXPECT(LW_OUT_OF_RANGE, lw_bent_wall_set_neutral_shift(tight, lw_mm(-0.24)));
    OK(lw_bent_wall_set_neutral_shift(tight, lw_mm(1.3)));
    lw_bent_wall_free(tight);
    OK(lw_bent_wall_outer_stretch(bent, &stretch));
    CHECK(fabs(stretch - 1.0 / 6.0) < 1e-12);
    OK(lw_bent_wall_set_neutral_shift(bent, lw_mm(0.2875)));
    OK(lw_bent_wall_outer_stretch(bent, &stretch));
    CHECK(fabs(stretch - (14.2875 + 2.38125) / 14.0 + 1.0) < 1e-12);
    lw_bent_wall_free(bent);
}

static void wrinkles(const lw_tube *brake) {
    lw_tube *thin = NULL;
    lw_bent_wall *bent = NULL;
    double compression = -1.0, critical = -1.0;
    int32_t needs = -1;
    char words[512] = "";
    size_t need = 0;
    OK(lw_bent_wall_new(brake, lw_mm(14.3), &bent));
    OK(lw_bent_wall_free_wrinkling(bent, 0.21, &compression, &critical));
    CHECK(fabs(compression - 2.02565 / 14.3) < 1e-12 && fabs(critical - 2.0 / 3.0 * sqrt(0.21) * 0.1) < 1e-12);
    /* Too thick for the criterion: no alarm, and the output keeps what it held. */
    EXPECT(LW_NOT_KNOWN, lw_bent_wall_needs_groove(bent, 0.21, &needs));
    CHECK(needs == -1);
    OK(lw_last_error_text(words, sizeof words, &need));
    CHECK(strstr(words, "thicker than a tenth") != NULL && strstr(words, "lw_radius_rule_count") != NULL);
    OK(lw_bent_wall_wrinkling_words(bent, 0.21, words, sizeof words, &need));
    CHECK(strstr(words, "not known") == words && need == strlen(words) + 1);
    compression = -1.0;
    EXPECT(LW_OUT_OF_RANGE, lw_bent_wall_free_wrinkling(bent, 1.5, &compression, &critical));
    EXPECT(LW_NOT_A_NUMBER, lw_bent_wall_needs_groove(bent, nan(""), &needs));
    EXPECT(LW_OUT_OF_RANGE, lw_bent_wall_wrinkling_words(bent, -0.1, words, sizeof words, &need));
    CHECK(compression == -1.0 && needs == -1 && need == 0);
    lw_bent_wall_free(bent);
    OK(lw_tube_new(lw_mm(25.0), lw_mm(0.5), "low-carbon steel", &thin));
    OK(lw_bent_wall_new(thin, lw_mm(37.5), &bent));
    OK(lw_bent_wall_needs_groove(bent, 0.21, &needs));
    CHECK(needs == 1);
    lw_bent_wall_free(bent);
    OK(lw_bent_wall_new(thin, lw_mm(1500.0), &bent));
    OK(lw_bent_wall_needs_groove(bent, 0.21, &needs));
    CHECK(needs == 0);
    /* 12.25 / 1500 may be elastic. */
    EXPECT(LW_NOT_KNOWN, lw_bent_wall_needs_groove(bent, 0.0, &needs));
    lw_bent_wall_free(bent);
    lw_tube_free(thin);
}

static void sections(const lw_tube *tube) {
    lw_section *section = NULL;
    lw_length largest = {0.0}, smallest = {0.0}, apart = {0.0};
    double ovality = 0.0, loss = 0.0, share = 0.0;
    EXPECT(LW_OUT_OF_RANGE, lw_section_of_flattening(tube, 0.29, "sides held", &section));
    EXPECT(LW_UNKNOWN_NAME, lw_section_of_flattening(tube, 0.75, "held", &section));
    EXPECT(LW_NOT_A_NUMBER, lw_section_of_ovality(tube, nan(""), "sides held", &section));
    CHECK(section == NULL);
    OK(lw_section_of_ovality(tube, 0.25, "sides held", &section));
    OK(lw_section_largest(section, &largest));
    OK(lw_section_smallest(section, &smallest));
    OK(lw_section_ovality(section, &ovality));
    OK(lw_section_bore_loss(section, &loss));
    OK(lw_section_bore_share(section, &share));
    OK(lw_section_out_of_round(section, &apart));
    CHECK(fabs(apart.mm - 0.25 * 4.7625) < 1e-12 && fabs(share - (1.0 - 0.25 * 4.7625 / 3.3401)) < 1e-12);
    CHECK(fabs(largest.mm - 4.7625) < 1e-12 && fabs(smallest.mm - 0.75 * 4.7625) < 1e-12);
    /* The bore loses as much of its height, 0.25 x 4.7625 mm of 3.3401 mm. */
    CHECK(fabs(ovality - 0.25) < 1e-12 && fabs(loss - 0.25 * 4.7625 / 3.3401) < 1e-12);
    lw_section_free(section);
}

/* Two tubes answer the very same of a bend; frees them. */
static void alike(lw_mechanics *own, lw_mechanics *bare, double radius_mm) {
    lw_mechanics *tubes[2];
    double moment_nmm[2] = {0.0, -1.0}, share[2] = {0.0, -1.0};
    lw_length formed[2] = {{0.0}, {-1.0}};
    lw_angle setting[2] = {{0.0}, {-1.0}};
    int i;
    tubes[0] = own, tubes[1] = bare;
    for (i = 0; i < 2; i++) {
        lw_held_bend *bend = NULL;
        lw_springback *springback = NULL;
        OK(lw_mechanics_bend(tubes[i], lw_mm(radius_mm), &bend));
        OK(lw_held_bend_moment_nmm(bend, &moment_nmm[i]));
        OK(lw_held_bend_share(bend, &share[i]));
        OK(lw_held_bend_formed_radius(bend, &formed[i]));
        OK(lw_held_bend_springback(bend, lw_mm(60.0), &springback));
        OK(lw_springback_setting(springback, lw_deg(45.0), &setting[i]));
        lw_springback_free(springback);
        lw_held_bend_free(bend);
        lw_mechanics_free(tubes[i]);
    }
    CHECK(moment_nmm[0] == moment_nmm[1] && share[0] == share[1]);
    CHECK(formed[0].mm == formed[1].mm && setting[0].deg == setting[1].deg);
}

/* A metal of one's own, to be bent: no law, a straight line from the yield strength on, a power law before that. */
static void laws(void) {
    const lw_length od = lw_in(3.0 / 16.0), wall = lw_in(0.028);
    const lw_pressure modulus = lw_mpa(207000.0);
    lw_mechanics *own = NULL, *bare = NULL;
    lw_properties *metal = NULL;
    lw_pressure slope = {-1.0};
    char text[256] = "";
    size_t need = 0;
    OK(lw_properties_new("our coil", &metal));
    EXPECT(LW_NOT_KNOWN, lw_properties_tangent_modulus(metal, &slope));
    EXPECT(LW_NOT_KNOWN, lw_properties_source(metal, "tangent_modulus", text, sizeof text, &need));
    EXPECT(LW_FIELD_MISSING, lw_properties_set_tangent_modulus(metal, lw_mpa(2070.0), ""));
    EXPECT(LW_NOT_A_NUMBER, lw_properties_set_tangent_modulus(metal, lw_unknown_pressure(), "pull 3"));
    CHECK(slope.mpa == -1.0);
    OK(lw_properties_set_tangent_modulus(metal, lw_mpa(2070.0), "pull 3"));
    EXPECT(LW_OUT_OF_RANGE, lw_properties_set_modulus(metal, lw_mpa(2070.0), "report"));
    SAYS("modulus", "2070 MPa", "more than the tangent modulus");
    OK(lw_properties_set_modulus(metal, modulus, "report"));
    EXPECT(LW_OUT_OF_RANGE, lw_properties_set_tangent_modulus(metal, modulus, "pull 3"));
    SAYS("tangent_modulus", "207000 MPa", "less than the elastic modulus");
    OK(lw_properties_tangent_modulus(metal, &slope));
    CHECK(slope.mpa == 2070.0);
    OK(lw_properties_source(metal, "tangent_modulus", text, sizeof text, &need));
    CHECK(strcmp(text, "pull 3, seen second-hand") == 0);
    EXPECT(LW_NOT_KNOWN, lw_mechanics_of_metal(od, wall, metal, &own));
    OK(lw_last_error_text(text, sizeof text, &need));
    CHECK(strstr(text, "field yield_strength") && strstr(text, "where the tangent modulus begins, for our coil"));
    CHECK(own == NULL);
    OK(lw_properties_set_yield_strength(metal, lw_mpa(250.0), "report"));
    OK(lw_mechanics_of_metal(od, wall, metal, &own));
    OK(lw_mechanics_bilinear(od, wall, modulus, lw_mpa(250.0), lw_mpa(2070.0), &bare));
    alike(own, bare, 14.2875);
    OK(lw_properties_set_hardening(metal, lw_mpa(600.0), 0.21, "report"));
    OK(lw_mechanics_of_metal(od, wall, metal, &own));
    OK(lw_mechanics_power_law(od, wall, modulus, lw_mpa(600.0), 0.21, &bare));
    alike(own, bare, 14.2875);
    lw_properties_free(metal);
}

int main(void) {
    lw_tube *tube = NULL;
    pressures();
    OK(lw_tube_new(lw_in(3.0 / 16.0), lw_in(0.028), "low-carbon steel", &tube));
    walls(tube);
    wrinkles(tube);
    sections(tube);
    laws();
    lw_tube_free(tube);
    return verdict("wall");
}
