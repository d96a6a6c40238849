/* As null.c, for pressures, metals and the wall of a bend. */
#include "check.h"

/* Where answers would go. */
static char text[64];
static size_t count;
static lw_pressure pressure;

static void of_pressures(void) {
    REFUSES("text", lw_pressure_read(NULL, &pressure));
    REFUSES("pressure", lw_pressure_read("1 MPa", NULL));
    REFUSES("buf", lw_pressure_text(lw_mpa(2.0), NULL, sizeof text, &count));
    REFUSES("need", lw_pressure_text(lw_mpa(2.0), text, sizeof text, NULL));
}

int main(void) {
    of_pressures();
    return verdict("null_wall");
}
