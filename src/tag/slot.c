/* tag/slot.c
 * SPDX-License-Identifier: MIT */
#include "tag/slot.h"

#include <string.h>

#include "tag/fits.h"

static bool add_tag(struct unit_set *set, struct text name)
{
    unsigned char tag;
    if (!tag_find(name, &tag))
        return false;
    unit_set_add(set, tag);
    return true;
}

static bool tags_read(struct unit_set *set, struct text t, struct problems *p, struct place at)
{
    struct text name;
    while (text_part(&t, '|', &name))
        if (!add_tag(set, name))
            return problem(p, at, "\"%.*s\" is no class of docs/grammar.md", TEXT(name));
    return true;
}

/* "a_squeeze" stands for "a squeeze", since a space divides tokens. */
static struct text with_spaces(struct arena *a, struct text listed)
{
    if (text_find(listed, '_', 0) == listed.length)
        return listed;
    char *copy = arena_alloc(a, listed.length);
    for (size_t i = 0; i < listed.length; i++)
        copy[i] = listed.at[i] == '_' ? ' ' : listed.at[i];
    return (struct text){copy, listed.length};
}

static void add_text(struct arena *a, token_texts *list, uint64_t *shapes, struct text listed)
{
    struct text t = with_spaces(a, listed);
    *LIST_ADD(a, list) = t;
    *shapes |= text_shape(t);
}

/* "UNIT", "of", "=teaspoon", "^" or "$". */
static bool token_add(struct token *t, struct arena *a, struct text name)
{
    if (text_is(name, "^"))
        return t->start = true;
    if (text_is(name, "$"))
        return t->end = true;
    if (name.length && name.at[0] >= 'A' && name.at[0] <= 'Z')
        return add_tag(&t->tags, name);
    if (text_starts(name, "="))
        add_text(a, &t->values, &t->value_shapes, text_slice(name, 1, name.length));
    else
        add_text(a, &t->words, &t->word_shapes, name);
    return true;
}

/* Room for the texts that are divided by '|', and for no more: there are thousands of places. */
static void reserve_texts(struct token *t, struct arena *a, struct text part)
{
    size_t words = 0, values = 0;
    struct text name;
    while (text_part(&part, '|', &name)) {
        bool tag = name.length && name.at[0] >= 'A' && name.at[0] <= 'Z';
        values += text_starts(name, "=");
        words += !tag && !text_starts(name, "=");
    }
    if (words)
        LIST_RESERVE(a, &t->words, words);
    if (values)
        LIST_RESERVE(a, &t->values, values);
}

bool token_read(struct token *t, struct arena *a, struct text part, struct problems *p,
                struct place at)
{
    struct text name;
    reserve_texts(t, a, part);
    while (text_part(&part, '|', &name))
        if (!token_add(t, a, name))
            return problem(p, at, "\"%.*s\" is no class of docs/grammar.md", TEXT(name));
    return true;
}

static bool tokens_read(struct token **tokens, size_t *count, struct arena *a, struct text t,
                        struct problems *p, struct place at)
{
    struct text part;
    size_t parts = text_parts(t, ' ');
    *tokens = arena_alloc(a, (parts < SLOT_TOKENS ? parts : SLOT_TOKENS) * sizeof **tokens);
    for (*count = 0; t.length && text_part(&t, ' ', &part) && *count < SLOT_TOKENS; ++*count)
        if (!token_read(*tokens + *count, a, part, p, at))
            return false;
    return true;
}

static bool marks_read(uint64_t *marks, struct text t, struct problems *p, struct place at)
{
    struct text name;
    while (t.length && text_part(&t, ' ', &name)) {
        uint64_t mark;
        if (!mark_find(name, &mark))
            return problem(p, at, "\"%.*s\" is no mark", TEXT(name));
        *marks |= mark;
    }
    return true;
}

static bool slot_read(struct hearing_slot *slot, struct arena *a, const struct table *t, size_t row,
                      struct problems *p)
{
    struct place at = {t->file, t->lines[row], 0};
    struct ratio trust = ratio_read(table_cell(t, row, 4).at, table_cell(t, row, 4).length);
    if (!ratio_finite(trust) || trust.under != 1 || trust.over < 0 || trust.over > 100)
        return problem(p, at, "trust is a whole number from 0 to 100");
    slot->trust = (unsigned) trust.over;
    slot->certain = text_is(table_cell(t, row, 5), "certain");
    slot->sure = slot->certain || text_is(table_cell(t, row, 5), "sure");
    slot->nouns = text_is(table_cell(t, row, 5), "noun");
    slot->always = text_is(table_cell(t, row, 5), "always");
    slot->strong = text_is(table_cell(t, row, 5), "strong");
    slot->again = slot->strong || text_is(table_cell(t, row, 5), "again");
    return tokens_read(&slot->before, &slot->before_count, a, table_cell(t, row, 0), p, at)
           && tokens_read(&slot->after, &slot->after_count, a, table_cell(t, row, 1), p, at)
           && tags_read(&slot->expects, table_cell(t, row, 2), p, at)
           && marks_read(&slot->marks, table_cell(t, row, 3), p, at);
}

bool slots_load(slot_list *slots, struct arena *a, const struct pack *k, struct problems *p)
{
    const struct table *t = pack_table(k, "hearing");
    if (t)
        LIST_RESERVE(a, slots, t->rows);
    for (size_t row = 0; t && row < t->rows; row++)
        if (!slot_read(LIST_ADD(a, slots), a, t, row, p))
            return false;
    return t != NULL;
}

static void look_at(struct sentence_units *u, const struct recording *r, size_t n)
{
    const struct word *w = &r->words.at[u->last[n]];
    if (u->known[n])
        return;
    u->known[n] = true;
    u->tags[n] = (struct unit_set){{0}};
    u->words[n] = word_shape(w);
    u->values[n] = 0;
    unit_set_add(&u->tags[n], w->tag);
    for (const struct entry *e = w->entry; e; e = entry_next(e)) {
        unit_set_add(&u->tags[n], e->tag);
        u->values[n] |= entry_shape(e);
    }
    u->beside[n] = (struct place_set){{0}};
    fits_find(u->fits, w, true, &u->beside[n]);
}

const struct place_set *unit_beside(struct sentence_units *u, const struct recording *r, size_t n)
{
    look_at(u, r, n);
    return &u->beside[n];
}

void units_make(struct sentence_units *u, const struct recording *r, const struct sentence *s,
                const struct fits *fits)
{
    u->fits = fits;
    u->count = 0;
    for (size_t i = s->first; i <= s->last && u->count < SENTENCE_WORDS; i++) {
        if (r->words.at[i].filler)
            continue;
        size_t last = i;
        while (last < s->last && r->words.at[last].tag == TAG_INSIDE)
            last++;
        u->first[u->count] = i;
        u->last[u->count] = last;
        u->known[u->count++] = false;
        i = last;
    }
}

static bool has_text(const token_texts *list, struct text t)
{
    for (size_t i = 0; i < list->count; i++)
        if (text_equal(list->at[i], t))
            return true;
    return false;
}

bool token_fits(const struct token *t, const struct word *w, bool any_reading)
{
    if (unit_set_has(&t->tags, w->tag)
        || (t->word_shapes & word_shape(w) && has_text(&t->words, w->key)))
        return true;
    if (!any_reading && !t->value_shapes)
        return false;
    for (const struct entry *e = w->entry; e; e = any_reading ? entry_next(e) : NULL)
        if ((any_reading && unit_set_has(&t->tags, e->tag))
            || (t->value_shapes & entry_shape(e) && has_text(&t->values, entry_value(e))))
            return true;
    return false;
}

/* token_fits, in any reading, of a unit whose shape refuses most tokens. */
static bool unit_fits(const struct token *t, const struct recording *r, struct sentence_units *u,
                      size_t unit)
{
    look_at(u, r, unit);
    if (unit_set_meets(&t->tags, &u->tags[unit]))
        return true;
    return ((t->word_shapes & u->words[unit]) | (t->value_shapes & u->values[unit]))
           && token_fits(t, &r->words.at[u->last[unit]], true);
}

bool slot_begins(const struct hearing_slot *s, const struct recording *r, struct sentence_units *u,
                 size_t begin)
{
    for (size_t n = 0; n < s->before_count; n++) {
        const struct token *t = &s->before[s->before_count - 1 - n];
        if (n >= begin)
            return n == begin && t->start;
        if (!unit_fits(t, r, u, begin - 1 - n))
            return false;
    }
    return true;
}

/* A comma or a stop behind the word ends what it belongs to, as the sentence's end does. */
bool slot_at_end(const struct recording *r, const struct sentence_units *u, size_t end)
{
    return end >= u->count || r->words.at[u->last[end - 1]].after >= AFTER_COMMA;
}

bool slot_ends(const struct hearing_slot *s, const struct recording *r, struct sentence_units *u,
               size_t end)
{
    for (size_t n = 0; n < s->after_count; n++) {
        const struct token *t = &s->after[n];
        if (t->end && slot_at_end(r, u, end + n))
            return true;
        if (end + n >= u->count || !unit_fits(t, r, u, end + n))
            return false;
    }
    return true;
}
