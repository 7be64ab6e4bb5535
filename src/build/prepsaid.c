/* build/prepsaid.c: how a food that was spoken of is or comes, with no verb that does it: "it needs
 * to be cold", "you want those in rounds", "and I only want the zest".
 * SPDX-License-Identifier: MIT */
#include "build/prep.h"

#include "base/arena.h"
#include "build/wording.h"

/* "It's been out since breakfast so it's nice and soft": a state that has a participle of its own.
 */
static struct text state_of_it(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    const struct chunk *k = &c->at[index];
    if (!(chunk_marks(k) & MARK_OF(prep)) || k->scope & (SCOPE_NOT_DONE | SCOPE_UNTIL)
        || text_equal(entry_value(k->entry), entry_words(k->entry)))
        return TEXT_EMPTY;
    size_t i = index;
    while (i > 0
           && (c->at[i - 1].tag == TAG_MANNER || c->at[i - 1].tag == TAG_FULLNESS
               || c->at[i - 1].tag == TAG_AND || c->at[i - 1].tag == TAG_OTHER
               || c->at[i - 1].tag == TAG_STATE))
        i--;
    return i > 0 && c->at[i - 1].tag == TAG_THERE ? entry_value(k->entry) : TEXT_EMPTY;
}

/* "It needs to be cold", "that should be at room temperature"; what gets soft in the pot is done.
 */
static struct text state_wanted(const struct builder *b, const struct ingredient *line,
                                size_t index)
{
    const struct chunks *c = &b->chunks;
    const struct chunk *k = &c->at[index];
    bool prep = chunk_marks(k) & MARK_OF(prep) && !(k->scope & (SCOPE_NOT_DONE | SCOPE_UNTIL));
    bool same = text_equal(entry_value(k->entry), entry_words(k->entry));
    prep &= same || (line->entry && line->entry->marks & (MARK_OF(fat) | MARK_OF(dairy)));
    size_t i = index;
    while (i > 0 && (c->at[i - 1].tag == TAG_MANNER || c->at[i - 1].tag == TAG_AT))
        i--;
    if (!prep || !i || c->at[i - 1].tag != TAG_BE)
        return TEXT_EMPTY;
    size_t will = --i;
    while (i > 0
           && (c->at[i - 1].tag == TAG_WILL || c->at[i - 1].tag == TAG_TO
               || c->at[i - 1].tag == TAG_HAVE))
        i--;
    bool it = i > 0
              && (c->at[i - 1].tag == TAG_IT || c->at[i - 1].tag == TAG_THE
                  || c->at[i - 1].tag == TAG_THERE);
    return i < will && it ? entry_value(k->entry) : TEXT_EMPTY;
}

/* "I want the juice and the zest of it": the part that is got from a fruit said before. */
static struct text part_of_it(const struct builder *b, const struct ingredient *line, size_t index)
{
    const struct chunk *c = &b->chunks.at[index];
    bool more = span_has_tag(b->r, line->words, TAG_EXTRACT); /* "the zest of a lime, the juice" */
    return !c->match && c->entry && has_juice(b, line) && !more && !(c->scope & SCOPE_NOT_DONE)
               ? entry_value(c->entry)
               : TEXT_EMPTY;
}

/* "You want those in rounds", "they're in quarters" */
static struct text pieces_of_it(struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    bool it = index > 0 && (c->at[index - 1].tag == TAG_IT || c->at[index - 1].tag == TAG_THE);
    bool wanted = it && index > 1
                  && (c->at[index - 2].tag == TAG_WILL || c->at[index - 2].tag == TAG_HAVE
                      || (c->at[index - 2].tag == TAG_ACTION
                          && chunk_marks(&c->at[index - 2]) & MARK_OF(light)));
    bool are = index > 1 && c->at[index - 1].tag == TAG_BE && c->at[index - 2].tag == TAG_IT;
    if (!wanted && !are)
        return TEXT_EMPTY;
    struct text pieces = pieces_at(b, index).prep;
    size_t end = pieces.length ? 0 : pieces_end(b, index);
    bool shape = end && c->at[end].tag == TAG_OTHER && !c->at[end].entry; /* "in rounds" */
    return shape ? arena_format(b->r->arena, "%.*s %.*s", TEXT(step_word(b->k, "cut")),
                                TEXT(printed_prep(b, c->at[index].first, c->at[end].last)))
                 : pieces;
}

struct text said_of_it(struct builder *b, const struct ingredient *line, size_t index)
{
    unsigned char tag = b->chunks.at[index].tag;
    if (tag == TAG_EXTRACT)
        return part_of_it(b, line, index);
    if (tag == TAG_INTO)
        return pieces_of_it(b, index);
    struct text state = state_of_it(b, index);
    return state.length ? state : state_wanted(b, line, index);
}
