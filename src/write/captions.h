/* write/captions.h: the captions with what the cook said was misheard mended. What the cook said
 * wrongly stays as it was said: captions say what was said.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_WRITE_CAPTIONS_H
#define DISHTAKE_WRITE_CAPTIONS_H

#include "write/write.h"

/* One stretch of words of one cue that reads otherwise now. */
struct mend {
    size_t first, last; /* word numbers */
    struct text now;    /* empty: they are left out */
};
typedef LIST(struct mend) mend_list;

/* Words that were corrected (against the captions as they were read) and, with `accepted`, misheard
 * words whose reading was accepted; in order. With `corrected` false only the accepted ones. */
void mends_make(mend_list *list, const struct recording *r, const struct writing *w,
                bool corrected);

/* A caption to be written. */
struct caption {
    double start, end;
    struct text text, speaker; /* lines divided by '\n'; empty where nobody new speaks */
};
typedef LIST(struct caption) caption_list;
/* The same words broken anew: DCMP Captioning Key (at most 32 letters a line, two lines, by
 * phrase), a reading speed of at most 20 letters a second where the talk leaves room (common
 * practice). */
void captions_reflow(caption_list *list, const struct recording *r, const struct writing *w);

#define CAPTION_LINE_LETTERS 32
#define CAPTION_LINES 2
#define CAPTION_SECONDS_MOST 6.0
#define CAPTION_SECONDS_LEAST 1.0
#define CAPTION_LETTERS_PER_SECOND 20

#endif
