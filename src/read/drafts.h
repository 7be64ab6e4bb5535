/* read/drafts.h: captions collected while a library's parser is open. The arena must not be asked
 * then, since its jump would leak the parser: all room is taken before, as much as the file can
 * need at most. SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_READ_DRAFTS_H
#define DISHTAKE_READ_DRAFTS_H

#include "read/reader.h"

/* A word with its own time, in seconds. */
struct draft_word {
    struct text text;
    double start, end; /* < 0 when not given */
};

struct drafts {
    struct draft *at;
    struct draft_word *words; /* NULL unless asked for */
    size_t *words_end;        /* of draft i, its words end here and begin at words_end[i - 1] */
    char *text;               /* all texts, one behind the other */
    size_t count, room, words_count, words_room, length, text_room;
    bool full; /* something did not fit: more captions than READ_CUES_MAX */
};

/* Room for `count` captions, as many timed words (where `words`) and `bytes` of text. */
void drafts_make(struct drafts *d, struct arena *a, size_t count, size_t bytes, bool words);
/* A zeroed one, or NULL when there are too many. */
struct draft *drafts_add(struct drafts *d);
/* The same text, in the drafts' own room. */
struct text drafts_keep(struct drafts *d, struct text t);

#endif
