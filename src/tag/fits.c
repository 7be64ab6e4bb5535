/* tag/fits.c
 * SPDX-License-Identifier: MIT */
#include "tag/fits.h"

#define ROOM_LEAST 64

/* The slot of `t`, or the free one where it would go. */
static struct fits_text *probe(const struct fits_texts *list, struct text t)
{
    size_t i = text_hash(t) & (list->room - 1);
    while (list->slots[i].text.length && !text_equal(list->slots[i].text, t))
        i = (i + 1) & (list->room - 1);
    return &list->slots[i];
}

static void grow(struct fits_texts *list, struct arena *a)
{
    struct fits_texts grown = {.count = list->count, .shapes = list->shapes};
    grown.room = list->room ? list->room * 2 : ROOM_LEAST;
    grown.slots = arena_alloc(a, grown.room * sizeof *grown.slots);
    for (size_t i = 0; i < list->room; i++)
        if (list->slots[i].text.length)
            *probe(&grown, list->slots[i].text) = list->slots[i];
    *list = grown;
}

static void add_text(struct fits_texts *list, struct arena *a, struct text t, unsigned char number)
{
    if (!t.length)
        return;
    if (list->count >= list->room / 2)
        grow(list, a);
    struct fits_text *slot = probe(list, t);
    list->count += !slot->text.length;
    slot->text = t;
    unit_set_add(&slot->places, number);
    list->shapes |= text_shape(t);
}

static void find_text(const struct fits_texts *list, struct text t, struct unit_set *places)
{
    const struct fits_text *slot = probe(list, t);
    if (slot->text.length)
        unit_set_join(places, &slot->places);
}

void fits_add(struct fits *f, struct arena *a, const struct token *t, unsigned char number)
{
    for (int tag = unit_set_next(&t->tags, 0); tag >= 0; tag = unit_set_next(&t->tags, tag + 1))
        unit_set_add(&f->tags[tag], number);
    for (size_t i = 0; i < t->words.count; i++)
        add_text(&f->words, a, t->words.at[i], number);
    for (size_t i = 0; i < t->values.count; i++)
        add_text(&f->values, a, t->values.at[i], number);
}

void fits_find(const struct fits *f, const struct word *w, bool any_reading,
               struct unit_set *places)
{
    unit_set_join(places, &f->tags[w->tag]);
    if (f->words.shapes & word_shape(w))
        find_text(&f->words, w->key, places);
    for (const struct entry *e = w->entry; e; e = any_reading ? entry_next(e) : NULL) {
        if (any_reading)
            unit_set_join(places, &f->tags[e->tag]);
        if (f->values.shapes & entry_shape(e))
            find_text(&f->values, entry_value(e), places);
    }
}
