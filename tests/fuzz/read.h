/* fuzz/read.h: what must hold of whatever bytes are read.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_TESTS_FUZZ_READ_H
#define DISHTAKE_TESTS_FUZZ_READ_H

#include <stdint.h>
#include <stdlib.h>
#include <string.h>
#include <utf8proc.h>

#include "base/buffer.h"
#include "read/read.h"

#define MUST(condition)   \
    do {                  \
        if (!(condition)) \
            abort();      \
    } while (0)

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size);

/* UTF-8 without controls, and white space only within, singly. */
static inline void check_text(struct text t)
{
    char before = '\n';
    MUST(t.length > 0);
    for (size_t i = 0; i < t.length;) {
        int32_t point;
        utf8proc_ssize_t n = utf8proc_iterate((const utf8proc_uint8_t *) t.at + i,
                                              (utf8proc_ssize_t) (t.length - i), &point);
        bool blank = t.at[i] == ' ' || t.at[i] == '\n';
        MUST(n > 0 && (point >= ' ' || point == '\n') && point != 0x7F);
        MUST(!blank || (before != ' ' && before != '\n'));
        before = t.at[i];
        i += (size_t) n;
    }
    MUST(before != ' ' && before != '\n');
}

static inline void check_word_times(const struct cue *c)
{
    for (size_t i = 0; i < c->times_count; i++) {
        const struct word_time *w = &c->times[i];
        MUST(w->offset < c->text.length && w->start >= 0);
        MUST(!i || (w->offset >= w[-1].offset && w->start >= w[-1].start));
    }
}

static inline void check_cues(const struct recording *r)
{
    MUST(r->cues.count > 0 && r->kind != KIND_UNKNOWN);
    for (size_t i = 0; i < r->cues.count; i++) {
        const struct cue *c = &r->cues.at[i];
        unsigned line, column;
        check_text(c->text);
        check_word_times(c);
        MUST(c->start >= 0 && (c->end < 0 || c->end >= c->start) && r->length >= c->end);
        MUST(!i || c->start >= c[-1].start);
        MUST(c->raw <= c->raw_end && c->raw_end <= r->source.length);
        if (i < 100) { /* since each takes the length of its caption */
            cue_place(r, c, c->text.length - 1, &line, &column);
            MUST(line >= c->line);
        }
    }
}

static inline void read_any(struct text bytes)
{
    struct arena arena;
    struct problems problems = {0};
    struct recording r = {.arena = &arena, .file = "fuzz"};
    arena_init(&arena, (size_t) 256 << 20);
    if (arena_open(&arena)) {
        if (read_cues(&r, bytes, &problems))
            check_cues(&r);
        else
            MUST(problems.errors > 0);
    }
    problems_release(&problems);
    arena_release(&arena);
}

/* The bytes behind a beginning that makes them a file of the kind that is meant. */
static inline int read_behind(const char *beginning, const uint8_t *data, size_t size)
{
    struct buffer b = {0};
    buffer_put_string(&b, beginning);
    buffer_put(&b, (struct text){(const char *) data, size});
    /* A block of its own size, so that a read behind its end is seen. */
    char *bytes = malloc(b.length ? b.length : 1);
    if (bytes && b.length)
        memcpy(bytes, b.at, b.length);
    if (bytes)
        read_any((struct text){bytes, b.length});
    free(bytes);
    buffer_release(&b);
    return 0;
}

#endif
