/* words/repeat.c
 * SPDX-License-Identifier: MIT */
#include "words/repeat.h"

#include <string.h>

#include "words/limits.h"

/* How many words from `i` on the lexicon calls a filler; 0 for none. */
static size_t filler_length(const struct recording *r, const struct pack *k, size_t i)
{
    char joined[ENTRY_BYTES];
    size_t length = 0, found = 0;
    if (!r->words.at[i].alone && !r->words.at[i].begins)
        return 0;
    for (size_t n = 0; n < ENTRY_WORDS && i + n < r->words.count; n++) {
        struct text key = r->words.at[i + n].key;
        bool more = false;
        if (length + key.length + 1 > sizeof joined)
            break;
        if (n)
            joined[length++] = ' ';
        memcpy(joined + length, key.at, key.length);
        length += key.length;
        const struct entry *e = r->words.at[i].alone;
        if (n)
            e = pack_find(k, (struct text){joined, length}, &more);
        else
            more = r->words.at[i].begins;
        if (e && e->marks & MARK_OF(filler))
            found = n + 1;
        if (!more)
            break;
    }
    return found;
}

static bool is_number(const struct recording *r, size_t i)
{
    const struct entry *e = r->words.at[i].alone;
    return ratio_known(r->words.at[i].rare->number) || (e && ratio_known(entry_number(e)));
}

/* By their shapes first, since most words differ there. */
static bool same_word(const struct word *a, const struct word *b)
{
    return a->shape == b->shape && text_equal(a->key, b->key);
}

static bool has_tag(const struct recording *r, size_t i, unsigned char tag)
{
    return i < r->words.count && entry_as(r->words.at[i].alone, tag);
}

/* "A cup, cup and a half": the second is more, no slip of the tongue. */
static bool goes_on(const struct recording *r, size_t i)
{
    return r->words.at[i].after == AFTER_COMMA && has_tag(r, i, TAG_UNIT)
           && has_tag(r, i + 2, TAG_AND);
}

/* Whether words [i, i+n) are said again right after, in the same sentence. */
static bool repeats(const struct recording *r, size_t i, size_t n)
{
    if (i + 2 * n > r->words.count || (n == 1 && goes_on(r, i)))
        return false;
    for (size_t m = 0; m < n; m++) {
        if (!same_word(&r->words.at[i + m], &r->words.at[i + n + m])
            || r->words.at[i + m].after >= AFTER_STOP || is_number(r, i + m))
            return false;
    }
    return true;
}

/* "Puff puff", "dan dan": a word that its name says twice. */
static bool is_double(const struct recording *r, const struct pack *k, size_t i)
{
    char joined[ENTRY_BYTES];
    struct text key = r->words.at[i].key;
    size_t length = 2 * key.length + 1;
    if (!r->words.at[i].begins || length > sizeof joined)
        return false;
    memcpy(joined, key.at, key.length);
    joined[key.length] = ' ';
    memcpy(joined + key.length + 1, key.at, key.length);
    const struct entry *e = pack_find(k, (struct text){joined, length}, NULL);
    return e && !(e->marks & MARK_OF(filler));
}

void mark_repeats(struct recording *r, const struct pack *k)
{
    for (size_t i = 0; i < r->words.count;) {
        size_t n = filler_length(r, k, i);
        for (size_t size = REPEAT_WORDS; !n && size > 0; size--)
            if (repeats(r, i, size) && !(size == 1 && is_double(r, k, i)))
                n = size;
        for (size_t m = 0; m < n; m++)
            r->words.at[i + m].filler = true;
        i += n ? n : 1;
    }
}
