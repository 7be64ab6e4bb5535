/* build/told.h: whether a verb is a step that a written recipe would have, by what was learned of
 * how cooks talk. What the rules of ordered.h say of it is a part of that.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_TOLD_H
#define DISHTAKE_BUILD_TOLD_H

#include "build/builder.h"

enum told_fact {
#define TOLD(name, ordered, other, holds, what) TOLD_##name,
#include "build/told.def"
    TOLD_FACTS
};

/* How many words before the verb and behind it are looked at. */
#define TOLD_WORDS 3

/* What there is to know of a verb. */
struct told {
    bool is[TOLD_FACTS];
    uint64_t marks;               /* of the lexicon's entry */
    unsigned char before, behind; /* the tags beside it; 0 where there is a pause */
    struct text says;             /* its words, as the lexicon has them: "go in" */
    struct text does;             /* what it tells to do: "add" */
    struct text near[TOLD_WORDS]; /* the words before it that are no foods, the nearest first */
    struct text next[TOLD_WORDS]; /* the first words of the chunks behind it that are no foods */
    size_t nears, nexts;
};

/* toldfact.c. What there is to know of the verb in chunk `i`, which tells to do `does`. It asks
 * is_step_verb() of those before it in the sentence. */
void find_told(const struct builder *b, size_t i, struct text does, struct told *out);
/* Whether the verb is a step; `ordered`: the rules say so. */
bool is_told(const struct builder *b, size_t i, struct text does, bool ordered);

#endif
