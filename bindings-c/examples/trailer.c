/* An invented small farm trailer: four brake lines, measured with two tapes, partly in inches.
 *
 * Prints cut list, marks, settings, cards, findings and assumptions: the same figures, to the last digit, as the Rust and
 * the Python program of the same name.
 */
#include "linewright.h"

#include <stdio.h>
#include <stdlib.h>

/* What was written down at the trailer: a field and what was typed into it. */
typedef struct {
    const char *field;
    const char *typed;
} note;

/* The same for every line. */
static const note COMMON[] = {
    {"od", "3/16 in"},
    {"wall", "0.028 in"},
    {"material", "low-carbon steel"},
    {"radius", "14.3 mm"},
    {"a_nut_length", "17 mm"},
    {"a_nut_bore", "5.0 mm"},
    {"b_nut_length", "17 mm"},
    {"b_nut_bore", "5.0 mm"},
    {NULL, NULL},
};

static const note LINES[4][20] = {
    {
        {"name", "T1 coupling to frame hose"},
        {"legs", "6 in; 14 1/2 in; 1.85 m; 31 cm; 120 mm"},
        {"bends", "90 deg; 45 deg; 45 deg; 90 deg"},
        {"rotations", "90 deg; 180 deg; -90 deg"},
        {"a_port", "coupling cylinder"},
        {"a_port_thread", "7/16-24"},
        {"a_seat", "inverted-45"},
        {"a_thread", "7/16-24"},
        {"a_nose", "coned"},
        {"a_flare", "double-45"},
        {"b_port", "frame hose"},
        {"b_port_thread", "M10x1"},
        {"b_seat", "inverted-45"},
        {"b_thread", "M10x1"},
        {"b_nose", "coned"},
        {"b_flare", "double-45"},
    },
    {
        {"name", "T2 axle tee to left cylinder"},
        {"legs", "55 mm; 28 in; 9 1/4 in; 76 mm"},
        {"bends", "30 deg; 60 deg; 90 deg"},
        {"rotations", "180 deg; 90 deg"},
        {"a_port", "axle tee"},
        {"a_port_thread", "M10x1"},
        {"a_seat", "inverted-45"},
        {"a_thread", "M10x1"},
        {"a_nose", "coned"},
        {"a_flare", "double-45"},
        {"b_port", "left cylinder"},
        {"b_port_thread", "3/8-24"},
        {"b_seat", "unknown"},
        {"b_thread", "3/8-24"},
        {"b_nose", "coned"},
        {"b_flare", "double-45"},
    },
    {
        {"name", "T3 axle tee to right cylinder"},
        {"legs", "55 mm; 31 1/2 in; 9 1/4 in; 76 mm"},
        {"bends", "30 deg; 60 deg; 90 deg"},
        {"rotations", "-180 deg; -90 deg"},
        {"a_port", "axle tee"},
        {"a_port_thread", "M10x1"},
        {"a_seat", "inverted-45"},
        {"a_thread", "M10x1"},
        {"a_nose", "coned"},
        {"a_flare", "double-45"},
        {"b_port", "right cylinder"},
        {"b_port_thread", "3/8-24"},
        {"b_seat", "inverted-45"},
        {"b_thread", "3/8-24"},
        {"b_nose", "coned"},
        {"b_flare", "double-45"},
    },
    {
        {"name", "T4 hose bracket to axle tee"},
        {"legs", "70 mm; 5 1/2 in; 3.5 in"},
        {"bends", "120 deg included; 0.25 turn"},
        {"rotations", "3 o'clock"},
        {"a_port", "hose bracket"},
        {"a_port_thread", "M10x1"},
        {"a_seat", "bubble"},
        {"a_thread", "M10x1"},
        {"a_nose", "flat"},
        {"a_flare", "bubble"},
        {"b_port", "axle tee"},
        {"b_port_thread", "M10x1"},
        {"b_seat", "inverted-45"},
        {"b_thread", "M10x1"},
        {"b_nose", "coned"},
        {"b_flare", "double-45"},
    },
};

/* Stops the program with what the library says. */
static void must(lw_status status) {
    if (status != LW_OK) {
        char text[1000];
        size_t need = 0;
        if (lw_last_error_text(text, sizeof text, &need) == LW_OK) fprintf(stderr, "%s\n", text);
        exit(EXIT_FAILURE);
    }
}

/* A getter of texts of a plan, one of several. */
typedef lw_status (*plan_text)(const lw_plan *, size_t, char *, size_t, size_t *);

/* Prints a text of a plan behind a lead. */
static void print_text(const char *lead, const lw_plan *plan, size_t index, plan_text get) {
    char text[1000];
    size_t need = 0;
    must(get(plan, index, text, sizeof text, &need));
    printf("%s%s\n", lead, text);
}

/* Prints a length, or that it is not known. */
static void print_mm(lw_status status, lw_length length, const char *unit) {
    if (status == LW_NOT_KNOWN) {
        printf("not known");
    } else {
        must(status);
        printf("%.4f%s", length.mm, unit);
    }
}

/* The workshop's tools, from its own test pieces. */
static lw_bench *make_bench(void) {
    const lw_angle set[] = {lw_deg(90), lw_deg(45)}, got[] = {lw_deg(86.5), lw_deg(43.2)};
    lw_flare_tool tool = {sizeof tool, "double-45", lw_mm(13), lw_mm(4), lw_mm(2), lw_mm(3)};
    lw_springback *springback = NULL;
    lw_bench *bench = NULL;
    must(lw_springback_from_trials(set, got, 2, &springback));
    must(lw_bench_new(lw_mm(14.3), lw_mm(20), &bench));
    must(lw_bench_add_flare_tool(bench, &tool));
    tool.flare = "bubble";
    tool.net_shortening = lw_mm(1.6);
    must(lw_bench_add_flare_tool(bench, &tool));
    must(lw_bench_set_springback(bench, springback));
    must(lw_bench_set_revision(bench, "r6"));
    lw_springback_free(springback);
    return bench;
}

static void print_cut(const lw_plan *plan) {
    lw_length length = {0};
    size_t count = 0;
    must(lw_plan_finished_length(plan, &length));
    printf("  finished %.4f mm, cut ", length.mm);
    lw_status status = lw_plan_cut_length(plan, &length);
    print_mm(status, length, " mm");
    printf("\n");
    if (status == LW_OK) must(lw_plan_cut_term_count(plan, &count));
    for (size_t i = 0; i < count; i++) {
        char what[200];
        size_t need = 0;
        must(lw_plan_cut_term_text(plan, i, what, sizeof what, &need));
        must(lw_plan_cut_term_length(plan, i, &length));
        printf("    %-32s %10.4f mm\n", what, length.mm);
    }
}

static void print_bends(const lw_plan *plan) {
    char datum[40];
    size_t need = 0, count = 0;
    must(lw_plan_datum(plan, datum, sizeof datum, &need));
    printf("  marks from %s\n", datum);
    must(lw_plan_bend_count(plan, &count));
    for (size_t i = 0; i < count; i++) {
        lw_length mark = {0};
        lw_angle angle = {0}, setting = {0};
        size_t number = 0;
        must(lw_plan_bend_number(plan, i, &number));
        must(lw_plan_bend_angle(plan, i, &angle));
        printf("    bend %zu: mark ", number);
        lw_status status = lw_plan_bend_mark(plan, i, &mark);
        print_mm(status, mark, " mm");
        printf(", bend %.4f deg, set ", angle.deg);
        status = lw_plan_bend_setting(plan, i, &setting);
        if (status == LW_NOT_KNOWN) {
            printf("not known\n");
        } else {
            must(status);
            printf("%.4f deg\n", setting.deg);
        }
    }
}

static void print_end(const lw_plan *plan, lw_side side) {
    static const lw_minimum kinds[] = {LW_FLARE_AFTER, LW_FLARE_BEFORE, LW_ASSEMBLED};
    char order[40];
    size_t need_size = 0;
    lw_length straight = {0};
    must(lw_plan_end_straight(plan, side, &straight));
    must(lw_plan_end_order(plan, side, order, sizeof order, &need_size));
    printf("  end %s: straight %.4f mm, needs ", side == LW_A ? "A" : "B", straight.mm);
    for (size_t i = 0; i < 3; i++) {
        lw_length need = {0}, shortfall = {0};
        lw_status status = lw_plan_end_minimum(plan, side, kinds[i], &need, &shortfall);
        print_mm(status, need, "");
        printf("%s", i < 2 ? " / " : " mm, flared ");
    }
    printf("%s\n", order);
}

static void print_problems(const lw_problems *problems, const char *lead) {
    size_t count = 0;
    must(lw_problems_count(problems, &count));
    for (size_t i = 0; i < count; i++) {
        char text[1000];
        size_t need = 0;
        must(lw_problems_text(problems, i, text, sizeof text, &need));
        printf("%s%s\n", lead, text);
    }
}

static void print_plan(const lw_plan *plan, const char *name) {
    lw_problems *problems = NULL;
    size_t count = 0;
    printf("%s\n", name);
    print_cut(plan);
    print_bends(plan);
    print_end(plan, LW_A);
    print_end(plan, LW_B);
    must(lw_plan_problems(plan, &problems));
    print_problems(problems, "  ");
    lw_problems_free(problems);
    must(lw_plan_assumption_count(plan, &count));
    for (size_t i = 0; i < count; i++) print_text("  assumed ", plan, i, lw_plan_assumption_text);
    printf("\n");
}

/* The card: asked for its size first, then written into a buffer of that size. */
static void print_card(const lw_plan *plan) {
    size_t need = 0;
    lw_status status = lw_plan_card(plan, NULL, 0, &need);
    if (status != LW_SPACE_TOO_SMALL) must(status);
    char *card = malloc(need);
    if (card == NULL) exit(EXIT_FAILURE);
    must(lw_plan_card(plan, card, need, &need));
    printf("%s\n", card);
    free(card);
}

int main(void) {
    lw_bench *bench = make_bench();
    lw_draft *drafts[4] = {NULL};
    lw_sized *sized = NULL;
    double total = 0.0;
    for (size_t i = 0; i < 4; i++) {
        must(lw_draft_new(&drafts[i]));
        for (const note *n = COMMON; n->field != NULL; n++) must(lw_draft_set(drafts[i], n->field, n->typed));
        for (const note *n = LINES[i]; n->field != NULL; n++) must(lw_draft_set(drafts[i], n->field, n->typed));
    }
    must(lw_size_lines((const lw_draft *const *)drafts, 4, bench, NULL, &sized));
    for (size_t i = 0; i < 4; i++) {
        char name[200];
        size_t need = 0;
        lw_plan *plan = NULL;
        lw_status status = lw_sized_plan(sized, i, &plan);
        if (status == LW_NOT_KNOWN) {
            lw_problems *problems = NULL;
            char lead[40];
            snprintf(lead, sizeof lead, "row %zu: ", i + 1);
            must(lw_sized_problems(sized, i, &problems));
            print_problems(problems, lead);
            lw_problems_free(problems);
            continue;
        }
        must(status);
        must(lw_sized_name(sized, i, name, sizeof name, &need));
        print_plan(plan, name);
        lw_length cut = {0};
        if (lw_plan_cut_length(plan, &cut) == LW_OK) total += cut.mm;
        lw_plan_free(plan);
    }
    printf("tube for 4 lines: %.4f mm\n\n", total);
    for (size_t i = 0; i < 4; i++) {
        lw_plan *plan = NULL;
        if (lw_sized_plan(sized, i, &plan) == LW_OK) print_card(plan);
        lw_plan_free(plan);
    }
    for (size_t i = 0; i < 4; i++) lw_draft_free(drafts[i]);
    lw_sized_free(sized);
    lw_bench_free(bench);
    return EXIT_SUCCESS;
}
