/* build/stepaction.c: the action that a step has for a verb, and how that is written.
 * SPDX-License-Identifier: MIT */
#include "build/context.h"
#include "build/writer.h"

struct text step_action(const struct writer *w, struct text action)
{
    const struct table *t = pack_table(w->b->k, "context-actions");
    for (size_t i = 0; i < w->s->actions.count; i++)
        if (text_equal(w->s->actions.at[i], action))
            return action;
    for (size_t row = t ? table_find(t, action) : 0; t && row < t->rows; row = table_next(t, row)) {
        struct text other = table_cell(t, row, CONTEXT_ACTION);
        for (size_t i = 0; i < w->s->actions.count; i++)
            if (text_equal(w->s->actions.at[i], other))
                return other;
    }
    return action;
}

struct text verb_words(const struct chunk *c, struct text action, bool subject)
{
    struct text shown = entry_shown(c->entry);
    if (!text_equal(action, entry_value(c->entry)) || c->tag != TAG_ACTION)
        return action;
    size_t words = 1;
    for (size_t i = 0; i < shown.length; i++)
        words += shown.at[i] == ' ';
    size_t space = text_find(shown, ' ', 0);
    bool plain =
        text_equal(text_slice(shown, 0, space), text_slice(action, 0, text_find(action, ' ', 0)));
    bool goes = !text_equal(entry_words(c->entry), shown); /* "goes in the oven" */
    return !subject && (plain || (words >= SAYING_WORDS && !goes)) ? shown : action;
}
