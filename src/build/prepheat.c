/* build/prepheat.c: verbs that heat or work a food before it goes in, and parts that are taken
 * away.
 * SPDX-License-Identifier: MIT */
#include "build/prep.h"

#include "base/arena.h"
#include "build/wording.h"

bool has_juice(const struct builder *b, const struct ingredient *line)
{
    const struct table *t = pack_table(b->k, "food-parts");
    return t && line->entry && table_find(t, line->kind) < t->rows;
}

/* Sorts of foods that have rows: "egg beat", "fruit squeeze", "fat hot"; NULL for none. */
static const char *sort_of(const struct builder *b, const struct ingredient *line)
{
    if (!line->entry)
        return NULL;
    return line->entry->marks & MARK_OF(egg)   ? "egg"
           : line->entry->marks & MARK_OF(fat) ? "fat"
           : has_juice(b, line)                ? "fruit"
                                               : NULL;
}

struct text food_row(const struct builder *b, const struct ingredient *line, const char *rows,
                     struct text said)
{
    const char *sort = sort_of(b, line);
    struct text own =
        sort ? step_text(b->k, rows, arena_format(b->r->arena, "%s %.*s", sort, TEXT(said)))
             : TEXT_EMPTY;
    if (!own.length)
        own = step_text(
            b->k, rows,
            arena_format(b->r->arena, "%.*s %.*s", TEXT(text_last_word(line->kind)), TEXT(said)));
    return own;
}

/* Beaten and boiled are eggs only, juiced are fruits, pressed is tofu. */
static struct text own_row(const struct builder *b, const struct ingredient *line,
                           struct text action)
{
    return food_row(b, line, "prepares", action);
}

struct text prep_row(const struct builder *b, const struct ingredient *line, struct text action)
{
    struct text own = own_row(b, line, action);
    return own.length ? own : step_text(b->k, "prepares", action);
}

struct text prepared_by_amount(const struct builder *b, const struct ingredient *line,
                               const struct entry *unit)
{
    return own_row(b, line, entry_value(unit)); /* "a squeeze of lemon", "a grating of nutmeg" */
}

struct text prepared_before(const struct builder *b, const struct ingredient *line,
                            const struct chunk *verb)
{
    bool told = verb->tag == TAG_ACTION || verb->tag == TAG_DONE;
    if (!told || !verb->entry || verb->entry->words_count > 1 || verb->scope & SCOPE_NOT_DONE)
        return TEXT_EMPTY; /* "beat in", "melt down": no work before it goes in */
    return prep_row(b, line, entry_value(verb->entry));
}

/* "Beat those in", and not "toast those in a dry pan", behind the "it" at chunk `it`. */
static bool goes_in(const struct builder *b, size_t it)
{
    const struct chunks *c = &b->chunks;
    if (it + 1 >= c->count || c->at[it + 1].tag != TAG_INTO)
        return false;
    unsigned char next = chunk_tag(c, it + 2);
    return next != TAG_ARTICLE && next != TAG_THE && next != TAG_VESSEL && next != TAG_OVEN;
}

struct text prepared_it(const struct builder *b, const struct ingredient *line,
                        const struct chunk *verb, size_t it)
{
    return goes_in(b, it) ? TEXT_EMPTY : prepared_before(b, line, verb);
}

struct text prepared_inside(const struct builder *b, const struct ingredient *line,
                            const struct chunk *verb)
{
    bool told = verb->tag == TAG_ACTION || verb->tag == TAG_DONE;
    return told && verb->entry && !(verb->scope & SCOPE_NOT_DONE)
               ? prep_row(b, line, entry_value(verb->entry))
               : TEXT_EMPTY;
}

struct text prepared_then(const struct builder *b, const struct ingredient *line,
                          const struct chunk *verb)
{
    bool melts = line->entry && line->entry->marks & (MARK_OF(fat) | MARK_OF(dairy));
    return melts || verb->tag != TAG_ACTION ? TEXT_EMPTY : prepared_before(b, line, verb);
}

/* "Toast a handful of walnuts", "beat two eggs"; "melt the butter in the pan" is a step. */
struct text prepared_first(const struct builder *b, const struct ingredient *line,
                           const struct chunk *verb)
{
    const uint64_t dry = MARK_OF(egg) | MARK_OF(spice);
    struct text done = prepared_before(b, line, verb);
    if (span_has_tag(b->r, line->words, TAG_EXTRACT)) /* "squeeze the juice of two limes" */
        return TEXT_EMPTY;
    bool melts = line->entry && line->entry->marks & (MARK_OF(fat) | MARK_OF(dairy));
    bool solid = line->entry && !(line->entry->marks & MARK_OF(uncounted));
    if (done.length && verb->tag == TAG_ACTION
        && own_row(b, line, entry_value(verb->entry)).length) /* "warm the milk" */
        return done;
    return line->entry && !melts && (solid || line->entry->marks & dry) && verb->tag == TAG_ACTION
               ? done
               : TEXT_EMPTY;
}
