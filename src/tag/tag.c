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

/* "Oh wait", "or rather", the "oh three" of two oh three: what takes something back, and what goes
 * on with a number, may begin or end with a word that elsewhere is said while thinking. */
static bool keeps_filler(const struct recording *r, size_t first, size_t last,
                         const struct entry *e)
{
    if (!e || last == first)
        return false;
    return e->tag == TAG_SORRY
           || (e->tag == TAG_TENS && first && r->words.at[first - 1].tag == TAG_ONES
               && !r->words.at[first - 1].after);
}

static void keep_words(struct recording *r, size_t first, size_t last)
{
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
            bool keeps = keeps_filler(r, i, last, e);
            if (r->words.at[i].filler && !keeps)
                continue;
            if (e)
                set_entry(r, i, last, e);
            if (keeps)
                keep_words(r, i, last);
            i = last;
        }
    }
    return true;
}
