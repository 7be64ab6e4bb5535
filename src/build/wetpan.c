/* build/wetpan.c: whether what cooks on the stove cooks in liquid.
 * SPDX-License-Identifier: MIT */
#include "build/wetpan.h"

#include "build/context.h"
#include "build/implied.h"
#include "build/instruction.h"
#include "build/stepjoin.h"
#include "build/wording.h"
#include "match/capture.h"

/* A spoonful is soon gone. */
static bool is_liquid(const struct builder *b, const struct ingredient *line)
{
    return step_words_list(b->k, "liquid", text_last_word(line->food))
           && !step_words_list(b->k, "spoonful", line->amount.unit);
}

/* The word of the last instruction that fries; 0 for none. */
static size_t fried_at(const struct builder *b)
{
    for (size_t i = b->dish->steps.count; i-- > 0;)
        for (size_t n = 0; n < b->dish->steps.at[i].actions.count; n++) {
            const struct entry *e = action_entry(b->k, b->dish->steps.at[i].actions.at[n]);
            if (e && e->marks & (MARK_OF(fries) | MARK_OF(deep)))
                return b->dish->steps.at[i].words.first;
        }
    return 0;
}

/* "Four minutes a side", "thirty seconds" are no simmering. */
#define SIMMER_SECONDS 180.0

static bool says_at_least(const struct builder *b, double seconds)
{
    size_t time = find_done(b, TAG_DURATION);
    return time != NOWHERE && b->chunks.at[time].match
           && ratio_double(b->chunks.at[time].match->low) >= seconds;
}

/* Peas, spinach, noodles are done in so many. */
#define BRIEF_SECONDS 300.0

bool is_brief_time(const struct builder *b)
{
    return find_done(b, TAG_DURATION) != NOWHERE && !says_at_least(b, BRIEF_SECONDS + 1);
}

/* Garlic and spices are cooked for so long; "a minute a side" is of frying. */
#define MOMENT_SECONDS 90.0

bool is_moment(const struct builder *b)
{
    return find_done(b, TAG_DURATION) != NOWHERE && find_done(b, TAG_SIDE) == NOWHERE
           && !says_at_least(b, MOMENT_SECONDS + 1);
}

bool is_sided(const struct builder *b, uint64_t heat)
{
    const uint64_t others = MARK_OF(ovens) | MARK_OF(grills) | MARK_OF(boils);
    return find_done(b, TAG_SIDE) != NOWHERE && find_done(b, TAG_DURATION) != NOWHERE
           && !(heat & others);
}

bool is_wetted(const struct builder *b)
{
    size_t since = b->pan ? b->pan_at : 0, fried = fried_at(b);
    if (find_done(b, TAG_SIDE) != NOWHERE || !says_at_least(b, SIMMER_SECONDS))
        return false;
    since = fried > since ? fried : since;
    for (size_t i = b->dish->ingredients.count; i-- > 0;) {
        const struct ingredient *line = &b->dish->ingredients.at[i];
        if (line->id < since)
            break;
        if (line->id < b->sentence->first && is_liquid(b, line))
            return true;
    }
    return false;
}

/* Fat that went in so long ago is another dish's; what takes longer is no frying. */
#define OILED_SECONDS 20.0
#define OILED_TIME 960.0
/* So many foods may have gone in since the fat did. */
#define OILED_FOODS 3

/* Whether a fat went in shortly before, or goes in here, and no liquid since: "two spoons of oil in
 * the big pot, the onions, five minutes". */
static bool has_fat(const struct builder *b)
{
    const size_t count = b->dish->ingredients.count;
    for (size_t i = count; i-- > 0 && count - i <= OILED_FOODS;) {
        const struct ingredient *line = &b->dish->ingredients.at[i];
        if (is_liquid(b, line))
            return false;
        if (line->entry && line->entry->marks & MARK_OF(fat))
            return b->r->words.at[b->sentence->first].start - b->r->words.at[line->id].start
                   < OILED_SECONDS;
    }
    return false;
}

bool is_oiled(const struct builder *b, uint64_t heat)
{
    const uint64_t others = MARK_OF(boils) | MARK_OF(ovens) | MARK_OF(waits) | MARK_OF(grills);
    return !(heat & others) && (b->pan || find_done(b, TAG_HEAT) != NOWHERE) && has_fat(b)
           && !says_at_least(b, OILED_TIME);
}

/* Under a lid nothing fries for long. */
#define LID_SECONDS 300.0

bool is_lidded(const struct builder *b)
{
    const struct dish *d = b->dish;
    const struct step *s = d->steps.count ? &d->steps.at[d->steps.count - 1] : NULL;
    bool covered = s && s->actions.count && step_has(s, step_word(b->k, "covered"));
    return covered && says_at_least(b, LID_SECONDS);
}

bool has_fat_behind(const struct builder *b, size_t verb)
{
    const struct chunk *c = verb == NOWHERE ? NULL : &b->chunks.at[verb];
    if (!c || c->first == c->last
        || !entry_as(pack_find(b->k, b->r->words.at[c->last].key, NULL), TAG_INTO))
        return false;
    size_t n = verb + 1;
    while (chunk_tag(&b->chunks, n) == TAG_THE || chunk_tag(&b->chunks, n) == TAG_STATE)
        n++;
    const struct chunk *line = chunk_tag(&b->chunks, n) == TAG_LINE ? &b->chunks.at[n] : NULL;
    const struct entry *food = chunk_food(b->r, line);
    return food && food->marks & MARK_OF(fat);
}
