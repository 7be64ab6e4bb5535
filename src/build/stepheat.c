/* build/stepheat.c: "low heat, keep stirring, about four minutes": the heat of a step whose text
 * has lost it.
 * SPDX-License-Identifier: MIT */
#include "build/stephead.h"

/* Where it has one sentence only it is plain what the heat is of. */
static bool is_one_sentence(const struct prose *p)
{
    for (size_t i = 0; i + 1 < p->length; i++)
        if (p->at[i] == '.' && p->at[i + 1] == ' ')
            return false;
    return p->length > 0;
}

void say_lost_heat(struct writer *w)
{
    const struct text heat = w->s->heat, warmth = step_word(w->b->k, "warmth");
    if (!heat.length || !w->s->durations.count || !is_one_sentence(&w->p)
        || is_written_from(w, 0, heat) || is_written_from(w, 0, warmth))
        return;
    prose_reopen(&w->p);
    prose_word(&w->p, step_word(w->b->k, "above"), true);
    prose_word(&w->p, heat, false);
    prose_word(&w->p, warmth, false);
    prose_stop(&w->p);
}
