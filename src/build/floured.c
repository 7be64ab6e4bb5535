/* build/floured.c
 * SPDX-License-Identifier: MIT */
#include "build/floured.h"

#include "build/implied.h"
#include "build/stepwords.h"
#include "match/capture.h"

/* "Flour on your board", "a bit of flour onto the bench": so many chunks to the board at most. */
#define BOARD_CHUNKS 3

static bool is_vague(const struct builder *b, const struct chunk *c)
{
    bool vague = c->match->rule->kind == RULE_mention;
    for (size_t n = c->first; n <= c->last && !vague; n++)
        vague = b->r->words.at[n].tag == TAG_VAGUE;
    return vague;
}

/* "Flour on the board, three cups": how much, behind the board of chunk `i`. */
static bool is_measured(const struct builder *b, size_t i)
{
    const struct chunk *c = i + 1 < b->chunks.count ? &b->chunks.at[i + 1] : NULL;
    return c && c->tag == TAG_AMOUNT && c->match && c->match->rule->kind == RULE_amount;
}

bool is_on_board(const struct builder *b, size_t i)
{
    const struct chunk *c = &b->chunks.at[i];
    const unsigned char next = chunk_tag(&b->chunks, i + 1);
    if (c->tag != TAG_LINE || !c->match || (next != TAG_INTO && next != TAG_BESIDE)
        || b->r->words.at[c->last].after >= AFTER_COMMA || !is_vague(b, c))
        return false;
    const struct entry *food = match_entry(b->r, c->match, SLOT_food);
    for (size_t n = i + 1; food && food->marks & MARK_OF(flour) && n < b->chunks.count; n++) {
        if (is_step_word(b, &b->chunks.at[n], "floured"))
            return !is_measured(b, n);
        if (n == i + BOARD_CHUNKS || b->r->words.at[b->chunks.at[n].last].after >= AFTER_COMMA)
            return false;
    }
    return false;
}

size_t find_floured(const struct builder *b)
{
    for (size_t i = 0; i < b->chunks.count && !b->rundown; i++)
        if (!(b->chunks.at[i].scope & SCOPE_NOT_DONE) && is_on_board(b, i))
            return i;
    return NOWHERE;
}
