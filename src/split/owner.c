/* split/owner.c
 * SPDX-License-Identifier: MIT */
#include "split/owner.h"

#include "split/title.h"
#include "split/topic.h"

/* How far off a name's dish is looked for, so that time does not grow with the square. */
#define STRETCHES_AWAY 10
/* A dish's word tells less of which dish it is than a food. */
#define KIND_TELLS 0.25
#define LIKE_SHARE 0.75

/* How far the stretch speaks of such a food or such a dish elsewhere than once in sentence `but`: 1
 * of the very one, LIKE_SHARE of one that may be meant by it ("the potatoes" are sweet potatoes).
 */
static double speaks_elsewhere(const struct feature *f, struct stretch s, size_t but,
                               struct text kind)
{
    double found = 0;
    size_t there = 0; /* how often in sentence `but`; once is the name's own */
    for (size_t i = s.first; i <= s.last; i++)
        for (size_t n = 0; n < f[i].mentions_count; n++) {
            bool equal = text_equal(f[i].mentions[n].kind, kind);
            if (equal && (i != but || there++ > 0))
                return 1;
            if (i != but && is_same_food(f[i].mentions[n].kind, kind))
                found = LIKE_SHARE;
        }
    return found;
}

/* "Zucchini slice", in one entry. */
static bool is_long_own_name(const struct word *w)
{
    return w->tag == TAG_DISH && w->entry && w->entry->words_count > 1 && is_own_name(w);
}

/* How much a word of a name tells of which dish it is: its foods, and less what kind it is. */
static double word_tells(const struct word *w)
{
    if (!w->entry)
        return 0;
    if (w->tag == TAG_FOOD || is_long_own_name(w))
        return 1;
    return w->tag == TAG_DISH ? KIND_TELLS : 0;
}

/* "Sausage", of "curried sausages". */
static bool has_food(struct text words, struct text kind)
{
    struct text part;
    while (words.length && text_part(&words, ' ', &part))
        if (part.length >= kind.length && part.length <= kind.length + 1
            && text_equal(text_slice(part, 0, kind.length), kind))
            return true;
    return false;
}

/* Whether the stretch speaks of a food that is in a dish's own name. */
static bool speaks_of_its_food(const struct feature *f, struct stretch s, const struct entry *name)
{
    for (size_t i = s.first; i <= s.last; i++)
        for (size_t n = 0; n < f[i].mentions_count; n++)
            if (!f[i].mentions[n].part && has_food(entry_words(name), f[i].mentions[n].kind))
                return true;
    return false;
}

/* How far the stretch speaks of what a word of a name says, but for sentence `i`: 0 to 1. */
static double word_fits(const struct naming *n, struct stretch s, size_t i, const struct word *w)
{
    double said = speaks_elsewhere(n->f, s, i, entry_value(w->entry));
    if (said < LIKE_SHARE && is_long_own_name(w) && speaks_of_its_food(n->f, s, w->entry))
        said = LIKE_SHARE;
    return said;
}

double name_tells(const struct recording *r, struct span name)
{
    double tells = 0;
    for (size_t w = name.first; w <= name.last; w++)
        tells += word_tells(&r->words.at[w]);
    return tells;
}

static size_t near_first(size_t k)
{
    return k > STRETCHES_AWAY ? k - STRETCHES_AWAY : 0;
}

double name_fits(const struct naming *n, size_t d, size_t k, size_t i, struct span name)
{
    double found = 0;
    for (size_t w = name.first; w <= name.last; w++) {
        const struct word *word = &n->r->words.at[w];
        double most = 0;
        if (word_tells(word) == 0)
            continue;
        for (size_t j = near_first(k); most < 1 && j < n->count && j <= k + STRETCHES_AWAY; j++) {
            double said = n->dish[j] == d ? word_fits(n, telling_part(n->s[j]), i, word) : 0;
            if (said > most)
                most = said;
        }
        found += most * word_tells(word);
    }
    return found;
}

size_t name_owner(const struct naming *n, size_t home, size_t k, size_t i, struct span name)
{
    size_t best = home;
    double most = home != NO_DISH ? name_fits(n, home, k, i, name) : 0;
    if (home != NO_DISH && (most >= name_tells(n->r, name) || name_tells(n->r, name) < 1))
        return home;
    for (size_t j = near_first(k); j < n->count && j <= k + STRETCHES_AWAY; j++) {
        double found =
            n->dish[j] != NO_DISH && n->dish[j] != best ? name_fits(n, n->dish[j], k, i, name) : 0;
        if (found > most) {
            most = found;
            best = n->dish[j];
        }
    }
    return best;
}

double share_of_dish(const struct naming *n, size_t d, size_t k, struct text kind)
{
    double most = 0;
    for (size_t j = near_first(k); j < n->count && j <= k + STRETCHES_AWAY; j++) {
        double share = n->dish[j] == d ? share_about(n->f, telling_part(n->s[j]), kind) : 0;
        most = share > most ? share : most;
    }
    return most;
}
