/* check/vague.c: "some", "a bit of", "more": amounts that no reader can measure.
 * SPDX-License-Identifier: MIT */
#include "check/again.h"
#include "check/unmeasured.h"
#include "match/capture.h"

/* "With a bit of the syrup over", "that bit of cheese I kept": a part of what the dish has already.
 */
#define KEPT_WORDS 4
static bool is_share(const struct checker *c, const struct ingredient *line)
{
    struct span where, behind = {line->id, line->id + KEPT_WORDS};
    if (behind.last < c->r->words.count
        && said_find(&c->sayings, c->r, "kept_share", behind, &where)
        && where.first == behind.first)
        return true;
    return line->words.first < line->id
           && span_has_tag(c->r, (struct span){line->words.first, line->id - 1}, TAG_THE)
           && (amount_elsewhere(c->dish, line) || known_elsewhere(c, line)
               || (line->entry && line->entry->marks & MARK_OF(generic)));
}

/* "Serves four with some crusty bread", "two thighs each, and a spoonful of potatoes". */
static bool is_serving(const struct checker *c, const struct ingredient *line)
{
    if (line->entry && line->entry->marks & MARK_OF(aside))
        return said_with(c, "states_yield", line->words);
    const struct sentence *s = sentence_of(c->r, line->words.first);
    return s && amount_elsewhere(c->dish, line) && s->first < line->words.first
           && span_has_tag(c->r, (struct span){s->first, line->words.first}, TAG_EACH);
}

bool vague_matters(const struct ingredient *line)
{
    return line->entry && line->entry->marks & MARK_OF(leavening);
}

/* "A sauce with a lot of spice to it": the spices themselves are named beside it. */
static bool all_spices(const struct ingredient *line)
{
    const uint64_t both = MARK_OF(generic) | MARK_OF(spice);
    return line->entry && (line->entry->marks & both) == both;
}

/* "A little pinch" is a measure, as cooks use it; "a spoon of honey. Tea or table? Table" is told.
 */
static bool sized(const struct checker *c, const struct ingredient *line)
{
    struct span where, said = {line->words.first, line->id};
    return said.first < said.last
           && (said_find(&c->sayings, c->r, "pinches", said, &where)
               || (said_find(&c->sayings, c->r, "spoons", said, &where) && spoon_told(c, said)));
}

/* "A knob of butter, thirty grams or so": right behind the food, and no other food follows. */
static bool told_next(const struct checker *c, const struct ingredient *line)
{
    const struct sentence *s = food_word(c, line) ? sentence_of(c->r, line->id) : NULL;
    struct matches amounts = matches_of(c->r, s, KIND_OF(amount));
    for (const struct match *m; s && (m = matches_next(&amounts));) {
        const struct word *last = &c->r->words.at[m->words.last];
        struct said_amount said;
        if (m->words.first != line->id + 1)
            continue;
        read_amount(c->r, s, m, &said);
        if (said.amount.known && !said.vague && said.amount.unit.length)
            return last->after >= AFTER_COMMA || (m->words.last < s->last && last[1].tag == TAG_OR);
    }
    return false;
}

/* "Some carrots in there, eight of them": told behind, and nothing is done between. */
#define TOLD_WORDS 9
static bool told_after(const struct checker *c, const struct ingredient *line)
{
    if (told_next(c, line))
        return true;
    if (!food_word(c, line) || !amount_elsewhere(c->dish, line) || !amount_behind(c, line))
        return false;
    for (size_t i = line->id + 1; i <= line->id + TOLD_WORDS && i < c->r->words.count; i++) {
        if (c->r->words.at[i].tag == TAG_ACTION)
            return false;
        if (c->r->words.at[i].after >= AFTER_STOP)
            break;
    }
    return true;
}

/* "That's a lot of oil", "some blueberries if you've got them": a judgement, or as much as there
 * is.
 */
#define AS_YOU_WORDS 8
bool no_measure(const struct checker *c, const struct ingredient *line)
{
    struct span where, behind = {line->id, line->id + AS_YOU_WORDS},
                       from = {line->words.first > 2 ? line->words.first - 2 : 0, line->words.last};
    if (behind.last > c->dish->words.last)
        behind.last = c->dish->words.last;
    return said_find(&c->sayings, c->r, "judges", from, &where)
           || said_find(&c->sayings, c->r, "as_you_have", behind, &where);
}

/* "A lump of bicarb tastes of soap", after a teaspoon of it went in, is talk. */
bool lacks_measure(const struct checker *c, const struct ingredient *line)
{
    return !(line->to_taste && !line->vague) && !said_with(c, "to_taste", line->words)
           && !is_share(c, line) && !no_measure(c, line)
           && !said_with(c, "served_beside", line->words) && !all_spices(line)
           && !is_serving(c, line) && !sized(c, line) && !told_after(c, line)
           && !(vague_matters(line) && amount_elsewhere(c->dish, line))
           && !(food_word(c, line)
                && stands_behind(c, "said_so", (struct span){line->words.first, line->id}))
           && !said_with(c, "boiled_in", line->words);
}

/* The words of a vague amount of the food, wherever in the dish: "and some black pepper", after a
 * run-down that named the pepper only. False when there are none. */
static bool vague_said(const struct checker *c, const struct ingredient *line, struct span *where)
{
    struct matches lines = matches_among(c->r, c->dish->words, KIND_OF(line));
    for (const struct match *m; (m = matches_next(&lines));) {
        struct said_amount said;
        const struct entry *e = match_entry(c->r, m, SLOT_food);
        if (!e || !in_dish(c, m->words.first)
            || !foods_alike(entry_value(e), entry_shown(e), line->kind, line->food))
            continue;
        line_amount(c->r, sentence_of(c->r, m->words.first), m, &said);
        *where = m->words;
        if (said.vague)
            return true;
    }
    return false;
}

bool vague_more(const struct checker *c, const struct ingredient *line)
{
    const struct word *w = food_word(c, line);
    return w && !line->amount.known && !line->vague && line->words.first < line->id
           && span_has_tag(c->r, (struct span){line->words.first, line->id}, TAG_MORE);
}

bool is_vague(const struct checker *c, const struct ingredient *line, struct span *where)
{
    *where = (struct span){line->id ? line->id - 1 : 0, line->id};
    return said_find(&c->sayings, c->r, "vague_bare", *where, where) || vague_said(c, line, where)
           || vague_behind(c, line, where);
}
