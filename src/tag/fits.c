/* tag/fits.c
 * SPDX-License-Identifier: MIT */
#include "tag/fits.h"

/* Room that is not used costs nothing, where the arena's block is a large one: its pages come from
 * the system as they are written to. A list that grew would leave its smaller selves behind. */
#define ROOM_LEAST 4096

/* The slot of `t`, or the free one where it would go. */
static uint32_t *probe(const struct fits_texts *texts, struct text t)
{
    size_t i = text_hash(t) & (texts->room - 1);
    while (texts->slots[i] && !text_equal(texts->list.at[texts->slots[i] - 1].text, t))
        i = (i + 1) & (texts->room - 1);
    return &texts->slots[i];
}

static void grow(struct fits_texts *texts, struct arena *a)
{
    texts->room = texts->room ? texts->room * 2 : ROOM_LEAST;
    texts->slots = arena_alloc(a, texts->room * sizeof *texts->slots);
    for (size_t i = 0; i < texts->list.count; i++)
        *probe(texts, texts->list.at[i].text) = (uint32_t) i + 1;
    if (!texts->list.room)
        LIST_RESERVE(a, &texts->list, texts->room / 2);
}

static void add_text(struct fits_texts *texts, struct arena *a, struct text t, size_t number)
{
    if (!t.length)
        return;
    if (texts->list.count >= texts->room / 2)
        grow(texts, a);
    uint32_t *slot = probe(texts, t);
    if (!*slot) {
        LIST_ADD(a, &texts->list)->text = t;
        *slot = (uint32_t) texts->list.count;
    }
    place_set_add(&texts->list.at[*slot - 1].places, number);
    texts->shapes |= text_shape(t);
}

static void find_text(const struct fits_texts *texts, struct text t, struct place_set *places)
{
    uint32_t slot = *probe(texts, t);
    if (slot)
        place_set_join(places, &texts->list.at[slot - 1].places);
}

void fits_add(struct fits *f, struct arena *a, const struct token *t, size_t number)
{
    for (int tag = unit_set_next(&t->tags, 0); tag >= 0; tag = unit_set_next(&t->tags, tag + 1))
        place_set_add(&f->tags[tag], number);
    for (size_t i = 0; i < t->words.count; i++)
        add_text(&f->words, a, t->words.at[i], number);
    for (size_t i = 0; i < t->values.count; i++)
        add_text(&f->values, a, t->values.at[i], number);
}

void fits_find(const struct fits *f, const struct word *w, bool any_reading,
               struct place_set *places)
{
    place_set_join(places, &f->tags[w->tag]);
    if (f->words.shapes & word_shape(w))
        find_text(&f->words, w->key, places);
    for (const struct entry *e = w->entry; e; e = any_reading ? entry_next(e) : NULL) {
        if (any_reading)
            place_set_join(places, &f->tags[e->tag]);
        if (f->values.shapes & entry_shape(e))
            find_text(&f->values, entry_value(e), places);
    }
}
