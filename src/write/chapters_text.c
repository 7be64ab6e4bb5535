/* write/chapters_text.c: "0:00 Intro", a line a chapter, to paste into a video's description.
 * SPDX-License-Identifier: MIT */
#include "write/chapters.h"

/* A title with a line end in it would be two lines. */
static void put_title(struct buffer *b, struct text title)
{
    for (size_t i = 0; i < title.length; i++)
        buffer_put_char(b, title.at[i] == '\n' || title.at[i] == '\r' ? ' ' : title.at[i]);
}

bool write_chapters_text(const struct recording *r, const struct writing *w, struct buffer *out,
                         struct problems *p)
{
    chapter_list list;
    chapters_make(&list, r, w, p);
    for (size_t i = 0; i < list.count; i++) {
        buffer_format(out, "%.*s ", TEXT(clock_text(w->scratch, list.at[i].start)));
        put_title(out, list.at[i].title);
        buffer_put_char(out, '\n');
    }
    return true;
}
