/* base/buffer.c
 * SPDX-License-Identifier: MIT */
#include "base/buffer.h"

#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>

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

bool buffer_room(struct buffer *b, size_t more)
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

void buffer_put_whole(struct buffer *b, uint64_t value)
{
    char digits[DIGITS_MOST];
    buffer_put(b, (struct text){digits, text_digits(value, digits)});
}

void buffer_format(struct buffer *b, const char *format, ...)
{
    va_list args;
    va_start(args, format);
    int length = vsnprintf(NULL, 0, format, args);
    va_end(args);
    if (length < 0 || !buffer_room(b, (size_t) length))
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
