/* check/ambiguous.h: the words of two readings, and the question which is meant.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_CHECK_AMBIGUOUS_H
#define DISHTAKE_CHECK_AMBIGUOUS_H

#include "check/report.h"

/* The phrase of readings.tsv with its blanks filled in; empty where the pack has none. Arena. */
struct text reading_words(const struct checker *c, const char *reading, const struct text *blanks,
                          size_t count);
#define WORDING(c, reading, ...)                                      \
    reading_words((c), (reading), (const struct text[]){__VA_ARGS__}, \
                  sizeof(const struct text[]){__VA_ARGS__} / sizeof(struct text))

/* Asks about the words, where both readings are there and differ. */
void ask_which(struct checker *c, struct span words, struct text one, struct text other);
struct text shown_number(const struct checker *c, double n);

#endif
