/* pack/fold.c: the form in which words are looked up.
 * SPDX-License-Identifier: MIT */
#include <string.h>
#include <utf8proc.h>

#include "pack/load.h"

#define FOLD_OPTIONS \
    (UTF8PROC_DECOMPOSE | UTF8PROC_COMPAT | UTF8PROC_CASEFOLD | UTF8PROC_IGNORE | UTF8PROC_STABLE)
#define DECOMPOSED 32 /* no letter becomes more than 18 (Unicode 14, U+FDFA) */

/* Accents are the marks above, below and attached. Marks of a lower class are letters of their
 * script (a Thai vowel, a Japanese voicing mark), and stay. */
static bool is_accent(utf8proc_int32_t letter)
{
    const utf8proc_property_t *of = utf8proc_get_property(letter);
    return of->category == UTF8PROC_CATEGORY_MN && of->combining_class >= 200;
}

/* One sign for what keyboards and captions write in several ways. */
static utf8proc_int32_t plain_sign(utf8proc_int32_t letter)
{
    switch (letter) {
    case 0x2018: /* left and right single quotation mark */
    case 0x2019:
    case 0x02BC: /* modifier letter apostrophe */
        return '\'';
    case 0x2010: /* hyphen; the non-breaking one decomposes to it */
        return '-';
    case 0x2044: /* fraction slash, in what "1/2" as one letter decomposes to */
        return '/';
    default:
        return letter;
    }
}

/* Appends one letter, or nothing where it does not fit whole. */
static size_t put_letter(utf8proc_int32_t letter, char *out, size_t length, size_t room)
{
    utf8proc_uint8_t bytes[4];
    if (letter == ' ' || is_accent(letter))
        return length;
    size_t n = (size_t) utf8proc_encode_char(plain_sign(letter), bytes);
    if (n > room - length)
        return room + 1;
    memcpy(out + length, bytes, n);
    return length + n;
}

/* Folds the letter at the start of `t`; returns the bytes it took. `*length` > room: it did not
 * fit. */
static size_t fold_letter(struct text t, char *out, size_t *length, size_t room)
{
    utf8proc_int32_t letter, parts[DECOMPOSED];
    int boundary = 0;
    utf8proc_ssize_t n =
        utf8proc_iterate((const utf8proc_uint8_t *) t.at, (utf8proc_ssize_t) t.length, &letter);
    if (n <= 0) { /* not UTF-8: the byte stays as it is */
        if (*length < room)
            out[*length] = t.at[0];
        ++*length;
        return 1;
    }
    utf8proc_ssize_t count =
        utf8proc_decompose_char(letter, parts, DECOMPOSED, FOLD_OPTIONS, &boundary);
    for (utf8proc_ssize_t i = 0; i < count && i < DECOMPOSED && *length <= room; i++)
        *length = put_letter(parts[i], out, *length, room);
    return (size_t) n;
}

static char lower(char c)
{
    return c >= 'A' && c <= 'Z' ? (char) (c + ('a' - 'A')) : c;
}

size_t fold_word(struct text t, char *out, size_t room)
{
    size_t length = 0, i = 0;
    while (i < t.length) {
        size_t before = length;
        if ((unsigned char) t.at[i] < 0x80) {
            if (length == room)
                break;
            out[length++] = lower(t.at[i++]);
            continue;
        }
        i += fold_letter(text_slice(t, i, t.length), out, &length, room);
        if (length > room)
            return before;
    }
    return length;
}

/* Nearly all rows are written as they are looked up; those are borrowed, not copied. */
static bool is_folded(struct text t, size_t *count)
{
    *count = 1;
    for (size_t i = 0; i < t.length; i++) {
        char c = t.at[i];
        if (c == ' ') {
            ++*count;
            if (i == 0 || i + 1 == t.length || t.at[i - 1] == ' ')
                return false;
        } else if (c <= ' ' || c == '-' || (c >= 'A' && c <= 'Z') || (unsigned char) c >= 0x80) {
            return false;
        }
    }
    return t.length > 0;
}

struct text fold_words(struct arena *a, struct text t, size_t *count)
{
    if (is_folded(t, count))
        return t;
    size_t room = t.length * 12; /* no letter grows more (U+FDFA: 3 bytes to 33) */
    char *folded = arena_alloc(a, room + 1);
    size_t length = 0;
    *count = 0;
    struct text word, rest = t;
    while (line_word(&rest, &word)) {
        char *to = folded + length + (length > 0);
        struct text piece, pieces = {to, fold_word(word, to, room - (size_t) (to - folded))};
        /* In place, since pieces only move to the left. */
        while (text_part(&pieces, '-', &piece)) {
            if (!piece.length)
                continue;
            if (length)
                folded[length++] = ' ';
            memmove(folded + length, piece.at, piece.length);
            length += piece.length;
            ++*count;
        }
    }
    return (struct text){folded, length};
}
