/* match/sieve.c: a set of places in the sentence is a number: bit n is the place before unit n, and
 * the last bit the sentence's end. Each code turns the places where what stands before it may end
 * into those where it may end itself; in a look ahead, places where it may begin.
 * SPDX-License-Identifier: MIT */
#include "match/sieve.h"

#include "pack/sieve.h"

_Static_assert(SENTENCE_WORDS < 64, "a sentence's places are bits of 64");

typedef uint64_t places;

/* Repeats within repeats can take long; PCRE2 has a limit for them, which names the rule. */
#define STEPS_MOST 2000

struct walk {
    const struct subject *s;
    places all;    /* of the sentence */
    places inside; /* before words of entries that go on */
    unsigned steps;
};

/* Codes [at, end), as they stand, or from a look ahead. */
static places walk_codes(struct walk *w, const unsigned char *at, const unsigned char *end,
                         places from, bool ahead);

static places units_of(const struct walk *w, const unsigned char *list, size_t count)
{
    places units = 0;
    for (size_t i = 0; i < count; i++)
        units |= w->s->at[list[i]];
    return units;
}

/* Over an entry whose last word is one of the units: the words inside it go with it. */
static places over_entry(const struct walk *w, places units, places from, bool ahead)
{
    if (ahead) {
        places begins = from >> 1 & units;
        for (places more = begins; more;) {
            more = more >> 1 & w->inside & ~begins;
            begins |= more;
        }
        return begins;
    }
    while (from & w->inside)
        from = (from & ~w->inside) | (from & w->inside) << 1;
    return (from & units) << 1;
}

static places over_choices(struct walk *w, const unsigned char **at, places from, bool ahead)
{
    size_t count = (*at)[1];
    const unsigned char *lengths = *at + 2, *codes = lengths + 2 * count;
    places to = 0;
    for (size_t i = 0; i < count; i++, lengths += 2) {
        const unsigned char *end = codes + lengths[0] + 256 * lengths[1];
        to |= walk_codes(w, codes, end, from, ahead);
        codes = end;
    }
    *at = codes;
    return to;
}

/* "(SIZE|STATE)*": as most repeats are, without a walk for each round. */
static places over_entries(const struct walk *w, const unsigned char *at, places from, bool ahead)
{
    unsigned least = at[1], most = at[2];
    places units = units_of(w, at + 7, at[6]), to = least ? 0 : from;
    for (unsigned round = 1; from && round <= most; round++) {
        from = over_entry(w, units, from, ahead);
        if (round < least)
            continue;
        from &= ~to;
        to |= from;
    }
    return to;
}

/* Rounds beyond the least go on only from places that are new. */
static places over_repeat(struct walk *w, const unsigned char *at, const unsigned char *end,
                          places from, bool ahead)
{
    unsigned least = at[1], most = at[2];
    places to = least ? 0 : from;
    if (at[5] == SIEVE_UNITS && at + 7 + at[6] == end)
        return over_entries(w, at, from, ahead);
    for (unsigned round = 1; from && round <= most; round++) {
        from = walk_codes(w, at + 5, end, from, ahead);
        if (round < least)
            continue;
        from &= ~to;
        to |= from;
    }
    return to;
}

static places behind(const struct walk *w, enum sieve_code code, places units, places from)
{
    switch (code) {
    case SIEVE_BEHIND:
        return from & units << 1;
    case SIEVE_NOT_BEHIND:
        return from & ~((units | w->inside) << 1);
    case SIEVE_SOME_BEHIND:
        return from & (w->all & ~w->inside) << 1;
    default:
        return from & 1;
    }
}

static places look(struct walk *w, const unsigned char *at, const unsigned char *end, places from)
{
    places there = walk_codes(w, at + 3, end, w->all, true);
    return from & (*at == SIEVE_AHEAD ? there : ~there);
}

/* A code at `*at` that has codes within, or looks about; `*at` goes behind it. */
static places walk_other(struct walk *w, const unsigned char **at, places from, bool ahead)
{
    const unsigned char *code = *at, *list = code + 2;
    switch ((enum sieve_code) * code) {
    case SIEVE_ANY:
        *at = code + 1;
        return over_entry(w, w->all >> 1 & ~w->inside, from, ahead);
    case SIEVE_BEHIND:
    case SIEVE_NOT_BEHIND:
        *at = list + code[1];
        return behind(w, (enum sieve_code) * code, units_of(w, list, code[1]), from);
    case SIEVE_AHEAD:
    case SIEVE_NOT_AHEAD:
        *at = code + 3 + code[1] + 256 * code[2];
        return look(w, code, *at, from);
    case SIEVE_CHOICES:
        return over_choices(w, at, from, ahead);
    case SIEVE_REPEAT:
    case SIEVE_REPEAT_FEW:
        *at = code + 5 + code[3] + 256 * code[4];
        return over_repeat(w, code, *at, from, ahead);
    case SIEVE_BEGIN:
        *at = code + 1;
        return from & 1;
    case SIEVE_END:
        *at = code + 1;
        return from & (w->all & ~(w->all >> 1));
    default:
        *at = code + 1;
        return behind(w, (enum sieve_code) * code, 0, from);
    }
}

/* Most codes are units, so that these are walked without a call. */
static places walk_codes(struct walk *w, const unsigned char *at, const unsigned char *end,
                         places from, bool ahead)
{
    while (at < end && from && w->steps < STEPS_MOST) {
        w->steps++;
        if (*at == SIEVE_UNITS) {
            from = over_entry(w, units_of(w, at + 2, at[1]), from, ahead);
            at += 2 + at[1];
        } else {
            from = walk_other(w, &at, from, ahead);
        }
    }
    return from;
}

static struct walk walk_of(const struct subject *s)
{
    return (struct walk){.s = s, .all = ((places) 2 << s->length) - 1, .inside = s->at[TAG_INSIDE]};
}

uint64_t sieve_looks(const struct subject *s, const unsigned char *code)
{
    struct walk w = walk_of(s);
    return walk_codes(&w, code, code + 1, w.all, false);
}

uint64_t sieve_begins(const struct subject *s, const unsigned char *units, size_t count)
{
    const struct walk w = walk_of(s);
    return over_entry(&w, units_of(&w, units, count), w.all, true);
}

bool sieve_passes(const struct rule *rule, const struct subject *s, size_t from)
{
    const unsigned char *codes = (const unsigned char *) rule->sieve.at;
    struct walk w = walk_of(s);
    return !rule->sieve.length
           || walk_codes(&w, codes, codes + rule->sieve.length, w.all & ~(places) 0 << from, false)
           || w.steps >= STEPS_MOST;
}
