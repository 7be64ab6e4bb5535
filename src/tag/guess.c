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
    const struct sounding as = {ref_text(&p->sounds), p->letters};
    int distance = (int) sound_distance(&h->ear->sounds, &a->as, &as, (unsigned) most);
    bool brief = a->as.sounds.length < SOUNDS_LEAST || as.sounds.length < SOUNDS_LEAST;
    if (distance <= most && (distance <= HOMOPHONE || !brief)
        && !of_one_root(entry_words(e), a->key))
        consider(g, e, trust_in(slot, e, heard) - (most - distance));
}

/* What most_for() gives no candidate more than: of one that was not heard in the recording, or was.
 */
static int most_of_any(const struct hearing_slot *slot, const struct asked *a, bool heard)
{
    int trust = slot->trust ? (int) slot->trust + (heard ? SEEN_BONUS * SEEN_MOST : 0)
                : heard     ? HEARD_TRUST
                            : HOMOPHONE;
    int most = trust + (slot->marks ? MARK_BONUS : 0) - a->cost;
    return most < a->most ? most : a->most;
}

/* Where only a food that was heard is trusted, only those. */
static void guess_heard_foods(struct hearing *h, const struct hearing_slot *slot,
                              const struct asked *a, struct guess *g)
{
    size_t count;
    const struct pronounced *foods = pack_pronounced(h->ear->k, TAG_FOOD, &count);
    const struct sound_reach near = sound_reach_of(&a->as, most_of_any(slot, a, true));
    for (size_t i = 0; i < h->foods.count; i++)
        if (sound_reaches(&near, &foods[h->foods.at[i]]))
            guess_candidate(h, slot, a, &foods[h->foods.at[i]], g);
}

/* The candidates of one tag that are still to be looked at. */
struct run {
    const struct pronounced *at, *end;
};
#define RUNS_MOST TAG_CODES

/* All that the slot expects, tag by tag. */
static size_t runs_make(const struct hearing *h, const struct hearing_slot *slot,
                        struct run runs[RUNS_MOST])
{
    size_t count = 0, length;
    for (int tag = unit_set_next(&slot->expects, 0); tag >= 0;
         tag = unit_set_next(&slot->expects, tag + 1)) {
        runs[count].at = pack_pronounced(h->ear->k, (unsigned char) tag, &length);
        runs[count].end = runs[count].at + length;
        count += length > 0;
    }
    return count;
}

/* Candidates of several tags are looked at in the order of their entries, since of two that are as
 * near the first one counts: the run whose turn it is. NULL: there are no more. */
static struct run *next_run(struct run *runs, size_t count)
{
    struct run *first = NULL;
    for (size_t i = 0; i < count; i++)
        if (runs[i].at < runs[i].end && (!first || runs[i].at->entry < first->at->entry))
            first = &runs[i];
    return first;
}

/* The foods that were heard, in order, as they are met on the way through all. */
struct heard_foods {
    const struct pronounced *all;
    const size_t *at;
    size_t left;
};

static bool is_heard(struct heard_foods *f, const struct pronounced *p)
{
    if (!f->left || p != &f->all[*f->at])
        return false;
    f->left--;
    f->at++;
    return true;
}

/* Most are refused by what is seen at once; foods that were not heard by less. */
static void guess_any(struct hearing *h, const struct hearing_slot *slot, const struct asked *a,
                      struct guess *g)
{
    struct run runs[RUNS_MOST];
    size_t count = runs_make(h, slot, runs), foods;
    struct heard_foods heard = {pack_pronounced(h->ear->k, TAG_FOOD, &foods), h->foods.at,
                                h->foods.count};
    const struct sound_reach near = sound_reach_of(&a->as, most_of_any(slot, a, false)),
                             heard_near = sound_reach_of(&a->as, most_of_any(slot, a, true));
    for (struct run *run = next_run(runs, count); run; run = next_run(runs, count)) {
        do {
            const struct pronounced *p = run->at++;
            bool farther = p->tag != TAG_FOOD || is_heard(&heard, p);
            if (sound_reaches(farther ? &heard_near : &near, p))
                guess_candidate(h, slot, a, p, g);
        } while (count == 1 && run->at < run->end);
    }
}

void guess_by_sound(struct hearing *h, const struct hearing_slot *slot, const struct asked *a,
                    struct guess *g)
{
    bool food = unit_set_has(&slot->expects, TAG_FOOD);
    if (food && !h->foods_known)
        list_heard_foods(h);
    if (slot->trust || slot->sure)
        guess_any(h, slot, a, g);
    else if (food)
        guess_heard_foods(h, slot, a, g);
}
