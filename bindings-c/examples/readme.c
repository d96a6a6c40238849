/* The shortest useful program: how long is the arc of a bend, and what is the bender set to? */
#include "linewright.h"

#include <stdio.h>

int main(void) {
    lw_length radius, arc;
    if (lw_length_read("9/16 in", &radius) != LW_OK || lw_bend_arc(radius, lw_deg(90.0), &arc) != LW_OK) {
        char why[256];
        size_t need;
        lw_last_error_text(why, sizeof why, &need);
        fprintf(stderr, "%s\n", why);
        return 1;
    }
    printf("arc %.2f mm, set %.1f deg\n", arc.mm, lw_setting_deg(90.0, 0.1, 0.038));
    return 0;
}
