/* Operations about flares and hose ends. */
#ifndef CASES_FLARE_H
#define CASES_FLARE_H

#include "cases.h"

static lw_status flare_form(void) {
    static const char *const stretches[3] = {"keeps length", "uniaxial", "keeps wall"};
    lw_length od, wall, diameter, height;
    lw_length found = {0.0};
    size_t i;
    TRY(lw_length_read(value("od"), &od));
    TRY(lw_length_read(value("wall"), &wall));
    TRY(lw_length_read(value("diameter"), &diameter));
    put("stick_out_mm\t");
    for (i = 0; i < 3; i += 1) {
        TRY(lw_flare_stick_out(value("flare"), stretches[i], od, wall, diameter, &found));
        TRY(put_item(i, LW_OK, found.mm));
    }
    TRY(lw_flare_height(value("flare"), od, wall, diameter, &height));
    put("\nheight_mm\t%.17g\nnet_mm\t", height.mm);
    for (i = 0; i < 3; i += 1) {
        TRY(lw_flare_net(value("flare"), stretches[i], od, wall, diameter, &found));
        TRY(put_item(i, LW_OK, found.mm));
    }
    put("\n");
    return LW_OK;
}

static lw_status flare_size(void) {
    lw_length od, least, most, wall_most;
    lw_status status;
    TRY(lw_length_read(value("od"), &od));
    status = lw_flare_size(value("flare"), od, &least, &most, &wall_most);
    if (status == LW_NOT_KNOWN) {
        put_text("diameter_mm", "unknown");
        return LW_OK;
    }
    TRY(status);
    put("diameter_mm\t%.17g;%.17g\n", least.mm, most.mm);
    return LW_OK;
}

static lw_status hose_end(void) {
    char text[LONGEST_TEXT];
    lw_problems *problems = NULL;
    size_t needed, count, need;
    int32_t code = LW_OK;
    TRY(lw_hose_end_sealed_by(value("name"), text, sizeof text, &need));
    put_text("sealed_by", text);
    TRY(lw_hose_end_washers(value("name"), &needed));
    put("needed\t%lu\n", (unsigned long)needed);
    TRY(lw_hose_end_check(value("name"), (size_t)strtoul(value("washers"), NULL, 10), &problems));
    if (lw_problems_count(problems, &count) != LW_OK || (count > 0 && lw_problems_code(problems, 0, &code) != LW_OK)) {
        give_up("a finding has no code");
    }
    lw_problems_free(problems);
    if (count == 0) {
        put_text("problem", "none");
        return LW_OK;
    }
    TRY(lw_code_name(code, text, sizeof text, &need));
    put_text("problem", text);
    return LW_OK;
}

static lw_status put_washers(const lw_washers *list) {
    char text[LONGEST_TEXT];
    size_t count, needed, spares, need, i;
    TRY(lw_washers_count(list, &count));
    put("list\t");
    for (i = 0; i < count; i += 1) {
        TRY(lw_washers_thread(list, i, text, sizeof text, &need));
        TRY(lw_washers_to_buy(list, i, &needed, &spares));
        put("%s%s %lu+%lu", i > 0 ? ";" : "", text, (unsigned long)needed, (unsigned long)spares);
    }
    put("\n");
    return LW_OK;
}

static lw_status washers(void) {
    enum { MOST_ENDS = 16 };
    static char names[MOST_ENDS][LONGEST_TEXT], threads[MOST_ENDS][LONGEST_TEXT];
    const char *name_of[MOST_ENDS], *thread_of[MOST_ENDS];
    const char *rest = value("ends");
    char joint[LONGEST_TEXT];
    lw_washers *list = NULL;
    lw_status status;
    size_t count;
    for (count = 0; next(&rest, count, joint); count += 1) {
        const char *thread;
        if (count == MOST_ENDS) {
            give_up("too many hose ends");
        }
        thread = part(joint, '>', names[count]);
        sprintf(threads[count], "%s", thread == NULL ? "" : thread);
        name_of[count] = names[count];
        thread_of[count] = threads[count];
    }
    TRY(lw_washers_new(name_of, thread_of, count, &list));
    status = put_washers(list);
    lw_washers_free(list);
    return status;
}

#endif
