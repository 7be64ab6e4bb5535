/* edits/run.h: what the stages of edits/ share while they change a recording.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_EDITS_RUN_H
#define DISHTAKE_EDITS_RUN_H

#include "edits/edits.h"
#include "edits/parse.h"
#include "edits/value.h"

/* One edit being applied. */
struct change {
    struct recording *r;
    const struct pack *k;
    size_t number; /* of the edit, from 1 */
    const json_t *json;
    struct edit_outcome *out;
};

/* Puts one kind into effect. False, with out->why, when it has no place here. */
typedef bool edit_apply(struct change *c);
#define EDIT(name, on, to, stage, about) edit_apply apply_##name;
#include "edits/kinds.def"
#undef EDIT

/* Says why an edit has no place, and returns false. */
bool no_place(struct change *c, const char *why);

/* The dish that an edit's spot points at, by its id, else the one that has most of those words;
 * NULL: none. */
struct dish *spot_dish(const struct recording *r, const struct edit_spot *spot);
/* The dish that has this word; NULL: none. */
struct dish *dish_with_word(const struct recording *r, size_t word);
struct ingredient *spot_line(const struct recording *r, const struct edit_spot *spot,
                             struct dish **dish);
struct step *spot_step(const struct recording *r, const struct edit_spot *spot, struct dish **dish);

#endif
