/* read/reader.h: what the format readers share; nobody outside read/ includes it.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_READ_READER_H
#define DISHTAKE_READ_READER_H

#include "model/recording.h"

enum repair {
#define REPAIR(name, about) REPAIR_##name,
#include "read/repairs.def"
#undef REPAIR
    REPAIRS
};

/* Whose words begin at `offset` of a text; no name: nobody is named. */
struct voice {
    size_t offset;
    struct text name; /* arena */
};

/* What clean_text makes of a caption; used again for the next one. White space in the text is
 * single: ' ', or '\n' where the caption broke the line; none at either end. */
struct cleaned {
    struct text text; /* the reader's scratch: valid until the next clean_text */
    LIST(struct word_time) times;
    LIST(struct voice) voices; /* in order; empty when no voice was named */
};

/* A file being read. */
struct reader {
    struct recording *r;
    struct problems *p;
    struct {
        unsigned line; /* where it was met first */
        size_t count;
    } repairs[REPAIRS];
    char *scratch; /* arena; room for the text that is being cleaned */
    size_t scratch_room;
    int32_t *points; /* arena; room for what is being normalised */
    size_t points_room;
    struct cleaned clean;
};

/* A caption as a format's reader found it, before its markup is removed. */
struct draft {
    double start, end;     /* seconds; start < 0: could not be read; end < 0: not given */
    struct text text;      /* with markup */
    struct text speaker;   /* empty when not given */
    size_t raw, raw_end;   /* see struct cue */
    unsigned line, column; /* of the text's first byte */
    bool made;             /* the text stands nowhere in the file as one string */
};

/* What every message about an unreadable file ends with. */
#define EXPECTED                                                                      \
    "expected SubRip, WebVTT, TTML, lines that begin with a time, JSON segments, or " \
    "tab-separated start, end, text"

struct place read_place(const struct reader *rd, unsigned line);
void repair(struct reader *rd, enum repair kind, unsigned line);
/* Removes the markup, and adds a cue for each voice in it. A time that could not be read is
 * reported, and becomes the end of the cue before. False, with an error, when there are too many
 * cues. */
bool add_cue(struct reader *rd, const struct draft *d);
/* The end of a cue, from its reading speed where it is not given. */
double cue_end(const struct cue *c);
/* `c` without the first `offset` bytes of its text; its place moves along. */
struct cue cue_after(const struct reader *rd, const struct cue *c, size_t offset);
/* `c` with only the first `length` bytes of its text. */
struct cue cue_before(const struct cue *c, size_t length);
/* Tells whether times that are all whole numbers are seconds or milliseconds. Zeroed is empty. */
struct time_span {
    double first, last;
    size_t letters; /* that were spoken between them */
};
void time_span_add(struct time_span *s, double start, double end, struct text text);
double time_span_unit(const struct time_span *s); /* in seconds: 1 or 0.001 */

/* Lines, without their '\n'. */
struct line {
    struct text text;
    size_t begin;    /* its offset in the source */
    unsigned number; /* from 1 */
};
struct lines {
    struct text source;
    size_t at;
    unsigned number; /* of the line that next_line gave last */
};
bool next_line(struct lines *l, struct line *line);
bool line_is_blank(struct text line);
bool line_is_heading(struct text line); /* of Markdown: one to six "#" */
bool is_letter(char c); /* of a word: ASCII letters, and all bytes of other scripts */

/* encoding.c: fills in r->source; false, with an error, when the bytes are no text. */
bool decode_source(struct reader *rd, struct text bytes);
/* detect.c */
enum transcript_kind detect_kind(struct text source);

/* One reader a format: r->source -> add_cue. False, with an error, when it cannot go on. */
bool read_subrip(struct reader *rd);
bool read_webvtt(struct reader *rd);
bool read_ttml(struct reader *rd);
bool read_timed_lines(struct reader *rd);
bool read_json(struct reader *rd);
bool read_tsv(struct reader *rd);

/* What a line must look like for detect.c. */
bool line_has_arrow(struct text line);  /* subrip.c: two clocks with an arrow */
bool line_is_timed(struct text line);   /* timed_lines.c: begins with a clock */
bool line_is_tsv_row(struct text line); /* tsv.c: two times and a text, or a header */

/* order.c, rolling.c, speaker.c: what is done to all cues, in this order. */
void order_cues(struct reader *rd);
void report_overlaps(struct reader *rd);
void sort_cues(struct recording *r); /* by start; what has the same start keeps its order */
void unroll_cues(struct reader *rd);
void split_speakers(struct reader *rd);

#endif
