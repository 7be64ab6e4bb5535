/* split/candidate.c
 * SPDX-License-Identifier: MIT */
#include "split/candidate.h"

#include "base/arena.h"
#include "split/nametable.h"

/* Words of a name, and of a noun phrase that is looked through: more in a row are no phrase. */
#define NAME_WORDS 6
#define PHRASE_WORDS 12
/* A joined name, "sausages with apple and sage", has one word more. */
#define JOINED_WORDS 7
/* Room to begin with, for so many words of talk. */
#define WORDS_A_PLACE 5

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
    return (w->tag == TAG_ACTION && w->entry && w->entry->words_count == 1
            && w->entry->marks & MARK_OF(heats))
           || entry_as(w->readings, TAG_DISH);
}

/* "Turned into", of more words than a participle before a noun has, but for "deep fried". */
static bool is_long_verb(const struct entry *e)
{
    return e && e->tag == TAG_DONE && e->words_count > 1 && !(e->marks & MARK_OF(heats));
}

static inline bool stands_in_name(const struct word *w)
{
    return in_name[w->tag] && !w->filler && !is_long_verb(w->entry)
           && (in_name[w->tag] == IN_NAME || may_be_noun(w));
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
    return !w->filler && (first == phrase.first || w[-1].tag != TAG_INSIDE) && !tells_of(r, first)
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
    if (w->filler)
        return false;
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

static void add_place(struct candidates *c, struct span words, struct span phrase, uint64_t hash,
                      size_t sentence)
{
    size_t number = candidate_number(c, hash);
    struct candidate *n = &c->all.at[number];
    size_t dish = c->dish[sentence];
    *LIST_ADD(c->r->arena, &c->places) = (struct saying){words, phrase, number};
    n->times++;
    n->capital |=
        c->r->words.at[words.first].capital && words.first > c->r->sentences.at[sentence].first;
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

/* "The tagine's lamb": what follows is told of it; "shepherd's pie" is one entry. */
static bool is_contracted(const struct word *w)
{
    return w->tag != TAG_INSIDE && w->entry && text_ends(w->text, "'s")
           && !text_ends(entry_words(w->entry), "'s");
}

/* The next word behind `i` but what is said while thinking, or twice over. */
static size_t behind_filler(const struct recording *r, const struct sentence *s, size_t i)
{
    size_t next = i + 1;
    while (next < s->last && r->words.at[next].filler && r->words.at[next].after < AFTER_COMMA)
        next++;
    return next;
}

/* The noun phrase that begins at word `i`. */
static struct span phrase_at(const struct recording *r, const struct sentence *s, size_t i)
{
    size_t last = i;
    while (last < s->last && last - i < PHRASE_WORDS && r->words.at[last].after < AFTER_COMMA
           && !is_contracted(&r->words.at[last])) {
        size_t next = behind_filler(r, s, last);
        if (next > s->last || !stands_in_name(&r->words.at[next]))
            break;
        last = next;
    }
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
    struct span before = NO_WORDS;
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
    name_table_open(&c);
    for (size_t i = 0; i < r->sentences.count; i++) {
        c.from[i] = c.places.count;
        find_places(&c, i);
    }
    c.from[r->sentences.count] = c.places.count;
    return c;
}
