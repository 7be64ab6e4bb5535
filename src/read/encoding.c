/* read/encoding.c: any bytes -> UTF-8 with '\n' line ends. A byte-order mark decides; else zeros in
 * every second byte are UTF-16; else strict UTF-8; else Windows-1252. Tables stand here and not
 * iconv, since glibc's loads a module from disk for Windows-1252, and the core opens no files.
 * SPDX-License-Identifier: MIT */
#include <utf8proc.h>

#include "read/limits.h"
#include "read/read.h"
#include "read/reader.h"

enum encoding { UTF_8, UTF_16_LE, UTF_16_BE, WINDOWS_1252 };

#define REPLACEMENT 0xFFFD

/* Bytes 0x80 to 0x9F; the others are their own code points. Source: WHATWG Encoding Standard, index
 * windows-1252 (from memory). */
static const unsigned short windows_1252[32] = {
    0x20AC, 0x0081, 0x201A, 0x0192, 0x201E, 0x2026, 0x2020, 0x2021, 0x02C6, 0x2030, 0x0160,
    0x2039, 0x0152, 0x008D, 0x017D, 0x008F, 0x0090, 0x2018, 0x2019, 0x201C, 0x201D, 0x2022,
    0x2013, 0x2014, 0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0x009D, 0x017E, 0x0178};

static unsigned char byte_at(struct text t, size_t i)
{
    return (unsigned char) t.at[i];
}

/* The length of the valid UTF-8 at `i`, 0 when it is not valid; `*point` is what it stands for. */
static size_t utf8_at(struct text t, size_t i, int32_t *point)
{
    size_t left = t.length - i;
    utf8proc_ssize_t n =
        utf8proc_iterate((const utf8proc_uint8_t *) t.at + i, (utf8proc_ssize_t) left, point);
    return n > 0 ? (size_t) n : 0;
}

/* The first offset from `i` on that is not ASCII, or is near the end: eight bytes at a time, since
 * most files are nothing else. */
static size_t skip_ascii(struct text t, size_t i)
{
    uint64_t eight;
    for (; t.length - i >= sizeof eight; i += sizeof eight) {
        memcpy(&eight, t.at + i, sizeof eight);
        if (eight & UINT64_C(0x8080808080808080))
            break;
    }
    return i;
}

/* The offset of the first byte that is no UTF-8; t.length when all is. */
static size_t first_invalid(struct text t)
{
    size_t i = 0;
    while ((i = skip_ascii(t, i)) < t.length) {
        int32_t point;
        size_t n = byte_at(t, i) < 0x80 ? 1 : utf8_at(t, i, &point);
        if (!n)
            break;
        i += n;
    }
    return i;
}

/* True when the bytes from `i` on are the beginning of one letter: the file was cut off inside it.
 */
static bool is_cut_letter(struct text t, size_t i)
{
    if (byte_at(t, i) < 0xC2 || byte_at(t, i) > 0xF4 || t.length - i > 3)
        return false;
    size_t wants = byte_at(t, i) < 0xE0 ? 2 : byte_at(t, i) < 0xF0 ? 3 : 4;
    for (size_t n = i + 1; n < t.length; n++)
        if (!byte_goes_on(t.at[n]))
            return false;
    return t.length - i < wants;
}

static unsigned unit_at(struct text t, size_t i, enum encoding e)
{
    unsigned first = byte_at(t, i), second = byte_at(t, i + 1);
    return e == UTF_16_LE ? first | second << 8 : first << 8 | second;
}

static int32_t next_utf16(struct text t, size_t *i, enum encoding e)
{
    unsigned unit = unit_at(t, *i, e);
    *i += 2;
    if (unit < 0xD800 || unit > 0xDFFF)
        return (int32_t) unit;
    if (unit > 0xDBFF || *i >= t.length)
        return REPLACEMENT;
    unsigned low = unit_at(t, *i, e);
    if (low < 0xDC00 || low > 0xDFFF)
        return REPLACEMENT;
    *i += 2;
    return (int32_t) (0x10000 + ((unit - 0xD800) << 10) + (low - 0xDC00));
}

static int32_t next_point(struct text t, size_t *i, enum encoding e)
{
    int32_t point = REPLACEMENT;
    if (e == UTF_16_LE || e == UTF_16_BE)
        return next_utf16(t, i, e);
    unsigned char byte = byte_at(t, *i);
    if (e == UTF_8 && byte >= 0x80) {
        size_t n = utf8_at(t, *i, &point);
        *i += n ? n : 1;
        return n ? point : REPLACEMENT;
    }
    (*i)++;
    return byte >= 0x80 && byte < 0xA0 ? windows_1252[byte - 0x80] : byte;
}

/* Writes `t` to `out`, or only counts when that is NULL. A NUL becomes U+FFFD, as WebVTT wants it.
 */
static size_t transcode(struct text t, enum encoding e, char *out)
{
    utf8proc_uint8_t bytes[4];
    size_t length = 0;
    bool after_return = false;
    for (size_t i = 0; i < t.length;) {
        int32_t point = next_point(t, &i, e);
        bool skip = after_return && point == '\n';
        after_return = point == '\r';
        if (skip)
            continue;
        utf8proc_ssize_t n = utf8proc_encode_char(after_return ? '\n'
                                                  : point      ? point
                                                               : REPLACEMENT,
                                                  bytes);
        for (utf8proc_ssize_t k = 0; k < n; k++, length++)
            if (out)
                out[length] = (char) bytes[k];
    }
    return length;
}

/* ASCII in UTF-16 has a zero in every second byte, and hardly one in the others. */
static enum encoding guess_utf16(struct text t)
{
    size_t zeros[2] = {0, 0}, seen = t.length < 4096 ? t.length : 4096;
    for (size_t i = 0; i < seen; i++)
        if (!t.at[i])
            zeros[i % 2]++;
    size_t few = seen / 10 > 2 ? seen / 10 : 2;
    if (zeros[1] > few && zeros[1] > zeros[0] * 10)
        return UTF_16_LE;
    if (zeros[0] > few && zeros[0] > zeros[1] * 10)
        return UTF_16_BE;
    return UTF_8;
}

/* Takes a byte-order mark off `*t`. False when there is none. */
static bool take_mark(struct text *t, enum encoding *e)
{
    static const struct {
        const char *mark;
        enum encoding encoding;
    } marks[] = {{"\xEF\xBB\xBF", UTF_8}, {"\xFF\xFE", UTF_16_LE}, {"\xFE\xFF", UTF_16_BE}};
    for (size_t i = 0; i < sizeof marks / sizeof *marks; i++) {
        struct text mark = text_from(marks[i].mark);
        if (t->length >= mark.length && text_equal(text_slice(*t, 0, mark.length), mark)) {
            *t = text_slice(*t, mark.length, t->length);
            *e = marks[i].encoding;
            return true;
        }
    }
    return false;
}

static unsigned line_of(struct text t, size_t offset)
{
    unsigned line = 1;
    for (size_t i = 0; i < offset; i++)
        line += t.at[i] == '\n' || (t.at[i] == '\r' && (i + 1 == t.length || t.at[i + 1] != '\n'));
    return line;
}

static enum encoding settle_utf8(struct reader *rd, struct text *t, bool marked)
{
    size_t bad = first_invalid(*t);
    if (bad == t->length)
        return UTF_8;
    struct place at = read_place(rd, line_of(*t, bad));
    if (is_cut_letter(*t, bad)) {
        problem_note(rd->p, at, "the file ends inside a letter; the rest of it may be lost");
        *t = text_slice(*t, 0, bad);
        return UTF_8;
    }
    if (marked) {
        problem_note(rd->p, at, "bytes that are no UTF-8; each is read as U+FFFD");
        return UTF_8;
    }
    problem_note(rd->p, at,
                 "is no UTF-8; read as Windows-1252 (save it as UTF-8 if letters look wrong)");
    return WINDOWS_1252;
}

/* One for a control character, but for white space. */
static size_t is_control(unsigned char c)
{
    return (size_t) ((c < '\t') | ((c > '\r') & (c < 0x20)) | (c == 0x7F));
}

/* `nulls` have become U+FFFD already. */
static bool is_binary(struct text t, size_t nulls)
{
    size_t controls = nulls;
    for (size_t i = 0; i < t.length; i++)
        controls += is_control(byte_at(t, i));
    return controls > 8 && controls > t.length / CONTROL_BYTES_SHARE;
}

static size_t count_byte(struct text t, char c)
{
    size_t count = 0;
    for (size_t i = text_find(t, c, 0); i < t.length; i = text_find(t, c, i + 1))
        count++;
    return count;
}

/* False, with nothing told, when the bytes are no text. */
static bool decode(struct reader *rd, struct text bytes)
{
    struct recording *r = rd->r;
    enum encoding e = UTF_8;
    bool marked = take_mark(&bytes, &e);
    if (!marked)
        e = guess_utf16(bytes);
    if (e == UTF_8)
        e = settle_utf8(rd, &bytes, marked);
    if (e == UTF_16_LE || e == UTF_16_BE)
        bytes.length -= bytes.length % 2;
    size_t nulls = e == UTF_8 || e == WINDOWS_1252 ? count_byte(bytes, '\0') : 0;
    r->source = bytes;
    if (e != UTF_8 || nulls || count_byte(bytes, '\r') || first_invalid(bytes) < bytes.length) {
        size_t length = transcode(bytes, e, NULL);
        char *out = arena_alloc(r->arena, length + 1);
        r->source = (struct text){out, transcode(bytes, e, out)};
    }
    if (is_binary(r->source, nulls))
        return false;
    if (nulls)
        problem_note(rd->p, read_place(rd, 0), "zero bytes; each is read as U+FFFD");
    return true;
}

bool decode_source(struct reader *rd, struct text bytes)
{
    if (bytes.length > READ_BYTES_MAX)
        return problem(rd->p, read_place(rd, 0), "has %zu bytes; a transcript has at most %zu",
                       bytes.length, READ_BYTES_MAX);
    return decode(rd, bytes) || problem(rd->p, read_place(rd, 0), "is no text file: " EXPECTED);
}

bool read_text(struct recording *r, struct text bytes, struct problems *p)
{
    struct reader rd = {.r = r, .p = p};
    return decode(&rd, bytes);
}
