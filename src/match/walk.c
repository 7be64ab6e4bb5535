/* match/walk.c
 * SPDX-License-Identifier: MIT */
#include "match/walk.h"

struct walk walk_words(const struct recording *r, struct span words, uint64_t kinds)
{
    const size_t from = sentence_from(r, words.first), until = sentence_until(r, words.last);
    if (from >= until)
        return (struct walk){0};
    const struct sentence *last = &r->sentences.at[until - 1];
    return (struct walk){r, r->sentences.at[from].match_first,
                         last->match_first + last->match_count, kinds, words};
}

struct walk walk_all(const struct recording *r, uint64_t kinds)
{
    return (struct walk){r, 0, r->matches.count, kinds, ANYWHERE};
}

const struct match *match_in(const struct recording *r, const struct sentence *s, uint64_t kinds)
{
    struct walk w = walk_sentence(r, s, kinds);
    return walk_next(&w);
}

const struct match *match_among(const struct recording *r, struct span words, uint64_t kinds)
{
    struct walk w = walk_words(r, words, kinds);
    return walk_next(&w);
}

const struct match *match_at(const struct recording *r, const struct sentence *s, size_t word,
                             uint64_t kinds)
{
    struct walk w = walk_sentence(r, s, kinds);
    w.begins = (struct span){word, word};
    return walk_next(&w);
}

const struct match *match_over(const struct recording *r, const struct sentence *s,
                               struct span words, uint64_t kinds)
{
    struct walk w = walk_sentence(r, s, kinds);
    const struct match *m;
    do
        m = walk_next(&w);
    while (m && (m->words.first > words.first || m->words.last < words.last));
    return m;
}
