/* base/text.h: a run of bytes that lives somewhere else; the currency of every stage.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BASE_TEXT_H
#define DISHTAKE_BASE_TEXT_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

/* `length` bytes at `at`, UTF-8, not ended by a NUL. Borrowed: valid as long as what it points
 * into. */
struct text {
    const char *at;
    size_t length;
};

/* Feeds "%.*s": printf("%.*s", TEXT(name)). */
#define TEXT(t) (int) (t).length, (t).at
/* The text of a string literal, and the empty text. */
#define TEXT_OF(literal) ((struct text){(literal), sizeof(literal) - 1})
#define TEXT_EMPTY ((struct text){"", 0})

struct text text_from(const char *string); /* of a NUL-ended string; NULL gives the empty text */
/* Here, since they are called some thousand times a sentence: a literal's length is known at the
 * call, and most texts differ in theirs. */
static inline bool text_equal(struct text a, struct text b)
{
    return a.length == b.length && (a.length == 0 || memcmp(a.at, b.at, a.length) == 0);
}
static inline bool text_is(struct text t, const char *string)
{
    return text_equal(t, (struct text){string, strlen(string)});
}
/* A number below 64 by which two texts differ, most often, without a look at all their letters; and
 * the bit of that number. */
static inline unsigned char text_shape_number(struct text t)
{
    unsigned first = t.length ? (unsigned char) t.at[0] : 0;
    unsigned last = t.length ? (unsigned char) t.at[t.length - 1] : 0;
    return (unsigned char) ((first * 5 + last * 11 + (unsigned) t.length * 3) & 63);
}
static inline uint64_t text_shape(struct text t)
{
    return (uint64_t) 1 << text_shape_number(t);
}
/* For hash tables, in memory or built in; the same on every machine of one byte order. */
size_t text_hash(struct text t);
/* A whole number, with or without a minus; for texts that are one. */
int text_whole(struct text t);
/* Byte order, shorter first when one begins the other; for qsort and bsearch. */
int text_compare(struct text a, struct text b);
bool text_starts(struct text t, const char *start);
bool text_ends(struct text t, const char *end);
struct text text_trim(struct text t); /* without ASCII white space at either end */
struct text text_slice(struct text t, size_t begin, size_t end); /* end is left out; clamped */
/* What stands behind the last space; all of it where there is none. */
struct text text_last_word(struct text t);
/* The first place of `c` at or after `from`; `t.length` when there is none. */
size_t text_find(struct text t, char c, size_t from);
/* Takes the part before the next `separator` off the front of `*rest` (the separator goes too).
 * False when nothing is left; an empty part between two separators counts. */
bool text_part(struct text *rest, char separator, struct text *part);
/* How many parts text_part() takes off it; none of an empty text. */
size_t text_parts(struct text t, char separator);
/* Whether `part` stands between separators of the list; an empty list has none. */
bool text_has_part(struct text list, char separator, struct text part);
/* Whether two lists have a part in common. */
bool text_share_part(struct text list, struct text other, char separator);
/* Whether the byte belongs to a letter that began before it, in UTF-8. */
static inline bool byte_goes_on(char c)
{
    return ((unsigned char) c & 0xC0) == 0x80;
}
/* How many letters, signs and spaces it has: Unicode's code points. */
size_t text_letters(struct text t);
/* Its first bytes, at most so many, with no letter cut in two. */
struct text text_cut(struct text t, size_t bytes);
static inline bool is_digit(char c)
{
    return c >= '0' && c <= '9';
}
static inline bool is_digit_at(struct text t, size_t i) /* false behind its end */
{
    return i < t.length && is_digit(t.at[i]);
}
/* A number in decimal digits; how many they are. No NUL. */
#define DIGITS_MOST 20
size_t text_digits(uint64_t number, char out[DIGITS_MOST]);

#endif
