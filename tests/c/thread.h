/* What the programs about threads share. */
#ifndef THREAD_H
#define THREAD_H

#include "check.h"

#include <math.h>

static const double BAD_NUMBERS[] = {NAN, INFINITY, -INFINITY, 1e308, -1e308, -1.0};
enum { BADS = sizeof BAD_NUMBERS / sizeof BAD_NUMBERS[0] };

/* What a bad number is called: no number, or one outside its limits. */
static inline lw_status called(double value) {
    return isnan(value) || isinf(value) ? LW_NOT_A_NUMBER : LW_OUT_OF_RANGE;
}

static inline int near(double got, double wanted) {
    return fabs(got - wanted) < 1e-9;
}

static inline int is(const char *got, const char *wanted) {
    return strcmp(got, wanted) == 0;
}

static inline lw_thread *read(const char *designation) {
    lw_thread *thread = NULL;
    OK(lw_thread_new(designation, &thread));
    return thread;
}

/* A text that is not known: the buffer keeps what it held, and nothing is needed. */
#define UNKNOWN_TEXT(call)                                                                                           \
    do {                                                                                                             \
        strcpy(text, "kept");                                                                                        \
        need = 9;                                                                                                    \
        EXPECT(LW_NOT_KNOWN, call);                                                                                  \
        CHECK(is(text, "kept") && need == 0);                                                                        \
    } while (0)

#endif
