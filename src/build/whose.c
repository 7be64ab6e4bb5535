/* build/whose.c: which dish a yield is of.
 * SPDX-License-Identifier: MIT */
#include "build/builder.h"
#include "build/yield.h"
#include "match/capture.h"
#include "match/matches.h"

/* A plural has at most so many letters more: "potatoes". */
#define PLURAL_LETTERS 2
/* So many dishes are looked at, so that time does not grow with the square. */
#define DISHES_BACK 12
/* So many sentences behind its last one a dish is still spoken of. */
#define OVER_SENTENCES 4

/* "Potato", of "potatoes" or "Potatoes". */
static bool is_same_noun(struct text said, struct text kind)
{
    if (said.length < kind.length || kind.length < 2 || said.length > kind.length + PLURAL_LETTERS
        || !text_equal(text_slice(said, 1, kind.length), text_slice(kind, 1, kind.length)))
        return false;
    struct text more = text_slice(said, kind.length, said.length);
    return !more.length || text_is(more, "s") || text_is(more, "es");
}

/* 2 where a title ends with the noun, 1 where it has it: "the potatoes" are roast potatoes sooner
 * than potato soup. */
static int title_says(struct text title, struct text kind)
{
    struct text rest = title, word;
    int found = 0;
    while (rest.length && text_part(&rest, ' ', &word))
        found = is_same_noun(word, kind) ? 1 : found;
    return found + (found && is_same_noun(text_last_word(title), kind));
}

/* How many of the dishes begun before word `at` there are. */
static size_t dishes_begun(const struct recording *r, size_t at)
{
    size_t low = 0, high = r->dishes.count;
    while (low < high) {
        size_t middle = (low + high) / 2;
        if (r->dishes.at[middle].words.first <= at)
            low = middle + 1;
        else
            high = middle;
    }
    return low;
}

/* The one dish, as sentence.names has it, begun before word `at`, whose title says best what stands
 * there; 0: none, or several do. */
static size_t only_dish_of(const struct recording *r, size_t at)
{
    struct text kind = text_last_word(entry_value(r->words.at[at].entry));
    size_t best = 0, begun = dishes_begun(r, at);
    int most = 0;
    for (size_t i = begun > DISHES_BACK ? begun - DISHES_BACK : 0; i < begun; i++) {
        const struct dish *d = &r->dishes.at[i];
        int says = title_says(d->title, kind);
        if (says > most || (says && says == most))
            best = says > most ? d->id + 1 : 0;
        most = says > most ? says : most;
    }
    return best;
}

/* "The chicken'll do seven", "the potatoes are for four": the dish that is spoken of before words
 * that tell a yield. */
static size_t spoken_of(const struct recording *r, const struct sentence *s)
{
    const struct match *m = match_in(r, s, YIELD_KINDS);
    size_t until = m ? match_slot(m, SLOT_number).first : s->first, found = 0;
    for (size_t i = s->first; i < until; i++) {
        const struct word *w = &r->words.at[i];
        if ((w->tag == TAG_FOOD || w->tag == TAG_DISH) && w->entry)
            found = only_dish_of(r, i);
    }
    return found;
}

/* "About twenty.", said when the dish was over and no other had begun: the one that ended last
 * before the sentence, as sentence.names has it; 0: none did, or the sentence is a dish's. */
static size_t just_over(const struct recording *r, const struct sentence *s)
{
    size_t begun = dishes_begun(r, s->first), over = 0, end = 0;
    for (size_t i = begun > DISHES_BACK ? begun - DISHES_BACK : 0; i < begun; i++) {
        const struct dish *d = &r->dishes.at[i];
        if (dish_has_sentence(d, s))
            return 0;
        for (size_t n = 0; n < d->spans.count; n++)
            if (d->spans.at[n].last < s->first && d->spans.at[n].last >= end) {
                over = d->id + 1;
                end = d->spans.at[n].last;
            }
    }
    return over && sentence_until(r, s->first) - sentence_until(r, end) <= OVER_SENTENCES ? over
                                                                                          : 0;
}

/* The dish, as sentence.names has it, that is named in sentence `n`, in the one before, or in one
 * after it that takes leave: "Eight of them.", "Two each, so that's four. That's my fish cakes." */
size_t yield_names(const struct recording *r, size_t n)
{
    const struct sentence *all = r->sentences.at;
    if (!all[n].match_count)
        return 0;
    if (all[n].names)
        return all[n].names;
    size_t spoken = spoken_of(r, &all[n]);
    if (spoken)
        return spoken;
    if (n > 0 && all[n - 1].names)
        return all[n - 1].names;
    bool leaves = n + 1 < r->sentences.count && all[n + 1].flags & SENTENCE_LEAVING;
    if (leaves && all[n + 1].names)
        return all[n + 1].names;
    return match_in(r, &all[n], YIELD_KINDS) ? just_over(r, &all[n]) : 0;
}

bool yield_is_elsewhere(const struct recording *r, size_t n, size_t named)
{
    const struct sentence *s = &r->sentences.at[n];
    return named || s->last < r->dishes.at[0].words.first
           || (s->match_count && yield_is_shared(r, s));
}

bool yield_is_of(const struct recording *r, const struct dish *d, size_t named, bool inside)
{
    if (!inside && named != d->id + 1)
        return false; /* as of nearly all dishes that a sentence is looked at for */
    const struct dish *other = named ? dish_with_id(r, named - 1) : NULL;
    bool same = other && text_equal(other->title, d->title); /* a dish that was taken for two */
    return other && !(inside && same) ? other == d : inside;
}
