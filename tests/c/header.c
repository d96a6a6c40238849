/* The header alone, in C99 and in C++17, and the version it was written for. */
#include "linewright.h"

#include <stdio.h>
#include <string.h>

int main(void) {
    char version[32];
    sprintf(version, "%d.%d.%d", LW_VERSION_MAJOR, LW_VERSION_MINOR, LW_VERSION_PATCH);
    printf("header %s number %d library %s\n", version, LW_VERSION_NUMBER, lw_version());
    return strcmp(version, lw_version()) == 0 ? 0 : 1;
}
