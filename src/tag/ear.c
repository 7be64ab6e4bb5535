/* tag/ear.c
 * SPDX-License-Identifier: MIT */
#include "tag/ear.h"

#include <stdlib.h>

#define EAR_BYTES ((size_t) 64 << 20)

struct text ear_sound(const struct ear *ear, struct arena *a, struct text words)
{
    char out[SOUNDS_MOST];
    size_t length = pack_sounds(ear->k, words, out);
    return arena_text(a, (struct text){out, length});
}

bool ear_knows(const struct ear *ear, struct text word)
{
    const struct table *t = pack_table(ear->k, "pronunciations");
    return !t || table_find(t, word) < t->rows;
}

/* The first row of mishearings.tsv whose first cell is `key`, or the next one after `row`;
 * table.rows when there is none. */
static size_t pair_row(const struct ear *ear, struct text key, size_t row_plus_1)
{
    while (row_plus_1 && !text_equal(table_cell(ear->pairs, row_plus_1 - 1, 0), key))
        row_plus_1 = ear->pair_next[row_plus_1 - 1];
    return row_plus_1 ? row_plus_1 - 1 : ear->pairs->rows;
}

size_t ear_pair_find(const struct ear *ear, struct text key)
{
    return pair_row(ear, key, ear->pair_rows[text_hash(key) % PAIR_BUCKETS]);
}

size_t ear_pair_after(const struct ear *ear, struct text key, size_t row)
{
    return pair_row(ear, key, ear->pair_next[row]);
}

static void index_pairs(struct ear *ear)
{
    ear->pair_next = arena_alloc(&ear->memory, (ear->pairs->rows + 1) * sizeof *ear->pair_next);
    for (size_t row = ear->pairs->rows; row-- > 0;) {
        size_t *bucket = &ear->pair_rows[text_hash(table_cell(ear->pairs, row, 0)) % PAIR_BUCKETS];
        ear->pair_next[row] = *bucket;
        *bucket = row + 1;
    }
}

uint32_t ear_long_find(const struct ear *ear, struct text sounds)
{
    return ear->long_names[sound_frame(&ear->sounds, sounds) % LONG_BUCKETS];
}

static void index_long_names(struct ear *ear)
{
    size_t count;
    const struct pronounced *all = pack_pronounced(ear->k, &count);
    ear->long_next = arena_alloc(&ear->memory, (count + 1) * sizeof *ear->long_next);
    for (size_t i = count; i-- > 0;) {
        struct text sounds = ref_text(&all[i].sounds);
        if (all[i].tag != TAG_FOOD || sounds.length < LONG_SOUNDS)
            continue;
        uint32_t *bucket = &ear->long_names[sound_frame(&ear->sounds, sounds) % LONG_BUCKETS];
        ear->long_next[i] = *bucket;
        *bucket = (uint32_t) i + 1;
    }
}

static struct opening opening_of(const struct hearing_slot *slot)
{
    struct opening o = {.slot = slot};
    if (!slot->before_count)
        return o;
    o.last = &slot->before[slot->before_count - 1];
    o.tags = o.last->tags;
    o.word_shapes = o.last->word_shapes;
    o.value_shapes = o.last->value_shapes;
    return o;
}

static bool load(struct ear *ear, struct problems *p)
{
    ear->pairs = pack_table(ear->k, "mishearings");
    if (!ear->pairs || !sounds_load(&ear->sounds, ear->k)
        || !slots_load(&ear->slots, &ear->memory, ear->k, p))
        return false;
    for (size_t i = 0; i < ear->slots.count; i++) {
        const struct hearing_slot *slot = &ear->slots.at[i];
        unit_set_join(&ear->wanted, &slot->expects);
        *LIST_ADD(&ear->memory, &ear->openings[slot->again]) = opening_of(slot);
    }
    index_pairs(ear);
    index_long_names(ear);
    return ear->ready = true;
}

/* Begins anew, after a load that failed half-way. */
static void forget(struct ear *ear)
{
    const struct pack *k = ear->k;
    arena_release(&ear->memory);
    *ear = (struct ear){.k = k};
    arena_init(&ear->memory, EAR_BYTES);
}

enum ear_state ear_ready(struct ear *ear, struct problems *p)
{
    if (ear->ready)
        return EAR_READY;
    forget(ear);
    if (arena_open(&ear->memory))
        return load(ear, p) ? EAR_READY : EAR_DEAF;
    return EAR_NO_MEMORY;
}

struct ear *ear_new(const struct pack *k)
{
    struct ear *ear = calloc(1, sizeof *ear);
    if (ear)
        ear->k = k;
    return ear;
}

void ear_free(struct ear *ear)
{
    if (ear)
        arena_release(&ear->memory);
    free(ear);
}
