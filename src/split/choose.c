/* split/choose.c
 * SPDX-License-Identifier: MIT */
#include "split/choose.h"

#include "base/arena.h"

/* So much less may speak for a fuller name than for the kind of dish alone. (Of 1,230 dishes of
 * sets left out 922 were called rightly with none, 932 with all from 1 on.) */
#define FULLER_LESS 2.0

/* Which dish each sentence is in. */
static size_t *dish_of_sentences(const struct naming *n)
{
    size_t *dish = arena_alloc(n->r->arena, (n->r->sentences.count + 1) * sizeof *dish);
    for (size_t i = 0; i < n->r->sentences.count; i++)
        dish[i] = NO_DISH;
    for (size_t k = 0; k < n->count; k++)
        for (size_t i = n->s[k].first; i <= n->s[k].last; i++)
            dish[i] = n->dish[k];
    return dish;
}

/* From each dish's first sentence to its last. */
static struct stretch *find_wholes(const struct naming *n)
{
    struct stretch *wholes = arena_alloc(n->r->arena, (n->dishes + 1) * sizeof *wholes);
    for (size_t d = 0; d < n->dishes; d++)
        wholes[d].first = NO_DISH;
    for (size_t k = 0; k < n->count; k++) {
        struct stretch *whole = n->dish[k] != NO_DISH ? &wholes[n->dish[k]] : NULL;
        if (!whole)
            continue;
        whole->first = whole->first == NO_DISH ? n->s[k].first : whole->first;
        whole->last = n->s[k].last;
    }
    return wholes;
}

struct choice {
    struct span words;
    double score;
};

static void compare(void *to, const struct candidates *c, const struct candidate *n)
{
    struct choice *best = to;
    double score = name_score(c, n);
    if (score > best->score)
        *best = (struct choice){n->words, score};
}

/* "Tea biscuits", where "biscuits" alone was chosen. */
struct fuller {
    uint64_t kind; /* the hash of the one word */
    struct choice best;
};

/* Whether the name is that kind of dish with a word before it that tells more. */
static bool is_fuller(const struct recording *r, struct span name, uint64_t kind)
{
    size_t last = r->words.at[name.last].entry_first;
    if (name.first >= name.last || name_hash(r, (struct span){name.last, name.last}) != kind)
        return false;
    return last <= name.first || name_tells_more(&r->words.at[last - 1]);
}

static void compare_fuller(void *to, const struct candidates *c, const struct candidate *n)
{
    struct fuller *f = to;
    double score = is_fuller(c->r, n->words, f->kind) ? name_score(c, n) : f->best.score;
    if (score > f->best.score)
        f->best = (struct choice){n->words, score};
}

/* A kind of dish alone is named in full where the dish is called so too, nearly as likely. */
static struct span fullest(const struct naming *n, struct candidates *c, size_t d,
                           const struct choice *best)
{
    struct span name = best->words;
    const struct word *w = &n->r->words.at[name.last];
    if (name.first != name.last || (w->tag != TAG_DISH && !entry_as(w->readings, TAG_DISH)))
        return name;
    struct fuller f = {name_hash(n->r, name), {name, best->score - FULLER_LESS}};
    tell_candidates(n, c, d, compare_fuller, &f);
    return f.best.words;
}

struct candidates candidates_of_dishes(const struct naming *n, const struct pack *k)
{
    struct candidates c = candidates_find(n->r, k, n->f, dish_of_sentences(n));
    c.wholes = find_wholes(n);
    return c;
}

void tell_candidates(const struct naming *n, struct candidates *c, size_t d, name_teller *tell,
                     void *to)
{
    struct stretch whole = c->wholes[d];
    c->chosen = n->best[d];
    c->chosen_hash = c->chosen.first <= c->chosen.last ? name_hash(n->r, c->chosen) : 0;
    c->chosen_weight = n->weight[d];
    if (whole.first != NO_DISH)
        candidates_of(c, d, whole, tell, to);
}

/* "The skewers" are short for the "yogurt chicken skewers" that the rules chose. */
static struct span in_full(const struct candidates *c, struct span name)
{
    const struct span head = {c->chosen.last, c->chosen.last};
    if (name.first != name.last || c->chosen.first >= c->chosen.last
        || name_hash(c->r, head) != name_hash(c->r, name))
        return name;
    for (size_t w = c->chosen.first; w < c->chosen.last; w++)
        if (c->r->words.at[w].tag != TAG_FOOD)
            return name;
    return c->chosen;
}

/* "Stew, chicken stew", said with no comma, is chicken stew; "puff puff" is whole. */
static struct span once(const struct recording *r, struct span name)
{
    bool again = name.last > name.first + 1
                 && text_equal(r->words.at[name.first].key, r->words.at[name.last].key);
    return (struct span){name.first + again, name.last};
}

void choose_names(struct naming *n, const struct pack *k)
{
    arena_aside(n->r->arena); /* they go with all that dishes are told by */
    struct candidates c = candidates_of_dishes(n, k);
    arena_back(n->r->arena);
    n->sure = arena_alloc(n->r->arena, (n->dishes + 1) * sizeof *n->sure);
    for (size_t d = 0; d < n->dishes; d++) {
        struct choice best = {{1, 0}, no_name_score()};
        tell_candidates(n, &c, d, compare, &best);
        bool named = best.words.first <= best.words.last;
        n->sure[d] = best.score - no_name_score();
        n->best[d] = named ? once(n->r, in_full(&c, fullest(n, &c, d, &best))) : best.words;
    }
}
