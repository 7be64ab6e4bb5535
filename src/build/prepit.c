/* build/prepit.c: "it", "those", "each one": a food that was spoken of, behind a verb.
 * SPDX-License-Identifier: MIT */
#include "build/prep.h"

#include "build/wording.h"

/* "... those up", "dice that up for me": a word that no lexicon knows, and no thing behind it. */
static bool ends_with_particle(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    if (index >= c->count || c->at[index].tag != TAG_OTHER || c->at[index].entry)
        return false;
    bool manner = index + 1 < c->count && c->at[index + 1].tag == TAG_OTHER
                  && !c->at[index + 1].entry; /* "dice that up real quick" */
    if (manner && step_text(b->k, "particle", b->r->words.at[c->at[index].last].key).length)
        return true;
    unsigned char next = chunk_tag(c, index + 1);
    return b->r->words.at[c->at[index].last].after >= AFTER_COMMA || next == TAG_FOR
           || next == TAG_INTO || next == TAG_SO || next == TAG_AND || next == TAG_YOU
           || next == TAG_ME || next == TAG_WITH || next == TAG_MANNER || next == TAG_THERE;
}

/* What may stand behind "those" that it does not belong to: "beat those with a fork", "slice this
 * thin". */
static bool follows_it(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    unsigned char tag = chunk_tag(c, index);
    if (tag == TAG_STATE || tag == TAG_SIZE || tag == TAG_FULLNESS)
        return index + 1 >= c->count || b->r->words.at[c->at[index].last].after >= AFTER_COMMA;
    if (tag == TAG_OTHER && index + 1 >= c->count)
        return c->at[index].entry != NULL; /* "already", "there" */
    return tag == TAG_SO || tag == TAG_AND || tag == TAG_INTO || tag == TAG_MANNER
           || tag == TAG_DOWN || tag == TAG_WITH || tag == TAG_FOR || tag == TAG_UNTIL
           || tag == TAG_DURATION || tag == TAG_ME || tag == TAG_YOU || tag == TAG_WHEN
           || tag == TAG_IF || tag == TAG_MEANWHILE || tag == TAG_FROM;
}

/* "Slash each one", "cut each in half" */
static bool is_each_one(const struct chunks *c, size_t index)
{
    unsigned char next = chunk_tag(c, index + 1);
    return c->at[index].tag == TAG_EACH
           && (next == TAG_IT || next == TAG_NUMBER || next == TAG_INTO || next == TAG_SO
               || next == TAG_MANNER);
}

bool is_it(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    if (index >= c->count)
        return false;
    if (c->at[index].tag == TAG_IT || is_each_one(c, index))
        return true;
    return c->at[index].tag == TAG_THE
           && (b->r->words.at[c->at[index].last].after >= AFTER_COMMA || follows_it(b, index + 1)
               || ends_with_particle(b, index + 1));
}

bool has_it_inside(const struct builder *b, const struct chunk *c)
{
    for (size_t i = c->first + 1; i < c->last; i++) {
        const struct entry *e = pack_find(b->k, b->r->words.at[i].key, NULL);
        if (entry_as(e, TAG_IT) || entry_as(e, TAG_THE))
            return true;
    }
    return false;
}

size_t object_of(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    size_t i = index + 1;
    while (i < c->count
           && (c->at[i].tag == TAG_AND || c->at[i].tag == TAG_MANNER
               || ((c->at[i].tag == TAG_ACTION || c->at[i].tag == TAG_DONE)
                   && chunk_marks(&c->at[i]) & (MARK_OF(cuts) | MARK_OF(takes)))))
        i++;
    return i < c->count && is_it(b, i) ? i : 0;
}
