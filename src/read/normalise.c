/* read/normalise.c: NFC, by utf8proc.
 * SPDX-License-Identifier: MIT */
#include "read/normalise.h"

#include <assert.h>
#include <utf8proc.h>

#include "read/limits.h"

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

void normalise_cleaned(struct reader *rd, struct cleaned *out)
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
    if (length != whole.length) {
        LIST_CUT(&out->times, 0);
        LIST_CUT(&out->voices, 0);
    }
    out->text = whole;
}
