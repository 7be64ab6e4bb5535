/* build/told.c: the weights of told.def and of the pack's table step-odds.
 * SPDX-License-Identifier: MIT */
#include "build/told.h"

#include <limits.h>

#include "build/wordodds.h"

/* Of what the rules say of a verb, and of what they do not. */
struct odds {
    double ordered, other;
};

static const struct odds FACT[TOLD_FACTS] = {
#define TOLD(name, ordered, other, holds, what) {ordered, other},
#include "build/told.def"
};
static const struct odds BEFORE_TAG[UCHAR_MAX + 1] = {
#define BEFORE(tag, ordered, other) [TAG_##tag] = {ordered, other},
#include "build/told.def"
};
static const struct odds BEHIND_TAG[UCHAR_MAX + 1] = {
#define BEHIND(tag, ordered, other) [TAG_##tag] = {ordered, other},
#include "build/told.def"
};
static const struct {
    uint64_t mark;
    struct odds odds;
} MARKS[] = {
#define MARKED(mark, ordered, other) {MARK_OF(mark), {ordered, other}},
#include "build/told.def"
};

/* Of step-odds. */
enum { COLUMN_ORDERED = COLUMN_ODDS, COLUMN_OTHER };

/* Log odds from which on a verb is a step. One in five is enough: most stand in a sentence that is
 * a step anyway, and what a recipe leaves out is worse than what it says besides. */
#define LEAST (-1.4)

static double points(struct odds o, bool ordered)
{
    return ordered ? o.ordered : o.other;
}

static double points_of_tags(const struct told *told, bool ordered)
{
    double sum =
        points(BEFORE_TAG[told->before], ordered) + points(BEHIND_TAG[told->behind], ordered);
    for (size_t n = 0; n < TOLD_FACTS; n++)
        if (told->is[n])
            sum += points(FACT[n], ordered);
    for (size_t n = 0; n < sizeof MARKS / sizeof *MARKS; n++)
        if (told->marks & MARKS[n].mark)
            sum += points(MARKS[n].odds, ordered);
    return sum;
}

bool is_told(const struct builder *b, size_t i, struct text does, bool ordered)
{
    const struct table *t = b->step_odds;
    const size_t column = ordered ? COLUMN_ORDERED : COLUMN_OTHER;
    struct told told;
    find_told(b, i, does, &told);
    double sum = points_of_tags(&told, ordered),
           done = word_odds(t, told.does, TEXT_OF("does"), column);
    if (told.behind)
        done += word_odds(t, told.does, text_from(tag_name(told.behind)), column);
    sum += word_odds(t, told.says, TEXT_OF("says"), column) + done;
    for (size_t n = 0; n < told.nears; n++)
        sum += word_odds(t, told.near[n], TEXT_OF("near"), column);
    for (size_t n = 0; n < told.nexts; n++)
        sum += word_odds(t, told.next[n], TEXT_OF("next"), column);
    return sum > LEAST;
}
