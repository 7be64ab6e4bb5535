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

bool sayings_load(saying_list *list, struct arena *a, const struct pack *k, struct problems *p)
{
    const struct table *t = pack_table(k, "check-words");
    if (t)
        LIST_RESERVE(a, list, t->rows);
    for (size_t row = 0; t && row < t->rows; row++)
        if (!saying_read(LIST_ADD(a, list), a, t, row, p))
            return false;
    return true;
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

/* What a saying may begin with at a word. */
struct begin {
    const struct word *word;
    uint64_t key, value; /* text_shape() of its key and of what it is read as */
};

static struct begin begin_at(const struct recording *r, size_t i)
{
    const struct word *w = &r->words.at[i];
    return (struct begin){w, text_shape(w->key), w->entry ? text_shape(entry_value(w->entry)) : 0};
}

/* Whether the saying's first place can fit there, or an entry that begins there; most do not. */
static bool may_begin(const struct saying *s, const struct begin *b)
{
    const struct token *t = &s->tokens[0];
    return s->gap[0] || b->word->tag == TAG_INSIDE || unit_set_has(&t->tags, b->word->tag)
           || (t->word_shapes & b->key) | (t->value_shapes & b->value);
}

/* The sayings of a set stand near each other; from the first to the one after the last. */
static size_t set_begin(const saying_list *list, struct text name)
{
    size_t n = 0;
    while (n < list->count && !text_equal(list->at[n].set, name))
        n++;
    return n;
}

static size_t set_end(const saying_list *list, struct text name)
{
    size_t n = list->count;
    while (n && !text_equal(list->at[n - 1].set, name))
        n--;
    return n;
}

bool said_find(const saying_list *list, const struct recording *r, const char *set,
               struct span within, struct span *where)
{
    struct text name = text_from(set);
    size_t first = set_begin(list, name), last = set_end(list, name);
    if (within.first > within.last || within.last >= r->words.count)
        return false;
    for (size_t i = within.first; i <= within.last; i++) {
        struct begin begin = begin_at(r, i);
        for (size_t n = first; n < last; n++) {
            const struct saying *s = &list->at[n];
            size_t end = may_begin(s, &begin) && s->count && text_equal(s->set, name)
                             ? said_from(s, r, 0, i, within.last)
                             : 0;
            if (end) {
                *where = (struct span){i, end - 1};
                return true;
            }
        }
    }
    return false;
}
