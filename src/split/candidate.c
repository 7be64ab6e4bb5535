/* split/candidate.c
 * SPDX-License-Identifier: MIT */
#include "split/candidate.h"

#include "base/arena.h"

/* Words of a name, and of a noun phrase that is looked through: more in a row are no phrase. */
#define NAME_WORDS 6
#define PHRASE_WORDS 12
/* A joined name, "sausages with apple and sage", has one word more. */
#define JOINED_WORDS 7
#define STEM_LEAST 3
#define ODD 0x9E3779B97F4A7C15u /* 2^64 / golden ratio */
/* Room to begin with, for so many words of talk. */
#define WORDS_A_PLACE 5
#define ROOM_LEAST ((size_t) 256)

/* Whether a word of the tag stands in a name: IN_NAME, or MAY_BE where the rest of it says so. */
enum { NOT_IN_NAME, IN_NAME, MAY_BE };
static const unsigned char in_name[256] = {
    [TAG_FOOD] = IN_NAME,   [TAG_DISH] = IN_NAME,      [TAG_PART] = IN_NAME,
    [TAG_STATE] = IN_NAME,  [TAG_SIZE] = IN_NAME,      [TAG_DONE] = IN_NAME,
    [TAG_INSIDE] = IN_NAME, [TAG_EXTRACT] = IN_NAME,   [TAG_COUNTER] = IN_NAME,
    [TAG_UNIT] = IN_NAME,   [TAG_VESSEL] = IN_NAME,    [TAG_OVEN] = IN_NAME,
    [TAG_LONG] = IN_NAME,   [TAG_CONTAINER] = IN_NAME, [TAG_EATER] = IN_NAME,
    [TAG_OTHER] = MAY_BE,   [TAG_ACTION] = MAY_BE,     [TAG_DOING] = MAY_BE,
};

/* What may stand in a name that rules have not read: words that the lexicon lacks, and verbs that
 * are a dish's words too ("toast", "bake"). */
static bool may_be_noun(const struct word *w)
{
    if (w->tag == TAG_OTHER)
        return !w->entry;
    return (w->tag == TAG_ACTION && w->entry && w->entry->marks & MARK_OF(heats))
           || entry_as(w->readings, TAG_DISH);
}

static inline bool stands_in_name(const struct word *w)
{
    return in_name[w->tag] && !w->filler && (in_name[w->tag] == IN_NAME || may_be_noun(w));
}

static bool joins_names(unsigned char tag)
{
    return tag == TAG_WITH || tag == TAG_AND || tag == TAG_OF || tag == TAG_INTO;
}

/* "The secret of karaage" is no dish; "leg of lamb" is. */
static bool tells_of(const struct recording *r, size_t first)
{
    return r->words.at[first].tag == TAG_OTHER && first + 1 < r->words.count
           && r->words.at[first + 1].tag == TAG_OF;
}

/* "I've never forgotten gravy", "we foraged mushrooms": what is done, not how it is. */
static bool is_unknown_verb(const struct recording *r, size_t first)
{
    unsigned char before = first ? r->words.at[first - 1].tag : (unsigned char) TAG_OTHER;
    unsigned char tag = r->words.at[first].tag;
    if (tag == TAG_DONE)
        return before == TAG_NOT;
    return tag == TAG_OTHER
           && (before == TAG_NOT || before == TAG_ME || before == TAG_YOU || before == TAG_WILL);
}

/* No "nan's bobotie": whose it is, is no part of what it is called; "shepherd's pie" is one entry.
 * No "made salmon cakes". */
static bool may_begin(const struct recording *r, struct span phrase, size_t first)
{
    const struct word *w = &r->words.at[first];
    return (first == phrase.first || w[-1].tag != TAG_INSIDE) && !tells_of(r, first)
           && !is_unknown_verb(r, first) && !(w->tag == TAG_OTHER && text_ends(w->key, "'s"))
           && !(w->tag == TAG_DONE && w->entry && w->entry->marks & MARK_OF(light));
}

/* "Roast them", never "the roast". */
static bool is_verb(const struct recording *r, size_t i)
{
    unsigned char tag = r->words.at[i].tag,
                  before = i ? r->words.at[i - 1].tag : (unsigned char) TAG_OTHER;
    return (tag == TAG_ACTION || tag == TAG_DOING) && before != TAG_THE && before != TAG_ARTICLE;
}

/* What no name ends with. */
static bool may_end(const struct word *w, bool alone)
{
    if (w->tag != TAG_INSIDE && entry_as(w->readings, TAG_DISH))
        return true; /* "tart", though it is first of all how something tastes */
    switch (w->tag) {
    case TAG_INSIDE:
    case TAG_STATE:
    case TAG_SIZE:
    case TAG_DONE:
    case TAG_LONG:
        return false;
    case TAG_COUNTER:
    case TAG_UNIT:
    case TAG_CONTAINER:
    case TAG_VESSEL:
    case TAG_OVEN:
    case TAG_EATER:
        return !alone;
    default:
        return true;
    }
}

/* "Buns" and "bun" are the same. */
static uint64_t stem_hash(struct text key)
{
    char last = key.length ? key.at[key.length - 1] : 0,
         before = key.length > 1 ? key.at[key.length - 2] : 0;
    bool plural =
        key.length > STEM_LEAST && last == 's' && before != 's' && before != 'u' && before != 'i';
    return text_hash(text_slice(key, 0, key.length - plural));
}

/* Of a name with one word more; words that join are none. */
static uint64_t longer_hash(uint64_t hash, const struct word *w)
{
    return joins_names(w->tag) || w->filler ? hash : hash * ODD + stem_hash(w->key);
}

uint64_t name_hash(const struct recording *r, struct span words)
{
    uint64_t hash = 0;
    for (size_t i = words.first; i <= words.last; i++)
        hash = longer_hash(hash, &r->words.at[i]);
    return hash;
}

/* The slot of the table in which the hash is, or would be. */
static size_t slot_of(const struct candidates *c, uint64_t hash)
{
    size_t slot = (size_t) (hash ^ hash >> 29) & (c->room - 1);
    while (c->table[slot] && c->all.at[c->table[slot] - 1].hash != hash)
        slot = (slot + 1) & (c->room - 1);
    return slot;
}

const struct candidate *candidate_find(const struct candidates *c, uint64_t hash)
{
    size_t slot = slot_of(c, hash);
    return c->table[slot] ? &c->all.at[c->table[slot] - 1] : NULL;
}

static void grow_table(struct candidates *c)
{
    c->room = c->room ? 2 * c->room : ROOM_LEAST;
    c->table = arena_alloc(c->r->arena, c->room * sizeof *c->table);
    for (size_t n = 0; n < c->all.count; n++)
        c->table[slot_of(c, c->all.at[n].hash)] = n + 1;
}

size_t candidate_number(struct candidates *c, uint64_t hash)
{
    if (2 * c->all.count >= c->room)
        grow_table(c);
    size_t slot = slot_of(c, hash);
    if (!c->table[slot]) {
        LIST_ADD(c->r->arena, &c->all)->hash = hash;
        c->table[slot] = c->all.count;
    }
    return c->table[slot] - 1;
}

static void add_place(struct candidates *c, struct span words, struct span phrase, uint64_t hash,
                      size_t sentence)
{
    size_t number = candidate_number(c, hash);
    struct candidate *n = &c->all.at[number];
    size_t dish = c->dish[sentence];
    *LIST_ADD(c->r->arena, &c->places) = (struct saying){words, phrase, number};
    n->times++;
    if (dish != NO_DISH && n->last != dish + 1) {
        n->dishes++; /* dishes that take turns are counted again */
        n->last = dish + 1;
    }
}

/* All parts of `phrase` that begin in [phrase.first, starts_last] and end from `ends_first` on. */
static void add_parts_of(struct candidates *c, struct span phrase, size_t starts_last,
                         size_t ends_first, size_t most, size_t sentence)
{
    const struct word *at = c->r->words.at;
    for (size_t first = phrase.first; first <= starts_last; first++) {
        uint64_t hash = 0;
        size_t hashed = first;
        size_t end = phrase.last - first < most ? phrase.last : first + most - 1;
        if (ends_first > end || !may_begin(c->r, phrase, first))
            continue;
        for (size_t last = first > ends_first ? first : ends_first; last <= end; last++) {
            if (!may_end(&at[last], at[last].entry_first <= first)
                || (first == last && is_verb(c->r, first)))
                continue;
            while (hashed <= last)
                hash = longer_hash(hash, &at[hashed++]);
            add_place(c, (struct span){first, last}, phrase, hash, sentence);
        }
    }
}

/* "The tagine's lamb": what follows is told of it. */
static bool is_contracted(const struct word *w)
{
    return w->entry && text_ends(w->text, "'s") && !text_ends(entry_words(w->entry), "'s");
}

/* The noun phrase that begins at word `i`. */
static struct span phrase_at(const struct recording *r, const struct sentence *s, size_t i)
{
    size_t last = i;
    while (last < s->last && last - i < PHRASE_WORDS && r->words.at[last].after < AFTER_COMMA
           && !is_contracted(&r->words.at[last]) && stands_in_name(&r->words.at[last + 1]))
        last++;
    return (struct span){i, last};
}

/* Whether "with", "and a" stand between two noun phrases. */
static bool are_joined(const struct recording *r, struct span a, struct span b)
{
    const struct word *w = &r->words.at[a.last + 1];
    if (a.first > a.last || b.first < a.last + 2 || b.first > a.last + 3 || !joins_names(w->tag)
        || w->after >= AFTER_COMMA || w[-1].after >= AFTER_COMMA)
        return false;
    return b.first == a.last + 2
           || ((w[1].tag == TAG_ARTICLE || w[1].tag == TAG_THE) && w[1].after < AFTER_COMMA);
}

static bool is_there(const struct candidates *c, struct span words, size_t sentence)
{
    for (size_t n = c->from[sentence]; n < c->places.count; n++)
        if (c->places.at[n].words.first == words.first && c->places.at[n].words.last == words.last)
            return true;
    return false;
}

/* "Cake's cold." */
static bool is_told_of(const struct recording *r, struct span name)
{
    for (size_t i = name.first; i < name.last; i++)
        if (is_contracted(&r->words.at[i]))
            return true;
    return false;
}

/* What the rules of phrases take for a name, which may be longer than those found otherwise. */
static void add_named(struct candidates *c, size_t sentence)
{
    const struct feature *f = &c->f[sentence];
    const struct span names[] = {f->opening_title, f->closing_title, f->told_title, f->bare_title,
                                 f->foreign_title};
    for (size_t n = 0; n < sizeof names / sizeof *names; n++)
        if (names[n].first <= names[n].last && !is_told_of(c->r, names[n])
            && !is_there(c, names[n], sentence))
            add_place(c, names[n], names[n], name_hash(c->r, names[n]), sentence);
}

static void find_places(struct candidates *c, size_t sentence)
{
    const struct recording *r = c->r;
    const struct sentence *s = &r->sentences.at[sentence];
    struct span before = {1, 0};
    for (size_t i = s->first; i <= s->last; i++) {
        if (!stands_in_name(&r->words.at[i]))
            continue;
        struct span phrase = phrase_at(r, s, i);
        add_parts_of(c, phrase, phrase.last, phrase.first, NAME_WORDS, sentence);
        if (are_joined(r, before, phrase))
            add_parts_of(c, (struct span){before.first, phrase.last}, before.last, phrase.first,
                         JOINED_WORDS, sentence);
        before = phrase;
        i = phrase.last;
    }
    add_named(c, sentence);
}

struct candidates candidates_find(const struct recording *r, const struct pack *k,
                                  const struct feature *f, const size_t *dish)
{
    struct candidates c = {.r = r, .f = f, .dish = dish, .plain = plain_words_of(k)};
    c.plain_kind = arena_alloc(r->arena, r->words.count + 1);
    c.goes_with = pack_table(k, "goes-with");
    c.from = arena_alloc(r->arena, (r->sentences.count + 1) * sizeof *c.from);
    LIST_RESERVE(r->arena, &c.places, r->words.count / WORDS_A_PLACE + 1);
    LIST_RESERVE(r->arena, &c.all, r->words.count / WORDS_A_PLACE + 1);
    c.room = ROOM_LEAST;
    while (c.room < c.all.room)
        c.room *= 2;
    grow_table(&c);
    for (size_t i = 0; i < r->sentences.count; i++) {
        c.from[i] = c.places.count;
        find_places(&c, i);
    }
    c.from[r->sentences.count] = c.places.count;
    return c;
}
