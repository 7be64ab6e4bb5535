/* build/wordheat.c: temperatures as a step prints them.
 * SPDX-License-Identifier: MIT */
#include "build/wordheat.h"

#include "build/wording.h"
#include "kitchen/print.h"

static bool is_taken_back(const struct recording *r, size_t first, size_t end)
{
    for (size_t i = first; i < end; i++)
        if (r->words.at[i].tag == TAG_SORRY)
            return true;
    return false;
}

/* The step's temperature that the words of chunk `c` give, or that took their place: "four hundred,
 * sorry, three seventy-five"; NULL where it has none. */
static const struct temperature *temperature_meant(const struct builder *b, const struct step *s,
                                                   const struct chunk *c)
{
    const struct temperature *later = NULL;
    for (size_t i = s->temperatures.count; i-- > 0;) {
        const struct temperature *t = &s->temperatures.at[i];
        if (t->words.first == c->first)
            return t;
        if (t->words.first > c->first)
            later = t;
    }
    return later && is_taken_back(b->r, c->last + 1, later->words.first) ? later : NULL;
}

/* "three fifty" -> "350 °F", as it was understood; a gas mark as it was said. */
void say_heat(const struct builder *b, const struct step *s, struct prose *p, const struct chunk *c)
{
    const struct temperature *meant = temperature_meant(b, s, c);
    for (size_t i = 0; i < s->temperatures.count; i++) {
        const struct temperature *t = &s->temperatures.at[i];
        if (t != meant || t->unit == 'G')
            continue;
        prose_word(p, print_number(b->r->arena, t->value, true), true);
        prose_word(p, step_word(b->k, t->unit == 'F' ? "degree-f" : "degree-c"), false);
        if (t->fan)
            prose_word(p, step_word(b->k, "fan"), false);
        return;
    }
    say_words(b, p, c->first, c->last);
}
