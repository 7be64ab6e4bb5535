/* build/preppart.c: parts of a food that are taken away: "seeds out", "without the stones".
 * SPDX-License-Identifier: MIT */
#include "build/prep.h"

/* What table removed-parts says of the last word of chunk `i`: what a food is called without that
 * part; empty for "off" and "out", which say that it is gone. False where the word is not listed.
 */
static bool is_removed(const struct builder *b, size_t i, struct text *done)
{
    const struct table *t = pack_table(b->k, "removed-parts");
    size_t row =
        t && i < b->chunks.count ? table_find(t, b->r->words.at[b->chunks.at[i].last].key) : 0;
    if (!t || i >= b->chunks.count || row >= t->rows)
        return false;
    *done = table_cell(t, row, table_column(t, "done"));
    return true;
}

struct text part_done(const struct builder *b, size_t i)
{
    struct text done;
    return is_removed(b, i, &done) ? done : TEXT_EMPTY;
}

/* "off", "out", and "out of", "off of" before what it is taken from. */
static bool is_off(const struct builder *b, size_t i)
{
    struct text done;
    const struct table *t = pack_table(b->k, "removed-parts");
    if (is_removed(b, i, &done))
        return !done.length;
    if (!t || i >= b->chunks.count || b->chunks.at[i].tag != TAG_FROM)
        return false;
    size_t row = table_find(t, b->r->words.at[b->chunks.at[i].first].key);
    return row < t->rows && !table_cell(t, row, table_column(t, "done")).length;
}

struct prep_phrase removed_at(const struct builder *b, size_t i)
{
    const struct chunks *c = &b->chunks;
    bool without = false;
    for (; i < c->count
           && (c->at[i].tag == TAG_WITH || c->at[i].tag == TAG_THE || c->at[i].tag == TAG_NOT
               || c->at[i].tag == TAG_STATE);
         i++)
        without |= c->at[i].tag == TAG_NOT;
    struct text done;
    bool verb = chunk_tag(c, i) == TAG_ACTION
                && (chunk_tag(c, i + 1) == TAG_IT || chunk_tag(c, i + 1) == TAG_THE);
    if (verb || !is_removed(b, i, &done) || !done.length)
        return (struct prep_phrase){0}; /* "don't peel them" */
    if (without)                        /* "without the stones" */
        return (struct prep_phrase){done, i};
    size_t off = i + 1;
    while (off < c->count && c->at[off].tag == TAG_DONE && !is_off(b, off))
        off++;
    if (is_off(b, off))
        return (struct prep_phrase){done, off};
    bool taken =
        off > i + 1
        && (chunk_marks(&c->at[off - 1]) & MARK_OF(takes) || c->at[off - 1].entry->words_count > 1);
    return (struct prep_phrase){taken ? done : TEXT_EMPTY, off - 1};
}

/* Whether the verb takes something away by itself: "remove", "cut off"; what is drained or peeled
 * stays. */
static bool takes_away(const struct chunk *c)
{
    uint64_t marks = chunk_marks(c);
    bool whole = marks & MARK_OF(takes) && !(marks & MARK_OF(prep));
    return c->tag == TAG_ACTION && c->entry
           && (whole || (marks & MARK_OF(cuts) && c->entry->words_count > 1));
}

struct text part_taken(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    size_t i = index + 1;
    if (!takes_away(&c->at[index]))
        return TEXT_EMPTY;
    while (i < c->count
           && (c->at[i].tag == TAG_THE || c->at[i].tag == TAG_WHOLE || c->at[i].tag == TAG_STATE))
        i++; /* "the wet seeds" */
    return i < c->count ? part_done(b, i) : TEXT_EMPTY;
}
