/* build/laidout.c: foods that stand ready beside the rest: "I've got some olives out too".
 * SPDX-License-Identifier: MIT */
#include "build/line.h"

#include "build/wording.h"

/* "A bay leaf off the bush here as well": so many words behind the food. */
#define ASIDE_WORDS 7

/* Whether somebody has the food, or has put it out, before chunk `index`. */
static bool is_had(const struct builder *b, size_t index)
{
    for (size_t i = index; i-- > 0 && index - i <= 4;) {
        const struct chunk *c = &b->chunks.at[i];
        if (c->tag == TAG_LINE)
            return false;
        if (c->tag == TAG_HAVE && !(c->scope & SCOPE_NOT_DONE))
            return true;
    }
    return false;
}

bool is_laid_out(const struct builder *b, size_t index)
{
    const struct chunk *c = &b->chunks.at[index];
    size_t last = c->last + ASIDE_WORDS;
    if (!is_had(b, index))
        return false;
    for (size_t i = c->last + 1; i <= last && i < b->r->words.count; i++) {
        const struct word *w = &b->r->words.at[i];
        if (w->tag == TAG_FOOD || b->r->words.at[i - 1].after >= AFTER_STOP)
            return false;
        if (step_text(b->k, "ready", w->key).length)
            return true;
        if (w->tag == TAG_INTO)
            return false; /* "I want four cloves of garlic in there too" */
    }
    return false;
}
