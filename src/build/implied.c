/* build/implied.c
 * SPDX-License-Identifier: MIT */
#include "build/implied.h"

#include "build/cooling.h"
#include "build/floured.h"
#include "build/heat.h"
#include "build/instruction.h"
#include "build/stepjoin.h"
#include "build/stepwords.h"
#include "match/clause.h"

struct text implied_row(const struct pack *k, const char *name)
{
    const struct table *t = pack_table(k, "implied-actions");
    if (!t)
        return TEXT_EMPTY;
    return table_cell(t, table_find(t, text_from(name)), table_column(t, "action"));
}

/* A food of which such is said does not simply go in. */
#define ASIDE (SCOPE_GARNISH | SCOPE_BESIDE | SCOPE_TASTE | SCOPE_UNTIL)

bool is_done(const struct chunk *c)
{
    return !(c->scope & (SCOPE_NOT_DONE | SCOPE_TITLE | SCOPE_YIELD));
}

/* The first chunk with `tag` that is done here; NOWHERE when there is none. */
size_t find_done(const struct builder *b, unsigned char tag)
{
    for (size_t i = 0; i < b->chunks.count; i++)
        if (b->chunks.at[i].tag == tag && is_done(&b->chunks.at[i]))
            return i;
    return NOWHERE;
}

size_t find_line(const struct builder *b, unsigned scope, bool plain)
{
    for (size_t i = 0; i < b->chunks.count; i++) {
        const struct chunk *c = &b->chunks.at[i];
        if (c->tag != TAG_LINE || !c->match || !is_done(c) || is_on_board(b, i))
            continue;
        if (plain ? c->match->rule->kind == RULE_line && !(c->scope & ASIDE) : c->scope & scope)
            return i;
    }
    return NOWHERE;
}

bool says_cold(const struct builder *b)
{
    for (size_t i = 0; i < b->chunks.count; i++) {
        const struct chunk *c = &b->chunks.at[i];
        if (c->tag == TAG_PLACE && is_done(c) && chunk_marks(c) & MARK_OF(cold))
            return true;
    }
    return false;
}

/* The dish's last step, when it ends shortly before chunk `i`. */
const struct step *step_near(const struct builder *b, size_t i)
{
    const struct step *last =
        b->dish->steps.count ? &b->dish->steps.at[b->dish->steps.count - 1] : NULL;
    bool near = last && i != NOWHERE
                && b->r->words.at[b->chunks.at[i].first].start - last->end < NEAR_SECONDS;
    return near ? last : NULL;
}

/* Foods that are listed this soon one after the other, with talk between, are one list. */
#define LIST_SECONDS 20.0

static bool list_goes_on(const struct builder *b, size_t line)
{
    return b->list_step && !is_worked(&b->dish->steps.at[b->list_step - 1])
           && b->list_step == b->dish->steps.count && line != NOWHERE
           && b->r->words.at[b->chunks.at[line].first].start - b->list_end < LIST_SECONDS
           && text_equal(b->dish->steps.at[b->list_step - 1].group, b->group);
}

/* Whether the food of chunk `i` is listed here, not only spoken of again. */
static bool is_new(const struct builder *b, size_t i)
{
    const struct chunk *c = &b->chunks.at[i];
    for (size_t n = b->dish->ingredients.count; n-- > 0;) {
        size_t id = b->dish->ingredients.at[n].id;
        if (id >= c->first && id <= c->last)
            return true;
    }
    return false;
}

/* "That's two kilos of lamb there": how much that was, once it is in. */
static bool is_recap(const struct builder *b, size_t line)
{
    return line != NOWHERE && b->dish->steps.count && !is_new(b, line);
}

/* "Then the stock": what goes in next, once something is hot. */
static bool is_next(const struct builder *b)
{
    return b->chunks.count && b->chunks.at[0].tag == TAG_SO && (last_heat(b) || b->pan);
}

/* One amount after another is one step. */
static size_t goes_on(const struct builder *b, size_t line)
{
    return is_recap(b, line) || (list_goes_on(b, line) && !is_next(b)) ? NOWHERE : line;
}

/* The oven of a sentence that says its heat, and no time. */
static size_t find_oven(const struct builder *b)
{
    struct temperature t;
    size_t oven = find_done(b, TAG_OVEN);
    for (size_t i = 0; i < b->chunks.count && oven != NOWHERE; i++)
        if (b->chunks.at[i].tag == TAG_HEATED && is_done(&b->chunks.at[i])
            && read_temperature(b, &b->chunks.at[i], &t) && text_is(t.of, "oven"))
            return find_done(b, TAG_DURATION) == NOWHERE ? oven : NOWHERE;
    return NOWHERE;
}

/* The oven's heat, but where it is turned down. */
static size_t find_still_oven(const struct builder *b)
{
    return find_lowered(b) == NOWHERE ? find_oven(b) : NOWHERE;
}

/* The chunk of what is salted. */
static size_t find_salt(const struct builder *b)
{
    return is_seasoning(b) ? find_done(b, TAG_LINE) : NOWHERE;
}

/* The food that goes in next. */
static size_t find_next(const struct builder *b)
{
    bool other = b->rundown || is_seasoning(b) || find_bowl(b) != NOWHERE;
    return other ? NOWHERE : goes_on(b, find_line(b, 0, true));
}

static size_t find_garnish(const struct builder *b)
{
    return find_line(b, SCOPE_GARNISH, false);
}

static size_t find_beside(const struct builder *b)
{
    return find_line(b, SCOPE_BESIDE, false);
}

static size_t find_tasted(const struct builder *b)
{
    return find_line(b, SCOPE_TASTE, false);
}

enum implied_kind {
#define IMPLIED(name, row, find, part, marks) IMPLIED_##name,
#include "build/implied.def"
#undef IMPLIED
    IMPLIED_COUNT
};

static const struct {
    const char *row;
    size_t (*find)(const struct builder *b); /* the chunk that implies it, else NOWHERE */
    bool clause;                             /* only verbs of the same clause say it */
    uint64_t said_by;
} kinds[] = {
#define IMPLIED(name, row, find, part, marks) {row, find, part, marks},
#include "build/implied.def"
#undef IMPLIED
};

struct text implied_list(const struct pack *k)
{
    return implied_row(k, kinds[IMPLIED_LINE].row);
}

struct text implied_bowl(const struct pack *k)
{
    return implied_row(k, kinds[IMPLIED_BOWL].row);
}

struct text implied_heat(const struct pack *k, struct text of)
{
    if (text_is(of, "inside"))
        return implied_row(k, kinds[IMPLIED_INSIDE_HEAT].row);
    if (text_is(of, "pan") || text_is(of, "oil"))
        return implied_row(k, kinds[IMPLIED_VESSEL_HEAT].row);
    return text_is(of, "oven") ? implied_row(k, kinds[IMPLIED_OVEN_HEAT].row) : TEXT_EMPTY;
}

static bool ends_part(const struct builder *b, size_t i)
{
    size_t last = b->chunks.at[i].last;
    return b->r->words.at[last].after >= AFTER_COMMA
           || (!b->r->punctuated && clause_ends(b->r, b->sentence, last));
}

/* The marks of the verbs between the commas around chunk `i`. */
static uint64_t clause_marks(const struct builder *b, size_t i)
{
    size_t first = i, last = i;
    while (first && !ends_part(b, first - 1))
        first--;
    while (last + 1 < b->chunks.count && !ends_part(b, last))
        last++;
    uint64_t marks = 0;
    for (; first <= last; first++)
        if (is_verb(b, first))
            marks |= chunk_marks(&b->chunks.at[first]);
    return marks;
}

bool lists_before_verb(const struct builder *b)
{
    const uint64_t other = MARK_OF(brief) | MARK_OF(changes);
    for (size_t i = 0; i < b->chunks.count && !b->rundown; i++) {
        const struct chunk *c = &b->chunks.at[i];
        if (is_verb(b, i) && !(chunk_marks(c) & other))
            return false;
        if (c->tag == TAG_LINE && c->match && is_done(c) && c->match->rule->kind == RULE_line
            && !(c->scope & ASIDE) && !is_on_board(b, i))
            return !b->r->punctuated || !clause_marks(b, i);
    }
    return false;
}

struct text implied_in_context(const struct builder *b, const char *name)
{
    struct text said = implied_row(b->k, name), here = action_in_context(b, said, NOWHERE);
    struct text row = text_from(name), by_row = action_in_context(b, row, NOWHERE);
    return text_equal(said, here) && !text_equal(row, by_row) ? by_row : here;
}

/* "A squeeze of lemon", "a drizzle of oil": how much it is says what is done; empty for others. */
static struct text amount_action(const struct builder *b, size_t chunk)
{
    struct text action = TEXT_EMPTY;
    const struct chunk *c = &b->chunks.at[chunk];
    for (size_t i = c->first; i < c->last && !action.length; i++)
        action = step_text(b->k, "amount", b->r->words.at[i].key);
    return action;
}

/* The row's action, or what the table context-actions has for the row where the dish is. */
static struct text implied_action(const struct builder *b, enum implied_kind kind, size_t chunk)
{
    struct text amount =
        kind == IMPLIED_LINE || kind == IMPLIED_GARNISH ? amount_action(b, chunk) : TEXT_EMPTY;
    if (amount.length)
        return amount;
    if (kind == IMPLIED_GARNISH && is_poured(b))
        kind = IMPLIED_LINE;
    struct text row = text_from(kinds[kind].row), here = action_in_context(b, row, NOWHERE);
    return text_equal(row, here) ? action_in_context(b, implied_row(b->k, kinds[kind].row), NOWHERE)
                                 : here;
}

size_t implied_actions(const struct builder *b, uint64_t said, struct implied *out)
{
    size_t count = 0;
    if (b->sentence->flags & SENTENCE_QUESTION)
        return 0;
    for (int i = 0; i < IMPLIED_COUNT && count < IMPLIED_MOST; i++) {
        enum implied_kind kind = (enum implied_kind) i;
        size_t chunk = kinds[kind].find(b);
        if (chunk != NOWHERE
            && kinds[kind].said_by & (kinds[kind].clause ? clause_marks(b, chunk) : said))
            continue;
        struct text action = chunk == NOWHERE ? TEXT_EMPTY : implied_action(b, kind, chunk);
        if (action.length)
            out[count++] = (struct implied){action, chunk};
    }
    return count;
}
