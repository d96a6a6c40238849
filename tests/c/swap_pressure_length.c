/* Compiles as it is, and does not with -DWRONG: a pressure where a length belongs. */
#include "linewright.h"

int main(void) {
    lw_length arc = {0.0};
#ifdef WRONG
    return lw_bend_arc(lw_mpa(14.3), lw_deg(90.0), &arc);
#else
    return lw_bend_arc(lw_mm(14.3), lw_deg(90.0), &arc);
#endif
}
