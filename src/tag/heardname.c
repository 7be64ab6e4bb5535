/* tag/heardname.c: one wrong word in a name of several.
 * SPDX-License-Identifier: MIT */
#include "tag/heardname.h"

#include <string.h>

#include "tag/doubt.h"
#include "tag/guess.h"

/* How far a word may be from the one that a name of several words asks for: "chicken sock". */
#define NEIGHBOUR_TRUST 18

/* Whether the name begins with word `i`, as all but a few that are tried do not. */
static bool name_begins(const struct hearing *h, struct text name, size_t i)
{
    struct text key = h->r->words.at[i].key;
    return key.length < name.length && name.at[key.length] == ' '
           && memcmp(name.at, key.at, key.length) == 0;
}

/* Whether the name's second word is word `i`, as of all but a few it is not. */
static bool name_goes_on(const struct hearing *h, struct text name, size_t i)
{
    struct text key = h->r->words.at[i].key;
    size_t second = text_find(name, ' ', 0) + 1;
    return key.length && second + key.length <= name.length
           && memcmp(name.at + second, key.at, key.length) == 0;
}

/* Whether word `i` says the nth word of the entry; `*wrong` is the one that may differ. */
static bool name_fits(const struct hearing *h, struct text name, size_t i, size_t end, size_t wrong,
                      struct text *asked)
{
    struct text word;
    for (; text_part(&name, ' ', &word); i++) {
        if (i > end || h->r->words.at[i].filler)
            return false;
        if (i == wrong)
            *asked = word;
        else if (!text_equal(h->r->words.at[i].key, word))
            return false;
    }
    return true;
}

/* Whether an amount, or a word that brings one, stands before word `i` of the sentence. */
static bool amount_before(const struct hearing *h, const struct sentence *s, size_t i)
{
    static const unsigned char TAGS[] = {TAG_OF,   TAG_UNIT,    TAG_VAGUE,   TAG_NUMBER,
                                         TAG_ONES, TAG_COUNTER, TAG_FRACTION};
    return i > s->first && memchr(TAGS, h->r->words.at[i - 1].tag, sizeof TAGS);
}

/* Whether the two are a pair of mishearings.tsv; `sure`: also one whose captioned word is ordinary
 * talk ("that black line"). */
static bool pair_listed(const struct hearing *h, struct text heard, struct text meant, bool sure)
{
    for (size_t row = table_find(h->ear->pairs, heard); row < h->ear->pairs->rows;
         row = table_next(h->ear->pairs, row))
        if (text_equal(table_cell(h->ear->pairs, row, 1), meant))
            return sure || !never_wrong(h, row);
    return false;
}

/* "Hot", "black": a name's first word that says little, so that what comes behind a comma is none
 * of it ("good hot, better cold"), and ordinary talk only behind an amount ("that black line"). */
static bool says_little(const struct hearing *h, size_t first)
{
    return h->r->words.at[first].tag == TAG_STATE;
}

/* How far the word is from the one that the name asks for; above NEIGHBOUR_TRUST where it is right
 * as it is. */
static int name_distance(struct hearing *h, const struct sentence *s, size_t i, size_t begin,
                         struct text asked)
{
    const struct word *w = &h->r->words.at[i];
    if (pair_listed(h, w->key, asked,
                    !h->wary && (amount_before(h, s, begin) || !says_little(h, begin))))
        return -100;
    bool other = w->tag == TAG_OTHER;
    if (h->wary || text_equal(w->key, asked) || !may_be_wrong(w) || w->tag == TAG_FOOD
        || never_wrong(h, table_find(h->ear->pairs, w->key))
        || (!other && !amount_before(h, s, begin)))
        return NEIGHBOUR_TRUST + 1;
    const struct sounding heard = sounding_of(sounds_of(h, w->key)),
                          meant = sounding_of(sounds_of(h, asked));
    bool brief = heard.sounds.length < SOUNDS_LEAST || meant.sounds.length < SOUNDS_LEAST;
    int distance = (int) sound_distance(&h->ear->sounds, &heard, &meant, NEIGHBOUR_TRUST);
    if (!meant.sounds.length || (brief && distance > HOMOPHONE))
        return NEIGHBOUR_TRUST + 1;
    return distance + (other ? 0 : KNOWN_COST);
}

/* The name's reading in which word `i` is the wrong one, wherever in the name it stands. */
static void try_name(struct hearing *h, const struct sentence *s, size_t i, const struct entry *e,
                     struct guess *best, struct span *words)
{
    for (size_t j = 0; j < e->words_count && j <= i - s->first; j++) {
        struct text asked = TEXT_EMPTY;
        if (j ? !name_begins(h, entry_words(e), i - j)
                    || (says_little(h, i - j) && h->r->words.at[i - 1].after >= AFTER_COMMA)
              : i == s->last || !name_goes_on(h, entry_words(e), i + 1))
            continue;
        if (!name_fits(h, entry_words(e), i - j, s->last, i, &asked))
            continue;
        int distance = name_distance(h, s, i, i - j, asked);
        if (distance > NEIGHBOUR_TRUST)
            continue;
        consider(best, e, distance);
        if (best->entry == e)
            *words = (struct span){i - j, i - j + e->words_count - 1};
    }
}

/* All names of foods that have the word `key`. */
static void try_names(struct hearing *h, const struct sentence *s, size_t i, struct text key,
                      struct guess *best, struct span *words)
{
    size_t count;
    const struct entry *entries = pack_entries(h->ear->k, &count);
    const uint32_t *names = pack_foods_with(h->ear->k, key, &count);
    if (!unit_set_has(&h->ear->wanted, TAG_FOOD))
        return;
    for (size_t n = 0; n < count; n++)
        try_name(h, s, i, &entries[names[n]], best, words);
}

/* "Chicken sock": one wrong word in a name of several, told by the word beside it. */
static void hear_name(struct hearing *h, const struct sentence *s, size_t i)
{
    struct guess best = {0};
    struct span words = NO_WORDS;
    if (i > s->first)
        try_names(h, s, i, h->r->words.at[i - 1].key, &best, &words);
    if (i < s->last)
        try_names(h, s, i, h->r->words.at[i + 1].key, &best, &words);
    if (best.entry)
        apply_entry(h, words, (struct span){i, i}, best.entry);
}

static bool beside_food(const struct hearing *h, const struct sentence *s, size_t i)
{
    static const unsigned char TAGS[] = {TAG_FOOD,   TAG_STATE, TAG_EXTRACT, TAG_PART,
                                         TAG_INSIDE, TAG_OTHER, TAG_DONE};
    return (i > s->first && memchr(TAGS, h->r->words.at[i - 1].tag, sizeof TAGS))
           || (i < s->last && memchr(TAGS, h->r->words.at[i + 1].tag, sizeof TAGS));
}

void hear_names(struct hearing *h, const struct sentence *s)
{
    for (size_t i = s->first; i <= s->last; i++) {
        const struct word *w = &h->r->words.at[i];
        if (!w->filler && w->tag != TAG_INSIDE && w->entry_first == i && may_be_wrong(w)
            && beside_food(h, s, i))
            hear_name(h, s, i);
    }
}
