/* tag/listen.c: units that stand where something else is asked for.
 * SPDX-License-Identifier: MIT */
#include "tag/listen.h"

#include <limits.h>

#include "tag/doubt.h"
#include "tag/guess.h"

/* In hundredths of a slip for each sound, as sound_distance has it; found by trial on recordings.
 */
enum {
    MARGIN = 8,         /* a second reading as near as this leaves the choice to the cook */
    NO_WORD_BONUS = 10, /* captions print words of a dictionary: what is none is likely wrong */
    NAME_TRUST = 5,     /* the most where the first word is right there by itself: "chana doll" */
    SMALL_TRUST = 14    /* the most where a small word is one of those put together */
};

static bool has_reading(const struct word *w, const struct unit_set *tags)
{
    if (unit_set_has(tags, w->tag))
        return true;
    for (const struct entry *e = w->entry; e; e = entry_next(e))
        if (unit_set_has(tags, e->tag))
            return true;
    return false;
}

/* Whether a pair of that strength is looked at there. A food that is named elsewhere needs no sure
 * place: "start with the rise", and a cup of rice comes later. */
static bool strong_enough(const struct hearing *h, struct text strength,
                          const struct hearing_slot *slot, const struct entry *meant)
{
    if (slot->always || slot->nouns)
        return text_is(strength, "always") || (slot->nouns && text_is(strength, "noun"));
    bool weak = text_is(strength, "weak"), faint = text_is(strength, "faint");
    if (h->wary && (weak || faint) && !slot->certain)
        return false;
    return !(weak || faint) || slot->sure || (slot->again && !slot->strong)
           || (weak && meant->tag == TAG_FOOD && times_heard(h, meant));
}

/* The entry that is known to be heard as `key`, whose first pair is `row`, and fits the slot; NULL
 * when none is. A pair whose heard word is ordinary talk ("time") needs a place that leaves no
 * doubt. */
static const struct entry *known_pair(const struct hearing *h, struct text key, size_t row,
                                      const struct hearing_slot *slot)
{
    const struct unit_set *tags = &slot->expects;
    if (slot->again && !heard_before(h, key))
        return NULL;
    for (; row < h->ear->pairs->rows; row = table_next(h->ear->pairs, row)) {
        for (const struct entry *e = pack_find(h->ear->k, table_cell(h->ear->pairs, row, 1), NULL);
             e; e = entry_next(e))
            if (unit_set_has(tags, e->tag)
                && strong_enough(h, table_cell(h->ear->pairs, row, 2), slot, e))
                return e;
    }
    return NULL;
}

/* "Rest the dough": a verb of the kitchen that may stand there is what was said; "see" is none. */
static bool kitchen_verb(const struct word *w, const struct hearing_slot *slot)
{
    const struct entry *verb = entry_as(w->entry, TAG_ACTION);
    return verb && unit_set_has(&slot->expects, TAG_ACTION)
           && !(verb->marks & (MARK_OF(light) | MARK_OF(hidden)));
}

/* "The dish has a flower in the bottom": what is not counted has no "a". */
static bool one_of_them(const struct hearing *h, const struct sentence_units *u, size_t begin)
{
    const struct word *w = begin ? &h->r->words.at[u->last[begin - 1]] : NULL;
    return w && w->tag == TAG_ARTICLE && w->key.length <= 2;
}

/* Some units that may be one misheard thing, with what every slot asks of them. */
struct suspect {
    size_t begin, end;  /* units, end left out */
    struct asked asked; /* sounds are filled in when first needed */
    size_t pair;        /* their first row in mishearings.tsv; its rows where there is none */
    bool doubtful;      /* by their sound, too */
    bool no_word;       /* one of their words is none of the language */
};

/* "A pound of large shrimp", "a spoon of lowfat spread": what stands right before a food tells of
 * it, however it sounds. */
static bool tells_of_food(const struct hearing *h, const struct sentence_units *u, size_t end,
                          const struct hearing_slot *slot)
{
    return end < u->count && unit_set_has(&slot->expects, TAG_FOOD)
           && h->r->words.at[u->last[end]].tag == TAG_FOOD;
}

/* "A pound of large prawns": "large" is what it is, and no lard. */
static bool tells_itself(const struct word *w)
{
    return w->tag == TAG_SIZE || w->tag == TAG_STATE || w->tag == TAG_DONE;
}

static void hear_slot(struct hearing *h, const struct sentence_units *u, struct suspect *s,
                      const struct hearing_slot *slot, struct guess *g)
{
    const bool tells = s->end - s->begin == 1 && tells_of_food(h, u, s->end, slot);
    const struct entry *known = known_pair(h, s->asked.key, s->pair, slot);
    const struct word *first = &h->r->words.at[u->last[s->begin]];
    if (known && (known->marks & MARK_OF(uncounted)) && one_of_them(h, u, s->begin))
        known = NULL;
    if (known && tells && tells_itself(first))
        known = NULL;
    bool fits = has_reading(first, &slot->expects);
    bool other = slot->sure && !kitchen_verb(first, slot);
    if (known && (!fits || s->end - s->begin > 1 || slot->again || other)) {
        consider(g, known, -100 - (int) (s->end - s->begin));
    } else if (!h->wary && (!fits || s->end - s->begin > 1) && !slot->nouns && !slot->always
               && !slot->strong && s->doubtful && !tells) {
        if (!s->asked.as.sounds.length)
            s->asked.as = sounding_of(sounds_of(h, s->asked.key));
        struct asked asked = s->asked;
        if ((slot->sure || s->end - s->begin > 1) && unit_set_has(&slot->expects, TAG_FOOD)
            && s->no_word)
            asked.cost -= NO_WORD_BONUS;
        if (fits && asked.most > NAME_TRUST)
            asked.most = NAME_TRUST;
        guess_by_sound(h, slot, &asked, g);
    }
}

/* The slots behind units that end before `end`: few, and often none. */
static struct unit_set slots_behind(const struct ear *ear, const struct recording *r,
                                    struct sentence_units *u, size_t end)
{
    struct unit_set slots = ear->closed;
    const struct place_set *behind = end < u->count ? unit_beside(u, r, end) : NULL;
    for (size_t i = 0; behind && i < PLACE_SET_WORDS / 2;
         i++) /* the upper half of them, EAR_SLOTS and more */
        slots.bits[i] |= behind->bits[i + PLACE_SET_WORDS / 2];
    if (slot_at_end(r, u, end))
        unit_set_join(&slots, &ear->at_end);
    return slots;
}

static struct unit_set slots_before(const struct hearing *h, struct sentence_units *u, size_t begin,
                                    bool again)
{
    const struct ear *ear = h->ear;
    struct unit_set slots = begin ? ear->open : ear->at_begin;
    const struct place_set *before = begin ? unit_beside(u, h->r, begin - 1) : NULL;
    for (size_t i = 0; before && i < PLACE_SET_WORDS / 2; i++)
        slots.bits[i] |= before->bits[i];
    unit_set_meet(&slots, &ear->again[again]);
    struct unit_set farther = slots;
    unit_set_meet(&farther, &ear->farther);
    for (int n = unit_set_next(&farther, 0); n >= 0; n = unit_set_next(&farther, n + 1))
        if (!slot_begins(&ear->slots.at[n], h->r, u, begin))
            unit_set_remove(&slots, (unsigned char) n);
    return slots;
}

/* What all slots ask of units [begin, end); false where nothing speaks for another reading.
 * `pairs`: they may be listed. */
static bool suspect(const struct hearing *h, const struct sentence_units *u, bool pairs,
                    char room[KEY_BYTES], struct suspect *s)
{
    const struct table *t = h->ear->pairs;
    s->doubtful = units_doubtful(h, u, s->begin, s->end);
    if (!pairs && !s->doubtful)
        return false;
    s->asked.key = joined_key(h, u->first[s->begin], u->last[s->end - 1], room);
    s->pair = pairs ? table_find(t, s->asked.key) : t->rows;
    s->doubtful &= !never_wrong(h, s->pair);
    if (s->doubtful) {
        s->asked.plural = is_plural(s->asked.key);
        bool part = small_among(h, u, s->begin, s->end);
        s->asked.cost = part ? 0 : doubt_cost(h, u, s->begin, s->end);
        s->asked.most = part ? SMALL_TRUST : INT_MAX;
        s->no_word = !part && strange_among(h, u, s->begin, s->end);
    }
    return s->doubtful || s->pair < t->rows;
}

/* The best reading of units [begin, end) in any of the slots; none where nothing speaks for one. */
static struct guess hear_suspect(struct hearing *h, struct sentence_units *u, size_t begin,
                                 size_t end, bool pairs, const struct unit_set *open)
{
    char room[KEY_BYTES];
    struct guess g = {0};
    struct suspect s = {.begin = begin, .end = end};
    struct unit_set slots = slots_behind(h->ear, h->r, u, end);
    unit_set_meet(&slots, open);
    if (unit_set_empty(&slots) || !suspect(h, u, pairs, room, &s))
        return g;
    for (int n = unit_set_next(&slots, 0); n >= 0; n = unit_set_next(&slots, n + 1))
        if (slot_ends(&h->ear->slots.at[n], h->r, u, end))
            hear_slot(h, u, &s, &h->ear->slots.at[n], &g);
    return g;
}

/* Whether pairs may begin with the unit. A word that has no letters of its own (edits/words.c), or
 * too many, is left out of a key. */
static bool may_be_paired(const struct hearing *h, const struct sentence_units *u, size_t begin)
{
    struct text key = h->r->words.at[u->first[begin]].key;
    return !key.length || key.length >= KEY_BYTES || ear_may_begin(h->ear, key);
}

static void offer(struct hearing *h, struct span words, const struct guess *g)
{
    for (size_t i = words.first; i <= words.last; i++)
        word_set_heard(h->r->arena, &h->r->words.at[i], g->entry, g->other);
}

static bool settle(struct hearing *h, struct span words, const struct guess *g)
{
    if (!g->entry)
        return false;
    if (g->other && g->other_distance < g->distance + MARGIN)
        offer(h, words, g);
    else
        apply_entry(h, words, words, g->entry);
    return true;
}

/* Tries one, two and three units from `begin` on; the nearest reading wins. */
static void hear_unit(struct hearing *h, struct sentence_units *u, size_t begin, bool again)
{
    struct guess best = {0};
    struct span words = NO_WORDS;
    bool pairs = may_be_paired(h, u, begin);
    const struct word *first = &h->r->words.at[u->last[begin]];
    if (!pairs && !may_be_wrong(first) && !small_begins(first))
        return;
    struct unit_set open = slots_before(h, u, begin, again);
    if (unit_set_empty(&open))
        return;
    for (size_t end = begin + 1; end <= u->count && end <= begin + JOINED_WORDS; end++) {
        if (units_divided(h, u, begin, end))
            break;
        struct guess g = hear_suspect(h, u, begin, end, pairs, &open);
        if (g.entry && (!best.entry || g.distance < best.distance)) {
            best = g;
            words = (struct span){u->first[begin], u->last[end - 1]};
        }
    }
    if (settle(h, words, &best))
        for (size_t n = begin; n < u->count && n < begin + JOINED_WORDS; n++)
            unit_forget(u, n);
}

void hear_units(struct hearing *h, const struct sentence *s, bool again)
{
    struct sentence_units u;
    units_make(&u, h->r, s, &h->ear->beside);
    for (size_t i = 0; i < u.count; i++)
        if (!h->r->words.at[u.last[i]].rare->heard_as)
            hear_unit(h, &u, i, again);
}
