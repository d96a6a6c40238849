/* Pressures, metals, and the wall of a bend, asked from C. */
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
    CHECK(lw_bar(150.0).mpa == 15.0 && isnan(lw_unknown_pressure().mpa));
    /* A pound of force is 4.4482216152605 N by definition, a square inch 645.16 mm2. */
    CHECK(fabs(lw_psi(1000.0).mpa - 4448.2216152605 / 645.16) < 1e-14);
    EXPECT(LW_SPACE_TOO_SMALL, lw_pressure_text(lw_mpa(2.5), text, 3, &need));
    CHECK(need == sizeof "2.5 MPa");
}

int main(void) {
    pressures();
    return verdict("wall");
}
