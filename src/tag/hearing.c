/* tag/hearing.c: what was heard in one recording so far.
 * SPDX-License-Identifier: MIT */
#include "tag/hearing.h"

#include <string.h>

/* How many words are read as this value of this tag. */
struct heard_count {
    const char *value; /* where it stands in the pack */
    struct heard_count *next;
    int count;
    unsigned char tag;
};

/* How words that nobody knows sound, which is worked out letter by letter; they come again. */
struct known_sound {
    struct text words, sounds;
    struct known_sound *next;
};

/* A text of the pack stands there once, so that where it stands tells which it is. */
static size_t bucket_of(const char *value)
{
    return (uintptr_t) value % COUNT_BUCKETS;
}

static struct heard_count *count_of(const struct hearing *h, unsigned char tag, const char *value)
{
    struct heard_count *c = h->counts[bucket_of(value)];
    while (c && (c->tag != tag || c->value != value))
        c = c->next;
    return c;
}

/* Counts the word, by 1, or out again, by -1, as what it is read as now. */
static void count_word(struct hearing *h, const struct word *w, int by)
{
    if (!w->entry || w->tag == TAG_INSIDE)
        return;
    const char *value = entry_value(w->entry).at;
    struct heard_count *c = count_of(h, w->tag, value);
    if (!c) {
        struct heard_count **bucket = &h->counts[bucket_of(value)];
        c = arena_alloc(h->r->arena, sizeof *c);
        *c = (struct heard_count){value, *bucket, 0, w->tag};
        *bucket = c;
        h->foods_known = false;
    }
    c->count += by;
}

/* One comma in so many words, and full stops: who wrote that has read it over. Captions that a
 * machine made have fewer or none. */
#define COMMA_WORDS 33

static bool with_care(const struct recording *r)
{
    size_t commas = 0;
    for (size_t i = 0; i < r->words.count; i++)
        commas += r->words.at[i].after == AFTER_COMMA;
    return r->punctuated && commas * COMMA_WORDS >= r->words.count;
}

#define WRONG_LEAST 2

bool many_wrong(const struct hearing *h)
{
    return h->heard.count >= WRONG_LEAST;
}

struct hearing *hearing_begin(struct recording *r, const struct ear *ear)
{
    struct hearing *h = arena_alloc(r->arena, sizeof *h);
    h->r = r;
    h->ear = ear;
    h->wary = with_care(r);
    for (size_t i = 0; i < r->words.count; i++)
        count_word(h, &r->words.at[i], 1);
    return h;
}

int times_heard(const struct hearing *h, const struct entry *e)
{
    const struct heard_count *c = count_of(h, e->tag, entry_value(e).at);
    return !c ? 0 : c->count < SEEN_MOST ? c->count : SEEN_MOST;
}

void list_heard_foods(struct hearing *h)
{
    size_t count;
    const struct pronounced *all = pack_pronounced(h->ear->k, TAG_FOOD, &count);
    LIST_CUT(&h->foods, 0);
    for (size_t i = 0; i < count; i++)
        if (count_of(h, TAG_FOOD, ref_text(&all[i].value).at))
            *LIST_ADD(h->r->arena, &h->foods) = i;
    h->foods_known = true;
}

struct text sounds_of(struct hearing *h, struct text words)
{
    struct known_sound **bucket = &h->sounds[text_hash(words) % SOUND_BUCKETS], *known = *bucket;
    while (known && !text_equal(known->words, words))
        known = known->next;
    if (!known) {
        known = arena_alloc(h->r->arena, sizeof *known);
        *known = (struct known_sound){arena_text(h->r->arena, words),
                                      ear_sound(h->ear, h->r->arena, words), *bucket};
        *bucket = known;
    }
    return known->sounds;
}

struct text joined_key(const struct hearing *h, size_t first, size_t last, char out[KEY_BYTES])
{
    size_t length = 0;
    for (size_t i = first; i <= last; i++) {
        const struct word *w = &h->r->words.at[i];
        if (w->filler || length + w->key.length + 1 > KEY_BYTES)
            continue;
        if (length)
            out[length++] = ' ';
        memcpy(out + length, w->key.at, w->key.length);
        length += w->key.length;
    }
    return (struct text){out, length};
}

bool heard_before(const struct hearing *h, struct text key)
{
    for (size_t i = 0; i < h->heard.count; i++)
        if (text_equal(h->heard.at[i], key))
            return true;
    return false;
}

static void note_heard(struct hearing *h, const struct word *w)
{
    if (!w->rare->heard_or && !heard_before(h, w->key))
        *LIST_ADD(h->r->arena, &h->heard) = w->key;
}

void apply_entry(struct hearing *h, struct span words, struct span wrong, const struct entry *e)
{
    for (size_t i = words.first; i <= words.last; i++) {
        struct word *w = &h->r->words.at[i];
        if (i >= wrong.first && i <= wrong.last) {
            word_set_heard(h->r->arena, w, e, w->rare->heard_or);
            note_heard(h, w);
        }
        if (ratio_known(w->rare->number)) { /* digits stay a number, of the other value */
            word_set_number(h->r->arena, w, entry_number(e));
            continue;
        }
        count_word(h, w, -1);
        w->entry = e;
        w->entry_first = (unsigned) words.first;
        w->tag = i == words.last ? e->tag : TAG_INSIDE;
        count_word(h, w, 1);
    }
}
