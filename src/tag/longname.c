/* tag/longname.c: a long name in several short words.
 * SPDX-License-Identifier: MIT */
#include "tag/longname.h"

#include "tag/doubt.h"
#include "tag/guess.h"

/* The most for words that are a long name anywhere, in hundredths of a slip for each sound. */
#define LONG_TRUST 8

/* Whether units [begin, end) mean nothing in a kitchen: talk, and small words between. */
static bool plain_talk(const struct hearing *h, const struct sentence_units *u, size_t begin,
                       size_t end)
{
    bool other = false;
    for (size_t i = begin; i < end; i++) {
        const struct word *w = &h->r->words.at[u->last[i]];
        if (w->rare->heard_as || ratio_known(w->rare->number)
            || (w->tag != TAG_OTHER && !is_small(w)))
            return false;
        other |= w->tag == TAG_OTHER;
    }
    const struct word *last = &h->r->words.at[u->last[end - 1]];
    return other && (last->tag == TAG_OTHER || last->tag == TAG_YOU)
           && !units_divided(h, u, begin, end);
}

/* "Card a mom", "bus mati": no place is asked for where several words together sound as a long name
 * does. */
static void hear_long(struct hearing *h, struct sentence_units *u, size_t begin, size_t end)
{
    char room[KEY_BYTES];
    struct guess g = {0};
    size_t count;
    const struct pronounced *all = pack_pronounced(h->ear->k, TAG_FOOD, &count);
    const struct entry *entries = pack_entries(h->ear->k, &count);
    struct text key = joined_key(h, u->first[begin], u->last[end - 1], room);
    const struct sounding heard = sounding_of(sounds_of(h, key));
    for (uint32_t i = ear_long_find(h->ear, heard.sounds); i; i = h->ear->long_next[i - 1]) {
        const struct sounding name = {ref_text(&all[i - 1].sounds), all[i - 1].letters};
        unsigned distance = sound_distance(&h->ear->sounds, &heard, &name, LONG_TRUST);
        if (distance <= LONG_TRUST)
            consider(&g, &entries[all[i - 1].entry], (int) distance);
    }
    struct span words = {u->first[begin], u->last[end - 1]};
    if (g.entry)
        apply_entry(h, words, words, g.entry);
}

void hear_long_names(struct hearing *h, const struct sentence *s)
{
    struct sentence_units u;
    units_make(&u, h->r, s, &h->ear->beside);
    for (size_t i = 0; i < u.count; i++) {
        const struct word *w = &h->r->words.at[u.last[i]];
        if (w->tag != TAG_OTHER && !is_small(w))
            continue;
        for (size_t end = i + 2; end <= u.count && end <= i + JOINED_WORDS; end++)
            if (plain_talk(h, &u, i, end))
                hear_long(h, &u, i, end);
    }
}
