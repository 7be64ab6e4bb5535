/* read/timed_mark.h: a time at the start of a line, as notes and exported captions write it.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_READ_TIMED_MARK_H
#define DISHTAKE_READ_TIMED_MARK_H

#include "read/reader.h"

/* How a time is written. Brackets make it sure. */
enum style { BRACKETED, BARE_ALONE, BARE_BEFORE_TEXT, BARE_AFTER_NAME, STYLES };

struct mark {
    enum style style;
    double start, end; /* end < 0: not given */
    size_t line_begin; /* offset of its line */
    size_t text_begin; /* offset of what is said */
    unsigned line;
    struct text speaker; /* empty when not given */
    bool after_text;     /* the line above has text */
    bool after_plain;    /* and no time of its own */
};

/* The time, and who speaks, that a line begins with; line numbers and what stands around it are not
 * set. False where it begins with none. */
bool mark_read(struct text line, struct mark *m);

#endif
