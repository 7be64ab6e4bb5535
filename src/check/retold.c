/* check/retold.c: amounts told again in other words: "did I say half a cup of honey? It's two
 * thirds", and how much liquid there is "all together".
 * SPDX-License-Identifier: MIT */
#include "build/quantity.h"
#include "check/again.h"

/* What is taken back in the next breath is a correction, which the builder has heeded. */
#define BREATH_WORDS 20
/* The other amount stands so near behind the question. */
#define ANSWER_WORDS 14
/* Cooks round what they add up. */
#define ROUNDED 1.1

/* ---- "did I say half a cup of honey? It's two thirds" */

/* The line of the question that gives an amount of a food; NULL: there is none. */
static const struct match *asked_line(const struct checker *c, const struct sentence *s,
                                      size_t from, struct amount *amount)
{
    struct matches lines = matches_of(c->r, s, KIND_OF(line));
    for (const struct match *m; (m = matches_next(&lines));) {
        struct said_amount said = {0};
        if (m->words.last < from || span_is_empty(match_slot(m, SLOT_food)))
            continue;
        line_amount(c->r, s, m, &said);
        *amount = said.amount;
        if (said.amount.known && !said.vague)
            return m;
    }
    return NULL;
}

/* The first amount behind word `from`, soon; NULL: there is none. */
static const struct match *answer_to(const struct checker *c, size_t from, struct amount *amount)
{
    const struct span soon = {from, from + ANSWER_WORDS};
    const struct match *m = match_among(c->r, soon, KIND_OF(amount));
    struct said_amount said = {0};
    if (!m)
        return NULL;
    read_amount(c->r, sentence_of(c->r, m->words.first), m, &said);
    *amount = said.amount;
    return said.amount.known && !said.vague ? m : NULL;
}

/* The dish's last line of the food before the word; NULL: there is none. */
static const struct ingredient *line_before(const struct checker *c, const struct entry *food,
                                            size_t word)
{
    const struct ingredient *last = NULL;
    for (size_t i = 0; i < c->dish->ingredients.count; i++) {
        const struct ingredient *line = &c->dish->ingredients.at[i];
        if (line->id < word && line->amount.known && text_equal(line->kind, entry_value(food)))
            last = line;
    }
    return last;
}

/* The answer, where it is not what was said of the food before. */
static void report_answer(struct checker *c, const struct amount *told, const struct match *answer,
                          const struct entry *food, const struct ingredient *before)
{
    double now = amount_in(c, told, told->unit, before->amount.unit);
    if (now > 0
        && !overlap(now, now, ratio_double(before->amount.min), ratio_double(before->amount.max)))
        report_otherwise(c, answer->words, entry_shown(food), c->number, before);
}

static void check_asked(struct checker *c, const struct sentence *s)
{
    struct span where;
    struct amount asked, told;
    if (!said_in(c, "did_i_say", s, &where))
        return;
    const struct match *line = asked_line(c, s, where.last, &asked),
                       *answer = line ? answer_to(c, line->words.last + 1, &told) : NULL;
    const struct entry *food = answer ? match_entry(c->r, line, SLOT_food) : NULL;
    const struct ingredient *before = food ? line_before(c, food, s->first) : NULL;
    if (!before || before->id + BREATH_WORDS > s->first)
        return;
    report_answer(c, &told, answer, food, before);
}

/* Whether the answer, which begins with word `first`, names a food, or one follows right behind. */
static bool answers_with_food(const struct recording *r, size_t first, const struct match *answer)
{
    size_t behind = answer->words.last + 2;
    return span_has_tag(
        r, (struct span){first, behind < r->words.count ? behind : answer->words.last}, TAG_FOOD);
}

/* "How much salt did you say? Two teaspoons": an answer that names no food. */
#define ASK_WORDS 8
static void check_how_much(struct checker *c, const struct sentence *s)
{
    struct span where;
    struct amount told;
    const struct entry *food = NULL;
    if (!said_in(c, "how_much", s, &where))
        return;
    for (size_t i = where.first; i <= where.last; i++)
        if (c->r->words.at[i].tag == TAG_FOOD)
            food = c->r->words.at[i].entry;
    const struct match *answer = food ? answer_to(c, where.last + 1, &told) : NULL;
    const struct ingredient *before = answer ? line_before(c, food, s->first) : NULL;
    if (!before || before->id + ASK_WORDS > where.first
        || answers_with_food(c->r, where.last + 1, answer))
        return;
    report_answer(c, &told, answer, food, before);
}

/* ---- "four cups of liquid all together" */

static bool is_liquid(const struct checker *c, const struct ingredient *line)
{
    struct span where;
    return said_find(&c->sayings, c->r, "liquids", line->words, &where);
}

/* Of the dish's liquids before the word, in `unit`; 0 where fewer than two are told. */
static double liquid_before(const struct checker *c, size_t word, struct text unit,
                            const struct ingredient **last)
{
    double sum = 0;
    size_t count = 0;
    for (size_t i = 0; i < c->dish->ingredients.count; i++) {
        const struct ingredient *line = &c->dish->ingredients.at[i];
        double one = line->id < word && line->amount.known && is_liquid(c, line)
                         ? amount_in(c, &line->amount, line->amount.unit, unit)
                         : 0;
        if (one <= 0)
            continue;
        sum += one;
        count++;
        *last = line;
    }
    return count > 1 ? sum : 0;
}

static void check_liquid(struct checker *c, const struct sentence *s)
{
    struct span where;
    if (!said_in(c, "of_liquid", s, &where))
        return;
    struct matches amounts = matches_of(c->r, s, KIND_OF(amount));
    for (const struct match *m; (m = matches_next(&amounts));) {
        const struct ingredient *last = NULL;
        struct said_amount said = {0};
        if (m->words.last < where.first || m->words.last > where.last)
            continue;
        read_amount(c->r, s, m, &said);
        double sum = said.amount.known ? liquid_before(c, m->words.first, said.amount.unit, &last)
                                       : 0,
               now = ratio_double(said.amount.min);
        if (sum > 0 && (now > sum * ROUNDED || sum > now * ROUNDED))
            REPORT(c, said_otherwise, subject_words(c, where), amount_words(c, last));
        return;
    }
}

void find_retold(struct checker *c)
{
    for (const struct sentence *s = NULL; (s = next_sentence(c, s));) {
        check_asked(c, s);
        check_how_much(c, s);
        check_liquid(c, s);
    }
}
