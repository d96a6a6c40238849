#include "linewright.h"
#include <stdio.h>

int main(void) {
    lw_springback *springback = NULL;
    const lw_angle set[] = {lw_deg(90), lw_deg(45)}, got[] = {lw_deg(86.5), lw_deg(43.2)};
    lw_status status = lw_springback_from_trials(set, got, 2, &springback);
    lw_angle setting = {0};
    if (status == LW_OK) status = lw_springback_setting(springback, lw_deg(60), &setting);
    if (status == LW_OK) printf("to keep 60 degrees, bend to %.1f\n", setting.deg);
    lw_springback_free(springback);
    return status;
}
