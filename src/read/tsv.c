/* read/tsv.c: start, end and text, divided by tabs; a first line may name the columns.
 * SPDX-License-Identifier: MIT */
#include "read/clock.h"
#include "read/limits.h"
#include "read/reader.h"

#define COLUMNS_MAX 16

enum column { COLUMN_START, COLUMN_END, COLUMN_TEXT, COLUMN_SPEAKER, COLUMN_KINDS };

/* Names of columns, in lower case (common practice, no source). */
static const struct {
    const char *name;
    enum column column;
} heads[] = {
    {"start", COLUMN_START},  {"start_time", COLUMN_START}, {"begin", COLUMN_START},
    {"from", COLUMN_START},   {"time", COLUMN_START},       {"end", COLUMN_END},
    {"end_time", COLUMN_END}, {"stop", COLUMN_END},         {"to", COLUMN_END},
    {"text", COLUMN_TEXT},    {"caption", COLUMN_TEXT},     {"transcript", COLUMN_TEXT},
    {"content", COLUMN_TEXT}, {"speaker", COLUMN_SPEAKER},  {"name", COLUMN_SPEAKER},
};

#define NO_COLUMN COLUMNS_MAX

/* Which cell is what; NO_COLUMN where there is none. */
struct layout {
    size_t at[COLUMN_KINDS];
};

static const struct layout plain_layout = {{0, 1, 2, NO_COLUMN}};

static bool same_head(struct text cell, const char *name)
{
    struct text want = text_from(name);
    if (cell.length != want.length)
        return false;
    for (size_t i = 0; i < cell.length; i++)
        if (cell.at[i] != name[i] && (cell.at[i] | 0x20) != name[i])
            return false;
    return true;
}

static void read_head(struct text cell, size_t number, struct layout *l)
{
    for (size_t i = 0; i < sizeof heads / sizeof *heads; i++)
        if (same_head(cell, heads[i].name) && l->at[heads[i].column] == NO_COLUMN)
            l->at[heads[i].column] = number;
}

/* True when the line names at least start and text. */
static bool read_heads(struct text line, struct layout *l)
{
    struct layout found = {{NO_COLUMN, NO_COLUMN, NO_COLUMN, NO_COLUMN}};
    struct text cell;
    for (size_t n = 0; n < COLUMNS_MAX && text_part(&line, '\t', &cell); n++)
        read_head(text_trim(cell), n, &found);
    if (found.at[COLUMN_START] == NO_COLUMN || found.at[COLUMN_TEXT] == NO_COLUMN)
        return false;
    *l = found;
    return true;
}

/* Cell `number`; the last column of a plain layout holds all that is left, tabs too. */
static struct text cell_of(struct text line, size_t number, bool rest)
{
    struct text cell = TEXT_EMPTY;
    for (size_t n = 0; n < number; n++)
        if (!text_part(&line, '\t', &cell))
            return TEXT_EMPTY;
    if (!line.at)
        return TEXT_EMPTY;
    return rest || !text_part(&line, '\t', &cell) ? line : cell;
}

bool line_is_tsv_row(struct text line)
{
    struct layout l;
    double seconds;
    bool whole;
    return read_heads(line, &l)
           || (time_read(cell_of(line, 0, false), &seconds, &whole)
               && time_read(cell_of(line, 1, false), &seconds, &whole)
               && !line_is_blank(cell_of(line, 2, true)));
}

struct tsv {
    struct reader *rd;
    struct layout layout;
    bool plain, whole;
    struct draft open; /* line 0: none; held back for lines that belong to its text */
};

static double read_cell_time(struct tsv *t, struct line line, enum column column)
{
    double seconds;
    bool whole;
    if (t->layout.at[column] == NO_COLUMN
        || !time_read(cell_of(line.text, t->layout.at[column], false), &seconds, &whole))
        return -1;
    t->whole = t->whole && whole;
    if (seconds >= 0)
        return seconds;
    repair(t->rd, REPAIR_NEGATIVE, line.number);
    return 0;
}

/* Spreadsheets put a text in quotes when there is a quote or a line break in it. */
static void drop_quotes(struct draft *d, struct text source)
{
    struct text t = text_slice(source, d->raw, d->raw_end);
    if (t.length < 2 || t.at[0] != '"' || t.at[t.length - 1] != '"')
        return;
    d->raw++;
    d->raw_end--;
    d->column++;
}

static bool close_row(struct tsv *t)
{
    struct draft *d = &t->open;
    if (!d->line)
        return true;
    drop_quotes(d, t->rd->r->source);
    d->text = text_slice(t->rd->r->source, d->raw, d->raw_end);
    if (line_is_blank(d->text))
        repair(t->rd, REPAIR_NO_TEXT, d->line);
    return add_cue(t->rd, d);
}

static bool open_row(struct tsv *t, struct line line)
{
    struct text text = cell_of(line.text, t->layout.at[COLUMN_TEXT], t->plain);
    if (!close_row(t))
        return false;
    size_t column = text.length ? (size_t) (text.at - line.text.at) : line.text.length;
    t->open = (struct draft){.raw = line.begin + column,
                             .raw_end = line.begin + column + text.length,
                             .line = line.number,
                             .column = (unsigned) column + 1};
    t->open.start = read_cell_time(t, line, COLUMN_START);
    t->open.end = read_cell_time(t, line, COLUMN_END);
    if (t->layout.at[COLUMN_SPEAKER] != NO_COLUMN)
        t->open.speaker = text_trim(cell_of(line.text, t->layout.at[COLUMN_SPEAKER], false));
    return true;
}

/* A line without a tab is the rest of a text that had a line break in it. */
static void add_line(struct tsv *t, struct line line)
{
    if (!t->open.line) {
        repair(t->rd, REPAIR_BEFORE_TIMES, line.number);
        return;
    }
    repair(t->rd, REPAIR_BLOCK, line.number);
    t->open.raw_end = line.begin + line.text.length;
}

static void scale_all(struct recording *r)
{
    struct time_span span = {0};
    for (size_t i = 0; i < r->cues.count; i++)
        time_span_add(&span, r->cues.at[i].start, r->cues.at[i].end, r->cues.at[i].text);
    double unit = time_span_unit(&span);
    for (size_t i = 0; i < r->cues.count; i++) {
        r->cues.at[i].start *= unit;
        r->cues.at[i].end *= unit;
    }
}

bool read_tsv(struct reader *rd)
{
    struct tsv t = {.rd = rd, .layout = plain_layout, .plain = true, .whole = true};
    struct lines lines = {.source = rd->r->source};
    struct line line;
    bool first = true;
    while (next_line(&lines, &line)) {
        if (line_is_blank(line.text))
            continue;
        if (first && read_heads(line.text, &t.layout)) {
            t.plain = t.layout.at[COLUMN_TEXT] == 2 && t.layout.at[COLUMN_SPEAKER] == NO_COLUMN;
        } else if (line_is_blank(cell_of(line.text, t.layout.at[COLUMN_TEXT], false))
                   && text_find(line.text, '\t', 0) == line.text.length) {
            add_line(&t, line);
        } else if (!open_row(&t, line)) {
            return false;
        }
        first = false;
    }
    if (!close_row(&t))
        return false;
    if (t.whole)
        scale_all(rd->r);
    return true;
}
