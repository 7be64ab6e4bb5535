/* tag/ear.c
 * SPDX-License-Identifier: MIT */
#include "tag/ear.h"

#include <string.h>

#define EAR_BYTES ((size_t) 64 << 20)
/* It stands in one block while it needs no more; that of the pack does. */
#define EAR_BLOCK ((size_t) 1 << 20)

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

uint32_t ear_long_find(const struct ear *ear, struct text sounds)
{
    return ear->long_names[sound_frame(&ear->sounds, sounds) % LONG_BUCKETS];
}

static void index_long_names(struct ear *ear)
{
    size_t count;
    const struct pronounced *all = pack_pronounced(ear->k, TAG_FOOD, &count);
    ear->long_next = arena_alloc(&ear->memory, (count + 1) * sizeof *ear->long_next);
    for (size_t i = count; i-- > 0;) {
        struct text sounds = ref_text(&all[i].sounds);
        if (sounds.length < LONG_SOUNDS)
            continue;
        uint32_t *bucket = &ear->long_names[sound_frame(&ear->sounds, sounds) % LONG_BUCKETS];
        ear->long_next[i] = *bucket;
        *bucket = (uint32_t) i + 1;
    }
}

bool ear_may_begin(const struct ear *ear, struct text word)
{
    size_t n = text_hash(word) % EAR_HEADS;
    return ear->heads[n / 64] >> n % 64 & 1;
}

static void note_heads(struct ear *ear)
{
    for (size_t row = 0; row < ear->pairs->rows; row++) {
        struct text heard = table_cell(ear->pairs, row, 0);
        size_t n = text_hash(text_slice(heard, 0, text_find(heard, ' ', 0))) % EAR_HEADS;
        ear->heads[n / 64] |= (uint64_t) 1 << n % 64;
    }
}

/* What the places right before and behind the slot take, so that a look at a unit tells which slots
 * it may stand beside. */
static void add_slot(struct ear *ear, const struct hearing_slot *slot, unsigned char n)
{
    const struct token *before = slot->before_count ? &slot->before[slot->before_count - 1] : NULL;
    const struct token *after = slot->after_count ? slot->after : NULL;
    unit_set_join(&ear->wanted, &slot->expects);
    unit_set_add(&ear->again[slot->again], n);
    if (!before)
        unit_set_add(&ear->open, n);
    else
        fits_add(&ear->beside, &ear->memory, before, n);
    if (!before || before->start)
        unit_set_add(&ear->at_begin, n);
    if (slot->before_count > 1)
        unit_set_add(&ear->farther, n);
    if (!after)
        unit_set_add(&ear->closed, n);
    else
        fits_add(&ear->beside, &ear->memory, after, EAR_SLOTS + (size_t) n);
    if (!after || after->end)
        unit_set_add(&ear->at_end, n);
}

static bool load(struct ear *ear, struct problems *p)
{
    ear->pairs = pack_table(ear->k, "mishearings");
    if (!ear->pairs || !sounds_load(&ear->sounds, ear->k)
        || !slots_load(&ear->slots, &ear->memory, ear->k, p))
        return false;
    if (ear->slots.count > EAR_SLOTS)
        return problem(p, (struct place){pack_table(ear->k, "hearing")->file, 0, 0},
                       "there are at most %d places", EAR_SLOTS);
    for (size_t i = 0; i < ear->slots.count; i++)
        add_slot(ear, &ear->slots.at[i], (unsigned char) i);
    note_heads(ear);
    index_long_names(ear);
    return ear->ready = true;
}

/* Begins anew, after a load that failed half-way. */
static void forget(struct ear *ear)
{
    arena_rewind(&ear->memory, ear->begin);
    ear->pairs = NULL;
    memset((char *) ear + EAR_TABLES, 0, sizeof *ear - EAR_TABLES);
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

/* The jump of a full arena ends here. */
static struct ear *begin(struct arena *memory)
{
    arena_init(memory, EAR_BYTES);
    if (!arena_open(memory))
        return NULL;
    arena_reserve(memory, EAR_BLOCK);
    return arena_alloc(memory, sizeof(struct ear));
}

struct ear *ear_new(const struct pack *k)
{
    struct arena memory;
    struct ear *ear = begin(&memory);
    if (!ear)
        return NULL;
    ear->memory = memory;
    ear->begin = arena_mark(&ear->memory);
    ear->k = k;
    return ear;
}

struct ear *ear_made(const struct pack *k, struct problems *p)
{
    struct ear *ear = ear_new(k);
    if (ear && ear_ready(ear, p) == EAR_READY)
        return ear;
    ear_free(ear);
    return NULL;
}

struct ear *ear_open(const struct ready *image, const struct pack *k)
{
    struct ear *ear = ready_open(image, k);
    if (!ear)
        return NULL;
    ear->k = k;
    ear->pairs = pack_table(k, "mishearings");
    ear->ready = true;
    return ear;
}

void ear_free(struct ear *ear)
{
    if (!ear)
        return;
    struct arena memory = ear->memory; /* which it stands in itself */
    arena_release(&memory);
}
