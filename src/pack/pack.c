/* pack/pack.c: what can be looked up in a pack.
 * SPDX-License-Identifier: MIT */
#include <stdlib.h>

#include "base/pages.h"
#include "pack/image.h"

struct pack {
    const struct image *image;
    void *owned; /* the image; NULL: it is const data of the program */
    const struct rule *stages[STAGE_COUNT];
    size_t stage_counts[STAGE_COUNT];
    struct table *tables;
    uint32_t *names;     /* open addressing: 1 + the table of a name; 0: free */
    size_t names_room;   /* a power of two */
    struct rule rules[]; /* the tables stand behind them, and the names behind those */
};

/* What stands so many bytes from the block's begin. */
static const void *image_at(const struct image *m, uint32_t at)
{
    return (const char *) m + at;
}

static struct table open_table(const struct image *m, const struct image_table *t)
{
    return (struct table){.name = ref_text(&t->name),
                          .file = ref_text(&t->file).at,
                          .columns = t->columns,
                          .rows = t->rows,
                          .heads = image_at(m, t->heads),
                          .cells = image_at(m, t->cells),
                          .lines = image_at(m, t->lines),
                          .keys = image_at(m, t->keys.at),
                          .keys_room = t->keys.count,
                          .pairs = image_at(m, t->pairs.at),
                          .pairs_room = t->pairs.count,
                          .nexts = t->nexts.count ? image_at(m, t->nexts.at) : NULL};
}

static struct rule open_rule(const struct image *m, const struct image_rule *r)
{
    struct rule rule = r->rule;
    rule.name = ref_text(&r->name).at;
    rule.file = ref_text(&r->file).at;
    rule.pattern = ref_text(&r->pattern).at;
    rule.option = ref_text(&r->option);
    rule.sieve = ref_text(&r->sieve);
    rule.codes = ref_text(&r->codes);
    rule.ex = image_at(m, r->examples);
    return rule;
}

static void open_stages(struct pack *k)
{
    const struct rule *next = k->rules;
    for (size_t i = 0; i < k->image->rules.count; i++)
        k->stage_counts[k->rules[i].stage]++;
    for (size_t stage = 0; stage < STAGE_COUNT; stage++) {
        k->stages[stage] = next;
        next += k->stage_counts[stage];
    }
}

/* The slot of the table's name, or the free one where it would go. */
static uint32_t *name_slot(const struct pack *k, struct text name)
{
    size_t i = text_shape_number(name) * (size_t) 2 & (k->names_room - 1); /* they are few */
    while (k->names[i] && !text_equal(k->tables[k->names[i] - 1].name, name))
        i = (i + 1) & (k->names_room - 1);
    return &k->names[i];
}

static void open_tables(struct pack *k)
{
    const struct image_table *tables = image_at(k->image, k->image->tables.at);
    for (size_t i = 0; i < k->image->tables.count; i++) {
        k->tables[i] = open_table(k->image, &tables[i]);
        *name_slot(k, k->tables[i].name) = (uint32_t) i + 1;
    }
}

/* A pack with nothing in it but room; NULL: no memory. */
static struct pack *pack_room(size_t rules, size_t tables)
{
    size_t names = 8;
    while (names < tables * 2)
        names *= 2;
    struct pack *k = calloc(1, sizeof *k + rules * sizeof(struct rule)
                                   + tables * sizeof(struct table) + names * sizeof(uint32_t));
    if (!k)
        return NULL;
    k->tables = (struct table *) (void *) (k->rules + rules);
    k->names = (uint32_t *) (void *) (k->tables + tables);
    k->names_room = names;
    return k;
}

struct pack *pack_open(const void *image, void *owned)
{
    const struct image *m = image;
    const struct image_rule *rules = image_at(m, m->rules.at);
    struct pack *k = pack_room(m->rules.count, m->tables.count);
    if (!k)
        return NULL;
    k->image = m;
    k->owned = owned;
    for (size_t i = 0; i < m->rules.count; i++)
        k->rules[i] = open_rule(m, &rules[i]);
    open_tables(k);
    open_stages(k);
    return k;
}

void pack_free(struct pack *k)
{
    if (k)
        free(k->owned);
    free(k);
}

void pack_forget(const struct pack *k)
{
    if (!k->owned)
        pages_forget(k->image, k->image->bytes);
}

struct text pack_bytes(const struct pack *k)
{
    return (struct text){(const char *) k->image, k->image->bytes};
}

/* ---- words */

uint32_t key_hash(struct text t)
{
    return (uint32_t) text_hash(t);
}

uint32_t pair_hash(struct text a, struct text b)
{
    return key_hash(a) * 31 + key_hash(b);
}

static const struct image_key *find_key(const struct image *m, struct section s, struct text t)
{
    const struct image_key *keys = image_at(m, s.at);
    uint32_t hash = key_hash(t);
    if (!t.length)
        return NULL;
    for (size_t i = slot_first(hash, s.count); keys[i].text.at; i = slot_next(i, s.count))
        if (keys[i].hash == hash && text_equal(ref_text(&keys[i].text), t))
            return &keys[i];
    return NULL;
}

/* What a slot's number stands for. */
static struct text word_text(const struct image *m, size_t number)
{
    const struct entry *entries = image_at(m, m->entries.at);
    const struct ref *beginnings = image_at(m, m->beginnings.at);
    return number < m->entries.count ? entry_words(&entries[number])
                                     : ref_text(&beginnings[number - m->entries.count]);
}

/* 0: there is none. */
static uint32_t find_word(const struct image *m, struct text t)
{
    const uint32_t *slots = image_at(m, m->words.at), hash = key_hash(t);
    const size_t room = m->words.count;
    size_t i = slot_first(hash, room);
    while (slots[i]
           && !(word_slot_may_be(slots[i], hash)
                && text_equal(word_text(m, word_slot_number(slots[i])), t)))
        i = slot_next(i, room);
    return slots[i];
}

const struct entry *pack_find(const struct pack *k, struct text words, bool *more)
{
    uint32_t slot = words.length ? find_word(k->image, words) : 0;
    size_t count;
    const struct entry *entries = pack_entries(k, &count);
    if (more)
        *more = slot & WORD_MORE;
    return slot && word_slot_number(slot) < count ? &entries[word_slot_number(slot)] : NULL;
}

const struct entry *entry_as(const struct entry *e, enum tag tag)
{
    while (e && e->tag != tag)
        e = entry_next(e);
    return e;
}

const struct entry *pack_entries(const struct pack *k, size_t *count)
{
    *count = k->image->entries.count;
    return image_at(k->image, k->image->entries.at);
}

const uint32_t *pack_foods_with(const struct pack *k, struct text word, size_t *count)
{
    const struct image_key *key = find_key(k->image, k->image->inner, word);
    const uint32_t *entries = image_at(k->image, k->image->inner_entries.at);
    *count = key ? entries[key->value] : 0;
    return key ? entries + key->value + 1 : NULL;
}

const struct pronounced *pack_pronounced(const struct pack *k, unsigned char tag, size_t *count)
{
    const uint32_t *begins = image_at(k->image, k->image->of_tag.at);
    const struct pronounced *all = image_at(k->image, k->image->pronounced.at);
    *count = begins[tag + 1] - begins[tag];
    return all + begins[tag];
}

/* ---- rules and tables */

const struct rule *pack_rules(const struct pack *k, enum rule_stage stage, size_t *count)
{
    *count = k->stage_counts[stage];
    return k->stages[stage];
}

size_t pack_rules_count(const struct pack *k)
{
    return k->image->rules.count;
}

const struct table *pack_table_named(const struct pack *k, struct text name)
{
    uint32_t n = *name_slot(k, name);
    return n ? &k->tables[n - 1] : NULL;
}

size_t table_column(const struct table *t, const char *head)
{
    size_t i = 0;
    while (i < t->columns && !text_is(ref_text(&t->heads[i]), head))
        i++;
    return i;
}

size_t table_find(const struct table *t, struct text key)
{
    uint32_t hash = key_hash(key);
    for (size_t i = slot_first(hash, t->keys_room); t->keys[i]; i = slot_next(i, t->keys_room)) {
        size_t row = slot_row(t->keys[i]);
        if (slot_may_hold(t->keys[i], hash) && text_equal(table_cell(t, row, 0), key))
            return row;
    }
    return t->rows;
}

static size_t find_linked(const struct table *t, struct text first, struct text second)
{
    size_t row = table_find(t, first);
    while (row < t->rows && !text_equal(table_cell(t, row, 1), second))
        row = table_next(t, row);
    return row;
}

size_t table_find_pair(const struct table *t, struct text first, struct text second)
{
    if (!t->pairs_room)
        return find_linked(t, first, second);
    uint32_t hash = pair_hash(first, second);
    for (size_t i = slot_first(hash, t->pairs_room); t->pairs[i]; i = slot_next(i, t->pairs_room)) {
        size_t row = slot_row(t->pairs[i]);
        if (slot_may_hold(t->pairs[i], hash) && text_equal(table_cell(t, row, 1), second)
            && text_equal(table_cell(t, row, 0), first))
            return row;
    }
    return t->rows;
}
