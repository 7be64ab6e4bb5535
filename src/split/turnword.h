/* split/turnword.h: what the words before and behind a place speak for (table "turn-words"): that
 * another dish begins there, or one that was left goes on.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_TURNWORD_H
#define DISHTAKE_SPLIT_TURNWORD_H

#include "model/recording.h"
#include "pack/pack.h"

/* Log odds, all the table's rows that hold there added up. */
struct turn_points {
    float begins, returns;
};

/* No longer run of words has a row. */
#define TURN_RUN_MOST 3

/* A word as the table sees it: a content word as its class alone ("LEAD", "NUMBER"), since there
 * are many of them and they are a recording's own; each other word as itself. Classes in a row are
 * one. */
struct turn_unit {
    size_t at; /* where it stands in the text */
    size_t length;
    size_t rows[TURN_RUN_MOST]; /* the first row of one, two ... units from this one on; table.rows:
                                   none */
};

struct turn_units {
    const struct table *table; /* may be NULL */
    const char *text;          /* all units, a space between any two */
    LIST(struct turn_unit) list;
    size_t *first; /* the unit that each sentence begins with; one more: how many there are */
};

/* Arena. */
struct turn_units turn_units_make(const struct recording *r, const struct pack *k);
/* Of the place before a sentence; 0 where the pack has no such table. */
struct turn_points turn_points_at(const struct turn_units *u, size_t sentence);

#endif
