/* build/preppiece.c: the pieces that a food is cut into, behind a verb or the food.
 * SPDX-License-Identifier: MIT */
#include "build/prep.h"

#include "base/arena.h"
#include "build/wording.h"

bool leads_to_pieces(const struct builder *b, const struct chunk *c)
{
    if (c->tag == TAG_INTO)
        return true;
    return c->first < c->last
           && entry_as(pack_find(b->k, b->r->words.at[c->last].key, NULL), TAG_INTO);
}

/* "Cut it up into", "cut it in": the chunk behind `index` that leads to the pieces; 0 for none. */
static size_t into_after(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    size_t i = index + 1;
    while (i < c->count && i < index + 3 && c->at[i].tag == TAG_OTHER && !c->at[i].entry)
        i++; /* particles: "down", "up" */
    bool near = i < c->count && b->r->words.at[c->at[i - 1].last].after < AFTER_COMMA;
    return near && c->at[i].tag == TAG_INTO ? i : 0;
}

bool is_counter(const struct builder *b, size_t i)
{
    const struct chunk *c = &b->chunks.at[i];
    return c->tag == TAG_COUNTER
           || (c->tag == TAG_AMOUNT && b->r->words.at[c->last].tag == TAG_COUNTER);
}

/* Whether pieces are named by the chunk itself: "into half moons" are no halves. */
static bool names_pieces(const struct builder *b, size_t i)
{
    const struct chunks *c = &b->chunks;
    unsigned char tag = c->at[i].tag, next = chunk_tag(c, i + 1);
    if (tag == TAG_FRACTION)
        return next != TAG_OTHER && next != TAG_COUNTER;
    if (tag == TAG_UNIT) /* "in big lumps" */
        return !c->at[i].match && chunk_marks(&c->at[i]) & MARK_OF(plural);
    return is_counter(b, i) || tag == TAG_DISH || tag == TAG_OTHER;
}

/* "Into like half inch cubes", "in, what, half inch cubes": what makes the pieces only nearly so is
 * not printed. */
static size_t past_like(const struct builder *b, size_t i)
{
    const struct chunks *c = &b->chunks;
    size_t next = i < c->count && c->at[i].tag == TAG_INTO ? i + 1 : i;
    size_t past = next;
    while (past < c->count
           && (c->at[past].tag == TAG_LIKE || c->at[past].tag == TAG_HEDGE
               || (c->at[past].tag == TAG_OTHER
                   && (chunk_marks(&c->at[past]) & MARK_OF(asks)
                       || is_step_word(b, &c->at[past], "compares")))))
        past++;
    return past > next ? past : i;
}

/* "Cut them up like inch pieces": the chunk behind the particle that says how long the pieces are.
 */
static size_t like_after(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    size_t i = index + 1;
    while (i < index + 4
           && (chunk_tag(c, i) == TAG_OTHER || chunk_tag(c, i) == TAG_LIKE
               || chunk_tag(c, i) == TAG_HEDGE))
        i++;
    unsigned char tag = chunk_tag(c, i);
    bool long_pieces = i > index + 1 && (tag == TAG_LENGTH || tag == TAG_MEASURE)
                       && i + 1 < c->count && c->at[i + 1].tag == TAG_COUNTER;
    return long_pieces ? i : 0;
}

size_t pieces_begin(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    bool half_inch = index + 1 < c->count && c->at[index + 1].tag == TAG_LENGTH;
    if (leads_to_pieces(b, &c->at[index]) || half_inch)
        return past_like(b, index + 1); /* "cut in half inch cubes" */
    size_t into = into_after(b, index);
    return into ? past_like(b, into) : like_after(b, index);
}

size_t pieces_end(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    size_t i = pieces_begin(b, index), most = i + 6;
    if (!i)
        return 0;
    if (!leads_to_pieces(b, &c->at[index]) && c->at[i].tag == TAG_INTO)
        i++;
    for (; i < c->count && i < most; i++) {
        unsigned char tag = c->at[i].tag;
        if (names_pieces(b, i))
            return i;
        if (tag != TAG_MEASURE && tag != TAG_LENGTH && tag != TAG_SIZE && tag != TAG_STATE
            && tag != TAG_ARTICLE && tag != TAG_MANNER && tag != TAG_NUMBER && tag != TAG_FULLNESS
            && tag != TAG_FRACTION && tag != TAG_LIKE && tag != TAG_HEDGE)
            return 0;
    }
    return 0;
}

/* Whether the chunk only says how big or thick the pieces are, in words. */
static bool tells_size(const struct chunk *c)
{
    return c->tag == TAG_SIZE || c->tag == TAG_STATE || c->tag == TAG_FULLNESS
           || c->tag == TAG_MANNER || c->tag == TAG_FRACTION;
}

struct text pieces_word(struct builder *b, size_t begin, size_t end)
{
    const struct chunk *c = b->chunks.at;
    bool several = c[end].first < c[end].last; /* "half moons" */
    struct text pieces =
        several ? printed_prep(b, c[end].first, c[end].last) : b->r->words.at[c[end].last].key;
    if (c[end].match)
        return TEXT_EMPTY; /* "8 wedges" */
    while (begin < end
           && (c[begin].tag == TAG_ARTICLE || c[begin].tag == TAG_INTO
               || (c[begin].tag == TAG_MANNER && begin + 1 < end))) /* "in very small cubes" */
        begin++;
    for (size_t i = begin; i < end; i++)
        if (!tells_size(&c[i]) || !c[i].entry)
            return TEXT_EMPTY;
    if (begin + 1 < end)
        return TEXT_EMPTY;
    if (begin == end)
        return step_text(b->k, "pieces", pieces);
    bool as_said = c[begin].tag == TAG_FRACTION || c[begin].tag == TAG_FULLNESS;
    struct text how = as_said ? entry_words(c[begin].entry) : entry_value(c[begin].entry);
    return step_text(b->k, "pieces",
                     arena_format(b->r->arena, "%.*s %.*s", TEXT(how), TEXT(pieces)));
}
