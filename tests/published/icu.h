/* published/icu.h: a transcript read up to its matches, for comparing with ICU.
 * SPDX-License-Identifier: MIT */
#ifndef TESTS_PUBLISHED_ICU_H
#define TESTS_PUBLISHED_ICU_H

#include "match/matcher.h"
#include "read/read.h"
#include "tag/tag.h"
#include "words/words.h"

#define READER_ARENA_BYTES ((size_t) 1 << 30)

struct reader {
    struct pack *pack;
    struct matcher *matcher;
    struct arena arena;
    struct recording r;
};

static inline void reader_open(struct reader *d)
{
    d->pack = pack_builtin();
    assert_non_null(d->pack);
    d->matcher = matcher_new(d->pack);
    assert_non_null(d->matcher);
    arena_init(&d->arena, READER_ARENA_BYTES);
}

static inline void reader_close(struct reader *d)
{
    arena_release(&d->arena);
    matcher_free(d->matcher);
    pack_free(d->pack);
}

/* Cues, words, sentences, tags, matches. The bytes must outlive the recording. */
static inline void reader_read(struct reader *d, struct text bytes)
{
    struct problems p = {0};
    arena_reset(&d->arena);
    d->r = (struct recording){.arena = &d->arena, .file = "here"};
    assert_true(arena_open(&d->arena));
    assert_true(read_cues(&d->r, bytes, &p));
    assert_true(number_words(&d->r, d->pack, &p));
    assert_true(tag_words(&d->r, d->pack, &p));
    assert_true(match_rules(&d->r, d->pack, d->matcher, &p));
    problems_release(&p);
}

#endif
