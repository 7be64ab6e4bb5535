/* build/broken.c: an amount and its food with an aside between them: "a pound of, excuse me,
 * mince".
 * SPDX-License-Identifier: MIT */
#include "build/line.h"

#include "build/wording.h"
#include "match/capture.h"

/* Words of such an aside at most. */
#define ASIDE_WORDS 8

/* Of these is what an amount is of. */
static const bool THINGS[TAG_CODES] = {
    [TAG_IT] = true,      [TAG_THE] = true,   [TAG_EXTRACT] = true,
    [TAG_COUNTER] = true, [TAG_PART] = true,  [TAG_DISH] = true,
    [TAG_VESSEL] = true,  [TAG_EATER] = true, [TAG_REST] = true};

/* Whether what stands behind "of" is what the amount is of, or why it is said at all. */
static bool names_thing(const struct builder *b, size_t i)
{
    return THINGS[chunk_tag(&b->chunks, i)]
           || (i < b->chunks.count && is_step_word(b, &b->chunks.at[i], "reason"));
}

/* "A tablespoon of, because tinned tomatoes are sharp": what was taken for a food is none. */
static bool begins_reason(const struct builder *b, const struct chunk *c)
{
    if (!c->match || span_is_empty(match_slot(c->match, SLOT_food)))
        return false;
    size_t first = match_slot(c->match, SLOT_food).first;
    return step_words_list(b->k, "reason", b->r->words.at[first].key);
}

void keep_broken(struct builder *b, size_t index, const struct said_amount *said)
{
    const struct chunk *c = &b->chunks.at[index];
    if (begins_reason(b, c))
        return;
    bool of = chunk_tag(&b->chunks, index + 1) == TAG_OF
              || b->r->words.at[c->first].tag == TAG_OF; /* "a cup of, where is it, flour" */
    if (!said->amount.known || !said->amount.unit.length || (of && names_thing(b, index + 2)))
        return;
    b->broken = *said;
    b->broken_at = c->last;
    b->broken_of = of || c->tag == TAG_LINE;
}

void take_broken(struct builder *b, size_t index, struct said_amount *said)
{
    const struct chunk *c = &b->chunks.at[index];
    bool of = index && b->chunks.at[index - 1].tag == TAG_OF;
    bool near = b->broken.amount.known && c->first > b->broken_at
                && c->first - b->broken_at <= ASIDE_WORDS + 1;
    bool takes = near && !said->amount.known && !said->vague && !said->more && of != b->broken_of
                 && b->r->words.at[c->first].tag != TAG_THE;
    if (said->amount.known || takes || !near)
        b->broken.amount.known = takes && b->broken.amount.known;
    if (!takes)
        return;
    *said = b->broken;
    b->broken.amount.known = false;
}
