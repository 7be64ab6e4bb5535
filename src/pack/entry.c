/* pack/entry.c: the readings of all words, chained by the words they share.
 * SPDX-License-Identifier: MIT */
#include "pack/load.h"

/* Says that longer entries begin with the first words of this one. */
static void mark_beginnings(struct loader *l, struct text words)
{
    for (size_t i = text_find(words, ' ', 0); i < words.length; i = text_find(words, ' ', i + 1))
        index_put(&l->arena, &l->words, text_slice(words, 0, i))->more = true;
}

/* Where the chain's link to a reading with `tag` is, or the end of the chain. */
static uint32_t *find_tag(struct loader *l, uint32_t *link, unsigned char tag)
{
    while (*link && l->entries.at[*link - 1].tag != tag)
        link = &l->entries.at[*link - 1].next;
    return link;
}

/* The same twice is harmless; anything else is for the writer of the pack to decide. */
static void check_same(struct loader *l, const struct listing *old, const struct listing *new,
                       struct place at)
{
    if (!text_equal(old->value, new->value))
        problem(l->problems, at,
                "\"%.*s\" as %s stands for \"%.*s\" here and for \"%.*s\" at %s:%u",
                QUOTE(new->words), tag_name(new->tag), QUOTE(new->value), QUOTE(old->value),
                old->file, old->line);
    else if (old->marks != new->marks)
        problem(l->problems, at, "\"%.*s\" as %s has other marks here than at %s:%u",
                QUOTE(new->words), tag_name(new->tag), old->file, old->line);
}

void entry_add(struct loader *l, const struct listing *e, struct place at)
{
    *LIST_ADD(&l->arena, &l->entries) = *e; /* before links into the list are followed */
    uint32_t number = (uint32_t) l->entries.count;
    mark_beginnings(l, e->words);
    struct key *key = index_put(&l->arena, &l->words, e->words);
    uint32_t *link = find_tag(l, &key->first, e->tag);
    struct listing *old = *link ? &l->entries.at[*link - 1] : NULL;
    if (old && (e->made || !old->made)) {
        if (!e->made)
            check_same(l, old, e, at);
        LIST_CUT(&l->entries, l->entries.count - 1);
        return;
    }
    if (old) { /* a made form gives way */
        old->dead = true;
        *link = old->next;
        link = find_tag(l, link, e->tag);
    }
    *link = number;
}

/* Closes the gaps that dead readings leave; new_number[i] is 1 + where the i-th went. */
static size_t close_gaps(struct loader *l, uint32_t *new_number)
{
    uint32_t alive = 0;
    for (size_t i = 0; i < l->entries.count; i++) {
        if (l->entries.at[i].dead)
            continue;
        if (alive < i)
            l->entries.at[alive] = l->entries.at[i];
        new_number[i] = ++alive;
    }
    return alive;
}

void entries_finish(struct loader *l)
{
    uint32_t *new_number = arena_alloc(&l->arena, (l->entries.count + 1) * sizeof *new_number);
    l->entries.count = close_gaps(l, new_number);
    for (size_t i = 0; i < l->entries.count; i++) {
        struct listing *e = &l->entries.at[i];
        e->next = e->next ? new_number[e->next - 1] : 0;
    }
    for (size_t i = 0; i < l->words.room; i++) {
        struct key *key = &l->words.slots[i];
        key->first = key->first ? new_number[key->first - 1] : 0;
    }
}
