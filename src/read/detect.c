/* read/detect.c: what kind of transcript it is, by content and never by the file's name.
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "read/reader.h"

static struct text skip_space(struct text t)
{
    while (t.length && strchr(" \t\n\f", t.at[0]))
        t = text_slice(t, 1, t.length);
    return t;
}

static bool is_webvtt(struct text t)
{
    return text_starts(t, "WEBVTT") && (t.length == 6 || strchr(" \t\n", t.at[6]));
}

/* "[0:12] text" begins with a bracket too, and so does "{\an8}". */
static bool is_json(struct text t)
{
    if (!t.length || (t.at[0] != '[' && t.at[0] != '{'))
        return false;
    struct text next = skip_space(text_slice(t, 1, t.length));
    return next.length && strchr(t.at[0] == '[' ? "{[\"]" : "\"}", next.at[0]);
}

/* An XML file begins with its declaration, a comment or an element that has no blank in its name.
 */
static bool is_xml(struct text t)
{
    struct text name = text_slice(t, 1, t.length < 40 ? t.length : 40);
    size_t colon = text_find(name, ':', 0);
    return text_starts(t, "<?xml") || text_starts(t, "<!--") || text_starts(t, "<!DOCTYPE")
           || text_starts(t, "<tt ") || text_starts(t, "<tt>") || text_starts(t, "<tt\n")
           || (text_starts(t, "<") && text_starts(text_slice(name, colon, name.length), ":tt"));
}

/* The kinds that are told by their lines: an arrow between two times is SubRip, even where other
 * lines begin with a time too; a row is a timed line only where most are. */
static enum transcript_kind detect_lines(struct text source)
{
    struct lines lines = {.source = source};
    struct line line;
    size_t rows = 0, timed = 0;
    while (next_line(&lines, &line)) {
        if (line_has_arrow(line.text))
            return KIND_SUBRIP;
        bool row = line_is_tsv_row(line.text);
        rows += row;
        timed += !row && line_is_timed(line.text);
    }
    if (rows && rows >= timed)
        return KIND_TSV;
    return timed ? KIND_TIMED_LINES : KIND_UNKNOWN;
}

enum transcript_kind detect_kind(struct text source)
{
    struct text t = skip_space(source);
    if (is_webvtt(source))
        return KIND_WEBVTT;
    if (is_json(t))
        return KIND_JSON;
    if (is_xml(t))
        return KIND_TTML;
    return detect_lines(source);
}
