/* pack/image.c: what the loader has read -> one block. Sections first, whose sizes are known; then
 * the texts, each once, its length before it: those of tables that are asked about each word, then
 * the others in the order in which they are first asked for.
 * SPDX-License-Identifier: MIT */
#include "pack/image_maker.h"

#include <stdlib.h>

#define ALIGN 8

void *image_section(struct maker *m, struct section *s, size_t count, size_t size)
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

size_t image_pool_text(struct maker *m, struct text t)
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

void image_put_text(struct maker *m, struct ref *to, struct text t)
{
    size_t from = (size_t) ((char *) to - m->block);
    size_t at = m->sections + image_pool_text(m, t.at ? t : TEXT_EMPTY);
    if (at + t.length + 1 > PACK_BYTES) /* with its NUL */
        longjmp(m->l->arena.full, 1);
    to->at = (int32_t) ((ptrdiff_t) at - (ptrdiff_t) from);
}

/* ---- entries and their words */

/* 1 + the number's place among those of all entries, which are few; 0: it is none. */
static size_t number_place(struct maker *m, const struct ratio *number)
{
    if (!ratio_known(*number))
        return 0;
    struct text bytes = {(const char *) number, sizeof *number};
    struct key *key = index_put(&m->l->arena, &m->numbers, bytes);
    if (!key->first)
        key->first = (uint32_t) m->numbers.count;
    return key->first;
}

static struct ratio *put_numbers(struct maker *m, struct image *out)
{
    const struct listing *all = m->l->entries.at;
    for (size_t i = 0; i < m->l->entries.count; i++)
        number_place(m, &all[i].number);
    struct ratio *to = image_section(m, &out->numbers, m->numbers.count, sizeof *to);
    for (size_t i = 0; to && i < m->l->entries.count; i++)
        if (number_place(m, &all[i].number))
            to[number_place(m, &all[i].number) - 1] = all[i].number;
    return to;
}

static void put_entry(struct maker *m, struct entry *e, const struct listing *from,
                      const struct ratio *numbers)
{
    e->marks = from->marks;
    size_t number = number_place(m, &from->number);
    if (number)
        e->number_at =
            (int32_t) ((const char *) &numbers[number - 1] - (const char *) &e->number_at);
    image_put_text(m, &e->words_at, from->words);
    image_put_text(m, &e->value_at, from->value);
    image_put_text(m, &e->shown_at, from->shown);
    image_put_text(m, &e->file_at, text_from(from->file));
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
    const struct ratio *numbers = put_numbers(m, out);
    struct entry *to = image_section(m, &out->entries, count, sizeof *to);
    for (size_t i = 0; to && i < count; i++)
        put_entry(m, &to[i], &m->l->entries.at[i], numbers);
}

static void put_key(struct maker *m, struct image_key *slots, size_t room, const struct key *from,
                    uint32_t value)
{
    size_t i = slot_first(from->hash, room);
    while (slots[i].text.at)
        i = slot_next(i, room);
    image_put_text(m, &slots[i].text, (struct text){from->at, from->length});
    slots[i].hash = from->hash;
    slots[i].value = value;
}

/* A third of the slots stay free. */
static size_t slots_for(size_t texts)
{
    return texts + texts / 2 + 1;
}

static void put_index(struct maker *m, struct section *s, const struct index *x)
{
    size_t room = slots_for(x->count);
    struct image_key *to = image_section(m, s, room, sizeof *to);
    for (size_t i = 0; to && i < x->room; i++)
        if (x->slots[i].at)
            put_key(m, to, room, &x->slots[i], x->slots[i].first);
}

static void put_word(uint32_t *slots, size_t room, const struct key *from, size_t number)
{
    size_t i = slot_first(from->hash, room);
    while (slots[i])
        i = slot_next(i, room);
    slots[i] = word_slot_value(from->hash, number, from->more);
}

/* Beginnings that are no entry's words have the numbers behind the entries'. */
static void put_words(struct maker *m, struct image *out)
{
    const struct index *x = &m->l->words;
    const size_t room = slots_for(x->count), entries = m->l->entries.count;
    size_t mere = 0, put = 0;
    for (size_t i = 0; i < x->room; i++)
        mere += x->slots[i].at && !x->slots[i].first;
    if (entries + mere >= WORDS_MOST)
        longjmp(m->l->arena.full, 1);
    uint32_t *to = image_section(m, &out->words, room, sizeof *to);
    struct ref *beginnings = image_section(m, &out->beginnings, mere, sizeof *beginnings);
    for (size_t i = 0; to && i < x->room; i++) {
        const struct key *key = &x->slots[i];
        if (key->at && !key->first)
            image_put_text(m, &beginnings[put], (struct text){key->at, key->length});
        if (key->at)
            put_word(to, room, key, key->first ? key->first - 1 : entries + put++);
    }
}

/* Every word of the foods of several words, told to `each` in order. */
static void each_inner(struct maker *m, struct index *x,
                       void (*each)(struct key *, uint32_t, uint32_t *), uint32_t *list)
{
    for (size_t i = 0; i < m->l->entries.count; i++) {
        const struct listing *e = &m->l->entries.at[i];
        struct text rest = e->words, word;
        while (e->tag == TAG_FOOD && e->words_count > 1 && text_part(&rest, ' ', &word))
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
    list[++key->first] = entry;
}

/* Counts how many entries each word has, then where its run begins, which has their number first,
 * then fills it in; that leaves `first` at the run's end. */
static void put_inner(struct maker *m, struct image *out)
{
    struct index x = {0};
    uint32_t total = 0;
    each_inner(m, &x, count_inner, NULL);
    for (size_t i = 0; i < x.room; i++) {
        x.slots[i].first = total;
        total += x.slots[i].more ? x.slots[i].more + 1 : 0;
    }
    uint32_t *list = image_section(m, &out->inner_entries, total, sizeof *list);
    for (size_t i = 0; list && i < x.room; i++)
        if (x.slots[i].more)
            list[x.slots[i].first] = x.slots[i].more;
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
    struct pronounced *to = image_section(m, &out->pronounced, m->heard.count, sizeof *to);
    uint32_t *tags = image_section(m, &out->of_tag, TAG_CODES + 1, sizeof *tags);
    count_tags(&m->heard, begins);
    if (tags)
        memcpy(tags, begins, sizeof begins);
    for (size_t i = 0; to && i < m->heard.count; i++) {
        const struct heard *from = &m->heard.at[i];
        struct pronounced *p = &to[begins[from->tag]++];
        p->letters = sound_letters(from->sounds);
        image_put_text(m, &p->sounds, from->sounds);
        image_put_text(m, &p->value, m->l->entries.at[from->entry].value);
        p->entry = from->entry;
        p->tag = from->tag;
        p->length = (unsigned char) from->sounds.length;
        p->letters_count = (unsigned char) count_bits(p->letters);
    }
}

/* ---- tables */

static void put_tables(struct maker *m, struct image *out)
{
    size_t count = m->l->tables.count;
    struct image_table *to = image_section(m, &out->tables, count, sizeof *to);
    for (size_t i = 0; i < count; i++)
        image_put_table(m, to ? &to[i] : NULL, &m->l->tables.at[i]);
    for (size_t i = 0; i < count; i++) /* together, since hardly anything asks for them */
        image_put_lines(m, to ? &to[i] : NULL, &m->l->tables.at[i]);
}

/* ---- the whole */

static void put_all(struct maker *m)
{
    struct section self;
    struct image none = {0}, *out = image_section(m, &self, 1, sizeof *out);
    out = out ? out : &none;
    put_entries(m, out);
    put_words(m, out);
    put_inner(m, out);
    put_pronounced(m, out);
    put_tables(m, out);
    image_put_rules(m, out);
}

void *image_make(struct loader *l, heard_list heard)
{
    struct maker m = {.l = l, .heard = heard};
    put_all(&m);
    m.sections = m.used;
    m.used = 0;
    m.block = arena_alloc(&l->arena, m.sections);
    image_pool_asked(&m);
    put_all(&m);
    void *whole = malloc(m.sections + m.pool_length);
    if (!whole)
        longjmp(l->arena.full, 1);
    ((struct image *) (void *) m.block)->bytes = (uint32_t) (m.sections + m.pool_length);
    memcpy(whole, m.block, m.sections);
    memcpy((char *) whole + m.sections, m.pool, m.pool_length);
    return whole;
}
