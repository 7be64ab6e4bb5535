/* model/recording.c
 * SPDX-License-Identifier: MIT */
#include "model/recording.h"

const char *const UNNAMED[2] = {"-", "--"};

bool speaker_is_named(struct text speaker)
{
    return speaker.length && !text_is(speaker, UNNAMED[0]) && !text_is(speaker, UNNAMED[1]);
}

const struct word_rare WORD_USUAL;

static struct word_rare *own_rare(struct arena *a, struct word *w)
{
    struct word_rare *own = arena_own(a, w->rare, sizeof *own);
    w->rare = own;
    return own;
}

void word_set_number(struct arena *a, struct word *w, struct ratio number)
{
    own_rare(a, w)->number = number;
}

void word_set_heard(struct arena *a, struct word *w, const struct entry *as,
                    const struct entry * or)
{
    struct word_rare *own = own_rare(a, w);
    own->heard_as = as;
    own->heard_or = or ;
}

size_t sentence_from(const struct recording *r, size_t word)
{
    size_t begin = 0, end = r->sentences.count;
    while (begin < end) {
        size_t middle = begin + (end - begin) / 2;
        if (r->sentences.at[middle].last < word)
            begin = middle + 1;
        else
            end = middle;
    }
    return begin;
}

size_t sentence_until(const struct recording *r, size_t word)
{
    size_t i = sentence_from(r, word);
    return i + (i < r->sentences.count && r->sentences.at[i].first <= word);
}

const struct sentence *sentence_next(const struct recording *r, struct span words,
                                     const struct sentence *s)
{
    size_t next = s ? (size_t) (s - r->sentences.at) + 1 : sentence_from(r, words.first);
    bool there = next < r->sentences.count && r->sentences.at[next].first <= words.last;
    return there ? &r->sentences.at[next] : NULL;
}

bool span_has_tag(const struct recording *r, struct span words, unsigned char tag)
{
    for (size_t i = words.first; i <= words.last; i++)
        if (r->words.at[i].tag == tag)
            return true;
    return false;
}

const struct entry *entry_at(const struct recording *r, struct span words)
{
    return span_is_empty(words) ? NULL : r->words.at[words.last].entry;
}

const struct sentence *sentence_of(const struct recording *r, size_t word)
{
    size_t i = sentence_from(r, word);
    return i < r->sentences.count && r->sentences.at[i].first <= word ? &r->sentences.at[i] : NULL;
}

struct dish *dish_with_id(const struct recording *r, size_t id)
{
    for (size_t i = 0; i < r->dishes.count; i++)
        if (r->dishes.at[i].id == id)
            return &r->dishes.at[i];
    return NULL;
}

bool dish_has_sentence(const struct dish *d, const struct sentence *s)
{
    for (size_t i = 0; i < d->spans.count; i++)
        if (s->first >= d->spans.at[i].first && s->last <= d->spans.at[i].last)
            return true;
    return false;
}

const struct ingredient *dish_ingredient(const struct dish *d, size_t id)
{
    for (size_t i = 0; i < d->ingredients.count; i++)
        if (d->ingredients.at[i].id == id)
            return &d->ingredients.at[i];
    return NULL;
}
