/* match/subject.c
 * SPDX-License-Identifier: MIT */
#include "match/subject.h"

#include <string.h>

/* Whether a number begins at the word. */
static bool counts(const struct recording *r, size_t i)
{
    unsigned char tag = i < r->words.count ? r->words.at[i].tag : (unsigned char) TAG_OTHER;
    return tag == TAG_ONES || tag == TAG_TEENS || tag == TAG_TENS || tag == TAG_NUMBER
           || tag == TAG_ARTICLE || tag == TAG_FRACTION || tag == TAG_HUNDRED;
}

bool is_no_by_itself(const struct recording *r, size_t i)
{
    const struct word *w = &r->words.at[i];
    if (w->tag != TAG_NOT || !i || !w->entry || w->entry->words_count != 1)
        return false;
    size_t before = i - 1;
    while (before > 0 && r->words.at[before].filler && r->words.at[before].after < AFTER_COMMA)
        before--;                                /* "one egg, oh no, it's two" */
    if (r->words.at[before].after >= AFTER_STOP) /* "A chilli. No, two." */
        return w->after == AFTER_COMMA && counts(r, i + 1);
    return r->words.at[before].after == AFTER_COMMA
           && (w->after == AFTER_COMMA
               || (counts(r, i + 1) /* "100 grams, no 120"; "two, not three" is right */
                   && !text_equal(w->key, entry_value(w->entry))));
}

void subject_make(struct subject *s, const struct recording *r, const struct sentence *sentence)
{
    s->length = 0;
    for (size_t i = sentence->first; i <= sentence->last && s->length < SENTENCE_WORDS; i++) {
        const struct word *w = &r->words.at[i];
        if (w->filler)
            continue;
        size_t n = s->length++;
        s->tags[n] = is_no_by_itself(r, i) ? (unsigned char) TAG_SORRY : w->tag;
        s->words[n] = (unsigned) i;
        s->low[n] = ratio_known(w->rare->number) ? w->rare->number
                    : w->entry                   ? entry_number(w->entry)
                                                 : RATIO_NONE;
        s->high[n] = s->low[n];
    }
    subject_count(s);
}

void subject_count(struct subject *s)
{
    for (int unit = unit_set_next(&s->present, 0); unit >= 0;
         unit = unit_set_next(&s->present, unit + 1))
        s->at[unit] = 0;
    s->present = (struct unit_set){{0}};
    for (size_t i = 0; i < s->length; i++) {
        unit_set_add(&s->present, s->tags[i]);
        s->at[s->tags[i]] |= (uint64_t) 1 << i;
    }
}

void subject_join(struct subject *s, size_t begin, size_t end, unsigned char tag)
{
    memset(s->tags + begin, TAG_INSIDE, end - begin);
    s->tags[end - 1] = tag;
}

size_t subject_entry_end(const struct subject *s, size_t at)
{
    while (at < s->length && s->tags[at] == TAG_INSIDE)
        at++;
    return at < s->length ? at + 1 : at;
}
