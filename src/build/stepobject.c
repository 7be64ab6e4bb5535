/* build/stepobject.c: what a verb is done to, and whether it says so.
 * SPDX-License-Identifier: MIT */
#include "build/writer.h"

size_t subject_food(const struct writer *w, size_t verb)
{
    for (size_t i = verb; i-- > w->begin;) {
        if (said_verb(w->b, i).action.length)
            return verb;
        if (w->b->chunks.at[i].tag == TAG_LINE && is_food(&w->b->chunks.at[i]))
            return i;
    }
    return verb;
}

bool is_reworded(const struct chunk *c, struct text action)
{
    return c->entry && c->last > c->first
           && !text_equal(verb_words(c, action, false), entry_shown(c->entry));
}

bool keeps_verb(const struct writer *w, const struct chunk *c, struct text action)
{
    return c->entry && c->tag == TAG_ACTION && chunk_marks(c) & MARK_OF(idle)
           && !text_equal(action, entry_value(c->entry))
           && step_words_list(w->b->k, "keep", action);
}

void say_to(struct writer *w, struct text action)
{
    struct text own = step_text(w->b->k, "whereto", action);
    prose_word(&w->p, own.length ? own : step_word(w->b->k, "into"), true);
}

bool is_object_word(const struct writer *w, size_t i)
{
    unsigned char tag = i < w->end ? w->b->chunks.at[i].tag : 0;
    return tag == TAG_LINE || tag == TAG_IT || tag == TAG_AMOUNT || tag == TAG_OTHER;
}

bool holds_object(const struct chunk *c)
{
    struct text shown = entry_shown(c->entry);
    size_t words = 1;
    for (size_t i = 0; i < shown.length; i++)
        words += shown.at[i] == ' ';
    return words >= SAYING_WORDS;
}

bool puts_only(const struct writer *w, size_t verb)
{
    size_t end = clause_end(w, verb), i = verb + 1;
    for (; i < end; i++) {
        unsigned char tag = w->b->chunks.at[i].tag;
        if (tag == TAG_DURATION || tag == TAG_UNTIL || said_verb(w->b, i).action.length)
            break;
        if (tag != TAG_LINE && tag != TAG_THE && tag != TAG_AND)
            return false;
    }
    return says_tag(w, verb + 1, i, TAG_LINE);
}

bool lacks_object(const struct writer *w, const struct chunk *c, struct text action, size_t rest,
                  size_t end)
{
    const uint64_t wants = MARK_OF(puts) | MARK_OF(takes);
    const struct entry *e = action_entry(w->b->k, action);
    uint64_t marks = e && !(e->marks & MARK_OF(prep)) ? e->marks : 0;
    unsigned char next = rest < end ? w->b->chunks.at[rest].tag : (unsigned char) TAG_AND;
    bool saying = c->entry
                  && ((holds_object(c) && !is_reworded(c, action))
                      || step_text(w->b->k, "turned", entry_words(c->entry)).length);
    return marks & wants && !saying
           && (next == TAG_AND || next == TAG_INTO || next == TAG_FOR || next == TAG_DURATION
               || next == TAG_UNTIL || next == TAG_SO || next == TAG_THERE);
}

bool is_place_word(const struct writer *w, size_t i, size_t end)
{
    if (i >= end)
        return false;
    unsigned char tag = w->b->chunks.at[i].tag;
    return tag == TAG_ARTICLE || tag == TAG_THE || tag == TAG_VESSEL || tag == TAG_MEASURE
           || tag == TAG_SIZE;
}

bool comes_from(const struct writer *w, size_t i, size_t end)
{
    while (i < end && is_place_word(w, i, end) && w->b->chunks.at[i].tag != TAG_VESSEL)
        i++;
    unsigned char tag = i < end ? w->b->chunks.at[i].tag : 0;
    return tag == TAG_VESSEL || tag == TAG_PLACE
           || (i < end && entry_as(w->b->r->words.at[w->b->chunks.at[i].last].readings, TAG_OVEN));
}
