/* build/range.c: what is said of an amount behind its food: "an egg or two", "three cloves, maybe
 * four", "a cup of parsley at least".
 * SPDX-License-Identifier: MIT */
#include "build/line.h"

/* Whether the line's words end right before chunk `i`. */
static bool ends_before(const struct builder *b, const struct ingredient *line, size_t i)
{
    return i < b->chunks.count && line->words.last + 1 == b->chunks.at[i].first;
}

bool widens_amount(const struct builder *b, const struct ingredient *line, size_t index)
{
    size_t lead = index;
    while (lead > 0
           && (chunk_tag(&b->chunks, lead - 1) == TAG_OR
               || chunk_tag(&b->chunks, lead - 1) == TAG_HEDGE))
        lead--;
    unsigned char next = chunk_tag(&b->chunks, index + 1);
    bool ends = b->r->words.at[b->chunks.at[index].last].after >= AFTER_COMMA || next == TAG_SO
                || next == TAG_AND || next == TAG_IF || next == TAG_DONE;
    bool said = lead < index || next == TAG_IF; /* "three carrots, four if they're small" */
    return said && ends && ends_before(b, line, lead);
}

void widen_amount(struct ingredient *line, struct ratio high)
{
    if (ratio_compare(high, line->amount.max) > 0)
        line->amount.max = high;
}

void open_amount(struct builder *b, size_t index)
{
    struct ingredient *line = last_line(b);
    if (line && line->amount.known && ends_before(b, line, index)
        && chunk_tag(&b->chunks, index + 1) != TAG_NUMBER
        && chunk_tag(&b->chunks, index + 1) != TAG_AMOUNT)
        line->amount.max = RATIO_UPWARDS;
}
