/* build/usedhere.c: whether a food without an amount goes in where it is named.
 * SPDX-License-Identifier: MIT */
#include "build/line.h"

#include "build/noorder.h"
#include "build/wording.h"
#include "match/capture.h"

/* "A knob of butter in each. And sour cream.": the next food is named so soon. */
#define NEXT_SECONDS 9.0
/* "Now, chicken. I have twelve thighs here.": such a food is announced, and its cut comes next. */
#define HEADED \
    (MARK_OF(poultry) | MARK_OF(meat) | MARK_OF(ground) | MARK_OF(fish) | MARK_OF(shellfish))
/* "Then the garlic and the thyme in.": so many chunks at most. */
#define NEXT_CHUNKS 6

/* A food that goes in; "no honey in it" puts none in. */
static bool is_line(const struct chunk *c)
{
    return c->tag == TAG_LINE && !is_left_out(c);
}

/* A food without an amount. */
static bool is_mention(const struct chunk *c)
{
    return is_line(c) && c->match && c->match->rule->kind != RULE_line;
}

/* Whether the chunk next to this one in a list is a food with an amount. */
static bool is_listed(const struct builder *b, size_t index)
{
    size_t before = index, after = index + 1;
    while (before > 0
           && (b->chunks.at[before - 1].tag == TAG_AND || b->chunks.at[before - 1].tag == TAG_DONE
               || b->chunks.at[before - 1].tag == TAG_STATE))
        before--;
    while (after < b->chunks.count
           && (b->chunks.at[after].tag == TAG_AND || is_mention(&b->chunks.at[after])))
        after++; /* "lettuce, pickles and two tablespoons of mayo" */
    bool left = before > 0 && is_line(&b->chunks.at[before - 1]) && last_line(b)
                && !last_line(b)->questioned;
    bool right = after < b->chunks.count && is_line(&b->chunks.at[after])
                 && b->chunks.at[after].match->rule->kind == RULE_line;
    return left || right;
}

/* "Salt and pepper inside and out", "pepper from the mill, on both sides". */
static bool may_follow_seasoning(unsigned char tag)
{
    return tag == TAG_OTHER || tag == TAG_PLACE || tag == TAG_SIDE || tag == TAG_INTO
           || tag == TAG_FROM || tag == TAG_THE || tag == TAG_TOOL || tag == TAG_WHOLE;
}

/* "Salt and pepper, obviously.": a sentence of nothing but seasonings. */
static bool is_seasoning_alone(const struct builder *b)
{
    const uint64_t seasonings = MARK_OF(salt) | MARK_OF(spice);
    size_t foods = 0;
    for (size_t i = 0; i < b->chunks.count; i++) {
        const struct chunk *c = &b->chunks.at[i];
        const struct entry *food = chunk_food(b->r, c);
        if (food && food->marks & seasonings)
            foods++;
        else if (c->tag != TAG_AND && c->tag != TAG_SO && c->tag != TAG_NOT
                 && (foods == 0 || !may_follow_seasoning(c->tag)))
            return false;
    }
    return foods > 0;
}

/* "Onions in.", "then the peas in": a short sentence whose only verb is where they go. */
static bool is_next_in(const struct builder *b)
{
    const struct chunks *c = &b->chunks;
    if (!c->count || c->count > NEXT_CHUNKS || !b->dish->steps.count)
        return false;
    bool in = c->at[c->count - 1].tag == TAG_INTO;
    for (size_t i = 0; i < c->count; i++) {
        unsigned char tag = c->at[i].tag;
        if (tag != TAG_LINE && tag != TAG_AND && tag != TAG_SO && tag != TAG_DONE
            && tag != TAG_STATE && tag != TAG_INTO && tag != TAG_THE && tag != TAG_SIZE)
            return false;
    }
    return in;
}

/* A seasoning without an amount. */
static bool is_bare_seasoning(const struct builder *b, size_t index)
{
    const struct chunk *c = &b->chunks.at[index];
    const struct entry *food = is_mention(c) ? match_entry(b->r, c->match, SLOT_food) : NULL;
    return food && food->marks & (MARK_OF(salt) | MARK_OF(spice));
}

/* "Salt, pepper, and taste it": a seasoning, and the verb behind it or behind those that follow. */
static bool is_tasted_next(const struct builder *b, size_t index)
{
    if (!is_bare_seasoning(b, index))
        return false;
    size_t next = index + 1;
    bool who = false;
    for (; next < b->chunks.count; next++) { /* "salt, you must taste it" */
        const unsigned char tag = b->chunks.at[next].tag;
        who |= tag == TAG_YOU || tag == TAG_ME;
        if (tag != TAG_AND && tag != TAG_YOU && tag != TAG_ME && tag != TAG_WILL
            && !is_bare_seasoning(b, next))
            break;
    }
    return next < b->chunks.count && b->chunks.at[next].tag == TAG_ACTION
           && chunk_marks(&b->chunks.at[next]) & MARK_OF(tastes)
           && (who || chunk_tag(&b->chunks, next + 1) == TAG_IT);
}

/* "It'll want salt", "mine needs pepper": what the dish asks for; "you need salt" is a list. */
static bool is_asked_by_dish(const struct builder *b, size_t index)
{
    const struct chunk *verb = index ? &b->chunks.at[index - 1] : NULL;
    if (!verb || (verb->tag != TAG_ACTION && verb->tag != TAG_HAVE) || !is_bare_seasoning(b, index)
        || verb->scope & SCOPE_NOT_DONE)
        return false;
    if (verb->tag == TAG_ACTION)
        return is_step_word(b, verb, "wants");
    const struct entry *who = b->r->words.at[verb->first].alone;
    return verb->tag == TAG_HAVE && verb->first < verb->last && who && who->tag != TAG_YOU
           && who->tag != TAG_ME && who->tag != TAG_HAVE && who->tag != TAG_WILL;
}

bool is_tasted_for(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    if (is_tasted_next(b, index) || is_asked_by_dish(b, index))
        return true;
    bool listed = index > 1 && c->at[index - 1].tag == TAG_AND && c->at[index - 2].tag == TAG_LINE;
    size_t i = listed ? index - 2 : index;
    if (!i || c->at[i - 1].tag != TAG_FOR)
        return false;
    for (i--; i-- > 0;)
        if (c->at[i].tag == TAG_ACTION)
            return chunk_marks(&c->at[i]) & MARK_OF(tastes);
        else if (c->at[i].tag != TAG_LINE && c->at[i].tag != TAG_IT && c->at[i].tag != TAG_THE
                 && c->at[i].tag != TAG_OTHER && c->at[i].tag != TAG_PART
                 && c->at[i].tag != TAG_DISH)
            return false;
    return false;
}

/* "Then", "and then": nothing but what leads on stands before the food, which then begins the
 * sentence; *`and` where one of it is "and". */
static bool begins_sentence(const struct builder *b, size_t index, bool *and)
{
    *and = false;
    for (size_t i = 0; i < index; i++) {
        if (b->chunks.at[i].tag != TAG_SO && b->chunks.at[i].tag != TAG_AND)
            return false;
        *and |= b->chunks.at[i].tag == TAG_AND;
    }
    return true;
}

/* A verb that prepares what "it" stands for: "and I tear them up". */
static bool prepares_it(const struct builder *b, size_t index)
{
    for (size_t i = index + 1; i + 1 < b->chunks.count; i++) {
        const struct chunk *c = &b->chunks.at[i];
        if (c->tag == TAG_ACTION && chunk_marks(c) & MARK_OF(prep) && !is_left_out(c)
            && b->chunks.at[i + 1].tag == TAG_IT)
            return true;
    }
    return false;
}

/* "And sour cream.", "then pesto.", "Carrots, grated.": the next one of what goes in. */
static bool is_next_food(const struct builder *b, const struct chunk *c, size_t index)
{
    const struct entry *food = match_entry(b->r, c->match, SLOT_food);
    bool and = false, after = b->dish->ingredients.count || b->dish->steps.count;
    if (!food || food->marks & HEADED || !after || !begins_sentence(b, index, &and)
        || span_has_tag(b->r, c->match->words, TAG_THE))
        return false;
    const struct ingredient *last = last_line(b);
    if (index + 1 == b->chunks.count)
        return index
               && (!and || (last && !last->questioned && said_at(b, c->first) - b->last_said < NEXT_SECONDS));
    const struct chunk *next = c + 1;
    return (next->tag == TAG_DONE && chunk_marks(next) & MARK_OF(prep) && !is_left_out(next))
           || prepares_it(b, index);
}

/* What may stand between "in" and the thing. */
static bool leads_to_thing(unsigned char tag)
{
    return tag == TAG_THE || tag == TAG_ARTICLE || tag == TAG_SIZE || tag == TAG_STATE
           || tag == TAG_OF || tag == TAG_EACH || tag == TAG_NUMBER || tag == TAG_DONE;
}

/* "Oil in the pan", "flour on the counter", "salt on both sides": where it goes stands behind, and
 * no verb before. */
static bool is_put_there(const struct builder *b, const struct chunk *c, size_t index)
{
    bool and = false, comma = b->r->words.at[c->first ? c->first - 1 : 0].after == AFTER_COMMA;
    size_t in = index + 1;
    while (chunk_tag(&b->chunks, in) == TAG_OTHER || chunk_tag(&b->chunks, in) == TAG_MEASURE)
        in++; /* "a tortilla, straight in the dry pan" */
    if ((!begins_sentence(b, index, &and) && !comma) || in > index + 3
        || chunk_tag(&b->chunks, in) != TAG_INTO || span_has_tag(b->r, c->match->words, TAG_THE))
        return false;
    size_t i = in + 1;
    if (chunk_tag(&b->chunks, i) == TAG_IT)
        return true; /* "pepper on it" */
    while (leads_to_thing(chunk_tag(&b->chunks, i)) && i < b->chunks.count)
        i++;
    unsigned char tag = chunk_tag(&b->chunks, i);
    if (tag == TAG_VESSEL) /* "dal in bowls" is eaten */
        return !is_step_word(b, &b->chunks.at[i], "served");
    return tag == TAG_PLACE || tag == TAG_SIDE || tag == TAG_TOOL;
}

/* So many words behind where a food was put in, it is put in again. */
#define AGAIN_WORDS 25

/* "Brush the tops with milk", "dust it in flour": the verb that coats with the food. */
static bool is_coating(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    size_t i = index;
    while (
        i > 0
        && (c->at[i - 1].tag == TAG_VAGUE || c->at[i - 1].tag == TAG_AND || is_line(&c->at[i - 1])))
        i--;
    if (i > 0 && (c->at[i - 1].tag == TAG_WITH || c->at[i - 1].tag == TAG_INTO))
        for (i--; i > 0 && !c->at[i - 1].match && c->at[i - 1].tag != TAG_ACTION; i--)
            ;
    return i > 0 && c->at[i - 1].tag == TAG_ACTION && c->at[i - 1].entry
           && !(c->at[i - 1].scope & SCOPE_NOT_DONE)
           && step_words_list(b->k, "coats", entry_value(c->at[i - 1].entry));
}

bool goes_in_again(const struct builder *b, size_t index, const struct ingredient *old,
                   const struct said_amount *said)
{
    const struct chunk *c = &b->chunks.at[index];
    const struct entry *food = match_entry(b->r, c->match, SLOT_food);
    if (!food || said->amount.known || said->more || !old->amount.known
        || old->words.last >= b->sentence->first || span_has_tag(b->r, c->match->words, TAG_THE))
        return false;
    bool seasons =
        food->marks & MARK_OF(salt) || step_words_list(b->k, "pepper", entry_value(food));
    bool far = c->first - old->words.last >= AGAIN_WORDS;
    if (far && (seasons || food->marks & MARK_OF(herb)) && !is_the_food(b, c))
        return true;
    bool dry = seasons || food->marks & (MARK_OF(flour) | MARK_OF(fat));
    if (dry && far && is_put_there(b, c, index))
        return true;
    return is_coating(b, index);
}

/* "Salt at the end.", "rub it in, and salt till it's right": salt or pepper that is named goes in,
 * unless it is told why none does ("salt it does not need", "it's salt"). */
static bool is_salt_or_pepper(const struct builder *b, const struct chunk *c, size_t index)
{
    const struct entry *food = match_entry(b->r, c->match, SLOT_food);
    if (!food
        || (!(food->marks & MARK_OF(salt)) && !step_words_list(b->k, "pepper", entry_value(food)))
        || is_the_food(b, c))
        return false;
    const unsigned char next = chunk_tag(&b->chunks, index + 1),
                        before = index ? chunk_tag(&b->chunks, index - 1) : (unsigned char) TAG_SO;
    return next != TAG_NOT && next != TAG_IT && before != TAG_OR && before != TAG_THERE
           && before != TAG_OF && before != TAG_NOT && before != TAG_EATER;
}

bool is_used_here(const struct builder *b, const struct chunk *c, size_t index,
                  const struct said_amount *said)
{
    if (said->amount.known || said->vague || said->more)
        return true;
    const struct entry *food = match_entry(b->r, c->match, SLOT_food);
    if (food && food->marks & MARK_OF(water) && !(c->scope & (SCOPE_TASTE | SCOPE_OPTIONAL)))
        return water_goes_in(b, index) == WATER_COVERS;
    if (b->r->punctuated && gives_reason(b, index))
        return false; /* "shake the jar, because the oil sits on the top" */
    return b->cooks || is_listed(b, index) || is_tasted_for(b, index) || is_seasoning_alone(b)
           || is_salt_or_pepper(b, c, index) || is_next_in(b) || is_next_food(b, c, index)
           || is_put_there(b, c, index)
           || c->scope & (SCOPE_BESIDE | SCOPE_GARNISH | SCOPE_TASTE | SCOPE_OPTIONAL);
}
