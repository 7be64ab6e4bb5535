/* tag/guess.c: what was meant, by what was heard: candidates that sound alike.
 * SPDX-License-Identifier: MIT */
#include "tag/guess.h"

#include <string.h>

/* In hundredths of a slip for each sound, as sound_distance has it; found by trial on recordings.
 */
enum {
    MARK_BONUS = 15, /* a candidate of the marks that the place asks for: a spice by the teaspoon */
    SEEN_BONUS = 4,  /* for each time that the candidate was heard elsewhere in the recording */
    PLURAL_COST = 15, /* "rings" for one wing */
    HEARD_TRUST = 13  /* where a place trusts no sound by itself: how near a food must be that is
                         named elsewhere */
};
#define ROOT_LETTERS 4 /* a shorter beginning says nothing: "cod" in "coddle" */

void consider(struct guess *g, const struct entry *e, int distance)
{
    bool same = g->entry && text_equal(entry_value(g->entry), entry_value(e));
    if (!g->entry || distance < g->distance) {
        if (!same) {
            g->other = g->entry;
            g->other_distance = g->distance;
        }
        g->entry = e;
        g->distance = distance;
    } else if (!same && (!g->other || distance < g->other_distance)) {
        g->other = e;
        g->other_distance = distance;
    }
}

/* "American" for American cheese is a short name, "lemony" a form of lemon: neither is a wrong
 * word. */
static bool of_one_root(struct text name, struct text key)
{
    if (name.length > key.length)
        return memcmp(name.at, key.at, key.length) == 0
               || memcmp(name.at + name.length - key.length, key.at, key.length) == 0;
    return name.length < key.length && name.length >= ROOT_LETTERS
           && !memchr(key.at, ' ', key.length) && memcmp(key.at, name.at, name.length) == 0;
}

bool is_plural(struct text word)
{
    return text_ends(word, "s") && !text_ends(word, "ss");
}

/* How far the sound may be from the candidate's; -1: not to be taken. Where the place trusts no
 * sound, only a food that the recording names elsewhere is taken, or what sounds the same in a sure
 * place. */
static int trust_in(const struct hearing_slot *slot, const struct entry *e, int heard)
{
    if (slot->trust)
        return (int) slot->trust;
    if (e->tag == TAG_FOOD && heard)
        return HEARD_TRUST;
    return slot->sure ? HOMOPHONE : -1;
}

/* The largest distance at which the candidate is taken, or less than 0, if it was heard so often.
 */
static int most_for(const struct hearing_slot *slot, const struct asked *a, const struct entry *e,
                    int heard)
{
    int bonus = (e->marks & slot->marks ? MARK_BONUS : 0) + (slot->trust ? SEEN_BONUS * heard : 0);
    int most = trust_in(slot, e, heard) - a->cost + bonus;
    most = most < a->most ? most : a->most;
    return most >= 0 && a->plural && !is_plural(entry_words(e)) ? most - PLURAL_COST : most;
}

static void guess_candidate(struct hearing *h, const struct hearing_slot *slot,
                            const struct asked *a, const struct pronounced *p, struct guess *g)
{
    size_t count;
    const struct entry *e = &pack_entries(h->ear->k, &count)[p->entry];
    int heard = slot->trust || e->tag == TAG_FOOD ? times_heard(h, e) : 0;
    int most = most_for(slot, a, e, heard);
    if (most < 0)
        return;
    struct text sounds = ref_text(&p->sounds);
    int distance = (int) sound_distance(&h->ear->sounds, a->as.sounds, sounds, (unsigned) most);
    bool brief = a->as.sounds.length < SOUNDS_LEAST || sounds.length < SOUNDS_LEAST;
    if (distance <= most && (distance <= HOMOPHONE || !brief)
        && !of_one_root(entry_words(e), a->key))
        consider(g, e, trust_in(slot, e, heard) - (most - distance));
}

/* What no candidate of the slot can have more of: see most_for(). */
static int most_of_any(const struct hearing_slot *slot, const struct asked *a)
{
    int trust = slot->trust ? (int) slot->trust + SEEN_BONUS * SEEN_MOST : HEARD_TRUST;
    return trust + (slot->marks ? MARK_BONUS : 0) - a->cost;
}

/* Most are refused by what is seen at once. */
static bool may_be_near(const struct asked *a, const struct pronounced *p, int most)
{
    const struct sounding as = {ref_text(&p->sounds), p->letters};
    return most >= 0 && sounds_may_be_near(&a->as, &as, (unsigned) most);
}

/* Where only a food that was heard is trusted, only those. */
static void guess_heard_foods(struct hearing *h, const struct hearing_slot *slot,
                              const struct asked *a, struct guess *g)
{
    size_t count;
    const struct pronounced *foods = pack_pronounced(h->ear->k, TAG_FOOD, &count);
    const int most = most_of_any(slot, a);
    if (!h->foods_known)
        list_heard_foods(h);
    for (size_t i = 0; i < h->foods.count; i++)
        if (may_be_near(a, &foods[h->foods.at[i]], most))
            guess_candidate(h, slot, a, &foods[h->foods.at[i]], g);
}

/* The candidates of one tag that are still to be looked at. */
struct run {
    const struct pronounced *at, *end;
};
#define RUNS_MOST TAG_CODES

/* Candidates of several tags are looked at in the order of their entries, since of two that are as
 * near the first one counts. NULL: there are no more. */
static const struct pronounced *next_pronounced(struct run *runs, size_t count)
{
    struct run *first = NULL;
    for (size_t i = 0; i < count; i++)
        if (runs[i].at < runs[i].end && (!first || runs[i].at->entry < first->at->entry))
            first = &runs[i];
    return first ? first->at++ : NULL;
}

void guess_by_sound(struct hearing *h, const struct hearing_slot *slot, const struct asked *a,
                    struct guess *g)
{
    struct run runs[RUNS_MOST];
    size_t count = 0;
    if (!slot->trust && !slot->sure) {
        if (unit_set_has(&slot->expects, TAG_FOOD))
            guess_heard_foods(h, slot, a, g);
        return;
    }
    for (int tag = unit_set_next(&slot->expects, 0); tag >= 0;
         tag = unit_set_next(&slot->expects, tag + 1)) {
        size_t length;
        runs[count].at = pack_pronounced(h->ear->k, (unsigned char) tag, &length);
        runs[count].end = runs[count].at + length;
        count++;
    }
    const int most = most_of_any(slot, a);
    for (const struct pronounced *p = next_pronounced(runs, count); p;
         p = next_pronounced(runs, count))
        if (may_be_near(a, p, most))
            guess_candidate(h, slot, a, p, g);
}
