/* build/timeeach.c
 * SPDX-License-Identifier: MIT */
#include "build/timeeach.h"

#include "build/context.h"
#include "build/wording.h"

/* "Ten at a time. Swish them about. Four minutes.": so many sentences before the time. */
#define BATCH_SENTENCES 2

/* "Thirty seconds on that side", "another minute on the other side": the time of one side only. */
static bool is_one_side(const struct builder *b, size_t index, size_t side)
{
    const struct chunk *time = &b->chunks.at[index], *the = &b->chunks.at[side - 1];
    bool more = false;
    for (size_t i = time->first; i <= time->last; i++)
        more |= b->r->words.at[i].tag == TAG_MORE;
    return the->tag == TAG_THE && !(chunk_marks(&b->chunks.at[side]) & MARK_OF(plural))
           && (more
               || (the->entry && text_equal(entry_value(the->entry), step_word(b->k, "that"))));
}

/* "a side", "per batch": among the two chunks behind a length of time. */
static struct text counted_near(const struct builder *b, size_t index)
{
    for (size_t i = index + 1; i < b->chunks.count && i <= index + 3; i++) {
        const struct chunk *c = &b->chunks.at[i];
        if (c->tag == TAG_SIDE)
            return is_one_side(b, index, i) ? TEXT_EMPTY : entry_value(c->entry);
        if (is_step_word(b, c, "batches") && chunk_tag(&b->chunks, i + 1) != TAG_OF)
            return TEXT_OF("batch"); /* "five minutes a lot", "a go" */
        if (c->tag != TAG_EACH && c->tag != TAG_ARTICLE && c->tag != TAG_INTO && c->tag != TAG_THE
            && c->tag != TAG_HEDGE && c->tag != TAG_NUMBER && c->tag != TAG_FOR)
            break;
    }
    for (size_t i = index; i-- > 0 && index - i <= 4;)
        if (b->chunks.at[i].tag == TAG_SIDE && i && b->chunks.at[i - 1].tag == TAG_EACH)
            return entry_value(b->chunks.at[i].entry);
    return TEXT_EMPTY;
}

/* "Six", before "at a time"; never "a bit". */
static bool is_how_many(const struct recording *r, size_t i)
{
    unsigned char tag = i ? r->words.at[i - 1].tag : (unsigned char) TAG_OTHER;
    return tag == TAG_ONES || tag == TAG_TEENS || tag == TAG_TENS || tag == TAG_NUMBER
           || tag == TAG_DOZEN || tag == TAG_COUNTER;
}

/* Whether word `i` says that not all goes in at once: "six at a time", "in two batches". */
static bool says_batches(const struct builder *b, const struct sentence *s, size_t i)
{
    const struct word *w = &b->r->words.at[i];
    if (w->scope & SCOPE_NOT_DONE || i == s->first)
        return false;
    if (w->tag == TAG_BY)
        return step_words_list(b->k, "bywise", w->key) && is_how_many(b->r, w->entry_first);
    return w->tag == TAG_SIDE && w->entry && text_is(entry_value(w->entry), "batch")
           && w->entry->marks & MARK_OF(plural);
}

static bool has_batches(const struct builder *b, const struct sentence *s)
{
    for (size_t i = s->first; i <= s->last; i++)
        if ((b->r->words.at[i].tag == TAG_BY || b->r->words.at[i].tag == TAG_SIDE)
            && says_batches(b, s, i))
            return true;
    return false;
}

/* Whether the sentence, or one just before it in the dish, says so of what is not boiled. */
static bool is_by_batches(const struct builder *b)
{
    const struct sentence *s = b->sentence;
    for (size_t n = 0; n <= BATCH_SENTENCES && s >= b->r->sentences.at; n++, s--)
        if (has_batches(b, s)) /* what boils swims up by itself */
            return dish_has_sentence(b->dish, s) && !(last_heat(b) & MARK_OF(boils));
    return false;
}

struct text counted_by(const struct builder *b, size_t index)
{
    struct text near = counted_near(b, index);
    return near.length || !is_by_batches(b) ? near : TEXT_OF("batch");
}
