/* base/problem.h: what is wrong with the input or the machine, each with its place; all are
 * collected.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BASE_PROBLEM_H
#define DISHTAKE_BASE_PROBLEM_H

#include <stdbool.h>
#include <stddef.h>

#include "base/text.h"

/* Line and column count from 1, columns in bytes; 0 means "no such place", and is left out in
 * print. */
struct place {
    const char *file; /* borrowed; must outlive the list */
    unsigned line, column;
};

enum problem_level {
    PROBLEM_NOTE, /* something was repaired; nothing is lost */
    PROBLEM_ERROR /* something could not be used */
};

struct problem {
    struct place at;
    enum problem_level level;
    char *message; /* owned by the list */
};

/* Zeroed is empty. Owns its memory. Keeps the first PROBLEMS_KEPT of each level; `dropped` counts
 * the others, so that a hostile file cannot fill memory with complaints. */
#define PROBLEMS_KEPT 200
struct problems {
    struct problem *at;
    size_t count, room, errors, notes, dropped;
};

void problems_release(struct problems *list);
/* Forgets what was noted since the list was as `then`, a copy of it. */
void problems_rewind(struct problems *list, const struct problems *then);

/* Notes one problem and returns false, so that a reader can end with `return problem(...)`.
 * Write what is wrong and what would be right, in the words of the person who typed the file. */
bool problem(struct problems *list, struct place at, const char *format, ...)
    __attribute__((format(printf, 3, 4)));
/* The same for something that was repaired. */
void problem_note(struct problems *list, struct place at, const char *format, ...)
    __attribute__((format(printf, 3, 4)));

#endif
