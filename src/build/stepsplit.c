/* build/stepsplit.c: a verb whose words stand apart: "put the lid back on".
 * SPDX-License-Identifier: MIT */
#include "build/writer.h"

/* The last word of a verb of several that the cook said behind a pronoun: "knock it back"; empty
 * where it was not. */
static struct text word_behind(const struct writer *w, const struct said_verb *said, size_t verb)
{
    const struct word *last = &w->b->r->words.at[w->b->chunks.at[said->phrasal.end].last];
    size_t space = text_find(said->action, ' ', 0);
    struct text tail = text_slice(said->action, space + 1, said->action.length);
    return space < said->action.length && verb + 2 == said->phrasal.end
                   && is_pronoun(w, verb + 1, said->phrasal.end) && text_equal(tail, last->key)
               ? tail
               : TEXT_EMPTY;
}

struct said_verb written_verb(const struct writer *w, size_t verb, struct text *apart)
{
    struct said_verb said = said_verb(w->b, verb);
    const struct chunk *c = &w->b->chunks.at[verb];
    if (!said.split || c->tag != TAG_ACTION)
        return said;
    const struct chunk *particle = &w->b->chunks.at[said.phrasal.end];
    bool heats = particle->tag == TAG_ACTION && chunk_marks(particle) & MARK_OF(heats);
    if (particle->tag == TAG_COUNTER || heats) /* "bring the stock back up to a gentle simmer" */
        return (struct said_verb){.action = entry_value(c->entry)};
    *apart = word_behind(w, &said, verb);
    if (apart->length)
        said.action = text_slice(said.action, 0, said.action.length - apart->length - 1);
    return said;
}

/* What stands between a verb and its particle: the thing it is done to, and no more. */
static void say_between(struct writer *w, size_t begin, size_t end)
{
    size_t i = begin;
    while (i < end && w->b->chunks.at[i].tag != TAG_OTHER && w->b->chunks.at[i].tag != TAG_INTO
           && w->b->chunks.at[i].tag != TAG_TO && w->b->chunks.at[i].tag != TAG_UNTIL)
        i++;
    say_range(w, begin, i);
}

static bool is_thing(const struct writer *w, size_t i, size_t end)
{
    if (is_place_word(w, i, end))
        return true;
    unsigned char tag = i < end ? w->b->chunks.at[i].tag : 0;
    return tag == TAG_LINE || tag == TAG_PART || tag == TAG_OVEN || tag == TAG_PLACE
           || tag == TAG_TOOL || tag == TAG_HEAT || tag == TAG_IT || tag == TAG_NUMBER
           || tag == TAG_SIDE;
}

size_t say_split(struct writer *w, const struct phrasal *p, size_t rest, size_t end,
                 struct text apart)
{
    const struct entry *particle = w->b->chunks.at[p->end].entry;
    say_between(w, p->thing ? p->end : rest, p->end);
    if (apart.length)
        prose_word(&w->p, apart, false);
    if (is_food(&w->b->chunks.at[p->end])) /* "keep a cup of the water" */
        say_food(w->b, &w->p, &w->b->chunks.at[p->end], true);
    else if (particle)
        prose_word(&w->p, step_text(w->b->k, "rest", entry_words(particle)), false);
    rest = p->end + 1;
    if (rest < end && w->b->chunks.at[rest].tag == TAG_INTO && !is_thing(w, rest + 1, end))
        rest++; /* "back in" */
    if (w->b->r->words.at[w->b->chunks.at[rest - 1].last].after == AFTER_COMMA)
        prose_comma(&w->p);
    return rest;
}

bool says_object(const struct writer *w, size_t verb, size_t end)
{
    for (size_t i = verb + 1; i < end; i++)
        if (!is_step_word(w->b, &w->b->chunks.at[i], "chatter"))
            return true;
    return false;
}
