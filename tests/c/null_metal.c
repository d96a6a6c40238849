/* As null.c, for metals, pressures and fluids. */
#include "check.h"

/* What the functions work on. */
static lw_tube *tube;
static lw_properties *metal;
static lw_cylinder *cylinder;
static lw_fluid *fluid;
static lw_filled_tube *filled;
static lw_hold *hold;
static lw_span *span;

/* Where answers would go. */
static char text[64];
static size_t count;
static int32_t flag;
static double number_0;
static lw_length length_0;
static lw_length length_1;
static lw_pressure stress;
static lw_properties *new_metal;
static lw_cylinder *new_cylinder;
static lw_fluid *new_fluid;
static lw_filled_tube *new_filled;
static lw_hold *new_hold;
static lw_span *new_span;

/* What goes in beside them. */
static lw_strength strength;

static void make(void) {
    strength.size = sizeof strength;
    strength.value = lw_mpa(290.0);
    strength.factor = 4.0;
    strength.source = "my choice";
    OK(lw_tube_new(lw_mm(4.7625), lw_mm(0.7112), "low-carbon steel", &tube));
    OK(lw_material_properties("low-carbon steel", "annealed", &metal));
    OK(lw_cylinder_new(tube, &cylinder));
    OK(lw_fluid_glycol(&fluid));
    OK(lw_filled_tube_new(tube, metal, "closed", fluid, &filled));
    OK(lw_hold_new(90.0, fluid, &hold));
    OK(lw_span_new(tube, metal, fluid, &span));
}

static void unmake(void) {
    lw_tube_free(tube);
    lw_properties_free(metal);
    lw_cylinder_free(cylinder);
    lw_fluid_free(fluid);
    lw_filled_tube_free(filled);
    lw_hold_free(hold);
    lw_span_free(span);
}

static void of_metals(void) {
    REFUSES("material", lw_material_condition(NULL, 0, text, sizeof text, &count));
    REFUSES("buf", lw_material_condition("copper-nickel", 0, NULL, sizeof text, &count));
    REFUSES("need", lw_material_condition("copper-nickel", 0, text, sizeof text, NULL));
    REFUSES("material", lw_material_condition_count(NULL, &count));
    REFUSES("count", lw_material_condition_count("copper-nickel", NULL));
    REFUSES("count", lw_material_count(NULL));
    REFUSES("buf", lw_material_name(0, NULL, sizeof text, &count));
    REFUSES("need", lw_material_name(0, text, sizeof text, NULL));
    REFUSES("material", lw_material_properties(NULL, "annealed", &new_metal));
    ALLOWS("condition", lw_material_properties("copper-nickel", NULL, &new_metal));
    lw_properties_free(new_metal);
    REFUSES("properties", lw_material_properties("copper-nickel", "annealed", NULL));
    REFUSES("properties", lw_properties_density(NULL, &number_0));
    REFUSES("density_kg_per_m3", lw_properties_density(metal, NULL));
    REFUSES("properties", lw_properties_elongation(NULL, &number_0));
    REFUSES("elongation", lw_properties_elongation(metal, NULL));
    REFUSES("properties", lw_properties_expansion(NULL, &number_0));
    REFUSES("expansion_per_k", lw_properties_expansion(metal, NULL));
    REFUSES("properties", lw_properties_hardening(NULL, &stress, &number_0));
    REFUSES("strength_coefficient", lw_properties_hardening(metal, NULL, &number_0));
    REFUSES("hardening_exponent", lw_properties_hardening(metal, &stress, NULL));
    REFUSES("properties", lw_properties_modulus(NULL, &stress));
    REFUSES("modulus", lw_properties_modulus(metal, NULL));
    REFUSES("properties", lw_properties_name(NULL, text, sizeof text, &count));
    REFUSES("buf", lw_properties_name(metal, NULL, sizeof text, &count));
    REFUSES("need", lw_properties_name(metal, text, sizeof text, NULL));
    REFUSES("name", lw_properties_new(NULL, &new_metal));
    REFUSES("properties", lw_properties_new("own", NULL));
    REFUSES("properties", lw_properties_poisson(NULL, &number_0));
    REFUSES("poisson", lw_properties_poisson(metal, NULL));
    REFUSES("properties", lw_properties_set_density(NULL, 8000.0, "sheet 1"));
    REFUSES("source", lw_properties_set_density(metal, 8000.0, NULL));
    REFUSES("properties", lw_properties_set_elongation(NULL, 0.3, "sheet 1"));
    REFUSES("source", lw_properties_set_elongation(metal, 0.3, NULL));
    REFUSES("properties", lw_properties_set_expansion(NULL, 1e-5, "sheet 1"));
    REFUSES("source", lw_properties_set_expansion(metal, 1e-5, NULL));
    REFUSES("properties", lw_properties_set_hardening(NULL, lw_mpa(600.0), 0.2, "sheet 1"));
    REFUSES("source", lw_properties_set_hardening(metal, lw_mpa(600.0), 0.2, NULL));
    REFUSES("properties", lw_properties_set_modulus(NULL, lw_mpa(205000.0), "sheet 1"));
    REFUSES("source", lw_properties_set_modulus(metal, lw_mpa(205000.0), NULL));
    REFUSES("properties", lw_properties_set_poisson(NULL, 0.3, "sheet 1"));
    REFUSES("source", lw_properties_set_poisson(metal, 0.3, NULL));
    REFUSES("properties", lw_properties_set_tangent_modulus(NULL, lw_mpa(2000.0), "sheet 1"));
    REFUSES("source", lw_properties_set_tangent_modulus(metal, lw_mpa(2000.0), NULL));
    REFUSES("properties", lw_properties_set_tensile_strength(NULL, lw_mpa(400.0), "sheet 1"));
    REFUSES("source", lw_properties_set_tensile_strength(metal, lw_mpa(400.0), NULL));
    REFUSES("properties", lw_properties_set_yield_strength(NULL, lw_mpa(240.0), "sheet 1"));
    REFUSES("source", lw_properties_set_yield_strength(metal, lw_mpa(240.0), NULL));
    REFUSES("properties", lw_properties_source(NULL, "modulus", text, sizeof text, &count));
    REFUSES("figure", lw_properties_source(metal, NULL, text, sizeof text, &count));
    REFUSES("buf", lw_properties_source(metal, "modulus", NULL, sizeof text, &count));
    REFUSES("need", lw_properties_source(metal, "modulus", text, sizeof text, NULL));
    REFUSES("properties", lw_properties_tangent_modulus(NULL, &stress));
    REFUSES("tangent_modulus", lw_properties_tangent_modulus(metal, NULL));
    REFUSES("properties", lw_properties_tensile_strength(NULL, &stress));
    REFUSES("tensile_strength", lw_properties_tensile_strength(metal, NULL));
    REFUSES("properties", lw_properties_yield_strength(NULL, &stress));
    REFUSES("yield_strength", lw_properties_yield_strength(metal, NULL));
}

static void of_pressures(void) {
    REFUSES("place", lw_bend_factor_after_bending(lw_mm(4.7625), lw_mm(14.3), NULL, "uniaxial", &number_0));
    REFUSES("thinning", lw_bend_factor_after_bending(lw_mm(4.7625), lw_mm(14.3), "extrados", NULL, &number_0));
    REFUSES("factor", lw_bend_factor_after_bending(lw_mm(4.7625), lw_mm(14.3), "extrados", "uniaxial", NULL));
    REFUSES("place", lw_bend_ideal_wall(lw_mm(4.7625), lw_mm(14.3), NULL, lw_mpa(15.0), &strength, 0.4, &length_0));
    REFUSES("strength", lw_bend_ideal_wall(lw_mm(4.7625), lw_mm(14.3), "extrados", lw_mpa(15.0), NULL, 0.4, &length_0));
    REFUSES("wall", lw_bend_ideal_wall(lw_mm(4.7625), lw_mm(14.3), "extrados", lw_mpa(15.0), &strength, 0.4, NULL));
    REFUSES("place", lw_bend_shell_factor(lw_mm(4.7625), lw_mm(14.3), NULL, &number_0));
    REFUSES("factor", lw_bend_shell_factor(lw_mm(4.7625), lw_mm(14.3), "extrados", NULL));
    REFUSES("tube", lw_cylinder_new(NULL, &new_cylinder));
    REFUSES("cylinder", lw_cylinder_new(tube, NULL));
    REFUSES("cylinder", lw_cylinder_set_bend(NULL, lw_mm(14.3)));
    REFUSES("cylinder", lw_cylinder_set_neutral_shift(NULL, lw_mm(0.1)));
    REFUSES("cylinder", lw_cylinder_set_tolerances(NULL, lw_mm(0.07), lw_mm(0.1)));
    REFUSES("cylinder", lw_cylinder_stress(NULL, "Lame", lw_mpa(15.0), &stress));
    REFUSES("theory", lw_cylinder_stress(cylinder, NULL, lw_mpa(15.0), &stress));
    REFUSES("stress", lw_cylinder_stress(cylinder, "Lame", lw_mpa(15.0), NULL));
    REFUSES("buf", lw_ideal_cylinder_excludes(NULL, sizeof text, &count));
    REFUSES("need", lw_ideal_cylinder_excludes(text, sizeof text, NULL));
    REFUSES("cylinder", lw_ideal_cylinder_margin(NULL, "Lame", lw_mpa(15.0), &strength, &number_0, &flag));
    REFUSES("theory", lw_ideal_cylinder_margin(cylinder, NULL, lw_mpa(15.0), &strength, &number_0, &flag));
    REFUSES("strength", lw_ideal_cylinder_margin(cylinder, "Lame", lw_mpa(15.0), NULL, &number_0, &flag));
    REFUSES("found", lw_ideal_cylinder_margin(cylinder, "Lame", lw_mpa(15.0), &strength, NULL, &flag));
    REFUSES("is_reached", lw_ideal_cylinder_margin(cylinder, "Lame", lw_mpa(15.0), &strength, &number_0, NULL));
    REFUSES("cylinder", lw_ideal_cylinder_place(NULL, "Lame", &strength, text, sizeof text, &count));
    REFUSES("theory", lw_ideal_cylinder_place(cylinder, NULL, &strength, text, sizeof text, &count));
    REFUSES("strength", lw_ideal_cylinder_place(cylinder, "Lame", NULL, text, sizeof text, &count));
    REFUSES("buf", lw_ideal_cylinder_place(cylinder, "Lame", &strength, NULL, sizeof text, &count));
    REFUSES("need", lw_ideal_cylinder_place(cylinder, "Lame", &strength, text, sizeof text, NULL));
    REFUSES("cylinder", lw_ideal_cylinder_pressure(NULL, "Lame", &strength, &stress, &length_0));
    REFUSES("theory", lw_ideal_cylinder_pressure(cylinder, NULL, &strength, &stress, &length_0));
    REFUSES("strength", lw_ideal_cylinder_pressure(cylinder, "Lame", NULL, &stress, &length_0));
    REFUSES("pressure", lw_ideal_cylinder_pressure(cylinder, "Lame", &strength, NULL, &length_0));
    REFUSES("wall", lw_ideal_cylinder_pressure(cylinder, "Lame", &strength, &stress, NULL));
    REFUSES("cylinder", lw_ideal_cylinder_pressure_text(NULL, "Lame", &strength, text, sizeof text, &count));
    REFUSES("theory", lw_ideal_cylinder_pressure_text(cylinder, NULL, &strength, text, sizeof text, &count));
    REFUSES("strength", lw_ideal_cylinder_pressure_text(cylinder, "Lame", NULL, text, sizeof text, &count));
    REFUSES("buf", lw_ideal_cylinder_pressure_text(cylinder, "Lame", &strength, NULL, sizeof text, &count));
    REFUSES("need", lw_ideal_cylinder_pressure_text(cylinder, "Lame", &strength, text, sizeof text, NULL));
    REFUSES("tube", lw_ovality_amplification(NULL, lw_mm(0.2), lw_mpa(15.0), lw_mpa(205000.0), 0.3, &number_0));
    REFUSES("factor", lw_ovality_amplification(tube, lw_mm(0.2), lw_mpa(15.0), lw_mpa(205000.0), 0.3, NULL));
}

static void of_fluids(void) {
    REFUSES("filled", lw_filled_tube_compliance_per_mpa(NULL, &number_0));
    REFUSES("compliance_per_mpa", lw_filled_tube_compliance_per_mpa(filled, NULL));
    REFUSES("filled", lw_filled_tube_effective_bulk_modulus(NULL, &stress));
    REFUSES("bulk_modulus", lw_filled_tube_effective_bulk_modulus(filled, NULL));
    REFUSES("tube", lw_filled_tube_new(NULL, metal, "closed", fluid, &new_filled));
    REFUSES("metal", lw_filled_tube_new(tube, NULL, "closed", fluid, &new_filled));
    REFUSES("ends", lw_filled_tube_new(tube, metal, NULL, fluid, &new_filled));
    REFUSES("fluid", lw_filled_tube_new(tube, metal, "closed", NULL, &new_filled));
    REFUSES("filled", lw_filled_tube_new(tube, metal, "closed", fluid, NULL));
    REFUSES("filled", lw_filled_tube_pressure_of_warming(NULL, 10.0, 1e-5, &stress));
    REFUSES("rise", lw_filled_tube_pressure_of_warming(filled, 10.0, 1e-5, NULL));
    REFUSES("filled", lw_filled_tube_volume_to_raise_ml(NULL, lw_mm(200.0), lw_mpa(15.0), &number_0));
    REFUSES("volume_ml", lw_filled_tube_volume_to_raise_ml(filled, lw_mm(200.0), lw_mpa(15.0), NULL));
    REFUSES("filled", lw_filled_tube_wall_compliance_per_mpa(NULL, &number_0));
    REFUSES("compliance_per_mpa", lw_filled_tube_wall_compliance_per_mpa(filled, NULL));
    REFUSES("filled", lw_filled_tube_wave_speed_m_per_s(NULL, &number_0));
    REFUSES("speed_m_per_s", lw_filled_tube_wave_speed_m_per_s(filled, NULL));
    REFUSES("fluid", lw_fluid_bulk_modulus(NULL, &stress));
    REFUSES("bulk_modulus", lw_fluid_bulk_modulus(fluid, NULL));
    REFUSES("fluid", lw_fluid_density(NULL, &number_0));
    REFUSES("density_kg_per_m3", lw_fluid_density(fluid, NULL));
    REFUSES("fluid", lw_fluid_expansion(NULL, &number_0));
    REFUSES("expansion_per_k", lw_fluid_expansion(fluid, NULL));
    REFUSES("fluid", lw_fluid_glycol(NULL));
    REFUSES("fluid", lw_fluid_name(NULL, text, sizeof text, &count));
    REFUSES("buf", lw_fluid_name(fluid, NULL, sizeof text, &count));
    REFUSES("need", lw_fluid_name(fluid, text, sizeof text, NULL));
    REFUSES("name", lw_fluid_new(NULL, &new_fluid));
    REFUSES("fluid", lw_fluid_new("own", NULL));
    REFUSES("fluid", lw_fluid_set_bulk_modulus(NULL, lw_mpa(1700.0), "sheet 1"));
    REFUSES("source", lw_fluid_set_bulk_modulus(fluid, lw_mpa(1700.0), NULL));
    REFUSES("fluid", lw_fluid_set_density(NULL, 8000.0, "sheet 1"));
    REFUSES("source", lw_fluid_set_density(fluid, 8000.0, NULL));
    REFUSES("fluid", lw_fluid_set_expansion(NULL, 1e-5, "sheet 1"));
    REFUSES("source", lw_fluid_set_expansion(fluid, 1e-5, NULL));
    REFUSES("fluid", lw_fluid_source(NULL, "modulus", text, sizeof text, &count));
    REFUSES("figure", lw_fluid_source(fluid, NULL, text, sizeof text, &count));
    REFUSES("buf", lw_fluid_source(fluid, "modulus", NULL, sizeof text, &count));
    REFUSES("need", lw_fluid_source(fluid, "modulus", text, sizeof text, NULL));
    REFUSES("hold", lw_hold_ideal_rigid_loss_ml(NULL, lw_mpa(15.0), &number_0));
    REFUSES("lost_ml", lw_hold_ideal_rigid_loss_ml(hold, lw_mpa(15.0), NULL));
    REFUSES("hold", lw_hold_ideal_rigid_pressure(NULL, 0.05, &stress));
    REFUSES("fall", lw_hold_ideal_rigid_pressure(hold, 0.05, NULL));
    REFUSES("hold", lw_hold_ideal_rigid_warming(NULL, 10.0, &stress));
    REFUSES("rise", lw_hold_ideal_rigid_warming(hold, 10.0, NULL));
    REFUSES("fluid", lw_hold_new(90.0, NULL, &new_hold));
    REFUSES("hold", lw_hold_new(90.0, fluid, NULL));
    REFUSES("hold", lw_hold_volume_of_temperature_ml(NULL, 10.0, &number_0));
    REFUSES("volume_ml", lw_hold_volume_of_temperature_ml(hold, 10.0, NULL));
}

static void of_spans(void) {
    REFUSES("least", lw_handbook_spacing(lw_mm(4.7625), 0, NULL, &length_1));
    REFUSES("most", lw_handbook_spacing(lw_mm(4.7625), 0, &length_0, NULL));
    REFUSES("count", lw_handbook_spacing_count(lw_mm(4.7625), NULL));
    REFUSES("buf", lw_handbook_spacing_scope(lw_mm(4.7625), 0, NULL, sizeof text, &count));
    REFUSES("need", lw_handbook_spacing_scope(lw_mm(4.7625), 0, text, sizeof text, NULL));
    REFUSES("buf", lw_handbook_spacing_source(lw_mm(4.7625), 0, NULL, sizeof text, &count));
    REFUSES("need", lw_handbook_spacing_source(lw_mm(4.7625), 0, text, sizeof text, NULL));
    REFUSES("span", lw_span_first_frequency_hz(NULL, lw_mm(200.0), "pinned", &number_0));
    REFUSES("ends", lw_span_first_frequency_hz(span, lw_mm(200.0), NULL, &number_0));
    REFUSES("frequency_hz", lw_span_first_frequency_hz(span, lw_mm(200.0), "pinned", NULL));
    REFUSES("span", lw_span_length_for(NULL, 200.0, "pinned", &length_0));
    REFUSES("ends", lw_span_length_for(span, 200.0, NULL, &length_0));
    REFUSES("length", lw_span_length_for(span, 200.0, "pinned", NULL));
    REFUSES("span", lw_span_mass_g(NULL, lw_mm(200.0), &number_0));
    REFUSES("mass_g", lw_span_mass_g(span, lw_mm(200.0), NULL));
    REFUSES("tube", lw_span_new(NULL, metal, fluid, &new_span));
    REFUSES("metal", lw_span_new(tube, NULL, fluid, &new_span));
    ALLOWS("fluid", lw_span_new(tube, metal, NULL, &new_span));
    lw_span_free(new_span);
    REFUSES("span", lw_span_new(tube, metal, fluid, NULL));
}

int main(void) {
    lw_strength no_source;
    make();
    of_metals();
    of_pressures();
    of_fluids();
    of_spans();
    no_source = strength;
    no_source.source = NULL;
    REFUSES("strength.source", lw_ideal_cylinder_pressure(cylinder, "Lame", &no_source, &stress, &length_0));
    lw_properties_free(NULL);
    lw_cylinder_free(NULL);
    lw_fluid_free(NULL);
    lw_filled_tube_free(NULL);
    lw_hold_free(NULL);
    lw_span_free(NULL);
    unmake();
    return verdict("null_metal");
}
