/* write/write.h: a recording whose recipes are built -> bytes to publish or look at. One file a
 * format; formats.def lists them. Writers change nothing in the recording.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_WRITE_WRITE_H
#define DISHTAKE_WRITE_WRITE_H

#include "base/buffer.h"
#include "kitchen/kitchen.h"
#include "model/recording.h"

enum units_shown {
    UNITS_SAID, /* as they were said */
    UNITS_US,
    UNITS_METRIC,
    UNITS_BOTH /* as they were said, the other system in brackets */
};

/* What one output is made with. Zeroed but for the first two is the usual. */
struct writing {
    const struct kitchen *kitchen; /* how amounts are written, and the language's phrases */
    struct arena *scratch;         /* open; reset by the caller afterwards */
    size_t dish;                   /* only this one, counted from 1; 0: all */
    double at;     /* seconds: the moment that `explain` is asked about; < 0: all of them */
    bool one_line; /* JSON without line ends */
    enum units_shown units;
    const struct profile *profile; /* whose cups and spoons; NULL: a unit is what its name says */
    struct ratio serves, times;    /* the yield wanted, or the factor; none: as it was cooked */
    struct text style;             /* the user's own CSS, behind the page's; empty: none */
    struct text video_url;         /* see moment_url; empty: none */
    bool detail;                   /* chapters by component too */
    bool reflow;                   /* captions broken anew */
    size_t letters;                /* a description has at most so many; 0: the usual */
    const char *const *stills;     /* names of the pictures there are */
    size_t stills_count;
};

/* A phrase of the language, its blanks filled in, in the scratch arena. */
#define PHRASE_0(w, key) PHRASE_PLAIN((w)->kitchen, (w)->scratch, key)
#define PHRASE_1(w, key, one) PHRASE_TEXT((w)->kitchen, (w)->scratch, key, (one))
#define PHRASE_2(w, key, one, two) PHRASE_TEXT((w)->kitchen, (w)->scratch, key, (one), (two))

/* A list with one more, as phrase_listed() writes it. */
static inline struct text listed(const struct writing *w, struct text list, struct text next)
{
    return phrase_listed(w->kitchen, w->scratch, list, next);
}

/* Puts the whole output into `out`. False, with a problem, when there is nothing to write. A full
 * scratch arena jumps out, so a writer owns nothing. */
typedef bool writer(const struct recording *r, const struct writing *w, struct buffer *out,
                    struct problems *p);

struct format {
    const char *output, *as, *about;
    writer *write;
};

#define FORMAT(output, as, write, about) writer write;
#include "write/formats.def"
#undef FORMAT

/* The row with that output and form; NULL: none. */
const struct format *format_find(const char *output, const char *as);
/* The `i`th row; NULL past the last. */
const struct format *format_at(size_t i);

/* "d17", "i34", "s40": ids are made of word numbers. */
#define ID_DISH 'd'
#define ID_INGREDIENT 'i'
#define ID_STEP 's'

bool dish_wanted(const struct writing *w,
                 size_t dish); /* index into recording.dishes, or FINDING_NO_DISH */
/* Findings of a dish that the cook has not dismissed, from a level up. */
size_t open_findings(const struct recording *r, size_t dish, enum finding_level level);

/* "1:05" below an hour, else "1:02:33"; whole seconds, cut off (a clock shows no later second than
 * it is). */
struct text clock_text(struct arena *a, double seconds);

#endif
