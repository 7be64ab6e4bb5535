/* build/lineodds.c: the weights of lineodds.def and of the pack's table line-odds.
 * SPDX-License-Identifier: MIT */
#include "build/lineodds.h"

#include <limits.h>

#include "base/arena.h"
#include "build/beside.h"
#include "build/wordodds.h"

struct odds {
    double of[LINE_WAYS];
};

#define ODDS(known, bare, asked) \
    {                            \
        {                        \
            known, bare, asked   \
        }                        \
    }

static const struct odds FACT_ODDS[LINE_FACTS] = {
#define FACT(name, known, bare, asked, holds, what) ODDS(known, bare, asked),
#include "build/lineodds.def"
};
static const struct odds BEFORE_ODDS[UCHAR_MAX + 1] = {
#define BEFORE(tag, known, bare, asked) [tag] = ODDS(known, bare, asked),
#include "build/lineodds.def"
};
static const struct odds BEHIND_ODDS[UCHAR_MAX + 1] = {
#define BEHIND(tag, known, bare, asked) [tag] = ODDS(known, bare, asked),
#include "build/lineodds.def"
};
static const struct {
    unsigned scope;
    struct odds odds;
} SCOPES[] = {
#define SCOPE(scope, known, bare, asked) {SCOPE_##scope, ODDS(known, bare, asked)},
#include "build/lineodds.def"
};
static const struct {
    uint64_t mark;
    struct odds odds;
} SORTS[] = {
#define SORT(mark, known, bare, asked) {MARK_OF(mark), ODDS(known, bare, asked)},
#include "build/lineodds.def"
};

/* Log odds from which on the food is a line. Even odds would be best for F1; but an amount that was
 * said and is missed is worse than one too many, so that it is kept from three in ten on. */
static const double LEAST[LINE_WAYS] = {-0.8, -0.2, 0.0};

static double points_of_words(const struct table *t, const struct line_case *c)
{
    return word_odds(t, text_last_word(c->line->kind), TEXT_OF("food"), COLUMN_ODDS)
           + word_odds(t, c->line->rule, TEXT_OF("rule"), COLUMN_ODDS)
           + words_odds(t, c->near, c->nears, TEXT_OF("near"), COLUMN_ODDS)
           + words_odds(t, c->next, c->nexts, TEXT_OF("next"), COLUMN_ODDS);
}

static double points(const struct builder *b, const struct line_case *c)
{
    double sum = BEFORE_ODDS[c->before].of[c->way] + BEHIND_ODDS[c->behind].of[c->way]
                 + points_of_words(b->line_odds, c);
    const uint64_t marks = c->line->entry ? c->line->entry->marks : 0;
    for (size_t n = 0; n < LINE_FACTS; n++)
        sum += c->is[n] ? FACT_ODDS[n].of[c->way] : 0;
    for (size_t n = 0; n < sizeof SCOPES / sizeof *SCOPES; n++)
        sum += c->scope & SCOPES[n].scope ? SCOPES[n].odds.of[c->way] : 0;
    for (size_t n = 0; n < sizeof SORTS / sizeof *SORTS; n++)
        sum += marks & SORTS[n].mark ? SORTS[n].odds.of[c->way] : 0;
    return sum;
}

/* What was learned is how recordings tell of dishes: of a shorter one the rules alone judge. */
#define WORDS_LEAST 60

static bool is_likely(const struct builder *b, size_t index)
{
    const bool whole = b->r->words.count >= WORDS_LEAST;
    struct line_case c;
    find_line_case(b, index, &c);
    return b->line_odds && whole ? points(b, &c) > LEAST[c.way] : c.way != LINE_ASKED;
}

/* What is told of one line must not hang on what becomes of those before it. */
void judge_lines(struct builder *b)
{
    const size_t count = b->dish->ingredients.count;
    bool *likely = arena_alloc(b->r->arena, (count + 1) * sizeof *likely);
    for (size_t n = 0; n < count; n++)
        likely[n] = is_likely(b, n);
    for (size_t n = 0; n < count; n++) {
        struct ingredient *line = &b->dish->ingredients.at[n];
        line->questioned =
            line->role == ROLE_SERVE_WITH ? line->questioned && !line->amount.known : !likely[n];
    }
}
