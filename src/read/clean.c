/* read/clean.c: one pass over the caption.
 * SPDX-License-Identifier: MIT */
#include "read/clean.h"

#include <string.h>
#include <utf8proc.h>

#include "read/cleaner.h"
#include "read/normalise.h"

static void put_byte(struct cleaner *c, char byte, size_t from)
{
    if (c->length == c->wanted)
        c->origin = from;
    if (c->out)
        c->out[c->length] = byte;
    c->length++;
    c->last = byte;
}

void clean_put_blank(struct cleaner *c, char blank)
{
    if (blank == '\n')
        c->line_started = false;
    if (c->pending != '\n')
        c->pending = blank;
}

static void note_time(struct cleaner *c)
{
    if (c->time >= 0 && c->rd)
        *LIST_ADD(c->rd->r->arena, &c->found->times) = (struct word_time){c->length, c->time, -1};
    c->time = -1;
}

void clean_put(struct cleaner *c, const char *bytes, size_t n, size_t from)
{
    if (c->pending && c->length)
        put_byte(c, c->pending, from);
    c->pending = '\0';
    note_time(c);
    for (size_t i = 0; i < n; i++)
        put_byte(c, bytes[i], from + (c->in.at + from == bytes ? i : 0));
    if (is_letter(bytes[0]) || is_digit(bytes[0]))
        c->line_started = true;
}

/* Bytes that stand as they are in every kind of file, whatever is around them: letters, digits, and
 * the signs of ordinary talk. */
static bool is_plain(char c)
{
    static const bool plain[256] = {
#define LETTERS(first)                                                                  \
    [(first)] = true, [(first) + 1] = true, [(first) + 2] = true, [(first) + 3] = true, \
    [(first) + 4] = true
        LETTERS('a'), LETTERS('f'), LETTERS('k'), LETTERS('p'), LETTERS('u'),
        ['z'] = true, LETTERS('A'), LETTERS('F'), LETTERS('K'), LETTERS('P'),
        LETTERS('U'), ['Z'] = true, LETTERS('0'), LETTERS('5'), ['\''] = true,
        ['.'] = true, [','] = true, ['?'] = true, ['!'] = true
#undef LETTERS
    };
    return plain[(unsigned char) c];
}

/* A run of plain bytes, most often a word: what clean_put() does with each of them, at once. False
 * where none stands here, or one is asked for. */
static bool take_plain(struct cleaner *c)
{
    size_t end = c->at;
    while (end < c->in.length && is_plain(c->in.at[end]))
        end++;
    size_t n = end - c->at;
    if (!n || c->wanted != SIZE_MAX)
        return false;
    clean_put(c, c->in.at + c->at, 1, c->at);
    if (n > 1) {
        memcpy(c->out + c->length, c->in.at + c->at + 1, n - 1);
        c->length += n - 1;
        c->last = c->in.at[end - 1];
    }
    for (size_t i = c->at; i < end && !c->line_started; i++)
        c->line_started = is_letter(c->in.at[i]) || is_digit(c->in.at[i]);
    c->at = end;
    return true;
}

static bool is_music(int32_t point)
{
    return point >= 0x2669 && point <= 0x266C; /* the four notes */
}

void clean_put_point(struct cleaner *c, int32_t point, const char *bytes, size_t n, size_t from)
{
    utf8proc_category_t category = utf8proc_category(point);
    bool joiner = point == 0x200C || point == 0x200D;
    if (category == UTF8PROC_CATEGORY_ZS || category == UTF8PROC_CATEGORY_ZL
        || category == UTF8PROC_CATEGORY_ZP || category == UTF8PROC_CATEGORY_CC || is_music(point))
        clean_put_blank(c, ' ');
    else if (category != UTF8PROC_CATEGORY_CF || joiner)
        clean_put(c, bytes, n, from);
}

char clean_peek(const struct cleaner *c, size_t ahead)
{
    return c->at + ahead < c->in.length ? c->in.at[c->at + ahead] : '\0';
}

bool clean_find(const struct cleaner *c, char close, char stop, size_t limit, struct text *inside)
{
    for (size_t i = c->at + 1; i < c->in.length && i - c->at < limit; i++) {
        if (c->in.at[i] == close) {
            *inside = text_slice(c->in, c->at + 1, i);
            return true;
        }
        if (c->in.at[i] == stop)
            return false;
    }
    return false;
}

/* Of two quotes in a spreadsheet's cell one stays. */
static bool take_quote(struct cleaner *c)
{
    if (c->quotes && clean_peek(c, 1) == '"')
        c->at++;
    return false;
}

static bool take_special(struct cleaner *c)
{
    switch (clean_peek(c, 0)) {
    case '<':
        return c->tags && take_tag(c);
    case '&':
        return c->tags && take_entity(c);
    case '{':
        return take_override(c);
    case '\\':
        return take_backslash(c);
    case '[':
        return take_bracket(c);
    case ']':
        return take_closing(c);
    case '(':
        return take_parenthesis(c);
    case '"':
        return take_quote(c);
    case '|':
        return c->markdown && take_bar(c);
    case '*':
    case '_':
    case '`':
        return c->markdown && take_emphasis(c);
    default:
        return false;
    }
}

static void take_letter(struct cleaner *c)
{
    const char *here = c->in.at + c->at;
    int32_t point;
    size_t from = c->at;
    if ((unsigned char) *here > ' ' && (unsigned char) *here < 0x7F) {
        c->at++;
        clean_put(c, here, 1, from);
        return;
    }
    if (*here == '\n' || *here == ' ') {
        c->at++;
        clean_put_blank(c, *here);
        return;
    }
    utf8proc_ssize_t n = utf8proc_iterate((const utf8proc_uint8_t *) here,
                                          (utf8proc_ssize_t) (c->in.length - c->at), &point);
    c->at += n > 0 ? (size_t) n : 1;
    if (n > 0)
        clean_put_point(c, point, here, (size_t) n, from);
}

static void run(struct cleaner *c, enum transcript_kind kind)
{
    c->tags = kind != KIND_TTML; /* Expat has read them */
    c->markdown = kind == KIND_TIMED_LINES;
    c->quotes = kind == KIND_TSV;
    c->time = -1;
    /* What stands behind the byte that is asked for changes nothing. */
    while (c->at < c->in.length && c->length <= c->wanted) {
        if (c->markdown && c->at && c->in.at[c->at - 1] == '\n')
            take_line_start(c);
        if (c->at < c->in.length && !take_plain(c) && !take_special(c))
            take_letter(c);
    }
}

size_t clean_origin(enum transcript_kind kind, struct text in, size_t offset)
{
    struct cleaner c = {.in = in, .wanted = offset, .origin = in.length};
    run(&c, kind);
    return c.origin;
}

void clean_text(struct reader *rd, struct text in, struct cleaned *out)
{
    if (in.length + 1 > rd->scratch_room) {
        rd->scratch_room = (in.length + 1) * 2;
        rd->scratch = arena_alloc(rd->r->arena, rd->scratch_room);
    }
    struct cleaner c = {.in = in, .out = rd->scratch, .wanted = SIZE_MAX, .rd = rd, .found = out};
    LIST_CUT(&out->times, 0);
    LIST_CUT(&out->voices, 0);
    run(&c, rd->r->kind);
    out->text = (struct text){rd->scratch, c.length};
    normalise_cleaned(rd, out);
}
