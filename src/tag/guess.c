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

/* Whether the candidate may be what was meant, and how far it is. */
static bool is_near(const struct hearing *h, const struct hearing_slot *slot, const struct asked *a,
                    const struct pronounced *p, struct found *out)
{
    size_t count;
    const struct entry *e = &pack_entries(h->ear->k, &count)[p->entry];
    int heard = slot->trust || e->tag == TAG_FOOD ? times_heard(h, e) : 0;
    int most = most_for(slot, a, e, heard);
    if (most < 0)
        return false;
    const struct sounding as = {ref_text(&p->sounds), p->letters};
    int distance = (int) sound_distance(&h->ear->sounds, &a->as, &as, (unsigned) most);
    bool brief = a->as.sounds.length < SOUNDS_LEAST || as.sounds.length < SOUNDS_LEAST;
    *out = (struct found){e, trust_in(slot, e, heard) - (most - distance)};
    return distance <= most && (distance <= HOMOPHONE || !brief)
           && !of_one_root(entry_words(e), a->key);
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
    struct found found;
    for (size_t i = 0; i < h->foods.count; i++) {
        const struct pronounced *p = &foods[h->foods.at[i]];
        if (sound_reaches(&near, p) && is_near(h, slot, a, p, &found))
            consider(g, found.entry, found.distance);
    }
}

/* In the order of the entries, since of two that are as near the first one counts. */
static void note_found(struct hearing *h, struct found found)
{
    struct found *to = LIST_ADD(h->r->arena, &h->found);
    for (; to > h->found.at && to[-1].entry > found.entry; to--)
        *to = to[-1];
    *to = found;
}

static void look_at(struct hearing *h, const struct hearing_slot *slot, const struct asked *a,
                    const struct pronounced *p)
{
    struct found found;
    if (is_near(h, slot, a, p, &found))
        note_found(h, found);
}

/* Most candidates of a tag are refused by what is seen at once; foods that were not heard by less.
 */
static void look_through(struct hearing *h, const struct hearing_slot *slot, const struct asked *a,
                         unsigned char tag)
{
    size_t count;
    const struct pronounced *all = pack_pronounced(h->ear->k, tag, &count), *end = all + count;
    const struct sound_reach heard_near = sound_reach_of(&a->as, most_of_any(slot, a, true)),
                             near = tag != TAG_FOOD
                                        ? heard_near
                                        : sound_reach_of(&a->as, most_of_any(slot, a, false));
    for (const struct pronounced *p = all; p < end; p++)
        if (sound_reaches(&near, p))
            look_at(h, slot, a, p);
    for (size_t i = 0; tag == TAG_FOOD && i < h->foods.count; i++) {
        const struct pronounced *p = &all[h->foods.at[i]];
        if (sound_reaches(&heard_near, p) && !sound_reaches(&near, p))
            look_at(h, slot, a, p);
    }
}

static void guess_any(struct hearing *h, const struct hearing_slot *slot, const struct asked *a,
                      struct guess *g)
{
    if (most_of_any(slot, a, true) < 0)
        return;
    LIST_CUT(&h->found, 0);
    for (int tag = unit_set_next(&slot->expects, 0); tag >= 0;
         tag = unit_set_next(&slot->expects, tag + 1))
        look_through(h, slot, a, (unsigned char) tag);
    for (size_t i = 0; i < h->found.count; i++)
        consider(g, h->found.at[i].entry, h->found.at[i].distance);
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
