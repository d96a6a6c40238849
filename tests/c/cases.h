/* How cases come in and answers go out.
 *
 * A case is a line `case N`, a line `operation NAME`, lines `key<TAB>value`, and a line `end`. The answer is a line
 * `case N`, lines `key<TAB>value` or one line `error<TAB>CODE`, and a line `end`. Lists are joined with `;`. */
#ifndef CASES_H
#define CASES_H

#include "linewright.h"

#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { MOST_KEYS = 128, MOST_ITEMS = 1100, LONGEST_LINE = 1 << 16, LONGEST_ANSWER = 1 << 18, LONGEST_TEXT = 1024 };

/* The case that is being answered. */
static struct {
    char operation[64];
    char *keys[MOST_KEYS];
    char *values[MOST_KEYS];
    int count;
} asked;

/* Written so far; dropped when the case ends in an error. */
static char answer[LONGEST_ANSWER];
static size_t written;

static void give_up(const char *why) {
    fprintf(stderr, "cases: %s\n", why);
    exit(2);
}

static void put(const char *format, ...) {
    va_list arguments;
    int length;
    va_start(arguments, format);
    length = vsnprintf(answer + written, sizeof answer - written, format, arguments);
    va_end(arguments);
    if (length < 0 || (size_t)length >= sizeof answer - written) {
        give_up("an answer is too long");
    }
    written += (size_t)length;
}

/* Ends an operation with the status of a call that failed. */
#define TRY(call)                                                                                                    \
    do {                                                                                                             \
        const lw_status tried = (call);                                                                              \
        if (tried != LW_OK) {                                                                                        \
            return tried;                                                                                            \
        }                                                                                                            \
    } while (0)

/* The value of a key; empty where the case does not have it. */
static const char *value(const char *key) {
    int i;
    for (i = 0; i < asked.count; i += 1) {
        if (strcmp(asked.keys[i], key) == 0) {
            return asked.values[i];
        }
    }
    return "";
}

static int has(const char *key) {
    return *value(key) != '\0';
}

static void put_text(const char *key, const char *text) {
    put("%s\t%s\n", key, text);
}

static void put_number(const char *key, double number) {
    put("%s\t%.17g\n", key, number);
}

/* The next item of a list: a number, or `unknown` where the status says so. Any other status is the caller's. */
static lw_status put_item(size_t index, lw_status status, double number) {
    if (status != LW_OK && status != LW_NOT_KNOWN) {
        return status;
    }
    if (index > 0) {
        put(";");
    }
    if (status == LW_OK) {
        put("%.17g", number);
    } else {
        put("unknown");
    }
    return LW_OK;
}

/* Splits a text at a sign into its first part, which is copied, and the rest; NULL after the last part. */
static const char *part(const char *text, char sign, char *first) {
    const char *end = strchr(text, sign);
    const size_t length = end == NULL ? strlen(text) : (size_t)(end - text);
    if (length >= LONGEST_TEXT) {
        give_up("an item is too long");
    }
    memcpy(first, text, length);
    first[length] = '\0';
    return end == NULL ? NULL : end + 1;
}

/* Takes the next item of a list; no when there is none. A key that is not there is an empty list. */
static int next(const char **rest, size_t count, char *item) {
    if (*rest == NULL || **rest == '\0') {
        return 0;
    }
    if (count == MOST_ITEMS) {
        give_up("a list is too long");
    }
    *rest = part(*rest, ';', item);
    return 1;
}

static lw_status read_lengths(const char *key, lw_length *lengths, size_t *count) {
    const char *rest = value(key);
    char text[LONGEST_TEXT];
    for (*count = 0; next(&rest, *count, text); *count += 1) {
        TRY(lw_length_read(text, &lengths[*count]));
    }
    return LW_OK;
}

static lw_status read_angles(const char *key, lw_angle *angles, size_t *count) {
    const char *rest = value(key);
    char text[LONGEST_TEXT];
    for (*count = 0; next(&rest, *count, text); *count += 1) {
        TRY(lw_angle_read(text, &angles[*count]));
    }
    return LW_OK;
}

static lw_status read_rotations(const char *key, lw_angle *rotations, size_t *count) {
    const char *rest = value(key);
    char text[LONGEST_TEXT];
    for (*count = 0; next(&rest, *count, text); *count += 1) {
        TRY(lw_rotation_read(text, &rotations[*count]));
    }
    return LW_OK;
}

/* Prints the answer, or the code that an operation ended with, and forgets the case. */
static void finish(lw_status status) {
    char name[LONGEST_TEXT];
    size_t need;
    if (status == LW_OK) {
        fputs(answer, stdout);
    } else if (lw_code_name(status, name, sizeof name, &need) == LW_OK) {
        printf("error\t%s\n", name);
    } else {
        give_up("a status has no name");
    }
    puts("end");
    while (asked.count > 0) {
        asked.count -= 1;
        free(asked.keys[asked.count]);
    }
    asked.operation[0] = '\0';
    written = 0;
    answer[0] = '\0';
}

/* A line `key<TAB>value`; the copy that holds both belongs to the key. */
static void add(const char *line) {
    char *copy = malloc(strlen(line) + 1);
    char *tab;
    if (copy == NULL || asked.count == MOST_KEYS) {
        give_up("a case is too long");
    }
    strcpy(copy, line);
    tab = strchr(copy, '\t');
    if (tab == NULL) {
        free(copy);
        give_up("a line has no tab");
    }
    *tab = '\0';
    asked.keys[asked.count] = copy;
    asked.values[asked.count] = tab + 1;
    asked.count += 1;
}

#endif
