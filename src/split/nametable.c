/* split/nametable.c
 * SPDX-License-Identifier: MIT */
#include "split/nametable.h"

#include "base/arena.h"

#define STEM_LEAST 3
#define ODD 0x9E3779B97F4A7C15u /* 2^64 / golden ratio */
#define ROOM_LEAST ((size_t) 256)

bool joins_names(unsigned char tag)
{
    return tag == TAG_WITH || tag == TAG_AND || tag == TAG_OF || tag == TAG_INTO;
}

/* "Buns" and "bun" are the same. */
static uint64_t stem_hash(struct text key)
{
    char last = key.length ? key.at[key.length - 1] : 0,
         before = key.length > 1 ? key.at[key.length - 2] : 0;
    bool plural =
        key.length > STEM_LEAST && last == 's' && before != 's' && before != 'u' && before != 'i';
    return text_hash(text_slice(key, 0, key.length - plural));
}

uint64_t longer_hash(uint64_t hash, const struct word *w)
{
    return joins_names(w->tag) || w->filler ? hash : hash * ODD + stem_hash(w->key);
}

uint64_t name_hash(const struct recording *r, struct span words)
{
    uint64_t hash = 0;
    for (size_t i = words.first; i <= words.last; i++)
        hash = longer_hash(hash, &r->words.at[i]);
    return hash;
}

/* The slot of the table in which the hash is, or would be. */
static size_t slot_of(const struct candidates *c, uint64_t hash)
{
    size_t slot = (size_t) (hash ^ hash >> 29) & (c->room - 1);
    while (c->table[slot] && c->all.at[c->table[slot] - 1].hash != hash)
        slot = (slot + 1) & (c->room - 1);
    return slot;
}

const struct candidate *candidate_find(const struct candidates *c, uint64_t hash)
{
    size_t slot = slot_of(c, hash);
    return c->table[slot] ? &c->all.at[c->table[slot] - 1] : NULL;
}

static void grow_table(struct candidates *c)
{
    c->room *= 2;
    c->table = arena_alloc(c->r->arena, c->room * sizeof *c->table);
    for (size_t n = 0; n < c->all.count; n++)
        c->table[slot_of(c, c->all.at[n].hash)] = n + 1;
}

size_t candidate_number(struct candidates *c, uint64_t hash)
{
    if (2 * c->all.count >= c->room)
        grow_table(c);
    size_t slot = slot_of(c, hash);
    if (!c->table[slot]) {
        LIST_ADD(c->r->arena, &c->all)->hash = hash;
        c->table[slot] = c->all.count;
    }
    return c->table[slot] - 1;
}

void name_table_open(struct candidates *c)
{
    c->room = ROOM_LEAST / 2;
    while (c->room < c->all.room)
        c->room *= 2;
    grow_table(c);
}
