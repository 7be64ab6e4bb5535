/* tag/misheard.c
 * SPDX-License-Identifier: MIT */
#include "tag/misheard.h"

#include <limits.h>
#include <string.h>

#include "tag/slot.h"

/* In hundredths of a slip for each sound, as sound_distance has it; found by trial on recordings.
 */
enum {
    MARGIN = 8,      /* a second reading as near as this leaves the choice to the cook */
    MARK_BONUS = 15, /* a candidate of the marks that the place asks for: a spice by the teaspoon */
    SEEN_BONUS = 4,  /* for each time that the candidate was heard elsewhere in the recording ... */
    SEEN_MOST = 3,   /* ... up to so many */
    KNOWN_COST =
        10, /* a word of the kitchen is less likely wrong than one that has no place in it */
    JOINED_COST = 5,     /* words put together, for each word after the first */
    NO_WORD_BONUS = 10,  /* captions print words of a dictionary: what is none is likely wrong */
    SMALL_TRUST = 10,    /* the most where a small word is one of those put together */
    LONG_TRUST = 8,      /* the most for words that are a long name anywhere */
    PLURAL_COST = 15,    /* "rings" for one wing */
    NEIGHBOUR_TRUST = 18 /* a word that a name of several words asks for: "chicken sock" */
};
#define JOINED_WORDS 3
#define ROOT_LETTERS 4 /* a shorter beginning says nothing: "cod" in "coddle" */
/* Where a place trusts no sound by itself: how near a food must be that is named elsewhere. */
#define HEARD_TRUST 13
#define SOUNDS_LEAST                                                             \
    4 /* shorter words are all near each other: only homophones and listed pairs \
       */
#define HOMOPHONE 5
#define KEY_BYTES 80

/* How many words are read as this value of this tag. */
struct heard_count {
    struct text value;
    struct heard_count *next;
    int count;
    unsigned char tag;
};
#define COUNT_BUCKETS 512

/* How words that nobody knows sound, which is worked out letter by letter; they come again. */
struct known_sound {
    struct text words, sounds;
    struct known_sound *next;
};
#define SOUND_BUCKETS 256

struct hearing {
    struct recording *r;
    const struct ear *ear;
    LIST(struct text) heard; /* each word that was taken for another one, once */
    struct heard_count *counts[COUNT_BUCKETS];
    LIST(size_t) foods; /* numbers of the pronounced foods that were heard, now or before */
    struct known_sound *sounds[SOUND_BUCKETS];
    bool foods_known; /* no other value was counted since they were listed */
};

/* The best and the second best reading of some words. */
struct guess {
    const struct entry *entry, *other;
    int distance, other_distance;
};

/* ---- candidates */

static struct heard_count *count_of(const struct hearing *h, unsigned char tag, struct text value)
{
    struct heard_count *c = h->counts[text_hash(value) % COUNT_BUCKETS];
    while (c && (c->tag != tag || !text_equal(c->value, value)))
        c = c->next;
    return c;
}

/* Counts the word, by 1, or out again, by -1, as what it is read as now. */
static void count_word(struct hearing *h, const struct word *w, int by)
{
    if (!w->entry || w->tag == TAG_INSIDE)
        return;
    struct heard_count *c = count_of(h, w->tag, entry_value(w->entry));
    if (!c) {
        struct heard_count **bucket = &h->counts[text_hash(entry_value(w->entry)) % COUNT_BUCKETS];
        c = arena_alloc(h->r->arena, sizeof *c);
        *c = (struct heard_count){entry_value(w->entry), *bucket, 0, w->tag};
        *bucket = c;
        h->foods_known = false;
    }
    c->count += by;
}

/* How often the candidate was heard as it is, up to SEEN_MOST. */
static int times_heard(const struct hearing *h, const struct entry *e)
{
    const struct heard_count *c = count_of(h, e->tag, entry_value(e));
    return !c ? 0 : c->count < SEEN_MOST ? c->count : SEEN_MOST;
}

/* ---- the words in question */

static struct text sounds_of(struct hearing *h, struct text words)
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

static struct text joined_key(const struct hearing *h, size_t first, size_t last,
                              char out[KEY_BYTES])
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

static bool has_reading(const struct word *w, const struct unit_set *tags)
{
    if (unit_set_has(tags, w->tag))
        return true;
    for (const struct entry *e = w->entry; e; e = entry_next(e))
        if (unit_set_has(tags, e->tag))
            return true;
    return false;
}

/* Words that hold a sentence together are right as they are, unless a pair is listed. */
static bool may_be_wrong(const struct word *w)
{
    switch (w->tag) {
    case TAG_OTHER:
    case TAG_ACTION:
    case TAG_DOING:
    case TAG_DONE:
    case TAG_COUNTER:
    case TAG_TOOL:
    case TAG_FULLNESS:
    case TAG_VESSEL:
    case TAG_PLACE:
    case TAG_EXTRACT:
    case TAG_FOOD:
    case TAG_PART:
    case TAG_DISH:
        return w->key.length > 2 && !ratio_known(w->number);
    default:
        return false;
    }
}

/* Whether the word was taken for another one elsewhere in the recording. */
static bool heard_before(const struct hearing *h, struct text key)
{
    for (size_t i = 0; i < h->heard.count; i++)
        if (text_equal(h->heard.at[i], key))
            return true;
    return false;
}

static void note_heard(struct hearing *h, const struct word *w)
{
    if (!w->heard_or && !heard_before(h, w->key))
        *LIST_ADD(h->r->arena, &h->heard) = w->key;
}

/* Whether a pair of that strength is looked at there. A food that is named elsewhere needs no sure
 * place: "start with the rise", and a cup of rice comes later. */
static bool strong_enough(const struct hearing *h, struct text strength,
                          const struct hearing_slot *slot, const struct entry *meant)
{
    if (slot->always || slot->nouns)
        return text_is(strength, "always") || (slot->nouns && text_is(strength, "noun"));
    bool weak = text_is(strength, "weak"), faint = text_is(strength, "faint");
    return !(weak || faint) || slot->sure || (slot->again && !slot->strong)
           || (weak && meant->tag == TAG_FOOD && times_heard(h, meant));
}

/* The entry that is known to be heard as `key`, whose first pair is `row`, and fits the slot; NULL
 * when none is. A pair whose
 * heard word is ordinary talk ("time") needs a place that leaves no doubt. */
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

/* Ordinary talk, which has no second word or a weak one in the pairs' first row for it, is never
 * taken for something else by its sound. */
static bool never_wrong(const struct hearing *h, size_t row)
{
    if (row >= h->ear->pairs->rows)
        return false;
    struct text strength = table_cell(h->ear->pairs, row, 2);
    return !table_cell(h->ear->pairs, row, 1).length || text_is(strength, "weak")
           || text_is(strength, "faint");
}

/* ---- guessing */

static void consider(struct guess *g, const struct entry *e, int distance)
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

static bool plural(struct text word)
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

/* What was heard, as candidates are held against it. */
struct asked {
    struct text key;
    struct sounding as;
    bool plural;
    int cost; /* of being wrong there at all */
    int most; /* the largest distance that is taken of it */
};

/* The largest distance at which the candidate is taken, or less than 0, if it was heard so often.
 */
static int most_for(const struct hearing_slot *slot, const struct asked *a, const struct entry *e,
                    int heard)
{
    int bonus = (e->marks & slot->marks ? MARK_BONUS : 0) + (slot->trust ? SEEN_BONUS * heard : 0);
    int most = trust_in(slot, e, heard) - a->cost + bonus;
    most = most < a->most ? most : a->most;
    return most >= 0 && a->plural && !plural(entry_words(e)) ? most - PLURAL_COST : most;
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

static void list_foods(struct hearing *h)
{
    size_t count;
    const struct entry *entries = pack_entries(h->ear->k, &count);
    const struct pronounced *all = pack_pronounced(h->ear->k, TAG_FOOD, &count);
    h->foods.count = 0;
    for (size_t i = 0; i < count; i++)
        if (count_of(h, TAG_FOOD, entry_value(&entries[all[i].entry])))
            *LIST_ADD(h->r->arena, &h->foods) = i;
    h->foods_known = true;
}

/* One of those that a slot expects; refused by what is seen at once, most often. */
static void guess_pronounced(struct hearing *h, const struct hearing_slot *slot,
                             const struct asked *a, const struct pronounced *p, struct guess *g)
{
    const struct sounding as = {ref_text(&p->sounds), p->letters};
    const int most = most_of_any(slot, a);
    if (most >= 0 && sounds_may_be_near(&a->as, &as, (unsigned) most))
        guess_candidate(h, slot, a, p, g);
}

/* Where only a food that was heard is trusted, only those. */
static void guess_heard_foods(struct hearing *h, const struct hearing_slot *slot,
                              const struct asked *a, struct guess *g)
{
    size_t count;
    const struct pronounced *foods = pack_pronounced(h->ear->k, TAG_FOOD, &count);
    if (!h->foods_known)
        list_foods(h);
    for (size_t i = 0; i < h->foods.count; i++)
        guess_pronounced(h, slot, a, &foods[h->foods.at[i]], g);
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

/* All candidates that the slot expects, by their sound. */
static void guess_by_sound(struct hearing *h, const struct hearing_slot *slot,
                           const struct asked *a, struct guess *g)
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
    for (const struct pronounced *p = next_pronounced(runs, count); p;
         p = next_pronounced(runs, count))
        guess_pronounced(h, slot, a, p, g);
}

/* ---- applying */

/* Words [first, last] become the entry; `wrong` are the ones that were heard as something else. */
static void apply(struct hearing *h, struct span words, struct span wrong, const struct entry *e)
{
    for (size_t i = words.first; i <= words.last; i++) {
        struct word *w = &h->r->words.at[i];
        if (i >= wrong.first && i <= wrong.last) {
            w->heard_as = e;
            note_heard(h, w);
        }
        if (ratio_known(w->number)) { /* digits stay a number, of the other value */
            w->number = e->number;
            continue;
        }
        count_word(h, w, -1);
        w->entry = e;
        w->entry_first = (unsigned) words.first;
        w->tag = i == words.last ? e->tag : TAG_INSIDE;
        count_word(h, w, 1);
    }
}

static void offer(struct hearing *h, struct span words, const struct guess *g)
{
    for (size_t i = words.first; i <= words.last; i++) {
        h->r->words.at[i].heard_as = g->entry;
        h->r->words.at[i].heard_or = g->other;
    }
}

static bool settle(struct hearing *h, struct span words, const struct guess *g)
{
    if (!g->entry)
        return false;
    if (g->other && g->other_distance < g->distance + MARGIN)
        offer(h, words, g);
    else
        apply(h, words, words, g->entry);
    return true;
}

/* ---- places */

/* Whether the word belongs in a kitchen by itself or in a name: "paper" as in paper towel. */
static bool of_the_kitchen(const struct word *w)
{
    return w->tag != TAG_OTHER || w->begins;
}

/* "Card a mom", "cash you": a small word may be a part of what was said. */
static bool small(const struct word *w)
{
    static const unsigned char TAGS[] = {TAG_ARTICLE, TAG_YOU, TAG_ME, TAG_BE, TAG_IT,
                                         TAG_INTO,    TAG_OF,  TAG_OR, TAG_THE};
    return memchr(TAGS, w->tag, sizeof TAGS) || w->key.length == 1;
}

static bool small_part(const struct hearing *h, const struct sentence_units *u, size_t begin,
                       size_t end)
{
    bool part = false;
    for (size_t i = begin; i < end; i++)
        part |= end - begin > 1 && small(&h->r->words.at[u->last[i]]);
    return part;
}

/* Whether a name may begin with the small word: "am sure", "S Carol"; "a flower" is one. */
static bool small_begins(const struct word *w)
{
    return small(w) && (w->tag == TAG_BE || w->tag == TAG_ME || w->tag == TAG_OTHER);
}

/* Whether units [begin, end) may be misheard at all. */
static bool doubtful(const struct hearing *h, const struct sentence_units *u, size_t begin,
                     size_t end)
{
    bool odd = false;
    for (size_t i = begin; i < end; i++) {
        const struct word *w = &h->r->words.at[u->last[i]];
        bool part = end - begin > 1 && small(w);
        if (part ? i == begin && !small_begins(w) : !may_be_wrong(w))
            return false;
        odd |= w->tag == TAG_OTHER && !part;
    }
    return odd && h->r->words.at[u->last[end - 1]].tag != TAG_FOOD;
}

/* "Gira", "bus mati": a word among the units that is none of the language. */
static bool no_word(const struct hearing *h, const struct sentence_units *u, size_t begin,
                    size_t end)
{
    for (size_t i = begin; i < end; i++) {
        struct text key = h->r->words.at[u->last[i]].key;
        if (!text_ends(key, "'s") && !ear_knows(h->ear, key))
            return true;
    }
    return false;
}

/* "Rest the dough": a verb of the kitchen that may stand there is what was said; "see" is none. */
static bool kitchen_verb(const struct word *w, const struct hearing_slot *slot)
{
    const struct entry *verb = entry_as(w->entry, TAG_ACTION);
    return verb && unit_set_has(&slot->expects, TAG_ACTION)
           && !(verb->marks & (MARK_OF(light) | MARK_OF(hidden)));
}

/* What it costs that they are. */
static int cost_of(const struct hearing *h, const struct sentence_units *u, size_t begin,
                   size_t end)
{
    int cost = JOINED_COST * (int) (end - begin - 1);
    for (size_t i = begin; i < end; i++)
        cost += of_the_kitchen(&h->r->words.at[u->last[i]]) ? KNOWN_COST : 0;
    return cost;
}

/* Some units that may be one misheard thing, with what every slot asks of them. */
struct suspect {
    size_t begin, end;  /* units, end left out */
    struct asked asked; /* sounds are filled in when first needed */
    size_t pair;        /* their first row in mishearings.tsv; its rows where there is none */
    bool doubtful;      /* by their sound, too */
    bool no_word;       /* one of their words is none of the language */
};

static void hear_slot(struct hearing *h, const struct sentence_units *u, struct suspect *s,
                      const struct hearing_slot *slot, struct guess *g)
{
    const struct entry *known = known_pair(h, s->asked.key, s->pair, slot);
    const struct word *first = &h->r->words.at[u->last[s->begin]];
    bool fits = has_reading(first, &slot->expects);
    bool other = slot->sure && !kitchen_verb(first, slot);
    if (known && (!fits || s->end - s->begin > 1 || slot->again || other)) {
        consider(g, known, -100 - (int) (s->end - s->begin));
    } else if (!fits && !slot->nouns && !slot->always && !slot->strong && s->doubtful) {
        if (!s->asked.as.sounds.length) {
            s->asked.as.sounds = sounds_of(h, s->asked.key);
            s->asked.as.letters = sound_letters(s->asked.as.sounds);
        }
        struct asked asked = s->asked;
        if (slot->sure && unit_set_has(&slot->expects, TAG_FOOD) && s->no_word)
            asked.cost -= NO_WORD_BONUS;
        guess_by_sound(h, slot, &asked, g);
    }
}

/* The slots behind units that end before `end`: few, and often none. */
static struct unit_set slots_behind(const struct ear *ear, const struct recording *r,
                                    struct sentence_units *u, size_t end)
{
    struct unit_set slots = ear->closed;
    const struct unit_set *behind = end < u->count ? unit_beside(u, r, end) : NULL;
    for (size_t i = 0; behind && i < 2; i++) /* the upper half of them, EAR_SLOTS and more */
        slots.bits[i] |= behind->bits[i + 2];
    if (slot_at_end(r, u, end))
        unit_set_join(&slots, &ear->at_end);
    return slots;
}

static struct unit_set slots_before(const struct hearing *h, struct sentence_units *u, size_t begin,
                                    bool again)
{
    const struct ear *ear = h->ear;
    struct unit_set slots = begin ? ear->open : ear->at_begin;
    const struct unit_set *before = begin ? unit_beside(u, h->r, begin - 1) : NULL;
    for (size_t i = 0; before && i < 2; i++)
        slots.bits[i] |= before->bits[i];
    unit_set_meet(&slots, &ear->again[again]);
    for (int n = unit_set_next(&slots, 0); n >= 0; n = unit_set_next(&slots, n + 1))
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
    s->doubtful = doubtful(h, u, s->begin, s->end);
    if (!pairs && !s->doubtful)
        return false;
    s->asked.key = joined_key(h, u->first[s->begin], u->last[s->end - 1], room);
    s->pair = pairs ? table_find(t, s->asked.key) : t->rows;
    s->doubtful &= !never_wrong(h, s->pair);
    if (s->doubtful) {
        s->asked.plural = plural(s->asked.key);
        bool part = small_part(h, u, s->begin, s->end);
        s->asked.cost = part ? 0 : cost_of(h, u, s->begin, s->end);
        s->asked.most = part ? SMALL_TRUST : INT_MAX;
        s->no_word = !part && no_word(h, u, s->begin, s->end);
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

/* Whether a stop or comma stands inside units [begin, end). */
static bool divided(const struct hearing *h, const struct sentence_units *u, size_t begin,
                    size_t end)
{
    for (size_t i = begin; i + 1 < end; i++)
        if (h->r->words.at[u->last[i]].after >= AFTER_COMMA)
            return true;
    return false;
}

/* Tries one, two and three units from `begin` on; the nearest reading wins. */
static void hear_unit(struct hearing *h, struct sentence_units *u, size_t begin, bool again)
{
    struct guess best = {0};
    struct span words = {1, 0};
    bool pairs = may_be_paired(h, u, begin);
    const struct word *first = &h->r->words.at[u->last[begin]];
    if (!pairs && !may_be_wrong(first) && !small_begins(first))
        return;
    struct unit_set open = slots_before(h, u, begin, again);
    if (unit_set_empty(&open))
        return;
    for (size_t end = begin + 1; end <= u->count && end <= begin + JOINED_WORDS; end++) {
        if (divided(h, u, begin, end))
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

/* ---- names of several words */

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

static bool pair_listed(const struct hearing *h, struct text heard, struct text meant)
{
    for (size_t row = table_find(h->ear->pairs, heard); row < h->ear->pairs->rows;
         row = table_next(h->ear->pairs, row))
        if (text_equal(table_cell(h->ear->pairs, row, 1), meant))
            return true;
    return false;
}

/* How far the word is from the one that the name asks for; above NEIGHBOUR_TRUST where it is right
 * as it is. */
static int name_distance(struct hearing *h, const struct sentence *s, size_t i, size_t begin,
                         struct text asked)
{
    const struct word *w = &h->r->words.at[i];
    if (pair_listed(h, w->key, asked))
        return -100;
    bool other = w->tag == TAG_OTHER;
    if (text_equal(w->key, asked) || !may_be_wrong(w) || w->tag == TAG_FOOD
        || never_wrong(h, table_find(h->ear->pairs, w->key))
        || (!other && !amount_before(h, s, begin)))
        return NEIGHBOUR_TRUST + 1;
    struct text heard = sounds_of(h, w->key), meant = sounds_of(h, asked);
    if (heard.length < SOUNDS_LEAST || meant.length < SOUNDS_LEAST)
        return NEIGHBOUR_TRUST + 1;
    return (int) sound_distance(&h->ear->sounds, heard, meant, NEIGHBOUR_TRUST)
           + (other ? 0 : KNOWN_COST);
}

/* The name's reading in which word `i` is the wrong one, wherever in the name it stands. */
static void try_name(struct hearing *h, const struct sentence *s, size_t i, const struct entry *e,
                     struct guess *best, struct span *words)
{
    for (size_t j = 0; j < e->words_count && j <= i - s->first; j++) {
        struct text asked = TEXT_EMPTY;
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
    const uint32_t *names = pack_entries_with(h->ear->k, key, &count);
    for (size_t n = 0; n < count && unit_set_has(&h->ear->wanted, TAG_FOOD); n++)
        if (entries[names[n]].tag == TAG_FOOD)
            try_name(h, s, i, &entries[names[n]], best, words);
}

/* "Chicken sock": one wrong word in a name of several, told by the word beside it. */
static void hear_name(struct hearing *h, const struct sentence *s, size_t i)
{
    struct guess best = {0};
    struct span words = {1, 0};
    if (i > s->first)
        try_names(h, s, i, h->r->words.at[i - 1].key, &best, &words);
    if (i < s->last)
        try_names(h, s, i, h->r->words.at[i + 1].key, &best, &words);
    if (best.entry)
        apply(h, words, (struct span){i, i}, best.entry);
}

/* ---- long names in several short words */

/* Whether units [begin, end) mean nothing in a kitchen: talk, and small words between. */
static bool plain_talk(const struct hearing *h, const struct sentence_units *u, size_t begin,
                       size_t end)
{
    bool other = false;
    for (size_t i = begin; i < end; i++) {
        const struct word *w = &h->r->words.at[u->last[i]];
        if (w->heard_as || ratio_known(w->number) || (w->tag != TAG_OTHER && !small(w)))
            return false;
        other |= w->tag == TAG_OTHER;
    }
    const struct word *last = &h->r->words.at[u->last[end - 1]];
    return other && (last->tag == TAG_OTHER || last->tag == TAG_YOU) && !divided(h, u, begin, end);
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
    struct text key = joined_key(h, u->first[begin], u->last[end - 1], room),
                sounds = sounds_of(h, key);
    for (uint32_t i = ear_long_find(h->ear, sounds); i; i = h->ear->long_next[i - 1]) {
        struct text name = ref_text(&all[i - 1].sounds);
        unsigned distance = sound_distance(&h->ear->sounds, sounds, name, LONG_TRUST);
        if (distance <= LONG_TRUST)
            consider(&g, &entries[all[i - 1].entry], (int) distance);
    }
    struct span words = {u->first[begin], u->last[end - 1]};
    if (g.entry)
        apply(h, words, words, g.entry);
}

static void hear_long_names(struct hearing *h, const struct sentence *s)
{
    struct sentence_units u;
    units_make(&u, h->r, s, &h->ear->beside);
    for (size_t i = 0; i < u.count; i++) {
        const struct word *w = &h->r->words.at[u.last[i]];
        if (w->tag != TAG_OTHER && !small(w))
            continue;
        for (size_t end = i + 2; end <= u.count && end <= i + JOINED_WORDS; end++)
            if (plain_talk(h, &u, i, end))
                hear_long(h, &u, i, end);
    }
}

static bool beside_food(const struct hearing *h, const struct sentence *s, size_t i)
{
    static const unsigned char TAGS[] = {TAG_FOOD,   TAG_STATE, TAG_EXTRACT, TAG_PART,
                                         TAG_INSIDE, TAG_OTHER, TAG_DONE};
    return (i > s->first && memchr(TAGS, h->r->words.at[i - 1].tag, sizeof TAGS))
           || (i < s->last && memchr(TAGS, h->r->words.at[i + 1].tag, sizeof TAGS));
}

static void hear_units(struct hearing *h, const struct sentence *s, bool again)
{
    struct sentence_units u;
    units_make(&u, h->r, s, &h->ear->beside);
    for (size_t i = 0; i < u.count; i++)
        if (!h->r->words.at[u.last[i]].heard_as)
            hear_unit(h, &u, i, again);
}

static void hear_sentence(struct hearing *h, const struct sentence *s)
{
    for (size_t i = s->first; i <= s->last; i++) {
        const struct word *w = &h->r->words.at[i];
        if (!w->filler && w->tag != TAG_INSIDE && w->entry_first == i && may_be_wrong(w)
            && beside_food(h, s, i))
            hear_name(h, s, i);
    }
    hear_units(h, s, false);
    hear_long_names(h, s);
}

bool hear_words(struct recording *r, struct ear *ear, struct problems *p)
{
    size_t errors = p->errors;
    switch (ear_ready(ear, p)) {
    case EAR_DEAF:
        return p->errors == errors;
    case EAR_NO_MEMORY:
        longjmp(r->arena->full, 1);
    case EAR_READY:
        break;
    }
    struct hearing *h = arena_alloc(r->arena, sizeof *h);
    h->r = r;
    h->ear = ear;
    for (size_t i = 0; i < r->words.count; i++)
        count_word(h, &r->words.at[i], 1);
    for (size_t i = 0; i < r->sentences.count; i++)
        hear_sentence(h, &r->sentences.at[i]);
    for (size_t i = 0; i < r->sentences.count; i++)
        hear_units(h, &r->sentences.at[i], true);
    return true;
}
