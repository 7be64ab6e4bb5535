/* write/chapters.h: a recording's chapter markers, for every form that prints them.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_WRITE_CHAPTERS_H
#define DISHTAKE_WRITE_CHAPTERS_H

#include "write/write.h"

struct chapter {
    double start,
        end; /* whole seconds; end is the next one's start, the last one's the recording's end */
    struct text title;
    bool added; /* made to keep the rules of video hosts, no dish of its own */
};
/* A LIST, with what had to be added or joined, in words. */
typedef struct {
    struct chapter *at;
    size_t count, room;
    text_list notes;
} chapter_list;

/* Generally known rules of video hosts: the first at 0:00, ascending, at least this many, each at
 * least this long. */
#define CHAPTERS_LEAST 3
#define CHAPTER_SECONDS 10
#define CHAPTER_TITLE_LETTERS 50

/* In the scratch arena; by component too where w->detail asks for it. What had to be added or
 * joined is told as notes, once however often it is asked for. */
void chapters_make(chapter_list *list, const struct recording *r, const struct writing *w,
                   struct problems *p);

#endif
