/* build/prepaside.c: what may stand between a food and what was done to it.
 * SPDX-License-Identifier: MIT */
#include "build/prep.h"

#include "build/wording.h"
#include "match/subject.h"

/* Chunks that an aside between a food and its participle has at most. */
#define ASIDE_CHUNKS 8

static bool describes(unsigned char tag)
{
    return tag == TAG_STATE || tag == TAG_SIZE || tag == TAG_FULLNESS || tag == TAG_MANNER
           || tag == TAG_HEDGE;
}

/* "a sour one", "a big one" */
static size_t one_like_that(const struct builder *b, size_t i)
{
    if (chunk_tag(&b->chunks, i) != TAG_ARTICLE || !describes(chunk_tag(&b->chunks, i + 1)))
        return 0;
    while (describes(chunk_tag(&b->chunks, i + 1)))
        i++;
    return chunk_tag(&b->chunks, i + 1) == TAG_IT ? i + 1 : 0;
}

/* "out of the can", "from the freezer", "from the butcher, cut in chunks" */
static size_t from_a_place(const struct builder *b, size_t i)
{
    if (chunk_tag(&b->chunks, i) != TAG_FROM)
        return 0;
    i += chunk_tag(&b->chunks, i + 1) == TAG_THE || chunk_tag(&b->chunks, i + 1) == TAG_ARTICLE ? 2
                                                                                                : 1;
    unsigned char tag = chunk_tag(&b->chunks, i);
    bool can =
        tag == TAG_WILL && i < b->chunks.count
        && entry_as(pack_find(b->k, b->r->words.at[b->chunks.at[i].last].key, NULL), TAG_CONTAINER);
    if (can || tag == TAG_CONTAINER || tag == TAG_PLACE || tag == TAG_VESSEL)
        return i;
    bool ends = i < b->chunks.count && b->r->words.at[b->chunks.at[i].last].after == AFTER_COMMA;
    return tag == TAG_OTHER && ends && chunk_tag(&b->chunks, i + 1) == TAG_DONE ? i : 0;
}

/* "about six ounces each", "so that's two sheets, thawed" */
static size_t so_much_each(const struct builder *b, size_t i)
{
    while (chunk_tag(&b->chunks, i) == TAG_HEDGE || chunk_tag(&b->chunks, i) == TAG_THERE
           || chunk_tag(&b->chunks, i) == TAG_BE
           || (chunk_tag(&b->chunks, i) == TAG_SO && i < b->chunks.count))
        i++;
    if (chunk_tag(&b->chunks, i) != TAG_AMOUNT)
        return 0;
    bool ends = b->r->words.at[b->chunks.at[i].last].after >= AFTER_COMMA;
    if (chunk_tag(&b->chunks, i + 1) == TAG_EACH)
        return i + 1;
    return ends && chunk_tag(&b->chunks, i + 1) == TAG_DONE ? i : 0;
}

/* "Four cloves of garlic in there too, grated." */
static size_t in_there(const struct builder *b, size_t i)
{
    bool there = chunk_tag(&b->chunks, i) == TAG_INTO && chunk_tag(&b->chunks, i + 1) == TAG_OTHER;
    return there && chunk_tag(&b->chunks, i + 2) == TAG_DONE ? i + 1 : 0;
}

/* "each one quartered" */
static size_t each_one(const struct builder *b, size_t i)
{
    return chunk_tag(&b->chunks, i) == TAG_EACH && chunk_tag(&b->chunks, i + 1) == TAG_NUMBER
               ? i + 1
               : 0;
}

/* "stalks and all", "seeds in", "just the white part", "leaves only": what of it is meant, between
 * commas. */
static size_t which_part(const struct builder *b, size_t i)
{
    size_t end = i;
    bool named = false;
    for (;; end++) {
        unsigned char tag = chunk_tag(&b->chunks, end);
        named |= tag == TAG_COUNTER || tag == TAG_EXTRACT || tag == TAG_PART || tag == TAG_OTHER;
        if (end >= b->chunks.count
            || (tag != TAG_COUNTER && tag != TAG_EXTRACT && tag != TAG_PART && tag != TAG_OTHER
                && tag != TAG_AND && tag != TAG_WHOLE && tag != TAG_INTO && tag != TAG_THE
                && tag != TAG_WILL && !describes(tag)))
            return 0;
        if (b->r->words.at[b->chunks.at[end].last].after == AFTER_COMMA)
            return named && end - i < 5 && chunk_tag(&b->chunks, end + 1) == TAG_DONE ? end : 0;
    }
}

/* "Peeled with a spoon and grated", "soaked in hot water and drained": how, behind a participle. */
static size_t done_how(const struct builder *b, size_t i)
{
    if (!i || chunk_tag(&b->chunks, i - 1) != TAG_DONE
        || (chunk_tag(&b->chunks, i) != TAG_WITH && chunk_tag(&b->chunks, i) != TAG_INTO
            && chunk_tag(&b->chunks, i) != TAG_FROM
            && !(chunk_tag(&b->chunks, i) == TAG_OTHER
                 && is_step_word(b, &b->chunks.at[i], "particle")))) /* "slit down the middle" */
        return 0;
    size_t end = i;
    while (end < i + 4
           && (chunk_tag(&b->chunks, end + 1) == TAG_ARTICLE
               || chunk_tag(&b->chunks, end + 1) == TAG_THE
               || describes(chunk_tag(&b->chunks, end + 1))))
        end++;
    unsigned char thing = chunk_tag(&b->chunks, ++end), next = chunk_tag(&b->chunks, end + 1);
    bool tool = thing == TAG_TOOL || thing == TAG_VESSEL || thing == TAG_OTHER || thing == TAG_PLACE
                || thing == TAG_OVEN;
    return tool && (next == TAG_AND || next == TAG_DONE) ? end : 0;
}

/* "leaves picked", "leaves shredded" */
static size_t part_before_done(const struct builder *b, size_t i)
{
    bool part =
        chunk_tag(&b->chunks, i) == TAG_COUNTER && i < b->chunks.count && !b->chunks.at[i].match;
    return part && chunk_tag(&b->chunks, i + 1) == TAG_DONE ? i : 0;
}

/* "a firm kind", "that's the block", "the hard one": which it is, up to the comma. */
static size_t which_kind(const struct builder *b, size_t i)
{
    i += chunk_tag(&b->chunks, i) == TAG_THERE;
    if (chunk_tag(&b->chunks, i) != TAG_ARTICLE && chunk_tag(&b->chunks, i) != TAG_THE)
        return 0;
    size_t end = i;
    while (b->r->words.at[b->chunks.at[end].last].after < AFTER_COMMA
           && (describes(chunk_tag(&b->chunks, end + 1))
               || chunk_tag(&b->chunks, end + 1) == TAG_COUNTER
               || chunk_tag(&b->chunks, end + 1) == TAG_CONTAINER
               || chunk_tag(&b->chunks, end + 1) == TAG_IT
               || (end > i && chunk_tag(&b->chunks, end + 1) == TAG_OTHER)))
        end++;
    return end > i && b->r->words.at[b->chunks.at[end].last].after == AFTER_COMMA ? end : 0;
}

/* "Two cans of beans go in, drained": where the food goes, before the comma. */
static size_t goes_in(const struct builder *b, size_t i)
{
    if (chunk_tag(&b->chunks, i) != TAG_ACTION || !(chunk_marks(&b->chunks.at[i]) & MARK_OF(puts)))
        return 0;
    while (b->r->words.at[b->chunks.at[i].last].after < AFTER_COMMA
           && (chunk_tag(&b->chunks, i + 1) == TAG_INTO || chunk_tag(&b->chunks, i + 1) == TAG_OTHER
               || chunk_tag(&b->chunks, i + 1) == TAG_MANNER))
        i++;
    bool comma = b->r->words.at[b->chunks.at[i].last].after == AFTER_COMMA;
    return comma && chunk_tag(&b->chunks, i + 1) == TAG_DONE ? i : 0;
}

/* "Peeled", "in cubes": what was done begins at chunk `i`. */
static bool is_done_next(const struct builder *b, size_t i)
{
    unsigned char tag = chunk_tag(&b->chunks, i);
    return (tag == TAG_DONE && chunk_marks(&b->chunks.at[i]) & MARK_OF(prep))
           || (tag == TAG_INTO && i < b->chunks.count && pieces_end(b, i));
}

/* ", my uncle grows them, peeled": whatever is said between two commas, as long as it names no
 * other food and tells to do nothing. */
static size_t between_commas(const struct builder *b, size_t i)
{
    const uint64_t working = MARK_OF(puts) | MARK_OF(mixes) | MARK_OF(heats) | MARK_OF(waits)
                             | MARK_OF(cuts) | MARK_OF(finishes) | MARK_OF(prep);
    const struct chunks *c = &b->chunks;
    if (!i || i >= c->count || b->r->words.at[c->at[i - 1].last].after != AFTER_COMMA)
        return 0;
    for (size_t end = i; end < c->count && end < i + ASIDE_CHUNKS; end++) {
        const struct chunk *k = &c->at[end];
        bool other = k->match || k->tag == TAG_FOOD || k->tag == TAG_IF || k->tag == TAG_DONE
                     || k->tag == TAG_SORRY || is_no_by_itself(b->r, k->last);
        if (other || (k->tag == TAG_ACTION && chunk_marks(k) & working))
            return 0;
        unsigned char after = b->r->words.at[k->last].after;
        if (after >= AFTER_COMMA)
            return after == AFTER_COMMA && is_done_next(b, end + 1) ? end : 0;
    }
    return 0;
}

size_t aside_end(const struct builder *b, size_t i)
{
    static size_t (*const ASIDES[])(const struct builder *b, size_t i) = {
        one_like_that, which_kind,   which_part, done_how, part_before_done, goes_in,
        from_a_place,  so_much_each, each_one,   in_there, between_commas};
    size_t end = 0;
    for (size_t n = 0; n < sizeof ASIDES / sizeof *ASIDES && !end; n++)
        end = ASIDES[n](b, i);
    return end;
}

/* "... that I've just chopped", "which I diced up": who did it, before the participle at once; in
 * "and I've chopped the celery" another food was chopped. */
bool leads_to_done(const struct builder *b, size_t i)
{
    const struct chunks *c = &b->chunks;
    unsigned char tag = c->at[i].tag;
    if (tag != TAG_HAVE && tag != TAG_ME && tag != TAG_WILL && tag != TAG_RETURN)
        return false;
    while (i < c->count
           && (c->at[i].tag == TAG_HAVE || c->at[i].tag == TAG_ME || c->at[i].tag == TAG_WILL
               || c->at[i].tag == TAG_RETURN || c->at[i].tag == TAG_OTHER
               || c->at[i].tag == TAG_MANNER))
        i++;
    if (i >= c->count || c->at[i].tag != TAG_DONE || !(chunk_marks(&c->at[i]) & MARK_OF(prep)))
        return false;
    return i + 1 >= c->count || c->at[i + 1].tag != TAG_LINE
           || b->r->words.at[c->at[i].last].after >= AFTER_COMMA;
}
