/* read/json_place.c: the strings under a text's name are looked for in the file's bytes, in order.
 * SPDX-License-Identifier: MIT */
#include "read/json_place.h"

#include "base/json_text.h"

const char *const JSON_TEXT_NAMES[] = {"text", "content", "caption", "transcript", "line", NULL};

struct scan {
    struct text source;
    size_t at;
    unsigned line;
    size_t line_begin;
    struct text name; /* the string before a ':'; that of the value that comes */
};

/* The string that begins at `at`, without its quotes. */
static struct text scan_string(struct scan *s)
{
    size_t begin = ++s->at;
    while (s->at < s->source.length && s->source.at[s->at] != '"')
        s->at += s->source.at[s->at] == '\\' ? 2 : 1;
    size_t end = s->at < s->source.length ? s->at : s->source.length;
    s->at++;
    return text_slice(s->source, begin, end);
}

static bool is_text_name(struct text name)
{
    for (size_t i = 0; JSON_TEXT_NAMES[i]; i++)
        if (text_is(name, JSON_TEXT_NAMES[i]))
            return true;
    return false;
}

/* The next string that is the value of a text's name. */
static bool next_text(struct scan *s, struct text *found)
{
    struct text string = TEXT_EMPTY;
    while (s->at < s->source.length) {
        char c = s->source.at[s->at];
        if (c == '"') {
            string = scan_string(s);
            if (is_text_name(s->name)) {
                s->name = TEXT_EMPTY;
                *found = string;
                return true;
            }
            s->name = TEXT_EMPTY;
            continue;
        }
        if (c == ':')
            s->name = string;
        else if (c == ',' || c == '{' || c == '[')
            s->name = string = TEXT_EMPTY;
        s->line += c == '\n';
        s->line_begin = c == '\n' ? s->at + 1 : s->line_begin;
        s->at++;
    }
    return false;
}

/* Does the string with its escapes, as it stands in the file, say `text`? */
static bool says(struct text string, struct text text)
{
    if (text_find(string, '\\', 0) == string.length)
        return text_equal(string, text);
    json_t *value = json_loadb(string.at - 1, string.length + 2, JSON_DECODE_ANY, NULL);
    bool same = text_equal(json_text(value), text);
    json_decref(value);
    return same;
}

void json_place(struct drafts *drafts, struct text source)
{
    struct scan s = {.source = source, .line = 1};
    struct text string;
    for (size_t i = 0; i < drafts->count; i++) {
        struct draft *d = &drafts->at[i];
        bool found = false;
        while (!d->made && !found && next_text(&s, &string))
            found = says(string, d->text);
        d->line = s.line;
        if (!found)
            continue;
        d->raw = (size_t) (string.at - s.source.at);
        d->raw_end = d->raw + string.length;
        d->column = (unsigned) (d->raw - s.line_begin) + 1;
    }
}
