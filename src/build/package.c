/* build/package.c: the size of a package, and the weight of a piece.
 * SPDX-License-Identifier: MIT */
#include "build/dangling.h"

#include "build/wording.h"
#include "match/capture.h"

/* What may stand between a package and its size: "a tin of tomatoes, the 400 gram one". */
static bool leads_to_size(unsigned char tag)
{
    return tag == TAG_THE || tag == TAG_ARTICLE || tag == TAG_THERE || tag == TAG_SO
           || tag == TAG_IT || tag == TAG_BE || tag == TAG_HEDGE || tag == TAG_OF;
}

/* "A piece of bacon": of which a shopper asks the weight. */
static bool is_lump(const struct builder *b, const struct ingredient *line)
{
    return line->amount.known && ratio_equal(line->amount.max, RATIO(1))
           && step_words_list(b->k, "lumps", line->amount.unit);
}

bool follows_line(const struct builder *b, size_t index, const struct ingredient *line)
{
    size_t i = index;
    while (i > 0 && leads_to_size(b->chunks.at[i - 1].tag))
        i--;
    return i && line->words.last == b->chunks.at[i - 1].last;
}

bool is_package_of(const struct builder *b, const struct chunk *c, size_t index,
                   const struct ingredient *line, const struct said_amount *said)
{
    if (!follows_line(b, index, line) || line->package.known || !line->amount.unit.length)
        return false;
    bool one = ratio_equal(line->amount.max, RATIO(1)) /* "a block of feta, 200 grams" */
               && !is_lump(b, line);
    return (span_has_tag(b->r, line->words, TAG_CONTAINER)
            || (one && span_has_tag(b->r, line->words, TAG_COUNTER)))
           && span_has_tag(b->r, c->match->words, TAG_UNIT) && said->amount.unit.length > 0;
}

/* Whether the line's unit is a package: a can, a bag. */
static bool is_packed(const struct builder *b, const struct ingredient *line)
{
    const struct text unit = line->amount.known ? line->amount.unit : TEXT_EMPTY;
    return unit.length && entry_as(pack_find(b->k, unit, NULL), TAG_CONTAINER);
}

void give_same_package(const struct builder *b, struct ingredient *line)
{
    if (line->package.known || !is_packed(b, line))
        return;
    for (size_t i = b->dish->ingredients.count; i-- > 0;) {
        const struct ingredient *other = &b->dish->ingredients.at[i];
        if (other->id < line->id && other->package.known
            && text_equal(other->amount.unit, line->amount.unit)) {
            line->package = other->package;
            return;
        }
    }
}

/* "Drained, that's a", "from the shop,", "my one is", "the big can", "in there": what may stand
 * between a package and how much it holds, told by itself. */
static const bool BEFORE_SIZE[TAG_CODES] = {
    [TAG_THE] = true,   [TAG_ARTICLE] = true, [TAG_THERE] = true,    [TAG_SO] = true,
    [TAG_AND] = true,   [TAG_IT] = true,      [TAG_ME] = true,       [TAG_WILL] = true,
    [TAG_BE] = true,    [TAG_ONES] = true,    [TAG_HEDGE] = true,    [TAG_DONE] = true,
    [TAG_OTHER] = true, [TAG_FROM] = true,    [TAG_INTO] = true,     [TAG_PLACE] = true,
    [TAG_SIZE] = true,  [TAG_STATE] = true,   [TAG_FULLNESS] = true, [TAG_CONTAINER] = true,
    [TAG_INSIDE] = true};

/* "A can of milk, the big can, 350 mils": so near it needs no "that's". */
#define SIZE_NEAR_WORDS 6

/* Whether packages are told to hold so much: grams, milliliters, and no spoons. */
static bool may_be_held(const struct builder *b, struct text unit)
{
    const struct entry *e = entry_as(pack_find(b->k, unit, NULL), TAG_UNIT);
    return e && (e->marks & MARK_OF(weighs) || step_words_list(b->k, "holds", unit));
}

bool tells_size_of_package(const struct builder *b, const struct chunk *c,
                           const struct ingredient *line, const struct said_amount *said)
{
    const struct text unit = said->package.known ? said->package.unit : said->amount.unit;
    const size_t last = told_end(b, line);
    if (line->package.known || !is_packed(b, line) || c->first <= last
        || c->first - last > SIZE_WORDS || !may_be_held(b, unit))
        return false;
    bool is = c->first - last <= SIZE_NEAR_WORDS;
    for (size_t i = last + 1; i < c->first; i++) {
        const struct word *w = &b->r->words.at[i];
        if (!BEFORE_SIZE[w->tag])
            return false;
        is |= w->tag == TAG_THERE || w->tag == TAG_BE;
    }
    size_t index = (size_t) (c - b->chunks.at);
    return is || chunk_tag(&b->chunks, index + 1) == TAG_EACH;
}

void take_size(struct builder *b, const struct chunk *c, size_t index, struct said_amount *said)
{
    struct ingredient *line = last_line(b);
    const struct span second = match_slot(c->match, SLOT_amount2);
    const struct match *own =
        span_is_empty(second) ? NULL : chunk_match(b->r, b->sentence, second, RULE_amount);
    const bool the = index && chunk_tag(&b->chunks, index - 1) == TAG_THE && !b->r->punctuated;
    if (!line || line->package.known || !said->amount.known || !is_packed(b, line)
        || !may_be_held(b, said->amount.unit) || (!own && !the) || !follows_line(b, index, line))
        return;
    line->package = said->amount;
    *said = (struct said_amount){0};
    if (own)
        read_amount(b->r, b->sentence, own, said);
}

bool is_size_of_package(const struct builder *b, const struct chunk *c, size_t index,
                        const struct ingredient *line, const struct said_amount *said)
{
    const struct text unit = said->package.known ? said->package.unit : said->amount.unit;
    size_t i = index;
    while (i > 0 && b->chunks.at[i - 1].tag == TAG_HEDGE)
        i--;
    return i && b->chunks.at[i - 1].tag == TAG_THE && !line->package.known && is_packed(b, line)
           && entry_as(pack_find(b->k, unit, NULL), TAG_UNIT) && c->first > line->words.last
           && c->first - line->words.last <= SIZE_WORDS;
}

void give_package(struct builder *b, struct ingredient *line, size_t index,
                  const struct said_amount *said)
{
    line->package = said->package.known ? said->package : said->amount;
    unsigned char next = chunk_tag(&b->chunks, index + 1); /* "the 15 ounce ones, drained" */
    bool ones = next == TAG_IT
                || (next == TAG_NUMBER
                    && b->r->words.at[b->chunks.at[index + 1].last].after == AFTER_COMMA);
    read_prep_after(b, line, ones ? index + 1 : index);
}

/* A unit that the cook should make exact. */
static bool is_rough(const struct builder *b, struct text unit)
{
    const struct entry *e = entry_as(pack_find(b->k, unit, NULL), TAG_UNIT);
    return e && e->marks & MARK_OF(vague);
}

bool weighs_one(const struct builder *b, const struct chunk *c, size_t index,
                const struct ingredient *line, const struct said_amount *said)
{
    const struct entry *unit = match_entry(b->r, c->match, SLOT_unit);
    size_t i = index;
    while (i > 0
           && (leads_to_size(b->chunks.at[i - 1].tag) || b->chunks.at[i - 1].tag == TAG_OTHER))
        i--;
    bool one = text_is(line->rule, "line-one") /* a number that was said is meant */
               || is_lump(b, line);
    bool rough = is_lump(b, line) && is_rough(b, line->amount.unit) && unit
                 && !(unit->marks & MARK_OF(vague)); /* "a handful of oats, about half a cup" */
    return one && i && line->words.last == b->chunks.at[i - 1].last && said->amount.known && unit
           && (rough || unit->marks & MARK_OF(weighs));
}
