/* build/impliedplace.c: where something goes, or comes from, with no verb: "and then into the tin".
 * SPDX-License-Identifier: MIT */
#include "build/context.h"
#include "build/implied.h"
#include "build/wording.h"

static bool begins_clause(const struct builder *b, size_t i)
{
    const struct chunk *before = i ? &b->chunks.at[i - 1] : NULL;
    return !before || before->tag == TAG_SO || before->tag == TAG_AND
           || b->r->words.at[before->last].after >= AFTER_COMMA;
}

/* "And then into the tin", "onto a tray": a clause that begins with where it goes. */
#define PLACE_CHUNKS 4

static bool is_into(const struct builder *b, size_t i)
{
    const struct chunk *c = &b->chunks.at[i];
    if (c->tag != TAG_INTO || !is_done(c))
        return false;
    bool back = i && is_step_word(b, c - 1, "returned"); /* "back in the bowl" */
    if (!begins_clause(b, i - back) || !(back || is_step_word(b, c, "place")))
        return false;
    for (size_t n = i + 1; n < b->chunks.count && n <= i + PLACE_CHUNKS; n++) {
        if (b->chunks.at[n].tag == TAG_VESSEL || b->chunks.at[n].tag == TAG_CONTAINER
            || (b->chunks.at[n].tag == TAG_PLACE && chunk_marks(&b->chunks.at[n]) & MARK_OF(cold)))
            return true;
        if (b->r->words.at[b->chunks.at[n].last].after >= AFTER_COMMA)
            return false;
    }
    return false;
}

size_t find_into(const struct builder *b)
{
    for (size_t i = 0; i < b->chunks.count && !b->rundown; i++)
        if (is_into(b, i))
            return i;
    return NOWHERE;
}

/* "In another bowl, two eggs, a cup of sour cream.": foods that are put together there. */
size_t find_bowl(const struct builder *b)
{
    size_t i = 0;
    while (i < b->chunks.count
           && (b->chunks.at[i].tag == TAG_SO || b->chunks.at[i].tag == TAG_AND
               || b->chunks.at[i].tag == TAG_MEANWHILE))
        i++;
    if (b->rundown || i >= b->chunks.count || b->chunks.at[i].tag != TAG_INTO
        || !is_done(&b->chunks.at[i]))
        return NOWHERE;
    for (size_t n = i + 1; n < b->chunks.count && n <= i + PLACE_CHUNKS; n++)
        if (is_step_word(b, &b->chunks.at[n], "mixed")) {
            size_t line = find_line(b, 0, true);
            return line != NOWHERE && line > n ? line : NOWHERE;
        }
    return NOWHERE;
}

/* "Out of the tin": of what food can be taken out. */
static bool is_from_vessel(const struct builder *b, size_t i)
{
    if (i + 2 >= b->chunks.count || b->chunks.at[i + 1].tag != TAG_THE)
        return false;
    unsigned char from = b->chunks.at[i + 2].tag;
    return from == TAG_VESSEL || from == TAG_OVEN || from == TAG_CONTAINER;
}

/* "And off.": nothing stands behind it in its clause. */
static bool ends_clause(const struct builder *b, size_t i)
{
    unsigned char next = i + 1 < b->chunks.count ? b->chunks.at[i + 1].tag : 0;
    return !next || next == TAG_AND || next == TAG_UNTIL
           || b->r->words.at[b->chunks.at[i].last].after >= AFTER_COMMA;
}

size_t find_out(const struct builder *b)
{
    for (size_t i = 0; i < b->chunks.count; i++) {
        const struct chunk *c = &b->chunks.at[i];
        bool out = c->tag == TAG_FROM ? is_from_vessel(b, i)
                                      : c->tag == TAG_OTHER && !c->entry && ends_clause(b, i);
        if (out && begins_clause(b, i) && is_done(c) && is_step_word(b, c, "leaves")
            && last_heat(b))
            return i;
    }
    return NOWHERE;
}

/* "Kitchen paper", "paper" by itself; baking paper takes up no fat. */
static bool is_paper(const struct builder *b, const struct chunk *c)
{
    return c->entry
           && (step_words_list(b->k, "drains-on", entry_value(c->entry))
               || (c->first == c->last && is_step_word(b, c, "drains-on")));
}

/* The chunk before the words that lead to the thing in chunk `i`: "under" of "under a damp towel".
 */
static const struct chunk *leads_to(const struct builder *b, size_t i)
{
    const struct chunk *c = &b->chunks.at[i];
    do
        c--;
    while (c > b->chunks.at
           && (c->tag == TAG_THE || c->tag == TAG_ARTICLE || c->tag == TAG_STATE
               || c->tag == TAG_SIZE));
    return c;
}

/* "Under a towel": a thing that covers. */
size_t find_cover(const struct builder *b)
{
    for (size_t i = 1; i < b->chunks.count; i++) {
        const struct chunk *c = &b->chunks.at[i];
        if ((c->tag == TAG_TOOL || c->tag == TAG_VESSEL) && is_done(c) && c->entry
            && is_step_word(b, leads_to(b, i), "under")
            && step_words_list(b->k, "covers", entry_value(c->entry)))
            return i;
    }
    return NOWHERE;
}

/* "Straight on the coals"; a fire may have a pot on it. */
size_t find_fire(const struct builder *b)
{
    for (size_t i = 2; i < b->chunks.count; i++) {
        const struct chunk *c = &b->chunks.at[i];
        if (c->tag == TAG_OVEN && chunk_marks(c) & MARK_OF(grills) && is_done(c)
            && b->chunks.at[i - 1].tag == TAG_THE && b->chunks.at[i - 2].tag == TAG_INTO)
            return i;
    }
    return NOWHERE;
}

static bool was_fried(const struct builder *b)
{
    const uint64_t heat = last_heat(b);
    return heat & MARK_OF(heats) && !(heat & (MARK_OF(ovens) | MARK_OF(boils)));
}

/* "Two minutes, turn, and out on paper", of what was fried. */
size_t find_paper(const struct builder *b)
{
    for (size_t i = 0; i < b->chunks.count; i++)
        if (b->chunks.at[i].tag == TAG_TOOL && is_done(&b->chunks.at[i])
            && is_paper(b, &b->chunks.at[i])
            && (begins_clause(b, i) || b->chunks.at[i - 1].tag == TAG_INTO))
            return was_fried(b) ? i : NOWHERE;
    return NOWHERE;
}

/* So long it keeps: "five days in the fridge". */
#define KEEPS_SECONDS (12.0 * 3600)

static bool says_keeping(const struct builder *b)
{
    const size_t time = find_done(b, TAG_DURATION);
    return time != NOWHERE && b->chunks.at[time].match
           && ratio_double(b->chunks.at[time].match->low) > KEEPS_SECONDS;
}

/* "Fridge.", "in the fridge till we eat", but not "out of the fridge", "the fridge is full". */
size_t find_cold(const struct builder *b)
{
    if (!says_cold(b) || says_keeping(b))
        return NOWHERE;
    for (size_t i = 0; i < b->chunks.count; i++) {
        const struct chunk *c = &b->chunks.at[i];
        if (c->tag != TAG_PLACE || !is_done(c) || !(chunk_marks(c) & MARK_OF(cold)))
            continue;
        size_t n = i;
        while (n && (b->chunks.at[n - 1].tag == TAG_THE || b->chunks.at[n - 1].tag == TAG_ARTICLE))
            n--;
        if (begins_clause(b, n) ? n == i : b->chunks.at[n - 1].tag == TAG_INTO)
            return i;
    }
    return NOWHERE;
}

size_t find_served(const struct builder *b)
{
    for (size_t i = 1; i < b->chunks.count; i++)
        if (b->chunks.at[i].tag == TAG_VESSEL && b->chunks.at[i - 1].tag == TAG_INTO
            && is_done(&b->chunks.at[i]) && is_step_word(b, &b->chunks.at[i], "served")
            && last_heat(b))
            return i;
    return NOWHERE;
}
