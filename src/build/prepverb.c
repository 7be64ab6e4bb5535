/* build/prepverb.c: what a verb says was done to a food: "peel six kiwis", "I've diced those".
 * SPDX-License-Identifier: MIT */
#include "build/prep.h"

#include "base/arena.h"
#include "build/stepwords.h"

bool prepares(const struct chunk *c, uint64_t sorts)
{
    uint64_t marks = chunk_marks(c);
    return !c->match && marks & MARK_OF(prep) && marks & sorts && !(c->scope & SCOPE_NOT_DONE);
}

/* "I leave the skin on and slice them": what is done to a part of it is nothing done to all. */
static bool is_of_a_part(const struct builder *b, size_t verb)
{
    const struct table *t = pack_table(b->k, "removed-parts");
    for (size_t i = verb + 1; t && i < b->r->words.count && i <= verb + 2; i++) {
        size_t row = table_find(t, b->r->words.at[i].key);
        if (row < t->rows && table_cell(t, row, table_column(t, "done")).length)
            return true;
    }
    return false;
}

/* After so many words something was done with a food, or nothing will be. */
#define WORKED_WORDS 400

bool is_worked_on(const struct builder *b, const struct ingredient *line, size_t before)
{
    const uint64_t working =
        MARK_OF(puts) | MARK_OF(mixes) | MARK_OF(heats) | MARK_OF(waits) | MARK_OF(finishes);
    size_t said = b->told_amount ? told_end(b, line) : line->words.last;
    if (said + WORKED_WORDS < before)
        return true;
    for (size_t i = said + 1; i < before; i++) {
        const struct word *w = &b->r->words.at[i];
        if (w->tag == TAG_ACTION && w->entry && w->entry->marks & working
            && !(w->scope & SCOPE_NOT_DONE) && !is_of_a_part(b, i))
            return true;
    }
    return false;
}

bool is_and_cook(const struct builder *b, const struct chunk *c, enum tag cook)
{
    const struct entry *last = b->r->words.at[c->last].alone;
    return c->tag == TAG_WILL && c->first < c->last && last && last->tag == cook;
}

unsigned char teller_of(const struct builder *b, size_t i)
{
    const struct chunks *c = &b->chunks;
    while (i > 0
           && (c->at[i - 1].tag == TAG_WILL || c->at[i - 1].tag == TAG_OTHER
               || c->at[i - 1].tag == TAG_MANNER))
        if (is_and_cook(b, &c->at[--i], TAG_ME))
            return TAG_ME;
    bool listed = i > 2
                  && (c->at[i - 1].tag == TAG_LINE || c->at[i - 1].tag == TAG_AND
                      || c->at[i - 1].tag == TAG_IT);
    while (listed && i-- > 1) /* "I have boiled six potatoes, peeled them and sliced them" */
        if (c->at[i].tag == TAG_DONE && c->at[i - 1].tag == TAG_HAVE)
            return TAG_HAVE;
        else if (c->at[i].tag == TAG_ACTION)
            return TAG_SO;
    return i ? c->at[i - 1].tag : (unsigned char) TAG_SO;
}

const struct entry *prepared_as(const struct builder *b, size_t i, uint64_t sorts)
{
    const struct chunk *c = &b->chunks.at[i];
    if (c->tag == TAG_ACTION)
        return prepares(c, sorts) ? participle(b->k, c->entry) : NULL;
    unsigned char who = c->tag == TAG_DONE ? teller_of(b, i) : (unsigned char) TAG_SO;
    uint64_t told = who == TAG_HAVE ? MARK_OF(prep)
                    : who == TAG_ME ? MARK_OF(cuts) | MARK_OF(takes) | MARK_OF(waits)
                                    : 0;
    return told && prepares(c, told) ? c->entry : NULL;
}

/* "cut into chunks": the participle and the pieces named behind chunk `food`. */
static struct text with_pieces(struct builder *b, const struct entry *done, size_t food, size_t end)
{
    size_t begin = b->chunks.at[pieces_begin(b, food)].first;
    return arena_format(b->r->arena, "%.*s %.*s", TEXT(plain_participle(b, done)),
                        TEXT(printed_prep(b, begin, b->chunks.at[end].last)));
}

/* "Break it up into florets": pieces make a preparation of a verb that is none by itself. */
static struct text broken_into(struct builder *b, size_t verb, size_t food)
{
    const struct chunk *c = &b->chunks.at[verb];
    size_t end = pieces_end(b, food);
    const uint64_t puts = chunk_marks(c) & (MARK_OF(puts) | MARK_OF(prep)); /* "put it in stems" */
    bool pieces = end && is_counter(b, end) && puts != MARK_OF(puts)
                  && b->r->words.at[b->chunks.at[end].last].entry->marks & MARK_OF(plural);
    const struct entry *done = pieces && c->tag == TAG_ACTION && !(c->scope & SCOPE_NOT_DONE)
                                   ? participle(b->k, c->entry)
                                   : NULL;
    return done ? with_pieces(b, done, food, end) : TEXT_EMPTY;
}

/* "Cut it up small", "cut it really thin": how, in the chunks from `next` on. */
static struct text cut_so(struct builder *b, const struct entry *done, size_t next)
{
    while (next < b->chunks.count && b->chunks.at[next].tag == TAG_OTHER
           && is_step_word(b, &b->chunks.at[next], "particle"))
        next++;
    const struct chunk *last = next < b->chunks.count ? &b->chunks.at[next] : NULL;
    if (last && last->tag == TAG_MANNER && next + 1 < b->chunks.count
        && b->chunks.at[next + 1].tag == TAG_STATE)
        last++;
    struct text thin = last && last->tag == TAG_STATE && last->entry
                           ? step_text(b->k, "pieces", entry_value(last->entry))
                           : TEXT_EMPTY;
    if (thin.length)
        return thin;
    bool how = next < b->chunks.count
               && (b->chunks.at[next].tag == TAG_MANNER || b->chunks.at[next].tag == TAG_SIZE
                   || b->chunks.at[next].tag == TAG_FULLNESS);
    if (how) /* "cut it small" */
        return arena_format(
            b->r->arena, "%.*s %.*s", TEXT(plain_participle(b, done)),
            TEXT(printed_prep(b, b->chunks.at[next].first, b->chunks.at[next].last)));
    return done->words_count > 1 ? entry_shown(done) : TEXT_EMPTY; /* "cut in half" */
}

struct text prepared(struct builder *b, size_t verb, size_t food, uint64_t sorts)
{
    const struct entry *done = prepared_as(b, verb, sorts);
    if (!done)
        return broken_into(b, verb, food);
    size_t end = pieces_end(b, food);
    struct text word = end && done->marks & MARK_OF(pieces)
                           ? pieces_word(b, pieces_begin(b, food), end)
                           : TEXT_EMPTY;
    if (end)
        return word.length ? word : with_pieces(b, done, food, end);
    return done->marks & MARK_OF(pieces) ? cut_so(b, done, food + 1) : plain_participle(b, done);
}

/* Whether chunk `i` is a verb that prepares the food at chunk `food`, or stands between such verbs.
 */
static bool is_in_chain(struct builder *b, size_t i, size_t food, uint64_t sorts)
{
    unsigned char tag = b->chunks.at[i].tag;
    return tag == TAG_AND || tag == TAG_MANNER || prepared(b, i, food, sorts).length > 0;
}

/* "Two cucumbers wash and slice | half a cup of vinegar": where captions have no stops, verbs of
 * the food before, with the caption's end behind them. */
static bool is_behind_another(const struct builder *b, size_t first, size_t food)
{
    const struct chunk *c = b->chunks.at;
    return !b->r->punctuated && first && c[first - 1].tag == TAG_LINE
           && b->r->words.at[c[food].first].cue != b->r->words.at[c[food - 1].last].cue;
}

/* "Peel six kiwis", "slice up half a cucumber", "chop the onions" while nothing was done with them
 * yet. */
void read_prep_before(struct builder *b, struct ingredient *line, size_t index)
{
    bool fresh = line->id >= b->sentence->first;
    const uint64_t sorts = fresh ? MARK_OF(cuts) | MARK_OF(takes) : MARK_OF(cuts);
    if (is_worked_on(b, line, b->sentence->first))
        return;
    const size_t end = fresh ? verbs_end(b, line, index) : index;
    if (end == index && end && b->chunks.at[end - 1].tag == TAG_AND)
        return; /* "drain and rinse | and two potatoes" */
    size_t first = end;
    while (first > 0 && is_in_chain(b, first - 1, index, sorts))
        first--;
    if (first < end && is_behind_another(b, first, index))
        return;
    for (size_t i = first; i < end; i++)
        if (b->chunks.at[i].tag != TAG_AND && b->chunks.at[i].tag != TAG_MANNER)
            add_line_prep(b, line, prepared(b, i, index, sorts));
    if (!index || first != index) /* a verb was found, or none can be */
        return;
    const struct chunk *verb = &b->chunks.at[index - 1];
    if (fresh)
        add_line_prep(b, line, prepared_first(b, line, verb));
    else if (verb->first - told_end(b, line) <= NEAR_WORDS)
        add_line_prep(b, line, prepared_then(b, line, verb));
}
