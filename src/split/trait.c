/* split/trait.c: what a name is made of, and how often it is said.
 * SPDX-License-Identifier: MIT */
#include <math.h>

#include "split/candidate.h"
#include "split/topic.h"

/* Foods that are in too many dishes to name one by themselves. */
/* Counts below 1 in the unit that makes them as large as others, which the penalty asks for. */
#define TENTHS 10.0
#define MEAT_MARKS \
    (MARK_OF(poultry) | MARK_OF(ground) | MARK_OF(meat) | MARK_OF(fish) | MARK_OF(shellfish))
#define COMMON_MARKS (MARK_OF(dairy) | MARK_OF(egg) | MARK_OF(flour) | MARK_OF(herb))

static const struct entry *dish_reading(const struct word *w)
{
    return w->tag == TAG_DISH ? w->entry : entry_as(w->readings, TAG_DISH);
}

/* What a word that no rule cares about is, which several candidates have. */
static enum plain_kind unlisted_word(const struct candidates *c, const struct word *w)
{
    unsigned char *kind = &c->plain_kind[w - c->r->words.at];
    if (!*kind)
        *kind = (unsigned char) (1 + plain_kind_of(&c->plain, w->key));
    return (enum plain_kind)(*kind - 1);
}

static const unsigned char TRAIT_OF_LAST[] = {
    [NO_PLAIN_WORD] = TRAIT_STRANGE, [PLAIN_WORD] = TRAIT_KNOWN,   [PROPER_NAME] = TRAIT_PROPER,
    [BEGINS_TITLES] = TRAIT_KNOWN,   [ENDS_TITLES] = TRAIT_TITLED, [IN_TITLES] = TRAIT_TITLED};
static const unsigned char TRAIT_OF_BEFORE[] = {
    [NO_PLAIN_WORD] = TRAIT_OF_STRANGE, [PLAIN_WORD] = TRAIT_OF_KNOWN,
    [PROPER_NAME] = TRAIT_OF_PROPER,    [BEGINS_TITLES] = TRAIT_OF_TITLED,
    [ENDS_TITLES] = TRAIT_OF_KNOWN,     [IN_TITLES] = TRAIT_OF_TITLED};

static enum trait last_word(const struct candidates *c, const struct word *w)
{
    const struct entry *dish = dish_reading(w);
    if (dish && dish->marks & MARK_OF(generic) && w->tag == TAG_DISH)
        return TRAIT_MEAL;
    if (dish && !(dish->marks & MARK_OF(generic)))
        return (dish->marks & MARK_OF(names)) ? TRAIT_OWN_NAME
               : w->tag == TAG_DISH           ? TRAIT_DISH
                                              : TRAIT_ALSO_DISH;
    switch (w->tag) {
    case TAG_FOOD:
        return w->entry && w->entry->marks & PLAIN_MARKS ? TRAIT_PLAIN : TRAIT_FOOD;
    case TAG_PART:
        return TRAIT_PART;
    case TAG_ACTION:
        return TRAIT_ACTION;
    case TAG_OTHER:
        return TRAIT_OF_LAST[unlisted_word(c, w)];
    default:
        return TRAIT_THING;
    }
}

static enum name_kind kind_of(enum trait last)
{
    switch (last) {
    case TRAIT_OWN_NAME:
    case TRAIT_DISH:
    case TRAIT_ALSO_DISH:
        return NAME_DISH;
    case TRAIT_FOOD:
    case TRAIT_PLAIN:
        return NAME_FOOD;
    case TRAIT_STRANGE:
        return NAME_FOREIGN;
    default:
        return NAME_OTHER;
    }
}

/* What a word before the last is, where its tag tells; the first trait is none of these. */
static const unsigned char TRAIT_OF_TAG[TAG_CODES] = {
    [TAG_FOOD] = TRAIT_OF_FOOD,      [TAG_DISH] = TRAIT_OF_DISH,
    [TAG_STATE] = TRAIT_OF_STATE,    [TAG_SIZE] = TRAIT_OF_STATE,
    [TAG_UNIT] = TRAIT_OF_UNIT,      [TAG_COUNTER] = TRAIT_OF_UNIT,
    [TAG_CONTAINER] = TRAIT_OF_UNIT, [TAG_WITH] = TRAIT_WITH,
    [TAG_AND] = TRAIT_AND,           [TAG_OF] = TRAIT_OF,
    [TAG_INTO] = TRAIT_INTO,         [TAG_THE] = TRAIT_THE,
    [TAG_ARTICLE] = TRAIT_THE};

/* A word before the last. */
static void add_word(const struct candidates *c, const struct word *w, enum trait last, double *x)
{
    uint64_t marks = w->entry ? w->entry->marks : 0;
    if (TRAIT_OF_TAG[w->tag])
        x[TRAIT_OF_TAG[w->tag]] = 1;
    if (w->tag == TAG_FOOD)
        x[TRAIT_FOOD_DISH] = kind_of(last) == NAME_DISH;
    if (w->tag == TAG_DONE || w->tag == TAG_ACTION) /* "roast carrots" */
        x[marks & MARK_OF(heats) ? TRAIT_COOKED : TRAIT_DONE] = 1;
    if (w->tag == TAG_OTHER)
        x[TRAIT_OF_BEFORE[unlisted_word(c, w)]] = 1;
    if (w->tag == TAG_ACTION && !entry_as(w->readings, TAG_DONE))
        x[TRAIT_OF_VERB] = 1;
    if (text_ends(w->key, "'s"))
        x[TRAIT_OWNED] = 1;
}

static void add_first(const struct candidates *c, const struct word *w, double *x)
{
    switch (w->tag) {
    case TAG_UNIT:
    case TAG_COUNTER:
    case TAG_CONTAINER:
    case TAG_VESSEL:
    case TAG_EATER:
        x[TRAIT_UNIT_FIRST] = 1;
        break;
    case TAG_STATE:
    case TAG_SIZE:
        x[TRAIT_STATE_FIRST] = 1;
        break;
    case TAG_DONE:
        x[TRAIT_DONE_FIRST] = 1;
        break;
    case TAG_OTHER:
        x[TRAIT_OTHER_FIRST] = unlisted_word(c, w) == PLAIN_WORD;
        break;
    default:
        break;
    }
}

static void add_food_marks(const struct word *w, double *x)
{
    uint64_t marks = w->tag == TAG_FOOD && w->entry ? w->entry->marks : 0;
    x[TRAIT_ASIDE] = (marks & MARK_OF(aside)) != 0;
    x[TRAIT_GENERIC] = (marks & MARK_OF(generic)) != 0;
    x[TRAIT_READY] = (marks & MARK_OF(cooked)) != 0;
    x[TRAIT_SWEET] = (marks & MARK_OF(sweet)) != 0;
    x[TRAIT_SAVORY] = (marks & MARK_OF(savory)) != 0;
    x[TRAIT_PRODUCE] = (marks & MARK_OF(produce)) != 0;
    x[TRAIT_MEAT] = (marks & MEAT_MARKS) != 0;
    x[TRAIT_DAIRY] = (marks & COMMON_MARKS) != 0;
}

/* What is counted of the words of a name. */
struct word_counts {
    double share, spread, foods, fit, about;
    const struct candidate *last;
};

/* What a word of a name stands for in the table of what goes with what. */
static void add_goes(const struct candidates *c, const struct word *w, struct affinity *goes)
{
    const struct entry *dish = dish_reading(w);
    if (w->tag == TAG_FOOD && w->entry)
        affinity_add(goes, c->goes_with, "", entry_value(w->entry));
    else if (dish)
        affinity_add(goes, c->goes_with, "", entry_value(dish));
    else if ((w->tag == TAG_DONE || w->tag == TAG_ACTION) && w->entry)
        affinity_add(goes, c->goes_with, "to ", entry_value(w->entry));
}

/* How well the dish goes with the name, but for the places that say it. */
static double goes_with(const struct candidates *c, const struct candidate *n)
{
    struct affinity name = {0}, rest = c->about;
    for (size_t i = n->words.first; i <= n->words.last; i++)
        add_goes(c, &c->r->words.at[i], &name);
    for (size_t i = 0; i < AFFINITY_SIZE; i++)
        rest.at[i] -= (float) n->home * name.at[i];
    rest.count -= (float) n->home * name.count;
    return name.count > 0 && rest.count > 0 ? affinity_between(&name, &rest) : 0;
}

static void count_word(const struct candidates *c, const struct candidate *n, size_t i,
                       struct word_counts *counts)
{
    const struct word *w = &c->r->words.at[i];
    const struct candidate *word = candidate_find(c, name_hash(c->r, (struct span){i, i}));
    bool here = word && word->dish == n->dish;
    counts->last = word;
    if (word)
        counts->share = fmin(counts->share, here ? (double) word->home / (double) word->times : 0);
    if (w->tag == TAG_OTHER && word && word->dishes > 1)
        counts->spread = fmax(counts->spread, fmin((double) word->dishes - 1, 3) / 3);
    if (w->tag == TAG_FOOD && w->entry) {
        counts->foods++;
        counts->fit += here && word->home > n->home;
        if (here)
            counts->about = fmax(counts->about, telling(w->entry->marks) * (double) word->home);
    }
}

static bool has(const struct said_bits *b, enum said bit)
{
    return b->at[bit / 64] >> bit % 64 & 1;
}

static void add(struct said_bits *b, enum said bit)
{
    b->at[bit / 64] |= (uint64_t) 1 << bit % 64;
}

/* How often its words are said here, of all times, its last word apart from the name, and its
 * foods. */
static void add_words(const struct candidates *c, const struct candidate *n, double *x,
                      struct said_bits *said)
{
    struct word_counts counts = {.share = 1};
    for (size_t i = n->words.first; i <= n->words.last; i++)
        count_word(c, n, i, &counts);
    const struct candidate *last = counts.last;
    bool here = last && last->dish == n->dish;
    x[TRAIT_WORDS_SHARE] = counts.share;
    x[TRAIT_LAST_SHARE] = !last ? 1 : here ? (double) last->home / (double) last->times : 0;
    x[TRAIT_SPREAD] = counts.spread;
    x[TRAIT_HAS_FOODS] = counts.foods > 0 ? counts.fit / counts.foods : 0;
    x[TRAIT_MISFIT] = counts.foods > 0 && counts.fit <= 0;
    x[TRAIT_MAIN] = c->about_most > 0 ? fmin(counts.about / c->about_most, 1) : 0;
    x[TRAIT_FULLER] = n->fuller > 0;
    if (here && last->home > n->home)
        x[TRAIT_AGAIN] = log1p((double) (last->home - n->home));
    if (here && has(&last->said, SAID_LINE))
        add(said, SAID_LINED);
}

static void add_counts(const struct candidates *c, const struct candidate *n, double *x,
                       struct said_bits *said)
{
    size_t others = n->dishes > 1 ? n->dishes - 1 : 0;
    x[TRAIT_TIMES] = n->home > 1 ? log((double) n->home) : 0;
    x[TRAIT_SHARE] = n->times ? (double) n->home / (double) n->times : 0;
    x[TRAIT_ELSEWHERE] = (double) (others < 3 ? others : 3) / 3;
    x[TRAIT_CUT] = n->home ? (double) n->cut / (double) n->home : 0;
    x[TRAIT_PERSON] = n->capital && (x[TRAIT_STRANGE] > 0 || x[TRAIT_PROPER] > 0);
    x[TRAIT_AWAY] = n->home && n->away == n->home;
    if (n->home && n->cut == n->home)
        add(said, SAID_PARTLY);
    if ((has(said, SAID_FIRST) || has(said, SAID_BEGIN) || has(said, SAID_AHEAD))
        && (has(said, SAID_END) || has(said, SAID_LAST) || has(said, SAID_BEHIND)))
        add(said, SAID_BOTH_ENDS);
    if (n->home > 1)
        add(said, SAID_TWICE);
    if (n->home > 2)
        add(said, SAID_THRICE);
    if (n->hash == c->chosen_hash) {
        add(said, SAID_CHOSEN);
        x[TRAIT_SURELY] = c->chosen_weight;
    }
}

/* How many foods stand right behind another one. */
static double foods_listed(const struct recording *r, struct span name)
{
    double listed = 0;
    for (size_t i = name.first + 1; i <= name.last; i++) {
        size_t first = r->words.at[i].entry_first;
        listed += r->words.at[i].tag == TAG_FOOD && first > name.first
                  && r->words.at[first - 1].tag == TAG_FOOD;
    }
    return listed;
}

enum name_kind name_traits(const struct candidates *c, const struct candidate *n, double *x,
                           struct said_bits *said)
{
    const struct word *at = c->r->words.at;
    const struct word *end = &at[n->words.last];
    enum trait last = last_word(c, end);
    size_t words = 0;
    for (size_t i = 0; i < TRAITS; i++)
        x[i] = 0;
    *said = n->said;
    x[last] = 1;
    for (size_t i = n->words.first; i <= n->words.last; i++)
        words += !at[i].filler;
    x[words == 1   ? TRAIT_WORD
      : words == 2 ? TRAIT_WORDS_2
      : words == 3 ? TRAIT_WORDS_3
                   : TRAIT_WORDS_4] = 1;
    if (words > 1)
        add(said, SAID_LONG);
    x[TRAIT_ENTRY] = words > 1 && end->entry_first <= n->words.first;
    for (size_t i = n->words.first; i < end->entry_first; i++)
        add_word(c, &at[i], last, x);
    x[TRAIT_LISTED] = foods_listed(c->r, n->words);
    add_first(c, &at[n->words.first], x);
    add_food_marks(end, x);
    x[TRAIT_OWNER] = text_ends(end->key, "'s");
    add_counts(c, n, x, said);
    add_words(c, n, x, said);
    if (kind_of(last) == NAME_DISH)
        x[TRAIT_GOES] = TENTHS * goes_with(c, n);
    return kind_of(last);
}
