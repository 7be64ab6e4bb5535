/* build/phrasal.c
 * SPDX-License-Identifier: MIT */
#include "build/phrasal.h"

#include "build/instruction.h"
#include "build/wording.h"

/* A particle farther behind its verb than this belongs to something else. */
#define PARTICLE_CHUNKS 6

/* "Wash your hands", "put the leftovers away": nothing for a recipe; "wash the rice in a bowl" is.
 */
static bool is_led_to(const struct builder *b, size_t i, size_t at)
{
    for (size_t n = i + 1; n < at; n++)
        if (b->chunks.at[n].tag == TAG_INTO || b->chunks.at[n].tag == TAG_AND)
            return true;
    return false;
}

static bool is_base_form(const struct chunk *c)
{
    return c->entry && text_equal(entry_words(c->entry), entry_shown(c->entry));
}

/* Where in its row's reach the word `particle` stands behind chunk `i`; 0 when it does not. A thing
 * alone has its particle beside it ("lid back on"), and another verb ends the search. */
static size_t find_particle(const struct builder *b, size_t i, struct text particle,
                            struct text object)
{
    bool seen = text_is(object, "*");
    if (!(b->chunks.shapes & text_shape(particle)))
        return 0; /* it is not said at all, as most are not */
    for (size_t n = i + 1; n < b->chunks.count && n <= i + PARTICLE_CHUNKS; n++) {
        const struct chunk *c = &b->chunks.at[n];
        if (b->r->words.at[b->chunks.at[n - 1].last].after == AFTER_COMMA)
            return 0;
        bool here = (c->entry && text_equal(entry_value(c->entry), object))
                    || text_equal(b->r->words.at[c->last].key, object);
        seen |= here;
        bool first = (c->tag == TAG_OTHER || c->tag == TAG_FINISH
                      || (c->tag == TAG_FROM && n > i + 1 && is_base_form(&b->chunks.at[i]))
                      || c->tag == TAG_RETURN)
                     && text_equal(b->r->words.at[c->first].key, particle);
        bool own =
            c->first < c->last /* "get that rolled out", "and put the lid on" */
            && (c->tag == TAG_DONE || (c->tag == TAG_ACTION && b->chunks.at[n - 1].tag == TAG_AND));
        if (seen && !own && (first || text_equal(b->r->words.at[c->last].key, particle)))
            return n;
        if (((c->tag == TAG_ACTION || c->tag == TAG_DOING) && !here) || c->tag == TAG_SO
            || c->tag == TAG_UNTIL || c->tag == TAG_ME || c->tag == TAG_YOU)
            return 0;
    }
    return 0;
}

/* The thing that a verb without an object of its own has before it: "the lid goes back on". */
static bool has_subject(const struct builder *b, size_t i, struct text object)
{
    const struct chunk *before = i ? &b->chunks.at[i - 1] : NULL;
    return before && before->entry && text_equal(entry_value(before->entry), object);
}

static struct phrasal_kind *kind_of(struct phrasals *all, struct text kind)
{
    if (text_is(kind, "verb"))
        return &all->verbs;
    return text_is(kind, "thing") ? &all->things : &all->foods;
}

static void link_rows(struct phrasal_kind *kind)
{
    for (size_t n = kind->rows.count; n-- > 0;) {
        struct phrasal_row *row = &kind->rows.at[n];
        size_t *first = &kind->first[text_shape_number(row->head)];
        row->next = *first;
        *first = n + 1;
    }
}

struct phrasals phrasals_load(struct arena *a, const struct pack *k)
{
    struct phrasals all = {0};
    const struct table *t = pack_table(k, "phrasal");
    if (!t)
        return all;
    size_t head = table_column(t, "head"), particle = table_column(t, "particle"),
           object = table_column(t, "object"), action = table_column(t, "action"),
           kind = table_column(t, "kind");
    for (size_t row = 0; row < t->rows; row++)
        kind_of(&all, table_cell(t, row, kind))->rows.room++;
    LIST_RESERVE(a, &all.verbs.rows, all.verbs.rows.room);
    LIST_RESERVE(a, &all.things.rows, all.things.rows.room);
    LIST_RESERVE(a, &all.foods.rows, all.foods.rows.room);
    for (size_t row = 0; row < t->rows; row++) {
        struct phrasal_kind *of = kind_of(&all, table_cell(t, row, kind));
        struct text verb = table_cell(t, row, head);
        *LIST_ADD(a, &of->rows) =
            (struct phrasal_row){verb, table_cell(t, row, particle), table_cell(t, row, object),
                                 table_cell(t, row, action), 0};
    }
    link_rows(&all.verbs);
    link_rows(&all.things);
    return all;
}

/* Whether chunk `i` is the last of its clause, or stands before a place or the next clause. */
static bool ends_clause(const struct builder *b, size_t i)
{
    unsigned char next = i + 1 < b->chunks.count ? b->chunks.at[i + 1].tag : 0;
    return !next || b->r->words.at[b->chunks.at[i].last].after >= AFTER_COMMA || next == TAG_AND
           || next == TAG_SO || next == TAG_FOR || next == TAG_UNTIL;
}

/* Whether the food of chunk `i` begins its clause, but for words like "the". */
static bool begins_clause(const struct builder *b, size_t i)
{
    while (i && b->r->words.at[b->chunks.at[i - 1].last].after < AFTER_COMMA
           && (b->chunks.at[i - 1].tag == TAG_THE || b->chunks.at[i - 1].tag == TAG_SO))
        i--;
    return !i || b->r->words.at[b->chunks.at[i - 1].last].after >= AFTER_COMMA
           || b->chunks.at[i - 1].tag == TAG_AND;
}

bool is_food_word(const struct chunk *c)
{
    return c->tag == TAG_LINE || c->tag == TAG_PART;
}

/* "Chicken in the oven.", "everything in the blender": the place behind the particle of chunk
 * `end`; `end` itself where none stands there. */
static size_t place_behind(const struct builder *b, size_t end)
{
    size_t i = end + 1;
    while (i < b->chunks.count
           && (b->chunks.at[i].tag == TAG_THE || b->chunks.at[i].tag == TAG_ARTICLE
               || b->chunks.at[i].tag == TAG_SIZE || b->chunks.at[i].tag == TAG_STATE))
        i++;
    unsigned char tag = i < b->chunks.count ? b->chunks.at[i].tag : 0;
    bool place = tag == TAG_OVEN || tag == TAG_PLACE || tag == TAG_VESSEL || tag == TAG_TOOL;
    return place && i > end + 1 && b->chunks.at[end].tag == TAG_INTO ? i : end;
}

/* "Onions in." "And the chicken back in." The food begins a clause and the particle ends it. */
static bool find_food_phrasal(const struct builder *b, size_t i, struct phrasal *out)
{
    if (!begins_clause(b, i) || i + 1 >= b->chunks.count
        || b->r->words.at[b->chunks.at[i].last].after >= AFTER_COMMA)
        return false;
    if (b->chunks.at[i + 1].tag == TAG_ACTION)
        return false; /* "the onions go in" has its verb */
    struct text said = b->r->words.at[b->chunks.at[i + 1].last].key;
    size_t end = i + 1 + (i + 2 < b->chunks.count && b->chunks.at[i + 2].tag == TAG_INTO);
    size_t place = place_behind(b, end);
    const struct entry *there = place > end ? b->chunks.at[place].entry : NULL;
    const phrasal_list *rows = &b->phrasals.foods.rows;
    const bool ends = ends_clause(b, place);
    for (size_t n = 0; n < rows->count && ends; n++) {
        const struct phrasal_row *row = &rows->at[n];
        bool any = text_is(row->object, "*") && !there;
        if (text_equal(row->particle, said)
            && (any || (there && text_equal(entry_value(there), row->object)))) {
            *out = (struct phrasal){row->action, place, true}; /* "grill" says where it is */
            return true;
        }
    }
    return false;
}

/* "With the lid on", "leave the lid on": how it stays, not what is done with it. */
static bool stays(const struct builder *b, size_t i)
{
    while (i && b->chunks.at[i - 1].tag == TAG_THE)
        i--;
    const struct chunk *c = i ? &b->chunks.at[i - 1] : NULL;
    return c
           && (c->tag == TAG_WITH
               || (c->tag == TAG_ACTION && chunk_marks(c) & (MARK_OF(idle) | MARK_OF(light))));
}

/* Whether the thing in chunk `i` is what a verb is done to. */
static bool is_object(const struct builder *b, size_t i)
{
    if (b->chunks.at[i].tag == TAG_ACTION || b->chunks.at[i].tag == TAG_DOING)
        return false;
    while (i
           && (b->chunks.at[i - 1].tag == TAG_THE || b->chunks.at[i - 1].tag == TAG_SIZE
               || b->chunks.at[i - 1].tag == TAG_ARTICLE || b->chunks.at[i - 1].tag == TAG_OTHER
               || b->chunks.at[i - 1].tag == TAG_NUMBER || b->chunks.at[i - 1].tag == TAG_STATE))
        i--;
    return i && b->chunks.at[i - 1].tag == TAG_ACTION;
}

/* "Keep the milk", "keep a spoon of them": a food, right behind the verb of chunk `i` and with
 * nothing said of how it is kept; 0 where none stands there. */
static size_t kept_food(const struct builder *b, size_t i)
{
    size_t n = i + 1;
    for (; n < b->chunks.count; n++) {
        const struct chunk *c = &b->chunks.at[n];
        bool leads = c->tag == TAG_THE || c->tag == TAG_ARTICLE || c->tag == TAG_VAGUE
                     || c->tag == TAG_AMOUNT || c->tag == TAG_OF;
        if (!leads)
            break;
    }
    bool food =
        n < b->chunks.count
        && (is_food_word(&b->chunks.at[n])
            || (b->chunks.at[n].tag == TAG_IT
                && (b->chunks.at[n - 1].tag == TAG_OF || b->chunks.at[n - 1].tag == TAG_VAGUE)));
    unsigned char next = chunk_tag(&b->chunks, n + 1);
    bool ends =
        food && (ends_clause(b, n) || next == TAG_TO || next == TAG_OTHER || next == TAG_FINISH);
    return ends && !is_step_word(b, &b->chunks.at[n], "many") ? n : 0;
}

/* "Bacon, egg, lid" is a list, unless a time follows. */
static bool begins_alone(const struct builder *b, size_t i, bool timed)
{
    const struct chunk *before = i ? &b->chunks.at[i - 1] : NULL;
    if (!before || before->tag == TAG_AND || before->tag == TAG_SO)
        return true;
    if (before->tag == TAG_LINE && !timed)
        return false;
    return b->r->words.at[before->last].after >= AFTER_COMMA
           || (!b->r->punctuated && timed
               && (before->tag == TAG_LINE || before->tag == TAG_VESSEL || before->tag == TAG_IT
                   || before->tag == TAG_HEAT));
}

/* "Lid.", "bring it to a boil, lid, turn it down", "and lid, six minutes": a thing by itself. */
static bool is_alone(const struct builder *b, size_t i)
{
    const unsigned char next = chunk_tag(&b->chunks, i + 1);
    const bool timed = next == TAG_DURATION;
    return (b->r->words.at[b->chunks.at[i].last].after >= AFTER_COMMA || timed || next == TAG_AND)
           && begins_alone(b, i, timed);
}

/* "Turn the music down": what is turned, between chunks `i` and `at`, is no word of a kitchen. */
static bool is_of_the_room(const struct builder *b, size_t i, size_t at, struct text action)
{
    const struct entry *e = action_entry(b->k, action);
    for (size_t n = i + 1; e && e->marks & MARK_OF(changes) && n < at; n++)
        if (b->chunks.at[n].tag == TAG_OTHER && !b->chunks.at[n].entry
            && b->chunks.at[n - 1].tag == TAG_THE)
            return true;
    return false;
}

/* Whether the row's other words stand behind chunk `i`. */
static bool fits(const struct builder *b, size_t i, const struct phrasal_row *row,
                 struct phrasal *out)
{
    struct text any = TEXT_OF("*");
    if (text_is(row->particle, ".")) {
        *out = (struct phrasal){row->action, i, false};
        return is_alone(b, i);
    }
    size_t at = text_is(row->particle, "+")
                    ? kept_food(b, i)
                    : find_particle(b, i, row->particle,
                                    has_subject(b, i, row->object) ? any : row->object);
    bool none = text_is(row->action, "-") || (at && is_of_the_room(b, i, at, row->action));
    if (at && is_object(b, i) && (!ends_clause(b, at) || b->chunks.at[at].tag == TAG_FINISH))
        return false; /* "put the pan on the scales", "put a pan on top" */
    if (!at || (none && is_led_to(b, i, at)))
        return false;
    *out = (struct phrasal){none ? TEXT_EMPTY : row->action, at, !text_is(row->object, "*")};
    return true;
}

bool find_phrasal(const struct builder *b, size_t i, struct phrasal *out)
{
    const struct chunk *c = &b->chunks.at[i];
    if (c->scope & (SCOPE_NOT_DONE | SCOPE_UNTIL))
        return false;
    if ((is_food_word(c) || c->tag == TAG_DISH) && find_food_phrasal(b, i, out))
        return true;
    if (!c->entry)
        return false;
    bool verb = c->tag == TAG_ACTION || c->tag == TAG_DOING;
    const struct phrasal_kind *kind = verb ? &b->phrasals.verbs : &b->phrasals.things;
    struct text head = entry_value(c->entry);
    size_t row = kind->first[c->entry->value_shape];
    if (!row || (!verb && stays(b, i)))
        return false;
    for (; row; row = kind->rows.at[row - 1].next)
        if (kind->rows.at[row - 1].head.at == head.at /* a pack has each text once */
            && fits(b, i, &kind->rows.at[row - 1], out))
            return true;
    return false;
}
