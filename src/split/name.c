/* split/name.c
 * SPDX-License-Identifier: MIT */
#include "split/name.h"

#include "base/arena.h"
#include "split/title.h"

/* A name that is only told of is of a food that is said so often. */
#define TOLD_TIMES 2
#define TOLD_WEIGHT 0.5
#define TELLING_LEAST 0.5
/* A name is surer in so many sentences at the beginning and at the end, where the cook no longer
 * says "the fish". */
#define NAMING_SENTENCES 3
#define PASSING_SENTENCES 8
#define OPENING_BONUS 1.0
/* A sentence that is nothing but a name is as likely an ingredient in the middle of a dish:
 * "English muffins, four of them". */
#define BARE_SHARE 0.5
#define CLOSING_BONUS 1.5
/* Enough of a stretch to tell what it is about, and how far off a name's dish is looked for, so
 * that time does not grow with the square. */
#define TELLING_SENTENCES 100
#define STRETCHES_AWAY 10

/* "Pudding" names less than "rhubarb crumble". */
static double name_weight(const struct recording *r, struct span title)
{
    return title_weight(r, title) * (title.first == title.last ? 1.0 : 2.0);
}

static struct stretch first_part(struct stretch s)
{
    if (s.last - s.first >= TELLING_SENTENCES)
        s.last = s.first + TELLING_SENTENCES - 1;
    return s;
}

static size_t times_named(const struct feature *f, struct stretch s, struct text kind)
{
    size_t times = 0;
    for (size_t i = s.first; i <= s.last; i++)
        for (size_t n = 0; n < f[i].mentions_count; n++)
            times += text_equal(f[i].mentions[n].kind, kind);
    return times;
}

/* How much a dish is about a food of these marks: flour and milk are in everything, and a dish with
 * meat is named by it. */
static double telling(uint64_t marks)
{
    const uint64_t everywhere = MARK_OF(salt) | MARK_OF(water) | MARK_OF(fat) | MARK_OF(flour)
                                | MARK_OF(dairy) | MARK_OF(leavening) | MARK_OF(egg)
                                | MARK_OF(generic);
    const uint64_t main =
        MARK_OF(poultry) | MARK_OF(ground) | MARK_OF(meat) | MARK_OF(fish) | MARK_OF(shellfish);
    if (marks & everywhere)
        return 0.1;
    if (marks & (MARK_OF(spice) | MARK_OF(herb)))
        return 0.3;
    return marks & main ? 2 : marks & (MARK_OF(produce) | MARK_OF(aside)) ? 1 : 0.5;
}

/* A food and how much the stretch is about it. */
struct topic {
    struct text food; /* empty: none */
    double about;
};

/* "Turkey" and "ground turkey". */
static bool is_same_food(struct text a, struct text b)
{
    return text_has_part(a, ' ', b) || text_has_part(b, ' ', a);
}

/* The food that the stretch is most about, but for `but`. */
static struct topic main_food(const struct feature *f, struct stretch s, struct text but)
{
    struct topic best = {TEXT_EMPTY, 0};
    for (size_t i = s.first; i <= s.last; i++) {
        for (size_t n = 0; n < f[i].mentions_count; n++) {
            const struct mention *m = &f[i].mentions[n];
            double about = m->part || is_same_food(m->kind, but)
                               ? 0
                               : telling(m->marks) * (double) times_named(f, s, m->kind);
            if (about > best.about)
                best = (struct topic){m->kind, about};
        }
    }
    return best;
}

/* The dish's word that is said most often in the stretch ("pancakes"); NULL when none is said
 * twice. */
static const struct entry *main_dish_word(const struct recording *r, struct stretch s)
{
    size_t begin = r->sentences.at[s.first].first, end = r->sentences.at[s.last].last + 1, most = 1;
    const struct entry *best = NULL;
    for (size_t i = begin; i < end; i++) {
        const struct word *w = &r->words.at[i];
        size_t times = 0;
        if (w->tag != TAG_DISH || w->scope & (SCOPE_UNREAL | SCOPE_BESIDE))
            continue;
        for (size_t n = begin; n < end; n++)
            times += r->words.at[n].tag == TAG_DISH
                     && text_equal(entry_value(r->words.at[n].entry), entry_value(w->entry));
        if (times > most) {
            most = times;
            best = w->entry;
        }
    }
    return best;
}

/* A second food is in the title when the dish is about it nearly as much. */
#define SECOND_SHARE 0.5
/* How clearly a dish is about a food that its one-word name lacks: "stew". */
#define CLEARLY_ABOUT 4.0

/* A title for a dish that the cook never names: main foods and dish's word. */
static struct text made_name(struct recording *r, const struct feature *f, struct stretch s)
{
    s = first_part(s);
    struct topic one = main_food(f, s, TEXT_EMPTY), other = main_food(f, s, one.food);
    const struct entry *dish = main_dish_word(r, s);
    if (!one.food.length)
        return dish ? capitalised(r, entry_words(dish)) : TEXT_EMPTY;
    if (dish)
        return capitalised(
            r, arena_format(r->arena, "%.*s %.*s", TEXT(one.food), TEXT(entry_words(dish))));
    if (other.about >= SECOND_SHARE * one.about)
        return capitalised(
            r, arena_format(r->arena, "%.*s and %.*s", TEXT(one.food), TEXT(other.food)));
    return capitalised(r, one.food);
}

/* "Stew" is a beef stew, when the stretch is clearly about beef. */
static struct text fuller_name(struct recording *r, const struct feature *f, struct stretch s,
                               struct span name)
{
    struct topic main = main_food(f, first_part(s), TEXT_EMPTY);
    struct text said = title_text(r, name);
    if (name.first < name.last || main.about < CLEARLY_ABOUT || title_weight(r, name) < 3)
        return said;
    return capitalised(
        r, arena_format(r->arena, "%.*s %.*s", TEXT(main.food), TEXT(r->words.at[name.first].key)));
}

static bool may_stand_before(unsigned char tag)
{
    return tag == TAG_FOOD || tag == TAG_DONE || tag == TAG_STATE || tag == TAG_PART
           || tag == TAG_INSIDE;
}

/* The words before the dish's word at `i` that go with it; empty when there is no food among them.
 * "Stir-fry" and "rhubarb crumble" are one entry each: such a one names near the stretch's ends
 * only.
 */
static struct span name_before(const struct recording *r, struct span words, size_t i, bool near)
{
    size_t first = r->words.at[i].entry_first;
    bool food = near && first < i;
    while (first > words.first && may_stand_before(r->words.at[first - 1].tag)
           && r->words.at[first - 1].after < AFTER_COMMA)
        food |= r->words.at[--first].tag == TAG_FOOD;
    return food ? (struct span){first, i} : (struct span){1, 0};
}

/* "It does six, that rhubarb crumble": the last words in the stretch that stand before a dish's
 * word and go with it. Sets the sentence that says it. */
static struct span named_in_passing(const struct recording *r, struct stretch s, size_t *sentence)
{
    struct span none = {1, 0};
    struct span all = {r->sentences.at[s.first].first, r->sentences.at[s.last].last};
    for (size_t k = s.last + 1; k-- > s.first;)
        for (size_t i = r->sentences.at[k].last + 1; i-- > r->sentences.at[k].first;) {
            const struct word *w = &r->words.at[i];
            if (w->tag != TAG_DISH || w->scope & (SCOPE_UNREAL | SCOPE_BESIDE))
                continue;
            struct span name = name_before(r, all, i, k + PASSING_SENTENCES > s.last);
            *sentence = k;
            if (name.first <= name.last)
                return name;
        }
    return none;
}

/* Whether the stretch says the word elsewhere than in sentence `but`. */
static bool says_elsewhere(const struct recording *r, struct stretch s, size_t but,
                           const struct entry *e)
{
    for (size_t i = s.first; i <= s.last; i++)
        if (i != but && sentence_says(r, &r->sentences.at[i], e))
            return true;
    return false;
}

/* What names are chosen from. */
struct naming {
    const struct recording *r;
    const struct feature *f;
    const struct stretch *s;
    const size_t *dish; /* of each stretch; NO_DISH is possible */
    size_t count;
    struct span *best; /* of each dish; first > last while there is none */
    double *weight;
};

/* How many foods of the name are said in dish `d`, near stretch `k`, but for sentence `i` in which
 * the name was said. */
static size_t fits(const struct naming *n, size_t d, size_t k, size_t i, struct span name)
{
    size_t found = 0, first = k > STRETCHES_AWAY ? k - STRETCHES_AWAY : 0;
    for (size_t w = name.first; w <= name.last; w++) {
        const struct word *word = &n->r->words.at[w];
        bool said = false;
        if (!word->entry || word->tag != TAG_FOOD)
            continue;
        for (size_t j = first; !said && j < n->count && j <= k + STRETCHES_AWAY; j++)
            said = n->dish[j] == d && says_elsewhere(n->r, first_part(n->s[j]), i, word->entry);
        found += said;
    }
    return found;
}

/* The dish that the name fits best; the one in which it is said when none fits better. "White bean
 * soup. And rosemary focaccia": two dishes are named in the last one's stretch. */
static size_t owner(const struct naming *n, size_t k, size_t i, struct span name)
{
    size_t best = n->dish[k], most = fits(n, best, k, i, name), foods = 0;
    for (size_t w = name.first; w <= name.last; w++)
        foods += n->r->words.at[w].tag == TAG_FOOD;
    if (most >= foods)
        return best;
    size_t first = k > STRETCHES_AWAY ? k - STRETCHES_AWAY : 0;
    for (size_t j = first; j < n->count && j <= k + STRETCHES_AWAY; j++) {
        size_t found =
            n->dish[j] != NO_DISH && n->dish[j] != best ? fits(n, n->dish[j], k, i, name) : 0;
        if (found > most) {
            most = found;
            best = n->dish[j];
        }
    }
    return best;
}

/* Keeps the surest name of dish `d`; of two that are as sure the later. */
static void offer(struct naming *n, size_t d, struct span name, double weight)
{
    if (weight < n->weight[d])
        return;
    n->weight[d] = weight;
    n->best[d] = name;
}

static bool is_told_of(const struct naming *n, size_t k, struct span told)
{
    for (size_t w = told.first; w <= told.last; w++)
        if (n->r->words.at[w].tag == TAG_FOOD && n->r->words.at[w].entry
            && telling(n->r->words.at[w].entry->marks) >= TELLING_LEAST
            && times_named(n->f, first_part(n->s[k]), entry_value(n->r->words.at[w].entry))
                   >= TOLD_TIMES)
            return true;
    return false;
}

static void offer_names(struct naming *n, size_t k, size_t i)
{
    const struct feature *f = &n->f[i];
    const struct stretch *s = &n->s[k];
    bool begins = i - s->first < NAMING_SENTENCES, ends = s->last - i < NAMING_SENTENCES;
    if (title_weight(n->r, f->opening_title) > 1)
        offer(n, n->dish[k], f->opening_title,
              name_weight(n->r, f->opening_title) + OPENING_BONUS * begins);
    if (title_weight(n->r, f->closing_title) > 1)
        offer(n, owner(n, k, i, f->closing_title), f->closing_title,
              name_weight(n->r, f->closing_title) * (f->bare > 0 && !ends ? BARE_SHARE : 1)
                  + CLOSING_BONUS * ends);
    if (is_told_of(n, k, f->told_title))
        offer(n, owner(n, k, i, f->told_title), f->told_title, TOLD_WEIGHT);
}

static void offer_stretch(struct naming *n, size_t k)
{
    size_t sentence = n->s[k].first;
    struct span passing = named_in_passing(n->r, n->s[k], &sentence);
    for (size_t i = n->s[k].first; i <= n->s[k].last; i++)
        offer_names(n, k, i);
    size_t d = passing.first <= passing.last ? owner(n, k, sentence, passing) : n->dish[k];
    if (name_weight(n->r, passing) > n->weight[d])
        offer(n, d, passing, name_weight(n->r, passing));
}

static void set_title(struct recording *r, const struct naming *n, size_t k)
{
    struct dish *d = &r->dishes.at[n->dish[k]];
    struct span name = n->best[n->dish[k]];
    if (d->title.length)
        return;
    d->title_said = name.first <= name.last;
    d->title = d->title_said ? fuller_name(r, n->f, n->s[k], name) : made_name(r, n->f, n->s[k]);
}

void name_dishes(struct recording *r, const struct feature *f, const struct stretch *s,
                 size_t count, const size_t *dish)
{
    struct naming n = {r, f, s, dish, count, NULL, NULL};
    n.best = arena_alloc(r->arena, (r->dishes.count + 1) * sizeof *n.best);
    n.weight = arena_alloc(r->arena, (r->dishes.count + 1) * sizeof *n.weight);
    for (size_t d = 0; d < r->dishes.count; d++)
        n.best[d] = (struct span){1, 0};
    for (size_t k = 0; k < count; k++)
        if (dish[k] != NO_DISH)
            offer_stretch(&n, k);
    for (size_t k = 0; k < count; k++)
        if (dish[k] != NO_DISH)
            set_title(r, &n, k);
}

struct span name_said(const struct recording *r, const struct feature *f, struct stretch s)
{
    const size_t dish = 0;
    struct span best = {1, 0};
    double weight = 0;
    struct naming n = {r, f, &s, &dish, 1, &best, &weight};
    offer_stretch(&n, 0);
    return best;
}
