/* words/entry.c
 * SPDX-License-Identifier: MIT */
#include "words/entry.h"

#include <string.h>

/* Whether an entry may go on from word `i` to the next: "salt, pepper" are two things. */
static bool goes_on(const struct word *w)
{
    return w->after == AFTER_SPACE || w->after == AFTER_HYPHEN;
}

void word_look_up(struct word *w, const struct pack *k)
{
    bool begins;
    w->alone = pack_find(k, w->key, &begins);
    w->begins = begins;
    w->shape = text_shape_number(w->key);
}

/* "The neighbour's", "the crumble'll do seven": what the word without it is; of one that will do
 * something, a noun sooner than a verb. */
static const struct entry *uncontracted(const struct pack *k, struct text key)
{
    bool will = text_ends(key, "'ll");
    size_t more = will ? 3 : text_ends(key, "'s") ? 2 : 0;
    const struct entry *e = more ? pack_find(k, text_slice(key, 0, key.length - more), NULL) : NULL;
    const struct entry *dish = will ? entry_as(e, TAG_DISH) : NULL;
    return dish ? dish : e;
}

const struct entry *entry_longest(const struct recording *r, const struct pack *k, size_t i,
                                  size_t end, size_t *last)
{
    char joined[ENTRY_BYTES];
    size_t length = 0;
    const struct entry *found = NULL;
    for (size_t n = i; n < end && n < i + ENTRY_WORDS; n++) {
        const struct word *w = &r->words.at[n];
        bool more = false;
        if (!w->key.length) /* the cook read two words as one (edits/words.c) */
            continue;
        if (length + w->key.length + 1 > sizeof joined)
            break;
        if (length)
            joined[length++] = ' ';
        memcpy(joined + length, w->key.at, w->key.length);
        length += w->key.length;
        const struct entry *e = w->alone;
        if (length > w->key.length)
            e = pack_find(k, (struct text){joined, length}, &more);
        else
            more = w->begins;
        if (!e && n == i)
            e = uncontracted(k, w->key);
        if (e) {
            found = e;
            *last = n;
        }
        if (!more || !goes_on(w))
            break;
    }
    return found;
}
