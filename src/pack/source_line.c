/* pack/source_line.c: a pack file, line by line.
 * SPDX-License-Identifier: MIT */
#include <utf8proc.h>

#include "pack/load.h"

struct lines lines_open(const struct pack_file *file, struct problems *p)
{
    struct text rest = file->bytes;
    if (text_starts(rest, "\xEF\xBB\xBF")) /* a byte order mark */
        rest = text_slice(rest, 3, rest.length);
    return (struct lines){.problems = p, .rest = rest, .line.file = file->name};
}

struct place line_place(const struct source_line *line, const char *at)
{
    return (struct place){line->file, line->number, (unsigned) (at - line->text.at) + 1};
}

bool line_word(struct text *rest, struct text *word)
{
    *rest = text_trim(*rest);
    size_t end = text_find(*rest, ' ', 0);
    size_t tab = text_find(*rest, '\t', 0);
    *word = text_slice(*rest, 0, end < tab ? end : tab);
    *rest = text_slice(*rest, word->length, rest->length);
    return word->length > 0;
}

#define QUOTE_BYTES 60

int quote_length(struct text t)
{
    return (int) text_cut(t, QUOTE_BYTES).length;
}

static bool is_odd(unsigned char c)
{
    return c >= 0x7F || (c < ' ' && c != '\t');
}

/* Reports the first byte of a line that is no text. */
static bool line_is_text(const struct lines *l)
{
    const struct text t = l->line.text;
    size_t i = 0;
    for (;;) {
        while (i < t.length && !is_odd((unsigned char) t.at[i]))
            i++;
        if (i == t.length)
            return true;
        unsigned char c = (unsigned char) t.at[i];
        if (c < 0x80)
            return problem(l->problems, line_place(&l->line, t.at + i),
                           "control character 0x%02X; only tabs may stand between words", c);
        utf8proc_int32_t letter;
        utf8proc_ssize_t n = utf8proc_iterate((const utf8proc_uint8_t *) t.at + i,
                                              (utf8proc_ssize_t) (t.length - i), &letter);
        if (n <= 0)
            return problem(l->problems, line_place(&l->line, t.at + i),
                           "byte 0x%02X is not UTF-8; save the file as UTF-8", c);
        i += (size_t) n;
    }
}

static void cut_return(struct lines *l)
{
    if (!text_ends(l->line.text, "\r"))
        return;
    l->line.text.length--;
    if (!l->told_returns)
        problem(l->problems, line_place(&l->line, l->line.text.at + l->line.text.length),
                "the line ends in \"\\r\\n\"; save the file with \"\\n\" line ends");
    l->told_returns = true;
}

/* Spaces before the sign are allowed; a tab would be an empty cell. */
static bool is_comment(struct text line)
{
    size_t i = 0;
    while (i < line.length && line.at[i] == ' ')
        i++;
    return i < line.length && line.at[i] == '#';
}

bool lines_next(struct lines *l)
{
    while (l->rest.length) {
        size_t end = text_find(l->rest, '\n', 0);
        l->line.text = text_slice(l->rest, 0, end);
        l->rest = text_slice(l->rest, end + 1, l->rest.length);
        l->line.number++;
        cut_return(l);
        if (!line_is_text(l) || !text_trim(l->line.text).length || is_comment(l->line.text))
            continue;
        return true;
    }
    return false;
}
