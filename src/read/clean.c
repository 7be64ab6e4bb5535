/* read/clean.c: one pass over the caption; each helper either takes what stands at `at` or leaves
 * it. SPDX-License-Identifier: MIT */
#include "read/clean.h"

#include <assert.h>
#include <string.h>
#include <utf8proc.h>

#include "read/clock.h"
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

static void put_byte(struct cleaner *c, char byte, size_t from)
{
    if (c->length == c->wanted)
        c->origin = from;
    if (c->out)
        c->out[c->length] = byte;
    c->length++;
    c->last = byte;
}

static void put_blank(struct cleaner *c, char blank)
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

/* `n` bytes that are one letter or sign; `from` is where they, or what stood for them, are in `in`.
 */
static void put(struct cleaner *c, const char *bytes, size_t n, size_t from)
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

/* A run of plain bytes, most often a word: what put() does with each of them, at once. False where
 * none stands here, or one is asked for. */
static bool take_plain(struct cleaner *c)
{
    size_t end = c->at;
    while (end < c->in.length && is_plain(c->in.at[end]))
        end++;
    size_t n = end - c->at;
    if (!n || c->wanted != SIZE_MAX)
        return false;
    put(c, c->in.at + c->at, 1, c->at);
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

/* Blanks become spaces; what cannot be seen goes, but for the joiners that some scripts spell with.
 */
static void put_point(struct cleaner *c, int32_t point, const char *bytes, size_t n, size_t from)
{
    utf8proc_category_t category = utf8proc_category(point);
    bool joiner = point == 0x200C || point == 0x200D;
    if (category == UTF8PROC_CATEGORY_ZS || category == UTF8PROC_CATEGORY_ZL
        || category == UTF8PROC_CATEGORY_ZP || category == UTF8PROC_CATEGORY_CC || is_music(point))
        put_blank(c, ' ');
    else if (category != UTF8PROC_CATEGORY_CF || joiner)
        put(c, bytes, n, from);
}

static char peek(const struct cleaner *c, size_t ahead)
{
    return c->at + ahead < c->in.length ? c->in.at[c->at + ahead] : '\0';
}

/* Looks for `close` among the next `limit` bytes; stops at `stop`. */
static bool find_close(const struct cleaner *c, char close, char stop, size_t limit,
                       struct text *inside)
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

static bool has_letter(struct text t)
{
    for (size_t i = 0; i < t.length; i++)
        if (is_letter(t.at[i]))
            return true;
    return false;
}

static bool has_digit(struct text t)
{
    for (size_t i = 0; i < t.length; i++)
        if (is_digit(t.at[i]))
            return true;
    return false;
}

/* Entities ----------------------------------------------------------------------------------------
 */

static const struct entity {
    const char *name;
    int32_t point;
} entities[] = {
#define ENTITY(name, point) {name, point},
#include "read/entities.def"
#undef ENTITY
};

static int digit_value(char c)
{
    if (is_digit(c))
        return c - '0';
    c = (char) (c | 0x20);
    return c >= 'a' && c <= 'f' ? c - 'a' + 10 : 16;
}

/* "#189" or "#xBD". -1 when it is none; U+FFFD for what is no letter. */
static int32_t numeric_entity(struct text name)
{
    int base = name.length > 1 && (name.at[1] | 0x20) == 'x' ? 16 : 10;
    size_t i = base == 16 ? 2 : 1;
    int32_t point = 0;
    if (i >= name.length)
        return -1;
    for (; i < name.length; i++) {
        int value = digit_value(name.at[i]);
        if (value >= base)
            return -1;
        point = point > 0x10FFFF ? point : point * base + value;
    }
    return point && utf8proc_codepoint_valid(point) ? point : 0xFFFD;
}

static int32_t entity_point(struct text name)
{
    if (name.length && name.at[0] == '#')
        return numeric_entity(name);
    for (size_t i = 0; i < sizeof entities / sizeof *entities; i++)
        if (text_is(name, entities[i].name))
            return entities[i].point;
    return -1;
}

static bool take_entity(struct cleaner *c)
{
    struct text name;
    utf8proc_uint8_t bytes[4];
    if (!find_close(c, ';', '&', 12, &name))
        return false;
    int32_t point = entity_point(name);
    if (point < 0)
        return false;
    size_t n = (size_t) utf8proc_encode_char(point, bytes);
    put_point(c, point, (const char *) bytes, n, c->at);
    c->at += name.length + 2;
    return true;
}

/* Tags --------------------------------------------------------------------------------------------
 */

/* `raw` is a name between tags; it may hold entities. */
static void note_voice(struct cleaner *c, struct text raw)
{
    char bytes[NAME_BYTES_MAX * 2];
    raw = text_trim(text_slice(raw, 0, sizeof bytes));
    if (!c->rd)
        return;
    struct cleaner name = {.in = raw, .out = bytes, .wanted = SIZE_MAX, .time = -1};
    while (name.at < raw.length) {
        if (raw.at[name.at] != '&' || !take_entity(&name)) {
            put(&name, raw.at + name.at, 1, name.at);
            name.at++;
        }
    }
    struct text whole = arena_text(c->rd->r->arena, (struct text){bytes, name.length});
    *LIST_ADD(c->rd->r->arena, &c->found->voices) = (struct voice){c->length, whole};
}

/* The name of a tag ends at white space, at a class (".loud") or at the slash of "<br/>". */
static struct text tag_name_of(struct text tag)
{
    size_t end = tag.length && tag.at[0] == '/';
    while (end < tag.length && is_letter(tag.at[end]))
        end++;
    return text_slice(tag, 0, end);
}

static void take_element(struct cleaner *c, struct text tag)
{
    struct text name = tag_name_of(tag);
    if (text_is(name, "br"))
        put_blank(c, '\n');
    if (text_is(name, "/v"))
        note_voice(c, TEXT_EMPTY);
    if (text_is(name, "v")) {
        size_t space = 0;
        while (space < tag.length && !line_is_blank(text_slice(tag, space, space + 1)))
            space++;
        note_voice(c, text_slice(tag, space, tag.length));
    }
}

static bool take_tag(struct cleaner *c)
{
    struct text tag;
    struct clock clock;
    size_t end = 0;
    if (!find_close(c, '>', '<', TAG_BYTES_MAX, &tag))
        return false;
    if (tag.length && is_digit(tag.at[0])) {
        if (!clock_read(tag, &end, &clock) || end < tag.length)
            return false;
        c->time = clock.seconds;
    } else if (tag.length && (is_letter(tag.at[0]) || tag.at[0] == '/')) {
        take_element(c, tag);
    } else if (tag.length) {
        return false;
    }
    c->at += tag.length + 2;
    return true;
}

/* "{\an8}": a position or style that subtitles for another format left behind. */
static bool take_override(struct cleaner *c)
{
    struct text inside;
    if (peek(c, 1) != '\\' || !find_close(c, '}', '{', TAG_BYTES_MAX, &inside))
        return false;
    c->at += inside.length + 2;
    return true;
}

/* "\N" and "\n" break the line there, "\h" is a space that does not. */
static bool take_backslash(struct cleaner *c)
{
    char next = peek(c, 1);
    if (next != 'N' && next != 'n' && next != 'h')
        return false;
    put_blank(c, next == 'h' ? ' ' : '\n');
    c->at += 2;
    return true;
}

/* Sounds ------------------------------------------------------------------------------------------
 */

/* "[Music]" is a sound, "[Ines]:" a speaker. A number inside makes it speech ("[250 g]"), and so
 * does a letter that touches it ("[un]salted"); a gap ("[ __ ]") stays as a word that nobody knows.
 */
static bool take_bracket(struct cleaner *c)
{
    struct text inside;
    if (!find_close(c, ']', '[', SOUND_BYTES_MAX, &inside) || has_digit(inside))
        return false;
    char next = peek(c, inside.length + 2);
    bool touches = is_letter(next) || (!c->pending && c->length && is_letter(c->last));
    bool link = c->markdown && next == '(';
    if (next == ':' && !c->line_started && has_letter(inside)) {
        note_voice(c, inside);
        c->at += inside.length + 3;
        return true;
    }
    if (touches || link || !has_letter(inside)) {
        c->at++;
        c->bracket_open = true;
        return true;
    }
    put_blank(c, ' ');
    c->at += inside.length + 2;
    return true;
}

/* Of a Markdown link "[words](address)" the words stay. */
static bool take_closing(struct cleaner *c)
{
    struct text address;
    if (!c->bracket_open)
        return false;
    c->bracket_open = false;
    c->at++;
    if (c->markdown && peek(c, 0) == '(' && find_close(c, ')', ' ', TAG_BYTES_MAX, &address))
        c->at += address.length + 2;
    return true;
}

/* "(laughs)" as a line of its own is a sound; anywhere else it may be speech, "(chopped)". */
static bool take_parenthesis(struct cleaner *c)
{
    struct text inside;
    bool sentence_ended = !c->length || strchr(".?!", c->last);
    if (c->line_started || !sentence_ended || !find_close(c, ')', '(', SOUND_BYTES_MAX, &inside)
        || has_digit(inside) || !has_letter(inside))
        return false;
    struct text rest = text_slice(c->in, c->at + inside.length + 2, c->in.length);
    if (!line_is_blank(text_slice(rest, 0, text_find(rest, '\n', 0))))
        return false;
    c->at += inside.length + 2;
    return true;
}

/* Markdown ----------------------------------------------------------------------------------------
 */

static bool is_rule(struct text line)
{
    size_t signs = 0;
    for (size_t i = 0; i < line.length; i++) {
        if (line.at[i] != ' ' && !strchr("-*_=|:", line.at[i]))
            return false;
        signs += line.at[i] != ' ';
    }
    return signs > 2;
}

/* Headings and rules are no speech; quote marks and bullets go, but ">>" is another speaker. */
static void take_line_start(struct cleaner *c)
{
    struct text rest = text_slice(c->in, c->at, c->in.length);
    struct text line = text_slice(rest, 0, text_find(rest, '\n', 0));
    size_t hashes = 0, blanks = 0;
    while (blanks < line.length && line.at[blanks] == ' ')
        blanks++;
    struct text marked = text_slice(line, blanks, line.length);
    while (hashes < marked.length && marked.at[hashes] == '#')
        hashes++;
    if ((hashes && hashes < 7 && (hashes == marked.length || marked.at[hashes] == ' '))
        || is_rule(marked))
        c->at += line.length;
    else if (text_starts(marked, "* ") || text_starts(marked, "+ ")
             || (text_starts(marked, ">") && !text_starts(marked, ">>")))
        c->at += blanks + 1;
}

static bool is_word_byte(char c)
{
    return is_letter(c) || is_digit(c);
}

/* "**add**", "_add_", "`add`": signs that touch a word on one side only; "2*3" and " __ " stay. */
static bool take_emphasis(struct cleaner *c)
{
    size_t run = 1;
    while (peek(c, run) == peek(c, 0))
        run++;
    char next = peek(c, run), before = c->length && !c->pending ? c->last : ' ';
    bool blank_before = before == ' ', blank_after = !next || next == ' ' || next == '\n';
    if ((blank_before && blank_after) || (is_word_byte(before) && is_word_byte(next)))
        return false;
    c->at += run;
    return true;
}

/* -------------------------------------------------------------------------------------------------
 */

/* Of two quotes in a spreadsheet's cell one stays. */
static bool take_quote(struct cleaner *c)
{
    if (c->quotes && peek(c, 1) == '"')
        c->at++;
    return false;
}

/* The bar that ends a table's row. */
static bool take_bar(struct cleaner *c)
{
    char next = peek(c, 1);
    if (next && next != '\n')
        return false;
    c->at++;
    return true;
}

static bool take_special(struct cleaner *c)
{
    switch (peek(c, 0)) {
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
        put(c, here, 1, from);
        return;
    }
    if (*here == '\n' || *here == ' ') {
        c->at++;
        put_blank(c, *here);
        return;
    }
    utf8proc_ssize_t n = utf8proc_iterate((const utf8proc_uint8_t *) here,
                                          (utf8proc_ssize_t) (c->in.length - c->at), &point);
    c->at += n > 0 ? (size_t) n : 1;
    if (n > 0)
        put_point(c, point, here, (size_t) n, from);
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

/* No letter below U+0300 changes in NFC, and the first byte of all others is over 0xCB. Text that
 * piles up marks on one letter stays as it is, since sorting them takes the square of their number.
 */
static bool may_change(struct text t)
{
    bool may = false;
    assert(t.at || !t.length);
    for (size_t i = 0, marks = 0; i < t.length;) {
        int32_t point;
        utf8proc_ssize_t n = 1;
        if ((unsigned char) t.at[i] > 0xCB) {
            n = utf8proc_iterate((const utf8proc_uint8_t *) t.at + i,
                                 (utf8proc_ssize_t) (t.length - i), &point);
            marks = n > 0 && utf8proc_get_property(point)->combining_class ? marks + 1 : 0;
            may = true;
        }
        if (n <= 0 || marks > MARKS_MAX)
            return false;
        i += (size_t) n;
    }
    return may;
}

/* Works in the reader's own room, since nothing that must be freed may be held while the arena is
 * asked. */
struct text normalise(struct reader *rd, struct text t)
{
    const utf8proc_uint8_t *bytes = (const utf8proc_uint8_t *) t.at;
    utf8proc_ssize_t length = (utf8proc_ssize_t) t.length;
    const utf8proc_option_t nfc = (utf8proc_option_t) (UTF8PROC_STABLE | UTF8PROC_COMPOSE);
    if (!may_change(t))
        return t;
    utf8proc_ssize_t n = utf8proc_decompose(bytes, length, NULL, 0, nfc);
    if (n < 0)
        return t;
    if ((size_t) n + 1 > rd->points_room) {
        rd->points_room = ((size_t) n + 1) * 2;
        rd->points = arena_alloc(rd->r->arena, rd->points_room * sizeof *rd->points);
    }
    utf8proc_decompose(bytes, length, rd->points, n, nfc);
    n = utf8proc_reencode(rd->points, n, nfc);
    if (n < 0)
        return t;
    return arena_text(rd->r->arena, (struct text){(const char *) rd->points, (size_t) n});
}

/* The pieces between word times and voices are normalised one by one, so that the offsets stay
 * exact. Where a mark composes across such a border the text as a whole would differ: then the
 * times go. */
static void normalise_pieces(struct reader *rd, struct cleaned *out)
{
    struct text t = out->text, whole = normalise(rd, t);
    size_t time = 0, voice = 0, begin = 0, length = 0;
    if (whole.at == t.at)
        return;
    while (begin < t.length) {
        size_t end = t.length;
        for (; time < out->times.count && out->times.at[time].offset <= begin; time++)
            out->times.at[time].offset = length;
        for (; voice < out->voices.count && out->voices.at[voice].offset <= begin; voice++)
            out->voices.at[voice].offset = length;
        if (time < out->times.count)
            end = out->times.at[time].offset;
        if (voice < out->voices.count && out->voices.at[voice].offset < end)
            end = out->voices.at[voice].offset;
        length += normalise(rd, text_slice(t, begin, end)).length;
        begin = end;
    }
    for (; voice < out->voices.count; voice++)
        out->voices.at[voice].offset = whole.length;
    if (length != whole.length)
        out->times.count = out->voices.count = 0;
    out->text = whole;
}

void clean_text(struct reader *rd, struct text in, struct cleaned *out)
{
    if (in.length + 1 > rd->scratch_room) {
        rd->scratch_room = (in.length + 1) * 2;
        rd->scratch = arena_alloc(rd->r->arena, rd->scratch_room);
    }
    struct cleaner c = {.in = in, .out = rd->scratch, .wanted = SIZE_MAX, .rd = rd, .found = out};
    out->times.count = out->voices.count = 0;
    run(&c, rd->r->kind);
    out->text = (struct text){rd->scratch, c.length};
    normalise_pieces(rd, out);
}
