/* dishtake.h: the library's one door. Bytes of a timed transcript in; recipes, findings, chapters
 * out.
 *
 *     struct dishtake *d = dishtake_new(NULL, 0);
 *     size_t length;
 *     if (d && dishtake_read(d, bytes, size, "evening.srt", NULL) == DISHTAKE_DONE)
 *         puts(dishtake_write(d, "recipes", "json", NULL, &length));
 *     dishtake_free(d);
 *
 * The library is pure: it opens no file, reads no clock, environment or locale, starts no thread,
 * prints nothing and keeps nothing between recordings but the memory it will use again. All text is
 * UTF-8. Times are seconds from the start of the recording. A handle belongs to one thread at a
 * time.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_H
#define DISHTAKE_H

#include <stdbool.h>
#include <stddef.h>

#ifdef __cplusplus
extern "C" {
#endif

#if defined(__GNUC__)
#define DISHTAKE_API __attribute__((visibility("default")))
#else
#define DISHTAKE_API
#endif

/* A grammar made ready, and room for one recording. */
struct dishtake;

enum dishtake_result {
    DISHTAKE_DONE,
    DISHTAKE_UNREADABLE, /* no cue could be read, or no ingredient of `list`; a message says what
                            was expected */
    DISHTAKE_NO_MEMORY, /* the recording would need more than `memory` bytes, or the system has none
                         */
    DISHTAKE_NO_SUCH_KITCHEN, /* `kitchen` is none of the grammar's; a message names them */
    DISHTAKE_BAD_EDITS,       /* the edits file cannot be used; nothing was read, and it must not be
                                 written over */
    DISHTAKE_NOT_READY        /* the grammar has mistakes, or nothing was read yet */
};

/* In rising order of weight. */
enum dishtake_level {
    DISHTAKE_NOTE, /* taste, or already settled */
    DISHTAKE_ASK,  /* two readings; the cook decides */
    DISHTAKE_FIX,  /* a gap, or implausible */
    DISHTAKE_STOP  /* unsafe as heard */
};

/* One file of a grammar, "en/foods.lex"; a grammar needs its "en/pack.list". Both pointers must
 * stay valid as long as the handle. */
struct dishtake_file {
    const char *name;
    const char *bytes;
    size_t length;
};

/* Zeroed is the usual. `size` is sizeof(struct dishtake_read_options): later versions add fields at
 * the end, and take what a program that was built before them does not give as zero. 0: all of it
 * is there. */
struct dishtake_read_options {
    size_t size;
    const char
        *kitchen;  /* whose cups and spoons: "us", "uk", ...; NULL: a unit is what its name says */
    bool one_dish; /* all of it is one dish: look for no borders */
    size_t memory; /* bytes that the recording may take at most; 0: 1 GiB */
    const char *edits; /* the bytes of an edits file; NULL: there is none. Copied. */
    size_t edits_length;
    const char *edits_name; /* for messages; must stay valid as long as `name` */
    const char *list;       /* an ingredient list as shown on screen or in the description, a food a
                               line: findings tell where the voice differs; NULL: there is none */
    size_t list_length;
    const char *list_name; /* for messages; must stay valid as long as `name` */
    bool keep; /* it will be read with other edits (dishtake_read_edits), which takes more memory;
                  `list` must stay valid like `bytes` */
    size_t
        dishes; /* how many dishes there are, where somebody knows; 0: nobody told. More than
                   DISHTAKE_DISHES_MOST are that many. Where other ones are found a note says so */
};
#define DISHTAKE_DISHES_MOST 200

struct dishtake_write_options {
    size_t size;        /* as above */
    size_t dish;        /* only this one, counted from 1; 0: all */
    double at;          /* seconds: for "explain", the moment asked about; below 0: all of it */
    bool one_line;      /* JSON without line ends, for JSON Lines */
    const char *units;  /* "us", "metric", "both"; NULL: as they were said */
    const char *serves; /* cards for so many, "12"; NULL: as it was cooked */
    const char *times;  /* or by a factor, "1/2"; NULL: once */
    const char *style;  /* CSS of the user's own, behind the page's; NULL: none */
    size_t style_length;
    const char *video_url;     /* http, https or a path; "{seconds}" in it becomes the second, else
                                  "#t=SECONDS" (W3C Media Fragments) is put behind it; NULL: no links */
    bool detail;               /* chapters by component too */
    bool reflow;               /* captions broken anew, by published conventions */
    size_t letters;            /* a description has at most so many; 0: 5000 */
    const char *const *stills; /* names, as dishtake_still gives them, of the pictures there are */
    size_t stills_count;
};

/* What is wrong with a grammar or a transcript, or was repaired in it. Line and column count from
 * 1, the column in bytes; 0: none. Borrowed: valid until the next dishtake_read or dishtake_free.
 */
struct dishtake_message {
    const char *file, *text;
    unsigned line, column;
    bool error; /* else something that was repaired, and nothing is lost */
};

/* One thing that can be written: dishtake_write(d, output, as, ...). */
struct dishtake_format {
    const char *output, *as, *about;
};

/* "0.1.0" */
DISHTAKE_API const char *dishtake_version(void);

/* A handle with the grammar in `files`, or with the built-in one where `count` is 0. NULL: no
 * memory. A grammar with mistakes gives a handle that only has messages (see dishtake_ready).
 * dishtake_free frees. */
DISHTAKE_API struct dishtake *dishtake_new(const struct dishtake_file *files, size_t count);
/* Another handle with the same grammar, for another thread; `d` must outlive it. NULL: no memory.
 */
DISHTAKE_API struct dishtake *dishtake_again(const struct dishtake *d);
DISHTAKE_API void dishtake_free(struct dishtake *d); /* NULL is fine */
DISHTAKE_API bool dishtake_ready(const struct dishtake *d);

/* Reads a transcript in any of the formats, found by content, and works out its recipes and
 * findings. What was read before is gone. `bytes` and `name` (for messages and output) must stay
 * valid until the next dishtake_read or dishtake_free. `options` may be NULL. */
DISHTAKE_API enum dishtake_result dishtake_read(struct dishtake *d, const char *bytes,
                                                size_t length, const char *name,
                                                const struct dishtake_read_options *options);

/* The recording of the last dishtake_read, which asked to `keep`, with another edits file (NULL:
 * none) in place of the one before: the same as reading all of it, but only what the difference
 * changes is done anew. DISHTAKE_NOT_READY where nothing was kept. */
DISHTAKE_API enum dishtake_result dishtake_read_edits(struct dishtake *d, const char *edits,
                                                      size_t length);

/* The recording in one of the formats, as `*length` bytes with a NUL after them. Valid until the
 * next call of dishtake_write, dishtake_read or dishtake_free. NULL, with a message, when there is
 * no such format or dish, nothing was read, or memory ran out. `options` may be NULL. */
DISHTAKE_API const char *dishtake_write(struct dishtake *d, const char *output, const char *as,
                                        const struct dishtake_write_options *options,
                                        size_t *length);
/* The `i`th format from 0; false past the last. */
DISHTAKE_API bool dishtake_format(size_t i, struct dishtake_format *format);

/* The kitchen's arithmetic alone: "2 cups flour" in "gram", "350 F" in "C", "gas mark 4" in "F".
 * The answer, then on lines of their own where it comes from and how it was rounded. `unit` NULL:
 * as a kitchen would measure it; `kitchen` as for reading. Valid like dishtake_write's; NULL, with
 * a message. What was read before is gone. */
DISHTAKE_API const char *dishtake_measure(struct dishtake *d, const char *amount, const char *unit,
                                          const char *kitchen, size_t *length);

/* ---- publishing (docs/publish.md): which files a recording is published as, and which pictures
 * they would show */

#define DISHTAKE_NAME_BYTES 96
/* dishtake_write(d, output, as, ...) with that dish, 0 for none, gives the file's bytes. */
struct dishtake_published {
    char name[DISHTAKE_NAME_BYTES]; /* "02-lemon-bars.html": lower-case ASCII, no folders */
    const char *output, *as;
    size_t dish;
};
/* The `i`th file from 0; false past the last, or when nothing was read. */
DISHTAKE_API bool dishtake_published(const struct dishtake *d, size_t i,
                                     struct dishtake_published *file);
struct dishtake_still {
    char name[DISHTAKE_NAME_BYTES];
    double at; /* seconds: the moment to take it at */
};
DISHTAKE_API bool dishtake_still(const struct dishtake *d, size_t i, struct dishtake_still *still);

/* One shopping list over many recordings; the order in which they are added changes nothing but
 * the order of dishes named beside an item. `d` lends its grammar and must outlive it. NULL: no
 * memory. */
struct dishtake_shopping;
DISHTAKE_API struct dishtake_shopping *dishtake_shopping_new(const struct dishtake *d);
DISHTAKE_API void dishtake_shopping_free(struct dishtake_shopping *s); /* NULL is fine */
/* Adds what `d` has read, a copy; `number` is the recording's place in the list. False: nothing was
 * read, a dish cannot be scaled so (a message of `d` says why), or no memory. */
DISHTAKE_API bool dishtake_shopping_add(struct dishtake_shopping *s, struct dishtake *d,
                                        size_t number,
                                        const struct dishtake_write_options *options);
/* "text" or "html"; valid until the next call with `s`. NULL: no such form, or no memory. */
DISHTAKE_API const char *dishtake_shopping_write(struct dishtake_shopping *s, const char *as,
                                                 const struct dishtake_write_options *options,
                                                 size_t *length);

DISHTAKE_API size_t dishtake_dishes(const struct dishtake *d);
/* Open findings (not dismissed by the cook) at or over a level. */
DISHTAKE_API size_t dishtake_findings(const struct dishtake *d, enum dishtake_level level);

/* ---- the cook's edits (docs/review.md) */

/* The edits file that was read, with one more edit, `*length` bytes: for saving, and for the next
 * dishtake_read or dishtake_read_edits. `asked` is JSON as docs/review.md describes it. Valid and
 * NULL as with dishtake_write. */
DISHTAKE_API const char *dishtake_edit(struct dishtake *d, const char *asked, size_t asked_length,
                                       size_t *length);
/* How many edits there are; and why edit `n`, from 1, has no place in this recording: NULL where it
 * has one. */
DISHTAKE_API size_t dishtake_edits(const struct dishtake *d);
DISHTAKE_API const char *dishtake_edit_unplaced(const struct dishtake *d, size_t n);
/* Whether an edit carries this key, which the asker made up: then it was saved before. */
DISHTAKE_API bool dishtake_edit_known(const struct dishtake *d, const char *key, size_t length);

/* The `i`th message from 0, of the grammar before the first dishtake_read, then of the recording.
 * False past the last. */
DISHTAKE_API bool dishtake_message(const struct dishtake *d, size_t i,
                                   struct dishtake_message *out);
/* Messages that were too many to keep. */
DISHTAKE_API size_t dishtake_messages_dropped(const struct dishtake *d);

#ifdef __cplusplus
}
#endif

#endif
