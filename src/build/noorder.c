/* build/noorder.c
 * SPDX-License-Identifier: MIT */
#include "build/noorder.h"

#include "build/instruction.h"
#include "build/wording.h"

bool has_reading(const struct builder *b, const struct chunk *c, unsigned char tag)
{
    return entry_as(b->r->words.at[c->last].readings, tag);
}

bool has_object(const struct builder *b, size_t i)
{
    if (i + 1 >= b->chunks.count || b->r->words.at[b->chunks.at[i].last].after >= AFTER_COMMA)
        return false;
    const struct chunk *next = &b->chunks.at[i + 1];
    if (next->tag == TAG_LINE)
        return b->r->words.at[next->first].tag != TAG_FOOD;
    return next->tag == TAG_IT || next->tag == TAG_THE || next->tag == TAG_ARTICLE
           || next->tag == TAG_WHOLE || next->tag == TAG_EACH || next->tag == TAG_REST;
}

bool has_object_inside(const struct builder *b, size_t i)
{
    const struct chunk *c = &b->chunks.at[i];
    for (size_t n = c->first + 1; n <= c->last; n++) {
        const struct entry *e = pack_find(b->k, b->r->words.at[n].key, NULL);
        if (e && (e->tag == TAG_IT || e->tag == TAG_THE))
            return true;
    }
    return false;
}

/* "Cream butter and sugar": a bare food, of what mixes. */
static bool mixes_food(const struct builder *b, size_t i)
{
    const struct chunk *c = &b->chunks.at[i];
    return chunk_marks(c) & MARK_OF(mixes) && chunk_tag(&b->chunks, i + 1) == TAG_LINE
           && b->r->words.at[c->last].after < AFTER_COMMA;
}

bool is_quality(const struct builder *b, size_t i, unsigned char before)
{
    const struct chunk *c = &b->chunks.at[i];
    if (before == TAG_BE || before == TAG_FROM || before == TAG_HEDGE)
        return true;
    bool ordered = before == TAG_WILL && b->chunks.at[i - 1].first < b->chunks.at[i - 1].last;
    bool alone =
        i + 1 == b->chunks.count && (!i || (i == 1 && before == TAG_AND)); /* "And squeeze." */
    bool told = before == TAG_YOU || before == TAG_ME || ordered /* "has to", but not "just" */
                || (alone && b->r->punctuated);
    bool quality = c->first == c->last
                   && (has_reading(b, c, TAG_STATE) || has_reading(b, c, TAG_FOOD)
                       || has_reading(b, c, TAG_OTHER)); /* "skin side up" */
    return quality && !told && !has_object(b, i) && !mixes_food(b, i);
}

bool is_participle(const struct builder *b, size_t i)
{
    unsigned char before = i ? b->chunks.at[i - 1].tag : 0,
                  first = i > 1 ? b->chunks.at[i - 2].tag : 0,
                  next = i + 1 < b->chunks.count ? b->chunks.at[i + 1].tag : 0;
    if (next == TAG_SIDE) /* "cut side up", "skin side down" */
        return true;
    return has_reading(b, &b->chunks.at[i], TAG_DONE) && !has_object(b, i)
           && (before == TAG_LINE || before == TAG_DONE
               || (before == TAG_AND && first == TAG_DONE));
}

bool says_how_long(const struct builder *b)
{
    for (size_t i = 0; i < b->chunks.count; i++) {
        unsigned char tag = b->chunks.at[i].tag;
        if (tag == TAG_DURATION || tag == TAG_UNTIL || tag == TAG_PLACE)
            return true;
    }
    return false;
}

bool is_noun_behind(const struct builder *b, size_t i)
{
    unsigned char how = i > 1 ? b->chunks.at[i - 1].tag : 0,
                  lead = i > 1 ? b->chunks.at[i - 2].tag : 0;
    const uint64_t does = MARK_OF(puts) | MARK_OF(ovens) | MARK_OF(waits); /* "the other goes in" */
    bool any =
        how == TAG_ORDINAL
        || (how == TAG_OTHER && !(chunk_marks(&b->chunks.at[i]) & does)); /* "the next boil" */
    return (how == TAG_STATE || how == TAG_SIZE || any) && (lead == TAG_THE || lead == TAG_ARTICLE)
           && b->r->words.at[b->chunks.at[i - 1].last].after < AFTER_COMMA && !has_object(b, i);
}

bool says_how_it_is(const struct builder *b, size_t i)
{
    if (i + 1 >= b->chunks.count || b->r->words.at[b->chunks.at[i].last].after >= AFTER_COMMA)
        return false;
    const struct chunk *next = &b->chunks.at[i + 1];
    return has_reading(b, next, TAG_STATE) || next->tag == TAG_LIKE || next->tag == TAG_OTHER
           || next->tag == TAG_FULLNESS;
}

/* How far behind the verb what is seen may do something. */
#define SEEN_CHUNKS 6

bool is_perceived(const struct builder *b, size_t i)
{
    for (size_t n = i; n-- > 0 && i - n <= SEEN_CHUNKS;) {
        const struct chunk *c = &b->chunks.at[n];
        if (b->r->words.at[c->last].after >= AFTER_COMMA || c->tag == TAG_AND || c->tag == TAG_SO)
            return false;
        if (n + 1 < i && b->chunks.at[n + 1].tag == TAG_ME)
            continue; /* "you'll see me tear it" */
        if (n + 1 < i && c->tag == TAG_ACTION && chunk_marks(c) & (MARK_OF(light) | MARK_OF(hidden))
            && is_step_word(b, c, "perceives"))
            return true;
    }
    return false;
}

bool is_consequence(const struct builder *b, size_t i)
{
    const struct chunk *at = b->chunks.at;
    if (i < 2)
        return false;
    size_t or = i - 2;
    if (at[or].tag != TAG_OR && i > 2 && (at[or].tag == TAG_IT || at[or].tag == TAG_YOU))
        or = i - 3;
    if (at[or].tag == TAG_OR && at[i - 1].tag == TAG_WILL)
        return true;
    return at[i - 2].tag == TAG_SO && at[i - 1].tag == TAG_IT && at[i].first == at[i].last
           && !says_how_long(b); /* but "so they go in" */
}

/* Seconds before the end in which it is the camera that is turned off. */
#define LEAVE_SECONDS 25.0
#define SHORT_SECONDS 120.0 /* what is no longer has no room for leave taking */

/* Whether the recording ends soon behind the word, and is long enough for a leave taking. */
static bool is_at_the_end(const struct recording *r, size_t word)
{
    double end = r->words.at[r->words.count - 1].end;
    return end >= SHORT_SECONDS && r->words.at[word].start >= end - LEAVE_SECONDS;
}

bool is_camera(const struct builder *b, size_t i)
{
    const struct chunk *c = &b->chunks.at[i];
    struct phrasal split; /* "turn this off" */
    if (!is_at_the_end(b->r, c->first))
        return false;
    const struct entry *e =
        find_phrasal(b, i, &split) ? action_entry(b->k, split.action) : c->entry;
    if (!e || !(e->marks & MARK_OF(changes)))
        return false;
    for (size_t n = 0; n < b->chunks.count; n++) {
        unsigned char tag = b->chunks.at[n].tag;
        if (tag == TAG_LINE || tag == TAG_HEAT || tag == TAG_OVEN || tag == TAG_HEATED
            || tag == TAG_VESSEL || tag == TAG_DURATION)
            return false;
    }
    return true;
}

bool is_cooks_own(const struct builder *b, size_t i)
{
    return i + 1 < b->chunks.count && i && b->chunks.at[i - 1].tag == TAG_ME
           && is_step_word(b, &b->chunks.at[i + 1], "own");
}

/* Without commas a reason is taken to reach so far. */
#define REASON_CHUNKS 5

bool gives_reason(const struct builder *b, size_t i)
{
    for (size_t n = i; n-- > 0 && i - n <= REASON_CHUNKS;) {
        const struct chunk *c = &b->chunks.at[n];
        if (c->tag == TAG_OTHER && is_step_word(b, c, "reason"))
            return true;
        if (b->r->words.at[c->last].after != AFTER_SPACE
            && b->r->words.at[c->last].after != AFTER_HYPHEN)
            return false;
        if (c->tag == TAG_AND || c->tag == TAG_SO)
            return false;
    }
    return false;
}

/* Words between a tool and the verb that takes it up, at most. */
#define TOOL_CHUNKS 8

bool is_with_tool(const struct builder *b, size_t i)
{
    unsigned char object = chunk_tag(&b->chunks, i + 1);
    if (i < 3 || b->chunks.at[i - 1].tag != TAG_TO || b->chunks.at[i - 2].tag != TAG_TOOL
        || (object != TAG_LINE && object != TAG_PART && !has_object(b, i)))
        return false;
    for (size_t n = i - 2; n-- > 0 && i - n <= TOOL_CHUNKS;)
        if (b->chunks.at[n].tag == TAG_ACTION || b->chunks.at[n].tag == TAG_DOING)
            return is_step_word(b, &b->chunks.at[n], "tools");
    return false;
}
