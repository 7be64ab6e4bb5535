/* check/missing.c: what a cook at home needs and has not heard: temperatures, times, a yield.
 * SPDX-License-Identifier: MIT */
#include "check/report.h"
#include "match/capture.h"

/* Whether a temperature of that thing was said. What is hotter than boiling water is the oven's or
 * the oil's, whatever stood nearest to the number. */
static bool temperature_of(const struct dish *d, const char *of)
{
    for (size_t i = 0; i < d->steps.count; i++)
        for (size_t n = 0; n < d->steps.at[i].temperatures.count; n++) {
            const struct temperature *t = &d->steps.at[i].temperatures.at[n];
            if (text_is(t->of, of) || (!text_is(t->of, "oven") && ratio_double(t->value) > 212))
                return true;
        }
    return false;
}

/* Whether the step's sentence says what needs it: the builder fills in a verb where a cook left it
 * out. */
static bool heat_said(const struct checker *c, const struct step *s, uint64_t marks, const char *of)
{
    const struct sentence *said = sentence_of(c->r, s->words.first);
    for (size_t i = said ? said->first : s->words.first; i <= s->words.last; i++) {
        const struct word *w = &c->r->words.at[i];
        const bool cooks = w->tag != TAG_DONE && w->entry && w->entry->marks & marks;
        if (w->entry && !(w->scope & SCOPE_SUPPOSED)
            && (text_is(entry_value(w->entry), of) || cooks))
            return true;
    }
    return false;
}

/* "Roast it in the pan till it smells": without an oven in the talk, a verb that is also done in a
 * pan is no baking. */
static bool in_oven(const struct checker *c, const struct step *s)
{
    struct span where;
    if (!said_find(&c->sayings, c->r, "roasts_too", s->words, &where))
        return true;
    return !said_with(c, "in_pan", where)
           && said_find(&c->sayings, c->r, "oven_said", c->dish->words, &where);
}

/* "Light your oven, 3 hundred and 50": a heat that no rule puts together. */
static bool heat_numbered(const struct checker *c)
{
    for (size_t i = 0; i < c->parts.count; i++) {
        struct span where, rest = c->parts.at[i];
        if (said_find(&c->sayings, c->r, "oven_number", rest, &where))
            return true;
    }
    return false;
}

/* The first step that needs a temperature, from step `i` on; SIZE_MAX: there is none. `told`: that
 * it is in the oven was said before, so that "in for forty minutes" is enough. */
static size_t needs_heat(const struct checker *c, uint64_t marks, const char *of, size_t i,
                         bool told)
{
    for (; i < c->dish->steps.count; i++) {
        const struct step *s = &c->dish->steps.at[i];
        if (step_marks(c, s) & marks && (told || heat_said(c, s, marks, of)) && in_oven(c, s)
            && !said_with(c, "could_too", s->words))
            return i;
    }
    return SIZE_MAX;
}

/* Where the whole dish has no temperature: the step that needs it, and "oven on" only where nothing
 * is baked after it. */
static void find_temperature(struct checker *c, uint64_t marks, const char *of)
{
    size_t first = temperature_of(c->dish, of) ? SIZE_MAX : needs_heat(c, marks, of, 0, false);
    if (first == SIZE_MAX || (text_is(text_from(of), "oven") && heat_numbered(c)))
        return;
    bool preheats = step_marks(c, &c->dish->steps.at[first]) & MARK_OF(changes);
    size_t bakes = preheats ? needs_heat(c, marks, of, first + 1, true) : first;
    const struct step *s = &c->dish->steps.at[bakes == SIZE_MAX ? first : bakes];
    REPORT(c, no_temperature, subject_step(c->r, s), text_from(of));
}

/* Fat that stands so high in the pan fries what swims in it; less is for one side at a time. */
#define DEEP_INCHES 1
#define DEEP_CENTIMETERS 2
static bool stands_deep(const struct ingredient *line)
{
    const struct text unit = line->amount.unit;
    const int least = text_is(unit, "inch") ? DEEP_INCHES : DEEP_CENTIMETERS;
    return line->amount.known && line->entry && line->entry->marks & MARK_OF(fat)
           && (text_is(unit, "inch") || text_is(unit, "centimeter"))
           && ratio_compare(line->amount.max, RATIO(least)) >= 0;
}

/* "Two inches of oil, three fifty, four at a time": told, though the builder left it out. */
#define HEAT_WORDS 15
static bool heat_beside(const struct checker *c, const struct ingredient *line)
{
    const struct span beside = {line->words.first + 1, line->words.last + HEAT_WORDS};
    return match_among(c->r, beside, KIND_OF(temperature));
}

/* "Two inches of oil, nice and hot": how hot was not heard. */
static void find_deep_fat(struct checker *c)
{
    for (size_t i = 0; i < c->dish->ingredients.count; i++) {
        const struct ingredient *line = &c->dish->ingredients.at[i];
        if (!stands_deep(line) || temperature_of(c->dish, "oil") || heat_beside(c, line))
            continue;
        REPORT(c, no_temperature, subject_line(line), text_from("oil"));
        return;
    }
}

/* Words that carry a step on stand so near to it. */
#define CARRY_WORDS 12

/* A time or a sign of doneness in the step, or in the one that carries it on. */
static bool has_end(const struct dish *d, size_t i)
{
    for (size_t n = i; n < d->steps.count && n <= i + 1; n++) {
        const struct step *s = &d->steps.at[n];
        bool near = n == i || s->words.first <= d->steps.at[i].words.last + CARRY_WORDS;
        if (near && (s->durations.count || s->until.length))
            return true;
    }
    return false;
}

/* "Roll it before you chill it". */
#define NOT_YET_WORDS 3
static bool not_yet(const struct checker *c, size_t verb)
{
    struct span where,
        before = {verb > NOT_YET_WORDS ? verb - NOT_YET_WORDS : 0, verb ? verb - 1 : 0};
    return said_find(&c->sayings, c->r, "not_yet", before, &where);
}

/* "Slice up two boil eggs": what stands behind a number is no verb. */
static bool counted_thing(const struct checker *c, size_t verb)
{
    const unsigned char before = verb ? c->r->words.at[verb - 1].tag : TAG_OTHER;
    return before == TAG_NUMBER || before == TAG_ONES || before == TAG_TEENS;
}

/* Rests, chills, rises and the like: what the set "needs_time" lists. */
static void find_times(struct checker *c)
{
    for (size_t i = 0; i < c->dish->steps.count; i++) {
        const struct step *s = &c->dish->steps.at[i];
        struct span where;
        if (has_end(c->dish, i) || !said_find(&c->sayings, c->r, "needs_time", s->words, &where)
            || c->r->words.at[where.last].scope & (SCOPE_NOT_DONE | SCOPE_UNTIL)
            || not_yet(c, where.first) || counted_thing(c, where.first)
            || said_with(c, "if_you", where))
            continue;
        struct subject_of what = {c->r->words.at[where.first].start, where,
                                  said_words(c->r, where)};
        REPORT_PLAIN(c, no_time, what);
    }
}

/* Talk so near a dish may be of it. */
#define BESIDE_WORDS 60

/* A count that the builder took for no yield is still one that a reader can work with. */
static bool yield_heard(const struct checker *c)
{
    struct span where, around = talk_around(c);
    size_t first = c->dish->words.first, last = c->dish->words.last;
    const struct span beside[] = {
        {first > around.first + BESIDE_WORDS ? first - BESIDE_WORDS : around.first, first - 1},
        {last + 1, last + BESIDE_WORDS < around.last ? last + BESIDE_WORDS : around.last}};
    for (size_t i = 0; i < c->parts.count; i++)
        if (said_find(&c->sayings, c->r, "yield_heard", c->parts.at[i], &where))
            return true;
    for (size_t i = 0; i < 2; i++)
        if (beside[i].first <= beside[i].last && beside[i].last < c->r->words.count
            && said_find(&c->sayings, c->r, "yield_heard", beside[i], &where))
            return true;
    return false;
}

/* A dish that was taken for two, by its name, has the yield of either. */
static bool yield_of_namesake(const struct checker *c)
{
    for (size_t i = 0; i < c->r->dishes.count; i++) {
        const struct dish *other = &c->r->dishes.at[i];
        if (i != c->number && text_equal(other->title, c->dish->title)
            && (other->yield.known || i < c->number))
            return true;
    }
    return false;
}

/* A stretch that nobody named may be a part of the dish beside it, whose yield was said there. */
static void find_yield(struct checker *c)
{
    const struct dish *d = c->dish;
    if (!d->yield.known && d->title_said && !yield_heard(c) && !yield_of_namesake(c))
        REPORT_PLAIN(c, no_yield, ((struct subject_of){d->start, NO_WORDS, d->title}));
}

void find_missing(struct checker *c)
{
    find_temperature(c, MARK_OF(ovens), "oven");
    find_temperature(c, MARK_OF(deep), "oil");
    find_deep_fat(c);
    find_times(c);
    find_yield(c);
}
