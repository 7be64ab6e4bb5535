/* tag/tag.c: one tag a word: the lexicon's likeliest reading of the longest entry.
 * SPDX-License-Identifier: MIT */
#include "tag/tag.h"

#include "words/entry.h"

static void set_entry(struct recording *r, size_t first, size_t last, const struct entry *e)
{
    for (size_t i = first; i <= last; i++) {
        struct word *w = &r->words.at[i];
        w->entry = e;
        w->readings = e;
        w->entry_first = (unsigned) first;
        w->tag = i == last ? e->tag : TAG_INSIDE;
    }
}

/* "Actually" is said while thinking, and also takes back what stood before: no rule sees it, but
 * who looks for that does. */
static void tag_filler(struct recording *r, size_t i)
{
    const struct entry *e = r->words.at[i].alone;
    if (e && e->tag == TAG_SORRY && e->marks & MARK_OF(filler))
        r->words.at[i].tag = TAG_SORRY;
}

/* "Oh wait", "or rather": what takes something back may begin or end with a word that elsewhere is
 * said while thinking. */
static void keep_words(struct recording *r, size_t first, size_t last, const struct entry *e)
{
    if (e->tag == TAG_SORRY && last > first)
        for (size_t i = first; i <= last; i++)
            r->words.at[i].filler = false;
}

bool tag_words(struct recording *r, const struct pack *k, struct problems *p)
{
    (void) p;
    for (size_t s = 0; s < r->sentences.count; s++) {
        size_t end = r->sentences.at[s].last + 1;
        for (size_t i = r->sentences.at[s].first; i < end; i++) {
            size_t last = i;
            r->words.at[i].entry_first = (unsigned) i;
            if (r->words.at[i].filler)
                tag_filler(r, i);
            if (!r->words.at[i].filler && r->words.at[i].tag != TAG_OTHER)
                continue;
            const struct entry *e = entry_longest(r, k, i, end, &last);
            if (r->words.at[i].filler && (!e || e->tag != TAG_SORRY || last == i))
                continue;
            if (e) {
                set_entry(r, i, last, e);
                keep_words(r, i, last, e);
            }
            i = last;
        }
    }
    return true;
}
