/* split/titletext.c: a name as it is printed.
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "base/arena.h"
#include "split/title.h"

#define TITLE_BYTES 120

struct text capitalised(const struct recording *r, struct text t)
{
    if (!t.length || t.at[0] < 'a' || t.at[0] > 'z')
        return arena_text(r->arena, t);
    return arena_format(r->arena, "%c%.*s", t.at[0] - 'a' + 'A', (int) t.length - 1, t.at + 1);
}

/* "Parkin's a ginger cake": the entry that was found there has no "'s". */
static struct text without_is(const struct word *last, struct text title)
{
    bool is = text_ends(title, "'s") && last->entry && !text_ends(entry_words(last->entry), "'s");
    return is ? text_slice(title, 0, title.length - 2) : title;
}

/* What a misheard entry was read as, whose last word is `i`; empty where it is as heard. */
static struct text heard_as(const struct word *w)
{
    const struct entry *heard = w->rare->heard_as;
    if (!heard)
        return TEXT_EMPTY;
    return heard->marks & MARK_OF(plural) ? entry_words(heard) : entry_shown(heard);
}

/* The last word of the entry that begins at word `i`, within the title. */
static size_t entry_end(const struct recording *r, struct span title, size_t i)
{
    while (i < title.last && r->words.at[i].tag == TAG_INSIDE)
        i++;
    return i;
}

struct text title_text(const struct recording *r, struct span title)
{
    char at[TITLE_BYTES];
    size_t length = 0;
    for (size_t i = title.first; i <= title.last; i++) {
        size_t end = entry_end(r, title, i);
        struct text meant = heard_as(&r->words.at[end]);
        bool hyphen = i > title.first && r->words.at[i - 1].after == AFTER_HYPHEN;
        if (meant.length)
            i = end;
        const struct word *w = &r->words.at[i];
        struct text word = meant.length ? meant : w->text;
        if ((w->filler && i < title.last) || length + word.length + 2 > sizeof at)
            continue;
        if (length)
            at[length++] = hyphen ? '-' : ' ';
        memcpy(at + length, word.at, word.length);
        length += word.length;
    }
    return capitalised(r, without_is(&r->words.at[title.last], (struct text){at, length}));
}
