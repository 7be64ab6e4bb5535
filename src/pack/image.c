/* pack/image.c: what the loader has read -> one block. Sections first, whose sizes are known; then
 * the texts, each once, its length before it, in the order in which they are first asked for.
 * SPDX-License-Identifier: MIT */
#include "pack/image.h"

#include <stdlib.h>

#include "pack/load.h"

#define ALIGN 8

struct maker {
    struct loader *l;
    char *block; /* the sections */
    size_t used;
    size_t sections;    /* bytes of all of them; 0 while they are only counted */
    struct index texts; /* to their place in `pool`, + 1 */
    char *pool;
    size_t pool_length, pool_room;
    heard_list heard;
};

/* Room for `count` things; NULL in the first round, which only counts bytes. */
static void *section(struct maker *m, struct section *s, size_t count, size_t size)
{
    size_t at = m->used;
    if (count > (PACK_BYTES - at) / size)
        longjmp(m->l->arena.full, 1);
    m->used = (at + count * size + ALIGN - 1) / ALIGN * ALIGN;
    *s = (struct section){(uint32_t) at, (uint32_t) count};
    return m->sections ? m->block + at : NULL;
}

/* ---- texts */

static void grow_pool(struct maker *m, size_t more)
{
    if (m->pool_length + more <= m->pool_room)
        return;
    size_t room = (m->pool_length + more) * 2;
    char *pool = arena_alloc(&m->l->arena, room);
    if (m->pool_length)
        memcpy(pool, m->pool, m->pool_length);
    m->pool = pool;
    m->pool_room = room;
}

static void pool_byte(struct maker *m, unsigned char byte)
{
    m->pool[m->pool_length++] = (char) byte;
}

/* As ref_text() reads it. */
static void pool_length(struct maker *m, uint32_t length)
{
    if (length >= TEXT_LONG) {
        memcpy(m->pool + m->pool_length, &length, sizeof length);
        m->pool_length += sizeof length;
    }
    pool_byte(m, length < TEXT_LONG ? (unsigned char) length : TEXT_LONG);
}

static size_t pooled(struct maker *m, struct text t)
{
    struct key *key = index_put(&m->l->arena, &m->texts, t);
    if (!key->first) {
        grow_pool(m, t.length + sizeof(uint32_t) + 2);
        pool_length(m, (uint32_t) t.length);
        key->first = (uint32_t) m->pool_length + 1;
        memcpy(m->pool + m->pool_length, t.at, t.length);
        m->pool_length += t.length;
        pool_byte(m, '\0');
    }
    return key->first - 1;
}

static void put_text(struct maker *m, struct ref *to, struct text t)
{
    size_t from = (size_t) ((char *) to - m->block);
    size_t at = m->sections + pooled(m, t.at ? t : TEXT_EMPTY);
    if (at > PACK_BYTES)
        longjmp(m->l->arena.full, 1);
    to->at = (int32_t) ((ptrdiff_t) at - (ptrdiff_t) from);
}

/* ---- entries and their words */

static void put_entry(struct maker *m, struct entry *e, const struct listing *from)
{
    e->number = from->number;
    e->marks = from->marks;
    put_text(m, &e->words_at, from->words);
    put_text(m, &e->value_at, from->value);
    put_text(m, &e->shown_at, from->shown);
    put_text(m, &e->file_at, text_from(from->file));
    const struct listing *first = m->l->entries.at;
    e->next = from->next ? (int32_t) (first + from->next - 1 - from) : 0;
    e->line = from->line;
    e->tag = from->tag;
    e->words_count = from->words_count;
    e->value_shape = text_shape_number(from->value.at ? from->value : TEXT_EMPTY);
}

static void put_entries(struct maker *m, struct image *out)
{
    size_t count = m->l->entries.count;
    struct entry *to = section(m, &out->entries, count, sizeof *to);
    for (size_t i = 0; to && i < count; i++)
        put_entry(m, &to[i], &m->l->entries.at[i]);
}

static void put_index(struct maker *m, struct section *s, const struct index *x)
{
    struct image_key *to = section(m, s, x->room, sizeof *to);
    for (size_t i = 0; to && i < x->room; i++) {
        const struct key *from = &x->slots[i];
        if (!from->at)
            continue;
        put_text(m, &to[i].text, (struct text){from->at, from->length});
        to[i].hash = from->hash;
        to[i].first = from->first;
        to[i].more = from->more;
    }
}

/* Every word of the entries of several words, told to `each` in order. */
static void each_inner(struct maker *m, struct index *x,
                       void (*each)(struct key *, uint32_t, uint32_t *), uint32_t *list)
{
    for (size_t i = 0; i < m->l->entries.count; i++) {
        const struct listing *e = &m->l->entries.at[i];
        struct text rest = e->words, word;
        while (e->words_count > 1 && text_part(&rest, ' ', &word))
            each(index_put(&m->l->arena, x, word), (uint32_t) i, list);
    }
}

static void count_inner(struct key *key, uint32_t entry, uint32_t *list)
{
    (void) entry, (void) list;
    key->more++;
}

static void list_inner(struct key *key, uint32_t entry, uint32_t *list)
{
    list[key->first++] = entry;
}

/* Counts how many entries each word has, then where its part of the list begins, then fills it in;
 * that leaves `first` at the part's end. */
static void put_inner(struct maker *m, struct image *out)
{
    struct index x = {0};
    uint32_t total = 0;
    each_inner(m, &x, count_inner, NULL);
    for (size_t i = 0; i < x.room; i++) {
        x.slots[i].first = total;
        total += x.slots[i].more;
    }
    uint32_t *list = section(m, &out->inner_entries, total, sizeof *list);
    if (list)
        each_inner(m, &x, list_inner, list);
    for (size_t i = 0; list && i < x.room; i++)
        x.slots[i].first -= x.slots[i].more;
    put_index(m, &out->inner, &x);
}

/* Where each tag's part of the list begins; at the end, how long the list is. */
static void count_tags(const heard_list *heard, uint32_t begins[TAG_CODES + 1])
{
    for (size_t i = 0; i < heard->count; i++)
        begins[heard->at[i].tag + 1]++;
    for (size_t tag = 0; tag < TAG_CODES; tag++)
        begins[tag + 1] += begins[tag];
}

static void put_pronounced(struct maker *m, struct image *out)
{
    uint32_t begins[TAG_CODES + 1] = {0};
    struct pronounced *to = section(m, &out->pronounced, m->heard.count, sizeof *to);
    uint32_t *tags = section(m, &out->of_tag, TAG_CODES + 1, sizeof *tags);
    count_tags(&m->heard, begins);
    if (tags)
        memcpy(tags, begins, sizeof begins);
    for (size_t i = 0; to && i < m->heard.count; i++) {
        const struct heard *from = &m->heard.at[i];
        struct pronounced *p = &to[begins[from->tag]++];
        p->letters = sound_letters(from->sounds);
        put_text(m, &p->sounds, from->sounds);
        p->entry = from->entry;
        p->tag = from->tag;
    }
}

/* ---- tables */

static uint32_t put_texts(struct maker *m, const struct text *from, size_t count)
{
    struct section s;
    struct ref *to = section(m, &s, count, sizeof *to);
    for (size_t i = 0; to && i < count; i++)
        put_text(m, &to[i], from[i]);
    return s.at;
}

static const struct text *row_at(const struct listed_table *t, size_t row)
{
    return &t->cells[row * t->columns];
}

static bool begin_alike(const struct listed_table *t, size_t a, size_t b, size_t cells)
{
    return text_equal(row_at(t, a)[0], row_at(t, b)[0])
           && (cells < 2 || text_equal(row_at(t, a)[1], row_at(t, b)[1]));
}

static uint32_t hash_of_row(const struct listed_table *t, size_t row, size_t cells)
{
    const struct text *at = row_at(t, row);
    return cells < 2 ? key_hash(at[0]) : pair_hash(at[0], at[1]);
}

/* The slot of the row, by its first one or two cells, or the free one where it would go. */
static uint32_t *row_slot(uint32_t *slots, size_t room, const struct listed_table *t, size_t row,
                          size_t cells)
{
    size_t i = hash_of_row(t, row, cells) & (room - 1);
    while (slots[i] && !begin_alike(t, slots[i] - 1, row, cells))
        i = (i + 1) & (room - 1);
    return &slots[i];
}

/* The first row of each first cell, or of each two. Half full at most. */
static struct section put_row_keys(struct maker *m, const struct listed_table *t, size_t cells)
{
    struct section s;
    size_t room = 8;
    while (room < t->rows * 2)
        room *= 2;
    uint32_t *to = section(m, &s, room, sizeof *to);
    for (size_t row = 0; to && row < t->rows; row++) {
        uint32_t *slot = row_slot(to, room, t, row, cells);
        *slot = *slot ? *slot : (uint32_t) row + 1;
    }
    return s;
}

/* From the last row on, so that each finds the one behind it; how many have one. */
static size_t link_rows(uint32_t *nexts, uint32_t *slots, size_t room, const struct listed_table *t)
{
    size_t linked = 0;
    for (size_t row = t->rows; row-- > 0;) {
        uint32_t *slot = row_slot(slots, room, t, row, 1);
        nexts[row] = *slot;
        linked += *slot != 0;
        *slot = (uint32_t) row + 1;
    }
    return linked;
}

/* `*linked`: how many rows have another one behind them. */
static struct section put_nexts(struct maker *m, const struct listed_table *t, size_t *linked)
{
    struct section s = {0};
    size_t room = 8;
    while (room < t->rows * 2)
        room *= 2;
    uint32_t *nexts = arena_alloc(&m->l->arena, (t->rows + 1) * sizeof *nexts);
    uint32_t *slots = arena_alloc(&m->l->arena, room * sizeof *slots);
    *linked = link_rows(nexts, slots, room, t);
    if (!*linked)
        return s;
    uint32_t *to = section(m, &s, t->rows, sizeof *to);
    if (to)
        memcpy(to, nexts, t->rows * sizeof *to);
    return s;
}

static uint32_t put_lines(struct maker *m, const struct listed_table *t)
{
    struct section s;
    unsigned *to = section(m, &s, t->rows, sizeof *to);
    if (to && t->rows)
        memcpy(to, t->lines, t->rows * sizeof *to);
    return s.at;
}

static void put_table(struct maker *m, struct image_table *to, const struct listed_table *t)
{
    size_t linked;
    struct image_table made = {.columns = (uint32_t) t->columns, .rows = (uint32_t) t->rows};
    made.heads = put_texts(m, t->heads, t->columns);
    made.cells = put_texts(m, t->cells, t->rows * t->columns);
    made.lines = put_lines(m, t);
    made.keys = put_row_keys(m, t, 1);
    made.nexts = put_nexts(m, t, &linked);
    if (linked * 2 >= t->rows && t->columns > 2) /* else the links lead there soon */
        made.pairs = put_row_keys(m, t, 2);
    if (!to)
        return;
    *to = made;
    put_text(m, &to->name, t->name);
    put_text(m, &to->file, text_from(t->file));
}

static void put_tables(struct maker *m, struct image *out)
{
    size_t count = m->l->tables.count;
    struct image_table *to = section(m, &out->tables, count, sizeof *to);
    for (size_t i = 0; i < count; i++)
        put_table(m, to ? &to[i] : NULL, &m->l->tables.at[i]);
}

/* ---- rules */

static uint32_t put_examples(struct maker *m, const struct rule_node *n)
{
    struct section s;
    struct example *to = section(m, &s, n->examples.count, sizeof *to);
    for (size_t i = 0; to && i < n->examples.count; i++) {
        put_text(m, &to[i].words, n->examples.at[i].words);
        put_text(m, &to[i].expected, n->examples.at[i].expected);
        to[i].line = n->examples.at[i].line;
    }
    return s.at;
}

/* Copied as it is, since the gaps between its fields are 0 in the arena and so are in the block. */
static void put_rule(struct maker *m, struct image_rule *to, const struct rule_node *n,
                     size_t number)
{
    uint32_t examples = put_examples(m, n);
    if (!to)
        return;
    memcpy(&to->rule, &n->rule, sizeof to->rule);
    to->rule.name = to->rule.file = to->rule.pattern = NULL;
    to->rule.option = to->rule.sieve = (struct text){NULL, 0};
    to->rule.number = (unsigned) number;
    to->rule.ex_count = n->examples.count;
    to->examples = examples;
    put_text(m, &to->name, text_from(n->rule.name));
    put_text(m, &to->file, text_from(n->rule.file));
    put_text(m, &to->pattern, text_from(n->rule.pattern));
    put_text(m, &to->option, n->rule.option);
    put_text(m, &to->sieve, n->rule.sieve);
}

static void put_rules(struct maker *m, struct image *out)
{
    size_t count = 0, done = 0;
    for (const struct rule_node *n = m->l->first_rule; n; n = n->next)
        count += !n->refused;
    struct image_rule *to = section(m, &out->rules, count, sizeof *to);
    for (int stage = 0; stage < STAGE_COUNT; stage++)
        for (const struct rule_node *n = m->l->first_rule; n; n = n->next)
            if (!n->refused && (int) n->rule.stage == stage) {
                put_rule(m, to ? &to[done] : NULL, n, done);
                done++;
            }
}

/* ---- the whole */

static void put_all(struct maker *m)
{
    struct section self;
    struct image none = {0}, *out = section(m, &self, 1, sizeof *out);
    out = out ? out : &none;
    put_entries(m, out);
    put_index(m, &out->words, &m->l->words);
    put_inner(m, out);
    put_pronounced(m, out);
    put_tables(m, out);
    put_rules(m, out);
}

void *image_make(struct loader *l, heard_list heard)
{
    struct maker m = {.l = l, .heard = heard};
    put_all(&m);
    m.sections = m.used;
    m.used = 0;
    m.block = arena_alloc(&l->arena, m.sections);
    put_all(&m);
    void *whole = malloc(m.sections + m.pool_length);
    if (!whole)
        longjmp(l->arena.full, 1);
    ((struct image *) (void *) m.block)->bytes = (uint32_t) (m.sections + m.pool_length);
    memcpy(whole, m.block, m.sections);
    memcpy((char *) whole + m.sections, m.pool, m.pool_length);
    return whole;
}
