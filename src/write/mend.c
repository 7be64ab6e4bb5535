/* write/mend.c: which words of the captions read otherwise now.
 * SPDX-License-Identifier: MIT */
#include "edits/edits.h"
#include "pack/pack.h"
#include "write/captions.h"
#include "write/ingredient_line.h"

/* The finding that the cook accepted about these words, where they have one sure reading. */
static const struct finding *accepted_at(const struct recording *r, size_t word)
{
    bool sure = r->words.at[word].rare->heard_as && !r->words.at[word].rare->heard_or;
    for (size_t i = 0; sure && i < r->findings.count; i++) {
        const struct finding *f = &r->findings.at[i];
        if (f->accepted && text_is(f->kind, "misheard") && f->words.first == word
            && f->words.last < r->words.count && f->words.first <= f->words.last)
            return f;
    }
    return NULL;
}

static bool same_words(const struct recording *r, size_t first, size_t count, struct text words)
{
    struct text word;
    for (size_t i = first; i < first + count; i++)
        if (i >= r->words.count || !text_part(&words, ' ', &word)
            || !text_equal(r->words.at[i].key, word))
            return false;
    return true;
}

/* The words of the entry that stand where these were heard: of "all purpose flour" only "flour"
 * where "all purpose" was heard rightly before it. */
static struct text heard_words(const struct recording *r, size_t first, size_t last)
{
    const struct entry *e = r->words.at[first].rare->heard_as;
    struct text rest = entry_words(e), word;
    size_t heard = last - first + 1, before = e->words_count > heard ? e->words_count - heard : 0;
    if (!before || before > first || !same_words(r, first - before, before, entry_words(e)))
        return entry_words(e);
    for (size_t i = 0; i < before; i++)
        text_part(&rest, ' ', &word);
    return rest;
}

/* Adds a mend for each cue that the words stand in: the new words go to the first. */
static void add_mend(mend_list *list, const struct recording *r, const struct writing *w,
                     size_t first, size_t last, struct text now)
{
    for (size_t i = first; i <= last;) {
        size_t end = i;
        while (end < last && r->words.at[end + 1].cue == r->words.at[i].cue)
            end++;
        *LIST_ADD(w->scratch, list) = (struct mend){i, end, i == first ? now : TEXT_EMPTY};
        i = end + 1;
    }
}

/* The corrected words from `first` on, in one cue, as one mend; the number of the last. */
static size_t add_corrected(mend_list *list, const struct recording *r, const struct writing *w,
                            size_t first)
{
    struct text now = r->words.at[first].text;
    size_t last = first;
    while (last + 1 < r->words.count && r->words.at[last + 1].cue == r->words.at[first].cue
           && !r->words.at[last + 1].text.length)
        last++;
    add_mend(list, r, w, first, last, now);
    return last;
}

void mends_make(mend_list *list, const struct recording *r, const struct writing *w, bool corrected)
{
    const struct captioned_word *was = corrected && r->edited ? r->edited->words : NULL;
    for (size_t i = 0; i < r->words.count; i++) {
        const struct finding *f = accepted_at(r, i);
        if (was && !text_equal(was[i].text, r->words.at[i].text)) {
            i = add_corrected(list, r, w, i);
        } else if (f) {
            struct text now = heard_words(r, i, f->words.last);
            add_mend(list, r, w, i, f->words.last, r->words.at[i].capital ? capital(w, now) : now);
            i = f->words.last;
        }
    }
}
