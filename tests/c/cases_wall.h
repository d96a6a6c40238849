/* Operations about the wall of a bend and its section. */
#ifndef CASES_WALL_H
#define CASES_WALL_H

#include "cases.h"

static lw_status steel_tube(lw_tube **tube) {
    lw_length od, wall;
    TRY(lw_length_read(value("od"), &od));
    TRY(lw_length_read(value("wall"), &wall));
    return lw_tube_new(od, wall, "low-carbon steel", tube);
}

/* The wall of the case's bend; the tube is freed at once. */
static lw_status make_bent(lw_bent_wall **bent) {
    lw_tube *tube = NULL;
    lw_length radius;
    lw_status status;
    TRY(steel_tube(&tube));
    status = lw_length_read(value("radius"), &radius);
    if (status == LW_OK) {
        status = lw_bent_wall_new(tube, radius, bent);
    }
    lw_tube_free(tube);
    return status;
}

static lw_status put_bent(lw_bent_wall *bent) {
    static const char *const places[3] = {"extrados", "intrados", "side"};
    lw_length least, most, shift;
    double stretch;
    int i;
    if (has("neutral_shift")) {
        TRY(lw_length_read(value("neutral_shift"), &shift));
        TRY(lw_bent_wall_set_neutral_shift(bent, shift));
    }
    if (has("plastic")) {
        TRY(lw_bent_wall_set_plastic_neutral_axis(bent));
    }
    for (i = 0; i < 3; i += 1) {
        TRY(lw_bent_wall_range(bent, places[i], &least, &most));
        put("%s_mm\t%.17g;%.17g\n", places[i], least.mm, most.mm);
    }
    put("uniaxial_mm\t");
    for (i = 0; i < 3; i += 1) {
        TRY(lw_bent_wall_at(bent, places[i], "uniaxial", &least));
        TRY(put_item((size_t)i, LW_OK, least.mm));
    }
    put("\n");
    TRY(lw_bent_wall_outer_stretch(bent, &stretch));
    TRY(lw_bent_wall_neutral_shift(bent, &shift));
    put_number("stretch_1", stretch);
    put_number("neutral_shift_mm", shift.mm);
    return LW_OK;
}

static lw_status bent_wall(void) {
    lw_bent_wall *bent = NULL;
    lw_status status;
    TRY(make_bent(&bent));
    status = put_bent(bent);
    lw_bent_wall_free(bent);
    return status;
}

static lw_status put_wrinkling(const lw_bent_wall *bent) {
    const double exponent = strtod(value("exponent"), NULL);
    char words[LONGEST_TEXT];
    double compression, critical;
    int32_t needs = 0;
    lw_status status;
    size_t need;
    TRY(lw_bent_wall_free_wrinkling(bent, exponent, &compression, &critical));
    put_number("compression_1", compression);
    put_number("critical_1", critical);
    status = lw_bent_wall_needs_groove(bent, exponent, &needs);
    if (status != LW_NOT_KNOWN) {
        TRY(status);
    }
    put_text("needs_groove", status == LW_NOT_KNOWN ? "unknown" : needs ? "true" : "false");
    TRY(lw_bent_wall_wrinkling_words(bent, exponent, words, sizeof words, &need));
    put_text("words", words);
    return LW_OK;
}

static lw_status free_wrinkling(void) {
    lw_bent_wall *bent = NULL;
    lw_status status;
    TRY(make_bent(&bent));
    status = put_wrinkling(bent);
    lw_bent_wall_free(bent);
    return status;
}

static lw_status put_section(const lw_section *section) {
    lw_length largest, smallest, apart;
    double ovality, flattening, bore_mm2, left, loss;
    TRY(lw_section_largest(section, &largest));
    TRY(lw_section_smallest(section, &smallest));
    TRY(lw_section_out_of_round(section, &apart));
    TRY(lw_section_ovality(section, &ovality));
    TRY(lw_section_flattening(section, &flattening));
    TRY(lw_section_bore_area_mm2(section, &bore_mm2));
    TRY(lw_section_bore_share(section, &left));
    TRY(lw_section_bore_loss(section, &loss));
    put_number("largest_mm", largest.mm);
    put_number("smallest_mm", smallest.mm);
    put_number("apart_mm", apart.mm);
    put_number("ovality_1", ovality);
    put_number("flattening_1", flattening);
    put_number("bore_mm2", bore_mm2);
    put_number("bore_share_1", left);
    put_number("bore_loss_1", loss);
    return LW_OK;
}

static lw_status section(void) {
    const double share = strtod(value("share"), NULL);
    const int by_ovality = strcmp(value("measure"), "ovality") == 0;
    lw_tube *tube = NULL;
    lw_section *made_section = NULL;
    lw_status status;
    TRY(steel_tube(&tube));
    status = (by_ovality ? lw_section_of_ovality : lw_section_of_flattening)(tube, share, value("kinematics"),
                                                                             &made_section);
    lw_tube_free(tube);
    TRY(status);
    status = put_section(made_section);
    lw_section_free(made_section);
    return status;
}

#endif
