/* base/buffer.h: bytes being written, growing as they come; what every writer writes into.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BASE_BUFFER_H
#define DISHTAKE_BASE_BUFFER_H

#include "base/text.h"

/* Zeroed is empty. Owns its memory (malloc), so it outlives arenas. Once memory was refused
 * `failed` is set and everything put after that is dropped: test it once, at the end. */
struct buffer {
    char *at; /* `length` bytes and a NUL; NULL while nothing was put */
    size_t length, room;
    bool failed;
};

void buffer_release(struct buffer *b);
void buffer_clear(struct buffer *b); /* empty again; keeps its memory */
/* Room for `more` bytes and a NUL; false, and failed, where memory was refused. */
bool buffer_room(struct buffer *b, size_t more);
/* Here, since an output is made of some ten thousand short ones. */
static inline void buffer_put(struct buffer *b, struct text t)
{
    bool fits = !b->failed && t.length < b->room && b->length < b->room - t.length;
    if (!t.length || (!fits && !buffer_room(b, t.length)))
        return;
    memcpy(b->at + b->length, t.at, t.length);
    b->length += t.length;
    b->at[b->length] = '\0';
}
static inline void buffer_put_char(struct buffer *b, char c)
{
    buffer_put(b, (struct text){&c, 1});
}
static inline void buffer_put_string(struct buffer *b, const char *string)
{
    buffer_put(b, (struct text){string, strlen(string)});
}
void buffer_put_whole(struct buffer *b, uint64_t value); /* in decimal digits */
void buffer_format(struct buffer *b, const char *format, ...) __attribute__((format(printf, 2, 3)));
struct text buffer_text(const struct buffer *b); /* borrowed until the next put */

#endif
