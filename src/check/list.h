/* check/list.h: the ingredient list that the cook shows on screen or in the description, read by
 * the same grammar as the talk, so that both can be held against each other.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_CHECK_LIST_H
#define DISHTAKE_CHECK_LIST_H

#include "build/quantity.h"
#include "match/matcher.h"
#include "model/recording.h"

/* The most bytes and lines a list may have. */
#define LIST_BYTES_MAX ((size_t) 256 << 10)
#define LIST_LINES_MAX 1000

/* One food of a line. A line of several foods ("salt and pepper") has as many. */
struct listed {
    struct text said; /* the line, without its bullet */
    unsigned line;    /* in the file, from 1 */
    size_t section;
    const struct entry *entry; /* NULL for a food that no lexicon knows */
    struct text kind, food;    /* as in struct ingredient */
    struct said_amount amount;
    bool either;   /* offered instead of the food before it: "butter or oil" */
    bool optional; /* "if you like" */
};

/* Lines that belong together; the first section may have no heading. */
struct list_section {
    struct text heading; /* empty when it has none */
    size_t dish;         /* the dish that it is of; FINDING_NO_DISH when none is like it */
};

struct ingredient_list {
    const char *file; /* borrowed */
    LIST(struct listed) foods;
    LIST(struct list_section) sections;
};

/* Reads lines as they are pasted from a description: bullets, headings, times and sentences of
 * instruction may stand between them; list->file is their name. Says of each section which of r's
 * dishes it is of. False, with an error, when the bytes are no text, too many, or hold no
 * ingredient. Arena. */
bool list_read(struct ingredient_list *list, struct text bytes, const struct recording *r,
               const struct pack *k, struct matcher *m, struct problems *p);

/* How alike two foods are: 2 the same, 1 one is a kind of the other ("flour", "plain flour"), 0
 * neither. */
int foods_alike(struct text kind, struct text food, struct text other_kind, struct text other_food);

#endif
