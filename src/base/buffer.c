/* base/buffer.c
 * SPDX-License-Identifier: MIT */
#include "base/buffer.h"

#include <stdarg.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

void buffer_release(struct buffer *b)
{
    free(b->at);
    *b = (struct buffer){0};
}

void buffer_clear(struct buffer *b)
{
    b->length = 0;
    b->failed = false;
    if (b->at)
        b->at[0] = '\0';
}

/* Room for `more` bytes and a NUL. */
static bool make_room(struct buffer *b, size_t more)
{
    if (b->failed)
        return false;
    if (more < b->room && b->length < b->room - more)
        return true;
    if (more > SIZE_MAX / 4 || b->length > SIZE_MAX / 4) {
        b->failed = true;
        return false;
    }
    size_t room = b->room ? b->room : 1024;
    while (room <= b->length + more)
        room *= 2;
    char *at = realloc(b->at, room);
    if (!at) {
        b->failed = true;
        return false;
    }
    b->at = at;
    b->room = room;
    return true;
}

void buffer_put(struct buffer *b, struct text t)
{
    if (!t.length || !make_room(b, t.length))
        return;
    memcpy(b->at + b->length, t.at, t.length);
    b->length += t.length;
    b->at[b->length] = '\0';
}

void buffer_put_char(struct buffer *b, char c)
{
    buffer_put(b, (struct text){&c, 1});
}

void buffer_put_string(struct buffer *b, const char *string)
{
    buffer_put(b, text_from(string));
}

void buffer_format(struct buffer *b, const char *format, ...)
{
    va_list args;
    va_start(args, format);
    int length = vsnprintf(NULL, 0, format, args);
    va_end(args);
    if (length < 0 || !make_room(b, (size_t) length))
        return;
    va_start(args, format);
    vsnprintf(b->at + b->length, (size_t) length + 1, format, args);
    va_end(args);
    b->length += (size_t) length;
}

struct text buffer_text(const struct buffer *b)
{
    return (struct text){b->at ? b->at : "", b->length};
}
