/* build/cooling.c
 * SPDX-License-Identifier: MIT */
#include "build/cooling.h"

#include "build/implied.h"
#include "build/instruction.h"
#include "build/wording.h"
#include "match/capture.h"

static bool says_word(const struct builder *b, const struct chunk *c, const char *kind)
{
    for (size_t n = c->first; n <= c->last; n++)
        if (step_row(b, kind, b->r->words.at[n].key).length)
            return true;
    return false;
}

/* "Cold water", "ice water", of which no amount is told. */
static bool is_cold_water(const struct builder *b, size_t i)
{
    const struct chunk *c = &b->chunks.at[i];
    if (c->tag != TAG_LINE || !c->match || c->match->rule->kind != RULE_mention || !is_done(c))
        return false;
    const struct entry *food = match_entry(b->r, c->match, SLOT_food);
    return food && food->marks & MARK_OF(water) && says_word(b, c, "iced");
}

/* The chunk that leads to the water: "into" of "into a bowl of cold water"; NOWHERE where it stands
 * in a pot, in which it gets hot. */
static size_t lead_of(const struct builder *b, size_t i)
{
    while (i-- > 0) {
        const struct chunk *c = &b->chunks.at[i];
        if (b->r->words.at[c->last].after >= AFTER_COMMA)
            return i + 1;
        if (c->tag == TAG_VESSEL && chunk_marks(c) & MARK_OF(wet))
            return NOWHERE;
        if (c->tag != TAG_VESSEL && c->tag != TAG_OF && c->tag != TAG_ARTICLE && c->tag != TAG_THE
            && c->tag != TAG_SIZE && c->tag != TAG_STATE)
            return i;
    }
    return 0;
}

static bool boils_or_leaves(uint64_t marks)
{
    return marks & (MARK_OF(boils) | MARK_OF(takes)) && !(marks & MARK_OF(changes));
}

/* Whether what is said before chunk `i`, or was done just before, boils or is drained; what boils
 * behind it has not been cooked yet. */
static bool was_boiled(const struct builder *b, size_t i)
{
    const struct step *last = step_near(b, 0);
    for (size_t n = i + 1; n < b->chunks.count; n++)
        if (chunk_marks(&b->chunks.at[n]) & MARK_OF(boils))
            return false;
    for (size_t n = 0; n < i; n++)
        if ((is_verb_word(&b->chunks.at[n]) && boils_or_leaves(chunk_marks(&b->chunks.at[n])))
            || says_word(b, &b->chunks.at[n], "boiling"))
            return true;
    for (size_t n = 0; last && n < last->actions.count; n++) {
        const struct entry *e = action_entry(b->k, last->actions.at[n]);
        if (e && boils_or_leaves(e->marks))
            return true;
    }
    return false;
}

/* A clause begins with chunk `i`, but for words like "straight". */
static bool begins_so(const struct builder *b, size_t i)
{
    while (i && b->r->words.at[b->chunks.at[i - 1].last].after < AFTER_COMMA
           && b->chunks.at[i - 1].tag == TAG_OTHER)
        i--;
    return !i || b->r->words.at[b->chunks.at[i - 1].last].after >= AFTER_COMMA
           || b->chunks.at[i - 1].tag == TAG_SO || b->chunks.at[i - 1].tag == TAG_AND
           || b->chunks.at[i - 1].tag == TAG_DURATION;
}

size_t find_iced(const struct builder *b)
{
    for (size_t i = 0; i < b->chunks.count; i++) {
        size_t lead = is_cold_water(b, i) ? lead_of(b, i) : NOWHERE;
        if (lead == NOWHERE || !was_boiled(b, i))
            continue;
        unsigned char tag = b->chunks.at[lead].tag;
        bool alone = lead == i || tag == TAG_SO || tag == TAG_AND;
        if (alone || (tag == TAG_INTO && begins_so(b, lead)))
            return i;
    }
    return NOWHERE;
}

bool is_iced(const struct builder *b, size_t verb)
{
    for (size_t i = verb == NOWHERE ? b->chunks.count : verb + 1; i < b->chunks.count; i++) {
        if (is_verb_word(&b->chunks.at[i]))
            return false;
        if (is_cold_water(b, i))
            return lead_of(b, i) != NOWHERE && was_boiled(b, verb);
    }
    return false;
}

/* "It must be", "they have to be", at chunk `i`; not "the cream must be". */
static bool must_be(const struct builder *b, size_t i)
{
    const struct chunk *c = &b->chunks.at[i];
    return c->tag == TAG_BE && i && (c - 1)->tag == TAG_WILL && is_step_word(b, c - 1, "must")
           && (i == 1 || (c - 2)->tag == TAG_IT || (c - 2)->tag == TAG_THE);
}

size_t find_cold_wait(const struct builder *b)
{
    for (size_t i = 2; i < b->chunks.count; i++)
        if (must_be(b, i - 1) && is_step_word(b, &b->chunks.at[i], "cooled")
            && is_done(&b->chunks.at[i]))
            return last_heat(b) ? i : NOWHERE; /* what was cooked has to wait for it */
    return NOWHERE;
}

static bool is_rack(const struct builder *b, size_t i)
{
    return is_step_word(b, &b->chunks.at[i], "rack")
           && !(b->chunks.at[i].scope & SCOPE_NOT_DONE); /* "on a rack" could be a yield */
}

bool is_racked(const struct builder *b, uint64_t heat, size_t verb)
{
    for (size_t i = verb + 1; i < b->chunks.count && heat & MARK_OF(ovens); i++) {
        if (is_verb_word(&b->chunks.at[i]))
            return false;
        if (is_rack(b, i))
            return true;
    }
    return false;
}

size_t find_rack(const struct builder *b)
{
    for (size_t in = 0; in + 1 < b->chunks.count; in++) {
        const unsigned char next = b->chunks.at[in + 1].tag;
        const size_t i = in + 1 + (next == TAG_THE || next == TAG_ARTICLE);
        if (b->chunks.at[in].tag == TAG_INTO && i < b->chunks.count && is_rack(b, i)
            && begins_so(b, in))
            return last_heat(b) & MARK_OF(ovens) ? i : NOWHERE;
    }
    return NOWHERE;
}
