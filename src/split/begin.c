/* split/begin.c: "I want dal today. My mother made it on Mondays, and the whole house came. So. Two
 * cups of lentils." The dish begins where it is named first, though all else there is talk.
 * SPDX-License-Identifier: MIT */
#include "split/begin.h"

#include "split/start.h"

/* Of so many dishes before and behind it another may be meant. */
#define DISHES_NEAR 8

static bool is_same_word(const struct word *a, const struct word *b)
{
    if (a->entry && b->entry)
        return text_equal(entry_value(a->entry), entry_value(b->entry));
    return text_equal(a->key, b->key);
}

/* Whether the sentence speaks of such a thing here and now. */
static bool says(const struct recording *r, const struct sentence *s, const struct word *word)
{
    for (size_t i = s->first; i <= s->last; i++)
        if (is_same_word(&r->words.at[i], word) && !(r->words.at[i].scope & SCOPE_NOT_DONE))
            return true;
    return false;
}

/* Whether a word tells which dish it is: no "and", no "smoky". */
static bool tells(const struct word *w)
{
    return w->tag == TAG_FOOD || w->tag == TAG_DISH || !w->entry;
}

static size_t telling_words(const struct naming *n, struct span name)
{
    size_t found = 0;
    for (size_t w = name.first; w <= name.last; w++)
        found += tells(&n->r->words.at[w]);
    return found;
}

/* Whether it says what the dish is, which a name's last word tells: "chilli", of "bean chilli"; all
 * words of it where that is a food. */
static bool says_name_of(const struct naming *n, size_t i, size_t d, bool whole)
{
    const struct span name = n->best[d];
    const struct word *words = n->r->words.at;
    if (span_is_empty(name))
        return false;
    whole |= words[name.last].tag == TAG_FOOD;
    for (size_t w = whole ? name.first : name.last; w <= name.last; w++)
        if (tells(&words[w]) && !says(n->r, &n->r->sentences.at[i], &words[w]))
            return false;
    return true;
}

/* Of several dishes only a name of several words tells which is meant, and it must be whole. */
static bool names_it(const struct naming *n, size_t i, size_t d)
{
    if (n->dishes == 1)
        return says_name_of(n, i, d, false);
    return says_name_of(n, i, d, true) && telling_words(n, n->best[d]) > 1;
}

/* Whether it names another of the dishes that began near that one. */
static bool names_another(const struct naming *n, size_t i, size_t dish)
{
    size_t from = dish > DISHES_NEAR ? dish - DISHES_NEAR : 0;
    for (size_t d = from; d < n->dishes && d <= dish + DISHES_NEAR; d++)
        if (d != dish && says_name_of(n, i, d, false))
            return true;
    return false;
}

/* The first sentence from `floor` on, where the dish before it ended, that names the dish of
 * stretch `k`, and it alone: a run-down of all dishes begins none. */
static size_t first_named(const struct naming *n, size_t k, size_t floor)
{
    size_t first = n->s[k].first;
    size_t from = first - floor > TALK_MOST ? first - TALK_MOST : floor;
    for (size_t i = from; i < first; i++)
        if (!(floor > 0 && n->f[i].closes > 0) && names_it(n, i, n->dish[k])
            && !names_another(n, i, n->dish[k]))
            return i;
    return first;
}

void begin_named(const struct naming *n, struct stretch *s)
{
    size_t floor = 0, begun = 0;
    for (size_t k = 0; k < n->count; k++) {
        if (n->dish[k] == begun) {
            s[k].first = first_named(n, k, floor);
            begun++;
        }
        floor = s[k].last + 1;
    }
}
