/* Operations about pressures, metals and the wall of a bend. */
#ifndef CASES_WALL_H
#define CASES_WALL_H

#include "cases.h"

static lw_status read_pressure(void) {
    lw_pressure pressure;
    TRY(lw_pressure_read(value("text"), &pressure));
    put_number("value_mpa", pressure.mpa);
    return LW_OK;
}

#endif
