/* build/stepclean.c: how far the words behind a verb can stand as they were said.
 * SPDX-License-Identifier: MIT */
#include "build/writer.h"

/* Words on which no phrase ends. */
static bool hangs(const struct writer *w, size_t i)
{
    const struct chunk *c = &w->b->chunks.at[i];
    switch (c->tag) {
    case TAG_THE:
        return !is_pronoun(w, i, i + 1) && !is_step_word(w->b, c, "many");
    case TAG_ARTICLE:
    case TAG_SIZE:
    case TAG_FULLNESS:
    case TAG_OF:
    case TAG_AND:
    case TAG_OR:
    case TAG_TO:
    case TAG_FOR:
    case TAG_WITH:
    case TAG_AT:
    case TAG_FROM:
    case TAG_HEDGE:
    case TAG_EACH:
    case TAG_WHOLE:
        return true;
    case TAG_OTHER:
        return is_step_word(w->b, c, "every") || is_step_word(w->b, c, "hangs");
    default:
        return false;
    }
}

/* "The spinach it": a pronoun that is not what a verb or a preposition has. */
static bool is_stray(const struct writer *w, size_t i, size_t from)
{
    unsigned char before = i > from ? w->b->chunks.at[i - 1].tag : 0;
    return w->b->chunks.at[i].tag == TAG_IT && before && before != TAG_INTO && before != TAG_WITH
           && before != TAG_OF && before != TAG_FROM && before != TAG_OTHER && before != TAG_TO;
}

static bool ends_clean(const struct writer *w, size_t n, size_t from, size_t end)
{
    const struct chunk *c = &w->b->chunks.at[n];
    return is_odd(w, n, from, end) || is_stray(w, n, from) || c->tag == TAG_DURATION
           || c->tag == TAG_UNTIL || c->tag == TAG_SO || c->tag == TAG_OR || c->scope & SCOPE_UNTIL
           || is_step_word(w->b, c, "after");
}

/* From chunk `from` on, the end of the words that can stand as they were said. */
static size_t clean_end(const struct writer *w, size_t from, size_t end)
{
    size_t n = from;
    while (n < end && !ends_clean(w, n, from, end)) {
        const struct chunk *c = &w->b->chunks.at[n++];
        bool list = is_food(c) && n < end && is_food(c + 1);
        if (w->b->r->words.at[c->last].after >= AFTER_COMMA && !list)
            break;
    }
    while (n > from && hangs(w, n - 1))
        n--;
    return n;
}

size_t object_end(const struct writer *w, size_t verb, size_t end)
{
    struct said_verb said = said_verb(w->b, verb);
    if (said.split && (said.phrasal.thing || is_food_word(&w->b->chunks.at[verb])))
        return verb + 1;
    bool food = said.split && is_food(&w->b->chunks.at[said.phrasal.end]);
    return clean_end(w, verb + 1, said.split ? said.phrasal.end + food : end);
}

bool names_object(const struct writer *w, size_t begin, size_t end)
{
    for (size_t i = begin; i < end; i++) {
        unsigned char tag = w->b->chunks.at[i].tag;
        if (tag == TAG_INTO || tag == TAG_WITH || tag == TAG_FOR || tag == TAG_AND)
            return false;
        if (tag == TAG_LINE || tag == TAG_PART || tag == TAG_VESSEL || tag == TAG_CONTAINER
            || tag == TAG_DISH || tag == TAG_TOOL || tag == TAG_EXTRACT || tag == TAG_OVEN
            || tag == TAG_PLACE || tag == TAG_REST || tag == TAG_WHOLE
            || (tag == TAG_OTHER && !is_step_word(w->b, &w->b->chunks.at[i], "particle")))
            return true;
    }
    return false;
}
