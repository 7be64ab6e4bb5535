/* match/matches.c
 * SPDX-License-Identifier: MIT */
#include "match/matches.h"

struct matches matches_among(const struct recording *r, struct span words, uint64_t kinds)
{
    const size_t from = sentence_from(r, words.first), until = sentence_until(r, words.last);
    if (from >= until)
        return (struct matches){0};
    const struct sentence *last = &r->sentences.at[until - 1];
    return (struct matches){r, r->sentences.at[from].match_first,
                            last->match_first + last->match_count, kinds, words};
}

struct matches matches_all(const struct recording *r, uint64_t kinds)
{
    return (struct matches){r, 0, r->matches.count, kinds, ANYWHERE};
}

const struct match *match_in(const struct recording *r, const struct sentence *s, uint64_t kinds)
{
    struct matches left = matches_of(r, s, kinds);
    return matches_next(&left);
}

const struct match *match_among(const struct recording *r, struct span words, uint64_t kinds)
{
    struct matches left = matches_among(r, words, kinds);
    return matches_next(&left);
}

const struct match *match_at(const struct recording *r, const struct sentence *s, size_t word,
                             uint64_t kinds)
{
    struct matches left = matches_of(r, s, kinds);
    left.begins = (struct span){word, word};
    return matches_next(&left);
}

const struct match *match_over(const struct recording *r, const struct sentence *s,
                               struct span words, uint64_t kinds)
{
    struct matches left = matches_of(r, s, kinds);
    const struct match *m;
    do
        m = matches_next(&left);
    while (m && (m->words.first > words.first || m->words.last < words.last));
    return m;
}
