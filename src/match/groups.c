/* match/groups.c: codes are tried one after the other, back to the last choice where one fails.
 * SPDX-License-Identifier: MIT */
#include "match/groups.h"

#include "match/sieve.h"
#include "pack/sieve.h"

/* PCRE2 has a limit for what takes longer, which names the rule. */
#define STEPS_MOST 1000

/* What is to follow when some codes were taken: more codes, or another round of a repeat. */
struct rest {
    const unsigned char *at, *end;
    const struct rest *next;
    const unsigned char *repeat; /* NULL: none; else `at` is what stands behind it */
    unsigned round;
    size_t begun; /* where the round began */
};

struct search {
    const struct subject *s;
    size_t *groups;
    size_t opened[MATCH_SLOTS];
    unsigned steps;
};

/* The rest of the match from unit `i` on: codes [at, end), then `rest`. */
static bool take(struct search *x, const unsigned char *at, const unsigned char *end, size_t i,
                 const struct rest *rest);

static size_t length_of(const unsigned char *bytes)
{
    return bytes[0] + 256u * bytes[1];
}

static bool is_listed(const unsigned char *list, size_t count, unsigned char unit)
{
    for (size_t n = 0; n < count; n++)
        if (list[n] == unit)
            return true;
    return false;
}

/* The unit after the entry at `i`, if that is of one of the classes (`list` NULL: of any); 0: it is
 * not. */
static size_t take_entry(const struct search *x, const unsigned char *list, size_t count, size_t i)
{
    const struct subject *s = x->s;
    while (i < s->length && s->tags[i] == TAG_INSIDE)
        i++;
    return i < s->length && (!list || is_listed(list, count, s->tags[i])) ? i + 1 : 0;
}

static bool take_choices(struct search *x, const unsigned char *at, const unsigned char *end,
                         size_t i, const struct rest *rest)
{
    const size_t count = at[1];
    const unsigned char *lengths = at + 2, *codes = lengths + 2 * count, *behind = codes;
    for (size_t n = 0; n < count; n++)
        behind += length_of(lengths + 2 * n);
    const struct rest then = {.at = behind, .end = end, .next = rest};
    for (size_t n = 0; n < count; codes += length_of(lengths + 2 * n++))
        if (take(x, codes, codes + length_of(lengths + 2 * n), i, &then))
            return true;
    return false;
}

static bool take_round(struct search *x, const struct rest *done, size_t i)
{
    struct rest next = *done;
    next.round++;
    next.begun = i;
    return take(x, done->repeat + 5, done->at, i, &next);
}

/* After a round of a repeat, or before the first: another one, or what stands behind it. A round
 * that took nothing is the last. */
static bool take_repeat(struct search *x, const struct rest *done, size_t i)
{
    const unsigned least = done->repeat[1], most = done->repeat[2];
    const bool few = *done->repeat == SIEVE_REPEAT_FEW, enough = done->round >= least;
    const bool more = done->round < most && !(enough && done->round && done->begun == i);
    if (!few && more && take_round(x, done, i))
        return true;
    if (enough && take(x, done->at, done->end, i, done->next))
        return true;
    return few && more && take_round(x, done, i);
}

/* The value goes back where the rest fails. */
static bool take_with(struct search *x, size_t *value, size_t is, const unsigned char *at,
                      const unsigned char *end, size_t i, const struct rest *rest)
{
    const size_t was = *value;
    *value = is;
    if (take(x, at, end, i, rest))
        return true;
    *value = was;
    return false;
}

static bool take_close(struct search *x, const unsigned char *at, const unsigned char *end,
                       size_t i, const struct rest *rest)
{
    size_t *group = x->groups + 2 * (at[1] + 1u), began = group[0];
    group[0] = x->opened[at[1]];
    if (take_with(x, &group[1], i, at + 2, end, i, rest))
        return true;
    group[0] = began;
    return false;
}

/* How long a code is that looks about. */
static size_t look_length(const unsigned char *at)
{
    switch ((enum sieve_code) * at) {
    case SIEVE_BEHIND:
    case SIEVE_NOT_BEHIND:
        return 2u + at[1];
    case SIEVE_AHEAD:
    case SIEVE_NOT_AHEAD:
        return 3 + length_of(at + 1);
    default:
        return 1;
    }
}

static bool take(struct search *x, const unsigned char *at, const unsigned char *end, size_t i,
                 const struct rest *rest)
{
    while (x->steps++ < STEPS_MOST) {
        if (at == end) {
            if (!rest)
                return x->groups[1] = i, true;
            if (rest->repeat)
                return take_repeat(x, rest, i);
            at = rest->at;
            end = rest->end;
            rest = rest->next;
            continue;
        }
        switch ((enum sieve_code) * at) {
        case SIEVE_UNITS:
            i = take_entry(x, at + 2, at[1], i);
            at += 2 + at[1];
            break;
        case SIEVE_ANY:
            i = take_entry(x, NULL, 0, i);
            at++;
            break;
        case SIEVE_OPEN:
            return take_with(x, &x->opened[at[1]], i, at + 2, end, i, rest);
        case SIEVE_CLOSE:
            return take_close(x, at, end, i, rest);
        case SIEVE_CHOICES:
            return take_choices(x, at, end, i, rest);
        case SIEVE_REPEAT:
        case SIEVE_REPEAT_FEW:
            return take_repeat(
                x,
                &(struct rest){
                    .at = at + 5 + length_of(at + 3), .end = end, .next = rest, .repeat = at},
                i);
        default:
            if (!(sieve_looks(x->s, at) >> i & 1))
                return false;
            at += look_length(at);
            continue;
        }
        if (!i)
            return false;
    }
    return false;
}

static uint64_t begins_of(const struct subject *s, const unsigned char *at,
                          const unsigned char *end, uint64_t from);

static uint64_t choices_begin(const struct subject *s, const unsigned char *at, uint64_t from)
{
    const unsigned char *lengths = at + 2, *codes = lengths + 2 * at[1];
    uint64_t begins = 0;
    for (size_t n = 0; n < at[1]; n++) {
        begins |= begins_of(s, codes, codes + length_of(lengths + 2 * n), from);
        codes += length_of(lengths + 2 * n);
    }
    return begins;
}

/* The places, of those in `from`, at which codes [at, end) may begin: most are told by the first of
 * the units. */
static uint64_t begins_of(const struct subject *s, const unsigned char *at,
                          const unsigned char *end, uint64_t from)
{
    while (at < end && from) {
        const unsigned char *codes = at + 5, *behind;
        switch ((enum sieve_code) * at) {
        case SIEVE_UNITS:
            return from & sieve_begins(s, at + 2, at[1]);
        case SIEVE_ANY:
            return from;
        case SIEVE_CHOICES:
            return choices_begin(s, at, from);
        case SIEVE_REPEAT:
        case SIEVE_REPEAT_FEW:
            behind = codes + length_of(at + 3);
            return begins_of(s, codes, behind, from)
                   | (at[1] ? 0 : begins_of(s, behind, end, from));
        case SIEVE_OPEN:
        case SIEVE_CLOSE:
            at += 2;
            break;
        default:
            from &= sieve_looks(s, at);
            at += look_length(at);
        }
    }
    return from;
}

enum groups_found groups_find(const struct rule *rule, const struct subject *s, size_t from,
                              struct groups *out)
{
    const unsigned char *codes = (const unsigned char *) rule->codes.at,
                        *end = codes + rule->codes.length;
    struct search x = {.s = s, .groups = out->at};
    if (!rule->codes.length || rule->slots_ahead)
        return GROUPS_UNSURE;
    for (size_t n = 0; n < 2 * (rule->slots_count + 1); n++)
        out->at[n] = GROUP_UNSET;
    const uint64_t all = ((uint64_t) 1 << s->length) - 1;
    for (uint64_t begins = begins_of(s, codes, end, all & ~(uint64_t) 0 << from); begins;
         begins &= begins - 1) {
        out->at[0] = (size_t) __builtin_ctzll(begins);
        if (take(&x, codes, end, out->at[0], NULL))
            return GROUPS_FOUND;
        if (x.steps >= STEPS_MOST)
            return GROUPS_UNSURE;
    }
    return GROUPS_NONE;
}
