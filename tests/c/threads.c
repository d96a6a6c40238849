/* Every thread has its own last error, and handles can be read from several threads at once. */
#define _POSIX_C_SOURCE 200809L
#include "check.h"

#include <pthread.h>

enum { THREADS = 4, ROUNDS = 200 };

struct work {
    const lw_line *line;
    const lw_bench *bench;
    /* What this thread does wrong, and what it must be told. */
    const char *text;
    lw_status status;
    int wrong;
};

static void *run(void *argument) {
    struct work *work = argument;
    int32_t last = -1;
    int i;
    work->wrong += lw_last_error_code(&last) != LW_OK || last != LW_OK;
    for (i = 0; i < ROUNDS; i += 1) {
        lw_length length = {-1.0};
        lw_plan *plan = NULL;
        work->wrong += lw_length_read(work->text, &length) != work->status;
        work->wrong += lw_plan_new(work->line, work->bench, NULL, &plan) != LW_OK;
        work->wrong += lw_plan_finished_length(plan, &length) != LW_OK || length.mm < 500.0;
        work->wrong += lw_last_error_code(&last) != LW_OK || last != work->status;
        lw_plan_free(plan);
    }
    return NULL;
}

int main(void) {
    static const char *const texts[THREADS] = {"316", "90 deg", "1,500 mm", "blue"};
    static const lw_status statuses[THREADS] = {LW_UNIT_MISSING, LW_WRONG_KIND, LW_NUMBER_AMBIGUOUS, LW_UNREADABLE};
    lw_draft *draft = sample_draft();
    lw_bench *bench = sample_bench();
    lw_line *line = NULL;
    lw_problems *problems = NULL;
    pthread_t threads[THREADS];
    struct work works[THREADS];
    int32_t last = -1;
    int i;
    OK(lw_draft_check(draft, &line, &problems));
    EXPECT(LW_UNKNOWN_NAME, lw_draft_set(draft, "colour", "blue"));
    for (i = 0; i < THREADS; i += 1) {
        works[i].line = line;
        works[i].bench = bench;
        works[i].text = texts[i];
        works[i].status = statuses[i];
        works[i].wrong = 0;
        CHECK(pthread_create(&threads[i], NULL, run, &works[i]) == 0);
    }
    for (i = 0; i < THREADS; i += 1) {
        CHECK(pthread_join(threads[i], NULL) == 0);
        CHECK(works[i].wrong == 0);
    }
    OK(lw_last_error_code(&last));
    CHECK(last == LW_UNKNOWN_NAME);
    lw_problems_free(problems);
    lw_line_free(line);
    lw_bench_free(bench);
    lw_draft_free(draft);
    return verdict("threads");
}
