/* read/cleaner.h: what clean.c shares with the files that know one kind of markup each. Each take_
 * function either takes what stands at `at`, and gives true, or leaves it.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_READ_CLEANER_H
#define DISHTAKE_READ_CLEANER_H

#include "read/clean.h"
#include "read/limits.h"

struct cleaner {
    struct text in;
    size_t at;                   /* the byte of `in` that is looked at */
    bool tags, markdown, quotes; /* what this kind of file has */
    char *out;                   /* NULL when only `origin` is asked for */
    size_t length;
    size_t wanted, origin; /* the byte of the output whose origin is asked for */
    char pending;          /* white space that goes before the next letter; '\0' for none */
    char last;             /* what was put last */
    bool line_started;     /* the line has a letter or digit already */
    bool bracket_open;     /* a "[" went, and its "]" will */
    double time;           /* waits for its word; < 0 when there is none */
    struct reader *rd;     /* NULL when only `origin` is asked for */
    struct cleaned *found;
};

/* `n` bytes that are one letter or sign; `from` is where they, or what stood for them, are in `in`.
 */
void clean_put(struct cleaner *c, const char *bytes, size_t n, size_t from);
/* ' ' or '\n'. */
void clean_put_blank(struct cleaner *c, char blank);
/* Blanks become spaces; what cannot be seen goes, but for the joiners that some scripts spell with.
 */
void clean_put_point(struct cleaner *c, int32_t point, const char *bytes, size_t n, size_t from);
/* '\0' behind the end. */
char clean_peek(const struct cleaner *c, size_t ahead);
/* Looks for `close` among the next `limit` bytes; stops at `stop`. */
bool clean_find(const struct cleaner *c, char close, char stop, size_t limit, struct text *inside);

/* markup.c: tags, references, and what other subtitles leave behind. */
bool take_tag(struct cleaner *c);
bool take_entity(struct cleaner *c);
bool take_override(struct cleaner *c);
bool take_backslash(struct cleaner *c);
/* Who speaks from here on; `raw` may hold references. */
void clean_note_voice(struct cleaner *c, struct text raw);

/* sounds.c: what stands in brackets. */
bool take_bracket(struct cleaner *c);
bool take_closing(struct cleaner *c);
bool take_parenthesis(struct cleaner *c);

/* markdown.c: what stands at the start of a line, around words and at the end of a table's row. */
void take_line_start(struct cleaner *c);
bool take_emphasis(struct cleaner *c);
bool take_bar(struct cleaner *c);

#endif
