/* check/said.c
 * SPDX-License-Identifier: MIT */
#include "check/said.h"

static bool saying_read(struct saying *s, struct arena *a, const struct table *t, size_t row,
                        struct problems *p)
{
    struct place at = {t->file, t->lines[row], 0};
    struct text rest = table_cell(t, row, 1), part;
    s->set = table_cell(t, row, 0);
    while (rest.length && text_part(&rest, ' ', &part)) {
        if (s->count == SAYING_TOKENS)
            return problem(p, at, "a pattern has at most %d places", SAYING_TOKENS);
        s->gap[s->count] = text_is(part, "*");
        if (!s->gap[s->count] && !token_read(&s->tokens[s->count], a, part, p, at))
            return false;
        s->count++;
    }
    return true;
}

/* A set's rows stand together, since each look for it goes from its first to its last. */
static bool begins_set(const struct table *t, size_t row, struct problems *p)
{
    struct text set = table_cell(t, row, 0);
    if (!row || text_equal(table_cell(t, row - 1, 0), set))
        return true;
    for (size_t before = 0; before < row; before++)
        if (text_equal(table_cell(t, before, 0), set))
            return problem(p, (struct place){t->file, t->lines[row], 0},
                           "the rows of the set \"%.*s\" stand in two places; put them together",
                           TEXT(set));
    return true;
}

/* The row joins the set before it, or begins one. */
static void join_set(struct sayings *list, struct arena *a, const struct saying *s)
{
    size_t row = list->all.count - 1;
    struct saying_set *set = list->sets.count ? &list->sets.at[list->sets.count - 1] : NULL;
    if (!set || !text_equal(set->name, s->set)) {
        set = LIST_ADD(a, &list->sets);
        *set = (struct saying_set){.name = s->set, .first = row};
    }
    set->end = row + 1;
    set->anything |= s->gap[0];
    unit_set_join(&set->begins.tags, &s->tokens[0].tags);
    set->begins.word_shapes |= s->tokens[0].word_shapes;
    set->begins.value_shapes |= s->tokens[0].value_shapes;
}

/* The word after the one that a token takes, or after the entry that it takes; `i` itself where it
 * does not fit. */
static size_t step_over(const struct token *t, const struct recording *r, size_t i, size_t last)
{
    size_t end = i;
    if (token_fits(t, &r->words.at[i], false))
        return i + 1;
    while (end < last && r->words.at[end].tag == TAG_INSIDE)
        end++;
    return end > i && token_fits(t, &r->words.at[end], false) ? end + 1 : i;
}

static void set_bit(uint64_t *bits, size_t n)
{
    bits[n / 64] |= (uint64_t) 1 << (n % 64);
}

static bool has_bit(const uint64_t *bits, size_t n)
{
    return bits[n / 64] >> (n % 64) & 1;
}

/* Whether the shapes of the word, or of its entry's last one, allow the token at all; most do not.
 */
static bool may_fit(const struct token *t, const struct recording *r, const size_t ends[2],
                    const uint64_t shapes[2][2])
{
    for (size_t n = 0; n < 2; n++)
        if (unit_set_has(&t->tags, r->words.at[ends[n]].tag)
            || (t->word_shapes & shapes[n][0]) | (t->value_shapes & shapes[n][1]))
            return true;
    return false;
}

static size_t entry_last(const struct recording *r, size_t i)
{
    while (i + 1 < r->words.count && r->words.at[i].tag == TAG_INSIDE)
        i++;
    return i;
}

/* The bits of a word that was not met before. */
static uint64_t *look_at_word(const struct sayings *list, const struct recording *r, size_t i)
{
    const size_t last = r->words.count - 1, ends[2] = {i, entry_last(r, i)};
    uint64_t *bits = arena_alloc(r->arena, (list->row_words + list->set_words) * sizeof *bits),
             shapes[2][2];
    for (size_t n = 0; n < 2; n++) {
        const struct word *w = &r->words.at[ends[n]];
        shapes[n][0] = text_shape(w->key);
        shapes[n][1] = w->entry ? text_shape(entry_value(w->entry)) : 0;
    }
    for (size_t n = 0; n < list->sets.count; n++) {
        const struct saying_set *set = &list->sets.at[n];
        bool fits = may_fit(&set->begins, r, ends, (const uint64_t(*)[2]) shapes);
        for (size_t row = set->first; row < set->end && (fits || set->anything); row++) {
            const struct saying *said = &list->all.at[row];
            const struct token *t = &said->tokens[0];
            if (!said->gap[0]
                && !(may_fit(t, r, ends, (const uint64_t(*)[2]) shapes)
                     && step_over(t, r, i, last) > i))
                continue;
            set_bit(bits, row);
            set_bit(bits + list->row_words, n);
        }
    }
    return bits;
}

#define WORD_BUCKETS 1024

static void list_words(struct sayings *list, struct arena *a, const struct recording *r)
{
    struct saying_word **buckets = arena_alloc(a, WORD_BUCKETS * sizeof(struct saying_word *));
    list->row_words = list->all.count / 64 + 1;
    list->set_words = list->sets.count / 64 + 1;
    list->opens = arena_alloc(a, (r->words.count + 1) * sizeof *list->opens);
    for (size_t i = 0; i < r->words.count; i++) {
        const struct word *w = &r->words.at[i];
        const struct entry *whole = r->words.at[entry_last(r, i)].entry;
        struct saying_word **at = &buckets[text_hash(w->key) % WORD_BUCKETS];
        while (*at
               && ((*at)->tag != w->tag || (*at)->entry != w->entry || (*at)->whole != whole
                   || !text_equal((*at)->key, w->key)))
            at = &(*at)->next;
        if (!*at) {
            *at = arena_alloc(a, sizeof **at);
            **at = (struct saying_word){w->key, w->entry, whole, w->tag, look_at_word(list, r, i),
                                        NULL};
        }
        list->opens[i] = (*at)->bits;
    }
}

bool sayings_load(struct sayings *list, struct arena *a, const struct pack *k,
                  const struct recording *r, struct problems *p)
{
    const struct table *t = pack_table(k, "check-words");
    if (t)
        LIST_RESERVE(a, &list->all, t->rows);
    for (size_t row = 0; t && row < t->rows; row++) {
        struct saying *s = LIST_ADD(a, &list->all);
        if (!begins_set(t, row, p) || !saying_read(s, a, t, row, p))
            return false;
        join_set(list, a, s);
    }
    list_words(list, a, r);
    return true;
}

/* The word after the saying's rest, from token `n` on; 0 where it is not said at word `i`. */
static size_t said_from(const struct saying *s, const struct recording *r, size_t n, size_t i,
                        size_t last)
{
    if (n == s->count)
        return i;
    if (s->gap[n]) {
        for (size_t skip = 0; skip <= GAP_WORDS && i + skip <= last; skip++) {
            size_t end = said_from(s, r, n + 1, i + skip, last);
            if (end)
                return end;
        }
        return 0;
    }
    if (i > last)
        return s->tokens[n].end ? i : 0;
    size_t next = step_over(&s->tokens[n], r, i, last);
    if (next == i && n && r->words.at[i].filler)
        return said_from(s, r, n, i + 1, last); /* "half a teaspoon of, um, hang on" */
    return next > i ? said_from(s, r, n + 1, next, last) : 0;
}

static const struct saying_set *set_named(const struct sayings *list, const char *name)
{
    const struct text set = text_from(name);
    for (size_t i = 0; i < list->sets.count; i++)
        if (text_equal(list->sets.at[i].name, set))
            return &list->sets.at[i];
    return NULL;
}

/* The word after what the set says at word `i`; 0 where it says nothing there. */
static size_t said_at(const struct sayings *list, const struct saying_set *set,
                      const struct recording *r, size_t i, size_t last)
{
    for (size_t n = set->first; n < set->end; n++) {
        size_t end = has_bit(list->opens[i], n) ? said_from(&list->all.at[n], r, 0, i, last) : 0;
        if (end)
            return end;
    }
    return 0;
}

bool said_find(const struct sayings *list, const struct recording *r, const char *set,
               struct span within, struct span *where)
{
    const struct saying_set *s = set_named(list, set);
    if (!s || within.first > within.last || within.last >= r->words.count)
        return false;
    const size_t n = (size_t) (s - list->sets.at);
    for (size_t i = within.first; i <= within.last; i++) {
        size_t end =
            has_bit(list->opens[i] + list->row_words, n) ? said_at(list, s, r, i, within.last) : 0;
        if (end) {
            *where = (struct span){i, end - 1};
            return true;
        }
    }
    return false;
}
