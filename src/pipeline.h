/* pipeline.h: the bytes of a transcript -> recipes and findings, in parts. What a part begins with
 * can be kept; then it can be begun anew with other edits, and what stands before it is not done
 * again.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_PIPELINE_H
#define DISHTAKE_PIPELINE_H

#include "check/said.h"
#include "edits/edits.h"
#include "kitchen/kitchen.h"
#include "match/matcher.h"
#include "tag/ear.h"

/* What a recording is read with. */
struct means {
    const struct pack *k;
    const struct kitchen *kitchen;
    const struct profile *profile; /* whose cups and spoons; NULL: a unit is what its name says */
    struct matcher *matcher;
    struct ear *ear;
    const struct saying_list *sayings; /* NULL: they are read for each recording */
    const struct edits *edits;         /* the cook's; NULL: none */
    struct text list;                  /* the cook's ingredient list */
    const char *list_name;             /* NULL: there is none */
    bool sparing; /* what a stage looked up in the pack goes before the next one; else it stays for
                     the next recording */
};

/* The first part is before all edits; each of the others begins with the edits of one stage. */
#define PARTS (1 + EDIT_STAGES)

/* What each part began with: in the recording's arena, and valid as long as that is not reset. */
struct kept {
    struct recording before[PARTS];
    struct arena_mark mark[PARTS];
    struct problems problems[PARTS]; /* only how many there were */
    size_t count;                    /* parts that were begun */
};

/* Inside arena_open. `r` is empty but for what was asked for. `kept` NULL: nothing is kept, else
 * means must have edits, be it none. False when nothing usable is left; the problems say why. */
bool recording_extract(struct recording *r, const struct means *m, struct kept *kept,
                       struct problems *p);
/* Does anew what edits of that stage change; those of the stages before are the same as they were.
 * The same recording comes of it as from nothing. Only where kept->count says that so many parts
 * were begun; see recording_kept. */
bool recording_again(struct recording *r, enum edit_stage from, const struct means *m,
                     struct kept *kept, struct problems *p);
/* Whether the part that begins with these edits was kept. */
bool recording_kept(const struct kept *kept, enum edit_stage from);

#endif
