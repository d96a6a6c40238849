/* What the C tests share: a way to say what is wrong, and a line to work on. */
#ifndef CHECK_H
#define CHECK_H

#include "linewright.h"

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static int checks = 0;
static int failures = 0;

static inline void check(int holds, const char *what, int line) {
    checks += 1;
    if (!holds) {
        failures += 1;
        fprintf(stderr, "line %d: %s does not hold\n", line, what);
    }
}
#define CHECK(condition) check((condition) ? 1 : 0, #condition, __LINE__)

static inline void check_status(lw_status got, lw_status want, const char *what, int line) {
    checks += 1;
    if (got != want) {
        char text[512] = "";
        size_t need = 0;
        failures += 1;
        lw_last_error_text(text, sizeof text, &need);
        fprintf(stderr, "line %d: %s gives %d instead of %d; last error: %s\n", line, what, (int)got, (int)want,
                text);
    }
}
#define EXPECT(status, call) check_status((call), (status), #call, __LINE__)
#define OK(call) EXPECT(LW_OK, call)

/* The last failure names the argument. */
static inline void refuses(const char *argument, lw_status status, const char *what, int line) {
    char text[512] = "";
    char wanted[64];
    size_t need = 0;
    check_status(status, LW_NULL_ARGUMENT, what, line);
    sprintf(wanted, "field %s: ", argument);
    lw_last_error_text(text, sizeof text, &need);
    check(strstr(text, wanted) != NULL, what, line);
}
#define REFUSES(argument, call) refuses(argument, call, #call, __LINE__)
/* Asking about the last failure leaves it as it is. */
#define REFUSES_QUIETLY(argument, call) check_status(call, LW_NULL_ARGUMENT, #call, __LINE__)
/* This argument may be NULL. */
#define ALLOWS(argument, call) check_status(call, LW_OK, #call, __LINE__)

#define NEAR(found, wanted, by) CHECK(fabs((found) - (wanted)) <= (by))
#define WITHIN(found, wanted, share) NEAR(found, wanted, (share) * fabs(wanted))

/* The last failure names the field, the value given and what is needed. */
static inline void says(const char *field, const char *got, const char *need_text, int line) {
    char text[512] = "", wanted[128];
    size_t need = 0;
    check_status(lw_last_error_text(text, sizeof text, &need), LW_OK, "lw_last_error_text", line);
    sprintf(wanted, "field %s: ", field);
    check(strstr(text, wanted) != NULL, wanted, line);
    sprintf(wanted, "got %s; need %s", got, need_text);
    check(strstr(text, wanted) != NULL, wanted, line);
}
#define SAYS(field, got, need) says(field, got, need, __LINE__)

/* Ends a program: what it did, and whether all was well. */
static inline int verdict(const char *program) {
    printf("%s: %d checks, %d failures\n", program, checks, failures);
    return failures == 0 ? EXIT_SUCCESS : EXIT_FAILURE;
}

static inline lw_tube *steel_tube(lw_length od, lw_length wall) {
    lw_tube *tube = NULL;
    OK(lw_tube_new(od, wall, "low-carbon steel", &tube));
    return tube;
}

/* A filled draft of an invented line: three straights, two bends. */
static inline lw_draft *sample_draft(void) {
    static const char *const fields[][2] = {
        {"name", "K7"},          {"od", "3/16 in"},        {"wall", "0.028 in"},    {"material", "low-carbon steel"},
        {"legs", "90 mm; 400 mm; 120 mm"},                 {"bends", "45 deg; 60 deg"},
        {"rotations", "90 deg"}, {"radius", "14.3 mm"},    {"a_thread", "M10x1"},   {"a_nut_length", "17 mm"},
        {"a_nut_bore", "5 mm"},  {"a_nose", "coned"},      {"a_flare", "double-45"}, {"b_thread", "M10x1"},
        {"b_nut_length", "17 mm"}, {"b_nut_bore", "5 mm"}, {"b_nose", "coned"},     {"b_flare", "double-45"},
    };
    lw_draft *draft = NULL;
    size_t i;
    OK(lw_draft_new(&draft));
    for (i = 0; i < sizeof fields / sizeof fields[0]; i += 1) {
        OK(lw_draft_set(draft, fields[i][0], fields[i][1]));
    }
    return draft;
}

/* A bench with a tool for double flares and a known springback. */
static inline lw_bench *sample_bench(void) {
    lw_flare_tool tool;
    lw_bench *bench = NULL;
    lw_springback *springback = NULL;
    tool.size = sizeof tool;
    tool.flare = "double-45";
    tool.clamp = lw_mm(13.0);
    tool.projection = lw_mm(4.0);
    tool.net_shortening = lw_mm(2.0);
    tool.cut_spare = lw_mm(3.0);
    OK(lw_bench_new(lw_mm(14.3), lw_mm(20.0), &bench));
    OK(lw_bench_add_flare_tool(bench, &tool));
    OK(lw_springback_new(lw_deg(0.1), 0.038, &springback));
    OK(lw_bench_set_springback(bench, springback));
    lw_springback_free(springback);
    return bench;
}

#endif
