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

/* No longer run of units has a row. */
#define TURN_RUN_MOST 3

/* A unit of the text: a content word as its class alone ("LEAD", "NUMBER"), since there are many of
 * them and they are a recording's own; each other word as itself. Classes in a row are one. What
 * the runs of one, two ... units from this one on speak for are these of turn_units.rows; 0:
 * nothing. */
struct turn_unit {
    uint32_t runs[TURN_RUN_MOST];
};

/* Where a run stands, as the table's column "place" says it. */
enum turn_place {
    TURN_FIRST, /* right behind the place */
    TURN_LAST,  /* right before it */
    TURN_NEAR,
    TURN_LATER,
    TURN_BEFORE,
    TURN_PLACES
};

/* What the rows of one run of units speak for at each place, and within a sentence for talk of
 * which nothing is cooked. */
struct turn_row {
    struct turn_points at[TURN_PLACES];
    float talked;
};

struct turn_units {
    LIST(struct turn_unit) list;
    LIST(struct turn_row) rows; /* the first is of what has no row; empty: the pack has no table */
    size_t *first; /* the unit that each sentence begins with; one more: how many there are */
    struct turn_points everywhere;
};

/* Arena. */
struct turn_units turn_units_make(const struct recording *r, const struct pack *k);
/* Of the place before a sentence; 0 where the pack has no such table. */
struct turn_points turn_points_at(const struct turn_units *u, size_t sentence);
/* How much the words within a sentence speak for talk of which nothing is cooked. */
float talk_points_of(const struct turn_units *u, size_t sentence);
/* Tells the units of a sentence to `each`, in order. */
void turn_units_tell(const struct recording *r, const struct pack *k, const struct sentence *s,
                     void (*each)(void *to, struct text unit), void *to);

#endif
