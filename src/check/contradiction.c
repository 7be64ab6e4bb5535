/* check/contradiction.c: two statements that cannot both be right, told by arithmetic. A correction
 * in the next breath is none: the builder has dropped what was taken back.
 * SPDX-License-Identifier: MIT */
#include <math.h>

#include "build/quantity.h"
#include "check/report.h"
#include "match/capture.h"

/* One heat in two scales is named within so many words, and rounded to a dial's marks: 25 F, 10 C,
 * a gas mark. */
#define SAME_HEAT_WORDS 12
#define SCALE_SLACK_C 11.0
/* A fan oven is set so much lower (common practice). */
#define FAN_LESS_C 20.0
/* An oven that is cooler only keeps things warm (common practice, no source). */
#define WARM_C 115.0
/* The same heat said again. */
#define AGAIN_SLACK_C 3.0
/* "Twelve minutes ..., another five ...: twenty in all": the parts stand within so many words
 * before the total. */
#define TOTAL_WORDS 60
/* Words that look back stand so near to what they are about. */
#define LEAD_WORDS 6
#define BEHIND_WORDS 2

/* ---- temperatures */

/* A gas mark's heat, from the pack's table; NAN for a mark that is not there. */
static double mark_celsius(const struct checker *c, struct ratio mark)
{
    const struct table *t = pack_table(c->k, "oven-marks");
    for (size_t row = 0; t && row < t->rows; row++) {
        struct text name = table_cell(t, row, 0), heat = table_cell(t, row, 1);
        if (ratio_equal(ratio_read(name.at, name.length), mark))
            return (ratio_double(ratio_read(heat.at, heat.length)) - 32) / 1.8;
    }
    return NAN;
}

static double celsius(const struct checker *c, const struct temperature *t)
{
    double value = ratio_double(t->value);
    double heat = t->unit == 'C'   ? value
                  : t->unit == 'F' ? (value - 32) / 1.8
                                   : mark_celsius(c, t->value);
    return t->fan ? heat + FAN_LESS_C : heat;
}

typedef LIST(const struct temperature *) heat_list;

static void add_heats(struct checker *c, heat_list *heats)
{
    for (size_t i = 0; i < c->dish->steps.count; i++) {
        const struct step *s = &c->dish->steps.at[i];
        for (size_t n = 0; n < s->temperatures.count; n++)
            *LIST_ADD(c->r->arena, heats) = &s->temperatures.at[n];
    }
}

/* "200 Celsius, that's 350 Fahrenheit": neighbours in two scales. */
static bool scales_disagree(const struct checker *c, const struct temperature *a,
                            const struct temperature *b)
{
    bool near = b->words.first > a->words.last && b->words.first - a->words.last <= SAME_HEAT_WORDS;
    return near && a->unit != b->unit && fabs(celsius(c, a) - celsius(c, b)) > SCALE_SLACK_C;
}

/* Whether the set's words stand right before word `next`. */
static bool leads_to(const struct checker *c, const char *set, size_t from, size_t next)
{
    struct span where = {from, from};
    while (from < next
           && said_find(&c->sayings, c->r, set, (struct span){from, next - 1}, &where)) {
        if (where.last + 1 == next)
            return true;
        from = where.first + 1;
    }
    return false;
}

/* "Did you say twenty minutes", "twenty minutes like I said": right before the words or right
 * behind them. */
static bool looks_back(const struct checker *c, const char *before, struct span words)
{
    const struct sentence *s = sentence_of(c->r, words.first);
    struct span where;
    if (!s)
        return false;
    size_t from = words.first > s->first + LEAD_WORDS ? words.first - LEAD_WORDS : s->first;
    size_t to = words.last + LEAD_WORDS < s->last ? words.last + LEAD_WORDS : s->last;
    return leads_to(c, before, from, words.first)
           || (said_find(&c->sayings, c->r, "recap", (struct span){words.last + 1, to}, &where)
               && where.first <= words.last + BEHIND_WORDS);
}

/* "325, like I said", where nothing like it was said. */
static const struct temperature *never_said(const struct checker *c, const heat_list *heats,
                                            size_t n)
{
    const struct temperature *t = heats->at[n], *other = NULL;
    if (!looks_back(c, "recap_before", t->words))
        return NULL;
    for (size_t i = 0; i < n; i++) {
        if (!text_equal(heats->at[i]->of, t->of))
            continue;
        if (fabs(celsius(c, heats->at[i]) - celsius(c, t)) <= AGAIN_SLACK_C)
            return NULL;
        other = heats->at[i];
    }
    return other;
}

/* "Bake at 350" after "oven at 375", and nothing said that turns it down. */
static const struct temperature *unturned(const struct checker *c, const heat_list *heats, size_t n)
{
    const struct temperature *t = heats->at[n], *other = NULL;
    for (size_t i = 0; i < n && text_is(t->of, "oven"); i++)
        if (text_is(heats->at[i]->of, "oven"))
            other = heats->at[i];
    if (!other || other->unit != t->unit || other->fan != t->fan
        || said_with(c, "turns_heat", t->words) || said_with(c, "turns_heat", other->words)
        || t->words.first < other->words.last + SAME_HEAT_WORDS)
        return NULL;
    bool warms = celsius(c, t) < WARM_C || celsius(c, other) < WARM_C;
    return !warms && fabs(celsius(c, other) - celsius(c, t)) > SCALE_SLACK_C ? other : NULL;
}

/* "200 Celsius, that's 350 Fahrenheit, and 180 if it's a fan": one that fits an earlier one is
 * right, whatever stands between. */
static bool agrees(const struct checker *c, const heat_list *heats, size_t n)
{
    for (size_t i = 0; i < n; i++)
        if (fabs(celsius(c, heats->at[i]) - celsius(c, heats->at[n])) <= SCALE_SLACK_C)
            return true;
    return false;
}

static void find_heats(struct checker *c)
{
    heat_list heats = {0};
    add_heats(c, &heats);
    for (size_t n = 0; n < heats.count; n++) {
        const struct temperature *other = never_said(c, &heats, n);
        struct subject_of what = subject_words(c, heats.at[n]->words);
        const struct temperature *before = other ? NULL : unturned(c, &heats, n);
        if (other)
            REPORT(c, said_otherwise, what, said_words(c->r, other->words));
        if (before)
            REPORT(c, two_heats, what, said_words(c->r, before->words));
        for (size_t i = 0; i < n && !other && !agrees(c, &heats, n); i++)
            if (scales_disagree(c, heats.at[i], heats.at[n])) {
                REPORT(c, two_scales, what, said_words(c->r, heats.at[i]->words));
                break;
            }
    }
}

/* ---- times */

typedef LIST(const struct match *) match_list;

static void add_sentence(struct checker *c, const struct sentence *s, struct span part,
                         enum rule_kind kind, unsigned not_in, match_list *list)
{
    for (size_t i = s->match_first; i < s->match_first + s->match_count; i++) {
        const struct match *m = &c->r->matches.at[i];
        bool real = !(c->r->words.at[m->words.last].scope & not_in);
        if (m->rule->kind == kind && real && ratio_finite(m->low) && m->words.first >= part.first
            && m->words.first <= part.last)
            *LIST_ADD(c->r->arena, list) = m;
    }
}

/* Only the dish's sentences: going through the whole recording for each dish took most of a long
 * one's time. */
static void add_matches(struct checker *c, enum rule_kind kind, unsigned not_in, match_list *list)
{
    const struct recording *r = c->r;
    for (size_t n = 0; n < c->parts.count; n++) {
        struct span part = c->parts.at[n];
        const size_t until = sentence_until(r, part.last);
        for (size_t i = sentence_from(r, part.first); i < until; i++)
            add_sentence(c, &r->sentences.at[i], part, kind, not_in, list);
    }
}

static bool overlap(double low, double high, double other_low, double other_high)
{
    return low <= other_high * 1.001 && other_low <= high * 1.001;
}

/* Whether the last two or more of the times before the nth add up to it; `*parts` counts those near
 * enough. */
static bool adds_up(const match_list *times, size_t n, size_t *parts)
{
    const struct match *total = times->at[n];
    double low = 0, high = 0;
    *parts = 0;
    for (size_t i = n; i-- > 0 && total->words.first - times->at[i]->words.last <= TOTAL_WORDS;) {
        low += ratio_double(times->at[i]->low);
        high += ratio_double(times->at[i]->high);
        ++*parts;
        if (overlap(low, high, ratio_double(total->low), ratio_double(total->high)))
            return true;
    }
    return false;
}

/* Whether the time was said before, of this dish or another: where dishes lie between each other,
 * the words that look back may be of either. */
static bool time_said(const struct checker *c, const struct match *time)
{
    for (size_t i = 0; i < c->r->matches.count; i++) {
        const struct match *m = &c->r->matches.at[i];
        if (m->words.first >= time->words.first)
            return false;
        if (m->rule->kind == RULE_duration && ratio_finite(m->low)
            && overlap(ratio_double(m->low), ratio_double(m->high), ratio_double(time->low),
                       ratio_double(time->high)))
            return true;
    }
    return false;
}

static void find_totals(struct checker *c)
{
    match_list times = {0};
    add_matches(c, RULE_duration, SCOPE_NOT_DONE, &times);
    for (size_t n = 1; n < times.count; n++) {
        size_t parts;
        if (said_with(c, "total", times.at[n]->words) && !adds_up(&times, n, &parts) && parts > 1)
            REPORT_PLAIN(c, no_sum, subject_words(c, times.at[n]->words));
    }
}

/* "They've had their ten minutes": a time that is spent is none to cook for, so SCOPE_UNREAL tells
 * nothing here. */
#define NOT_SPENT (SCOPE_NOT_DONE & ~SCOPE_UNREAL)

/* The one before the nth that is nearest to it, as times go: the one that was meant. */
static const struct match *nearest_before(const match_list *times, size_t n)
{
    const struct match *nearest = times->at[0];
    double seconds = ratio_double(times->at[n]->low), least = INFINITY;
    for (size_t i = 0; i < n; i++) {
        double far = fabs(log(ratio_double(times->at[i]->low) / seconds));
        if (far <= least) {
            least = far;
            nearest = times->at[i];
        }
    }
    return nearest;
}

static void find_times_again(struct checker *c)
{
    match_list times = {0};
    add_matches(c, RULE_duration, NOT_SPENT, &times);
    for (size_t n = 1; n < times.count; n++) {
        const struct match *time = times.at[n];
        if (looks_back(c, "recap_time", time->words) && !said_with(c, "total", time->words)
            && !time_said(c, time))
            REPORT(c, said_otherwise, subject_words(c, time->words),
                   said_words(c->r, nearest_before(&times, n)->words));
    }
}

static void find_times(struct checker *c)
{
    find_totals(c);
    find_times_again(c);
}

/* ---- amounts */

static bool same_amount(const struct amount *a, const struct amount *b)
{
    return overlap(ratio_double(a->min), ratio_double(a->max), ratio_double(b->min),
                   ratio_double(b->max));
}

/* What went in before of that food, in that unit: true where one line, or all together, is as much
 * as `said`.
 * `*other` is the last line that is not. */
static bool went_in(const struct checker *c, struct text food, size_t before,
                    const struct amount *said, const struct ingredient **other)
{
    struct amount sum = {true, RATIO(0), RATIO(0), said->unit, false};
    *other = NULL;
    for (size_t i = 0; i < c->dish->ingredients.count; i++) {
        const struct ingredient *line = &c->dish->ingredients.at[i];
        if (line->id >= before || !line->amount.known || line->vague
            || !text_equal(line->kind, food) || !text_equal(line->amount.unit, said->unit))
            continue;
        sum.min = ratio_add(sum.min, line->amount.min);
        sum.max = ratio_add(sum.max, line->amount.max);
        if (same_amount(&line->amount, said) || same_amount(&sum, said))
            return true;
        *other = line;
    }
    return false;
}

static void check_recap(struct checker *c, const struct sentence *s, const struct match *m)
{
    struct said_amount said = {0};
    const struct ingredient *other;
    struct span words = match_slot(m, SLOT_food);
    const struct entry *food = span_is_empty(words) ? NULL : entry_at(c->r, words);
    line_amount(c->r, s, m, &said);
    if (!food || !said.amount.known || said.vague || said.more || said.each
        || went_in(c, entry_value(food), m->words.first, &said.amount, &other) || !other)
        return;
    struct subject_of what = {c->r->words.at[m->words.first].start, m->words, entry_shown(food)};
    REPORT(c, amount_otherwise, what, said_words(c->r, m->words), said_words(c->r, other->words));
}

/* The number said in `where`; false when there is none. */
static bool number_in(const struct checker *c, const struct sentence *s, struct span where,
                      struct amount *count)
{
    for (size_t n = 0; n < s->match_count; n++) {
        const struct match *m = &c->r->matches.at[s->match_first + n];
        if (m->rule->kind != RULE_number || m->words.first < where.first
            || m->words.last > where.last)
            continue;
        *count = (struct amount){true, m->low, m->high, TEXT_EMPTY, false};
        return true;
    }
    const struct word *w = &c->r->words.at[where.first + 1];
    *count = (struct amount){true, w->number, w->number, TEXT_EMPTY, false};
    return ratio_finite(w->number);
}

/* "All six of the | chicken thighs". */
static void check_count(struct checker *c, const struct sentence *s, struct span where)
{
    const struct ingredient *other;
    struct amount count;
    for (size_t i = where.last + 1; i <= s->last && i <= where.last + 3; i++) {
        const struct word *w = &c->r->words.at[i];
        if (w->tag != TAG_FOOD || !w->entry)
            continue;
        if (number_in(c, s, where, &count)
            && !went_in(c, entry_value(w->entry), where.first, &count, &other) && other) {
            struct span words = {where.first, i};
            REPORT(c, amount_otherwise,
                   ((struct subject_of){c->r->words.at[where.first].start, words,
                                        entry_shown(w->entry)}),
                   said_words(c->r, words), said_words(c->r, other->words));
        }
        return;
    }
}

/* "So all six of the chicken thighs": amounts in a sentence that looks back. */
static void find_amounts_again(struct checker *c)
{
    for (size_t i = 0; i < c->r->sentences.count; i++) {
        const struct sentence *s = &c->r->sentences.at[i];
        struct span where;
        if (!in_dish(c, s->first))
            continue;
        if (said_find(&c->sayings, c->r, "recap_count", (struct span){s->first, s->last}, &where))
            check_count(c, s, where);
        if (!said_find(&c->sayings, c->r, "recap_amount", (struct span){s->first, s->last}, &where))
            continue;
        for (size_t n = 0; n < s->match_count; n++) {
            const struct match *m = &c->r->matches.at[s->match_first + n];
            if (m->rule->kind == RULE_line && m->words.last >= where.first)
                check_recap(c, s, m);
        }
    }
}

/* ---- yields */

/* "It serves eight", not "I get two of them". */
static bool states_yield(const struct checker *c, const struct match *m)
{
    struct span where;
    return said_find(&c->sayings, c->r, "states_yield", m->words, &where);
}

/* "Serves eight" and "makes six bowls": what both count must be the same. */
static bool counts_same(const struct checker *c, const struct match *a, const struct match *b)
{
    const struct entry *x = entry_at(c->r, match_slot(a, SLOT_eater)),
                       *y = entry_at(c->r, match_slot(b, SLOT_eater));
    bool people_x = !x || x->tag == TAG_EATER || x->tag == TAG_VESSEL,
         people_y = !y || y->tag == TAG_EATER || y->tag == TAG_VESSEL;
    return people_x && people_y ? text_equal(a->rule->option, b->rule->option)
                                : x && y && text_equal(entry_value(x), entry_value(y));
}

static void find_yields(struct checker *c)
{
    match_list yields = {0};
    add_matches(c, RULE_yield, SCOPE_NOT_DONE, &yields);
    for (size_t n = 1; n < yields.count; n++) {
        const struct match *a = yields.at[n - 1], *b = yields.at[n];
        if (states_yield(c, a) && states_yield(c, b) && counts_same(c, a, b)
            && !overlap(ratio_double(a->low), ratio_double(a->high), ratio_double(b->low),
                        ratio_double(b->high)))
            REPORT(c, said_otherwise, subject_words(c, b->words), said_words(c->r, a->words));
    }
}

/* Whether the yield before it is of the pieces that word `dish` names: "makes twelve". */
static bool makes_pieces(const struct checker *c, const struct match *yield, size_t dish)
{
    struct span where;
    const struct entry *e = entry_at(c->r, match_slot(yield, SLOT_eater));
    return said_find(&c->sayings, c->r, "makes_pieces", yield->words, &where)
           && (!e
               || (c->r->words.at[dish].entry
                   && text_equal(entry_value(e), entry_value(c->r->words.at[dish].entry))));
}

/* "So that's fifteen tarts", after "this makes twelve". */
static void check_pieces(struct checker *c, const struct sentence *s, const match_list *yields)
{
    const struct match *other = NULL;
    struct amount count;
    struct span where;
    if (!said_find(&c->sayings, c->r, "recap_pieces", (struct span){s->first, s->last}, &where)
        || !number_in(c, s, where, &count))
        return;
    for (size_t n = 0; n < yields->count && yields->at[n]->words.last < where.first; n++) {
        const struct match *m = yields->at[n];
        if (overlap(ratio_double(m->low), ratio_double(m->high), ratio_double(count.min),
                    ratio_double(count.max)))
            return;
        if (makes_pieces(c, m, where.last))
            other = m;
    }
    if (other)
        REPORT(c, said_otherwise, subject_words(c, where), said_words(c->r, other->words));
}

static void find_pieces_again(struct checker *c)
{
    match_list yields = {0};
    add_matches(c, RULE_yield, SCOPE_NOT_DONE, &yields);
    const size_t until = sentence_until(c->r, c->dish->words.last);
    for (size_t i = sentence_from(c->r, c->dish->words.first); i < until && yields.count; i++)
        if (in_dish(c, c->r->sentences.at[i].first))
            check_pieces(c, &c->r->sentences.at[i], &yields);
}

void find_contradictions(struct checker *c)
{
    find_heats(c);
    find_times(c);
    find_amounts_again(c);
    find_yields(c);
    find_pieces_again(c);
}
