/* check/said.c
 * SPDX-License-Identifier: MIT */
#include "check/said.h"

/* The sets that a word may begin. A token also takes the whole entry that the word is in. */
static struct place_set sets_from(const struct saying_list *list, const struct recording *r,
                                  size_t i)
{
    struct place_set sets = {{0}};
    fits_find(&list->begins, &r->words.at[i], false, &sets);
    while (r->words.at[i].tag == TAG_INSIDE && i + 1 < r->words.count)
        fits_find(&list->begins, &r->words.at[++i], false, &sets);
    return sets;
}

static void find_places(struct sayings *s, const struct recording *r)
{
    const struct saying_list *list = s->list;
    struct place_set always = {{0}};
    s->places = arena_alloc(r->arena, (list->sets.count + 1) * sizeof *s->places);
    for (size_t n = 0; n < list->sets.count; n++) {
        s->places[n] = arena_alloc(r->arena, (r->words.count / 64 + 1) * sizeof *s->places[n]);
        if (list->sets.at[n].anything)
            place_set_add(&always, n);
    }
    for (size_t i = 0; i < r->words.count; i++) {
        struct place_set sets = sets_from(list, r, i);
        place_set_join(&sets, &always);
        for (int n = place_set_next(&sets, 0); n >= 0; n = place_set_next(&sets, n + 1))
            s->places[n][i / 64] |= (uint64_t) 1 << i % 64;
    }
}

bool listen_for(struct recording *r, const struct saying_list *list, const struct pack *k,
                struct problems *p)
{
    struct sayings *s = arena_alloc(r->arena, sizeof *s);
    if (!list) {
        struct saying_list *own = arena_alloc(r->arena, sizeof *own);
        if (!saying_list_load(own, r->arena, k, p))
            return false;
        list = own;
    }
    s->list = list;
    s->names = arena_alloc(r->arena, SET_NAMES * sizeof *s->names);
    find_places(s, r);
    r->sayings = s;
    return true;
}

/* A look at words up to `last`. `bounded`: with another last word it might find what it does not,
 * or not what it does. */
struct look {
    const struct recording *r;
    size_t last;
    bool bounded;
};

static bool fits(const struct token *t, const struct word *w)
{
    return token_may_fit(t, w) && token_fits(t, w, false);
}

/* Whether a look that ends within the entry of words [i, end] would take one of them. */
static bool fits_within(const struct token *t, const struct recording *r, size_t i, size_t end)
{
    for (i++; i < end; i++)
        if (fits(t, &r->words.at[i]))
            return true;
    return false;
}

/* The word after the one that a token takes, or after the entry that it takes; `i` itself where it
 * does not fit. */
static size_t step_over(const struct token *t, struct look *l, size_t i)
{
    const struct recording *r = l->r;
    size_t end = i;
    if (fits(t, &r->words.at[i]))
        return i + 1;
    while (end < l->last && r->words.at[end].tag == TAG_INSIDE)
        end++;
    l->bounded |= r->words.at[end].tag == TAG_INSIDE || fits_within(t, r, i, end);
    return end > i && fits(t, &r->words.at[end]) ? end + 1 : i;
}

/* Whether a look at word `i` that is no filler and stands for itself would come to nothing. */
static bool is_passed(const struct token *t, const struct word *w)
{
    return w->tag != TAG_INSIDE && !w->filler && !t->end && !token_may_fit(t, w);
}

static size_t said_from(const struct saying *s, struct look *l, size_t n, size_t i);

/* The same for a rest that begins with a gap, before place `n`. */
static size_t said_behind_gap(const struct saying *s, struct look *l, size_t n, size_t i)
{
    const struct token *t = n < s->count ? s->places[n] : NULL;
    for (size_t skip = 0; skip <= GAP_WORDS && i + skip <= l->last; skip++) {
        if (t && is_passed(t, &l->r->words.at[i + skip]))
            continue;
        size_t end = said_from(s, l, n, i + skip);
        if (end)
            return end;
    }
    l->bounded |= i + GAP_WORDS > l->last;
    return 0;
}

/* The word after the saying's rest, from token `n` on; 0 where it is not said at word `i`. The end
 * is that of the look, or of a sentence. */
static size_t said_from(const struct saying *s, struct look *l, size_t n, size_t i)
{
    if (n == s->count)
        return i;
    const struct token *t = s->places[n];
    if (!t)
        return said_behind_gap(s, l, n + 1, i);
    l->bounded |= t->end || i > l->last;
    if (i > l->last)
        return t->end ? i : 0;
    if (t->end && n && l->r->words.at[i - 1].after >= AFTER_STOP)
        return i;
    size_t next = step_over(t, l, i);
    if (next == i && n && l->r->words.at[i].filler)
        return said_from(s, l, n, i + 1); /* "half a teaspoon of, um, hang on" */
    return next > i ? said_from(s, l, n + 1, next) : 0;
}

/* What a row's place is held against before it is looked at: some words, of which it must take one.
 */
struct looks {
    struct unit_set tags;
    uint64_t keys, values; /* bits of text_shape() */
};

static void looks_add(struct looks *looks, const struct word *w)
{
    unit_set_add(&looks->tags, w->tag);
    looks->keys |= word_shape(w);
    looks->values |= w->entry ? entry_shape(w->entry) : 0;
}

/* Word `i`, and those behind it of the entry that it is in, for which step_over looks too; the last
 * of them that is looked at. */
static size_t looks_at(struct looks *looks, const struct recording *r, size_t i, size_t last)
{
    looks_add(looks, &r->words.at[i]);
    while (i < last && r->words.at[i].tag == TAG_INSIDE)
        looks_add(looks, &r->words.at[++i]);
    return i;
}

/* Where the place behind word `i` may be, wherever the look ends: the rest of its entry, fillers,
 * and the entry behind them. */
static struct looks looks_behind(const struct recording *r, size_t i)
{
    struct looks looks = {{{0}}, 0, 0};
    for (bool within = true; ++i < r->words.count;) {
        const struct word *w = &r->words.at[i];
        within = within && r->words.at[i - 1].tag == TAG_INSIDE;
        looks_add(&looks, w);
        if (!within && !w->filler && w->tag != TAG_INSIDE)
            break;
    }
    return looks;
}

/* Whether the place can take one of them; most can not. */
static inline bool may_take(const struct token *t, const struct looks *looks)
{
    return !t || t->end || unit_set_meets(&t->tags, &looks->tags)
           || (t->word_shapes & looks->keys) | (t->value_shapes & looks->values);
}

/* Whether the row's second place, where there is one right behind the first, can take what is said
 * there; `behind` is found when it is first asked for. */
static bool may_go_on(const struct saying *s, const struct recording *r, size_t i,
                      struct looks *behind)
{
    if (s->count < 2 || !s->places[0])
        return true;
    if (unit_set_empty(&behind->tags))
        *behind = looks_behind(r, i);
    return may_take(s->places[1], behind);
}

/* The word after what the set says at word `i`; 0 where it says nothing there. */
static size_t said_at(const struct saying_list *list, const struct saying_set *set, struct look *l,
                      size_t i)
{
    struct looks looks = {{{0}}, 0, 0}, behind = {{{0}}, 0, 0};
    const size_t within = looks_at(&looks, l->r, i, l->last);
    const uint64_t bits = saying_bits(&looks.tags, looks.keys, looks.values);
    const struct saying *rows_end = list->all.at + set->end;
    for (const struct saying *s = list->all.at + set->first; s < rows_end; s++) {
        if (!(s->begins & bits) || !may_take(s->places[0], &looks)
            || !may_go_on(s, l->r, i, &behind))
            continue;
        size_t end = said_from(s, l, 0, i);
        if (end)
            return end;
    }
    l->bounded |= l->r->words.at[within].tag == TAG_INSIDE; /* there is more of the entry */
    return 0;
}

/* The first of the places in words [word, last]; last + 1 where there is none. */
static size_t next_place(const uint64_t *places, size_t word, size_t last)
{
    for (size_t n = word / 64; word <= last; word = ++n * 64) {
        uint64_t rest = places[n] >> word % 64;
        if (rest) {
            word += (size_t) __builtin_ctzll(rest);
            return word <= last ? word : last + 1;
        }
    }
    return last + 1;
}

/* The set's first row. A checker asks by the same few hundred names, a literal or a cell each, time
 * and again: most are known by where they stand. */
static size_t row_of(const struct sayings *sayings, struct text set)
{
    const struct table *t = sayings->list->table;
    struct set_name *known =
        &sayings->names[((uintptr_t) set.at ^ (uintptr_t) set.at >> 8) % SET_NAMES];
    if (known->name.at != set.at || known->name.length != set.length)
        *known = (struct set_name){set, t ? table_find(t, set) : sayings->list->all.count};
    return known->row;
}

bool said_find_set(const struct sayings *sayings, const struct recording *r, struct text set,
                   struct span within, struct span *where)
{
    const struct saying_list *list = sayings->list;
    size_t row = row_of(sayings, set);
    if (row >= list->all.count || span_is_empty(within) || within.last >= r->words.count)
        return false;
    size_t number = list->all.at[row].number;
    uint64_t *places = sayings->places[number];
    for (size_t i = next_place(places, within.first, within.last); i <= within.last;
         i = next_place(places, i + 1, within.last)) {
        struct look look = {r, within.last, false};
        size_t end = said_at(list, &list->sets.at[number], &look, i);
        if (end) {
            *where = (struct span){i, end - 1};
            return true;
        }
        if (!look.bounded)
            places[i / 64] &= ~((uint64_t) 1 << i % 64);
    }
    return false;
}
