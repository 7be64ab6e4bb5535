/* build/prepguess.c: preparations that the rules did not find, and those that they should not have.
 * SPDX-License-Identifier: MIT */
#include "build/prepodds.h"

#include "base/arena.h"

/* Log odds from which on a food is prepared so, and below which it is not though the rules say it:
 * two in five, and one in four. What is right and what is wanted weigh nearly the same then. */
#define LIKELY (-0.40)
#define UNLIKELY (-1.1)

struct guess {
    struct ingredient *line;
    struct text done;
    double points;
    size_t word;
    enum prep_side side;
    bool given;
};
typedef LIST(struct guess) guess_list;

static void note_guess(struct builder *b, struct prep_word *w, const struct prep_case *c,
                       void *with)
{
    *LIST_ADD(b->r->arena, (guess_list *) with) =
        (struct guess){c->line, c->done, prep_points(b, w, c), w->last, c->side, c->given};
}

/* Whether some word makes it likely enough that the rules' preparation is kept; also where none
 * tells of it. */
static bool is_kept(const guess_list *all, const struct guess *g, struct text prep)
{
    for (size_t n = 0; n < all->count; n++)
        if (all->at[n].given && all->at[n].line == g->line && all->at[n].points >= UNLIKELY
            && preps_alike(all->at[n].done, prep))
            return true;
    return false;
}

static void take_unlikely(const guess_list *all, const struct guess *g)
{
    text_list *list = &g->line->prep;
    for (size_t n = list->count; n-- > 0;)
        if (preps_alike(list->at[n], g->done) && !is_kept(all, g, list->at[n]))
            LIST_REMOVE(list, n);
}

/* "One swede diced and a leek": what is told of the food before it is not told of the one behind.
 */
static bool is_told_before(const guess_list *all, size_t n)
{
    for (size_t i = n; all->at[n].side == PREP_SIDE_BEHIND && i-- > 0;)
        if (all->at[i].word != all->at[n].word)
            return false;
        else if (all->at[i].side == PREP_SIDE_BEFORE
                 && (all->at[i].given || all->at[i].points > all->at[n].points))
            return true;
    return false;
}

/* "Potatoes, peeled and chopped, two leeks, washed and sliced": a food that has its own is not done
 * what the rules give to one that stands nearer. */
static bool is_told_nearer(const guess_list *all, const struct guess *g)
{
    for (size_t i = 0; g->line->prep.count && i < all->count; i++) {
        const struct guess *other = &all->at[i];
        if (other->word == g->word && other->given && other->line->id > g->line->id
            && other->line->id < g->word)
            return true;
    }
    return false;
}

/* "All finely diced": with how it was done. */
static struct text told_how(const struct builder *b, const struct guess *g)
{
    const struct word *w = &b->r->words.at[g->word];
    return w->tag == TAG_DONE && w->entry ? with_manner(b, w->entry_first, w->entry, g->done)
                                          : g->done;
}

void guess_preps(struct builder *b)
{
    guess_list all = {0};
    if (!b->prep_odds)
        return;
    each_prep_case(b, note_guess, &all);
    for (size_t n = 0; n < all.count; n++)
        if (all.at[n].given && all.at[n].points < UNLIKELY)
            take_unlikely(&all, &all.at[n]);
    for (size_t n = 0; n < all.count; n++)
        if (!all.at[n].given && all.at[n].points > LIKELY && !is_told_before(&all, n)
            && !is_told_nearer(&all, &all.at[n]))
            add_prep(b->r->arena, &all.at[n].line->prep, told_how(b, &all.at[n]));
}
