/* check/safety.c: published food-safety rules that are broken, or not met, by what was said. The
 * rules are rows of the pack's safety.tsv; each names its publication. A rule that cannot tell
 * keeps silent, and silence is no proof of safety.
 * SPDX-License-Identifier: MIT */
#include "check/hazard.h"
#include "check/holds.h"
#include "check/inside.h"

static unsigned long number_cell(struct text t, unsigned long otherwise)
{
    struct ratio n = ratio_read(t.at, t.length);
    return ratio_finite(n) ? (unsigned long) n.over : otherwise;
}

static bool real(const struct checker *c, struct span words)
{
    for (size_t i = words.first; i <= words.last; i++)
        if (c->r->words.at[i].scope & (SCOPE_NEGATED | SCOPE_INSTEAD))
            return false;
    return true;
}

/* "Overnight on the stove, and then it goes in the fridge": too late. */
static bool too_late(const struct checker *c, struct span said, struct span where)
{
    struct span between = {said.last + 1, where.first}, then;
    return between.first <= between.last
           && said_find(&c->sayings, c->r, "afterwards", between, &then);
}

/* "The muffins go in the freezer. The chilli's done. I leave the pot on the bench": what keeps cold
 * is said in the same sentence, or right before. */
#define JUST_BEFORE_WORDS 6
static size_t begins_before(const struct checker *c, struct span said)
{
    const struct sentence *s = sentence_of(c->r, said.first);
    const size_t near = said.first > JUST_BEFORE_WORDS ? said.first - JUST_BEFORE_WORDS : 0;
    return s && s->first < near ? s->first : near;
}

/* Whether what the rule's `column` names is said around the words. */
static bool said_around(const struct checker *c, const struct safety_rule *rule,
                        enum safety_column column, struct span said)
{
    struct text set = rule_cell(rule, column), word;
    const bool at_once = text_starts(set, "at-once ") && text_part(&set, ' ', &word);
    unsigned long near = number_cell(rule_cell(rule, RULE_NEAR), c->r->words.count);
    struct span where, around = c->dish->words;
    if (said.first > around.first + near)
        around.first = said.first - near;
    if (said.last + near < around.last)
        around.last = said.last + near;
    if (at_once && around.first < begins_before(c, said))
        around.first = begins_before(c, said);
    for (; around.first <= around.last && said_find_set(&c->sayings, c->r, set, around, &where);
         around.first = where.last + 1)
        if ((real(c, where) || span_has_tag(c->r, where, TAG_NOT))
            && !(at_once && too_late(c, said, where)))
            return true; /* "no need to wash it" is no washing, "don't pour it over" is no use */
    return false;
}

/* Whether the rule's words stand as they must, and nothing that satisfies it is said. */
static bool broken(const struct checker *c, const struct safety_rule *rule, struct span said)
{
    if (rule_cell(rule, RULE_WITH).length && !said_around(c, rule, RULE_WITH, said))
        return false;
    if (text_is(rule_cell(rule, RULE_UNLESS), "inside"))
        return !checked_beside(c, rule_cell(rule, RULE_FOODS)) && !inside_said(c)
               && !cooked_before(c, rule_cell(rule, RULE_FOODS));
    return !rule_cell(rule, RULE_UNLESS).length || !said_around(c, rule, RULE_UNLESS, said);
}

/* "Will I lick the spoon? You will not." */
#define TAKEN_BACK_WORDS 4
static bool taken_back(const struct checker *c, struct span words)
{
    struct span where, behind = {words.last + 1, words.last + TAKEN_BACK_WORDS};
    if (behind.last > c->dish->words.last)
        behind.last = c->dish->words.last;
    return said_find(&c->sayings, c->r, "taken_back", behind, &where);
}

/* Whether the dish holds one of the foods, or they are spoken of right before ("nearest": there, or
 * in the words themselves); and no other meat is nearer to the words. */
static bool is_of(const struct checker *c, struct text foods, struct span said)
{
    if (text_starts(foods, "nearest ")) {
        struct text nearest;
        text_part(&foods, ' ', &nearest);
        return nearest_food_is(c, foods, said.last + 1);
    }
    return !foods.length
           || ((food_of(c, c->dish, foods) || food_before(c, foods, said.first))
               && !other_animal(c, foods, said.first));
}

#define UNEATEN_WORDS 5
/* "It stands in the sun all afternoon and nobody minds": what is denied is said behind it. */
static bool denied_before(const struct checker *c, struct span words)
{
    const struct sentence *s = sentence_of(c->r, words.first);
    return !s || span_has_tag(c->r, (struct span){s->first, words.last}, TAG_NOT)
           || span_has_tag(c->r, (struct span){s->first, words.last}, TAG_INSTEAD);
}

/* "What we don't eat stays in the pan": the "don't" is of the eating. */
static bool of_uneaten(const struct checker *c, struct span words)
{
    struct span where,
        near = {words.first > UNEATEN_WORDS ? words.first - UNEATEN_WORDS : 0, words.last};
    return said_find(&c->sayings, c->r, "uneaten", near, &where);
}

/* "Counter" and "overnight" are told as "on the counter overnight": both, where they stand so near.
 */
#define BESIDE_WORDS 8
static struct span with_beside(const struct checker *c, const struct safety_rule *rule,
                               struct span said)
{
    struct span where, around = {said.first > BESIDE_WORDS ? said.first - BESIDE_WORDS : 0,
                                 said.last + BESIDE_WORDS};
    if (around.last > c->dish->words.last)
        around.last = c->dish->words.last;
    if (!rule_cell(rule, RULE_WITH).length || around.last < said.last
        || !said_find_set(&c->sayings, c->r, rule_cell(rule, RULE_WITH), around, &where))
        return said;
    return (struct span){where.first < said.first ? where.first : said.first,
                         where.last > said.last ? where.last : said.last};
}

static void listen(struct checker *c, const struct safety_rule *rule, struct span part)
{
    struct span where;
    const bool once = text_is(rule_cell(rule, RULE_UNLESS), "inside");
    while (part.first <= part.last
           && said_find_set(&c->sayings, c->r, rule_cell(rule, RULE_SAID), part, &where)) {
        part.first = where.last + 1;
        /* Its own words are a "don't": "don't throw the leaves away". */
        const bool kept = span_has_tag(c->r, where, TAG_NOT);
        if ((!kept && !real(c, where) && denied_before(c, where) && !of_uneaten(c, where))
            || !broken(c, rule, where) || taken_back(c, where) || (once && rule_told(c, rule))
            || !is_of(c, rule_cell(rule, RULE_FOODS), where)
            || rule_told_at(c, rule, c->r->words.at[where.first].start))
            continue;
        where = with_beside(c, rule, where);
        struct subject_of what = {c->r->words.at[where.first].start, where,
                                  said_words(c->r, where)};
        report_rule(c, rule, what, TEXT_EMPTY);
    }
}

/* Talk beside the dish may be of it: "I leave that in the pot till tonight", after its last step.
 */
static void listen_everywhere(struct checker *c, const struct safety_rule *rule)
{
    for (size_t i = 0; i < c->parts.count; i++)
        listen(c, rule, c->parts.at[i]);
    for (size_t i = 0; i < c->beside_count; i++)
        listen(c, rule, c->beside[i]);
}

void find_unsafe(struct checker *c)
{
    struct safety_rule rule = {pack_table(c->k, "safety"), 0};
    for (; rule.table && rule.row < rule.table->rows; rule.row++)
        if (!checked_alone(c, &rule))
            listen_everywhere(c, &rule);
}
