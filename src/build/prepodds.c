/* build/prepodds.c: the weights of prepodds.def and of the pack's tables prep-odds and prep-foods.
 * SPDX-License-Identifier: MIT */
#include "build/prepodds.h"

#include <limits.h>

#include "build/beside.h"
#include "build/wordodds.h"

/* What is counted is counted up to so many. */
#define STOPS_MOST 2
#define CAPTIONS_MOST 3
#define PREPS_MOST 2

static const double ALWAYS_ODDS =
#define ALWAYS(odds) odds
#include "build/prepodds.def"
    ;
static const double WHERE_ODDS[PREP_WHERES][PREP_KINDS] = {
#define WHERE(where, kind, odds) [PREP_##where][PREP_##kind] = (odds),
#include "build/prepodds.def"
};
static const double DISTANCE_ODDS[PREP_SIDES][PREP_WAYS][PREP_DISTANCES] = {
#define DISTANCE(side, way, words, odds) [PREP_SIDE_##side][PREP_##way][words] = (odds),
#include "build/prepodds.def"
};
static const double STOPS_ODDS[PREP_SIDES][PREP_WAYS][2][STOPS_MOST + 1] = {
#define STOPS(side, way, punctuated, count, odds) \
    [PREP_SIDE_##side][PREP_##way][punctuated][count] = (odds),
#include "build/prepodds.def"
};
static const double CAPTIONS_ODDS[PREP_SIDES][2][CAPTIONS_MOST + 1] = {
#define CAPTIONS(side, punctuated, count, odds) [PREP_SIDE_##side][punctuated][count] = (odds),
#include "build/prepodds.def"
};
static const double BEFORE_ODDS[PREP_WAYS][UCHAR_MAX + 1] = {
#define BEFORE(way, tag, odds) [PREP_##way][tag] = (odds),
#include "build/prepodds.def"
};
static const double BEHIND_ODDS[PREP_WAYS][UCHAR_MAX + 1] = {
#define BEHIND(way, tag, odds) [PREP_##way][tag] = (odds),
#include "build/prepodds.def"
};
static const struct {
    unsigned scope;
    double odds;
} SCOPES[] = {
#define SCOPE(scope, odds) {SCOPE_##scope, odds},
#include "build/prepodds.def"
    {0, 0}};
static const double KNOWN_ODDS =
#define KNOWN(odds) odds
#include "build/prepodds.def"
    ;
static const double PREPS_ODDS[PREPS_MOST + 1] = {
#define PREPS(count, odds) [count] = (odds),
#include "build/prepodds.def"
};
static const double GIVEN_ODDS[PREP_SIDES][PREP_WAYS] = {
#define GIVEN(side, way, odds) [PREP_SIDE_##side][PREP_##way] = (odds),
#include "build/prepodds.def"
};
static const double INSIDE_ODDS[PREP_WHERES] = {
#define INSIDE(where, odds) [PREP_##where] = (odds),
#include "build/prepodds.def"
};
static const double TAKEN_ODDS[PREP_WHERES][2] = {
#define TAKEN(where, preps, odds) [PREP_##where][preps] = (odds),
#include "build/prepodds.def"
};
static const struct {
    uint64_t mark;
    double odds;
} SORTS[] = {
#define SORT(mark, odds) {MARK_OF(mark), odds},
#include "build/prepodds.def"
};
/* The columns of prep-foods, behind the preparation's and that of every food. */
static const enum mark_bit FOODS[] = {
#define FOOD(mark) MARK_BIT_##mark,
#include "build/prepodds.def"
};

enum { COLUMN_ANY = 1, COLUMN_FOODS }; /* of prep-foods */

static unsigned most(unsigned n, unsigned limit)
{
    return n < limit ? n : limit;
}

bool is_prep_row(const struct builder *b, struct text verb)
{
    return word_odds(b->prep_odds, verb, TEXT_OF("done"), COLUMN_ODDS) != 0;
}

/* Of the preparation, and more where it is done to this sort of food. */
static double points_of_done(const struct builder *b, struct prep_word *w, struct text done,
                             uint64_t marks)
{
    const struct table *t = b->prep_foods;
    if (w->row_of.at != done.at)
        w->row = t ? table_find(t, done) : 0;
    w->row_of = done;
    if (!t || w->row >= t->rows)
        return 0;
    int sum = text_whole(table_cell(t, w->row, COLUMN_ANY));
    for (size_t n = 0; n < sizeof FOODS / sizeof *FOODS; n++)
        if (marks & (uint64_t) 1 << FOODS[n])
            sum += text_whole(table_cell(t, w->row, COLUMN_FOODS + n));
    return HUNDREDTH * sum;
}

/* Of the food, by its name's last word, its sorts, its amount and what the rules have for it. */
static double points_of_food(const struct builder *b, const struct ingredient *line)
{
    double sum = word_odds(b->prep_odds, text_last_word(line->kind), TEXT_OF("food"), COLUMN_ODDS)
                 + (line->amount.known ? KNOWN_ODDS : 0)
                 + PREPS_ODDS[most((unsigned) line->prep.count, PREPS_MOST)];
    for (size_t n = 0; line->entry && n < sizeof SORTS / sizeof *SORTS; n++)
        sum += line->entry->marks & SORTS[n].mark ? SORTS[n].odds : 0;
    return sum;
}

static double points_of_word(const struct builder *b, const struct prep_word *w)
{
    const struct table *t = b->prep_odds;
    double sum = ALWAYS_ODDS + BEFORE_ODDS[w->way][w->before] + BEHIND_ODDS[w->way][w->behind]
                 + word_odds(t, w->says, TEXT_OF("done"), COLUMN_ODDS)
                 + words_odds(t, w->near, w->nears, TEXT_OF("near"), COLUMN_ODDS)
                 + words_odds(t, w->next, w->nexts, TEXT_OF("next"), COLUMN_ODDS);
    for (size_t n = 0; SCOPES[n].scope; n++)
        if (w->scope & SCOPES[n].scope)
            sum += SCOPES[n].odds;
    return sum;
}

double prep_points(const struct builder *b, struct prep_word *w, const struct prep_case *c)
{
    const bool stops = b->r->punctuated;
    if (!w->weighed)
        w->points = points_of_word(b, w);
    if (!c->food->weighed)
        c->food->points = points_of_food(b, c->line);
    w->weighed = c->food->weighed = true;
    return w->points + c->food->points + WHERE_ODDS[c->where][w->kind]
           + DISTANCE_ODDS[c->side][w->way][c->distance]
           + STOPS_ODDS[c->side][w->way][stops][most(c->stops, STOPS_MOST)]
           + CAPTIONS_ODDS[c->side][stops][most(c->captions, CAPTIONS_MOST)]
           + (w->inside ? INSIDE_ODDS[c->where] : 0)
           + (c->taken ? TAKEN_ODDS[c->where][c->line->prep.count > 0] : 0)
           + (c->given ? GIVEN_ODDS[c->side][w->way] : 0)
           + points_of_done(b, w, c->done, c->line->entry ? c->line->entry->marks : 0);
}
