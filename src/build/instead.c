/* build/instead.c: a food that takes the place of the one before, which was not meant.
 * SPDX-License-Identifier: MIT */
#include "build/line.h"

#include "match/capture.h"

/* "A cup of sugar, not sugar, flour": what was denied is the line before. */
static bool is_denied(const struct builder *b, const struct chunk *c, size_t index,
                      const struct ingredient *line)
{
    const struct chunk *denied = c - 1;
    const struct entry *food = index > 2 ? chunk_food(b->r, denied) : NULL;
    return food && denied->scope & SCOPE_NEGATED && b->chunks.at[index - 2].tag == TAG_NOT
           && line->words.last == b->chunks.at[index - 3].last
           && text_equal(entry_value(food), line->kind);
}

bool replaces_food(const struct builder *b, const struct chunk *c, size_t index,
                   struct ingredient *line)
{
    if (!index || !line)
        return false;
    const struct chunk *next = c + 1, *before = c - 1;
    bool last = before->tag == TAG_LINE && line->words.last == before->last;
    if (last && index + 1 < b->chunks.count && next->tag == TAG_SORRY
        && b->r->words.at[line->words.last].after == AFTER_COMMA)
        return index + 2 == b->chunks.count || b->r->words.at[next->last].after >= AFTER_COMMA;
    bool actual =
        b->r->words.at[c->first - 1].filler && b->r->words.at[c->first - 1].tag == TAG_SORRY;
    if (last && actual) /* "one red pepper, actually one green pepper" */
        return true;
    if (b->r->words.at[c->first].tag == TAG_THE && span_is_empty(match_slot(c->match, SLOT_amount)))
        return false; /* "no, the sausage has so much fat" */
    const bool taken_back =
        b->r->words.at[c->first - 1].tag == TAG_SORRY || is_no_by_itself(b->r, c->first - 1);
    if (index == 1 && taken_back && before->first == line->words.last + 1)
        return true; /* "a cup of white sugar. No, brown sugar" */
    if (index < 2 || b->chunks.at[index - 2].tag != TAG_LINE
        || line->words.last != b->chunks.at[index - 2].last)
        return is_denied(b, c, index, line);
    return taken_back;
}

bool corrects_denied(struct builder *b, size_t index)
{
    const struct chunk *c = &b->chunks.at[index];
    struct ingredient *line = last_line(b);
    const struct entry *food = match_entry(b->r, c->match, SLOT_food);
    struct said_amount said;
    if (index < 2 || !(c->scope & SCOPE_NEGATED) || !line || !food || !line->entry
        || b->chunks.at[index - 1].tag != TAG_NOT
        || line->words.last != b->chunks.at[index - 2].last)
        return false;
    line_amount(b->r, b->sentence, c->match, &said);
    bool same = text_equal(entry_value(food), line->kind);
    if (!said.amount.known || (!same && (b->r->punctuated || !line->amount.known)))
        return false;
    if (!same) {
        struct span words = match_slot(c->match, SLOT_food);
        name_line(line, words, food, entry_shown(food));
    }
    set_said(line, &said);
    line->words.last = c->last;
    return true;
}
