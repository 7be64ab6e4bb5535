/* check/saying.c
 * SPDX-License-Identifier: MIT */
#include "check/saying.h"

#define LIST_BYTES ((size_t) 64 << 20)
/* It stands in one block while it needs no more; that of the pack does. */
#define LIST_BLOCK ((size_t) 1 << 20)

/* Tokens by what is written of them: more than half stand in several rows, and one takes a hundred
 * bytes. */
struct known_token {
    struct text written;
    const struct token *token;
};

struct known_tokens {
    struct known_token *slots; /* open addressing, half of them free */
    size_t room;               /* a power of two */
};

static size_t count_places(const struct table *t)
{
    size_t places = 0;
    for (size_t row = 0; row < t->rows; row++)
        places += text_parts(table_cell(t, row, 1), ' ');
    return places;
}

/* What is known stands aside: it goes when the table is read. */
static struct known_tokens know_tokens(struct arena *a, const struct table *t)
{
    struct known_tokens known = {NULL, 64};
    while (known.room < 2 * count_places(t))
        known.room *= 2;
    arena_aside(a);
    known.slots = arena_alloc(a, known.room * sizeof *known.slots);
    arena_back(a);
    return known;
}

/* NULL, with a problem, where it is wrong. */
static const struct token *read_token(struct known_tokens *known, struct arena *a,
                                      struct text written, struct problems *p, struct place at)
{
    size_t i = text_hash(written) & (known->room - 1);
    while (known->slots[i].token && !text_equal(known->slots[i].written, written))
        i = (i + 1) & (known->room - 1);
    if (known->slots[i].token)
        return known->slots[i].token;
    struct token *token = arena_alloc(a, sizeof *token);
    if (!token_read(token, a, written, p, at))
        return NULL;
    known->slots[i] = (struct known_token){written, token};
    return token;
}

static uint64_t bits_of_place(const struct token *t)
{
    return !t || t->end ? UINT64_MAX : saying_bits(&t->tags, t->word_shapes, t->value_shapes);
}

static bool saying_read(struct saying *s, struct known_tokens *known, struct arena *a,
                        const struct table *t, size_t row, struct problems *p)
{
    struct place at = {t->file, t->lines[row], 0};
    struct text rest = table_cell(t, row, 1), part;
    s->set = table_cell(t, row, 0);
    if (text_parts(rest, ' ') > SAYING_TOKENS)
        return problem(p, at, "a pattern has at most %d places", SAYING_TOKENS);
    s->places = arena_alloc(a, text_parts(rest, ' ') * sizeof *s->places);
    while (rest.length && text_part(&rest, ' ', &part)) {
        bool gap = text_is(part, "*");
        const struct token *token = gap ? NULL : read_token(known, a, part, p, at);
        if (!gap && !token)
            return false;
        s->places[s->count++] = token;
    }
    s->begins = s->count ? bits_of_place(s->places[0]) : 0;
    return true;
}

/* A set's rows stand together, since each look for it goes from its first to its last. */
static bool begins_set(const struct table *t, size_t row, struct problems *p)
{
    struct text set = table_cell(t, row, 0);
    bool goes_on = row && text_equal(table_cell(t, row - 1, 0), set);
    return goes_on || table_find(t, set) == row
           || problem(p, (struct place){t->file, t->lines[row], 0},
                      "the rows of the set \"%.*s\" stand in two places; put them together",
                      TEXT(set));
}

/* The row joins the set before it, or begins one. */
static bool join_set(struct saying_list *list, struct arena *a, struct saying *s,
                     struct problems *p, struct place at)
{
    size_t row = list->all.count - 1;
    struct saying_set *set = list->sets.count ? &list->sets.at[list->sets.count - 1] : NULL;
    if (!set || !text_equal(set->name, s->set)) {
        if (list->sets.count == PLACES_MOST)
            return problem(p, at, "there are at most %d sets", PLACES_MOST);
        set = LIST_ADD(a, &list->sets);
        set->name = s->set;
        set->first = row;
    }
    s->number = list->sets.count - 1;
    set->end = row + 1;
    if (!s->count)
        return true;
    if (s->places[0])
        fits_add(&list->begins, a, s->places[0], s->number);
    else
        set->anything = true;
    return true;
}

static bool read_row(struct saying_list *list, struct known_tokens *known, struct arena *a,
                     size_t row, struct problems *p)
{
    const struct table *t = list->table;
    struct saying *s = LIST_ADD(a, &list->all);
    return begins_set(t, row, p) && saying_read(s, known, a, t, row, p)
           && join_set(list, a, s, p, (struct place){t->file, t->lines[row], 0});
}

bool saying_list_load(struct saying_list *list, struct arena *a, const struct pack *k,
                      struct problems *p)
{
    const struct table *t = pack_table(k, "check-words");
    bool good = true;
    list->table = t;
    if (!t)
        return true;
    LIST_RESERVE(a, &list->all, t->rows);
    struct known_tokens known = know_tokens(a, t);
    for (size_t row = 0; good && row < t->rows; row++)
        good = read_row(list, &known, a, row, p);
    arena_drop(a);
    return good;
}

/* The jump of a full arena ends here, and in the next one. */
static struct saying_list *begin(struct arena *memory)
{
    arena_init(memory, LIST_BYTES);
    if (!arena_open(memory))
        return NULL;
    arena_reserve(memory, LIST_BLOCK);
    return arena_alloc(memory, sizeof(struct saying_list));
}

static bool fill(struct saying_list *list, const struct pack *k, struct problems *p)
{
    if (!arena_open(&list->memory))
        return false;
    return saying_list_load(list, &list->memory, k, p);
}

struct saying_list *saying_list_new(const struct pack *k, struct problems *p)
{
    struct arena memory;
    struct saying_list *list = begin(&memory);
    if (!list)
        return NULL;
    list->memory = memory;
    if (fill(list, k, p))
        return list;
    saying_list_free(list);
    return NULL;
}

struct saying_list *saying_list_open(const struct ready *image, const struct pack *k)
{
    struct saying_list *list = ready_open(image, k);
    if (list)
        list->table = pack_table(k, "check-words");
    return list;
}

void saying_list_free(struct saying_list *list)
{
    if (!list)
        return;
    struct arena memory = list->memory; /* which it stands in itself */
    arena_release(&memory);
}
